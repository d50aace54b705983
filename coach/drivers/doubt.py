"""Changes one thing at a time, and lists the changes that no scenario noticed.

Law: every change is small, stands alone and is taken back; what nobody noticed is listed by line.
Changes go the careful way and the careless way, since a scenario must see both. A look that was cut
short says so, and is no proof of anything it did not try.
"""

from __future__ import annotations

import time
from contextlib import nullcontext
from typing import TYPE_CHECKING, NamedTuple

from coach.drivers import replay, stand_ins
from coach.drivers.exit_codes import INTERRUPTED
from coach.drivers.functions_run import functions_run
from coach.drivers.plan_changes import plan_changes
from coach.drivers.program_changes import program_changes
from coach.drivers.reach import Reach, watching
from coach.drivers.replay import Mismatch, Result
from coach.drivers.rule_changes import RuleChange, rule_changes
from coach.drivers.workers import TimeIsOver, cores, done
from coach.model.program import Place
from coach.texts.argued import reasons_for, told
from coach.texts.doors import bound_from
from coach.texts.scenarios import read_scenario

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from contextlib import AbstractContextManager
    from pathlib import Path

    from coach.model.program import Bound, Plan
    from coach.model.scenario import Scenario


class Played(NamedTuple):
    """A scenario that passes unchanged: what it reaches, its name with all that it types and
    checks, and the functions that ran.
    """

    file: str
    scenario: Scenario
    bound: Bound
    reach: Reach
    words: str
    ran: frozenset[str]


class Doubt(NamedTuple):
    """One change: where, in words, to whom it may matter, the changed plan, or a rule's number.

    `about` is a name that a scenario looking at this would write; such ones are asked first.
    """

    place: Place
    what: str
    about: str
    matters: Callable[[Played], bool]
    changed: Callable[[Bound], Bound]
    number: RuleChange | None = None


# ---------------------------------------------------------------- the changes


def doubts(played: list[Played]) -> list[Doubt]:
    """Every change there is to try, program first, then each plan, then the rules' numbers."""
    found: list[Doubt] = []
    for bound in _each(played, lambda one: one.bound.program.name):
        found += _of_program(bound, [one.bound.plan for one in played])
    for bound in _each(played, lambda one: one.scenario.plan_file):
        found += _of_plan(bound)
    return [*found, *map(_of_rule, rule_changes())]


def _each(played: list[Played], by: Callable[[Played], str]) -> list[Bound]:
    return list({by(one): one.bound for one in reversed(played)}.values())[::-1]


def _of_program(bound: Bound, plans: list[Plan]) -> Iterator[Doubt]:
    """Changes of a program; none of an exercise or a phase that no plan played here uses."""
    name = bound.program.name
    dosed = {"", *(dose.exercise for plan in plans for dose in plan.doses)}
    phases = {"", *(plan.phase for plan in plans)}
    for change in program_changes(bound.program):
        if change.needs[0] not in dosed or change.needs[1] not in phases:
            continue

        def changed(of: Bound, make: object = change.make) -> Bound:
            return of._replace(program=make(of.program))  # type: ignore[operator]

        def matters(one: Played, sees: Callable[[Reach], bool] = change.matters) -> bool:
            return one.bound.program.name == name and sees(one.reach)

        yield Doubt(change.place, f"change {change.what}", change.about, matters, changed)


def _of_plan(bound: Bound) -> Iterator[Doubt]:
    for change in plan_changes(bound.plan):

        def changed(of: Bound, make: object = change.make) -> Bound:
            return of._replace(plan=make(of.plan))  # type: ignore[operator]

        def matters(one: Played, exercise: str = change.exercise) -> bool:
            mine = one.bound.plan.name == bound.plan.name
            return mine and (not exercise or exercise in one.reach.exercises)

        yield Doubt(change.place, f"change {change.what}", change.exercise, matters, changed)


def _of_rule(change: RuleChange) -> Doubt:
    def matters(one: Played) -> bool:
        return not change.readers.isdisjoint(one.ran)

    about = change.name.strip("_").partition("_")[0].lower()  # `SHORT_NIGHT_H`: short
    return Doubt(change.place, change.what, about, matters, lambda bound: bound, change)


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
            reach, ran = Reach(), set[str]()
            with watching(reach), functions_run(ran):
                passes = replay.play(scenario, file.name, bound).passed
            if passes:
                words = words_of(scenario)
                found.append(Played(file.name, scenario, bound, reach, words, frozenset(ran)))
    return found


