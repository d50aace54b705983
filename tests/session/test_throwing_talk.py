"""The throwing line of a day, as an athlete would answer it."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from coach.model.history import DayRecord
from coach.model.ladders import ThrowDay, ThrowState
from coach.model.program import ThrowingLine
from coach.session.brief import Brief
from coach.session.table import Stage
from tests.session.invented import HERE, MONDAY, asked_lately, brief, day_before
from tests.session.talking import MORNING, TO_THE_FIRST_SET, Talk, talk

CLEARED = {
    "throwing": (
        "cleared 2026-11-02 by M. Aalto, adult 7 phases, from phase 1, at most phase 3, apart 2 days"
    ),
    "throwing_line": ThrowingLine("2026-11-02", "M. Aalto", "adult 7 phases", 1, 3, 2, 0, "", HERE),
}


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
    day = day.say("no", "no")
    assert day.name == "sore after throw 15"
    assert "step 1 of 7" in day.words
    assert sum(t.throws for t in day.now.throws) == 15
    day = day.say("no", "no", "30")
    assert day.state.stage is Stage.CLOSE
    kept = day.record().threw
    assert kept is not None
    assert (kept.step, kept.throws, kept.state.planned) == (1, 30, 2)


def test_soreness_after_throw_15_ends_it_with_two_days_of_rest() -> None:
    day = after_the_exercises(cleared(threw(3, ThrowState(3, 2)))).say(
        "no", "no", "no", "no", "yes", "no"
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


def test_a_tired_arm_does_not_throw() -> None:
    assert after_the_exercises(cleared()).say("yes").state.stage is Stage.CLOSE


def test_sore_in_the_warm_up_and_gone_by_15_repeats_the_step_before() -> None:
    day = after_the_exercises(cleared(threw(3, ThrowState(2, 1)))).say(
        "no", "no", "no", "yes", "no"
    )
    assert day.state.stage is Stage.THROWING
    assert "step 1 of 7" in day.words


def test_a_sharp_pain_on_throwing_waits_for_the_clinician() -> None:
    day = after_the_exercises(cleared()).say("no", "no", "yes", "yes")
    assert day.name == "stopped"
    assert day.state.stop[0] == "T01"
    kept = day.record().threw
    assert kept is not None, "throws that were shown count, also on a stop"


def test_a_second_step_down_running_goes_to_the_clinician() -> None:
    down = ThrowState(2, 3, 0, 1)
    day = after_the_exercises(cleared(threw(3, down))).say(
        "no", "no", "no", "no", "yes", "no", "15"
    )
    assert day.name == "stopped"
    assert day.state.stop[0] == "T02"


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
    day = day.say("no", "no", "no", "no")
    assert f"step {step} of 7" in day.words


def test_the_plans_last_step_is_never_passed() -> None:
    day = after_the_exercises(cleared(threw(3, ThrowState(3, 2)))).say(
        "no", "no", "no", "no", "no", "no", "50"
    )
    kept = day.record().threw
    assert kept is not None
    assert kept.state.planned == 3


def test_unclear_soreness_counts_as_sore() -> None:
    day = after_the_exercises(cleared()).say("no", "no", "hm", "hm")
    assert day.name == "sharp or deep"


def test_a_clearance_with_a_date_ahead_opens_nothing() -> None:
    late = CLEARED["throwing"].replace("2026-11-02", "2026-11-10")  # type: ignore[attr-defined]
    assert after_the_exercises(cleared(throwing=late)).state.stage is Stage.CLOSE


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
    assert "step 1 of 7" in day.say("no", "no", "no", "no").words
