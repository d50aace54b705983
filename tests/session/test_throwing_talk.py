"""The throwing line of a day, as an athlete would answer it."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from coach.model.history import DayRecord, Done
from coach.model.ladders import ThrowDay, ThrowState
from coach.model.program import ThrowingLine
from coach.model.throws import OWN_STEPS, Part, StepTable, ThrowStep
from coach.rules.throwing_tables import STEP_TABLES
from coach.session.brief import Brief
from coach.session.ladders import last_day
from coach.session.table import Stage
from coach.session.throws_shown import split_at_15
from tests.session.invented import (
    HERE,
    HOLD,
    MONDAY,
    OUT,
    ROW,
    asked_lately,
    bound,
    brief,
    day_before,
)
from tests.session.talking import MORNING, TO_THE_FIRST_SET, Talk, talk

LINE = ThrowingLine("2026-11-02", "M. Aalto", "adult 7 phases", 1, 3, 2, 0, "", HERE)
CLEARED = {"throwing_line": LINE}


def threw(days: int, state: ThrowState, *, rest: int = 0, **change: object) -> DayRecord:
    """A throwing day some days ago, after which the steps stood so."""
    at = (MONDAY - timedelta(days=days)).isoformat()
    day = ThrowDay(1, 40, "throws", "no soreness", rest, state, at)
    record = day_before()._replace(day=at[:10], opened_at=at, done=(), threw=day)
    return record._replace(**change)  # type: ignore[arg-type]


def cleared(*records: DayRecord, **change: Any) -> Brief:
    """A brief of a plan that clears throwing; by default no throwing day yet."""
    found = records or (day_before(),)
    return brief(asked_lately()._replace(records=found), **{**CLEARED, **change})


def in_exercise(now: Talk) -> bool:
    """Whether an exercise is under way."""
    return now.state.stage is Stage.EXERCISE


def after_the_exercises(day: Brief, morning: str = MORNING) -> Talk:
    """The day after its last exercise."""
    now = talk(day, morning)
    while not in_exercise(now):
        now = now.say({"screen": "none", "pain in warm-up": "0"}.get(now.name, "no"))
    while in_exercise(now):
        now = now.rested()
        name = now.name
        now = now.say(
            "fine" if name.startswith("felt") else "go" if "go" in name[:3] else "12, pain 0"
        )
    return now


@pytest.mark.hazard("H-20")
def test_without_a_clearance_nothing_of_throwing_is_asked_or_shown() -> None:
    day = after_the_exercises(brief())
    assert day.state.stage is Stage.CLOSE
    assert not [t for turn in day.turns for t in turn.throws]


def test_a_clean_day_shows_the_step_and_moves_up() -> None:
    day = after_the_exercises(cleared())
    assert day.name == "arm tired"
    day = day.say("no", "0", "no")
    assert day.name == "sore after throw 15"
    assert "step 1 of 7" in day.words
    assert sum(t.throws for t in day.now.throws) == 15
    day = day.say("no", "no", "30")
    assert day.state.stage is Stage.CLOSE
    kept = day.record().threw
    assert kept is not None
    assert (kept.step, kept.throws, kept.state.planned) == (1, 30, 2)


@pytest.mark.hazard("H-22")
def test_soreness_after_throw_15_ends_it_with_two_days_of_rest() -> None:
    day = after_the_exercises(cleared(threw(3, ThrowState(3, 2)))).say(
        "no", "no", "no", "0", "no", "yes", "no", "0"
    )
    assert day.name == "throws done"
    day = day.say("15")
    kept = day.record().threw
    assert kept is not None
    assert (kept.rest_days, kept.state.planned) == (2, 1)


def test_sore_the_day_after_last_time_means_no_throws_today() -> None:
    day = after_the_exercises(cleared(threw(3, ThrowState(2, 1)))).say("no", "yes")
    assert day.state.stage is Stage.CLOSE
    assert not [t for turn in day.turns for t in turn.throws]


@pytest.mark.hazard("H-22")
def test_a_tired_arm_does_not_throw() -> None:
    assert after_the_exercises(cleared()).say("yes").state.stage is Stage.CLOSE


def test_sore_in_the_warm_up_and_gone_by_15_repeats_the_step_before() -> None:
    day = after_the_exercises(cleared(threw(3, ThrowState(2, 1)))).say(
        "no", "no", "no", "0", "yes", "no", "0"
    )
    assert day.state.stage is Stage.THROWING
    assert "step 1 of 7" in day.words


def test_a_sharp_pain_on_throwing_waits_for_the_clinician() -> None:
    day = after_the_exercises(cleared()).say("no", "0", "no", "yes", "yes")
    assert day.name == "stopped"
    assert day.state.stop[0] == "T01"
    kept = day.record().threw
    assert kept is not None, "throws that were shown count, also on a stop"


@pytest.mark.hazard("H-22")
def test_a_second_step_down_running_goes_to_the_clinician() -> None:
    down = ThrowState(2, 3, 0, 1)
    day = after_the_exercises(cleared(threw(3, down))).say(
        "no", "no", "no", "0", "no", "yes", "no", "0", "15"
    )
    assert day.name == "stopped"
    assert day.state.stop[0] == "T02"
    kept = day.record().threw
    assert kept is not None
    assert (kept.step, kept.state.planned, kept.state.downs_running) == (2, 1, 2)


@pytest.mark.parametrize(("days", "throws"), [(1, False), (2, True)])
def test_a_whole_day_lies_between_throwing_days(days: int, throws: bool) -> None:
    day = after_the_exercises(cleared(threw(days, ThrowState(2, 1))))
    assert (day.state.stage is Stage.THROWING) is throws


@pytest.mark.parametrize(("days", "throws"), [(2, False), (3, True)])
def test_two_days_of_rest_are_two_whole_days(days: int, throws: bool) -> None:
    day = after_the_exercises(cleared(threw(days, ThrowState(2, 1), rest=2)))
    assert (day.state.stage is Stage.THROWING) is throws


def test_other_throwing_yesterday_takes_the_place_of_the_programs() -> None:
    day = after_the_exercises(
        cleared(), "pain 1, morning 0, slept 8, played catch yesterday, no game"
    )
    assert day.state.stage is Stage.CLOSE
    assert "throws already" in " ".join(line.text for t in day.turns for line in t.lines)


@pytest.mark.parametrize(("missed", "step"), [(6, 3), (7, 2), (14, 1)])
def test_days_off_lower_the_throwing_step(missed: int, step: int) -> None:
    day = after_the_exercises(cleared(day_before(), threw(missed + 1, ThrowState(3, 2))))
    day = day.say("no", "no", "no", "0", "no")
    assert f"step {step} of 7" in day.words


def test_the_plans_last_step_is_never_passed() -> None:
    day = after_the_exercises(cleared(threw(3, ThrowState(3, 2)))).say(
        "no", "no", "no", "0", "no", "no", "no", "50"
    )
    kept = day.record().threw
    assert kept is not None
    assert kept.state.planned == 3


@pytest.mark.hazard("H-22")
def test_unclear_soreness_counts_as_sore() -> None:
    day = after_the_exercises(cleared()).say("no", "0", "no", "hm", "hm")
    assert day.name == "sharp or deep"


def test_a_clearance_with_a_date_ahead_opens_nothing() -> None:
    late = LINE._replace(cleared="2026-11-10")
    assert after_the_exercises(cleared(throwing_line=late)).state.stage is Stage.CLOSE


def test_pain_over_the_ceiling_in_an_exercise_means_no_throws() -> None:
    day = talk(cleared(), MORNING, "none", *TO_THE_FIRST_SET[1:]).say("12, pain 3", "3")
    while day.state.stage is Stage.EXERCISE:
        day = day.rested()
        name = day.name
        feel = "fine" if name.startswith("felt") else "12, pain 0"
        day = day.say("go" if name.startswith("go ") else feel)
    assert day.state.stage is Stage.CLOSE


def test_the_day_before_a_match_brings_no_new_throwing_step() -> None:
    day = talk(cleared(threw(3, ThrowState(2, 1))), MORNING)
    assert day.name == "throwing tomorrow"
    day = day.say("game")
    while not in_exercise(day):
        day = day.say({"screen": "none", "pain in warm-up": "0"}.get(day.name, "no"))
    while in_exercise(day):
        day = day.rested()
        feel = "fine" if day.name.startswith("felt") else "12, pain 0"
        day = day.say("go" if day.name.startswith("go ") else feel)
    assert "step 1 of 7" in day.say("no", "no", "no", "0", "no").words


# ---------------------------------------------------------------- the plan's ceiling on throwing


def to_the_throws(day: Talk) -> Talk:
    """Past the arm and the pain before the first throw."""
    return day.say("no", "0")


@pytest.mark.hazard("H-22")
@pytest.mark.parametrize(("pain", "throws"), [("0", True), ("1", False)])
def test_pain_over_the_plans_ceiling_before_the_first_throw_ends_it(
    pain: str, throws: bool
) -> None:
    day = after_the_exercises(cleared()).say("no")
    assert day.name == "pain in throwing"
    day = day.say(pain)
    assert (day.state.stage is Stage.THROWING) is throws
    assert day.record().threw is None


@pytest.mark.parametrize(("ceiling", "pain", "goes_on"), [(0, "0", True), (0, "1", False),
                                                         (2, "2", True), (2, "3", False)])  # fmt: skip
def test_soreness_in_the_warm_up_goes_on_only_inside_the_ceiling(
    ceiling: float, pain: str, goes_on: bool
) -> None:
    ceilings = cleared().plan.pain._replace(in_throwing=ceiling)
    day = to_the_throws(after_the_exercises(cleared(pain=ceilings))).say("yes", "no", pain)
    assert (day.name == "sore after throw 15") is goes_on
    kept = day.record().threw
    assert kept is not None
    if not goes_on:
        assert (kept.step, kept.throws, kept.row) == (0, 0, "pain over the ceiling")
        assert day.name == "stopped", "any step down at step 1 is the clinician's"


def test_over_the_ceiling_in_the_warm_up_is_two_days_off_and_a_step_lower() -> None:
    before = cleared(threw(3, ThrowState(3, 3)))
    day = after_the_exercises(before).say("no", "no", "no", "0", "yes", "no", "1")
    kept = day.record().threw
    assert kept is not None
    assert (kept.step, kept.rest_days, kept.state.planned) == (0, 2, 1)
    assert not [t for turn in day.turns for t in turn.throws]


def test_pain_of_8_on_throwing_is_read_back_and_stops() -> None:
    day = after_the_exercises(cleared()).say("no", "8")
    assert day.name == "read back"
    day = day.say("no")
    assert day.name == "pain in throwing"
    assert day.say("8").name == "stopped"


def test_unclear_pain_on_throwing_counts_as_the_worst() -> None:
    assert after_the_exercises(cleared()).say("no", "hm", "hm").name == "read back"


@pytest.mark.parametrize(("pain", "goes_on"), [("0", True), ("1", False)])
def test_after_a_break_pain_over_the_ceiling_ends_the_throws(pain: str, goes_on: bool) -> None:
    day = to_the_throws(after_the_exercises(cleared(threw(3, ThrowState(2, 1)))).say("no", "no"))
    day = day.say("no")
    assert day.name == "sore after throw 15"
    day = day.back_after(10)
    assert day.name == "worse since"
    day = day.say("no")
    assert day.name == "pain now"
    day = day.say(pain)
    assert (day.state.stage is Stage.THROWING) is goes_on
    assert (f"Pain {pain} of 10 is over 0" in told_so_far(day)) is not goes_on
    kept = day.record().threw
    assert kept is not None, "throws that were shown count, also when a break ended them"
    assert (kept.row, kept.rest_days) == ("cut off", 2)


def told_so_far(day: Talk) -> str:
    """All that was said, as decisions were told in the diary."""
    return " ".join(why for _rule, _outcome, why in day.record().decisions)


# ---------------------------------------------------------------- throws alone


def waiting(*records: DayRecord, **change: Any) -> Brief:
    """A plan whose exercises all wait until the second day, and were done yesterday."""
    at = (MONDAY - timedelta(days=1)).isoformat()
    done = tuple(Done(name, 2, True, at) for name in (OUT.name, ROW.name))
    yesterday = day_before()._replace(day=at[:10], opened_at=at, done=done)
    doses = tuple(d._replace(apart_days=2) for d in bound().plan.doses if d.exercise != HOLD.name)
    return cleared(yesterday, *records, **{"doses": doses, **change})


def morning_of(day: Brief, morning: str = MORNING) -> Talk:
    """As far as the talk goes with calm answers, without the throwing line's own."""
    now = talk(day, morning)
    while now.state.stage in {Stage.CHECK_IN, Stage.SCREEN, Stage.AT_HAND, Stage.WARM_UP}:
        now = now.say({"screen": "none", "pain in warm-up": "0"}.get(now.name, "no"))
    return now


