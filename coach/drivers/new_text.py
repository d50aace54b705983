"""`coach new`: a talk with the clinician that ends in a file which passes the check.

Law: each answer is checked at once by the doors every file goes through, and the finding is shown
with its reason; nothing is written before the whole passes, and no file is written over. Only
program.yaml gets a name or a line more, where the clinician says so.
"""

from __future__ import annotations

import contextlib
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Final

from coach.drivers.exit_codes import BAD_FILE, BY_CHOICE, DONE, INTERRUPTED, MISSING, USAGE
from coach.drivers.new_talk import ANEW, BACK, MOST_BYTES, Left, Talk, WentBack, say
from coach.journal.incoming import text_of
from coach.journal.outgoing import write_whole
from coach.journal.trouble import Trouble
from coach.pages.new_lines import Asked, Draft, Part, Questions, composed
from coach.pages.new_questions import (
    WALL_FORM,
    Tongues,
    exercise_questions,
    language_question,
    plan_questions,
    program_questions,
    scenario_questions,
)
from coach.pages.new_starts import COURSE, SCRIPTS
from coach.texts.doors import read_program
from coach.texts.drafts import findings_of, in_phases, scenario_findings, with_wall
from coach.texts.margin import did_you_mean
from coach.texts.rendered import as_text, visible
from coach.texts.schemas import schema_text

if TYPE_CHECKING:
    import argparse
    from collections.abc import Callable

    from coach.model.findings import Finding
    from coach.model.program import Program

    Check = Callable[[str], list[Finding]]

SCHEMAS: Final = ".schemas"  # beside the files, so that an editor finds them without a network
# What is only lacking because its question comes later; it is looked at when all is answered.
NOT_YET: Final = {
    *("fault.no_room", "language.count", "language.missing", "range.one_step", "version.fits"),
}
TYPED_KEY: Final = "scenario.prompt"  # the clinician's own word, though it stands before a colon
DRAFT: Final = "draft-07"  # the one that more editors know
HEAD: Final = {
    "exercise": "An exercise. Text without a dose: the dose is the plan's.",
    "plan": "A plan for one athlete. It is checked by: coach check",
    "program": "A program. Exercises stand in exercises/, plans in plans/.",
    "scenario": "A scenario. It is played by: coach replay",
}


def new(options: argparse.Namespace) -> int:
    """Ask, check, write; the exit code."""
    folder = Path(options.folder)
    talk = Talk(_kept_in(options.kind, folder))
    try:
        _greet(talk)
        while True:
            try:
                return WRITERS[options.kind](folder, talk)
            except WentBack:
                say("Back.")
                talk.start_again()
    except Left:
        say(_LATER)
        return BY_CHOICE
    except KeyboardInterrupt:
        say(f"\n{_LATER}")
        return INTERRUPTED


_LATER: Final = (
    "No file is written yet, and your answers are kept.\nTo go on, type the same command again."
)


def _kept_in(kind: str, folder: Path) -> Path:
    """Where the answers of a talk are kept: beside a program to come, in the folder otherwise."""
    return (
        folder.parent / f".begun-{folder.name}" if kind == "program" else folder / f".begun-{kind}"
    )


def _greet(talk: Talk) -> None:
    if not talk.kept:
        say(f"Type {BACK} to change the answer before. Ctrl-D ends; your answers are kept.")
        return
    say(f"You began this before, and {talk.kept} lines are kept.")
    say(f"Enter to go on with them, or type {ANEW} to begin anew:")
    answer = sys.stdin.readline()
    if not answer:
        raise Left
    if answer.strip() == ANEW:
        talk.begin_anew()


# ---------------------------------------------------------------- the talk


def asked_through(talk: Talk, questions: Questions, kind: str, check: Check) -> Draft:
    """Every question asked and answered; the text has no error finding."""
    parts: list[Part] = []
    with contextlib.suppress(StopIteration):
        asked = next(questions)
        while True:
            parts.append(_part(talk, asked, parts, kind, check))
            asked = questions.send(parts[-1].answers)
    return _mended(talk, parts, kind, check)


def _part(talk: Talk, asked: Asked, parts: list[Part], kind: str, check: Check) -> Part:
    """The answer to one question, each line of it taken only without an error of its own."""

    def wrong(answers: tuple[str, ...]) -> list[Finding]:
        draft = _text([*parts, Part(asked, answers)], kind)
        return _on_lines_of(draft, len(parts), check(draft.text))

    return Part(asked, _answers(talk, asked, wrong))


def _text(parts: list[Part], kind: str) -> Draft:
    above = "" if kind in {"program", "scenario"} else "../"
    line = f"yaml-language-server: $schema={above}{SCHEMAS}/{kind}.json"
    return composed(parts, line, HEAD[kind])


