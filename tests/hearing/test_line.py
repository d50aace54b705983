"""One line that fills several questions: labelled values only (rule checkin.line)."""

from __future__ import annotations

import pytest

from coach.hearing import hear
from coach.model.heard import Action
from tests.hearing.asked import CHECK_IN, SET_LINE


@pytest.mark.parametrize(
    ("text", "values"),
    [
        (
            "pain 1, morning 0, slept 8, no throws, no game",
            {
                "pain now": 1,
                "waking pain": 0,
                "sleep last night": 8,
                "throwing yesterday": "none",
                "throwing today": "none",
            },
        ),
        (
            "pain 1, morning 1, slept 5.5, no throws, match today",
            {
                "pain now": 1,
                "waking pain": 1,
                "sleep last night": 5.5,
                "throwing yesterday": "none",
                "throwing today": "game",
            },
        ),
        (
            "pain 2 morning 1 slept 7 threw 40 yesterday",
            {"pain now": 2, "waking pain": 1, "sleep last night": 7, "throwing yesterday": "catch"},
        ),
        ("slept 11 to 7, pain 1-2", {"sleep last night": 8, "pain now": 2}),
        ("game tonight", {"throwing today": "game"}),
        ("pain 1, pain 4", {"pain now": 4}),
    ],
)
def test_labelled_values_fill_in_any_order(text: str, values: dict[str, object]) -> None:
    assert dict(hear(CHECK_IN, text).values) == values


@pytest.mark.parametrize("text", ["1 0 8", "8", "none", "fine", "pain 12", "same as yesterday"])
def test_what_has_no_label_fills_nothing(text: str) -> None:
    heard = hear(CHECK_IN, text)
    assert heard.values == ()
    assert heard.action == Action.ASK_AGAIN


def test_a_bare_number_beside_labelled_ones_fills_nothing_and_is_named() -> None:
    heard = hear(CHECK_IN, "pain 1, 8")
    assert dict(heard.values) == {"pain now": 1}
    assert heard.missed == "8"


@pytest.mark.parametrize(
    ("text", "values"),
    [
        ("13, pain 1", {"reps in set": 13, "pain in set": 1}),
        ("12 reps pain 0", {"reps in set": 12, "pain in set": 0}),
        ("13", {"reps in set": 13}),
        ("pain 2", {"pain in set": 2}),
        ("12 2", {"reps in set": 12}),
        ("8, 9", {"reps in set": 8}),
        ("done", {}),
    ],
)
def test_only_the_first_number_of_a_set_line_may_stand_bare(
    text: str, values: dict[str, float]
) -> None:
    assert dict(hear(SET_LINE, text).values) == values


def test_a_sign_in_the_line_wins_over_its_values() -> None:
    heard = hear(CHECK_IN, "pain 1, slept 8, my hand is numb")
    assert heard.action == Action.ESCALATE
    assert dict(heard.values)["pain now"] == 1
