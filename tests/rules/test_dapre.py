"""The table that drives a working weight, on both sides of each of its numbers."""

from __future__ import annotations

from datetime import date

import pytest

from coach.model.ladders import Drove, Ladder
from coach.model.program import Exercise, Prescription
from coach.model.quantities import Dose, Load, SetLine
from coach.rules import dapre
from coach.rules.dosing import opening_dose
from coach.rules.limits import LOCKED_FAMILIES
from coach.rules.progression import DaySummary, Rails, next_ladder, wants_up

OPENED, TODAY = date(2026, 11, 9), date(2026, 11, 25)
FIRST_ROW, SECOND, THIRD, FOURTH, LAST = range(5)


def pounds(amount: float) -> Load:
    return Load("dumbbell", amount, "lb")


HOME = tuple(map(pounds, (5, 10, 15, 20, 25, 30)))


@pytest.fixture
def rails(row: Exercise, line: Prescription) -> Rails:
    """A dumbbell row at 20 lb, at most 30, driven by set 3; 5 to 10 reps."""
    weighed = row._replace(load="dumbbell", equipment=("dumbbell",), versions=())
    named = line._replace(
        sets=line.sets._replace(opening=4, opening_high=4, step=0, cap=4),
        reps=line.reps._replace(opening=5, opening_high=10, step=0, cap=10),
        load=pounds(20),
        load_cap=pounds(30),
        lighter=(pounds(15), pounds(10), pounds(5)),
        versions=(),
        goes_up=(),
        dapre=3,
    )
    opening = opening_dose(weighed, named)
    assert isinstance(opening, Dose)
    return Rails(weighed, named, HOME, opening, OPENED)


def after(rails: Rails, row: int, **change: object) -> Ladder:
    """The ladder on the day after a good session whose driving set fell in `row`, at 20 lb."""
    day = DaySummary(TODAY, "good", drove=Drove(row, pounds(20)))._replace(**change)  # type: ignore[arg-type]
    return next_ladder(Ladder(rails.opening), day, rails, may_go_up=True)[0]


# ---------------------------------------------------------------- where it may drive


@pytest.mark.parametrize("family", ["shoulder blade", "trunk", "legs"])
def test_strength_with_dumbbells_may_go_by_the_table(row: Exercise, family: str) -> None:
    assert dapre.suits(row._replace(family=family, load="dumbbell"))


@pytest.mark.parametrize("family", ["cuff", "mobility", *LOCKED_FAMILIES])
def test_cuff_mobility_and_what_is_locked_never_go_by_the_table(row: Exercise, family: str) -> None:
    assert not dapre.suits(row._replace(family=family, load="dumbbell"))


@pytest.mark.parametrize("load", ["band", "ball", "none"])
def test_what_is_no_dumbbell_never_goes_by_the_table(row: Exercise, load: str) -> None:
    assert not dapre.suits(row._replace(load=load))


@pytest.mark.parametrize(("named", "drives"), [(0, 0), (2, 0), (3, 3), (4, 4), (5, 0)])
def test_only_the_third_or_fourth_set_drives(rails: Rails, named: int, drives: int) -> None:
    line = rails.prescription._replace(dapre=named)
    assert dapre.driving_set(rails.exercise, line) == drives


def test_a_line_that_slipped_past_the_check_drives_no_cuff(rails: Rails) -> None:
    cuff = rails._replace(exercise=rails.exercise._replace(family="cuff"))
    assert dapre.driving_set(cuff.exercise, cuff.prescription) == 0
    assert after(cuff, LAST).dose == cuff.opening


# ---------------------------------------------------------------- the sets of a day


def test_half_three_quarters_and_twice_the_whole_rounded_down_to_what_is_owned() -> None:
    lines = dapre.set_lines(pounds(25), (5, 10), 4, HOME)
    assert [line.load.amount for line in lines] == [10, 15, 25, 25]
    assert [(line.reps_low, line.reps_high) for line in lines] == [
        (10, 10),
        (6, 6),
        (5, 10),
        (5, 10),
    ]


def test_no_set_asks_for_more_than_the_plans_most() -> None:
    lines = dapre.set_lines(pounds(20), (4, 8), 4, HOME)
    assert [line.reps_high for line in lines] == [8, 6, 8, 8]


def test_with_nothing_light_enough_the_lightest_owned_is_taken() -> None:
    lines = dapre.set_lines(pounds(20), (5, 10), 4, (pounds(15), pounds(20)))
    assert [line.load.amount for line in lines] == [15, 15, 20, 20]


@pytest.mark.parametrize(
    ("row", "amount"), [(FIRST_ROW, 10), (SECOND, 15), (THIRD, 20), (FOURTH, 20), (LAST, 20)]
)
def test_the_fourth_set_takes_the_larger_cut_and_no_rise(row: int, amount: float) -> None:
    line = SetLine(5, 10, pounds(20))
    assert dapre.fourth_set(line, row, HOME).load.amount == amount


# ---------------------------------------------------------------- the next working weight


@pytest.mark.parametrize(
    ("reps", "amount"),
    [(0, 10), (2, 10), (3, 20), (4, 20), (5, 25), (6, 25), (7, 25), (10, 25), (11, 25), (30, 25)],
)
def test_each_edge_of_the_rows_leads_to_its_weight(
    rails: Rails, reps: float, amount: float
) -> None:
    assert after(rails, dapre.row_of(reps, asked=10)).dose.load == pounds(amount)


@pytest.mark.parametrize(("asked", "amount"), [(10, 25), (11, 30)])
def test_more_reps_than_were_asked_count_as_asked(rails: Rails, asked: int, amount: float) -> None:
    assert after(rails, dapre.row_of(14, asked)).dose.load == pounds(amount)


