"""Throwing steps from day to day: the rules and the session keep them, and each planted slip is found."""

from __future__ import annotations

import time
from collections.abc import Callable
from typing import Any

import pytest

from coach.drivers import prove_throwing
from coach.drivers.prove_throwing import Memory, Steps, Thrown, Told, talked, thrown_across_days
from coach.drivers.throwing_promises import Morning, ThrowingOracle
from coach.model.ladders import ThrowState
from coach.model.program import Bound, GamePitches, ThrowingLine
from coach.model.throws import OWN_STEPS, Part, StepTable, ThrowStep
from coach.rules import throwing as rules
from coach.session import daybook, pitching, throwing, throws_shown
from tests.session.invented import HERE, MONDAY, bound

Patch = pytest.MonkeyPatch
LINE = ThrowingLine("2026-11-02", "M. Aalto", "adult 7 phases", 2, 3, 3, 2, "", HERE)
PITCHER = GamePitches(("pitcher",), ("2015 edition",), HERE)


def plan(**change: object) -> Bound:
    """A plan that begins at step 2 of at most 3, two clean days a step, every third day."""
    line = LINE._replace(**change)  # type: ignore[arg-type]
    return bound(throwing_line=line, game_pitches=PITCHER)


def of_a_class(name: str, first: int, most: int) -> Bound:
    """A plan with a table of its own, of 13 steps, and a class of injury of catchers."""
    steps = tuple(ThrowStep(((Part(30, 20 + n),),)) for n in range(13))
    own = StepTable(OWN_STEPS, "throws", steps, 2, 0, "invented", "")
    line = LINE._replace(
        table=OWN_STEPS,
        from_step=first,
        most_step=most,
        apart_days=2,
        sessions_a_step=0,
        class_name=f"catcher {name}",
    )
    return bound(throwing_line=line, own_steps=own)


def searched(made: Bound) -> Thrown:
    return thrown_across_days(made, MONDAY)


def found(thrown: Thrown) -> set[tuple[str, str]]:
    return {(one.promise, one.words) for one in thrown.broken}


# ---------------------------------------------------------------- nothing is wrong


@pytest.mark.parametrize(
    "made",
    [plan(), plan(from_step=1, sessions_a_step=0, apart_days=1), of_a_class("D", 3, 3)],
    ids=["two clean days a step", "from the first step", "a class"],
)
def test_the_rules_and_the_session_keep_the_throwing_steps(made: Bound) -> None:
    thrown = searched(made)
    assert found(thrown) == set()
    assert thrown.whole
    assert thrown.memories > 30
    assert thrown.days > 1_000


def test_a_plan_that_clears_no_throws_never_comes_to_a_line() -> None:
    thrown = searched(bound())
    assert found(thrown) == set()
    assert (thrown.memories, thrown.answers) == (1, 0)


def test_every_step_that_the_plan_opens_and_those_below_are_thrown() -> None:
    steps = Steps(plan(), MONDAY)
    shown = set()
    todo, met = [Memory(None, 0, steps.oracle.at_first())], set[Memory]()
    while todo:
        memory = todo.pop()
        for told in steps.days_told(memory):
            for after, _words, _wrong in steps.days_on(memory, told):
                shown.add(after.thrown)
                if after not in met:
                    met.add(after)
                    todo.append(after)
    assert shown == {0, 1, 2, 3}


def test_a_search_cut_short_is_not_whole() -> None:
    assert not thrown_across_days(plan(), MONDAY, time.monotonic() - 1).whole


def test_before_the_day_of_its_clearance_the_steps_are_looked_at_from_that_day_on() -> None:
    assert searched(plan(cleared="2027-01-15")).memories > 30


# ---------------------------------------------------------------- one talk stands for all that read alike


def test_days_that_read_alike_are_talked_through_alike() -> None:
    steps = Steps(plan(sessions_a_step=0), MONDAY)
    looked = dict[object, set[object]]()
    todo, met = [Memory(None, 0, steps.oracle.at_first())], set[Memory]()
    while todo and len(met) < 60:
        memory = todo.pop(0)
        for told in steps.days_told(memory):
            ways = steps.line_of(memory.day, memory.thrown, told)
            again = looked.setdefault(id(ways), set())
            if ways is not None and len(again) < 3 and (memory.day, told) not in again:
                again.add((memory.day, told))
                state = steps.begun(steps.brief(memory.day, memory.thrown, told), told)
                assert set(talked(state, steps.day).ways) == set(ways.ways)
            for after, _words, _wrong in steps.days_on(memory, told):
                if after not in met:
                    met.add(after)
                    todo.append(after)
    assert len(met) >= 60


