"""A diary file handed to the reports: its rows as recorded sessions, and its plan.

Law: read only. A session whose record cannot be read is told as cut off and named as damage, never
left out and never guessed.
"""

from __future__ import annotations

import json
from itertools import groupby
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.journal.chain import Row
from coach.journal.days import day_record, hold_from
from coach.journal.diary import BEGIN, DAY, EVENT, FILE_NAME, HOLD, LIFT, NO_DIARY, PLAN, WRONG
from coach.journal.incoming import head_of, text_of
from coach.journal.trouble import MISSING, NOT_A_DIARY, Trouble
from coach.journal.whole import Whole, checked, read_since, read_whole
from coach.reports.facts import Event, Lifted, Recorded, Sat
from coach.reports.whole_record import MOST_BYTES, Kept, NotADiaryError, readable_lines, says_diary

if TYPE_CHECKING:
    from pathlib import Path

    from coach.model.history import DayRecord
    from coach.model.program import Bound

NO_PLAN: Final = "The diary holds no plan, so there is nothing to show."


class Given(NamedTuple):
    """A diary as the reports take it: what was recorded, the plan in place, the raw rows."""

    recorded: Recorded
    bound: Bound
    rows: tuple[Row, ...]


def diary_given(path: Path) -> Given:
    """A diary by its folder, its file, or a file made by `coach export --as jsonl`.

    Raises `Trouble`: 66 where there is none, 65 for another kind of file or a newer format.
    """
    file = path / FILE_NAME if path.is_dir() else path
    if not file.exists():
        raise Trouble(NO_DIARY, MISSING)
    if not says_diary(head_of(file)):
        return from_rows(read_whole(file))
    try:
        found = readable_lines(text_of(file, MOST_BYTES))
    except NotADiaryError as refused:
        raise Trouble(str(refused), NOT_A_DIARY) from None
    return from_rows(checked([one if isinstance(one, int) else row_back(one) for one in found]))


def recent_given(folder: Path, since: str) -> Given:
    """This user's diary from an ISO day on, with all its plans and stops. Raises `Trouble`."""
    return from_rows(read_since(folder / FILE_NAME, since))


def from_rows(whole: Whole) -> Given:
    """What rows say. Raises `Trouble` where no plan is among them."""
    recorded = recorded_of(whole)
    return Given(recorded, plan_of(whole.rows), whole.rows)


def recorded_of(whole: Whole) -> Recorded:
    """Rows as sessions, oldest first, with lifts, wrong words and plans beside them."""
    damage = list(whole.damage)
    in_session = sorted((row for row in whole.rows if row.session), key=lambda row: row.session)
    sats = [
        sat_of(number, list(rows), damage)
        for number, rows in groupby(in_session, key=lambda row: row.session)
    ]
    lifts = [lifted(row) for row in whole.rows if row.sort == LIFT]
    wrong = [row.at for row in whole.rows if row.sort == WRONG]
    plans = [(row.at, row.name) for row in whole.rows if row.sort == PLAN]
    return Recorded(tuple(sats), tuple(lifts), tuple(wrong), tuple(plans), tuple(damage))


def sat_of(number: int, rows: list[Row], damage: list[str]) -> Sat:
    """One session from its rows."""
    begin = rows[0]
    header = {k: str(v) for k, v in begin.read().items()} if begin.sort == BEGIN else {}
    stops = [hold_from(row.read(), row.about) for row in rows if row.sort == HOLD]
    events = tuple(
        Event(row.name, row.read(), row.at, tuple(map(str, json.loads(row.shown))))
        for row in rows
        if row.sort == EVENT
    )
    records = [read_day(row, damage) for row in rows if row.sort == DAY]
    record = next((one for one in records if one is not None), None)
    first = stops[0] if stops else None
    return Sat(number, begin.at, header, record, first, events, tuple(stops[1:]))


def read_day(row: Row, damage: list[str]) -> DayRecord | None:
    """A day's record; None and a named damage where it has another shape."""
    try:
        return day_record(row.read())
    except (KeyError, TypeError, ValueError):
        damage.append(f"line {row.number}, {row.at[:10]} (the day's record)")
        return None


def lifted(row: Row) -> Lifted:
    """How a stop was opened."""
    body = {name: str(value) for name, value in row.read().items()}
    return Lifted(row.about, body.get("way", ""), body.get("who", ""), body.get("day", ""), row.at)


def kept_rows(rows: tuple[Row, ...]) -> tuple[Kept, ...]:
    """Rows as an export writes them."""
    return tuple(Kept(*row[:-1], row.checksum.hex()) for row in rows)


def rows_back(kept: tuple[Kept, ...]) -> list[Row]:
    """An export's rows as the diary keeps them; a checksum that is none stays unfit."""
    return [row_back(one) for one in kept]


def row_back(kept: Kept) -> Row:
    """One such row."""
    return Row(*kept[:-1], _checksum(kept.checksum))


def _checksum(digits: str) -> bytes:
    try:
        return bytes.fromhex(digits)
    except ValueError:
        return b""


def plan_of(rows: tuple[Row, ...]) -> Bound:
    """The newest plan that can be read. Raises `Trouble` where there is none."""
    from coach.texts.compiled import CopyRefused, from_json

    words, code = NO_PLAN, MISSING
    for row in reversed([row for row in rows if row.sort == PLAN]):
        try:
            return from_json(str(row.read().get("bound", "")))
        except CopyRefused as refused:
            words, code = (str(refused), NOT_A_DIARY) if code == MISSING else (words, code)
    raise Trouble(words, code)
