"""Reads counts, effort, measured numbers, choices, a word, and the list of screen sections.

Law: a count is the lower end of a range, an effort the higher; a typed unit that is not the one
asked for is asked again, never converted in silence; `none` to the list must be exactly that word.
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
    from coach.model.heard import Question

_REPS: Final = word_set("reps rep holds hold throws throw pitches pitch times clean good done")
# In a count where more is worse: words that leave its upper end open, and other things' numbers.
_OPEN_ENDED: Final = word_set("over above more least plus upwards beyond past almost nearly")
_NONE: Final = word_set("none nothing no not any zero")
_THINGS: Final = word_set("inning innings game games batters strikes hits runs outs pitches throws")
_LAST: Final = {"pitches": "pitch", "innings": "inning"}
_UNITS: Final[dict[str, frozenset[str]]] = {
    "h": word_set("h hr hrs hour hours"),
    "min": word_set("min mins minute minutes m"),
    "s": word_set("s sec secs second seconds"),
    "kg": word_set("kg kgs kilo kilos kilogram kilograms"),
    "lb": word_set("lb lbs pound pounds"),
    "cm": word_set("cm centimeter centimeters centimetre centimetres"),
    "m": word_set("m meter meters metre metres"),
    "ft": word_set("ft foot feet"),
    "years": word_set("years year yrs yr y"),
    "days": word_set("day days"),
    "weeks": word_set("week weeks"),
}
_ANY_UNIT: Final = frozenset().union(*_UNITS.values())
_AROUND_A_LIST: Final = word_set("and plus the my a an i ive have got only just both here with")
_SECTIONS: Final = tuple("123456")


def _bounded(value: float, question: Question) -> float | None:
    return value if question.low <= value <= question.high else None


def _after_fix(words: Sequence[Word]) -> list[Number]:
    start = starts_after_fix(words)
    found = numbers_in(words)
    return [n for n in found if n.first >= start] or found


def _places(found: Sequence[Number]) -> tuple[int, ...]:
    return tuple(place for n in found for place in range(n.first, n.last + 1))


def read_count(text: str, words: Sequence[Word], question: Question) -> Read:
    """A whole number of reps, holds or throws within the question's bounds.

    The question's own unit counts like those: `20 serves`, where serves are asked for.
    """
    asked = _REPS | word_set(f"{question.unit} {question.unit.removesuffix('s')}")
    units = OTHER_UNITS - asked
    found = [
        n
        for n in _after_fix(words)
        if not n.over and not has_other_unit(words, n, units) and tail_of(text, words, n) != "%"
    ]
    named = [n for n in found if text_at(words, n.last + 1) in asked]
    found = named or found
    if not found:
        return UNCLEAR
    value = _bounded(float(int(min(n.value for n in found))), question)
    return Read(value, _places(found)) if value is not None and value >= 0 else UNCLEAR


def read_most(text: str, words: Sequence[Word], question: Question) -> Read:
    """A whole number where more is worse: the higher end of a range, and one count only.

    Several counts (`45, then 6 more`), `over 60`, `60+` and another thing's number are unclear.
    """
    unit = word_set(
        f"{question.unit} {question.unit.removesuffix('s')} {_LAST.get(question.unit, '')}"
    )
    found = _after_fix(words)
    named = [n for n in found if text_at(words, n.last + 1) in unit]
    found = named or found
    values = sorted({n.value for n in found})
    texts = {word.text for word in words}
    if not found and texts <= _NONE | unit and texts & _NONE:
        return Read(0.0, tuple(range(len(words))))
    one_range = len(found) == 2 and found[1].first - found[0].last <= 2  # noqa: PLR2004  its two ends
    if not found or (len(found) > 1 and not one_range) or texts & _OPEN_ENDED:
        return UNCLEAR
    wrong = [n for n in found if n.over or _is_of_another_thing(text, words, n, unit)]
    value = _bounded(float(int(values[-1])), question)
    return Read(value, _places(found)) if value is not None and not wrong else UNCLEAR


def _is_of_another_thing(
    text: str, words: Sequence[Word], number: Number, unit: frozenset[str]
) -> bool:
    other = (OTHER_UNITS | _THINGS) - unit
    return has_other_unit(words, number, other) or tail_of(text, words, number) in {"%", "+"}


def read_effort(text: str, words: Sequence[Word], question: Question) -> Read:
    """Effort 0 to 10, the higher end of a range."""
    found = [
        n
        for n in _after_fix(words)
        if n.over in (0.0, 10.0)
        and not (n.value == 10 and text_at(words, n.first - 1) == "of")  # noqa: PLR2004
        and tail_of(text, words, n) != "%"
        and not (has_other_unit(words, n, OTHER_UNITS - {"of"}))
    ]
    if not found:
        return UNCLEAR
    value = _bounded(max(n.value for n in found), question)
    return Read(value, _places(found)) if value is not None else UNCLEAR


def read_number(words: Sequence[Word], question: Question) -> Read:
    """A measured number in the question's unit; another unit is unclear."""
    wanted = _UNITS.get(question.unit, word_set(question.unit))
    found = []
    for number in _after_fix(words):
        after = text_at(words, number.last + 1)
        if after in _ANY_UNIT and after not in wanted:
            return UNCLEAR
        found.append(number)
    if len(found) != 1 or found[0].over:
        return UNCLEAR
    value = _bounded(found[0].value, question)
    return Read(value, _places(found)) if value is not None else UNCLEAR


