"""The warning-sign pass over one answer: which sign, how clear, and which words decided.

Law: a clear sign, one's own and present, stops; one that is past, hedged, feared, misspelt, weak
or explained by a known cause is asked about; one that is denied, another's or only asked about is
left. Never clears anything. Rule stop.listen.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

from coach.hearing.patterns import Match, matches
from coach.hearing.scope import Reading, Scopes, reading_of, scopes_of
from coach.model.flags import Group
from coach.model.heard import Span

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from coach.hearing.lexicon import Entry, Lexicon
    from coach.hearing.words import Word

# families that place a sign but do not carry it
_SOFT: Final = frozenset(
    "PART HANDS DIGIT HAND ARM SHOULDER ELBOW IT BE MY PRON KEEP HAVE AGAIN MANY SINCE LOOK THING "
    "HEIGHT ONTO ON GROUND VEHICLE OPPONENT FACE CHEST LEG CALF RIBS".split()
)
# of two signs equally clear, the one to report: the more urgent or the more exact first
_ORDER: Final = (
    Group.SELF_HARM,
    Group.STROKE_SIGNS,
    Group.CHEST_BREATH,
    Group.CORD_SIGNS,
    Group.FAINT_HEART,
    Group.ABDOMEN_BLOW,
    Group.LEG_CLOT,
    Group.MANY_JOINTS,
    Group.ELBOW_POP,
    Group.DISLOCATION_SLIP,
    Group.POP_WITH_LOSS,
    Group.DEFORMITY,
    Group.TRAUMA_FALL,
    Group.NUMB_TINGLE,
    Group.WOUND,
    Group.FEVER_INFECTION,
    Group.SWELLING_COLOUR_COLD,
    Group.LOST_MOTION,
    Group.WEAK_DROP,
    Group.WEIGHT_NIGHT_SWEATS,
    Group.NIGHT_PAIN_UNRELENTING,
    Group.PAINKILLERS,
    Group.OVERTIRED,
)
_RANK: Final = {group: place for place, group in enumerate(_ORDER)}
# groups whose sign a known cause (ice, tape, slept on it) or a habit (an old click) softens
_CAUSED: Final = frozenset((Group.NUMB_TINGLE, Group.SWELLING_COLOUR_COLD, Group.STROKE_SIGNS))
_HABITUAL: Final = frozenset(
    (Group.POP_WITH_LOSS, Group.ELBOW_POP, Group.DISLOCATION_SLIP, Group.DEFORMITY)
)
_ELSEWHERE: Final = _CAUSED | _HABITUAL | {Group.WEAK_DROP, Group.NIGHT_PAIN_UNRELENTING}


class Sign(NamedTuple):
    """One warning sign heard: its group, its flag if decided, how clear, and where it stood."""

    group: Group
    flag: str | None
    clear: bool
    reading: Reading
    spans: tuple[Span, ...]


def _core(words: Sequence[Word], match: Match) -> tuple[int, ...]:
    core = tuple(place for place in match.at if words[place].keys.isdisjoint(_SOFT))
    return core or match.at[-1:]


def _harmless_places(words: Sequence[Word], lexicon: Lexicon) -> dict[int, int]:
    """The places taken by everyday phrases, with the length of the longest one there."""
    out: dict[int, int] = {}
    for match in matches(words, lexicon.harmless, close=True):
        for place in match.at:
            out[place] = max(out.get(place, 0), len(match.at))
    return out


def _is_harmless(match: Match, core: Sequence[int], taken: Mapping[int, int]) -> bool:
    """Whether an everyday phrase, as long as the sign or longer, holds a word that carries it."""
    return any(taken.get(place, 0) >= len(match.at) for place in core)


def _softened(words: Sequence[Word], entry: Entry, match: Match, lexicon: Lexicon) -> bool:
    """Whether a known cause, an old habit or another part of the body stands by it."""
    taken = frozenset(match.at)
    causes = matches(words, lexicon.causes) if entry.group in _CAUSED else []
    if any(taken.isdisjoint(cause.at) for cause in causes):
        return True
    if entry.group in _HABITUAL and matches(words, lexicon.habits):
        return True
    if entry.group not in _ELSEWHERE:
        return False
    parts = {key for word in words for key in word.keys & {"PART", "ELSEWHERE"}}
    return parts == {"ELSEWHERE"}


def _sign(words: Sequence[Word], scopes: Scopes, match: Match, lexicon: Lexicon) -> Sign | None:
    entry = lexicon.entries[match.owner]
    core = _core(words, match)
    reading = reading_of(words, scopes, match.at, core)
    if reading == Reading.ASKED and entry.group == Group.SELF_HARM:
        reading = Reading.PRESENT
    if reading <= Reading.ASKED:
        return None
    guessed = any(words[place].guessed for place in core)
    clear = (
        entry.clear
        and reading == Reading.PRESENT
        and not guessed
        and not _softened(words, entry, match, lexicon)
    )
    why = entry.group.value
    spans = tuple(Span(words[place].start, words[place].end, why) for place in match.at)
    return Sign(entry.group, entry.flag, clear, reading, spans)


def signs_in(words: Sequence[Word], lexicon: Lexicon) -> list[Sign]:
    """Every sign heard in `words`, the one to act on first."""
    found = matches(words, lexicon.signs)
    if not found:
        return []
    harmless = _harmless_places(words, lexicon)
    scopes = scopes_of(words)
    signs: list[Sign] = []
    for match in found:
        if not _is_harmless(match, _core(words, match), harmless):
            sign = _sign(words, scopes, match, lexicon)
            if sign is not None:
                signs.append(sign)
    signs.sort(key=lambda s: (not s.clear, _RANK[s.group], s.spans[0].start, -len(s.spans)))
    return signs
