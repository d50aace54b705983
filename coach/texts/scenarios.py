"""A scenario file to a `Scenario`, and a course file to a `Course`: what is typed week by week.

Law: what a scenario checks is kept as written and judged by the driver alone; a check or an event
that is not in the closed list is a finding.
"""

from __future__ import annotations

import datetime
import re
from pathlib import Path
from typing import Final

from coach.model.findings import Finding
from coach.model.scenario import (
    Course,
    Entry,
    Happening,
    Scenario,
    ScenarioDay,
    Seen,
    Stretch,
    Typing,
)
from coach.texts import facts, shelf, values
from coach.texts.fields import Fields, only_map
from coach.texts.margin import Margin, did_you_mean
from coach.texts.prompt_names import check_prompts, known_in
from coach.texts.yaml_lines import (
    Listed,
    Mapped,
    Node,
    Pair,
    Text,
    read_page,
    read_tree,
)

CHECKS: Final = (
    "offers",
    "never offers",
    "asks",
    "never asks",
    "stops",
    "decided by",
    "notes",
    "never notes",
    "shows",
    "never shows",
)
HAPPENINGS: Final = (
    "power cut",
    "end of input",
    "timer ends",
    "clearance by word",
    "clearance in person",
    "wrong clearance word",
    "clock back",
)
BREAK: Final = "break"
WEEKDAYS: Final = (
    "Monday",
    "Tuesday",
    "Wednesday",
    "Thursday",
    "Friday",
    "Saturday",
    "Sunday",
)
TRAINS: Final = ("Monday", "Wednesday", "Friday")  # where a course names no days; set here
_WEEKS: Final = values.Bounds("", 1, 520)
_DAYS: Final = re.compile(r"(.+) at ([0-9]{1,2}:[0-9]{2})")
_EVERY: Final = re.compile(r"(\S+) to (\S+) every ([1-9][0-9]?) days")
_TIME: Final = re.compile(r"(?:[01][0-9]|2[0-3]):[0-5][0-9]")
_RULE: Final = re.compile(r"[a-z_]+\.[a-z_]+")
_LENGTH: Final = re.compile(r"([1-9][0-9]{0,4}) (s|min|h)")
_UNIT_S: Final = {"s": 1, "min": 60, "h": 60 * 60}
_EXAMPLE: Final = "day: 2026-11-09 at 18:30"


def read_scenario(path: Path) -> tuple[Scenario | None, list[Finding]]:
    """The scenario in `path`, or None with the findings."""
    margin = Margin()
    page = read_page(path, path.name, margin)
    tree = read_tree(page, margin) if page else None
    scenario = _scenario(tree, path, margin) if tree else None
    return (None if margin.has_error() else scenario), margin.sorted_findings()


def check_course(path: Path) -> list[Finding]:
    """Every finding of a course file."""
    margin = Margin()
    course = _course(path, margin)
    folder = path.parent.parent
    if course is not None and (folder / shelf.PROGRAM_FILE).is_file():
        weekly = [typing for stretch in course.stretches for typing in stretch.usual]
        check_prompts((*course.usual, *weekly), known_in({folder}), margin)
    return margin.sorted_findings()


def _scenario(tree: Mapped, path: Path, margin: Margin) -> Scenario:
    fields = Fields(tree, margin, "The scenario")
    called = fields.text("scenario", "scenario: WHAT IT SHOWS")
    plan = _plan(fields, path)
    days = _days(fields, path)
    scenario = Scenario(
        called.value if called else "",
        str(plan) if plan else "",
        _usual(fields, path, plan),
        days,
        tree.place,
    )
    fields.close(("scenario", "plan", "usual", "days"))
    _check_names(scenario, margin)
    checked = any(day.all_day or any(isinstance(e, Seen) for e in day.talk) for day in days)
    if not checked and not margin.has_error():
        margin.note("scenario.nothing_checked", tree.place, "The scenario checks nothing.")
    return scenario


def _check_names(scenario: Scenario, margin: Margin) -> None:
    plans = {scenario.plan_file, *(day.plan_file for day in scenario.days)} - {""}
    found = {shelf.program_folder_for(Path(one), shelf.says(Path(one), "program")) for one in plans}
    known = known_in({folder for folder in found if folder is not None})
    talk = [entry for day in scenario.days for entry in day.talk]
    typed = [entry for entry in talk if isinstance(entry, Typing)]
    asked = [
        Typing(one.value, "", values.place_after(Text("", one.place), len(f"{one.kind}: ")))
        for one in (*talk, *(check for day in scenario.days for check in day.all_day))
        if isinstance(one, Seen) and one.kind in ("asks", "never asks")
    ]
    check_prompts((*scenario.usual, *typed, *asked), known, margin)


