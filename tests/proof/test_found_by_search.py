"""What the search once found in the session stays mended."""

from __future__ import annotations

from coach.model.decisions import Refusal
from coach.model.flags import Group
from coach.model.heard import Action, Command, Heard, Value
from coach.model.turns import Resumed, TimerEnded, Typed
from coach.session.brief import Brief
from coach.session.engine import ask_of, start, take, turn
from coach.session.state import State
from coach.session.table import Stage
from tests.session.invented import MONDAY, asked_lately, bound, brief

UNCLEAR = Heard(Action.ASK_AGAIN)
NOTHING = Heard(Action.ACCEPT)
CALM: dict[str, Value] = {
    "pain now": 1.0,
    "waking pain": 0.0,
    "sleep last night": 8.0,
    "throwing yesterday": "none",
    "throwing today": "none",
    "pain in warm-up": 0.0,
    "screen": ("none",),
    "reps in set": 12.0,
    "pain in set": 0.0,
    "which version": "long row",
    "felt in set": "fine",
    "sets since": 0.0,
    "go": "go",
    "holds in set": 2.0,
    "pain after": 1.0,
    "effort": 3.0,
    "minutes": 20.0,
}


def on(state: State, heard: Heard) -> State:
    after = take(state, Typed("-"), heard)
    assert not isinstance(after, Refusal)
    return after


def typed(state: State, **values: Value) -> State:
    named = tuple((name.replace("_", " "), value) for name, value in values.items())
    return on(state, Heard(Action.ACCEPT, named))


def calmly(state: State, until: str) -> State:
    """Calm answers until a prompt's name begins with `until`."""
    for _ in range(200):
        ask = ask_of(state)
        if ask is None:
            after = take(state, TimerEnded(), NOTHING)
            assert not isinstance(after, Refusal)
            state = after
            continue
        if ask.name.startswith(until):
            return state
        parts = ask.question.parts or (ask.question,)
        values = tuple((p.fact, CALM.get(p.fact, "no")) for p in parts)
        state = on(state, Heard(Action.ACCEPT, values))
    raise AssertionError(until)


def test_unclear_three_times_after_something_worse_still_closes_the_plan() -> None:
    state = on(start(brief()), Heard(Action.ACCEPT, command=Command.STOP))
    state = typed(state, stop_for_today="worse")
    for _ in range(3):
        state = on(state, UNCLEAR)
    assert state.stage is Stage.STOPPED
    assert state.stop[0] == "U01"


def hold_brief() -> Brief:
    plan = bound().plan
    holds = tuple(d for d in plan.doses if d.exercise in {"wall hold", "arm swing"})
    return brief(asked_lately(), MONDAY, doses=holds)


def test_a_hold_broken_off_by_a_break_counts_as_done() -> None:
    state = calmly(start(hold_brief()), "go for hold 1")
    state = typed(state, go="go")
    after = take(state, Resumed(400), NOTHING)
    assert not isinstance(after, Refusal)
    state = calmly(after, "pain now")
    state = typed(state, pain_now=1.0)
    ask = ask_of(state)
    assert ask is not None
    assert ask.name.startswith("go for hold 2 in set 1")


def test_a_screen_in_the_middle_of_a_set_shows_the_set_again() -> None:
    state = calmly(start(brief()), "set line in set 1")
    after = take(state, Resumed(4000), NOTHING)
    assert not isinstance(after, Refusal)
    state = after
    while state.stage is not Stage.EXERCISE or state.aside:
        state = calmly(state, ask_of(state).name)  # type: ignore[union-attr]
        ask = ask_of(state)
        assert ask is not None
        state = on(
            state, Heard(Action.ACCEPT, ((ask.question.fact, CALM.get(ask.question.fact, "no")),))
        )
    assert [offer.set_number for offer in turn(state).offers] == [1]


