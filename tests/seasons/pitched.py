"""Pitches in games, and throws counted in another unit, watched over a season day by day.

Law: nothing here asks a rule. Bands and caps stand below with their source; the counts are read off
the raw answers, and what an answer asks for is held against every later day of the season.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, timedelta
from typing import NamedTuple

from coach.model.heard import Action
from coach.model.history import DayRecord
from tests.seasons.season import Day, Step

# National youth pitching guideline, 2015 edition, the whole table read; a later edition, read on
# secondary pages, differs at 17 to 22 only. Age: most a day, then the last count of each band of
# 0, 1, 2 ... rest days. The plan names both, so the more careful row counts.
BANDS = {
    13: (95, (20, 35, 50, 65)),
    14: (95, (20, 35, 50, 65)),
    15: (95, (30, 45, 60, 75)),
    16: (95, (30, 45, 60, 75)),
    17: (105, (30, 45, 60, 75)),
    18: (105, (30, 45, 60, 75)),
}
DAYS_AGO = {"pitches today": 0, "pitches yesterday": 1, "pitches before": 2}
NO_STEP_DAYS = 7  # after a count over the cap; set here
WORST = 10_000  # a count that stayed unclear: more than any band


class Told(NamedTuple):
    """A game as it was told: its day, whole days off, whether it was over the cap of a day."""

    day: date
    rest: int
    over: bool


class Games:
    """The games of a season so far."""

    def __init__(self) -> None:
        self.told: list[Told] = []

    def look(self, day: Day, records: list[DayRecord]) -> Iterator[str]:
        """What is broken on this day; then it keeps the games told on it."""
        if day.bound.plan.game_pitches is None:
            return
        today = day.opened_at.date()
        new: list[Told] = []
        for step in day.steps:
            new += told_by(step, day)
            shown = step.shown is not None and bool(step.shown.throws)
            for one in (*self.told, *new) if shown else ():
                if today <= one.day + timedelta(days=one.rest):
                    yield f"P3: throws on {today}, {one.rest} days off after a game on {one.day}"
        yield from recorded(day, new)
        self.told += new
        threw = day.record.threw
        held = any((today - one.day).days < NO_STEP_DAYS for one in self.told if one.over)
        last = next((r.threw.step for r in records if r.threw and r.threw.step), 0)
        if held and threw and last and threw.step > last:
            yield f"P5: step {threw.step} after step {last}, days after a game over the cap"


def age_on(born: str, today: date) -> int:
    """Whole years; the day of birth is not known, so a birthday counts once its month is over."""
    year, month = (int(part) for part in born.split("-")[:2])
    return today.year - year - (today.month <= month)


def told_by(step: Step, day: Day) -> Iterator[Told]:
    """The games that a step tells of; an answer unclear for the second time is the worst count."""
    today = day.opened_at.date()
    most, tops = BANDS[age_on(day.bound.plan.born, today)]
    for fact, days in DAYS_AGO.items():
        count = dict(step.heard.values).get(fact)
        asked = step.before.missing[:1] == (fact,) and not step.before.aside
        if asked and step.before.unclear and step.heard.action is Action.ASK_AGAIN:
            count = WORST
        if not isinstance(count, float | int) or step.after.aside == "read back" or not count:
            continue
        rest = sum(count > top for top in tops)
        yield Told(today - timedelta(days=days), rest, count > most)


def recorded(day: Day, new: list[Told]) -> Iterator[str]:
    """P15: the diary holds each game with at least the days off that its count asks for."""
    for one in new:
        kept = [o for o in day.record.pitched if o.day == one.day.isoformat()]
        rest = max((o.days_off for o in kept), default=None)
        if rest is None or rest < one.rest:
            yield f"P15: a game on {one.day} with {one.rest} days off is kept with {rest}"
        elif one.over and not any(o.over_cap for o in kept):
            yield f"P15: a game on {one.day} over the cap is kept as one inside it"
    if len(new) < len(day.record.pitched):
        yield "P15: the diary holds a game that nobody told of"


def in_its_unit(day: Day) -> Iterator[str]:
    """P12: where throws are shown, each line with a number says the plan's unit and the arm."""
    own = day.bound.plan.own_steps
    unit = own.unit if own is not None else "throws"
    side = f"{day.bound.plan.side} arm"
    for step in day.steps:
        if step.shown is None or not step.shown.throws:
            continue
        works = [line.text for line in step.shown.lines if line.kind == "work"]
        if not any(unit in words and side in words for words in works):
            yield f"P12: throws shown without their unit or side: {works}"
    if day.record.threw is not None and day.record.threw.unit != unit:
        yield f"P12: throws kept as {day.record.threw.unit}, not {unit}"
