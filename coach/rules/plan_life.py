"""Whether the plan is in force today, and whether the clock can be believed.

Law: before its start, after its review day, or with a clock that runs behind the diary there is no
session. Nothing here is softened by an answer.
"""

from __future__ import annotations

from datetime import UTC, date, datetime
from typing import Final

from coach.model.decisions import Basis, Decision
from coach.model.program import Place, Plan

_SOURCE: Final = "set here, to be signed by a clinician"


def _life(outcome: str, why: str, place: Place) -> Decision:
    return Decision("plan.life", outcome, why, place, Basis.OURS, _SOURCE)


def plan_life(plan: Plan, today: date) -> Decision:
    """Whether `plan` is in force on `today` (id plan.life; ours): may, not yet, over.

    The review day itself still counts; the day after does not. A phase opened on a day to come is
    not open yet.
    """
    if today < date.fromisoformat(plan.starts):
        return _life("not yet", "No session today. Your plan has not begun.", plan.runs_place)
    if today > date.fromisoformat(plan.review_by):
        why = "No session today. Your plan is past its review day."
        return _life("over", why, plan.runs_place)
    if date.fromisoformat(plan.phase_opened.day) > today:
        why = "No session today. Your phase opens on a later day."
        return _life("not yet", why, plan.phase_opened.place)
    return _life("may", "Your plan is in force today.", plan.runs_place)


def clock_back(last_at: str, opened_at: datetime) -> Decision:
    """Whether the clock runs behind the diary (id plan.life; ours): `may` or `clock back`.

    `last_at` is the ISO instant of the newest record ('' for an empty diary); `opened_at` carries
    its UTC offset. An instant that cannot be read, or has no offset, counts as clock back.
    """
    trouble = Decision(
        "plan.life",
        "clock back",
        "No session now. The clock is behind your diary. Set the date and time.",
        basis=Basis.OURS,
        source=_SOURCE,
    )
    if not last_at:
        return trouble._replace(outcome="may", why="Your diary is empty.")
    try:
        last = datetime.fromisoformat(last_at)
    except ValueError:
        return trouble
    if last.tzinfo is None or opened_at.tzinfo is None:
        return trouble
    if opened_at.astimezone(UTC) < last.astimezone(UTC):
        return trouble
    return trouble._replace(outcome="may", why="The clock is ahead of your diary.")
