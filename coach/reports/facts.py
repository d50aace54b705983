"""From a diary's sessions to the facts of a stretch of days: one gatherer for every report.

Law: it puts together what was recorded and decides nothing. What was not asked or not answered is
None, never 0; a day without a session is a day, with nothing in it. No clock: the last day is handed
in.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import date, timedelta
from statistics import mean
from typing import Final, NamedTuple

from coach.model.history import DayRecord, Done, Hold, Outing
from coach.model.ladders import ThrowDay
from coach.model.program import Bound
from coach.model.throws import counted
from coach.reports.words import date_of, own
from coach.rules.load import session_load

WEEK_DAYS: Final = 7
THROWN: Final = {"catch": "light catch", "long_toss": "long toss"}


class Event(NamedTuple):
    """One event of a session as recorded: kind, body, instant, and what was then shown."""

    kind: str
    body: dict[str, object]
    at: str
    shown: tuple[str, ...] = ()


class Sat(NamedTuple):
    """One session as recorded. `record` is None for one that was cut off."""

    number: int
    opened_at: str
    header: dict[str, str]
    record: DayRecord | None
    hold: Hold | None = None
    events: tuple[Event, ...] = ()
    more_holds: tuple[Hold, ...] = ()


class Lifted(NamedTuple):
    """A stop that was opened: its number, in which way, by whom, on which day, and when kept."""

    hold: int
    way: str
    who: str
    day: str
    at: str


class Recorded(NamedTuple):
    """A whole diary, oldest first. `damage` names what could not be read, by day and line.

    `plans` pairs the instant a plan was put in place with its digest; `wrong_words` are instants.
    """

    sessions: tuple[Sat, ...] = ()
    lifts: tuple[Lifted, ...] = ()
    wrong_words: tuple[str, ...] = ()
    plans: tuple[tuple[str, str], ...] = ()
    damage: tuple[str, ...] = ()


class Day(NamedTuple):
    """One calendar day; of several sessions the highest pain and effort, and all sets and throws.

    Pain 0 to 10, sleep in h, `load` effort times minutes in arbitrary units (0 on a day without
    exercise, None where a session lacks either).
    """

    day: str
    sessions: tuple[Sat, ...] = ()
    waking: float | None = None
    rest: float | None = None
    in_set: float | None = None
    after: float | None = None
    sleep: float | None = None
    effort: float | None = None
    minutes: float | None = None
    sets: int = 0
    load: float | None = 0.0
    threw: tuple[ThrowDay, ...] = ()
    other_throws: str = ""

    @property
    def throws(self) -> int | None:
        """Throws of the plan's table that day; None on a day without."""
        return sum(one.throws for one in self.threw) if self.threw else None

    @property
    def unit(self) -> str:
        """What the plan's table counts on that day."""
        return self.threw[0].unit if self.threw else "throws"

    @property
    def trained(self) -> bool:
        """Whether a set was done or a throw thrown."""
        return self.sets > 0 or bool(self.threw)


class Facts(NamedTuple):
    """A stretch of days of one athlete, every calendar day from `since` to `until`.

    `earlier` are the diary's days before `since`, from the first one with work or a stop on;
    `outside` the instants of sessions before those or after `until`, as a wrong clock makes them.
    """

    bound: Bound
    recorded: Recorded
    since: str
    until: str
    days: tuple[Day, ...]
    earlier: tuple[Day, ...] = ()
    outside: tuple[str, ...] = ()

    @property
    def sessions(self) -> tuple[Sat, ...]:
        """All sessions of the stretch, oldest first."""
        return tuple(sat for day in self.days for sat in day.sessions)

    @property
    def all_days(self) -> tuple[Day, ...]:
        """Every day of the diary up to `until`."""
        return (*self.earlier, *self.days)


def gather(bound: Bound, recorded: Recorded, since: str, until: str) -> Facts:
    """The facts from ISO day `since` to `until`, both in it.

    Sessions that opened after `until` are left out; those before it stand in `earlier`.
    """
    by_day: dict[str, list[Sat]] = {}
    for sat in recorded.sessions:
        by_day.setdefault(day_of(sat), []).append(sat)
    start = min(since, first_day(recorded, until))
    days = tuple(one_day(day, tuple(by_day.get(day, ()))) for day in calendar(start, until))
    inside = {day.day for day in days}
    outside = tuple(sat.opened_at for sat in recorded.sessions if day_of(sat) not in inside)
    cut = (date.fromisoformat(since) - date.fromisoformat(start)).days
    days = with_throws_told_later(days)
    return Facts(bound, recorded, since, until, days[cut:], days[:cut], outside)


def first_day(recorded: Recorded, last: str) -> str:
    """The day of the first session, up to the ISO day `last`; `last` where there is none.

    One over a year before the first with work or a stop in it is a wrong clock's (set here).
    """
    known = [(day, sat) for sat in recorded.sessions if date_of(day := day_of(sat)) and day <= last]
    work = min((day for day, sat in known if has_work(sat)), default=last)
    a_year_before = date.fromisoformat(work) - timedelta(days=366)
    return min((day for day, _sat in known if day >= a_year_before.isoformat()), default=last)


def has_work(sat: Sat) -> bool:
    """Whether a session holds a set, a throw or a stop."""
    record = sat.record
    return sat.hold is not None or (
        record is not None and bool(record.done or record.threw is not None)
    )


def day_of(sat: Sat) -> str:
    """The ISO day a session counts for."""
    return sat.record.day if sat.record is not None else sat.opened_at[:10]


