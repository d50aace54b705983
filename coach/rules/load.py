"""Training load from effort and minutes: figures for the clinician's page, never a gate.

Law: what is undefined is None and is shown as such; no figure here opens, closes or changes a dose,
and none is shown to the athlete as a risk.
"""

from __future__ import annotations

from statistics import mean, stdev
from typing import Final

WEEK_DAYS: Final = 7
CHRONIC_DAYS: Final = 28

# The standard deviation divides by n - 1. The papers do not say which; the choice was made here and
# is printed beside the figure. With n instead, monotony is 8 % higher.
DIVISOR: Final = "n - 1"


def session_load(effort: float, minutes: float) -> float:
    """Session load in arbitrary units (id load.session): effort 0 to 10 times minutes.

    Source: Foster 1998, Foster 2001.
    """
    return effort * minutes


def weekly_load(week: tuple[float, ...]) -> float:
    """The sum of seven daily loads (Foster 1998). ValueError unless there are seven."""
    if len(week) != WEEK_DAYS:
        message = f"a week has {WEEK_DAYS} daily loads"
        raise ValueError(message)
    return sum(week)


def monotony(week: tuple[float, ...]) -> float | None:
    """Mean daily load over its standard deviation, n - 1 (id load.session; Foster 1998).

    None where all seven days are alike: it is undefined then, not high.
    """
    weekly_load(week)
    spread = stdev(week)
    return mean(week) / spread if spread > 0 else None


def strain(week: tuple[float, ...]) -> float | None:
    """Weekly load times monotony (Foster 1998), or None where monotony is undefined."""
    same = monotony(week)
    return None if same is None else weekly_load(week) * same


def rolling_ratio(daily: tuple[float, ...], *, coupled: bool = True) -> float | None:
    """Acute to chronic load, newest day last (Gabbett 2016; Windt 2019). A figure, never a gate.

    Mean of the last 7 days over the mean of the last 28 (coupled) or of the 21 before them. None
    with fewer than 28 days or a chronic load of 0: after three idle weeks it says nothing.
    """
    if len(daily) < CHRONIC_DAYS:
        return None
    window = daily[-CHRONIC_DAYS:]
    chronic = mean(window if coupled else window[:-WEEK_DAYS])
    return mean(window[-WEEK_DAYS:]) / chronic if chronic > 0 else None


def _weighted(daily: tuple[float, ...], days: int) -> float:
    """Exponentially weighted mean, seeded with the first day's load (Williams 2017)."""
    share = 2 / (days + 1)
    value = daily[0]
    for load in daily[1:]:
        value = share * load + (1 - share) * value
    return value


def weighted_ratio(daily: tuple[float, ...]) -> float | None:
    """Acute to chronic load by weighted means of 7 and 28 days (Williams 2017), newest last.

    Seeded with the first day. None with fewer than 28 days or a chronic load of 0.
    """
    if len(daily) < CHRONIC_DAYS:
        return None
    chronic = _weighted(daily, CHRONIC_DAYS)
    return _weighted(daily, WEEK_DAYS) / chronic if chronic > 0 else None


def rise_percent(week: float, four_before: tuple[float, ...]) -> float | None:
    """How far a week lies above the mean of the four weeks before it, in percent; a note only.

    Source: Moller 2017 (hours of youth handball; over 60 % went with more shoulder injuries, the
    interval reaching 1.0). None without four weeks or with a mean of 0.
    """
    if len(four_before) != CHRONIC_DAYS // WEEK_DAYS or mean(four_before) <= 0:
        return None
    return 100 * (week / mean(four_before) - 1)
