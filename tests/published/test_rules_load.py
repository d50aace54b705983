"""Load figures against printed ones, and the wrong ways that were seen in print."""

from __future__ import annotations

from math import sqrt

import pytest

from coach.rules.load import (
    monotony,
    rise_percent,
    rolling_ratio,
    session_load,
    strain,
    weekly_load,
    weighted_ratio,
)


# Printed on two web pages: 7 x 75 = 525 and 7 x 60 = 420 (Foster 2001 for the formula).
@pytest.mark.parametrize(("effort", "minutes", "load"), [(7, 75, 525), (7, 60, 420), (6, 60, 360)])
def test_session_load_is_effort_times_minutes(effort: float, minutes: float, load: float) -> None:
    assert session_load(effort, minutes) == load


# Computed here with n - 1 (no published week with daily loads was found).
WEEKS = [
    ((300, 0, 450, 0, 600, 240, 0), 1590, 0.9419, 1497.6),
    ((420, 360, 0, 420, 360, 0, 525), 2085, 1.4131, 2946.22),
    ((0, 0, 0, 700, 0, 0, 0), 700, 0.378, 264.58),
]


@pytest.mark.parametrize(("week", "load", "same", "strained"), WEEKS)
def test_monotony_and_strain_with_n_minus_1(
    week: tuple[float, ...], load: float, same: float, strained: float
) -> None:
    assert weekly_load(week) == load
    assert monotony(week) == pytest.approx(same, abs=5e-5)
    assert strain(week) == pytest.approx(strained, abs=0.01)


def test_a_week_with_one_session_has_a_monotony_of_one_over_root_seven() -> None:
    assert monotony((0, 0, 500, 0, 0, 0, 0)) == pytest.approx(1 / sqrt(7))


@pytest.mark.parametrize("load", [0.0, 100.0])
def test_seven_days_alike_are_undefined(load: float) -> None:
    assert monotony((load,) * 7) is None
    assert strain((load,) * 7) is None


@pytest.mark.parametrize("days", [6, 8])
def test_a_week_has_seven_days(days: int) -> None:
    with pytest.raises(ValueError, match="7 daily loads"):
        monotony((1.0,) * days)


def test_monotony_is_not_mean_times_spread_nor_divided_by_n() -> None:
    # A coaching page once printed the product; a calculator page divides by n (8 % higher).
    week = WEEKS[0][0]
    got = monotony(week)
    assert got is not None
    assert got != pytest.approx(1.0174, abs=1e-3)
    assert got < 2


# Printed: five weeks of an athlete's log (load, monotony, strain), rounded; 1 % tolerance.
@pytest.mark.parametrize(
    ("load", "same", "strained"),
    [
        (1592, 1.63, 2595),
        (1298, 1.79, 2324),
        (555, 0.55, 307),
        (1307, 0.9, 1173),
        (1390, 1.07, 1494),
    ],
)
def test_printed_strain_is_load_times_monotony(load: float, same: float, strained: float) -> None:
    # The same relation our strain obeys, on a week scaled to that load.
    assert load * same == pytest.approx(strained, rel=0.01)
    week = tuple(load * part / 1590 for part in WEEKS[0][0])
    ours = strain(week)
    alike = monotony(week)
    assert ours is not None
    assert alike is not None
    assert ours == pytest.approx(load * alike)


# Menaspa 2017 (loads) and Williams 2017 (results): one rolling ratio, three weighted ones.
ATHLETES = [
    ((30,) * 21 + (50,) * 7, 1.25, 1.40),
    (
        (
            15,
            15,
            20,
            20,
            20,
            25,
            25,
            25,
            25,
            30,
            30,
            30,
            35,
            35,
            35,
            35,
            35,
            40,
            45,
            45,
            45,
            40,
            40,
            45,
            45,
            50,
            60,
            70,
        ),
        1.41,
        1.49,
    ),
    (
        (
            55,
            50,
            40,
            60,
            45,
            50,
            50,
            20,
            30,
            80,
            25,
            10,
            30,
            15,
            20,
            15,
            5,
            5,
            15,
            5,
            5,
            5,
            5,
            15,
            45,
            90,
            95,
            95,
        ),
        1.55,
        1.90,
    ),
]


@pytest.mark.parametrize(("daily", "weighted", "seeded_with_zero"), ATHLETES)
def test_the_published_ratios(
    daily: tuple[float, ...], weighted: float, seeded_with_zero: float
) -> None:
    coupled = rolling_ratio(daily)
    apart = rolling_ratio(daily, coupled=False)
    got = weighted_ratio(daily)
    assert coupled is not None
    assert apart is not None
    assert got is not None
    assert round(coupled, 2) == 1.43
    assert round(apart, 4) == 1.6667
    assert round(got, 2) == weighted
    assert round(got, 2) != seeded_with_zero


def test_after_three_idle_weeks_the_ratio_says_nothing_of_the_athlete() -> None:
    back = (0.0,) * 21 + (30.0,) * 7
    assert rolling_ratio(back) == 4.0
    assert rolling_ratio(back, coupled=False) is None
    assert weighted_ratio(back) == pytest.approx(2.2015, abs=1e-4)
    assert rolling_ratio((0.0,) * 28) is None
    assert weighted_ratio((0.0,) * 28) is None


@pytest.mark.parametrize(("days", "defined"), [(27, False), (28, True), (29, True)])
def test_a_ratio_needs_28_days(days: int, defined: bool) -> None:
    daily = (30.0,) * days
    assert (rolling_ratio(daily) == 1.0) is defined
    assert (weighted_ratio(daily) == pytest.approx(1.0)) is defined


def test_only_the_last_28_days_count_in_the_rolling_ratio() -> None:
    assert rolling_ratio((900.0,) * 10 + (30.0,) * 28) == 1.0


# Moller 2017: the week against the mean of the four weeks BEFORE it.
@pytest.mark.parametrize(
    ("week", "before", "percent"),
    [
        (160, (100, 100, 100, 100), 60),
        (100, (50, 100, 150, 100), 0),
        (50, (100, 100, 100, 100), -50),
        (100, (100, 100, 100), None),
        (100, (0, 0, 0, 0), None),
    ],
)
def test_a_rise_is_against_the_four_weeks_before(
    week: float, before: tuple[float, ...], percent: float | None
) -> None:
    assert rise_percent(week, before) == (None if percent is None else pytest.approx(percent))
