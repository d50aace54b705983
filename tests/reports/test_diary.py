"""The athlete's diary: numbers beside every picture, sentences in plain mode, own words kept."""

from __future__ import annotations

import json
import re

import pytest
import textstat

from coach.model.ladders import ThrowDay, ThrowState
from coach.reports.diary import (
    ASCII,
    BLOCKS,
    NOTHING,
    aligned,
    bars,
    day_lines,
    diary_as_values,
    diary_lines,
    exercise_said,
    pain_row,
)
from coach.reports.facts import Day, Facts, Lifted, Sat
from tests.reports import made_up

ROW_SAID = "Reach-across row: 3 sets, 8 to 12 reps, 5 lb dumbbell"


def lines(facts: Facts, *, plain: bool = False) -> list[str]:
    return [line.text for line in diary_lines(facts, plain=plain)]


def test_an_empty_diary_says_so() -> None:
    assert lines(made_up.facts()) == [NOTHING]


@pytest.mark.hazard("H-14")
def test_a_day_is_told_in_full_with_units() -> None:
    threw = ThrowDay(2, 25, "throws", "no soreness", 0, ThrowState(3), made_up.opened(0))
    why = ("prog.two_for_two", "up", "Reach-across row: One step up in reps.")
    one = made_up.sat(
        0, threw=threw, decisions=(why,), notes=('"sore after school"', "Waking pain above usual.")
    )
    facts = made_up.facts(one)
    assert [line.text for line in day_lines(facts, facts.days[0])] == [
        "Mon 2 Nov 2026",
        "Done for that day, begun at 18:00.",
        f"{ROW_SAID}; done 12, 12, 12; pain 1, 1, 1 of 10.",
        "Throws: step 2, 25 throws; no soreness.",
        "Pain: on waking 1 of 10, at rest 1 of 10, worst in a set 1 of 10, after 1 of 10.",
        "Slept 8 h, effort 4 of 10, time 30 min.",
        "Told to you: Reach-across row: One step up in reps.",
        "Noted: Waking pain above usual.",
        'You wrote: "sore after school"',
    ]


def test_today_is_called_today_and_another_day_by_its_name() -> None:
    assert lines(made_up.facts(made_up.sat(6)))[0].startswith("Today, Sun 8 Nov 2026")
    assert lines(made_up.facts(made_up.sat(0)))[0] == "Mon 2 Nov 2026"


def test_what_was_not_asked_is_not_shown_but_zero_is() -> None:
    bare = made_up.sat(0, pain_now=0.0, waking_pain=None, worst_in_set=None, pain_after=None)
    facts = made_up.facts(bare)
    text = "\n".join(line.text for line in day_lines(facts, facts.days[0]))
    assert "Pain: at rest 0 of 10." in text
    assert "waking" not in text


@pytest.mark.parametrize(
    ("ended", "words"),
    [
        ("done", "Done for that day"),
        ("by choice", "Ended by you"),
        ("partial", "Cut off before the end"),
        ("stopped", "Stopped"),
        ("none", "No exercises that day"),
    ],
)
def test_how_a_session_ended_is_told(ended: str, words: str) -> None:
    assert f"{words}, begun at 18:00." in lines(made_up.facts(made_up.sat(0, ended=ended)))


def test_a_stop_is_told_with_the_words_typed() -> None:
    found = lines(made_up.facts(made_up.sat(0, made_up.stop(0), ended="stopped")))
    assert 'Your plan was closed, code S08. You typed: "my pinky tingles".' in found
    cut = Sat(1, made_up.opened(0), {}, None, made_up.stop(0))
    assert "Stopped, begun at 18:00." in lines(made_up.facts(cut))


def test_fewer_sets_and_a_correction_are_told_without_blame() -> None:
    one = made_up.done(sets=2, felt=("shrug", "fine"), result="over")
    assert exercise_said(one) == (
        ROW_SAID.replace("3 sets", "2 sets")
        + "; 2 of 3 sets done; done 12, 12; pain 1, 1 of 10; corrected: shrug; ended by pain."
    )


def test_a_closed_plan_is_told_before_anything_else_as_long_as_it_is_closed() -> None:
    stopped = made_up.sat(0, made_up.stop(0), ended="stopped")
    lift = Lifted(1, "in person", "M. Aalto", made_up.day(1), made_up.opened(1))
    assert lines(made_up.facts(stopped))[0] == "Your plan is closed since Mon 2 Nov 2026, code S08."
    assert lines(made_up.facts(stopped, since=3))[0].startswith("Your plan is closed")
    assert "closed since" not in "\n".join(lines(made_up.facts(stopped, lifts=(lift,))))


# ---------------------------------------------------------------- pictures


def test_a_pain_row_shows_each_value_at_its_place_with_its_number() -> None:
    row = pain_row(Day(made_up.day(0), waking=0, rest=3, in_set=10), ASCII)
    assert row == "Mon 2 Nov  w..r......s w 0 r 3 s 10"


