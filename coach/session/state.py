"""The state of a session: flat, frozen, small, and made of decisions.

Law: no raw answer is ever kept here; an answer is turned into a decision when it is heard, and what
was typed lives in the diary. Counters stop at the last number that a rule looks at. Equal
situations compare equal, so that a search visits each once.
"""

from __future__ import annotations

from typing import Final, NamedTuple

from coach.model.decisions import Decision
from coach.model.flags import Section
from coach.model.ladders import Drove, ThrowState
from coach.model.quantities import Dose, SetLine
from coach.model.turns import Line
from coach.session.brief import Brief
from coach.session.table import Stage


class Work(NamedTuple):
    """One exercise under way; it knows its dose and its sets, and nothing of the day.

    `phase`: before (own questions, version), set (a set of reps is on), ready (a hold is next), hold
    (a hold runs), report (what the set was), rest, recheck (pain now before a changed set).
    `change` is what the next set will be changed by after pain. `fault` is the correction still
    open (-1 none), `fault_run` its sets in a row (to 3). Where a table makes each set another one, `table` is the
    upper number of reps of the whole range (0: none), `later` holds
    the sets to come, `drives` the set whose reps drive the next weight (0 none), `drove` what it said.
    """

    place: int
    dose: Dose
    set_number: int = 1
    phase: str = "before"
    hold_number: int = 1
    change: str = ""
    fault: int = -1
    fault_run: int = 0
    felt_due: bool = True
    stays_due: bool = False
    short: bool = False
    earned: bool = False
    over: bool = False
    more: int = 0
    table: int = 0
    later: tuple[SetLine, ...] = ()
    drives: int = 0
    drove: Drove | None = None


class Happening(NamedTuple):
    """Something the last step brought about, for the diary: kind, what, and the decision."""

    kind: str
    what: str
    decision: Decision | None = None


class State(NamedTuple):
    """Where a session stands.

    Talk: `first` until the first answer; `at` is the place in the moment's script, `missing` the facts of the prompt still to come
    (on one line while `line`), `unclear` how often this prompt was not understood (to 1), `under`
    the same for the prompt under an aside, `doubts`
    unclear safety answers of the day (to 3), `aside` a short talk laid over the stage, `sign` the
    group and flag it is about, `quoted` that typed words
    raised it, `reread` that a pain of 8 or more was read back and denied, `fixing`
    the fact being put right, `foreign` that another language was noticed once, `repeat` that only the question
    is shown again.
    Throwing: `sore` one bit for each moment, `thrown` the step, what decided, days of rest, and
    where the steps stand after it.
    Why: `reasons` are the day's decisions, `because` what the last set decided.
    Day: `level` 0 all work, 1 gentle only, 2 none; `short` a short night; `morning_up` waking pain not
    back to usual, `ache` that it may be plain muscle ache, which is asked; `threw` and `pain_up` open
    screen sections; `no_step` that nothing goes up (a match tomorrow, a muscle ache, pain up by 2);
    `order` when loaded work may come; `recovery` only the recovery list; `throws_only` a day of
    throwing alone; for a plan that counts game pitches `game_yesterday` and `game_today` that a
    game was said, `pitched` that its count keeps the throws shut; `shown` that a decision built on
    the answers was shown.
    `onward` is what follows at once, without an answer, in this order: `list` lays out today's
    list, `less` takes from it what a new fact forbids, `return` leaves a screen asked again, `back`
    is where that screen or a break came in between, `next` begins the next exercise. It waits under
    an aside and under the screen.
    Screen: `alone` sections left to ask alone, `asked` those asked alone, `listed` the list's, `flags`
    still to open one by one in `section`.
    """

    stage: Stage
    brief: Brief
    first: bool = True
    at: int = 0
    missing: tuple[str, ...] = ()
    line: bool = False
    unclear: int = 0
    under: int = 0
    doubts: int = 0
    aside: str = ""
    sign: tuple[str, str] = ("", "")
    quoted: bool = False
    reread: bool = False
    fixing: str = ""
    since: tuple[str, ...] = ()
    foreign: bool = False
    repeat: bool = False
    blank: tuple[str, ...] = ()
    truth: int = 0
    level: int = 0
    short: bool = False
    morning_up: bool = False
    ache: bool = False
    threw: bool = False
    pain_up: bool = False
    playing: bool = False
    no_step: bool = False
    order: str = "as usual"
    recovery: bool = False
    game_yesterday: bool = False
    game_today: bool = False
    pitched: bool = False
    alone: tuple[Section, ...] = ()
    asked: tuple[Section, ...] = ()
    listed: tuple[Section, ...] = ()
    section: str = ""
    flags: tuple[str, ...] = ()
    yes_left: tuple[Section, ...] = ()
    back: str = ""
    gone: tuple[str, ...] = ()
    lowered: tuple[tuple[str, str], ...] = ()
    todo: tuple[int, ...] = ()
    exercises_today: int = 0
    throws_only: bool = False
    left_early: int = 0
    work: Work | None = None
    sore: int = 0
    thrown: tuple[int, str, int, ThrowState] | None = None
    stop: tuple[str, str, str] = ("", "", "")
    onward: tuple[str, ...] = ()
    end: str = ""
    told: tuple[Line, ...] = ()
    reasons: tuple[Decision, ...] = ()
    because: tuple[Decision, ...] = ()
    happened: tuple[Happening, ...] = ()


_PLACES: Final = {name: place for place, name in enumerate(State._fields)}


def _with(state: State, **new: object) -> State:
    """The state with some fields new; KeyError for a name that is no field."""
    values: list[object] = list(state)
    for name, value in new.items():
        values[_PLACES[name]] = value
    return tuple.__new__(type(state), values)


# The one that comes with the class asks for every field by name, at a third of the speed; a session
# makes some hundred states a day, a search millions.
State._replace = _with  # type: ignore[assignment, method-assign]


class NoWorkError(LookupError):
    """An exercise was asked for while none is under way: a fault of ours."""


def under_way(state: State) -> Work:
    """The exercise under way; raises NoWorkError where the stage should have one and has not."""
    if state.work is None:
        raise NoWorkError(state.stage.value)
    return state.work
