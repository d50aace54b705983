"""Reads the coach's own source as a syntax tree; runs nothing of it."""

import ast
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import NamedTuple

ROOT = Path(__file__).resolve().parent.parent.parent
COACH = ROOT / "coach"


class Module(NamedTuple):
    """One source file: its dotted name, and its tree."""

    name: str
    tree: ast.Module

    @property
    def room(self) -> str:
        """The room it lives in; the few files beside the rooms are the front door, `cli`."""
        parts = self.name.split(".")
        return parts[1] if len(parts) > 1 and (COACH / parts[1]).is_dir() else "cli"


def module(name: str, source: str) -> Module:
    """A module from its text, real or made up for a test."""
    return Module(name, ast.parse(source))


@cache
def all_modules() -> list[Module]:
    """Every module of the package, in order of name."""
    return [module(dotted(path), path.read_text("utf-8")) for path in sorted(COACH.rglob("*.py"))]


def dotted(path: Path) -> str:
    """`coach/rules/hold.py` as `coach.rules.hold`; a room's own file as the room."""
    parts = path.relative_to(ROOT).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


def docstring_nodes(tree: ast.Module) -> set[int]:
    """The ids of the constants that are docstrings."""
    owners = (ast.Module, ast.ClassDef, ast.FunctionDef, ast.AsyncFunctionDef)
    return {
        id(node.body[0].value)
        for node in ast.walk(tree)
        if isinstance(node, owners) and node.body and isinstance(node.body[0], ast.Expr)
    }


def spoken_texts(tree: ast.Module) -> Iterator[tuple[int, str]]:
    """Line and text of every literal that a person could read: two words or more, no docstring.

    A value set into a text is shown as `1`.
    """
    docs = docstring_nodes(tree)
    joined = [node for node in ast.walk(tree) if isinstance(node, ast.JoinedStr)]
    inside = {id(part) for node in joined for part in node.values}
    for node in joined:
        parts = [str(p.value) if isinstance(p, ast.Constant) else "1" for p in node.values]
        yield node.lineno, "".join(parts)
    unread = docs | inside
    for leaf in ast.walk(tree):
        if not isinstance(leaf, ast.Constant) or id(leaf) in unread:
            continue
        if isinstance(leaf.value, str) and " " in leaf.value.strip():
            yield leaf.lineno, leaf.value
