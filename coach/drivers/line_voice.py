"""Talk by lines: text out, wrapped to the window; one line in. No escape codes, nothing redrawn.

Law: every text is cleaned here before a screen sees it. Used by the short commands around a
session, on a terminal or in a pipe alike.
"""

from __future__ import annotations

import shutil
import sys
import textwrap
import time
from typing import Final

from coach.drivers.cleaned import cleaned

WIDEST: Final = 79
NARROWEST: Final = 20
LONGEST_ANSWER: Final = 10_000  # letters of one line that are read; the rest is dropped


def width() -> int:
    """Columns a line may fill: one less than the window, at most 79."""
    return max(NARROWEST, min(shutil.get_terminal_size((80, 24)).columns - 1, WIDEST))


def wrapped(text: str) -> str:
    """`text` cleaned and wrapped; a line's own indent is kept for the lines that follow it."""
    indent = text[: len(text) - len(text.lstrip(" "))]
    return textwrap.fill(
        cleaned(text),
        width(),
        subsequent_indent=f"{indent}  " if indent else "",
        drop_whitespace=True,
        break_on_hyphens=False,
    )


class LineVoice:
    """Says and asks on standard output and input."""

    def say(self, text: str) -> None:
        """Show one line."""
        sys.stdout.write(wrapped(text) + "\n")
        sys.stdout.flush()

    def ask(self, label: str) -> str | None:
        """Show `label`, hand back what was typed without its line end; None at end of input."""
        sys.stdout.write(wrapped(label) + " ")
        sys.stdout.flush()
        typed = sys.stdin.readline() if sys.stdin is not None else ""
        if not typed:
            sys.stdout.write("\n")
            return None
        return typed.rstrip("\r\n")[:LONGEST_ANSWER]

    def wait(self, seconds: float) -> None:
        """Let the time pass; what was typed meanwhile is read afterwards like any line."""
        time.sleep(seconds)
