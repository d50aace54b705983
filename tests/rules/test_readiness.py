from datetime import date, datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import pytest

from coach.model.decisions import Basis
from coach.model.history import DayRecord, Done
from coach.model.program import Exercise, Limits, Place, Plan, Prescription
from coach.model.quantities import Load
from coach.rules.readiness import (
    equipment,
    habit_hours,
    may_be_muscle_ache,
    may_repeat,
    muscle_ache,
    second_session,
    sets_after_short_sleep,
    short_sleep,
    sleep_habit,
    throwing_day,
    warm_up_first,
    week_full,
)

TODAY = date(2026, 11, 25)
UTC = timezone.utc  # noqa: UP017
CAPS = Limits(4, 30, 3, Place("plan.yaml", 21))


# ---------------------------------------------------------------- sleep


@pytest.mark.parametrize(("hours", "outcome"), [(5.75, "short"), (6, "enough"), (6.25, "enough")])
def test_a_night_under_six_hours_is_short(plan: Plan, hours: float, outcome: str) -> None:
    decision = short_sleep(hours, plan)
    assert decision.outcome == outcome
    assert decision.basis is Basis.OURS


@pytest.mark.parametrize(("hours", "outcome"), [(4.75, "short"), (5, "enough")])
def test_the_plan_may_set_the_hours_of_a_short_night(
    plan: Plan, hours: float, outcome: str
) -> None:
    changed = plan._replace(changed=(("ready.sleep", 5.0),))
    decision = short_sleep(hours, changed)
    assert decision.outcome == outcome
    assert decision.basis is Basis.PLAN


@pytest.mark.parametrize(("sets", "left"), [(0, 0), (1, 1), (2, 2), (3, 2), (4, 3)])
def test_a_short_night_takes_a_set_only_where_there_are_more_than_two(sets: int, left: int) -> None:
    assert sets_after_short_sleep(sets) == left


def test_a_week_without_recorded_nights_makes_no_note() -> None:
    assert sleep_habit(None, 15).outcome == "enough"


@pytest.mark.parametrize(("age", "hours"), [(12, 9), (13, 8), (18, 8), (19, 7)])
def test_a_habit_under_the_hours_for_the_age_is_a_note(age: int, hours: float) -> None:
    assert habit_hours(age) == hours
    assert sleep_habit(hours - 0.25, age).outcome == "note"
    assert sleep_habit(hours, age).outcome == "enough"


# ---------------------------------------------------------------- spacing

EVENING = datetime(2026, 11, 23, 19, 0, tzinfo=UTC)


@pytest.mark.parametrize(
    ("apart", "now", "outcome"),
    [
        # one day apart: the next date, and 16 hours or more
        (1, datetime(2026, 11, 23, 23, 59, tzinfo=UTC), "wait"),
        (1, datetime(2026, 11, 24, 10, 59, tzinfo=UTC), "wait"),
        (1, datetime(2026, 11, 24, 11, 0, tzinfo=UTC), "may"),
        # two days apart: the date after next, and 40 hours or more
        (2, datetime(2026, 11, 24, 23, 0, tzinfo=UTC), "wait"),
        (2, datetime(2026, 11, 25, 10, 59, tzinfo=UTC), "wait"),
        (2, datetime(2026, 11, 25, 11, 0, tzinfo=UTC), "may"),
        # no spacing: at once, but never before the last one ended
        (0, EVENING, "may"),
        (0, EVENING - timedelta(seconds=1), "wait"),
    ],
)
def test_dates_and_hours_must_both_have_gone_by(apart: int, now: datetime, outcome: str) -> None:
    decision = may_repeat(EVENING.isoformat(), now, apart)
    assert decision.outcome == outcome
    assert decision.rule == "ready.spacing"


def test_what_was_never_done_may_be_done() -> None:
    assert may_repeat(None, EVENING, 2).outcome == "may"


