"""A typed conversation with the real engine and the real ears, for the session's tests."""

from __future__ import annotations

from typing import NamedTuple

from coach.model.decisions import Refusal
from coach.model.history import DayRecord, Hold
from coach.model.turns import Event, Resumed, TimerEnded, Turn, Typed
from coach.session.brief import Brief
from coach.session.daybook import Book, day_record, hold_of, keep, new_book
from coach.session.engine import listen, start, take, turn
from coach.session.state import State

# A calm morning, one section alone, the list, and a warm-up without pain.
MORNING = "pain 1, morning 0, slept 8, no throws, no game"
TO_THE_FIRST_SET = (MORNING, "no", "none", "0")


class Talk(NamedTuple):
    """A conversation so far."""

    state: State
    book: Book
    turns: tuple[Turn, ...]
    at_s: int = 0

    @property
    def now(self) -> Turn:
        """The present turn."""
        return turn(self.state)

    @property
    def name(self) -> str:
        """The present prompt's name, or how the day ended, or `timer`."""
        now = self.now
        if now.end:
            return now.end
        return now.ask.name if now.ask else "timer"

    @property
    def choices(self) -> tuple[str, ...]:
        """The names that fit the present prompt."""
        now = self.now
        return now.ask.question.choices if now.ask else ()

    @property
    def words(self) -> str:
        """All that the present turn says."""
        return " ".join(line.text for line in self.now.lines)

    def event(self, event: Event) -> Talk:
        """The conversation after one event."""
        heard = listen(self.state, event)
        after = take(self.state, event, heard)
        assert not isinstance(after, Refusal), after
        book = keep(self.book, self.state, event, heard, after)
        return Talk(after, book, (*self.turns, turn(after)), self.at_s + 10)

    def say(self, *answers: str) -> Talk:
        """The conversation after some answers; timers run out by themselves before each."""
        talk = self
        for text in answers:
            talk = talk.rested().event(Typed(text, talk.at_s))
        return talk

    def rested(self) -> Talk:
        """The conversation once no timer runs."""
        talk = self
        while talk.now.timer is not None:
            talk = talk.event(TimerEnded(talk.at_s))
        return talk

    def back_after(self, minutes: float) -> Talk:
        """The conversation after a break."""
        return self.event(Resumed(int(minutes * 60), self.at_s))

    def record(self) -> DayRecord:
        """The day as the diary would keep it."""
        return day_record(self.book, self.state, self.state.end or "partial")

    def hold(self) -> Hold | None:
        """The hold that this day placed."""
        return hold_of(self.state, self.book, "2026-11-09T18:40:00+02:00")


def talk(brief: Brief, *answers: str) -> Talk:
    """A conversation from its start."""
    state = start(brief)
    return Talk(state, new_book(brief), (turn(state),)).say(*answers)