def _plan(fields: Fields, path: Path) -> Path | None:
    return _plan_called(fields.text("plan", "plan: plans/l-v.yaml"), path, fields.margin)


def _plan_called(text: Text | None, path: Path, margin: Margin) -> Path | None:
    if text is None:
        return None
    found = shelf.plan_of_scenario(path, text.value)
    if found is None:
        what = f'There is no plan "{text.value}" beside the scenario or in the shipped programs.'
        margin.note("scenario.plan", text.place, what)
    return found


def _usual(fields: Fields, path: Path, plan: Path | None) -> tuple[Typing, ...]:
    node = fields.node("usual")
    if node is None:
        return ()
    if isinstance(node, Listed):
        return _typings(node.items, fields.margin)
    text = values.plain_text(node, fields.margin, "usual")
    if text is None or plan is None:
        return ()
    course = shelf.course_called(text.value, path, plan)
    if course is None:
        what = f'There is no course "{text.value}" in the program or beside the scenario.'
        fields.margin.note("scenario.usual", text.place, what)
        return ()
    read = _course(course, fields.margin)
    return read.usual if read else ()


def read_course(path: Path) -> tuple[Course | None, list[Finding]]:
    """The course in `path`, or None with the findings."""
    margin = Margin()
    course = _course(path, margin)
    return (None if margin.has_error() else course), margin.sorted_findings()


def _course(path: Path, margin: Margin) -> Course | None:
    page = read_page(path, f"courses/{path.name}", margin)
    tree = read_tree(page, margin) if page else None
    if tree is None:
        return None
    fields = Fields(tree, margin, "The course")
    called = fields.text("course", "course: smooth")
    trains = _weekdays(fields, "trains")
    found = _typings(fields.listed("usual", "usual:\n  - pain now: 1"), margin)
    stretches = tuple(
        stretch
        for item in fields.listed("weeks")
        if (stretch := _stretch_of_weeks(item, margin)) is not None
    )
    fields.close(("course", "trains", "usual", "weeks"))
    name = called.value if called else ""
    return Course(name, found, TRAINS if trains is None else trains, stretches)


def _stretch_of_weeks(item: Node, margin: Margin) -> Stretch | None:
    tree = only_map(item, margin, "A line of the weeks")
    if tree is None:
        return None
    fields = Fields(tree, margin, "The line of the weeks")
    weeks = fields.text("weeks", "weeks: 4 to 5")
    span = values.span(weeks, margin, _WEEKS, "The weeks") if weeks else None
    on, trains = _weekdays(fields, "on"), _weekdays(fields, "trains")
    found = _typings(fields.listed("usual"), margin)
    fields.close(("weeks", "on", "trains", "usual"))
    if span is None:
        return None
    return Stretch(int(span[0]), int(span[1]), on or (), trains, found, tree.place)


def _weekdays(fields: Fields, key: str) -> tuple[str, ...] | None:
    """The weekdays after `key`; none for `never`, None where the line is not there."""
    text = fields.text(key)
    if text is None or (key == "trains" and text.value == "never"):
        return None if text is None else ()
    named = [
        values.one_of(piece, fields.margin, WEEKDAYS, "A day of the week")
        for piece in values.pieces(text)
    ]
    return tuple(day for day in named if day)


def _typings(items: tuple[Node, ...], margin: Margin) -> tuple[Typing, ...]:
    found: list[Typing] = []
    for item in items:
        pair = _pair(item, margin)
        if pair is not None:
            found.append(_typing(pair))
    return tuple(found)


def _pair(item: Node, margin: Margin) -> Pair | None:
    tree = only_map(item, margin, "A line of the talk")
    if tree is None:
        return None
    for extra in tree.pairs[1:]:
        what = f'"{extra.key.value}" needs a dash of its own.'
        margin.note("scenario.check", extra.key.place, what, f"- {extra.key.value}: ...")
    return tree.pairs[0]


def _typing(pair: Pair) -> Typing:
    typed = pair.value.value if isinstance(pair.value, Text) else ""
    return Typing(pair.key.value, typed, pair.key.place)


# ---------------------------------------------------------------- days


def _days(fields: Fields, path: Path) -> tuple[ScenarioDay, ...]:
    found: list[ScenarioDay] = []
    for item in fields.listed("days", f"days:\n  - {_EXAMPLE}"):
        tree = only_map(item, fields.margin, "A day")
        if tree is not None:
            found.extend(_day_lines(tree, path, fields.margin))
    return tuple(found)


