"""The rest of the visit page: sleep and habits, what was not done and why, notes, data quality.

Law: a session that did not happen is told without blame. Reasons are those recorded, in the words
shown, with their rule. What is doubtful in the data is said, day by day.
"""

from __future__ import annotations

from collections import Counter
from datetime import datetime
from typing import TYPE_CHECKING, Final

from coach.reports.facts import WEEK_DAYS, Facts, average, weeks
from coach.reports.page import Block, Para, Section, Table
from coach.reports.visit_needs import records
from coach.reports.visit_work import RESULT
from coach.reports.words import (
    clock_time,
    counted,
    date_of,
    day_words,
    number,
    own,
    quoted,
    short_day,
    titled,
    when,
)
from coach.rules.readiness import SHORT_NIGHT_H

if TYPE_CHECKING:
    from coach.model.history import DayRecord
    from coach.reports.facts import Sat

ENDED: Final = {
    "by choice": "ended by the athlete",
    "partial": "cut off before the end",
    "stopped": "stopped by a warning sign",
    "none": "nothing could be started",
}
NOT_DONE: Final = frozenset({"left", "no equipment", "cut off", "over"})
QUICK_S: Final = 2  # an answer to a list of warning signs within this is counted; set here


# ---------------------------------------------------------------- sleep and habits


def sleep_and_habits(facts: Facts) -> Section:
    """Hours slept, short nights by day, days and times of day."""
    nights = [(day.day, day.sleep) for day in facts.days if day.sleep is not None]
    blocks: list[Block] = [Para("Sleep was not asked in these days.")]
    if nights:
        hours = [hours for _day, hours in nights]
        short = [day for day, slept in nights if slept < SHORT_NIGHT_H]
        mean = number(average(hours), 1)
        words = f"Sleep: mean {mean} h over {counted(len(nights), 'night')} asked"
        words += f", from {number(min(hours))} to {number(max(hours))} h."
        listed = f": {', '.join(map(short_day, short))}" if short else ""
        words += f" Under {number(SHORT_NIGHT_H)} h: {counted(len(short), 'night')}{listed}."
        blocks = [Para(words)]
    return Section("Sleep and habits", (*blocks, *habits(facts)))


def habits(facts: Facts) -> list[Block]:
    """Days trained a week beside the plan's most, and the times of day."""
    full = [week for week in weeks(facts) if len(week) == WEEK_DAYS]
    counts = [sum(day.trained for day in week) for week in full]
    most = facts.bound.plan.limits.sessions_a_week
    blocks: list[Block] = []
    if counts:
        listed = ", ".join(map(str, counts))
        blocks.append(
            Para(f"Days trained in each 7 days, oldest first: {listed}. The plan's most is {most}.")
        )
    hours = Counter(part_of_day(sat) for sat in facts.sessions if sat.record and sat.record.done)
    if hours:
        parts = ", ".join(f"{name} {count}" for name, count in sorted(hours.items()))
        blocks.append(Para(f"Sessions by time of day: {parts}."))
    return blocks


def part_of_day(sat: Sat) -> str:
    """Morning before 12, evening from 18, else afternoon, by the clock recorded."""
    hour = clock_time(sat.opened_at)[:2]
    if not hour.isdigit():
        return "time not known"
    return "morning" if int(hour) < 12 else "evening" if int(hour) >= 18 else "afternoon"  # noqa: PLR2004


# ---------------------------------------------------------------- what was not done


def not_done(facts: Facts) -> Section:
    """Days that ended early, exercises left, and every decision as shown with its rule."""
    names = tuple(one.name for one in facts.bound.program.exercises)
    rows = [row for sat in facts.sessions for row in not_done_rows(sat, names)]
    blocks: list[Block] = []
    if rows:
        blocks.append(Table("Not done, or not to the end", ("Day", "What", "Why"), tuple(rows)))
    else:
        blocks.append(Para("All that was started was done."))
    decided = tuple(
        (short_day(record.day), own(why) or own(outcome), own(outcome), own(rule))
        for record in records(facts)
        for rule, outcome, why in record.decisions
    )
    if decided:
        head = ("Day", "As shown", "Outcome", "Rule")
        blocks.append(Table("What the coach decided, as recorded", head, decided))
    return Section("What was not done, and why", tuple(blocks))


def not_done_rows(sat: Sat, names: tuple[str, ...]) -> list[tuple[str, ...]]:
    """A session's shortfalls."""
    record = sat.record
    if record is None:
        how = "stopped by a warning sign" if sat.hold else "cut off; the end was not recorded"
        return [(short_day(sat.opened_at), "the session", how)]
    rows: list[tuple[str, ...]] = []
    if record.ended in ENDED:
        why = last_reason(record)
        words = ENDED[record.ended] + (f": {why}" if why else "")
        rows.append((short_day(record.day), "the session", words))
    for done in record.done:
        if done.result in NOT_DONE or done.sets < done.planned_sets:
            of = f" of {done.planned_sets}" if done.planned_sets else ""
            what = f"{titled(own(done.exercise))}, {done.sets}{of} sets"
            rows.append((short_day(record.day), what, RESULT.get(done.result, own(done.result))))
    done_names = {done.exercise for done in record.done}
    for name in listed(sat, names):
        if name not in done_names:
            why = ENDED.get(record.ended) or last_reason(record) or "not begun"
            rows.append((short_day(record.day), f"{titled(own(name))}, on the list", why))
    return rows


def listed(sat: Sat, names: tuple[str, ...]) -> tuple[str, ...]:
    """The exercises that the day's list showed, in its order, by the lines recorded as shown."""
    lines = [line for event in sat.events for line in event.shown]
    return tuple(
        dict.fromkeys(
            name
            for line in lines
            for name in names
            if line.partition(" ")[0].isdigit() and line.partition(" ")[2].startswith(f"{name}, ")
        )
    )


