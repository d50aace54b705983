"""What an athlete of a mood types at a prompt: real words, for the random conversations of a proof.

Law: everything here is typed text that the ears hear as in any session; what it was meant to say is
kept beside it, so that a walk can also see what the ears make of it. The same dice, the same words.
"""

from __future__ import annotations

import random
from typing import Final, NamedTuple

from coach.drivers.prove_answers import GRIDS, Answers
from coach.drivers.replay_names import part_name
from coach.model.heard import Kind, Question, Value
from coach.model.turns import Ask
from coach.rules.cut_points import cut_points
from coach.session.state import State

# Signs that are said in so many words, one or two of each kind; our own sentences.
SIGNS: Final = (
    "my hand is numb",
    "my fingers tingle",
    "my arm went weak and i drop things",
    "my hand is cold and white",
    "my whole arm is swollen",
    "i can't lift my arm any more",
    "my shoulder slipped out",
    "my shoulder has a new shape",
    "it popped and now i can't lift it",
    "the inside of my elbow popped",
    "i fell on my shoulder",
    "i have chest pain",
    "i can't get my breath",
    "i fainted this morning",
    "my face droops on one side",
    "my legs are clumsy and weak",
    "i have a fever",
    "the wound is red and leaks",
    "my calf is swollen and hot",
    "the pain wakes me every night and never stops",
)
UNSURE: Final = ("maybe a bit numb", "my hand was numb last year", "not sure if it is swollen")
UNCLEAR: Final = ("", "hm", "?", "potato", "what do you mean")
COMMANDS: Final = ("why", "why code", "left", "help", "again", "fix", "gear", "more", "stop")
# Seconds around the lines of checkin.gap, and some far from them.
BREAKS_S: Final = (1, 240, 299, 300, 301, 1200, 3599, 3600, 3601, 9000, 14400)
GOOD_YES: Final = frozenset({"plan is mine", "guardian here", "nothing here", "stand-in weight"})
CALM: Final[dict[str, str]] = {
    "waking pain": "0",
    "pain in set": "0",
    "pain in warm-up": "0",
    "against usual": "same",
    "moves or later": "moves",
    "minutes": "25",
    "effort": "4",
    "sets since": "0",
    "thrown already": "no",
    "felt in set": "fine",
    "what is worse": "none",
}


class Edges(Answers):
    """Answers that also know the numbers which the rules declare, for talk that no search visits."""

    def cuts(self, question: Question, state: State) -> set[float]:
        """The numbers at which an answer to `question` may change something."""
        brief = state.brief
        declared = cut_points(brief.plan, brief.usual_morning)
        named = {float(cut.number) for cut in declared if cut.fact == question.fact}
        return super().cuts(question, state) | named


class Mood(NamedTuple):
    """How often, in 1000 answers, something else than the dull one is typed."""

    edge: int  # a value beside a number of the plan or the script
    any: int  # any value of the scale
    unclear: int
    sign: int
    unsure: int
    command: int
    away: int


CALM_MOOD: Final = Mood(edge=25, any=15, unclear=10, sign=2, unsure=3, command=10, away=3)
EDGE_MOOD: Final = Mood(edge=450, any=80, unclear=40, sign=4, unsure=8, command=60, away=10)
MOODS: Final = {"calm": CALM_MOOD, "at the edges": EDGE_MOOD}


class Move(NamedTuple):
    """What happens at a prompt: text typed (for a part of its line, by `fact`), or a break in s.

    `meant` is the value or the sign that the text says, where it says one in plain words.
    """

    text: str
    fact: str = ""
    away_s: int = 0
    meant: Value | None = None
    sign: bool = False


def asked_part(ask: Ask) -> Question:
    """The one question that is answered next: the prompt's, or the first part of its line."""
    return ask.question.parts[0] if ask.question.kind is Kind.LINE else ask.question


def name_of(ask: Ask) -> str:
    """The prompt's name as a scenario writes it for that question."""
    if ask.question.kind is Kind.LINE:
        return part_name(ask, ask.question.parts[0])
    return ask.name


def calm_move(ask: Ask, state: State) -> Move:
    """The dull answer to a prompt."""
    question = asked_part(ask)
    fact = question.fact if ask.question.kind is Kind.LINE else ""
    return Move(calm_text(question, state), fact)


