"""Another checker beside the search: SPIN walks the hand-written day, and the situations are compared.

Law: two explorers, two descriptions of the day; they are the same only where each knows all the
situations and all the steps (situation, answer, situation) of the other. A program that is not here, a day that the model does not
speak of, and a walk cut short are said, and show nothing. What runs is ended by its own number.
"""

from __future__ import annotations

import contextlib
import re
import shutil
import signal
import subprocess
import tempfile
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Final, NamedTuple

from coach.drivers.exit_codes import TERMINATED
from coach.drivers.prove_days import openings
from coach.drivers.prove_promela import (
    Codes,
    DayTables,
    Tried,
    UnmodelledError,
    codes_of,
    refuse_what_is_not_modelled,
)
from coach.drivers.prove_promela_doses import DoseTables
from coach.drivers.prove_promela_talk import TalkTables
from coach.drivers.prove_situations import (
    PLACES,
    TOLD,
    VALUE,
    WHAT,
    Situation,
    Walked,
    key_of,
    session_walk,
    step,
    unpacked,
)
from coach.drivers.workers import TimeIsOver, cores, done
from coach.model.program import Bound
from coach.session.brief import Brief
from coach.session.engine import start
from coach.texts.day_model import laid, with_tables

LOOK_S: Final = 120.0  # how long a usual look takes
ONE_RUN_S: Final = 300.0  # what one program may take on one day
LAST_WORDS_S: Final = 30.0  # what a day that was cut short may still take
MOST_MB: Final = 1024  # what SPIN may keep
ONE_BY_ONE: Final = ("-DSAFETY", "-DNOREDUCE")  # every state is looked at; none is folded away
DEEPEST: Final = 1_000_000  # steps of the model on one way
USUAL_DAY: Final = "an ordinary day"
USUAL: Final = Tried()
CALM: Final[tuple[tuple[str, tuple[float | str, ...]], ...]] = (
    ("pain now", (0.0,)),
    ("worst pain", (0.0,)),
    ("waking pain", (0.0,)),
    ("sleep last night", (16.0,)),
    ("throwing yesterday", ("none",)),
    ("throwing today", ("none",)),
)
CALM_WORK: Final = Tried(("value", "timer"), CALM)
CALM_GEAR: Final = Tried((*USUAL.kinds, "gear"), CALM)
CALM_DOUBT: Final = Tried((*USUAL.kinds, "maybe"), CALM)
CALM_BREAKS: Final = Tried(
    ("value", "timer", "break"), (*CALM, ("pain in warm-up", (0.0,)), ("felt in set", ("fine",)))
)
FIRST_DAY: Final = "the first day"
SHOWN: Final = 3  # situations told of each difference
COVERS: Final = (
    "a whole day from the door to the close: check-in, screen, scripts, list, warm-up, exercises; "
    "every value of every scale (at a calm check-in one of each), answers on one line or one by one, "
    "not understood, a sure sign, one in doubt, stop, timers, a strong pain read back, missing "
    "gear, breaks; "
    "the days take turns, so not all of it is tried on each of them"
)
LEAVES_OUT: Final = (
    "throws, game pitches, loads that a table drives, corrections, days on which a step up is "
    "due, words that may tell of a sign and name none; what the diary decides before the first question is read, not worked out again; "
    "words and reasons are not compared"
)


class Beside(NamedTuple):
    """One day looked at by both; `first` tells some differences.

    `situations` and `steps` are the session's; `between` are SPIN's steps by answers that lie inside
    a class of the session's, held against the class.
    """

    day: str
    trouble: str = ""
    situations: int = 0
    spin_situations: int = 0
    steps: int = 0
    spin_steps: int = 0
    between: int = 0
    only_session: int = 0
    only_spin: int = 0
    first: tuple[str, ...] = ()
    seconds: float = 0.0
    spin_seconds: float = 0.0
    made_in_seconds: float = 0.0
    mb: float = 0.0
    spin_mb: float = 0.0

    @property
    def same(self) -> bool:
        """Whether both were walked to the end and know the same situations and the same steps."""
        return not (self.trouble or self.only_session or self.only_spin)


class Made(NamedTuple):
    """The checker that SPIN made of a day, or why there is none."""

    program: Path | None
    seconds: float
    trouble: str = ""


