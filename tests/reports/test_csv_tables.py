"""Tables for a spreadsheet: read back as written by the standard reader, and never a formula."""

from __future__ import annotations

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.model.history import Outing
from coach.reports.as_text import as_text
from coach.reports.csv_tables import cell, csv_tables, guarded, table, unguarded
from coach.reports.diary import session_said
from coach.reports.facts import Lifted
from coach.reports.visit import visit_page
from tests.reports import made_up

STARTS = ("=", "+", "-", "@", "\t", "\r", "\uff1d", "\uff0b", "\uff0d", "\uff20")


def read(text: str) -> list[list[str]]:
    return list(csv.reader(io.StringIO(text, newline=""), strict=True))


@pytest.mark.hazard("H-14")
def test_every_table_is_rectangular_with_units_in_its_heads() -> None:
    tables = csv_tables(made_up.ten_weeks_facts())
    assert sorted(tables) == [
        "days.csv", "decisions.csv", "exercises.csv", "notes.csv", "pitches.csv", "sets.csv",
        "stops.csv", "throws.csv",
    ]  # fmt: skip
    for name, text in tables.items():
        rows = read(text)
        assert {len(row) for row in rows} == {len(rows[0])}
        assert len(rows) > 1 or name == "pitches.csv"  # nobody pitches in the invented weeks
        assert text.endswith("\r\n")
        assert "\n" not in text.replace("\r\n", "")
    head = read(tables["days.csv"])[0]
    assert all("(" in name for name in head if name != "day")


def test_game_pitches_are_told_with_their_days_off_on_every_page() -> None:
    pitched = (Outing(made_up.day(0), 61, 3), Outing("2000-01-01", None, 4, over_cap=True))
    sat = made_up.sat(0, pitched=pitched)
    facts = made_up.facts(sat)
    rows = read(csv_tables(facts)["pitches.csv"])
    assert rows[1:] == [["2000-01-01", "", "4", "1"], [made_up.day(0), "61", "3", "0"]]
    assert "61 pitches" in as_text(visit_page(facts))
    assert any("61 pitches; 3 days off." in line for line in session_said(sat))


def test_numbers_stay_numbers_and_what_is_not_known_is_empty() -> None:
    rows = read(csv_tables(made_up.facts(made_up.sat(0, sleep_h=7.5, effort=None)))["days.csv"])
    day = dict(zip(rows[0], rows[1], strict=True))
    assert float(day["sleep (h)"]) == 7.5
    assert day["effort (0-10)"] == ""
    assert day["load (AU)"] == ""
    assert day["sets (count)"] == "3"
    idle = dict(zip(rows[0], rows[2], strict=True))
    assert idle["load (AU)"] == "0"
    assert idle["pain at rest (0-10)"] == ""


def test_a_negative_number_is_no_formula_and_a_word_is() -> None:
    assert cell(-1.5) == "-1.5"
    assert cell("-1.5") == "'-1.5"


@pytest.mark.parametrize("start", STARTS)
def test_words_that_a_spreadsheet_would_run_are_guarded(start: str) -> None:
    for text in (f"{start}HYPERLINK(1)", f" {start}1"):
        (got,) = read(cell(text) + "\r\n")[0]
        assert not got.lstrip(" ").startswith(STARTS)


# All that is shown letter for letter; other blanks than the plain one become plain.
plain = st.text(st.characters(categories=("L", "N", "P", "S")) | st.just(" "), min_size=1)


@given(plain)
def test_the_guard_and_the_quotes_come_off_again(text: str) -> None:
    (got,) = read(table((text,), []))[0]
    assert unguarded(got) == text
    assert unguarded(guarded(text)) == text


def test_own_words_stand_without_the_quotes_they_are_kept_in() -> None:
    notes = ('"=cmd|x, and ""so"" on"', "Waking pain above usual.")
    rows = read(csv_tables(made_up.facts(made_up.sat(0, notes=notes)))["notes.csv"])
    assert rows[1] == [made_up.day(0), "athlete", '\'=cmd|x, and ""so"" on']
    assert rows[2] == [made_up.day(0), "coach", "Waking pain above usual."]


def test_a_stop_stands_with_its_opening() -> None:
    lift = Lifted(1, "in person", "M. Aalto", made_up.day(3), made_up.opened(3))
    found = made_up.facts(made_up.sat(2, made_up.stop(2)), lifts=(lift,))
    row = read(csv_tables(found)["stops.csv"])[1]
    assert row[1] == "S08"
    assert row[4:] == ["my pinky tingles", made_up.day(3), "M. Aalto", "in person"]


def test_each_set_is_a_row() -> None:
    one = made_up.done(reps=(12.0, 10.0), pains=(1.0, 2.5, 3.0), felt=("fine",))
    rows = read(csv_tables(made_up.facts(made_up.sat(0, done=(one,))))["sets.csv"])
    assert [row[2:] for row in rows[1:]] == [
        ["1", "12", "1", "fine"],
        ["2", "10", "2.5", ""],
        ["3", "", "3", ""],
    ]
