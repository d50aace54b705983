"""The check-in: pain, sleep and throwing, each turned into a decision when it is heard.

Law: an answer only ever makes the day more careful or leaves it as it is; the one that does not is
where a light morning ache was, asked at once and never again. What is missing is asked;
what stays unclear counts as the worse end. The decisions themselves are made in `coach.rules`.
"""

from __future__ import annotations

from typing import Final

from coach.model.decisions import Decision, Refusal
from coach.model.turns import Ask, Line
from coach.rules import pain as pain_rules
from coach.rules import readiness
from coach.session import pitching, scripts
from coach.session.brief import Brief
from coach.session.questions import (
    LINE_PARTS,
    QUESTIONS,
    choice_lines,
    coach_question,
    gathered,
    is_flag_name,
    single,
)
from coach.session.state import Happening, State
from coach.session.stopping import stop
from coach.session.table import Stage
from coach.session.today import NO_WORK

THROWING_FACTS: Final = ("throwing yesterday", "throwing today", "throwing tomorrow")
# The ears' names for throwing as the scripts' names; what is between two kinds counts as the harder.
# Common practice, no published source.
THROWN_AS: Final = {
    "off": "none",
    "catch": "light",
    "long_toss": "hard practice",
    "practice": "hard practice",
}
HARD: Final = ("hard practice", "bullpen", "game")
LEVELS: Final = {"all": 0, "gentle": 1, "nothing": NO_WORK}
ORDERS: Final = {"as usual": 0, "after throwing": 1}


def due(state: State, fact: str) -> bool:
    """Which of the coach's check-in questions are asked today."""
    if fact == "worst pain":
        return state.brief.threw_last
    if fact == "waking ache":
        return state.ache
    if fact == "against usual":
        return state.morning_up
    if fact == "thrown already":
        return state.playing
    if fact in pitching.FACTS:
        return pitching.due(state, fact)
    if fact == "throwing tomorrow":
        return state.brief.wants_up or may_be_thrown(state.brief)
    return True


def may_be_thrown(brief: Brief) -> bool:
    """Whether the plan clears throwing as of today."""
    return not isinstance(brief.cleared, Refusal)


def ask(state: State) -> Ask:
    """The check-in's present prompt."""
    if state.line:
        return gathered("check-in", state.missing, line_label(state))
    fact = state.missing[0]
    step = scripts.own_step(state, "check-in", fact)
    if step is not None and (step.kind == "ask also" or is_flag_name(fact)):
        return scripts.script_ask(state, step, fact)
    question = coach_question(fact, step.text if step else "")
    return single(fact, question, QUESTIONS[fact].label)


def line_label(state: State) -> str:
    """The label of the gathered line."""
    first_is_throwing = state.missing[0].startswith("throwing")
    return "Throwing:" if first_is_throwing and state.brief.first_day else "Check-in:"


def lines(state: State) -> tuple[Line, ...]:
    """What is said before the present prompt."""
    if state.line:
        names = ", ".join(LINE_PARTS[fact] for fact in state.missing)
        if state.brief.first_day:
            return (
                Line("say", "On one line: what did you throw yesterday, and what today?"),
                Line("say", "None, light, hard practice, bullpen or game."),
            )
        return (Line("say", f"Type on one line: {names}."),)
    present = ask(state)
    return (Line("say", present.question.ask), *choice_lines(present))


# ---------------------------------------------------------------- takers, one a fact


def take_pain_now(state: State, pain: float) -> State:
    """Pain now decides what may be started, and whether pain rose by 2 since last time."""
    if pain_rules.is_flag(pain):
        return read_back(state, "pain now")
    decision = pain_rules.to_start(pain, state.brief.plan.pain)
    up = pain_rules.two_up(pain, state.brief.pain_last)
    return with_reason(
        state._replace(
            level=max(state.level, LEVELS[decision.outcome]),
            pain_up=state.pain_up or up,
        ),
        decision,
        decision.outcome != "all",
    )


def take_worst_pain(state: State, pain: float) -> State:
    """The worst pain since last time; 8 or more is a warning sign."""
    return read_back(state, "worst pain") if pain_rules.is_flag(pain) else state


def take_waking_pain(state: State, pain: float) -> State:
    """Pain on waking against the usual morning."""
    if pain_rules.is_flag(pain):
        return read_back(state, "waking pain")
    decision = pain_rules.next_morning(pain, state.brief.usual_morning, state.brief.sore_last)
    if decision.outcome == "contact":
        return stop(state, "B02")
    up = decision.outcome == "up"
    state = state._replace(morning_up=state.morning_up or up)
    if up and ache_is_asked(state):
        state = state._replace(ache=readiness.may_be_muscle_ache(pain, state.brief.idle_days))
    if up and not state.ache:
        state = noted_above_usual(state, decision)
    return with_reason(state, decision, up)


