"""What `coach new` asks, in the trade's words, for each kind of file.

Law: it asks for every number, name and date and offers none of its own as an answer; what it shows
after "as" is a form, not a dose. The order is the order of the file.
"""

from __future__ import annotations

from typing import NamedTuple

from coach.model.program import Exercise, Program
from coach.model.throws import OWN_STEPS, UNITS
from coach.pages.new_lines import Asked, Questions
from coach.rules.throwing_tables import EDITIONS, STEP_TABLES
from coach.texts import facts
from coach.texts.values import years_between

ADULT_AT_YEARS = 18
WALL_FORM = "as: sets at most N, load at most N kg, apart at least N days; Enter for none"
NUMBERS = "Every number below is the clinician's. Remarks stand on lines of their own."


class Tongues(NamedTuple):
    """The languages of a program: the first, and the second or nothing."""

    first: str
    second: str = ""


def language_question() -> Questions:
    """The languages, asked before anything is written in them."""
    yield Asked(
        "Language you write in, as: English. With a second one for the athlete: English, Spanish",
        "languages: {}",
    )


def exercise_questions(tongues: Tongues) -> Questions:
    """An exercise: what it is, how it is done, what to watch for, its range and versions."""
    yield Asked("Name of the exercise, in small letters", "exercise: {}")
    kinds = ", ".join(facts.FAMILIES)
    locked = ", ".join(facts.LOCKED_FAMILIES)
    yield Asked(
        f"Family. Open: {kinds}. Locked until a plan opens it: {locked}",
        "family: {}",
        remark="A locked family is done only where the plan opens it, by name, date and person.",
    )
    yield Asked("One side or both sides", "works: {}")
    yield Asked("Counted in reps or holds", "counted in: {}")
    (load,) = yield Asked("Load: dumbbell, band, ball or none", "load: {}")
    wanted = "Enter for nothing" if load == "none" else f"at least: {load}"
    gear = yield Asked(
        f"What it needs, with commas; {wanted}",
        "equipment: {}",
        optional=load == "none",
    )
    for thing in [piece.strip() for piece in ",".join(gear).split(",") if piece.strip()]:
        words = f"What may stand in for the {thing}, in one sentence; Enter for nothing"
        yield from _sentence(words, f"stand-in for {thing}", "", (), tongues, optional=True)
    yield from _sentences("Position", "set-up", "", (), tongues)
    yield from _sentences(
        "Cues, what moves where",
        "cues",
        "",
        (),
        tongues,
        "One cue is said a set, in this order. No side and no number here: both are the plan's.",
    )
    yield from _faults(tongues)
    yield from _range(tongues)
    yield from _versions(tongues)


def _sentence(
    words: str,
    key: str,
    lead: str,
    under: tuple[str, ...],
    tongues: Tongues,
    *,
    optional: bool = False,
) -> Questions:
    """One sentence after a key, and the same in the second language below it."""
    said = yield Asked(words, f"{lead}{key}: {{}}", under, optional=optional)
    if said and tongues.second:
        yield Asked(
            f"  The same in {tongues.second}", f"{lead}{key} in {tongues.second}: {{}}", under
        )


def _sentences(
    words: str,
    key: str,
    lead: str,
    under: tuple[str, ...],
    tongues: Tongues,
    remark: str = "",
    *,
    optional: bool = False,
) -> Questions:
    """Sentences under a key, one a line, and as many in the second language below them."""
    ask = f"{words}, one sentence a line; Enter when done{', or for none' if optional else ''}"
    where = (*under, f"{lead}{key}:")
    said = yield Asked(ask, f"{lead}  - {{}}", where, remark, optional=optional, many=True)
    if said and tongues.second:
        where = (*under, f"{lead}{key} in {tongues.second}:")
        ask = f"  The same {len(said)} in {tongues.second}; Enter when done"
        yield Asked(ask, f"{lead}  - {{}}", where, many=True)


