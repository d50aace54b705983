"""A diary as one HL7 FHIR R4 bundle (a collection), written from plain mappings.

Law: shapes are borrowed from the physical activity guide (HL7, STU 1), conformance is not claimed. No
name and no birth date unless asked. Numbers are written as they were recorded. The same diary gives
the same bytes.
"""

from __future__ import annotations

import json
import re
from hashlib import sha1
from typing import TYPE_CHECKING, Any, Final

from coach.reports import fhir_codes as codes
from coach.reports.facts import Facts, holds, open_hold
from coach.reports.visit_work import reps_range
from coach.reports.words import counted, own, titled
from coach.rules.red_flags import FLAGS

if TYPE_CHECKING:
    from coach.model.history import DayRecord, Done, Hold
    from coach.model.program import Prescription
    from coach.reports.facts import Lifted, Sat

Resource = dict[str, Any]
_SPACE: Final = bytes.fromhex("6ba7b8119dad11d180b400c04fd430c8")  # RFC 4122, name space of URLs

# linkId, words, type; pain 0 to 10, sleep in h, minutes in min.
ITEMS: Final = (
    ("waking-pain", "Pain on waking, 0 to 10", "decimal"),
    ("pain-now", "Pain at rest, 0 to 10", "decimal"),
    ("sleep", "Sleep last night, h", "decimal"),
    ("threw-yesterday", "Throwing the day before", "string"),
    ("throwing-today", "Throwing that day", "string"),
    ("worst-in-set", "Worst pain in a set, 0 to 10", "decimal"),
    ("pain-after", "Pain after, 0 to 10", "decimal"),
    ("effort", "Effort, 0 to 10", "decimal"),
    ("minutes", "Minutes", "decimal"),
    ("notes", "Notes and own words", "string"),
    ("typed", "Each answer as it was typed, in order", "string"),
)


def as_fhir(facts: Facts, *, names: bool = False) -> str:
    """The bundle as JSON text. `names` adds initials and the month of birth."""
    return json.dumps(bundle(facts, names=names), ensure_ascii=True, indent=1) + "\n"


def bundle(facts: Facts, *, names: bool = False) -> Resource:
    """The bundle as a mapping."""
    seed = seed_of(facts)
    made = [*plan_resources(facts, seed, names=names), questionnaire(facts, seed)]
    for sat in facts.sessions:
        made += session_resources(facts, sat, seed)
    told = told_at(facts)
    lifts = {lift.hold: lift for lift in facts.recorded.lifts}
    for hold in holds(facts.recorded):
        if facts.since <= hold.day[:10] <= facts.until:
            lift = lifts.get(hold.number)
            made += stop_resources(hold, lift, told.get(hold.at, ""), seed)
    if not names:
        made = [nameless(one, known_names(facts)) for one in made]
    return {
        "resourceType": "Bundle",
        "type": "collection",
        "timestamp": newest(facts),
        "entry": [{"fullUrl": url(one["id"]), "resource": one} for one in made],
    }


def known_names(facts: Facts) -> re.Pattern[str]:
    """The names that the plan holds: the athlete's initials, the clinician's, the guardian's."""
    plan = facts.bound.plan
    people = [plan.initials, plan.calls.clinician.who, plan.guardian.who if plan.guardian else ""]
    names = [who.partition(",")[0].strip() for who in people]
    listed = "|".join(re.escape(own(name)) for name in names if name)
    return re.compile(rf"(?<!\w)(?:{listed})(?!\w)" if listed else r"(?!)")


def nameless(value: Any, names: re.Pattern[str]) -> Any:  # noqa: ANN401 - any part of a resource
    """A resource with every known name in its texts left blank."""
    if isinstance(value, dict):
        return {key: nameless(part, names) for key, part in value.items()}
    if isinstance(value, list):
        return [nameless(part, names) for part in value]
    return names.sub("[name]", value) if isinstance(value, str) else value


# ---------------------------------------------------------------- names and references


