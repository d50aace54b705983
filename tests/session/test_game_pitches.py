"""Pitching in games, as a pitcher would answer for it."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

import pytest

from coach.model.history import DayRecord, Outing
from coach.model.program import GamePitches
from coach.session.brief import Brief
from coach.session.stopping import day_words
from coach.session.table import Stage
from coach.session.throwing import may_throw
from tests.session.invented import HERE, MONDAY, asked_lately, brief, day_before
from tests.session.talking import Talk, talk
from tests.session.test_steps_kept import to_stage
from tests.session.test_throwing_talk import LINE

BOTH = ("2015 edition", "later edition")
QUIET = "pain 1, morning 0, slept 8, no throws yesterday, no game today"
GAME_YESTERDAY = "pain 1, morning 0, slept 8, game yesterday, no game today"
GAME_TODAY = "pain 1, morning 0, slept 8, no throws yesterday, game today"


def pitcher(*records: DayRecord, age: int = 17, catches: bool = False, **change: Any) -> Brief:
    """A pitcher of some age whose plan clears throwing; trained two days ago."""
    positions = ("pitcher", "catcher") if catches else ("pitcher",)
    line = GamePitches(positions, BOTH, HERE)
    plan = {
        "born": f"{2026 - age}-01",
        "throwing_line": LINE,
        "game_pitches": line,
        **change,
    }
    if age < 18:
        plan["guardian_present"] = "first session"
    # the invented table is for grown arms; its age is no matter of this file
    return brief(asked_lately()._replace(records=records or (day_before(),)), **plan)


def counted(day: Brief, morning: str, *answers: str) -> Talk:
    """The check-in line, what is asked after it, and the counts."""
    now = talk(day, morning)
    known = {"thrown already": "yes", "throwing tomorrow": "none", "worst pain": "1"}
    while now.name in known:
        now = now.say(known[now.name])
    for answer in answers:
        now = now.say(answer)
    return now


def told(day: Talk) -> str:
    """All that was said so far."""
    return " ".join(line.text for turn in day.turns for line in turn.lines)


def kept(day: Talk) -> tuple[Outing, ...]:
    """The outings in the day's record."""
    return day.record().pitched


YESTERDAY = (MONDAY.date() - timedelta(days=1)).isoformat()


def test_a_plan_without_the_line_asks_for_no_pitches() -> None:
    day = counted(pitcher(game_pitches=None), GAME_YESTERDAY)
    assert not day.name.startswith("pitches")


def test_light_throws_and_a_bullpen_are_not_counted() -> None:
    for kind in ("played catch", "bullpen"):
        day = counted(pitcher(), QUIET.replace("no throws", kind))
        assert not day.name.startswith("pitches")


# 17 years: 30/31, 45/46, 60/61 and 75/76 are the editions' edges (the larger rest of the two).
@pytest.mark.hazard("H-23")
@pytest.mark.parametrize(
    ("pitches", "days_off"),
    [("30", 0), ("31", 1), ("45", 1), ("46", 2), ("60", 2), ("61", 3), ("75", 3), ("76", 4)],
)
def test_each_band_of_yesterdays_count_keeps_its_days_off(pitches: str, days_off: int) -> None:
    day = counted(pitcher(), GAME_YESTERDAY)
    assert day.name == "pitches yesterday"
    day = day.say(pitches)
    assert kept(day) == (Outing(YESTERDAY, int(pitches), days_off),)
    assert ("First day to pitch again" in told(day)) is (days_off > 0)
    assert day.state.pitched is (days_off > 0)


@pytest.mark.parametrize(("pitches", "over"), [("105", False), ("106", True)])
def test_over_the_cap_is_noted_and_holds_the_step(pitches: str, over: bool) -> None:
    day = counted(pitcher(), GAME_YESTERDAY, pitches)
    assert day.state.no_step is over
    assert kept(day)[0].over_cap is over
    assert ("More game pitches" in " ".join(day.record().notes)) is over


@pytest.mark.hazard("H-23")
def test_unclear_twice_is_the_most_rest_and_is_kept() -> None:
    day = counted(pitcher(), GAME_YESTERDAY, "a lot", "over 50")
    assert kept(day) == (Outing(YESTERDAY, None, 4, True),)
    worst = counted(day.state.brief, GAME_YESTERDAY, "300")
    assert day.state._replace(told=(), blank=()) == worst.state._replace(told=(), blank=())


def test_no_pitch_in_the_game_asks_for_no_day_off() -> None:
    day = counted(pitcher(), GAME_YESTERDAY, "0")
    assert kept(day) == ()
    assert not day.state.pitched


@pytest.mark.hazard("H-23")
@pytest.mark.parametrize(("days_ago", "rests"), [(3, True), (4, False)])
def test_the_days_off_hold_the_plans_throws_until_they_are_over(days_ago: int, rests: bool) -> None:
    outing = Outing((MONDAY.date() - timedelta(days=days_ago)).isoformat(), 61, 3)
    day = counted(pitcher(day_before()._replace(pitched=(outing,))), QUIET)
    decision = may_throw(day.state)
    assert decision is not None
    assert (decision.rule == "throw.pitch_cap") is rests
    assert (decision.outcome == "may") is not rests


