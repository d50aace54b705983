"""Kinds of day searched together: nothing that one of them meets alone is missed."""

from __future__ import annotations

from typing import Any

import pytest

from coach.drivers.prove_all import Whole
from coach.drivers.prove_boxes import ASIDE_AT
from coach.drivers.prove_ends import ends_of
from coach.drivers.prove_facts import OPENING_AT, numbers_in
from coach.drivers.prove_watch import PLACE
from coach.model.history import History
from coach.rules import red_flags
from coach.session.brief import Brief
from tests.proof.small import Narrow, bound, day, with_dose
from tests.session.invented import asked_lately, axis, day_before

BACK_AT = PLACE.index("back")
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
DAYS = {"usual": USUAL, **OTHERS}


def searched(*days: tuple[str, Brief]) -> Whole:
    whole = Whole(days)
    whole.answers = Narrow(*WIDE)
    whole.run()
    return whole


@pytest.fixture(scope="module", name="together")
def all_together() -> Whole:
    return searched(*[(name, a_day(history)) for name, history in DAYS.items()])


@pytest.fixture(scope="module", name="alone")
def each_alone() -> dict[str, Whole]:
    return {name: searched((name, a_day(history))) for name, history in DAYS.items()}


def met(whole: Whole, name: str) -> dict[Any, set[Any]]:
    """Every place outside of a short talk with the days of one opening it was met on.

    A short talk's own prompts are searched on the first day that comes by, and which one that is
    may differ: of a screen asked again because of it only the place counts.
    """
    opening = whole.openings.names.index(name)
    found: dict[Any, set[Any]] = {}
    for place in whole.places:
        room = whole.rooms[place.key[0]]
        days = {room.days[number] for number in numbers_in(place.box.days)}
        here = {one[:OPENING_AT] for one in days if one[OPENING_AT] == opening}
        if here and not place.key[ASIDE_AT]:
            found[place.key, place.path] = set() if place.key[BACK_AT] else here
    return found


@pytest.mark.parametrize("name", DAYS)
def test_each_kind_of_day_is_met_where_it_is_met_alone(
    name: str, together: Whole, alone: dict[str, Whole]
) -> None:
    one, all_days = met(alone[name], name), met(together, name)
    assert len(one) > 100
    assert one.keys() == all_days.keys()
    assert not {place for place in one if not one[place] <= all_days[place]}


@pytest.mark.parametrize("name", DAYS)
def test_a_session_is_as_long_as_it_is_alone(
    name: str, together: Whole, alone: dict[str, Whole]
) -> None:
    opening = together.openings.names.index(name)
    assert ends_of(together, opening) == ends_of(alone[name], 0)


def test_days_share_the_steps_they_have_in_common(together: Whole, alone: dict[str, Whole]) -> None:
    assert together.calls < sum(whole.calls for whole in alone.values()) * 0.6


def test_a_day_that_is_the_same_takes_no_step_of_its_own() -> None:
    once = searched(("usual", a_day(USUAL)))
    twice = searched(("usual", a_day(USUAL)), ("again", a_day(USUAL)))
    assert once.calls > 500
    assert twice.calls == once.calls
    assert met(twice, "again") == met(once, "usual")


def test_a_fault_that_only_one_of_the_days_shows_is_found_and_told_for_that_day(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    due = red_flags.alone_today
    monkeypatch.setattr(red_flags, "alone_today", lambda facts: due(facts)[:1])
    days = (("asked lately", a_day(USUAL)), ("waited", a_day(History((day_before(),)))))
    assert "P6" not in {promise for promise, _words in searched(days[0]).broken}
    broken = searched(*days).broken
    openings = {opening for (promise, _), (*_, opening) in broken.items() if promise == "P6"}
    assert openings == {1}
