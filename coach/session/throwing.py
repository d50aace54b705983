"""The throwing line of a day: may it be, which step, soreness at its moments, and what follows.

Law: no line without the plan's dated clearance, and none on a sore, gentle, recovery or match day.
Soreness decides, and what is not clear counts as sore. The step shown is a row of the plan's own
table, never more than the plan's last step. A throwing day that was cut off counts as thrown.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.model.decisions import Basis, Decision, Refusal
from coach.model.ladders import ThrowDay, ThrowState
from coach.model.turns import Line, Throws
from coach.rules import throwing as rules
from coach.rules.throwing_tables import PITCHER_CLASSES, STEP_TABLES, Part, StepTable
from coach.session import scripts
from coach.session.ladders import gap_since
from coach.session.machine import follow
from coach.session.questions import QUESTIONS, choice_lines, coach_question, single
from coach.session.state import Happening, State
from coach.session.stopping import stop

if TYPE_CHECKING:
    from collections.abc import Callable

    from coach.model.turns import Ask
    from coach.session.brief import Brief

FIRST_THROWS: Final = 15  # Axe 2001: soreness is asked after throw 15
M_PER_FT: Final = 0.3048  # exact by definition
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
OWN: Final = "own questions"  # the part of the line in which the script's own questions come
BITS: Final = {
    "sore an hour after": 1,
    "sore next day": 2,
    "sore in warm-up": 4,
    "sore after throw 15": 8,
    "sore at the end": 16,
}


def cleared_today(brief: Brief) -> rules.Clearance | None:
    """The plan's clearance to throw, or None."""
    found = rules.clearance(brief.plan, brief.today)
    return None if isinstance(found, Refusal) else found


def last_throw(brief: Brief) -> ThrowDay | None:
    """The last throwing day of this program."""
    return next((r.threw for r in brief.history.records if r.threw is not None), None)


def standing(brief: Brief, cleared: rules.Clearance) -> ThrowState:
    """Where the throwing steps stand today.

    A new plan version begins at its own first step; days off lower it; never over the last step.
    A day on which soreness allowed no throw is a day off.
    """
    with_line = [r for r in brief.history.records if r.threw is not None]
    if not with_line or with_line[0].plan_version != brief.plan.version:
        return ThrowState(cleared.from_step)
    state = with_line[0].threw.state if with_line[0].threw else ThrowState(cleared.from_step)
    thrown = next((r.day for r in with_line if r.threw and r.threw.step), with_line[-1].day)
    return after_days_off(state, gap_since(brief, thrown).outcome, cleared)


def after_days_off(state: ThrowState, gap: str, cleared: rules.Clearance) -> ThrowState:
    """layoff.gap on the throwing steps: one step down, or the first; never over the last."""
    planned = min(state.planned, cleared.most_step)
    if gap == "one step down":
        return ThrowState(max(rules.FIRST_STEP, planned - 1), state.last_done)
    if gap in {"first step", "contact"}:
        return ThrowState(min(planned, cleared.from_step))
    return state._replace(planned=planned)


def may_throw(state: State) -> Decision | None:
    """Whether the throwing line comes today; None where the plan does not clear throwing."""
    brief = state.brief
    cleared = cleared_today(brief)
    if cleared is None or ("today", "no throwing") in state.lowered:
        return None
    sore = bool(state.level or state.morning_up or state.left_early)
    arm = rules.tired_arm(tired=False, painful=sore)
    if arm.outcome != "may":
        return arm
    if state.threw or state.playing or state.recovery or state.order != "as usual":
        return had_its_throws(brief)
    last = last_throw(brief)
    step = standing(brief, cleared).planned
    schedule = PITCHER_CLASSES.get(cleared.injury_class, (0, ()))[1]
    by_class = rules.class_days(schedule, step) if schedule else 1
    if by_class is None:
        return no_schedule(brief)
    return rules.may_throw_today(
        last_thrown_at(brief),
        brief.opened_at,
        max(cleared.apart_days, by_class),
        last.rest_days if last else 0,
    )


def last_thrown_at(brief: Brief) -> str | None:
    """The newest instant of any throwing that the diary knows, of the program or of the sport."""
    instants = [r.threw.ended_at for r in brief.history.records if r.threw is not None]
    instants += [
        r.opened_at for r in brief.history.records if (r.throwing_today or "none") != "none"
    ]
    return max(instants, default=None)


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
    """After the last exercise: the throwing line where it is due, else the close with the reason."""
    decision = may_throw(state)
    if decision is None:
        return close(state, "all done")
    happened = (*state.happened, Happening("decision", decision.rule, decision))
    state = state._replace(happened=happened, because=(decision,))
    if decision.outcome != "may":
        return close(state._replace(told=(*state.told, Line("say", decision.why))), "all done")
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


def ask(state: State) -> Ask:
    """The present question: the coach's, or the script's own ones after the last throw."""
    fact = state.missing[0]
    if state.section == OWN:
        return scripts.script_ask(state, scripts.step_asking(state, "throwing", fact), fact)
    return single(fact, coach_question(fact), QUESTIONS[fact].label, safety=fact == PLACE)


def sore_so_far(state: State) -> rules.Sore:
    """What was said of soreness as the rule reads it; late = at the end, after none at throw 15."""
    said = {fact: bool(state.sore & bit) for fact, bit in BITS.items()}
    return rules.Sore(
        said["sore an hour after"],
        said["sore next day"],
        said["sore in warm-up"],
        said["sore after throw 15"],
        said["sore at the end"],
    )


