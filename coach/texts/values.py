"""The pieces of a value: numbers with units, dates, ranges, names, loads, people to call.

Law: a number is read only as it is meant to be written; anything near it (a decimal comma, a
leading nought, a range turned round, another unit) is a finding with the line to write, never a
guess. A reader that notes a finding returns None.
"""

from __future__ import annotations

import datetime
import re
from typing import Final, NamedTuple

from coach.model.program import Opened, Place
from coach.model.quantities import BAND_STRENGTHS, Call, Load
from coach.texts.margin import Margin, did_you_mean, nearest
from coach.texts.yaml_lines import Blank, Listed, Node, Text

_NUMBER: Final = re.compile(r"(?:0|[1-9][0-9]*)(?:\.[0-9]+)?")
_DECIMAL_COMMA: Final = re.compile(r"\b([0-9]+),([0-9]+)\b")
_LEADING_NOUGHT: Final = re.compile(r"0[0-9]+(?:\.[0-9]+)?")
_WITH_UNIT: Final = re.compile(r"(\S+)(?:\s+(.+))?")
_ISO: Final = re.compile(r"[0-9]{4}-[0-9]{2}-[0-9]{2}")
_OTHER_DATE: Final = re.compile(r"([0-9]{1,4})[./-]([0-9]{1,2})[./-]([0-9]{1,4})")
_PHONE: Final = re.compile(r"\+?[0-9][0-9 ()-]{1,18}")
_NAME: Final = re.compile(r"[a-z0-9][a-z0-9'/-]*(?: [a-z0-9'/-]+)*")
_FORBIDDEN_WORDS: Final = ("is", "and", "or")


class Bounds(NamedTuple):
    """What a number may be: its unit ('' for none), lowest, highest, and whether it is whole."""

    unit: str
    low: float
    high: float
    whole: bool = True


def plain_text(node: Node, margin: Margin, key: str) -> Text | None:
    """The node as words on one line; a list, a map or nothing is a finding."""
    if isinstance(node, Text) and node.value.strip():
        return node
    if isinstance(node, Text | Blank):
        margin.note("value.empty", node.place, f'Nothing stands after "{key}".', f"{key}: ...")
    else:
        margin.note("value.not_words", node.place, f'"{key}" takes words on its own line.')
    return None


def pieces(text: Text) -> list[Text]:
    """The pieces between commas, each with its own column."""
    found: list[Text] = []
    file, line, column = text.place
    column += 1 if text.quoted else 0
    for raw in text.value.split(","):
        lead = len(raw) - len(raw.lstrip())
        found.append(Text(raw.strip(), Place(file, line, column + lead)))
        column += len(raw) + 1
    return found


def has_decimal_comma(text: Text, margin: Margin) -> bool:
    """Whether a comma stands inside a number (noted)."""
    found = _DECIMAL_COMMA.search(text.value) if "," in text.value else None
    if found is None:
        return False
    place = text.place._replace(column=text.place.column + found.start())
    what = f'"{found.group()}" has a comma inside a number.'
    instead = f"{found.group(1)}.{found.group(2)}"
    margin.note("value.decimal_comma", place, what, margin.line_with(place, found.group(), instead))
    return True


def number(text: Text, margin: Margin, bounds: Bounds, what: str) -> float | None:
    """A number with its unit, inside its bounds. `what` names it (`the rest`)."""
    if has_decimal_comma(text, margin):
        return None
    match = _WITH_UNIT.fullmatch(text.value)
    figure, unit = (match.group(1), match.group(2) or "") if match else (text.value, "")
    value = _figure(figure, text, margin, bounds, what)
    if value is None or not _unit_fits(unit, figure, text, margin, bounds, what):
        return None
    if not bounds.low <= value <= bounds.high:
        margin.note("value.out_of_range", text.place, _out_of_range(value, bounds, what))
        return None
    return value


def _out_of_range(value: float, bounds: Bounds, what: str) -> str:
    unit = f" {bounds.unit}" if bounds.unit else ""
    return f"{what} is {value:g}{unit}; it may be {bounds.low:g} to {bounds.high:g}{unit}."


def _figure(figure: str, text: Text, margin: Margin, bounds: Bounds, what: str) -> float | None:
    if _LEADING_NOUGHT.fullmatch(figure):
        mend = margin.line_with(text.place, figure, figure.lstrip("0") or "0")
        margin.note(
            "value.leading_nought",
            text.place,
            f'"{figure}" begins with a nought.',
            mend,
        )
        return None
    if not figure.isascii() or not _NUMBER.fullmatch(figure):
        said = f'{what} is not a number: "{text.value}".'
        example = margin.line_with(text.place, text.value, f"NUMBER {bounds.unit}".strip())
        margin.note("value.not_a_number", text.place, said, example)
        return None
    if bounds.whole and "." in figure:
        margin.note("value.not_whole", text.place, f"{what} must be a whole number.")
        return None
    return float(figure)


