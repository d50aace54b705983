"""What is written is read back: sessions, days, stops, plans."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from coach.journal import Journal
from coach.model.flags import Section
from coach.model.history import DayRecord, Done
from tests.journal.sample import HEADER, instant, record, sit, stop

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path


@pytest.fixture
def journal(tmp_path: Path) -> Iterator[Journal]:
    with Journal.open(tmp_path / "coach") as opened:
        yield opened


def test_a_new_diary_has_an_empty_past(journal: Journal) -> None:
    past = journal.history()
    assert past.records == ()
    assert past.hold is None
    assert past.last_at == ""
    assert journal.unfinished() is None
    assert journal.current_plan() is None


def test_a_day_comes_back_field_by_field(journal: Journal) -> None:
    full = DayRecord(
        "2026-11-09", instant(0), "partial", 3, 1.0, 2.0, 3.5, 5.5, "none", "match", True,
        (Done("reach-across row", 2, loaded=False, ended_at=instant(0, 9), result="eased"),),
        (Section.ARM, Section.NIGHT), 6.0, 25.0, ("it's ok \udc80 \x00",), (("row", "kneeling"),),
        True, ("ache kind",), ("light band",),
    )  # fmt: skip
    session = journal.begin(HEADER, instant(0), ())
    journal.append(session, "typed", {}, (), instant(0, 30), close=full)
    assert journal.history().records == (full,)


def test_the_newest_day_stands_first_and_sixty_are_read(journal: Journal) -> None:
    for day in range(61):
        sit(journal, day)
    days = [entry.day for entry in journal.history().records]
    assert len(days) == 60
    assert days[0] == instant(60)[:10]
    assert days[-1] == instant(1)[:10]


def test_a_session_that_was_cut_off_comes_back_whole(journal: Journal) -> None:
    sit(journal, 0)
    session = journal.begin(HEADER, instant(1), ("Hello.",))
    journal.append(session, "typed", {"text": "1"}, ("Pain in the warm-up:",), instant(1, 1))
    journal.append(session, "resumed", {"gap_s": 60}, (), instant(1, 3))
    cut = journal.unfinished()
    assert cut is not None
    assert cut.session == session
    assert cut.header == HEADER
    assert cut.opened_at == instant(1)
    assert cut.last_at == instant(1, 3)
    assert cut.events == (
        ("typed", {"text": "1"}, instant(1, 1)),
        ("resumed", {"gap_s": 60}, instant(1, 3)),
    )
    assert cut.shown_last == ("Pain in the warm-up:",)


def test_a_cut_off_session_sees_the_past_as_it_stood_when_it_began(journal: Journal) -> None:
    sit(journal, 0)
    before = journal.history()
    session = journal.begin(HEADER, instant(1), ())
    journal.append(session, "typed", {}, (), instant(1, 1))
    assert journal.history() == before


def test_a_closed_session_is_not_resumed(journal: Journal) -> None:
    sit(journal, 0)
    assert journal.unfinished() is None
    assert journal.history().last_at == instant(0, 2)


def test_a_stop_ends_its_session_and_stays_across_openings(tmp_path: Path) -> None:
    folder = tmp_path / "coach"
    with Journal.open(folder) as journal:
        session = journal.begin(HEADER, instant(0), ())
        journal.append(session, "typed", {}, ("STOP.",), instant(0, 1), hold=stop(0))
    for _again in range(3):
        with Journal.open(folder) as journal:
            assert journal.unfinished() is None
            assert journal.history().hold == stop(0, number=1)


def test_a_stop_stays_open_through_later_sessions(tmp_path: Path) -> None:
    folder = tmp_path / "coach"
    with Journal.open(folder) as journal:
        session = journal.begin(HEADER, instant(0), ())
        journal.append(session, "typed", {}, (), instant(0, 1), hold=stop(0), close=record(0))
        for day in range(1, 5):
            sit(journal, day, ended="none")
    with Journal.open(folder) as journal:
        assert journal.rows_checked > 4
        assert journal.open_hold() == stop(0, number=1)


def test_a_stop_is_lifted_once(journal: Journal) -> None:
    session = journal.begin(HEADER, instant(0), ())
    journal.append(session, "typed", {}, (), instant(0, 1), hold=stop(0), close=record(0))
    assert not journal.lift(2, "by word", "", instant(1), instant(1)[:10], "d1")
    assert journal.lift(1, "by word", "", instant(1), instant(1)[:10], "d1")
    assert journal.open_hold() is None
    assert journal.history().lifted
    assert not journal.lift(1, "by word", "", instant(1), instant(1)[:10], "d2")


def test_a_spent_word_lifts_no_second_stop(journal: Journal) -> None:
    for day, word in ((0, "d1"), (1, "d2")):
        session = journal.begin(HEADER, instant(day), ())
        journal.append(session, "typed", {}, (), instant(day), hold=stop(day), close=record(day))
        assert journal.lift(day + 1, "by word", "", instant(day), "2026-11-09", word)
    session = journal.begin(HEADER, instant(2), ())
    journal.append(session, "typed", {}, (), instant(2), hold=stop(2), close=record(2))
    assert journal.spent_words() == ("d2", "d1") or journal.spent_words() == ("d1", "d2")
    assert not journal.lift(3, "by word", "", instant(3), "2026-11-12", "d1")
    assert journal.open_hold() == stop(2, number=3)


def test_two_open_stops_are_lifted_one_by_one(journal: Journal) -> None:
    for day in (0, 1):
        session = journal.begin(HEADER, instant(day), ())
        journal.append(session, "typed", {}, (), instant(day), hold=stop(day), close=record(day))
    assert journal.lift(1, "in person", "M. Aalto", instant(2), "2026-11-11")
    assert journal.open_hold() == stop(1, number=2)


FIVE = (Section.ARM, Section.JOINT, Section.BODY, Section.ILL, Section.NIGHT)


def lifted_on_day_1(journal: Journal) -> None:
    session = journal.begin(HEADER, instant(0), ())
    journal.append(session, "typed", {}, (), instant(0), hold=stop(0), close=record(0, alone=FIVE))
    assert not journal.history().lifted
    journal.lift(1, "in person", "M. Aalto", instant(1), "2026-11-10")
    assert journal.history().lifted


def test_a_lift_counts_until_all_five_sections_were_asked_alone(journal: Journal) -> None:
    lifted_on_day_1(journal)
    sit(journal, 2, ended="none")
    assert journal.history().lifted
    sit(journal, 3, ended="partial", alone=FIVE[:4])
    assert journal.history().lifted
    sit(journal, 4, alone=(*FIVE, Section.WEEKLY))
    assert not journal.history().lifted
    sit(journal, 5, alone=FIVE[:1])
    assert not journal.history().lifted


def test_a_lift_still_counts_while_its_session_is_cut_off(journal: Journal) -> None:
    lifted_on_day_1(journal)
    journal.begin(HEADER, instant(2), ())
    assert journal.history().lifted


@pytest.mark.parametrize(("sessions", "lifted"), [(59, True), (60, False)])
def test_a_lift_far_back_counts_as_used(journal: Journal, sessions: int, lifted: bool) -> None:
    lifted_on_day_1(journal)
    for day in range(2, sessions + 2):
        sit(journal, day, ended="partial")
    assert journal.history().lifted == lifted


def test_wrong_words_are_counted_for_their_own_stop_without_the_word(journal: Journal) -> None:
    journal.count_wrong(1, instant(0))
    journal.count_wrong(2, instant(1))
    journal.count_wrong(1, instant(2))
    assert journal.wrong_words(1) == (instant(0), instant(2))
    assert journal.wrong_words(2) == (instant(1),)


def test_the_last_plan_put_in_place_is_the_current_one(journal: Journal) -> None:
    journal.keep_plan('{"a": 1}', "h1", "d-o.yaml", instant(0))
    journal.keep_plan('{"a": 2}', "h2", "d-o.yaml", instant(1))
    assert journal.current_plan() == ('{"a": 2}', "h2")


def test_sections_asked_alone_carry_their_last_day(journal: Journal) -> None:
    sit(journal, 0, alone=(Section.ARM, Section.ILL))
    sit(journal, 2, alone=(Section.ARM,))
    assert journal.history().asked_alone == (
        (Section.ARM, instant(2)[:10]),
        (Section.ILL, instant(0)[:10]),
    )


def test_what_is_at_hand_is_the_last_answer_and_none_if_never_asked(journal: Journal) -> None:
    assert journal.history().at_hand is None
    sit(journal, 0, at_hand=("band", "towel"), own_asked=("ache kind",))
    sit(journal, 1, own_asked=("ache kind",))
    assert journal.history().at_hand == ("band", "towel")
    assert journal.history().own_asked == (("ache kind", instant(1)[:10]),)
    sit(journal, 2, at_hand=())
    assert journal.history().at_hand == ()


def test_sessions_are_listed_newest_first_with_their_stop(journal: Journal) -> None:
    sit(journal, 0)
    session = journal.begin(HEADER, instant(1), ())
    journal.append(session, "typed", {}, (), instant(1, 1), hold=stop(1))
    newest, oldest = journal.sessions()
    assert (newest.session, newest.record, newest.hold) == (2, None, stop(1, number=1))
    assert (oldest.session, oldest.record, oldest.hold) == (1, record(0), None)
    assert [entry.session for entry in journal.sessions(1)] == [2]


def test_any_text_typed_comes_back_letter_for_letter(journal: Journal) -> None:
    texts = ("\x00", "\x1b[2J", "\udcff", "\u202eabc", "pain [/5]", "\U0001f4a5", "x" * 1_000_000)
    session = journal.begin(HEADER, instant(0), ())
    for text in texts:
        journal.append(session, "typed", {"text": text}, (text,), instant(0))
    assert [body["text"] for _kind, body, _at in journal.events(session)] == list(texts)
