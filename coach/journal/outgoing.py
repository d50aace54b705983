"""Files that leave the program on request: a bound plan, results of a replay.

Law: written whole or not at all, for its owner only; a full disk leaves the old file as it was.
"""

from __future__ import annotations

import os
from typing import TYPE_CHECKING

from coach.journal.folder import FILE_MODE, settle
from coach.journal.trouble import Trouble, from_os

if TYPE_CHECKING:
    from pathlib import Path


def write_whole(path: Path, text: str) -> None:
    """Write `text` (UTF-8) to `path`, replacing what was there. Raises `Trouble`."""
    new = path.with_name(f".{path.name}.{os.getpid()}.new")
    try:
        handle = os.open(new, os.O_WRONLY | os.O_CREAT | os.O_EXCL, FILE_MODE)
        with open(handle, "wb") as file:  # noqa: PTH123 - by its handle, so that its mode holds
            file.write(text.encode("utf-8", "backslashreplace"))
            file.flush()
            os.fsync(file.fileno())
        settle(new, path)
    except OSError as error:
        new.unlink(missing_ok=True)
        words = f"The file could not be written ({error.strerror}), so nothing was changed."
        raise Trouble(words, from_os(error).code) from None