def step_of(state: State) -> int:
    """The step of today: the planned one, or the one before on a repeat; no new one before a match."""
    cleared = cleared_today(state.brief)
    if cleared is None:
        return 0
    follows, _why = rules.soreness(sore_so_far(state)._replace(after_15=False, late=False))
    before = standing(state.brief, cleared)
    step = rules.step_today(before, follows) or 0
    return min(step, before.last_done or cleared.from_step) if state.no_step else step


def step_begun(state: State) -> State:
    """The step is about to be shown: from here on the day counts as thrown, whatever happens."""
    cleared = cleared_today(state.brief)
    table = table_of(state.brief)
    if cleared is None or table is None:
        return state
    shown = rules.step_shown(table, step_of(state), state.brief.age)
    if shown.outcome == "none":
        return state._replace(missing=(), at=len(ORDER), told=(Line("say", shown.why),))
    step = step_of(state)
    again = standing(state.brief, cleared)._replace(planned=step)
    return state._replace(thrown=(step, "cut off", 2, again))


def table_of(brief: Brief) -> StepTable | None:
    """The plan's table of steps."""
    line = brief.plan.throwing_line
    return STEP_TABLES.get(line.table) if line else None


def answered(state: State, fact: str, value: str, close: Callable[[State, str], State]) -> State:
    """One answer of the throwing line; soreness ends it, or asks what kind it is."""
    if state.section == OWN:
        return own_answered(state, fact, value, close)
    if fact == PLACE:
        return place_answered(state, value, close)
    state = scripts.know(state, fact, value)
    if fact == "throws done":
        return ended(state, close)
    if fact == "arm tired":
        arm = rules.tired_arm(tired=value == "yes", painful=False)
        return go_on(state, close) if arm.outcome == "may" else not_today(state, arm, close)
    if value == "yes":
        state = state._replace(sore=state.sore | BITS[fact])
    if fact in {"sore an hour after", "sore next day"}:
        return before_the_arm(state, fact, close)
    if value == "yes":
        return state._replace(missing=(PLACE,), unclear=0)
    return go_on(state, close)


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


def place_answered(state: State, value: str, close: Callable[[State, str], State]) -> State:
    """Sharp, deep, upper arm or inner elbow: all throwing stops until the clinician has seen it."""
    if value != "no":
        young = rules.young_arm(minor=state.brief.person.minor, upper_arm_or_inner_elbow=True)
        return stop(state, "B03" if state.brief.person.minor else THROWING_PAIN, because=young)
    ends = ORDER[state.at] in {"sore after throw 15", "sore at the end"}
    return throws_asked(state) if ends else go_on(state, close)


THROWING_PAIN: Final = "T01"
TWICE_DOWN: Final = "T02"


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


def ended(state: State, close: Callable[[State, str], State]) -> State:
    """throw.soreness at the end: what follows, and when; twice down running asks the clinician."""
    cleared = cleared_today(state.brief)
    if cleared is None:
        return close(state, "thrown")
    follows, decision = rules.soreness(sore_so_far(state))
    step, before = step_of(state), standing(state.brief, cleared)
    if follows.step_change:
        before = before._replace(planned=min(before.planned, step))
    after, then = rules.next_throws(before, follows, cleared)
    state = state._replace(thrown=(step, decision.outcome, follows.rest_days, after))
    happened = tuple(Happening("decision", d.rule, d) for d in (decision, then))
    state = state._replace(happened=(*state.happened, *happened), because=(decision, then))
    if then.outcome == "contact":
        return stop(state, TWICE_DOWN, because=then)
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
    state = scripts.past_the_prompt(scripts.know(state, fact, value), "throwing")
    return own_so_far(state._replace(missing=()), close)


# ---------------------------------------------------------------- what is shown


def lines(state: State) -> tuple[tuple[Line, ...], tuple[Throws, ...]]:
    """The lines of the present question, with the throws they show."""
    fact = state.missing[0]
    if state.section == OWN:
        present = ask(state)
        return (Line("say", present.question.ask), *choice_lines(present)), ()
    question = Line("say", QUESTIONS[fact].ask)
    table = table_of(state.brief)
    if fact == "sore in warm-up" and table is not None:
        side = state.brief.side_words
        return (
            Line("say", f"Throwing, {side}. Warm-up throws first, easy and short."),
            question,
        ), ()
    if table is None or fact not in {"sore after throw 15", "sore at the end"}:
        return (question,), ()
    step = step_of(state)
    first, rest = split_at_15(table, step)
    parts = first if fact == "sore after throw 15" else rest
    side = state.brief.side_words
    shown = tuple(
        Throws(table.name, step, state.brief.plan.side, part.distance_ft, part.throws)
        for part in parts
    )
    head = f"Throwing, {side}: step {step} of {len(table.steps)} in your plan."
    words = ", then ".join(part_words(part, table.unit) for part in parts)
    work = Line("work", f"Now, {side}: {words}.") if words else Line("say", "That was all of it.")
    if fact == "sore after throw 15":
        return (Line("name", head), work, question), shown
    return (work, question), shown


def part_words(part: Part, unit: str) -> str:
    """`25 throws at 60 ft (18 m), on an arc`."""
    metres = round(part.distance_ft * M_PER_FT)
    return f"{part.throws} {unit} at {part.distance_ft:g} ft ({metres} m), {part.manner}"


def split_at_15(table: StepTable, step: int) -> tuple[tuple[Part, ...], tuple[Part, ...]]:
    """The step's parts up to throw 15, and the rest."""
    first: list[Part] = []
    rest: list[Part] = []
    left = FIRST_THROWS
    for part in (part for one in table.steps[step - 1].sets for part in one):
        now = min(left, part.throws)
        if now:
            first.append(part._replace(throws=now))
        if part.throws > now:
            rest.append(part._replace(throws=part.throws - now))
        left -= now
    return tuple(first), tuple(rest)
