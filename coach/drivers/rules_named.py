"""The name of the rules that run: one hash over their sources, for the first record of a session.

Law: the same rules give the same name on every machine; rules that cannot be read are `unknown`,
which equals nothing, so that no session is taken up again under other rules than it began with.
"""

from __future__ import annotations

import pkgutil
from hashlib import sha256
from importlib.util import find_spec
from typing import Final

import coach.rules

UNKNOWN: Final = "unknown"


def rules_digest() -> str:
    """sha256 (hex) over name and source of every module of `coach.rules`."""
    total = sha256()
    for name in sorted(found.name for found in pkgutil.iter_modules(coach.rules.__path__)):
        source = _source(f"coach.rules.{name}")
        if source is None:
            return UNKNOWN
        total.update(f"{name}\n{len(source)}\n".encode())
        total.update(source)
    return total.hexdigest()


def _source(module: str) -> bytes | None:
    spec = find_spec(module)
    read = getattr(spec.loader, "get_data", None) if spec is not None else None
    if spec is None or read is None or spec.origin is None:
        return None
    try:
        source = read(spec.origin)
    except OSError:
        return None
    return source if isinstance(source, bytes) else None
