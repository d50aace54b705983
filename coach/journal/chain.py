"""The diary's one table: rows that only grow, each carrying the checksum of all before it.

Law: a row whose checksum does not fit is never used. Nothing is changed or deleted, ever.
This file knows rows and checksums, not what they mean.
"""

from __future__ import annotations

import json
import sqlite3
from hashlib import sha256
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.journal.trouble import (
    CANNOT_READ_OR_WRITE,
    DAMAGED,
    FOREIGN,
    NOT_A_DIARY,
    Trouble,
    from_sqlite,
)

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator

FORMAT: Final = 1
APPLICATION: Final = 0x0C0AC401  # marks the file as ours; set here
FIRST_LINK: Final = b"\0" * 32

# `sort` says what a row is; `name` and `about` make it findable. A later row can replace nothing:
# a number already taken is refused, or `insert or replace` would delete unseen.
_TABLES: Final = """
pragma journal_mode = wal;
begin immediate;
create table record (
  number integer primary key, session integer not null, sort text not null, name text not null,
  about integer not null, at text not null, body text not null, shown text not null,
  checksum blob not null) strict;
create index by_sort on record (sort, number);
create index by_session on record (session, number);
create table verified (number integer primary key, checksum blob not null) strict;
create trigger record_stays before update on record
  begin select raise(abort, 'the diary only grows'); end;
create trigger record_kept before delete on record
  begin select raise(abort, 'the diary only grows'); end;
create trigger record_follows before insert on record
  when exists (select 1 from record where number >= new.number)
  begin select raise(abort, 'the diary only grows'); end;
create trigger verified_stays before update on verified
  begin select raise(abort, 'the diary only grows'); end;
create trigger verified_kept before delete on verified
  begin select raise(abort, 'the diary only grows'); end;
create trigger verified_follows before insert on verified
  when exists (select 1 from verified where number >= new.number)
  begin select raise(abort, 'the diary only grows'); end;
"""
_MARKS: Final = f"pragma application_id = {APPLICATION}; pragma user_version = {FORMAT}; commit;"

_COLUMNS: Final = "r.number, r.session, r.sort, r.name, r.about, r.at, r.body, r.shown, r.checksum"
_LINKED: Final = (
    f"select {_COLUMNS}, p.checksum from record r left join record p on p.number = r.number - 1 "  # noqa: S608 - constants only
)


class Row(NamedTuple):
    """One record. `body` and `shown` are JSON texts in ASCII; `about` is a hold's number or 0."""

    number: int
    session: int
    sort: str
    name: str
    about: int
    at: str
    body: str
    shown: str
    checksum: bytes

    def read(self) -> dict[str, object]:
        """The body as a mapping."""
        body = json.loads(self.body)
        return body if isinstance(body, dict) else {}


def link(previous: bytes, row: Row) -> bytes:
    """The checksum of `row` after `previous`: SHA-256 over both."""
    content = json.dumps(row[:-1], ensure_ascii=True, separators=(",", ":"))
    return sha256(previous + content.encode("ascii")).digest()


def written(value: object) -> str:
    """A value as JSON text in ASCII, so that no byte typed by anyone can harm the file."""
    return json.dumps(value, ensure_ascii=True, allow_nan=False, separators=(",", ":"))


