"""The guides that travel inside the package, as text for a terminal.

Law: a guide is printed as it stands in the repository; only the marks of its made parts are left
out. Which parts are made from code is held by a test.
"""

from __future__ import annotations

from pathlib import Path
from typing import Final

TOPICS: Final = ("athlete", "clinician", "tester", "reference", "findings")
FOLDER: Final = Path(__file__).resolve().parent.parent / "guides"
_MARK: Final = "<!-- "


def guide(topic: str) -> str:
    """The guide of a topic."""
    text = (FOLDER / f"{topic}.md").read_text("utf-8")
    return "".join(line for line in text.splitlines(keepends=True) if not line.startswith(_MARK))


def finding_page(name: str) -> str:
    """The page of one finding; empty where there is no such finding."""
    pages = guide("findings").split("\n## ")
    return next((f"## {page}" for page in pages if page.partition("\n")[0] == name), "")


def filled(text: str, parts: dict[str, str]) -> str:
    """A guide with its made parts put in anew; `parts` are by the names in the marks."""
    for name, made in parts.items():
        start = f"{_MARK}made: {name} -->\n"
        if start in text:
            before, _, rest = text.partition(start)
            after = rest.partition(f"{_MARK}end -->")[2]
            text = f"{before}{start}{made}{_MARK}end -->{after}"
    return text
