"""The health-record bundle against two outside validators and our own checks; mutants are refused."""

from __future__ import annotations

import copy
import json
import re
import uuid
from collections.abc import Callable
from pathlib import Path
from typing import Any

import jsonschema
import pytest
from fhir.resources.R4B.bundle import Bundle
from hypothesis import given, settings
from hypothesis import strategies as st

from coach.reports.fhir import ITEMS, as_fhir, bundle, named
from coach.reports.fhir_checks import check_digit_fits, faults, is_day, is_instant
from coach.reports.fhir_codes import CODES, LOINC, UNITS
from tests.reports import made_up

Resource = dict[str, Any]
SCHEMA = json.loads((Path(__file__).parent / "r4_cut_down.json").read_text("utf-8"))


@pytest.fixture(scope="module")
def whole() -> Resource:
    return bundle(made_up.ten_weeks_facts())


def of_kind(found: Resource, kind: str) -> list[Resource]:
    return [e["resource"] for e in found["entry"] if e["resource"]["resourceType"] == kind]


def schema_faults(found: Resource) -> list[str]:
    """By the R4 JSON schema, resource by resource, then the bundle's own parts."""
    out = []
    for one in (*(e["resource"] for e in found["entry"]), {**found, "entry": []}):
        part = {"$ref": f"#/definitions/{one['resourceType']}", **SCHEMA}
        part.pop("oneOf")
        out += [e.message for e in jsonschema.Draft6Validator(part).iter_errors(one)]
    return out


def test_the_invented_ten_weeks_pass_all_three(whole: Resource) -> None:
    assert faults(whole) == []
    assert schema_faults(whole) == []
    read = Bundle.model_validate(whole)
    assert json.loads(read.model_dump_json()) == whole


def test_every_kind_of_resource_is_there(whole: Resource) -> None:
    kinds = {e["resource"]["resourceType"] for e in whole["entry"]}
    assert kinds == {
        "Patient", "CarePlan", "ServiceRequest", "Questionnaire", "QuestionnaireResponse",
        "Observation", "Flag", "DetectedIssue", "Communication",
    }  # fmt: skip


# ---------------------------------------------------------------- ten mutants and more


def status_gone(found: Resource) -> None:
    del of_kind(found, "Observation")[0]["status"]


def status_strange(found: Resource) -> None:
    of_kind(found, "CarePlan")[0]["status"] = "going well"


def code_gone(found: Resource) -> None:
    del of_kind(found, "Observation")[0]["code"]


def two_values(found: Resource) -> None:
    of_kind(found, "Observation")[0]["valueString"] = "4"


def unknown_part(found: Resource) -> None:
    of_kind(found, "Patient")[0]["shoulder"] = "left"


def dangling(found: Resource) -> None:
    of_kind(found, "Flag")[0]["subject"]["reference"] = f"urn:uuid:{uuid.UUID(int=1)}"


def url_twice(found: Resource) -> None:
    found["entry"].append(copy.deepcopy(found["entry"][0]))


def a_total(found: Resource) -> None:
    found["total"] = len(found["entry"])


def loinc_digit(found: Resource) -> None:
    first = next(o for o in of_kind(found, "Observation") if "valueQuantity" in o)
    first["code"]["coding"][0]["code"] = "72514-4"


def unit_strange(found: Resource) -> None:
    first = next(o for o in of_kind(found, "Observation") if "valueQuantity" in o)
    first["valueQuantity"]["code"] = "hoursies"


def unit_of_another(found: Resource) -> None:
    first = next(o for o in of_kind(found, "Observation") if "valueQuantity" in o)
    first["valueQuantity"] |= {"code": "h", "unit": "h"}


def no_offset(found: Resource) -> None:
    of_kind(found, "QuestionnaireResponse")[0]["authored"] = "2026-11-02T18:00:00"


def slashed_day(found: Resource) -> None:
    of_kind(found, "CarePlan")[0]["period"]["start"] = "02/11/2026"


def empty_text(found: Resource) -> None:
    of_kind(found, "ServiceRequest")[0]["patientInstruction"] = ""


