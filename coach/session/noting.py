"""What a new plan version changes for the athlete, and when a next phase may be spoken of.

Law: it tells and notes; it changes no dose and opens nothing. A phase is opened by the clinician
alone, so a proposal goes to the visit and is never shown to the athlete.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.model.decisions import Basis, Decision
from coach.rules import phases
from coach.session.ladders import before_today, last_recorded, rails_of, throws_begin_anew
from coach.session.state import Happening

if TYPE_CHECKING:
    from collections.abc import Callable

    from coach.model.quantities import Dose
    from coach.session.brief import Brief

_AXES: Final[tuple[tuple[str, Callable[[Dose], object]], ...]] = (
    ("sets", lambda dose: dose.sets),
    ("reps", lambda dose: (dose.reps_low, dose.reps_high)),
    ("holds", lambda dose: dose.hold_s),
    ("weight", lambda dose: dose.load),
    ("range", lambda dose: dose.range_step),
    ("form", lambda dose: dose.version_level),
    ("rest", lambda dose: dose.rest_s),
)


def new_version(brief: Brief) -> Decision | None:
    """plan.life: what a new version changes for the exercises done so far; None under the old one.

    Told on the first day under it that has a list. Axes that go on as they were are not named.
    """
    if not brief.new_plan:
        return None
    changed = [words for words in (changes_of(brief, n) for n in names(brief)) if words]
    known = {name for record in brief.history.records for name, _ladder in record.ladders}
    new = [name for name in names(brief) if name not in known]
    gone = [name for name in last_names(brief) if name not in names(brief)]
    parts = (("It changes", changed), ("New in it", new), ("No longer in it", gone))
    told = [f"{lead}: {', '.join(listed)}." for lead, listed in parts if listed]
    told += throws_changed(brief)
    why = " ".join(["Your plan has a new version.", *(told or ["Your sets stay as they were."])])
    return Decision("plan.life", "new version", why, brief.plan.place, Basis.PLAN, "the plan")


def throws_changed(brief: Brief) -> list[str]:
    """That the throwing steps begin again under another clearance, or end; nothing where they go on."""
    thrown = next((r for r in brief.history.records if r.threw is not None), None)
    if thrown is None or thrown.threw is None:
        return []
    if brief.plan.throwing_line is None:
        return ["No throws in it."]
    if not throws_begin_anew(brief, thrown.plan_version, thrown.threw):
        return []
    return [f"Your throws begin at step {brief.plan.throwing_line.from_step}."]


def names(brief: Brief) -> list[str]:
    """Today's exercises by name."""
    return [station.exercise.name for station in brief.stations]


def last_names(brief: Brief) -> list[str]:
    """The exercises of the last session, by name."""
    return [name for name, _ladder in brief.last.ladders] if brief.last else []


def changes_of(brief: Brief, name: str) -> str:
    """`table row (reps, weight)`, or nothing where the dose goes on as it was."""
    recorded = last_recorded(brief, name)
    station = next(s for s in brief.stations if s.exercise.name == name)
    rails = rails_of(brief, station)
    if recorded is None or rails is None:
        return ""
    axes = axes_that_differ(recorded.dose, before_today(brief, name, rails).dose)
    return f"{name} ({', '.join(axes)})" if axes else ""


def axes_that_differ(one: Dose, other: Dose) -> list[str]:
    """The axes on which two doses differ, in plain words."""
    return [words for words, read in _AXES if read(one) != read(other)]


def next_phase_shown(brief: Brief, facts: dict[str, str | float]) -> Happening | None:
    """phase.proposal: a note for the visit once the diary shows all that the next phase asks for."""
    found = phases.proposal(brief.program, brief.plan, facts, brief.today)
    if found is None or found[1].outcome != "propose":
        return None
    waiting, decision = found
    what = f"The diary shows what the phase {waiting.phase} asks for."
    if any(what in note for record in brief.history.records for note in record.notes):
        return None
    locked = f" Locked in it: {', '.join(waiting.locked)}." if waiting.locked else ""
    sees = f" To see: {waiting.clinician_sees}" if waiting.clinician_sees else ""
    return Happening("note", f"{what}{sees}{locked}", decision)