def _unit_fits(
    unit: str, figure: str, text: Text, margin: Margin, bounds: Bounds, what: str
) -> bool:
    one_of_them = bounds.unit.rstrip("s")  # "1 day" beside "2 days"; the s of seconds stays
    if unit == bounds.unit or (unit == one_of_them and unit):
        return True
    mend = margin.line_with(text.place, text.value, _in_unit(figure, unit, bounds.unit))
    if not unit:
        margin.note("value.unit_missing", text.place, f"{what} has no unit.", mend)
    else:
        said = f'{what} has the unit "{unit}"; it takes "{bounds.unit or "none"}".'
        margin.note("value.unit_wrong", text.place, said, mend)
    return False


def _in_unit(figure: str, unit: str, wanted: str) -> str:
    """The figure in the unit wanted; another unit is only changed where that is exact."""
    if unit in ("min", "minutes") and wanted == "s":
        return f"{float(figure) * 60:g} s"
    if unit and wanted:
        return f"NUMBER {wanted}"
    return f"{figure} {wanted}".strip()


def span(text: Text, margin: Margin, bounds: Bounds, what: str) -> tuple[float, float] | None:
    """`10 to 15` or one number, low and high; the unit stands once, at the end."""
    if re.fullmatch(r"[0-9.]+\s*[-\u2013]\s*[0-9.]+.*", text.value):
        instead = re.sub(r"\s*[-\u2013]\s*", " to ", text.value, count=1)
        mend = margin.line_with(text.place, text.value, instead)
        margin.note("value.range_dash", text.place, f'"{text.value}" is not a range.', mend)
        return None
    low_words, joined, high_words = text.value.partition(" to ")
    if not joined:
        single = number(text, margin, bounds, what)
        return None if single is None else (single, single)
    low = number(Text(low_words, text.place), margin, bounds._replace(unit=""), what)
    column = text.place.column + len(low_words) + 4
    high = number(Text(high_words, text.place._replace(column=column)), margin, bounds, what)
    if low is None or high is None:
        return None
    if low >= high:
        unit = f" {bounds.unit}" if bounds.unit else ""
        mend = f"{high:g} to {low:g}{unit}" if low > high else f"{low:g}{unit}"
        mend = margin.line_with(text.place, text.value, mend)
        margin.note("value.range_turned", text.place, f'"{text.value}" does not rise.', mend)
        return None
    return low, high


def date(text: Text, margin: Margin, what: str) -> str | None:
    """An ISO date that is in the calendar, as text."""
    if _ISO.fullmatch(text.value):
        try:
            return datetime.date.fromisoformat(text.value).isoformat()
        except ValueError:
            said = f"{what} {text.value} is not in the calendar."
            margin.note("value.date_impossible", text.place, said)
            return None
    said = f'{what} is not a date: "{text.value}".'
    mend = margin.line_with(text.place, text.value, _date_mend(text.value))
    margin.note("value.date", text.place, said, mend)
    return None


def _date_mend(typed: str) -> str:
    match = _OTHER_DATE.fullmatch(typed)
    if not match:
        return "YEAR-MONTH-DAY"
    a, b, c = match.groups()
    if len(a) == 4:  # noqa: PLR2004  a year has four figures
        return f"{a}-{int(b):02d}-{int(c):02d}"
    day_first = f"{c}-{int(b):02d}-{int(a):02d}"
    month_first = f"{c}-{int(a):02d}-{int(b):02d}"
    if int(a) > 12:  # noqa: PLR2004  months
        return day_first
    return month_first if int(b) > 12 else f"{day_first} or {month_first}"  # noqa: PLR2004


def name(text: Text, margin: Margin, what: str) -> str | None:
    """A name: lower-case words with single blanks, without is, and, or, `in set`."""
    value = text.value
    words = value.split(" ")
    bad = [word for word in words if word in _FORBIDDEN_WORDS]
    if "," in value or bad or " in set" in f" {value}":
        piece = "a comma" if "," in value else f'"{bad[0] if bad else "in set"}"'
        said = f'The name of {what} holds {piece}: "{value}".'
        margin.note("name.joining_word", text.place, said)
        return None
    if not _NAME.fullmatch(value):
        plain = " ".join(re.sub(r"[^a-z0-9'/ -]+", " ", value.lower()).split())
        mend = margin.line_with(text.place, value, plain)
        said = f'"{value}" is not a name: lower-case words with single blanks.'
        margin.note("name.form", text.place, said, mend)
        return None
    return value


def names(node: Node, margin: Margin, key: str) -> tuple[Text, ...]:
    """Names on one line with commas; a list with dashes is a finding."""
    if isinstance(node, Listed):
        joined = ", ".join(item.value for item in node.items if isinstance(item, Text))
        said = f'The names after "{key}" stand on one line with commas.'
        margin.note("value.names_on_one_line", node.place, said, f"{key}: {joined}")
        return tuple(item for item in node.items if isinstance(item, Text))
    text = plain_text(node, margin, key)
    if text is None:
        return ()
    found = pieces(text)
    earlier: set[str] = set()
    for piece in found:
        if not piece.value:
            margin.note("value.empty_piece", piece.place, "Nothing stands between two commas.")
        elif piece.value in earlier:
            said = f'"{piece.value}" stands twice on the line.'
            margin.note("value.name_twice", piece.place, said)
        earlier.add(piece.value)
    return tuple(piece for piece in found if piece.value)