def ache_is_asked(state: State) -> bool:
    """Whether the question of where it aches still lies ahead; a late correction brings it not."""
    ahead = state.brief.items["check-in"][state.at :]
    return state.stage is Stage.CHECK_IN and any(step.fact == "waking ache" for step in ahead)


def noted_above_usual(state: State, decision: Decision) -> State:
    """pain.next_morning: a flare goes to the visit, with its reason."""
    note = Happening("note", "Waking pain above usual.", decision)
    return state._replace(happened=(*state.happened, note))


def take_ache(state: State, where: str) -> State:
    """ready.muscle_ache: light, short muscle ache is no step down and no step up; else a flare."""
    if not state.ache:  # a correction has settled it meanwhile
        return state
    decision = readiness.muscle_ache(where)
    above = tuple(d for d in state.reasons if d.rule == "pain.next_morning")
    state = state._replace(ache=False)
    if decision.outcome == "flare":
        for flare in above:
            state = noted_above_usual(state, flare)
        return with_reason(state, decision, True)
    kept = tuple(d for d in state.reasons if d not in above)
    note = Happening("note", "Muscle ache on waking, above usual.", decision)
    state = state._replace(morning_up=False, no_step=True, reasons=kept)
    return with_reason(state._replace(happened=(*state.happened, note)), decision, True)


def take_against_usual(state: State, answer: str) -> State:
    """A worse morning in the athlete's own words goes to the visit."""
    if answer != "worse":
        return state
    note = Happening("note", "Says this morning was worse than usual.")
    return state._replace(happened=(*state.happened, note))


def take_sleep(state: State, hours: float) -> State:
    """A short night lowers the sets, never the load; it locks nothing."""
    decision = readiness.short_sleep(hours, state.brief.plan)
    short = decision.outcome == "short"
    return with_reason(state._replace(short=state.short or short), decision, short)


def take_yesterday(state: State, kind: str) -> State:
    """Throwing since the last session opens screen sections; a hard outing the recovery list."""
    decision = readiness.throwing_day("none", already=False, yesterday_kind=kind)
    recovery = decision.outcome == "recovery list"
    return with_reason(
        state._replace(
            threw=state.threw or kind != "none",
            recovery=state.recovery or recovery,
            game_yesterday=counts_pitches(state, kind),
        ),
        decision,
        recovery,
    )


def counts_pitches(state: State, kind: str) -> bool:
    """Whether a game was said by somebody whose plan counts pitches in games."""
    return kind == "game" and pitching.line_of(state.brief) is not None


def take_today(state: State, kind: str) -> State:
    """Throwing planned or done today; a hard kind asks whether it is over."""
    return state._replace(playing=kind in HARD, game_today=counts_pitches(state, kind))


def take_already(state: State, answer: str) -> State:
    """Not over yet: work with weight waits until after it."""
    over = answer == "yes"
    decision = readiness.throwing_day("game", already=over, yesterday_kind="none")
    waits = decision.outcome == "after throwing"
    state = state._replace(
        order="after throwing" if waits else state.order,
        threw=state.threw or over,
        game_today=state.game_today and over,
    )
    return with_reason(state, decision, waits)


def take_tomorrow(state: State, kind: str) -> State:
    """ready.throwing_day: the day before a match brings no new step."""
    return state._replace(no_step=state.no_step or kind in HARD)


def what_stays(state: State) -> State:
    """What the day costs, without what only the screen asks; dropped once the screen is over.

    Pain up by 2 leaves `no_step`, since nothing goes up on such a day. Throws of the sport leave
    `threw`, where the plan clears throws of its own, for they take their place.
    """
    other = state.threw or state.playing or state.recovery or state.order != "as usual"
    cleared = may_be_thrown(state.brief)
    return state._replace(
        asked=(),
        threw=cleared and other,
        playing=False,
        pain_up=False,
        no_step=state.no_step or state.pain_up,
    )


def with_reason(state: State, decision: Decision, told: bool) -> State:
    """Keep a decision that changed the day, so that `why` can answer from it."""
    if not told or decision in state.reasons:
        return state
    return state._replace(reasons=(*state.reasons, decision))


def read_back(state: State, fact: str) -> State:
    """A pain of 8 or more is read back once; denied once already, it stops the day."""
    if state.reread:
        return stop(state, "S09", "night_pain_unrelenting")
    return state._replace(aside="read back", sign=("", fact), unclear=0, line=False)


TAKERS: Final = {
    "pain now": take_pain_now,
    "worst pain": take_worst_pain,
    "waking pain": take_waking_pain,
    "waking ache": take_ache,
    "against usual": take_against_usual,
    "sleep last night": take_sleep,
    "throwing yesterday": take_yesterday,
    "throwing today": take_today,
    "thrown already": take_already,
    "throwing tomorrow": take_tomorrow,
    **pitching.TAKERS,
}