def not_asked(found: Resource) -> None:
    of_kind(found, "QuestionnaireResponse")[0]["item"][0]["linkId"] = "mood"


def answered_before(found: Resource) -> None:
    of_kind(found, "QuestionnaireResponse")[0]["authored"] = "2020-01-01T00:00:00+00:00"


def a_name(found: Resource) -> None:
    of_kind(found, "Patient")[0]["name"] = [{"text": "D.O."}]


def strange_kind(found: Resource) -> None:
    found["entry"][0]["resource"]["resourceType"] = "Device"


def no_collection(found: Resource) -> None:
    found["type"] = "searchset"


def other_address(found: Resource) -> None:
    found["entry"][0]["fullUrl"] = f"urn:uuid:{uuid.UUID(int=2)}"


def unknown_code(found: Resource) -> None:
    first = next(o for o in of_kind(found, "Observation") if "component" in o)
    first["component"][0]["code"]["coding"][0]["code"] = "mood"


def loinc_words(found: Resource) -> None:
    first = next(o for o in of_kind(found, "Observation") if "valueQuantity" in o)
    first["code"]["coding"][0]["display"] = "Sleep quality"


def loinc_other(found: Resource) -> None:
    first = next(o for o in of_kind(found, "Observation") if "valueQuantity" in o)
    first["code"]["coding"][0]["code"] = "38208-5"


def other_form(found: Resource) -> None:
    of_kind(found, "QuestionnaireResponse")[0]["questionnaire"] = "https://coach.invalid/x|1"


MUTANTS = (
    strange_kind, no_collection, other_address, unknown_code, loinc_words, loinc_other, other_form,
    status_gone, status_strange, code_gone, two_values, unknown_part, dangling, url_twice, a_total,
    loinc_digit, unit_strange, unit_of_another, no_offset, slashed_day, empty_text, not_asked,
    answered_before, a_name,
)  # fmt: skip


@pytest.mark.parametrize("mutate", MUTANTS, ids=lambda one: one.__name__)
def test_our_own_checks_refuse_every_mutant(
    whole: Resource, mutate: Callable[[Resource], None]
) -> None:
    broken = copy.deepcopy(whole)
    mutate(broken)
    assert faults(broken)


@pytest.mark.parametrize("mutate", [status_gone, unknown_part, no_offset, slashed_day])
def test_the_outside_reader_refuses_what_it_can_see(
    whole: Resource, mutate: Callable[[Resource], None]
) -> None:
    broken = copy.deepcopy(whole)
    mutate(broken)
    with pytest.raises(ValueError, match="validation error"):
        Bundle.model_validate(broken)


# ---------------------------------------------------------------- codes


def test_check_digits_are_those_of_codes_in_use() -> None:
    """Codes of LOINC as listed in public: pain, sleep and its parts, effort, exercise."""
    listed = "72514-3 93832-4 93831-6 93830-8 93829-0 82289-0 55411-3 73985-4 82291-6 38208-5"
    for code in (*listed.split(), "56840-2", "65561-3"):
        assert check_digit_fits(code)
        number, digit = code.split("-")
        for other in set("0123456789") - {digit}:
            assert not check_digit_fits(f"{number}-{other}")


def test_every_code_written_is_in_the_closed_list(whole: Resource) -> None:
    text = json.dumps(whole)
    loinc = set(re.findall(r'"system": "http://loinc.org", "code": "([^"]+)"', text))
    assert loinc
    assert loinc <= {code for system, code in CODES if system == LOINC}
    assert all(check_digit_fits(code) for code in loinc)
    assert {code.unit for code in CODES.values()} <= UNITS
    assert "mph" not in UNITS  # it parses as a unit of light


# ---------------------------------------------------------------- what is written


def test_decimals_are_not_changed() -> None:
    text = as_fhir(made_up.facts(made_up.sat(0, sleep_h=7.25, pain_now=2.5, effort=3.0)))
    assert '"value": 7.25,' in text
    assert '"value": 2.5,' in text
    assert '"value": 3,' in text
    assert '"valueDecimal": 2.5' in text


