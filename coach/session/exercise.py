"""One exercise as a machine of its own: `Work` goes in at the door, a `Result` comes out.

Law: it gets its dose and the count of exercises left before it, and may not read the day. After
pain over the ceiling no set is the same again: it is shorter, easier or lighter, or there is none.
A set that pain ended counts as a set, so that no change ever adds one. Progress is not decided here.
"""

from __future__ import annotations

from typing import Final, NamedTuple

from coach.model.decisions import Decision
from coach.model.ladders import Drove
from coach.model.program import Fault, PainCeilings
from coach.model.quantities import Dose, Load
from coach.model.turns import Line
from coach.rules import dapre, dosing, limits
from coach.rules import pain as pain_rules
from coach.rules.progression import earns
from coach.session.brief import Station
from coach.session.state import Work
from coach.session.today import changed

# A hold of this length or more is timed by the coach, one by one; shorter ones the athlete counts.
# Set here, to be signed by a clinician.
TIMED_HOLD_S: Final = 15
MISSED_IN_A_ROW: Final = 3  # three missed corrections running: `if it stays` acts


class Result(NamedTuple):
    """How an exercise ended: good, short (too few clean reps), form, over, left out."""

    how: str


class Stepped(NamedTuple):
    """What a step brought: the work or its result, an order for the day, words, a decision.

    `day` is '' or: read back, end session.
    """

    work: Work
    result: Result | None = None
    day: str = ""
    lines: tuple[Line, ...] = ()
    decision: Decision | None = None


def timed(dose: Dose) -> bool:
    """Whether the coach times each hold."""
    return dose.hold_s >= TIMED_HOLD_S


def at_the_set(work: Work) -> Work:
    """The work at its next set: the first hold where holds are timed, else the set itself."""
    return work._replace(phase="ready" if timed(work.dose) else "set", hold_number=1)


def hold_over(work: Work) -> Work:
    """A hold that ended or was broken off is done; it is never started again."""
    if work.hold_number >= work.dose.reps_high:
        return work._replace(phase="report")
    return work._replace(phase="ready", hold_number=work.hold_number + 1)


def reps(work: Work, count: float, owned: tuple[Load, ...] = ()) -> Work:
    """The clean reps or holds of the set: fewer than the lower number is short; the last set's
    two over the top earn a step (prog.two_for_two). `owned` are the loads here, for a table.
    """
    work = work._replace(
        short=work.short or count < work.dose.reps_low,
        earned=earns(count, work.table or work.dose.reps_high),
    )
    return by_its_row(work, count, owned) if work.table else work


def by_its_row(work: Work, count: float, owned: tuple[Load, ...]) -> Work:
    """prog.dapre: the driving set's row is kept; the third set's row may lower the fourth.

    Said twice in one set, the lower row stands.
    """
    row = dapre.row_of(count, work.dose.reps_high)
    if work.set_number == work.drives:
        was = row if work.drove is None else work.drove.row
        work = work._replace(drove=Drove(min(row, was), work.dose.load))
    if work.set_number + 1 == dapre.FOURTH and work.later:
        fourth = dapre.fourth_set(work.later[0], row, owned)
        work = work._replace(later=(fourth, *work.later[1:]))
    return work


def by_the_table(work: Work, drives: int, owned: tuple[Load, ...]) -> Work:
    """prog.dapre: each set its own reps and load, from today's working weight; `drives` 0: none."""
    dose = work.dose
    lines = dapre.set_lines(dose.load, (dose.reps_low, dose.reps_high), dose.sets, owned)
    work = work._replace(set_number=0, later=lines, table=dose.reps_high, drives=drives)
    return sets_on(work, 1)


def sets_on(work: Work, count: int) -> Work:
    """The work `count` sets further on, where each set is another one at that set's own line."""
    work = work._replace(set_number=work.set_number + count)
    if not work.later:
        return work
    line = work.later[count - 1]
    dose = work.dose._replace(reps_low=line.reps_low, reps_high=line.reps_high, load=line.load)
    return work._replace(dose=dose, later=work.later[count:])


def sets_told(work: Work, count: int) -> Work:
    """The work after `count` sets that were done in a break.

    Where a change waits, as after pain, the set just done is what is changed: no table moves its
    load on meanwhile.
    """
    if work.change:
        work = work._replace(later=(), table=0, drives=0)
    return sets_on(work, count)


def with_loads(work: Work, owned: tuple[Load, ...]) -> Work:
    """A table's sets with what is here: a load that is not, rounded down to one that is."""

    def here(load: Load) -> Load:
        return dapre.rounded_down(load.amount, load, owned)

    lines = tuple(line._replace(load=here(line.load)) for line in work.later)
    return work._replace(later=lines, dose=work.dose._replace(load=here(work.dose.load)))


