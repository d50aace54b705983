"""Reads one line that answers several questions: labelled values only.

Law (rule checkin.line): a value fills a question only when its label stands beside it; a bare
number fills nothing, save the first question of a set line, whose order is asked on screen; `none`
fills nothing here; the line never answers the screen. What is missing is asked.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.hearing.counts import read_count, read_effort, read_number
from coach.hearing.numbers import numbers_in
from coach.hearing.pain import read_pain
from coach.hearing.set_feel import read_set_feel
from coach.hearing.sleep import read_sleep
from coach.hearing.slots import Read, word_set
from coach.hearing.throwing import RANK, by_day, read_throwing, two_naughts
from coach.model.heard import Kind, Question

if TYPE_CHECKING:
    from collections.abc import Sequence

    from coach.hearing.numbers import Number
    from coach.hearing.words import Word
    from coach.model.heard import Value

# label words; the fact is chosen by the kind of part that fits and the words of its name
_MORNING: Final = word_set("morning waking woke wake wakeup am rising")
_PAIN: Final = word_set("pain hurts hurt ache sore soreness now")
_WORST: Final = word_set("worst max peak highest")
_AFTER: Final = word_set("after afterwards")
_SLEEP: Final = word_set("slept sleep hours sleeping asleep bed hour h hr hrs")
_THROWN: Final = word_set(
    "threw throws throw throwing thrown pitches pitched pitch bullpen pen catch toss tossed serves "
    "served bowled balls long mound spikes"
)
_GAMES: Final = word_set("game match games matches tournament scrimmage competition")
_EFFORT: Final = word_set("effort rpe exertion")
_MINUTES: Final = word_set("minutes minute mins min")
_REPS: Final = word_set("reps rep holds hold clean good")
_FELT: Final = word_set("felt feel feels")


class Part:
    """A run of words between commas, semicolons or joining words, that holds one value."""

    __slots__ = ("texts", "words")

    def __init__(self, words: Sequence[Word]) -> None:
        self.words = words
        self.texts = {word.text for word in words}


def _parts(words: Sequence[Word]) -> list[Part]:
    """The line cut at commas, full stops, `and`, and before each new label after a value."""
    out: list[list[Word]] = [[]]
    for word in words:
        new = bool(word.pause) and ":" not in word.before
        if out[-1] and (new or word.text in ("and", "plus", "but") or _new_label(word, out[-1])):
            out.append([])
        if word.text not in ("and", "plus", "but") or word.pause:
            out[-1].append(word)
    return [Part(part) for part in out if part]


_ATTACHED: Final = word_set("this no of last worst waking the morning a pitch out long throw")
_LABELS: Final = _MORNING | _PAIN | _WORST | _SLEEP | _THROWN | _GAMES | _EFFORT
_STARTERS: Final = word_set(
    "pain morning waking slept sleep threw worst effort rpe game match felt no bullpen pen catch "
    "long played bowled pitched throws throw games"
)


def _new_label(word: Word, part: Sequence[Word]) -> bool:
    """Whether a label opens a new part: the one before already holds a value."""
    if word.text not in _STARTERS or part[-1].text in _ATTACHED:
        return False
    if word.text in ("throws", "throw") and part[-1].text[0].isdecimal() and len(part) == 1:
        return False
    return any(w.text[0].isdecimal() or w.text in ("none", "zero", "no") for w in part)


def _find(parts: Sequence[Question], kind: Kind, *names: str) -> Question | None:
    for question in parts:
        if question.kind == kind and all(name in question.fact for name in names):
            return question
    return None


def _pain_question(part: Part, parts: Sequence[Question]) -> Question | None:
    if part.texts & _MORNING:
        return next((q for q in parts if "waking" in q.fact or "morning" in q.fact), None)
    if part.texts & _AFTER:
        return next((q for q in parts if "pain" in q.fact and "after" in q.fact), None)
    if part.texts & _WORST:
        return next(
            (q for q in parts if "pain" in q.fact and ("worst" in q.fact or "set" in q.fact)), None
        )
    named = ("pain now", "pain in set", "pain")
    return next((q for name in named for q in parts if q.fact.startswith(name)), None)


def _throw_question(part: Part, parts: Sequence[Question]) -> tuple[Question | None, bool]:
    """The throwing question a part answers, and whether it is about a game to come today."""
    today = _find(parts, Kind.THROWING, "today")
    past = _find(parts, Kind.THROWING, "yesterday") or _find(parts, Kind.THROWING, "last")
    if part.texts & _GAMES and today is not None and "yesterday" not in part.texts:
        return today, True
    if "today" in part.texts or "tonight" in part.texts:
        return today, True
    return past or today, False


class Line:
    """What a line filled so far."""

    __slots__ = ("also", "at", "missed", "values")

    def __init__(self) -> None:
        self.values: dict[str, Value] = {}
        self.also: list[tuple[str, Value]] = []
        self.at: list[tuple[int, int]] = []
        self.missed: list[str] = []

    def fill(self, question: Question | None, read: Read, part: Part) -> bool:
        """Keep the value if it was understood and its question is in the line."""
        if question is None or read.value is None:
            return False
        old = self.values.get(question.fact)
        if isinstance(old, float) and isinstance(read.value, float):
            lower = question.kind in (Kind.SLEEP_HOURS, Kind.COUNT)
            value: Value = min(old, read.value) if lower else max(old, read.value)
        elif (
            isinstance(old, str)
            and isinstance(read.value, str)
            and old in RANK
            and read.value in RANK
        ):
            value = min(old, read.value, key=RANK.index)
        else:
            value = read.value
        self.values[question.fact] = value
        self.also += read.also
        self.at.append((part.words[0].start, part.words[-1].end))
        return True


def _fill_part(line: Line, part: Part, text: str, parts: Sequence[Question]) -> bool:
    if part.texts & _SLEEP and (q := _find(parts, Kind.SLEEP_HOURS)):
        return line.fill(q, read_sleep(part.words), part)
    if part.texts & _EFFORT and (q := _find(parts, Kind.EFFORT)):
        return line.fill(q, read_effort(text, part.words, q), part)
    if part.texts & _MINUTES and (q := next((q for q in parts if "minutes" in q.fact), None)):
        return line.fill(q, read_number(part.words, q), part)
    if part.texts & (_PAIN | _MORNING | _WORST):
        return line.fill(_pain_question(part, parts), read_pain(text, part.words, worst=True), part)
    if part.texts & (_THROWN | _GAMES):
        return _fill_throwing(line, part, text, parts)
    if part.texts & _REPS and (q := _find(parts, Kind.COUNT)):
        return line.fill(q, read_count(text, part.words, q), part)
    return False


def _fill_throwing(line: Line, part: Part, text: str, parts: Sequence[Question]) -> bool:
    days = by_day(text, part.words)
    if len(days) > 1:
        return _fill_days(line, part, days, parts)
    question, today = _throw_question(part, parts)
    read = read_throwing(text, part.words)
    if today and "tomorrow" in part.texts:
        return line.fill(question, read._replace(value="none"), part)
    return line.fill(question, read, part)


def _fill_days(line: Line, part: Part, days: dict[str, Read], parts: Sequence[Question]) -> bool:
    """Each day's value to the question about that day; False where none was understood."""
    filled = [line.fill(_find(parts, Kind.THROWING, d), read, part) for d, read in days.items()]
    return any(filled)


