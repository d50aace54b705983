"""A long answer is heard part by part: a sign in its middle as if it were typed alone."""

from __future__ import annotations

import pytest

from coach.hearing.lexicon import BUILT_IN
from coach.hearing.listening import Listening
from coach.hearing.parts import LONG, parts_of
from coach.hearing.words import words_of
from coach.model.flags import Group
from coach.model.heard import Action
from tests.hearing.asked import note

BEFORE = (
    "Good day today. We won the game against the team from the next town and had pizza after. "
    "My brother was sick last week and fell off his bike, he is fine now. School was long. "
)
AFTER = (
    " The coach said my form looks better. I slept eight hours and ate a lot of pasta. "
    "Tomorrow we travel to the coast by bus and play two games, I hope it does not rain."
)


@pytest.mark.parametrize(
    ("sign", "group"),
    [
        ("My hand is numb.", Group.NUMB_TINGLE),
        ("My shoulder slipped out of the socket.", Group.DISLOCATION_SLIP),
        ("I have chest pain.", Group.CHEST_BREATH),
        ("I fainted after the run.", Group.FAINT_HEART),
    ],
)
@pytest.mark.hazard("H-11")
def test_a_sign_in_the_middle_of_a_paragraph_stops(sign: str, group: Group) -> None:
    heard = note(BEFORE + sign + AFTER)
    assert (heard.action, heard.group) == (Action.ESCALATE, group)


def test_the_same_paragraph_without_a_sign_stops_nothing() -> None:
    assert note(BEFORE + AFTER).action != Action.ESCALATE


def test_of_two_signs_in_a_paragraph_the_more_urgent_is_told() -> None:
    heard = note(BEFORE + "My hand is numb." + AFTER + " I have chest pain.")
    assert heard.group == Group.CHEST_BREATH


def test_no_cut_falls_where_a_no_still_reaches() -> None:
    text = (
        "today was fine and i had a long day at work with many calls and then i had no numbness, "
        "tingling, weakness, swelling, slipping or popping in the arm at all which is great news"
    )
    assert len(words_of(text, BUILT_IN.families)) > LONG
    assert note(text).group is None


def test_a_short_answer_is_one_part_and_a_long_one_loses_no_word() -> None:
    short = Listening(words_of("my hand is numb", BUILT_IN.families), BUILT_IN)
    assert parts_of(short) == (short,)
    long = Listening(words_of(BEFORE + AFTER, BUILT_IN.families), BUILT_IN)
    parts = [p for p in parts_of(long) if len(p.words) < len(long.words)]
    assert [word for part in parts for word in part.words] == list(long.words)


def test_a_pop_and_a_loss_in_two_sentences_are_one_sign() -> None:
    heard = note(BEFORE + "I felt a pop in the shoulder. Since then I cannot lift the arm." + AFTER)
    assert heard.action == Action.ESCALATE
