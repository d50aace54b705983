"""One kind of day searched by itself, and what is left of it: figures, breaks, what was met.

Law: a part is small and made of plain values, so that it can come from another process. A part that
was cut short says so and shows nothing but the breaks it met.
"""

from __future__ import annotations

import contextlib
import gc
import resource
import time
from collections.abc import Callable, Iterable
from typing import Any, NamedTuple

from coach.drivers.prove_all import Whole
from coach.drivers.prove_answers import Compared
from coach.drivers.prove_ends import longest, most_before_first_set, rounds
from coach.drivers.prove_facts import Shared
from coach.drivers.prove_search import Break, Search
from coach.session.brief import Brief

FLAT_AT_MOST = 60_000  # situations looked through for the shortest conversation of one break


class Part(NamedTuple):
    """What the search of one kind of day showed; `circle` is where it goes round, or ''."""

    name: str
    finished: bool
    broken: tuple[Break, ...]
    circle: str
    situations: int
    places: int
    turns: int
    answers: int
    asked: frozenset[str]
    events: frozenset[tuple[str, str]]
    compared: frozenset[Compared]
    most_questions: int
    longest: int
    mb: float


def part_of(
    opening: tuple[str, Brief],
    shared: Shared,
    until: float | None,
    progress: Callable[[Whole], None],
) -> Part:
    """Search one kind of day; `until` is an instant of `time.monotonic` (None: no end).

    `shared` holds the steps of the kinds of day that were searched before it.
    """
    whole = Whole(opening, shared)

    def watch(at: Whole) -> None:
        progress(at)
        if until is not None and time.monotonic() > until:
            raise KeyboardInterrupt

    whole.on_progress = watch
    finished = False
    gc.disable()  # what a search keeps holds no circles
    with contextlib.suppress(KeyboardInterrupt, OverflowError):
        whole.run()
        finished = True
    gc.enable()
    circle = rounds(whole) if finished else ""
    counted = finished and not circle
    return Part(
        name=opening[0],
        finished=finished,
        broken=tuple(shortest_breaks(whole)),
        circle=circle,
        situations=whole.situations(),
        places=len(whole.places),
        turns=whole.turns,
        answers=whole.calls,
        asked=frozenset(fact for place in whole.places for fact in place.asks),
        events=frozenset(whole.events),
        compared=frozenset(whole.compared),
        most_questions=most_before_first_set(whole) if counted else 0,
        longest=longest(whole) if counted else 0,
        mb=round(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024, 1),
    )


def shortest_breaks(whole: Whole) -> Iterable[Break]:
    """For each break the shortest conversation of one day that shows it."""
    for (promise, words), (place, tried) in whole.broken.items():
        flat = Search(whole.brief.plain, most=FLAT_AT_MOST)
        flat.until = (promise, words)
        with contextlib.suppress(OverflowError):
            flat.run()
        found = flat.broken.get((promise, words))
        yield (found or Break(promise, words, way_to(whole, place, tried)))._replace(day=whole.name)


def way_to(whole: Whole, place: int, tried: Any) -> tuple[tuple[str, str], ...]:  # noqa: ANN401
    """The way by places, where no shorter conversation was found in time."""
    way: list[tuple[str, str]] = [("", tried.words)] if tried is not None else []
    while place > 0:
        at = whole.places[place]
        way.append((at.prompt, at.tried.words if at.tried else ""))
        place = at.parent
    return tuple(reversed(way))