def _on_lines_of(draft: Draft, number: int, findings: list[Finding]) -> list[Finding]:
    """The errors in what a part answered; a whole that is not whole yet is judged at the end."""
    own = {line for line, part in enumerate(draft.owner, start=1) if part == number}
    own -= draft.headings
    return [
        one
        for one in findings
        if one.level == "error"
        and one.id not in NOT_YET
        and one.place.line in own
        and (one.id == TYPED_KEY or one.place.column > _key_column(one.line_text))
    ]


def _key_column(line: str) -> int:
    """Where the key of a line stands, as a column from 1; 0 for a sentence, which has none."""
    inside = line.lstrip(" -")
    return len(line) - len(inside) + 1 if ": " in inside else 0


def _mended(talk: Talk, parts: list[Part], kind: str, check: Check) -> Draft:
    """The whole, its lines with an error asked for again until there is none."""
    while True:
        draft = _text(parts, kind)
        found = check(draft.text)
        wrong = [one for one in found if one.level == "error"]
        if not wrong:
            if found:
                say("It passes. Worth a look:")
                _show(found)
            return draft
        _show(wrong)
        again = [number for number in _whose(draft, wrong) if not parts[number].asked.given]
        if not again:
            say(f"Type {BACK} to change the answer before:")
            talk.question()
            talk.line()
        for number in again:
            parts[number] = Part(parts[number].asked, _answers(talk, parts[number].asked, _any))


def _any(_answers: tuple[str, ...]) -> list[Finding]:
    """No objection; the whole is looked at next."""
    return []


def _whose(draft: Draft, findings: list[Finding]) -> list[int]:
    """The parts on whose lines the findings stand."""
    lines = [one.place.line for one in findings if one.place.line <= len(draft.owner)]
    return sorted({draft.owner[line - 1] for line in lines if draft.owner[line - 1] >= 0})


def _answers(
    talk: Talk, asked: Asked, wrong: Callable[[tuple[str, ...]], list[Finding]]
) -> tuple[str, ...]:
    if asked.given:
        return asked.given
    talk.question()
    say(f"{asked.words}:")
    found: list[str] = []
    while True:
        typed = talk.line()
        if not typed and (found or asked.optional):
            return tuple(found)
        findings = wrong((*found, typed)) if typed else []
        if findings or not typed:
            talk.forget()
            _show(findings)
            say(_again(asked, found, needed=not typed))
            continue
        found.append(typed)
        if not asked.many:
            return (typed,)


def _again(asked: Asked, found: list[str], *, needed: bool) -> str:
    """What to type after a line that was not taken."""
    if needed:
        return "This line is needed. Type it, or end with Ctrl-D:"
    if not asked.many:
        return f"{asked.words.strip()}:"
    kept = f"{len(found)} taken so far. " if found else ""
    return f"That line is not taken. {kept}Type it in another way, or Enter when done:"


def _show(findings: list[Finding]) -> None:
    for one in findings[:3]:
        say(f"  {visible(one.what)} {one.why}")
        if one.write:
            say(f"  As: {visible(one.write)}")


# ---------------------------------------------------------------- the kinds


def write_exercise(folder: Path, talk: Talk) -> int:
    """An exercise for the program in `folder`, with its phases and its wall in program.yaml."""
    program = _program_in(folder)
    tongues = _tongues(program.languages)
    whole = _in_file("exercises/new.yaml", folder)

    def check(text: str) -> list[Finding]:  # its phases are asked for below
        return [one for one in whole(text) if one.id != "exercise.unused"]

    draft = asked_through(talk, exercise_questions(tongues), "exercise", check)
    name = _said(draft, "exercise")
    file = _free(folder / "exercises" / f"{_file_name(name)}.yaml")
    outline = folder / "program.yaml"
    before = text_of(outline, MOST_BYTES)
    after = in_phases(before, name, _phases_for(program, name, talk))
    after = _walled(after, name, draft, folder, talk)
    _write(file, draft.text)
    if after != before:
        write_whole(outline, after)
        say(f"Added there: {visible(str(outline))}")
    _finish(talk, folder, "exercise")
    _tell_plans(folder, name)
    return DONE


def _phases_for(program: Program, name: str, talk: Talk) -> tuple[str, ...]:
    """The phases that the new exercise is to stand in."""
    known = tuple(phase.name for phase in program.phases)
    while True:
        talk.question()
        say(f"Phases that {name} stands in, with commas ({', '.join(known)}); Enter for none yet:")
        named = tuple(piece.strip() for piece in talk.line().split(",") if piece.strip())
        strange = next((one for one in named if one not in known), "")
        if not strange:
            return named
        talk.forget()
        say(f'  There is no phase "{visible(strange)}".{did_you_mean(strange, known)}')


def _walled(program: str, name: str, draft: Draft, folder: Path, talk: Talk) -> str:
    """The text of program.yaml with the wall on the new exercise, if there is to be one."""
    while True:
        talk.question()
        say(f"Outer limits on {name} for every plan, {WALL_FORM}:")
        wall = talk.line()
        if not wall:
            return program
        text = with_wall(program, f"{name}: {wall}")
        files = {"program.yaml": text, "exercises/new.yaml": draft.text}
        found = _of("program.yaml", findings_of(files, folder))
        wrong = [one for one in found if one.id.startswith(("wall.", "value."))]
        if not wrong:
            return text
        talk.forget()
        _show(wrong)


