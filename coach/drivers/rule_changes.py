"""Small changes of the numbers that rules, stages and the loop go by, one number at a time.

Law: only a number with a name of its own is changed, and only one that something in a session calls;
tables of published figures are held by the tests of the tables. Nothing in a file is changed.
"""

from __future__ import annotations

import ast
from functools import cache
from importlib import import_module
from typing import TYPE_CHECKING, Final, NamedTuple, TypeGuard

from coach.drivers.rules_known import called, file_of, functions, names_in, sources
from coach.model.program import Place

if TYPE_CHECKING:
    from collections.abc import Iterator

    Number = int | float
    Value = Number | tuple[Number, ...]

HOURS: Final = ("_H", "_HOURS")  # hours are changed by half an hour
SECONDS: Final = ("_S",)  # long times in seconds are changed by a minute
MINUTE_S: Final = 60
PART: Final = 0.01  # by which a number under 1 is changed


class RuleChange(NamedTuple):
    """A change of a number: where, in words, its name, what it is and becomes.

    `readers` are the rules' functions that name it; empty where a stage or the loop does too, so
    that any session may read it.
    """

    place: Place
    what: str
    name: str
    old: Value
    new: Value
    readers: frozenset[str]


def rule_changes() -> Iterator[RuleChange]:
    """Every change of a named number, in the order of the files."""
    for module, tree in sources().items():
        for node in tree.body:
            name = _named(node)
            value = getattr(import_module(module), name, None) if name else None
            if _is_number(value) or _are_numbers(value):
                yield from _of(Place(file_of(module), node.lineno), name, value)


def _named(node: ast.stmt) -> str:
    """The name that a line of a module gives to a value; '' for any other line."""
    if isinstance(node, ast.AnnAssign) and isinstance(node.target, ast.Name):
        return node.target.id
    return ""


def _is_number(value: object) -> TypeGuard[Number]:
    return isinstance(value, int | float) and not isinstance(value, bool)


def _are_numbers(value: object) -> TypeGuard[tuple[Number, ...]]:
    return type(value) is tuple and bool(value) and all(map(_is_number, value))


def _of(place: Place, name: str, value: Value) -> Iterator[RuleChange]:
    readers = _readers(name)
    if readers is None:
        return
    for new in _all_near(name, value):
        what = f"change {place.file}: {name} {_words(value)} to {_words(new)}"
        yield RuleChange(place, what, name, value, new, readers)


@cache
def _readers(name: str) -> frozenset[str] | None:
    """Who names a number: the rules' functions; empty for any session; None for no session."""
    by_rules, outside = set(), False
    for module, tree in sources().items():
        of_rules = module.startswith("coach.rules")
        for function in functions(tree):
            if name in names_in(function):
                outside = outside or not of_rules
                by_rules |= {function.name} if function.name in called() else set()
        outside = outside or (not of_rules and _named_outside(tree, name))
    if outside:
        return frozenset()
    return frozenset(by_rules) or None


def _named_outside(tree: ast.Module, name: str) -> bool:
    """Whether a module names it outside of its functions, as a part of another value."""
    lines = [node for node in tree.body if isinstance(node, ast.AnnAssign) and node.value]
    return any(name in names_in(node.value) for node in lines if node.value is not None)


def _all_near(name: str, value: Value) -> Iterator[Value]:
    """The value with one of its numbers a little lower, and a little higher."""
    if not isinstance(value, tuple):
        yield from _near(name, value)
        return
    for at, one in enumerate(value):
        for new in _near(name, one):
            yield (*value[:at], new, *value[at + 1 :])


def _near(name: str, value: Number) -> tuple[Number, Number]:
    by: Number = 0.5 if isinstance(value, float) or name.endswith(HOURS) else 1
    if 0 < value < 1:
        by = PART
    if name.endswith(SECONDS) and value > MINUTE_S:
        by = MINUTE_S
    return value - by, value + by


def _words(value: Value) -> str:
    numbers = value if isinstance(value, tuple) else (value,)
    return ", ".join(f"{number:g}" for number in numbers)
