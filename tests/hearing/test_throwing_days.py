"""What was thrown, day by day; and a none that something beside it takes back is no none."""

from __future__ import annotations

import pytest

from coach.hearing import hear
from coach.model.heard import Kind, Question, Value
from tests.hearing.asked import CHECK_IN

YESTERDAY = Question("throwing yesterday", Kind.THROWING)
TODAY = Question("throwing today", Kind.THROWING)
LINE = Question("check-in", Kind.LINE, parts=(YESTERDAY, TODAY))


def read(question: Question, text: str) -> dict[str, Value]:
    """What a question hears, by fact."""
    return dict(hear(question, text).values)


@pytest.mark.parametrize(
    "text",
    [
        "none yesterday, none today",
        "none today none yesterday",
        "0 yesterday and 0 today",
        "nothing either day",
        "neither day",
        "rest both days",
        "didn't throw yesterday or today",
        "rested yesterday and today",
        "neither yesterday nor today",
        "not yesterday, not today",
        "yesterday off, today off",
        "none, none",
        "0 and 0",
    ],
)
def test_none_of_both_days_is_heard_on_the_line_about_throwing(text: str) -> None:
    assert read(LINE, text) == {"throwing yesterday": "none", "throwing today": "none"}


@pytest.mark.parametrize(
    ("text", "yesterday", "today"),
    [
        ("light yesterday, nothing today", "catch", "none"),
        ("nothing yesterday, game today", "none", "game"),
        ("today a game, yesterday nothing", "none", "game"),
        ("none yesterday, bullpen tonight", "none", "bullpen"),
        ("light both days", "catch", "catch"),
        ("nothing yesterday and 40 throws today", "none", "catch"),
        ("game yesterday, and today none", "game", "none"),
    ],
)
def test_each_day_gets_what_was_said_of_it(text: str, yesterday: str, today: str) -> None:
    assert read(LINE, text) == {"throwing yesterday": yesterday, "throwing today": today}
    assert read(YESTERDAY, text) == {"throwing yesterday": yesterday}
    assert read(TODAY, text) == {"throwing today": today}


@pytest.mark.parametrize(
    ("text", "left"),
    [
        ("20 yesterday, none today", {"throwing today": "none"}),
        ("i don't remember yesterday, none today", {"throwing today": "none"}),
        ("nothing yesterday, maybe today", {"throwing yesterday": "none"}),
        ("not yet today, none yesterday", {"throwing yesterday": "none"}),
        ("none yesterday, today", {"throwing yesterday": "none"}),
        ("none today", {"throwing today": "none"}),
    ],
)
def test_a_day_that_is_not_sure_is_asked_about(text: str, left: dict[str, str]) -> None:
    assert read(LINE, text) == left
    (fact,) = {YESTERDAY.fact, TODAY.fact} - left.keys()
    assert read(Question(fact, Kind.THROWING), text) == {}


@pytest.mark.parametrize(
    "text", ["none", "0", "nothing hurt yesterday or today", "none, none, none"]
)
def test_one_none_for_two_days_and_a_none_of_something_else_are_asked_again(text: str) -> None:
    assert read(LINE, text) == {}


@pytest.mark.parametrize("text", ["none yesterday, none today", "none, none", "nothing either day"])
def test_on_a_line_that_asks_for_pain_too_a_none_without_its_label_fills_nothing(text: str) -> None:
    assert read(CHECK_IN, text) == {}


@pytest.mark.parametrize(
    "text",
    [
        "no idea", "no clue", "nothing i remember", "no, sorry, i forgot", "nothing much",
        "no more than 20", "nothing hard", "not none", "never mind", "zero to ten", "not yet",
        "no hard throwing", "none besides warm up", "no rest", "no day off", "i didn't rest",
        "didnt count", "none really, maybe 10", "nothing hurt",
    ],
)  # fmt: skip
@pytest.mark.parametrize("question", [YESTERDAY, TODAY], ids=["yesterday", "today"])
def test_a_none_that_is_taken_back_is_asked_again(text: str, question: Question) -> None:
    assert read(question, text) == {}


@pytest.mark.parametrize(
    "text",
    [
        "nothing but light catch",
        "nothing serious, just catch",
        "none to light",
        "no, just 30 throws",
    ],
)
def test_throws_beside_a_none_count(text: str) -> None:
    assert read(YESTERDAY, text) == {"throwing yesterday": "catch"}


@pytest.mark.parametrize(
    "text",
    [
        "no, off day", "no i rested", "took the day off", "nothing, rained out", "0", "0 throws",
        "throws: 0", "did not throw at all", "arm care only", "just lifted, no throws",
    ],
)  # fmt: skip
def test_a_plain_none_stays_one(text: str) -> None:
    assert read(YESTERDAY, text) == {"throwing yesterday": "none"}


@pytest.mark.parametrize(
    ("text", "today"),
    [("pain 1, no game today", "none"), ("pain 1, game tonight", "game")],
)
def test_a_game_on_a_longer_line_is_read_with_its_no(text: str, today: str) -> None:
    assert read(CHECK_IN, text)["throwing today"] == today


def test_no_hard_throws_are_throws_all_the_same() -> None:
    assert read(CHECK_IN, "pain 1, no hard throws today")["throwing today"] == "catch"
