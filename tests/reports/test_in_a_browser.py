"""The page in a real browser, where one is installed: same words on a desk, a phone and paper."""

from __future__ import annotations

import re
import shutil
import subprocess
from pathlib import Path

import pytest

from coach.reports.as_html import as_html
from coach.reports.visit import visit_page
from tests.reports import made_up
from tests.reports.test_visit import hostile_page, texts

BROWSER = shutil.which("chromium") or shutil.which("chromium-browser")
QUIET = (
    *("--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run"),
    *("--disable-background-networking", "--disable-component-update", "--disable-sync"),
)

pytestmark = pytest.mark.skipif(BROWSER is None, reason="no browser is installed here")


def browser(tmp_path: Path, page: str, *words: str) -> str:
    """Standard output of the browser for a page; a new profile each time."""
    file = tmp_path / "page.html"
    file.write_text(page, "utf-8")
    done = subprocess.run(
        [str(BROWSER), *QUIET, f"--user-data-dir={tmp_path / 'profile'}", *words, file.as_uri()],
        capture_output=True,
        check=True,
        timeout=120,
    )
    return done.stdout.decode("utf-8", "replace")


def squeezed(text: str) -> str:
    """Letters alone, since a browser breaks lines where it likes."""
    return re.sub(r"\s+", "", text)


def test_printed_pages_hold_every_word_of_the_page(tmp_path: Path) -> None:
    if shutil.which("pdftotext") is None:
        pytest.skip("no reader of printed pages is installed here")
    page = visit_page(made_up.ten_weeks_facts(), invented=True)
    browser(tmp_path, as_html(page), "--no-pdf-header-footer", f"--print-to-pdf={tmp_path}/p.pdf")
    got = subprocess.run(["pdftotext", f"{tmp_path}/p.pdf", "-"], capture_output=True, check=True)
    printed = set(re.findall(r"\w+", got.stdout.decode("utf-8")))
    wanted = {word for text in texts(page) for word in re.findall(r"\w+", text)}
    assert wanted <= printed | {"0"}


@pytest.mark.parametrize("width", [1280, 500])
def test_the_page_is_never_wider_than_its_window(tmp_path: Path, width: int) -> None:
    """A wide table scrolls inside its own box; 500 is a headless window's least width.

    The width is asked by a script of the test's own.
    """
    page = as_html(visit_page(made_up.ten_weeks_facts()))
    ask = "<script>document.title=document.documentElement.scrollWidth</script></body>"
    open_page = page.replace("default-src 'none'", "default-src 'unsafe-inline'")
    got = browser(
        tmp_path, open_page.replace("</body>", ask), f"--window-size={width},800", "--dump-dom"
    )
    found = re.search(r"<title>(\d+)</title>", got)
    assert found is not None
    assert int(found.group(1)) <= width


def test_hostile_words_run_nothing_in_a_browser(tmp_path: Path) -> None:
    page = as_html(hostile_page())
    got = browser(tmp_path, page, "--dump-dom")
    assert not re.search(r"<(script|img|a)\b", got)
    assert "alert(1)" in got
