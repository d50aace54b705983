"""What differs between two texts, told in plain words, what allows more standing first.

Law: a change is weighed by one question: can the athlete do more, sooner or with less watching
than before? Where that is not known, it counts as yes. Nothing is judged good or bad.
"""

from __future__ import annotations

from enum import IntEnum
from typing import Final, NamedTuple

from coach.model.program import Place


class Weight(IntEnum):
    """How closely a change must be read; the first first."""

    FIRST = 0
    MORE = 1
    LESS = 2
    WORDS = 3


HEADINGS: Final = {
    Weight.FIRST: "Read these first: whose plan and which arm",
    Weight.MORE: "Allows more, or watches less",
    Weight.LESS: "Allows less, or watches more",
    Weight.WORDS: "Other changes",
}


class Change(NamedTuple):
    """One difference: its weight, a sentence, and its place in the new text (or in the old one)."""

    weight: Weight
    what: str
    place: Place | None = None


def report(changes: list[Change]) -> str:
    """All changes under their headings, the closest to be read first; one line if there is none."""
    if not changes:
        return "Nothing differs.\n"
    blocks = []
    for weight in Weight:
        lines = [_line(change) for change in changes if change.weight is weight]
        if lines:
            blocks.append(f"{HEADINGS[weight]}\n" + "\n".join(lines))
    return "\n\n".join(blocks) + f"\n\n{_count(changes)}\n"


def _line(change: Change) -> str:
    place = change.place
    where = f" ({place.file}, line {place.line})" if place and place.line else ""
    return f"  {change.what}{where}"


def _count(changes: list[Change]) -> str:
    close = sum(1 for change in changes if change.weight in (Weight.FIRST, Weight.MORE))
    noun = "change" if len(changes) == 1 else "changes"
    return f"{len(changes)} {noun}, {close} to read first."


def number(
    what: str,
    old: float,
    new: float,
    place: Place | None,
    *,
    unit: str = "",
    higher_is_more: bool = True,
) -> list[Change]:
    """The change of one number; empty where there is none."""
    if old == new:
        return []
    higher = new > old
    weight = Weight.MORE if higher == higher_is_more else Weight.LESS
    end = f" {unit}" if unit else ""
    return [Change(weight, f"{what}: {new:g}{end}, was {old:g}{end}.", place)]


def words(
    what: str, old: str, new: str, place: Place | None, weight: Weight = Weight.WORDS
) -> list[Change]:
    """The change of a word or a sentence; empty where there is none."""
    if old == new:
        return []
    return [Change(weight, f'{what}: "{new or "nothing"}", was "{old or "nothing"}".', place)]


def members(
    what: str,
    old: tuple[str, ...],
    new: tuple[str, ...],
    place: Place | None,
    *,
    added: Weight = Weight.MORE,
    gone: Weight = Weight.LESS,
    order: Weight = Weight.MORE,
) -> list[Change]:
    """Names added to a list, gone from it, or standing in another order."""
    found = [Change(added, f"{what}: {name} is new.", place) for name in new if name not in old]
    found += [Change(gone, f"{what}: {name} is gone.", place) for name in old if name not in new]
    if not found and old != new:
        found.append(Change(order, f"{what}: now in the order {', '.join(new)}.", place))
    return found
