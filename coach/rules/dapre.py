"""The DAPRE adjustment table as data, and the set that drives the next session.

Law: off unless the plan names it, and never for the cuff: a step of 5 lb on 3 lb is far too much.
Of a printed range the smaller rise, or the larger cut, is taken.
"""

from __future__ import annotations

from typing import Final, NamedTuple

from coach.model.decisions import Basis, Decision, Refusal

NOT_FOR: Final = ("cuff", "mobility")
NAMED_IN_PLAN: Final = "prog.dapre"

# Fractions of the working weight and reps of the first three sets: Knight 1979. 0 reps: as many as
# can be done.
SETS: Final = ((0.5, 10), (0.75, 6), (1.0, 0))


class Row(NamedTuple):
    """Reps done in the driving set, from and to; change in lb, smaller to larger, for both uses."""

    reps_from: int
    reps_to: int | None
    fourth_set_lb: tuple[int, int]
    next_session_lb: tuple[int, int]


# Knight 1979, by three secondary pages. The fourth-set change at 3 to 4 reps is inferred; its
# next-session change, and all other cells, were read.
ROWS_1979_LB: Final = (
    Row(0, 2, (-10, -5), (-10, -5)),
    Row(3, 4, (-5, 0), (0, 0)),
    Row(5, 6, (0, 0), (5, 10)),
    Row(7, 10, (5, 10), (5, 15)),
    Row(11, None, (10, 15), (10, 20)),
)


def row_for(reps: int) -> Row:
    """The row that `reps` in the driving set fall in. ValueError below 0."""
    for row in ROWS_1979_LB:
        if row.reps_from <= reps and (row.reps_to is None or reps <= row.reps_to):
            return row
    message = "reps cannot be below 0"
    raise ValueError(message)


def next_weight_lb(
    working_lb: float, third_set_reps: int, family: str, named: bool
) -> tuple[float, Decision] | Refusal:
    """The next session's working weight in lb, driven by set 3 (id prog.dapre; Knight 1979).

    Refused where the plan does not name it, or for cuff and mobility. Never below 0.
    """
    if not named or family in NOT_FOR:
        return Refusal(NAMED_IN_PLAN, "This way of adding weight is not in your plan.")
    change = row_for(third_set_reps).next_session_lb[0]
    why = f"Next time the weight changes by {change:+d} lb. Set 3 decides that."
    decision = Decision(
        NAMED_IN_PLAN, "set", why, basis=Basis.PUBLISHED, source="Knight 1979, by secondary pages"
    )
    return max(0.0, working_lb + change), decision
