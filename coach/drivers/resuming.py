"""How a sitting opens: a session begun, or one that was cut off taken up where it stood.

Law: a session is taken up by folding its recorded answers again, under the very plan and rules it
began with, on its own day and within four hours; else it is closed as it was and a new one begins.
What was done in it stays done.
"""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.drivers import recorded
from coach.drivers.rules_named import UNKNOWN, rules_digest
from coach.drivers.words_shown import lines_for, record_words, words_of
from coach.model.decisions import Basis, Decision, Refusal
from coach.model.history import DayRecord, Done, History
from coach.model.turns import Line, Turn
from coach.session import engine
from coach.session.brief import Brief, brief_for
from coach.session.daybook import Book, day_record, hold_of, keep, new_book
from coach.session.state import State

if TYPE_CHECKING:
    from coach.drivers.port import Clock, Diary, Port
    from coach.journal import Unfinished
    from coach.model.program import Bound

TOO_LONG_S: Final = 4 * 60 * 60  # checkin.gap; set here, to be signed by a clinician
ASK_AFTER_S: Final = 5 * 60  # checkin.gap; set here, to be signed by a clinician
CLOCK_SLIP_S: Final = 5 * 60  # a clock set back by less is a corrected clock; set here
_OURS: Final = "set here, to be signed by a clinician"


class Opened(NamedTuple):
    """Where a sitting starts. `gap_s` is the cut-off still to be told to the session, or 0."""

    session: int
    state: State
    book: Book
    at_s: int = 0
    gap_s: int = 0
    resumed: bool = False


class Folded(NamedTuple):
    """A session folded again from its records; `whole` is false where a record did not fit."""

    state: State
    book: Book
    at_s: int
    whole: bool


def opened(bound: Bound, port: Port, journal: Diary, clock: Clock) -> Opened:
    """The session of now. Raises `Trouble` when the diary cannot be read or written."""
    cut = journal.unfinished()
    if cut is not None:
        taken_up = _taken_up(cut, bound, port, journal, clock)
        if taken_up is not None:
            return taken_up
    return _begun(bound, journal, clock)


def _begun(bound: Bound, journal: Diary, clock: Clock) -> Opened:
    brief = brief_for(bound, journal.history(), clock.now())
    state = engine.start(brief)
    book = new_book(brief)
    turn = engine.turn(state)
    shown = words_of(turn, lines_for(turn, book, ""))
    at = brief.opened_at.isoformat()
    session = journal.begin(header(bound), at, shown)
    if turn.end:
        record = day_record(book, state, record_words(turn.end, state))
        hold = hold_of(state, book, at)
        why = {"why": turn.end}
        journal.append(session, recorded.CLOSED, why, shown, at, hold=hold, close=record)
    return Opened(session, state, book)


def header(bound: Bound) -> dict[str, str]:
    """What a session's first record names: program, plan, and the rules by hash."""
    return {
        "program": bound.program.name,
        "plan": bound.plan.name,
        "bound": bound.digest,
        "rules": rules_digest(),
    }


# ---------------------------------------------------------------- taken up again


def _taken_up(
    cut: Unfinished, bound: Bound, port: Port, journal: Diary, clock: Clock
) -> Opened | None:
    """The cut-off session, or None after it was closed as it was."""
    now = clock.now()
    gap_s = int((now - datetime.fromisoformat(cut.last_at)).total_seconds())
    folded = fold(cut, brief_for(bound, _without_hold(journal), _instant(cut.opened_at)))
    why = _why_over(cut, bound, now, gap_s, folded, held=journal.open_hold() is not None)
    if why is None:
        gap_s = max(gap_s, 0)
        say_back(port, cut, gap_s, folded.state)
        told_s = gap_s if gap_s >= ASK_AFTER_S else 0
        return Opened(cut.session, folded.state, folded.book, folded.at_s, told_s, resumed=True)
    record = _record_of(folded)
    at = max(now, _instant(cut.last_at)).isoformat()
    journal.append(cut.session, recorded.CLOSED, {"why": why.outcome}, (), at, close=record)
    if why.why:
        line = Line("say", why.why)
        port.present(Turn((line,), decisions=(why,)), (line,))
    return None


