"""What differs between two plans of one athlete.

Law: a cap, a ceiling, a lock, a limit, a spacing or a side is compared as a value, in its unit;
no line of a plan is left out.
"""

from __future__ import annotations

from coach.model.program import (
    Axis,
    Bound,
    Exercise,
    GamePitches,
    Place,
    Plan,
    Prescription,
    Program,
    ThrowingLine,
)
from coach.model.throws import StepTable, ThrowStep, part_words
from coach.pages.changes import Change, Weight, members, number, words


def plan_changes(old: Bound, new: Bound) -> list[Change]:
    """Every difference between two plans, in the order of a plan."""
    one, two = old.plan, new.plan
    return [
        *_whose(one, two),
        *_days(one, two),
        *_people(one, two),
        *_clearance(one, two),
        *_pain_and_limits(one, two),
        *_locks(one, two),
        *_throwing(one.throwing_line, two.throwing_line),
        *_own_steps(one, two),
        *_game_pitches(one.game_pitches, two.game_pitches, two.place),
        *_home(one, two),
        *_doses(old, new),
    ]


def _whose(one: Plan, two: Plan) -> list[Change]:
    first = Weight.FIRST
    found = words("The athlete", one.initials, two.initials, two.place, first)
    found += words("Born", one.born, two.born, two.place, first)
    found += words("Side", one.side, two.side, two.side_place, first)
    found += words("Surgery", one.surgery, two.surgery, two.place, first)
    found += words("Program", one.program, two.program, two.place, first)
    if one != two and one.name == two.name:
        what = f"Both are called {two.name}. Give the new plan a new number."
        found.append(Change(first, what, two.place))
    elif two.version < one.version:
        what = f"The new plan has the lower number: {two.name}, was {one.name}."
        found.append(Change(first, what, two.place))
    found += words("Plan", one.name, two.name, two.place)
    return found + words("Sport", one.sport, two.sport, two.place)


def _days(one: Plan, two: Plan) -> list[Change]:
    place = two.runs_place
    found = words("Runs from", one.starts, two.starts, place)
    later = Weight.MORE if two.review_by > one.review_by else Weight.LESS
    found += words("Review by", one.review_by, two.review_by, place, later)
    opened = two.phase_opened
    if one.phase != two.phase:
        what = f"Phase: {two.phase}, was {one.phase}; opened {opened.day} by {opened.who}."
        return [*found, Change(Weight.MORE, what, opened.place)]
    return found + words("Phase opened", one.phase_opened.day, opened.day, opened.place)


def _people(one: Plan, two: Plan) -> list[Change]:
    place = two.calls.place
    found: list[Change] = []
    pairs = (
        ("Emergency call", one.calls.emergency, two.calls.emergency),
        ("Crisis line", one.calls.crisis, two.calls.crisis),
        ("Urgent call", one.calls.urgent, two.calls.urgent),
        ("Clinician to call", one.calls.clinician, two.calls.clinician),
        ("Guardian", one.guardian, two.guardian),
    )
    for what, before, after in pairs:
        was = f"{before.number}, {before.who}" if before else ""
        now = f"{after.number}, {after.who}" if after else ""
        found += words(what, was, now, place, Weight.FIRST)
    less = "every session" not in two.guardian_present
    weight = Weight.MORE if less else Weight.LESS
    was, now = one.guardian_present, two.guardian_present
    found += words("Guardian present at", was, now, two.place, weight)
    found += words("Language", one.language, two.language, two.place)
    return found + members(
        "Works with", one.works_with, two.works_with, two.place, added=Weight.WORDS,
        gone=Weight.WORDS, order=Weight.WORDS,
    )  # fmt: skip


def _clearance(one: Plan, two: Plan) -> list[Change]:
    place = two.clearance_place
    found = members("A stop is lifted", one.clearance, two.clearance, place, order=Weight.WORDS)
    if one.words != two.words:
        found.append(Change(Weight.MORE, "The clearance words are other ones.", place))
    key_place = two.signature_place or place
    return found + words(
        "Signed with the key", one.signature, two.signature, key_place, Weight.FIRST
    )


def _pain_and_limits(one: Plan, two: Plan) -> list[Change]:
    a, b, place = one.pain, two.pain, two.pain.place
    found: list[Change] = []
    for what, was, now in (
        ("Pain to start", a.to_start, b.to_start),
        ("Pain in an exercise", a.in_exercise, b.in_exercise),
        ("Pain for the gentle list", a.gentle, b.gentle),
        ("Pain in throwing", a.in_throwing, b.in_throwing),
        ("Usual morning pain", a.usual, b.usual),
    ):
        found += number(what, was, now, place, unit="of 10")
    c, d, place = one.limits, two.limits, two.limits.place
    found += number("Exercises a session at most", c.exercises, d.exercises, place)
    found += number("Minutes a session at most", c.minutes, d.minutes, place, unit="min")
    found += number("Sessions a week at most", c.sessions_a_week, d.sessions_a_week, place)
    was_rules, now_rules = dict(one.changed), dict(two.changed)
    for rule in sorted({*was_rules, *now_rules}):
        if was_rules.get(rule) != now_rules.get(rule):
            what = f"Changed rule {rule}: {_said(now_rules.get(rule))}, "
            what += f"was {_said(was_rules.get(rule))}."
            found.append(Change(Weight.MORE, what, two.place))
    return found


