"""The day's record, folded from the same events as the state: values typed, sets, notes, picks.

Law: the state decides, the book only keeps. It holds what the state must not: the numbers and
words themselves, so that a turn can show them and the diary and the visit can tell them.
"""

from __future__ import annotations

from datetime import timedelta
from typing import Final, NamedTuple

from coach.model.decisions import Decision
from coach.model.flags import Section
from coach.model.heard import Heard, Value
from coach.model.history import DayRecord, Done, Hold, Outing
from coach.model.ladders import Drove, Ladder, ThrowDay, ThrowState
from coach.model.quantities import Load
from coach.model.throws import counted
from coach.model.turns import Event, Resumed, Typed
from coach.rules.throwing import table_of
from coach.session.brief import Brief
from coach.session.checking_in import THROWING_FACTS, THROWN_AS
from coach.session.exercise import working_dose
from coach.session.ladders import ALL, throwing_words
from coach.session.pitching import outing_from
from coach.session.showing import dose_words
from coach.session.state import State
from coach.session.table import Stage
from coach.session.throwing import nothing_goes_up
from coach.session.today import MOVED, held_today

# Decisions of a day, beside a stop, on which nothing goes up.
TOO_SORE: Final = frozenset({"pain.to_start", "pain.next_morning"})


class Book(NamedTuple):
    """What was typed and done so far; `answers` pairs a fact (or `typed`) with its newest value."""

    brief: Brief
    answers: tuple[tuple[str, Value], ...] = ()
    kept: tuple[tuple[str, Value], ...] = ()
    sets: tuple[tuple[str, int], ...] = ()
    results: tuple[tuple[str, str, int], ...] = ()
    notes: tuple[str, ...] = ()
    alone: tuple[Section, ...] = ()
    picked: tuple[tuple[str, str], ...] = ()
    own_asked: tuple[str, ...] = ()
    gone: tuple[str, ...] | None = None
    worst_in_set: float | None = None
    log: tuple[tuple[str, str, Value], ...] = ()  # exercise, fact, value, set by set
    doses: tuple[tuple[str, str, int], ...] = ()  # exercise, dose in words, sets, as first shown
    decisions: tuple[tuple[str, str, str], ...] = ()
    drove: tuple[tuple[str, Drove], ...] = ()
    ladders: tuple[tuple[str, Ladder], ...] | None = None  # as today's list used them
    thrown: tuple[int, str, int, ThrowState] | None = None
    thrown_at_s: int = 0
    pitched: tuple[Outing, ...] = ()
    breaks_s: int = 0  # events count the session's own seconds; breaks come on top

    def answer(self, fact: str) -> Value | None:
        """The newest value of a fact, or None."""
        return dict(self.answers).get(fact)


def new_book(brief: Brief) -> Book:
    """An empty book for the day."""
    return with_work_done(Book(brief))


def keep(book: Book, before: State, event: Event, heard: Heard, after: State) -> Book:
    """The book after one event."""
    sets = book.sets
    if isinstance(event, Typed):
        book = with_sets_said(with_answers(book, event, heard), before, heard)
        if before.missing and not before.aside:
            book = own_questions(book, before)
    if isinstance(event, Resumed):
        book = book._replace(breaks_s=book.breaks_s + event.gap_s)
    at_s = event.at_s + book.breaks_s
    for happening in after.happened:
        book = with_happening(book, happening.kind, happening.what, at_s)
        if happening.decision is not None:
            book = with_decision(book, happening.decision)
    if after.stage in {Stage.TODAY, Stage.WARM_UP, Stage.EXERCISE}:
        book = book._replace(ladders=ladders_used(after) if after.exercises_today else ())
    elif book.ladders and takes_steps_back(before, after):
        book = book._replace(ladders=ladders_held(after))
    if after.thrown is not None:
        thrown = book.thrown if after.thrown == before.thrown else after.thrown
        book = book._replace(thrown=thrown, thrown_at_s=at_s)
    if book.thrown is not None and takes_steps_back(before, after):
        book = book._replace(thrown=nothing_goes_up(book.thrown))
    book = with_dose_shown(book, after)
    return book if book.sets == sets and book.thrown is None else with_work_done(book)