def _instant(text: str) -> datetime:
    return datetime.fromisoformat(text)


def _without_hold(journal: Diary) -> History:
    """The past without the stop placed since: it ends this session, it did not shape it."""
    return journal.history()._replace(hold=None)


def over_too_long() -> Decision:
    """checkin.gap: a break of over four hours or past midnight ends the session as it is."""
    why = "Your last session was cut off a while ago. It is kept as it was."
    return Decision("checkin.gap", "too long", why, None, Basis.OURS, _OURS)


def _why_over(
    cut: Unfinished, bound: Bound, now: datetime, gap_s: int, folded: Folded, *, held: bool
) -> Decision | None:
    """checkin.gap: why the cut-off session is not taken up again; None when it is.

    Over 4 hours, another calendar day, a clock set back, a stop placed since, another plan or other
    rules, or a record that does not fit. Source: set here, to be signed by a clinician.
    """

    def over(outcome: str, why: str = "") -> Decision:
        return Decision("checkin.gap", outcome, why, None, Basis.OURS, _OURS)

    if folded.state.end:
        return over("ended")
    if held:
        return over("plan closed")
    named = header(bound)
    if not folded.whole or UNKNOWN in named.values() or cut.header != named:
        return over("other plan or rules", "Your last session is kept as it was. A new one begins.")
    if gap_s > TOO_LONG_S or now.date() != _instant(cut.opened_at).date():
        return over_too_long()
    if gap_s < -CLOCK_SLIP_S:
        return over("clock back")
    return None


def fold(cut: Unfinished, brief: Brief) -> Folded:
    """The recorded events over a fresh start; stops at the first that does not fit."""
    state, book, at_s = engine.start(brief), new_book(brief), 0
    for kind, body, _at in cut.events:
        event = recorded.event_from(kind, body)
        if event is None:
            continue
        try:
            heard = engine.listen(state, event)
            after = engine.take(state, event, heard)
        except Exception:  # noqa: BLE001 - records of other rules may break anything
            return Folded(state, book, at_s, whole=False)
        if isinstance(after, Refusal):
            return Folded(state, book, at_s, whole=False)
        book = keep(book, state, event, heard, after)
        state, at_s = after, event.at_s
    return Folded(state, book, at_s, whole=True)


def _record_of(folded: Folded) -> DayRecord:
    """The day as far as it went; where records did not fit, every exercise counts as done."""
    record = day_record(folded.book, folded.state, "partial")
    if folded.whole:
        return record
    brief = folded.state.brief
    ended = (brief.opened_at + timedelta(seconds=folded.at_s)).isoformat()
    known = {done.exercise for done in record.done}
    more = tuple(
        Done(station.exercise.name, 1, station.exercise.load != "none", ended, "cut off")
        for station in brief.stations
        if station.exercise.name not in known
    )
    return record._replace(done=(*record.done, *more))


def say_back(port: Port, cut: Unfinished, gap_s: int, state: State) -> None:
    """One line on where the session was left."""
    paused = bool(cut.events) and cut.events[-1][0] == recorded.PAUSED
    how = "You paused" if paused else "The session was cut off"
    line = Line("say", f"{how} {span(gap_s)} ago. All you typed is saved.")
    if gap_s >= ASK_AFTER_S:
        line = line._replace(text=f"Hello {state.brief.plan.initials} {line.text}")
    port.present(Turn((line,)), (line,))


def span(seconds: int) -> str:
    """A length of time as it is said: `13 minutes`, `1 hour 5 minutes`."""
    minutes = seconds // 60
    if not minutes:
        return counted(seconds, "second")
    hours, minutes = divmod(minutes, 60)
    if not hours:
        return counted(minutes, "minute")
    return counted(hours, "hour") + (f" {counted(minutes, 'minute')}" if minutes else "")


def counted(number: int, noun: str) -> str:
    """A number with its noun."""
    return f"{number} {noun}" if number == 1 else f"{number} {noun}s"
