"""A checked program and plan as one text that a daily session reads without checking again.

Law: what is read back is what was written, or a refusal: another layout, another version or one
changed byte is never guessed at. No schema library is imported here; it stands in the way of
the first drawn line.
"""

from __future__ import annotations

import hashlib
import json
from typing import Any, Final

from coach.model import program as nouns
from coach.model.quantities import Call, Load
from coach.model.throws import Part, StepTable, ThrowStep

VERSION: Final = 1

_CLASSES: Final[tuple[type[Any], ...]] = (
    nouns.Place,
    nouns.Fault,
    nouns.RangeStep,
    nouns.Version,
    nouns.Exercise,
    nouns.Test,
    nouns.Answers,
    nouns.Step,
    nouns.Script,
    nouns.Phase,
    nouns.Wall,
    nouns.Program,
    nouns.Axis,
    nouns.Prescription,
    nouns.PainCeilings,
    nouns.Limits,
    nouns.Opened,
    nouns.ThrowingLine,
    nouns.GamePitches,
    nouns.ClearanceWord,
    nouns.Calls,
    nouns.Plan,
    nouns.Bound,
    Call,
    Load,
    Part,
    ThrowStep,
    StepTable,
)
_BY_NAME: Final = {kind.__name__: kind for kind in _CLASSES}


class CopyRefused(ValueError):
    """The compiled copy cannot be used; the message says so calmly and what to do."""


def shape() -> str:
    """A short mark that changes when a noun gains or loses a field."""
    fields = ";".join(f"{kind.__name__}:{','.join(kind._fields)}" for kind in _CLASSES)
    return hashlib.sha256(fields.encode()).hexdigest()[:16]


def to_json(bound: nouns.Bound) -> str:
    """The copy of `bound`: a version, the shape of the nouns, a digest, the content."""
    content = json.dumps(_written(bound), ensure_ascii=True, separators=(",", ":"))
    digest = hashlib.sha256(content.encode()).hexdigest()
    head = {
        "coach copy": VERSION,
        "shape": shape(),
        "digest": digest,
        "content": content,
    }
    return json.dumps(head, ensure_ascii=True) + "\n"


def from_json(text: str) -> nouns.Bound:
    """The program and plan back; raises `CopyRefused` with calm words where it cannot be used."""
    head = _head(text)
    if head.get("coach copy") != VERSION or head.get("shape") != shape():
        raise CopyRefused(
            "Your plan was put in place by another version of this coach. "
            "Put it in place again: coach use FILE."
        )
    content = head.get("content")
    if not isinstance(content, str) or _digest(content) != head.get("digest"):
        raise CopyRefused(_BROKEN)
    try:
        bound = _read(json.loads(content))
    except (ValueError, RecursionError):
        raise CopyRefused(_BROKEN) from None
    if not isinstance(bound, nouns.Bound):
        raise CopyRefused(_BROKEN)
    return bound


_BROKEN: Final = "The copy of your plan has changed on disk. Put it in place again: coach use FILE."


def _digest(content: str) -> str:
    return hashlib.sha256(content.encode()).hexdigest()


def _head(text: str) -> dict[str, Any]:
    try:
        head = json.loads(text)
    except (ValueError, RecursionError):
        raise CopyRefused(_BROKEN) from None
    if not isinstance(head, dict):
        raise CopyRefused(_BROKEN)
    return head


def _written(value: Any) -> Any:  # noqa: ANN401  any noun of the model, or what it holds
    fields = getattr(value, "_fields", None)
    if fields is not None:
        return {type(value).__name__: [_written(piece) for piece in value]}
    if isinstance(value, tuple):
        return [_written(piece) for piece in value]
    return value


def _read(value: Any) -> Any:  # noqa: ANN401
    if isinstance(value, dict):
        if len(value) != 1:
            raise CopyRefused(_BROKEN)
        ((name, pieces),) = value.items()
        kind = _BY_NAME.get(name)
        if kind is None or not isinstance(pieces, list) or len(pieces) != len(kind._fields):
            raise CopyRefused(_BROKEN)
        return kind(*map(_read, pieces))
    if isinstance(value, list):
        return tuple(map(_read, value))
    return value
