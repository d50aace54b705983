"""What differs between two programs: lists, phases, walls, exercises, and the talk.

Law: a line that lowers, stops, asks or notes and is gone counts as watching less; a reworded
question is shown in both wordings, since a person must read them.
"""

from __future__ import annotations

from coach.model.program import Exercise, Program, Script, Step, Test, Wall
from coach.pages.changes import Change, Weight, members, number, words
from coach.pages.condition_words import test_words


def program_changes(old: Program, new: Program) -> list[Change]:
    """Every difference between two programs, in the order of a program."""
    return [
        *_head(old, new),
        *_walls(old, new),
        *_lists(old, new),
        *_phases(old, new),
        *_exercises(old, new),
        *_scripts(old, new),
    ]


def _head(old: Program, new: Program) -> list[Change]:
    found = words("About", old.about, new.about, new.place)
    found += words("Written by", old.written_by, new.written_by, new.place)
    if old != new and old.name == new.name:
        what = f"Both are called {new.name}. Give the new program a new number."
        found.append(Change(Weight.FIRST, what, new.place))
    elif old.name != new.name:
        found += words("Program", old.name, new.name, new.place)
    found += members("Languages", old.languages, new.languages, new.place, added=Weight.WORDS)
    before = (old.most_questions_before_first_set, new.most_questions_before_first_set)
    found += number("Questions before the first set at most", *before, new.place)
    after = (old.most_questions_after_a_set, new.most_questions_after_a_set)
    found += number("Questions after a set at most", *after, new.place)
    was = tuple(f"{group.replace('_', ' ')}: {phrase}" for group, phrase in old.heard_phrases)
    now = tuple(f"{group.replace('_', ' ')}: {phrase}" for group, phrase in new.heard_phrases)
    return found + members(
        "Heard too", was, now, new.place, added=Weight.LESS, gone=Weight.MORE, order=Weight.WORDS
    )


def _walls(old: Program, new: Program) -> list[Change]:
    was = {(wall.on, wall.what): wall for wall in old.walls}
    now = {(wall.on, wall.what): wall for wall in new.walls}
    found: list[Change] = []
    for key, wall in now.items():
        if key not in was:
            found.append(Change(Weight.LESS, f"Wall is new: {_wall(wall)}.", wall.place))
            continue
        before = was[key]
        if (before.amount, before.unit) != (wall.amount, wall.unit):
            same = before.unit == wall.unit
            looser = not same or (wall.amount > before.amount) == (wall.op == "at most")
            weight = Weight.MORE if looser else Weight.LESS
            what = f"Wall: {_wall(wall)}, was {_amount(before)}."
            found.append(Change(weight, what, wall.place))
    gone = [wall for key, wall in was.items() if key not in now]
    return found + [Change(Weight.MORE, f"Wall is gone: {_wall(w)}.", new.place) for w in gone]


def _wall(wall: Wall) -> str:
    return f"{wall.on}, {wall.what} {wall.op} {_amount(wall)}"


def _amount(wall: Wall) -> str:
    return f"{wall.amount:g} {wall.unit}".strip()


def _lists(old: Program, new: Program) -> list[Change]:
    found: list[Change] = []
    for what, was, now in (
        ("Warm-up", old.warm_up, new.warm_up),
        ("Gentle list", old.gentle, new.gentle),
        ("Twice a day", old.twice_a_day, new.twice_a_day),
        ("Recovery list", old.recovery, new.recovery),
    ):
        gone = Weight.MORE if what == "Warm-up" else Weight.LESS
        found += members(what, was, now, new.place, gone=gone, order=Weight.WORDS)
    return found


def _phases(old: Program, new: Program) -> list[Change]:
    was = {phase.name: phase for phase in old.phases}
    now = {phase.name: phase for phase in new.phases}
    found = members("Phases", tuple(was), tuple(now), new.place)
    for name, phase in now.items():
        if name not in was:
            continue
        before, place = was[name], phase.place
        found += members(f"Phase {name}", before.exercises, phase.exercises, place)
        opens = (_conditions(before.opens_when), _conditions(phase.opens_when))
        found += words(f"Phase {name} opens when", *opens, place, Weight.MORE)
        sees = (before.clinician_sees, phase.clinician_sees)
        found += words(f"Phase {name}, the clinician sees", *sees, place, Weight.MORE)
    return found


def _conditions(tests: tuple[Test, ...]) -> str:
    return " and ".join(test_words(test) for test in tests)


# ---------------------------------------------------------------- exercises


def _exercises(old: Program, new: Program) -> list[Change]:
    was = {one.name: one for one in old.exercises}
    found: list[Change] = []
    for one in new.exercises:
        if one.name in was:
            found += _exercise(was[one.name], one)
        else:
            found.append(Change(Weight.MORE, f"Exercise {one.name} is new.", one.place))
    kept = {one.name for one in new.exercises}
    gone = [name for name in was if name not in kept]
    return found + [
        Change(Weight.LESS, f"Exercise {name} is gone.", was[name].place) for name in gone
    ]


