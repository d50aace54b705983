"""A damaged diary shows what can be read and names the rest; nothing is written to it."""

from __future__ import annotations

import contextlib
import os
import shutil
import sqlite3
from pathlib import Path

import pytest

from coach.drivers.reading import diary_given, kept_rows, plan_of, recorded_of
from coach.journal import Journal, Trouble
from coach.journal.chain import APPLICATION, Row
from coach.journal.diary import FILE_NAME
from coach.journal.whole import Whole, checked, read_since, read_whole
from coach.reports.whole_record import as_lines
from tests.journal import sample
from tests.reports import made_up


def filled(folder: Path, days: int = 3) -> Path:
    sample.filled(folder, days)
    return folder / FILE_NAME


def broken_row(path: Path, number: int) -> None:
    connection = sqlite3.connect(path, isolation_level=None)
    connection.execute("drop trigger record_stays")
    connection.execute('update record set body = \'{"text":"9"}\' where number = ?', (number,))
    connection.close()


def test_a_whole_diary_has_no_damage(tmp_path: Path) -> None:
    whole = read_whole(filled(tmp_path))
    assert whole.damage == ()
    assert [row.number for row in whole.rows] == list(range(1, len(whole.rows) + 1))


def test_a_changed_row_is_named_by_line_and_day_and_the_rest_is_read(tmp_path: Path) -> None:
    path = filled(tmp_path)
    count = len(read_whole(path).rows)
    broken_row(path, 6)
    whole = read_whole(path)
    assert whole.damage == ("line 6, 2026-11-10",)
    assert len(whole.rows) == count - 1


def test_a_row_left_out_is_named(tmp_path: Path) -> None:
    path = filled(tmp_path)
    connection = sqlite3.connect(path, isolation_level=None)
    connection.execute("drop trigger record_kept")
    connection.execute("delete from record where number = 3")
    connection.close()
    assert read_whole(path).damage == ("line 3, 2026-11-09",)


def test_a_day_record_of_another_shape_is_told_as_cut_off_and_named() -> None:
    whole = made_up.ten_weeks()
    days = [row for row in whole.rows if row.sort == "day"]
    odd = days[0]._replace(body='{"day": 3}')
    rows = tuple(odd if row == days[0] else row for row in whole.rows)
    recorded = recorded_of(Whole(rows, ()))
    assert recorded.sessions[0].record is None
    assert recorded.damage == (f"line {odd.number}, 2026-08-31 (the day's record)",)


@pytest.mark.parametrize("cut", [0.2, 0.5, 0.8, 0.95])
def test_a_file_cut_anywhere_is_read_or_refused_calmly(tmp_path: Path, cut: float) -> None:
    path = filled(tmp_path, 30)
    os.truncate(path, int(path.stat().st_size * cut))
    with contextlib.suppress(Trouble):
        assert read_whole(path).damage


def outcome(path: Path, whole: Whole) -> str:
    """What reading a ruined diary came to; never a row that was not there."""
    try:
        found = read_whole(path)
    except Trouble as trouble:
        return f"refused, {trouble.code}"
    assert set(found.rows) <= set(whole.rows)
    assert found.rows == whole.rows or found.damage
    return "read" if found.rows == whole.rows else "named"


