import pytest

from coach.model.decisions import Refusal
from coach.model.program import Axis, Exercise, Fault, Place, Prescription, Version
from coach.model.quantities import Dose, Load
from coach.rules.dosing import (
    correction,
    dose_for_today,
    easier,
    light_cuff,
    light_cuff_load,
    lighter,
    needs_pick,
    opening_dose,
    room_for_change,
    shorter,
    towel,
    versions_to_pick,
)
from coach.rules.pain import Room

BAND = Load("band", strength="light")
OPENING = Dose(3, 8, 10, 0, BAND, 60, "lower for 3 s", "middle", 1, "kneeling", 1)


def opened(exercise: Exercise, prescription: Prescription | None) -> Dose:
    dose = opening_dose(exercise, prescription)
    assert isinstance(dose, Dose)
    return dose


def refused(exercise: Exercise, prescription: Prescription | None) -> Refusal:
    refusal = opening_dose(exercise, prescription)
    assert isinstance(refusal, Refusal)
    return refusal


# ---------------------------------------------------------------- from the plan


def test_a_dose_opens_as_the_plan_writes_it(row: Exercise, line: Prescription) -> None:
    assert opened(row, line) == OPENING


def test_no_dose_in_the_plan_means_no_exercise(row: Exercise) -> None:
    refusal = refused(row, None)
    assert refusal.rule == "dose.from_plan"
    assert refusal.place is None


def test_a_hold_opens_with_its_seconds(row: Exercise, line: Prescription) -> None:
    hold = Axis(20, 20, 5, 7, 30, Place("plan.yaml", 44))
    assert opened(row, line._replace(hold=hold)).hold_s == 20


@pytest.mark.parametrize("cap", [2, 1])
def test_an_opening_over_its_cap_is_capped(row: Exercise, line: Prescription, cap: int) -> None:
    low = line._replace(sets=line.sets._replace(cap=cap), reps=line.reps._replace(cap=9))
    assert opened(row, low)[:3] == (cap, 8, 9)


def test_a_load_over_its_cap_opens_at_the_cap(row: Exercise, line: Prescription) -> None:
    heavy = line._replace(load=Load("band", strength="heavy"))
    assert opened(row, heavy).load == BAND


def test_an_exercise_without_ranges_and_versions_opens_without(
    row: Exercise, line: Prescription
) -> None:
    dose = opened(row._replace(ranges=()), line._replace(range=None, versions=()))
    assert (dose.range_step, dose.range_index, dose.version, dose.version_level) == ("", 0, "", 0)


@pytest.mark.parametrize(("step", "offered"), [(-1, False), (0, True), (2, True), (3, False)])
def test_a_range_the_exercise_lacks_is_not_offered(
    row: Exercise, line: Prescription, step: int, offered: bool
) -> None:
    axis = Axis(step, step, 1, 28, 9, line.place)
    dose = opening_dose(row, line._replace(range=axis))
    assert isinstance(dose, Dose) is offered


def test_a_range_line_for_an_exercise_without_ranges_is_not_offered(
    row: Exercise, line: Prescription
) -> None:
    assert refused(row._replace(ranges=()), line).place == line.place


def test_a_version_the_exercise_lacks_is_not_offered(row: Exercise, line: Prescription) -> None:
    assert refused(row, line._replace(versions=("upside down",))).rule == "dose.from_plan"


# ---------------------------------------------------------------- lowered for the day


@pytest.mark.parametrize(
    ("sets", "short", "fewer", "shown"),
    [
        (3, False, 0, 3),
        (3, True, 0, 2),
        (2, True, 0, 2),
        (3, False, 1, 2),
        (3, True, 1, 1),
        (3, True, 5, 1),
        (1, False, 1, 1),
        (3, False, -2, 3),
    ],
)
def test_sets_go_down_for_the_day_and_the_last_one_stays(
    sets: int, short: bool, fewer: int, shown: int
) -> None:
    dose = OPENING._replace(sets=sets)
    assert dose_for_today(dose, short, fewer) == OPENING._replace(sets=shown)


# ---------------------------------------------------------------- one change down


def test_shorter_goes_one_step_and_stops_at_the_shortest(row: Exercise) -> None:
    step = shorter(OPENING, row)
    assert step == OPENING._replace(range_index=0, range_step="short")
    assert step is not None
    assert shorter(step, row) is None


def test_without_ranges_nothing_is_shorter(row: Exercise) -> None:
    assert shorter(OPENING, row._replace(ranges=())) is None


def test_easier_is_the_next_lower_level_the_plan_allows(row: Exercise, line: Prescription) -> None:
    standing = OPENING._replace(version="standing", version_level=2)
    assert easier(standing, row, line) == standing._replace(version="kneeling", version_level=1)
    only = line._replace(versions=("sitting", "standing"))
    assert easier(standing, row, only) == standing._replace(version="sitting", version_level=1)
    assert easier(standing, row, line._replace(versions=("standing",))) is None


def test_easier_is_the_nearest_level_below(row: Exercise, line: Prescription) -> None:
    three = row._replace(versions=(*row.versions, Version("on one leg", 3)))
    all_three = line._replace(versions=("kneeling", "standing", "on one leg"))
    top = OPENING._replace(version="on one leg", version_level=3)
    got = easier(top, three, all_three)
    assert got is not None
    assert got.version == "standing"


