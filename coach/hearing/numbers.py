"""Reads the numbers in an answer: digits, words, halves, quarters, fractions.

Law: covers what a coach can meet, 0 to some hundreds; money, exponents, percents and millions are
left alone on purpose. A number keeps the words it was made of. Never raises.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Sequence

    from coach.hearing.words import Word

_UNITS: Final = {
    name: value
    for value, name in enumerate(
        "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen "
        "fifteen sixteen seventeen eighteen nineteen".split()
    )
} | {"nought": 0, "naught": 0}
_TENS: Final = {
    name: 10 * value
    for value, name in enumerate(
        "twenty thirty forty fifty sixty seventy eighty ninety".split(), start=2
    )
}
_SIGNS: Final = {"½": 0.5, "¼": 0.25, "¾": 0.75, "⅓": 1 / 3, "⅔": 2 / 3, "⅛": 0.125}
_PARTS: Final = {
    "half": 2, "halves": 2, "quarter": 4, "quarters": 4, "third": 3, "thirds": 3, "fourth": 4,
    "fourths": 4, "fifth": 5, "fifths": 5, "eighth": 8, "eighths": 8, "tenth": 10, "tenths": 10,
}  # fmt: skip
_PRONOUN_BEFORE: Final = frozenset(
    "that this the which each every last no any other another either some only first final".split()
)
_PRONOUN_AFTER: Final = frozenset("sec second moment of time day more bit minute".split())


class Number(NamedTuple):
    """A number: its value, the first and last word it took, and `over` of an a/b left as it was.

    `listed` holds the values on both sides of an inner comma ("3,4").
    """

    value: float
    first: int
    last: int
    over: float = 0.0
    listed: tuple[float, ...] = ()


def _digits(text: str) -> float | None:
    if not text or (not text[0].isdecimal() and not (text[0] == "." and len(text) > 1)):
        return None
    if ":" in text:
        return None
    plain = text
    if "," in text:
        head, _, tail = text.partition(",")
        thousands = len(tail.split(".")[0]) == 3 and head != "0"  # noqa: PLR2004
        plain = text.replace(",", "") if thousands else text.replace(",", ".", 1)
    if plain.count(".") > 1:
        plain = plain.split(".")[0]
    try:
        return float(plain)
    except ValueError:
        return None


def _listed(text: str) -> tuple[float, ...]:
    if "," not in text:
        return ()
    out = [_digits(part) for part in text.split(",")]
    return tuple(part for part in out if part is not None)


def _joined(words: Sequence[Word], place: int, mark: str) -> bool:
    return place < len(words) and words[place].before.strip() == mark


def _word_number(words: Sequence[Word], start: int) -> tuple[float, int] | None:
    """A number in words from `start`, and its last word: "one hundred and six", "forty two"."""
    total, place, seen = 0.0, start, False
    last = start
    while place < len(words):
        text = words[place].text
        if place > start and words[place].pause:
            break
        if text in _TENS and not (seen and total % 100):
            total += _TENS[text]
        elif text in _UNITS and not (seen and (total % 10 or (total % 100 and _UNITS[text] > 9))):  # noqa: PLR2004
            if seen and total and _UNITS[text] == 0:
                break
            total += _UNITS[text]
        elif text == "hundred" and seen and total < 10:  # noqa: PLR2004
            total *= 100
        elif (
            text == "and"
            and seen
            and total >= 100  # noqa: PLR2004
            and place + 1 < len(words)
            and (words[place + 1].text in _UNITS or words[place + 1].text in _TENS)
        ):
            place += 1
            continue
        else:
            break
        seen = True
        last = place
        place += 1
    return (total, last) if seen else None


def _is_pronoun(words: Sequence[Word], place: int) -> bool:
    """Whether `one` stands for a thing: "on that one", "one sec", "no one"."""
    if words[place].text != "one":
        return False
    before = words[place - 1].text if place else ""
    after = words[place + 1].text if place + 1 < len(words) else ""
    joined = place > 0 and not words[place].pause
    return (joined and before in _PRONOUN_BEFORE) or (
        after in _PRONOUN_AFTER and not words[place + 1].pause
    )


def _fraction_after(words: Sequence[Word], place: int) -> tuple[float, int]:
    """A half, quarter or a/b that follows a whole number ending at `place`; 0 when none does."""
    texts = [words[place + k].text if place + k < len(words) else "" for k in (1, 2, 3)]
    if place + 1 < len(words) and words[place + 1].pause:
        return 0.0, place
    if texts[0] in _SIGNS:
        return _SIGNS[texts[0]], place + 1
    if texts[0] == "and":
        skip = 1 if texts[1] in ("a", "an", "one") else 0
        if texts[1 + skip] in _PARTS:
            return 1 / _PARTS[texts[1 + skip]], place + 2 + skip
        if texts[1] == "three" and texts[2] == "quarters":
            return 0.75, place + 3
    if texts[0] == "half" and (place + 2 >= len(words) or texts[1] not in ("an", "a", "hour")):
        return 0.5, place + 1
    if (
        texts[0] in ("1", "2", "3")
        and texts[1] in ("2", "3", "4")
        and _joined(words, place + 2, "/")
        and float(texts[0]) < float(texts[1])
    ):
        return float(texts[0]) / float(texts[1]), place + 2
    return 0.0, place


def _point_after(words: Sequence[Word], place: int) -> tuple[float, int]:
    """A "point five" after a number in words."""
    if place + 2 < len(words) and words[place + 1].text == "point":
        digits = ""
        last = place + 2
        while last < len(words) and words[last].text in _UNITS and _UNITS[words[last].text] <= 9:  # noqa: PLR2004
            digits += str(_UNITS[words[last].text])
            last += 1
        if digits:
            return float("0." + digits), last - 1
    return 0.0, place


def _dozen(words: Sequence[Word], value: float, last: int) -> tuple[float, int]:
    if last + 1 < len(words) and words[last + 1].text in ("dozen", "dozens"):
        return value * 12, last + 1
    return value, last


def _number_at(words: Sequence[Word], place: int) -> Number | None:
    text = words[place].text
    if text in _SIGNS:
        return Number(_SIGNS[text], place, place)
    whole = _digits(text)
    last = place
    listed = _listed(text)
    if whole is None and not _is_pronoun(words, place):
        spelt = _word_number(words, place)
        if spelt is not None:
            whole, last = spelt
            part, last = _point_after(words, last)
            whole += part
    if whole is not None and words[last].text in _UNITS:
        part_of = _PARTS.get(words[last + 1].text) if last + 1 < len(words) else None
        plural = last + 1 < len(words) and words[last + 1].text.endswith("s")
        if part_of and whole < part_of and (plural or whole == 1):
            return Number(whole / part_of, place, last + 1)
    if whole is None:
        return _loose_part(words, place)
    minus = words[place].before.endswith("-") and (
        place == 0 or words[place].before.startswith((" ", ","))
    )
    if place and words[place - 1].text in ("minus", "negative"):
        minus = True
    if minus and not (place and words[place].before.endswith("- ")):
        whole = -whole
    if _joined(words, last + 1, "/") and _digits(words[last + 1].text) is not None:
        return Number(whole, place, last + 1, over=_digits(words[last + 1].text) or 0.0)
    whole, last = _dozen(words, whole, last)
    part, end = _fraction_after(words, last)
    return Number(whole + (part if whole >= 0 else -part), place, end, listed=listed)


def _loose_part(words: Sequence[Word], place: int) -> Number | None:
    """Half, half a dozen or a dozen, without a whole number before it."""
    text = words[place].text
    after = [words[place + k].text if place + k < len(words) else "" for k in (1, 2)]
    if text == "half" and after == ["a", "dozen"]:
        return Number(6, place, place + 2)
    if text == "dozen":
        return Number(12, place, place)
    if text == "half" and after[0] not in ("of", "the", "way", "my"):
        return Number(0.5, place, place)
    return None


def numbers_in(words: Sequence[Word]) -> list[Number]:
    """Every number, in order; a clock time with a colon is not one."""
    out: list[Number] = []
    place = 0
    while place < len(words):
        found = _number_at(words, place)
        if found is None:
            place += 1
            continue
        out.append(found)
        place = found.last + 1
    return out
