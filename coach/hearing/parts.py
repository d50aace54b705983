"""Cuts a long answer into the parts that are listened to one by one, as if each were typed alone.

Law: a sign in the middle of a paragraph is heard as it would be heard by itself: what stands far
from it neither softens nor hides it. No cut falls where a "no" still reaches; a phrase that goes
over a cut is listened to in the whole answer. Loses nothing, decides nothing.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.hearing.listening import Listening
from coach.hearing.patterns import Match

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from coach.hearing.scope import Scopes
    from coach.hearing.words import Word

LONG: Final = 24  # words; an answer of more is heard part by part (set here)
FEWEST_WITHIN: Final = 12  # words in a part that ends within one
_JOINING: Final = frozenset("and but then so also plus".split())


def parts_of(heard: Listening) -> tuple[Listening, ...]:
    """The answer itself, or its parts when it is long, with the phrases that go over a cut last."""
    words = heard.words
    if len(words) <= LONG:
        return (heard,)
    ranges = list(_ranges(words, heard.scopes))
    inside: list[list[Match]] = [[] for _ in ranges]
    over: list[Match] = []
    part_at = [number for number, places in enumerate(ranges) for _ in places]
    for match in heard.found:
        first, last = part_at[match.at[0]], part_at[match.at[-1]]
        (inside[first] if first == last else over).append(match)
    parts = [_part(heard, *pair) for pair in zip(ranges, inside, strict=True)]
    return (*parts, heard.holding(over)) if over else tuple(parts)


def _part(heard: Listening, places: range, found: Sequence[Match]) -> Listening:
    start = places.start
    moved = [m._replace(at=tuple(place - start for place in m.at)) for m in found]
    taken = heard.sayings
    sayings = {place - start: taken[place] for place in places if place in taken}
    return Listening(heard.words[start : places.stop], heard.lexicon).holding(moved, sayings)


def _ranges(words: Sequence[Word], scopes: Scopes) -> Iterator[range]:
    start = 0
    for place in range(1, len(words) + 1):
        if place == len(words) or _may_cut(words, scopes, place, place - start):
            yield range(start, place)
            start = place


def _may_cut(words: Sequence[Word], scopes: Scopes, place: int, length: int) -> bool:
    """Whether a part may begin at `place`: after a sentence, or at a clause that no "no" reaches."""
    if scopes.sentence[place] != scopes.sentence[place - 1]:
        return True
    begins = words[place].pause > 0 or words[place].text in _JOINING
    free = scopes.denied_by[place] < 0 and not _goes_on(words, place)
    return length >= FEWEST_WITHIN and begins and free


def _goes_on(words: Sequence[Word], place: int) -> bool:
    """Whether what begins at `place` is the rest of a list or of a turn: "but not", ", or", "now"."""
    return words[place].text in ("or", "nor") or any(
        word.text in ("now", "then", "not", "fine", "gone", "better")
        for word in words[place : place + 3]
    )
