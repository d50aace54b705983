"""What scenarios visit, and what they never do: script lines, both sides of branches, rules, stops.

Law: it only watches. A line counts when it was said, asked or done; a branch when its condition
held, and again when it did not; a rule when it decided in the session that a scenario played.
"""

from __future__ import annotations

from contextlib import contextmanager
from functools import wraps
from importlib import import_module
from typing import TYPE_CHECKING, Any, Final, NamedTuple

import coach.drivers.resuming
import coach.rules
from coach.drivers import replay, stand_ins
from coach.drivers.replay import Mismatch, Result
from coach.drivers.rules_known import file_of, rulings, source_of, sources
from coach.model.decisions import Decision, Refusal
from coach.model.program import Place
from coach.model.turns import Turn
from coach.rules.red_flags import FLAGS
from coach.session import brief as briefs
from coach.session import engine, scripts, stopping, throwing
from coach.session.state import State
from coach.session.table import Stage
from coach.texts.argued import reasons_for, told

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from pathlib import Path

    from coach.model.history import DayRecord
    from coach.model.program import Program, Script, Step, Test
    from coach.session.brief import Brief

Branch = tuple[str, tuple["Test", ...]]  # the moment, and the conditions down to the branch

_SOURCE: Final = "coach/rules/flag_table.py"


class Missing(NamedTuple):
    """Something no scenario reached: where it is written, and what it is."""

    file: str
    line: int
    what: str


