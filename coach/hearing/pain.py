"""Reads a pain answer, 0 to 10: now, or the worst of a time.

Law: two numbers about the same moment are a range, and the higher rules; a correction wins; a
number with another unit is no pain; words alone ("mild", "not bad") are never turned into a
number. Rule P10: unclear is asked again, never read as the lower pain.
Published word-to-number bands overlap and differ (Palos 2006, abstract), so none is used.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.hearing.numbers import Number, numbers_in
from coach.hearing.slots import (
    OTHER_UNITS,
    UNCLEAR,
    Read,
    has_other_unit,
    starts_after_fix,
    tail_of,
    text_at,
    word_set,
)

if TYPE_CHECKING:
    from collections.abc import Sequence

    from coach.hearing.words import Word

TOP: Final = 10.0
_ZERO: Final = word_set("none zero nada zip zilch painless nil goose")
_HURT: Final = word_set(
    "hurt hurts hurting pain paining pains ache aching aches sore soreness bother"
)
_NOT: Final = word_set("no didnt doesnt dont not never isnt wasnt without zero aint hasnt havent")
_SOFTENS: Final = word_set(
    "much bad too very really that crazy terrible major serious horrible new unusual awful more "
    "worse out different ordinary almost nearly hardly barely basically close practically little huge special severe "
    "extra bit terribly some mostly virtually"
)
_EARLIER: Final = word_set("yesterday earlier before was were ago morning last previously started")
_NOW: Final = word_set("now today currently atm presently rn moment its")
_DROPS: Final = word_set("down went dropped gone improved fell came up")
_AFTER_WORDS: Final = word_set("after in about around for by at over roughly from")
_QUIET: Final = word_set("nothing none zero")


def _is_ten(words: Sequence[Word], number: Number) -> bool:
    """Whether the number is only the top of the scale: "5 out of 10", "outta ten"."""
    if number.value != TOP:
        return False
    before = text_at(words, number.first - 1)
    return before in ("of", "from") or text_at(words, number.first - 2) == "out"


_PLURAL: Final = word_set("mostly mainly couple few all and some stayed")


def _is_plural(words: Sequence[Word], number: Number) -> bool:
    """Whether the number is told as "mostly 1s with a couple of 3s"."""
    after = number.last + 1
    joined = text_at(words, after) == "s" and words[after].before == ""
    return joined and any(word.text in _PLURAL for word in words)


def pain_numbers(text: str, words: Sequence[Word], start: int) -> tuple[list[Number], bool]:
    """The numbers that can be a pain, and whether one was out of the scale or a fraction."""
    out: list[Number] = []
    broken = counted = False
    found = numbers_in(words)
    for number in found:
        if number.first < start or _is_ten(words, number):
            continue
        out_of = text_at(words, number.last + 1) in ("out", "of") and any(
            _is_ten(words, other) for other in found if other.first > number.last
        )
        if (
            not out_of
            and not _is_plural(words, number)
            and number.over != TOP
            and (
                has_other_unit(words, number, OTHER_UNITS)
                or tail_of(text, words, number) in ("%", "\u00b0")
            )
        ):
            counted = True
            continue
        if text_at(words, number.first - 1) == "of" and counted:
            continue  # "rep 9 of 12"
        wrong = number.over not in (0.0, TOP) or not 0 <= number.value <= TOP
        if wrong:
            aside = number.value > TOP and text_at(words, number.first - 1) in _AFTER_WORDS
            broken = broken or not aside
        else:
            out.append(number)
    return out, broken


def _zero_at(words: Sequence[Word], start: int) -> tuple[int, ...]:
    """The places that say there is no pain; empty when none or when it is softened."""
    for place in range(start, len(words)):
        text = words[place].text
        near = {text_at(words, place + k) for k in (-2, -1, 1, 2)}
        if text in _ZERO and not near & (_SOFTENS | {"sleep"}):
            return (place,)
        if text == "nothing" and not near & (_SOFTENS | {"but", "helps"}):
            return (place,)
        if text in _NOT and not near & _SOFTENS:
            for k in (1, 2, 3, 4):
                if (
                    text_at(words, place + k) in _HURT
                    and not {text_at(words, place + j) for j in range(1, k + 2)} & _SOFTENS
                ):
                    return (place, place + k)
        if text in ("didnt", "not") and text_at(words, place + 1) in ("feel", "felt"):
            told = {text_at(words, place + k) for k in (2, 3, 4)}
            if told >= {"it", "at", "all"} or told >= {"a", "thing"} or told & {"anything"}:
                return (place,)
        if text == "free" and "pain" in (text_at(words, place - 1), text_at(words, place + 2)):
            return (place,)
    return ()


def _clause(words: Sequence[Word]) -> list[int]:
    out: list[int] = []
    here = 0
    for place, word in enumerate(words):
        if place and (word.pause or word.text in ("but", "now", "then", "and", "though", "today")):
            here += 1
        out.append(here)
    return out


def _about_now(words: Sequence[Word], found: list[Number]) -> list[Number] | None:
    """Those of `found` said about now; all of them when no time is said; None when only of old."""
    clauses = _clause(words)
    times = {
        c: {w.text for w, k in zip(words, clauses, strict=True) if k == c} for c in set(clauses)
    }
    now = [n for n in found if times[clauses[n.first]] & _NOW and not _old(times[clauses[n.first]])]
    plain = [n for n in found if not _old(times[clauses[n.first]])]
    if now and any(_old(times[clauses[n.first]]) for n in found):
        return plain
    if plain:
        return plain
    firm = any(times[clauses[n.first]] & {"yesterday", "ago", "last"} for n in found)
    return None if firm else found


def _old(texts: set[str]) -> bool:
    return (
        bool(texts & _EARLIER)
        and "since" not in texts
        and not texts & {"now", "currently", "today", "rn"}
    )


_LONG_AGO: Final = frozenset(
    ("last", period) for period in ("year", "season", "summer", "winter", "spring", "fall")
)


def _years_old(words: Sequence[Word], number: Number) -> bool:
    """Whether the clause of a worst pain tells of last year or season."""
    clauses = _clause(words)
    here = [k for k, clause in enumerate(clauses) if clause == clauses[number.first]]
    return any((text_at(words, k), text_at(words, k + 1)) in _LONG_AGO for k in here)


def _moved(words: Sequence[Word], found: list[Number]) -> list[Number]:
    """The later of two values that changed: "down from a 6 to a 3" is a 3."""
    if len(found) == 2:  # noqa: PLR2004
        between = {w.text for w in words[found[0].last + 1 : found[1].first]}
        ahead = {w.text for w in words[: found[0].first]}
        if "to" in between and "from" in ahead and ahead & _DROPS:
            return found[1:]
    return found


def _and_more(words: Sequence[Word], number: Number) -> bool:
    """Whether the pain is told as more than the number: "three and a bit"."""
    after = [text_at(words, number.last + k) for k in (1, 2, 3)]
    return after[0] in ("and", "point") and not _MORE.isdisjoint(after[1:])


_MORE: Final = frozenset(("bit", "something", "some"))


def _labelled_by_day(words: Sequence[Word], *, worst: bool) -> bool:
    """Whether a bare none is told of yesterday ("none yesterday, none today"), with no word of pain.

    With both days it answers the question on throws; with yesterday alone it says nothing of now.
    """
    said = {word.text for word in words}
    if said & _HURT or (worst and "today" not in said):
        return False
    none = _QUIET | _NOT | _ZERO
    return any(
        word.text == "yesterday" and {text_at(words, k - 1), text_at(words, k + 1)} & none
        for k, word in enumerate(words)
    )


def read_pain(text: str, words: Sequence[Word], *, worst: bool) -> Read:
    """The pain said, 0 to 10: of now (the last value about now), or the worst (the largest)."""
    start = starts_after_fix(words)
    found, broken = pain_numbers(text, words, start)
    if not found and not broken and start:
        start = 0
        found, broken = pain_numbers(text, words, 0)
    if broken:
        return UNCLEAR
    zero = _zero_at(words, start)
    if worst:
        found = [n for n in found if not _years_old(words, n)] or found
    if found and not worst:
        chosen = _about_now(words, _moved(words, found))
        if chosen is None:
            return UNCLEAR
        found = chosen
    if not found:
        return Read(0.0, zero) if zero and not _labelled_by_day(words, worst=worst) else UNCLEAR
    values = [v for n in found for v in (n.listed or (n.value,))]
    values += [min(n.value + 1, TOP) for n in found if _and_more(words, n)]
    if max(values) > TOP:
        return UNCLEAR
    low = 0.0 if zero else min(values)
    at = tuple(place for n in found for place in range(n.first, n.last + 1))
    return Read(max(values), at, also=(("pain_low", low),) if low < max(values) else ())
