"""How a day ends early: the stop on a warning sign, the end by choice, and what each says.

Law: a stop cannot be taken back and needs one answer at most. Its screen stands alone, in a fixed
order: what ends, the emergency line where the tier asks for it, whom to call with the number, what
to say, when it gets urgent, what was typed, who opens the plan, the code. It names no exercise.
"""

from __future__ import annotations

from datetime import date, datetime
from typing import Final

from coach.model.decisions import Basis, Decision
from coach.model.flags import Group, Tier
from coach.model.history import Hold
from coach.model.program import Calls, Place
from coach.model.turns import Line, Turn
from coach.rules.red_flags import FLAGS, stop_for
from coach.session.brief import Brief
from coach.session.machine import follow
from coach.session.state import Happening, State

# A section that was answered neither yes nor no clearly: closed until the clinician has asked.
UNSURE: Final = "U01"
# A yes to something new or worse that the typed words did not name.
UNNAMED: Final = "U02"
# A stop that the clinician's own script asks for.
BY_PROGRAM: Final = "P01"
# Back after 28 or more days off.
AWAY: Final = "A28"
# Sharp or deep pain on throwing; throws a step down for soreness twice running, or at the first.
THROWING_PAIN: Final = "T01"
TWICE_DOWN: Final = "T02"
# What to say of a stop that no warning sign of the list named; set here. None for what the athlete
# did not name: there the typed words stand.
SAY: Final = {
    UNSURE: "I said yes to a warning sign, or I was not sure.",
    BY_PROGRAM: "My answers in the program told me to stop.",
    AWAY: "I did no exercise for 28 days or more.",
    THROWING_PAIN: "It hurt sharp or deep when I threw.",
    TWICE_DOWN: "My arm got sore from throwing, again or at the lowest step.",
}
DOUBTS_TO_END: Final = 3  # a third unclear safety answer ends the day; set here
HOURS_FROM_TO: Final = 2  # office hours are read only as one `from` and one `to`
SATURDAY: Final = 5
DAYS: Final = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
MONTHS: Final = (
    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
)  # fmt: skip
EVENING_FROM_H: Final = 17


# What outlives the work of a day: its summary, and what the last talk still needs.
_OUTLIVES: Final = ("stage", "brief", "first", "doubts", "quoted", "morning_up", "happened")
_SPENT: Final = {n: v for n, v in State._field_defaults.items() if n not in _OUTLIVES}


def after_the_work(state: State, trigger: str) -> State:
    """The stage that follows, with all dropped that only the day's work reads."""
    return state._replace(**{**_SPENT, "stage": follow(state.stage, trigger), "first": False})


def stop(state: State, code: str, group: str = "", because: Decision | None = None) -> State:
    """The day stopped by flag `code`; raises IllegalMove from a stage that has ended.

    `because` is the decision that led to it, where a rule's number did.
    """
    place = state.brief.plan.calls.place
    decision = _stop_decision(code, place, because)
    return after_the_work(state, "warning sign")._replace(
        doubts=0,
        end="stopped",
        stop=(code, decision.outcome, group),
        reasons=(because, decision) if because else (decision,),
        happened=(*state.happened, Happening("stop", code, decision)),
    )


def _stop_decision(code: str, place: Place, because: Decision | None) -> Decision:
    if code in FLAGS:
        return stop_for(code, place)
    return unnamed_stop(place) if code == UNNAMED else waiting_stop(place, because)


def away_too_long(state: State, decision: Decision) -> State:
    """layoff.gap: after 28 or more days off the plan waits until the clinician has said so."""
    tier = Tier.BEFORE_NEXT_SESSION.value
    told = decision._replace(outcome=tier, place=state.brief.plan.place)
    return state._replace(
        stage=follow(state.stage, "away too long"),
        end="stopped",
        stop=(AWAY, tier, ""),
        reasons=(told,),
        happened=(Happening("stop", AWAY, told),),
    )


def stop_by_script(state: State, tier: str, decision: Decision) -> State:
    """The day stopped by a branch of the program; `tier` is the branch's."""
    return after_the_work(state, "warning sign")._replace(
        doubts=0,
        end="stopped",
        stop=(BY_PROGRAM, tier, ""),
        reasons=(decision,),
        happened=(*state.happened, Happening("stop", BY_PROGRAM, decision)),
    )


def waiting_stop(place: Place, because: Decision | None) -> Decision:
    """A stop that no single sign named: the plan waits for the clinician before the next session."""
    if because is None:
        return unsure_stop(place)
    return because._replace(outcome=Tier.BEFORE_NEXT_SESSION.value, place=place)


def unsure_stop(place: Place) -> Decision:
    """stop.screen: a group with a yes but no clear flag waits for the clinician.

    Reason: something was answered yes, and the coach cannot tell what it is.
    Source: set here, to be signed by a clinician.
    """
    return Decision(
        "stop.screen",
        Tier.BEFORE_NEXT_SESSION.value,
        "You said yes to a group. I cannot tell what it is.",
        place,
        Basis.OURS,
        "set here, to be signed by a clinician",
    )


def unnamed_stop(place: Place) -> Decision:
    """stop.listen: a yes to something new or worse that was not named is looked at the same day.

    Reason: nobody but a person can tell what it is, so it is not left until the next session.
    Source: set here, to be signed by a clinician.
    """
    return Decision(
        "stop.listen",
        Tier.SAME_DAY.value,
        "You said yes to something new or worse. I cannot tell what it is.",
        place,
        Basis.OURS,
        "set here, to be signed by a clinician",
    )


def call_it_a_day(state: State) -> State:
    """The athlete's own stop: one answer ends all work; then one question asks which it was."""
    return after_the_work(state, "stop")._replace(
        missing=("stop for today",),
        told=(Line("say", "All work is over for today. All you typed is saved."),),
        happened=(*state.happened, Happening("note", "Stopped the session by choice.")),
    )


