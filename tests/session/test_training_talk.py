"""Sets, pain, corrections, breaks and corrections of answers, as an athlete would type them."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Any

import pytest

from coach.model.history import Done, History
from coach.model.program import Bound, Fault, Opened
from coach.model.quantities import Load
from coach.model.turns import Typed
from coach.session.brief import brief_for
from coach.session.table import Stage
from tests.session.invented import (
    HERE,
    HOLD,
    MONDAY,
    OUT,
    PENDULUM,
    ROW,
    asked_lately,
    axis,
    bound,
    brief,
    day_before,
    prescription,
)
from tests.session.talking import TO_THE_FIRST_SET, Talk, talk


def first_set(**change: Any) -> Talk:
    """A good day at its first set."""
    return talk(brief(**change), *TO_THE_FIRST_SET)


def dose(day: Talk) -> tuple[int, float, int]:
    """Range place, load and set number of the set now shown."""
    offer = day.rested().now.offers[0]
    return offer.dose.range_index, offer.dose.load.amount, offer.set_number


@pytest.mark.hazard("H-03")
def test_the_work_line_has_set_side_reps_load_and_rest() -> None:
    line = next(line.text for line in first_set().now.lines if line.kind == "work")
    assert line.startswith("Set 1 of 3, left arm: 10 to 15 reps, 2 lb dumbbell")
    assert "Rest 60 s" in line


@pytest.mark.parametrize(("pain", "changes"), [("2", False), ("2.5", True), ("3", True)])
@pytest.mark.hazard("H-21")
def test_pain_over_the_ceiling_changes_the_next_set(pain: str, changes: bool) -> None:
    day = first_set().say(f"12, pain {pain}")
    if not changes:
        assert dose(day.say("fine"))[0] == 1
        return
    assert day.rested().name == "pain before change"
    assert dose(day.say("1")) == (0, 2.0, 2)


def test_a_changed_set_is_the_next_set_and_never_one_more() -> None:
    day = first_set().say("12, pain 3", "1", "12, pain 3", "1")
    assert dose(day) == (0, 1.0, 3)
    over = day.say("12, pain 3")
    assert over.rested().now.offers[0].exercise == "table row"


@pytest.mark.hazard("H-21")
def test_still_over_before_the_changed_set_leaves_the_exercise() -> None:
    day = first_set().say("12, pain 3", "3")
    assert day.rested().now.offers[0].exercise == "table row"


@pytest.mark.parametrize(("pain", "ends"), [("5", False), ("5.5", False), ("6", True)])
def test_six_and_more_ends_the_work(pain: str, ends: bool) -> None:
    assert (first_set().say(f"12, pain {pain}").state.stage is Stage.CLOSE) is ends


@pytest.mark.hazard("H-21")
def test_a_second_exercise_left_for_pain_ends_the_work() -> None:
    day = first_set().say("12, pain 3", "3").say("12, pain 3", "3")
    assert day.state.stage is Stage.CLOSE


def test_a_correction_is_said_at_once_and_comes_as_the_next_cue() -> None:
    day = first_set().say("12, pain 0", "shrug")
    assert "Let your neck grow long." in day.words
    assert "Aim: Let your neck grow long." in day.rested().words


def test_the_same_fault_three_sets_running_acts_as_the_exercise_says() -> None:
    day = first_set(doses=doses_with_sets(4))
    day = day.say("12, pain 0", "shrug", "12, pain 0", "shrug", "12, pain 0", "shrug")
    assert dose(day) == (0, 2.0, 4)


def test_a_fault_twice_running_does_not_act_yet() -> None:
    day = first_set().say("12, pain 0", "shrug", "12, pain 0", "shrug")
    assert dose(day) == (1, 2.0, 3)


def doses_with_sets(sets: int) -> tuple[object, ...]:
    """The invented doses with other sets for the first exercise."""
    first = prescription(OUT, sets=axis(sets))
    return tuple(first if d.exercise == OUT.name else d for d in bound().plan.doses)


def test_holds_are_timed_one_by_one_and_a_broken_one_counts() -> None:
    day = first_set()
    while day.name != "go for hold 1 in set 1 of wall hold":
        day = day.say("fine" if day.rested().name.startswith("felt") else "12, pain 0")
    running = day.say("go")
    assert running.now.timer is not None
    broken = running.event(typed("ok", running))
    assert broken.name == "go for hold 2 in set 1 of wall hold"


@pytest.mark.parametrize(("hold_s", "by_the_coach"), [(14, False), (15, True)])
def test_holds_of_15_s_and_more_are_timed_by_the_coach(hold_s: int, by_the_coach: bool) -> None:
    held = prescription(HOLD, sets=axis(1), reps=axis(2), hold=axis(hold_s), rest_s=45)
    doses = tuple(held if d.exercise == HOLD.name else d for d in bound().plan.doses)
    day = first_set(doses=doses)
    while "wall hold" not in day.name:
        day = day.say("fine" if day.rested().name.startswith("felt") else "12, pain 0")
    assert (day.name == "go for hold 1 in set 1 of wall hold") is by_the_coach


def typed(text: str, day: Talk) -> Typed:
    """A typed event at the present instant."""
    return Typed(text, day.at_s)


@pytest.mark.hazard("H-16")
def test_a_rest_is_lengthened_and_never_cut_short() -> None:
    day = first_set().say("12, pain 0", "fine")
    rest = day.now.timer
    assert rest is not None
    longer = day.event(typed("more", day)).now.timer
    assert longer is not None
    assert longer.seconds > rest.seconds
    other = day.event(typed("ready", day)).now.timer
    assert other is not None
    assert other.seconds == rest.seconds


# ---------------------------------------------------------------- why


def test_why_answers_from_the_decision_with_the_plan_line() -> None:
    day = first_set().say("12, pain 3")
    told = day.event(typed("why", day))
    assert "over your limit of 2" in told.words
    assert "Plan line 12" in told.words
    assert "pain.in_set" in day.event(typed("why code", day)).words


def test_why_at_a_plain_set_names_the_plan_line_of_its_dose() -> None:
    assert "Plan line 40" in first_set().say("why").words


# ---------------------------------------------------------------- fix


def test_fix_is_free_before_the_list_is_shown() -> None:
    day = talk(brief(), "pain 1, morning 0, slept 5, no throws, no game")
    assert day.state.short
    day = day.say("fix")
    number = day.choices.index("sleep last night") + 1
    fixed = day.say(str(number), "8")
    assert not fixed.state.short


def test_fix_after_the_list_never_makes_the_day_less_careful() -> None:
    day = talk(brief(), "pain 1, morning 0, slept 5, no throws, no game", "no", "no", "none", "0")
    assert day.rested().now.offers[0].dose.sets == 2
    day = day.say("fix")
    number = day.choices.index("sleep last night") + 1
    assert day.say(str(number), "8").rested().now.offers[0].dose.sets == 2


def test_fix_after_the_list_lowers_the_sets_that_are_left() -> None:
    day = first_set().say("fix")
    number = day.choices.index("sleep last night") + 1
    day = day.say(str(number), "5")
    while day.state.aside or day.state.stage is Stage.SCREEN:
        day = day.say("no")
    assert day.rested().now.offers[0].dose.sets == 2


def test_fix_of_a_sets_pain_can_leave_the_exercise() -> None:
    day = first_set().say("12, pain 0", "fine")
    day = day.event(typed("fix", day))
    number = day.choices.index("pain in set") + 1
    day = day.say(str(number), "4")
    assert day.rested().now.offers[0].exercise == "table row"


# ---------------------------------------------------------------- after a break


@pytest.mark.parametrize(("minutes", "asked"), [(4.9, ""), (5, "since"), (60, "since")])
def test_a_break_of_five_minutes_asks_what_happened(minutes: float, asked: str) -> None:
    assert first_set().back_after(minutes).state.aside == asked


@pytest.mark.hazard("H-16")
def test_sets_done_in_a_break_count_and_never_add_one() -> None:
    day = first_set().say("12, pain 0", "fine").back_after(10)
    assert day.name == "sets since"
    done = day.say("1", "no", "1")
    assert dose(done)[2] == 3
    all_done = day.say("5", "no", "1")
    assert all_done.rested().now.offers[0].exercise == "table row"


@pytest.mark.parametrize(("minutes", "stage"), [(60, Stage.EXERCISE), (61, Stage.SCREEN)])
def test_a_break_over_an_hour_asks_the_screen_again(minutes: int, stage: Stage) -> None:
    day = first_set().back_after(minutes).say("0")
    assert day.state.stage is stage


def test_worse_after_a_break_opens_five_sections_alone() -> None:
    day = first_set().back_after(10).say("0", "yes")
    assert day.state.stage is Stage.SCREEN
    assert len(day.state.alone) == 5


# ---------------------------------------------------------------- the list


def test_pain_over_the_start_leaves_only_the_gentle_list() -> None:
    plan = bound().plan
    pain = plan.pain._replace(to_start=1.0, gentle=3.0)
    day = talk(brief(pain=pain), "pain 2, morning 0, slept 8, no throws, no game", "no", "none")
    while day.state.stage is Stage.SCREEN:
        day = day.say("no" if day.name != "screen" else "none")
    names = {offer.exercise for offer in day.now.offers}
    assert names <= {"arm swing", "wall hold"}


def test_the_same_exercise_waits_for_the_plans_days() -> None:
    at = MONDAY - timedelta(days=1)
    done = (Done(OUT.name, 3, True, at.isoformat()),)
    record = day_before()._replace(day=at.date().isoformat(), done=done)
    two = tuple(
        d._replace(apart_days=2) if d.exercise == OUT.name else d for d in bound().plan.doses
    )
    day = talk(brief(asked_lately()._replace(records=(record,)), doses=two), *TO_THE_FIRST_SET)
    assert day.rested().now.offers[0].exercise == ROW.name


def test_a_piece_that_is_not_here_leaves_its_exercises_out() -> None:
    day = first_set().say("gear", "none")
    assert day.rested().now.offers[0].exercise == "wall hold"


def test_the_book_keeps_reps_pain_and_dose() -> None:
    record = first_set().say("13, pain 1", "fine", "12, pain 2").record()
    done = next(d for d in record.done if d.exercise == OUT.name)
    assert done.reps[:2] == (13.0, 12.0)
    assert done.pains[:2] == (1.0, 2.0)
    assert done.dose == "3 sets, 10 to 15 reps, 2 lb dumbbell"


def test_no_new_exercise_begins_once_the_plans_minutes_are_over() -> None:
    plan = bound().plan
    day = talk(brief(limits=plan.limits._replace(minutes=45)), *TO_THE_FIRST_SET)
    late = day._replace(at_s=45 * 60)
    late = late.say("12, pain 3", "3")
    assert late.state.stage is Stage.CLOSE
    early = day._replace(at_s=40 * 60).say("12, pain 3", "3")
    assert early.state.stage is Stage.EXERCISE


def test_a_first_day_has_no_history_to_lower_it() -> None:
    day = talk(brief(History()), "yes", "1", "0", "8", "no throws, no game")
    assert not day.state.morning_up


def test_the_load_stays_the_plans() -> None:
    assert first_set().now.offers[0].dose.load == Load("dumbbell", 2.0, "lb")


@pytest.mark.parametrize(
    ("pain", "ends"), [("2", False), ("2.5", False), ("3", False), ("3.5", True), ("6", True)]
)
def test_pain_in_the_warm_up_over_the_gentle_ceiling_ends_the_work(pain: str, ends: bool) -> None:
    day = talk(brief(), *TO_THE_FIRST_SET[:3]).say(pain)
    assert (day.state.stage is Stage.CLOSE) is ends


def test_pain_in_the_warm_up_over_the_exercise_ceiling_leaves_the_gentle_list() -> None:
    day = talk(brief(), *TO_THE_FIRST_SET[:3]).say("2.5").rested()
    assert day.now.offers[0].exercise == "wall hold"


def test_a_pinch_in_the_cross_body_stretch_leaves_it_with_a_note() -> None:
    pinch = Fault("pinch in front", "It pinches.", "Hand higher.", "")
    stretch = OUT._replace(name="cross-body stretch", faults=(pinch,))
    program = bound().program
    program = program._replace(
        exercises=(*program.exercises, stretch),
        phases=(program.phases[0]._replace(exercises=("cross-body stretch", "table row")),),
    )
    doses = (*bound().plan.doses, prescription(stretch))
    whole = Bound(program, bound().plan._replace(doses=doses), "0" * 64)
    day = talk(brief_for(whole, asked_lately(), MONDAY), *TO_THE_FIRST_SET)
    day = day.say("12, pain 0", "pinch in front")
    assert day.rested().now.offers[0].exercise == "table row"
    assert "A pinch in cross-body stretch." in day.record().notes


def at_the_holds() -> Talk:
    """A good day at the first hold of the last exercise."""
    day = first_set()
    while day.name != "go for hold 1 in set 1 of wall hold":
        day = day.say("fine" if day.rested().name.startswith("felt") else "12, pain 0")
    return day


def test_holds_before_a_break_are_not_held_again() -> None:
    day = at_the_holds().say("go").rested()
    assert day.name == "go for hold 2 in set 1 of wall hold"
    back = day.back_after(10).say("0", "no", "1")
    assert back.name == "go for hold 2 in set 1 of wall hold"


def test_a_hold_that_a_break_cut_off_counts_as_done() -> None:
    day = at_the_holds().say("go").back_after(10).say("0", "no", "1")
    assert day.name == "go for hold 2 in set 1 of wall hold"


def test_an_exercise_ends_when_it_ended_breaks_included() -> None:
    plain = first_set().say("12, pain 3", "3").record().done[0].ended_at
    broken = first_set().back_after(4).say("12, pain 3", "3").record().done[0].ended_at
    apart = datetime.fromisoformat(broken) - datetime.fromisoformat(plain)
    assert apart >= timedelta(minutes=4)


def test_what_was_denied_is_not_quoted_by_a_later_stop() -> None:
    day = talk(brief(), "pain 1, morning 0, slept 8, no throws, no game, hand was numb last month")
    assert day.name == "heard right"
    hold = day.say("no", "yes", "yes").hold()
    assert hold is not None
    assert hold.said == ""


@pytest.mark.parametrize("day", ["", "2026-11-10", "2026-11-09"])
def test_something_locked_is_not_even_a_warm_up(day: str) -> None:
    program = bound().program
    locked = PENDULUM._replace(family="overhead")
    program = program._replace(exercises=(locked, *program.exercises[1:]))
    opened = (Opened("overhead", day, "M. Aalto", HERE),) if day else ()
    whole = Bound(program, bound().plan._replace(opened=opened), "0" * 64)
    talked = talk(brief_for(whole, asked_lately(), MONDAY), *TO_THE_FIRST_SET[:3])
    shown = {offer.exercise for turn in talked.turns for offer in turn.offers}
    assert (locked.name in shown) is (day == "2026-11-09")
