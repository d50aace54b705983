"""`coach prove`: show that no conversation of a program and its plan breaks a promise.

Law: it says what it searched, what it took as given, and what it did not reach; a search that was
cut short shows nothing. A break is told as the shortest conversation that was found.
"""

from __future__ import annotations

import contextlib
import json
import sys
import time
from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path
from typing import Any, NamedTuple

from coach.drivers.exit_codes import BAD_FILE, DONE, FINDINGS, INTERRUPTED
from coach.drivers.promises import PROMISES
from coach.drivers.prove_all import Whole
from coach.drivers.prove_answers import FLAG_AT, Compared
from coach.drivers.prove_days import openings
from coach.drivers.prove_ladders import Climbed, climbed
from coach.drivers.prove_parts import Part, part_of
from coach.drivers.prove_search import Break
from coach.drivers.prove_spin import Look, as_lines, as_value, look_beside
from coach.drivers.prove_throwing import Thrown, thrown_across_days
from coach.drivers.workers import TimeIsOver, cores, done
from coach.model.program import Bound, Step
from coach.rules import dapre, dosing
from coach.rules.cut_points import cut_points, pitch_cuts
from coach.session.brief import Brief
from coach.texts.doors import bound_from
from coach.texts.rendered import as_text

# What the search does not show but builds on; said in each report.
GIVEN = (
    "corrections, gear and breaks act alike at all prompts of one kind; inside an exercise they are "
    "tried on one day for each list that a day allows; sets told of a break lead where the sets "
    "themselves lead; one warning sign stands for all; on the days themselves no step up is due: "
    "ladders go from day to day each by itself, and so do the throwing steps, a throwing day being "
    "among the last 60 starts"
)
HALVES = 2
NOT_CLIMBED, NOT_THROWN = Climbed(0, 0, 0, ()), Thrown(0, 0, 0, (), whole=False)
EVERY_S = 5.0  # seconds between two lines of progress
LAST_WORDS_S = 30.0  # what a search that was cut short may still take to say what it met


class Options(NamedTuple):
    """What was asked for on the command line.

    `promise` '' means all; `shard` (i, n) takes every n-th opening, i from 1; `seconds` 0 = no limit.
    `walk` turns are walked at random by `seed` instead of a search (0: none); `out` is the folder
    in which each break is kept as a scenario. `spin` asks another checker besides, `spin_whole` on
    every day however long; `junit` is where the promises are written for a build server.
    """

    path: Path
    as_json: bool = False
    promise: str = ""
    shard: tuple[int, int] = (1, 1)
    seconds: float = 0.0
    walk: int = 0
    seed: int = 1
    out: Path | None = None
    spin: bool = False
    spin_whole: bool = False
    junit: Path | None = None


class Unreached(NamedTuple):
    """A step of a script that no conversation reached."""

    file: str
    line: int
    what: str


class Report(NamedTuple):
    """What the search showed."""

    promises: dict[str, str]
    broken: tuple[Break, ...]
    situations: int
    places: int
    turns: int
    answers: int
    unreached: tuple[Unreached, ...]
    unread: tuple[str, ...]
    most_questions: int
    longest: int
    openings: tuple[str, ...]
    not_finished: tuple[str, ...]
    seconds: float
    mb: float
    program: str
    finished: bool
    ladders: dict[str, int]
    throwing: dict[str, int]


def prove_command(options: Options) -> int:
    """Prove one plan (or the plans of a program's folder); 0 only where every promise holds."""
    code, reports = DONE, dict[Path, Report]()
    for plan in plans_of(options.path):
        bound, findings = bound_from(plan)
        if bound is None:
            sys.stderr.write(as_text(findings))
            return BAD_FILE
        if options.walk:
            from coach.drivers.prove_walk_told import walk_one

            code = max(code, walk_one(bound, plan, options))
            continue
        report = prove(bound, options, progress_to(sys.stderr.write))
        if report.broken:
            from coach.drivers.prove_told import in_words

            report = in_words(report, openings(bound), bound, plan, options.out)
        if options.junit is not None:
            from coach.drivers.prove_told import write_results

            reports[plan] = report
            write_results(reports, options.junit)
        look = None
        if (options.spin or options.spin_whole) and report.finished:
            whole = options.spin_whole
            look = look_beside(bound, options.seconds, sys.stderr.write, whole=whole)
        words = as_json(report, look) if options.as_json else as_words(report, plan.name, look)
        sys.stdout.write(words)
        if not report.finished or (look is not None and look.cut_short):
            return INTERRUPTED
        fine = holds(report, options.promise) and (look is None or look.skipped or look.same)
        code = max(code, DONE if fine else FINDINGS)
    return code


