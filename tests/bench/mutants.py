"""Lets every small mistake in the safety core meet the tests, and lists those that no hazard test saw.

Law: a mutant is seen when a test fails. Tests marked with a hazard are asked first, and only those
count; what the others alone saw is said. Only tests that ran the changed function are asked.
Run by hand (`python -m tests.bench.mutants [rule ...]`), where a system forks. It changes no file.
"""

from __future__ import annotations

import ast
import os
import sys
import time
from importlib import import_module
from pathlib import Path
from types import FrameType, FunctionType
from typing import TYPE_CHECKING, Any, Final, NamedTuple

import pytest

from tests.hazards.marked import marked_tests
from tests.hazards.mutating import mutants

if TYPE_CHECKING:
    from tests.hazards.mutating import Mutant

ROOT: Final = Path(__file__).parents[2]
CORE: Final = ("red_flags", "hold", "limits", "pain")
# Files whose unmarked tests are asked too, to say what they alone see.
OTHERS: Final = (
    *(f"tests/rules/test_{rule}.py" for rule in CORE),
    *("tests/rules/test_cut_points.py", "tests/rules/test_reasons.py"),
    *("tests/published/test_rules_due.py", "tests/published/test_rules_flags.py"),
    *("tests/session/test_safety_talk.py", "tests/session/test_training_talk.py"),
)
ARGUED: Final = ROOT / "tests" / "hazards" / "argued_mutants.txt"
WITHIN_S: Final = 300  # a mutant that hangs the tests is seen; set here
AT_IMPORT: Final = "<module>"
SEEN, BY_OTHERS, NOT_SEEN = "seen", "seen by others only", "not seen"


class Left(NamedTuple):
    """A mutant that no hazard test saw, and whether another test did."""

    rule: str
    mutant: Mutant
    told: str


# ---------------------------------------------------------------- which test runs what


class Ran:
    """Which functions of the core each test ran, by file and first line."""

    def __init__(self, files: dict[str, str]) -> None:
        self.files = files  # a file's path -> the rule
        self.by_test: dict[str, set[tuple[str, int]]] = {}
        self.now: set[tuple[str, int]] = set()

    def watch(self, frame: FrameType, event: str, _value: object) -> None:
        """Note a call into the core."""
        if event == "call" and frame.f_code.co_filename in self.files:
            rule = self.files[frame.f_code.co_filename]
            self.now.add((rule, frame.f_code.co_firstlineno))

    def of(self, test: str) -> set[tuple[str, int]]:
        """What the test ran."""
        return self.by_test.get(test, set())


def function_at(source: str, line: int) -> int:
    """The first line of the function around `line`, decorators included; 0 at the module's level."""
    found = [
        min([node.lineno, *(d.lineno for d in node.decorator_list)])
        for node in ast.walk(ast.parse(source))
        if isinstance(node, ast.FunctionDef) and node.lineno <= line <= (node.end_lineno or 0)
    ]
    return max(found, default=0)


# ---------------------------------------------------------------- a mistake, made


def make(module_name: str, source: str) -> None:
    """Give a loaded module another source: its functions' code, and its values wherever known."""
    module = import_module(module_name)
    fresh: dict[str, Any] = {"__name__": module_name, "__file__": module.__file__}
    exec(compile(source, str(module.__file__), "exec"), fresh)  # noqa: S102 - a mutant of our own
    for name, new in fresh.items():
        old = vars(module).get(name)
        if isinstance(new, FunctionType) and isinstance(old, FunctionType):
            old.__code__ = new.__code__
            old.__defaults__ = new.__defaults__
        elif isinstance(new, type) and isinstance(old, type) and old.__module__ == module_name:
            _methods(old, new)
        elif not name.startswith("__") and not callable(new) and new != old:
            _everywhere(name, old, new)


def _methods(old: type, new: type) -> None:
    for name, made in vars(new).items():
        known = vars(old).get(name)
        if isinstance(made, FunctionType) and isinstance(known, FunctionType):
            known.__code__ = made.__code__


def _everywhere(name: str, old: object, new: object) -> None:
    ours = [m for known, m in sys.modules.items() if known.split(".")[0] in {"coach", "tests"}]
    for module in ours:
        for known, value in list(vars(module).items()):
            if known == name and value is old:
                setattr(module, known, new)


# ---------------------------------------------------------------- the tests, once gathered


