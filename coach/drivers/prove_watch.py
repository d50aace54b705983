"""A state that writes down which facts of the day a step reads, and which it sets.

Law: the session does not know that it is watched. A fact that no step has read is not told apart;
one that was read always is. Only what is said or kept for the diary is left out.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from functools import partial
from operator import attrgetter
from typing import Any, Final

from coach.drivers.promises import Oracle
from coach.model.history import DayRecord, History
from coach.session.brief import Brief
from coach.session.ladders import Standing
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
}
_NOT_OF_A_PLACE: Final = tuple((_WORK_AT[n], v) for n, v in {**_NEXT_DAYS, **_LEFT_OPEN}.items())
NO_WORK_FACTS: Final[dict[str, Any]] = {
    name: tuple(_LEFT_OPEN[field] for field in fields) for name, fields in WORK_FACTS.items()
}
_PLACE_AT: Final = tuple(_AT[name] for name in PLACE)
_DAY_AT: Final = tuple(_AT[name] for name in (*DAY, *TALK) if name in _AT)
_NOTHING_SAID: Final = [SAID.get(name) for name in State._fields]
_NOTHING_SET: Final[frozenset[str]] = frozenset()

read: set[str] = set()  # the facts read since it was last emptied


class WatchedRecord(DayRecord):
    """The last session's record; each field that is read is noted, as `brief.last.fell`."""


class WatchedHistory(History):
    """What the diary hands over; each field that is read is noted, as `brief.history.lifted`."""


class WatchedBrief(Brief):
    """A brief that notes which of its parts are read, as `brief.today`.

    Of the diary and of the last record the field is noted, of the ladders the kind of day.
    """

    __slots__ = ("plain", "watched_history", "watched_last")

    def __init__(self, brief: Brief) -> None:
        """The same brief, watched."""
        for name in Brief.__slots__:
            getattr(Brief, name).__set__(self, getattr(brief, name))
        self.plain = brief
        self.watched_last = WatchedRecord._make(brief.last) if brief.last else None
        self.watched_history = WatchedHistory._make(brief.history)

    @property
    def last(self) -> DayRecord | None:  # type: ignore[override]
        """The last record; that there is one is noted."""
        read.add("brief.first_day")
        return self.watched_last

    @property
    def history(self) -> History:  # type: ignore[override]
        """The history, nothing noted yet."""
        return self.watched_history

    def standings(self, *, morning_up: bool, held: tuple[str, ...]) -> dict[str, Standing]:
        """The ladders on such a day."""
        mark = f"brief.standings {morning_up} {held}"
        parts[mark] = partial(Brief.standings, morning_up=morning_up, held=held)
        read.add(mark)
        return self.plain.standings(morning_up=morning_up, held=held)


# How to find again each part of a brief that was read.
parts: dict[str, Callable[[Brief], Any]] = {}


def _noted_field(kind: type[tuple[Any, ...]], at: int, mark: str) -> property:
    get = kind.__getitem__

    def field(self: Any) -> Any:  # noqa: ANN401  any field of a record
        read.add(mark)
        return get(self, at)

    return property(field)


def _noted_part(name: str) -> property:
    inside = getattr(Brief, name)
    mark = f"brief.{name}"
    parts[mark] = attrgetter(name)

    def part(self: WatchedBrief) -> Any:  # noqa: ANN401  any part of a brief
        read.add(mark)
        return inside.__get__(self)

    return property(part)


for _at, _name in enumerate(DayRecord._fields):
    setattr(WatchedRecord, _name, _noted_field(DayRecord, _at, f"brief.last.{_name}"))
    parts[f"brief.last.{_name}"] = partial(lambda name, b: b.last and getattr(b.last, name), _name)
for _at, _name in enumerate(History._fields):
    setattr(WatchedHistory, _name, _noted_field(History, _at, f"brief.history.{_name}"))
    parts[f"brief.history.{_name}"] = attrgetter(f"history.{_name}")
for _name in Brief.__slots__:
    if _name not in {"last", "history", "_standings"}:
        setattr(WatchedBrief, _name, _noted_part(_name))


class WatchedOracle(Oracle):
    """The promises of a watched brief; what they remember of the diary is noted when it is read."""


def _noted_check(name: str) -> property:
    mark, kept = f"oracle.{name}", f"_{name}"
    parts[mark] = lambda brief: getattr(Oracle(brief), name)

    def check(self: WatchedOracle) -> Any:  # noqa: ANN401  what a promise remembers
        read.add(mark)
        return self.__dict__[kept]

    def put(self: WatchedOracle, value: Any) -> None:  # noqa: ANN401  what a promise remembers
        self.__dict__[kept] = value

    return property(check, put)


for _name in ("due_alone", "full_week", "opened"):
    setattr(WatchedOracle, _name, _noted_check(_name))


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
        written = [_WORK_NOW[name] for name in change if name in _WORK_NOW]
        after.written = self.written.union(written) if written else self.written
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
    work = tuple.__new__(WatchedWork, values)
    work.written = _NOTHING_SET
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
    state = tuple.__new__(WatchedState, values)
    state.written = _NOTHING_SET
    return state


def place_of(state: State) -> tuple[Any, ...]:
    """The part of a state that says where the talk stands."""
    raw: tuple[Any, ...] = tuple(state)
    work = raw[_WORK] if raw[0] is Stage.EXERCISE else None
    if work is not None:
        values = list(work)
        for at, value in _NOT_OF_A_PLACE:
            values[at] = value
        work = tuple.__new__(Work, values)
    return (*[raw[at] for at in _PLACE_AT], work)


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


def put_together(
    brief: Brief,
    place: tuple[Any, ...],
    row: tuple[Any, ...],
    work: Any,  # noqa: ANN401  what is under way, or waits
) -> WatchedState:
    """A watched state of a place and the facts of day and talk, one after the other in `row`."""
    values = _NOTHING_SAID.copy()
    for at, value in zip(_PLACE_AT, place, strict=False):
        values[at] = value
    for at, value in zip(_DAY_AT, row, strict=False):
        values[at] = value
    under_way = place[0] is Stage.EXERCISE and place[-1] is not None
    of_work = dict(zip(WORK_FACTS, row[-1 - len(WORK_FACTS) :], strict=False))
    values[_WORK] = watched_work(place[-1], of_work) if under_way else work
    values[_AT["brief"]] = brief
    return watched(values)
