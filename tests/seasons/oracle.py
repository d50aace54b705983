"""The promises, watched over a season day by day, from the plan's own numbers and raw answers.

Law: nothing here asks a rule; every number comes from the plan or stands below with its reason. What
is broken is told as `P5: ...`. Held here: P1 (over days), P2, P3, P4, P5 with lay-offs, P6's seven
days, P7's end, P8's stop, P12, P14, and the spacing of exercises and throws; in `prompts` P8, P10,
P11 and P13, in `thresholds` P15. What a season cannot show: P9 for all programs (it shows which
lines of its own were reached over all seasons, and that no answer is refused), P8's pause (it
belongs to the loop), and P15's "no other comparison is made"; those are the search's.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, date, datetime, timedelta
from typing import NamedTuple

from coach.model.flags import Section
from coach.model.heard import Action, Command
from coach.model.history import DayRecord, Done
from coach.model.ladders import Ladder, ThrowDay
from coach.model.program import Plan, Prescription
from coach.model.quantities import Dose
from coach.model.turns import Offer, Throws
from coach.rules.throwing import table_of
from coach.session.table import ENDS, Stage
from tests.seasons.pitched import Games, in_its_unit
from tests.seasons.prompts import corrected, tried_at_prompts
from tests.seasons.season import Day, Step
from tests.seasons.thresholds import off_by_one

SLACK_H = 8  # hours a whole day may fall short by, since evenings differ
ONE_DOWN_DAYS, FIRST_STEP_DAYS = 7, 14  # days off: one step down, the first step
READ_BACK = 8  # a pain that is read back, and stops the day unless denied
OVER_TOP = 2  # reps over the top that earn a step, two sessions running
TABLE_REPS = 5  # Knight 1979: from 5 reps in the driving set the next session is heavier
TABLE_RESULTS = {"good", "earned"}
TABLE_STEP = {"lb": 5, "kg": 2.5}  # the smallest rise; plans here ask for at most 10 reps
FREE = {"cuff", "shoulder blade", "trunk", "legs", "mobility"}


class Memory(NamedTuple):
    """What the watch keeps of one exercise: its ladder, the last two days done, its last moves."""

    ladder: Ladder
    earned: tuple[bool, ...] = ()
    last_day: str = ""
    range_since: str = ""


class Watch:
    """Looks at each day of one season in turn."""

    def __init__(self) -> None:
        self.records: list[DayRecord] = []
        self.memories: dict[str, Memory] = {}
        self.version = 0
        self.games = Games()
        self.line: tuple[object, ...] = ()

    def look(self, day: Day) -> list[str]:
        """Everything broken on this day."""
        missed = self.missed(day.opened_at.date())
        found = [*off_by_one(day, self.records, missed)]
        found += [*tried_at_prompts(day, len(self.records))]
        found += [*self._turns(day), *self._held(day), *self._ladders(day)]
        found += [*self._spacing(day), *self._throwing(day), *self._asked(day), *self._sets(day)]
        found += [*self.games.look(day, self.records), *in_its_unit(day)]
        self._keep(day)
        return found

    # ------------------------------------------------------------ what is shown

    def _turns(self, day: Day) -> Iterator[str]:
        over: dict[str, list[Dose]] = {}
        listed: set[str] = set()
        for step in day.steps:
            yield from self._step(day, step, over)
            yield from corrected(step)
            if step.shown is not None:
                listed |= {o.exercise for o in step.shown.offers if o.kind == "list"}
        if len(listed) > day.bound.plan.limits.exercises:
            yield f"P2: {len(listed)} exercises in one day"
        if day.steps and day.steps[-1].after.stage not in ENDS:
            yield "P7: the day does not end"

    def _step(self, day: Day, step: Step, over: dict[str, list[Dose]]) -> Iterator[str]:
        before, after = step.before, step.after
        if step.heard.command is Command.STOP and after.stage not in {*ENDS, Stage.ENDING}:
            yield "P8: a stop takes more than one answer"
        if step.heard.action is Action.ESCALATE and not (after.end or after.aside):
            yield "P1: a sign is passed over"
        shown = step.shown
        if shown is None:
            return
        if after.stage in {*ENDS, Stage.ENDING} and (shown.offers or shown.throws):
            yield "P1: work is shown after the end"
        for offer in shown.offers:
            yield from self._offer(day, offer, over)
        for throws in shown.throws:
            yield from self._shown_throws(day, throws)
        work = before.work
        pain = dict(step.heard.values).get("pain in set")
        said = isinstance(pain, float) and pain > day.bound.plan.pain.in_exercise
        if said and work is not None and not before.aside and after.aside != "read back":
            name = before.brief.stations[work.place].exercise.name
            over.setdefault(name, []).append(work.dose)

    def _offer(self, day: Day, offer: Offer, over: dict[str, list[Dose]]) -> Iterator[str]:
        plan = day.bound.plan
        made = next(e for e in day.bound.program.exercises if e.name == offer.exercise)
        line = next((d for d in plan.doses if d.exercise == offer.exercise), None)
        if line is None:
            yield f"P2: {offer.exercise} has no dose"
            return
        for words in over_caps(offer.dose, line):
            yield f"P2: {offer.exercise}: {words}"
        if offer.set_number > line.sets.cap:
            yield f"P14: set {offer.set_number} of {offer.exercise}"
        today = day.opened_at.date()
        opened = any(
            lock.what in {made.family, made.name} and date.fromisoformat(lock.day) <= today
            for lock in plan.opened
        )
        if made.family not in FREE and not opened:
            yield f"P3: {offer.exercise} is locked"
        if offer.side != plan.side:
            yield f"P12: {offer.exercise} on the {offer.side}"
        if offer.kind == "set":
            for was in over.get(offer.exercise, ()):
                if not lower_somewhere(offer.dose, was):
                    yield f"P4: {offer.exercise} again after pain over the ceiling"

    def _shown_throws(self, day: Day, shown: Throws) -> Iterator[str]:
        plan = day.bound.plan
        line = plan.throwing_line
        if line is None or date.fromisoformat(line.cleared) > day.opened_at.date():
            yield "P3: throws without a clearance"
            return
        table = table_of(plan)
        steps = table.steps if table else ()
        if not 1 <= shown.step <= min(line.most_step, len(steps)):
            yield f"P3: step {shown.step} of at most {line.most_step}"
        if shown.throws > steps[shown.step - 1].throws():
            yield f"P2: {shown.throws} throws in step {shown.step}"
        if shown.side != plan.side:
            yield "P12: throws with the other arm"

    # ------------------------------------------------------------ a closed plan

    def _held(self, day: Day) -> Iterator[str]:
        if day.history.hold is not None and (day.steps or not day.first.end):
            yield "P1: a session opens while the plan is closed"
        if day.record.ended == "stopped" and day.hold is None and day.history.hold is None:
            yield "P1: a stop that closes nothing"

    # ------------------------------------------------------------ ladders

    def _ladders(self, day: Day) -> Iterator[str]:
        plan, record = day.bound.plan, day.record
        if record.ended == "none":
            return
        now = dict(record.ladders)
        lines = {d.exercise: d for d in plan.doses}
        for name, ladder in now.items():
            for words in over_caps(ladder.dose, lines[name]):
                yield f"P2: the ladder of {name}: {words}"
        if plan.version != self.version:
            return
        ups = {n: ups_of(self.memories[n].ladder.dose, o.dose) for n, o in now.items()}
        moved = {name: axes for name, axes in ups.items() if axes}
        if len(moved) > 1 or any(len(axes) > 1 for axes in moved.values()):
            yield f"P5: more than one thing goes up: {moved}"
        for name, axes in moved.items():
            yield from self._may_go_up(day, name, axes[0], lines[name])
        yield from self._gap(day, now, lines)

    def _may_go_up(self, day: Day, name: str, axis: str, line: Prescription) -> Iterator[str]:
        memory, today = self.memories[name], day.opened_at.date()
        worked = [r for r in self.records if r.ended != "none"]
        last = [r for r in worked if r.day == worked[0].day]
        for words in self._not_a_day_for_it(day, name, last):
            yield f"P5: {name} goes up {words}"
        if line.dapre and axis == "load":
            yield from self._by_the_table(day, name, line, last)
            return
        earned = len(memory.earned) >= OVER_TOP and all(memory.earned[-OVER_TOP:])
        if axis != "range" and not earned:
            yield f"P5: {name} goes up in {axis} and did not earn it: {memory.earned}"
        if axis == "range" and line.range is not None:
            since = date.fromisoformat(memory.range_since or day.bound.plan.phase_opened.day)
            back = memory.ladder.dose.range_index < line.range.opening
            if (today - since).days < line.range.after_days and not (back and earned):
                yield f"P5: {name} goes up in range after {(today - since).days} days"
            felt = [f for r in last for d in r.done if d.exercise == name for f in d.felt]
            if any("pinch" in word for word in felt):
                yield f"P5: {name} goes up in range after a pinch"

    def _not_a_day_for_it(self, day: Day, name: str, last: list[DayRecord]) -> Iterator[str]:
        """What forbids any step up on a day, whatever was earned."""
        today = day.opened_at.date()
        forbids = (
            (last[0].day >= today.isoformat(), "in a second session"),
            (self.missed(today) >= ONE_DOWN_DAYS, "after days off"),
            (day.record.morning_up, "on a sore morning"),
            (day.record.ended == "stopped", "on a day with a stop"),
            (held_by_a_script(day, name), "though a script holds it back"),
            (any(r.ended == "stopped" for r in last), "after a stop"),
        )
        yield from (words for holds, words in forbids if holds)

    def _by_the_table(
        self, day: Day, name: str, line: Prescription, last: list[DayRecord]
    ) -> Iterator[str]:
        """A table's rise: 5 clean reps in the set that drives, no pain over, one small step."""
        done = [one for record in last for one in record.done if one.exercise == name]
        was = self.memories[name].ladder.dose.load
        now = dict(day.record.ladders)[name].dose.load
        ceiling = day.bound.plan.pain.in_exercise
        if len(done) != 1 or len(done[0].reps) < line.dapre:
            yield f"P5: {name} goes up in load without its driving set"
        elif done[0].reps[line.dapre - 1] < TABLE_REPS or done[0].result not in TABLE_RESULTS:
            yield f"P5: {name} goes up in load after {done[0].reps} ({done[0].result})"
        elif any(ceiling < pain < READ_BACK for pain in done[0].pains):
            yield f"P5: {name} goes up in load after pain {done[0].pains}"
        if now.amount > was.amount + TABLE_STEP[now.unit]:
            yield f"P5: {name} goes from {was.words()} to {now.words()}"

    def _gap(
        self, day: Day, now: dict[str, Ladder], lines: dict[str, Prescription]
    ) -> Iterator[str]:
        missed = self.missed(day.opened_at.date())
        if self.records and self.records[0].day == day.record.day:
            return  # the first session of the day has lowered them already
        for name, ladder in now.items():
            was, line = self.memories[name].ladder.dose, lines[name]
            if missed >= FIRST_STEP_DAYS and ladder.dose.reps_high > line.reps.opening_high:
                yield f"P5: {name} not at its first step after {missed} days off"
            if missed >= ONE_DOWN_DAYS and ladder.dose == was and was != floor_of(was, line):
                above = was.reps_high > line.reps.opening_high or was.load.rank() > line.load.rank()
                if above:
                    yield f"P5: {name} not lower after {missed} days off"

    def missed(self, today: date) -> int:
        """Whole days without an exercise before today; never below 0."""
        trained = [r.day for r in self.records if any(d.sets for d in r.done)]
        if not trained:
            return 0
        return max(0, (today - date.fromisoformat(trained[0])).days - 1)

    # ------------------------------------------------------------ spacing

    def _spacing(self, day: Day) -> Iterator[str]:
        today, lines = day.opened_at.date(), {d.exercise: d for d in day.bound.plan.doses}
        twice = day.bound.program.twice_a_day
        done = [one for one in day.record.done if one.sets]
        for one in done:
            before = next((o for r in self.records for o in r.done if same(o, one)), None)
            if before is None or one.exercise in twice:
                continue
            apart = lines[one.exercise].apart_days
            if too_near(before.ended_at, day.opened_at, apart):
                yield f"spacing: {one.exercise} again within {apart} days"
        loaded = [one for one in done if one.loaded]
        today_before = [r for r in self.records if r.day >= today.isoformat()]
        if loaded and any(o.loaded and o.sets for r in today_before for o in r.done):
            yield "spacing: a second session with load on one day"
        week = {
            r.opened_at
            for r in self.records
            if (today - date.fromisoformat(r.day)).days < 7 and any(d.sets for d in r.done)
        }
        if done and len(week) >= day.bound.plan.limits.sessions_a_week:
            yield f"P2: session {len(week) + 1} in 7 days"

    def _throwing(self, day: Day) -> Iterator[str]:
        threw, plan = day.record.threw, day.bound.plan
        if threw is None or plan.throwing_line is None or not threw.step:
            return
        before = next((r for r in self.records if r.threw is not None), None)
        other = next((r for r in self.records if (r.throwing_today or "none") != "none"), None)
        apart = max(2, plan.throwing_line.apart_days, 3 if plan.throwing_line.class_name else 0)
        if other is not None and too_near(other.opened_at, day.opened_at, apart):
            yield "spacing: throws too soon after other throwing"
        if before is None or before.threw is None:
            yield from self._first_thrown(threw, plan.throwing_line.from_step)
            return
        rest = max(apart, before.threw.rest_days + 1)
        if too_near(before.threw.ended_at, day.opened_at, rest):
            yield f"spacing: throws again within {rest} days"
        if before.plan_version == plan.version or self.line == line_of(plan):
            yield from self._step_thrown(threw.step, before)

    def _first_thrown(self, threw: ThrowDay, begins: int) -> Iterator[str]:
        """The first throws of all are the plan's first step; one lower for soreness, never higher."""
        sore = threw.row.startswith(("sore in the warm-up", "sore again", "cut off"))
        if threw.step not in {begins, max(1, begins - 1) if sore else begins}:
            yield f"P5: the first throwing day is step {threw.step} ({threw.row})"

    def _step_thrown(self, step: int, before: DayRecord) -> Iterator[str]:
        """A step up only after a clean day; after soreness the last one again, or one lower."""
        last, row = before.threw, before.threw.row if before.threw else ""
        real = next((r.threw.step for r in self.records if r.threw and r.threw.step), 0)
        if last is None or not real:
            return
        most = real
        if row == "no soreness" or row.startswith("sore in the warm-up"):
            most = real + 1
        elif row.startswith(("still sore", "sore again", "sore late")):
            most = max(1, real - 1)
        if step > most:
            yield f"P5: step {step} after step {real} ({row})"

    # ------------------------------------------------------------ asked, and counted

    def _asked(self, day: Day) -> Iterator[str]:
        """P6: with work shown, every section was asked alone within 7 days."""
        if not any(one.sets for one in day.record.done):
            return
        today = day.opened_at.date()
        for section in Section:
            days = [r.day for r in (day.record, *self.records) if section in r.alone]
            if not days or (today - date.fromisoformat(days[0])).days > 7:
                yield f"P6: {section} was not asked alone within 7 days"

    def _sets(self, day: Day) -> Iterator[str]:
        lines = {d.exercise: d for d in day.bound.plan.doses}
        for one in day.record.done:
            if one.sets > lines[one.exercise].sets.cap:
                yield f"P14: {one.sets} sets of {one.exercise}"

    # ------------------------------------------------------------ memory

    def _keep(self, day: Day) -> None:
        record = day.record
        if record.ended != "none":
            for name, ladder in record.ladders:
                self._remember(day, name, ladder)
            self.version = day.bound.plan.version
        if record.threw is not None:
            self.line = line_of(day.bound.plan)
        self.records.insert(0, record)

    def _remember(self, day: Day, name: str, ladder: Ladder) -> None:
        today = day.opened_at.date().isoformat()
        was = self.memories.get(name, Memory(ladder))
        changed = was.ladder.dose != ladder.dose
        earned = () if changed else was.earned
        range_moved = was.ladder.dose.range_index != ladder.dose.range_index
        if self.missed(day.opened_at.date()) >= FIRST_STEP_DAYS:
            range_moved = True
        done = [one for one in day.record.done if one.exercise == name]
        for one in done:
            good = counts(one, ladder, day)
            same_day = was.last_day == today and bool(earned)
            earned = (*earned[:-1], earned[-1] and good) if same_day else (*earned, good)
        if day.record.ended == "stopped":
            earned = (*earned, False)
        self.memories[name] = Memory(
            ladder,
            earned[-4:],
            today if done else was.last_day,
            today if range_moved else was.range_since,
        )


