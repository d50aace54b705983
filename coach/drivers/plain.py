"""Lines in, lines out: for pipes, simple terminals, and ears.

Law: output only grows; no escape code, no bell, no redraw. Neither prompt_toolkit nor rich is ever
loaded here. A line of any length is read in bounded memory.
"""

from __future__ import annotations

import contextlib
import os
import select
import shutil
import sys
import time
from typing import TYPE_CHECKING, Final, Self

from coach.drivers.cleaned import cleaned
from coach.drivers.layout import for_ears, spoken, wrapped
from coach.drivers.port import EndOfInput, Reply
from coach.drivers.timed_lines import by_ear
from coach.drivers.typed_text import LONGEST

if TYPE_CHECKING:
    from collections.abc import Callable
    from typing import TextIO

    from coach.model.turns import Ask, Line, Timer, Turn

_CHUNK: Final = 65_536
_KEPT: Final = 4 * LONGEST + 4  # bytes of a line that are kept: enough for one letter too many


class LineReader:
    """Reads lines from an open file by its number; keeps at most `_KEPT` bytes of each."""

    def __init__(self, handle: int) -> None:
        self._handle = handle
        self._line = bytearray()
        self._rest = b""
        self._over = False
        self.is_terminal = os.isatty(handle)

    def line(self, wait_s: float | None = None) -> str | None:
        """The next line without its end; None when none came within `wait_s` seconds.

        Raises `EndOfInput` after the last one; a last line without an end counts as a line.
        """
        until = None if wait_s is None else time.monotonic() + wait_s
        while True:
            head, found, self._rest = self._rest.partition(b"\n")
            self._line += head[: _KEPT - len(self._line)]
            if found or (self._over and self._line):
                return self._taken()
            if self._over:
                raise EndOfInput
            if until is not None and not self._waiting(until - time.monotonic()):
                return None
            self._rest = os.read(self._handle, _CHUNK)
            self._over = not self._rest

    def _taken(self) -> str:
        line = bytes(self._line).rstrip(b"\r").decode("utf-8", "surrogateescape")
        self._line.clear()
        return line

    def _waiting(self, wait_s: float) -> bool:
        if sys.platform == "win32":  # a console cannot be asked; typed lines wait for the timer
            time.sleep(max(0.0, wait_s))
            return False
        ready, _, _ = select.select([self._handle], [], [], max(0.0, wait_s))
        return bool(ready)

    def forget(self) -> None:
        """Drop what was typed so far at a terminal; a pipe's lines are never early."""
        if not self.is_terminal:
            return
        self._rest = b""
        self._line.clear()
        with contextlib.suppress(ImportError, OSError):
            import termios

            termios.tcflush(self._handle, termios.TCIFLUSH)


class PlainPort:
    """A port of lines. `quick` ends every timer at once."""

    def __init__(
        self,
        reader: LineReader,
        out: TextIO,
        *,
        quick: bool = False,
        steady: Callable[[], float] = time.monotonic,
    ) -> None:
        self._reader, self._out, self._quick, self._steady = reader, out, quick, steady

    @classmethod
    def of_the_process(cls, *, quick: bool) -> Self:
        """A port on standard input and output; a closed input is one that has ended."""
        handle = sys.stdin.fileno() if sys.stdin is not None else os.open(os.devnull, os.O_RDONLY)
        return cls(LineReader(handle), sys.stdout, quick=quick)

    def present(self, turn: Turn, lines: tuple[Line, ...]) -> None:
        """Show the lines, one fact each; a turn that stands alone comes after a blank line."""
        rows = [row.text for row in for_ears(lines, window())]
        self._write(("\n" if turn.alone else "") + "".join(f"{row}\n" for row in rows))

    def ask(self, ask: Ask) -> Reply:
        """Show the label and read a line."""
        *above, label = wrapped(spoken(cleaned(ask.label)), window())
        if ask.safety:
            self._reader.forget()
        self._write("".join(f"{row}\n" for row in above) + f"{label} ")
        try:
            line = self._reader.line()
        except EndOfInput:
            self._write("\n")
            raise
        if not self._reader.is_terminal:
            self._write("\n")  # no echo of an Enter ends the row of the label
        return Reply(line or "")

    def time(self, timer: Timer, name: str, gone_s: float) -> Reply | None:  # noqa: ARG002
        """Say the timer's lines when they are due; a line typed meanwhile ends the waiting."""
        if self._quick:
            self._say(timer.after)
            return None
        began = self._steady() - gone_s
        for said in by_ear(timer, gone_s):
            typed = self._reader.line(max(0.0, said.at_s - (self._steady() - began)))
            if typed is not None:
                return Reply(typed)
            self._say(said.text)
        return None

    def _say(self, text: str) -> None:
        self._write("".join(f"{row}\n" for row in wrapped(spoken(cleaned(text)), window())))

    def _write(self, text: str) -> None:
        self._out.write(text)
        self._out.flush()


def window() -> int:
    """Columns of the window; 80 where there is none."""
    return shutil.get_terminal_size((80, 24)).columns
