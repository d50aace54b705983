"""A session killed at every prompt and taken up again is the session that was never broken."""

from __future__ import annotations

import json
import os
import signal
import sys
from datetime import timedelta
from typing import TYPE_CHECKING, Any

import pytest

from coach.drivers.drive import run
from coach.drivers.replay import diary_in_memory
from coach.drivers.resuming import span
from coach.journal import Journal
from coach.model.history import DayRecord, Hold
from tests.drivers.fakes import MONDAY, Athlete, HandClock, bound_plan

if TYPE_CHECKING:
    from collections.abc import Mapping
    from pathlib import Path

    from coach.drivers.port import Reply
    from coach.model.turns import Ask

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="there is no fork")


class Transcript(Athlete):
    """Keeps, for each prompt, the words shown right before it."""

    def __init__(self, clock: HandClock, own: Mapping[str, list[str]] | None = None) -> None:
        super().__init__(clock, own)
        self.prompts: list[tuple[str, tuple[str, ...]]] = []

    def ask(self, ask: Ask) -> Reply:
        self.prompts.append((ask.name, self.shown[-1]))
        return super().ask(ask)


class Killed(Transcript):
    """Answers `left` prompts, tells of the next one through a pipe, and is killed there."""

    def __init__(self, clock: HandClock, left: int, pipe: int) -> None:
        super().__init__(clock)
        self.left, self.pipe = left, pipe

    def ask(self, ask: Ask) -> Reply:
        if len(self.asked) == self.left:
            os.write(self.pipe, json.dumps([ask.name, self.shown[-1]]).encode())
            os.kill(os.getpid(), signal.SIGKILL)
        return super().ask(ask)


def unbroken(folder: Path) -> tuple[list[tuple[str, tuple[str, ...]]], DayRecord]:
    with Journal.open(folder) as journal:
        athlete = Transcript(HandClock())
        assert run(bound_plan(), athlete, journal, athlete.clock) == 0
        record = journal.sessions()[0].record
        assert record is not None
        return athlete.prompts, record


def killed_after(folder: Path, left: int, clock: HandClock) -> tuple[str, tuple[str, ...]] | None:
    """One process that answers `left` prompts and is killed at the next; what that one showed."""
    reads, writes = os.pipe()
    child = os.fork()
    if not child:
        os.close(reads)
        with Journal.open(folder) as journal:
            run(bound_plan(), Killed(clock, left, writes), journal, clock)
        os._exit(0)
    os.close(writes)
    with os.fdopen(reads) as told:
        words = told.read()
    _pid, status = os.waitpid(child, 0)
    if not words:
        assert os.waitstatus_to_exitcode(status) == 0
        return None
    assert os.waitstatus_to_exitcode(status) == -signal.SIGKILL
    name, shown = json.loads(words)
    return name, tuple(shown)


@pytest.mark.filterwarnings("ignore:This process.*fork:DeprecationWarning")
@pytest.mark.hazard("H-01")
def test_killed_at_every_prompt_and_taken_up_again_equals_the_unbroken_day(tmp_path: Path) -> None:
    whole, record = unbroken(tmp_path / "whole")
    seen: list[tuple[str, tuple[str, ...]]] = []
    clock = HandClock()
    while (prompt := killed_after(tmp_path / "cut", 1 if seen else 0, clock)) is not None:
        seen.append(prompt)
        with Journal.open(tmp_path / "cut") as journal:
            clock.passed = passed_by(journal)
    assert [name for name, _shown in seen] == [name for name, _shown in whole]
    assert [drop_told(words) for _name, words in seen] == [drop_told(w) for _name, w in whole]
    with Journal.open(tmp_path / "cut") as journal:
        assert journal.verify() > len(seen)
        (sitting,) = journal.sessions()
        assert sitting.record is not None
        assert same_but_times(sitting.record) == same_but_times(record)


def passed_by(journal: Journal) -> float:
    """Seconds from the start of the day to the last record, as the clock stood at the kill."""
    cut = journal.unfinished()
    if cut is None:
        return 0.0
    return (HandClock(MONDAY).at.fromisoformat(cut.last_at) - MONDAY).total_seconds()


def drop_told(words: tuple[str, ...]) -> tuple[str, ...]:
    """What was shown last before the prompt, where the cut-off was told in a turn of its own."""
    return tuple(word for word in words if "was cut off" not in word)


def same_but_times(record: DayRecord) -> dict[str, Any]:
    kept = record._replace(done=tuple(done._replace(ended_at="") for done in record.done))
    return kept._asdict()


# ---------------------------------------------------------------- in one process, with answers of its own


def cut_and_resumed(
    own: Mapping[str, list[str]], leave_at: int, later: timedelta
) -> tuple[Transcript, Transcript, Journal, int]:
    journal = diary_in_memory()
    first = Transcript(HandClock(), own)
    first.leave_at = leave_at
    run(bound_plan(), first, journal, first.clock)
    second = Transcript(HandClock(first.clock.now() + later), first.own)
    code = run(bound_plan(), second, journal, second.clock)
    return first, second, journal, code


def test_a_short_cut_says_how_long_and_shows_the_same_prompt_with_the_same_words() -> None:
    first, second, _journal, code = cut_and_resumed({}, 6, timedelta(seconds=44))
    assert second.shown[0] == ("The session was cut off 44 seconds ago. All you typed is saved.",)
    assert second.shown[1] == first.shown[-2]
    assert code == 0