def calendar(since: str, until: str) -> tuple[str, ...]:
    """Every ISO day from `since` to `until`."""
    first, last = date.fromisoformat(since), date.fromisoformat(until)
    return tuple((first + timedelta(days=n)).isoformat() for n in range((last - first).days + 1))


def one_day(day: str, sessions: tuple[Sat, ...]) -> Day:
    """The sessions of a day taken together."""
    records = [sat.record for sat in sessions if sat.record is not None]
    worked = [r for r in records if r.done or r.threw is not None]
    cut_off = any(sat.record is None and sat.events for sat in sessions)
    return Day(
        day,
        sessions,
        highest(r.waking_pain for r in records),
        highest(r.pain_now for r in records),
        highest(r.worst_in_set for r in records),
        highest(r.pain_after for r in records),
        next((r.sleep_h for r in records if r.sleep_h is not None), None),
        highest(r.effort for r in worked),
        total(r.minutes for r in worked),
        sum(done.sets for r in worked for done in r.done),
        None if cut_off else load_of(worked),
        tuple(r.threw for r in records if r.threw is not None),
        next((kind for r in records if (kind := thrown(r.throwing_today))), ""),
    )


def outings(facts: Facts) -> tuple[Outing, ...]:
    """Every day with game pitches, oldest first; told twice, the newest telling counts."""
    found = {
        one.day: one
        for day in facts.all_days
        for sat in day.sessions
        if sat.record is not None
        for one in sat.record.pitched
    }
    return tuple(found[day] for day in sorted(found))


def with_throws_told_later(days: tuple[Day, ...]) -> tuple[Day, ...]:
    """Throwing outside the plan's steps, as it was told the day after."""
    told = {
        day.day: kind
        for day in days
        for sat in day.sessions
        if sat.record is not None and (kind := thrown(sat.record.threw_yesterday))
    }
    out = []
    for number, day in enumerate(days):
        after = days[number + 1].day if number + 1 < len(days) else ""
        out.append(day._replace(other_throws=told.get(after) or day.other_throws))
    return tuple(out)


def throws_counted(days: Iterable[Day]) -> str:
    """Throws of the plan over some days, by their units: `60 throws`; empty on none."""
    sums: dict[str, int] = {}
    for day in days:
        if day.throws is not None:
            sums[day.unit] = sums.get(day.unit, 0) + day.throws
    return ", ".join(f"{count} {counted(count, own(unit))}" for unit, count in sums.items())


def thrown(kind: str | None) -> str:
    """A kind of throwing in words; empty for none and for what was not asked."""
    return "" if kind in {None, "none", "off"} else THROWN.get(str(kind), str(kind))


def load_of(worked: list[DayRecord]) -> float | None:
    """Effort times minutes over a day's sessions (id load.session); None where one lacks either."""
    loads = [
        session_load(r.effort, r.minutes)
        for r in worked
        if r.effort is not None and r.minutes is not None
    ]
    return sum(loads) if len(loads) == len(worked) else None


def highest(values: object) -> float | None:
    """The highest of the known values; None where none is known."""
    known = [value for value in values if value is not None]  # type: ignore[attr-defined]
    return max(known, default=None)


def total(values: object) -> float | None:
    """The sum of the known values; None where none is known."""
    known = [value for value in values if value is not None]  # type: ignore[attr-defined]
    return sum(known) if known else None


def average(values: list[float]) -> float | None:
    """The mean; None of nothing."""
    return mean(values) if values else None


def slope_a_week(values: tuple[float | None, ...]) -> float | None:
    """The straight line of least squares through daily values: change in a week; None below 3.

    Days without a value are left out, their place on the time axis kept.
    """
    known = [(float(n), value) for n, value in enumerate(values) if value is not None]
    if len(known) < 3:  # noqa: PLR2004 - two readings make a line but say nothing of a trend
        return None
    middle_x, middle_y = mean(x for x, _y in known), mean(y for _x, y in known)
    spread = sum((x - middle_x) ** 2 for x, _y in known)
    return WEEK_DAYS * sum((x - middle_x) * (y - middle_y) for x, y in known) / spread


def exercises(facts: Facts) -> tuple[str, ...]:
    """Names of all exercises done, those of the plan first in its order."""
    planned = [one.exercise for one in facts.bound.plan.doses]
    done = [d.exercise for sat in facts.sessions if sat.record for d in sat.record.done]
    known = set(done)
    return tuple(dict.fromkeys([name for name in planned if name in known] + done))


def done_of(facts: Facts, name: str) -> list[tuple[DayRecord, Done]]:
    """Every time an exercise was done, oldest first."""
    return [
        (sat.record, done)
        for sat in facts.sessions
        if sat.record is not None
        for done in sat.record.done
        if done.exercise == name
    ]


def open_hold(recorded: Recorded) -> Hold | None:
    """The oldest stop that nothing has opened."""
    opened = {lift.hold for lift in recorded.lifts}
    return next((h for h in holds(recorded) if h.number not in opened), None)


def holds(recorded: Recorded) -> tuple[Hold, ...]:
    """Every stop, oldest first."""
    return tuple(
        hold
        for sat in recorded.sessions
        for hold in ((sat.hold, *sat.more_holds) if sat.hold else sat.more_holds)
    )


def weeks(facts: Facts) -> tuple[tuple[Day, ...], ...]:
    """Runs of 7 days ending on the last day, oldest first; the first one may be shorter."""
    days = facts.days
    odd = len(days) % WEEK_DAYS
    head = (days[:odd],) if odd else ()
    rest = tuple(days[n : n + WEEK_DAYS] for n in range(odd, len(days), WEEK_DAYS))
    return (*head, *rest)
