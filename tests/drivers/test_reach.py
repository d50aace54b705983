"""What scenarios reach: it is seen, what they leave out is named by its line, nothing is touched."""

from __future__ import annotations

from pathlib import Path

import pytest

from coach.drivers import reach
from coach.drivers.junit import as_junit
from coach.drivers.rules_known import rulings
from coach.rules import pain
from coach.session import engine, scripts

ROOT = Path(__file__).parents[2]
PLAN = ROOT / "dialogs" / "steady-shoulder" / "plans" / "d-o.yaml"
HEAD = f"""scenario: made for a test
plan: {PLAN}
usual: smooth
days:
  - day: 2026-11-09 at 18:30
"""


def reached(tmp_path: Path, day: str) -> reach.Reach:
    """What one day reaches."""
    file = tmp_path / "made.yaml"
    file.write_text(HEAD + day, encoding="utf-8")
    results, found = reach.reached_by([file])
    assert [r.mismatches for r in results] == [()]
    return found


def missing(found: reach.Reach) -> list[str]:
    """What is missing, without its lines."""
    return [one.what for one in found.missing()]


def test_a_calm_day_leaves_the_branches_about_pain_on_their_other_side(tmp_path: Path) -> None:
    left = missing(reached(tmp_path, "    all day:\n      - never asks: ache place\n"))
    assert "line ask also: ache place" in left
    assert "when pain now is 2 to 3: never so" in left
    assert "when pain now is 2 to 3: never otherwise" not in left
    assert "line ask: pain now" not in left
    assert "stop S08, same day" in left


def test_a_branch_that_was_entered_counts_as_entered_only(tmp_path: Path) -> None:
    day = "    all day:\n      - asks: ache place\n    talk:\n      - pain now: 2\n"
    left = missing(reached(tmp_path, day + "      - ache place: deep inside\n"))
    assert "when pain now is 2 to 3: never otherwise" in left
    assert "when ache place is deep inside: never otherwise" in left
    assert "line effect: one set fewer reach-across row" not in left
    assert "line note: Ache deep inside the joint at the start of the day." not in left


def test_a_stop_and_the_rule_behind_it_are_seen(tmp_path: Path) -> None:
    day = "    talk:\n      - screen arm: yes\n      - numb tingle: yes\n      - stops: same day\n"
    found = reached(tmp_path, day)
    assert found.stops == {"S08"}
    assert "same day" in found.rules["stop.flag"]


def test_what_is_missing_is_named_by_file_and_line(tmp_path: Path) -> None:
    found = reached(tmp_path, "    all day:\n      - never shows: STOP\n")
    text = "\n".join(reach.report(found, {}))
    script = (PLAN.parent.parent / "scripts" / "check-in.yaml").read_text("utf-8").splitlines()
    line = next(n for n, words in enumerate(script, 1) if "ask also: ache place" in words)
    assert f"scripts/check-in.yaml:{line}: line ask also: ache place: not reached" in text
    assert as_junit(reach.as_results(found, {})).count("<failure") == len(found.missing())


def test_everything_is_put_back_afterwards(tmp_path: Path) -> None:
    before = (engine.take, scripts.settle, pain.in_set)
    reached(tmp_path, "    all day:\n      - never shows: STOP\n")
    assert (engine.take, scripts.settle, pain.in_set) == before


def test_the_same_scenarios_give_the_same_words(tmp_path: Path) -> None:
    day = "    all day:\n      - never shows: STOP\n"
    first, second = (reach.report(reached(tmp_path, day), {}) for _ in range(2))
    assert first == second


@pytest.mark.parametrize(
    "rule", ["pain.in_set", "stop.flag", "limits.caps", "pick.row", "prog.dapre"]
)
def test_rules_that_a_stage_calls_are_known(rule: str) -> None:
    assert rule in {one.rule for one in rulings()}


@pytest.mark.parametrize("rule", ["load.session"])
def test_rules_that_no_stage_calls_are_left_out(rule: str) -> None:
    assert rule not in {one.rule for one in rulings()}


def test_what_is_argued_beside_the_program_is_told_and_no_failure(tmp_path: Path) -> None:
    found = reached(tmp_path, "    all day:\n      - never shows: STOP\n")
    reasons = {"rule pick.row": "none is picked here", "rule pain.in_set": "was once not reached"}
    lines = reach.report(found, reasons)
    assert "Argued: rule pick.row: none is picked here" in lines
    assert "No longer so, take it out: rule pain.in_set" in lines
    assert not any(line.endswith("rule pick.row: not reached") for line in lines)
    assert not any("pick.row" in one.name for one in reach.as_results(found, reasons))
