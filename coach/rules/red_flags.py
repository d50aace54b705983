"""The warning signs: which apply, which section is asked alone today, what a yes leads to.

Law: a yes ends the session at its tier and nothing cancels it. What is unknown is asked again or
counts as due; it never spares a question. This file never reads a free answer.
"""

from __future__ import annotations

from datetime import date
from typing import Final, NamedTuple

from coach.model.decisions import Basis, Decision
from coach.model.flags import GROUP_FLAGS, SECTION_GROUPS, Group, Section, Tier
from coach.model.program import Place, Plan
from coach.rules.flag_table import (
    FLAGS,
    SECTION_LIST,
    SECTION_NUMBER,
    SECTION_QUESTIONS,
    Flag,
)

__all__ = [
    "FLAGS",
    "SECTION_LIST",
    "SECTION_NUMBER",
    "SECTION_QUESTIONS",
    "DueFacts",
    "Flag",
    "Person",
    "alone_today",
    "flag_heard",
    "flags_asked",
    "list_today",
    "person_from",
    "stop_for",
]

ADULT_AT_YEARS: Final = (
    18  # set here, to be signed by a clinician (growth plates close at 18 to 21)
)
DUE_AFTER_DAYS: Final = 7  # set here, to be signed by a clinician
AWAY_DAYS: Final = 7  # days missed that open sections 1 to 5; set here, to be signed by a clinician

_UNDER_18_ONLY: Final = ("S10", "B03")
_AFTER_SURGERY_ONLY: Final = ("S03", "S04")
_TIERS: Final = tuple(Tier)

# Who goes first among equals: sections 1 and 2 come last, since throwing asks them anyway. With
# this order no week piles up (see tests/published/test_rules_due.py).
_TIE_ORDER: Final = (
    Section.BODY,
    Section.ILL,
    Section.WEEKLY,
    Section.NIGHT,
    Section.ARM,
    Section.JOINT,
)
_ONE_TO_FIVE: Final = tuple(s for s in Section if s is not Section.WEEKLY)


class Person(NamedTuple):
    """What decides which flags apply: under 18, and surgery in the plan."""

    minor: bool
    surgery: bool


def person_from(plan: Plan, today: date) -> Person:
    """Who the plan is for, on `today` (id stop.minor; set here, to be signed by a clinician).

    `born` holds no day, so the athlete is under 18 through the whole month of the 18th birthday.
    Surgery counts unless the plan says `none`.
    """
    year, month = (int(part) for part in plan.born.split("-")[:2])
    minor = (today.year - ADULT_AT_YEARS, today.month) <= (year, month)
    return Person(minor, plan.surgery != "none")


def _applies(flag: str, person: Person) -> bool:
    if flag in _UNDER_18_ONLY:
        return person.minor
    return person.surgery if flag in _AFTER_SURGERY_ONLY else True


def flags_asked(section: Section, person: Person) -> tuple[str, ...]:
    """The ids asked one by one when `section` is opened, in order, none twice (id stop.screen)."""
    ids = (flag for group in SECTION_GROUPS[section] for flag in GROUP_FLAGS[group])
    return tuple(dict.fromkeys(flag for flag in ids if _applies(flag, person)))


def flag_heard(group: Group, flag: str | None, person: Person) -> str:
    """The flag that a heard group stands for (id stop.listen; ours).

    `flag` if it is one of the group's; else the most urgent that applies to `person`; and if none
    applies, the most urgent of all: a doubt stops, it never spares.
    """
    ids = GROUP_FLAGS[group]
    if flag in ids:
        return str(flag)
    fitting = tuple(one for one in ids if _applies(one, person)) or ids
    return min(fitting, key=lambda one: _TIERS.index(FLAGS[one].tier))


_STOP_WORDS: Final[dict[Tier, str]] = {
    Tier.EMERGENCY_NOW: "You stop and call for help now. This sign can mean an emergency.",
    Tier.SAME_DAY: "You stop for today. Someone must look at this sign the same day.",
    Tier.BEFORE_NEXT_SESSION: "You stop for today. Your clinician hears of this sign first.",
}


