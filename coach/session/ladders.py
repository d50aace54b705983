"""Today's ladders: each exercise's dose as the last session leaves it.

Law: progress is decided here, at a start, from the day before's record, by `coach.rules`; never in
an exercise. One exercise goes up a day. A second session of a day moves nothing. What no record
says counts as not done.
"""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.model.decisions import Basis, Decision, Refusal
from coach.model.history import DayRecord, Done
from coach.model.ladders import Drove, Ladder, ThrowDay
from coach.model.throws import part_words
from coach.rules import dapre, dosing, layoff
from coach.rules.progression import (
    HARD_EFFORT,
    RESULTS,
    DaySummary,
    Rails,
    arbiter,
    carried_over,
    count_session,
    next_ladder,
    wants_up,
)
from coach.rules.throwing import class_words, table_of

if TYPE_CHECKING:
    from collections.abc import Callable

    from coach.model.quantities import Dose, Load
    from coach.session.brief import Brief, Station

ALL = "all"
# What each axis of a dose stands at, for those that a plan may let go up after some days.
BY_DAYS: Final[dict[str, Callable[[Dose], int | Load]]] = {
    "hold": lambda dose: dose.hold_s,
    "load": lambda dose: dose.load,
    "range": lambda dose: dose.range_index,
    "reps": lambda dose: dose.reps_high,
    "sets": lambda dose: dose.sets,
}


class Standing(NamedTuple):
    """Where one exercise stands today, and why."""

    exercise: str
    ladder: Ladder
    decision: Decision


def last_day(records: tuple[DayRecord, ...]) -> DayRecord | None:
    """The last day with a session, its sessions taken together; None before the first.

    A day of throwing alone moves no ladder and keeps none, so the session before it still counts.
    """
    worked = [r for r in records if r.ended != "none" and not only_threw(r)]
    if not worked:
        return None
    day = [record for record in worked if record.day == worked[0].day]
    return day[0]._replace(
        ended="stopped" if any(r.ended == "stopped" for r in day) else day[0].ended,
        done=tuple(done for record in day for done in record.done),
        effort=max((r.effort for r in day if r.effort is not None), default=None),
    )


def only_threw(record: DayRecord) -> bool:
    """Whether a day came to its end with no exercise on its list."""
    return record.ended == "done" and not record.done and not record.ladders


def gap_of(brief: Brief) -> Decision:
    """layoff.gap: what the days since the last exercise mean today; a day without one is missed."""
    trained = (r.day for r in brief.history.records if any(done.sets for done in r.done))
    return gap_since(brief, next(trained, brief.today.isoformat()))


def gap_since(brief: Brief, day: str) -> Decision:
    """layoff.gap since an ISO day; under `changed rules` the plan's own days begin the step down."""
    missed = layoff.days_missed(date.fromisoformat(day), brief.today)
    decision = layoff.gap(missed)
    own = dict(brief.plan.changed).get("layoff.gap")
    if own is None or decision.outcome not in {"none", "one step down"}:
        return decision
    decision = layoff.gap(layoff.STEP_DOWN_FROM_DAYS if missed >= own else 0)
    why = f"One step lower today. There were {own:g} or more days off."
    lower = decision.outcome != "none"
    return decision._replace(
        why=why if lower else decision.why, place=brief.plan.place, basis=Basis.PLAN
    )


def rails_of(brief: Brief, station: Station) -> Rails | None:
    """What the exercise's ladder runs between; None where the plan has no dose for it."""
    opening = dosing.opening_dose(station.exercise, station.prescription)
    if isinstance(opening, Refusal):
        return None
    return Rails(
        station.exercise,
        station.prescription,
        brief.plan.loads_at_home,
        opening,
        date.fromisoformat(brief.plan.phase_opened.day),
    )


def before_today(brief: Brief, name: str, rails: Rails) -> Ladder:
    """The exercise's ladder as the newest session has it; the opening where none has.

    A start at which nothing could be done is no session: its ladders would count the day before it
    twice. Under a new plan version the axes go on where they fit it, under its caps, and so does
    the time since each went up; where the dose is another one, the sessions running begin again.
    """
    recorded = last_recorded(brief, name)
    if recorded is None:
        return Ladder(rails.opening)
    dose = carried_over(recorded.dose, rails)
    if dose == recorded.dose:
        return recorded
    return Ladder(dose, moved=recorded.moved)


def last_recorded(brief: Brief, name: str) -> Ladder | None:
    """The exercise's ladder in the newest session that has it."""
    found = (
        ladder
        for record in brief.history.records
        if record.ended != "none"
        for exercise, ladder in record.ladders
        if exercise == name
    )
    return next(found, None)


def summary_of(
    brief: Brief, last: DayRecord, name: str, gap: str, *, morning_up: bool
) -> DaySummary:
    """What the last day says of one exercise; `gap` is layoff.gap's outcome today."""
    done = [one for one in last.done if one.exercise == name]
    return DaySummary(
        today=brief.today,
        result=result_of(done, brief.plan.pain.in_exercise),
        gap=gap,
        morning_up=morning_up,
        stopped=last.ended == "stopped",
        hard=last.effort is not None and last.effort >= HARD_EFFORT,
        pinch=any("pinch" in felt for one in done for felt in one.felt),
        drove=drove_by(done),
    )


