"""What days off, a closed plan and a new plan version do to ladders and throwing steps."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from coach.model.history import DayRecord, Done
from coach.model.ladders import Ladder, ThrowState
from coach.model.program import Axis
from coach.model.quantities import Load
from coach.rules.progression import one_back
from coach.session.brief import Brief
from coach.session.ladders import gap_of, rails_of, result_of, throwing_words
from coach.session.noting import new_version
from coach.session.table import Stage
from coach.session.throwing import cleared_today, standing
from tests.session.invented import HERE, MONDAY, OUT, asked_lately, bound, brief, prescription
from tests.session.talking import MORNING, talk
from tests.session.test_ladders import after, climbing, opening, tops
from tests.session.test_throwing_talk import CLEARED, LINE, after_the_exercises, cleared, threw

REACH = prescription(OUT, range=Axis(0, 0, 1, 56, 1, HERE), goes_up=("range",))


def reaching(record: DayRecord, version: int = 1) -> Ladder:
    """The ladder of an exercise whose range goes up after 56 days, long after the phase opened."""
    rest = tuple(d for d in bound().plan.doses if d.exercise != OUT.name)
    history = asked_lately()._replace(records=(record,))
    opened = bound().plan.phase_opened._replace(day="2026-06-01")
    day = brief(history, doses=(REACH, *rest), phase_opened=opened, version=version)
    return day.standings(morning_up=False, held=())[OUT.name].ladder


def low(days_since_up: int) -> Ladder:
    """The first range step, the last move up some days ago."""
    day = (MONDAY.date() - timedelta(days=days_since_up)).isoformat()
    ladder = opening(OUT.name)
    dose = ladder.dose._replace(range_index=0, range_step="half way")
    return ladder._replace(dose=dose, moved=(("range", day),))


def on_a_quiet_day(ladder: Ladder, *, days: int = 2, version: int = 1) -> DayRecord:
    """A good session some days ago, the ladder as used."""
    at = (MONDAY - timedelta(days=days)).isoformat()
    done = (Done(OUT.name, 3, True, at, "good"),)
    return after("good")._replace(
        day=at[:10], opened_at=at, done=done, ladders=((OUT.name, ladder),), plan_version=version
    )


def test_a_start_with_nothing_done_does_not_count_the_day_before_twice() -> None:
    earned = after("earned", days=4, good_run=0)
    counted = tuple((name, ladder._replace(good_run=1)) for name, ladder in earned.ladders)
    at = (MONDAY - timedelta(days=2)).isoformat()
    refused = earned._replace(day=at[:10], opened_at=at, ended="none", done=(), ladders=counted)
    assert tops(climbing((refused, earned))) == (15, 15)


@pytest.mark.parametrize(("days", "index"), [(55, 0), (56, 1)])
def test_range_goes_up_after_the_plans_days_since_its_last_step(days: int, index: int) -> None:
    assert reaching(on_a_quiet_day(low(days))).dose.range_index == index


def test_a_new_plan_version_keeps_the_days_that_a_range_has_to_wait() -> None:
    assert reaching(on_a_quiet_day(low(3), version=1), version=2).dose.range_index == 0


def test_after_many_days_off_the_range_waits_all_its_days_again() -> None:
    back = reaching(on_a_quiet_day(low(80), days=20))
    assert back.dose.range_index == 0
    assert dict(back.moved)["range"] == MONDAY.date().isoformat()


def test_after_a_step_down_in_range_its_days_begin_again() -> None:
    high = low(80)._replace(dose=opening(OUT.name).dose._replace(range_index=1))
    back = reaching(on_a_quiet_day(high, days=9))
    assert back.dose.range_index == 0
    assert dict(back.moved)["range"] == MONDAY.date().isoformat()


@pytest.mark.parametrize(("since", "load"), [(13, 5.0), (14, 5.5)])
def test_a_load_goes_up_after_the_plans_days(since: int, load: float) -> None:
    five, more = Load("dumbbell", 5.0, "kg"), Load("dumbbell", 5.5, "kg")
    heavy = prescription(
        OUT, load=five, load_step=0.5, load_cap=more, goes_up=("load",), load_after_days=14
    )
    rest = tuple(d for d in bound().plan.doses if d.exercise != OUT.name)
    before = after("earned")
    ladder = opening(OUT.name)._replace(good_run=1)
    ladder = ladder._replace(dose=ladder.dose._replace(load=five))
    opened = (MONDAY.date() - timedelta(days=since)).isoformat()
    day = brief(
        asked_lately()._replace(records=(before._replace(ladders=((OUT.name, ladder),)),)),
        doses=(heavy, *rest),
        loads_at_home=(five, more),
        phase_opened=bound().plan.phase_opened._replace(day=opened),
    )
    assert day.standings(morning_up=False, held=())[OUT.name].ladder.dose.load.amount == load


@pytest.mark.parametrize(
    ("own", "missed", "outcome"),
    [
        (5.0, 4, "none"), (5.0, 5, "one step down"), (10.0, 9, "none"),
        (10.0, 10, "one step down"), (14.0, 13, "none"), (14.0, 14, "first step"),
        (5.0, 27, "first step"), (5.0, 28, "contact"),
    ],
)  # fmt: skip
def test_the_plans_own_days_off_begin_the_step_down(own: float, missed: int, outcome: str) -> None:
    day = climbing((after("earned", days=missed + 1),), changed=(("layoff.gap", own),))
    assert gap_of(day).outcome == outcome


# ---------------------------------------------------------------- throwing


def test_sore_the_next_day_is_kept_as_a_day_off_and_the_last_step_comes_again() -> None:
    for planned, last_done, thrown in (
        (3, 2, 2),
        (3, 3, 2),
    ):  # the second: a repeat at the last step
        last = threw(3, ThrowState(planned, last_done, 1))
        assert last.threw is not None
        last = last._replace(threw=last.threw._replace(step=thrown))
        kept = after_the_exercises(cleared(last)).say("no", "yes").record().threw
        assert kept is not None
        assert (kept.step, kept.throws, kept.rest_days) == (0, 0, 1)
        assert kept.state == ThrowState(2, last_done, 0)


def test_after_the_day_off_the_same_soreness_is_not_asked_of_again() -> None:
    off = threw(2, ThrowState(2, 2))
    assert off.threw is not None
    off = off._replace(threw=off.threw._replace(step=0, throws=0, rest_days=1))
    day = after_the_exercises(cleared(off, threw(5, ThrowState(3, 2))))
    assert day.name == "arm tired"
    assert "step 2 of 7" in day.say("no", "0", "no").words


def test_a_day_off_for_soreness_does_not_shorten_the_days_off_from_throwing() -> None:
    off = threw(2, ThrowState(3, 2))
    assert off.threw is not None
    off = off._replace(threw=off.threw._replace(step=0))
    day = after_the_exercises(cleared(off, threw(8, ThrowState(3, 2)))).say("no", "0", "no")
    assert day.state.stage is Stage.THROWING
    assert "step 2 of 7" in day.words


# ---------------------------------------------------------------- back to the opening dose


@pytest.mark.parametrize(("good_run", "sets"), [(0, 2), (1, 3)])
def test_a_set_taken_away_comes_back_once_two_sessions_earned_it(good_run: int, sets: int) -> None:
    fewer = opening(OUT.name)._replace(good_run=good_run)
    fewer = fewer._replace(dose=fewer.dose._replace(sets=2))
    day = climbing((after("earned", ladders=((OUT.name, fewer),)),))
    assert day.standings(morning_up=False, held=())[OUT.name].ladder.dose.sets == sets


def test_back_at_the_opening_dose_only_what_the_plan_lets_go_up_goes_up() -> None:
    rest = tuple(d for d in bound().plan.doses if d.exercise != OUT.name)
    ladder = opening(OUT.name)._replace(good_run=1)
    history = asked_lately()._replace(records=(after("earned", ladders=((OUT.name, ladder),)),))
    day = brief(history, doses=(prescription(OUT), *rest))
    assert day.standings(morning_up=False, held=())[OUT.name].ladder.dose == ladder.dose


def test_the_last_thing_taken_comes_back_first() -> None:
    low_dose = opening(OUT.name).dose._replace(
        sets=2, load=Load("dumbbell", 1.0, "lb"), range_index=0, range_step="half way"
    )
    steps, dose = [], low_dose
    rails = rails_of(brief(), brief().stations[0])
    assert rails is not None
    while (back := one_back(dose, rails)) is not None:
        steps.append(back[0])
        dose = back[1]
    assert steps == ["sets", "load", "range"]
    assert dose == rails.opening


# ---------------------------------------------------------------- steps in odd places


def test_sore_again_while_repeating_at_the_last_step_goes_below_the_step_thrown() -> None:
    day = after_the_exercises(cleared(threw(3, ThrowState(3, 3, 1))))
    day = day.say("no", "no", "no", "0", "yes", "no", "0")
    assert "step 2 of 7" in day.words
    kept = day.say("no", "yes", "no", "0", "35").record().threw
    assert kept is not None
    assert (kept.step, kept.row, kept.state.planned) == (2, "sore again while repeating", 1)


def test_a_repeat_that_is_cut_off_is_repeated() -> None:
    day = after_the_exercises(cleared(threw(3, ThrowState(3, 2)))).say(
        "no", "no", "no", "0", "yes", "no", "0"
    )
    kept = day.record().threw
    assert kept is not None
    assert (kept.row, kept.step, kept.state.planned) == ("cut off", 2, 2)


def test_a_step_earned_under_the_old_dose_earns_nothing_under_a_new_one() -> None:
    high = opening(OUT.name)
    high = high._replace(dose=high.dose._replace(reps_high=18), good_run=1)
    record = after("earned", ladders=((OUT.name, high),))
    lower = prescription(OUT, reps=Axis(10, 15, 1, 0, 16, HERE), goes_up=("reps",))
    rest = tuple(d for d in bound().plan.doses if d.exercise != OUT.name)
    history = asked_lately()._replace(records=(record,))
    new = brief(history, doses=(lower, *rest), version=2)
    ladder = new.standings(morning_up=False, held=())[OUT.name].ladder
    assert (ladder.dose.reps_high, ladder.good_run) == (16, 0)


def test_where_a_new_version_changes_nothing_of_an_exercise_its_sessions_count_on() -> None:
    new = climbing((after("earned"),), version=2)
    assert tops(new) == (16, 15)


@pytest.mark.parametrize(
    ("pains", "sets", "result"), [((2.0,), 1, "short"), ((3.0,), 1, "over"), ((), 0, "none")]
)
def test_an_exercise_broken_off_ran_short_and_keeps_its_pain(
    pains: tuple[float, ...], sets: int, result: str
) -> None:
    done = Done(OUT.name, sets, True, MONDAY.isoformat(), "cut off", pains=pains)
    assert result_of([done], 2.0) == result


def test_a_session_broken_off_after_pain_over_the_ceiling_lowers_the_next() -> None:
    done = (Done(OUT.name, 1, True, MONDAY.isoformat(), "cut off", pains=(3.0,)),)
    before = climbing((after("earned", done=done, ended="by choice"),))
    found = before.standings(morning_up=False, held=())[OUT.name]
    assert (found.decision.rule, found.decision.outcome) == ("prog.down", "down")


def test_a_session_broken_off_ends_a_run_of_good_ones() -> None:
    done = (Done(OUT.name, 1, True, MONDAY.isoformat(), "cut off", pains=(0.0,)),)
    before = climbing((after("earned", done=done, ended="by choice"),))
    assert before.standings(morning_up=False, held=())[OUT.name].ladder.good_run == 0


@pytest.mark.parametrize(("tomorrow", "step"), [("none", 3), ("light", 3), ("game", 2)])
def test_the_day_before_a_match_brings_no_new_throwing_step(tomorrow: str, step: int) -> None:
    before = threw(3, ThrowState(3, 2))
    record = after("earned", days=3)._replace(threw=before.threw)
    day = talk(climbing((record,), **CLEARED), MORNING, tomorrow)
    while day.state.stage is not Stage.THROWING:
        day = day.rested()
        known = {"screen": "none", "pain in warm-up": "0"}
        sets = (
            "go" if day.name.startswith("go ") else "fine" if "felt" in day.name else "12, pain 0"
        )
        asked = day.state.stage is Stage.EXERCISE
        day = day.say(sets if asked else known.get(day.name, "no"))
    day = day.say("no", "no", "no", "0", "no")
    assert f"step {step} of 7" in day.words
    kept = day.say("no", "no", "60").record().threw
    assert kept is not None
    assert (kept.step, kept.state.planned) == (step, 3)


# ---------------------------------------------------------------- throws under a new version


def thrown_under(version: int, planned: int, **line: Any) -> Brief:
    """A plan's version 2 two days after throws of version 1, the steps then at `planned`."""
    first = cleared(version=1)
    words = throwing_words(first, planned)
    record = threw(3, ThrowState(planned, 2, 0, 1))
    assert record.threw is not None
    record = record._replace(threw=record.threw._replace(line=words))
    return cleared(record, version=version, throwing_line=LINE._replace(**line))