def seed_of(facts: Facts) -> str:
    """What tells this diary from another: the plan's digest and the first instant kept."""
    first = next((sat.opened_at for day in facts.all_days for sat in day.sessions), facts.since)
    return f"{facts.bound.digest}/{first}"


def named(seed: str, what: str) -> str:
    """A steady identifier: UUID version 5 (RFC 4122, 4.3) of the diary and the thing."""
    text = f"{seed}/{what}".encode("utf-8", "backslashreplace")
    made = bytearray(sha1(_SPACE + text, usedforsecurity=False).digest()[:16])
    made[6] = made[6] & 0x0F | 0x50
    made[8] = made[8] & 0x3F | 0x80
    digits = made.hex()
    return "-".join((digits[:8], digits[8:12], digits[12:16], digits[16:20], digits[20:]))


def url(name: str) -> str:
    """A resource's full address in the bundle."""
    return f"urn:uuid:{name}"


def link(seed: str, what: str) -> Resource:
    """A reference to another resource of the bundle."""
    return {"reference": url(named(seed, what))}


def resource(kind: str, seed: str, what: str, **parts: object) -> Resource:
    """A resource; parts that are None or empty are left out."""
    kept = {name: value for name, value in parts.items() if value not in (None, "", [], {})}
    return {"resourceType": kind, "id": named(seed, what), **kept}


def words(text: str) -> Resource:
    """A concept in words alone."""
    return {"text": own(text)}


def coded(code: codes.Code, text: str = "") -> Resource:
    """A concept by its code."""
    said = {"system": code.system, "code": code.code, "display": code.display}
    return {"coding": [said], "text": own(text) or code.display}


def quantity(value: float, code: codes.Code) -> Resource:
    """A value with its unit, as recorded: 2.5 stays 2.5 and 3.0 becomes 3."""
    whole = int(value) if float(value).is_integer() else value
    return {"value": whole, "unit": code.unit, "system": codes.UCUM, "code": code.unit}


def newest(facts: Facts) -> str:
    """The newest instant recorded in the stretch."""
    instants = [e.at for sat in facts.sessions for e in sat.events]
    instants += [sat.opened_at for sat in facts.sessions]
    return max(instants, default=f"{facts.until}T00:00:00+00:00")


# ---------------------------------------------------------------- the plan


def plan_resources(facts: Facts, seed: str, *, names: bool) -> list[Resource]:
    """Patient, care plan, and one request for each dose line."""
    plan = facts.bound.plan
    status = "unknown" if facts.recorded.damage else "active"
    if open_hold(facts.recorded) is not None:
        status = "on-hold"
    person = resource("Patient", seed, "patient")
    if names:
        person |= {"name": [{"text": own(plan.initials)}], "birthDate": plan.born}
    care = resource(
        "CarePlan",
        seed,
        "plan",
        status=status,
        intent="plan",
        title=f"Home exercise program, plan version {plan.version}",
        category=[words("home exercise")],
        subject=link(seed, "patient"),
        period={"start": plan.starts, "end": plan.review_by},
        activity=[{"reference": link(seed, f"dose {p.exercise}")} for p in plan.doses],
    )
    return [person, care, *(request(facts, p, seed, status) for p in plan.doses)]


def request(facts: Facts, line: Prescription, seed: str, status: str) -> Resource:
    """One exercise as prescribed, in the plan's own numbers."""
    repeat = {"frequency": 1, "period": line.apart_days, "periodUnit": "d"}
    return resource(
        "ServiceRequest",
        seed,
        f"dose {line.exercise}",
        status=status,
        intent="order",
        code=words(line.exercise),
        subject=link(seed, "patient"),
        basedOn=[link(seed, "plan")],
        performer=[link(seed, "patient")],
        authoredOn=facts.bound.plan.starts,
        occurrenceTiming={"repeat": repeat},
        bodySite=[words(f"{facts.bound.plan.side} shoulder")],
        quantityQuantity=quantity(line.sets.opening, codes.SETS),
        patientInstruction=instruction(line),
    )