def with_sets_said(book: Book, before: State, heard: Heard) -> Book:
    """Reps, pain and feel by exercise, in the order they were said."""
    if before.work is None or before.aside:
        return book
    name = before.brief.stations[before.work.place].exercise.name
    said = tuple((name, fact, value) for fact, value in heard.values if fact.endswith("in set"))
    return book._replace(log=(*book.log, *said))


def with_dose_shown(book: Book, after: State) -> Book:
    """The dose of an exercise as it was first shown."""
    work = after.work
    if work is None or work.phase not in {"set", "ready"}:
        return book
    name = after.brief.stations[work.place].exercise.name
    if any(shown == name for shown, _words, _sets in book.doses):
        return book
    words = dose_words(working_dose(work))
    return book._replace(doses=(*book.doses, (name, words, work.dose.sets)))


def with_decision(book: Book, decision: Decision) -> Book:
    """A decision with the typed numbers put in, as it was told."""
    why = decision.why
    for fact, value in book.answers:
        shown = f"{value:g}" if isinstance(value, int | float) else str(value)
        why = why.replace(f"{{{fact}}}", shown)
    entry = (decision.rule, decision.outcome, why)
    return book if entry in book.decisions else book._replace(decisions=(*book.decisions, entry))


def with_answers(book: Book, event: Typed, heard: Heard) -> Book:
    """Values by fact; a sign's or own words kept as typed."""
    answers = dict(book.answers)
    for fact, value in heard.values:
        answers[fact] = value
        if fact == "pain in set" and not isinstance(value, str | tuple):
            worst = value if book.worst_in_set is None else max(book.worst_in_set, value)
            book = book._replace(worst_in_set=worst)
    answers.update(throwing_in_words(heard))
    if heard.group is not None:
        answers["typed"] = event.text.strip()
    kept = (*book.kept, *heard.values)
    return book._replace(answers=tuple(answers.items()), kept=kept)


def throwing_in_words(heard: Heard) -> dict[str, Value]:
    """What was heard of throwing as it is read back: the kind, with the count where one was said."""
    count = dict(heard.also).get("count")
    words: dict[str, Value] = {}
    for fact, value in heard.values:
        if fact in THROWING_FACTS:
            kind = str(THROWN_AS.get(str(value), value))
            past = fact == "throwing yesterday" and isinstance(count, int | float) and count
            words[f"{fact} in words"] = f"{kind}, {count:g} throws" if past else kind
    return words


def own_questions(book: Book, before: State) -> Book:
    """The clinician's own questions that were asked today."""
    own = {
        step.fact
        for items in before.brief.items.values()
        for step in items
        if step.kind == "ask also"
    }
    asked = tuple(fact for fact in before.missing if fact in own and fact not in book.own_asked)
    return book._replace(own_asked=(*book.own_asked, *asked))


def with_happening(book: Book, kind: str, what: str, at_s: int) -> Book:
    """One thing that the step brought about."""
    if kind == "set":
        sets = dict(book.sets)
        sets[what] = sets.get(what, 0) + 1
        return book._replace(sets=tuple(sets.items()))
    if kind.startswith("exercise "):
        return book._replace(results=(*book.results, (what, kind.removeprefix("exercise "), at_s)))
    if kind == "note" and what not in book.notes:
        return book._replace(notes=(*book.notes, what))
    if kind == "alone":
        return book._replace(alone=(*book.alone, Section(what)))
    if kind == "pitched":
        said = number(book.answer(what.split("|", 1)[0]))
        return book._replace(pitched=with_outing(book.pitched, outing_from(what, said)))
    if kind == "picked":
        name, version = what.split("|", 1)
        return book._replace(picked=(*book.picked, (name, version)))
    if kind == "drove":
        name, row, load, amount, unit = what.split("|")
        drove = Drove(int(row), Load(load, float(amount), unit))
        return book._replace(drove=(*book.drove, (name, drove)))
    if kind == "not here":
        gone = () if what == "nothing" else tuple(what.split(", "))
        return book._replace(gone=gone)
    return book


