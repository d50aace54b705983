"""Half a year of screens played through: how many answers come before the first set.

The counts (4 on a good day, 6 after throwing, 8 after a fall; means of 4.0 to 6.3; never over 7; no
section over 7 days) were set here. Answers before set 1: the check-in line, each section asked
alone, the list unless 1 to 5 are all alone, the pain of the warm-up.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator
from datetime import date, timedelta
from itertools import combinations
from typing import Any

import pytest

from coach.model.flags import Section
from coach.rules.red_flags import DueFacts, alone_today, list_today

START = date(2026, 11, 9)
WEEKS = 26
ALL_DAYS = {section: START.isoformat() for section in Section}

Happens = Callable[[int], bool]


def never(_day: int) -> bool:
    return False


def always(_day: int) -> bool:
    return True


def now_and_then(seed: int, odds: float) -> Happens:
    days = random.Random(seed)
    drawn = [days.random() < odds for _ in range(7 * WEEKS)]
    return lambda day: drawn[day]


def answers(alone: tuple[Section, ...]) -> int:
    return 2 + len(alone) + (1 if list_today(alone) else 0)


def facts(today: date, asked: dict[Section, str], **changes: Any) -> DueFacts:
    quiet = DueFacts(today, tuple(asked.items()), *[False] * (len(DueFacts._fields) - 2))
    return quiet._replace(**changes)


def season(
    pattern: tuple[int, ...], threw: Happens, short: Happens, *, surgery: bool = False
) -> Iterator[tuple[int, int]]:
    """For each session after the first day: answers before set 1, longest wait of a section."""
    asked = dict(ALL_DAYS)
    days = [7 * week + weekday for week in range(WEEKS) for weekday in pattern][1:]
    asked = dict.fromkeys(asked, (START + timedelta(days=pattern[0])).isoformat())
    for day in days:
        today = START + timedelta(days=day)
        due = facts(today, asked, threw=threw(day), short_night=short(day), surgery=surgery)
        alone = alone_today(due)
        waited = max((today - date.fromisoformat(asked[s])).days for s in Section)
        asked.update((section, today.isoformat()) for section in alone)
        yield answers(alone), waited


PATTERNS = [p for count in (3, 4, 5, 6) for p in combinations(range(7), count)]
THROWING: dict[str, Happens] = {
    "never throwing": never,
    "always throwing": always,
    "throwing now and then": now_and_then(1, 0.5),
}


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("throwing", THROWING)
def test_half_a_year_stays_inside_the_budget_on_every_weekly_pattern(throwing: str) -> None:
    means = []
    for pattern in PATTERNS:
        counts, waits = zip(*season(pattern, THROWING[throwing], never), strict=True)
        assert max(counts) <= 7, pattern
        assert max(waits) <= 7, pattern
        means.append(sum(counts) / len(counts))
    assert min(means) >= 4.0
    assert max(means) <= 6.35
    print(f"{throwing}: mean {min(means):.2f} to {max(means):.2f} answers")


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("seed", range(5))
def test_short_nights_now_and_then_stay_inside_seven_answers(seed: int) -> None:
    for pattern in PATTERNS:
        threw, short = now_and_then(seed, 0.5), now_and_then(seed + 100, 0.15)
        counts, waits = zip(*season(pattern, threw, short), strict=True)
        assert max(counts) <= 7, pattern
        assert max(waits) <= 7, pattern


@pytest.mark.hazard("H-01")
def test_with_surgery_in_the_plan_a_day_has_at_most_one_answer_more() -> None:
    for pattern in PATTERNS:
        counts, waits = zip(
            *season(pattern, now_and_then(3, 0.5), never, surgery=True), strict=True
        )
        assert max(counts) <= 8, pattern
        assert max(waits) <= 7, pattern


@pytest.mark.hazard("H-01")
def test_six_quiet_sessions_a_week_cost_four_answers_each() -> None:
    counts = [count for count, _ in season((0, 1, 2, 3, 4, 5), never, never)]
    assert set(counts) == {4}


@pytest.mark.hazard("H-01")
def test_three_sessions_a_week_all_after_throwing_cost_6_3_on_average() -> None:
    counts = [count for count, _ in season((0, 2, 4), always, never)]
    assert sum(counts) / len(counts) == pytest.approx(6.3, abs=0.05)


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("why", ["fell", "lifted", "new_plan", "away_7"])
def test_a_fall_or_a_lifted_stop_costs_eight_answers(why: str) -> None:
    today = START + timedelta(days=1)
    assert answers(alone_today(facts(today, ALL_DAYS, **{why: True}))) == 8


@pytest.mark.hazard("H-01")
def test_a_good_day_costs_four_answers_and_one_after_throwing_six() -> None:
    today = START + timedelta(days=1)
    assert answers(alone_today(facts(today, ALL_DAYS))) == 4
    assert answers(alone_today(facts(today, ALL_DAYS, threw=True))) == 6


@pytest.mark.hazard("H-01")
def test_on_irregular_days_every_section_was_asked_within_seven_days_before_a_set() -> None:
    days = random.Random(7)
    for _ in range(200):
        asked: dict[Section, str] = {}
        day = START
        for _ in range(60):
            alone = alone_today(facts(day, asked, threw=days.random() < 0.4))
            asked.update((section, day.isoformat()) for section in alone)
            assert all((day - date.fromisoformat(asked[s])).days < 7 for s in Section)
            day += timedelta(days=days.choice((1, 1, 2, 2, 3, 4, 6)))
