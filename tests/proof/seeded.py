"""Faults planted in rules and session, two or more for each promise, to be caught by its check.

Each is a function that plants the fault by `patch.setattr` and gives the day to search, the facts
whose answers are all tried, and the kinds of answers.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, NamedTuple

import pytest

from coach.model.heard import Action
from coach.model.history import History, Hold
from coach.model.program import Opened
from coach.model.turns import Line
from coach.rules import dosing, limits, readiness, red_flags
from coach.rules import pain as pain_rules
from coach.session import (
    asides,
    checking_in,
    commands,
    engine,
    exercise,
    opening,
    questions,
    screening,
    showing,
    today,
    training,
)
from coach.session.brief import Brief
from tests.proof.small import bound, day, with_dose
from tests.session.invented import HERE, MONDAY, asked_lately, axis, day_before

OUT = "side-lying turn out"
Patch = pytest.MonkeyPatch


class Plant(NamedTuple):
    """Where to look for a planted fault."""

    brief: Brief
    wide: tuple[str, ...] = ()
    kinds: str = "value timer"


def after(kept: Callable[..., Any], change: Callable[[Any], Any]) -> Callable[..., Any]:
    """A function with its result changed."""
    return lambda *a, **k: change(kept(*a, **k))


# ---------------------------------------------------------------- P1


def a_sure_sign_is_let_pass(patch: Patch) -> Plant:
    patch.setattr(engine, "sign_heard", lambda state, *_a, **_k: state)
    return Plant(day(), kinds="value timer sign")


def a_start_overlooks_the_stop(patch: Patch) -> Plant:
    hold = Hold(1, "S08", "same day", "numb_tingle", "numb", "2026-11-08", "", 1)
    kept = opening.opened

    def opened(brief: Brief) -> Any:
        brief.history = brief.history._replace(hold=None)
        return kept(brief)

    patch.setattr(opening, "opened", opened)
    brief = day(history=asked_lately()._replace(hold=hold))
    return Plant(brief)


def a_yes_to_a_sign_goes_on(patch: Patch) -> Plant:
    kept = screening.flag_answered
    patch.setattr(screening, "flag_answered", lambda s, section, _v: kept(s, section, "no"))
    return Plant(day(), ("all",))


# ---------------------------------------------------------------- P2


def the_last_gate_is_dropped(patch: Patch) -> Plant:
    for room in (today, exercise):
        patch.setattr(room, "limits", _Limits(gate=lambda dose, *_: dose))
    patch.setattr(dosing, "_capped", lambda line: line.opening)
    three = axis(3)._replace(cap=2)
    return Plant(day(with_dose(bound(), OUT, sets=three)))


def the_cap_on_exercises_is_dropped(patch: Patch) -> Plant:
    patch.setattr(today, "within_limits", lambda _state, places, _reasons: places)
    made = bound(OUT, "wall hold")
    few = made.plan.limits._replace(exercises=1)
    return Plant(day(made._replace(plan=made.plan._replace(limits=few))))


def a_full_week_is_open(patch: Patch) -> Plant:
    patch.setattr(
        readiness, "week_full", after(readiness.week_full, lambda d: d._replace(outcome="open"))
    )
    made = bound()
    one = made.plan.limits._replace(sessions_a_week=1)
    return Plant(day(made._replace(plan=made.plan._replace(limits=one))))


class _Limits:
    """The last gate with one of its functions changed."""

    def __init__(self, **change: Callable[..., Any]) -> None:
        self.change = change

    def __getattr__(self, name: str) -> Any:
        return self.change.get(name) or getattr(limits, name)


# ---------------------------------------------------------------- P3


def _overhead(**change: object) -> Brief:
    made = bound(**change)
    exercises = tuple(
        e._replace(family="overhead") if e.name == OUT else e for e in made.program.exercises
    )
    return day(made._replace(program=made.program._replace(exercises=exercises)))


def a_lock_is_open(patch: Patch) -> Plant:
    patch.setattr(limits, "locked", after(limits.locked, lambda d: d._replace(outcome="open")))
    return Plant(_overhead())


def an_opening_without_a_person_counts(patch: Patch) -> Plant:
    patch.setattr(limits, "_is_opened", lambda opened, made, _day: opened.what == made.family)
    return Plant(_overhead(opened=(Opened("overhead", "2026-11-02", "", HERE),)))


# ---------------------------------------------------------------- P4


def the_next_set_stays_the_same(patch: Patch) -> Plant:
    patch.setattr(
        exercise,
        "rest_over",
        lambda work, _s: exercise.Stepped(
            exercise.at_the_set(work._replace(set_number=work.set_number + 1, change=""))
        ),
    )
    return Plant(day(), ("pain in set",))


def a_shorter_range_is_as_long(patch: Patch) -> Plant:
    patch.setattr(exercise, "changed", lambda dose, _change, _station: dose)
    return Plant(day(), ("pain in set",))


# ---------------------------------------------------------------- P5


def an_opening_with_a_set_more(patch: Patch) -> Plant:
    kept = dosing.opening_dose
    patch.setattr(dosing, "opening_dose", after(kept, lambda d: d._replace(sets=d.sets + 1)))
    return Plant(day(with_dose(bound(), OUT, sets=axis(2)._replace(cap=3))))


def an_opening_with_more_range(patch: Patch) -> Plant:
    kept = dosing.opening_dose

    def wider(dose: Any) -> Any:
        return dose._replace(range_index=1, range_step="all the way") if dose.range_step else dose

    patch.setattr(dosing, "opening_dose", after(kept, wider))
    return Plant(day(with_dose(bound(), OUT, range=axis(0)._replace(cap=1))))


# ---------------------------------------------------------------- P6


def the_list_is_not_asked(patch: Patch) -> Plant:
    patch.setattr(red_flags, "list_today", lambda _alone: ())
    return Plant(day())


def a_section_that_waited_is_not_asked_alone(patch: Patch) -> Plant:
    patch.setattr(red_flags, "alone_today", after(red_flags.alone_today, lambda s: s[:1]))
    return Plant(day(history=History((day_before(),))))


def a_set_is_shown_during_the_screen(patch: Patch) -> Plant:
    kept = showing.what_is_said
    patch.setattr(
        showing,
        "what_is_said",
        lambda s, ask: (
            showing.work_lines(s, s.work, ask) if s.work and not s.aside else kept(s, ask)
        ),
    )
    return Plant(day(), kinds="value timer break")


# ---------------------------------------------------------------- P7


def a_section_is_asked_again_and_again(patch: Patch) -> Plant:
    patch.setattr(screening, "asked_alone", lambda state, _section: state)
    return Plant(day())


def a_strong_pain_is_asked_for_ever(patch: Patch) -> Plant:
    kept = checking_in.read_back
    for room in (checking_in, training):
        patch.setattr(
            room, "read_back", lambda state, fact: kept(state._replace(reread=False), fact)
        )
    patch.setattr(
        asides, "was_read_back", after(asides.was_read_back, lambda s: s._replace(reread=False))
    )
    return Plant(day(), ("pain now", "read back"))


# ---------------------------------------------------------------- P8


def stop_is_overheard(patch: Patch) -> Plant:
    patch.setattr(asides, "stop_typed", lambda state: state)
    return Plant(day())


def stop_ends_one_exercise_only(patch: Patch) -> Plant:
    kept = asides.stop_typed
    patch.setattr(
        asides,
        "stop_typed",
        lambda s: s if s.work is not None and s.work.phase == "rest" else kept(s),
    )
    return Plant(day())


# ---------------------------------------------------------------- P10


def unclear_sleep_is_long(patch: Patch) -> Plant:
    patch.setitem(questions.WORST, "sleep last night", 16.0)
    return Plant(day(), ("sleep last night",), "value timer unclear")


def unclear_pain_is_none(patch: Patch) -> Plant:
    patch.setitem(questions.WORST, "pain in warm-up", 0.0)
    return Plant(day(), ("pain in warm-up",), "value timer unclear")


def unclear_is_not_asked_again(patch: Patch) -> Plant:
    kept = engine.unclear
    patch.setattr(
        engine, "unclear", lambda s, event, asked: kept(s._replace(unclear=1), event, asked)
    )
    return Plant(day(), ("screen ill", "screen arm"), "value timer unclear")


# ---------------------------------------------------------------- P11


def why_says_nothing(patch: Patch) -> Plant:
    patch.setattr(commands, "why_lines", lambda _s, **_code: (Line("say", "So it is."),))
    return Plant(day())


def a_decision_without_a_source(patch: Patch) -> Plant:
    patch.setattr(
        pain_rules, "to_start", after(pain_rules.to_start, lambda d: d._replace(source=""))
    )
    return Plant(day(), ("pain now",))


# ---------------------------------------------------------------- P12


def the_other_side_on_the_line(patch: Patch) -> Plant:
    patch.setattr(showing, "side_words", lambda _brief, _station: "right arm")
    return Plant(day())


def the_other_side_in_the_offer(patch: Patch) -> Plant:
    patch.setattr(
        showing, "set_offer", after(showing.set_offer, lambda o: o._replace(side="right"))
    )
    return Plant(day())


# ---------------------------------------------------------------- P13


def every_correction_is_free(patch: Patch) -> Plant:
    patch.setattr(asides, "DECIDED", ())
    return Plant(day(), ("sleep last night", "which to fix"), "value timer fix")


def a_correction_brings_exercises_back(patch: Patch) -> Plant:
    patch.setattr(asides, "fewer", lambda s: s._replace(todo=(*s.todo, 0), level=0))
    return Plant(day(bound(OUT, "wall hold")), ("pain now", "which to fix"), "value timer fix")


# ---------------------------------------------------------------- P14


def a_break_gives_the_holds_again(patch: Patch) -> Plant:
    patch.setattr(training, "back_at_the_set", _holds_afresh)
    return Plant(day(bound("wall hold")), kinds="value timer break")


def _holds_afresh(state: Any) -> Any:
    work = state.work
    if work is None or work.phase not in {"ready", "hold"}:
        return state
    return state._replace(work=exercise.at_the_set(work), missing=())


def one_set_too_many(patch: Patch) -> Plant:
    kept = exercise.set_over

    def longer(work: Any) -> Any:
        more = work._replace(dose=work.dose._replace(sets=work.dose.sets + 1))
        return kept(more)._replace(work=kept(more).work._replace(dose=work.dose))

    patch.setattr(exercise, "set_over", longer)
    return Plant(day())


# ---------------------------------------------------------------- P15


def a_hidden_number_in_a_set(patch: Patch) -> Plant:
    kept = pain_rules.in_set

    def stricter(pain: float, *rest: Any, **more: Any) -> Any:
        half = pain > 1.5
        return kept(pain, *rest, **more)._replace(source="common practice" if half else "usual")

    patch.setattr(pain_rules, "in_set", stricter)
    return Plant(day(), ("pain in set",))


def a_shorter_short_night(patch: Patch) -> Plant:
    patch.setattr(readiness, "SHORT_NIGHT_H", 5.75)
    return Plant(day(), ("sleep last night",))


def a_ceiling_that_acts_at_its_number(patch: Patch) -> Plant:
    kept = pain_rules.in_warm_up

    def strict(pain: float, ceilings: Any) -> Any:
        acts = pain >= ceilings.in_exercise
        return kept(pain, ceilings)._replace(source="common practice" if acts else "usual")

    patch.setattr(pain_rules, "in_warm_up", strict)
    return Plant(day(), ("pain in warm-up",))


SEEDED: tuple[tuple[str, Callable[[Patch], Plant]], ...] = (
    ("P1", a_sure_sign_is_let_pass),
    ("P1", a_start_overlooks_the_stop),
    ("P1", a_yes_to_a_sign_goes_on),
    ("P2", the_last_gate_is_dropped),
    ("P2", the_cap_on_exercises_is_dropped),
    ("P2", a_full_week_is_open),
    ("P3", a_lock_is_open),
    ("P3", an_opening_without_a_person_counts),
    ("P4", the_next_set_stays_the_same),
    ("P4", a_shorter_range_is_as_long),
    ("P5", an_opening_with_a_set_more),
    ("P5", an_opening_with_more_range),
    ("P6", the_list_is_not_asked),
    ("P6", a_section_that_waited_is_not_asked_alone),
    ("P6", a_set_is_shown_during_the_screen),
    ("P8", stop_is_overheard),
    ("P8", stop_ends_one_exercise_only),
    ("P10", unclear_sleep_is_long),
    ("P10", unclear_pain_is_none),
    ("P10", unclear_is_not_asked_again),
    ("P11", why_says_nothing),
    ("P11", a_decision_without_a_source),
    ("P12", the_other_side_on_the_line),
    ("P12", the_other_side_in_the_offer),
    ("P13", every_correction_is_free),
    ("P13", a_correction_brings_exercises_back),
    ("P14", a_break_gives_the_holds_again),
    ("P14", one_set_too_many),
)
ROUND = (a_section_is_asked_again_and_again, a_strong_pain_is_asked_for_ever)
HIDDEN = (a_hidden_number_in_a_set, a_shorter_short_night, a_ceiling_that_acts_at_its_number)

_ = (Action, MONDAY)
