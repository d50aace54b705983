"""Reads how long someone slept, in hours: a number, a range, a bedtime and a time of rising.

Law: the shorter end of a range; a nap is not added; minutes and clock times are worked out; a
lone clock time is unclear. Rule P10: never read as the longer sleep.
"""

from __future__ import annotations

import itertools
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.hearing.numbers import Number, numbers_in
from coach.hearing.slots import UNCLEAR, Read, starts_after_fix, text_at, word_set

if TYPE_CHECKING:
    from collections.abc import Sequence

    from coach.hearing.words import Word

LONGEST: Final = 16.0
SHORT_CLOCK: Final = 3  # digits of a time like 630
LONGEST_NIGHT: Final = 12.5  # hours between two times of day; more is no night (set here)
_HOURS: Final = word_set("h hr hrs hours hour hs")
_MINUTES: Final = word_set("m min mins minutes minute")
_BED: Final = word_set(
    "bed asleep sleep slept lights down crashed passed bedtime knocked hit went from"
)
_UP: Final = word_set("up woke awake alarm wake rose waking woken got")
_TO: Final = word_set("to till til until thru through")
_NAP: Final = word_set("nap naps napped napping")
_USUAL: Final = word_set(
    "usual usually normally normal average typically need want wanted goal instead"
)
_ASLEEP: Final = word_set("asleep slept actual actually real sleep sleeping")
_OTHER: Final = word_set(
    "times time nights days weeks weeks pain out lb kg throws reps percent am pm"
)
_NONE: Final = word_set("none zero zilch nada zip")


class Clock(NamedTuple):
    """A time of day in hours (0 to 24), the words it took, and whether am or pm was said."""

    hour: float
    first: int
    last: int
    said: str


def _clock_value(text: str) -> float | None:
    """A time written 10:45 or 1030, in hours."""
    if ":" in text:
        head, _, tail = text.partition(":")
        if head.isdecimal() and tail.isdecimal() and int(tail) < 60:  # noqa: PLR2004
            return int(head) + int(tail) / 60
        return None
    if text.isdecimal() and len(text) in (3, 4):
        hour, minute = int(text[:-2]), int(text[-2:])
        if hour <= 24 and minute < 60:  # noqa: PLR2004
            return hour + minute / 60
    return None


def _spoken_clock(words: Sequence[Word], place: int, numbers: dict[int, Number]) -> Clock | None:
    """A time said as "half past ten", "quarter to seven"."""
    text, after = words[place].text, text_at(words, place + 1)
    part = {"half": 0.5, "quarter": 0.25}.get(text)
    if part is None or after not in ("past", "to", "of", "till") or place + 2 not in numbers:
        return None
    number = numbers[place + 2]
    hour = number.value + (part if after == "past" else -part)
    return Clock(hour, place, number.last, "")


def clocks_in(words: Sequence[Word]) -> list[Clock]:
    """Every number or word that can be a time of day, in order."""
    numbers = {n.first: n for n in numbers_in(words)}
    out: list[Clock] = []
    place = 0
    while place < len(words):
        spoken = _spoken_clock(words, place, numbers) or _plain_clock(words, place, numbers)
        if spoken is None:
            place += 1
            continue
        out.append(spoken)
        place = spoken.last + 1
    return out


def _plain_clock(words: Sequence[Word], place: int, numbers: dict[int, Number]) -> Clock | None:
    text = words[place].text
    if text in ("midnight", "noon"):
        return Clock(
            0.0 if text == "midnight" else 12.0, place, place, "am" if text == "midnight" else "pm"
        )
    hour = _clock_value(text)
    last = place
    if hour is None:
        if place not in numbers:
            return None
        hour, last = numbers[place].value, numbers[place].last
        minutes = numbers.get(last + 1)
        if (
            minutes is not None
            and not words[last + 1].pause
            and minutes.value in (10, 15, 20, 30, 40, 45, 50)
        ):
            hour, last = hour + minutes.value / 60, minutes.last
    if not 0 <= hour <= 24:  # noqa: PLR2004
        return None
    said, last = _half_of_day(words, last)
    return Clock(hour, place, last, said)


def _half_of_day(words: Sequence[Word], last: int) -> tuple[str, int]:
    """Am or pm said after the word at `last`."""
    after = text_at(words, last + 1)
    if after in ("ish", "oclock"):
        last += 1
        after = text_at(words, last + 1)
    if after in ("am", "pm", "a", "p"):
        if after in ("a", "p") and text_at(words, last + 2) != "m":
            return ("am" if after == "a" else "pm", last + 1) if after == "p" else ("", last)
        return ("am" if after.startswith("a") else "pm"), last + (1 if len(after) == 2 else 2)  # noqa: PLR2004
    if after == "in" and text_at(words, last + 2) == "the":
        part = text_at(words, last + 3)
        if part in ("morning", "evening", "afternoon"):
            return ("am" if part == "morning" else "pm"), last + 3
    if after == "at" and text_at(words, last + 2) == "night":
        return "pm", last + 2
    return "", last


