"""Every situation of every opening at once: places of the talk, each with the days it can meet.

Law: a step is taken once for all days that agree on what it reads; what it reads is written down
while it runs, never assumed. Facts are joined per place, so that too much is searched at most.
"""

from __future__ import annotations

import heapq
from collections.abc import Callable, Iterable, Iterator
from typing import Any

from coach.drivers.promises import Broken, Oracle, Path
from coach.drivers.prove_answers import Answers, Compared, Number, Try
from coach.drivers.prove_boxes import (
    AFTER_CHECK_IN,
    ALLOWS,
    ANY_DOUBTS,
    ASIDE_AT,
    DAY_AT,
    DEEPEST,
    NOTHING_KEPT,
    SIDE_TALKS,
    Box,
    Kept,
    Known,
    Led,
    Place,
    Prompt,
    Seen,
    above,
    grown,
    joined,
    kind_of_place,
    live_bits,
    rank,
    side_talk,
)
from coach.drivers.prove_search import tries_at
from coach.drivers.prove_watch import (
    DAY,
    TALK,
    WatchedBrief,
    WatchedState,
    place_of,
    put_together,
    raw_facts,
    read,
)
from coach.model.turns import Ask
from coach.session.brief import Brief
from coach.session.engine import ask_of, start, take, turn
from coach.session.state import State
from coach.session.table import Stage


