"""The throwing steps of a plan from day to day, over all that one day after another may tell them.

Law: the session's own line is talked through to its end and to every place where it may break off;
what may be shown is counted by `throwing_promises`, which asks no rule. A day may tell anything, also
what no diary would; too much is looked at, never too little. Nothing here decides a step.
"""

from __future__ import annotations

import time
from collections import deque
from collections.abc import Iterable, Iterator
from datetime import date, datetime, timedelta
from functools import cache
from itertools import product
from typing import Final, NamedTuple

from coach.drivers.prove_answers import SIGN, UNCLEAR, Answers, Try
from coach.drivers.prove_ladders import way_to
from coach.drivers.prove_search import Break, merged
from coach.drivers.throwing_promises import Morning, Opened, Said, ThrowingOracle, Wrong
from coach.model.decisions import Refusal
from coach.model.heard import Value
from coach.model.history import DayRecord, History, Outing
from coach.model.ladders import ThrowDay, ThrowState
from coach.model.program import Bound
from coach.model.turns import Throws
from coach.session import throwing
from coach.session.brief import Brief, brief_for
from coach.session.daybook import Book, keep, throw_day
from coach.session.engine import ask_of, take, turn
from coach.session.state import State
from coach.session.table import Stage
from coach.session.training import to_close

MOST: Final = 50_000  # memories; more would be a fault
OTHER_PLANS: Final = ("another version", "another line")
DAYS_OFF: Final = (
    8,
    15,
    29,
)  # the first days after 7, 14 and 28 missed ones; set here, to be signed
FLAG_AT: Final = 8  # a pain from here on is read back; set here, to be signed
DOWN: Final = frozenset({"sore after throw 15", "sore at the end"})
SINCE: Final = frozenset({"sore an hour after", "sore next day"})
SAID_YES: Final = DOWN | SINCE | {"sore in warm-up"}


class Memory(NamedTuple):
    """The throwing steps between two days: the last line, the step last shown, what stands open.

    `day` is the diary's own record of the last line (None: there was none yet), `at` left out.
    """

    day: ThrowDay | None
    thrown: int
    opened: Opened


class Told(NamedTuple):
    """What a day tells: how long ago the last line and the last throws were, and what holds it.

    `plan` is the same, another version (the same line), or another line. `match`: one tomorrow.
    `over_cap`: a game in the days before went over the cap on pitches.
    """

    since_line: int
    since_throws: int
    plan: str = "same"
    match: bool = False
    over_cap: bool = False


class Ways(NamedTuple):
    """How a day's line may go: each way's words, what was said, and what the diary keeps of it.

    `wrong` is what does not keep such a line away although it must.
    """

    ways: tuple[tuple[str, Said, ThrowDay | None], ...]
    shown: tuple[tuple[str, Said, tuple[Throws, ...]], ...]
    answers: int
    wrong: tuple[Wrong, ...] = ()


class Thrown(NamedTuple):
    """What the throwing steps of a plan showed; `whole` where every memory was looked at."""

    memories: int
    days: int
    answers: int
    broken: tuple[Break, ...]
    whole: bool = True


def thrown_across_days(bound: Bound, opens_at: datetime, until: float | None = None) -> Thrown:
    """Every memory of the throwing steps, breadth first, so that the first break is the shortest.

    `until` is an instant of `time.monotonic`.
    """
    steps = Steps(bound, opens_at)
    first = Memory(None, 0, steps.oracle.at_first())
    came: dict[Memory, tuple[Memory, str] | None] = {first: None}
    todo, days = deque([first] if steps.is_news(first) else ()), 0
    broken: dict[Wrong, Break] = {}

    def note(wrong: Wrong, memory: Memory, words: str) -> None:
        talk = (*way_to(came, memory), ("day", words))
        broken.setdefault(wrong, Break(wrong.promise, wrong.words, talk, "the throwing steps"))

    def in_time() -> bool:
        return until is None or time.monotonic() < until

    while todo and len(came) <= MOST and in_time():
        memory = todo.popleft()
        for told in steps.days_told(memory):
            days += 1
            for after, words, wrongs in steps.days_on(memory, told):
                for wrong in wrongs:
                    note(wrong, memory, words)
                if steps.is_news(after):
                    came[after] = (memory, words)
                    todo.append(after)
    if todo and len(came) > MOST:
        words = "the throwing steps do not come to an end"
        broken[Wrong("P7", words)] = Break("P7", words, ())
    return Thrown(len(came), days, steps.answers, tuple(broken.values()), not todo)