def hours_between(bed: Clock, up: Clock) -> float:
    """Hours from going to bed to getting up, over midnight where need be."""
    start, end = bed.hour % 24, up.hour % 24
    if bed.said == "pm" and start < 12 or not bed.said and 5 < start < 12:  # noqa: PLR2004, RUF021
        start += 12
    if bed.said == "am" and start >= 12 or not bed.said and 12 <= start < 13:  # noqa: PLR2004, RUF021
        start -= 12
    if up.said == "pm" and end < 12:  # noqa: PLR2004
        end += 12
    if up.said == "am" and end >= 12:  # noqa: PLR2004
        end -= 12
    return (end - start) % 24


def _is_interval(words: Sequence[Word], bed: Clock, up: Clock) -> bool:
    """Whether two times are a bedtime and a rising, not a range of hours."""
    if text_at(words, bed.last + 1) in _HOURS or text_at(words, up.last + 1) in (_HOURS | _MINUTES):
        return False
    between = {w.text for w in words[bed.last + 1 : up.first]}
    ahead = {w.text for w in words[max(0, bed.first - 4) : bed.first]}
    dash = (
        "-" in words[up.first].before
        or ">" in words[up.first].before
        or "\u2013" in words[up.first].before
    )
    linked = bool(between & _TO) or dash or ("between" in ahead and "and" in between)
    if (ahead | between) & _BED and between & _UP:
        return True
    if not linked:
        return False
    if bed.said or up.said or ":" in words[bed.first].text or bed.hour != int(bed.hour):
        return True
    if bed.hour >= 9 and up.hour < bed.hour:  # noqa: PLR2004
        return True
    if ahead & {"from", "between"} and up.hour - bed.hour > 2:  # noqa: PLR2004
        return True
    return bed.hour <= 3 and up.hour - bed.hour >= 4  # noqa: PLR2004


def _interval(words: Sequence[Word], start: int) -> Read | None:
    clocks = [c for c in clocks_in(words) if c.first >= start]
    for bed, up in itertools.pairwise(clocks):
        if _is_interval(words, bed, up):
            hours = hours_between(bed, up)
            at = (*range(bed.first, bed.last + 1), *range(up.first, up.last + 1))
            return Read(round(hours, 2), at) if 0 < hours <= LONGEST_NIGHT else UNCLEAR
    return None


def _amount(
    words: Sequence[Word], number: Number, numbers: dict[int, Number]
) -> tuple[float, int] | None:
    """Hours meant by a number, and its last word: "7", "6h45", "420 mins", "6 hours 45 min"."""
    after = text_at(words, number.last + 1)
    if number.over:
        return None
    if after in _MINUTES and (after != "m" or number.value > 24):  # noqa: PLR2004
        return number.value / 60, number.last + 1
    minutes = numbers.get(number.last + 1)
    if minutes is not None and not words[minutes.first].pause and minutes.value in (15, 30, 45):
        return number.value + minutes.value / 60, minutes.last
    if after not in _HOURS:
        if after in _OTHER and not words[number.last + 1].pause:
            return None
        return (number.value, number.last)
    last = number.last + 1
    more = numbers.get(last + 1) or (
        numbers.get(last + 2) if text_at(words, last + 1) in ("and", "n") else None
    )
    if more is not None and not words[more.first].pause:
        unit = text_at(words, more.last + 1)
        if unit in _MINUTES:
            return number.value + more.value / 60, more.last + 1
        if more.first == last + 1 and more.value in (10, 15, 20, 30, 40, 45, 50) and after == "h":
            return number.value + more.value / 60, more.last
        if more.value == 0.5:  # noqa: PLR2004
            return number.value + 0.5, more.last
    half, last = _half_after(words, last)
    return number.value + half, last


class _Amount(NamedTuple):
    hours: float
    first: int
    last: int


def _half_after(words: Sequence[Word], last: int) -> tuple[float, int]:
    """Hours in "and a half", "and a quarter" after the word at `last`."""
    if text_at(words, last + 1) == "and":
        skip = 1 if text_at(words, last + 2) == "a" else 0
        part = {"half": 0.5, "quarter": 0.25}.get(text_at(words, last + 2 + skip))
        if part:
            return part, last + 2 + skip
    return 0.0, last


