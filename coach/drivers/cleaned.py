"""The one place where text from files or fingers is cleaned before a screen sees it.

Law: nothing that could move the cursor, hide, turn or redraw letters gets through; everything else
is shown letter for letter, square brackets included. A letter that is taken out of sight leaves a
mark, so that no number can quietly become another one.
"""

from __future__ import annotations

import unicodedata
from typing import Final

_ALLOWED: Final = frozenset("LMNPS")  # letters, marks, numbers, punctuation, symbols (Unicode 15)


def cleaned(text: str) -> str:
    """`text` on one line, fit for any screen: blanks for all white space, marks for what hides."""
    if text.isascii() and text.isprintable():
        return text
    return "".join(_shown(letter) for letter in text)


def _shown(letter: str) -> str:
    if letter in "\t\n\r" or unicodedata.category(letter)[0] == "Z":
        return " "
    if unicodedata.category(letter)[0] in _ALLOWED:
        return letter
    return f"<U+{ord(letter):04X}>"


def width_of(text: str) -> int:
    """Columns that cleaned text fills: two for a wide letter, none for a mark that joins."""
    if text.isascii():
        return len(text)
    wide = sum(1 for letter in text if unicodedata.east_asian_width(letter) in "WF")
    joined = sum(1 for letter in text if unicodedata.category(letter) in {"Mn", "Me"})
    return len(text) + wide - joined
