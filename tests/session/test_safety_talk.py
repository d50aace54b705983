"""Signs, stops, unclear answers and the read-back, as an athlete would type them."""

from __future__ import annotations

from datetime import timedelta
from typing import Any

import pytest

from coach.model.flags import Section
from coach.model.history import History
from coach.model.quantities import Call
from coach.session import screening, stopping
from coach.session.engine import start
from coach.session.table import Stage
from tests.session.invented import MONDAY, asked_lately, bound, brief, day_before
from tests.session.talking import MORNING, TO_THE_FIRST_SET, Talk, talk

SIGN = "my hand went numb and it stays numb"


def test_a_good_day_asks_four_things_before_the_first_set() -> None:
    day = talk(brief(), *TO_THE_FIRST_SET)
    assert day.name.startswith("set line in set 1")
    assert len([t for t in day.turns[:-1] if t.ask]) == 4


@pytest.mark.parametrize("before", range(len(TO_THE_FIRST_SET) + 1))
@pytest.mark.hazard("H-10")
def test_a_sign_stops_at_every_prompt_of_the_way(before: int) -> None:
    day = talk(brief(), *TO_THE_FIRST_SET[:before]).say(SIGN)
    assert day.name == "stopped"
    assert day.now.alone
    assert not day.now.offers
    assert day.state.stop[0] == "S08"


@pytest.mark.hazard("H-15")
def test_a_stop_says_its_parts_in_order() -> None:
    texts = [line.text for line in talk(brief(), SIGN).now.lines]
    marks = [
        "STOP. D.O.",
        "Call ",
        "Say this:",
        "call 112",
        "You typed:",
        "closed",
        "saved",
        "Code S08",
    ]
    places = [next(n for n, text in enumerate(texts) if mark in text) for mark in marks]
    assert places == sorted(places)


@pytest.mark.hazard("H-15")
def test_an_emergency_names_the_number_second() -> None:
    day = talk(brief(), "crushing chest pain and i cant breathe")
    assert day.state.stop[1] == "emergency now"
    assert "112" in day.now.lines[1].text


def test_a_stop_cannot_be_fixed() -> None:
    day = talk(brief(), SIGN)
    assert day.now.ask is None
    assert day.state.stage is Stage.STOPPED


@pytest.mark.hazard("H-11")
def test_a_past_sign_is_asked_about_and_a_no_goes_back() -> None:
    day = talk(brief(), "pain 1, morning 0, slept 8, no throws, no game, hand was numb last month")
    assert day.name == "heard right"
    assert talk(brief(), MORNING).state.section == day.say("no").state.section


@pytest.mark.hazard("H-11")
def test_a_confirm_that_is_not_a_clear_no_stops() -> None:
    day = talk(brief(), "i think my fingers tingled a bit last month maybe")
    assert day.name == "heard right"
    assert day.say("hm", "hm").name == "stopped"


def test_yes_to_a_section_opens_its_signs_one_by_one() -> None:
    day = talk(brief(), MORNING, "yes")
    assert day.state.flags
    assert day.say("yes").name == "stopped"


def test_no_to_every_sign_asks_once_whether_nothing_is_there() -> None:
    day = talk(brief(), MORNING, "yes")
    while day.state.flags:
        day = day.say("no")
    assert day.name == "nothing here"
    assert day.say("yes").name == "screen"
    assert day.say("no").state.stop[0] == "U01"


@pytest.mark.parametrize("typed", ["y", "n", "0", "all good", ""])
def test_short_cuts_are_no_answer_to_a_safety_question(typed: str) -> None:
    day = talk(brief(), MORNING)
    assert day.say(typed).name == day.name


def test_a_third_unclear_safety_answer_ends_the_day_without_exercise() -> None:
    day = talk(brief(), MORNING, "hm", "hm")
    assert day.state.flags
    ended = day.say("hm")
    assert ended.name == "partial"
    assert not ended.now.offers


