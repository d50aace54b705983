"""What a day leaves of a step up: one held, taken back by a late answer, or ended by a stop."""

from __future__ import annotations

import pytest

from coach.model.program import Script, Step
from coach.model.program import Test as Comparison
from coach.session.brief import Brief
from coach.session.moments import COACH_ASKS
from coach.session.table import Stage
from tests.session.invented import HERE, MONDAY, OUT, ROW
from tests.session.talking import MORNING, Talk, talk
from tests.session.test_ladders import after, climbing
from tests.session.test_throwing_talk import CLEARED

ANSWERS = {
    "pain in warm-up": "0",
    "screen": "none",
    "which version": "1",
    "close": "pain 1, effort 4, 20 min",
    "throwing tomorrow": "none",
    "own words": "none today",
    "pain in throwing": "0",
    "throws done": "20",
}
HELD = "no step up"


def said(day: Talk) -> str:
    """A calm answer at the present prompt."""
    if day.name.startswith("set line"):
        return "12, pain 0"
    if day.name.startswith("go "):
        return "go"
    return "fine" if "felt" in day.name else ANSWERS.get(day.name, "no")


def to_stage(day: Talk, stage: Stage) -> Talk:
    """A calm day up to a stage."""
    day = day.rested()
    while day.state.stage is not stage:
        day = day.say(said(day)).rested()
    return day


def to_end(day: Talk) -> Talk:
    """A calm day to its end."""
    day = day.rested()
    while not day.state.end:
        day = day.say(said(day)).rested()
    return day


def kept(day: Talk) -> tuple[int, int]:
    """The top reps that a day leaves for both exercises that may climb."""
    ladders = dict(day.record().ladders)
    return ladders[OUT.name].dose.reps_high, ladders[ROW.name].dose.reps_high


def after_two_earned(**change: object) -> Talk:
    """A morning on which the first exercise has earned its step up."""
    return talk(climbing((after("earned"),), **change), MORNING)


def test_a_quiet_day_keeps_its_step_up() -> None:
    assert kept(to_end(after_two_earned())) == (16, 15)


# ---------------------------------------------------------------- held by the clinician's script


def with_a_hold_of_one(day: Brief) -> Brief:
    """The same day under a script that holds the first exercise back when pain now is 1."""
    asks = tuple(Step("ask", (), HERE, fact=fact) for fact in COACH_ASKS["check-in"])
    hold = Step("effect", (0,), HERE, effect=HELD, target=OUT.name)
    tests = (Comparison("pain now", "at least", (1.0,)),)
    script = Script("check-in", (*asks, hold), tests, (0,), HERE)
    program = day.program._replace(scripts=(script,))
    return Brief(day.bound._replace(program=program), day.history, MONDAY)


def test_a_step_held_back_for_one_exercise_stays_held_once_that_exercise_is_behind() -> None:
    day = talk(with_a_hold_of_one(climbing((after("earned"),))), MORNING, "none")
    assert (HELD, OUT.name) in day.state.lowered
    day = to_end(day)
    offered = {o.exercise: o.dose.reps_high for now in day.turns for o in now.offers}
    assert (offered[OUT.name], offered[ROW.name]) == (15, 16)
    assert kept(day) == (15, 16)


# ---------------------------------------------------------------- put right later


def corrected(day: Talk, fact: str, value: str) -> Talk:
    """An answer put right at the present prompt."""
    day = day.say("fix")
    return day.say(str(day.choices.index(fact) + 1), value)


def test_a_sore_morning_said_before_an_exercise_begins_takes_its_step_back() -> None:
    day = corrected(to_stage(after_two_earned(), Stage.WARM_UP), "waking pain", "2")
    day = to_stage(day, Stage.EXERCISE)
    assert day.now.offers[0].dose.reps_high == 15
    assert kept(to_end(day)) == (15, 15)


@pytest.mark.parametrize(("fact", "value"), [("waking pain", "2"), ("pain now", "4")])
@pytest.mark.parametrize("stage", [Stage.EXERCISE, Stage.THROWING, Stage.CLOSE])
def test_a_worse_answer_said_late_leaves_no_step_up_for_next_time(
    stage: Stage, fact: str, value: str
) -> None:
    day = to_stage(after_two_earned(**CLEARED), stage)
    assert kept(day)[0] == 16
    assert kept(to_end(corrected(day, fact, value)))[0] == 15


@pytest.mark.parametrize(("fact", "value"), [("waking pain", "1"), ("pain now", "3")])
def test_an_answer_put_right_that_changes_nothing_keeps_the_step(fact: str, value: str) -> None:
    day = to_stage(after_two_earned(**CLEARED), Stage.CLOSE)
    assert kept(to_end(corrected(day, fact, value))) == (16, 15)


# ---------------------------------------------------------------- a stop later in the day


@pytest.mark.parametrize("stage", [Stage.WARM_UP, Stage.EXERCISE, Stage.THROWING, Stage.CLOSE])
def test_a_day_that_ends_in_a_stop_keeps_no_step_up(stage: Stage) -> None:
    day = to_stage(after_two_earned(**CLEARED), stage).say("my hand went cold and white")
    assert day.state.end == "stopped"
    assert kept(day) == (15, 15)


def test_a_day_ended_by_choice_keeps_its_step_up() -> None:
    day = to_stage(after_two_earned(), Stage.EXERCISE).say("stop", "today")
    assert day.state.end == "by choice"
    assert kept(day) == (16, 15)
