"""How hard a sentence reads: the school grade of Kincaid et al. 1975.

Law: a floor, not a reading test. Syllables are counted by groups of vowels, which is close and
never exact, so a finding made of it is a warning.
"""

from __future__ import annotations

import re
from typing import Final

# Kincaid, Fishburne, Rogers, Chissom 1975, Research Branch Report 8-75: 0.39 words a sentence +
# 11.8 syllables a word - 15.59.
A_WORD: Final = 0.39
A_SYLLABLE: Final = 11.8
LESS: Final = 15.59
HIGHEST: Final = 6.0  # sixth grade is commonly asked for of texts for patients; set here
FEWEST_WORDS: Final = 5  # in a shorter sentence one long word swings the figure; set here

_WORD: Final = re.compile(r"[a-z]+(?:'[a-z]+)?|\d+")
_VOWELS: Final = re.compile(r"[aeiouy]+")
_SILENT: Final = re.compile(
    r"(?:[^aeiouylr]e|[^aeiouy][lr]e(?=s$)|[^aeioudty]ed|[^aeiouyszxcg]es)$"
)


def words_of(sentence: str) -> list[str]:
    """The words and numbers of a sentence, in lower case."""
    return _WORD.findall(sentence.lower())


def grade(words: int, syllables: int) -> float | None:
    """The grade of one sentence by its counts; None where it is too short to have one."""
    if words < FEWEST_WORDS:
        return None
    return A_WORD * words + A_SYLLABLE * syllables / words - LESS


def syllables(word: str) -> int:
    """Syllables of one word in lower case; a number counts as one."""
    if word[0].isdigit():
        return 1
    stem = word.partition("'")[0]
    count = len(_VOWELS.findall(stem))
    if count > 1 and _SILENT.search(stem):
        count -= 1
    return max(1, count)
