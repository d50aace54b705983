"""The one loop: a turn is shown, something is typed or a timer ends, it goes to disk, on it goes.

Law: journal first. An event and what it will show are one transaction, with the stop or the day's
record in it; only then is anything on screen. A hold that was begun is never timed twice, a rest is
never shortened. A fault of ours shows no exercise and ends the day.
"""

from __future__ import annotations

import contextlib
import os
import sys
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.drivers import exit_codes, recorded
from coach.drivers.port import EndOfInput
from coach.drivers.resuming import TOO_LONG_S, opened, over_too_long
from coach.drivers.typed_text import Admitted, admitted
from coach.drivers.words_shown import lines_for, record_words, words_of
from coach.hearing import hear
from coach.journal.trouble import Trouble
from coach.model.decisions import Refusal
from coach.model.heard import Action, Command, Heard, Kind, Question
from coach.model.history import Hold
from coach.model.turns import Ask, Event, Line, Resumed, Timer, TimerEnded, Turn, Typed
from coach.rules.red_flags import FLAGS, flag_heard
from coach.session import engine
from coach.session.daybook import Book, day_record, hold_of, keep
from coach.session.state import State
from coach.session.stopping import clinician_name, stop_lines

if TYPE_CHECKING:
    from coach.drivers.port import Clock, Diary, Port, Reply
    from coach.drivers.resuming import Opened
    from coach.model.history import DayRecord
    from coach.model.program import Bound


LONG_BREAK_S: Final = 60 * 60  # checkin.gap: over this the screen comes again
SAVED: Final = "All you typed is saved."
NOTHING_TIMED: Final = ("", 0, 0, 0)
NOTHING_HEARD: Final = Heard(Action.ACCEPT)
SIGNS: Final = frozenset({Action.ESCALATE, Action.CONFIRM})

_ENTER: Final = Ask("enter", "Press Enter to close:", Question("enter", Kind.OWN_WORDS))
_GO_ON: Final = Ask(
    "paused", "Type go to go on:", Question("paused", Kind.WORD, choices=("go",)), safety=True
)


class Step(NamedTuple):
    """One event, folded: where the session stands, and what it says now."""

    event: Event
    state: State
    book: Book
    turn: Turn
    lines: tuple[Line, ...]


class Unplayable(Exception):
    """A turn or an answer that the session itself cannot go on from: a fault of ours."""


class TooLong(Exception):
    """A break of over four hours or past midnight: this session is over, another may begin."""


def run(bound: Bound, port: Port, journal: Diary, clock: Clock) -> int:
    """Today's session, begun or taken up again, to its end; the exit code.

    Raises what a closed window or a signal raises; all that was typed is on disk by then.
    """
    try:
        while True:
            sitting = Sitting(opened(bound, port, journal, clock), port, journal, clock)
            try:
                return sitting.to_the_end()
            except TooLong:
                continue
    except EndOfInput:
        say(port, f"No more typing came. {SAVED}")
        return exit_codes.BY_CHOICE
    except Trouble as trouble:
        say(port, trouble.words)
        return trouble.code


def run_session(journal: Diary, bound: Bound, *, plain: bool, quick: bool) -> int:
    """Today's session in front of whatever is there: a terminal, or lines; the exit code.

    `plain` asks for lines; `quick` ends timers at once. A signal's exception passes through after
    the terminal was left as it was.
    """
    from coach.drivers.clocks import SystemClock

    try:
        if plain or not at_a_terminal():
            from coach.drivers.plain import PlainPort

            return run(bound, PlainPort.of_the_process(quick=quick), journal, SystemClock())
        from coach.drivers.terminal import TerminalPort

        with TerminalPort(quick=quick) as port:
            return run(bound, port, journal, SystemClock())
    except KeyboardInterrupt:
        sys.stdout.write(f"Stopped here. {SAVED}\n")
        return exit_codes.INTERRUPTED


def at_a_terminal() -> bool:
    """Whether prompts can move here: both ends a terminal, and not a simple one."""
    if not (sys.stdin and sys.stdin.isatty() and sys.stdout.isatty()):
        return False
    return sys.platform == "win32" or os.environ.get("TERM", "") not in {"", "dumb"}


def say(port: Port, *texts: str) -> None:
    """Lines of the driver's own."""
    lines = tuple(Line("say", text) for text in texts)
    port.present(Turn(lines), lines)


