"""Days of an invented athlete played through the real session in memory, one after the other.

Law: the session decides all of it; only what is typed is made up, by a course. The past that a day
starts from is summed up as the diary would. It reads no clock and writes nothing.
"""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING, Final, NamedTuple, TypeVar

from coach.drivers.replay_names import part_name, usual_answer
from coach.drivers.words_shown import record_words
from coach.model.decisions import Refusal
from coach.model.flags import Section
from coach.model.heard import Kind
from coach.model.history import History
from coach.model.quantities import Dose, Load
from coach.model.turns import Offer, TimerEnded, Typed
from coach.rules.throwing import table_of
from coach.session import throwing, throws_shown
from coach.session.brief import brief_for
from coach.session.daybook import day_record, hold_of, keep, new_book
from coach.session.engine import ask_of, listen, question_heard, start, take
from coach.texts.scenarios import WEEKDAYS

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from coach.model.heard import Heard, Question
    from coach.model.history import DayRecord, Hold
    from coach.model.program import Bound
    from coach.model.scenario import Course, Stretch, Typing
    from coach.model.turns import Ask
    from coach.session.state import State

ANSWER_S: Final = 6  # seconds that an invented answer takes; set here
MOST_STEPS: Final = 2000  # answers of a day after which the course is going round in circles
RECORDS_READ: Final = 60  # what a start may read of the past, as in the diary
_ONE_TO_FIVE: Final = frozenset(Section) - {Section.WEEKLY}
_Name = TypeVar("_Name", bound=str)
_ON_OFFER: Final = Offer("", "", Dose(0, 0, 0, 0, Load("none"), 0))


class NothingTyped(Exception):
    """The course has nothing for a prompt."""

    def __init__(self, prompt: str, day: str) -> None:
        super().__init__(f'The course types nothing at the prompt "{prompt}" ({day}).')


class Played(NamedTuple):
    """One day as it was played: its record, and the stop it ended in, if any."""

    record: DayRecord
    hold: Hold | None


# ---------------------------------------------------------------- the past


def past(records: tuple[DayRecord, ...], hold: Hold | None = None, lifted_at: str = "") -> History:
    """The history that the diary would hand to the next start; `records` are newest first.

    `lifted_at` is the instant at which the newest stop was lifted ('' for never): it counts until
    sections 1 to 5 were asked alone after it.
    """
    read = records[:RECORDS_READ]
    since = [r for r in read if r.opened_at > lifted_at]
    lifted = bool(lifted_at) and not any(_ONE_TO_FIVE.issubset(r.alone) for r in since)
    return History(
        records=read,
        hold=hold,
        lifted=lifted,
        asked_alone=tuple(_newest((s, r.day) for r in read for s in r.alone).items()),
        at_hand=next((r.at_hand for r in read if r.at_hand is not None), None),
        last_at=read[0].opened_at if read else "",
        own_asked=tuple(_newest((fact, r.day) for r in read for fact in r.own_asked).items()),
    )


def _newest(pairs: Iterable[tuple[_Name, str]]) -> dict[_Name, str]:
    found: dict[_Name, str] = {}
    for name, day in pairs:
        found.setdefault(name, day)
    return found


# ---------------------------------------------------------------- one day


class Ears:
    """What the session hears, kept for the next time the same words are typed in the same place.

    A course types the same all weeks, and hearing is most of a forecast's time. The key is all that
    `listen` reads; one program's phrases only, so one forecast has its own.
    """

    def __init__(self) -> None:
        self._heard: dict[tuple[object, ...], Heard] = {}

    def __call__(self, state: State, event: Typed) -> Heard:
        """As `engine.listen`."""
        work = state.work
        counted = work and state.brief.stations[work.place].exercise.counted_in
        asked = question_heard(state, event)
        place = (asked, state.line, state.aside, state.missing, counted)
        key = (*place, event.text, event.fact)
        if key not in self._heard:
            self._heard[key] = listen(state, event)
        return self._heard[key]