def with_outing(known: tuple[Outing, ...], new: Outing) -> tuple[Outing, ...]:
    """Outings by day; told twice, the one that asks for more days off stays."""
    same = [one for one in known if one.day == new.day]
    if any(one.days_off > new.days_off for one in same):
        return known
    return tuple(sorted((*(one for one in known if one.day != new.day), new)))


def with_work_done(book: Book) -> Book:
    """The words for `{work done}`: exercises and sets, and throws by their unit."""
    count = len([name for name, sets in book.sets if sets])
    sets = sum(sets for _name, sets in book.sets)
    words = f"{count} {'exercise' if count == 1 else 'exercises'}, "
    words += f"{sets} {'set' if sets == 1 else 'sets'}"
    if not sets:
        words = "No exercise today"
    thrown = throw_day(book)
    if thrown is not None and thrown.throws:
        words += f", {thrown.throws} {counted(thrown.throws, thrown.unit)}"
    answers = dict(book.answers)
    answers["work done"] = words
    return book._replace(answers=tuple(answers.items()))


def day_record(book: Book, state: State, ended: str) -> DayRecord:
    """The day as the diary keeps it. `ended` as in `DayRecord`."""
    brief = book.brief
    answers = dict(book.answers)
    return DayRecord(
        day=brief.today.isoformat(),
        opened_at=brief.opened_at.isoformat(),
        ended=ended,
        plan_version=brief.plan.version,
        waking_pain=number(answers.get("waking pain")),
        pain_now=number(answers.get("pain now")),
        worst_in_set=book.worst_in_set,
        sleep_h=number(answers.get("sleep last night")),
        threw_yesterday=thrown_kind(answers.get("throwing yesterday")),
        throwing_today=thrown_kind(answers.get("throwing today")),
        morning_up=state.morning_up,
        done=exercises_done(book),
        alone=book.alone,
        effort=number(answers.get("effort")),
        minutes=number(answers.get("minutes")),
        notes=(*book.notes, *own_words(answers)),
        picked=book.picked,
        fell=state.stop[2] == "trauma_fall",
        own_asked=book.own_asked,
        at_hand=None if book.gone is None else here_today(book),
        pain_after=number(answers.get("pain after")),
        ladders=ladders_used(state) if book.ladders is None else book.ladders,
        threw=throw_day(book),
        pitched=book.pitched,
        decisions=(*book.decisions, *moves_unsaid(book, state)),
    )


def exercises_done(book: Book) -> tuple[Done, ...]:
    """Each exercise with its sets and the instant it ended (the last set's, when cut off)."""
    brief = book.brief
    ends = {name: (how, at_s) for name, how, at_s in book.results}
    loads = {s.exercise.name: s.exercise.load != "none" for s in brief.stations}
    shown = {name: (words, sets) for name, words, sets in book.doses}
    newest = max((at_s for _n, _h, at_s in book.results), default=0)
    done = []
    for name, sets in book.sets:
        how, at_s = ends.get(name, ("cut off", newest))
        ended = (brief.opened_at + timedelta(seconds=at_s)).isoformat()
        said = [(fact, value) for exercise, fact, value in book.log if exercise == name]
        words, planned = shown.get(name, ("", 0))
        done.append(
            Done(
                name,
                sets,
                loads.get(name, True),
                ended,
                how,
                reps=numbers(said, "reps in set", "holds in set"),
                pains=numbers(said, "pain in set"),
                dose=words,
                planned_sets=planned,
                felt=tuple(str(v) for fact, v in said if fact == "felt in set"),
                drove=dict(book.drove).get(name),
            )
        )
    return tuple(done)


def numbers(said: list[tuple[str, Value]], *facts: str) -> tuple[float, ...]:
    """The numbers said of some facts, in order."""
    return tuple(v for fact, v in said if fact in facts and isinstance(v, int | float))


