"""The promises as checks that read the plan's own numbers, on a turn, on a step, and at a prompt.

Law: nothing here asks a rule what it decided; ceilings, caps, locks and days are read from plan
and diary again. A check that does not hold is a `Broken`, never an exception.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from typing import Final, NamedTuple

from coach.drivers.prove_answers import STOP, UNCLEAR, Try, words_of
from coach.model.decisions import Refusal
from coach.model.flags import Group, Section
from coach.model.heard import Action, Command, Heard, Kind, Value
from coach.model.program import Axis, Prescription
from coach.model.quantities import Dose
from coach.model.turns import Ask, Offer, Turn, Typed
from coach.session.brief import Brief
from coach.session.engine import take
from coach.session.state import State
from coach.session.table import Stage

PROMISES: Final = tuple(f"P{n}" for n in range(1, 16))
WEEK_DAYS: Final = 7
UNCLEAR_TO_END: Final = 3  # set here, to be signed by a clinician
BEFORE_WORK: Final = frozenset({Stage.WHO, Stage.CHECK_IN, Stage.SCREEN, Stage.AT_HAND})
WORK: Final = frozenset({Stage.TODAY, Stage.WARM_UP, Stage.EXERCISE})
FREE_FAMILIES: Final = frozenset({"cuff", "shoulder blade", "trunk", "legs", "mobility"})
_SECTION_BIT: Final = {section: 1 << n for n, section in enumerate(Section)}
_FIRST_FIVE: Final = sum(bit for s, bit in _SECTION_BIT.items() if s is not Section.WEEKLY)
_FLAG_NAMES: Final = frozenset(group.value.replace("_", " ") for group in Group)

# The answer that counts as the worst, by question; written here again, not read from the session.
WORST_NUMBER_IS_LOW: Final = frozenset({Kind.SLEEP_HOURS, Kind.COUNT})
WORST_WORD: Final[dict[str, Value]] = {
    "plan is mine": "no",
    "guardian here": "no",
    "nothing here": "no",
    "stand-in weight": "no",
    "thrown already": "no",
    "against usual": "worse",
    "waking ache": "joint",
    "sore an hour after": "yes",
    "sore next day": "yes",
    "arm tired": "yes",
    "sore in warm-up": "yes",
    "sore after throw 15": "yes",
    "sore at the end": "yes",
    "stop for today": "worse",
    "moves or later": "later",
    "throwing yesterday": "game",
    "throwing today": "game",
    "throwing tomorrow": "game",
    "felt in set": "something else",
    "at hand": (),
}


class Broken(NamedTuple):
    """A promise that does not hold, and what was seen."""

    promise: str
    words: str


class Path(NamedTuple):
    """What a promise over a path must remember; empty wherever it is not needed.

    `answered` and `alone` are bits of screen sections; `over` the doses (range, load, level) of
    this exercise that hurt over the ceiling; `holds` the holds begun in this set.
    """

    answered: int = 0
    alone: int = 0
    over: tuple[tuple[float, float, float], ...] = ()
    holds: int = 0


class Oracle:
    """The promises for one brief."""

    def __init__(self, brief: Brief) -> None:
        """Everything is read from the plan, the program and the history of `brief`."""
        self.brief = brief
        self.plan = brief.plan
        self.doses = {p.exercise: p for p in brief.plan.doses}
        self.exercises = {e.name: e for e in brief.program.exercises}
        self.held = brief.history.hold is not None
        self.opened = {
            opened.what
            for opened in brief.plan.opened
            if opened.who and date.fromisoformat(opened.day) <= brief.today
        }
        self.due_alone = self._due_alone()
        self.full_week = self._full_week()
        self.reasons_seen: set[object] = set()

    def _due_alone(self) -> int:
        """Sections that nobody asked alone for 7 days: they must be asked alone today."""
        last = dict(self.brief.history.asked_alone)
        due = 0
        for section, bit in _SECTION_BIT.items():
            day = last.get(section)
            if day is None or (self.brief.today - date.fromisoformat(day)).days >= WEEK_DAYS:
                due |= bit
        return due

    def _full_week(self) -> bool:
        """Whether the plan's sessions of the 7 days that end today are used up."""
        first = self.brief.today - timedelta(days=WEEK_DAYS - 1)
        days = [
            r
            for r in self.brief.history.records
            if first <= date.fromisoformat(r.day) <= self.brief.today
            and any(d.sets > 0 for d in r.done)
        ]
        return 0 < len(days) >= self.plan.limits.sessions_a_week

    def at_start(self, state: State) -> Iterator[Broken]:
        """P1 across restarts: with an open stop in the diary a day ends before it begins."""
        if self.held and state.end != "stopped":
            yield Broken("P1", "a day opens although the plan is closed")

    # ------------------------------------------------------------ on a turn

    def on_turn(self, state: State, shown: Turn) -> Iterator[Broken]:
        """P1, P2, P3, P5, P12 and P14 on what is shown."""
        yield from self._held(state, shown)
        if shown.offers and state.stage not in WORK:
            yield Broken("P6", f"work is shown in the middle of the {state.stage.value}")
        for offer in shown.offers:
            yield from self._caps(offer)
            yield from self._locks(offer)
            if offer.side != self.plan.side:
                yield Broken("P12", f"{offer.exercise} is offered for the {offer.side} side")
        yield from self._list_caps(shown)
        yield from self._sides(shown)

    def _held(self, state: State, shown: Turn) -> Iterator[Broken]:
        held = state.stage is Stage.CLOSED and state.brief.history.hold is not None
        if state.stage is Stage.STOPPED or held:
            names = [name for name in self.doses if any(name in li.text for li in shown.lines)]
            if shown.offers or shown.ask or shown.timer or names:
                yield Broken("P1", "work is shown while the plan is closed")
            if shown.end != "stopped" or not shown.alone:
                yield Broken("P1", "the stop does not stand alone")
        if state.stage is Stage.STOPPED and not state.stop[0]:
            yield Broken("P1", "a stop without a code places no hold")

    def _caps(self, offer: Offer) -> Iterator[Broken]:
        line = self.doses.get(offer.exercise)
        if line is None:
            yield Broken("P2", f"{offer.exercise} has no dose in the plan")
            return
        for words in over_the_caps(offer.dose, line):
            yield Broken("P2", f"{offer.exercise}: {words}")
        if offer.set_number > offer.dose.sets:
            yield Broken("P14", f"set {offer.set_number} of {offer.dose.sets} is shown")
        if offer.set_number > line.sets.cap:
            yield Broken("P14", f"{offer.exercise}: set {offer.set_number} of {line.sets.cap}")
        for words in over_the_opening(offer.dose, line):
            yield Broken("P5", f"{offer.exercise}: {words}")

    def _locks(self, offer: Offer) -> Iterator[Broken]:
        made = self.exercises.get(offer.exercise)
        if made is None or offer.exercise in self.plan.not_used:
            yield Broken("P3", f"{offer.exercise} is not in use")
        elif made.family not in FREE_FAMILIES and not {made.name, made.family} & self.opened:
            yield Broken("P3", f"{offer.exercise} is locked")

    def _list_caps(self, shown: Turn) -> Iterator[Broken]:
        listed = [offer for offer in shown.offers if offer.kind == "list"]
        if len(listed) > self.plan.limits.exercises:
            yield Broken("P2", f"{len(listed)} exercises are listed")
        work = any(offer.kind != "warm-up" for offer in shown.offers)
        if work and self.full_week:
            yield Broken("P2", "work is shown in a week that is full")

    def _sides(self, shown: Turn) -> Iterator[Broken]:
        words = f"{self.plan.side} arm"
        for line in shown.lines:
            names = line.kind == "item" and bool(shown.offers) and "," in line.text
            if (line.kind in {"name", "work"} or names) and words not in line.text:
                yield Broken("P12", f"no side on the line {line.text!r}")
        if shown.timer is not None and shown.timer.side != words:
            yield Broken("P12", "no side on the timer")

    def reasons(self, state: State, shown: Turn) -> Iterator[Broken]:
        """P11, once for each set of reasons at a kind of prompt."""
        work = state.work
        mark = (state.reasons, state.stage, state.aside, work and work.place, bool(shown.ask))
        if mark in self.reasons_seen:
            return
        self.reasons_seen.add(mark)
        if (shown.ask or shown.timer) and not shown.decisions:
            yield Broken("P11", "nothing stands behind this prompt")
        for decision in shown.decisions:
            if not (decision.rule and decision.why and decision.source):
                yield Broken("P11", f"{decision.rule or 'a decision'} has no reason or source")
        if state.stage is Stage.STOPPED and not any(state.stop[0] in li.text for li in shown.lines):
            yield Broken("P11", "the stop does not show its code")
        if shown.ask or shown.timer:
            yield from self._why(state, shown)

    def _why(self, state: State, shown: Turn) -> Iterator[Broken]:
        plain = said(state, Command.WHY)
        coded = said(state, Command.WHY_CODE)
        newest = shown.decisions[-1]
        if newest.why not in plain:
            yield Broken("P11", f"why does not say: {newest.why}")
        if newest.rule not in coded:
            yield Broken("P11", f"why code does not name {newest.rule}")
        place = newest.place
        if place is not None and f"line {place.line}" not in plain + coded:
            yield Broken("P11", f"why names no plan line for {newest.rule}")

    # ------------------------------------------------------------ on a step

    def on_step(
        self, before: State, asked: Ask | None, tried: Try, after: State, path: Path
    ) -> tuple[Path, list[Broken]]:
        """P1, P4, P6, P13 and P14 on one step; the path's memory after it."""
        broken = list(self._signs(asked, tried, after))
        path, late = self._screen(before, asked, tried, after, path)
        if path.alone:
            path = path._replace(alone=path.alone & self.due_alone)
        broken += late
        if Stage.EXERCISE in {before.stage, after.stage}:
            path, again = self._same_again(before, tried, after, path)
            broken += again
            path, more = self._holds(before, after, path)
            broken += more
        broken += self._fixes(before, after)
        return path, broken

    def _signs(self, asked: Ask | None, tried: Try, after: State) -> Iterator[Broken]:
        if tried.kind == "sign" and after.stage is not Stage.STOPPED:
            yield Broken("P1", "a warning sign does not stop the day")
        fact = asked.question.fact if asked else ""
        said_yes = tried.kind == "value" and dict(tried.values).get(fact) == "yes"
        sign = fact in {"heard right", "read back"} or fact in _FLAG_NAMES
        if said_yes and sign and after.stage is not Stage.STOPPED:
            yield Broken("P1", f"yes to {fact} does not stop the day")
        if after.stage is Stage.STOPPED and after.end != "stopped":
            yield Broken("P1", "the stop is not the end")

    def _screen(
        self, before: State, asked: Ask | None, tried: Try, after: State, path: Path
    ) -> tuple[Path, list[Broken]]:
        """P6: bits of sections whose question was answered, alone or in the list."""
        name = asked.question.fact if asked else ""
        if before.stage is Stage.SCREEN and tried.kind == "value" and not before.aside:
            if name == "screen" and asked is not None:
                numbers = asked.question.choices
                bits = sum(b for n, b in enumerate(_SECTION_BIT.values(), 1) if str(n) in numbers)
                path = path._replace(answered=path.answered | bits)
            elif name.startswith("screen "):
                bit = _SECTION_BIT[Section(name.split(" ", 1)[1])]
                path = path._replace(answered=path.answered | bit, alone=path.alone | bit)
            elif before.section.startswith("weekly"):
                bit = _SECTION_BIT[Section.WEEKLY]
                path = path._replace(answered=path.answered | bit, alone=path.alone | bit)
        if before.stage is Stage.SCREEN and not before.back and tried.kind in {"unclear", "maybe"}:
            path = self._opened_unclear(before, after, path)
        entered = before.stage in {Stage.SCREEN, Stage.AT_HAND} and after.stage in WORK
        broken = []
        if entered and not before.back:
            if path.answered & _FIRST_FIVE != _FIRST_FIVE:
                broken.append(Broken("P6", "work begins before every section was answered"))
            if self.due_alone & ~path.alone:
                broken.append(Broken("P6", "a section that waited 7 days was not asked alone"))
        past = after.stage not in BEFORE_WORK
        if past or after.back not in {"", Stage.AT_HAND.value}:
            path = path._replace(answered=0, alone=0)
        return path, broken

    def _opened_unclear(self, before: State, after: State, path: Path) -> Path:
        """A section that stayed unclear is opened sign by sign, which answers it."""
        bits = 0
        opened = after.section.removeprefix("open ")
        for section in (*after.yes_left, *([Section(opened)] if after.section != opened else [])):
            bits |= _SECTION_BIT[section]
        alone = bits if before.section.startswith("alone") else 0
        return path._replace(answered=path.answered | bits, alone=path.alone | alone)

    def _same_again(
        self, before: State, tried: Try, after: State, path: Path
    ) -> tuple[Path, list[Broken]]:
        """P4: no set at equal or greater range, load and level after pain over the ceiling."""
        work, next_work = before.work, after.work
        pain = dict(tried.values).get("pain in set")
        sure = work is not None and isinstance(pain, int | float) and after.aside != "read back"
        if work is not None and sure and pain > self.plan.pain.in_exercise:  # type: ignore[operator]
            path = path._replace(over=tuple(sorted({*path.over, heaviness(work.dose)})))
        broken = list(self._comes_back(before, after))
        if next_work is None or (work is not None and next_work.place != work.place):
            path = path._replace(over=())
        elif next_work.phase in {"set", "ready"}:
            new_set = work is None or next_work.set_number > work.set_number
            if new_set and as_hard(heaviness(next_work.dose), path.over):
                words = "the same or a harder set follows pain over the ceiling"
                broken.append(Broken("P4", words))
        return path, broken

    def _comes_back(self, before: State, after: State) -> Iterator[Broken]:
        """P4: what was left, or was never on the list, is not shown again."""
        if before.stage is not Stage.EXERCISE or after.stage is not Stage.EXERCISE:
            return
        if not the_same(before, after, "todo") and not set(after.todo) <= set(before.todo):
            yield Broken("P4", "an exercise comes back to the list")
        work, next_work = before.work, after.work
        moved = next_work is not None and (work is None or next_work.place != work.place)
        if moved and next_work is not None and next_work.place not in before.todo:
            yield Broken("P4", "an exercise that was left is shown again")

    def _holds(self, before: State, after: State, path: Path) -> tuple[Path, list[Broken]]:
        """P14: sets only rise; the holds of one set, breaks included, stay inside the plan."""
        work, next_work = before.work, after.work
        if next_work is None:
            return path._replace(holds=0), []
        same = work is not None and work.place == next_work.place
        broken = []
        if same and work is not None and next_work.set_number < work.set_number:
            broken.append(Broken("P14", "a set is counted back"))
        if not same or work is None or next_work.set_number != work.set_number:
            path = path._replace(holds=0)
        begins = next_work.phase == "hold" and (work is None or work.phase != "hold")
        if begins:
            path = path._replace(holds=path.holds + 1)
            name = self.brief.stations[next_work.place].exercise.name
            if path.holds > self.doses[name].reps.cap:
                broken.append(Broken("P14", f"hold {path.holds} of a set of {name} is begun"))
        if next_work.phase not in {"ready", "hold"} and not after.aside:
            path = path._replace(holds=0)
        return path, broken

    def _fixes(self, before: State, after: State) -> Iterator[Broken]:
        """P13: after a decision was shown, a correction never makes the day less careful."""
        fixing = before.aside == "fix" and bool(before.fixing)
        less = "less" in before.onward and not before.aside
        if not (fixing or less) or before.stage not in WORK or after.stage not in WORK:
            return
        worse = fixing and (
            after.level < before.level
            or (before.short and not after.short)
            or (before.recovery and not after.recovery)
            or (before.order == "after throwing" and after.order != "after throwing")
            or not set(before.lowered) <= set(after.lowered)
        )
        if worse or not set(after.todo) <= set(before.todo):
            yield Broken("P13", "a correction made the day less careful")
        work, next_work = before.work, after.work
        if work and next_work and work.place == next_work.place:
            doses = (heaviness(next_work.dose), heaviness(work.dose))
            harder = any(a > b for a, b in zip(*doses, strict=True))
            if harder or next_work.dose.sets > work.dose.sets:
                yield Broken("P13", "a correction raised the dose")

    # ------------------------------------------------------------ at a prompt

    def at_prompt(
        self, state: State, asked: Ask | None, tries: tuple[Try, ...]
    ) -> Iterator[Broken]:
        """P8 and P10, which need only the prompt and what an answer leads to."""
        stopped = step(state, STOP)
        if not stopped.end and stopped.stage is not Stage.ENDING:
            yield Broken("P8", "stop does not end the work in one answer")
        if asked is not None and not state.line:
            yield from self._unclear(state, asked, tries)

    def _unclear(self, state: State, asked: Ask, tries: tuple[Try, ...]) -> Iterator[Broken]:
        after = step(state, UNCLEAR)
        if asked.safety and state.doubts + 1 >= UNCLEAR_TO_END:
            if not after.end:
                yield Broken("P10", "a third unclear safety answer does not end the day")
            return
        if not state.unclear:
            if talk(after) != talk(state._replace(unclear=1)):
                yield Broken("P10", f"unclear at {asked.question.fact} is not asked again")
            return
        worst = self.worst(asked)
        if worst is not None:
            if talk(after) != talk(step(state, worst)):
                yield Broken(
                    "P10", f"twice unclear at {asked.question.fact} is not the worst answer"
                )
            return
        for one in tries:
            if one.kind == "value":
                other = step(state, one)
                on = after.end or after.todo != state.todo  # it was left, not only lowered
                if not on and not set(other.lowered) <= set(after.lowered):
                    yield Broken("P10", f"unclear at {asked.question.fact} leaves out an effect")

    def worst(self, asked: Ask) -> Try | None:
        """The worst answer to a question; None for one that has none."""
        question = asked.question
        fact, kind = question.fact, question.kind
        value: Value
        if fact in WORST_WORD:
            value = WORST_WORD[fact]
        elif self._own(fact) or kind in {Kind.OWN_WORDS, Kind.WORD, Kind.CHOICE}:
            return None
        elif kind is Kind.NONE_OR_LIST:
            value = question.choices
        elif kind is Kind.SAFETY_YES_NO:
            value = "yes"
        else:
            low = kind in WORST_NUMBER_IS_LOW and fact not in {"sets since", "throws done"}
            value = question.low if low else question.high
        heard = Heard(Action.ACCEPT, ((fact, value),))
        return Try(words_of(value), "value", Typed("-"), heard, ((fact, value),))

    def _own(self, fact: str) -> bool:
        return any(
            step.kind == "ask also" and step.fact == fact
            for steps in self.brief.items.values()
            for step in steps
        )


