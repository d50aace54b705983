"""Every situation of every opening at once: places of the talk, each with the days it can meet.

Law: a step is taken once for all days that agree on what it reads; what it reads is written down
while it runs, never assumed. Facts are joined per place, so that too much is searched at most.
"""

from __future__ import annotations

import heapq
from collections.abc import Callable, Iterable, Iterator, Sequence
from typing import Any

from coach.drivers.promises import Broken, Path
from coach.drivers.prove_answers import ONWARD, Answers, Compared, Try
from coach.drivers.prove_boxes import (
    ASIDE_AT,
    DEEPEST,
    FIRST_TALK,
    FORWARD,
    NO_PROMPT,
    NOTHING_KEPT,
    SIDE_TALKS,
    Box,
    Known,
    Led,
    Place,
    Prompt,
    Seen,
    Typed,
    above,
    asked_once_more,
    goes_on_at,
    grown,
    inside,
    joined,
    live_bits,
    one_said,
    rank,
    same_sides,
    set_further_on,
    side_talk,
    typed,
    used_up,
)
from coach.drivers.prove_facts import OPENING_AT, Days, Openings, Row, led_to, numbers_in
from coach.drivers.prove_search import tries_at
from coach.drivers.prove_watch import (
    DAY,
    TALK,
    WatchedOracle,
    WatchedState,
    place_of,
    raw_facts,
    read,
)
from coach.model.turns import Ask
from coach.session.brief import Brief
from coach.session.engine import ask_of, goes_on, one_on, start, take_one, turn
from coach.session.state import State
from coach.session.stopping import DOUBTS_TO_END
from coach.session.table import Stage