class Reach:
    """All that was visited while it watched."""

    def __init__(self) -> None:
        self.programs: dict[str, Program] = {}
        self.steps: set[tuple[str, Place, str]] = set()
        self.held: set[tuple[str, Branch]] = set()
        self.failed: set[tuple[str, Branch]] = set()
        self.rules: dict[str, set[str]] = {}
        self.stops: set[str] = set()
        self.walked: set[tuple[str, Place]] = set()  # script lines come past, done or not
        self.exercises: set[str] = set()
        self.values: dict[str, set[str | float]] = {}  # what scripts were told of each fact

    # ------------------------------------------------------------ what is noted

    def note_step(self, brief: Brief, step: Step) -> None:
        """A line that was said, asked or done."""
        self.steps.add((brief.program.name, step.place, step.fact))

    def note_branches(self, before: State, after: State, moment: str, *, over: bool) -> None:
        """Which branches the walk went into, and which it passed by."""
        brief = before.brief
        items = brief.items[moment]
        end = len(items) if over else after.at  # a walk that stopped the day has no place any more
        for step in items[before.at : end + 1]:
            self.walked.add((brief.program.name, step.place))
        for step in items[before.at : end]:
            for depth, bit in enumerate(step.when):
                branch = (moment, tuple(brief.tests[b] for b in step.when[: depth + 1]))
                holds = bool(before.truth >> bit & 1)
                (self.held if holds else self.failed).add((brief.program.name, branch))
                if not holds:
                    break

    def note_found(self, found: object) -> None:
        """What a rule decided."""
        for one in found if type(found) is tuple else (found,):
            if isinstance(one, Decision):
                self.rules.setdefault(one.rule, set()).add(one.outcome)
            elif isinstance(one, Refusal):
                self.rules.setdefault(one.rule, set()).add("refused")

    def note_state(self, state: object) -> None:
        """What a step of the session brought about."""
        if not isinstance(state, State):
            self.note_found(state)
            return
        self.programs.setdefault(state.brief.program.name, state.brief.program)
        self.exercises.update(state.brief.stations[place].exercise.name for place in state.todo)
        self.note_found(state.reasons)
        self.note_found(state.because)
        self.note_found(tuple(h.decision for h in state.happened))
        if state.stop[0]:
            self.stops.add(state.stop[0])
        self._note_asked(state)

    def note_turn(self, turn: object) -> None:
        """What `why` would answer, and whose dose is shown."""
        if isinstance(turn, Turn):
            self.note_found(turn.decisions)
            self.exercises.update(offer.exercise for offer in turn.offers)

    def note_value(self, fact: str, value: str | float) -> None:
        """A value that the scripts' conditions were held against."""
        self.values.setdefault(fact, set()).add(value)

    def _note_asked(self, state: State) -> None:
        """Screen and throwing ask in an order of their own, not by walking a script."""
        facts = state.missing
        if state.stage is Stage.SCREEN:
            facts = (*facts, f"screen {state.section.rpartition(' ')[2]}")
        if state.stage in {Stage.SCREEN, Stage.THROWING} and not state.end:
            for step in state.brief.items[state.stage.value]:
                if step.fact in facts:
                    self.note_step(state.brief, step)

    # ------------------------------------------------------------ what is missing

    def missing(self) -> list[Missing]:
        """Everything never reached, by file and line."""
        found = [one for program in self.programs.values() for one in self._of_program(program)]
        return sorted({*found, *self._rules_missing(), *self._stops_missing()})

    def _of_program(self, program: Program) -> Iterator[Missing]:
        for script in program.scripts:
            for step in script.steps:
                if (program.name, step.place, step.fact) not in self.steps:
                    yield Missing(step.place.file, step.place.line, step_words(step))
            for branch, place in branches_of(script):
                words = f"when {test_words(branch[1][-1])}"
                if (program.name, branch) not in self.held:
                    yield Missing(place.file, place.line, f"{words}: never so")
                if (program.name, branch) not in self.failed:
                    yield Missing(place.file, place.line, f"{words}: never otherwise")

    def _rules_missing(self) -> Iterator[Missing]:
        for one in rulings():
            outcomes = self.rules.get(one.rule, set())
            if not (one.outcome in outcomes if one.outcome else outcomes):
                what = f"rule {one.rule}" + (f": {one.outcome}" if one.outcome else "")
                yield Missing(one.file, one.line, what)

    def _stops_missing(self) -> Iterator[Missing]:
        lines = source_of("coach.rules.flag_table").splitlines()
        for code, flag in FLAGS.items():
            if code not in self.stops:
                line = next((n for n, text in enumerate(lines, 1) if f'"{code}",' in text), 0)
                yield Missing(_SOURCE, line, f"stop {code}, {flag.tier.value}")
        for code, module in self._own_stops().items():
            if code not in self.stops:
                lines = source_of(module).splitlines()
                line = next(n for n, text in enumerate(lines, 1) if f'"{code}"' in text)
                yield Missing(file_of(module), line, f"stop {code}")

    def _own_stops(self) -> dict[str, str]:
        """The stops that no sign of the table names, with the module that lists them."""
        stops = [stopping.UNSURE, stopping.UNNAMED, stopping.AWAY]
        stops += [stopping.THROWING_PAIN, stopping.TWICE_DOWN]
        every = (s for p in self.programs.values() for script in p.scripts for s in script.steps)
        if any(step.kind == "stop" for step in every):
            stops.append(stopping.BY_PROGRAM)
        return dict.fromkeys(stops, stopping.__name__)

    def counts(self) -> str:
        """How much was reached, in one line."""
        programs = self.programs.values()
        steps = sum(len(script.steps) for p in programs for script in p.scripts)
        sides = 2 * sum(len(branches_of(script)) for p in programs for script in p.scripts)
        rules = {one.rule for one in rulings()}
        stops = len(FLAGS) + len(self._own_stops())
        left = [one.what for one in self.missing()]
        steps_left = sum(one.startswith("line ") for one in left)
        sides_left = sum(one.startswith("when ") for one in left)
        stops_left = sum(one.startswith("stop ") for one in left)
        return (
            f"Reached: {steps - steps_left} of {steps} script lines, "
            f"{sides - sides_left} of {sides} sides of branches, "
            f"{len(rules & set(self.rules))} of {len(rules)} rules, "
            f"{stops - stops_left} of {stops} stops."
        )


def branches_of(script: Script) -> list[tuple[Branch, Place]]:
    """Every branch of a script with the place of its first line."""
    found: dict[Branch, Place] = {}
    for step in script.steps:
        for depth in range(len(step.when)):
            tests = tuple(script.tests[number] for number in step.when[: depth + 1])
            found.setdefault((script.moment, tests), step.place)
    return list(found.items())


def step_words(step: Step) -> str:
    """A script line in words."""
    return f"line {step.kind}: {step.fact or step.text or f'{step.effect} {step.target}'.strip()}"


