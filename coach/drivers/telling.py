"""`coach diary` and `coach visit`: a diary read, its report shown or written.

Law: diaries are read only, whole as far as they can be read; what cannot is named. A page goes to a
file of its owner's alone, or to standard output. Nothing is shown that was not recorded.
"""

from __future__ import annotations

import json
import sys
from datetime import date, timedelta
from pathlib import Path
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.drivers.exit_codes import BAD_FILE, DONE, USAGE
from coach.drivers.reading import Given, diary_given, from_rows, recent_given
from coach.journal.folder import make_folder
from coach.journal.outgoing import write_whole
from coach.journal.trouble import MISSING, Trouble
from coach.reports.as_html import as_html
from coach.reports.as_text import as_text
from coach.reports.diary import (
    ASCII,
    BLOCKS,
    NOTHING,
    Told,
    day_lines,
    diary_as_values,
    diary_lines,
)
from coach.reports.facts import day_of, first_day, gather
from coach.reports.overview import Visitor, in_order, overview_page, page_name
from coach.reports.visit import visit_page

if TYPE_CHECKING:
    from collections.abc import Callable

    from coach.model.program import Bound
    from coach.reports.facts import Facts
    from coach.reports.page import Page

WEEKS: Final = 4
NOT_A_DAY: Final = "A day is written like this: 2026-11-09."


def day_said(word: str) -> date:
    """An ISO day as typed; raises `Trouble` (2) for another."""
    try:
        return date.fromisoformat(word)
    except ValueError:
        raise Trouble(NOT_A_DAY, USAGE) from None


# ---------------------------------------------------------------- the athlete


class Wanted(NamedTuple):
    """What `coach diary` was asked for: one day, or so many weeks; how it is shown."""

    day: str | None = None
    weeks: int = WEEKS
    plain: bool = False
    as_json: bool = False


def show_diary(folder: Path, wanted: Wanted, today: date) -> int:
    """Show this user's diary; the exit code. Raises `Trouble`."""
    until = day_said(wanted.day) if wanted.day else today
    since = until if wanted.day else today - timedelta(days=7 * wanted.weeks - 1)
    facts = facts_or_none(folder, since, until)
    if wanted.as_json:
        values = {"days": []} if facts is None else diary_as_values(facts)
        sys.stdout.write(json.dumps(values, indent=1) + "\n")
        return DONE
    plain = wanted.plain or not draws()
    if facts is None:
        lines = [Told("say", NOTHING)]
    elif wanted.day:
        lines = day_lines(facts._replace(until=today.isoformat()), facts.days[0])
    else:
        lines = diary_lines(facts, plain=plain, strokes=BLOCKS if has_blocks() else ASCII)
    damage = facts.recorded.damage if facts is not None else ()
    lines += [Told("say", f"Cannot be read: {one}.") for one in damage]
    speak(lines)
    return DONE


def facts_or_none(folder: Path, since: date, until: date) -> Facts | None:
    """The facts of this user's diary; None where there is no diary or no plan in it yet."""
    try:
        given = recent_given(folder, since.isoformat())
    except Trouble as trouble:
        if trouble.code != MISSING:
            raise
        return None
    return gather(given.bound, given.recorded, since.isoformat(), until.isoformat())


def draws() -> bool:
    """Whether somebody looks at a terminal that can draw."""
    import os

    return sys.stdout.isatty() and os.environ.get("TERM", "") != "dumb"


def has_blocks() -> bool:
    """Whether the terminal's letters hold a full block and a middle dot."""
    try:
        (BLOCKS.bar + BLOCKS.axis).encode(sys.stdout.encoding or "ascii")
    except (UnicodeEncodeError, LookupError):
        return False
    return True


def speak(lines: list[Told]) -> None:
    """Lines on standard output: heads apart, sentences wrapped, pictures as they are."""
    from coach.drivers.cleaned import cleaned
    from coach.drivers.line_voice import LineVoice

    voice = LineVoice()
    has_heads = any(line.kind == "head" for line in lines)
    for number, line in enumerate(lines):
        if line.kind == "head" and number:
            sys.stdout.write("\n")
        if line.kind == "row":
            sys.stdout.write(f"  {cleaned(line.text)}".rstrip() + "\n")
        else:
            voice.say(line.text if line.kind == "head" or not has_heads else f"  {line.text}")


# ---------------------------------------------------------------- the clinician


def show_visit(
    given: Given, since: str | None, out: str | None, today: date, *, invented: bool = False
) -> int:
    """The visit page of one diary: to a file with its text twin beside it, or as text."""
    page = page_of(given, since, today, invented=invented)
    if out is None:
        sys.stdout.write(as_text(page))
        return DONE
    for path in written(page, Path(out)):
        sys.stdout.write(f"Written: {path.name}\n")
    return DONE


def page_of(given: Given, since: str | None, today: date, *, invented: bool = False) -> Page:
    """The page from `since` (an ISO day; else the whole diary) to `today`."""
    return visit_page(facts_from(given, since, today), invented=invented)


def facts_from(given: Given, since: str | None, today: date) -> Facts:
    """The facts of those days. Raises `Trouble` (2) for a day that is none or still to come."""
    last = today.isoformat()
    first = day_said(since).isoformat() if since else first_day(given.recorded, last)
    if first > last:
        raise Trouble("That day is still to come, so there is nothing to show.", USAGE)
    return gather(given.bound, given.recorded, first, last)


def written(page: Page, path: Path) -> list[Path]:
    """Write the page; `.txt` gets the text alone, any other name the page and a twin beside it."""
    if path.suffix == ".txt":
        write_whole(path, as_text(page))
        return [path]
    twin = path.with_suffix(".txt")
    write_whole(path, as_html(page))
    write_whole(twin, as_text(page))
    return [path, twin]


def show_visits(paths: list[Path], since: str | None, out: str | None, today: date) -> int:
    """Diaries received: one overview, who needs somebody first, and a page each.

    `out` names a folder, made where it is not there; without it all is text on standard output.
    The exit code is 0, or 65 where one of them could not be read.
    """
    visitors: list[Visitor] = []
    unread: list[tuple[str, str]] = []
    for path in paths:
        try:
            facts = facts_from(diary_given(path), since, today)
        except Trouble as trouble:
            unread.append((path.name, trouble.words))
            continue
        visitors.append(Visitor(facts, path.name))
    named = [
        one._replace(page_file=page_name(place, one.facts))
        for place, one in enumerate(in_order(visitors), 1)
    ]
    if out is None:
        pages = [overview_page(visitors, unread), *(visit_page(one.facts) for one in named)]
        sys.stdout.write("\n\n".join(as_text(page) for page in pages))
    else:
        write_set(named, unread, Path(out))
    return BAD_FILE if unread else DONE


def write_set(named: list[Visitor], unread: list[tuple[str, str]], folder: Path) -> None:
    """The overview and every page with its text twin."""
    if folder.exists() and not folder.is_dir():
        raise Trouble("Several diaries make several pages, so name a folder.", USAGE)
    make_folder(folder)
    paths = written(overview_page(named, unread), folder / "overview.html")
    for one in named:
        paths += written(visit_page(one.facts), folder / one.page_file)
    for path in paths:
        sys.stdout.write(f"Written: {path.name}\n")


def invented_given(sample: Callable[[], Bound]) -> tuple[Given, date]:
    """The invented diary of ten weeks and its last day."""
    from coach.drivers.invented_days import invented_diary

    given = from_rows(invented_diary(sample()))
    last = max(day_of(sat) for sat in given.recorded.sessions)
    return given, date.fromisoformat(last)
