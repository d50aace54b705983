"""Turns: every sentence of a stage put together, with the doses it shows as values.

Law: a dose reaches a turn only as it stands in the state, where it was gated; every exercise line
carries its side and units. After a stop nothing of the day is shown.
"""

from __future__ import annotations

from coach.model.heard import Kind
from coach.model.quantities import Dose
from coach.model.turns import Ask, Line, Offer, Timer, Turn
from coach.rules import dosing
from coach.rules.red_flags import SECTION_LIST
from coach.session import (
    asides,
    checking_in,
    closing,
    opening,
    screening,
    throws_shown,
    training,
)
from coach.session.brief import Brief, Station
from coach.session.commands import reasons_here
from coach.session.questions import QUESTIONS, choice_lines
from coach.session.state import State, Work
from coach.session.stopping import clinician_name, held_turn, stopped_turn
from coach.session.table import Stage
from coach.session.today import dose_today

LEAD_IN_S = 5  # to get from the keyboard into place; set here
MORE_S = 30  # what `more` adds to a rest; set here


def turn(state: State, ask: Ask | None) -> Turn:
    """The turn of a state and its present question."""
    if state.stage is Stage.CLOSED and state.brief.history.hold is not None:
        return held_turn(state.brief, state.brief.history.hold)
    if state.stage is Stage.STOPPED:
        return stopped_turn(state)
    if state.end:
        return last_turn(state)
    if state.stage is Stage.THROWING and not state.aside and not state.repeat:
        lines, throws = throws_shown.lines(state)
        return Turn((*state.told, *lines), ask=ask, decisions=reasons_here(state), throws=throws)
    lines, offers = what_is_said(state, ask)
    head = state.told if state.repeat else (*greeting(state), *state.told, *read_back(state))
    return Turn(
        (*head, *lines),
        ask=ask,
        timer=timer(state),
        offers=offers,
        decisions=reasons_here(state),
    )


def what_is_said(state: State, ask: Ask | None) -> tuple[tuple[Line, ...], tuple[Offer, ...]]:
    """The lines of the present prompt and the doses they show."""
    if state.repeat:
        return short_question(ask), offers_now(state)
    if state.stage is Stage.TODAY and not state.aside:
        return moves_lines(state)
    if state.stage is Stage.WARM_UP and not state.aside:
        return warm_up_lines(state, ask)
    if state.stage is Stage.EXERCISE and state.work is not None and not state.aside:
        return work_lines(state, state.work, ask)
    return spoken(state, ask), ()


def spoken(state: State, ask: Ask | None) -> tuple[Line, ...]:
    """The lines of a prompt that shows no dose."""
    if state.aside:
        return asides.lines(state)
    if state.stage is Stage.WHO:
        return opening.lines(state)
    if state.stage is Stage.CHECK_IN:
        return checking_in.lines(state)
    if state.stage is Stage.ENDING and state.missing:
        return ending_lines(state)
    if state.stage is Stage.ENDING or (state.stage is Stage.SCREEN and state.section != "over"):
        return screening.lines(state)
    if state.stage is Stage.CLOSE:
        return closing.lines(state)
    return own_question_lines(ask)


def short_question(ask: Ask | None) -> tuple[Line, ...]:
    """When only the question is asked again: its sentence, unless the prompt itself says all."""
    if ask is None or ask.question.kind in {Kind.LINE, Kind.WORD} or not ask.question.ask:
        return ()
    return (Line("say", ask.question.ask),)


def greeting(state: State) -> tuple[Line, ...]:
    """The first line of a day, once."""
    if not state.first:
        return ()
    brief = state.brief
    hello = f"Hello {brief.plan.initials.rstrip('.')}. {brief.side_words.capitalize()} today."
    return (Line("say", f"{hello} It takes at most {brief.plan.limits.minutes} minutes."),)


def read_back(state: State) -> tuple[Line, ...]:
    """What the check-in heard, shown once at the screen's first question."""
    if state.stage is not Stage.SCREEN or state.aside or state.asked or state.unclear:
        return ()
    if state.section == "list" or state.flags or state.back or len(state.alone) == 0:
        return ()
    parts = []
    if "pain now" not in state.blank:
        parts.append("pain {pain now} of 10")
    if "waking pain" not in state.blank:
        parts.append("morning {waking pain} of 10")
    if "sleep last night" not in state.blank:
        parts.append("slept {sleep last night} h")
    if "throwing yesterday" not in state.blank:
        parts.append("throws yesterday: {throwing yesterday in words}")
    if "throwing today" not in state.blank:
        parts.append("today: {throwing today in words}")
    if not parts:
        return ()
    return (
        Line(
            "heard",
            f"I read: {', '.join(parts)}.",
            tuple(f"I read: {p}." for p in parts),
        ),
        Line("say", "Type fix to change it."),
    )


