"""Ten weeks of an invented athlete, played through the real session day by day.

Law: every dose, stop and decision in it is the session's own; only what is typed is made up here. It
is kept in memory alone and never mixed with anybody's diary. The same days give the same bytes.
"""

from __future__ import annotations

import sqlite3
from datetime import date, datetime, timedelta, timezone
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.drivers.clearing import clear
from coach.drivers.drive import run
from coach.drivers.port import Reply
from coach.drivers.replay import ReplayClock
from coach.drivers.replay_names import is_screen
from coach.drivers.sample import moved_to
from coach.drivers.timed_lines import whole_s
from coach.journal.chain import Chain
from coach.journal.diary import Journal
from coach.journal.whole import Whole, rows_in
from coach.model.heard import Kind
from coach.model.program import Opened, ThrowingLine
from coach.rules.throwing_tables import STEP_TABLES
from coach.session.stopping import clinician_name
from coach.texts.compiled import to_json

if TYPE_CHECKING:
    from coach.model.heard import Question
    from coach.model.program import Bound
    from coach.model.turns import Ask, Line, Timer, Turn

FIRST_DAY: Final = date(2026, 8, 31)
WEEKS: Final = 10
ZONE: Final = timezone(timedelta(hours=2))
ANSWER_S: Final = 6  # seconds an invented answer takes
THROWS_FROM_WEEK: Final = 6  # the plan's second version, with throwing opened
TABLE: Final = "youth 8 steps"
WHO: Final = "M. Aalto"


class Mood(NamedTuple):
    """What the invented athlete feels and types on one day."""

    rest: str = "1"
    waking: str = "1"
    sleep: str = "8"
    in_set: str = "1"
    more: int = 0
    felt: str = "fine"
    effort: str = "4"
    minutes: str = "30"
    threw: str = "none"
    sore: str = ""
    words: str = "none"
    sign: str = ""


# By week and weekday (0 is Monday); every other day of a session is a quiet one.
DAYS: Final[dict[tuple[int, int], Mood]] = {
    (0, 0): Mood(rest="2", waking="2", in_set="2", effort="5", minutes="34"),
    (0, 2): Mood(rest="2", waking="1", in_set="2", sleep="7.5"),
    (0, 4): Mood(rest="2", more=2),
    (1, 0): Mood(more=2, sleep="7"),
    (1, 2): Mood(more=2, effort="5", words="The row feels good, reach is still stiff."),
    (1, 4): Mood(more=2, sleep="6.5"),
    (2, 0): Mood(more=2),
    (2, 2): Mood(more=2, sleep="5", effort="6", words="Exam week, late nights."),
    (2, 4): Mood(more=2, sleep="7"),
    (3, 0): Mood(rest="2", waking="2", in_set="4", effort="7", sleep="6",
                 words="Carried boxes on Sunday. Is that why it hurts?"),
    (3, 2): Mood(rest="2", waking="1", in_set="2", sleep="5.5", effort="5"),
    (3, 4): Mood(rest="2", waking="1", in_set="2", sleep="7", felt="2"),
    (4, 0): Mood(rest="2", waking="1", in_set="1", sleep="8"),
    (4, 2): Mood(rest="2", waking="1", sign="my pinky has been tingling since this morning"),
    (5, 0): Mood(rest="1", waking="1", in_set="1", sleep="8.5", effort="3"),
    (5, 2): Mood(more=2, effort="3"),
    (5, 4): Mood(more=2, sleep="8.5"),
    (6, 0): Mood(more=2, words="First throws today."),
    (6, 2): Mood(more=2, rest="0", waking="0"),
    (6, 4): Mood(more=2, rest="0", waking="0", sleep="9"),
    (7, 0): Mood(more=2, rest="0", waking="1", effort="5"),
    (7, 2): Mood(more=2, rest="1", waking="1"),
    (7, 4): Mood(more=2, rest="1", waking="0", sore="sore at the end", effort="6",
                 words="Back of the shoulder was sore after the last throws."),
    (8, 0): Mood(rest="1", waking="1", effort="4"),
    (8, 2): Mood(more=2, rest="0", waking="0", sleep="8.5"),
    (8, 4): Mood(more=2, rest="0", waking="0"),
    (9, 0): Mood(more=2, rest="0", waking="0", effort="5", sleep="8.5"),
    (9, 2): Mood(more=2, rest="0", waking="0"),
    (9, 4): Mood(more=2, rest="0", waking="0", effort="5",
                 words="When may I go back to team throwing?"),
}  # fmt: skip


def invented_diary(sample: Bound) -> Whole:
    """All rows of the invented diary, made from the shipped sample plan."""
    chain = Chain(sqlite3.connect(":memory:", isolation_level=None))
    chain.create()
    journal = Journal(chain, None)
    bound = moved_to(sample, FIRST_DAY)
    bound = bound._replace(plan=bound.plan._replace(review_by=day_at(WEEKS, 3).isoformat()))
    keep(journal, bound, FIRST_DAY)
    for (week, weekday), mood in DAYS.items():
        day = day_at(week, weekday)
        if (week, weekday) == (5, 0):
            open_again(journal, bound, day - timedelta(days=1))
        if week == THROWS_FROM_WEEK and bound.plan.throwing_line is None:
            bound = with_throwing(bound, day)
            keep(journal, bound, day)
        play_day(journal, bound, day, mood)
    whole = rows_in(chain.connection)
    chain.connection.close()
    return whole


def day_at(week: int, weekday: int) -> date:
    """A day of the ten weeks."""
    return FIRST_DAY + timedelta(weeks=week, days=weekday)