def plans_of(path: Path) -> list[Path]:
    """The plan itself, or all plans of a program's folder."""
    return sorted((path / "plans").glob("*.yaml")) if path.is_dir() else [path]


def holds(report: Report, promise: str) -> bool:
    """Whether the promise (or all of them) holds."""
    asked = [promise] if promise else list(report.promises)
    return all(report.promises[name] == "holds" for name in asked)


def progress_to(write: Callable[[str], object]) -> Callable[[Whole], None]:
    """A line now and then on how far the search of some kinds of day is."""
    last = [time.monotonic()]

    def say(whole: Whole) -> None:
        if time.monotonic() - last[0] < EVERY_S:
            return
        last[0] = time.monotonic()
        write(
            f"{whole.openings.names[0]} and {len(whole.openings.names) - 1} more: "
            f"{len(whole.places)} places, {whole.calls} answers, {len(whole.todo)} places to go\n"
        )

    return say


def prove(bound: Bound, options: Options, progress: Callable[[Whole], None]) -> Report:
    """Search the kinds of day in two halves; an interruption gives what is known so far.

    Two, whatever the machine, so that the figures are the same on every one: the days of a half
    share the steps that they have in common.
    """
    began = time.monotonic()
    first, every = options.shard
    every_day = openings(bound)
    days = every_day[first - 1 :: every]
    until = began + options.seconds if options.seconds else None
    middle = -(-len(days) // HALVES)
    halves = [half for half in (days[:middle], days[middle:]) if half]
    first_day = every_day[0][1]
    pieces: list[Callable[[], Part | Climbed | Thrown]] = [
        *(partial(part_of, half, until, progress) for half in halves),
        partial(climbed, first_day),
        partial(thrown_across_days, bound, first_day.opened_at, until),
    ]
    found: list[tuple[int, Part | Climbed | Thrown]] = []
    with contextlib.suppress(KeyboardInterrupt, TimeIsOver):
        late = until + LAST_WORDS_S if until is not None else None
        workers = min(HALVES, cores())
        for one in done(lambda n: pieces[n](), len(pieces), workers, late, LAST_WORDS_S):
            found.append(one)  # noqa: PERF402  what is there stays when a look is cut short
    results = [result for _number, result in sorted(found, key=lambda one: one[0])]
    parts = [one for one in results if isinstance(one, Part)]
    climb = next((one for one in results if isinstance(one, Climbed)), NOT_CLIMBED)
    throws = next((one for one in results if isinstance(one, Thrown)), NOT_THROWN)
    seconds = time.monotonic() - began
    return report_of(bound, days, parts, (climb, throws), whole=every == 1, seconds=seconds)


def report_of(
    bound: Bound,
    days: list[tuple[str, Brief]],
    parts: list[Part],
    across: tuple[Climbed, Thrown],
    *,
    whole: bool,
    seconds: float,
) -> Report:
    """The figures of a search; what was cut short on one kind of day is shown for none.

    P9 is read off the whole search only: what one shard does not reach another one may.
    """
    climb, throws = across
    searched = {name for part in parts if part.finished for name in part.names}
    finished = all(name in searched for name, _brief in days) and throws.whole
    finished = finished and climb is not NOT_CLIMBED
    compared = {one for part in parts for one in part.compared}
    undeclared, unread = numbers_seen(bound, [brief for _name, brief in days], compared)
    asked = {fact for part in parts for fact in part.asked}
    events = {one for part in parts for one in part.events}
    unreached = steps_unreached(bound, asked | not_given(days) | not_used(bound), events)
    broken = [one for part in parts for one in part.broken]
    broken = list({(one.promise, one.words): one for one in reversed(broken)}.values())
    broken += [*climb.broken, *throws.broken]
    broken += [Break("P15", words, ()) for words in undeclared]
    if finished and whole:
        broken += [Break("P9", f"{u.what} (line {u.line}) is never reached", ()) for u in unreached]
    bad = {one.promise for one in broken}
    shown = set(PROMISES) - (set() if whole else {"P9"}) if finished else set()
    return Report(
        promises={
            name: "broken" if name in bad else "holds" if name in shown else "not shown"
            for name in PROMISES
        },
        broken=tuple(broken),
        situations=sum(part.situations for part in parts),
        places=sum(part.places for part in parts),
        turns=sum(part.turns for part in parts),
        answers=sum(part.answers for part in parts),
        unreached=unreached,
        unread=unread,
        most_questions=max((part.most_questions for part in parts), default=0),
        longest=max((part.longest for part in parts), default=0),
        openings=tuple(name for part in parts for name in part.names),
        not_finished=tuple(name for name, _brief in days if name not in searched),
        seconds=round(seconds, 1),
        mb=round(sum(part.mb for part in parts), 1),
        program=bound.digest,
        finished=finished,
        ladders={"ladders": climb.ladders, "memories": climb.memories, "days": climb.steps},
        throwing={"memories": throws.memories, "days": throws.days, "answers": throws.answers},
    )


# ---------------------------------------------------------------- numbers and steps


def numbers_seen(
    bound: Bound, briefs: Sequence[Brief], seen: set[Compared]
) -> tuple[list[str], tuple[str, ...]]:
    """P15: comparisons that nobody declared; and declared ones that no answer met."""
    declared = declared_cuts(bound, briefs)
    strange = sorted(seen - declared, key=str)
    idle = sorted(declared - seen, key=str)
    return [cut_words(c) for c in strange], tuple(cut_words(c) for c in idle)


def cut_words(cut: Compared) -> str:
    """A comparison in words."""
    return f"{cut.fact} is cut at {cut.number:g} ({cut.side} acts)"


def declared_cuts(bound: Bound, briefs: Sequence[Brief]) -> set[Compared]:
    """What the rules declare, what scripts write, and what a dose itself compares."""
    declared: set[Compared] = set()
    for brief in briefs:
        pitches = pitch_cuts(bound.plan, brief.age)
        for cut in cut_points(bound.plan, brief.usual_morning) | pitches:
            side = "over" if cut.side == "over" else "at"
            declared.add(Compared(ASKED_AS.get(cut.fact, cut.fact), side, float(cut.number)))
        last = brief.last
        if last is not None and last.pain_now is not None:
            declared.add(Compared("pain now", "at", last.pain_now + 2))
        for test in brief.tests:
            declared |= of_a_test(test.fact, test.op, test.values)
    for line in bound.plan.doses:
        for fact in ("reps in set", "holds in set"):
            ends = {line.reps.opening, line.reps.opening_high + 2, line.reps.cap + 2}
            declared |= {Compared(fact, "at", float(n)) for n in ends | dapre.compared(line)}
        declared |= {Compared("sets since", "at", float(n)) for n in range(1, line.sets.cap + 1)}
    declared.add(Compared("pain after", "at", FLAG_AT))
    pains = [
        c for c in declared if c.fact in {"pain before change", "pain now", "pain in throwing"}
    ]
    return declared | {c._replace(fact="pain after a break") for c in pains}


ASKED_AS = {"pain before a changed set": "pain before change"}


def of_a_test(fact: str, op: str, values: tuple[str | float, ...]) -> set[Compared]:
    """The cuts of one `when` of a script."""
    sides = {"at least": "at", "below": "at", "at most": "over"}
    found: set[Compared] = set()
    for place, value in enumerate(values):
        if isinstance(value, str):
            continue
        both = (
            ("over", "at")
            if op in {"is", "is not"}
            else (sides.get(op, "at over".split()[place % 2]),)
        )
        found |= {Compared(fact, side, float(value)) for side in both}
    return found


def not_given(days: list[tuple[str, Brief]]) -> set[str]:
    """What is asked only where a step up is due; the days of a search are taken without one.

    It counts as beyond the search, not as unreachable; `coach replay --reach` says what reaches it.
    """
    return set() if any(brief.wants_up for _name, brief in days) else {"throwing tomorrow"}


def not_used(bound: Bound) -> set[str]:
    """What is asked only where a plan gives versions to pick from, or lets a thing stand in."""
    made = {exercise.name: exercise for exercise in bound.program.exercises}
    doses = [(made[line.exercise], line) for line in bound.plan.doses]
    unused = set()
    if not any(len(dosing.versions_to_pick(one, line)) > 1 for one, line in doses):
        unused.add("which version")
    if not any(by == "stand-in" for _one, line in doses for _gear, by in line.without):
        unused.add("stand-in weight")
    return unused


def steps_unreached(bound: Bound, asked: set[str], events: set[Any]) -> tuple[Unreached, ...]:
    """Steps of scripts that no conversation reached; throwing only where the plan clears it."""
    missing = []
    for script in bound.program.scripts:
        if script.moment == "throwing" and bound.plan.throwing_line is None:
            continue
        for step in script.steps:
            if not reached(step, asked, events):
                what = step.fact or step.effect or step.text
                place = step.place
                missing.append(Unreached(place.file, place.line, f"{step.kind} {what}".strip()))
    return tuple(missing)


def reached(step: Step, asked: set[str], events: set[Any]) -> bool:
    """Whether one step was seen."""
    if step.kind in {"ask", "ask also"}:
        return step.fact in asked
    marks = {
        "tell": ("tell", step.text),
        "note": ("note", step.text),
        "effect": ("effect", f"{step.effect} {step.target}"),
        "stop": ("stop", "P01"),
    }
    return marks.get(step.kind) in events


# ---------------------------------------------------------------- words


def as_json(report: Report, look: Look | None = None) -> str:
    """The report as one JSON object."""
    shown = {**report._asdict(), "given": GIVEN}
    if look is not None:
        shown["spin"] = as_value(look)
    shown["broken"] = [one._asdict() for one in report.broken]
    shown["unreached"] = [one._asdict() for one in report.unreached]
    return json.dumps(shown, ensure_ascii=False, indent=1) + "\n"


def as_words(report: Report, name: str, look: Look | None = None) -> str:
    """The report for a reader."""
    finished = [name for name in report.openings if name not in report.not_finished]
    lines = [f"{name}: {sentence(report)}"]
    lines += [f"  {promise} {told}" for promise, told in report.promises.items()]
    lines += [
        (
            f"  {report.situations} situations at {report.places} places, {report.turns} turns, "
            f"{report.answers} answers tried, {report.seconds} s, {report.mb} MB"
        ),
        (
            f"  {report.ladders['ladders']} ladders by themselves: {report.ladders['memories']} "
            f"memories between days, {report.ladders['days']} days told"
        ),
        (
            f"  throwing steps by themselves: {report.throwing['memories']} memories between days, "
            f"{report.throwing['days']} days told, {report.throwing['answers']} answers"
        ),
        (
            f"  at most {report.most_questions} questions before the first set, "
            f"longest session {report.longest} answers"
        ),
        f"  program {report.program}",
        f"  kinds of day searched to the end: {len(finished)} of {len(finished) + len(report.not_finished)}",
        *(f"  not searched to the end: {name}" for name in report.not_finished),
        f"  taken as given: {GIVEN}",
    ]
    for one in report.broken:
        lines.append(f"  {one.promise}: {one.words}" + (f" ({one.day})" if one.day else ""))
        lines += [f"      {prompt}: {typed}" for prompt, typed in one.talk]
    lines += [f"  not reached: {u.file}, line {u.line}: {u.what}" for u in report.unreached]
    lines += [f"  declared, and met by no answer: {words}" for words in report.unread]
    searched = f"{report.situations} situations, {report.answers} answers, "
    searched += f"{report.seconds} s, {report.mb} MB"
    lines += as_lines(look, searched) if look is not None else []
    return "\n".join(lines) + "\n"


def sentence(report: Report) -> str:
    """What was shown, in one sentence."""
    if not report.finished:
        return "the search was cut short; nothing is shown by it."
    broken = sorted(name for name, told in report.promises.items() if told == "broken")
    if not broken:
        return f"no conversation on {len(report.openings)} kinds of day breaks a promise."
    return f"{', '.join(broken)} can be broken."
