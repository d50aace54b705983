"""The facts a script may speak of: their kind, their bounds, the moment that asks them.

Law: a closed table; the order here is the coach's order of asking. What is not in it, and not an
own question asked before, is no fact. Bounds are outer limits of what can be typed, set here.
"""

from __future__ import annotations

from typing import Final, NamedTuple

from coach.model.flags import Group, Section

MOMENTS: Final = (  # in the order of a session
    "check-in",
    "screen",
    "at hand",
    "warm-up",
    "before an exercise",
    "after a set",
    "throwing",
    "close",
)


class Fact(NamedTuple):
    """A fact: kind is choice, counted, measured, listed (never compared) or own words."""

    name: str
    kind: str
    low: float = 0
    high: float = 10
    unit: str = ""
    choices: tuple[str, ...] = ()


_THROWING: Final = ("none", "light", "hard practice", "bullpen", "game")
_YES_NO: Final = ("yes", "no")


def _pain(name: str) -> Fact:
    return Fact(name, "counted", 0, 10)


def _yes_no(name: str) -> Fact:
    return Fact(name, "choice", choices=_YES_NO)


ASKS: Final[dict[str, tuple[Fact, ...]]] = {
    "check-in": (
        _pain("pain now"),
        _pain("worst pain"),
        _pain("waking pain"),
        Fact(
            "waking ache",
            "choice",
            choices=("worked muscle", "both arms alike", "joint", "not sure"),
        ),
        Fact("against usual", "choice", choices=("better", "same", "worse")),
        Fact("sleep last night", "measured", 0, 24, "h"),
        Fact("throwing yesterday", "choice", choices=_THROWING),
        Fact("throwing today", "choice", choices=_THROWING),
        _yes_no("thrown already"),
        Fact("throwing tomorrow", "choice", choices=_THROWING),
    ),
    "screen": tuple(Fact(f"screen {section}", "screen") for section in Section),
    "at hand": (Fact("at hand", "listed"),),
    "warm-up": (_pain("pain in warm-up"),),
    "before an exercise": (
        Fact("which version", "choice"),
        Fact("stand-in weight", "measured", 0, 60, "kg"),
    ),
    "after a set": (
        Fact("reps in set", "counted", 0, 100),
        _pain("pain in set"),
        Fact("felt in set", "choice"),
    ),
    "throwing": (
        *(
            _yes_no(name)
            for name in (
                "sore an hour after",
                "sore next day",
                "sore in warm-up",
                "sore after throw 15",
                "sore at the end",
                "arm tired",
            )
        ),
        Fact("throws done", "counted", 0, 300),
    ),
    "close": (
        _pain("pain after"),
        Fact("effort", "counted", 0, 10),
        Fact("minutes", "counted", 0, 300),
        Fact("own words", "own words"),
    ),
}

# two names for one question: an exercise counted in holds has no reps
SAME_ASK: Final = {"holds in set": "reps in set"}

SET_FACTS: Final = (
    Fact("holds in set", "counted", 0, 100),
    Fact("exercise", "choice"),
    Fact("set", "counted", 1, 20),
    Fact("sets left", "counted", 0, 20),
)

DIARY_FACTS: Final = (
    Fact("age", "measured", 5, 110, "years"),
    Fact("phase", "choice"),
    Fact("weeks in phase", "counted", 0, 520),
    Fact("sessions in phase", "counted", 0, 5000),
    Fact("days since last session", "counted", 0, 5000),
    Fact("worst pain in 7 days", "counted", 0, 10),
    Fact("flares in 14 days", "counted", 0, 14),
    Fact("sleep this week", "measured", 0, 24, "h"),
    Fact("weeks since surgery", "counted", 0, 1000),
)

# asked in some sessions only, so no later moment may count on them
ONLY_IN_THEIR_MOMENT: Final = ("after a set", "before an exercise", "throwing")

FLAG_NAMES: Final = tuple(group.value.replace("_", " ") for group in Group)

EFFECTS: Final = (
    "leave out",
    "one set fewer",
    "shorter range",
    "easier version",
    "lighter",
    "no step up",
)
TODAY: Final = (
    "no throwing",
    "gentle list only",
    "recovery list only",
    "rest day",
    "no more exercises",
)
STOPS: Final = ("emergency now", "same day", "before next session")

FAMILIES: Final = ("cuff", "shoulder blade", "trunk", "legs", "mobility")
LOCKED_FAMILIES: Final = (
    "resisted biceps",
    "external rotation at 90",
    "overhead",
    "cocked diagonal",
    "ball drill",
)
WORKS: Final = ("one side", "both sides")
COUNTED_IN: Final = ("reps", "holds")
LOADS: Final = ("dumbbell", "band", "ball", "none")
IF_IT_STAYS: Final = ("lighter", "shorter range", "easier version", "leave out")
COMMAND_WORDS: Final = (  # typed at every prompt, so no answer may be called so
    "stop",
    "pause",
    "why",
    "why code",
    "fix",
    "help",
    "again",
    "left",
    "gear",
    "more",
)