class Steps:
    """The throwing line of one plan on any day."""

    def __init__(self, bound: Bound, opens_at: datetime) -> None:
        """`opens_at` is when each day opens; no earlier than the clearance, all that goes by it."""
        line = bound.plan.throwing_line
        late = date.fromisoformat(line.cleared) - opens_at.date() if line else timedelta()
        self.bound, self.opens_at = bound, opens_at + max(late, timedelta())
        self.oracle = ThrowingOracle(bound.plan)
        self.longest = self.oracle.longest_between()
        self.day = Answers()
        self.ways: dict[object, Ways] = {}
        self.line_of, self.brief = cache(self._line_of), cache(self._brief)
        self.gone_on: set[tuple[int, Opened, int]] = set()
        self.strictest: dict[tuple[ThrowDay | None, int], list[Opened]] = {}
        self.answers = 0

    # ------------------------------------------------------------ what a day may tell

    def days_told(self, memory: Memory) -> Iterator[Told]:
        """Every day that the steps may be told of; another plan comes where no days are short or long."""
        for line, throws in self.days_since(memory):
            told = Told(line, throws)
            yield from (told, told._replace(match=True))
            if self.bound.plan.game_pitches is not None:
                yield told._replace(over_cap=True)
        if memory.day is not None:
            thrown = memory.thrown and not memory.day.step
            told = Told(self.longest, self.longest + bool(thrown))
            yield from (told._replace(plan=plan) for plan in OTHER_PLANS)

    def days_since(self, memory: Memory) -> Iterable[tuple[int, int]]:
        """Days since the last line and since the last throws, on both sides of each number.

        The last throws are as old as the last line, or, where that one showed none, older.
        """
        if memory.day is None:
            return ((0, 0),)
        own = dict(self.bound.plan.changed).get("layoff.gap")
        off = {*DAYS_OFF, *((int(own) + 1,) if own is not None else ())}
        long = {*off, *(first - 1 for first in off)}
        apart = range(1, self.longest + 1)
        if memory.day.step or not memory.thrown:
            return [(days, days) for days in sorted({*apart, *long})]
        return product(apart, sorted({self.longest + 1, *long}))

    def _brief(self, last: ThrowDay | None, thrown: int, told: Told) -> Brief:
        """The day as a diary would lay it ready, with nothing in it but the throws."""
        plan = self.bound.plan
        version = plan.version - (told.plan != "same")
        records = []
        if last is not None:
            line = "another line" if told.plan == "another line" else last.line
            records.append(self.record(told.since_line, version, last._replace(line=line)))
        if thrown and last is not None and not last.step:
            before = last._replace(step=thrown, state=ThrowState(thrown))
            records.append(self.record(told.since_throws, version, before))
        if told.over_cap:
            game = Outing((self.opens_at.date() - timedelta(days=6)).isoformat(), None, 0, True)
            records.append(self.record(6, version, None)._replace(pitched=(game,)))
        return brief_for(self.bound, History(tuple(records)), self.opens_at)

    def record(self, days: int, version: int, threw: ThrowDay | None) -> DayRecord:
        """A calm session so many days ago, with its throws."""
        at = self.opens_at - timedelta(days=days)
        if threw is not None:
            threw = threw._replace(ended_at=at.isoformat())
        return DayRecord(at.date().isoformat(), at.isoformat(), "done", version, threw=threw)

    def morning(self, told: Told) -> Morning:
        """The day as it is judged by."""
        anew, held = told.plan == "another line", told.match or told.over_cap
        return Morning(told.since_line, told.since_throws, anew, held)

    # ------------------------------------------------------------ one day

    def is_news(self, memory: Memory) -> bool:
        """Whether a memory is judged more strictly than those alike that were met before."""
        met = self.strictest.setdefault((memory.day, memory.thrown), [])
        if any(memory.opened.no_less_than(other) for other in met):
            return False
        met.append(memory.opened)
        return True

    def begun(self, brief: Brief, told: Told) -> State:
        """Where the day's last exercise leaves the session."""
        state = State(Stage.EXERCISE, brief, first=False, truth=brief.first_truth)
        return throwing.begin(state._replace(no_step=told.match), to_close)

    def days_on(
        self, memory: Memory, told: Told
    ) -> Iterator[tuple[Memory, str, tuple[Wrong, ...]]]:
        """Every way the day may go: the memory after it, its words, and what is wrong with it."""
        found = self.line_of(memory.day, memory.thrown, told)
        if found is None:
            return
        morning, today = self.morning(told), self.opens_at.date()
        opened = self.oracle.may_show(memory.opened, morning)
        at_once = (*found.wrong, *self.oracle.on_a_line(today, opened, morning))
        yield memory, words_of(told), at_once
        for words, said, shown in found.shown:
            wrongs = tuple(self.oracle.on_throws(opened, morning, said, shown))
            if wrongs:
                yield memory, f"{words_of(told)}: {words}", wrongs
        mark = (id(found), opened, memory.thrown)
        if mark in self.gone_on:
            return
        self.gone_on.add(mark)
        for words, said, kept in found.ways:
            after = memory
            if kept is not None:
                now = self.oracle.after(opened, memory.thrown, said)
                after = Memory(kept, said.shown or memory.thrown, now)
            yield after, f"{words_of(told)}: {words}", ()

    def _line_of(self, last: ThrowDay | None, thrown: int, told: Told) -> Ways | None:
        """The day's line, or None where none comes.

        The talk is the same wherever it reads the same of the days before: where the steps stand,
        whether the last day is asked about, which step was thrown last, and today's.
        """
        brief = self.brief(last, thrown, told._replace(match=False))
        state = self.begun(brief, told)
        cleared = throwing.cleared_today(brief)
        if state.stage is not Stage.THROWING:
            return None
        stands = throwing.standing(brief, cleared) if cleared else ThrowState(0)
        again = min(stands.planned, thrown) if last is not None and last.step else 0
        key = (stands, again, throwing.step_of(state))
        if key not in self.ways:
            self.ways[key] = talked(state, self.day)._replace(wrong=tuple(kept_from(state)))
            self.answers += self.ways[key].answers
        return self.ways[key]


