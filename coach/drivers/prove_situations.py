"""A state of the session as the numbers by which another checker tells the same situation.

Law: nothing of a situation is left out but what is only said or kept for the diary; what the model
has no number for becomes -1, so that it can be equal to nothing. The session is walked by its own
`take`, breadth first, and no second model is asked here.
"""

from __future__ import annotations

import resource
import time
from collections import deque
from collections.abc import Iterator
from typing import Final, NamedTuple

from coach.drivers.promises import WORK
from coach.drivers.prove_answers import (
    BREAKS,
    GEAR,
    MAYBE,
    SIGN,
    STOP,
    TIMER,
    UNCLEAR,
    Answers,
    Try,
)
from coach.drivers.prove_promela import ENDS, NAMED, QUARTERS, SCALES, Codes, Tried
from coach.drivers.prove_search import merged
from coach.model.decisions import Refusal
from coach.model.flags import Section
from coach.model.heard import Question, Value
from coach.session.brief import Brief
from coach.session.engine import ask_of, start, take
from coach.session.state import State, Work
from coach.session.table import Stage

# What one situation is told by, in this order; `t` is all conditions of the scripts in one number.
TOLD: Final = tuple(
    "stage at miss line unclear under doubts aside about reread quoted t level slept_short morning_up "
    "ache threw pain_up playing no_step waits recovery alone asked listed section number signs "
    "yes_left gone lowered todo exercises left_early place sets low high reach form load "
    "set_no phase hold_no change fault in_a_row felt_due stays_due over since back onward stopped ended".split()
)
PHASES: Final = ("before", "set", "ready", "hold", "report", "rest", "recheck")
CHANGES: Final = ("", "shorter range", "easier version", "lighter", "leave")
SECTIONS: Final = {section.value: number for number, section in enumerate(Section)}
KINDS: Final = {"alone": 1, "open": 2, "weekly": 3}
ASIDES: Final = {"": 0, "read back": 1, "confirm": 2, "since": 3, "gear": 4}
SINCE: Final = ("sets since", "screen", "worse since", "pain now")
ONWARD: Final = ("list", "less", "return", "back", "next")
NOT_TOLD: Final = -1  # a situation holds what the model has no number for

Situation = tuple[int, ...]


# ---------------------------------------------------------------- the session's situations


def situation(state: State, codes: Codes) -> Situation:
    """A state as the model tells it."""
    found = {**of_the_talk(state, codes), **of_the_day(state, codes), **of_the_work(state, codes)}
    return tuple(found[name] for name in TOLD)


def of_the_talk(state: State, codes: Codes) -> dict[str, int]:
    """Stage, prompt, aside and end."""
    known = untold(state) == ()
    kind, _, which = state.section.partition(" ")
    special = {"": 0, "list": 4, "over": 5}
    return {
        "stage": list(Stage).index(state.stage) if known else NOT_TOLD,
        "at": state.at,
        "miss": missing(state),
        "line": int(state.line),
        "unclear": state.unclear,
        "doubts": state.doubts,
        "aside": ASIDES.get(state.aside, NOT_TOLD),
        "under": state.under,
        "about": about(state, codes),
        "since": sum(1 << SINCE.index(fact) for fact in state.since),
        "back": list(Stage).index(Stage(state.back)) if state.back else 0,
        "onward": sum(ONWARD.index(one) + 1 << 3 * n for n, one in enumerate(state.onward)),
        "reread": int(state.reread),
        "quoted": int(state.quoted),
        "section": KINDS[kind] if which else special[kind],
        "number": SECTIONS[which] if which else 0,
        "signs": len(state.flags),
        "stopped": number_in(codes.stops, state.stop) if state.stop[0] else 0,
        "ended": ENDS.index(state.end),
    }


def about(state: State, codes: Codes) -> int:
    """What a short talk is about: the stop of a sign in doubt, else the fact of a strong pain."""
    if not state.sign[1]:
        return 0
    if state.aside != "confirm":
        return codes.facts.index(state.sign[1]) + 1
    group, flag = state.sign
    known = [(code, named) for code, _tier, named in codes.stops]
    return number_in(tuple(known), (flag, group))


def untold(state: State) -> tuple[str, ...]:
    """Fields that the model does not speak of and that are not empty here."""
    beyond = (
        *("fixing", "foreign", "game_yesterday", "game_today", "pitched"),
        *("throws_only", "sore", "thrown"),
    )
    plain = State(state.stage, state.brief)
    return tuple(name for name in beyond if getattr(state, name) != getattr(plain, name))


def number_in(known: tuple[object, ...], one: object) -> int:
    """The place of something from 1; NOT_TOLD where the model does not know it."""
    return known.index(one) + 1 if one in known else NOT_TOLD