def moves_unsaid(book: Book, state: State) -> tuple[tuple[str, str, str], ...]:
    """Why ladders stand elsewhere than last time, where today's list did not hold them or tell it.

    At the end of a day it is no longer known whether there was a list; the ladders that were used
    say which of the two reckonings it was.
    """
    used = dict(ladders_used(state) if book.ladders is None else book.ladders)
    moved = [
        one.decision
        for held in (held_today(state), (ALL,))
        for one in state.brief.standings(morning_up=state.morning_up, held=held).values()
        if one.decision.outcome in MOVED and used.get(one.exercise) == one.ladder
    ]
    entries = dict.fromkeys((d.rule, d.outcome, d.why) for d in moved)
    return tuple(entry for entry in entries if entry not in book.decisions)


def ladders_used(state: State) -> tuple[tuple[str, Ladder], ...]:
    """Every exercise's ladder as today's list uses it; with no list, nothing went up."""
    if not state.exercises_today:
        return ladders_held(state)
    found = state.brief.standings(morning_up=state.morning_up, held=held_today(state))
    return tuple((one.exercise, one.ladder) for one in found.values())


def takes_steps_back(before: State, after: State) -> bool:
    """Whether an event after the exercises makes it a day on which nothing may have gone up.

    A stop, or an answer put right: a sore morning, or too much pain for loaded work. The sets are
    done by then; what is remembered of the ladders is as if it had been said in time.
    """
    new = {decision.rule for decision in after.reasons if decision not in before.reasons}
    return bool(new & TOO_SORE) or (after.end == "stopped" and not before.end)


def ladders_held(state: State) -> tuple[tuple[str, Ladder], ...]:
    """Every exercise's ladder with nothing gone up today."""
    found = state.brief.standings(morning_up=state.morning_up, held=(ALL,))
    return tuple((one.exercise, one.ladder) for one in found.values())


def throw_day(book: Book) -> ThrowDay | None:
    """The day's throwing as recorded; None where no throw was shown."""
    if book.thrown is None:
        return None
    step, row, rest_days, after = book.thrown
    said = number(book.answer("throws done"))
    ended = (book.brief.opened_at + timedelta(seconds=book.thrown_at_s)).isoformat()
    table = table_of(book.brief.plan)
    unit = table.unit if table else "throws"
    line = throwing_words(book.brief, after.planned)
    return ThrowDay(step, int(said or 0), unit, row, rest_days, after, ended, line)


def here_today(book: Book) -> tuple[str, ...]:
    """What was at hand, where it was asked."""
    gone = book.gone or ()
    return tuple(thing for thing in book.brief.plan.at_home if thing not in gone)


def own_words(answers: dict[str, Value]) -> tuple[str, ...]:
    """The athlete's own words, in quotes, where there are any."""
    words = answers.get("own words")
    if not isinstance(words, str) or words.strip().lower() in {
        "",
        "none",
        "no",
        "nothing",
    }:
        return ()
    return (f'"{words.strip()}"',)


def number(value: Value | None) -> float | None:
    """A number, or None."""
    return value if isinstance(value, int | float) else None


def thrown_kind(value: Value | None) -> str | None:
    """The kind of throwing by the scripts' names, or None."""
    return str(THROWN_AS.get(str(value), value)) if isinstance(value, str) else None


def text(value: Value | None) -> str | None:
    """A text, or None."""
    return value if isinstance(value, str) else None


def hold_of(state: State, book: Book, at: str) -> Hold | None:
    """The hold that a stop places, with what was typed; None where there was no stop.

    `number` 0: the diary gives the number.
    """
    code, tier, group = state.stop
    if not code or state.brief.history.hold is not None:
        return None
    typed = book.answer("typed")
    said = typed if isinstance(typed, str) and state.quoted else ""
    day = state.brief.today.isoformat()
    return Hold(0, code, tier, group, said, day, at, state.brief.plan.version)
