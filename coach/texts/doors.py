"""The doors of this room: a program, a plan, both checked together, and every text under a path.

Law: whoever gets a value here gets one without an error finding; otherwise None and the findings.
"""

from __future__ import annotations

import contextlib
import gc
import hashlib
from collections.abc import Iterator
from pathlib import Path
from typing import Final

from coach.model.findings import Finding
from coach.model.program import Bound, Place, Plan, Program
from coach.texts import scenarios, shelf
from coach.texts.checks_plan import check_plan
from coach.texts.checks_program import check_program
from coach.texts.margin import Margin, Page, did_you_mean
from coach.texts.plans import read_plan_tree
from coach.texts.programs import read_program_into, script_trees
from coach.texts.yaml_lines import Mapped, Text, read_page, read_tree


def read_program(folder: Path) -> tuple[Program | None, list[Finding]]:
    """The program in `folder`, in its first language, or None with the findings."""
    margin = Margin()
    program = _program(margin, folder, "")
    return (None if margin.has_error() else program), margin.sorted_findings()


def program_with_lines(
    path: Path,
) -> tuple[Program | None, dict[str, Mapped], list[Finding]]:
    """A program and each script's lines as they stand, by moment; None with the findings.

    `path` is a program's folder, a file in it, or a plan of it.
    """
    folder = folder_of_program(path)
    if folder is None:
        margin = Margin()
        what = f"There is no program in or for {path.name}."
        margin.note("file.missing", Place(str(path), 1), what)
        return None, {}, margin.sorted_findings()
    program, findings = read_program(folder)
    if program is None:
        return None, {}, findings
    return program, script_trees(folder, Margin()), findings


def folder_of_program(path: Path) -> Path | None:
    """The folder of a program, from itself, from a file in it, or from a plan that names it."""
    for folder in (path, path.parent, path.parent.parent):
        if _is_folder(folder) and _has_program(folder):
            return folder
    return shelf.program_folder_for(path, shelf.says(path, "program"))


def read_plan(file: Path, program: Program) -> tuple[Plan | None, list[Finding]]:
    """The plan in `file`, checked against `program`, or None with the findings."""
    margin = Margin()
    plan = _plan(margin, file, program)
    return (None if margin.has_error() else plan), margin.sorted_findings()


def bound_from(plan_path: Path) -> tuple[Bound | None, list[Finding]]:
    """A plan and its program, checked together, with a sha256 over every byte of both.

    `plan_path` is a plan file, or the one file that the binding made of plan and program.
    """
    if shelf.says(plan_path, "bound plan"):
        from coach.texts.bind import read_bound  # it reads its parts through this door again

        return read_bound(plan_path)
    margin = Margin()
    tree = _plan_tree(margin, plan_path)
    folder = shelf.program_folder_for(plan_path, _named(tree, "program")) if tree else None
    if tree is None or folder is None:
        _note_no_program(margin, plan_path, tree)
        return None, margin.sorted_findings()
    program = _program(margin, folder, _named(tree, "language"))
    if program is None:
        return None, margin.sorted_findings()
    plan = read_plan_tree(tree, program, margin)
    check_plan(plan, program, margin)
    if margin.has_error():
        return None, margin.sorted_findings()
    return Bound(program, plan, digest_of(margin.pages())), margin.sorted_findings()


def digest_of(pages: tuple[Page, ...]) -> str:
    """sha256 over name, length and bytes of every page, sorted by name (hex)."""
    total = hashlib.sha256()
    for page in sorted(pages, key=lambda page: page.file):
        total.update(f"{page.file}\n{len(page.data)}\n".encode())
        total.update(page.data)
    return total.hexdigest()


def _program(margin: Margin, folder: Path, language: str) -> Program | None:
    program = read_program_into(margin, folder, language)
    if program is not None:
        check_program(program, margin)
    return program


def _short_name(file: Path) -> str:
    inside = (file.parent.parent / shelf.PROGRAM_FILE).is_file()
    return f"{file.parent.name}/{file.name}" if inside else file.name


def _plan_tree(margin: Margin, file: Path, root: Path | None = None) -> Mapped | None:
    page = read_page(file, _short_name(file), margin, root)
    tree = read_tree(page, margin) if page else None
    if tree is not None and tree.pairs[0].key.value != "plan":
        first = tree.pairs[0].key
        what = f'The first line says "{first.value}", and a plan begins with plan.'
        margin.note("file.first_line", first.place, what, "plan: L.V. 1")
        return None
    return tree


def _plan(margin: Margin, file: Path, program: Program, root: Path | None = None) -> Plan | None:
    tree = _plan_tree(margin, file, root)
    if tree is None:
        return None
    plan = read_plan_tree(tree, program, margin)
    check_plan(plan, program, margin)
    return plan


def _named(tree: Mapped, key: str) -> str:
    for pair in tree.pairs:
        if pair.key.value == key and isinstance(pair.value, Text):
            return pair.value.value
    return ""


