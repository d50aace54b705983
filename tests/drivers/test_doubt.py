"""Doubt: each change is made once, stands alone, is noticed by who checks it, and is taken back."""

from __future__ import annotations

from pathlib import Path

import pytest

from coach.drivers import doubt
from coach.drivers.doubt import Doubt, Played
from coach.drivers.plan_changes import plan_changes
from coach.drivers.program_changes import program_changes
from coach.drivers.rule_changes import rule_changes
from coach.model.program import Axis, Limits, PainCeilings, Plan, Prescription, ThrowingLine
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


# What a slip in a field would not show to a session, so that it is not tried.
PLACES = (
    "place",
    "side_place",
    "runs_place",
    "clearance_place",
    "changed_places",
    "load_place",
    "signature_place",
)
NOT_TRIED = {
    "Plan": {
        "name": "the name of a plan is compared with no other",
        "version": "it says something beside another version only; the scenario of one holds it",
        "program": "another program is another plan",
        "language": "the sample program has one; tests/texts hold what two need",
        "sport": "words for a person",
        "phase": "each exercise left out of the phase is tried",
        "works_with": "the check reads it; no session does",
        "words": "a replay has clearance words of its own",
        "not_used": "what is done has a dose; this line only says so to a reader",
        "changed": "no plan of the sample changes a rule; the made-up plan below does",
        "signature": "no plan of the sample asks for one; no session reads it",
    },
    "Prescription": {
        "exercise": "a dose without its exercise is refused by the check",
        "load_after_days": "no plan of the sample names days for a load",
    },
    "PainCeilings": {},
    "Limits": {},
    "ThrowingLine": {
        "who": "words for a person",
        "table": "another table is another line; its steps are compared with the published ones",
        "sessions_a_step": "no plan of the sample names them; the made-up plan below does",
    },
    "Axis": {},
}


def changed_fields(before: object, after: object, found: set[tuple[str, str]]) -> None:
    """Every field of a noun, and of the nouns in it, in which the two differ."""
    if isinstance(before, tuple) and hasattr(before, "_fields") and type(before) is type(after):
        for field, one, other in zip(before._fields, before, after, strict=True):
            if one != other:
                found.add((type(before).__name__, field))
                changed_fields(one, other, found)
    elif isinstance(before, tuple) and isinstance(after, tuple) and len(before) == len(after):
        for one, other in zip(before, after, strict=True):
            changed_fields(one, other, found)


def test_every_field_of_a_plan_is_changed_or_has_a_reason_why_not() -> None:
    found: set[tuple[str, str]] = set()
    for file in sorted(PLAN.parent.glob("*.yaml")):
        plan = bound_plan(file.stem).plan
        for one in plan_changes(plan):
            changed_fields(plan, one.make(plan), found)
    for noun in (Plan, Prescription, PainCeilings, Limits, ThrowingLine, Axis):
        tried = {field for name, field in found if name == noun.__name__}
        assert tried | set(NOT_TRIED[noun.__name__]) | set(PLACES) == {*noun._fields, *PLACES}
        assert not tried & set(NOT_TRIED[noun.__name__])


def test_a_changed_rule_and_the_sessions_a_step_takes_are_changed_too() -> None:
    plan = bound_plan("m-k").plan
    assert plan.throwing_line is not None
    line = plan.throwing_line._replace(sessions_a_step=2)
    plan = plan._replace(changed=(("ready.sleep", 7.0),), throwing_line=line, name="made up")
    said = {one.what: one.make(plan) for one in plan_changes(plan)}
    assert said["plan made up: changed rule ready.sleep: left out"].changed == ()
    assert said["plan made up: changed rule ready.sleep 6"].changed == (("ready.sleep", 6.0),)
    three = said["plan made up: throwing sessions a step 2 to sessions a step 3"]
    assert three.throwing_line is not None
    assert three.throwing_line.sessions_a_step == 3


@pytest.mark.parametrize("days", [ROW, SIX])
def test_a_scenario_that_is_not_asked_of_a_change_could_not_have_noticed_it(
    tmp_path: Path, days: str
) -> None:
    (one,) = scenarios = played(tmp_path, days)
    spared = [d for d in doubt.doubts(scenarios) if not d.matters(one)]
    assert len(spared) > 60
    for change in spared[:: len(spared) // 20]:
        anyone = change._replace(matters=lambda _one: True)
        assert not doubt.noticed_by(anyone, scenarios), change.what


def names(functions: frozenset[str]) -> set[str]:
    """Of functions as they are known, the names alone."""
    return {one.rpartition(":")[2] for one in functions}


def test_a_named_number_is_changed_a_little_and_only_where_a_session_reads_it() -> None:
    said = {one.what.removeprefix("change coach/"): one for one in rule_changes()}
    assert "rules/readiness.py: SHORT_NIGHT_H 6 to 5.5" in said
    assert "rules/progression.py: STEP_AT_MOST 0.1 to 0.11" in said
    assert "drivers/drive.py: LONG_BREAK_S 3600 to 3660" in said
    assert names(said["rules/pain.py: FLAG_AT 8 to 7"].readers) == {"is_flag"}
    assert names(said["session/asides.py: ASK_SINCE_AFTER_S 300 to 240"].readers) == {"resumed"}
    assert not any("CHRONIC_DAYS" in what for what in said)  # no session reckons with it


def test_two_workers_find_what_one_finds(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    scenarios = played(tmp_path)
    every = doubt.doubts
    monkeypatch.setattr(doubt, "doubts", lambda p: every(p)[::60])
    alone = doubt.unnoticed(scenarios, print, workers=1)
    both = doubt.unnoticed(scenarios, print, workers=2)
    assert [one.what for one in alone.left] == [one.what for one in both.left]
    assert alone.tried == both.tried == len(alone.every)


def test_a_look_that_is_cut_short_says_so_and_ends_with_130(tmp_path: Path) -> None:
    played(tmp_path)
    _results, lines, code = doubt.look([tmp_path / "made.yaml"], print, seconds=0.001)
    assert code == 130
    assert lines[-1].startswith("Cut short: ")


def test_ctrl_c_ends_a_look_with_what_is_known(tmp_path: Path) -> None:
    def tired(words: str) -> None:
        if words.startswith("2 of"):
            raise KeyboardInterrupt

    looked = doubt.unnoticed(played(tmp_path), tired)
    assert looked.tried == 2
    assert len(looked.every) > 200


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
    results, lines, code = doubt.look([tmp_path / "made.yaml"], said.append)
    assert code == 0
    line = next(n for n, text in enumerate(PLAN.read_text().splitlines(), 1) if "8 to 12" in text)
    assert f"plans/d-o.yaml:{line}: change plan D.O. 1: reach-across row, {reps}" in lines[0]
    assert lines[1].startswith("Argued: change plan D.O. 1: reach-across row, rest 75 s: a rest")
    assert lines[-1] == "2 changes tried, 1 not noticed, 1 more argued."
    assert [one.passed for one in results] == [False]
    assert said[-1] == "2 of 2 changes tried, 2 not noticed"
