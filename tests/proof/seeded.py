"""Faults planted in rules and session, two or more for each promise, to be caught by its check.

Each is a function that plants the fault by `patch.setattr` and gives the day to search, the facts
whose answers are all tried, and the kinds of answers. The table at the end says how long the
shortest conversation is that shows each, or why none can.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, NamedTuple

import pytest

from coach.model.history import History, Hold
from coach.model.program import Answers, Opened, Place, Script, Step, Test
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
    scripts,
    showing,
    today,
    training,
)
from coach.session.brief import Brief
from tests.proof.small import bound, day, with_dose
from tests.session.invented import HERE, asked_lately, axis, day_before

OUT = "side-lying turn out"
AT = Place("scripts/close.yaml", 7)
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
    patch.setattr(opening, "opened", lambda brief: kept(_Blind(brief)))  # type: ignore[arg-type]
    return Plant(day(history=asked_lately()._replace(hold=hold)))


class _Blind:
    """A day that does not know of the stop."""

    def __init__(self, brief: Brief) -> None:
        self.brief = brief

    def __getattr__(self, name: str) -> Any:
        found = getattr(self.brief, name)
        return found._replace(hold=None) if name == "history" else found


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


# ---------------------------------------------------------------- P9


def a_branch_never_opens(patch: Patch) -> Plant:
    patch.setattr(Test, "holds", lambda _test, _value: False)
    note = Step("note", (0,), AT, text="Sore at the end.")
    return Plant(closing(note, tests=(Test("pain after", "at least", (3.0,)),)), ("pain after",))


def an_own_question_is_never_asked(patch: Patch) -> Plant:
    kept = scripts.asked_today
    patch.setattr(
        scripts,
        "asked_today",
        lambda state, step, due: step.kind != "ask also" and kept(state, step, due),
    )
    sore = Step("ask also", (), AT, text="Sore?", fact="sore", answers=Answers("yes or no"))
    return Plant(closing(sore))


def closing(*steps: Step, tests: tuple[Test, ...] = ()) -> Brief:
    """A day of the small plan whose program has more to say at the close."""
    made = bound()
    script = Script("close", (Step("ask", (), AT, fact="pain after"), *steps), tests, (), AT)
    return day(made._replace(program=made.program._replace(scripts=(script,))))


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


# ---------------------------------------------------------------- the table


class Seed(NamedTuple):
    """A planted fault: its promise, and how many answers its shortest conversation takes.

    `why` says why no conversation shows it, where none can.
    """

    promise: str
    plant: Callable[[Patch], Plant]
    answers: int = 0
    why: str = ""


AT_ONCE = "It shows before the first answer."
ROUND = "A circle has no last answer; the search names the place where the talk goes round."
UNREACHED = "What is never reached is in no conversation; the search names the line."
HIDDEN = "Nothing shown changes; the search names a comparison that no rule declares."

SEEDS = (
    Seed("P1", a_sure_sign_is_let_pass, 1),
    Seed("P1", a_start_overlooks_the_stop, 0, AT_ONCE),
    Seed("P1", a_yes_to_a_sign_goes_on, 3),
    Seed("P2", the_last_gate_is_dropped, 3),
    Seed("P2", the_cap_on_exercises_is_dropped, 3),
    Seed("P2", a_full_week_is_open, 3),
    Seed("P3", a_lock_is_open, 3),
    Seed("P3", an_opening_without_a_person_counts, 3),
    Seed("P4", the_next_set_stays_the_same, 6),
    Seed("P4", a_shorter_range_is_as_long, 7),
    Seed("P5", an_opening_with_a_set_more, 3),
    Seed("P5", an_opening_with_more_range, 3),
    Seed("P6", the_list_is_not_asked, 2),
    Seed("P6", a_section_that_waited_is_not_asked_alone, 3),
    Seed("P6", a_set_is_shown_during_the_screen, 6),
    Seed("P7", a_section_is_asked_again_and_again, 0, ROUND),
    Seed("P7", a_strong_pain_is_asked_for_ever, 0, ROUND),
    Seed("P8", stop_is_overheard, 1),
    Seed("P8", stop_ends_one_exercise_only, 7),
    Seed("P9", a_branch_never_opens, 0, UNREACHED),
    Seed("P9", an_own_question_is_never_asked, 0, UNREACHED),
    Seed("P10", unclear_sleep_is_long, 4),
    Seed("P10", unclear_pain_is_none, 5),
    Seed("P10", unclear_is_not_asked_again, 2),
    Seed("P11", why_says_nothing, 1),
    Seed("P11", a_decision_without_a_source, 1),
    Seed("P12", the_other_side_on_the_line, 3),
    Seed("P12", the_other_side_in_the_offer, 4),
    Seed("P13", every_correction_is_free, 7),
    Seed("P13", a_correction_brings_exercises_back, 7),
    Seed("P14", a_break_gives_the_holds_again, 12),
    Seed("P14", one_set_too_many, 11),
    Seed("P15", a_hidden_number_in_a_set, 0, HIDDEN),
    Seed("P15", a_shorter_short_night, 0, HIDDEN),
    Seed("P15", a_ceiling_that_acts_at_its_number, 0, HIDDEN),
)
SHOWN = tuple(seed for seed in SEEDS if not seed.why)
