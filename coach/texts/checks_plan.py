"""What must agree between a plan and its program before a session may use them.

Law: every check is a function in the list at the end, run always, in that order; it notes and
never mends. A plan looser than a wall is a finding, never trimmed in silence.
"""

from __future__ import annotations

import datetime
from typing import Final

from coach.model.program import Exercise, Place, Plan, Prescription, Program, Wall
from coach.model.quantities import KG_PER_LB, Load
from coach.rules.throwing import table_of
from coach.texts import facts, values
from coach.texts.checks_dapre import check_dapre
from coach.texts.game_pitches import check_game_pitches
from coach.texts.margin import Margin

ADULT: Final = 18  # years; a guardian is needed below; law and practice
LONGEST_RUN_DAYS: Final = 183  # half a year before a review; set here, to be signed
# dose.light_cuff: opens at 2 lb (1 kg), cap 3 lb; common practice, no published source. That light
# is the point: Bitter 2007, best between 10 and 40 percent of the most a person can push.
LIGHT_CUFF_LB: Final = (2.0, 3.0)
LIGHT_CUFF_KG: Final = (1.0, 1.5)
TWO_OVER_THE_TOP: Final = 2  # reps; the step up asks for two over the range
MOST_STEP: Final = 0.10  # of the load; prog.step, American College of Sports Medicine 2009
RANGE_DAYS: Final = 56  # prog.range: 8 to 12 weeks in all; common practice


def check_plan(plan: Plan, program: Program, margin: Margin) -> None:
    """Note everything in which the plan and the program do not agree."""
    _check_people(plan, margin)
    _check_dates(plan, margin)
    _check_exercises_dosed(plan, program, margin)
    _check_phase_offers_something(plan, program, margin)
    _check_clearance(plan, margin)
    by_name = {exercise.name: exercise for exercise in program.exercises}
    for dose in plan.doses:
        exercise = by_name[dose.exercise]
        _check_lock(dose, exercise, plan, margin)
        _check_home(dose, exercise, plan, program, margin)
        _check_load_steps(dose, plan, margin)
        _check_reps_room(dose, margin)
        _check_range_pace(dose, margin)
        _check_goes_up(dose, exercise, margin)
        _check_light_cuff(dose, exercise, margin)
        check_dapre(dose, exercise, plan, margin)
    for wall in program.walls:
        _check_wall(wall, plan, margin)


def _check_people(plan: Plan, margin: Margin) -> None:
    if not plan.born or not plan.starts:
        return
    age = values.years_between(plan.born, plan.starts)
    if age < ADULT and plan.guardian is None:
        what = f"The athlete is {age} when the plan starts, and no guardian is named."
        write = "guardian: INITIALS, present at every session, NUMBER"
        margin.note("guardian.missing", plan.place, what, write)
    _check_throwing_age(plan, age, margin)
    check_game_pitches(plan, age, margin)
    if not 7 <= age <= 100:  # noqa: PLR2004  a slip of typing, set here
        what = f"The athlete would be {age} years old when the plan starts."
        margin.note("plan.age", plan.place, what)


def _check_throwing_age(plan: Plan, age: int, margin: Margin) -> None:
    line, table = plan.throwing_line, table_of(plan)
    least = table.least_age if table else 0
    if line is not None and age < least:
        what = f'The table "{line.table}" is for {least} years and over; the athlete is {age}.'
        margin.note("throwing.age", line.place, what)


def _check_dates(plan: Plan, margin: Margin) -> None:
    if not plan.starts or not plan.review_by:
        return
    if plan.review_by <= plan.starts:
        what = f"The review {plan.review_by} is not after the start {plan.starts}."
        margin.note("dates.review", plan.runs_place, what)
        return
    if _days_between(plan.starts, plan.review_by) > LONGEST_RUN_DAYS:
        what = "More than half a year lies between start and review."
        margin.note("dates.long_run", plan.runs_place, what)
    opened = plan.phase_opened
    if opened.day > plan.starts:
        what = f"The phase was opened {opened.day}, after the start {plan.starts}."
        margin.note("dates.phase", opened.place, what, also=plan.runs_place)
    _check_late(plan, margin)


