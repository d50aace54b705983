"""`make bench`: how fast and how large Coach is, as ratios measured in one run on this machine.

Law: figures are printed and never tested, for a machine may be busy. A figure over its aim is
marked. Bytecode is cached, as after an install; a first start ever is slower.
"""

import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import NamedTuple

sys.path.insert(0, str(Path(__file__).resolve().parent.parent.parent))

from coach.model.decisions import Refusal
from coach.model.heard import Kind, Question
from coach.model.turns import TimerEnded, Typed
from coach.session import engine
from tests.bench.diaries import answers_in, fill, plan_in_force, with_plan
from tests.bench.timing import (
    PROMPT_DRAWN,
    Program,
    calm_environment,
    compared,
    on_a_terminal,
    whole_run,
)
from tests.session.invented import brief

ROUNDS = 15
YEARS_10 = 3_650
COACH = str(Path(sys.executable).parent / "coach")
PLAN = Path(__file__).resolve().parents[2] / "dialogs/steady-shoulder/plans/m-k.yaml"
BARE_PROMPT = "from prompt_toolkit import prompt; prompt('Pain now, 0 to 10: ')"


class Figure(NamedTuple):
    """One result: what was measured, the figure with its unit, and what is aimed at."""

    what: str
    shown: str
    aim: str
    reached: bool


class Place(NamedTuple):
    """The throwaway homes of this run: a plan and no session yet; a plan and ten years."""

    new: Path
    old: Path


def ratio(what: str, ours_s: float, floor_s: float, aim: float) -> Figure:
    """Two medians as one ratio."""
    shown = f"{ours_s / floor_s:.2f}x  ({ours_s * 1000:.0f} ms to {floor_s * 1000:.0f} ms)"
    return Figure(what, shown, f"at most {aim}x", ours_s / floor_s <= aim)


def first_line(place: Place) -> Figure:
    """From start to the first byte on screen, to an interpreter that does nothing."""
    ours = Program([COACH], calm_environment(place.new))
    nothing = Program([sys.executable, "-c", "pass"], ours.environment)
    times = compared(lambda: on_a_terminal(ours, b""), lambda: whole_run(nothing), ROUNDS)
    return ratio("first line / python -c pass", *times, 3.0)


def first_prompt(place: Place) -> Figure:
    """From start to the first prompt, to a program that opens one bare prompt."""
    ours = Program([COACH], calm_environment(place.new))
    bare = Program([sys.executable, "-c", BARE_PROMPT], ours.environment)
    times = compared(
        lambda: on_a_terminal(ours, PROMPT_DRAWN), lambda: on_a_terminal(bare, PROMPT_DRAWN), ROUNDS
    )
    return ratio("first prompt / a bare prompt", *times, 2.0)


def ten_years(place: Place) -> Figure:
    """Opening to the first prompt with 3,650 sessions in the diary, to opening an empty one."""
    environments = calm_environment(place.old), calm_environment(place.new)
    old, new = (Program([COACH], environment) for environment in environments)
    times = compared(
        lambda: on_a_terminal(old, PROMPT_DRAWN), lambda: on_a_terminal(new, PROMPT_DRAWN), ROUNDS
    )
    return ratio("first prompt with 3,650 sessions / with none", *times, 1.3)


def twelve_weeks(place: Place) -> Figure:
    """A forecast of 12 weeks from start to end, with its start of Python told beside it."""
    command = [COACH, "forecast", str(PLAN), "--weeks", "12"]
    ours = Program(command, calm_environment(place.new))
    nothing = Program([sys.executable, "-c", "pass"], ours.environment)
    ours_s, floor_s = compared(lambda: whole_run(ours), lambda: whole_run(nothing), ROUNDS)
    shown = f"{ours_s:.2f} s  ({ours_s / floor_s:.0f}x python -c pass)"
    return Figure("forecast of 12 weeks", shown, "under 1 s", ours_s < 1)


def peak(place: Place) -> Figure:
    """Peak memory at the first prompt, ten years in the diary."""
    ours = Program([COACH], calm_environment(place.old))
    peak_mb = max(on_a_terminal(ours, PROMPT_DRAWN).peak_mb for _ in range(3))
    return Figure(
        "peak memory at the first prompt", f"{peak_mb:.0f} MB", "under 90 MB", peak_mb < 90
    )