class Gathered:
    """A plugin: the tests are gathered once, and each mutant meets them in a fork of its own."""

    def __init__(self, rules: list[str]) -> None:
        self.rules = rules
        self.left: list[Left] = []
        self.tried: dict[str, int] = {}

    def pytest_runtestloop(self, session: pytest.Session) -> bool:
        """Instead of running the tests: run them watched, then once for each mutant."""
        items = [one for one in session.items if _holds_a_hazard(one) or _file(one) in OTHERS]
        items.sort(key=lambda one: (not _holds_a_hazard(one), _file(one) not in OTHERS))
        files = {str(ROOT / "coach" / "rules" / f"{rule}.py"): rule for rule in self.rules}
        ran = self._watched(items, Ran(files))
        for rule in self.rules:
            self._rule(rule, items, ran)
        return True

    def _watched(self, items: list[pytest.Item], ran: Ran) -> Ran:
        """Every test once, as it is; what each ran comes back through a pipe."""
        for item in items:
            ran.now = set()
            sys.setprofile(ran.watch)
            failed = not _passes(item)
            sys.setprofile(None)
            ran.by_test[item.nodeid] = ran.now
            if failed:
                raise SystemExit(f"{item.nodeid} does not pass as it is.")
        return ran

    def _rule(self, rule: str, items: list[pytest.Item], ran: Ran) -> None:
        source = (ROOT / "coach" / "rules" / f"{rule}.py").read_text("utf-8")
        every = mutants(source)
        self.tried[rule] = len(every)
        for number, one in enumerate(every, start=1):
            at = function_at(source, one.line)
            near = [i for i in items if _asked_of(ran.of(i.nodeid), rule, at)]
            near.sort(key=lambda i: (not _holds_a_hazard(i), rule not in _file(i)))
            told = met(f"coach.rules.{rule}", one.source, near)
            if told != SEEN:
                self.left.append(Left(rule, one, told))
            say = f"\r{rule}: {number} of {len(every)}, {len(self.left)} not seen by a hazard test "
            sys.stderr.write(say)
            sys.stderr.flush()


def _asked_of(ran: set[tuple[str, int]], rule: str, at: int) -> bool:
    """Whether a test can tell: it ran the function at a line, or for the module's level any of it."""
    return (rule, at) in ran if at else any(one == rule for one, _line in ran)


def met(module: str, source: str, items: list[pytest.Item]) -> str:
    """What the tests say while `module` has `source`, in a fork; one that hangs has seen it."""
    child = os.fork()
    if child == 0:
        code = 3
        try:
            make(module, source)
            code = _first_failure(items)
        finally:
            os._exit(code)
    until = time.monotonic() + WITHIN_S
    while time.monotonic() < until:
        pid, status = os.waitpid(child, os.WNOHANG)
        if pid:
            return {0: NOT_SEEN, 2: BY_OTHERS}.get(os.waitstatus_to_exitcode(status), SEEN)
        time.sleep(0.005)
    os.kill(child, 9)
    os.waitpid(child, 0)
    return SEEN


def _first_failure(items: list[pytest.Item]) -> int:
    """1 when a hazard test fails, 2 when only another does, 0 when none."""
    for item in items:
        if not _passes(item):
            return 1 if _holds_a_hazard(item) else 2
    return 0


def _holds_a_hazard(item: pytest.Item) -> bool:
    return item.get_closest_marker("hazard") is not None


def _file(item: pytest.Item) -> str:
    return item.path.relative_to(ROOT).as_posix()


def _passes(item: pytest.Item) -> bool:
    from _pytest.runner import runtestprotocol

    reports = runtestprotocol(item, log=False, nextitem=None)
    return not any(report.failed for report in reports)


# ---------------------------------------------------------------- for a person


def argued() -> dict[str, str]:
    """Survivors that were thought through: `limits: what | why`."""
    lines = ARGUED.read_text("utf-8").splitlines() if ARGUED.is_file() else []
    pairs = [line.partition(" | ") for line in lines if not line.startswith("#")]
    return {what: why for what, bar, why in pairs if bar}


def main(rules: list[str]) -> int:
    """What no hazard test saw; 1 when one is not argued, or an argument has nothing to argue."""
    os.chdir(ROOT)
    os.environ["CI"] = "1"
    gathered = Gathered(rules or list(CORE))
    began = time.monotonic()
    marked = {test.partition("::")[0] for tests in marked_tests().values() for test in tests}
    files = sorted({*marked, *OTHERS})
    pytest.main(["-qq", "-p", "no:cacheprovider", *files], plugins=[gathered])
    reasons, open_, used = argued(), 0, set()
    for rule, one, told in gathered.left:
        name = f"{rule}: {one.what}"
        used.add(name)
        why = reasons.get(name, "")
        open_ += not why
        print(f"coach/rules/{rule}.py:{one.line}: {one.what}: {told}: {why or 'NOT ARGUED'}")
    for name in reasons:
        if name.partition(":")[0] in gathered.tried and name not in used:
            print(f"No longer so, take it out: {name}")
            open_ += 1
    for rule, tried in gathered.tried.items():
        left = sum(one.rule == rule for one in gathered.left)
        print(f"{rule}: {tried} mutants, {left} not seen by a hazard test")
    print(f"{time.monotonic() - began:.0f} s")
    return 1 if open_ or not gathered.tried else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
