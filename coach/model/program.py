"""The clinician's nouns: program, exercise, script, plan, as read and checked.

Law: built only by `coach.texts` after the check found no error (or read back from the copy that
`coach use` compiled). Every place is a line in the clinician's own file, so that a reason can
name it. No decisions here.
"""

from __future__ import annotations

from typing import NamedTuple

from coach.model.quantities import Call, Load
from coach.model.throws import StepTable


class Place(NamedTuple):
    """Where something stands: file (relative to the program or plan), line and column from 1."""

    file: str
    line: int
    column: int = 1


# ---------------------------------------------------------------- exercise


class Fault(NamedTuple):
    """One `watch for` entry: its name, how it feels, what puts it right, and what if it stays.

    `if_it_stays` is one of: '', lighter, shorter range, easier version, leave out.
    """

    name: str
    felt_as: str
    put_right: str
    if_it_stays: str = ""


class RangeStep(NamedTuple):
    """A step of the range ladder, shortest first."""

    name: str
    sentence: str


class Version(NamedTuple):
    """A version of an exercise; same level = the athlete picks by `fits`."""

    name: str
    level: int
    fits: str = ""
    set_up: tuple[str, ...] = ()
    cues: tuple[str, ...] = ()


class Exercise(NamedTuple):
    """One exercise.

    `family` is cuff, shoulder blade, trunk, legs, mobility or a locked family; `works` is `one
    side` or `both sides`; `counted_in` reps or holds; `load` the kind of load (dumbbell, band,
    ball, none). `stand_in` pairs a piece of equipment with the sentence on what replaces it.
    """

    name: str
    family: str
    works: str
    counted_in: str
    load: str
    equipment: tuple[str, ...]
    set_up: tuple[str, ...]
    cues: tuple[str, ...]
    faults: tuple[Fault, ...]
    ranges: tuple[RangeStep, ...]
    versions: tuple[Version, ...]
    stand_in: tuple[tuple[str, str], ...]
    place: Place


# ---------------------------------------------------------------- script


class Test(NamedTuple):
    """One comparison of a fact in a `when`.

    `op` is is, is not, at least, at most, below, between; `values` holds names for a choice or
    numbers for a number (between: low, high).
    """

    fact: str
    op: str
    values: tuple[str | float, ...]

    def holds(self, value: str | float) -> bool:
        """Whether `value` (a choice's name or a number) satisfies the comparison."""
        if self.op == "is":
            return value in self.values
        if self.op == "is not":
            return value not in self.values
        low = self.values[0]
        if isinstance(value, str) or isinstance(low, str):
            return False
        if self.op == "at least":
            return value >= low
        if self.op == "at most":
            return value <= low
        if self.op == "below":
            return value < low
        high = self.values[1]
        return not isinstance(high, str) and low <= value <= high


class Answers(NamedTuple):
    """What an own question takes: kind is yes or no, pain, counted, measured, choice, own words."""

    kind: str
    low: float = 0.0
    high: float = 10.0
    unit: str = ""
    choices: tuple[str, ...] = ()
    shown: tuple[str, ...] = ()  # the choices in the language that is read, if not the first


class Step(NamedTuple):
    """One line of a script, its branch conditions made flat.

    `kind` is tell, ask (the coach's), ask also (the clinician's), effect, note or stop. `when` lists
    the indexes into `Script.tests` that must all hold. `text` is the sentence, question words or
    note; `fact` the question's name; `effect` and `target` say what is lowered; `choices` shown in
    the clinician's language stay in `answers`. `worst` marks a test's branch that holds an effect.
    """

    kind: str
    when: tuple[int, ...]
    place: Place
    text: str = ""
    fact: str = ""
    wording: int = 1
    answers: Answers | None = None
    every_days: int = 0
    effect: str = ""
    target: str = ""


class Script(NamedTuple):
    """The talk of one moment, in order; `effect_tests` are tests whose branch holds an effect."""

    moment: str
    steps: tuple[Step, ...]
    tests: tuple[Test, ...]
    effect_tests: tuple[int, ...]
    place: Place


class Phase(NamedTuple):
    """A phase: exercises in order, and what opens it (shown, never decided by the tool)."""

    name: str
    exercises: tuple[str, ...]
    opens_when: tuple[Test, ...]
    clinician_sees: str
    place: Place


class Wall(NamedTuple):
    """An outer limit of a program that no plan may pass.

    `on` is an exercise, `pain` or `limits`; `what` an axis (sets, reps, hold, load, rest, apart) or
    a name of that plan line; `op` at most or at least; the amount is in `unit` ('' for a count).
    """

    on: str
    what: str
    op: str
    amount: float
    unit: str
    place: Place


