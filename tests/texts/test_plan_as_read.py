"""What a plan file says is what the session is handed: every number, unit, name and line."""

from __future__ import annotations

import pytest

from coach.model.program import Axis, PainCeilings, Place
from coach.model.quantities import Call, Load
from tests.texts.changing import PLAN, Desk


def test_the_pain_line_keeps_its_five_numbers_and_its_line(desk: Desk) -> None:
    assert desk.plan().pain == PainCeilings(1, 2, 2, 0, 1, Place(PLAN, 15, 7))


def test_people_are_read_with_number_and_who(desk: Desk) -> None:
    plan = desk.plan()
    assert plan.calls.emergency == Call("112", "ambulance")
    assert plan.calls.crisis == Call("555 0199", "day and night")
    assert plan.calls.clinician == Call("555 0134", "M. Aalto, weekdays 8 to 17")
    assert plan.calls.urgent is None
    assert plan.guardian == Call("555 0171", "J.K.")
    assert plan.guardian_present == "every session"


def test_an_urgent_number_may_be_added(desk: Desk) -> None:
    desk.change("  clinician:", "  urgent: 555 0160, urgent care\n  clinician:")
    assert desk.plan().calls.urgent == Call("555 0160", "urgent care")


def test_a_dose_is_read_line_by_line(desk: Desk) -> None:
    dose = next(dose for dose in desk.plan().doses if dose.exercise == "band pull back")
    line = dose.place.line
    assert dose.sets == Axis(2, 2, 0, 0, 2, Place(PLAN, line + 1, 11))
    assert dose.reps == Axis(8, 12, 1, 0, 15, Place(PLAN, line + 2, 11))
    assert dose.range == Axis(0, 0, 1, 56, 1, Place(PLAN, line + 4, 12))
    assert dose.load == dose.load_cap == Load("band", strength="light")
    assert (dose.load_step, dose.lighter) == (0, ())
    assert (dose.rest_s, dose.tempo, dose.apart_days) == (60, "lower for 3 s", 2)
    assert dose.goes_up == ("reps", "range")
    assert dose.versions == ("standing tall",)
    assert dose.without == (("band", "stand-in"),)
    assert dose.hold is None


def test_lighter_loads_are_those_at_home_heaviest_first(desk: Desk) -> None:
    desk.change("1 lb dumbbell, 2 lb dumbbell", "0.5 lb dumbbell, 1 lb dumbbell, 2 lb dumbbell")
    dose = next(dose for dose in desk.plan().doses if dose.load.kind == "dumbbell")
    assert dose.lighter == (Load("dumbbell", 1, "lb"), Load("dumbbell", 0.5, "lb"))


def test_a_pull_is_not_lighter_than_a_strength(desk: Desk) -> None:
    desk.change("light band, 1", "light band, band pull 1 kg, 1")
    dose = next(dose for dose in desk.plan().doses if dose.load.kind == "band")
    assert dose.lighter == ()


def test_an_exercise_counted_in_holds_has_its_seconds(desk: Desk) -> None:
    desk.change("counted in: reps", "counted in: holds", "exercises/arm-swings.yaml")
    assert desk.ids() == ["key.missing"]
    desk.change("    reps: 20 only", "    reps: 5 only\n    hold: 30 s only")
    dose = desk.plan().doses[0]
    assert dose.hold is not None
    assert (dose.reps.opening, dose.hold.opening, dose.hold.cap) == (5, 30, 30)


def test_the_throwing_line_is_kept_whole_and_in_pieces(desk: Desk) -> None:
    line = desk.plan().throwing_line
    assert line is not None
    assert (line.cleared, line.who, line.table) == ("2026-11-06", "M. Aalto", "youth 8 steps")
    assert (line.from_step, line.most_step, line.apart_days) == (1, 4, 2)


def test_not_cleared_is_no_throwing_line(desk: Desk) -> None:
    desk.change(
        "throwing: cleared 2026-11-06 by M. Aalto, youth 8 steps, from step 1, "
        "at most step 4, apart 2 days",
        "throwing: not cleared",
    )
    assert desk.plan().throwing_line is None
    assert desk.plan().throwing_line is None


@pytest.mark.parametrize(
    ("piece", "steps", "kept"), [("class D", 21, "D"), ("catcher class D", 13, "catcher D")]
)
def test_a_class_is_read_with_the_program_it_belongs_to(
    desk: Desk, piece: str, steps: int, kept: str
) -> None:
    lines = "".join(f"  step {n}: {10 + n} throws at 9 m\n" for n in range(1, steps + 1))
    own = f"throwing steps:\n  counted in: throws\n{lines}"
    desk.change("apart 2 days\n", f"apart 2 days, {piece}\n{own}")
    desk.change("youth 8 steps", "own steps")
    line = desk.plan().throwing_line
    assert line is not None
    assert line.class_name == kept


def test_a_table_of_phases_is_told_in_phases(desk: Desk) -> None:
    desk.change("youth 8 steps, from step 1", "adult 7 phases, from step 1")
    wrong = [one for one in desk.findings() if one.id == "throwing.piece"]
    assert wrong
    for one in wrong:
        assert "adult 7 phases, from phase NUMBER, at most phase NUMBER" in (one.write or "")


def test_a_changed_rule_keeps_its_number(desk: Desk) -> None:
    desk.change("doses:", "changed rules:\n  ready.sleep: 5 h, because school starts early\ndoses:")
    assert desk.plan().changed == (("ready.sleep", 5.0),)


def test_an_opened_family_may_be_dosed(desk: Desk) -> None:
    desk.change("not used: arm reach up\n", "opened: overhead 2026-11-20 by M. Aalto\n")
    desk.change("doses:\n", "doses:\n  arm reach up:\n    sets: 1 only\n    reps: 8 only\n")
    assert desk.plan().opened[0][:3] == ("overhead", "2026-11-20", "M. Aalto")


@pytest.mark.parametrize("file", ["program.yaml", PLAN, "exercises/arm-swings.yaml"])
@pytest.mark.hazard("H-18")
def test_the_digest_changes_with_every_text(file: str, desk: Desk) -> None:
    from coach.texts.doors import bound_from

    before, _ = bound_from(desk.folder / PLAN)
    path = desk.folder / file
    path.write_text(path.read_text(encoding="utf-8") + "# one more remark\n", encoding="utf-8")
    after, _ = bound_from(desk.folder / PLAN)
    assert before is not None
    assert after is not None
    assert before.digest != after.digest
    assert before.plan == after.plan
