"""The map shows every word that a program can say, at its place, and needs nothing but a browser."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from coach.model.flags import GROUP_FLAGS, Section
from coach.pages.map_page import Pages, map_page
from coach.rules.red_flags import FLAGS, SECTION_QUESTIONS
from coach.session.moments import COACH_ASKS
from coach.session.questions import QUESTIONS
from coach.session.table import ENDS, Stage
from coach.texts.doors import program_with_lines
from tests.house.sentences import spoken
from tests.pages.reading import PLANS, PROGRAM, Shown, loads_nothing


def page(path: Path = PROGRAM) -> str:
    program, scripts, findings = program_with_lines(path)
    assert program is not None, findings
    return map_page(Pages(program, scripts))


def test_every_sentence_of_the_program_is_on_the_map() -> None:
    words = Shown(page()).words
    missing = [said.text for said in spoken() if " ".join(said.text.split()) not in words]
    assert missing == []


def test_every_line_of_every_script_shows_its_file_and_line() -> None:
    words = Shown(page()).words
    for file in sorted((PROGRAM / "scripts").glob("*.yaml")):
        lines = file.read_text("utf-8").splitlines()
        numbers = [n for n, line in enumerate(lines, 1) if line.lstrip().startswith("- ")]
        assert numbers
        for number in numbers:
            assert f"scripts/{file.name}, line {number} " in words


def test_every_question_and_warning_sign_of_the_coach_is_on_the_map() -> None:
    words = Shown(page()).words
    for asks in COACH_ASKS.values():
        for fact in asks:
            if fact in QUESTIONS and fact != "holds in set":
                assert QUESTIONS[fact].ask in words
    for section in Section:
        assert SECTION_QUESTIONS[section][0] in words
    for flags in GROUP_FLAGS.values():
        for flag in flags:
            assert FLAGS[flag].question in words or flag == "E11"


def test_every_stage_has_its_part_and_its_link() -> None:
    made = page()
    for stage in Stage:
        if stage not in ENDS:
            assert f'id="s-{stage.name.lower()}"' in made
    links = re.findall(r'href="#([^"]+)"', made)
    assert len(set(links)) == len(links)
    for link in links:
        assert f'id="{link}"' in made


def test_all_of_it_is_open_and_nothing_is_loaded() -> None:
    made = page()
    assert loads_nothing(made)
    folds = [attributes for tag, attributes in Shown(made).marks if tag == "details"]
    assert folds
    assert all("open" in attributes for attributes in folds)


def test_a_plan_leads_to_the_map_of_its_program() -> None:
    assert page(PLANS[0]) == page()
    assert page(PROGRAM / "scripts" / "screen.yaml") == page()


def test_a_folder_without_a_program_gives_a_finding(tmp_path: Path) -> None:
    program, _, findings = program_with_lines(tmp_path)
    assert program is None
    assert [finding.id for finding in findings] == ["file.missing"]


@pytest.mark.parametrize("moment", ["close", "at hand"])
def test_a_moment_without_a_script_shows_the_coachs_own_questions(
    tmp_path: Path, moment: str
) -> None:
    program, scripts, _ = program_with_lines(PROGRAM)
    assert program is not None
    made = map_page(Pages(program, {k: v for k, v in scripts.items() if k != moment}))
    assert "No script: the coach asks its own questions" in made
    for fact in COACH_ASKS[moment]:
        assert f"Name: {fact}." in Shown(made).words
