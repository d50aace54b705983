"""A kept session: it plays again, in plain words, and what was typed freely is nowhere in it."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from coach.drivers.drive import run
from coach.drivers.recording import kept
from coach.drivers.replay import diary_in_memory, replay
from coach.journal import Journal, Trouble
from tests.drivers.fakes import MONDAY, PLANS, Athlete, HandClock, bound_plan

if TYPE_CHECKING:
    from collections.abc import Mapping
    from pathlib import Path

PLAN = str(PLANS / "d-o.yaml")
SET_LINE = "set line in set 1 of reach-across row"


def day(diary: Journal, after_days: int = 0, own: Mapping[str, list[str]] | None = None) -> None:
    """One sitting of an athlete who types `own` and else a good day's answers."""
    clock = HandClock(MONDAY + timedelta(days=after_days))
    run(bound_plan(), Athlete(clock, own), diary, clock)


def plays_again(text: str, tmp_path: Path) -> bool:
    """Whether the file passes when it is replayed."""
    file = tmp_path / "kept.yaml"
    file.write_text(text, encoding="utf-8")
    (result,) = replay([file])
    assert not result.findings
    return result.passed


def test_a_kept_day_plays_again_and_holds_no_private_words(tmp_path: Path) -> None:
    diary = diary_in_memory()
    own = {"own words": ["my mother Ritva drove me"], "pain now": ["about a 2, says uncle Bo"]}
    day(diary, own=own | {"ache place": ["back"]})
    found = kept(diary, bound_plan(), PLAN, "a kept day")
    for private in ("Ritva", "uncle", "Bo"):
        assert private not in found.text
    assert "- pain now: 2\n" in found.text
    assert "offers: reach-across row, 3 sets, lying row, past your side, 8 to 12 reps" in found.text
    assert plays_again(found.text, tmp_path)


def test_the_days_before_stay_in_since_the_last_stands_on_them(tmp_path: Path) -> None:
    diary = diary_in_memory()
    for after in (0, 2, 4):
        day(diary, after)
    found = kept(diary, bound_plan(), PLAN, "three kept days")
    assert found.text.count("  - day: ") == 3
    assert plays_again(found.text, tmp_path)


@pytest.mark.parametrize(
    "typed", ["my hand went numb at aunt Ida's", "the shoulder slipped out, Ida saw it"]
)
def test_a_sign_said_freely_is_kept_as_a_plain_sign(tmp_path: Path, typed: str) -> None:
    diary = diary_in_memory()
    day(diary, own={"pain now": [typed], "numb tingle": ["yes"]})
    found = kept(diary, bound_plan(), PLAN, "a kept stop")
    assert "Ida" not in found.text
    assert "stops: same day" in found.text
    assert plays_again(found.text, tmp_path)


def test_a_break_is_kept_as_a_break(tmp_path: Path) -> None:
    diary = diary_in_memory()
    clock = HandClock()
    athlete = Athlete(clock)
    athlete.leave_at_name = "pain in warm-up"
    run(bound_plan(), athlete, diary, clock)
    day_clock = HandClock(MONDAY + timedelta(minutes=20))
    run(bound_plan(), Athlete(day_clock), diary, day_clock)
    found = kept(diary, bound_plan(), PLAN, "a kept break")
    assert "happens: power cut" in found.text
    assert "- break: " in found.text
    assert plays_again(found.text, tmp_path)


@pytest.mark.parametrize("pause_s", [30, 301, 3599, 3601, 4 * 3600])
@pytest.mark.parametrize(
    "prompt", ["pain now", SET_LINE, "go for hold 1 in set 1 of cross-body stretch"]
)
def test_a_pause_is_kept_with_its_length(tmp_path: Path, prompt: str, pause_s: int) -> None:
    diary = diary_in_memory()
    day(diary, own={prompt: ["pause"], "paused": [f"+{pause_s - 5} go"]})
    found = kept(diary, bound_plan(), PLAN, "a kept pause")
    assert f"- break: {pause_s} s\n      - paused: go" in found.text
    assert plays_again(found.text, tmp_path)


@pytest.mark.parametrize("away_s", [90, 50 * 60, 61 * 60])
def test_a_slow_answer_is_kept_with_its_time(tmp_path: Path, away_s: int) -> None:
    diary = diary_in_memory()
    day(diary, own={SET_LINE: [f"+{away_s} 10, pain 1"]})
    found = kept(diary, bound_plan(), PLAN, "a slow answer")
    assert found.text.count("- break: ") == 1
    assert plays_again(found.text, tmp_path)


def test_minutes_that_ran_out_are_kept_by_the_slow_answers(tmp_path: Path) -> None:
    diary = diary_in_memory()
    slow = {SET_LINE.replace("1", str(n)): ["+900 10, pain 1"] for n in (1, 2, 3)}
    day(diary, own=slow)
    found = kept(diary, bound_plan(), PLAN, "minutes over")
    assert "hip-hinge reach" not in found.text.partition("talk:")[2]
    assert plays_again(found.text, tmp_path)


def test_a_break_past_midnight_begins_a_new_session(tmp_path: Path) -> None:
    diary = diary_in_memory()
    day(diary, own={SET_LINE: ["pause"], "paused": ["+30000 go"]})
    assert plays_again(kept(diary, bound_plan(), PLAN, "a night between").text, tmp_path)


def test_no_session_and_another_plan_are_refused() -> None:
    with pytest.raises(Trouble, match="no session"):
        kept(diary_in_memory(), bound_plan(), PLAN, "nothing")
    diary = diary_in_memory()
    day(diary)
    with pytest.raises(Trouble, match="not of this plan"):
        kept(diary, bound_plan("p-s"), PLAN, "another plan")


def test_the_same_diary_gives_the_same_bytes() -> None:
    diary = diary_in_memory()
    day(diary)
    first, second = (kept(diary, bound_plan(), PLAN, "twice").text for _ in range(2))
    assert first == second
