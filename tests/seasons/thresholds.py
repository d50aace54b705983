"""P15 day by day: raw answers against the plan's own numbers, on both sides of each.

Law: nothing here asks a rule; what an answer should lead to is worked out again from the plan and
the diary. That the numbers compared are those declared, and no others, is for the search to show.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from statistics import median

from coach.model.heard import Value
from coach.model.history import DayRecord
from coach.session.state import State
from coach.session.table import Stage
from tests.seasons.prompts import WORK
from tests.seasons.season import Day, Step

SHORT_NIGHT_H = 6  # under it a night is short; set here
UP_BY = 2  # pain on waking that much above usual goes to the clinician; Farrar 2001
FLAG, END = 8, 6  # pain that is read back, and that ends the work; set here
ACHE = 2  # at most, on the day after: may be muscle ache; common practice
LONG_GAP_DAYS = 28  # days off after which the clinician is asked first; set here
USUAL_DAYS, USUAL_NEEDS = 7, 3  # mornings that make the usual one, and the fewest; set here


def usual_morning(records: list[DayRecord], of_the_plan: float) -> float:
    """The median of the last 7 recorded mornings; the plan's figure while there are under 3."""
    worked = [r.waking_pain for r in records if r.ended != "none" and r.waking_pain is not None]
    newest = worked[:USUAL_DAYS]
    return median(newest) if len(newest) >= USUAL_NEEDS else of_the_plan


def off_by_one(day: Day, records: list[DayRecord], missed: int) -> Iterator[str]:
    """Every answer of a day that did not act at exactly its number."""
    shut = day.history.hold is not None or day.first.end == "closed"
    asked = missed >= LONG_GAP_DAYS and not answered_for(day, records)
    if not shut and (day.first.stop[0] == "A28") != asked:
        yield f"P15: {missed} days off, and the start is {day.first.end or 'open'}"
    usual = usual_morning(records, day.bound.plan.pain.usual)
    worked = [r for r in records if r.ended != "none"]
    again = bool(worked and worked[0].morning_up)
    for step in day.steps:
        values = dict(step.heard.values)
        if not values or step.before.aside or step.after.aside or step.before.reread:
            continue
        yield from at_the_check_in(step, values, day, usual, up_last_time=again)
        yield from in_the_work(step, values, day)
    yield from after_the_warm_up(day)


def answered_for(day: Day, records: list[DayRecord]) -> bool:
    """Whether the clinician has opened the plan anew since a start that asked after the days off."""
    worked = [r for r in records if r.ended != "none"]
    new = bool(worked) and worked[0].plan_version != day.bound.plan.version
    trained = next((r.day for r in records if any(one.sets for one in r.done)), "")
    if not trained or not (new or day.history.lifted):
        return False
    stops = [r.day for r in records if r.ended == "stopped" and off(trained, r.day)]
    return bool(stops) and not off(stops[0], day.opened_at.date().isoformat())


def off(day: str, later: str) -> bool:
    """Whether 28 whole days or more lie between two days."""
    return (date.fromisoformat(later) - date.fromisoformat(day)).days > LONG_GAP_DAYS


def number(values: dict[str, Value], fact: str) -> float | None:
    """A number that was heard, or None."""
    value = values.get(fact)
    return float(value) if isinstance(value, int | float) else None


def at_the_check_in(
    step: Step, values: dict[str, Value], day: Day, usual: float, *, up_last_time: bool
) -> Iterator[str]:
    """Pain now, the night, and the morning against the usual one."""
    before, after = step.before, step.after
    if before.stage is not Stage.CHECK_IN:
        return
    waking = number(values, "waking pain")
    contact = waking is not None and (waking >= usual + UP_BY or (waking > usual and up_last_time))
    if (after.stop[0] == "B02") != contact:
        yield f"P15: waking pain {waking} at usual {usual:g} leads to {after.stop[0] or 'no stop'}"
    if after.end:
        return
    if waking is not None and after.morning_up != (before.morning_up or waking > usual):
        yield f"P15: waking pain {waking:g} at usual {usual:g} is up: {after.morning_up}"
    if after.ache and waking is not None and waking > ACHE:
        yield f"P15: waking pain {waking:g} may be muscle ache"
    slept = number(values, "sleep last night")
    if slept is not None and after.short != (before.short or slept < SHORT_NIGHT_H):
        yield f"P15: a night of {slept:g} h is short: {after.short}"
    now, plan = number(values, "pain now"), day.bound.plan.pain
    if now is not None:
        level = 0 if now <= plan.to_start else 1 if now <= plan.gentle else 2
        if after.level != max(before.level, level):
            yield f"P15: pain now {now:g} leads to level {after.level}"


def in_the_work(step: Step, values: dict[str, Value], day: Day) -> Iterator[str]:
    """Pain in a set, against the ceilings of the plan."""
    before, after, plan = step.before, step.after, day.bound.plan.pain
    pain = number(values, "pain in set")
    if pain is None or before.work is None or before.stage is not Stage.EXERCISE:
        return
    if pain >= FLAG:
        yield f"P15: pain {pain:g} in a set is not read back"
    if (pain >= END) and after.stage is Stage.EXERCISE:
        yield f"P15: pain {pain:g} in a set does not end the work"
    same = after.work is not None and after.work.place == before.work.place
    counts = same and after.work is not None and after.work.over
    if pain <= plan.in_exercise and counts and not before.work.over:
        yield f"P15: pain {pain:g} counts as over {plan.in_exercise:g}"
    if pain > plan.in_exercise and same and not counts:
        yield f"P15: pain {pain:g} does not count as over {plan.in_exercise:g}"


def after_the_warm_up(day: Day) -> Iterator[str]:
    """Pain in the warm-up against its ceilings: what is left at once, and to the day's end.

    Read off the work itself: over the ceiling only what the program names gentle is left, over the
    gentle ceiling nothing; at the ceiling nothing is lost. A mere level of the day would not do,
    since a session forgets it once its list is made.
    """
    plan, gentle = day.bound.plan.pain, set(day.bound.program.gentle)
    allowed: set[str] | None = None
    for step in day.steps:
        before, after = step.before, step.after
        warm = number(dict(step.heard.values), "pain in warm-up")
        asked = warm is not None and before.stage is Stage.WARM_UP and not before.aside
        if asked and warm is not None and not after.aside:
            if warm <= plan.in_exercise and work_left(after) != work_left(before):
                yield f"P15: pain in warm-up {warm:g} at a ceiling of {plan.in_exercise:g} costs work"
            if warm > plan.in_exercise:
                allowed = gentle if warm <= plan.gentle else set()
        if allowed is not None and not work_left(after) <= allowed:
            more = ", ".join(sorted(work_left(after) - allowed))
            yield f"P15: after too much pain in the warm-up {more} is still to come"
            return


def work_left(state: State) -> set[str]:
    """The exercises still to come, the one under way among them; none once the work is over."""
    if state.stage not in WORK:
        return set()
    places = (*state.todo, *((state.work.place,) if state.work else ()))
    return {state.brief.stations[place].exercise.name for place in places}
