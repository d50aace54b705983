"""The closed lists of the health-record bundle: codes with their words, units, states.

Law: a code that is not here is not written and not taken. A LOINC code is one that was seen with
that meaning; where none was found, a code of our own stands with its words, never an invented one.
"""

from __future__ import annotations

from typing import Final, NamedTuple

from coach.model.throws import UNITS as THROWING_UNITS

LOINC: Final = "http://loinc.org"
UCUM: Final = "http://unitsofmeasure.org"
OURS: Final = "https://coach.invalid/codes"
FORMS: Final = "https://coach.invalid/questions"
SURVEY: Final = "http://terminology.hl7.org/CodeSystem/observation-category"

# From memory of LOINC's terms of use; they ask for this notice wherever its codes stand.
LOINC_NOTICE: Final = (
    "This material contains content from LOINC (http://loinc.org). LOINC is copyright Regenstrief "
    "Institute, Inc. and the LOINC Committee and is available at no cost under the license at "
    "http://loinc.org/license."
)


class Code(NamedTuple):
    """A measured thing: system, code, words, and the UCUM unit its value must have."""

    system: str
    code: str
    display: str
    unit: str


# LOINC: pain and sleep by third-party listings, effort by its own page, time by the physical
# activity guide's list (HL7, STU 1).
PAIN: Final = Code(
    LOINC, "72514-3", "Pain severity - 0-10 verbal numeric rating [Score] - Reported", "{score}"
)
SLEEP: Final = Code(LOINC, "93832-4", "Sleep duration", "h")
EFFORT: Final = Code(LOINC, "82289-0", "Rating of perceived exertion [Score]", "{score}")
MINUTES: Final = Code(LOINC, "55411-3", "Exercise duration", "min")
THROWN: Final = {
    unit: Code(OURS, unit, f"{unit.capitalize()} on a step of the plan's table", f"{{{unit}}}")
    for unit in THROWING_UNITS
}
SETS: Final = Code(OURS, "sets-done", "Sets of an exercise done", "{set}")
REPS: Final = Code(OURS, "reps-in-set", "Clean reps or holds in a set", "{repetition}")
PAIN_IN_SET: Final = Code(OURS, "pain-in-set", "Worst pain in a set, 0 to 10", "{score}")

CODES: Final = {
    (code.system, code.code): code
    for code in (PAIN, SLEEP, EFFORT, MINUTES, *THROWN.values(), SETS, REPS, PAIN_IN_SET)
}
UNITS: Final = frozenset(
    {"{score}", "h", "min", "{set}", "{repetition}", "d", *(code.unit for code in THROWN.values())}
)

# R4, required bindings, from memory; only the values that are written here.
STATES: Final[dict[str, frozenset[str]]] = {
    "CarePlan": frozenset({"active", "on-hold", "unknown"}),
    "ServiceRequest": frozenset({"active", "on-hold", "unknown"}),
    "Questionnaire": frozenset({"active"}),
    "QuestionnaireResponse": frozenset({"completed", "stopped", "in-progress"}),
    "Observation": frozenset({"final"}),
    "Flag": frozenset({"active", "inactive"}),
    "DetectedIssue": frozenset({"final"}),
    "Communication": frozenset({"completed"}),
}
# Elements that each resource must have, and those it may have beside them (R4; only ours).
MUST: Final[dict[str, frozenset[str]]] = {
    "Patient": frozenset({"id"}),
    "CarePlan": frozenset({"id", "status", "intent", "subject", "period"}),
    "ServiceRequest": frozenset({"id", "status", "intent", "subject", "code", "basedOn"}),
    "Questionnaire": frozenset({"id", "url", "version", "status", "item"}),
    "QuestionnaireResponse": frozenset({"id", "questionnaire", "status", "subject", "authored"}),
    "Observation": frozenset({"id", "status", "code", "subject", "effectiveDateTime"}),
    "Flag": frozenset({"id", "status", "code", "subject", "period"}),
    "DetectedIssue": frozenset({"id", "status", "patient", "identifiedDateTime", "detail"}),
    "Communication": frozenset({"id", "status", "subject", "sent", "payload"}),
}
MAY: Final[dict[str, frozenset[str]]] = {
    "Patient": frozenset({"name", "birthDate"}),
    "CarePlan": frozenset({"title", "category", "activity", "note"}),
    "ServiceRequest": frozenset(
        {"performer", "patientInstruction", "occurrenceTiming", "bodySite", "authoredOn",
         "quantityQuantity"}
    ),
    "Questionnaire": frozenset({"title", "copyright"}),
    "QuestionnaireResponse": frozenset({"source", "item"}),
    "Observation": frozenset(
        {"category", "performer", "valueQuantity", "derivedFrom", "component", "note"}
    ),
    "Flag": frozenset({"category"}),
    "DetectedIssue": frozenset({"severity", "code", "implicated"}),
    "Communication": frozenset({"about", "recipient"}),
}  # fmt: skip
