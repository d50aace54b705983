"""A script's branches become flat steps, each with the comparisons that must hold for it."""

from __future__ import annotations

import pytest

from coach.model.program import Script, Step
from coach.model.program import Test as Comparison
from tests.texts.changing import Desk

AFTER = "scripts/after-a-set.yaml"
CHECK_IN = "scripts/check-in.yaml"


def script_of(desk: Desk, moment: str) -> Script:
    return next(script for script in desk.program().scripts if script.moment == moment)


def shape(step: Step) -> tuple[str, str, str, tuple[int, ...]]:
    return step.kind, step.fact or step.effect, step.target or step.text, step.when


def test_branches_are_flat_and_in_order(desk: Desk) -> None:
    script = script_of(desk, "after a set")
    assert script.tests == (
        Comparison("pain in set", "between", (1, 2)),
        Comparison("sets left", "at least", (1,)),
        Comparison("ache kind", "is", ("joint",)),
    )
    assert [shape(step) for step in script.steps] == [
        ("ask", "reps in set", "", ()),
        ("ask", "pain in set", "How much did it hurt in that set?", ()),
        ("ask also", "ache kind", "Was that muscle at work, or inside the joint?", (0, 1)),
        ("tell", "", "Then the next set stays shorter.", (0, 1, 2)),
        ("effect", "shorter range", "this exercise", (0, 1, 2)),
        ("note", "", "Ache inside the joint during a set.", (0, 1, 2)),
        ("ask", "felt in set", "", ()),
    ]


def test_tests_around_an_effect_are_marked(desk: Desk) -> None:
    assert script_of(desk, "after a set").effect_tests == (0, 1, 2)


def test_a_stop_is_a_step_with_its_tier(desk: Desk) -> None:
    desk.change(
        "          - note: Ache inside the joint during a set.", "          - stop: same day", AFTER
    )
    stop = next(step for step in script_of(desk, "after a set").steps if step.kind == "stop")
    assert (stop.effect, stop.target, stop.place.line) == ("stop", "same day", 14)


def test_two_things_today_are_two_steps(desk: Desk) -> None:
    desk.change(
        "          - shorter range: this exercise",
        "          - today: no throwing, rest day",
        AFTER,
    )
    targets = [s.target for s in script_of(desk, "after a set").steps if s.effect == "today"]
    assert targets == ["no throwing", "rest day"]


def test_the_second_reviewed_wording_is_kept(desk: Desk) -> None:
    desk.change(
        "  - ask: screen joint", "  - ask: screen joint\n    wording: 2", "scripts/screen.yaml"
    )
    wordings = {s.fact: s.wording for s in script_of(desk, "screen").steps}
    assert (wordings["screen joint"], wordings["screen arm"]) == (2, 1)


def test_a_warning_sign_may_be_asked_again_in_a_branch(desk: Desk) -> None:
    desk.change(
        "          - tell: Then", "          - ask: numb tingle\n          - tell: Then", AFTER
    )
    assert desk.ids() == []


def test_its_words_stay_the_coachs(desk: Desk) -> None:
    desk.change(
        "          - tell: Then",
        "          - ask: numb tingle\n            words: All fine?\n          - tell: Then",
        AFTER,
    )
    assert desk.ids() == ["screen.reworded"]


@pytest.mark.parametrize(
    ("condition", "finding"),
    [
        ("sleep last night is below 6 h", []),
        ("sleep last night is at least 6 h", []),
        ("sleep last night is at most 6 h", ["when.form"]),
        ("sleep last night is below 6", ["value.unit_missing"]),
        ("sleep last night is below 25 h", ["value.out_of_range"]),
        ("pain now is at least 3", []),
        ("pain now is 3", []),
        ("pain now is 3 to 5", []),
        ("pain now is below 3", ["when.form"]),
        ("pain now is at least 11", ["value.out_of_range"]),
        ("pain now is at least 0", ["when.always"]),
        ("pain now is at most 10", ["when.always"]),
        ("pain now is 5 to 3", ["value.range_turned"]),
        ("against usual is worse", []),
        ("against usual is worse or same", []),
        ("against usual is not better", []),
        ("against usual is not better or same", ["when.form"]),
        ("against usual is worse or same or better", ["when.always"]),
        ("against usual is bad", ["when.unknown_answer"]),
        ("screen arm is yes", ["when.unknown_fact"]),
        ("pain in set is 3", ["when.unknown_fact"]),
        ("age is below 16 years", []),
        ("phase is settle", []),
        ("phase is build or settle", ["when.always"]),
        ("worst pain in 7 days is at least 4 and pain now is 2", []),
        ("pain now is at most 2 and pain now is at least 3", ["when.never"]),
        ("throwing tomorrow is game", ["when.unknown_fact"]),  # not asked by then
    ],
)
def test_conditions(condition: str, finding: list[str], desk: Desk) -> None:
    branch = f"  - when {condition}:\n      - tell: A calm day then.\n  - ask: throwing tomorrow"
    assert desk.change("  - ask: throwing tomorrow", branch, CHECK_IN).ids() == finding


def test_a_fact_asked_in_a_branch_is_not_known_after_it(desk: Desk) -> None:
    later = "  - when ache kind is joint:\n      - tell: A calm day then.\n  - ask: felt in set"
    assert desk.change("  - ask: felt in set", later, AFTER).ids() == ["when.unknown_fact"]


def test_an_own_question_of_the_check_in_is_known_in_later_moments(desk: Desk) -> None:
    own = "  - ask also: school stress\n    words: Was it a hard day?\n    answers: yes or no\n"
    desk.change("  - ask: worst pain", own + "  - ask: worst pain", CHECK_IN)
    later = "  - when school stress is yes:\n      - one set fewer: all\n  - ask: felt in set"
    assert desk.change("  - ask: felt in set", later, AFTER).ids() == []


@pytest.mark.parametrize("value", ["at least 50", "at least 50 throws", "20 to 60 throws", "20"])
def test_what_is_counted_may_be_said_with_its_word(value: str, desk: Desk) -> None:
    own = (
        "  - ask also: throws at home\n    words: How many throws at home?\n"
        "    answers: number 0 to 200 throws\n"
        f"  - when throws at home is {value}:\n      - no step up: all\n"
    )
    assert desk.change("  - ask: worst pain", own + "  - ask: worst pain", CHECK_IN).ids() == []


def test_every_is_kept_in_days(desk: Desk) -> None:
    own = "  - ask also: school stress\n    words: Was it a hard week?\n    answers: yes or no\n    every: 7 days\n"
    desk.change("  - ask: worst pain", own + "  - ask: worst pain", CHECK_IN)
    step = next(s for s in script_of(desk, "check-in").steps if s.kind == "ask also")
    assert step.every_days == 7


def test_a_phrase_heard_too_is_kept_with_its_group(desk: Desk) -> None:
    desk.change(
        "phases:", "heard too:\n  numb tingle:\n    - buzzing in the pinky\nphases:", "program.yaml"
    )
    assert desk.program().heard_phrases == (("numb_tingle", "buzzing in the pinky"),)
