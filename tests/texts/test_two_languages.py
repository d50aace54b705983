"""A program in two languages: the plan picks one, and both say the same line by line."""

from __future__ import annotations

from pathlib import Path

import pytest

from coach.model.program import Program
from coach.texts.doors import bound_from, read_program

PROGRAM = """program: two words 1
languages: English, Spanish
questions: before the first set at most 30, after a set at most 5
warm-up: arm swings
phases:
  - phase: settle
    exercises: arm swings
"""
EXERCISE = """exercise: arm swings
family: mobility
works: one side
counted in: reps
load: none
set-up:
  - Let the arm hang.
set-up in Spanish:
  - Deja colgar el brazo.
cues:
  - Let the hand draw rings.
cues in Spanish:
  - Dibuja aros con la mano.
"""
SCRIPT = """script: warm-up
lines:
  - ask: pain in warm-up
    words: How did that feel at its worst?
    words in Spanish: Lo peor, como fue?
  - ask also: ache kind
    words: Was it muscle, or the joint?
    words in Spanish: Fue musculo o articulacion?
    answers: muscle, joint
    answers in Spanish: musculo, articulacion
  - when ache kind is joint:
      - tell: A calm day then.
        tell in Spanish: Un dia tranquilo.
      - note: Ache in the joint.
"""
PLAN = """plan: A.B. 1
program: two words 1
language: LANGUAGE
athlete: born 1990-01, handball player
side: left
surgery: none
runs: 2026-11-09, review by 2026-12-21
phase: settle, opened 2026-11-06 by M. Aalto
call:
  emergency: 112, ambulance
  crisis line: 555 0199, day and night
  clinician: 555 0134, M. Aalto
clearance: in person
pain: usual 1, to start 1, in exercise 2, gentle 2, in throwing 0
limits: exercises 4, minutes 30, sessions a week 4
at home: towel
throwing: not cleared
doses:
  arm swings:
    sets: 1 only
    reps: 20 only
"""


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    for name, text in (
        ("program.yaml", PROGRAM),
        ("exercises/arm-swings.yaml", EXERCISE),
        ("scripts/warm-up.yaml", SCRIPT),
    ):
        file = tmp_path / name
        file.parent.mkdir(exist_ok=True)
        file.write_text(text, encoding="utf-8")
    return tmp_path


def in_language(language: str, folder: Path) -> Program:
    plan = folder / "plans" / "a-b.yaml"
    plan.parent.mkdir()
    plan.write_text(PLAN.replace("LANGUAGE", language), encoding="utf-8")
    bound, findings = bound_from(plan)
    assert bound is not None, findings
    return bound.program


@pytest.mark.parametrize(
    ("language", "cue", "question", "told", "shown"),
    [
        (
            "English",
            "Let the hand draw rings.",
            "Was it muscle, or the joint?",
            "A calm day then.",
            (),
        ),
        (
            "Spanish",
            "Dibuja aros con la mano.",
            "Fue musculo o articulacion?",
            "Un dia tranquilo.",
            ("musculo", "articulacion"),
        ),
    ],
)
def test_the_plan_picks_the_language(
    language: str, cue: str, question: str, told: str, shown: tuple[str, ...], folder: Path
) -> None:
    program = in_language(language, folder)
    assert program.exercises[0].cues == (cue,)
    _, own, tell, note = program.scripts[0].steps
    assert (own.text, tell.text, note.text) == (question, told, "Ache in the joint.")
    assert own.answers is not None
    assert own.answers.choices == ("muscle", "joint")
    assert own.answers.shown == shown


def test_a_program_alone_is_read_in_its_first_language(folder: Path) -> None:
    program, findings = read_program(folder)
    assert findings == []
    assert program is not None
    assert program.exercises[0].set_up == ("Let the arm hang.",)


@pytest.mark.parametrize(
    "line", ["words in Spanish: Fue", "answers in Spanish", "cues in Spanish", "tell in Spanish"]
)
def test_a_line_left_out_in_one_language_is_found(line: str, folder: Path) -> None:
    for file in (folder / "scripts" / "warm-up.yaml", folder / "exercises" / "arm-swings.yaml"):
        lines = file.read_text(encoding="utf-8").split("\n")
        at = next((n for n, text in enumerate(lines) if line in text), None)
        if at is not None:
            below = 2 if lines[at].endswith(":") else 1
            file.write_text("\n".join(lines[:at] + lines[at + below :]), encoding="utf-8")
    program, findings = read_program(folder)
    assert program is None
    assert {finding.id for finding in findings} <= {"language.missing", "key.missing"}
