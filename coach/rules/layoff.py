"""Days without a session: how many, and what they mean for the next dose.

Law: a day without a session is a rest day with load 0, never a missing value, and a gap only lowers
or hands over to the clinician.
"""

from __future__ import annotations

from datetime import date, timedelta
from typing import Final

from coach.model.decisions import Basis, Decision

STEP_DOWN_FROM_DAYS: Final = 7  # set here, to be signed by a clinician
FIRST_STEP_FROM_DAYS: Final = 14  # set here, to be signed by a clinician
CONTACT_FROM_DAYS: Final = 28  # set here, to be signed by a clinician

_OURS: Final = "set here, to be signed by a clinician"


def days_missed(last_day: date, today: date) -> int:
    """Whole calendar days with no session between two sessions (id checkin.gap; set here).

    The days of the sessions do not count; a last day that is ahead of today counts 0.
    """
    return max(0, (today - last_day).days - 1)


def gap(missed: int) -> Decision:
    """What `missed` days mean (id layoff.gap): none, one step down, first step, contact.

    7 to 13: every ladder one step down; 14 to 27: the phase's first step; 28 or more: the clinician
    is asked first. Source: set here; the plan may set it otherwise.
    """

    def decided(outcome: str, why: str) -> Decision:
        return Decision("layoff.gap", outcome, why, basis=Basis.OURS, source=_OURS)

    if missed >= CONTACT_FROM_DAYS:
        why = f"Your clinician hears first. There were {CONTACT_FROM_DAYS} or more days off."
        return decided("contact", why)
    if missed >= FIRST_STEP_FROM_DAYS:
        why = f"You begin at the first step. There were {FIRST_STEP_FROM_DAYS} or more days off."
        return decided("first step", why)
    if missed >= STEP_DOWN_FROM_DAYS:
        why = f"One step lower today. There were {STEP_DOWN_FROM_DAYS} or more days off."
        return decided("one step down", why)
    return decided("none", "Nothing changes for days off.")


def loads_by_day(
    loads: tuple[tuple[str, float], ...], first: date, last: date
) -> tuple[float, ...]:
    """One load for each day from `first` to `last`: sessions of a day added, a day without is 0.

    `loads` pairs an ISO day with a session's load; days outside are left out.
    """
    days = (last - first).days + 1
    sums = dict.fromkeys(((first + timedelta(days=n)).isoformat() for n in range(days)), 0.0)
    for day, load in loads:
        if day in sums:
            sums[day] += load
    return tuple(sums.values())
