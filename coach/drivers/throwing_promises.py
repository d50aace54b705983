"""What a throwing line may be from day to day, read from the plan and from what was said.

Law: no rule is asked. The steps that stand open are counted here a second time, from raw answers,
as high as plan and table of soreness may ever let them be; the session may always be lower.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Final, NamedTuple

from coach.model.program import Plan
from coach.model.throws import OWN_STEPS
from coach.model.turns import Throws
from coach.rules.throwing_tables import (
    CATCHER,
    CATCHER_CLASSES,
    PITCHER_CLASSES,
    STEP_TABLES,
    ClassRow,
)

LEAST_DAYS: Final = 2  # Axe 2001: a whole day off between throwing days
REST_SORE: Final = 2  # Axe 2001, still sore after throw 15; for a day cut off set here
REST_SINCE: Final = 1  # Axe 2001, sore over an hour or the next day
STEP_DOWN_FROM: Final = 7  # days missed; set here, to be signed by a clinician
FIRST_STEP_FROM: Final = 14  # days missed; set here, to be signed by a clinician


class Opened(NamedTuple):
    """The highest step that may be shown next, its clean days so far, the highest shown, the last.

    All under one clearance; its first step counts as shown, 0 is none. `rest` are the whole days
    off that the last line asks for.
    """

    step: int
    clean: int
    best: int
    last: int = 0
    rest: int = 0

    def no_less_than(self, other: Opened) -> bool:
        """Whether all that `other` lets be shown, now and later, may be shown here too."""
        if self.last != other.last or self.rest > other.rest:
            return False
        return self.step >= other.step and self.clean >= other.clean and self.best >= other.best


class Morning(NamedTuple):
    """What the days before say of a day: whole days since, 0 where there was none.

    `since_line` counts from the last day with a throwing line, `since_throws` from the last on
    which a step was shown. `anew`: the clearance is another one than then. `held`: no new step today.
    """

    since_line: int
    since_throws: int
    anew: bool = False
    held: bool = False


class Said(NamedTuple):
    """A throwing line as it went: the step shown (0 none) and what was answered, raw.

    `since` soreness after the last time, `warm` in the warm-up, `down` what the table answers with
    a step down (sore after throw 15 or at the end, or pain over the plan's ceiling), `finished` that
    the throws were told to the end, `stopped` that the day ended in a stop.
    """

    shown: int = 0
    since: bool = False
    warm: bool = False
    down: bool = False
    finished: bool = False
    stopped: bool = False


class Wrong(NamedTuple):
    """A promise and what was seen."""

    promise: str
    words: str


class ThrowingOracle:
    """What a plan's throwing line lets be."""

    def __init__(self, plan: Plan) -> None:
        """The plan's own numbers: first and last step, sessions a step, days apart, days off."""
        self.plan, self.line = plan, plan.throwing_line
        own = self.line is not None and self.line.table == OWN_STEPS
        table = plan.own_steps if own else STEP_TABLES.get(self.line.table if self.line else "")
        self.steps = table.steps if table is not None else ()
        self.first = self.line.from_step if self.line else 0
        self.last = min(self.line.most_step, len(self.steps)) if self.line else 0
        self.times = max(1, self.line.sessions_a_step) if self.line else 1
        own_gap = dict(plan.changed).get("layoff.gap")
        self.step_down_from = min(
            STEP_DOWN_FROM if own_gap is None else int(own_gap), FIRST_STEP_FROM
        )

    def cleared(self, today: date) -> bool:
        """Whether somebody cleared throwing on a day that has come."""
        line = self.line
        return bool(
            line is not None
            and line.who
            and self.steps
            and date.fromisoformat(line.cleared) <= today
        )

    def at_first(self) -> Opened:
        """What a clearance opens by itself: its own first step."""
        return Opened(self.first, 0, self.first)

    def may_show(self, before: Opened, morning: Morning) -> Opened:
        """What stands open in the morning: days off lower it, another clearance begins anew."""
        if morning.anew or not morning.since_line:
            return self.at_first()
        missed = morning.since_throws - 1
        step = min(before.step, self.last)
        if missed >= FIRST_STEP_FROM:
            return before._replace(step=min(max(1, step - 1), self.first), clean=0)
        if missed >= self.step_down_from:
            return before._replace(step=max(1, step - 1), clean=0)
        return before._replace(step=step)

    def after(self, opened: Opened, thrown: int, said: Said) -> Opened:
        """What stands open after a day with a throwing line; `opened` as in its morning."""
        tried = min(opened.step, said.shown or opened.step)
        clean, step = opened.clean, opened.step
        if said.down:
            clean, step = 0, max(1, tried - 1)
        elif said.since:
            clean, step = 0, min(step, thrown or step)
        elif said.warm or said.stopped:
            clean = 0
        elif said.finished and said.shown >= step:
            enough = clean + 1 >= self.times and step < self.last
            clean, step = (0, step + 1) if enough else (min(clean + 1, self.times), step)
        best, last = max(opened.best, said.shown), said.shown or opened.last
        return Opened(step, clean, best, last, rest_after(said))

    # ------------------------------------------------------------ on a line

    def on_a_line(self, today: date, opened: Opened, morning: Morning) -> Iterator[Wrong]:
        """P3: a throwing line comes only where it is cleared, and after its days off."""
        if not self.cleared(today):
            yield Wrong("P3", "throws without a clearance")
        elif morning.since_line and morning.since_line < self.days_between(opened):
            yield Wrong("P3", "throws before their days off are over")

    def longest_between(self) -> int:
        """The most days that plan, class and days off may ask for between two throwing lines."""
        of_class = [row.every_days for row in self.class_rows()]
        return max(self.days_between(self.at_first()._replace(rest=REST_SORE)), *of_class, 0)

    def days_between(self, opened: Opened) -> int:
        """Days from one throwing line to the next, without a class."""
        apart = self.line.apart_days if self.line else 0
        return max(LEAST_DAYS, apart, opened.rest + 1)

    def on_throws(
        self, opened: Opened, morning: Morning, said: Said, shown: tuple[Throws, ...]
    ) -> Iterator[Wrong]:
        """P2, P5 and P12 on throws that are shown; `opened` as in the morning."""
        for one in shown:
            if one.side != self.plan.side:
                yield Wrong("P12", f"throws with the {one.side} arm")
        step = said.shown
        if not 1 <= step <= self.last:
            yield Wrong("P2", f"step {step} is past the plan's last step")
            return
        if sum(one.throws for one in shown) > self.steps[step - 1].throws():
            yield Wrong("P2", f"more throws than step {step} has")
        if step > opened.step:
            yield Wrong("P5", "a step is shown that was not earned")
        if step > opened.best and morning.held:
            yield Wrong("P5", "a new step is shown on a day that holds steps back")
        layoff = morning.since_throws - 1 >= self.step_down_from
        if layoff and 0 < opened.last < step:
            yield Wrong("P5", "a step goes up after days off")
        if self.too_early(step, morning):
            yield Wrong("P3", "throws before the days off of their class are over")

    def too_early(self, step: int, morning: Morning) -> bool:
        """Whether a class throws less often, at the step shown or the one it stands in for."""
        rows = self.class_rows()
        if not rows or not morning.since_line:
            return bool(rows) and not _days(rows, step)
        days = [d for d in (_days(rows, step), _days(rows, step + 1)) if d]
        return not _days(rows, step) or morning.since_line < min(days)

    def class_rows(self) -> tuple[ClassRow, ...]:
        """The published schedule of the plan's class; none where it names no class."""
        name = self.line.class_name if self.line else ""
        if not name:
            return ()
        if name.startswith(CATCHER):
            return CATCHER_CLASSES[name.removeprefix(CATCHER)][1]
        return PITCHER_CLASSES[name][1]


def rest_after(said: Said) -> int:
    """Whole days off after a line: after soreness while throwing, of last time, or a cut-off day."""
    if said.down or (said.shown and not said.finished):
        return REST_SORE
    return REST_SINCE if said.since else 0


def _days(rows: tuple[ClassRow, ...], step: int) -> int:
    """How often a class throws at a step; 0 where its schedule does not say."""
    return next((row.every_days for row in rows if row.step_from <= step <= row.step_to), 0)
