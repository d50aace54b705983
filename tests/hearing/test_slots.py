"""Values read from single answers, on both sides of what is understood."""

from __future__ import annotations

import pytest

from coach.hearing import hear
from coach.model.heard import Action, Kind, Question
from tests.hearing.asked import answer


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("two", 2),
        ("0", 0),
        ("10", 10),
        ("3 1/2", 3.5),
        ("0 sitting, 4 reaching", 4),
        ("was 4 this morning, now its a 1", 1),
        ("two... wait no 3", 3),
        ("5/10", 5),
        ("2, after 30 throws", 2),
        ("3,4", 4),
        ("no pain", 0),
        ("11", None),
        ("-1", None),
        ("4/5", None),
        ("50%", None),
        ("not bad", None),
        ("mild", None),
        ("not much pain", None),
        ("same", None),
        ("it was a 4 yesterday", None),
        ("30 throws", None),
        ("none today", 0),
        ("none yesterday", None),
        ("none yesterday, none today", None),
        ("none today, nothing yesterday", None),
        ("no pain yesterday, none today", 0),
        ("none, better than yesterday", 0),
    ],
)
def test_pain_now(text: str, value: float | None) -> None:
    assert answer(Kind.PAIN_NOW, text) == value


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("2 before, 6 during, 3 after", 6),
        ("7 on throw 12", 7),
        ("never hurt", 0),
        ("bad", None),
        ("none yesterday", 0),
        ("none yesterday, none today", None),
        ("no pain yesterday, none today", 0),
    ],
)
def test_worst_pain_takes_the_largest(text: str, value: float | None) -> None:
    assert answer(Kind.WORST_PAIN, text) == value


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("7", 7),
        ("6 or 7", 6),
        ("6h45", 6.75),
        ("420 mins", 7),
        ("630", 6.5),
        ("7:30", 7.5),
        ("11 to 7", 8),
        ("bed at 11:30 up at 6", 6.5),
        ("8 in bed, 6 asleep", 6),
        ("6 plus a nap", 6),
        ("16", 16),
        ("17", None),
        ("bed at 11", None),
        ("1pm to 4", None),
        ("ok", None),
        ("didnt sleep well", None),
    ],
)
def test_sleep_hours(text: str, value: float | None) -> None:
    assert answer(Kind.SLEEP_HOURS, text) == value


@pytest.mark.parametrize(
    ("text", "kind", "also"),
    [
        ("rest day", "none", {}),
        ("catch at 75 feet", "catch", {"max_distance_ft": 75}),
        ("long toss 45 yards", "long_toss", {"max_distance_ft": 135}),
        ("3 sets of 15 throws", "catch", {"count": 45}),
        ("6 overs in the nets", "practice", {"count": 36}),
        ("2 innings about 40 pitches", "game", {"count": 40}),
        ("25", None, {}),
        ("a bit", None, {}),
    ],
)
def test_throwing(text: str, kind: str | None, also: dict[str, float]) -> None:
    heard = hear(Question("x", Kind.THROWING), text)
    assert dict(heard.values).get("x") == kind
    assert dict(heard.also) == also


def test_the_hardest_kind_of_throwing_rules() -> None:
    heard = hear(Question("x", Kind.THROWING), "tossed to 100 then a 25 pitch bullpen")
    assert dict(heard.values)["x"] == "bullpen"
    assert dict(heard.also)["throwing_also"] == ("long_toss",)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("y", "yes"),
        ("n", "no"),
        ("not really", "no"),
        ("a little when i throw", "yes"),
        ("yes... jk no", "no"),
        ("no wait yes", "yes"),
        ("maybe", None),
        ("depends", None),
        ("idk", None),
    ],
)
def test_yes_and_no(text: str, value: str | None) -> None:
    assert answer(Kind.YES_NO, text) == value


@pytest.mark.parametrize("text", ["y", "n", "0", "fine", "all good", "ok", "", "   ", "maybe", "1"])
def test_a_safety_question_takes_no_soft_answer(text: str) -> None:
    heard = hear(Question("x", Kind.SAFETY_YES_NO), text)
    assert heard.action == Action.ASK_AGAIN
    assert heard.values == ()


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("yes", "yes"),
        ("No.", "no"),
        ("nope", "no"),
        ("no, the heat did", "no"),
        ("no i dont think so", None),
        ("no but", None),
        ("yes no", None),
    ],
)
def test_a_safety_question_takes_plain_words(text: str, value: str | None) -> None:
    assert answer(Kind.SAFETY_YES_NO, text) == value


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("none", "none"),
        ("NONE.", "none"),
        ("1, 3", ("1", "3")),
        ("3 and 1", ("1", "3")),
        ("no", None),
        ("noen", None),
        ("7", None),
        ("none of these 2", None),
        ("", None),
    ],
)
def test_the_list_takes_exactly_none_or_its_numbers(text: str, value: object) -> None:
    heard = hear(Question("x", Kind.NONE_OR_LIST), text)
    got = dict(heard.values).get("x")
    assert got == value or (text == "noen" and got == "none")


