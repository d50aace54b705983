"""Damage is seen, nothing can be changed, nothing confirmed is lost."""

from __future__ import annotations

import os
import signal
import sqlite3
import subprocess
import sys
from pathlib import Path

import pytest

from coach.journal import Journal, Trouble
from tests.journal.sample import HEADER, filled, instant, record, sit, stop

ROOT = Path(__file__).parents[2]
WRITER = """
import sys
from pathlib import Path
from coach.journal import Journal
from tests.journal.sample import HEADER, instant
with Journal.open(Path(sys.argv[1])) as journal:
    session = journal.begin(HEADER, instant(0), ())
    for number in range(100_000):
        journal.append(session, "typed", {"n": number}, (), instant(0))
        print(number, flush=True)
"""


def reopened(folder: Path) -> Trouble:
    with pytest.raises(Trouble) as caught:
        Journal.open(folder).close()
    return caught.value


@pytest.mark.hazard("H-06")
def test_kill_9_loses_no_confirmed_answer(tmp_path: Path) -> None:
    for answers in (0, 1, 7, 40):
        folder = tmp_path / str(answers)
        command = [sys.executable, "-c", WRITER, str(folder)]
        with subprocess.Popen(command, stdout=subprocess.PIPE, text=True, cwd=ROOT) as child:
            assert child.stdout is not None
            said = [int(child.stdout.readline()) for _answer in range(answers + 1)]
            os.kill(child.pid, signal.SIGKILL)
            said += [int(line) for line in child.stdout.read().splitlines() if line.strip()]
        with Journal.open(folder) as journal:
            cut = journal.unfinished()
            assert cut is not None
            kept = [body["n"] for _kind, body, _at in cut.events]
            assert kept == list(range(len(kept)))
            assert len(said) <= len(kept) <= len(said) + 1
            assert journal.verify() == len(kept) + 1


@pytest.mark.parametrize(
    "statement",
    [
        "update record set body = '{}' where number = 1",
        "delete from record where number = 2",
        "insert or replace into record values (2,1,'event','','0','','{}','[]',x'00')",
        "replace into record values (1,1,'event','',0,'','{}','[]',x'00')",
        "update verified set number = 99",
        "delete from verified",
    ],
)
def test_no_statement_changes_what_is_written(tmp_path: Path, statement: str) -> None:
    filled(tmp_path, 2)
    with (
        sqlite3.connect(tmp_path / "diary.sqlite") as connection,
        pytest.raises(sqlite3.DatabaseError, match="only grows"),
    ):
        connection.execute(statement)


def flip(path: Path, old: bytes, new: bytes) -> None:
    content = path.read_bytes()
    assert old in content
    path.write_bytes(content.replace(old, new, 1))


def test_a_changed_byte_in_the_last_session_is_refused_and_left_alone(tmp_path: Path) -> None:
    filled(tmp_path, 1)
    path = tmp_path / "diary.sqlite"
    flip(path, b'"sleep_h":8.0', b'"sleep_h":9.0')
    before = path.read_bytes()
    assert reopened(tmp_path).code == 74
    assert path.read_bytes() == before


def test_a_changed_byte_far_back_is_found_by_a_whole_check(tmp_path: Path) -> None:
    filled(tmp_path, 100)
    oldest = f'"day":"{instant(0)[:10]}"'.encode()
    flip(tmp_path / "diary.sqlite", oldest, oldest.replace(b"-09", b"-08"))
    with Journal.open(tmp_path) as journal:
        assert len(journal.history().records) == 60
        with pytest.raises(Trouble):
            journal.verify()


def test_a_changed_byte_in_a_record_that_is_used_is_refused(tmp_path: Path) -> None:
    filled(tmp_path, 30)
    day = f'"day":"{instant(10)[:10]}"'.encode()
    flip(tmp_path / "diary.sqlite", day, day.replace(b"2026", b"2025"))
    with Journal.open(tmp_path) as journal, pytest.raises(Trouble) as caught:
        journal.history()
    assert caught.value.code == 74


def test_a_stop_whose_row_was_renamed_is_refused(tmp_path: Path) -> None:
    with Journal.open(tmp_path) as journal:
        session = journal.begin(HEADER, instant(0), ())
        journal.append(session, "typed", {}, (), instant(0), hold=stop(0), close=record(0))
        sit(journal, 1)
    connection = sqlite3.connect(tmp_path / "diary.sqlite")
    connection.executescript(
        "drop trigger record_stays; update record set sort = 'event' where sort = 'hold';"
    )
    connection.close()
    assert reopened(tmp_path).code == 74


def test_a_row_taken_out_of_the_middle_is_refused(tmp_path: Path) -> None:
    filled(tmp_path, 1)
    connection = sqlite3.connect(tmp_path / "diary.sqlite")
    connection.executescript("drop trigger record_kept; delete from record where number = 2;")
    connection.close()
    assert reopened(tmp_path).code == 74


def test_a_wrong_verified_mark_is_refused(tmp_path: Path) -> None:
    filled(tmp_path, 3)
    connection = sqlite3.connect(tmp_path / "diary.sqlite")
    connection.executescript(
        "drop trigger verified_stays; update verified set checksum = zeroblob(32);"
    )
    connection.close()
    assert reopened(tmp_path).code == 74


@pytest.mark.parametrize("content", [b"", b"not a diary at all" * 400, b"SQLite format 3\0"])
def test_a_garbled_or_emptied_file_is_refused_and_left_alone(
    tmp_path: Path, content: bytes
) -> None:
    filled(tmp_path, 1)
    path = tmp_path / "diary.sqlite"
    path.write_bytes(content)
    assert reopened(tmp_path).code == 74
    assert path.read_bytes() == content


def test_a_file_cut_short_is_refused(tmp_path: Path) -> None:
    filled(tmp_path, 20)
    path = tmp_path / "diary.sqlite"
    path.write_bytes(path.read_bytes()[:9000])
    assert reopened(tmp_path).code == 74


def test_a_file_of_another_program_is_refused(tmp_path: Path) -> None:
    connection = sqlite3.connect(tmp_path / "diary.sqlite")
    connection.executescript("create table songs (name text);")
    connection.close()
    assert reopened(tmp_path).code == 65


def test_a_diary_of_a_newer_format_is_refused_with_its_number(tmp_path: Path) -> None:
    filled(tmp_path, 1)
    connection = sqlite3.connect(tmp_path / "diary.sqlite")
    connection.executescript("pragma user_version = 7;")
    connection.close()
    refused = reopened(tmp_path)
    assert refused.code == 65
    assert "7" in refused.words


@pytest.mark.hazard("H-06")
def test_a_killed_creation_leaves_no_half_diary(tmp_path: Path) -> None:
    (tmp_path / "diary.new").write_bytes(b"half")
    filled(tmp_path, 1)
    assert not (tmp_path / "diary.new").exists()
    with Journal.open(tmp_path) as journal:
        assert len(journal.history().records) == 1


@pytest.mark.hazard("H-19")
def test_private_words_are_in_no_refusal(tmp_path: Path) -> None:
    with Journal.open(tmp_path) as journal:
        sit(journal, 0, notes=("secret-note-4711",))
    flip(tmp_path / "diary.sqlite", b"secret-note-4711", b"secret-note-4712")
    refused = reopened(tmp_path)
    assert "secret" not in refused.words + str(refused)
