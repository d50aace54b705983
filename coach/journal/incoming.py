"""Files handed to the program from outside, such as an exported diary.

Law: read only, never beyond a size; bytes that are no text leave a mark and are not guessed at.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from coach.journal.trouble import MISSING, NOT_A_DIARY, Trouble, from_os

if TYPE_CHECKING:
    from pathlib import Path

_HEAD: int = 64  # bytes that tell what a file is


def head_of(path: Path) -> str:
    """The first letters of a file. Raises `Trouble`: 66 where there is no such file."""
    if not path.is_file():
        raise Trouble(f"There is no file named {path.name}, so nothing was read.", MISSING)
    try:
        with path.open("rb") as file:
            return file.read(_HEAD).decode("utf-8", "replace")
    except OSError as error:
        raise from_os(error) from None


def text_of(path: Path, most_bytes: int) -> str:
    """A whole file as text. Raises `Trouble`: 65 where it is bigger than `most_bytes`."""
    try:
        if path.stat().st_size > most_bytes:
            raise Trouble("The file is too big, so nothing was read.", NOT_A_DIARY)
        return path.read_bytes().decode("utf-8", "replace")
    except OSError as error:
        raise from_os(error) from None
