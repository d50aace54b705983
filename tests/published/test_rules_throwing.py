"""Throwing tables and walls against what was printed; each value names where it was read."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import product

import pytest

from coach.model.history import Outing
from coach.model.ladders import ThrowState
from coach.model.program import Place, ThrowingLine
from coach.rules.pitching import (
    caught_today,
    first_day_again,
    first_day_free,
    game_today,
    may_bowl,
    may_catch,
    may_pitch_after_catching,
    may_throw_after,
    most_pitches,
    over_the_cap,
    pitched_today,
    rest_days,
    third_day_running,
)
from coach.rules.throwing import (
    NextThrow,
    Sore,
    class_days,
    next_throws,
    soreness,
    step_shown,
    step_today,
)
from coach.rules.throwing_tables import (
    BOWLING,
    CATCHER_CLASSES,
    EDITIONS,
    LINE,
    PITCHER_CLASSES,
    STEP_TABLES,
    WINDUP,
)

# ---------------------------------------------------------------- pitches in games

# National youth pitching guideline, 2015 edition: age, most a day, then the last pitch count of
# each band of rest days (0, 1, 2, 3 days; more is 4).
EVERY = tuple(EDITIONS)
PRINTED_2015 = [
    (7, 50, (20, 35, 50)),
    (8, 50, (20, 35, 50)),
    (9, 75, (20, 35, 50, 65)),
    (10, 75, (20, 35, 50, 65)),
    (11, 85, (20, 35, 50, 65)),
    (12, 85, (20, 35, 50, 65)),
    (13, 95, (20, 35, 50, 65)),
    (14, 95, (20, 35, 50, 65)),
    (15, 95, (30, 45, 60, 75)),
    (16, 95, (30, 45, 60, 75)),
    (17, 105, (30, 45, 60, 75)),
    (18, 105, (30, 45, 60, 75)),
    (19, 120, (30, 45, 60, 75)),
    (22, 120, (30, 45, 60, 75)),
]


@pytest.mark.parametrize(("age", "most", "tops"), PRINTED_2015)
def test_each_band_edge_of_the_pitch_table(age: int, most: int, tops: tuple[int, ...]) -> None:
    assert most_pitches(age) == most
    for days, top in enumerate(tops):
        assert rest_days(age, top) == days
        # One pitch more is the next band (over the day's most at 7 and 8: still more rest).
        assert rest_days(age, top + 1) == days + 1


# The later edition (secondary pages) has 61 to 80 for three days at 17 to 22, and, second-hand, a
# fifth day from 106 at 19 to 22. Where the editions differ the larger rest counts.
@pytest.mark.parametrize(
    ("age", "pitches", "days"),
    [(17, 78, 4), (17, 80, 4), (18, 81, 4), (20, 105, 4), (20, 106, 5), (20, 110, 5), (18, 106, 4)],
)
def test_where_editions_differ_the_larger_rest_counts(age: int, pitches: int, days: int) -> None:
    assert rest_days(age, pitches) == days


# Examples printed on league pages: 12 years and 60 pitches, 3 days; 10 years and 76, 4 days; a
# count of 45 at the start of a batter and 51 at its end is 3 days by the total.
@pytest.mark.parametrize(
    ("age", "pitches", "days"), [(12, 60, 3), (10, 76, 4), (12, 51, 3), (14, 66, 4), (8, 0, 0)]
)
def test_printed_examples_of_rest(age: int, pitches: int, days: int) -> None:
    assert rest_days(age, pitches) == days


@pytest.mark.parametrize("age", [6, 23])
def test_ages_outside_the_table_have_no_row_and_the_most_rest(age: int) -> None:
    assert most_pitches(age) is None
    assert rest_days(age, 10) == 5
    assert rest_days(age, 0) == 0
    assert over_the_cap(age, 1, EVERY)


# The editions one by one: 2015 asks four days at 76 to 80 where the later one asks three; the later
# one, second-hand, five from 106 on at 19 to 22.
@pytest.mark.parametrize(
    ("age", "pitches", "editions", "days"),
    [
        (17, 78, ("2015 edition",), 4),
        (17, 78, ("later edition",), 3),
        (17, 78, ("later edition", "2015 edition"), 4),
        (20, 106, ("2015 edition",), 4),
        (20, 106, ("later edition",), 5),
        (15, 75, ("later edition",), 3),
        (15, 76, ("later edition",), 4),
        (15, 10, (), 5),
    ],
)
def test_only_the_editions_that_the_plan_names_count(
    age: int, pitches: int, editions: tuple[str, ...], days: int
) -> None:
    assert rest_days(age, pitches, editions) == days


@pytest.mark.parametrize(
    ("age", "most"), [(8, 50), (10, 75), (12, 85), (14, 95), (16, 95), (18, 105), (22, 120)]
)
def test_over_the_cap_is_one_pitch_more(age: int, most: int) -> None:
    assert not over_the_cap(age, most, EVERY)
    assert over_the_cap(age, most + 1, EVERY)


def test_no_band_overlaps_another_or_leaves_a_gap() -> None:
    # Two circulating copies do: 65 to 66 left out, 66 in two bands.
    for edition in EDITIONS.values():
        ages = [age for row in edition for age in range(row.age_from, row.age_to + 1)]
        assert ages == list(range(7, 23))
        for row in edition:
            assert list(row.tops) == sorted(set(row.tops))


# Monday and 1, 2, 3, 4 rest days: Wednesday, Thursday, Friday, Saturday (a league page, all four
# printed); Saturday and 3 days: Wednesday.
@pytest.mark.parametrize(
    ("outing", "rest", "again"),
    [
        (date(2026, 11, 9), 1, "Wednesday"),
        (date(2026, 11, 9), 2, "Thursday"),
        (date(2026, 11, 9), 3, "Friday"),
        (date(2026, 11, 9), 4, "Saturday"),
        (date(2026, 11, 14), 3, "Wednesday"),
        (date(2026, 11, 9), 0, "Tuesday"),
    ],
)
def test_rest_days_are_whole_days_between(outing: date, rest: int, again: str) -> None:
    assert f"{first_day_again(outing, rest):%A}" == again
    # The count that is one day short, seen in a public program, must not come out.
    assert first_day_again(outing, rest) != outing + timedelta(days=rest)


def test_rest_days_pass_a_leap_day_and_a_year_end() -> None:
    assert first_day_again(date(2028, 2, 27), 2) == date(2028, 3, 1)
    assert first_day_again(date(2027, 2, 27), 2) == date(2027, 3, 2)
    assert first_day_again(date(2026, 12, 30), 1) == date(2027, 1, 1)


@pytest.mark.hazard("H-23")
def test_monday_and_three_rest_days_keep_the_throws_shut_until_friday() -> None:
    outings = (Outing("2026-11-09", 60, rest_days(12, 60)),)
    for day, outcome in ((10, "rest"), (11, "rest"), (12, "rest"), (13, "may")):
        assert may_throw_after(outings, date(2026, 11, day)).outcome == outcome
    assert first_day_free(outings, date(2026, 11, 10)) == date(2026, 11, 13)
    assert first_day_free((), date(2026, 11, 10)) == date(2026, 11, 10)


def test_of_two_outings_the_longer_rest_counts() -> None:
    outings = (Outing("2026-11-11", 10, 0), Outing("2026-11-09", 80, 4))
    assert may_throw_after(outings, date(2026, 11, 13)).outcome == "rest"
    assert may_throw_after(outings, date(2026, 11, 14)).outcome == "may"


# The guideline's age pages: not on three days in a row, not in two games on one day.
def test_a_game_today_is_held_against_rest_and_the_third_day() -> None:
    today = date(2026, 11, 11)
    few = (Outing("2026-11-09", 10, 0), Outing("2026-11-10", 12, 0))
    assert game_today(few, today).outcome == "third day"
    assert game_today(few[1:], today).outcome == "may"
    assert game_today((Outing("2026-11-10", 40, 2),), today).outcome == "rest"


@pytest.mark.parametrize(
    ("pitches", "catches", "outcome"),
    [
        (0, True, "none"),
        (1, True, "no game"),
        (40, True, "no game"),
        (41, True, "no catching"),
        (41, False, "no game"),
    ],
)
def test_who_pitched_today_pitches_in_no_other_game_and_from_41_on_does_not_catch(
    pitches: int, catches: bool, outcome: str
) -> None:
    assert pitched_today(pitches, catches=catches).outcome == outcome


@pytest.mark.parametrize(("innings", "outcome"), [(3, "none"), (4, "no pitching")])
def test_who_caught_four_innings_does_not_pitch_that_day(innings: int, outcome: str) -> None:
    assert caught_today(innings).outcome == outcome


# A youth league's regulation: 41 pitches, then no catching; 4 innings caught, then no pitching.
def test_catcher_and_pitcher_on_one_day() -> None:
    assert may_catch(40)
    assert not may_catch(41)
    assert may_pitch_after_catching(3)
    assert not may_pitch_after_catching(4)


def test_three_days_running_are_seen_whatever_the_counts() -> None:
    today = date(2026, 11, 11)
    both = (date(2026, 11, 9), date(2026, 11, 10))
    assert third_day_running(both, today)
    assert not third_day_running(both[1:], today)
    assert not third_day_running(both[:1], today)


# ---------------------------------------------------------------- step tables


def test_the_updated_table_adds_up_as_printed() -> None:
    # Reinold 2024: 45 steps, totals checked cell by cell.
    totals = [step.throws() for step in STEP_TABLES["updated 45 steps"].steps]
    assert len(totals) == 45
    assert sum(totals) == 2940
    assert totals[0] == min(totals) == 20
    assert totals[-1] == max(totals) == 105
    assert totals[8:10] == [65, 50]
    assert totals[18:21] == [25, 35, 40]
    assert totals[39:42] == [45, 50, 55]
    steps = STEP_TABLES["updated 45 steps"].steps
    assert steps[1] == steps[2]
    assert steps[25] == steps[26]
    last = steps[44].sets[0]
    assert [part.distance_ft for part in last if part.manner == LINE] == [105, 90, 75]
    assert [(part.distance_ft, part.throws) for part in last if part.manner == WINDUP] == [(60, 20)]


@pytest.mark.parametrize(
    ("name", "throws"),
    [
        # an orthopaedic practice's page, with the printed (smaller) counts at steps 7 and 8
        ("youth 8 steps", [70, 105, 70, 105, 70, 105, 55, 90]),
        # adapted from Axe 1996; the ninth phase is a simulated game
        ("adolescent 9 phases", [50, 50, 55, 65, 45, 65, 60, 85, 0]),
        # a university clinic's handout; the seventh phase is regular work
        ("adult 7 phases", [30, 40, 60, 55, 65, 60, 0]),
    ],
)
def test_each_step_has_the_printed_number_of_throws(name: str, throws: list[int]) -> None:
    assert [step.throws() for step in STEP_TABLES[name].steps] == throws


def test_the_longest_throws_are_as_printed() -> None:
    far = {
        name: max(p.distance_ft for s in table.steps for p in s.parts())
        for name, table in STEP_TABLES.items()
    }
    assert far == {
        "updated 45 steps": 120,
        "youth 8 steps": 90,
        "adolescent 9 phases": 120,
        "adult 7 phases": 180,
        "tennis 21 steps": 0,  # the court says how far
    }


def test_the_tennis_table_adds_up_as_printed() -> None:
    # Sports Health 2016;8:536-540, Table 2: total = ground strokes + serves, steps 1 to 20.
    printed = [10, 12, 13, 16, 18, 22, 28, 34, 40, 44, 44, 66, 88, 66, 88, 132, 176, 88, 264, 352]
    steps = STEP_TABLES["tennis 21 steps"].steps
    assert [step.throws() for step in steps] == [*printed, 0]
    counts = [{part.unit: part.throws for part in step.parts()} for step in steps]
    # games * ground strokes a game, and games / 2 * serves a game, where both are printed
    for step, games, ground, serves in (
        *((6, 2, 7, 8), (10, 4, 7, 8), (11, 4, 7, 8), (12, 6, 7, 8), (13, 8, 7, 8), (14, 6, 7, 8)),
        *((15, 8, 7, 8), (18, 8, 7, 8), (20, 16, 14, 16)),
    ):
        assert counts[step - 1] == {"ground strokes": games * ground, "serves": games * serves / 2}
    assert counts[0] == {"ground strokes": 10}


@pytest.mark.parametrize(
    ("step", "age", "shown"),
    [
        (1, 20, "20 throws at 30 ft (9 m), on an arc"),
        (2, 20, "20 throws at 30 ft (9 m), on an arc, 10 throws at 45 ft (14 m), on an arc"),
        (0, 20, "none"),
        (45, 20, None),
        (46, 20, "none"),
    ],
)
def test_a_step_shows_distance_and_count_and_none_that_the_table_lacks(
    step: int, age: int, shown: str | None
) -> None:
    decision = step_shown(STEP_TABLES["updated 45 steps"], step, age)
    assert decision.outcome == shown if shown else decision.outcome != "none"
    assert "%" not in decision.outcome


@pytest.mark.parametrize(("age", "offered"), [(12, False), (13, True)])
def test_the_adolescent_table_is_not_for_those_under_13(age: int, offered: bool) -> None:
    decision = step_shown(STEP_TABLES["adolescent 9 phases"], 1, age)
    assert (decision.outcome != "none") is offered


def test_a_step_without_throws_is_a_game() -> None:
    assert step_shown(STEP_TABLES["adult 7 phases"], 7, 30).outcome == "game"


# ---------------------------------------------------------------- class schedules


# Axe 2001: pitchers of class C every other day, of class D every other day, every third day at
# steps 8 to 12, then every other day; class E at most one step in three days up to step 7.
@pytest.mark.parametrize(
    ("letter", "step", "days"),
    [
        ("A", 4, 1),
        ("C", 1, 2),
        ("D", 7, 2),
        ("D", 8, 3),
        ("D", 12, 3),
        ("D", 13, 2),
        ("D", 21, 2),
        ("E", 7, 3),
        ("E", 8, None),
        ("C", 22, None),
    ],
)
def test_pitchers_throw_as_often_as_their_class_says(
    letter: str, step: int, days: int | None
) -> None:
    assert class_days(PITCHER_CLASSES[letter][1], step) == days


# Axe 2009: catchers, 13 steps.
@pytest.mark.parametrize(
    ("letter", "step", "days"),
    [("D", 5, 2), ("D", 6, 3), ("D", 9, 3), ("D", 10, 2), ("E", 5, 3), ("E", 6, None)],
)
def test_catchers_throw_as_often_as_their_class_says(
    letter: str, step: int, days: int | None
) -> None:
    assert class_days(CATCHER_CLASSES[letter][1], step) == days


def test_classes_start_where_the_handouts_start_them() -> None:
    assert {k: v[0] for k, v in PITCHER_CLASSES.items()} == {"A": 4, "B": 4, "C": 1, "D": 1, "E": 1}
    assert {k: v[0] for k, v in CATCHER_CLASSES.items()} == {"A": 3, "B": 1, "C": 1, "D": 1, "E": 1}


# ---------------------------------------------------------------- soreness (Axe 2001, Axe 2009)

STOP = NextThrow("stop", 2, -1)
NONE = NextThrow("none", 1, 0)
REPEAT = NextThrow("repeat", 0, 0)
THROW = NextThrow("throw", 0, 1)

ROWS = [
    (Sore(), THROW),
    (Sore(in_warm_up=True), REPEAT),
    (Sore(in_warm_up=True, late=True), STOP),
    (Sore(in_warm_up=True, after_15=True), STOP),
    (Sore(over_an_hour=True), NONE),
    (Sore(next_day=True), NONE),
    # in no published row: soreness late in a clean session counts as the third (set here)
    (Sore(late=True), STOP),
    # in no published row either: pain over the plan's ceiling on throwing (set here)
    (Sore(over_the_ceiling=True), STOP),
    (Sore(in_warm_up=True, over_the_ceiling=True), STOP),
    (Sore(next_day=True, over_the_ceiling=True), STOP),
    # pairs: the more cautious counts
    (Sore(over_an_hour=True, in_warm_up=True), NONE),
    (Sore(next_day=True, after_15=True), STOP),
    (Sore(next_day=True, late=True), STOP),
    (Sore(*[True] * 6), STOP),
]


@pytest.mark.parametrize(("sore", "follows"), ROWS)
def test_each_row_of_the_soreness_table(sore: Sore, follows: NextThrow) -> None:
    assert soreness(sore)[0] == follows


def alone(sore: Sore) -> NextThrow:
    """What a single yes asks for, written out again: Axe's rows, and the three that were set here."""
    if sore.after_15 or sore.late or sore.over_the_ceiling:
        return STOP
    if sore.over_an_hour or sore.next_day:
        return NONE
    return REPEAT if sore.in_warm_up else THROW


