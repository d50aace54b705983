"""Walls around pitching in games, and around junior fast bowling: how many, how long a rest.

Law: a wall only takes throws away, it is never a target. Where editions differ, the most rest and
the lowest cap count; where a count or an age is missing, the most rest of all.
"""

from __future__ import annotations

from datetime import date, timedelta
from typing import Final

from coach.model.decisions import Basis, Decision
from coach.model.history import Outing
from coach.rules.throwing_tables import (
    BOWLING_DAYS_IN_7,
    BOWLING_DAYS_IN_A_ROW,
    EDITIONS,
    INNINGS_THEN_NO_PITCHING,
    PITCHES_THEN_NO_CATCHING,
    PitchRow,
)

# The most days off that any row of any edition asks for.
MOST_REST_DAYS: Final = max(len(row.tops) for rows in EDITIONS.values() for row in rows)
# After a count over the day's cap no new throwing step for so many days; set here, to be signed.
NO_NEW_STEP_DAYS: Final = 7

_EDITIONS: Final = "national youth pitching guideline, the editions that the plan names"
_LEAGUE: Final = "a youth league's regulation"
_PAGES: Final = "national youth pitching guideline, age pages"


def rows_for(age: int, editions: tuple[str, ...]) -> list[PitchRow]:
    """The row for `age` of each named edition that has one."""
    named = [EDITIONS[name] for name in editions if name in EDITIONS]
    return [row for rows in named for row in rows if row.age_from <= age <= row.age_to]


def has_age(age: int, editions: tuple[str, ...]) -> bool:
    """Whether every named edition, and at least one, has a row for `age` in years."""
    return bool(editions) and len(rows_for(age, editions)) == len(editions)


def most_pitches(age: int, editions: tuple[str, ...] = tuple(EDITIONS)) -> int | None:
    """The most game pitches in a day at `age` (id throw.pitch_cap): the lowest of the editions.

    None where no edition has the age (under 7, over 22).
    """
    return min((row.daily_most for row in rows_for(age, editions)), default=None)


def rest_days(age: int, pitches: float, editions: tuple[str, ...] = tuple(EDITIONS)) -> int:
    """Whole days off after `pitches` in games (id throw.pitch_cap): the most of the editions.

    All pitches thrown count, also over the daily cap; at an age that an edition lacks, the most
    rest of all. Source: national youth pitching guideline, by edition.
    """
    if not pitches > 0:
        return 0
    if not has_age(age, editions):
        return MOST_REST_DAYS
    return max(sum(pitches > top for top in row.tops) for row in rows_for(age, editions))


def first_day_again(outing: date, days_off: int) -> date:
    """The first day to pitch again: the outing and whole days off do not count."""
    return outing + timedelta(days=days_off + 1)


def over_the_cap(age: int, pitches: float, editions: tuple[str, ...]) -> bool:
    """Whether a day's count passes the cap at `age` (id throw.pitch_cap); no row: any pitch does."""
    most = most_pitches(age, editions) if has_age(age, editions) else 0
    return pitches > (most or 0)


def first_day_free(outings: tuple[Outing, ...], today: date) -> date:
    """The first day, not before today, that no outing's days off hold."""
    again = [first_day_again(date.fromisoformat(one.day), one.days_off) for one in outings]
    return max((today, *again))


def may_throw_after(outings: tuple[Outing, ...], today: date) -> Decision:
    """Whether game pitches leave today free for throwing (id throw.pitch_cap): may or rest.

    `outings` with the days off that each asked for; the longest counts. Rest days are whole days
    and the outing is none of them: Monday and 3 days off is Friday. Source: national youth
    pitching guideline, by edition; that the plan's throws rest with the pitches was set here.
    """
    source = f"{_EDITIONS}; for the plan's own throws set here"
    if first_day_free(outings, today) > today:
        why = "No throws today. Your game pitches ask for whole days off."
        return Decision("throw.pitch_cap", "rest", why, basis=Basis.PUBLISHED, source=source)
    why = "Your game pitches leave today free."
    return Decision("throw.pitch_cap", "may", why, basis=Basis.PUBLISHED, source=source)


