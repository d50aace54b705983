"""Ladders across days: up only when earned, one thing at a time; down at once.

Law: progress is decided at the next start from the day's summary, never in a session. A move up
needs its rule's conditions, the arbiter's leave and the plan's cap; a move down needs nobody's. No
load is reached that the athlete does not own.
"""

from __future__ import annotations

from datetime import date
from typing import Final, NamedTuple

from coach.model.decisions import Basis, Decision
from coach.model.ladders import Drove, Ladder
from coach.model.program import Axis, Exercise, Prescription
from coach.model.quantities import Dose, Load
from coach.rules import dapre
from coach.rules.dosing import easier, shorter
from coach.rules.limits import gate

EXTRA_REPS: Final = 2  # Baechle and Earle (two-for-two): 2 over the goal in the last set
SESSIONS_RUNNING: Final = 2  # Baechle and Earle (two-for-two)
STEP_AT_MOST: Final = 0.10  # ACSM 2009: raise the load by 2 to 10 %
MISSED_RUNNING: Final = 3  # set here, to be signed by a clinician
HARD_EFFORT: Final = 9  # set here, to be signed by a clinician
RANGE_WEEKS: Final = (8, 12)  # common practice: a range ladder in all

# How an exercise ended, by the day's summary: `earned` is 2 or more clean reps over the top in the
# last set with pain inside the ceiling in every set; `short` fewer reps than the plan's lower
# number; `form` a correction still open; `over` pain over the ceiling; `none` not done.
RESULTS: Final = ("none", "earned", "good", "short", "form", "over")

_SOURCE_UP: Final = "Baechle and Earle (two-for-two); ACSM 2009"
_OURS: Final = "set here, to be signed by a clinician"


class DaySummary(NamedTuple):
    """What the last session says of one exercise, as known at the next start.

    `gap`: none, one step down, first step, contact (rule layoff.gap). `morning_up`: waking pain is
    above usual today. `stopped`: a stop or flare since. `hard`: effort 9 or 10. `pinch`: pinching
    was felt. `result` is one of RESULTS. `drove` is what the set said that drives the next weight,
    where a table is named (None: it drives nothing).
    """

    today: date
    result: str
    gap: str = "none"
    morning_up: bool = False
    stopped: bool = False
    hard: bool = False
    pinch: bool = False
    drove: Drove | None = None


class Rails(NamedTuple):
    """What a ladder runs between: the plan's line, the loads owned, the phase's start.

    `opening` is the phase's first dose and `opened` the day the phase was opened.
    """

    exercise: Exercise
    prescription: Prescription
    owned: tuple[Load, ...]
    opening: Dose
    opened: date


# ---------------------------------------------------------------- earning a step


def earns(last_set_reps: float, top: int) -> bool:
    """Whether the last set had 2 or more clean reps over the top (id prog.two_for_two)."""
    return last_set_reps >= top + EXTRA_REPS


def was_hard(effort: float) -> bool:
    """Whether an effort (0 to 10) is 9 or 10 (id prog.down; set here)."""
    return effort >= HARD_EFFORT


def range_pace(prescription: Prescription) -> Decision:
    """Whether the range ladder takes 8 to 12 weeks in all (id prog.range): fits, fast, slow, none.

    Steps from the opening to the cap times the days of each. Source: common practice.
    """
    line = prescription.range
    steps = 0 if line is None else line.cap - line.opening
    source = "common practice, no published source"
    if line is None or steps <= 0:
        why = "The range stays where it is."
        return Decision("prog.range", "none", why, basis=Basis.PRACTICE, source=source)
    fewest, most = (7 * weeks for weeks in RANGE_WEEKS)
    days = steps * line.after_days
    outcome = "fast" if days < fewest else "slow" if days > most else "fits"
    why = f"This range ladder takes {days} days. Suggested are {fewest} to {most}."
    return Decision("prog.range", outcome, why, line.place, Basis.PRACTICE, source)


def next_load(load: Load, step: float, cap: Load, owned: tuple[Load, ...]) -> Load | None:
    """The heaviest owned load within a step above `load` (id prog.step), or None.

    The step is the smaller of 10 % and the plan's, in the unit of `load`; never over `cap`. A band
    known by strength only has no step in numbers: None. Source: ACSM 2009; the smaller of both was
    set here.
    """
    if load.strength or step <= 0:
        return None
    most = load.amount + min(step, STEP_AT_MOST * load.amount)
    top = min(load._replace(amount=most).kilograms(), cap.kilograms())
    reached = [
        one
        for one in owned
        if one.kind == load.kind == cap.kind
        and not one.strength
        and load.kilograms() < one.kilograms() <= top
    ]
    return max(reached, key=Load.kilograms) if reached else None