def last_reason(record: DayRecord) -> str:
    """The last decision recorded that day, with its rule."""
    if record.ended == "by choice" or not record.decisions:
        return ""
    rule, _outcome, why = record.decisions[-1]
    return f"{own(why)} Rule {own(rule)}." if why else f"rule {own(rule)}"


# ---------------------------------------------------------------- notes


def notes(facts: Facts) -> Section:
    """Own words in quotes, and what a script or a rule noted."""
    rows = tuple(
        (short_day(record.day), quoted(note) if note.startswith('"') else own(note))
        for record in records(facts)
        for note in record.notes
    )
    if not rows:
        return Section("Notes", (Para("There are no notes."),))
    return Section("Notes", (Table("Notes and own words", ("Day", "Words"), rows),))


# ---------------------------------------------------------------- data quality


def what_is_doubtful(facts: Facts) -> Section:
    """What is not known, what was put right, restarts, the clock, what cannot be read."""
    rows = [row for sat in facts.sessions for row in doubts(sat)]
    rows += clock_rows(facts)
    rows += wrong_word_rows(facts)
    blocks: list[Block] = [Para(f"Cannot be read: {own(d)}") for d in facts.recorded.damage]
    if facts.outside:
        listed = ", ".join(day_words(at) for at in facts.outside)
        blocks.append(Para(f"Dated outside these days, so not shown: {listed}.", "need"))
    versions = Counter(record.plan_version for record in records(facts))
    if len(versions) > 1:
        listed = ", ".join(f"{v} on {counted(n, 'day')}" for v, n in sorted(versions.items()))
        blocks.append(Para(f"Plan versions: {listed}."))
    if rows:
        blocks.append(Table("Doubts, day by day", ("Day", "What"), tuple(rows)))
    quick = quick_answers(facts)
    if quick:
        blocks.append(
            Para(
                f'"none" to a list of warning signs within {QUICK_S} s: '
                f"{counted(len(quick), 'time')} ({', '.join(map(short_day, quick))})."
            )
        )
    found = tuple(blocks)
    return Section("Data quality", found or (Para("Nothing is missing or doubtful."),))


def doubts(sat: Sat) -> list[tuple[str, ...]]:
    """What is doubtful in one session."""
    day = short_day(sat.record.day if sat.record else sat.opened_at)
    found: list[tuple[str, ...]] = []
    if sat.record is not None and sat.record.ended in {"done", "by choice"}:
        gone = [name for name, value in asked_values(sat.record) if value is None]
        if gone:
            found.append((day, f"no value for {', '.join(gone)}"))
    fixed = sum(e.kind == "typed" and is_fix(e.body) for e in sat.events)
    if fixed:
        found.append((day, f"an answer was put right ({counted(fixed, 'time')})"))
    for event in sat.events:
        gap = event.body.get("gap_s")
        if event.kind == "resumed" and isinstance(gap, int):
            found.append((day, f"taken up again after {gap // 60} min"))
        if event.kind == "fault":
            found.append((day, "a mistake of Coach ended the session"))
    return found


def asked_values(record: DayRecord) -> tuple[tuple[str, float | None], ...]:
    """The numbers a whole session has."""
    base = (("pain at rest", record.pain_now), ("pain on waking", record.waking_pain))
    end = (("effort", record.effort), ("minutes", record.minutes))
    return (*base, ("sleep", record.sleep_h), *(end if record.done else ()))


def is_fix(body: dict[str, object]) -> bool:
    """Whether an answer was the word that changes an earlier one."""
    return str(body.get("text", "")).strip().lower() == "fix"


def clock_rows(facts: Facts) -> list[tuple[str, ...]]:
    """Sessions that opened before the one recorded before them, or under another UTC offset."""
    rows: list[tuple[str, ...]] = []
    before: datetime | None = None
    for sat in facts.sessions:
        at = instant(sat.opened_at)
        if at is None:
            rows.append((own(sat.opened_at), "the clock's time cannot be read"))
            continue
        if before is not None and at < before:
            rows.append((short_day(sat.opened_at), f"the clock went back from {before:%Y-%m-%d}"))
        if before is not None and at.utcoffset() != before.utcoffset():
            rows.append((short_day(sat.opened_at), "the clock's UTC offset changed"))
        before = at
    return rows


def instant(text: str) -> datetime | None:
    """An ISO instant with its offset; None for anything else."""
    try:
        at = datetime.fromisoformat(text)
    except ValueError:
        return None
    return at if at.tzinfo is not None else None


def wrong_word_rows(facts: Facts) -> list[tuple[str, ...]]:
    """Clearance words that did not fit."""
    return [
        (when(at), "a clearance word did not fit")
        for at in facts.recorded.wrong_words
        if date_of(at) and facts.since <= at[:10] <= facts.until
    ]


def quick_answers(facts: Facts) -> list[str]:
    """The days on which `none` came within 2 s of the event before it."""
    days = []
    for sat in facts.sessions:
        for before, event in zip(sat.events, sat.events[1:], strict=False):
            if event.kind != "typed" or str(event.body.get("text", "")).strip().lower() != "none":
                continue
            first, then = before.body.get("at_s"), event.body.get("at_s")
            if isinstance(first, int) and isinstance(then, int) and 0 <= then - first <= QUICK_S:
                days.append(sat.opened_at[:10])
    return days


def every_day(facts: Facts) -> str:
    """The stretch in words."""
    return f"{day_words(facts.since)} to {day_words(facts.until)}"
