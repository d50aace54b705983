"""Learns the points of words and pairs of words from the labelled answers, and writes them down.

usage: python -m tests.hearing.find_points
A plain logistic regression over the marks of `points.marks_of`, by gradient steps in a fixed order
of chance, each mark's step the smaller the more it was moved before; the same sets give the same
tables. The kept-back sets are never learned from.
"""

from __future__ import annotations

import math
import random
from collections import Counter, defaultdict
from pathlib import Path
from typing import Any

from coach.hearing.lexicon import BUILT_IN
from coach.hearing.listening import Listening
from coach.hearing.points import START, TABLES, TENTHS, marks_of
from coach.hearing.words import words_of
from tests.hearing.scoring import rows_of

LEARNED_FROM = ("public", "tuned", "third_hand", "four_voices", "sayings", "more_voices")
ROUNDS = 10
FEWEST_SEEN = 2  # answers that must hold a mark before it gets points
SMALLEST = 6  # points, in tenths, below which a mark is left out
STEP, HOLD = 0.5, 0.02  # how far a step goes, and how hard every mark is pulled back to 0
ROOM = Path(__file__).resolve().parents[2] / "coach" / "hearing"
HEAD = '''"""The points of words and of pairs of words, in tenths, {first} to {last}.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\\
{lines}
"""
'''

Sample = tuple[list[str], bool, float]


def samples(rows: list[dict[str, Any]]) -> list[Sample]:
    """The marks of each answer, whether it is a sign, and how much it counts."""
    out = []
    for row in rows:
        words = words_of(row["text"], BUILT_IN.families)
        heard = Listening(words, BUILT_IN)
        marks = sorted(marks_of(words, heard.scopes, range(len(words))))
        soft = bool(row["expect"].get("confirm_ok"))
        out.append((marks, row["expect"]["red_flag"] is not None, 0.5 if soft else 1.0))
    seen = Counter(mark for marks, _, _ in out for mark in marks)
    return [([m for m in marks if seen[m] >= FEWEST_SEEN], sign, w) for marks, sign, w in out]


def learned(found: list[Sample]) -> tuple[float, dict[str, float]]:
    """The start and the weight of each mark."""
    seen = Counter(mark for marks, _, _ in found for mark in marks)
    weights = dict.fromkeys(sorted(seen), 0.0)
    moved: defaultdict[str, float] = defaultdict(float)
    start = 0.0
    chance = random.Random(1)
    found = list(found)
    for _ in range(ROUNDS):
        chance.shuffle(found)
        for marks, sign, counts in found:
            share = 1 / math.sqrt(len(marks) + 1)
            said = start + share * sum(weights[m] for m in marks)
            miss = (1 / (1 + math.exp(-max(-30.0, min(30.0, said)))) - sign) * counts
            start -= STEP * 0.05 * miss
            for mark in marks:
                pull = miss * share + HOLD * weights[mark] / seen[mark]
                moved[mark] += pull * pull
                weights[mark] -= STEP * pull / math.sqrt(moved[mark] + 1e-3)
    return start, weights


def lines_of(start: float, weights: dict[str, float]) -> list[str]:
    """The table's lines: a first word, then each value with the second words that have it."""
    by_first: defaultdict[str, defaultdict[int, list[str]]] = defaultdict(lambda: defaultdict(list))
    by_first[START][round(start * TENTHS)].append(".")
    for mark, weight in weights.items():
        value = round(weight * TENTHS)
        if abs(value) >= SMALLEST:
            first, _, second = mark.partition("_")
            by_first[first][value].append(second or ".")
    lines = []
    for first, by_value in sorted(by_first.items()):
        items = (f"{value} {' '.join(sorted(names))}" for value, names in sorted(by_value.items()))
        lines.append(f"{first} {' '.join(items)}")
    return lines


def tables(lines: list[str]) -> list[str]:
    """The text of each module, of about equal length."""
    most = sum(len(line) + 1 for line in lines) // len(TABLES) + 1
    parts: list[list[str]] = [[] for _ in TABLES]
    written = 0
    for line in lines:
        parts[min(written // most, len(TABLES) - 1)].append(line)
        written += len(line) + 1
    return [
        HEAD.format(first=part[0].split()[0], last=part[-1].split()[0], lines="\n".join(part))
        for part in parts
    ]


def main() -> None:
    """Learn and write."""
    rows = [row for name in LEARNED_FROM for row in rows_of(name)]
    for number, text in enumerate(tables(lines_of(*learned(samples(rows)))), 1):
        (ROOM / f"points_{number}.py").write_text(text, encoding="utf-8")


if __name__ == "__main__":
    main()
