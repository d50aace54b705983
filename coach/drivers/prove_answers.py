"""What may be answered at a prompt, as classes that no rule can tell apart, both ends of each.

Law: numbers are opaque here: they can be compared, not kept and not reckoned with, and every
comparison is written down. Where to cut is read from the plan and the scripts, never from a rule's code.
"""

from __future__ import annotations

import operator
from collections.abc import Callable, Iterable
from functools import cache
from itertools import product
from typing import Final, NamedTuple

from coach.model.flags import Group
from coach.model.heard import Action, Command, Heard, Kind, Question, Value
from coach.model.turns import Event, Resumed, TimerEnded, Typed
from coach.rules import dapre
from coach.rules.cut_points import pitch_cuts
from coach.session.state import State

END_AT: Final = 6.0  # set here, to be signed by a clinician: pain of 6 or more ends the session
FLAG_AT: Final = 8.0  # set here, to be signed by a clinician: pain of 8 or more is a warning sign
UP_BY: Final = 2.0  # Farrar 2001, Michener 2011: about 2 points is a real change
ACHE_AT_MOST: Final = 2.0  # common practice, no published source
SHORT_NIGHT_H: Final = 6.0  # set here, to be signed by a clinician
BREAKS_S: Final = (400, 4000)  # a break over 5 minutes, and one over an hour
LINE_AT_MOST: Final = 4000  # combinations tried on one line


class Compared(NamedTuple):
    """A comparison that was seen: the answer to `fact` was cut at `number`.

    `side` is over (the number itself is on the lower side) or at (on the upper side).
    """

    fact: str
    side: str
    number: float


class Number:
    """A typed number during the search: comparable with a plan's number, and nothing else."""

    __slots__ = ("fact", "log", "x")
    __hash__ = None  # type: ignore[assignment]

    def __init__(self, x: float, fact: str, log: set[Compared]) -> None:
        """`log` receives each comparison."""
        self.x, self.fact, self.log = x, fact, log

    def _compared(self, op: Callable[[float, float], bool], other: object, sides: str) -> bool:
        if isinstance(other, Number):
            raise TypeError("two answers were compared with each other")
        if not isinstance(other, int | float):
            return op is operator.ne
        for side in sides.split():
            self.log.add(Compared(self.fact, side, float(other)))
        return bool(op(self.x, other))

    def __gt__(self, other: object) -> bool:
        return self._compared(operator.gt, other, "over")

    def __le__(self, other: object) -> bool:
        return self._compared(operator.le, other, "over")

    def __lt__(self, other: object) -> bool:
        return self._compared(operator.lt, other, "at")

    def __ge__(self, other: object) -> bool:
        return self._compared(operator.ge, other, "at")

    def __eq__(self, other: object) -> bool:
        return self._compared(operator.eq, other, "over at")

    def __ne__(self, other: object) -> bool:
        return self._compared(operator.ne, other, "over at")

    def __bool__(self) -> bool:
        raise TypeError("a typed number was used as a yes or no")


class Try(NamedTuple):
    """One thing that may happen at a prompt.

    `words` is what a person would type (or what befalls); `kind` is value, unclear, sign, maybe,
    stop, timer, break, fix, gear or onward; `values` the plain numbers and names by fact; `then` the answers that follow at once.
    """

    words: str
    kind: str
    event: Event
    heard: Heard
    values: tuple[tuple[str, Value], ...] = ()
    then: tuple[Try, ...] = ()


GRIDS: Final[dict[Kind, float]] = {
    Kind.PAIN_NOW: 0.5,
    Kind.WORST_PAIN: 0.5,
    Kind.EFFORT: 0.5,
    Kind.SLEEP_HOURS: 0.25,
    Kind.NUMBER: 0.25,
    Kind.COUNT: 1.0,
    Kind.COUNT_MOST: 1.0,
}


