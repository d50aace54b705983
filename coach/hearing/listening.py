"""One answer being listened to: what was found in it so far, each thing looked for once.

Law: holds only what the words and the lexicon give; decides nothing.
"""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from coach.hearing.patterns import Match, matches
from coach.hearing.scope import Scopes, scopes_of

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from coach.hearing.lexicon import Lexicon
    from coach.hearing.words import Word


class Listening:
    """An answer's words beside the lexicon, with what both give, found on first need."""

    def __init__(self, words: Sequence[Word], lexicon: Lexicon) -> None:
        self.words = words
        self.lexicon = lexicon

    def holding(
        self, found: Sequence[Match], sayings: Mapping[int, int] | None = None
    ) -> Listening:
        """The same words with what was found in them given, so that it is not looked for again."""
        other = Listening(self.words, self.lexicon)
        other.__dict__["found"] = list(found)
        other.__dict__["sayings"] = self.sayings if sayings is None else sayings
        return other

    @cached_property
    def found(self) -> list[Match]:
        """Every fit of every sign's pattern."""
        return matches(self.words, self.lexicon.signs)

    @cached_property
    def sayings(self) -> Mapping[int, int]:
        """The places taken by everyday phrases, with the length of the longest one there."""
        out: dict[int, int] = {}
        for match in matches(self.words, self.lexicon.harmless, close=True):
            for place in match.at:
                out[place] = max(out.get(place, 0), len(match.at))
        return out

    @cached_property
    def scopes(self) -> Scopes:
        """The reach of every denial and the bounds of every clause."""
        return scopes_of(self.words)
