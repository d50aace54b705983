"""Scenarios played through the same loop as an athlete's session, each over a diary of its own.

Law: nothing is answered that neither the scenario nor its course types; a prompt with nothing typed
for it, and an answer that no prompt asked for, is a mismatch. A power cut just stops; the same diary
is opened again, on the next day or after the break that follows it.
"""

from __future__ import annotations

import contextlib
import sqlite3
import time
from datetime import UTC, datetime, timedelta
from itertools import zip_longest
from pathlib import Path
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.drivers import exit_codes
from coach.drivers.clearing import clear
from coach.drivers.drive import run
from coach.drivers.layout import wrapped
from coach.drivers.port import EndOfInput, Reply
from coach.drivers.replay_checks import Moment, failed
from coach.drivers.replay_names import part_name, usual_answer
from coach.drivers.timed_lines import whole_s
from coach.journal.chain import Chain
from coach.journal.diary import Journal
from coach.model.findings import Finding
from coach.model.heard import Kind
from coach.model.program import ClearanceWord, Place
from coach.model.scenario import Happening, Seen, Typing
from coach.rules.hold import word_digest
from coach.session.stopping import clinician_name
from coach.texts.doors import bound_from
from coach.texts.rendered import as_text
from coach.texts.scenarios import read_scenario

if TYPE_CHECKING:
    from collections.abc import Iterator

    from coach.model.heard import Question
    from coach.model.program import Bound
    from coach.model.scenario import Scenario, ScenarioDay
    from coach.model.turns import Ask, Line, Offer, Timer, Turn

ANSWER_S: Final = 5  # seconds that an answer takes in a replay; set here
_SALT: Final = "00112233445566778899aabbccddeeff"
_WORDS: Final = ("first replay word", "second replay word", "third replay word")
_WRONG: Final = "no such word"
_CLEARANCES: Final = ("clearance by word", "clearance in person", "wrong clearance word")
_HALF: Final = 40  # columns of one side of a mismatch


class Mismatch(NamedTuple):
    """Where a scenario and its session part: the day, the last prompt asked, both sides."""

    day: str
    prompt: str
    place: Place
    expected: str
    actual: str


class Result(NamedTuple):
    """One scenario played. `findings` are of a file that cannot be played."""

    file: str
    name: str
    seconds: float
    mismatches: tuple[Mismatch, ...] = ()
    findings: tuple[Finding, ...] = ()

    @property
    def passed(self) -> bool:
        """Whether all of it held."""
        return not self.mismatches and not self.findings


class Cut(BaseException):
    """The sitting ends here and now, as when the power goes."""


class ReplayClock:
    """A clock that only the replay moves."""

    def __init__(self, at: datetime) -> None:
        self.at = at
        self.passed = 0.0

    def now(self) -> datetime:
        """The scenario's instant."""
        return self.at + timedelta(seconds=self.passed)

    def steady(self) -> float:
        """Seconds of the sitting."""
        return self.passed


# ---------------------------------------------------------------- one day in front of the session


