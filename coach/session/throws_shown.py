"""What the throwing line asks and shows: its questions in the plan's unit, the step in two parts.

Law: every number of throws stands with its unit, its distance in feet and metres, and the side.
Nothing is decided here.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.model.throws import COUNTED_AS, Part, StepTable, part_words
from coach.model.turns import Line, Throws
from coach.rules import throwing as rules
from coach.session import scripts
from coach.session.questions import QUESTIONS, choice_lines, coach_question, single
from coach.session.throwing import OWN, PLACE, step_of

if TYPE_CHECKING:
    from coach.model.heard import Question
    from coach.model.turns import Ask
    from coach.session.state import State

FIRST_THROWS: Final = 15  # Axe 2001: soreness is asked after throw 15


def ask(state: State) -> Ask:
    """The present question: the coach's, or the script's own ones after the last throw."""
    fact = state.missing[0]
    if state.section == OWN:
        return scripts.script_ask(state, scripts.step_asking(state, "throwing", fact), fact)
    unit = unit_of(state)
    label = f"{unit.capitalize()}:" if fact == "throws done" else QUESTIONS[fact].label
    return single(fact, question_in(unit, fact), label, safety=fact == PLACE)


def unit_of(state: State) -> str:
    """What the plan's table counts."""
    table = rules.table_of(state.brief.plan)
    return table.unit if table else "throws"


def question_in(unit: str, fact: str) -> Question:
    """The coach's question with the plan's unit in place of throws."""
    question = coach_question(fact)
    words = question.ask.replace("{unit}", unit)
    return question._replace(ask=words, unit=unit if question.unit == "throws" else question.unit)


def lines(state: State) -> tuple[tuple[Line, ...], tuple[Throws, ...]]:
    """The lines of the present question, with the throws they show."""
    fact = state.missing[0]
    if state.section == OWN:
        present = ask(state)
        return (Line("say", present.question.ask), *choice_lines(present)), ()
    unit, side = unit_of(state), state.brief.side_words
    question = Line("say", question_in(unit, fact).ask)
    table = rules.table_of(state.brief.plan)
    if fact == "sore in warm-up":
        head = f"Throwing, {side}. Warm-up {unit} first, easy and short."
        return (Line("say", head), question), ()
    if table is None or fact not in {"sore after throw 15", "sore at the end"}:
        return (question,), ()
    step = step_of(state)
    first, rest = split_at_15(table, step)
    parts = first if fact == "sore after throw 15" else rest
    shown = tuple(
        Throws(table.name, step, state.brief.plan.side, part.distance_ft, part.throws)
        for part in parts
    )
    head = f"Throwing, {side}: step {step} of {len(table.steps)} in your plan."
    work = work_line(parts, table, side, counted=bool(first))
    if fact == "sore after throw 15":
        return (Line("name", head), work, question), shown
    return (work, question), shown


def work_line(parts: tuple[Part, ...], table: StepTable, side: str, *, counted: bool) -> Line:
    """The throws of the present part; a step that is play has no count."""
    words = ", then ".join(part_words(part, table) for part in parts)
    if words:
        return Line("work", f"Now, {side}: {words}.")
    if counted:
        return Line("say", "That was all of it.")
    return Line("work", f"Now, {side}: play, as your clinician set it. This step has no count.")


def split_at_15(table: StepTable, step: int) -> tuple[tuple[Part, ...], tuple[Part, ...]]:
    """The step's parts up to throw 15, and the rest; an over counts as its balls."""
    first: list[Part] = []
    rest: list[Part] = []
    left = FIRST_THROWS // COUNTED_AS.get(table.unit, 1)
    for part in table.steps[step - 1].parts():
        now = min(left, part.throws)
        if now:
            first.append(part._replace(throws=now))
        if part.throws > now:
            rest.append(part._replace(throws=part.throws - now))
        left -= now
    return tuple(first), tuple(rest)
