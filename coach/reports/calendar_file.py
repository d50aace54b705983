"""The next sessions and the review date as a calendar file (RFC 5545).

Law: the days follow the plan's spacing and its most a week, from the last day trained; a closed plan
has none. Nothing about a body stands in it. The same diary gives the same bytes.
"""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from hashlib import sha256
from typing import Final

from coach.reports.facts import WEEK_DAYS, Facts, open_hold
from coach.reports.words import date_of, own

MOST_SESSIONS: Final = 14  # days ahead that are written; set here
FOLD_AT: Final = 75  # octets a line, RFC 5545 section 3.1


def as_calendar(facts: Facts, today: date) -> str:
    """The file's text with CRLF line ends; events are whole days from `today` on."""
    stamp = newest_instant(facts)
    review = date_of(facts.bound.plan.review_by)
    events = [event("session", day, "Exercises at home", stamp) for day in next_days(facts, today)]
    if review is not None:
        events.append(event("review", review, "Review of the home program", stamp))
    lines = [
        "BEGIN:VCALENDAR",
        "VERSION:2.0",
        "PRODID:-//Coach//Home program//EN",
        "CALSCALE:GREGORIAN",
        "METHOD:PUBLISH",
        *(line for lines in events for line in lines),
        "END:VCALENDAR",
    ]
    return "".join(f"{folded(line)}\r\n" for line in lines)


def next_days(facts: Facts, today: date) -> list[date]:
    """The coming days on which a session fits, up to the review date.

    None while the plan is closed, or where a part of the diary cannot be read.
    """
    plan = facts.bound.plan
    if open_hold(facts.recorded) is not None or facts.recorded.damage:
        return []
    trained = [d for day in facts.all_days if day.trained and (d := date_of(day.day)) is not None]
    apart = max([1, *(one.apart_days for one in plan.doses)])
    until = date.fromisoformat(plan.review_by)
    day = max(today, date.fromisoformat(plan.starts))
    if trained:
        day = max(day, trained[-1] + timedelta(days=apart))
    found: list[date] = []
    while day <= until and len(found) < MOST_SESSIONS:
        week = [d for d in (*trained, *found) if (day - d).days < WEEK_DAYS]
        if len(week) < plan.limits.sessions_a_week:
            found.append(day)
            day += timedelta(days=apart)
        else:
            day += timedelta(days=1)
    return found


def newest_instant(facts: Facts) -> str:
    """When the diary was last written, in UTC, as a calendar writes it."""
    instants = [sat.opened_at for day in facts.all_days for sat in day.sessions]
    newest = max(instants, default=f"{facts.until}T00:00:00+00:00")
    try:
        at = datetime.fromisoformat(newest)
    except ValueError:
        at = datetime.fromisoformat(f"{facts.until}T00:00:00+00:00")
    return f"{at.astimezone(UTC):%Y%m%dT%H%M%SZ}"


def event(kind: str, day: date, summary: str, stamp: str) -> list[str]:
    """A whole-day event."""
    mark = sha256(f"{kind} {day.isoformat()}".encode()).hexdigest()[:32]
    return [
        "BEGIN:VEVENT",
        f"UID:{mark}-coach",
        f"DTSTAMP:{stamp}",
        f"DTSTART;VALUE=DATE:{day:%Y%m%d}",
        f"DTEND;VALUE=DATE:{day + timedelta(days=1):%Y%m%d}",
        f"SUMMARY:{escaped(summary)}",
        "TRANSP:TRANSPARENT",
        "END:VEVENT",
    ]


def escaped(text: str) -> str:
    """A text value, RFC 5545 section 3.3.11."""
    for letter in ("\\", ";", ","):
        text = text.replace(letter, f"\\{letter}")
    return own(text)


def folded(line: str) -> str:
    """A line of at most 75 octets, going on after CRLF and a blank; no letter is cut."""
    parts: list[str] = []
    part, size = "", 0
    for letter in line:
        octets = len(letter.encode())
        if size + octets > FOLD_AT - bool(parts):
            parts.append(part)
            part, size = "", 0
        part, size = part + letter, size + octets
    return "\r\n ".join([*parts, part])
