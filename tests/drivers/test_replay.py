"""Scenarios: what fits passes, what does not is shown with both sides, and the results as XML."""

from __future__ import annotations

import xml.etree.ElementTree as ET
from pathlib import Path

import pytest
import xmlschema

from coach.drivers.junit import allowed, as_junit, time_of
from coach.drivers.replay import Mismatch, Result, exit_code, play, replay, report
from coach.model.findings import Finding
from coach.model.program import Place
from coach.texts.scenarios import read_scenario
from tests.drivers.fakes import bound_plan

ROOT = Path(__file__).parents[2]
PLAN = ROOT / "dialogs" / "steady-shoulder" / "plans" / "d-o.yaml"
HEAD = f"""scenario: made for a test
plan: {PLAN}
usual: smooth
days:
  - day: 2026-11-09 at 18:30
"""


def played(tmp_path: Path, rest: str) -> Result:
    file = tmp_path / "made.yaml"
    file.write_text(HEAD + rest, encoding="utf-8")
    scenario, findings = read_scenario(file)
    assert scenario is not None, findings
    return play(scenario, file.name, bound_plan())


def missed(tmp_path: Path, rest: str) -> list[tuple[str, str]]:
    return [(m.expected, m.actual) for m in played(tmp_path, rest).mismatches]


@pytest.mark.parametrize(
    "check",
    [
        "offers: reach-across row, 3 sets, 8 to 12 reps, 5 lb",
        "never offers: band diagonal lift",
        "never offers: reach-across row, 4 sets",
        "asks: screen arm",
        "asks: pain in set 2 of reach-across row",
        "never asks: guardian here",
        "never shows: STOP",
        "never notes: no such note",
        "shows: Done for today.",
    ],
)
def test_a_check_that_fits_passes(tmp_path: Path, check: str) -> None:
    assert played(tmp_path, f"    all day:\n      - {check}\n").passed


@pytest.mark.parametrize(
    "check",
    [
        "offers: reach-across row, 4 sets",
        "offers: band diagonal lift",
        "never offers: reach-across row",
        "never offers: anything",
        "asks: guardian here",
        "never asks: screen arm",
        "stops: same day",
        "decided by: pain.in_set",
        "notes: no such note",
        "shows: no such words",
        "never shows: Done for today.",
    ],
)
def test_a_check_that_does_not_fit_fails_with_both_sides(tmp_path: Path, check: str) -> None:
    ((expected, actual),) = missed(tmp_path, f"    all day:\n      - {check}\n")
    assert expected == check.replace(": ", " ", 1)
    assert actual
    assert actual != expected


def test_a_check_holds_from_its_place_on(tmp_path: Path) -> None:
    late = "    talk:\n      - pain after: 1\n      - never asks: screen arm\n"
    early = "    talk:\n      - plan is mine: yes\n      - never asks: screen arm\n"
    assert played(tmp_path, late).passed
    assert missed(tmp_path, early) == [("never asks screen arm", "asks screen arm")]


def test_an_answer_that_no_prompt_asks_for_is_a_mismatch(tmp_path: Path) -> None:
    assert missed(tmp_path, "    talk:\n      - guardian here: yes\n") == [
        ("asks guardian here", "never asked from here on")
    ]


def test_answers_out_of_order_are_a_mismatch(tmp_path: Path) -> None:
    talk = "    talk:\n      - waking pain: 0\n      - pain now: 1\n"
    assert missed(tmp_path, talk)[0][0] == "asks pain now"


def test_a_prompt_with_nothing_typed_for_it_is_a_mismatch(tmp_path: Path) -> None:
    file = tmp_path / "bare.yaml"
    file.write_text(
        HEAD.replace("usual: smooth\n", "usual:\n  - plan is mine: yes\n")
        + "    all day:\n      - asks: pain now\n",
        encoding="utf-8",
    )
    (result,) = replay([file])
    assert [m.actual for m in result.mismatches] == ["asks pain now"]


def test_a_whole_line_may_be_typed_under_its_own_name(tmp_path: Path) -> None:
    talk = (
        "    talk:\n      - set line in set 1 of side-lying external rotation: 12, pain 1\n"
        "      - shows: 12 reps, pain 1 of 10\n"
    )
    assert played(tmp_path, talk).passed


@pytest.mark.parametrize(
    ("length", "screened"), [("60 min", False), ("3601 s", True), ("61 min", True), ("3 h", True)]
)
def test_a_break_lasts_as_long_as_it_says(tmp_path: Path, length: str, *, screened: bool) -> None:
    at = "pain in set 1 of reach-across row"
    asks = "asks" if screened else "never asks"
    paused = f"      - {at}: pause\n      - break: {length}\n      - paused: go\n"
    away = f"      - {at}: 1\n      - happens: power cut\n      - break: {length}\n"
    for talk in (paused, away):
        assert played(tmp_path, f"    talk:\n{talk}      - {asks}: screen arm\n").passed


