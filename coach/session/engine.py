"""The session as a fold: start, turn, listen, take, advance. Everyone drives these.

Law: nothing here reads a clock, a file or a screen; the same events give the same state. An answer
is heard for warning signs first, then for what was asked; a raw answer never enters the state.
"""

from __future__ import annotations

from typing import Final

from coach.hearing import hear, is_foreign
from coach.model.decisions import Refusal
from coach.model.flags import Group
from coach.model.heard import Action, Command, Heard, Kind, Question, Value
from coach.model.turns import Ask, Event, Line, Resumed, TimerEnded, Turn, Typed
from coach.rules.red_flags import flag_heard
from coach.session import (
    asides,
    checking_in,
    closing,
    commands,
    opening,
    screening,
    scripts,
    showing,
    throwing,
    throws_shown,
    training,
)
from coach.session.brief import Brief
from coach.session.checking_in import THROWING_FACTS, THROWN_AS
from coach.session.moments import GATHERED
from coach.session.questions import WORST, coach_question, is_flag_name
from coach.session.state import State, under_way
from coach.session.stopping import DOUBTS_TO_END, UNNAMED, UNSURE, stop, too_unclear
from coach.session.table import Stage

_NOTHING_ASKED: Final = Question("timer", Kind.WORD)


def start(brief: Brief) -> State:
    """The first state of a day (the hold and the plan's life are looked at first)."""
    return to_a_prompt(opening.opened(brief))


def turn(state: State) -> Turn:
    """What to say, ask or time now."""
    return showing.turn(state, ask_of(state))


def ask_of(state: State) -> Ask | None:
    """The present question; None while a timer runs or after the end."""
    if state.end:
        return None
    if state.aside:
        return asides.ask(state)
    if state.stage in {Stage.WHO, Stage.TODAY}:
        return opening.ask(state)
    if state.stage is Stage.CHECK_IN:
        return checking_in.ask(state)
    if state.stage is Stage.SCREEN:
        return screen_ask(state)
    if state.stage is Stage.AT_HAND:
        return hand_ask(state)
    if state.stage is Stage.ENDING:
        return asides.ending_ask(state)
    if state.stage is Stage.CLOSE:
        return closing.ask(state)
    if state.stage is Stage.THROWING:
        return throws_shown.ask(state)
    return training.ask(state)


def screen_ask(state: State) -> Ask:
    """The screen's question, or the script's own one after it."""
    if state.section != "over":
        return screening.ask(state)
    step = scripts.step_asking(state, "screen", state.missing[0])
    return scripts.script_ask(state, step, step.fact)


def hand_ask(state: State) -> Ask:
    """The question on what is at hand, or the script's own one."""
    if state.missing[0] == "at hand":
        return opening.at_hand_ask(state)
    step = scripts.step_asking(state, "at hand", state.missing[0])
    return scripts.script_ask(state, step, step.fact)


def question_heard(state: State, event: Typed) -> Question:
    """The question an answer is heard by: the prompt's, or one part of a gathered line."""
    ask = ask_of(state)
    if ask is None:
        return _NOTHING_ASKED
    for part in ask.question.parts:
        if part.fact == event.fact:
            return part
    return ask.question


def listen(state: State, event: Event) -> Heard:
    """What an event says; a timer or a break says nothing."""
    if not isinstance(event, Typed):
        return Heard(Action.ACCEPT)
    heard = hear(question_heard(state, event), event.text, state.brief.lexicon)
    if heard.action is Action.ACCEPT and heard.values and not state.line and not event.fact:
        return heard._replace(values=with_the_labelled(state, event, heard))
    return heard


def with_the_labelled(state: State, event: Typed, heard: Heard) -> tuple[tuple[str, Value], ...]:
    """The answer's value with labelled ones for facts of the same line, asked or answered.

    A label wins over the bare reading: `12, pain 1` is 12 reps, never 1. A fact answered before can
    only get worse by it, since takers only lower.
    """
    asked = heard.values[0][0]
    facts = next((group for group in GATHERED.values() if asked in group), ())
    if state.aside or asked not in state.missing or not facts:
        return heard.values
    parts = (asked, *(fact for fact in facts if fact != asked and may_be_said(state, fact)))
    line = Question("line", Kind.LINE, parts=tuple(coach_question(fact) for fact in parts))
    labelled = dict(hear(line, event.text, state.brief.lexicon).values)
    if asked in THROWING_FACTS and not names_a_day(event.text):  # a bare `game` labels nothing
        labelled = {f: v for f, v in labelled.items() if f == asked or f not in THROWING_FACTS}
    return tuple({**dict(heard.values), **labelled}.items())


