"""The week, and the whole stretch, in one picture: pain, sleep, sessions, throws, effort by day.

Law: all panels share one time axis; every value drawn stands in the table beside it with its day.
A day without a value has no mark; nothing is joined over more than it shows.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from coach.reports.facts import (
    WEEK_DAYS,
    Facts,
    average,
    highest,
    slope_a_week,
    throws_counted,
    weeks,
)
from coach.reports.page import Block, Panel, Para, Picture, Section, Series, Table
from coach.reports.words import UNKNOWN, counted, day_words, number, own, short_day, titled

if TYPE_CHECKING:
    from coach.reports.facts import Day

DAY_HEAD = (
    "Day",
    "Pain on waking (0-10)",
    "Pain at rest (0-10)",
    "Worst in a set (0-10)",
    "Pain after (0-10)",
    "Sleep (h)",
    "Sets",
    "Throws",
    "Effort (0-10)",
    "Time (min)",
)


def week_in_a_picture(facts: Facts) -> Section:
    """The last 7 days drawn and in numbers, then the whole stretch."""
    last = facts.days[-WEEK_DAYS:]
    blocks: list[Block] = [
        picture("The last 7 days", last, facts),
        day_table("The last 7 days in numbers", last),
    ]
    if len(facts.days) > WEEK_DAYS:
        title = f"All {counted(len(facts.days), 'day')} from {day_words(facts.since)}"
        blocks += [
            picture(title, facts.days, facts),
            Table("Week by week", WEEK_HEAD, tuple(week_row(week) for week in weeks(facts))),
            *trend(facts),
            day_table("Day by day, days with an entry", tuple(d for d in facts.days if d.sessions)),
        ]
    return Section("The week in one picture", tuple(blocks))


def picture(title: str, days: tuple[Day, ...], facts: Facts) -> Picture:
    """Five panels over the days."""
    ceiling = facts.bound.plan.pain.in_exercise
    pain = Panel(
        "Pain, 0 to 10",
        0,
        10,
        (
            Series("on waking", "ring", tuple(day.waking for day in days), "w"),
            Series("at rest", "dot", tuple(day.rest for day in days), "r"),
            Series("worst in a set", "square", tuple(day.in_set for day in days), "s"),
        ),
        (ceiling, f"plan: in exercise {number(ceiling)}"),
    )
    sleep = tuple(day.sleep for day in days)
    sets = tuple(float(day.sets) if day.sessions else None for day in days)
    throws = tuple(None if day.throws is None else float(day.throws) for day in days)
    effort = tuple(day.effort for day in days)
    unit = next((day.unit for day in days if day.threw), "throws")
    panels = (
        pain,
        Panel("Sleep, h", 0, max(10, highest(sleep) or 0), (Series("sleep", "bar", sleep),)),
        Panel("Sets done", 0, max(5, highest(sets) or 0), (Series("sets", "bar", sets),)),
        Panel(titled(unit), 0, max(20, highest(throws) or 0), (Series(unit, "bar", throws),)),
        Panel("Effort, 0 to 10", 0, 10, (Series("effort", "bar", effort),)),
    )
    marks = tuple(
        (place, f"stop {own(sat.hold.code)}")
        for place, day in enumerate(days)
        for sat in day.sessions
        if sat.hold is not None
    )
    return Picture(title, told(days), tuple(day.day for day in days), panels, marks)


def told(days: tuple[Day, ...]) -> str:
    """The picture in words."""
    worst = highest(pain for d in days for pain in (d.waking, d.rest, d.in_set, d.after))
    sleeps = [d.sleep for d in days if d.sleep is not None]
    throws = [d.throws for d in days if d.throws is not None]
    parts = [
        f"{day_words(days[0].day)} to {day_words(days[-1].day)}",
        f"exercise or throws on {counted(sum(d.trained for d in days), 'day')}",
        f"highest pain {number(worst)} of 10" if worst is not None else "no pain asked",
        f"mean sleep {number(average(sleeps), 1)} h over {counted(len(sleeps), 'night')}"
        if sleeps
        else "no sleep asked",
        f"{throws_counted(days)} on {counted(len(throws), 'day')}"
        if throws
        else "no throws of the plan",
    ]
    stops = [f"{short_day(d.day)}" for d in days for sat in d.sessions if sat.hold is not None]
    if stops:
        parts.append(f"stop on {', '.join(stops)}")
    return "; ".join(parts) + "."


def day_table(caption: str, days: tuple[Day, ...]) -> Table:
    """One row a day."""
    return Table(caption, DAY_HEAD, tuple(day_row(day) for day in days))


def day_row(day: Day) -> tuple[str, ...]:
    """A day's numbers; a dash where nothing is known."""
    pains = (day.waking, day.rest, day.in_set, day.after)
    return (
        short_day(day.day),
        *(number(pain) for pain in pains),
        number(day.sleep),
        str(day.sets) if day.sessions else UNKNOWN,
        throws_counted((day,)) or UNKNOWN,
        number(day.effort),
        number(day.minutes),
    )


WEEK_HEAD = (
    "7 days from",
    "Days trained",
    "Mean pain on waking (0-10)",
    "Mean pain at rest (0-10)",
    "Highest pain (0-10)",
    "Mean sleep (h)",
    "Sets",
    "Throws",
    "Highest effort (0-10)",
)


def week_row(week: tuple[Day, ...]) -> tuple[str, ...]:
    """Seven days (or the first, shorter run) as one row."""
    short = "" if len(week) == WEEK_DAYS else f" ({counted(len(week), 'day')})"
    return (
        f"{short_day(week[0].day)}{short}",
        str(sum(day.trained for day in week)),
        number(average([d.waking for d in week if d.waking is not None]), 1),
        number(average([d.rest for d in week if d.rest is not None]), 1),
        number(highest(p for d in week for p in (d.waking, d.rest, d.in_set, d.after))),
        number(average([d.sleep for d in week if d.sleep is not None]), 1),
        str(sum(day.sets for day in week)),
        throws_counted(week) or UNKNOWN,
        number(highest(day.effort for day in week)),
    )


def trend(facts: Facts) -> list[Block]:
    """The straight line through pain on waking and through sleep, with how many days it rests on."""
    rows = (
        ("pain on waking", tuple(day.waking for day in facts.days), "of 10"),
        ("pain at rest", tuple(day.rest for day in facts.days), "of 10"),
        ("worst pain in a set", tuple(day.in_set for day in facts.days), "of 10"),
        ("sleep", tuple(day.sleep for day in facts.days), "h"),
    )
    parts = []
    for name, values, unit in rows:
        slope = slope_a_week(values)
        if slope is not None:
            count = sum(value is not None for value in values)
            sign = "+" if slope > 0 else ""
            parts.append(f"{name} {sign}{number(slope)} {unit} a week ({counted(count, 'day')})")
    if not parts:
        return []
    words = "; ".join(parts)
    caveat = "A line of least squares through the days known; a level scale is assumed."
    return [Para(f"Trend: {words}. {caveat}", "small")]
