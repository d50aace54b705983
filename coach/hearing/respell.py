"""Finds the word meant by a misspelling, or leaves it alone.

Law: words of three letters or fewer must be exact; four to seven letters may be one slip away,
eight or more two (a swap of neighbours is one slip). A real English word is never changed.
Source of the limits: search engines' habit (documentation of two, seen), tried on the 71,743
pairs of a public misspelling list: 86.9 % and 95.6 % of errors fall within them.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.hearing.real_words import real_words
from coach.hearing.spellings import spellings
from coach.hearing.vocabulary import guessable, signs_alone

if TYPE_CHECKING:
    from collections.abc import Mapping

SHORT_NUMBERS: Final = frozenset(
    "one two six ten yes no nope nah yep yup yeah yea sure okay".split()
)
SHORT: Final = 3  # letters that must be exact
MIDDLE: Final = 7  # up to here one slip
_INDEX: dict[str, list[str]] = {}  # a word with letters left out -> words; filled on first need


def slips_allowed(word: str) -> int:
    """How many slips a word of this length may hold: 0, 1 or 2."""
    if len(word) <= SHORT:
        return 0
    return 1 if len(word) <= MIDDLE else 2


def slips_between(left: str, right: str) -> int:
    """Letters wrong, missing, extra or swapped with a neighbour between two words."""
    before: list[int] = []
    row = list(range(len(right) + 1))
    for i, a in enumerate(left, 1):
        older, before, row = before, row, [i]
        for j, b in enumerate(right, 1):
            cost = min(before[j] + 1, row[j - 1] + 1, before[j - 1] + (a != b))
            if i > 1 and j > 1 and a == right[j - 2] and left[i - 2] == b:
                cost = min(cost, older[j - 2] + 1)
            row.append(cost)
    return row[-1]


def _shortened(word: str, slips: int) -> set[str]:
    """`word` and every spelling of it with up to `slips` letters left out."""
    out = {word}
    edge = {word}
    for _ in range(slips):
        edge = {w[:i] + w[i + 1 :] for w in edge for i in range(len(w))}
        out |= edge
    return out


def _index() -> dict[str, list[str]]:
    if not _INDEX:
        for word in guessable():
            for key in _shortened(word, slips_allowed(word)):
                _INDEX.setdefault(key, []).append(word)
    return _INDEX


def nearest(word: str) -> str | None:
    """The known word within the allowed slips of `word`, or None: the closest, then a sign first."""
    if len(word) <= SHORT or word in real_words():
        return None
    index = _index()
    best: tuple[int, bool, bool, str] | None = None
    seen: set[str] = set()
    for key in _shortened(word, slips_allowed(word)):
        for target in index.get(key, ()):
            if target in seen:
                continue
            seen.add(target)
            slips = slips_between(word, target)
            if slips <= min(slips_allowed(target), max(slips_allowed(word), 1)):
                rank = (slips, target not in signs_alone(), word[0] != target[0], target)
                best = rank if best is None or rank < best else best
    return best[3] if best else None


def _squeezed(word: str) -> str:
    """Runs of three or more of a letter cut to two: `soooo`, `swollllen`."""
    out = ""
    for letter in word:
        if not out.endswith(letter * 2):
            out += letter
    return out


def _without_doubles(word: str) -> str:
    return "".join(c for i, c in enumerate(word) if i == 0 or word[i - 1] != c)


def _split(word: str, known: Mapping[str, frozenset[str]]) -> tuple[str, str] | None:
    """Two known words run together, each of three letters or more: `handnumb`."""
    for cut in range(SHORT, len(word) - SHORT + 1):
        if word[:cut] in known and word[cut:] in known:
            return word[:cut], word[cut:]
    return None


def respelt(word: str, known: Mapping[str, frozenset[str]]) -> tuple[tuple[str, ...], bool]:
    """What `word` is read as: its spelling (or the two words run together) and whether guessed."""
    if word in known:
        return (word,), False
    listed = spellings().get(word)
    if listed is not None:
        return tuple(listed.split()), False
    if len(word) <= SHORT or word in real_words() or word in guessable():
        return (word,), False
    guess = nearest(word)
    for shorter in (_squeezed(word), _without_doubles(word)):
        heard = shorter in known or shorter in spellings() or shorter in SHORT_NUMBERS
        if shorter != word and heard and (guess not in signs_alone() or shorter in signs_alone()):
            return tuple(spellings().get(shorter, shorter).split()), False
    if guess is not None:
        return (guess,), True
    return (_split(word, known) or (word,)), False
