"""The clinician's pages from the command line: written whole, refused with the findings."""

from __future__ import annotations

import json
import shutil
import subprocess
import sys
from typing import TYPE_CHECKING

import pytest

from tests.cli.running import D_O, PLANS, ROOT, run

if TYPE_CHECKING:
    from pathlib import Path

PROGRAM = str(PLANS.parent)


@pytest.mark.parametrize(("name", "path"), [("sheet", D_O), ("map", PROGRAM), ("map", D_O)])
def test_a_page_goes_to_the_file_or_to_standard_output(
    tmp_path: Path, name: str, path: str
) -> None:
    shown = run(tmp_path, name, path)
    assert shown.returncode == 0
    assert shown.stdout.startswith("<!doctype html>")
    written = run(tmp_path, name, path, "--out", "page.html")
    assert (written.returncode, written.stdout) == (0, "Written.\n")
    assert (tmp_path / "page.html").read_text() == shown.stdout


@pytest.mark.parametrize("name", ["sheet", "map"])
def test_what_is_not_there_or_broken_gives_no_page(tmp_path: Path, name: str) -> None:
    assert run(tmp_path, name, "nothing.yaml").returncode == 66
    assert run(tmp_path, name).returncode == 2
    (tmp_path / "broken.yaml").write_text("plan: D.O. 1\nprogram: [\n")
    done = run(tmp_path, name, "broken.yaml", "--out", "page.html")
    assert done.returncode == 65
    assert "error" in done.stdout
    assert not (tmp_path / "page.html").exists()


def test_the_sheet_prints_on_letter_paper_when_asked(tmp_path: Path) -> None:
    assert "size:letter" in run(tmp_path, "sheet", D_O, "--paper", "letter").stdout
    assert run(tmp_path, "sheet", D_O, "--paper", "a5").returncode == 2


def test_two_plans_are_compared_what_allows_more_first(tmp_path: Path) -> None:
    same = run(tmp_path, "compare", D_O, D_O)
    assert (same.returncode, same.stdout) == (0, "Nothing differs.\n")
    program = shutil.copytree(PROGRAM, tmp_path / "program")
    plan = program / "plans" / "d-o.yaml"
    text = plan.read_text().replace("in exercise 2", "in exercise 3").replace("D.O. 1", "D.O. 2")
    plan.write_text(text)
    done = run(tmp_path, "compare", D_O, str(plan))
    assert done.returncode == 0
    assert "Pain in an exercise: 3 of 10, was 2 of 10. (plans/d-o.yaml, line " in done.stdout
    assert done.stdout.startswith("Allows more")


def test_what_cannot_be_compared_is_refused(tmp_path: Path) -> None:
    assert run(tmp_path, "compare", D_O).returncode == 2
    assert run(tmp_path, "compare", D_O, "nothing.yaml").returncode == 66
    mixed = run(tmp_path, "compare", D_O, PROGRAM)
    assert mixed.returncode == 2
    assert "two of a kind" in mixed.stderr
    (tmp_path / "broken.yaml").write_text("plan: D.O. 1\n")
    assert run(tmp_path, "compare", D_O, "broken.yaml").returncode == 65


@pytest.mark.parametrize("topic", ["athlete", "clinician", "tester", "reference", "findings"])
def test_a_guide_is_printed_without_its_marks(tmp_path: Path, topic: str) -> None:
    done = run(tmp_path, "guide", topic)
    assert done.returncode == 0
    assert done.stdout.startswith("# ")
    assert "<!--" not in done.stdout


def test_one_finding_has_its_page_and_an_unknown_one_a_near_name(tmp_path: Path) -> None:
    assert run(tmp_path, "guide", "findings", "ask.order").stdout.startswith("## ask.order\n")
    done = run(tmp_path, "guide", "findings", "ask.ordr")
    assert done.returncode == 2
    assert "ask.order" in done.stderr
    assert run(tmp_path, "guide").returncode == 2
    assert run(tmp_path, "guide", "weather").returncode == 2
    assert run(tmp_path, "guide", "athlete", "ask.order").returncode == 2


def test_check_writes_sarif_beside_what_it_shows(tmp_path: Path) -> None:
    quiet = run(tmp_path, "check", PROGRAM, "--sarif", "out.sarif")
    assert (quiet.returncode, quiet.stdout) == (0, "")
    assert json.loads((tmp_path / "out.sarif").read_text())["runs"][0]["results"] == []
    (tmp_path / "broken.yaml").write_text("plan: D.O. 1\n")
    done = run(tmp_path, "check", "broken.yaml", "--sarif", "out.sarif")
    assert done.returncode == 1
    assert json.loads((tmp_path / "out.sarif").read_text())["runs"][0]["results"]
    assert run(tmp_path, "check", "broken.yaml", "--sarif", "no/where.sarif").returncode in {73, 74}


def test_check_lists_reworded_questions_when_asked(tmp_path: Path) -> None:
    none = run(tmp_path, "check", PROGRAM, "--reworded")
    assert none.stdout == "No question of the coach is reworded.\n"
    program = shutil.copytree(PROGRAM, tmp_path / "program")
    script = program / "scripts" / "check-in.yaml"
    words = "- ask: pain now\n    words: How much does it hurt at rest?\n"
    script.write_text(script.read_text().replace("- ask: pain now\n", words))
    shown = run(tmp_path, "check", "program", "--reworded").stdout
    assert "scripts/check-in.yaml, line 5: pain now\n" in shown
    assert "  Yours: How much does it hurt at rest?\n" in shown


def test_check_says_when_the_fast_parser_is_not_here(tmp_path: Path) -> None:
    code = "import yaml; del yaml.CSafeLoader; from coach.cli import main; raise SystemExit(main())"
    asked = [sys.executable, "-c", code, "check", D_O]
    done = subprocess.run(asked, capture_output=True, text=True, check=False, cwd=ROOT)
    assert done.returncode == 0, done.stderr
    assert done.stdout == ""
    assert "libyaml" in done.stderr
