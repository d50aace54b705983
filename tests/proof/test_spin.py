"""Two explorers with two descriptions of a day know the same steps; a slip in either is seen.

Where SPIN or a C compiler is missing, the tests that need them say so and are skipped.
"""

from __future__ import annotations

import json
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from coach.drivers import prove as proving
from coach.drivers import prove_spin as spin
from coach.drivers.exit_codes import DONE, FINDINGS
from coach.drivers.prove import Options, as_json, as_words
from coach.drivers.prove_days import openings
from coach.drivers.prove_promela import Codes, Tried, UnmodelledError
from coach.drivers.prove_situations import (
    NOT_TOLD,
    TOLD,
    VALUE,
    Walked,
    session_walk,
    situation,
    step,
    unpacked,
)
from coach.drivers.prove_spin import Beside, Look, beside, compared, model_of
from coach.model import program
from coach.model.program import Answers, Place, Script, Step
from coach.rules import pain as pain_rules
from coach.rules import readiness
from coach.session import asides, checking_in, engine, exercise, screening, training
from coach.session.brief import Brief
from coach.session.engine import start
from coach.texts.day_model import FOLDER
from tests.proof.small import bound, day, with_dose
from tests.session.invented import axis

OUT = "side-lying turn out"
AT = Place("scripts/check-in.yaml", 7)
needs_spin = pytest.mark.skipif(bool(spin.why_not()), reason=f"not run: {spin.why_not()}")
NARROW = Options(Path("plan.yaml"))


def tiny() -> Brief:
    return day(with_dose(bound(), OUT, sets=axis(2), range=axis(0)))


def told_by_spin(text: str, folder: Path) -> Walked:
    made = spin.checker_of(text, folder)
    assert made.program is not None, made.trouble
    return spin.spin_walk(made.program)


# What the slips below are looked for with: enough of the check-in for each of them.
SOME = Tried(
    only=(("worst pain", (0.0,)), ("waking pain", (0.0,)), ("throwing today", ("none",))),
)


@pytest.fixture(scope="module", name="ours")
def walked_by_the_session() -> Walked:
    brief = tiny()
    return session_walk(brief, model_of(brief, SOME)[1], SOME)


@pytest.fixture(scope="module", name="theirs")
def walked_by_spin(tmp_path_factory: pytest.TempPathFactory) -> Walked:
    return told_by_spin(model_of(tiny(), SOME)[0], tmp_path_factory.mktemp("spin"))


EVERYTHING = Tried((*Tried().kinds, "maybe"))


@needs_spin
def test_both_know_the_same_situations_and_steps_of_a_tiny_day() -> None:
    found = beside("tiny", tiny(), EVERYTHING)
    assert found.same, found
    assert found.situations == found.spin_situations > 10_000
    assert found.steps > 100_000
    assert found.between > 10_000


@needs_spin
def test_without_a_slip_there_is_no_difference(ours: Walked, theirs: Walked) -> None:
    assert compared("some", ours, theirs, 0.0).same


# ---------------------------------------------------------------- scripts and plan change the model


def scripted() -> Brief:
    """A tiny day with branches that lower, ask, stop and listen for a sign by its name."""
    tests = (
        program.Test("pain now", "between", (2.0, 2.5)),
        program.Test("ache place", "is", ("deep",)),
        program.Test("pain in set", "is", (2.0,)),
        program.Test("sets left", "at least", (1.0,)),
        program.Test("pain after", "at least", (3.0,)),
    )
    check_in = Script(
        "check-in",
        (
            Step("ask", (), AT, fact="pain now"),
            Step("ask", (), AT, fact="sleep last night"),
            Step(
                *("ask also", (0,), AT),
                text="Where?",
                fact="ache place",
                answers=Answers("choice", choices=("top", "deep", "all over")),
            ),
            Step("effect", (0, 1), AT, effect="one set fewer", target=OUT),
            Step("note", (0, 1), AT, text="Deep ache."),
        ),
        tests[:2],
        (1,),
        AT,
    )
    after = Script(
        "after a set",
        (
            Step("ask", (), AT, fact="reps in set"),
            Step("ask", (), AT, fact="pain in set"),
            Step("ask", (), AT, fact="felt in set"),
            Step("effect", (0, 1), AT, effect="shorter range", target="this exercise"),
        ),
        tests[2:4],
        (0, 1),
        AT,
    )
    close = Script(
        "close",
        (
            Step("ask", (), AT, fact="pain after"),
            Step("ask", (0,), AT, fact="numb tingle"),
            Step(
                *("ask also", (0,), AT), text="Worse?", fact="worse", answers=Answers("yes or no")
            ),
            Step("stop", (0, 1), AT, effect="stop", target="same day"),
        ),
        (tests[4], program.Test("worse", "is", ("yes",))),
        (1,),
        AT,
    )
    made = with_dose(bound(), OUT, sets=axis(2))
    return day(made._replace(program=made.program._replace(scripts=(check_in, after, close))))