def why_not() -> str:
    """Why SPIN cannot be asked here; empty where it can."""
    if shutil.which("spin") is None:
        return "there is no `spin` here (Debian's package is called spin)"
    if compiler() is None:
        return "there is no C compiler here (`cc` or `gcc`)"
    return ""


def compiler() -> str | None:
    """The C compiler that SPIN's checker is made with."""
    return shutil.which("cc") or shutil.which("gcc")


# ---------------------------------------------------------------- the days that are compared


class Day(NamedTuple):
    """A day to compare, and what is tried on it."""

    name: str
    brief: Brief
    tried: Tried


def days_beside(bound: Bound) -> list[Day]:
    """The days that are compared; those that end at the door are left to the search.

    Throws and game pitches are taken out of the plan first. All at once would be too many: either
    the check-in is tried whole, or the work, or what may come in between. The quickest come first.
    """
    plan = bound.plan._replace(throwing_line=None, game_pitches=None)
    bound = bound._replace(plan=plan)
    days = dict(openings(bound))
    names = [station.exercise.name for station in days[USUAL_DAY].stations]
    found = [Day(f"{USUAL_DAY}, calm", days.pop(USUAL_DAY), CALM_WORK)]
    whole: list[Day] = []
    for name in names:
        alone = dict(openings(with_one(bound, name)))
        day = f"{USUAL_DAY}, {name} alone"
        if name == names[0]:
            found.append(Day(f"{day}, calm, missing gear", alone[USUAL_DAY], CALM_GEAR))
            found.append(Day(f"{day}, calm, a sign in doubt", alone[USUAL_DAY], CALM_DOUBT))
            whole = [Day(f"{d}, {name} alone", alone[d], USUAL) for d in (USUAL_DAY, FIRST_DAY)]
        found.append(Day(f"{day}, calm, breaks", alone[USUAL_DAY], CALM_BREAKS))
    found += [Day(f"{name}, calm", brief, CALM_WORK) for name, brief in days.items()]
    return [day for day in (*found, *whole) if not start(day.brief).end]


def with_one(bound: Bound, name: str) -> Bound:
    """The plan with one exercise and its warm-up."""
    kept = {name, *bound.program.warm_up}
    doses = tuple(dose for dose in bound.plan.doses if dose.exercise in kept)
    return bound._replace(plan=bound.plan._replace(doses=doses))


# ---------------------------------------------------------------- the whole look


class Look(NamedTuple):
    """What came of asking SPIN: why it was not asked, or each day by itself.

    `left` are days for which the time of a usual look was too short; nothing is shown of them.
    """

    skipped: str
    days: tuple[Beside, ...] = ()
    left: tuple[str, ...] = ()

    @property
    def same(self) -> bool:
        """Whether both know the same on every day; nothing compared is not the same."""
        return bool(self.days) and all(one.same for one in self.days)

    @property
    def cut_short(self) -> bool:
        """Whether a day is missing, and no difference was met on the others."""
        met = any(one.only_session or one.only_spin for one in self.days)
        return not met and any("cut short" in one.trouble for one in self.days)


def look_beside(
    bound: Bound, seconds: float, say: Callable[[str], object], *, whole: bool = False
) -> Look:
    """The days of the comparison, on every core; `say` tells of progress.

    A usual look takes as many as there is time for; `whole` takes all, and a missing one is said to
    be cut short. `seconds` is the most that either may last, 0 = no limit.
    """
    skipped = why_not()
    if skipped:
        return Look(skipped)
    lasts = seconds if whole else min(seconds or LOOK_S, LOOK_S)
    until = time.monotonic() + lasts if lasts else None
    days = days_beside(bound)
    found: dict[int, Beside] = {}
    with contextlib.suppress(TimeIsOver, KeyboardInterrupt):
        late = until + LAST_WORDS_S if until is not None else None
        for number, one in done(lambda n: beside(*days[n], until), len(days), cores(), late):
            found[number] = one
            say(f"SPIN beside the session: {one.day}, {len(found)} of {len(days)}\n")
    looked = tuple(
        found.get(number) or Beside(day, "cut short before this day")
        for number, (day, _brief, _tried) in enumerate(days)
    )
    if whole:
        return Look("", looked)
    left = tuple(one.day for one in looked if "cut short" in one.trouble)
    return Look("", tuple(one for one in looked if one.day not in left), left)


# ---------------------------------------------------------------- the model


