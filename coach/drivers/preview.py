"""`coach preview`: a clinician walks a day as an athlete would, and sees what speaks and decides.

Law: the real session, made-up answers, nothing kept. Under each step stand the file and line that
speaks and the rule that decides.
"""

from __future__ import annotations

import difflib
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING, Final

from coach.drivers.desk import existing, refused
from coach.drivers.exit_codes import DONE, MISSING, USAGE
from coach.drivers.forecast_course import course_for
from coach.drivers.forecast_days import NothingTyped, days_of, past
from coach.drivers.line_voice import LineVoice
from coach.drivers.preview_walk import Answer, Walk, numbers_of, walked_again, walked_to
from coach.drivers.reading import diary_given
from coach.journal.trouble import NOT_A_DIARY, Trouble
from coach.session.brief import brief_for
from coach.texts.doors import bound_from, folder_of_program
from coach.texts.margin import did_you_mean
from coach.texts.sentence_places import sentence_places

if TYPE_CHECKING:
    import argparse
    from collections.abc import Iterable, Mapping
    from pathlib import Path

    from coach.drivers.preview_walk import Shown
    from coach.model.history import History
    from coach.model.program import Bound
    from coach.model.scenario import Course
    from coach.session.brief import Brief

OPENS_AT: Final = time(18, 30)
_HOW: Final = (
    "A preview: nothing is kept. Answer as an athlete would, or type:",
    "  usual:   answer as the course does",
    "  to: WHERE   go on to a stage or prompt, such as to: warm-up",
    "  answers:   the answers so far, each with its number",
    "  change: NUMBER: ANSWER   change one answer and see what changes",
    "  end:   leave",
)


def preview(options: argparse.Namespace) -> int:
    """Walk one day of a plan in lines; the exit code."""
    plan = _plan_at(existing(options.plan))
    bound, findings = bound_from(plan)
    if bound is None:
        return refused(findings)
    course, findings = course_for(options.course, plan)
    if course is None:
        return refused(findings)
    brief = _brief(bound, course, options)
    folder = folder_of_program(plan)
    places = sentence_places(folder) if folder is not None else {}
    return Preview(Walk(brief, course.usual), places).to_the_end()


def _plan_at(path: Path) -> Path:
    """A plan, or the first plan of a program's folder."""
    if not path.is_dir():
        return path
    found = sorted((path / "plans").glob("*.yaml"))
    if not found:
        raise Trouble("There is no plan in that folder to walk as.", MISSING)
    return found[0]


def _brief(bound: Bound, course: Course, options: argparse.Namespace) -> Brief:
    """The day with its past: a diary's, or so many weeks answered by the course before it."""
    asked = _day(options.day)
    if options.diary is not None:
        day, history = _from_diary(existing(options.diary), asked)
        return brief_for(bound, history, datetime.combine(day, OPENS_AT, UTC))
    first = date.fromisoformat(bound.plan.starts)
    weeks = options.weeks
    try:
        played = days_of(bound, course, weeks) if weeks else []
    except NothingTyped as nothing:
        raise Trouble(str(nothing), USAGE) from None
    day = asked or first + timedelta(weeks=weeks)
    before = [one for one in played if one.record.day < day.isoformat()]
    hold = before[-1].hold if before else None
    history = past(tuple(one.record for one in reversed(before)), hold)
    return brief_for(bound, history, datetime.combine(day, OPENS_AT, UTC))


def _from_diary(path: Path, asked: date | None) -> tuple[date, History]:
    """The day to walk (the one after the diary's last) and what a diary says before it."""
    recorded = diary_given(path).recorded
    if not recorded.sessions:
        raise Trouble("The diary holds no session yet.", NOT_A_DIARY)
    day = asked or date.fromisoformat(recorded.sessions[-1].opened_at[:10]) + timedelta(days=1)
    before = [sat for sat in recorded.sessions if sat.opened_at[:10] < day.isoformat()]
    lifts = [lift for lift in recorded.lifts if lift.at[:10] < day.isoformat()]
    lifted = {lift.hold for lift in lifts}
    stops = [stop for sat in before for stop in (sat.hold, *sat.more_holds) if stop is not None]
    hold = next((stop for stop in stops if stop.number not in lifted), None)
    records = tuple(sat.record for sat in reversed(before) if sat.record is not None)
    return day, past(records, hold, max((lift.at for lift in lifts), default=""))


def _day(typed: str | None) -> date | None:
    if typed is None:
        return None
    try:
        return date.fromisoformat(typed)
    except ValueError:
        raise Trouble("A day is written like 2026-11-09.", USAGE) from None


