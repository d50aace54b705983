"""Cleaning, wrapping, speaking: what reaches a screen, letter for letter and width for width."""

from __future__ import annotations

import re
import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.drivers.cleaned import cleaned, width_of
from coach.drivers.layout import columns, filled, for_ears, for_eyes, spoken, wrapped
from coach.model.turns import Line

HIDING = [
    *(chr(n) for n in range(0x20) if chr(n) not in "\t\n\r"),
    "\x7f",
    *(chr(n) for n in range(0x80, 0xA0)),
    *"\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069\u200b\u200c\u200d\u200e\u200f\ufeff",
    "\ud800",
    "\udc9b",
    "\ue000",
]


@pytest.mark.parametrize("letter", HIDING)
def test_a_letter_that_moves_or_hides_leaves_a_mark(letter: str) -> None:
    assert cleaned(f"1{letter}0") == f"1<U+{ord(letter):04X}>0"


@pytest.mark.parametrize(
    "text", ["pain [/5]", "reps [8] to [rest]", "[bold]x[/bold]", "{0.x}", "a_b*c"]
)
def test_brackets_and_marks_stay_letter_for_letter(text: str) -> None:
    assert cleaned(text) == text
    assert for_eyes((Line("say", text),), 80)[0].text == text


@pytest.mark.parametrize("text", ["schmerz größer 3", "痛い", "боль", "naïve, ça"])
def test_letters_of_any_script_stay(text: str) -> None:
    assert cleaned(text) == text


def test_white_space_of_any_kind_is_a_blank() -> None:
    assert cleaned("a\tb\nc\u00a0d\u2028e") == "a b c d e"


@given(st.text())
def test_whatever_is_cleaned_has_no_control_in_it(text: str) -> None:
    assert not {unicodedata.category(c) for c in cleaned(text)} & {"Cc", "Cf", "Cs", "Co", "Zl"}


def test_a_wide_letter_fills_two_columns_and_a_joining_mark_none() -> None:
    assert width_of("痛") == 2
    assert width_of("e\u0301") == 1


# ---------------------------------------------------------------- widths


WHOLE = (
    "15 reps",
    "2 lb",
    "3 s",
    "60 s",
    "right arm",
    "555 0134",
    "M. Aalto",
    "4 of 10",
    "3 sets",
    "Set 2",
    "12 weeks",
)
LONG = Line(
    "work",
    "Set 2 of 3, right arm: 10 to 15 reps, 2 lb dumbbell, pain 4 of 10 at most, 3 sets over "
    "12 weeks. Lower for 3 s. Rest 60 s. Call M. Aalto if you are not sure: 555 0134.",
)


@pytest.mark.hazard("H-13")
def test_no_unit_side_or_phone_number_is_split_at_any_width() -> None:
    for window in range(40, 201):
        rows = [row.text for row in for_eyes((LONG,), window)]
        for whole in WHOLE:
            assert any(whole in row for row in rows), (window, whole)
        assert max(len(row) for row in rows) <= min(window, 80) - 1
        assert " ".join(rows) == LONG.text


@pytest.mark.parametrize(("window", "room"), [(20, 39), (40, 39), (80, 79), (200, 79)])
def test_a_row_is_one_less_than_the_window_and_at_most_79(window: int, room: int) -> None:
    assert columns(window) == room


def test_a_word_longer_than_a_row_is_cut_and_nothing_is_lost() -> None:
    rows = wrapped("x" * 100 + " end", 40)
    assert "".join(rows).replace(" ", "") == "x" * 100 + "end"
    assert all(len(row) <= 39 for row in rows)


@given(st.text(max_size=300), st.integers(40, 200))
def test_wrapping_loses_no_letter(text: str, window: int) -> None:
    rows = wrapped(cleaned(text), window)
    assert "".join(rows).replace(" ", "") == cleaned(text).replace(" ", "")
    assert all(width_of(row) <= columns(window) for row in rows)


# ---------------------------------------------------------------- values


def test_a_value_is_put_in_once_and_never_read_again() -> None:
    line = Line("quote", 'You typed: "{typed}". Pain {pain now} of 10.', ("{pain now}",))
    shown = filled(line, {"typed": "{pain now} {0.__class__}", "pain now": 1.0})
    assert shown.text == 'You typed: "{pain now} {0.__class__}". Pain 1 of 10.'
    assert shown.parts == ("1",)


@pytest.mark.parametrize(
    ("value", "words"),
    [(1.0, "1"), (5.5, "5.5"), (0.0, "0"), ("none", "none"), (("a", "b"), "a, b")],
)
def test_a_value_is_spelled_as_it_is_read(value: float | str | tuple[str, ...], words: str) -> None:
    assert filled(Line("say", "{fact}"), {"fact": value}).text == words


def test_an_unknown_token_stays_as_it_is() -> None:
    assert filled(Line("say", "{no such fact}"), {}).text == "{no such fact}"


# ---------------------------------------------------------------- by ear


@pytest.mark.parametrize(
    ("written", "said"),
    [
        ("Rest 60 s.", "Rest 60 seconds."),
        ("1 s left.", "1 second left."),
        ("Slept 5.5 h.", "Slept 5.5 hours."),
        ("band pull 3 kg", "band pull 3 kilograms"),
        ("2 lb dumbbell", "2 pound dumbbell"),
        ("2 lb", "2 pounds"),
        ("35 min", "35 minutes"),
        ("10 to 15 reps", "10 to 15 reps"),
        ("15 throws at 20 m", "15 throws at 20 meters"),
        ("6 to 8 holds of 5 s", "6 to 8 holds of 5 seconds"),
        ("it's 3 o'clock", "it's 3 o'clock"),
    ],
)
@pytest.mark.hazard("H-14")
def test_a_unit_is_said_as_a_word(written: str, said: str) -> None:
    assert spoken(written) == said


def test_by_ear_each_fact_has_a_row_of_its_own() -> None:
    line = Line("work", "Set 1 of 3, left arm: 10 reps.", ("Set 1 of 3, left arm.", "10 reps."))
    said = Line("say", "Hello D.O. Left arm today. It takes 35 minutes. Ask M. Aalto.")
    assert [row.text for row in for_ears((line, said), 80)] == [
        "Set 1 of 3, left arm.",
        "10 reps.",
        "Hello D.O. Left arm today.",
        "It takes 35 minutes.",
        "Ask M. Aalto.",
    ]


def test_what_a_person_typed_is_not_spoken_for() -> None:
    line = Line("quote", 'You typed: "it hurt for 3 s. Then numb".')
    assert [row.text for row in for_ears((line,), 80)] == [line.text]


def test_the_words_for_eyes_and_ears_are_the_same_but_for_units_and_ends() -> None:
    def bare(text: str) -> list[str]:
        return re.findall(r"[a-z0-9]+", spoken(text).lower())

    assert bare(" ".join(r.text for r in for_ears((LONG,), 40))) == bare(LONG.text)


def test_a_fact_that_stayed_unclear_reads_not_clear_and_other_braces_stay() -> None:
    line = Line("say", "Pain {pain in set} of 10. A {towel} under the arm.")
    assert filled(line, {}).text == "Pain not clear of 10. A {towel} under the arm."


def test_a_heading_has_an_empty_row_above_it_for_the_eyes_only() -> None:
    lines = (Line("say", "Saved."), Line("name", "Exercise 2 of 4, left arm: row."))
    assert [row.text for row in for_eyes(lines, 80)][1] == ""
    assert "" not in [row.text for row in for_ears(lines, 80)]
