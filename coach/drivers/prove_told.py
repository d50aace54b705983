"""What the search broke, typed in real words: made calm, told as short as it goes, and kept.

Law: a conversation is told anew only where its typed words break the same promise; else it stands as
the search told it. Nothing here decides a promise.
"""

from __future__ import annotations

import random
import re
import sys
from pathlib import Path
from typing import Final

from coach.drivers.junit import as_junit
from coach.drivers.promises import Broken
from coach.drivers.prove import Report
from coach.drivers.prove_answers import ONWARD, STOP, TIMER, UNCLEAR
from coach.drivers.prove_kept import kept, scenes, write_all
from coach.drivers.prove_search import Break
from coach.drivers.prove_typing import CALM_MOOD, Edges, Move, Typist, calm_move
from coach.drivers.prove_walk import PACES_S, Found, Key, Told, Walk, replayed
from coach.drivers.recording import SHORT
from coach.drivers.replay import Mismatch, Result
from coach.journal.outgoing import write_whole
from coach.model.heard import Kind
from coach.model.program import Bound, Place
from coach.model.turns import Ask
from coach.session.brief import Brief
from coach.session.state import State

PACE_S: Final = PACES_S[0]
AT_A_PROMPT: Final = ("P8", "P10", "P11")  # broken by what one more answer would lead to
TIMED: Final = "rest"  # what the search calls a prompt at which a timer runs
AWAY: Final = re.compile(r"\(a break of ([0-9]+) s\)")
TYPED: Final = {UNCLEAR.words: "hm", STOP.words: "stop"}
NONE: Final = {"throwing yesterday": "no throws yesterday", "throwing today": "no game today"}
CALM: Final = {
    "pain now": "1",
    "waking pain": "0",
    "sleep last night": "8",
    "throwing yesterday": "none",
    "throwing today": "none",
    "pain in set": "0",
    "pain after": "1",
    "effort": "4",
    "minutes": "25",
}

Talk = tuple[tuple[str, str], ...]


def in_words(
    report: Report, days: list[tuple[str, Brief]], bound: Bound, plan: Path, out: Path | None
) -> Report:
    """The report with its conversations in typed words; with `out`, each one kept as a scenario."""
    briefs, first = dict(days), days[0][1]
    found = [retold(one, briefs[one.day]) if one.day in briefs else None for one in report.broken]
    if out is not None:
        files = [
            kept(one, briefs[told.day], first, bound, plan) if one else ""
            for one, told in zip(found, report.broken, strict=True)
        ]
        for file in write_all(out, [one.promise for one in report.broken], files):
            sys.stderr.write(f"{file}: a replay fails on it\n")
    broken = tuple(
        told._replace(talk=talk_of(one, briefs[told.day])) if one else told
        for one, told in zip(found, report.broken, strict=True)
    )
    return report._replace(broken=broken)


def write_results(reports: dict[Path, Report], file: Path) -> None:
    """The promises of each plan searched so far as JUnit XML."""
    results = [one for plan, report in reports.items() for one in results_of(report, plan)]
    write_whole(file, as_junit(results, "promises"))


def results_of(report: Report, plan: Path) -> list[Result]:
    """Each promise as one result for a build server; what was not shown has failed too."""
    place = Place(plan.name, 1)
    results = []
    for promise, told in report.promises.items():
        broken = [one for one in report.broken if one.promise == promise]
        missed = [
            Mismatch(
                one.day or "any day",
                one.talk[-1][0] if one.talk else "any",
                place,
                f"{promise} holds",
                "; ".join([one.words, *(f"{prompt}: {typed}" for prompt, typed in one.talk)]),
            )
            for one in broken
        ]
        if told == "not shown" and not missed:
            missed = [Mismatch("any day", "any", place, f"{promise} holds", "not shown")]
        results.append(Result(plan.name, promise, 0.0, tuple(missed)))
    return results


def retold(one: Break, brief: Brief) -> Found | None:
    """The break as a calm typed conversation; None where typed words do not break the promise."""
    walk = Walk(brief, PACE_S, Reader(one.talk), {})
    broken = Broken(one.promise, one.words)
    found = Found(broken, 0, PACE_S, walk.moves, walk.to_the_end())
    again = replayed(brief, found, found.moves)
    return None if again is None else made_calm(brief, found._replace(talk=again))


def talk_of(found: Found, brief: Brief) -> Talk:
    """The conversation with the answer that shows the break, if one does."""
    shown = scenes(found, brief) if found.broken.promise in AT_A_PROMPT else ()
    told = next((scene.told for scene in shown), found.talk.told)
    return tuple((one.prompt, words_of(one)) for one in told)


