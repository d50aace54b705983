"""SARIF: the same findings, at the same places, in a form that its own schema takes."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from jsonschema import Draft4Validator

from coach.texts.doors import check_paths
from coach.texts.sarif import as_sarif

TESTS = Path(__file__).parents[1]
ERRORS = TESTS / "errors"
SCHEMA = json.loads((TESTS / "schemas" / "sarif-2.1.0-rtm.5.json").read_text("utf-8"))
VALID = Draft4Validator(SCHEMA)
PAGES = sorted(page.name for page in ERRORS.iterdir() if page.is_dir())


@pytest.fixture(autouse=True)
def among_the_pages(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(ERRORS)


@pytest.mark.parametrize("page", PAGES)
def test_every_page_of_findings_is_sarif(page: str) -> None:
    found = check_paths([Path(page)])
    log = json.loads(as_sarif(found))
    assert list(VALID.iter_errors(log)) == []
    (run,) = log["runs"]
    assert len(run["results"]) == len(found)
    for result, finding in zip(run["results"], found, strict=True):
        assert result["ruleId"] == finding.id
        assert run["tool"]["driver"]["rules"][result["ruleIndex"]]["id"] == finding.id
        assert result["level"] == finding.level
        place = result["locations"][0]["physicalLocation"]
        assert place["artifactLocation"]["uri"].startswith(page)
        assert place["region"]["startLine"] == finding.place.line


def test_the_schema_refuses_another_level_and_a_missing_version() -> None:
    log = json.loads(as_sarif(check_paths([Path("ask.order")])))
    log["runs"][0]["results"][0]["level"] = "bad"
    assert list(VALID.iter_errors(log))
    log["runs"][0]["results"][0]["level"] = "error"
    del log["version"]
    assert list(VALID.iter_errors(log))


def test_a_path_is_told_from_here_with_odd_letters_spelt_out(tmp_path: Path) -> None:
    (tmp_path / "a plan%.yaml").write_text("plan: L.V. 1\n")
    log = json.loads(as_sarif(check_paths([tmp_path / "a plan%.yaml"])))
    uri = log["runs"][0]["results"][0]["locations"][0]["physicalLocation"]["artifactLocation"][
        "uri"
    ]
    assert uri.startswith("../")
    assert uri.endswith("/a%20plan%25.yaml")
