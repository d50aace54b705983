"""Whole seasons of seeded invented athletes, played through the real session in memory.

Law: it types nothing and judges nothing; values are handed over as heard, so that a season tests
the weeks and not the ears. The same seed gives the same season, answer by answer.
"""

from __future__ import annotations

import functools
import random
from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from typing import NamedTuple
from zoneinfo import ZoneInfo

from coach.drivers.forecast_days import count_shown, past
from coach.drivers.sample import moved_to
from coach.drivers.words_shown import record_words
from coach.model.decisions import Refusal
from coach.model.flags import Group
from coach.model.heard import Action, Command, Heard, Kind, Question, Value
from coach.model.history import DayRecord, History, Hold
from coach.model.program import Bound
from coach.model.turns import Event, Resumed, TimerEnded, Turn, Typed
from coach.session.brief import brief_for
from coach.session.daybook import day_record, hold_of, keep, new_book
from coach.session.engine import ask_of, start, take, turn
from coach.session.pitching import FACTS, INNINGS
from coach.session.state import State
from coach.session.table import Stage

PLANS = Path(__file__).parent / "try-arm" / "plans"
DAYS = 120
MOST_STEPS = 400
EVERY_TURN = 6  # every so many sessions each turn is made; else those that may show work
SHOWS_WORK = frozenset({Stage.TODAY, Stage.WARM_UP, Stage.THROWING})
FIRST_DAYS = (date(2023, 9, 15), date(2028, 3, 1))  # leap days, year ends, both clock changes
ZONES = ("Europe/Helsinki", "America/New_York", "Australia/Sydney", "Asia/Kolkata")
FAR = {  # about 12 zones away
    "Europe/Helsinki": "Pacific/Honolulu",
    "America/New_York": "Asia/Shanghai",
    "Australia/Sydney": "Atlantic/Azores",
    "Asia/Kolkata": "America/Los_Angeles",
}
MILD = 0.02  # chance of a pain that is at a ceiling and not over it
# Seeds of the two further kinds of season; below them are the first ones, which stay as they are.
PITCHES_FROM, SERVES_FROM = 100_000, 200_000
GAMES = 0.2  # chance of a game on a day that a pitcher is asked about
# Counts on both sides of the bands of rest at 13 to 18 years, and of the caps.
PITCHES = (0, 1, 20, 21, 30, 31, 35, 36, 40, 41, 45, 46, 50, 51, 60, 61, 65, 66, 75, 76, 80, 81)
MANY_PITCHES = (95, 96, 105, 106)
FIXES = 0.004  # chance at a prompt that an answer is put right
GOOD_YES = frozenset({"plan is mine", "guardian here", "nothing here", "stand-in weight"})


class Step(NamedTuple):
    """One answer: before, what was brought and heard, after, and the turn shown then (if made)."""

    before: State
    event: Event
    heard: Heard
    after: State
    shown: Turn | None


class Day(NamedTuple):
    """One start of the coach: what it began from, its steps, how the diary would keep it."""

    opened_at: datetime
    bound: Bound
    history: History
    first: State
    steps: tuple[Step, ...]
    record: DayRecord
    hold: Hold | None


class Mood(NamedTuple):
    """How a day is felt: chances of pain in a set, soreness, a bad morning, and of odd answers."""

    hurts: float = 0.01
    sore: float = 0.02
    morning: float = 0.02
    odd: float = 0.002
    pains: tuple[int, ...] = (1, 1, 2, 3)  # beside those in a set


QUIET, ROUGH, WILD = Mood(), Mood(0.12, 0.2, 0.3, 0.01), Mood(0.2, 0.3, 0.2, 0.06)
MOODS = (QUIET, ROUGH, WILD)
STRONGER = tuple(mood._replace(pains=(1, 2, 3, 4, 5, 6)) for mood in MOODS)


@functools.cache
def plan(name: str) -> Bound:
    """One of the invented plans, checked."""
    from coach.texts.doors import bound_from

    bound, findings = bound_from(PLANS / f"{name}.yaml")
    assert bound is not None, findings
    return bound


def dated(bound: Bound, first: date, cleared: date, opened: date) -> Bound:
    """The plan as if begun on `first`, throwing cleared and overhead work opened on their days."""
    moved = moved_to(bound, first).plan
    line = moved.throwing_line
    assert line is not None
    return bound._replace(
        plan=moved._replace(
            review_by=(first + timedelta(days=DAYS + 5)).isoformat(),
            throwing_line=line._replace(cleared=cleared.isoformat()),
            opened=tuple(lock._replace(day=opened.isoformat()) for lock in moved.opened),
        )
    )


class Season(NamedTuple):
    """A seed's athlete: plans by the day they begin, where they live, and when they fly."""

    seed: int
    first: date
    plans: tuple[tuple[int, Bound], ...]
    home: str
    flies_on: tuple[int, int]
    keen: float


