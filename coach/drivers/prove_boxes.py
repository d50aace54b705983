"""The nouns of the search over all days: places of the talk, boxes of days, steps as they ran.

Law: values only; what may be joined or cut is said here, what is searched is not.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from typing import Any, NamedTuple

from coach.drivers.promises import Path
from coach.drivers.prove_answers import Compared, Number, Try
from coach.drivers.prove_watch import DAY, NO_WORK_FACTS, PLACE, TALK, raw_facts
from coach.model.turns import Ask
from coach.session.brief import Brief
from coach.session.state import State
from coach.session.table import Stage

_ORDER = {stage: number for number, stage in enumerate(Stage)}
# Of a day its facts, and last the opening it belongs to.
DAY_AT = {name: number for number, name in enumerate((*DAY, "opening"))}
# Unclear safety answers so far: taken as any number from the start on, so that none is left out.
ANY_DOUBTS = frozenset((0, 1, 2))
FIRST_TALK = tuple(
    ANY_DOUBTS
    if name == "doubts"
    else frozenset(({**State._field_defaults, **NO_WORK_FACTS}[name],))
    for name in TALK
)
# What a day allows, as far as its list and doses go.
ALLOWS = ("level", "short", "order", "recovery", "lowered", "todo", "opening")
SIDE_TALKS = frozenset({"fix", "gear", "break"})
# After the work a worse morning feeds nothing but the diary.
AFTER_THE_WORK = {"morning_up": False}
WORK_TO_COME = frozenset(
    {
        Stage.OPENING,
        Stage.WHO,
        Stage.CHECK_IN,
        Stage.SCREEN,
        Stage.AT_HAND,
        Stage.TODAY,
        Stage.WARM_UP,
        Stage.EXERCISE,
        Stage.THROWING,
    }
)
# What leads on; corrections, gear and breaks lead back to where they were begun.
FORWARD = frozenset({"onward", "value", "unclear", "maybe", "timer", "stop", "sign"})
DEEPEST = 9  # answers in one short talk; more would be a fault
ASIDE_AT = PLACE.index("aside")
_SIDE_TALK_AT = tuple(PLACE.index(name) for name in ("aside", "sign", "fixing", "since"))
_PHASES = ("before", "set", "ready", "hold", "report", "rest", "recheck")


class Kept(NamedTuple):
    """An exercise that waits under a screen, with what its promises remember and the rest of the
    day's list, which says with which days it goes (None: with all).
    """

    work: Any = None
    over: tuple[tuple[float, float, float], ...] = ()
    holds: int = 0
    todo: tuple[int, ...] | None = None


NOTHING_KEPT = Kept()


class Box(NamedTuple):
    """Days (a bit each) with values of the talk's own facts and the work that is kept."""

    days: int
    talk: tuple[frozenset[Any], ...]
    kept: frozenset[Kept]

    def empty(self) -> bool:
        """Whether nothing is in it."""
        return not self.days or not self.kept or not all(self.talk)


class Reading:
    """Which facts a step read, and how their values are taken from a row and an opening.

    `of_row` reads those of a row, `of_brief` holds the parts of the brief on each opening; of both
    together `days` and `talks` say where the facts of the day and of the talk stand (those of the
    talk with their place in a box), `work` where the work that waits does (-1: it was not read).
    """

    __slots__ = ("days", "of_brief", "of_row", "talks", "work")

    def __init__(
        self,
        facts: tuple[str, ...],
        parts: tuple[str, ...],
        of_row: Callable[[Any], tuple[Any, ...]],
        of_brief: list[tuple[int, ...]],
    ) -> None:
        """`facts` are those of a row, `parts` those of the brief."""
        self.of_row, self.of_brief = of_row, of_brief
        named = tuple(enumerate((*facts, *parts)))
        self.days = tuple((at, fact) for at, fact in named if fact not in {"work", *TALK})
        self.talks = tuple((at, TALK.index(fact)) for at, fact in named if fact in TALK)
        self.work = facts.index("work") if "work" in facts else -1


class Seen(NamedTuple):
    """One step as it ran: what it read, how it compared what was typed, and where it led."""

    reading: Reading
    values: tuple[Any, ...]
    cuts: tuple[tuple[str, str, float, bool], ...]
    result: Any


