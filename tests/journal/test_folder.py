"""Where the diary lives, who may read it, one writer, full and closed disks."""

from __future__ import annotations

import os
import resource
import stat
import subprocess
import sys
from pathlib import Path

import pytest

from coach.journal import Journal, Trouble, data_folder, throwaway
from coach.journal.outgoing import write_whole
from tests.journal.sample import HEADER, filled, instant, sit

ROOT = Path(__file__).parents[2]


@pytest.mark.parametrize(
    ("environ", "folder"),
    [
        ({"HOME": "/h", "XDG_DATA_HOME": "/d"}, "/d/coach"),
        ({"HOME": "/h", "XDG_DATA_HOME": ""}, "/h/.local/share/coach"),
        ({"HOME": "/h", "XDG_DATA_HOME": "rel/ative"}, "/h/.local/share/coach"),
        ({"HOME": "/h"}, "/h/.local/share/coach"),
    ],
)
def test_the_folder_follows_the_users_settings(environ: dict[str, str], folder: str) -> None:
    assert data_folder(environ) == Path(folder)


@pytest.mark.parametrize("environ", [{}, {"HOME": ""}, {"HOME": "here"}])
def test_no_home_is_said_calmly(environ: dict[str, str]) -> None:
    with pytest.raises(Trouble) as caught:
        data_folder(environ)
    assert caught.value.code == 73


@pytest.mark.parametrize("umask", [0o000, 0o022, 0o077])
@pytest.mark.hazard("H-19")
def test_folder_and_files_are_for_their_owner_only(tmp_path: Path, umask: int) -> None:
    folder = tmp_path / "a" / "coach"
    before = os.umask(umask)
    try:
        with Journal.open(folder) as journal:
            sit(journal, 0)
            modes = {path.name: stat.S_IMODE(path.stat().st_mode) for path in folder.iterdir()}
    finally:
        assert os.umask(before) == umask
    assert modes.keys() == {"diary.sqlite", "diary.sqlite-wal", "diary.sqlite-shm", "in-use"}
    assert set(modes.values()) == {0o600}
    assert stat.S_IMODE(folder.stat().st_mode) == 0o700


def test_a_folder_left_open_to_others_is_closed(tmp_path: Path) -> None:
    filled(tmp_path, 1)
    tmp_path.chmod(0o755)
    (tmp_path / "diary.sqlite").chmod(0o644)
    filled(tmp_path, 1)
    assert stat.S_IMODE(tmp_path.stat().st_mode) == 0o700
    assert stat.S_IMODE((tmp_path / "diary.sqlite").stat().st_mode) == 0o600


HOLDER = """
import sys
from pathlib import Path
from coach.journal import Journal
with Journal.open(Path(sys.argv[1])):
    print("open", flush=True)
    sys.stdin.read()
"""


@pytest.mark.hazard("H-06")
def test_a_second_writer_is_refused_by_name_and_free_after_a_kill(tmp_path: Path) -> None:
    command = [sys.executable, "-c", HOLDER, str(tmp_path)]
    with subprocess.Popen(
        command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, cwd=ROOT
    ) as child:
        assert child.stdout is not None
        assert child.stdout.readline() == "open\n"
        with pytest.raises(Trouble) as caught:
            Journal.open(tmp_path)
        assert caught.value.code == 75
        assert str(child.pid) in caught.value.words
        Journal.open(tmp_path, write=False).close()
        child.kill()
    with Journal.open(tmp_path) as journal:
        assert journal.unfinished() is None


def test_reading_makes_no_diary(tmp_path: Path) -> None:
    with pytest.raises(Trouble) as caught:
        Journal.open(tmp_path / "coach", write=False)
    assert caught.value.code == 66
    assert not (tmp_path / "coach").exists()


def test_reading_cannot_write(tmp_path: Path) -> None:
    filled(tmp_path, 1)
    with Journal.open(tmp_path, write=False) as journal, pytest.raises(Trouble) as caught:
        journal.begin(HEADER, instant(5), ())
    assert caught.value.code == 77


@pytest.mark.hazard("H-06")
def test_a_full_disk_keeps_what_was_saved(tmp_path: Path) -> None:
    filled(tmp_path, 1)
    limits = resource.getrlimit(resource.RLIMIT_FSIZE)
    with Journal.open(tmp_path) as journal:
        session = journal.begin(HEADER, instant(1), ())
        journal.append(session, "typed", {"n": 0}, (), instant(1))
        resource.setrlimit(resource.RLIMIT_FSIZE, (200_000, limits[1]))
        try:
            with pytest.raises(Trouble) as caught:
                journal.append(session, "typed", {"text": "x" * 500_000}, (), instant(1))
        finally:
            resource.setrlimit(resource.RLIMIT_FSIZE, limits)
        assert caught.value.code == 74
        journal.append(session, "typed", {"n": 1}, (), instant(1))
    with Journal.open(tmp_path) as journal:
        cut = journal.unfinished()
        assert cut is not None
        assert [body["n"] for _kind, body, _at in cut.events] == [0, 1]
        journal.verify()


# 65534 is the usual number of the user with no rights (from memory).
TRY = """
import os, sys
from pathlib import Path
from coach.journal import Journal, Trouble
os.setgid(65534); os.setuid(65534)
try:
    Journal.open(Path(sys.argv[1]))
except Trouble as trouble:
    print(trouble.words)
    sys.exit(trouble.code)
"""


@pytest.mark.skipif(os.geteuid() != 0, reason="needs to become a user without rights")
def test_a_folder_of_another_user_is_refused() -> None:
    with throwaway() as outer:
        outer.chmod(0o755)
        filled(outer / "coach", 1)
        command = [sys.executable, "-c", TRY, str(outer / "coach")]
        tried = subprocess.run(command, capture_output=True, text=True, check=False, cwd=ROOT)
    assert tried.returncode == 77, tried.stderr
    assert "write" in tried.stdout


def test_a_throwaway_folder_is_gone_afterwards() -> None:
    with throwaway() as folder:
        filled(folder / "coach", 1)
        assert (folder / "coach" / "diary.sqlite").exists()
    assert not folder.exists()


def test_a_file_that_leaves_is_whole_and_for_its_owner_only(tmp_path: Path) -> None:
    path = tmp_path / "out.txt"
    path.write_text("old")
    write_whole(path, "new \u00e9")
    assert path.read_text(encoding="utf-8") == "new \u00e9"
    assert stat.S_IMODE(path.stat().st_mode) == 0o600
    assert [entry.name for entry in tmp_path.iterdir()] == ["out.txt"]


def test_a_full_disk_leaves_the_old_file(tmp_path: Path) -> None:
    path = tmp_path / "out.txt"
    path.write_text("old")
    limits = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (1_000, limits[1]))
    try:
        with pytest.raises(Trouble) as caught:
            write_whole(path, "x" * 5_000)
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, limits)
    assert caught.value.code == 74
    assert path.read_text() == "old"
    assert [entry.name for entry in tmp_path.iterdir()] == ["out.txt"]


def test_a_missing_folder_for_a_file_is_said(tmp_path: Path) -> None:
    with pytest.raises(Trouble) as caught:
        write_whole(tmp_path / "nowhere" / "out.txt", "x")
    assert caught.value.code == 73
