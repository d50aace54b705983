"""Warm-up and exercises in the day: what is asked, what is shown, and how the list goes down.

Law: it hands each exercise its dose at the door and takes its result; it never changes a dose
itself. Two exercises left for pain, or one strong pain, end the work of the day.
"""

from __future__ import annotations

from typing import Final

from coach.model.heard import Kind, Question
from coach.model.turns import Ask, Line
from coach.rules import dapre, dosing, picking
from coach.rules import pain as pain_rules
from coach.session import exercise, scripts, throwing
from coach.session.brief import Brief, Station
from coach.session.checking_in import read_back
from coach.session.machine import follow
from coach.session.questions import (
    QUESTIONS,
    coach_question,
    gathered,
    is_flag_name,
    single,
)
from coach.session.state import Happening, State, Work, under_way
from coach.session.stopping import after_the_work
from coach.session.table import Stage
from coach.session.today import at_hand, dose_today, driving_today, loads_here, still_allowed

LEFT_TO_END: Final = 2


def station_of(work: Work, state: State) -> Station:
    """The exercise under way with its dose line."""
    return state.brief.stations[work.place]


# ---------------------------------------------------------------- the list goes down


def next_exercise(state: State) -> State:
    """The exercise under way is behind; the next one, or the close, follows at once."""
    if state.stage is not Stage.EXERCISE and not state.todo and not state.throws_only:
        return to_close(state, "nothing left")
    return state._replace(
        onward=("next",),
        work=None,
        at=state.work.place + 1 if state.work else 0,  # what is behind tells one way from another
        missing=(),
        line=False,
        unclear=0,
        reread=False,
    )


def begin_next(state: State) -> State:
    """The next exercise of the list, or, after the last one, throws or the close."""
    if not state.todo:
        return throwing.begin(state, to_close)
    place, *rest = state.todo
    trigger = "next" if state.stage is Stage.EXERCISE else "warm"
    state = for_the_next(state._replace(stage=follow(state.stage, trigger)))
    name = state.brief.stations[place].exercise.name
    work = at_the_door(state, place)
    state = state._replace(
        work=work,
        todo=tuple(rest),
        at=0,
        reread=False,
    )
    return walk(scripts.know(state, "exercise", name), "before an exercise")


def at_the_door(state: State, place: int) -> Work:
    """An exercise's work with today's dose; where the plan names a table, set by set."""
    work = Work(place, dose_today(state, place))
    station = state.brief.stations[place]
    if not dapre.driving_set(station.exercise, station.prescription):
        return work
    return exercise.by_the_table(work, driving_today(state, station, work.dose), loads_here(state))


def what_still_acts(state: State) -> State:
    """What the rest of the day reads: facts whose last reader is behind are dropped.

    The lists in force have made the list. The level goes on to the warm-up, and where throws of
    the plan wait for it; a day of little work, or an effect, leaves `no_step` where a step is due.
    """
    brief = state.brief
    cleared = throwing.cleared_today(brief) is not None
    to_warm_up = state.stage in {Stage.TODAY, Stage.WARM_UP}
    held = state.no_step or state.level > 0 or ("no step up", "all") in state.lowered
    return state._replace(
        order="as usual",
        recovery=False,
        level=state.level if cleared or to_warm_up else 0,
        no_step=held and (brief.wants_up or cleared),
        gone=gone_that_counts(state),
    )


def gone_that_counts(state: State) -> tuple[str, ...]:
    """Of what is not here today, the things that a stand-in may still be asked for, and loads
    where an exercise to come goes by the table.
    """
    places = (*state.todo, *((state.work.place,) if state.work else ()))
    stations = [state.brief.stations[place] for place in places]
    gear = {n for s in stations for n, by in s.prescription.without if by == "stand-in"}
    by_the_table = any(dapre.driving_set(s.exercise, s.prescription) for s in stations)
    loads = {load.words() for load in state.brief.plan.loads_at_home} if by_the_table else set()
    return tuple(
        thing for thing in state.gone if thing in loads or any(name in thing for name in gear)
    )


def for_the_next(state: State) -> State:
    """As `what_still_acts`, without what was about the exercise that is behind."""
    names = {"all", *(state.brief.stations[place].exercise.name for place in state.todo)}
    return what_still_acts(state)._replace(
        lowered=tuple(pair for pair in state.lowered if acts_on_the_rest(pair, names, state.brief)),
        truth=state.truth & ~state.brief.about_a_set,
    )


def acts_on_the_rest(lowered: tuple[str, str], names: set[str], brief: Brief) -> bool:
    """Whether a script's effect still has a reader once only `names` are to come.

    A step held back for one exercise is read to the day's end: the one step up of a day is given
    to the first that earned it, so that a hold forgotten would hand it on, unsaid.
    """
    effect, target = lowered
    if effect == "no step up":
        return target != "all" and brief.wants_up
    return effect == "today" or target in names


