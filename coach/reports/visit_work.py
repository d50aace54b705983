"""Each exercise and the throwing: planned against done, pain, corrections, every move's reason.

Law: doses are told in the words that were shown; a move of a ladder is read off two records and its
reason is the decision recorded that day, with its rule. A reason that was not recorded is said to be
so, never made up.
"""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Final

from coach.reports.facts import Facts, done_of, exercises, outings
from coach.reports.page import Block, Para, Section, Table
from coach.reports.words import (
    UNKNOWN,
    counted,
    day_words,
    number,
    numbers,
    own,
    short_day,
    titled,
)

if TYPE_CHECKING:
    from coach.model.history import DayRecord, Done
    from coach.model.ladders import Ladder
    from coach.model.program import Prescription
    from coach.model.quantities import Dose

RESULT: Final = {
    "good": "as planned",
    "earned": "two reps to spare",
    "short": "fewer reps than planned",
    "form": "correction still open",
    "over": "ended by pain",
    "left": "left by the athlete",
    "no equipment": "left: not at hand",
    "cut off": "cut off",
}
MOVES: Final = frozenset({"up", "down", "first step"})
EXERCISE_HEAD: Final = ("Day", "Dose as shown", "Done, set by set", "Pain in set (0-10)", "Went")
MOVE_HEAD: Final = ("Day", "From", "To", "Reason as shown", "Rule")


def each_exercise(facts: Facts) -> Section:
    """A table for every exercise done, and the moves of its ladder."""
    blocks: list[Block] = []
    plan = {one.exercise: one for one in facts.bound.plan.doses}
    for name in exercises(facts):
        found = done_of(facts, name)
        rows = tuple(done_row(record, done) for record, done in found)
        blocks.append(Para(summary(name, found, plan.get(name))))
        blocks.append(Table(titled(own(name)), EXERCISE_HEAD, rows))
        moved = move_rows(facts, name)
        if moved:
            blocks.append(Table(f"{titled(own(name))}: moves of its ladder", MOVE_HEAD, moved))
    return Section("Each exercise", (*blocks, *never_done(facts)))


def never_done(facts: Facts) -> list[Block]:
    """The phase's exercises with a dose in the plan that no day holds."""
    bound = facts.bound
    phase = next((p for p in bound.program.phases if p.name == bound.plan.phase), None)
    names = phase.exercises if phase is not None else ()
    dosed = {one.exercise for one in bound.plan.doses} - set(bound.program.warm_up)
    done = set(exercises(facts))
    gone = [own(name) for name in names if name in dosed and name not in done]
    if not gone:
        return []
    return [Para(f"In the plan's phase, not done in these days: {', '.join(gone)}.")]


def summary(name: str, found: list[tuple[DayRecord, Done]], line: Prescription | None) -> str:
    """Planned against done in one sentence, and the plan's own limits."""
    planned = sum(done.planned_sets for _record, done in found)
    sets = sum(done.sets for _record, done in found)
    of = f" of {planned} shown" if planned else ""
    words = f"{titled(own(name))}: {counted(len(found), 'day')}, {counted(sets, 'set')}{of}."
    if line is None:
        return f"{words} This plan has no dose for it."
    cap = line.reps.cap
    top = f", at most {cap}" if cap > line.reps.opening_high else ""
    dose = f"{counted(line.sets.opening, 'set')} of {reps_range(line)}{top}"
    return f"{words} Plan: {dose}; {line.load.words()}."


def reps_range(line: Prescription) -> str:
    """`10 to 15`, or one number."""
    low, high = line.reps.opening, line.reps.opening_high
    return f"{low}" if low == high else f"{low} to {high}"


def done_row(record: DayRecord, done: Done) -> tuple[str, ...]:
    """One day of an exercise."""
    sets = f"{done.sets} of {done.planned_sets}" if done.planned_sets else str(done.sets)
    reps = f"{numbers(done.reps)} ({sets} sets)" if done.reps else f"{sets} sets"
    felt = tuple(dict.fromkeys(own(f) for f in done.felt if f not in {"fine", ""}))
    corrected = f"corrected: {', '.join(felt)}; " if felt else ""
    return (
        short_day(record.day),
        own(done.dose) or UNKNOWN,
        reps,
        numbers(done.pains),
        corrected + RESULT.get(done.result, own(done.result)),
    )


# ---------------------------------------------------------------- ladders


def move_rows(facts: Facts, name: str) -> tuple[tuple[str, ...], ...]:
    """Every change of an exercise's ladder in the stretch, with its recorded reason."""
    rows = []
    before: Ladder | None = None
    for day in facts.all_days:
        for sat in day.sessions:
            if sat.record is None:
                continue
            ladder = dict(sat.record.ladders).get(name)
            if ladder is None:
                continue
            if before is not None and ladder.dose != before.dose and day.day >= facts.since:
                rows.append(move_row(sat.record, name, before.dose, ladder.dose))
            before = ladder
    return tuple(rows)


