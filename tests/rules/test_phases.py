from datetime import date

import pytest

from coach.model.program import Exercise, Opened, Phase, Place, Plan, Program
from coach.model.program import Test as Comparison
from coach.rules.phases import next_phase, proposal, unmet

TODAY = date(2026, 11, 25)
PLACE = Place("program.yaml", 9)
WEEKS = Comparison("weeks in phase", "at least", (3.0,))
PAIN = Comparison("worst pain in 7 days", "at most", (2.0,))
BUILD = Phase("build", ("band row",), (), "", PLACE)
REACH = Phase("reach", ("band row", "wall reach"), (WEEKS, PAIN), "Hands level.", PLACE)


@pytest.fixture
def program(row: Exercise) -> Program:
    high = row._replace(name="wall reach", family="overhead")
    return Program(
        name="invented",
        version=1,
        about="",
        languages=("English",),
        exercises=(row, high),
        scripts=(),
        phases=(BUILD, REACH),
        warm_up=(),
        gentle=(),
        twice_a_day=(),
        recovery=(),
        most_questions_before_first_set=30,
        most_questions_after_a_set=5,
        heard_phrases=(),
        place=PLACE,
    )


def test_the_next_phase_is_the_programs(program: Program) -> None:
    assert next_phase(program, "build") == REACH
    assert next_phase(program, "reach") is None
    assert next_phase(program, "unheard of") is None


@pytest.mark.parametrize(
    ("facts", "open_tests"),
    [
        ({"weeks in phase": 3.0, "worst pain in 7 days": 2.0}, ()),
        ({"weeks in phase": 2.0, "worst pain in 7 days": 2.0}, (WEEKS,)),
        ({"weeks in phase": 3.0, "worst pain in 7 days": 2.5}, (PAIN,)),
        ({"weeks in phase": 3.0}, (PAIN,)),
        ({}, (WEEKS, PAIN)),
    ],
)
def test_what_the_diary_does_not_show_is_open(
    facts: dict[str, str | float], open_tests: tuple[Comparison, ...]
) -> None:
    assert unmet(REACH, facts) == open_tests


@pytest.mark.parametrize(("weeks", "outcome"), [(2.0, "not yet"), (3.0, "propose")])
def test_a_phase_is_proposed_and_never_opened(
    program: Program, plan: Plan, weeks: float, outcome: str
) -> None:
    facts: dict[str, str | float] = {"weeks in phase": weeks, "worst pain in 7 days": 0.0}
    got = proposal(program, plan, facts, TODAY)
    assert got is not None
    waiting, decision = got
    assert decision.outcome == outcome
    assert (waiting.phase, waiting.clinician_sees) == ("reach", "Hands level.")
    assert waiting.locked == ("wall reach",)


def test_what_the_clinician_opened_is_no_longer_named_as_locked(
    program: Program, plan: Plan
) -> None:
    opened = plan._replace(opened=(Opened("overhead", "2026-11-20", "M. Aalto", PLACE),))
    got = proposal(program, opened, {}, TODAY)
    assert got is not None
    assert got[0].locked == ()


def test_after_the_last_phase_nothing_is_proposed(program: Program, plan: Plan) -> None:
    assert proposal(program, plan._replace(phase="reach"), {}, TODAY) is None
