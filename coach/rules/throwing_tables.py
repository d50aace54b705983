"""Throwing tables as data: published step tables, pitch limits and rest days, class schedules.

Law: only rows that were read whole in their source stand here; each table says how it was read and
what speaks against it. A table is a sample for a clinician's plan, never a default. Distance and
count only: how hard to throw is not a number here.
"""

from __future__ import annotations

from typing import Final, NamedTuple

from coach.model.throws import Part, StepTable, ThrowStep

ARC: Final = "on an arc"
LINE: Final = "on a line"
WINDUP: Final = "flat ground, from the windup"


_MANNERS: Final = {"": ARC, "L": LINE, "W": WINDUP}


def _part(text: str) -> Part:
    """A part from `30x20` (feet x throws), with L for on a line, W for the windup."""
    distance, throws = text.split("x")
    digits = distance.rstrip("LW")
    return Part(float(digits), int(throws), _MANNERS[distance[len(digits) :]])


def _steps(*rows: str) -> tuple[ThrowStep, ...]:
    """Steps from rows; a bar parts the sets of a step."""
    return tuple(
        ThrowStep(tuple(tuple(map(_part, one.split())) for one in row.split("|") if one.strip()))
        for row in rows
    )


_UPDATED: Final = _steps(
    "30x20",
    "30x20 45x10",
    "30x20 45x10",
    "30x20 45x20",
    "30x20 45x25",
    "30x20 45x30",
    "30x20 45x35",
    "30x20 45x40",
    "30x20 45x45",
    "30x10 45x10 60x20 30x10",
    "30x10 45x10 60x25 30x10",
    "30x10 45x10 60x30 30x10",
    "30x10 45x10 60x35 30x10",
    "30x10 45x10 60x40 30x10",
    "30x10 45x10 60x45 30x10",
    "30x5 45x10 60x25 75x15 45x10",
    "30x5 45x10 60x25 75x20 45x10",
    "30x5 45x10 60x25 75x25 45x10",
    "30x5 45x5 60x15",
    "30x5 45x10 60x20",
    "30x5 45x10 60x25",
    "30x5 45x10 60x10 75x20 90x10 60x10",
    "30x5 45x10 60x10 75x20 90x15 60x10",
    "30x5 45x10 60x10 75x20 90x20 60x10",
    "30x5 45x10 60x10 75x20 90x25 60x10",
    "30x5 45x10 60x10 75x20 90x30 60x10",
    "30x5 45x10 60x10 75x20 90x30 60x10",
    "30x5 45x5 60x10 75x10 90x15 105x10 60x10",
    "30x5 45x5 60x10 75x10 90x15 105x15 60x10",
    "30x5 45x5 60x10 75x10 90x10 105x25 60x10",
    "30x5 45x5 60x10 75x10 90x10 105x10 120x10 60x10",
    "30x5 45x5 60x10 75x10 90x10 105x10 120x15 60x10",
    "30x5 45x5 60x10 75x10 90x10 105x10 120x20 60x10",
    "30x5 45x5 60x10 75x10 90x10 105x15 120x20 60x10",
    "30x5 45x5 60x10 75x10 90x10 105x15 120x25 60x10",
    "30x5 45x5 60x10 75x10 90x10 105x15 120x30 60x10",
    "30x5 45x5 60x10 75x10 90x10 105x10 120x20 60Wx10",
    "30x5 45x5 60x10 75x10 90x10 105x10 120x20 60Wx15",
    "30x5 45x5 60x10 75x10 90x10 105x10 120x20 60Wx20",
    "30x5 45x15 60x25",
    "30x5 45x15 60x30",
    "30x5 45x15 60x35",
    "30x5 45x5 60x10 75x10 90x10 105x10 120x15 105Lx5 90Lx5 75Lx5 60Wx10",
    "30x5 45x5 60x10 75x10 90x10 105x10 120x15 105Lx5 90Lx5 75Lx5 60Wx15",
    "30x5 45x5 60x10 75x10 90x10 105x10 120x20 105Lx5 90Lx5 75Lx5 60Wx20",
)