def _amounts(words: Sequence[Word], start: int) -> list[_Amount]:
    numbers = {n.first: n for n in numbers_in(words)}
    out: list[_Amount] = []
    done = start
    for place in range(start, len(words)):
        if place < done:
            continue
        text = words[place].text
        written = text[:1].isdecimal() and (":" in text or len(text) == SHORT_CLOCK)
        clock = _clock_value(text) if written else None
        if clock is not None and text_at(words, place + 1) not in _MINUTES:
            out.append(_Amount(clock, place, place))
            continue
        if text in ("an", "a", "another") and text_at(words, place + 1) == "hour":
            half, last = _half_after(words, place + 1)
            out.append(_Amount(1.0 + half, place, last))
            done = last + 1
            continue
        if place in numbers:
            found = _amount(words, numbers[place], numbers)
            if found is not None:
                out.append(_Amount(found[0], place, found[1]))
                done = found[1] + 1
            else:
                done = numbers[place].last + 1
    return out


def _kept(words: Sequence[Word], found: list[_Amount]) -> list[_Amount]:
    """Those amounts that are sleep last night: not naps, not the usual, not time in bed."""
    out = [a for a in found if not _around(words, a) & (_NAP | _USUAL)]
    asleep = [a for a in out if _around(words, a) & _ASLEEP and "bed" not in _around(words, a)]
    if len(out) > 1 and asleep and any("bed" in _around(words, a) for a in out):
        return asleep
    return out


def _around(words: Sequence[Word], amount: _Amount) -> set[str]:
    """The words of the clause an amount stands in."""
    start, end = amount.first, amount.last
    while (
        start > 0
        and not words[start].pause
        and words[start - 1].text not in ("but", "and", "plus", "then")
    ):
        start -= 1
    while end + 1 < len(words) and not words[end + 1].pause and words[end + 1].text not in (
        "but", "and", "plus", "then",
    ):  # fmt: skip
        end += 1
    return {word.text for word in words[start : end + 1]}


def _added(words: Sequence[Word], found: list[_Amount]) -> bool:
    """Whether the second amount is more sleep after waking: "4 then another 2"."""
    if len(found) != 2:  # noqa: PLR2004
        return False
    between = {w.text for w in words[found[0].last + 1 : found[1].first]}
    after = {text_at(words, found[1].last + k) for k in (1, 2)}
    return bool(between & {"another", "plus"}) or bool("then" in between and after & {"more"})


def _slept_none(words: Sequence[Word], start: int) -> tuple[int, ...]:
    texts = [word.text for word in words]
    for place in range(start, len(words)):
        after = text_at(words, place + 1)
        if texts[place] in _NONE and len(words) <= 3 and after not in ("much", "idea"):  # noqa: PLR2004
            return (place,)
        if texts[place] in ("no", "zero") and after == "sleep":
            return (place, place + 1)
        if texts[place] in ("didnt", "never") and after in ("sleep", "slept", "fell"):
            rest = texts[place + 2 : place + 5]
            if not rest or rest[:2] == ["at", "all"] or rest[:1] in (["a"], ["one"], ["last"]):
                return (place, place + 1)
        if texts[place] == "nighter":
            return (place,)
    return ()


def read_sleep(words: Sequence[Word]) -> Read:
    """Hours slept, 0 to 16: the shorter end of a range (the other end in `also`)."""
    start = starts_after_fix(words)
    read = _interval(words, start)
    if read is None and start:
        read = _interval(words, 0) if not _amounts(words, start) else None
    if read is not None:
        return read
    found = _kept(words, _amounts(words, start) or _amounts(words, 0))
    if not found:
        none = _slept_none(words, start)
        return Read(0.0, none) if none else UNCLEAR
    if any(not 0 <= a.hours <= LONGEST for a in found):
        return UNCLEAR
    if len(found) == 1 and _lone_clock(words, found[0]):
        return UNCLEAR
    at = tuple(place for a in found for place in range(a.first, a.last + 1))
    hours = [a.hours for a in found]
    if _added(words, found):
        return Read(round(sum(hours), 2), at)
    also = (("sleep_high", max(hours)),) if max(hours) > min(hours) else ()
    return Read(round(min(hours), 2), at, also=also)


def _lone_clock(words: Sequence[Word], amount: _Amount) -> bool:
    """Whether the one amount is a time of day: "bed at 11", "up at 6"."""
    before = text_at(words, amount.first - 1)
    after = text_at(words, amount.last + 1)
    if after in ("am", "pm", "oclock"):
        return True
    return before in ("at", "by", "til", "till", "until", "before") and after not in _HOURS
