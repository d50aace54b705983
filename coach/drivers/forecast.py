"""What a plan would look like week by week, were an invented athlete to answer as a course says.

Law: it sums up what the real session did and adds nothing; every page of it says that it is no
promise. The same plan and course give the same weeks.
"""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.drivers.forecast_days import days_of

if TYPE_CHECKING:
    from collections.abc import Callable

    from coach.drivers.forecast_days import Played
    from coach.model.history import DayRecord
    from coach.model.ladders import Ladder
    from coach.model.program import Bound
    from coach.model.quantities import Dose
    from coach.model.scenario import Course

NO_PROMISE: Final = (
    "This is no promise. An invented athlete gives made-up answers to the real session. "
    "Nobody's own weeks will go like this."
)
# Outcomes of decisions that change nothing are left out.
_QUIET: Final = frozenset(
    {"same", "may", "go on", "as usual", "all", "first", "no soreness", "none", "fits", "enough"}
)


class Work(NamedTuple):
    """One exercise in one week: how often it was done, and the last session's dose in words.

    `dose` is the ladder's, for the figures; `times` sessions of the week.
    """

    exercise: str
    times: int
    words: str
    dose: Dose


class Thrown(NamedTuple):
    """One day's throwing line: ISO day, step (0: a day off for soreness), throws, the row."""

    day: str
    step: int
    throws: int
    row: str


class Told(NamedTuple):
    """Why something moved, was held or lowered: ISO day, rule, reason as told to the athlete."""

    day: str
    rule: str
    why: str


class Week(NamedTuple):
    """One week of the forecast. `stop` is the code of the stop that closed the plan, if any."""

    number: int
    first: str
    last: str
    phase: str
    sessions: int
    works: tuple[Work, ...]
    thrown: tuple[Thrown, ...]
    told: tuple[Told, ...]
    stop: str


class Forecast(NamedTuple):
    """Some weeks of a plan under a course. `ends` says why it ends early ('' where it does not)."""

    plan: str
    course: str
    side: str
    unit: str
    weeks: tuple[Week, ...]
    ends: str


def forecast(bound: Bound, course: Course, weeks: int) -> Forecast:
    """The first `weeks` weeks of a plan from its first day. Raises `NothingTyped`."""
    played = days_of(bound, course, weeks)
    plan = bound.plan
    first = date.fromisoformat(plan.starts)
    found: list[Week] = []
    for number in range(weeks):
        begins = first + timedelta(weeks=number)
        stopped = any(week.stop for week in found)
        if stopped or begins.isoformat() > plan.review_by:
            break
        found.append(_week(number + 1, begins, played, plan.phase))
    unit = next((p.record.threw.unit for p in played if p.record.threw), "throws")
    ends = _why_it_ends(found, weeks, plan.review_by)
    return Forecast(plan.name, course.name, plan.side, unit, tuple(found), ends)


def _why_it_ends(found: list[Week], weeks: int, review_by: str) -> str:
    code = found[-1].stop if found else ""
    if code:
        return f"It ends here: a stop ({code}) closes the plan until the clinician opens it."
    if len(found) < weeks:
        return f"It ends here: the plan is due for review on {review_by}."
    return ""


def _week(number: int, begins: date, played: list[Played], phase: str) -> Week:
    first, last = begins.isoformat(), (begins + timedelta(days=6)).isoformat()
    days = [one for one in played if first <= one.record.day <= last]
    records = [one.record for one in days]
    return Week(
        number,
        first,
        last,
        phase,
        sum(any(done.sets for done in record.done) for record in records),
        _works(records),
        tuple(
            Thrown(record.day, record.threw.step, record.threw.throws, record.threw.row)
            for record in records
            if record.threw is not None
        ),
        _told(records),
        next((one.hold.code for one in days if one.hold is not None), ""),
    )


def _works(records: list[DayRecord]) -> tuple[Work, ...]:
    found: dict[str, Work] = {}
    for record in records:
        ladders: dict[str, Ladder] = dict(record.ladders)
        for done in record.done:
            if not done.sets or done.exercise not in ladders:
                continue
            dose = ladders[done.exercise].dose
            before = found.get(done.exercise)
            times = before.times + 1 if before else 1
            pieces = (done.dose, dose.version, dose.range_step)
            words = ", ".join(piece for piece in pieces if piece)
            found[done.exercise] = Work(done.exercise, times, words, dose)
    return tuple(found.values())


def _told(records: list[DayRecord]) -> tuple[Told, ...]:
    """Each reason once a week, on the first day it was told."""
    found: dict[str, Told] = {}
    for record in records:
        for rule, outcome, why in record.decisions:
            shown_as_step = rule == "throw.soreness" and outcome == "up"
            if outcome not in _QUIET and why and not shown_as_step:
                found.setdefault(why, Told(record.day, rule, why))
    return tuple(found.values())


class Lane(NamedTuple):
    """One figure over the weeks; None where the exercise was not done."""

    what: str
    unit: str
    values: tuple[float | None, ...]

    def known(self) -> list[float]:
        """The different values, lowest first."""
        return sorted({value for value in self.values if value is not None})


def lanes(made: Forecast) -> list[tuple[str, list[Lane]]]:
    """What moves over the weeks, by exercise, then the throwing line and the sessions."""
    found: list[tuple[str, list[Lane]]] = []
    for name in dict.fromkeys(work.exercise for week in made.weeks for work in week.works):
        doses = [_dose_of(week, name) for week in made.weeks]
        moving = [
            Lane(what, unit, tuple(None if d is None else read(d) for d in doses))
            for what, unit, read in _AXES
        ]
        kept = [lane for lane in moving if lane.what == "reps" or len(lane.known()) > 1]
        found.append((name, kept))
    steps = tuple(max((t.step for t in w.thrown), default=0) or None for w in made.weeks)
    if any(step is not None for step in steps):
        found.append(("throwing", [Lane("step", "", steps)]))
    sessions = tuple(float(week.sessions) for week in made.weeks)
    return [*found, ("all of it", [Lane("sessions", "", sessions)])]


def _dose_of(week: Week, name: str) -> Dose | None:
    return next((work.dose for work in week.works if work.exercise == name), None)


_AXES: Final[tuple[tuple[str, str, Callable[[Dose], float]], ...]] = (
    ("reps", "", lambda dose: float(dose.reps_high)),
    ("sets", "", lambda dose: float(dose.sets)),
    ("hold", "s", lambda dose: float(dose.hold_s)),
    ("load", "", lambda dose: float(dose.load.amount)),
    ("range step", "", lambda dose: float(dose.range_index + 1)),
    ("version level", "", lambda dose: float(dose.version_level)),
)
