"""The clinician's own table of throwing steps in a plan: `throwing steps`, step by step.

Law: every step stands once, from step 1 in order, with a count, and a distance with its unit where
one is said. A step that is missing, out of order or not understood is a finding, never filled in.
"""

from __future__ import annotations

import re
from typing import Final

from coach.model.throws import M_PER_FT, OWN_STEPS, UNITS, Part, StepTable, ThrowStep
from coach.texts import values
from coach.texts.fields import Fields, only_map
from coach.texts.margin import Margin
from coach.texts.yaml_lines import Text

KEY: Final = "throwing steps"
WRITE: Final = f"{KEY}:\n  counted in: throws\n  step 1: NUMBER throws at NUMBER m"
_STEP: Final = re.compile(r"step (0|[1-9][0-9]*)")
_PART: Final = re.compile(r"(\S+) (\S+)(?: at ([0-9.]+)(?: ([a-z]+))?)?")
# Outer limits against slips of typing; set here, to be signed by a clinician.
COUNT: Final = values.Bounds("", 1, 200)
FAR: Final = {"m": values.Bounds("", 1, 120, whole=False), "ft": values.Bounds("", 3, 400, False)}
LEAST_APART_DAYS: Final = 2  # a whole day off between, in every published program (Reinold 2002)


def read_own_steps(fields: Fields) -> StepTable | None:
    """The plan's own table, or None where there is none or it cannot be used."""
    node = fields.node(KEY)
    tree = only_map(node, fields.margin, f'"{KEY}"')
    if tree is None:
        return None
    lines = Fields(tree, fields.margin, "The table of throwing steps")
    unit = lines.one_of("counted in", UNITS, "counted in: throws") or ""
    steps: list[ThrowStep] = []
    used: set[str] = set()
    sound, due = bool(unit), 1
    for pair in lines.rest("step "):
        text = values.plain_text(pair.value, fields.margin, pair.key.value)
        step = _step(text, unit, used, fields.margin) if text else None
        sound = _in_order(pair.key, due, unit, fields.margin) and step is not None and sound
        due = max(due, _number(pair.key)) + 1  # one gap is told once
        steps.append(step or ThrowStep(()))
    if not steps:
        what = 'The table of throwing steps has no line "step 1".'
        fields.margin.note("key.missing", tree.place, what, _line(1, unit))
    if len(used) > 1:
        what = "Some distances are in metres, others in feet."
        fields.margin.note("steps.mixed", tree.place, what)
    lines.close(("counted in", "step 1"))
    if not sound or not steps or len(used) > 1:
        return None
    return StepTable(
        OWN_STEPS,
        unit,
        tuple(steps),
        LEAST_APART_DAYS,
        0,
        f"the plan's own table, from line {tree.place.line}",
        "Your clinician wrote it.",
        in_metres="m" in used,
    )


def _number(key: Text) -> int:
    """The number of a step's key; 0 where it cannot be read."""
    match = _STEP.fullmatch(key.value)
    return int(match[1]) if match else 0


def _line(number: int, unit: str) -> str:
    """The line of a step to write, in the unit that the table counts."""
    return f"step {number}: NUMBER {unit or 'throws'} at NUMBER m"


def _in_order(key: Text, due: int, unit: str, margin: Margin) -> bool:
    number = _number(key)
    if number == due:
        return True
    check, what = "steps.order", f'"{key.value}" stands where step {due} belongs.'
    if number > due:
        between = f"Step {due} is" if number == due + 1 else f"Steps {due} to {number - 1} are"
        check, what = "steps.missing", f"{between} missing before step {number}."
    margin.note(check, key.place, what, _line(due, unit))
    return False


def _step(text: Text, unit: str, used: set[str], margin: Margin) -> ThrowStep | None:
    parts = [_part(piece, unit, used, margin) for piece in values.pieces(text)]
    found = tuple(part for part in parts if part is not None)
    return ThrowStep((found,)) if len(found) == len(parts) else None


def _part(piece: Text, unit: str, used: set[str], margin: Margin) -> Part | None:
    """`10 serves at 6 m`, or `10 serves` where the court or field says how far."""
    example = f"10 {unit or 'throws'} at 6 m"
    match = _PART.fullmatch(piece.value)
    if match is None or match[2] not in (unit, unit.removesuffix("s"), unit.removesuffix("es")):
        what = f'"{piece.value}" is no piece of a step, such as "{example}".'
        write = margin.line_with(piece.place, piece.value, f"NUMBER {unit} at NUMBER m")
        margin.note("steps.piece", piece.place, what, write)
        return None
    count = values.number(Text(match[1], piece.place), margin, COUNT, "The count")
    if count is None:
        return None
    if match[3] is None:
        return _without_distance(piece, int(count), unit, margin)
    if match[4] not in FAR:
        said = f"{match[3]} {match[4] or ''}".strip()
        what = f'The distance "{said}" is neither in m nor in ft.'
        either = f"{match[1]} {match[2]} at {match[3]} m or {match[3]} ft"
        write = margin.line_with(piece.place, piece.value, either)
        margin.note("steps.distance", piece.place, what, write)
        return None
    far_said = Text(match[3], values.place_after(piece, match.start(3)))
    far = values.number(far_said, margin, FAR[match[4]], "The distance")
    used.add(match[4])
    return None if far is None else Part(far / M_PER_FT if match[4] == "m" else far, int(count))


def _without_distance(piece: Text, count: int, unit: str, margin: Margin) -> Part | None:
    """Throws and passes go as far as somebody says; a serve or an over as far as the court."""
    if unit not in ("throws", "passes"):
        return Part(0, count)
    what = f'"{piece.value}" does not say how far.'
    write = margin.line_with(piece.place, piece.value, f"{piece.value} at NUMBER m")
    margin.note("steps.distance", piece.place, what, write)
    return None
