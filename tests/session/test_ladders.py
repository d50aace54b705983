"""Ladders from day to day: up when earned, one at a time; down at once; days off respected."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from coach.model.history import DayRecord, Done, History
from coach.model.ladders import Ladder
from coach.session.brief import Brief
from coach.session.ladders import gap_of, last_day
from tests.session.invented import (
    HOLD,
    MONDAY,
    OUT,
    PENDULUM,
    ROW,
    asked_lately,
    axis,
    bound,
    brief,
    prescription,
)
from tests.session.talking import TO_THE_FIRST_SET, talk

REPS_UP = axis(10, 15)._replace(step=1, cap=18)
DOSES = tuple(
    prescription(made, reps=REPS_UP, goes_up=("reps",), **extra)
    for made, extra in ((OUT, {}), (ROW, {"versions": ("long row", "short row")}))
)


def climbing(records: tuple[DayRecord, ...], **change: Any) -> Brief:
    """A brief whose two first exercises may climb in reps."""
    rest = tuple(d for d in bound().plan.doses if d.exercise not in {OUT.name, ROW.name})
    history = asked_lately()._replace(records=records)
    return brief(history, doses=(*DOSES, *rest), **change)


def opening(made: str) -> Ladder:
    """The ladder at the plan's opening."""
    return climbing(()).standings(morning_up=False, held=())[made].ladder


def after(result: str, *, days: int = 2, good_run: int = 1, **change: object) -> DayRecord:
    """A day on which both exercises ended so, with one good session before it."""
    at = MONDAY - timedelta(days=days)
    done = tuple(Done(m.name, 3, True, at.isoformat(), result) for m in (OUT, ROW))
    ladders = tuple((m.name, opening(m.name)._replace(good_run=good_run)) for m in (OUT, ROW))
    record = DayRecord(
        at.date().isoformat(),
        at.isoformat(),
        "done",
        1,
        waking_pain=0.0,
        pain_now=1.0,
        done=done,
        ladders=ladders,
    )
    return record._replace(**change)  # type: ignore[arg-type]


def tops(day: Brief, *, morning_up: bool = False, held: tuple[str, ...] = ()) -> tuple[int, int]:
    """The top of the rep range of both exercises."""
    found = day.standings(morning_up=morning_up, held=held)
    return found[OUT.name].ladder.dose.reps_high, found[ROW.name].ladder.dose.reps_high


def test_two_earned_sessions_running_move_one_exercise_up_and_only_one() -> None:
    assert tops(climbing((after("earned"),))) == (16, 15)


@pytest.mark.parametrize("result", ["good", "short", "form", "over", "cut off"])
def test_anything_but_an_earned_session_moves_nothing_up(result: str) -> None:
    assert max(tops(climbing((after(result),)))) == 15


def test_one_earned_session_is_not_enough() -> None:
    assert tops(climbing((after("earned", good_run=0),))) == (15, 15)


def test_a_sore_morning_moves_nothing_up_and_lowers() -> None:
    day = climbing((after("earned"),))
    assert tops(day, morning_up=True) == (15, 15)
    dose = day.standings(morning_up=True, held=())[OUT.name].ladder.dose
    assert dose.range_index == 0


def test_a_stop_moves_nothing_up() -> None:
    assert tops(climbing((after("earned", ended="stopped"),))) == (15, 15)


def test_what_is_held_does_not_go_up() -> None:
    day = climbing((after("earned"),))
    assert tops(day, held=("all",)) == (15, 15)
    assert tops(day, held=(OUT.name,)) == (15, 16)


@pytest.mark.parametrize(
    ("missed", "outcome"),
    [(6, "none"), (7, "one step down"), (13, "one step down"), (14, "first step"),
     (27, "first step"), (28, "contact")],
)  # fmt: skip
def test_days_off_lower_by_the_plans_days(missed: int, outcome: str) -> None:
    day = climbing((after("earned", days=missed + 1),))
    assert gap_of(day).outcome == outcome


def test_after_28_days_off_the_plan_waits_for_the_clinician() -> None:
    records = (after("earned", days=29),)
    assert talk(climbing(records)).name == "stopped"
    assert talk(climbing(records)).state.stop[0] == "A28"
    hold = talk(climbing(records)).hold()
    assert hold is not None


def asked_to_wait(days: int) -> DayRecord:
    """The start that asked for the clinician, so many days ago."""
    at = MONDAY - timedelta(days=days)
    return DayRecord(at.date().isoformat(), at.isoformat(), "stopped", 1)


def test_once_the_clinician_opened_it_the_ladders_begin_at_the_first_step() -> None:
    day = climbing((asked_to_wait(1), after("earned", days=30)))
    lifted = Brief(day.bound, day.history._replace(lifted=True), MONDAY)
    assert talk(lifted).name == "check-in"
    assert tops(lifted) == (15, 15)