def _day_lines(tree: Mapped, path: Path, margin: Margin) -> list[ScenarioDay]:
    fields = Fields(tree, margin, "The day")
    one, several = fields.pair("day"), fields.pair("days")
    when = one or several
    if when is None:
        margin.note("scenario.day", tree.place, "The entry does not say its day.", _EXAMPLE)
        return []
    text = values.plain_text(when.value, margin, when.key.value)
    talk = tuple(e for item in fields.listed("talk") if (e := _entry(item, margin)))
    checks = tuple(e for item in fields.listed("all day") if (e := _all_day(item, margin)))
    plan = _plan_called(fields.text("plan"), path, margin)
    fields.close(("day", "days", "plan", "talk", "all day"))
    dates, time = _dates(text, margin) if text else ([], "")
    new = str(plan) if plan else ""
    return [ScenarioDay(day, time, talk, checks, when.key.place, new) for day in dates]


def _dates(text: Text, margin: Margin) -> tuple[list[str], str]:
    match = _DAYS.fullmatch(text.value)
    time = match.group(2) if match else ""
    if match is None or not _TIME.fullmatch(time):
        what = f'"{text.value}" is not a day and a time.'
        margin.note("scenario.day", text.place, what, _EXAMPLE)
        return [], ""
    said = Text(match.group(1), text.place)
    every = _EVERY.fullmatch(said.value)
    if every is not None:
        return _stretch(every, said, margin), time
    read = [values.date(piece, margin, "The day") for piece in values.pieces(said)]
    return [day for day in read if day], time


def _stretch(every: re.Match[str], said: Text, margin: Margin) -> list[str]:
    first = values.date(Text(every.group(1), said.place), margin, "The first day")
    last = values.date(Text(every.group(2), said.place), margin, "The last day")
    if first is None or last is None:
        return []
    if last < first:
        margin.note("value.range_turned", said.place, f'"{said.value}" does not rise.')
        return []
    day, end = datetime.date.fromisoformat(first), datetime.date.fromisoformat(last)
    step = datetime.timedelta(days=int(every.group(3)))
    return [(day + step * n).isoformat() for n in range((end - day) // step + 1)]


# ---------------------------------------------------------------- lines of the talk


def _entry(item: Node, margin: Margin) -> Entry | None:
    pair = _pair(item, margin)
    if pair is None:
        return None
    if pair.key.value in CHECKS:
        return _seen(pair, margin)
    if pair.key.value == "happens":
        return _happening(pair, margin)
    if pair.key.value == BREAK:
        return _break(pair, margin)
    if not isinstance(pair.value, Text) and not _is_blank(pair):
        margin.note("value.not_words", pair.key.place, "A prompt has what is typed after it.")
    return _typing(pair)


def _is_blank(pair: Pair) -> bool:
    return not isinstance(pair.value, Listed | Mapped)


def _happening(pair: Pair, margin: Margin) -> Happening | None:
    text = values.plain_text(pair.value, margin, "happens")
    if text is None:
        return None
    if text.value not in HAPPENINGS:
        what = f'"{text.value}" cannot happen.{did_you_mean(text.value, HAPPENINGS)}'
        margin.note("scenario.happens", text.place, what, ", ".join(HAPPENINGS))
        return None
    return Happening(text.value, pair.key.place)


def _break(pair: Pair, margin: Margin) -> Happening | None:
    """For how long nothing is typed: `13 min`."""
    text = values.plain_text(pair.value, margin, BREAK)
    match = _LENGTH.fullmatch(text.value) if text else None
    if text is not None and match is None:
        what = f'"{text.value}" is not the length of a break.'
        margin.note("scenario.happens", text.place, what, "break: 13 min")
    if match is None:
        return None
    return Happening(BREAK, pair.key.place, int(match.group(1)) * _UNIT_S[match.group(2)])


def _all_day(item: Node, margin: Margin) -> Seen | None:
    pair = _pair(item, margin)
    if pair is None:
        return None
    if pair.key.value not in CHECKS:
        what = f'"{pair.key.value}" is no check.{did_you_mean(pair.key.value, CHECKS)}'
        margin.note("scenario.check", pair.key.place, what, ", ".join(CHECKS))
        return None
    return _seen(pair, margin)


def _seen(pair: Pair, margin: Margin) -> Seen | None:
    kind = pair.key.value
    text = values.plain_text(pair.value, margin, kind)
    if text is None:
        return None
    if kind == "stops" and text.value not in facts.STOPS:
        what = f'"{text.value}" is no kind of stop.{did_you_mean(text.value, facts.STOPS)}'
        margin.note("scenario.check", text.place, what, " or ".join(facts.STOPS))
    if kind == "decided by" and not _RULE.fullmatch(text.value):
        what = f'"{text.value}" is not the id of a rule.'
        margin.note("scenario.check", text.place, what, "decided by: pain.in_set")
    return Seen(kind, text.value, pair.key.place)