def test_a_denied_sign_is_not_quoted_by_a_later_stop() -> None:
    state = on(start(brief()), Heard(Action.CONFIRM, group=Group.NUMB_TINGLE))
    state = typed(state, heard_right="no")
    assert not state.quoted


def test_a_strong_pain_denied_while_fixing_keeps_the_old_limit_and_asks_again() -> None:
    state = typed(start(brief()), pain_now=5.0, waking_pain=0.0, sleep_last_night=8.0)
    state = typed(state, throwing_yesterday="none")
    state = typed(state, throwing_today="none")
    assert (state.stage, state.level) == (Stage.SCREEN, 2)
    state = on(state, Heard(Action.ACCEPT, command=Command.FIX))
    state = typed(typed(state, which_to_fix="pain now"), pain_now=9.0)
    state = typed(state, read_back="no")
    assert (state.aside, state.fixing, state.level) == ("fix", "pain now", 2)
    assert typed(state, pain_now=1.0).level == 0
    assert typed(state, pain_now=9.0).stage is Stage.STOPPED


def test_a_sign_over_a_read_back_pain_cannot_go_round_for_ever() -> None:
    state = typed(start(brief()), pain_now=9.0)
    for _ in range(2):
        if state.stage is Stage.STOPPED:
            break
        state = on(state, Heard(Action.CONFIRM, group=Group.NUMB_TINGLE))
        state = typed(typed(state, heard_right="no"), pain_now=9.0)
    assert state.stage is Stage.STOPPED


def test_nothing_is_put_right_in_the_middle_of_a_screen_asked_again() -> None:
    state = calmly(start(brief()), "set line in set 2")
    after = take(state, Resumed(4000), NOTHING)
    assert not isinstance(after, Refusal)
    state = typed(calmly(after, "sets since"), sets_since=0.0)
    assert state.stage is Stage.SCREEN
    assert not on(state, Heard(Action.ACCEPT, command=Command.FIX)).aside


def test_a_section_asked_twice_in_a_day_is_kept_once() -> None:
    state = calmly(start(brief()), "set line in set 1")
    asked = state.asked
    for _ in range(3):
        after = take(state, Resumed(4000), NOTHING)
        assert not isinstance(after, Refusal)
        state = calmly(after, "set line in set 1")
    assert state.asked == asked


def test_a_screen_asked_again_shows_no_set() -> None:
    state = calmly(start(brief()), "set line in set 2")
    after = take(state, Resumed(4000), NOTHING)
    assert not isinstance(after, Refusal)
    state = typed(calmly(after, "sets since"), sets_since=0.0)
    assert state.stage is Stage.SCREEN
    assert not turn(state).offers
    assert "work" not in {line.kind for line in turn(state).lines}


def test_a_short_night_put_right_after_the_second_set_leaves_no_third() -> None:
    state = calmly(start(brief()), "set line in set 2")
    state = typed(state, reps_in_set=12.0, pain_in_set=0.0)
    if (ask := ask_of(state)) is not None and ask.name.startswith("felt"):
        state = typed(state, felt_in_set="fine")
    assert state.work is not None
    assert (state.work.phase, state.work.dose.sets) == ("rest", 3)
    state = on(state, Heard(Action.ACCEPT, command=Command.FIX))
    state = typed(typed(state, which_to_fix="sleep last night"), sleep_last_night=5.0)
    while state.aside or state.stage is Stage.SCREEN:
        ask = ask_of(state)
        assert ask is not None
        state = typed(state, **{ask.question.fact: CALM.get(ask.question.fact, "no")})
    assert state.work is None or state.work.place != 0


def test_doubts_at_the_last_question_do_not_go_round() -> None:
    state = calmly(start(brief()), "own words")
    for _ in range(3):
        state = on(state, Heard(Action.CONFIRM, group=Group.NUMB_TINGLE))
        if state.stage is Stage.STOPPED:
            break
        state = typed(state, heard_right="no")
    assert state.stage is Stage.STOPPED
