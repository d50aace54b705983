"""Everyday phrases of numbers and figures of speech that hold a warning word and mean nothing.

Law: data only, read together with `harmless`; see there for how a line is written. A pain of 8 or
more is no phrase of this list (rule pain.in_set, flag S09).
"""

from __future__ import annotations

from typing import Final

SAID: Final = """
    worst pain 0|1|2|3|4|5|6|7|zero|one|two|three|four|five|six|seven|none
    worst pain was|is|of|at|about|yesterday|today|about|around 0|1|2|3|4|5|6|7|zero|one|two|three|four|five|six|seven|none
    had|have|having a fall out
    put my back into
    dizzy heights
    landed badly on the scoreboard
    out of place in
    worst pain of watching|the match
    swollen|swelling with pride
    die|died|dying|dead of|from embarrassment|shame|laughing|laughter|boredom|cringe|hunger|excitement|thirst
    dizzy with joy|excitement
"""
