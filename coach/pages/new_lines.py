"""A text in the making: what is asked, the lines an answer becomes, and which line is whose.

Law: an answer stands in the file as typed; only quotes are put where a colon would break it. No
number is filled in for a clinician.
"""

from __future__ import annotations

from collections.abc import Generator
from typing import NamedTuple


class Asked(NamedTuple):
    """One question to the clinician.

    `line` is the line of the file with `{}` for the answer; a question that is `many` takes one
    answer a line until an empty one. `under` is the heading above it, said once. `remark` goes
    above the line as a remark. With `optional`, an empty answer leaves the line out. What is
    `given` was answered before, and is not asked.
    """

    words: str
    line: str
    under: tuple[str, ...] = ()
    remark: str = ""
    optional: bool = False
    many: bool = False
    given: tuple[str, ...] = ()


PAIRS = (" - {}", "  {}")  # lines whose answer is a name, a colon and what belongs to it
Questions = Generator[Asked, tuple[str, ...], None]


class Part(NamedTuple):
    """A question with its answers."""

    asked: Asked
    answers: tuple[str, ...]


class Draft(NamedTuple):
    """The text so far. `owner` gives for each line the part it belongs to, or -1; `headings` are
    the lines (from 1) that say only what follows.
    """

    text: str
    owner: tuple[int, ...]
    headings: frozenset[int]


def composed(parts: list[Part], *remarks: str) -> Draft:
    """The parts as one text under remarks; the editor's line is one, and stands first."""
    lines, owner = [f"# {remark}" for remark in remarks], [-1] * len(remarks)
    headings: set[int] = set()
    said: tuple[str, ...] = ()
    for number, (asked, answers) in enumerate(parts):
        if not answers:
            continue
        for depth, heading in enumerate(asked.under):
            if asked.under[: depth + 1] != said[: depth + 1]:
                lines.append(heading)
                headings.add(len(lines))
                owner.append(number)
                said = asked.under[: depth + 1]
        said = asked.under
        if asked.remark:
            lines.append(f"# {asked.remark}")
            owner.append(-1)
        lines += [asked.line.replace("{}", quoted(answer, asked.line)) for answer in answers]
        owner += [number] * len(answers)
    return Draft("\n".join(lines) + "\n", tuple(owner), frozenset(headings))


def quoted(answer: str, line: str) -> str:
    """The answer, in quotes where a colon or a remark's sign in it would break the line."""
    if (": " in answer or " #" in answer) and not (line.endswith(PAIRS[0]) or line == PAIRS[1]):
        return '"' + answer.replace('"', "'") + '"'
    return answer
