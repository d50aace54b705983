"""The throwing line of a plan: `not cleared`, or cleared when, by whom, on which table and steps.

Law: no throwing without a dated clearance that names table, first step and last step. The tables
known here are those of the throwing rules, each with its source; this file holds no distance.
"""

from __future__ import annotations

import re
from typing import Final

from coach.model.program import ThrowingLine
from coach.rules.throwing_tables import STEP_TABLES
from coach.texts import values
from coach.texts.fields import Fields
from coach.texts.margin import Margin, did_you_mean, near_line
from coach.texts.yaml_lines import Text

TABLES: Final = {name: len(table.steps) for name, table in STEP_TABLES.items()}
LINE: Final = (
    "throwing: cleared DATE by WHO, youth 8 steps, from step NUMBER, at most step NUMBER, "
    "apart NUMBER days"
)
_CLEARED: Final = re.compile(r"cleared (\S+) by (.+)")
_CLASSES: Final = ("A", "B", "C", "D", "E")


def read_throwing(fields: Fields) -> tuple[str, ThrowingLine | None]:
    """The line's words, and the clearance in it (None: not cleared, or not readable)."""
    text = fields.text("throwing", "throwing: not cleared")
    if text is None or text.value == "not cleared":
        return "not cleared", None
    return text.value, _cleared(text, fields.margin)


def _cleared(text: Text, margin: Margin) -> ThrowingLine | None:
    found = values.pieces(text)
    match = _CLEARED.fullmatch(found[0].value)
    if match is None:
        what = "The line says neither not cleared nor when and by whom it was cleared."
        margin.note("throwing.cleared", text.place, what, LINE)
        return None
    said = Text(match.group(1), values.place_after(found[0], match.start(1)))
    day = values.date(said, margin, "The day of clearance")
    table = found[1] if len(found) > 1 else Text("", text.place)
    if table.value not in TABLES:
        what = f'"{table.value}" is no table of steps.{did_you_mean(table.value, TABLES)}'
        write = near_line(margin, table.place, table.value, TABLES) or LINE
        margin.note("throwing.table", table.place, what, write)
        return None
    line = ThrowingLine(day or "", match.group(2), table.value, 0, 0, 0, 0, "", text.place)
    return _with_pieces(line, found[2:], margin)


def _with_pieces(line: ThrowingLine, found: list[Text], margin: Margin) -> ThrowingLine:
    for piece in found:
        line = _with_piece(line, piece, margin)
    for have, name in (
        (line.from_step, "from step 1"),
        (line.most_step, "at most step 4"),
        (line.apart_days, "apart 2 days"),
    ):
        if not have:
            what = f'The throwing line has no piece like "{name}".'
            margin.note("throwing.pieces", line.place, what, LINE)
    if line.from_step > line.most_step > 0:
        what = f"Step {line.from_step} is over the last step {line.most_step}."
        margin.note("throwing.steps_turned", line.place, what)
    return line


def _with_piece(line: ThrowingLine, piece: Text, margin: Margin) -> ThrowingLine:
    steps = values.Bounds("", 1, TABLES[line.table])
    word = "phase" if line.table.endswith("phases") else "step"
    for lead, bounds, name in (
        (f"from {word} ", steps, "from_step"),
        (f"at most {word} ", steps, "most_step"),
        (f"sessions a {word} ", values.Bounds("", 1, 10), "sessions_a_step"),
        ("apart ", values.Bounds("days", STEP_TABLES[line.table].apart_days, 14), "apart_days"),
    ):
        if piece.value.startswith(lead):
            said = Text(piece.value.removeprefix(lead), values.place_after(piece, len(lead)))
            number = values.number(said, margin, bounds, f'"{lead.strip()}"')
            return line._replace(**{name: int(number or 0)})  # type: ignore[arg-type]
    if piece.value.removeprefix("class ") in _CLASSES and piece.value.startswith("class "):
        return line._replace(class_name=piece.value.removeprefix("class "))
    what = f'"{piece.value}" is no piece of the throwing line.'
    margin.note("throwing.piece", piece.place, what, LINE)
    return line