def move_row(record: DayRecord, name: str, old: Dose, new: Dose) -> tuple[str, ...]:
    """What changed, from what to what, why, and by which rule."""
    changes = dose_changes(old, new)
    rule, why = reason_of(record, name, up=rises(old, new))
    return (
        short_day(record.day),
        ", ".join(old_words for old_words, _new in changes),
        ", ".join(new_words for _old, new_words in changes),
        own(why) or "not recorded",
        own(rule) or UNKNOWN,
    )


def dose_changes(old: Dose, new: Dose) -> list[tuple[str, str]]:
    """The parts of a dose that differ, in words."""
    pairs = [(f"{d} sets" for d in (old.sets, new.sets))] if old.sets != new.sets else []
    out = [tuple(pair) for pair in pairs]
    if (old.reps_low, old.reps_high) != (new.reps_low, new.reps_high):
        out.append((reps_words(old), reps_words(new)))
    if old.hold_s != new.hold_s:
        out.append((f"hold {old.hold_s} s", f"hold {new.hold_s} s"))
    if old.load != new.load:
        out.append((old.load.words(), new.load.words()))
    if old.range_step != new.range_step:
        out.append((own(old.range_step), own(new.range_step)))
    if old.version != new.version:
        out.append((own(old.version), own(new.version)))
    return [(a, b) for a, b in out] or [("other details", "other details")]


def reps_words(dose: Dose) -> str:
    """`10 to 15 reps`."""
    low, high = dose.reps_low, dose.reps_high
    noun = "holds" if dose.hold_s else "reps"
    return f"{low} {noun}" if low == high else f"{low} to {high} {noun}"


def rises(old: Dose, new: Dose) -> bool:
    """Whether any part of the dose went up."""
    pairs = (
        (old.sets, new.sets),
        (old.reps_high, new.reps_high),
        (old.hold_s, new.hold_s),
        (old.load.rank(), new.load.rank()),
        (old.range_index, new.range_index),
        (old.version_level, new.version_level),
    )
    return any(after > before for before, after in pairs)


def reason_of(record: DayRecord, name: str, *, up: bool) -> tuple[str, str]:
    """The recorded decision behind a move: rule and words; empty where none was recorded.

    A step up names its exercise in its words; a step down is one sentence for all of them.
    """
    head = f"{titled(name)}:"
    for rule, outcome, why in record.decisions:
        if up and outcome == "up" and why.startswith(head):
            return rule, why.removeprefix(head).strip()
        if not up and outcome in MOVES and outcome != "up":
            return rule, why
    new_plan = (d for d in record.decisions if d[1] == "new version" and not up)
    rule, _outcome, why = next(new_plan, ("", "", ""))
    return rule, why


# ---------------------------------------------------------------- throwing

THROW_HEAD: Final = (
    "Day",
    "Step",
    "Count",
    "Soreness row",
    "Days since the last",
    "Days off next",
)


def throwing(facts: Facts) -> Section:
    """Steps and counts, soreness rows, spacing; and throwing outside the plan, as told."""
    line = facts.bound.plan.throwing_line
    opened = "The plan has throwing not cleared."
    if line is not None:
        opened = (
            f"Opened by {own(line.who)} on {day_words(line.cleared)}: table {own(line.table)}, "
            f"steps {line.from_step} to {line.most_step}, {counted(line.apart_days, 'day')} apart."
        )
    blocks: list[Block] = [Para(opened)]
    rows = throw_rows(facts)
    if rows:
        blocks.append(Table("Throwing days of the plan", THROW_HEAD, rows))
    other = tuple(
        (short_day(day.day), own(day.other_throws)) for day in facts.days if day.other_throws
    )
    if other:
        blocks.append(Table("Other throwing, as told", ("Day", "Kind"), other))
    pitched = pitch_rows(facts)
    if pitched:
        blocks.append(Table("Game pitches, as told", PITCH_HEAD, pitched))
    if not rows and not other and not pitched:
        blocks.append(Para("No throwing was recorded."))
    return Section("Throwing", tuple(blocks))


PITCH_HEAD: Final = ("Day", "Pitches (count)", "Days off asked for (d)", "Over the day's cap")


def pitch_rows(facts: Facts) -> tuple[tuple[str, ...], ...]:
    """One row an outing; a count that stayed unclear has none and the most days off."""
    return tuple(
        (
            short_day(one.day),
            UNKNOWN if one.pitches is None else f"{one.pitches} pitches",
            f"{one.days_off}",
            "yes" if one.over_cap else "no",
        )
        for one in outings(facts)
        if one.day >= facts.since
    )


def throw_rows(facts: Facts) -> tuple[tuple[str, ...], ...]:
    """One row a throwing day; the spacing counts calendar days to the throwing day before."""
    rows = []
    before = ""
    for day in facts.all_days:
        for threw in day.threw:
            apart = UNKNOWN
            if before:
                gap = date.fromisoformat(day.day) - date.fromisoformat(before)
                apart = str(gap.days)
            before = day.day
            if day.day < facts.since:
                continue
            step = str(threw.step) if threw.step else "none"
            count = f"{threw.throws} {own(threw.unit)}".strip()
            row = own(threw.row) or UNKNOWN
            rows.append((short_day(day.day), step, count, row, apart, number(threw.rest_days)))
    return tuple(rows)
