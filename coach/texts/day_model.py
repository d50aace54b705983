"""The day as it is written a second time, by hand, for another checker: read, and laid where it runs.

Law: the parts are joined in their order and otherwise left as they stand; the tables of one day are
handed in, and nothing of a plan's or anybody's words is among them.
"""

from __future__ import annotations

from pathlib import Path
from typing import Final

FOLDER: Final = Path(__file__).resolve().parent.parent / "day_model"
PARTS: Final = ("0_told.pml", "1_names.pml", "2_answers.pml", "3_walk.pml", "4_day.pml")
TABLES_HERE: Final = "/* THE TABLES OF THE DAY */"


def with_tables(head: str, tables: str) -> str:
    """The whole model: `head` above all, the tables after the names."""
    hand = "\n".join((FOLDER / name).read_text("utf-8") for name in PARTS)
    return f"{head}\n{hand.replace(TABLES_HERE, tables)}"


def laid(text: str, folder: Path) -> None:
    """The model as a file in `folder`, where its checker is made."""
    (folder / "day.pml").write_text(text, "utf-8")
