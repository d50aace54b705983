"""Sessions become days: what is not known stays not known, every calendar day is there."""

from __future__ import annotations

import statistics

import pytest
from hypothesis import given
from hypothesis import strategies as st

from coach.model.ladders import ThrowDay, ThrowState
from coach.reports.facts import (
    Lifted,
    Recorded,
    Sat,
    average,
    exercises,
    first_day,
    gather,
    open_hold,
    slope_a_week,
    thrown,
    weeks,
)
from tests.reports import made_up


def test_every_calendar_day_is_there_with_or_without_a_session() -> None:
    found = made_up.facts(made_up.sat(0), made_up.sat(3))
    assert [day.day for day in found.days] == [made_up.day(n) for n in range(7)]
    assert [bool(day.sessions) for day in found.days] == [n in {0, 3} for n in range(7)]


def test_a_day_without_a_session_has_load_0_and_no_pain() -> None:
    idle = made_up.facts(made_up.sat(0)).days[1]
    assert idle.load == 0
    assert (idle.waking, idle.rest, idle.in_set, idle.after, idle.sleep) == (None,) * 5
    assert idle.throws is None


def test_an_answer_that_was_not_given_is_not_0() -> None:
    found = made_up.facts(made_up.sat(0, effort=None, pain_now=None)).days[0]
    assert found.load is None
    assert found.effort is None
    assert found.rest is None
    assert made_up.facts(made_up.sat(0, pain_now=0.0)).days[0].rest == 0


def test_load_is_effort_times_minutes_over_all_sessions_of_the_day() -> None:
    two = (made_up.sat(0), made_up.sat(0, effort=6.0, minutes=20.0))
    assert made_up.facts(*two).days[0].load == 4 * 30 + 6 * 20
    one_unknown = (made_up.sat(0), made_up.sat(0, minutes=None))
    assert made_up.facts(*one_unknown).days[0].load is None


def test_of_two_sessions_the_highest_pain_counts_and_all_sets() -> None:
    two = (made_up.sat(0, pain_now=1.0, worst_in_set=4.0), made_up.sat(0, pain_now=3.0))
    found = made_up.facts(*two).days[0]
    assert (found.rest, found.in_set, found.sets) == (3, 4, 6)


def test_a_session_that_was_cut_off_leaves_the_load_unknown() -> None:
    from coach.reports.facts import Event

    cut = Sat(1, made_up.opened(0), {}, None, None, (Event("typed", {}, made_up.opened(0)),))
    assert made_up.facts(cut).days[0].load is None


def test_throwing_told_the_day_after_stands_on_its_own_day() -> None:
    found = made_up.facts(made_up.sat(0), made_up.sat(1, threw_yesterday="bullpen"))
    assert [day.other_throws for day in found.days[:2]] == ["bullpen", ""]


@pytest.mark.parametrize(
    ("kind", "words"),
    [(None, ""), ("none", ""), ("off", ""), ("catch", "light catch"), ("game", "game")],
)
def test_no_throwing_is_told_under_any_of_its_names(kind: str | None, words: str) -> None:
    assert thrown(kind) == words


def test_throws_of_the_plan_are_counted_and_days_without_are_not_0() -> None:
    threw = ThrowDay(2, 25, "throws", "no soreness", 0, ThrowState(3), made_up.opened(0))
    found = made_up.facts(made_up.sat(0, threw=threw), made_up.sat(2))
    assert [day.throws for day in found.days[:3]] == [25, None, None]


def test_days_before_the_stretch_are_kept_apart_and_later_ones_left_out() -> None:
    found = made_up.facts(made_up.sat(0), made_up.sat(3), made_up.sat(6), since=2, last=4)
    assert [day.day for day in found.days] == [made_up.day(n) for n in (2, 3, 4)]
    assert [day.day for day in found.earlier] == [made_up.day(n) for n in (0, 1)]
    assert len(found.sessions) == 1


def test_a_wrong_clock_makes_no_century_of_days() -> None:
    past = made_up.sat(0, ended="none", done=(), day="1970-01-01")
    past = past._replace(opened_at="1970-01-01T08:00:00+00:00")
    ahead = made_up.sat(0, day="2099-01-01")._replace(opened_at="2099-01-01T08:00:00+00:00")
    found = made_up.facts(past, made_up.sat(0), made_up.sat(3), ahead)
    assert len(found.all_days) == 7
    assert found.outside == (past.opened_at, ahead.opened_at)
    assert first_day(found.recorded, made_up.day(6)) == made_up.day(0)
    rest = made_up.sat(-3, ended="none", done=())
    assert first_day(Recorded((past, rest, made_up.sat(0))), made_up.day(6)) == made_up.day(-3)
    assert first_day(Recorded((past,)), made_up.day(6)) == made_up.day(6)


def test_weeks_end_on_the_last_day_and_the_first_may_be_short() -> None:
    runs = weeks(made_up.facts(made_up.sat(0), last=15))
    assert [len(run) for run in runs] == [2, 7, 7]
    assert runs[-1][-1].day == made_up.day(15)


def test_exercises_stand_in_the_plans_order_and_strangers_last() -> None:
    one = made_up.sat(0, done=(made_up.done("stranger"), made_up.done(made_up.ROW)))
    two = made_up.sat(1, done=(made_up.done("side-lying external rotation"),))
    assert exercises(made_up.facts(one, two)) == (
        "side-lying external rotation",
        made_up.ROW,
        "stranger",
    )


def test_the_oldest_stop_that_nothing_opened_is_the_open_one() -> None:
    first, second = made_up.stop(0), made_up.stop(2)._replace(number=2)
    sats = (made_up.sat(0, first), made_up.sat(2, second))
    lift = Lifted(1, "in person", "M. Aalto", made_up.day(1), made_up.opened(1))
    assert open_hold(Recorded(sats)) == first
    assert open_hold(Recorded(sats, (lift,))) == second
    assert open_hold(Recorded(sats, (lift, lift._replace(hold=2)))) is None


readings = st.lists(
    st.one_of(st.none(), st.floats(0, 10, allow_nan=False).map(lambda value: round(value, 1))),
    min_size=0,
    max_size=40,
)


@given(readings)
def test_slope_and_mean_are_those_of_the_standard_library(values: list[float | None]) -> None:
    known = [(n, value) for n, value in enumerate(values) if value is not None]
    got = slope_a_week(tuple(values))
    if len(known) < 3:
        assert got is None
        return
    line = statistics.linear_regression([n for n, _v in known], [v for _n, v in known])
    assert got == pytest.approx(7 * line.slope, abs=1e-9)
    assert average([v for _n, v in known]) == pytest.approx(statistics.fmean(v for _n, v in known))


def test_a_slope_keeps_the_gaps_on_the_time_axis() -> None:
    assert slope_a_week((0.0, None, None, None, None, None, None, 1.0, None, None, 10 / 7)) == (
        pytest.approx(1.0)
    )


def test_gathering_an_empty_diary_gives_empty_days() -> None:
    found = gather(made_up.sample_plan(), Recorded(), made_up.day(0), made_up.day(2))
    assert len(found.days) == 3
    assert not found.sessions
