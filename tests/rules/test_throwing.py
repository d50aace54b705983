import random
from datetime import UTC, date, datetime, timedelta

import pytest

from coach.model.decisions import Refusal
from coach.model.ladders import ThrowState
from coach.model.program import Place, Plan, ThrowingLine
from coach.model.throws import Part, StepTable, ThrowStep
from coach.rules.throwing import (
    Sore,
    class_words,
    clearance,
    may_throw_today,
    next_throws,
    soreness,
    step_today,
    tired_arm,
    young_arm,
)

TODAY = date(2026, 11, 25)
HERE = Place("plan.yaml", 19)
LINE = ThrowingLine("2026-11-06", "M. Aalto", "youth 8 steps", 1, 4, 2, 1, "", HERE)
OWN = StepTable("own steps", "throws", (ThrowStep(((Part(30, 10),),)),) * 21, 2, 0, "ours", "")


def test_a_whole_line_is_a_clearance(plan: Plan) -> None:
    assert clearance(plan._replace(throwing_line=LINE), TODAY) == LINE


@pytest.mark.parametrize(
    "change",
    [
        {"who": ""},
        {"table": "some table"},
        {"table": "own steps"},
        {"from_step": 0},
        {"from_step": 5},
        {"most_step": 0},
        {"most_step": 9},
        {"apart_days": 0},
        {"cleared": ""},
        {"cleared": "2026-11-31"},
    ],
)
def test_a_line_that_leaves_anything_open_clears_nothing(
    plan: Plan, change: dict[str, object]
) -> None:
    line = LINE._replace(**change)  # type: ignore[arg-type]
    got = clearance(plan._replace(throwing_line=line), TODAY)
    assert isinstance(got, Refusal)
    assert got.rule == "throw.cleared"


def test_no_throwing_line_clears_nothing(plan: Plan) -> None:
    assert isinstance(clearance(plan._replace(throwing_line=None), TODAY), Refusal)


@pytest.mark.parametrize(("most", "cleared"), [(8, True), (9, False)])
def test_the_last_step_lies_in_the_table(plan: Plan, most: int, cleared: bool) -> None:
    line = LINE._replace(most_step=most)
    got = clearance(plan._replace(throwing_line=line), TODAY)
    assert isinstance(got, ThrowingLine) is cleared


@pytest.mark.parametrize(("day", "cleared"), [("2026-11-25", True), ("2026-11-26", False)])
def test_a_clearance_with_a_date_ahead_clears_nothing(plan: Plan, day: str, cleared: bool) -> None:
    got = clearance(plan._replace(throwing_line=LINE._replace(cleared=day)), TODAY)
    assert isinstance(got, ThrowingLine) is cleared


# Axe 2001: the classes belong to a pitchers' program of 21 steps; Axe 2009: to a catchers' of 13.
@pytest.mark.parametrize(
    ("name", "steps", "unit", "fits"),
    [
        ("D", 20, "throws", False), ("D", 21, "throws", True), ("D", 22, "throws", False),
        ("D", 21, "serves", False), ("D", 13, "throws", False),
        ("catcher D", 12, "throws", False), ("catcher D", 13, "throws", True),
        ("catcher D", 14, "throws", False), ("catcher D", 13, "serves", False),
        ("catcher D", 21, "throws", False),
    ],
)  # fmt: skip
def test_a_class_fits_only_a_table_with_the_steps_of_its_program(
    plan: Plan, name: str, steps: int, unit: str, fits: bool
) -> None:
    table = OWN._replace(steps=OWN.steps[:1] * steps, unit=unit)
    line = LINE._replace(table="own steps", class_name=name)
    got = clearance(plan._replace(throwing_line=line, own_steps=table), TODAY)
    assert isinstance(got, ThrowingLine) is fits
    if isinstance(got, Refusal):
        assert got.rule == "throw.class"


@pytest.mark.hazard("H-20")
@pytest.mark.parametrize("table", ["youth 8 steps", "updated 45 steps", "tennis 21 steps"])
def test_a_class_with_a_published_table_clears_nothing(plan: Plan, table: str) -> None:
    line = LINE._replace(table=table, class_name="C")
    got = clearance(plan._replace(throwing_line=line), TODAY)
    assert isinstance(got, Refusal)
    assert got.rule == "throw.class"


@pytest.mark.parametrize(("name", "words"), [("C", "class C"), ("catcher E", "catcher class E")])
def test_a_class_is_written_as_in_a_plan(name: str, words: str) -> None:
    assert class_words(name) == words


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


@pytest.mark.parametrize(
    ("apart", "words"), [(2, "There is 1 whole day off"), (3, "There are 2 whole days off")]
)
def test_a_wait_says_how_many_days_off(apart: int, words: str) -> None:
    assert words in may_throw_today(LAST.isoformat(), LAST, apart, 0).why


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
    cleared = LINE._replace(most_step=8, sessions_a_step=days.choice((0, 1, 2)))
    state = ThrowState(cleared.from_step)
    last: datetime | None = None
    rest = 0
    for day in range(120):
        now = LAST + timedelta(days=day, hours=days.choice((-3, 0, 2)))
        last_at = None if last is None else last.isoformat()
        if may_throw_today(last_at, now, cleared.apart_days, rest).outcome == "wait":
            continue
        follows, _ = soreness(Sore(*(days.random() < 0.12 for _ in range(6))))
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