def names_a_day(text: str) -> bool:
    """Whether an answer about throwing says itself which day it means."""
    return any(word in text.casefold() for word in ("yesterday", "today", "tonight", "tomorrow"))


def may_be_said(state: State, fact: str) -> bool:
    """Whether a fact belongs to the present exercise: reps or holds, not both."""
    if fact in {"reps in set", "holds in set"}:
        return training.due(state, fact)
    return True


def advance(state: State, event: Event) -> State | Refusal:
    """The next state by one event; a refusal where the session has ended."""
    return take(state, event, listen(state, event))


def take(state: State, event: Event, heard: Heard) -> State | Refusal:
    """The next state by an event that was already listened to."""
    after = take_one(state, event, heard)
    if isinstance(after, Refusal):
        return after
    after = to_a_prompt(after)
    return in_time(state, after, event.at_s) if isinstance(event, Typed) else after


def take_one(state: State, event: Event, heard: Heard) -> State | Refusal:
    """The state right after an event; what follows at once without an answer is still to come."""
    if state.end:
        return Refusal("session.over", "This session has ended.")
    asked = ask_of(state)
    fresh = state._replace(told=(), happened=(), repeat=False, first=False)
    if isinstance(event, Resumed):
        return asides.resumed(fresh, event.gap_s)
    if isinstance(event, TimerEnded):
        return timer_ended(fresh)
    return answer(fresh, event, heard, asked)


def to_a_prompt(state: State) -> State:
    """On to where something is asked, timed or over."""
    while goes_on(state):
        state = one_on(state)
    return state


def goes_on(state: State) -> bool:
    """Whether something follows at once; it waits under an aside and under the screen."""
    if state.aside or state.end or not state.onward:
        return False
    return state.stage is not Stage.SCREEN or state.onward[0] == "return"


def one_on(state: State) -> State:
    """The first thing that follows at once, done."""
    first, *rest = state.onward
    return ONWARD[first](state._replace(onward=tuple(rest)))


def timer_ended(state: State) -> State:
    """A timer ran out; without one running nothing changes."""
    work = state.work
    if work is None or state.aside or work.phase not in {"rest", "hold"}:
        return state
    return training.rest_or_hold_over(state)


def in_time(before: State, after: State, at_s: int) -> State:
    """limits.caps: no new exercise begins once the plan's minutes are over."""
    cap_s = after.brief.plan.limits.minutes * 60
    if at_s < cap_s or after.stage is not Stage.EXERCISE or after.work is None:
        return after
    if before.work is not None and before.work.place == after.work.place:
        return after
    told = (*after.told, Line("say", "Your plan's minutes for today are over."))
    return training.to_close(after._replace(told=told), "end the work")


# ---------------------------------------------------------------- one answer


def answer(state: State, event: Typed, heard: Heard, asked: Ask | None) -> State:
    """Flags first, then command words, then the value that was asked for."""
    if heard.action is Action.ESCALATE and heard.group is not None:
        return sign_heard(state, heard.group, heard.flag, sure=True)
    if heard.action is Action.CONFIRM and heard.group is not None:
        return confirm_on_top(state, heard, heard.group, asked)
    if heard.command is not None:
        return commanded(state, heard.command)
    if asked is None:
        return typed_over_a_timer(state)
    if heard.action is Action.ACCEPT and heard.values:
        said = {fact for fact, _value in heard.values}
        state = state._replace(blank=tuple(fact for fact in state.blank if fact not in said))
        return values_taken(state, heard.values, asked)
    return unclear(state, event, asked)


def sign_heard(state: State, group: Group, flag: str | None, *, sure: bool) -> State:
    """A warning sign: a sure one stops; self-harm and unsure ones get one closed question."""
    code = flag_heard(group, flag, state.brief.person)
    state = state._replace(quoted=True)
    if sure and group is not Group.SELF_HARM:
        return stop(state, code, group.value)
    return state._replace(aside="confirm", sign=(group.value, code), unclear=0)


def unnamed_heard(state: State) -> State:
    """Words that may tell of a sign and name none: one open question, in no group's words."""
    return state._replace(quoted=True, aside="confirm", sign=("", UNNAMED), unclear=0)


def sign_of(heard: Heard, group: Group, state: State) -> tuple[str, str]:
    """The stop's code and group for a sign that was heard."""
    if heard.unnamed:
        return UNNAMED, ""
    return flag_heard(group, heard.flag, state.brief.person), group.value


