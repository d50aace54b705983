"""Short talks laid over a stage: a sign to confirm, a strong pain read back, a value put right,
gear that is not here, and what happened in a long break.

Law: an aside never moves the day forward by itself and never makes it less careful. A sign that
was heard is confirmed by one closed question; what is not a clear no counts as a yes.
"""

from __future__ import annotations

from typing import Final

from coach.model.decisions import Decision
from coach.model.flags import Group, Section
from coach.model.heard import Kind, Question, Value
from coach.model.turns import Ask, Line
from coach.rules import pain as pain_rules
from coach.rules.red_flags import FLAGS
from coach.session import (
    checking_in,
    closing,
    exercise,
    opening,
    screening,
    scripts,
    throwing,
    training,
)
from coach.session.questions import QUESTIONS, coach_question, single
from coach.session.state import Happening, State, Work, under_way
from coach.session.stopping import call_it_a_day, stop
from coach.session.table import Stage
from coach.session.today import dose_today, loads_here, still_allowed

CLOSE_SCREEN_AFTER_S: Final = 60 * 60  # checkin.gap: a pause over 60 min reopens the screen
ASK_SINCE_AFTER_S: Final = 5 * 60  # set here, to be signed by a clinician
REPORTED: Final = (
    "rest",
    "report",
    "recheck",
)  # phases in which the set's report is in
DECIDED: Final = (
    Stage.AT_HAND,
    Stage.TODAY,
    Stage.WARM_UP,
    Stage.EXERCISE,
    Stage.THROWING,
    Stage.CLOSE,
)
FIXABLE: Final = (
    "pain now",
    "worst pain",
    "waking pain",
    "sleep last night",
    "throwing yesterday",
    "throwing today",
    "pitches before",
    "pitches yesterday",
    "pitches today",
)
# The pains of which 8 or more is read back.
PAINS_READ_BACK: Final = frozenset(
    {
        "pain now",
        "worst pain",
        "waking pain",
        "pain in warm-up",
        "pain in set",
        "pain before change",
        "pain after",
    }
)
# What a free correction forgets before the new value is heard; and the rule whose reason goes.
FORGETS: Final[dict[str, tuple[dict[str, object], str]]] = {
    "pain now": ({"level": 0, "pain_up": False}, "pain.to_start"),
    "worst pain": ({}, ""),
    "waking pain": ({"morning_up": False, "ache": False}, "pain.next_morning"),
    "sleep last night": ({"short": False}, "ready.sleep"),
    "throwing yesterday": (
        {"threw": False, "recovery": False, "game_yesterday": False},
        "ready.throwing_day",
    ),
    "throwing today": (
        {"playing": False, "order": "as usual", "game_today": False},
        "ready.throwing_day",
    ),
    # A count that was told keeps its days off; another one can only add to them.
    "pitches before": ({}, ""),
    "pitches yesterday": ({}, ""),
    "pitches today": ({}, ""),
}

# ---------------------------------------------------------------- asks


def ask(state: State) -> Ask:
    """The aside's present question."""
    if state.aside == "confirm":
        flag = FLAGS.get(state.sign[1])
        words = flag.question if flag else UNNAMED_ASK
        question = Question("heard right", Kind.SAFETY_YES_NO, words)
        return single("heard right", question, "Yes or no:", safety=True)
    if state.aside == "read back":
        question = Question("read back", Kind.SAFETY_YES_NO, READ_BACK)
        return single("read back", question, "Yes or no:", safety=True)
    if state.aside == "fix":
        return fix_ask(state)
    if state.aside == "gear":
        return opening.at_hand_ask(state)
    fact = state.since[0]
    question = coach_question(fact)
    return single(fact, question, QUESTIONS[fact].label, safety=fact == "worse since")


UNNAMED_ASK: Final = "Is that a new problem in your body, or one that is worse than before?"
READ_BACK: Final = "Is the pain really that strong: 8 or more of 10?"