def the_same(before: State, after: State, fact: str) -> bool:
    """Whether a step left a fact as it was, without a look at its value."""
    at = State._fields.index(fact)
    return tuple.__getitem__(before, at) is tuple.__getitem__(after, at)


def step(state: State, tried: Try) -> State:
    """The state after one answer."""
    after = take(state, tried.event, tried.heard)
    if isinstance(after, Refusal):
        raise TypeError(after.why)
    return after


def said(state: State, command: Command) -> str:
    """What a command word answers at this prompt."""
    heard = Heard(Action.ACCEPT, command=command)
    after = step(state, Try(command.value, "command", Typed(command.value), heard))
    return " ".join(line.text for line in after.told)


def talk(state: State) -> State:
    """A state without what is only said, kept for the diary, or counted as unclear."""
    work = state.work
    return state._replace(
        told=(),
        happened=(),
        reasons=(),
        because=(),
        repeat=False,
        first=False,
        blank=(),
        doubts=0,
        work=work._replace(more=0) if work else None,
    )


def heaviness(dose: Dose) -> tuple[float, float, float]:
    """Range, load and level of a dose."""
    return (float(dose.range_index), dose.load.rank(), float(dose.version_level))


def as_hard(dose: tuple[float, float, float], over: tuple[tuple[float, float, float], ...]) -> bool:
    """Whether a dose is at or above one that hurt, on all three together."""
    return any(all(a >= b for a, b in zip(dose, one, strict=True)) for one in over)