def test_a_throwing_day_without_exercises_has_the_warm_up_and_the_throws() -> None:
    day = morning_of(waiting())
    assert day.name == "arm tired"
    offered = {offer.kind for turn in day.turns for offer in turn.offers}
    assert offered == {"warm-up"}
    day = to_the_throws(day).say("no", "no", "no", "30")
    kept = day.record()
    assert kept.threw is not None
    assert kept.threw.step == 1
    assert kept.done == ()


def test_a_day_of_throws_alone_moves_no_ladder_and_the_day_before_still_counts() -> None:
    day = to_the_throws(morning_of(waiting())).say("no", "no", "no", "30", "pain 0, effort 3, 20")
    alone = day.record()._replace(ended="done")
    assert alone.ladders == ()
    earned = day_before()._replace(day="2026-11-07")
    assert last_day((alone, earned)) == earned
    assert last_day((alone._replace(ended="stopped"), earned)) != earned


@pytest.mark.parametrize(
    ("day", "morning"),
    [
        (waiting(throwing_line=None), MORNING),
        (waiting(), "pain 3.5, morning 0, slept 8, no throws, no game"),
        (waiting(), "pain 1, morning 0, slept 8, played catch yesterday, no game"),
        (waiting(limits=bound().plan.limits._replace(sessions_a_week=1)), MORNING),
        (waiting(threw(1, ThrowState(2, 1))), MORNING),
    ],
    ids=["not cleared", "pain", "other throwing", "week full", "too soon"],
)
def test_what_forbids_throws_forbids_them_alone(day: Brief, morning: str) -> None:
    now = morning_of(day, morning)
    assert now.now.end == "done"
    assert not [t for turn in now.turns for t in turn.throws]


