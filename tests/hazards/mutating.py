"""Makes small mistakes in a piece of source, one at a time, as a slip of the hand would.

Law: a mutant differs in one place only: a comparison, a number, a branch, and or or, min or max, a
not. Words and the numbers of a type are left alone.
"""

from __future__ import annotations

import ast
import copy
from typing import TYPE_CHECKING, Final, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

FLIPS: Final[dict[type[ast.cmpop], tuple[type[ast.cmpop], ...]]] = {
    ast.Lt: (ast.LtE, ast.GtE),
    ast.LtE: (ast.Lt, ast.Gt),
    ast.Gt: (ast.GtE, ast.LtE),
    ast.GtE: (ast.Gt, ast.Lt),
    ast.Eq: (ast.NotEq,),
    ast.NotEq: (ast.Eq,),
    ast.In: (ast.NotIn,),
    ast.NotIn: (ast.In,),
    ast.Is: (ast.IsNot,),
    ast.IsNot: (ast.Is,),
}
OTHER: Final = {"min": "max", "max": "min", "any": "all", "all": "any"}


class Mutant(NamedTuple):
    """A mistake: its line, what was done, and the whole source with it."""

    line: int
    what: str
    source: str


def mutants(source: str) -> list[Mutant]:
    """Every mutant of a source, in the order of its lines."""
    tree = ast.parse(source)
    found = []
    for number, node in enumerate(ast.walk(tree)):
        for what, change in _changes(node):
            other = copy.deepcopy(tree)
            change(_at(other, number))
            made = ast.unparse(ast.fix_missing_locations(other))
            found.append(Mutant(getattr(node, "lineno", 0), what, made))
    return sorted(found, key=lambda one: (one.line, one.what))


def _at(tree: ast.AST, number: int) -> ast.AST:
    return next(node for n, node in enumerate(ast.walk(tree)) if n == number)


def _changes(node: ast.AST) -> Iterator[tuple[str, Callable[[ast.AST], None]]]:
    if isinstance(node, ast.Compare):
        yield from _of_compare(node)
    elif isinstance(node, ast.Constant) and type(node.value) in {int, float}:
        yield from _of_number(node.value)  # type: ignore[arg-type]
    elif isinstance(node, ast.If | ast.IfExp):
        words = ast.unparse(node.test)
        for way in (True, False):
            yield f"if {words}: always {'so' if way else 'otherwise'}", _setting("test", way)
    elif isinstance(node, ast.BoolOp):
        other = ast.Or if isinstance(node.op, ast.And) else ast.And
        yield f"{ast.unparse(node)}: and for or", lambda n: setattr(n, "op", other())
    elif isinstance(node, ast.UnaryOp) and isinstance(node.op, ast.Not):
        yield f"{ast.unparse(node)}: without not", _doubled
    elif isinstance(node, ast.Call) and getattr(node.func, "id", "") in OTHER:
        name = getattr(node.func, "id", "")
        yield f"{ast.unparse(node)}: {OTHER[name]}", lambda n: _renamed(n, OTHER[name])


def _of_compare(node: ast.Compare) -> Iterator[tuple[str, Callable[[ast.AST], None]]]:
    for place, op in enumerate(node.ops):
        for new in FLIPS.get(type(op), ()):

            def change(n: ast.AST, place: int = place, new: type[ast.cmpop] = new) -> None:
                n.ops[place] = new()  # type: ignore[attr-defined]

            yield f"{ast.unparse(node)}: {type(op).__name__} to {new.__name__}", change


def _of_number(value: float) -> Iterator[tuple[str, Callable[[ast.AST], None]]]:
    by = 1 if isinstance(value, int) else 0.5
    for new in (value - by, value + by):
        yield f"{value} to {new}", _setting("value", new)


def _setting(field: str, value: float) -> Callable[[ast.AST], None]:
    def change(node: ast.AST) -> None:
        setattr(node, field, ast.Constant(value) if field == "test" else value)

    return change


def _doubled(node: ast.AST) -> None:
    inner = node.operand  # type: ignore[attr-defined]
    node.operand = ast.UnaryOp(ast.Not(), inner)  # type: ignore[attr-defined]


def _renamed(node: ast.AST, name: str) -> None:
    node.func = ast.Name(name, ast.Load())  # type: ignore[attr-defined]
