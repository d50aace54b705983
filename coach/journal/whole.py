"""The whole diary at once: read row by row, taken in from an export, or deleted.

Law: reading changes nothing, and reads on past what is damaged, naming it. A diary is taken in whole
into an empty place or not at all. Deleting leaves nothing behind but says if it could not.
"""

from __future__ import annotations

import contextlib
import os
import shutil
import sqlite3
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.journal.chain import FIRST_LINK, Chain, Row, link, trouble
from coach.journal.diary import FILE_NAME, NO_DIARY, Journal
from coach.journal.folder import LOCK_NAME, Lock, make_folder, owner_only, settle, throwaway
from coach.journal.trouble import MISSING, NOT_A_DIARY, Trouble, from_os

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

_SELECT: Final = "select number, session, sort, name, about, at, body, shown, checksum from record "
NOT_EMPTY: Final = "There is a diary here already, so nothing was taken in."
BROKEN_EXPORT: Final = "The file does not fit its own checksums, so nothing was taken in."
_WIPE: Final = 1 << 20


class Whole(NamedTuple):
    """Rows that fit their checksum, oldest first; `damage` names the others by line and day."""

    rows: tuple[Row, ...]
    damage: tuple[str, ...]


def read_whole(path: Path) -> Whole:
    """Every row of the diary file at `path`, read only. Raises `Trouble`.

    66 where there is none; 65 for another program's file or a newer diary. A damaged one is read as
    far as it goes.
    """
    with _opened(path) as chain:
        return rows_in(chain.connection)


def read_since(path: Path, day: str) -> Whole:
    """The rows of the sessions begun on or after an ISO day, and all plans, stops and openings.

    Each row is held against the one before it; where one does not fit, the whole diary is read
    instead, so that the damage is named. Raises `Trouble` as `read_whole` does.
    """
    with _opened(path) as chain:
        try:
            first = _first_row_since(chain, day)
            sorts = [row for sort in _STANDING for row in chain.find(_OLDER, (sort, first))]
            rows = chain.find("where r.number >= ? order by r.number", (first,))
        except (Trouble, sqlite3.Error):
            return rows_in(chain.connection)
    return Whole((*sorted(sorts), *rows), ())


_STANDING: Final = ("plan", "hold", "lift", "wrong word")
_OLDER: Final = "where r.sort = ? and r.number < ? order by r.number"
_NONE: Final = 2**62


def _first_row_since(chain: Chain, day: str) -> int:
    found = chain.connection.execute(
        "select min(number) from record where sort = 'begin' and substr(at, 1, 10) >= ?", (day,)
    ).fetchone()
    return found[0] or _NONE


@contextlib.contextmanager
def _opened(path: Path) -> Iterator[Chain]:
    """The diary file, opened so that nothing is written to it or beside it."""
    if not path.is_file():
        raise Trouble(NO_DIARY, MISSING)
    with owner_only(), contextlib.ExitStack() as stack:
        try:
            connection = sqlite3.connect(
                _untouched(path, stack), uri=True, timeout=2, isolation_level=None
            )
            stack.callback(connection.close)
            chain = Chain(connection)
            chain.prepare(write=False)
            yield chain
        except sqlite3.Error as error:
            raise trouble(error) from None
        except OSError as error:
            raise from_os(error) from None


def _untouched(path: Path, stack: contextlib.ExitStack) -> str:
    """Where to open it: as it is, or a passing copy where reading would make a side file."""
    side, index = (path.with_name(f"{path.name}-{tail}") for tail in ("wal", "shm"))
    if not side.exists() or side.stat().st_size == 0:
        return f"{path.resolve().as_uri()}?mode=ro&immutable=1"
    if not index.exists():
        folder = stack.enter_context(throwaway())
        for one in (path, side):
            shutil.copyfile(one, folder / one.name)
        path = folder / path.name
    return f"{path.resolve().as_uri()}?mode=ro"


def rows_in(connection: sqlite3.Connection) -> Whole:
    """Every row of an open diary, each held against its checksum."""
    return checked(_rows(connection))


def _rows(connection: sqlite3.Connection) -> list[Row | int]:
    """All rows in order; the number alone of one that cannot be read."""
    try:
        return [Row(*values) for values in connection.execute(_SELECT + "order by number")]
    except sqlite3.DatabaseError:
        return _one_by_one(connection)


def _one_by_one(connection: sqlite3.Connection) -> list[Row | int]:
    (last,) = connection.execute("select max(number) from record").fetchone()
    found: list[Row | int] = []
    for number in range(1, (last or 0) + 1):
        try:
            values = connection.execute(_SELECT + "where number = ?", (number,)).fetchone()
        except sqlite3.DatabaseError:
            values = None
        found.append(number if values is None else Row(*values))
    return found


