"""Every check in one run, in the order in which they are quickest to fail.

Law: this is the one list of checks; `make test`, the plain commands of the README and CI all run it.
Each step runs as its own process; the run fails if any step failed, and says which.
"""

from __future__ import annotations

import subprocess
import sys
import time
from pathlib import Path

TOP = Path(__file__).resolve().parent.parent
BIN = Path(sys.executable).parent
GATES = "coach.rules.red_flags,coach.rules.hold,coach.rules.limits"

STEPS: tuple[tuple[str, list[str]], ...] = (
    ("format", ["ruff", "format", "--check", "coach", "tests"]),
    ("lint", ["ruff", "check", "coach", "tests"]),
    ("types", ["mypy", "coach", "tests"]),
    ("the sample program", ["coach", "check", "dialogs"]),
    ("scenarios", ["coach", "replay", "scenarios"]),
    (
        "both hazards' gates, every branch",
        [
            "pytest",
            "tests/rules",
            *(f"--cov={name}" for name in GATES.split(",")),
            "--cov-branch",
            "--cov-fail-under=100",
        ],
    ),
    ("tests", ["pytest", "tests"]),
)


def run(name: str, command: list[str]) -> bool:
    """Run one step from the top of the checkout; its output is shown as it comes."""
    print(f"== {name}", flush=True)
    began = time.monotonic()
    done = subprocess.run([BIN / command[0], *command[1:]], cwd=TOP, check=False)
    words = "ok" if done.returncode == 0 else f"FAILED with {done.returncode}"
    print(f"== {name}: {words}, {time.monotonic() - began:.0f} s", flush=True)
    return done.returncode == 0


def main() -> int:
    """0 when every step passed, else 1."""
    failed = [name for name, command in STEPS if not run(name, command)]
    if failed:
        print(f"Failed: {', '.join(failed)}.")
        return 1
    print(f"All {len(STEPS)} checks passed.")
    return 0


if __name__ == "__main__":
    sys.exit(main())
