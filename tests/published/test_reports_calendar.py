"""The calendar file is read by an independent reader of RFC 5545, and keeps to the plan's spacing."""

from __future__ import annotations

import itertools
from datetime import date, timedelta

import icalendar
import pytest

from coach.reports.calendar_file import as_calendar, escaped, folded, next_days
from coach.reports.facts import Facts, Lifted
from tests.reports import made_up


def events(facts: Facts, today: date) -> list[icalendar.cal.Component]:
    calendar = icalendar.Calendar.from_ical(as_calendar(facts, today))
    return list(calendar.walk("VEVENT"))


def week() -> Facts:
    return made_up.facts(made_up.sat(0), made_up.sat(2))


def test_the_reader_finds_whole_days_and_the_review() -> None:
    today = made_up.MONDAY + timedelta(days=3)
    found = events(week(), today)
    assert [str(one["summary"]) for one in found][-1] == "Review of the home program"
    assert found[-1].decoded("dtstart") == date(2027, 1, 31)
    assert found[0].decoded("dtstart") == made_up.MONDAY + timedelta(days=4)
    for one in found:
        assert one.decoded("dtend") - one.decoded("dtstart") == timedelta(days=1)
        assert one.decoded("dtstamp").tzinfo is not None
        assert not one.errors
    assert len({str(one["uid"]) for one in found}) == len(found)


def test_sessions_are_spaced_as_the_plan_says_and_never_more_than_its_week() -> None:
    days = next_days(week(), made_up.MONDAY + timedelta(days=3))
    plan = made_up.sample_plan().plan
    apart = max(one.apart_days for one in plan.doses)
    assert all((b - a).days >= apart for a, b in itertools.pairwise(days))
    trained = [made_up.MONDAY, made_up.MONDAY + timedelta(days=2)]
    for day in days:
        inside = [d for d in (*trained, *days) if 0 <= (day - d).days < 7]
        assert len(inside) <= plan.limits.sessions_a_week


def test_no_session_comes_after_the_review_date() -> None:
    review = date.fromisoformat(made_up.sample_plan().plan.review_by)
    assert next_days(week(), review) == [review]
    assert next_days(week(), review + timedelta(days=1)) == []


def test_a_closed_plan_has_no_sessions_until_it_is_opened() -> None:
    stopped = made_up.sat(2, made_up.stop(2), ended="stopped")
    lift = Lifted(1, "in person", "M. Aalto", made_up.day(3), made_up.opened(3))
    today = made_up.MONDAY + timedelta(days=4)
    assert [str(e["summary"]) for e in events(made_up.facts(stopped), today)] == [
        "Review of the home program"
    ]
    assert next_days(made_up.facts(stopped, lifts=(lift,)), today)


def test_a_diary_that_cannot_be_read_in_full_has_no_sessions() -> None:
    broken = made_up.facts(made_up.sat(0), damage=("line 7, 2026-11-02",))
    assert next_days(broken, made_up.MONDAY + timedelta(days=4)) == []


def test_lines_end_as_the_standard_says_and_none_is_over_75_octets() -> None:
    text = as_calendar(week(), made_up.MONDAY)
    assert text.endswith("END:VCALENDAR\r\n")
    assert "\n" not in text.replace("\r\n", "")
    assert max(len(line.encode()) for line in text.split("\r\n")) <= 75


@pytest.mark.parametrize("letter", ["a", "é", "漢", "\U0001f9be"])
def test_a_long_line_is_folded_without_cutting_a_letter(letter: str) -> None:
    line = "SUMMARY:" + letter * 300
    assert max(len(part.encode()) for part in folded(line).split("\r\n")) <= 75
    assert folded(line).replace("\r\n ", "") == line


def test_text_values_are_escaped_and_read_back() -> None:
    assert escaped("a;b,c\\d\ne") == "a\\;b\\,c\\\\d e"


def test_nothing_about_a_body_stands_in_it() -> None:
    text = as_calendar(made_up.ten_weeks_facts(), date(2026, 11, 7)).lower()
    assert not [word for word in ("pain", "shoulder", "arm", "d.o.", "throw") if word in text]


def test_the_same_diary_gives_the_same_bytes() -> None:
    assert as_calendar(week(), made_up.MONDAY) == as_calendar(week(), made_up.MONDAY)
