"""Today's list: which of the plan's exercises are offered, in which dose, and why not the rest.

Law: the list only ever shrinks from what the plan gives. Every dose passes `limits.gate` last, on
each way to a turn (`dose_today` is that way), and every change carries its decision.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from coach.model.decisions import Decision, Refusal
from coach.model.quantities import Dose, Load
from coach.rules import dapre, dosing, limits, readiness
from coach.session import noting
from coach.session.brief import Brief, Station, past_facts
from coach.session.ladders import ALL, Standing
from coach.session.state import State


class NoDoseError(LookupError):
    """A dose was asked for that the plan does not hold: a fault of ours, since lists leave it out."""


NO_WORK: Final = 2  # a level of the day: 0 all work, 1 gentle only, 2 none
MOVED: Final = frozenset({"up", "down", "first step"})
AXIS_CHANGES: Final = ("shorter range", "easier version", "lighter")


def compose(state: State) -> State:
    """The day's list and the decisions behind it; an empty list leaves `todo` empty."""
    brief = state.brief
    reasons = list(state.reasons)
    state = by_effects_on_the_day(state)
    if state.level == NO_WORK:
        return state._replace(todo=(), reasons=tuple(reasons))
    if brief.week.outcome == "rest":
        return state._replace(todo=(), reasons=(*reasons, brief.week))
    places = allowed_by_lists(state, reasons)
    places = [p for p in places if may_be_done(state, p, reasons)]
    places = within_limits(state, places, reasons)
    reasons += moves(state, places)
    news = noting.new_version(brief)
    reasons += [news] if news else []
    worked = [r for r in brief.history.records if r.ended != "none"]
    note = noting.next_phase_shown(brief, past_facts(brief, worked))
    return state._replace(
        happened=(*state.happened, note) if note else state.happened,
        todo=tuple(places),
        exercises_today=len(places),
        reasons=tuple(dict.fromkeys(reasons)),
    )


def moves(state: State, places: list[int]) -> list[Decision]:
    """Why a listed exercise stands higher or lower than last time."""
    found = [standing(state, state.brief.stations[p].exercise.name) for p in places]
    return [one.decision for one in found if one and one.decision.outcome in MOVED]


def by_effects_on_the_day(state: State) -> State:
    """The script's effects on the whole day: gentle list, recovery list, rest day."""
    wanted = {target for effect, target in state.lowered if effect == "today"}
    if "rest day" in wanted:
        state = state._replace(level=NO_WORK)
    if "gentle list only" in wanted:
        state = state._replace(level=max(state.level, 1))
    if "recovery list only" in wanted:
        state = state._replace(recovery=True)
    return state


def allowed_by_lists(state: State, reasons: list[Decision]) -> list[int]:
    """The phase's places, or, while a list is in force, what every list in force holds."""
    lists = lists_in_force(state, reasons)
    if not lists:
        return list(range(state.brief.phase_count))
    return on_the_lists(state, lists, range(len(state.brief.stations)))


def lists_in_force(state: State, reasons: list[Decision]) -> list[tuple[str, ...]]:
    """The lists that hold today: recovery, gentle, twice a day; none on a day of all work."""
    brief, program = state.brief, state.brief.program
    lists: list[tuple[str, ...]] = []
    if state.recovery:
        lists.append(program.recovery)
    if state.level == 1:
        lists.append(program.gentle)
    if brief.second.outcome != "first":
        reasons.append(brief.second)
        lists.append(program.twice_a_day)
    if state.order == "after throwing":
        lists.append(program.gentle)
    return lists


def on_the_lists(state: State, lists: list[tuple[str, ...]], places: Iterable[int]) -> list[int]:
    """The places that every list in force holds; before throwing none with a load."""
    brief, waits = state.brief, state.order == "after throwing"
    held = [p for p in places if all(p in named(brief, names) for names in lists)]
    return [p for p in held if not (waits and loaded(brief.stations[p]))]


def still_allowed(
    state: State, places: tuple[int, ...]
) -> tuple[tuple[int, ...], tuple[Decision, ...]]:
    """Of a list already made, the places that today still allows, and what decided it.

    Nothing is added: a list that comes into force now only takes away.
    """
    reasons: list[Decision] = []
    state = by_effects_on_the_day(state)
    if state.level == NO_WORK:
        return (), ()
    kept = on_the_lists(state, lists_in_force(state, reasons), places)
    kept = [place for place in kept if may_be_done(state, place, reasons)]
    return tuple(kept), tuple(reasons)


def named(brief: Brief, names: tuple[str, ...]) -> list[int]:
    """The places of the named exercises, in the day's order."""
    return [p for p, s in enumerate(brief.stations) if s.exercise.name in names]


def loaded(station: Station) -> bool:
    """Whether an exercise is work with a weight, band or ball."""
    return station.exercise.load != "none"