def test_a_rise_ends_at_the_heaviest_owned_load_below_it(rails: Rails) -> None:
    few = rails._replace(owned=(pounds(10), pounds(20), pounds(24), pounds(26)))
    assert after(few, THIRD).dose.load == pounds(24)
    none = rails._replace(owned=(pounds(10), pounds(20), pounds(26)))
    assert after(none, THIRD).dose.load == pounds(20)


def test_a_rise_ends_at_the_cap(rails: Rails) -> None:
    capped = rails._replace(prescription=rails.prescription._replace(load_cap=pounds(24)))
    assert after(capped, LAST).dose.load == pounds(20)
    assert after(rails, LAST).dose.load == pounds(30)


def test_in_kilograms_the_rows_in_kilograms_count() -> None:
    now, cap = Load("dumbbell", 10, "kg"), Load("dumbbell", 20, "kg")
    owned = tuple(now._replace(amount=a) for a in (5, 7.5, 10, 12.5, 15, 20))
    rows = [dapre.next_working(now, Drove(row, now), cap, owned).amount for row in range(5)]
    assert rows == [5, 10, 12.5, 12.5, 15]


def test_where_the_fourth_set_drives_its_own_weight_is_the_start(rails: Rails) -> None:
    lower = Drove(THIRD, pounds(15))
    assert dapre.next_working(pounds(20), lower, pounds(30), HOME) == pounds(20)
    assert dapre.next_working(pounds(20), lower._replace(row=SECOND), pounds(30), HOME) == pounds(
        15
    )


# ---------------------------------------------------------------- what holds it


@pytest.mark.parametrize(
    "change",
    [
        {"drove": None},
        {"result": "short"},
        {"result": "form"},
        {"result": "none"},
        {"stopped": True},
    ],
)
def test_nothing_rises_where_the_session_was_not_whole(
    rails: Rails, change: dict[str, object]
) -> None:
    assert after(rails, LAST, **change).dose == rails.opening


@pytest.mark.parametrize(
    "change",
    [{"result": "over"}, {"morning_up": True}, {"gap": "one step down"}, {"gap": "first step"}],
)
def test_pain_a_sore_morning_and_days_off_lower_whatever_the_table_says(
    rails: Rails, change: dict[str, object]
) -> None:
    day = DaySummary(TODAY, "good", drove=Drove(LAST, pounds(20)))._replace(**change)  # type: ignore[arg-type]
    new, decision = next_ladder(Ladder(rails.opening), day, rails, may_go_up=True)
    assert decision.outcome in {"down", "first step"}
    assert decision.rule != "prog.dapre"
    assert new.dose.load.rank() <= pounds(20).rank()
    assert new.dose != rails.opening or decision.outcome == "first step"


def test_a_cut_comes_beside_another_step_down_and_the_lighter_counts(rails: Rails) -> None:
    both = after(rails, FIRST_ROW, morning_up=True)
    assert both.dose.load == pounds(10)
    assert both.dose.range_index < rails.opening.range_index


def test_few_reps_in_a_hard_session_are_the_tables_to_answer(rails: Rails) -> None:
    lower = after(rails, FIRST_ROW, result="short", hard=True)
    assert lower.dose == rails.opening._replace(load=pounds(10))
    assert after(rails, SECOND, result="short", hard=True).dose.range_index == 0


def test_another_exercise_going_up_keeps_the_weight(rails: Rails) -> None:
    day = DaySummary(TODAY, "good", drove=Drove(LAST, pounds(20)))
    assert next_ladder(Ladder(rails.opening), day, rails, may_go_up=False)[0].dose == rails.opening


@pytest.mark.parametrize(("moved", "rises"), [("2026-11-18", True), ("2026-11-19", False)])
def test_days_that_the_line_asks_for_are_waited(rails: Rails, moved: str, rises: bool) -> None:
    slow = rails._replace(prescription=rails.prescription._replace(load_after_days=7))
    ladder = Ladder(rails.opening, moved=(("load", moved),))
    day = DaySummary(TODAY, "good", drove=Drove(THIRD, pounds(20)))
    assert (wants_up(ladder, day, slow) is not None) is rises


def test_two_over_the_top_twice_moves_no_weight_that_goes_by_the_table(rails: Rails) -> None:
    day = DaySummary(TODAY, "earned", drove=Drove(SECOND, pounds(20)))
    assert wants_up(Ladder(rails.opening, good_run=2), day, rails) is None


def test_a_range_lost_to_pain_comes_back_before_any_weight(rails: Rails) -> None:
    shorter = rails.opening._replace(range_index=0, range_step="short")
    day = DaySummary(TODAY, "earned", drove=Drove(LAST, pounds(20)))
    wanted = wants_up(Ladder(shorter, good_run=2), day, rails)
    assert wanted == ("range", rails.opening)


def test_the_reason_names_the_set_and_where_that_is_known_from(rails: Rails) -> None:
    day = DaySummary(TODAY, "good", drove=Drove(THIRD, pounds(20)))
    why = next_ladder(Ladder(rails.opening), day, rails, may_go_up=True)[1]
    assert (why.rule, why.outcome) == ("prog.dapre", "up")
    assert "Set 3 had 5 clean reps or more." in why.why
    assert "Knight 1979" in why.source
    fourth = rails._replace(prescription=rails.prescription._replace(dapre=4))
    why = next_ladder(Ladder(rails.opening), day, fourth, may_go_up=True)[1]
    assert "from memory" in why.source
