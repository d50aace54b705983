"""Steps taken over from another kind of day lead where the day's own steps lead."""

from __future__ import annotations

from typing import Any

import pytest

from coach.drivers.prove_all import Whole
from coach.drivers.prove_facts import Shared
from coach.model.history import History
from coach.rules import red_flags
from coach.session.brief import Brief
from tests.proof.small import Narrow, bound, day, with_dose
from tests.session.invented import asked_lately, axis, day_before

WIDE = ("pain in set", "sleep last night")


def a_day(history: History) -> Brief:
    made = with_dose(bound(), "side-lying turn out", sets=axis(2), range=axis(0))
    return day(made, history)


USUAL = asked_lately()
OTHERS = {
    "lifted": USUAL._replace(lifted=True),
    "after a day": History((day_before(),), asked_alone=USUAL.asked_alone),
    "sore last time": History((day_before(morning_up=True),), asked_alone=USUAL.asked_alone),
    "the first day": History(),
}


def searched(name: str, brief: Brief, shared: Shared) -> Whole:
    whole = Whole((name, brief), shared)
    whole.run()
    return whole


def narrow() -> Shared:
    shared = Shared()
    shared.answers = Narrow(*WIDE)
    return shared


def found(whole: Whole) -> dict[Any, Any]:
    """Every place with the days it was met on, by their facts."""
    return {
        (place.key, place.path): (
            {day for number, day in enumerate(whole.days) if place.box.days >> number & 1},
            place.box.talk,
            place.box.kept,
        )
        for place in whole.places
    }


@pytest.mark.parametrize("name", OTHERS)
def test_a_day_is_searched_the_same_after_another_as_alone(name: str) -> None:
    brief = a_day(OTHERS[name])
    alone = searched(name, brief, narrow())
    shared = narrow()
    searched("usual", a_day(USUAL), shared)
    after = searched(name, brief, shared)
    assert found(after) == found(alone)
    assert after.calls < alone.calls


def test_a_day_that_is_the_same_takes_over_every_step() -> None:
    shared = narrow()
    first = searched("usual", a_day(USUAL), shared)
    second = searched("again", a_day(USUAL), shared)
    assert first.calls > 500
    assert second.calls == 0
    assert found(second) == found(first)


def test_a_fault_that_only_the_second_day_shows_is_found_after_the_first(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    due = red_flags.alone_today
    monkeypatch.setattr(red_flags, "alone_today", lambda facts: due(facts)[:1])
    shared = narrow()
    first = searched("asked lately", a_day(USUAL), shared)
    second = searched("waited", a_day(History((day_before(),))), shared)
    assert "P6" not in {promise for promise, _words in first.broken}
    assert "P6" in {promise for promise, _words in second.broken}