# ---------------------------------------------------------------- small comparisons


def line_of(plan: Plan) -> tuple[object, ...]:
    """What makes two throwing lines the same: the clearance, its first step and its table."""
    line, table = plan.throwing_line, table_of(plan)
    if line is None or table is None:
        return ()
    return (line.cleared, line.table, line.class_name, line.from_step, table.steps)


def held_by_a_script(day: Day, name: str) -> bool:
    """Whether `no step up` was said of an exercise, or of all, at any time of a day."""
    held = {("no step up", name), ("no step up", "all")}
    return any(held & set(step.after.lowered) for step in day.steps)


def counts(one: Done, ladder: Ladder, day: Day) -> bool:
    """Whether raw answers earn a step: two over the top in the last set, no pain over the ceiling.

    A pain of 8 or more that did not stop the day was a slip: it was read back and denied.
    """
    ceiling = day.bound.plan.pain.in_exercise
    inside = all(pain <= ceiling for pain in one.pains if pain < READ_BACK)
    return inside and bool(one.reps) and one.reps[-1] >= ladder.dose.reps_high + OVER_TOP


def same(one: Done, other: Done) -> bool:
    """The same exercise, with sets done."""
    return one.exercise == other.exercise and one.sets > 0


def too_near(earlier: str, now: datetime, apart: int) -> bool:
    """Whether `now` is nearer than `apart` days, by date or by hours."""
    then = datetime.fromisoformat(earlier)
    hours = (now.astimezone(UTC) - then.astimezone(UTC)) / timedelta(hours=1)
    return (now.date() - then.date()).days < apart or hours < 24 * apart - SLACK_H