@pytest.mark.parametrize("record", ["", "tuesday", "2026-11-01T19:00:00"])
def test_a_record_that_cannot_be_placed_waits(record: str) -> None:
    assert may_repeat(record, EVENING, 1).outcome == "wait"


@pytest.mark.parametrize(("apart", "words"), [(1, "1 day "), (2, "2 days ")])
def test_the_wait_names_its_days(apart: int, words: str) -> None:
    assert words in may_repeat(EVENING.isoformat(), EVENING, apart).why


@pytest.mark.hazard("H-05")
def test_a_flight_east_over_twelve_zones_gains_no_day() -> None:
    last = datetime(2026, 11, 23, 19, 0, tzinfo=timezone(timedelta(hours=-2)))
    now = datetime(2026, 11, 24, 19, 0, tzinfo=timezone(timedelta(hours=10)))  # 12 h later
    assert may_repeat(last.isoformat(), now, 1).outcome == "wait"
    assert may_repeat(last.isoformat(), now + timedelta(hours=4), 1).outcome == "may"


@pytest.mark.hazard("H-05")
def test_a_flight_west_over_twelve_zones_waits_for_the_date() -> None:
    last = datetime(2026, 11, 24, 8, 0, tzinfo=timezone(timedelta(hours=10)))
    now = datetime(2026, 11, 24, 20, 0, tzinfo=timezone(timedelta(hours=-2)))  # 24 h later
    assert may_repeat(last.isoformat(), now, 1).outcome == "wait"
    assert may_repeat(last.isoformat(), now + timedelta(hours=4), 1).outcome == "may"


@pytest.mark.parametrize("night", [(2026, 3, 28), (2026, 10, 24)])
@pytest.mark.hazard("H-05")
def test_the_night_the_clocks_change_is_reckoned_in_true_hours(night: tuple[int, int, int]) -> None:
    zone = ZoneInfo("Europe/Helsinki")
    last = datetime(*night, 19, 0, tzinfo=zone)
    # 16 true hours after 19:00: an hour later by the wall in spring, an hour earlier in autumn.
    due = (last.astimezone(UTC) + timedelta(hours=16)).astimezone(zone)
    assert due.hour == (12 if night[1] == 3 else 10)
    assert may_repeat(last.isoformat(), due, 1).outcome == "may"
    assert may_repeat(last.isoformat(), due - timedelta(minutes=1), 1).outcome == "wait"


@pytest.mark.parametrize(
    ("last", "now"),
    [
        (datetime(2028, 2, 28, 19, tzinfo=UTC), datetime(2028, 3, 1, 19, tzinfo=UTC)),
        (datetime(2027, 2, 27, 19, tzinfo=UTC), datetime(2027, 3, 1, 19, tzinfo=UTC)),
        (datetime(2026, 12, 30, 19, tzinfo=UTC), datetime(2027, 1, 1, 19, tzinfo=UTC)),
    ],
)
def test_leap_day_february_and_year_end_count_as_days(last: datetime, now: datetime) -> None:
    assert may_repeat(last.isoformat(), now, 2).outcome == "may"
    assert may_repeat(last.isoformat(), now, 3).outcome == "wait"


# ---------------------------------------------------------------- the day and the week


def record(day: str, *done: Done, ended: str = "done") -> DayRecord:
    return DayRecord(day, f"{day}T18:00:00+00:00", ended, 3, done=done)


WORK = Done("band row", 3, loaded=True, ended_at="2026-11-25T18:30:00+00:00")
MOVES = Done("pendulum", 1, loaded=False, ended_at="2026-11-25T08:30:00+00:00")


