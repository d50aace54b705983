import pytest

from coach.model.decisions import Basis
from coach.model.program import Exercise
from coach.rules.picking import after_a_pinch, why_pick


@pytest.mark.parametrize(
    ("name", "rule"),
    [
        ("band diagonal lift", "pick.lift"),
        ("cross-body stretch", "pick.stretch"),
        ("reach-across row", "pick.row"),
        ("hip-hinge reach", "pick.reach"),
        ("band row", "pick.version"),
    ],
)
def test_each_choice_names_its_rule_and_that_it_is_practice(
    row: Exercise, name: str, rule: str
) -> None:
    decision = why_pick(row._replace(name=name))
    assert decision.rule == rule
    assert decision.basis is Basis.PRACTICE
    assert decision.place == row.place


@pytest.mark.parametrize(
    ("name", "outcome"), [("cross-body stretch", "leave"), ("band row", "go on")]
)
def test_a_pinch_in_front_ends_the_stretch_for_today(
    row: Exercise, name: str, outcome: str
) -> None:
    assert after_a_pinch(row._replace(name=name)).outcome == outcome
