"""Long lines are set in the rows of the window, and only there."""

from __future__ import annotations

import sys

import pytest

from coach.drivers.in_window import guide_in_window, in_window, joined
from coach.texts.guides import TOPICS, guide


@pytest.fixture(params=[40, 80])
def window(request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> int:
    columns: int = request.param
    monkeypatch.setattr(sys.stdout, "isatty", lambda: True, raising=False)
    monkeypatch.setattr("coach.drivers.in_window._window", lambda: columns)
    return columns


def test_in_a_pipe_nothing_is_moved() -> None:
    assert in_window("  a " * 60) == "  a " * 60
    assert guide_in_window(guide("clinician")) == guide("clinician")


@pytest.mark.parametrize("topic", TOPICS)
def test_no_row_of_a_guide_but_a_sample_or_a_table_is_wider_than_the_window(
    topic: str, window: int
) -> None:
    in_sample = False
    for row in guide_in_window(guide(topic)).split("\n"):
        in_sample ^= row.lstrip().startswith("```")
        if not in_sample and "|" not in row:
            assert len(row) < window, row


def test_every_word_of_a_guide_is_still_there(window: int) -> None:
    assert guide_in_window(guide("clinician")).split() == guide("clinician").split()


def test_rows_of_a_point_stand_under_its_words(window: int) -> None:
    rows = guide_in_window("1. " + "word " * 30).split("\n")
    assert len(rows) > 1
    assert all(row.startswith("   ") for row in rows[1:])


def test_a_paragraph_is_joined_and_a_sample_is_not() -> None:
    assert joined("one\ntwo\n\n```yaml\na: b\nc: d\n```\n* x\n  y\n* z") == (
        "one two\n\n```yaml\na: b\nc: d\n```\n* x y\n* z"
    )


def test_a_question_keeps_its_indentation(window: int) -> None:
    rows = in_window("  " + "word " * 30).split("\n")
    assert all(row.startswith("  ") and len(row) < window for row in rows)
