"""A past that does not fit: a gap, a day twice, a plan swapped, a load gone, a date to come.

Each holds, lowers or is refused by name, in plain words; none leads to a higher dose.
"""

from __future__ import annotations

from datetime import timedelta

import pytest

from coach.model.history import Done, History
from coach.model.ladders import Ladder
from coach.model.program import ThrowingLine
from coach.model.quantities import Load
from coach.session import throwing
from coach.session.brief import brief_for
from coach.session.ladders import gap_of
from tests.session.invented import (
    HERE,
    MONDAY,
    OUT,
    ROW,
    asked_lately,
    axis,
    bound,
    brief,
    prescription,
)
from tests.session.talking import TO_THE_FIRST_SET, talk
from tests.session.test_ladders import after, climbing, opening, tops


@pytest.mark.parametrize(
    ("days", "outcome"), [(7, "none"), (8, "one step down"), (15, "first step"), (29, "contact")]
)
def test_a_diary_with_a_gap_lowers_or_asks_the_clinician(days: int, outcome: str) -> None:
    day = climbing((after("earned", days=days),))
    assert gap_of(day).outcome == outcome
    assert tops(day) == ((16, 15) if outcome == "none" else (15, 15))


def test_after_28_days_off_the_clinician_is_named() -> None:
    away = talk(climbing((after("earned", days=29),)))
    assert away.name == "stopped"
    assert "M. Aalto" in away.words


def test_a_day_that_stands_twice_in_the_diary_earns_no_step_twice() -> None:
    once = after("earned", good_run=0)
    later = once._replace(
        opened_at=(MONDAY - timedelta(days=2) + timedelta(hours=1)).isoformat(),
    )
    assert tops(climbing((later, once))) == (15, 15)


def test_a_day_that_stands_twice_counts_by_its_worse_half() -> None:
    good, bad = after("earned"), after("over")
    for both in ((good, bad), (bad, good)):
        day = climbing(both).standings(morning_up=False, held=())[OUT.name]
        assert (day.decision.rule, day.decision.outcome) == ("prog.down", "down")


def test_a_plan_swapped_the_day_after_brings_no_loaded_work_that_day() -> None:
    at = MONDAY - timedelta(days=1)
    done = tuple(Done(made.name, 3, True, at.isoformat()) for made in (OUT, ROW))
    last = after("earned", days=1, done=done)
    doses = tuple(
        one._replace(apart_days=2) if one.exercise in {OUT.name, ROW.name} else one
        for one in bound().plan.doses
    )
    history = asked_lately()._replace(records=(last,))
    swapped = talk(brief(history, version=2, doses=doses), "yes", "pain 1, morning 0, slept 8")
    swapped = swapped.say("none", "none")
    while swapped.name.startswith(("screen", "throwing", "weight", "many", "pain", "over")):
        if swapped.name == "pain in warm-up":
            break
        swapped = swapped.say("no" if swapped.name != "screen" else "none")
    listed = {offer.exercise for offer in swapped.now.offers if offer.kind == "list"}
    assert listed == {"wall hold"}
    assert "Your plan has a new version." in swapped.words


def test_a_new_version_moves_nothing_up_that_was_earned_at_another_dose() -> None:
    again = climbing((after("earned"),), version=2)
    assert tops(again) == (16, 15)  # the dose is the same, so what was earned counts
    smaller = tuple(
        one._replace(reps=axis(8, 12)._replace(step=1, cap=14))
        for one in climbing(()).plan.doses
        if one.exercise == OUT.name
    )
    rest = tuple(one for one in climbing(()).plan.doses if one.exercise != OUT.name)
    other = brief(
        asked_lately()._replace(records=(after("earned"),)), version=2, doses=(*smaller, *rest)
    )
    dose = other.standings(morning_up=False, held=())[OUT.name].ladder.dose
    assert dose.reps_high <= 14


def test_a_load_that_the_athlete_no_longer_owns_is_rounded_down_and_told() -> None:
    five, six, seven = (Load("dumbbell", float(n), "lb") for n in (5, 6, 7))
    dose = opening(OUT.name).dose._replace(load=seven)
    last = after("good")._replace(ladders=((OUT.name, Ladder(dose)),))
    line = prescription(OUT, load=five, load_cap=seven, load_step=0.5, lighter=())
    day = brief(
        History((last,), asked_alone=asked_lately().asked_alone),
        version=2,
        at_home=("5 lb dumbbell", "6 lb dumbbell"),
        loads_at_home=(five, six),
        doses=tuple(line if d.exercise == OUT.name else d for d in bound().plan.doses),
    )
    assert day.standings(morning_up=False, held=())[OUT.name].ladder.dose.load == six


@pytest.mark.parametrize(("ahead", "opens"), [(0, True), (1, False)])
def test_a_throwing_clearance_of_a_day_to_come_is_told_and_opens_nothing(
    ahead: int, opens: bool
) -> None:
    cleared = (MONDAY.date() + timedelta(days=ahead)).isoformat()
    line = ThrowingLine(cleared, "M. Aalto", "youth 8 steps", 1, 4, 2, 0, "", HERE)
    day = brief(throwing_line=line)
    said = throwing.may_throw(talk(day, *TO_THE_FIRST_SET).state)
    assert said is not None
    assert (said.rule == "throw.cleared") is not opens
    assert ("No throwing today." in said.why) is not opens
    assert ("still to come" in said.why) is not opens


def test_a_throwing_clearance_whose_day_cannot_be_read_opens_nothing() -> None:
    line = ThrowingLine("2026-02-30", "M. Aalto", "youth 8 steps", 1, 4, 2, 0, "", HERE)
    said = throwing.may_throw(talk(brief(throwing_line=line), *TO_THE_FIRST_SET).state)
    assert said is not None
    assert (said.rule, said.outcome) == ("throw.cleared", "not cleared")


def test_a_throwing_line_of_steps_that_the_table_lacks_opens_nothing() -> None:
    line = ThrowingLine("2026-11-02", "M. Aalto", "youth 8 steps", 1, 9, 2, 0, "", HERE)
    said = throwing.may_throw(talk(brief(throwing_line=line), *TO_THE_FIRST_SET).state)
    assert said is not None
    assert (said.rule, said.outcome) == ("throw.cleared", "not cleared")
    assert said.why == "No throwing today. The date or the steps in your plan do not fit."


@pytest.mark.parametrize("later", [1, 90, 3650])
def test_no_date_alone_opens_what_is_locked(later: int) -> None:
    overhead = ROW._replace(family="overhead")
    made = bound(review_by="2099-01-01")
    program = made.program._replace(
        exercises=tuple(overhead if one.name == ROW.name else one for one in made.program.exercises)
    )
    at = MONDAY + timedelta(days=later)
    day = brief_for(made._replace(program=program), asked_lately(at), at)
    listed = talk(day, *TO_THE_FIRST_SET[:-1])
    names = {offer.exercise for offer in listed.now.offers}
    assert OUT.name in names
    assert ROW.name not in names
