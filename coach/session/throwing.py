"""The throwing line of a day: may it be, which step, soreness at its moments, and what follows.

Law: no line without the plan's dated clearance, and none on a sore, gentle, recovery or match day.
Soreness and the plan's ceiling on throwing decide, the more careful of the two; what is not clear
counts as sore. The step shown is a row of the table that the plan names, never more than the
plan's last step. A throwing day that was cut off counts as thrown.
"""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Final

from coach.model.decisions import Basis, Decision, Refusal
from coach.model.ladders import ThrowDay, ThrowState
from coach.model.turns import Line
from coach.rules import pain as pain_rules
from coach.rules import throwing as rules
from coach.session import pitching, scripts
from coach.session.checking_in import read_back
from coach.session.ladders import gap_since, throws_begin_anew
from coach.session.machine import follow
from coach.session.state import Happening, State
from coach.session.stopping import THROWING_PAIN, TWICE_DOWN, stop
from coach.session.table import Stage

if TYPE_CHECKING:
    from collections.abc import Callable

    from coach.model.heard import Value
    from coach.model.program import ThrowingLine
    from coach.session.brief import Brief

ORDER: Final = (
    "sore an hour after",
    "sore next day",
    "arm tired",
    "sore in warm-up",
    "sore after throw 15",
    "sore at the end",
    "throws done",
)
# After any soreness on throwing: is it of the kind that the clinician must see.
PLACE: Final = "sharp or deep"
# Before the first throw, and after any soreness that is not of that kind: against the plan's ceiling.
PAIN: Final = "pain in throwing"
ONE_DAY: Final = timedelta(days=1)
OWN: Final = "own questions"  # the part of the line in which the script's own questions come
BITS: Final = {
    "sore an hour after": 1,
    "sore next day": 2,
    "sore in warm-up": 4,
    "sore after throw 15": 8,
    "sore at the end": 16,
    PAIN: 32,
}


def cleared_today(brief: Brief) -> ThrowingLine | None:
    """The plan's clearance to throw, or None."""
    return None if isinstance(brief.cleared, Refusal) else brief.cleared


def last_throw(brief: Brief) -> ThrowDay | None:
    """The last throwing day of this program."""
    return next((r.threw for r in brief.history.records if r.threw is not None), None)


def standing(brief: Brief, cleared: ThrowingLine) -> ThrowState:
    """Where the throwing steps stand today.

    Under a new plan version they go on where the clearance and the step due are the same, and begin
    at its own first step where they are not. Days off lower them; never over the last step. A day
    on which soreness allowed no throw is a day off.
    """
    with_line = [r for r in brief.history.records if r.threw is not None]
    last = with_line[0].threw if with_line else None
    if last is None or throws_begin_anew(brief, with_line[0].plan_version, last):
        return ThrowState(cleared.from_step)
    thrown = next((r.day for r in with_line if r.threw and r.threw.step), with_line[-1].day)
    return after_days_off(last.state, gap_since(brief, thrown).outcome, cleared)


def after_days_off(state: ThrowState, gap: str, cleared: ThrowingLine) -> ThrowState:
    """layoff.gap on the throwing steps: one step down, or the first; never over the last.

    More days off never leave a higher step than fewer.
    """
    planned = min(state.planned, cleared.most_step)
    lower = max(rules.FIRST_STEP, planned - 1)
    if gap == "one step down":
        return ThrowState(lower, state.last_done)
    if gap in {"first step", "contact"}:
        return ThrowState(min(lower, cleared.from_step))
    return state._replace(planned=planned)


def may_throw(state: State) -> Decision | None:
    """Whether the throwing line comes today; None where the plan does not clear throwing."""
    brief = state.brief
    cleared = brief.cleared
    if brief.plan.throwing_line is None or ("today", "no throwing") in state.lowered:
        return None
    if isinstance(cleared, Refusal):
        return not_cleared(brief, cleared)
    sore = bool(state.level or state.morning_up or state.left_early)
    arm = rules.tired_arm(tired=False, painful=sore)
    if arm.outcome != "may":
        return arm
    rest = pitching.resting(state)
    if rest is not None:
        return rest
    if state.threw or state.playing or state.recovery or state.order != "as usual":
        return had_its_throws(brief)
    if any(r.day >= brief.today.isoformat() and r.ended != "none" for r in brief.history.records):
        return once_a_day(brief)
    last = last_throw(brief)
    by_class = 1
    if cleared.class_name:
        schedule = rules.schedule_of(cleared.class_name)
        found = rules.class_days(schedule, standing(brief, cleared).planned)
        if found is None:
            return no_schedule(brief)
        by_class = found
    return rules.may_throw_today(
        last_thrown_at(brief),
        brief.opened_at,
        max(cleared.apart_days, by_class),
        last.rest_days if last else 0,
    )


