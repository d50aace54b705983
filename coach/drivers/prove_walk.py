"""`coach prove --walk N`: random conversations in real words through the real session, as a check of
what the search takes as given: that answers of one class cannot be told apart, and that it saw all.

Law: every step is held against the same promises as the search; the same seed walks the same way on
every machine. A walk that finds nothing shows nothing of what it did not walk.
"""

from __future__ import annotations

import random
import time
from collections.abc import Callable, Iterator
from typing import Final, NamedTuple

from coach.drivers.drive import timer_name
from coach.drivers.promises import Broken, Oracle, Path
from coach.drivers.prove_answers import GRIDS, Try
from coach.drivers.prove_days import openings
from coach.drivers.prove_search import merged, tries_at
from coach.drivers.prove_typing import MOODS, Edges, Move, Typist, calm_move, name_of
from coach.drivers.workers import TimeIsOver, done
from coach.model.decisions import Refusal
from coach.model.heard import Action, Command, Heard, Kind
from coach.model.program import Bound
from coach.model.turns import Ask, Event, Resumed, TimerEnded, Turn, Typed
from coach.session.brief import Brief
from coach.session.engine import ask_of, listen, question_heard, start, take, turn
from coach.session.state import State

PIECE: Final = 500  # turns that one worker walks at a time
MOST_ANSWERS: Final = 600  # a session that is longer does not end
PACES_S: Final = (5, 20, 60)  # seconds that an answer takes in a conversation
ONE_IN: Final = 16  # prompts at which stop and unclear are tried beside what is typed
RUNNING: Final = "(the timer runs)"
SIGNS: Final = frozenset({Action.ESCALATE, Action.CONFIRM})
COMMANDS: Final = {Command.STOP: "stop", Command.FIX: "fix", Command.GEAR: "gear"}

Key = tuple[str, int]  # a prompt and the how manieth time it is asked
Moves = dict[Key, Move]  # everything that is not the dull answer


class Told(NamedTuple):
    """One answer of a conversation: the prompt, what happened there, how it was heard."""

    prompt: str
    move: Move
    heard: Heard


class Talk(NamedTuple):
    """A conversation up to its end or to the first broken promise."""

    told: tuple[Told, ...]
    broken: tuple[Broken, ...]
    shown: Turn  # the last turn shown
    compared: int  # values held against another one of their class


class Found(NamedTuple):
    """A broken promise: the day, the shortest conversation found, and the answers that matter."""

    broken: Broken
    day: int
    pace_s: int
    moves: Moves
    talk: Talk


class Piece(NamedTuple):
    """What one worker walked."""

    turns: int
    talks: int
    compared: int
    found: tuple[Found, ...]


class Walked(NamedTuple):
    """The whole walk. `found` are the broken promises, each once, the shortest first."""

    turns: int
    talks: int
    compared: int
    found: tuple[Found, ...]
    days: tuple[tuple[str, Brief], ...]
    seconds: float
    finished: bool


# ---------------------------------------------------------------- one conversation


