"""A morning above usual on the day after: where it ached decides, and doubt counts as a flare."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from coach.model.history import Done
from tests.session.invented import HOLD, MONDAY, OUT, asked_lately, brief, day_before
from tests.session.talking import Talk, talk


def morning(waking: str, *, days: int = 1, **change: Any) -> Talk:
    """A check-in with this waking pain, some days after exercise; the usual morning is 1."""
    at = MONDAY - timedelta(days=days)
    last = (
        day_before()
        ._replace(
            day=at.date().isoformat(),
            opened_at=at.isoformat(),
            done=(Done(OUT.name, 3, True, at.isoformat()),),
        )
        ._replace(**change)
    )
    day = brief(asked_lately()._replace(records=(last,)))
    return talk(day, f"pain 1, morning {waking}, slept 8, no throws, no game")


@pytest.mark.parametrize("waking", ["1.5", "2"])
def test_a_light_morning_above_usual_asks_where_it_ached(waking: str) -> None:
    assert morning(waking).name == "waking ache"


@pytest.mark.parametrize("waking", ["0", "1", "2.5"])
def test_a_usual_morning_and_a_stronger_one_ask_nothing_of_it(waking: str) -> None:
    assert morning(waking).name != "waking ache"


@pytest.mark.parametrize(("days", "asks"), [(1, True), (2, False), (3, False)])
def test_from_the_second_day_on_it_is_a_flare_unasked(days: int, asks: bool) -> None:
    now = morning("2", days=days)
    assert (now.name == "waking ache") is asks
    assert now.state.morning_up


def test_on_a_first_day_there_is_no_work_that_it_could_come_from() -> None:
    now = morning("2", done=())
    assert now.name == "against usual"
    assert now.state.morning_up


@pytest.mark.parametrize("where", ["worked muscle", "both arms alike", "1", "2"])
def test_muscle_ache_is_no_step_down_and_no_step_up(where: str) -> None:
    now = morning("2").say(where)
    assert now.name != "against usual"
    assert not now.state.morning_up
    assert now.state.no_step
    listed = now.say("no", "none")
    assert "Light muscle ache on the day after is common." in listed.words


@pytest.mark.parametrize("where", ["joint", "not sure"])
def test_the_joint_or_doubt_is_a_flare(where: str) -> None:
    now = morning("2").say(where)
    assert now.name == "against usual"
    assert now.state.morning_up


def test_unclear_twice_leads_where_the_joint_leads() -> None:
    unclear, joint = morning("2").say("hm", "hm hm"), morning("2").say("joint")
    assert unclear.name == joint.name == "against usual"
    assert unclear.state.morning_up
    assert not unclear.state.ache


def test_a_day_left_at_the_question_counts_as_a_flare() -> None:
    record = morning("2").say("stop", "today").record()
    assert record.morning_up


def test_what_it_was_stands_in_the_diary() -> None:
    muscle, joint = (morning("2").say(where) for where in ("worked muscle", "joint"))
    assert muscle.record().notes == ("Muscle ache on waking, above usual.",)
    assert ("ready.muscle_ache", "ache") in [d[:2] for d in muscle.record().decisions]
    assert "pain.next_morning" not in [d[0] for d in muscle.record().decisions]
    assert joint.record().notes == ("Waking pain above usual.",)
    assert ("pain.next_morning", "up") in [d[:2] for d in joint.record().decisions]


def test_the_second_morning_above_usual_still_goes_to_the_clinician() -> None:
    assert morning("2", morning_up=True).name == "stopped"


def test_a_correction_of_the_morning_never_makes_muscle_ache_of_it_later() -> None:
    now = morning("2").say("worked muscle", "fix", "2", "2")
    assert now.state.morning_up
    stronger = morning("2").say("fix", "2", "2.5")
    assert stronger.say("worked muscle").state.morning_up
    calm = morning("2").say("fix", "2", "0")
    assert not calm.say("joint").state.morning_up


def test_after_the_list_was_shown_a_corrected_morning_is_the_more_careful_one() -> None:
    shown = morning("2").say("worked muscle", "no", "none", "0")
    fixed = shown.say("fix", "2", "2")
    assert fixed.state.morning_up


def test_the_wall_hold_alone_is_work_too() -> None:
    at = (MONDAY - timedelta(days=1)).isoformat()
    assert morning("2", done=(Done(HOLD.name, 1, False, at),)).name == "waking ache"
