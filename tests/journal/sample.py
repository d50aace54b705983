"""An invented athlete's diary for these tests."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from coach.journal import Journal
from coach.model.flags import Section
from coach.model.history import DayRecord, Done, Hold

if TYPE_CHECKING:
    from pathlib import Path

START = datetime(2026, 11, 9, 18, 0, tzinfo=UTC)
HEADER = {"program": "p1", "plan": "q1", "rules": "r1"}


def instant(day: int, minute: int = 0) -> str:
    """An ISO instant `day` days and `minute` minutes after the first session."""
    return (START + timedelta(days=day, minutes=minute)).isoformat()


def record(day: int, **changes: object) -> DayRecord:
    """A quiet finished day."""
    opened = instant(day)
    done = (Done("side-lying external rotation", 3, loaded=True, ended_at=instant(day, 20)),)
    quiet = DayRecord(opened[:10], opened, "done", 1, 1.0, 1.0, 1.0, 8.0, done=done)
    return quiet._replace(**changes)  # type: ignore[arg-type]


def stop(day: int, **changes: object) -> Hold:
    """A stop for tingling."""
    quiet = Hold(
        0, "S08", "same day", "numb_tingle", "my hand tingles", instant(day)[:10], instant(day), 1
    )
    return quiet._replace(**changes)  # type: ignore[arg-type]


def sit(journal: Journal, day: int, **changes: object) -> int:
    """One whole session with two answers; its number."""
    session = journal.begin(HEADER, instant(day), ("Hello.",))
    journal.append(session, "typed", {"text": "1"}, ("Pain now:",), instant(day, 1))
    closing = record(day, **changes)
    journal.append(session, "typed", {"text": "no"}, ("Done.",), instant(day, 2), close=closing)
    return session


def filled(folder: Path, days: int) -> None:
    """A diary of `days` sessions, one a day."""
    with Journal.open(folder) as journal:
        for day in range(days):
            sit(journal, day, alone=(Section.ARM,))