def to_close(state: State, trigger: str) -> State:
    """The work of the day is over; the closing questions come."""
    over = after_the_work(state, trigger)
    kept = over._replace(truth=state.truth, told=state.told, reasons=state.reasons)
    return closing_again(kept._replace(because=state.because, thrown=state.thrown))


def closing_again(state: State) -> State:
    """The closing questions from their first."""
    state, _over = scripts.settle(state, "close", lambda _s, _f: True)
    return state


def walk(state: State, moment: str) -> State:
    """On to the next question of the moment, or past its end."""
    state, over = scripts.settle(state, moment, due)
    if not over or state.end:
        return state
    state = state._replace(missing=(), line=False)
    if state.stage is Stage.WARM_UP:
        return next_exercise(state)
    if state.work is None:
        return state
    if moment == "before an exercise":
        return open_set(state._replace(work=exercise.at_the_set(state.work)))
    return after_the_talk(state)


def open_set(state: State) -> State:
    """A set begins: a timed hold waits for `go`; reps are asked for at once."""
    work = under_way(state)
    return state if work.phase == "ready" else report(state)


def after_the_talk(state: State) -> State:
    """The talk after a set is over: a script's effect, rest, or the exercise's end."""
    work = under_way(state)
    name = station_of(work, state).exercise.name
    state = state._replace(
        happened=(*state.happened, Happening("set", name)),
        truth=state.truth & ~state.brief.about_one_set,  # the next set says it anew
    )
    if ("today", "no more exercises") in state.lowered or (
        "today",
        "rest day",
    ) in state.lowered:
        return to_close(exercise_done(state, exercise.Result("left")), "end the work")
    work = by_effects_on_this(state, work, name)
    return stepped(state, exercise.set_over(work))


def by_effects_on_this(state: State, work: Work, name: str) -> Work:
    """A script's effect on `this exercise` acts on the next set."""
    for effect, target in state.lowered:
        if target not in {name, "this exercise", "all"}:
            continue
        if effect == "leave out":
            return work._replace(change="leave")
        if effect in {"shorter range", "easier version", "lighter"} and not work.change:
            if (effect, name) not in state.lowered and target != "this exercise":
                continue
            return work._replace(change=effect, stays_due=True)
        if effect == "one set fewer" and target == "this exercise":
            work = work._replace(
                dose=work.dose._replace(sets=max(work.dose.sets - 1, work.set_number))
            )
    return work


def stepped(state: State, step: exercise.Stepped) -> State:
    """Carry a step of the exercise into the day."""
    was = state.work.phase if state.work else ""
    told = (*state.told, *step.lines)
    because = (step.decision,) if step.decision else state.because
    state = state._replace(told=told, because=because, work=step.work)
    if step.decision:
        state = state._replace(
            happened=(
                *state.happened,
                Happening("decision", step.decision.rule, step.decision),
            )
        )
    if step.day == "end session":
        done = exercise_done(state, exercise.Result("over"))
        return to_close(done, "end the work")
    if step.result is None:
        state = spent_effects(state)
        opens = step.work.phase == "set" and was != "set"
        return open_set(state) if opens else state
    return next_exercise(exercise_done(spent_effects(state), step.result))


def spent_effects(state: State) -> State:
    """Effects on `this exercise` are done once its next set or its end is decided."""
    kept = tuple(pair for pair in state.lowered if pair[1] != "this exercise")
    return state._replace(lowered=kept)


def exercise_done(state: State, result: exercise.Result) -> State:
    """The exercise's end in the day's count; the second left for pain ends the work."""
    work = under_way(state)
    name = station_of(work, state).exercise.name
    left = min(state.left_early + (1 if result.how == "over" else 0), LEFT_TO_END)
    state = state._replace(
        left_early=left,
        happened=(*state.happened, *drove(work, name), Happening(f"exercise {result.how}", name)),
    )
    if result.how == "over" and not any("We leave" in line.text for line in state.told):
        words = Line("say", f"We leave {name} for today.")
        state = state._replace(told=(*state.told, words))
    return state


def drove(work: Work, name: str) -> tuple[Happening, ...]:
    """What the driving set said, for the diary; nothing where no table drives."""
    if work.drove is None:
        return ()
    row, load = work.drove
    return (Happening("drove", f"{name}|{row}|{load.kind}|{load.amount:g}|{load.unit}"),)


# ---------------------------------------------------------------- what is asked


