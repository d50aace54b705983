"""A small invented plan, a search kept narrow, and what it gathers. Not for use."""

from __future__ import annotations

from typing import NamedTuple

from coach.drivers.prove_answers import Answers, Compared, Number, Try
from coach.drivers.prove_search import Break, Search
from coach.model.heard import Question, Value
from coach.model.history import History
from coach.model.program import Bound, Prescription
from coach.session.brief import Brief, brief_for
from coach.session.engine import ask_of
from coach.session.state import State
from tests.session import invented
from tests.session.invented import MONDAY, asked_lately

CALM: dict[str, Value] = {
    "pain now": 1.0,
    "worst pain": 1.0,
    "waking pain": 0.0,
    "sleep last night": 8.0,
    "throwing yesterday": "none",
    "throwing today": "none",
    "screen": ("none",),
    "reps in set": 12.0,
    "holds in set": 2.0,
    "pain in warm-up": 0.0,
    "pain in set": 0.0,
    "pain before change": 0.0,
    "pain after": 1.0,
    "effort": 3.0,
    "minutes": 20.0,
    "sets since": 0.0,
    "felt in set": "fine",
    "plan is mine": "yes",
    "nothing here": "yes",
    "waking ache": "not sure",
    "against usual": "same",
    "stop for today": "today",
}


def bound(*names: str, **change: object) -> Bound:
    """The invented plan with the warm-up and the exercises named."""
    made = invented.bound()
    wanted = {"arm swing", *(names or ("side-lying turn out",))}
    doses = tuple(dose for dose in made.plan.doses if dose.exercise in wanted)
    plan = made.plan._replace(doses=doses)
    return made._replace(plan=plan._replace(**change))  # type: ignore[arg-type]


def with_dose(made: Bound, name: str, **change: object) -> Bound:
    """The plan with one dose line changed."""

    def changed(dose: Prescription) -> Prescription:
        return dose._replace(**change) if dose.exercise == name else dose  # type: ignore[arg-type]

    doses = tuple(changed(dose) for dose in made.plan.doses)
    return made._replace(plan=made.plan._replace(doses=doses))


def day(made: Bound | None = None, history: History | None = None) -> Brief:
    """A day of the small plan."""
    past = asked_lately() if history is None else history
    return brief_for(made or bound(), past, MONDAY)


class Narrow(Answers):
    """Only the facts in `wide` get every class of answer; the others their calm one."""

    def __init__(self, *wide: str) -> None:
        super().__init__()
        self.wide = frozenset(wide)

    def values(self, question: Question, state: State) -> tuple[Value, ...]:
        if question.fact in self.wide or "all" in self.wide:
            return super().values(question, state)
        calm = CALM.get(question.fact, "no")
        return (
            calm
            if not question.choices or calm in (*question.choices, ("none",))
            else question.choices[0],
        )


class Looked(NamedTuple):
    """What a search found."""

    broken: dict[tuple[str, str], Break]
    compared: frozenset[Compared]
    edges: list[set[tuple[int, int]]]
    asked: set[str]
    events: set[tuple[str, str]]
    situations: int


def look(
    brief: Brief, *wide: str, kinds: str = "value timer", until: str = "", most: int = 20_000
) -> Looked:
    """Search one day narrowly; `until` is the promise whose first break ends it."""
    search = Search(brief, most=most)
    search.day = Narrow(*wide)
    search.kinds = frozenset(kinds.split())
    if until:
        search.until = (until, "")
    edges: list[set[tuple[int, int]]] = []
    events: set[tuple[str, str]] = set()

    def keep(number: int, tried: Try, after: State, to: int) -> None:
        while len(edges) <= max(number, to):
            edges.append(set())
        at_a_timer = ask_of(search.nodes[number].state) is None and tried.kind != "timer"
        if (number != to or tried.kind == "value") and not at_a_timer:
            edges[number].add((to, 1))
        events.update((one.kind, one.what) for one in after.happened)
        events.update(("tell", line.text) for line in after.told)

    search.on_step = keep
    search.run()
    asked = {fact for node in search.nodes for fact in node.state.missing}
    compared = frozenset(search.day.log)
    return Looked(search.broken, compared, edges, asked, events, len(search.nodes))


__all__ = ["CALM", "Looked", "Narrow", "Number", "bound", "day", "look", "with_dose"]