def one_of(text: Text, margin: Margin, known: tuple[str, ...], what: str) -> str | None:
    """A word of a closed list."""
    if text.value in known:
        return text.value
    said = f'{what} "{text.value}" is not known.{did_you_mean(text.value, known)}'
    near = nearest(text.value, known)
    write = margin.line_with(text.place, text.value, near) if near else " or ".join(known)
    margin.note("value.not_in_list", text.place, said, write)
    return None


def call(text: Text, margin: Margin, who: str) -> Call | None:
    """`NUMBER, WHO`: a number to call and who answers there."""
    first, comma, rest = text.value.partition(",")
    if not _PHONE.fullmatch(first.strip()):
        said = f'The line for "{who}" does not begin with a number to call.'
        margin.note("call.number", text.place, said, f"{who}: NUMBER, WHO")
        return None
    if not comma or not rest.strip():
        said = f'The number for "{who}" does not say who answers.'
        margin.note("call.who", text.place, said, f"{who}: {first.strip()}, WHO")
        return None
    return Call(first.strip(), rest.strip())


def is_phone(words: str) -> bool:
    """Whether the words look like a number to call."""
    return _PHONE.fullmatch(words) is not None


def opened(text: Text, margin: Margin) -> Opened | None:
    """`WHAT 2026-12-01 by WHO`: what was opened, when, and who opened it."""
    match = re.fullmatch(r"(.+?) (\S+) by (.+)", text.value)
    if match is None:
        said = f'"{text.value}" does not say what is opened, when and by whom.'
        margin.note("opened.pieces", text.place, said, "opened: WHAT DATE by WHO")
        return None
    place = text.place._replace(column=text.place.column + match.start(2))
    day = date(Text(match.group(2), place), margin, "The day it was opened")
    return None if day is None else Opened(match.group(1), day, match.group(3), text.place)


# ---------------------------------------------------------------- loads

LOAD_BOUNDS: Final = {  # outer limits against slips of typing; set here, to be signed
    "kg": Bounds("kg", 0.1, 60, whole=False),
    "lb": Bounds("lb", 0.25, 130, whole=False),
}
_WEIGHTS: Final = ("dumbbell", "ball")


def weight(text: Text, margin: Margin, what: str) -> tuple[float, str] | None:
    """`2 lb` or `1 kg`: amount and unit."""
    unit = "lb" if text.value.endswith("lb") else "kg"
    amount = number(text, margin, LOAD_BOUNDS[unit], what)
    return None if amount is None else (amount, unit)


def load_of_kind(text: Text, kind: str, margin: Margin) -> Load | None:
    """A load as a dose line says it: `2 lb`, `light band`, `band pull 3 kg`."""
    if kind == "band":
        return _band(text, margin)
    found = weight(text, margin, "The load")
    return None if found is None else Load(kind, found[0], found[1])


def _band(text: Text, margin: Margin) -> Load | None:
    words = text.value
    if words.startswith("band pull "):
        place = text.place._replace(column=text.place.column + len("band pull "))
        found = weight(Text(words.removeprefix("band pull "), place), margin, "The pull")
        return None if found is None else Load("band", found[0], found[1])
    strength = words.removesuffix(" band")
    if words.endswith(" band") and strength in BAND_STRENGTHS:
        return Load("band", strength=strength)
    said = f'"{words}" is not a band.{did_you_mean(strength, BAND_STRENGTHS)}'
    margin.note("load.band", text.place, said, "light band, or band pull 3 kg")
    return None


def load_at_home(text: Text, margin: Margin) -> Load | None:
    """A piece of `at home` that is a load, or None for other equipment (a towel)."""
    words = text.value
    if words in ("band", "dumbbell", "ball"):
        said = f'"{words}" at home does not say how strong or heavy it is.'
        margin.note("home.load_unsaid", text.place, said, f"{_home_example(words)}")
        return None
    if words.endswith(" band") or words.startswith("band pull "):
        return _band(text, margin)
    for kind in _WEIGHTS:
        if words.endswith(f" {kind}"):
            return load_of_kind(Text(words.removesuffix(f" {kind}"), text.place), kind, margin)
    return None


def _home_example(words: str) -> str:
    return {"band": "light band", "dumbbell": "2 lb dumbbell", "ball": "2 lb ball"}[words]


def years_between(born: str, day: str) -> int:
    """Whole years from a birth month (YYYY-MM, counted as its last day) to an ISO day."""
    born_year, born_month = (int(part) for part in born.split("-"))
    year, month = int(day[:4]), int(day[5:7])
    return year - born_year - (1 if month <= born_month else 0)


def place_after(text: Text, lead: int) -> Place:
    """The place `lead` letters into a text."""
    file, line, column = text.place
    return Place(file, line, column + lead)
