"""Learns the points of the words from the labelled answers, and writes them down.

usage: python -m tests.hearing.find_points
A plain logistic regression over words and families, by gradient steps in a fixed order of chance;
the same sets give the same table. The kept-back sets are never learned from.
"""

from __future__ import annotations

import math
import random
from collections import Counter, defaultdict
from pathlib import Path
from typing import Any

from coach.hearing.lexicon import BUILT_IN
from coach.hearing.listening import Listening
from coach.hearing.points import TENTHS, marks_of
from coach.hearing.words import words_of
from tests.hearing.scoring import rows_of

LEARNED_FROM = ("public", "tuned", "third_hand", "four_voices")
ROUNDS = 15
FEWEST_SEEN = 2  # answers that must hold a word before it gets points
SMALLEST = 1  # points, in tenths, below which a word is left out
HEAD = '''"""The points of words, in tenths: for a warning sign above 0, against it below.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented. One line holds all words of one value; `no:` marks a word that is denied, capitals a
family of the vocabulary, `#` any number.
"""

from __future__ import annotations

from typing import Final

START: Final = {start}
TABLE: Final = """\\
{lines}"""
'''

Sample = tuple[list[str], bool, float]


def samples(rows: list[dict[str, Any]]) -> list[Sample]:
    """The marks of each answer, whether it is a sign, and how much it counts."""
    out = []
    for row in rows:
        words = words_of(row["text"], BUILT_IN.families)
        heard = Listening(words, BUILT_IN)
        marks = sorted(marks_of(words, heard.scopes, heard.sayings))
        soft = bool(row["expect"].get("confirm_ok"))
        out.append((marks, row["expect"]["red_flag"] is not None, 0.5 if soft else 1.0))
    seen = Counter(mark for marks, _, _ in out for mark in marks)
    return [([m for m in marks if seen[m] >= FEWEST_SEEN], sign, w) for marks, sign, w in out]


def learned(found: list[Sample]) -> tuple[float, dict[str, float]]:
    """The start and the weight of each mark."""
    weights: defaultdict[str, float] = defaultdict(float)
    start = 0.0
    chance = random.Random(1)
    for turn in range(ROUNDS):
        chance.shuffle(found)
        step = 0.3 / (1 + 0.7 * turn)
        for marks, sign, counts in found:
            root = math.sqrt(len(marks) + 1)
            said = start + sum(weights[m] for m in marks) / root
            miss = (sign - 1 / (1 + math.exp(-max(-30.0, min(30.0, said))))) * counts
            start += step * miss * 0.1
            for mark in marks:
                weights[mark] += step * (2 * miss / root - 0.004 * weights[mark])
    return start, dict(weights)


def table(start: float, weights: dict[str, float]) -> str:
    """The module's text."""
    by_value: defaultdict[int, list[str]] = defaultdict(list)
    for mark, value in weights.items():
        if abs(round(value * TENTHS)) >= SMALLEST:
            by_value[round(value * TENTHS)].append(mark)
    lines = [f"{value} {' '.join(sorted(by_value[value]))}" for value in sorted(by_value)]
    return HEAD.format(start=round(start * TENTHS), lines="\n".join(lines))


def main() -> None:
    """Learn and write."""
    rows = [row for name in LEARNED_FROM for row in rows_of(name)]
    text = table(*learned(samples(rows)))
    path = Path(__file__).resolve().parents[2] / "coach" / "hearing" / "points_table.py"
    path.write_text(text, encoding="utf-8")


if __name__ == "__main__":
    main()
