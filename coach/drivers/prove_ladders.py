"""Every ladder of a plan by itself, over all that one day after another may tell it.

Law: the real rule leads from day to day; what may rise, by how much and when, is read from the plan
again, never asked of the rule. A day may tell anything, also what no session would; too much is
looked at, never too little. Two ladders of a day are held apart by the one rule that lets one rise.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta
from itertools import product
from typing import Final, NamedTuple, TypeVar

from coach.drivers.promises import over_the_caps
from coach.drivers.prove_search import Break
from coach.model.ladders import Drove, Ladder
from coach.model.program import Axis, Prescription
from coach.model.quantities import Dose
from coach.rules import dapre, progression
from coach.rules.progression import RESULTS, DaySummary, Rails
from coach.session.brief import Brief
from coach.session.ladders import rails_of

T = TypeVar("T")

GAPS: Final = ("none", "one step down", "first step")
EARNED_TO_RISE: Final = 2  # Baechle and Earle (two-for-two): sessions running with 2 reps to spare
LOAD_STEP_AT_MOST: Final = 0.10  # ACSM 2009: raise the load by 2 to 10 %
MOST_AT_ONCE: Final = 12  # ladders of one day that are asked together who may rise
MOST: Final = 20_000  # memories of one ladder; more would be a fault


class Told(NamedTuple):
    """What a day may tell a ladder: its summary, whether it may rise, the axes that stood long."""

    day: DaySummary
    may_rise: bool
    waited: frozenset[str]


class Memory(NamedTuple):
    """A ladder between two days, and the earned sessions running at its dose (to 2)."""

    ladder: Ladder
    earned: int


class Climbed(NamedTuple):
    """What the ladders of a plan showed."""

    ladders: int
    memories: int
    steps: int
    broken: tuple[Break, ...]


def climbed(brief: Brief) -> Climbed:
    """All ladders of a day's brief, each by itself, and who of them may rise."""
    memories = steps = 0
    broken: list[Break] = list(two_at_once())
    on_rails = [rails for one in brief.stations if (rails := rails_of(brief, one)) is not None]
    for rails in on_rails:
        found = _one_ladder(rails)
        memories, steps = memories + found.memories, steps + found.steps
        broken += found.broken
    return Climbed(len(on_rails), memories, steps, tuple(broken))


def two_at_once() -> Iterator[Break]:
    """P5: of any ladders that would rise on one day at most one does, and only one that would."""
    for count in range(MOST_AT_ONCE + 1):
        for wants in product((False, True), repeat=count):
            chosen = progression.arbiter(wants)
            if chosen is not None and not wants[chosen]:
                yield Break("P5", "an exercise that earned no step may rise", ())
                return


def _one_ladder(rails: Rails) -> Climbed:
    """Every memory of one ladder, breadth first, so that the first break is the shortest."""
    first = Memory(Ladder(rails.opening), 0)
    came: dict[Memory, tuple[Memory, str] | None] = {first: None}
    todo, steps = [first], 0
    days = tuple(days_told(rails))
    broken: dict[tuple[str, str], Break] = {}
    while todo and len(came) <= MOST:
        memory, todo = todo[0], todo[1:]
        for told in days:
            steps += 1
            after = a_day_on(memory, told, rails)
            for promise, words in wrong(memory, told, after, rails):
                talk = (*way_to(came, memory), ("day", words_of(told)))
                name = f"the ladder of {rails.exercise.name}"
                broken.setdefault((promise, words), Break(promise, words, talk, name))
            if after not in came:
                came[after] = (memory, words_of(told))
                todo.append(after)
    if todo:
        words = f"the ladder of {rails.exercise.name} does not come to an end"
        broken["P7", words] = Break("P7", words, ())
    return Climbed(1, len(came), steps, tuple(broken.values()))


# ---------------------------------------------------------------- one day


def days_told(rails: Rails) -> Iterator[Told]:
    """Every day that a ladder may be told of; what only one result reads comes with that result.

    Each is the day of the phase's opening: only how long an axis has stood is looked at.
    """
    slow = sorted(axis for axis, days in after_days(rails.prescription).items() if days)
    drives = dapre.driving_set(rails.exercise, rails.prescription)
    rows = range(len(dapre.ROWS_1979_LB)) if drives else ()
    for result, gap, sore, stopped, rises in product(
        RESULTS, GAPS, (False, True), (False, True), (False, True)
    ):
        day = DaySummary(rails.opened, result, gap, sore, stopped)
        for hard, pinch in product((False, True) if result == "short" else (False,), (False, True)):
            for many in range(1 << len(slow)):
                waited = frozenset(axis for n, axis in enumerate(slow) if many >> n & 1)
                told = Told(day._replace(hard=hard, pinch=pinch), rises, waited)
                yield told
                for row in rows:
                    drove = Drove(row, rails.opening.load)
                    yield told._replace(day=told.day._replace(drove=drove))


def a_day_on(memory: Memory, told: Told, rails: Rails) -> Memory:
    """The memory after one more day, by the rule itself; days an axis stood are put in by `told`."""
    moved = tuple(
        (
            axis,
            (
                told.day.today - timedelta(days=days if axis in told.waited else days - 1)
            ).isoformat(),
        )
        for axis, days in sorted(after_days(rails.prescription).items())
        if days
    )
    day = told.day
    if day.drove is not None:
        day = day._replace(drove=day.drove._replace(load=memory.ladder.dose.load))
    ladder, _why = progression.next_ladder(
        memory.ladder._replace(moved=moved), day, rails, told.may_rise
    )
    earned = earned_so_far(memory.earned, day)
    if ladder.dose != memory.ladder.dose:
        earned = 0
    return Memory(ladder._replace(moved=()), earned)