def model_of(brief: Brief, tried: Tried = USUAL) -> tuple[str, Codes]:
    """The whole model of a day, and its codes; UnmodelledError for a day it does not speak of."""
    refuse_what_is_not_modelled(brief)
    codes = codes_of(brief)
    lines: list[str] = []
    for kind in (DayTables, DoseTables, TalkTables):
        tables = kind(brief, codes, tried)
        tables.write()
        lines += tables.lines
    lines.append(teller(len(brief.tests)))
    return with_tables(f"#define TOLD_WIDTH {len(TOLD)}", "\n".join(lines)), codes


def teller(tests: int) -> str:
    """How the model hands a situation to the part in C: its numbers, the conditions as bits of one."""
    truth = " | ".join(f"((long long)now.t[{n}] << {n})" for n in range(tests)) or "0"
    row = ", ".join(truth if name == "t" else f"now.{name}" for name in TOLD)
    places = [(name, place) for place, name in enumerate(TOLD) if name != "t"]
    again = [f"now.{name} = told_kept[{place}];" for name, place in places]
    held = TOLD.index("t")
    again += [f"now.t[{n}] = (told_kept[{held}] >> {n}) & 1;" for n in range(tests)]
    back = " ".join(again)
    return (
        f"inline tell_situation() {{ c_code {{ long long row[] = {{{row}}}; "
        "now.from = number_of(row); } }\n"
        f"inline tell_step() {{ c_code {{ long long row[] = {{{row}}}; int to = number_of(row); "
        'printf(">%d %d %d %d %d\\n", now.from, now.what, now.which, now.said, to); } }\n'
        f"inline keep_situation() {{ c_code {{ long long row[] = {{{row}}}; "
        "memcpy(told_kept, row, sizeof(told_kept)); } }\n"
        f"inline back_to_situation() {{ c_code {{ {back} }} }}"
    )


# ---------------------------------------------------------------- one day


def beside(day: str, brief: Brief, tried: Tried = USUAL, until: float | None = None) -> Beside:
    """One day walked by both, and what only one of them knows."""
    try:
        text, codes = model_of(brief, tried)
    except UnmodelledError as refused:
        return Beside(day, f"not modelled: {refused}")
    with tempfile.TemporaryDirectory(prefix="coach-spin-") as folder:
        made = checker_of(text, Path(folder))
        if made.program is None:
            return Beside(day, made.trouble)
        spin = spin_walk(made.program)
    return compared(day, session_walk(brief, codes, tried, until), spin, made.seconds)


def compared(day: str, session: Walked, spin: Walked, made_in: float) -> Beside:
    """The two lists of situations and the two lists of steps held against each other."""
    trouble = session.trouble or spin.trouble
    if trouble:
        return Beside(day, trouble, len(session.rows), len(spin.rows))
    held = Held(session, spin)
    return Beside(
        day=day,
        situations=len(session.rows),
        spin_situations=len(spin.rows),
        steps=len(session.steps),
        spin_steps=len(spin.steps),
        between=len(held.between),
        only_session=len(held.strange) + len(held.only_session),
        only_spin=len(held.unmet) + len(held.only_spin),
        first=tuple(held.first()),
        seconds=round(session.seconds, 1),
        spin_seconds=round(spin.seconds, 1),
        made_in_seconds=round(made_in, 1),
        mb=round(session.mb, 1),
        spin_mb=round(spin.mb, 1),
    )


