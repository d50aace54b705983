"""A turn's lines as rows for a screen: values put in, cleaned, wrapped for eyes or said for ears.

Law: the words are the session's own; nothing is added, left out or abbreviated here. A number stays
with its unit, a side with its arm, a phone number whole, at any width.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.drivers.cleaned import cleaned, width_of
from coach.session.questions import QUESTIONS

if TYPE_CHECKING:
    from collections.abc import Mapping

    from coach.model.heard import Value
    from coach.model.turns import Line

WIDEST: Final = 80  # columns used at most, less one
NARROWEST: Final = 40
NOT_CLEAR: Final = "not clear"

_TOKEN: Final = re.compile(r"\{([a-z][a-z ]*)\}")
_JOIN: Final = "\ue000"  # stands for a blank that no line may break at; never shown
_NUMBER: Final = r"[0-9]+(?:\.[0-9]+)?"
_UNITS: Final = (
    "s|min|h|kg|lb|g|m|ft|cm|years|reps?|holds?|sets?|exercises?|minutes?|seconds?|hours?|"
    "kilograms?|pounds?|meters?|throws?|days?|weeks?"
)
_WHOLE: Final = tuple(
    re.compile(pattern)
    for pattern in (
        r"\+?[0-9]{2,}(?: [0-9]{2,})+",  # a phone number
        rf"{_NUMBER} (?:of|to) {_NUMBER}(?: (?:{_UNITS})\b)?",
        rf"{_NUMBER} (?:{_UNITS})\b",
        r"\b(?:[Ll]eft|[Rr]ight) arm\b",
        r"\b(?:[Ss]et|[Hh]old|[Ee]xercise|[Ll]ine|[Cc]ode|[Ss]tep) [A-Z]?[0-9]+",
        r"\b(?:[A-Z]\. ?)+[A-Z][a-z]+",  # M. Aalto
        r"\b(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) [0-9]{1,2} [A-Z][a-z]{2}\b",
    )
)
_SPOKEN: Final = {
    "s": "second",
    "kg": "kilogram",
    "lb": "pound",
    "min": "minute",
    "h": "hour",
    "m": "meter",
}
_SAID: Final = re.compile(rf"({_NUMBER}) ({'|'.join(_SPOKEN)})\b(?!')")
_THINGS: Final = (" dumbbell", " ball", " band")  # a `2 pound dumbbell` has no s
_SENTENCE_ENDS: Final = re.compile(r"(?<=[^A-Z][.?!]) (?=[A-Z])")
_TYPOGRAPHY: Final = str.maketrans(
    {"\u2019": "'", "\u2018": "'", "\u201c": '"', "\u201d": '"', "\u2013": ",", "\u2014": ","}
)


class Row(NamedTuple):
    """One row of a screen and the kind of line it belongs to (as in `Line.kind`)."""

    kind: str
    text: str


# ---------------------------------------------------------------- values into sentences


def filled(line: Line, answers: Mapping[str, Value]) -> Line:
    """The line with each `{fact}` replaced by its answer, in one pass.

    A fact that was asked and stayed unclear reads `not clear`; what names no fact stays as it is.
    """
    text = _filled(line.text, answers)
    return line._replace(text=text, parts=tuple(_filled(part, answers) for part in line.parts))


def _filled(text: str, answers: Mapping[str, Value]) -> str:
    def value(found: re.Match[str]) -> str:
        fact = found.group(1)
        if fact in answers:
            return spelled(answers[fact])
        return NOT_CLEAR if fact in QUESTIONS else found.group(0)

    return _TOKEN.sub(value, text)


def spelled(value: Value) -> str:
    """A value as it is read: 1.0 is `1`, several choices stand with commas."""
    if isinstance(value, str):
        return value
    return f"{value:g}" if isinstance(value, int | float) else ", ".join(value)


# ---------------------------------------------------------------- for the eyes


def columns(window: int) -> int:
    """Columns that a row may fill in a window: one less than the window, at most 79."""
    return max(NARROWEST, min(window, WIDEST)) - 1


def for_eyes(lines: tuple[Line, ...], window: int) -> list[Row]:
    """Rows of the lines in a window of so many columns; a heading has an empty row above it."""
    rows: list[Row] = []
    for line in lines:
        if line.kind == "name":
            rows.append(Row("gap", ""))
        rows += [Row(line.kind, row) for row in wrapped(cleaned(line.text), window)]
    return rows


def wrapped(text: str, window: int, indent: int = 0) -> list[str]:
    """`text` (cleaned) in rows with room for an indent; a word longer than a row is cut, else none."""
    room = max(1, columns(window) - indent)
    rows: list[str] = []
    row = ""
    for word in kept_whole(text).split(" "):
        if row and width_of(row) + 1 + width_of(word) > room:
            rows.append(row)
            row = ""
        row = f"{row} {word}" if row else word
        while width_of(row) > room:
            head = _head(row, room)
            rows.append(head)
            row = row[len(head) :]
    return [done.replace(_JOIN, " ") for done in (*rows, row)]


def kept_whole(text: str) -> str:
    """`text` with the blanks inside what must not be parted marked as no place to break."""
    for pattern in _WHOLE:
        text = pattern.sub(lambda found: found.group(0).replace(" ", _JOIN), text)
    return text


def _head(word: str, room: int) -> str:
    """As many letters of a very long word as fit one row."""
    head = word[:room]
    while width_of(head) > room:
        head = head[:-1]
    return head


# ---------------------------------------------------------------- for the ear


def for_ears(lines: tuple[Line, ...], window: int) -> list[Row]:
    """Rows with one fact each, units as words. What a person typed is left as typed."""
    rows: list[Row] = []
    for line in lines:
        for fact in facts_of(line):
            rows += [Row(line.kind, row) for row in wrapped(fact, window)]
    return rows


def facts_of(line: Line) -> list[str]:
    """The facts of a line, one sentence each, cleaned and spoken."""
    if line.kind == "quote":
        return [cleaned(line.text)]
    return [
        spoken(cleaned(sentence))
        for part in (line.parts or (line.text,))
        for sentence in sentences(part)
    ]


def sentences(text: str) -> list[str]:
    """`text` cut after each sentence; the dot of a capital (D.O., M. Aalto) ends none."""
    return _SENTENCE_ENDS.split(text)


def spoken(text: str) -> str:
    """Units as words: `60 s` is `60 seconds`, `1 kg` is `1 kilogram`."""
    return _SAID.sub(_amount, text).translate(_TYPOGRAPHY)


def _amount(found: re.Match[str]) -> str:
    number, word = found.group(1), _SPOKEN[found.group(2)]
    single = number == "1" or found.string.startswith(_THINGS, found.end())
    return f"{number} {word}" if single else f"{number} {word}s"
