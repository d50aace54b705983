"""What is said while a timer runs, and when.

Law: by ear lines are only added: start, half, 10 or 5 seconds, end, each two seconds apart or more,
five at most, the end word first. By eye one line is redrawn. A timer is never said shorter than it is.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

if TYPE_CHECKING:
    from coach.model.turns import Timer

APART_S: Final = 2
JUST_NOW_S: Final = 1  # a line that was due less than a second ago is still said
LATE_S: Final = 20  # from this length on the last mark is 10 s before the end, below it 5 s


class Said(NamedTuple):
    """A line that is said `at_s` seconds after the timer began."""

    at_s: float
    text: str


def whole_s(timer: Timer) -> int:
    """The timer's length with its lead-in, in seconds."""
    return timer.lead_s + timer.seconds


def by_ear(timer: Timer, gone_s: float) -> list[Said]:
    """The lines still to be said, in order; the last one is the end."""
    lead, end = timer.lead_s, whole_s(timer)
    lines = [Said(0, f"Starts in {lead} s.")] if lead else []
    if timer.kind == "hold":  # a rest and what comes next stand in the turn itself
        lines.append(Said(lead, "Hold now."))
    lines += [Said(end - left, f"{left} s left.") for left in marks(timer.seconds)]
    lines.append(Said(end, timer.after))
    return apart([line for line in lines if line.at_s > gone_s - JUST_NOW_S or line.at_s == end])


def marks(seconds: int) -> list[int]:
    """Seconds left at which to speak: half, and 10 or 5."""
    late = 10 if seconds > LATE_S else 5
    return sorted({mark for mark in (seconds // 2, late) if 0 < mark < seconds}, reverse=True)


def apart(lines: list[Said]) -> list[Said]:
    """The lines less those said within two seconds before the next one; the end always stays."""
    kept: list[Said] = []
    for line in reversed(lines):
        if not kept or kept[-1].at_s - line.at_s >= APART_S:
            kept.append(line)
    return kept[::-1]


def by_eye(timer: Timer, gone_s: float) -> str:
    """The line to draw now."""
    side = f"{timer.side[:1].upper()}{timer.side[1:]}"
    if gone_s < timer.lead_s:
        return f"{side}: starts in {left_s(timer.lead_s, gone_s)} s."
    left = left_s(whole_s(timer), gone_s)
    if timer.kind == "hold":
        return f"{side}, hold: {left} s left." if left else timer.after
    return f"Rest: {left} s left. {timer.next}".rstrip() if left else timer.after


def left_s(whole: float, gone_s: float) -> int:
    """Whole seconds left, rounded up, so that none is taken away."""
    return max(0, -int(-(whole - gone_s) // 1))