# ---------------------------------------------------------------- planted slips


def read_otherwise(patch: Patch, module: Any, name: str, change: Callable[..., Any]) -> None:
    """`change` gets the function and what it is asked."""
    kept = getattr(module, name)
    patch.setattr(module, name, lambda *asked, **more: change(kept, *asked, **more))


def one_clean_day_is_enough(patch: Patch) -> None:
    read_otherwise(
        patch, rules, "next_throws", lambda f, s, n, line: f(s, n, line._replace(sessions_a_step=1))
    )


def two_steps_at_once(patch: Patch) -> None:
    def doubled(f: Any, s: ThrowState, n: Any, line: ThrowingLine) -> Any:
        after, why = f(s, n, line)
        up = after.planned > s.planned
        return after._replace(planned=after.planned + up), why

    read_otherwise(patch, rules, "next_throws", doubled)


def the_last_step_is_passed(patch: Patch) -> None:
    read_otherwise(
        patch, rules, "next_throws", lambda f, s, n, line: f(s, n, line._replace(most_step=5))
    )
    read_otherwise(
        patch,
        throwing,
        "after_days_off",
        lambda f, s, gap, line: f(s, gap, line._replace(most_step=5)),
    )


def soreness_at_the_end_is_forgotten(patch: Patch) -> None:
    patch.setitem(throwing.BITS, "sore at the end", 0)


def the_ceiling_is_forgotten(patch: Patch) -> None:
    patch.setitem(throwing.BITS, throwing.PAIN, 0)


def soreness_of_last_time_is_forgotten(patch: Patch) -> None:
    patch.setitem(throwing.BITS, "sore next day", 0)


def a_cut_off_day_gives_the_step_back(patch: Patch) -> None:
    patch.setattr(throwing, "lower_at_once", lambda state: state)


def a_stop_keeps_the_step(patch: Patch) -> None:
    patch.setattr(daybook, "nothing_goes_up", lambda thrown: thrown)


def days_off_are_forgotten(patch: Patch) -> None:
    patch.setattr(throwing, "after_days_off", lambda state, _gap, _line: state)


def two_weeks_off_lead_to_the_first_step_from_below(patch: Patch) -> None:
    read_otherwise(
        patch,
        throwing,
        "after_days_off",
        lambda f, s, gap, line: (
            ThrowState(min(s.planned, line.from_step)) if gap == "first step" else f(s, gap, line)
        ),
    )


def days_off_for_soreness_are_forgotten(patch: Patch) -> None:
    read_otherwise(
        patch, rules, "may_throw_today", lambda f, at, now, apart, _rest: f(at, now, apart, 0)
    )


def the_plans_days_apart_are_forgotten(patch: Patch) -> None:
    read_otherwise(
        patch, rules, "may_throw_today", lambda f, at, now, _apart, rest: f(at, now, 1, rest)
    )


def any_day_is_a_throwing_day(patch: Patch) -> None:
    patch.setattr(throwing, "last_thrown_at", lambda _brief: None)


def throws_of_the_sport_do_not_count(patch: Patch) -> None:
    patch.setattr(
        throwing,
        "last_thrown_at",
        lambda brief: next(
            (r.threw.ended_at for r in brief.history.records if r.threw is not None), None
        ),
    )


def a_date_ahead_opens_throws(patch: Patch) -> None:
    read_otherwise(
        patch, rules, "clearance", lambda f, plan, day: f(plan, day.replace(year=day.year + 1))
    )


def a_sore_arm_throws(patch: Patch) -> None:
    read_otherwise(patch, rules, "tired_arm", lambda f, *_a, **_k: f(tired=False, painful=False))


def a_game_takes_no_throws_away(patch: Patch) -> None:
    patch.setattr(pitching, "resting", lambda _state: None)


def the_cap_on_pitches_holds_nothing(patch: Patch) -> None:
    patch.setattr(pitching, "held_by_cap", lambda _brief: False)


def a_match_tomorrow_holds_nothing(patch: Patch) -> None:
    read_otherwise(patch, throwing, "step_of", lambda f, state: f(state._replace(no_step=False)))
    patch.setattr(throws_shown, "step_of", throwing.step_of)


def another_clearance_goes_on(patch: Patch) -> None:
    patch.setattr(throwing, "throws_begin_anew", lambda *_a: False)


def steps_down_are_counted_on_and_on(patch: Patch) -> None:
    patch.setattr(rules, "DOWNS_RUNNING", 10**9)


