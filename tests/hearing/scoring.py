"""Scores the ear on a set of labelled answers: signs first, then false alarms, then slots.

Each row holds `id`, `q`, `text`, maybe `ask`, and `expect`; see `Tally` for what is counted. A sign
marked `confirm_ok` may be asked about; any other must stop. A row without a sign that is marked
`confirm_ok` may be asked about, never stopped.
"""

from __future__ import annotations

import json
from collections import Counter
from pathlib import Path
from typing import Any, NamedTuple

from coach.hearing import hear_row

HERE = Path(__file__).parent
SLOT_KEYS = {"pain_now": "pain", "worst_pain": "pain"}


class Tally(NamedTuple):
    """Counts over one set; `slots` counts per question, `missed` and `false` name the texts."""

    signs: Counter[str]
    slots: dict[str, Counter[str]]
    missed: list[str]
    false: list[str]

    def share(self, part: str, whole: str) -> float:
        """The share of `part` among `whole`, 1 when there is none."""
        return self.signs[part] / self.signs[whole] if self.signs[whole] else 1.0

    def slot_share(self, question: str, part: str, whole: str = "all") -> float:
        """The share of a count among another for one question."""
        counts = self.slots[question]
        return counts[part] / counts[whole] if counts[whole] else 1.0


def rows_of(name: str) -> list[dict[str, Any]]:
    """The rows of a set in this folder."""
    lines = (HERE / f"{name}.jsonl").read_text(encoding="utf-8").splitlines()
    return [json.loads(line) for line in lines if line.strip()]


def tally(rows: list[dict[str, Any]]) -> Tally:
    """Hear every row and count."""
    out = Tally(Counter(), {}, [], [])
    for row in rows:
        heard = hear_row(row)
        _count_sign(out, row, heard)
        _count_slot(out, row, heard)
    return out


def _count_sign(out: Tally, row: dict[str, Any], heard: dict[str, Any]) -> None:
    expect, action = row["expect"], heard["action"]
    soft = bool(expect.get("confirm_ok"))
    if expect["red_flag"] is None:
        out.signs["plain"] += 1
        out.signs["false"] += action == "escalate"
        out.signs["needless"] += action == "confirm" and not soft
        if action == "escalate":
            out.false.append(row["text"])
        return
    seen = action in ("escalate", "confirm")
    out.signs["signs"] += 1
    out.signs["seen"] += seen
    out.signs["strict"] += not soft
    out.signs["stopped"] += not soft and action == "escalate"
    kinds = {expect["red_flag"], *expect.get("red_flag_also", [])}
    out.signs["kind"] += seen and heard["red_flag"] in kinds
    if not seen:
        out.missed.append(row["text"])


def _count_slot(out: Tally, row: dict[str, Any], heard: dict[str, Any]) -> None:
    question, expect = row["q"], row["expect"]
    key = SLOT_KEYS.get(question, question)
    if question == "note" or (question == "set_feel" and expect["red_flag"]):
        return
    counts = out.slots.setdefault(question, Counter())
    counts["all"] += 1
    wanted = [expect[key]]
    if key in row.get("alt", {}):
        wanted.append(row["alt"][key])
    got = heard["value"].get(key)
    if heard["action"] == "ask_again" or got == "unclear":
        counts["right"] += "unclear" in wanted or bool(row.get("ambiguous") and key != "yes_no")
        counts["answerable_asked"] += "unclear" not in wanted
        return
    right = any(agrees(key, want, got) for want in wanted)
    counts["right"] += right
    counts["guessed"] += "unclear" in wanted and not right
    counts["flipped"] += key == "yes_no" and {got, wanted[0]} == {"yes", "no"} and not right
    counts["under"] += key == "pain" and _under(wanted, got)
    for part in ("count", "max_distance_ft"):
        if part in expect:
            counts[part] += 1
            counts[f"{part} right"] += agrees(part, expect[part], heard["value"].get(part))


def _worse(key: str, value: object) -> object:
    if isinstance(value, list):
        return min(value) if key == "sleep_hours" else max(value)
    return value


def _under(wanted: list[Any], got: object) -> bool:
    numbers = [_worse("pain", want) for want in wanted if want != "unclear"]
    value = _worse("pain", got)
    return bool(numbers) and isinstance(value, (int, float)) and value < min(numbers)  # type: ignore[type-var, operator]


def agrees(key: str, want: object, got: object) -> bool:
    """Whether a value counts as right: the worse end of a range, within the key's tolerance."""
    if key == "sleep_hours" and isinstance(want, list):
        value = _worse(key, got)
        return isinstance(value, (int, float)) and want[0] <= value <= sum(want) / 2
    wanted, value = _worse(key, want), _worse(key, got)
    if isinstance(wanted, (int, float)) and isinstance(value, (int, float)):
        slack = {"sleep_hours": 0.25, "max_distance_ft": 2.0}.get(key, 0.0)
        return abs(value - wanted) <= slack or (key == "pain" and value == -(-wanted // 1))
    if key == "set_feel":
        return _top(wanted) == _top(value)
    return wanted == value


def _top(value: object) -> object:
    text = str(value)
    return "pain:" + text[5:].rsplit("-", maxsplit=1)[-1] if text.startswith("pain:") else value
