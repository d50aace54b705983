"""What a walk found, in words, as JSON, and as a scenario that a replay fails on.

Law: a scenario is written only where a replay really fails on it; else it is said that there is none.
"""

from __future__ import annotations

import json
import resource
import sys
from pathlib import Path
from typing import Any, Final

from coach.drivers.exit_codes import DONE, FINDINGS, INTERRUPTED
from coach.drivers.promises import PROMISES
from coach.drivers.prove import Options
from coach.drivers.prove_kept import kept, write_all
from coach.drivers.prove_walk import Found, Walked, walked
from coach.drivers.workers import cores
from coach.model.program import Bound

NO_SCENARIO: Final = "no typed days that a replay fails on show this, so there is no scenario of it"


def walk_one(bound: Bound, plan: Path, options: Options) -> int:
    """Walk one plan and tell of it; 0 where no promise was broken, 130 for a walk cut short."""
    found = walked(
        bound,
        options.walk,
        seed=options.seed,
        workers=cores(),
        seconds=options.seconds,
        say=_progress,
    )
    files = scenarios_of(found, bound, plan)
    if options.out is not None:
        write_all(options.out, [one.broken.promise for one in found.found], files)
    told = as_json(found, bound, files) if options.as_json else as_words(found, plan.name, files)
    sys.stdout.write(told)
    if found.found:
        return FINDINGS
    return DONE if found.finished else INTERRUPTED


def _progress(said: str) -> None:
    if sys.stderr.isatty():
        sys.stderr.write(f"\r{said}")
        sys.stderr.flush()


def as_words(walk: Walked, name: str, files: list[str]) -> str:
    """The walk for a reader."""
    cut = "" if walk.finished else ", cut short"
    lines = [
        f"{name}: {len(walk.found)} broken promises in {walk.turns} turns walked{cut}.",
        (
            f"  {walk.talks} conversations on {len(walk.days)} kinds of day, "
            f"{walk.compared} values held against others of their class, "
            f"{walk.seconds:.1f} s, {memory_mb():.0f} MB"
        ),
        "  a walk shows nothing of what it did not walk",
    ]
    for one, file in zip(walk.found, files, strict=True):
        lines.append(f"  {one.broken.promise}: {one.broken.words} ({walk.days[one.day][0]})")
        lines += [f"      {prompt}: {typed}" for prompt, typed in talk_of(one)]
        lines += [f"    {row}" for row in (file or f"({NO_SCENARIO})").splitlines()]
    return "\n".join(lines) + "\n"


def as_json(walk: Walked, bound: Bound, files: list[str]) -> str:
    """The walk as one JSON object."""
    broken = {one.broken.promise for one in walk.found}
    shown: dict[str, Any] = {
        "promises": {name: "broken" if name in broken else "not shown" for name in PROMISES},
        "turns": walk.turns,
        "conversations": walk.talks,
        "compared": walk.compared,
        "broken": [
            {
                "promise": one.broken.promise,
                "words": one.broken.words,
                "day": walk.days[one.day][0],
                "talk": talk_of(one),
                "scenario": file,
            }
            for one, file in zip(walk.found, files, strict=True)
        ],
        "seconds": round(walk.seconds, 1),
        "mb": round(memory_mb(), 1),
        "program": bound.digest,
        "finished": walk.finished,
    }
    return json.dumps(shown, ensure_ascii=False, indent=1) + "\n"


def memory_mb() -> float:
    """The most memory that this program or one of its workers had."""
    who = (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN)
    return max(resource.getrusage(one).ru_maxrss for one in who) / 1024


def talk_of(found: Found) -> list[tuple[str, str]]:
    """The conversation: the prompt, and what was typed or befell."""
    return [
        (told.prompt, f"(a break of {told.move.away_s} s)" if told.move.away_s else told.move.text)
        for told in found.talk.told
    ]


# ---------------------------------------------------------------- as scenarios


def scenarios_of(walk: Walked, bound: Bound, plan: Path) -> list[str]:
    """For each break a scenario that a replay fails on; '' where none could be made."""
    first = walk.days[0][1]
    return [kept(one, walk.days[one.day][1], first, bound, plan) for one in walk.found]