@pytest.mark.parametrize(
    ("records", "outcome"),
    [
        ((), "first"),
        ((record("2026-11-25", WORK),), "twice daily only"),
        ((record("2026-11-25", MOVES),), "first"),
        ((record("2026-11-25", WORK._replace(sets=0)),), "first"),
        ((record("2026-11-25", WORK._replace(sets=1)),), "twice daily only"),
        ((record("2026-11-25"), record("2026-11-25", MOVES, WORK)), "twice daily only"),
        ((record("2026-11-24", WORK),), "first"),
    ],
)
@pytest.mark.hazard("H-16")
def test_one_session_with_load_a_day(records: tuple[DayRecord, ...], outcome: str) -> None:
    assert second_session(records, TODAY).outcome == outcome


@pytest.mark.parametrize(
    ("days", "outcome"),
    [
        ([], "open"),
        (["2026-11-24", "2026-11-22"], "open"),
        (["2026-11-24", "2026-11-22", "2026-11-19"], "rest"),
        (["2026-11-24", "2026-11-22", "2026-11-18"], "open"),
        (["2026-11-25", "2026-11-22", "2026-11-19"], "rest"),
        (["2026-11-26", "2026-11-24", "2026-11-22"], "open"),
    ],
)
def test_the_weeks_sessions_are_those_of_seven_days_today_included(
    days: list[str], outcome: str
) -> None:
    decision = week_full(tuple(record(day, MOVES) for day in days), TODAY, CAPS)
    assert decision.outcome == outcome
    assert decision.place == CAPS.place


@pytest.mark.parametrize(("sets", "outcome"), [(0, "open"), (1, "rest")])
def test_a_session_counts_from_its_first_set(sets: int, outcome: str) -> None:
    days = tuple(record(f"2026-11-{day}", MOVES._replace(sets=sets)) for day in (22, 23, 24))
    assert week_full(days, TODAY, CAPS).outcome == outcome


def test_a_start_at_which_nothing_was_done_is_no_session() -> None:
    idle = tuple(record(f"2026-11-{day}", ended="none") for day in (22, 23, 24))
    assert week_full(idle, TODAY, CAPS).outcome == "open"


@pytest.mark.parametrize(("moves", "outcome"), [(("pendulum",), "first"), ((), "none")])
def test_a_warm_up_comes_first_where_there_is_one(moves: tuple[str, ...], outcome: str) -> None:
    assert warm_up_first(moves).outcome == outcome


@pytest.mark.parametrize(
    ("pain", "days", "may"),
    [(0, 0, True), (2, 1, True), (2.5, 1, False), (2, 2, False), (0.5, 10**6, False)],
)
def test_a_light_ache_on_the_day_after_may_be_muscle_ache(
    pain: float, days: int, may: bool
) -> None:
    assert may_be_muscle_ache(pain, days) is may


@pytest.mark.parametrize(
    ("where", "outcome"),
    [
        ("worked muscle", "ache"),
        ("both arms alike", "ache"),
        ("joint", "flare"),
        ("not sure", "flare"),
        ("", "flare"),
    ],
)
def test_ache_in_muscle_is_no_flare_and_joint_pain_or_doubt_is(where: str, outcome: str) -> None:
    assert muscle_ache(where).outcome == outcome


# ---------------------------------------------------------------- what is at hand


@pytest.mark.parametrize(
    ("at_hand", "outcome"),
    [
        (("light band",), "at hand"),
        (("band",), "at hand"),
        (("2 lb dumbbell", "light band"), "at hand"),
        (("heavy band",), "stand-in"),
        (("headband",), "stand-in"),
        ((), "stand-in"),
    ],
)
def test_a_band_of_the_plans_strength_or_the_stand_in(
    row: Exercise, line: Prescription, at_hand: tuple[str, ...], outcome: str
) -> None:
    decision = equipment(row, line, at_hand)
    assert decision.outcome == outcome
    assert decision.place == line.place


