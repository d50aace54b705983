"""What opens a closed plan and what does not, asked as a person is asked."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from coach.drivers.clearing import clear, wait_left
from coach.drivers.placing import place_plan
from coach.journal import Journal
from coach.model.history import Hold
from coach.model.program import ClearanceWord
from coach.rules.hold import WAITS_S, word_digest
from coach.texts.doors import bound_from

if TYPE_CHECKING:
    from collections.abc import Iterator

    from coach.model.program import Bound

PLANS = Path(__file__).parents[2] / "dialogs" / "steady-shoulder" / "plans"
SALT = "00112233445566778899aabbccddeeff"
AT = datetime(2026, 11, 12, 18, 0, tzinfo=UTC)


class Typist:
    """Types the answers it was given; keeps what was said and how long it waited."""

    def __init__(self, *answers: str) -> None:
        self.answers = list(answers)
        self.said: list[str] = []
        self.asked: list[str] = []
        self.waits: list[float] = []

    def say(self, text: str) -> None:
        self.said.append(text)

    def ask(self, label: str) -> str | None:
        self.asked.append(label)
        return self.answers.pop(0) if self.answers else None

    def wait(self, seconds: float) -> None:
        self.waits.append(seconds)


@pytest.fixture(scope="module")
def bound() -> Bound:
    found, findings = bound_from(PLANS / "d-o.yaml")
    assert found is not None, findings
    words = tuple(ClearanceWord(SALT, word_digest(word, SALT)) for word in ("blue kite", "tin cup"))
    return found._replace(plan=found.plan._replace(words=words, clearance=("by word", "in person")))


@pytest.fixture
def journal(tmp_path: Path) -> Iterator[Journal]:
    with Journal.open(tmp_path) as opened:
        yield opened


def close_plan(journal: Journal, day: str = "2026-11-09") -> None:
    at = f"{day}T18:00:00+00:00"
    session = journal.begin({}, at, ())
    hold = Hold(0, "S08", "same day", "numb_tingle", "tingles", day, at, 1)
    journal.append(session, "typed", {}, (), at, hold=hold)


def talk(journal: Journal, bound: Bound, *answers: str, at: datetime = AT) -> tuple[int, Typist]:
    typist = Typist(*answers)
    return clear(journal, bound, typist, lambda: at), typist


def without(bound: Bound, *ways: str) -> Bound:
    kept = tuple(way for way in bound.plan.clearance if way not in ways)
    return bound._replace(plan=bound.plan._replace(clearance=kept))


def test_an_open_plan_asks_nothing(journal: Journal, bound: Bound) -> None:
    code, typist = talk(journal, bound)
    assert (code, typist.asked) == (0, [])


def test_the_clinicians_word_opens_the_plan(journal: Journal, bound: Bound) -> None:
    close_plan(journal)
    code, _typist = talk(journal, bound, "  Blue KITE ")
    assert code == 0
    assert journal.open_hold() is None
    assert len(journal.spent_words()) == 1


def test_a_spent_word_opens_no_second_stop(journal: Journal, bound: Bound) -> None:
    close_plan(journal)
    talk(journal, bound, "blue kite")
    close_plan(journal, "2026-11-11")
    code, _typist = talk(journal, bound, "blue kite")
    assert code == 10
    assert journal.open_hold() is not None


def test_wrong_words_are_counted_never_lift_and_cost_more_each_time(
    journal: Journal, bound: Bound
) -> None:
    close_plan(journal)
    code, typist = talk(journal, bound, *["quiet river"] * 6)
    assert code == 10
    assert len(journal.wrong_words(1)) == 6
    assert typist.waits == [5, 30, 120, 600, 600, 600]
    assert typist.waits[:4] == list(WAITS_S[1:])


def test_the_wait_goes_on_after_a_restart(journal: Journal, bound: Bound) -> None:
    close_plan(journal)
    talk(journal, bound, "quiet river", "quiet river")
    _code, typist = talk(journal, bound, at=AT + timedelta(seconds=12))
    assert typist.waits == [18]
    _code, typist = talk(journal, bound, at=AT + timedelta(seconds=30))
    assert typist.waits == []


def test_a_clock_set_back_waits_the_whole_time() -> None:
    wrong = (AT.isoformat(), AT.isoformat())
    assert wait_left(wrong, AT - timedelta(days=1)) == 30
    assert wait_left(wrong, AT + timedelta(seconds=29)) == 1
    assert wait_left(wrong, AT + timedelta(days=1)) <= 0
    assert wait_left((), AT) == 0


@pytest.mark.parametrize("leaving", ["stop", "Pause", "later"])
def test_leaving_keeps_the_plan_closed_and_counts_nothing(
    journal: Journal, bound: Bound, leaving: str
) -> None:
    close_plan(journal)
    code, _typist = talk(journal, bound, "", leaving)
    assert code == 10
    assert journal.wrong_words(1) == ()


def test_the_clinician_in_person_opens_the_plan(journal: Journal, bound: Bound) -> None:
    close_plan(journal)
    code, _typist = talk(journal, bound, "in person", "2026-11-12", "m. aalto")
    assert code == 0
    assert journal.open_hold() is None


@pytest.mark.parametrize(
    ("day", "name"),
    [
        ("2026-11-08", "M. Aalto"),  # before the stop
        ("2026-11-13", "M. Aalto"),  # tomorrow
        ("2026-11-12", "D.O."),
        ("2026-11-12", ""),
    ],
)
def test_a_wrong_day_or_name_in_person_opens_nothing(
    journal: Journal, bound: Bound, day: str, name: str
) -> None:
    close_plan(journal)
    code, _typist = talk(journal, bound, "in person", day, name)
    assert code == 10
    assert journal.open_hold() is not None


def test_a_day_unclear_twice_opens_nothing(journal: Journal, bound: Bound) -> None:
    close_plan(journal)
    code, typist = talk(journal, bound, "in person", "monday", "last monday")
    assert code == 10
    assert "name" not in " ".join(typist.asked)


def test_a_way_the_plan_does_not_name_opens_nothing(journal: Journal, bound: Bound) -> None:
    close_plan(journal)
    code, typist = talk(journal, without(bound, "in person"), "in person", "2026-11-12", "M. Aalto")
    assert code == 10
    assert "in person" not in typist.asked[0]
    code, _typist = talk(journal, without(bound, "by word"), "blue kite")
    assert code == 10
    code, typist = talk(journal, without(bound, "by word", "in person"), "blue kite")
    assert (code, typist.asked) == (10, [])


def test_every_stop_needs_its_own_clearance(journal: Journal, bound: Bound) -> None:
    close_plan(journal, "2026-11-09")
    close_plan(journal, "2026-11-10")
    code, _typist = talk(journal, bound, "blue kite")
    assert code == 10
    code, _typist = talk(journal, bound, "tin cup")
    assert code == 0


def test_a_warning_sign_typed_for_a_word_is_a_stop_of_its_own(
    journal: Journal, bound: Bound
) -> None:
    close_plan(journal)
    code, typist = talk(journal, bound, "my chest hurts and i cant breathe")
    assert code == 10
    assert any(line.startswith("STOP.") for line in typist.said)
    assert any("112" in line for line in typist.said)
    assert journal.wrong_words(1) == ()
    talk(journal, bound, "blue kite")
    left = journal.open_hold()
    assert left is not None
    assert left.number == 2


@pytest.mark.parametrize("typed", ["\udc80\x00", "x" * 1_000_000, "\x1b[2J", "\u202e"])
def test_any_text_for_a_word_is_only_a_wrong_word(
    journal: Journal, bound: Bound, typed: str
) -> None:
    close_plan(journal)
    code, _typist = talk(journal, bound, typed)
    assert code == 10
    assert journal.open_hold() is not None


def test_no_word_typed_is_kept(journal: Journal, bound: Bound, tmp_path: Path) -> None:
    close_plan(journal)
    talk(journal, bound, "quiet river", "blue kite")
    journal.close()
    content = (tmp_path / "diary.sqlite").read_bytes()
    assert b"quiet river" not in content
    assert b"blue kite" not in content


# ---------------------------------------------------------------- a new plan


def version(bound: Bound, number: int, starts: str, *ways: str) -> Bound:
    plan = bound.plan._replace(version=number, starts=starts, clearance=ways or ("new plan",))
    return bound._replace(plan=plan)


@pytest.mark.parametrize(
    ("number", "starts", "ways", "lifted"),
    [
        (2, "2026-11-09", ("new plan",), True),
        (2, "2026-11-12", ("new plan", "by word"), True),
        (2, "2026-11-08", ("new plan",), False),  # begins before the stop
        (2, "2026-11-13", ("new plan",), False),  # begins tomorrow
        (1, "2026-11-12", ("new plan",), False),  # the same version
        (2, "2026-11-12", ("by word",), False),  # not a way of this plan
    ],
)
def test_a_new_version_lifts_only_by_the_rule(
    journal: Journal, bound: Bound, number: int, starts: str, ways: tuple[str, ...], lifted: bool
) -> None:
    said: list[str] = []
    place_plan(journal, bound, "d-o.yaml", said.append, AT)
    close_plan(journal)
    code = place_plan(journal, version(bound, number, starts, *ways), "d-o.yaml", said.append, AT)
    assert code == (0 if lifted else 10)
    assert (journal.open_hold() is None) == lifted


@pytest.mark.hazard("H-08")
def test_an_older_version_or_another_athlete_replaces_nothing(
    journal: Journal, bound: Bound
) -> None:
    said: list[str] = []
    place_plan(journal, version(bound, 2, "2026-11-09"), "a", said.append, AT)
    before = journal.current_plan()
    assert place_plan(journal, bound, "b", said.append, AT) == 65
    other = bound._replace(plan=bound.plan._replace(initials="P.S.", version=9))
    assert place_plan(journal, other, "c", said.append, AT) == 65
    assert journal.current_plan() == before


@pytest.mark.parametrize(
    ("today", "said"),
    [
        ("2026-11-01", "has not begun"),
        ("2026-11-02", "Type coach"),
        ("2027-01-31", "Type coach"),
        ("2027-02-01", "past its review day"),
    ],
)
def test_a_plan_put_in_place_says_whether_it_is_in_force(
    journal: Journal, bound: Bound, today: str, said: str
) -> None:
    told: list[str] = []
    at = datetime.fromisoformat(f"{today}T18:00:00+00:00")
    assert place_plan(journal, bound, "d-o.yaml", told.append, at) == 0
    assert said in told[-1]


def test_an_unsure_sign_typed_for_a_word_tells_whom_to_call_and_costs_no_word(
    journal: Journal, bound: Bound
) -> None:
    close_plan(journal)
    code, typist = talk(journal, bound, "maybe a bit numb in the hand?", "blue kite")
    assert code == 0
    assert any("112" in line and "555 0134" in line for line in typist.said)
    assert typist.waits == []


def test_no_name_at_end_of_input_opens_nothing(journal: Journal, bound: Bound) -> None:
    close_plan(journal)
    assert talk(journal, bound, "in person", "2026-11-12")[0] == 10
    assert talk(journal, bound, "in person")[0] == 10
    assert journal.wrong_words(1) == ()


def test_a_kept_copy_that_cannot_be_read_is_replaced(journal: Journal, bound: Bound) -> None:
    journal.keep_plan("{}", "old", "old.yaml", AT.isoformat())
    assert place_plan(journal, bound, "d-o.yaml", lambda _text: None, AT) == 0