def _said(value: float | None) -> str:
    return "as the coach has it" if value is None else f"{value:g}"


def _locks(one: Plan, two: Plan) -> list[Change]:
    was = {lock.what: lock for lock in one.opened}
    now = {lock.what: lock for lock in two.opened}
    found: list[Change] = []
    for name, lock in now.items():
        if name not in was:
            what = f"Lock opened: {name}, from {lock.day}, by {lock.who}."
            found.append(Change(Weight.MORE, what, lock.place))
        elif (lock.day, lock.who) != (was[name].day, was[name].who):
            before = f"{was[name].day} by {was[name].who}"
            after = f"{lock.day} by {lock.who}"
            found += words(f"Lock {name} opened", before, after, lock.place, Weight.MORE)
    gone = [name for name in was if name not in now]
    return found + [Change(Weight.LESS, f"Lock closed: {name}.", two.place) for name in gone]


def _throwing(one: ThrowingLine | None, two: ThrowingLine | None) -> list[Change]:
    if two is None:
        return [Change(Weight.LESS, "Throwing is not opened any more.")] if one else []
    if one is None:
        what = f"Throwing opened {two.cleared} by {two.who}: {two.table}, "
        what += f"from step {two.from_step}, at most step {two.most_step}."
        return [Change(Weight.MORE, what, two.place)]
    place = two.place
    found = words("Throwing table", one.table, two.table, place, Weight.MORE)
    found += words("Throwing opened", one.cleared, two.cleared, place)
    found += words("Throwing opened by", one.who, two.who, place)
    found += number("Throwing from step", one.from_step, two.from_step, place)
    found += number("Throwing at most step", one.most_step, two.most_step, place)
    apart = (one.apart_days, two.apart_days)
    found += number("Throwing apart", *apart, place, unit="days", higher_is_more=False)
    steps = (one.sessions_a_step, two.sessions_a_step)
    found += number("Sessions a throwing step", *steps, place, higher_is_more=False)
    return found + words("Throwing class", one.class_name, two.class_name, place, Weight.MORE)


def _own_steps(one: Plan, two: Plan) -> list[Change]:
    """The plan's own table of throwing steps, step by step."""
    was, now = one.own_steps, two.own_steps
    if was is None or now is None:
        if was == now:
            return []
        what = (
            "The plan brings its own throwing steps." if now else "Its own throwing steps are gone."
        )
        return [Change(Weight.MORE if now else Weight.LESS, what, two.place)]
    place = two.place
    found = words("Own throwing steps counted in", was.unit, now.unit, place, Weight.MORE)
    found += number("Own throwing steps", len(was.steps), len(now.steps), place)
    for count, (old, new) in enumerate(zip(was.steps, now.steps, strict=False), 1):
        before, after = (_step_words(step, table) for step, table in ((old, was), (new, now)))
        found += words(f"Own throwing step {count}", before, after, place, Weight.MORE)
    if not found and was != now:
        found.append(Change(Weight.WORDS, "The table of its own throwing steps has moved.", place))
    return found


def _game_pitches(one: GamePitches | None, two: GamePitches | None, place: Place) -> list[Change]:
    """The line on pitches in games; one that is gone, or an edition less, asks for less rest."""
    if one is None or two is None:
        if one is two:
            return []
        what = "Game pitches are asked for." if two else "Game pitches are not asked for any more."
        return [Change(Weight.LESS if two else Weight.MORE, what, place)]
    kinds = {"added": Weight.LESS, "gone": Weight.MORE, "order": Weight.WORDS}
    found = members("Game pitches, position", one.positions, two.positions, two.place, **kinds)
    return found + members("Game pitches, edition", one.editions, two.editions, two.place, **kinds)


def _step_words(step: ThrowStep, table: StepTable) -> str:
    return ", ".join(part_words(part, table) for part in step.parts())


def _home(one: Plan, two: Plan) -> list[Change]:
    added, order = Weight.WORDS, Weight.WORDS
    return members("At home", one.at_home, two.at_home, two.place, added=added, order=order)


# ---------------------------------------------------------------- doses


