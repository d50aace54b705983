"""Several diaries on one page: the closed plan first, the unreadable one named."""

from __future__ import annotations

from coach.reports.as_html import as_html
from coach.reports.as_text import as_text
from coach.reports.facts import Sat
from coach.reports.overview import Visitor, in_order, overview_page, page_name
from coach.reports.page import Table
from tests.reports import made_up


def visitor(source: str, *sats: Sat, initials: str = "D.O.") -> Visitor:
    facts = made_up.facts(*sats)
    plan = facts.bound.plan._replace(initials=initials)
    return Visitor(facts._replace(bound=facts.bound._replace(plan=plan)), source)


CALM = visitor("calm", made_up.sat(0), initials="A.A.")
CALLED = visitor(
    "called", made_up.sat(1, decisions=(("layoff.gap", "contact", "Call first."),)), initials="B.B."
)
CLOSED = visitor("closed", made_up.sat(2, made_up.stop(2), ended="stopped"), initials="C.C.")


def test_a_closed_plan_stands_first_then_what_waits() -> None:
    given = [CALM, CALLED, CLOSED]
    assert [one.source for one in in_order(given)] == ["closed", "called", "calm"]
    assert in_order(given[::-1]) == in_order(given)


def test_each_athlete_has_a_row_and_what_waits_is_told() -> None:
    text = as_text(overview_page([CALM, CALLED, CLOSED], []))
    assert text.index("C.C., left arm (closed): The plan is") < text.index(
        "B.B., left arm (called): Tue"
    )
    assert "A.A., left arm (calm): nothing waits for you." in text
    assert "3 diaries read." in text
    (table,) = overview_page([CALM, CALLED, CLOSED], []).sections[1].blocks
    assert isinstance(table, Table)
    assert [row[:2] for row in table.rows] == [
        ("C.C. (closed)", "closed"), ("B.B. (called)", "open"), ("A.A. (calm)", "open"),
    ]  # fmt: skip


def test_a_diary_read_in_part_is_neither_open_nor_last() -> None:
    broken = visitor("part", made_up.sat(0), initials="D.D.")
    recorded = broken.facts.recorded._replace(damage=("line 7, 2026-11-02",))
    broken = broken._replace(facts=broken.facts._replace(recorded=recorded))
    assert [v.source for v in in_order([CALM, broken, CALLED, CLOSED])][:2] == ["closed", "part"]
    text = as_text(overview_page([broken], []), 1000)
    assert "D.D. (part)  not known" in text


def test_a_diary_that_could_not_be_read_is_named() -> None:
    text = as_text(overview_page([CALM], [("x.sqlite", "The diary is damaged.")]))
    assert "* x.sqlite: The diary is damaged." in text
    alone = as_text(overview_page([], [("x.sqlite", "The diary is damaged.")]))
    assert "No diary could be read." in alone


def test_pages_are_linked_by_plain_file_names() -> None:
    page = as_html(overview_page([CALM._replace(page_file="01-a-a.html")], []))
    assert '<a href="01-a-a.html">The page of A.A. (calm)</a>' in page


def test_a_file_name_holds_letters_numbers_and_dashes_only() -> None:
    assert page_name(2, CALM.facts) == "02-a-a.html"
    odd = visitor("odd", initials="../\u202e<x>&é 1")
    assert page_name(1, odd.facts) == "01-x-1.html"
    assert page_name(1, visitor("none", initials="...").facts) == "01-athlete.html"
