"""The words that work at every prompt: why, help, again, left, more, fix, gear.

Law: none of them moves the day. `why` answers from the decision that was made, never from a second
explanation; where nothing was decided it says which plan line is being carried out.
"""

from __future__ import annotations

from coach.model.decisions import Basis, Decision
from coach.model.heard import Command, Kind
from coach.model.turns import Ask, Line
from coach.rules import limits, picking
from coach.rules.readiness import warm_up_first
from coach.session import asides, training
from coach.session.state import State
from coach.session.stopping import clinician_name
from coach.session.table import Stage
from coach.session.today import dose_today

MOST_MORE = 4  # times 30 s that a rest may be lengthened in one go; set here
WHY_SHOWN = 2  # decisions that fit four lines


def told(state: State, command: Command) -> State:
    """A command that only says something; the question stays."""
    if command is Command.AGAIN:
        return state
    if command is Command.LEFT:
        lines: tuple[Line, ...] = (Line("say", what_is_left(state)),)
    elif command is Command.WHY:
        lines = why_lines(state, code=False)
    elif command is Command.WHY_CODE:
        lines = why_lines(state, code=True)
    else:
        lines = help_lines()
    return state._replace(told=lines, repeat=True)


def help_lines() -> tuple[Line, ...]:
    """What may be typed besides the answer."""
    return (
        Line("say", "Type the answer, or one of these words."),
        Line("say", "why: the reason. fix: change an answer. again: hear it again."),
        Line("say", "left: what is left. gear: something is not here."),
        Line("say", "pause: a break. stop: end for today."),
    )


def why_lines(state: State, *, code: bool) -> tuple[Line, ...]:
    """At most four lines: what was decided, plan line, where the rule is from, who can change it."""
    decisions = reasons_here(state)[-WHY_SHOWN:]
    if code:
        return tuple(
            Line("say", f"Rule {d.rule}{plan_line(d)}. Source: {d.source}.") for d in decisions
        )
    lines = [Line("say", f"{d.why}{plan_line_sentence(d)}") for d in decisions]
    lines.append(Line("say", decisions[-1].basis.value))
    lines.append(Line("say", f"{clinician_name(state.brief.plan.calls)} can change your plan."))
    return tuple(lines)


def plan_line(decision: Decision) -> str:
    """`, plan line 52`, or nothing."""
    return f", plan line {decision.place.line}" if decision.place else ""


def plan_line_sentence(decision: Decision) -> str:
    """` Plan line 52.`, or nothing."""
    if decision.place is None or "line" in decision.why:
        return ""
    return f" Plan line {decision.place.line}."


def reasons_here(state: State) -> tuple[Decision, ...]:
    """The decisions that stand behind the present prompt; there is always one."""
    if state.stage is Stage.CHECK_IN or state.aside in {"fix", "gear", "since"}:
        return (
            *state.reasons,
            ours("checkin.line", "I ask this so that today's work fits you.", state),
        )
    if state.stage is Stage.SCREEN or state.aside in {"confirm", "read back"}:
        return (ours("stop.screen", "I ask for warning signs before any work.", state),)
    if state.stage is Stage.WHO:
        return (ours("plan.life", "I check that this is your plan, and who is here.", state),)
    if state.missing == ("which version",) and state.work is not None:
        return (picking.why_pick(training.station_of(state.work, state).exercise),)
    if state.because or state.reasons:
        return state.because or state.reasons
    if state.stage is Stage.WARM_UP:
        return (warm_up_first(state.brief.program.warm_up),)
    return (from_the_plan(state),)


def ours(rule: str, why: str, state: State) -> Decision:
    """A reason of the coach's own, to be signed."""
    place = state.brief.plan.calls.place if rule == "stop.screen" else None
    return Decision(rule, "asked", why, place, Basis.OURS, "set here, to be signed by a clinician")