def fix_ask(state: State) -> Ask:
    """Which answer to change, then its new value."""
    if not state.fixing:
        question = coach_question("which to fix", choices=fixable(state))
        return single("which to fix", question, QUESTIONS["which to fix"].label)
    fact = state.fixing
    return single(fact, coach_question(fact), QUESTIONS[fact].label)


def lines(state: State) -> tuple[Line, ...]:
    """What is said before the aside's question."""
    question = ask(state).question
    head: tuple[Line, ...] = ()
    if state.aside == "confirm":
        head = (Line("quote", 'You typed: "{typed}".'),)
    if state.aside == "fix" and not state.fixing:
        items = tuple(Line("item", f"{n} {c}") for n, c in enumerate(question.choices, 1))
        return (Line("say", question.ask), *items)
    if state.aside == "gear":
        items = tuple(Line("item", f"{n} {c}") for n, c in enumerate(question.choices, 1))
        return (Line("say", question.ask), *items)
    return (*head, Line("say", question.ask))


def fixable(state: State) -> tuple[str, ...]:
    """Answers that can be changed now: those already given."""
    if state.stage is Stage.CHECK_IN:
        past = {s.fact for s in state.brief.items["check-in"][: state.at]}
        return tuple(fact for fact in FIXABLE if fact in past and checking_in.due(state, fact))
    facts = tuple(fact for fact in FIXABLE if checking_in.due(state, fact))
    work = state.work
    if work is not None and (work.phase == "rest" or work.set_number > 1):
        return (*facts, "pain in set")
    return facts


# ---------------------------------------------------------------- answers


def answered(state: State, value: str | float | tuple[str, ...]) -> State:
    """The aside one step further."""
    if state.aside == "confirm":
        return confirmed(state, str(value))
    if state.aside == "read back":
        return was_read_back(state, str(value))
    if state.aside == "fix":
        return fixed(state, value)
    if state.aside == "gear":
        here = value if isinstance(value, tuple) else (str(value),)
        return fewer(opening.take_at_hand(state._replace(aside="", unclear=0), here))
    return since_answered(state, value)


def confirmed(state: State, value: str) -> State:
    """A clear no goes back to where it was, less a correction under way; anything else stops."""
    group, flag = state.sign
    if value != "no":
        return stop(state, flag, group)
    return state._replace(
        aside="since" if state.since else "",
        sign=("", ""),
        quoted=False,
        fixing="",
        reread=state.reread and not state.fixing,
        unclear=state.under,
        under=0,
    )


def was_read_back(state: State, value: str) -> State:
    """A pain of 8 or more: yes stops the day; no asks for the number once more."""
    if value != "no":
        return stop(state, "S09", Group.NIGHT_PAIN_UNRELENTING.value)
    told = (Line("say", "Then type the number once more."),)
    aside = "fix" if state.fixing else "since" if state.since else ""
    return state._replace(aside=aside, sign=("", ""), reread=True, unclear=0, told=told)


def fixed(state: State, value: str | float | tuple[str, ...]) -> State:
    """checkin.fix: free until a decision was shown; after that only the more careful acts."""
    if not state.fixing:
        return state._replace(fixing=str(value), unclear=0)
    fact = state.fixing
    before = state._replace(aside="", fixing="", unclear=0)
    changed = with_fixed(before, fact, value)
    if changed.aside == "read back":  # the old value stands until the new one is sure
        return before._replace(aside="read back", sign=("", fact), fixing=fact)
    changed = changed._replace(reread=False)
    game = fact == "throwing yesterday" and checking_in.counts_pitches(state, str(value))
    if game and uncounted_here(changed):
        return changed._replace(aside="fix", fixing="pitches yesterday")
    return changed


def uncounted_here(state: State) -> bool:
    """Whether the check-in's own question on game pitches lies behind, and the day goes on."""
    return state.stage is not Stage.CHECK_IN and not state.aside and not state.end


