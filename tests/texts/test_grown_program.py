"""The program that the check's speed is measured on is well, as long as asked, and known to the floor."""

from __future__ import annotations

from pathlib import Path

import pytest
from pydantic import ValidationError

from coach.texts.doors import check_paths
from tests.bench import plain_check
from tests.bench.checking import grown, lines_in


def test_the_sample_grown_to_two_thousand_lines_is_well_for_both(tmp_path: Path) -> None:
    folder = tmp_path / "program"
    assert 1_950 <= grown(folder, 2_000) <= 2_100
    assert lines_in(folder) == sum(
        len(file.read_text("utf-8").splitlines()) for file in folder.rglob("*.yaml")
    )
    assert check_paths([folder]) == []
    assert plain_check.check(folder) == len(list(folder.rglob("*.yaml")))


@pytest.mark.parametrize(
    ("old", "new"),
    [("side: right", "side: both"), ("rest: 30 s", "rest: 900 s"), ("side: right", "sidee: right")],
)
def test_the_floor_is_a_check_and_refuses_what_it_knows(old: str, new: str, tmp_path: Path) -> None:
    folder = tmp_path / "program"
    grown(folder, 700)
    plan = folder / "plans" / "m-k.yaml"
    plan.write_text(plan.read_text("utf-8").replace(old, new, 1), "utf-8")
    with pytest.raises(ValidationError):
        plain_check.check(folder)
