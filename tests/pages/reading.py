"""What a made page shows: its words without the marks, and every kind of mark in it."""

from __future__ import annotations

from html.parser import HTMLParser
from pathlib import Path

from coach.model.program import Bound
from coach.texts.doors import bound_from

ROOT = Path(__file__).parents[2]
PROGRAM = ROOT / "dialogs" / "steady-shoulder"
PLANS = sorted((PROGRAM / "plans").glob("*.yaml"))


def bound(plan: Path) -> Bound:
    """A shipped plan with its program."""
    found, findings = bound_from(plan)
    assert found is not None, findings
    return found


class Shown(HTMLParser):
    """The words and the marks of a page."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.words = ""
        self.marks: list[tuple[str, dict[str, str | None]]] = []
        self._silent = False
        self.feed(page)
        self.words = " ".join(self.words.split())

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.marks.append((tag, dict(attrs)))
        self._silent = tag in {"style", "title"}

    def handle_endtag(self, tag: str) -> None:
        self._silent = self._silent and tag not in {"style", "title"}

    def handle_data(self, data: str) -> None:
        if not self._silent:
            self.words += data + " "


def loads_nothing(page: str) -> bool:
    """Whether the page asks for nothing outside itself and runs no script."""
    shown = Shown(page)
    names = {tag for tag, _ in shown.marks}
    asked = [
        value
        for _, attributes in shown.marks
        for name, value in attributes.items()
        if name in {"src", "srcset", "data", "action"} or (name == "href" and value[:1] != "#")  # type: ignore[index]
    ]
    style = page.partition("<style>")[2].partition("</style>")[0]
    return (
        not names & {"script", "img", "link", "iframe", "object"}
        and not asked
        and ("url(" not in style and "@import" not in style)
    )
