"""Writes the made parts of the guides anew: `python -m tests.pages.remake_guides`."""

from __future__ import annotations

from pathlib import Path

from coach.pages.reference import findings, made_parts, reference
from coach.texts.guides import FOLDER, filled

ERRORS = Path(__file__).parents[1] / "errors"


def examples() -> dict[str, str]:
    """The message of the first error page of each finding, without the other findings on it."""
    found: dict[str, str] = {}
    for page in sorted(ERRORS.iterdir()):
        expected = page / "expected.txt"
        name = page.name.partition("-")[0]
        if not expected.is_file() or name in found:
            continue
        blocks = expected.read_text("utf-8").split("\n\n")
        found[name] = next(f"{b}\n" for b in blocks if b.partition("\n")[0].endswith(f" {name}"))
    return found


def guides() -> dict[str, str]:
    """Every guide as it must stand, by topic."""
    made = {
        topic: filled((FOLDER / f"{topic}.md").read_text("utf-8"), made_parts())
        for topic in ("athlete", "clinician", "tester")
    }
    return {**made, "reference": reference(), "findings": findings(examples())}


if __name__ == "__main__":
    for topic, text in guides().items():
        (FOLDER / f"{topic}.md").write_text(text, "utf-8")
