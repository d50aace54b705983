"""Throwing: whether, when and how far, from the clinician's clearance and the athlete's soreness.

Law: no throwing line without a dated clearance that names program, steps and spacing; a step only
from the plan's table; two rows of the soreness table that fit give the more cautious. Nothing here is opened by a date alone.
"""

from __future__ import annotations

from datetime import date, datetime
from typing import Final, NamedTuple

from coach.model.decisions import Basis, Decision, Refusal
from coach.model.ladders import ThrowState
from coach.model.program import Plan, ThrowingLine
from coach.model.throws import OWN_STEPS, StepTable, part_words
from coach.rules.readiness import may_repeat
from coach.rules.throwing_tables import (
    CATCHER,
    CATCHER_CLASSES,
    CATCHER_STEPS,
    CLASS_STEPS,
    PITCHER_CLASSES,
    STEP_TABLES,
    ClassRow,
)

FIRST_STEP: Final = 1
DOWNS_RUNNING: Final = 2  # more in a row than that no rule looks at
WHOLE_DAY_BETWEEN: Final = 2  # at least one whole day off between: the next but one date

# ---------------------------------------------------------------- clearance


def table_of(plan: Plan) -> StepTable | None:
    """The table of steps that the plan's throwing line names: a published one, or the plan's own."""
    line = plan.throwing_line
    if line is None:
        return None
    return plan.own_steps if line.table == OWN_STEPS else STEP_TABLES.get(line.table)


def class_fits(class_name: str, table: StepTable) -> bool:
    """Whether a class of injury may be used with a table (id throw.class).

    The classes belong to two programs, of 21 steps for pitchers and of 13 for catchers. No copy of
    their steps could be read, so it can only be the plan's own table, with as many steps, counted in
    throws. Source: Axe 2001; for catchers Axe 2009.
    """
    steps = CATCHER_STEPS if class_name.startswith(CATCHER) else CLASS_STEPS
    return table.name == OWN_STEPS and len(table.steps) == steps and table.unit == "throws"


def class_words(class_name: str) -> str:
    """A class as a plan writes it: `class C`, `catcher class C`."""
    who, name = class_name[:-1], class_name[-1:]
    return f"{who}class {name}"


def schedule_of(class_name: str) -> tuple[ClassRow, ...]:
    """How often a class throws, step by step: `C` of the pitchers, `catcher C` of the catchers."""
    if class_name.startswith(CATCHER):
        return CATCHER_CLASSES[class_name.removeprefix(CATCHER)][1]
    return PITCHER_CLASSES[class_name][1]


def clearance(plan: Plan, today: date) -> ThrowingLine | Refusal:
    """The plan's clearance to throw, or why there is none (id throw.cleared; set here).

    It must hold a date not ahead, a person, a table that is there, the step to begin with and the
    last one in it, and the days apart; a class only with the table it belongs to. Else no throwing.
    """
    line, table = plan.throwing_line, table_of(plan)
    if line is None or table is None or not line.who or line.apart_days < 1:
        why = "No throwing today. Your plan does not clear it in full."
        return Refusal("throw.cleared", why, plan.place)
    in_order = FIRST_STEP <= line.from_step <= line.most_step <= len(table.steps)
    cleared = _day(line.cleared)
    if not in_order or cleared is None:
        why = "No throwing today. The date or the steps in your plan do not fit."
        return Refusal("throw.cleared", why, line.place)
    if cleared > today:
        why = "No throwing today. The day that your plan clears it is still to come."
        return Refusal("throw.cleared", why, line.place)
    if line.class_name and not class_fits(line.class_name, table):
        why = "No throwing today. The class in your plan is not for this table."
        return Refusal("throw.class", why, line.place)
    return line


def _day(day: str) -> date | None:
    """An ISO day, or None where it cannot be read."""
    try:
        return date.fromisoformat(day)
    except ValueError:
        return None


# ---------------------------------------------------------------- soreness


class Sore(NamedTuple):
    """What was said of soreness, moment by moment; what was not clear counts as yes.

    `over_an_hour`, `next_day` are of the last throwing; `in_warm_up`, `after_15` (still sore after
    throw 15), `late` (sore later on, after none at throw 15) and `over_the_ceiling` (pain over the
    plan's ceiling while throwing) are of today.
    """

    over_an_hour: bool = False
    next_day: bool = False
    in_warm_up: bool = False
    after_15: bool = False
    late: bool = False
    over_the_ceiling: bool = False