@pytest.mark.parametrize(
    ("text", "value"),
    [("13", 13), ("12 or 13", 12), ("8 no wait 9", 9), ("done", None), ("all of them", None)],
)
def test_a_count_is_the_lower_end_and_done_is_no_count(text: str, value: float | None) -> None:
    assert answer(Kind.COUNT, text, high=100.0) == value


@pytest.mark.parametrize(
    ("text", "value"), [("7 or 8", 8), ("8/10", 8), ("10", 10), ("11", None), ("hard", None)]
)
def test_effort_is_the_higher_end(text: str, value: float | None) -> None:
    assert answer(Kind.EFFORT, text) == value


def test_another_unit_is_asked_again_never_converted() -> None:
    assert answer(Kind.NUMBER, "5 kg", unit="kg", high=50.0) == 5
    assert answer(Kind.NUMBER, "5", unit="kg", high=50.0) == 5
    assert answer(Kind.NUMBER, "5 lb", unit="kg", high=50.0) is None
    assert answer(Kind.NUMBER, "51 kg", unit="kg", high=50.0) is None


def test_choices_go_by_number_or_name() -> None:
    bands = ("light band", "heavy band", "dumbbell")
    assert answer(Kind.CHOICE, "2", choices=bands) == "heavy band"
    assert answer(Kind.CHOICE, "dumbbell", choices=bands) == "dumbbell"
    assert answer(Kind.CHOICE, "1 or 2", choices=bands) is None
    assert answer(Kind.CHOICES, "1 and 3", choices=bands) == ("light band", "dumbbell")
    assert answer(Kind.CHOICES, "all", choices=bands) == bands
    assert answer(Kind.CHOICES, "none", choices=bands) == ("none",)
    assert answer(Kind.CHOICES, "all but the dumbbell", choices=bands) is None


def test_a_word_question_takes_only_its_words() -> None:
    assert answer(Kind.WORD, "Go!", choices=("go",)) == "go"
    assert answer(Kind.WORD, "ok", choices=("go",)) is None


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("felt good", "fine"),
        ("good burn", "fine"),
        ("3", "pain:3"),
        ("the last 3 were slow", None),
        ("pinches in front", "pinch_front"),
        ("it hurt", "pain"),
        ("all in my traps", "wrong_muscle"),
        ("couldnt finish", "too_heavy"),
        ("could do 10 more", "too_easy"),
        ("hmm", None),
    ],
)
def test_set_feel(text: str, value: str | None) -> None:
    assert answer(Kind.SET_FEEL, text) == value


def test_set_feel_takes_a_watch_for_name() -> None:
    names = ("shoulder hikes up", "elbow drifts away")
    assert answer(Kind.SET_FEEL, "elbow drifts away", choices=names) == "elbow drifts away"
    assert answer(Kind.SET_FEEL, "1", choices=names) == "shoulder hikes up"


@pytest.mark.parametrize("kind", list(Kind))
def test_an_empty_answer_is_always_asked_again(kind: Kind) -> None:
    assert hear(Question("x", kind, choices=("a",)), " \n\t ").action == Action.ASK_AGAIN


def test_what_was_not_understood_is_handed_back_in_the_athletes_words() -> None:
    assert hear(Question("x", Kind.PAIN_NOW), "so so").missed == "so so"


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("60", 60.0),
        ("about 60 pitches", 60.0),
        ("55 to 60", 60.0),
        ("maybe 70 or 80", 80.0),
        ("45 (51 total)", 51.0),
        ("40, no wait 50", 50.0),
        ("60 pitches in 4 innings", 60.0),
        ("0", 0.0),
        ("none", 0.0),
        ("no pitches", 0.0),
        ("not many", None),
        ("a lot", None),
        ("over 90", None),
        ("90+", None),
        ("301", None),
        ("two innings", None),
        ("60 throws", None),
        ("45 and then 6 more", None),
        ("30 in the first game and 30 in the second", None),
    ],
)
def test_a_count_where_more_is_worse_is_the_higher_end_or_unclear(
    text: str, value: float | None
) -> None:
    question = Question("pitches yesterday", Kind.COUNT_MOST, high=300, unit="pitches")
    heard = hear(question, text)
    assert dict(heard.values).get("pitches yesterday") == value
    assert heard.action is (Action.ASK_AGAIN if value is None else Action.ACCEPT)


@pytest.mark.parametrize("unit", ["serves", "overs", "passes", "hits", "strokes"])
def test_a_count_takes_the_unit_of_the_plans_table(unit: str) -> None:
    question = Question("throws done", Kind.COUNT, high=500, unit=unit)
    assert hear(question, f"20 {unit}").values == (("throws done", 20.0),)


@pytest.mark.parametrize("kind", [Kind.COUNT, Kind.COUNT_MOST])
@pytest.mark.parametrize("text", ["101", "104", "105"])
def test_a_bare_count_is_no_temperature(kind: Kind, text: str) -> None:
    question = Question("throws done", kind, high=500, unit="pitches")
    assert hear(question, text).action is Action.ACCEPT
    assert hear(question, f"fever of {text}").action is Action.ESCALATE
