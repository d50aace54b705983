"""The state machine built from the stage table, and the one function that moves a stage.

Law: only this module knows `transitions`. The machine has no jump that the table lacks
(`auto_transitions=False`), no text callbacks (a dotted text would be imported and run), and no
guard that decides: decisions are made in `coach.rules`. A move the table lacks raises.
"""

from __future__ import annotations

from functools import cache

from transitions.core import Machine, MachineError

from coach.session.table import ROWS, Stage


class IllegalMove(Exception):
    """A stage was asked to move by a trigger that the table does not give it: a fault of ours."""


class _Walker:
    """The model that the machine moves; it holds nothing but the machine's own `state`."""

    state: str


@cache
def _machine() -> tuple[Machine, _Walker]:
    walker = _Walker()
    machine = Machine(
        model=walker,
        states=[stage.value for stage in Stage],
        initial=Stage.OPENING.value,
        transitions=[
            {
                "source": row.before.value,
                "trigger": row.trigger,
                "dest": row.after.value,
            }
            for row in ROWS
        ],
        auto_transitions=False,
        model_override=False,
    )
    return machine, walker


@cache
def follow(stage: Stage, trigger: str) -> Stage:
    """The stage that follows `stage` by `trigger`; raises IllegalMove where the table has no row."""
    machine, walker = _machine()
    machine.set_state(stage.value, model=walker)
    try:
        moved = bool(machine.events[trigger].trigger(walker))
    except (KeyError, MachineError) as refused:
        raise IllegalMove(f"{stage.value} has no row for {trigger}") from refused
    if not moved:
        raise IllegalMove(f"{stage.value} was refused {trigger}")
    return Stage(walker.state)
