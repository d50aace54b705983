"""Keeps a diary's sessions as a scenario, its last session at the end; private words left out.

Law: only what was understood of an answer is written, in plain words; what was typed freely is
replaced by words that are heard alike, and a break or a slow answer by its length. A scenario that
does not replay is not written. Earlier days stay in, since the last one stands on them; nothing of
the diary is changed.
"""

from __future__ import annotations

import contextlib
from datetime import UTC, datetime
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.drivers import recorded, replay
from coach.drivers.drive import run
from coach.drivers.port import Reply
from coach.drivers.replay import ANSWER_S, Cut, ReplayClock, diary_in_memory
from coach.drivers.replay_checks import pieces_of
from coach.drivers.replay_names import part_name
from coach.drivers.timed_lines import whole_s
from coach.hearing import hear
from coach.journal.trouble import Trouble
from coach.model.heard import Kind, Question
from coach.model.scenario import Happening, Scenario, ScenarioDay, Seen, Typing
from coach.rules.hold import BY_WORD, IN_PERSON
from coach.rules.red_flags import FLAGS, flag_heard
from coach.session.brief import brief_for
from coach.texts.doors import bound_from
from coach.texts.scenarios import BREAK

if TYPE_CHECKING:
    from pathlib import Path

    from coach.drivers.replay import Result
    from coach.journal import Journal
    from coach.journal.diary import Sitting
    from coach.model.heard import Heard
    from coach.model.program import Bound, Place
    from coach.model.scenario import Entry
    from coach.model.turns import Ask, Line, Offer, Timer, Turn
    from coach.session.brief import Brief

    Event = tuple[str, dict[str, object], str]

OWN_WORDS: Final = "words left out"
UNCLEAR: Final = ("hm", "hm hm", "?")
HEAD: Final = "# A kept session. Own words and free text were left out."
NOTHING: Final = "There is no session in the diary yet, so nothing is kept."
OTHER_PLAN: Final = (
    "The last session was not of this plan as it is now. Name its file with --plan FILE."
)
NOT_ALIKE: Final = (
    "The session does not play again alike without its own words. Nothing was written."
)
SLOW_S: Final = 60  # an answer that took this much longer than in a replay is kept with its time
SHORT: Final[dict[str, str]] = {  # what the parts of a gathered line are called when typed
    "waking pain": "morning",
    "worst pain": "worst",
    "sleep last night": "slept",
    "throwing yesterday": "throws yesterday",
    "throwing today": "game today",
    "reps in set": "reps",
    "holds in set": "holds",
    "pain in set": "pain",
    "pain after": "pain",
}
_PLAYED: Final = (recorded.TYPED, recorded.TIMER_ENDED, recorded.RESUMED, recorded.PAUSED)
_TIMED: Final = Question("timer", Kind.WORD)


class Kept(NamedTuple):
    """A scenario as text, and how it played."""

    text: str
    result: Result