def with_fixed(state: State, fact: str, value: Value) -> State:
    """The day with a fact's new value; an aside where that value must be asked once more."""
    if fact == "pain in set":
        return fixed_pain_in_set(state, value)
    free = state.stage not in DECIDED
    if free:
        forgets, rule = FORGETS[fact]
        reasons = tuple(r for r in state.reasons if r.rule != rule)
        state = state._replace(reasons=reasons, **forgets)  # type: ignore[arg-type]
    taken: State = checking_in.TAKERS[fact](state, value)  # type: ignore[operator]
    if taken.stage is not state.stage or taken.aside:
        return taken
    if fact == "throwing today" and taken.playing:
        taken = checking_in.take_already(taken, "no")
    if not isinstance(value, tuple):
        taken = scripts.know(taken, fact, value) if free else taken
    new = tuple(d for d in taken.reasons if d not in state.reasons and not free)
    if free:
        return changed_freely(taken)
    extra = screening.called_for(state, taken)
    return made_more_careful(checking_in.what_stays(taken), new, extra)


def changed_freely(state: State) -> State:
    """Before any decision was shown: the screen asks alone what the new value calls for."""
    state = state._replace(told=(Line("say", "Changed."), *state.told))
    if state.stage is not Stage.SCREEN:
        return state
    alone = screening.in_order({*state.alone, *screening.newly_due(state)})
    state = state._replace(alone=alone)
    return screening.next_section(state) if state.section in {"list", "over"} else state


def made_more_careful(state: State, new: tuple[Decision, ...], extra: tuple[Section, ...]) -> State:
    """After a decision was shown: the list only shrinks, and `extra` sections are asked alone.

    `new` are the decisions that the new value brought; they are told with the change.
    """
    changed = Line("say", "Changed. The more careful of the two counts from here.")
    told = (changed, *state.told, *(Line("say", d.why) for d in new))
    state = state._replace(told=tuple(dict.fromkeys(told)))
    if state.stage is Stage.CLOSE:
        return state
    if state.stage is Stage.THROWING:
        return throwing_after_fix(state)
    state = fewer(state)
    if extra and state.stage in {Stage.AT_HAND, Stage.TODAY, Stage.WARM_UP, Stage.EXERCISE}:
        return screening.again(state, extra, ())
    return state


def throwing_after_fix(state: State) -> State:
    """A correction while throwing: the line goes on only if it may still be."""
    decision = throwing.may_throw(state)
    if decision is not None and decision.outcome == "may":
        return state
    words = decision.why if decision else "No more throws today."
    over = "thrown" if state.stage is Stage.THROWING else "nothing left"
    told = tuple(dict.fromkeys((*state.told, Line("say", words))))
    return training.to_close(state._replace(told=told), over)


def fewer(state: State) -> State:
    """A new fact in mid-day: what today no longer allows goes from the list, nothing comes."""
    if state.stage not in {Stage.TODAY, Stage.WARM_UP, Stage.EXERCISE}:
        return state
    if state.stage is Stage.WARM_UP and state.throws_only:
        return throwing_after_fix(state)
    return state._replace(onward=("less",))


def made_less(state: State) -> State:
    """The list and the exercise under way, less what is no longer allowed."""
    after = list_made_less(state)
    on_the_way = after.stage in {Stage.WARM_UP, Stage.EXERCISE}
    return training.what_still_acts(after) if on_the_way else after


def list_made_less(state: State) -> State:
    """The list less what is no longer allowed; then the exercise under way."""
    kept, reasons = still_allowed(state, state.todo)
    gone = [place for place in state.todo if place not in kept]
    if gone:
        names = ", ".join(state.brief.stations[place].exercise.name for place in gone)
        new = [d for d in reasons if d not in state.reasons][-2:]
        why = tuple(Line("say", d.why) for d in new)
        told = (*state.told, Line("say", f"Left out today: {names}."), *why)
        state = state._replace(told=told)
    known = tuple(dict.fromkeys((*state.reasons, *reasons)))
    state = state._replace(todo=kept, reasons=known)
    if state.work is not None:
        return work_made_less(state, state.work)
    if kept or state.stage is Stage.TODAY or state.onward:
        return state
    return training.next_exercise(state)