class Walk:
    """One conversation on one day, step by step under the promises."""

    def __init__(self, brief: Brief, pace_s: int, typist: Typist | None, moves: Moves) -> None:
        """`typist` types (None: the moves alone, else dull answers); `moves` gathers what is not dull."""
        self.oracle, self.pace_s, self.typist, self.moves = Oracle(brief), pace_s, typist, moves
        self.answers = typist.answers if typist is not None else Edges()
        self.state, self.path = start(brief), Path()
        self.told: list[Told] = []
        self.asked: dict[str, int] = {}
        self.broken: list[Broken] = list(self.oracle.at_start(self.state))
        self.compared = 0

    def to_the_end(self) -> Talk:
        """The conversation to its end, or to the first step that breaks a promise."""
        shown = self.show()
        while not self.state.end and not self.broken:
            if len(self.told) > MOST_ANSWERS:
                self.broken.append(Broken("P7", f"no end after {MOST_ANSWERS} answers"))
                break
            self.answer(shown)
            shown = self.show()
        return Talk(tuple(self.told), tuple(self.broken), shown, self.compared)

    def show(self) -> Turn:
        """The turn of the present state, checked."""
        shown = turn(self.state)
        self.broken += self.oracle.on_turn(self.state, shown)
        self.broken += self.oracle.reasons(self.state, shown)
        return shown

    def answer(self, shown: Turn) -> None:
        """One thing happens, and its step is checked."""
        ask = ask_of(self.state)
        prompt = name_of(ask) if ask is not None else RUNNING
        number = self.asked[prompt] = self.asked.get(prompt, 0) + 1
        move = self.moved((prompt, number), ask)
        event = self.event(move, ask)
        heard = listen(self.state, event)
        tried = as_try(move, event, heard)
        after = self.taken(event, heard)
        if after is None:
            return
        if self.typist is None or self.typist.dice.randrange(ONE_IN) == 0:
            several = (
                ask is None or ask.question.kind is Kind.LINE
            )  # a line is never taken as worst
            tries = () if several else tuple(tries_at(self.state, ask, shown, self.answers))
            self.broken += self.oracle.at_prompt(self.state, ask, tries)
        self.broken += misheard(move, ask, self.state, heard)
        self.broken += self.told_apart(event, heard, after)
        self.path, broken = self.oracle.on_step(self.state, ask, tried, after, self.path)
        self.broken += broken
        self.told.append(Told(self.prompt_of(ask, move), move, heard))
        self.state = after

    def prompt_of(self, ask: Ask | None, move: Move) -> str:
        """The prompt's name as a scenario writes it: of a whole line, of a timer typed into."""
        if ask is None:
            return timer_name(self.state) if move.text else RUNNING
        whole = ask.question.kind is Kind.LINE and not move.fact and not move.away_s
        return ask.name if whole else name_of(ask)

    def moved(self, key: Key, ask: Ask | None) -> Move:
        """What happens at a prompt: what the typist types, and what was typed before."""
        if self.typist is None:
            return self.moves.get(key) or (calm_move(ask, self.state) if ask else Move(""))
        if ask is None:
            move = self.typist.over_a_timer() or Move("")
            dull = move == Move("")
        else:
            move = self.typist.move(ask, self.state)
            dull = move == calm_move(ask, self.state)
        if not dull:
            self.moves[key] = move
        return move

    def event(self, move: Move, ask: Ask | None) -> Event:
        """The move as an event of the session."""
        at_s = self.pace_s * len(self.told)
        if move.away_s:
            return Resumed(move.away_s, at_s)
        if ask is None and not move.text:
            return TimerEnded(at_s)
        return Typed(move.text, at_s, move.fact)

    def taken(self, event: Event, heard: Heard) -> State | None:
        """The state after an event; a refusal or a fault in a session that goes on is a break."""
        try:
            after = take(self.state, event, heard)
        except Exception as fault:  # noqa: BLE001 - whatever breaks here would break a session
            self.broken.append(Broken("P7", f"a fault of ours: {type(fault).__name__}"))
            return None
        if isinstance(after, Refusal):
            self.broken.append(Broken("P7", f"refused: {after.why}"))
            return None
        return after

    def told_apart(self, event: Event, heard: Heard, after: State) -> Iterator[Broken]:
        """P15: a number and the others of its class lead to the very same state."""
        if not isinstance(event, Typed) or heard.action is not Action.ACCEPT:
            return
        question = question_heard(self.state, event)
        said = dict(heard.values)
        value = said.get(question.fact)
        if question.kind not in GRIDS or len(said) > 1 or not isinstance(value, int | float):
            return
        cuts = self.answers.cuts(question, self.state)
        for other in self.answers.numbers(question, self.state):
            if other == value or side(other, cuts) != side(value, cuts):
                continue
            self.compared += 1
            again = self.taken(event, heard._replace(values=((question.fact, other),)))
            if again is not None and merged(again) != merged(after):
                yield Broken("P15", f"{question.fact} {value:g} and {other:g} are told apart")
            return


def side(number: float, cuts: set[float]) -> tuple[bool, ...]:
    """On which side of every cut a number is."""
    return tuple(x for cut in sorted(cuts) for x in (number > cut, number >= cut))


def as_try(move: Move, event: Event, heard: Heard) -> Try:
    """What happened, as the promises read it."""
    return Try(move.text, kind_of(event, heard), event, heard, heard.values)


def kind_of(event: Event, heard: Heard) -> str:
    """The kind of a step, by what was heard."""
    if isinstance(event, Resumed):
        return "break"
    if isinstance(event, TimerEnded):
        return "timer"
    if heard.action in SIGNS:
        return "sign" if heard.action is Action.ESCALATE else "maybe"
    if heard.command is not None:
        return COMMANDS.get(heard.command, "command")
    return "value" if heard.values else "unclear"