def alone_today(state: State) -> bool:
    """Whether throwing may come on a day whose exercises all wait for their days (set here).

    Only then: a day with work taken out by pain, a script, missing gear or a full week has no
    throws of its own.
    """
    waits = any((d.rule, d.outcome) == ("ready.spacing", "wait") for d in state.reasons)
    left_out = any(effect == "leave out" for effect, _target in state.lowered)
    full = any(d.rule in {"limits.caps", "ready.equipment"} for d in state.reasons)
    decision = may_throw(state)
    may = decision is not None and decision.outcome == "may"
    return may and waits and not (state.todo or left_out or full or state.gone)


def last_thrown_at(brief: Brief) -> str | None:
    """The newest instant of any throwing that the diary knows, of the program or of the sport.

    Throwing told for the day before counts a whole day before the start it was told at.
    """
    records = brief.history.records
    instants = [r.threw.ended_at for r in records if r.threw is not None]
    instants += [r.opened_at for r in records if (r.throwing_today or "none") != "none"]
    told = [r.opened_at for r in records if (r.threw_yesterday or "none") != "none"]
    instants += [(datetime.fromisoformat(at) - ONE_DAY).isoformat() for at in told]
    return max(instants, key=datetime.fromisoformat, default=None)


def not_cleared(brief: Brief, refusal: Refusal) -> Decision:
    """throw.cleared: a throwing line that opens nothing today is told, never passed over."""
    place = brief.plan.throwing_line.place if brief.plan.throwing_line else brief.plan.place
    source = "set here, to be signed by a clinician"
    return Decision(refusal.rule, "not cleared", refusal.why, place, Basis.OURS, source)


def once_a_day(brief: Brief) -> Decision:
    """throw.spacing: a second session of a day has no throws, so that a no of the arm holds all day.

    Source: set here, to be signed by a clinician.
    """
    why = "No throws in a second session of a day."
    source = "set here, to be signed by a clinician"
    return Decision("throw.spacing", "wait", why, brief.plan.place, Basis.OURS, source)


def had_its_throws(brief: Brief) -> Decision:
    """throw.spacing: other throwing yesterday or today takes the place of the program's."""
    why = "No throws from your plan today. The arm has its throws already."
    return Decision("throw.spacing", "wait", why, brief.plan.place, Basis.PUBLISHED, "Axe 2001")


def no_schedule(brief: Brief) -> Decision:
    """throw.spacing: a class whose schedule is not known in full for this step."""
    why = "No throws today. Your clinician's own schedule goes here."
    source = "Axe 2001, cut off in the copy read"
    return Decision("throw.spacing", "wait", why, brief.plan.place, Basis.PUBLISHED, source)


# ---------------------------------------------------------------- the talk


def begin(state: State, close: Callable[[State, str], State]) -> State:
    """After the last exercise, or in place of all: the line where it is due, else the close."""
    over = "all done" if state.stage is Stage.EXERCISE else "nothing left"
    decision = may_throw(state)
    if decision is None:
        return close(state, over)
    happened = (*state.happened, Happening("decision", decision.rule, decision))
    state = state._replace(happened=happened, because=(decision,))
    if decision.outcome != "may":
        return close(state._replace(told=(*state.told, Line("say", decision.why))), over)
    return next_prompt(
        state._replace(
            stage=follow(state.stage, "throwing"), work=None, todo=(), at=0, section="over"
        )
    )


def next_prompt(state: State) -> State:
    """The next question of the throwing line."""
    for place in range(state.at, len(ORDER)):
        if due(state, ORDER[place]):
            state = state._replace(at=place, missing=(ORDER[place],), line=False, unclear=0)
            return step_begun(state) if ORDER[place] == "sore after throw 15" else state
    return state._replace(at=len(ORDER), missing=())


def due(state: State, fact: str) -> bool:
    """Whether a question is asked: the first two only after an earlier throwing day."""
    last = last_throw(state.brief)
    return fact not in {"sore an hour after", "sore next day"} or bool(last and last.step)


def sore_so_far(state: State) -> rules.Sore:
    """What was said of soreness as the rule reads it; late = at the end, after none at throw 15."""
    said = {fact: bool(state.sore & bit) for fact, bit in BITS.items()}
    return rules.Sore(
        said["sore an hour after"],
        said["sore next day"],
        said["sore in warm-up"],
        said["sore after throw 15"],
        said["sore at the end"],
        over_the_ceiling=said[PAIN],
    )


