"""Plays 2,000 seasons of 120 days on two cores and prints time, memory and every broken promise.

Law: it measures and prints; it holds no number to a limit but one: no promise may break (ends 1).
Run it from the checkout: `python tests/bench/seasons.py [SEASONS]`.
"""

import gc
import multiprocessing
import resource
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from tests.seasons.season import DAYS
from tests.seasons.test_seasons import played

CORES = 2
PIECE = 20  # seasons that a core takes at a time


def piece(first: int) -> tuple[int, list[str], int]:
    """Some seasons: what happened, what broke, and the most memory of this core in kB."""
    gc.disable()  # the values of a day hold no circles, so nothing is kept by it
    seen, broken = played(first, first + PIECE)
    return seen.total(), broken, resource.getrusage(resource.RUSAGE_SELF).ru_maxrss


def main() -> int:
    """Play them all; 1 when a promise broke."""
    seasons = int(sys.argv[1]) if len(sys.argv) > 1 else 2000
    began = time.perf_counter()
    with multiprocessing.Pool(CORES) as pool:
        done = pool.map(piece, range(0, seasons, PIECE), chunksize=1)
    took = time.perf_counter() - began
    broken = [told for _seen, tellings, _memory in done for told in tellings]
    print(f"{len(done) * PIECE} seasons of {DAYS} days on {CORES} cores: {took:.0f} s")
    print(f"  {1000 * took / (len(done) * PIECE):.0f} ms a season")
    print(f"  memory of a core at most {max(m for _s, _b, m in done) / 1024:.0f} MB")
    print(f"  decisions and marks seen: {sum(seen for seen, _b, _m in done)}")
    print(f"  broken promises: {len(broken)}")
    print("\n\n".join(broken[:3]))
    return 1 if broken else 0


if __name__ == "__main__":
    sys.exit(main())