def instruction(line: Prescription) -> str:
    """The opening dose in words."""
    hold = f", hold {line.hold.opening} s" if line.hold is not None else ""
    noun = "holds" if line.hold is not None else "reps"
    sets = counted(line.sets.opening, "set")
    load = "" if line.load.kind == "none" else f", {line.load.words()}"
    tempo = f", {own(line.tempo)}" if line.tempo else ""
    return f"{sets} of {reps_range(line)} {noun}{hold}{load}{tempo}, rest {line.rest_s} s"


def questionnaire(facts: Facts, seed: str) -> Resource:
    """What is asked on a day; its version is the program's."""
    program = facts.bound.program
    repeats = {"notes", "typed"}
    items = [
        {"linkId": name, "text": text, "type": kind}
        | ({"repeats": True} if name in repeats else {})
        for name, text, kind in ITEMS
    ]
    return resource(
        "Questionnaire",
        seed,
        "questions",
        url=codes.FORMS,
        version=str(program.version),
        title="Questions of a day",
        status="active",
        copyright=codes.LOINC_NOTICE,
        item=items,
    )


# ---------------------------------------------------------------- a session


def session_resources(facts: Facts, sat: Sat, seed: str) -> list[Resource]:
    """The answers of a session, its numbers, and each exercise done."""
    key = f"session {sat.number}"
    made = [response(facts, sat, seed, key)]
    record = sat.record
    if record is None:
        return made
    base = {"performer": [link(seed, "patient")], "derivedFrom": [link(seed, f"{key} answers")]}
    for name, code, value in measured(record):
        made.append(
            resource(
                "Observation",
                seed,
                f"{key} {name}",
                status="final",
                category=[survey()],
                code=coded(code, name),
                subject=link(seed, "patient"),
                effectiveDateTime=sat.opened_at,
                valueQuantity=quantity(value, code),
                **base,
            )
        )
    made += [exercise_done(sat, n, done, seed, base) for n, done in enumerate(record.done)]
    return made


def survey() -> Resource:
    """The category of what was asked."""
    return {"coding": [{"system": codes.SURVEY, "code": "survey", "display": "Survey"}]}


def measured(record: DayRecord) -> list[tuple[str, codes.Code, float]]:
    """A record's numbers worth following, named."""
    threw = float(record.threw.throws) if record.threw is not None else None
    unit = record.threw.unit if record.threw and record.threw.unit in codes.THROWN else "throws"
    every = (
        ("Pain on waking", codes.PAIN, record.waking_pain),
        ("Pain at rest", codes.PAIN, record.pain_now),
        ("Worst pain in a set", codes.PAIN, record.worst_in_set),
        ("Pain after", codes.PAIN, record.pain_after),
        ("Sleep", codes.SLEEP, record.sleep_h),
        ("Effort", codes.EFFORT, record.effort),
        ("Time", codes.MINUTES, record.minutes),
        (titled(unit), codes.THROWN[unit], threw),
    )
    return [(name, code, value) for name, code, value in every if value is not None]


def response(facts: Facts, sat: Sat, seed: str, key: str) -> Resource:
    """The day's answers; as typed beside as understood."""
    ended = sat.record.ended if sat.record else ""
    status = "completed" if ended == "done" else "stopped" if ended else "in-progress"
    last = max([e.at for e in sat.events], default=sat.opened_at)
    return resource(
        "QuestionnaireResponse",
        seed,
        f"{key} answers",
        questionnaire=f"{codes.FORMS}|{facts.bound.program.version}",
        status=status,
        subject=link(seed, "patient"),
        authored=max(last, sat.opened_at),
        source=link(seed, "patient"),
        item=answers(sat),
    )


