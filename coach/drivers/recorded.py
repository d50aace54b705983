"""Events as the diary keeps them, and back.

Law: what is written is what was typed, letter for letter; folding the same records again gives the
same state. Kinds that are no events of the session (a pause, a fault) are left out on the way back.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.model.turns import Event, Resumed, TimerEnded, Typed

if TYPE_CHECKING:
    from collections.abc import Mapping

TYPED: Final = "typed"
TIMER_ENDED: Final = "timer ended"
RESUMED: Final = "resumed"
PAUSED: Final = "paused"
CLOSED: Final = "closed"
FAULT: Final = "fault"


def record_of(event: Event) -> tuple[str, dict[str, object]]:
    """The kind and body under which an event is kept."""
    if isinstance(event, Typed):
        return TYPED, {"text": event.text, "at_s": event.at_s, "fact": event.fact}
    if isinstance(event, Resumed):
        return RESUMED, {"gap_s": event.gap_s, "at_s": event.at_s}
    return TIMER_ENDED, {"at_s": event.at_s}


def event_from(kind: str, body: Mapping[str, object]) -> Event | None:
    """The event of a record; None for one that is no event of the session."""
    if kind == TYPED:
        return Typed(str(body.get("text", "")), _seconds(body, "at_s"), str(body.get("fact", "")))
    if kind == TIMER_ENDED:
        return TimerEnded(_seconds(body, "at_s"))
    if kind == RESUMED:
        return Resumed(_seconds(body, "gap_s"), _seconds(body, "at_s"))
    return None


def _seconds(body: Mapping[str, object], name: str) -> int:
    value = body.get(name, 0)
    return value if isinstance(value, int) else 0
