"""What a session needs from whoever sits in front of it: shown, asked, timed.

Law: a port shows what it is handed and brings back what was typed; it decides nothing and keeps
nothing. The terminal, lines, replay and the tests' fakes are ports.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple, Protocol

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import datetime

    from coach.journal import Unfinished
    from coach.model.history import DayRecord, History, Hold
    from coach.model.turns import Ask, Line, Timer, Turn


class Reply(NamedTuple):
    """What was typed; `fact` names the one question of a gathered prompt it is for, if any."""

    text: str
    fact: str = ""


class EndOfInput(Exception):
    """Nobody types any more."""


class Port(Protocol):
    """One way to sit in front of a session. `ask` and `time` may raise `EndOfInput`."""

    def present(self, turn: Turn, lines: tuple[Line, ...]) -> None:
        """Show a turn's lines, its values put in; on a cleared display where it stands alone."""

    def ask(self, ask: Ask) -> Reply:
        """Show the label and bring what is typed. A safety ask drops what was typed before it."""

    def time(self, timer: Timer, name: str, gone_s: float) -> Reply | None:
        """Run a timer of which `gone_s` seconds are over; None at its end, or what was typed."""


class Clock(Protocol):
    """The time, as an instant and as a steady count."""

    def now(self) -> datetime:
        """The local instant with its UTC offset."""

    def steady(self) -> float:
        """Seconds on a clock that nobody sets."""


class Diary(Protocol):
    """What the loop needs of a diary; every method may raise `Trouble`."""

    def begin(self, header: Mapping[str, str], opened_at: str, shown: tuple[str, ...]) -> int:
        """Start a session's record; its number."""

    def append(
        self,
        session: int,
        kind: str,
        body: Mapping[str, object],
        shown: tuple[str, ...],
        at: str,
        *,
        hold: Hold | None = None,
        close: DayRecord | None = None,
    ) -> None:
        """Write one event and all it led to, in one transaction."""

    def unfinished(self) -> Unfinished | None:
        """The newest session, if nothing ended it."""

    def history(self) -> History:
        """What a start may read of the past."""

    def open_hold(self) -> Hold | None:
        """The oldest stop that nothing has lifted."""