def _note_no_program(margin: Margin, file: Path, tree: Mapped | None) -> None:
    if tree is None:
        return
    name = _named(tree, "program")
    what = f'The program "{name}" is not in or beside the folders of {file.name}.'
    place = next((p.value.place for p in tree.pairs if p.key.value == "program"), tree.place)
    if not name:
        margin.note(
            "key.missing",
            tree.place,
            'The plan has no line "program".',
            "program: NAME",
        )
        return
    margin.note("plan.program", place, what)


# ---------------------------------------------------------------- everything under a path


def check_paths(paths: list[Path]) -> list[Finding]:
    """Every finding of every text under the paths, sorted, each once."""
    with _all_kept():
        found = dict.fromkeys(one for path in paths for one in _check_one(path))
    return sorted(found, key=lambda f: (f.place.file, f.place.line, f.place.column, f.id))


@contextlib.contextmanager
def _all_kept() -> Iterator[None]:
    """No looking for garbage: all that is read stays to the end, so a look finds none and costs."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


def _check_one(path: Path) -> list[Finding]:
    if _is_folder(path):
        return _check_folder(path)
    if shelf.says(path, "bound plan"):
        return bound_from(path)[1]
    kind = _kind_of(path)
    if kind == "plan":
        return bound_from(path)[1]
    if kind == "scenario":
        return scenarios.read_scenario(path)[1]
    if _has_program(path.parent):
        return _check_folder(path.parent)
    if _has_program(path.parent.parent):
        return _check_folder(path.parent.parent)
    return _unknown_kind(path)


def _is_folder(path: Path) -> bool:
    try:
        return path.is_dir()
    except OSError:  # a name too long for the machine
        return False


def _has_program(folder: Path) -> bool:
    return (folder / shelf.PROGRAM_FILE).is_file()


def _kind_of(path: Path) -> str:
    margin = Margin()
    page = read_page(path, path.name, margin)
    for line in page.lines if page else ():
        if line.strip() and not line.lstrip().startswith("#"):
            return line.partition(":")[0].strip()
    return ""


def _unknown_kind(path: Path) -> list[Finding]:
    margin = Margin()
    page = read_page(path, path.name, margin)
    tree = read_tree(page, margin) if page else None
    if tree is not None:
        first = tree.pairs[0].key
        what = f'A file that begins with "{first.value}" is not checked by itself.'
        margin.note("file.first_line", first.place, what, "plan: L.V. 1")
    return margin.sorted_findings()


def _check_folder(folder: Path) -> list[Finding]:
    if (folder / shelf.PROGRAM_FILE).is_file():
        return _check_program_folder(folder)
    found: list[Finding] = []
    inside = sorted(p for p in folder.iterdir() if not p.name.startswith("."))
    for path in inside:
        if path.is_symlink() and path.is_dir():
            continue  # it may lead back here, round and round
        if path.suffix == ".yaml" or (path.is_dir() and _holds_texts(path)):
            found.extend(_check_one(path))
    if not found and not any(p.is_dir() or p.suffix == ".yaml" for p in inside):
        place = Place(str(folder), 1)
        margin = Margin()
        margin.note("file.missing", place, f"There is no text to check in {folder.name}.")
        return margin.sorted_findings()
    return found


def _check_program_folder(folder: Path) -> list[Finding]:
    margin = Margin()
    program = _program(margin, folder, "")
    _note_strays(margin, folder)
    for plan in sorted((folder / "plans").glob("*.yaml")) if program else ():
        _plan(margin, plan, program, folder)  # type: ignore[arg-type]
    found = margin.sorted_findings()
    for course in sorted((folder / "courses").glob("*.yaml")):
        found.extend(scenarios.check_course(course))
    return found


def _holds_texts(folder: Path) -> bool:
    """Whether a folder inside holds texts somewhere; others, such as schemas, are passed by."""
    return any(True for _ in folder.rglob("*.yaml"))


_ROOMS_OF_A_PROGRAM: Final = ("exercises", "scripts", "plans", "courses")
_TEXT_ENDINGS: Final = (".yaml", ".yml")


def _note_strays(margin: Margin, folder: Path) -> None:
    """Texts of a program folder that nobody would read: misspelt folders, other endings."""
    for path in sorted(folder.iterdir()):
        if path.name.startswith("."):
            continue
        if path.is_dir() and path.name not in _ROOMS_OF_A_PROGRAM:
            _note_stray(margin, path, folder, did_you_mean(path.name, _ROOMS_OF_A_PROGRAM))
        elif path.suffix in _TEXT_ENDINGS and path.name != shelf.PROGRAM_FILE:
            _note_stray(margin, path, folder, "")
    for room in ("plans", "courses"):
        for path in sorted((folder / room).glob("*")):
            if path.suffix != ".yaml" and not path.name.startswith("."):
                _note_stray(margin, path, folder, " A text ends in .yaml.")


def _note_stray(margin: Margin, path: Path, folder: Path, more: str) -> None:
    short = path.relative_to(folder).as_posix()
    margin.keep(Page(short, str(path), (), b""))
    margin.note(
        "file.stray", Place(short, 1), f"{short} is not read as a part of the program.{more}"
    )
