"""The dose lines of a plan: `OPENING, up by STEP, up after DAYS, at most CAP`, or `OPENING only`.

Law: the cap is always written; nothing is filled in. Outer limits of a single number are guards
against slips of typing, set here and to be signed by a clinician; the plan's own numbers rule.
"""

from __future__ import annotations

import re
from typing import Final, NamedTuple

from coach.model.program import Axis, Exercise, Place, Prescription
from coach.model.quantities import Load
from coach.rules.dapre import DRIVERS
from coach.texts import values
from coach.texts.fields import Fields
from coach.texts.margin import Margin, did_you_mean, near_line
from coach.texts.yaml_lines import Mapped, Text

BOUNDS: Final = {
    "sets": values.Bounds("", 1, 10),
    "reps": values.Bounds("", 1, 50),
    "hold": values.Bounds("s", 1, 300),
}
REST: Final = values.Bounds("s", 5, 600)
APART: Final = values.Bounds("days", 0, 14)
AFTER: Final = values.Bounds("days", 1, 365)
AXES: Final = ("sets", "reps", "hold", "load", "range", "versions")
KEYS: Final = (*AXES, "rest", "tempo", "goes up", "apart")
_TABLE: Final = re.compile(r"dapre(?: from set (\d))?")
_TEMPO: Final = re.compile(r"lower for ([1-9]|10) s")
_LEADS: Final = ("up by ", "up after ", "at most ")
NO_LOAD: Final = Load("none")


class DoseLine(NamedTuple):
    """A dose line taken apart; a piece not written is None."""

    opening: Text
    only: bool
    by: Text | None
    after_days: int
    cap: Text | None
    place: Place


def split_line(text: Text, key: str, margin: Margin) -> DoseLine | None:
    """The pieces of a dose line, each at its place; None where a piece is not understood."""
    if values.has_decimal_comma(text, margin):
        return None
    opening, *rest = values.pieces(text)
    typed = opening.value
    opening = Text(typed.removesuffix(" only"), opening.place)
    by = cap = None
    after = 0
    for piece in rest:
        lead = next((lead for lead in _LEADS if piece.value.startswith(lead)), "")
        said = Text(piece.value.removeprefix(lead), values.place_after(piece, len(lead)))
        if lead == "up by ":
            by = said
        elif lead == "at most ":
            cap = said
        elif lead:
            days = values.number(said, margin, AFTER, "The days before a step")
            after = int(days or 0)
        else:
            what = f'"{piece.value}" is no piece of a dose line.'
            margin.note("dose.piece", piece.place, what, _example(key))
            return None
    line = DoseLine(opening, typed.endswith(" only"), by, after, cap, text.place)
    return _whole_line(line, key, margin)


def _whole_line(line: DoseLine, key: str, margin: Margin) -> DoseLine | None:
    moves = line.by is not None or line.after_days > 0
    if line.only and (moves or line.cap):
        what = f'"{line.opening.value} only" stays, so no more may stand on the line.'
        margin.note("dose.only_and_more", line.place, what, f"{key}: {line.opening.value} only")
        return None
    if line.after_days and line.by is None and key != "range":
        what = f"The line on {key} goes up after some days and does not say by how much."
        margin.note("dose.step_missing", line.place, what, _example(key))
        return None
    if moves and line.cap is None:
        what = f"The line on {key} goes up and has no cap."
        margin.note("dose.cap_missing", line.place, what, f"{key}: ..., at most ...")
        return None
    if not line.only and not moves:
        what = f'The line on {key} says neither "only" nor how it goes up.'
        margin.note("dose.unsaid", line.place, what, f"{key}: {line.opening.value} only")
        return None
    return line


def _example(key: str) -> str:
    examples = {
        "reps": "reps: LOW to HIGH, up by STEP, at most CAP",
        "hold": "hold: SECONDS s only",
        "load": "load: LOAD, up by STEP, at most CAP",
        "sets": "sets: NUMBER only",
        "range": "range: FIRST STEP, up after NUMBER days, at most LAST STEP",
    }
    return examples.get(key, f"{key}: ... only")


# ---------------------------------------------------------------- one exercise's dose