@pytest.mark.parametrize("fill", [b"\0", b"\xff"])
def test_any_ruined_page_of_the_file_leaves_the_rest_to_read(tmp_path: Path, fill: bytes) -> None:
    path = filled(tmp_path, 30)
    whole, size, before = read_whole(path), 4096, path.read_bytes()
    outcomes = set()
    for page in range(len(before) // size):
        path.write_bytes(before[: page * size] + fill * size + before[(page + 1) * size :])
        outcomes.add(outcome(path, whole))
    assert outcomes <= {"read", "named", "refused, 65", "refused, 74"}
    assert "named" in outcomes


def test_lines_that_follow_each_other_are_named_as_one() -> None:
    assert checked([1, 2, 3]).damage == ("lines 1 to 3, before the first day",)
    rows = list(made_up.ten_weeks().rows[:6])
    found: list[Row | int] = [rows[0], 2, *rows[2:4], 5, 6]
    assert checked(found).damage == ("lines 2 to 3, 2026-08-31", "lines 5 to 6, 2026-08-31")


def test_an_older_plan_stands_in_for_one_that_cannot_be_read() -> None:
    rows = made_up.ten_weeks().rows
    plans = [row for row in rows if row.sort == "plan"]
    broken = tuple(row._replace(body='{"bound": "x"}') if row == plans[-1] else row for row in rows)
    assert plan_of(broken).plan.version == 1
    none = tuple(row._replace(body="{}") if row.sort == "plan" else row for row in rows)
    with pytest.raises(Trouble) as refused:
        plan_of(none)
    assert refused.value.code == 65
    with pytest.raises(Trouble) as missing:
        plan_of(())
    assert missing.value.code == 66


def test_nothing_is_written_beside_or_into_a_diary_that_is_read(tmp_path: Path) -> None:
    path = filled(tmp_path)
    for side in tmp_path.iterdir():
        if side != path:
            side.unlink()
    before = path.read_bytes()
    read_whole(path)
    assert [one.name for one in tmp_path.iterdir()] == [FILE_NAME]
    assert path.read_bytes() == before


def test_a_diary_in_use_is_read_with_what_is_not_yet_moved_over(tmp_path: Path) -> None:
    with Journal.open(tmp_path) as journal:
        sample.sit(journal, 0)
        assert any(row.sort == "day" for row in read_whole(tmp_path / FILE_NAME).rows)


def test_a_copy_taken_during_a_session_is_read_whole_and_stays_as_it_is(tmp_path: Path) -> None:
    copy = tmp_path / "copy"
    copy.mkdir()
    with Journal.open(tmp_path / "own") as journal:
        sample.sit(journal, 0)
        for name in (FILE_NAME, f"{FILE_NAME}-wal"):
            shutil.copy(tmp_path / "own" / name, copy / name)
    before = {one.name: one.read_bytes() for one in copy.iterdir()}
    assert any(row.sort == "day" for row in read_whole(copy / FILE_NAME).rows)
    assert {one.name: one.read_bytes() for one in copy.iterdir()} == before


def test_reading_from_a_day_on_gives_its_sessions_and_all_plans_and_stops(tmp_path: Path) -> None:
    with Journal.open(tmp_path) as journal:
        journal.keep_plan("{}", "digest", "plan.yaml", sample.instant(0))
        session = journal.begin(sample.HEADER, sample.instant(0), ())
        journal.append(session, "typed", {}, (), sample.instant(0), hold=sample.stop(0))
        journal.lift(1, "in person", "M. Aalto", sample.instant(1), "2026-11-10")
        for number in range(2, 6):
            sample.sit(journal, number)
    path = tmp_path / FILE_NAME
    whole, since = read_whole(path), read_since(path, "2026-11-13")
    kept = [row for row in whole.rows if row.sort in {"plan", "hold", "lift"}]
    later = [row for row in whole.rows if row.session and row.at[:10] >= "2026-11-13"]
    assert list(since.rows) == [*kept, *later]
    assert read_since(path, "2030-01-01").rows == tuple(kept)
    assert read_since(path, "2020-01-01") == whole


def test_damage_in_what_is_read_is_named_from_a_day_on_too(tmp_path: Path) -> None:
    path = filled(tmp_path)
    broken_row(path, 6)
    assert read_since(path, "2026-11-10").damage == ("line 6, 2026-11-10",)


def test_another_programs_file_and_a_newer_diary_are_refused(tmp_path: Path) -> None:
    other = tmp_path / "other.sqlite"
    connection = sqlite3.connect(other)
    connection.execute("create table x (y)")
    connection.close()
    with pytest.raises(Trouble, match="another program") as refused:
        read_whole(other)
    assert refused.value.code == 65
    newer = tmp_path / "newer.sqlite"
    connection = sqlite3.connect(newer)
    connection.executescript(
        f"create table x (y); pragma application_id = {APPLICATION}; pragma user_version = 2;"
    )
    connection.close()
    with pytest.raises(Trouble, match="get a newer Coach"):
        read_whole(newer)


@pytest.mark.parametrize("text", ["", "no diary at all\n", "%PDF-1.7\n", "\x00" * 200])
def test_a_foreign_file_is_refused(tmp_path: Path, text: str) -> None:
    path = tmp_path / "x"
    path.write_text(text)
    with pytest.raises(Trouble) as refused:
        diary_given(path)
    assert refused.value.code in {65, 74}


def test_a_damaged_export_is_shown_as_far_as_it_goes(tmp_path: Path) -> None:
    lines = as_lines(kept_rows(made_up.ten_weeks().rows)).splitlines()
    lines[40] = lines[40].replace("typed", "tyqed")
    lines[50] = "{"
    path = tmp_path / "diary.jsonl"
    path.write_text("\n".join(lines[:-3]) + "\n")
    given = diary_given(path)
    assert len(given.rows) >= len(lines) - 8
    named = [one.split(",")[0] for one in given.recorded.damage]
    assert named[:2] == ["line 40", "lines 50 to 51"]
    assert named[-1] == f"lines {len(lines) - 3} to {len(lines) - 1}"


def test_a_missing_diary_is_told_as_missing(tmp_path: Path) -> None:
    with pytest.raises(Trouble) as refused:
        diary_given(tmp_path)
    assert refused.value.code == 66