class Sitting:
    """One session in front of one port."""

    def __init__(self, opened: Opened, port: Port, journal: Diary, clock: Clock) -> None:
        self.port, self.journal, self.clock = port, journal, clock
        self.session = opened.session
        self.state, self.book = opened.state, opened.book
        self.timed = timed_now(opened.state) if opened.resumed else NOTHING_TIMED
        self.timed_from = clock.steady()
        self.counted_s = float(opened.at_s)
        self.counted_from = clock.steady()
        self.asked_at = clock.now()
        self.pending: tuple[str, dict[str, object]] = (recorded.FAULT, {})
        self.first_gap_s = opened.gap_s

    # ------------------------------------------------------------ the loop

    def to_the_end(self) -> int:
        """Turn by turn until the session ends; the exit code."""
        try:
            return self._turns()
        except (Trouble, EndOfInput, TooLong, OSError):
            raise
        except Exception as fault:  # noqa: BLE001 - whatever broke, the athlete gets a safe end
            return self._our_fault(fault)

    def _turns(self) -> int:
        turn = engine.turn(self.state)
        if self.first_gap_s:
            turn = self._break_over(self.first_gap_s)
        elif not turn.end:
            self.port.present(turn, lines_for(turn, self.book, ""))
        while not turn.end:
            turn = self._next(turn)
        return self._ended(turn)

    def _next(self, turn: Turn) -> Turn:
        """The turn after this one."""
        self.asked_at = self.clock.now()
        if turn.ask is not None:
            reply: Reply | None = self.port.ask(turn.ask)
        elif turn.timer is not None:
            reply = self._time(turn.timer)
        else:
            raise Unplayable("a turn that neither asks, times nor ends")
        if reply is None:
            return self._take(TimerEnded(self._at_s()))
        return self._typed(reply, turn)

    def _time(self, timer: Timer) -> Reply | None:
        """Run a timer; one that was begun before goes on, a hold begun before is over."""
        now = timed_now(self.state)
        if now == self.timed and timer.kind == "hold":
            return None
        if now != self.timed:
            self.timed, self.timed_from = now, self.clock.steady()
        while True:
            gone_s = self.clock.steady() - self.timed_from
            reply = self.port.time(timer, timer_name(self.state), gone_s)
            if reply is None or reply.text.strip():
                return reply  # Enter alone says nothing, so the timer goes on

    # ------------------------------------------------------------ one answer

    def _typed(self, reply: Reply, turn: Turn) -> Turn:
        """What was typed, as an event; or not, and the same question again."""
        safety = turn.ask is not None and turn.ask.safety
        answer = admitted(reply.text, safety=safety)
        event, heard = self._listened(answer, reply.fact)
        sign = heard.action in SIGNS
        away_s = self._away_s()
        if away_s > LONG_BREAK_S and not sign:
            say(self.port, "You were away for a while, so your last answer was not taken.")
            return self._break_over(away_s)
        if answer.refused and not sign:
            say(self.port, *answer.told)
            return self._again(turn)
        if heard.command is Command.PAUSE:
            return self._pause(event)
        return self._take(event, heard, answer.told)

    def _listened(self, answer: Admitted, fact: str) -> tuple[Typed, Heard]:
        """The answer as an event; all that was pasted where a warning sign stands in it."""
        if answer.whole != answer.text:
            event = Typed(answer.whole, self._at_s(), fact)
            heard = engine.listen(self.state, event)
            if heard.action in SIGNS:
                return event, heard
        event = Typed(answer.text, self._at_s(), fact)
        return event, engine.listen(self.state, event)

    def _again(self, turn: Turn) -> Turn:
        """The same question, its last line first."""
        lines = lines_for(turn, self.book, "")[-1:]
        self.port.present(turn._replace(lines=lines), lines)
        return turn

    def _take(self, event: Event, heard: Heard = NOTHING_HEARD, told: tuple[str, ...] = ()) -> Turn:
        """Fold one event, keep it, then show what follows."""
        self.pending = recorded.record_of(event)
        step = self._folded(event, heard, told)
        self._keep(step)
        self.state, self.book = step.state, step.book
        if not step.turn.end:
            self.port.present(step.turn, step.lines)
        return step.turn

    def _folded(self, event: Event, heard: Heard, told: tuple[str, ...]) -> Step:
        after = engine.take(self.state, event, heard)
        if isinstance(after, Refusal):
            raise Unplayable(after.rule)
        book = keep(self.book, self.state, event, heard, after)
        turn = engine.turn(after)
        typed = event.text.strip() if isinstance(event, Typed) else ""
        head = () if turn.alone else tuple(Line("say", text) for text in told)
        lines = (*head, *lines_for(turn, book, typed))
        return Step(event, after, book, turn, lines)

    def _keep(self, step: Step) -> None:
        """All of the step in one transaction; a stop that cannot be kept is shown all the same."""
        kind, body = recorded.record_of(step.event)
        at = self._instant()
        hold = hold_of(step.state, step.book, at)
        if hold is not None and not hold.said and isinstance(step.event, Typed):
            hold = hold._replace(said=step.event.text.strip())
        close = None
        if step.turn.end:
            close = day_record(step.book, step.state, record_words(step.turn.end, step.state))
        shown = words_of(step.turn, step.lines)
        try:
            self.journal.append(self.session, kind, body, shown, at, hold=hold, close=close)
        except Trouble:
            if step.turn.alone:
                self._unsaved_stop(step)
            raise

    def _unsaved_stop(self, step: Step) -> None:
        """A full disk takes no stop away: it is shown, says that it is not saved, and waits."""
        name = clinician_name(self.state.brief.plan.calls)
        kept = tuple(line for line in step.lines if line.text != SAVED)
        lines = (*kept, Line("stop", f"This stop could not be saved. Tell {name} of it."))
        self.port.present(step.turn._replace(lines=lines), lines)
        with contextlib.suppress(EndOfInput):
            self.port.ask(_ENTER)

    # ------------------------------------------------------------ a break

    def _pause(self, event: Typed) -> Turn:
        """Wait for `go`; a warning sign or `stop` typed meanwhile is taken at once."""
        lines = ("Paused.", SAVED)
        body = {"text": event.text, "at_s": event.at_s}
        self.pending = (recorded.PAUSED, body)
        self.journal.append(self.session, recorded.PAUSED, body, lines, self._instant())
        self.timed = timed_now(self.state)
        say(self.port, " ".join(lines))
        self.asked_at = self.clock.now()
        while True:
            reply = self.port.ask(_GO_ON)
            answer = admitted(reply.text, safety=True)
            heard = hear(_GO_ON.question, answer.whole, self.state.brief.lexicon)
            if heard.action in SIGNS or heard.command is Command.STOP:
                typed = Typed(answer.whole, event.at_s)
                return self._take(typed, engine.listen(self.state, typed))
            if heard.values and not answer.refused:
                return self._break_over(self._away_s())
            say(self.port, "You are on a break. Type stop to end for today.")

    def _break_over(self, gap_s: int) -> Turn:
        """On after a break; a hold that ran when it began is over, a very long break ends it all."""
        self._count_from_here(gap_s)
        if gap_s > TOO_LONG_S or self._other_day():
            raise self._closed_as_partial()
        if timed_now(self.state)[0] == "hold":
            self._hold_is_over()
        return self._take(Resumed(gap_s, self._at_s()))

    def _hold_is_over(self) -> None:
        """The hold that the break cut short counts as done; nothing is shown of it."""
        step = self._folded(TimerEnded(self._at_s()), NOTHING_HEARD, ())
        self._keep(step._replace(lines=(), turn=step.turn._replace(ask=None)))
        self.state, self.book = step.state, step.book

    def _closed_as_partial(self) -> TooLong:
        """The session closed as it is; the day may go on with a new one."""
        record = day_record(self.book, self.state, "partial")
        why = over_too_long()
        body, shown = {"why": why.outcome}, (why.why,)
        at = self._instant()
        self.journal.append(self.session, recorded.CLOSED, body, shown, at, close=record)
        line = Line("say", why.why)
        self.port.present(Turn((line,), decisions=(why,)), (line,))
        return TooLong()

    def _away_s(self) -> int:
        """Seconds since the question was shown, by the wall clock; never negative."""
        return max(0, int((self.clock.now() - self.asked_at).total_seconds()))

    def _other_day(self) -> bool:
        return self.clock.now().date() != self.state.brief.opened_at.date()

    # ------------------------------------------------------------ time

    def _at_s(self) -> int:
        """Seconds of the session so far, breaks left out."""
        return int(self.counted_s + self.clock.steady() - self.counted_from)

    def _count_from_here(self, gap_s: int) -> None:
        """Leave the break just over out of the count."""
        self.counted_s = max(self.counted_s, self._at_s() - gap_s)
        self.counted_from = self.clock.steady()

    def _instant(self) -> str:
        return self.clock.now().isoformat()

    # ------------------------------------------------------------ the end

    def _ended(self, turn: Turn) -> int:
        """Show the last turn; a stop waits for Enter. The exit code."""
        self.port.present(turn, lines_for(turn, self.book, self._last_typed()))
        if turn.alone:
            self._wait_for_enter()
        return exit_codes.for_end(turn.end)

    def _last_typed(self) -> str:
        kind, body = self.pending
        return str(body.get("text", "")).strip() if kind == recorded.TYPED else ""

    def _wait_for_enter(self) -> None:
        """Until Enter, so that no closing window takes the number away; a new sign is shown too."""
        while True:
            try:
                typed = admitted(self.port.ask(_ENTER).text, safety=True).whole
            except EndOfInput:
                return
            heard = hear(_ENTER.question, typed, self.state.brief.lexicon)
            if heard.group is None or heard.action is Action.ACCEPT:
                return
            person = self.state.brief.person
            self._one_more_stop(typed, flag_heard(heard.group, heard.flag, person))

    def _one_more_stop(self, typed: str, code: str) -> None:
        """A further sign after a stop: a stop of its own, on disk, then on screen."""
        brief = self.state.brief
        flag = FLAGS[code]
        lines = stop_lines(brief, code, flag.tier.value, typed)
        at = self._instant()
        hold = Hold(0, code, flag.tier.value, "", typed, at[:10], at, brief.plan.version)
        body = {"text": typed}
        shown = tuple(line.text for line in lines)
        self.journal.append(self.session, "typed after a stop", body, shown, at, hold=hold)
        self.port.present(Turn(lines, end="stopped", alone=True), lines)

    def _our_fault(self, fault: Exception) -> int:
        """No exercise, diary kept, day over, and it says whose fault it is."""
        calls = self.state.brief.plan.calls
        lines = (
            Line("say", "Stop for today: no more exercise. Coach made a mistake."),
            Line("say", "The fault is ours, not yours. All you typed so far is saved."),
            Line("say", f"Call {clinician_name(calls)} if you are not sure: "
                 f"{calls.clinician.number}."),
        )  # fmt: skip
        kind, body = self.pending
        body = {**body, "kind": kind, "where": fault_place(fault)}
        shown = tuple(line.text for line in lines)
        at, record = self._instant(), self._record_if_it_can_be_made()
        with contextlib.suppress(Trouble):  # what was saved before stays saved
            self.journal.append(self.session, recorded.FAULT, body, shown, at, close=record)
        self.port.present(Turn(lines, end="partial", alone=True), lines)
        return exit_codes.OUR_FAULT

    def _record_if_it_can_be_made(self) -> DayRecord | None:
        """The day so far; None when that is what is broken: the next start closes it then."""
        try:
            return day_record(self.book, self.state, "partial")
        except Exception:  # noqa: BLE001 - a second fault must not hide the first
            return None


def fault_place(fault: Exception) -> str:
    """Kind of fault and where in our code; never its text, which may hold answers."""
    trace, place = fault.__traceback__, ""
    while trace is not None:
        name = trace.tb_frame.f_globals.get("__name__", "")
        if name.split(".")[0] == "coach":
            place = f"{name} line {trace.tb_lineno}"
        trace = trace.tb_next
    return f"{type(fault).__name__} in {place}"


# ---------------------------------------------------------------- what runs


def timed_now(state: State) -> tuple[str, int, int, int]:
    """Which rest or hold the state stands in, so that none is begun twice."""
    work = state.work
    if work is None or work.phase not in {"rest", "hold"}:
        return NOTHING_TIMED
    return (work.phase, work.place, work.set_number, work.hold_number)


def timer_name(state: State) -> str:
    """A timer's name in scenarios: `rest after set 1 of hip-hinge reach`."""
    work = state.work
    if work is None:
        return ""
    exercise = state.brief.stations[work.place].exercise.name
    if work.phase == "rest":
        return f"rest after set {work.set_number} of {exercise}"
    return f"hold {work.hold_number} in set {work.set_number} of {exercise}"
