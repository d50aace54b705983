"""The page's load table against published formulas and worked weeks.

Session load: Foster 1998, 2001 (printed examples 7 x 75 = 525, 7 x 60 = 420). Weeks with n - 1 were
worked out here, since no published week with daily loads was found; printed strains are from five
weeks of an athlete's log, rounded.
"""

from __future__ import annotations

import statistics

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from coach.reports.facts import weeks
from coach.reports.visit_load import load_row
from tests.reports import made_up

# (effort, minutes) by day of the week; load, monotony, strain.
WORKED = [
    (((10, 30), None, (9, 50), None, (10, 60), (8, 30), None), "1590", "0.94", "1498"),
    (((7, 60), (6, 60), None, (7, 60), (6, 60), None, (7, 75)), "2085", "1.41", "2946"),
    ((None, None, None, (10, 70), None, None, None), "700", "0.38", "265"),
    (((5, 20),) * 7, "700", "-", "-"),
    ((None,) * 7, "0", "-", "-"),
]
Week = tuple[tuple[int, int] | None, ...]


def row(week: Week) -> tuple[str, ...]:
    sats = [
        made_up.sat(n, effort=float(one[0]), minutes=float(one[1]))
        for n, one in enumerate(week)
        if one is not None
    ]
    (only,) = weeks(made_up.facts(*sats))
    return load_row(only)


@pytest.mark.parametrize(("week", "load", "monotony", "strain"), WORKED)
def test_a_worked_week_is_told_as_worked(week: Week, load: str, monotony: str, strain: str) -> None:
    assert row(week)[2:5] == (load, monotony, strain)


@pytest.mark.parametrize(("effort", "minutes", "load"), [(7, 75, "525"), (7, 60, "420")])
def test_the_printed_session_loads(effort: int, minutes: int, load: str) -> None:
    assert row(((effort, minutes), *([None] * 6)))[2] == load


sessions = st.one_of(st.none(), st.tuples(st.integers(1, 10), st.integers(5, 120)))


@settings(max_examples=60)
@given(st.tuples(*[sessions] * 7))
def test_any_week_agrees_with_the_standard_library(week: Week) -> None:
    loads = [0 if one is None else one[0] * one[1] for one in week]
    _day, days, load, monotony, strain, _note = row(week)
    assert int(days) == sum(value > 0 for value in loads)
    assert float(load) == sum(loads)
    spread = statistics.stdev(loads)
    if spread == 0:
        assert (monotony, strain) == ("-", "-")
        return
    assert float(monotony) == pytest.approx(statistics.fmean(loads) / spread, abs=0.005001)
    assert float(strain) == pytest.approx(
        sum(loads) * statistics.fmean(loads) / spread, abs=0.500001
    )
