"""The invented plan can be tried on any day; only its dates move."""

from __future__ import annotations

from datetime import date
from pathlib import Path

import pytest

from coach.drivers import exit_codes
from coach.drivers.sample import moved_to
from coach.rules.plan_life import plan_life
from coach.rules.throwing import clearance
from coach.texts.doors import bound_from

PLANS = sorted((Path(__file__).parents[2] / "dialogs" / "steady-shoulder" / "plans").glob("*.yaml"))


@pytest.mark.parametrize("path", PLANS, ids=lambda path: path.stem)
@pytest.mark.parametrize("today", [date(2020, 2, 29), date(2026, 11, 9), date(2031, 1, 1)])
def test_a_sample_plan_is_in_force_on_the_day_it_is_tried(path: Path, today: date) -> None:
    bound, findings = bound_from(path)
    assert bound is not None, findings
    moved = moved_to(bound, today)
    assert plan_life(moved.plan, today).outcome == "may"
    runs = [date.fromisoformat(p.review_by) - date.fromisoformat(p.starts)
            for p in (bound.plan, moved.plan)]  # fmt: skip
    assert runs[0] == runs[1]
    dates = ("starts", "review_by", "phase_opened", "opened", "throwing_line", "surgery")
    for field in bound.plan._fields:
        if field not in dates:
            assert getattr(moved.plan, field) == getattr(bound.plan, field)


@pytest.mark.parametrize("path", PLANS, ids=lambda path: path.stem)
@pytest.mark.parametrize("today", [date(2020, 2, 29), date(2031, 1, 1)])
def test_throwing_and_surgery_move_with_the_plan(path: Path, today: date) -> None:
    bound, findings = bound_from(path)
    assert bound is not None, findings
    old, new = bound.plan, moved_to(bound, today).plan
    by = today - date.fromisoformat(old.starts)
    if old.throwing_line is not None:
        assert new.throwing_line is not None
        moved = date.fromisoformat(new.throwing_line.cleared)
        assert moved - date.fromisoformat(old.throwing_line.cleared) == by
        same = new.throwing_line._replace(cleared=old.throwing_line.cleared)
        assert same == old.throwing_line
        assert clearance(new, max(today, moved)) == new.throwing_line
    if old.surgery != "none":
        assert date.fromisoformat(new.surgery[:10]) - date.fromisoformat(old.surgery[:10]) == by
        assert new.surgery[10:] == old.surgery[10:]


@pytest.mark.parametrize(
    ("end", "code"),
    [("done", 0), ("closed", 0), ("refused", 0), ("by choice", 11), ("partial", 11),
     ("stopped", 10), ("something new", 70)],
)  # fmt: skip
def test_each_end_has_its_exit_code_and_an_unknown_one_is_our_fault(end: str, code: int) -> None:
    assert exit_codes.for_end(end) == code
