"""The durable diary of one athlete: append, recover, read back.

Law: what happened, what is about to be shown, a stop and the day's summary go to disk together,
before anything is on screen. An open stop is found by reading the rows themselves, never by an
index alone. It decides nothing and asks no clock: every instant is handed in.
"""

from __future__ import annotations

import json
import os
import sqlite3
from typing import TYPE_CHECKING, Final, NamedTuple, Self, TypeVar

from coach.journal.chain import Chain, Row, damaged, trouble, written
from coach.journal.days import day_body, day_record, hold_body, hold_from
from coach.journal.folder import FILE_MODE, Lock, make_folder, narrow, owner_only, settle
from coach.journal.trouble import MISSING, Trouble, from_os
from coach.model.flags import Section
from coach.model.history import DayRecord, History, Hold

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Mapping
    from pathlib import Path
    from types import TracebackType

FILE_NAME: Final = "diary.sqlite"
RECORDS_READ: Final = 60  # what `History` holds at most
_ALL: Final = 2**62
_OF_SORT: Final = "where r.sort = ? and r.number < ? order by r.number desc"
NO_DIARY: Final = "There is no diary yet, so nothing is shown."

_ONE_TO_FIVE: Final = frozenset(Section) - {Section.WEEKLY}
_Asked = TypeVar("_Asked", bound=str)

BEGIN, EVENT, HOLD, LIFT, WRONG, PLAN, DAY = (
    "begin",
    "event",
    "hold",
    "lift",
    "wrong word",
    "plan",
    "day",
)


class Unfinished(NamedTuple):
    """A session that was cut off: all that is needed to fold it again.

    `events` are (kind, body, instant) in order; `shown_last` the lines last recorded as shown.
    """

    session: int
    header: dict[str, str]
    opened_at: str
    last_at: str
    events: tuple[tuple[str, dict[str, object], str], ...]
    shown_last: tuple[str, ...]


class Sitting(NamedTuple):
    """One session for reading: its day's record (None: cut off) and the stop in it, if any."""

    session: int
    opened_at: str
    header: dict[str, str]
    record: DayRecord | None
    hold: Hold | None


