"""Every scenario's diary, as the session itself recorded it, gives pages and exports without a fault."""

from __future__ import annotations

import functools
import re
from pathlib import Path

import pytest

from coach.drivers import replay
from coach.drivers.reading import kept_rows, recorded_of, rows_back
from coach.journal.diary import Journal
from coach.journal.whole import Whole, checked
from coach.model.program import Bound
from coach.reports.as_html import as_html
from coach.reports.as_text import as_text
from coach.reports.csv_tables import csv_tables
from coach.reports.diary import diary_lines
from coach.reports.facts import day_of, first_day, gather
from coach.reports.fhir import bundle
from coach.reports.fhir_checks import faults
from coach.reports.visit import visit_page
from coach.reports.whole_record import as_lines, from_lines
from coach.texts.doors import bound_from
from coach.texts.scenarios import read_scenario

SCENARIOS = sorted((Path(__file__).parents[2] / "scenarios").rglob("*.yaml"))


@functools.cache
def plan_at(path: str) -> Bound:
    bound, findings = bound_from(Path(path))
    assert bound is not None, findings
    return bound


def played(file: Path, patch: pytest.MonkeyPatch) -> tuple[Bound, Whole]:
    """The plan of a scenario and all rows of the diary that playing it left."""
    scenario, findings = read_scenario(file)
    assert scenario is not None, findings
    kept: list[Journal] = []
    fresh = replay.diary_in_memory

    def caught() -> Journal:
        kept.append(fresh())
        return kept[-1]

    patch.setattr(replay, "diary_in_memory", caught)
    bound = plan_at(scenario.plan_file)
    replay.play(scenario, file.name, bound)
    rows = kept[0]._chain.find("order by r.number", ())
    return bound, checked(list(rows))


@pytest.mark.parametrize("file", SCENARIOS, ids=lambda file: file.stem)
def test_a_scenarios_diary_is_told_with_its_stops_and_leaves_without_a_fault(
    file: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    bound, whole = played(file, monkeypatch)
    assert whole.damage == ()
    recorded = recorded_of(whole)
    assert recorded.damage == ()
    last = max(day_of(sat) for sat in recorded.sessions)
    facts = gather(bound, recorded, first_day(recorded, last), last)
    assert not facts.outside
    assert faults(bundle(facts)) == []
    page = visit_page(facts)
    assert "not recorded" not in as_text(page)
    assert as_html(page)
    assert csv_tables(facts)
    assert diary_lines(facts, plain=True)
    assert rows_back(from_lines(as_lines(kept_rows(whole.rows)))) == list(whole.rows)
    assert_stops_are_told(whole, as_text(page, width=100_000))


def assert_stops_are_told(whole: Whole, text: str) -> None:
    """Every stop stands in the page's first section with its code."""
    needs = text.partition("2 The week in one picture")[0]
    for row in whole.rows:
        if row.sort == "hold":
            assert re.search(rf"code {row.read()['code']}\b", needs)