@pytest.mark.hazard("H-09")
def test_unclear_pain_twice_is_the_very_state_of_a_ten() -> None:
    same_day = brief()
    by_unclear = talk(same_day, "slept 8, morning 0, no throws, no game", "hm", "hm").state
    by_ten = talk(same_day, "slept 8, morning 0, no throws, no game", "10").state
    by_unclear = by_unclear._replace(told=(), blank=(), happened=())
    assert by_unclear == by_ten._replace(told=(), blank=(), happened=())


@pytest.mark.hazard("H-09")
def test_a_pain_of_eight_is_read_back_and_stops_on_yes() -> None:
    day = talk(brief(), "pain 8, morning 0, slept 8, no throws, no game")
    assert day.name == "read back"
    assert day.say("yes").state.stop[0] == "S09"


def test_a_pain_of_eight_denied_is_asked_once_more_and_never_read_back_again() -> None:
    day = talk(brief(), "pain 8, morning 0, slept 8, no throws, no game", "no")
    assert day.name == "pain now"
    assert day.say("1").name.startswith("screen")
    assert day.say("9").name == "stopped"


def test_under_eight_is_not_read_back() -> None:
    assert talk(brief(), "pain 7, morning 0, slept 8, no throws, no game").name != "read back"


def test_stop_ends_the_work_in_one_answer_and_asks_which_it_was() -> None:
    day = talk(brief(), *TO_THE_FIRST_SET).say("stop")
    assert day.name == "stop for today"
    assert not day.now.offers
    assert day.say("today").name == "by choice"


def test_worse_after_a_stop_never_ends_without_the_clinician() -> None:
    day = talk(brief(), *TO_THE_FIRST_SET).say("stop", "worse", "none")
    assert day.name == "stopped"
    assert day.state.stop[0] == "U01"


def test_a_group_that_stayed_unsure_closes_the_plan_with_its_code() -> None:
    hold = talk(brief(), *TO_THE_FIRST_SET).say("stop", "worse", "none").hold()
    assert hold is not None
    assert hold.code == "U01"


def test_a_minors_stop_tells_the_guardian_before_the_clinician() -> None:
    guardian = Call("555 0177", "J.K., mother")
    day = talk(
        brief(born="2010-04", guardian=guardian, guardian_present="every session"), "yes", SIGN
    )
    texts = [line.text for line in day.now.lines]
    told = next(n for n, text in enumerate(texts) if "guardian" in text)
    called = next(n for n, text in enumerate(texts) if "urgent care" in text)
    assert told < called
    assert "555 0177" in texts[told]


@pytest.mark.hazard("H-07")
def test_without_the_guardian_there_is_no_session_for_a_minor() -> None:
    day = talk(brief(born="2010-04", guardian_present="every session"), "no")
    assert day.name == "closed"
    assert not day.now.offers


def test_self_harm_is_asked_once_and_leads_to_the_crisis_line() -> None:
    day = talk(brief(), "i want to die")
    assert day.name == "heard right"
    stopped = day.say("yes")
    assert "555 0199" in stopped.words
    assert talk(brief(), "i want to die").say("hm", "hm").name == "stopped"


@pytest.mark.parametrize(("days", "asked"), [(5, False), (7, True)])
def test_a_section_is_asked_alone_when_seven_days_went_by(days: int, asked: bool) -> None:
    from datetime import timedelta

    history = asked_lately()
    ago = (MONDAY.date() - timedelta(days=days)).isoformat()
    late = tuple((s, ago if s is Section.NIGHT else d) for s, d in history.asked_alone)
    other = (MONDAY.date() - timedelta(days=6)).isoformat()
    late = tuple((s, other if s is Section.ARM else d) for s, d in late)
    state = talk(brief(history._replace(asked_alone=late)), MORNING).state
    assert (Section.NIGHT in state.alone) is asked


def test_on_the_first_day_all_six_are_asked_alone() -> None:
    day = talk(brief(History()), "yes", "1", "0", "8", "no throws, no game")
    for _ in range(5):
        assert day.name.startswith("screen ")
        day = day.say("no")
    assert day.say("no", "no", "no", "no").name == "pain in warm-up"