@pytest.mark.parametrize(("days", "name"), [(28, "check-in"), (29, "stopped")])
def test_a_lift_counts_only_for_the_days_off_that_asked_for_it(days: int, name: str) -> None:
    day = climbing((asked_to_wait(days), after("earned", days=90)))
    lifted = Brief(day.bound, day.history._replace(lifted=True), MONDAY)
    assert talk(lifted).name == name


@pytest.mark.parametrize("by", ["a lift", "a new plan"])
@pytest.mark.parametrize(("asked_after", "opens"), [(27, False), (28, True)])
def test_what_was_opened_before_28_days_off_says_nothing_of_them(
    asked_after: int, opens: bool, by: str
) -> None:
    day = climbing((asked_to_wait(40 - 1 - asked_after), after("earned", days=40)))
    version = 2 if by == "a new plan" else 1
    lifted = Brief(
        bound(version=version), day.history._replace(lifted=by == "a lift"), day.opened_at
    )
    assert (talk(lifted).state.stop[0] != "A28") == opens


def test_a_start_that_ended_without_a_stop_has_asked_nobody() -> None:
    rested = asked_to_wait(1)._replace(ended="none")
    day = climbing((rested, after("earned", days=40)))
    assert talk(Brief(bound(version=2), day.history, MONDAY)).state.stop[0] == "A28"


@pytest.mark.hazard("H-16")
def test_a_second_session_of_a_day_moves_nothing() -> None:
    today = after("earned", days=0)
    assert tops(climbing((today,))) == (15, 15)


def test_two_sessions_of_a_day_are_read_together() -> None:
    first, second = after("earned"), after("good", done=(), effort=None)
    both = last_day((second, first))
    assert both is not None
    assert len(both.done) == 2


def test_a_new_plan_version_keeps_what_fits_under_its_caps() -> None:
    high = opening(OUT.name)
    high = high._replace(dose=high.dose._replace(reps_high=18))
    record = after("good", ladders=((OUT.name, high),))
    lower = tuple(
        d._replace(reps=REPS_UP._replace(cap=16)) if d.exercise == OUT.name else d for d in DOSES
    )
    rest = tuple(d for d in bound().plan.doses if d.exercise not in {OUT.name, ROW.name})
    history = asked_lately()._replace(records=(record,))
    new = brief(history, doses=(*lower, *rest), version=2)
    assert tops(new)[0] == 16


def test_the_step_up_is_told_with_the_list_and_answers_why() -> None:
    day = talk(climbing((after("earned"),)), TO_THE_FIRST_SET[0])
    assert day.name == "throwing tomorrow"
    day = day.say("none", "no", "none")
    assert "One step up in reps" in day.words
    assert "10 to 16 reps" in day.words


def test_the_day_before_a_match_brings_no_new_step() -> None:
    day = talk(climbing((after("earned"),)), TO_THE_FIRST_SET[0], "game", "no", "none")
    assert "10 to 16 reps" not in day.words
    assert dict(day.record().ladders)[OUT.name].dose.reps_high == 15


def test_tomorrow_is_asked_only_when_something_would_go_up() -> None:
    assert talk(climbing((after("good"),)), TO_THE_FIRST_SET[0]).name.startswith("screen")


def test_the_record_holds_the_ladders_as_used() -> None:
    day = talk(climbing((after("earned"),)), TO_THE_FIRST_SET[0], "none", "no", "none")
    kept = dict(day.record().ladders)
    assert kept[OUT.name].dose.reps_high == 16
    assert kept[ROW.name].good_run == 2


@pytest.mark.parametrize(("last", "result"), [(16, "good"), (17, "earned")])
def test_earning_takes_two_reps_over_the_top(last: int, result: str) -> None:
    day = talk(brief(), *TO_THE_FIRST_SET)
    for reps in (15, 15, last):
        day = day.say(f"{reps}, pain 0")
        if day.name.startswith("felt"):
            day = day.say("fine")
    assert day.record().done[0].result == result


def test_without_any_record_every_ladder_stands_at_its_opening() -> None:
    first = brief(History())
    assert {s.decision.outcome for s in first.standings(morning_up=False, held=()).values()} == {
        "same"
    }


def test_a_step_of_an_exercise_that_todays_list_leaves_out_keeps_its_reason() -> None:
    day = climbing((after("over"),))
    hard = talk(day, "pain 1, morning 0, slept 8, no game", "hard practice", "no", "no", "no")
    record = hard.say("none", "stop", "today").record()
    assert [offer.exercise for offer in hard.say("none").now.offers] == [HOLD.name, PENDULUM.name]
    assert dict(record.ladders)[OUT.name].dose.range_index == 0
    assert ("prog.down", "down") in [entry[:2] for entry in record.decisions]
