"""Small changes of a plan, one at a time: a ceiling, a cap, a dose, a date, a word left out.

Law: each change is one a slip of the pen could make in one line of the plan.
"""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING, Any, Final, NamedTuple

from coach.model.throws import ThrowStep
from coach.rules.dapre import DRIVERS
from coach.rules.throwing import class_words

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from coach.model.program import Axis, Place, Plan, Prescription
    from coach.model.quantities import Load

MINUTES_BY: Final = 5
REST_BY_S: Final = 15
HOLD_BY_S: Final = 5
RISES: Final = {"lb": 5.0, "kg": 2.5}  # the smallest step of the table, by unit
WRONG_NUMBER: Final = "555 0100"  # nobody's


class PlanChange(NamedTuple):
    """A change: where, in words, the exercise it is about ('' for the day), and how to make it."""

    place: Place
    what: str
    exercise: str
    make: Callable[[Plan], Plan]


def plan_changes(plan: Plan) -> Iterator[PlanChange]:
    """Every change of a plan."""
    for name in ("usual", "to_start", "in_exercise", "gentle", "in_throwing"):
        for by in (-1, 1):
            if getattr(plan.pain, name) + by >= 0:
                yield _moved(plan, "pain", name, by)
    for name, by in (("exercises", 1), ("minutes", MINUTES_BY), ("sessions_a_week", 1)):
        yield _moved(plan, "limits", name, -by)
        yield _moved(plan, "limits", name, by)
    for name in ("starts", "review_by"):
        for by in (-1, 1):
            yield _dated(plan, name, by)
    yield from _of_phase(plan)
    yield from _left_out(plan)
    yield from _of_people(plan)
    yield from _of_rules(plan)
    yield from _of_throwing(plan)
    yield from _of_own_steps(plan)
    yield from _of_game_pitches(plan)
    for number in range(len(plan.doses)):
        yield from _of_dose(plan, number)


def _says(plan: Plan, words: str) -> str:
    return f"plan {plan.name}: {words}"


def _moved(plan: Plan, part: str, name: str, by: float) -> PlanChange:
    own = getattr(plan, part)
    value = getattr(own, name)
    what = _says(plan, f"{part} {name.replace('_', ' ')} {value:g} to {value + by:g}")

    def made(p: Plan) -> Plan:
        return p._replace(**{part: getattr(p, part)._replace(**{name: value + by})})

    return PlanChange(own.place, what, "", made)


def _dated(plan: Plan, name: str, by: int) -> PlanChange:
    new = _later(getattr(plan, name), by)
    what = _says(plan, f"{name.replace('_', ' ')} {new}")
    return PlanChange(plan.runs_place, what, "", _put(name, new))


def _of_phase(plan: Plan) -> Iterator[PlanChange]:
    for by in (-1, 1):
        day = _later(plan.phase_opened.day, by)
        opened = plan.phase_opened._replace(day=day)
        what = _says(plan, f"phase opened {day}")
        yield PlanChange(opened.place, what, "", _put("phase_opened", opened))


def _later(day: str, by: int) -> str:
    return (date.fromisoformat(day) + timedelta(days=by)).isoformat()


def _left_out(plan: Plan) -> Iterator[PlanChange]:
    for name in ("opened", "clearance", "at_home"):
        for one in getattr(plan, name):
            words = getattr(one, "what", one)
            what = _says(plan, f"{name.replace('_', ' ')} {words}: left out")
            yield PlanChange(plan.place, what, "", _without(name, one))
    for load in filter(_a_step_of(plan), plan.loads_at_home):
        what = _says(plan, f"load at home {load.words()}: left out")
        yield PlanChange(plan.place, what, "", _without("loads_at_home", load))
    for number, one in enumerate(plan.opened):
        for by in (-1, 1):
            other = one._replace(day=_later(one.day, by))
            every = (*plan.opened[:number], other, *plan.opened[number + 1 :])
            what = _says(plan, f"opened {one.what} {other.day}")
            yield PlanChange(one.place, what, "", _put("opened", every))


def _a_step_of(plan: Plan) -> Callable[[Load], bool]:
    """Whether a dose of the plan may rise to a load; other loads at home decide nothing."""
    rising = [dose for dose in plan.doses if dose.load_step or dose.dapre]

    def wanted(load: Load) -> bool:
        return any(
            load.kind == dose.load.kind and dose.load.rank() < load.rank() <= dose.load_cap.rank()
            for dose in rising
        )

    return wanted


# ---------------------------------------------------------------- people, and a plan's own rules