def test_the_week_is_full_at_the_plans_cap() -> None:
    records = tuple(day_before(MONDAY)._replace(day=f"2026-11-0{n}") for n in (8, 7, 6, 5))
    full = asked_lately()._replace(records=records)
    cap = bound().plan.limits._replace(sessions_a_week=4)
    assert talk(brief(full, limits=cap), MORNING, "no", "none").name == "done"
    roomy = cap._replace(sessions_a_week=5)
    assert talk(brief(full, limits=roomy), MORNING, "no", "none").name == "pain in warm-up"


def test_another_language_is_noticed_plainly_and_once() -> None:
    day = talk(brief(), "slept 8, morning 0, no throws, no game", "me duele mucho el hombro hoy")
    assert "plain English only" in day.words
    again = day.say("1", "todo bien gracias no tengo nada de eso")
    assert "plain English only" not in again.words


def opened_and_taken_back(day: Talk) -> Talk:
    """Yes to the section, no to each of its signs, and nothing there after all."""
    day = day.say("yes")
    while day.state.flags:
        day = day.say("no")
    return day.say("yes")


def test_a_third_section_taken_back_ends_the_day() -> None:
    day = talk(brief(History()), "yes", "1", "0", "8", "no throws, no game")
    twice = opened_and_taken_back(opened_and_taken_back(day))
    assert twice.name == "screen body"
    assert opened_and_taken_back(twice).name == "partial"


def test_the_longest_way_to_the_first_set_stays_under_the_wall_of_40() -> None:
    guardian = Call("555 0177", "J.K.")
    change: dict[str, Any] = {
        "born": "2010-04",
        "guardian": guardian,
        "guardian_present": "every session",
    }
    day = talk(brief(History(), surgery="2026-06-01 repair", **change), "yes", "yes")
    for answer in ("1", "0", "8"):
        day = day.say("hm", answer)
    day = day.say("hm", "none", "none")
    day = opened_and_taken_back(day)
    day = opened_and_taken_back(day)
    while not day.name.startswith("set line"):
        calm = "0" if day.name == "pain in warm-up" else "no"
        day = day.say("hm", calm) if day.name == "pain in warm-up" else day.say(calm)
    assert len([turn for turn in day.turns[:-1] if turn.ask]) <= 40


@pytest.mark.hazard("H-11")
def test_odd_words_are_asked_about_openly_and_a_yes_names_no_sign() -> None:
    day = talk(brief(), "pain 1, morning 0, slept 8, no throws, my thumb is all wobblewise")
    assert day.name == "heard right"
    assert "Is that a new problem in your body" in day.words
    assert not day.say("no").now.end
    stopped = day.say("yes")
    assert stopped.state.stop == ("U02", "same day", "")
    assert "Say this" not in stopped.words


@pytest.mark.hazard("H-11")
def test_an_unnamed_sign_answered_unclearly_twice_stops() -> None:
    day = talk(brief(), "pain 1, morning 0, slept 8, no throws, my thumb is all wobblewise")
    assert day.say("hm", "hm").state.stop[0] == "U02"


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize(("missed", "asked"), [(6, False), (7, True), (8, True)])
def test_seven_missed_days_open_the_five_sections_and_six_do_not(
    missed: int, *, asked: bool
) -> None:
    later = MONDAY + timedelta(days=missed - 1)  # the day before lies two days back: one missed
    past = asked_lately(later)._replace(records=(day_before(MONDAY),))
    due = set(screening.alone_by_rule(start(brief(past, later))))
    five = {section for section in Section if section is not Section.WEEKLY}
    assert (five <= due) is asked


@pytest.mark.parametrize("code", sorted(stopping.SAY))
def test_a_stop_that_no_sign_named_says_what_to_tell(code: str) -> None:
    lines = stopping.stop_lines(brief(), code, "before next session", "")
    (say,) = [line.text for line in lines if line.text.startswith("Say this: ")]
    assert say == f'Say this: "{stopping.SAY[code]}"'
    assert len(stopping.SAY[code].split()) < 15


def test_after_28_days_off_the_stop_says_so() -> None:
    away = talk(brief(History((day_before(MONDAY - timedelta(days=40)),))))
    assert "I did no exercise for 28 days or more." in away.words
