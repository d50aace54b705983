"""The diary as a plain list, newest session first: what was done, pain, sleep, words typed.

Law: it tells what was recorded as it was recorded. No score, no count of days in a row, no praise,
no blame; a thing that was not asked is not shown. Every number has its unit.
"""

from __future__ import annotations

from datetime import datetime
from typing import TYPE_CHECKING, Final, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Iterable

    from coach.model.history import DayRecord, Done, Hold

NOTHING: Final = "Nothing is in your diary yet."
_WEEKDAYS: Final = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_MONTHS: Final = (
    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
)  # fmt: skip
_ENDED: Final = {
    "done": "Done.",
    "by choice": "Ended by you.",
    "partial": "Cut off before the end.",
    "stopped": "Stopped.",
    "none": "No exercises that day.",
}
_RESULT: Final = {
    "short": ", fewer reps than planned",
    "form": ", with a form note",
    "over": ", pain over the limit",
    "cut off": ", cut off",
}


class Entry(NamedTuple):
    """One session for the list; `record` is None when it was cut off, `hold` is its stop."""

    opened_at: str
    record: DayRecord | None
    hold: Hold | None = None


def diary_lines(entries: Iterable[Entry]) -> list[str]:
    """The list, one fact a line; sessions are parted by an empty line. `entries` newest first.

    Starts at which nothing could be done are shown once a day.
    """
    lines: list[str] = []
    idle_day = ""
    for entry in entries:
        idle = entry.record is not None and entry.record.ended == "none" and entry.hold is None
        day = entry.opened_at[:10]
        if idle and day == idle_day:
            continue
        idle_day = day if idle else ""
        lines += ["", *session_lines(entry)] if lines else session_lines(entry)
    return lines or [NOTHING]


def session_lines(entry: Entry) -> list[str]:
    """One session: when and how it ended, then its facts."""
    head = when(entry.opened_at)
    record = entry.record
    if record is None:
        how = _ENDED["stopped" if entry.hold else "partial"]
        return [f"{head}. {how}", *_stop(entry.hold)]
    how = _ENDED.get(record.ended, "Ended.")
    facts = [*map(_exercise, record.done), *_pain(record), *_day(record)]
    return [f"{head}. {how}", *_stop(entry.hold), *facts, *_notes(record.notes)]


def when(instant: str) -> str:
    """An ISO instant in words, at the clock time it was recorded with: `Mon 9 Nov 2026, 18:00`."""
    try:
        at = datetime.fromisoformat(instant)
    except ValueError:
        return "Day not known"
    day = f"{_WEEKDAYS[at.weekday()]} {at.day} {_MONTHS[at.month - 1]} {at.year}"
    return f"{day}, {at:%H:%M}"


def _exercise(done: Done) -> str:
    sets = "1 set" if done.sets == 1 else f"{done.sets} sets"
    load = " with a load" if done.loaded else ""
    return f"  {done.exercise}: {sets}{load}{_RESULT.get(done.result, '')}"


def _pain(record: DayRecord) -> list[str]:
    pains = (
        ("Morning pain", record.waking_pain),
        ("Pain at rest", record.pain_now),
        ("Most pain in a set", record.worst_in_set),
    )
    return [f"  {name}: {value:g} of 10" for name, value in pains if value is not None]


def _day(record: DayRecord) -> list[str]:
    lines = []
    if record.sleep_h is not None:
        lines.append(f"  Slept: {record.sleep_h:g} h")
    if record.threw_yesterday:
        lines.append(f"  Throwing the day before: {record.threw_yesterday}")
    if record.throwing_today:
        lines.append(f"  Throwing that day: {record.throwing_today}")
    if record.effort is not None:
        lines.append(f"  Effort: {record.effort:g} of 10")
    if record.minutes is not None:
        lines.append(f"  Time: {record.minutes:g} min")
    return lines


def _stop(hold: Hold | None) -> list[str]:
    if hold is None:
        return []
    typed = f' You typed: "{hold.said}"' if hold.said else ""
    return [f"  Plan closed, code {hold.code}.{typed}"]


def _notes(notes: tuple[str, ...]) -> list[str]:
    return [f"  Note: {note}" for note in notes]