def at_clock(day: date, hour: int) -> datetime:
    """An instant of a day."""
    return datetime(day.year, day.month, day.day, hour, 10, tzinfo=ZONE)


def keep(journal: Journal, bound: Bound, day: date) -> None:
    """Put a plan in place in the morning."""
    journal.keep_plan(to_json(bound), bound.digest, "invented plan", at_clock(day, 8).isoformat())


def with_throwing(bound: Bound, day: date) -> Bound:
    """The plan's second version, in which its invented clinician opens throwing."""
    plan, apart = bound.plan, STEP_TABLES[TABLE].apart_days
    line = ThrowingLine(day.isoformat(), WHO, TABLE, 1, 4, apart, 0, "", plan.place)
    overhead = Opened("throwing", day.isoformat(), WHO, plan.place)
    opened = (*plan.opened, overhead)
    changed = plan._replace(version=2, throwing_line=line, opened=opened)
    return bound._replace(plan=changed)


def play_day(journal: Journal, bound: Bound, day: date, mood: Mood) -> None:
    """One day in front of the session."""
    clock = ReplayClock(at_clock(day, 17 if day.weekday() else 18))
    run(bound, InventedAthlete(mood, clock), journal, clock)


def open_again(journal: Journal, bound: Bound, day: date) -> None:
    """The invented clinician opens the plan in person."""
    at = at_clock(day, 11)
    clear(journal, bound, InventedClinician(bound, day), lambda: at)


class InventedClinician:
    """Answers the three questions of an opening in person."""

    def __init__(self, bound: Bound, day: date) -> None:
        self._answers = ["in person", day.isoformat(), clinician_name(bound.plan.calls)]

    def say(self, text: str) -> None:
        """Nothing is shown."""

    def ask(self, label: str) -> str | None:  # noqa: ARG002 - whatever is asked, in this order
        """The next answer."""
        return self._answers.pop(0) if self._answers else None

    def wait(self, seconds: float) -> None:
        """No time passes."""


class InventedAthlete:
    """Types what a mood says at every prompt."""

    def __init__(self, mood: Mood, clock: ReplayClock) -> None:
        self.mood, self.clock = mood, clock
        self.top = 10
        self.sets = (1, 1)
        self.throws = 0

    def present(self, turn: Turn, lines: tuple[Line, ...]) -> None:  # noqa: ARG002 - nobody looks
        """Keep the dose on offer."""
        for offer in turn.offers:
            if offer.kind == "set":
                self.top = offer.dose.reps_high
                self.sets = (offer.set_number, offer.dose.sets)
        if turn.throws:
            self.throws = turn.throws[-1].throws

    def time(self, timer: Timer, name: str, gone_s: float) -> Reply | None:  # noqa: ARG002
        """A timer runs to its end."""
        self.clock.passed += max(0.0, whole_s(timer) - gone_s)
        return None

    def ask(self, ask: Ask) -> Reply:
        """What is typed."""
        self.clock.passed += ANSWER_S
        if ask.question.kind is Kind.LINE:
            first = ask.question.parts[0]
            return Reply(self.answer(first.fact, first), first.fact)
        return Reply(self.answer(ask.name, ask.question))

    def answer(self, name: str, question: Question) -> str:
        """By the fact; what is not known here by the kind of question."""
        fact = question.fact
        if fact == "enter":
            return ""
        if is_screen(name, question) or question.kind is Kind.NONE_OR_LIST:
            if self.mood.sign:
                return self.mood.sign
            return "none" if question.kind is Kind.NONE_OR_LIST else "no"
        told = self.told().get(fact)
        return told if told is not None else self.by_kind(question)

    def told(self) -> dict[str, str]:
        """The mood by fact."""
        mood = self.mood
        last = self.sets[0] == self.sets[1]
        reps = str(self.top + (mood.more if last else 0))
        return {
            "plan is mine": "yes",
            "guardian here": "yes",
            "pain now": mood.rest,
            "worst pain": mood.rest,
            "waking pain": mood.waking,
            "waking ache": "not sure",
            "against usual": "worse" if int(mood.waking) > 2 else "same",  # noqa: PLR2004
            "sleep last night": mood.sleep,
            "throwing yesterday": "none",
            "throwing today": mood.threw,
            "throwing tomorrow": "none",
            "thrown already": "no",
            "at hand": "all",
            "pain in warm-up": mood.rest,
            "pain in throwing": "0",
            "pain in set": mood.in_set,
            "pain before change": mood.rest,
            "pain after": mood.rest,
            "reps in set": reps,
            "holds in set": str(self.top),
            "felt in set": mood.felt,
            "effort": mood.effort,
            "minutes": mood.minutes,
            "own words": mood.words,
            "moves or later": "moves",
            "nothing here": "yes",
            "worse since": "no",
            "go": "go",
            "held back": "not at all",
            "throw ache place": "back",
            "throws done": str(self.throws),
            mood.sore or "sore in warm-up": "yes" if mood.sore else "no",
        }

    def by_kind(self, question: Question) -> str:
        """A quiet answer to a question that no mood speaks of."""
        if question.kind in {Kind.YES_NO, Kind.SAFETY_YES_NO}:
            return "no"
        if question.kind is Kind.CHOICE:
            return question.choices[0]
        if question.kind in {Kind.PAIN_NOW, Kind.WORST_PAIN, Kind.EFFORT}:
            return self.mood.rest
        if question.kind is Kind.COUNT:
            return str(self.top)
        return "none"
