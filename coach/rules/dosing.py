"""The dose of today: opened from the plan, lowered for the day, changed downward in a set.

Law: a dose comes from the plan and nowhere else; what the plan leaves blank is not filled in. Every
change here goes down one axis; there is no function that goes up. `limits` has the last word.
"""

from __future__ import annotations

from typing import Final

from coach.model.decisions import Basis, Decision, Refusal
from coach.model.program import Axis, Exercise, Fault, Prescription, Version
from coach.model.quantities import Dose, Load
from coach.rules.pain import Room
from coach.rules.readiness import sets_after_short_sleep

LIGHT_CUFF: Final = "side-lying external rotation"
# Common practice, no published source: opens at 2 lb (1 kg), at most 3 lb while symptomatic.
LIGHT_CUFF_OPENS: Final = {"lb": 2.0, "kg": 1.0}
LIGHT_CUFF_CAP: Final = Load("dumbbell", 3.0, "lb")
TOO_EASY: Final = "too easy"
MISSED_RUNNING: Final = 3  # set here, to be signed by a clinician

_PRACTICE: Final = "common practice, no published source"


def _no_dose(exercise: str, why: str, prescription: Prescription | None) -> Refusal:
    place = prescription.place if prescription is not None else None
    return Refusal("dose.from_plan", f"{exercise.capitalize()} is left out. {why}", place)


def _version_named(exercise: Exercise, name: str) -> Version | None:
    return next((version for version in exercise.versions if version.name == name), None)


def _capped(axis: Axis) -> int:
    return min(axis.opening, axis.cap)


def opening_dose(exercise: Exercise, prescription: Prescription | None) -> Dose | Refusal:
    """The plan's opening dose for `exercise` (id dose.from_plan; ours), or why there is none.

    No dose in the plan, a range step or version the exercise does not have: it is not offered.
    """
    if prescription is None:
        return _no_dose(exercise.name, "Your plan has no dose for it.", prescription)
    steps = exercise.ranges
    index = _capped(prescription.range) if prescription.range is not None else 0
    if (steps or index) and not 0 <= index < len(steps):
        return _no_dose(exercise.name, "Your plan names a range it lacks.", prescription)
    name = prescription.versions[0] if prescription.versions else ""
    version = _version_named(exercise, name)
    if name and version is None:
        return _no_dose(exercise.name, "Your plan names a form it lacks.", prescription)
    load, cap = prescription.load, prescription.load_cap
    return Dose(
        sets=_capped(prescription.sets),
        reps_low=_capped(prescription.reps),
        reps_high=min(prescription.reps.opening_high, prescription.reps.cap),
        hold_s=_capped(prescription.hold) if prescription.hold is not None else 0,
        load=load if load.rank() <= cap.rank() else cap,
        rest_s=prescription.rest_s,
        tempo=prescription.tempo,
        range_step=steps[index].name if steps else "",
        range_index=index,
        version=name,
        version_level=version.level if version is not None else 0,
    )


def dose_for_today(dose: Dose, short_night: bool, sets_fewer: int) -> Dose:
    """The dose lowered for the day: a short night, and `sets_fewer` sets. The last set stays."""
    sets = sets_after_short_sleep(dose.sets) if short_night else dose.sets
    return dose._replace(sets=min(dose.sets, max(1, sets - max(0, sets_fewer))))


def shorter(dose: Dose, exercise: Exercise) -> Dose | None:
    """The same dose one range step shorter, or None where it is the shortest."""
    index = dose.range_index - 1
    if not 0 <= index < len(exercise.ranges):
        return None
    return dose._replace(range_index=index, range_step=exercise.ranges[index].name)


def easier(dose: Dose, exercise: Exercise, prescription: Prescription) -> Dose | None:
    """The same dose in the next easier version the plan allows, or None."""
    lower = [
        version
        for version in exercise.versions
        if version.name in prescription.versions and version.level < dose.version_level
    ]
    if not dose.version or not lower:
        return None
    best = max(lower, key=lambda version: version.level)
    return dose._replace(version=best.name, version_level=best.level)


def _same_scale(one: Load, other: Load) -> bool:
    return one.kind == other.kind and bool(one.strength) == bool(other.strength)


def lighter(dose: Dose, prescription: Prescription) -> Dose | None:
    """The same dose with the next lighter load of the plan, or None.

    The loads are the plan's opening load and the lighter ones it lists as at home.
    """
    below = [
        load
        for load in (prescription.load, *prescription.lighter)
        if _same_scale(load, dose.load) and load.rank() < dose.load.rank()
    ]
    return dose._replace(load=max(below, key=Load.rank)) if below else None


