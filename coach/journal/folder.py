"""Where the diary lives, who may read it, and who is using it.

Law: the folder is for its owner only; one diary is one athlete's and is written by one process.
"""

from __future__ import annotations

import contextlib
import errno
import os
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Final

from coach.journal.trouble import IN_USE, Trouble, from_os

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping

FOLDER_MODE: Final = 0o700
FILE_MODE: Final = 0o600
LOCK_NAME: Final = "in-use"


def data_folder(environ: Mapping[str, str]) -> Path:
    """The folder of this user's diary; empty and relative settings are ignored.

    `XDG_DATA_HOME` first (XDG Base Directory 0.8), then the home folder; on Windows
    `LOCALAPPDATA`. Raises `Trouble` when the machine names no home at all.
    """
    names = ("LOCALAPPDATA",) if sys.platform == "win32" else ("XDG_DATA_HOME",)
    for name in names:
        value = environ.get(name, "")
        if value and Path(value).is_absolute():
            return Path(value) / "coach"
    home = environ.get("HOME") or environ.get("USERPROFILE") or ""
    if not home or not Path(home).is_absolute():
        words = "Coach cannot tell where your files are, so set HOME and start again."
        raise Trouble(words, 73)
    return Path(home) / ".local" / "share" / "coach"


@contextlib.contextmanager
def owner_only() -> Iterator[None]:
    """Whatever is created inside is for its owner only, whatever the user's umask."""
    before = os.umask(0o077)
    try:
        yield
    finally:
        os.umask(before)


def make_folder(folder: Path) -> None:
    """Create the folder for its owner only, or close an open one. Raises `Trouble`."""
    try:
        folder.mkdir(mode=FOLDER_MODE, parents=True, exist_ok=True)
        narrow(folder, FOLDER_MODE)
    except OSError as error:
        raise from_os(error) from None


def narrow(path: Path, mode: int) -> None:
    """Take away what others may do with `path`, where it is ours to take."""
    if sys.platform != "win32" and path.stat().st_mode & 0o077:
        path.chmod(mode)


def settle(new: Path, name: Path) -> None:
    """Give a finished new file its name, for good. Raises `OSError`."""
    new.replace(name)
    if sys.platform != "win32":
        handle = os.open(name.parent, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


@contextlib.contextmanager
def throwaway() -> Iterator[Path]:
    """A folder that is gone afterwards, for a session of which nothing is kept."""
    import tempfile  # noqa: PLC0415 - it loads much that a daily session never needs

    with tempfile.TemporaryDirectory(prefix="coach-try-") as name:
        yield Path(name)


class Lock:
    """One writer at a time. The system frees it when its process dies, however it dies."""

    def __init__(self, folder: Path) -> None:
        """Take the lock or raise `Trouble` (75) naming the process that has it."""
        path = folder / LOCK_NAME
        try:
            self._handle = os.open(path, os.O_RDWR | os.O_CREAT, FILE_MODE)
        except OSError as error:
            raise from_os(error) from None
        try:
            _take(self._handle)
        except OSError as error:
            if error.errno not in (errno.EAGAIN, errno.EACCES, errno.EDEADLK):
                os.close(self._handle)
                raise from_os(error) from None
            holder = os.read(self._handle, 64).decode("ascii", "replace").strip()
            os.close(self._handle)
            raise _in_use(holder) from None
        self._sign()

    def _sign(self) -> None:
        try:
            os.ftruncate(self._handle, 0)
            os.write(self._handle, f"{os.getpid()}\n".encode("ascii"))
        except OSError as error:
            self.free()
            raise from_os(error) from None

    def free(self) -> None:
        """Give the lock back. Doing it twice is allowed."""
        if self._handle >= 0:
            os.close(self._handle)
            self._handle = -1


def _in_use(holder: str) -> Trouble:
    who = f" (process {holder})" if holder.isdigit() else ""
    return Trouble(f"Another session is open{who}, so close that one first.", IN_USE)


if sys.platform == "win32":
    import msvcrt

    def _take(handle: int) -> None:
        # A byte far behind the text, so that the holder's number stays readable.
        os.lseek(handle, 1024, os.SEEK_SET)
        msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)
        os.lseek(handle, 0, os.SEEK_SET)
else:
    import fcntl

    def _take(handle: int) -> None:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
