"""Misspellings: the rule of slips, its four guards, and every one-slip variant of a sign word."""

from __future__ import annotations

import string

import pytest

from coach.hearing.real_words import real_words
from coach.hearing.respell import nearest, respelt, slips_allowed, slips_between
from coach.hearing.spellings import spellings
from coach.hearing.vocabulary import FAMILIES, guessable, signs_alone
from coach.model.heard import Action
from tests.hearing.asked import note

# words that are a sign on their own, so that a misspelling alone must be heard
ALONE = (
    "numb",
    "numbness",
    "tingling",
    "tingly",
    "swollen",
    "swelling",
    "dislocated",
    "fever",
    "fainted",
    "vomiting",
    "weakness",
    "chills",
)


def one_slip(word: str) -> set[str]:
    """Every spelling with one letter wrong, missing, extra, or swapped with its neighbour."""
    cuts = [(word[:k], word[k:]) for k in range(len(word) + 1)]
    out = {a + b[1:] for a, b in cuts if b}
    out |= {a + b[1] + b[0] + b[2:] for a, b in cuts if len(b) > 1}
    out |= {a + c + b[1:] for a, b in cuts if b for c in string.ascii_lowercase}
    out |= {a + c + b for a, b in cuts for c in string.ascii_lowercase}
    return out - {word}


@pytest.mark.parametrize("word", ALONE)
def test_every_one_slip_variant_that_is_no_real_word_is_heard(word: str) -> None:
    known = real_words() | set(FAMILIES) | guessable() | set(spellings())
    variants = [v for v in one_slip(word) if len(v) > 3 and v not in known]
    silent = [
        v for v in variants if note(f"my arm {v}").group is None and note(f"{v} arm").group is None
    ]
    assert len(variants) > 50
    assert silent == []


@pytest.mark.parametrize("word", sorted(w for w in signs_alone() if len(w) > 4))
def test_of_every_word_that_is_a_sign_alone_each_ninth_slip_is_heard(word: str) -> None:
    """All 50,672 slips of these words were tried once, and all were heard; here a ninth of them."""
    known = real_words() | set(FAMILIES) | guessable() | set(spellings())
    frames = [f for f in ("my arm {}", "i {}") if note(f.format(word)).group is not None]
    variants = sorted(v for v in one_slip(word) if len(v) > 3 and v not in known)[::9]
    assert frames
    assert [v for v in variants if all(note(f.format(v)).group is None for f in frames)] == []


# words that are a sign only beside others, in a sentence that makes them one
IN_A_SENTENCE = {
    "popped": "my shoulder {}",
    "slipped": "my shoulder {}",
    "snapped": "my elbow {}",
    "cracked": "my elbow {}",
    "subluxed": "my shoulder {}",
    "dislocation": "it was a {}",
    "unstable": "my shoulder is {}",
    "deformed": "my shoulder is {}",
    "crooked": "my shoulder looks {}",
    "fractured": "i {} my arm",
    "purple": "my hand is {}",
    "bluish": "my fingers are {}",
    "puffy": "my hand is {}",
    "swelled": "my elbow {}",
    "bruised": "my arm is {}",
    "bulging": "veins are {} on my arm",
    "needles": "pins and {} in my arm",
    "tingles": "my hand {}",
    "prickling": "my hand is {}",
    "numbing": "my arm is {}",
    "paralyzed": "my arm is {}",
    "weaker": "my arm is {}",
    "dizzy": "im {} now",
    "fainting": "i keep {}",
    "lightheaded": "i am {}",
    "droopy": "my face is {}",
    "slurred": "my speech is {}",
    "clumsy": "my hands are {} and my legs too",
    "wobbly": "my legs are {}",
    "wheezing": "i am {}",
    "infected": "the cut is {}",
    "shivering": "i was {} all night",
    "feverish": "i feel {}",
    "diarrhea": "i have {}",
    "puking": "i was {}",
    "unbearable": "the pain is {}",
    "drenched": "i wake up {} in sweat",
    "exhausted": "i am {} for weeks",
    "collided": "i {} with the catcher",
    "tripped": "i {} over and landed",
    "crashed": "i {} my bike",
    "suicidal": "i feel {}",
}
# one slip from another word as well, and read as that: dropped, topped, droop, surged, slugged, smashed, cracked
NEARER_ELSEWHERE = {
    "dopped", "dpopped", "droopp", "slurged", "slugred", "srashed", "crached", "crasked",
}  # fmt: skip


@pytest.mark.parametrize("word", IN_A_SENTENCE)
def test_every_one_slip_variant_of_a_sign_in_its_sentence_is_heard(word: str) -> None:
    known = real_words() | set(FAMILIES) | guessable() | set(spellings()) | NEARER_ELSEWHERE
    sentence = IN_A_SENTENCE[word]
    variants = [v for v in one_slip(word) if len(v) > 3 and v not in known]
    assert note(sentence.format(word)).group is not None
    assert len(variants) > 200
    assert [v for v in variants if note(sentence.format(v)).group is None] == []


def test_a_sign_reached_only_through_a_guess_is_asked_about() -> None:
    assert note("my arm is swollne").action == Action.CONFIRM
    assert note("my arm is swollen").action == Action.ESCALATE


@pytest.mark.parametrize(
    "text",
    ["nmb fingers", "hand is num", "slipt out of socket", "arm is swolen", "poped out and back"],
)
def test_listed_misspellings_are_heard_as_the_word(text: str) -> None:
    assert note(text).action == Action.ESCALATE


@pytest.mark.parametrize(
    "word",
    "never ever fewer dumb week cheat chess could told old feel felt tell right might eight shirt "
    "slap swap clue hills topped hopped propped lever number".split(),
)
def test_a_real_word_is_never_changed(word: str) -> None:
    assert respelt(word, FAMILIES) == ((word,), False)


def test_never_never_becomes_a_fever() -> None:
    assert note("never").group is None
    assert note("i never ever had that").group is None


def test_no_real_word_is_a_word_the_ear_may_guess() -> None:
    assert not real_words() & set(spellings())
    assert all(nearest(word) is None for word in real_words())


@pytest.mark.parametrize(
    ("word", "slips"), [("abc", 0), ("abcd", 1), ("abcdefg", 1), ("abcdefgh", 2)]
)
def test_slips_allowed_by_length(word: str, slips: int) -> None:
    assert slips_allowed(word) == slips


@pytest.mark.parametrize(
    ("left", "right", "slips"),
    [
        ("numb", "numb", 0),
        ("numb", "nubm", 1),
        ("numb", "nmb", 1),
        ("fever", "feaver", 1),
        ("abcd", "badc", 2),
    ],
)
def test_a_swap_of_neighbours_is_one_slip(left: str, right: str, slips: int) -> None:
    assert slips_between(left, right) == slips


def test_repeated_letters_are_squeezed() -> None:
    assert note("my hand is soooo nummmmb").action == Action.ESCALATE


def test_two_words_run_together_are_parted() -> None:
    assert note("handnumb").group is not None