def stands_at(day: Brief) -> int:
    """The step due today."""
    line = cleared_today(day)
    assert line is not None
    return standing(day, line).planned


def test_under_a_new_version_with_the_same_clearance_the_steps_go_on() -> None:
    assert stands_at(thrown_under(2, 3)) == 3
    line = cleared_today(thrown_under(2, 3))
    assert line is not None
    assert standing(thrown_under(2, 3), line).downs_running == 1


def test_a_step_lost_to_soreness_does_not_come_back_with_a_new_version() -> None:
    day = thrown_under(2, 1, from_step=1)
    assert stands_at(day) == 1


def test_a_new_version_with_a_lower_last_step_holds_the_steps_under_it() -> None:
    assert stands_at(thrown_under(2, 3, most_step=2)) == 2


@pytest.mark.parametrize(
    "other",
    [{"cleared": "2026-11-08"}, {"from_step": 2}, {"table": "youth 8 steps"}],
    ids=["another day", "another first step", "another table"],
)
def test_another_clearance_begins_at_its_own_first_step(other: dict[str, Any]) -> None:
    day = thrown_under(2, 3, **other)
    assert stands_at(day) == other.get("from_step", 1)
    decision = new_version(day)
    assert decision is not None
    assert f"Your throws begin at step {other.get('from_step', 1)}." in decision.why


def test_where_the_steps_go_on_a_new_version_says_nothing_of_them() -> None:
    decision = new_version(thrown_under(2, 3))
    assert decision is not None
    assert "throws" not in decision.why


def test_a_version_that_clears_no_throws_says_so() -> None:
    day = thrown_under(2, 3)
    bare = day.bound._replace(plan=day.plan._replace(throwing_line=None))
    decision = new_version(Brief(bare, day.history, MONDAY))
    assert decision is not None
    assert "No throws in it." in decision.why


def test_a_throwing_day_keeps_its_clearance_and_the_step_due_in_words() -> None:
    day = after_the_exercises(cleared()).say("no", "0", "no", "no", "no", "30")
    kept = day.record().threw
    assert kept is not None
    assert kept.line == (
        "cleared 2026-11-02, adult 7 phases, from 1; step 2: "
        "20 throws at 60 ft (18 m), on an arc, then 20 throws at 60 ft (18 m), on an arc"
    )
