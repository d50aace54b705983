from datetime import date

import pytest

from coach.rules.layoff import days_missed, gap, loads_by_day


@pytest.mark.parametrize(
    ("last", "today", "missed"),
    [
        (date(2026, 11, 25), date(2026, 11, 25), 0),
        (date(2026, 11, 24), date(2026, 11, 25), 0),
        (date(2026, 11, 23), date(2026, 11, 25), 1),
        (date(2026, 11, 26), date(2026, 11, 25), 0),
        (date(2028, 2, 28), date(2028, 3, 1), 1),
        (date(2027, 2, 28), date(2027, 3, 1), 0),
        (date(2026, 12, 31), date(2027, 1, 8), 7),
    ],
)
def test_days_missed_are_whole_days_between_two_sessions(
    last: date, today: date, missed: int
) -> None:
    assert days_missed(last, today) == missed


@pytest.mark.parametrize(
    ("missed", "outcome"),
    [
        (0, "none"),
        (6, "none"),
        (7, "one step down"),
        (13, "one step down"),
        (14, "first step"),
        (27, "first step"),
        (28, "contact"),
        (400, "contact"),
    ],
)
def test_a_gap_steps_down_begins_again_or_asks_the_clinician(missed: int, outcome: str) -> None:
    decision = gap(missed)
    assert decision.outcome == outcome
    assert decision.rule == "layoff.gap"


def test_a_day_without_a_session_has_load_nought() -> None:
    loads = (("2026-11-09", 200.0), ("2026-11-11", 100.0), ("2026-11-11", 50.0), ("2026-12-01", 9))
    week = loads_by_day(loads, date(2026, 11, 9), date(2026, 11, 15))
    assert week == (200, 0, 150, 0, 0, 0, 0)


def test_a_week_over_a_clock_change_has_seven_days() -> None:
    assert len(loads_by_day((), date(2026, 10, 22), date(2026, 10, 28))) == 7
