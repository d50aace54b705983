"""Two-for-two, the 10 % step and the DAPRE rows against what was printed."""

from __future__ import annotations

import pytest

from coach.model.ladders import Drove
from coach.model.quantities import Load
from coach.rules.dapre import ROWS_1979_KG, ROWS_1979_LB, SETS, Row, next_working, row_of
from coach.rules.progression import earns, next_load


def pounds(amount: float) -> Load:
    return Load("dumbbell", amount, "lb")


# Baechle and Earle: 2 or more reps over the goal in the last set. Printed example: goal 10, 12 in
# the last set of two sessions at 135 lb, raise.
@pytest.mark.parametrize(("reps", "earned"), [(11, False), (12, True), (15, True)])
def test_two_reps_over_the_goal_in_the_last_set_count(reps: int, earned: bool) -> None:
    assert earns(reps, top=10) is earned


# ACSM 2009: raise the load by 2 to 10 %. Baechle and Earle: 2.5 to 10 %.
@pytest.mark.parametrize(
    ("now", "plan_step", "owned", "reached"),
    [
        (135, 5, (140, 150), 140),
        (135, 20, (145, 148.5, 149), 148.5),
        (10, 1, (11, 12), 11),
        (10, 2, (11, 12), 11),
        (10, 0.5, (11,), None),
        # With light dumbbells no step fits under 10 %: reps go up instead.
        (2, 1, (3, 5), None),
        (5, 1, (6,), None),
    ],
)
def test_a_step_is_the_smaller_of_ten_percent_and_the_plans(
    now: float, plan_step: float, owned: tuple[float, ...], reached: float | None
) -> None:
    got = next_load(pounds(now), plan_step, pounds(500), tuple(map(pounds, owned)))
    assert got == (pounds(reached) if reached is not None else None)


# Knight 1979 by three secondary pages: reps in set 3, change for the next session in lb (whole
# column read twice), change for the fourth set (row 3 to 4 inferred, so left out here).
NEXT = [
    (0, (-10, -5)),
    (2, (-10, -5)),
    (3, (0, 0)),
    (4, (0, 0)),
    (5, (5, 10)),
    (6, (5, 10)),
    (7, (5, 15)),
    (10, (5, 15)),
    (11, (10, 20)),
    (30, (10, 20)),
]
FOURTH = [(0, (-10, -5)), (5, (0, 0)), (6, (0, 0)), (7, (5, 10)), (10, (5, 10)), (11, (10, 15))]


@pytest.mark.parametrize(("reps", "change"), NEXT)
def test_dapre_next_session_rows(reps: int, change: tuple[int, int]) -> None:
    assert ROWS_1979_LB[row_of(reps, asked=50)].next_session == change


@pytest.mark.parametrize(("reps", "change"), FOURTH)
def test_dapre_fourth_set_rows(reps: int, change: tuple[int, int]) -> None:
    assert ROWS_1979_LB[row_of(reps, asked=50)].fourth_set == change


# The same table in kg on one of the pages (the row of 3 to 4 reps is left out there). A second page
# prints 5 to 10 kg where the pounds say 10 to 15: 10 kg are 22 lb, so that column is not taken.
KG = [(0, (-5, -2.5), (-5, -2.5)), (5, (0, 0), (2.5, 5)), (7, (2.5, 5), (2.5, 7.5))]


@pytest.mark.parametrize(("reps", "fourth", "then"), [*KG, (11, (5, 7.5), (5, 10))])
def test_dapre_rows_in_kg(
    reps: int, fourth: tuple[float, float], then: tuple[float, float]
) -> None:
    row = ROWS_1979_KG[row_of(reps, asked=50)]
    assert (row.fourth_set, row.next_session) == (fourth, then)


@pytest.mark.parametrize("rows", [ROWS_1979_LB, ROWS_1979_KG])
def test_dapre_rows_neither_overlap_nor_leave_a_gap(rows: tuple[Row, ...]) -> None:
    tops = [row.reps_to for row in rows]
    starts = [row.reps_from for row in rows]
    assert starts == [0, *(top + 1 for top in tops[:-1] if top is not None)]
    assert tops[-1] is None


def test_dapre_sets_are_half_three_quarters_and_all_of_it_twice() -> None:
    assert SETS == ((0.5, 10), (0.75, 6), (1.0, 0), (1.0, 0))


# Worked from the rows, 40 lb: of a range the smaller rise or the larger cut.
@pytest.mark.parametrize(("reps", "weight"), [(8, 45), (5, 45), (4, 40), (2, 30), (11, 50)])
def test_dapre_takes_the_careful_end_of_a_range(reps: int, weight: float) -> None:
    owned = tuple(map(pounds, range(5, 100, 5)))
    drove = Drove(row_of(reps, asked=50), pounds(40))
    assert next_working(pounds(40), drove, pounds(100), owned) == pounds(weight)
