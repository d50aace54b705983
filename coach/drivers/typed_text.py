"""What was typed at one prompt, made one answer: length, pasted lines.

Law: lines that were pasted together are never taken for several answers, and none of them answers
a safety question; but a warning sign anywhere in them is heard. It reads no meaning itself.
"""

from __future__ import annotations

from typing import Final, NamedTuple

LONGEST: Final = 2_000  # letters that are listened to; set here
TOO_LONG: Final = "That was long. I read the first 2,000 letters of it."
PASTED_REFUSED: Final = "Several lines came at once, so I took none. Type your answer."
PASTED_FIRST: Final = "Several lines came at once. I took the first one only."


class Admitted(NamedTuple):
    """`text` is the answer, `whole` all that came (at most `LONGEST` letters, lines joined).

    `told` says what was left out; `refused`: there is no answer unless `whole` holds a sign.
    """

    text: str
    whole: str
    told: tuple[str, ...] = ()
    refused: bool = False


def admitted(typed: str, *, safety: bool) -> Admitted:
    """One answer out of what was typed."""
    told = (TOO_LONG,) if len(typed) > LONGEST else ()
    lines = [line for line in typed[:LONGEST].splitlines() if line.strip()]
    if len(lines) < 2:  # noqa: PLR2004 - one line is no paste of several
        text = lines[0] if lines else ""
        return Admitted(text, text, told)
    whole = " ".join(lines)
    if safety:
        return Admitted("", whole, (*told, PASTED_REFUSED), refused=True)
    return Admitted(lines[0], whole, (*told, PASTED_FIRST))