def _tell_plans(folder: Path, name: str) -> None:
    """Which plans now need a word on the new exercise."""
    plans = sorted((folder / "plans").glob("*.yaml"))
    for plan in plans:
        say(f'{visible(str(plan))} needs a dose for {name}, or its name under "not used".')
    say("Then: coach check, which tells what is left.")


def write_plan(folder: Path, talk: Talk) -> int:
    """A plan of the program in `folder`."""
    program = _program_in(folder)
    check = _in_file("plans/new.yaml", folder)
    draft = asked_through(talk, plan_questions(program), "plan", check)
    initials = _said(draft, "plan").rpartition(" ")[0]
    plan = folder / "plans" / f"{_file_name(initials.replace('.', ' '))}.yaml"
    _write(plan, draft.text)
    _finish(talk, folder, "plan")
    say(f"Then: coach sheet {visible(str(plan))}")
    say(f"      coach bind {visible(str(plan))} --out FILE")
    return DONE


def write_program(folder: Path, talk: Talk) -> int:
    """A program in a new folder, with its first exercise, its questions and a course."""
    if folder.exists() and (not folder.is_dir() or any(folder.iterdir())):
        raise Trouble(f"{visible(str(folder))} is there already. Name a new folder.", USAGE)
    stub = (
        "program: new 1\nlanguages: {1}\nwarm-up: {0}\nphases:\n"
        "  - phase: first\n    exercises: {0}\n"
    )

    def check_languages(text: str) -> list[Finding]:
        found = findings_of({"program.yaml": text}, None)
        return [one for one in found if one.id.startswith("language.")]

    spoken = _said(
        asked_through(talk, language_question(), "program", check_languages), "languages"
    )
    tongues = _tongues(tuple(piece.strip() for piece in spoken.split(",")))

    def check_exercise(text: str) -> list[Finding]:
        name = text.partition("exercise: ")[2].partition("\n")[0] or "none"
        files = {"program.yaml": stub.format(name, spoken), "exercises/new.yaml": text}
        return _of("exercises/new.yaml", findings_of(files, None))

    say("First the warm-up exercise.")
    exercise = asked_through(talk, exercise_questions(tongues), "exercise", check_exercise)
    name = _said(exercise, "exercise")

    def check_program(text: str) -> list[Finding]:
        files = {"program.yaml": text, "exercises/new.yaml": exercise.text}
        return _of("program.yaml", findings_of(files, None))

    say("Now the program.")
    program = asked_through(talk, program_questions(name, spoken), "program", check_program)
    for inside in ("exercises", "scripts", "courses", "plans"):
        (folder / inside).mkdir(parents=True, exist_ok=True)
    for short, text in {
        "program.yaml": program.text,
        f"exercises/{_file_name(name)}.yaml": exercise.text,
        **SCRIPTS,
        "courses/smooth.yaml": COURSE,
    }.items():
        _write(folder / short, text)
    _finish(talk, folder, "program", "exercise", "script", "course")
    say(f"Next: coach new exercise {visible(str(folder))}")
    say(f"      coach new plan {visible(str(folder))}")
    return DONE


def write_scenario(folder: Path, talk: Talk) -> int:
    """A scenario that is to stand in `folder`."""
    if not folder.is_dir():
        raise Trouble(f"There is no folder at {visible(str(folder))}.", MISSING)
    draft = asked_through(
        talk, scenario_questions(), "scenario", lambda text: scenario_findings(text, folder)
    )
    name = _said(draft, "scenario")
    scenario = folder / f"{_file_name(name)}.yaml"
    _write(scenario, draft.text)
    _finish(talk, folder, "scenario")
    say(f"Then: coach replay {visible(str(scenario))}")
    return DONE


def _finish(talk: Talk, folder: Path, *kinds: str) -> None:
    """The schemas that the editor's lines name, beside the files; what was kept is thrown away."""
    (folder / SCHEMAS).mkdir(exist_ok=True)
    for kind in kinds:
        write_whole(folder / SCHEMAS / f"{kind}.json", schema_text(kind, DRAFT))
    talk.done()


def _tongues(languages: tuple[str, ...]) -> Tongues:
    return Tongues(*languages[:2])


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


def _free(path: Path) -> Path:
    """The path, where nothing stands yet. Raises `Trouble`."""
    if path.exists() or path.is_symlink():
        raise Trouble(f"{visible(str(path))} is there already. Nothing was written over.", USAGE)
    return path


def _write(path: Path, text: str) -> None:
    _free(path).parent.mkdir(exist_ok=True)
    write_whole(path, text)
    say(f"Written: {visible(str(path))}")
