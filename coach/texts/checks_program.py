"""What must agree inside a program: phases, lists, effects and the number of questions.

Law: each check notes and never mends; what no session could reach is a finding too.
"""

from __future__ import annotations

from typing import Final

from coach.model.program import Exercise, Program, Script, Step
from coach.texts import facts
from coach.texts.exercises import can_lower
from coach.texts.margin import Margin

BEFORE_FIRST_SET: Final = (
    "check-in",
    "screen",
    "at hand",
    "warm-up",
    "before an exercise",
)
FIRST_DAY_ANSWERS: Final = 16  # the coach's own, on a first day


def check_program(program: Program, margin: Margin) -> None:
    """Note what inside the program does not hold together."""
    _check_used(program, margin)
    _check_effects(program, margin)
    _check_question_count(program, margin)


def _check_used(program: Program, margin: Margin) -> None:
    phased = {name for phase in program.phases for name in phase.exercises}
    listed = {
        *program.warm_up,
        *program.gentle,
        *program.twice_a_day,
        *program.recovery,
    }
    for exercise in program.exercises:
        if exercise.name not in phased | listed:
            what = f'"{exercise.name}" stands in no phase and no list.'
            margin.note("exercise.unused", exercise.place, what)


def _check_effects(program: Program, margin: Margin) -> None:
    by_name = {exercise.name: exercise for exercise in program.exercises}
    for script in program.scripts:
        for step in script.steps:
            _check_effect(step, by_name, margin)


def _check_effect(step: Step, by_name: dict[str, Exercise], margin: Margin) -> None:
    exercise = by_name.get(step.target)
    if step.kind != "effect" or exercise is None or can_lower(exercise, step.effect):
        return
    what = f'"{step.effect}" can do nothing to "{step.target}".'
    margin.note("effect.no_room", step.place, what, f"leave out: {step.target}", exercise.place)


def _own_questions(script: Script) -> int:
    """The most own questions one answerer can meet; every question counts, the cautious way."""
    again = [s for s in script.steps if s.kind == "ask" and s.fact in facts.FLAG_NAMES]
    return len([step for step in script.steps if step.kind == "ask also"]) + len(again)


def _check_question_count(program: Program, margin: Margin) -> None:
    own = {script.moment: _own_questions(script) for script in program.scripts}
    before = FIRST_DAY_ANSWERS + sum(own.get(moment, 0) for moment in BEFORE_FIRST_SET)
    most = program.most_questions_before_first_set
    if most and before > most:
        what = f"Up to {before} questions come before the first set, and the program says {most}."
        margin.note("questions.too_many", program.place, what)
    after = len(facts.ASKS["after a set"]) + own.get("after a set", 0)
    most = program.most_questions_after_a_set
    if most and after > most:
        place = next(s.place for s in program.scripts if s.moment == "after a set")
        what = f"Up to {after} questions come after a set, and the program says {most}."
        margin.note("questions.too_many", place, what, also=program.place)
