"""Some kinds of day searched together, and what is left of it: figures, breaks, what was met.

Law: a part is small and made of plain values, so that it can come from another process. A part that
was cut short says so and shows nothing but the breaks it met.
"""

from __future__ import annotations

import contextlib
import gc
import resource
import time
from collections.abc import Callable, Iterable, Sequence
from typing import Any, NamedTuple

from coach.drivers.prove_all import Whole
from coach.drivers.prove_answers import Compared
from coach.drivers.prove_ends import ends_of
from coach.drivers.prove_search import Break, Search
from coach.drivers.workers import asked_to_end
from coach.session.brief import Brief

FLAT_AT_MOST = 60_000  # situations looked through for the shortest conversation of one break


class Part(NamedTuple):
    """What the search of some kinds of day showed; `mb` of the process that searched them."""

    names: tuple[str, ...]
    finished: bool
    broken: tuple[Break, ...]
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
    openings: Sequence[tuple[str, Brief]],
    until: float | None,
    progress: Callable[[Whole], None],
) -> Part:
    """Search some kinds of day; `until` is an instant of `time.monotonic` (None: no end)."""
    whole = Whole(openings)

    def watch(at: Whole) -> None:
        progress(at)
        if asked_to_end() or (until is not None and time.monotonic() > until):
            raise KeyboardInterrupt

    whole.on_progress = watch
    finished = False
    gc.disable()  # what a search keeps holds no circles
    with contextlib.suppress(KeyboardInterrupt, OverflowError):
        whole.run()
        finished = True
    gc.enable()
    names = tuple(whole.openings.names)
    ends = [ends_of(whole, number) for number in range(len(names))] if finished else []
    circles = [
        Break("P7", f"a session can go round at {end.circle}", (), name)
        for name, end in zip(names, ends, strict=False)
        if end.circle
    ]
    return Part(
        names=names,
        finished=finished,
        broken=(*shortest_breaks(whole), *circles),
        situations=whole.situations(),
        places=len(whole.places),
        turns=whole.turns,
        answers=whole.calls,
        asked=frozenset(fact for place in whole.places for fact in place.asks),
        events=frozenset(whole.events),
        compared=frozenset(whole.compared),
        most_questions=max((end.before_first_set for end in ends), default=0),
        longest=max((end.longest for end in ends), default=0),
        mb=round(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024, 1),
    )


def shortest_breaks(whole: Whole) -> Iterable[Break]:
    """For each break the shortest conversation of one day that shows it."""
    for (promise, words), (place, tried, opening) in whole.broken.items():
        flat = Search(whole.openings.briefs[opening].plain, most=FLAT_AT_MOST)
        flat.until = (promise, words)
        with contextlib.suppress(OverflowError):
            flat.run()
        found = flat.broken.get((promise, words))
        shown = found or Break(promise, words, way_to(whole, place, tried))
        yield shown._replace(day=whole.openings.names[opening])


def way_to(whole: Whole, place: int, tried: Any) -> tuple[tuple[str, str], ...]:  # noqa: ANN401
    """The way by places, where no shorter conversation was found in time."""
    way: list[tuple[str, str]] = [("", tried.words)] if tried is not None else []
    while place > 0:
        at = whole.places[place]
        way.append((at.prompt, at.tried.words if at.tried else ""))
        place = at.parent
    return tuple(reversed(way))
