"""`coach new`: a talk with the clinician that ends in a file which passes the check.

Law: each answer is checked at once by the doors every file goes through, and the finding is shown
with its reason; nothing is written before the whole passes, and no file is written over.
"""

from __future__ import annotations

import contextlib
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Final

from coach.drivers.exit_codes import BAD_FILE, BY_CHOICE, DONE, MISSING, USAGE
from coach.journal.outgoing import write_whole
from coach.journal.trouble import Trouble
from coach.pages.new_lines import Asked, Draft, Part, Questions, composed
from coach.pages.new_questions import (
    exercise_questions,
    plan_questions,
    program_questions,
    scenario_questions,
)
from coach.pages.new_starts import COURSE, SCRIPTS
from coach.texts.doors import read_program
from coach.texts.drafts import findings_of, scenario_findings
from coach.texts.rendered import as_text, visible

if TYPE_CHECKING:
    import argparse
    from collections.abc import Callable

    from coach.model.findings import Finding
    from coach.model.program import Program

    Check = Callable[[str], list[Finding]]

HEAD: Final = {
    "exercise": "An exercise. Text without a dose: the dose is the plan's.",
    "plan": "A plan for one athlete. It is checked by: coach check",
    "program": "A program. Exercises stand in exercises/, plans in plans/.",
    "scenario": "A scenario. It is played by: coach replay",
}


class Left(Exception):
    """The clinician ended the talk; nothing was written."""


def new(options: argparse.Namespace) -> int:
    """Ask, check, write; the exit code."""
    folder = Path(options.folder)
    try:
        return WRITERS[options.kind](folder)
    except Left:
        say("Nothing was written.")
        return BY_CHOICE


def say(words: str) -> None:
    """One line to the clinician."""
    sys.stdout.write(f"{words}\n")
    sys.stdout.flush()


# ---------------------------------------------------------------- the talk


def asked_through(questions: Questions, head: str, check: Check) -> Draft:
    """Every question asked and answered; the text has no error finding."""
    parts: list[Part] = []
    with contextlib.suppress(StopIteration):
        asked = next(questions)
        while True:
            parts.append(_part(asked, parts, head, check))
            asked = questions.send(parts[-1].answers)
    return _mended(parts, head, check)


def _part(asked: Asked, parts: list[Part], head: str, check: Check) -> Part:
    """The answer to one question, asked again until its own lines are without an error."""
    while True:
        part = Part(asked, _answers(asked))
        if not part.answers:
            return part
        draft = composed([*parts, part], head)
        wrong = _on_lines_of(draft, len(parts), check(draft.text))
        if not wrong:
            return part
        _show(wrong)


def _on_lines_of(draft: Draft, number: int, findings: list[Finding]) -> list[Finding]:
    """The errors in what a part answered; a whole that is not whole yet is judged at the end."""
    own = {line for line, part in enumerate(draft.owner, start=1) if part == number}
    own -= draft.headings
    return [
        one
        for one in findings
        if one.level == "error"
        and one.place.line in own
        and one.place.column > _key_column(one.line_text)
    ]


def _key_column(line: str) -> int:
    """Where the key of a line stands, as a column from 1; 0 for a sentence, which has none."""
    inside = line.lstrip(" -")
    return len(line) - len(inside) + 1 if ": " in inside else 0


def _mended(parts: list[Part], head: str, check: Check) -> Draft:
    """The whole, its lines with an error asked for again until there is none."""
    while True:
        draft = composed(parts, head)
        found = check(draft.text)
        wrong = [one for one in found if one.level == "error"]
        if not wrong:
            if found:
                say("It passes. Worth a look:")
                _show(found)
            return draft
        _show(wrong)
        again = _whose(draft, wrong)
        if not again:
            raise Left
        for number in again:
            parts[number] = Part(parts[number].asked, _answers(parts[number].asked))


def _whose(draft: Draft, findings: list[Finding]) -> list[int]:
    """The parts on whose lines the findings stand."""
    lines = [one.place.line for one in findings if one.place.line <= len(draft.owner)]
    return sorted({draft.owner[line - 1] for line in lines if draft.owner[line - 1] >= 0})


def _answers(asked: Asked) -> tuple[str, ...]:
    say(f"{asked.words}:")
    found: list[str] = []
    while True:
        typed = _line()
        if typed:
            found.append(typed)
        if typed and not asked.many:
            return (typed,)
        if not typed and (found or asked.optional):
            return tuple(found)
        if not typed:
            say("This line is needed. Type it, or end with Ctrl-D:")


def _line() -> str:
    line = sys.stdin.readline()
    if not line:
        raise Left
    return visible(line.strip())


