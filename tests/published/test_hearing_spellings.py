"""Misspellings: 150 pairs of a public list (see the licence notes in `tests/hearing/outside`)."""

from __future__ import annotations

from pathlib import Path

import pytest

from coach.hearing.vocabulary import FAMILIES
from coach.hearing.words import words_of

DATA = Path(__file__).parents[1] / "hearing" / "outside" / "misspellings_coach_vocab.tsv"
PAIRS = [
    tuple(line.split("\t")) for line in DATA.read_text(encoding="utf-8").splitlines()[1:] if line
]
# read as another form of the same word, or left on purpose
DECLINED = {
    ("hav", "half"): "have is the commoner word",
    ("pich", "pinch"): "the list gives both; pitch is the commoner in sport",
    ("coloer", "colour"): "read as color, the same word",
    ("falled", "fallen"): "read as fell, the same verb",
    ("breathin", "breathing"): "kept as a spelling of its own, in the same family",
}


def test_the_list_is_whole() -> None:
    assert len(PAIRS) == 150


@pytest.mark.parametrize("pair", PAIRS, ids="-".join)
def test_a_public_misspelling_maps_or_is_declined_on_purpose(pair: tuple[str, str]) -> None:
    wrong, right = pair
    word = words_of(wrong, FAMILIES)[0]
    assert word.text == right or pair in DECLINED


def test_each_declined_pair_is_still_declined() -> None:
    for wrong, right in DECLINED:
        assert words_of(wrong, FAMILIES)[0].text != right
