"""The margin of the clinician's pages: where a reader writes what it found, with place and line.

Law: level and reason of a finding come from the closed list in `catalogue`; an id that is not in
that list cannot be written. Nothing is decided here, and nothing is shown.
"""

from __future__ import annotations

import difflib
from collections.abc import Iterable
from typing import NamedTuple

from coach.model.findings import Finding
from coach.model.program import Place
from coach.texts.catalogue import CHECKS


class Page(NamedTuple):
    """A text as read: `file` its short name (as kept in the model), `shown` the path asked for."""

    file: str
    shown: str
    lines: tuple[str, ...]
    data: bytes


class Margin:
    """Collects findings in the order seen; `sorted_findings` gives them by place."""

    def __init__(self) -> None:
        """Start with a clean margin."""
        self._findings: dict[Finding, None] = {}  # each once, in the order seen
        self._files_in_error: set[str] = set()
        self._pages: dict[str, Page] = {}
        self._half_read: set[str] = set()

    def keep(self, page: Page) -> None:
        """Remember a page, so that findings can show its real lines."""
        self._pages[page.file] = page

    def pages(self) -> tuple[Page, ...]:
        """Every page read so far, by short name."""
        return tuple(self._pages[name] for name in sorted(self._pages))

    def note(
        self,
        check: str,
        place: Place,
        what: str,
        write: str = "",
        also: Place | None = None,
    ) -> None:
        """Write a finding; `write` is the line to write instead, without its indentation."""
        known = CHECKS[check]
        line = self.line_text(place)
        found = Finding(check, known.level, place, what, known.why, write, line, also)
        self._findings.setdefault(found)
        if known.level == "error":
            self._files_in_error.add(place.file)

    def line_text(self, place: Place) -> str:
        """The real line at `place`, or '' where there is none."""
        page = self._pages.get(place.file)
        if page is None or not 1 <= place.line <= len(page.lines):
            return ""
        return page.lines[place.line - 1]

    def line_with(self, place: Place, typed: str, instead: str) -> str:
        """The real line at `place` with `instead` where `typed` stands, without indentation.

        Only `instead` where the line does not hold `typed` there.
        """
        line = self.line_text(place)
        start = place.column - 1
        if not typed or not line.startswith(typed, start):
            return instead
        return (line[:start] + instead + line[start + len(typed) :]).strip()

    def mark_half_read(self, kind: str) -> None:
        """Remember that not all texts of this kind could be read, so names may seem unknown."""
        self._half_read.add(kind)

    def is_half_read(self, kind: str) -> bool:
        """Whether some text of this kind could not be read."""
        return kind in self._half_read

    def has_error(self) -> bool:
        """Whether one finding so far refuses a session."""
        return bool(self._files_in_error)

    def errors_in(self, file: str) -> bool:
        """Whether a finding so far is an error in the page with this short name."""
        return file in self._files_in_error

    def sorted_findings(self) -> list[Finding]:
        """All findings by file, line, column and id, with paths as they were asked for."""
        shown = [self._as_shown(finding) for finding in self._findings]
        return sorted(shown, key=lambda f: (f.place.file, f.place.line, f.place.column, f.id))

    def _as_shown(self, finding: Finding) -> Finding:
        also = self._shown_place(finding.also) if finding.also else None
        return finding._replace(place=self._shown_place(finding.place), also=also)

    def _shown_place(self, place: Place) -> Place:
        page = self._pages.get(place.file)
        return place._replace(file=page.shown) if page else place


def nearest(typed: str, known: Iterable[str]) -> str:
    """The known name most like `typed`, or '' where none is near."""
    near = difflib.get_close_matches(typed.lower(), list(known), n=1, cutoff=0.6)
    return near[0] if near else ""


def near_line(margin: Margin, place: Place, typed: str, known: Iterable[str]) -> str:
    """The real line with the nearest known name in it, or '' where none is near."""
    near = nearest(typed, known)
    return margin.line_with(place, typed, near) if near else ""


def did_you_mean(typed: str, known: Iterable[str]) -> str:
    """A sentence (with a blank before it) that offers the nearest name, or ''."""
    near = nearest(typed, known)
    return f' The nearest known name is "{near}".' if near else ""
