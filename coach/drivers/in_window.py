"""Long lines of a guide or a question, in the rows of the window they are read in.

Law: words stay whole and a line's indentation stays; where there is no window (a pipe, a file) the
text goes out as it is.
"""

from __future__ import annotations

import re
import shutil
import sys
import textwrap
from typing import Final

from coach.drivers.layout import WIDEST

NARROWEST: Final = 20  # columns that a row takes at least; set here
_FENCE: Final = "```"
_BEGINS: Final = re.compile(r"(?:[*-]|\d+\.) ")
_TABLE: Final = "|"


def in_window(words: str) -> str:
    """A line or several, each in rows of the window."""
    if not sys.stdout.isatty():
        return words
    return "\n".join(_rows(line, _window()) for line in words.split("\n"))


def guide_in_window(text: str) -> str:
    """A guide with its paragraphs and points joined and set anew; samples and tables stay."""
    if not sys.stdout.isatty():
        return text
    rows: list[str] = []
    in_sample = False
    for line in joined(text).split("\n"):
        in_sample ^= line.lstrip().startswith(_FENCE)
        is_whole = in_sample or line.startswith(_TABLE)
        rows.append(line if is_whole else _rows(line, _window()))
    return "\n".join(rows)


def joined(text: str) -> str:
    """Each paragraph and each point on one line; what is indented as a sample stays as it is."""
    lines: list[str] = []
    in_sample = goes_on = False
    for line in text.split("\n"):
        in_sample ^= line.lstrip().startswith(_FENCE)
        loose = in_sample or not line.strip() or line.startswith(("#", _TABLE)) or _FENCE in line
        if goes_on and not loose and not _BEGINS.match(line.lstrip()):
            lines[-1] += f" {line.strip()}"
        else:
            lines.append(line)
        goes_on = not loose
    return "\n".join(lines)


def _window() -> int:
    return shutil.get_terminal_size((80, 24)).columns


def _rows(line: str, window: int) -> str:
    """One line in rows; those below the first stand under its words."""
    lead = line[: len(line) - len(line.lstrip(" "))]
    begins = _BEGINS.match(line.lstrip(" "))
    under = lead + " " * (len(begins.group()) if begins else 0)
    width = max(NARROWEST, min(window, WIDEST) - 1)
    return textwrap.fill(
        line[len(lead) :],
        width,
        initial_indent=lead,
        subsequent_indent=under,
        break_on_hyphens=False,
    )