def misheard(move: Move, ask: Ask | None, state: State, heard: Heard) -> Iterator[Broken]:
    """P1 and P10: a plain sign is heard at any prompt; no number as less pain or longer sleep."""
    if move.sign and heard.action not in SIGNS:
        yield Broken("P1", f"not heard: {move.text}")
    if ask is None or not isinstance(move.meant, int | float):
        return
    question = question_heard(state, Typed(move.text, 0, move.fact))
    said = dict(heard.values).get(question.fact)
    if not isinstance(said, int | float) or heard.action in SIGNS:
        return
    pain = question.kind in {Kind.PAIN_NOW, Kind.WORST_PAIN}
    if (pain and said < move.meant) or (question.kind is Kind.SLEEP_HOURS and said > move.meant):
        yield Broken("P10", f"{question.fact}: {move.text!r} is heard as {said:g}")


# ---------------------------------------------------------------- many conversations


def walked(
    bound: Bound,
    turns: int,
    *,
    seed: int = 1,
    workers: int = 1,
    seconds: float = 0.0,
    say: Callable[[str], None] = lambda _words: None,
) -> Walked:
    """At least so many turns in random conversations; cut short, what was walked until then."""
    began = time.monotonic()
    days = tuple(openings(bound))
    pieces = -(-turns // PIECE)
    came: dict[int, Piece] = {}
    until = began + seconds if seconds else None
    finished = True
    try:
        for number, piece in done(lambda n: walk_piece(days, seed, n), pieces, workers, until):
            came[number] = piece
            say(
                f"{len(came) * PIECE} of {turns} turns, {sum(len(p.found) for p in came.values())} breaks"
            )
    except (KeyboardInterrupt, TimeIsOver):
        finished = False
    parts = [came[number] for number in sorted(came)]
    return Walked(
        sum(part.turns for part in parts),
        sum(part.talks for part in parts),
        sum(part.compared for part in parts),
        shortest([one for part in parts for one in part.found]),
        days,
        time.monotonic() - began,
        finished,
    )


def walk_piece(days: tuple[tuple[str, Brief], ...], seed: int, number: int) -> Piece:
    """One worker's share: whole conversations until they have so many turns."""
    dice = random.Random(f"{seed}/{number}")  # noqa: S311 - a seeded walk is not cryptography
    turns = talks = compared = 0
    found: dict[Broken, Found] = {}
    while turns < PIECE:
        day = dice.randrange(len(days))
        mood = MOODS["calm" if talks % 2 else "at the edges"]
        pace_s = dice.choice(PACES_S)
        moves: Moves = {}
        told = Walk(days[day][1], pace_s, Typist(mood, dice, Edges()), moves).to_the_end()
        turns += len(told.told) + 1
        talks += 1
        compared += told.compared
        for one in told.broken:
            if one not in found:
                found[one] = calmed(days[day][1], Found(one, day, pace_s, moves, told))
    return Piece(turns, talks, compared, tuple(found.values()))


def shortest(found: list[Found]) -> tuple[Found, ...]:
    """Each broken promise once, by its shortest conversation."""
    best: dict[Broken, Found] = {}
    for one in found:
        known = best.get(one.broken)
        if known is None or length(one) < length(known):
            best[one.broken] = one
    return tuple(sorted(best.values(), key=lambda one: (one.broken, length(one))))


def length(found: Found) -> tuple[int, int]:
    """How long a conversation is, and how many of its answers are not dull."""
    return (len(found.talk.told), len(found.moves))


# ---------------------------------------------------------------- the answers that matter


def calmed(brief: Brief, found: Found) -> Found:
    """The same break with every answer made dull that it does not need."""
    again = replayed(brief, found, found.moves)
    if again is None:
        return found
    found = found._replace(talk=again)
    for key in list(found.moves):
        fewer = {other: move for other, move in found.moves.items() if other != key}
        again = replayed(brief, found, fewer)
        if again is not None:
            found = found._replace(moves=fewer, talk=again)
    return found


def replayed(brief: Brief, found: Found, moves: Moves) -> Talk | None:
    """The conversation of these moves where it breaks the same promise; else None."""
    told = Walk(brief, found.pace_s, None, moves).to_the_end()
    return told if found.broken in told.broken else None