def own_question_lines(ask: Ask | None) -> tuple[Line, ...]:
    """A question of a script, its sentence only."""
    if ask is None or ask.question.kind is Kind.LINE:
        return ()
    items = choice_lines(ask)
    return (Line("say", ask.question.ask), *items)


def ending_lines(state: State) -> tuple[Line, ...]:
    """After a stop by choice: the one question that is left."""
    if state.missing == ("what is worse",):
        items = tuple(Line("item", line) for line in opening_sections())
        return (Line("say", "Which of these is it?"), *items)
    return (Line("say", QUESTIONS["stop for today"].ask),)


def opening_sections() -> tuple[str, ...]:
    """All six sections as list lines."""
    return tuple(SECTION_LIST.values())


# ---------------------------------------------------------------- the list and the warm-up


def moves_lines(state: State) -> tuple[tuple[Line, ...], tuple[Offer, ...]]:
    """A game still to come: moves now, or all of it later."""
    reasons = tuple(Line("say", d.why) for d in state.reasons[-2:])
    count = len(state.todo)
    noun = "gentle move" if count == 1 else "gentle moves"
    words = f"For now, {state.brief.side_words}: {count} {noun} from your plan, no weight."
    return (*reasons, Line("say", words)), ()


def warm_up_lines(state: State, ask: Ask | None) -> tuple[tuple[Line, ...], tuple[Offer, ...]]:
    """Today's list with its reasons, then the warm-up and its question."""
    if state.missing and state.missing[0] != "pain in warm-up":
        return own_question_lines(ask), ()
    brief = state.brief
    reasons = tuple(Line("say", d.why) for d in state.reasons if d.why)[-3:]
    lines: list[Line] = [*reasons]
    offers: list[Offer] = []
    for number, place in enumerate(state.todo, 1):
        station = brief.stations[place]
        dose = dose_today(state, place)
        offers.append(Offer(station.exercise.name, brief.plan.side, dose))
        lines.append(item_line(brief, number, station, dose))
    for station in training.warm_up_today(state):
        dose = dose_today(state, -1, station)
        name = station.exercise.name
        offers.append(Offer(name, brief.plan.side, dose, kind="warm-up"))
        words = f"Warm-up, {side_words(brief, station)}: {name}, {amount(dose)}."
        if dose.sets > 1:
            words = (
                f"Warm-up, {side_words(brief, station)}: {name}, {dose.sets} sets, {amount(dose)}."
            )
        lines.append(Line("work", words))
    if state.missing:
        lines.append(Line("say", "What is the worst pain in the warm-up?"))
    return tuple(lines), tuple(offers)


def item_line(brief: Brief, number: int, station: Station, dose: Dose) -> Line:
    """One exercise of the list: number, name, side, dose."""
    side, words = side_words(brief, station), dose_words(dose)
    text = f"{number} {station.exercise.name}, {side}: {words}."
    return Line("item", text, (f"{number}. {station.exercise.name}, {side}.", f"{words}."))


def dose_words(dose: Dose) -> str:
    """`3 sets, 10 to 15 reps, 2 lb dumbbell`."""
    sets = f"{dose.sets} set" if dose.sets == 1 else f"{dose.sets} sets"
    load = "" if dose.load.kind == "none" else f", {dose.load.words()}"
    return f"{sets}, {amount(dose)}{load}"


def side_words(brief: Brief, station: Station) -> str:
    """The side on an exercise line: always the plan's side."""
    if station.exercise.works == "both sides":
        return f"both sides, watch the {brief.side_words}"
    return brief.side_words


def amount(dose: Dose) -> str:
    """`10 to 15 reps`, `5 holds of 30 s each`."""
    low, high = dose.reps_low, dose.reps_high
    number = f"{low}" if low == high else f"{low} to {high}"
    if dose.hold_s:
        noun = "hold" if high == 1 else "holds"
        return f"{number} {noun} of {dose.hold_s} s"
    return f"{number} {'rep' if high == 1 else 'reps'}"


# ---------------------------------------------------------------- an exercise


def offers_now(state: State) -> tuple[Offer, ...]:
    """The dose that the present prompt is about, when only the question is repeated."""
    if state.aside or state.stage is not Stage.EXERCISE:
        return ()
    work = state.work
    if work is None or work.phase not in {"set", "ready"}:
        return ()
    return (set_offer(state, work),)


