"""Each promise's check catches the faults planted against it, and finds nothing without them."""

from __future__ import annotations

import contextlib
from collections import Counter
from collections.abc import Callable

import pytest

from coach.drivers.promises import PROMISES
from coach.drivers.prove import declared_cuts, steps_unreached
from coach.drivers.prove_all import Whole
from coach.drivers.prove_ends import ends_of, in_order
from coach.drivers.prove_search import Break
from coach.drivers.prove_told import retold, talk_of
from coach.model import program
from coach.model.program import Answers, Step
from tests.proof.seeded import (
    AT,
    AT_ONCE,
    HIDDEN,
    ROUND,
    SEEDS,
    SHOWN,
    UNREACHED,
    Patch,
    Plant,
    Seed,
    closing,
)
from tests.proof.small import Narrow, bound, day, look

LONGEST_TALK = 12


def seeds(why: str) -> list[Seed]:
    """Those that no conversation shows, for one reason."""
    return [seed for seed in SEEDS if seed.why == why]


def name(seed: Seed) -> str:
    """For the list of tests."""
    return seed.plant.__name__


def shortest(where: Plant, promise: str) -> Break:
    """The shortest conversation that the search finds for a promise."""
    looked = look(where.brief, *where.wide, kinds=where.kinds, until=promise)
    caught = [one for one in looked.broken.values() if one.promise == promise]
    assert caught, looked
    return min(caught, key=lambda one: len(one.talk))


def test_every_promise_has_two_planted_faults_or_more_and_all_have_thirty() -> None:
    count = Counter(seed.promise for seed in SEEDS)
    assert all(count[promise] >= 2 for promise in PROMISES)
    assert len({name(seed) for seed in SEEDS}) == len(SEEDS) >= 30
    assert all(seed.answers <= LONGEST_TALK for seed in SEEDS)


@pytest.mark.parametrize("seed", SHOWN, ids=name)
def test_a_planted_fault_is_caught_by_a_talk_as_short_as_the_table_says(
    seed: Seed, monkeypatch: Patch
) -> None:
    where = seed.plant(monkeypatch)
    found = retold(shortest(where, seed.promise), where.brief)
    assert found is not None
    assert len(talk_of(found, where.brief)) == seed.answers


def test_a_start_that_overlooks_a_stop_is_caught_before_the_first_answer(
    monkeypatch: Patch,
) -> None:
    (seed,) = seeds(AT_ONCE)
    assert shortest(seed.plant(monkeypatch), "P1").talk == ()


@pytest.mark.parametrize(
    "seed",
    [pytest.param(seed, id=name(seed)) for seed in SEEDS if seed.why not in {UNREACHED, HIDDEN}],
)
def test_the_search_of_all_days_at_once_catches_it_too(seed: Seed, monkeypatch: Patch) -> None:
    where = seed.plant(monkeypatch)
    whole = Whole([("the day", where.brief)])
    whole.answers = Narrow(*where.wide)
    whole.on_progress = _until(seed.promise)
    with contextlib.suppress(Caught):
        whole.run()
        assert seed.promise == "P7"
        assert ends_of(whole, 0).circle


class Caught(Exception):
    """The break that was looked for is found."""


def _until(promise: str) -> Callable[[Whole], None]:
    def look_at(whole: Whole) -> None:
        if any(broken == promise for broken, _words in whole.broken):
            raise Caught

    return look_at


@pytest.mark.parametrize(
    "kinds", ["value timer unclear", "value timer fix", "value timer break sign stop"]
)
def test_without_a_fault_nothing_is_found(kinds: str) -> None:
    looked = look(day(), "pain in set", "sleep last night", "which to fix", kinds=kinds)
    assert not looked.broken
    assert looked.situations > 50


@pytest.mark.parametrize("seed", seeds(ROUND), ids=name)
def test_a_talk_that_goes_round_is_found(seed: Seed, monkeypatch: Patch) -> None:
    where = seed.plant(monkeypatch)
    edges = with_counts(look(where.brief, *where.wide, kinds=where.kinds).edges)
    assert len(in_order(edges)) < len(edges)


def test_without_a_fault_no_talk_goes_round() -> None:
    looked = look(day(), "pain now", "read back", kinds="value timer unclear maybe")
    edges = with_counts(looked.edges)
    assert len(in_order(edges)) == len(edges)


def with_counts(edges: list[set[tuple[int, int]]]) -> list[set[tuple[int, int, int]]]:
    """The steps of a plain search as the order wants them: (to, answers understood, all)."""
    return [{(to, one, 1) for to, one in leads} for leads in edges]


@pytest.mark.parametrize("seed", seeds(HIDDEN), ids=name)
def test_a_number_that_no_rule_declares_is_seen(seed: Seed, monkeypatch: Patch) -> None:
    declared = declared_cuts(bound(), [day()])
    where = seed.plant(monkeypatch)
    assert look(where.brief, *where.wide, kinds=where.kinds).compared - declared


def test_without_a_fault_every_comparison_is_declared() -> None:
    facts = ("pain in set", "sleep last night", "pain in warm-up", "waking pain", "reps in set")
    assert not look(day(), *facts).compared - declared_cuts(bound(), [day()])


@pytest.mark.parametrize("seed", seeds(UNREACHED), ids=name)
def test_a_line_that_a_fault_keeps_from_being_reached_is_named_and_reached_without_it(
    seed: Seed, monkeypatch: Patch
) -> None:
    where = seed.plant(monkeypatch)
    assert unreached(where) == [7]
    monkeypatch.undo()
    assert unreached(where) == []


@pytest.mark.parametrize(
    "brief",
    [
        closing(
            Step("note", (0,), AT, text="Pain was eleven."),
            tests=(program.Test("pain after", "at least", (11.0,)),),
        ),
        closing(
            Step("ask also", (), AT, text="Sore?", fact="sore", answers=Answers("yes or no")),
            Step("note", (0, 1), AT, text="Yes and no."),
            tests=(program.Test("sore", "is", ("yes",)), program.Test("sore", "is", ("no",))),
        ),
    ],
    ids=["a_number_off_the_scale", "two_answers_at_once"],
)
def test_a_step_that_no_answer_leads_to_is_named_by_its_line(brief: object) -> None:
    assert unreached(Plant(brief, ("pain after", "sore"))) == [7]  # type: ignore[arg-type]


def unreached(where: Plant) -> list[int]:
    """The lines of the day's scripts that a search does not reach."""
    looked = look(where.brief, *where.wide, kinds=where.kinds)
    made = bound()._replace(program=where.brief.program)
    return [one.line for one in steps_unreached(made, looked.asked, looked.events)]
