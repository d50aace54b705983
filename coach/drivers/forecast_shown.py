"""A forecast as lines for a terminal, as data, and as a page that needs no other file.

Law: all three tell the same weeks, and each begins with what a forecast is not. A picture never
stands without its numbers. Nothing here is worked out.
"""

from __future__ import annotations

import json
from typing import TYPE_CHECKING, Final

from coach.drivers.forecast import NO_PROMISE, lanes
from coach.reports.page import Page, Panel, Para, Picture, Section, Series, Table
from coach.reports.words import UNKNOWN, day_words, number, short_day

if TYPE_CHECKING:
    from collections.abc import Iterator

    from coach.drivers.forecast import Forecast, Lane, Thrown, Week, Work

EYES: Final = "\u2581\u2582\u2583\u2584\u2585\u2586\u2587\u2588"
PLAIN: Final = "_.:-=+*#"
NOT_DONE: Final = " "
AS_BEFORE: Final = "as the week before"


# ---------------------------------------------------------------- lines


def as_lines(made: Forecast, *, plain: bool) -> list[str]:
    """The forecast line by line: what it is, the picture, then week by week."""
    since = f" from {day_words(made.weeks[0].first)}" if made.weeks else ""
    weeks = "1 week" if len(made.weeks) == 1 else f"{len(made.weeks)} weeks"
    head = [f"Forecast: {made.plan}, {weeks}{since}, course {made.course}.", NO_PROMISE]
    return [*head, "", *_picture(made, PLAIN if plain else EYES), "", *_weeks(made)]


def _picture(made: Forecast, levels: str) -> Iterator[str]:
    yield f"A mark a week, from {levels[0]} (lowest) to {levels[-1]} (highest)."
    for name, rows in lanes(made):
        yield name
        for lane in rows:
            yield f"  {_marks(lane, levels)}  {lane.what} {_from_to(lane)}"


def _marks(lane: Lane, levels: str) -> str:
    known = lane.known()
    low, high = known[0], known[-1]
    top = len(levels) - 1

    def mark(value: float | None) -> str:
        if value is None:
            return NOT_DONE
        return levels[0 if high == low else round(top * (value - low) / (high - low))]

    return "".join(mark(value) for value in lane.values)


def _from_to(lane: Lane) -> str:
    known = lane.known()
    words = f"{known[0]:g}" if len(known) == 1 else f"{known[0]:g} to {known[-1]:g}"
    return f"{words} {lane.unit}".rstrip()


def _weeks(made: Forecast) -> Iterator[str]:
    before: dict[str, str] = {}
    for week in made.weeks:
        yield f"Week {week.number}, {_dates(week)}, phase {week.phase}: {_sessions(week)}."
        for work in week.works:
            same = before.get(work.exercise) == work.words
            yield f"  {work.exercise}: {AS_BEFORE if same else work.words}"
            before[work.exercise] = work.words
        yield from (f"  {_throws(day, made.unit)}" for day in week.thrown)
        yield from (f"  {short_day(told.day)}, {told.rule}: {told.why}" for told in week.told)
    if made.ends:
        yield made.ends


def _dates(week: Week) -> str:
    return f"{short_day(week.first)} to {short_day(week.last)}"


def _sessions(week: Week) -> str:
    if not week.sessions:
        return "no session"
    return "1 session" if week.sessions == 1 else f"{week.sessions} sessions"


def _throws(day: Thrown, unit: str) -> str:
    if not day.step:
        return f"{short_day(day.day)}, throwing: none, {day.row}"
    return f"{short_day(day.day)}, throwing: step {day.step}, {day.throws} {unit}, {day.row}"


# ---------------------------------------------------------------- data


def as_json(made: Forecast) -> str:
    """The forecast as one JSON object."""
    weeks = [
        {
            "week": week.number,
            "first": week.first,
            "last": week.last,
            "phase": week.phase,
            "sessions": week.sessions,
            "exercises": [_as_mapping(work) for work in week.works],
            "throwing": [day._asdict() for day in week.thrown],
            "told": [told._asdict() for told in week.told],
            "stop": week.stop,
        }
        for week in made.weeks
    ]
    body = {
        "plan": made.plan,
        "course": made.course,
        "side": made.side,
        "what it is": NO_PROMISE,
        "weeks": weeks,
        "ends": made.ends,
    }
    return json.dumps(body, indent=1)


def _as_mapping(work: Work) -> dict[str, object]:
    dose = work.dose
    ladder = {
        "sets": dose.sets,
        "reps": [dose.reps_low, dose.reps_high],
        "hold_s": dose.hold_s,
        "load": dose.load.words(),
        "range": dose.range_step,
        "version": dose.version,
    }
    return {"exercise": work.exercise, "times": work.times, "dose": work.words, "ladder": ladder}


# ---------------------------------------------------------------- a page


def as_page(made: Forecast) -> Page:
    """The forecast as a page of the reports."""
    lead = (
        NO_PROMISE,
        f"{made.plan}, {made.side} arm, {len(made.weeks)} weeks, course {made.course}.",
    )
    sections = (
        Section("Over the weeks", (_drawn(made),)),
        Section("Doses", tuple(_dose_table(made, name) for name in _names(made))),
        Section("Throwing", (_throw_table(made),)),
        Section("What was told", (_told_table(made), *((Para(made.ends),) if made.ends else ()))),
    )
    return Page("A forecast, no promise", lead, sections)


def _names(made: Forecast) -> tuple[str, ...]:
    return tuple(dict.fromkeys(work.exercise for week in made.weeks for work in week.works))


def _drawn(made: Forecast) -> Picture:
    panels = tuple(
        Panel(f"{name}: {lane.what}", *_scale(lane), (Series(lane.what, "square", lane.values),))
        for name, rows in lanes(made)
        for lane in rows
    )
    told = "; ".join(
        f"{name}: {lane.what} {_from_to(lane)}" for name, rows in lanes(made) for lane in rows
    )
    days = tuple(week.first for week in made.weeks)
    return Picture("Week by week", f"{told}. The numbers stand in the tables.", days, panels)


def _scale(lane: Lane) -> tuple[float, float]:
    """The ends of the scale, one below and one above what there is."""
    known = lane.known()
    return max(0.0, known[0] - 1), known[-1] + 1


def _dose_table(made: Forecast, name: str) -> Table:
    rows = []
    for week in made.weeks:
        work = next((w for w in week.works if w.exercise == name), None)
        times = number(float(work.times), 0) if work else "0"
        rows.append((f"{week.number}", _dates(week), times, work.words if work else UNKNOWN))
    return Table(name, ("Week", "Days", "Times", "Dose"), tuple(rows))


def _throw_table(made: Forecast) -> Table | Para:
    rows = tuple(
        (short_day(day.day), str(day.step or "none"), f"{day.throws} {made.unit}", day.row)
        for week in made.weeks
        for day in week.thrown
    )
    if not rows:
        return Para("No throwing line: the plan does not clear it, or its day did not come.")
    return Table("Throwing days", ("Day", "Step", "Count", "Soreness"), rows)


def _told_table(made: Forecast) -> Table | Para:
    rows = tuple(
        (short_day(told.day), told.rule, told.why) for week in made.weeks for told in week.told
    )
    if not rows:
        return Para("Nothing moved.")
    return Table("Moves, and what held them", ("Day", "Rule", "Reason"), rows)
