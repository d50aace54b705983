"""The tester's commands, run as a tester does."""

from __future__ import annotations

import shutil
from datetime import datetime, timedelta
from pathlib import Path

from tests.cli.running import D_O, run

CALM = f"""scenario: a calm day
plan: {D_O}
usual: smooth
days:
  - day: 2026-11-09 at 18:30
    all day:
      - never shows: STOP
"""


def calm_day(folder: Path) -> str:
    """A scenario of one calm day."""
    file = folder / "calm.yaml"
    file.write_text(CALM, encoding="utf-8")
    return str(file)


def test_reach_names_what_no_scenario_reaches_and_ends_with_1(tmp_path: Path) -> None:
    done = run(tmp_path, "replay", "--reach", calm_day(tmp_path), "--junit", "out.xml")
    assert done.returncode == 1
    assert "1 passed, 0 failed" in done.stdout
    assert "ask also: ache place: not reached" in done.stdout
    assert 'tests="' in (tmp_path / "out.xml").read_text("utf-8")


def test_record_writes_a_scenario_that_replays_and_leaves_own_words_out(tmp_path: Path) -> None:
    assert run(tmp_path, "use", plan_from_last_week(tmp_path)).returncode == 0
    typed = "yes\nmy aunt Ida says 2\nstop\nno\n"
    run(tmp_path, "--plain", typed=typed)
    none = run(tmp_path, "record", "--out", "kept.yaml")
    assert none.returncode == 65
    done = run(tmp_path, "record", "--out", "kept.yaml", "--plan", plan_from_last_week(tmp_path))
    assert done.returncode == 0, done.stdout + done.stderr
    assert "Ida" not in (tmp_path / "kept.yaml").read_text("utf-8")
    assert run(tmp_path, "replay", "kept.yaml").returncode == 0


def test_record_without_a_session_says_so(tmp_path: Path) -> None:
    done = run(tmp_path, "record")
    assert done.returncode == 66
    assert "no " in done.stderr


def plan_from_last_week(folder: Path) -> str:
    """The invented athlete's plan with dates around today, beside a copy of its program."""
    program = folder / "program"
    if not program.exists():
        shutil.copytree(Path(D_O).parents[1], program)
    start = datetime.now().astimezone().date() - timedelta(days=7)
    plan = program / "plans" / "d-o.yaml"
    text = Path(D_O).read_text("utf-8").replace("2026-11-02", start.isoformat())
    plan.write_text(text.replace("2027-01-31", (start + timedelta(days=60)).isoformat()), "utf-8")
    return str(plan)