class Whole:
    """The search over all openings."""

    def __init__(self, openings: list[tuple[str, Brief]], *, most: int = 250_000) -> None:
        """`openings` pairs a name with the brief of a day; they share one program and plan."""
        self.names = [name for name, _ in openings]
        self.briefs = [WatchedBrief(brief, n) for n, (_, brief) in enumerate(openings)]
        self.oracles = [Oracle(brief) for brief in self.briefs]
        shared: set[object] = set()
        for oracle in self.oracles:
            oracle.reasons_seen = shared
        self.answers = Answers()
        self.most = most
        self.places: list[Place] = []
        self.number: dict[tuple[Any, ...], int] = {}
        self.days: list[tuple[Any, ...]] = []
        self.day_number: dict[tuple[Any, ...], int] = {}
        self.alike: dict[str, list[int]] = {}
        self.masks: dict[str, dict[Any, int]] = {}
        self.moved: dict[tuple[Any, ...], dict[int, int]] = {}
        self.todo: list[tuple[tuple[int, ...], int]] = []
        self.broken: dict[tuple[str, str], tuple[int, Try | None, int]] = {}
        self.said: set[Any] = set()
        self.calls = self.turns = 0
        self.on_progress: Callable[[Whole], None] = lambda _: None
        self.events: set[Any] = set()
        self.side_talks: dict[Any, int] = {}
        self.side_talks_seen: set[Any] = set()
        self.compared: set[Compared] = set()
        self.live = live_bits(self.briefs[0])

    # ------------------------------------------------------------ days and their facts

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

    # ------------------------------------------------------------ boxes

    def representative(self, place: Place, box: Box) -> WatchedState:
        """A state of the box."""
        number = (box.days & -box.days).bit_length() - 1
        brief, *facts = self.days[number]
        every = dict(zip(DAY, facts, strict=True))
        every.update({name: min(vs) for name, vs in zip(TALK, box.talk, strict=True)})
        work = place.key[-1]
        if place.key[0] is not Stage.EXERCISE:
            work = self.first_kept(box)[0]
        every["work"] = work
        return put_together(self.briefs[brief], place.key, every)

    def first_kept(self, box: Box) -> Kept:
        """One of the works kept in a box, always the same."""
        return min(box.kept, key=repr) if len(box.kept) > 1 else next(iter(box.kept))

    def path_of(self, place: Place, box: Box) -> Path:
        """The path's memory at a place, with what waits under a screen."""
        if place.key[0] is Stage.EXERCISE:
            return place.path
        _work, over, holds = self.first_kept(box)
        return place.path._replace(over=over, holds=holds)

    def facts_read(self, state: State, stage: Stage) -> list[tuple[str, Any]]:
        """What was read since the last call, with the state's values; what never differs is left."""
        found: list[tuple[str, Any]] = []
        for fact in sorted(read):
            if fact.startswith("brief."):
                classes = self.classes(fact)
                if any(classes):
                    found.append((fact, classes[state.brief.number]))  # type: ignore[attr-defined]
            elif fact != "work" or stage is not Stage.EXERCISE:
                found.append((fact, raw_facts(state, (fact,))[0]))
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
            same = frozenset(k for k in box.kept if k[0] == value)
            return box._replace(kept=same), box._replace(kept=box.kept - same)
        mask = self.mask(fact, value)
        return box._replace(days=box.days & mask), box._replace(days=box.days & ~mask)

    def cases(
        self,
        place: Place,
        mark: Any,  # noqa: ANN401  what was typed, numbers left out
        numbers: dict[str, float],
        box: Box,
        run: Callable[[WatchedState, Box], Any],
    ) -> Iterator[tuple[Box, Any]]:
        """The box cut into parts for which one step ran alike, each with its result."""
        boxes = [] if box.empty() else [box]
        known = place.seen.setdefault(mark, {})
        while boxes:
            box = boxes.pop()
            seen = self.match(known, numbers, box) or self.ran(place, known, numbers, box, run)
            for fact, value in zip(seen.facts, seen.values, strict=True):
                box, rest = self.part(box, fact, value)
                if not rest.empty():
                    boxes.append(rest)
            yield box, seen.result

    def ran(
        self,
        place: Place,
        known: Known,
        numbers: dict[str, float],
        box: Box,
        run: Callable[[WatchedState, Box], Any],
    ) -> Seen:
        """Run a step for the box's representative and keep what it read and compared."""
        state = self.representative(place, box)
        log = self.answers.log
        log.clear()
        read.clear()
        result = run(state, box)
        found = self.facts_read(state, place.key[0])
        self.compared |= log
        if "pain in set" in numbers:
            log.add(Compared("pain in set", "over", self.briefs[0].plan.pain.in_exercise))
        cuts = tuple(
            (c.fact, c.side, c.number, above(numbers[c.fact], c)) for c in log if c.fact in numbers
        )
        seen = Seen(tuple(f for f, _ in found), tuple(v for _, v in found), cuts, result)
        known.setdefault(seen.facts, {}).setdefault(seen.values, []).append(seen)
        return seen

    def match(self, known: Known, numbers: dict[str, float], box: Box) -> Seen | None:
        """A step that already ran for such a day and for numbers on the same sides of every cut."""
        for facts, by_values in known.items():
            for seen in by_values.get(tuple(self.value_in(box, fact) for fact in facts), ()):
                if all(
                    (numbers[fact] > cut if side == "over" else numbers[fact] >= cut) is truth
                    for fact, side, cut, truth in seen.cuts
                ):
                    return seen
        return None

    def value_in(self, box: Box, fact: str) -> Any:  # noqa: ANN401  any fact
        """A fact's value in the representative of a box."""
        if fact in TALK:
            return min(box.talk[TALK.index(fact)])
        if fact == "work":
            return self.first_kept(box)[0]
        return self.value(fact, (box.days & -box.days).bit_length() - 1)

    # ------------------------------------------------------------ the search

    def run(self) -> None:
        """Visit everything."""
        for number, brief in enumerate(self.briefs):
            state = start(brief)
            self.keep_broken(self.oracles[number].at_start(state), -1, None, 1 << number)
            facts = self.day(number, raw_facts(state, DAY))
            box = Box(1 << facts, (ANY_DOUBTS, frozenset((False,))), frozenset((NOTHING_KEPT,)))
            self.arrive(place_of(state), Path(), box)
        while self.todo:
            _rank, number = heapq.heappop(self.todo)
            place = self.places[number]
            boxes, place.new = place.new, []
            self.visit(place, joined(boxes))
            self.on_progress(self)

    def arrive(
        self,
        key: tuple[Any, ...],
        path: Path,
        box: Box,
        came: tuple[int, str, Try] | None = None,
    ) -> int:
        """Add days to a place; what is new there is visited later."""
        number = self.number.get((key, path))
        if number is None:
            number = self.number[key, path] = len(self.places)
            place = Place(number, key, path)
            self.places.append(place)
            if came is not None:
                place.parent, place.prompt, place.tried = came
            if number > self.most:
                raise OverflowError(f"more than {self.most} places")
        place = self.places[number]
        place.box, new = grown(place.box, box)
        if new and not place.new:
            heapq.heappush(self.todo, (rank(key), number))
        place.new += new
        return number

    def visit(self, place: Place, box: Box) -> None:
        """Show a place to new days, check it, and take every answer."""
        alike: dict[Any, tuple[Prompt, list[Box]]] = {}
        for part, prompt in self.cases(
            place, "prompt", {}, box, lambda s, b: self.prompt(place, s, b)
        ):
            mark = (prompt.asked, tuple(tried.words for tried in prompt.tries))
            alike.setdefault(mark, (prompt, []))[1].append(part)
        for prompt, boxes in alike.values():
            whole = joined(boxes)
            for tried in prompt.tries:
                self.answer(place, whole, prompt, tried)

    def answer(self, place: Place, box: Box, prompt: Prompt, tried: Try) -> None:
        """One answer on all days of a box."""
        if tried.kind in SIDE_TALKS:
            box = self.days_for_side_talk(place, tried, box)
        values: tuple[tuple[str, Any], ...] = tried.heard.values
        numbers = {v.fact: v.x for _, v in values if isinstance(v, Number)}
        names = tuple((f, None if isinstance(v, Number) else v) for f, v in values)
        event = "" if tried.kind == "value" else tried.words
        mark = (prompt.asked, tried.kind, event, names)
        for part, leads in self.cases(
            place, mark, numbers, box, lambda s, b: self.step(place, s, b, prompt, tried)
        ):
            for led in leads:
                self.lead(place, part, prompt, tried, led)

    def days_for_side_talk(self, place: Place, tried: Try, box: Box) -> Box:
        """A correction, gear or a break is tried on every day at one prompt of each kind, and in
        every state of an exercise on one day: what it changes in the day is the same at each.
        """
        kind = (tried.words, *kind_of_place(place.key))
        done = self.side_talks.get(kind, 0)
        self.side_talks[kind] = done | box.days
        fresh = box.days & ~done
        if place.key[0] is Stage.EXERCISE:
            fresh = self.one_of_a_kind(kind, fresh)
            work = (tried.words, place.key[-1])
            if not fresh and work not in self.side_talks:
                fresh = box.days & -box.days
            self.side_talks.setdefault(work, 0)
        return box._replace(days=fresh)

    def one_of_a_kind(self, kind: object, days: int) -> int:
        """Of days that allow the same work only the first: inside an exercise nothing else acts."""
        kept = 0
        while days:
            low = days & -days
            days ^= low
            facts = self.days[low.bit_length() - 1]
            mark = (kind, *(facts[DAY_AT[name]] for name in ALLOWS))
            if mark not in self.side_talks:
                self.side_talks[mark] = kept
                kept |= low
        return kept

    def prompt(self, place: Place, state: WatchedState, box: Box) -> Prompt:
        """What one day shows at a place, checked."""
        self.turns += 1
        oracle = self.oracles[state.brief.number]  # type: ignore[attr-defined]
        shown = turn(state)
        self.keep_broken(oracle.on_turn(state, shown), place.number, None, box.days)
        kept = set(read)
        self.keep_broken(oracle.reasons(state, shown), place.number, None, box.days)
        read.clear()
        read.update(kept)
        if state.end:
            return Prompt(shown, None, ())
        asked = ask_of(state)
        plain = tuple(tries_at(state, asked, shown, self.answers))
        tries = tuple(one for tried in plain for one in self.by_fact(state, tried))
        self.at_prompt(place, oracle, state, asked, tries, box)
        return Prompt(shown, asked, tries)

    def at_prompt(
        self,
        place: Place,
        oracle: Oracle,
        state: State,
        asked: Ask | None,
        tries: tuple[Try, ...],
        box: Box,
    ) -> None:
        """P8 and P10 once for each question of a place; what that reads is not the prompt's."""
        if asked in place.asked:
            return
        place.asked.append(asked)
        kept = set(read)
        self.keep_broken(oracle.at_prompt(state, asked, tries), place.number, None, box.days)
        read.clear()
        read.update(kept)

    def by_fact(self, state: WatchedState, tried: Try) -> Iterator[Try]:
        """A correction, once for each answer that can be changed here."""
        yield tried
        if tried.kind != "fix":
            return
        which = take(state, tried.event, tried.heard)
        asked = ask_of(which) if isinstance(which, State) and which.aside == "fix" else None
        if asked is not None:
            for one in self.answers.to(asked.question, state):
                yield tried._replace(words=f"fix, {one.words}", then=one)

    def step(
        self, place: Place, state: WatchedState, box: Box, prompt: Prompt, tried: Try
    ) -> tuple[Led, ...]:
        """One answer on one day, checked; a side talk it opens is gone through to its ends."""
        oracle = self.oracles[state.brief.number]  # type: ignore[attr-defined]
        path = self.path_of(place, box)
        after, path = self.taken(place, oracle, state, prompt.asked, tried, path, box)
        if not after.aside or state.aside:
            return (self.led(state, after, path),)
        kind = side_talk(after)
        first = kind not in self.side_talks_seen
        self.side_talks_seen.add(kind)
        found = {self.led(state, after, path): None} if first else {}
        if tried.then is not None:
            after, path = self.taken(place, oracle, after, ask_of(after), tried.then, path, box)
        if tried.kind != "fix" or tried.then is not None:
            for end, way in self.ends(place, oracle, after, path, box, 0):
                found[self.led(state, end, way)] = None
        return tuple(found)

    def taken(
        self,
        place: Place,
        oracle: Oracle,
        state: State,
        asked: Ask | None,
        tried: Try,
        path: Path,
        box: Box,
    ) -> tuple[State, Path]:
        """The state after one answer, checked."""
        self.calls += 1
        after = take(state, tried.event, tried.heard)
        if not isinstance(after, State):
            raise TypeError(after.why)
        path, broken = oracle.on_step(state, asked, tried, after, path)
        self.keep_broken(broken, place.number, tried, box.days)
        self.what_was_said(place, oracle, after, tried, box)
        return after, path

    def ends(
        self, place: Place, oracle: Oracle, state: State, path: Path, box: Box, deep: int
    ) -> Iterator[tuple[State, Path]]:
        """Every way out of a short talk by its answers.

        Unclear ones lead nowhere else (P10, checked where the talk is first met).
        """
        asked = ask_of(state)
        if asked is None or deep > DEEPEST:
            return
        for tried in self.one_of_each(asked, state):
            after, way = self.taken(place, oracle, state, asked, tried, path, box)
            if after.aside and not after.end:
                yield from self.ends(place, oracle, after, way, box, deep + 1)
            else:
                yield after, way

    def one_of_each(self, asked: Ask, state: State) -> Iterator[Try]:
        """One answer for each way the session compared numbers."""
        before, log = set(self.answers.log), self.answers.log
        known: list[tuple[Compared, bool]] = []
        for tried in self.answers.to(asked.question, state):
            value = tried.values[0][1]
            if not isinstance(value, str | tuple):
                if known and all(above(value, cut) is truth for cut, truth in known):
                    continue
                log.clear()
                yield tried
                if tried.values[0][0] == "pain in set":  # the promise's own cut joins the rules'
                    log.add(Compared("pain in set", "over", self.briefs[0].plan.pain.in_exercise))
                known = [(cut, above(value, cut)) for cut in log]
                before |= log
                continue
            yield tried
            before |= log
        log |= before

    def what_was_said(
        self, place: Place, oracle: Oracle, after: State, tried: Try, box: Box
    ) -> None:
        """P11 and P12 on words and reasons that no earlier step said at such a prompt."""
        raw = raw_facts(after, ("told", "reasons", "repeat", "stage", "aside", "happened"))
        told, reasons, repeat, stage, aside, happened = raw
        self.events.update((one.kind, one.what) for one in happened)
        self.events.update(("tell", line.text) for line in told)
        mark = (told, reasons, repeat, stage, aside)
        if mark not in self.said:
            self.said.add(mark)
            self.turns += 1
            kept = set(read)
            shown = turn(after)
            self.keep_broken(oracle.on_turn(after, shown), place.number, tried, box.days)
            self.keep_broken(oracle.reasons(after, shown), place.number, tried, box.days)
            read.clear()
            read.update(kept)

    def led(self, before: State, after: State, path: Path) -> Led:
        """Where a step led, as facts that hold for all days that agree on what it read."""
        written = after.written if isinstance(after, WatchedState) else frozenset(State._fields)
        key = place_of(after)
        day = tuple((n, v) for n, v in zip(DAY, raw_facts(after, DAY), strict=True) if n in written)
        if key[0] not in {Stage.WHO, Stage.CHECK_IN}:
            day = (
                *(pair for pair in day if pair[0] not in AFTER_CHECK_IN),
                *AFTER_CHECK_IN.items(),
            )
        talk = tuple(
            (n, v) for n, v in zip(TALK, raw_facts(after, TALK), strict=True) if n in written
        )
        kept: Kept | None = None
        if key[0] is Stage.EXERCISE:
            kept = NOTHING_KEPT
        else:
            if before.stage is Stage.EXERCISE or "work" in written:
                work = raw_facts(after, ("work",))[0]
                kept = (work, path.over, path.holds) if work is not None else NOTHING_KEPT
            path = path._replace(over=(), holds=0)
        return Led(key, path, day, talk, kept)

    def lead(self, place: Place, box: Box, prompt: Prompt, tried: Try, led: Led) -> None:
        """Carry the days of a box along a step."""
        days = box.days
        if led.key[ASIDE_AT]:  # the first of its kind, kept for its own prompts: one day is enough
            days &= -days
        if led.day or led.key[0] is not place.key[0]:
            days = self.moved_days(days, led.day, self.live.get(led.key[0], 0))
        talk = box.talk
        for name, value in led.talk:
            at = TALK.index(name)
            talk = (*talk[:at], frozenset((value,)), *talk[at + 1 :])
        kept = box.kept if led.kept is None else frozenset((led.kept,))
        name = prompt.asked.name if prompt.asked else "rest"
        to = self.arrive(led.key, led.path, Box(days, talk, kept), (place.number, name, tried))
        typed_over_a_timer = prompt.asked is None and tried.kind in {"unclear", "maybe"}
        place.after.add((to, "over a timer" if typed_over_a_timer else tried.kind))

    def moved_days(self, days: int, sets: tuple[tuple[str, Any], ...], live: int) -> int:
        """The days after some facts were set; tests that nothing looks at any more are dropped."""
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

    def situations(self) -> int:
        """Places times the days and facts of talk they were met with (at most too many)."""
        count = 0
        for place in self.places:
            talk = 1
            for values in place.box.talk:
                talk *= len(values)
            count += place.box.days.bit_count() * talk * len(place.box.kept)
        return count

    # ------------------------------------------------------------ what was broken

    def keep_broken(
        self, broken: Iterable[Broken], place: int, tried: Try | None, days: int
    ) -> None:
        """Keep the first place of each break."""
        for one in broken:
            self.broken.setdefault((one.promise, one.words), (place, tried, days))
