"""A state that writes down which facts of the day a step reads, and which it sets.

Law: the session does not know that it is watched. A fact that no step has read is not told apart;
one that was read always is. Only what is said or kept for the diary is left out.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any, Final

from coach.session.brief import Brief
from coach.session.state import State, Work
from coach.session.table import Stage

# Facts of the day that belong together; their joint values are kept together.
DAY: Final = (
    "level",
    "short",
    "morning_up",
    "threw",
    "pain_up",
    "playing",
    "no_step",
    "order",
    "recovery",
    "asked",
    "gone",
    "lowered",
    "todo",
    "left_early",
    "throws_only",
    "ache",
    "game_yesterday",
    "game_today",
    "pitched",
    "truth",
)
# Facts of the exercise under way that few of its steps read: each with its fields.
WORK_FACTS: Final[dict[str, tuple[str, ...]]] = {
    "work fault": ("fault", "fault_run"),
    "work felt_due": ("felt_due",),
    "work others_left": ("others_left",),
}
# Facts of the talk, each kept by itself.
TALK: Final = ("doubts", "quoted", "unclear", "under", "reread", *WORK_FACTS)
# What is said, or kept for the diary.
SAID: Final[dict[str, Any]] = {
    "told": (),
    "happened": (),
    "reasons": (),
    "because": (),
    "repeat": False,
    "first": False,
    "blank": (),
    "exercises_today": 0,
}
WATCHED: Final = (*DAY, *TALK, "brief", "work")
PLACE: Final = tuple(name for name in State._fields if name not in WATCHED and name not in SAID)
_AT: Final = {name: number for number, name in enumerate(State._fields)}
# What an exercise keeps for another day, or for the length of a rest only.
_NEXT_DAYS: Final[dict[str, Any]] = {"more": 0, "short": False, "earned": False}
_WORK: Final = _AT["work"]
_WORK_AT: Final = {name: number for number, name in enumerate(Work._fields)}
_WORK_NOW: Final = {f: n for n, fields in WORK_FACTS.items() for f in fields}
# What a place leaves open of the exercise under way.
_LEFT_OPEN: Final[dict[str, Any]] = {
    "fault": -1,
    "fault_run": 0,
    "felt_due": True,
    "others_left": 0,
}
NO_WORK_FACTS: Final[dict[str, Any]] = {
    name: tuple(_LEFT_OPEN[field] for field in fields) for name, fields in WORK_FACTS.items()
}
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
        values = list(self)
        for name, value in change.items():
            values[_AT[name]] = value
        after = tuple.__new__(WatchedState, values)
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


for _name in (*DAY, *(name for name in TALK if name not in WORK_FACTS), "work"):
    setattr(WatchedState, _name, _noted_fact(_name))


class WatchedWork(Work):
    """An exercise under way that notes which of its open facts are read and set."""

    written: frozenset[str]

    def _replace(self, **change: Any) -> WatchedWork:  # noqa: ANN401  any field
        values = list(self)
        for name, value in change.items():
            values[_WORK_AT[name]] = value
        after = tuple.__new__(WatchedWork, values)
        after.written = self.written.union(_WORK_NOW[name] for name in change if name in _WORK_NOW)
        return after


def _noted_work(name: str) -> property:
    at = _WORK_AT[name]
    fact = _WORK_NOW[name]
    get = tuple.__getitem__

    def part(self: WatchedWork) -> Any:  # noqa: ANN401  any field
        if fact not in self.written:
            read.add(fact)
        return get(self, at)

    return property(part)


for _name in _WORK_NOW:
    setattr(WatchedWork, _name, _noted_work(_name))


def watched_work(place: Work, facts: dict[str, Any]) -> WatchedWork:
    """A watched exercise of a place's work and its open facts."""
    values: list[Any] = list(place)
    for name, fields in WORK_FACTS.items():
        for field, value in zip(fields, facts[name], strict=True):
            values[_WORK_AT[field]] = value
    work: WatchedWork = WatchedWork._make(values)
    work.written = frozenset()
    return work


def work_facts(work: Any) -> dict[str, Any]:  # noqa: ANN401  read off a bare tuple
    """The open facts of an exercise under way, unnoted."""
    if work is None:
        return NO_WORK_FACTS
    get = tuple.__getitem__
    return {
        name: tuple(get(work, _WORK_AT[field]) for field in fields)
        for name, fields in WORK_FACTS.items()
    }


def watched(values: Iterable[Any]) -> WatchedState:
    """A watched state of these field values, in the order of the fields."""
    state: WatchedState = WatchedState._make(values)
    state.written = frozenset()
    return state


def place_of(state: State) -> tuple[Any, ...]:
    """The part of a state that says where the talk stands."""
    raw: tuple[Any, ...] = tuple(state)
    work = raw[_WORK]
    under_way = raw[0] is Stage.EXERCISE and work is not None
    work = Work._make(tuple(work))._replace(**_NEXT_DAYS, **_LEFT_OPEN) if under_way else None
    return (*(raw[at] for at in _PLACE_AT), work)


def raw_facts(state: State, names: tuple[str, ...]) -> tuple[Any, ...]:
    """Some facts of a state, unnoted."""
    get = tuple.__getitem__
    return tuple(
        [
            get(state, _AT[name]) if name in _AT else work_facts(get(state, _WORK))[name]
            for name in names
        ]
    )


def written_by(state: State) -> frozenset[str]:
    """The facts that the step to this state set."""
    written = state.written if isinstance(state, WatchedState) else frozenset(State._fields)
    work = tuple.__getitem__(state, _WORK)
    of_work = work.written if isinstance(work, WatchedWork) else frozenset(WORK_FACTS)
    return written | of_work


def put_together(brief: Brief, place: tuple[Any, ...], facts: dict[str, Any]) -> WatchedState:
    """A watched state of a place and the facts of day and talk."""
    every = {**SAID, **dict(zip(PLACE, place[:-1], strict=True)), **facts, "brief": brief}
    if place[0] is Stage.EXERCISE and place[-1] is not None:
        every["work"] = watched_work(place[-1], facts)
    return watched(every[name] for name in State._fields)
