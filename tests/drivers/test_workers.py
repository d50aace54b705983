"""Pieces of a long look: told as they are done, in time."""

from __future__ import annotations

import os
import signal
import sys
import threading
import time

import pytest

from coach.drivers.workers import TimeIsOver, asked_to_end, done


@pytest.mark.parametrize("workers", [1, 2])
def test_each_piece_is_told_with_its_number(workers: int) -> None:
    def look(number: int) -> int:
        return number * number

    assert dict(done(look, 4, workers, None)) == {0: 0, 1: 1, 2: 4, 3: 9}


def test_what_is_done_is_told_before_the_rest_is() -> None:
    def look(number: int) -> int:
        time.sleep(30 if number == 2 else 0)
        return number

    coming = done(look, 3, 2, time.monotonic() + 3)
    assert {next(coming)[0], next(coming)[0]} == {0, 1}
    with pytest.raises(TimeIsOver):
        next(coming)


def test_a_piece_that_fails_is_a_failure_of_the_whole() -> None:
    def look(number: int) -> float:
        return 1 / number

    with pytest.raises(ZeroDivisionError):
        dict(done(look, 2, 2, None))


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="one worker elsewhere")
def test_after_ctrl_c_the_workers_say_what_they_know() -> None:
    def look(number: int) -> str:
        for _tenth in range(200):
            if asked_to_end():
                return f"{number}: some"
            time.sleep(0.1)
        return f"{number}: all"

    threading.Timer(1.5, os.kill, (os.getpid(), signal.SIGINT)).start()
    assert dict(done(look, 2, 2, None, 10.0)) == {0: "0: some", 1: "1: some"}


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="one worker elsewhere")
def test_without_last_words_ctrl_c_ends_at_once() -> None:
    threading.Timer(1.5, os.kill, (os.getpid(), signal.SIGINT)).start()
    with pytest.raises(KeyboardInterrupt):
        dict(done(lambda _n: time.sleep(20), 2, 2, None))