def words_of(told: Told) -> str:
    """What was typed or befell."""
    if told.move.away_s:
        return f"(a break of {told.move.away_s} s)"
    return told.move.text or (TIMER.words if told.prompt.startswith("(") else "(enter)")


# ---------------------------------------------------------------- typing what the search said


class Reader(Typist):
    """Types a conversation that the search found, prompt by prompt, then dull answers."""

    def __init__(self, talk: Talk) -> None:
        """`talk` pairs the search's name of a prompt with its words."""
        super().__init__(CALM_MOOD, random.Random(0), Edges())  # noqa: S311 - no dice are thrown
        pairs = [(prompt, words) for prompt, words in talk if words != ONWARD.words]
        self.left = [
            (prompt if first else "", piece)
            for prompt, words in pairs
            for first, piece in _pieces(words)
        ]

    def over_a_timer(self) -> Move | None:
        """What befalls while a timer runs; None: it ends by itself."""
        if not self.left or self.left[0][0] not in {TIMED, ""}:
            return None
        _prompt, words = self.left.pop(0)
        return None if words == TIMER.words else as_move(words)

    def move(self, ask: Ask, state: State) -> Move:
        """What the conversation says at a prompt, the dull answer where it says nothing of it."""
        if not self.left or self.left[0][0] not in {ask.name, ""}:
            return calm_move(ask, state)
        _prompt, words = self.left.pop(0)
        if ask.question.kind is Kind.LINE:
            facts = [part.fact for part in ask.question.parts]
            said = labelled(words, facts)
            return self.on_a_line(said) if said else as_move(words)
        return as_move(words)

    def on_a_line(self, said: dict[str, str]) -> Move:
        """The values of a line; throws have so many words that each is typed where it is asked."""
        alone = [(fact, value) for fact, value in said.items() if fact in NONE and value != "none"]
        self.left[:0] = alone
        fact, value = alone[0] if alone else ("", "")
        rest = {one: text for one, text in said.items() if (one, text) not in alone}
        if not rest:
            self.left.pop(0)
            return Move(value, fact)
        return line_move(rest)


def _pieces(words: str) -> list[tuple[bool, str]]:
    """A correction is several answers, one after the other; all else is one."""
    if not words.startswith("fix, "):
        return [(True, words)]
    fix, which, *new = words.split(", ")
    return [(True, fix), (False, which), (False, ", ".join(new))]


def as_move(words: str) -> Move:
    """The search's words as a person types them."""
    away = AWAY.fullmatch(words)
    if away:
        return Move("", away_s=int(away.group(1)))
    return Move(TYPED.get(words, words))


def labelled(words: str, facts: list[str]) -> dict[str, str]:
    """The values of one line by fact; empty where the words are none of a line."""
    said: dict[str, str] = {}
    for piece in words.split(", "):
        fact = next((one for one in facts if piece.startswith(f"{one} ")), None)
        if fact is None:
            return {}
        said[fact] = piece.removeprefix(f"{fact} ")
    return said


def line_move(said: dict[str, str]) -> Move:
    """All values of a line, typed on it; `meant` keeps them apart."""
    typed = ", ".join(
        NONE[fact] if fact in NONE and value == "none" else f"{SHORT.get(fact, fact)} {value}"
        for fact, value in said.items()
    )
    return Move(typed, meant=tuple(f"{fact} {value}" for fact, value in said.items()))


# ---------------------------------------------------------------- made calm


def made_calm(brief: Brief, found: Found) -> Found:
    """The same break with every answer made dull that it does not need."""
    tried: list[dict[Key, Move]] = []
    while True:
        ways = [moves for key in found.moves for moves in _calmer(found, key) if moves not in tried]
        if not ways:
            return found
        tried.append(ways[0])
        again = replayed(brief, found, ways[0])
        if again is not None and len(again.told) <= len(found.talk.told):
            found = found._replace(moves=ways[0], talk=again)


def _calmer(found: Found, key: Key) -> list[dict[Key, Move]]:
    """The conversation with one answer left dull, or with one value of a line made calm."""
    move = found.moves[key]
    if not isinstance(move.meant, tuple):
        return [{other: one for other, one in found.moves.items() if other != key}]
    said = labelled(", ".join(move.meant), [*CALM, *SHORT])
    calm = [{**said, fact: CALM[fact]} for fact in said if said[fact] != CALM.get(fact, said[fact])]
    return [{**found.moves, key: line_move(one)} for one in calm]
