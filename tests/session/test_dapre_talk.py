"""A row that goes by the DAPRE table, set by set, and what its third set leads to."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from coach.journal import days
from coach.model.history import DayRecord, History
from coach.model.ladders import Drove
from coach.model.program import Bound
from coach.model.quantities import Load
from coach.model.turns import Offer
from coach.session.brief import Brief, brief_for
from tests.session.invented import (
    HOLD,
    MONDAY,
    OUT,
    PENDULUM,
    ROW,
    asked_lately,
    axis,
    bound,
    prescription,
)
from tests.session.talking import TO_THE_FIRST_SET, Talk, talk

BENCH = ROW._replace(name="bench row", family="shoulder blade", versions=(), faults=())
HOME = tuple(Load("dumbbell", float(n), "lb") for n in (5, 10, 15, 20, 25, 30))


def by_the_table(**change: Any) -> Bound:
    """The invented plan with one row at 20 lb, at most 25, driven by set 3."""
    line = prescription(
        BENCH,
        sets=axis(4),
        reps=axis(5, 10),
        load=HOME[3],
        load_cap=HOME[4],
        lighter=HOME[2::-1],
        dapre=3,
    )._replace(**change)
    made = bound(
        at_home=tuple(load.words() for load in HOME),
        loads_at_home=HOME,
        doses=(prescription(PENDULUM, sets=axis(1), reps=axis(20), rest_s=0), line),
    )
    program = made.program
    phase = program.phases[0]._replace(exercises=(BENCH.name,))
    return made._replace(
        program=program._replace(exercises=(PENDULUM, OUT, BENCH, HOLD), phases=(phase,))
    )


def first(**change: Any) -> Talk:
    """The first day, at the first set."""
    day = brief_for(by_the_table(**change), asked_lately(), MONDAY)
    return talk(day, *TO_THE_FIRST_SET)


def second(record: DayRecord, later: int = 2, **change: Any) -> Brief:
    """The brief of a day some days after."""
    history = History((record,), asked_alone=asked_lately().asked_alone)
    return brief_for(by_the_table(**change), history, MONDAY + timedelta(days=later))


def shown(now: Talk) -> tuple[int, int, float]:
    """Reps from and to, and the pounds, of the set that is shown."""
    (offer,) = (one for one in now.rested().now.offers if one.kind == "set")
    assert isinstance(offer, Offer)
    return offer.dose.reps_low, offer.dose.reps_high, offer.dose.load.amount


def next_load(record: DayRecord, **change: Any) -> float:
    """The working weight two days later, in lb."""
    standing = second(record, **change).standings(morning_up=False, held=())[BENCH.name]
    return standing.ladder.dose.load.amount


TO_THE_THIRD = ("10, pain 0", "6, pain 0")


def test_the_sets_are_half_three_quarters_and_twice_the_whole() -> None:
    day = first()
    sets = [shown(day)]
    for answer in (*TO_THE_THIRD, "6, pain 0"):
        day = day.say(answer)
        sets.append(shown(day))
    assert sets == [(10, 10, 10), (6, 6, 15), (5, 10, 20), (5, 10, 20)]


def test_the_rest_names_the_weight_that_comes_next() -> None:
    assert "set 2 of 4, 15 lb dumbbell." in first().say("10, pain 0").words


def test_only_the_driving_set_says_that_it_decides() -> None:
    assert "decides your next weight" not in first().words
    assert "decides your next weight" in first().say(*TO_THE_THIRD).rested().words


@pytest.mark.parametrize(
    ("reps", "fourth"), [(0, 10), (2, 10), (3, 15), (4, 15), (5, 20), (10, 20)]
)
def test_few_reps_in_the_third_set_lower_the_fourth_and_many_add_nothing(
    reps: int, fourth: int
) -> None:
    assert shown(first().say(*TO_THE_THIRD, f"{reps}, pain 0"))[2] == fourth


@pytest.mark.parametrize(("reps", "weight"), [(2, 10), (3, 20), (4, 20), (5, 25), (10, 25)])
def test_the_third_set_drives_the_next_working_weight(reps: int, weight: float) -> None:
    record = first().say(*TO_THE_THIRD, f"{reps}, pain 0", "8, pain 0").record()
    assert record.done[0].drove is not None
    assert next_load(record) == weight


def test_where_set_four_drives_set_three_does_not() -> None:
    fourth = first(dapre=4).say(*TO_THE_THIRD, "10, pain 0", "4, pain 0").record()
    assert next_load(fourth, dapre=4) == 20
    rises = first(dapre=4).say(*TO_THE_THIRD, "4, pain 0", "10, pain 0").record()
    assert rises.done[0].drove == Drove(3, HOME[2])  # done at 15 lb, so it leads to 20 and no more
    assert next_load(rises, dapre=4) == 20


def test_the_record_keeps_the_working_weight_and_what_drove() -> None:
    record = first().say(*TO_THE_THIRD, "6, pain 0", "6, pain 0").record()
    (done,) = record.done
    assert done.dose == "4 sets, 5 to 10 reps, 20 lb dumbbell"
    assert done.drove == Drove(2, HOME[3])
    assert days.day_record(_through_json(record)) == record


def _through_json(record: DayRecord) -> dict[str, object]:
    import json

    body = json.loads(json.dumps(days.day_body(record)))
    assert isinstance(body, dict)
    return body


# ---------------------------------------------------------------- what holds it


def test_pain_over_the_ceiling_ends_the_table_for_the_day() -> None:
    hurt = first().say("10, pain 3", "0")
    assert shown(hurt) == (10, 10, 5)
    assert shown(hurt.say("10, pain 0")) == (10, 10, 5)
    record = hurt.say("10, pain 0", "10, pain 0", "10, pain 0").record()
    assert record.done[0].drove is None
    assert next_load(record) <= 20


def test_reps_that_stay_unclear_count_as_none() -> None:
    unclear = first().say(*TO_THE_THIRD).rested()
    unclear = unclear.say("hm", "hm", "hm", "0")
    assert unclear.say("8, pain 0").record().done[0].drove == Drove(0, HOME[3])


def test_a_set_without_a_number_raises_nothing() -> None:
    record = first().say(*TO_THE_THIRD, "10, pain 0", "8, pain 0").record()
    (done,) = record.done
    gap = record._replace(done=(done._replace(reps=done.reps[1:]),))
    assert (next_load(record), next_load(gap)) == (25, 20)


def test_sets_done_in_a_break_drive_nothing() -> None:
    back = first().say("10, pain 0").back_after(10).say("2", "no", "0")
    record = back.say("8, pain 0").record()
    assert record.done[0].drove is None
    assert next_load(record) == 20


def test_a_short_night_leaves_out_the_last_set() -> None:
    day = brief_for(by_the_table(), asked_lately(), MONDAY)
    short = talk(day, "pain 1, morning 0, slept 5, no throws, no game", "no", "no", "none", "0")
    sets = [shown(short), shown(short.say("10, pain 0")), shown(short.say(*TO_THE_THIRD))]
    assert [one[2] for one in sets] == [10, 15, 20]
    assert short.say(*TO_THE_THIRD, "6, pain 0").name != "timer"


def test_a_piece_that_is_not_here_is_rounded_down_and_the_set_lifts_less() -> None:
    at_second = first().say("10, pain 0")
    gone = at_second.say("gear")
    here = ", ".join(load.words() for load in HOME if load.amount != 15)
    assert shown(gone.say(here))[2] == 10


def test_a_day_after_days_off_begins_lower_whatever_set_three_said() -> None:
    record = first().say(*TO_THE_THIRD, "10, pain 0", "8, pain 0").record()
    off = second(record, later=9).standings(morning_up=False, held=())[BENCH.name]
    assert off.decision.rule == "layoff.gap"
    assert off.ladder.dose.load.amount <= 20
    assert (
        off.ladder.dose
        != first().state.brief.standings(morning_up=False, held=())[BENCH.name].ladder.dose
    )


def test_a_match_tomorrow_and_a_sore_morning_bring_no_rise() -> None:
    record = first().say(*TO_THE_THIRD, "10, pain 0", "8, pain 0").record()
    day = second(record)
    assert day.standings(morning_up=False, held=("all",))[BENCH.name].ladder.dose.load.amount == 20
    assert day.standings(morning_up=True, held=())[BENCH.name].ladder.dose.load.amount <= 20


def test_a_new_plan_version_with_another_dose_takes_over_no_rise() -> None:
    record = first().say(*TO_THE_THIRD, "10, pain 0", "8, pain 0").record()
    assert next_load(record, load=HOME[1], load_cap=HOME[2], lighter=(HOME[0],)) <= 15


@pytest.mark.parametrize(("reps", "earned"), [("8", False), ("11", False), ("12", True)])
def test_where_only_light_sets_are_left_two_over_the_whole_range_earn_a_step(
    reps: str, earned: bool
) -> None:
    two = first(sets=axis(2)).say("10, pain 0", f"{reps}, pain 0")
    assert (two.record().done[0].result == "earned") is earned


@pytest.mark.hazard("H-16")
@pytest.mark.parametrize("told", [0, 1, 2])
def test_sets_done_in_a_break_after_pain_move_no_load_on(told: int) -> None:
    hurt = first().say("10, pain 3")
    back = hurt.back_after(10).say(str(told), "no", "0", "0")
    assert shown(back)[2] < 10


@pytest.mark.parametrize(("told", "load"), [(0, 15), (1, 20), (2, 20)])
def test_sets_done_in_a_break_without_pain_lead_where_sets_lead(told: int, load: float) -> None:
    back = first().say("10, pain 0").back_after(10).say(str(told), "no", "0")
    assert shown(back)[2] == load