def set_offer(state: State, work: Work) -> Offer:
    """The set as values."""
    name = training.station_of(work, state).exercise.name
    return Offer(name, state.brief.plan.side, work.dose, work.set_number, "set")


def work_lines(
    state: State, work: Work, ask: Ask | None
) -> tuple[tuple[Line, ...], tuple[Offer, ...]]:
    """The lines of an exercise's present phase."""
    station = training.station_of(work, state)
    if work.phase == "before":
        return before_lines(state, station, ask), ()
    if work.phase in {"set", "ready"}:
        first = work.phase == "set" or work.hold_number == 1
        lines = set_lines(state, work, station) if first else ()
        if work.phase == "ready":
            lines = (*lines, Line("work", hold_words(state, work)))
        if work.phase == "set" and not state.line:
            lines = (*lines, *own_question_lines(ask))
        return lines, (set_offer(state, work),)
    if work.phase == "rest":
        return (Line("say", rest_words(state, work)),), ()
    if work.phase == "hold":
        return (), ()
    if state.missing and state.missing[0] == "felt in set":
        return felt_lines(station), ()
    return own_question_lines(ask), ()


def before_lines(state: State, station: Station, ask: Ask | None) -> tuple[Line, ...]:
    """What is asked before an exercise, under its heading."""
    lines = [heading(state, station)]
    fact = state.missing[0] if state.missing else ""
    if fact == "stand-in weight":
        lines.append(Line("say", training.stand_in_sentence(state, station)))
    if fact == "which version":
        lines.append(Line("say", "Which one fits you today?"))
        picks = dosing.versions_to_pick(station.exercise, station.prescription)
        lines += [
            Line("item", f"{n} {v.name}: {v.fits}" if v.fits else f"{n} {v.name}")
            for n, v in enumerate(picks, 1)
        ]
        return tuple(lines)
    return (*lines, *own_question_lines(ask))


def heading(state: State, station: Station) -> Line:
    """`Exercise 2 of 4, left arm: reach-across row.`"""
    number = state.exercises_today - len(state.todo)
    side = side_words(state.brief, station)
    text = f"Exercise {number} of {state.exercises_today}, {side}: {station.exercise.name}."
    parts = (
        f"Exercise {number} of {state.exercises_today}, {side}.",
        f"{titled(station.exercise.name)}.",
    )
    return Line("name", text, parts)


def titled(name: str) -> str:
    """A name at the start of a sentence."""
    return name[:1].upper() + name[1:]


def set_lines(state: State, work: Work, station: Station) -> tuple[Line, ...]:
    """Heading and position at the first set; then the work line and one cue."""
    lines: list[Line] = []
    if work.set_number == 1:
        lines.append(heading(state, station))
        lines += [Line("say", text) for text in set_up(work, station)]
    elif state.told:
        name = titled(station.exercise.name)
        lines.append(Line("name", f"{name}, {side_words(state.brief, station)}."))
    lines.append(work_line(state, work, station))
    if work.drives == work.set_number:
        lines.append(
            Line("say", "This set decides your next weight. Stop when a rep is not clean.")
        )
    cue = cue_for(work, station)
    if cue:
        lines.append(Line("aim", f"Aim: {cue}"))
    return tuple(lines)


def set_up(work: Work, station: Station) -> tuple[str, ...]:
    """How to get into position: the common sentences, then the version's own, then the range."""
    own = next((v.set_up for v in station.exercise.versions if v.name == work.dose.version), ())
    step = next(
        (r.sentence for r in station.exercise.ranges if r.name == work.dose.range_step),
        "",
    )
    return (*station.exercise.set_up, *own, *((step,) if step else ()))


def cue_for(work: Work, station: Station) -> str:
    """One cue a set, in order, the version's own after the common ones."""
    own = next((v.cues for v in station.exercise.versions if v.name == work.dose.version), ())
    cues = (*station.exercise.cues, *own)
    if work.fault >= 0:
        return station.exercise.faults[work.fault].put_right
    return cues[(work.set_number - 1) % len(cues)] if cues else ""


