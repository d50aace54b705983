"""Reads what was thrown: the kind, how many, and how far, over several sports, day by day.

Law: the hardest kind said rules (game, bullpen, practice, long toss, catch, none); a count needs
its unit or its kind beside it; a bare number is asked again. `none` is read only where nothing
beside it takes it back: no doubt, no "but", no "not much", no count. Distances come out in feet
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
# Beside a `none` these say that it is not sure, not yet, or not quite none.
_TAKES_BACK: Final = word_set(
    "idea clue know dunno idk remember recall forgot forget forgotten sure unsure maybe perhaps might "
    "may probably possibly think guess mind business yet later count counted except but besides "
    "apart other until unless much more many lot hard heavy serious real really big crazy special "
    "intense than less hardly barely few little bit couple some light lightly easy soft almost nearly "
    "mostly mainly usually"
)
_NEGATORS: Final = word_set("no not didnt havent hasnt never without wasnt dont")
_REST: Final = word_set("off rest rested resting none nothing zero nil")
_PAIN: Final = word_set("pain pains hurt hurts hurting ache aches aching sore soreness")
_BETWEEN: Final = word_set("a the my any day take took get got have")
_DAYS: Final = {
    "yesterday": "yesterday", "today": "today", "tonight": "today", "todays": "today",
    "yesterdays": "yesterday",
}  # fmt: skip
_JOINED: Final = word_set("or nor and")
_BOTH: Final = frozenset(
    (("either", "day"), ("neither", "day"), ("both", "days"), ("either", "one"), ("these", "days"))
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
        naught = _naught_of_a_label(words, place)
        if naught:
            return tuple(range(place, naught + 1))
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


def _naught_of_a_label(words: Sequence[Word], place: int) -> int:
    """Where a naught ends what a kind's name began ("throws none", "game today none"), or 0."""
    if words[place].text in KINDS["catch"] and text_at(words, place + 1) in _NAUGHT:
        return place + 1
    if not any(words[place].text in names for names in KINDS.values()):
        return 0
    at = place + 2 if text_at(words, place + 1) in _DAYS else place + 1
    ends = at + 1 == len(words) or (at + 1 < len(words) and words[at + 1].pause > 0)
    unbroken = not any(word.pause for word in words[place + 1 : at + 1])
    return at if text_at(words, at) in _NAUGHT and ends and unbroken else 0


def _taken_back(words: Sequence[Word], numbers: list[Number], text: str) -> bool:
    """Whether a `none` is unsure, not quite none, or itself denied ("no rest", "20, none hard")."""
    if any(word.text in _TAKES_BACK for word in words):
        return True
    for number in numbers:
        counted = text_at(words, number.last + 1) not in _NOT_COUNT
        if number.value and counted and _feet(words, number, text) is None:
            return True
    return any(_denies_rest(words, n) or _of_pain(words, n) for n in range(len(words)))


def _of_pain(words: Sequence[Word], place: int) -> bool:
    """Whether a naught is about pain: "nothing hurt", "no pain"."""
    naught = words[place].text in _NEGATORS or words[place].text in _NAUGHT | {"nothing"}
    return naught and text_at(words, place + 1) in _PAIN


def _denies_rest(words: Sequence[Word], place: int) -> bool:
    """Whether a "no" stands right before a rest: "no rest", "no day off", "not none"."""
    if words[place].text not in _NEGATORS:
        return False
    for word in words[place + 1 :]:
        if word.pause:
            return False
        if word.text in _REST:
            return True
        if word.text not in _BETWEEN:
            return False
    return False


def read_throwing(text: str, words: Sequence[Word], asked: str = "") -> Read:
    """The hardest kind said, with `count`, `max_distance_ft`, `throwing_also` in `also`.

    `asked` is the fact asked for; where its day is named, only what is said of that day counts.
    Where only the other one is named, throws count all the same, and a none does not.
    """
    day = asked.rpartition(" ")[2]
    days = by_day(text, words) if day in _DAYS.values() else {}
    if day in days:
        return days[day]
    read = _read(text, words)
    return UNCLEAR if days and read.value == "none" else read