MOMENTS_BY_STAGE: Final = {
    Stage.CHECK_IN: "check-in",
    Stage.SCREEN: "screen",
    Stage.AT_HAND: "at hand",
    Stage.WARM_UP: "warm-up",
    Stage.CLOSE: "close",
}


def missing(state: State) -> int:
    """What is still asked at the prompt, a bit for each place from the prompt's first on."""
    named = {
        Stage.WHO: ("plan is mine", "guardian here"),
        Stage.TODAY: ("moves or later",),
        Stage.ENDING: ("stop for today", "what is worse"),
    }.get(state.stage)
    if named is None:
        moment = MOMENTS_BY_STAGE.get(state.stage, "after a set")
        if state.work is not None and state.work.phase == "before":
            moment = "before an exercise"
        named = tuple(step.fact for step in state.brief.items[moment][state.at :])
    places = [named.index(fact) if fact in named else 20 for fact in state.missing]
    return sum(1 << place for place in places)


def mask(sections: tuple[Section, ...]) -> int:
    """Sections as bits."""
    return sum(1 << SECTIONS[section.value] for section in sections)


def of_the_day(state: State, codes: Codes) -> dict[str, int]:
    """The day's facts and lists."""
    home = state.brief.plan.at_home
    return {
        "t": state.truth,
        "level": state.level,
        "slept_short": int(state.short),
        "morning_up": int(state.morning_up),
        "ache": int(state.ache),
        "threw": int(state.threw),
        "pain_up": int(state.pain_up),
        "playing": int(state.playing),
        "no_step": int(state.no_step),
        "waits": int(state.order == "after throwing"),
        "recovery": int(state.recovery),
        "alone": mask(state.alone),
        "asked": mask(state.asked),
        "listed": mask(state.listed),
        "yes_left": mask(state.yes_left),
        "gone": sum(1 << home.index(thing) for thing in state.gone),
        "lowered": sum(1 << codes.pairs.index(pair) for pair in state.lowered),
        "todo": sum(1 << place for place in state.todo),
        "exercises": state.exercises_today,
        "left_early": state.left_early,
    }


OF_WORK: Final = tuple(
    "place sets low high reach form load set_no phase hold_no change fault in_a_row felt_due "
    "stays_due over".split()
)


def of_the_work(state: State, codes: Codes) -> dict[str, int]:
    """The exercise under way."""
    work = state.work
    if work is None:
        return dict.fromkeys(OF_WORK, 0)
    dose, made = work.dose, state.brief.stations[work.place].exercise
    versions = tuple(version.name for version in made.versions)
    return {
        "place": work.place + 1 if plain_work(work) else NOT_TOLD,
        "sets": dose.sets,
        "low": dose.reps_low,
        "high": dose.reps_high,
        "reach": dose.range_index,
        "form": number_in(versions, dose.version) if dose.version else 0,
        "load": number_in(codes.loads[work.place], dose.load),
        "set_no": work.set_number,
        "phase": PHASES.index(work.phase) + 1,
        "hold_no": work.hold_number,
        "change": CHANGES.index(work.change),
        "fault": work.fault + 1,
        "in_a_row": work.fault_run,
        "felt_due": int(work.felt_due),
        "stays_due": int(work.stays_due),
        "over": int(work.over),
    }


def plain_work(work: Work) -> bool:
    """Whether no table drives the work, of which the model does not speak."""
    return not (work.table or work.later or work.drives or work.drove)


# ---------------------------------------------------------------- steps

WHAT: Final = {
    "value": 1,
    "whole": 2,
    "unclear": 3,
    "sign": 4,
    "stop": 5,
    "timer": 6,
    "gear": 7,
    "break": 8,
    "maybe": 10,
}
VALUE: Final = WHAT["value"]
PLACES: Final = 1 << 32  # more situations than anybody can hold


class Walked(NamedTuple):
    """One explorer's situations, numbered from 1 in their order, and its steps between them.

    A step is packed by `step`. `trouble` says why this is not all, or ''.
    """

    rows: tuple[Situation, ...]
    steps: frozenset[int]
    seconds: float
    mb: float
    trouble: str = ""


def step(before: int, what: int, which: int, said: int, after: int) -> int:
    """A step as one number: situation, what happened, the question, the answer, situation."""
    return key_of(before, what, which, said) * PLACES + after


def key_of(before: int, what: int, which: int, said: int) -> int:
    """A step without where it leads."""
    return ((before << 4 | what) << 12 | which) << 16 | said


def unpacked(one: int) -> tuple[int, int, int, int, int]:
    """The parts of a step."""
    key, after = divmod(one, PLACES)
    return key >> 32, key >> 28 & 15, key >> 16 & 4095, key & 65535, after


