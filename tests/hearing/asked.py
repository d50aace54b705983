"""Short ways to ask the ear in tests."""

from __future__ import annotations

from coach.hearing import hear
from coach.model.heard import Heard, Kind, Question, Value

CHECK_IN = Question(
    "check-in",
    Kind.LINE,
    parts=(
        Question("pain now", Kind.PAIN_NOW),
        Question("waking pain", Kind.WORST_PAIN),
        Question("sleep last night", Kind.SLEEP_HOURS),
        Question("throwing yesterday", Kind.THROWING),
        Question("throwing today", Kind.THROWING),
    ),
)
SET_LINE = Question(
    "set",
    Kind.LINE,
    parts=(
        Question("reps in set", Kind.COUNT, high=100),
        Question("pain in set", Kind.WORST_PAIN),
    ),
)


def note(text: str) -> Heard:
    """A free note."""
    return hear(Question("note", Kind.OWN_WORDS), text)


def answer(kind: Kind, text: str, ask: str = "", **more: object) -> Value | None:
    """The value read for one question of a kind, or None when it would be asked again."""
    question = Question("x", kind, ask)._replace(**more)  # type: ignore[arg-type]
    return dict(hear(question, text).values).get("x")
