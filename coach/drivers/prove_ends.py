"""That every session ends, and how long one can be, read off the places of a finished search.

Law: corrections, gear and breaks lead back to where they were begun and may be said as often as
one likes; they are not counted. Everything else must go forward.
"""

from __future__ import annotations

from coach.drivers.prove_all import Whole
from coach.session.table import Stage

FORWARD = frozenset({"value", "unclear", "maybe", "timer", "stop", "sign"})


def forward(whole: Whole) -> list[set[tuple[int, int]]]:
    """For each place where it leads, with 1 where an answer was understood, else 0."""
    return [
        {
            (to, 1 if kind == "value" else 0)
            for to, kind in place.after
            if kind in FORWARD and (to != place.number or kind == "value")
        }
        for place in whole.places
    ]


def in_order(steps: list[set[tuple[int, int]]]) -> list[int]:
    """The places so that each comes before those it leads to; a circle and what follows is left out."""
    before = [0] * len(steps)
    for leads in steps:
        for to in {to for to, _ in leads}:
            before[to] += 1
    ready = [number for number, count in enumerate(before) if not count]
    order: list[int] = []
    while ready:
        number = ready.pop()
        order.append(number)
        for to in {to for to, _ in steps[number]}:
            before[to] -= 1
            if not before[to]:
                ready.append(to)
    return order


def rounds(whole: Whole) -> str:
    """The stage at which a session can go round without end, or ''."""
    order = set(in_order(forward(whole)))
    left = [place for place in whole.places if place.number not in order]
    return f"{left[0].key[0].value}" if left else ""


def longest(whole: Whole) -> int:
    """The most answers of one session, those not understood included (an upper bound)."""
    return _most(whole, lambda _stage: False, count_all=True)


def most_before_first_set(whole: Whole) -> int:
    """The most understood answers before the first exercise (an upper bound)."""
    return _most(whole, lambda stage: stage is Stage.EXERCISE, count_all=False)


def _most(whole: Whole, over: object, *, count_all: bool) -> int:
    steps, most = forward(whole), [0] * len(whole.places)
    best = 0
    for number in in_order(steps):
        stage = whole.places[number].key[0]
        if callable(over) and over(stage):
            best = max(best, most[number])
            continue
        if count_all:
            best = max(best, most[number])
        for to, understood in steps[number]:
            most[to] = max(most[to], most[number] + (1 if count_all else understood))
    return best
