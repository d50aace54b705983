"""A tester's nouns: days of talk, what is typed at which prompt, what must be seen.

Law: a prompt is named by its fact, never by its wording; a check says what must hold from its
place on (or all day). Values only; running them is the driver's work.
"""

from __future__ import annotations

from typing import NamedTuple

from coach.model.program import Place


class Typing(NamedTuple):
    """What is typed at a prompt. `prompt` is its name; said twice, it is asked twice."""

    prompt: str
    typed: str
    place: Place


class Seen(NamedTuple):
    """A check. `kind`: offers, never offers, asks, never asks, stops, decided by, notes, never notes,
    shows, never shows. `value` is what follows, as written.
    """

    kind: str
    value: str
    place: Place


class Happening(NamedTuple):
    """Something that befalls the session: power cut, end of input, timer ends, clearance by word,
    clearance in person, wrong clearance word, clock back; or a break, `seconds` long.
    """

    what: str
    place: Place
    seconds: int = 0


Entry = Typing | Seen | Happening


class ScenarioDay(NamedTuple):
    """One day: ISO date, time `HH:MM`, the talk in its order, and the checks that hold all day.

    `plan_file` is the path of a plan put in place before this day ('' for none).
    """

    day: str
    time: str
    talk: tuple[Entry, ...]
    all_day: tuple[Seen, ...]
    place: Place
    plan_file: str = ""


class Scenario(NamedTuple):
    """A scenario. `plan_file` is the path of its plan; `usual` what is typed where no day says."""

    name: str
    plan_file: str
    usual: tuple[Typing, ...]
    days: tuple[ScenarioDay, ...]
    place: Place


class Stretch(NamedTuple):
    """Some weeks of a course that differ: week numbers from 1, the weekdays meant (empty: all).

    `trains` are the weekdays trained in these weeks (None: as usual, empty: never).
    """

    first: int
    last: int
    on: tuple[str, ...]
    trains: tuple[str, ...] | None
    usual: tuple[Typing, ...]
    place: Place


class Course(NamedTuple):
    """How an invented athlete answers: what is typed at each prompt, week by week.

    `trains` are weekdays by name. A later stretch wins over an earlier one.
    """

    name: str
    usual: tuple[Typing, ...]
    trains: tuple[str, ...]
    stretches: tuple[Stretch, ...]
