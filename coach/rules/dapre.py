"""Weight by the DAPRE table: four sets with one working weight, and the set that drives the next.

Law: off unless a dose line names it, and never for the cuff, mobility or anything locked: a step of
5 lb on 3 lb is far too much. Of a printed range the smaller rise, or the larger cut, is taken, and
only to a load the athlete owns, rounded down. Within a session nothing is added: the fourth set
takes the table's cuts and none of its rises.
"""

from __future__ import annotations

from typing import Final, NamedTuple

from coach.model.decisions import Basis, Decision
from coach.model.ladders import Drove
from coach.model.program import Exercise, Place, Prescription
from coach.model.quantities import Load, SetLine
from coach.rules.limits import LOCKED_FAMILIES

# A table for knees after surgery, and for large muscles. Not for the cuff: common practice.
NOT_FOR: Final = ("cuff", "mobility", *LOCKED_FAMILIES)
LOAD_KIND: Final = "dumbbell"  # a band has no half and a ball no steps

# Fractions of the working weight and reps of the four sets: Knight 1979. 0 reps: as many clean ones
# as can be done, here at most the plan's upper number.
SETS: Final = ((0.5, 10), (0.75, 6), (1.0, 0), (1.0, 0))
FOURTH: Final = 4


class Row(NamedTuple):
    """Reps in the driving set, from and to; changes, smaller to larger, for set 4 and next time."""

    reps_from: int
    reps_to: int | None
    fourth_set: tuple[float, float]
    next_session: tuple[float, float]


# Knight 1979, by three secondary pages, in lb. The fourth-set change at 3 to 4 reps is inferred;
# its next-session change, and all other cells, were read.
ROWS_1979_LB: Final = (
    Row(0, 2, (-10, -5), (-10, -5)),
    Row(3, 4, (-5, 0), (0, 0)),
    Row(5, 6, (0, 0), (5, 10)),
    Row(7, 10, (5, 10), (5, 15)),
    Row(11, None, (10, 15), (10, 20)),
)
# The same table in kg, read on one secondary page; the row of 3 to 4 reps is from memory.
ROWS_1979_KG: Final = (
    Row(0, 2, (-5, -2.5), (-5, -2.5)),
    Row(3, 4, (-2.5, 0), (0, 0)),
    Row(5, 6, (0, 0), (2.5, 5)),
    Row(7, 10, (2.5, 5), (2.5, 7.5)),
    Row(11, None, (5, 7.5), (5, 10)),
)
ROWS: Final = {"lb": ROWS_1979_LB, "kg": ROWS_1979_KG}
RISES_FROM_REPS: Final = 5  # the first row whose next session is heavier


class Driver(NamedTuple):
    """A set that may drive the next session, and how it is known."""

    basis: Basis
    source: str


# It is told two ways which set drives; so the dose line must say it.
DRIVERS: Final = {
    3: Driver(Basis.PUBLISHED, "Knight 1979, by secondary pages (set 3 drives: Foust)"),
    4: Driver(Basis.PLAN, "Knight 1979; that set 4 drives is from memory, the plan's choice"),
}


def suits(exercise: Exercise) -> bool:
    """Whether the table may drive `exercise` (id prog.dapre): strength with dumbbells, no cuff."""
    return exercise.family not in NOT_FOR and exercise.load == LOAD_KIND


def driving_set(exercise: Exercise, prescription: Prescription) -> int:
    """The set whose reps drive the next working weight; 0 where the table is not named or not fit.

    A line that should have been refused when it was read drives nothing here either.
    """
    named = prescription.dapre if prescription.dapre in DRIVERS else 0
    return named if suits(exercise) and prescription.load.unit in ROWS else 0


def row_of(reps: float, asked: int) -> int:
    """The row (from 0) of the driving set's clean reps; more than were asked count as asked."""
    starts = [row.reps_from for row in ROWS_1979_LB]
    passed = [number for number, start in enumerate(starts) if start <= reps and start <= asked]
    return max(passed, default=0)


def compared(prescription: Prescription) -> frozenset[int]:
    """The numbers of reps at which a set may say something else (id prog.dapre): the rows' starts,
    and what each set asks for.
    """
    if not prescription.dapre:
        return frozenset()
    high = prescription.reps.opening_high
    asked = {min(count, high) for _fraction, count in SETS if count}
    starts = {row.reps_from for row in ROWS_1979_LB}
    return frozenset(starts | asked)


def rounded_down(most: float, load: Load, owned: tuple[Load, ...]) -> Load:
    """The heaviest owned load of the kind and unit of `load` that is at most `most`, in its unit.

    Where none is so light: the lightest owned one, or `load` itself, whichever is lighter.
    """
    alike = [o for o in owned if o.kind == load.kind and o.unit == load.unit and not o.strength]
    below = [one for one in alike if one.amount <= most]
    if below:
        return max(below, key=Load.rank)
    return min((*alike, load), key=Load.rank)


def set_lines(
    working: Load, reps: tuple[int, int], sets: int, owned: tuple[Load, ...]
) -> tuple[SetLine, ...]:
    """Each of `sets` sets: half the working weight, three quarters, then all of it.

    `reps` are the plan's lower and upper number: no set asks for more than the upper one. Source:
    Knight 1979; the loads rounded down to what is owned.
    """
    low, high = reps
    lines = []
    for fraction, count in SETS[:sets]:
        load = rounded_down(fraction * working.amount, working, owned)
        asked = (min(count, high), min(count, high)) if count else (low, high)
        lines.append(SetLine(*asked, load))
    return tuple(lines)


def fourth_set(line: SetLine, row: int, owned: tuple[Load, ...]) -> SetLine:
    """The fourth set after the third one's row: the table's larger cut, and no rise (set here)."""
    cut = ROWS[line.load.unit][row].fourth_set[0]
    if cut >= 0:
        return line
    return line._replace(load=rounded_down(line.load.amount + cut, line.load, owned))


def next_working(now: Load, drove: Drove, cap: Load, owned: tuple[Load, ...]) -> Load:
    """The next session's working weight, from what was lifted in the driving set (id prog.dapre).

    A rise is the smaller one of the row, to the heaviest owned load that it reaches, at most `cap`;
    a cut the larger one. `now` where no owned load lies there. Source: Knight 1979, by secondary
    pages; what is owned and capped was set here.
    """
    change = ROWS[now.unit][drove.row].next_session[0]
    most = min(min(now.amount, drove.load.amount) + change, cap.amount)
    found = rounded_down(most, now, owned)
    if most < now.amount:
        return min((found, now), key=Load.rank)
    return max((found, now), key=Load.rank)


def rises(drove: Drove) -> bool:
    """Whether the row makes the next session heavier (id prog.dapre)."""
    return ROWS_1979_LB[drove.row].next_session[0] > 0


def decision(
    outcome: str, drove: Drove, prescription: Prescription, place: Place | None = None
) -> Decision:
    """Why the working weight changes (id prog.dapre): up or down, by which set, from which line."""
    row = ROWS_1979_LB[drove.row]
    driver = DRIVERS[prescription.dapre]
    said = f"Set {prescription.dapre} had {row.reps_from} clean reps or more."
    if outcome == "down":
        said = f"Set {prescription.dapre} had {row.reps_to} clean reps or fewer."
    words = "One step up in weight." if outcome == "up" else "Less weight today."
    place = place or prescription.load_place or prescription.place
    return Decision("prog.dapre", outcome, f"{words} {said}", place, driver.basis, driver.source)