class DayPort:
    """Types what a day's talk and the course say; keeps what was shown."""

    def __init__(
        self,
        day: ScenarioDay,
        usual: tuple[Typing, ...],
        clock: ReplayClock,
        offer: Offer | None = None,
    ) -> None:
        self.day, self.usual, self.clock, self.offer = day, usual, clock, offer
        self.throws: dict[str, int] = {}  # by the prompt they were shown at
        self.moments: list[Moment] = []
        self.checks: list[tuple[Seen, int]] = [(check, 0) for check in day.all_day]
        self.mismatches: list[Mismatch] = []
        self.prompt = "the start"
        self.cut = False  # left in the middle, so that a break may follow
        self._at = 0
        self.skip_checks()

    # ------------------------------------------------------------ the port

    def present(self, turn: Turn, lines: tuple[Line, ...]) -> None:
        """Keep what is shown."""
        self.moments.append(Moment(turn, tuple(line.text for line in lines)))
        for offer in turn.offers:
            if offer.kind == "set":
                self.offer = offer
        if turn.throws and turn.ask is not None:
            self.throws[turn.ask.name] = sum(part.throws for part in turn.throws)

    def ask(self, ask: Ask) -> Reply:
        """What is typed at a prompt; at once after a break, else in the usual time."""
        self._befall()
        self.clock.passed += self.break_s() or ANSWER_S
        if ask.name == "enter":
            return Reply("")
        self.prompt = ask.name
        typed = self._typed_at(ask.name)
        if typed is not None:
            return Reply(typed)
        if ask.name == "paused":
            self.cut = True
            raise Cut
        if ask.question.kind is Kind.LINE:
            first = ask.question.parts[0]
            return Reply(self._answer(part_name(ask, first), first), first.fact)
        return Reply(self._answer(ask.name, ask.question))

    def time(self, timer: Timer, name: str, gone_s: float) -> Reply | None:
        """A timer ends by itself unless the talk types something into it."""
        self._befall()
        typed = self._typed_at(name)
        if typed is not None:
            self.clock.passed += 1
            return Reply(typed)
        self.clock.passed += max(0.0, whole_s(timer) - gone_s)
        return None

    # ------------------------------------------------------------ the talk

    def _answer(self, name: str, question: Question) -> str:
        self.prompt = name
        typed = self._typed_at(name)
        if typed is None:
            throws = sum(self.throws.values())
            typed = usual_answer(name, question, self.usual, self.offer, throws)
        if typed is None:
            waits = self.waiting()
            expected = f"then: {waits.prompt}" if waits else "nothing more is asked"
            self.miss(waits.place if waits else self.day.place, expected, f"asks {name}")
            raise Cut
        return typed

    def _typed_at(self, name: str) -> str | None:
        entry = self.waiting()
        if entry is None or entry.prompt != name or not self._is_next(entry):
            return None
        self._at += 1
        self.skip_checks()
        return entry.typed

    def _is_next(self, entry: Typing) -> bool:
        return self.day.talk[self._at] is entry

    def waiting(self) -> Typing | None:
        """The next answer of the talk that was not typed yet."""
        rest = self.day.talk[self._at :]
        return next((entry for entry in rest if isinstance(entry, Typing)), None)

    def skip_checks(self) -> None:
        """Checks at this place hold from the next turn on."""
        while self._at < len(self.day.talk):
            entry = self.day.talk[self._at]
            if not isinstance(entry, Seen):
                return
            self.checks.append((entry, len(self.moments)))
            self._at += 1

    def _next_is(self, what: str) -> bool:
        entry = self.day.talk[self._at] if self._at < len(self.day.talk) else None
        return isinstance(entry, Happening) and entry.what == what

    def happening(self) -> str:
        """What befalls the session at this place, taken off the talk; '' for nothing."""
        entry = self.day.talk[self._at] if self._at < len(self.day.talk) else None
        if not isinstance(entry, Happening):
            return ""
        self._at += 1
        self.skip_checks()
        return entry.what

    def _befall(self) -> None:
        if self._next_is("break"):
            return  # at a prompt only: a timer does not wait
        what = self.happening()
        self.cut = what in {"power cut", "end of input"}
        if what == "power cut":
            raise Cut
        if what == "end of input":
            raise EndOfInput

    def break_s(self) -> int:
        """For how long nothing is typed at this place, taken off the talk; 0 for no break."""
        found = 0
        while self._next_is("break"):
            entry = self.day.talk[self._at]
            found += entry.seconds if isinstance(entry, Happening) else 0
            self.happening()
        return found

    def goes_on(self) -> bool:
        """Whether the session that was left is opened again on this day: after a break."""
        away_s = self.break_s() if self.cut else 0
        self.cut = False
        self.clock.passed += away_s
        return away_s > 0

    # ------------------------------------------------------------ the judgement

    def miss(self, place: Place, expected: str, actual: str) -> None:
        """Note where the two part."""
        self.mismatches.append(Mismatch(self.day.day, self.prompt, place, expected, actual))

    def judge(self, notes: tuple[str, ...]) -> None:
        """Hold every check and every answer left over against what was seen."""
        moments = tuple(self.moments)
        for check, start in self.checks:
            actual = failed(check, moments[start:], notes)
            if actual is not None:
                self.miss(check.place, f"{check.kind} {check.value}", actual)
        for entry in self.day.talk[self._at :]:
            if isinstance(entry, Typing):
                self.miss(entry.place, f"asks {entry.prompt}", "never asked from here on")
            elif isinstance(entry, Seen):
                self.miss(entry.place, f"{entry.kind} {entry.value}", "its place was not reached")
            else:
                self.miss(entry.place, f"happens {entry.what}", "its place was not reached")


# ---------------------------------------------------------------- one scenario


def play(scenario: Scenario, file: str, bound: Bound, *, hasty: bool = False) -> Result:
    """Every day of a scenario, in order, over one diary in memory; `hasty` ends at a mismatch."""
    began = time.perf_counter()
    bound = bound._replace(plan=bound.plan._replace(words=_replay_words(scenario, bound)))
    journal = diary_in_memory()
    missed: list[Mismatch] = []
    spare, offer = iter(_WORDS), None
    for day in scenario.days:
        clock = ReplayClock(_instant(day))
        port = DayPort(day, scenario.usual, clock, offer)
        bound = _plan_of(day, bound, port)
        _before_the_door(port, journal, bound, clock, spare)
        while True:
            with contextlib.suppress(Cut):  # the next sitting takes it up from the diary
                run(bound, port, journal, clock)
            if not port.goes_on():
                break
        port.judge(_notes(journal))
        offer = port.offer
        missed += port.mismatches
        if missed and hasty:
            break
    return Result(file, scenario.name, time.perf_counter() - began, tuple(missed))


def _plan_of(day: ScenarioDay, bound: Bound, port: DayPort) -> Bound:
    """The plan from this day on: another one where the day puts it in place."""
    if not day.plan_file:
        return bound
    new, _findings = bound_from(Path(day.plan_file))
    if new is None:
        port.miss(day.place, f"the plan {day.plan_file}", "it has mistakes; see coach check")
        return bound
    return new._replace(plan=new.plan._replace(words=bound.plan.words))


