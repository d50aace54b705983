"""Which functions ran meanwhile, and which functions a module holds with the names they use.

Law: it only watches, and slows what it watches. A function is known by its file, line and name, so
that one that ran is found again in the text of its module.
"""

from __future__ import annotations

import sys
from contextlib import contextmanager
from functools import cache
from importlib.util import find_spec
from inspect import CO_OPTIMIZED
from types import CodeType
from typing import TYPE_CHECKING, NamedTuple

from coach.drivers.rules_known import source_of

if TYPE_CHECKING:
    from collections.abc import Iterator
    from types import FrameType


class Written(NamedTuple):
    """A function as its module holds it: what it is known by, the outermost function it stands in
    (itself, mostly), and every name it uses that is not its own.
    """

    key: str
    function: str
    names: frozenset[str]


@contextmanager
def functions_run(found: set[str]) -> Iterator[None]:
    """Every function that runs meanwhile, put into `found` at the end by what it is known by."""
    ran: dict[int, CodeType] = {}

    def note(frame: FrameType, event: str, _of: object) -> None:
        if event == "call":
            ran[id(frame.f_code)] = frame.f_code

    before = sys.getprofile()
    sys.setprofile(note)
    try:
        yield
    finally:
        sys.setprofile(before)
        found |= {_key(code) for code in ran.values()}


@cache
def functions_in(module: str) -> tuple[Written, ...]:
    """Every function of a module, those within others too. Raises LookupError as `source_of`."""
    spec = find_spec(module)
    file = str(spec.origin) if spec is not None else module
    whole = compile(source_of(module), file, "exec", dont_inherit=True)
    return tuple(_within(whole, ""))


def _within(code: CodeType, function: str) -> Iterator[Written]:
    for inner in code.co_consts:
        if isinstance(inner, CodeType):
            runs = bool(inner.co_flags & CO_OPTIMIZED)  # the body of a class ran at its import
            name = function or (inner.co_name if runs else "")
            if runs:
                yield Written(_key(inner), name, frozenset(inner.co_names))
            yield from _within(inner, name)


def _key(code: CodeType) -> str:
    return f"{code.co_filename}:{code.co_firstlineno}:{code.co_name}"
