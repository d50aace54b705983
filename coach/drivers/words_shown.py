"""What a turn puts on screen, in words: for the port and for the diary alike.

Law: the diary is told exactly what the port is handed.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from coach.drivers.layout import filled

if TYPE_CHECKING:
    from coach.model.heard import Value
    from coach.model.turns import Line, Turn
    from coach.session.daybook import Book
    from coach.session.state import State


def words_of(turn: Turn, lines: tuple[Line, ...]) -> tuple[str, ...]:
    """What is about to be on screen, for the diary."""
    return (*(line.text for line in lines), *((turn.ask.label,) if turn.ask else ()))


def lines_for(turn: Turn, book: Book, typed: str) -> tuple[Line, ...]:
    """The turn's lines with the values that were typed; `typed` stands in for a missing quote."""
    answers: dict[str, Value] = {"typed": typed, **dict(book.answers)}
    lines = tuple(filled(line, answers) for line in turn.lines)
    return tuple(line for line in lines if line.text != 'You typed: "".')


def record_words(end: str, state: State) -> str:
    """How the diary calls the end of a session that shows `end`."""
    if state.brief.history.hold is not None or end in {"closed", "refused"}:
        return "none"
    return end
