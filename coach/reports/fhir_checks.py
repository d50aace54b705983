"""What must hold of a health-record bundle, and is not held by general readers of the format.

Law: every fault is a sentence with its place; an empty list means that all was looked at and held.
Lists are closed: what this project does not write is a fault.
"""

from __future__ import annotations

import re
from datetime import datetime
from typing import TYPE_CHECKING, Any, Final

from coach.reports.fhir_codes import CODES, LOINC, MAY, MUST, STATES, UCUM, UNITS

if TYPE_CHECKING:
    from collections.abc import Iterator

Resource = dict[str, Any]
_DAY: Final = re.compile(r"\d{4}(-\d{2}(-\d{2})?)?")
_INSTANTS: Final = frozenset(
    {"authored", "effectiveDateTime", "identifiedDateTime", "sent", "timestamp"}
)
_DAYS_OR_INSTANTS: Final = frozenset({"start", "end", "authoredOn", "birthDate"})
_BUNDLE: Final = frozenset({"resourceType", "type", "timestamp", "entry"})


def faults(bundle: Resource, *, names: bool = False) -> list[str]:
    """Every fault of a bundle. `names` says that a name was asked for."""
    found = [*bundle_faults(bundle)]
    urls = {entry.get("fullUrl", "") for entry in entries(bundle)}
    for entry in entries(bundle):
        one = entry.get("resource", {})
        place = f"{one.get('resourceType', '?')} {one.get('id', '?')}"
        wrong = [
            *resource_faults(one, names=names),
            *reference_faults(one, urls),
            *code_faults(one),
            *time_faults(one),
            *text_faults(one),
        ]
        found += [f"{place}: {what}" for what in wrong]
    return [*found, *answer_faults(bundle)]


def entries(bundle: Resource) -> list[Resource]:
    """The bundle's entries."""
    return [entry for entry in bundle.get("entry", []) if isinstance(entry, dict)]


def bundle_faults(bundle: Resource) -> Iterator[str]:
    """The bundle itself: a collection without a total, each address once and its resource's own."""
    if bundle.get("resourceType") != "Bundle" or bundle.get("type") != "collection":
        yield "bundle: it is no collection"
    yield from (f"bundle: {name} does not belong there" for name in set(bundle) - _BUNDLE)
    yield from (f"bundle: {what}" for what in time_faults({"timestamp": bundle.get("timestamp")}))
    urls = [entry.get("fullUrl", "") for entry in entries(bundle)]
    yield from (f"bundle: {one} is there twice" for one in {u for u in urls if urls.count(u) > 1})
    for entry in entries(bundle):
        if entry.get("fullUrl") != f"urn:uuid:{entry.get('resource', {}).get('id')}":
            yield f"bundle: {entry.get('fullUrl')} is not its resource's address"


def resource_faults(one: Resource, *, names: bool) -> Iterator[str]:
    """Kind, elements and states of a resource."""
    kind = one.get("resourceType", "")
    if kind not in MUST:
        yield "this kind is not written here"
        return
    have = set(one) - {"resourceType"}
    yield from (f"{name} is not there" for name in sorted(MUST[kind] - have))
    yield from (f"{name} does not belong there" for name in sorted(have - MUST[kind] - MAY[kind]))
    if kind in STATES and one.get("status") not in STATES[kind]:
        yield f"status {one.get('status')!r} is not in the list"
    if kind == "Patient" and not names and have & {"name", "birthDate"}:
        yield "a name or birth date that nobody asked for"
    values = [name for name in one if name.startswith("value")]
    if len(values) > 1:
        yield f"more than one value: {', '.join(sorted(values))}"


def reference_faults(one: Resource, urls: set[str]) -> Iterator[str]:
    """References that lead nowhere in the bundle."""
    for name, value in walked(one):
        if name == "reference" and isinstance(value, str) and value not in urls:
            yield f"reference to nothing: {value}"


def code_faults(one: Resource) -> Iterator[str]:
    """Codes outside the list, wrong words, a wrong check digit, units outside the list."""
    for _name, value in walked(one):
        if not isinstance(value, dict):
            continue
        if value.get("system") == UCUM and (
            value.get("code") not in UNITS or value.get("unit") != value.get("code")
        ):
            yield f"unit {value.get('code')!r} is not in the list"
        if value.get("system") == LOINC:
            yield from loinc_faults(value)
        if "valueQuantity" in value:
            yield from unit_faults(value)


