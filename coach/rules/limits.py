"""The last gate: every dose is held to the plan's caps, and what is locked stays locked.

Law: this file does not trust the one that made the dose. It reads each cap from the plan again,
only ever lowers, and an opening without a name or with a date to come opens nothing.
"""

from __future__ import annotations

from datetime import date
from typing import Final

from coach.model.decisions import Basis, Decision
from coach.model.program import Axis, Exercise, Limits, Opened, Plan, Prescription
from coach.model.quantities import Dose, Load

OPEN_FAMILIES: Final = ("cuff", "shoulder blade", "trunk", "legs", "mobility")
# Post-repair protocols disagree on when these begin, so each waits for the clinician's own tick.
LOCKED_FAMILIES: Final = (
    "resisted biceps",
    "external rotation at 90",
    "overhead",
    "cocked diagonal",
    "ball drill",
    "throwing",
)

SECONDS_A_REP: Final = 4  # set here, to be signed by a clinician
SECONDS_TO_SET_UP: Final = 30  # set here, once an exercise

_SOURCE: Final = "set here, to be signed by a clinician"


def _at_most(value: int, axis: Axis | None) -> int:
    """`value` between 0 and the axis' cap; 0 where the plan has no such axis."""
    return 0 if axis is None else max(0, min(value, axis.cap))


def _comparable(one: Load, other: Load) -> bool:
    return one.kind == other.kind and bool(one.strength) == bool(other.strength)


def _load_at_most(load: Load, prescription: Prescription) -> Load:
    """`load` held to the plan's cap; a load of another kind becomes the plan's own."""
    cap = prescription.load_cap
    if _comparable(load, cap):
        return load if load.rank() <= cap.rank() else cap
    own = prescription.load
    return cap if _comparable(own, cap) and own.rank() > cap.rank() else own


def _version_at_most(dose: Dose, prescription: Prescription, exercise: Exercise) -> Dose:
    """`dose` in a version the plan allows: its own, or else the plan's first."""
    levels = {version.name: version.level for version in exercise.versions}
    allowed = [name for name in prescription.versions if name in levels]
    if not allowed:
        return dose._replace(version="", version_level=0)
    name = dose.version if dose.version in allowed else allowed[0]
    return dose._replace(version=name, version_level=levels[name])


def _range_at_most(dose: Dose, prescription: Prescription, exercise: Exercise) -> Dose:
    steps = exercise.ranges
    if not steps:
        return dose._replace(range_step="", range_index=0)
    index = min(_at_most(dose.range_index, prescription.range), len(steps) - 1)
    return dose._replace(range_step=steps[index].name, range_index=index)


def gate(dose: Dose, prescription: Prescription, exercise: Exercise) -> Dose:
    """`dose` held to every cap of the plan (id limits.caps; ours).

    Sets, reps, hold, load, range step and version are each brought down to the plan's cap; rest is
    brought up to the plan's. A dose inside the caps comes back equal.
    """
    high = _at_most(dose.reps_high, prescription.reps)
    held = dose._replace(
        sets=_at_most(dose.sets, prescription.sets),
        reps_low=max(0, min(dose.reps_low, high)),
        reps_high=high,
        hold_s=_at_most(dose.hold_s, prescription.hold),
        load=_load_at_most(dose.load, prescription),
        rest_s=max(dose.rest_s, prescription.rest_s),
        tempo=prescription.tempo,
    )
    return _version_at_most(_range_at_most(held, prescription, exercise), prescription, exercise)


def _is_opened(opened: Opened, exercise: Exercise, today: date) -> bool:
    return opened.what in (exercise.name, exercise.family) and bool(
        opened.who and date.fromisoformat(opened.day) <= today
    )


def locked(exercise: Exercise, plan: Plan, today: date) -> Decision:
    """Whether `exercise` is locked on `today` (id limits.locks): open or locked.

    A locked family, or one that is not known, is open only where the plan names it (or the
    exercise) with a date that is not ahead and a person. Source: post-repair protocols
    disagree; set here.
    """
    if exercise.family in OPEN_FAMILIES:
        why = "This exercise needs no opening."
        return Decision("limits.locks", "open", why, exercise.place, Basis.OURS, _SOURCE)
    for opened in plan.opened:
        if _is_opened(opened, exercise, today):
            why = "Your clinician opened this exercise."
            return Decision("limits.locks", "open", why, opened.place, Basis.PLAN, _SOURCE)
    why = "This exercise waits. Your clinician has not opened it."
    return Decision("limits.locks", "locked", why, plan.place, Basis.OURS, _SOURCE)


def exercises_today(names: tuple[str, ...], limits: Limits) -> tuple[str, ...]:
    """The first of `names` that the plan's cap on exercises a session lets in (id limits.caps)."""
    return names[: max(0, limits.exercises)]


def seconds_of(dose: Dose) -> int:
    """About how many seconds a dose takes: set-up, work at its upper end, rests between."""
    each_s = dose.hold_s if dose.hold_s > 0 else SECONDS_A_REP
    return SECONDS_TO_SET_UP + dose.sets * dose.reps_high * each_s + (dose.sets - 1) * dose.rest_s


def minutes_of(doses: tuple[Dose, ...]) -> int:
    """About how many minutes `doses` take together, rounded up."""
    return -(-sum(seconds_of(dose) for dose in doses) // 60)


def fit_minutes(doses: tuple[tuple[str, Dose], ...], minutes: int) -> int:
    """How many of `doses`, from the first, fit into `minutes` (id limits.caps; set here)."""
    for count in range(len(doses), 0, -1):
        if minutes_of(tuple(dose for _, dose in doses[:count])) <= minutes:
            return count
    return 0


def cut_short(limits: Limits) -> Decision:
    """The reason for a list cut to the plan's caps on a session (id limits.caps)."""
    why = (
        f"Today's list is cut short. Your plan has {limits.exercises} exercises at most. "
        f"It has {limits.minutes} minutes at most."
    )
    return Decision("limits.caps", "cut short", why, limits.place, Basis.PLAN, _SOURCE)