def over_the_caps(dose: Dose, line: Prescription) -> Iterator[str]:
    """Every axis of a dose that passes the plan's cap."""
    held: tuple[tuple[str, int, Axis | None], ...] = (
        ("sets", dose.sets, line.sets),
        ("reps", dose.reps_high, line.reps),
        ("hold", dose.hold_s, line.hold),
        ("range", dose.range_index, line.range),
    )
    for name, amount, axis in held:
        if amount > (axis.cap if axis else 0):
            yield f"{name} {amount} is over the cap"
    if dose.load.kind != line.load_cap.kind or dose.load.rank() > line.load_cap.rank():
        yield f"load {dose.load.words()} is over the cap"
    if dose.rest_s < line.rest_s:
        yield f"rest {dose.rest_s} s is under the plan's"
    if dose.version and dose.version not in line.versions:
        yield f"version {dose.version} is not in the plan"
    if not 0 < dose.reps_low <= dose.reps_high or dose.sets < 1:
        yield "the dose is empty"


def over_the_opening(dose: Dose, line: Prescription) -> Iterator[str]:
    """Every axis of a dose above the plan's opening (P5 while no ladder was moved)."""
    if dose.sets > line.sets.opening or dose.reps_high > line.reps.opening_high:
        yield "sets or reps are above the opening"
    if line.range is not None and dose.range_index > line.range.opening:
        yield "the range is above the opening"
    if dose.load.rank() > line.load.rank():
        yield "the load is above the opening"
