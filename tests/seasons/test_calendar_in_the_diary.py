"""Odd calendars through the real diary and the real loop, one sitting after the other."""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta

import pytest

from coach.drivers.drive import run
from coach.drivers.replay import DayPort, ReplayClock, diary_in_memory
from coach.journal import Journal
from coach.model.history import DayRecord
from coach.model.program import Place
from coach.model.scenario import ScenarioDay
from coach.rules.layoff import days_missed
from coach.session.brief import brief_for
from coach.session.ladders import gap_of
from coach.texts.scenarios import read_course
from tests.seasons.test_calendar import (
    EVERY_OTHER_DAY,
    HELSINKI,
    HONOLULU,
    KIRITIMATI,
    SMOOTH,
    at,
    begun,
    done,
)


def sat(journal: Journal, first: date, opened_at: datetime) -> DayRecord:
    """One sitting of a calm athlete in the diary; its record."""
    course, findings = read_course(SMOOTH)
    assert course is not None, findings
    day = ScenarioDay(opened_at.date().isoformat(), "00:00", (), (), Place("", 0))
    clock = ReplayClock(opened_at)
    run(begun(first), DayPort(day, course.usual, clock), journal, clock)
    record = journal.sessions(1)[0].record
    assert record is not None
    return record


def kept(first: date, *instants: datetime) -> tuple[Journal, list[DayRecord]]:
    """A diary of sittings at some instants, and their records, oldest first."""
    journal = diary_in_memory()
    return journal, [sat(journal, first, one) for one in instants]


@pytest.mark.hazard("H-05")
@pytest.mark.parametrize(
    ("first", "one", "other"),
    [row[1:] for row in EVERY_OTHER_DAY],
    ids=[row[0] for row in EVERY_OTHER_DAY],
)
def test_every_other_day_in_the_diary_stays_every_other_day(
    first: date, one: tuple[int, int, int], other: tuple[int, int, int]
) -> None:
    journal, records = kept(first, at(HELSINKI, *one), at(HELSINKI, *other))
    assert ["turn out" in done(record) for record in records] == [True, True]
    assert [record.day for record in records] == [date(*one).isoformat(), date(*other).isoformat()]
    assert days_missed(date(*one), date(*other)) == 1
    assert (
        gap_of(brief_for(begun(first), journal.history(), at(HELSINKI, *other))).outcome == "none"
    )


@pytest.mark.hazard("H-05")
@pytest.mark.parametrize(
    ("first", "one", "other"),
    [
        (date(2027, 2, 24), (2027, 2, 28), (2027, 3, 1)),
        (date(2028, 2, 24), (2028, 2, 28), (2028, 2, 29)),
        (date(2028, 2, 24), (2028, 2, 29), (2028, 3, 1)),
        (date(2026, 12, 20), (2026, 12, 31), (2027, 1, 1)),
        (date(2026, 3, 20), (2026, 3, 28), (2026, 3, 29)),
        (date(2026, 10, 20), (2026, 10, 24), (2026, 10, 25)),
    ],
)
def test_the_day_after_in_the_diary_is_a_rest_day_for_loaded_work_and_throws(
    first: date, one: tuple[int, int, int], other: tuple[int, int, int]
) -> None:
    _journal, records = kept(first, at(HELSINKI, *one), at(HELSINKI, *other))
    assert not done(records[1]) & {"turn out", "table row", "box squat"}
    assert records[1].threw is None


FLIGHTS = {
    "east, 36 h later on the date after next": (
        at(HONOLULU, 2027, 1, 10, 20),
        at(HELSINKI, 2027, 1, 12, 20),
    ),
    "west, later on the same date": (at(KIRITIMATI, 2027, 1, 10, 8), at(HONOLULU, 2027, 1, 10, 20)),
    "over the date line into yesterday": (
        at(KIRITIMATI, 2027, 1, 10, 8),
        at(HONOLULU, 2027, 1, 9, 10),
    ),
}


@pytest.mark.hazard("H-05")
@pytest.mark.parametrize("flight", FLIGHTS)
def test_a_flight_brings_no_second_loaded_session_no_throws_and_no_negative_gap(
    flight: str,
) -> None:
    first, (there, here) = date(2027, 1, 5), FLIGHTS[flight]
    assert here.astimezone(UTC) > there.astimezone(UTC)
    journal, records = kept(first, there, here)
    assert "turn out" in done(records[0])
    assert not done(records[1]) & {"turn out", "table row", "arm reach up", "box squat"}
    assert records[1].threw is None
    assert days_missed(there.date(), here.date()) >= 0
    later = brief_for(begun(first), journal.history(), here + timedelta(days=2))
    assert gap_of(later).outcome == "none"


@pytest.mark.hazard("H-05")
def test_after_a_flight_the_rest_days_end_when_they_should() -> None:
    first = date(2027, 1, 5)
    there, here = at(HONOLULU, 2027, 1, 10, 8), at(HELSINKI, 2027, 1, 13, 20)
    _journal, records = kept(first, there, here)
    assert "turn out" in done(records[1])
