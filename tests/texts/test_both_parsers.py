"""The fast parser and the plain one give the same verdict at the same line on every page."""

from __future__ import annotations

from pathlib import Path

import pytest
import yaml

from coach.texts.doors import check_paths

ERRORS = Path(__file__).parents[1] / "errors"
PAGES = sorted(page.name for page in ERRORS.iterdir() if page.is_dir())
READING = [page for page in PAGES if page.startswith(("text.", "file.", "value.", "good"))]


def verdict(page: str) -> list[tuple[str, str, int]]:
    return [(f.id, f.place.file, f.place.line) for f in check_paths([Path(page)])]


@pytest.mark.parametrize("page", READING)
def test_both_parsers_agree(page: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(ERRORS)
    fast = verdict(page)
    monkeypatch.delattr(yaml, "CSafeLoader")
    assert verdict(page) == fast