# ---------------------------------------------------------------- one move up


def _days_since(axis: str, ladder: Ladder, today: date) -> int | None:
    last = dict(ladder.moved).get(axis)
    return None if last is None else (today - date.fromisoformat(last)).days


def _waited(axis: str, after_days: int, ladder: Ladder, today: date, rails: Rails) -> bool:
    """Whether an axis with `up after DAYS` has stood that long (since its last step or opening)."""
    days = _days_since(axis, ladder, today)
    return (days if days is not None else (today - rails.opened).days) >= after_days


def _reps_up(dose: Dose, prescription: Prescription) -> Dose | None:
    line = prescription.reps
    high = min(dose.reps_high + line.step, line.cap)
    return dose._replace(reps_high=high) if high > dose.reps_high else None


def _axis_up(value: int, line: Axis | None) -> int | None:
    if line is None:
        return None
    higher = min(value + line.step, line.cap)
    return higher if higher > value else None


def _load_up(dose: Dose, prescription: Prescription, owned: tuple[Load, ...]) -> Dose | None:
    """The next load, with reps back at the opening range: one thing goes up, none other."""
    load = next_load(dose.load, prescription.load_step, prescription.load_cap, owned)
    if load is None:
        return None
    reps = prescription.reps
    low, high = min(reps.opening, dose.reps_low), min(reps.opening_high, dose.reps_high)
    return dose._replace(load=load, reps_low=low, reps_high=high)


def _range_up(dose: Dose, prescription: Prescription, exercise: Exercise) -> Dose | None:
    index = _axis_up(dose.range_index, prescription.range)
    if index is None or index >= len(exercise.ranges):
        return None
    return dose._replace(range_index=index, range_step=exercise.ranges[index].name)


def _version_up(dose: Dose, prescription: Prescription, exercise: Exercise) -> Dose | None:
    """The next higher level among the versions the plan allows."""
    higher = [
        version
        for version in exercise.versions
        if version.name in prescription.versions and version.level > dose.version_level
    ]
    if not dose.version or not higher:
        return None
    first = min(higher, key=lambda version: version.level)
    return dose._replace(version=first.name, version_level=first.level)


def one_up(axis: str, dose: Dose, rails: Rails) -> Dose | None:
    """`dose` one step up on `axis` alone, or None where it stands at its cap (id prog.step).

    Axes: sets, reps, hold, load, range, versions.
    """
    prescription, exercise = rails.prescription, rails.exercise
    if axis == "reps":
        return _reps_up(dose, prescription)
    if axis == "load":
        return _load_up(dose, prescription, rails.owned)
    if axis == "range":
        return _range_up(dose, prescription, exercise)
    if axis == "versions":
        return _version_up(dose, prescription, exercise)
    line, value = {
        "sets": (prescription.sets, dose.sets),
        "hold": (prescription.hold, dose.hold_s),
    }.get(axis, (None, 0))
    higher = _axis_up(value, line)
    if higher is None:
        return None
    return dose._replace(sets=higher) if axis == "sets" else dose._replace(hold_s=higher)


_LINES: Final = {"sets": 0, "reps": 1, "hold": 2, "range": 3}


def _line_of(axis: str, prescription: Prescription) -> Axis | None:
    lines = (prescription.sets, prescription.reps, prescription.hold, prescription.range)
    return lines[_LINES[axis]] if axis in _LINES else None


def _is_due(axis: str, ladder: Ladder, day: DaySummary, rails: Rails) -> bool:
    """Whether `axis` may move today by its own rule: time and no pinch for range, else earned."""
    line = _line_of(axis, rails.prescription)
    after_days = rails.prescription.load_after_days if axis == "load" else 0
    if line is not None:
        after_days = line.after_days
    if not _waited(axis, after_days, ladder, day.today, rails):
        return False
    if axis == "range":
        return not day.pinch and line is not None and line.after_days > 0
    return ladder.good_run >= SESSIONS_RUNNING


