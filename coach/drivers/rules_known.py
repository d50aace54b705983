"""The rules that a session can reach, and what each can decide, read from our own sources.

Law: nothing is run here. A rule counts when a stage, or a rule that a stage calls, names the
function it stands in; what no stage calls is no rule of a session.
"""

from __future__ import annotations

import ast
import pkgutil
import re
from functools import cache
from importlib.util import find_spec
from typing import Final, NamedTuple

import coach.rules
import coach.session

_RULE: Final = re.compile(r"[a-z_]+\.[a-z_]+")
# An event after the end is refused; a driver never sends one, so no scenario can.
NO_SCENARIO: Final = ("session.over",)
# What drives a session besides its stages: the loop, a start after a break, a clearance.
_DRIVING: Final = ("coach.drivers.clearing", "coach.drivers.drive", "coach.drivers.resuming")
_IDS: Final = re.compile(r"\bids? ((?:[a-z_]+\.[a-z_]+(?:,\s+)?)+)")


class Ruling(NamedTuple):
    """What a rule can decide: its id, the outcome ('' where it is made while it runs), and where."""

    rule: str
    outcome: str
    file: str
    line: int


@cache
def sources() -> dict[str, ast.Module]:
    """Every module of the rules and the session, and what drives it, parsed."""
    names = [
        f"{room.__name__}.{found.name}"
        for room in (coach.rules, coach.session)
        for found in pkgutil.iter_modules(room.__path__)
    ]
    return {name: ast.parse(source_of(name)) for name in (*sorted(names), *_DRIVING)}


def source_of(module: str) -> str:
    """A module's text. Raises LookupError where it cannot be read."""
    spec = find_spec(module)
    reads = getattr(spec.loader, "get_source", None) if spec is not None else None
    text = reads(module) if reads is not None else None
    if isinstance(text, str):
        return text
    raise LookupError(module)


def file_of(module: str) -> str:
    """A module's file as a tester reads it: `coach/rules/pain.py`."""
    return module.replace(".", "/") + ".py"


@cache
def rulings() -> tuple[Ruling, ...]:
    """Every rule and outcome that the functions a session calls can decide, in order."""
    found: list[Ruling] = []
    reached = called()
    for module, tree in sources().items():
        for function in functions(tree):
            if not module.startswith("coach.rules") or function.name in reached:
                found += _of_function(function, file_of(module))
    return tuple(dict.fromkeys(found))


@cache
def called() -> frozenset[str]:
    """Names of the rules' functions that a stage or driver calls, directly or by another rule."""
    bodies = {
        function.name: names_in(function)
        for module, tree in sources().items()
        if module.startswith("coach.rules")
        for function in functions(tree)
    }
    outside = [t for module, t in sources().items() if not module.startswith("coach.rules")]
    known = {name for tree in outside for name in names_in(tree)} & set(bodies)
    waiting = list(known)
    while waiting:
        more = (bodies[waiting.pop()] & set(bodies)) - known
        known |= more
        waiting += more
    return frozenset(known)


def functions(tree: ast.AST) -> list[ast.FunctionDef]:
    """Every function written in a piece of source."""
    return [node for node in ast.walk(tree) if isinstance(node, ast.FunctionDef)]


def names_in(tree: ast.AST) -> set[str]:
    """Every name used in a piece of source, except where it is only imported."""
    names = {node.id for node in ast.walk(tree) if isinstance(node, ast.Name)}
    return names | {node.attr for node in ast.walk(tree) if isinstance(node, ast.Attribute)}


def _of_function(function: ast.FunctionDef, file: str) -> list[Ruling]:
    """Decisions with the outcome as written; and ids handed on to whoever makes the decision."""
    named: dict[str, object] = {
        target.id: node.value.value
        for node in ast.walk(function)
        if isinstance(node, ast.Assign) and isinstance(node.value, ast.Constant)
        for target in node.targets
        if isinstance(target, ast.Name)
    }
    found, dynamic = [], False
    for node in ast.walk(function):
        if isinstance(node, ast.Call) and node.args:
            words = [_word(argument, named) for argument in node.args[:2]]
            rule, made = words[0], getattr(node.func, "id", "")
            dynamic = dynamic or (made == "Decision" and not rule)
            if _RULE.fullmatch(rule) and rule not in NO_SCENARIO:
                own = words[1] if made == "Decision" and len(words) > 1 else ""
                outcome = "refused" if made == "Refusal" else own
                found.append(Ruling(rule, outcome, file, node.lineno))
    told = sorted(_told(function)) if dynamic else ()
    return [*found, *(Ruling(rule, "", file, function.lineno) for rule in told)]


def _told(function: ast.FunctionDef) -> set[str]:
    """The rule ids that a function's own words name: `(ids pick.lift, pick.row)`."""
    lists: list[str] = _IDS.findall(ast.get_docstring(function) or "")
    return {rule for named in lists for rule in re.findall(r"[a-z_]+\.[a-z_]+", named)}


def _word(node: ast.expr, named: dict[str, object]) -> str:
    value: object = node.value if isinstance(node, ast.Constant) else None
    if isinstance(node, ast.Name):
        value = named.get(node.id)
    return value if isinstance(value, str) else ""