def _faults(tongues: Tongues) -> Questions:
    words = "A fault to watch for, as a short name; Enter when done"
    where = ("watch for:",)
    while True:
        name = yield Asked(words, "  - name: {}", where, optional=True)
        if not name:
            return
        feels = "  What the athlete would say it feels like, in one sentence"
        yield from _sentence(feels, "felt as", "    ", where, tongues)
        yield from _sentence(
            "  What puts it right, in one sentence", "put right", "    ", where, tongues
        )
        yield Asked(
            f"  If it stays three sets running: {', '.join(facts.IF_IT_STAYS)}; Enter for nothing",
            "    if it stays: {}",
            where,
            optional=True,
        )


def _range(tongues: Tongues) -> Questions:
    words = (
        "A step of the range, shortest first, as: to the lower ribs: Stop when the hands are there"
    )
    where = ("range:",)
    while True:
        said = yield Asked(f"{words}. Enter when done, or for none", "  - {}", where, optional=True)
        if not said:
            return
        if tongues.second:
            name = said[0].partition(": ")[0]
            key = f"    {name} in {tongues.second}: {{}}"
            yield Asked(f"  The same sentence in {tongues.second}", key, where)


def _versions(tongues: Tongues) -> Questions:
    words = "A version of it, easiest first, as a short name; Enter when done, or for none"
    where = ("versions:",)
    while True:
        name = yield Asked(words, "  - version: {}", where, optional=True)
        if not name:
            return
        yield Asked(
            "  Its level, 1 for the easiest. A higher one is earned; of one level the athlete picks",
            "    level: {}",
            where,
        )
        fits = "  Whom it fits, as the athlete would say it: This is new to me."
        yield from _sentence(fits, "fits", "    ", where, tongues)
        for kind, key in (("position", "set-up"), ("cues", "cues")):
            ask = f"  More {kind}, for this version alone"
            yield from _sentences(ask, key, "    ", where, tongues, optional=True)


def program_questions(warm_up: str, languages: str) -> Questions:
    """A program around its first exercise, which is its warm-up."""
    yield Asked("Name of the program and its number, as: steady arm 1", "program: {}")
    yield Asked("For whom and what, in one line", "about: {}")
    yield Asked("Who writes it", "written by: {}")
    yield Asked("", "languages: {}", given=(languages,))
    yield Asked(
        "At most how many questions, as: before the first set at most N, after a set at most N",
        "questions: {}",
    )
    yield from _walls(warm_up)
    yield Asked(f"Warm-up exercises, as: {warm_up}", "warm-up: {}")
    for key, words in (
        ("gentle", "Exercises without load for a day of more pain"),
        ("twice a day", "Mobility that a second session of a day may offer"),
        ("recovery", "Exercises for the day after hard throwing"),
    ):
        yield Asked(f"{words}, of those written; Enter for none", f"{key}: {{}}", optional=True)
    where = ("phases:",)
    yield Asked("Name of the first phase", "  - phase: {}", where)
    yield Asked(f"Its exercises in order, with commas, as: {warm_up}", "    exercises: {}", where)
    while True:
        name = yield Asked(
            "Name of the next phase; Enter when done", "  - phase: {}", where, optional=True
        )
        if not name:
            return
        yield Asked(
            "  What you must see before it opens, in one sentence", "    clinician sees: {}", where
        )
        yield Asked("  Its exercises in order, with commas", "    exercises: {}", where)


def _walls(warm_up: str) -> Questions:
    where = ("walls:",)
    remark = "No plan of this program may pass these outer limits; one that does is refused."
    pain = "as: to start at most N, in exercise at most N, gentle at most N, in throwing at most 0"
    yield Asked(
        f"Walls: outer limits for every plan. On pain, {pain}; Enter for none",
        "  pain: {}",
        where,
        remark,
        optional=True,
    )
    form = "as: exercises at most N, minutes at most N, sessions a week at most N"
    yield Asked(f"  On a session, {form}; Enter for none", "  limits: {}", where, optional=True)
    yield Asked(f"  On {warm_up}, {WALL_FORM}", f"  {warm_up}: {{}}", where, optional=True)


