"""How prompts are called in scenarios, and what the usual course types at each.

Law: a prompt is known by its name alone, never by its words.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Final

from coach.model.flags import Group
from coach.model.heard import Kind

if TYPE_CHECKING:
    from coach.model.heard import Question
    from coach.model.scenario import Typing
    from coach.model.turns import Ask, Offer

_AFTER_A_SET: Final = re.compile(r"(.+) in set ([0-9]+ of .+)")
# What a course may type for a count: so many clean reps over the top of the dose on offer.
_OVER: Final = {"top of the range": 0, "two over the top": 2}
_ALL_THROWS: Final = "all of them"


def asked_names(ask: Ask) -> tuple[str, ...]:
    """The prompt's own name, then those of the parts that its line gathers."""
    return (ask.name, *(part_name(ask, part) for part in ask.question.parts))


def part_name(ask: Ask, part: Question) -> str:
    """A part's own name: `pain in set 2 of split squat` on the line after that set."""
    found = _AFTER_A_SET.fullmatch(ask.name)
    return f"{part.fact} {found.group(2)}" if found else part.fact


def loose_names(name: str) -> tuple[str, ...]:
    """The names under which a course may speak of a prompt, the closest first."""
    if name.startswith("go for "):
        return (name, "go")
    found = _AFTER_A_SET.fullmatch(name)
    if found:
        return (name, f"{found.group(1)} in set", found.group(1))
    return (name, name.partition(" of ")[0])


def usual_answer(
    name: str,
    question: Question,
    usual: tuple[Typing, ...],
    offer: Offer | None,
    throws: int = 0,
) -> str | None:
    """What the course types at a prompt; None where it says nothing.

    `offer` is the dose on offer, `throws` the throws shown so far.
    """
    said = {typing.prompt: typing.typed for typing in usual}
    all_no = said.pop("screen", "") == "all no"
    for loose in loose_names(name):
        if loose in said:
            return _dosed(said[loose], offer, throws)
    if all_no and is_screen(name, question):
        return "none" if question.kind is Kind.NONE_OR_LIST else "no"
    return None


def is_screen(name: str, question: Question) -> bool:
    """Whether a prompt belongs to the screen for warning signs."""
    if name.startswith("screen ") or question.kind is Kind.NONE_OR_LIST:
        return True
    return name.replace(" ", "_") in {group.value for group in Group}


def _dosed(typed: str, offer: Offer | None, throws: int) -> str | None:
    if typed == _ALL_THROWS:
        return str(throws)
    if typed not in _OVER:
        return typed
    return str(offer.dose.reps_high + _OVER[typed]) if offer is not None else None
