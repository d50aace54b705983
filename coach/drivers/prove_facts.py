"""The days of the search, each with a bit of its own, and which of them have a fact in common.

Law: a day is the facts of the day; a set of days is a number, so that a step is taken for all of
them at once. Nothing is searched here.
"""

from __future__ import annotations

from typing import Any

from coach.drivers.promises import Path
from coach.drivers.prove_answers import Answers
from coach.drivers.prove_boxes import (
    AFTER_THE_WORK,
    DAY_AT,
    NOTHING_KEPT,
    WORK_TO_COME,
    Box,
    Kept,
    Known,
    Led,
    Place,
)
from coach.drivers.prove_watch import (
    DAY,
    NO_WORK_FACTS,
    TALK,
    WORK_FACTS,
    WatchedBrief,
    WatchedState,
    parts,
    place_of,
    put_together,
    raw_facts,
    read,
    written_by,
)
from coach.session.brief import Brief
from coach.session.state import State
from coach.session.table import Stage

# A day's facts, the talk's and the work kept, one after the other.
ROW_AT = {name: number for number, name in enumerate((*DAY, *TALK, "work"))}
Row = tuple[Any, ...]


class Shared:
    """What the searches of several openings have in common: steps that ran, words that were said."""

    def __init__(self) -> None:
        """Nothing yet."""
        self.answers = Answers()
        self.steps: dict[Any, dict[Any, Known]] = {}
        self.leds: dict[Led, Led] = {}
        self.brief_values: dict[str, list[Any]] = {}
        self.said: set[Any] = set()
        self.reasons_seen: set[object] = set()


