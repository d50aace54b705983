"""Talk by lines for the short commands around a session, on a terminal or in a pipe alike.

Law: every text is cleaned before a screen sees it; no escape codes, nothing redrawn. What was typed
during a wait is dropped where it was typed at a terminal.
"""

from __future__ import annotations

import shutil
import sys
import time
from typing import TYPE_CHECKING

from coach.drivers.cleaned import cleaned
from coach.drivers.layout import wrapped
from coach.drivers.plain import LineReader
from coach.drivers.port import EndOfInput

if TYPE_CHECKING:
    from collections.abc import Callable


class LineVoice:
    """Says and asks on standard output and input."""

    def __init__(self, wait: Callable[[float], None] = time.sleep) -> None:
        self._reader = None if sys.stdin is None else LineReader(sys.stdin.fileno())
        self._wait = wait

    def say(self, text: str) -> None:
        """Show one line; its own indent is kept for the rows that follow it."""
        clean = cleaned(text)
        indent = clean[: len(clean) - len(clean.lstrip(" "))]
        window = shutil.get_terminal_size((80, 24)).columns
        for row in wrapped(clean.lstrip(" "), window, len(indent)):
            sys.stdout.write(f"{indent}{row}".rstrip() + "\n")
        sys.stdout.flush()

    def ask(self, label: str) -> str | None:
        """Show `label`, hand back what was typed without its line end; None at end of input."""
        sys.stdout.write(cleaned(label) + " ")
        sys.stdout.flush()
        try:
            return None if self._reader is None else self._reader.line()
        except EndOfInput:
            sys.stdout.write("\n")
            return None

    def wait(self, seconds: float) -> None:
        """Let the time pass."""
        self._wait(seconds)
        if self._reader is not None:
            self._reader.forget()