class NextThrow(NamedTuple):
    """What follows: today (throw, repeat, stop, none), whole days off, change of step."""

    today: str
    rest_days: int
    step_change: int


_AXE: Final = "Axe 2001, Axe 2009 (clinic handouts)"

# Row -> what follows, most cautious first. Rows as in Axe; `stop` weighs more than rest, more rest
# more than less, a lower step more than a higher (the order was set here).
_ROWS: Final[tuple[tuple[str, NextThrow, str], ...]] = (
    (
        "pain over the ceiling",
        NextThrow("stop", 2, -1),
        "Stop for today. Two whole days off, then one step lower.",
    ),
    (
        "still sore after throw 15",
        NextThrow("stop", 2, -1),
        "Stop for today. Two whole days off, then one step lower.",
    ),
    (
        "sore again while repeating",
        NextThrow("stop", 2, -1),
        "Stop for today. Two whole days off, then one step lower.",
    ),
    (
        "sore late in a clean session",
        NextThrow("stop", 2, -1),
        "Stop for today. Two whole days off, then one step lower.",
    ),
    (
        "sore over an hour or next day",
        NextThrow("none", 1, 0),
        "No throws today. One whole day off, then the same step again.",
    ),
    (
        "sore in the warm-up, gone by throw 15",
        NextThrow("repeat", 0, 0),
        "The last step again today. Soreness in the warm-up went by throw 15.",
    ),
    ("no soreness", NextThrow("throw", 0, 1), "The planned step. You had no soreness."),
)


def _fits(sore: Sore) -> tuple[bool, ...]:
    """Which rows fit, in the order of `_ROWS`."""
    return (
        sore.over_the_ceiling,
        sore.after_15,
        sore.in_warm_up and sore.late,
        sore.late,
        sore.over_an_hour or sore.next_day,
        sore.in_warm_up,
        True,
    )


def soreness(sore: Sore) -> tuple[NextThrow, Decision]:
    """What soreness means for throwing (id throw.soreness): the most cautious row that fits.

    Source: Axe 2001, Axe 2009; soreness that begins late in a clean session is in no published row
    and counts as the third; so does pain over the plan's ceiling on throwing, at any moment, and
    soreness for the elbow too (all three set here).
    """
    name, follows, why = next(row for row, fits in zip(_ROWS, _fits(sore), strict=True) if fits)
    set_here = name in {"sore late in a clean session", "pain over the ceiling"}
    source = f"{_AXE}; this row was set here" if set_here else _AXE
    basis = Basis.OURS if set_here else Basis.PUBLISHED
    return follows, Decision("throw.soreness", name, why, basis=basis, source=source)


def step_today(state: ThrowState, follows: NextThrow) -> int | None:
    """The step to throw today: the planned one, the one before it on a repeat, or None."""
    if follows.today == "none":
        return None
    return max(FIRST_STEP, state.planned - 1) if follows.today == "repeat" else state.planned


def next_throws(
    state: ThrowState, follows: NextThrow, cleared: ThrowingLine
) -> tuple[ThrowState, Decision]:
    """What is planned after a throwing day, and whether the clinician is asked (id throw.soreness).

    Outcomes: up, same, down, contact. Down is one below the lower of the step tried and the last
    one done; step 1 is the floor; a second step down running, or any at step 1, is `contact`. Up
    only after the plan's number of clean days at a step, and never above its last step. Source:
    Axe 2001; which step to drop from, and the floor, were set here.
    """
    rule, here = "throw.soreness", f"{_AXE}; set here"
    if follows.step_change < 0:
        tried = min(state.planned, state.last_done or state.planned)
        running = min(state.downs_running + 1, DOWNS_RUNNING)
        low = ThrowState(max(FIRST_STEP, tried - 1), state.last_done, 0, running)
        if state.downs_running >= 1 or tried <= FIRST_STEP:
            why = "Your clinician hears first. Soreness came back on throwing."
            return low, Decision(rule, "contact", why, source=here)
        why = f"Next time it is step {low.planned}. Soreness decides that."
        return low, Decision(rule, "down", why, basis=Basis.PUBLISHED, source=here)
    if follows.step_change == 0:
        why = f"Step {state.planned} stays the next one. Soreness decides that."
        return state._replace(clean_here=0), Decision(
            rule, "same", why, basis=Basis.PUBLISHED, source=_AXE
        )
    clean, at_each_step = state.clean_here + 1, max(1, cleared.sessions_a_step)
    if clean < at_each_step or state.planned >= cleared.most_step:
        stays = ThrowState(state.planned, state.planned, min(clean, at_each_step))
        why = f"Step {state.planned} again next time. Your plan asks for that."
        return stays, Decision(rule, "same", why, basis=Basis.PLAN, source=_AXE)
    up = ThrowState(state.planned + 1, state.planned)
    why = f"Next time it is step {up.planned}. You had no soreness."
    return up, Decision(rule, "up", why, basis=Basis.PUBLISHED, source=_AXE)


