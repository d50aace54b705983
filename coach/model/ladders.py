"""What is remembered of a ladder between days: an exercise's dose, and the throwing steps.

Law: small and comparable; kept in the day's record as it was used that day. No decision here: how
one day leads to the next is in `coach.rules.progression` and `coach.rules.throwing`.
"""

from __future__ import annotations

from typing import NamedTuple

from coach.model.quantities import Dose, Load


class Ladder(NamedTuple):
    """What is remembered of one exercise between days; small and comparable.

    `dose` is where it stands; `good_run` sessions running that earned a step (0 to 2); `form_run`
    sessions running with a correction open (0 to 3); `moved` pairs an axis with its last day up.
    """

    dose: Dose
    good_run: int = 0
    form_run: int = 0
    moved: tuple[tuple[str, str], ...] = ()


class Drove(NamedTuple):
    """What the driving set of a table said: the row (from 0) its reps fell in, the load lifted."""

    row: int
    load: Load


class ThrowState(NamedTuple):
    """What is remembered between throwing days: small and comparable.

    `planned` is the step due next, `last_done` the last one done in full (0: none yet);
    `clean_here` clean days at the planned step; `downs_running` steps down in a row.
    """

    planned: int
    last_done: int = 0
    clean_here: int = 0
    downs_running: int = 0


class ThrowDay(NamedTuple):
    """One throwing day as recorded: the step thrown (0: none), its throws, what soreness said.

    `row` names the row of the soreness table that decided; `rest_days` are whole days off; `state`
    is what the next throwing day starts from; `ended_at` is an ISO instant. `line` is the clearance
    and the step due next, in words, so that a later plan can be held against them.
    """

    step: int
    throws: int
    unit: str
    row: str
    rest_days: int
    state: ThrowState
    ended_at: str
    line: str = ""