def calm_text(question: Question, state: State) -> str:
    """The dull answer in words."""
    kind, fact = question.kind, question.fact
    if fact in CALM:
        return CALM[fact]
    if kind in {Kind.YES_NO, Kind.SAFETY_YES_NO}:
        return "yes" if fact in GOOD_YES else "no"
    if kind is Kind.COUNT:
        work = state.work
        reps = work.dose.reps_high if work is not None and fact != "throws done" else question.low
        return f"{reps:g}"
    if kind in {Kind.THROWING, Kind.NONE_OR_LIST, Kind.OWN_WORDS}:
        return "none"
    plain = {Kind.PAIN_NOW: "1", Kind.WORST_PAIN: "1", Kind.SLEEP_HOURS: "8", Kind.CHOICES: "all"}
    if kind in plain:
        return plain[kind]
    if kind is Kind.SET_FEEL:
        return "fine"
    return question.choices[0] if question.choices else f"{question.low:g}"


class Typist:
    """Types at prompts in a mood, by dice of its own."""

    def __init__(self, mood: Mood, dice: random.Random, answers: Answers) -> None:
        """`answers` knows the numbers at which something may change."""
        self.mood, self.dice, self.answers = mood, dice, answers

    def move(self, ask: Ask, state: State) -> Move:
        """What is typed at a prompt, or a break taken there."""
        left = self.dice.randrange(1000)
        for what, often in zip(Mood._fields, self.mood, strict=True):
            left -= often
            if left < 0:
                return self._some(what, ask, state)
        return calm_move(ask, state)

    def over_a_timer(self) -> Move | None:
        """What is typed while a timer runs; None: it ends by itself."""
        left = self.dice.randrange(1000) - self.mood.command
        if left < 0:
            return Move(self.dice.choice(COMMANDS))
        left -= self.mood.sign
        return Move(self.dice.choice(SIGNS), sign=True) if left < 0 else None

    def _some(self, what: str, ask: Ask, state: State) -> Move:
        question = asked_part(ask)
        fact = question.fact if ask.question.kind is Kind.LINE else ""
        if what == "away":
            return Move("", away_s=self.dice.choice(BREAKS_S))
        if what == "sign":
            return Move(self.dice.choice(SIGNS), fact, sign=True)
        words = {"unclear": UNCLEAR, "unsure": UNSURE, "command": COMMANDS}.get(what)
        if words is not None:
            return Move(self.dice.choice(words), fact)
        return self._value(question, fact, state, edge=what == "edge")

    def _value(self, question: Question, fact: str, state: State, *, edge: bool) -> Move:
        """A value in words: at an edge, or any of the scale."""
        if question.kind not in GRIDS:
            values = self.answers.values(question, state)
            value = self.dice.choice(values) if values else "none"
            return Move(_words(question, value, self.dice), fact, meant=value)
        grid = GRIDS[question.kind]
        if edge:
            number = self.dice.choice(self.answers.numbers(question, state))
        else:
            high = min(question.high, question.low + 40)
            number = question.low + grid * self.dice.randrange(
                int((high - question.low) / grid) + 1
            )
        return Move(_number(question, number, self.dice), fact, meant=number)


def _words(question: Question, value: Value, dice: random.Random) -> str:
    if isinstance(value, tuple):
        return ", ".join(value) or "none"
    if value == "yes" and question.kind is Kind.YES_NO:
        return dice.choice(("yes", "y", "yeah"))
    if value == "no" and question.kind is Kind.YES_NO:
        return dice.choice(("no", "n", "nope"))
    return str(value)


def _number(question: Question, number: float, dice: random.Random) -> str:
    """A number as people type it, with its unit or scale now and then."""
    plain = f"{number:g}"
    if question.kind in {Kind.PAIN_NOW, Kind.WORST_PAIN}:
        return dice.choice((plain, plain, f"{plain}/10", f"it was a {plain}", f"a {plain}"))
    if question.kind is Kind.SLEEP_HOURS:
        return dice.choice((plain, f"{plain} h", f"{plain} hours"))
    return plain
