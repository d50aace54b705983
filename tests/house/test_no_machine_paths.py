"""Nothing in the project points at one machine or one package server."""

import re
import subprocess
from pathlib import Path

import pytest

from tests.house.modules import ROOT

# Written so that this page does not find itself.
FOLDERS = r"work|tmp|root|home/[a-z]|Users/[A-Za-z]|opt/[a-z]|var/[a-z]"
ON_A_MACHINE = re.compile(rf"(?<![\w.~}})/-])/({FOLDERS})\b")
HOSTS = r"pypi\.org|pythonhosted\.org|npmjs\.(org|com)|debian\.org"
ON_A_SERVER = re.compile(rf"({HOSTS})|--(extra-)?index[-]url|--find[-]links")


def faults(text: str) -> list[str]:
    """Every line that names a machine's own folder or a package server."""
    return [
        f"{number}: {line.strip()}"
        for number, line in enumerate(text.splitlines(), start=1)
        if ON_A_MACHINE.search(line) or ON_A_SERVER.search(line)
    ]


def our_files() -> list[Path]:
    """What is kept of this checkout; in an unpacked archive, all that is not hidden."""
    listed = subprocess.run(
        ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    names = [name for name in listed.stdout.split("\0") if name]
    if not names:
        shown = (path.relative_to(ROOT) for path in ROOT.rglob("*"))
        names = [str(path) for path in shown if not any(p.startswith(".") for p in path.parts)]
    return [ROOT / name for name in names if (ROOT / name).is_file()]


def test_no_file_points_at_a_machine_or_a_server() -> None:
    found = {
        str(path.relative_to(ROOT)): faults(path.read_text("utf-8", errors="replace"))
        for path in our_files()
    }
    assert {name: lines for name, lines in found.items() if lines} == {}


@pytest.mark.parametrize(
    "line",
    [
        "cd /" + "work/main",
        'open("/' + 'tmp/x")',
        "PATH=/" + "root/.local/bin",
        "see https://py" + "pi.org/simple",
        "pip install --index" + "-url x",
    ],
)
def test_a_made_up_path_or_server_is_found(line: str) -> None:
    assert len(faults(line)) == 1


@pytest.mark.parametrize("line", ["work/rest", "~/.local/share", "reps and/or work", "a/tmp/b"])
def test_other_slashes_are_no_path(line: str) -> None:
    assert faults(line) == []
