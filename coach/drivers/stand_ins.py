"""Puts something else in the place of a function or number of ours while a tester looks on.

Law: everything is put back as it was, whatever happens. It is for a tester's look at scenarios
alone: no athlete's session ever runs under it.
"""

from __future__ import annotations

import sys
from contextlib import contextmanager
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from collections.abc import Iterator, Mapping
    from types import ModuleType

    Put = tuple[ModuleType, str, Any]
    Number = float | tuple[float, ...]


@contextmanager
def functions(instead: Mapping[Any, Any]) -> Iterator[None]:
    """Each function's stand-in, in every module of ours that knows the function by a name."""
    found = [
        (module, name, instead[value])
        for module, name, value in _known()
        if callable(value) and _hashable(value) and value in instead
    ]
    with _put(found):
        yield


@contextmanager
def number(name: str, old: Number, new: Number) -> Iterator[None]:
    """`new` wherever a module of ours calls the number (or numbers) `old` by `name`."""
    found = [
        (module, known, new)
        for module, known, value in _known()
        if known == name and type(value) is type(old) and value == old
    ]
    with _put(found):
        yield


def _known() -> list[Put]:
    """Every name that a module of ours has for something."""
    ours = [m for name, m in sorted(sys.modules.items()) if name.partition(".")[0] == "coach"]
    return [(module, name, value) for module in ours for name, value in vars(module).items()]


def _hashable(value: object) -> bool:
    return type(value).__hash__ is not None


@contextmanager
def _put(found: list[Put]) -> Iterator[None]:
    before = [(module, name, getattr(module, name)) for module, name, _value in found]
    try:
        for module, name, value in found:
            setattr(module, name, value)
        yield
    finally:
        for module, name, value in before:
            setattr(module, name, value)
