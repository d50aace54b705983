"""What passes between the session and whoever drives it: events in, turns out.

Law: a turn says everything a screen may show; an event is everything a driver may bring. Neither
knows a terminal, a clock or a file. Texts may hold tokens such as `{pain now}`: the driver puts
in the value that was heard, from the diary's record of the answers (`Turn` holds no raw answer).
"""

from __future__ import annotations

from typing import NamedTuple

from coach.model.decisions import Decision
from coach.model.heard import Question
from coach.model.quantities import Dose

# ---------------------------------------------------------------- events


class Typed(NamedTuple):
    """An answer. `fact` names the one question of a gathered prompt it is for ('' = the prompt).

    `at_s` is the time since the session opened, in seconds.
    """

    text: str
    at_s: int = 0
    fact: str = ""


class TimerEnded(NamedTuple):
    """A rest, lead-in or hold has run to its end."""

    at_s: int = 0


class Resumed(NamedTuple):
    """The session goes on after a pause or a cut-off of `gap_s` seconds."""

    gap_s: int
    at_s: int = 0


Event = Typed | TimerEnded | Resumed

# ---------------------------------------------------------------- turns


class Line(NamedTuple):
    """One thing to say.

    `kind`: say, name (an exercise's heading), work (set, side, dose), aim (a cue), item (of a
    list), stop, quote, heard (read-back). `parts`: the same as separate facts for plain mode; empty = `text`.
    """

    kind: str
    text: str
    parts: tuple[str, ...] = ()


class Ask(NamedTuple):
    """What may be typed now. `name` is the prompt's name in scenarios, `label` the words right
    before the typing place (`Pain now, 0 to 10:`). `safety` prompts drop what was typed early.
    """

    name: str
    label: str
    question: Question
    safety: bool = False


class Timer(NamedTuple):
    """Something to time: kind is rest or hold.

    A hold first counts `lead_s` down. `title` names it (`Hold 1 of 5, left arm`), `side` is shown on
    every redraw, `after` is said at the end (`Let go. Hold 1 of 5 is done.`), `next` what follows.
    """

    kind: str
    seconds: int
    lead_s: int = 0
    title: str = ""
    side: str = ""
    after: str = ""
    next: str = ""


class Offer(NamedTuple):
    """A dose shown to the athlete, as values, so that a promise can be checked on it."""

    exercise: str
    side: str
    dose: Dose
    set_number: int = 0
    kind: str = "list"  # list, set, warm-up, move


class Throws(NamedTuple):
    """Throws shown to the athlete: table, step, side, distance in feet, how many."""

    table: str
    step: int
    side: str
    distance_ft: float
    throws: int


class Turn(NamedTuple):
    """One turn: lines, then an ask or a timer, or the end.

    `alone` = shown on a cleared display (a stop). `end` is '' while the session goes on, else how it
    ended: done, by choice, partial, stopped, closed, refused. `decisions` are what `why` answers.
    """

    lines: tuple[Line, ...]
    ask: Ask | None = None
    timer: Timer | None = None
    end: str = ""
    alone: bool = False
    offers: tuple[Offer, ...] = ()
    decisions: tuple[Decision, ...] = ()
    throws: tuple[Throws, ...] = ()
