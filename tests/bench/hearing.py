"""How well and how fast the ear hears: scores of every set, time an answer, time to import.

usage: python tests/bench/hearing.py
Prints only; nothing here passes or fails. Times hang on the machine: read the ratios.
"""

from __future__ import annotations

import statistics
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from coach.hearing import hear, question_of  # noqa: E402
from tests.hearing.scoring import Tally, rows_of, tally  # noqa: E402
from tests.hearing.test_speed import start_s  # noqa: E402

SETS = (
    ("public", "public set"),
    ("tuned", "tuned on"),
    ("kept_back", "kept back, never tuned on"),
    ("third_hand", "by a third hand, looked at since"),
    ("four_voices", "in four voices, looked at since"),
    ("sayings", "mostly sayings to trap it, looked at since, never learned from"),
    ("more_voices", "more voices and sports, a third of it sayings to trap it, looked at since"),
    ("kept_back_sports", "in ten sports, 2026-11-27, kept back, never learned from"),
    ("kept_back_voices", "in four voices, 2026-11-27, kept back, never learned from"),
)
# first run of the kept-back set, before any of its results were seen
FIRST_RUN = (
    "first run of the kept-back set: seen 94 of 107, stopped 79 of 98, false 6 of 231\n"
    "first run of the third-hand set, its lines U: seen 210 of 225, stopped 180 of 201, "
    "false 12 of 563\n"
    "first run of its lines V, after work on U: seen 108 of 117, stopped 98 of 108, "
    "false 9 of 270\n"
    "first run of its lines W, after U and V: seen 57 of 65, stopped 44 of 56, false 5 of 91\n"
    "first run of its lines X, after U to W: seen 41 of 43, stopped 32 of 40, false 2 of 66\n"
    "first run of its lines Y, after U to X: seen 49 of 56, stopped 44 of 53, false 2 of 54\n"
    "first run of its lines Z, after U to Y: seen 38 of 41, stopped 29 of 37, false 1 of 39\n"
    "first run of the set in four voices, 2026-11-27, its lines A: seen 196 of 226, stopped 156 of "
    "192, false 10 of 278\n"
    "first run of its lines B, after A: seen 188 of 209, stopped 151 of 188, false 9 of 263\n"
    "first run of its lines C, after A and B: seen 201 of 220, stopped 157 of 198, false 9 of 264\n"
    "first run of its lines D, after A to C and with points: seen 214 of 224, stopped 183 of 204, "
    "false 10 of 273\n"
    "first run of its lines E, after A to D: seen 198 of 212, stopped 169 of 193, false 14 of 261\n"
    "first run of its lines F, after A to E: seen 181 of 185, stopped 153 of 167, false 8 of 239\n"
    "first run of its lines G, after A to F: seen 204 of 208, stopped 174 of 188, false 15 of 250\n"
    "first run of its lines H, after A to G: seen 183 of 189, stopped 151 of 172, false 8 of 244\n"
    "first run of its lines J, sayings only to trap it, after A to H: seen 75 of 76, stopped 63 of "
    "69, false 12 of 153\n"
    "first run of the sayings, after A to J: seen 44 of 44, stopped 42 of 44, "
    "false 9 of 98\n"
    "first run of the set kept back in four voices, after A to H: seen 170 of 178, stopped 143 of "
    "160, false 10 of 240\n"
    "first run of more voices, its lines K, after all of those: seen 251 of 267, stopped 218 of 249, "
    "false 48 of 800\n"
    "first run of its lines L, before K was learned from: seen 222 of 238, stopped 193 of 222, false "
    "22 of 351\n"
    "first run of its lines M, after K, L and T and with points of pairs: seen 192 of 195, stopped "
    "160 of 182, false 2 of 301\n"
    "first run of the set kept back in ten sports, its lines N, after K to M: seen 178 of 181, stopped "
    "156 of 168, false 2 of 263, needless questions 12\n"
    "first run of more voices, its lines O, after K to M and U: seen 152 of 156, stopped 129 of 145, "
    "false 1 of 221, needless questions 6\n"
    "first run of the set kept back in ten sports, its lines R, after all of those: seen 142 of 147, "
    "stopped 127 of 136, false 1 of 220, needless questions 2; set feel right 35 of 36, yes or no 42 "
    "of 44, worst pain 20 of 20\n"
    "lines K and L are sayings to trap it for the larger part; with points learned without them, "
    "but patterns written after them: K false 22 of 800, needless 80; L false 8 of 351, needless 42"
)


def told(name: str, what: str) -> None:
    """One set's scores."""
    result = tally(rows_of(name))
    signs = result.signs
    print(f"{what} ({signs['signs'] + signs['plain']} answers)")
    print(f"  signs seen          {signs['seen']} of {signs['signs']}")
    print(f"  clear ones stopped  {signs['stopped']} of {signs['strict']}")
    print(f"  right group         {signs['kind']} of {signs['seen']}")
    print(f"  sent away wrongly   {signs['false']} of {signs['plain']}")
    print(f"  needless questions  {signs['needless']} of {signs['plain']}")
    for question in result.slots:
        print(f"  {slot_line(result, question)}")


def slot_line(result: Tally, question: str) -> str:
    """One slot's counts in a line."""
    counts = result.slots[question]
    extra = ", ".join(
        f"{part} {counts[part]}" for part in ("guessed", "under", "flipped") if counts[part]
    )
    asked = f"asked again needlessly {counts['answerable_asked']}"
    return f"{question:12} right {counts['right']} of {counts['all']}, {asked}" + (
        f", {extra}" if extra else ""
    )


def seconds(work: object, rounds: int = 3) -> float:
    """The best of a few rounds, in time of this process alone."""
    best = float("inf")
    for _ in range(rounds):
        start = time.process_time()
        work()  # type: ignore[operator]
        best = min(best, time.process_time() - start)
    return best


def speed() -> None:
    """Time an answer, a long answer, the first answer and the import."""
    rows = [row for name, _ in SETS for row in rows_of(name)]
    first = seconds(lambda: hear(question_of(rows[0]), "my hand is numb"), rounds=1)
    times = [seconds(lambda r=row: hear(question_of(r), r["text"])) for row in rows]
    long = " ".join(row["text"] for row in rows)[:10_000]
    note = question_of({"q": "note"})
    whole, half = seconds(lambda: hear(note, long)), seconds(lambda: hear(note, long[:5_000]))
    print("speed")
    print(f"  median answer       {statistics.median(times) * 1e6:.0f} microseconds")
    print(f"  19 of 20 within     {sorted(times)[int(0.95 * len(times))] * 1e6:.0f} microseconds")
    print(f"  first answer        {first * 1e3:.1f} ms (the patterns are read then)")
    print(f"  10,000 characters   {whole * 1e3:.1f} ms, {whole / half:.2f} times 5,000")
    print(f"  import of the room  {import_cost()}")


def import_cost() -> str:
    """Processor time of a start with the room imported, less one without it; the least of seven.

    The bytecode is kept in a folder of its own, since some environments forbid to keep any.
    """
    with tempfile.TemporaryDirectory() as kept:
        bare = start_s("import re, typing, enum", Path(kept))
        whole = start_s("import coach.hearing", Path(kept))
    return f"{(whole - bare) * 1e3:.1f} ms over a bare start of {bare * 1e3:.1f} ms"


def main() -> None:
    """Print every set's scores and the speed."""
    speed()
    for name, what in SETS:
        told(name, what)
    print(FIRST_RUN)


if __name__ == "__main__":
    main()
