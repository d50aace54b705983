"""What the number that `coach` ends with means. Numbers from 64 up follow BSD's sysexits (from
memory); 10 and 11 are our own.
"""

from __future__ import annotations

from typing import Final

DONE: Final = 0
FINDINGS: Final = 1
USAGE: Final = 2
RED_FLAG: Final = 10
BY_CHOICE: Final = 11
BAD_FILE: Final = 65
MISSING: Final = 66
OUR_FAULT: Final = 70
CANNOT_CREATE: Final = 73
CANNOT_SAVE: Final = 74
IN_USE: Final = 75
NOT_ALLOWED: Final = 77
HANGUP: Final = 129
INTERRUPTED: Final = 130
TERMINATED: Final = 143

MEANING: Final[dict[int, str]] = {
    DONE: "done, or a rest day",
    FINDINGS: "check found errors; replay differs",
    USAGE: "the command was not understood",
    RED_FLAG: "a stop: the plan is closed",
    BY_CHOICE: "ended by you; all is saved",
    BAD_FILE: "a plan or diary is not right",
    MISSING: "no plan, or a file is missing",
    OUR_FAULT: "a fault of Coach itself",
    CANNOT_CREATE: "the diary cannot be made",
    CANNOT_SAVE: "reading or saving failed",
    IN_USE: "another session is open",
    NOT_ALLOWED: "no right to write the diary",
    HANGUP: "the window was closed",
    INTERRUPTED: "Ctrl-C; all is saved",
    TERMINATED: "told to end; all is saved",
}


def for_end(end: str) -> int:
    """The exit code for the way a session ended (`Turn.end`); an unknown way is our fault."""
    codes = {
        "done": DONE,
        "by choice": BY_CHOICE,
        "partial": BY_CHOICE,
        "stopped": RED_FLAG,
        "closed": DONE,
        "refused": DONE,
    }
    return codes.get(end, OUR_FAULT)
