"""Phases: what the diary can show of their entry criteria, and what only the clinician can tick.

Law: nothing here opens a phase. It proposes, with what is still open; the plan's own phase stands
until the clinician writes another, and what is locked stays locked whatever the date.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from typing import NamedTuple

from coach.model.decisions import Basis, Decision
from coach.model.program import Phase, Plan, Program, Test
from coach.rules.limits import locked


class Proposal(NamedTuple):
    """A next phase: what the diary has not shown yet, what the clinician must see, what is locked.

    `unmet` are tests that do not hold or whose fact is unknown; `locked` names exercises that wait
    for the clinician's own opening.
    """

    phase: str
    unmet: tuple[Test, ...]
    clinician_sees: str
    locked: tuple[str, ...]


def next_phase(program: Program, name: str) -> Phase | None:
    """The phase after `name` in the program's order, or None after the last or an unknown one."""
    names = [phase.name for phase in program.phases]
    if name not in names or names.index(name) + 1 >= len(names):
        return None
    return program.phases[names.index(name) + 1]


def unmet(phase: Phase, facts: Mapping[str, str | float]) -> tuple[Test, ...]:
    """The entry tests that do not hold; a fact that is not known does not hold."""
    return tuple(
        test
        for test in phase.opens_when
        if test.fact not in facts or not test.holds(facts[test.fact])
    )


def proposal(
    program: Program, plan: Plan, facts: Mapping[str, str | float], today: date
) -> tuple[Proposal, Decision] | None:
    """The next phase and how near it is (id phase.proposal; set here): propose or not yet.

    `facts` are the diary's, by name. None where there is no next phase. It never opens anything.
    """
    phase = next_phase(program, plan.phase)
    if phase is None:
        return None
    known = {exercise.name: exercise for exercise in program.exercises}
    shut = tuple(
        name
        for name in phase.exercises
        if name in known and locked(known[name], plan, today).outcome == "locked"
    )
    waiting = Proposal(phase.name, unmet(phase, facts), phase.clinician_sees, shut)
    source = "set here, to be signed by a clinician"
    if waiting.unmet:
        why = f"The phase {phase.name} waits. Your diary does not show all of it yet."
        return waiting, Decision("phase.proposal", "not yet", why, phase.place, source=source)
    why = f"Your diary shows what {phase.name} asks for. Your clinician opens it."
    return waiting, Decision("phase.proposal", "propose", why, phase.place, Basis.PLAN, source)