# ---------------------------------------------------------------- when


def class_days(schedule: tuple[ClassRow, ...], step: int) -> int | None:
    """Days from one throwing day to the next for a class at `step`; None: the copy is cut off."""
    return next((r.every_days for r in schedule if r.step_from <= step <= r.step_to), None)


def may_throw_today(
    last_threw_at: str | None, now: datetime, apart_days: int, rest_days: int
) -> Decision:
    """Whether today may be a throwing day (id throw.spacing): may or wait.

    At least one whole day off between, or the plan's spacing, or the soreness table's days off: the
    longest of them, not their sum. Day and hours, the stricter. Source: Reinold 2002, Axe 2001.
    """
    days = max(WHOLE_DAY_BETWEEN, apart_days, rest_days + 1)
    spaced = may_repeat(last_threw_at, now, days)
    why = "You may throw today. The days off are over."
    if spaced.outcome == "wait":
        between = (
            "There is 1 whole day"
            if days == WHOLE_DAY_BETWEEN
            else f"There are {days - 1} whole days"
        )
        why = f"No throws today. {between} off between throwing days."
    source = "Reinold 2002; Axe 2001; the longest counts: set here"
    return Decision("throw.spacing", spaced.outcome, why, basis=Basis.PUBLISHED, source=source)


def tired_arm(tired: bool, painful: bool) -> Decision:
    """Whether a tired or painful arm may throw (id throw.tired_arm): may or none.

    Source: Yang 2014, Lyman 2001: tired or painful arms get hurt more often.
    """
    source = "Yang 2014; Lyman 2001"
    if tired or painful:
        why = "No throws today. Tired or sore arms get hurt more often."
        return Decision("throw.tired_arm", "none", why, basis=Basis.PUBLISHED, source=source)
    why = "Your arm is not tired, so this rule lets you throw."
    return Decision("throw.tired_arm", "may", why, basis=Basis.PUBLISHED, source=source)


def young_arm(minor: bool, upper_arm_or_inner_elbow: bool) -> Decision:
    """Whether all throwing stops for a young arm (id stop.minor): may or stop.

    Under 18, pain in the upper arm or inner elbow on throwing stops all throwing until seen.
    Source: StatPearls (growth plate of the upper arm); Bednar 2021; the rule was set here.
    """
    source = "StatPearls; Bednar 2021; set here, to be signed by a clinician"
    if minor and upper_arm_or_inner_elbow:
        why = "No more throws until you are seen. Young arms still grow there."
        return Decision("stop.minor", "stop", why, source=source)
    return Decision("stop.minor", "may", "This rule lets you throw.", source=source)


def step_shown(table: StepTable, step: int, age: int) -> Decision:
    """The line of a step (id throw.step): distance and count, or `none`.

    A step the table lacks, or an athlete under the table's age, has no line.
    """
    if not FIRST_STEP <= step <= len(table.steps) or age < table.least_age:
        why = "No throws today. Your plan's table has no such step for you."
        return Decision("throw.step", "none", why, source=table.source)
    shown = ", ".join(part_words(part, table) for part in table.steps[step - 1].parts())
    why = f"This is step {step} of {len(table.steps)} in your plan."
    outcome = shown or "game"
    return Decision("throw.step", outcome, why, basis=Basis.PUBLISHED, source=table.source)
