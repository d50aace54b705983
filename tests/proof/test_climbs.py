"""Ladders by themselves: nothing is wrong with the rules, and each planted slip is found."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from coach.drivers.prove_ladders import Climbed, climbed
from coach.model.program import Axis
from coach.model.quantities import Load
from coach.rules import progression
from coach.session.brief import Brief
from tests.session.invented import HERE, OUT, asked_lately, bound, brief, prescription

Patch = pytest.MonkeyPatch
POUNDS = tuple(Load("dumbbell", amount, "lb") for amount in (1.0, 2.0, 2.2, 2.5))
RISING = prescription(
    OUT,
    sets=Axis(2, 2, 1, 0, 3, HERE),
    reps=Axis(10, 15, 1, 0, 17, HERE),
    range=Axis(0, 0, 1, 28, 1, HERE),
    load_step=0.5,
    load_cap=POUNDS[-1],
    goes_up=("reps", "sets", "load", "range"),
)


def a_day() -> Brief:
    others = tuple(dose for dose in bound().plan.doses if dose.exercise != OUT.name)
    return brief(asked_lately(), doses=(RISING, *others), loads_at_home=POUNDS)


def found(climb: Climbed) -> set[tuple[str, str]]:
    return {(one.promise, one.words) for one in climb.broken}


def test_the_rules_keep_every_ladder_inside_its_plan() -> None:
    climb = climbed(a_day())
    assert found(climb) == set()
    assert (climb.ladders, climb.memories > 100, climb.steps > 10_000) == (3, True, True)


def test_a_ladder_reaches_all_that_its_plan_lets_it_reach() -> None:
    alone = climbed(brief(asked_lately()))
    assert climbed(a_day()).memories > alone.memories * 3 / 2


def one_good_session_is_enough(patch: Patch) -> None:
    patch.setattr(progression, "SESSIONS_RUNNING", 1)


def read_as(patch: Patch, **told: object) -> None:
    """The rule reads each day as if it told this."""
    rule = progression.next_ladder
    patch.setattr(
        progression,
        "next_ladder",
        lambda now, day, rails, may: rule(now, day._replace(**told), rails, may),
    )


def leave_is_not_needed(patch: Patch) -> None:
    rule = progression.next_ladder
    patch.setattr(
        progression, "next_ladder", lambda now, day, rails, _may: rule(now, day, rails, True)
    )


def a_sore_morning_is_forgotten(patch: Patch) -> None:
    read_as(patch, morning_up=False)


def weeks_are_not_waited(patch: Patch) -> None:
    patch.setattr(progression, "_waited", lambda *_: True)


def a_pinch_is_forgotten(patch: Patch) -> None:
    read_as(patch, pinch=False)


def the_load_goes_up_by_half(patch: Patch) -> None:
    patch.setattr(progression, "STEP_AT_MOST", 0.5)


def two_things_go_up(patch: Patch) -> None:
    rule = progression.one_up
    patch.setattr(
        progression,
        "one_up",
        lambda axis, dose, rails: (
            higher._replace(sets=3) if (higher := rule(axis, dose, rails)) else None
        ),
    )


def a_cap_is_one_too_high(patch: Patch) -> None:
    patch.setattr(
        progression,
        "_reps_up",
        lambda dose, _line: (
            dose._replace(reps_high=dose.reps_high + 1) if dose.reps_high < 18 else None
        ),
    )
    patch.setattr(progression, "_gated", lambda dose, _rails: dose)


def few_reps_earn_a_step(patch: Patch) -> None:
    rule = progression.next_ladder
    patch.setattr(
        progression,
        "next_ladder",
        lambda now, day, rails, may: rule(
            now, day._replace(result="earned") if day.result == "short" else day, rails, may
        ),
    )


def the_first_exercise_always_rises(patch: Patch) -> None:
    patch.setattr(progression, "arbiter", lambda wants: 0 if wants else None)


SLIPS: dict[Callable[[Patch], None], tuple[str, str]] = {
    one_good_session_is_enough: ("P5", "reps rises without two earned sessions running"),
    leave_is_not_needed: ("P5", "a ladder rises without leave"),
    a_sore_morning_is_forgotten: (
        "P5",
        "a ladder rises after days off, a sore morning or a stop",
    ),
    weeks_are_not_waited: ("P5", "range rises before its days are over"),
    a_pinch_is_forgotten: ("P5", "the range grows after a pinch"),
    the_load_goes_up_by_half: ("P5", "load rises by more than a step"),
    two_things_go_up: ("P5", "two things rise on one day: sets and reps"),
    a_cap_is_one_too_high: ("P2", "a ladder is past its plan: reps 18 is over the cap"),
    few_reps_earn_a_step: ("P5", "a ladder rises after a session that went short"),
    the_first_exercise_always_rises: ("P5", "an exercise that earned no step may rise"),
}


@pytest.mark.parametrize("slip", SLIPS, ids=lambda slip: slip.__name__)
def test_a_slip_in_the_rules_is_found(slip: Callable[[Patch], None], monkeypatch: Patch) -> None:
    slip(monkeypatch)
    assert SLIPS[slip] in found(climbed(a_day()))


def test_a_break_is_told_as_the_days_that_lead_to_it(monkeypatch: Patch) -> None:
    one_good_session_is_enough(monkeypatch)
    (one,) = (
        each for each in climbed(a_day()).broken if each.words.startswith("reps rises without")
    )
    assert one.day == "the ladder of side-lying turn out"
    assert [words for _day, words in one.talk] == ["earned, may rise"]