class Preview:
    """The talk around a walk."""

    def __init__(self, walk: Walk, places: Mapping[str, str]) -> None:
        """Hold the walk and where its sentences stand."""
        self.walk, self.places = walk, places
        self.voice = LineVoice()
        self._told = 0

    def to_the_end(self) -> int:
        """Until the clinician leaves."""
        for line in _HOW:
            self.voice.say(line)
        while True:
            self._tell_new()
            label = self.walk.turn.ask.label if self.walk.turn.ask else "The day is over."
            typed = self.voice.ask(f"[{self.walk.stage}] {label}")
            if typed is None or typed.strip() == "end:":
                self.voice.say("Nothing was kept.")
                return DONE
            self._take(typed.strip())

    def _take(self, typed: str) -> None:
        if typed == "usual:":
            self._usual()
        elif typed.startswith("to:"):
            self._go_to(typed.removeprefix("to:").strip())
        elif typed.startswith("change:"):
            which, _, text = typed.removeprefix("change:").strip().partition(": ")
            self._change(which.strip(), text.strip())
        elif typed == "answers:":
            self._list(range(len(self.walk.answers)))
        elif self.walk.turn.ask is None:
            self.voice.say("Type to: WHERE, answers:, change: NUMBER: ANSWER, or end:")
        else:
            self._say_if(self.walk.type(Answer(self.walk.turn.ask.name, typed)))

    def _say_if(self, words: str) -> None:
        if words:
            self.voice.say(words)

    def _usual(self) -> None:
        answer = self.walk.usual_here()
        if answer is None:
            self.voice.say("The course types nothing here.")
        else:
            self._say_if(self.walk.type(answer))

    def _go_to(self, where: str) -> None:
        """On to a stage or prompt; from the start of the day where it lies behind."""
        known = {one.stage for one in self.walk.shown[:-1]} | {a.prompt for a in self.walk.answers}
        if where in known and where != self.walk.stage:
            self.walk = Walk(self.walk.brief, self.walk.usual)
            self._told = 0
        if not walked_to(self.walk, where):
            self.voice.say(f'"{where}" is not reached with these answers.')

    def _change(self, which: str, text: str) -> None:
        """Change the answer of that number, or the one at a prompt of that name."""
        found = numbers_of(self.walk, which)
        if which.isascii() and which.isdecimal() and 1 <= int(which) <= len(self.walk.answers):
            found = [int(which) - 1]
        if len(found) > 1:
            self.voice.say(f'"{which}" was asked more than once. Which number?')
            self._list(found)
        elif not found or not text:
            asked = [answer.prompt for answer in self.walk.answers]
            near = did_you_mean(which, asked)
            self.voice.say(f'"{which}" was not asked so far.{near} Type answers: to see them.')
        else:
            again = walked_again(self.walk, found[0], text)
            for line in _differences(self.walk.shown, again.shown):
                self.voice.say(line)
            self.walk, self._told = again, len(again.shown)

    def _list(self, numbers: Iterable[int]) -> None:
        for number in numbers:
            answer = self.walk.answers[number]
            self.voice.say(f"  {number + 1}  {answer.prompt}: {answer.text}")

    # ------------------------------------------------------------ telling

    def _tell_new(self) -> None:
        for shown in self.walk.shown[self._told :]:
            self._tell(shown)
        self._told = len(self.walk.shown)

    def _tell(self, shown: Shown) -> None:
        if shown.typed:
            self.voice.say(f"    typed: {shown.typed}")
        for line in shown.lines:
            self.voice.say(line)
            place = self.places.get(line.removeprefix("Aim: "))
            if place is not None:
                self.voice.say(f"    speaks: {place}")
        for fact in shown.asked:
            self.voice.say(f"    asks: {fact}, {self._asked_at(fact)}")
        for decision in shown.decisions:
            where = f", {decision.place.file}, line {decision.place.line}" if decision.place else ""
            self.voice.say(f"    decides: {decision.rule} ({decision.outcome}){where}")

    def _asked_at(self, fact: str) -> str:
        for steps in self.walk.brief.items.values():
            for step in steps:
                if step.fact == fact and step.place.line:
                    return f"{step.place.file}, line {step.place.line}"
        return "the coach's own question"


def _differences(before: list[Shown], after: list[Shown]) -> list[str]:
    """What is said no more, and what is said now."""
    was, now = _told(before), _told(after)
    told = [
        ("gone: " if line[0] == "-" else "new:  ") + line[2:]
        for line in difflib.ndiff(was, now)
        if line[0] in "-+"
    ]
    return told or ["Nothing changes."]


def _told(shown: list[Shown]) -> list[str]:
    """All that was typed, said and decided, each decision where it is new."""
    lines: list[str] = []
    decided: tuple[str, ...] = ()
    for one in shown:
        now = tuple(f"decides: {d.rule} ({d.outcome})" for d in one.decisions)
        lines += [f"typed: {one.typed}"] if one.typed else []
        lines += [*one.lines, *(line for line in now if line not in decided)]
        decided = now
    return lines
