"""What is printed for a row, and for a clinician who tries the ear."""

from __future__ import annotations

from coach.hearing import explain, hear_row
from coach.model.heard import Kind


def test_a_row_keeps_its_id_and_names_action_value_sign_and_words() -> None:
    row = hear_row({"id": "A1", "q": "pain_now", "text": "5, plus my thumb is numb"})
    assert row["id"] == "A1"
    assert row["action"] == "escalate"
    assert row["value"] == {"pain": 5}
    assert row["red_flag"] == "numb_tingle"
    assert {"start": 20, "end": 24, "text": "numb", "why": "numb_tingle"} in row["because"]


def test_an_unclear_value_is_named_so() -> None:
    row = hear_row({"id": 2, "q": "sleep_hours", "text": "ok"})
    assert (row["action"], row["value"]) == ("ask_again", {"sleep_hours": "unclear"})


def test_a_row_without_its_parts_is_still_answered() -> None:
    assert hear_row({})["action"] == "ask_again"
    assert hear_row({"q": "unknown", "text": 7})["action"] == "accept"


def test_the_deciding_words_are_marked() -> None:
    lines = explain("slept ok but my hand went numb")
    assert lines[0] == "slept ok but my hand went «numb»"
    assert "Group: numb_tingle, flag S08." in lines


def test_a_value_is_told_in_words() -> None:
    assert "pain_now: 3.0" in explain("about a 3", Kind.PAIN_NOW)


def test_words_that_name_no_sign_are_told_as_asked_about_openly() -> None:
    lines = explain("my thumb is all wobblewise today")
    assert "No sign is named by these words: they would be asked about openly." in lines
    assert not any(line.startswith("Group:") for line in lines)


def test_another_language_is_told_and_english_is_not() -> None:
    told = "This seems not to be English. The ear knows English only."
    assert told in explain("hoy me duele mucho el hombro")
    assert told not in explain("my shoulder hurts a bit today")