def working_dose(work: Work) -> Dose:
    """The dose at its working weight, that of the last set to come."""
    return sets_on(work, len(work.later)).dose if work.later else work.dose


def pain(
    work: Work, value: float, station: Station, ceilings: PainCeilings, left_before: int
) -> Stepped:
    """The pain ladder after a set (rule pain.in_set); `left_before` exercises were left today."""
    room = dosing.room_for_change(station.exercise, station.prescription, work.dose)
    last = work.set_number >= work.dose.sets
    decision = pain_rules.in_set(
        value, ceilings, room, last_set=last, exercises_left_early=left_before
    )
    if decision.outcome == "go on":
        return Stepped(work)
    if decision.outcome in {"read back", "end session"}:
        return Stepped(work, day=decision.outcome, decision=decision)
    over = work._replace(change=decision.outcome, over=True, felt_due=False)
    return Stepped(over, decision=decision)


def felt(work: Work, name: str, faults: tuple[Fault, ...]) -> Stepped:
    """What was felt: fine closes the correction; the same one three sets running acts."""
    if name == "fine":
        return Stepped(work._replace(fault=-1, fault_run=0, felt_due=False))
    number = next((n for n, fault in enumerate(faults) if fault.name == name), -1)
    if number < 0:
        words = Line("say", "I keep that for your clinician. Do less if it feels wrong.")
        return Stepped(work._replace(fault=-1, fault_run=0, felt_due=True), lines=(words,))
    run = min(work.fault_run + 1, MISSED_IN_A_ROW) if work.fault == number else 1
    fault = faults[number]
    work = work._replace(fault=number, fault_run=run, felt_due=True)
    lines = (Line("say", fault.put_right),)
    decision = dosing.correction(fault, run)
    if run >= MISSED_IN_A_ROW and fault.if_it_stays:
        stays = "leave" if fault.if_it_stays == "leave out" else fault.if_it_stays
        return Stepped(work._replace(change=stays, stays_due=True), lines=lines, decision=decision)
    return Stepped(work, lines=lines, decision=decision)


def set_over(work: Work) -> Stepped:
    """After the talk of a set: rest, or the end of the exercise."""
    if work.change == "leave":
        return Stepped(work, Result("over" if work.over else "form"))
    if work.set_number >= work.dose.sets:
        return Stepped(work, Result(how_it_went(work)))
    return Stepped(work._replace(phase="rest"))


def how_it_went(work: Work) -> str:
    """The result that a later day may read; pain, an open correction or few reps earn nothing."""
    if work.over:
        return "over"
    if work.fault >= 0:
        return "form"
    if work.short:
        return "short"
    return "earned" if work.earned else "good"


def rest_over(work: Work, station: Station) -> Stepped:
    """After the rest: pain now before a changed set, else the next set."""
    if work.change and work.over and not work.stays_due:
        return Stepped(work._replace(phase="recheck"))
    if work.change:
        return change_and_go_on(work, station)
    return Stepped(at_the_set(sets_on(work, 1)))


def recheck(
    work: Work, value: float, station: Station, ceilings: PainCeilings, left_before: int
) -> Stepped:
    """Pain now before a changed set: still over the ceiling leaves the exercise."""
    decision = pain_rules.before_changed_set(value, ceilings, left_before)
    if decision.outcome == "go on":
        return change_and_go_on(work, station)
    if decision.outcome == "leave":
        return Stepped(work, Result("over"), decision=decision)
    return Stepped(work, day=decision.outcome, decision=decision)


def change_and_go_on(work: Work, station: Station) -> Stepped:
    """The next set, one change lower and gated; without room the exercise is left."""
    lower = changed(work.dose, work.change, station)
    if lower is None:
        return Stepped(work, Result("over" if work.over else "form"))
    dose = limits.gate(lower, station.prescription, station.exercise)
    lines = tuple(Line("say", text) for text in change_words(work.change, dose, station))
    work = work._replace(dose=dose, change="", stays_due=False, set_number=work.set_number + 1)
    work = work._replace(later=(), table=0, drives=0)
    return Stepped(at_the_set(work), lines=lines)


def change_words(change: str, dose: Dose, station: Station) -> tuple[str, ...]:
    """The one change in a sentence; an easier version with how to get into it."""
    if change == "shorter range":
        sentence = next(r.sentence for r in station.exercise.ranges if r.name == dose.range_step)
        return (f"One change: a shorter way. {sentence}",)
    if change == "easier version":
        set_up = next(v.set_up for v in station.exercise.versions if v.name == dose.version)
        return (f"One change: an easier version, {dose.version}.", *set_up)
    return (f"One change: less weight, {dose.load.words()}.",)