def stop_for(flag_id: str, place: Place | None) -> Decision:
    """The stop that a yes to `flag_id` means (id stop.flag); outcome is the tier's value.

    How soon was set here in every row and must be signed by a clinician; `source` says where the
    sign itself was seen. Raises KeyError for an id that is not in the table (our bug).
    """
    flag = FLAGS[flag_id]
    source = f"The sign: {flag.source}. How soon: set here, to be signed by a clinician."
    return Decision("stop.flag", flag.tier.value, _STOP_WORDS[flag.tier], place, Basis.OURS, source)


class DueFacts(NamedTuple):
    """What decides the sections asked alone today; all of it known before the screen opens.

    `asked_alone` pairs a section with the last ISO day it was asked alone. `pain_two_up` means pain
    2 or more above usual; `away_7` means 7 or more days without a session.
    """

    today: date
    asked_alone: tuple[tuple[Section, str], ...]
    first_day: bool
    new_plan: bool
    lifted: bool
    fell: bool
    threw: bool
    short_night: bool
    pain_two_up: bool
    away_7: bool
    surgery: bool


def _triggered(facts: DueFacts) -> frozenset[Section]:
    if facts.first_day:
        return frozenset(Section)
    asked = set(
        called_for(threw=facts.threw, short_night=facts.short_night, pain_two_up=facts.pain_two_up)
    )
    if facts.fell or facts.lifted or facts.new_plan or facts.away_7:
        asked.update(_ONE_TO_FIVE)
    if facts.surgery:
        asked.add(Section.ILL)
    return frozenset(asked)


def _waited_days(section: Section, facts: DueFacts) -> int:
    """Whole days since `section` was asked alone; never asked, or a day ahead, counts as due."""
    days = [date.fromisoformat(day) for name, day in facts.asked_alone if name is section]
    if not days or max(days) > facts.today:
        return 10 * DUE_AFTER_DAYS
    return (facts.today - max(days)).days


def alone_today(facts: DueFacts) -> tuple[Section, ...]:
    """The sections asked alone today, in the order of their numbers (id stop.screen; ours).

    Those a fact of today calls for, and of the others every one that has waited 7 days; if none
    has, the one that has waited longest. At least one is always asked alone.
    """
    asked = _triggered(facts)
    rest = tuple(section for section in _TIE_ORDER if section not in asked)
    due = {section for section in rest if _waited_days(section, facts) >= DUE_AFTER_DAYS}
    if rest and not due:
        due = {max(rest, key=lambda section: _waited_days(section, facts))}
    return tuple(section for section in Section if section in asked or section in due)


def called_for(*, threw: bool, short_night: bool, pain_two_up: bool) -> tuple[Section, ...]:
    """The sections that a fact learned in mid-day asks alone (id stop.screen; ours).

    The same facts as at the opening; what was asked alone before is asked again.
    """
    called: set[Section] = set()
    if threw or pain_two_up:
        called.update((Section.ARM, Section.JOINT))
    if short_night or pain_two_up:
        called.add(Section.NIGHT)
    return tuple(section for section in Section if section in called)


def alone_after_a_break(*, surgery: bool) -> tuple[Section, ...]:
    """The sections asked alone when a break reopens the screen (id checkin.gap; ours).

    All that any fact of a day may call for, whatever was said before the break: nobody saw what
    the arm did meanwhile.
    """
    called = called_for(threw=True, short_night=True, pain_two_up=True)
    ill = {Section.ILL} if surgery else set()
    return tuple(section for section in Section if section in {*called, *ill})


def list_today(alone: tuple[Section, ...]) -> tuple[Section, ...]:
    """The sections that stand in the one list today: 1 to 5 without those asked alone."""
    return tuple(section for section in _ONE_TO_FIVE if section not in alone)