def drove_by(done: list[Done]) -> Drove | None:
    """prog.dapre: what the driving set said; a rise only where every set of the day has its reps.

    With the exercise done twice on a day nothing is driven.
    """
    if len(done) != 1 or done[0].drove is None:
        return None
    told = len(done[0].reps) == done[0].sets == done[0].planned_sets
    return done[0].drove if told or not dapre.rises(done[0].drove) else None


def result_of(done: list[Done], ceiling: float) -> str:
    """The worst of an exercise's results on a day; without a set it is not done.

    Broken off after a set it ran short, and with a pain over the ceiling it was over, so that a stop
    of the athlete's own hides neither.
    """
    return max((one_result(one, ceiling) for one in done), key=RESULTS.index, default="none")


def one_result(one: Done, ceiling: float) -> str:
    """One exercise's result as the ladders read it."""
    if one.result in RESULTS:
        return one.result
    if not one.sets:
        return "none"
    return "over" if any(pain > ceiling for pain in one.pains) else "short"


def standings(brief: Brief, *, morning_up: bool, held: tuple[str, ...]) -> tuple[Standing, ...]:
    """Every exercise's ladder today. `held` names what may not go up (`all`: nothing may)."""
    last = last_day(brief.history.records)
    on_rails = [(s, rails) for s in brief.stations if (rails := rails_of(brief, s)) is not None]
    if last is None or last.day >= brief.today.isoformat():
        return tuple(as_it_was(brief, station, rails) for station, rails in on_rails)
    gap = gap_of(brief).outcome
    old = [before_today(brief, s.exercise.name, rails) for s, rails in on_rails]
    days = [
        under_this_plan(
            summary_of(brief, last, s.exercise.name, gap, morning_up=morning_up),
            last_recorded(brief, s.exercise.name),
            ladder,
        )
        for (s, _rails), ladder in zip(on_rails, old, strict=True)
    ]
    wants = tuple(
        ALL not in held
        and station.exercise.name not in held
        and wants_up(count_session(ladder, day), day, rails) is not None
        for (station, rails), ladder, day in zip(on_rails, old, days, strict=True)
    )
    up = arbiter(wants)
    out: list[Standing] = []
    for number, ((station, rails), ladder, day) in enumerate(zip(on_rails, old, days, strict=True)):
        new, decision = next_ladder(ladder, day, rails, number == up)
        new = waiting_anew(ladder, new, decision, brief.today)
        out.append(Standing(station.exercise.name, new, named(decision, station)))
    return tuple(out)


def under_this_plan(day: DaySummary, recorded: Ladder | None, ladder: Ladder) -> DaySummary:
    """A step earned at a dose that the plan has changed since earns nothing here."""
    changed = recorded is not None and recorded.dose != ladder.dose
    if not changed:
        return day
    return day._replace(result="good" if day.result == "earned" else day.result, drove=None)


def waiting_anew(old: Ladder, new: Ladder, decision: Decision, today: date) -> Ladder:
    """prog.range: after a step down or days off, an axis that goes by days waits them all again."""
    if decision.outcome not in {"down", "first step"}:
        return new
    since = today.isoformat()
    lowered = [axis for axis, held in BY_DAYS.items() if held(new.dose) != held(old.dose)]
    axes = BY_DAYS if decision.outcome == "first step" else lowered
    moved = {**dict(old.moved), **dict.fromkeys(axes, since)}
    return new._replace(moved=tuple(sorted(moved.items())))


def throws_begin_anew(brief: Brief, version: int, last: ThrowDay) -> bool:
    """Whether the steps of a throwing day under `version` count no more under today's plan."""
    return version != brief.plan.version and last.line != throwing_words(brief, last.state.planned)


def throwing_words(brief: Brief, step: int) -> str:
    """The clearance's day, table, class and first step, and a step of it, in words; '' for none."""
    line, table = brief.plan.throwing_line, table_of(brief.plan)
    if line is None or table is None or not 1 <= step <= len(table.steps):
        return ""
    parts = ", then ".join(part_words(part, table) for part in table.steps[step - 1].parts())
    named = f"{line.table}, {class_words(line.class_name)}" if line.class_name else line.table
    return f"cleared {line.cleared}, {named}, from {line.from_step}; step {step}: {parts}"


def as_it_was(brief: Brief, station: Station, rails: Rails) -> Standing:
    """A ladder that nothing moves: a first day, or a second session of a day."""
    name = station.exercise.name
    decision = Decision(
        "dose.from_plan",
        "same",
        "The set is as your plan has it.",
        station.prescription.place,
        Basis.PLAN,
        "the plan",
    )
    return Standing(name, before_today(brief, name, rails), decision)


def named(decision: Decision, station: Station) -> Decision:
    """A step up names its exercise; a step down is the same sentence for all."""
    if decision.outcome != "up":
        return decision
    name = station.exercise.name
    return decision._replace(why=f"{name[:1].upper()}{name[1:]}: {decision.why}")


def something_wants_up(brief: Brief) -> bool:
    """Whether any exercise would go up today, were the morning and the day quiet."""
    found = brief.standings(morning_up=False, held=()).values()
    return any(one.decision.outcome == "up" for one in found)
