"""The sample plan moved to today, so that it can be tried on any day.

Law: only dates of an invented plan are moved, all by the same number of days; nothing else changes.
It is never used on a plan that somebody has.
"""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from coach.model.program import Bound


def moved_to(bound: Bound, today: date) -> Bound:
    """`bound` as if its plan had begun on `today`."""
    plan = bound.plan
    by = today - date.fromisoformat(plan.starts)
    phase = plan.phase_opened
    line = plan.throwing_line
    moved = plan._replace(
        starts=_moved(plan.starts, by),
        review_by=_moved(plan.review_by, by),
        phase_opened=phase._replace(day=_moved(phase.day, by)),
        opened=tuple(lock._replace(day=_moved(lock.day, by)) for lock in plan.opened),
        throwing_line=line and line._replace(cleared=_moved(line.cleared, by)),
        surgery=_moved(plan.surgery[:10], by) + plan.surgery[10:]
        if plan.surgery[:4].isdigit()
        else plan.surgery,
    )
    return bound._replace(plan=moved)


def _moved(day: str, by: timedelta) -> str:
    return (date.fromisoformat(day) + by).isoformat()