class KeptPort:
    """Types what a session's record holds, and notes it in plain words by the prompt's name."""

    def __init__(self, events: list[Event], brief: Brief, clock: ReplayClock) -> None:
        self.events, self.brief, self.clock = events, brief, clock
        self.talk: list[Entry] = []
        self.offers: list[Offer] = []
        self.place: Place = brief.plan.place
        self.cut = False

    def present(self, turn: Turn, lines: tuple[Line, ...]) -> None:  # noqa: ARG002 - turns say it all
        """Keep the doses of the sets, and a stop."""
        self.offers += turn.offers
        if turn.end == "stopped":
            tiers = {flag.tier.value for flag in FLAGS.values()}
            found = [d.outcome for d in turn.decisions if d.outcome in tiers]
            self.talk += [Seen("stops", tier, self.place) for tier in found[-1:]]

    def ask(self, ask: Ask) -> Reply:
        """The next thing that was typed."""
        if ask.name == "enter":
            self.clock.passed += ANSWER_S
            return Reply("")
        if ask.name == "paused":
            return self._after_the_pause()
        body = self._next()
        text, fact = str(body.get("text", "")), str(body.get("fact", ""))
        part = next((p for p in ask.question.parts if p.fact == fact), None)
        question, name = (part, part_name(ask, part)) if part else (ask.question, ask.name)
        plain = self.in_plain_words(question, text)
        self.talk.append(Typing(name, plain, self.place))
        return Reply(plain, fact if part else "")

    def time(self, timer: Timer, name: str, gone_s: float) -> Reply | None:
        """A timer that ended, or what was typed into it."""
        if self.events and self.events[0][0] == recorded.TIMER_ENDED:
            self.events.pop(0)
            self.clock.passed += max(0.0, whole_s(timer) - gone_s)
            return None
        if not self._was_typed():
            self._leave()
        plain = self.in_plain_words(_TIMED, str(self.events.pop(0)[1].get("text", "")))
        self.clock.passed += 1
        self.talk.append(Typing(name, plain, self.place))
        return Reply(plain)

    # ------------------------------------------------------------ what was typed, and when

    def _next(self) -> dict[str, object]:
        """What was typed next, at its time; where nothing was, the power is cut here as it was then."""
        if not self._was_typed():
            self._leave()
        _kind, body, at = self.events.pop(0)
        late_s = int((_by_the_wall(at) - self.clock.now()).total_seconds())
        self._pass(late_s if late_s >= SLOW_S else 0)
        return body

    def _was_typed(self) -> bool:
        return bool(self.events) and self.events[0][0] in {recorded.TYPED, recorded.PAUSED}

    def _leave(self) -> None:
        self.talk.append(Happening("power cut", self.place))
        self.cut = True
        raise Cut

    def _pass(self, break_s: int) -> None:
        """Let the time of an answer go by, or that of a break, which is kept."""
        if break_s > 0:
            self.talk.append(Happening(BREAK, self.place, break_s))
        self.clock.passed += break_s or ANSWER_S

    def _after_the_pause(self) -> Reply:
        """On after the length of the pause; a pause that nothing followed leaves the session."""
        self._drop_the_hold()
        if not self._is_resumed():
            self.cut = True
            raise Cut
        self._pass(_gap_s(self.events.pop(0)))
        self.talk.append(Typing("paused", "go", self.place))
        return Reply("go")

    def _is_resumed(self) -> bool:
        return bool(self.events) and self.events[0][0] == recorded.RESUMED

    def _drop_the_hold(self) -> None:
        """A hold that a break cut short was ended by the loop itself, so it is no answer."""
        if [kind for kind, _body, _at in self.events[:2]] == [
            recorded.TIMER_ENDED,
            recorded.RESUMED,
        ]:
            self.events.pop(0)

    def goes_on(self) -> bool:
        """Whether the session was taken up again after it was left; its break goes by."""
        self._drop_the_hold()
        if not self.cut or not self.events:
            return False
        self.cut = False
        if self._is_resumed():
            self._pass(_gap_s(self.events.pop(0)))
            return True
        late_s = int((_by_the_wall(self.events[0][2]) - self.clock.now()).total_seconds())
        self._pass(max(1, late_s - ANSWER_S))
        return True

    # ------------------------------------------------------------ words

    def in_plain_words(self, question: Question, typed: str) -> str:
        """Words that are heard as `typed` was, and say no more. Raises `Trouble` if there are none."""
        heard = hear(question, typed, self.brief.lexicon)
        for words in self._candidates(question, heard):
            if _alike(hear(question, words, self.brief.lexicon), heard, question):
                return words
        raise Trouble(NOT_ALIKE, 65)

    def _candidates(self, question: Question, heard: Heard) -> list[str]:
        if heard.command is not None:
            return [heard.command.value]
        if heard.group is not None:
            return self._signs(heard)
        if question.kind is Kind.OWN_WORDS:
            return [OWN_WORDS, "none"]
        if not heard.values:
            return ["", *UNCLEAR]
        values = [_value_words(value) for _fact, value in heard.values]
        named = [f"{fact} {words}" for (fact, _v), words in zip(heard.values, values, strict=True)]
        labelled = [
            _labelled(fact, words) for (fact, _v), words in zip(heard.values, values, strict=True)
        ]
        return [", ".join(values), " ".join(values), ", ".join(named), ", ".join(labelled)]

    def _signs(self, heard: Heard) -> list[str]:
        """Plain ways to say a sign, with the values said beside it."""
        group = heard.group
        if group is None:
            return []
        code = heard.flag or flag_heard(group, None, self.brief.person)
        flag = FLAGS[code]
        said = [flag.say, *flag.list_words, group.value.replace("_", " ")]
        values = " ".join(_value_words(value) for _fact, value in heard.values)
        maybe = [f"maybe {words}" for words in said]
        return [f"{values} {words}".strip() for words in (*said, *maybe)]


def _labelled(fact: str, words: str) -> str:
    """A value as a gathered line takes it: `reps 10`, `no throws yesterday`."""
    label = SHORT.get(fact, fact)
    return f"no {label}" if words == "none" else f"{label} {words}"


def _value_words(value: object) -> str:
    if isinstance(value, tuple):
        return ", ".join(value) or "none"
    return f"{value:g}" if isinstance(value, int | float) else str(value).replace("_", " ")


def _alike(one: Heard, other: Heard, question: Question) -> bool:
    """Whether both mean the same to a session; own words are only kept, so any will do."""
    same = (one.action, one.group, one.flag, one.command)
    if same != (other.action, other.group, other.flag, other.command):
        return False
    return question.kind is Kind.OWN_WORDS or one.values == other.values


def _gap_s(event: Event) -> int:
    """The length of the break that a session was told of."""
    gap_s = event[1].get("gap_s")
    return gap_s if isinstance(gap_s, int) else 0


def _by_the_wall(at: str) -> datetime:
    """An ISO instant as the clock on the wall showed it; a replay knows no other zone than UTC."""
    return datetime.fromisoformat(at).replace(tzinfo=UTC)


# ---------------------------------------------------------------- the diary as days