def earned_so_far(earned: int, day: DaySummary) -> int:
    """Earned sessions running: another result or a stop ends them, a day off the list does not."""
    if day.stopped:
        return 0
    if day.result == "none":
        return earned
    return min(earned + 1, EARNED_TO_RISE) if day.result == "earned" else 0


def after_days(line: Prescription) -> dict[str, int]:
    """The days that each axis must have stood, as the plan says (0: none)."""
    lines = {"sets": line.sets, "reps": line.reps, "hold": line.hold, "range": line.range}
    return {
        **{axis: held.after_days if held else 0 for axis, held in lines.items()},
        "load": line.load_after_days,
    }


# ---------------------------------------------------------------- what must hold


def wrong(before: Memory, told: Told, after: Memory, rails: Rails) -> Iterator[tuple[str, str]]:
    """P2 and P5 on one day: promise and words."""
    old, new, line = before.ladder.dose, after.ladder.dose, rails.prescription
    for words in over_the_caps(new, line):
        yield "P2", f"a ladder is past its plan: {words}"
    higher = raised(old, new)
    if not higher:
        return
    if len(higher) > 1:
        yield "P5", f"two things rise on one day: {' and '.join(higher)}"
    day = told.day
    if not told.may_rise:
        yield "P5", "a ladder rises without leave"
    if day.gap != "none" or day.morning_up or day.stopped:
        yield "P5", "a ladder rises after days off, a sore morning or a stop"
    if day.result not in {"good", "earned"}:
        yield "P5", f"a ladder rises after a session that went {day.result}"
    for axis in higher:
        yield from step_wrong(axis, before, told, new, rails)


def step_wrong(
    axis: str, before: Memory, told: Told, new: Dose, rails: Rails
) -> Iterator[tuple[str, str]]:
    """P5 on the one axis that rose: earned, waited for, and no longer than a step of the plan."""
    old, line, opening = before.ladder.dose, rails.prescription, rails.opening
    back = amount(axis, new) <= amount(axis, opening)  # no higher than the plan's own opening
    earned = earned_so_far(before.earned, told.day) >= EARNED_TO_RISE
    by_days = after_days(line).get(axis, 0)
    driven = axis == "load" and line.dapre and told.day.drove is not None
    if axis == "range" and told.day.pinch:
        yield "P5", "the range grows after a pinch"
    stood = axis == "range" and by_days > 0 and axis in told.waited
    if not (earned or driven or stood):
        yield "P5", f"{axis} rises without two earned sessions running"
    if not back and by_days and axis not in told.waited:
        yield "P5", f"{axis} rises before its days are over"
    if not back and axis not in line.goes_up and not driven:
        yield "P5", f"{axis} rises and is not among what goes up"
    if amount(axis, new) - amount(axis, old) > longest_step(axis, old, rails, back=back) + 1e-9:
        yield "P5", f"{axis} rises by more than a step"


def raised(old: Dose, new: Dose) -> list[str]:
    """The axes on which a dose is higher than before."""
    return [axis for axis in AXES if amount(axis, new) > amount(axis, old)]


AXES: Final = ("sets", "reps", "hold", "range", "load", "versions")


def amount(axis: str, dose: Dose) -> float:
    """How much a dose has of one axis; reps are the upper number, loads their rank."""
    amounts: dict[str, float] = {
        "sets": dose.sets,
        "reps": dose.reps_high,
        "hold": dose.hold_s,
        "range": dose.range_index,
        "load": dose.load.rank(),
        "versions": dose.version_level,
    }
    return amounts[axis]


def longest_step(axis: str, old: Dose, rails: Rails, *, back: bool) -> float:
    """The most that one step may add to an axis, in that axis' own unit."""
    line = rails.prescription
    held: dict[str, Axis | None] = {
        "sets": line.sets, "reps": line.reps, "hold": line.hold, "range": line.range,
    }  # fmt: skip
    if axis in held:
        made = held[axis]
        return max(made.step if made else 0, 1 if back else 0)
    if axis == "versions" or back or line.dapre:  # to the next form; back; the table's own rows
        return float("inf")
    step = old.load._replace(amount=min(line.load_step, LOAD_STEP_AT_MOST * old.load.amount))
    return step.rank()


# ---------------------------------------------------------------- words


def words_of(told: Told) -> str:
    """A day in words."""
    day = told.day
    said = [
        day.result,
        f"gap {day.gap}" if day.gap != "none" else "",
        "waking pain above usual" if day.morning_up else "",
        "stopped" if day.stopped else "",
        "very hard" if day.hard else "",
        "a pinch" if day.pinch else "",
        f"row {day.drove.row}" if day.drove else "",
        *(f"{axis} stood its days" for axis in sorted(told.waited)),
        "may rise" if told.may_rise else "may not rise",
    ]
    return ", ".join(one for one in said if one)


def way_to(came: dict[T, tuple[T, str] | None], memory: T) -> tuple[tuple[str, str], ...]:
    """The days that led to a memory."""
    way: list[tuple[str, str]] = []
    while (step := came[memory]) is not None:
        memory, words = step
        way.append(("day", words))
    return tuple(reversed(way))
