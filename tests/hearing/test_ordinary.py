"""Odd words about the arm are asked about; ordinary talk, compounds and other people are not."""

from __future__ import annotations

import pytest

from coach.hearing.vocabulary import FAMILIES
from coach.hearing.words import words_of
from coach.model.heard import Action, Kind
from tests.hearing.asked import answer, note


@pytest.mark.parametrize(
    "text",
    ["my thumb is all wobblewise today", "a gremlin lives in my elbow crease"],
)
def test_an_unknown_telling_about_a_part_of_the_arm_is_asked_about_and_never_stops(
    text: str,
) -> None:
    assert note(text).action == Action.CONFIRM


@pytest.mark.parametrize(
    "text",
    ["shoulder felt good today", "arm a bit tired after the game", "gremlins ate my homework"],
)
def test_ordinary_talk_and_odd_words_without_the_arm_are_left(text: str) -> None:
    assert note(text).action == Action.ACCEPT


@pytest.mark.parametrize("word", ["outside", "handball", "football", "workout", "sidearm", "teen"])
def test_a_compound_or_a_real_word_is_kept_whole(word: str) -> None:
    assert [w.text for w in words_of(word, FAMILIES)] == [word]


@pytest.mark.parametrize(
    "text",
    [
        "grandpas elbow popped at bowling",
        "a cousin of mine has a numb hand",
        "aunt fell so im at the hospital",
    ],
)
def test_a_sign_of_another_person_never_stops_the_day(text: str) -> None:
    assert note(text).action != Action.ESCALATE


@pytest.mark.parametrize(
    "text",
    [
        "my aunt fell on me and i cant lift my arm",
        "a kid ran me over and i landed on my shoulder",
        "numb again, it was fine last week",
        "the numbness is back",
    ],
)
def test_an_own_present_sign_still_stops_beside_other_people_and_times(text: str) -> None:
    assert note(text).action == Action.ESCALATE


def test_lost_strength_that_is_back_is_asked_about() -> None:
    assert note("lost some strength but its back").action == Action.CONFIRM
    assert note("lost my strength").action == Action.ESCALATE


def test_the_usual_is_no_answer_no_to_a_question_about_signs() -> None:
    ask = "Any numbness, tingling or weakness since last time?"
    assert answer(Kind.YES_NO, "just the usual", ask) != "no"
