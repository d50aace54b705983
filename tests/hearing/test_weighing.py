"""The weight of an answer's words beside the patterns: what it may change, and what it never does."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from coach.hearing import hear
from coach.hearing.lexicon import BUILT_IN
from coach.hearing.listening import Listening
from coach.hearing.points import points, weight
from coach.hearing.scope import Reading
from coach.hearing.signs import sign_in
from coach.hearing.words import words_of
from coach.model.flags import Group
from coach.model.heard import Action, Kind, Question
from tests.hearing.asked import CHECK_IN, note
from tests.hearing.find_points import LEARNED_FROM, ROOM, learned, lines_of, samples, tables
from tests.hearing.scoring import rows_of

WORDS = st.sampled_from(
    "no not my hand arm numb is pain popped out back cant lift but , . and or maybe fell off bike "
    "last week game his was it the if i feel swollen cold again shoulder fever wall hit".split()
)
SENTENCES = st.lists(WORDS, min_size=1, max_size=12).map(" ".join)


def listening(text: str) -> Listening:
    return Listening(words_of(text, BUILT_IN.families), BUILT_IN)


def whole(heard: Listening) -> float:
    return weight(heard.words, heard.scopes, range(len(heard.words)))


def test_the_points_are_what_the_labelled_answers_give() -> None:
    rows = [row for name in LEARNED_FROM for row in rows_of(name)]
    for number, text in enumerate(tables(lines_of(*learned(samples(rows)))), 1):
        assert (ROOM / f"points_{number}.py").read_text(encoding="utf-8") == text


def test_no_kept_back_answer_is_learned_from() -> None:
    assert not [name for name in LEARNED_FROM if "kept_back" in name]


def test_words_of_signs_speak_for_one_and_words_of_games_against() -> None:
    known = points()
    assert known["NUMB"] > 0 > known["no:NUMB"]
    heard = listening("my hand is numb and weak")
    played = listening("we won the game and had a good practice")
    assert whole(heard) > 0 > whole(played)


@given(SENTENCES)
@settings(max_examples=200, deadline=None)
@pytest.mark.hazard("H-11")
def test_what_a_clear_pattern_heard_is_at_least_asked_about(text: str) -> None:
    sign = sign_in(listening(text))
    if sign is not None and not sign.weak:
        assert note(text).action in {Action.CONFIRM, Action.ESCALATE}


@given(SENTENCES)
@settings(max_examples=200, deadline=None)
def test_a_hedged_past_or_weighed_in_mention_is_never_made_a_stop(text: str) -> None:
    sign = sign_in(listening(text))
    if sign is None or sign.reading < Reading.PRESENT:
        assert note(text).action != Action.ESCALATE


@pytest.mark.parametrize(
    "text",
    [
        "my thumb is all wobblewise today",
        "the elbow does a thing like a rusty gate ever since",
    ],
)
def test_words_that_no_pattern_knows_are_asked_about_without_a_name(text: str) -> None:
    heard = note(text)
    assert heard.action == Action.CONFIRM
    assert heard.unnamed


@pytest.mark.parametrize("word", ["2 lb dumbbell", "left", "none", "my shoulder band"])
def test_names_and_lists_are_not_weighed(word: str) -> None:
    for kind in (Kind.CHOICES, Kind.WORD, Kind.NONE_OR_LIST, Kind.COUNT):
        assert hear(Question("x", kind, choices=("left", "right")), word).group is None


def test_odd_words_at_the_end_of_a_check_in_are_asked_about_openly() -> None:
    text = "pain 1, morning 0, slept 8, no throws, my thumb is all wobblewise"
    heard = hear(CHECK_IN, text)
    assert heard.action == Action.CONFIRM
    assert heard.unnamed
    assert "wobblewise" in text[heard.spans[0].start : heard.spans[0].end]


@pytest.mark.hazard("H-11")
def test_a_sign_named_by_its_words_is_never_asked_about_openly() -> None:
    for text in ("maybe a bit numb", "it popped", "arm went dead", "i want to hurt myself"):
        assert not note(text).unnamed


def test_self_harm_is_neither_raised_nor_doubted_by_the_words_around() -> None:
    heard = note("we won the game and had pizza with the team but i want to die")
    assert (heard.action, heard.group) == (Action.ESCALATE, Group.SELF_HARM)
