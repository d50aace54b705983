"""The close of a day: pain after, effort, minutes, own words; then what was done and what is next.

Law: a strong pain at the close is a warning sign like any other. No praise, no score.
"""

from __future__ import annotations

from datetime import timedelta
from typing import Final

from coach.model.turns import Ask, Line
from coach.rules import pain as pain_rules
from coach.session import scripts
from coach.session.checking_in import read_back
from coach.session.questions import (
    QUESTIONS,
    choice_lines,
    coach_question,
    gathered,
    is_flag_name,
    single,
)
from coach.session.state import Happening, State
from coach.session.stopping import after_the_work, clinician_name, day_words


def so_far(state: State) -> State:
    """On to the next closing question, or to the end of the day."""
    state, over = scripts.settle(state, "close", lambda _s, _f: True)
    if not over or state.end:
        return state
    closed = after_the_work(state, "closed")
    return closed._replace(told=state.told, reasons=state.reasons, doubts=0, end="done")


def ask(state: State) -> Ask:
    """The close's present prompt."""
    if state.line:
        return gathered("close", state.missing, "Pain now, effort and minutes:")
    fact = state.missing[0]
    step = scripts.own_step(state, "close", fact)
    if step is not None and (step.kind == "ask also" or is_flag_name(fact)):
        return scripts.script_ask(state, step, fact)
    question = coach_question(fact, step.text if step else "")
    if fact == "own words":
        name = clinician_name(state.brief.plan.calls)
        question = question._replace(ask=question.ask.replace("{clinician}", name))
    return single(fact, question, QUESTIONS[fact].label)


def lines(state: State) -> tuple[Line, ...]:
    """What is said before the present prompt."""
    if state.line:
        return (
            Line("say", "The work is over. On one line: pain now (0 to 10),"),
            Line("say", "effort (0 to 10) and minutes."),
        )
    present = ask(state)
    return (Line("say", present.question.ask), *choice_lines(present))


def take_pain_after(state: State, pain: float) -> State:
    """Pain at the close; 8 or more is a warning sign."""
    return read_back(state, "pain after") if pain_rules.is_flag(pain) else state


def unchanged(state: State, _value: object) -> State:
    """Effort, minutes and own words are kept by the diary; no rule of today reads them."""
    return state


def ended_by_choice(state: State) -> State:
    """The day over because the athlete said so."""
    return after_the_work(state, "for today")._replace(
        doubts=0,
        end="by choice",
        happened=(*state.happened, Happening("end", "by choice")),
    )


def what_is_next(state: State) -> Line:
    """When the next session may be: the plan's shortest spacing from today."""
    brief = state.brief
    day = brief.today + timedelta(days=brief.apart_days)
    if day.isoformat() > brief.plan.review_by:
        name = clinician_name(brief.plan.calls)
        return Line("say", f"Your plan is due for review. See {name} before the next session.")
    return Line("say", f"Next session: {day_words(day)} or later.")


TAKERS: Final = {
    "pain after": take_pain_after,
    "effort": unchanged,
    "minutes": unchanged,
    "own words": unchanged,
}