def step_of(state: State) -> int:
    """The step of today: the planned one, or the one before on a repeat; no new one before a match.

    Nor after a day over the cap on game pitches.
    """
    cleared = cleared_today(state.brief)
    if cleared is None:
        return 0
    said = sore_so_far(state)._replace(after_15=False, late=False, over_the_ceiling=False)
    follows, _why = rules.soreness(said)
    before = standing(state.brief, cleared)
    step = rules.step_today(before, follows) or 0
    held = state.no_step or pitching.held_by_cap(state.brief)
    return min(step, before.last_done or cleared.from_step) if held else step


def step_begun(state: State) -> State:
    """The step is about to be shown: from here on the day counts as thrown, whatever happens."""
    cleared = cleared_today(state.brief)
    table = rules.table_of(state.brief.plan)
    if cleared is None or table is None:
        return state
    shown = rules.step_shown(table, step_of(state), state.brief.age)
    if shown.outcome == "none":
        return state._replace(missing=(), at=len(ORDER), told=(Line("say", shown.why),))
    step, before = step_of(state), standing(state.brief, cleared)
    again = before._replace(planned=step, clean_here=0 if state.sore else before.clean_here)
    return state._replace(thrown=(step, "cut off", 2, again))


def answered(state: State, fact: str, value: Value, close: Callable[[State, str], State]) -> State:
    """One answer of the throwing line; soreness ends it, or asks what kind it is."""
    if state.section == OWN:
        return own_answered(state, fact, str(value), close)
    if fact == PLACE:
        return place_answered(state, str(value))
    if fact == PAIN:
        return pain_answered(state, value, close)
    state = scripts.know(state, fact, str(value))
    if fact == "throws done":
        return ended(state, close)
    if fact == "arm tired":
        arm = rules.tired_arm(tired=value == "yes", painful=False)
        return pain_asked(state) if arm.outcome == "may" else not_today(state, arm, close)
    if value == "yes":
        state = lower_at_once(state._replace(sore=state.sore | BITS[fact]))
    if fact in {"sore an hour after", "sore next day"}:
        return before_the_arm(state, fact, close)
    if value == "yes":
        return state._replace(missing=(PLACE,), unclear=0)
    return go_on(state, close)


def pain_asked(state: State) -> State:
    """How much it hurts now, asked before the first throw and after soreness."""
    return state._replace(missing=(PAIN,), unclear=0)


def before_the_arm(state: State, fact: str, close: Callable[[State, str], State]) -> State:
    """After the two questions on last time: soreness then means a day off now."""
    follows, decision = rules.soreness(sore_so_far(state))
    if fact == "sore next day" and follows.today == "none":
        return not_today(day_off(state, decision, follows.rest_days), decision, close)
    return go_on(state, close)


def day_off(state: State, decision: Decision, days: int) -> State:
    """throw.soreness: a day off is kept as such, then the step last thrown comes once more.

    Kept, so that the same soreness is not asked of again and does not hold back every later day.
    """
    cleared = cleared_today(state.brief)
    if cleared is None:
        return state
    before = standing(state.brief, cleared)
    thrown = (r.threw.step for r in state.brief.history.records if r.threw and r.threw.step)
    again = min(before.planned, next(thrown, before.planned))
    after = before._replace(planned=again, clean_here=0)
    return state._replace(thrown=(0, decision.outcome, days, after))


def place_answered(state: State, value: str) -> State:
    """Sharp, deep, upper arm or inner elbow: all throwing stops until the clinician has seen it."""
    if value != "no":
        young = rules.young_arm(minor=state.brief.person.minor, upper_arm_or_inner_elbow=True)
        return stop(state, "B03" if state.brief.person.minor else THROWING_PAIN, because=young)
    return pain_asked(state)


def pain_answered(state: State, value: Value, close: Callable[[State, str], State]) -> State:
    """pain.ceilings: over the plan's ceiling on throwing the line ends, whatever soreness says."""
    if isinstance(value, str | tuple):
        return state
    if pain_rules.is_flag(value):
        return read_back(state, PAIN)
    decision = pain_rules.in_throwing(value, state.brief.plan.pain)
    before, state = ORDER[state.at] == "arm tired", state._replace(reread=False)
    if decision.outcome == "go on":
        ends = ORDER[state.at] in {"sore after throw 15", "sore at the end"}
        return throws_asked(state) if ends else go_on(state, close)
    if before:
        return not_today(state, decision, close)
    happened = (*state.happened, Happening("decision", decision.rule, decision))
    told = (*state.told, Line("say", decision.why))
    state = state._replace(
        sore=state.sore | BITS[PAIN], happened=happened, told=told, because=(decision,)
    )
    return throws_asked(lower_at_once(state)) if state.thrown else ended(state, close)