def loinc_faults(coding: Resource) -> Iterator[str]:
    """A LOINC code by its check digit, the list and its words."""
    code = str(coding.get("code", ""))
    if not check_digit_fits(code):
        yield f"LOINC code {code!r} has a wrong check digit"
    known = CODES.get((LOINC, code))
    if known is None:
        yield f"LOINC code {code!r} is not in the list"
    elif coding.get("display") != known.display:
        yield f"LOINC code {code!r} has other words"


def check_digit_fits(code: str) -> bool:
    """Whether a LOINC code's last digit is its check digit: mod 10, every other digit doubled.

    Source: the LOINC users' guide, from memory; held against codes in use.
    """
    found = re.fullmatch(r"(\d{1,7})-(\d)", code)
    if found is None:
        return False
    total = 0
    for place, digit in enumerate(reversed(found.group(1))):
        value = int(digit) * (2 if place % 2 == 0 else 1)
        total += value // 10 + value % 10
    return (10 - total % 10) % 10 == int(found.group(2))


def unit_faults(measured: Resource) -> Iterator[str]:
    """A value whose unit is not the one of its code."""
    for coding in measured.get("code", {}).get("coding", []):
        known = CODES.get((coding.get("system"), coding.get("code")))
        unit = measured["valueQuantity"].get("code")
        if known is None:
            yield f"code {coding.get('code')!r} is not in the list"
        elif unit != known.unit:
            yield f"unit {unit!r} does not belong to {known.display!r}"


def time_faults(one: Resource) -> Iterator[str]:
    """Instants without an offset, days in another form."""
    for name, value in walked(one):
        if name in _INSTANTS and not is_instant(value):
            yield f"{name} {value!r} is no instant with its offset"
        if name in _DAYS_OR_INSTANTS and not (is_day(value) or is_instant(value)):
            yield f"{name} {value!r} is neither a day nor an instant with its offset"


def is_instant(value: object) -> bool:
    """An ISO instant with seconds and an offset."""
    if not isinstance(value, str) or "T" not in value:
        return False
    try:
        return datetime.fromisoformat(value).tzinfo is not None
    except ValueError:
        return False


def is_day(value: object) -> bool:
    """A day, month or year in ISO form that the calendar has."""
    if not isinstance(value, str) or not _DAY.fullmatch(value):
        return False
    try:
        datetime.fromisoformat((value + "-01-01")[:10])
    except ValueError:
        return False
    return True


def text_faults(one: Resource) -> Iterator[str]:
    """Empty texts and empty lists, which the format does not know."""
    for name, value in walked(one):
        if value in ("", [], {}) or (isinstance(value, str) and not value.strip()):
            yield f"{name} is empty"


def answer_faults(bundle: Resource) -> Iterator[str]:
    """Answers to questions that were not asked; answers given before their session opened."""
    every = [entry.get("resource", {}) for entry in entries(bundle)]
    forms = {
        f"{form.get('url')}|{form.get('version')}": {item["linkId"] for item in form["item"]}
        for form in every
        if form.get("resourceType") == "Questionnaire" and "item" in form
    }
    opened = opened_at(every)
    for one in every:
        if one.get("resourceType") != "QuestionnaireResponse":
            continue
        known = forms.get(str(one.get("questionnaire")))
        if known is None:
            yield f"{one.get('id')}: answers to a form that is not there"
            continue
        strange = {item.get("linkId") for item in one.get("item", [])} - known
        yield from (f"{one.get('id')}: linkId {name!r} was not asked" for name in strange)
        start = opened.get(f"urn:uuid:{one.get('id')}", "")
        if start and is_instant(start) and is_instant(one.get("authored")):
            answered = datetime.fromisoformat(one["authored"])
            if answered < datetime.fromisoformat(start):
                yield f"{one.get('id')}: answered before its session opened"


def opened_at(every: list[Resource]) -> dict[str, str]:
    """For each response, when its session opened, by the numbers made from it."""
    return {
        origin.get("reference", ""): str(one.get("effectiveDateTime", ""))
        for one in every
        for origin in one.get("derivedFrom", [])
    }


def walked(value: object, name: str = "") -> Iterator[tuple[str, object]]:
    """Every part of a resource with its name, itself first."""
    yield name, value
    if isinstance(value, dict):
        for key, part in value.items():
            yield from walked(part, key)
    elif isinstance(value, list):
        for part in value:
            yield from walked(part, name if isinstance(part, str) else "")
