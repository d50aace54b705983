"""Which version of an exercise fits: the reason behind the choice the athlete is offered.

Law: only versions the plan allows, of one level, are ever offered; a harder one is earned, never
picked. This file adds no version and no dose; it says why a choice is asked and what it is for.
"""

from __future__ import annotations

from typing import Final

from coach.model.decisions import Basis, Decision
from coach.model.program import Exercise

_PRACTICE: Final = "common practice, no published source"
_STRETCH: Final = "common practice; five holds of 30 s: McClure 2007; no order tested: Tahran 2020"

# Exercise -> rule id, reason, source.
_REASONS: Final[dict[str, tuple[str, str, str]]] = {
    "band diagonal lift": (
        "pick.lift",
        "New to it: let the hips turn along. Still or loaded hips come when your plan says so.",
        _PRACTICE,
    ),
    "cross-body stretch": (
        "pick.stretch",
        "Take the order you feel more behind the shoulder. A pinch in front ends it today.",
        _STRETCH,
    ),
    "reach-across row": (
        "pick.row",
        "Turn the thumb in only as far as nothing pinches. Height comes over months.",
        _PRACTICE,
    ),
    "hip-hinge reach": (
        "pick.reach",
        "Take the one that keeps your back flat. The reach counts, not the bend.",
        _PRACTICE,
    ),
}


def why_pick(exercise: Exercise) -> Decision:
    """Why a version is chosen by feel (ids pick.lift, pick.stretch, pick.row, pick.reach).

    Any other exercise: `pick.version`, by its `fits` lines. Source: common practice.
    """
    plain = ("pick.version", "Take the one whose words fit you. Your plan allows each.", _PRACTICE)
    rule, why, source = _REASONS.get(exercise.name, plain)
    return Decision(rule, "pick", why, exercise.place, Basis.PRACTICE, source)


def after_a_pinch(exercise: Exercise) -> Decision:
    """A pinch in front in the cross-body stretch (id pick.stretch): leave, else go on."""
    if exercise.name == "cross-body stretch":
        why = "We leave the stretch today. A pinch in front goes to your clinician as a note."
        return Decision("pick.stretch", "leave", why, exercise.place, Basis.PRACTICE, _PRACTICE)
    return Decision("pick.version", "go on", "", exercise.place, Basis.PRACTICE, _PRACTICE)
