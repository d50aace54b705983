"""The clinician's pages from the command line: written whole, refused with the findings."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from tests.cli.running import D_O, PLANS, run

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