@needs_spin
def test_both_follow_the_scripts_of_the_program() -> None:
    found = beside("scripted", scripted())
    assert found.same, found
    assert found.situations > 5_000


ALL = Tried((*Tried().kinds, "gear", "break", "maybe"), spin.CALM_BREAKS.only)


@needs_spin
def test_both_know_breaks_missing_gear_and_signs_in_doubt_alike() -> None:
    found = beside("tiny", tiny(), ALL)
    assert found.same, found
    assert found.situations > 5_000


@needs_spin
def test_both_go_from_one_exercise_to_the_next_alike() -> None:
    found = beside(
        "two", day(bound(OUT, "wall hold", "table row")), Tried(("value", "timer"), spin.CALM)
    )
    assert found.same, found
    assert found.situations > 1_000


def sets_since_are_not_counted(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(asides, "sets_ahead", lambda work, _extra: work)


def nothing_is_asked_again_after_an_hour(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(asides, "CLOSE_SCREEN_AFTER_S", 5000)


def a_hold_broken_off_is_held_again(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(training, "back_at_the_set", lambda state: state)


def what_is_not_here_is_done_all_the_same(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(asides, "fewer", lambda state: state)


def the_pain_after_a_break_counts_for_nothing(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(asides, "pain_after_break", lambda s, _v: asides.next_since(s))


BROKEN_OFF = (
    sets_since_are_not_counted,
    nothing_is_asked_again_after_an_hour,
    a_hold_broken_off_is_held_again,
    what_is_not_here_is_done_all_the_same,
    the_pain_after_a_break_counts_for_nothing,
)


@needs_spin
@pytest.mark.parametrize("slip", BROKEN_OFF, ids=[slip.__name__ for slip in BROKEN_OFF])
def test_a_slip_around_breaks_and_gear_is_a_difference(
    slip: Callable[[pytest.MonkeyPatch], None], monkeypatch: pytest.MonkeyPatch
) -> None:
    brief = day(bound("wall hold")) if slip is a_hold_broken_off_is_held_again else tiny()
    slip(monkeypatch)
    kinds = Tried(("value", "timer", "gear", "break"), spin.CALM_BREAKS.only)
    assert not beside("a slip", brief, kinds).same


def a_no_forgets_what_was_unclear(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(asides, "confirmed", later(asides.confirmed, lambda s: s._replace(unclear=0)))


def a_second_doubt_takes_no_safer_answer(patch: pytest.MonkeyPatch) -> None:
    kept = engine.confirm_on_top
    patch.setattr(
        engine,
        "confirm_on_top",
        lambda s, heard, group, asked: kept(s._replace(unclear=0), heard, group, asked),
    )


def a_yes_to_a_sign_goes_on(patch: pytest.MonkeyPatch) -> None:
    kept = asides.confirmed
    patch.setattr(asides, "confirmed", lambda s, _value: kept(s, "no"))


def a_strong_pain_under_a_sign_is_forgotten(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(
        engine,
        "confirm_on_top",
        later(engine.confirm_on_top, lambda s: s._replace(reread=False)),
    )


def the_last_answer_of_a_day_ends_it_under_a_sign(patch: pytest.MonkeyPatch) -> None:
    kept = engine.confirm_on_top

    def ends(state: Any, heard: Any, group: Any, asked: Any) -> Any:
        if state.unclear and asked is not None and not state.aside:
            after = engine.safer_branch(state, asked, "")
            if after.end:
                return after
        return kept(state, heard, group, asked)

    patch.setattr(engine, "confirm_on_top", ends)


IN_DOUBT = (
    a_no_forgets_what_was_unclear,
    a_second_doubt_takes_no_safer_answer,
    a_yes_to_a_sign_goes_on,
    a_strong_pain_under_a_sign_is_forgotten,
    the_last_answer_of_a_day_ends_it_under_a_sign,
)


@needs_spin
def test_a_sign_in_doubt_is_asked_alike_on_a_calm_day() -> None:
    found = beside("tiny", tiny(), spin.CALM_DOUBT)
    assert found.same, found
    assert found.situations > 5_000


@needs_spin
@pytest.mark.parametrize("slip", IN_DOUBT, ids=[slip.__name__ for slip in IN_DOUBT])
def test_a_slip_around_a_sign_in_doubt_is_a_difference(
    slip: Callable[[pytest.MonkeyPatch], None], monkeypatch: pytest.MonkeyPatch
) -> None:
    slip(monkeypatch)
    assert not beside("a slip", tiny(), spin.CALM_DOUBT).same


def test_a_changed_script_and_a_changed_plan_change_the_model() -> None:
    plain = model_of(tiny())[0]
    made = bound()
    stricter = made.plan._replace(pain=made.plan.pain._replace(in_exercise=1.5))
    assert model_of(scripted())[0] != plain
    assert model_of(day(with_dose(made._replace(plan=stricter), OUT, sets=axis(2))))[0] != plain


# ---------------------------------------------------------------- a slip in the session is seen


def later(kept: Callable[..., Any], change: Callable[[Any], Any]) -> Callable[..., Any]:
    return lambda *a, **k: change(kept(*a, **k))


def a_set_too_many(patch: pytest.MonkeyPatch) -> None:
    kept = exercise.set_over
    patch.setattr(
        exercise,
        "set_over",
        lambda w: (
            kept(w)
            if w.set_number < w.dose.sets or w.change
            else exercise.Stepped(w._replace(phase="rest"))
            if w.set_number == w.dose.sets
            else kept(w)
        ),
    )


def the_ceiling_acts_half_a_point_late(patch: pytest.MonkeyPatch) -> None:
    kept = pain_rules.in_set
    patch.setattr(
        pain_rules,
        "in_set",
        lambda pain, ceilings, *rest, **more: kept(
            pain, ceilings._replace(in_exercise=ceilings.in_exercise + 0.5), *rest, **more
        ),
    )


def a_strong_pain_is_not_remembered(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(
        asides, "was_read_back", later(asides.was_read_back, lambda s: s._replace(reread=False))
    )


def a_section_less_is_asked_alone(patch: pytest.MonkeyPatch) -> None:
    kept = screening.alone_by_rule
    patch.setattr(screening, "alone_by_rule", lambda s: kept(s)[:1])


def a_fact_outlives_its_last_reader(patch: pytest.MonkeyPatch) -> None:
    kept = checking_in.what_stays
    patch.setattr(checking_in, "what_stays", lambda s: kept(s)._replace(threw=s.threw))


def a_shorter_short_night(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(readiness, "SHORT_NIGHT_H", 5.75)


def a_sign_is_let_pass(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(engine, "sign_heard", lambda state, *_a, **_k: state)


def the_list_is_not_made_gentle(patch: pytest.MonkeyPatch) -> None:
    patch.setattr(training, "still_allowed", lambda _state, places: (places, ()))


SLIPS: tuple[Callable[[pytest.MonkeyPatch], None], ...] = (
    a_set_too_many,
    the_ceiling_acts_half_a_point_late,
    a_strong_pain_is_not_remembered,
    a_section_less_is_asked_alone,
    a_fact_outlives_its_last_reader,
    a_shorter_short_night,
    a_sign_is_let_pass,
    the_list_is_not_made_gentle,
)


@needs_spin
@pytest.mark.parametrize("slip", SLIPS, ids=[slip.__name__ for slip in SLIPS])
def test_a_slip_in_the_session_is_a_difference(
    slip: Callable[[pytest.MonkeyPatch], None], monkeypatch: pytest.MonkeyPatch, theirs: Walked
) -> None:
    brief = tiny()
    slip(monkeypatch)
    walked = session_walk(brief, model_of(brief, SOME)[1], SOME)
    assert not compared("a slip", walked, theirs, 0.0).same


# ---------------------------------------------------------------- a slip in the model is seen


@needs_spin
@pytest.mark.parametrize(
    ("written", "slipped"),
    [
        ("val >= 24 && val < 32 -> end_the_work()", "val > 24 && val < 32 -> end_the_work()"),
        ("slept_short && d_sets > 2 -> d_sets--", "slept_short && d_sets > 1 -> d_sets--"),
        (":: reread -> stop_with(STRONG_PAIN)", ":: reread -> reread = 0"),
        ("asked = 0; threw = 0; playing = 0;", "asked = 0; playing = 0;"),
    ],
)
def test_a_slip_in_the_model_is_a_difference(
    written: str, slipped: str, ours: Walked, tmp_path: Path
) -> None:
    text = model_of(tiny(), SOME)[0]
    assert written in text
    found = compared("a slip", ours, told_by_spin(text.replace(written, slipped), tmp_path), 0.0)
    assert not found.same
    assert found.trouble or found.first


@needs_spin
@pytest.mark.parametrize(
    ("written", "slipped"),
    [
        ("quoted = 0; unclear = under; under = 0", "quoted = 0; unclear = 0; under = 0"),
        ("if :: unclear > 1 -> n = 1;", "if :: unclear > 2 -> n = 1;"),
        ("(was_read_back || aside == READ_BACK) -> reread = 1", "was_read_back -> reread = 1"),
        ("!stopped && (ended != 0 || (stage", "!stopped && (false || (stage"),
    ],
)
def test_a_slip_in_the_model_of_a_sign_in_doubt_is_a_difference(
    written: str, slipped: str, tmp_path: Path
) -> None:
    brief = tiny()
    text, codes = model_of(brief, spin.CALM_DOUBT)
    assert text.count(written) == 1
    theirs = told_by_spin(text.replace(written, slipped), tmp_path)
    ours = session_walk(brief, codes, spin.CALM_DOUBT)
    assert not compared("a slip", ours, theirs, 0.0).same


@needs_spin
def test_a_dead_end_of_the_model_is_trouble(tmp_path: Path) -> None:
    text = model_of(tiny(), SOME)[0]
    blocked = text.replace(":: GO_ASKED -> phase = HOLDS", ":: GO_ASKED -> false")
    blocked = blocked.replace(":: aside == READ_BACK -> d_step {", ":: false -> d_step {")
    assert "cut short" in told_by_spin(blocked, tmp_path).trouble


# ---------------------------------------------------------------- what a situation is told by


def test_every_variable_of_the_model_that_outlives_a_step_is_told() -> None:
    text = (FOLDER / "1_names.pml").read_text(encoding="utf-8")
    kept = text.split("what a situation is made of", 1)[1].split("within one step only", 1)[0]
    names = [
        name.strip()
        for line in kept.splitlines()
        if line.startswith(("byte ", "int "))
        for name in line.split(";")[0].split(" ", 1)[1].split(",")
    ]
    assert sorted([*names, "t"]) == sorted(TOLD)


def test_what_the_model_has_no_number_for_is_equal_to_nothing() -> None:
    brief = tiny()
    codes = model_of(brief)[1]
    first = start(brief)
    assert NOT_TOLD not in situation(first, codes)
    assert situation(first._replace(foreign=True), codes)[0] == NOT_TOLD
    assert NOT_TOLD in situation(first._replace(aside="fix"), codes)
    assert NOT_TOLD in situation(first._replace(aside="confirm", sign=("", "U02")), codes)
    assert NOT_TOLD in situation(first._replace(stop=("X99", "same day", "")), codes)


def test_a_day_beyond_the_model_is_refused_and_not_called_the_same() -> None:
    brief = tiny()
    brief.wants_up = True
    with pytest.raises(UnmodelledError):
        model_of(brief)
    found = beside("a step up is due", brief)
    assert not found.same
    assert "not modelled" in found.trouble


# ---------------------------------------------------------------- bounds


def test_a_walk_cut_short_is_not_the_same() -> None:
    brief = tiny()
    codes: Codes = model_of(brief)[1]
    cut = session_walk(brief, codes, Tried(), time.monotonic() - 1)
    assert "cut short" in cut.trouble
    assert not compared("cut short", cut, cut, 0.0).same


def test_a_program_that_takes_too_long_is_ended(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(spin, "ONE_RUN_S", 0.2)
    began = time.monotonic()
    code, _said = spin.run(["sleep", "30"], tmp_path)
    assert code != 0
    assert time.monotonic() - began < 10


@pytest.mark.parametrize(
    ("said", "whole"),
    [
        ("depth reached 9, errors: 0 \n", True),
        ("depth reached 9, errors: 1 \n", False),
        ("error: max search depth too small\ndepth reached 9, errors: 0 \n", False),
        ("Warning: Search not completed\ndepth reached 9, errors: 0 \n", False),
        ("pan: out of memory\n", False),
        ("", False),
    ],
)
def test_only_a_whole_walk_counts(said: str, whole: bool) -> None:
    assert spin.whole(said) is whole


# ---------------------------------------------------------------- the report


def test_without_spin_the_search_stands_alone_and_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("shutil.which", lambda _name: None)
    look = spin.look_beside(bound(), 0.0, lambda _line: None)
    assert "no `spin` here" in look.skipped
    report = of_a_closed_day(monkeypatch)
    assert "not asked, there is no `spin` here" in as_words(report, "plan.yaml", look)
    assert json.loads(as_json(report, look))["spin"]["same"] is None
    assert "spin" not in json.loads(as_json(report))


def of_a_closed_day(patch: pytest.MonkeyPatch) -> proving.Report:
    closed = [one for one in openings(bound()) if one[0] == "a stop stands"]
    patch.setattr(proving, "openings", lambda _bound: closed)
    return proving.prove(bound(), NARROW, lambda _whole: None)


def looked(only_session: int) -> Look:
    day_ = compared(
        "an ordinary day",
        Walked(((1,) * len(TOLD),) * only_session, frozenset(), 0.0, 1.0),
        Walked((), frozenset(), 0.0, 1.0),
        0.0,
    )
    return Look("", (day_,))


@pytest.mark.parametrize(("only_session", "code"), [(0, DONE), (1, FINDINGS)])
def test_a_difference_is_a_finding(
    only_session: int,
    code: int,
    monkeypatch: pytest.MonkeyPatch,
    capsys: pytest.CaptureFixture[str],
) -> None:
    report = of_a_closed_day(monkeypatch)
    held = report._replace(promises=dict.fromkeys(report.promises, "holds"), finished=True)
    monkeypatch.setattr(proving, "bound_from", lambda _path: (bound(), ()))
    monkeypatch.setattr(proving, "prove", lambda *_: held)
    monkeypatch.setattr(proving, "look_beside", lambda *_, **__: looked(only_session))
    assert proving.prove_command(Options(Path("plan.yaml"), as_json=True, spin=True)) == code
    assert json.loads(capsys.readouterr().out)["spin"]["same"] is (code == DONE)
    words = as_words(held, "plan.yaml", looked(only_session))
    assert ("NOT shown to be the same" in words) is (code == FINDINGS)
    assert ("1 only the session's, 0 only SPIN's" in words) is (code == FINDINGS)


def test_the_days_are_whole_plans_when_calm_and_one_exercise_where_all_is_tried() -> None:
    days = {day.name: day for day in spin.days_beside(bound(OUT, "wall hold"))}
    assert {f"{day}, {OUT} alone" for day in ("an ordinary day", "the first day")} <= set(days)
    assert len(days["an ordinary day, calm"].brief.stations) == 2
    assert days[f"an ordinary day, {OUT} alone"].tried == Tried()
    assert "break" in days["an ordinary day, wall hold alone, calm, breaks"].tried.kinds
    assert "gear" in days[f"an ordinary day, {OUT} alone, calm, missing gear"].tried.kinds
    assert "maybe" in days[f"an ordinary day, {OUT} alone, calm, a sign in doubt"].tried.kinds
    assert not [name for name in days if name.startswith("a stop stands")]


def in_no_time(patch: pytest.MonkeyPatch) -> None:
    """Every day comes back cut short but the first."""
    patch.setattr(spin, "why_not", lambda: "")
    patch.setattr(
        spin,
        "done",
        lambda _one, count, *_: (
            (n, Beside(f"day {n}", "the session's own walk was cut short" if n else ""))
            for n in range(count)
        ),
    )


@pytest.mark.parametrize("seconds", [0.0, 5.0, 1800.0])
def test_a_usual_look_names_the_days_it_had_no_time_for(
    seconds: float, monkeypatch: pytest.MonkeyPatch
) -> None:
    in_no_time(monkeypatch)
    look = spin.look_beside(bound(), seconds, lambda _line: None)
    assert look.same
    assert not look.cut_short
    assert len(look.left) == len(spin.days_beside(bound())) - 1
    words = "\n".join(spin.as_lines(look, "all of it"))
    assert f"1 of {len(look.left) + 1} days: the same" in words
    assert "not looked at, no time (--spin-whole looks at all): day 1" in words
    assert spin.as_value(look)["not_looked_at"] == look.left


@pytest.mark.parametrize("seconds", [0.0, 5.0])
def test_a_look_at_all_days_is_cut_short_by_a_missing_one(
    seconds: float, monkeypatch: pytest.MonkeyPatch
) -> None:
    in_no_time(monkeypatch)
    look = spin.look_beside(bound(), seconds, lambda _line: None, whole=True)
    assert look.cut_short
    assert not look.same
    assert look.left == ()


@pytest.mark.parametrize(
    ("seconds", "whole", "lasts"),
    [(0.0, False, 120), (1800.0, False, 120), (5.0, False, 5), (1800.0, True, 1800)],
)
def test_a_usual_look_ends_after_two_minutes_or_sooner(
    seconds: float, whole: bool, lasts: float, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(spin, "why_not", lambda: "")
    ends: list[float] = []

    def nothing(_one: object, _count: int, _cores: int, late: float) -> tuple[()]:
        ends.append(late)
        return ()

    monkeypatch.setattr(spin, "done", nothing)
    began = time.monotonic()
    spin.look_beside(bound(), seconds, lambda _line: None, whole=whole)
    assert ends[0] - began - spin.LAST_WORDS_S == pytest.approx(lasts, abs=2)


def test_a_usual_look_that_had_time_for_nothing_shows_nothing(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(spin, "why_not", lambda: "")
    monkeypatch.setattr(spin, "done", lambda *_: ())
    look = spin.look_beside(bound(), 0.0, lambda _line: None)
    assert not look.same
    assert look.days == ()


def test_the_figures_of_search_session_and_spin_stand_in_one_report() -> None:
    a_day = Beside("a day", "", 10, 10, 30, 40, 10, seconds=1.5, spin_seconds=0.2, mb=50.0)
    another = Beside("another", "", 5, 5, 9, 9, seconds=0.5, spin_seconds=0.1, mb=60.0, spin_mb=7.0)
    bad = Beside("a bad one", "not modelled: that", situations=99)
    look = Look("", (a_day, another, bad))
    assert spin.figures(look) == (
        spin.Figures(15, 39, 2.0, 60.0),
        spin.Figures(15, 49, 0.3, 7.0),
    )
    words = "\n".join(spin.as_lines(look, "100 situations, 200 answers, 9 s, 90 MB"))
    assert "search, all its days     100 situations, 200 answers, 9 s, 90 MB" in words
    assert "session, these 2 days   15 situations, 39 steps, 2.0 s, 60.0 MB" in words
    assert "SPIN, the same 2 days   15 situations, 49 steps, 0.3 s, 7.0 MB" in words


def test_nothing_compared_is_not_the_same() -> None:
    assert not Look("", ()).same
    assert not Look("", (Beside("a day", "cut short before this day"),)).same


@pytest.mark.parametrize(
    ("said", "after", "fine"), [(10, 2, True), (10, 3, False), (12, 3, True), (4, 2, False)]
)
def test_an_answer_between_two_others_must_lead_where_the_lower_one_leads(
    said: int, after: int, fine: bool
) -> None:
    ours = {step(1, VALUE, 7, 8, 2), step(1, VALUE, 7, 12, 3)}
    one = step(1, VALUE, 7, said, after)
    between = [one] if one not in ours else []
    assert (not list(spin.out_of_class(between, ours))) is fine


def test_a_step_is_unpacked_as_it_was_packed() -> None:
    parts = (70_000, 6, 300, 1200, 90_000)
    assert unpacked(step(*parts)) == parts


def test_a_look_cut_short_says_so_and_a_difference_outweighs_it() -> None:
    short = Beside("a day", "cut short before this day")
    met = Beside("another day", only_spin=1)
    assert Look("", (short,)).cut_short
    assert not Look("", (short,)).same
    assert not Look("", (short, met)).cut_short
    assert not Look("", (met,)).cut_short
    assert not Look("there is no `spin` here").cut_short
