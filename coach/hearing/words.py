"""Cuts typed text into words, each with its place, its spelling and the families it belongs to.

Law: a word keeps the place it had in the text, so that a reason can show what was typed. A word
that is a real English word is never turned into another one; what was guessed is marked as
guessed. Never raises, whatever the bytes.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.hearing.respell import respelt

if TYPE_CHECKING:
    from collections.abc import Mapping

# letters with inner apostrophes, a number with inner . , or :, a vulgar fraction, `w/o`, `&`
_WORD: Final = re.compile(
    r"[½¼¾⅓⅔⅛]|w/o?(?![a-z])|[^\W\d_½¼¾⅓⅔⅛]+(?:'[^\W\d_½¼¾⅓⅔⅛]+)*|\d+(?:[.,:]\d+)*|[.]\d+|&"
)
_QUOTES: Final = str.maketrans("\u2019\u2018\u02bc`\u00b4", "'''''")  # noqa: RUF001, RUF100
_FULL_STOP: Final = re.compile(r"[.!?;\n\r\u2014\u2013\u2026()\[\]|*]|\s[-~]+\s|--")
_LONGEST: Final = 24  # longer runs of letters are no English word (set here)

# "could not" is read as "couldnt"
_NOT_AFTER: Final = {
    "can": "cant", "could": "couldnt", "do": "dont", "does": "doesnt", "did": "didnt",
    "will": "wont", "would": "wouldnt", "has": "hasnt", "have": "havent", "is": "isnt",
    "was": "wasnt", "are": "arent", "were": "werent", "had": "hadnt",
}  # fmt: skip
# the last word of "could not", "can no longer", "not able to": read as one denial
_JOINS: Final = frozenset(("not", "longer", "to"))
SENTENCE: Final = 2
COMMA: Final = 1


class Word(NamedTuple):
    """One word as typed.

    `text` is the spelling it is read as; `start` and `end` its place in the answer; `before` what
    stood between it and the word before; `pause` 0 none, 1 a comma or colon, 2 a sentence end;
    `guessed` is true when `text` was reached only through a misspelling; `keys` are `text` and
    the names of the word families it belongs to.
    """

    text: str
    start: int
    end: int
    before: str
    pause: int
    guessed: bool
    keys: frozenset[str]


def _joined(out: list[Word], raw: str) -> tuple[str, int, str] | None:
    """The denial that `raw` ends, its start and what stood before it; its words leave `out`."""
    last = out[-1].text
    before_last = out[-2].text if len(out) > 1 else ""
    if raw == "not" and last in _NOT_AFTER:
        count, joined = 1, _NOT_AFTER[last]
    elif raw == "longer" and last == "no" and before_last in ("can", "could"):
        count, joined = 2, _NOT_AFTER[before_last]
    elif raw == "to" and last == "unable":
        count, joined = 1, "cant"
    elif raw == "to" and last == "able":
        count = 3 if before_last in ("been", "be") and len(out) > 2 else 2  # noqa: PLR2004
        if len(out) < count or out[-count].text not in _NOT_ABLE:
            return None
        joined = "cant"
    else:
        return None
    first = out[-count]
    del out[-count:]
    return joined, first.start, first.before


_NOBODYS: Final = frozenset(("nothing's", "nobody's", "none's"))
_NOT_ABLE: Final = frozenset(
    "not isnt wasnt arent werent aint never havent hasnt hadnt wont".split()
)


def lowered(text: str) -> str:
    """`text` in small letters, of the same length, with one kind of apostrophe."""
    low = text.lower()
    if len(low) != len(text):
        low = "".join(c.lower() if len(c.lower()) == 1 else c for c in text)
    return low.translate(_QUOTES)


def _pause(before: str) -> int:
    if before in ("", " "):
        return 0
    if _FULL_STOP.search(before):
        return SENTENCE
    return COMMA if "," in before or ":" in before else 0


def _number_keys(raw: str) -> frozenset[str]:
    """A number's families: `NUM`, and `FEVERISH` from 38 C or 100.4 F (rule stop.ill).

    `FEVER_F` can only be degrees Fahrenheit; `FEVER_C` has the decimal that only a thermometer gives.
    """
    if not raw[0].isdecimal():
        return frozenset((raw,))
    try:
        value = float(raw.replace(",", "."))
    except ValueError:
        return frozenset((raw, "NUM"))
    hot = 38 <= value <= 42.5 or 100.4 <= value <= 107  # noqa: PLR2004
    keys = {raw, "NUM"} | ({"FEVERISH"} if hot else set())
    if hot and value >= 100.4:  # noqa: PLR2004
        keys.add("FEVER_F")
    elif hot and len(raw) == len("38.7"):
        keys.add("FEVER_C")
    return frozenset(keys)


def words_of(text: str, families: Mapping[str, frozenset[str]]) -> list[Word]:
    """The words of `text` in order; `families` maps a spelling to its keys."""
    low = lowered(text)
    out: list[Word] = []
    last = 0
    for found in _WORD.finditer(low):
        start, end = found.span()
        before = low[last:start]
        raw = found.group()
        if raw.endswith("'s") and ("BODY" in families.get(raw[:-2], ()) or raw in _NOBODYS):
            raw = raw[:-2]  # "my arm's gone numb", "nothing's wrong"
        raw = raw.replace("'", "")
        if before == " " and out and raw in _JOINS:
            joined = _joined(out, raw)
            if joined is not None:
                raw, start, before = joined
        known = families.get(raw)
        if known is not None and raw[0].isdecimal():
            known |= _number_keys(raw)
        if known is not None:
            out.append(Word(raw, start, end, before, _pause(before), False, known))
        elif raw[0].isalpha() and len(raw) <= _LONGEST:
            _add_unknown(out, raw, (start, end), before, families)
        else:
            out.append(Word(raw, start, end, before, _pause(before), False, _number_keys(raw)))
        last = end
    return out


def _add_unknown(
    out: list[Word],
    raw: str,
    place: tuple[int, int],
    before: str,
    families: Mapping[str, frozenset[str]],
) -> None:
    spelt, guessed = respelt(raw, families)
    start, end = place
    pause = _pause(before)
    for part in spelt:
        keys = families.get(part) or frozenset((part,))
        out.append(Word(part, start, end, before, pause, guessed, keys))
        before, pause = " ", 0
