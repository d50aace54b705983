"""Each promise's check catches the faults planted against it, and finds nothing without them."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from coach.drivers.prove import declared_cuts, steps_unreached
from coach.drivers.prove_ends import in_order
from coach.model import program
from coach.model.program import Answers, Place, Script, Step
from tests.proof.seeded import HIDDEN, ROUND, SEEDED, Patch, Plant
from tests.proof.small import bound, day, look

LONGEST_TALK = 12
AT = Place("scripts/close.yaml", 7)


@pytest.mark.parametrize(("promise", "plant"), SEEDED, ids=[p.__name__ for _, p in SEEDED])
def test_a_planted_fault_is_caught_by_a_short_talk(
    promise: str, plant: Callable[[Patch], Plant], monkeypatch: pytest.MonkeyPatch
) -> None:
    where = plant(monkeypatch)
    looked = look(where.brief, *where.wide, kinds=where.kinds, until=promise)
    caught = [one for one in looked.broken.values() if one.promise == promise]
    assert caught, looked
    assert min(len(one.talk) for one in caught) <= LONGEST_TALK, caught


@pytest.mark.parametrize(
    "kinds", ["value timer unclear", "value timer fix", "value timer break sign stop"]
)
def test_without_a_fault_nothing_is_found(kinds: str) -> None:
    looked = look(day(), "pain in set", "sleep last night", "which to fix", kinds=kinds)
    assert not looked.broken
    assert looked.situations > 50


@pytest.mark.parametrize("plant", ROUND, ids=[p.__name__ for p in ROUND])
def test_a_talk_that_goes_round_is_found(
    plant: Callable[[Patch], Plant], monkeypatch: pytest.MonkeyPatch
) -> None:
    where = plant(monkeypatch)
    edges = with_counts(look(where.brief, *where.wide, kinds=where.kinds).edges)
    assert len(in_order(edges)) < len(edges)


def test_without_a_fault_no_talk_goes_round() -> None:
    looked = look(day(), "pain now", "read back", kinds="value timer unclear maybe")
    edges = with_counts(looked.edges)
    assert len(in_order(edges)) == len(edges)


def with_counts(edges: list[set[tuple[int, int]]]) -> list[set[tuple[int, int, int]]]:
    """The steps of a plain search as the order wants them: (to, answers understood, all)."""
    return [{(to, one, 1) for to, one in leads} for leads in edges]


@pytest.mark.parametrize("plant", HIDDEN, ids=[p.__name__ for p in HIDDEN])
def test_a_number_that_no_rule_declares_is_seen(
    plant: Callable[[Patch], Plant], monkeypatch: pytest.MonkeyPatch
) -> None:
    declared = declared_cuts(bound(), [day()])
    where = plant(monkeypatch)
    assert look(where.brief, *where.wide, kinds=where.kinds).compared - declared


def test_without_a_fault_every_comparison_is_declared() -> None:
    facts = ("pain in set", "sleep last night", "pain in warm-up", "waking pain", "reps in set")
    assert not look(day(), *facts).compared - declared_cuts(bound(), [day()])


def closing(*steps: Step, tests: tuple[program.Test, ...] = ()) -> Script:
    return Script("close", (Step("ask", (), AT, fact="pain after"), *steps), tests, (), AT)


@pytest.mark.parametrize(
    "script",
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
def test_a_step_that_no_answer_leads_to_is_named_by_its_line(script: Script) -> None:
    made = bound()
    made = made._replace(program=made.program._replace(scripts=(script,)))
    looked = look(day(made), "pain after", "sore")
    unreached = steps_unreached(made, looked.asked, looked.events)
    assert [(one.line, one.what.split()[0]) for one in unreached] == [(7, "note")]