def too_unclear(state: State) -> State:
    """stop.screen: a third unclear safety answer ends the day.

    Source: set here, to be signed by a clinician.
    """
    decision = Decision(
        "stop.screen",
        "too unclear",
        "Three safety answers were not clear. So there is no work today.",
        state.brief.plan.calls.place,
        Basis.OURS,
        "set here, to be signed by a clinician",
    )
    return end_day(state, "too unclear", "partial", decision)


def end_day(state: State, trigger: str, end: str, decision: Decision | None) -> State:
    """The day over by a row of the table, with its reason."""
    return after_the_work(state, trigger)._replace(
        doubts=0,
        told=state.told,
        end=end,
        reasons=(decision,) if decision else (),
        happened=(*state.happened, Happening("end", end, decision)),
    )


# ---------------------------------------------------------------- the stop's words


def clinician_name(calls: Calls) -> str:
    """The clinician's name as the plan writes it (before the first comma)."""
    return calls.clinician.who.split(",")[0].strip()


def clinician_hours(calls: Calls) -> str:
    """`, weekdays 8 to 17`, or nothing where the plan gives no hours."""
    hours = ",".join(calls.clinician.who.split(",")[1:]).strip()
    return f", {hours}" if hours else ""


def office_open(calls: Calls, at: datetime) -> bool:
    """Whether the clinician answers at this local time; hours that cannot be read count as shut."""
    words = clinician_hours(calls).replace(",", " ").split()
    numbers = [int(word) for word in words if word.isdigit()]
    if len(numbers) != HOURS_FROM_TO or "weekdays" not in words:
        return False
    return at.weekday() < SATURDAY and numbers[0] <= at.hour < numbers[1]


def stop_lines(brief: Brief, code: str, tier: str, typed: str) -> tuple[Line, ...]:
    """The stop screen, in its fixed order. `typed` may be the token that the driver fills."""
    plan = brief.plan
    calls = plan.calls
    texts = [f"STOP. {plan.initials}, no more exercise and no more throws today."]
    if tier == Tier.EMERGENCY_NOW.value and code != "E11":
        texts.append(f"Call {calls.emergency.number} now.")
    if code == "E11":
        texts.append(f"Call the crisis line now: {calls.crisis.number}.")
        texts.append(f"If you may act on it, call {calls.emergency.number} now.")
    if brief.person.minor and plan.guardian is not None:
        texts.append(
            f"Tell your guardian now: {named_call(plan.guardian.who)}{plan.guardian.number}."
        )
    texts += whom_to_call(brief, tier)
    flag = FLAGS.get(code)
    say = flag.say if flag is not None else SAY.get(code, "")
    if say:
        texts.append(f'Say this: "{say}"')
    if flag is not None and flag.worse:
        texts.append(flag.worse.replace("{emergency}", calls.emergency.number))
    lines = [Line("stop", text) for text in texts]
    if typed:
        lines.append(Line("quote", f'You typed: "{typed}".'))
    name = clinician_name(calls)
    lines += [
        Line(
            "stop",
            f"Your plan is closed. Only {name} can open it: "
            f"{calls.clinician.number}{clinician_hours(calls)}.",
        ),
        Line("stop", "All you typed is saved."),
        Line("stop", f"Code {code}, plan line {calls.place.line}."),
    ]
    return tuple(lines)


def named_call(who: str) -> str:
    """`J.K., ` where the plan names the guardian, else nothing."""
    name = who.split(",", maxsplit=1)[0].strip()
    return f"{name}, " if "." in name else ""


def whom_to_call(brief: Brief, tier: str) -> list[str]:
    """The line on whom to call and when, by tier and by the clinician's hours."""
    calls = brief.plan.calls
    name, number = clinician_name(calls), calls.clinician.number
    if tier == Tier.BEFORE_NEXT_SESSION.value:
        return [f"Call {name} before your next session: {number}."]
    if tier == Tier.EMERGENCY_NOW.value:
        return [f"After that, tell {name}: {number}."]
    if office_open(calls, brief.opened_at) or calls.urgent is None:
        return [f"Call {name} today: {number}."]
    when = "tonight" if brief.opened_at.hour >= EVENING_FROM_H else "today"
    return [f"Call {calls.urgent.who} {when}: {calls.urgent.number}."]


def stopped_turn(state: State) -> Turn:
    """The stop alone on the display."""
    code, tier, _group = state.stop
    lines = stop_lines(state.brief, code, tier, "{typed}" if state.quoted else "")
    return Turn(lines, end="stopped", alone=True, decisions=state.reasons)


def day_words(day: date) -> str:
    """A day as people say it: `Fri 27 Nov`."""
    return f"{DAYS[day.weekday()]} {day.day} {MONTHS[day.month - 1]}"


def held_turn(brief: Brief, hold: Hold) -> Turn:
    """What the next start shows while a hold stands: the same stop, from the diary."""
    lines = stop_lines(brief, hold.code, hold.tier, hold.said)
    since = day_words(date.fromisoformat(hold.day))
    first = Line("stop", f"STOP. {brief.plan.initials}, your plan is closed since {since}.")
    decision = Decision(
        "stop.hold",
        "closed",
        "Your plan is closed until your clinician opens it.",
        brief.plan.calls.place,
        Basis.OURS,
        "set here, to be signed by a clinician",
    )
    return Turn((first, *lines[1:]), end="stopped", alone=True, decisions=(decision,))


def group_of(name: str) -> str:
    """A screen group's name with blanks, as a prompt is named."""
    return Group(name).value.replace("_", " ")