def read_dose(
    name: Text, tree: Mapped, exercise: Exercise, home: tuple[Load, ...], margin: Margin
) -> Prescription | None:
    """The dose of one exercise; None where a line it needs cannot be read."""
    fields = Fields(tree, margin, f'The dose of "{name.value}"')
    fields.place = name.place
    sets, reps = _figures(fields, "sets"), _figures(fields, "reps")
    hold = _hold(fields, exercise)
    load = _load(fields, exercise)
    steps = _range(fields, exercise)
    versions = _versions(fields, exercise)
    rest_s = _rest(fields, sets)
    apart = _apart(fields, exercise)
    tempo, goes_up = (
        _tempo(fields),
        tuple(piece.value for piece in fields.names("goes up")),
    )
    without = _without(fields, exercise)
    fields.close(KEYS)
    if sets is None or reps is None or load is None:
        return None
    opening, step, cap, load_place, after, dapre = load
    rising = [
        n
        for n, axis in (("sets", sets), ("reps", reps), ("hold", hold), ("range", steps))
        if axis and axis.step
    ]
    rising += ["load"] if step else []
    if not goes_up and len(rising) == 1:  # where only one thing can go up, its own line says so
        goes_up = tuple(rising)
    return Prescription(
        exercise=exercise.name,
        sets=sets,
        reps=reps,
        hold=hold,
        load=opening,
        load_step=step,
        load_cap=cap,
        lighter=lighter_loads(opening, home),
        rest_s=rest_s,
        tempo=tempo,
        range=steps,
        versions=versions,
        apart_days=apart,
        goes_up=goes_up,
        without=without,
        place=name.place,
        load_after_days=after,
        load_place=load_place,
        dapre=dapre,
    )


def lighter_loads(opening: Load, home: tuple[Load, ...]) -> tuple[Load, ...]:
    """Loads at home of the same sort below the opening, heaviest first."""
    alike = [
        load
        for load in home
        if load.kind == opening.kind
        and bool(load.strength) == bool(opening.strength)
        and load.rank() < opening.rank()
    ]
    return tuple(sorted(alike, key=lambda load: -load.rank()))


def _figures(fields: Fields, key: str) -> Axis | None:
    text = fields.text(key, _example(key))
    line = split_line(text, key, fields.margin) if text else None
    if line is None:
        return None
    margin, bounds = fields.margin, BOUNDS[key]
    opening = values.span(line.opening, margin, bounds, f"The opening of {key}")
    if opening is None:
        return None
    if opening[0] != opening[1] and key != "reps":
        what = f"The line on {key} opens with a range; only reps do."
        margin.note("dose.range_opening", line.place, what, f"{key}: {opening[0]:g} only")
        return None
    step = values.number(line.by, margin, bounds, f"The step of {key}") if line.by else 0.0
    cap = values.number(line.cap, margin, bounds, f"The cap of {key}") if line.cap else opening[1]
    if step is None or cap is None:
        return None
    return _axis(opening, step, line.after_days, cap, line, margin)


def _axis(
    opening: tuple[float, float],
    step: float,
    after: int,
    cap: float,
    line: DoseLine,
    margin: Margin,
) -> Axis:
    if cap < opening[1]:
        what = f"The cap {cap:g} is under the opening {opening[1]:g}."
        margin.note("dose.cap_under_opening", line.place, what)
    elif line.cap and cap < opening[1] + step:
        what = f"One step of {step:g} from {opening[1]:g} passes the cap of {cap:g}."
        margin.note("dose.dead_step", line.place, what)
    low, high = opening
    return Axis(int(low), int(high), int(step), after, int(cap), line.place)


def _hold(fields: Fields, exercise: Exercise) -> Axis | None:
    if exercise.counted_in == "holds":
        return _figures(fields, "hold")
    pair = fields.pair("hold")
    if pair is not None:
        what = f'"{exercise.name}" is counted in reps, so it has no line "hold".'
        fields.margin.note("dose.axis_unknown", pair.key.place, what, also=exercise.place)
    return None


_LoadLine = tuple[Load, float, Load, Place | None, int, int]


def _load(fields: Fields, exercise: Exercise) -> _LoadLine | None:
    margin = fields.margin
    if exercise.load == "none":
        pair = fields.pair("load")
        if pair is not None:
            what = f'"{exercise.name}" has no load, so it has no line "load".'
            margin.note("dose.axis_unknown", pair.key.place, what, also=exercise.place)
        return NO_LOAD, 0.0, NO_LOAD, None, 0, 0
    text = fields.text("load", _load_example(exercise.load))
    line = split_line(text, "load", margin) if text else None
    opening = values.load_of_kind(line.opening, exercise.load, margin) if line else None
    if line is None or opening is None:
        return None
    return _load_steps(line, opening, exercise.load, margin)


def _load_example(kind: str) -> str:
    return "load: STRENGTH band only" if kind == "band" else "load: WEIGHT only"


def _load_steps(line: DoseLine, opening: Load, kind: str, margin: Margin) -> _LoadLine | None:
    cap = values.load_of_kind(line.cap, kind, margin) if line.cap else opening
    dapre = _table(line, margin)
    plain = line.by if dapre == 0 else None
    step = values.weight(plain, margin, "The step of load") if plain else (0.0, opening.unit)
    if cap is None or step is None or dapre is None:
        return None
    if step[0] and opening.strength:
        margin.note("load.band_step", line.place, "A band named by strength has no step.")
        return None
    if {step[1], cap.unit} != {opening.unit}:
        what = "Opening, step and cap of the load are not in one unit."
        margin.note("load.units_mixed", line.place, what)
        return None
    if cap.rank() < opening.rank():
        what = f"The cap {cap.words()} is under the opening {opening.words()}."
        margin.note("dose.cap_under_opening", line.place, what)
    return opening, step[0], cap, line.place, line.after_days, dapre