class Whole(Days):
    """The search over all openings of a plan, and over all their days, at once."""

    def __init__(self, openings: Sequence[tuple[str, Brief]], *, most: int = 250_000) -> None:
        """`openings` are the kinds of day, each a name and the brief of a day."""
        super().__init__(Openings(openings))
        self.oracles = [WatchedOracle(brief) for brief in self.openings.briefs]
        for oracle in self.oracles:
            oracle.reasons_seen = self.oracles[0].reasons_seen
        self.oracle, self.opening = self.oracles[0], 0
        self.answers = Answers()
        self.most = most
        self.places: list[Place] = []
        self.number: dict[tuple[Any, ...], int] = {}
        self.todo: list[tuple[tuple[int, ...], int]] = []
        self.broken: dict[tuple[str, str], tuple[int, Try | None, int]] = {}
        self.said: set[Any] = set()
        self.leds: dict[Led, Led] = {}
        self.calls = self.turns = 0
        self.on_progress: Callable[[Whole], None] = lambda _: None
        self.events: set[Any] = set()
        self.side_talks: dict[Any, int] = {}
        self.allowed: dict[Any, set[int]] = {}
        self.opened: dict[Any, tuple[State, Path, frozenset[str]]] = {}
        self.side_talks_seen: dict[Any, Any] = {}
        self.compared: set[Compared] = set()
        self.tried: dict[Any, Typed] = {}
        self.live = live_bits(openings[0][1])

    # ------------------------------------------------------------ one step, for many days

    def cases(
        self,
        place: Place,
        mark: Any,  # noqa: ANN401  what was typed, numbers left out
        numbers: dict[str, float],
        box: Box,
        run: Callable[[WatchedState, Box], Any],
    ) -> Iterator[tuple[Box, Seen]]:
        """The box cut into parts for which one step ran alike, each with that step."""
        boxes = [] if box.empty() else [box]
        known = place.seen.setdefault(mark, {})
        while boxes:
            box = self.feasible(boxes.pop())
            if box.empty():
                continue
            row = self.row(box)
            seen = self.match(known, numbers, row)
            if seen is None:
                seen = self.ran(place, known, numbers, box, row, run)
            yield self.cut(box, seen, boxes), seen

    def ran(
        self,
        place: Place,
        known: Known,
        numbers: dict[str, float],
        box: Box,
        row: Row,
        run: Callable[[WatchedState, Box], Any],
    ) -> Seen:
        """Run a step for the box's representative and keep what it read and compared."""
        self.opening = row[OPENING_AT]
        self.oracle = self.oracles[self.opening]
        state = self.representative(place, row)
        log = self.answers.log
        log.clear()
        read.clear()
        result = run(state, box)
        if isinstance(result, tuple) and not isinstance(result, Prompt):
            result = tuple([self.leds.setdefault(led, led) for led in result])
        reading = self.reading(place.key[0])
        self.compared |= log
        if "pain in set" in numbers:
            log.add(self.ceiling())
        cuts = tuple(
            (c.fact, c.side, c.number, above(numbers[c.fact], c)) for c in log if c.fact in numbers
        )
        values = (*reading.of_row(row), *reading.of_brief[self.opening])
        seen = Seen(reading, values, cuts, result)
        known.setdefault(reading, {}).setdefault(values, []).append(seen)
        return seen

    def ceiling(self) -> Compared:
        """The cut that P4 makes itself."""
        return Compared("pain in set", "over", self.oracle.plan.pain.in_exercise)

    def match(self, known: Known, numbers: dict[str, float], row: Row) -> Seen | None:
        """A step that already ran for such a day and for numbers on the same sides of every cut."""
        opening = row[OPENING_AT]
        for reading, by_values in known.items():
            values = (*reading.of_row(row), *reading.of_brief[opening])
            for seen in by_values.get(values, ()):
                if same_sides(seen, numbers):
                    return seen
        return None

    # ------------------------------------------------------------ the search

    def run(self) -> None:
        """Visit everything."""
        for opening, brief in enumerate(self.openings.briefs):
            state, self.opening = start(brief), opening
            self.keep_broken(self.oracles[opening].at_start(state), -1, None)
            day = self.rooms[state.stage].day((*raw_facts(state, DAY), opening))
            box = Box(1 << day, FIRST_TALK, frozenset((NOTHING_KEPT,)))
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
        self.opened.clear()
        self.room = self.rooms[place.key[0]]
        if goes_on_at(place.key):
            self.go_on(place, box)
            return
        alike: dict[Any, tuple[Prompt, list[Box]]] = {}
        for part, seen in self.cases(place, "prompt", {}, box, lambda s, _b: self.prompt(place, s)):
            prompt: Prompt = seen.result
            mark = (prompt.asked, tuple([one.tried.words for one in prompt.tries]))
            alike.setdefault(mark, (prompt, []))[1].append(part)
        for prompt, boxes in alike.values():
            whole = joined(boxes)
            ran: dict[Any, list[list[Seen]]] = {}
            for one in prompt.tries:
                self.answer(place, whole, prompt, one, ran)

    def go_on(self, place: Place, box: Box) -> None:
        """The one step that follows without an answer."""
        for part, seen in self.cases(
            place, "onward", {}, box, lambda s, b: self.one_on(place, s, b)
        ):
            for led in seen.result:
                self.lead(place, part, NO_PROMPT, ONWARD, led)

    def one_on(self, place: Place, state: WatchedState, box: Box) -> tuple[Led]:
        """A step without an answer on one day, checked."""
        self.calls += 1
        after = one_on(state._replace(told=(), happened=()))
        path, broken = self.oracle.on_step(state, None, ONWARD, after, self.path_of(place, box))
        self.keep_broken(broken, place.number, ONWARD)
        self.what_was_said(place, after, ONWARD)
        return (led_to(state, after, path),)

    def answer(
        self,
        place: Place,
        box: Box,
        prompt: Prompt,
        one: Typed,
        ran: dict[Any, list[list[Seen]]],
    ) -> None:
        """One answer on all days of a box.

        `ran` holds the steps of the answers before it: numbers that lie on the same sides of all
        that those compared lead where they led.
        """
        tried, numbers, mark = one
        if tried.kind in SIDE_TALKS:
            box = self.days_for_side_talk(place, tried, box)
            if not box.days:
                return
        before = ran.setdefault(mark, [])
        if any(all(same_sides(seen, numbers) for seen in steps) for steps in before):
            return
        steps: list[Seen] = []
        for part, seen in self.cases(
            place, mark, numbers, box, lambda s, b: self.step(place, s, b, prompt, tried)
        ):
            steps.append(seen)
            for led in seen.result:
                if not self.is_known_talk(place, led):
                    self.lead(place, part, prompt, tried, led)
        if numbers and steps:
            before.append(steps)

    def is_known_talk(self, place: Place, led: Led) -> bool:
        """Whether a short talk opens of which the first of its kind is searched already."""
        if not led.key[ASIDE_AT] or place.key[ASIDE_AT]:
            return False
        opened_at = (place.number, led.key)
        first: tuple[int, Any] = self.side_talks_seen.setdefault(side_talk(led.key), opened_at)
        return first != opened_at

    def days_for_side_talk(self, place: Place, tried: Try, box: Box) -> Box:
        """A correction, gear or a break is tried on every day at one prompt of each kind, and in
        every state of an exercise on one day: what it changes in the day is the same at each.
        """
        kind = (tried.words, *place.kind)
        done = self.side_talks.get(kind, 0)
        self.side_talks[kind] = done | box.days
        fresh = box.days & ~done
        if place.key[0] is Stage.EXERCISE:
            fresh = self.one_of_a_kind(kind, fresh)
            work = (tried.words, place.key[-1])
            if not fresh and work not in self.side_talks:
                fresh = box.days & -box.days
            self.side_talks.setdefault(work, 0)
        return Box(fresh, box.talk, box.kept)

    def one_of_a_kind(self, kind: object, days: int) -> int:
        """Of days that allow the same work only the first: inside an exercise nothing else acts."""
        allowed, kept = self.allowed.setdefault(kind, set()), 0
        for number in numbers_in(days):
            alike = self.room.alike[number]
            if alike not in allowed:
                allowed.add(alike)
                kept |= 1 << number
        return kept

    def prompt(self, place: Place, state: WatchedState) -> Prompt:
        """What one day shows at a place, checked."""
        self.turns += 1
        shown = turn(state)
        self.keep_broken(self.oracle.on_turn(state, shown), place.number, None)
        kept = set(read)
        self.keep_broken(self.oracle.reasons(state, shown), place.number, None)
        read.clear()
        read.update(kept)
        if state.end:
            return NO_PROMPT
        asked = ask_of(state)
        plain = tries_at(state, asked, shown, self.answers)
        tries = tuple(one for tried in plain for one in self.by_fact(state, tried))
        self.at_prompt(place, state, asked, tries)
        return Prompt(asked, tuple([self.typed(asked, tried) for tried in tries]))

    def typed(self, asked: Ask | None, tried: Try) -> Typed:
        """A try as it stands at a prompt, once for all places where it is tried."""
        heard = tuple([id(one.heard) for one in (tried, *tried.then)])
        mark = (asked, tried.words, tried.kind, heard)
        known = self.tried.get(mark)
        if known is None:
            known = self.tried[mark] = typed(asked, tried)
        return known

    def at_prompt(
        self,
        place: Place,
        state: State,
        asked: Ask | None,
        tries: tuple[Try, ...],
    ) -> None:
        """P8 and P10 once for each question of a place; what that reads is not the prompt's.

        P10 for a first doubt, for a second, and for the day's third about a safety question.
        """
        if asked in place.asked:
            return
        place.asked.append(asked)
        kept = set(read)
        for unclear, doubts in ((0, 0), (1, 0), (1, DOUBTS_TO_END - 1)):
            met = state._replace(unclear=unclear, doubts=doubts)
            self.keep_broken(self.oracle.at_prompt(met, asked, tries), place.number, None)
        read.clear()
        read.update(kept)

    def by_fact(self, state: WatchedState, tried: Try) -> Iterator[Try]:
        """A correction, once for each new value of each answer that can be changed here."""
        if tried.kind != "fix":
            yield tried
            return
        which = take_one(state, tried.event, tried.heard)
        asked = ask_of(which) if isinstance(which, State) and which.aside == "fix" else None
        if asked is None or not isinstance(which, State):
            yield tried
            return
        for one in self.answers.to(asked.question, which):
            named = take_one(which, one.event, one.heard)
            value = ask_of(named) if isinstance(named, State) else None
            if value is None or not isinstance(named, State):
                continue
            for new in self.answers.to(value.question, named):
                words = f"fix, {one.words}, {new.words}"
                yield tried._replace(words=words, then=(one, new))

    def step(
        self, place: Place, state: WatchedState, box: Box, prompt: Prompt, tried: Try
    ) -> tuple[Led, ...]:
        """One answer on one day, checked; a side talk it opens is gone through to its ends."""
        path = self.path_of(place, box)
        after, path = self.taken_once(place, state, prompt.asked, tried, path)
        if not after.aside or state.aside:
            return (self.at_a_prompt(place, state, after, path, tried, 1),)
        found = {led_to(state, after, path): None}
        for one in tried.then[:-1]:
            after, path = self.taken_once(place, after, ask_of(after), one, path)
        for one in tried.then[-1:]:
            after, path = self.taken(place, after, ask_of(after), one, path)
        if not after.aside:
            found[self.at_a_prompt(place, state, after, path, tried, 1)] = None
        for end, way, answers in self.ends(place, after, path, 0):
            found[self.at_a_prompt(place, state, end, way, tried, answers)] = None
        return tuple(found)

    def at_a_prompt(
        self,
        place: Place,
        before: State,
        after: State,
        path: Path,
        tried: Try,
        answers: int,
    ) -> Led:
        """Where a step led; a correction, gear or a break, tried on few days, goes on at once.

        P7: what leads back to its own place must at least have used up a doubt or a read-back.
        """
        while (tried.kind in SIDE_TALKS or before.aside) and goes_on(after):
            self.calls += 1
            on = one_on(after)
            path, broken = self.oracle.on_step(after, None, ONWARD, on, path)
            self.keep_broken(broken, place.number, tried)
            self.what_was_said(place, on, tried)
            after = on
        led = led_to(before, after, path)._replace(
            answers=answers, once_more=asked_once_more(before, after)
        )
        back = led.key == place.key and place.path == led.path and ask_of(before) is not None
        if back and tried.kind in FORWARD and not used_up(before, after):
            words = f"a session can go round at {place.key[0].value}"
            self.keep_broken((Broken("P7", words),), place.number, tried)
        return led

    def taken_once(
        self, place: Place, state: State, asked: Ask | None, tried: Try, path: Path
    ) -> tuple[State, Path]:
        """As `taken`; the words that open a correction are the same for each of its new values."""
        if tried.kind != "fix" and not state.aside:
            return self.taken(place, state, asked, tried, path)
        key = (state, tried.kind if tried.then else tried.words, path)
        known = self.opened.get(key)
        if known is None:
            before = set(read)
            read.clear()
            after = self.taken(place, state, asked, tried, path)
            known = self.opened[key] = (*after, frozenset(read))
            read.update(before)
        read.update(known[2])
        return known[:2]

    def taken(
        self,
        place: Place,
        state: State,
        asked: Ask | None,
        tried: Try,
        path: Path,
    ) -> tuple[State, Path]:
        """The state after one answer, checked."""
        self.calls += 1
        after = take_one(state, tried.event, tried.heard)
        if not isinstance(after, State):
            raise TypeError(after.why)
        path, broken = self.oracle.on_step(state, asked, tried, after, path)
        self.keep_broken(broken, place.number, tried)
        self.what_was_said(place, after, tried)
        return after, path

    def ends(
        self, place: Place, state: State, path: Path, deep: int
    ) -> Iterator[tuple[State, Path, int]]:
        """Every way out of a short talk by its answers, with their number.

        Unclear ones lead nowhere else (P10, checked where the talk is first met).
        """
        asked = ask_of(state) if state.aside else None
        if asked is None or deep > DEEPEST:
            return
        for tried in self.one_of_each(asked, state):
            after, way = self.taken(place, state, asked, tried, path)
            if set_further_on(state, after):  # its own place is searched; here one answer each
                yield (*self.calmly_on(place, after, way), deep + 2)
            elif after.aside and not after.end:
                yield from self.ends(place, after, way, deep + 1)
            else:
                yield after, way, deep + 2

    def calmly_on(self, place: Place, state: State, path: Path) -> tuple[State, Path]:
        """The end of a short talk by the first answer to each of its questions."""
        while state.aside and not state.end:
            asked = ask_of(state)
            if asked is None:
                break
            tried = next(iter(self.answers.to(asked.question, state)))
            state, path = self.taken(place, state, asked, tried, path)
        return state, path

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
                    log.add(self.ceiling())
                known = [(cut, above(value, cut)) for cut in log]
                before |= log
                continue
            yield tried
            before |= log
        log |= before

    def what_was_said(self, place: Place, after: State, tried: Try) -> None:
        """P11 and P12 on words and reasons that no earlier step said at such a prompt."""
        raw = raw_facts(after, ("told", "reasons", "repeat", "stage", "aside", "happened"))
        told, reasons, repeat, stage, aside, happened = raw
        self.events.update((one.kind, one.what) for one in happened)
        self.events.update(("tell", line.text) for line in told)
        mark = (told, reasons, repeat, stage, aside)
        if mark not in self.said and not goes_on(after):
            self.said.add(mark)
            self.turns += 1
            kept = set(read)
            shown = turn(after)
            self.keep_broken(self.oracle.on_turn(after, shown), place.number, tried)
            self.keep_broken(self.oracle.reasons(after, shown), place.number, tried)
            read.clear()
            read.update(kept)

    def lead(self, place: Place, box: Box, prompt: Prompt, tried: Try, led: Led) -> None:
        """Carry the days of a box along a step; what was carried along it before is no news."""
        typed_over_a_timer = prompt.asked is None and tried.kind in {"unclear", "maybe"}
        kind = "over a timer" if typed_over_a_timer else tried.kind
        kind = "once more" if led.once_more and kind in FORWARD else kind
        known = place.led.get((id(led), kind))
        if known is not None and inside(box, known):
            return
        if known is None and led.kept is not None:
            self.kept_at.setdefault(led.kept, len(self.kept_at))
        to = self.carry(place, box, prompt, tried, led)
        place.led[id(led), kind] = box if known is None else joined([known, box])
        edge = (to, kind, led.answers)
        place.after[edge] = place.after.get(edge, 0) | self.room.openings_of(box.days)

    def carry(self, place: Place, box: Box, prompt: Prompt, tried: Try, led: Led) -> int:
        """The place where a step leads, with the days of a box as they are after it."""
        days = box.days
        if led.key[ASIDE_AT]:  # the first of its kind, kept for its own prompts: one day is enough
            days = self.room.one_each(days, self.room.openings_of(days))
        if led.day or led.key[0] is not place.key[0]:
            days = self.moved_days(days, led.day, led.key[0], self.live.get(led.key[0], 0))
        talk = box.talk
        for name, value in led.talk:
            at = TALK.index(name)
            talk = (*talk[:at], one_said(at, value), *talk[at + 1 :])
        kept = box.kept if led.kept is None else frozenset((led.kept,))
        name = prompt.asked.name if prompt.asked else "rest"
        return self.arrive(led.key, led.path, Box(days, talk, kept), (place.number, name, tried))

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

    def keep_broken(self, broken: Iterable[Broken], place: int, tried: Try | None) -> None:
        """Keep the first place of each break."""
        for one in broken:
            self.broken.setdefault((one.promise, one.words), (place, tried, self.opening))
