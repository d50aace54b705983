"""The throwing line of a plan: `not cleared`, or cleared when, by whom, on which table and steps.

Law: no throwing without a dated clearance that names table, first step and last step. The tables
are the published ones, each with its source, and the one that a plan brings along; this file holds
no distance.
"""

from __future__ import annotations

import re
from typing import Final

from coach.model.program import ThrowingLine
from coach.model.throws import OWN_STEPS, StepTable
from coach.rules.throwing import class_fits
from coach.rules.throwing_tables import CATCHER, STEP_TABLES
from coach.texts import own_steps, values
from coach.texts.fields import Fields
from coach.texts.margin import Margin, did_you_mean, near_line
from coach.texts.yaml_lines import Text

TABLES: Final = (*STEP_TABLES, OWN_STEPS)
LINE: Final = (
    "throwing: cleared DATE by WHO, youth 8 steps, from step NUMBER, at most step NUMBER, "
    "apart NUMBER days"
)
_CLEARED: Final = re.compile(r"cleared (\S+) by (.+)")
_CLASSES: Final = tuple(f"{who}class {name}" for who in ("", CATCHER) for name in "ABCDE")


def read_throwing(fields: Fields, own: StepTable | None) -> ThrowingLine | None:
    """The clearance; None: not cleared, or not readable. `own` is the plan's own table."""
    text = fields.text("throwing", "throwing: not cleared")
    if text is None or text.value == "not cleared":
        return None
    line = _cleared(text, own, fields)
    block = fields.node(own_steps.KEY)
    if line is not None and block is not None and line.table != OWN_STEPS:
        what = f'The plan brings its own steps, and the throwing line names "{line.table}".'
        fields.margin.note("steps.unused", line.place, what, also=block.place)
    return line


def _cleared(text: Text, own: StepTable | None, fields: Fields) -> ThrowingLine | None:
    margin, found = fields.margin, values.pieces(text)
    match = _CLEARED.fullmatch(found[0].value)
    if match is None:
        what = "The line says neither not cleared nor when and by whom it was cleared."
        margin.note("throwing.cleared", text.place, what, LINE)
        return None
    said = Text(match.group(1), values.place_after(found[0], match.start(1)))
    day = values.date(said, margin, "The day of clearance")
    named = found[1] if len(found) > 1 else Text("", text.place)
    if named.value not in TABLES:
        what = f'"{named.value}" is no table of steps.{did_you_mean(named.value, TABLES)}'
        write = near_line(margin, named.place, named.value, TABLES) or LINE
        margin.note("throwing.table", named.place, what, write)
        return None
    table = own if named.value == OWN_STEPS else STEP_TABLES[named.value]
    if table is None:
        if fields.node(own_steps.KEY) is None:
            what = f'The line names "{OWN_STEPS}", and the plan has no "{own_steps.KEY}".'
            margin.note("steps.none", named.place, what, own_steps.WRITE)
        return None
    line = ThrowingLine(day or "", match.group(2), table.name, 0, 0, 0, 0, "", text.place)
    return _with_pieces(line, found[2:], table, margin)


def _with_pieces(
    line: ThrowingLine, found: list[Text], table: StepTable, margin: Margin
) -> ThrowingLine:
    for piece in found:
        line = _with_piece(line, piece, table, margin)
    word = word_of(table)
    for have, name in (
        (line.from_step, f"from {word} 1"),
        (line.most_step, f"at most {word} 4"),
        (line.apart_days, "apart 2 days"),
    ):
        if not have:
            what = f'The throwing line has no piece like "{name}".'
            margin.note("throwing.pieces", line.place, what, line_for(table))
    if line.from_step > line.most_step > 0:
        what = f"{word.capitalize()} {line.from_step} is over the last {word} {line.most_step}."
        margin.note("throwing.steps_turned", line.place, what)
    return line


def word_of(table: StepTable) -> str:
    """What a table calls its steps."""
    return "phase" if table.name.endswith("phases") else "step"


def line_for(table: StepTable) -> str:
    """The line to write, with a table's own name and its word for a step."""
    line = LINE.replace("youth 8 steps", table.name)
    return line.replace("step NUMBER", f"{word_of(table)} NUMBER")


def _with_piece(line: ThrowingLine, piece: Text, table: StepTable, margin: Margin) -> ThrowingLine:
    steps = values.Bounds("", 1, len(table.steps))
    word = word_of(table)
    for lead, bounds, name in (
        (f"from {word} ", steps, "from_step"),
        (f"at most {word} ", steps, "most_step"),
        (f"sessions a {word} ", values.Bounds("", 1, 10), "sessions_a_step"),
        ("apart ", values.Bounds("days", table.apart_days, 14), "apart_days"),
    ):
        if piece.value.startswith(lead):
            said = Text(piece.value.removeprefix(lead), values.place_after(piece, len(lead)))
            number = values.number(said, margin, bounds, f'"{lead.strip()}"')
            return line._replace(**{name: int(number or 0)})  # type: ignore[arg-type]
    if piece.value in _CLASSES:
        class_name = piece.value.replace("class ", "")
        if not class_fits(class_name, table):
            what = f'"{piece.value}" does not belong to the table "{table.name}".'
            margin.note("throwing.class", piece.place, what)
        return line._replace(class_name=class_name)
    what = f'"{piece.value}" is no piece of the throwing line.'
    margin.note("throwing.piece", piece.place, what, line_for(table))
    return line
