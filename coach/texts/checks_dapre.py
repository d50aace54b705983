"""What must hold where a dose line names the DAPRE table.

Law: the table asks for as many reps as can be done and adds whole pounds, so it is refused wherever
that could harm, and wherever it could not be carried out with what is at home.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from coach.model.program import Exercise, Place, Plan, Prescription
from coach.rules import dapre
from coach.rules.limits import LOCKED_FAMILIES

if TYPE_CHECKING:
    from collections.abc import Iterator

    from coach.model.program import Axis
    from coach.texts.margin import Margin

HALF = dapre.SETS[0][0]


def check_dapre(dose: Prescription, exercise: Exercise, plan: Plan, margin: Margin) -> None:
    """Note what keeps the table from driving this exercise; nothing where it is not named."""
    if not dose.dapre:
        return
    place = dose.load_place or dose.place
    for why in _why_not(exercise):
        what = f'"{exercise.name}" {why}, so the table may not drive it.'
        weight = f"{dose.load.amount:g} {dose.load.unit}"
        write = f"load: {dose.load.words() if dose.load.kind == 'band' else weight} only"
        margin.note("dapre.exercise", place, what, write, also=exercise.place)
        return
    _check_sets(dose, margin)
    _check_reps(dose, margin)
    _check_others_stay(dose, exercise, margin)
    _check_loads(dose, plan, place, margin)
    for equipment, instead in dose.without:
        if instead == "stand-in":
            what = f"The {equipment} has a stand-in, which has one weight and no half of it."
            margin.note("dapre.stand_in", dose.place, what)


def _why_not(exercise: Exercise) -> Iterator[str]:
    if exercise.family in LOCKED_FAMILIES:
        yield f'is of a locked family ("{exercise.family}")'
    elif exercise.family in dapre.NOT_FOR:
        yield f'is of the family "{exercise.family}"'
    if exercise.load != dapre.LOAD_KIND:
        yield f"is loaded with a {exercise.load}"
    if exercise.counted_in != "reps":
        yield f"is counted in {exercise.counted_in}"


def _check_sets(dose: Prescription, margin: Margin) -> None:
    fits = dose.dapre <= dose.sets.cap <= len(dapre.SETS)
    if dose.sets.step or not fits:
        most = len(dapre.SETS)
        what = f"The table has {most} sets, and set {dose.dapre} drives the next weight."
        margin.note("dapre.sets", dose.sets.place, what, f"sets: {most} only")


def _check_reps(dose: Prescription, margin: Margin) -> None:
    top = dose.reps.opening_high
    if top < dapre.RISES_FROM_REPS:
        what = f"A set ends at {top} reps, and the weight goes up from {dapre.RISES_FROM_REPS}."
        margin.note("dapre.reps", dose.reps.place, what)


def _check_others_stay(dose: Prescription, exercise: Exercise, margin: Margin) -> None:
    levels = {version.name: version.level for version in exercise.versions}
    allowed = [levels.get(name, 0) for name in dose.versions]
    harder = bool(allowed) and max(allowed) > allowed[0]
    moving: list[tuple[str, Axis | None, Place]] = [
        ("reps", dose.reps, dose.reps.place),
        ("range", dose.range, dose.range.place if dose.range else dose.place),
    ]
    named = [(name, place) for name, axis, place in moving if axis is not None and axis.step]
    if harder:
        named.append(("versions", dose.place))
    for name, place in named:
        what = f'The load goes by the table, and "{name}" goes up as well.'
        margin.note("dapre.other_axis", place, what)


def _check_loads(dose: Prescription, plan: Plan, place: Place, margin: Margin) -> None:
    load = dose.load
    alike = [o for o in plan.loads_at_home if (o.kind, o.unit) == (load.kind, load.unit)]
    if not any(one.amount <= HALF * load.amount for one in alike):
        half = load._replace(amount=HALF * load.amount)
        what = f"The first set is half the weight, and nothing up to {half.words()} is at home."
        write = f"at home: {', '.join((*plan.at_home, half.words()))}"
        margin.note("dapre.light_set", place, what, write)
    rise = _largest_rise(dose)
    most = min(load.amount + rise, dose.load_cap.amount)
    if rise and not any(load.amount < one.amount <= most for one in alike):
        what = f"The next load over {load.words()} is not at home, so no step is taken."
        margin.note("load.step_not_at_home", place, what)


def _largest_rise(dose: Prescription) -> float:
    """The largest rise of the rows that the plan's most reps can reach."""
    rows = dapre.ROWS[dose.load.unit]
    return max(row.next_session[0] for row in rows if row.reps_from <= dose.reps.opening_high)
