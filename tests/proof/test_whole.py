"""The search over all days at once finds what a plain search of one day finds."""

from __future__ import annotations

import pytest

from coach.drivers.prove_all import Whole
from coach.drivers.prove_boxes import WORK_TO_COME
from coach.drivers.prove_ends import ends_of
from coach.drivers.prove_facts import OPENING_AT, numbers_in
from coach.drivers.prove_search import Search
from coach.drivers.prove_watch import DAY, place_of, raw_facts
from coach.session.brief import Brief
from coach.session.state import State
from tests.proof.small import Narrow, bound, day, with_dose
from tests.session.invented import axis

KINDS = frozenset({"value", "timer", "unclear", "stop", "sign"})
WIDE = ("pain in set", "sleep last night")


def tiny() -> Brief:
    return day(with_dose(bound(), "side-lying turn out", sets=axis(2), range=axis(0)))


@pytest.fixture(scope="module", name="whole")
def searched_whole() -> Whole:
    whole = Whole([("usual", tiny())])
    whole.answers = Narrow(*WIDE)
    whole.run()
    return whole


@pytest.fixture(scope="module", name="plain")
def searched_plainly() -> Search:
    search = Search(tiny(), most=60_000)
    search.day, search.kinds = Narrow(*WIDE), KINDS
    search.run()
    return search


def test_every_place_of_a_plain_search_is_a_place_of_the_whole(whole: Whole, plain: Search) -> None:
    found = {place.key for place in whole.places}
    places = {place_of(node.state) for node in plain.nodes if not node.state.aside}
    assert len(places) > 100
    assert not places - found


def test_each_day_of_a_plain_search_is_met_at_its_place(whole: Whole, plain: Search) -> None:
    met: dict[tuple[object, ...], set[tuple[object, ...]]] = {}
    for place in whole.places:
        days = met.setdefault(place.key, set())
        room = whole.rooms[place.key[0]]
        days |= {room.days[number][:OPENING_AT] for number in numbers_in(place.box.days)}
    for node in plain.nodes:
        if not node.state.aside and not node.state.end:
            assert facts(node.state) in met[place_of(node.state)]


def facts(state: State) -> tuple[object, ...]:
    """The day's facts; after the work one of them is for the diary only."""
    values = dict(zip(DAY, raw_facts(state, DAY), strict=True))
    if state.stage not in WORK_TO_COME:
        values.update(morning_up=False)
    return tuple(values.values())


def test_the_whole_of_a_tiny_plan_breaks_no_promise_and_ends(whole: Whole) -> None:
    assert not whole.broken
    ends = ends_of(whole, 0)
    assert not ends.circle
    assert 4 < ends.before_first_set < 60
