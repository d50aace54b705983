"""Diary, visit, export, forget and a diary taken in, from the command line."""

from __future__ import annotations

import json
import shutil
import sqlite3
from typing import TYPE_CHECKING

import jsonschema
import pexpect
import pytest

from coach.journal import Journal
from coach.journal.diary import FILE_NAME
from coach.model.history import DayRecord, Done, Hold
from coach.reports.visit import INVENTED
from tests.cli.running import D_O, command, days_ago, diary_folder, environment, run, with_plan

if TYPE_CHECKING:
    from pathlib import Path

PLANTED = "zq-planted-5528"


def sit(home: Path, ago: int, hold: Hold | None = None, **changes: object) -> str:
    """One invented session so many days ago; its ISO day."""
    at = days_ago(ago)
    done = Done(
        "reach-across row", 3, True, at, "good", (12.0, 11.0, 10.0), (1.0, 1.0, 2.0),
        "3 sets, 8 to 12 reps, 5 lb dumbbell", 3, ("fine",),
    )  # fmt: skip
    quiet = DayRecord(
        at[:10], at, "done", 1, 1.0, 1.0, 2.0, 7.5, done=(done,), effort=4.0, minutes=25.0
    )
    record = quiet._replace(**changes)  # type: ignore[arg-type]
    with Journal.open(diary_folder(home)) as journal:
        session = journal.begin({}, at, ())
        journal.append(session, "typed", {"text": PLANTED}, (), at, hold=hold, close=record)
    return at[:10]


def with_diary(home: Path, **changes: object) -> None:
    with_plan(home)
    sit(home, 9)
    sit(home, 2, None, **changes)


# ---------------------------------------------------------------- diary


def test_the_diary_shows_the_newest_day_then_the_week(tmp_path: Path) -> None:
    with_diary(tmp_path, notes=('"sore after school"',))
    shown = run(tmp_path, "diary").stdout
    words = " ".join(shown.split())
    assert "Reach-across row: 3 sets, 8 to 12 reps, 5 lb dumbbell; done 12, 11, 10" in words
    assert 'You wrote: "sore after school"' in words
    assert "The last 7 days" in shown
    assert "By 7 days, oldest first" in shown


def test_the_diary_as_json_has_units_in_its_names(tmp_path: Path) -> None:
    with_diary(tmp_path)
    values = json.loads(run(tmp_path, "diary", "--json").stdout)
    assert [day["sleep_h"] for day in values["days"]] == [7.5, 7.5]
    (tmp_path / "none").mkdir()
    assert json.loads(run(tmp_path / "none", "diary", "--json").stdout) == {"days": []}


def test_one_day_of_the_diary(tmp_path: Path) -> None:
    with_plan(tmp_path)
    day = sit(tmp_path, 9)
    sit(tmp_path, 2, sleep_h=5.0)
    shown = run(tmp_path, "diary", "--day", day).stdout
    assert "lept 7.5 h" in shown
    assert "5 h" not in shown.replace("7.5 h", "")
    assert "There is no entry" in run(tmp_path, "diary", "--day", "2020-01-01").stdout


def test_a_day_that_is_none_is_asked_for_in_its_form(tmp_path: Path) -> None:
    with_diary(tmp_path)
    done = run(tmp_path, "diary", "--day", "09/11/2026")
    assert done.returncode == 2
    assert "2026-11-09" in done.stderr
    assert run(tmp_path, "diary", "--day", "2026-11-09", "--weeks", "2").returncode == 2


@pytest.mark.parametrize(("language", "bar"), [("C.UTF-8", "\u2588"), ("POSIX", "=")])
def test_at_a_terminal_pictures_are_drawn_with_what_it_has(
    tmp_path: Path, language: str, bar: str
) -> None:
    with_diary(tmp_path)
    settings = environment(tmp_path) | {"TERM": "vt100", "LC_ALL": language}
    settings |= {"PYTHONUTF8": "0", "PYTHONCOERCECLOCALE": "0"}
    words = command("diary")
    child = pexpect.spawn(
        words[0], words[1:], env=settings, cwd=str(tmp_path), encoding="utf-8", timeout=60
    )
    shown = child.read()
    child.close()
    assert bar * 8 in shown
    assert "7.5" in shown
    assert "\x1b" not in shown