def words_of(scenario: Scenario) -> str:
    """What a scenario calls itself, and all that it types and checks."""
    entries = [e for day in scenario.days for e in (*day.talk, *day.all_day)]
    return "\n".join((scenario.name, *(" ".join(map(str, entry[:-1])) for entry in entries)))


def noticed_by(doubt: Doubt, played: list[Played]) -> str:
    """The first scenario that fails under the change; empty when all pass."""
    inside: AbstractContextManager[None] = nullcontext()
    if doubt.number is not None:
        inside = stand_ins.number(doubt.number.name, doubt.number.old, doubt.number.new)
    mattering = [one for one in played if doubt.matters(one)]
    mattering.sort(key=lambda one: doubt.about not in one.words)
    with inside:
        for one in mattering:
            if not _passes(one, doubt.changed(one.bound)):
                return one.file
    return ""


def _passes(one: Played, bound: Bound) -> bool:
    try:
        return replay.play(one.scenario, one.file, bound, hasty=True).passed
    except Exception:  # noqa: BLE001 - a change may break anything; that is noticed
        return False


class Looked(NamedTuple):
    """What became of a look: the changes there are, how many were tried, those not noticed."""

    every: list[Doubt]
    tried: int
    left: list[Doubt]


def unnoticed(
    played: list[Played], say: Callable[[str], None], seconds: float = 0.0, workers: int = 1
) -> Looked:
    """Every change tried in turn; `say` hears of the progress.

    Ctrl-C, or `seconds` gone by (0: no limit), end it with what is known so far.
    """
    every, until = doubts(played), time.monotonic() + seconds if seconds else None
    tried, left = 0, []
    try:
        for number, file in done(_Asking(every, played).one, len(every), workers, until):
            tried += 1
            left += [] if file else [number]
            say(f"{tried} of {len(every)} changes tried, {len(left)} not noticed")
    except (KeyboardInterrupt, TimeIsOver):
        pass
    return Looked(every, tried, [every[number] for number in sorted(left)])


class _Asking:
    """Asks the scenarios of a change, short ones first; who noticed the last one is asked first of
    the next.
    """

    def __init__(self, every: list[Doubt], played: list[Played]) -> None:
        self.every = every
        self.order = sorted(played, key=lambda one: len(one.scenario.days))

    def one(self, number: int) -> str:
        """Who noticed a change, by its number."""
        file = noticed_by(self.every[number], self.order)
        if file:
            self.order.sort(key=lambda one: one.file != file)
        return file


def look(
    paths: list[Path], say: Callable[[str], None], seconds: float = 0.0
) -> tuple[list[Result], list[str], int]:
    """Results for a build server (each change not noticed failed), words for a tester, a code.

    The exit code is 0, or 130 for a look that was cut short.
    """
    files = [file for path in paths for file in replay.files_under(path)]
    reasons = reasons_for(files)
    looked = unnoticed(readable(paths), say, seconds, cores())
    open_ = [one for one in looked.left if one.what not in reasons]
    lines = [f"{one.place.file}:{one.place.line}: {one.what}: not noticed" for one in open_]
    whole = looked.tried == len(looked.every)
    stand = [one.what for one in looked.left]
    lines += told(reasons, stand if whole else [*stand, *reasons], "change ")
    argued = len(looked.left) - len(open_)
    counts = f"{len(open_)} not noticed, {argued} more argued."
    if whole:
        lines.append(f"{looked.tried} changes tried, {counts}")
    else:
        lines.append(f"Cut short: {looked.tried} of {len(looked.every)} changes tried, {counts}")
    results = [_failed(one) for one in open_] or [Result("doubt", "every change", 0.0)]
    return results, lines, 0 if whole else INTERRUPTED


def _failed(one: Doubt) -> Result:
    missed = Mismatch("any day", "any", one.place, "some scenario fails", "all pass")
    return Result(one.place.file, f"line {one.place.line}: {one.what}", 0.0, (missed,))
