"""Findings on paper: real line, caret under the real column, nothing that could move a screen."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from coach.model.findings import Finding
from coach.model.program import Place
from coach.texts.doors import check_paths
from coach.texts.rendered import as_json, as_text, visible

ERRORS = Path(__file__).parents[1] / "errors"


def finding(line: str, column: int) -> Finding:
    return Finding("x.y", "error", Place("a.yaml", 3, column), "What.", "Why it is.", "", line)


def caret_column(text: str) -> tuple[str, int]:
    shown, caret = text.split("\n")[1:3]
    return shown, caret.index("^")


@pytest.mark.parametrize(
    ("line", "column", "under"),
    [
        ("side: lefft", 7, "lefft"),
        ("\tside: x", 2, "side"),
        ("a\u200bside", 3, "side"),
        ("日本 side", 4, "side"),
        (f"{'long ' * 40}side: x", 201, "side"),
    ],
)
def test_the_caret_stands_under_its_column(line: str, column: int, under: str) -> None:
    shown, caret = caret_column(as_text([finding(line, column)]))
    wide = sum(1 for letter in shown[:caret] if letter in "日本")
    assert shown[caret - wide :].startswith(under)


@pytest.mark.parametrize("letter", ["\x1b", "\x9b", "\u202e", "\u2028", "\x00", "\u200b", "\r"])
def test_what_could_move_a_screen_is_shown_by_its_number(letter: str) -> None:
    text = as_text([finding(f"side: {letter}left", 1)])
    assert letter not in text
    assert f"<U+{ord(letter):04X}>" in text
    assert visible("pain [/5] and [rest]") == "pain [/5] and [rest]"


def test_well_is_quiet() -> None:
    assert as_text([]) == ""
    assert json.loads(as_json([])) == []


def test_errors_and_warnings_are_counted_apart() -> None:
    warning = finding("x", 1)._replace(level="warning")
    assert as_text([warning]).endswith("1 warning.\n")
    both = as_text([finding("x", 1), finding("y", 1), warning])
    assert both.endswith("2 errors, 1 warning. No session starts with an error.\n")


def test_the_machine_gets_the_same_findings(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(ERRORS)
    found = check_paths([Path("wall.passed")])
    (one,) = json.loads(as_json(found))
    assert (one["id"], one["file"], one["line"]) == ("wall.passed", "wall.passed/l-v.yaml", 31)
    assert one["also"] == {"file": "good/program.yaml", "line": 8, "column": 19}
    assert one["text"] == "    sets: 4 only"


def test_findings_come_sorted_by_place(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(ERRORS)
    pages = [Path("key.missing-rest"), Path("dose.tempo"), Path("ask.order")]
    places = [f.place[:2] for f in check_paths(pages)]
    assert places == sorted(places)
    assert check_paths(pages) == check_paths(pages[::-1])


def test_a_path_given_twice_is_told_once(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(ERRORS)
    page = Path("dose.tempo")
    assert check_paths([page, page / "l-v.yaml", page]) == check_paths([page])
