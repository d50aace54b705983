"""A day walked through the real session, step by step, with each answer open to change.

Law: the session decides all of it and nothing is kept; a walk is a list of typed answers folded
anew, so that one changed answer shows exactly what hangs on it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

from coach.drivers.replay_names import part_name, usual_answer
from coach.drivers.timed_lines import whole_s
from coach.drivers.words_shown import lines_for
from coach.model.decisions import Refusal
from coach.model.heard import Action, Command, Heard, Kind
from coach.model.turns import TimerEnded, Typed
from coach.session.daybook import keep, new_book
from coach.session.engine import listen, start, take, turn

if TYPE_CHECKING:
    from coach.model.decisions import Decision
    from coach.model.scenario import Typing
    from coach.model.turns import Ask, Event, Offer, Turn
    from coach.session.brief import Brief

ANSWER_S: Final = 6  # seconds that an answer takes in a preview; set here
MOST_STEPS: Final = 2000  # answers after which a walk is going round in circles; set here
_NOTHING: Final = Heard(Action.ACCEPT)


class Answer(NamedTuple):
    """What was typed at a prompt; `fact` names one question of a gathered line."""

    prompt: str
    text: str
    fact: str = ""


class Shown(NamedTuple):
    """One thing the session did: what was typed before it, its lines, and what decided."""

    typed: str
    stage: str
    lines: tuple[str, ...]
    decisions: tuple[Decision, ...]
    asked: tuple[str, ...]  # facts asked now, for their place in a script


class Walk:
    """One day. `shown` grows with each answer; `answers` is all that was typed."""

    def __init__(self, brief: Brief, usual: tuple[Typing, ...]) -> None:
        """Open the day; nothing is typed yet."""
        self.brief, self.usual = brief, usual
        self.answers: list[Answer] = []
        self.shown: list[Shown] = []
        self._state = start(brief)
        self._book = new_book(brief)
        self._at_s = 0
        self._offer: Offer | None = None
        self._throws: dict[str, int] = {}
        self.turn: Turn = self._present("")
        self._timers()

    @property
    def stage(self) -> str:
        """The stage's name in the table."""
        return self._state.stage.value

    @property
    def prompts(self) -> tuple[str, ...]:
        """The names of the present prompt: its own, then those of the questions on its line."""
        ask = self.turn.ask
        if ask is None:
            return ()
        return (ask.name, *(part_name(ask, part) for part in ask.question.parts))

    def usual_here(self) -> Answer | None:
        """What the course types at the present prompt; None where it says nothing."""
        ask = self.turn.ask
        if ask is None:
            return None
        part = ask.question.parts[0] if ask.question.kind is Kind.LINE else ask.question
        name = part_name(ask, part) if ask.question.kind is Kind.LINE else ask.name
        throws = sum(self._throws.values())
        text = usual_answer(name, part, self.usual, self._offer, throws)
        fact = part.fact if ask.question.kind is Kind.LINE else ""
        return None if text is None else Answer(name, text, fact)

    def type(self, answer: Answer) -> str:
        """Fold one answer; a sentence where the session does not take it, else ''."""
        self._at_s += ANSWER_S
        event = Typed(answer.text, self._at_s, answer.fact)
        heard = listen(self._state, event)
        if heard.command is Command.PAUSE:
            return "A break has nothing to show here."
        refused = self._fold(event, heard, answer.text)
        if not refused:
            self.answers.append(answer)
            self._timers()
        return refused

    def _fold(self, event: Event, heard: Heard, typed: str) -> str:
        after = take(self._state, event, heard)
        if isinstance(after, Refusal):
            return after.why or after.rule
        self._book = keep(self._book, self._state, event, heard, after)
        self._state = after
        self.turn = self._present(typed)
        return ""

    def _present(self, typed: str) -> Turn:
        now = turn(self._state)
        lines = tuple(line.text for line in lines_for(now, self._book, typed))
        for offer in now.offers:
            if offer.kind == "set":
                self._offer = offer
        if now.throws and now.ask is not None:
            self._throws[now.ask.name] = sum(part.throws for part in now.throws)
        asked = _facts(now.ask) if now.ask else ()
        self.shown.append(Shown(typed, self._state.stage.value, lines, now.decisions, asked))
        return now

    def _timers(self) -> None:
        while self.turn.timer is not None and not self.turn.end:
            self._at_s += whole_s(self.turn.timer)
            self._fold(TimerEnded(self._at_s), _NOTHING, "")


def _facts(ask: Ask) -> tuple[str, ...]:
    parts = ask.question.parts
    return tuple(part.fact for part in parts) if parts else (ask.question.fact,)


def walked_to(walk: Walk, where: str) -> bool:
    """Answer as the course does until a stage or a prompt of that name; whether it was reached."""
    for _ in range(MOST_STEPS):
        if where in (walk.stage, *walk.prompts):
            return True
        answer = walk.usual_here()
        if walk.turn.end or answer is None or walk.type(answer):
            return False
    return False


def walked_again(walk: Walk, number: int, text: str) -> Walk:
    """The same day with the answer of that number (from 0) changed and the rest as typed.

    A prompt that is asked only now is answered as the course does; where it says nothing, the walk
    stops there. An answer to what is asked no more is left out.
    """
    again = Walk(walk.brief, walk.usual)
    changed = walk.answers[number]
    left = list(enumerate(walk.answers))
    while left and not again.turn.end and len(again.answers) < MOST_STEPS:
        mine = next((pair for pair in left if pair[1].prompt in again.prompts), None)
        answer = mine[1] if mine else again.usual_here()
        if mine is not None:
            left.remove(mine)
            answer = changed._replace(text=text) if mine[0] == number else mine[1]
        if answer is None or again.type(answer):
            break
    return again


def numbers_of(walk: Walk, prompt: str) -> list[int]:
    """Which answers so far were given at a prompt of that name."""
    return [number for number, one in enumerate(walk.answers) if one.prompt == prompt]
