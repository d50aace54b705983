"""Several diaries on one page: who needs the clinician first, and where each one's page is.

Law: a closed plan stands before everything, then what waits, most of it first; a diary that could
not be read is named, never left out. It repeats what the pages say and adds no judgement.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

from coach.reports.facts import Facts, highest, open_hold
from coach.reports.page import Block, Link, Page, Para, Section, Table
from coach.reports.visit import INVENTED, SECTIONS
from coach.reports.words import UNKNOWN, counted, day_words, number, own, short_day

if TYPE_CHECKING:
    from coach.reports.page import Section as Part

HEAD: Final = (
    "Who",
    "Plan",
    "Waits for you",
    "Last entry",
    "Days trained of the last 7",
    "Highest pain in 7 days (0-10)",
    "Review by",
)


class Visitor(NamedTuple):
    """One diary: its facts, what its file was called, and the file of its page."""

    facts: Facts
    source: str
    page_file: str = ""


def overview_page(
    visitors: list[Visitor], unread: list[tuple[str, str]], *, invented: bool = False
) -> Page:
    """The overview. `unread` pairs a file's name with why it could not be read."""
    blocks: list[Block] = []
    for visitor in in_order(visitors):
        blocks += who_block(visitor)
    needs = Section("Who needs you first", tuple(blocks) or (Para("No diary could be read."),))
    table = Table("At a glance", HEAD, tuple(row(visitor) for visitor in in_order(visitors)))
    glance = Section("At a glance", (table,))
    gone = Section(
        "Could not be read",
        tuple(Para(f"{own(name)}: {own(why)}", "need") for name, why in unread),
    )
    sections = (needs, *((glance,) if visitors else ()), *((gone,) if unread else ()))
    lead = ((INVENTED,) if invented else ()) + (
        f"{counted(len(visitors), 'diary', 'diaries')} read.",
    )
    return Page("Visits", lead, sections, invented)


def in_order(visitors: list[Visitor]) -> list[Visitor]:
    """Closed plans first, then by how much waits, then by the review date, then by name."""

    def key(visitor: Visitor) -> tuple[object, ...]:
        plan = visitor.facts.bound.plan
        return (
            how_open(visitor.facts),
            -len(waiting(visitor.facts)),
            plan.review_by,
            plan.initials,
            visitor.source,
        )

    return sorted(visitors, key=key)


def how_open(facts: Facts) -> int:
    """0 the plan is closed, 1 that is not known since a part cannot be read, 2 it is open."""
    if open_hold(facts.recorded) is not None:
        return 0
    return 1 if facts.recorded.damage else 2


def waiting(facts: Facts) -> list[str]:
    """What the page's first section marks as waiting for the clinician."""
    first: Part = SECTIONS[0](facts)
    return [b.text for b in first.blocks if isinstance(b, Para) and b.kind == "need"]


def who_block(visitor: Visitor) -> list[Block]:
    """One athlete: what waits, and the link to the page."""
    plan = visitor.facts.bound.plan
    name = f"{own(plan.initials)}, {own(plan.side)} arm ({own(visitor.source)})"
    waits = waiting(visitor.facts)
    blocks: list[Block] = [Para(f"{name}: {text}", "need") for text in waits]
    blocks = blocks or [Para(f"{name}: nothing waits for you.")]
    if visitor.page_file:
        blocks.append(
            Link(f"The page of {own(plan.initials)} ({own(visitor.source)})", visitor.page_file)
        )
    return blocks


def row(visitor: Visitor) -> tuple[str, ...]:
    """One athlete in a row."""
    facts = visitor.facts
    plan = facts.bound.plan
    week = facts.all_days[-7:]
    entries = [day.day for day in facts.all_days if day.sessions]
    closed = ("closed", "not known", "open")[how_open(facts)]
    pains = (pain for day in week for pain in (day.waking, day.rest, day.in_set, day.after))
    return (
        f"{own(plan.initials)} ({own(visitor.source)})",
        closed,
        str(len(waiting(facts))),
        short_day(entries[-1]) if entries else UNKNOWN,
        str(sum(day.trained for day in week)),
        number(highest(pains)),
        day_words(plan.review_by),
    )


def page_name(place: int, facts: Facts) -> str:
    """A plain file name for one athlete's page: `02-d-o.html`."""
    initials = facts.bound.plan.initials.lower()
    plain = "".join(c if c.isascii() and c.isalnum() else " " for c in initials)
    return f"{place:02d}-{'-'.join(plain.split()) or 'athlete'}.html"
