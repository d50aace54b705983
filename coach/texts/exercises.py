"""An exercise file to an `Exercise`: what it is, how it is done, what can go wrong, its ladders.

Law: it declares which axes a dose has; it never holds a dose.
"""

from __future__ import annotations

from coach.model.program import Exercise, Fault, Place, RangeStep, Version
from coach.texts import facts, values
from coach.texts.fields import Fields, only_map
from coach.texts.margin import Margin
from coach.texts.words import Voice
from coach.texts.yaml_lines import Listed, Mapped, Text

KEYS = (
    "exercise",
    "family",
    "works",
    "counted in",
    "load",
    "equipment",
    "set-up",
    "cues",
    "watch for",
    "range",
    "versions",
    "stand-in for band",
)
MOST_LEVELS = 9  # set here


def read_exercise(tree: Mapped, margin: Margin, voice: Voice) -> Exercise:
    """The exercise; where a piece cannot be read a finding is noted and a blank one stands in."""
    fields = Fields(tree, margin, "The exercise")
    called = fields.text("exercise", "exercise: NAME")
    name = values.name(called, margin, "an exercise") if called else None
    exercise = Exercise(
        name=name or "",
        family=_family(fields),
        works=fields.one_of("works", facts.WORKS, "works: one side") or "one side",
        counted_in=fields.one_of("counted in", facts.COUNTED_IN, "counted in: reps") or "reps",
        load=fields.one_of("load", facts.LOADS, "load: none") or "none",
        equipment=_equipment(fields),
        set_up=_some(fields, "set-up", voice),
        cues=_some(fields, "cues", voice),
        faults=_faults(fields, voice),
        ranges=_ranges(fields, voice),
        versions=_versions(fields, voice),
        stand_in=_stand_ins(fields, voice),
        place=called.place if called else tree.place,
    )
    fields.close(KEYS)
    _check_ladders(exercise, tree, margin)
    return exercise


def _family(fields: Fields) -> str:
    known = facts.FAMILIES + facts.LOCKED_FAMILIES
    return fields.one_of("family", known, "family: cuff") or ""


def _equipment(fields: Fields) -> tuple[str, ...]:
    named = tuple(piece.value for piece in fields.names("equipment"))
    return () if named == ("none",) else named


def _some(fields: Fields, key: str, voice: Voice) -> tuple[str, ...]:
    return fields.sentences(key, voice, f"{key}:\n  - One sentence.")


def _faults(fields: Fields, voice: Voice) -> tuple[Fault, ...]:
    found: list[Fault] = []
    for item in fields.listed("watch for"):
        tree = only_map(item, fields.margin, "A fault to watch for")
        if tree is not None:
            found.append(_fault(tree, fields.margin, voice, [fault.name for fault in found]))
    return tuple(found)


def _fault(tree: Mapped, margin: Margin, voice: Voice, earlier: list[str]) -> Fault:
    fields = Fields(tree, margin, "The fault")
    called = fields.text("name", "- name: shrug")
    name = values.name(called, margin, "a fault") if called else None
    if called and name in ("fine", "something else"):
        margin.note("name.taken", called.place, f'"{name}" is an answer of the coach already.')
    if called and name in earlier:
        margin.note("name.twice", called.place, f'The fault "{name}" stands twice.')
    fault = Fault(
        name or "",
        fields.sentence("felt as", voice, "felt as: One sentence the athlete would say."),
        fields.sentence("put right", voice, "put right: One sentence that mends it."),
        fields.one_of("if it stays", facts.IF_IT_STAYS) or "",
    )
    fields.close(("name", "felt as", "put right", "if it stays"))
    return fault


def _ranges(fields: Fields, voice: Voice) -> tuple[RangeStep, ...]:
    found: list[RangeStep] = []
    for item in fields.listed("range"):
        tree = only_map(item, fields.margin, "A step of the range")
        if tree is None:
            continue
        step = Fields(tree, fields.margin, "The step of the range")
        pair = tree.pairs[0]
        name = values.name(pair.key, fields.margin, "a step of the range")
        sentence = step.sentence(pair.key.value, voice)
        step.close(())
        _note_twice(name, [earlier.name for earlier in found], pair.key, fields.margin)
        found.append(RangeStep(name or "", sentence))
    return tuple(found)