def room_for_change(exercise: Exercise, prescription: Prescription, dose: Dose) -> Room:
    """Which changes down remain for `dose` (id pain.in_set)."""
    return Room(
        shorter(dose, exercise) is not None,
        easier(dose, exercise, prescription) is not None,
        lighter(dose, prescription) is not None,
    )


def versions_to_pick(exercise: Exercise, prescription: Prescription) -> tuple[Version, ...]:
    """The versions the athlete may pick from: allowed, and as easy as the plan's first one.

    Empty where there is nothing to pick. A higher level is earned, never picked.
    """
    if not prescription.versions:
        return ()
    first = _version_named(exercise, prescription.versions[0])
    if first is None:
        return ()
    return tuple(
        version
        for version in exercise.versions
        if version.name in prescription.versions and version.level == first.level
    )


def needs_pick(exercise: Exercise, prescription: Prescription) -> bool:
    """Whether more than one version may be picked."""
    return len(versions_to_pick(exercise, prescription)) > 1


def light_cuff(exercise_name: str, fault_name: str) -> Decision:
    """What "too easy" means in the light cuff exercise (id dose.light_cuff): check form, as usual.

    Source: common practice; that the cuff works best under light load, Bitter 2007.
    """
    if exercise_name == LIGHT_CUFF and fault_name == TOO_EASY:
        why = "Check your form first. Light is the point here, so no weight is added."
        source = f"{_PRACTICE}; light load: Bitter 2007"
        return Decision("dose.light_cuff", "check form", why, basis=Basis.PRACTICE, source=source)
    why = "Nothing changes here."
    return Decision("dose.light_cuff", "as usual", why, basis=Basis.PRACTICE, source=_PRACTICE)


def light_cuff_load(prescription: Prescription) -> Decision:
    """Whether the plan's light cuff load is in the suggested range (id dose.light_cuff).

    Outcomes: light, or note (for the clinician who writes the plan; the plan's figure stands).
    Source: common practice.
    """
    opens = LIGHT_CUFF_OPENS.get(prescription.load.unit, 0.0)
    light = prescription.load.amount <= opens
    capped = prescription.load_cap.kilograms() <= LIGHT_CUFF_CAP.kilograms()
    outcome = "light" if light and capped else "note"
    why = "Suggested: open at 2 lb (1 kg), at most 3 lb while it still hurts."
    place = prescription.place
    return Decision("dose.light_cuff", outcome, why, place, Basis.PRACTICE, _PRACTICE)


def towel(exercise: Exercise, fault_name: str) -> Decision:
    """Whether a rolled towel is the correction (id dose.towel): towel or as usual.

    It is where the exercise's own correction for `fault_name` names a towel. Source: common
    practice; Reinold 2009, from memory: a comfort cue, not a proven gain.
    """
    source = "common practice; Reinold 2009, from memory"
    for fault in exercise.faults:
        if fault.name == fault_name and "towel" in fault.put_right.lower():
            why = "Put a rolled towel under the arm. It keeps the big muscle quiet."
            return Decision("dose.towel", "towel", why, exercise.place, Basis.PRACTICE, source)
    why = "No towel is needed for this."
    return Decision("dose.towel", "as usual", why, exercise.place, Basis.PRACTICE, source)


_STAYS: Final = {
    "lighter": "A lighter load now. The same thing was off three sets in a row.",
    "shorter range": "Less range now. The same thing was off three sets in a row.",
    "easier version": "An easier form now. The same thing was off three sets in a row.",
    "leave out": "We leave this out today. The same thing was off three sets in a row.",
}


def correction(fault: Fault, running: int) -> Decision:
    """What follows a fault felt in `running` sets in a row (id dose.correction; set here).

    Outcome: the exercise's own `if it stays` from the third set on, else `correct`. A fault named
    `too easy` is answered by form (dose.light_cuff), a towel by dose.towel; neither adds a load.
    """
    if running >= MISSED_RUNNING and fault.if_it_stays in _STAYS:
        outcome = fault.if_it_stays
        source = "set here, to be signed by a clinician"
        return Decision("dose.correction", outcome, _STAYS[outcome], source=source)
    if fault.name == TOO_EASY:
        return light_cuff(LIGHT_CUFF, TOO_EASY)._replace(outcome="correct")
    if "towel" in fault.put_right.lower():
        why = "Use the towel as told. It keeps the big muscle quiet."
        source = "common practice; Reinold 2009, from memory"
        return Decision("dose.towel", "correct", why, basis=Basis.PRACTICE, source=source)
    why = "One thing to change. It is this exercise's own correction."
    return Decision("dose.correction", "correct", why, basis=Basis.PRACTICE, source=_PRACTICE)
