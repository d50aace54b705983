"""Finds the tests that say which hazard they hold."""

from __future__ import annotations

import ast
from functools import cache
from pathlib import Path
from typing import Any

import yaml

ROOT = Path(__file__).parents[2]
LIST = Path(__file__).with_name("hazards.yaml")
AWAY = ("skip", "xfail")  # a test that may be left out holds nothing


@cache
def hazards() -> list[dict[str, Any]]:
    """The list as it is written."""
    found: list[dict[str, Any]] = yaml.safe_load(LIST.read_text("utf-8"))["hazards"]
    return found


@cache
def marked_tests() -> dict[str, set[str]]:
    """Hazard to the tests marked with it, as `tests/rules/test_hold.py::test_name`."""
    found: dict[str, set[str]] = {}
    for file in sorted((ROOT / "tests").rglob("test_*.py")):
        for node in ast.walk(ast.parse(file.read_text("utf-8"))):
            if isinstance(node, ast.FunctionDef):
                for name in _hazards_of(node):
                    test = f"{file.relative_to(ROOT).as_posix()}::{node.name}"
                    found.setdefault(name, set()).add(test)
    return found


def _hazards_of(function: ast.FunctionDef) -> list[str]:
    calls = [d for d in function.decorator_list if isinstance(d, ast.Call)]
    if any(_mark(call).startswith(AWAY) for call in calls):
        return []
    return [
        str(argument.value)
        for call in calls
        if _mark(call) == "hazard"
        for argument in call.args
        if isinstance(argument, ast.Constant)
    ]


def _mark(call: ast.Call) -> str:
    words = ast.unparse(call.func)
    return words.removeprefix("pytest.mark.") if words.startswith("pytest.mark.") else ""
