"""Makes the diaries that the measures open: a plan in force today, and years of sessions.

Law: all of it is invented, lies in a folder that is thrown away, and is written by the diary itself.
"""

import contextlib
import re
import shutil
import sqlite3
from datetime import datetime, timedelta
from pathlib import Path

from coach.journal import Journal
from coach.journal.chain import Chain, Row, written
from coach.journal.days import day_body
from coach.model.history import DayRecord, Done
from coach.texts.compiled import to_json
from coach.texts.doors import bound_from

ROOT = Path(__file__).resolve().parent.parent.parent
HEADER = {"program": "p1", "plan": "q1", "rules": "r1"}


def plan_in_force(scratch: Path) -> Path:
    """A copy of the sample program whose plan began last week, whatever today is."""
    shutil.copytree(ROOT / "dialogs", scratch / "dialogs")
    plan = scratch / "dialogs" / "steady-shoulder" / "plans" / "d-o.yaml"
    today = datetime.now().astimezone().date()
    began, review = today - timedelta(days=7), today + timedelta(days=60)
    text = plan.read_text("utf-8")
    first_day = re.search(r"^runs: (\S+),", text, re.MULTILINE)
    assert first_day, "the plan says when it runs"
    text = re.sub(r"(?m)^runs: .*$", f"runs: {began}, review by {review}", text)
    plan.write_text(text.replace(first_day[1], str(began)), "utf-8")
    return plan


def with_plan(home: Path, plan: Path) -> Path:
    """A diary folder below `home` in which the plan is in place."""
    bound, findings = bound_from(plan)
    assert bound is not None, findings
    folder = home / "data" / "coach"
    with Journal.open(folder) as journal:
        at = datetime.now().astimezone() - timedelta(days=7)
        journal.keep_plan(to_json(bound), bound.digest, plan.name, at.isoformat())
    return folder


def fill(folder: Path, sessions: int) -> None:
    """One quiet session a day, the last of them yesterday; all but that one in one transaction."""
    first = datetime.now().astimezone() - timedelta(days=sessions)
    rows = []
    for number in range(1, sessions):
        opened = (first + timedelta(days=number - 1)).isoformat()
        day = written(day_body(quiet_day(opened)))
        rows.append(Row(0, number, "begin", "", 0, opened, written(HEADER), "[]", b""))
        rows.append(Row(0, number, "event", "typed", 0, opened, '{"text":"1"}', '["a"]', b""))
        rows.append(Row(0, number, "day", "", 0, opened, day, "[]", b""))
    connection = sqlite3.connect(folder / "diary.sqlite", isolation_level=None)
    chain = Chain(connection)
    chain.tail()
    chain.add(rows)
    connection.close()
    yesterday = (first + timedelta(days=sessions - 1)).isoformat()
    with Journal.open(folder) as journal:
        session = journal.begin(HEADER, yesterday, ("Hello.",))
        closing = quiet_day(yesterday)
        journal.append(session, "typed", {"text": "1"}, ("Done.",), yesterday, close=closing)


def quiet_day(opened: str) -> DayRecord:
    """A finished day with a little pain."""
    done = (Done("side-lying external rotation", 3, loaded=True, ended_at=opened),)
    return DayRecord(opened[:10], opened, "done", 1, 1.0, 1.0, 1.0, 8.0, done=done)


def answers_in(folder: Path) -> int:
    """How many answers the diary holds."""
    with contextlib.closing(sqlite3.connect(folder / "diary.sqlite")) as connection:
        (count,) = connection.execute(
            "select count(*) from record where sort = 'event' and name = 'typed'"
        ).fetchone()
    return int(count)