def scenario_questions() -> Questions:
    """A scenario of one day: what is typed at one prompt, and what must follow."""
    yield Asked("What it shows, in one line", "scenario: {}")
    yield Asked("The plan, as a path from here", "plan: {}")
    yield Asked(
        "The course of usual answers, by its name (or the name of one in the program)",
        "usual: {}",
        remark="A course holds what is typed at every prompt that the day does not name.",
    )
    days = ("days:",)
    yield Asked("Day and time, as: 2026-11-09 at 18:30", "  - day: {}", days)
    while True:
        yield from _a_day()
        more = "Next day and time; Enter when done. A day not named is a missed day"
        another = yield Asked(more, "  - day: {}", days, optional=True)
        if not another:
            return


def _a_day() -> Questions:
    talk = ("days:", "    talk:")
    yield Asked(
        "What is typed, as: pain now: 4. One a line, in the order of the talk; Enter when done",
        "      - {}",
        talk,
        "A prompt goes by its name; after a set as: pain in set 1 of EXERCISE.",
        many=True,
        optional=True,
    )
    yield Asked(
        "What must hold then, as: never offers: NAME, or decided by: RULE. Enter when done",
        "      - {}",
        talk,
        many=True,
    )


# ---------------------------------------------------------------- plan


def plan_questions(program: Program) -> Questions:
    """A plan for one athlete, line by line, with a dose for each exercise."""
    yield Asked("Initials and number of the plan, as: L.V. 1", "plan: {}", remark=NUMBERS)
    yield Asked("", "program: {}", given=(program.name,))
    if len(program.languages) > 1:
        yield Asked(f"Language the athlete reads: {', '.join(program.languages)}", "language: {}")
    (athlete,) = yield Asked("Birth month and sport, as: born 2008-04, javelin", "athlete: {}")
    (runs,) = yield Asked("First day and review, as: 2026-11-09, review by 2026-12-21", "runs: {}")
    if _under_age(athlete, runs):
        yield Asked("Guardian, as: J.K., present at every session, 555 0171", "guardian: {}")
    yield Asked("Side that is worked on: left or right", "side: {}")
    yield Asked("Surgery: none, or the day and what was done", "surgery: {}")
    phases = ", ".join(phase.name for phase in program.phases)
    yield Asked(f"Phase ({phases}), as: NAME, opened 2026-11-06 by M. Aalto", "phase: {}")
    yield Asked(
        "Who else treats the athlete, with commas; Enter for none", "works with: {}", optional=True
    )
    yield from _calls()
    yield Asked(
        "How a stop may be lifted: by word, in person, new plan, with commas",
        "clearance: {}",
        remark="Ten one-time words are made by coach bind; none is written here.",
    )
    yield Asked(
        "Pain, each 0 to 10, as: usual N, to start N, in exercise N, gentle N, in throwing 0",
        "pain: {}",
        remark="Over these numbers a set, an exercise or a day ends.",
    )
    yield Asked("Limits, as: exercises N, minutes N, sessions a week N", "limits: {}")
    yield Asked("What is at home, with commas, as: light band, 2 kg dumbbell, towel", "at home: {}")
    yield Asked(
        f"Locked families to open ({', '.join(facts.LOCKED_FAMILIES)}), "
        "as: overhead 2026-12-01 by M. Aalto; Enter for none",
        "opened: {}",
        optional=True,
    )
    yield from _throwing()
    if "pitcher" in athlete:
        yield Asked(
            f"Game pitches, as: pitcher, catcher, EDITION. Editions: {', '.join(EDITIONS)}; "
            "Enter if none are counted",
            "game pitches: {}",
            optional=True,
            remark="Where two editions differ, the longer rest counts. It is a wall, no target.",
        )
    unused = yield Asked(
        "Exercises not used in this plan, with commas; Enter for none. There are: "
        + ", ".join(exercise.name for exercise in program.exercises),
        "not used: {}",
        optional=True,
    )
    left_out = {piece.strip() for piece in ",".join(unused).split(",")}
    for exercise in program.exercises:
        if exercise.name not in left_out:
            yield from dose_questions(exercise)


