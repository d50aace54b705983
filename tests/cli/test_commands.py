"""What the commands around a session show."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING

import pytest

from tests.cli.running import D_O, days_ago, run, with_closed_plan, with_plan

if TYPE_CHECKING:
    from pathlib import Path

COMMANDS = (
    *("use", "clear", "diary", "try", "check", "bind", "replay", "hear", "compare", "map"),
    *("sheet", "forecast", "visit", "export", "forget", "guide", "new", "record", "prove"),
)


@pytest.mark.parametrize("words", [["--help"], ["-h"], ["help"], ["help", "unknown"]])
def test_the_overview_fits_one_screen_of_forty_columns(tmp_path: Path, words: list[str]) -> None:
    done = run(tmp_path, *words)
    assert done.returncode == 0
    lines = done.stdout.splitlines()
    assert len(lines) <= 23
    assert max(map(len, lines)) <= 39
    for name in COMMANDS:
        assert f"coach {name}" in done.stdout


@pytest.mark.parametrize("name", COMMANDS)
def test_each_command_has_an_example_and_fits_forty_columns(tmp_path: Path, name: str) -> None:
    done = run(tmp_path, name, "--help", COLUMNS="40")
    assert done.returncode == 0
    assert f"Example:\n  coach {name}" in done.stdout
    assert max(map(len, done.stdout.splitlines())) <= 40
    assert run(tmp_path, "help", name, COLUMNS="40").stdout == done.stdout


def test_the_version_says_what_it_is_for_and_is_not(tmp_path: Path) -> None:
    shown = run(tmp_path, "--version").stdout
    assert "Meant for:" in shown
    assert "Not meant for:" in shown
    assert "emergencies" in shown


def test_the_first_words_come_before_anything_else_is_loaded(tmp_path: Path) -> None:
    done = run(tmp_path)
    assert done.stdout.splitlines()[0] == "Coach is opening your plan."


def test_check_is_quiet_when_all_is_well(tmp_path: Path) -> None:
    done = run(tmp_path, "check", D_O)
    assert (done.returncode, done.stdout, done.stderr) == (0, "", "")


def test_check_gives_json(tmp_path: Path) -> None:
    assert json.loads(run(tmp_path, "check", "--json", D_O).stdout) == []
    (tmp_path / "broken.yaml").write_text("plan: D.O. 1\nside: left\n")
    found = json.loads(run(tmp_path, "check", "--json", "broken.yaml").stdout)
    assert found[0]["line"] == 1


def test_hear_explains_one_answer(tmp_path: Path) -> None:
    done = run(tmp_path, "hear", "about a 3", "--asked", "pain_now")
    assert done.returncode == 0
    assert "3" in done.stdout


def test_hear_reads_rows_and_writes_rows(tmp_path: Path) -> None:
    rows = [{"id": "a", "q": "pain_now", "text": "2"}, {"id": "b", "q": "note", "text": "\udc80"}]
    typed = "\n".join(map(json.dumps, rows)) + "\n\n"
    done = run(tmp_path, "hear", typed=typed)
    out = [json.loads(line) for line in done.stdout.splitlines()]
    assert [row["id"] for row in out] == ["a", "b"]
    assert out[0]["value"] == {"pain": 2}


@pytest.mark.parametrize("line", ["secret 4711", "[1", "3", '"4711"', "[" * 100_000])
def test_hear_stops_at_a_line_that_is_no_row_without_repeating_it(
    tmp_path: Path, line: str
) -> None:
    done = run(tmp_path, "hear", typed=line + "\n")
    assert done.returncode == 65
    assert "Line 1" in done.stderr
    assert "4711" not in done.stdout + done.stderr
    assert "Traceback" not in done.stderr


def test_a_closed_plan_is_opened_in_person_and_the_diary_shows_the_stop(tmp_path: Path) -> None:
    with_closed_plan(tmp_path)
    done = run(tmp_path, "clear", typed=f"in person\n{days_ago(1)[:10]}\nM. Aalto\n")
    assert done.returncode == 0, done.stdout + done.stderr
    listed = run(tmp_path, "diary", "--weeks", "1")
    assert 'code S08. You typed: "tingles"' in listed.stdout


def test_any_bytes_typed_to_clear_are_only_a_wrong_word_that_is_waited_for(tmp_path: Path) -> None:
    with_closed_plan(tmp_path)
    done = run(tmp_path, "clear", typed=b"\xff\xfe\x00\x1b[2J" + b"x" * 1_000_000 + b"\n")
    assert done.returncode == 10
    assert "in 5 seconds" in done.stdout
    assert "Traceback" not in done.stderr
    assert "\x1b" not in done.stdout + done.stderr


def test_hostile_letters_in_the_diary_reach_no_screen(tmp_path: Path) -> None:
    with_closed_plan(tmp_path, "\x1b]0;x\x07 \x9b31m \u202eabc pain [/5] [rest] \udc80")
    shown = run(tmp_path, "diary", "--weeks", "1").stdout
    assert "pain [/5] [rest]" in shown
    assert not {"\x1b", "\x07", "\x9b", "\u202e"} & set(shown)


def test_a_plan_of_another_athlete_changes_nothing(tmp_path: Path) -> None:
    with_plan(tmp_path)
    done = run(tmp_path, "use", D_O.replace("d-o", "p-s"))
    assert done.returncode == 65
    assert "P.S." in done.stdout


def test_a_bound_plan_is_used_and_one_of_its_words_opens_a_stop(tmp_path: Path) -> None:
    made = run(tmp_path, "bind", D_O, "--out", "d-o.txt")
    assert made.returncode == 0
    words = [line.strip() for line in made.stdout.splitlines() if line.startswith("  ")]
    assert len(words) == 10
    bound = (tmp_path / "d-o.txt").read_text()
    assert not any(word in bound for word in words)
    with_closed_plan(tmp_path)
    assert run(tmp_path, "use", "d-o.txt").returncode == 10
    done = run(tmp_path, "clear", typed=f"{words[3]}\n")
    assert done.returncode == 0, done.stdout


def test_a_bound_plan_with_one_changed_byte_is_refused(tmp_path: Path) -> None:
    run(tmp_path, "bind", D_O, "--out", "d-o.txt")
    file = tmp_path / "d-o.txt"
    file.write_text(file.read_text().replace("2 lb", "3 lb", 1))
    done = run(tmp_path, "use", "d-o.txt")
    assert done.returncode == 65
    assert "changed" in done.stdout


def test_bind_without_a_file_keeps_the_words_out_of_the_bound_text(tmp_path: Path) -> None:
    made = run(tmp_path, "bind", D_O)
    words = [line.strip() for line in made.stderr.splitlines() if line.startswith("  ")]
    assert len(words) == 10
    assert made.stdout.startswith("bound plan: D.O. 1\n")
    assert not any(word in made.stdout for word in words)