def test_a_power_cut_without_a_break_ends_the_day_of_the_scenario(tmp_path: Path) -> None:
    talk = "    talk:\n      - waking pain: 0\n      - happens: power cut\n      - pain after: 1\n"
    assert missed(tmp_path, talk) == [("asks pain after", "never asked from here on")]


def test_an_answer_that_comes_too_late_is_not_taken(tmp_path: Path) -> None:
    late = "    talk:\n      - waking pain: 0\n      - break: 61 min\n"
    shown = "      - shows: your last answer was not taken\n"
    assert played(tmp_path, late + shown).passed
    assert not played(tmp_path, late.replace("61", "60") + shown).passed


def test_a_mismatch_shows_both_sides_beside_each_other_with_its_place(tmp_path: Path) -> None:
    result = played(tmp_path, "    all day:\n      - stops: same day\n")
    lines = report([result])
    assert lines[0] == "made.yaml:7: made for a test"
    assert lines[1].startswith("  2026-11-09, at the prompt: ")
    assert "expected: stops same day" in lines[2]
    assert "actual: stops nothing" in lines[2]
    assert lines[-1] == "0 passed, 1 failed"
    assert exit_code([result]) == 1


def test_a_file_that_cannot_be_read_is_code_65_and_shows_its_findings(tmp_path: Path) -> None:
    file = tmp_path / "broken.yaml"
    file.write_text("scenario: x\nplan: nowhere.yaml\n", encoding="utf-8")
    results = replay([file])
    assert exit_code(results) == 65
    assert any("scenario.plan" in line for line in report(results))


def test_a_folder_plays_every_scenario_in_it() -> None:
    results = replay([ROOT / "scenarios" / "power-cut.yaml", ROOT / "scenarios" / "six-ends.yaml"])
    assert [result.file for result in results] == ["power-cut.yaml", "six-ends.yaml"]
    assert exit_code(results) == 0
    assert report(results) == ["2 passed, 0 failed"]


# ---------------------------------------------------------------- as XML

PLACE = Place("made.yaml", 7)
RESULTS = [
    Result("good.yaml", "all fits", 0.0567),
    Result(
        "bad.yaml",
        'a <b> & "c" \x1b[2J\x00',
        1.5,
        (
            Mismatch("2026-11-09", "pain now", PLACE, "asks <a>", "asks ]]> \x0bb"),
            Mismatch("2026-11-09", "pain now", PLACE, "asks second", "asks nothing"),
        ),
    ),
    Result(
        "broken.yaml", "no", 0.0, findings=(Finding("a.b", "error", PLACE, "What.", "Why.", ""),)
    ),
]
SCHEMA = ROOT / "tests" / "schemas" / "junit-10.xsd"


@pytest.mark.parametrize("results", [RESULTS, RESULTS[:1], []])
def test_results_as_xml_fit_the_published_schema(results: list[Result]) -> None:
    text = as_junit(results)
    xmlschema.XMLSchema(SCHEMA).validate(text)
    root = ET.fromstring(text)  # noqa: S314 - made here
    assert root.attrib["tests"] == str(len(results))
    assert root.attrib["failures"] == str(len(results[1:2]))
    assert root.attrib["errors"] == str(len(results[2:]))


def test_the_schema_refuses_results_that_do_not_fit() -> None:
    text = as_junit(RESULTS).replace(' name="all fits"', "")
    assert not xmlschema.XMLSchema(SCHEMA).is_valid(text)


def test_every_mismatch_of_a_scenario_stands_in_its_failure() -> None:
    failure = ET.fromstring(as_junit(RESULTS)).find(".//failure")  # noqa: S314 - made here
    assert failure is not None
    assert failure.text is not None
    assert "asks <a>" in failure.text
    assert "asks second" in failure.text


def test_characters_that_xml_forbids_are_left_out() -> None:
    text = as_junit(RESULTS)
    assert not set(text) & {chr(n) for n in range(0x20) if n not in {0x9, 0xA, 0xD}}
    assert allowed("a\x00\ud800\ufffe\tb\U0001f600") == "a\tb\U0001f600"


def test_no_machine_name_and_no_time_of_day_is_in_the_results() -> None:
    text = as_junit(RESULTS)
    assert "hostname" not in text
    assert "timestamp" not in text


@pytest.mark.parametrize(
    ("seconds", "shown"), [(0.0567, "0.057"), (0, "0.000"), (12.3456, "12.346")]
)
def test_times_are_written_as_the_schema_wants(seconds: float, shown: str) -> None:
    assert time_of(seconds) == shown


def test_a_parser_that_build_servers_use_reads_the_results() -> None:
    from junitparser import Error, Failure, JUnitXml

    (suite,) = JUnitXml.fromstring(as_junit(RESULTS).encode())
    good, bad, broken = suite
    assert (suite.tests, suite.failures, suite.errors) == (3, 1, 1)
    assert good.name == "all fits"
    assert good.is_passed
    assert isinstance(bad.result[0], Failure)
    assert isinstance(broken.result[0], Error)
