"""Every situation of every opening at once: places of the talk, each with the days it can meet.

Law: a step is taken once for all days that agree on what it reads; what it reads is written down
while it runs, never assumed. Facts are joined per place, so that too much is searched at most.
"""

from __future__ import annotations

import heapq
from collections.abc import Callable, Iterable, Iterator
from typing import Any

from coach.drivers.promises import Broken, Oracle, Path
from coach.drivers.prove_answers import ONWARD, Answers, Compared, Number, Try
from coach.drivers.prove_boxes import (
    AFTER_THE_WORK,
    ALLOWS,
    ASIDE_AT,
    DAY_AT,
    DEEPEST,
    FIRST_TALK,
    FORWARD,
    NO_PROMPT,
    NOTHING_KEPT,
    SIDE_TALKS,
    WORK_TO_COME,
    Box,
    Kept,
    Known,
    Led,
    Place,
    Prompt,
    Seen,
    above,
    asked_once_more,
    goes_on_at,
    grown,
    joined,
    kind_of_place,
    live_bits,
    rank,
    same_sides,
    set_further_on,
    side_talk,
    used_up,
)
from coach.drivers.prove_facts import Days
from coach.drivers.prove_search import tries_at
from coach.drivers.prove_watch import (
    DAY,
    NO_WORK_FACTS,
    TALK,
    WORK_FACTS,
    WatchedState,
    place_of,
    raw_facts,
    read,
    written_by,
)
from coach.model.turns import Ask
from coach.session.brief import Brief
from coach.session.engine import ask_of, goes_on, one_on, start, take_one, turn
from coach.session.state import State
from coach.session.table import Stage


