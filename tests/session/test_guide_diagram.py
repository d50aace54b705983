"""The picture of stages in the contributors' guide is the table's own."""

from __future__ import annotations

from pathlib import Path

from coach.session.table import diagram

GUIDE = Path(__file__).resolve().parents[2] / "DEVELOPERS.md"


def test_the_guide_shows_the_table_as_it_is() -> None:
    text = GUIDE.read_text(encoding="utf-8")
    shown = text.split("<!-- stages -->\n```mermaid\n")[1].split("```\n<!-- /stages -->")[0]
    assert shown == diagram(), f"put this between the marks:\n{diagram()}"
