"""Doubt: each change is made once, stands alone, is noticed by who checks it, and is taken back."""

from __future__ import annotations

from pathlib import Path

import pytest

from coach.drivers import doubt
from coach.drivers.doubt import Doubt, Played
from coach.drivers.plan_changes import plan_changes
from coach.drivers.program_changes import program_changes
from coach.rules import pain
from tests.drivers.fakes import bound_plan

PLAN = Path(__file__).parents[2] / "dialogs" / "steady-shoulder" / "plans" / "d-o.yaml"
HEAD = f"scenario: made for a test\nplan: {PLAN}\nusual: smooth\ndays:\n"
ROW = """  - day: 2026-11-09 at 18:30
    all day:
      - offers: reach-across row, 3 sets
    talk:
      - pain now: 2
      - ache place: back
      - pain in set 1 of side-lying external rotation: 3
"""
SIX = """  - day: 2026-11-09 at 18:30
    all day:
      - never asks: go for hold 1 in set 1 of cross-body stretch
    talk:
      - pain in set 1 of side-lying external rotation: 6
"""


def played(tmp_path: Path, days: str = ROW) -> list[Played]:
    """One scenario that passes."""
    file = tmp_path / "made.yaml"
    file.write_text(HEAD + days, encoding="utf-8")
    return doubt.readable([file])


def change(words: str, among: list[Played]) -> Doubt:
    """The one change of these words."""
    (found,) = [one for one in doubt.doubts(among) if one.what == words]
    return found


@pytest.mark.parametrize(
    ("words", "noticed"),
    [
        ("change plan D.O. 1: reach-across row, sets opening 2", True),
        ("change plan D.O. 1: reach-across row, rest 75 s", False),
        ("change plan D.O. 1: reach-across row, reps opening 13", False),
        ("change scripts/check-in.yaml: when pain now is 2 to 3: now pain now is 3 to 3", True),
        ("change scripts/close.yaml: when pain after is at least 3: always", False),
        ("change coach/rules/pain.py: FLAG_AT 8 to 7", False),
    ],
)  # fmt: skip
def test_a_change_is_noticed_only_where_a_scenario_checks_it(
    tmp_path: Path, words: str, *, noticed: bool
) -> None:
    scenarios = played(tmp_path)
    assert bool(doubt.noticed_by(change(words, scenarios), scenarios)) is noticed


def test_a_moved_number_of_a_rule_is_noticed_and_put_back(tmp_path: Path) -> None:
    scenarios = played(tmp_path, SIX)
    moved = change("change coach/rules/pain.py: END_AT 6 to 7", scenarios)
    assert doubt.noticed_by(moved, scenarios) == "made.yaml"
    assert pain.END_AT == 6


def test_no_change_of_plan_or_program_is_made_twice_or_changes_nothing() -> None:
    bound = bound_plan()
    plans = list(plan_changes(bound.plan))
    programs = list(program_changes(bound.program))
    assert len({one.what for one in plans}) == len(plans) > 80
    assert len({one.what for one in programs}) == len(programs) > 30
    assert all(one.make(bound.plan) != bound.plan for one in plans)
    assert all(one.make(bound.program) != bound.program for one in programs)


def test_every_change_names_a_line() -> None:
    bound = bound_plan()
    places = [one.place for one in plan_changes(bound.plan)]
    places += [one.place for one in program_changes(bound.program)]
    assert all(place.file and place.line for place in places)


def test_a_scenario_that_fails_already_can_notice_nothing(tmp_path: Path) -> None:
    assert played(tmp_path, ROW.replace("3 sets", "4 sets")) == []


def test_what_is_left_is_listed_by_line_and_what_is_argued_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    played(tmp_path)
    rest, reps = "rest 75 s", "reps opening 13"
    wanted = {f"change plan D.O. 1: reach-across row, {what}" for what in (rest, reps)}
    every = doubt.doubts
    monkeypatch.setattr(doubt, "doubts", lambda p: [d for d in every(p) if d.what in wanted])
    argued = {f"change plan D.O. 1: reach-across row, {rest}": "a rest is held elsewhere"}
    monkeypatch.setattr(doubt, "reasons_for", lambda _files: argued)
    said: list[str] = []
    results, lines = doubt.look([tmp_path / "made.yaml"], said.append)
    line = next(n for n, text in enumerate(PLAN.read_text().splitlines(), 1) if "8 to 12" in text)
    assert f"plans/d-o.yaml:{line}: change plan D.O. 1: reach-across row, {reps}" in lines[0]
    assert lines[1].startswith("Argued: change plan D.O. 1: reach-across row, rest 75 s: a rest")
    assert lines[-1] == "2 changes tried, 1 not noticed, 1 more argued."
    assert [one.passed for one in results] == [False]
    assert said[-1] == "2 of 2 changes tried, 2 not noticed"