def _instant(day: ScenarioDay) -> datetime:
    return datetime.fromisoformat(f"{day.day}T{day.time}").replace(tzinfo=UTC)


def diary_in_memory() -> Journal:
    """The real diary over a database that no file holds."""
    chain = Chain(sqlite3.connect(":memory:", isolation_level=None))
    chain.create()
    return Journal(chain, None)


def _notes(journal: Journal) -> tuple[str, ...]:
    newest = journal.sessions(1)
    record = newest[0].record if newest else None
    return record.notes if record is not None else ()


def _replay_words(scenario: Scenario, bound: Bound) -> tuple[ClearanceWord, ...]:
    """Clearance words that the replay knows; the plan's own are known by the clinician alone."""
    happens = {e.what for d in scenario.days for e in d.talk if isinstance(e, Happening)}
    if not happens & set(_CLEARANCES):
        return bound.plan.words
    return tuple(ClearanceWord(_SALT, word_digest(word, _SALT)) for word in _WORDS)


def _before_the_door(
    port: DayPort, journal: Journal, bound: Bound, clock: ReplayClock, spare: Iterator[str]
) -> None:
    """What befalls before the session opens: a clearance, or a clock set back."""
    entry = port.day.talk[0] if port.day.talk else None
    if not isinstance(entry, Happening):
        return
    if entry.what == "clock back":
        port.happening()
        last = datetime.fromisoformat(journal.history().last_at)
        clock.at = min(clock.at, last - timedelta(days=1))
    if entry.what in _CLEARANCES:
        port.happening()
        clear(journal, bound, _Clinician(entry.what, bound, clock, spare), clock.now)


class _Clinician:
    """Who stands beside the athlete with a clearance."""

    def __init__(self, what: str, bound: Bound, clock: ReplayClock, spare: Iterator[str]) -> None:
        by_word = what == "clearance by word"
        answers = {
            "clearance by word": [next(spare, _WRONG) if by_word else ""],
            "wrong clearance word": [_WRONG],
            "clearance in person": [
                "in person",
                clock.now().date().isoformat(),
                clinician_name(bound.plan.calls),
            ],
        }
        self._answers = answers[what]

    def say(self, text: str) -> None:
        """Nothing is shown."""

    def ask(self, label: str) -> str | None:  # noqa: ARG002 - whatever is asked, in this order
        """The next answer."""
        return self._answers.pop(0) if self._answers else None

    def wait(self, seconds: float) -> None:
        """No time passes."""


# ---------------------------------------------------------------- many scenarios


def replay(paths: list[Path]) -> list[Result]:
    """Every scenario under the paths, in the order of their names."""
    plans: dict[str, tuple[Bound | None, list[Finding]]] = {}
    return [_play_file(file, plans) for path in paths for file in files_under(path)]


def files_under(path: Path) -> list[Path]:
    """A file itself, or every scenario file of a folder and the folders in it."""
    return sorted(path.rglob("*.yaml")) if path.is_dir() else [path]


def _play_file(file: Path, plans: dict[str, tuple[Bound | None, list[Finding]]]) -> Result:
    began = time.perf_counter()
    scenario, findings = read_scenario(file)
    if scenario is not None and scenario.plan_file not in plans:
        plan_path = type(file)(scenario.plan_file)
        plans[scenario.plan_file] = bound_from(plan_path)
    bound, more = plans[scenario.plan_file] if scenario is not None else (None, findings)
    if scenario is None or bound is None:
        return Result(file.name, file.stem, time.perf_counter() - began, findings=tuple(more))
    return play(scenario, file.name, bound)


def exit_code(results: list[Result]) -> int:
    """65 when a file cannot be played, 1 for a mismatch, else 0."""
    if any(result.findings for result in results):
        return exit_codes.BAD_FILE
    return exit_codes.DONE if all(r.passed for r in results) else exit_codes.FINDINGS


def report(results: list[Result]) -> list[str]:
    """What went wrong, with both sides, then the count."""
    lines: list[str] = []
    for result in results:
        if result.findings:
            lines += [*as_text(list(result.findings)).splitlines(), ""]
        for mismatch in result.mismatches:
            lines += [*_both_sides(result, mismatch), ""]
    passed = sum(result.passed for result in results)
    return [*lines, f"{passed} passed, {len(results) - passed} failed"]


def _both_sides(result: Result, missed: Mismatch) -> list[str]:
    head = f"{result.file}:{missed.place.line}: {result.name}"
    where = f"  {missed.day}, at the prompt: {missed.prompt}"
    left = wrapped(f"expected: {missed.expected}", _HALF)
    right = wrapped(f"actual: {missed.actual}", _HALF)
    rows = [f"  {a:<{_HALF}}{b}".rstrip() for a, b in zip_longest(left, right, fillvalue="")]
    return [head, where, *rows]
