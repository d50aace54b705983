"""The diary as tidy tables for a spreadsheet: one thing a row, units in the heads.

Law: RFC 4180, line ends included. A number is a number; words that a spreadsheet could run as a
formula get one apostrophe in front, and so does a word that began with one, so that taking one off
gives the words back. What is not known is an empty cell.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.reports.facts import Facts, holds, outings
from coach.reports.visit_needs import records
from coach.reports.words import number, own

if TYPE_CHECKING:
    from coach.reports.facts import Day

Cell = str | float | None
FORMULA: Final = tuple("=+-@\t\r'\uff1d\uff0b\uff0d\uff20")  # common spreadsheets; common practice


def csv_tables(facts: Facts) -> dict[str, str]:
    """File name to its text: days, exercises, sets, throws, pitches, decisions, stops, notes."""
    return {
        "days.csv": days(facts),
        "exercises.csv": exercises_done(facts),
        "sets.csv": sets(facts),
        "throws.csv": throws(facts),
        "pitches.csv": pitches(facts),
        "decisions.csv": decisions(facts),
        "stops.csv": stops(facts),
        "notes.csv": notes(facts),
    }


def table(head: tuple[str, ...], rows: list[tuple[Cell, ...]]) -> str:
    """A table's text with CRLF line ends."""
    return "".join(",".join(map(cell, row)) + "\r\n" for row in (head, *rows))


def cell(value: Cell) -> str:
    """One cell, guarded and quoted where it must be."""
    if value is None:
        return ""
    if isinstance(value, int | float):
        return number(float(value), 6)
    text = guarded(own(value))
    if any(letter in text for letter in ',"\r\n') or text != text.strip():
        return '"' + text.replace('"', '""') + '"'
    return text


def guarded(text: str) -> str:
    """Words that no spreadsheet takes for a formula."""
    return f"'{text}" if text.lstrip(" ").startswith(FORMULA) else text


def unguarded(text: str) -> str:
    """The words as they were before the guard."""
    return text.removeprefix("'")


# ---------------------------------------------------------------- the tables


def days(facts: Facts) -> str:
    """One row a calendar day."""
    head = (
        "day", "sessions (count)", "pain on waking (0-10)", "pain at rest (0-10)",
        "worst pain in a set (0-10)", "pain after (0-10)", "sleep (h)", "sets (count)",
        "throws (count)", "counted in (unit)", "other throwing (kind)", "effort (0-10)", "time (min)", "load (AU)",
    )  # fmt: skip
    return table(head, [day_row(day) for day in facts.days])


def day_row(day: Day) -> tuple[Cell, ...]:
    """A day's row."""
    pains = (day.waking, day.rest, day.in_set, day.after)
    unit = day.unit if day.threw else None
    rest = (day.throws, unit, day.other_throws or None, day.effort, day.minutes, day.load)
    return (day.day, len(day.sessions), *pains, day.sleep, day.sets, *rest)


def exercises_done(facts: Facts) -> str:
    """One row an exercise of a day."""
    head = (
        "day", "exercise", "side", "dose as shown", "sets shown (count)", "sets done (count)",
        "loaded (yes or no)", "went", "ended at (ISO 8601)",
    )  # fmt: skip
    side = facts.bound.plan.side
    rows: list[tuple[Cell, ...]] = [
        (r.day, d.exercise, side, d.dose, d.planned_sets or None, d.sets,
         "yes" if d.loaded else "no", d.result, d.ended_at)
        for r in records(facts)
        for d in r.done
    ]  # fmt: skip
    return table(head, rows)


def sets(facts: Facts) -> str:
    """One row a set, where reps or pain were said."""
    head = ("day", "exercise", "set (number)", "reps or holds (count)", "pain (0-10)", "felt")
    rows: list[tuple[Cell, ...]] = [
        (r.day, d.exercise, n + 1, _at(d.reps, n), _at(d.pains, n), _at(d.felt, n))
        for r in records(facts)
        for d in r.done
        for n in range(max(len(d.reps), len(d.pains)))
    ]
    return table(head, rows)


def _at(values: tuple[Cell, ...], place: int) -> Cell:
    return values[place] if place < len(values) else None


def pitches(facts: Facts) -> str:
    """One row a day with game pitches, as told; an unclear count is empty."""
    head = ("day", "pitches in games (count)", "days off (d)", "over the cap (1 yes)")
    rows: list[tuple[Cell, ...]] = [
        (one.day, one.pitches, one.days_off, int(one.over_cap)) for one in outings(facts)
    ]
    return table(head, rows)


def throws(facts: Facts) -> str:
    """One row a throwing day of the plan."""
    head = ("day", "step (number)", "throws (count)", "unit", "soreness row", "days off next (d)")
    rows: list[tuple[Cell, ...]] = [
        (day.day, t.step or None, t.throws, t.unit, t.row, t.rest_days)
        for day in facts.days
        for t in day.threw
    ]
    return table(head, rows)


def decisions(facts: Facts) -> str:
    """One row a decision as recorded."""
    head = ("day", "rule", "outcome", "as shown")
    rows: list[tuple[Cell, ...]] = [(r.day, *d) for r in records(facts) for d in r.decisions]
    return table(head, rows)


def stops(facts: Facts) -> str:
    """One row a stop, with its opening."""
    head = ("day", "code", "how soon", "group", "typed", "opened on", "opened by", "way")
    lifts = {lift.hold: lift for lift in facts.recorded.lifts}
    rows: list[tuple[Cell, ...]] = []
    for hold in holds(facts.recorded):
        lift = lifts.get(hold.number)
        opened = (lift.day, lift.who, lift.way) if lift else (None, None, None)
        rows.append((hold.day, hold.code, hold.tier, hold.group, hold.said, *opened))
    return table(head, rows)


def notes(facts: Facts) -> str:
    """One row a note; own words without the quotes they are kept in."""
    head = ("day", "whose", "words")
    rows: list[tuple[Cell, ...]] = []
    for record in records(facts):
        for note in record.notes:
            mine = note.startswith('"') and note.endswith('"') and len(note) > 1
            words = note[1:-1] if mine else note
            rows.append((record.day, "athlete" if mine else "coach", words))
    return table(head, rows)
