"""The pages in a real browser, at desktop and phone width, and on paper. Skipped where none is."""

from __future__ import annotations

import re
import shutil
import subprocess
from html import escape
from pathlib import Path

import pytest

from coach.pages.map_page import Pages, map_page
from coach.pages.sheet import sheet
from coach.texts.doors import program_with_lines
from tests.pages.reading import PLANS, PROGRAM, bound

BROWSER = shutil.which("chromium") or shutil.which("chromium-browser")
FLAGS = (
    *("--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run"),
    *("--disable-background-networking", "--disable-component-update", "--disable-sync"),
)
pytestmark = pytest.mark.skipif(BROWSER is None, reason="there is no browser here")


def browse(tmp_path: Path, *words: str) -> str:
    """What the browser prints when started with `words`."""
    profile = f"--user-data-dir={tmp_path / 'profile'}"
    command = [str(BROWSER), *FLAGS, profile, *words]
    done = subprocess.run(command, capture_output=True, text=True, check=True, timeout=120)
    return done.stdout


def measured(tmp_path: Path, page: str, width: int) -> tuple[int, int]:
    """How wide and how tall the page comes out in a window of so many pixels."""
    frame = tmp_path / "frame.html"
    frame.write_text(
        f'<iframe id="f" width="{width}" height="800" style="border:0" srcdoc="{escape(page)}">'
        "</iframe><p id=m></p><script>f.onload=()=>{const r=f.contentDocument.documentElement;"
        "m.textContent=`W${r.scrollWidth}H${r.scrollHeight}`}</script>",
        "utf-8",
    )
    shown = browse(tmp_path, "--virtual-time-budget=4000", "--dump-dom", frame.as_uri())
    found = re.search(r"W(\d+)H(\d+)", shown)
    assert found, shown[-500:]
    return int(found[1]), int(found[2])


def pages() -> dict[str, str]:
    program, scripts, _ = program_with_lines(PROGRAM)
    assert program is not None
    return {"map": map_page(Pages(program, scripts)), "sheet": sheet(bound(PLANS[0]))}


@pytest.mark.parametrize("width", [360, 1280])
@pytest.mark.parametrize("name", ["map", "sheet"])
def test_no_page_is_wider_than_its_window(tmp_path: Path, name: str, width: int) -> None:
    wide, tall = measured(tmp_path, pages()[name], width)
    assert wide <= width
    assert tall > 800


def test_a_page_that_is_too_wide_is_seen(tmp_path: Path) -> None:
    wide, _ = measured(tmp_path, '<p style="width:900px">x', 360)
    assert wide > 360


@pytest.mark.parametrize(("paper", "size"), [("a4", "594.9"), ("letter", "612")])
def test_the_sheet_prints_on_its_paper_and_tears_no_exercise(
    tmp_path: Path, paper: str, size: str
) -> None:
    for tool in ("pdftotext", "pdfinfo"):
        if shutil.which(tool) is None:
            pytest.skip(f"{tool} is not here")
    for plan in PLANS:
        file = tmp_path / f"{plan.stem}.html"
        file.write_text(sheet(bound(plan), paper), "utf-8")
        pdf = file.with_suffix(".pdf")
        browse(tmp_path, "--no-pdf-header-footer", f"--print-to-pdf={pdf}", file.as_uri())
        about = subprocess.run(["pdfinfo", pdf], capture_output=True, text=True, check=True).stdout
        assert re.search(rf"Page size: +{size}", about)
        told = subprocess.run(
            ["pdftotext", "-layout", pdf, "-"], capture_output=True, text=True, check=True
        )
        for leaf in told.stdout.split("\f"):
            assert leaf.count("Get ready") == leaf.count("Aim\n")
