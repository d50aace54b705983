"""Four years cost four times a year, and so on: counted in calls of functions, since no test is timed."""

from __future__ import annotations

import cProfile
from collections.abc import Callable

import pytest

from coach.reports.as_html import as_html
from coach.reports.as_text import as_text
from coach.reports.csv_tables import csv_tables
from coach.reports.diary import diary_lines
from coach.reports.facts import Facts, gather
from coach.reports.fhir import bundle
from coach.reports.visit import visit_page
from tests.reports import made_up


def years(count: int) -> Facts:
    days = 365 * count
    why = ("prog.two_for_two", "up", "Reach-across row: One step up in reps.")
    sats = [
        made_up.sat(
            n, made_up.stop(n)._replace(number=n) if n % 91 == 0 else None, decisions=(why,)
        )
        for n in range(days)
        if n % 7 in {0, 2, 4}
    ]
    return made_up.facts(*sats, last=days - 1)


def calls(work: Callable[[Facts], object], facts: Facts) -> int:
    profile = cProfile.Profile()
    profile.runcall(work, facts)
    profile.create_stats()
    return sum(entry[1] for entry in profile.stats.values())


WORK: dict[str, Callable[[Facts], object]] = {
    "gather": lambda f: gather(f.bound, f.recorded, f.since, f.until),
    "page": lambda f: as_html(visit_page(f)),
    "twin": lambda f: as_text(visit_page(f)),
    "diary": lambda f: diary_lines(f, plain=False),
    "tables": csv_tables,
    "health record": bundle,
}


@pytest.mark.parametrize("name", WORK)
def test_four_years_cost_four_times_one_year(name: str) -> None:
    one, four = (calls(WORK[name], years(count)) for count in (1, 4))
    assert one > 250
    assert four <= 4.4 * one
