"""The brief of one day: plan, program and history laid ready before the first question.

Law: built once at the start, never changed, equal only to itself; the state points to it, so that
it costs a search nothing. It reads no clock: the opening instant is handed in.
"""

from __future__ import annotations

from datetime import date, datetime, timedelta
from itertools import product
from typing import NamedTuple

from coach.hearing import BUILT_IN, with_phrases
from coach.model.flags import Group, Section
from coach.model.history import DayRecord, History
from coach.model.program import Bound, Exercise, Prescription, Script, Step, Test
from coach.rules import layoff, limits, readiness, red_flags, throwing
from coach.rules.pain import usual
from coach.rules.red_flags import Person, person_from
from coach.session.ladders import Standing, something_wants_up, standings
from coach.session.moments import MOMENTS, lay_out

_KNOWN_AT_A_SET = frozenset({"set", "sets left"})  # by the coach itself, at the end of each


class Station(NamedTuple):
    """One exercise of the day with its dose line in the plan."""

    exercise: Exercise
    prescription: Prescription


class Brief:
    """Everything a session reads that no answer changes; compared by identity."""

    __slots__ = (
        "_standings",
        "about_a_set",
        "about_one_set",
        "age",
        "alone_today",
        "apart_days",
        "bound",
        "cleared",
        "effect_bits",
        "first_day",
        "first_truth",
        "history",
        "idle_days",
        "items",
        "last",
        "lexicon",
        "locks",
        "new_plan",
        "opened_at",
        "pain_last",
        "person",
        "phase_count",
        "plan",
        "program",
        "second",
        "side_words",
        "sleep_week",
        "sore_last",
        "spacing",
        "spared",
        "stations",
        "tests",
        "threw_last",
        "today",
        "usual_morning",
        "wants_up",
        "warm_up",
        "week",
        "wording",
    )

    def __init__(self, bound: Bound, history: History, opened_at: datetime) -> None:
        """Lay the day ready; `opened_at` carries its UTC offset."""
        self.bound = bound
        self.program = bound.program
        self.plan = bound.plan
        self.history = history
        self.opened_at = opened_at
        self.today: date = opened_at.date()
        self.person: Person = person_from(bound.plan, self.today)
        self.age = years_between(bound.plan.born, self.today)
        worked = [r for r in history.records if r.ended != "none"]
        self.last: DayRecord | None = worked[0] if worked else None
        self.first_day = self.last is None
        self.new_plan = self.last is not None and self.last.plan_version != bound.plan.version
        # Of the last session what an answer of today is held against.
        self.pain_last = self.last.pain_now if self.last else None
        self.sore_last = self.last is not None and self.last.morning_up
        self.threw_last = self.last is not None and (self.last.throwing_today or "none") != "none"
        self.usual_morning = usual(
            tuple(r.waking_pain for r in worked if r.waking_pain is not None),
            bound.plan.pain.usual,
        )
        self.side_words = f"{bound.plan.side} arm"
        doses = {p.exercise: p for p in bound.plan.doses}
        known = {e.name: e for e in bound.program.exercises}
        phase = next(p for p in bound.program.phases if p.name == bound.plan.phase)
        of_phase = tuple(
            Station(known[name], doses[name])
            for name in phase.exercises
            if name in doses and name not in bound.program.warm_up
        )
        self.phase_count = len(of_phase)
        # What only a day's list may call for (gentle, twice a day, recovery) stands after the phase.
        program = bound.program
        listed = dict.fromkeys((*program.gentle, *program.twice_a_day, *program.recovery))
        self.stations: tuple[Station, ...] = of_phase + tuple(
            Station(known[name], doses[name])
            for name in listed
            if name in doses and name not in phase.exercises and name not in program.warm_up
        )
        self.warm_up: tuple[Station, ...] = tuple(
            Station(known[name], doses[name]) for name in bound.program.warm_up if name in doses
        )
        stations = (*self.stations, *self.warm_up)
        self.locks = {
            station.exercise.name: limits.locked(station.exercise, bound.plan, self.today)
            for station in stations
        }
        self.cleared = throwing.clearance(bound.plan, self.today)
        self.week = readiness.week_full(history.records, self.today, self.plan.limits)
        self.second = readiness.second_session(history.records, self.today)
        self.spacing = {
            name: readiness.may_repeat(_last_ended(history, name), opened_at, line.apart_days)
            for name, line in doses.items()
        }
        # Days beyond those after which no ache is asked about are all alike.
        self.idle_days = min(_days_since_work(history, self.today), readiness.ACHE_GONE_BY_DAY)
        self.alone_today = _alone_today(self)
        self.wording = self.today.toordinal() % 2
        self.apart_days = min((s.prescription.apart_days for s in self.stations), default=1)
        self.items, self.tests, self.effect_bits = _laid_out(bound.program.scripts)
        self.spared = _spared(self)
        self.about_a_set = _about_a_set(self.items, self.tests)
        self.about_one_set = _about_one_set(self.items, self.tests)
        past = past_facts(self, worked)
        self.first_truth = _truth_of(self, past)
        sleep = past.get("sleep this week")
        self.sleep_week: float | None = sleep if isinstance(sleep, float) else None
        self._standings: dict[tuple[bool, tuple[str, ...]], dict[str, Standing]] = {}
        self.wants_up = something_wants_up(self)
        self.lexicon = with_phrases(
            BUILT_IN,
            [(Group(group), words) for group, words in bound.program.heard_phrases],
        )

    def standings(self, *, morning_up: bool, held: tuple[str, ...]) -> dict[str, Standing]:
        """Every exercise's ladder today, by name; worked out once for each kind of day."""
        key = (morning_up, held)
        if key not in self._standings:
            found = standings(self, morning_up=morning_up, held=held)
            self._standings[key] = {one.exercise: one for one in found}
        return self._standings[key]

    def bits_true_for(self, fact: str, value: str | float) -> tuple[int, int]:
        """Two masks for a value of `fact`: all its tests' bits, and those that hold."""
        every = holds = 0
        for bit, test in enumerate(self.tests):
            if test.fact == fact:
                every |= 1 << bit
                if test.holds(value):
                    holds |= 1 << bit
        return every, holds

    def bits_at_worst(self, fact: str) -> tuple[int, int]:
        """As `bits_true_for` for an answer that stayed unclear: branches with an effect open."""
        every = holds = 0
        for bit, test in enumerate(self.tests):
            if test.fact == fact:
                every |= 1 << bit
                if bit in self.effect_bits:
                    holds |= 1 << bit
        return every, holds


