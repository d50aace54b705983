"""Where texts stand: the program of a plan, the plan of a scenario, the shipped programs.

Law: it finds and never reads further than the first line it needs; what is found is read strictly
elsewhere.
"""

from __future__ import annotations

import os
import stat
from pathlib import Path
from typing import Final

PROGRAM_FILE: Final = "program.yaml"
HOW_FAR_UP: Final = 3  # folders above a plan in which its program is looked for
_HEAD_BYTES: Final = 4096


def shipped_dialogs() -> Path | None:
    """The folder of programs that came with the coach: beside the package, or in the checkout."""
    package = Path(__file__).resolve().parent.parent
    for folder in (package / "dialogs", package.parent / "dialogs"):
        if folder.is_dir():
            return folder
    return None


def program_folder_for(plan_path: Path, name: str) -> Path | None:
    """The folder of the program called `name`, in, above or beside the plan's own folders."""
    for folder in list(plan_path.resolve().parents)[: HOW_FAR_UP + 1]:
        for candidate in (folder, *_children(folder)):
            if name and says(candidate / PROGRAM_FILE, "program") == name:
                return _as_seen_from_here(candidate)
    return None


def _as_seen_from_here(folder: Path) -> Path:
    """The folder by its short path where it lies below the folder the command was called in."""
    here = Path.cwd()
    return folder.relative_to(here) if folder.is_relative_to(here) else folder


def plan_of_scenario(scenario: Path, plan: str) -> Path | None:
    """The plan a scenario names: from its own folder, else from the shipped programs."""
    tried = [scenario.parent / plan]
    shipped = shipped_dialogs()
    if shipped is not None:
        tried.append(shipped / plan.rpartition("dialogs/")[2])
        tried += [program / plan for program in _children(shipped)]
    return next((path for path in tried if path.is_file()), None)


def course_called(name: str, scenario: Path, plan: Path) -> Path | None:
    """The course called `name`: in the program's courses/, else beside the scenario."""
    folders = [plan.parent.parent / "courses", scenario.parent / "courses"]
    program = program_folder_for(plan, says(plan, "program"))
    if program is not None:
        folders.insert(0, program / "courses")
    for folder in folders:
        for file in sorted(folder.glob("*.yaml")):
            if says(file, "course") == name:
                return file
    return None


def says(file: Path, key: str) -> str:
    """The words after `key` in the head of a file, or '' (a peek, never trusted further)."""
    head = _head(file).decode("utf-8-sig", "replace")
    for line in head.splitlines():
        if line.startswith(f"{key}:"):
            return line.removeprefix(f"{key}:").strip()
    return ""


def _head(file: Path) -> bytes:
    """The first bytes of a plain file; nothing of a pipe or a device, which might never end."""
    try:
        handle = os.open(file, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0))
    except OSError:
        return b""
    try:
        return os.read(handle, _HEAD_BYTES) if stat.S_ISREG(os.fstat(handle).st_mode) else b""
    finally:
        os.close(handle)


def _children(folder: Path) -> list[Path]:
    try:
        return sorted(child for child in folder.iterdir() if child.is_dir())
    except OSError:
        return []
