"""What is installed runs without the checkout: the programs travel inside the wheel."""

import subprocess
import sys
import zipfile
from pathlib import Path

import pytest

from tests.house.modules import ROOT


@pytest.fixture(scope="module")
def installed(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder that holds the unpacked wheel and nothing else of ours."""
    built = tmp_path_factory.mktemp("built")
    command = [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(built)]
    subprocess.run(command, cwd=ROOT, check=True, capture_output=True)
    (wheel,) = built.glob("*.whl")
    unpacked = tmp_path_factory.mktemp("installed")
    zipfile.ZipFile(wheel).extractall(unpacked)
    return unpacked


def run(
    installed: Path, home: Path, *words: str, typed: str = ""
) -> subprocess.CompletedProcess[str]:
    """Run the unpacked wheel's command far from the checkout."""
    environment = {"PYTHONPATH": str(installed), "HOME": str(home), "TERM": "dumb"}
    return subprocess.run(
        [sys.executable, "-P", *words],
        cwd=home,
        env=environment,
        input=typed,
        capture_output=True,
        text=True,
        check=False,
    )


def test_it_is_the_wheel_that_runs(installed: Path, tmp_path: Path) -> None:
    shown = run(installed, tmp_path, "-c", "import coach; print(coach.__file__)")
    assert shown.stdout.strip() == str(installed / "coach" / "__init__.py")


def test_it_holds_every_program_file_and_no_test(installed: Path) -> None:
    shipped = {path.relative_to(ROOT) for path in (ROOT / "dialogs").rglob("*.yaml")}
    inside = {path.relative_to(installed / "coach") for path in installed.rglob("*.yaml")}
    assert inside == shipped
    assert not list(installed.rglob("test_*.py"))


def test_it_tries_a_session_of_the_invented_athlete(installed: Path, tmp_path: Path) -> None:
    tried = run(installed, tmp_path, "-m", "coach", "try", "--plain", "--quick", typed="yes\n")
    assert tried.returncode == 11, tried.stderr  # the typing ended, and nothing is lost
    assert "D.O." in tried.stdout
    assert not list(tmp_path.iterdir())


def test_it_puts_a_shipped_plan_in_place(installed: Path, tmp_path: Path) -> None:
    plan = installed / "coach" / "dialogs" / "steady-shoulder" / "plans" / "p-s.yaml"
    assert run(installed, tmp_path, "-m", "coach", "check", str(plan)).returncode == 0


def test_its_guides_and_its_editors_schemas_travel_with_it(installed: Path, tmp_path: Path) -> None:
    shown = run(installed, tmp_path, "-m", "coach", "guide", "clinician")
    assert shown.returncode == 0, shown.stderr
    assert shown.stdout.startswith("# Coach for the clinician")
    for file in (installed / "coach" / "dialogs").rglob("*.yaml"):
        first = file.read_text("utf-8").splitlines()[0]
        assert (file.parent / first.partition("$schema=")[2]).is_file(), file
