"""Many pieces of one long look, handed to as many workers as there are cores, as far as time allows.

Law: a piece is known by its number, so that what comes out does not depend on who did it. Only where
a system forks well are there several workers; elsewhere the pieces are done one after the other.
"""

from __future__ import annotations

import multiprocessing
import os
import signal
import sys
import time
from typing import TYPE_CHECKING, Any, Final, TypeVar

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

T = TypeVar("T")
WAIT_S: Final = 0.5  # how often a long look sees whether its time is over


class TimeIsOver(Exception):
    """The look took as long as it may."""


def cores() -> int:
    """How many workers there may be."""
    return os.cpu_count() or 1


def done(
    work: Callable[[int], T],
    pieces: int,
    workers: int,
    until: float | None,
    last_words_s: float = 0.0,
) -> Iterator[tuple[int, T]]:
    """Each piece's number with what came of it, as they are done.

    `until` is an instant of `time.monotonic` (None: no end). Raises `TimeIsOver`; Ctrl-C ends it,
    after so many seconds at most in which pieces that ask `asked_to_end` say what they know.
    """
    if workers <= 1 or not sys.platform.startswith("linux"):
        for number in range(pieces):
            yield number, work(number)
            _in_time(until)
        return
    _WORK.append(work)
    forks = multiprocessing.get_context("fork")
    _ASKED.append(forks.Event())
    try:
        with forks.Pool(workers, signal.signal, (signal.SIGINT, signal.SIG_IGN)) as pool:
            coming = pool.imap_unordered(_one, range(pieces))
            for _piece in range(pieces):
                try:
                    found = _next(coming, until)
                except KeyboardInterrupt:
                    if not last_words_s or asked_to_end():
                        raise
                    _ASKED[-1].set()
                    until = time.monotonic() + last_words_s
                    found = _next(coming, until)
                yield found
    finally:
        _WORK.pop()
        _ASKED.pop()


def asked_to_end() -> bool:
    """Whether the look was ended by Ctrl-C, so that a worker says what it knows so far."""
    return bool(_ASKED) and bool(_ASKED[-1].is_set())


_ASKED: Final[list[Any]] = []  # set once the look is to end; shared with the workers
_WORK: Final[list[Callable[[int], Any]]] = []  # what a forked worker finds; it cannot be sent


def _one(number: int) -> tuple[int, Any]:
    return number, _WORK[-1](number)


def _next(coming: Any, until: float | None) -> tuple[int, Any]:  # noqa: ANN401 - a pool's own kind
    while True:
        _in_time(until)
        try:
            found: tuple[int, Any] = coming.next(WAIT_S)
        except multiprocessing.TimeoutError:
            continue
        return found


def _in_time(until: float | None) -> None:
    if until is not None and time.monotonic() > until:
        raise TimeIsOver