# Steps as they ran, by what they read and the values they found.
Known = dict[Reading, dict[tuple[Any, ...], list[Seen]]]


class Place:
    """One place of the talk with the days that were seen there."""

    __slots__ = (
        "after",
        "asked",
        "box",
        "key",
        "kind",
        "led",
        "new",
        "number",
        "parent",
        "path",
        "prompt",
        "seen",
        "tried",
    )

    @property
    def asks(self) -> tuple[str, ...]:
        """What is asked here, by name; a screen's section by its own."""
        at = dict(zip(PLACE, self.key, strict=False))
        names = tuple(at["missing"])
        return (*names, f"screen {at['section'].split(' ')[-1]}", *at["since"])

    def __init__(self, number: int, key: tuple[Any, ...], path: Path) -> None:
        """`key` is the place; `path` what promises remember of the way."""
        self.number, self.key, self.path = number, key, path
        self.kind = kind_of_place(key)
        self.box = Box(0, tuple(frozenset() for _ in TALK), frozenset())
        self.new: list[Box] = []
        self.seen: dict[Any, Known] = {}  # its steps as they ran, by what was typed
        self.parent = -1
        self.prompt = ""
        self.tried: Try | None = None
        self.led: dict[tuple[int, str], Box] = {}  # what each step carried, by what was done
        # Where to, by what, in how many answers, and on which openings.
        self.after: dict[tuple[int, str, int], int] = {}
        self.asked: list[Ask | None] = []


class Typed(NamedTuple):
    """What is tried at a prompt, its numbers by fact, and a mark without them."""

    tried: Try
    numbers: dict[str, float]
    mark: Any


class Prompt(NamedTuple):
    """What a prompt asks of the days that agree on what it reads, and all that is tried at it."""

    asked: Ask | None
    tries: tuple[Typed, ...]


NO_PROMPT = Prompt(None, ())


def typed(asked: Ask | None, tried: Try) -> Typed:
    """A try at a prompt with what tells it from others."""
    values: tuple[tuple[str, Any], ...] = tried.heard.values
    for one in tried.then:
        values = (*values, *one.heard.values)
    numbers = {v.fact: v.x for _, v in values if isinstance(v, Number)}
    names = tuple((f, None if isinstance(v, Number) else v) for f, v in values)
    event = "" if values else tried.words
    return Typed(tried, numbers, (asked, tried.kind, event, names))


class Led(NamedTuple):
    """Where a step led: place, path, and the facts it set (for all days alike)."""

    key: tuple[Any, ...]
    path: Path
    day: tuple[tuple[str, Any], ...]
    talk: tuple[tuple[str, Any], ...]
    kept: Kept | None
    answers: int = 1
    once_more: bool = False


def kind_of_place(key: tuple[Any, ...]) -> tuple[Any, ...]:
    """Prompts that are alike for a talk about the day itself."""
    at = dict(zip(PLACE, key, strict=False))
    work = key[-1]
    if work is not None:
        return (key[0], work.place)
    if key[0] is Stage.SCREEN:
        return (key[0], at["section"], at["back"])
    return (key[0], at["at"])


def goes_on_at(key: tuple[Any, ...]) -> bool:
    """Whether something follows here without an answer, as `engine.goes_on` says of a state."""
    at = dict(zip(PLACE, key, strict=False))
    if at["aside"] or at["end"] or not at["onward"]:
        return False
    return key[0] is not Stage.SCREEN or at["onward"][0] == "return"


def side_talk(key: tuple[Any, ...]) -> tuple[Any, ...]:
    """Short talks that are alike, whatever lies under them."""
    return (key[0], *(key[at] for at in _SIDE_TALK_AT))


def asked_once_more(before: State, after: State) -> bool:
    """Whether a strong pain was denied, so that its number is asked once more, and only once."""
    (was,), (now,) = raw_facts(before, ("reread",)), raw_facts(after, ("reread",))
    return bool(now) and not was


def used_up(before: State, after: State) -> bool:
    """Whether a doubt or a read-back was used up, of which each prompt has only one."""
    facts = ("unclear", "reread", "doubts")
    was, now = raw_facts(before, facts), raw_facts(after, facts)
    return any(new > old for old, new in zip(was, now, strict=True))