def kept(journal: Journal, bound: Bound, plan_name: str, name: str) -> Kept:
    """The diary's sessions under `bound` as a scenario called `name`.

    Raises `Trouble`: 66 with no session, 65 for another plan or what cannot be kept alike.
    """
    sittings = list(reversed(journal.sessions()))
    if not sittings:
        raise Trouble(NOTHING, 66)
    if sittings[-1].header.get("bound") != bound.digest:
        raise Trouble(OTHER_PLAN, 65)
    first = next(n for n in range(len(sittings)) if _same_plan(sittings[n:], bound))
    days = _days(journal, sittings[first:], bound)
    scenario = Scenario(name, plan_name, (), tuple(days), bound.plan.place)
    result = replay.play(scenario, name, bound)
    if not result.passed:
        raise Trouble(NOT_ALIKE, 65)
    return Kept(as_text(scenario), result)


def plan_file(journal: Journal, named: Path | None, shipped: Path | None) -> tuple[Path, Bound]:
    """The file of the plan of the last session: the named one, else a shipped one.

    Raises `Trouble`: 66 with no session, 65 where neither is that very plan.
    """
    newest = journal.sessions(1)
    if not newest:
        raise Trouble(NOTHING, 66)
    shipped_plans = sorted(shipped.glob("*/plans/*.yaml")) if shipped is not None else []
    for file in [named] if named is not None else shipped_plans:
        bound, _findings = bound_from(file)
        if bound is not None and bound.digest == newest[0].header.get("bound"):
            return file, bound
    raise Trouble(OTHER_PLAN, 65)


def _same_plan(sittings: list[Sitting], bound: Bound) -> bool:
    return all(sitting.header.get("bound") == bound.digest for sitting in sittings)


def _days(journal: Journal, sittings: list[Sitting], bound: Bound) -> list[ScenarioDay]:
    """Each sitting played once more in a diary of its own, its answers in plain words."""
    again = diary_in_memory()
    days: list[ScenarioDay] = []
    for sitting in sittings:
        events = [e for e in journal.events(sitting.session) if e[0] in _PLAYED]
        at = _by_the_wall(sitting.opened_at).replace(second=0, microsecond=0)
        hold = again.open_hold()
        before = _opened_by(bound) if hold is not None and events else ""
        if hold is not None and before:
            again.lift(hold.number, IN_PERSON, "", at.isoformat(), at.date().isoformat())
        days.append(_of_sitting(again, bound, events, at, before))
    return days


def _of_sitting(
    again: Journal, bound: Bound, events: list[Event], at: datetime, before: str
) -> ScenarioDay:
    """One session from its first line to its end, with the breaks in it."""
    clock = ReplayClock(at)
    port = KeptPort(events, brief_for(bound, again.history(), at), clock)
    while True:
        with contextlib.suppress(Cut):
            run(bound, port, again, clock)
        if not port.goes_on():
            return _day(at, port, before)


def _opened_by(bound: Bound) -> str:
    """How a clinician opens this plan in a replay."""
    return f"clearance {IN_PERSON if IN_PERSON in bound.plan.clearance else BY_WORD}"


def _day(at: datetime, port: KeptPort, before: str) -> ScenarioDay:
    place = port.place
    talk: list[Entry] = [Happening(before, place)] if before else []
    checks = tuple(
        Seen("offers", words, place) for words in dict.fromkeys(map(_offer, port.offers))
    )
    none = (Seen("never offers", "anything", place),)
    talk += port.talk
    return ScenarioDay(at.date().isoformat(), f"{at:%H:%M}", tuple(talk), checks or none, place)


def _offer(offer: Offer) -> str:
    """A dose shown, as a scenario writes it."""
    dose = offer.dose
    wanted = [f"{dose.sets} set", f"{dose.sets} sets", dose.version, dose.range_step]
    wanted += [f"{dose.reps_low} to {dose.reps_high} reps", f"{dose.reps_high} reps"]
    wanted += [dose.load.words()] if dose.load.unit or dose.load.strength else []
    known = pieces_of(dose)
    return ", ".join([offer.exercise, *(piece for piece in wanted if piece and piece in known)])


# ---------------------------------------------------------------- as a file


def as_text(scenario: Scenario) -> str:
    """The scenario as a file."""
    lines = [HEAD, f"scenario: {scenario.name}", f"plan: {scenario.plan_file}", "days:"]
    for day in scenario.days:
        lines.append(f"  - day: {day.day} at {day.time}")
        lines.append("    all day:")
        lines += [f"      - {check.kind}: {_quoted(check.value)}" for check in day.all_day]
        lines += ["    talk:"] if day.talk else []
        lines += [f"      - {_entry(entry)}" for entry in day.talk]
    return "\n".join(lines) + "\n"


def _entry(entry: Entry) -> str:
    if isinstance(entry, Typing):
        return f"{entry.prompt}: {_quoted(entry.typed)}"
    if isinstance(entry, Seen):
        return f"{entry.kind}: {_quoted(entry.value)}"
    return f"break: {entry.seconds} s" if entry.seconds else f"happens: {entry.what}"


def _quoted(text: str) -> str:
    risky = not text or text != text.strip() or ": " in text or " #" in text or text[0] in "\"'?-"
    return f'"{text}"' if risky else text
