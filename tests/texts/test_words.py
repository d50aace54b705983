"""Sentences that may not be said, and near neighbours that may."""

from __future__ import annotations

from pathlib import Path

import pytest

from coach.model.program import Place
from coach.texts.margin import Margin, Page
from coach.texts.words import Voice
from coach.texts.yaml_lines import Text

REFUSED = {
    "words.dose": [
        "Do 3 sets.",
        "Do three more reps.",
        "Use 2 lb.",
        "Take 1.5 kg.",
        "Make 20 throws.",
        "Hold it there for 30 seconds.",
        "Hold for 5 s.",
        "Do 3 x 12.",
        "Ten times is enough.",
        "A dozen repetitions.",
        "Five pounds will do.",
        "Do 4x of it.",
        "Two kilos.",
        "Six holds.",
    ],
    "words.side": ["Lift the left hand.", "Turn to the RIGHT."],
    "words.push": [
        "Push through it.",
        "Work through the ache.",
        "Fight through.",
        "No pain, no gain.",
        "Ignore the pain.",
        "Grit your teeth.",
        "Go on if it feels good.",
        "Tough it out.",
        "Keep going even when it hurts.",
        "Finish it anyway.",
    ],
    "words.claim": [
        "This will heal it.",
        "It cures the ache.",
        "Prevents harm.",
        "That is safe.",
        "You are cleared.",
        "This fixes it.",
        "It will fix it.",
        "Throw at 50 percent effort.",
        "It is guaranteed.",
        "A risk-free move.",
        "That diagnoses it.",
    ],
    "words.blame": [
        "You skipped a day.",
        "You failed.",
        "It is your fault.",
        "No excuses.",
        "Lazy day.",
        "You should have rested.",
        "Your bad arm.",
        "Invalid answer.",
        "A failed set.",
    ],
    "words.cheer": [
        "Great job.",
        "Well done.",
        "Nice!",
        "A streak of days.",
        "Three days in a row.",
        "Keep it up.",
        "Awesome.",
        "You crushed it.",
        "Champion.",
    ],
    "words.soften": [
        "Type none here.",
        "Say no to the next one.",
        "Skip this question.",
        "Don't worry.",
        "It is probably nothing.",
        "That is not serious.",
        "Ignore the stop.",
        "Rest instead of calling.",
        "There is no need to call.",
        "Answer quickly.",
    ],
}
QUIET = [
    "Send your knuckles up to the ceiling.",
    "Keep the towel between elbow and ribs.",
    "Stop when the hands reach your lower ribs.",
    "Breathe out as you lift.",
    "Rest the other hand on the table.",
    "Set the feet wide.",
    "Let the weight hang from one hand.",
    "Keep both ears over both shoulders.",
]


def found_in(sentence: str, key: str = "tell") -> list[str]:
    margin = Margin()
    margin.keep(Page("x.yaml", str(Path("x.yaml")), (sentence,), b""))
    Voice(("English",)).check(Text(sentence, Place("x.yaml", 1, 1)), margin, key)
    return [finding.id for finding in margin.sorted_findings()]


@pytest.mark.parametrize(
    ("check", "sentence"), [(check, s) for check, lines in REFUSED.items() for s in lines]
)
def test_refused_sentences(check: str, sentence: str) -> None:
    assert check in found_in(sentence)


@pytest.mark.parametrize("sentence", QUIET)
def test_plain_sentences_are_quiet(sentence: str) -> None:
    assert found_in(sentence) == []


@pytest.mark.parametrize(
    "word",
    [
        "abduct",
        "Scapula",
        "flexion",
        "prone",
        "eccentric",
        "range of motion",
        "just",
        "chronic",
        "maintain",
        "physician",
        "normal",
        "prior to",
        "modified",
        "flares",
    ],
)
def test_trade_words_are_warned_of(word: str) -> None:
    assert found_in(f"The {word} of it.") == ["words.trade_word"]


@pytest.mark.parametrize("word", ["flexible", "adjust", "justice", "pronely", "chest", "stern"])
def test_words_that_only_begin_alike_are_not(word: str) -> None:
    assert found_in(f"The {word} of it.") == []


@pytest.mark.parametrize(
    ("key", "words", "long"),
    [("tell", 15, False), ("tell", 16, True), ("cues", 12, False), ("cues", 13, True)],
)
def test_a_sentence_has_fifteen_words_and_a_cue_twelve(key: str, words: int, long: bool) -> None:
    sentence = " ".join(["so"] * words) + "."
    assert (found_in(sentence, key) == ["words.long_sentence"]) == long
