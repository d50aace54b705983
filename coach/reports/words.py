"""Days, numbers and own words as a report writes them.

Law: one way to write each; a value that is not known is a dash, never a nought. Letters that could
move, turn or hide what stands around them leave a mark, so that no number can become another one.
"""

from __future__ import annotations

import unicodedata
from datetime import date, datetime
from typing import Final

WEEKDAYS: Final = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
MONTHS: Final = (
    "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec",
)  # fmt: skip
UNKNOWN: Final = "-"
_SHOWN: Final = frozenset("LMNPS")  # letters, marks, numbers, punctuation, symbols


def own(text: str) -> str:
    """Somebody's own words on one line, letter for letter; a letter that hides leaves a mark."""
    if text.isascii() and text.isprintable():
        return text
    return "".join(_letter(letter) for letter in text)


def _letter(letter: str) -> str:
    kind = unicodedata.category(letter)[0]
    if letter in "\t\n\r" or kind == "Z":
        return " "
    return letter if kind in _SHOWN else f"<U+{ord(letter):04X}>"


def date_of(day: str) -> date | None:
    """An ISO day (or the day of an ISO instant) as a date; None where it is none."""
    try:
        return date.fromisoformat(day[:10])
    except ValueError:
        return None


def day_words(day: str) -> str:
    """`Mon 9 Nov 2026` of an ISO day; what is none stays as it was written."""
    on = date_of(day)
    if on is None:
        return own(day) or "day not known"
    return f"{WEEKDAYS[on.weekday()]} {on.day} {MONTHS[on.month - 1]} {on.year}"


def short_day(day: str) -> str:
    """`Mon 9 Nov`, where the year stands nearby."""
    return day_words(day).rsplit(" ", 1)[0] if date_of(day) else day_words(day)


def clock_time(instant: str) -> str:
    """`18:05` of an ISO instant, at the clock it was recorded with."""
    try:
        return f"{datetime.fromisoformat(instant):%H:%M}"
    except ValueError:
        return "time not known"


def when(instant: str) -> str:
    """`Mon 9 Nov 2026, 18:05` of an ISO instant."""
    return f"{day_words(instant)}, {clock_time(instant)}"


def number(value: float | None, digits: int = 2) -> str:
    """A number without needless noughts, at most `digits` after the point; a dash for None."""
    if value is None:
        return UNKNOWN
    text = f"{value:.{digits}f}"
    text = text.rstrip("0").rstrip(".") if "." in text else text
    return "0" if text == "-0" else text


def numbers(values: tuple[float, ...]) -> str:
    """Numbers set by set: `12, 11, 10`; a dash for none."""
    return ", ".join(number(value) for value in values) or UNKNOWN


def counted(count: int, noun: str, many: str = "") -> str:
    """`1 set`, `3 sets`."""
    return f"{count} {noun if count == 1 else many or noun + 's'}"


def titled(name: str) -> str:
    """A name at the start of a line."""
    return name[:1].upper() + name[1:]


def quoted(text: str) -> str:
    """Own words in quotes, once."""
    words = own(text.strip())
    return words if words[:1] == words[-1:] == '"' and len(words) > 1 else f'"{words}"'