def checked(found: list[Row | int]) -> Whole:
    """The rows that fit; what does not is named by its lines and the day nearest before them."""
    rows: list[Row] = []
    gone: list[tuple[int, str]] = []
    previous, day, number = FIRST_LINK, "before the first day", 0
    for one in found:
        number += 1
        if isinstance(one, Row) and one.number == number and _fits(previous, one):
            previous, day = one.checksum, one.at[:10]
            rows.append(one)
            continue
        gone.append((number, day))
        if isinstance(one, Row):  # what follows is held against what this row says of itself
            number = one.number
            previous = one.checksum
    return Whole(tuple(rows), _named(gone))


def _named(gone: list[tuple[int, str]]) -> tuple[str, ...]:
    """Lines that follow each other as one: `lines 17 to 33, 2026-11-12`."""
    runs: list[list[int]] = []
    days = dict(gone)
    for number, _day in gone:
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    return tuple(
        f"line {run[0]}, {days[run[0]]}"
        if len(run) == 1
        else f"lines {run[0]} to {run[-1]}, {days[run[0]]}"
        for run in runs
    )


def _fits(previous: bytes, row: Row) -> bool:
    try:
        return link(previous, row) == row.checksum
    except (TypeError, ValueError):
        return False


def take_in(folder: Path, rows: list[Row]) -> int:
    """Put an exported diary in place, whole, where there is none with a session; the row count.

    Raises `Trouble`: 65 where a row does not fit its checksum or a diary is there already.
    """
    whole = checked(list(rows))
    if whole.damage or not rows:
        raise Trouble(BROKEN_EXPORT, NOT_A_DIARY)
    with owner_only():
        make_folder(folder)
        lock = Lock(folder)
        try:
            if (folder / FILE_NAME).exists() and _holds_something(folder):
                raise Trouble(NOT_EMPTY, NOT_A_DIARY)
            _write_new(folder, rows)
        finally:
            lock.free()
    with Journal.open(folder) as journal:  # read back as any other day would
        return journal.verify()


def _holds_something(folder: Path) -> bool:
    whole = read_whole(folder / FILE_NAME)
    return bool(whole.rows or whole.damage)


def _write_new(folder: Path, rows: list[Row]) -> None:
    new = folder / "diary.new"
    _delete([new, folder / "diary.new-wal", folder / "diary.new-shm"])
    os.close(os.open(new, os.O_RDWR | os.O_CREAT | os.O_EXCL, 0o600))
    connection = sqlite3.connect(new, isolation_level=None)
    try:
        chain = Chain(connection)
        chain.create()
        chain.prepare(write=True)
        chain.add(rows)
    except sqlite3.Error as error:
        raise trouble(error) from None
    finally:
        connection.close()
    _delete([folder / f"{FILE_NAME}-wal", folder / f"{FILE_NAME}-shm"])
    try:
        settle(new, folder / FILE_NAME)
    except OSError as error:
        raise from_os(error) from None


def forget(folder: Path) -> tuple[str, ...]:
    """Delete every file of the diary, overwritten first; the names deleted. Raises `Trouble`.

    An open session keeps it from happening (75). On some disks an old copy outlives any
    overwriting; what is deleted here is every file that Coach keeps.
    """
    if not folder.is_dir():
        return ()
    lock = Lock(folder)
    names = kept_files(folder)
    try:
        _delete([folder / name for name in names])
    finally:
        lock.free()
    try:
        (folder / LOCK_NAME).unlink(missing_ok=True)
        folder.rmdir()
    except OSError as error:
        if any(folder.iterdir()):
            words = "Some files in the diary's folder are not Coach's own and were left there."
            raise Trouble(words, 74) from None
        raise from_os(error) from None
    return names


def kept_files(folder: Path) -> tuple[str, ...]:
    """The names of Coach's own files in `folder`, in order."""
    if not folder.is_dir():
        return ()
    stems = (FILE_NAME, "diary.new")
    own = {f"{stem}{tail}" for stem in stems for tail in ("", "-wal", "-shm", "-journal")}
    return tuple(sorted(p.name for p in folder.iterdir() if p.name in own))


def _delete(paths: list[Path]) -> None:
    for path in paths:
        try:
            if path.is_file() and not path.is_symlink():
                _overwrite(path)
            path.unlink(missing_ok=True)
        except OSError as error:
            raise from_os(error) from None


def _overwrite(path: Path) -> None:
    size = path.stat().st_size
    handle = os.open(path, os.O_WRONLY)
    try:
        for start in range(0, size, _WIPE):
            os.write(handle, bytes(min(_WIPE, size - start)))
        os.fsync(handle)
    finally:
        os.close(handle)
