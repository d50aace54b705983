"""Reads and matches the phrase patterns in which the warning signs are written down.

A pattern is words in order: a small word is itself, CAPITALS a family, `a|b` either; `..` lets up
to three words stand between, `...` up to seven, `....` up to fourteen even over a full stop;
`A & B` is either order, up to seven apart. Filler words ("really", "my") may stand anywhere.
Law: matching costs at most a fixed number of steps a word. Never raises on any text.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence

    from coach.hearing.words import Word

GAPS: Final = {"..": 3, "...": 7, "....": 14}
OVER_STOPS: Final = 14
SENTENCE: Final = 2  # the pause of a full stop
FILLERS_BETWEEN: Final = 2
TRIES: Final = 3  # places tried for one step, so that the cost of a pattern is bounded


class Step(NamedTuple):
    """One item of a pattern: the keys that fit, and how many words may stand before it."""

    keys: frozenset[str]
    gap: int


class Pattern(NamedTuple):
    """A phrase: its steps, its place in the table it came from, and its text for reading."""

    steps: tuple[Step, ...]
    owner: int
    text: str


class Table(NamedTuple):
    """Patterns by the key their first step may have."""

    by_first: Mapping[str, tuple[Pattern, ...]]


class Match(NamedTuple):
    """Where a pattern fits: its owner and the places of the words that fitted its steps."""

    owner: int
    at: tuple[int, ...]
    text: str


def _both_orders(items: list[str]) -> list[list[str]]:
    if "&" not in items:
        return [items]
    cut = items.index("&")
    left, right = items[:cut], items[cut + 1 :]
    return [[*left, "...", *right], [*right, "...", *left]]


def parsed(text: str, owner: int) -> list[Pattern]:
    """The pattern written as `text`; two of them when it holds `&`."""
    out: list[Pattern] = []
    for items in _both_orders(text.split()):
        steps: list[Step] = []
        gap = 0
        for item in items:
            if item in GAPS:
                gap = GAPS[item]
                continue
            steps.append(Step(frozenset(item.split("|")), gap))
            gap = 0
        out.append(Pattern(tuple(steps), owner, text))
    return out


def table(texts: Iterable[tuple[str, int]]) -> Table:
    """A table of the patterns given as (text, owner)."""
    by_first: dict[str, list[Pattern]] = {}
    for text, owner in texts:
        for pattern in parsed(text, owner):
            for key in pattern.steps[0].keys:
                by_first.setdefault(key, []).append(pattern)
    return Table({key: tuple(found) for key, found in by_first.items()})


def _next(words: Sequence[Word], place: int, step: Step, *, close: bool) -> list[int]:
    """The places after `place` where `step` may fit, nearest first."""
    out: list[int] = []
    fillers = 0
    between = 0
    for here in range(place + 1, len(words)):
        word = words[here]
        if word.pause and (close or (word.pause == SENTENCE and step.gap < OVER_STOPS)):
            break
        if not step.keys.isdisjoint(word.keys):
            out.append(here)
            if step.gap == 0:
                break
        between += 1
        if "FILLER" in word.keys and fillers < FILLERS_BETWEEN:
            fillers += 1
            between -= 1
        if between > step.gap:
            break
    return out


def fits(
    words: Sequence[Word], start: int, pattern: Pattern, *, close: bool = False
) -> tuple[int, ...] | None:
    """The places that `pattern` takes from `start` on, nearest first, or None."""
    return _rest(words, (start,), pattern.steps, close=close)


def _rest(
    words: Sequence[Word], taken: tuple[int, ...], steps: tuple[Step, ...], *, close: bool
) -> tuple[int, ...] | None:
    if len(taken) == len(steps):
        return taken
    for here in _next(words, taken[-1], steps[len(taken)], close=close)[:TRIES]:
        found = _rest(words, (*taken, here), steps, close=close)
        if found is not None:
            return found
    return None


def matches(words: Sequence[Word], patterns: Table, *, close: bool = False) -> list[Match]:
    """Every fit of every pattern, in the order of the words; `close` ends them at any pause."""
    out: list[Match] = []
    by_first = patterns.by_first
    present: set[str] = set().union(*(word.keys for word in words)) if words else set()
    for start, word in enumerate(words):
        for key in word.keys:
            for pattern in by_first.get(key, ()):
                if any(present.isdisjoint(step.keys) for step in pattern.steps[1:]):
                    continue
                at = fits(words, start, pattern, close=close)
                if at is not None:
                    out.append(Match(pattern.owner, at, pattern.text))
    return out