_YOUTH: Final = _steps(
    "20x10 30x25 | 20x10 30x25",
    "20x10 30x25 | 20x10 30x25 | 20x10 30x25",
    "30x10 45x25 | 30x10 45x25",
    "30x10 45x25 | 30x10 45x25 | 30x10 45x25",
    "30x10 60x25 | 30x10 60x25",
    "30x10 60x25 | 30x10 60x25 | 30x10 60x25",
    # The printed 10 at 90 ft may be a slip for 25; the smaller count is kept.
    "45x5 60x5 90x10 | 45x5 60x5 90x25",
    "45x5 60x5 90x10 | 45x5 60x5 90x25 | 45x5 60x5 90x25",
)

_ADOLESCENT: Final = _steps(
    "25x15 | 25x15 | 25x20",
    "40x15 | 40x15 | 40x20",
    "50x15 | 50x20 | 50x20",
    "60.5x20 | 60.5x20 | 60.5x25",
    "90x15 | 90x15 | 90x15",
    "60.5x20 | 60.5x20 | 60.5x25",
    "120x20 | 120x20 | 120x20",
    "60.5x25 | 60.5x30 | 60.5x30",
    "",
)

_ADULT: Final = _steps(
    "45x15 | 45x15",
    "60x20 | 60x20",
    "90x20 | 45Lx20 | 90x20",
    "120x20 | 60Lx15 | 120x20",
    "180x20 | 180x25 | 180x20",
    "120x15 | 90Lx15 | 90Lx15 | 120x15",
    "",
)

# Tennis, ground strokes + serves a step; step 21 is a simulated match.
_TENNIS: Final = (
    *("10+0", "10+2", "10+3", "12+4", "12+6", "14+8", "18+10", "22+12", "26+14", "28+16"),
    *("28+16", "42+24", "56+32", "42+24", "56+32", "84+48", "112+64", "56+32", "168+96"),
    *("224+128", ""),
)


def _strokes(row: str) -> ThrowStep:
    """A step of ground strokes and serves; distances are the court's, so none is said."""
    if not row:
        return ThrowStep(())
    ground, serves = (int(count) for count in row.split("+"))
    parts = (Part(0, ground, unit="ground strokes"), Part(0, serves, unit="serves"))
    return ThrowStep((tuple(part for part in parts if part.throws),))


STEP_TABLES: Final[dict[str, StepTable]] = {
    table.name: table
    for table in (
        StepTable(
            "updated 45 steps",
            "throws",
            _UPDATED,
            2,
            0,
            "Reinold 2024 (that the table is the paper's own is inferred); one copy read",
            "Its model is of the elbow. The part on the mound was not seen.",
        ),
        StepTable(
            "youth 8 steps",
            "throws",
            _YOUTH,
            2,
            0,
            "an orthopaedic practice's page for youth baseball; one copy read",
            "Each step is done two or three times. Steps 7 and 8 may hold a misprint.",
        ),
        StepTable(
            "adolescent 9 phases",
            "throws",
            _ADOLESCENT,
            2,
            13,
            "adapted from Axe 1996; one handout read, in two transcriptions",
            "It has a 60.5 ft mound. Not for those under 13 (set here).",
        ),
        StepTable(
            "adult 7 phases",
            "throws",
            _ADULT,
            2,
            18,
            "a university clinic's handout; one copy read",
            "It goes from 120 to 180 ft in one phase. Look at that step before use.",
        ),
        StepTable(
            "tennis 21 steps",
            "strokes",
            tuple(map(_strokes, _TENNIS)),
            2,
            18,
            "Sports Health 2016;8:536-540, Table 2, read whole",
            "Counts of healthy elite players. It has no days of rest; every other day and 18 years "
            "were set here.",
        ),
    )
}


class PitchRow(NamedTuple):
    """Game pitches a day for an age band; `tops` are the most pitches for 0, 1, 2 ... rest days.

    Above the last of `tops` one rest day more is asked.
    """

    age_from: int
    age_to: int
    daily_most: int
    tops: tuple[int, ...]


