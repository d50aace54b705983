"""Pitching in games, asked of a pitcher after a game: how many, and what today keeps shut for it.

Law: a wall takes throws away and is never a target. The state keeps what was decided, the count
itself is the diary's. A count that is missing or unclear asks for the most rest there is.
"""

from __future__ import annotations

from datetime import date, timedelta
from typing import TYPE_CHECKING, Final

from coach.model.decisions import Decision
from coach.model.history import Outing
from coach.model.turns import Line
from coach.rules import pitching as rules
from coach.session.state import Happening, State
from coach.session.stopping import day_words

if TYPE_CHECKING:
    from coach.model.program import GamePitches
    from coach.session.brief import Brief

# The questions, and how many days before today each is about. Days between two sessions count as
# the newest day they can be.
DAYS_BACK: Final = {"pitches before": 2, "pitches yesterday": 1, "pitches today": 0}
INNINGS: Final = "innings caught today"
FACTS: Final = (*DAYS_BACK, INNINGS)
GAP_DAYS: Final = 3  # from here on there are days that no session has asked about


def line_of(brief: Brief) -> GamePitches | None:
    """The plan's line on pitching in games."""
    return brief.plan.game_pitches


def due(state: State, fact: str) -> bool:
    """Which of the questions are asked today."""
    line = line_of(state.brief)
    if line is None:
        return False
    if fact == "pitches before":
        return days_unasked(state.brief)
    if fact == "pitches yesterday":
        return state.game_yesterday
    return state.game_today and (fact != INNINGS or "catcher" in line.positions)


def days_unasked(brief: Brief) -> bool:
    """Whether a day before yesterday was asked about in no session: a gap, or a game that was on."""
    last = brief.last
    if last is None:
        return True
    gap = (brief.today - date.fromisoformat(last.day)).days
    open_game = last.throwing_today == "game" and not any(o.day == last.day for o in last.pitched)
    return gap >= GAP_DAYS or (gap == DAYS_BACK["pitches before"] and open_game)


def outings_known(brief: Brief) -> tuple[Outing, ...]:
    """Every outing that the diary holds."""
    return tuple(outing for record in brief.history.records for outing in record.pitched)


def take_count(state: State, fact: str, pitches: float) -> State:
    """throw.pitch_cap: the days off that a count asks for, and what a count over the cap brings."""
    brief, line = state.brief, line_of(state.brief)
    if line is None:
        return state
    if fact == "pitches today":
        state = with_wall(state, rules.pitched_today(pitches, catches="catcher" in line.positions))
    if not pitches > 0:
        return state._replace(game_yesterday=state.game_yesterday and fact != "pitches yesterday")
    day = brief.today - timedelta(days=DAYS_BACK[fact])
    over = rules.over_the_cap(brief.age, pitches, line.editions)
    days_off = rules.rest_days(brief.age, pitches, line.editions)
    outing = Outing(day.isoformat(), None, days_off, over)
    told = Happening("pitched", f"{fact}|{outing.day}|{days_off}|{int(over)}")
    state = state._replace(happened=(*state.happened, told))
    if days_off:
        decision = rules.may_throw_after((outing,), brief.today)
        state = shut(state, decision, (*outings_known(brief), outing))
    return over_noted(state._replace(no_step=True)) if over else state


def shut(state: State, decision: Decision, outings: tuple[Outing, ...]) -> State:
    """No throws of the plan today, with the first day to pitch again."""
    if decision.outcome != "rest":
        return state
    again = day_words(rules.first_day_free(outings, state.brief.today))
    state = with_wall(state, decision)
    told = (*state.told, Line("say", f"First day to pitch again: {again}."))
    return state._replace(told=told, pitched=True)


def over_noted(state: State) -> State:
    """A count over the cap of a day goes to the visit."""
    line = line_of(state.brief)
    most = rules.most_pitches(state.brief.age, line.editions) if line else None
    note = Happening("note", "More game pitches in a day than the cap at this age.")
    return with_wall(state._replace(happened=(*state.happened, note)), rules.over_told(most))


def with_wall(state: State, decision: Decision) -> State:
    """Tell a wall and keep its reason; one that closes nothing is not told."""
    if decision.outcome in {"may", "none"} or decision in state.reasons:
        return state
    happened = (*state.happened, Happening("decision", decision.rule, decision))
    told = (*state.told, Line("say", decision.why))
    return state._replace(told=told, happened=happened, reasons=(*state.reasons, decision))


def take_innings(state: State, innings: float) -> State:
    """throw.same_day: a catcher's innings close the mound for the day."""
    return with_wall(state, rules.caught_today(innings))


def game_to_come(state: State) -> State:
    """throw.pitch_cap: a game still to come today, against what the diary and this morning know."""
    line = line_of(state.brief)
    if line is None or not state.playing or state.order != "after throwing":
        return state
    known, today = outings_known(state.brief), state.brief.today
    if state.game_yesterday:  # told this morning; its days off were taken with its count
        known = (*known, Outing((today - timedelta(days=1)).isoformat(), None, 0))
    state = shut(state, rules.game_today(known, today), known)
    return with_wall(state, rules.game_today(known, today))


def resting(state: State) -> Decision | None:
    """Why the plan's throws rest for game pitches today; None where they do not."""
    if line_of(state.brief) is None:
        return None
    known, today = outings_known(state.brief), state.brief.today
    decision = rules.may_throw_after(known, today)
    if state.pitched:
        decision = rules.may_throw_after((Outing(today.isoformat(), None, 1),), today)
    return decision if decision.outcome == "rest" else None


def held_by_cap(brief: Brief) -> bool:
    """Whether a count over the cap in the last days still holds the throwing steps."""
    return line_of(brief) is not None and rules.no_new_step(outings_known(brief), brief.today)


def outing_from(what: str, pitches: float | None) -> Outing:
    """An outing from what happened, with the count as typed where it was heard."""
    _fact, day, days_off, over = what.split("|")
    count = None if pitches is None else int(pitches)
    return Outing(day, count, int(days_off), over == "1")


TAKERS: Final = {
    "pitches before": lambda state, count: take_count(state, "pitches before", count),
    "pitches yesterday": lambda state, count: take_count(state, "pitches yesterday", count),
    "pitches today": lambda state, count: take_count(state, "pitches today", count),
    INNINGS: take_innings,
}
