"""An answer in a language the ear does not know."""

from __future__ import annotations

import pytest

from coach.hearing import is_foreign


@pytest.mark.parametrize(
    "text",
    [
        "me duele el hombro",
        "ich habe schmerzen",
        "j ai mal epaule aujourd hui",
        "плечо болит",
        "肩が痛い",
    ],
)
def test_other_languages_are_noticed(text: str) -> None:
    assert is_foreign(text)


@pytest.mark.parametrize(
    "text",
    [
        "my shoulder hurts",
        "2",
        "",
        "no",
        "pain is 3 in la",
        "threw 40 yesterday",
        "die hard set",
        "👍",
    ],
)
def test_english_is_left_alone(text: str) -> None:
    assert not is_foreign(text)