def season_of(seed: int, dice: random.Random) -> Season:
    """The athlete of a seed."""
    span = (FIRST_DAYS[1] - FIRST_DAYS[0]).days
    first = FIRST_DAYS[0] + timedelta(days=dice.randrange(span))
    cleared = first + timedelta(days=dice.choice((0, 0, 10, 30)))
    opened = first + timedelta(days=dice.choice((0, 20, 60)))
    names = plans_of(seed)
    changes = (0, dice.randint(30, 80))
    plans = tuple(
        (day, dated(plan(name), first, cleared, opened))
        for day, name in zip(changes, names, strict=False)
    )
    away = dice.randint(10, 70)
    flies = (away, away + dice.randint(3, 30)) if seed % 4 == 0 else (DAYS, DAYS)
    return Season(seed, first, plans, dice.choice(ZONES), flies, dice.choice((0.6, 0.9, 1.0)))


def plans_of(seed: int) -> tuple[str, ...]:
    """The plans that a seed's athlete gets, in order."""
    if seed >= SERVES_FROM:  # the second version has the same throwing line
        return ("v-b", "v-b-2") if seed % 2 else ("v-b",)
    if seed >= PITCHES_FROM:
        return ("p-n",)
    return (("y-g",), ("g-w", "g-w-2"), ("g-w",))[seed % 3]


def play(seed: int, days: int = DAYS) -> Iterator[Day]:
    """Every start of a season, day by day."""
    dice = random.Random(seed)
    season = season_of(seed, dice)
    records: list[DayRecord] = []
    hold: Hold | None = None
    lifted_at, number = "", 0
    while number < days:
        for at in instants(season, number, dice):
            if records and at <= datetime.fromisoformat(records[0].opened_at) + timedelta(hours=1):
                continue
            if hold is not None and dice.random() < 0.3:
                hold, lifted_at = None, (at - timedelta(minutes=1)).isoformat()
            bound = [made for day, made in season.plans if day <= number][-1]
            history = past(tuple(records), hold, lifted_at)
            day = one_day(bound, history, at, dice, full=len(records) % EVERY_TURN == 0)
            records.insert(0, day.record)
            del records[60:]
            hold = hold or (day.hold and day.hold._replace(number=1))
            yield day
        number += days_until_next(season, dice)


def instants(season: Season, number: int, dice: random.Random) -> tuple[datetime, ...]:
    """When the coach is opened on a day, by the clock of where the athlete is; now and then twice."""
    there = season.flies_on[0] <= number < season.flies_on[1]
    zone = ZoneInfo(FAR[season.home] if there else season.home)
    day = season.first + timedelta(days=number)
    hour = dice.randint(6, 20)
    at = datetime.combine(day, time(hour, dice.randrange(60)), zone)
    at = at.astimezone(UTC).astimezone(zone)  # a clock time that the change of clocks left out
    if dice.random() < 0.06 and hour < 18:
        return at, (at.astimezone(UTC) + timedelta(hours=3)).astimezone(zone)
    return (at,)


def days_until_next(season: Season, dice: random.Random) -> int:
    """Days to the next start: mostly two, now and then a break, a long one, or a very long one."""
    roll = dice.random()
    if roll < 0.004:
        return dice.randint(28, 33)
    if roll < 0.014:
        return dice.randint(14, 28)
    if roll < 0.034:
        return dice.randint(7, 14)
    if roll > season.keen:
        return dice.randint(3, 6)
    return dice.choice((1, 2, 2, 2, 3))


# ---------------------------------------------------------------- one day


def one_day(
    bound: Bound, history: History, at: datetime, dice: random.Random, *, full: bool
) -> Day:
    """One start to its end."""
    brief = brief_for(bound, history, at)
    first = state = start(brief)
    book = new_book(brief)
    first_kind = bound.plan.name.startswith(("G.W.", "Y.G."))
    mood = dice.choices(MOODS if first_kind else STRONGER, (0.9, 0.07, 0.03))[0]
    steps: list[Step] = []
    at_s = 0
    while not state.end:
        assert len(steps) < MOST_STEPS, f"no end after {MOST_STEPS} steps"
        at_s += 10
        event, heard = brought(state, at_s, mood, dice)
        after = take(state, event, heard)
        assert not isinstance(after, Refusal), after
        book = keep(book, state, event, heard, after)
        shown = turn(after) if full or may_show_work(after) else None
        steps.append(Step(state, event, heard, after, shown))
        state = after
    record = day_record(book, state, record_words(state.end, state))
    hold = hold_of(state, book, at.isoformat())
    return Day(at, bound, history, first, tuple(steps), record, hold)


def may_show_work(state: State) -> bool:
    """Whether the turn of a state may hold a dose or throws, or is a day's last."""
    at_a_set = state.work is not None and state.work.phase in {"set", "ready"}
    return bool(state.end) or state.stage in SHOWS_WORK or at_a_set


