"""Reads what was thrown: the kind, how many, and how far, over several sports.

Law: the hardest kind said rules (game, bullpen, practice, long toss, catch, none); a count needs
its unit or its kind beside it; a bare number is asked again. Distances come out in feet
(1 yd = 3 ft, 1 m = 3.28 ft).
"""

from __future__ import annotations

import itertools
from typing import TYPE_CHECKING, Final

from coach.hearing.numbers import Number, numbers_in
from coach.hearing.slots import UNCLEAR, Read, text_at, word_set

if TYPE_CHECKING:
    from collections.abc import Sequence

    from coach.hearing.words import Word
    from coach.model.heard import Value

FEET_PER_YARD: Final = 3.0
FEET_PER_METRE: Final = 3.28
LONG_FROM_FT: Final = 100.0  # a toss "out to" this far is long toss (set here)
BALLS_PER_OVER: Final = 6  # laws of cricket

KINDS: Final[dict[str, frozenset[str]]] = {
    "game": word_set(
        "game games match matches innings inning inn tournament tourney scrimmage scrimmaged start "
        "started outing relief doubleheader fixture competition comp meet playoff playoffs "
        "intersquad friendly league final semifinal closed relieved regatta cup derby showcase "
        "competed spell spells"
    ),
    "bullpen": word_set("bullpen bullpens pen pens mound bully bp_pen sidesession"),
    "practice": word_set(
        "practice practiced training trained drills drill nets net session serves served serving "
        "serve spikes spiking spiked hitting hits swings bowled bowling javelin javelins shots "
        "shooting workout plyo plyos plyoballs throwdowns fielding infield outfield grounders "
        "bp reps team batting cage cages skills practise shotput discus smashes overs over deliveries "
        "crossovers attempts sessions clinic camp tryouts tryout"
    ),
    "catch": word_set(
        "catch toss tossed tossing throws throw threw throwing thrown warmup warmups lobs lobbed "
        "playing tosses flatground light lightly"
    ),
}
RANK: Final = ("game", "bullpen", "practice", "long_toss", "catch", "none")
_COUNTED: Final = word_set(
    "pitches pitch throws throw serves serve balls ball spikes spike shots shot tosses toss "
    "deliveries reps swings attempts javelins hits smashes passes bowls strikes"
)
_METRES: Final = word_set("m meters metres meter metre mtrs")
_YARDS: Final = word_set("yards yard yd yds")
_FEET: Final = word_set("ft feet foot")
_OFF: Final = word_set(
    "off rest rested resting none nothing nope nah nada zero zip rainout rained skipped no didnt "
    "haven havent not never"
)
_OFF_PAIRS: Final = frozenset(
    (a, b)
    for a in ("no", "didnt", "havent", "zero", "not", "without", "never", "dont", "0")
    for b in (
        "throwing throw throws threw thrown anything pitching pitch serves catch baseball touch "
        "today yesterday".split()
    )
)
_NAUGHT: Final = word_set("0 none zero no nil")
_ORDINAL: Final = word_set("st nd rd th")
_NOT_COUNT: Final = word_set(
    "innings inning minutes mins min hours hour days day sets games weeks week lb lbs kg percent "
    "am pm mph matches years times"
)


def _kinds_in(words: Sequence[Word], feet: float) -> list[tuple[str, int]]:
    found: list[tuple[str, int]] = []
    for place, word in enumerate(words):
        text, before = word.text, text_at(words, place - 1)
        if _denied(words, place):
            continue
        if (
            text in ("toss", "tossed", "tossing", "tosses")
            and (before == "long" or feet >= LONG_FROM_FT)
        ) or text in ("longtoss", "longtossed"):
            found.append(("long_toss", place))
        elif text == "ground" and before == "flat":
            found.append(("catch", place))
        elif text == "side" and (
            before in ("short", "a", "light") or text_at(words, place + 1) in ("session", "work")
        ):
            found.append(("bullpen", place))
        else:
            found += [(kind, place) for kind, names in KINDS.items() if text in names]
    if (
        feet >= LONG_FROM_FT
        and any(k == "catch" for k, _ in found)
        and "out" in {w.text for w in words}
    ):
        found.append(("long_toss", 0))
    return found


def _denied(words: Sequence[Word], place: int) -> bool:
    """Whether the kind was not done, or is still to come: "no game", "game tomorrow"."""
    before = (
        {text_at(words, place - k) for k in (1, 2) if not words[place - k + 1].pause}
        if place
        else set()
    )
    after = {text_at(words, place + k) for k in (1, 2)}
    if before & {
        "no",
        "didnt",
        "not",
        "without",
        "skipped",
        "before",
        "missed",
        "cancelled",
        "canceled",
    }:
        return True
    return bool(after & {"tomorrow", "cancelled", "canceled", "rained", "postponed"})


def _feet(words: Sequence[Word], number: Number, text: str) -> float | None:
    """The distance in feet that a number states, or None."""
    after = text_at(words, number.last + 1)
    joined = number.last + 1 < len(words) and words[number.last + 1].pause == 0
    tail = text[words[number.last].end :].lstrip()[:1]
    if tail in ("'", "\u2019", "\u2032") and not text[words[number.last].end :][1:2].isalpha():
        return number.value
    if joined and after in _FEET:
        return number.value
    if joined and after in _YARDS:
        return number.value * FEET_PER_YARD
    if joined and after in _METRES:
        return number.value * FEET_PER_METRE
    before = {text_at(words, number.first - k) for k in (1, 2, 3)}
    near = {text_at(words, number.first - k) for k in range(1, 6)}
    tossing = near & (KINDS["catch"] | {"toss", "tossed", "out"})
    if before & {"to", "from", "at"} and tossing and number.value >= 30 and after not in _COUNTED:  # noqa: PLR2004
        return number.value
    return None


