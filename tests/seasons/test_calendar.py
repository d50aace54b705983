"""Short months, leap days, year ends, both clock changes and flights over 12 zones."""

from __future__ import annotations

import functools
from datetime import UTC, date, datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from coach.drivers.forecast_days import CourseAthlete, Ears, past, play_day, typed_on
from coach.model.history import DayRecord
from coach.model.program import Bound
from coach.rules.layoff import days_missed
from coach.session.brief import brief_for
from coach.session.ladders import gap_of
from coach.texts.scenarios import read_course
from tests.seasons.season import dated, plan

SMOOTH = Path(__file__).parents[2] / "dialogs" / "steady-shoulder" / "courses" / "smooth.yaml"
HELSINKI, HONOLULU, KIRITIMATI = (
    ZoneInfo(name) for name in ("Europe/Helsinki", "Pacific/Honolulu", "Pacific/Kiritimati")
)


@functools.cache
def begun(first: date) -> Bound:
    """The invented plan begun on a day, all of it opened."""
    return dated(plan("g-w"), first, first, first)


def played(first: date, *instants: datetime) -> list[DayRecord]:
    """A calm athlete's sessions at some instants, oldest first."""
    course, findings = read_course(SMOOTH)
    assert course is not None, findings
    records: list[DayRecord] = []
    for at in instants:
        athlete = CourseAthlete(typed_on(course, 1, "Monday"), at.date())
        history = past(tuple(reversed(records)))
        records.append(play_day(begun(first), history, at, athlete, Ears()).record)
    return records


def done(record: DayRecord) -> set[str]:
    """What was done."""
    return {one.exercise for one in record.done if one.sets}


def at(zone: ZoneInfo, year: int, month: int, day: int, hour: int = 18) -> datetime:
    """An instant by the clock of a place."""
    return datetime(year, month, day, hour, tzinfo=zone)


EVERY_OTHER_DAY = [
    ("the end of February", date(2027, 2, 24), (2027, 2, 27), (2027, 3, 1)),
    ("a leap day, onto it", date(2028, 2, 24), (2028, 2, 27), (2028, 2, 29)),
    ("a leap day, off it", date(2028, 2, 24), (2028, 2, 29), (2028, 3, 2)),
    ("the end of a year", date(2026, 12, 20), (2026, 12, 31), (2027, 1, 2)),
    ("clocks forward, 47 h", date(2026, 3, 20), (2026, 3, 28), (2026, 3, 30)),
    ("clocks back, 49 h", date(2026, 10, 20), (2026, 10, 24), (2026, 10, 26)),
]


@pytest.mark.hazard("H-05")
@pytest.mark.parametrize(
    ("first", "one", "other"),
    [row[1:] for row in EVERY_OTHER_DAY],
    ids=[r[0] for r in EVERY_OTHER_DAY],
)
def test_every_other_day_stays_every_other_day(
    first: date, one: tuple[int, int, int], other: tuple[int, int, int]
) -> None:
    both = played(first, at(HELSINKI, *one), at(HELSINKI, *other))
    assert ["turn out" in done(record) for record in both] == [True, True]
    assert [record.threw is not None and record.threw.step for record in both] == [1, 2]


@pytest.mark.hazard("H-05")
@pytest.mark.parametrize(
    ("first", "one", "other"),
    [
        (date(2027, 2, 24), (2027, 2, 28), (2027, 3, 1)),
        (date(2028, 2, 24), (2028, 2, 28), (2028, 2, 29)),
        (date(2026, 12, 20), (2026, 12, 31), (2027, 1, 1)),
        (date(2026, 3, 20), (2026, 3, 28), (2026, 3, 29)),
        (date(2026, 10, 20), (2026, 10, 24), (2026, 10, 25)),
    ],
)
def test_the_day_after_is_a_rest_day_for_loaded_work_and_throws(
    first: date, one: tuple[int, int, int], other: tuple[int, int, int]
) -> None:
    second = played(first, at(HELSINKI, *one), at(HELSINKI, *other))[1]
    assert "turn out" not in done(second)
    assert second.threw is None
    assert "wall slide" in done(second)


@pytest.mark.hazard("H-05")
def test_two_whole_days_of_rest_are_not_lost_when_the_clocks_go_forward() -> None:
    days = (at(HELSINKI, 2026, 3, 27), at(HELSINKI, 2026, 3, 29), at(HELSINKI, 2026, 3, 31))
    reach = ["arm reach up" in done(record) for record in played(date(2026, 3, 20), *days)]
    assert reach == [True, False, True]


# ---------------------------------------------------------------- flights


@pytest.mark.hazard("H-05")
def test_a_flight_east_gains_no_day() -> None:
    evening = at(HONOLULU, 2027, 1, 10, 20)
    morning = at(HELSINKI, 2027, 1, 12, 20)  # 36 h later, two dates on
    assert (morning.astimezone(UTC) - evening.astimezone(UTC)) == timedelta(hours=36)
    second = played(date(2027, 1, 5), evening, morning)[1]
    assert "turn out" not in done(second)
    assert second.threw is None


@pytest.mark.hazard("H-05")
def test_a_flight_west_on_the_same_date_is_no_second_session() -> None:
    there, here = at(KIRITIMATI, 2027, 1, 10, 8), at(HONOLULU, 2027, 1, 10, 20)
    assert here.astimezone(UTC) > there.astimezone(UTC)
    second = played(date(2027, 1, 5), there, here)[1]
    assert done(second) == {"wall slide"}
    assert second.threw is None


@pytest.mark.hazard("H-05")
def test_a_flight_over_the_date_line_into_yesterday_is_no_second_session_either() -> None:
    there, here = at(KIRITIMATI, 2027, 1, 10, 8), at(HONOLULU, 2027, 1, 9, 10)
    assert here.astimezone(UTC) > there.astimezone(UTC)
    second = played(date(2027, 1, 5), there, here)[1]
    assert not done(second) & {"turn out", "table row", "arm reach up"}
    assert second.threw is None


@pytest.mark.hazard("H-05")
def test_no_gap_is_ever_negative() -> None:
    assert days_missed(date(2027, 1, 10), date(2027, 1, 9)) == 0
    assert days_missed(date(2027, 1, 10), date(2027, 1, 10)) == 0
    there, here = at(KIRITIMATI, 2027, 1, 10, 8), at(HONOLULU, 2027, 1, 9, 10)
    records = played(date(2027, 1, 5), there)
    brief = brief_for(begun(date(2027, 1, 5)), past(tuple(records)), here)
    assert gap_of(brief).outcome == "none"
    ladders = brief.standings(morning_up=False, held=())
    assert {s.decision.outcome for s in ladders.values()} == {"same"}


@pytest.mark.hazard("H-05")
def test_28_days_off_are_counted_over_a_leap_february() -> None:
    first = date(2028, 1, 20)
    records = played(first, at(HELSINKI, 2028, 2, 1))
    for day, outcome in ((date(2028, 2, 29), "first step"), (date(2028, 3, 1), "contact")):
        now = datetime(day.year, day.month, day.day, 18, tzinfo=HELSINKI)
        assert gap_of(brief_for(begun(first), past(tuple(records)), now)).outcome == outcome
