"""What the proof reports, and that a search cut short shows nothing."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
import xmlschema
from junitparser import JUnitXml

from coach.drivers import prove as proving
from coach.drivers.junit import as_junit
from coach.drivers.prove import Options, as_json, as_words, holds, not_given, not_used, prove
from coach.drivers.prove_days import openings
from coach.drivers.prove_search import Break
from coach.drivers.prove_told import results_of
from coach.model.program import Bound
from coach.session.throwing import last_throw
from coach.texts.doors import bound_from
from tests.proof.small import bound

SAMPLE = Path(__file__).parents[2] / "dialogs/steady-shoulder"
SCHEMA = Path(__file__).parents[1] / "schemas" / "junit-10.xsd"


def test_every_kind_of_opening_has_its_own_name_and_one_ends_at_the_door() -> None:
    names = [name for name, _ in openings(bound())]
    assert len(set(names)) == len(names)
    assert {"the first day", "a stop stands", "a full week", "a new plan"} <= set(names)


def test_a_search_cut_short_shows_nothing() -> None:
    report = prove(bound(), Options(Path("plan.yaml"), seconds=0.001), lambda _whole: None)
    assert not report.finished
    assert set(report.promises.values()) == {"not shown"}
    assert not holds(report, "")
    assert "cut short" in as_words(report, "plan.yaml")
    assert json.loads(as_json(report))["promises"]["P4"] == "not shown"


def test_the_promises_are_results_for_a_build_server() -> None:
    report = prove(bound(), Options(Path("plan.yaml"), seconds=0.001), lambda _whole: None)
    talk = (("check-in", "pain now 1"), ("screen ill", "<yes>"))
    told = {**report.promises, "P2": "holds", "P4": "broken"}
    report = report._replace(
        promises=told, broken=(Break("P4", "too much", talk, "the first day"),)
    )
    results = results_of(report, Path("plans/d-o.yaml"))
    text = as_junit(results, "promises")
    xmlschema.XMLSchema(SCHEMA).validate(text)
    (suite,) = JUnitXml.fromstring(text.encode())
    passed = {case.name for case in suite if case.is_passed}
    assert passed == {"P2"}
    assert "check-in: pain now 1; screen ill: &lt;yes&gt;" in text


def test_days_that_end_at_the_door_are_searched_whole(monkeypatch: pytest.MonkeyPatch) -> None:
    closed = [
        one for one in openings(bound()) if one[0] in {"a stop stands", "the day after the plan"}
    ]
    monkeypatch.setattr(proving, "openings", lambda _bound: closed)
    report = prove(bound(), Options(Path("plan.yaml")), lambda _whole: None)
    assert report.finished
    assert report.promises["P1"] == "holds"
    assert report.places == 2


def test_what_is_asked_only_before_a_step_up_is_beyond_days_without_one() -> None:
    days = openings(bound())
    assert not any(brief.wants_up for _name, brief in days)
    assert not_given(days) == {"throwing tomorrow"}
    days[0][1].wants_up = True
    assert not_given(days) == set()


def sample(plan: str) -> Bound:
    made, findings = bound_from(SAMPLE / f"plans/{plan}.yaml")
    assert made is not None, findings
    return made


def test_what_a_plan_has_no_use_for_is_not_looked_for_in_it() -> None:
    assert not_used(sample("d-o")) == set()
    assert not_used(sample("v-s")) == {"which version", "stand-in weight"}


def test_only_where_throwing_is_cleared_a_day_comes_after_throws() -> None:
    def names(plan: str) -> set[str]:
        return {name for name, _brief in openings(sample(plan))}

    assert names("v-s") - names("d-o") == {"after a throwing day"}
    brief = dict(openings(sample("v-s")))["after a throwing day"]
    last = last_throw(brief)
    assert last is not None
    assert last.step == 1


def test_a_shard_says_nothing_about_what_other_shards_may_reach(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    closed = [one for one in openings(bound()) if one[0] == "a stop stands"]
    line = proving.Unreached("scripts/close.yaml", 9, "ask also stairs")
    monkeypatch.setattr(proving, "openings", lambda _bound: closed)
    monkeypatch.setattr(proving, "steps_unreached", lambda *_: (line,))
    part = prove(bound(), Options(Path("plan.yaml"), shard=(1, 2)), lambda _whole: None)
    assert part.promises["P9"] == "not shown"
    assert part.promises["P1"] == "holds"
    assert "can be broken" not in as_words(part, "plan.yaml")
    assert prove(bound(), Options(Path("plan.yaml")), lambda _w: None).promises["P9"] == "broken"
