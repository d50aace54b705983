"""That every session ends, and how long one can be, read off the places of a finished search.

Law: corrections, gear and breaks lead back to where they were begun and may be said as often as
one likes; they are not counted. Everything else must go forward. Each opening is followed by itself.
"""

from __future__ import annotations

from typing import NamedTuple

from coach.drivers.prove_all import Whole
from coach.drivers.prove_boxes import ASIDE_AT, FORWARD
from coach.session.table import Stage

TALKS_OVER_TALKS = frozenset({"confirm", "read back"})


class Ends(NamedTuple):
    """Where a session can go round without end ('' where none can), and upper bounds of its length.

    `before_first_set` counts answers that are understood, `longest` those that are not as well.
    """

    circle: str
    before_first_set: int
    longest: int


class Onward(NamedTuple):
    """Where places lead, and what can be said at each once more: (to, answers understood, all)."""

    leads: list[set[tuple[int, int, int]]]
    again: list[tuple[int, int]]


def ends_of(whole: Whole, opening: int) -> Ends:
    """How sessions of one opening end."""
    onward = forward(whole, opening)
    order = in_order(onward.leads)
    if len(order) < len(whole.places):
        left = set(range(len(whole.places))).difference(order)
        return Ends(whole.places[min(left)].key[0].value, 0, 0)
    return Ends(
        "",
        _before_first_set(whole, onward, order),
        _longest(onward, order),
    )


def forward(whole: Whole, opening: int) -> Onward:
    """Where each place leads on, on one opening.

    A short talk over a place is part of the step that it ends (its own prompts are left out). What
    leads back to the place itself uses up a doubt or a read-back, each of which is there once.
    """
    leads: list[set[tuple[int, int, int]]] = []
    again: list[tuple[int, int]] = []
    for place in whole.places:
        on: set[tuple[int, int, int]] = set()
        understood = every = 0
        for (to, kind, answers), openings in place.after.items():
            if not openings >> opening & 1:
                continue
            if kind == "once more":
                understood, every = max(understood, answers), every + answers
                continue
            if kind not in FORWARD:
                continue
            if opens_a_talk(place.key[ASIDE_AT], whole.places[to].key[ASIDE_AT]):
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


def _longest(onward: Onward, order: list[int]) -> int:
    """The most answers of one session, those not understood included."""
    most = [0] * len(order)
    best = 0
    for number in order:
        here = most[number] + onward.again[number][1]
        best = max(best, here)
        for to, _understood, every in onward.leads[number]:
            most[to] = max(most[to], here + every)
    return best


def _before_first_set(whole: Whole, onward: Onward, order: list[int]) -> int:
    """The most understood answers before the first exercise."""
    most = [0] * len(order)
    best = 0
    for number in order:
        if whole.places[number].key[0] is Stage.EXERCISE:
            best = max(best, most[number])
            continue
        here = most[number] + onward.again[number][0]
        for to, understood, _every in onward.leads[number]:
            most[to] = max(most[to], here + understood)
    return best
