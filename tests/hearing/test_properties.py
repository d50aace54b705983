"""Laws that hold for any text whatever."""

from __future__ import annotations

import importlib
import pkgutil
import re
from time import process_time

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import coach.hearing as room
from coach.hearing import explain, hear, hear_row, marked
from coach.hearing.lexicon import BUILT_IN
from coach.hearing.patterns import matches
from coach.hearing.words import words_of
from coach.model.heard import Action, Kind, Question
from tests.hearing.asked import CHECK_IN, SET_LINE, note

REGULAR = [
    thing
    for module in pkgutil.iter_modules(room.__path__)
    for thing in vars(importlib.import_module(f"coach.hearing.{module.name}")).values()
    if isinstance(thing, re.Pattern)
]
SHORT = settings(max_examples=150, deadline=None)
WORDS = st.sampled_from(
    "no not my hand arm numb is pain 3 10 7 ½ popped out back cant lift but , . ? and or yes maybe "
    "slept to 11 pm threw 60 ft game last week now his was it the if i feel -4 5/10 , 2,5".split()
)
SENTENCES = st.lists(WORDS, max_size=14).map(" ".join)
SIGNS = st.sampled_from(
    [
        "my hand is numb",
        "i fell off my bike",
        "arm is swollen",
        "cant feel my fingers",
        "chest pain",
    ]
)
ASIDES = st.sampled_from(
    [
        "no game today",
        "no band today",
        "no homework",
        "not throwing today",
        "no rain",
        "no practice",
    ]
)


@given(st.text(max_size=200), st.sampled_from(list(Kind)))
@SHORT
def test_any_text_gets_an_answer_never_an_exception(text: str, kind: Kind) -> None:
    heard = hear(Question("x", kind, choices=("go", "stay")), text)
    assert isinstance(heard.action, Action)
    assert all(0 <= s.start <= s.end <= len(text) for s in heard.spans)
    assert marked(text, heard).replace("«", "").replace("»", "") == text.replace("«", "").replace(
        "»", ""
    )


@given(SENTENCES, st.sampled_from(list(Kind)))
@SHORT
def test_any_sentence_of_words_gets_an_answer(text: str, kind: Kind) -> None:
    hear(Question("x", kind), text)
    hear(CHECK_IN, text)
    hear(SET_LINE, text)
    explain(text, kind)


@given(st.binary(max_size=80))
@SHORT
def test_any_bytes_read_as_text_get_a_row(raw: bytes) -> None:
    row = hear_row({"id": 1, "q": "note", "text": raw.decode("utf-8", "surrogateescape")})
    assert row["action"] in {"accept", "ask_again", "confirm", "escalate"}


@given(
    st.lists(st.integers(0, 10), min_size=1, max_size=4),
    st.sampled_from([" or ", ", ", " to ", "-", " and ", "/10 or "]),
)
@SHORT
@pytest.mark.hazard("H-09")
def test_pain_is_never_below_the_largest_number_said_about_now(
    values: list[int], between: str
) -> None:
    text = between.join(str(v) for v in values)
    for kind in (Kind.PAIN_NOW, Kind.WORST_PAIN):
        got = dict(hear(Question("x", kind), text).values).get("x")
        assert got is None or (isinstance(got, float) and got >= max(values))


@given(st.integers(0, 16), st.integers(0, 16))
@SHORT
def test_sleep_is_never_the_longer_end_of_a_range(one: int, other: int) -> None:
    got = dict(hear(Question("x", Kind.SLEEP_HOURS), f"{one} or {other}").values).get("x")
    assert got is None or got == min(one, other)


@given(SIGNS, ASIDES)
@SHORT
@pytest.mark.hazard("H-11")
def test_a_no_before_something_else_never_silences_a_sign(sign: str, aside: str) -> None:
    for text in (f"{aside}. {sign}", f"{aside}, {sign}", f"{aside} but {sign}", f"{sign}, {aside}"):
        assert note(text).action == Action.ESCALATE, text


@given(SIGNS)
@SHORT
def test_capitals_and_shouting_change_nothing(sign: str) -> None:
    assert note(sign.upper() + "!!!").action == Action.ESCALATE
    assert note("  " + sign.title()).action == Action.ESCALATE


@given(SENTENCES)
@SHORT
def test_no_answer_to_a_safety_question_comes_from_less_than_a_plain_word(text: str) -> None:
    heard = hear(Question("x", Kind.SAFETY_YES_NO), text)
    if heard.values:
        assert text.split(maxsplit=1)[0] in {"yes", "no"} or text.startswith((",", ".", "?"))


def _steps(text: str) -> int:
    """How many pattern tries a text costs: the matches and the words looked at."""
    words = words_of(text, BUILT_IN.families)
    return len(words) + len(matches(words, BUILT_IN.signs))


def test_the_work_grows_no_faster_than_the_text() -> None:
    for piece in ("numb hand ", "arm cant felt pop back out ", "it was no ", "x "):
        short, long = _steps(piece * 100), _steps(piece * 200)
        assert long <= 2.2 * short + 20


@pytest.mark.parametrize(
    "piece", ["a", "'", "a'", "1.", "1,", " -", "\u00bd", "w/", "--", ".", "a1"]
)
def test_no_regular_expression_backtracks_badly(piece: str) -> None:
    """Four times the text costs far less than the sixteen times of a square law."""

    def cost(text: str) -> float:
        best = 9.0
        for _ in range(3):
            start = process_time()
            for compiled in REGULAR:
                compiled.sub("", text)
            best = min(best, process_time() - start)
        return best

    short, long = cost(piece * 20_000), cost(piece * 80_000)
    assert long <= 10 * short + 0.01


def test_every_regular_expression_of_the_room_is_tried() -> None:
    assert len(REGULAR) >= 2