# National youth pitching guideline (USA Baseball with Major League Baseball), 2015 edition, whole
# table read. Made for healthy pitchers in games.
PITCHES_2015: Final = (
    PitchRow(7, 8, 50, (20, 35, 50)),
    PitchRow(9, 10, 75, (20, 35, 50, 65)),
    PitchRow(11, 12, 85, (20, 35, 50, 65)),
    PitchRow(13, 14, 95, (20, 35, 50, 65)),
    PitchRow(15, 16, 95, (30, 45, 60, 75)),
    PitchRow(17, 18, 105, (30, 45, 60, 75)),
    PitchRow(19, 22, 120, (30, 45, 60, 75)),
)

# A later edition changes the oldest rows; read on secondary pages. The fifth day at 19 to 22 is
# second-hand; it only adds rest. All other rows are as in 2015.
PITCHES_LATER: Final = (
    *PITCHES_2015[:5],
    PitchRow(17, 18, 105, (30, 45, 60, 80)),
    PitchRow(19, 22, 120, (30, 45, 60, 80, 105)),
)

EDITIONS: Final[dict[str, tuple[PitchRow, ...]]] = {
    "2015 edition": PITCHES_2015,
    "later edition": PITCHES_LATER,
}

# A youth league's regulation, one page read: pitch this many, then do not catch that day; catch
# this many innings, then do not pitch that day.
PITCHES_THEN_NO_CATCHING: Final = 41
INNINGS_THEN_NO_PITCHING: Final = 4


# How many steps the programs have that the classes belong to.
CLASS_STEPS: Final = 21
CATCHER_STEPS: Final = 13
CATCHER: Final = "catcher "  # stands before a class of the catchers' program


class ClassRow(NamedTuple):
    """From one step to another a thrower of this class throws every so many days."""

    step_from: int
    step_to: int
    every_days: int


# Axe 2001 (clinic handout): pitchers, 21 steps, and only that program; it ships no steps, since no
# copy with them was read, so a plan brings its own. Class E is printed only up to step 7 in the copy
# read, so its later steps are not here and the plan must say them.
PITCHER_CLASSES: Final[dict[str, tuple[int, tuple[ClassRow, ...]]]] = {
    "A": (4, (ClassRow(1, 21, 1),)),
    "B": (4, (ClassRow(1, 21, 1),)),
    "C": (1, (ClassRow(1, 21, 2),)),
    "D": (1, (ClassRow(1, 7, 2), ClassRow(8, 12, 3), ClassRow(13, 21, 2))),
    "E": (1, (ClassRow(1, 7, 3),)),
}

# Axe 2009 (clinic handout): catchers, 13 steps. Class E is cut off after step 5.
CATCHER_CLASSES: Final[dict[str, tuple[int, tuple[ClassRow, ...]]]] = {
    "A": (3, (ClassRow(1, 13, 1),)),
    "B": (1, (ClassRow(1, 13, 1),)),
    "C": (1, (ClassRow(1, 13, 2),)),
    "D": (1, (ClassRow(1, 5, 2), ClassRow(6, 9, 3), ClassRow(10, 13, 2))),
    "E": (1, (ClassRow(1, 5, 3),)),
}


class BowlingRow(NamedTuple):
    """Junior fast bowling: overs a spell and a day; practice balls a session, sessions a week."""

    age_from: int
    age_to: int
    overs_a_spell: int
    overs_a_day: int
    practice_balls: int
    practice_sessions: int


# England and Wales Cricket Board directives, 2007 to 2018 editions; seven copies agree on the match
# part, two give the practice part. Made for the back of healthy bowlers. At most 4 days in 7 and 2
# days in a row.
BOWLING: Final = (
    BowlingRow(0, 13, 5, 10, 30, 2),
    BowlingRow(14, 15, 6, 12, 36, 2),
    BowlingRow(16, 17, 7, 18, 36, 3),
    BowlingRow(18, 19, 7, 18, 42, 3),
)
BOWLING_DAYS_IN_7: Final = 4
BOWLING_DAYS_IN_A_ROW: Final = 2
