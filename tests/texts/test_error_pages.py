"""Every page in tests/errors: one small bad text, the finding it names, the exact message."""

from __future__ import annotations

import functools
from pathlib import Path

import pytest

from coach.model.findings import Finding
from coach.texts.catalogue import CHECKS
from coach.texts.doors import check_paths
from coach.texts.rendered import as_text

ERRORS = Path(__file__).parents[1] / "errors"
GOOD = "good"  # the program and plan every page differs from by a line or two
PAGES = sorted(page.name for page in ERRORS.iterdir() if page.is_dir() and page.name != GOOD)

# these need a file no repository can hold, so test_bad_files.py, test_bind.py and
# test_signed.py make them
MADE_IN_TESTS = {
    "file.not_regular",
    "file.outside",
    "file.too_big",
    "file.unreadable",
    "bound.changed",
    "bound.not_one",
    "bound.other_key",
    "bound.signature",
    "bound.signature_unread",
    "bound.unsigned",
    "bound.version",
}


def finding_of(page: str) -> str:
    """The id a page is about; what follows a dash tells two pages of one id apart."""
    return page.split("-", maxsplit=1)[0]


@functools.cache
def found_on(page: str) -> tuple[Finding, ...]:
    """What the check says of a page; the folder of all pages must be the current one."""
    return tuple(check_paths([Path(page)]))


@pytest.fixture(autouse=True)
def among_the_pages(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(ERRORS)


@pytest.mark.parametrize("page", PAGES)
def test_the_page_gives_its_exact_message(page: str) -> None:
    found = list(found_on(page))
    assert as_text(found) == (Path(page) / "expected.txt").read_text(encoding="utf-8")
    assert finding_of(page) in [finding.id for finding in found]


@pytest.mark.parametrize("page", PAGES)
@pytest.mark.hazard("H-17")
def test_an_error_page_refuses_and_a_warning_page_does_not(page: str) -> None:
    levels = {finding.level for finding in found_on(page)}
    assert ("error" in levels) == (CHECKS[finding_of(page)].level == "error")


def test_every_finding_has_a_page() -> None:
    assert {finding_of(page) for page in PAGES} == set(CHECKS) - MADE_IN_TESTS


def test_the_text_all_pages_start_from_is_quiet() -> None:
    assert as_text(check_paths([Path(GOOD)])) == ""


def test_there_are_at_least_eighty_findings() -> None:
    assert len(CHECKS) >= 80