def _read(text: str, words: Sequence[Word]) -> Read:
    """What was thrown on one day."""
    if not words:
        return UNCLEAR
    numbers = [n for n in numbers_in(words) if text_at(words, n.last + 1) not in _ORDINAL]
    feet = _distance(words, numbers, text)
    found = _kinds_in(words, feet)
    off = _is_off(words)
    if not found and feet and not off:
        found = [("catch", 0)]
    thrown = {kind for kind, place in found if place not in off}
    if not found or (off and not thrown and not feet):
        return Read("none", off) if off and not _taken_back(words, numbers, text) else UNCLEAR
    return _kind_read(words, numbers, text, feet, found)


def _kind_read(
    words: Sequence[Word],
    numbers: list[Number],
    text: str,
    feet: float,
    found: list[tuple[str, int]],
) -> Read:
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


# ---------------------------------------------------------------- day by day


def by_day(text: str, words: Sequence[Word]) -> dict[str, Read]:
    """What was said of each day named, `yesterday` and `today`; empty where none is named.

    One saying may hold for both days ("nothing either day", "rested yesterday and today"); else
    the words are cut at the days. A day of which nothing is understood is there with no value.
    """
    both = _of_both(words)
    if both is not None:
        read = _read(text, both)
        return {"yesterday": read, "today": read}
    out: dict[str, Read] = {}
    for day, said in _clauses(words):
        read = _read(text, said)
        old = out.get(day)
        out[day] = read if old is None else _harder(old, read)
    return out


def two_naughts(text: str, words: Sequence[Word]) -> bool:
    """Whether an answer is two times none and nothing more: "none, none", "0 and 0"."""
    said = [word for word in words if word.text not in _JOINED]
    alone = [_read(text, [word]).value == "none" for word in said]
    return len(alone) == 2 and all(alone)  # noqa: PLR2004


def _harder(one: Read, other: Read) -> Read:
    """The harder of two sayings about one day; what is not understood wins over none."""
    if one.value is None or other.value is None:
        return UNCLEAR
    return min(one, other, key=lambda read: RANK.index(str(read.value)))


def _of_both(words: Sequence[Word]) -> list[Word] | None:
    """The words without the days, where one saying is about both days; None where it is not."""
    texts = [word.text for word in words]
    for place in range(len(texts) - 1):
        if (texts[place], texts[place + 1]) in _BOTH and not _DAYS.keys() & set(texts):
            named = 1 if texts[place] == "neither" else 0  # "neither" says none by itself
            rest = [*words[: place + named], *words[place + 2 :]]
            return [_as_none(word) for word in rest]
    for place in range(len(texts) - 2):
        joined = texts[place + 1] in _JOINED and texts[place + 2] in _DAYS
        if texts[place] in _DAYS and joined and len({*texts} & _DAYS.keys()) == 2:  # noqa: PLR2004
            at_an_end = place == 0 or place + 3 == len(texts)
            rest = [*words[:place], *words[place + 3 :]]
            return [_as_none(word) for word in rest] if at_an_end and rest else None
    return None


def _as_none(word: Word) -> Word:
    return word._replace(text="none") if word.text == "neither" else word


def _clauses(words: Sequence[Word]) -> list[tuple[str, list[Word]]]:
    """Each day named with the words said of it; cut after a day, or before it where days lead."""
    first = next((word.text for word in words if word.text not in _JOINED), "")
    leads = first in _DAYS
    out: list[tuple[str, list[Word]]] = []
    said: list[Word] = []
    day = ""
    for word in words:
        named = _DAYS.get(word.text, "")
        if named and leads:
            out += [(day, said)] if day else []
            day, said = named, []
        elif named:
            out.append((named, said))
            said = []
        elif word.text not in _JOINED:
            said.append(word)
    if leads and day:
        out.append((day, said))
    elif said and out:  # after the last day: it belongs to that day
        last, before = out.pop()
        out.append((last, [*before, *said]))
    return out