def _show(findings: list[Finding]) -> None:
    for one in findings[:3]:
        say(f"  {visible(one.what)} {one.why}")
        if one.write:
            say(f"  As: {visible(one.write)}")


# ---------------------------------------------------------------- the kinds


def write_exercise(folder: Path) -> int:
    """An exercise for the program in `folder`."""
    _program_in(folder)
    draft = asked_through(
        exercise_questions(), HEAD["exercise"], _in_file("exercises/new.yaml", folder)
    )
    name = _said(draft, "exercise")
    _write(folder / "exercises" / f"{_file_name(name)}.yaml", draft.text)
    say("Name it in a phase of program.yaml, and give it a dose or a place under")
    say('"not used" in each plan. Then: coach check, which tells where.')
    return DONE


def write_plan(folder: Path) -> int:
    """A plan of the program in `folder`."""
    program = _program_in(folder)
    draft = asked_through(plan_questions(program), HEAD["plan"], _in_file("plans/new.yaml", folder))
    initials = _said(draft, "plan").rpartition(" ")[0]
    _write(folder / "plans" / f"{_file_name(initials.replace('.', ' '))}.yaml", draft.text)
    say("Then: coach sheet, coach bind.")
    return DONE


def write_program(folder: Path) -> int:
    """A program in a new folder, with its first exercise, its questions and a course."""
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise Trouble(f"{visible(str(folder))} is there already. Name a new folder.", USAGE)
    say("First the warm-up exercise.")
    stub = "program: new 1\nwarm-up: {0}\nphases:\n  - phase: first\n    exercises: {0}\n"

    def check_exercise(text: str) -> list[Finding]:
        name = text.partition("exercise: ")[2].partition("\n")[0] or "none"
        files = {"program.yaml": stub.format(name), "exercises/new.yaml": text}
        return _of("exercises/new.yaml", findings_of(files, None))

    exercise = asked_through(exercise_questions(), HEAD["exercise"], check_exercise)
    name = _said(exercise, "exercise")

    def check_program(text: str) -> list[Finding]:
        files = {"program.yaml": text, "exercises/new.yaml": exercise.text}
        return _of("program.yaml", findings_of(files, None))

    say("Now the program.")
    program = asked_through(program_questions(name), HEAD["program"], check_program)
    for inside in ("exercises", "scripts", "courses", "plans"):
        (folder / inside).mkdir(parents=True, exist_ok=True)
    for short, text in {
        "program.yaml": program.text,
        f"exercises/{_file_name(name)}.yaml": exercise.text,
        **SCRIPTS,
        "courses/smooth.yaml": COURSE,
    }.items():
        _write(folder / short, text)
    say("Next: coach new exercise, coach new plan, coach map.")
    return DONE


def write_scenario(folder: Path) -> int:
    """A scenario that is to stand in `folder`."""
    if not folder.is_dir():
        raise Trouble(f"There is no folder at {visible(str(folder))}.", MISSING)
    draft = asked_through(
        scenario_questions(), HEAD["scenario"], lambda text: scenario_findings(text, folder)
    )
    name = _said(draft, "scenario")
    _write(folder / f"{_file_name(name)}.yaml", draft.text)
    return DONE


WRITERS: Final = {
    "exercise": write_exercise,
    "plan": write_plan,
    "program": write_program,
    "scenario": write_scenario,
}


def _program_in(folder: Path) -> Program:
    program, findings = read_program(folder)
    if program is None:
        sys.stdout.write(as_text(findings))
        raise Trouble("The program must pass the check first.", BAD_FILE)
    if len(program.languages) > 1:
        words = "This program has two languages, and coach new writes one. Copy a file and edit it."
        raise Trouble(words, USAGE)
    return program


def _in_file(short: str, program: Path) -> Check:
    return lambda text: _of(short, findings_of({short: text}, program))


def _of(short: str, findings: list[Finding]) -> list[Finding]:
    return [one for one in findings if one.place.file == short]


def _said(draft: Draft, key: str) -> str:
    lines = draft.text.splitlines()
    return next(line for line in lines if line.startswith(f"{key}: ")).partition(": ")[2]


def _file_name(name: str) -> str:
    """`band diagonal lift` as `band-diagonal-lift`; nothing of a path is left in it."""
    letters = "".join(letter if letter.isalnum() else " " for letter in name.lower())
    return "-".join(letters.split())[:60] or "new"


def _write(path: Path, text: str) -> None:
    if path.exists():
        raise Trouble(f"{visible(str(path))} is there already. Nothing was written over.", USAGE)
    path.parent.mkdir(exist_ok=True)
    write_whole(path, text)
    say(f"Written: {visible(str(path))}")
