"""Hand-made partners for the loop: someone who types, a clock, a diary that can fail."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

from coach.drivers.port import EndOfInput, Reply
from coach.drivers.sample import moved_to
from coach.drivers.timed_lines import whole_s
from coach.journal import Trouble
from coach.model.heard import Kind
from coach.texts.doors import bound_from

if TYPE_CHECKING:
    from collections.abc import Mapping

    from coach.drivers.port import Diary
    from coach.journal import Unfinished
    from coach.model.history import DayRecord, History, Hold
    from coach.model.program import Bound
    from coach.model.turns import Ask, Line, Timer, Turn

PLANS = Path(__file__).parents[2] / "dialogs" / "steady-shoulder" / "plans"
MONDAY = datetime(2026, 11, 9, 18, 30, tzinfo=UTC)

GOOD_DAY = {
    "plan is mine": "yes",
    "guardian here": "yes",
    "pain now": "1",
    "worst pain": "1",
    "waking pain": "0",
    "sleep last night": "8",
    "throwing yesterday": "none",
    "throwing today": "none",
    "pain in warm-up": "0",
    "reps in set": "10",
    "holds in set": "5",
    "pain in set": "0",
    "felt in set": "fine",
    "go": "go",
    "pain after": "1",
    "effort": "4",
    "minutes": "25",
    "own words": "none",
    "sets since": "0",
    "worse since": "no",
}


@cache
def bound_plan(name: str = "d-o") -> Bound:
    """One of the invented athletes."""
    bound, findings = bound_from(PLANS / f"{name}.yaml")
    assert bound is not None, findings
    return bound


def plan_for_today(rest_s: int = 60) -> Bound:
    """The same athlete with a plan that runs today, and rests of so many seconds."""
    bound = moved_to(bound_plan(), datetime.now().astimezone().date())
    doses = tuple(dose._replace(rest_s=rest_s) for dose in bound.plan.doses)
    return bound._replace(plan=bound.plan._replace(doses=doses), digest="0" * 64)


def good_answer(ask: Ask) -> Reply:
    """What a calm athlete types, one part of a gathered line at a time."""
    if ask.question.kind is Kind.LINE:
        first = ask.question.parts[0].fact
        return Reply(GOOD_DAY[first], first)
    if ask.question.kind is Kind.NONE_OR_LIST:
        return Reply("none")
    if ask.safety:
        return Reply(GOOD_DAY.get(ask.question.fact, "no"))
    return Reply(GOOD_DAY.get(ask.question.fact, "none"))


class HandClock:
    """Moves only when told."""

    def __init__(self, at: datetime = MONDAY) -> None:
        self.at = at
        self.passed = 0.0

    def now(self) -> datetime:
        return self.at + timedelta(seconds=self.passed)

    def steady(self) -> float:
        return self.passed


class Athlete:
    """Types `own` answers by the prompt's name, in order, else the good day's; keeps all shown."""

    def __init__(self, clock: HandClock, own: Mapping[str, list[str]] | None = None) -> None:
        self.clock = clock
        self.own = {name: list(texts) for name, texts in (own or {}).items()}
        self.shown: list[tuple[str, ...]] = []
        self.alone: list[bool] = []
        self.asked: list[str] = []
        self.timed: list[tuple[str, int, float]] = []
        self.leave_at: int | None = None
        self.leave_at_name = ""

    def present(self, turn: Turn, lines: tuple[Line, ...]) -> None:
        self.shown.append(tuple(line.text for line in lines))
        self.alone.append(turn.alone)

    def ask(self, ask: Ask) -> Reply:
        if len(self.asked) == self.leave_at or ask.name == self.leave_at_name:
            raise EndOfInput
        self.asked.append(ask.name)
        self.clock.passed += 5
        own = self.typed_at(ask.name)
        if own is not None:
            return Reply(own)
        return Reply("") if ask.name == "enter" else good_answer(ask)

    def time(self, timer: Timer, name: str, gone_s: float) -> Reply | None:
        self.timed.append((name, timer.seconds, gone_s))
        own = self.typed_at(name)
        if own is not None:
            self.clock.passed += 7
            return Reply(own)
        self.clock.passed += max(0.0, whole_s(timer) - gone_s)
        return None

    def typed_at(self, name: str) -> str | None:
        """The next own answer for a prompt; `+300` before it lets so many seconds pass first."""
        texts = self.own.get(name)
        if not texts:
            return None
        text = texts.pop(0)
        if text.startswith("+"):
            seconds, _, text = text[1:].partition(" ")
            self.clock.passed += float(seconds)
        return text

    def words(self) -> str:
        """All that was shown, one line each."""
        return "\n".join(line for lines in self.shown for line in lines)


class FullDisk:
    """A diary that refuses to write from the given transaction on."""

    def __init__(self, diary: Diary, from_write: int) -> None:
        self.diary, self.left = diary, from_write

    def _count(self) -> None:
        self.left -= 1
        if self.left < 0:
            raise Trouble("The disk is full.", 74)

    def begin(self, header: Mapping[str, str], opened_at: str, shown: tuple[str, ...]) -> int:
        self._count()
        return self.diary.begin(header, opened_at, shown)

    def append(
        self,
        session: int,
        kind: str,
        body: Mapping[str, object],
        shown: tuple[str, ...],
        at: str,
        *,
        hold: Hold | None = None,
        close: DayRecord | None = None,
    ) -> None:
        self._count()
        self.diary.append(session, kind, body, shown, at, hold=hold, close=close)

    def unfinished(self) -> Unfinished | None:
        return self.diary.unfinished()

    def history(self) -> History:
        return self.diary.history()

    def open_hold(self) -> Hold | None:
        return self.diary.open_hold()
