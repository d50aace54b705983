"""Changes one thing at a time, and lists the changes that no scenario noticed.

Law: every change is small, stands alone and is taken back; what nobody noticed is listed by line.
Changes go the careful way and the careless way, since a scenario must see both.
"""

from __future__ import annotations

import ast
from contextlib import nullcontext
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.drivers import replay, stand_ins
from coach.drivers.plan_changes import plan_changes
from coach.drivers.program_changes import program_changes
from coach.drivers.reach import Reach, watching
from coach.drivers.replay import Mismatch, Result
from coach.drivers.rules_known import file_of, sources
from coach.model.program import Place
from coach.texts.argued import reasons_for, told
from coach.texts.doors import bound_from
from coach.texts.scenarios import read_scenario

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from contextlib import AbstractContextManager
    from pathlib import Path

    from coach.model.program import Bound
    from coach.model.scenario import Scenario

HOURS: Final = ("_H", "_HOURS")  # numbers of hours are changed by half an hour


class Played(NamedTuple):
    """A scenario that passes unchanged, and what it reaches."""

    file: str
    scenario: Scenario
    bound: Bound
    reach: Reach


class Doubt(NamedTuple):
    """One change: where, in words, to whom it matters, the changed plan, or a rule's number."""

    place: Place
    what: str
    matters: Callable[[Played], bool]
    changed: Callable[[Bound], Bound]
    number: tuple[str, float, float] | None = None


# ---------------------------------------------------------------- the changes


def doubts(played: list[Played]) -> list[Doubt]:
    """Every change there is to try, program first, then each plan, then the rules' numbers."""
    found: list[Doubt] = []
    for bound in _each(played, lambda one: one.bound.program.name):
        found += _of_program(bound)
    for bound in _each(played, lambda one: one.scenario.plan_file):
        found += _of_plan(bound)
    return [*found, *_of_rules()]


def _each(played: list[Played], by: Callable[[Played], str]) -> list[Bound]:
    return list({by(one): one.bound for one in reversed(played)}.values())[::-1]


def _of_program(bound: Bound) -> Iterator[Doubt]:
    name = bound.program.name
    for change in program_changes(bound.program):

        def changed(of: Bound, make: object = change.make) -> Bound:
            return of._replace(program=make(of.program))  # type: ignore[operator]

        def matters(one: Played, step: Place | None = change.step) -> bool:
            if one.bound.program.name != name:
                return False
            return step is None or any(place == step for _n, place in one.reach.walked)

        yield Doubt(change.place, f"change {change.what}", matters, changed)


def _of_plan(bound: Bound) -> Iterator[Doubt]:
    for change in plan_changes(bound.plan):

        def changed(of: Bound, make: object = change.make) -> Bound:
            return of._replace(plan=make(of.plan))  # type: ignore[operator]

        def matters(one: Played, exercise: str = change.exercise) -> bool:
            mine = one.bound.plan.name == bound.plan.name
            return mine and (not exercise or exercise in one.reach.exercises)

        yield Doubt(change.place, f"change {change.what}", matters, changed)


def _of_rules() -> Iterator[Doubt]:
    for module, tree in sources().items():
        if not module.startswith("coach.rules"):
            continue
        for node in tree.body:
            value = node.value if isinstance(node, ast.AnnAssign) else None
            if isinstance(node, ast.AnnAssign) and isinstance(value, ast.Constant):
                yield from _of_number(file_of(module), node, value.value)


def _of_number(file: str, node: ast.AnnAssign, value: object) -> Iterator[Doubt]:
    if isinstance(value, bool) or not isinstance(value, int | float):
        return
    name = getattr(node.target, "id", "")
    by = 0.5 if isinstance(value, float) or name.endswith(HOURS) else 1
    for new in (value - by, value + by):
        kind = type(value)
        yield Doubt(
            Place(file, node.lineno),
            f"change {file}: {name} {value:g} to {new:g}",
            lambda _one: True,
            lambda bound: bound,
            (name, value, kind(new) if by == 1 else new),
        )


# ---------------------------------------------------------------- asking the scenarios


def readable(paths: list[Path]) -> list[Played]:
    """The scenarios that pass as they are, each with what it reaches."""
    plans: dict[str, Bound | None] = {}
    found: list[Played] = []
    for file in (file for path in paths for file in replay.files_under(path)):
        scenario, _findings = read_scenario(file)
        if scenario is None:
            continue
        if scenario.plan_file not in plans:
            plans[scenario.plan_file] = bound_from(type(file)(scenario.plan_file))[0]
        bound = plans[scenario.plan_file]
        if bound is not None:
            reach = Reach()
            with watching(reach):
                passes = replay.play(scenario, file.name, bound).passed
            if passes:
                found.append(Played(file.name, scenario, bound, reach))
    return found


def noticed_by(doubt: Doubt, played: list[Played]) -> str:
    """The first scenario that fails under the change; empty when all pass."""
    inside: AbstractContextManager[None] = nullcontext()
    if doubt.number is not None:
        inside = stand_ins.number(*doubt.number)
    with inside:
        for one in played:
            if doubt.matters(one) and not _passes(one, doubt.changed(one.bound)):
                return one.file
    return ""


def _passes(one: Played, bound: Bound) -> bool:
    try:
        return replay.play(one.scenario, one.file, bound, hasty=True).passed
    except Exception:  # noqa: BLE001 - a change may break anything; that is noticed
        return False


def unnoticed(played: list[Played], say: Callable[[str], None]) -> tuple[list[Doubt], int]:
    """The changes that no scenario noticed, and how many were tried; `say` hears of the progress."""
    order, left = list(played), []
    every = doubts(played)
    for number, doubt in enumerate(every, start=1):
        file = noticed_by(doubt, order)
        if file:  # who notices one change will often notice the next
            order.sort(key=lambda one: one.file != file)
        else:
            left.append(doubt)
        say(f"{number} of {len(every)} changes tried, {len(left)} not noticed")
    return left, len(every)


def look(paths: list[Path], say: Callable[[str], None]) -> tuple[list[Result], list[str]]:
    """Results for a build server (each change not noticed failed), and the words for a tester."""
    files = [file for path in paths for file in replay.files_under(path)]
    reasons = reasons_for(files)
    left, tried = unnoticed(readable(paths), say)
    open_ = [one for one in left if one.what not in reasons]
    lines = [f"{one.place.file}:{one.place.line}: {one.what}: not noticed" for one in open_]
    lines += told(reasons, [one.what for one in left], "change ")
    argued = len(left) - len(open_)
    lines.append(f"{tried} changes tried, {len(open_)} not noticed, {argued} more argued.")
    return [_failed(one) for one in open_] or [Result("doubt", "every change", 0.0)], lines


def _failed(one: Doubt) -> Result:
    missed = Mismatch("any day", "any", one.place, "some scenario fails", "all pass")
    return Result(one.place.file, f"line {one.place.line}: {one.what}", 0.0, (missed,))
