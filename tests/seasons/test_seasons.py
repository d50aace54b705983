"""Seeded seasons of invented athletes keep the promises on each day, and the calendar holds."""

from __future__ import annotations

import shutil
from collections import Counter
from pathlib import Path

import pytest

from coach.texts.scenarios import read_scenario
from tests.seasons.oracle import Watch
from tests.seasons.season import DAYS, PLANS, Day, play
from tests.seasons.told import as_scenario

SEEDS = 30  # tests/bench/seasons.py plays 2,000


def played(first: int, last: int) -> tuple[Counter[str], list[str]]:
    """What happened in some seasons, and each broken promise with its day as a scenario."""
    seen: Counter[str] = Counter()
    broken: list[str] = []
    for seed in range(first, last):
        watch, before = Watch(), list[Day]()
        for day in play(seed):
            found = watch.look(day)
            before.append(day)
            seen.update(what_happened(day))
            if found:
                broken.append(as_scenario(seed, found, before))
    return seen, broken


def what_happened(day: Day) -> list[str]:
    """Marks of a day, so that a season in which nothing happens is seen."""
    record = day.record
    marks = [f"{rule} {outcome}" for rule, outcome, _why in record.decisions]
    if record.threw is not None:
        marks.append(f"threw step {record.threw.step}")
    if day.hold is not None:
        marks.append(f"stop {day.hold.code}")
    return marks


@pytest.fixture(scope="module", name="seasons")
def all_seasons() -> tuple[Counter[str], list[str]]:
    """All seeds of the suite, played once."""
    return played(0, SEEDS)


def test_no_promise_breaks_on_any_day_of_any_season(
    seasons: tuple[Counter[str], list[str]],
) -> None:
    assert not seasons[1], "\n".join(seasons[1][:3])


@pytest.mark.parametrize(
    "mark",
    [
        "prog.two_for_two up",
        "prog.range up",
        "prog.down down",
        "pain.next_morning down",
        "layoff.gap down",
        "layoff.gap first step",
        "stop A28",
        "stop B02",
        "stop T02",
        "ready.spacing wait",
        "throw.soreness up",
        "throw.soreness down",
        "throw.spacing wait",
        "threw step 0",
        "threw step 5",
    ],
)
def test_the_seasons_are_lively_enough_to_break_something(
    seasons: tuple[Counter[str], list[str]], mark: str
) -> None:
    assert seasons[0][mark]


def test_the_same_seed_gives_the_same_season() -> None:
    assert [d.record for d in play(5, 40)] == [d.record for d in play(5, 40)]


def test_a_broken_day_is_told_as_a_scenario_that_can_be_read(tmp_path: Path) -> None:
    shutil.copytree(PLANS.parent, tmp_path / "try-arm")
    file = tmp_path / "try-arm" / "broken.yaml"
    days = [day for day, _n in zip(play(2), range(4), strict=False)]
    file.write_text(as_scenario(2, ["P5: made up"], days) + "\n", encoding="utf-8")
    scenario, findings = read_scenario(file)
    assert scenario is not None, findings
    assert len(scenario.days) == 4
    assert sum(bool(day.talk) for day in scenario.days) >= 2


def test_a_season_is_120_days() -> None:
    assert DAYS == 120