class Held:
    """What only one of them knows.

    `strange` and `unmet` are situations that only the session, or only SPIN, knows; `only_session`
    and `only_spin` are steps. An answer that only SPIN tries lies inside a class of the session's:
    it must lead where the next lower answer of the session's leads (`between`).
    """

    def __init__(self, session: Walked, spin: Walked) -> None:
        """Numbers are SPIN's; situations that SPIN does not know get the numbers after them."""
        self.spin = spin
        numbers = {row: number for number, row in enumerate(spin.rows, 1)}
        met = {row for row in session.rows if row in numbers}
        self.strange = [row for row in dict.fromkeys(session.rows) if row not in numbers]
        self.unmet = [row for row in spin.rows if row not in met]
        self.rows = (*spin.rows, *self.strange)
        numbers |= {row: number for number, row in enumerate(self.strange, len(spin.rows) + 1)}
        place = [0, *(numbers[row] for row in session.rows)]
        ours = set()
        for one in session.steps:
            before, what, which, said, after = unpacked(one)
            ours.add(step(place[before], what, which, said, place[after]))
        tried = {one // PLACES for one in ours}
        self.only_session = sorted(ours - spin.steps)
        self.between = [one for one in spin.steps if one // PLACES not in tried]
        self.only_spin = [one for one in spin.steps if one not in ours and one // PLACES in tried]
        self.only_spin += out_of_class(self.between, ours)
        self.only_spin.sort()

    def first(self) -> Iterator[str]:
        """Some of each, in words of the model."""
        for row in sorted(self.strange)[:SHOWN]:
            yield f"only the session: {told(row)}"
        for row in sorted(self.unmet)[:SHOWN]:
            yield f"only SPIN: {told(row)}"
        for one in self.only_session[:SHOWN]:
            yield f"only the session: {self.told_step(one)}"
        for one in self.only_spin[:SHOWN]:
            yield f"only SPIN: {self.told_step(one)}"

    def told_step(self, one: int) -> str:
        """A step with both its situations."""
        before, what, which, said, after = unpacked(one)
        kind = next(name for name, number in WHAT.items() if number == what)
        return (
            f"{told(self.rows[before - 1])}; {kind} {said} to question {which}; "
            f"then {told(self.rows[after - 1])}"
        )


def out_of_class(between: list[int], ours: set[int]) -> Iterator[int]:
    """Steps by answers of SPIN's alone that do not lead where the next lower answer leads."""
    by_prompt: dict[int, list[tuple[int, int]]] = {}
    for one in ours:
        before, what, which, said, after = unpacked(one)
        if what == VALUE:
            by_prompt.setdefault(key_of(before, what, which, 0), []).append((said, after))
    for answers in by_prompt.values():
        answers.sort()
    for one in between:
        before, what, which, said, after = unpacked(one)
        lower = [a for s, a in by_prompt.get(key_of(before, what, which, 0), ()) if s < said]
        if what != VALUE or not lower or lower[-1] != after:
            yield one


def told(one: Situation) -> str:
    """A situation by its numbers that are not 0."""
    return " ".join(f"{name} {value}" for name, value in zip(TOLD, one, strict=True) if value)


# ---------------------------------------------------------------- SPIN


def checker_of(text: str, folder: Path) -> Made:
    """SPIN's checker of a model, made in `folder`; nothing of the model is thrown away as unread."""
    began = time.monotonic()
    laid(text, folder)
    steps = (
        ["spin", "-a", "-o1", "-o2", "-o3", "day.pml"],
        [compiler() or "cc", "-O1", "-w", *ONE_BY_ONE, f"-DMEMLIM={MOST_MB}", "-o", "pan", "pan.c"],
    )
    for words in steps:
        code, out = run(words, folder)
        if code != 0:
            return Made(None, 0.0, f"{words[0]} ended with {code}: {last_line(out)}")
    return Made(folder / "pan", time.monotonic() - began)


def spin_walk(program: Path) -> Walked:
    """All situations that SPIN's checker tells; its own troubles are said."""
    began = time.monotonic()
    code, out = run([str(program), f"-m{DEEPEST}", "-w22"], program.parent)
    rows, steps, said = [], set(), []
    for line in out.splitlines():
        if line[:1] == "@":
            rows.append(tuple(int(number) for number in line[1:].split()))
        elif line[:1] == ">":
            before, what, which, given, after = (int(number) for number in line[1:].split())
            steps.add(step(before, what, which, given, after))
        else:
            said.append(line)
    words = "\n".join(said)
    trouble = "" if code == 0 and whole(words) else f"SPIN was cut short: {last_line(words)}"
    mb = number_before(r"total actual memory usage", words)
    return Walked(tuple(rows), frozenset(steps), time.monotonic() - began, mb, trouble)


def whole(said: str) -> bool:
    """Whether SPIN looked at everything and met no dead end of the model."""
    return "errors: 0" in said and not re.search(
        r"max search depth too small|out of memory|not completed|truncated|aborting", said
    )


def number_before(words: str, said: str) -> float:
    """The number that stands before these words; 0 where there is none."""
    found = re.search(rf"([\d.e+]+)\s+{words}", said)
    return float(found.group(1)) if found else 0.0


def last_line(said: str) -> str:
    """What a program said last."""
    return (said.strip().splitlines() or ["nothing was said"])[-1][:200]


def run(words: list[str], folder: Path) -> tuple[int, str]:
    """A program's exit code and what it said; ended by its own number when its time or ours is over."""
    with (folder / "said.txt").open("w+", encoding="utf-8") as said, told_of_the_end():
        # Fixed names and our own files: no word of a plan or of anybody's stands on this line.
        program = subprocess.Popen(  # noqa: S603
            words, cwd=folder, stdout=said, stderr=subprocess.STDOUT, stdin=subprocess.DEVNULL
        )
        try:
            code = program.wait(ONE_RUN_S)
        except subprocess.TimeoutExpired:
            code = -1
        finally:
            if program.poll() is None:
                program.kill()
                program.wait()
        said.seek(0)
        return code, said.read()


@contextlib.contextmanager
def told_of_the_end() -> Iterator[None]:
    """A worker that is ended from outside still ends what it started."""

    def end(_number: int, _frame: object) -> None:
        raise SystemExit(TERMINATED)

    before = signal.signal(signal.SIGTERM, end)
    try:
        yield
    finally:
        signal.signal(signal.SIGTERM, before)


# ---------------------------------------------------------------- words


class Figures(NamedTuple):
    """What one explorer met on all days looked at: seconds together, MB at most."""

    situations: int
    steps: int
    seconds: float
    mb: float

    def words(self) -> str:
        """The figures in words."""
        return f"{self.situations} situations, {self.steps} steps, {self.seconds} s, {self.mb} MB"


def figures(look: Look) -> tuple[Figures, Figures]:
    """The session's and SPIN's on the same days."""
    days = [one for one in look.days if not one.trouble]
    return (
        Figures(
            sum(one.situations for one in days),
            sum(one.steps for one in days),
            round(sum(one.seconds for one in days), 1),
            max((one.mb for one in days), default=0.0),
        ),
        Figures(
            sum(one.spin_situations for one in days),
            sum(one.spin_steps for one in days),
            round(sum(one.spin_seconds for one in days), 1),
            max((one.spin_mb for one in days), default=0.0),
        ),
    )


def as_value(look: Look) -> dict[str, object]:
    """The look for a program."""
    days = [{**one._asdict(), "same": one.same} for one in look.days]
    session, spin = figures(look)
    return {
        "skipped": look.skipped,
        "same": None if look.skipped else look.same,
        "session_together": session._asdict(),
        "spin_together": spin._asdict(),
        "days": days,
        "not_looked_at": look.left,
        "compared": COVERS,
        "not_compared": LEAVES_OUT,
    }


def as_lines(look: Look, searched: str) -> list[str]:
    """What both found, side by side, for a reader; `searched` are the figures of the whole search."""
    if look.skipped:
        return [f"  SPIN beside the session: not asked, {look.skipped}"]
    verdict = (
        "the same situations and steps on each of them" if look.same else "NOT shown to be the same"
    )
    every = len(look.days) + len(look.left)
    lines = [f"  SPIN beside the session, {len(look.days)} of {every} days: {verdict}"]
    for one in look.days:
        lines += lines_of_a_day(one)
    compared_days = sum(not one.trouble for one in look.days)
    session, spin = figures(look)
    lines += [f"  not looked at, no time (--spin-whole looks at all): {day}" for day in look.left]
    return [
        *lines,
        "  figures of this run, situations and steps added up, MB at most:",
        f"      search, all its days     {searched}",
        f"      session, these {compared_days} days   {session.words()}",
        f"      SPIN, the same {compared_days} days   {spin.words()}",
        f"  compared: {COVERS}",
        f"  not compared: {LEAVES_OUT}",
    ]


def lines_of_a_day(one: Beside) -> list[str]:
    """One day's figures, the session's above SPIN's."""
    if one.trouble:
        return [f"  {one.day}: not compared, {one.trouble}"]
    lines = [
        f"  {one.day}:",
        (
            f"      session {one.situations} situations, {one.steps} steps, "
            f"{one.seconds} s, {one.mb} MB"
        ),
        (
            f"      SPIN    {one.spin_situations} situations, {one.spin_steps} steps "
            f"({one.between} by answers between), {one.spin_seconds} s "
            f"(made in {one.made_in_seconds} s), {one.spin_mb} MB"
        ),
    ]
    if one.only_session or one.only_spin:
        lines.append(f"      {one.only_session} only the session's, {one.only_spin} only SPIN's")
    return [*lines, *(f"      {words}" for words in one.first)]
