"""Chains of pieces: each by one worker in order, told as they are done, in time."""

from __future__ import annotations

import time

import pytest

from coach.drivers.workers import TimeIsOver, in_chains


def test_a_chain_remembers_what_came_before_and_another_does_not() -> None:
    known: list[int] = []

    def look(number: int) -> tuple[int, ...]:
        known.append(number)
        return tuple(known)

    found = dict(in_chains(look, [[0, 2, 4], [1, 3]], None))
    assert found == {0: (0,), 2: (0, 2), 4: (0, 2, 4), 1: (1,), 3: (1, 3)}


def test_what_is_done_is_told_before_the_rest_is() -> None:
    def look(number: int) -> int:
        time.sleep(30 if number == 2 else 0)
        return number

    coming = in_chains(look, [[0, 2], [1]], time.monotonic() + 3)
    assert {next(coming)[0], next(coming)[0]} == {0, 1}
    with pytest.raises(TimeIsOver):
        next(coming)


def test_a_piece_that_fails_is_a_failure_of_the_whole() -> None:
    def look(number: int) -> float:
        return 1 / number

    with pytest.raises(ZeroDivisionError):
        dict(in_chains(look, [[1], [0]], None))
