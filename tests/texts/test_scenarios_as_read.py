"""Days of talk as a tester writes them."""

from __future__ import annotations

from pathlib import Path

import pytest

from coach.model.scenario import Happening, Scenario, Seen, Typing
from coach.texts.doors import check_paths
from coach.texts.scenarios import read_scenario

GOOD = Path(__file__).parents[1] / "errors" / "good" / "plans" / "l-v.yaml"
HEAD = f"scenario: a test\nplan: {GOOD}\nusual: smooth\ndays:\n"


def scenario_of(days: str, folder: Path, head: str = HEAD) -> Scenario:
    path = folder / "scenario.yaml"
    path.write_text(head + days, encoding="utf-8")
    scenario, findings = read_scenario(path)
    assert scenario is not None, findings
    return scenario


def test_talk_keeps_its_order_and_its_repeats(tmp_path: Path) -> None:
    day = scenario_of(
        "  - day: 2026-11-09 at 18:30\n    talk:\n      - pain now: maybe\n      - pain now: 3\n"
        "      - offers: anything\n      - happens: power cut\n      - own words: ''\n",
        tmp_path,
    ).days[0]
    assert [type(entry) for entry in day.talk] == [Typing, Typing, Seen, Happening, Typing]
    assert [e.typed for e in day.talk if isinstance(e, Typing)] == ["maybe", "3", ""]
    assert (day.day, day.time) == ("2026-11-09", "18:30")


@pytest.mark.parametrize(
    ("when", "days"),
    [
        ("days: 2026-11-09, 2026-11-11 at 18:30", ["2026-11-09", "2026-11-11"]),
        (
            "days: 2026-11-09 to 2026-11-17 every 2 days at 18:30",
            ["2026-11-09", "2026-11-11", "2026-11-13", "2026-11-15", "2026-11-17"],
        ),
        ("days: 2026-11-09 to 2026-11-12 every 2 days at 18:30", ["2026-11-09", "2026-11-11"]),
    ],
)
def test_several_days_share_one_talk(when: str, days: list[str], tmp_path: Path) -> None:
    talk = "    all day:\n      - offers: anything\n"
    scenario = scenario_of(f"  - {when}\n{talk}", tmp_path)
    assert [day.day for day in scenario.days] == days
    assert all(day.all_day[0].kind == "offers" for day in scenario.days)


def test_the_course_of_the_program_is_read(tmp_path: Path) -> None:
    scenario = scenario_of("  - day: 2026-11-09 at 18:30\n", tmp_path)
    assert [(entry.prompt, entry.typed) for entry in scenario.usual] == [("pain now", "1")]


def test_usual_may_be_a_list(tmp_path: Path) -> None:
    head = HEAD.replace("usual: smooth", "usual:\n  - pain now: 2\n  - screen: all no")
    scenario = scenario_of("  - day: 2026-11-09 at 18:30\n", tmp_path, head)
    assert [entry.typed for entry in scenario.usual] == ["2", "all no"]


@pytest.mark.parametrize("time", ["24:00", "18:60", "6 pm", "18.30"])
def test_a_time_is_hours_and_minutes(time: str, tmp_path: Path) -> None:
    path = tmp_path / "scenario.yaml"
    path.write_text(HEAD + f"  - day: 2026-11-09 at {time}\n", encoding="utf-8")
    assert [f.id for f in read_scenario(path)[1] if f.level == "error"] == ["scenario.day"]


@pytest.mark.parametrize(
    "plan",
    [
        "dialogs/steady-shoulder/plans/d-o.yaml",
        "../dialogs/steady-shoulder/plans/d-o.yaml",
        "plans/d-o.yaml",
    ],
)
def test_a_plan_that_is_not_beside_is_found_among_the_shipped(plan: str, tmp_path: Path) -> None:
    head = f"scenario: a test\nplan: {plan}\nusual: smooth\ndays:\n"
    scenario = scenario_of("  - day: 2026-11-09 at 18:30\n", tmp_path, head)
    assert scenario.plan_file.endswith("steady-shoulder/plans/d-o.yaml")
    assert scenario.usual


def test_the_shipped_programs_and_scenarios_are_quiet() -> None:
    root = Path(__file__).parents[2]
    assert check_paths([root / "dialogs", root / "scenarios"]) == []
