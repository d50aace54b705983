"""P15 day by day: raw answers against the plan's own numbers, on both sides of each.

Law: nothing here asks a rule; what an answer should lead to is worked out again from the plan and
the diary. That the numbers compared are those declared, and no others, is for the search to show.
"""

from __future__ import annotations

from collections.abc import Iterator
from statistics import median

from coach.model.heard import Value
from coach.model.history import DayRecord
from coach.session.state import State
from coach.session.table import ENDS, Stage
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
    closed = day.history.hold is not None or day.history.lifted  # the clinician has said so
    long_gap = any(day.first.stop) and day.first.stop[0] == "A28"
    if not closed and day.first.end != "closed" and long_gap != (missed >= LONG_GAP_DAYS):
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
    """Pain in the warm-up and in a set, against the ceilings of the plan."""
    before, after, plan = step.before, step.after, day.bound.plan.pain
    warm = number(values, "pain in warm-up")
    over = warm is not None and warm > plan.in_exercise
    if warm is not None and before.stage is Stage.WARM_UP and over != held_back(before, after):
        yield f"P15: pain in warm-up {warm:g} at a ceiling of {plan.in_exercise:g}"
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


def held_back(before: State, after: State) -> bool:
    """Whether the day became gentler, or its work ended."""
    ended = after.stage in {Stage.CLOSE, *ENDS} and bool(before.todo)
    return after.level > before.level or ended or before.level > 0