class Journal:
    """An open diary. Close it, or use it in a `with`. Every method may raise `Trouble`."""

    def __init__(self, chain: Chain, lock: Lock | None) -> None:
        """Check what was added since the last verified row and find the open stops in it."""
        self._chain = chain
        self._lock = lock
        self._stops: dict[int, Hold] = {}
        tail = chain.tail()
        self.rows_checked = len(tail)
        for row in tail:
            self._note_stop(row)

    @classmethod
    def open(cls, folder: Path, *, write: bool = True) -> Self:
        """Open the diary in `folder`, creating both when `write`.

        Raises `Trouble`: 75 in use, 77 not allowed, 73 cannot be made, 74 damaged or disk full,
        65 made by another program or by a newer Coach; with `write=False` 66 when there is none.
        """
        path = folder / FILE_NAME
        with owner_only():
            if not write:
                return cls._read_only(path)
            make_folder(folder)
            lock = Lock(folder)
            try:
                _make_file(path)
                return cls._opened(path, lock)
            except sqlite3.Error as error:
                lock.free()
                raise trouble(error) from None
            except BaseException:
                lock.free()
                raise

    @classmethod
    def _read_only(cls, path: Path) -> Self:
        try:
            return cls._opened(path, None)
        except sqlite3.Error as error:
            raise trouble(error) from None

    @classmethod
    def _opened(cls, path: Path, lock: Lock | None) -> Self:
        if not path.exists():
            raise Trouble(NO_DIARY, MISSING)
        connection = None
        mode = "ro" if lock is None else "rw"
        try:
            connection = sqlite3.connect(
                f"{path.resolve().as_uri()}?mode={mode}", uri=True, timeout=2, isolation_level=None
            )
            chain = Chain(connection)
            chain.prepare(write=lock is not None)
            return cls(chain, lock)
        except BaseException:
            _shut(connection)
            raise

    def close(self) -> None:
        """Move the rows into the main file and free the lock."""
        _shut(self._chain.connection)
        if self._lock is not None:
            self._lock.free()

    def __enter__(self) -> Self:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    # ------------------------------------------------------------ writing

    def begin(self, header: Mapping[str, str], opened_at: str, shown: tuple[str, ...]) -> int:
        """Start a session's record; its number. `header` names program, plan and rules by hash.

        Marks the rows so far as verified, unless a stop is open: an open stop is always among the
        rows that the next opening reads.
        """
        session = self._newest_session() + 1
        row = _row(BEGIN, opened_at, dict(header), session=session, shown=shown)
        self._add([row], verified=not self._stops)
        return session

    def append(
        self,
        session: int,
        kind: str,
        body: Mapping[str, object],
        shown: tuple[str, ...],
        at: str,
        *,
        hold: Hold | None = None,
        close: DayRecord | None = None,
    ) -> None:
        """Write one event and all it led to, in one transaction with one sync.

        `shown` is what is about to be on screen; `hold` a stop (numbered here); `close` the day's
        record, which ends the session.
        """
        rows = [_row(EVENT, at, dict(body), session=session, name=kind, shown=shown)]
        if hold is not None:
            number = self._next_hold()
            body = hold_body(hold._replace(number=number))
            rows.append(_row(HOLD, at, body, session=session, about=number))
        if close is not None:
            rows.append(_row(DAY, at, day_body(close), session=session))
        self._add(rows)

    def lift(
        self, hold_number: int, way: str, who: str, at: str, day: str, spent: str = ""
    ) -> bool:
        """Lift one open stop once; False when it is not open or the word `spent` was used before.

        `way` is by word, in person or new plan; `spent` the digest of the word used; `day` the ISO
        date of the clearance.
        """
        if hold_number not in self._stops or (spent and spent in self.spent_words()):
            return False
        body = {"way": way, "who": who, "day": day, "spent": spent}
        self._add([_row(LIFT, at, body, name=spent, about=hold_number)])
        return True

    def count_wrong(self, hold_number: int, at: str) -> None:
        """Count a wrong clearance word for a stop. The word itself is not kept."""
        self._add([_row(WRONG, at, {}, about=hold_number)])

    def keep_plan(self, compiled_json: str, digest: str, source_name: str, at: str) -> None:
        """Put a compiled plan in place; older ones stay in the record."""
        body = {"bound": compiled_json, "source": source_name}
        self._add([_row(PLAN, at, body, name=digest)])

    # ------------------------------------------------------------ reading

    def unfinished(self) -> Unfinished | None:
        """The newest session, if nothing ended it. A session with a stop in it is over."""
        session = self._newest_session()
        rows = self._find("where r.session = ? order by r.number", (session,)) if session else []
        if not rows or any(row.sort in (DAY, HOLD) for row in rows):
            return None
        events = tuple((row.name, row.read(), row.at) for row in rows if row.sort == EVENT)
        shown = next((row.shown for row in reversed(rows) if row.shown != "[]"), "[]")
        begin = rows[0]
        header = {name: str(value) for name, value in begin.read().items()}
        return Unfinished(session, header, begin.at, rows[-1].at, events, tuple(json.loads(shown)))

    def history(self) -> History:
        """What a start may read of the past.

        While a session is unfinished this is the past as it stood when that session began, so that
        folding it again starts from the same place.
        """
        cut = self.unfinished()
        before = self._first_row(cut.session) if cut else _ALL
        days = self._find(f"{_OF_SORT} limit {RECORDS_READ}", (DAY, before))
        records = tuple(_read_day(row) for row in days)
        last_lift = self._last(LIFT, before)
        newest = self._find("where r.number < ? order by r.number desc limit 1", (before,))
        return History(
            records=records,
            hold=self.open_hold(),
            lifted=last_lift is not None and _still_to_screen(last_lift, days, records),
            asked_alone=tuple(_newest(records, lambda record: record.alone).items()),
            at_hand=next((r.at_hand for r in records if r.at_hand is not None), None),
            last_at=newest[0].at if newest else "",
            own_asked=tuple(_newest(records, lambda record: record.own_asked).items()),
        )

    def open_hold(self) -> Hold | None:
        """The oldest stop that nothing has lifted."""
        return self._stops[min(self._stops)] if self._stops else None

    def wrong_words(self, hold_number: int) -> tuple[str, ...]:
        """The instants at which a wrong word was typed for this stop, oldest first."""
        rows = self._find(
            "where r.sort = ? and r.name = '' and r.about = ? order by r.number",
            (WRONG, hold_number),
        )
        return tuple(row.at for row in rows)

    def spent_words(self) -> tuple[str, ...]:
        """The digests of all clearance words used so far."""
        rows = self._find("where r.sort = ? and r.name > ''", (LIFT,))
        return tuple(row.name for row in rows)

    def current_plan(self) -> tuple[str, str] | None:
        """The compiled plan in place and its digest."""
        row = self._last(PLAN, _ALL)
        return (str(row.read()["bound"]), row.name) if row else None

    def sessions(self, limit: int = RECORDS_READ, *, since: str = "") -> list[Sitting]:
        """The newest `limit` sessions, newest first, none opened before the ISO day `since`."""
        newest, found = self._newest_session(), []
        for number in range(newest, max(0, newest - limit), -1):
            sitting = self._sitting(number)
            if sitting.opened_at[:10] < since:
                break
            found.append(sitting)
        return found

    def events(self, session: int) -> tuple[tuple[str, dict[str, object], str], ...]:
        """All events of a session as (kind, body, instant), oldest first."""
        rows = self._find("where r.session = ? order by r.number", (session,))
        return tuple((row.name, row.read(), row.at) for row in rows if row.sort == EVENT)

    def verify(self) -> int:
        """Check the whole diary from its first row; the number of rows."""
        try:
            return self._chain.verify()
        except sqlite3.Error as error:
            raise trouble(error) from None

    # ------------------------------------------------------------ inside

    def _add(self, rows: list[Row], *, verified: bool = False) -> None:
        for row in self._chain.add(rows, verified=verified):
            self._note_stop(row)

    def _note_stop(self, row: Row) -> None:
        if row.sort == HOLD:
            self._stops[row.about] = hold_from(row.read(), row.about)
        elif row.sort == LIFT:
            self._stops.pop(row.about, None)

    def _find(self, where: str, values: Iterable[object]) -> list[Row]:
        try:
            return self._chain.find(where, values)
        except sqlite3.Error as error:
            raise trouble(error) from None

    def _last(self, sort: str, before: int) -> Row | None:
        rows = self._find(f"{_OF_SORT} limit 1", (sort, before))
        return rows[0] if rows else None

    def _newest_session(self) -> int:
        rows = self._find("order by r.session desc limit 1", ())
        return rows[0].session if rows else 0

    def _first_row(self, session: int) -> int:
        rows = self._find("where r.session = ? order by r.number limit 1", (session,))
        return rows[0].number

    def _next_hold(self) -> int:
        last = self._last(HOLD, _ALL)
        return max([last.about if last else 0, *self._stops]) + 1

    def _sitting(self, session: int) -> Sitting:
        rows = self._find("where r.session = ? order by r.number", (session,))
        begin = rows[0]
        header = {name: str(value) for name, value in begin.read().items()}
        day = next((_read_day(row) for row in rows if row.sort == DAY), None)
        hold = next((hold_from(row.read(), row.about) for row in rows if row.sort == HOLD), None)
        return Sitting(session, begin.at, header, day, hold)