def _table(line: DoseLine, margin: Margin) -> int | None:
    """The set that drives the next weight, where the step is `dapre from set 3`; 0 where it is not.

    None and a finding where the table is named and no set, or another one, stands there.
    """
    if line.by is None or not line.by.value.startswith("dapre"):
        return 0
    match = _TABLE.fullmatch(line.by.value)
    if match and match.group(1) and int(match.group(1)) in DRIVERS:
        return int(match.group(1))
    what = f'"up by {line.by.value}" does not say which set drives the next weight: 3 or 4.'
    write = margin.line_with(line.by.place, line.by.value, "dapre from set 3")
    margin.note("dapre.set", line.by.place, what, write)
    return None


def _range(fields: Fields, exercise: Exercise) -> Axis | None:
    names = [step.name for step in exercise.ranges]
    if not names:
        _note_no_axis(fields, "range", exercise)
        return None
    text = fields.text("range", f"range: {names[0]} only")
    line = split_line(text, "range", fields.margin) if text else None
    if line is None:
        return None
    if line.by is not None:
        what = "The range goes a step at a time; it has no size of step."
        fields.margin.note("dose.range_step", line.place, what, _example("range"))
    opening = _index(line.opening, names, "step of the range", fields.margin)
    cap = _index(line.cap, names, "step of the range", fields.margin) if line.cap else opening
    if opening is None or cap is None:
        return None
    if cap < opening or (line.cap and cap == opening):
        what = "The range has its cap no higher than its opening."
        fields.margin.note(
            "dose.cap_under_opening", line.place, what, f"range: {names[opening]} only"
        )
    return Axis(opening, opening, 1 if line.after_days else 0, line.after_days, cap, line.place)


def _note_no_axis(fields: Fields, key: str, exercise: Exercise) -> None:
    pair = fields.pair(key)
    if pair is not None:
        what = f'"{exercise.name}" lists no {key}, so its dose has no line "{key}".'
        fields.margin.note("dose.axis_unknown", pair.key.place, what, also=exercise.place)


def _index(text: Text, names: list[str], kind: str, margin: Margin) -> int | None:
    if text.value in names:
        return names.index(text.value)
    what = f'"{text.value}" is no {kind} of this exercise.{did_you_mean(text.value, names)}'
    write = near_line(margin, text.place, text.value, names) or " / ".join(names)
    margin.note("dose.name_unknown", text.place, what, write)
    return None


def _versions(fields: Fields, exercise: Exercise) -> tuple[str, ...]:
    names = [version.name for version in exercise.versions]
    if not names:
        _note_no_axis(fields, "versions", exercise)
        return ()
    found = fields.names("versions", f"versions: {names[0]}")
    known = [piece for piece in found if _index(piece, names, "version", fields.margin) is not None]
    return tuple(piece.value for piece in known)


def _rest(fields: Fields, sets: Axis | None) -> int:
    needed = sets is not None and sets.cap > 1
    text = fields.text("rest", "rest: NUMBER s" if needed else "")
    if text is None:
        return 0
    return int(values.number(text, fields.margin, REST, "The rest") or 0)


def _apart(fields: Fields, exercise: Exercise) -> int:
    text = fields.text("apart", "apart: NUMBER days" if exercise.load != "none" else "")
    if text is None:
        return 0
    return int(values.number(text, fields.margin, APART, "The days apart") or 0)


def _tempo(fields: Fields) -> str:
    text = fields.text("tempo")
    if text is None:
        return ""
    if not _TEMPO.fullmatch(text.value):
        what = f'The tempo "{text.value}" is not known.'
        fields.margin.note("dose.tempo", text.place, what, "tempo: lower for 3 s")
    return text.value


def _without(fields: Fields, exercise: Exercise) -> tuple[tuple[str, str], ...]:
    found: list[tuple[str, str]] = []
    for pair in fields.rest("without "):
        equipment = pair.key.value.removeprefix("without ")
        text = values.plain_text(pair.value, fields.margin, pair.key.value)
        if equipment not in exercise.equipment:
            what = f'"{exercise.name}" does not use "{equipment}".'
            what += did_you_mean(equipment, exercise.equipment)
            fields.margin.note("equipment.not_used", pair.key.place, what, also=exercise.place)
        elif text is not None:
            found.append((equipment, text.value))
    return tuple(found)
