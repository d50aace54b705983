"""Small changes of a program, one at a time: a line left out, a branch open or shut, a number moved.

Law: each change keeps the program readable; nothing is changed that the session would refuse.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from coach.drivers.reach import step_words, test_words

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from coach.model.program import Exercise, Place, Program, Script, Step, Test


class ProgramChange(NamedTuple):
    """A change: where, in words, the line a scenario must walk past to see it, and how to make it."""

    place: Place
    what: str
    step: Place | None
    make: Callable[[Program], Program]


def program_changes(program: Program) -> Iterator[ProgramChange]:
    """Every change of the scripts, the exercises and the lists of a program."""
    for number, script in enumerate(program.scripts):
        yield from _of_script(number, script)
    for number, exercise in enumerate(program.exercises):
        yield from _of_exercise(number, exercise)
    for name in ("warm_up", "gentle", "twice_a_day", "recovery"):
        for one in getattr(program, name):
            yield ProgramChange(
                program.place,
                f"{program.place.file}: {one} left out of {name.replace('_', ' ')}",
                None,
                lambda p, name=name, one=one: p._replace(  # type: ignore[misc]
                    **{name: tuple(other for other in getattr(p, name) if other != one)}
                ),
            )


# ---------------------------------------------------------------- scripts


def _of_script(number: int, script: Script) -> Iterator[ProgramChange]:
    for at, step in enumerate(script.steps):
        if step.kind != "ask" or step.when:  # the coach's own questions are asked in any case
            yield _steps(number, step, f"{step_words(step)}: left out", _without(at))
        if step.every_days:
            for days in (step.every_days - 1, step.every_days + 1):
                what = f"{step_words(step)}: every {days} days"
                yield _steps(number, step, what, _with_days(at, days))
    for place, test in enumerate(script.tests):
        step = next(step for step in script.steps if place in step.when)
        yield _steps(number, step, f"when {test_words(test)}: always", _always(place))
        for moved in _moved(test):
            what = f"when {test_words(test)}: now {test_words(moved)}"
            yield _change(number, step, what, _with_test(place, moved))


def _change(number: int, step: Step, what: str, make: Callable[[Script], Script]) -> ProgramChange:
    def made(program: Program) -> Program:
        scripts = list(program.scripts)
        scripts[number] = make(scripts[number])
        return program._replace(scripts=tuple(scripts))

    return ProgramChange(step.place, f"{step.place.file}: {what}", step.place, made)


def _steps(
    number: int,
    step: Step,
    what: str,
    make: Callable[[tuple[Step, ...]], tuple[Step, ...]],
) -> ProgramChange:
    return _change(number, step, what, lambda s: s._replace(steps=make(s.steps)))


def _without(at: int) -> Callable[[tuple[Step, ...]], tuple[Step, ...]]:
    return lambda steps: (*steps[:at], *steps[at + 1 :])


def _with_days(at: int, days: int) -> Callable[[tuple[Step, ...]], tuple[Step, ...]]:
    return lambda steps: (*steps[:at], steps[at]._replace(every_days=days), *steps[at + 1 :])


def _always(test: int) -> Callable[[tuple[Step, ...]], tuple[Step, ...]]:
    return lambda steps: tuple(
        step._replace(when=tuple(one for one in step.when if one != test)) for step in steps
    )


def _with_test(at: int, test: Test) -> Callable[[Script], Script]:
    return lambda script: script._replace(tests=(*script.tests[:at], test, *script.tests[at + 1 :]))


def _moved(test: Test) -> Iterator[Test]:
    """The test with one of its numbers one lower or higher."""
    for at, value in enumerate(test.values):
        if isinstance(value, str):
            continue
        for by in (-1, 1):
            yield test._replace(values=(*test.values[:at], value + by, *test.values[at + 1 :]))


# ---------------------------------------------------------------- exercises


def _of_exercise(number: int, exercise: Exercise) -> Iterator[ProgramChange]:
    for at, fault in enumerate(exercise.faults):
        if fault.if_it_stays:
            what = f"{exercise.place.file}: {fault.name}, if it stays {fault.if_it_stays}: left out"
            yield ProgramChange(exercise.place, what, None, _if_it_stays(number, at))


def _if_it_stays(number: int, at: int) -> Callable[[Program], Program]:
    def made(program: Program) -> Program:
        exercises = list(program.exercises)
        faults = list(exercises[number].faults)
        faults[at] = faults[at]._replace(if_it_stays="")
        exercises[number] = exercises[number]._replace(faults=tuple(faults))
        return program._replace(exercises=tuple(exercises))

    return made
