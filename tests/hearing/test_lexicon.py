"""What a program may add to the ear, and what is refused."""

from __future__ import annotations

import pytest

from coach.hearing import BUILT_IN, hear, why_refused, with_phrases
from coach.model.flags import Group
from coach.model.heard import Action, Kind, Question

NOTE = Question("note", Kind.OWN_WORDS)


def test_an_added_phrase_is_heard_in_any_case_and_under_the_same_rules() -> None:
    ear = with_phrases(BUILT_IN, [(Group.NUMB_TINGLE, "Zombie arm")])
    assert hear(NOTE, "got that ZOMBIE ARM again", ear).group == Group.NUMB_TINGLE
    assert hear(NOTE, "no zombie arm today", ear).group is None
    assert hear(NOTE, "got that zombie arm again").action == Action.CONFIRM  # an odd word, no more


def test_an_addition_takes_nothing_away() -> None:
    ear = with_phrases(BUILT_IN, [(Group.NUMB_TINGLE, "zombie arm")])
    assert hear(NOTE, "my hand is numb", ear).action == Action.ESCALATE
    assert len(ear.entries) == len(BUILT_IN.entries) + 1


@pytest.mark.parametrize(
    "phrase", ["pain", "my arm hurts", "sore", "", "!!", "abc", "a b c d e f g h i"]
)
def test_too_common_or_empty_a_phrase_is_refused_with_its_reason(phrase: str) -> None:
    ear = with_phrases(BUILT_IN, [(Group.WEAK_DROP, phrase)])
    assert ear.entries == BUILT_IN.entries
    assert [r.phrase for r in ear.refused] == [phrase]
    assert ear.refused[0].reason == why_refused(phrase)


@pytest.mark.parametrize("phrase", ["zombie arm", "clunky", "a b c d e f g zombie"])
def test_a_telling_phrase_is_taken(phrase: str) -> None:
    assert why_refused(phrase) is None
