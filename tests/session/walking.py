"""Seeded random conversations over the real engine, with promises watched at every turn.

Law: it types nothing; it hands the engine heard values, so that a walk tests the session and not
the ears. The same seed gives the same walk.
"""

from __future__ import annotations

import random
from typing import NamedTuple

from coach.model.decisions import Refusal
from coach.model.flags import Group
from coach.model.heard import Action, Command, Heard, Kind, Question, Value
from coach.model.turns import Resumed, TimerEnded, Turn, Typed
from coach.session.brief import Brief
from coach.session.daybook import Book, keep, new_book
from coach.session.engine import ask_of, start, take, turn
from coach.session.state import State

PAINS = (0.0, 1.0, 1.0, 2.0, 2.5, 3.0, 3.5, 5.0, 6.0, 7.5, 8.0, 10.0)
COMMANDS = (
    Command.WHY,
    Command.WHY_CODE,
    Command.HELP,
    Command.LEFT,
    Command.AGAIN,
    Command.FIX,
    Command.GEAR,
    Command.MORE,
    Command.STOP,
)


class Seen(NamedTuple):
    """One step of a walk."""

    before: State
    heard: Heard
    after: State
    shown: Turn


def value_for(question: Question, dice: random.Random, *, calm: bool) -> Value:
    """A value that fits the question; calm = mostly the dull one."""
    kind = question.kind
    dull = dice.random() < (0.93 if calm else 0.5)
    if kind in {Kind.PAIN_NOW, Kind.WORST_PAIN}:
        return 0.0 if dull else dice.choice(PAINS)
    if kind is Kind.SLEEP_HOURS:
        return 8.0 if dull else dice.choice((0.0, 5.5, 6.0, 9.0))
    if kind in {Kind.YES_NO, Kind.SAFETY_YES_NO}:
        good = {"plan is mine", "guardian here", "nothing here", "stand-in weight"}
        calm_word = "yes" if question.fact in good else "no"
        return calm_word if dull else dice.choice(("yes", "no"))
    if kind is Kind.NONE_OR_LIST:
        return ("none",) if dull else tuple(dice.sample(question.choices, 1))
    if kind is Kind.CHOICES:
        return question.choices if dull else question.choices[:1]
    if kind in {Kind.CHOICE, Kind.SET_FEEL, Kind.THROWING, Kind.WORD}:
        return question.choices[0] if dull else dice.choice(question.choices)
    if kind is Kind.OWN_WORDS:
        return "none"
    high = min(question.high, 20.0)
    return float(dice.randint(int(question.low), int(high)))


def heard_for(question: Question, dice: random.Random, *, calm: bool) -> Heard:
    """One heard answer: a value mostly; now and then unclear, a sign, or a command word."""
    roll = dice.random() * (3.0 if calm else 1.0)
    if roll < 0.04:
        return Heard(Action.ASK_AGAIN)
    if roll < 0.05:
        return Heard(Action.ESCALATE, group=dice.choice(list(Group)))
    if roll < 0.08:
        return Heard(Action.CONFIRM, group=dice.choice(list(Group)))
    if roll < 0.12:
        return Heard(Action.ACCEPT, command=dice.choice(COMMANDS))
    if question.kind is Kind.LINE:
        parts = [p for p in question.parts if dice.random() < 0.9]
        values = tuple((p.fact, value_for(p, dice, calm=calm)) for p in parts)
        return Heard(Action.ACCEPT if values else Action.ASK_AGAIN, values)
    return Heard(Action.ACCEPT, ((question.fact, value_for(question, dice, calm=calm)),))


def walk(brief: Brief, seed: int, *, calm: bool = True, most: int = 400) -> list[Seen]:
    """One conversation to its end; raises AssertionError where it does not end in `most` steps."""
    dice = random.Random(seed)
    state = start(brief)
    book: Book = new_book(brief)
    seen: list[Seen] = []
    for step in range(most):
        shown = turn(state)
        if shown.end:
            return [*seen, Seen(state, Heard(Action.ACCEPT), state, shown)]
        event: Typed | TimerEnded | Resumed
        if dice.random() < 0.01:
            event, heard = (
                Resumed(dice.choice((10, 400, 4000)), step * 20),
                Heard(Action.ACCEPT),
            )
        elif shown.timer is not None and dice.random() < 0.9:
            event, heard = TimerEnded(step * 20), Heard(Action.ACCEPT)
        else:
            ask = ask_of(state)
            question = ask.question if ask else Question("timer", Kind.WORD, choices=("go",))
            event, heard = Typed("-", step * 20), heard_for(question, dice, calm=calm)
        after = take(state, event, heard)
        assert not isinstance(after, Refusal)
        book = keep(book, state, event, heard, after)
        seen.append(Seen(state, heard, after, shown))
        state = after
    raise AssertionError(f"seed {seed}: no end after {most} steps")