def _plain(name: str) -> list[str]:
    return name.lower().replace("'", "").replace("-", " ").split()


def _named_whole(texts: list[str], choices: Sequence[str]) -> tuple[list[str], set[int]]:
    """The choices whose whole name stands in the answer, and the places their words take."""
    found: list[str] = []
    taken: set[int] = set()
    for name in sorted(choices, key=lambda one: -len(_plain(one))):
        plain = _plain(name)
        width = len(plain)
        for start in range(len(texts) - width + 1):
            places = set(range(start, start + width))
            if texts[start : start + width] == plain and not places & taken:
                found.append(name)
                taken |= places
    return found, taken


def _chosen(words: Sequence[Word], choices: Sequence[str]) -> list[str]:
    """The choices named by name or by number, in the order of the list.

    A number inside a name (`2 lb dumbbell`) or with a unit is no number of the list.
    """
    texts = [word.text for word in words]
    named, taken = _named_whole(texts, choices)
    after = [*texts[1:], ""]
    free = {
        text
        for place, text in enumerate(texts)
        if place not in taken and after[place] not in _ANY_UNIT
    }
    out = [name for n, name in enumerate(choices, 1) if name in named or str(n) in free]
    if out:
        return out
    loose = [c for c in choices if texts and set(texts) <= set(_plain(c))]
    return loose if len(loose) == 1 else []


def read_choice(words: Sequence[Word], question: Question) -> Read:
    """One of the question's choices, by number or name; two at once are unclear."""
    found = _chosen(words, question.choices)
    longest = max(found, key=len, default="")
    inside = all(set(_plain(name)) <= set(_plain(longest)) for name in found)
    if len(found) == 1 or (found and inside):
        return Read(longest, tuple(range(len(words))))
    return UNCLEAR


def read_choices(words: Sequence[Word], question: Question) -> Read:
    """Several of the choices, all of them, or none."""
    texts = [word.text for word in words]
    if texts in (["none"], ["nothing"], ["no"]):
        return Read(("none",), (0,))
    if texts and texts[0] in ("all", "everything") and not {"but", "except", "not"} & set(texts):
        return Read(question.choices, (0,))
    if {"no", "not", "except", "but", "without"} & set(texts):
        return UNCLEAR
    found = _listed(texts, question.choices) or tuple(_chosen(words, question.choices))
    if not found or not _all_said(texts, question.choices):
        return UNCLEAR
    return Read(found, tuple(range(len(words))))


def _listed(texts: list[str], choices: Sequence[str]) -> tuple[str, ...]:
    """The choices of an answer that is a bare list of numbers: `1, 3`, `1,3`, `1 and 3`."""
    parts = [part for text in texts if text != "and" for part in text.replace(".", ",").split(",")]
    numbers = [part for part in parts if part]
    allowed = {str(n): name for n, name in enumerate(choices, 1)}
    if not numbers or not all(number in allowed for number in numbers):
        return ()
    return tuple(name for number, name in allowed.items() if number in numbers)


def _all_said(texts: list[str], choices: Sequence[str]) -> bool:
    """Whether every word belongs to a choice, its number, or the small words around a list."""
    known = {word for name in choices for word in _plain(name)}
    known |= {str(n) for n in range(1, len(choices) + 1)} | _AROUND_A_LIST
    return all(part in known for text in texts for part in text.split(",") if part)


def read_word(words: Sequence[Word], question: Question) -> Read:
    """The one expected word of the question's choices, alone."""
    typed = [word.text for word in words]
    for name in question.choices:
        if typed == _plain(name):
            return Read(name, tuple(range(len(words))))
    return UNCLEAR


def read_none_or_list(words: Sequence[Word], question: Question) -> Read:
    """Exactly `none`, or the numbers of sections; anything else is unclear."""
    texts = [word.text for word in words if word.text != "and"]
    if texts == ["none"] and not words[0].guessed:
        return Read("none", (0,))
    allowed = [c for c in question.choices if c.isdecimal()] or _SECTIONS
    flat = [part for text in texts for part in text.replace(".", ",").split(",") if part]
    if flat and all(part in allowed for part in flat):
        return Read(tuple(sorted(set(flat))), tuple(range(len(words))))
    return UNCLEAR