def _check_late(plan: Plan, margin: Margin) -> None:
    for one in plan.opened:
        if one.day > plan.review_by:
            what = f'"{one.what}" opens {one.day}, after the review {plan.review_by}.'
            margin.note("dates.opened", one.place, what, also=plan.runs_place)
    line = plan.throwing_line
    if line is not None and line.cleared > plan.review_by:
        what = f"Throwing is cleared {line.cleared}, after the review {plan.review_by}."
        margin.note("dates.throwing", line.place, what, also=plan.runs_place)
    surgery = plan.surgery[:10]
    if surgery[:2] in ("19", "20") and surgery > plan.starts:
        what = f"The surgery {surgery} lies after the start {plan.starts}."
        margin.note("dates.surgery", plan.runs_place, what)


def _days_between(first: str, last: str) -> int:
    return (datetime.date.fromisoformat(last) - datetime.date.fromisoformat(first)).days


def _check_exercises_dosed(plan: Plan, program: Program, margin: Margin) -> None:
    dosed = {dose.exercise: dose.place for dose in plan.doses}
    for exercise in program.exercises:
        if exercise.name in dosed and exercise.name in plan.not_used:
            what = f'"{exercise.name}" has a dose and stands under "not used".'
            margin.note("dose.and_not_used", dosed[exercise.name], what)
        unread = margin.errors_in(plan.place.file)
        if exercise.name not in dosed and exercise.name not in plan.not_used and not unread:
            what = f'"{exercise.name}" has no dose and is not named under "not used".'
            write = f"not used: {', '.join((*plan.not_used, exercise.name))}"
            margin.note("dose.missing", plan.place, what, write, also=exercise.place)


def _check_phase_offers_something(plan: Plan, program: Program, margin: Margin) -> None:
    phase = next((phase for phase in program.phases if phase.name == plan.phase), None)
    if phase is None or margin.errors_in(plan.place.file):
        return
    dosed = {dose.exercise for dose in plan.doses}
    if not dosed.intersection(phase.exercises):
        what = f'No exercise of the phase "{plan.phase}" has a dose.'
        margin.note("phase.nothing_dosed", plan.phase_opened.place, what, also=phase.place)


def _check_clearance(plan: Plan, margin: Margin) -> None:
    if plan.words and "by word" not in plan.clearance:
        what = 'The plan holds clearance words, but "clearance" does not say "by word".'
        margin.note("clearance.words_unused", plan.place, what)


def _check_lock(dose: Prescription, exercise: Exercise, plan: Plan, margin: Margin) -> None:
    if exercise.family not in facts.LOCKED_FAMILIES:
        return
    if exercise.family not in [one.what for one in plan.opened]:
        what = f'"{exercise.name}" has a dose, and its family "{exercise.family}" is locked.'
        write = f"opened: {exercise.family} DATE by WHO"
        margin.note("lock.not_opened", dose.place, what, write, also=exercise.place)


# ---------------------------------------------------------------- equipment and loads at home


def _check_home(
    dose: Prescription,
    exercise: Exercise,
    plan: Plan,
    program: Program,
    margin: Margin,
) -> None:
    _check_load_at_home(dose, plan, margin)
    handled = dict(dose.without)
    for equipment in exercise.equipment:
        if equipment == exercise.load or _is_at_home(equipment, plan) or equipment in handled:
            continue
        what = f'"{exercise.name}" needs "{equipment}", which is not at home.'
        write = f"at home: {', '.join((*plan.at_home, equipment))}"
        margin.note("home.equipment", dose.place, what, write, also=exercise.place)
    for equipment, instead in dose.without:
        if instead == "stand-in":
            _check_stand_in(dose, exercise, equipment, margin)
        else:
            _check_instead(dose, exercise, equipment, instead, plan, program, margin)


def _is_at_home(equipment: str, plan: Plan) -> bool:
    kinds = {load.kind for load in plan.loads_at_home}
    return equipment in plan.at_home or equipment in kinds