def _gated(dose: Dose, rails: Rails) -> Dose:
    return gate(dose, rails.prescription, rails.exercise)


def wants_up(ladder: Ladder, day: DaySummary, rails: Rails) -> tuple[str, Dose] | None:
    """The axis that would go up today and the dose it leads to, or None (ids prog.*).

    First what a step down took below the plan's opening; then, in the plan's order, the first that
    is due and has room under its cap. Nothing on a day with a lay-off, waking pain above usual, a
    stop or flare, or after anything but a good session. `ladder` has counted the last session
    already (`count_session`).
    """
    quiet = day.gap == "none" and not day.morning_up and not day.stopped
    if not quiet or day.result not in {"earned", "good"}:
        return None
    back = one_back(ladder.dose, rails) if ladder.good_run >= SESSIONS_RUNNING else None
    if back is not None and not (day.pinch and back[0] == "range"):
        return back
    if rails.prescription.dapre:
        return _up_by_table(ladder, day, rails)
    for axis in rails.prescription.goes_up:
        if _is_due(axis, ladder, day, rails):
            higher = one_up(axis, ladder.dose, rails)
            if higher is not None and _gated(higher, rails) == higher:
                return axis, higher
    return None


def _up_by_table(ladder: Ladder, day: DaySummary, rails: Rails) -> tuple[str, Dose] | None:
    """The next working weight where a table is named and the driving set earned it, or None."""
    prescription, now = rails.prescription, ladder.dose.load
    if day.drove is None or not dapre.driving_set(rails.exercise, prescription):
        return None
    if not _waited("load", prescription.load_after_days, ladder, day.today, rails):
        return None
    load = dapre.next_working(now, day.drove, prescription.load_cap, rails.owned)
    higher = ladder.dose._replace(load=load)
    if load.rank() <= now.rank() or _gated(higher, rails) != higher:
        return None
    return "load", higher


def one_back(dose: Dose, rails: Rails) -> tuple[str, Dose] | None:
    """One step back toward the opening dose on an axis that stands below it, or None (set here).

    The last taken comes back first: sets, load, versions, range. It is earned like any step up,
    also where the plan says `only`: there a single step down would otherwise last for good.
    """
    opening, prescription, exercise = rails.opening, rails.prescription, rails.exercise
    if dose.sets < opening.sets:
        return "sets", dose._replace(sets=dose.sets + 1)
    heavier = [
        load
        for load in (*prescription.lighter, prescription.load)
        if (load.kind, bool(load.strength)) == (dose.load.kind, bool(dose.load.strength))
        and dose.load.rank() < load.rank() <= opening.load.rank()
    ]
    if heavier and not prescription.dapre:  # a table brings the weight back itself
        return "load", dose._replace(load=min(heavier, key=Load.rank))
    if dose.version_level < opening.version_level:
        higher = _version_up(dose, prescription, exercise)
        return None if higher is None else ("versions", higher)
    if dose.range_index < opening.range_index < len(exercise.ranges):
        index = dose.range_index + 1
        return "range", dose._replace(range_index=index, range_step=exercise.ranges[index].name)
    return None


def arbiter(wants: tuple[bool, ...]) -> int | None:
    """Which exercise goes up today: the first that would, and only one (set here)."""
    return wants.index(True) if True in wants else None


# ---------------------------------------------------------------- one step down


def one_down(dose: Dose, rails: Rails) -> Dose:
    """`dose` one step down (id prog.down): what was built up comes down first, last axis first.

    At the opening on every axis: shorter range, easier version, lighter load, one set fewer; at the
    floor of all it stays. Never higher on any axis.
    """
    prescription, exercise = rails.prescription, rails.exercise
    for axis in reversed(prescription.goes_up):
        lower = _built_down(axis, dose, rails)
        if lower is not None:
            return lower
    return (
        shorter(dose, exercise)
        or easier(dose, exercise, prescription)
        or _lighter_owned(dose, (*prescription.lighter, *rails.owned))
        or dose._replace(sets=max(1, dose.sets - 1))
    )


