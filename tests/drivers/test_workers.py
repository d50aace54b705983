"""Pieces of a long look: told as they are done, in time."""

from __future__ import annotations

import time

import pytest

from coach.drivers.workers import TimeIsOver, done


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
