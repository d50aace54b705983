"""Day records and holds as JSON bodies, and back.

Law: a field that is missing or unknown in an old record is left at its cautious default; a stop
is never dropped because its record looks odd.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from coach.model.flags import Section
from coach.model.history import DayRecord, Done, Hold, Outing
from coach.model.ladders import Drove, Ladder, ThrowDay, ThrowState
from coach.model.quantities import Dose, Load

if TYPE_CHECKING:
    from collections.abc import Mapping


def day_body(record: DayRecord) -> dict[str, object]:
    """A day record as a JSON mapping, field by field."""
    body: dict[str, object] = dict(record._asdict())
    body["done"] = [done_body(done) for done in record.done]
    body["ladders"] = [[name, ladder_body(ladder)] for name, ladder in record.ladders]
    body["pitched"] = [dict(outing._asdict()) for outing in record.pitched]
    if record.threw is not None:
        body["threw"] = {**record.threw._asdict(), "state": record.threw.state._asdict()}
    return body


def done_body(done: Done) -> dict[str, object]:
    """An exercise done as a JSON mapping."""
    drove = done.drove and {**done.drove._asdict(), "load": done.drove.load._asdict()}
    return {**done._asdict(), "drove": drove}


def ladder_body(ladder: Ladder) -> dict[str, object]:
    """A ladder as a JSON mapping, dose and load field by field."""
    dose = {**ladder.dose._asdict(), "load": ladder.dose.load._asdict()}
    return {**ladder._asdict(), "dose": dose}


def day_record(body: Mapping[str, object]) -> DayRecord:
    """A day record read back. Raises `KeyError`, `TypeError` or `ValueError` on another shape."""
    known = {name: body[name] for name in DayRecord._fields if name in body}
    known["done"] = tuple(_done(entry) for entry in _entries(body.get("done")))
    known["alone"] = tuple(Section(str(name)) for name in _entries(body.get("alone")))
    for name in ("notes", "own_asked"):
        known[name] = tuple(str(entry) for entry in _entries(body.get(name)))
    here = body.get("at_hand")
    known["at_hand"] = None if here is None else tuple(str(name) for name in _entries(here))
    known["picked"] = tuple((str(a), str(b)) for a, b in _pairs(body.get("picked")))
    known["ladders"] = tuple(
        (str(name), _ladder(entry)) for name, entry in _pairs(body.get("ladders"))
    )
    known["threw"] = _throw_day(body.get("threw"))
    known["pitched"] = tuple(_outing(entry) for entry in _entries(body.get("pitched")))
    known["decisions"] = tuple(
        (str(d[0]), str(d[1]), str(d[2]))
        for d in _entries(body.get("decisions"))
        if isinstance(d, list)
    )
    return DayRecord(**known)  # type: ignore[arg-type]


def hold_body(hold: Hold) -> dict[str, object]:
    """A hold as a JSON mapping."""
    return dict(hold._asdict())


def hold_from(body: Mapping[str, object], number: int) -> Hold:
    """A hold read back; a missing field is empty, so that the stop itself is never lost."""

    def text(name: str) -> str:
        return str(body.get(name, ""))

    version = body.get("plan_version", 0)
    return Hold(
        number,
        text("code"),
        text("tier"),
        text("group"),
        text("said"),
        text("day"),
        text("at"),
        version if isinstance(version, int) else 0,
    )


def _entries(value: object) -> list[object]:
    return list(value) if isinstance(value, list) else []


def _pairs(value: object) -> list[tuple[object, object]]:
    return [(entry[0], entry[1]) for entry in _entries(value) if isinstance(entry, list)]


def _done(entry: object) -> Done:
    if not isinstance(entry, dict):
        raise TypeError
    known = {name: entry[name] for name in Done._fields if name in entry}
    for name in ("reps", "pains", "felt"):
        known[name] = tuple(_entries(entry.get(name)))
    drove = entry.get("drove")
    known["drove"] = Drove(int(drove["row"]), Load(**drove["load"])) if drove else None
    return Done(**known)


def _outing(entry: object) -> Outing:
    if not isinstance(entry, dict):
        raise TypeError
    return Outing(**{name: entry[name] for name in Outing._fields if name in entry})


def _ladder(entry: object) -> Ladder:
    if not isinstance(entry, dict):
        raise TypeError
    dose = dict(entry["dose"])
    dose["load"] = Load(**dose["load"])
    moved = tuple((str(axis), str(day)) for axis, day in _pairs(entry.get("moved")))
    return Ladder(Dose(**dose), int(entry["good_run"]), int(entry["form_run"]), moved)


def _throw_day(entry: object) -> ThrowDay | None:
    if not isinstance(entry, dict):
        return None
    return ThrowDay(**{**entry, "state": ThrowState(**entry["state"])})
