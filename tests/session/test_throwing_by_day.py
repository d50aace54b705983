"""Which day an answer about throwing is about, when the questions come one by one."""

from __future__ import annotations

import pytest

from tests.session.invented import asked_lately, brief
from tests.session.talking import Talk, talk


def one_by_one(*answers: str) -> Talk:
    """The check-in after its line was not understood, one question at a time."""
    return talk(brief(asked_lately()), "hm", "1", "0", "8", *answers)


def test_a_game_yesterday_is_no_game_today() -> None:
    day = one_by_one("game")
    assert day.name == "throwing today"
    assert not day.state.playing


@pytest.mark.parametrize("said", ["game today", "none, game today"])
def test_an_answer_that_names_its_day_counts_for_that_day(said: str) -> None:
    day = one_by_one(said)
    assert day.name != "throwing today"
    assert day.state.playing
