"""Traps of the state machine library, each kept away from our machine."""

from __future__ import annotations

from typing import Any

from transitions.core import Machine

from coach.session.machine import _machine
from coach.session.table import Stage


class Model:
    """Something to move."""

    state: str


def test_the_library_gives_a_jump_to_everywhere_unless_told_not_to() -> None:
    model = Model()
    Machine(model=model, states=["training", "stopped"], initial="stopped")
    model.to_training()  # type: ignore[attr-defined]
    assert model.state == "training"


def test_our_machine_has_no_such_jump() -> None:
    machine, walker = _machine()
    assert not [name for name in machine.events if name.startswith("to_")]
    assert not [name for name in dir(walker) if name.startswith("to_")]


def _a_list() -> Any:
    return ["numb"]


def test_a_guard_that_returns_a_list_counts_as_refused_by_the_library() -> None:
    model = Model()
    machine = Machine(model=model, states=["a", "b"], initial="a", auto_transitions=False)
    machine.add_transition("go", "a", "b", conditions=_a_list)
    assert not model.go()  # type: ignore[attr-defined]
    assert model.state == "a"


def test_our_machine_has_no_guards_and_no_callbacks_at_all() -> None:
    machine, _walker = _machine()
    for event in machine.events.values():
        for moves in event.transitions.values():
            for move in moves:
                assert not move.conditions
                assert not [*move.prepare, *move.before, *move.after]
    for stage in Stage:
        state = machine.get_state(stage.value)
        assert not [*state.on_enter, *state.on_exit]
