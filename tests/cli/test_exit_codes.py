"""Every documented exit code is reached, each with one calm sentence and no traceback."""

from __future__ import annotations

import os
import resource
import signal
import subprocess
import sys
from typing import TYPE_CHECKING

import pytest

from coach.drivers.exit_codes import MEANING
from coach.journal import Journal
from tests.cli.running import (
    D_O,
    command,
    diary_folder,
    environment,
    run,
    with_closed_plan,
    with_plan,
)

if TYPE_CHECKING:
    from pathlib import Path


def calm(done: subprocess.CompletedProcess[str]) -> bool:
    return "Traceback" not in done.stdout + done.stderr and done.stderr.count("\n") <= 4


def test_help_names_every_code(tmp_path: Path) -> None:
    shown = run(tmp_path, "help", "codes").stdout
    assert [int(line.split()[0]) for line in shown.splitlines()[1:]] == list(MEANING)


def test_0_a_plan_put_in_place_and_an_empty_diary(tmp_path: Path) -> None:
    assert run(tmp_path, "diary").returncode == 0
    done = run(tmp_path, "use", D_O)
    assert done.returncode == 0
    assert "left arm" in done.stdout


def test_1_check_finds_an_error(tmp_path: Path) -> None:
    broken = tmp_path / "broken.yaml"
    broken.write_text("plan: D.O. 1\nside: left\n")
    done = run(tmp_path, "check", str(broken))
    assert done.returncode == 1
    assert "broken.yaml:1" in done.stdout


@pytest.mark.parametrize(
    ("words", "meant"),
    [
        (["diray"], "coach diary"),
        (["chekc"], "coach check"),
        (["--plian"], "coach"),
        (["diary", "--weeks", "0"], "whole number"),
        (["use"], "FILE"),
        (["try", "--quik"], "--quik"),
        (["hear", "a", "--asked", "mood"], "mood"),
    ],
)
def test_2_wrong_usage_names_the_nearest_command(
    tmp_path: Path, words: list[str], meant: str
) -> None:
    done = run(tmp_path, *words)
    assert done.returncode == 2
    assert meant in done.stderr
    assert calm(done)


def test_10_a_closed_plan_stays_closed_at_end_of_input(tmp_path: Path) -> None:
    with_closed_plan(tmp_path)
    done = run(tmp_path, "clear")
    assert done.returncode == 10
    assert "555 0134" in done.stdout


def test_65_a_broken_plan_is_not_put_in_place(tmp_path: Path) -> None:
    broken = tmp_path / "broken.yaml"
    broken.write_text("plan: D.O. 1\nside: left\n")
    done = run(tmp_path, "use", str(broken))
    assert done.returncode == 65
    assert "broken.yaml:1" in done.stdout
    assert not diary_folder(tmp_path).exists()


def test_66_no_plan_says_how_to_get_one(tmp_path: Path) -> None:
    done = run(tmp_path)
    assert done.returncode == 66
    assert "coach use FILE" in done.stderr


@pytest.mark.parametrize("columns", [40, 80])
def test_messages_fit_the_window(tmp_path: Path, columns: int) -> None:
    for words in ([], ["diray"], ["use", "nowhere-to-be-found.yaml"]):
        done = run(tmp_path, *words, COLUMNS=str(columns))
        assert max(map(len, (done.stdout + done.stderr).splitlines())) <= columns - 1


def test_66_a_missing_file(tmp_path: Path) -> None:
    done = run(tmp_path, "use", "nowhere.yaml")
    assert done.returncode == 66
    assert "nowhere.yaml" in done.stderr


OUR_FAULT = """
import sys
from coach import cli
def broken(**_options):
    raise RuntimeError("secret answer 4711")
cli.todays_session = broken
sys.exit(cli.main(["--plain"]))
"""


def test_70_a_fault_of_ours_ends_the_day_and_tells_no_answer(tmp_path: Path) -> None:
    done = subprocess.run(
        [sys.executable, "-c", OUR_FAULT],
        capture_output=True,
        text=True,
        check=False,
        env=environment(tmp_path),
    )
    assert done.returncode == 70
    assert "Stop for today" in done.stderr
    assert "not yours" in " ".join(done.stderr.split())
    assert "4711" not in done.stdout + done.stderr
    assert "Traceback" not in done.stderr