class Program(NamedTuple):
    """A program: scripts, exercises, phases, and walls that no plan may pass."""

    name: str
    version: int
    about: str
    languages: tuple[str, ...]
    exercises: tuple[Exercise, ...]
    scripts: tuple[Script, ...]
    phases: tuple[Phase, ...]
    warm_up: tuple[str, ...]
    gentle: tuple[str, ...]
    twice_a_day: tuple[str, ...]
    recovery: tuple[str, ...]
    most_questions_before_first_set: int
    most_questions_after_a_set: int
    heard_phrases: tuple[tuple[str, str], ...]  # (group, phrase) the program adds
    place: Place
    walls: tuple[Wall, ...] = ()
    written_by: str = ""


# ---------------------------------------------------------------- plan


class Axis(NamedTuple):
    """One dose line: opening, step up and cap, as written.

    Numbers are in the axis' own unit (sets, reps, s). For `load`, see `Prescription.loads`. For
    range and versions they are places in the exercise's list. `step` 0 means: it stays.
    """

    opening: int
    opening_high: int
    step: int
    after_days: int
    cap: int
    place: Place


class Prescription(NamedTuple):
    """The plan's dose for one exercise; an axis the exercise lacks is None.

    `load` opens at `load`, may rise by `load_step` (0: stays) to at most `load_cap`; `lighter` lists
    the loads at home below the opening, heaviest first. `without` pairs equipment with `stand-in`
    or an exercise's name. `apart_days` is the spacing in days; `goes_up` the order of axes. `dapre`
    is the set whose reps drive the next load by that table (0: the line does not name it).
    """

    exercise: str
    sets: Axis
    reps: Axis
    hold: Axis | None
    load: Load
    load_step: float
    load_cap: Load
    lighter: tuple[Load, ...]
    rest_s: int
    tempo: str
    range: Axis | None
    versions: tuple[str, ...]
    apart_days: int
    goes_up: tuple[str, ...]
    without: tuple[tuple[str, str], ...]
    place: Place
    load_after_days: int = 0
    load_place: Place | None = None
    dapre: int = 0


class PainCeilings(NamedTuple):
    """The plan's pain numbers, 0 to 10; `usual` is the waking pain counted as usual at first."""

    to_start: float
    in_exercise: float
    gentle: float
    in_throwing: float
    usual: float
    place: Place


class Limits(NamedTuple):
    """Caps of a session and a week."""

    exercises: int
    minutes: int
    sessions_a_week: int
    place: Place


class Opened(NamedTuple):
    """Something locked that the clinician opened: what, when (ISO date), who."""

    what: str
    day: str
    who: str
    place: Place


class ThrowingLine(NamedTuple):
    """The plan's throwing clearance: who cleared it when, the table, and the steps allowed.

    `sessions_a_step` and `class_name` (`C`, `catcher C`) are 0 and '' where the plan does not say.
    """

    cleared: str
    who: str
    table: str
    from_step: int
    most_step: int
    apart_days: int
    sessions_a_step: int
    class_name: str
    place: Place


class GamePitches(NamedTuple):
    """The plan's line on pitching in games: positions (pitcher, catcher) and editions that count."""

    positions: tuple[str, ...]
    editions: tuple[str, ...]
    place: Place


class ClearanceWord(NamedTuple):
    """A salted scrypt hash of a one-time word (hex)."""

    salt: str
    digest: str


class Calls(NamedTuple):
    """Whom to reach. `place` is the plan line a stop names."""

    emergency: Call
    crisis: Call
    clinician: Call
    urgent: Call | None
    place: Place


class Plan(NamedTuple):
    """One athlete's plan. Dates are ISO texts; `born` is YYYY-MM.

    `guardian` is None for an adult. `clearance` lists the ways a stop may be lifted: by word, in
    person, new plan. `changed` pairs a rule id with its new number.
    """

    name: str
    initials: str
    version: int
    program: str
    language: str
    born: str
    sport: str
    guardian: Call | None
    side: str
    surgery: str
    starts: str
    review_by: str
    phase: str
    phase_opened: Opened
    calls: Calls
    clearance: tuple[str, ...]
    words: tuple[ClearanceWord, ...]
    pain: PainCeilings
    limits: Limits
    at_home: tuple[str, ...]
    loads_at_home: tuple[Load, ...]
    opened: tuple[Opened, ...]
    not_used: tuple[str, ...]
    doses: tuple[Prescription, ...]
    changed: tuple[tuple[str, float], ...]
    side_place: Place
    runs_place: Place
    place: Place
    guardian_present: str = "every session"  # or `first session`; empty for an adult
    throwing_line: ThrowingLine | None = None  # None: not cleared
    own_steps: StepTable | None = None  # the clinician's own table, where the plan brings one
    game_pitches: GamePitches | None = None  # None: the plan does not ask for them
    works_with: tuple[str, ...] = ()
    clearance_place: Place | None = None
    changed_places: tuple[Place, ...] = ()
    signature: str = ""  # the words of the key that must have signed it; empty: none is asked for
    signature_place: Place | None = None


class Bound(NamedTuple):
    """A program and one athlete's plan, checked together; `digest` is a hash over every byte.

    `signed` holds the words of the key whose signature was found to fit; empty where there is none.
    """

    program: Program
    plan: Plan
    digest: str
    signed: str = ""