class Whole(Days):
    """The search over all openings."""

    def __init__(self, openings: list[tuple[str, Brief]], *, most: int = 250_000) -> None:
        """`openings` pairs a name with the brief of a day; they share one program and plan."""
        super().__init__(openings)
        self.oracles = [Oracle(brief) for brief in self.briefs]
        shared: set[object] = set()
        for oracle in self.oracles:
            oracle.reasons_seen = shared
        self.answers = Answers()
        self.most = most
        self.places: list[Place] = []
        self.number: dict[tuple[Any, ...], int] = {}
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
            seen = self.match(known, numbers, box) or self.ran(place, known, numbers, box, run)
            for fact, value in zip(seen.facts, seen.values, strict=True):
                box, rest = self.part(box, fact, value)
                if not rest.empty():
                    boxes.append(rest)
            yield box, seen

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
        found = self.facts_read(state, place.key[0], box)
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
                if same_sides(seen, numbers):
                    return seen
        return None

    # ------------------------------------------------------------ the search

    def run(self) -> None:
        """Visit everything."""
        for number, brief in enumerate(self.briefs):
            state = start(brief)
            self.keep_broken(self.oracles[number].at_start(state), -1, None, 1 << number)
            facts = self.day(number, raw_facts(state, DAY))
            box = Box(1 << facts, FIRST_TALK, frozenset((NOTHING_KEPT,)))
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
        if goes_on_at(place.key):
            self.go_on(place, box)
            return
        alike: dict[Any, tuple[Prompt, list[Box]]] = {}
        for part, seen in self.cases(
            place, "prompt", {}, box, lambda s, b: self.prompt(place, s, b)
        ):
            prompt: Prompt = seen.result
            mark = (prompt.asked, tuple(tried.words for tried in prompt.tries))
            alike.setdefault(mark, (prompt, []))[1].append(part)
        for prompt, boxes in alike.values():
            whole = joined(boxes)
            ran: dict[Any, list[list[Seen]]] = {}
            for tried in prompt.tries:
                self.answer(place, whole, prompt, tried, ran)

    def go_on(self, place: Place, box: Box) -> None:
        """The one step that follows without an answer."""
        for part, seen in self.cases(
            place, "onward", {}, box, lambda s, b: self.one_on(place, s, b)
        ):
            self.lead(place, part, NO_PROMPT, ONWARD, seen.result)

    def one_on(self, place: Place, state: WatchedState, box: Box) -> Led:
        """A step without an answer on one day, checked."""
        oracle = self.oracles[state.brief.number]  # type: ignore[attr-defined]
        self.calls += 1
        after = one_on(state._replace(told=(), happened=()))
        path, broken = oracle.on_step(state, None, ONWARD, after, self.path_of(place, box))
        self.keep_broken(broken, place.number, ONWARD, box.days)
        self.what_was_said(place, oracle, after, ONWARD, box)
        return self.led(state, after, path)

    def answer(
        self,
        place: Place,
        box: Box,
        prompt: Prompt,
        tried: Try,
        ran: dict[Any, list[list[Seen]]],
    ) -> None:
        """One answer on all days of a box.

        `ran` holds the steps of the answers before it: numbers that lie on the same sides of all
        that those compared lead where they led.
        """
        if tried.kind in SIDE_TALKS:
            box = self.days_for_side_talk(place, tried, box)
        values: tuple[tuple[str, Any], ...] = tried.heard.values
        for one in tried.then:
            values = (*values, *one.heard.values)
        numbers = {v.fact: v.x for _, v in values if isinstance(v, Number)}
        names = tuple((f, None if isinstance(v, Number) else v) for f, v in values)
        event = "" if values else tried.words
        mark = (prompt.asked, tried.kind, event, names)
        before = ran.setdefault(mark, [])
        if any(all(same_sides(seen, numbers) for seen in steps) for steps in before):
            return
        steps: list[Seen] = []
        for part, seen in self.cases(
            place, mark, numbers, box, lambda s, b: self.step(place, s, b, prompt, tried)
        ):
            steps.append(seen)
            for led in seen.result:
                self.lead(place, part, prompt, tried, led)
        if numbers and steps:
            before.append(steps)

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
        plain = tries_at(state, asked, shown, self.answers)
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
        oracle = self.oracles[state.brief.number]  # type: ignore[attr-defined]
        path = self.path_of(place, box)
        after, path = self.taken(place, oracle, state, prompt.asked, tried, path, box)
        if not after.aside or state.aside:
            return (self.at_a_prompt(place, oracle, state, after, path, tried, box, 1),)
        kind = side_talk(after)
        first = kind not in self.side_talks_seen
        self.side_talks_seen.add(kind)
        found = {self.led(state, after, path): None} if first else {}
        for one in tried.then:
            after, path = self.taken(place, oracle, after, ask_of(after), one, path, box)
        if not after.aside:
            found[self.at_a_prompt(place, oracle, state, after, path, tried, box, 1)] = None
        for end, way, answers in self.ends(place, oracle, after, path, box, 0):
            found[self.at_a_prompt(place, oracle, state, end, way, tried, box, answers)] = None
        return tuple(found)

    def at_a_prompt(
        self,
        place: Place,
        oracle: Oracle,
        before: State,
        after: State,
        path: Path,
        tried: Try,
        box: Box,
        answers: int,
    ) -> Led:
        """Where a step led; a correction, gear or a break, tried on few days, goes on at once.

        P7: what leads back to its own place must at least have used up a doubt or a read-back.
        """
        while (tried.kind in SIDE_TALKS or before.aside) and goes_on(after):
            self.calls += 1
            on = one_on(after)
            path, broken = oracle.on_step(after, None, ONWARD, on, path)
            self.keep_broken(broken, place.number, tried, box.days)
            self.what_was_said(place, oracle, on, tried, box)
            after = on
        led = self.led(before, after, path)._replace(
            answers=answers, once_more=asked_once_more(before, after)
        )
        back = led.key == place.key and place.path == led.path and ask_of(before) is not None
        if back and tried.kind in FORWARD and not used_up(before, after):
            words = f"a session can go round at {place.key[0].value}"
            self.keep_broken((Broken("P7", words),), place.number, tried, box.days)
        return led

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
        after = take_one(state, tried.event, tried.heard)
        if not isinstance(after, State):
            raise TypeError(after.why)
        path, broken = oracle.on_step(state, asked, tried, after, path)
        self.keep_broken(broken, place.number, tried, box.days)
        self.what_was_said(place, oracle, after, tried, box)
        return after, path

    def ends(
        self, place: Place, oracle: Oracle, state: State, path: Path, box: Box, deep: int
    ) -> Iterator[tuple[State, Path, int]]:
        """Every way out of a short talk by its answers, with their number.

        Unclear ones lead nowhere else (P10, checked where the talk is first met).
        """
        asked = ask_of(state) if state.aside else None
        if asked is None or deep > DEEPEST:
            return
        for tried in self.one_of_each(asked, state):
            after, way = self.taken(place, oracle, state, asked, tried, path, box)
            if set_further_on(state, after):  # its own place is searched; here one answer each
                yield (*self.calmly_on(place, oracle, after, way, box), deep + 2)
            elif after.aside and not after.end:
                yield from self.ends(place, oracle, after, way, box, deep + 1)
            else:
                yield after, way, deep + 2

    def calmly_on(
        self, place: Place, oracle: Oracle, state: State, path: Path, box: Box
    ) -> tuple[State, Path]:
        """The end of a short talk by the first answer to each of its questions."""
        while state.aside and not state.end:
            asked = ask_of(state)
            if asked is None:
                break
            tried = next(iter(self.answers.to(asked.question, state)))
            state, path = self.taken(place, oracle, state, asked, tried, path, box)
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
        if mark not in self.said and not goes_on(after):
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
        written = written_by(after)
        key = place_of(after)
        set_now = tuple(name for name in DAY if name in written)
        day: tuple[tuple[str, Any], ...] = tuple(
            zip(set_now, raw_facts(after, set_now), strict=True)
        )
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
        kind = "over a timer" if typed_over_a_timer else tried.kind
        kind = "once more" if led.once_more and kind in FORWARD else kind
        place.after.add((to, kind, led.answers))

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