def test_a_second_session_of_a_day_has_no_throws() -> None:
    earlier = day_before()._replace(day=MONDAY.date().isoformat(), opened_at=MONDAY.isoformat())
    day = morning_of(waiting(earlier))
    assert day.now.end == "done"


def test_a_clearance_ahead_is_told_in_plain_words() -> None:
    line = LINE._replace(cleared="2026-11-10")
    day = after_the_exercises(cleared(throwing_line=line))
    assert "still to come" in " ".join(one.text for turn in day.turns for one in turn.lines)


def test_throwing_told_for_the_day_before_counts_towards_the_plans_spacing() -> None:
    told = day_before()._replace(threw_yesterday="light")  # two days ago, of three days ago
    line = LINE._replace(apart_days=4)
    day = after_the_exercises(cleared(told, threw(9, ThrowState(2, 1)), throwing_line=line))
    assert day.state.stage is Stage.CLOSE
    day = after_the_exercises(cleared(told, threw(9, ThrowState(2, 1)), throwing_line=LINE))
    assert day.state.stage is Stage.THROWING


# ---------------------------------------------------------------- the plan's own table


OWN = StepTable(
    "own steps",
    "serves",
    tuple(ThrowStep(((Part(0, 10), Part(9 / 0.3048, count)),)) for count in (5, 10, 20)),
    2,
    0,
    "ours",
    "",
    in_metres=True,
)