@pytest.mark.parametrize(("gap_s", "asks"), [(299, False), (300, True)])
def test_from_five_minutes_on_it_asks_what_happened(gap_s: int, asks: bool) -> None:
    _first, second, _journal, _code = cut_and_resumed({}, 25, timedelta(seconds=gap_s))
    assert ("worse since" in second.asked) is asks


@pytest.mark.parametrize(("hours", "minutes", "sessions"), [(4, 0, 1), (4, 1, 2)])
def test_over_four_hours_the_old_session_is_closed_as_partial(
    hours: int, minutes: int, sessions: int
) -> None:
    _first, _second, journal, _code = cut_and_resumed(
        {}, 25, timedelta(hours=hours, minutes=minutes)
    )
    sittings = journal.sessions()
    assert len(sittings) == sessions
    if sessions == 2:
        assert sittings[1].record is not None
        assert sittings[1].record.ended == "partial"
        assert sittings[1].record.done


def test_after_midnight_the_old_session_is_closed_even_after_a_short_cut() -> None:
    journal = diary_in_memory()
    first = Transcript(HandClock(MONDAY.replace(hour=23, minute=58)))
    first.leave_at = 4
    run(bound_plan(), first, journal, first.clock)
    second = Transcript(HandClock(MONDAY.replace(hour=23, minute=58) + timedelta(minutes=4)))
    run(bound_plan(), second, journal, second.clock)
    assert len(journal.sessions()) == 2


@pytest.mark.hazard("H-05")
def test_a_clock_set_back_gives_no_session_and_keeps_the_old_one() -> None:
    _first, second, journal, code = cut_and_resumed({}, 25, timedelta(days=0, hours=-2))
    assert second.asked == []
    assert code == 0
    old = journal.sessions()[-1].record
    assert old is not None
    assert old.ended == "partial"


@pytest.mark.hazard("H-18")
def test_another_plan_since_then_closes_the_old_session_and_keeps_what_was_done() -> None:
    journal = diary_in_memory()
    first = Transcript(HandClock())
    first.leave_at = 25
    run(bound_plan(), first, journal, first.clock)
    newer = bound_plan()._replace(digest="0" * 64)
    second = Transcript(HandClock(first.clock.now()))
    run(newer, second, journal, second.clock)
    old = journal.sessions()[-1].record
    assert old is not None
    assert {done.exercise for done in old.done} >= {
        station.exercise for station in bound_plan().plan.doses if "external" in station.exercise
    }
    assert len(journal.sessions()) == 2


def test_a_record_that_no_longer_fits_counts_every_exercise_as_done() -> None:
    journal = diary_in_memory()
    first = Transcript(HandClock())
    first.leave_at = 6
    run(bound_plan(), first, journal, first.clock)
    journal.append(1, "typed", {"text": "today", "at_s": 40}, (), first.clock.now().isoformat())
    for text in ("stop", "today", "1", "1"):
        journal.append(1, "typed", {"text": text, "at_s": 41}, (), first.clock.now().isoformat())
    second = Transcript(HandClock(first.clock.now()))
    run(bound_plan(), second, journal, second.clock)
    old = journal.sessions()[-1].record
    assert old is not None
    assert {done.exercise for done in old.done} >= {"reach-across row", "hip-hinge reach"}


@pytest.mark.hazard("H-01")
def test_a_stop_placed_since_then_closes_the_session_and_is_shown_first() -> None:
    journal = diary_in_memory()
    first = Transcript(HandClock())
    first.leave_at = 25
    run(bound_plan(), first, journal, first.clock)
    at = first.clock.now().isoformat()
    hold = Hold(0, "E01", "emergency now", "chest_breath", "chest", at[:10], at, 1)
    journal.append(0, "typed at clear", {"text": "chest"}, (), at, hold=hold)
    second = Transcript(HandClock(first.clock.now()))
    assert run(bound_plan(), second, journal, second.clock) == 10
    assert second.asked == ["enter"]


def test_a_hold_cut_off_in_the_middle_is_not_timed_again() -> None:
    hold = "hold 2 in set 1 of cross-body stretch"
    journal = diary_in_memory()

    class PowerGone(BaseException):
        pass

    class Timed(Transcript):
        def time(self, timer: Any, name: str, gone_s: float) -> Reply | None:
            reply = super().time(timer, name, gone_s)
            if name == hold:
                raise PowerGone
            return reply

    first = Timed(HandClock())
    with pytest.raises(PowerGone):
        run(bound_plan(), first, journal, first.clock)
    second = Transcript(HandClock(first.clock.now()))
    assert run(bound_plan(), second, journal, second.clock) == 0
    timed = [name for name, _s, _g in (*first.timed, *second.timed) if name.startswith("hold")]
    assert timed.count(hold) == 1
    assert len(timed) == 5


@pytest.mark.parametrize(
    ("seconds", "words"),
    [
        (0, "0 seconds"),
        (1, "1 second"),
        (59, "59 seconds"),
        (60, "1 minute"),
        (3599, "59 minutes"),
        (3600, "1 hour"),
        (3660, "1 hour 1 minute"),
    ],
)
def test_a_span_is_said_with_its_unit(seconds: int, words: str) -> None:
    assert span(seconds) == words
