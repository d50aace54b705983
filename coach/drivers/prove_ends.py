"""That every session ends, and how long one can be, read off the places of a finished search.

Law: corrections, gear and breaks lead back to where they were begun and may be said as often as
one likes; they are not counted. Everything else must go forward.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import NamedTuple

from coach.drivers.prove_all import Whole
from coach.drivers.prove_boxes import ASIDE_AT, FORWARD
from coach.session.table import Stage

TALKS_OVER_TALKS = frozenset({"confirm", "read back"})


class Onward(NamedTuple):
    """Where places lead, and what can be said at each once more: (to, answers understood, all)."""

    leads: list[set[tuple[int, int, int]]]
    again: list[tuple[int, int]]


def forward(whole: Whole) -> Onward:
    """Where each place leads on.

    A short talk over a place is part of the step that it ends (its own prompts are left out). What
    leads back to the place itself uses up a doubt or a read-back, each of which is there once.
    """
    leads: list[set[tuple[int, int, int]]] = []
    again: list[tuple[int, int]] = []
    for place in whole.places:
        on: set[tuple[int, int, int]] = set()
        understood = every = 0
        for to, kind, answers in place.after:
            into_a_talk = opens_a_talk(place.key[ASIDE_AT], whole.places[to].key[ASIDE_AT])
            if kind == "once more":
                understood, every = max(understood, answers), every + answers
                continue
            if kind not in FORWARD or into_a_talk:
                continue
            counted = answers if kind == "value" else 0
            total = 0 if kind == "onward" else answers
            if to != place.number:
                on.add((to, counted, total))
                continue
            understood = max(understood, counted)
            every += total
        leads.append(on)
        again.append((understood, every))
    return Onward(leads, again)


def opens_a_talk(aside: str, follows: str) -> bool:
    """Whether a short talk is laid over what was there, which it leads back to one doubt later."""
    return bool(follows) and follows != aside and (not aside or follows in TALKS_OVER_TALKS)


def in_order(steps: list[set[tuple[int, int, int]]]) -> list[int]:
    """The places so that each comes before those it leads to; a circle and what follows is left out."""
    before = [0] * len(steps)
    for leads in steps:
        for to in {to for to, _, _ in leads}:
            before[to] += 1
    ready = [number for number, count in enumerate(before) if not count]
    order: list[int] = []
    while ready:
        number = ready.pop()
        order.append(number)
        for to in {to for to, _, _ in steps[number]}:
            before[to] -= 1
            if not before[to]:
                ready.append(to)
    return order


def rounds(whole: Whole) -> str:
    """The stage at which a session can go round without end, or ''."""
    order = set(in_order(forward(whole).leads))
    left = [place for place in whole.places if place.number not in order]
    return f"{left[0].key[0].value}" if left else ""


def longest(whole: Whole) -> int:
    """The most answers of one session, those not understood included (an upper bound)."""
    return _most(whole, lambda _stage: False, count_all=True)


def most_before_first_set(whole: Whole) -> int:
    """The most understood answers before the first exercise (an upper bound)."""
    return _most(whole, lambda stage: stage is Stage.EXERCISE, count_all=False)


def _most(whole: Whole, over: Callable[[Stage], bool], *, count_all: bool) -> int:
    onward, most = forward(whole), [0] * len(whole.places)
    best = 0
    for number in in_order(onward.leads):
        if over(whole.places[number].key[0]):
            best = max(best, most[number])
            continue
        here = most[number] + onward.again[number][1 if count_all else 0]
        if count_all:
            best = max(best, here)
        for to, understood, every in onward.leads[number]:
            most[to] = max(most[to], here + (every if count_all else understood))
    return best
