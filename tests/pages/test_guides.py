"""The guides cannot drift: what the code knows is made from the code, and examples are real."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
import textstat
import yaml

from coach.cli import COMMANDS
from coach.pages.reference import reference
from coach.session.moments import COACH_ASKS
from coach.texts import facts
from coach.texts.catalogue import CHECKS
from coach.texts.doors import check_paths
from coach.texts.guides import FOLDER, TOPICS, finding_page, guide
from tests.pages.reading import PROGRAM
from tests.pages.remake_guides import examples, guides


@pytest.mark.parametrize("topic", TOPICS)
def test_a_guide_is_as_the_code_makes_it(topic: str) -> None:
    stands = (FOLDER / f"{topic}.md").read_text("utf-8")
    assert stands == guides()[topic], "run: python -m tests.pages.remake_guides"


@pytest.mark.parametrize("topic", TOPICS)
def test_every_command_a_guide_names_is_there(topic: str) -> None:
    named = set(re.findall(r"`coach ([a-z]+)", guide(topic)))
    assert named <= {*COMMANDS, "help"}


def test_the_reference_names_every_fact_effect_and_question() -> None:
    text = reference()
    for asks in COACH_ASKS.values():
        for fact in asks:
            assert f"`{fact}`" in text
    for effect in facts.EFFECTS:
        assert f"`{effect}: NAME`" in text
    for name in facts.FLAG_NAMES:
        assert name in " ".join(text.split())


def test_the_reference_names_every_rule_with_an_id() -> None:
    sources = (path.read_text("utf-8") for path in Path("coach/rules").glob("*.py"))
    ids = {i for text in sources for i in re.findall(r"\(id ([a-z]+\.[a-z_]+)", text)}
    private = {"dose.towel"}  # decided inside another rule
    assert {i for i in ids if f"**{i}**" not in reference()} <= private


def test_every_finding_has_its_page_and_nearly_all_an_example() -> None:
    for name in CHECKS:
        assert finding_page(name).startswith(f"## {name}\n")
    assert len(examples()) >= len(CHECKS) - 11  # these need a file no repository can hold
    assert finding_page("nothing.such") == ""


def test_the_script_in_the_clinicians_guide_passes_the_check(tmp_path: Path) -> None:
    import shutil

    (script,) = re.findall(r"```yaml\n(script: .*?)```", guide("clinician"), re.DOTALL)
    copy = tmp_path / "copy"
    shutil.copytree(PROGRAM, copy)
    (copy / "scripts" / "after-a-set.yaml").write_text(script, "utf-8")
    assert check_paths([copy]) == []


def test_the_scenario_in_the_testers_guide_passes_the_check(tmp_path: Path) -> None:
    (scenario,) = re.findall(r"```yaml\n(scenario: .*?)```", guide("tester"), re.DOTALL)
    file = tmp_path / "one.yaml"
    file.write_text(scenario, "utf-8")
    assert check_paths([file]) == []
    assert yaml.safe_load(scenario)["usual"] == "smooth"


def test_the_athletes_guide_is_easy_to_read() -> None:
    text = re.sub(r"`[^`]*`", "it", guide("athlete"))
    lines = [line.lstrip("*0123456789. ") for line in text.splitlines() if line[:1] != "#"]
    sentences = [s for line in lines for s in re.split(r"(?<=[a-z0-9][.?:]) +", line)]
    hard = [
        s
        for s in sentences
        if len(s.split()) >= 5 and textstat.textstat.flesch_kincaid_grade(s) > 6
    ]
    assert hard == []