def work_made_less(state: State, work: Work) -> State:
    """The exercise under way, left or with fewer sets if today asks for it."""
    kept, reasons = still_allowed(state, (work.place,))
    state = state._replace(reasons=tuple(dict.fromkeys((*state.reasons, *reasons))))
    if not kept:
        name = training.station_of(work, state).exercise.name
        told = (*state.told, Line("say", f"We leave {name} for today."))
        return training.next_exercise(
            training.exercise_done(state, exercise.Result("left"))._replace(told=told)
        )
    sets = max(min(work.dose.sets, dose_today(state, work.place).sets), work.set_number)
    work = work._replace(dose=work.dose._replace(sets=sets))
    work = exercise.with_loads(work, loads_here(state)) if work.table else work
    if work.phase in {"rest", "recheck"} and work.set_number >= sets:  # its last set is behind
        done = exercise.Result(exercise.how_it_went(work))
        return training.next_exercise(training.exercise_done(state._replace(work=work), done))
    return state._replace(work=work)


def fixed_pain_in_set(state: State, value: str | float | tuple[str, ...]) -> State:
    """A corrected pain in the last set can only leave the exercise, end the work, or stop."""
    work = state.work
    if work is None or isinstance(value, tuple | str):
        return state
    if pain_rules.is_flag(value):
        return checking_in.read_back(state, "pain in set")
    no_room = pain_rules.Room(shorter=False, easier=False, lighter=False)
    decision = pain_rules.in_set(
        value,
        state.brief.plan.pain,
        no_room,
        last_set=True,
        exercises_left_early=state.left_early,
    )
    if decision.outcome == "go on":
        return state._replace(told=(Line("say", "Changed."),))
    told = (*state.told, Line("say", decision.why))
    day = "end session" if decision.outcome == "end session" else ""
    result = None if day else exercise.Result("over")
    step = exercise.Stepped(work._replace(over=True), result, day, (), decision)
    return training.stepped(state._replace(told=told, missing=(), line=False), step)


# ---------------------------------------------------------------- after a break


def resumed(state: State, gap_s: int) -> State:
    """checkin.gap: a longer break asks what happened; over an hour the screen comes again."""
    if gap_s < ASK_SINCE_AFTER_S or state.end or state.aside:
        return state
    if state.stage not in {Stage.WARM_UP, Stage.EXERCISE, Stage.TODAY, Stage.THROWING}:
        return state
    asks: list[str] = []
    work = state.work
    if work is not None and work.phase != "before" and work.set_number <= work.dose.sets:
        asks.append("sets since")
    if gap_s > CLOSE_SCREEN_AFTER_S:
        asks.append("screen")
    asks += ["worse since", "pain now"]
    return next_since(state._replace(aside="since", since=tuple(asks), unclear=0))


def next_since(state: State) -> State:
    """The next question after a break; `screen` is the screen itself."""
    if not state.since:
        return state._replace(aside="", onward=("back",))
    if state.since[0] == "screen":
        return screening.after_a_break(state._replace(since=(), aside=""))
    return state


def since_answered(state: State, value: str | float | tuple[str, ...]) -> State:
    """One answer about the break."""
    fact, state = state.since[0], state._replace(since=state.since[1:], unclear=0)
    if fact == "sets since" and not isinstance(value, str | tuple):
        return sets_done_meanwhile(state, value)
    if fact == "worse since":
        if value == "no":
            return next_since(state)
        sections = tuple(s for s in Section if s is not Section.WEEKLY)
        return screening.again(state._replace(since=(), aside=""), sections, ())
    if isinstance(value, str | tuple):
        return next_since(state)
    return pain_after_break(state, value)


