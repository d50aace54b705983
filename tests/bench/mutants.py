"""Lets every small mistake in the safety core meet the tests, and lists those that no test saw.

Law: a mutant is seen when a test fails; the tests are those of the rule, then those of the session.
Run by hand (`python -m tests.bench.mutants [rule ...]`): it takes minutes and needs a system that forks.
It changes no file.
"""

from __future__ import annotations

import importlib.abc
import importlib.util
import os
import sys
import time
from pathlib import Path
from typing import TYPE_CHECKING, Final

import pytest

from tests.hazards.mutating import mutants

if TYPE_CHECKING:
    from collections.abc import Sequence
    from importlib.machinery import ModuleSpec
    from types import ModuleType

    from tests.hazards.mutating import Mutant

ROOT: Final = Path(__file__).parents[2]
CORE: Final = {
    "red_flags": (
        "tests/rules/test_red_flags.py",
        "tests/published/test_rules_due.py",
        "tests/published/test_rules_flags.py",
    ),
    "hold": ("tests/rules/test_hold.py", "tests/drivers/test_clearing.py"),
    "limits": ("tests/rules/test_limits.py",),
    "pain": ("tests/rules/test_pain.py", "tests/rules/test_cut_points.py"),
}
SESSION: Final = (
    "tests/session/test_safety_talk.py",
    "tests/session/test_training_talk.py",
    "tests/rules/test_reasons.py",
)
ARGUED: Final = ROOT / "tests" / "hazards" / "argued_mutants.txt"
WITHIN_S: Final = 120  # a mutant that hangs the tests is seen; set here


class Changed(importlib.abc.MetaPathFinder, importlib.abc.Loader):
    """Gives one module another source."""

    def __init__(self, name: str, source: str) -> None:
        self.name, self.source = name, source

    def find_spec(
        self,
        fullname: str,
        path: Sequence[str] | None,  # noqa: ARG002 - what every finder is handed
        target: ModuleType | None = None,  # noqa: ARG002 - as path
    ) -> ModuleSpec | None:
        """The module's place, for this one name only."""
        if fullname != self.name:
            return None
        where = ROOT / f"{fullname.replace('.', '/')}.py"
        return importlib.util.spec_from_file_location(fullname, where, loader=self)

    def exec_module(self, module: ModuleType) -> None:
        """Run the changed source as the module."""
        exec(compile(self.source, f"{self.name} changed", "exec"), module.__dict__)  # noqa: S102


def seen(module: str, source: str, tests: tuple[str, ...]) -> bool:
    """Whether a test fails (or none ends in time) while `module` has `source`."""
    child = os.fork()
    if child == 0:
        code = 1
        try:
            quiet = os.open(os.devnull, os.O_WRONLY)
            os.dup2(quiet, 1)
            os.dup2(quiet, 2)
            sys.meta_path.insert(0, Changed(module, source))
            options = ["-x", "-q", "-p", "no:cacheprovider", "-p", "no:randomly"]
            code = int(pytest.main([*options, *tests]))
        finally:
            os._exit(code)
    until = time.monotonic() + WITHIN_S
    while time.monotonic() < until:
        pid, status = os.waitpid(child, os.WNOHANG)
        if pid:
            return os.waitstatus_to_exitcode(status) != 0
        time.sleep(0.02)
    os.kill(child, 9)
    os.waitpid(child, 0)
    return True


def argued() -> dict[str, str]:
    """Survivors that were thought through: `limits: what | why`."""
    lines = ARGUED.read_text("utf-8").splitlines() if ARGUED.is_file() else []
    pairs = [line.partition(" | ") for line in lines if not line.startswith("#")]
    return {what: why for what, bar, why in pairs if bar}


def survivors(rule: str) -> tuple[list[Mutant], int]:
    """The mutants of one rule's file that no test saw, and how many there were."""
    module = f"coach.rules.{rule}"
    source = (ROOT / "coach" / "rules" / f"{rule}.py").read_text("utf-8")
    if seen(module, source, CORE[rule]):
        raise SystemExit(f"The tests of {rule} do not pass as it is.")
    every, left = mutants(source), []
    for number, one in enumerate(every, start=1):
        if not seen(module, one.source, CORE[rule]) and not seen(module, one.source, SESSION):
            left.append(one)
        sys.stderr.write(f"\r{rule}: {number} of {len(every)}, {len(left)} not seen ")
        sys.stderr.flush()
    return left, len(every)


def main(rules: list[str]) -> int:
    """The survivors of each rule; 1 when one is not argued."""
    os.chdir(ROOT)
    os.environ["CI"] = "1"
    reasons, open_ = argued(), 0
    for rule in rules or list(CORE):
        left, tried = survivors(rule)
        for one in left:
            why = reasons.get(f"{rule}: {one.what}", "")
            open_ += not why
            print(f"coach/rules/{rule}.py:{one.line}: {one.what}: {why or 'NOT SEEN'}", flush=True)
        print(f"{rule}: {tried} mutants, {len(left)} not seen by a test", flush=True)
    return 1 if open_ else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