@pytest.mark.parametrize(
    ("load", "at_hand", "outcome"),
    [
        (Load("dumbbell", 2, "lb"), ("2 lb dumbbell", "5 lb dumbbell"), "at hand"),
        (Load("dumbbell", 2, "lb"), ("5 lb dumbbell",), "leave out"),
        (Load("dumbbell", 2, "lb"), ("1 lb dumbbell",), "leave out"),
        (Load("dumbbell", 2, "lb"), ("2 kg dumbbell",), "leave out"),
        (Load("dumbbell", 5.5, "kg"), ("5.5 kg dumbbell",), "at hand"),
    ],
)
@pytest.mark.hazard("H-14")
def test_a_weight_must_be_the_plans_own(
    row: Exercise, line: Prescription, load: Load, at_hand: tuple[str, ...], outcome: str
) -> None:
    weighed = row._replace(equipment=("dumbbell",))
    assert equipment(weighed, line._replace(load=load), at_hand).outcome == outcome


@pytest.mark.parametrize(
    ("at_hand", "outcome"), [(("band pull 3 kg",), "at hand"), (("band pull 2 kg",), "stand-in")]
)
def test_a_band_known_by_its_pull_must_have_that_pull(
    row: Exercise, line: Prescription, at_hand: tuple[str, ...], outcome: str
) -> None:
    pull = line._replace(load=Load("band", 3.0, "kg"))
    assert equipment(row, pull, at_hand).outcome == outcome


def test_a_towel_of_any_length_is_a_towel(row: Exercise, line: Prescription) -> None:
    towel = row._replace(equipment=("towel",))
    assert equipment(towel, line, ("long towel",)).outcome == "at hand"
    assert equipment(towel, line, ("towels",)).outcome == "leave out"


def test_without_the_plans_word_it_is_left_out(row: Exercise, line: Prescription) -> None:
    assert equipment(row, line._replace(without=()), ()).outcome == "leave out"


def test_a_stand_in_the_exercise_does_not_describe_is_no_stand_in(
    row: Exercise, line: Prescription
) -> None:
    assert equipment(row._replace(stand_in=()), line, ()).outcome == "leave out"


def test_the_plan_may_name_another_exercise(row: Exercise, line: Prescription) -> None:
    other = line._replace(without=(("band", "table slide"),))
    assert equipment(row, other, ()).outcome == "other: table slide"


def test_the_most_cautious_of_two_missing_pieces_counts(row: Exercise, line: Prescription) -> None:
    two = row._replace(
        equipment=("band", "table"), stand_in=(("band", "Pull."), ("table", "Use a shelf."))
    )
    both = line._replace(without=(("band", "stand-in"), ("table", "stand-in")))
    assert equipment(two, both, ()).outcome == "stand-in"
    another = line._replace(without=(("band", "stand-in"), ("table", "wall slide")))
    assert equipment(two, another, ()).outcome == "other: wall slide"
    assert equipment(two, line, ()).outcome == "leave out"


def test_an_exercise_that_needs_nothing_is_always_at_hand(
    row: Exercise, line: Prescription
) -> None:
    bare = line._replace(load=Load("none"))
    assert equipment(row._replace(equipment=()), bare, ()).outcome == "at hand"


# ---------------------------------------------------------------- throwing


@pytest.mark.parametrize("kind", ["hard practice", "bullpen", "game", "something else"])
def test_a_hard_day_ahead_moves_loaded_work_behind_it(kind: str) -> None:
    assert throwing_day(kind, already=False, yesterday_kind="none").outcome == "after throwing"
    assert throwing_day(kind, already=True, yesterday_kind="light").outcome == "as usual"


@pytest.mark.parametrize("kind", ["hard practice", "bullpen", "game", "something else"])
def test_the_day_after_a_hard_outing_is_for_recovery(kind: str) -> None:
    assert throwing_day("none", already=False, yesterday_kind=kind).outcome == "recovery list"
    assert throwing_day("game", already=False, yesterday_kind=kind).outcome == "recovery list"


@pytest.mark.parametrize("kind", ["none", "light"])
def test_light_throwing_changes_nothing(kind: str) -> None:
    assert throwing_day(kind, already=False, yesterday_kind=kind).outcome == "as usual"
