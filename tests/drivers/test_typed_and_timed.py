"""What one prompt takes, and what a timer says."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.drivers.timed_lines import APART_S, by_ear, by_eye, left_s
from coach.drivers.typed_text import LONGEST, admitted
from coach.model.turns import Timer

REST = Timer("rest", 60, title="Rest", side="left arm", after="Rest is over.", next="Next: set 2.")
HOLD = Timer("hold", 30, 5, "Hold 1 of 5", "left arm", "Let go. Hold 1 of 5 is done.")


@pytest.mark.parametrize(("length", "told"), [(LONGEST, 0), (LONGEST + 1, 1)])
def test_up_to_2000_letters_are_heard(length: int, told: int) -> None:
    answer = admitted("x" * length, safety=False)
    assert len(answer.text) == LONGEST
    assert len(answer.told) == told


@pytest.mark.parametrize("typed", ["no", "no\n", "no\r\n", ""])
def test_one_line_is_one_answer_even_for_safety(typed: str) -> None:
    assert admitted(typed, safety=True).refused is False


@pytest.mark.parametrize("typed", ["no\nno", "no\r\nyes", "no\u2028no", "a\rb"])
def test_several_lines_answer_no_safety_question(typed: str) -> None:
    answer = admitted(typed, safety=True)
    assert answer.refused
    assert answer.text == ""


def test_several_lines_give_their_first_elsewhere() -> None:
    answer = admitted("\n8\n9", safety=False)
    assert (answer.text, answer.whole) == ("8", "8 9")


@given(st.text(), st.booleans())
def test_whatever_is_typed_gives_one_line(typed: str, safety: bool) -> None:
    answer = admitted(typed, safety=safety)
    assert len(answer.text.splitlines()) <= 1
    assert len(answer.text) <= LONGEST


# ---------------------------------------------------------------- timers


def test_a_rest_is_said_at_half_at_ten_and_at_its_end() -> None:
    assert by_ear(REST, 0) == [(30, "30 s left."), (50, "10 s left."), (60, "Rest is over.")]


def test_a_hold_begins_with_its_lead_in_and_ends_with_the_end_word() -> None:
    said = by_ear(HOLD, 0)
    assert [line.text for line in said] == [
        "Starts in 5 s.",
        "Hold now.",
        "15 s left.",
        "10 s left.",
        "Let go. Hold 1 of 5 is done.",
    ]
    assert [line.at_s for line in said] == [0, 5, 20, 25, 35]


def test_a_timer_looked_at_a_moment_late_still_says_its_first_line() -> None:
    assert by_ear(HOLD, 0.4)[0].text == "Starts in 5 s."
    assert by_ear(HOLD, 1.0)[0].text == "Hold now."


@given(st.integers(1, 600), st.sampled_from([0, 5]), st.floats(0, 700))
def test_timer_lines_are_few_apart_in_order_and_end_with_the_end(
    seconds: int, lead: int, gone: float
) -> None:
    timer = HOLD._replace(seconds=seconds, lead_s=lead, kind="hold" if lead else "rest")
    said = by_ear(timer, gone)
    gaps = [b.at_s - a.at_s for a, b in pairwise(said)]
    assert len(said) <= 5
    assert all(gap >= APART_S for gap in gaps)
    assert said[-1] == (lead + seconds, timer.after)


@pytest.mark.parametrize(
    ("gone", "row"),
    [
        (0, "Left arm: starts in 5 s."),
        (4.2, "Left arm: starts in 1 s."),
        (5, "Left arm, hold: 30 s left."),
        (34.9, "Left arm, hold: 1 s left."),
        (35, "Let go. Hold 1 of 5 is done."),
    ],
)
def test_a_hold_by_eye_counts_its_lead_in_then_its_seconds(gone: float, row: str) -> None:
    assert by_eye(HOLD, gone) == row


@pytest.mark.parametrize(
    ("gone", "row"),
    [
        (0, "Rest: 60 s left. Next: set 2."),
        (59.5, "Rest: 1 s left. Next: set 2."),
        (60, "Rest is over."),
    ],
)
def test_a_rest_by_eye_says_what_is_next(gone: float, row: str) -> None:
    assert by_eye(REST, gone) == row


@given(st.integers(0, 600), st.floats(0, 700))
def test_seconds_left_are_never_rounded_down(whole: int, gone: float) -> None:
    assert left_s(whole, gone) >= whole - gone
