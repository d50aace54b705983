"""From the clinician's key to the athlete's diary: a signed plan goes in, any other stays out."""

from __future__ import annotations

import stat
from pathlib import Path

import pytest

from coach.texts.signing import KEY_WORDS
from tests.cli.running import PLANS, run

SAMPLE = PLANS.parent


def desk(tmp_path: Path) -> Path:
    """A copy of the sample program; where its plan D.O. stands."""
    for source in SAMPLE.rglob("*.yaml"):
        target = tmp_path / "steady" / source.relative_to(SAMPLE)
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(source.read_bytes())
    return tmp_path / "steady" / "plans" / "d-o.yaml"


def asking_for(plan: Path, tmp_path: Path, key: str, number: int = 1) -> str:
    """Make the key and let the plan ask for it, with this number; the key's words."""
    told = run(tmp_path, "bind", str(plan), "--key", key)
    assert told.returncode == 65
    line = next(line.strip() for line in told.stderr.splitlines() if "signature: " in line)
    text = plan.read_text("utf-8").replace("plan: D.O. 1", f"plan: D.O. {number}")
    text = text.replace("\npain:", f"\n{line}\npain:", 1)
    plan.write_text(text, "utf-8")
    return line.removeprefix("signature: ")


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    return desk(tmp_path)


def test_the_line_to_write_is_shown_with_a_new_key_that_only_its_owner_reads(
    plan: Path, tmp_path: Path
) -> None:
    words = asking_for(plan, tmp_path, "my-key")
    assert len(words.split()) == KEY_WORDS
    assert stat.S_IMODE((tmp_path / "my-key").stat().st_mode) == 0o600


def test_a_signed_plan_goes_in_and_its_key_is_told_once(plan: Path, tmp_path: Path) -> None:
    words = asking_for(plan, tmp_path, "my-key")
    bound = run(tmp_path, "bind", str(plan), "--key", "my-key", "--out", "d-o.coach")
    assert bound.returncode == 0, bound.stderr
    assert words in bound.stdout
    used = run(tmp_path, "use", "d-o.coach", "--key", words.upper())
    assert used.returncode == 0, used.stdout
    assert words in " ".join(used.stdout.split())
    again = run(tmp_path, "use", "d-o.coach")
    assert again.returncode == 0
    assert words not in " ".join(again.stdout.split())


def test_bound_without_the_key_it_asks_for_nothing_is_written(plan: Path, tmp_path: Path) -> None:
    asking_for(plan, tmp_path, "my-key")
    done = run(tmp_path, "bind", str(plan), "--out", "d-o.coach")
    assert done.returncode == 65
    assert "--key" in done.stderr
    assert not (tmp_path / "d-o.coach").exists()


def test_the_plain_plan_is_refused_where_it_asks_for_a_signature(
    plan: Path, tmp_path: Path
) -> None:
    asking_for(plan, tmp_path, "my-key")
    done = run(tmp_path, "use", str(plan))
    assert done.returncode == 65
    assert "asks for a signature" in " ".join(done.stdout.split())


@pytest.mark.hazard("H-12")
@pytest.mark.parametrize("key", ["", "other-key"])
def test_after_a_signed_plan_no_other_hand_and_no_unsigned_one_goes_in(
    key: str, plan: Path, tmp_path: Path
) -> None:
    words = asking_for(plan, tmp_path, "my-key")
    run(tmp_path, "bind", str(plan), "--key", "my-key", "--out", "one.coach")
    assert run(tmp_path, "use", "one.coach").returncode == 0
    second = desk(tmp_path)
    new = asking_for(second, tmp_path, key, 2) if key else "none"
    run(tmp_path, "bind", str(second), "--out", "two.coach", *(("--key", key) if key else ()))
    refused = run(tmp_path, "use", "two.coach")
    assert refused.returncode == 65
    assert words in " ".join(refused.stdout.split())
    assert run(tmp_path, "use", "two.coach", "--key", new).returncode == 0


def test_the_words_on_paper_are_held_against_the_first_plan(plan: Path, tmp_path: Path) -> None:
    words = asking_for(plan, tmp_path, "my-key")
    run(tmp_path, "bind", str(plan), "--key", "my-key", "--out", "one.coach")
    other = " ".join(reversed(words.split()))
    assert run(tmp_path, "use", "one.coach", "--key", other).returncode == 65
    assert "no plan here" in run(tmp_path).stderr
