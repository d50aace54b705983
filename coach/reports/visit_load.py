"""Load figures with their caveats: effort times minutes, by 7 days.

Law: a figure that is not defined or not known is a dash with its reason, never 0. No figure here
opens, closes or changes anything, and the page says so.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.reports.facts import WEEK_DAYS, Facts, weeks
from coach.reports.page import Block, Para, Section, Table
from coach.reports.words import UNKNOWN, counted, number, short_day
from coach.rules.load import (
    CHRONIC_DAYS,
    DIVISOR,
    monotony,
    rise_percent,
    rolling_ratio,
    strain,
    weekly_load,
    weighted_ratio,
)

if TYPE_CHECKING:
    from coach.reports.facts import Day

HEAD: Final = ("7 days from", "Days with a load", "Load (AU)", "Monotony", "Strain (AU)", "Note")
LOAD_MEANS: Final = (
    "Load is effort (0 to 10) times minutes, in arbitrary units (AU), as the athlete gave them "
    "(Foster 1998, 2001). A day without a session counts as 0. Throws are in it only as far as "
    "the minutes hold them."
)
FIGURES_MEAN: Final = (
    f"Monotony is the mean daily load over its standard deviation ({DIVISOR}); strain is load "
    "times monotony. Both are not defined where all 7 days are alike. These figures decide "
    "nothing in Coach; no cut point for a sore shoulder is known to us. Rule load.session."
)
CAVEATS: Final = (LOAD_MEANS, FIGURES_MEAN)


def load(facts: Facts) -> Section:
    """Load, monotony and strain by week; the last 7 days against the last 28."""
    whole = [week for week in weeks(facts) if len(week) == WEEK_DAYS]
    if not whole:
        return Section("Load", (Para("There are no 7 whole days yet, so no figure is given."),))
    rows = tuple(load_row(week) for week in whole)
    blocks: list[Block] = [Table("Load by 7 days", HEAD, rows), *against_28(facts)]
    return Section("Load", (*blocks, *(Para(text, "small") for text in CAVEATS)))


def load_row(week: tuple[Day, ...]) -> tuple[str, ...]:
    """One week; without a figure where a session's effort or minutes are not known."""
    known = tuple(day.load for day in week if day.load is not None)
    first = short_day(week[0].day)
    with_load = str(sum(value > 0 for value in known))
    if len(known) < WEEK_DAYS:
        gone = counted(WEEK_DAYS - len(known), "day")
        note = f"effort or minutes not known on {gone}"
        return (first, with_load, UNKNOWN, UNKNOWN, UNKNOWN, note)
    same = monotony(known)
    note = "not defined: all days alike" if same is None else UNKNOWN
    figures = (number(weekly_load(known), 0), number(same), number(strain(known), 0))
    return (first, with_load, *figures, note)


def against_28(facts: Facts) -> list[Block]:
    """The last 7 days over the last 28, where all 28 are known."""
    daily = tuple(day.load for day in facts.all_days)
    known = tuple(value for value in daily if value is not None)
    if len(known) < len(daily):
        return []
    ratio = rolling_ratio(known)
    if ratio is None:
        return []
    words = f"Mean load of the last 7 days over that of the last 28: {number(ratio)}."
    return [
        Para(f"{words} The longer run holds the shorter. A figure only, never a gate.", "small"),
        Para(
            f"The same by weighted means: {number(weighted_ratio(known))}. Newer days weigh more; "
            "it begins with the first day's load (Williams 2017).",
            "small",
        ),
        *against_the_month(known),
    ]


def against_the_month(daily: tuple[float, ...]) -> list[Block]:
    """The last 7 days against the mean of the 4 weeks before them, where those are recorded."""
    if len(daily) < CHRONIC_DAYS + WEEK_DAYS:
        return []
    newest = [sum(daily[at - WEEK_DAYS : at]) for at in range(len(daily), 0, -WEEK_DAYS)][:5]
    percent = rise_percent(newest[0], tuple(newest[1:]))
    if percent is None:
        return []
    way = "above" if percent >= 0 else "below"
    words = f"The last 7 days lie {number(abs(percent), 0)} % {way} the mean of the 4 weeks before."
    study = (
        "In one study of healthy young handball players a rise of over 60 % in hours of play went "
        "with more shoulder injuries (Moller 2017). This is another load; a note only, never a gate."
    )
    return [Para(f"{words} {study}", "small")]
