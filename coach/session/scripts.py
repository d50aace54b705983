"""Walking a moment's script: what is said, what is asked next, and what an effect lowers.

Law: the place only rises. An effect only lowers or stops, and lasts the day. Nothing here can
raise a dose, skip a coach's question, or say a stop in other words.
"""

from __future__ import annotations

from collections.abc import Callable

from coach.model.decisions import Basis, Decision
from coach.model.program import Step
from coach.model.turns import Ask, Line
from coach.session.moments import may_gather
from coach.session.questions import (
    flag_question,
    is_flag_name,
    own_label,
    own_question,
    single,
)
from coach.session.state import Happening, State
from coach.session.stopping import stop_by_script

Due = Callable[[State, str], bool]


def settle(state: State, moment: str, due: Due) -> tuple[State, bool]:
    """Walk to the next question of `moment`; True = the moment is over.

    `due` says whether a coach's question is asked today.
    """
    items = state.brief.items[moment]
    while state.at < len(items) and not state.end:
        item = items[state.at]
        if not all(state.truth >> bit & 1 for bit in item.when):
            state = state._replace(at=state.at + 1)
            continue
        if item.kind in {"ask", "ask also"}:
            group = group_at(state, moment)
            facts = tuple(step.fact for step in group if asked_today(state, step, due))
            if facts:
                return state._replace(missing=facts, line=len(facts) > 1, unclear=0), False
            state = state._replace(at=state.at + len(group))
            continue
        state = said_or_done(state, item)._replace(at=state.at + 1)
    return state, True


def group_at(state: State, moment: str) -> tuple[Step, ...]:
    """The step at the present place with those that share its line."""
    items = state.brief.items[moment]
    first = items[state.at]
    if not may_gather(moment, first):
        return (first,)
    group = [first]
    for step in items[state.at + 1 :]:
        if not may_gather(moment, step):
            break
        group.append(step)
    if moment == "check-in" and state.brief.first_day:
        throwing = [s for s in group if s.fact.startswith("throwing")]
        return tuple(throwing) if first in throwing else (first,)
    return tuple(group)


def past_the_prompt(state: State, moment: str) -> State:
    """The place right after the present prompt."""
    return state._replace(at=state.at + len(group_at(state, moment)), unclear=0, reread=False)


def asked_today(state: State, step: Step, due: Due) -> bool:
    """Whether a question is asked today: own ones by `every`, the coach's by their due rule."""
    if step.kind == "ask also":
        return step.fact not in state.brief.spared
    return is_flag_name(step.fact) or due(state, step.fact)


def own_step(state: State, moment: str, fact: str) -> Step | None:
    """The step of this moment that asks `fact`, at the present place."""
    for step in state.brief.items[moment][state.at :]:
        if step.fact == fact:
            return step
    return None


def step_asking(state: State, moment: str, fact: str) -> Step:
    """As `own_step` where there must be one; raises StopIteration where a script lost it."""
    return next(step for step in state.brief.items[moment][state.at :] if step.fact == fact)


def script_ask(state: State, step: Step, name: str) -> Ask:
    """The ask of a clinician's own question, or of a warning sign asked again by its name."""
    if step.kind == "ask also":
        return single(name, own_question(step), own_label(step.answers))
    return single(name, flag_question(step.fact, state.brief), "Yes or no:", safety=True)


def said_or_done(state: State, item: Step) -> State:
    """One line that is no question: a sentence, a note, an effect, a stop."""
    if item.kind == "tell":
        return state._replace(told=(*state.told, Line("say", item.text)))
    if item.kind == "note":
        return state._replace(happened=(*state.happened, Happening("note", item.text)))
    decision = Decision(
        "plan.script",
        item.effect,
        f"Your program says so. {item.place.file}, line {item.place.line}.",
        item.place,
        Basis.PLAN,
        "the program's script",
    )
    if item.kind == "stop":
        return stop_by_script(state, item.target or item.effect, decision)
    pair = (item.effect, item.target)
    if pair in state.lowered:
        return state
    return state._replace(
        lowered=(*state.lowered, pair),
        reasons=(*state.reasons, decision),
        happened=(*state.happened, Happening("effect", " ".join(pair), decision)),
    )


def know(state: State, fact: str, value: str | float) -> State:
    """Keep what the scripts' conditions say of a value, not the value."""
    every, holds = state.brief.bits_true_for(fact, value)
    return state._replace(truth=state.truth & ~every | holds) if every else state


def know_at_worst(state: State, fact: str) -> State:
    """An answer that stayed unclear opens every branch about it that holds an effect."""
    every, holds = state.brief.bits_at_worst(fact)
    return state._replace(truth=state.truth & ~every | holds) if every else state
