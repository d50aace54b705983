"""Throws as nouns: a stretch of a step, a step, and a table of steps.

Law: distance and count only; how hard to throw is not a number here. No table stands in this file:
the published ones are in `coach.rules.throwing_tables`, a plan brings its own.
"""

from __future__ import annotations

from typing import Final, NamedTuple

OWN_STEPS: Final = "own steps"  # the name of the table that a plan brings along
# What may be counted in a plan's own table; one word each, as an athlete says it.
UNITS: Final = ("throws", "serves", "overs", "passes", "hits", "strokes")
M_PER_FT: Final = 0.3048  # exact by definition
# Balls in an over: England and Wales Cricket Board directives, 2007 to 2018.
COUNTED_AS: Final = {"overs": 6}


class Part(NamedTuple):
    """A stretch of a step: how many, at a distance in feet (0: none is said), in which manner.

    `unit` is what is counted, where it is another thing than the table's.
    """

    distance_ft: float
    throws: int
    manner: str = ""
    unit: str = ""


class ThrowStep(NamedTuple):
    """One step: sets of parts, with a rest between sets. No sets: the step is a game or match."""

    sets: tuple[tuple[Part, ...], ...]

    def parts(self) -> tuple[Part, ...]:
        """The parts of all sets, in order."""
        return tuple(part for one in self.sets for part in one)

    def throws(self) -> int:
        """How many in the whole step."""
        return sum(part.throws for part in self.parts())


class StepTable(NamedTuple):
    """A step table: `unit` is what is counted; `least_age` in years, 0 where none is given.

    `in_metres`: its distances were written in metres; they are kept in feet all the same.
    """

    name: str
    unit: str
    steps: tuple[ThrowStep, ...]
    apart_days: int
    least_age: int
    source: str
    caution: str
    in_metres: bool = False


def distance_words(distance_ft: float, *, in_metres: bool) -> str:
    """`60 ft (18 m)`, or `18 m (59 ft)` where the table was written in metres."""
    metres = distance_ft * M_PER_FT
    if in_metres:
        return f"{round(metres, 1):g} m ({round(distance_ft)} ft)"
    return f"{distance_ft:g} ft ({round(metres)} m)"


def part_words(part: Part, table: StepTable) -> str:
    """`25 throws at 60 ft (18 m), on an arc`, `8 serves`."""
    words = f"{part.throws} {counted(part.throws, part.unit or table.unit)}"
    if part.distance_ft:
        words += f" at {distance_words(part.distance_ft, in_metres=table.in_metres)}"
    return f"{words}, {part.manner}" if part.manner else words


def counted(number: float, unit: str) -> str:
    """The unit for a number: `1 pass`, `2 passes`."""
    if number != 1:
        return unit
    return unit.removesuffix("es") if unit == "passes" else unit.removesuffix("s")