def no_new_step(outings: tuple[Outing, ...], today: date) -> bool:
    """Whether a day over the cap still holds the steps (id throw.pitch_cap; the 7 days set here)."""
    since = today - timedelta(days=NO_NEW_STEP_DAYS)
    return any(o.over_cap and date.fromisoformat(o.day) > since for o in outings)


def over_told(most: int | None) -> Decision:
    """throw.pitch_cap: what a count over the day's cap brings; an outer wall, never a target."""
    cap = f"over {most}, the most at your age" if most else "past the wall in your plan"
    why = f"That is {cap}. A note goes to your clinician, and no step goes up."
    return Decision("throw.pitch_cap", "over", why, basis=Basis.PUBLISHED, source=_EDITIONS)


def may_catch(pitches_today: float) -> bool:
    """Whether someone who pitched today may still catch (a youth league's rule)."""
    return pitches_today < PITCHES_THEN_NO_CATCHING


def may_pitch_after_catching(innings_today: float) -> bool:
    """Whether someone who caught today may still pitch (a youth league's rule)."""
    return innings_today < INNINGS_THEN_NO_PITCHING


def pitched_today(pitches: float, *, catches: bool) -> Decision:
    """What is closed after pitching in a game today (id throw.same_day): none, no game, no catching.

    Not in a second game on one day; from 41 pitches on not behind the plate either. Source:
    national youth pitching guideline, age pages; a youth league's regulation.
    """
    if not pitches > 0:
        why = "You did not pitch today, so this rule closes nothing."
        return Decision("throw.same_day", "none", why, basis=Basis.PUBLISHED, source=_PAGES)
    if catches and not may_catch(pitches):
        why = "No more pitching and no catching today, in any game."
        return Decision("throw.same_day", "no catching", why, basis=Basis.PUBLISHED, source=_LEAGUE)
    why = "No more pitching today, in any game."
    return Decision("throw.same_day", "no game", why, basis=Basis.PUBLISHED, source=_PAGES)


def caught_today(innings: float) -> Decision:
    """What is closed after catching today (id throw.same_day): none, or no pitching.

    From 4 innings on. Source: a youth league's regulation.
    """
    if may_pitch_after_catching(innings):
        why = "You caught few innings, so this rule closes nothing."
        return Decision("throw.same_day", "none", why, basis=Basis.PUBLISHED, source=_LEAGUE)
    why = "No pitching today. You caught in too many innings for that."
    return Decision("throw.same_day", "no pitching", why, basis=Basis.PUBLISHED, source=_LEAGUE)


def third_day_running(pitched: tuple[date, ...], today: date) -> bool:
    """Whether pitching today would be the third day in a row, whatever the counts."""
    return {today - timedelta(days=1), today - timedelta(days=2)} <= set(pitched)


def game_today(outings: tuple[Outing, ...], today: date) -> Decision:
    """What the walls say of a game still to come today (id throw.pitch_cap): may, rest, third day.

    Source: national youth pitching guideline, by edition and age pages.
    """
    rest = may_throw_after(outings, today)
    if rest.outcome == "rest":
        why = "No pitching in today's game. Your game pitches ask for whole days off."
        return rest._replace(why=why)
    days = tuple(date.fromisoformat(one.day) for one in outings)
    if third_day_running(days, today):
        why = "No pitching in today's game. It would be the third day in a row."
        return rest._replace(outcome="third day", why=why, source=_PAGES)
    return rest


def may_bowl(days_before: tuple[date, ...], today: date) -> bool:
    """Whether a junior fast bowler may bowl today: 4 days in 7, 2 in a row at most.

    Source: England and Wales Cricket Board directives, 2007 to 2018; any seven days that hold
    today are looked at.
    """
    days = {*days_before, today}
    for start in range(-6, 1):
        week = {today + timedelta(days=start + offset) for offset in range(7)}
        if len(days & week) > BOWLING_DAYS_IN_7:
            return False
    run = 1
    while today - timedelta(days=run) in days:
        run += 1
    return run <= BOWLING_DAYS_IN_A_ROW
