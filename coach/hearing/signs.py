"""The warning-sign pass over one answer: which sign, how clear, and which words decided.

Law: a clear sign, one's own and present, stops; one that is past, hedged, feared, misspelt, weak
or explained by a known cause is asked about; one that is denied, another's or only asked about is
left. Never clears anything. Rule stop.listen.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

from coach.hearing.ordinary import group_of, odd_place
from coach.hearing.patterns import Match
from coach.hearing.scope import Reading, Scopes, reading_of
from coach.hearing.softening import Around, around_of, softened
from coach.model.flags import Group
from coach.model.heard import Span

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence

    from coach.hearing.lexicon import Entry
    from coach.hearing.listening import Listening
    from coach.hearing.words import Word

# families that place a sign but do not carry it
_SOFT: Final = frozenset(
    "PART HANDS DIGIT HAND ARM SHOULDER ELBOW IT BE MY PRON KEEP HAVE AGAIN MANY SINCE LOOK THING "
    "HEIGHT ONTO ON GROUND VEHICLE OPPONENT FACE LEG CALF RIBS".split()
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


class Sign(NamedTuple):
    """One warning sign heard: its group, its flag if decided, how clear, and where it stood."""

    group: Group
    flag: str | None
    clear: bool
    reading: Reading
    spans: tuple[Span, ...]
    weak: bool = False  # heard only in words that need a question, however plainly said
    patterns: int = 0  # how many clear patterns heard a clear sign, up to two
    sure: bool = False  # a word carries it that everyday talk hardly lends: "dislocated"
    unnamed: bool = False  # no word names it; the group is only the likeliest
    firm: bool = False  # one's own, here and now, spelt right, without a known cause


def _core(words: Sequence[Word], match: Match) -> tuple[int, ...]:
    core = tuple(place for place in match.at if words[place].keys.isdisjoint(_SOFT))
    return core or match.at[-1:]


def _is_harmless(
    words: Sequence[Word], match: Match, core: Sequence[int], taken: Mapping[int, int]
) -> bool:
    """Whether an everyday phrase holds a word that carries the sign.

    The longer phrase wins; at equal length the sign wins if it names a part of the arm that the
    everyday phrase does not.
    """
    named = any("PART" in words[place].keys and place not in taken for place in match.at)
    least = len(match.at) + (1 if named else 0)
    return any(taken.get(place, 0) >= least for place in core)


_SURE: Final = frozenset(("DISLOCATE", "FEVERISH", "FEVER", "collarbone", "labrum"))
# a weak mention beside a word of these is no sign: "breathing fine", "strength good"
_WELL: Final = frozenset(
    "fine good ok okay normal great strong solid perfect clear better clean dry healed healing closed".split()
)
_NEVER_WELL: Final = frozenset(
    (Group.POP_WITH_LOSS, Group.ELBOW_POP, Group.DISLOCATION_SLIP, Group.TRAUMA_FALL)
)


def _said_well(words: Sequence[Word], scopes: Scopes, core: Sequence[int]) -> bool:
    """Whether the clause of a weak mention says that it is well, undenied."""
    at = core[-1]
    return any(
        words[place].text in _WELL
        and place not in core
        and scopes.clause[place] == scopes.clause[at]
        and scopes.denied_by[place] < 0
        for place in range(max(0, at - 8), min(len(words), at + 9))
    )


def _sign(
    words: Sequence[Word], scopes: Scopes, match: Match, entry: Entry, around: Around
) -> Sign | None:
    core = _core(words, match)
    reading = reading_of(words, scopes, match.at, core)
    if reading == Reading.ASKED and entry.group == Group.SELF_HARM:
        reading = Reading.PRESENT
    if reading <= Reading.ASKED:
        return None
    if not entry.clear and entry.group not in _NEVER_WELL and _said_well(words, scopes, core):
        return None
    guessed = any(words[place].guessed for place in core)
    firm = reading == Reading.PRESENT and not guessed and not softened(words, entry, match, around)
    why = entry.group.value
    spans = tuple(Span(words[place].start, words[place].end, why) for place in match.at)
    weak = not entry.clear
    sure = any(not words[place].keys.isdisjoint(_SURE) for place in match.at)
    clear = firm and not weak
    return Sign(entry.group, entry.flag, clear, reading, spans, weak, sure=sure, firm=firm)


def _urgency(entry: Entry, match: Match) -> tuple[bool, int, int, int]:
    return not entry.clear, _RANK[entry.group], match.at[0], -len(match.at)


def sign_in(heard: Listening, *, sayings: bool = True, above: Sign | None = None) -> Sign | None:
    """The sign to act on: the first clear one by urgency, else the first to ask about, or None.

    With `sayings` off, a sign counts even where it stands in an everyday saying; with `above`, only
    clear ones of groups more urgent than that sign's are looked at.
    """
    words, entries = heard.words, heard.lexicon.entries
    found = heard.found if above is None else _above(heard, above)
    if not found:
        return None
    around = around_of(words, heard.lexicon)
    clear: Sign | None = None
    clear_by: set[str] = set()
    unclear: list[tuple[bool, int, int, Sign]] = []
    for match in sorted(found, key=lambda m: _urgency(entries[m.owner], m)):
        entry = entries[match.owner]
        new_group = clear is not None and entry.group != clear.group
        if clear is not None and (not entry.clear or (new_group and len(clear_by) > 1)):
            break
        if sayings and _is_harmless(words, match, _core(words, match), heard.sayings):
            continue
        sign = _sign(words, heard.scopes, match, entry, around)
        if sign is not None and sign.clear:
            clear_by.add(match.text)
            if not new_group:
                clear = sign if clear is None else _more_urgent(clear, sign)
        elif sign is not None:
            unclear.append((sign.weak, _RANK[sign.group], match.at[0], sign))
    if clear is not None:
        return clear._replace(patterns=min(len(clear_by), 2))
    return min(unclear, key=lambda u: u[:3])[3] if unclear else None


def _above(heard: Listening, sign: Sign) -> list[Match]:
    """What was found of clear patterns of groups more urgent than that of `sign`."""
    entries, rank = heard.lexicon.entries, _RANK[sign.group]
    return [
        m for m in heard.found if entries[m.owner].clear and _RANK[entries[m.owner].group] < rank
    ]


def most_urgent(signs: Iterable[Sign | None]) -> Sign | None:
    """Of the signs of an answer's parts the one to act on: a clear one first, a named one next."""
    heard = [sign for sign in signs if sign is not None]
    order = [(not s.clear, s.unnamed, s.weak, _RANK[s.group]) for s in heard]
    return heard[order.index(min(order))] if heard else None


