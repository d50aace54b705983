"""`make bench`: how fast `coach check` is beside the least a strict check does, and what it refuses.

Law: as in `run.py`, figures are printed and never tested. The programs are the sample grown by copies
of one of its exercises, with their dose lines and a question and branch for each.
"""

from __future__ import annotations

import shutil
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from typing import TYPE_CHECKING, Final

if TYPE_CHECKING:
    from collections.abc import Callable

sys.path.insert(0, str(Path(__file__).resolve().parent.parent.parent))

from coach.texts.doors import check_paths
from tests.bench import plain_check
from tests.bench.hostile import hostile_files
from tests.bench.timing import Program, calm_environment

SAMPLE: Final = Path(__file__).resolve().parent.parent.parent / "dialogs" / "steady-shoulder"
COACH: Final = str(Path(sys.executable).parent / "coach")
ROUNDS: Final = 31
MOST_OVER_FLOOR: Final = 1.5
MOST_MORE_A_LINE: Final = 1.1
MOST_S: Final = 0.2
MOST_MB: Final = 50.0
COPIED: Final = "band diagonal lift"
# A process is charged with the room of the one that starts it, so a small one starts it here.
ALONE: Final = """\
import os, sys
child = os.posix_spawn(sys.argv[1], sys.argv[1:], os.environ,
                       file_actions=[(os.POSIX_SPAWN_OPEN, 1, os.devnull, os.O_WRONLY, 0)])
used = os.wait4(child, 0)[2]
print(used.ru_utime + used.ru_stime, used.ru_maxrss)
"""
QUESTION: Final = """\
  - ask also: after {name}
    words: How does that one feel now?
    answers: fine, odd, sore
  - when after {name} is sore:
      - note: It felt sore at the end.
"""


def grown(folder: Path, lines: int) -> int:
    """The sample grown to about so many lines, with one plan, in `folder`; how many there are."""
    shutil.copytree(SAMPLE, folder, ignore=shutil.ignore_patterns("courses", "argued.txt"))
    plan, program, script = (
        folder / name for name in ("plans/m-k.yaml", "program.yaml", "scripts/close.yaml")
    )
    for other in (folder / "plans").glob("*.yaml"):
        if other != plan:
            other.unlink()
    exercise = (folder / "exercises" / "band-diagonal-lift.yaml").read_text()
    dose = plan.read_text().split(f"  {COPIED}:\n")[1].split("  split squat:")[0]
    names: list[str] = []
    each = sum(text.count("\n") for text in (exercise, dose, QUESTION)) + 1
    while lines_in(folder) + 2 + len(names) * (each - exercise.count("\n")) < lines:
        names.append(f"lift {letters(len(names))}")
        file = folder / "exercises" / f"{names[-1].replace(' ', '-')}.yaml"
        file.write_text(exercise.replace(f"exercise: {COPIED}", f"exercise: {names[-1]}"))
    insert(plan, f"  {COPIED}:\n", "".join(f"  {name}:\n{dose}" for name in names))
    insert(script, "  - tell: Tomorrow", "".join(QUESTION.format(name=name) for name in names))
    insert(program, "\n  - phase: prepare", "".join(f", {name}" for name in names))
    return lines_in(folder)


def letters(number: int) -> str:
    """A number as four letters, for a name holds no count of its own."""
    return "".join("abcdefghij"[int(figure)] for figure in f"{number:04d}")


def insert(file: Path, before: str, text: str) -> None:
    """Write the text into the file, before the first place of some words."""
    whole = file.read_text()
    place = whole.index(before)
    file.write_text(whole[:place] + text + whole[place:])


def lines_in(folder: Path) -> int:
    """Lines of all texts in a folder."""
    return sum(file.read_text().count("\n") for file in folder.rglob("*.yaml"))


def compared(folder: Path, rounds: int) -> tuple[float, float]:
    """Median processor seconds of our check and of the floor, in turn."""
    assert check_paths([folder]) == [], "the grown program must be well"
    plain_check.check(folder)
    pairs = [
        (seconds(lambda: check_paths([folder])), seconds(lambda: plain_check.check(folder)))
        for _ in range(rounds)
    ]
    return statistics.median(p[0] for p in pairs), statistics.median(p[1] for p in pairs)


def seconds(work: Callable[[], object]) -> float:
    """Processor seconds of one piece of work; other programs do not count."""
    started = time.process_time()
    work()
    return time.process_time() - started


def speed(scratch: Path) -> None:
    """Our check to the floor, and whether a line costs the same in a long program."""
    a_line: list[float] = []
    for lines, rounds in ((2_000, ROUNDS), (20_000, 5)):
        folder = scratch / f"program-{lines}"
        have = grown(folder, lines)
        ours, floor = compared(folder, rounds)
        a_line.append(ours / have)
        shown = f"{ours / floor:.2f}x  ({ours * 1000:.0f} ms to {floor * 1000:.0f} ms)"
        told(
            f"check of {have} lines / load and validate",
            shown,
            f"at most {MOST_OVER_FLOOR}x",
            ours / floor <= MOST_OVER_FLOOR,
        )
    more = a_line[1] / a_line[0]
    told(
        "a line of 20,000 / a line of 2,000",
        f"{more:.2f}x",
        f"at most {MOST_MORE_A_LINE}x",
        more <= MOST_MORE_A_LINE,
    )


def refusals(scratch: Path) -> None:
    """What the whole command takes to refuse a hostile file, over an interpreter that does nothing."""
    environment = calm_environment(scratch)
    floor_s, floor_mb = cost(Program([sys.executable, "-c", "pass"], environment))
    for file, check in hostile_files(scratch / "hostile").items():
        own_s, own_mb = cost(Program([COACH, "check", str(file)], environment))
        over_s, over_mb = own_s - floor_s, own_mb - floor_mb
        shown = f"{over_s:.2f} s, {over_mb:.0f} MB more ({check})"
        aim = f"at most {MOST_S:g} s, {MOST_MB:g} MB"
        told(f"refusing {file.stem}", shown, aim, over_s <= MOST_S and over_mb <= MOST_MB)


def cost(program: Program) -> tuple[float, float]:
    """Median processor seconds and peak MB of five runs; other programs do not count."""
    command = [sys.executable, "-c", ALONE, *program.command]
    runs = [
        subprocess.run(
            command, env=program.environment, capture_output=True, text=True, check=True
        ).stdout.split()
        for _ in range(5)
    ]
    return statistics.median(float(one[0]) for one in runs), int(runs[0][1]) / 1024


def told(what: str, shown: str, aim: str, reached: bool) -> None:
    """One line of the report."""
    mark = "" if reached else "  over the aim"
    print(f"{what + ':':<46} {shown:<34} aim {aim}{mark}", flush=True)


def main() -> int:
    """Measure and print; 0 when all could be measured."""
    with tempfile.TemporaryDirectory() as name:
        speed(Path(name))
        refusals(Path(name))
    return 0


if __name__ == "__main__":
    sys.exit(main())
