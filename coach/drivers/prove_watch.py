"""A state that writes down which facts of the day a step reads, and which it sets.

Law: the session does not know that it is watched. A fact that no step has read is not told apart;
one that was read always is. Only what is said or kept for the diary is left out.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any, Final

from coach.session.brief import Brief
from coach.session.state import State
from coach.session.table import Stage

# Facts of the day that belong together; their joint values are kept together.
DAY: Final = (
    "level",
    "short",
    "morning_up",
    "threw",
    "pain_up",
    "playing",
    "order",
    "recovery",
    "asked",
    "gone",
    "moves_only",
    "lowered",
    "todo",
    "exercises_today",
    "left_early",
    "truth",
)
# Facts of the talk, each kept by itself.
TALK: Final = ("doubts", "quoted")
# What is said, or kept for the diary.
SAID: Final[dict[str, Any]] = {
    "told": (),
    "happened": (),
    "reasons": (),
    "because": (),
    "repeat": False,
    "first": False,
    "blank": (),
}
WATCHED: Final = (*DAY, *TALK, "brief", "work")
PLACE: Final = tuple(name for name in State._fields if name not in WATCHED and name not in SAID)
_AT: Final = {name: number for number, name in enumerate(State._fields)}
# What an exercise keeps for another day, or for the length of a rest only.
_NEXT_DAYS: Final[dict[str, Any]] = {"more": 0, "short": False, "earned": False}
_WORK: Final = _AT["work"]
_PLACE_AT: Final = tuple(_AT[name] for name in PLACE)

read: set[str] = set()  # the facts read since it was last emptied


class WatchedBrief(Brief):
    """A brief that notes which of its parts are read, as `brief.today`."""

    __slots__ = ("number", "plain")

    def __init__(self, brief: Brief, number: int) -> None:
        """The same brief; `number` is its place among the day's openings."""
        for name in Brief.__slots__:
            getattr(Brief, name).__set__(self, getattr(brief, name))
        self.number = number
        self.plain = brief


def _noted_part(name: str) -> property:
    inside = getattr(Brief, name)
    mark = f"brief.{name}"

    def part(self: WatchedBrief) -> Any:  # noqa: ANN401  any part of a brief
        read.add(mark)
        return inside.__get__(self)

    return property(part)


for _name in Brief.__slots__:
    setattr(WatchedBrief, _name, _noted_part(_name))


class WatchedState(State):
    """A state that notes the facts read from it; `written` are those set since it was made."""

    written: frozenset[str]

    def _replace(self, **change: Any) -> WatchedState:  # noqa: ANN401  any field
        after: WatchedState = super()._replace(**change)
        after.written = self.written.union(change)
        return after


def _noted_fact(name: str) -> property:
    at = _AT[name]
    get = tuple.__getitem__

    def fact(self: WatchedState) -> Any:  # noqa: ANN401  any field
        if name not in self.written:  # what this very step set is nothing that it read
            read.add(name)
        return get(self, at)

    return property(fact)


for _name in (*DAY, *TALK, "work"):
    setattr(WatchedState, _name, _noted_fact(_name))


def watched(values: Iterable[Any]) -> WatchedState:
    """A watched state of these field values, in the order of the fields."""
    state: WatchedState = WatchedState._make(values)
    state.written = frozenset()
    return state


def place_of(state: State) -> tuple[Any, ...]:
    """The part of a state that says where the talk stands."""
    raw: tuple[Any, ...] = tuple(state)
    work = raw[_WORK]
    work = None if raw[0] is not Stage.EXERCISE else work._replace(**_NEXT_DAYS)
    return (*(raw[at] for at in _PLACE_AT), work)


def raw_facts(state: State, names: tuple[str, ...]) -> tuple[Any, ...]:
    """Some fields of a state, unnoted."""
    return tuple(tuple.__getitem__(state, _AT[name]) for name in names)


def put_together(brief: Brief, place: tuple[Any, ...], facts: dict[str, Any]) -> WatchedState:
    """A watched state of a place and the facts of day and talk."""
    every = {**SAID, **dict(zip(PLACE, place[:-1], strict=True)), **facts, "brief": brief}
    return watched(every[name] for name in State._fields)
