"""The first part of the visit page: what waits for the clinician, most urgent first.

Law: a stop is told with its code and the athlete's own words, and nothing softer stands before it.
Own words are quoted as typed. Nothing is decided here; a phase is proposed by its rule alone.
"""

from __future__ import annotations

from datetime import date
from typing import TYPE_CHECKING, Final

from coach.model.program import Test
from coach.reports.facts import Facts, highest, holds, open_hold
from coach.reports.page import Block, Para, Section
from coach.reports.words import counted, day_words, number, own, quoted, when
from coach.rules.phases import proposal
from coach.rules.red_flags import FLAGS

if TYPE_CHECKING:
    from coach.model.history import DayRecord, Hold
    from coach.reports.facts import Lifted

NOTHING: Final = "Nothing waits for you."
ASKS_FOR_YOU: Final = frozenset({"contact", "stop"})  # outcomes that send the athlete to somebody


def needs_you(facts: Facts) -> Section:
    """Stops, decisions that sent to you, own questions, the next phase, the review date."""
    blocks = [
        *stop_paras(facts),
        *damage_paras(facts),
        *sent_to_you(facts),
        *faults_of_ours(facts),
        *questions(facts),
        *phase_paras(facts),
        *review(facts),
    ]
    return Section("What needs you", tuple(blocks) or (Para(NOTHING),))


def stop_paras(facts: Facts) -> list[Block]:
    """The open stop first, then those of the stretch that were opened."""
    still = open_hold(facts.recorded)
    lifts = {lift.hold: lift for lift in facts.recorded.lifts}
    out: list[Block] = []
    if still is not None:
        out.append(Para(f"The plan is closed. {stop_words(still)} Only you can open it.", "need"))
    for hold in holds(facts.recorded):
        if hold is still or not facts.since <= hold.day[:10] <= facts.until:
            continue
        kind = "plain" if hold.number in lifts else "need"
        out.append(Para(f"{stop_words(hold)} {opened_words(lifts.get(hold.number))}", kind))
    return out


def damage_paras(facts: Facts) -> list[Block]:
    """That a part of the diary cannot be read: a stop may have stood there."""
    listed = "; ".join(own(one) for one in facts.recorded.damage)
    words = f"A part of this diary cannot be read, and a stop may have stood there: {listed}."
    return [Para(words, "need")] if listed else []


def stop_words(hold: Hold) -> str:
    """What stopped it, when, how soon, and what was typed."""
    flag = FLAGS.get(hold.code)
    sign = f' The sign: "{flag.say}"' if flag is not None else ""
    typed = f" Typed: {quoted(hold.said)}." if hold.said.strip() else ""
    tier = own(hold.tier) or "not known"
    return f"Stop on {when(hold.at or hold.day)}, code {own(hold.code)}, how soon: {tier}.{sign}{typed}"


def opened_words(lift: Lifted | None) -> str:
    """Who opened a stop, and how."""
    if lift is None:
        return "It was not opened."
    by = f" by {own(lift.who)}" if lift.who else ""
    return f"Opened on {day_words(lift.day or lift.at)}{by} ({own(lift.way)})."


def sent_to_you(facts: Facts) -> list[Block]:
    """Recorded decisions that told the athlete to reach somebody, without a stop."""
    return [
        Para(f"{day_words(record.day)}: {own(why) or outcome} Rule {own(rule)}.", "need")
        for record in records(facts)
        for rule, outcome, why in record.decisions
        if outcome in ASKS_FOR_YOU and record.ended != "stopped"
    ]


def faults_of_ours(facts: Facts) -> list[Block]:
    """Days on which the program itself broke off."""
    days = [e.at for sat in facts.sessions for e in sat.events if e.kind == "fault"]
    if not days:
        return []
    listed = ", ".join(day_words(day) for day in days)
    return [Para(f"Coach made a mistake and ended the day: {listed}.", "need")]


def questions(facts: Facts) -> list[Block]:
    """Own words with a question in them."""
    return [
        Para(f"{day_words(record.day)}, asked: {quoted(note)}", "quote")
        for record in records(facts)
        for note in record.notes
        if "?" in note and note.startswith('"')
    ]


def records(facts: Facts) -> list[DayRecord]:
    """The day records of the stretch, oldest first."""
    return [sat.record for sat in facts.sessions if sat.record is not None]


# ---------------------------------------------------------------- the next phase


def phase_paras(facts: Facts) -> list[Block]:
    """The next phase: met or what is still open, what you must see, what stays locked."""
    plan, program = facts.bound.plan, facts.bound.program
    if facts.recorded.damage:
        return [Para("No phase is proposed, since a part of the diary cannot be read.")]
    found = proposal(program, plan, diary_facts(facts), date.fromisoformat(facts.until))
    if found is None:
        return []
    waiting, decision = found
    if waiting.unmet:
        listed = "; ".join(test_words(test) for test in waiting.unmet)
        head = f"Next phase, {own(waiting.phase)}: the diary does not show: {listed}."
    else:
        head = f"Next phase, {own(waiting.phase)}: the diary shows all it asks for. You open it."
    seen = (
        f" For you to see: {own(waiting.clinician_sees).rstrip('.')}."
        if waiting.clinician_sees
        else ""
    )
    shut = f" Still locked: {', '.join(map(own, waiting.locked))}." if waiting.locked else ""
    basis = f" Rule {decision.rule}, worked out for this page; not shown to the athlete."
    return [Para(head + seen + shut + basis, "plain" if waiting.unmet else "need")]


def test_words(test: Test) -> str:
    """A criterion as the clinician wrote it."""
    values = " and ".join(v if isinstance(v, str) else number(v) for v in test.values)
    return f"{own(test.fact)} {test.op} {own(values)}"


def diary_facts(facts: Facts) -> dict[str, str | float]:
    """The diary's facts that a phase may ask for, by name; what is not known is left out."""
    plan, until = facts.bound.plan, date.fromisoformat(facts.until)
    opened = date.fromisoformat(plan.phase_opened.day)
    worked = [
        sat.record
        for day in facts.all_days
        for sat in day.sessions
        if sat.record is not None and sat.record.ended != "none"
    ]
    week = [day for day in facts.all_days[-7:] if day.sessions]
    found: dict[str, str | float | None] = {
        "phase": plan.phase,
        "weeks in phase": float((until - opened).days // 7),
        "sessions in phase": float(sum(r.day >= opened.isoformat() for r in worked)),
        "worst pain in 7 days": highest(
            pain for day in week for pain in (day.rest, day.in_set, day.waking)
        ),
        "flares in 14 days": flares([r for r in worked if days_ago(r, until) < 14]),  # noqa: PLR2004 - named in the fact
    }
    return {name: value for name, value in found.items() if value is not None}


def days_ago(record: DayRecord, until: date) -> int:
    """Whole days from a record to the last day shown."""
    return (until - date.fromisoformat(record.day)).days


def flares(records: list[DayRecord]) -> float | None:
    """Mornings above usual; None where no day says anything."""
    return float(sum(record.morning_up for record in records)) if records else None


def review(facts: Facts) -> list[Block]:
    """The plan's review date, and how far off it is."""
    by = facts.bound.plan.review_by
    days = (date.fromisoformat(by) - date.fromisoformat(facts.until)).days
    if days < 0:
        return [Para(f"Review was due on {day_words(by)}. The plan gives no session now.", "need")]
    return [Para(f"Review by {day_words(by)}, in {counted(days, 'day')}.")]