def _down(ladder: Ladder, day: DaySummary, rails: Rails) -> tuple[Decision | None, Dose]:
    """Why the ladder goes down today and to which dose: one step, or the table's cut.

    Where both hold, the load is the lighter of the two; few reps alone are the table's to answer.
    """
    down = why_down(ladder, day)
    cut = _by_table(ladder.dose, day, rails)
    if cut is None or day.drove is None:
        return down, ladder.dose if down is None else one_down(ladder.dose, rails)
    if down is None or (down.rule == "prog.down" and day.result == "short"):
        return dapre.decision("down", day.drove, rails.prescription), cut
    lower = one_down(ladder.dose, rails)
    return down, lower._replace(load=min(lower.load, cut.load, key=Load.rank))


def _by_table(dose: Dose, day: DaySummary, rails: Rails) -> Dose | None:
    """The table's cut of the working weight; None where it is not named, or cuts nothing."""
    if day.drove is None or not dapre.driving_set(rails.exercise, rails.prescription):
        return None
    cap = rails.prescription.load_cap
    load = dapre.next_working(dose.load, day.drove, cap, rails.owned)
    return dose._replace(load=load) if load.rank() < dose.load.rank() else None


def _lighter_owned(dose: Dose, loads: tuple[Load, ...]) -> Dose | None:
    below = [
        load
        for load in loads
        if load.kind == dose.load.kind
        and bool(load.strength) == bool(dose.load.strength)
        and load.rank() < dose.load.rank()
    ]
    return dose._replace(load=max(below, key=Load.rank)) if below else None


def _built_down(axis: str, dose: Dose, rails: Rails) -> Dose | None:
    """One step down on an axis that stands above its opening, or None."""
    prescription, exercise = rails.prescription, rails.exercise
    if axis == "load" and dose.load.rank() > prescription.load.rank():
        return _lighter_owned(dose, (prescription.load, *rails.owned))
    if axis == "versions":
        first = next((v for v in exercise.versions if v.name in prescription.versions[:1]), None)
        above = first is not None and dose.version_level > first.level
        return easier(dose, exercise, prescription) if above else None
    line = _line_of(axis, prescription)
    if line is None:
        return None
    if axis == "range":
        return shorter(dose, exercise) if dose.range_index > line.opening else None
    return _number_down(axis, dose, line)


def _number_down(axis: str, dose: Dose, line: Axis) -> Dose | None:
    """Sets, reps or hold seconds one step down, not below their opening, or None."""
    now, floor = {
        "sets": (dose.sets, line.opening),
        "reps": (dose.reps_high, line.opening_high),
        "hold": (dose.hold_s, line.opening),
    }[axis]
    lower = max(floor, now - line.step)
    if lower >= now:
        return None
    if axis == "reps":
        return dose._replace(reps_high=lower)
    return dose._replace(sets=lower) if axis == "sets" else dose._replace(hold_s=lower)


def why_down(ladder: Ladder, day: DaySummary) -> Decision | None:
    """Why the ladder goes down today, or None (ids layoff.gap, pain.next_morning, prog.down)."""
    if day.gap == "one step down":
        return Decision("layoff.gap", "down", "One step lower today, after days off.", source=_OURS)
    if day.morning_up:
        why = "One step lower today. Morning pain is above your usual."
        return Decision(
            "pain.next_morning", "down", why, basis=Basis.PUBLISHED, source="Holmgren 2012"
        )
    if day.result == "over":
        why = "One step lower today. Pain went over your limit last time."
        return Decision("prog.down", "down", why, source=_OURS)
    if day.result == "form" and ladder.form_run + 1 >= MISSED_RUNNING:
        why = "One step lower today. The same thing was off three times running."
        return Decision("prog.down", "down", why, source=_OURS)
    if day.result == "short" and day.hard:
        why = "One step lower today. The last one was very hard and reps ran short."
        return Decision("prog.down", "down", why, source=_OURS)
    return None


# ---------------------------------------------------------------- from day to day


def _lower_of(now: Dose, opening: Dose) -> Dose:
    """The opening dose, or what stands lower on an axis already: a gap never raises anything."""
    low = opening._replace(
        sets=min(now.sets, opening.sets),
        reps_low=min(now.reps_low, opening.reps_low),
        reps_high=min(now.reps_high, opening.reps_high),
        hold_s=min(now.hold_s, opening.hold_s),
    )
    if now.load.kind == opening.load.kind and now.load.rank() < opening.load.rank():
        low = low._replace(load=now.load)
    if now.range_index < opening.range_index:
        low = low._replace(range_index=now.range_index, range_step=now.range_step)
    if now.version and now.version_level < opening.version_level:
        low = low._replace(version=now.version, version_level=now.version_level)
    return low