def test_plain_mode_draws_nothing_even_at_a_terminal(tmp_path: Path) -> None:
    with_diary(tmp_path)
    settings = environment(tmp_path) | {"TERM": "vt100", "LC_ALL": "C.UTF-8"}
    words = command("diary", "--plain")
    child = pexpect.spawn(
        words[0], words[1:], env=settings, cwd=str(tmp_path), encoding="utf-8", timeout=60
    )
    shown = child.read()
    child.close()
    assert "\u2588" not in shown
    assert "slept 7.5 hours." in shown


# ---------------------------------------------------------------- visit


def test_a_visit_is_text_on_the_screen_and_a_page_with_its_twin_in_files(tmp_path: Path) -> None:
    with_diary(tmp_path)
    shown = run(tmp_path, "visit")
    assert shown.returncode == 0
    done = run(tmp_path, "visit", "--out", "visit.html")
    assert done.stdout == "Written: visit.html\nWritten: visit.txt\n"
    assert (tmp_path / "visit.txt").read_text("utf-8") == shown.stdout
    for name in ("visit.html", "visit.txt"):
        assert (tmp_path / name).stat().st_mode & 0o777 == 0o600
    assert "<svg" in (tmp_path / "visit.html").read_text("utf-8")


def test_a_visit_since_a_day_leaves_older_ones_out(tmp_path: Path) -> None:
    with_plan(tmp_path)
    sit(tmp_path, 9, notes=('"older words"',))
    sit(tmp_path, 2, notes=('"newer words"',))
    shown = run(tmp_path, "visit", "--since", days_ago(5)[:10]).stdout
    assert "newer words" in shown
    assert "older words" not in shown


@pytest.mark.parametrize("day", ["9999-12-31", "soon"])
def test_a_visit_since_a_day_to_come_is_refused(tmp_path: Path, day: str) -> None:
    with_diary(tmp_path)
    assert run(tmp_path, "visit", "--since", day).returncode == 2


def test_the_sample_visit_needs_no_diary_makes_none_and_says_it_is_invented(
    tmp_path: Path,
) -> None:
    done = run(tmp_path, "visit", "--sample", "--out", "sample.html")
    assert done.returncode == 0
    assert INVENTED in (tmp_path / "sample.html").read_text("utf-8")
    assert INVENTED in (tmp_path / "sample.txt").read_text("utf-8")
    assert not diary_folder(tmp_path).exists()


def test_several_diaries_make_an_overview_and_a_page_each(tmp_path: Path) -> None:
    calm, closed = tmp_path / "calm", tmp_path / "closed"
    for home in (calm, closed):
        home.mkdir()
        with_plan(home, D_O if home is calm else D_O.replace("d-o", "p-s"))
    sit(calm, 2)
    at = days_ago(1)
    sit(closed, 1, Hold(0, "S08", "same day", "numb_tingle", "it tingles", at[:10], at, 1))
    received = []
    for home in (calm, closed):
        file = tmp_path / f"{home.name}.sqlite"
        shutil.copy(diary_folder(home) / FILE_NAME, file)
        received.append(file)
    before = [file.read_bytes() for file in received]
    names = [file.name for file in received]
    done = run(tmp_path, "visit", *names, "--out", "pages")
    assert done.returncode == 0, done.stderr
    text = (tmp_path / "pages" / "overview.txt").read_text("utf-8")
    assert text.index("P.S., right arm (closed.sqlite): The plan is") < text.index("D.O., left arm")
    assert "it tingles" in (tmp_path / "pages" / "01-p-s.html").read_text("utf-8")
    assert (tmp_path / "pages").stat().st_mode & 0o777 == 0o700
    assert [file.read_bytes() for file in received] == before
    assert {p.name for p in tmp_path.iterdir()} == {*names, "calm", "closed", "pages"}
    shown = run(tmp_path, "visit", *names).stdout
    assert shown.startswith("Visits\n")
    assert "Visit: P.S." in shown


