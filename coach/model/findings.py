"""What is wrong in a clinician's or tester's file, as a value: id, place, words, the line to write.

Law: a finding is built where the mistake is seen and rendered elsewhere; it never decides whether
a session may run (an `error` does, in `coach.texts`).
"""

from __future__ import annotations

from typing import NamedTuple

from coach.model.program import Place


class Finding(NamedTuple):
    """One mistake.

    `id` is stable and reads aloud (`dose.load_missing`); `level` is error or warning; `what` is one
    sentence that stands alone; `why` says why it matters; `write` is the line to write instead;
    `line_text` the real line; `also` a second place where two lines disagree.
    """

    id: str
    level: str
    place: Place
    what: str
    why: str
    write: str
    line_text: str = ""
    also: Place | None = None
