"""Writes the editors' schemas anew: `python -m tests.texts.remake_schemas`."""

from __future__ import annotations

from pathlib import Path

from coach.texts.schemas import DRAFTS, KINDS, schema_text

ROOT = Path(__file__).parents[2]
FOLDER = ROOT / "dialogs" / "schemas"


def schemas() -> dict[Path, str]:
    """Every schema file as it must stand."""
    return {
        FOLDER / draft / f"{kind}.json": schema_text(kind, draft)
        for draft in DRAFTS
        for kind in KINDS
    }


if __name__ == "__main__":
    for file, text in schemas().items():
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, "utf-8")
