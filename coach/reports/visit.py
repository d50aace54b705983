"""The page for the clinician's five minutes: what needs you first, then what happened.

Law: one order of sections, always the same. It tells what was recorded as it was recorded; every
figure names its day, every decision its rule.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.reports.page import Page
from coach.reports.visit_load import load
from coach.reports.visit_needs import needs_you
from coach.reports.visit_rest import every_day, not_done, notes, sleep_and_habits, what_is_doubtful
from coach.reports.visit_week import week_in_a_picture
from coach.reports.visit_work import each_exercise, throwing
from coach.reports.words import day_words, own, titled

if TYPE_CHECKING:
    from coach.reports.facts import Facts

SECTIONS: Final = (
    needs_you,
    week_in_a_picture,
    each_exercise,
    throwing,
    load,
    sleep_and_habits,
    not_done,
    notes,
    what_is_doubtful,
)
INVENTED: Final = "Invented: this athlete, this plan and all that is told here were made up."
MEANT: Final = "A record of what was typed and shown. It finds out nothing and judges nobody."


def visit_page(facts: Facts, *, invented: bool = False) -> Page:
    """The whole page; `invented` marks a made-up diary."""
    plan, program = facts.bound.plan, facts.bound.program
    who = f"{titled(own(plan.side))} arm, {own(plan.sport)}, born {own(plan.born)}."
    named = f"Plan {own(plan.name)} version {plan.version}, program {own(program.name)} "
    named += f"version {program.version}, phase {own(plan.phase)} "
    named += f"since {day_words(plan.phase_opened.day)}."
    marked = (INVENTED,) if invented else ()
    lead = (*marked, f"{every_day(facts)}. {who}", named, MEANT)
    sections = tuple(make(facts) for make in SECTIONS)
    return Page(f"Visit: {own(plan.initials)}", lead, sections, invented)