def due(state: State, fact: str) -> bool:
    """Which of the coach's questions are asked around a set."""
    work = state.work
    if fact == "pain in warm-up":
        return bool(warm_up_today(state))
    if work is None:
        return False
    station = station_of(work, state)
    if fact == "which version":
        return len(dosing.versions_to_pick(station.exercise, station.prescription)) > 1
    if fact == "stand-in weight":
        return bool(stand_in_sentence(state, station))
    if fact == "holds in set":
        return station.exercise.counted_in == "holds"
    if fact == "reps in set":
        return station.exercise.counted_in == "reps"
    if fact == "felt in set":
        return work.felt_due and bool(station.exercise.faults)
    return True


def warm_up_today(state: State) -> tuple[Station, ...]:
    """The plan's warm-up, less what today's lists do not allow."""
    program = state.brief.program
    second = state.brief.second.outcome != "first"
    return tuple(
        station
        for station in state.brief.warm_up
        if (state.level == 0 or station.exercise.name in program.gentle)
        and state.brief.locks[station.exercise.name].outcome == "open"
        and (not second or station.exercise.name in program.twice_a_day)
    )


def stand_in_sentence(state: State, station: Station) -> str:
    """What stands in for a piece that is not here today, if the plan lets it."""
    allowed = {gear for gear, by in station.prescription.without if by == "stand-in"}
    here = at_hand(state)
    for gear, sentence in station.exercise.stand_in:
        if gear in allowed and not any(gear in thing for thing in here):
            return sentence
    return ""


def moment_of(state: State) -> str:
    """The script moment of the present prompt."""
    if state.stage is Stage.WARM_UP:
        return "warm-up"
    if state.work is not None and state.work.phase == "before":
        return "before an exercise"
    return "after a set"


def prompt_name(fact: str, state: State) -> str:
    """A prompt's name in scenarios: after a set with its number and exercise."""
    work = state.work
    if work is None or work.phase == "before":
        return fact
    name = station_of(work, state).exercise.name
    if fact.endswith("in set"):
        return f"{fact} {work.set_number} of {name}"
    own = scripts.own_step(state, "after a set", fact)
    if own is not None and own.kind == "ask also":
        return f"{fact} in set {work.set_number} of {name}"
    return fact


def ask(state: State) -> Ask | None:
    """The present prompt of warm-up or exercise; None while a timer runs."""
    work = state.work
    if work is not None:
        if work.phase in {"rest", "hold"}:
            return None
        if work.phase == "ready":
            return go_ask(state, work)
        if work.phase == "recheck":
            return named_ask("pain before change", state)
    if state.line:
        return gathered(
            prompt_name("set line in set", state),
            state.missing,
            line_label(state.missing),
        )
    return named_ask(state.missing[0], state)


def go_ask(state: State, work: Work) -> Ask:
    """`go` starts a hold."""
    name = station_of(work, state).exercise.name
    question = Question("go", Kind.WORD, choices=("go",))
    return Ask(
        f"go for hold {work.hold_number} in set {work.set_number} of {name}",
        "Type go when in place:",
        question,
    )


def line_label(facts: tuple[str, ...]) -> str:
    """The label of the line after a set."""
    first = "Holds done" if "holds in set" in facts else "Clean reps"
    return f"{first} and worst pain:"


def named_ask(fact: str, state: State) -> Ask:
    """The question of a fact: the coach's, the clinician's own, or a sign asked again."""
    step = scripts.own_step(state, moment_of(state), fact)
    if step is not None and (step.kind == "ask also" or is_flag_name(fact)):
        return scripts.script_ask(state, step, prompt_name(fact, state))
    question = coach_question(fact, step.text if step else "")
    work = state.work
    if work is not None:
        station = station_of(work, state)
        if fact == "felt in set":
            names = tuple(fault.name for fault in station.exercise.faults)
            question = question._replace(choices=("fine", *names, "something else"))
        if fact == "which version":
            picks = dosing.versions_to_pick(station.exercise, station.prescription)
            question = question._replace(choices=tuple(v.name for v in picks))
    return single(prompt_name(fact, state), question, QUESTIONS[fact].label)


# ---------------------------------------------------------------- takers


def take_warm_up_pain(state: State, value: float) -> State:
    """ready.warm_up: pain in the warm-up is judged like pain in a set."""
    decision = pain_rules.in_warm_up(value, state.brief.plan.pain)
    if decision.outcome == "go on":
        return state
    if decision.outcome == "read back":
        return read_back(state, "pain in warm-up")
    state = state._replace(
        because=(decision,),
        happened=(*state.happened, Happening("decision", decision.rule, decision)),
    )
    state = state._replace(told=(*state.told, Line("say", decision.why)))
    if decision.outcome in {"end session", "nothing"}:
        return to_close(state, "end the work")
    gentle = state._replace(level=max(state.level, 1), no_step=True)
    kept, _reasons = still_allowed(gentle, state.todo)
    return gentle._replace(todo=kept, exercises_today=len(kept))