class Labels:
    """What happened at a prompt, in the model's numbers."""

    def __init__(self, brief: Brief, codes: Codes) -> None:
        """A scale that nobody reads is one answer to the model."""
        read = {test.fact for test in brief.tests}
        self.brief, self.codes = brief, codes
        self.unread = {fact for fact in SCALES if fact not in read}
        steps = (step for items in brief.items.values() for step in items)
        self.own = {s.fact: s.answers for s in steps if s.kind == "ask also"}

    def of(self, state: State, one: Try) -> tuple[int, int, int]:
        """What, which question (0 where the prompt is no script's), and the answer."""
        if one.kind != "value":
            return WHAT[one.kind], 0, int(one is BREAKS[1])
        if len(one.values) > 1:
            return WHAT["whole"], 0, 0
        fact, value = one.values[0]
        inside = state.work is not None and state.work.phase == "ready"
        screened = state.stage is Stage.SCREEN and state.section != "over"
        if state.aside or inside or screened or state.stage is Stage.ENDING:
            return VALUE, 0, self.aside_from_scripts(state, fact, value)
        return VALUE, self.codes.facts.index(fact) + 1, self.answer(state, fact, value)

    def aside_from_scripts(self, state: State, fact: str, value: Value) -> int:
        """Yes and no, a number after a break, what is here, sections, and how the day ends."""
        if isinstance(value, float | int):
            return int(value * QUARTERS)
        if fact == "at hand":
            return self.answer(state, fact, value)
        if isinstance(value, tuple):
            return sum(1 << int(one) - 1 for one in value if one != "none")
        names = {"stop for today": ("today", "worse"), "go": ("go",)}.get(fact, ("no", "yes"))
        return names.index(str(value))

    def answer(self, state: State, fact: str, value: Value) -> int:
        """An answer to a question of the scripts."""
        home = self.brief.plan.at_home
        if isinstance(value, tuple):
            return sum(1 << n for n, thing in enumerate(home) if thing not in value)
        if fact in self.unread or fact == "own words":
            return 0
        if isinstance(value, str):
            return self.name(state, fact, value)
        return int(value * QUARTERS)

    def name(self, state: State, fact: str, value: str) -> int:
        """A name by its place among those that fit."""
        own = self.own.get(fact)
        if own is not None and own.kind == "own words":
            return 0
        if own is not None and own.choices:
            return own.choices.index(value)
        if state.work is not None and fact in {"felt in set", "which version"}:
            made = self.brief.stations[state.work.place].exercise
            names = [one.name for one in (made.faults if fact == "felt in set" else made.versions)]
            return {"fine": 0, "something else": 99}.get(value) or (
                names.index(value) + 1 if value in names else 0
            )
        return NAMED.get(fact, ("no", "yes")).index(value)


class Fewer(Answers):
    """The answers of the search, of some facts only those that are tried."""

    def __init__(self, tried: Tried) -> None:
        """In an aside every answer is tried."""
        super().__init__()
        self.only = dict(tried.only)

    def values(self, question: Question, state: State) -> tuple[Value, ...]:
        """Every class of answer that is tried."""
        only = None if state.aside else self.only.get(question.fact)
        return super().values(question, state) if only is None else only


def tries_at(state: State, day: Answers, kinds: tuple[str, ...]) -> Iterator[Try]:
    """What may happen at a prompt, of the kinds that the model speaks of."""
    asked = ask_of(state)
    if asked is None:
        yield TIMER
    else:
        yield from day.to(asked.question, state)
    at_work = state.aside == "" and state.stage in WORK
    for one in (UNCLEAR, STOP, SIGN, MAYBE, *((GEAR, *BREAKS) if at_work else ())):
        if one.kind in kinds:
            yield one


def session_walk(brief: Brief, codes: Codes, tried: Tried, until: float | None = None) -> Walked:
    """Every situation and step of the session itself; `until` is an instant of `time.monotonic`."""
    began, day, labels = time.monotonic(), Fewer(tried), Labels(brief, codes)
    first = start(brief)
    found, todo, trouble = {merged(first): 1}, deque([(1, first)]), ""
    rows, steps = [situation(first, codes)], set()
    while todo and not trouble:
        before, state = todo.popleft()
        if until is not None and time.monotonic() > until:
            trouble = "the session's own walk was cut short"
        for one in () if state.end else tries_at(state, day, tried.kinds):
            after = take(state, one.event, one.heard)
            if isinstance(after, Refusal):
                raise TypeError(after.why)
            key = merged(after)
            number = found.setdefault(key, len(rows) + 1)
            if number > len(rows):
                rows.append(situation(after, codes))
                todo.append((number, after))
            steps.add(step(before, *labels.of(state, one), number))
    mb = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    return Walked(tuple(rows), frozenset(steps), time.monotonic() - began, mb, trouble)
