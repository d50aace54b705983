"""What may follow what: all legality of stages stands in this one table.

Law: a stage changes only by a row of `ROWS`. This file does not know who is driving, and no row
asks: terminal, plain lines, replay and proof get the same answer. `coach.session.machine` builds
the state machine from it; the picture in the guide and the tests come from it too.

How to read it: a day goes down the first column. Every open stage can also end at once: by a
warning sign, by a stop of the athlete's own, or because the answers stayed unclear.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Final, NamedTuple


class Stage(StrEnum):
    """Where a session stands. The order is the order of a day; it is also the rank."""

    OPENING = "opening"
    WHO = "who"
    CHECK_IN = "check-in"
    SCREEN = "screen"
    AT_HAND = "at hand"
    TODAY = "today"
    WARM_UP = "warm-up"
    EXERCISE = "exercise"
    THROWING = "throwing"
    CLOSE = "close"
    ENDING = "ending"
    DONE = "done"
    DAY_OVER = "day over"
    CLOSED = "closed"
    STOPPED = "stopped"


ENDS: Final = frozenset({Stage.DONE, Stage.DAY_OVER, Stage.CLOSED, Stage.STOPPED})
OPEN: Final = tuple(
    stage for stage in Stage if stage not in ENDS and stage not in {Stage.OPENING, Stage.ENDING}
)


class Row(NamedTuple):
    """One legal move: from a stage, by a trigger, to a stage."""

    before: Stage
    trigger: str
    after: Stage


def _day() -> tuple[Row, ...]:
    """The way of an ordinary day, then the two ways back to the screen after a long break."""
    s = Stage
    return (
        Row(s.OPENING, "plan closed", s.CLOSED),
        Row(s.OPENING, "away too long", s.STOPPED),
        Row(s.OPENING, "may open", s.WHO),
        Row(s.WHO, "not today", s.DAY_OVER),
        Row(s.WHO, "known", s.CHECK_IN),
        Row(s.CHECK_IN, "checked in", s.SCREEN),
        Row(s.SCREEN, "screened", s.AT_HAND),
        Row(s.AT_HAND, "gear known", s.TODAY),
        Row(s.TODAY, "nothing today", s.DAY_OVER),
        Row(s.TODAY, "begin", s.WARM_UP),
        Row(s.WARM_UP, "warm", s.EXERCISE),
        Row(s.WARM_UP, "nothing left", s.CLOSE),
        Row(s.WARM_UP, "throwing", s.THROWING),
        Row(s.EXERCISE, "next", s.EXERCISE),
        Row(s.EXERCISE, "all done", s.CLOSE),
        Row(s.EXERCISE, "throwing", s.THROWING),
        Row(s.THROWING, "thrown", s.CLOSE),
        Row(s.CLOSE, "closed", s.DONE),
        # A break of over an hour asks the screen again; the day then goes on where it was.
        Row(s.AT_HAND, "screen again", s.SCREEN),
        Row(s.TODAY, "screen again", s.SCREEN),
        Row(s.WARM_UP, "screen again", s.SCREEN),
        Row(s.EXERCISE, "screen again", s.SCREEN),
        Row(s.THROWING, "screen again", s.SCREEN),
        Row(s.CLOSE, "screen again", s.SCREEN),
        Row(s.SCREEN, "back to at hand", s.AT_HAND),
        Row(s.SCREEN, "back to today", s.TODAY),
        Row(s.SCREEN, "back to warm-up", s.WARM_UP),
        Row(s.SCREEN, "back to exercise", s.EXERCISE),
        Row(s.SCREEN, "back to throwing", s.THROWING),
        Row(s.SCREEN, "back to close", s.CLOSE),
    )


def _ends() -> tuple[Row, ...]:
    """The rows that end a day early, the same from every open stage."""
    rows: list[Row] = []
    for stage in OPEN:
        rows.append(Row(stage, "warning sign", Stage.STOPPED))
        rows.append(Row(stage, "stop", Stage.ENDING))
        rows.append(Row(stage, "too unclear", Stage.DAY_OVER))
        if stage is not Stage.WHO and stage is not Stage.CLOSE:
            rows.append(Row(stage, "end the work", Stage.CLOSE))
    rows.append(Row(Stage.ENDING, "warning sign", Stage.STOPPED))
    rows.append(Row(Stage.ENDING, "for today", Stage.DAY_OVER))
    return tuple(rows)


ROWS: Final[tuple[Row, ...]] = _day() + _ends()

# A short talk laid over a stage; the stage waits under it. It never moves a stage by itself.
ASIDES: Final[dict[str, str]] = {
    "confirm": "something was heard that may be a warning sign: one closed question",
    "read back": "a pain of 8 or more is read back once before it stops the day",
    "fix": "which value to put right, and its new value",
    "gear": "something needed is not here",
    "since": "after a cut-off: sets done meanwhile, worse since, pain now",
}


def diagram() -> str:
    """The table as a Mermaid state diagram, for the guide; made from `ROWS` and nothing else.

    A trigger that every open stage has, to one and the same end, is drawn once from the whole day.
    """
    ids = {stage: stage.name.lower() for stage in Stage}
    shared = _shared_by_the_day()
    inside = [row for row in ROWS if row.before in OPEN and row.after in OPEN]
    outside = [
        row for row in ROWS if row not in inside and (row.trigger, row.after) not in shared
    ] + [row for row in ROWS if row.before not in OPEN and (row.trigger, row.after) in shared]
    lines = ["stateDiagram-v2", '    state "open day" as open_day {']
    lines += [f'        state "{stage.value}" as {ids[stage]}' for stage in OPEN]
    lines += [f"        {ids[r.before]} --> {ids[r.after]}: {r.trigger}" for r in inside]
    lines.append("    }")
    lines += [f'    state "{stage.value}" as {ids[stage]}' for stage in Stage if stage not in OPEN]
    lines.append(f"    [*] --> {ids[Stage.OPENING]}")
    lines += [f"    {ids[r.before]} --> {ids[r.after]}: {r.trigger}" for r in outside]
    lines += [f"    open_day --> {ids[after]}: {trigger}" for trigger, after in sorted(shared)]
    lines += [f"    {ids[stage]} --> [*]" for stage in Stage if stage in ENDS]
    return "\n".join(lines) + "\n"


def _shared_by_the_day() -> set[tuple[str, Stage]]:
    """Triggers with their end that all open stages have alike."""
    moves = {(row.trigger, row.after) for row in ROWS}
    given = {(row.before, row.trigger, row.after) for row in ROWS}
    return {
        (trigger, after)
        for trigger, after in moves
        if all((stage, trigger, after) in given for stage in OPEN)
    }
