"""A page as plain text, 79 columns: the twin of the drawn page, with the same facts in its order.

Law: nothing of a page is left out; a picture is told in words, and its numbers stand in the tables.
"""

from __future__ import annotations

import textwrap
from itertools import zip_longest
from typing import Final, assert_never

from coach.reports.page import Block, Link, Page, Para, Picture, Table

WIDTH: Final = 79
MOST_WHOLE: Final = 12  # a first cell up to this long, such as a day, is not broken
_GAP: Final = "  "


def as_text(page: Page, width: int = WIDTH) -> str:
    """The page as lines of at most `width` columns, ending in a line end."""
    lines = [page.title, "=" * len(page.title), *filled(page.lead, width)]
    for number, section in enumerate(page.sections, 1):
        head = f"{number} {section.title}"
        lines += ["", head, "-" * len(head)]
        for block in section.blocks:
            lines += [*block_lines(block, width), ""]
        lines.pop()
    return "\n".join(lines) + "\n"


def block_lines(block: Block, width: int) -> list[str]:
    """One block as lines."""
    match block:
        case Para():
            mark = "* " if block.kind == "need" else ""
            return textwrap.wrap(mark + block.text, width, subsequent_indent="  " if mark else "")
        case Link():
            return textwrap.wrap(f"{block.text}: {block.file}", width)
        case Table():
            return table_lines(block, width)
        case Picture():
            return textwrap.wrap(f"{block.title}: {block.told}", width)
        case _:
            assert_never(block)


def filled(texts: tuple[str, ...], width: int) -> list[str]:
    """Sentences wrapped, one after another."""
    return [line for text in texts for line in textwrap.wrap(text, width)]


def table_lines(table: Table, width: int) -> list[str]:
    """A table in columns, long cells wrapped; where even that is too wide, row after row."""
    columns = list(zip(table.head, *table.rows, strict=True))
    widths = fitted_widths(columns, width)
    if widths is None:
        return [table.caption, *stacked(table, width)]
    rows = [line for row in (table.head, *table.rows) for line in row_lines(row, widths)]
    return [table.caption, *rows]


def stacked(table: Table, width: int) -> list[str]:
    """One row after another, each cell with its head."""
    lines = []
    for row in table.rows:
        told = "; ".join(f"{h}: {c}" for h, c in zip(table.head[1:], row[1:], strict=True))
        lines += textwrap.wrap(f"{row[0]}. {told}", width, subsequent_indent="  ")
    return lines


def fitted_widths(columns: list[tuple[str, ...]], width: int) -> list[int] | None:
    """Column widths that fit, the widest narrowed first; None where words would be broken."""
    widths = [max(map(len, column)) for column in columns]
    least = [least_width(column, whole=not n) for n, column in enumerate(columns)]
    room = width - len(_GAP) * (len(widths) - 1)
    while sum(widths) > room:
        spare = [have - need for have, need in zip(widths, least, strict=True)]
        if max(spare) <= 0:
            return None
        widest = max(range(len(widths)), key=lambda n: widths[n] if spare[n] > 0 else 0)
        widths[widest] -= 1
    return widths


def least_width(column: tuple[str, ...], *, whole: bool) -> int:
    """The longest word of a column; of the first one the longest cell below a short head."""
    head, *cells = column
    if whole and max(map(len, cells), default=0) <= MOST_WHOLE:
        return max(map(len, (*head.split(), *cells)))
    return max(len(word) for cell in column for word in cell.split() or [""])


def row_lines(row: tuple[str, ...], widths: list[int]) -> list[str]:
    """One row; a cell that wraps goes on below itself."""
    cells = [textwrap.wrap(cell, width) or [""] for cell, width in zip(row, widths, strict=True)]
    return [
        _GAP.join(cell.ljust(width) for cell, width in zip(line, widths, strict=True)).rstrip()
        for line in zip_longest(*cells, fillvalue="")
    ]
