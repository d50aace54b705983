"""The grade is that of Kincaid et al. 1975, as another tool counts it, give or take syllables."""

from __future__ import annotations

import re

import pytest
import textstat

from coach.texts.reading_grade import grade, syllables, words_of
from tests.house.sentences import spoken

HARD = [
    "Initiate glenohumeral external rotation during isometric scapular retraction.",
    "Coordinate momentary positional adjustments continually throughout repetition.",
    "Discontinue participation immediately following symptomatic exacerbation today.",
]


def sentences() -> list[str]:
    return [one for said in spoken() for one in re.split(r"(?<=[.?!])\s+", said.text)]


def graded(sentence: str) -> float | None:
    words = words_of(sentence)
    return grade(len(words), sum(map(syllables, words)))


def test_it_agrees_with_another_count_over_every_shipped_sentence() -> None:
    pairs = [(graded(one), textstat.textstat.flesch_kincaid_grade(one)) for one in sentences()]
    apart = [abs(ours - theirs) for ours, theirs in pairs if ours is not None]
    assert len(apart) > 100
    assert sum(apart) / len(apart) < 1.0
    assert max(apart) < 4.0  # one syllable in a sentence of five words is 2.4


@pytest.mark.parametrize("sentence", HARD)
def test_a_hard_sentence_is_hard_in_both(sentence: str) -> None:
    ours = graded(sentence)
    assert ours is not None
    assert ours > 6
    assert textstat.textstat.flesch_kincaid_grade(sentence) > 6


def test_no_shipped_sentence_is_over_the_limit() -> None:
    assert [one for one in sentences() if (graded(one) or 0) > 6] == []


def test_four_words_have_no_grade_and_five_have_one() -> None:
    assert graded("Immediately discontinue repetition today.") is None
    assert graded("Immediately discontinue repetition of today.") is not None