def sets_done_meanwhile(state: State, count: float) -> State:
    """Sets done in the break count as sets, so that a break never adds one (P14)."""
    work = under_way(state)
    reported = work.set_number if work.phase in REPORTED else work.set_number - 1
    extra = 0
    while reported + extra < work.dose.sets and count >= extra + 1:
        extra += 1
    if reported + extra < work.dose.sets:
        return next_since(state._replace(work=sets_ahead(work, extra)))
    done = training.exercise_done(state, exercise.Result("short"))
    return next_since(training.begin_next(done._replace(missing=(), line=False)))


def sets_ahead(work: Work, extra: int) -> Work:
    """The work `extra` sets further on; a set that was under way is then another one."""
    if not extra:
        return work
    ahead = exercise.sets_told(work, extra)
    return ahead if work.phase in REPORTED else exercise.at_the_set(ahead)


def pain_after_break(state: State, value: float) -> State:
    """Pain now after a break, judged as before a changed set and as at the start."""
    if pain_rules.is_flag(value):
        return checking_in.read_back(state._replace(since=("pain now",)), "pain now")
    state = checking_in.what_stays(checking_in.take_pain_now(state._replace(aside=""), value))
    if state.stage is Stage.THROWING:
        return throwing_after_break(state, value)
    work = state.work
    if work is None:
        return state._replace(onward=("less", "back"))
    decision = pain_rules.before_changed_set(value, state.brief.plan.pain, state.left_early)
    if decision.outcome == "go on":
        return state._replace(onward=("less", "back"))
    told = (*state.told, Line("say", decision.why))
    state = state._replace(told=told, missing=(), line=False)
    day = decision.outcome if decision.outcome == "end session" else ""
    result = None if day else exercise.Result("over")
    after = training.stepped(state, exercise.Stepped(work, result, day, (), decision))
    return after._replace(onward=("less", *after.onward)) if after.onward else after


def throwing_after_break(state: State, value: float) -> State:
    """pain.ceilings: pain now over the ceiling on throwing ends the line after a break as well."""
    decision = pain_rules.in_throwing(value, state.brief.plan.pain)
    if decision.outcome == "go on":
        return throwing_after_fix(state)
    decision = decision._replace(why=decision.why.replace("{pain in throwing}", "{pain now}"))
    happened = (*state.happened, Happening("decision", decision.rule, decision))
    told = (*state.told, Line("say", decision.why))
    state = state._replace(told=told, happened=happened, because=(decision,))
    return training.to_close(state, "thrown")


# ---------------------------------------------------------------- the end by choice


def ending_ask(state: State) -> Ask:
    """Stopped by choice: for today, or is something worse?"""
    if state.missing:
        fact = state.missing[0]
        question = coach_question(fact)
        if fact == "what is worse":
            question = question._replace(choices=tuple("123456"))
            return single(fact, question, QUESTIONS[fact].label, safety=True)
        return single(fact, question, QUESTIONS[fact].label)
    return screening.ask(state)


def ending_answered(state: State, value: str | float | tuple[str, ...]) -> State:
    """`today` ends the day; `worse` opens the sections named, and never ends without a stop."""
    if state.missing == ("stop for today",):
        if value == "today":
            return closing.ended_by_choice(state)
        return state._replace(missing=("what is worse",), unclear=0)
    if state.missing:
        chosen = value if isinstance(value, tuple) else (str(value),)
        sections = tuple(s for n, s in enumerate(Section, 1) if str(n) in chosen)
        state = state._replace(missing=(), yes_left=sections, alone=(), listed=())
        return worse_so_far(screening.next_section(state))
    return worse_so_far(screening.answered(state, value))


def worse_so_far(state: State) -> State:
    """When no sign was named after `worse`, the plan still waits for the clinician."""
    if state.end or state.section != "over":
        return state
    return stop(state, "U01")


def stop_typed(state: State) -> State:
    """`stop` at any prompt: one answer ends the work; typed again it ends the day."""
    if state.stage is Stage.ENDING:
        return closing.ended_by_choice(state)
    return call_it_a_day(state)