@pytest.mark.parametrize("said", list(product((False, True), repeat=6)))
def test_of_all_rows_that_fit_the_most_cautious_counts(said: tuple[bool, ...]) -> None:
    # stop before rest, more rest before less, a lower step before a higher one
    singles = [Sore(*(n == at for n in range(6))) for at, yes in enumerate(said) if yes]
    caution = {STOP: 3, NONE: 2, REPEAT: 1, THROW: 0}
    most = max((alone(one) for one in singles), key=caution.__getitem__, default=THROW)
    assert soreness(Sore(*said))[0] == most


def test_late_soreness_says_that_the_row_was_set_here() -> None:
    assert "set here" in soreness(Sore(late=True))[1].source
    assert "set here" in soreness(Sore(over_the_ceiling=True))[1].source
    assert "set here" not in soreness(Sore(in_warm_up=True))[1].source


CLEARED = ThrowingLine(
    "2026-11-06", "M. Aalto", "youth 8 steps", 1, 8, 2, 1, "", Place("plan.yaml", 19)
)


# The last step done was 6, so 7 is planned. Handouts: no soreness, 7 was thrown and 8 is next;
# soreness that goes by throw 15, 6 again and then 7; soreness that comes back, 5 next. From which
# step to drop is not spelt out; the lower one is taken.
@pytest.mark.parametrize(
    ("sore", "today", "planned", "outcome"),
    [
        (Sore(), 7, 8, "up"),
        (Sore(in_warm_up=True), 6, 7, "same"),
        (Sore(in_warm_up=True, late=True), 7, 5, "down"),
        (Sore(in_warm_up=True, after_15=True), 7, 5, "down"),
        (Sore(late=True), 7, 5, "down"),
        (Sore(next_day=True), None, 7, "same"),
    ],
)
def test_the_step_today_and_the_next_one(
    sore: Sore, today: int | None, planned: int, outcome: str
) -> None:
    state = ThrowState(planned=7, last_done=6)
    follows, _ = soreness(sore)
    after, decision = next_throws(state, follows, CLEARED)
    assert step_today(state, follows) == today
    assert (after.planned, decision.outcome) == (planned, outcome)


