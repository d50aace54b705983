"""The visit page: always the same order, what needs the clinician first, every fact in both drawings."""

from __future__ import annotations

import re
from html.parser import HTMLParser

import pytest

from coach.model.history import DayRecord
from coach.model.ladders import Ladder
from coach.model.quantities import Dose, Load
from coach.reports.as_html import as_html
from coach.reports.as_text import as_text
from coach.reports.facts import Event, Lifted, Sat
from coach.reports.page import Page, Para, Picture, Section, Table
from coach.reports.visit import INVENTED, visit_page
from tests.reports import made_up

ORDER = [
    "What needs you",
    "The week in one picture",
    "Each exercise",
    "Throwing",
    "Load",
    "Sleep and habits",
    "What was not done, and why",
    "Notes",
    "Data quality",
]


class Read(HTMLParser):
    """What a browser would read: tags, attributes, words."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.tags: set[str] = set()
        self.attributes: dict[str, set[str]] = {}
        self.words: list[str] = []
        self.cells: list[list[str]] = []
        self.stack: list[str] = []
        self.feed(page)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.add(tag)
        self.stack.append(tag)
        for name, value in attrs:
            self.attributes.setdefault(name, set()).add(value or "")
        if tag == "tr":
            self.cells.append([])
        if tag in {"td", "th"}:
            self.cells[-1].append("")

    def handle_endtag(self, tag: str) -> None:
        while self.stack and self.stack.pop() != tag:
            continue

    def handle_data(self, data: str) -> None:
        if "style" in self.stack:
            return
        self.words.append(data)
        if {"td", "th"} & set(self.stack):
            self.cells[-1][-1] += data


def section(page: Page, title: str) -> Section:
    return next(one for one in page.sections if one.title == title)


def told(page: Page, title: str) -> str:
    """All words of a section."""
    out = []
    for block in section(page, title).blocks:
        match block:
            case Para():
                out.append(block.text)
            case Table():
                out += [block.caption, *(" | ".join(row) for row in block.rows)]
            case Picture():
                out += [block.title, block.told]
    return "\n".join(out)


def texts(page: Page) -> list[str]:
    """Every text of a page: titles, sentences, captions, heads, cells."""
    out = [page.title, *page.lead]
    for one in page.sections:
        out.append(one.title)
        for block in one.blocks:
            match block:
                case Para():
                    out.append(block.text)
                case Table():
                    out += [block.caption, *block.head, *(c for row in block.rows for c in row)]
                case Picture():
                    out += [block.title, block.told]
    return out


@pytest.fixture(scope="module")
def sample() -> Page:
    return visit_page(made_up.ten_weeks_facts(), invented=True)


# ---------------------------------------------------------------- order and both drawings


def test_sections_stand_in_one_order_on_a_full_and_on_an_empty_page(sample: Page) -> None:
    assert [one.title for one in sample.sections] == ORDER
    assert [one.title for one in visit_page(made_up.facts()).sections] == ORDER


def test_every_fact_of_the_page_is_in_the_text_and_in_the_html(sample: Page) -> None:
    text = as_text(sample, width=100_000)
    words = re.sub(r"\s+", " ", "".join(Read(as_html(sample)).words))
    for fact in texts(sample):
        assert fact in text
        assert re.sub(r"\s+", " ", fact) in words


def test_both_drawings_hold_the_same_table_rows(sample: Page) -> None:
    rows = [
        list(row)
        for one in sample.sections
        for block in one.blocks
        if isinstance(block, Table)
        for row in (block.head, *block.rows)
    ]
    assert Read(as_html(sample)).cells == rows


def test_the_text_twin_keeps_to_its_width_and_loses_no_word(sample: Page) -> None:
    text = as_text(sample)
    assert max(map(len, text.splitlines())) <= 79
    squeezed = re.sub(r"\s+", "", text)
    for one in sample.sections:
        for block in one.blocks:
            if isinstance(block, Para):
                assert re.sub(r"\s+", "", block.text) in squeezed


def test_an_invented_page_says_so_before_anything_else(sample: Page) -> None:
    assert sample.lead[0] == INVENTED
    assert as_text(sample).splitlines()[2] == INVENTED
    assert INVENTED not in as_text(visit_page(made_up.facts(made_up.sat(0))))


def test_the_invented_ten_weeks_hold_a_set_back_a_stop_and_a_return_to_throwing(
    sample: Page,
) -> None:
    assert "ended by pain" in told(sample, "Each exercise")
    assert "prog.down" in told(sample, "Each exercise")
    needs = told(sample, "What needs you")
    assert "code S08" in needs
    assert '"my pinky has been tingling since this morning"' in needs
    assert "Opened on Sun 4 Oct 2026 by M. Aalto (in person)." in needs
    throwing = told(sample, "Throwing")
    assert "no soreness" in throwing
    assert "sore late in a clean session" in throwing


def test_the_same_facts_give_the_same_bytes(sample: Page) -> None:
    again = visit_page(made_up.ten_weeks_facts(), invented=True)
    assert as_html(again) == as_html(sample)
    assert as_text(again) == as_text(sample)


# ---------------------------------------------------------------- what needs you


def test_an_open_stop_comes_first_with_code_and_own_words() -> None:
    page = visit_page(made_up.facts(made_up.sat(2, made_up.stop(2), ended="stopped")))
    first = section(page, "What needs you").blocks[0]
    assert isinstance(first, Para)
    assert first.kind == "need"
    assert "The plan is closed." in first.text
    assert "code S08, how soon: same day" in first.text
    assert '"my pinky tingles"' in first.text


def test_a_stop_before_the_stretch_is_told_as_long_as_it_is_open() -> None:
    closed = made_up.sat(0, made_up.stop(0), ended="stopped")
    lift = Lifted(1, "by word", "", made_up.day(1), made_up.opened(1))
    still = made_up.facts(closed, since=3)
    opened = made_up.facts(closed, since=3, lifts=(lift,))
    assert "The plan is closed." in told(visit_page(still), "What needs you")
    assert "S08" not in told(visit_page(opened), "What needs you")


def test_a_question_in_own_words_waits_and_a_note_does_not() -> None:
    notes = ('"May I swim?"', '"Felt fine."', "Waking pain above usual?")
    needs = told(visit_page(made_up.facts(made_up.sat(0, notes=notes))), "What needs you")
    assert '"May I swim?"' in needs
    assert "Felt fine" not in needs
    assert "usual?" not in needs


def test_a_decision_that_sent_to_the_clinician_waits_with_its_rule() -> None:
    decisions = (("layoff.gap", "contact", "Call first. You were away for 30 days."),)
    needs = told(visit_page(made_up.facts(made_up.sat(0, decisions=decisions))), "What needs you")
    assert "Call first. You were away for 30 days. Rule layoff.gap." in needs


@pytest.mark.parametrize(
    ("last", "words"), [(10, "in 80 days"), (90, "in 0 days"), (91, "was due")]
)
def test_the_review_date_is_told_on_both_sides_of_it(last: int, words: str) -> None:
    needs = told(visit_page(made_up.facts(made_up.sat(0), last=last)), "What needs you")
    assert words in needs


def test_a_phase_is_proposed_only_when_the_diary_shows_all_of_it() -> None:
    early = told(visit_page(made_up.facts(made_up.sat(0), last=6)), "What needs you")
    assert "does not show: weeks in phase at least 4" in early
    late = told(visit_page(made_up.facts(made_up.sat(27), last=28)), "What needs you")
    assert "the diary shows all it asks for. You open it." in late
    flared = made_up.facts(made_up.sat(0), made_up.sat(27, morning_up=True), last=28)
    assert "flares in 14 days at most 0" in told(visit_page(flared), "What needs you")


def test_a_diary_with_a_part_unread_proposes_no_phase_and_says_so_first() -> None:
    found = made_up.facts(made_up.sat(0), made_up.sat(27), last=28)
    assert "the diary shows all it asks for" in told(visit_page(found), "What needs you")
    unread = found._replace(recorded=found.recorded._replace(damage=("line 7, 2026-11-02",)))
    needs = told(visit_page(unread), "What needs you")
    assert needs.startswith("A part of this diary cannot be read, and a stop may have stood there")
    assert "line 7, 2026-11-02" in needs
    assert "the diary shows all it asks for" not in needs


def test_two_weeks_without_an_entry_say_nothing_of_flares() -> None:
    assert "flares in 14 days" not in told(
        visit_page(made_up.facts(made_up.sat(15), last=28)), "What needs you"
    )
    assert "does not show: flares in 14 days at most 0" in told(
        visit_page(made_up.facts(made_up.sat(14), last=28)), "What needs you"
    )


def test_a_fault_of_ours_is_named() -> None:
    broken = made_up.sat(1)._replace(events=(Event("fault", {}, made_up.opened(1)),))
    assert "Coach made a mistake" in told(visit_page(made_up.facts(broken)), "What needs you")


# ---------------------------------------------------------------- exercises and throwing

OPENING = Dose(3, 8, 12, 0, Load("dumbbell", 5, "lb"), 60)


def test_a_move_is_told_from_to_reason_and_rule() -> None:
    up = ("prog.two_for_two", "up", "Reach-across row: One step up in reps.")
    first = made_up.sat(0, ladders=((made_up.ROW, Ladder(OPENING)),))
    then = made_up.sat(
        2, ladders=((made_up.ROW, Ladder(OPENING._replace(reps_high=13))),), decisions=(up,)
    )
    rows = told(visit_page(made_up.facts(first, then)), "Each exercise")
    expected = "Wed 4 Nov | 8 to 12 reps | 8 to 13 reps | One step up in reps. | prog.two_for_two"
    assert expected in rows


def test_another_exercises_reason_is_not_borrowed() -> None:
    up = ("prog.two_for_two", "up", "Hip-hinge reach: One step up in reps.")
    first = made_up.sat(0, ladders=((made_up.ROW, Ladder(OPENING)),))
    then = made_up.sat(
        2, ladders=((made_up.ROW, Ladder(OPENING._replace(reps_high=13))),), decisions=(up,)
    )
    rows = told(visit_page(made_up.facts(first, then)), "Each exercise")
    assert "| not recorded | -" in rows


def test_a_move_on_the_first_day_of_the_stretch_is_seen_against_the_day_before_it() -> None:
    first = made_up.sat(0, ladders=((made_up.ROW, Ladder(OPENING)),))
    then = made_up.sat(2, ladders=((made_up.ROW, Ladder(OPENING._replace(sets=2))),))
    rows = told(visit_page(made_up.facts(first, then, since=2)), "Each exercise")
    assert "Wed 4 Nov | 3 sets | 2 sets | not recorded | -" in rows


def test_an_exercise_tells_planned_and_done_pain_and_what_was_corrected() -> None:
    one = made_up.done(
        sets=2, reps=(12.0, 9.0), pains=(1.0, 4.0), felt=("shrug", "fine"), result="over"
    )
    rows = told(visit_page(made_up.facts(made_up.sat(0, done=(one,)))), "Each exercise")
    assert "12, 9 (2 of 3 sets) | 1, 4 | corrected: shrug; ended by pain" in rows


def test_an_exercise_of_the_phase_that_was_never_done_is_named() -> None:
    rows = told(visit_page(made_up.facts(made_up.sat(0))), "Each exercise")
    expected = "side-lying external rotation, hip-hinge reach, cross-body stretch."
    assert f"In the plan's phase, not done in these days: {expected}" in rows
    whole = told(visit_page(made_up.ten_weeks_facts()), "Each exercise")
    assert "not done in these days" not in whole


# ---------------------------------------------------------------- load, sleep, the rest


def test_the_load_of_a_published_week_is_told_with_its_monotony() -> None:
    """Daily loads 300, 0, 450, 0, 600, 240, 0: 1590 AU, monotony 0.94, strain 1498 (n - 1)."""
    loads = {0: (10, 30), 2: (9, 50), 4: (10, 60), 5: (8, 30)}
    week = [made_up.sat(n, effort=float(e), minutes=float(m)) for n, (e, m) in loads.items()]
    assert "Mon 2 Nov | 4 | 1590 | 0.94 | 1498 | -" in told(
        visit_page(made_up.facts(*week)), "Load"
    )


def test_a_week_with_an_unknown_effort_has_no_figure_and_says_why() -> None:
    week = (made_up.sat(0), made_up.sat(2, effort=None))
    rows = told(visit_page(made_up.facts(*week)), "Load")
    assert "Mon 2 Nov | 1 | - | - | - | effort or minutes not known on 1 day" in rows


def test_an_idle_week_is_not_defined_rather_than_monotonous() -> None:
    assert "not defined: all days alike" in told(visit_page(made_up.facts()), "Load")


def test_fewer_than_7_days_give_no_load_figure() -> None:
    assert "no 7 whole days" in told(visit_page(made_up.facts(made_up.sat(0), last=5)), "Load")


@pytest.mark.parametrize(("hours", "nights"), [(6.0, "0 nights"), (5.9, "1 night: Mon 2 Nov")])
def test_a_short_night_is_one_under_6_hours(hours: float, nights: str) -> None:
    page = visit_page(made_up.facts(made_up.sat(0, sleep_h=hours)))
    assert f"Under 6 h: {nights}." in told(page, "Sleep and habits")


def test_what_was_on_the_list_and_not_begun_is_told_with_the_reason_shown() -> None:
    shown = ("1 reach-across row, left arm: 3 sets.", "2 hip-hinge reach, left arm: 2 sets.")
    why = ("pain.in_set", "end session", "We stop for today.")
    one = made_up.sat(0, decisions=(why,))
    one = one._replace(events=(Event("typed", {}, made_up.opened(0), shown),))
    rows = told(visit_page(made_up.facts(one)), "What was not done, and why")
    assert "Hip-hinge reach, on the list | We stop for today. Rule pain.in_set." in rows
    assert "Reach-across row, on the list" not in rows


def test_every_recorded_decision_stands_with_its_rule() -> None:
    why = ("ready.sleep", "short", "One set fewer. You slept under 6 h.")
    rows = told(visit_page(made_up.facts(made_up.sat(0, decisions=(why,)))), ORDER[6])
    assert "Mon 2 Nov | One set fewer. You slept under 6 h. | short | ready.sleep" in rows


def test_doubts_are_named_by_day() -> None:
    events = (
        Event("typed", {"text": "fix", "at_s": 3}, made_up.opened(0)),
        Event("resumed", {"gap_s": 720, "at_s": 60}, made_up.opened(0)),
        Event("typed", {"text": "3", "at_s": 80}, made_up.opened(0)),
        Event("typed", {"text": "none", "at_s": 82}, made_up.opened(0)),
    )
    one = made_up.sat(0, effort=None)._replace(events=events)
    back = made_up.sat(2)._replace(opened_at=made_up.opened(2).replace("+01:00", "+03:00"))
    page = visit_page(made_up.facts(one, back, damage=("line 7, 2026-11-02",)))
    rows = told(page, "Data quality")
    assert "Cannot be read: line 7, 2026-11-02" in rows
    assert "Mon 2 Nov | no value for effort" in rows
    assert "Mon 2 Nov | an answer was put right (1 time)" in rows
    assert "Mon 2 Nov | taken up again after 12 min" in rows
    assert "Wed 4 Nov | the clock's UTC offset changed" in rows
    assert "within 2 s: 1 time (Mon 2 Nov)" in rows


def test_a_clock_that_went_back_is_named() -> None:
    early = made_up.sat(2)._replace(opened_at=made_up.opened(1))
    page = visit_page(made_up.facts(made_up.sat(1), early, made_up.sat(3)))
    assert "the clock went back" not in told(page, "Data quality")
    back = made_up.sat(2)._replace(opened_at=made_up.opened(0))
    rows = told(visit_page(made_up.facts(made_up.sat(1), back)), "Data quality")
    assert "Mon 2 Nov | the clock went back from 2026-11-03" in rows


def test_a_session_dated_after_today_is_named() -> None:
    ahead = made_up.sat(0, day="2099-01-01")._replace(opened_at="2099-01-01T08:00:00+00:00")
    rows = told(visit_page(made_up.facts(made_up.sat(0), ahead)), "Data quality")
    assert "Dated outside these days, so not shown: Thu 1 Jan 2099." in rows


def test_none_typed_after_3_seconds_is_not_counted_as_quick() -> None:
    events = (
        Event("typed", {"text": "3", "at_s": 80}, made_up.opened(0)),
        Event("typed", {"text": "none", "at_s": 83}, made_up.opened(0)),
    )
    one = made_up.sat(0)._replace(events=events)
    assert "within 2 s" not in told(visit_page(made_up.facts(one)), "Data quality")


def test_a_session_that_was_cut_off_is_told_and_not_guessed() -> None:
    cut = Sat(1, made_up.opened(0), {}, None)
    rows = told(visit_page(made_up.facts(cut)), ORDER[6])
    assert "Mon 2 Nov | the session | cut off; the end was not recorded" in rows


# ---------------------------------------------------------------- harmless

HOSTILE = (
    '"<script>alert(1)</script><img src=x onerror=alert(2)>"',
    '"</style></title></svg><!-- <a href=javascript:alert(3)>"',
    '"\u202eevil\u2066 \x1b[2J\x1b]0;x\x07 \x9b31m\x00 \ud800"',
    '"' + "x" * 10_000 + '?"',
)


def hostile_page() -> Page:
    felt = made_up.done(felt=(HOSTILE[0],), dose=HOSTILE[1], result=HOSTILE[2])
    one = made_up.sat(
        0,
        made_up.stop(0, said=HOSTILE[0], code=HOSTILE[1], tier=HOSTILE[2]),
        notes=HOSTILE,
        done=(felt,),
        decisions=((HOSTILE[0], HOSTILE[1], HOSTILE[2]),),
        threw_yesterday=HOSTILE[0],
    )
    lift = Lifted(1, HOSTILE[0], HOSTILE[1], HOSTILE[2], made_up.opened(1))
    return visit_page(made_up.facts(one, lifts=(lift,), damage=(HOSTILE[2],)))


def test_hostile_words_make_no_markup() -> None:
    clean = Read(as_html(visit_page(made_up.ten_weeks_facts())))
    hostile = Read(as_html(hostile_page()))
    assert hostile.tags <= clean.tags
    assert "script" not in hostile.tags
    assert set(hostile.attributes) <= set(clean.attributes)
    assert "<script>alert(1)</script>" in "".join(hostile.words)


def test_hostile_words_leave_no_letter_that_moves_or_hides() -> None:
    for drawn in (as_html(hostile_page()), as_text(hostile_page())):
        assert not re.search("[\x00-\x09\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069\ud800]", drawn)
        assert "<U+202E>" in drawn.replace("&lt;", "<").replace("&gt;", ">")
    assert as_html(hostile_page()).encode("utf-8")


def test_ten_thousand_letters_are_kept_whole() -> None:
    assert "x" * 10_000 in as_html(hostile_page())
    assert re.sub(r"\s+", "", as_text(hostile_page())).count("x" * 10_000) >= 1


def test_a_page_needs_nothing_from_anywhere(sample: Page) -> None:
    page = as_html(sample)
    read = Read(page)
    assert {"script", "link", "img", "iframe", "object", "form", "base"}.isdisjoint(read.tags)
    assert not [name for name in read.attributes if name.startswith("on")]
    assert {"src", "href", "style"}.isdisjoint(read.attributes)
    assert "url(" not in page
    assert "@import" not in page
    assert "default-src 'none'" in page


def test_every_picture_has_a_title_and_words_for_the_ear(sample: Page) -> None:
    page = as_html(sample)
    for name in re.findall(r'aria-labelledby="(s\d+b\d+)-t \1-d"', page):
        assert f'<title id="{name}-t">' in page
        assert f'<desc id="{name}-d">' in page
    assert page.count("<svg") == page.count('role="img"') == 2


# ---------------------------------------------------------------- size


def year() -> list[Sat]:
    """A year at 4 sessions a week with four exercises each."""
    names = ("side-lying external rotation", made_up.ROW, "hip-hinge reach", "cross-body stretch")
    four = tuple(made_up.done(name, felt=("shrug",)) for name in names)
    why = ("prog.two_for_two", "up", "Reach-across row: One step up in reps, for a while now.")
    notes = ('"A line of own words about the day."',)
    return [
        made_up.sat(n, done=four, decisions=(why, why, why), notes=notes)
        for n in range(365)
        if n % 7 in {0, 2, 4, 5}
    ]


def test_a_year_fits_into_400_kilobytes() -> None:
    page = as_html(visit_page(made_up.facts(*year(), last=364)))
    assert len(page.encode("utf-8")) < 400_000


def test_no_word_praises_blames_or_counts_days(sample: Page) -> None:
    text = as_text(sample)
    assert not re.search(
        r"(?i)streak|great|good job|(days|weeks|sessions) in a row|missed|skipped|failed|!", text
    )


def test_a_record_of_an_unknown_shape_is_still_told() -> None:
    odd = DayRecord(made_up.day(0), "yesterday", "odd", 1)
    page = visit_page(made_up.facts(Sat(1, "yesterday", {}, odd)))
    assert "the clock's time cannot be read" in told(page, "Data quality")
