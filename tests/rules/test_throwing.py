import random
from datetime import UTC, date, datetime, timedelta

import pytest

from coach.model.decisions import Refusal
from coach.model.ladders import ThrowState
from coach.model.program import Plan
from coach.rules.throwing import (
    Clearance,
    Sore,
    clearance,
    may_throw_today,
    next_throws,
    soreness,
    step_today,
    tired_arm,
    young_arm,
)

TODAY = date(2026, 11, 25)
LINE = "cleared 2026-11-06 by M. Aalto, youth 8 steps, from step 1, at most step 4, apart 2 days"


def test_a_whole_line_is_a_clearance(plan: Plan) -> None:
    got = clearance(plan._replace(throwing=LINE), TODAY)
    assert got == Clearance("2026-11-06", "M. Aalto", "youth 8 steps", 1, 4, 2, 1, "")


def test_a_line_may_name_a_class_and_sessions_a_step(plan: Plan) -> None:
    more = f"{LINE}, class C, sessions a step 2"
    got = clearance(plan._replace(throwing=more), TODAY)
    assert isinstance(got, Clearance)
    assert (got.injury_class, got.at_each_step) == ("C", 2)


@pytest.mark.parametrize(
    "line",
    [
        "",
        "not cleared",
        "cleared",
        "cleared 2026-11-06, youth 8 steps, from step 1, at most step 4, apart 2 days",
        "cleared 2026-11-06 by , youth 8 steps, from step 1, at most step 4, apart 2 days",
        LINE.replace("youth 8 steps, ", ""),
        LINE.replace("from step 1, ", ""),
        LINE.replace(", at most step 4", ""),
        LINE.replace(", apart 2 days", ""),
        LINE.replace("from step 1", "from step 0"),
        LINE.replace("from step 1", "from step 5"),
        LINE.replace("2026-11-06", "2026-11-31"),
        f"{LINE}, sessions a step 0",
        f"{LINE}, and some more",
    ],
)
def test_a_line_that_leaves_anything_open_clears_nothing(plan: Plan, line: str) -> None:
    got = clearance(plan._replace(throwing=line), TODAY)
    assert isinstance(got, Refusal)
    assert got.rule == "throw.cleared"


@pytest.mark.parametrize(("day", "cleared"), [("2026-11-25", True), ("2026-11-26", False)])
def test_a_clearance_with_a_date_ahead_clears_nothing(plan: Plan, day: str, cleared: bool) -> None:
    got = clearance(plan._replace(throwing=LINE.replace("2026-11-06", day)), TODAY)
    assert isinstance(got, Clearance) is cleared


LAST = datetime(2026, 11, 23, 18, 0, tzinfo=UTC)


@pytest.mark.parametrize(
    ("apart", "rest", "days_later", "outcome"),
    [
        (1, 0, 1, "wait"),
        (1, 0, 2, "may"),
        (2, 0, 2, "may"),
        (3, 0, 2, "wait"),
        (3, 0, 3, "may"),
        # two whole days off by the soreness table: the third day, not their sum
        (2, 2, 2, "wait"),
        (2, 2, 3, "may"),
        (3, 2, 3, "may"),
        (2, 1, 2, "may"),
    ],
)
def test_the_longest_of_spacing_and_rest_counts(
    apart: int, rest: int, days_later: int, outcome: str
) -> None:
    now = LAST + timedelta(days=days_later)
    decision = may_throw_today(LAST.isoformat(), now, apart, rest)
    assert decision.outcome == outcome
    assert decision.why.startswith("No throws today." if outcome == "wait" else "You may throw")


def test_first_throws_need_no_wait() -> None:
    assert may_throw_today(None, LAST, 2, 2).outcome == "may"


@pytest.mark.parametrize(
    ("tired", "painful", "outcome"),
    [(False, False, "may"), (True, False, "none"), (False, True, "none"), (True, True, "none")],
)
def test_a_tired_or_painful_arm_does_not_throw(tired: bool, painful: bool, outcome: str) -> None:
    assert tired_arm(tired, painful).outcome == outcome


@pytest.mark.parametrize(
    ("minor", "hurts", "outcome"),
    [(True, True, "stop"), (True, False, "may"), (False, True, "may"), (False, False, "may")],
)
def test_a_young_arm_that_hurts_up_high_or_inside_stops_all_throws(
    minor: bool, hurts: bool, outcome: str
) -> None:
    assert young_arm(minor, hurts).outcome == outcome


@pytest.mark.parametrize("seed", range(50))
def test_no_season_of_throws_passes_the_last_step_or_loses_a_day_off(seed: int) -> None:
    days = random.Random(seed)
    cleared = Clearance("2026-11-06", "M. Aalto", "youth 8 steps", 1, 8, 2, days.choice((1, 2)), "")
    state = ThrowState(cleared.from_step)
    last: datetime | None = None
    rest = 0
    for day in range(120):
        now = LAST + timedelta(days=day, hours=days.choice((-3, 0, 2)))
        last_at = None if last is None else last.isoformat()
        if may_throw_today(last_at, now, cleared.apart_days, rest).outcome == "wait":
            continue
        follows, _ = soreness(Sore(*(days.random() < 0.12 for _ in range(5))))
        thrown = step_today(state, follows)
        if thrown is not None:
            assert 1 <= thrown <= cleared.most_step
            if last is not None:
                assert (now.date() - last.date()).days >= max(2, rest + 1)
            last = now
        after, decision = next_throws(state, follows, cleared)
        assert 1 <= after.planned <= cleared.most_step
        assert after.planned <= state.planned + 1
        if after.planned > state.planned:
            assert decision.outcome == "up"
            assert follows.today == "throw"
        if decision.outcome == "contact":
            break
        state, rest = after, follows.rest_days
