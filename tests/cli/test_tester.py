"""The tester's commands, run as a tester does."""

from __future__ import annotations

from typing import TYPE_CHECKING

from tests.cli.running import D_O, run

if TYPE_CHECKING:
    from pathlib import Path

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
