"""The search: every situation that any answers lead to, breadth first, parents kept.

Law: it drives the same three functions that talk to the athlete, and no second model. Situations
are merged only over what is said or kept for the diary. It decides no promise itself.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable
from typing import NamedTuple

from coach.drivers import prove_answers as answers
from coach.drivers.promises import WORK, Broken, Oracle, Path
from coach.drivers.prove_answers import Answers, Try
from coach.model.decisions import Refusal
from coach.model.turns import Ask, Turn
from coach.session.brief import Brief
from coach.session.engine import ask_of, start, take, turn
from coach.session.state import State
from coach.session.table import Stage

EVERY_KIND = frozenset(
    {"value", "unclear", "sign", "maybe", "stop", "timer", "break", "fix", "gear"}
)


class Break(NamedTuple):
    """A broken promise with the shortest conversation that leads to it."""

    promise: str
    words: str
    talk: tuple[tuple[str, str], ...]  # (prompt, what is typed)
    day: str = ""


class Node(NamedTuple):
    """A situation with how it was first reached."""

    state: State
    path: Path
    parent: int
    prompt: str
    tried: Try | None


def merged(state: State) -> State:
    """The situation without what is only said or kept for the diary."""
    work = state.work
    if work is not None:
        work = work._replace(more=0, short=False, earned=False)
    return state._replace(
        told=(), happened=(), reasons=(), because=(), repeat=False, first=False, blank=(), work=work
    )


def tries_at(state: State, asked: Ask | None, shown: Turn, day: Answers) -> Iterable[Try]:
    """Everything that may happen at this prompt."""
    if asked is not None:
        yield from day.to(asked.question, state)
    if shown.timer is not None:
        yield answers.TIMER
    yield answers.UNCLEAR
    yield answers.STOP
    yield answers.SIGN
    yield answers.MAYBE
    if state.aside == "" and state.stage not in {Stage.WHO, Stage.ENDING}:
        yield answers.FIX
    if state.aside == "" and state.stage in WORK:
        yield answers.GEAR
        yield from answers.BREAKS


class Search:
    """One flat search of a day. `nodes` are the situations in the order they were found."""

    def __init__(self, brief: Brief, *, most: int = 3_000_000) -> None:
        """`most` situations at most; more raises OverflowError."""
        self.brief, self.most = brief, most
        self.oracle = Oracle(brief)
        self.day = Answers()
        self.nodes: list[Node] = []
        self.found: dict[tuple[State, Path], int] = {}
        self.broken: dict[tuple[str, str], Break] = {}
        self.turns = self.calls = 0
        self.kinds = EVERY_KIND
        self.until: tuple[str, str] | None = None
        self.on_step: Callable[[int, Try, State, int], None] | None = None

    def run(self) -> None:
        """Visit everything."""
        first = start(self.brief)
        self.note(0, self.oracle.at_start(first))
        self.add(first, Path(), -1, "", None)
        todo = deque([0])
        while todo and not self.found_it():
            number = todo.popleft()
            before = len(self.nodes)
            self.visit(number)
            todo.extend(range(before, len(self.nodes)))

    def found_it(self) -> bool:
        """Whether the break that is looked for is found (its words may be left open)."""
        if self.until is None:
            return False
        promise, words = self.until
        return any(p == promise and words in {"", w} for p, w in self.broken)

    def add(self, state: State, path: Path, parent: int, prompt: str, tried: Try | None) -> int:
        """The number of a situation, new or known."""
        key = (merged(state), path)
        number = self.found.get(key)
        if number is None:
            number = self.found[key] = len(self.nodes)
            self.nodes.append(Node(state, path, parent, prompt, tried))
            if number > self.most:
                raise OverflowError(f"more than {self.most} situations")
        return number

    def visit(self, number: int) -> None:
        """Show one situation, check it, and take every answer."""
        node = self.nodes[number]
        state = node.state
        shown = turn(state)
        self.turns += 1
        self.note(number, self.oracle.on_turn(state, shown))
        self.note(number, self.oracle.reasons(state, shown))
        if state.end:
            return
        asked = ask_of(state)
        tries = tuple(tries_at(state, asked, shown, self.day))
        for tried in tries:
            if tried.kind not in self.kinds:
                continue
            after = take(state, tried.event, tried.heard)
            self.calls += 1
            if isinstance(after, Refusal):
                raise TypeError(after.why)
            self.step(number, node, asked, tried, after)
        self.note(number, self.oracle.at_prompt(state, asked, tries))

    def step(self, number: int, node: Node, asked: Ask | None, tried: Try, after: State) -> None:
        """Check one step and keep where it leads."""
        path, broken = self.oracle.on_step(node.state, asked, tried, after, node.path)
        self.note(number, broken, (asked, tried))
        prompt = asked.name if asked else "rest" if not node.state.end else ""
        to = self.add(after, path, number, prompt, tried)
        if self.on_step is not None:
            self.on_step(number, tried, after, to)

    def note(
        self, number: int, broken: Iterable[Broken], last: tuple[Ask | None, Try] | None = None
    ) -> None:
        """Keep the first, and so the shortest, conversation of each break."""
        for one in broken:
            if (one.promise, one.words) in self.broken:
                continue
            talk = self.talk_to(number)
            if last is not None:
                asked, tried = last
                talk = (*talk, (asked.name if asked else "rest", tried.words))
            self.broken[one.promise, one.words] = Break(one.promise, one.words, talk)

    def talk_to(self, number: int) -> tuple[tuple[str, str], ...]:
        """The conversation that first led to a situation."""
        talk: list[tuple[str, str]] = []
        while number > 0:
            node = self.nodes[number]
            talk.append((node.prompt, node.tried.words if node.tried else ""))
            number = node.parent
        return tuple(reversed(talk))
