"""Where each sentence of a program stands: its file and line, to be named when it is spoken.

Law: a sentence is known by its letters alone; one that stands in several files is known by the
first of them.
"""

from __future__ import annotations

from pathlib import Path
from typing import Final

from coach.texts.shelf import PROGRAM_FILE

_ROOMS: Final = ("scripts", "exercises")


def sentence_places(folder: Path) -> dict[str, str]:
    """Each value and list line of the program's texts, to `scripts/screen.yaml, line 4`."""
    found: dict[str, str] = {}
    files = [folder / PROGRAM_FILE]
    for room in _ROOMS:
        files += sorted((folder / room).glob("*.yaml"))
    for file in files:
        short = file.relative_to(folder).as_posix()
        for number, line in enumerate(file.read_text("utf-8").splitlines(), start=1):
            for words in _sayings(line):
                found.setdefault(words, f"{short}, line {number}")
    return found


def _sayings(line: str) -> tuple[str, ...]:
    """A line's own words: after its dash, and after its key."""
    bare = line.strip().removeprefix("- ")
    if bare.startswith("#") or " " not in bare:
        return ()
    value = bare.partition(": ")[2]
    return tuple(words.strip('"') for words in (bare, value) if " " in words)