def _under_age(athlete: str, runs: str) -> bool:
    born = athlete.partition(",")[0].removeprefix("born ").strip()
    return years_between(born, runs[:10]) < ADULT_AT_YEARS


def _throwing() -> Questions:
    """The clinician's own table, where there is one; then the clearance."""
    yield from _own_steps()
    yield Asked(
        f"Throwing: not cleared, or as: cleared DATE by WHO, TABLE, from step N, at most step N, "
        f"apart N days. Tables: {', '.join(STEP_TABLES)}; your own: {OWN_STEPS}",
        "throwing: {}",
    )


def _own_steps() -> Questions:
    """For any sport or table that is not published: what is counted, then step by step."""
    where = ("throwing steps:",)
    unit = yield Asked(
        f"Your own table of steps (any other sport): what it counts ({', '.join(UNITS)}); Enter if "
        "there is none",
        "  counted in: {}",
        where,
        "Your clinician's table goes here, every step in order, from step 1.",
        optional=True,
    )
    number = 1
    while unit:
        form = "as: 10 throws at 12 m, 10 throws at 18 m"
        said = yield Asked(
            f"Step {number}, {form}{'; Enter when done' if number > 1 else ''}",
            f"  step {number}: {{}}",
            where,
            optional=number > 1,
        )
        if not said:
            return
        number += 1


def _calls() -> Questions:
    where = ("call:",)
    yield Asked("Emergency number and who answers, as: 112, ambulance", "  emergency: {}", where)
    yield Asked("Crisis line, as: 555 0199, day and night", "  crisis line: {}", where)
    yield Asked("Urgent care, same form; Enter for none", "  urgent: {}", where, optional=True)
    yield Asked("You, as: 555 0134, M. Aalto, weekdays 8 to 17", "  clinician: {}", where)


def dose_questions(exercise: Exercise) -> Questions:
    """One line for each axis the exercise has, no more and no fewer."""
    where = ("doses:", f"  {exercise.name}:")
    moving = "LOW to HIGH, up by N, at most N"
    yield Asked(f"{exercise.name}: sets, as: N only", "    sets: {}", where)
    yield Asked(
        f"{exercise.name}: {exercise.counted_in} a set, as: N only, or: {moving}",
        "    reps: {}",
        where,
    )
    if exercise.counted_in == "holds":
        yield Asked(f"{exercise.name}: each hold, as: N s only", "    hold: {}", where)
    if exercise.load != "none":
        form = (
            "light band only"
            if exercise.load == "band"
            else "N kg only, or: N kg, up by N kg, at most N kg"
        )
        yield Asked(f"{exercise.name}: load, as: {form}", "    load: {}", where)
    if exercise.ranges:
        steps = ", ".join(step.name for step in exercise.ranges)
        words = f"{exercise.name}: range ({steps}), as: NAME only, or: NAME, up after N days, "
        yield Asked(f"{words}at most NAME", "    range: {}", where)
    if exercise.versions:
        names = ", ".join(version.name for version in exercise.versions)
        words = f"{exercise.name}: versions allowed, the first to begin with ({names})"
        yield Asked(words, "    versions: {}", where)
    words = (
        f"{exercise.name}: what goes up, in order, a harder version too; Enter if none or one line"
    )
    yield Asked(words, "    goes up: {}", where, optional=True)
    tempo = f"{exercise.name}: tempo, as: lower for 3 s; Enter for none"
    yield Asked(tempo, "    tempo: {}", where, optional=True)
    yield Asked(f"{exercise.name}: rest between sets, as: N s", "    rest: {}", where)
    yield Asked(
        f"{exercise.name}: days from one time to the next, as: N days", "    apart: {}", where
    )
    for thing in exercise.equipment:
        words = (
            f"{exercise.name}: without the {thing}: stand-in, or another exercise; Enter: left out"
        )
        yield Asked(words, f"    without {thing}: {{}}", where, optional=True)
