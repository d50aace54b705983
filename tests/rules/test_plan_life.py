from datetime import UTC, date, datetime, timedelta, timezone

import pytest

from coach.model.program import Plan
from coach.rules.plan_life import clock_back, plan_life

EAST = timezone(timedelta(hours=9))
WEST = timezone(timedelta(hours=-8))


@pytest.mark.parametrize(
    ("today", "outcome"),
    [
        (date(2026, 11, 8), "not yet"),
        (date(2026, 11, 9), "may"),
        (date(2026, 12, 21), "may"),
        (date(2026, 12, 22), "over"),
    ],
)
@pytest.mark.hazard("H-04")
def test_a_plan_runs_from_its_start_through_its_review_day(
    plan: Plan, today: date, outcome: str
) -> None:
    decision = plan_life(plan, today)
    assert decision.outcome == outcome
    assert decision.rule == "plan.life"
    assert decision.place == plan.runs_place


@pytest.mark.parametrize(("opened", "outcome"), [("2026-11-25", "may"), ("2026-11-26", "not yet")])
def test_a_phase_dated_ahead_is_not_open_yet(plan: Plan, opened: str, outcome: str) -> None:
    ahead = plan._replace(phase_opened=plan.phase_opened._replace(day=opened))
    assert plan_life(ahead, date(2026, 11, 25)).outcome == outcome


@pytest.mark.parametrize(
    ("last_at", "outcome"),
    [
        ("", "may"),
        ("2026-11-25T18:29:59+00:00", "may"),
        ("2026-11-25T18:30:00+00:00", "may"),
        ("2026-11-25T18:30:01+00:00", "clock back"),
        ("2026-11-25T18:00:00", "clock back"),
        ("yesterday", "clock back"),
    ],
)
@pytest.mark.hazard("H-05")
def test_a_clock_before_the_last_record_allows_no_session(last_at: str, outcome: str) -> None:
    opened = datetime(2026, 11, 25, 18, 30, tzinfo=UTC)
    assert clock_back(last_at, opened).outcome == outcome


def test_an_opening_without_an_offset_cannot_be_placed() -> None:
    opened = datetime(2026, 11, 25, 18, 30)  # noqa: DTZ001  the case under test
    assert clock_back("2026-11-25T18:00:00+00:00", opened).outcome == "clock back"


def test_a_flight_west_is_no_clock_turned_back() -> None:
    opened = datetime(2026, 11, 25, 9, 0, tzinfo=WEST)
    assert clock_back("2026-11-26T01:00:00+09:00", opened).outcome == "may"


def test_a_clock_turned_back_is_seen_through_another_offset() -> None:
    opened = datetime(2026, 11, 26, 1, 0, tzinfo=EAST)
    assert clock_back("2026-11-25T09:00:00-08:00", opened).outcome == "clock back"