def confirm_on_top(state: State, heard: Heard, group: Group, asked: Ask | None) -> State:
    """The answer's value counts; the sign's closed question is laid over what follows."""
    if state.aside == "confirm":
        return stop(state, state.sign[1], state.sign[0])
    if heard.values and asked is not None:
        after = values_taken(state, heard.values, asked)
    elif state.unclear and asked is not None:
        after = safer_branch(state, asked, "")
    else:
        after = state._replace(unclear=1)
    if after.end == "stopped":
        return after
    if "read back" in {state.aside, after.aside}:  # the number is asked once more, and only once
        after = after._replace(reread=True)
    if after.end or (after.stage is not state.stage and after.stage is Stage.ENDING):
        if state.unclear > 1:  # at the day's last question a third such doubt is not asked again
            return stop(state, *sign_of(heard, group, state))
        after = state._replace(unclear=state.unclear + 1)
    # A strong pain waits under the sign: its fact is still missing, so it is asked again after it.
    if heard.unnamed:
        return unnamed_heard(after)._replace(under=after.unclear)
    return sign_heard(after, group, heard.flag, sure=False)._replace(under=after.unclear)


def commanded(state: State, command: Command) -> State:
    """A command word at any prompt."""
    if command is Command.STOP:
        return asides.stop_typed(state)
    if command is Command.FIX:
        return commands.fix(state)
    if command is Command.GEAR:
        return commands.gear(state)
    if command is Command.MORE:
        return commands.more(state)
    return commands.told(state, command)


def typed_over_a_timer(state: State) -> State:
    """Words typed while a timer runs: a hold is broken off and counts as done; a rest goes on."""
    work = state.work
    if work is not None and work.phase == "hold":
        return training.hold_is_over(state)
    words = Line("say", "The rest goes on. Type more for a longer one.")
    return state._replace(told=(words,), repeat=True)


def values_taken(state: State, values: tuple[tuple[str, Value], ...], asked: Ask) -> State:
    """Each value in turn, then on to the next question."""
    state = state._replace(unclear=0)
    if state.aside:
        return asides.answered(state, values[0][1])
    if asked.question.fact == "go":
        work = under_way(state)
        return state._replace(work=work._replace(phase="hold"))
    strong = ("", "")
    for fact, value in values:
        before = where(state)
        state = value_taken(state, fact, value)
        if state.aside == "read back":
            # The other values of the line still count; the strong pain is read back after them.
            strong = state.sign
            state = state._replace(aside="", sign=("", ""))
        if state.end or where(state) != before:
            return state
    if strong[1]:
        return state._replace(aside="read back", sign=strong, unclear=0, line=False)
    return on_from_here(state)


def where(state: State) -> tuple[object, ...]:
    """The place in the day that a value may move: stage, aside, and the exercise's own place."""
    work = state.work if state.stage is Stage.EXERCISE else None
    inside = (work.place, work.set_number, work.phase) if work else ()
    return (state.stage, state.aside, state.section, *inside)


def value_taken(state: State, fact: str, value: Value) -> State:
    """One value into its decision; what it decided is kept, the value is not."""
    if state.stage is Stage.ENDING:
        return asides.ending_answered(state, value)
    if state.stage is Stage.SCREEN and state.section != "over":
        return opening.screened_so_far(screening.answered(state, value))
    if state.stage is Stage.THROWING:
        return throwing.answered(state, fact, value, training.to_close)
    if is_flag_name(fact):
        sign = flag_heard(Group(fact.replace(" ", "_")), None, state.brief.person)
        if value == "yes":
            return stop(state, sign, fact.replace(" ", "_"))
        return state._replace(missing=without(state.missing, fact))
    value = THROWN_AS.get(str(value), value) if fact in THROWING_FACTS else value
    taker = TAKERS.get(fact)
    taken: State = taker(state, value) if taker else state  # type: ignore[operator]
    if (
        fact in asides.PAINS_READ_BACK and taken.aside != "read back"
    ):  # asked once more, and now taken
        taken = taken._replace(reread=False)
    if taken.end or where(taken) != where(state):
        return taken
    if not isinstance(value, tuple):
        taken = scripts.know(taken, fact, value)
    return taken._replace(missing=without(taken.missing, fact))


def without(facts: tuple[str, ...], fact: str) -> tuple[str, ...]:
    """The facts less one."""
    return tuple(f for f in facts if f != fact)


