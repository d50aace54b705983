"""Puts the weight of an answer's words beside what the patterns heard in it.

Law (rule stop.listen): what the patterns heard stays at least a question; a hedged, past,
misspelt or explained mention is never made a stop; what was heard and denied is left. A question
is all that words without any pattern can lead to. The limits are in `points`, set here.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.hearing import points
from coach.hearing.ordinary import group_of
from coach.hearing.scope import Reading
from coach.hearing.scope_words import CONTRAST, CURRENT, DENIERS
from coach.hearing.signs import Sign
from coach.model.flags import Group
from coach.model.heard import Kind, Span

if TYPE_CHECKING:
    from coach.hearing.listening import Listening

# answers in sentences; a name, a number or a list has no words to weigh
_TOLD: Final = frozenset(
    (Kind.OWN_WORDS, Kind.YES_NO, Kind.SET_FEEL, Kind.PAIN_NOW, Kind.WORST_PAIN,
     Kind.SLEEP_HOURS, Kind.THROWING, Kind.LINE, Kind.SAFETY_YES_NO)
)  # fmt: skip
# one plain question is the rule there (stop.listen), and a stop is never doubted
_NEVER_CHANGED: Final = frozenset((Group.SELF_HARM,))
# beside these words the sense was settled by `scope`, and what stands around weighs nothing
_TURNING: Final = DENIERS | CONTRAST | CURRENT


def weighed(kind: Kind, heard: Listening, sign: Sign | None) -> Sign | None:
    """`sign` made a stop, a question, or left as it is; a question for what no pattern knows."""
    words = heard.words
    if kind not in _TOLD or len(words) < points.FEWEST:
        return sign
    if sign is None and heard.found:
        return None  # it was heard, and is denied, another's, only asked about or a saying
    weight = points.weight(words, heard.scopes, heard.sayings)
    if sign is None:
        limit = points.ASK_OVER if kind == Kind.OWN_WORDS else points.ASK_OVER_ELSEWHERE
        return _asked(heard) if weight > limit else None
    if sign.group in _NEVER_CHANGED:
        return sign
    if sign.clear:
        turned = any(word.text in _TURNING for word in words)
        return sign._replace(clear=turned or weight >= points.DOUBT_UNDER)
    return sign._replace(clear=sign.firm and weight > points.STOP_OVER)


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
    return Sign(group, None, clear=False, reading=Reading.UNSURE, spans=(span,), weak=True)