class Days:
    """All days met so far on one opening, by number."""

    def __init__(self, opening: tuple[str, Brief], brief_values: dict[str, list[Any]]) -> None:
        """`opening` is a name and the brief of a day.

        `brief_values` numbers the values that parts of a brief have on any opening.
        """
        self.name, brief = opening
        self.brief = WatchedBrief(brief)
        self.brief_values = brief_values
        self.of_brief: dict[str, int] = {}
        self.days: list[tuple[Any, ...]] = []
        self.day_number: dict[tuple[Any, ...], int] = {}
        self.masks: dict[str, dict[Any, int]] = {}
        self.moved: dict[tuple[Any, ...], dict[int, int]] = {}
        self.kept_at: dict[Kept, int] = {}
        self.first_of: dict[frozenset[Kept], Kept] = {}

    def day(self, values: tuple[Any, ...]) -> int:
        """The number of a day."""
        number = self.day_number.get(values)
        if number is None:
            number = self.day_number[values] = len(self.days)
            self.days.append(values)
            for fact, masks in self.masks.items():
                value = values[DAY_AT[fact]]
                masks[value] = masks.get(value, 0) | 1 << number
        return number

    def brief_part(self, fact: str) -> int:
        """The number of the value that a part of the brief has on this opening."""
        number = self.of_brief.get(fact)
        if number is None:
            value, known = parts[fact](self.brief.plain), self.brief_values.setdefault(fact, [])
            if value not in known:
                known.append(value)
            number = self.of_brief[fact] = known.index(value)
        return number

    def mask(self, fact: str, value: Any) -> int:  # noqa: ANN401  any fact
        """The days on which a fact has this value."""
        masks = self.masks.get(fact)
        if masks is None:
            masks = self.masks[fact] = {}
            at = DAY_AT[fact]
            for number, values in enumerate(self.days):
                masks[values[at]] = masks.get(values[at], 0) | 1 << number
        return masks.get(value, 0)

    def moved_days(self, days: int, sets: tuple[tuple[str, Any], ...], live: int) -> int:
        """The days after some facts were set; tests that nothing looks at any more are dropped."""
        if len(sets) == len(DAY):
            values = dict(sets)
            return 1 << self.day(tuple(values[name] for name in DAY))
        moves = self.moved.setdefault((sets, live), {})
        moved = 0
        while days:
            low = days & -days
            days ^= low
            number = low.bit_length() - 1
            to = moves.get(number)
            if to is None:
                facts = list(self.days[number])
                for name, value in sets:
                    facts[DAY_AT[name]] = value
                facts[DAY_AT["truth"]] &= live
                to = moves[number] = self.day(tuple(facts))
            moved |= 1 << to
        return moved

    # ------------------------------------------------------------ boxes of days

    def row(self, box: Box) -> Row:
        """The facts of one day of a box, always the same one."""
        kept = self.first_kept(box)
        days = self.with_kept(box.days, kept)
        facts = self.days[(days & -days).bit_length() - 1]
        return (*facts, *[min(values) for values in box.talk], kept)

    def representative(self, place: Place, row: Row) -> WatchedState:
        """A state of a place with these facts."""
        work = place.key[-1] if place.key[0] is Stage.EXERCISE else row[-1].work
        return put_together(self.brief, place.key, row, work)

    def first_kept(self, box: Box) -> Kept:
        """One of the works kept in a box, always the same."""
        first = self.first_of.get(box.kept)
        if first is None:
            first = min(box.kept, key=lambda kept: self.kept_at.get(kept, -1))
            self.first_of[box.kept] = first
        return first

    def with_kept(self, days: int, kept: Kept) -> int:
        """The days among these that go with a work that waits: those with its rest of the list."""
        return days if kept.todo is None else days & self.mask("todo", kept.todo)

    def feasible(self, box: Box) -> Box:
        """The box less works that go with none of its days."""
        if len(box.kept) == 1:
            (kept,) = box.kept
            some = kept.todo is None or self.with_kept(box.days, kept)
            return box if some else box._replace(days=0)
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

    def facts_read(
        self, state: State, stage: Stage, row: Row
    ) -> tuple[tuple[tuple[str, Any], ...], tuple[str, ...]]:
        """What was read since the last call: facts with the state's values; parts of the brief."""
        found: list[tuple[str, Any]] = []
        of_brief: list[str] = []
        for fact in sorted(read):
            if fact in parts:
                of_brief.append(fact)
            elif fact != "work":
                found.append((fact, raw_facts(state, (fact,))[0]))
            elif stage is not Stage.EXERCISE:
                found.append((fact, row[-1]))
        return tuple(found), tuple(of_brief)

    def part(self, box: Box, fact: str, value: Any) -> tuple[Box, Box]:  # noqa: ANN401
        """The part of a box with this value of a fact, and the rest."""
        days, talk, kept = box
        if fact in DAY_AT:
            inside = days & self.mask(fact, value)
            return Box(inside, talk, kept), Box(days ^ inside, talk, kept)
        if fact == "work":
            same = frozenset((value,)) & kept
            return Box(self.with_kept(days, value), talk, same), Box(days, talk, kept - same)
        at = TALK.index(fact)
        one = frozenset((value,)) & talk[at]
        within = (*talk[:at], one, *talk[at + 1 :])
        without = (*talk[:at], talk[at] - one, *talk[at + 1 :])
        return Box(days, within, kept), Box(days, without, kept)


def led_to(before: State, after: State, path: Path) -> Led:
    """Where a step led, as facts that hold for all days that agree on what it read."""
    written = written_by(after)
    key = place_of(after)
    set_now = tuple(name for name in DAY if name in written)
    day: tuple[tuple[str, Any], ...] = tuple(zip(set_now, raw_facts(after, set_now), strict=True))
    if key[0] not in WORK_TO_COME:
        day = tuple(pair for pair in day if pair[0] not in AFTER_THE_WORK)
        day += tuple(AFTER_THE_WORK.items())
    said_now = tuple(name for name in TALK if name in written)
    talk = tuple(zip(said_now, raw_facts(after, said_now), strict=True))
    if key[0] is not Stage.EXERCISE:
        talk = (*(p for p in talk if p[0] not in WORK_FACTS), *NO_WORK_FACTS.items())
    kept: Kept | None = None
    if key[0] is Stage.EXERCISE:
        kept = NOTHING_KEPT
        if before.stage is not Stage.EXERCISE and "work" not in written:
            read.add("work")  # what waited is where the talk goes on
    else:
        if before.stage is Stage.EXERCISE or "work" in written:
            work = raw_facts(after, ("work",))[0]
            kept = NOTHING_KEPT
            if work is not None:  # all of it waits, and goes with this rest of the list
                read.update(WORK_FACTS, ("todo",))
                kept = Kept(work, path.over, path.holds, raw_facts(after, ("todo",))[0])
        path = path._replace(over=(), holds=0)
    return Led(key, path, day, talk, kept)
