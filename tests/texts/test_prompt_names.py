"""A scenario's prompts are called as the session calls them, or the reader is told."""

from __future__ import annotations

from pathlib import Path

import pytest

from coach.model.flags import Group
from coach.session.questions import QUESTIONS
from coach.texts.prompt_names import COACHS
from coach.texts.scenarios import check_course, read_scenario
from tests.texts.changing import PLAN, Desk

TALK = """\
scenario: names
plan: program/{plan}
days:
  - day: 2026-11-09 at 18:30
    talk:
      - {line}
      - never offers: band pull back
"""
ROW = "band pull back"


def found(desk: Desk, line: str) -> list[tuple[str, str]]:
    file = desk.folder.parent / "names.yaml"
    file.write_text(TALK.format(plan=PLAN, line=line), encoding="utf-8")
    return [(one.id, one.write) for one in read_scenario(file)[1]]


def test_every_question_of_the_coach_has_its_name_here() -> None:
    asked = {*QUESTIONS, *(group.value.replace("_", " ") for group in Group)}
    assert asked <= set(COACHS)


@pytest.mark.parametrize(
    "line",
    [
        "pain now: 1",
        "numb tingle: no",
        "screen arm: no",
        "paused: go",
        f"pain in set 2 of {ROW}: 1",
        f"set line in set 1 of {ROW}: 10, 1",
        f"rest after set 1 of {ROW}: more",
        f"go for hold 1 in set 2 of {ROW}: go",
        f"which version of {ROW}: 1",
        "asks: pain now",
    ],
)
def test_a_name_that_a_prompt_can_have_is_quiet(line: str, desk: Desk) -> None:
    assert found(desk, line) == []


@pytest.mark.parametrize(
    ("line", "write"),
    [
        ("pain nwo: 1", "- pain now: 1"),
        ("pain in set 2 of band pul back: 1", "- pain in set 2 of band pull back: 1"),
        (f"pian in set 2 of {ROW}: 1", f"- pain in set 2 of {ROW}: 1"),
        ("rest after set 1 of band pull bak: more", f"- rest after set 1 of {ROW}: more"),
        ("asks: wakin pain", "- asks: waking pain"),
        ("never asks: zzz", ""),
    ],
)
def test_a_name_that_none_can_have_is_told_with_the_nearest(
    line: str, write: str, desk: Desk
) -> None:
    assert found(desk, line) == [("scenario.prompt", write)]


def test_an_own_question_counts_and_one_of_another_program_does_not(desk: Desk) -> None:
    assert found(desk, "ache kind: joint") in ([], [("scenario.prompt", "")])
    file = desk.folder / "scripts" / "close.yaml"
    asks = "".join(
        f"  - ask: {name}\n" for name in ("pain after", "effort", "minutes", "own words")
    )
    own = "  - ask also: bag weight\n    words: Was the bag heavy?\n    answers: yes or no\n"
    file.write_text(f"script: close\nlines:\n{asks}{own}", encoding="utf-8")
    assert found(desk, "bag weight: no") == []
    assert found(desk, "bag wieght: no") == [("scenario.prompt", "- bag weight: no")]


def test_a_course_in_a_program_is_held_to_its_names_and_one_elsewhere_is_not(
    desk: Desk, tmp_path: Path
) -> None:
    text = "course: odd\nusual:\n  - pain noww: 1\n"
    inside = desk.folder / "courses" / "odd.yaml"
    inside.write_text(text, encoding="utf-8")
    assert [one.id for one in check_course(inside)] == ["scenario.prompt"]
    elsewhere = tmp_path / "odd.yaml"
    elsewhere.write_text(text, encoding="utf-8")
    assert check_course(elsewhere) == []