def from_the_plan(state: State) -> Decision:
    """dose.from_plan: the line of the plan that is being carried out."""
    work = state.work
    if work is None:
        place = state.brief.plan.limits.place
        return Decision(
            "dose.from_plan",
            "as written",
            "Your plan sets all of this.",
            place,
            Basis.PLAN,
            "the plan",
        )
    station = training.station_of(work, state)
    return Decision(
        "dose.from_plan",
        "as written",
        "The set is as your plan has it.",
        station.prescription.place,
        Basis.PLAN,
        "the plan",
    )


def what_is_left(state: State) -> str:
    """`2 exercises, 5 sets, about 10 minutes.`"""
    brief = state.brief
    doses = [dose_today(state, place) for place in state.todo]
    sets = sum(dose.sets for dose in doses)
    count = len(doses)
    work = state.work
    if work is not None:
        count += 1
        rest = work.dose._replace(sets=max(work.dose.sets - work.set_number + 1, 1))
        doses.append(rest)
        sets += rest.sets
    if not brief.stations or state.stage in {Stage.WHO, Stage.CHECK_IN, Stage.SCREEN}:
        return "Today's list comes after these questions."
    if not count:
        return "No exercise is left today."
    minutes = max(round(limits.minutes_of(tuple(doses))), 1)
    exercises = "exercise" if count == 1 else "exercises"
    noun = "set" if sets == 1 else "sets"
    return f"{count} {exercises}, {sets} {noun}, about {minutes} minutes."


def more(state: State) -> State:
    """A longer rest, 30 s each time."""
    work = state.work
    if work is None or work.phase != "rest":
        return state._replace(told=(Line("say", "There is no rest to lengthen now."),), repeat=True)
    if work.more >= MOST_MORE:
        words = "Type pause for a longer break."
        return state._replace(told=(Line("say", words),), repeat=True)
    return state._replace(work=work._replace(more=work.more + 1), repeat=True)


def fix(state: State) -> State:
    """Which answer to change, where one was given."""
    no_use = state.aside or state.back or state.stage in {Stage.WHO, Stage.ENDING}
    if no_use or not asides.fixable(state):
        words = "There is nothing to change here yet. A stop cannot be changed."
        return state._replace(told=(Line("say", words),), repeat=True)
    return state._replace(aside="fix", fixing="", unclear=0)


def gear(state: State) -> State:
    """Something needed is not here."""
    early = state.stage in {
        Stage.WHO,
        Stage.CHECK_IN,
        Stage.SCREEN,
        Stage.ENDING,
        Stage.CLOSE,
        Stage.THROWING,
    }
    if early or state.aside or not state.brief.plan.at_home:
        words = "Type gear once today's list is shown."
        return state._replace(told=(Line("say", words),), repeat=True)
    return state._replace(aside="gear", unclear=0)


HOW_TO = {
    Kind.PAIN_NOW: "I did not get a number.",
    Kind.WORST_PAIN: "I did not get a number.",
    Kind.SLEEP_HOURS: "I did not get the hours.",
    Kind.COUNT: "I did not get a number.",
    Kind.COUNT_MOST: "I need one number.",
    Kind.EFFORT: "I did not get a number.",
    Kind.NUMBER: "I did not get a number.",
    Kind.YES_NO: "I did not get a yes or a no.",
    Kind.SAFETY_YES_NO: "I need the whole word: yes or no.",
    Kind.NONE_OR_LIST: "I need the word none, or the numbers in the list.",
    Kind.WORD: "I did not get that.",
}


def not_heard(asked: Ask) -> tuple[Line, ...]:
    """Not heard is our fault; what works is shown."""
    question = asked.question
    words = HOW_TO.get(question.kind, "I did not get that.")
    lines = [Line("say", words)]
    if question.choices and question.kind in {
        Kind.CHOICE,
        Kind.THROWING,
        Kind.SET_FEEL,
    }:
        choices = ", ".join(f"{n} {c}" for n, c in enumerate(question.choices, 1))
        lines.append(Line("say", f"It can be: {choices}."))
    return tuple(lines)