def _last_ended(history: History, name: str) -> str | None:
    """When an exercise was last done (ISO instant), from the newest record that holds it."""
    for record in history.records:
        for done in record.done:
            if done.exercise == name and done.sets:
                return done.ended_at
    return None


def _days_since_work(history: History, today: date) -> int:
    """Calendar days since the last exercise; too many for an ache where there was none yet."""
    trained = (r.day for r in history.records if any(d.sets for d in r.done))
    last = next(trained, None)
    if last is None:
        return readiness.ACHE_GONE_BY_DAY
    return (today - date.fromisoformat(last)).days


def _alone_today(brief: Brief) -> dict[tuple[bool, bool, bool], tuple[Section, ...]]:
    """stop.screen: the sections asked alone, by what today may tell.

    Whether it was thrown yesterday, the night was short, and pain is 2 or more above usual.
    """
    last = brief.last
    facts = red_flags.DueFacts(
        today=brief.today,
        asked_alone=brief.history.asked_alone,
        first_day=brief.first_day,
        new_plan=brief.new_plan,
        lifted=brief.history.lifted,
        fell=last is not None and last.fell,
        threw=False,
        short_night=False,
        pain_two_up=False,
        away_7=last is not None
        and layoff.days_missed(date.fromisoformat(last.day), brief.today) >= red_flags.AWAY_DAYS,
        surgery=brief.person.surgery,
    )
    return {
        (threw, short, up): red_flags.alone_today(
            facts._replace(threw=threw, short_night=short, pain_two_up=up)
        )
        for threw, short, up in product((False, True), repeat=3)
    }


def _spared(brief: Brief) -> frozenset[str]:
    """The own questions with `every: N days` that were asked fewer than N days ago."""
    asked = {fact: date.fromisoformat(day) for fact, day in brief.history.own_asked}
    return frozenset(
        step.fact
        for steps in brief.items.values()
        for step in steps
        if step.every_days
        and step.fact in asked
        and 0 <= (brief.today - asked[step.fact]).days < step.every_days
    )


def brief_for(bound: Bound, history: History, opened_at: datetime) -> Brief:
    """The brief of a session that opens at `opened_at` (with its UTC offset)."""
    return Brief(bound, history, opened_at)


def years_between(born: str, today: date) -> int:
    """Whole years from `born` (YYYY-MM) to `today`; the birthday counts from the month's end."""
    year, month = (int(part) for part in born.split("-")[:2])
    return today.year - year - (1 if today.month <= month else 0)


