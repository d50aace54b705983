"""What earlier days hand to today: a small summary, made by the diary, read by the rules.

Law: a missing thing is None or empty, never a guessed value. Days are ISO dates of the athlete's
own calendar; instants are ISO texts with their UTC offset.
"""

from __future__ import annotations

from typing import NamedTuple

from coach.model.flags import Section
from coach.model.ladders import Drove, Ladder, ThrowDay


class Done(NamedTuple):
    """One exercise done on a day: sets done, whether loaded, and when it ended (ISO instant).

    `result` is good, earned (two clean reps over the top in the last set), short, form, over, left,
    no equipment or cut off. `reps` and `pains` are as typed, set by set; `dose` the dose in words as
    first shown, of `planned_sets`; `felt` what was felt, set by set where asked; `drove` what the
    set said that drives the next weight, where a table does.
    """

    exercise: str
    sets: int
    loaded: bool
    ended_at: str
    result: str = "good"
    reps: tuple[float, ...] = ()
    pains: tuple[float, ...] = ()
    dose: str = ""
    planned_sets: int = 0
    felt: tuple[str, ...] = ()
    drove: Drove | None = None


class Outing(NamedTuple):
    """A day on which somebody pitched in a game: its count (None: not known), days off asked for.

    `over_cap`: the count passed the day's cap at that age.
    """

    day: str
    pitches: int | None
    days_off: int
    over_cap: bool = False


class DayRecord(NamedTuple):
    """One session as it was recorded. `ended` is done, by choice, partial, stopped or none.

    `none` marks a start at which nothing could be done (closed plan, rest day).
    """

    day: str
    opened_at: str
    ended: str
    plan_version: int
    waking_pain: float | None = None
    pain_now: float | None = None
    worst_in_set: float | None = None
    sleep_h: float | None = None
    threw_yesterday: str | None = None
    throwing_today: str | None = None
    morning_up: bool = False
    done: tuple[Done, ...] = ()
    alone: tuple[Section, ...] = ()
    effort: float | None = None
    minutes: float | None = None
    notes: tuple[str, ...] = ()
    picked: tuple[tuple[str, str], ...] = ()
    fell: bool = False
    own_asked: tuple[str, ...] = ()  # own questions asked that day
    at_hand: tuple[str, ...] | None = None  # what was here, where it was asked
    pain_after: float | None = None
    ladders: tuple[tuple[str, Ladder], ...] = ()  # every exercise's, as used that day
    threw: ThrowDay | None = None
    decisions: tuple[tuple[str, str, str], ...] = ()  # rule id, outcome, why as shown
    pitched: tuple[Outing, ...] = ()  # game pitches told that day


class Hold(NamedTuple):
    """A closed plan: which stop closed it. `said` is what was typed, `code` the flag's id."""

    number: int
    code: str
    tier: str
    group: str
    said: str
    day: str
    at: str
    plan_version: int


class History(NamedTuple):
    """Everything a start may read of the past.

    `records` is newest first, at most 60. `hold` is the open stop, if any. `lifted` is true from
    the lifting of a hold until sections 1 to 5 were asked alone. `asked_alone` pairs each section with the last day it
    was asked alone. `last_at` is the instant of the newest record of any kind.
    """

    records: tuple[DayRecord, ...] = ()
    hold: Hold | None = None
    lifted: bool = False
    asked_alone: tuple[tuple[Section, str], ...] = ()
    at_hand: tuple[str, ...] | None = None
    last_at: str = ""
    own_asked: tuple[tuple[str, str], ...] = ()  # (fact of an `ask also`, last day asked)
