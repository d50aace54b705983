"""The days of the search, each with a bit of its own, and which of them have a fact in common.

Law: a day is an opening with the facts of the day; a set of days is a number, so that a step is
taken for all of them at once. Nothing is searched here.
"""

from __future__ import annotations

from typing import Any

from coach.drivers.promises import Path
from coach.drivers.prove_boxes import DAY_AT, Box, Kept, Place
from coach.drivers.prove_watch import (
    DAY,
    TALK,
    WatchedBrief,
    WatchedState,
    put_together,
    raw_facts,
    read,
)
from coach.session.brief import Brief
from coach.session.state import State
from coach.session.table import Stage


class Days:
    """All days met so far, by number."""

    def __init__(self, openings: list[tuple[str, Brief]]) -> None:
        """`openings` pairs a name with the brief of a day; they share one program and plan."""
        self.names = [name for name, _ in openings]
        self.briefs = [WatchedBrief(brief, n) for n, (_, brief) in enumerate(openings)]
        self.days: list[tuple[Any, ...]] = []
        self.day_number: dict[tuple[Any, ...], int] = {}
        self.alike: dict[str, list[int]] = {}
        self.masks: dict[str, dict[Any, int]] = {}
        self.moved: dict[tuple[Any, ...], dict[int, int]] = {}
        self.kept_at: dict[Kept, int] = {}

    def day(self, brief: int, values: tuple[Any, ...]) -> int:
        """The number of a day."""
        key = (brief, *values)
        number = self.day_number.get(key)
        if number is None:
            number = self.day_number[key] = len(self.days)
            self.days.append(key)
            for fact, masks in self.masks.items():
                value = self.value(fact, number)
                masks[value] = masks.get(value, 0) | 1 << number
        return number

    def value(self, fact: str, day: int) -> Any:  # noqa: ANN401  any fact
        """The value of a fact on a day."""
        if fact == "brief":
            return self.days[day][0]
        at = DAY_AT.get(fact)
        if at is None:
            return self.classes(fact)[self.days[day][0]]
        return self.days[day][at]

    def classes(self, fact: str) -> list[int]:
        """For each opening the number of the first one with an equal part of the brief."""
        known = self.alike.get(fact)
        if known is None:
            parts = [getattr(brief, fact.removeprefix("brief.")) for brief in self.briefs]
            known = self.alike[fact] = [parts.index(part) for part in parts]
        return known

    def mask(self, fact: str, value: Any) -> int:  # noqa: ANN401  any fact
        """The days on which a fact has this value."""
        masks = self.masks.get(fact)
        if masks is None:
            masks = self.masks[fact] = {}
            for number in range(len(self.days)):
                one = self.value(fact, number)
                masks[one] = masks.get(one, 0) | 1 << number
        return masks.get(value, 0)

    def moved_days(self, days: int, sets: tuple[tuple[str, Any], ...], live: int) -> int:
        """The days after some facts were set; tests that nothing looks at any more are dropped."""
        if len(sets) == len(DAY):
            values = dict(sets)
            return self.all_set(days, tuple(values[name] for name in DAY))
        moves = self.moved.setdefault((sets, live), {})
        places = [(1 + DAY.index(name), value) for name, value in sets]
        moved = 0
        while days:
            low = days & -days
            days ^= low
            bit = moves.get(low)
            if bit is None:
                facts = list(self.days[low.bit_length() - 1])
                for at, value in places:
                    facts[at] = value
                facts[DAY_AT["truth"]] &= live
                bit = moves[low] = 1 << self.day(facts[0], tuple(facts[1:]))
            moved |= bit
        return moved

    def all_set(self, days: int, values: tuple[Any, ...]) -> int:
        """The days after every fact was set: one for each opening among them."""
        moved = 0
        for number in range(len(self.briefs)):
            if days & self.mask("brief", number):
                moved |= 1 << self.day(number, values)
        return moved

    # ------------------------------------------------------------ boxes of days

    def representative(self, place: Place, box: Box) -> WatchedState:
        """A state of the box."""
        brief, *facts = self.days[self.first_day(box)]
        every = dict(zip(DAY, facts, strict=True))
        every.update({name: min(vs) for name, vs in zip(TALK, box.talk, strict=True)})
        work = place.key[-1]
        if place.key[0] is not Stage.EXERCISE:
            work = self.first_kept(box).work
        every["work"] = work
        return put_together(self.briefs[brief], place.key, every)

    def first_kept(self, box: Box) -> Kept:
        """One of the works kept in a box, always the same."""
        if len(box.kept) == 1:
            return next(iter(box.kept))
        return min(box.kept, key=lambda kept: self.kept_at.setdefault(kept, len(self.kept_at)))

    def first_day(self, box: Box) -> int:
        """The first day of a box that goes with the work kept in it."""
        days = self.with_kept(box.days, self.first_kept(box))
        return (days & -days).bit_length() - 1

    def with_kept(self, days: int, kept: Kept) -> int:
        """The days among these that go with a work that waits: those with its rest of the list."""
        return days if kept.todo is None else days & self.mask("todo", kept.todo)

    def feasible(self, box: Box) -> Box:
        """The box less works that go with none of its days."""
        if len(box.kept) == 1:
            return box if self.with_kept(box.days, next(iter(box.kept))) else box._replace(days=0)
        lists = {kept.todo for kept in box.kept}
        idle = {todo for todo in lists if not self.with_kept(box.days, Kept(todo=todo))}
        if not idle:
            return box
        return box._replace(kept=frozenset(k for k in box.kept if k.todo not in idle))

    def path_of(self, place: Place, box: Box) -> Path:
        """The path's memory at a place, with what waits under a screen."""
        if place.key[0] is Stage.EXERCISE:
            return place.path
        kept = self.first_kept(box)
        return place.path._replace(over=kept.over, holds=kept.holds)

    def facts_read(self, state: State, stage: Stage, box: Box) -> list[tuple[str, Any]]:
        """What was read since the last call, with the state's values; what never differs is left."""
        found: list[tuple[str, Any]] = []
        for fact in sorted(read):
            if fact.startswith("brief."):
                classes = self.classes(fact)
                if any(classes):
                    found.append((fact, classes[state.brief.number]))  # type: ignore[attr-defined]
            elif fact != "work":
                found.append((fact, raw_facts(state, (fact,))[0]))
            elif stage is not Stage.EXERCISE:
                found.append((fact, self.first_kept(box)))
        return found

    def part(self, box: Box, fact: str, value: Any) -> tuple[Box, Box]:  # noqa: ANN401
        """The part of a box with this value of a fact, and the rest."""
        if fact in TALK:
            at = TALK.index(fact)
            one = frozenset((value,)) & box.talk[at]
            inside = (*box.talk[:at], one, *box.talk[at + 1 :])
            outside = (*box.talk[:at], box.talk[at] - one, *box.talk[at + 1 :])
            return box._replace(talk=inside), box._replace(talk=outside)
        if fact == "work":
            same = frozenset((value,)) & box.kept
            days = self.with_kept(box.days, value)
            return Box(days, box.talk, same), box._replace(kept=box.kept - same)
        mask = self.mask(fact, value)
        return box._replace(days=box.days & mask), box._replace(days=box.days & ~mask)

    def value_in(self, box: Box, fact: str) -> Any:  # noqa: ANN401  any fact
        """A fact's value in the representative of a box."""
        if fact in TALK:
            return min(box.talk[TALK.index(fact)])
        if fact == "work":
            return self.first_kept(box)
        return self.value(fact, self.first_day(box))
