"""Checks texts that are not on disk yet: a draft beside the program it belongs to.

Law: the draft is read by the same doors as any file, in a folder that is gone afterwards; nothing
is written where the clinician's files are.
"""

from __future__ import annotations

import shutil
import tempfile
from pathlib import Path

from coach.model.findings import Finding
from coach.texts import shelf
from coach.texts.doors import bound_from, check_paths
from coach.texts.margin import Margin, Page
from coach.texts.scenarios import read_scenario
from coach.texts.yaml_lines import Listed, Mapped, Text, read_tree


def findings_of(draft: dict[str, str], program: Path | None) -> list[Finding]:
    """Every finding of the drafted texts, by short name (`plans/l-v.yaml`), beside `program`.

    Plans that stand in the program already are left out: they are not what is being written.
    """
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name) / "program"
        folder.mkdir()
        for room in ("exercises", "scripts") if program else ():
            if program and (program / room).is_dir():
                shutil.copytree(program / room, folder / room)
        if program:
            shutil.copy(program / shelf.PROGRAM_FILE, folder)
        for short, text in draft.items():
            file = folder / short
            file.parent.mkdir(exist_ok=True)
            file.write_text(text, encoding="utf-8")
        plans = [folder / short for short in draft if short.startswith("plans/")]
        found = bound_from(plans[0])[1] if plans else check_paths([folder])
        return [_inside(one, folder) for one in found]


def _inside(finding: Finding, folder: Path) -> Finding:
    file = finding.place.file
    for start in (str(folder), str(folder.resolve())):
        file = file.removeprefix(f"{start}/")
    return finding._replace(place=finding.place._replace(file=file))


def scenario_findings(text: str, beside: Path) -> list[Finding]:
    """Every finding of a drafted scenario that is to stand in the folder `beside`."""
    with tempfile.NamedTemporaryFile("w", suffix=".yaml", dir=beside, encoding="utf-8") as file:
        file.write(text)
        file.flush()
        return read_scenario(Path(file.name))[1]


# ---------------------------------------------------------------- a line more in program.yaml


def in_phases(program: str, exercise: str, phases: tuple[str, ...]) -> str:
    """The text of program.yaml with the exercise named last in these phases; nothing else moves."""
    lines = program.split("\n")
    tree = _tree(program)
    listed = tree.by_key.get("phases") if tree else None
    for item in listed.value.items if listed and isinstance(listed.value, Listed) else ():
        if not isinstance(item, Mapped):
            continue
        called, named = item.by_key.get("phase"), item.by_key.get("exercises")
        if called is None or named is None or not isinstance(called.value, Text):
            continue
        if called.value.value in phases and isinstance(named.value, Text):
            row = named.value.place.line - 1
            lines[row] = f"{lines[row].rstrip()}, {exercise}"
    return "\n".join(lines)


def with_wall(program: str, wall: str) -> str:
    """The text of program.yaml with one wall more, below the others or in front of the phases."""
    lines = program.split("\n")
    tree = _tree(program)
    walls = tree.by_key.get("walls") if tree else None
    if walls is not None and isinstance(walls.value, Mapped):
        row, more = walls.value.pairs[-1].value.place.line, [f"  {wall}"]
    else:
        phases = tree.by_key.get("phases") if tree else None
        row = phases.key.place.line - 1 if phases else len(lines)
        more = ["walls:", f"  {wall}"]
    return "\n".join([*lines[:row], *more, *lines[row:]])


def _tree(text: str) -> Mapped | None:
    page = Page("program.yaml", "program.yaml", tuple(text.split("\n")), text.encode())
    return read_tree(page, Margin())
