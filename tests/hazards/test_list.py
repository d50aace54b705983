"""The list of hazards: whole, tied to rules that run, and held by tests that say so."""

from __future__ import annotations

import re
from typing import Any

import pytest

from coach.drivers.rules_known import rulings
from tests.hazards.marked import hazards, marked_tests

IDS = [hazard["id"] for hazard in hazards()]
KEYS = ["id", "situation", "comes about by", "harm", "severity", "controls"]
KEYS += ["rules", "tests", "left over"]


def test_every_hazard_has_its_number_once() -> None:
    assert [f"H-{number:02}" for number in range(1, len(IDS) + 1)] == IDS


@pytest.mark.parametrize("hazard", hazards(), ids=IDS)
def test_a_hazard_says_everything_about_itself(hazard: dict[str, object]) -> None:
    assert list(hazard) == KEYS
    assert hazard["severity"] in {"S1", "S2", "S3"}
    controls = hazard["controls"]
    assert isinstance(controls, list)
    assert controls
    assert {control["type"] for control in controls} <= {"D", "P", "I"}


@pytest.mark.parametrize("hazard", hazards(), ids=IDS)
def test_a_hazard_is_controlled_by_more_than_words(hazard: dict[str, Any]) -> None:
    kinds = {control["type"] for control in hazard["controls"]}
    only_told = {"H-15", "H-18"}  # a number to call, and hashes to compare
    assert kinds & {"D", "P"} or hazard["id"] in only_told


@pytest.mark.parametrize("hazard", hazards(), ids=IDS)
def test_every_rule_named_is_one_that_a_session_runs(hazard: dict[str, list[str]]) -> None:
    assert set(hazard["rules"]) <= {one.rule for one in rulings()}


@pytest.mark.parametrize("hazard", hazards(), ids=IDS)
def test_a_hazard_lists_the_tests_marked_with_it_and_has_one(hazard: dict[str, list[str]]) -> None:
    assert hazard["tests"] == sorted(marked_tests().get(str(hazard["id"]), set()))
    assert hazard["tests"]


def test_no_marker_names_a_hazard_that_is_not_listed() -> None:
    assert set(marked_tests()) <= set(IDS)
    assert all(re.fullmatch(r"H-[0-9]{2}", name) for name in marked_tests())
