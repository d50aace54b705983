"""What a program's own file says about things no scenario reaches or notices, and why that is right.

Law: a reason is a person's, one line each, beside the program; it takes nothing off any other list.
A reason for something that is reached or noticed by now is told, so that the file cannot go stale.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.texts import shelf
from coach.texts.scenarios import read_scenario

if TYPE_CHECKING:
    from pathlib import Path

FILE: Final = "argued.txt"
BAR: Final = " | "


def reasons_for(scenarios: list[Path]) -> dict[str, str]:
    """What is argued, with its reason, for the programs that these scenarios play."""
    found: dict[str, str] = {}
    for folder in _programs(scenarios):
        file = folder / FILE
        for line in file.read_text("utf-8").splitlines() if file.is_file() else ():
            what, bar, why = line.partition(BAR)
            if bar and why.strip() and not line.startswith("#"):
                found[what.strip()] = why.strip()
    return found


def _programs(scenarios: list[Path]) -> list[Path]:
    """The folders of the programs, each once, in the order met."""
    found: list[Path] = []
    for file in scenarios:
        scenario, _findings = read_scenario(file)
        plan = type(file)(scenario.plan_file) if scenario is not None else None
        folder = shelf.program_folder_for(plan, shelf.says(plan, "program")) if plan else None
        if folder is not None and folder not in found:
            found.append(folder)
    return found


def told(reasons: dict[str, str], left: list[str], about: str) -> list[str]:
    """The reasons that stand, then those of this sort that have nothing left to argue about.

    `about` is how everything of the sort begins: `rule ` or `change `, several parted by a bar.
    """
    mine = {what: why for what, why in reasons.items() if what.startswith(tuple(about.split("|")))}
    stands = [f"Argued: {what}: {why}" for what, why in mine.items() if what in left]
    gone = [f"No longer so, take it out: {what}" for what in mine if what not in left]
    return [*stands, *gone]