def serving(**change: Any) -> Brief:
    """A plan that brings its own table, counted in serves."""
    line = LINE._replace(table="own steps")
    return cleared(threw(3, ThrowState(2, 1)), throwing_line=line, own_steps=OWN, **change)


def test_the_plans_own_table_is_shown_in_its_unit_and_in_metres_and_feet() -> None:
    day = after_the_exercises(serving())
    assert "after your last serves" in day.words.lower()
    day = day.say("no", "no", "no", "0")
    assert "Warm-up serves first" in day.words
    day = day.say("no")
    assert "step 2 of 3" in day.words
    assert "10 serves, then 5 serves at 9 m (30 ft)." in day.words
    day = day.say("no")
    assert "5 serves at 9 m (30 ft)." in day.words
    day = day.say("no")
    assert "How many serves did you do?" in day.words
    day = day.say("20 serves")
    assert "20 serves" in str(day.book.answer("work done"))
    kept = day.record().threw
    assert kept is not None
    assert (kept.throws, kept.unit) == (20, "serves")


def test_overs_count_as_their_balls_so_soreness_is_asked_after_two() -> None:
    table = OWN._replace(unit="overs", steps=(ThrowStep(((Part(0, 5),),)),))
    first, rest = split_at_15(table, 1)
    assert [part.throws for part in (*first, *rest)] == [2, 3]


def test_a_line_that_names_a_table_the_plan_lacks_opens_nothing() -> None:
    line = LINE._replace(table="own steps")
    assert after_the_exercises(cleared(throwing_line=line)).state.stage is Stage.CLOSE


# Axe 2009: class D of the catchers throws every other day, every third day at steps 6 to 9.
@pytest.mark.parametrize(
    ("name", "step", "days", "may"),
    [
        ("catcher D", 5, 2, True), ("catcher D", 6, 2, False), ("catcher D", 6, 3, True),
        ("catcher D", 9, 2, False), ("catcher D", 10, 2, True), ("catcher E", 5, 2, False),
        ("catcher E", 5, 3, True), ("catcher E", 6, 6, False),
    ],
)  # fmt: skip
def test_a_catcher_throws_as_often_as_the_class_says(
    name: str, step: int, days: int, may: bool
) -> None:
    steps = tuple(ThrowStep(((Part(0, 20 + n),),)) for n in range(13))
    table = STEP_TABLES["youth 8 steps"]._replace(name=OWN_STEPS, steps=steps)
    line = LINE._replace(table=OWN_STEPS, most_step=13, class_name=name)
    last = threw(days, ThrowState(step, step))
    day = after_the_exercises(cleared(last, throwing_line=line, own_steps=table))
    assert (day.state.stage is Stage.THROWING) is may
