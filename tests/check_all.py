"""Runs every check of this checkout, one after the other, and ends with 1 if any of them failed.

Law: this is the one list of checks; `make test` and the plain commands in README both run it. A
check that passes says one line; one that fails shows all it said. No check is skipped because an
earlier one failed.
"""

import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from typing import NamedTuple

ROOT = Path(__file__).resolve().parent.parent

# Where a wrong line would let a hurt athlete train: every branch is taken by the rules' own tests.
GATED = "coach/rules/red_flags*.py,coach/rules/flag_table.py,coach/rules/limits*.py,coach/rules/hold*.py"


# One file stays in one process, since some share what they set up.
TWO_AT_A_TIME = ("-n", "2", "--dist", "loadfile")


class Check(NamedTuple):
    """One check: its heading, and the commands that must all end with 0."""

    heading: str
    commands: list[list[str]]
    shown: bool = False  # its output is printed as it comes


def checks(scratch: Path) -> list[Check]:
    """All checks in the order in which a mistake is cheapest to find; `scratch` is thrown away."""
    python = sys.executable
    counting = ["-m", "coverage", "run", f"--data-file={scratch / 'counted'}", f"--include={GATED}"]
    counted = ["-m", "coverage", "report", f"--data-file={scratch / 'counted'}"]
    rule_tests = ["-m", "pytest", "-q", "--no-header", "tests/rules"]
    return [
        Check("format", [[python, "-m", "ruff", "format", "--check", "--quiet"]]),
        Check("lint", [[python, "-m", "ruff", "check", "--quiet"]]),
        Check("types", [[python, "-m", "mypy", "--no-error-summary"]]),
        Check("programs", [[python, "-m", "coach", "check", "dialogs"]]),
        Check("scenarios", [[python, "-m", "coach", "replay", "scenarios"]]),
        Check("tests", [[python, "-m", "pytest", "-q", *TWO_AT_A_TIME]], shown=True),
        Check(
            "every branch of red flags, limits and hold",
            [
                [python, *counting, *rule_tests],
                [python, *counted, f"--include={GATED}", "--fail-under=100"],
            ],
        ),
        Check("seasons of 120 days", [[python, "tests/bench/seasons.py"]], shown=True),
    ]


def passes(check: Check, environment: dict[str, str]) -> bool:
    """Run one check and say how it went."""
    if check.shown:
        print(f"{check.heading}:", flush=True)
    started = time.monotonic()
    said: list[str] = []
    good = all(
        ran_well(command, said, environment, shown=check.shown) for command in check.commands
    )
    if not good and not check.shown:
        print("".join(said), end="")
    took = time.monotonic() - started
    print(f"{check.heading}: {'passed' if good else 'FAILED'}, {took:.0f} s", flush=True)
    return good


def ran_well(
    command: list[str], said: list[str], environment: dict[str, str], *, shown: bool
) -> bool:
    """Run one command to its end; what it says is printed at once, or kept in `said`."""
    with subprocess.Popen(
        command,
        cwd=ROOT,
        env=environment,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        encoding="utf-8",
        errors="replace",
    ) as running:
        assert running.stdout is not None
        for line in running.stdout:
            if shown:
                print(line, end="", flush=True)
            else:
                said.append(line)
    return running.returncode == 0


def main() -> int:
    """Run all; 0 when every check passed."""
    with tempfile.TemporaryDirectory() as scratch:
        environment = os.environ | {"XDG_DATA_HOME": str(Path(scratch) / "data")}
        results = [passes(check, environment) for check in checks(Path(scratch))]
    print(f"Checks: {results.count(True)} passed, {results.count(False)} failed")
    return 0 if all(results) else 1


if __name__ == "__main__":
    sys.exit(main())