def _doses(old: Bound, new: Bound) -> list[Change]:
    was = {dose.exercise: dose for dose in old.plan.doses}
    now = {dose.exercise: dose for dose in new.plan.doses}
    found: list[Change] = []
    for name, dose in now.items():
        if name not in was:
            found.append(Change(Weight.MORE, f"Dose of {name} is new.", dose.place))
            continue
        exercise = _exercise(new.program, name)
        found += _dose(was[name], dose, exercise)
    gone = [name for name in was if name not in now]
    return found + [
        Change(Weight.LESS, f"Dose of {name} is gone.", new.plan.place) for name in gone
    ]


def _exercise(program: Program, name: str) -> Exercise:
    return next(one for one in program.exercises if one.name == name)


def _dose(one: Prescription, two: Prescription, exercise: Exercise) -> list[Change]:
    name, place = two.exercise, two.place
    found: list[Change] = []
    for axis, a, b, unit in (
        ("sets", one.sets, two.sets, ""),
        ("reps", one.reps, two.reps, ""),
        ("hold", one.hold, two.hold, "s"),
    ):
        found += _axis(f"{name}, {axis}", a, b, unit)
    found += _range(f"{name}, range", one.range, two.range, exercise)
    found += _load(one, two)
    found += members(f"{name}, versions", one.versions, two.versions, place, order=Weight.MORE)
    rests = (one.rest_s, two.rest_s)
    found += number(f"{name}, rest", *rests, place, unit="s", higher_is_more=False)
    apart = (one.apart_days, two.apart_days)
    found += number(f"{name}, apart", *apart, place, unit="days", higher_is_more=False)
    found += words(f"{name}, tempo", one.tempo, two.tempo, place, Weight.MORE)
    found += members(f"{name}, goes up", one.goes_up, two.goes_up, place)
    was = tuple(f"without {what}: {instead}" for what, instead in one.without)
    now = tuple(f"without {what}: {instead}" for what, instead in two.without)
    return found + members(f"{name}, stand-ins", was, now, place, order=Weight.WORDS)


def _axis(what: str, one: Axis | None, two: Axis | None, unit: str) -> list[Change]:
    if one is None or two is None:
        if one is two:
            return []
        return [Change(Weight.MORE, f"{what}: the line is {'new' if two else 'gone'}.")]
    place = two.place
    found = number(f"{what}, opening low", one.opening, two.opening, place, unit=unit)
    found += number(f"{what}, opening", one.opening_high, two.opening_high, place, unit=unit)
    found += number(f"{what}, cap", one.cap, two.cap, place, unit=unit)
    return found + _pace(what, one, two, unit)


def _pace(what: str, one: Axis, two: Axis, unit: str) -> list[Change]:
    found = number(f"{what}, step up", one.step, two.step, two.place, unit=unit)
    if one.step and two.step:
        days = (one.after_days, two.after_days)
        lead = f"{what}, step up after"
        found += number(lead, *days, two.place, unit="days", higher_is_more=False)
    return found


def _range(what: str, one: Axis | None, two: Axis | None, exercise: Exercise) -> list[Change]:
    if one is None or two is None:
        return _axis(what, one, two, "")
    found: list[Change] = []
    for part, was, now in (("opening", one.opening, two.opening), ("cap", one.cap, two.cap)):
        if was != now:
            weight = Weight.MORE if now > was else Weight.LESS
            said = f"{what}, {part}: {_step(exercise, now)}, was {_step(exercise, was)}."
            found.append(Change(weight, said, two.place))
    return found + _pace(what, one, two, "")


def _step(exercise: Exercise, index: int) -> str:
    return exercise.ranges[index].name if index < len(exercise.ranges) else f"step {index + 1}"


def _load(one: Prescription, two: Prescription) -> list[Change]:
    name, place = two.exercise, two.load_place or two.place
    found: list[Change] = []
    for part, was, now in (
        ("opening", one.load, two.load),
        ("cap", one.load_cap, two.load_cap),
    ):
        if was != now:
            lower = was.kind == now.kind and now.rank() < was.rank()
            said = f"{name}, load {part}: {now.words()}, was {was.words()}."
            found.append(Change(Weight.LESS if lower else Weight.MORE, said, place))
    unit = two.load.unit
    found += number(f"{name}, load step up", one.load_step, two.load_step, place, unit=unit)
    if one.load_step and two.load_step:
        days = (one.load_after_days, two.load_after_days)
        what = f"{name}, load step up after"
        found += number(what, *days, place, unit="days", higher_is_more=False)
    if one.dapre != two.dapre:
        weight = Weight.MORE if two.dapre else Weight.LESS
        sets = [f"set {number}" if number else "none" for number in (two.dapre, one.dapre)]
        said = f"{name}, set that drives the load: {sets[0]}, was {sets[1]}."
        found.append(Change(weight, said, place))
    return found
