"""The line on pitching in games: who pitches and catches, and which editions of the limits count.

Law: a line without a pitcher or without an edition asks nothing and is a finding; an age that an
edition lacks is one too.
"""

from __future__ import annotations

from typing import Final

from coach.model.program import GamePitches, Plan
from coach.rules.pitching import has_age
from coach.rules.throwing_tables import EDITIONS
from coach.texts.fields import Fields
from coach.texts.margin import Margin, did_you_mean, near_line

KEY: Final = "game pitches"
POSITIONS: Final = ("pitcher", "catcher")
LINE: Final = f"{KEY}: pitcher, {', '.join(EDITIONS)}"


def read_game_pitches(fields: Fields) -> GamePitches | None:
    """The line, or None where there is none or it cannot be used."""
    text = fields.text(KEY) if fields.pair(KEY) else None
    if text is None:
        return None
    positions: list[str] = []
    editions: list[str] = []
    for piece in fields.names(KEY):
        if piece.value in POSITIONS:
            positions.append(piece.value)
        elif piece.value in EDITIONS:
            editions.append(piece.value)
        else:
            known = (*POSITIONS, *EDITIONS)
            what = f'"{piece.value}" is no piece of this line.{did_you_mean(piece.value, known)}'
            write = near_line(fields.margin, piece.place, piece.value, known) or LINE
            fields.margin.note("pitches.piece", piece.place, what, write)
    if "pitcher" not in positions:
        fields.margin.note("pitches.position", text.place, "The line names no pitcher.", LINE)
    if not editions:
        fields.margin.note("pitches.edition", text.place, "The line names no edition.", LINE)
    return GamePitches(tuple(positions), tuple(editions), text.place)


def check_game_pitches(plan: Plan, age: int, margin: Margin) -> None:
    """The editions know the athlete's age; a baseball pitcher's plan says which of them count."""
    line = plan.game_pitches
    if line is None:
        if "baseball" in plan.sport and "pitcher" in plan.sport:
            what = f'The plan of a baseball pitcher has no line "{KEY}".'
            margin.note("pitches.unsaid", plan.place, what, LINE)
        return
    if line.editions and not has_age(age, line.editions):
        what = f"The editions are for 7 to 22 years; the athlete is {age}."
        margin.note("pitches.age", line.place, what)
