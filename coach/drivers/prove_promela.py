"""The compiled day as a model for another checker: the numbers and tables above `day.pml`.

Law: it reads the compiled program, plan, diary and the table of stages, and calls nothing of the
session. What the diary decides before the first question (doses at the door, spacing, the week's
count, a second session) is taken as it is. A day that the model does not speak of is refused.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date
from typing import Final, NamedTuple

from coach.model.decisions import Refusal
from coach.model.flags import GROUP_FLAGS, SECTION_GROUPS, Group, Section
from coach.model.program import Exercise, Prescription, Step
from coach.model.quantities import Dose, Load
from coach.rules import dosing, readiness
from coach.rules.red_flags import FLAGS, Person
from coach.session.brief import Brief
from coach.session.table import ROWS, Stage

QUARTERS: Final = 4  # every number of the model is in quarters, the finest step of any scale
COACH_FACTS: Final = (
    "plan is mine", "guardian here", "pain now", "worst pain", "waking pain", "waking ache",
    "against usual", "sleep last night", "throwing yesterday", "throwing today", "thrown already",
    "throwing tomorrow", "at hand", "moves or later", "pain in warm-up", "which version",
    "stand-in weight", "reps in set", "holds in set", "pain in set", "felt in set",
    "pain before change", "pain after", "effort", "minutes", "own words",
)  # fmt: skip
PAINS: Final = frozenset(
    {
        *("pain now", "worst pain", "waking pain", "pain in warm-up"),
        *("pain in set", "pain before change", "pain after"),
    }
)
# Scales that no rule reads within a day: every step of them only where a script does.
COUNTED: Final = {"reps in set": (100, 4), "holds in set": (100, 4), "effort": (10, 2)}
SCALES: Final = {**COUNTED, "minutes": (300, 1)}  # highest number, step in quarters
THROWN: Final = ("none", "light", "hard practice", "bullpen", "game")
NAMED: Final = {
    **dict.fromkeys(("plan is mine", "guardian here", "thrown already"), ("no", "yes")),
    "stand-in weight": ("no", "yes"),
    "waking ache": ("worked muscle", "both arms alike", "joint", "not sure"),
    "against usual": ("better", "same", "worse"),
    **dict.fromkeys(("throwing yesterday", "throwing today", "throwing tomorrow"), THROWN),
    "moves or later": ("moves", "later"),
}
# The answer that counts where one stayed unclear twice, in quarters or by its place in NAMED.
WORST: Final = {
    **dict.fromkeys(PAINS, 40),
    "plan is mine": 0,
    "guardian here": 0,
    "thrown already": 0,
    "stand-in weight": 0,
    "waking ache": 2,
    "against usual": 2,
    "sleep last night": 0,
    "moves or later": 1,
    **dict.fromkeys(("throwing yesterday", "throwing today", "throwing tomorrow"), 4),
    "reps in set": 0,
    "holds in set": 0,
    "felt in set": 99,
    "effort": 40,
    "minutes": 1200,
}
MOMENT_NAMES: Final = {
    "check-in": "check_in",
    "screen": "screen",
    "at hand": "at_hand",
    "warm-up": "warm_up",
    "before an exercise": "before",
    "after a set": "after",
    "close": "close",
}
AXES: Final = {"shorter range": 1, "easier version": 2, "lighter": 3, "leave out": 4}
ENDS: Final = ("", "stopped", "done", "closed", "partial", "by choice")
TIMED_FROM_S: Final = 15  # set here, to be signed by a clinician: holds that are timed one by one
SECONDS_A_REP: Final = 4  # set here, to be signed by a clinician
TIE_ORDER: Final = ("body", "ill", "weekly", "night", "arm", "joint")
WEEK_DAYS: Final = 7  # set here, to be signed by a clinician: a section waits so long at most


class UnmodelledError(ValueError):
    """The day holds something that the model does not speak of."""


class Tried(NamedTuple):
    """What both explorers try: kinds of happenings, and the facts of which they try some answers only.

    `only` holds the answers by fact as they are heard (numbers in the scale's own unit, or names);
    every other fact gets its whole scale.
    """

    kinds: tuple[str, ...] = ("value", "timer", "unclear", "sign", "stop")
    only: tuple[tuple[str, tuple[float | str, ...]], ...] = ()


class Codes(NamedTuple):
    """Which number of the model stands for what of a day, in one place for writer and reader.

    `pairs` are the effects of the scripts, `stops` (code, tier, group) from 1, `facts` by code from
    1, `loads` those of each station from 1.
    """

    facts: tuple[str, ...]
    pairs: tuple[tuple[str, str], ...]
    stops: tuple[tuple[str, str, str], ...]
    loads: tuple[tuple[Load, ...], ...]


def refuse_what_is_not_modelled(brief: Brief) -> None:
    """Throws, game pitches, tables that drive the weight, a step up that is due, a closed plan."""
    plan = brief.plan
    if plan.throwing_line is not None or plan.game_pitches is not None:
        raise UnmodelledError("throws and game pitches are not modelled")
    if any(dose.dapre for dose in plan.doses):
        raise UnmodelledError("a load that a table drives is not modelled")
    if brief.wants_up:
        raise UnmodelledError("a day on which a step up is due is not modelled")
    if brief.history.hold is not None or len(brief.stations) > 30 or len(plan.at_home) > 30:  # noqa: PLR2004
        raise UnmodelledError("a closed plan, or more than 30 exercises or pieces")


def codes_of(brief: Brief) -> Codes:
    """The numbers of a day's facts, effects, stops and loads."""
    steps = [step for items in brief.items.values() for step in items]
    own = [step.fact for step in steps if step.fact and step.fact not in COACH_FACTS]
    pairs = [(step.effect, step.target) for step in steps if step.kind == "effect"]
    return Codes(
        facts=tuple(dict.fromkeys((*COACH_FACTS, *own))),
        pairs=tuple(dict.fromkeys(pairs)),
        stops=tuple(dict.fromkeys(stops_of(brief, steps))),
        loads=tuple(loads_of(brief, place) for place in range(len(brief.stations))),
    )


def stops_of(brief: Brief, steps: Sequence[Step]) -> Iterable[tuple[str, str, str]]:
    """Every stop a day may end in: code, tier, group."""
    night = Group.NIGHT_PAIN_UNRELENTING.value
    yield ("S09", FLAGS["S09"].tier.value, night)
    yield ("B02", FLAGS["B02"].tier.value, "")
    yield ("U01", "before next session", "")
    yield sign_stop(Group.NUMB_TINGLE, brief.person)
    for section in Section:
        for flag in signs_of(section, brief.person):
            group = next(g for g in SECTION_GROUPS[section] if flag in GROUP_FLAGS[g])
            yield (flag, FLAGS[flag].tier.value, group.value)
    for step in steps:
        if step.kind == "stop":
            yield ("P01", step.target or step.effect, "")
        if step.kind == "ask" and is_sign(step.fact):
            yield sign_stop(Group(step.fact.replace(" ", "_")), brief.person)


def is_sign(fact: str) -> bool:
    """Whether a question is named after a warning sign."""
    return fact.replace(" ", "_") in {group.value for group in Group}


def applies(flag: str, person: Person) -> bool:
    """Signs of the growing, and of the operated, are asked of nobody else."""
    return not (flag in {"S10", "B03"} and not person.minor) and not (
        flag in {"S03", "S04"} and not person.surgery
    )


def signs_of(section: Section, person: Person) -> tuple[str, ...]:
    """A section's signs in order, each once."""
    ids = [flag for group in SECTION_GROUPS[section] for flag in GROUP_FLAGS[group]]
    return tuple(dict.fromkeys(flag for flag in ids if applies(flag, person)))


def sign_stop(group: Group, person: Person) -> tuple[str, str, str]:
    """The stop of a sign that was named without more: the most urgent one that applies."""
    urgent = ("emergency now", "same day", "before next session")
    ids = [flag for flag in GROUP_FLAGS[group] if applies(flag, person)] or list(GROUP_FLAGS[group])
    flag = min(ids, key=lambda one: urgent.index(FLAGS[one].tier.value))
    return (flag, FLAGS[flag].tier.value, group.value)


def door_dose(brief: Brief, place: int, *, morning_up: bool) -> Dose | None:
    """The dose that the ladder gives today; None where the plan gives none."""
    station = brief.stations[place]
    name = station.exercise.name
    found = [brief.standings(morning_up=morning_up, held=held).get(name) for held in ((), ("all",))]
    doses = {one.ladder.dose for one in found if one is not None}
    if len(doses) > 1:
        raise UnmodelledError(f"{name}: a dose that hangs on what may go up")
    if doses:
        return doses.pop()
    opening = dosing.opening_dose(station.exercise, station.prescription)
    return None if isinstance(opening, Refusal) else opening


def loads_of(brief: Brief, place: int) -> tuple[Load, ...]:
    """The loads that the exercise can come to today."""
    line = brief.stations[place].prescription
    doors = [door_dose(brief, place, morning_up=up) for up in (False, True)]
    return tuple(dict.fromkeys((line.load, *line.lighter, *(d.load for d in doors if d))))


def quarters(number: float) -> int:
    """A number in quarters; UnmodelledError where it lies between two of them."""
    found = number * QUARTERS
    if found != int(found):
        raise UnmodelledError(f"{number:g} is no whole number of quarters")
    return int(found)


def chain(cases: Iterable[tuple[str, object]], otherwise: object = 0) -> str:
    """A conditional expression: the first case that fits, else `otherwise`."""
    written = str(otherwise)
    for when, value in reversed(list(cases)):
        written = f"({when} -> {value} : {written})"
    return written


def any_of(conditions: Iterable[str]) -> str:
    """One condition out of several; 0 for none."""
    return " || ".join(conditions) or "0"


def bits(places: Iterable[int]) -> int:
    """A mask with these bits."""
    return sum(1 << place for place in set(places))


def plain(name: str) -> str:
    """A name as the model can hold it."""
    return "".join(c if c.isalnum() else "_" for c in name)


def days_waited(brief: Brief, section: Section) -> int:
    """Days since a section was asked alone; never, or on a day to come, counts as long ago."""
    days = [date.fromisoformat(day) for one, day in brief.history.asked_alone if one is section]
    if not days or max(days) > brief.today:
        return 10 * WEEK_DAYS
    return (brief.today - max(days)).days


class Writer:
    """Names and pieces of a model, line by line."""

    def __init__(self, brief: Brief, codes: Codes, tried: Tried) -> None:
        """Everything written is read from these three."""
        self.brief, self.codes, self.tried = brief, codes, tried
        self.lines: list[str] = []

    def define(self, name: str, value: object) -> None:
        """One name of the model."""
        self.lines.append(f"#define {name} {value}")

    def inline(self, name: str, *body: str) -> None:
        """One piece of the model that is made from the scripts."""
        self.lines.append(f"inline {name}() {{")
        self.lines += [f"  {line}" for line in (*body, "skip")]
        self.lines.append("}")

    def fact(self, name: str) -> int:
        """The number of a question."""
        return self.codes.facts.index(name) + 1

    def stop(self, stop: tuple[str, str, str]) -> int:
        """The number of a stop."""
        return self.codes.stops.index(stop) + 1

    def exercise(self, place: int) -> Exercise:
        """The exercise at a place of the day."""
        return self.brief.stations[place].exercise

    def line(self, place: int) -> Prescription:
        """The plan's line for it."""
        return self.brief.stations[place].prescription

    def form(self, place: int, name: str) -> int:
        """The number of a version; 0 for none."""
        names = [version.name for version in self.exercise(place).versions]
        return names.index(name) + 1 if name else 0


class DayTables(Writer):
    """What is known before the first question: stages, names, diary, plan, screen."""

    def write(self) -> None:
        """All of it."""
        tests = max(len(self.brief.tests), 1)
        self.define("TESTS", tests)
        self.lines.append(f"byte t[{tests}];")
        self.stages()
        self.facts()
        self.diary()
        self.screen()

    # ------------------------------------------------------------ names

    def stages(self) -> None:
        """The stages, and what the table lets follow; 99 is nowhere."""
        number = {stage: n for n, stage in enumerate(Stage)}
        for stage, n in number.items():
            self.define(plain(stage.name).upper(), n)
        for trigger in dict.fromkeys(row.trigger for row in ROWS):
            rows = [row for row in ROWS if row.trigger == trigger]
            cases = [(f"s == {number[r.before]}", number[r.after]) for r in rows]
            self.define(f"AFTER_{plain(trigger)}(s)", chain(cases, 99))
        back = [row for row in ROWS if row.trigger.startswith("back to ")]
        cases = [(f"b == {number[r.after]}", number[r.after]) for r in back]
        self.define("AFTER_back_to(b)", chain(cases, 99))
        for kind in ("unclear", "sign", "stop", "gear", "break", "maybe"):
            self.define(f"WITH_{kind.upper()}", int(kind in self.tried.kinds))
        for n, end in enumerate(ENDS[1:], 1):
            self.define(f"E_{plain(end).upper()}", n)

    def facts(self) -> None:
        """The questions by number."""
        for number, fact in enumerate(self.codes.facts, 1):
            if fact in COACH_FACTS:
                self.define(f"F_{plain(fact).upper()}", number)
        signs = [fact for fact in self.codes.facts if is_sign(fact)]
        own = [f for f in self.codes.facts if f not in COACH_FACTS and f not in signs]
        self.define("IS_SIGN(f)", f"({any_of(f'f == {self.fact(s)}' for s in signs)})")
        own_too = [*own, "which version"]
        self.define("IS_OWN(f)", f"({any_of(f'f == {self.fact(s)}' for s in own_too)})")
        person = self.brief.person
        stops = [
            (f"f == {self.fact(s)}", self.stop(sign_stop(Group(s.replace(" ", "_")), person)))
            for s in signs
        ]
        self.define("SIGN_ASKED(f)", chain(stops))

    # ------------------------------------------------------------ diary and plan

    def diary(self) -> None:
        """What is known before the first question, and the plan's numbers."""
        brief, plan, last = self.brief, self.brief.plan, self.brief.last
        first = [n for n in range(len(brief.tests)) if brief.first_truth >> n & 1]
        self.inline("known_from_the_diary", *(f"t[{n}] = 1;" for n in first))
        owner = brief.first_day or brief.new_plan
        guardian = brief.person.minor and (
            brief.first_day or plan.guardian_present == "every session"
        )
        self.define("DOOR_QUESTIONS", owner + 2 * guardian)
        self.define("FIRST_DAY", int(brief.first_day))
        pain = last.pain_now if last is not None else None
        self.define("LAST_PAIN_KNOWN", int(pain is not None))
        self.define("LAST_PAIN", quarters(pain or 0.0))
        self.define("USUAL", quarters(brief.usual_morning))
        self.define("UP_LAST_TIME", int(bool(last and last.morning_up)))
        worked = [r.day for r in brief.history.records if any(done.sets for done in r.done)]
        days = (brief.today - date.fromisoformat(worked[0])).days if worked else 10**6
        self.define("WORKED_LATELY", int(days < 2))  # noqa: PLR2004  common practice: gone by day 2
        items = brief.items["check-in"]
        ahead = [n for n, step in enumerate(items) if step.fact == "waking ache"]
        self.define("ACHE_AHEAD(i)", f"(i <= {max(ahead)})" if ahead else "(0)")
        # 6 hours were set here, to be signed by a clinician.
        self.define("SHORT_NIGHT", quarters(dict(plan.changed).get("ready.sleep", 6.0)))
        self.define("TO_START", quarters(plan.pain.to_start))
        self.define("GENTLE", quarters(plan.pain.gentle))
        self.define("IN_EXERCISE", quarters(plan.pain.in_exercise))
        self.define("STEP_IS_DUE", 0)  # other days are refused
        records = brief.history.records
        week = readiness.week_full(records, brief.today, plan.limits).outcome
        self.define("WEEK_IS_FULL", int(week == "rest"))
        self.define("SECOND_TODAY", int(self.second()))
        self.define("MOST_EXERCISES", plan.limits.exercises)
        self.define("MOST_MINUTES", plan.limits.minutes)

    def second(self) -> bool:
        """Whether loaded work was done earlier today."""
        records = self.brief.history.records
        return readiness.second_session(records, self.brief.today).outcome != "first"

    def screen(self) -> None:
        """What diary and plan ask alone, who waited longest, and each section's signs."""
        brief, last = self.brief, self.brief.last
        sections = tuple(Section)
        called = {Section.ILL} if brief.person.surgery else set()
        missed = max((brief.today - date.fromisoformat(last.day)).days - 1, 0) if last else 0
        fell = bool(last and last.fell)
        if fell or brief.history.lifted or brief.new_plan or missed >= WEEK_DAYS:
            called |= set(sections[:5])
        if brief.first_day:
            called = set(sections)
        waited = {one: days_waited(brief, one) for one in sections}
        self.define("CALLED_BY_DIARY", bits(sections.index(one) for one in called))
        long = [sections.index(one) for one in sections if waited[one] >= WEEK_DAYS]
        self.define("WAITED_A_WEEK", bits(long))
        order = sorted(sections, key=lambda one: (-waited[one], TIE_ORDER.index(one.value)))
        longest = [(f"!((b >> {sections.index(o)}) & 1)", 1 << sections.index(o)) for o in order]
        self.define("WAITED_LONGEST(b)", chain(longest))
        # After a break all that any fact of a day may call for: arm, joint, night; ill after surgery.
        self.define("ALONE_AFTER_A_BREAK", 1 + 2 + 16 + 8 * brief.person.surgery)
        signs = {n: signs_of(one, brief.person) for n, one in enumerate(sections)}
        self.define("SIGNS(n)", chain((f"n == {n}", len(ids)) for n, ids in signs.items()))
        named = [
            (f"n == {n} && k == {len(ids) - place}", self.stop(self.sign(sections[n], flag)))
            for n, ids in signs.items()
            for place, flag in enumerate(ids)
        ]
        self.define("SIGN_OF(n, k)", chain(named))
        self.define("STRONG_PAIN", 1)
        self.define("SORE_MORNINGS", 2)
        self.define("UNSURE", 3)
        self.define("SIGN_TYPED", 4)

    def sign(self, section: Section, flag: str) -> tuple[str, str, str]:
        """The stop of one of a section's signs."""
        group = next(g for g in SECTION_GROUPS[section] if flag in GROUP_FLAGS[g])
        return (flag, FLAGS[flag].tier.value, group.value)
