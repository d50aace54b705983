"""Weighs an answer by its words: how far, all together, they speak for a warning sign.

Law: a second opinion beside the patterns, never a value. It may have something asked that no
pattern knows, may turn a question into a stop and a stop into a question; it never silences.
Denied words count apart from the same words said plainly. The points were learned from our own
labelled answers by `tests/hearing/find_points.py`, the limits were set here; both wait for a
clinician's signature.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from coach.hearing.points_table import START, TABLE

if TYPE_CHECKING:
    from collections.abc import Container, Sequence

    from coach.hearing.scope import Scopes
    from coach.hearing.words import Word

TENTHS: Final = 10.0
ASK_OVER: Final = 0.8  # a note that no pattern knows is asked about over this
ASK_OVER_ELSEWHERE: Final = 1.0  # an answer to another question over this
STOP_OVER: Final = 2.2  # a weak mention of one's own, here and now, stops over this
DOUBT_UNDER: Final = -1.0  # a clear sign in words that speak this much against it is asked about
DOUBT_ONE_UNDER: Final = 0.5  # a clear sign that one pattern alone hears is asked about under this
FEWEST: Final = 4  # words; shorter answers are left to the patterns
FEWEST_TO_STOP: Final = 6  # words; a weak mention in fewer is only asked about
SAYING: Final = "a-saying"  # weighed in place of the words of an everyday saying
_PLACING: Final = frozenset(("FILLER", "PRON", "IT", "BODY"))
_POINTS: dict[str, int] = {}  # read from the table on first need


def points() -> dict[str, int]:
    """The points of each word and family, in tenths; `no:` before it when it is denied."""
    if not _POINTS:
        for line in TABLE.split("\n"):
            value, _, names = line.partition(" ")
            for name in names.split():
                _POINTS[name] = int(value)
    return _POINTS


def marks_of(words: Sequence[Word], scopes: Scopes, taken: Container[int]) -> set[str]:
    """What is weighed: each word and its families, marked where denied; none of a saying's."""
    out: set[str] = set()
    for place, word in enumerate(words):
        if place in taken:
            out.add(SAYING)
            continue
        before = "no:" if scopes.denied_by[place] >= 0 else ""
        out.add(before + ("#" if word.text[0].isdigit() else word.text))
        out |= {before + key for key in word.keys if key.isupper() and key not in _PLACING}
    return out


def weight(words: Sequence[Word], scopes: Scopes, taken: Container[int]) -> float:
    """How far the words speak for a sign: above 0 for, below 0 against."""
    known = points()
    found = [known[mark] for mark in marks_of(words, scopes, taken) if mark in known]
    return (START + sum(found) / math.sqrt(len(found) + 1)) / TENTHS
