"""P8, P10, P11 and P13 day by day, and which lines of a script a season reaches (P9).

Law: at a prompt only what is typed next is tried beside the season; the season itself goes on as it
was. What unclear and why must lead to is told by the checks of the search, which read the plan.
"""

from __future__ import annotations

from collections.abc import Iterator

from coach.drivers.promises import Oracle
from coach.model.program import Bound
from coach.session.engine import ask_of, turn
from coach.session.state import State
from coach.session.table import Stage
from tests.seasons.season import Day, Step

PROMPTS_A_DAY = 2  # at which stop and unclear are tried; each day at other ones
WORK = frozenset({Stage.TODAY, Stage.WARM_UP, Stage.EXERCISE})


def tried_at_prompts(day: Day, number: int) -> Iterator[str]:
    """P8, P10 and P11 at some prompts of a day; `number` picks which."""
    if not day.steps:
        return
    oracle = Oracle(day.steps[0].before.brief)
    for piece in range(PROMPTS_A_DAY):
        at = (number * 7 + piece * 13) % len(day.steps)
        state = day.steps[at].before
        for unclear in (0, 1):
            now = state._replace(unclear=unclear)
            yield from said(oracle.at_prompt(now, ask_of(now), ()))
        yield from said(oracle.reasons(state, turn(state)))


def said(broken: Iterator[object]) -> Iterator[str]:
    """Broken promises as a season tells them."""
    for one in broken:
        promise, words = tuple(one)  # type: ignore[arg-type, var-annotated]
        yield f"{promise}: {words}"


def corrected(step: Step) -> Iterator[str]:
    """P13: once the list was shown, a correction leaves the day as careful or makes it more so."""
    before, after = step.before, step.after
    fixing = before.aside == "fix" and bool(before.fixing)
    if not fixing or before.stage not in WORK or after.stage not in WORK:
        return
    pairs = (
        (after.level, before.level),
        (after.short, before.short),
        (after.recovery, before.recovery),
        (after.morning_up, before.morning_up),
        (after.no_step, before.no_step),
        (after.order == "after throwing", before.order == "after throwing"),
    )
    if any(now < was for now, was in pairs) or not set(before.lowered) <= set(after.lowered):
        yield "P13: a correction made the day less careful"
    if not set(after.todo) <= set(before.todo):
        yield "P13: a correction brought work back"


def script_lines(bound: Bound) -> dict[str, str]:
    """Every line of the program's scripts, by what shows that it was reached."""
    return {
        mark_of(step.kind, step.fact or step.effect or step.text): f"{place.file}:{place.line}"
        for script in bound.program.scripts
        for step in script.steps
        for place in (step.place,)
    }


def mark_of(kind: str, what: str) -> str:
    """How a script's line shows itself: what is asked, said, noted or lowered by it."""
    return f"{'ask' if kind.startswith('ask') else kind} {what}"


def reached(day: Day) -> set[str]:
    """The marks of the script lines that a day came to."""
    marks: set[str] = set()
    for state in (day.first, *(step.after for step in day.steps)):
        marks |= marks_of(state)
    return marks


def marks_of(state: State) -> set[str]:
    """The marks of one state."""
    marks = {mark_of("ask", fact) for fact in state.missing}
    marks |= {mark_of("tell", line.text) for line in state.told}
    marks |= {mark_of("note", one.what) for one in state.happened if one.kind == "note"}
    if state.work is not None and state.work.stays_due:  # an effect on `this exercise`, spent
        marks.add(mark_of("effect", state.work.change))
    return marks | {mark_of("effect", effect) for effect, _target in state.lowered}
