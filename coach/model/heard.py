"""What was asked and what was heard: the nouns between a question and a value.

Law: a value here has already been checked for range; hearing builds these, the session reads them.
They never hold a decision.
"""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from coach.model.flags import Group

# float (pain, hours, counts), str (a choice or own words), tuple of str (several choices)
Value = float | str | tuple[str, ...]


class Kind(StrEnum):
    """The sort of answer a question takes."""

    PAIN_NOW = "pain_now"  # 0 to 10; the last value said about now wins
    WORST_PAIN = "worst_pain"  # 0 to 10; the largest value wins (worst, waking, in set)
    SLEEP_HOURS = "sleep_hours"  # hours, the shorter end of a range
    THROWING = "throwing"  # `none` or the hardest kind said, with count and distance
    YES_NO = "yes_no"  # y and n allowed
    SAFETY_YES_NO = "safety_yes_no"  # only plain words: yes, no; y, n, 0, "all good" are unclear
    NONE_OR_LIST = "none_or_list"  # `none`, or the numbers of the sections
    CHOICE = "choice"  # one of `choices`, by number or name
    CHOICES = "choices"  # several of `choices`, or none, or all (what is at hand)
    COUNT = "count"  # a whole number of reps, holds or throws; the lower end of a range
    COUNT_MOST = "count_most"  # a whole number where more is worse (pitches); the higher end
    EFFORT = "effort"  # 0 to 10; the larger end
    NUMBER = "number"  # a measured number with a unit (h, kg, lb, cm, years, min)
    SET_FEEL = "set_feel"  # fine, a `watch for` name, something else
    OWN_WORDS = "own_words"  # free text, kept, listened to, never compared
    WORD = "word"  # one expected word, such as `go`; anything else is unclear
    LINE = "line"  # several facts on one line, labelled values only


class Question(NamedTuple):
    """One thing that may be answered at a prompt.

    `fact` is the name of what is asked; `ask` the words on screen; `choices` the names that fit;
    `low` and `high` bound a number (in `unit`); `parts` are the questions that one LINE gathers.
    """

    fact: str
    kind: Kind
    ask: str = ""
    choices: tuple[str, ...] = ()
    low: float = 0.0
    high: float = 10.0
    unit: str = ""
    parts: tuple[Question, ...] = ()


class Action(StrEnum):
    """What hearing advises; `ESCALATE` and `CONFIRM` name a group."""

    ACCEPT = "accept"
    ASK_AGAIN = "ask_again"
    CONFIRM = "confirm"
    ESCALATE = "escalate"


class Command(StrEnum):
    """Words that work at every prompt."""

    STOP = "stop"
    PAUSE = "pause"
    WHY = "why"
    WHY_CODE = "why code"
    FIX = "fix"
    HELP = "help"
    AGAIN = "again"
    LEFT = "left"
    GEAR = "gear"
    MORE = "more"


class Span(NamedTuple):
    """A stretch of the typed text that decided, with why it counted."""

    start: int
    end: int
    why: str


class Heard(NamedTuple):
    """The result of listening to one answer.

    `values` pairs a fact's name with its value, only for what was surely understood.
    `also` holds side values that `coach hear` reports (count, max_distance_ft, throwing_also).
    `missed` is what was not understood, in the athlete's own words. `hedged` marks a soft yes or
    no. `command` is set when the whole answer was a command word. `unnamed` marks a sign that no
    word names: `group` is then only the likeliest, and is not to be told to the athlete.
    """

    action: Action
    values: tuple[tuple[str, Value], ...] = ()
    group: Group | None = None
    flag: str | None = None
    spans: tuple[Span, ...] = ()
    missed: str = ""
    hedged: bool = False
    command: Command | None = None
    also: tuple[tuple[str, Value], ...] = ()
    unnamed: bool = False
