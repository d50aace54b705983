"""Invented diaries for these tests: some by hand, one played through the real session."""

from __future__ import annotations

import functools
from datetime import date, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from coach.drivers.invented_days import invented_diary
from coach.drivers.reading import Given, from_rows
from coach.drivers.sample import moved_to
from coach.model.history import DayRecord, Done, Hold
from coach.reports.facts import Facts, Recorded, Sat, gather
from coach.texts.doors import bound_from

if TYPE_CHECKING:
    from coach.model.program import Bound

ROOT = Path(__file__).parents[2]
D_O = ROOT / "dialogs" / "steady-shoulder" / "plans" / "d-o.yaml"
MONDAY = date(2026, 11, 2)
ROW = "reach-across row"


@functools.cache
def sample_plan() -> Bound:
    """The shipped plan of the invented athlete, begun on the Monday of these tests."""
    bound, findings = bound_from(D_O)
    assert bound is not None, findings
    return moved_to(bound, MONDAY)


@functools.cache
def ten_weeks() -> Given:
    """The invented diary of ten weeks, made by the real session."""
    bound, findings = bound_from(D_O)
    assert bound is not None, findings
    return from_rows(invented_diary(bound))


def ten_weeks_facts() -> Facts:
    """All its days."""
    given = ten_weeks()
    days = [sat.opened_at[:10] for sat in given.recorded.sessions]
    return gather(given.bound, given.recorded, min(days), max(days))


def day(number: int) -> str:
    """The ISO day so many days after the first Monday."""
    return (MONDAY + timedelta(days=number)).isoformat()


def opened(number: int) -> str:
    """The instant a session of that day opens."""
    return f"{day(number)}T18:00:00+01:00"


def done(name: str = ROW, sets: int = 3, **changes: object) -> Done:
    """An exercise done as planned."""
    quiet = Done(
        name,
        sets,
        loaded=True,
        ended_at=opened(0),
        reps=(12.0,) * sets,
        pains=(1.0,) * sets,
        dose=f"{sets} sets, 8 to 12 reps, 5 lb dumbbell",
        planned_sets=3,
    )
    return quiet._replace(**changes)  # type: ignore[arg-type]


def record(number: int, **changes: object) -> DayRecord:
    """A quiet finished day."""
    quiet = DayRecord(
        day(number), opened(number), "done", 1, 1.0, 1.0, 1.0, 8.0, "none", "none",
        done=(done(),), effort=4.0, minutes=30.0, pain_after=1.0,
    )  # fmt: skip
    return quiet._replace(**changes)  # type: ignore[arg-type]


def sat(number: int, hold: Hold | None = None, **changes: object) -> Sat:
    """A session of that day."""
    return Sat(number + 1, opened(number), {}, record(number, **changes), hold)


def stop(number: int, **changes: object) -> Hold:
    """A stop for tingling."""
    quiet = Hold(
        1, "S08", "same day", "numb_tingle", "my pinky tingles", day(number), opened(number), 1
    )
    return quiet._replace(**changes)  # type: ignore[arg-type]


def facts(*sats: Sat, last: int = 6, since: int = 0, **more: object) -> Facts:
    """The facts of a week of hand-made sessions."""
    recorded = Recorded(tuple(sats))._replace(**more)  # type: ignore[arg-type]
    return gather(sample_plan(), recorded, day(since), day(last))
