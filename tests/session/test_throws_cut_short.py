"""A throwing line that breaks off, ends in a stop, or waited long: no step comes back by it."""

from __future__ import annotations

from typing import Any

import pytest

from coach.model import program
from coach.model.ladders import ThrowDay, ThrowState
from coach.model.program import Answers, Bound, Script, Step
from coach.rules import throwing as rules
from coach.session.brief import Brief, brief_for
from coach.session.table import Stage
from coach.session.throwing import after_days_off
from tests.session.invented import HERE, MONDAY, asked_lately, bound
from tests.session.talking import Talk
from tests.session.test_throwing_talk import LINE, after_the_exercises, cleared, threw

ON_STEP_3 = ThrowState(3, 2)


def at_the_throws(day: Brief | None = None) -> Talk:
    """A day at which step 3 is shown, its first throws to come."""
    before = cleared(threw(3, ON_STEP_3)) if day is None else day
    now = after_the_exercises(before).say("no", "no", "no", "0", "no")
    assert "step 3 of 7" in now.words
    return now


def kept(day: Talk) -> ThrowDay:
    """The throws as the diary would keep them were the day to end here."""
    found = day.record().threw
    assert found is not None
    return found


# ---------------------------------------------------------------- soreness, said and then cut off


@pytest.mark.hazard("H-22")
@pytest.mark.parametrize(
    "answers",
    [("yes",), ("yes", "no"), ("yes", "no", "0"), ("yes", "yes"), ("no", "yes"), ("hm", "hm")],
    ids=["at 15", "not sharp", "no pain", "sharp", "at the end", "unclear"],
)
def test_soreness_that_was_said_lowers_the_step_though_the_day_breaks_off(
    answers: tuple[str, ...],
) -> None:
    threw_ = kept(at_the_throws().say(*answers))
    assert (threw_.step, threw_.rest_days, threw_.state.planned) == (3, 2, 1)


def test_without_soreness_a_day_that_breaks_off_keeps_the_step() -> None:
    threw_ = kept(at_the_throws().say("no"))
    assert (threw_.step, threw_.rest_days, threw_.state.planned) == (3, 2, 3)


@pytest.mark.parametrize(("warm_up", "clean_days"), [(("no",), 1), (("yes", "no", "0"), 0)])
def test_soreness_in_the_warm_up_begins_the_clean_days_anew_though_the_day_breaks_off(
    warm_up: tuple[str, ...], clean_days: int
) -> None:
    line = LINE._replace(sessions_a_step=2)
    before = threw(3, ThrowState(2, 2, clean_here=1))
    day = after_the_exercises(cleared(before, throwing_line=line))
    day = day.say("no", "no", "no", "0", *warm_up)
    assert day.name == "sore after throw 15"
    assert kept(day).state.clean_here == clean_days


def test_more_than_two_steps_down_running_are_not_counted() -> None:
    down = rules.NextThrow("stop", 2, -1)
    runs = [
        rules.next_throws(ThrowState(3, 3, 0, n), down, LINE)[0].downs_running for n in range(4)
    ]
    assert runs == [1, 2, 2, 2]


# ---------------------------------------------------------------- a stop after clean throws

LAST_YET = LINE._replace(most_step=5)


def clean(**change: Any) -> Talk:
    """Clean throws at step 3, at the close."""
    line = LAST_YET._replace(**change)
    day = at_the_throws(cleared(threw(3, ON_STEP_3), throwing_line=line)).say("no", "no", "60")
    assert day.state.stage is Stage.CLOSE
    return day


def test_clean_throws_bring_the_next_step() -> None:
    assert kept(clean()).state == ThrowState(4, 3)


@pytest.mark.hazard("H-22")
def test_a_stop_after_clean_throws_brings_no_step() -> None:
    day = clean().say("my hand is numb")
    assert day.name == "stopped"
    assert (kept(day).step, kept(day).state) == (3, ThrowState(3, 3))


def test_a_stop_after_clean_throws_begins_the_clean_days_anew() -> None:
    assert kept(clean(sessions_a_step=2)).state.clean_here == 1
    assert kept(clean(sessions_a_step=2).say("my hand is numb")).state.clean_here == 0


@pytest.mark.hazard("H-22")
def test_a_sore_morning_put_right_after_the_throws_brings_no_step() -> None:
    day = clean().say("fix")
    day = day.say(str(day.choices.index("waking pain") + 1), "2")
    assert kept(day).state.planned == 3
    assert kept(day.say("pain 1, effort 4, minutes 30")).state.planned == 3


def test_an_end_by_choice_after_clean_throws_keeps_what_they_earned() -> None:
    day = clean().say("stop", "today")
    assert kept(day).state.planned == 4


# ---------------------------------------------------------------- days off


@pytest.mark.parametrize(
    ("planned", "first", "after"),
    [(1, 1, 1), (2, 1, 1), (3, 1, 1), (2, 3, 1), (3, 3, 2), (4, 3, 3), (5, 3, 3)],
)
def test_two_weeks_off_never_leave_a_higher_step_than_one(
    planned: int, first: int, after: int
) -> None:
    line = LAST_YET._replace(from_step=first)
    state = ThrowState(planned, planned - 1)
    for gap in ("first step", "contact"):
        assert after_days_off(state, gap, line).planned == after
    assert after_days_off(state, "one step down", line).planned == max(1, planned - 1)
    assert after_days_off(state, "none", line).planned == planned


# ---------------------------------------------------------------- the program's own question


def with_own_question() -> Bound:
    """A program that asks a question of its own after soreness at the end."""
    sore = program.Test("sore at the end", "is", ("yes",))
    asked = Step(
        *("ask also", (0,), HERE),
        text="Where was it?",
        fact="ache place",
        answers=Answers("choice", choices=("top", "deep")),
    )
    note = Step("note", (0, 1), HERE, text="Deep.")
    steps = (Step("ask", (), HERE, fact="sore at the end"), asked, note)
    deep = program.Test("ache place", "is", ("deep",))
    made = bound(throwing_line=LINE)
    scripts = (Script("throwing", steps, (sore, deep), (), HERE),)
    return made._replace(program=made.program._replace(scripts=scripts))


@pytest.mark.parametrize(
    ("answers", "notes"), [(("top",), ()), (("deep",), ("Deep.",)), (("hm", "hm"), ())]
)
def test_the_day_goes_on_after_the_programs_own_question_answered_or_not(
    answers: tuple[str, ...], notes: tuple[str, ...]
) -> None:
    past = asked_lately()._replace(records=(threw(3, ON_STEP_3),))
    day = at_the_throws(brief_for(with_own_question(), past, MONDAY))
    day = day.say("no", "yes", "no", "0", "60")
    assert day.name == "ache place"
    day = day.say(*answers)
    assert day.state.stage is Stage.CLOSE
    assert day.record().notes == notes
    assert day.say("pain 1, effort 4, minutes 30", "none").name == "done"
