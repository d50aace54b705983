"""Which course a forecast follows: a file, or a name in the program's own courses.

Law: a course is read and checked like every text; an unknown name is a calm refusal with the names
that there are.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from coach.journal.trouble import Trouble
from coach.texts import shelf
from coach.texts.scenarios import read_course

if TYPE_CHECKING:
    from coach.model.findings import Finding
    from coach.model.scenario import Course


def course_for(name: str, plan: Path) -> tuple[Course | None, list[Finding]]:
    """The course called `name` (`short-sleep` is `short sleep`) or in the file of that name.

    None with its findings where it has a mistake. Raises `Trouble` (66) where there is none.
    """
    if name.endswith(".yaml"):
        file = Path(name)
        if not file.is_file():
            raise Trouble(f"There is no course file at {name}.", 66)
        return read_course(file)
    found = _folders(plan)
    by_name = {shelf.says(file, "course"): file for folder in found for file in _files(folder)}
    file_found = by_name.get(name.replace("-", " "))
    if file_found is None:
        known = ", ".join(sorted(name.replace(" ", "-") for name in by_name if name))
        raise Trouble(f'There is no course "{name}". There are: {known or "none"}.', 66)
    return read_course(file_found)


def _folders(plan: Path) -> list[Path]:
    """Where courses may stand, the least near first: shipped programs, beside, the program's."""
    shipped = shelf.shipped_dialogs()
    found = sorted(shipped.glob("*/courses")) if shipped is not None else []
    program = shelf.program_folder_for(plan, shelf.says(plan, "program"))
    beside = [plan.parent / "courses"]
    return [*found, *beside, *([program / "courses"] if program is not None else [])]


def _files(folder: Path) -> list[Path]:
    return sorted(folder.glob("*.yaml")) if folder.is_dir() else []
