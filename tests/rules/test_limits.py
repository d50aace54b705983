from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.model.program import Exercise, Limits, Opened, Place, Plan, Prescription
from coach.model.quantities import Dose, Load
from coach.rules.limits import (
    LOCKED_FAMILIES,
    OPEN_FAMILIES,
    cut_short,
    exercises_today,
    fit_minutes,
    gate,
    locked,
    minutes_of,
    seconds_of,
)

TODAY = date(2026, 11, 25)
BAND = Load("band", strength="light")
DOSE = Dose(3, 8, 10, 0, BAND, 60, "lower for 3 s", "middle", 1, "kneeling", 1)


def pounds(amount: float) -> Load:
    return Load("dumbbell", amount, "lb")


@pytest.mark.hazard("H-02")
def test_a_dose_inside_the_caps_comes_back_equal(row: Exercise, line: Prescription) -> None:
    assert gate(DOSE, line, row) == DOSE


@pytest.mark.parametrize(
    ("asked", "shown"),
    [
        (DOSE._replace(sets=4), DOSE._replace(sets=4)),
        (DOSE._replace(sets=5), DOSE._replace(sets=4)),
        (DOSE._replace(sets=-1), DOSE._replace(sets=0)),
        (DOSE._replace(reps_high=15), DOSE._replace(reps_high=15)),
        (DOSE._replace(reps_high=16), DOSE._replace(reps_high=15)),
        (DOSE._replace(reps_low=20, reps_high=25), DOSE._replace(reps_low=15, reps_high=15)),
        (DOSE._replace(reps_low=-3), DOSE._replace(reps_low=0)),
        (DOSE._replace(hold_s=30), DOSE),
        (DOSE._replace(rest_s=59), DOSE),
        (DOSE._replace(rest_s=61), DOSE._replace(rest_s=61)),
        (DOSE._replace(tempo="fast"), DOSE),
        (DOSE._replace(range_index=2, range_step="long"), None),
        (DOSE._replace(range_index=3, range_step="long"), None),
        (DOSE._replace(range_index=0, range_step="long"), None),
    ],
)
@pytest.mark.hazard("H-02")
def test_each_axis_is_held_to_its_cap(
    row: Exercise, line: Prescription, asked: Dose, shown: Dose | None
) -> None:
    got = gate(asked, line, row)
    if shown is not None:
        assert got == shown
    else:
        index = min(asked.range_index, 2)
        assert got == DOSE._replace(range_index=index, range_step=row.ranges[index].name)


@pytest.mark.hazard("H-02")
@pytest.mark.parametrize(("cap", "index"), [(0, 0), (1, 1), (2, 2), (9, 2)])
def test_range_stops_at_the_plans_step_and_at_the_longest(
    row: Exercise, line: Prescription, cap: int, index: int
) -> None:
    assert line.range is not None
    capped = line._replace(range=line.range._replace(cap=cap))
    got = gate(DOSE._replace(range_index=7, range_step="beyond"), capped, row)
    assert (got.range_index, got.range_step) == (index, row.ranges[index].name)


@pytest.mark.hazard("H-02")
def test_without_a_range_line_the_shortest_step_is_shown(row: Exercise, line: Prescription) -> None:
    got = gate(DOSE._replace(range_index=2), line._replace(range=None), row)
    assert (got.range_index, got.range_step) == (0, "short")


@pytest.mark.hazard("H-02")
def test_an_exercise_without_ranges_shows_none(row: Exercise, line: Prescription) -> None:
    got = gate(DOSE, line, row._replace(ranges=()))
    assert (got.range_index, got.range_step) == (0, "")


@pytest.mark.hazard("H-02")
@pytest.mark.parametrize(("held", "shown"), [(30, 30), (31, 30), (5, 5)])
def test_a_hold_is_held_to_its_cap(
    row: Exercise, line: Prescription, held: int, shown: int
) -> None:
    with_hold = line._replace(hold=line.sets._replace(opening=20, cap=30))
    assert gate(DOSE._replace(hold_s=held), with_hold, row).hold_s == shown


@pytest.mark.parametrize(
    ("asked", "cap", "shown"),
    [
        (pounds(3), pounds(3), pounds(3)),
        (pounds(3.5), pounds(3), pounds(3)),
        (pounds(2), pounds(3), pounds(2)),
        (Load("dumbbell", 2, "kg"), pounds(3), pounds(3)),
        (Load("dumbbell", 1, "kg"), pounds(3), Load("dumbbell", 1, "kg")),
    ],
)
@pytest.mark.hazard("H-14")
def test_a_weight_over_the_cap_becomes_the_cap_in_either_unit(
    row: Exercise, line: Prescription, asked: Load, cap: Load, shown: Load
) -> None:
    weighed = line._replace(load=pounds(2), load_cap=cap)
    assert gate(DOSE._replace(load=asked), weighed, row).load == shown