def test_a_count_over_the_cap_in_the_last_week_brings_no_new_step() -> None:
    from coach.session.pitching import held_by_cap

    for days_ago, held in ((6, True), (7, False)):
        day = (MONDAY.date() - timedelta(days=days_ago)).isoformat()
        before = day_before()._replace(pitched=(Outing(day, 110, 4, over_cap=True),))
        assert held_by_cap(pitcher(before)) is held


# ---------------------------------------------------------------- days that nobody asked about


@pytest.mark.parametrize(
    ("gap", "game", "asked"),
    [(1, "game", False), (2, "none", False), (2, "game", True), (3, "none", True)],
)
def test_days_that_no_session_asked_about_are_asked_for(gap: int, game: str, asked: bool) -> None:
    at = MONDAY - timedelta(days=gap)
    last = day_before()._replace(
        day=at.date().isoformat(), opened_at=at.isoformat(), throwing_today=game
    )
    day = counted(pitcher(last), QUIET)
    assert (day.name == "pitches before") is asked
    if asked:
        day = day.say("61")
        assert kept(day) == ((Outing((MONDAY.date() - timedelta(days=2)).isoformat(), 61, 3)),)


def test_a_game_that_was_counted_on_its_day_is_not_asked_for_again() -> None:
    last = day_before()
    last = last._replace(throwing_today="game", pitched=(Outing(last.day, 20, 0),))
    assert counted(pitcher(last), QUIET).name != "pitches before"


# ---------------------------------------------------------------- today


def test_todays_game_is_counted_once_it_is_over_and_closes_the_mound() -> None:
    day = counted(pitcher(catches=True), GAME_TODAY)
    assert day.name == "pitches today"
    assert "no catching" in told(day.say("41"))
    few = day.say("40")
    assert "No more pitching today" in told(few)
    assert few.name == "innings caught today"
    assert "No pitching today" not in told(few.say("3"))
    assert "No pitching today" in told(few.say("4"))


def test_a_game_still_to_come_is_not_counted_but_held_against_the_days_off() -> None:
    outing = Outing((MONDAY.date() - timedelta(days=2)).isoformat(), 70, 3)
    day = talk(pitcher(day_before()._replace(pitched=(outing,))), GAME_TODAY)
    while day.name in {"thrown already", "throwing tomorrow"}:
        day = day.say("no" if day.name == "thrown already" else "none")
    assert day.state.stage is Stage.SCREEN
    assert "No pitching in today's game." in told(day)
    again = day_words(date.fromisoformat(outing.day) + timedelta(days=4))
    assert f"First day to pitch again: {again}." in told(day)


def test_without_a_catcher_no_innings_are_asked() -> None:
    day = counted(pitcher(), GAME_TODAY, "41")
    assert day.name != "innings caught today"
    assert "no catching" not in told(day)


# ---------------------------------------------------------------- put right


def test_a_game_said_by_a_correction_is_counted_at_once() -> None:
    day = counted(pitcher(), QUIET)
    assert day.state.stage is Stage.SCREEN
    day = day.say("fix")
    day = day.say("throwing yesterday").say("game")
    assert day.state.fixing == "pitches yesterday"
    day = day.say("61")
    assert kept(day) == (Outing(YESTERDAY, 61, 3),)
    assert day.state.pitched


def test_such_a_count_that_stays_unclear_is_the_most_rest() -> None:
    day = counted(pitcher(), QUIET).say("fix").say("throwing yesterday").say("game")
    day = day.say("hm").say("hm")
    assert kept(day)[0].days_off == 4


def test_a_corrected_count_only_adds_days_off() -> None:
    day = counted(pitcher(), GAME_YESTERDAY, "31")
    more = day.say("fix").say("pitches yesterday").say("80")
    assert kept(more) == (Outing(YESTERDAY, 80, 4),)
    less = day.say("fix").say("pitches yesterday").say("10")
    assert less.state.pitched
    assert kept(less)[0].days_off == 1


@pytest.mark.parametrize("stage", [Stage.WARM_UP, Stage.EXERCISE, Stage.THROWING, Stage.CLOSE])
def test_a_game_put_right_late_says_its_days_off_once(stage: Stage) -> None:
    day = to_stage(counted(pitcher(), QUIET), stage)
    day = day.say("fix").say("throwing yesterday").say("game")
    assert day.state.fixing == "pitches yesterday"
    day = day.say("80")
    assert kept(day) == (Outing(YESTERDAY, 80, 4),)
    assert told(day).count("Your game pitches ask for whole days off.") == 1
    assert told(day).count("First day to pitch again: ") == 1


def test_an_age_that_the_editions_lack_asks_for_the_most_rest() -> None:
    day = counted(pitcher(age=30), GAME_YESTERDAY, "1")
    assert kept(day) == (Outing(YESTERDAY, 1, 5, True),)