def test_words(test: Test) -> str:
    """A condition as it is written."""
    values = [f"{value:g}" if isinstance(value, float) else str(value) for value in test.values]
    joint = " to " if test.op == "between" else ", "
    op = "is" if test.op == "between" else f"is {test.op.removeprefix('is ')}"
    return f"{test.fact} {'is' if test.op == 'is' else op} {joint.join(values)}"


# ---------------------------------------------------------------- watching


@contextmanager
def watching(reach: Reach) -> Iterator[None]:
    """Everything the session does meanwhile is noted in `reach`."""
    with stand_ins.functions({**_rules_watched(reach), **_session_watched(reach)}):
        yield


def _rules_watched(reach: Reach) -> dict[Any, Any]:
    """A stand-in for every function that may decide something."""
    watched = [n for n in sources() if n.startswith("coach.rules")]
    watched += [coach.drivers.resuming.__name__, stopping.__name__, throwing.__name__]
    found: dict[Any, Any] = {}
    for name in watched:
        module = import_module(name)
        for value in vars(module).values():
            if getattr(value, "__module__", "") == name and type(value) is type(watching):
                found[value] = _noting(value, reach.note_found)
    return found


def _noting(
    function: Callable[..., object],
    note: Callable[[object], None],
) -> Any:  # noqa: ANN401 - whatever the function gives
    @wraps(function)
    def noted(*arguments: object, **named: object) -> object:
        found = function(*arguments, **named)
        note(found)
        return found

    return noted


def _session_watched(reach: Reach) -> dict[Any, Any]:
    settle, said_or_done, asked_today = scripts.settle, scripts.said_or_done, scripts.asked_today
    know, past_facts = scripts.know, briefs.past_facts

    def settled(state: State, moment: str, due: scripts.Due) -> tuple[State, bool]:
        after, over = settle(state, moment, due)
        reach.note_branches(state, after, moment, over=over and not after.end)
        return after, over

    def said(state: State, item: Step) -> State:
        reach.note_step(state.brief, item)
        return said_or_done(state, item)

    def asked(state: State, step: Step, due: scripts.Due) -> bool:
        is_asked = asked_today(state, step, due)
        if is_asked:
            reach.note_step(state.brief, step)
        return is_asked

    def known(state: State, fact: str, value: str | float) -> State:
        reach.note_value(fact, value)
        return know(state, fact, value)

    def past(brief: Brief, worked: list[DayRecord]) -> dict[str, str | float]:
        facts = past_facts(brief, worked)
        for fact, value in facts.items():
            reach.note_value(fact, value)
        return facts

    return {
        know: known,
        past_facts: past,
        settle: settled,
        said_or_done: said,
        asked_today: asked,
        engine.take: _noting(engine.take, reach.note_state),
        engine.start: _noting(engine.start, reach.note_state),
        engine.turn: _noting(engine.turn, reach.note_turn),
    }


# ---------------------------------------------------------------- for a tester


def reached_by(paths: list[Path]) -> tuple[list[Result], Reach]:
    """The scenarios played under watch: their results, and what they reached."""
    reach = Reach()
    with watching(reach):
        results = replay.replay(paths)
    return results, reach


def look(paths: list[Path]) -> tuple[list[Result], list[str]]:
    """Results for a build server (what is missing counts as failed), and the words for a tester."""
    results, reach = reached_by(paths)
    reasons = reasons_for([file for path in paths for file in replay.files_under(path)])
    lines = [*replay.report(results), *report(reach, reasons)]
    return [*results, *as_results(reach, reasons)], lines


def report(reach: Reach, reasons: dict[str, str]) -> list[str]:
    """What is missing, line by line, then what is argued beside the program, then the count."""
    missing = reach.missing()
    open_ = [f"{m.file}:{m.line}: {m.what}: not reached" for m in missing if m.what not in reasons]
    argued = told(reasons, [one.what for one in missing], "rule |line |when |stop ")
    return [*open_, *argued, reach.counts()]


def as_results(reach: Reach, reasons: dict[str, str]) -> list[Result]:
    """Each thing missing as a failed test, for a build server."""
    return [
        Result(
            one.file,
            f"line {one.line}: {one.what}",
            0.0,
            (Mismatch("any day", "any", Place(one.file, one.line), "reached", "not reached"),),
        )
        for one in reach.missing()
        if one.what not in reasons
    ]