def _of_people(plan: Plan) -> Iterator[PlanChange]:
    """Side, name and age, an operation, who must be there, and whom to call."""
    other = "left" if plan.side == "right" else "right"
    yield PlanChange(plan.side_place, _says(plan, f"side {other}"), "", _put("side", other))
    yield PlanChange(plan.place, _says(plan, "initials X.X."), "", _put("initials", "X.X."))
    for born in _a_month_off(plan.born):
        yield PlanChange(plan.place, _says(plan, f"born {born}"), "", _put("born", born))
    surgery = "none" if plan.surgery != "none" else f"{plan.starts}, made up"
    yield PlanChange(plan.place, _says(plan, f"surgery {surgery}"), "", _put("surgery", surgery))
    if plan.guardian is not None:
        first = "first session" if plan.guardian_present == "every session" else "every session"
        what = _says(plan, f"guardian present at {first}")
        yield PlanChange(plan.place, what, "", _put("guardian_present", first))
        guardian = plan.guardian._replace(number=WRONG_NUMBER)
        what = _says(plan, "another number of the guardian")
        yield PlanChange(plan.place, what, "", _put("guardian", guardian))
    for name in ("emergency", "crisis", "clinician", "urgent"):
        call = getattr(plan.calls, name)
        if call is not None:
            new: Any = {name: call._replace(number=WRONG_NUMBER)}
            what = _says(plan, f"another number of {name}")
            yield PlanChange(plan.calls.place, what, "", _put("calls", plan.calls._replace(**new)))


def _a_month_off(born: str) -> Iterator[str]:
    year, month = (int(part) for part in born.split("-"))
    for by in (-1, 1):
        months = year * 12 + month - 1 + by
        yield f"{months // 12:04}-{months % 12 + 1:02}"


def _of_rules(plan: Plan) -> Iterator[PlanChange]:
    """A number that the plan changed: left out, lower, higher."""
    for number, (rule, value) in enumerate(plan.changed):
        place = plan.changed_places[number] if plan.changed_places else plan.place
        rest = (*plan.changed[:number], *plan.changed[number + 1 :])
        what = _says(plan, f"changed rule {rule}: left out")
        yield PlanChange(place, what, "", _put("changed", rest))
        for by in (-1, 1):
            pairs = (*plan.changed[:number], (rule, value + by), *plan.changed[number + 1 :])
            what = _says(plan, f"changed rule {rule} {value + by:g}")
            yield PlanChange(place, what, "", _put("changed", pairs))


def _put(name: str, value: Any) -> Callable[[Plan], Plan]:  # noqa: ANN401  any field of a plan
    change: dict[str, Any] = {name: value}
    return lambda p: p._replace(**change)


def _without(name: str, one: object) -> Callable[[Plan], Plan]:
    return lambda p: _put(name, tuple(x for x in getattr(p, name) if x != one))(p)


def _of_throwing(plan: Plan) -> Iterator[PlanChange]:
    """Steps, days, class and date of the throwing line; and no clearance at all."""
    line = plan.throwing_line
    if line is None:
        return
    for name, said in (
        ("from_step", "from step"),
        ("most_step", "at most step"),
        ("apart_days", "apart"),
        ("sessions_a_step", "sessions a step"),
    ):
        old = getattr(line, name)
        for new in (old - 1, old + 1) if old else ():
            yield _throwing(plan, f"{said} {old}", f"{said} {new}", **{name: new})
    for by in (-1, 1):
        day = _later(line.cleared, by)
        yield _throwing(plan, f"cleared {line.cleared}", f"cleared {day}", cleared=day)
    if line.class_name:
        yield _throwing(plan, f", {class_words(line.class_name)}", "", class_name="")
    what = _says(plan, "throwing not cleared")
    yield PlanChange(line.place, what, "", lambda p: p._replace(throwing_line=None))


def _of_own_steps(plan: Plan) -> Iterator[PlanChange]:
    """One more and one fewer in the step that the plan begins with."""
    line, table = plan.throwing_line, plan.own_steps
    if line is None or table is None or line.table != table.name:
        return
    at = line.from_step - 1
    *sets, (*parts, last) = table.steps[at].sets
    for by in (-1, 1):
        step = ThrowStep((*sets, (*parts, last._replace(throws=last.throws + by))))
        steps = (*table.steps[:at], step, *table.steps[at + 1 :])
        what = _says(plan, f"throwing step {line.from_step}: {last.throws} to {last.throws + by}")
        yield PlanChange(line.place, what, "", _put("own_steps", table._replace(steps=steps)))


def _of_game_pitches(plan: Plan) -> Iterator[PlanChange]:
    """An edition or the catcher left out, and the whole line."""
    line = plan.game_pitches
    if line is None:
        return
    for edition in line.editions if len(line.editions) > 1 else ():
        fewer = line._replace(editions=tuple(one for one in line.editions if one != edition))
        what = _says(plan, f"game pitches, {edition}: left out")
        yield PlanChange(line.place, what, "", _put("game_pitches", fewer))
    if "catcher" in line.positions:
        what = _says(plan, "game pitches, catcher: left out")
        change = _put("game_pitches", line._replace(positions=("pitcher",)))
        yield PlanChange(line.place, what, "", change)
    what = _says(plan, "game pitches: left out")
    yield PlanChange(line.place, what, "", _put("game_pitches", None))


def _throwing(plan: Plan, old: str, new: str, **change: Any) -> PlanChange:  # noqa: ANN401  any field
    """Another piece of the throwing line, in its words."""
    line = plan.throwing_line
    words = f"throwing {old} to {new}" if new else f"throwing{old.replace(',', '')}: left out"
    place = line.place if line is not None else plan.place

    def made(p: Plan) -> Plan:
        read = p.throwing_line
        moved = read._replace(**change) if read is not None else None
        return p._replace(throwing_line=moved)

    return PlanChange(place, _says(plan, words), "", made)