def _check_stand_in(dose: Prescription, exercise: Exercise, equipment: str, margin: Margin) -> None:
    if equipment not in dict(exercise.stand_in):
        what = f'"{exercise.name}" says no stand-in for "{equipment}".'
        margin.note("equipment.no_stand_in", dose.place, what, also=exercise.place)


def _check_instead(
    dose: Prescription,
    exercise: Exercise,
    equipment: str,
    instead: str,
    plan: Plan,
    program: Program,
    margin: Margin,
) -> None:
    """The other exercise has a dose, stands in a phase with this one, and needs no such thing."""
    other = next((one for one in program.exercises if one.name == instead), None)
    together = any({instead, dose.exercise} <= set(p.exercises) for p in program.phases)
    if other is None or instead not in [d.exercise for d in plan.doses]:
        why = "which has no dose"
    elif not together:
        why = "which is in no phase with it"
    elif equipment in other.equipment:
        why = "which needs it too"
    else:
        return
    what = f'"without {equipment}" names "{instead}", {why}.'
    write = f"without {equipment}: stand-in" if equipment in dict(exercise.stand_in) else ""
    margin.note("equipment.instead", dose.place, what, write)


def _check_load_at_home(dose: Prescription, plan: Plan, margin: Margin) -> None:
    if dose.load.kind == "none" or dose.load_place is None:
        return
    if dose.load not in plan.loads_at_home:
        what = f"The opening load, {dose.load.words()}, is not at home."
        write = f"at home: {', '.join((*plan.at_home, dose.load.words()))}"
        margin.note("load.not_at_home", dose.load_place, what, write)


def _check_load_steps(dose: Prescription, plan: Plan, margin: Margin) -> None:
    if dose.load_place is None:
        return
    if dose.load_step and dose.load_step > dose.load.amount * MOST_STEP + 1e-9:
        unit = dose.load.unit
        what = (
            f"A step of {dose.load_step:g} {unit} is over 10 % of {dose.load.amount:g} {unit}, "
            "so it is never taken."
        )
        write = f"load: {_line_words(dose.load)} only"
        margin.note("load.step_over_tenth", dose.load_place, what, write)
        return
    if dose.load_step and not _next_at_home(dose, plan):
        what = f"The next load over {dose.load.words()} is not at home, so no step is taken."
        margin.note("load.step_not_at_home", dose.load_place, what)


def _line_words(load: Load) -> str:
    return load.words().removesuffix(f" {load.kind}") if not load.strength else load.words()


def _next_at_home(dose: Prescription, plan: Plan) -> bool:
    step_cap = dose.load.amount + dose.load_step + 1e-9
    return any(
        home.kind == dose.load.kind
        and home.unit == dose.load.unit
        and dose.load.amount < home.amount <= min(step_cap, dose.load_cap.amount)
        for home in plan.loads_at_home
    )


# ---------------------------------------------------------------- ladders


def _check_reps_room(dose: Prescription, margin: Margin) -> None:
    rises = dose.reps.step or dose.load_step
    room = dose.reps.cap - dose.reps.opening_high
    if rises and 0 <= room < TWO_OVER_THE_TOP:
        what = f"The cap of {dose.reps.cap} reps leaves no two over the top, so nothing goes up."
        low = dose.reps.opening
        write = f"reps: {low} to {dose.reps.opening_high} only"
        margin.note("dose.no_two_over", dose.reps.place, what, write)


def _check_range_pace(dose: Prescription, margin: Margin) -> None:
    steps = dose.range
    if steps is None or not steps.after_days:
        return
    days = (steps.cap - steps.opening) * steps.after_days
    if 0 < days < RANGE_DAYS:
        what = f"The range is run through in {days} days; 8 weeks are 56."
        margin.note("dose.range_fast", steps.place, what)


def _moving(dose: Prescription, exercise: Exercise) -> list[str]:
    figures = (
        ("sets", dose.sets),
        ("reps", dose.reps),
        ("hold", dose.hold),
        ("range", dose.range),
    )
    moving = [name for name, axis in figures if axis is not None and axis.step]
    if dose.load_step or (dose.load_cap != dose.load):
        moving.append("load")
    return [*moving, "versions"] if _earns_a_version(dose, exercise) else moving


