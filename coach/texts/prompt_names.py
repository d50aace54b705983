"""The names by which a scenario or a course may call a prompt: the coach's, and the program's own.

Law: a name that no prompt of the program can ever have is a finding, for what is typed there would
wait for ever. Where the program cannot be found, nothing is said.
"""

from __future__ import annotations

import re
from pathlib import Path
from typing import Final, NamedTuple

from coach.model.flags import Section
from coach.model.scenario import Typing
from coach.texts import facts, shelf
from coach.texts.margin import Margin, did_you_mean, near_line
from coach.texts.yaml_lines import read_page

# What is asked beside the questions of the scripts: on opening, after a break, to confirm, to mend.
BESIDE: Final = (
    "plan is mine",
    "guardian here",
    "moves or later",
    "nothing here",
    "pain before change",
    "sets since",
    "worse since",
    "which to fix",
    "stop for today",
    "what is worse",
    "heard right",
    "read back",
    "pain in throwing",
    "sharp or deep",
    "pitches before",
    "pitches yesterday",
    "pitches today",
    "innings caught today",
    "go",
    "paused",
    # several questions on one line
    "screen",
    "check-in",
    "close",
)
COACHS: Final = (
    *(fact.name for asks in facts.ASKS.values() for fact in asks),
    *facts.SAME_ASK,
    *(f"screen {section}" for section in Section),
    *facts.FLAG_NAMES,
    *BESIDE,
)
_IN_SET: Final = re.compile(r"(.+) in set [1-9][0-9]? of (.+)")
_TIMED: Final = re.compile(r"(?:go for hold [1-9][0-9]? in|rest after) set [1-9][0-9]? of (.+)")
_OWN: Final = re.compile(r"\s*- ask also: (.+)")
_SET_LINE: Final = "set line"


class Known(NamedTuple):
    """What the programs of a scenario add: exercises and own questions."""

    exercises: frozenset[str]
    own: frozenset[str]


def known_in(folders: set[Path]) -> Known | None:
    """The names in these programs' folders, as they stand in their files; None without a folder."""
    if not folders:
        return None
    exercises = {
        shelf.says(file, "exercise")
        for folder in folders
        for file in (folder / "exercises").glob("*.yaml")
    }
    own = {
        found.group(1).strip()
        for folder in folders
        for file in (folder / "scripts").glob("*.yaml")
        for line in _lines_of(file)
        if (found := _OWN.fullmatch(line))
    }
    return Known(frozenset(exercises), frozenset(own))


def _lines_of(file: Path) -> tuple[str, ...]:
    page = read_page(file, file.name, Margin())
    return page.lines if page else ()


def check_prompts(typed: tuple[Typing, ...], known: Known | None, margin: Margin) -> None:
    """Note every name that no prompt can have."""
    for one in typed if known is not None else ():
        if known is not None and not _is_known(one.prompt, known):
            _note_unknown(one, known, margin)


def _note_unknown(one: Typing, known: Known, margin: Margin) -> None:
    """The finding, with the nearest name of the question, else of the exercise."""
    question, tail = _parts(one.prompt)
    in_set = [name.removesuffix(" in set") for name in COACHS if name.endswith(" in set")]
    names = (*in_set, *known.own) if " in set " in one.prompt else (*COACHS, *known.own)
    if question in names or not question:
        wrong, names = tail, tuple(known.exercises)
    else:
        wrong = question
    what = f'No prompt is ever called "{one.prompt}".{did_you_mean(wrong, names)}'
    start = one.prompt.rfind(wrong) if wrong == tail else 0
    place = one.place._replace(column=one.place.column + start)
    margin.note("scenario.prompt", place, what, near_line(margin, place, wrong, names))


def _parts(prompt: str) -> tuple[str, str]:
    """The question's part of a name, and the exercise's; '' where there is none."""
    timed = _TIMED.fullmatch(prompt)
    if timed is not None:
        return "", timed.group(1)
    in_set = _IN_SET.fullmatch(prompt)
    if in_set is not None:
        return in_set.group(1), in_set.group(2)
    question, _, exercise = prompt.partition(" of ")
    return question, exercise


def _is_known(prompt: str, known: Known) -> bool:
    timed = _TIMED.fullmatch(prompt)
    if timed:
        return timed.group(1) in known.exercises
    in_set = _IN_SET.fullmatch(prompt)
    if in_set:
        base, exercise = in_set.groups()
        asked = base in known.own or base == _SET_LINE or f"{base} in set" in COACHS
        return asked and exercise in known.exercises
    if prompt in COACHS or prompt in known.own:
        return True
    base, joined, exercise = prompt.partition(" of ")
    return bool(joined) and base in COACHS and exercise in known.exercises