def throws_asked(state: State) -> State:
    """Throwing is over; how many were thrown."""
    return state._replace(at=ORDER.index("throws done"), missing=("throws done",), unclear=0)


def go_on(state: State, close: Callable[[State, str], State]) -> State:
    """The next question, or the end of the line."""
    state = next_prompt(state._replace(at=state.at + 1))
    return state if state.missing else close(state, "thrown")


def not_today(state: State, decision: Decision, close: Callable[[State, str], State]) -> State:
    """No throws today, and why; the steps stay where they are."""
    told = (*state.told, Line("say", decision.why))
    happened = (*state.happened, Happening("decision", decision.rule, decision))
    return close(state._replace(told=told, happened=happened, because=(decision,)), "thrown")


def lower_at_once(state: State) -> State:
    """throw.soreness: a step down is kept from the answer on that brings it.

    What follows may be a stop, or a window closed, and neither may give the step back.
    """
    cleared = cleared_today(state.brief)
    if state.thrown is None or cleared is None:
        return state
    follows, decision, after, _then = what_follows(state, cleared)
    if follows.step_change >= 0:
        return state
    return state._replace(thrown=(state.thrown[0], decision.outcome, follows.rest_days, after))


def what_follows(
    state: State, cleared: ThrowingLine
) -> tuple[rules.NextThrow, Decision, ThrowState, Decision]:
    """What soreness says of today, why, where the steps stand after it, and why."""
    follows, decision = rules.soreness(sore_so_far(state))
    before = standing(state.brief, cleared)
    if follows.step_change:
        before = before._replace(planned=min(before.planned, step_of(state)))
    after, then = rules.next_throws(before, follows, cleared)
    return follows, decision, after, then


def nothing_goes_up(thrown: tuple[int, str, int, ThrowState]) -> tuple[int, str, int, ThrowState]:
    """throw.soreness: no step goes up on a day that is stopped, or put right to a sore one.

    The step thrown comes again, and its clean days are counted anew. Source: set here, to be signed
    by a clinician.
    """
    step, row, rest_days, after = thrown
    planned = min(after.planned, step) if step else after.planned
    return step, row, rest_days, after._replace(planned=planned, clean_here=0)


def ended(state: State, close: Callable[[State, str], State]) -> State:
    """throw.soreness at the end: what follows, and when; twice down running asks the clinician."""
    cleared = cleared_today(state.brief)
    if cleared is None:
        return close(state, "thrown")
    follows, decision, after, then = what_follows(state, cleared)
    thrown = state.thrown[0] if state.thrown else 0  # 0: ended in the warm-up, no step was shown
    state = state._replace(thrown=(thrown, decision.outcome, follows.rest_days, after))
    happened = tuple(Happening("decision", d.rule, d) for d in (decision, then))
    state = state._replace(happened=(*state.happened, *happened), because=(decision, then))
    if then.outcome == "contact":
        # The step down is kept over the stop, so that a lifted hold does not bring the step back.
        return stop(state, TWICE_DOWN, because=then)._replace(thrown=state.thrown)
    told = (*state.told, Line("say", then.why))
    if follows.rest_days:
        days = "One whole day" if follows.rest_days == 1 else f"{follows.rest_days} whole days"
        told = (*told, Line("say", f"{days} of rest from throwing come first."))
    return own_so_far(state._replace(told=told, section=OWN, at=0, missing=()), close)


def own_so_far(state: State, close: Callable[[State, str], State]) -> State:
    """The script's own questions of the moment, then the close."""
    state, over = scripts.settle(state, "throwing", lambda _s, _f: False)
    return close(state, "thrown") if over and not state.end else state


def own_answered(
    state: State, fact: str, value: str, close: Callable[[State, str], State]
) -> State:
    """One of the script's own questions answered."""
    return past_own(scripts.know(state, fact, value), close)


def past_own(state: State, close: Callable[[State, str], State]) -> State:
    """On behind one of the script's own questions, answered or left unclear."""
    state = scripts.past_the_prompt(state, "throwing")
    return own_so_far(state._replace(missing=()), close)
