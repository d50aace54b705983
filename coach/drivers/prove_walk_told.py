"""What a walk found, in words, as JSON, and as a scenario that a replay fails on.

Law: a scenario is written only where a replay really fails on it; else it is said why there is none.
"""

from __future__ import annotations

import json
import resource
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any, Final

from coach.drivers.exit_codes import DONE, FINDINGS, INTERRUPTED
from coach.drivers.promises import PROMISES
from coach.drivers.prove import Options
from coach.drivers.prove_days import OPENS_AT
from coach.drivers.prove_walk import Found, Walked, replayed, walked
from coach.drivers.replay import play
from coach.drivers.replay_checks import words
from coach.drivers.workers import cores
from coach.journal import throwaway
from coach.journal.outgoing import write_whole
from coach.model.program import Bound
from coach.model.turns import Offer
from coach.session.brief import Brief
from coach.texts.scenarios import read_scenario

HEAD: Final = "# A walk found this; the days before it are calm ones."
NO_DAYS: Final = "no days that can be typed lead to this diary, so there is no scenario of it"
USUAL: Final = "smooth"


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
    if options.out is not None and any(files):
        write_whole(options.out, next(text for text in files if text))
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
        lines += [f"    {row}" for row in (file or f"({NO_DAYS})").splitlines()]
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
    return [
        scenario_of(one, walk.days[one.day][1], bound, plan)
        or on_the_first_day(one, walk.days[0][1], bound, plan)
        for one in walk.found
    ]


def on_the_first_day(found: Found, first: Brief, bound: Bound, plan: Path) -> str:
    """The same answers on the first day, which needs no days before it; '' where all is well then."""
    again = replayed(first, found, found.moves)
    if again is None:
        return ""
    return scenario_of(found._replace(day=0, talk=again), first, bound, plan)


def scenario_of(found: Found, brief: Brief, bound: Bound, plan: Path) -> str:
    """One break as a scenario, with the first check that a replay fails on."""
    for check in checks_of(found):
        text = as_scenario(found, brief, plan, check)
        if fails(text, bound, check):
            return text
    return ""


def checks_of(found: Found) -> Iterator[str]:
    """What a replay must not see from the last answer on, the most telling first."""
    shown = found.talk.shown
    for offer in shown.offers:
        yield f"never offers: {pieces(offer)}"
    if shown.ask is not None:
        yield f"never asks: {shown.ask.name}"
    if shown.end == "stopped":
        yield "never shows: STOP"
    for line in reversed(shown.lines):
        if line.text and "{" not in line.text:
            yield f'never shows: "{line.text[:60].strip()}"'


def pieces(offer: Offer) -> str:
    """An offer as a check writes it: the exercise, its sets, and where it stands."""
    dose = offer.dose
    count = f"{dose.sets} set" if dose.sets == 1 else f"{dose.sets} sets"
    more = [piece for piece in (dose.version, dose.range_step) if piece]
    return ", ".join([offer.exercise, count, *more]) if words(offer) else offer.exercise


def as_scenario(found: Found, brief: Brief, plan: Path, check: str) -> str:
    """The days before, calm; then the day of the break, typed answer by answer."""
    lines = [HEAD, f"scenario: {found.broken.promise}, {one_line(found.broken.words)}"]
    lines += [f"plan: {plan.resolve().as_posix()}", f"usual: {USUAL}", "days:"]
    before = sorted({record.day for record in brief.history.records})
    lines += [f"  - day: {day} at 08:30" for day in before]
    lines += [f"  - day: {brief.today.isoformat()} at {OPENS_AT:%H:%M}", "    talk:"]
    for told in found.talk.told:
        lines += _lines_of(told.prompt, told.move.text, told.move.away_s)
    return "\n".join([*lines, f"      - {check}"]) + "\n"


def _lines_of(prompt: str, text: str, away_s: int) -> list[str]:
    if away_s:
        return [
            f"      - {prompt}: pause",
            f"      - break: {away_s} s",
            "      - paused: go",
        ]
    if not text and prompt.startswith("("):
        return []
    return [f'      - {prompt}: "{text}"']


def one_line(text: str) -> str:
    """Words fit for the first line of a file."""
    return text.replace(": ", ", ").replace("'", "").replace('"', "")


def fails(text: str, bound: Bound, check: str) -> bool:
    """Whether a replay fails on the scenario at this check, and on nothing else."""
    with throwaway() as folder:
        file = folder / "walk.yaml"
        write_whole(file, text)
        scenario, _findings = read_scenario(file)
    if scenario is None:
        return False
    expected = check.replace(": ", " ", 1).replace('"', "")
    missed = play(scenario, "walk.yaml", bound).mismatches
    return bool(missed) and all(one.expected == expected for one in missed)