class Answers:
    """The answers at a prompt; `log` gathers every comparison that a rule made with one."""

    def __init__(self) -> None:
        """Cut points are read from the plan and the scripts of the state that is asked."""
        self.log: set[Compared] = set()
        self.one = cache(self._one)
        self.whole_line = cache(self._whole_line)

    # ------------------------------------------------------------ numbers

    def cuts(self, question: Question, state: State) -> set[float]:
        """The numbers at which an answer to `question` may change something."""
        plan, fact = state.brief.plan, question.fact
        cuts = {
            number
            for test in state.brief.tests
            if test.fact == fact
            for number in test.values
            if not isinstance(number, str)
        }
        cuts |= {cut.number for cut in pitch_cuts(plan, state.brief.age) if cut.fact == fact}
        if question.kind in {Kind.PAIN_NOW, Kind.WORST_PAIN}:
            cuts |= {FLAG_AT}
            if fact in {"pain in warm-up", "pain in set", "pain before change", "pain now"}:
                cuts |= {plan.pain.in_exercise, END_AT}
            if fact in {"pain now", "pain in warm-up"}:
                cuts |= {plan.pain.to_start, plan.pain.gentle}
            last = state.brief.last
            if fact == "pain now" and last is not None and last.pain_now is not None:
                cuts |= {last.pain_now + UP_BY}
            if fact == "waking pain":
                cuts |= {state.brief.usual_morning, state.brief.usual_morning + UP_BY, ACHE_AT_MOST}
            if fact in {"pain in throwing", "pain now"} and plan.throwing_line is not None:
                cuts |= {plan.pain.in_throwing}
        if fact == "sleep last night":
            cuts |= {dict(plan.changed).get("ready.sleep", SHORT_NIGHT_H)}
        if fact in {"reps in set", "holds in set"} and state.work is not None:
            cuts |= {float(state.work.dose.reps_low)}
            line = state.brief.stations[state.work.place].prescription
            cuts |= {float(reps) for reps in dapre.compared(line)}
        if fact == "sets since" and state.work is not None:
            cuts |= {float(n) for n in range(1, state.work.dose.sets + 1)}
        return cuts

    def numbers(self, question: Question, state: State) -> tuple[float, ...]:
        """Both ends of each class, and both ends of the scale."""
        grid = GRIDS[question.kind]
        found = {question.low, question.high}
        for cut in self.cuts(question, state):
            found |= {cut - grid, cut, cut + grid}
        return tuple(sorted(x for x in found if question.low <= x <= question.high))

    def values(self, question: Question, state: State) -> tuple[Value, ...]:
        """Every class of answer that `question` takes."""
        kind, choices = question.kind, question.choices
        if kind in GRIDS:
            return self.numbers(question, state)
        if kind in {Kind.YES_NO, Kind.SAFETY_YES_NO}:
            return ("no", "yes")
        if kind is Kind.NONE_OR_LIST:
            return (("none",), *((c,) for c in choices), choices)
        if kind is Kind.CHOICES:
            less = tuple(tuple(c for c in choices if c != gone) for gone in choices)
            return tuple(dict.fromkeys((choices, *less, ())))
        if kind is Kind.OWN_WORDS:
            return ("none",)
        return choices

    # ------------------------------------------------------------ one prompt

    def _one(self, fact: str, value: Value, part: str) -> Try:
        heard = Heard(Action.ACCEPT, ((fact, self.opaque(fact, value)),))
        return Try(words_of(value), "value", Typed("-", 0, part), heard, ((fact, value),))

    def opaque(self, fact: str, value: Value) -> Value:
        """The value as the session gets it: numbers can only be compared."""
        if isinstance(value, str | tuple):
            return value
        return Number(value, fact, self.log)  # type: ignore[return-value]

    def renamed(self, question: Question, state: State) -> str:
        """The name under which comparisons are written: pain now after a break is its own fact."""
        if question.fact == "pain now" and state.aside == "since":
            return "pain after a break"
        return question.fact

    def to(self, question: Question, state: State) -> Iterable[Try]:
        """Every value that may be typed at the present question, one line as a whole."""
        if question.kind is not Kind.LINE:
            name = self.renamed(question, state)
            for value in self.values(question, state):
                one = self.one(question.fact, value, "")
                if name != question.fact:
                    heard = Heard(Action.ACCEPT, ((question.fact, self.opaque(name, value)),))
                    one = one._replace(heard=heard)
                yield one
            return
        yield from self.on_a_line(question, state)

    def on_a_line(self, question: Question, state: State) -> Iterable[Try]:
        """One value alone (the rest is asked then), and all together."""
        parts = question.parts
        choices = [self.values(part, state) for part in parts]
        for part, values in zip(parts, choices, strict=True):
            for value in values:
                one = self.one(part.fact, value, "")
                yield one._replace(words=f"{part.fact} {one.words}")
        count = 1
        for values in choices:
            count *= len(values)
        if count > LINE_AT_MOST:
            choices = [self.thinned(p, v, state) for p, v in zip(parts, choices, strict=True)]
        for values in product(*choices):
            pairs = tuple(zip((p.fact for p in parts), values, strict=True))
            yield self.whole_line(pairs)

    def _whole_line(self, pairs: tuple[tuple[str, Value], ...]) -> Try:
        heard = tuple((fact, self.opaque(fact, value)) for fact, value in pairs)
        words = ", ".join(f"{fact} {words_of(value)}" for fact, value in pairs)
        return Try(words, "value", Typed("-"), Heard(Action.ACCEPT, heard), pairs)

    def thinned(
        self, question: Question, values: tuple[Value, ...], state: State
    ) -> tuple[Value, ...]:
        """One value a class, where all ends together would be too many."""
        if question.kind not in GRIDS:
            return values
        cuts = sorted(self.cuts(question, state))
        kept: dict[tuple[bool, ...], Value] = {}
        for value in values:
            if not isinstance(value, str | tuple):
                kept[tuple(x for c in cuts for x in (value > c, value >= c))] = value
        return tuple(kept.values())


UNCLEAR: Final = Try("(not understood)", "unclear", Typed("-"), Heard(Action.ASK_AGAIN))
STOP: Final = Try("stop", "stop", Typed("stop"), Heard(Action.ACCEPT, command=Command.STOP))
FIX: Final = Try("fix", "fix", Typed("fix"), Heard(Action.ACCEPT, command=Command.FIX))
GEAR: Final = Try("gear", "gear", Typed("gear"), Heard(Action.ACCEPT, command=Command.GEAR))
SIGN: Final = Try(
    "my hand is numb", "sign", Typed("-"), Heard(Action.ESCALATE, group=Group.NUMB_TINGLE)
)
MAYBE: Final = Try(
    "maybe a bit numb", "maybe", Typed("-"), Heard(Action.CONFIRM, group=Group.NUMB_TINGLE)
)
TIMER: Final = Try("(the timer ends)", "timer", TimerEnded(), Heard(Action.ACCEPT))
ONWARD: Final = Try("(goes on)", "onward", TimerEnded(), Heard(Action.ACCEPT))
BREAKS: Final = tuple(
    Try(f"(a break of {gap} s)", "break", Resumed(gap), Heard(Action.ACCEPT)) for gap in BREAKS_S
)


def words_of(value: Value) -> str:
    """A value as it would be typed."""
    if isinstance(value, tuple):
        return ", ".join(value) or "none"
    return value if isinstance(value, str) else f"{value:g}"
