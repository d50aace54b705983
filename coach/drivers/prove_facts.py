"""The days of the search, each with a bit of its own, and which of them have a fact in common.

Law: a day is the facts of the day and the opening it belongs to; a set of days is a number, so that
a step is taken for all of them at once. Nothing is searched here.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence
from operator import itemgetter
from typing import Any

from coach.drivers.promises import Path
from coach.drivers.prove_boxes import (
    AFTER_THE_WORK,
    ALLOWS,
    DAY_AT,
    NOTHING_KEPT,
    WORK_TO_COME,
    Box,
    Kept,
    Led,
    Place,
    Reading,
    Seen,
    one_said,
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

# A day's facts with its opening, the talk's and the work kept, one after the other.
ROW_AT = {name: number for number, name in enumerate((*DAY_AT, *TALK, "work"))}
OPENING_AT = DAY_AT["opening"]
_ALLOWS_AT = tuple(DAY_AT[name] for name in ALLOWS)
Row = tuple[Any, ...]


class Openings:
    """The kinds of day that are searched together, by number, and the parts of their briefs."""

    def __init__(self, openings: Sequence[tuple[str, Brief]]) -> None:
        """Each with a name."""
        self.names = [name for name, _brief in openings]
        self.briefs = [WatchedBrief(brief) for _name, brief in openings]
        self.numbers: dict[str, list[int]] = {}

    def part(self, fact: str, opening: int) -> int:
        """The number of the value that a part of the brief has on an opening."""
        return self.parts(fact)[opening]

    def parts(self, fact: str) -> list[int]:
        """The numbers of the values that a part of the brief has on each opening."""
        numbers = self.numbers.get(fact)
        if numbers is None:
            known: list[Any] = []
            numbers = self.numbers[fact] = []
            for brief in self.briefs:
                value = parts[fact](brief.plain)
                if value not in known:
                    known.append(value)
                numbers.append(known.index(value))
        return numbers


def numbers_in(days: int) -> Iterator[int]:
    """The numbers of some days, in order."""
    digits = bin(days)[:1:-1]
    at = digits.find("1")
    while at >= 0:
        yield at
        at = digits.find("1", at + 1)


def together(numbers: Collection[int]) -> int:
    """Days by their numbers, a bit each."""
    if not numbers:
        return 0
    digits = bytearray(max(numbers) // 8 + 1)
    for number in numbers:
        digits[number >> 3] |= 1 << (number & 7)
    return int.from_bytes(digits, "little")


class Room:
    """The days met in one stage, each with a number and a bit of its own."""

    def __init__(self, openings: Openings) -> None:
        """Nothing yet."""
        self.openings = openings
        self.days: list[tuple[Any, ...]] = []
        self.number: dict[tuple[Any, ...], int] = {}
        self.masks: dict[str, dict[Any, int]] = {}
        self.alike: list[int] = []  # what each day allows, by number
        self.allowing: dict[tuple[Any, ...], int] = {}

    def day(self, values: tuple[Any, ...]) -> int:
        """The number of a day."""
        number = self.number.get(values)
        if number is None:
            number = self.number[values] = len(self.days)
            self.days.append(values)
            allows = tuple([values[at] for at in _ALLOWS_AT])
            self.alike.append(self.allowing.setdefault(allows, len(self.allowing)))
            for fact, masks in self.masks.items():
                value = self.value(fact, values)
                masks[value] = masks.get(value, 0) | 1 << number
        return number

    def value(self, fact: str, values: tuple[Any, ...]) -> Any:  # noqa: ANN401  any fact
        """A fact of a day; of a part of the brief the number of its value."""
        at = DAY_AT.get(fact)
        return values[at] if at is not None else self.openings.part(fact, values[OPENING_AT])

    def mask(self, fact: str, value: Any) -> int:  # noqa: ANN401  any fact
        """The days on which a fact has this value."""
        masks = self.masks.get(fact)
        if masks is None:
            masks = self.masks[fact] = {}
            for number, values in enumerate(self.days):
                here = self.value(fact, values)
                masks[here] = masks.get(here, 0) | 1 << number
        return masks.get(value, 0)

    def openings_of(self, days: int) -> int:
        """The openings these days belong to, a bit each."""
        found = 0
        for opening in range(len(self.openings.names)):
            if days & self.mask("opening", opening):
                found |= 1 << opening
        return found

    def one_each(self, days: int, openings: int) -> int:
        """The first of these days on each of some openings."""
        first = 0
        for opening in range(len(self.openings.names)):
            if openings >> opening & 1:
                some = days & self.mask("opening", opening)
                first |= some & -some
        return first


class Days:
    """All days met so far, in a room for each stage; what is asked of boxes is of one room."""

    def __init__(self, openings: Openings) -> None:
        """`openings` are the kinds of day that are searched."""
        self.openings = openings
        self.rooms = {stage: Room(openings) for stage in Stage}
        self.room = self.rooms[Stage.OPENING]
        self.moved: dict[tuple[Any, ...], dict[int, int]] = {}
        self.readings: dict[frozenset[str], Reading] = {}
        self.kept_at: dict[Kept, int] = {}
        self.first_of: dict[frozenset[Kept], Kept] = {}
        self.first_said: dict[tuple[frozenset[Any], ...], tuple[Any, ...]] = {}

    def moved_days(self, days: int, sets: tuple[tuple[str, Any], ...], to: Stage, live: int) -> int:
        """The days of this room as they are in another after some facts were set.

        Tests that nothing looks at any more are dropped.
        """
        room = self.rooms[to]
        moves = self.moved.setdefault((id(self.room), to, sets), {})
        moved: set[int] = set()
        for number in numbers_in(days):
            at = moves.get(number)
            if at is None:
                facts = list(self.room.days[number])
                for name, value in sets:
                    facts[DAY_AT[name]] = value
                facts[DAY_AT["truth"]] &= live
                at = moves[number] = room.day(tuple(facts))
            moved.add(at)
        return together(moved)

    # ------------------------------------------------------------ boxes of days

    def row(self, box: Box) -> Row:
        """The facts of one day of a box, always the same one."""
        kept = self.first_kept(box)
        days = self.with_kept(box.days, kept)
        facts = self.room.days[(days & -days).bit_length() - 1]
        said = self.first_said.get(box.talk)
        if said is None:
            said = self.first_said[box.talk] = tuple([min(values) for values in box.talk])
        return (*facts, *said, kept)

    def representative(self, place: Place, row: Row) -> WatchedState:
        """A state of a place with these facts."""
        work = place.key[-1] if place.key[0] is Stage.EXERCISE else row[-1].work
        brief = self.openings.briefs[row[OPENING_AT]]
        return put_together(brief, place.key, (*row[:OPENING_AT], *row[OPENING_AT + 1 :]), work)

    def first_kept(self, box: Box) -> Kept:
        """One of the works kept in a box, always the same."""
        first = self.first_of.get(box.kept)
        if first is None:
            first = min(box.kept, key=lambda kept: self.kept_at.get(kept, -1))
            self.first_of[box.kept] = first
        return first

    def with_kept(self, days: int, kept: Kept) -> int:
        """The days among these that go with a work that waits: those with its rest of the list."""
        return days if kept.todo is None else days & self.room.mask("todo", kept.todo)

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

    def reading(self, stage: Stage) -> Reading:
        """What the step that just ran read.

        The exercise under way is a part of its place; elsewhere the work that waits is a fact.
        """
        names = frozenset(read - {"work"} if stage is Stage.EXERCISE else read)
        found = self.readings.get(names)
        if found is None:
            facts = tuple(sorted(names - parts.keys()))
            of_brief = tuple(sorted(names & parts.keys()))
            at = tuple(ROW_AT[fact] for fact in facts)
            numbers = [self.openings.parts(fact) for fact in of_brief]
            on = [tuple(column) for column in zip(*numbers, strict=True)] if numbers else []
            found = self.readings[names] = Reading(
                facts,
                of_brief,
                itemgetter(*at) if len(at) > 1 else lambda row: tuple([row[one] for one in at]),
                on or [()] * len(self.openings.names),
            )
        return found

    def cut(self, box: Box, seen: Seen, rest: list[Box]) -> Box:
        """The part of a box that has all that a step read; what has not goes to `rest`."""
        days, talk, kept = box
        same, reading, values = days, seen.reading, seen.values
        for number, fact in reading.days:
            same &= self.room.mask(fact, values[number])
        if same != days:
            rest.append(Box(days ^ same, talk, kept))
        for number, at in reading.talks:
            if len(talk[at]) > 1:
                one = one_said(at, values[number])
                rest.append(Box(same, (*talk[:at], talk[at] - one, *talk[at + 1 :]), kept))
                talk = (*talk[:at], one, *talk[at + 1 :])
        if reading.work >= 0:
            work: Kept = values[reading.work]
            if len(kept) > 1:
                rest.append(Box(same, talk, kept - {work}))
            same, kept = self.with_kept(same, work), frozenset((work,))
        return Box(same, talk, kept)


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