def test_values_at_one_place_share_a_star_and_numbers_tell_them_apart() -> None:
    row = pain_row(Day(made_up.day(0), waking=1, rest=1, in_set=2), ASCII)
    assert row == "Mon 2 Nov  .*s........ w 1 r 1 s 2"


def test_a_day_without_values_has_an_empty_scale_and_a_dash() -> None:
    assert pain_row(Day(made_up.day(0)), ASCII) == "Mon 2 Nov  ........... -"


def test_every_picture_in_blocks_has_a_twin_in_ascii_with_the_same_numbers() -> None:
    facts = made_up.ten_weeks_facts()
    blocks = [x.text for x in diary_lines(facts, plain=False, strokes=BLOCKS)]
    drawn = [x.text for x in diary_lines(facts, plain=False, strokes=ASCII)]
    assert [b.replace("\u2588", "=").replace("\u00b7", ".") for b in blocks] == drawn
    assert "".join(drawn).isascii()


def test_bars_are_ten_marks_at_most_and_as_long_as_their_number() -> None:
    week = tuple(Day(made_up.day(n)) for n in range(3))
    rows = bars("Throws", "", week, (0.0, 20.0, 40.0), ASCII)
    assert rows[0].text == "Throws; one mark is 4"
    assert [row.text.count("=") for row in rows[1:]] == [0, 5, 10]
    assert [row.text.split()[-1] for row in rows[1:]] == ["0", "20", "40"]


def test_pictures_fit_into_40_columns() -> None:
    facts = made_up.facts(made_up.sat(6, waking_pain=10.0, pain_now=10.0, worst_in_set=10.0))
    rows = [x.text for x in diary_lines(facts, plain=False) if x.kind == "row"]
    assert rows
    assert max(len(f"  {row}") for row in rows) <= 39
    assert {len(aligned(made_up.day(n))) for n in range(30)} == {10}


def test_plain_mode_has_every_number_of_the_pictures_as_a_sentence() -> None:
    facts = made_up.facts(made_up.sat(2, waking_pain=2.5, sleep_h=6.5), made_up.sat(5))
    plain = lines(facts, plain=True)
    assert not [x for x in diary_lines(facts, plain=True) if x.kind == "row"]
    for said in (
        "Wed 4 Nov: pain on waking 2.5 of 10.",
        "Wed 4 Nov: pain at rest 1 of 10.",
        "Wed 4 Nov: slept 6.5 hours.",
        "Wed 4 Nov: 3 sets.",
        "Sat 7 Nov: effort 4 of 10.",
    ):
        assert said in plain


# ---------------------------------------------------------------- weeks


def test_weeks_are_told_by_their_first_day() -> None:
    facts = made_up.facts(made_up.sat(0, waking_pain=1.0), made_up.sat(2, waking_pain=2.0), last=13)
    assert (
        "From Mon 2 Nov: 2 days with exercise; mean pain on waking 1.5 of 10; at rest 1 of 10; most pain 2 of 10; "
        "mean sleep 8 h."
    ) in lines(facts)
    assert "From Mon 9 Nov: 0 days with exercise." in lines(facts)


def test_each_exercise_shows_its_first_and_its_last_dose() -> None:
    later = made_up.done(dose="3 sets, 8 to 13 reps, 5 lb dumbbell", felt=("shrug",))
    facts = made_up.facts(made_up.sat(0), made_up.sat(9, done=(later,)), last=13)
    found = lines(facts)
    assert "Reach-across row, Mon 2 Nov: 3 sets, 8 to 12 reps, 5 lb dumbbell." in found
    assert "  Wed 11 Nov: 3 sets, 8 to 13 reps, 5 lb dumbbell." in found
    assert "  Corrected, shrug: Wed 11 Nov." in found


# ---------------------------------------------------------------- words and values


def test_no_word_praises_blames_or_counts_days() -> None:
    text = "\n".join(lines(made_up.ten_weeks_facts(), plain=True))
    assert not re.search(r"(?i)streak|great|good job|(days|weeks) in a row|missed|skipped|!", text)


def test_sentences_are_short_and_easy() -> None:
    """Grade 6 at most, as counted by textstat; set here. Doses and own words are left out."""
    facts = made_up.facts(made_up.sat(0), made_up.sat(2), last=6)
    said = [x.text for x in diary_lines(facts, plain=True) if x.kind == "say"]
    graded = [s for s in said if len(s.split()) >= 5 and ";" not in s and '"' not in s]
    assert len(graded) > 10
    for sentence in graded:
        assert textstat.textstat.flesch_kincaid_grade(sentence) <= 6, sentence


def test_values_for_programs_have_units_in_their_names_and_none_for_unknown() -> None:
    facts = made_up.facts(made_up.sat(0, sleep_h=7.5, effort=None))
    values = diary_as_values(facts)
    assert json.loads(json.dumps(values)) == values
    days = values["days"]
    assert isinstance(days, list)
    day = days[0]
    assert day["sleep_h"] == 7.5
    assert day["effort_0_to_10"] is None
    assert day["exercises"][0]["reps_or_holds"] == [12, 12, 12]
    assert day["throws"] is None