def test_the_same_session_gives_the_same_bytes_and_a_longer_diary_the_same_names() -> None:
    short, long = made_up.facts(made_up.sat(0)), made_up.facts(made_up.sat(0), made_up.sat(2))
    assert as_fhir(short) == as_fhir(made_up.facts(made_up.sat(0)))
    urls = {entry["fullUrl"] for entry in bundle(short)["entry"]}
    assert urls < {entry["fullUrl"] for entry in bundle(long)["entry"]}


def test_names_are_uuids_of_version_5_as_the_standard_library_makes_them() -> None:
    assert named("seed", "patient") == str(uuid.uuid5(uuid.NAMESPACE_URL, "seed/patient"))


def test_no_name_and_no_birth_date_unless_asked() -> None:
    plan = made_up.ten_weeks().bound.plan
    bare = as_fhir(made_up.ten_weeks_facts())
    assert plan.initials not in bare
    assert plan.born not in bare
    assert "M. Aalto" not in bare
    assert "STOP. [name], no more exercise" in bare
    asked = bundle(made_up.ten_weeks_facts(), names=True)
    assert faults(asked, names=True) == []
    assert faults(asked)
    assert plan.initials in json.dumps(asked)


def test_the_words_typed_are_kept_beside_what_was_understood(whole: Resource) -> None:
    first = of_kind(whole, "QuestionnaireResponse")[0]
    items = {item["linkId"]: item["answer"] for item in first["item"]}
    assert items["pain-now"] == [{"valueDecimal": 2}]
    assert len(items["typed"]) > 20
    assert set(items) <= {name for name, _text, _kind in ITEMS}


def test_a_stop_is_a_flag_an_issue_and_what_was_told(whole: Resource) -> None:
    flag = of_kind(whole, "Flag")[0]
    assert flag["status"] == "inactive"
    assert flag["code"]["text"].startswith("S08: ")
    issue = of_kind(whole, "DetectedIssue")[0]
    assert issue["severity"] == "high"
    assert "my pinky has been tingling since this morning" in issue["detail"]
    told = of_kind(whole, "Communication")[0]["payload"][0]["contentString"]
    assert told.startswith("STOP.")
    still = bundle(made_up.facts(made_up.sat(2, made_up.stop(2), ended="stopped")))
    assert of_kind(still, "Flag")[0]["status"] == "active"
    assert of_kind(still, "CarePlan")[0]["status"] == "on-hold"
    unread = bundle(made_up.facts(made_up.sat(0), damage=("line 7, 2026-11-02",)))
    assert of_kind(unread, "CarePlan")[0]["status"] == "unknown"
    assert faults(unread) == []
    assert schema_faults(unread) == []


@pytest.mark.parametrize(
    ("text", "day", "instant"),
    [
        ("2026", True, False),
        ("2026-11", True, False),
        ("2026-11-02", True, False),
        ("2026-13-02", False, False),
        ("2026-02-30", False, False),
        ("20261102", False, False),
        ("2026-11-02T18:00:00", False, False),
        ("2026-11-02T18:00:00+01:00", False, True),
        (None, False, False),
    ],
)
def test_days_and_instants_are_told_apart(text: str | None, day: bool, instant: bool) -> None:
    assert is_day(text) is day
    assert is_instant(text) is instant


scores = st.one_of(st.none(), st.floats(0, 10).map(lambda value: round(value, 2)))
words = st.text(max_size=30)


@settings(max_examples=25)
@given(scores, scores, st.one_of(st.none(), words), st.lists(words, max_size=3), words)
def test_any_session_gives_a_bundle_without_faults(
    pain: float | None, sleep: float | None, threw: str | None, notes: list[str], said: str
) -> None:
    one = made_up.sat(
        0,
        made_up.stop(0, said=said),
        pain_now=pain,
        sleep_h=sleep,
        threw_yesterday=threw,
        notes=tuple(notes),
    )
    found = bundle(made_up.facts(one))
    assert faults(found) == []
    Bundle.model_validate(found)