def kept_from(state: State) -> Iterator[Wrong]:
    """P3: the line of a day that comes also where one thing more must keep it away."""
    for why, kept in with_one_thing_more(state):
        if throwing.begin(kept, to_close).stage is Stage.THROWING:
            yield Wrong("P3", f"throws although {why}")


def with_one_thing_more(state: State) -> Iterator[tuple[str, State]]:
    """The same day with one thing more that keeps throws away."""
    ready = State(Stage.EXERCISE, state.brief, first=False, no_step=state.no_step)
    for level in (1, 2):
        yield "pain now allows no loaded work", ready._replace(level=level)
    yield "waking pain is up", ready._replace(morning_up=True)
    yield "an exercise was left for pain", ready._replace(left_early=1)
    yield "the arm threw already", ready._replace(threw=True)
    yield "there is a game today", ready._replace(playing=True)
    yield "it is a recovery day", ready._replace(recovery=True)
    yield "loaded work waits for a game", ready._replace(order="after throwing")
    yield "a script takes throws away", ready._replace(lowered=(("today", "no throwing"),))
    brief = state.brief
    for why, more in days_that_keep_from(brief):
        history = brief.history._replace(records=(more, *brief.history.records))
        yield why, ready._replace(brief=brief_for(brief.bound, history, brief.opened_at))
    line = brief.plan.throwing_line
    if line is not None:
        ahead = (brief.today + timedelta(days=1)).isoformat()
        for why, less in (
            ("nobody cleared them", None),
            ("the clearance is still to come", line._replace(cleared=ahead)),
            ("the clearance names no person", line._replace(who="")),
        ):
            plan = brief.plan._replace(throwing_line=less)
            bound = brief.bound._replace(plan=plan)
            yield why, ready._replace(brief=brief_for(bound, brief.history, brief.opened_at))
    if brief.plan.game_pitches is not None:
        yield "a game's count asks for days off", ready._replace(pitched=True)


def days_that_keep_from(brief: Brief) -> Iterator[tuple[str, DayRecord]]:
    """A day before, with what asks for rest after it."""
    today = brief.today

    def at(days: int, **said: object) -> DayRecord:
        when = brief.opened_at - timedelta(days=days, minutes=1)
        day = DayRecord(when.date().isoformat(), when.isoformat(), "done", brief.plan.version)
        return day._replace(**said)  # type: ignore[arg-type]

    yield "there was a session today", at(0)
    yield "there was a game yesterday", at(1, throwing_today="game")
    yield "throws were told of yesterday", at(0, threw_yesterday="light")._replace(ended="none")
    if brief.plan.game_pitches is not None:
        for days in (1, 2, 3, 4):
            outing = Outing((today - timedelta(days=days)).isoformat(), None, days)
            yield "a game's days off are not over", at(days, pitched=(outing,))


# ---------------------------------------------------------------- the talk of one line


class Place(NamedTuple):
    """A place of the talk: the state, what was said, and what the diary holds of throws."""

    state: State
    said: Said
    kept: tuple[int, str, int, ThrowState] | None