def answers(sat: Sat) -> list[Resource]:
    """Items with an answer, in the questionnaire's order."""
    record = sat.record
    values: dict[str, tuple[object, ...]] = {}
    if record is not None:
        values = {
            "waking-pain": (record.waking_pain,),
            "pain-now": (record.pain_now,),
            "sleep": (record.sleep_h,),
            "threw-yesterday": (record.threw_yesterday,),
            "throwing-today": (record.throwing_today,),
            "worst-in-set": (record.worst_in_set,),
            "pain-after": (record.pain_after,),
            "effort": (record.effort,),
            "minutes": (record.minutes,),
            "notes": record.notes,
        }
    values["typed"] = tuple(str(e.body.get("text", "")) for e in sat.events if e.kind == "typed")
    return [
        {"linkId": name, "text": text, "answer": found}
        for name, text, kind in ITEMS
        if (found := [answer(kind, value) for value in values.get(name, ()) if has(value)])
    ]


def has(value: object) -> bool:
    """Whether there is anything to write: FHIR has no empty text."""
    return value is not None and bool(own(value).strip() if isinstance(value, str) else True)


def answer(kind: str, value: object) -> Resource:
    """One answer of an item."""
    if kind == "decimal" and isinstance(value, int | float):
        return {"valueDecimal": int(value) if float(value).is_integer() else value}
    return {"valueString": own(str(value)).strip()}


def exercise_done(sat: Sat, place: int, done: Done, seed: str, base: Resource) -> Resource:
    """One exercise as an observation with its sets, reps and pain as components."""
    parts = [component(codes.SETS, float(done.sets), "Sets done")]
    parts += [component(codes.REPS, v, f"Set {n}") for n, v in enumerate(done.reps, 1)]
    parts += [component(codes.PAIN_IN_SET, v, f"Set {n}") for n, v in enumerate(done.pains, 1)]
    shown = f"Shown: {own(done.dose)}. " if done.dose else ""
    return resource(
        "Observation",
        seed,
        f"session {sat.number} exercise {place}",
        status="final",
        category=[survey()],
        code=words(done.exercise),
        subject=link(seed, "patient"),
        effectiveDateTime=sat.opened_at,
        component=parts,
        note=[{"text": f"{shown}Went: {own(done.result)}."}],
        **base,
    )


def component(code: codes.Code, value: float, text: str) -> Resource:
    """One number of an exercise."""
    return {"code": coded(code, text), "valueQuantity": quantity(value, code)}


# ---------------------------------------------------------------- a stop


def stop_resources(hold: Hold, lift: Lifted | None, told: str, seed: str) -> list[Resource]:
    """A stop as a standing flag, the reasoned event, and what was told."""
    key = f"stop {hold.number}"
    flag = FLAGS.get(hold.code)
    sign = words(f"{hold.code}: {flag.say}" if flag is not None else hold.code or "stop")
    typed = f"Typed: {hold.said.strip()}" if hold.said.strip() else "Nothing was typed."
    made = [
        resource(
            "Flag",
            seed,
            key,
            status="inactive" if lift else "active",
            category=[words("no exercise and no throws")],
            code=sign,
            subject=link(seed, "patient"),
            period=flag_period(hold, lift),
        ),
        resource(
            "DetectedIssue",
            seed,
            f"{key} issue",
            status="final",
            severity="high",
            code=sign,
            patient=link(seed, "patient"),
            identifiedDateTime=hold.at,
            implicated=[link(seed, key)],
            detail=own(f"Rule stop.flag, code {hold.code}, {hold.tier}. {typed}"),
        ),
    ]
    if told:
        made.append(
            resource(
                "Communication",
                seed,
                f"{key} told",
                status="completed",
                subject=link(seed, "patient"),
                recipient=[link(seed, "patient")],
                about=[link(seed, key)],
                sent=hold.at,
                payload=[{"contentString": told}],
            )
        )
    return made


def flag_period(hold: Hold, lift: Lifted | None) -> Resource:
    """From the stop to its opening, if any."""
    start = {"start": hold.at}
    return start | {"end": max(lift.at, hold.at)} if lift is not None else start


def told_at(facts: Facts) -> dict[str, str]:
    """The lines that were shown, by the instant of their event."""
    return {
        event.at: own("\n".join(event.shown))
        for sat in facts.sessions
        for event in sat.events
        if event.shown
    }
