"""A hostile file is refused by the whole command in little room and without waiting for it."""

from __future__ import annotations

import resource
import subprocess
import sys
import time
from pathlib import Path

import pytest

from coach.texts.doors import check_paths
from tests.bench.hostile import hostile_files
from tests.cli.running import run

MORE_BYTES = 50 * 1024 * 1024
MOST_S = 0.2
KINDS = ["300-mb", "alias-bomb", "brackets", "lone-surrogate", "nul", "pipe"]

if not Path("/proc/self/status").exists():
    pytest.skip("the room of a process is read from /proc", allow_module_level=True)


@pytest.fixture(scope="module")
def bare_bytes() -> int:
    """The address room that an interpreter takes which does nothing."""
    show = "print(open('/proc/self/status').read())"
    shown = subprocess.run([sys.executable, "-c", show], capture_output=True, text=True, check=True)
    line = next(line for line in shown.stdout.splitlines() if line.startswith("VmPeak:"))
    return int(line.split()[1]) * 1024


@pytest.fixture
def hostile(tmp_path: Path) -> dict[str, tuple[Path, str]]:
    return {file.stem: (file, check) for file, check in hostile_files(tmp_path / "files").items()}


def test_all_kinds_are_walked(hostile: dict[str, tuple[Path, str]]) -> None:
    assert sorted(hostile) == KINDS


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("words", [("check",), ("use",)])
def test_it_is_refused_in_little_room(
    words: tuple[str, ...],
    kind: str,
    hostile: dict[str, tuple[Path, str]],
    bare_bytes: int,
    tmp_path: Path,
) -> None:
    file, check = hostile[kind]
    most = bare_bytes + MORE_BYTES

    def little_room() -> None:
        resource.setrlimit(resource.RLIMIT_AS, (most, most))

    done = run(tmp_path, *words, str(file), before=little_room)
    assert done.returncode == (1 if words == ("check",) else 65)
    assert f"error {check}" in done.stdout + done.stderr
    assert "Traceback" not in done.stderr


@pytest.mark.parametrize("kind", KINDS)
def test_it_is_refused_at_once(kind: str, hostile: dict[str, tuple[Path, str]]) -> None:
    file, check = hostile[kind]
    started = time.process_time()
    found = [finding.id for finding in check_paths([file])]
    assert time.process_time() - started < MOST_S
    assert found == [check]


def test_the_little_room_is_too_little_for_a_file_that_is_read(
    bare_bytes: int, tmp_path: Path
) -> None:
    """So that the limit above is known to bite: the same room cannot hold 300 MB."""
    most = bare_bytes + MORE_BYTES
    limit = f"import resource; resource.setrlimit(resource.RLIMIT_AS, ({most}, {most}))"
    done = subprocess.run(
        [sys.executable, "-c", f"{limit}; bytearray(300 * 1024 * 1024)"],
        capture_output=True,
        text=True,
        check=False,
        cwd=tmp_path,
    )
    assert "MemoryError" in done.stderr