def _note_twice(name: str | None, earlier: list[str], text: Text, margin: Margin) -> None:
    if name and name in earlier:
        margin.note("name.twice", text.place, f'"{name}" stands twice.')


def _versions(fields: Fields, voice: Voice) -> tuple[Version, ...]:
    found: list[Version] = []
    for item in fields.listed("versions"):
        tree = only_map(item, fields.margin, "A version")
        if tree is not None:
            found.append(_version(tree, fields.margin, voice, found))
    return tuple(found)


def _version(tree: Mapped, margin: Margin, voice: Voice, earlier: list[Version]) -> Version:
    fields = Fields(tree, margin, "The version")
    called = fields.text("version", "- version: NAME")
    name = values.name(called, margin, "a version") if called else None
    if called:
        _note_twice(name, [version.name for version in earlier], called, margin)
    level = _level(fields)
    if earlier and level < earlier[-1].level:
        what = "The versions do not stand easiest first."
        margin.note("version.order", tree.place, what)
    version = Version(
        name or "",
        level,
        fields.sentence("fits", voice) if fields.pair("fits") else "",
        fields.sentences("set-up", voice),
        fields.sentences("cues", voice),
    )
    fields.close(("version", "level", "fits", "set-up", "cues"))
    return version


def _level(fields: Fields) -> int:
    text = fields.text("level", "level: 1")
    if text is None:
        return 1
    bounds = values.Bounds("", 1, MOST_LEVELS)
    return int(values.number(text, fields.margin, bounds, "The level") or 1)


def _stand_ins(fields: Fields, voice: Voice) -> tuple[tuple[str, str], ...]:
    found: list[tuple[str, str]] = []
    for pair in fields.rest("stand-in for "):
        if " in " in pair.key.value:
            continue
        sentence = fields.sentence(pair.key.value, voice)
        found.append((pair.key.value.removeprefix("stand-in for "), sentence))
    return tuple(found)


def _place_of(tree: Mapped, key: str, otherwise: Place) -> Place:
    """Where what stands after `key` begins."""
    pair = tree.by_key.get(key)
    return pair.value.place if pair else otherwise


def _places_in(tree: Mapped, key: str, inner: str) -> list[Place]:
    """Where `inner` stands in each item of the list after `key`."""
    pair = tree.by_key.get(key)
    items = pair.value.items if pair and isinstance(pair.value, Listed) else ()
    return [_place_of(item, inner, item.place) for item in items if isinstance(item, Mapped)]


def _check_ladders(exercise: Exercise, tree: Mapped, margin: Margin) -> None:
    place = exercise.place
    if len(exercise.ranges) == 1:
        where = _place_of(tree, "range", place)
        margin.note("range.one_step", where, "The range has one step, so it cannot be shorter.")
    faults = _places_in(tree, "watch for", "if it stays")
    for fault, where in zip(exercise.faults, faults, strict=True):
        if not can_lower(exercise, fault.if_it_stays):
            what = f'"if it stays: {fault.if_it_stays}" cannot be done with this exercise.'
            margin.note("fault.no_room", where, what)
    levels = [version.level for version in exercise.versions]
    versions = _places_in(tree, "versions", "version")
    for version, where in zip(exercise.versions, versions, strict=True):
        if levels.count(version.level) > 1 and not version.fits:
            what = f'The version "{version.name}" shares its level and has no line "fits".'
            margin.note("version.fits", where, what, "fits: One sentence on whom it fits.")
    for equipment, _ in exercise.stand_in:
        if equipment not in exercise.equipment:
            what = f'A stand-in is given for "{equipment}", which the exercise does not use.'
            margin.note("equipment.stand_in", place, what)
    if exercise.load != "none" and exercise.load not in exercise.equipment:
        what = f'The load is a {exercise.load}, but "equipment" does not name it.'
        write = ", ".join(("equipment: " + exercise.load, *exercise.equipment))
        margin.note("equipment.load", _place_of(tree, "equipment", place), what, write)


def can_lower(exercise: Exercise, effect: str) -> bool:
    """Whether an effect has anything to act on in this exercise."""
    if effect == "shorter range":
        return len(exercise.ranges) > 1
    if effect == "easier version":
        return len({version.level for version in exercise.versions}) > 1
    if effect == "lighter":
        return exercise.load != "none"
    return True