def _earns_a_version(dose: Prescription, exercise: Exercise) -> bool:
    """Whether a version allowed is harder than the one to begin with."""
    levels = {version.name: version.level for version in exercise.versions}
    allowed = [levels.get(name, 0) for name in dose.versions]
    return bool(allowed) and max(allowed) > allowed[0]


def _check_goes_up(dose: Prescription, exercise: Exercise, margin: Margin) -> None:
    if exercise.ranges and dose.range is None:
        return  # its line could not be read
    moving = _moving(dose, exercise)
    write = f"goes up: {', '.join(moving)}"
    for name in dose.goes_up:
        if name not in moving:
            what = f'"goes up" names "{name}", which stays in this dose.'
            margin.note("dose.goes_up_stays", dose.place, what, write if moving else "")
    if moving == ["versions"] and not dose.goes_up:
        what = "A harder version is allowed, and nothing says that it is ever earned."
        margin.note("dose.version_never", dose.place, what, write)
    lacking = [name for name in moving if name not in dose.goes_up]
    if len(moving) > 1 and lacking:
        what = f'More than one thing can go up, and "goes up" does not name {lacking[0]}.'
        margin.note("dose.goes_up_missing", dose.place, what, write)


def _check_light_cuff(dose: Prescription, exercise: Exercise, margin: Margin) -> None:
    side_lying = "side-lying" in exercise.name and "external rotation" in exercise.name
    if exercise.family != "cuff" or not side_lying or dose.load_place is None:
        return
    opening, cap = LIGHT_CUFF_LB if dose.load.unit == "lb" else LIGHT_CUFF_KG
    if dose.load.amount > opening:
        what = f"It opens at {dose.load.words()}; light is the point here: {opening:g} at first."
        margin.note("load.cuff_opening", dose.load_place, what)
    if dose.load_cap.amount > cap:
        what = f"Its cap is {dose.load_cap.words()}; at most {cap:g} {dose.load.unit} is usual."
        margin.note("load.cuff_cap", dose.load_place, what)


# ---------------------------------------------------------------- walls


def _check_wall(wall: Wall, plan: Plan, margin: Margin) -> None:
    for amount, place in _walled(wall, plan):
        over = amount > wall.amount if wall.op == "at most" else amount < wall.amount
        if over:
            unit = f" {wall.unit}" if wall.unit else ""
            what = (
                f"{wall.on}: {wall.what} {amount:g}{unit}, and the program's wall says "
                f"{wall.op} {wall.amount:g}{unit}."
            )
            margin.note("wall.passed", place, what, also=wall.place)


def _walled(wall: Wall, plan: Plan) -> list[tuple[float, Place]]:
    """The plan's number that the wall is about, with its place (none: the plan has no such line)."""
    if wall.on == "pain":
        return [(float(getattr(plan.pain, wall.what.replace(" ", "_"))), plan.pain.place)]
    if wall.on == "limits":
        return [
            (
                float(getattr(plan.limits, wall.what.replace(" ", "_"))),
                plan.limits.place,
            )
        ]
    dose = next((dose for dose in plan.doses if dose.exercise == wall.on), None)
    return [] if dose is None else _walled_dose(wall, dose)


def _walled_dose(wall: Wall, dose: Prescription) -> list[tuple[float, Place]]:
    if wall.what == "load":
        return _walled_load(wall, dose)
    if wall.what == "rest":  # one set has no rest
        return [(float(dose.rest_s), dose.place)] if dose.sets.cap > 1 else []
    if wall.what == "apart":
        return [(float(dose.apart_days), dose.place)]
    axis = {"sets": dose.sets, "reps": dose.reps, "hold": dose.hold}[wall.what]
    return [] if axis is None else [(float(axis.cap), axis.place)]


def _walled_load(wall: Wall, dose: Prescription) -> list[tuple[float, Place]]:
    if dose.load_cap.strength or dose.load_place is None:
        return []
    pounds = dose.load_cap.kilograms() / KG_PER_LB
    amount = pounds if wall.unit == "lb" else dose.load_cap.kilograms()
    return [(round(amount, 3), dose.load_place)]