def _distance(words: Sequence[Word], numbers: list[Number], text: str) -> float:
    found = [feet for n in numbers if (feet := _feet(words, n, text)) is not None]
    return max(found, default=0.0)


def _times(words: Sequence[Word], numbers: list[Number]) -> float:
    """The product of "3x10", "3 sets of 10", "4 by 15", or 0."""
    for left, right in itertools.pairwise(numbers):
        between = [w.text for w in words[left.last + 1 : right.first]]
        if between in (["x"], ["by"], ["sets", "of"], ["rounds", "of"], ["times"], ["lots", "of"]):
            return left.value * right.value
        if text_at(words, right.last + 1) in ("each", "apiece", "per"):
            return left.value * right.value
        if not between and words[right.first].before.strip() in ("x", "*", "\u00d7"):
            return left.value * right.value
    return 0.0


def _counts(words: Sequence[Word], numbers: list[Number], text: str) -> list[tuple[float, int]]:
    out: list[tuple[float, int]] = []
    for number in numbers:
        after = [text_at(words, number.last + k) for k in (1, 2, 3)]
        if _feet(words, number, text) is not None or after[0] in _NOT_COUNT:
            continue
        if after[0] in ("overs", "over"):
            out.append((number.value * BALLS_PER_OVER, number.first))
        elif any(a in _COUNTED for a in after) and not _other_between(after):
            out.append((number.value, number.first))
    return out


def _other_between(after: list[str]) -> bool:
    for word in after:
        if word in _COUNTED:
            return False
        if word in ("and", "then", "plus", "to", "at", "from", "ft", "feet"):
            return True
    return False


def _bare_count(words: Sequence[Word], numbers: list[Number], text: str) -> float:
    """A number right beside its kind: "threw 40", "20 off the mound", "30 in the pen"."""
    for number in numbers:
        if _feet(words, number, text) is not None or text_at(words, number.last + 1) in _NOT_COUNT:
            continue
        near = {text_at(words, number.first - k) for k in (1, 2)} | {
            text_at(words, number.last + k) for k in (1, 2, 3)
        }
        if near & (KINDS["bullpen"] | KINDS["catch"] | {"pitched", "bowled", "served"}):
            return number.value
    return 0.0


def _count(words: Sequence[Word], numbers: list[Number], text: str, kind: str) -> float:
    product = _times(words, numbers)
    if product:
        return product
    found = _counts(words, numbers, text)
    if not found:
        return _bare_count(words, numbers, text)
    if len(found) > 1 and kind in ("game", "bullpen"):
        pitches = [
            c for c in found if {"pitches", "pitch"} & {text_at(words, c[1] + k) for k in (1, 2, 3)}
        ]
        found = pitches or found
        return found[0][0]
    return sum(value for value, _ in found)


def _is_off(words: Sequence[Word]) -> tuple[int, ...]:
    for place in range(len(words)):
        if words[place].text in KINDS["catch"] and text_at(words, place + 1) in _NAUGHT:
            return (place, place + 1)
        if (words[place].text, text_at(words, place + 1)) in _OFF_PAIRS:
            return (place, place + 1)
        if (words[place].text, text_at(words, place + 1)) in (
            ("arm", "care"),
            ("bands", "only"),
            ("travel", "day"),
            ("free", "day"),
            ("was", "free"),
        ):
            return (place, place + 1)
        if (words[place].text, text_at(words, place + 2)) in _OFF_PAIRS:
            return (place, place + 2)
    texts = [w.text for w in words]
    if texts[0] == "not" and text_at(words, 1) in ("much", "sure", "many", "a", "too", "as"):
        return ()
    if texts[0] in _OFF and not (texts[0] == "off" and "mound" in texts):
        return (0,)
    for place, text in enumerate(texts):
        if text in ("off", "rest", "rested", "resting", "nothing", "none") and "mound" not in texts:
            return (place,)
    return (0,) if texts == ["0"] else ()


def read_throwing(text: str, words: Sequence[Word]) -> Read:
    """The hardest kind said, with `count`, `max_distance_ft`, `throwing_also` in `also`."""
    if not words:
        return UNCLEAR
    numbers = [n for n in numbers_in(words) if text_at(words, n.last + 1) not in _ORDINAL]
    feet = _distance(words, numbers, text)
    found = _kinds_in(words, feet)
    off = _is_off(words)
    if not found and feet and not off:
        found = [("catch", 0)]
    if not found or (off and {k for k, _ in found} <= {"catch"} and not feet):
        return Read("none", off) if off else UNCLEAR
    names = {kind for kind, _ in found}
    kind = next(name for name in RANK if name in names)
    count = _count(words, numbers, text, kind)
    also: list[tuple[str, Value]] = []
    if count:
        also.append(("count", count))
    if feet:
        also.append(("max_distance_ft", round(feet, 1)))
    others = tuple(n for n in RANK if n in names and n not in (kind, "catch"))
    if others:
        also.append(("throwing_also", others))
    at = tuple(place for k, place in found if k == kind)
    return Read(kind, at, also=tuple(also))