def set_further_on(before: State, after: State) -> bool:
    """Whether an answer about a break counted sets: the exercise then stands where its own sets
    would have brought it.
    """
    if before.aside != "since" or before.since[:1] != ("sets since",):
        return False
    was, now = before.work, after.work
    return was is None or now is None or now[:4] != was[:4]


@cache
def one_said(at: int, value: Any) -> frozenset[Any]:  # noqa: ANN401  any fact of the talk
    """One value of the talk's fact at this place of a box, the same object each time."""
    del at  # facts of different kinds may have equal values
    return frozenset((value,))


def above(number: float, cut: Compared) -> bool:
    """On which side of a cut a number lies."""
    return number > cut.number if cut.side == "over" else number >= cut.number


def same_sides(seen: Seen, numbers: dict[str, float]) -> bool:
    """Whether numbers lie on the same sides of all that a step compared."""
    for fact, side, cut, truth in seen.cuts:
        number = numbers[fact]
        if (number > cut if side == "over" else number >= cut) is not truth:
            return False
    return True


def inside(box: Box, other: Box) -> bool:
    """Whether a box holds nothing that the other does not."""
    if box.days | other.days != other.days or not box.kept <= other.kept:
        return False
    return box.talk is other.talk or all(map(frozenset.issubset, box.talk, other.talk))


def joined(boxes: list[Box]) -> Box:
    """The least box that holds all of these."""
    if len(boxes) == 1:
        return boxes[0]
    days, talk, kept = boxes[0]
    for more, said, works in boxes[1:]:
        days |= more
        if said is not talk and said != talk:
            talk = tuple([a if b <= a else a | b for a, b in zip(talk, said, strict=True)])
        if works is not kept and works != kept:
            kept |= works
    return Box(days, talk, kept)


def rank(key: tuple[Any, ...]) -> tuple[int, ...]:
    """A number that mostly rises along a session, so that days arrive before they are carried on.

    A screen asked again comes last: days gather there from the whole day.
    """
    stage, at, missing = key[0], key[1], key[2]
    again = bool(key[PLACE.index("back")])
    work = key[-1]
    inside = (0, 0, 0, 0)
    if work is not None:
        phase = _PHASES.index(work.phase)
        inside = (work.place, work.set_number, work.hold_number, phase)
    return (again, _ORDER[stage], *inside, at, -len(missing))


# Which moments of the scripts are looked at in which stages, in the order of a day.
STILL_TO_COME = (
    ((Stage.OPENING, Stage.WHO, Stage.CHECK_IN), ("check-in",)),
    ((Stage.SCREEN,), ("screen",)),
    ((Stage.AT_HAND,), ("at hand",)),
    ((Stage.TODAY, Stage.WARM_UP), ("warm-up",)),
    ((Stage.EXERCISE,), ("before an exercise", "after a set")),
    ((Stage.THROWING,), ("throwing",)),
    ((Stage.CLOSE,), ("close",)),
)


def live_bits(brief: Brief) -> dict[Stage, int]:
    """For each stage the tests of scripts that are still to be looked at from there on."""
    live: dict[Stage, int] = {}
    later = 0
    for stages, moments in reversed(STILL_TO_COME):
        for moment in moments:
            for step in brief.items[moment]:
                for bit in step.when:
                    later |= 1 << bit
        live.update(dict.fromkeys(stages, later))
    return live


def grown(old: Box, box: Box) -> tuple[Box, list[Box]]:
    """Two boxes joined; and the parts that are new in the join."""
    if inside(box, old):
        return old, []
    hull = joined([old, box])
    parts = [Box(hull.days & ~old.days, hull.talk, hull.kept)]
    talk = hull.talk
    for at, known in enumerate(old.talk):
        fresh = talk[at] - known
        if fresh:
            parts.append(Box(old.days, (*talk[:at], fresh, *talk[at + 1 :]), hull.kept))
            talk = (*talk[:at], known, *talk[at + 1 :])
    parts.append(Box(old.days, old.talk, hull.kept - old.kept))
    return hull, [part for part in parts if not part.empty()]
