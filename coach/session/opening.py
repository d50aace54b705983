"""How a day opens and gets its list: the hold first, then plan, athlete, screen end, today's list.

Law: the hold is looked at before anything else, and while it stands nothing of the plan is shown.
A plan before its start, after its review date, or for somebody else gives no session.
"""

from __future__ import annotations

from datetime import date

from coach.model.decisions import Basis, Decision
from coach.model.turns import Ask, Line
from coach.rules import layoff
from coach.rules.plan_life import clock_back, plan_life
from coach.rules.readiness import sleep_habit
from coach.session import checking_in, pitching, screening, scripts, throwing, training
from coach.session.brief import Brief
from coach.session.ladders import gap_of
from coach.session.machine import follow
from coach.session.questions import QUESTIONS, coach_question, single
from coach.session.state import Happening, State
from coach.session.stopping import away_too_long, end_day
from coach.session.table import Stage
from coach.session.today import compose


def opened(brief: Brief) -> State:
    """The first state of a day."""
    state = State(Stage.OPENING, brief, truth=brief.first_truth)
    if brief.history.hold is not None:
        return state._replace(stage=follow(state.stage, "plan closed"), end="stopped")
    for decision in (
        clock_back(brief.history.last_at, brief.opened_at),
        plan_life(brief.plan, brief.today),
    ):
        if decision.outcome != "may":
            return state._replace(
                stage=follow(state.stage, "plan closed"),
                end="closed",
                reasons=(decision,),
            )
    away = gap_of(brief)
    if away.outcome == "contact" and not said_so_lately(brief):
        return away_too_long(state, away)
    state = state._replace(stage=follow(state.stage, "may open"))
    missing = tuple(fact for fact in ("plan is mine", "guardian here") if due(state, fact))
    state = state._replace(missing=missing)
    return state if missing else known(state)


def said_so_lately(brief: Brief) -> bool:
    """Whether the clinician has answered for these very days off.

    That takes a start, within the last 28 days, which was stopped after 28 days off already, and a
    lift or a new plan since. What was lifted or written before the days off had grown so long says
    nothing of them.
    """
    if not (brief.history.lifted or brief.new_plan):
        return False
    records = brief.history.records
    trained = next(r.day for r in records if any(done.sets for done in r.done))
    asked = next(
        (r.day for r in records if r.ended == "stopped" and long_off(trained, r.day)), None
    )
    return asked is not None and not long_off(asked, brief.today.isoformat())


def long_off(day: str, later: str) -> bool:
    """Whether so many days lie between two ISO days that the clinician is asked first."""
    missed = layoff.days_missed(date.fromisoformat(day), date.fromisoformat(later))
    return missed >= layoff.CONTACT_FROM_DAYS


def due(state: State, fact: str) -> bool:
    """Who is asked what at the door: a new plan its owner, a minor the guardian."""
    brief = state.brief
    if fact == "plan is mine":
        return brief.first_day or brief.new_plan
    if not brief.person.minor:
        return False
    return brief.first_day or brief.plan.guardian_present == "every session"


def ask(state: State) -> Ask:
    """The door's present question."""
    fact = state.missing[0]
    return single(fact, coach_question(fact), QUESTIONS[fact].label)


def lines(state: State) -> tuple[Line, ...]:
    """What is said at the door."""
    return (Line("say", QUESTIONS[state.missing[0]].ask),)


def take_door(state: State, answer: str) -> State:
    """No at the door means no session: not this athlete's plan, or no guardian."""
    if answer == "yes":
        return state
    fact = state.missing[0]
    plan = state.brief.plan
    name = plan.calls.clinician.who.split(",")[0]
    if fact == "plan is mine":
        who = plan.initials.rstrip(".")
        why = f"This plan is for {who}. Call {name} for yours: {plan.calls.clinician.number}."
        decision = Decision(
            "plan.life",
            "not theirs",
            why,
            plan.place,
            Basis.OURS,
            "set here, to be signed by a clinician",
        )
    else:
        why = "Your plan asks for your guardian. Start again when they are with you."
        decision = Decision(
            "stop.minor",
            "no guardian",
            why,
            plan.place,
            Basis.OURS,
            "set here, to be signed by a clinician",
        )
    return end_day(state, "not today", "closed", decision)


def door_answered(state: State) -> State:
    """On to the next question at the door, or to the check-in."""
    return state if state.missing or state.end else known(state)


def known(state: State) -> State:
    """The check-in begins."""
    state = state._replace(stage=follow(state.stage, "known"), at=0)
    return checked_in_so_far(state)