def work_line(state: State, work: Work, station: Station) -> Line:
    """`Set 2 of 3, left arm: 10 to 15 reps, 2 lb dumbbell. Lower for 3 s. Rest 60 s.`"""
    dose = work.dose
    side = side_words(state.brief, station)
    load = "" if dose.load.kind == "none" else f", {dose.load.words()}"
    version = f", {dose.version}" if dose.version else ""
    reach = f", {dose.range_step}" if dose.range_step else ""
    head = f"Set {work.set_number} of {dose.sets}, {side}"
    body = f"{amount(dose)}{load}{version}{reach}"
    tempo = f"{dose.tempo[0].upper()}{dose.tempo[1:]}." if dose.tempo else ""
    rest = f"Rest {dose.rest_s} s." if dose.rest_s and work.set_number < dose.sets else ""
    parts = tuple(p for p in (f"{head}.", f"{body}.", tempo, rest) if p)
    text = " ".join(p for p in (f"{head}: {body}.", tempo, rest) if p)
    return Line("work", text, parts)


def hold_words(state: State, work: Work) -> str:
    """`Hold 1 of 5, left arm: 30 s.`"""
    side = state.brief.side_words
    return f"Hold {work.hold_number} of {work.dose.reps_high}, {side}: {work.dose.hold_s} s."


def rest_words(state: State, work: Work) -> str:
    """What was kept, how long the rest is, what comes next."""
    more = f" and {work.more * MORE_S} s more" if work.more else ""
    rest = f"Rest {work.dose.rest_s} s{more}. {next_words(state, work)}"
    return rest if state.repeat else f"{kept_words(state, work)}{rest}"


def kept_words(state: State, work: Work) -> str:
    """`Saved: 13 reps, pain 1 of 10. `, without what stayed unclear."""
    noun = "holds" if work.dose.hold_s else "reps"
    parts = []
    if not {"reps in set", "holds in set"} & set(state.blank):
        parts.append(f"{{{noun} in set}} {noun}")
    if "pain in set" not in state.blank:
        parts.append("pain {pain in set} of 10")
    return f"Saved: {', '.join(parts)}. " if parts else "Saved. "


def next_words(state: State, work: Work) -> str:
    """What follows the rest."""
    if work.change and work.over and not work.stays_due:
        return "Next: pain now."
    side = state.brief.side_words
    load = f", {work.later[0].load.words()}" if work.later else ""
    return f"Next, {side}: set {work.set_number + 1} of {work.dose.sets}{load}."


def felt_lines(station: Station) -> tuple[Line, ...]:
    """The choices after a set: fine, each fault as it feels, something else."""
    faults = station.exercise.faults
    items = [Line("item", "1 fine")]
    items += [Line("item", f"{n} {fault.felt_as}") for n, fault in enumerate(faults, 2)]
    items.append(Line("item", f"{len(faults) + 2} something else"))
    return (Line("say", "How did that set feel?"), *items)


def timer(state: State) -> Timer | None:
    """The timer of a rest or a hold."""
    if state.aside or state.stage is not Stage.EXERCISE or state.work is None:
        return None
    work = state.work
    side = state.brief.side_words
    if work.phase == "rest":
        seconds = work.dose.rest_s + work.more * MORE_S
        return Timer(
            "rest",
            seconds,
            title="Rest",
            after="Rest is over.",
            side=side,
            next=next_words(state, work),
        )
    if work.phase == "hold":
        title = f"Hold {work.hold_number} of {work.dose.reps_high}, {side}"
        after = f"Let go. Hold {work.hold_number} of {work.dose.reps_high} is done."
        return Timer("hold", work.dose.hold_s, LEAD_IN_S, title, side, after)
    return None


# ---------------------------------------------------------------- the end


def last_turn(state: State) -> Turn:
    """The end of a day that is no stop: what was done, why it ended, what is next."""
    name = clinician_name(state.brief.plan.calls)
    number = state.brief.plan.calls.clinician.number
    lines: list[Line] = [*state.told]
    lines += [Line("say", d.why) for d in state.reasons[-3:] if state.end != "by choice" and d.why]
    if state.end == "closed":
        if state.reasons and state.reasons[-1].rule == "plan.life":
            lines.append(Line("say", f"Call {name}: {number}."))
        return Turn(tuple(lines), end="closed", decisions=state.reasons)
    if state.end == "done" and state.stage is Stage.DONE:
        lines = [Line("say", "Done for today. {work done}."), *state.told]
    else:
        lines.insert(0, Line("say", "Done for today. {work done}."))
    lines.append(Line("say", f"All of it is saved. {name} can read it."))
    if state.end == "partial":
        lines.append(Line("say", f"Call {name} if you are not sure: {number}."))
    lines.append(closing.what_is_next(state))
    return Turn(tuple(lines), end=state.end, decisions=state.reasons)