def _row(
    sort: str,
    at: str,
    body: Mapping[str, object],
    *,
    session: int = 0,
    name: str = "",
    about: int = 0,
    shown: tuple[str, ...] = (),
) -> Row:
    return Row(0, session, sort, name, about, at, written(body), written(list(shown)), b"")


def _read_day(row: Row) -> DayRecord:
    try:
        return day_record(row.read())
    except (KeyError, TypeError, ValueError):
        raise damaged() from None


def _still_to_screen(lift: Row, days: list[Row], records: tuple[DayRecord, ...]) -> bool:
    """Whether no session since `lift` has asked sections 1 to 5 alone; newest first.

    A start at which nothing was done, or one that broke off early, does not use the lift up. Behind
    the records that are read, it counts as used.
    """
    if len(days) == RECORDS_READ and lift.number < days[-1].number:
        return False
    since = (r for row, r in zip(days, records, strict=True) if row.number > lift.number)
    return not any(_ONE_TO_FIVE.issubset(record.alone) for record in since)


def _newest(
    records: tuple[DayRecord, ...], asked: Callable[[DayRecord], tuple[_Asked, ...]]
) -> dict[_Asked, str]:
    """The last day of each thing asked, from records that run newest first."""
    newest: dict[_Asked, str] = {}
    for record in records:
        for thing in asked(record):
            newest.setdefault(thing, record.day)
    return newest


def _make_file(path: Path) -> None:
    """A whole new diary, or the old one closed to others. Its side files get the same mode."""
    try:
        if not path.exists():
            _make_new(path.with_suffix(".new"))
            settle(path.with_suffix(".new"), path)
        for name in (path.name, f"{path.name}-wal", f"{path.name}-shm"):
            if (path.parent / name).exists():
                narrow(path.parent / name, FILE_MODE)
    except OSError as error:
        raise from_os(error) from None


def _make_new(new: Path) -> None:
    for leftover in (new.name, f"{new.name}-wal", f"{new.name}-shm"):
        (new.parent / leftover).unlink(missing_ok=True)
    os.close(os.open(new, os.O_RDWR | os.O_CREAT | os.O_EXCL, FILE_MODE))
    connection = sqlite3.connect(new, isolation_level=None)
    try:
        Chain(connection).create()
    finally:
        _shut(connection)


def _shut(connection: sqlite3.Connection | None) -> None:
    if connection is None:
        return
    try:
        connection.close()
    except sqlite3.Error:  # what was committed stays in the side file and is found again
        return
