"""Puts the weight of an answer's words beside what the patterns heard in it.

Law (rule stop.listen): what the patterns heard stays at least a question; a hedged, past,
misspelt or explained mention is never made a stop; what was heard and denied is left. A question
is all that words without any pattern can lead to. The limits are in `points`, set here.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.hearing import points
from coach.hearing.ordinary import group_of
from coach.hearing.scope_words import CONTRAST, CURRENT, DENIERS
from coach.hearing.signs import Sign, unnamed_sign
from coach.model.flags import Group
from coach.model.heard import Kind, Span

if TYPE_CHECKING:
    from collections.abc import Sequence

    from coach.hearing.listening import Listening
    from coach.hearing.words import Word

# answers in sentences; a name, a number or a list has no words to weigh
_TOLD: Final = frozenset(
    (Kind.OWN_WORDS, Kind.YES_NO, Kind.SET_FEEL, Kind.PAIN_NOW, Kind.WORST_PAIN,
     Kind.SLEEP_HOURS, Kind.THROWING, Kind.LINE, Kind.SAFETY_YES_NO)
)  # fmt: skip
# one plain question is the rule there (stop.listen), and a stop is never doubted
_NEVER_CHANGED: Final = frozenset((Group.SELF_HARM,))


# a sign of these may be an emergency: one pattern is enough
_URGENT: Final = frozenset(
    (Group.CHEST_BREATH, Group.FAINT_HEART, Group.STROKE_SIGNS, Group.CORD_SIGNS)
)


def weighed(kind: Kind, heard: Listening, sign: Sign | None) -> Sign | None:
    """`sign` made a stop, a question, or left as it is; a question for what no pattern knows."""
    words = heard.words
    if kind not in _TOLD or len(words) < points.FEWEST:
        return sign
    if sign is None and heard.found:
        return None  # it was heard, and is denied, another's, only asked about or a saying
    sayings = () if sign is not None and sign.clear else heard.sayings
    weight = points.weight(words, heard.scopes, sayings)
    if sign is None:
        limit = points.ASK_OVER if kind == Kind.OWN_WORDS else points.ASK_OVER_ELSEWHERE
        return _asked(heard) if weight > limit else None
    if sign.group in _NEVER_CHANGED:
        return sign
    if sign.clear:
        return sign._replace(clear=not _doubted(words, sign, weight))
    enough = len(words) >= points.FEWEST_TO_STOP and weight > points.STOP_OVER
    return sign._replace(clear=sign.firm and enough)


# beside these the sign is told as there and now, or as one more
_SETTLING: Final = CURRENT | {"too", "also", "plus"}


def _doubted(words: Sequence[Word], sign: Sign, weight: float) -> bool:
    """Whether the words around a clear sign speak so much against it that it is asked about.

    Never beside "now", "still", "again"; beside a "no" or a "but" only where they speak much against.
    """
    said = {word.text for word in words}
    if said & _SETTLING:
        return False
    if said & (DENIERS | CONTRAST):
        return sign.patterns == 1 and weight < points.DOUBT_UNDER
    alone = sign.patterns == 1 and not sign.sure and sign.group not in _URGENT
    return weight < (points.DOUBT_ONE_UNDER if alone else points.DOUBT_UNDER)


def _asked(heard: Listening) -> Sign:
    """A question about the words that speak most for a sign."""
    known, words = points.points(), heard.words

    def speaks(place: int) -> int:
        if heard.scopes.denied_by[place] >= 0 or place in heard.sayings:
            return -1
        return max((known.get(key, 0) for key in words[place].keys), default=0)

    place = max(range(len(words)), key=speaks)
    group = group_of(words, place)
    span = Span(words[place].start, words[place].end, group.value)
    return unnamed_sign(group, span)