def may_be_done(state: State, place: int, reasons: list[Decision]) -> bool:
    """Locks, spacing, equipment and the script's `leave out`, one place at a time."""
    brief, station = state.brief, state.brief.stations[place]
    name = station.exercise.name
    if brief.locks[name].outcome == "locked":
        return False
    if lowered_by(state, name, "leave out"):
        return False
    if name not in brief.program.twice_a_day:
        spacing = brief.spacing[name]
        if spacing.outcome == "wait":
            reasons.append(spacing)
            return False
    gear = readiness.equipment(station.exercise, station.prescription, at_hand(state))
    if gear.outcome != "at hand":
        reasons.append(gear)
    if gear.outcome.startswith("other: "):
        return False
    if gear.outcome == "leave out" or isinstance(plain_dose(state, station), Refusal):
        return False
    return room_for_effects(state, station)


def room_for_effects(state: State, station: Station) -> bool:
    """Whether every change a script asked of this exercise has room; none left = left out."""
    dose = plain_dose(state, station)
    for change in AXIS_CHANGES:
        if isinstance(dose, Refusal):
            return False
        if lowered_by(state, station.exercise.name, change):
            lower = changed(dose, change, station)
            if lower is None:
                return False
            dose = lower
    return True


def at_hand(state: State) -> tuple[str, ...]:
    """What is here today: all the plan lists at home, less what was said to be missing."""
    return tuple(thing for thing in state.brief.plan.at_home if thing not in state.gone)


def loads_here(state: State) -> tuple[Load, ...]:
    """The loads of the plan that are here today."""
    here = at_hand(state)
    return tuple(load for load in state.brief.plan.loads_at_home if load.words() in here)


def driving_today(state: State, station: Station, dose: Dose) -> int:
    """prog.dapre: the set that drives the next weight; 0 where today's dose is not the ladder's.

    A set lowered for the day, or done with something else, says nothing of the working weight.
    """
    plain = plain_dose(state, station)
    if isinstance(plain, Refusal) or dose != plain._replace(sets=dose.sets):
        return 0
    if dose.load not in loads_here(state):
        return 0
    return dapre.driving_set(station.exercise, station.prescription)


def within_limits(state: State, places: list[int], reasons: list[Decision]) -> list[int]:
    """The plan's caps on exercises and minutes a session."""
    brief = state.brief
    kept = places[: brief.plan.limits.exercises]
    doses = [(brief.stations[p].exercise.name, dose_today(state, p)) for p in kept]
    fit = limits.fit_minutes(tuple(doses), brief.plan.limits.minutes)
    if fit < len(places):
        reasons.append(limits.cut_short(brief.plan.limits))
    return kept[:fit]


def lowered_by(state: State, name: str, effect: str) -> bool:
    """Whether a script lowered this exercise, or all of them, by `effect` today."""
    return (effect, name) in state.lowered or (effect, "all") in state.lowered


def held_today(state: State) -> tuple[str, ...]:
    """What may not go up today: nothing may on a sore or gentle day, or the day before a match."""
    if state.no_step or state.level or ("no step up", ALL) in state.lowered:
        return (ALL,)
    return tuple(sorted(name for effect, name in state.lowered if effect == "no step up"))


def standing(state: State, name: str) -> Standing | None:
    """Where the exercise's ladder stands today; None for one without (the warm-up's)."""
    held = held_today(state)
    return state.brief.standings(morning_up=state.morning_up, held=held).get(name)


def plain_dose(state: State, station: Station) -> Dose | Refusal:
    """dose.from_plan: the dose where the ladder stands, or the plan's refusal."""
    found = standing(state, station.exercise.name)
    if found is not None:
        return found.ladder.dose
    return dosing.opening_dose(station.exercise, station.prescription)


def dose_today(state: State, place: int, station: Station | None = None) -> Dose:
    """The dose shown today: the ladder's, lowered by the night and the scripts, then gated."""
    station = station or state.brief.stations[place]
    dose = plain_dose(state, station)
    if isinstance(dose, Refusal):
        raise NoDoseError(dose.rule)
    name = station.exercise.name
    fewer = 1 if lowered_by(state, name, "one set fewer") else 0
    dose = dosing.dose_for_today(dose, state.short, fewer)
    for change in AXIS_CHANGES:
        if lowered_by(state, name, change):
            dose = changed(dose, change, station) or dose
    return limits.gate(dose, station.prescription, station.exercise)


def changed(dose: Dose, change: str, station: Station) -> Dose | None:
    """The dose one change lower, or None where there is no room."""
    if change == "shorter range":
        return dosing.shorter(dose, station.exercise)
    if change == "easier version":
        return dosing.easier(dose, station.exercise, station.prescription)
    return dosing.lighter(dose, station.prescription)