def test_one_broken_diary_among_others_is_named_and_the_others_are_shown(tmp_path: Path) -> None:
    with_diary(tmp_path)
    shutil.copy(diary_folder(tmp_path) / FILE_NAME, tmp_path / "good.sqlite")
    (tmp_path / "bad.sqlite").write_text("no diary")
    done = run(tmp_path, "visit", "bad.sqlite", "good.sqlite")
    assert done.returncode == 65
    assert "bad.sqlite: " in done.stdout
    assert "Visit: D.O." in done.stdout


def test_a_newer_diary_is_refused_with_what_to_get(tmp_path: Path) -> None:
    with_diary(tmp_path)
    copy = tmp_path / "newer.sqlite"
    shutil.copy(diary_folder(tmp_path) / FILE_NAME, copy)
    connection = sqlite3.connect(copy)
    connection.execute("pragma user_version = 2")
    connection.close()
    done = run(tmp_path, "visit", "newer.sqlite")
    assert done.returncode == 65
    assert "get a newer Coach" in done.stderr


# ---------------------------------------------------------------- export, taken in, forgotten


def test_a_diary_leaves_and_comes_back_whole_and_once(tmp_path: Path) -> None:
    old, new = tmp_path / "old", tmp_path / "new"
    old.mkdir()
    new.mkdir()
    with_diary(old)
    assert run(old, "export", "--as", "jsonl", "--out", "../d.jsonl").returncode == 0
    assert (tmp_path / "d.jsonl").stat().st_mode & 0o777 == 0o600
    assert run(old, "export", "--as", "jsonl").stdout == (tmp_path / "d.jsonl").read_text()
    done = run(new, "use", "--diary", "../d.jsonl")
    assert done.returncode == 0, done.stderr
    assert run(new, "visit").stdout == run(old, "visit").stdout
    again = run(new, "use", "--diary", "../d.jsonl")
    assert again.returncode == 65
    assert "nothing was taken in" in again.stderr
    assert run(new, "diary").stdout == run(old, "diary").stdout


def test_a_plan_given_as_a_diary_is_refused_and_use_needs_one_of_both(tmp_path: Path) -> None:
    assert run(tmp_path, "use", "--diary", D_O).returncode == 65
    assert run(tmp_path, "use", "--diary", "none.jsonl").returncode == 66
    assert run(tmp_path, "use", "--diary", "x", "y").returncode == 2


def test_every_format_leaves(tmp_path: Path) -> None:
    with_diary(tmp_path)
    bundle = json.loads(run(tmp_path, "export", "--as", "fhir").stdout)
    assert bundle["resourceType"] == "Bundle"
    assert "D.O." not in json.dumps(bundle)
    named = run(tmp_path, "export", "--as", "fhir", "--with-initials").stdout
    assert "D.O." in named
    assert run(tmp_path, "export", "--as", "ics").stdout.startswith("BEGIN:VCALENDAR")
    assert run(tmp_path, "export", "--as", "csv").returncode == 2
    assert run(tmp_path, "export", "--as", "csv", "--out", "tables").returncode == 0
    assert "days.csv" in {path.name for path in (tmp_path / "tables").iterdir()}
    assert run(tmp_path, "export", "--as", "pdf").returncode == 2


def test_the_schema_of_the_record_needs_no_diary_and_fits_the_record(tmp_path: Path) -> None:
    schema = json.loads(run(tmp_path, "export", "--as", "schema").stdout)
    with_diary(tmp_path)
    for line in run(tmp_path, "export", "--as", "jsonl").stdout.splitlines():
        jsonschema.Draft202012Validator(schema).validate(json.loads(line))


def test_an_export_without_a_diary_says_so(tmp_path: Path) -> None:
    for kind in ("jsonl", "fhir", "ics"):
        done = run(tmp_path, "export", "--as", kind)
        assert done.returncode == 66
        assert done.stdout == ""


def test_after_forget_no_file_holds_what_was_typed(tmp_path: Path) -> None:
    with_diary(tmp_path)
    kept = run(tmp_path, "forget", typed="no\nno\n")
    assert kept.returncode == 11
    gone = run(tmp_path, "forget", typed="no\nforget\n")
    assert gone.returncode == 0, gone.stderr
    files = [path for path in tmp_path.rglob("*") if path.is_file()]
    assert not [path for path in files if PLANTED.encode() in path.read_bytes()]
    assert not diary_folder(tmp_path).exists()
    assert "Nothing is kept" in run(tmp_path, "forget").stdout