def next_ladder(
    ladder: Ladder, day: DaySummary, rails: Rails, may_go_up: bool
) -> tuple[Ladder, Decision]:
    """The ladder for today and why (ids prog.*, layoff.gap): up, down, same, or from the start.

    `may_go_up` is the arbiter's leave. After 28 days off the ladder begins anew too, once the
    clinician has said so.
    """
    if day.gap in {"first step", "contact"}:
        why = "You begin at the first step. There were many days off."
        return Ladder(_lower_of(ladder.dose, rails.opening)), Decision(
            "layoff.gap", "first step", why, source=_OURS
        )
    counted = count_session(ladder, day)
    down, lower = _down(ladder, day, rails)
    if down is not None:
        return counted._replace(dose=_gated(lower, rails), good_run=0, form_run=0), down
    wanted = wants_up(counted, day, rails)
    if wanted is None or not may_go_up:
        return counted, Decision("prog.two_for_two", "same", "The same as last time.", source=_OURS)
    axis, higher = wanted
    moved = tuple(sorted({**dict(ladder.moved), axis: day.today.isoformat()}.items()))
    if axis == "load" and rails.prescription.dapre and day.drove is not None:
        return Ladder(higher, 0, 0, moved), dapre.decision("up", day.drove, rails.prescription)
    why = _UP_WORDS.get(axis, "One step up.")
    rule = "prog.range" if axis == "range" else "prog.two_for_two"
    source = "common practice" if axis == "range" else _SOURCE_UP
    basis = Basis.PRACTICE if axis == "range" else Basis.PUBLISHED
    up = Decision(rule, "up", why, rails.prescription.place, basis, source)
    return Ladder(higher, 0, 0, moved), up


_UP_WORDS: Final = {
    "reps": "One step up in reps. Two sessions running had two reps to spare.",
    "load": "One step up in weight. Two sessions running had two reps to spare.",
    "sets": "One set more. Two sessions running had two reps to spare.",
    "hold": "Holds are longer. Two sessions running had two to spare.",
    "range": "One step more range. Its weeks went by with no pinch.",
    "versions": "The next form. Two sessions running had two reps to spare.",
}


def count_session(ladder: Ladder, day: DaySummary) -> Ladder:
    """The runs after the last session; a stop or flare ends a good run; not done changes none."""
    if day.stopped:
        return ladder._replace(good_run=0)
    if day.result == "none":
        return ladder
    good = min(SESSIONS_RUNNING, ladder.good_run + 1) if day.result == "earned" else 0
    form = min(MISSED_RUNNING, ladder.form_run + 1) if day.result == "form" else 0
    return ladder._replace(good_run=good, form_run=form)


def _at_home(load: Load, rails: Rails) -> Load:
    """`load` where the plan has it at home (its opening always is), else the heaviest below it."""
    owned = (rails.prescription.load, *rails.prescription.lighter, *rails.owned)
    below = [
        one
        for one in owned
        if (one.kind, bool(one.strength)) == (load.kind, bool(load.strength))
        and one.rank() <= load.rank()
    ]
    return max(below, key=Load.rank) if below and load not in owned else load


def carried_over(old: Dose, rails: Rails) -> Dose:
    """The dose under a new plan version: axes go on where they are, under the new caps.

    An axis whose load kind, range or version the new plan no longer has starts again. Never above
    the new plan's caps; a load that is not comparable starts at the new opening, and one that is no
    longer at home is rounded down to one that is.
    """
    prescription, exercise, opening = rails.prescription, rails.exercise, rails.opening
    same_scale = (old.load.kind, bool(old.load.strength)) == (
        opening.load.kind,
        bool(opening.load.strength),
    )
    load = _at_home(old.load, rails) if same_scale else opening.load
    allowed = old.version in prescription.versions
    known = old.range_step in {step.name for step in exercise.ranges}
    index = next((n for n, s in enumerate(exercise.ranges) if s.name == old.range_step), 0)
    kept = old._replace(
        load=load,
        version=old.version if allowed else opening.version,
        version_level=old.version_level if allowed else opening.version_level,
        range_index=index if known else opening.range_index,
        range_step=old.range_step if known else opening.range_step,
    )
    return _gated(kept, rails)
