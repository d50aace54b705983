"""Ten years of sessions open with as much work as one."""

from __future__ import annotations

import sqlite3
from typing import TYPE_CHECKING

from coach.journal import Journal
from coach.journal.chain import FIRST_LINK, Chain, Row, link, written
from coach.journal.days import day_body
from tests.journal.sample import HEADER, instant, record, sit

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

YEARS_10 = 3_650


def long_diary(folder: Path, sessions: int) -> None:
    """Rows as the diary writes them, put down in one transaction."""
    with Journal.open(folder) as journal:
        sit(journal, 0)
    rows: list[Row] = []
    for number in range(2, sessions + 1):
        at, day = instant(number), written(day_body(record(number)))
        rows.append(Row(0, number, "begin", "", 0, at, written(HEADER), "[]", b""))
        rows.append(Row(0, number, "event", "typed", 0, at, '{"text":"1"}', '["a"]', b""))
        rows.append(Row(0, number, "day", "", 0, at, day, "[]", b""))
    connection = sqlite3.connect(folder / "diary.sqlite", isolation_level=None)
    chain = Chain(connection)
    chain.tail()
    chain.add(rows)
    connection.close()
    with Journal.open(folder) as journal:
        sit(journal, sessions + 1)


def steps(folder: Path, read: Callable[[Journal], object]) -> int:
    """Thousands of SQLite's own steps for opening and `read`."""
    counted = [0]
    journal = Journal.open(folder)
    journal._chain.connection.set_progress_handler(
        lambda: counted.__setitem__(0, counted[0] + 1), 100
    )
    read(journal)
    journal.close()
    return counted[0]


def test_ten_years_open_by_reading_the_last_session_only(tmp_path: Path) -> None:
    long_diary(tmp_path, YEARS_10)
    with Journal.open(tmp_path) as journal:
        assert journal.rows_checked == 4
        assert len(journal.history().records) == 60
        assert journal.verify() > 3 * YEARS_10


def test_reading_the_past_takes_as_many_steps_after_ten_years(tmp_path: Path) -> None:
    long_diary(tmp_path / "short", 70)
    long_diary(tmp_path / "long", YEARS_10)

    def start(journal: Journal) -> None:
        journal.unfinished()
        journal.history()
        journal.current_plan()

    assert steps(tmp_path / "long", start) <= 1.3 * steps(tmp_path / "short", start)


def test_a_row_depends_on_every_field_and_on_the_row_before() -> None:
    row = Row(1, 1, "event", "typed", 0, "2026", "{}", "[]", b"")
    other = [row._replace(number=2), row._replace(session=2), row._replace(sort="hold"),
             row._replace(name="x"), row._replace(about=1), row._replace(at="2027"),
             row._replace(body='{"a":1}'), row._replace(shown='["a"]')]  # fmt: skip
    links = {link(FIRST_LINK, each) for each in [row, *other]} | {link(b"1" * 32, row)}
    assert len(links) == 10
