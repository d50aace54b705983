"""Puts the weight of an answer's words beside what the patterns heard in it.

Law (rule stop.listen): what a clear pattern heard stays at least a question, and so does what may
be an emergency; a weak one is left where all words speak strongly against it. A hedged, past,
misspelt or explained mention is never made a stop. A question is all that words without any
pattern can lead to. The limits were set here, on answers whose
results had not been seen; a clinician signs them.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING, Final

from coach.hearing import points
from coach.hearing.ordinary import group_of
from coach.hearing.scope_words import CONTRAST, DENIERS
from coach.hearing.signs import Sign, only_in_sayings, sign_in, unnamed_sign
from coach.model.flags import Group
from coach.model.heard import Kind, Span

if TYPE_CHECKING:
    from coach.hearing.listening import Listening

ASK_OVER: Final = 0.5  # a note that no pattern knows is asked about over this
ASK_OVER_ELSEWHERE: Final = 1.0  # an answer to another question over this
ASK_ODD_OVER: Final = 0.5  # an odd word beside a part of the arm is asked about over this
ASK_SAYING_OVER: Final = 1.0  # a sign heard in words of an everyday saying, over this
TELL_OVER: Final = 2.5  # over this, the everyday saying is no saying: the sign in it counts
ASK_DENIED_OVER: Final = 2.0  # a sign heard as denied, another's or only asked about, over this
LEAVE_UNDER: Final = -3.0  # a weak mention in words that speak this much against it is left
STOP_OVER: Final = 1.3  # a weak mention of one's own, here and now, stops over this
DOUBT_UNDER: Final = -1.0  # a clear sign whose words speak for it no more than this is asked about
DOUBT_ONE_UNDER: Final = 0.0  # the same, where one pattern alone heard it
DOUBT_TURNED_UNDER: Final = -1.5  # the same, beside a "no" or "but", or for a sure emergency
FEWEST: Final = 3  # words; shorter answers are left to the patterns
FEWEST_TO_ASK: Final = 4  # words; fewer that no pattern knows are left
FEWEST_TO_STOP: Final = 4  # words; a weak mention in fewer is only asked about
FEWEST_TO_DOUBT: Final = 4  # words; a clear sign in fewer stops

# answers in sentences; a name, a number or a list has no words to weigh
_TOLD: Final = frozenset(
    (Kind.OWN_WORDS, Kind.YES_NO, Kind.SET_FEEL, Kind.PAIN_NOW, Kind.WORST_PAIN,
     Kind.SLEEP_HOURS, Kind.THROWING, Kind.LINE, Kind.SAFETY_YES_NO)
)  # fmt: skip
# beside these the sign is told as there and now, or as one more
_SETTLING: Final = frozenset(
    "now still again worse back keep keeps constantly too also plus".split()
)
# a denial or a contrast: what the words around speak of may be something else
_TURNING: Final = DENIERS | CONTRAST
# one plain question is the rule there (stop.listen), and a stop is never doubted
_NEVER_CHANGED: Final = frozenset((Group.SELF_HARM,))
# a sign of these may be an emergency: one pattern is enough
_URGENT: Final = frozenset(
    (Group.CHEST_BREATH, Group.FAINT_HEART, Group.STROKE_SIGNS, Group.CORD_SIGNS)
)


def weighed(kind: Kind, heard: Listening, sign: Sign | None) -> Sign | None:
    """`sign` made a stop, a question, or none; a question for what no pattern knows."""
    words = heard.words
    if kind not in _TOLD or len(words) < FEWEST or (sign and sign.group in _NEVER_CHANGED):
        return sign
    if sign is None:
        if len(words) < FEWEST_TO_ASK:
            return None
        return _told_in_a_saying(heard) or _asked(kind, heard)
    weight = points.weight(words, heard.scopes, _around(heard, sign))
    if sign.unnamed:
        odd = weight > ASK_ODD_OVER or len(words) < FEWEST_TO_ASK
        return sign if odd else None
    if sign.clear:
        return sign._replace(clear=weight >= _doubt_under(heard, sign))
    if weight < LEAVE_UNDER and sign.weak and sign.group not in _URGENT:
        return None
    told = kind != Kind.SET_FEEL and len(words) >= FEWEST_TO_STOP  # a set's words tell of its load
    enough = told and weight > STOP_OVER
    return sign._replace(clear=sign.firm and enough)


def _doubt_under(heard: Listening, sign: Sign) -> float:
    """The weight under which a clear sign is asked about instead of stopping.

    Never beside "now", "still", "again"; beside a "no" or a "but" of something else, and where it
    may be an emergency, only where the words speak much against it.
    """
    if len(heard.words) < FEWEST_TO_DOUBT or any(w.text in _SETTLING for w in heard.words):
        return -math.inf
    own = {span.start for span in sign.spans}
    beside = {word.text for word in heard.words if word.start not in own}
    alone = sign.patterns == 1 and not sign.sure
    if beside & _TURNING or (sign.group in _URGENT and not alone):
        return DOUBT_TURNED_UNDER
    return DOUBT_ONE_UNDER if alone and sign.group not in _URGENT else DOUBT_UNDER


def _around(heard: Listening, sign: Sign) -> range:
    """The stretch of the answer that the sign stands in."""
    start = sign.spans[0].start
    found = range(len(heard.words))
    for found in points.stretches(heard.words, heard.scopes):
        if heard.words[found[-1]].end > start:
            break
    return found


def _asked(kind: Kind, heard: Listening) -> Sign | None:
    """A question about the words that speak most for a sign, where they speak enough, or None."""
    words, scopes = heard.words, heard.scopes
    limit = _limit(kind, heard)
    for places in points.stretches(words, scopes):
        if points.weight(words, scopes, places) > limit:
            break
    else:
        return None
    known = points.points()

    def speaks(place: int) -> int:
        if scopes.denied_by[place] >= 0 or place in heard.sayings:
            return -1
        return max((known.get(key, 0) for key in words[place].keys), default=0)

    place = max(places, key=speaks)
    group = group_of(words, place)
    span = Span(words[place].start, words[place].end, group.value)
    return unnamed_sign(group, span)


def _told_in_a_saying(heard: Listening) -> Sign | None:
    """The sign that only an everyday saying hid, where all words speak much for one, or None."""
    if not heard.found or not only_in_sayings(heard):
        return None
    whole = max(
        points.weight(heard.words, heard.scopes, places)
        for places in points.stretches(heard.words, heard.scopes)
    )
    return sign_in(heard, sayings=False) if whole > TELL_OVER else None


def _limit(kind: Kind, heard: Listening) -> float:
    """How much the words of an answer without a sign must speak for one to be asked about."""
    if heard.found:
        return ASK_SAYING_OVER if only_in_sayings(heard) else ASK_DENIED_OVER
    return ASK_OVER if kind == Kind.OWN_WORDS else ASK_OVER_ELSEWHERE