def checked_in_so_far(state: State) -> State:
    """On to the check-in's next question, or to the screen."""
    state, over = scripts.settle(state, "check-in", checking_in.due)
    if not over or state.end:
        return state
    state = state._replace(stage=follow(state.stage, "checked in"), missing=(), line=False, at=0)
    state = pitching.game_to_come(sleep_noted(state))
    return screened_so_far(screening.begin(state))


def sleep_noted(state: State) -> State:
    """ready.sleep: a habit of short nights is a note for the visit; it locks and lowers nothing."""
    decision = sleep_habit(state.brief.sleep_week, state.brief.age)
    if decision.outcome != "note":
        return state
    note = Happening("note", "Mean sleep of the week under the mark for this age.", decision)
    return state._replace(happened=(*state.happened, note))


def screened_so_far(state: State) -> State:
    """After the coach's screen, the script's own questions of that moment; then the gear."""
    if state.end or state.section != "over":
        return state
    state, over = scripts.settle(state, "screen", lambda _s, _f: False)
    if not over or state.end:
        return state
    if state.back:
        return state._replace(missing=(), onward=("return", *state.onward))
    state = checking_in.what_stays(state)
    state = state._replace(stage=follow(state.stage, "screened"), missing=(), at=0)
    return at_hand_so_far(state)


def back_where_it_was(state: State) -> State:
    """After a screen asked again in the middle of a day."""
    stage = follow(state.stage, f"back to {state.back}")
    onward = ("list",) if stage is Stage.TODAY else (*state.onward, "back")
    return state._replace(stage=stage, back="", at=0, blank=(), onward=onward)


def back_in_place(state: State) -> State:
    """On with the day where a screen or a break came in between; an open question stands again."""
    stage = state.stage
    if state.missing:
        return state
    if stage is Stage.AT_HAND:
        return at_hand_so_far(state)
    if stage is Stage.WARM_UP:
        return training.walk(state, "warm-up")
    if stage is Stage.THROWING:
        return throwing.next_prompt(state)
    if stage is Stage.CLOSE:
        return training.closing_again(state)
    if state.work is None:
        return training.next_exercise(state)
    work = state.work
    moment = training.moment_of(state)
    if work.phase in {"before", "report"}:
        return training.walk(state, moment)
    return training.back_at_the_set(state)


def at_hand_due(state: State, fact: str) -> bool:
    """What is at hand is asked when something was missing last time."""
    return fact == "at hand" and state.brief.history.at_hand not in {
        None,
        state.brief.plan.at_home,
    }


def at_hand_ask(state: State) -> Ask:
    """What is here today, from what the plan says is at home."""
    question = coach_question("at hand", choices=state.brief.plan.at_home)
    return single("at hand", question, QUESTIONS["at hand"].label)


def take_at_hand(state: State, here: tuple[str, ...]) -> State:
    """What is not here today."""
    gone = tuple(thing for thing in state.brief.plan.at_home if thing not in here)
    words = ", ".join(gone) or "nothing"
    return state._replace(gone=gone, happened=(*state.happened, Happening("not here", words)))


def at_hand_so_far(state: State) -> State:
    """On to the question about gear, or to today's list."""
    state, over = scripts.settle(state, "at hand", at_hand_due)
    if not over or state.end:
        return state
    state = state._replace(stage=follow(state.stage, "gear known"), missing=(), at=0)
    return state._replace(onward=("list",))


def lay_out_today(state: State) -> State:
    """Today's list; nothing to do ends the day, a game still to come offers moves or later."""
    state = compose(state)
    happened = tuple(Happening("decision", d.rule, d) for d in state.reasons)
    state = state._replace(happened=(*state.happened, *happened))
    if state.order == "after throwing":
        if not state.todo:
            return end_day(state, "nothing today", "done", None)._replace(reasons=state.reasons)
        return state._replace(missing=("moves or later",))
    if throwing.alone_today(state):
        words = Line("say", "No exercises today. Your warm-up and your throwing are on.")
        return begin_work(state._replace(throws_only=True, told=(*state.told, words)))
    if not state.todo:
        return end_day(state, "nothing today", "done", None)._replace(reasons=state.reasons)
    return begin_work(state)


def take_moves(state: State, answer: str) -> State:
    """Moves now, or everything after the game."""
    if answer == "moves":
        return begin_work(state._replace(missing=()))
    return end_day(state, "nothing today", "done", None)._replace(reasons=state.reasons)


def begin_work(state: State) -> State:
    """The list is shown with the warm-up; from here on it only gets shorter."""
    state = training.what_still_acts(state)
    state = state._replace(stage=follow(state.stage, "begin"), missing=(), at=0)
    return training.walk(state, "warm-up")


TAKERS = {
    "plan is mine": take_door,
    "guardian here": take_door,
    "at hand": take_at_hand,
    "moves or later": take_moves,
}
