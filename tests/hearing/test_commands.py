"""Words that work at every prompt."""

from __future__ import annotations

import pytest

from coach.hearing import hear
from coach.model.heard import Action, Command, Kind, Question
from tests.hearing.asked import CHECK_IN, SET_LINE, note

ANYWHERE = [
    *(Question("x", kind) for kind in Kind if kind != Kind.LINE),
    CHECK_IN,
    SET_LINE,
]


@pytest.mark.parametrize("question", ANYWHERE, ids=lambda q: f"{q.kind}-{q.fact}")
@pytest.mark.parametrize(
    "text",
    ["stop", "STOP", "stop!!", "im done", "I'm done.", "cant do this anymore", "pls stop", "quit"],
)
def test_stop_works_at_every_prompt_in_any_mood(question: Question, text: str) -> None:
    assert hear(question, text).command == Command.STOP


@pytest.mark.parametrize("question", ANYWHERE, ids=lambda q: f"{q.kind}-{q.fact}")
def test_pause_works_at_every_prompt(question: Question) -> None:
    assert hear(question, "pause").command == Command.PAUSE


@pytest.mark.parametrize(
    ("text", "command"),
    [
        ("why", Command.WHY),
        ("why?", Command.WHY),
        ("why code", Command.WHY_CODE),
        ("fix", Command.FIX),
        ("help", Command.HELP),
        ("again", Command.AGAIN),
        ("left", Command.LEFT),
        ("gear", Command.GEAR),
        ("more", Command.MORE),
    ],
)
def test_command_words(text: str, command: Command) -> None:
    assert note(text).command == command


@pytest.mark.parametrize(
    "text",
    [
        "my hand never stops hurting",
        "stopped at 8",
        "left arm",
        "done",
        "why my arm hurts is the sleep",
    ],
)
def test_a_sentence_that_holds_such_a_word_is_no_command(text: str) -> None:
    assert note(text).command is None


def test_a_sign_comes_before_a_command() -> None:
    heard = note("stop my hand is numb")
    assert heard.group is not None
    assert heard.command is None


def test_a_choice_of_the_question_comes_before_a_command() -> None:
    side = Question("side", Kind.CHOICE, choices=("left", "right"))
    assert dict(hear(side, "left").values) == {"side": "left"}
    assert hear(side, "left").command is None


@pytest.mark.parametrize(
    ("fact", "text", "action"),
    [
        ("which to fix", "waking pain", Action.ACCEPT),
        ("which to fix", "Waking pain ", Action.ACCEPT),
        ("which to fix", "pain that wakes me", Action.ESCALATE),
        ("which to fix", "waking pain, my hand is numb", Action.ESCALATE),
        ("ache kind", "waking pain", Action.CONFIRM),
    ],
)
def test_the_name_of_a_question_is_no_sign_where_it_says_which_to_fix(
    fact: str, text: str, action: Action
) -> None:
    asked = Question(fact, Kind.CHOICE, choices=("pain now", "waking pain"))
    assert hear(asked, text).action == action