NOT_EARNED = ("P5", "a step is shown that was not earned")
TOO_SOON = ("P3", "throws before their days off are over")
HELD = ("P5", "a new step is shown on a day that holds steps back")
SLIPS: dict[Callable[[Patch], None], tuple[str, str]] = {
    one_clean_day_is_enough: NOT_EARNED,
    two_steps_at_once: NOT_EARNED,
    the_last_step_is_passed: ("P2", "step 3 is past the plan's last step"),
    soreness_at_the_end_is_forgotten: NOT_EARNED,
    the_ceiling_is_forgotten: NOT_EARNED,
    soreness_of_last_time_is_forgotten: NOT_EARNED,
    a_cut_off_day_gives_the_step_back: NOT_EARNED,
    a_stop_keeps_the_step: NOT_EARNED,
    days_off_are_forgotten: ("P5", "a step goes up after days off"),
    two_weeks_off_lead_to_the_first_step_from_below: ("P5", "a step goes up after days off"),
    days_off_for_soreness_are_forgotten: TOO_SOON,
    the_plans_days_apart_are_forgotten: TOO_SOON,
    any_day_is_a_throwing_day: TOO_SOON,
    throws_of_the_sport_do_not_count: ("P3", "throws although there was a game yesterday"),
    a_date_ahead_opens_throws: ("P3", "throws although the clearance is still to come"),
    a_sore_arm_throws: ("P3", "throws although waking pain is up"),
    a_game_takes_no_throws_away: ("P3", "throws although a game's days off are not over"),
    the_cap_on_pitches_holds_nothing: HELD,
    a_match_tomorrow_holds_nothing: HELD,
    another_clearance_goes_on: NOT_EARNED,
    steps_down_are_counted_on_and_on: ("P7", "the throwing steps do not come to an end"),
}


TWO_STEPS = plan(from_step=1, most_step=2, sessions_a_step=0)
NEEDS: dict[Callable[[Patch], None], Bound] = {
    one_clean_day_is_enough: plan(),
    two_steps_at_once: plan(from_step=1, sessions_a_step=0),
    two_weeks_off_lead_to_the_first_step_from_below: plan(sessions_a_step=0),
    days_off_for_soreness_are_forgotten: plan(
        from_step=1, most_step=2, sessions_a_step=0, apart_days=2
    ),
}


@pytest.mark.parametrize("slip", SLIPS, ids=lambda slip: slip.__name__)
def test_a_slip_around_the_throwing_steps_is_found(
    slip: Callable[[Patch], None], monkeypatch: Patch
) -> None:
    monkeypatch.setattr(prove_throwing, "MOST", 150)
    slip(monkeypatch)
    assert SLIPS[slip] in found(searched(NEEDS.get(slip, TWO_STEPS)))


@pytest.mark.parametrize(
    ("days", "wrong"), [(1, "throws before the days off of their class are over"), (3, "")]
)
def test_a_class_that_throws_too_often_is_found(days: int, wrong: str, monkeypatch: Patch) -> None:
    monkeypatch.setattr(rules, "class_days", lambda *_a: days)
    assert found(searched(of_a_class("E", 2, 2))) == ({("P3", wrong)} if wrong else set())


@pytest.mark.parametrize(
    ("name", "step", "days", "early"),
    [("E", 5, 3, False), ("E", 5, 2, True), ("E", 6, 9, True), ("D", 9, 2, False),
     ("D", 8, 2, True), ("D", 8, 3, False), ("A", 13, 1, False)],
)  # fmt: skip
def test_a_class_throws_no_more_often_than_its_schedule_says(
    name: str, step: int, days: int, early: bool
) -> None:
    oracle = ThrowingOracle(of_a_class(name, 1, 13).plan)
    assert oracle.too_early(step, Morning(days, days)) is early


def test_a_break_is_told_as_the_days_that_lead_to_it(monkeypatch: Patch) -> None:
    two_steps_at_once(monkeypatch)
    thrown = searched(plan(from_step=1, sessions_a_step=0))
    (one,) = (each for each in thrown.broken if (each.promise, each.words) == NOT_EARNED)
    assert one.day == "the throwing steps"
    assert [words for _day, words in one.talk] == [
        "the first line: pain in throwing: 0, throws done: 0",
        "3 days after the last line: pain in throwing: 0",
    ]


def test_a_day_is_told_by_what_it_holds() -> None:
    told = Told(2, 9, "another line", match=True, over_cap=True)
    assert prove_throwing.words_of(told) == (
        "2 days after the last line, 9 days after the last throws, another line, "
        "a match tomorrow, a game over the cap 6 days ago"
    )
