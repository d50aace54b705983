"""The numbers at which a typed answer changes a decision, each with its side, read from the plan.

Law: a rule may compare an answer with these numbers and with no others; a check runs every rule on
answers that log their comparisons and expects exactly this list.
"""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from coach.model.program import Plan
from coach.rules.pain import END_AT, FLAG_AT, UP_BY
from coach.rules.pitching import has_age, most_pitches, rows_for
from coach.rules.readiness import ACHE_AT_MOST, SHORT_NIGHT_H
from coach.rules.throwing_tables import INNINGS_THEN_NO_PITCHING, PITCHES_THEN_NO_CATCHING


class Side(StrEnum):
    """Which side of the number acts: `over 2`, `2 and more` (at), `under 6`."""

    OVER = "over"
    AT = "at and over"
    UNDER = "under"


class CutPoint(NamedTuple):
    """An answer to `fact` acts on `side` of `number`."""

    fact: str
    side: Side
    number: float


def cut_points(plan: Plan, usual_pain: float) -> frozenset[CutPoint]:
    """Every cut point of today's rules under `plan`, with `usual_pain` the usual morning."""
    pain = plan.pain
    flagged = ("pain now", "worst pain", "waking pain", "pain in warm-up", "pain in set")
    in_work = ("pain in warm-up", "pain in set", "pain before a changed set")
    short_night = dict(plan.changed).get("ready.sleep", SHORT_NIGHT_H)
    throwing = ("pain in throwing",) if plan.throwing_line is not None else ()
    return frozenset(
        [
            CutPoint("pain now", Side.OVER, pain.to_start),
            CutPoint("pain now", Side.OVER, pain.gentle),
            CutPoint("pain in warm-up", Side.OVER, pain.gentle),
            CutPoint("waking pain", Side.OVER, usual_pain),
            CutPoint("waking pain", Side.AT, usual_pain + UP_BY),
            CutPoint("waking pain", Side.OVER, ACHE_AT_MOST),
            CutPoint("sleep last night", Side.UNDER, short_night),
            CutPoint("pain before a changed set", Side.AT, FLAG_AT),
            *(CutPoint(fact, Side.AT, FLAG_AT) for fact in (*flagged, *throwing)),
            *(CutPoint(fact, Side.OVER, pain.in_throwing) for fact in throwing),
            *(CutPoint(fact, Side.AT, END_AT) for fact in in_work),
            *(CutPoint(fact, Side.OVER, pain.in_exercise) for fact in in_work),
        ]
    )


PITCH_COUNTS = ("pitches before", "pitches yesterday", "pitches today")


def pitch_cuts(plan: Plan, age: int) -> frozenset[CutPoint]:
    """Every cut point of game pitches and innings caught, at `age` in years; none without the line."""
    line = plan.game_pitches
    if line is None:
        return frozenset()
    numbers = {0}
    if has_age(age, line.editions):
        numbers |= {top for row in rows_for(age, line.editions) for top in row.tops}
        numbers |= {most_pitches(age, line.editions) or 0}
    cuts = [CutPoint(fact, Side.OVER, number) for fact in PITCH_COUNTS for number in numbers]
    if "catcher" in line.positions:
        cuts.append(CutPoint("pitches today", Side.AT, PITCHES_THEN_NO_CATCHING))
        cuts.append(CutPoint("innings caught today", Side.AT, INNINGS_THEN_NO_PITCHING))
    return frozenset(cuts)