def play_day(
    bound: Bound,
    history: History,
    opened_at: datetime,
    athlete: Callable[[State, Ask], Typed],
    ears: Ears,
) -> Played:
    """One day from its start to its end; `athlete` types at each prompt, timers run out."""
    brief = brief_for(bound, history, opened_at)
    state, book = start(brief), new_book(brief)
    at_s = 0
    for _step in range(MOST_STEPS):
        if state.end:
            break
        ask = ask_of(state)
        at_s += ANSWER_S if ask is not None else rest_s(state)
        event = TimerEnded(at_s) if ask is None else athlete(state, ask)._replace(at_s=at_s)
        heard = ears(state, event) if isinstance(event, Typed) else listen(state, event)
        after = take(state, event, heard)
        if isinstance(after, Refusal):
            break
        book = keep(book, state, event, heard, after)
        state = after
    ended = record_words(state.end or "partial", state)
    hold = hold_of(state, book, opened_at.isoformat())
    return Played(day_record(book, state, ended), hold)


def rest_s(state: State) -> int:
    """How long the present timer runs."""
    work = state.work
    if work is None:
        return 0
    return work.dose.hold_s if work.phase == "hold" else work.dose.rest_s


# ---------------------------------------------------------------- the course


class CourseAthlete:
    """Types what a course says for one day; raises `NothingTyped` where it says nothing."""

    def __init__(self, usual: tuple[Typing, ...], day: date) -> None:
        self.usual, self.day = usual, day

    def __call__(self, state: State, ask: Ask) -> Typed:
        """What is typed at the present prompt; a line's questions are answered one by one."""
        if ask.question.kind is Kind.LINE:
            first = ask.question.parts[0]
            return Typed(self._said(part_name(ask, first), first, state), fact=first.fact)
        return Typed(self._said(ask.name, ask.question, state))

    def _said(self, name: str, question: Question, state: State) -> str:
        offer = None if state.work is None else _ON_OFFER._replace(dose=state.work.dose)
        typed = usual_answer(name, question, self.usual, offer, count_shown(state))
        if typed is None:
            raise NothingTyped(name, self.day.isoformat())
        return typed


def count_shown(state: State) -> int:
    """How many throws of today's step were shown so far; soreness after throw 15 ends them there."""
    table = table_of(state.brief.plan)
    if table is None or state.thrown is None or not state.thrown[0]:
        return 0
    first, rest = throws_shown.split_at_15(table, state.thrown[0])
    stopped = bool(state.sore & throwing.BITS["sore after throw 15"])
    return sum(part.throws for part in (first if stopped else (*first, *rest)))


def of_week(course: Course, week: int) -> tuple[Stretch, ...]:
    """The stretches of a course that hold in a week (from 1), in their order."""
    return tuple(one for one in course.stretches if one.first <= week <= one.last)


def trains_on(course: Course, week: int, weekday: str) -> bool:
    """Whether the athlete of a course trains on a weekday of a week."""
    days = course.trains
    for stretch in of_week(course, week):
        days = days if stretch.trains is None else stretch.trains
    return weekday in days


def typed_on(course: Course, week: int, weekday: str) -> tuple[Typing, ...]:
    """What the course types on a day; what stands later in the file wins."""
    held = [s for s in of_week(course, week) if not s.on or weekday in s.on]
    return (*course.usual, *(typing for stretch in held for typing in stretch.usual))


def days_of(bound: Bound, course: Course, weeks: int) -> list[Played]:
    """Every session of the first `weeks` weeks of a plan, as the course types it, oldest first.

    It begins on the plan's first day and ends at its review date or at the first stop. Raises
    `NothingTyped`.
    """
    first = date.fromisoformat(bound.plan.starts)
    played: list[Played] = []
    ears = Ears()
    for number in range(weeks * 7):
        day = first + timedelta(days=number)
        week, weekday = number // 7 + 1, WEEKDAYS[day.weekday()]
        if day.isoformat() > bound.plan.review_by:
            break
        if not trains_on(course, week, weekday):
            continue
        records = tuple(one.record for one in reversed(played))
        athlete = CourseAthlete(typed_on(course, week, weekday), day)
        at = datetime.combine(day, time(18, 30), UTC)
        played.append(play_day(bound, past(records), at, athlete, ears))
        if played[-1].hold is not None:
            break
    return played