@pytest.mark.parametrize(
    ("state", "planned", "outcome"),
    [
        (ThrowState(1), 1, "contact"),
        (ThrowState(2, last_done=1), 1, "contact"),
        (ThrowState(2, last_done=2), 1, "down"),
        (ThrowState(2), 1, "down"),
        (ThrowState(5, last_done=5, downs_running=1), 4, "contact"),
    ],
)
def test_step_one_is_the_floor_and_twice_down_asks_the_clinician(
    state: ThrowState, planned: int, outcome: str
) -> None:
    after, decision = next_throws(state, STOP, CLEARED)
    assert (after.planned, decision.outcome) == (planned, outcome)
    assert after.downs_running == state.downs_running + 1
    assert after.clean_here == 0


def test_a_repeat_at_step_one_is_step_one() -> None:
    assert step_today(ThrowState(1), REPEAT) == 1


@pytest.mark.parametrize(("planned", "outcome"), [(7, "up"), (8, "same"), (9, "same")])
def test_no_step_above_the_plans_last(planned: int, outcome: str) -> None:
    after, decision = next_throws(ThrowState(planned, planned - 1), THROW, CLEARED)
    assert decision.outcome == outcome
    assert after.planned == max(planned, 8)


def test_a_step_that_the_plan_wants_twice_is_done_twice() -> None:
    twice = CLEARED._replace(sessions_a_step=2)
    once, first = next_throws(ThrowState(3, 2), THROW, twice)
    assert (once, first.outcome) == (ThrowState(3, 3, 1), "same")
    sore, _ = next_throws(once, REPEAT, twice)
    assert sore.clean_here == 0
    again, second = next_throws(once, THROW, twice)
    assert (again, second.outcome) == (ThrowState(4, 3), "up")


