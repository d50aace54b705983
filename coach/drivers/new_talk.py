"""The talk of `coach new`: a question, the typed lines, and what was typed so far kept in a file.

Law: every line is on disk before the next question, so an end in the middle loses nothing; the next
start goes on from there. A line goes back only where the clinician says `back`.
"""

from __future__ import annotations

import sys
from typing import TYPE_CHECKING, Final

from coach.drivers.in_window import in_window
from coach.journal.incoming import text_of
from coach.journal.outgoing import write_whole
from coach.journal.trouble import Trouble
from coach.texts.rendered import visible

if TYPE_CHECKING:
    from pathlib import Path

BACK: Final = "back"
ANEW: Final = "anew"
MOST_BYTES: Final = 1024 * 1024  # of what is kept; set here


class Left(Exception):
    """The clinician ended the talk; what was typed is kept."""


class WentBack(Exception):
    """The last answer was taken back; the talk starts again and comes to its question."""


def say(words: str) -> None:
    """One line to the clinician."""
    sys.stdout.write(f"{in_window(words)}\n")
    sys.stdout.flush()


class Talk:
    """Lines typed in one talk. `file` keeps them until the talk has come to its end."""

    def __init__(self, file: Path) -> None:
        """Take up what an earlier talk left in the file."""
        self._file = file
        self._lines = _kept(file)
        self._next = 0
        self._marks: list[int] = []
        self.kept = len(self._lines)

    def begin_anew(self) -> None:
        """Throw away what was kept."""
        self._lines, self.kept = [], 0
        self._save()

    def start_again(self) -> None:
        """Ask from the first question; what is kept answers by itself."""
        self._next = 0
        self._marks = []

    def question(self) -> None:
        """A question begins here; `back` comes back to it."""
        self._marks.append(self._next)

    def line(self) -> str:
        """The next line: one kept before, else one typed now. Raises `Left` or `WentBack`."""
        if self._next < len(self._lines):
            line = self._lines[self._next]
            say(f"> {line}")
        else:
            line = self._typed()
            self._lines.append(line)
            self._save()
        self._next += 1
        return line

    def forget(self) -> None:
        """The line just taken is refused: it goes, and whatever was kept behind it."""
        self._next -= 1
        del self._lines[self._next :]
        self._save()

    def done(self) -> None:
        """The files are written; nothing needs to be kept."""
        self._file.unlink(missing_ok=True)

    def _typed(self) -> str:
        line = sys.stdin.readline()
        if not line:
            raise Left
        typed = visible(line.strip())
        if typed != BACK:
            return typed
        here = self._marks[-1] if self._marks else 0
        if self._next == here:  # nothing of this question is typed: back to the one before
            here = self._marks[-2] if len(self._marks) > 1 else 0
        self._lines = self._lines[:here]
        self._save()
        raise WentBack

    def _save(self) -> None:
        if self._lines:
            write_whole(self._file, "".join(f"{line}\n" for line in self._lines))
        else:
            self._file.unlink(missing_ok=True)


def _kept(file: Path) -> list[str]:
    try:
        return text_of(file, MOST_BYTES).splitlines() if file.exists() else []
    except Trouble:
        return []