def _only_throwing(line: Line, text: str, words: Sequence[Word], parts: Sequence[Question]) -> bool:
    """A line that asks for throwing alone: there a day, or one none for each, is label enough."""
    if not words or any(question.kind != Kind.THROWING for question in parts):
        return False
    days = by_day(text, words)
    if not days and len(parts) == 2 and two_naughts(text, words):  # noqa: PLR2004
        days = {part.fact.rpartition(" ")[2]: Read("none", (0,)) for part in parts}
    return _fill_days(line, Part(words), days, parts)


def read_line(text: str, words: Sequence[Word], question: Question) -> Line:
    """The values that the line's labels fill, by fact; what fitted nothing in `missed`."""
    line = Line()
    if _only_throwing(line, text, words, question.parts):
        return line
    first = question.parts[0] if question.parts else None
    for place, part in enumerate(_parts(words)):
        bare = place == 0 and first is not None and first.kind == Kind.COUNT
        if bare and first is not None and not part.texts & (_LABELS - _REPS):
            filled = line.fill(first, _first_count(text, part, first), part)
        else:
            filled = _fill_part(line, part, text, question.parts) or _fill_felt(
                line, part, text, question
            )
        if not filled:
            line.missed.append(text[part.words[0].start : part.words[-1].end])
    return line


def _first_count(text: str, part: Part, question: Question) -> Read:
    """The first bare number of a set line; a second one beside it ("12 2") fills nothing."""
    numbers = numbers_in(part.words)
    cut = numbers[1].first if len(numbers) > 1 and not _is_range(part, numbers) else None
    return read_count(text, part.words[:cut], question)


def _is_range(part: Part, numbers: Sequence[Number]) -> bool:
    between = {word.text for word in part.words[numbers[0].last + 1 : numbers[1].first]}
    mark = part.words[numbers[1].first].before.strip()
    return bool(between & {"or", "to", "maybe", "no", "wait"}) or mark in ("-", "\u2013")


def _fill_felt(line: Line, part: Part, text: str, question: Question) -> bool:
    felt = _find(question.parts, Kind.SET_FEEL)
    if felt is None:
        return False
    return line.fill(felt, read_set_feel(text, part.words, felt.choices), part)
