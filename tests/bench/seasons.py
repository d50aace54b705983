"""Plays 2,000 seasons of 120 days on two cores and prints time, memory and every broken promise.

A hundred more each are of a pitcher who plays games and of a server with the plan's own table.

Law: it measures and prints; it holds no number to a limit but one: no promise may break (ends 1).
The first broken seasons are written as folders that `coach replay` fails on.
Run it from the checkout: `python tests/bench/seasons.py [SEASONS]`.
"""

import gc
import multiprocessing
import resource
import sys
import tempfile
import time
from collections import Counter
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from coach.drivers import replay
from tests.seasons.prompts import script_lines
from tests.seasons.season import DAYS, PITCHES_FROM, SERVES_FROM, plan
from tests.seasons.test_seasons import Broke, played, written

CORES = 2
PIECE = 20  # seasons that a core takes at a time
OTHERS = 20  # one season of each further kind for so many of the first
WRITTEN = 3  # broken seasons that are written as a scenario


def piece(first: int) -> tuple[Counter[str], list[Broke], int, float]:
    """Some seasons: what happened, what broke, the most memory of this core in kB, its seconds."""
    gc.disable()  # the values of a day hold no circles, so nothing is kept by it
    began = time.process_time()
    seen, broken = played(range(first, first + PIECE))
    most = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    return seen, broken, most, time.process_time() - began


def told(broke: Broke, folder: Path) -> list[str]:
    """A broken season: what broke, its scenario, and how that plays again."""
    file = written(broke, folder / f"seed-{broke.seed}")
    (result,) = replay.replay([file])
    lines = [f"seed {broke.seed}, start {broke.day}: {'; '.join(broke.found)}", f"  {file}"]
    missed = [f"  {one.day}: expected {one.expected}; {one.actual}" for one in result.mismatches]
    return [*lines, *(missed[:3] or ["  It does not fail when it is played again."])]


def main() -> int:
    """Play them all; 1 when a promise broke."""
    seasons = int(sys.argv[1]) if len(sys.argv) > 1 else 2000
    more = max(PIECE, seasons // OTHERS)
    firsts = [
        first
        for begin, many in ((0, seasons), (PITCHES_FROM, more), (SERVES_FROM, more))
        for first in range(begin, begin + many, PIECE)
    ]
    began = time.perf_counter()
    with multiprocessing.Pool(CORES) as pool:
        done = pool.map(piece, firsts, chunksize=1)
    took = time.perf_counter() - began
    count = len(done) * PIECE
    seen = sum((one[0] for one in done), Counter[str]())
    broken = [broke for one in done for broke in one[1]]
    print(f"{count} seasons of {DAYS} days on {CORES} cores: {took:.0f} s")
    print(f"  {1000 * sum(one[3] for one in done) / count:.0f} ms of a core a season")
    print(f"  memory of a core at most {max(one[2] for one in done) / 1024:.0f} MB")
    print(f"  decisions, questions and marks seen: {seen.total()}")
    unreached = [place for mark, place in script_lines(plan("g-w")).items() if not seen[mark]]
    print(f"  script lines not reached: {', '.join(unreached) or 'none'}")
    print(f"  seasons with a broken promise: {len(broken)}")
    if broken:
        folder = Path(tempfile.mkdtemp(prefix="seasons-"))
        print("\n".join(line for broke in broken[:WRITTEN] for line in told(broke, folder)))
    return 1 if broken or unreached else 0


if __name__ == "__main__":
    sys.exit(main())