def one_answer(_place: Place) -> Figure:
    """`advance` and the `turn` after it, over a whole quiet session of an invented athlete."""
    times = sorted(seconds for _ in range(5) for seconds in answer_times())
    middle_ms = statistics.median(times) * 1000
    shown = f"{middle_ms:.3f} ms  (slowest {times[-1] * 1000:.1f} ms, {len(times) // 5} answers)"
    return Figure("advance and turn, median", shown, "at most 1 ms", middle_ms <= 1.0)


def answer_times() -> Iterator[float]:
    """Seconds of each step of one session, typed in words as at the terminal."""
    state = engine.start(brief())
    for at_s in range(0, 400 * 20, 20):
        shown = engine.turn(state)
        if shown.end:
            return
        asked = engine.ask_of(state)
        text = typed_for(asked.question) if asked else ""
        event = TimerEnded(at_s) if shown.timer is not None else Typed(text, at_s)
        started = time.perf_counter()
        after = engine.advance(state, event)
        assert not isinstance(after, Refusal)
        engine.turn(after)
        yield time.perf_counter() - started
        state = after
    raise AssertionError("the quiet session did not end")


def typed_for(question: Question) -> str:
    """A dull answer in words."""
    if question.kind is Kind.LINE:
        return "pain 1, morning 1, worst 1, slept 8, no throws, no game"
    if question.kind in {Kind.YES_NO, Kind.SAFETY_YES_NO}:
        mine = {"plan is mine", "guardian here", "nothing here", "stand-in weight"}
        return "yes" if question.fact in mine else "no"
    if question.kind in {Kind.NONE_OR_LIST, Kind.THROWING, Kind.OWN_WORDS}:
        return "none"
    if question.kind is Kind.CHOICES:
        return "all"
    if question.choices:
        return question.choices[0]
    return (
        "10" if question.kind is Kind.COUNT else "8" if question.kind is Kind.SLEEP_HOURS else "1"
    )


def syncs_an_answer(place: Place) -> Figure:
    """Calls that force the disk, for each answer of a session without a terminal."""
    few, many = (synced(place, "yes\n" + "1\n" * more) for more in (0, 3))
    each = (many[0] - few[0]) / (many[1] - few[1])
    return Figure("disk syncs an answer", f"{each:.2f}", "1", each == 1.0)


def synced(place: Place, typed: str) -> tuple[int, int]:
    """Disk syncs of one plain session with these lines typed, and answers it kept."""
    with tempfile.TemporaryDirectory() as scratch:
        home, counts = Path(scratch) / "home", Path(scratch) / "counts"
        shutil.copytree(place.new, home)
        before = answers_in(home / "data" / "coach")
        traced = ["strace", "-f", "-qq", "-e", "trace=fsync,fdatasync", "-o", str(counts)]
        subprocess.run(
            [*traced, COACH, "--plain"],
            input=typed,
            env=calm_environment(home),
            capture_output=True,
            text=True,
            check=False,
        )
        calls = [line for line in counts.read_text().splitlines() if "sync(" in line]
        return len(calls), answers_in(home / "data" / "coach") - before


def measures() -> list[Callable[[Place], Figure]]:
    """All that can be measured on this machine."""
    counted = [syncs_an_answer] if shutil.which("strace") else []
    return [first_line, first_prompt, ten_years, one_answer, twelve_weeks, *counted, peak]


def main() -> int:
    """Measure and print; 0 when all could be measured."""
    print(
        f"Python {sys.version.split()[0]}, bytecode cached, medians of {ROUNDS}. Trust the ratios."
    )
    with tempfile.TemporaryDirectory() as scratch:
        place = Place(Path(scratch) / "new", Path(scratch) / "old")
        plan = plan_in_force(Path(scratch))
        with_plan(place.new, plan)
        fill(with_plan(place.old, plan), YEARS_10)
        for measure in measures():
            figure = measure(place)
            mark = "" if figure.reached else "  over the aim"
            print(f"{figure.what + ':':<46} {figure.shown:<34} aim {figure.aim}{mark}", flush=True)
    return 0


if __name__ == "__main__":
    sys.exit(main())