def test_a_version_of_the_same_level_is_not_easier(row: Exercise, line: Prescription) -> None:
    assert easier(OPENING, row, line) is None
    assert easier(OPENING._replace(version="", version_level=9), row, line) is None


def pounds(amount: float) -> Load:
    return Load("dumbbell", amount, "lb")


@pytest.mark.parametrize(
    ("now", "shown"), [(4, 3), (3, 2), (2, 1.5), (1.5, 1), (1, None), (0.5, None)]
)
def test_lighter_is_the_next_load_below_that_the_plan_lists(
    line: Prescription, now: float, shown: float | None
) -> None:
    weighed = line._replace(load=pounds(3), lighter=(pounds(2), pounds(1.5), pounds(1)))
    got = lighter(OPENING._replace(load=pounds(now)), weighed)
    assert (got.load if got else None) == (pounds(shown) if shown is not None else None)


def test_lighter_never_changes_the_kind_of_load(line: Prescription) -> None:
    mixed = line._replace(lighter=(pounds(0.5), Load("band", 0.1, "kg")))
    assert lighter(OPENING, mixed) is None


def test_room_tells_what_remains(row: Exercise, line: Prescription) -> None:
    assert room_for_change(row, line, OPENING) == Room(True, False, False)
    standing = OPENING._replace(version="standing", version_level=2, range_index=0)
    assert room_for_change(row, line, standing) == Room(False, True, False)


# ---------------------------------------------------------------- which version


def names(row: Exercise, line: Prescription, *versions: str) -> tuple[str, ...]:
    return tuple(v.name for v in versions_to_pick(row, line._replace(versions=versions)))


def test_versions_of_the_first_ones_level_may_be_picked(row: Exercise, line: Prescription) -> None:
    assert names(row, line, "kneeling", "sitting", "standing") == ("kneeling", "sitting")
    assert names(row, line, "kneeling", "standing") == ("kneeling",)
    assert names(row, line, "standing") == ("standing",)
    assert names(row, line) == ()
    assert names(row, line, "upside down") == ()


def test_a_pick_is_needed_where_there_are_two(row: Exercise, line: Prescription) -> None:
    assert needs_pick(row, line)
    assert not needs_pick(row, line._replace(versions=("kneeling", "standing")))


# ---------------------------------------------------------------- corrections


@pytest.mark.parametrize(
    ("exercise", "fault", "outcome"),
    [
        ("side-lying external rotation", "too easy", "check form"),
        ("side-lying external rotation", "shrug", "as usual"),
        ("band row", "too easy", "as usual"),
    ],
)
def test_too_easy_in_the_light_cuff_exercise_means_check_the_form(
    exercise: str, fault: str, outcome: str
) -> None:
    assert light_cuff(exercise, fault).outcome == outcome


@pytest.mark.parametrize(
    ("load", "cap", "outcome"),
    [
        (pounds(2), pounds(3), "light"),
        (pounds(2.5), pounds(3), "note"),
        (pounds(2), pounds(3.5), "note"),
        (Load("dumbbell", 1, "kg"), pounds(3), "light"),
        (Load("dumbbell", 1.25, "kg"), pounds(3), "note"),
        (Load("dumbbell", 1, "kg"), Load("dumbbell", 1.5, "kg"), "note"),
    ],
)
def test_a_light_cuff_load_over_the_suggested_one_is_a_note(
    line: Prescription, load: Load, cap: Load, outcome: str
) -> None:
    weighed = line._replace(load=load, load_cap=cap)
    assert light_cuff_load(weighed).outcome == outcome


@pytest.mark.parametrize(
    ("fault", "outcome"),
    [("outer shoulder works", "towel"), ("shrug", "as usual"), ("never felt", "as usual")],
)
def test_a_towel_where_the_exercise_says_so(row: Exercise, fault: str, outcome: str) -> None:
    assert towel(row, fault).outcome == outcome


@pytest.mark.parametrize(("running", "outcome"), [(1, "correct"), (2, "correct"), (3, "lighter")])
def test_a_fault_three_sets_running_leads_to_what_the_exercise_says(
    running: int, outcome: str
) -> None:
    fault = Fault("shrug", "a", "b", "lighter")
    decision = correction(fault, running)
    assert decision.outcome == outcome
    assert decision.rule == "dose.correction"


@pytest.mark.parametrize("stays", ["lighter", "shorter range", "easier version", "leave out"])
def test_every_way_a_fault_may_stay_is_known(stays: str) -> None:
    assert correction(Fault("shrug", "a", "b", stays), 3).outcome == stays


def test_a_fault_without_a_consequence_goes_on_being_corrected() -> None:
    assert correction(Fault("shrug", "a", "b"), 9).outcome == "correct"


def test_too_easy_and_towel_carry_their_own_rule(row: Exercise) -> None:
    _, too_easy, outer = row.faults
    assert correction(too_easy, 1).rule == "dose.light_cuff"
    assert correction(too_easy, 1).outcome == "correct"
    assert correction(outer, 1).rule == "dose.towel"
