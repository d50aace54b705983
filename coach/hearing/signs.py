"""The warning-sign pass over one answer: which sign, how clear, and which words decided.

Law: a clear sign, one's own and present, stops; one that is past, hedged, feared, misspelt, weak
or explained by a known cause is asked about; one that is denied, another's or only asked about is
left. Never clears anything. Rule stop.listen.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

from coach.hearing.ordinary import group_of, is_odd, odd_place
from coach.hearing.patterns import Match, matches
from coach.hearing.scope import Reading, Scopes, reading_of
from coach.hearing.scope_words import MINE, OTHERS
from coach.model.flags import Group
from coach.model.heard import Span

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from coach.hearing.lexicon import Entry, Lexicon
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
# groups whose sign a known cause (ice, tape, slept on it) or a habit (an old click) softens
_CAUSED: Final = frozenset(
    (Group.NUMB_TINGLE, Group.SWELLING_COLOUR_COLD, Group.STROKE_SIGNS, Group.LEG_CLOT)
)
_HABITUAL: Final = frozenset(
    (Group.POP_WITH_LOSS, Group.ELBOW_POP, Group.DISLOCATION_SLIP, Group.DEFORMITY)
)
_ELSEWHERE: Final = _CAUSED | _HABITUAL | {Group.NIGHT_PAIN_UNRELENTING}


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


class _Around(NamedTuple):
    """What stands anywhere in the answer: known causes, old habits, parts of the body."""

    causes: list[Match]
    exertion: bool
    scoring: bool
    habits: bool
    only_elsewhere: bool
    not_the_arm: bool


def _around(words: Sequence[Word], lexicon: Lexicon) -> _Around:
    keys: set[str] = set().union(*(word.keys for word in words))
    return _Around(
        matches(words, lexicon.causes),
        bool(keys & _EXERTION) or {"leg", "day"} <= keys,
        bool(keys & _SCORING),
        bool(matches(words, lexicon.habits)),
        "ELSEWHERE" in keys and "PART" not in keys,
        "PART" not in keys and any(w.text in _LOW or w.keys >= _LOWER for w in words),
    )


def _softened(words: Sequence[Word], entry: Entry, match: Match, around: _Around) -> bool:
    """Whether a known cause, an old habit or another part of the body stands by it."""
    taken = frozenset(match.at)
    own = set().union(*(words[place].keys for place in match.at))
    if entry.group == Group.TRAUMA_FALL and around.scoring and own.isdisjoint(_STRUCK):
        return True
    if around.exertion and (entry.group == Group.CORD_SIGNS or own & _WORKING):
        return True
    if "VOMIT" in own or ("up" in own and own & _THROWN):
        return around.exertion or not words_free_of(words, _MEALS)
    if len(match.at) == 1 and _describes_other(words, match.at[0]):
        return True
    if "DROOP" in own or (entry.group == Group.STROKE_SIGNS and not around.causes):
        return False
    if entry.group in _CAUSED and any(not taken.issuperset(cause.at) for cause in around.causes):
        return True
    if entry.group in _HABITUAL and around.habits:
        return True
    if entry.group == Group.TRAUMA_FALL and (around.not_the_arm or _thing_fell(words, match)):
        return True
    return entry.group in _ELSEWHERE and around.only_elsewhere


# a blow there, and to no part of the arm, is asked about
_LOW: Final = frozenset("leg shin calf thigh stomach belly toe".split())
_LOWER: Final = frozenset(("ELSEWHERE",))
# "got hit hard" beside these is about hits given up; beside those it is a blow
_SCORING: Final = frozenset(
    "runs innings inning pitches era homers homer homeruns hits hitters batters doubles velo "
    "strikeouts walks mound tournament playoffs standings".split()
)
_STRUCK: Final = frozenset("PART OPPONENT VEHICLE MISSILE GROUND RIBS me i head".split())
# a heart or a breath at work, and legs that fail, are asked about beside these
_WORKING: Final = frozenset(("HEART", "GASP", "BREATH", "air", "breath"))
_EXERTION: Final = frozenset(
    "ran jogged sprinted squats squat sprints sprint conditioning running run lunges lunge deadlifts deadlift workout suicides "
    "burpees gassers shuttles shuttle legday 400 800 laps lap hills miles marathon stairs".split()
)
_THROWN: Final = frozenset(("threw", "throwing", "thrown"))
_MEALS: Final = frozenset(
    "sushi ate food drunk drank drinking hungover hangover carsick beers tequila tacos milk bus "
    "shrimp oysters ride coaster".split()
)


_DESCRIBING: Final = frozenset(("numb", "swollen", "puffy"))


def _thing_fell(words: Sequence[Word], match: Match) -> bool:
    """Whether what fell is a thing, and on nobody: "the dumbbell fell", "my hair fell in my face"."""
    place = next((p for p in match.at if "FALL" in words[p].keys or words[p].text in _MOVES), 0)
    own = set().union(*(words[p].keys for p in match.at))
    if place < 2 or not own.isdisjoint({"PART", "me"}):  # noqa: PLR2004
        return False
    what, before = words[place - 1], words[place - 2].text
    living = not what.keys.isdisjoint(_LIVING) or what.text in MINE or what.text in OTHERS
    return before in _DETERMINERS and what.pause == 0 and not living


_MOVES: Final = frozenset("went flew rolled slid crashed came flipped landed".split())
_LIVING: Final = frozenset("OPPONENT VEHICLE PART BODY PRON FALL FILLER".split())
_DETERMINERS: Final = frozenset("the a an my our his her their".split())


def _describes_other(words: Sequence[Word], place: int) -> bool:
    """Whether "numb" or "swollen" stands right before an odd word: "swollen inbox"."""
    after = place + 1
    if any("PART" in word.keys for word in words):
        return False
    if words[place].text not in _DESCRIBING or after >= len(words) or words[after].pause:
        return False
    odd = is_odd(words[after]) and "ELSEWHERE" not in words[after].keys
    return odd and not words[after].text.endswith("ly") and words[after].keys <= {words[after].text}


def words_free_of(words: Sequence[Word], named: frozenset[str]) -> bool:
    """Whether none of `named` is said."""
    return all(word.text not in named for word in words)


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
    words: Sequence[Word], scopes: Scopes, match: Match, entry: Entry, around: _Around
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
    firm = reading == Reading.PRESENT and not guessed and not _softened(words, entry, match, around)
    why = entry.group.value
    spans = tuple(Span(words[place].start, words[place].end, why) for place in match.at)
    weak = not entry.clear
    sure = any(not words[place].keys.isdisjoint(_SURE) for place in match.at)
    clear = firm and not weak
    return Sign(entry.group, entry.flag, clear, reading, spans, weak, sure=sure, firm=firm)


def _urgency(entry: Entry, match: Match) -> tuple[bool, int, int, int]:
    return not entry.clear, _RANK[entry.group], match.at[0], -len(match.at)


def sign_in(heard: Listening) -> Sign | None:
    """The sign to act on: the first clear one by urgency, else the first to ask about, or None."""
    if not heard.found:
        return None
    words, entries = heard.words, heard.lexicon.entries
    around = _around(words, heard.lexicon)
    clear: Sign | None = None
    clear_by: set[str] = set()
    unclear: list[tuple[int, int, Sign]] = []
    for match in sorted(heard.found, key=lambda m: _urgency(entries[m.owner], m)):
        entry = entries[match.owner]
        new_group = clear is not None and entry.group != clear.group
        if clear is not None and (not entry.clear or (new_group and len(clear_by) > 1)):
            break
        if _is_harmless(words, match, _core(words, match), heard.sayings):
            continue
        sign = _sign(words, heard.scopes, match, entry, around)
        if sign is not None and sign.clear:
            clear_by.add(match.text)
            if not new_group:
                clear = sign if clear is None else _more_urgent(clear, sign)
        elif sign is not None:
            unclear.append((_RANK[sign.group], match.at[0], sign))
    if clear is not None:
        return clear._replace(patterns=min(len(clear_by), 2))
    return min(unclear, key=lambda u: u[:2])[2] if unclear else None


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
