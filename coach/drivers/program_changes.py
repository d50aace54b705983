"""Small changes of a program, one at a time: a line left out, a branch open or shut, a number moved.

Law: each change keeps the program readable; nothing is changed that the session would refuse. A
change says of a scenario, by what that one reached, whether it can tell the difference at all.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, NamedTuple

from coach.drivers.reach import step_words, test_words
from coach.rules.limits import LOCKED_FAMILIES

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from coach.drivers.reach import Reach
    from coach.model.program import Exercise, Phase, Place, Program, Script, Step, Test


class ProgramChange(NamedTuple):
    """A change: where, in words, whether a scenario of this reach can see it, and how to make it.

    `about` is a name that a scenario looking at this would write. `needs` are the exercise and the
    phase ('' for none) without which no plan can tell.
    """

    place: Place
    what: str
    about: str
    matters: Callable[[Reach], bool]
    make: Callable[[Program], Program]
    needs: tuple[str, str] = ("", "")


def program_changes(program: Program) -> Iterator[ProgramChange]:
    """Every change of the scripts, the exercises and the lists of a program."""
    for number, script in enumerate(program.scripts):
        yield from _of_script(number, script)
    for number, exercise in enumerate(program.exercises):
        yield from _of_exercise(number, exercise)
    for name in ("warm_up", "gentle", "twice_a_day", "recovery"):
        for one in getattr(program, name):
            what = f"{program.place.file}: {one} left out of {name.replace('_', ' ')}"
            made = _list_without(name, one)
            yield ProgramChange(program.place, what, one, _always_matters, made, (one, ""))
    before = ""
    for number, phase in enumerate(program.phases):
        yield from _of_phase(number, phase, before)
        before = phase.name


def _always_matters(_reach: Reach) -> bool:
    return True


def _list_without(name: str, one: str) -> Callable[[Program], Program]:
    def made(program: Program) -> Program:
        rest: Any = tuple(other for other in getattr(program, name) if other != one)
        return program._replace(**{name: rest})

    return made


def _of_phase(number: int, phase: Phase, before: str) -> Iterator[ProgramChange]:
    """An exercise left out; what opens the phase, which the one `before` it looks at alone."""
    for one in phase.exercises:
        rest = tuple(other for other in phase.exercises if other != one)
        what = f"{phase.place.file}: {one} left out of the phase {phase.name}"
        made = _phase(number, phase._replace(exercises=rest))
        needs = (one, phase.name)
        yield ProgramChange(phase.place, what, one, _in_phase(phase.name), made, needs)
    for test in phase.opens_when:
        others = tuple(other for other in phase.opens_when if other != test)
        for words, tests in (
            ("left out", others),
            *(
                (
                    f"now {test_words(moved)}",
                    tuple(moved if t == test else t for t in phase.opens_when),
                )
                for moved in _moved(test)
            ),
        ):
            what = f"{phase.place.file}: {phase.name} opens when {test_words(test)}: {words}"
            made = _phase(number, phase._replace(opens_when=tests))
            yield ProgramChange(phase.place, what, phase.name, _in_phase(before), made)


def _in_phase(name: str) -> Callable[[Reach], bool]:
    return lambda reach: name in reach.values.get("phase", ())


def _phase(number: int, phase: Phase) -> Callable[[Program], Program]:
    def made(program: Program) -> Program:
        phases = list(program.phases)
        phases[number] = phase
        return program._replace(phases=tuple(phases))

    return made


# ---------------------------------------------------------------- scripts


def _of_script(number: int, script: Script) -> Iterator[ProgramChange]:
    for at, step in enumerate(script.steps):
        if step.kind != "ask" or step.when:  # the coach's own questions are asked in any case
            what = f"{step_words(step)}: left out"
            yield _change(number, step, what, _done(step), _without(at))
        if step.every_days:
            for days in (step.every_days - 1, step.every_days + 1):
                what = f"{step_words(step)}: every {days} days"
                yield _change(number, step, what, _walked(step), _with_days(at, days))
    for place, test in enumerate(script.tests):
        step = next(step for step in script.steps if place in step.when)
        words = f"when {test_words(test)}"
        yield _change(number, step, f"{words}: always", _told_otherwise(step, test), _always(place))
        for moved in _moved(test):
            what = f"{words}: now {test_words(moved)}"
            yield _change(number, step, what, _told_apart(test, moved), _with_test(place, moved))


def _change(
    number: int,
    step: Step,
    what: str,
    matters: Callable[[Reach], bool],
    make: Callable[[Script], Script],
) -> ProgramChange:
    def made(program: Program) -> Program:
        scripts = list(program.scripts)
        scripts[number] = make(scripts[number])
        return program._replace(scripts=tuple(scripts))

    about = step.fact or step.text or "plan.script"
    return ProgramChange(step.place, f"{step.place.file}: {what}", about, matters, made)


def _done(step: Step) -> Callable[[Reach], bool]:
    return lambda reach: any(step.place == place for _name, place, _fact in reach.steps)


def _walked(step: Step) -> Callable[[Reach], bool]:
    return lambda reach: any(step.place == place for _name, place in reach.walked)


def _told_otherwise(step: Step, test: Test) -> Callable[[Reach], bool]:
    """Walked past with the condition not holding, or with nothing known of its fact."""
    walked = _walked(step)

    def matters(reach: Reach) -> bool:
        values = reach.values.get(test.fact, ())
        return walked(reach) and (not values or not all(test.holds(value) for value in values))

    return matters


def _told_apart(test: Test, moved: Test) -> Callable[[Reach], bool]:
    """Told a value on which the condition and the moved one part."""
    return lambda reach: any(
        test.holds(value) != moved.holds(value) for value in reach.values.get(test.fact, ())
    )


def _without(at: int) -> Callable[[Script], Script]:
    return lambda s: s._replace(steps=(*s.steps[:at], *s.steps[at + 1 :]))


def _with_days(at: int, days: int) -> Callable[[Script], Script]:
    return lambda s: s._replace(
        steps=(*s.steps[:at], s.steps[at]._replace(every_days=days), *s.steps[at + 1 :])
    )


def _always(test: int) -> Callable[[Script], Script]:
    return lambda s: s._replace(
        steps=tuple(
            step._replace(when=tuple(one for one in step.when if one != test)) for step in s.steps
        )
    )


def _with_test(at: int, test: Test) -> Callable[[Script], Script]:
    return lambda s: s._replace(tests=(*s.tests[:at], test, *s.tests[at + 1 :]))


def _moved(test: Test) -> Iterator[Test]:
    """The test with one of its numbers one lower or higher."""
    for at, value in enumerate(test.values):
        if isinstance(value, str):
            continue
        for by in (-1, 1):
            yield test._replace(values=(*test.values[:at], value + by, *test.values[at + 1 :]))


# ---------------------------------------------------------------- exercises


def _of_exercise(number: int, exercise: Exercise) -> Iterator[ProgramChange]:
    """A fault, its remedy, a stand-in or a piece of gear left out; a family that is locked."""
    for at, fault in enumerate(exercise.faults):
        rest = (*exercise.faults[:at], *exercise.faults[at + 1 :])
        sees = _felt(exercise.name, fault.name)
        yield _of_one(number, exercise, f"{fault.name}: left out", sees, faults=rest)
        if fault.if_it_stays:
            words = f"{fault.name}, if it stays {fault.if_it_stays}: left out"
            mild = fault._replace(if_it_stays="")
            faults = (*exercise.faults[:at], mild, *exercise.faults[at + 1 :])
            yield _of_one(number, exercise, words, sees, faults=faults)
    for pair in exercise.stand_in:
        others = tuple(other for other in exercise.stand_in if other != pair)
        yield _of_one(number, exercise, f"stand-in for {pair[0]}: left out", stand_in=others)
    for piece in exercise.equipment:
        gear = tuple(other for other in exercise.equipment if other != piece)
        yield _of_one(number, exercise, f"equipment {piece}: left out", equipment=gear)
    family = "cuff" if exercise.family in LOCKED_FAMILIES else LOCKED_FAMILIES[0]
    yield _of_one(number, exercise, f"family {exercise.family} to {family}", family=family)
    for at, version in enumerate(exercise.versions):
        for level in (version.level - 1, version.level + 1):
            if level:
                other = version._replace(level=level)
                versions = (*exercise.versions[:at], other, *exercise.versions[at + 1 :])
                words = f"version {version.name}, level {level}"
                yield _of_one(number, exercise, words, versions=versions)


def _felt(exercise: str, fault: str) -> Callable[[Reach], bool]:
    """A fault matters where it was felt; the other answers go on as if it were not listed."""
    return lambda reach: (
        exercise in reach.exercises and fault in reach.values.get("felt in set", ())
    )


def _of_one(
    number: int,
    exercise: Exercise,
    words: str,
    sees: Callable[[Reach], bool] | None = None,
    **new: Any,  # noqa: ANN401 - any field
) -> ProgramChange:
    def made(program: Program) -> Program:
        exercises = list(program.exercises)
        exercises[number] = exercises[number]._replace(**new)
        return program._replace(exercises=tuple(exercises))

    what, name = f"{exercise.place.file}: {words}", exercise.name
    listed = sees or (lambda reach: name in reach.exercises)
    return ProgramChange(exercise.place, what, name, listed, made, (name, ""))