def only_in_sayings(heard: Listening) -> bool:
    """Whether every sign that was found stands in an everyday saying; true when none was found."""
    words = heard.words
    return all(_is_harmless(words, m, _core(words, m), heard.sayings) for m in heard.found)


def odd_talk(heard: Listening) -> Sign | None:
    """A sign to ask about when a note tells something unknown of the arm, else None."""
    words = heard.words
    if odd_place(words, ()) is None:
        return None
    place = odd_place(words, heard.sayings)
    if place is None:
        return None
    if not only_in_sayings(heard):
        return None  # it was heard, and is denied, another's or only asked about
    reading = reading_of(words, heard.scopes, (place,), (place,))
    if heard.scopes.denied_by[place] >= 0 or reading <= Reading.OVER:
        return None
    group = group_of(words, place)
    span = Span(words[place].start, words[place].end, group.value)
    return unnamed_sign(group, span)


def unnamed_sign(group: Group, span: Span) -> Sign:
    """A sign to ask about openly, since no word names it."""
    return Sign(
        group, None, clear=False, reading=Reading.UNSURE, spans=(span,), weak=True, unnamed=True
    )


def _more_urgent(one: Sign, other: Sign) -> Sign:
    """`one`, with the flag of `other` where that is of a more urgent tier (E before S before B)."""
    if other.flag and "ESB".index(other.flag[0]) < ("ESB".index(one.flag[0]) if one.flag else 3):
        return one._replace(flag=other.flag)
    return one