def _exercise(one: Exercise, two: Exercise) -> list[Change]:
    name, place = two.name, two.place
    found: list[Change] = []
    for what, was, now in (
        ("family (locks hang on it)", one.family, two.family),
        ("works", one.works, two.works),
        ("counted in", one.counted_in, two.counted_in),
        ("load", one.load, two.load),
    ):
        found += words(f"{name}, {what}", was, now, place, Weight.MORE)
    found += _ladders(one, two)
    found += _sentences(f"{name}, set-up", one.set_up, two.set_up, two)
    found += _sentences(f"{name}, cue", one.cues, two.cues, two)
    found += members(f"{name}, needs", one.equipment, two.equipment, place, added=Weight.WORDS)
    was_in, now_in = dict(one.stand_in), dict(two.stand_in)
    for gear in sorted({*was_in, *now_in}):
        pair = (was_in.get(gear, ""), now_in.get(gear, ""))
        found += words(f"{name}, stand-in for {gear}", *pair, place, Weight.MORE)
    return found + _faults(one, two)


def _ladders(one: Exercise, two: Exercise) -> list[Change]:
    name, place = two.name, two.place
    steps = (tuple(s.name for s in one.ranges), tuple(s.name for s in two.ranges))
    found = members(f"{name}, range", *steps, place, gone=Weight.MORE)
    was_steps = {step.name: step.sentence for step in one.ranges}
    for step in two.ranges:
        if step.name in was_steps:
            pair = (was_steps[step.name], step.sentence)
            found += words(f"{name}, range {step.name}", *pair, place, Weight.MORE)
    levels = (
        tuple(f"{v.name} (level {v.level})" for v in one.versions),
        tuple(f"{v.name} (level {v.level})" for v in two.versions),
    )
    found += members(f"{name}, versions", *levels, place, gone=Weight.MORE)
    was = {version.name: version for version in one.versions}
    for version in two.versions:
        if version.name not in was:
            continue
        before, what = was[version.name], f"{name}, version {version.name}"
        found += words(f"{what}, fits", before.fits, version.fits, place)
        found += _sentences(f"{what}, set-up", before.set_up, version.set_up, two)
        found += _sentences(f"{what}, cue", before.cues, version.cues, two)
    return found


def _sentences(
    what: str, was: tuple[str, ...], now: tuple[str, ...], exercise: Exercise
) -> list[Change]:
    return members(
        what, was, now, exercise.place, added=Weight.WORDS, gone=Weight.WORDS, order=Weight.WORDS
    )


def _faults(one: Exercise, two: Exercise) -> list[Change]:
    name, place = two.name, two.place
    was = {fault.name: fault for fault in one.faults}
    now = {fault.name: fault for fault in two.faults}
    watched = (tuple(was), tuple(now))
    found = members(
        f"{name}, watch for", *watched, place, added=Weight.LESS, gone=Weight.MORE,
        order=Weight.WORDS,
    )  # fmt: skip
    for fault_name, fault in now.items():
        if fault_name not in was:
            continue
        before, what = was[fault_name], f"{name}, {fault_name}"
        found += words(f"{what}, felt as", before.felt_as, fault.felt_as, place)
        found += words(f"{what}, put right", before.put_right, fault.put_right, place)
        stays = (before.if_it_stays, fault.if_it_stays)
        found += words(f"{what}, if it stays", *stays, place, Weight.MORE)
    return found


# ---------------------------------------------------------------- the talk


def _scripts(old: Program, new: Program) -> list[Change]:
    was = {script.moment: script for script in old.scripts}
    now = {script.moment: script for script in new.scripts}
    found: list[Change] = []
    for moment in dict.fromkeys((*was, *now)):
        found += _script(moment, was.get(moment), now.get(moment))
    return found


def _script(moment: str, one: Script | None, two: Script | None) -> list[Change]:
    was = {_key(step, one): step for step in one.steps} if one else {}
    now = {_key(step, two): step for step in two.steps} if two else {}
    found = [_line_gone(moment, key, was[key]) for key in was if key not in now]
    found += [_line_new(moment, key, now[key]) for key in now if key not in was]
    for key, step in now.items():
        if key in was:
            found += _said_otherwise(moment, was[key], step)
    if not found and list(was) != list(now) and two is not None:
        found.append(
            Change(Weight.WORDS, f"{moment}: the lines stand in another order.", two.place)
        )
    return found


def _key(step: Step, script: Script | None) -> str:
    """What a line does and when; the words of a question are compared apart."""
    tests = script.tests if script else ()
    when = _conditions(tuple(tests[index] for index in step.when))
    if step.kind in ("ask", "ask also"):
        what = f"question {step.fact}"
    elif step.kind == "stop":
        what = f"stop: {step.target}"
    elif step.kind == "effect":
        what = f"{step.effect}: {step.target}"
    else:
        what = f"{step.kind}: {step.text}"
    return f"{what}, when {when}" if when else what


def _line_gone(moment: str, key: str, step: Step) -> Change:
    weight = Weight.WORDS if step.kind == "tell" else Weight.MORE
    return Change(weight, f"{moment}: gone is {key}.", step.place)


def _line_new(moment: str, key: str, step: Step) -> Change:
    weight = Weight.WORDS if step.kind == "tell" else Weight.LESS
    return Change(weight, f"{moment}: new is {key}.", step.place)


def _said_otherwise(moment: str, one: Step, two: Step) -> list[Change]:
    what, place = f"{moment}, {two.fact}", two.place
    found = words(f"{what}, words", one.text, two.text, place) if two.fact else []
    if one.wording != two.wording:
        found += number(f"{what}, wording", one.wording, two.wording, place)
    if one.answers != two.answers:
        found.append(Change(Weight.MORE, f"{what}: the answers are other ones.", place))
    every = (one.every_days, two.every_days)
    return found + number(f"{what}, spared for", *every, place, unit="days")