@pytest.mark.hazard("H-02")
@pytest.mark.parametrize(("strength", "shown"), [("light", "light"), ("heavy", "medium")])
def test_a_band_over_the_cap_becomes_the_cap(
    row: Exercise, line: Prescription, strength: str, shown: str
) -> None:
    capped = line._replace(load_cap=Load("band", strength="medium"))
    got = gate(DOSE._replace(load=Load("band", strength=strength)), capped, row)
    assert got.load == Load("band", strength=shown)


@pytest.mark.hazard("H-02")
@pytest.mark.parametrize("other", [pounds(1), Load("none"), Load("band", 1.0, "kg")])
def test_a_load_that_cannot_be_compared_becomes_the_plans_own(
    row: Exercise, line: Prescription, other: Load
) -> None:
    assert gate(DOSE._replace(load=other), line, row).load == BAND


@pytest.mark.hazard("H-02")
def test_a_plans_own_load_under_its_cap_is_not_raised_to_it(
    row: Exercise, line: Prescription
) -> None:
    higher = line._replace(load_cap=Load("band", strength="heavy"))
    assert gate(DOSE._replace(load=pounds(1)), higher, row).load == BAND


@pytest.mark.hazard("H-02")
def test_a_plans_own_load_over_its_cap_becomes_the_cap(row: Exercise, line: Prescription) -> None:
    odd = line._replace(load=pounds(5), load_cap=pounds(3))
    assert gate(DOSE, odd, row).load == pounds(3)


@pytest.mark.hazard("H-02")
@pytest.mark.parametrize(
    ("allowed", "asked", "shown"),
    [
        (("kneeling", "standing"), ("standing", 2), ("standing", 2)),
        (("kneeling", "sitting"), ("standing", 2), ("kneeling", 1)),
        (("kneeling",), ("upside down", 9), ("kneeling", 1)),
        (("unheard of", "sitting"), ("kneeling", 1), ("sitting", 1)),
        (("unheard of",), ("kneeling", 1), ("", 0)),
        ((), ("kneeling", 1), ("", 0)),
        (("kneeling",), ("kneeling", 5), ("kneeling", 1)),
    ],
)
def test_only_a_version_the_plan_allows_is_shown(
    row: Exercise,
    line: Prescription,
    allowed: tuple[str, ...],
    asked: tuple[str, int],
    shown: tuple[str, int],
) -> None:
    dose = DOSE._replace(version=asked[0], version_level=asked[1])
    got = gate(dose, line._replace(versions=allowed), row)
    assert (got.version, got.version_level) == shown


numbers = st.integers(-5, 100)
loads = st.one_of(
    st.builds(pounds, st.floats(0, 50)),
    st.builds(lambda s: Load("band", strength=s), st.sampled_from(["light", "medium", "heavy"])),
)


@given(
    st.builds(
        Dose, numbers, numbers, numbers, numbers, loads, numbers, st.just(""), st.just("long"),
        numbers, st.sampled_from(["kneeling", "standing", "x"]), numbers,
    )
)  # fmt: skip
@pytest.mark.hazard("H-02")
def test_no_dose_at_all_passes_a_cap(dose: Dose) -> None:
    place = Place("plan.yaml", 1)
    row, line = _row_and_line(place)
    got = gate(dose, line, row)
    assert 0 <= got.sets <= 4
    assert 0 <= got.reps_low <= got.reps_high <= 15
    assert got.hold_s == 0
    assert got.load.kind == "band"
    assert got.load.rank() <= 1
    assert 0 <= got.range_index <= 1
    assert got.version == "kneeling"
    assert got.rest_s >= 60
    assert gate(got, line, row) == got


def _row_and_line(place: Place) -> tuple[Exercise, Prescription]:
    from coach.model.program import Axis, RangeStep, Version

    row = Exercise(
        "band row", "trunk", "one side", "reps", "band", (), (), (), (),
        (RangeStep("short", ""), RangeStep("long", ""), RangeStep("longest", "")),
        (Version("kneeling", 1), Version("standing", 2)), (), place,
    )  # fmt: skip
    line = Prescription(
        "band row", Axis(2, 2, 0, 0, 4, place), Axis(8, 10, 1, 0, 15, place), None, BAND, 0.0, BAND,
        (), 60, "", Axis(0, 0, 1, 28, 1, place), ("kneeling",), 1, (), (), place,
    )  # fmt: skip
    return row, line


# ---------------------------------------------------------------- locks


