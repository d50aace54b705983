"""Weighs an answer by its words and pairs of words: how far they speak for a warning sign.

Law: a second opinion beside the patterns, never a value; what it may change is told in `weighing`.
Denied words count apart from the same words said plainly. The points were learned from
our own labelled answers by `tests/hearing/find_points.py`, the limits were set here; both wait for
a clinician's signature.
"""

from __future__ import annotations

import math
from functools import lru_cache
from typing import TYPE_CHECKING, Final

from coach.hearing import points_1, points_2, points_3, points_4, points_5, points_6, points_7

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from coach.hearing.scope import Scopes
    from coach.hearing.words import Word

TENTHS: Final = 10.0
STRETCH: Final = 24  # words weighed together; what is longer is weighed a stretch at a time
START: Final = "="  # the name, in the table, of what every answer begins with
TABLES: Final = (points_1, points_2, points_3, points_4, points_5, points_6, points_7)
ENDS: Final = ("^", "$")
_PLACING: Final = frozenset(("FILLER", "PRON", "IT", "BODY"))
_POINTS: dict[str, int] = {}  # read from the tables on first need


def points() -> dict[str, int]:
    """The points of each word, family, and pair of them, in tenths.

    `no:` stands before what is denied, `_` between the two of a pair, `^` and `$` for the ends.
    """
    if not _POINTS:
        for part in TABLES:
            _read(part.TABLE)
    return _POINTS


def _read(table: str) -> None:
    """One file's lines: a first word, then values, each before the second words that have it."""
    for line in table.splitlines():
        first, *rest = line.split()
        value = 0
        for item in rest:
            if item[-1].isdecimal():
                value = int(item)
            else:
                _POINTS[first if item == "." else f"{first}_{item}"] = value


@lru_cache(maxsize=4096)
def _families(keys: frozenset[str]) -> tuple[str, ...]:
    return tuple(sorted(key for key in keys if key.isupper() and key not in _PLACING))


def marks_of(words: Sequence[Word], scopes: Scopes, places: range) -> set[str]:
    """What is weighed: each word with its families, and each with the one before it.

    Filler words ("really", "my") count alone, and are passed over between two of a pair.
    """
    out: set[str] = set()
    last = ENDS[0]
    last_families: tuple[str, ...] = ()
    last_denied = False
    for place in places:
        word = words[place]
        text = "#" if word.text[0].isdigit() else word.text
        families = _families(word.keys) if len(word.keys) > 1 else ()
        denied = scopes.denied_by[place] >= 0
        before = "no:" if denied else ""
        out.add(before + text)
        for family in families:
            out.add(before + family)
        if "FILLER" in word.keys:
            continue
        before = "no:" if denied or last_denied else ""
        out.add(f"{before}{last}_{text}")
        for family in families:
            out.add(f"{before}{last}_{family}")
        for family in last_families:
            out.add(f"{before}{family}_{text}")
        last, last_families, last_denied = text, families, denied
    before = "no:" if last_denied else ""
    out.add(f"{before}{last}_{ENDS[1]}")
    for family in last_families:
        out.add(f"{before}{family}_{ENDS[1]}")
    return out


def weight(words: Sequence[Word], scopes: Scopes, places: range) -> float:
    """How far the words at `places` speak for a sign: above 0 for, below 0 against."""
    known = points()
    found = [known[mark] for mark in marks_of(words, scopes, places) if mark in known]
    return (known[START] + sum(found) / math.sqrt(len(found) + 1)) / TENTHS


def stretches(words: Sequence[Word], scopes: Scopes) -> Iterator[range]:
    """The parts of an answer that are weighed together: whole sentences of up to `STRETCH` words."""
    start = 0
    for place in range(1, len(words) + 1):
        over = place - start >= STRETCH
        if place == len(words) or (over and _may_part(scopes, place, start)):
            yield range(start, place)
            start = place


def _may_part(scopes: Scopes, place: int, start: int) -> bool:
    """Whether a stretch may end before `place`: at a clause's end, or where it is twice too long."""
    ends = scopes.clause[place] != scopes.clause[place - 1]
    return ends or place - start >= 2 * STRETCH
