"""Small changes of a plan, one at a time: a ceiling, a cap, a dose, a date, a word left out.

Law: each change is one a slip of the pen could make in one line of the plan.
"""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING, Any, Final, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from coach.model.program import Axis, Place, Plan, Prescription

MINUTES_BY: Final = 5
REST_BY_S: Final = 15
HOLD_BY_S: Final = 5


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
    yield from _left_out(plan)
    if plan.throwing_line is not None:
        yield from _of_throwing(plan)
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
    new = (date.fromisoformat(getattr(plan, name)) + timedelta(days=by)).isoformat()
    what = _says(plan, f"{name.replace('_', ' ')} {new}")
    return PlanChange(plan.runs_place, what, "", _put(name, new))


def _left_out(plan: Plan) -> Iterator[PlanChange]:
    for name in ("opened", "clearance", "at_home"):
        for one in getattr(plan, name):
            words = getattr(one, "what", one)
            what = _says(plan, f"{name.replace('_', ' ')} {words}: left out")
            yield PlanChange(plan.place, what, "", _without(name, one))
    if plan.guardian_present and plan.guardian is not None:
        yield PlanChange(
            plan.place,
            _says(plan, "guardian present at the first session only"),
            "",
            lambda p: p._replace(guardian_present="first session"),
        )
    other = "left" if plan.side == "right" else "right"
    what = _says(plan, f"side {other}")
    yield PlanChange(plan.side_place, what, "", lambda p: p._replace(side=other))


def _put(name: str, value: Any) -> Callable[[Plan], Plan]:  # noqa: ANN401  any field of a plan
    change: dict[str, Any] = {name: value}
    return lambda p: p._replace(**change)


def _without(name: str, one: object) -> Callable[[Plan], Plan]:
    return lambda p: _put(name, tuple(x for x in getattr(p, name) if x != one))(p)


def _of_throwing(plan: Plan) -> Iterator[PlanChange]:
    """Steps and days of the throwing line, in its words and in what was read of them."""
    line = plan.throwing_line
    if line is None:
        return
    for name, said in (
        ("from_step", "from step"),
        ("most_step", "at most step"),
        ("apart_days", "apart"),
    ):
        for by in (-1, 1):
            old = getattr(line, name)
            what = _says(plan, f"throwing {said} {old} to {old + by}")
            text = plan.throwing.replace(f"{said} {old}", f"{said} {old + by}")
            new = line._replace(**{name: old + by})
            yield PlanChange(
                line.place,
                what,
                "",
                lambda p, n=new, t=text: p._replace(throwing_line=n, throwing=t),  # type: ignore[misc]
            )


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


def _of_load(dose: Prescription, change: Callable[..., PlanChange]) -> Iterator[PlanChange]:
    place = dose.load_place or dose.place
    if dose.load.unit:
        for by in (-1.0, 1.0):
            load = dose.load._replace(amount=dose.load.amount + by)
            cap = dose.load_cap if dose.load_step else load
            yield change(f"load {load.amount:g} {load.unit}", place, load=load, load_cap=cap)
    if dose.load_step:
        for by in (-dose.load_step, dose.load_step):
            top = dose.load_cap._replace(amount=dose.load_cap.amount + by)
            yield change(f"load at most {top.amount:g} {top.unit}", place, load_cap=top)
    for load in dose.lighter:
        fewer = tuple(other for other in dose.lighter if other != load)
        yield change(f"lighter {load.words()}: left out", place, lighter=fewer)
