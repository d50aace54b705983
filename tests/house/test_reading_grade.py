"""What an athlete reads is short and easy: a sore teenager at 9 in the evening gets it at once.

Grade: Kincaid et al. 1975, as counted by textstat. It is a floor, not a reading test. The limits
(grade 6, 15 words a sentence, 12 in a cue) were set here. A sentence under 5 words has no grade: one
long word in it swings the figure.
"""

import re

import pytest
import textstat

from tests.house.sentences import Spoken, spoken

HIGHEST_GRADE = 6.0
MOST_WORDS = 15
MOST_WORDS_IN_A_CUE = 12
FEWEST_GRADED = 5


def grade(sentence: str) -> float:
    """School grade of one sentence."""
    return float(textstat.textstat.flesch_kincaid_grade(sentence))


def sentences(text: str) -> list[str]:
    """The sentences of a text; the point of an initial ends none."""
    return re.split(r"(?<=[a-z0-9][.?:]) +", text.strip())


def faults(said: Spoken) -> list[str]:
    """Sentences that are too long or too hard."""
    most = MOST_WORDS_IN_A_CUE if said.key == "cues" else MOST_WORDS
    found = []
    for one in sentences(said.text):
        words = len(one.split())
        if words > most:
            found.append(f"{words} words: {one}")
        if words >= FEWEST_GRADED and grade(one) > HIGHEST_GRADE:
            found.append(f"grade {grade(one):.1f}: {one}")
    return found


@pytest.mark.parametrize("said", spoken(), ids=lambda said: f"{said.place}:{said.text[:30]}")
def test_every_sentence_for_the_athlete_is_short_and_easy(said: Spoken) -> None:
    assert faults(said) == []


def test_every_kind_of_text_is_gathered() -> None:
    kinds = {said.key for said in spoken()}
    assert kinds == {"tell", "words", "cues", "set-up", "felt as", "put right", "fits", "range"}


@pytest.mark.parametrize(
    ("key", "text"),
    [
        ("cues", "Send the hand to the far wall and keep it there until you breathe out."),
        ("tell", "Go on and on and on and on and on and on and on and on now."),
        ("tell", "Initiate glenohumeral external rotation during isometric scapular retraction."),
    ],
)
def test_a_long_or_hard_sentence_is_found(key: str, text: str) -> None:
    assert len(faults(Spoken("made up", key, text))) >= 1


def test_twelve_words_are_a_cue_and_fifteen_a_sentence() -> None:
    words = "Send the hand to the far wall as you let the"
    assert faults(Spoken("made up", "cues", f"{words} air.")) == []
    assert len(faults(Spoken("made up", "cues", f"{words} air out."))) == 1
    assert faults(Spoken("made up", "tell", f"{words} air out of you.")) == []
    assert len(faults(Spoken("made up", "tell", f"{words} air out of you now."))) == 1
