"""Gathers what an athlete reads out of the program files, with its place and its kind."""

from collections.abc import Iterator
from typing import NamedTuple

import yaml

from tests.house.modules import ROOT

DIALOGS = ROOT / "dialogs"
SPOKEN_KEYS = {"tell", "words", "cues", "set-up", "felt as", "put right", "fits"}
UNSPOKEN_KEYS = {"note", "about", "written by", "clinician sees", "reason"}


class Spoken(NamedTuple):
    """One text for the athlete: file, the key it stands under, and the words."""

    place: str
    key: str
    text: str


def spoken() -> list[Spoken]:
    """Every text for the athlete in `dialogs/`, in the order of files and lines."""
    found: list[Spoken] = []
    for path in sorted(DIALOGS.rglob("*.yaml")):
        page = yaml.load(path.read_text("utf-8"), Loader=yaml.BaseLoader)  # noqa: S506 - makes texts only
        place = path.relative_to(ROOT).as_posix()
        found += [Spoken(place, key, text) for key, text in below("", page)]
    return found


def below(key: str, node: object) -> Iterator[tuple[str, str]]:
    """Key and text of every sentence below a node; a range step's sentence stands under `range`."""
    if isinstance(node, dict):
        for name, part in node.items():
            if name not in UNSPOKEN_KEYS:
                inside_range = key == "range" and isinstance(part, str)
                yield from below(key if inside_range else name, part)
    elif isinstance(node, list):
        for part in node:
            yield from below(key, part)
    elif isinstance(node, str) and is_spoken(key, node):
        yield key, node


def is_spoken(key: str, text: str) -> bool:
    """Whether a text is a sentence for the athlete; a plan's range line is a dose, no sentence."""
    return key in SPOKEN_KEYS or (key == "range" and text.endswith("."))