def brought(state: State, at_s: int, mood: Mood, dice: random.Random) -> tuple[Event, Heard]:
    """The next event and what is heard in it."""
    if dice.random() < mood.odd / 4:
        return Resumed(dice.choice((10, 400, 4000)), at_s), Heard(Action.ACCEPT)
    ask = ask_of(state)
    if ask is None:
        return TimerEnded(at_s), Heard(Action.ACCEPT)
    return Typed("-", at_s), heard_for(ask.question, state, mood, dice)


def heard_for(question: Question, state: State, mood: Mood, dice: random.Random) -> Heard:
    """One answer: a value mostly; now and then unclear, a sign, or an own stop."""
    roll = dice.random()
    if roll < mood.odd:
        return Heard(Action.ASK_AGAIN)
    if roll < mood.odd * 1.2:
        return Heard(Action.CONFIRM, group=dice.choice(list(Group)))
    if roll < mood.odd * 1.3:
        return Heard(Action.ESCALATE, group=dice.choice(list(Group)))
    if roll < mood.odd * 1.5:
        return Heard(Action.ACCEPT, command=Command.STOP)
    if roll < mood.odd * 1.5 + FIXES and not state.aside:
        return Heard(Action.ACCEPT, command=Command.FIX)
    if question.kind is Kind.LINE:
        parts = question.parts
        return Heard(Action.ACCEPT, tuple((p.fact, value(p, state, mood, dice)) for p in parts))
    return Heard(Action.ACCEPT, ((question.fact, value(question, state, mood, dice)),))


def value(question: Question, state: State, mood: Mood, dice: random.Random) -> Value:
    """A value that fits the question and the mood."""
    kind, fact = question.kind, question.fact
    if kind in {Kind.PAIN_NOW, Kind.WORST_PAIN}:
        return pain(fact, mood, dice)
    if fact == "thrown already" and state.brief.plan.game_pitches is not None:
        return dice.choice(("yes", "no"))
    if kind in {Kind.YES_NO, Kind.SAFETY_YES_NO}:
        return yes_or_no(fact, mood, dice)
    if question.choices:
        return chosen(question, state, mood, dice)
    if kind is Kind.SLEEP_HOURS:
        return 8.0 if dice.random() < 0.9 else 5.5
    if kind is Kind.OWN_WORDS:
        return "none"
    if kind is Kind.EFFORT:
        return float(dice.choice((3, 4, 5, 6, 9)))
    return count(fact, state, dice)


def chosen(question: Question, state: State, mood: Mood, dice: random.Random) -> Value:
    """One or several of the choices: the first and dull one mostly."""
    if question.kind is Kind.NONE_OR_LIST:
        return ("none",)
    if question.kind is Kind.CHOICES:
        return question.choices if dice.random() < 0.9 else question.choices[1:]
    if question.kind is Kind.SET_FEEL and dice.random() > mood.hurts * 3:
        return "fine"
    if question.fact.startswith("ache "):
        return dice.choice(question.choices)
    pitches = question.kind is Kind.THROWING and state.brief.plan.game_pitches is not None
    if pitches and dice.random() < GAMES:
        return "game"
    dull = 0.93 if question.kind is Kind.THROWING else 0.8
    return question.choices[0] if dice.random() < dull else dice.choice(question.choices)


def pain(fact: str, mood: Mood, dice: random.Random) -> float:
    """A pain of 0 to 10, by what is asked."""
    chance = mood.morning if fact == "waking pain" else mood.hurts
    if dice.random() > chance:
        usual = (0, 0, 1) if dice.random() > MILD else (2,)
        return 0.0 if fact == "waking pain" else float(dice.choice(usual))
    return float(dice.choice((1, 2, 3, 3, 4, 5, 6, 9) if fact == "pain in set" else mood.pains))


def yes_or_no(fact: str, mood: Mood, dice: random.Random) -> str:
    """The dull answer mostly; soreness and tiredness by the mood, a sign rarely."""
    if fact in GOOD_YES:
        return "yes" if dice.random() > mood.odd else "no"
    chance = mood.sore if "sore" in fact or fact == "arm tired" else mood.odd / 4
    return "yes" if dice.random() < chance else "no"


def count(fact: str, state: State, dice: random.Random) -> float:
    """Reps, holds, throws or minutes: mostly two over the top, so that ladders climb."""
    if fact == "throws done":
        return float(count_shown(state))
    if fact in FACTS:
        return pitched(fact, dice)
    if state.work is None or not fact.endswith("in set"):
        return 25.0
    top = state.work.dose.reps_high
    return float(top + 2 if dice.random() < 0.92 else dice.choice((top, top + 1, top - 1, 4, 2)))


def pitched(fact: str, dice: random.Random) -> float:
    """Pitches of a game at a band's edge, now and then over a cap; innings beside the catcher's."""
    if fact == INNINGS:
        return float(dice.choice((0, 3, 4)))
    if fact == "pitches before" and dice.random() < 0.7:
        return 0.0
    return float(dice.choice(PITCHES if dice.random() < 0.9 else MANY_PITCHES))