def talked(first: State, day: Answers) -> Ways:
    """Every way the talk of a throwing line may go, and every place at which it may break off."""
    shown_at = cache(throws_of)
    begin = Place(merged(first), Said(), first.thrown)
    came: dict[Place, str] = {begin: ""}
    todo, answers = deque([begin]), 0
    ways: dict[tuple[Said, ThrowDay | None], str] = {}
    shown: dict[tuple[Said, tuple[Throws, ...]], str] = {}
    while todo:
        place = todo.popleft()
        state, words = place.state, came[place]
        ways.setdefault((place.said, kept_by_the_diary(place)), words or "broken off at once")
        if throws := shown_at(state):
            shown.setdefault((place.said, throws), words)
        for one in tries_at(place, day):
            answers += 1
            after = take(state, one.event, one.heard)
            if isinstance(after, Refusal):
                raise TypeError(after.why)
            now = merged(after)
            said = with_what_is_shown(heard(state, one, place.said), now, shown_at(now))
            then = Place(now, said, in_the_book(place, one, after))
            if then not in came:
                came[then] = ", ".join(filter(None, (words, in_words(state, one))))
                todo.append(then)
    return Ways(
        tuple((words, said, kept) for (said, kept), words in ways.items()),
        tuple((words, said, throws) for (said, throws), words in shown.items()),
        answers,
    )


def throws_of(state: State) -> tuple[Throws, ...]:
    """The throws on the screen."""
    return turn(state).throws if state.stage is Stage.THROWING else ()


def in_the_book(place: Place, one: Try, after: State) -> tuple[int, str, int, ThrowState] | None:
    """What the day's book holds of throws after an answer; before any, it keeps what the state does."""
    if place.kept is None and after.thrown is None:
        return None
    book = Book(after.brief, thrown=place.kept)
    return keep(book, place.state, one.event, one.heard, after).thrown


def tries_at(place: Place, day: Answers) -> Iterable[Try]:
    """What may be said: all on the line, and a sign, for all that stops a day with throws.

    What is not understood once is not understood again; other second answers, a `stop` and a sign
    in doubt are the search of each day's.
    """
    state = place.state
    if state.end:
        return
    if place.kept is not None:
        yield SIGN
    if state.stage is not Stage.THROWING:
        return
    asked = ask_of(state)
    if asked is not None and not state.unclear:
        yield from day.to(asked.question, state)
    yield UNCLEAR


def heard(before: State, one: Try, said: Said) -> Said:
    """What an answer says of soreness, as it was given; twice unclear is the worst."""
    if before.stage is not Stage.THROWING or before.aside or not before.missing:
        return said
    fact = before.missing[0]
    value: Value = dict(one.values).get(fact, "")
    worst = one.kind == "unclear" and before.unclear > 0
    if fact in SAID_YES and (value == "yes" or worst):
        said = said._replace(
            since=said.since or fact in SINCE,
            warm=said.warm or fact == "sore in warm-up",
            down=said.down or fact in DOWN,
        )
    if fact == throwing.PAIN and not isinstance(value, str | tuple):
        ceiling = before.brief.plan.pain.in_throwing
        started = throwing.ORDER[before.at] != "arm tired"
        return said._replace(down=said.down or (started and ceiling < value < FLAG_AT))
    if fact == "throws done" and (one.kind == "value" or worst):
        return said._replace(finished=True)
    return said


def with_what_is_shown(said: Said, state: State, throws: tuple[Throws, ...]) -> Said:
    """With the step that is on the screen, and whether the day has ended in a stop."""
    stopped = said.stopped or state.stage is Stage.STOPPED
    return said._replace(shown=max([said.shown, *(t.step for t in throws)]), stopped=stopped)


def kept_by_the_diary(place: Place) -> ThrowDay | None:
    """The day's throws as the diary would keep them were the day to end here."""
    day = throw_day(Book(place.state.brief, thrown=place.kept))
    return None if day is None else day._replace(ended_at="", row="")


# ---------------------------------------------------------------- words


def words_of(told: Told) -> str:
    """A day in words."""
    since = f"{told.since_line} days after the last line" if told.since_line else "the first line"
    off = told.since_throws > told.since_line
    said = (
        since,
        f"{told.since_throws} days after the last throws" if off else "",
        told.plan if told.plan != "same" else "",
        "a match tomorrow" if told.match else "",
        "a game over the cap 6 days ago" if told.over_cap else "",
    )
    return ", ".join(one for one in said if one)


def in_words(state: State, one: Try) -> str:
    """An answer with its prompt; a dull no is left out."""
    asked = ask_of(state)
    return "" if one.words == "no" or asked is None else f"{asked.name}: {one.words}"
