"""What a set said ends with its set, where the next one says it anew; a script keeps the rest."""

from __future__ import annotations

import pytest

from coach.model.program import Answers, Script, Step
from coach.model.program import Test as Comparison
from coach.session.brief import Brief
from tests.session.invented import HERE, MONDAY, asked_lately, brief

PAIN = Comparison("pain in set", "is", (2.0,))
FIRST = Comparison("set", "is", (1.0,))
JOINT = Comparison("ache kind", "is", ("joint",))
FINE = Comparison("felt in set", "is", ("fine",))
ASKS = tuple(Step("ask", (), HERE, fact=f) for f in ("reps in set", "pain in set", "felt in set"))
KINDS = Answers("choice", choices=("muscle", "joint"))


def kind_asked(*when: int, every: int = 0) -> Step:
    return Step(
        "ask also", when, HERE, text="Which?", fact="ache kind", answers=KINDS, every_days=every
    )


def told(*when: int) -> Step:
    return Step("tell", when, HERE, text="Keep it small.")


def with_script(steps: tuple[Step, ...], tests: tuple[Comparison, ...]) -> Brief:
    made = brief(asked_lately())
    script = Script("after a set", (*ASKS, *steps), tests, (), HERE)
    program = made.program._replace(scripts=(script,))
    return Brief(made.bound._replace(program=program), made.history, MONDAY)


def ends_with_its_set(steps: tuple[Step, ...], *tests: Comparison) -> list[bool]:
    made = with_script(steps, tests)
    return [bool(made.about_one_set >> made.tests.index(test) & 1) for test in tests]


def test_pain_and_the_number_of_a_set_are_known_anew_at_each() -> None:
    assert ends_with_its_set((told(0, 1),), PAIN, FIRST) == [True, True]


def test_a_question_in_the_branch_that_looks_at_it_is_asked_anew() -> None:
    assert ends_with_its_set((kind_asked(0), told(0, 1)), PAIN, JOINT) == [True, True]


@pytest.mark.parametrize(
    "steps",
    [
        pytest.param((kind_asked(0), told(1)), id="looked at outside its branch"),
        pytest.param((told(1), kind_asked()), id="looked at before it is asked"),
        pytest.param((kind_asked(every=7), told(1)), id="not asked every day"),
    ],
)
def test_an_answer_that_a_later_set_may_look_at_unasked_is_kept(steps: tuple[Step, ...]) -> None:
    assert ends_with_its_set(steps, PAIN, JOINT)[1] is False


def test_what_was_felt_is_kept_since_it_is_not_asked_at_every_set() -> None:
    assert ends_with_its_set((told(0),), FINE) == [False]