@pytest.mark.hazard("H-02")
@pytest.mark.parametrize("family", OPEN_FAMILIES)
def test_a_common_family_needs_no_opening(row: Exercise, plan: Plan, family: str) -> None:
    assert locked(row._replace(family=family), plan, TODAY).outcome == "open"


@pytest.mark.parametrize("family", [*LOCKED_FAMILIES, "never heard of"])
@pytest.mark.hazard("H-20")
def test_a_locked_or_unknown_family_is_locked(row: Exercise, plan: Plan, family: str) -> None:
    decision = locked(row._replace(family=family), plan, TODAY)
    assert decision.outcome == "locked"
    assert decision.rule == "limits.locks"


@pytest.mark.hazard("H-02")
@pytest.mark.parametrize(
    ("what", "day", "who", "outcome"),
    [
        ("overhead", "2026-11-25", "M. Aalto", "open"),
        ("band row", "2026-11-01", "M. Aalto", "open"),
        ("overhead", "2026-11-26", "M. Aalto", "locked"),
        ("overhead", "2026-11-01", "", "locked"),
        ("ball drill", "2026-11-01", "M. Aalto", "locked"),
    ],
)
def test_only_a_name_a_day_not_ahead_and_a_person_open(
    row: Exercise, plan: Plan, what: str, day: str, who: str, outcome: str
) -> None:
    opened = plan._replace(opened=(Opened(what, day, who, Place("plan.yaml", 30)),))
    decision = locked(row._replace(family="overhead"), opened, TODAY)
    assert decision.outcome == outcome
    if outcome == "open":
        assert decision.place == Place("plan.yaml", 30)


@pytest.mark.hazard("H-02")
def test_all_six_locked_kinds_are_known() -> None:
    assert not set(LOCKED_FAMILIES) & set(OPEN_FAMILIES)
    assert len(LOCKED_FAMILIES) == 6


# ---------------------------------------------------------------- the session's caps

CAPS = Limits(2, 10, 4, Place("plan.yaml", 21))


@pytest.mark.hazard("H-02")
@pytest.mark.parametrize(
    ("names", "kept"), [(("a",), 1), (("a", "b"), 2), (("a", "b", "c"), 2), ((), 0)]
)
def test_no_more_exercises_than_the_plan_allows(names: tuple[str, ...], kept: int) -> None:
    assert exercises_today(names, CAPS) == names[:kept]


@pytest.mark.hazard("H-02")
def test_a_dose_of_reps_takes_its_upper_end_and_the_rests_between() -> None:
    reps = DOSE._replace(sets=3, reps_high=10, rest_s=60)
    # 30 s to set up, 3 sets of 10 reps at 4 s, 2 rests of 60 s.
    assert seconds_of(reps) == 30 + 3 * 10 * 4 + 2 * 60


@pytest.mark.hazard("H-02")
def test_a_dose_of_holds_takes_its_seconds() -> None:
    holds = DOSE._replace(sets=2, reps_high=5, hold_s=30, rest_s=45)
    assert seconds_of(holds) == 30 + 2 * 5 * 30 + 45


@pytest.mark.hazard("H-02")
def test_a_cap_of_no_exercises_lets_none_in() -> None:
    assert exercises_today(("a", "b"), CAPS._replace(exercises=0)) == ()
    assert exercises_today(("a", "b"), CAPS._replace(exercises=-1)) == ()


@pytest.mark.hazard("H-02")
def test_a_hold_of_one_second_is_a_hold() -> None:
    assert seconds_of(DOSE._replace(sets=1, reps_high=10, hold_s=1)) == 30 + 10


@pytest.mark.hazard("H-02")
def test_minutes_are_rounded_up() -> None:
    # 30 s to set up and 30 s of one hold are a minute; one second more is two.
    minute = DOSE._replace(sets=1, reps_high=1, hold_s=30, rest_s=0)
    assert minutes_of((minute,)) == 1
    assert minutes_of((minute._replace(hold_s=31),)) == 2
    assert minutes_of(()) == 0


@pytest.mark.hazard("H-02")
@pytest.mark.parametrize(("minutes", "count"), [(0, 0), (1, 1), (2, 2), (3, 3), (9, 3)])
def test_as_many_exercises_as_fit_into_the_minutes(minutes: int, count: int) -> None:
    minute = DOSE._replace(sets=1, reps_high=1, hold_s=30, rest_s=0)
    assert fit_minutes((("a", minute), ("b", minute), ("c", minute)), minutes) == count


@pytest.mark.hazard("H-02")
def test_a_list_cut_short_says_both_caps() -> None:
    decision = cut_short(CAPS)
    assert decision.place == CAPS.place
    assert "2 exercises" in decision.why
    assert "10 minutes" in decision.why
