"""Why a diary cannot be used, as one calm sentence and an exit code.

Law: the words never hold an answer, a name or a note; only what went wrong and what to do.
"""

from __future__ import annotations

import errno
from typing import Final

CANNOT_CREATE: Final = 73
CANNOT_READ_OR_WRITE: Final = 74
IN_USE: Final = 75
NOT_ALLOWED: Final = 77
NOT_A_DIARY: Final = 65
MISSING: Final = 66

FULL: Final = "The disk is full, so nothing can be saved and no exercise is shown."
DAMAGED: Final = (
    "The diary is damaged and was left as it is, so please call your clinician before you go on."
)
WRITE_FAILED: Final = (
    "The diary could not be saved (the disk may be full), so no exercise is shown."
)
READ_ONLY: Final = (
    "The diary's folder does not let Coach write, so open it for your own user and start again."
)
FOREIGN: Final = "The diary's file was made by another program, so Coach left it as it is."

# SQLite's primary result codes, from memory; the extended code's low byte.
_PERM, _BUSY, _LOCKED, _READONLY, _IOERR, _CORRUPT = 3, 5, 6, 8, 10, 11
_FULL, _CANTOPEN, _NOTADB = 13, 14, 26


class Trouble(Exception):
    """The diary cannot be used. `words` is one sentence for the athlete, `code` the exit code."""

    def __init__(self, words: str, code: int) -> None:
        super().__init__(words)
        self.words = words
        self.code = code


def from_sqlite(code: int) -> Trouble:
    """The trouble behind a SQLite result code (extended codes allowed)."""
    primary = code & 0xFF
    if primary == _FULL:
        return Trouble(FULL, CANNOT_READ_OR_WRITE)
    if primary in (_CORRUPT, _NOTADB):
        return Trouble(DAMAGED, CANNOT_READ_OR_WRITE)
    if primary in (_PERM, _READONLY, _CANTOPEN):
        return Trouble(READ_ONLY, NOT_ALLOWED)
    if primary in (_BUSY, _LOCKED):
        return Trouble(
            "Another program is using the diary, so wait a moment and start again.", IN_USE
        )
    return Trouble(WRITE_FAILED, CANNOT_READ_OR_WRITE)


def from_os(error: OSError) -> Trouble:
    """The trouble behind a refused folder or file of the diary."""
    if error.errno in (errno.EACCES, errno.EPERM, errno.EROFS):
        return Trouble(READ_ONLY, NOT_ALLOWED)
    if error.errno in (errno.ENOSPC, errno.EDQUOT, errno.EFBIG):
        return Trouble(FULL, CANNOT_READ_OR_WRITE)
    if error.errno in (errno.EIO, errno.EMFILE, errno.ENFILE):
        return Trouble(WRITE_FAILED, CANNOT_READ_OR_WRITE)
    return Trouble("The diary's folder cannot be made, so no session can start.", CANNOT_CREATE)