def test_73_a_data_folder_that_cannot_be_made(tmp_path: Path) -> None:
    (tmp_path / "data").write_text("a file where the folder would be")
    done = run(tmp_path)
    assert done.returncode == 73
    assert calm(done)


@pytest.mark.parametrize("size", [0, 4_096, 20_000])
def test_74_a_full_disk_keeps_what_was_there(tmp_path: Path, size: int) -> None:
    with_plan(tmp_path)
    with Journal.open(diary_folder(tmp_path)) as journal:
        before = journal.current_plan()

    def fill() -> None:
        resource.setrlimit(resource.RLIMIT_FSIZE, (size, size))

    done = run(tmp_path, "use", D_O, before=fill)
    assert done.returncode in {73, 74}
    assert "no exercise is shown" in done.stderr
    assert calm(done)
    with Journal.open(diary_folder(tmp_path)) as journal:
        assert journal.current_plan() == before
        journal.verify()


def test_74_output_that_cannot_be_written(tmp_path: Path) -> None:
    with open("/dev/full", "w") as full:  # noqa: PTH123 - a device, not a path to read
        done = subprocess.run(
            command("help"), stdout=full, stderr=subprocess.PIPE, check=False,
            env=environment(tmp_path), cwd=tmp_path,
        )  # fmt: skip
    assert done.returncode == 74
    assert b"Traceback" not in done.stderr


def test_74_output_that_is_closed(tmp_path: Path) -> None:
    for words in ([], ["help"]):
        shell = f"exec '{sys.executable}' -m coach {' '.join(words)} >&-"
        done = subprocess.run(
            ["/bin/sh", "-c", shell], stderr=subprocess.PIPE, check=False,
            env=environment(tmp_path), cwd=tmp_path,
        )  # fmt: skip
        assert done.returncode == 74
        assert done.stderr == b""


def test_74_a_damaged_diary_shows_no_exercise(tmp_path: Path) -> None:
    with_plan(tmp_path)
    (diary_folder(tmp_path) / "diary.sqlite").write_bytes(b"nothing like a diary" * 999)
    done = run(tmp_path)
    assert done.returncode == 74
    assert "damaged" in done.stderr
    assert calm(done)


def test_75_a_second_session_is_told_who_has_the_diary(tmp_path: Path) -> None:
    with_closed_plan(tmp_path)
    with waiting(tmp_path) as first:
        done = run(tmp_path)
        assert done.returncode == 75
        assert str(first.pid) in done.stderr
        assert calm(done)
        first.kill()


@pytest.mark.skipif(os.geteuid() != 0, reason="needs to become a user without rights")
def test_77_a_diary_of_another_user(tmp_path: Path) -> None:
    with_plan(tmp_path)
    program = (
        "import contextlib, io, os, shutil, signal, sys, textwrap; from coach import cli, journal; "
    )
    program += "os.setgid(65534); os.setuid(65534); sys.exit(cli.main([]))"
    done = subprocess.run(
        [sys.executable, "-c", program],
        capture_output=True,
        text=True,
        check=False,
        env=environment(tmp_path),
    )
    assert done.returncode == 77
    assert calm(done)


def waiting(home: Path) -> subprocess.Popen[str]:
    """`coach clear`, at its question."""
    child = subprocess.Popen(
        command("clear"), stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE,
        text=True, env=environment(home), cwd=home,
    )  # fmt: skip
    assert child.stdout is not None
    while "closed since" not in child.stdout.readline():
        pass
    child.stdout.read(1)  # the question has begun
    return child


@pytest.mark.parametrize(
    ("number", "code"), [(signal.SIGINT, 130), (signal.SIGTERM, 143), (signal.SIGHUP, 129)]
)
def test_signals_leave_the_diary_whole_and_free(tmp_path: Path, number: int, code: int) -> None:
    with_closed_plan(tmp_path)
    with waiting(tmp_path) as child:
        child.send_signal(number)
        _out, err = child.communicate(timeout=30)
        assert child.returncode == code
        assert "Traceback" not in err
    with Journal.open(diary_folder(tmp_path)) as journal:
        assert journal.open_hold() is not None
        journal.verify()