def take_reps(state: State, count: float) -> State:
    """The reps or holds of the set; a new report begins, so the reason before it has been read."""
    state = state._replace(because=())
    work = under_way(state)
    owned = loads_here(state) if work.table else ()
    return state._replace(work=exercise.reps(work, count, owned))


def take_pain_in_set(state: State, value: float) -> State:
    """pain.in_set, at once."""
    work = under_way(state)
    step = exercise.pain(
        work, value, station_of(work, state), state.brief.plan.pain, state.left_early
    )
    if step.day == "read back":
        return read_back(state, "pain in set")
    if step.decision is not None:
        state = state._replace(told=(*state.told, Line("say", step.decision.why)))
    if step.day == "end session":
        name = station_of(work, state).exercise.name
        state = state._replace(happened=(*state.happened, Happening("set", name)))
    return stepped(state, step)


def take_felt(state: State, name: str) -> State:
    """The correction that fits, or the end of one."""
    work = under_way(state)
    station = station_of(work, state)
    if name == "something else":
        note = Happening("note", f"Something else felt wrong in {station.exercise.name}.")
        state = state._replace(happened=(*state.happened, note))
    pinched = picking.after_a_pinch(station.exercise)
    if "pinch" in name and pinched.outcome == "leave":
        note = Happening("note", f"A pinch in {station.exercise.name}.")
        told = (*state.told, Line("say", pinched.why))
        state = state._replace(happened=(*state.happened, note), told=told)
        left = work._replace(change="leave", fault=-1, felt_due=False)
        return stepped(state, exercise.Stepped(left, decision=pinched))
    return stepped(state, exercise.felt(work, name, station.exercise.faults))


def take_recheck(state: State, value: float) -> State:
    """Pain now before a changed set."""
    work = under_way(state)
    if pain_rules.is_flag(value):
        return read_back(state, "pain before change")
    step = exercise.recheck(
        work, value, station_of(work, state), state.brief.plan.pain, state.left_early
    )
    if step.decision is not None:
        state = state._replace(told=(*state.told, Line("say", step.decision.why)))
    return stepped(state._replace(missing=()), step)


def take_version(state: State, name: str) -> State:
    """pick.*: the version that the athlete says fits, among those of the plan's opening level."""
    work = under_way(state)
    station = station_of(work, state)
    picks = dosing.versions_to_pick(station.exercise, station.prescription)
    if name not in {version.name for version in picks}:
        return state
    picked = Happening("picked", f"{station.exercise.name}|{name}")
    return state._replace(
        work=work._replace(dose=work.dose._replace(version=name)),
        happened=(*state.happened, picked),
    )


def take_stand_in(state: State, answer: str) -> State:
    """ready.equipment: no stand-in at its stated load leaves the exercise out today."""
    if answer == "yes":
        return state
    state = exercise_done(state, exercise.Result("no equipment"))
    return next_exercise(state._replace(missing=()))


def rest_or_hold_over(state: State) -> State:
    """A timer ran out: the next set, or the next hold, or the report."""
    work = under_way(state)
    if work.phase == "hold":
        return hold_is_over(state)
    return stepped(state, exercise.rest_over(work, station_of(work, state)))


def back_at_the_set(state: State) -> State:
    """On with the exercise after a break: a rest is over, a hold broken off is done (P14)."""
    work = state.work
    if work is None or state.stage is not Stage.EXERCISE:
        return state
    if work.phase in {"before", "report", "recheck"}:
        return state
    if work.phase in {"rest", "hold"}:
        return rest_or_hold_over(state)
    if work.phase == "ready":
        return state._replace(missing=())
    return open_set(state._replace(work=exercise.at_the_set(work), missing=()))


def hold_is_over(state: State) -> State:
    """A hold is done; after the last one the set is reported."""
    work = under_way(state)
    work = exercise.hold_over(work)
    state = state._replace(work=work)
    return report(state) if work.phase == "report" else state


def report(state: State) -> State:
    """The questions after a set begin."""
    work = under_way(state)
    kept = tuple(fact for fact in state.blank if not fact.endswith("in set"))
    state = state._replace(at=0, blank=kept)
    left = float(work.dose.sets - work.set_number)
    state = scripts.know(scripts.know(state, "set", float(work.set_number)), "sets left", left)
    return walk(state, "after a set")


TAKERS: Final = {
    "pain in warm-up": take_warm_up_pain,
    "reps in set": take_reps,
    "holds in set": take_reps,
    "pain in set": take_pain_in_set,
    "felt in set": take_felt,
    "pain before change": take_recheck,
    "which version": take_version,
    "stand-in weight": take_stand_in,
}