class Chain:
    """An open diary file."""

    def __init__(self, connection: sqlite3.Connection) -> None:
        self.connection = connection
        self._last = 0
        self._link = FIRST_LINK
        self._verified = 0

    def create(self) -> None:
        """Make the tables in an empty file."""
        self.connection.executescript(_TABLES + _MARKS)

    def prepare(self, *, write: bool) -> None:
        """Recognise the file. Raises `Trouble` when it is emptied, foreign or of a newer format."""
        run = self.connection.execute
        (version,) = run("pragma user_version").fetchone()
        (application,) = run("pragma application_id").fetchone()
        (tables,) = run("select count(*) from sqlite_schema").fetchone()
        if tables == 0:  # a new diary gets its name only when it is whole
            raise damaged()
        if application != APPLICATION:
            raise Trouble(FOREIGN, NOT_A_DIARY)
        if version != FORMAT:
            words = (
                f"The diary has format {version}, so get a newer Coach (this one reads {FORMAT})."
            )
            raise Trouble(words, NOT_A_DIARY)
        run("pragma trusted_schema = off")
        if write:
            run("pragma journal_mode = wal")
            run("pragma synchronous = full")
            run("pragma wal_autocheckpoint = 0")  # one sync an answer; closing moves the rows over

    def tail(self) -> list[Row]:
        """All rows after the last verified one, each checked; the end of the chain is noted.

        An opening reads only these, so that ten years of sessions open as quickly as none.
        """
        found = self.connection.execute(
            "select number, checksum from verified order by number desc limit 1"
        ).fetchone()
        number, checksum = found or (0, FIRST_LINK)
        if number:
            kept = self.connection.execute(
                "select checksum from record where number = ?", (number,)
            ).fetchone()
            if kept is None or kept[0] != checksum:
                raise damaged()
        self._verified = number
        return list(self._walk(number, checksum))

    def verify(self) -> int:
        """Check every row and page from the first on; the number of rows. Raises `Trouble`."""
        (said,) = self.connection.execute("pragma integrity_check(1)").fetchone()
        if said != "ok":
            raise damaged()
        return sum(1 for _row in self._walk(0, FIRST_LINK))

    def _walk(self, number: int, checksum: bytes) -> Iterator[Row]:
        rows = self.connection.execute(
            f"select {_COLUMNS} from record r where r.number > ? order by r.number",  # noqa: S608 - constants only
            (number,),
        )
        for values in rows:
            row = Row(*values)
            number += 1
            if row.number != number or link(checksum, row) != row.checksum:
                raise damaged()
            checksum = row.checksum
            yield row
        self._last, self._link = number, checksum

    def find(self, where: str, values: Iterable[object] = ()) -> list[Row]:
        """Rows by a condition, each checked against the row before it. Raises `Trouble`.

        `where` is one of this room's own constants, never text from outside.
        """
        rows = []
        for *columns, previous in self.connection.execute(_LINKED + where, tuple(values)):
            row = Row(*columns)
            if link(previous or FIRST_LINK, row) != row.checksum:
                raise damaged()
            rows.append(row)
        return rows

    def add(self, rows: Iterable[Row], *, verified: bool = False) -> list[Row]:
        """Write all rows in one transaction, with one sync; as written. Raises `Trouble`.

        `verified` also marks the rows so far as checked, so that the next opening starts there.
        """
        run = self.connection.execute
        last, previous, kept = self._last, self._link, []
        try:
            run("begin immediate")
            if verified and last > self._verified:
                run("insert into verified values (?, ?)", (last, previous))
            for row in rows:
                last += 1
                numbered = row._replace(number=last)
                previous = link(previous, numbered)
                kept.append(numbered._replace(checksum=previous))
            self.connection.executemany("insert into record values (?,?,?,?,?,?,?,?,?)", kept)
            run("commit")
        except sqlite3.Error as error:
            self._undo()
            raise trouble(error) from None
        self._verified = self._last if verified else self._verified
        self._last, self._link = last, previous
        return kept

    def _undo(self) -> None:
        if self.connection.in_transaction:
            try:
                self.connection.execute("rollback")
            except sqlite3.Error:  # the file is beyond reach; what was committed stays committed
                return


def damaged() -> Trouble:
    """A record that does not fit its checksum."""
    return Trouble(DAMAGED, CANNOT_READ_OR_WRITE)


def trouble(error: sqlite3.Error) -> Trouble:
    """The trouble behind SQLite's own error; its text is dropped."""
    return from_sqlite(getattr(error, "sqlite_errorcode", 0) or 0)