# ---------------------------------------------------------------- doses


def _of_dose(plan: Plan, number: int) -> Iterator[PlanChange]:
    dose = plan.doses[number]

    def change(words: str, place: Place, **new: Any) -> PlanChange:  # noqa: ANN401 - any field
        def made(p: Plan) -> Plan:
            doses = list(p.doses)
            doses[number] = doses[number]._replace(**new)
            return p._replace(doses=tuple(doses))

        return PlanChange(place, _says(plan, f"{dose.exercise}, {words}"), dose.exercise, made)

    for name, by in (("sets", 1), ("reps", 1), ("hold", HOLD_BY_S), ("range", 1)):
        axis = getattr(dose, name)
        if axis is not None:
            for words, new in _axis_changes(axis, by):
                yield change(f"{name} {words}", axis.place, **{name: new})
    yield from _of_load(dose, change)
    yield from _of_days_and_gear(dose, change)


def _of_days_and_gear(
    dose: Prescription, change: Callable[..., PlanChange]
) -> Iterator[PlanChange]:
    for by in (-REST_BY_S, REST_BY_S):
        yield change(f"rest {dose.rest_s + by} s", dose.place, rest_s=dose.rest_s + by)
    for days in (dose.apart_days - 1, dose.apart_days + 1):
        if days:
            yield change(f"apart {days} days", dose.place, apart_days=days)
    if dose.tempo:
        yield change("tempo: left out", dose.place, tempo="")
    for version in dose.versions if len(dose.versions) > 1 else ():
        left = tuple(other for other in dose.versions if other != version)
        yield change(f"version {version}: left out", dose.place, versions=left)
    if len(dose.goes_up) > 1:
        turned = dose.goes_up[::-1]
        yield change(f"goes up by {', '.join(turned)}", dose.place, goes_up=turned)
    for pair in dose.without:
        rest = tuple(other for other in dose.without if other != pair)
        yield change(f"without {pair[0]}: left out", dose.place, without=rest)
    for axis_name in dose.goes_up:
        rest_up = tuple(other for other in dose.goes_up if other != axis_name)
        yield change(f"goes up by {axis_name}: left out", dose.place, goes_up=rest_up)


def _axis_changes(axis: Axis, by: int) -> Iterator[tuple[str, Axis]]:
    """What a slip could make of one dose line: its opening, its cap, its step, its days."""
    for way in (-by, by):
        low, high = axis.opening + way, axis.opening_high + way
        if low < 0 or (axis.step and not low <= high <= axis.cap):
            continue
        cap = axis.cap if axis.step else axis.cap + way
        yield f"opening {high}", axis._replace(opening=low, opening_high=high, cap=cap)
    if axis.step:
        for cap in (axis.cap - by, axis.cap + by):
            if cap >= axis.opening_high:
                yield f"at most {cap}", axis._replace(cap=cap)
        yield f"up by {axis.step + 1}", axis._replace(step=axis.step + 1)
    if axis.after_days:
        for days in (axis.after_days - 1, axis.after_days + 1):
            yield f"after {days} days", axis._replace(after_days=days)


def _of_table(
    dose: Prescription, place: Place, change: Callable[..., PlanChange]
) -> Iterator[PlanChange]:
    """What a slip could make of a load that goes by a table: its cap, and the set that drives it."""
    step = RISES[dose.load.unit]
    for by in (-step, step):
        top = dose.load_cap._replace(amount=dose.load_cap.amount + by)
        yield change(f"load at most {top.amount:g} {top.unit}", place, load_cap=top)
    for drives in sorted({0, *DRIVERS} - {dose.dapre}):
        words = f"dapre from set {drives}" if drives else "dapre: left out"
        yield change(words, place, dapre=drives)


def _of_load(dose: Prescription, change: Callable[..., PlanChange]) -> Iterator[PlanChange]:
    place = dose.load_place or dose.place
    if dose.load.unit:
        for by in (-1.0, 1.0):
            load = dose.load._replace(amount=dose.load.amount + by)
            cap = dose.load_cap if dose.load_step or dose.dapre else load
            yield change(f"load {load.amount:g} {load.unit}", place, load=load, load_cap=cap)
    if dose.load_step:
        for by in (-dose.load_step, dose.load_step):
            top = dose.load_cap._replace(amount=dose.load_cap.amount + by)
            yield change(f"load at most {top.amount:g} {top.unit}", place, load_cap=top)
        for step in (dose.load_step / 2, dose.load_step * 2):
            yield change(f"load up by {step:g} {dose.load.unit}", place, load_step=step)
    if dose.dapre:
        yield from _of_table(dose, place, change)
    for days in (dose.load_after_days - 1, dose.load_after_days + 1):
        if dose.load_after_days and days:
            yield change(f"load after {days} days", place, load_after_days=days)
    for load in dose.lighter:
        fewer = tuple(other for other in dose.lighter if other != load)
        yield change(f"lighter {load.words()}: left out", place, lighter=fewer)
