"""The walls of a program: outer limits that no plan may pass.

Law: a wall is a number with its side and unit; it trims nothing, it is only compared.
"""

from __future__ import annotations

import re
from typing import Final

from coach.model.program import Exercise, Place, Wall
from coach.texts import values
from coach.texts.fields import Fields, only_map
from coach.texts.margin import Margin, did_you_mean, near_line
from coach.texts.yaml_lines import Pair, Text

_WALL: Final = re.compile(r"(.+?) (at most|at least) (.+)")

_EXERCISE_WALLS: Final[dict[str, tuple[str, values.Bounds]]] = {
    "sets": ("at most", values.Bounds("", 1, 10)),
    "reps": ("at most", values.Bounds("", 1, 50)),
    "hold": ("at most", values.Bounds("s", 1, 300)),
    "load": ("at most", values.LOAD_BOUNDS["kg"]),
    "rest": ("at least", values.Bounds("s", 5, 600)),
    "apart": ("at least", values.Bounds("days", 0, 14)),
}
_PAIN: Final = {
    name: ("at most", values.Bounds("", 0, 10))
    for name in ("to start", "in exercise", "gentle", "in throwing", "usual")
}
_LIMITS: Final = {
    "exercises": ("at most", values.Bounds("", 1, 20)),
    "minutes": ("at most", values.Bounds("", 5, 180)),
    "sessions a week": ("at most", values.Bounds("", 1, 14)),
}


def read_walls(fields: Fields, by_name: dict[str, Exercise]) -> tuple[Wall, ...]:
    """Every wall under `walls`."""
    tree = only_map(fields.node("walls"), fields.margin, '"walls"')
    found: list[Wall] = []
    for pair in tree.pairs if tree else ():
        known = _known_for(pair.key.value, by_name)
        if known is None:
            names = (*by_name, "pain", "limits")
            what = f'There is no exercise "{pair.key.value}".{did_you_mean(pair.key.value, names)}'
            write = near_line(fields.margin, pair.key.place, pair.key.value, names)
            fields.margin.note("wall.unknown", pair.key.place, what, write)
            continue
        found.extend(_walls_on(pair, known, fields.margin))
    return tuple(found)


def _known_for(
    on: str, by_name: dict[str, Exercise]
) -> dict[str, tuple[str, values.Bounds]] | None:
    if on == "pain":
        return _PAIN
    if on == "limits":
        return _LIMITS
    return _EXERCISE_WALLS if on in by_name else None


def _walls_on(
    pair: Pair, known: dict[str, tuple[str, values.Bounds]], margin: Margin
) -> list[Wall]:
    text = values.plain_text(pair.value, margin, pair.key.value)
    found = (
        [_wall(pair.key.value, piece, known, margin) for piece in values.pieces(text)]
        if text
        else []
    )
    return [wall for wall in found if wall is not None]


def _wall(
    on: str, piece: Text, known: dict[str, tuple[str, values.Bounds]], margin: Margin
) -> Wall | None:
    match = _WALL.fullmatch(piece.value)
    what = match.group(1) if match else piece.value
    if match is None or what not in known:
        said = f'"{piece.value}" is no wall.{did_you_mean(what, known)}'
        margin.note("wall.form", piece.place, said, "sets at most 3, apart at least 2 days")
        return None
    op, bounds = known[what]
    if match.group(2) != op:
        said = f'A wall on {what} says "{op}".'
        margin.note("wall.form", piece.place, said, f"{what} {op} {match.group(3)}")
        return None
    amount = Text(match.group(3), values.place_after(piece, match.start(3)))
    return _measured(on, what, op, amount, bounds, piece.place, margin)


def _measured(
    on: str,
    what: str,
    op: str,
    amount: Text,
    bounds: values.Bounds,
    place: Place,
    margin: Margin,
) -> Wall | None:
    if what == "load":
        weighed = values.weight(amount, margin, "The wall on load")
        return None if weighed is None else Wall(on, what, op, weighed[0], weighed[1], place)
    number = values.number(amount, margin, bounds, f"The wall on {what}")
    return None if number is None else Wall(on, what, op, number, bounds.unit, place)
