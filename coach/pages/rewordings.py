"""The coach's questions that a program asks in its own words, side by side, for a person to read.

Law: whether two wordings ask the same is for a reader; nothing is judged here.
"""

from __future__ import annotations

from coach.model.program import Program
from coach.session.questions import QUESTIONS


def reworded(program: Program) -> str:
    """Each reworded question with its place and both wordings; one line if there is none."""
    found = [
        f"{step.place.file}, line {step.place.line}: {step.fact}\n"
        f"  Coach: {QUESTIONS[step.fact].ask}\n  Yours: {step.text}\n"
        for script in program.scripts
        for step in script.steps
        if step.kind == "ask" and step.text and step.fact in QUESTIONS
    ]
    return "".join(found) or "No question of the coach is reworded.\n"
