"""Small changes of the numbers that rules, stages and the loop go by, one number at a time.

Law: only a number with a name of its own is changed, and only one that something in a session calls;
tables of published figures are held by the tests of the tables. Nothing in a file is changed.
"""

from __future__ import annotations

import ast
from functools import cache
from importlib import import_module
from typing import TYPE_CHECKING, Final, NamedTuple, TypeGuard

from coach.drivers.functions_run import functions_in
from coach.drivers.rules_known import called, file_of, sources
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

    `readers` are the functions that name it, as `functions_run` knows them.
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
    if not readers:
        return
    for new in _all_near(name, value):
        what = f"change {place.file}: {name} {_words(value)} to {_words(new)}"
        yield RuleChange(place, what, name, value, new, readers)


@cache
def _readers(name: str) -> frozenset[str]:
    """The functions that name a number: of stages and the loop, and those of rules that they call."""
    return frozenset(
        one.key
        for module in sources()
        for one in functions_in(module)
        if name in one.names and (not module.startswith("coach.rules") or one.function in called())
    )


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
