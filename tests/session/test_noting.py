"""A new plan version is told in plain words; a next phase is spoken of at the visit alone."""

from __future__ import annotations

import pytest

from coach.model import program as nouns
from coach.model.history import History
from coach.model.program import Phase
from coach.session.brief import Brief
from coach.session.noting import new_version
from tests.session.invented import HERE, MONDAY, OUT, ROW, asked_lately, axis, bound, prescription
from tests.session.talking import TO_THE_FIRST_SET, talk
from tests.session.test_ladders import after, climbing

FEWER = prescription(OUT, sets=axis(2), reps=axis(8, 12))


def under_version_2(*doses: object, **change: object) -> Brief:
    """A brief under version 2 of a plan whose first version was trained two days ago."""
    kept = bound(version=2, **change)
    if doses:
        names = {d.exercise for d in doses}  # type: ignore[attr-defined]
        rest = tuple(d for d in kept.plan.doses if d.exercise not in names)
        kept = kept._replace(plan=kept.plan._replace(doses=(*doses, *rest)))  # type: ignore[arg-type]
    return Brief(kept, asked_lately()._replace(records=(after("good"),)), MONDAY)


def told(brief: Brief) -> str:
    """What the first list under the new version says."""
    day = talk(brief, "yes", TO_THE_FIRST_SET[0])
    while not day.now.offers:
        day = day.say("none" if day.name == "screen" else "no")
    return day.words


def test_what_a_new_version_changes_is_told_with_the_list() -> None:
    words = told(under_version_2(FEWER))
    assert "Your plan has a new version." in words
    assert "It changes: side-lying turn out (sets, reps)." in words


def test_a_new_version_that_changes_no_set_says_so() -> None:
    records = (after("good"),)
    same = climbing(records, version=2)
    decision = new_version(same)
    assert decision is not None
    assert "New in it: wall hold." in decision.why
    assert "It changes" not in decision.why


def test_an_exercise_that_is_new_or_gone_is_named() -> None:
    kept = bound(version=2)
    phases = (Phase("build", (OUT.name, "wall hold"), (), "", HERE),)
    program = kept.program._replace(phases=phases)
    history = asked_lately()._replace(records=(after("good"),))
    decision = new_version(Brief(kept._replace(program=program), history, MONDAY))
    assert decision is not None
    assert "New in it: wall hold." in decision.why
    assert f"No longer in it: {ROW.name}." in decision.why


@pytest.mark.parametrize("history", [asked_lately(), History()])
def test_under_the_same_version_nothing_is_told(history: History) -> None:
    assert new_version(Brief(bound(), history, MONDAY)) is None


# ---------------------------------------------------------------- the next phase


def with_next_phase(weeks: float, *notes: str) -> Brief:
    """The plan in its eighth day; the next phase asks for some weeks in this one."""
    kept = bound()
    asks = nouns.Test("weeks in phase", "at least", (weeks,))
    later = Phase("prepare", (OUT.name,), (asks,), "A quick, clean swing.", HERE)
    program = kept.program._replace(phases=(*kept.program.phases, later))
    history = asked_lately()._replace(records=(after("good", notes=notes),))
    return Brief(kept._replace(program=program), history, MONDAY)


@pytest.mark.parametrize(("weeks", "noted"), [(1.0, True), (2.0, False)])
def test_a_phase_whose_diary_part_is_met_is_noted_for_the_visit(weeks: float, noted: bool) -> None:
    day = talk(with_next_phase(weeks), *TO_THE_FIRST_SET)
    notes = " ".join(day.record().notes)
    assert ("the phase prepare" in notes) is noted
    assert ("A quick, clean swing." in notes) is noted


def test_it_is_noted_once_and_never_shown_to_the_athlete() -> None:
    said = "The diary shows what the phase prepare asks for."
    day = talk(with_next_phase(1.0), *TO_THE_FIRST_SET)
    assert "prepare" not in " ".join(line.text for turn in day.turns for line in turn.lines)
    again = talk(with_next_phase(1.0, said), *TO_THE_FIRST_SET)
    assert not again.record().notes


def test_a_note_opens_nothing() -> None:
    day = talk(with_next_phase(1.0), *TO_THE_FIRST_SET)
    assert day.state.brief.plan.phase == "build"