def on_from_here(state: State) -> State:
    """After an answer: the rest of its prompt one by one, else the next question."""
    state = state._replace(line=False)
    if state.end or state.aside:
        return state
    work = state.work if state.stage is Stage.EXERCISE else None
    if work is not None and work.phase == "set":
        state = state._replace(work=work._replace(phase="report"))
    if state.missing or state.stage in {Stage.ENDING, Stage.TODAY, Stage.THROWING}:
        return state
    if state.stage is Stage.WHO:
        return opening.known(state)
    if state.stage is Stage.SCREEN:
        return after_own_screen_question(state)
    moment = moment_of(state)
    if work is not None and work.phase in {"rest", "ready", "recheck", "hold"}:
        return state
    state = scripts.past_the_prompt(state, moment)
    if state.stage is Stage.CHECK_IN:
        return opening.checked_in_so_far(state)
    if state.stage is Stage.AT_HAND:
        return opening.at_hand_so_far(state)
    if state.stage is Stage.CLOSE:
        return closing.so_far(state)
    return training.walk(state, moment)


def after_own_screen_question(state: State) -> State:
    """On in the screen's script after one of its own questions."""
    if state.section != "over":
        return state
    return opening.screened_so_far(scripts.past_the_prompt(state, "screen"))


def moment_of(state: State) -> str:
    """The script moment of the present stage."""
    if state.stage in {Stage.CHECK_IN, Stage.AT_HAND, Stage.CLOSE}:
        return state.stage.value
    return training.moment_of(state)


# ---------------------------------------------------------------- not understood


def unclear(state: State, event: Typed, asked: Ask) -> State:
    """Asked again once; then the safer branch. A line asks its parts one by one at once."""
    if state.line and not event.fact and not state.aside:
        told = (Line("say", "I did not get all of it. One at a time, then."),)
        return state._replace(line=False, told=told)
    if asked.safety:
        state = state._replace(doubts=min(state.doubts + 1, DOUBTS_TO_END))
        if state.doubts >= DOUBTS_TO_END:
            worse = state.stage is Stage.ENDING
            return stop(state, UNSURE) if worse else too_unclear(state)
    if not state.unclear:
        head: tuple[Line, ...] = ()
        if not state.foreign and is_foreign(event.text):
            head = (Line("say", "I know plain English only. Use the words or numbers shown."),)
            state = state._replace(foreign=True)
        heard_not = (*head, *commands.not_heard(asked))
        return state._replace(unclear=1, repeat=True, told=heard_not)
    return safer_branch(state, asked, event.fact)


def safer_branch(state: State, asked: Ask, part: str) -> State:
    """P10: unclear twice leads to the very state that the worst answer gives."""
    state = state._replace(unclear=0)
    if state.aside in {"confirm", "read back"}:
        return asides.answered(state, "yes")
    if state.aside == "fix":
        return fix_given_up(state)
    if state.stage is Stage.SCREEN and state.section != "over":
        return opening.screened_so_far(screening.unclear_twice(state))
    if state.stage is Stage.ENDING and not state.missing:
        return asides.worse_so_far(screening.unclear_twice(state))
    if asked.question.fact == "go":
        work = under_way(state)
        return training.report(state._replace(work=work._replace(phase="report")))
    fact = part or asked.question.fact
    fact = fact if fact in state.missing or state.aside else (state.missing or (fact,))[0]
    return worst_taken(state, fact, asked)


def fix_given_up(state: State) -> State:
    """A correction that stayed unclear: the fact's worst value, or nothing where none was named."""
    if not state.fixing:
        told = (Line("say", "Nothing was changed."),)
        return state._replace(aside="", told=told)
    return asides.answered(state, WORST[state.fixing])


def worst_taken(state: State, fact: str, asked: Ask) -> State:
    """The worst answer of a fact, as if typed; an own question opens its careful branches."""
    told = (Line("say", "I did not get it. I take the more careful answer."),)
    if is_flag_name(fact):
        return values_taken(state, ((fact, "yes"),), asked)._replace(told=told)
    if fact not in WORST and asked.question.fact not in WORST:
        state = scripts.know_at_worst(state, fact)._replace(told=told)
        if state.stage is Stage.THROWING:
            return throwing.past_own(state, training.to_close)
        return on_from_here(state._replace(missing=without(state.missing, fact)))
    if fact == "own words":
        return on_from_here(state._replace(missing=()))
    state = state._replace(blank=(*state.blank, fact) if fact in asides.FIXABLE else state.blank)
    after = values_taken(state, ((fact, WORST[fact]),), asked)
    return after if after.end else after._replace(told=(*told, *after.told))


TAKERS: Final = {
    **opening.TAKERS,
    **checking_in.TAKERS,
    **training.TAKERS,
    **closing.TAKERS,
}

ONWARD: Final = {
    "list": opening.lay_out_today,
    "less": asides.made_less,
    "return": opening.back_where_it_was,
    "back": opening.back_in_place,
    "next": training.begin_next,
}