def _laid_out(
    scripts: tuple[Script, ...],
) -> tuple[dict[str, tuple[Step, ...]], tuple[Test, ...], frozenset[int]]:
    """Every moment's steps with `when` pointing into one list of all distinct tests."""
    tests: list[Test] = []
    effect_bits: set[int] = set()
    items: dict[str, tuple[Step, ...]] = {}
    by_moment = {script.moment: script for script in scripts}
    for moment in MOMENTS:
        script = by_moment.get(moment)
        places: list[int] = []
        for number, test in enumerate(script.tests if script else ()):
            if test not in tests:
                tests.append(test)
            places.append(tests.index(test))
            if script and number in script.effect_tests:
                effect_bits.add(places[-1])
        items[moment] = lay_out(moment, script, tuple(places))
    return items, tuple(tests), frozenset(effect_bits)


def _looked_at_elsewhere(items: dict[str, tuple[Step, ...]]) -> set[int]:
    """The bits that steps of other moments than after a set look at."""
    others = (steps for moment, steps in items.items() if moment != "after a set")
    return {bit for steps in others for step in steps for bit in step.when}


def _about_a_set(items: dict[str, tuple[Step, ...]], tests: tuple[Test, ...]) -> int:
    """The bits of answers about one set that nothing reads once its exercise is behind.

    What is asked after a set, and tested only there, is asked anew in the next exercise.
    """
    asked = {step.fact for step in items["after a set"] if step.fact}
    elsewhere = _looked_at_elsewhere(items)
    return sum(
        1 << bit for bit, test in enumerate(tests) if test.fact in asked and bit not in elsewhere
    )


def _about_one_set(items: dict[str, tuple[Step, ...]], tests: tuple[Test, ...]) -> int:
    """The bits of answers about one set that are asked again before any step looks at them.

    The next set's own answers take their place: the set's number and what is left are known at its
    end, its pain and count are always asked; an own question wherever its branch looks at it.
    """
    after = items["after a set"]
    elsewhere = _looked_at_elsewhere(items)
    once = 0
    for bit, test in enumerate(tests):
        if bit not in elsewhere and (
            test.fact in _KNOWN_AT_A_SET or _asked_first(after, test, bit)
        ):
            once |= 1 << bit
    return once


def _asked_first(steps: tuple[Step, ...], test: Test, bit: int) -> bool:
    """Whether every step that looks at a test comes after its question, in the same branch."""
    under: set[int] | None = None
    for step in steps:
        if step.fact == test.fact and step.kind in {"ask", "ask also"}:
            if step.every_days or step.fact == "felt in set":  # not asked at every set
                return False
            under = set(step.when)
        elif bit in step.when and (under is None or not under <= set(step.when)):
            return False
    return under is not None


def _truth_of(brief: Brief, past: dict[str, str | float]) -> int:
    """The bits of tests about diary and plan, which are known before the first question."""
    truth = 0
    for fact, value in past.items():
        truth |= brief.bits_true_for(fact, value)[1]
    return truth


def past_facts(brief: Brief, worked: list[DayRecord]) -> dict[str, str | float]:
    """The diary's and the plan's facts by name; one that is not known is left out.

    Days for `days since last session` (whole days missed), weeks for `weeks in phase`, pain 0 to
    10, hours for `sleep this week`.
    """
    today, plan = brief.today, brief.plan
    facts: dict[str, str | float] = {"age": float(brief.age), "phase": plan.phase}
    opened = date.fromisoformat(plan.phase_opened.day)
    facts["weeks in phase"] = float((today - opened).days // 7)
    in_phase = [r for r in worked if date.fromisoformat(r.day) >= opened]
    facts["sessions in phase"] = float(len(in_phase))
    if worked:
        gap = (today - date.fromisoformat(worked[0].day)).days - 1
        facts["days since last session"] = float(max(gap, 0))
    week = [r for r in worked if date.fromisoformat(r.day) > today - timedelta(days=7)]
    pains = [p for r in week for p in (r.pain_now, r.worst_in_set, r.waking_pain) if p is not None]
    if pains:
        facts["worst pain in 7 days"] = max(pains)
    nights = [r.sleep_h for r in week if r.sleep_h is not None]
    if nights:
        facts["sleep this week"] = sum(nights) / len(nights)
    fortnight = [r for r in worked if date.fromisoformat(r.day) > today - timedelta(days=14)]
    facts["flares in 14 days"] = float(sum(r.morning_up for r in fortnight))
    if plan.surgery[:4].isdigit():
        facts["weeks since surgery"] = float(
            (today - date.fromisoformat(plan.surgery[:10])).days // 7
        )
    return facts