def test_a_clean_day_ends_a_run_of_downs() -> None:
    after, _ = next_throws(ThrowState(3, 3, 0, 1), THROW, CLEARED)
    assert after.downs_running == 0


# ---------------------------------------------------------------- junior fast bowling


# England and Wales Cricket Board: a club page's example and two that follow from the rule (4 days
# in 7, 2 in a row). 2026-11-09 is a Monday.
@pytest.mark.parametrize(
    ("days", "allowed"),
    [
        ((9, 11, 13, 14), True),
        ((13, 14, 15), False),
        ((9, 10, 12, 14, 15), False),
        ((9, 10, 12, 14), True),
        ((8, 9, 11, 13, 15), True),
        ((9, 10, 12, 14, 16), True),
    ],
)
def test_bowling_days_in_a_week(days: tuple[int, ...], allowed: bool) -> None:
    *before, today = (date(2026, 11, day) for day in days)
    assert may_bowl(tuple(before), today) is allowed


@pytest.mark.parametrize(("age", "spell", "day"), [(13, 5, 10), (14, 6, 12), (16, 7, 18)])
def test_overs_by_age(age: int, spell: int, day: int) -> None:
    row = next(row for row in BOWLING if row.age_from <= age <= row.age_to)
    assert (row.overs_a_spell, row.overs_a_day) == (spell, day)
