"""Comparisons seen equal comparisons declared, in both directions."""

from collections.abc import Callable
from typing import Any

import pytest

from coach.model.program import GamePitches, Plan, ThrowingLine
from coach.rules import pain, pitching, readiness
from coach.rules.cut_points import CutPoint, Side, cut_points, pitch_cuts

ROOM = pain.Room(shorter=True, easier=True, lighter=True)
USUAL = 1.0


class OnlyCompared:
    """Logs ("over", n), ("at and over", n) or ("under", n) by which side of n would act.

    `x > n` and `x <= n` part at over n; `x >= n` and `x < n` part at n itself.
    """

    __hash__ = None  # type: ignore[assignment]

    def __init__(self, value: float) -> None:
        self._value = value
        self.parted: set[tuple[str, float]] = set()

    def _seen(self, part: str, other: object) -> float:
        if isinstance(other, OnlyCompared):
            message = "two answers compared"
            raise TypeError(message)
        if not isinstance(other, (int, float)):
            raise TypeError(type(other).__name__)
        self.parted.add((part, float(other)))
        return float(other)

    def __gt__(self, other: object) -> bool:
        return self._value > self._seen("over", other)

    def __le__(self, other: object) -> bool:
        return self._value <= self._seen("over", other)

    def __ge__(self, other: object) -> bool:
        return self._value >= self._seen("at", other)

    def __lt__(self, other: object) -> bool:
        return self._value < self._seen("at", other)

    def __bool__(self) -> bool:
        message = "an answer is not a truth"
        raise TypeError(message)


def parted(judge: Callable[[Any], object], top: float) -> set[tuple[str, float]]:
    """Where `judge` parts answers from 0 to `top`, over every half."""
    seen: set[tuple[str, float]] = set()
    for half in range(int(2 * top) + 1):
        answer = OnlyCompared(half / 2)
        judge(answer)
        seen |= answer.parted
    return seen


def judges(plan: Plan) -> dict[str, list[Callable[[Any], object]]]:
    ceilings = plan.pain
    return {
        "pain now": [pain.is_flag, lambda a: pain.to_start(a, ceilings)],
        "worst pain": [pain.is_flag],
        "waking pain": [
            pain.is_flag,
            lambda a: pain.next_morning(a, USUAL, up_last_time=True),
            lambda a: readiness.may_be_muscle_ache(a, 1),
        ],
        "pain in warm-up": [lambda a: pain.in_warm_up(a, ceilings)],
        "pain in set": [lambda a: pain.in_set(a, ceilings, ROOM, False, 1)],
        "pain before a changed set": [lambda a: pain.before_changed_set(a, ceilings, 1)],
        "pain in throwing": [pain.is_flag, lambda a: pain.in_throwing(a, ceilings)],
        "sleep last night": [lambda a: readiness.short_sleep(a, plan)],
    }


@pytest.mark.parametrize("changed", [(), (("ready.sleep", 5.0),)])
def test_comparisons_seen_equal_those_declared(plan: Plan, changed: Any) -> None:
    line = ThrowingLine("2026-11-06", "M. Aalto", "youth 8 steps", 1, 4, 2, 0, "", plan.place)
    plan = plan._replace(changed=changed, throwing_line=line)
    seen = {
        (fact, part, number)
        for fact, rules in judges(plan).items()
        for rule in rules
        for part, number in parted(rule, 16 if fact == "sleep last night" else 10)
    }
    declared = {
        (cut.fact, "over" if cut.side is Side.OVER else "at", float(cut.number))
        for cut in cut_points(plan, USUAL)
    }
    assert seen == declared


@pytest.mark.parametrize("age", [12, 17, 20, 30])
def test_pitch_counts_are_compared_with_the_editions_numbers_only(plan: Plan, age: int) -> None:
    line = GamePitches(("pitcher", "catcher"), ("2015 edition", "later edition"), plan.place)
    judged = {
        "pitches before": lambda a: (
            pitching.over_the_cap(age, a, line.editions),
            pitching.rest_days(age, a, line.editions),
        ),
        "pitches today": lambda a: pitching.pitched_today(a, catches=True),
        "innings caught today": pitching.caught_today,
    }
    seen = {
        (fact, part, number) for fact, rule in judged.items() for part, number in parted(rule, 300)
    }
    declared = {
        (cut.fact, "over" if cut.side is Side.OVER else "at", float(cut.number))
        for cut in pitch_cuts(plan._replace(game_pitches=line), age)
    }
    assert seen <= declared
    assert {cut for cut in declared if cut[0] == "pitches before"} <= seen
    assert not pitch_cuts(plan, age)


def test_a_plan_that_clears_no_throwing_compares_no_pain_on_throwing(plan: Plan) -> None:
    assert "pain in throwing" not in {cut.fact for cut in cut_points(plan, USUAL)}


def test_another_ceiling_in_the_plan_moves_the_cut(plan: Plan) -> None:
    moved = plan._replace(pain=plan.pain._replace(in_exercise=1.5))
    new = cut_points(moved, USUAL) - cut_points(plan, USUAL)
    assert CutPoint("pain in set", Side.OVER, 1.5) in new


def test_the_log_itself_refuses_two_answers() -> None:
    with pytest.raises(TypeError, match="two answers"):
        _ = OnlyCompared(1) > OnlyCompared(2)
