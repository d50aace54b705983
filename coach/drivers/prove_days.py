"""The days a session may open on, taken wider than any diary could make them.

Law: each opening is a brief like any other; only histories are made up here, and they say so by
their names. A day that ends at the door counts too.
"""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from typing import Final

from coach.model.flags import Section
from coach.model.history import DayRecord, Done, History, Hold
from coach.model.ladders import ThrowDay, ThrowState
from coach.model.program import Bound, ThrowingLine
from coach.session.brief import Brief, brief_for

OPENS_AT: Final = time(18, 30, tzinfo=UTC)
USUAL_GAP_DAYS: Final = 2
DAYS_AFTER_THROWS: Final = 5  # so many that a line may come, and too few for days off


def openings(bound: Bound) -> list[tuple[str, Brief]]:
    """Every kind of opening of the plan's days, with its name.

    Those that work alike stand together: what is searched together shares its steps.
    """
    starts, review = (date.fromisoformat(d) for d in (bound.plan.starts, bound.plan.review_by))
    phase = date.fromisoformat(bound.plan.phase_opened.day)
    today = min(max(starts, phase) + timedelta(days=14), review)
    new, used = histories(bound, today)
    days = [(name, history, today) for name, history in new]
    days += [
        ("the last day of the plan", History(), review),
        ("the day after the plan", History(), review + timedelta(days=1)),
        ("the day before the plan", History(), starts - timedelta(days=1)),
    ]
    days += [(name, history, today) for name, history in used]
    return [
        (name, brief_for(bound, history, datetime.combine(day, OPENS_AT)))
        for name, history, day in days
    ]


def histories(bound: Bound, today: date) -> tuple[list[tuple[str, History]], ...]:
    """What a diary may hand over on one day: where doses begin or are lowered, and where not."""
    usual = earlier(bound, today, USUAL_GAP_DAYS)
    past = History((usual,), asked_alone=asked_lately(today))
    plan = bound.plan
    own = tuple(
        (step.fact, (today - timedelta(days=1)).isoformat())
        for script in bound.program.scripts
        for step in script.steps
        if step.every_days
    )
    week = tuple(earlier(bound, today, n) for n in range(1, plan.limits.sessions_a_week + 1))
    hold = Hold(1, "S08", "same day", "numb_tingle", "numb", usual.day, "", plan.version)
    begun = [
        ("the first day", History()),
        away(bound, today, 9),
        away(bound, today, 20),
        away(bound, today, 40),
        (
            "a second session today",
            History((earlier(bound, today, 0),), asked_alone=past.asked_alone),
        ),
        ("a full week", History(week, asked_alone=past.asked_alone)),
        ("a stop stands", past._replace(hold=hold)),
    ]
    going_on = [
        ("an ordinary day", past),
        ("after a game", with_last(past, throwing_today="game", threw_yesterday="game")),
        ("after a stop was lifted", past._replace(lifted=True)),
        ("a new plan", with_last(past, plan_version=plan.version - 1)),
        ("a worse morning last time", with_last(past, morning_up=True)),
        ("a fall last time", with_last(past, fell=True)),
        ("something was not here last time", past._replace(at_hand=plan.at_home[1:])),
        ("no section asked for a week", past._replace(asked_alone=asked_lately(today, 7))),
        ("own questions asked yesterday", past._replace(own_asked=own)),
    ]
    if plan.throwing_line is not None:
        going_on.append(("after a throwing day", after_throws(bound, today, plan.throwing_line)))
    return begun, going_on


def after_throws(bound: Bound, today: date, line: ThrowingLine) -> History:
    """A history whose last session had throws of the plan's first step, without soreness."""
    last = earlier(bound, today, DAYS_AFTER_THROWS)
    state = ThrowState(line.from_step, line.from_step, 1)
    threw = ThrowDay(line.from_step, 1, "throws", "none", 0, state, last.opened_at)
    return History((last._replace(threw=threw),), asked_alone=asked_lately(today))


def away(bound: Bound, today: date, gap: int) -> tuple[str, History]:
    """A history whose one session lies `gap` missed days back.

    Of 9, 20 and 40, all made up, the lines of the lay-off rule lie in between.
    """
    last = earlier(bound, today, gap + 1)
    return f"{gap} days away", History((last,), asked_alone=asked_lately(today))


def earlier(bound: Bound, today: date, days: int) -> DayRecord:
    """A calm session so many days ago, in the morning if it was today."""
    at = datetime.combine(today - timedelta(days=days), OPENS_AT) - timedelta(hours=10)
    loads = {made.name: made.load != "none" for made in bound.program.exercises}
    done = tuple(
        Done(dose.exercise, dose.sets.opening, loads.get(dose.exercise, True), at.isoformat())
        for dose in bound.plan.doses[:1]
    )
    loaded = [d for d in bound.plan.doses if loads.get(d.exercise)]
    done += tuple(Done(d.exercise, 1, loaded=True, ended_at=at.isoformat()) for d in loaded[:1])
    return DayRecord(
        day=at.date().isoformat(),
        opened_at=at.isoformat(),
        ended="done",
        plan_version=bound.plan.version,
        waking_pain=0.0,
        pain_now=1.0,
        sleep_h=8.0,
        threw_yesterday="none",
        throwing_today="none",
        done=done,
    )


def with_last(past: History, **change: object) -> History:
    """The history with its newest record changed."""
    newest = past.records[0]._replace(**change)  # type: ignore[arg-type]
    return past._replace(records=(newest, *past.records[1:]))


def asked_lately(today: date, waited: int = 0) -> tuple[tuple[Section, str], ...]:
    """Every section asked alone within the last days, each on another one."""
    return tuple(
        (section, (today - timedelta(days=1 + number + waited)).isoformat())
        for number, section in enumerate(Section)
    )