def over_caps(dose: Dose, line: Prescription) -> Iterator[str]:
    """Every axis of a dose over the plan's cap."""
    if dose.sets > line.sets.cap:
        yield f"{dose.sets} sets"
    if dose.reps_high > line.reps.cap or dose.reps_low > dose.reps_high:
        yield f"{dose.reps_low} to {dose.reps_high} reps"
    if dose.hold_s > (line.hold.cap if line.hold else 0):
        yield f"{dose.hold_s} s"
    if dose.load.rank() > line.load_cap.rank():
        yield dose.load.words()
    if line.range is not None and dose.range_index > line.range.cap:
        yield dose.range_step
    if dose.version and dose.version not in line.versions:
        yield dose.version
    if dose.rest_s < line.rest_s:
        yield f"{dose.rest_s} s of rest"


def ups_of(was: Dose, now: Dose) -> list[str]:
    """The axes on which a dose went up."""
    pairs = (
        ("sets", was.sets, now.sets),
        ("reps", was.reps_high, now.reps_high),
        ("hold", was.hold_s, now.hold_s),
        ("load", was.load.rank(), now.load.rank()),
        ("range", was.range_index, now.range_index),
        ("versions", was.version_level, now.version_level),
    )
    return [axis for axis, before, after in pairs if after > before]


def lower_somewhere(now: Dose, was: Dose) -> bool:
    """Shorter, lighter or easier, and higher on none of the three."""
    old = (was.load.rank(), was.range_index, was.version_level)
    new = (now.load.rank(), now.range_index, now.version_level)
    pairs = list(zip(new, old, strict=True))
    return any(a < b for a, b in pairs) and all(a <= b for a, b in pairs)


def floor_of(dose: Dose, line: Prescription) -> Dose:
    """The dose where nothing is left to lower: one set of the opening reps."""
    return dose._replace(sets=1, reps_high=min(dose.reps_high, line.reps.opening_high))
