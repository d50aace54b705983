"""The full record as JSON lines: every row of a diary, and back, with its documented schema.

Law: what is written can be taken in again with every checksum fitting; a line of another shape is
named by its number and nothing is guessed. The first line says what the file is.
"""

from __future__ import annotations

import json
from typing import Final, NamedTuple

FORMAT: Final = 1
NAME: Final = "coach diary"
MOST_BYTES: Final = 200_000_000  # a file above this is refused unread; set here

SCHEMA: Final[dict[str, object]] = {
    "$schema": "https://json-schema.org/draft/2020-12/schema",
    "title": "One line of a Coach diary",
    "description": (
        "The first line is the head; each other line is one record. Records are numbered from 1 "
        "without a gap. `checksum` is SHA-256, in hex, over the checksum before it (32 zero bytes "
        "at first) and the JSON list, in ASCII and without blanks, of number, session, sort, name, "
        "about, at, and the texts of body and shown."
    ),
    "oneOf": [
        {
            "type": "object",
            "required": [NAME, "records"],
            "additionalProperties": False,
            "properties": {
                NAME: {"const": FORMAT},
                "records": {"type": "integer", "minimum": 0},
            },
        },
        {
            "type": "object",
            "required": [
                "number", "session", "sort", "name", "about", "at", "body", "shown", "checksum",
            ],
            "additionalProperties": False,
            "properties": {
                "number": {"type": "integer", "minimum": 1},
                "session": {
                    "type": "integer",
                    "minimum": 0,
                    "description": "0 for what stands outside a session",
                },
                "sort": {
                    "enum": ["begin", "event", "hold", "lift", "wrong word", "plan", "day"],
                    "description": "what the record is",
                },
                "name": {"type": "string", "description": "an event's kind, a plan's digest"},
                "about": {"type": "integer", "minimum": 0, "description": "a stop's number"},
                "at": {"type": "string", "description": "ISO 8601 instant with its UTC offset"},
                "body": {
                    "type": "object",
                    "description": (
                        "event: text typed, at_s seconds since the session opened, fact; day: the "
                        "day's record (pain 0 to 10, sleep_h hours, minutes, effort 0 to 10); hold: "
                        "the stop with the words typed; plan: the compiled plan as text"
                    ),
                },
                "shown": {"type": "array", "items": {"type": "string"}},
                "checksum": {"type": "string", "pattern": "^[0-9a-f]{64}$"},
            },
        },
    ],
}  # fmt: skip


class Kept(NamedTuple):
    """One row. `body` and `shown` are JSON texts as kept, `checksum` is 64 hex digits."""

    number: int
    session: int
    sort: str
    name: str
    about: int
    at: str
    body: str
    shown: str
    checksum: str


class NotADiaryError(ValueError):
    """The text is no exported diary; the message says which line and what to do."""


def as_lines(rows: tuple[Kept, ...]) -> str:
    """The record as JSON lines in ASCII."""
    head = {NAME: FORMAT, "records": len(rows)}
    return "\n".join([_written(head), *map(line_of, rows)]) + "\n"


def line_of(row: Kept) -> str:
    """One row as a JSON object."""
    body, shown = json.loads(row.body), json.loads(row.shown)
    return _written({**row._asdict(), "body": body, "shown": shown})


def from_lines(text: str) -> tuple[Kept, ...]:
    """The rows back, all of them. Raises `NotADiaryError`."""
    head, *lines = text.split("\n")
    count = _head_count(head)
    rows = [_row(line, number) for number, line in enumerate(lines, 2) if line.strip()]
    if len(rows) != count:
        raise NotADiaryError(f"The file says {count} records, but {len(rows)} are there.")
    return tuple(rows)


def readable_lines(text: str) -> tuple[Kept | int, ...]:
    """The rows as far as they can be read; the number alone of one that cannot.

    Raises `NotADiaryError` where the first line is none of a diary's, or of a newer format.
    """
    head, *lines = text.split("\n")
    count = _head_count(head)
    rows: list[Kept | int] = []
    for number, line in enumerate(lines, 1):
        if not line.strip():
            continue
        try:
            rows.append(_row(line, number))
        except NotADiaryError:
            rows.append(number)
    return (*rows, *range(len(rows) + 1, count + 1))


def says_diary(start: str) -> bool:
    """Whether a file's first letters are those of an exported diary."""
    return start.lstrip().startswith(f'{{"{NAME}":')


def _head_count(line: str) -> int:
    head = _object(line, 1)
    version = head.get(NAME)
    if isinstance(version, int) and version > FORMAT:
        raise NotADiaryError(
            f"The diary has format {version}, so get a newer Coach (this one reads {FORMAT})."
        )
    count = head.get("records")
    if version != FORMAT or not isinstance(count, int):
        raise NotADiaryError("Line 1 does not say that this is a diary of Coach.")
    return count


def _row(line: str, number: int) -> Kept:
    found = _object(line, number)
    if set(found) != set(Kept._fields):
        raise NotADiaryError(f"Line {number} has other parts than a diary's line.")
    texts = all(isinstance(found[name], str) for name in ("sort", "name", "at", "checksum"))
    counts = all(type(found[name]) is int for name in ("number", "session", "about"))
    if not texts or not counts or not isinstance(found["body"], dict):
        raise NotADiaryError(f"Line {number} has a part of another kind.")
    body, shown = _written(found["body"]), _written(found["shown"])
    return Kept(**{**found, "body": body, "shown": shown})  # type: ignore[arg-type]


def _object(line: str, number: int) -> dict[str, object]:
    try:
        found = json.loads(line)
    except (ValueError, RecursionError):
        found = None
    if not isinstance(found, dict):
        raise NotADiaryError(f"Line {number} cannot be read.")
    return found


def _written(value: object) -> str:
    return json.dumps(value, ensure_ascii=True, separators=(",", ":"))
