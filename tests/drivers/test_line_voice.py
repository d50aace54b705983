"""The short commands speak in wrapped, clean lines."""

from __future__ import annotations

from typing import TYPE_CHECKING

from coach.drivers.line_voice import LineVoice

if TYPE_CHECKING:
    import pytest


class NoFile:
    """Standard input with nothing behind it."""

    def fileno(self) -> int:
        return 0


def voice(monkeypatch: pytest.MonkeyPatch, columns: int) -> LineVoice:
    monkeypatch.setenv("COLUMNS", str(columns))
    monkeypatch.setattr("sys.stdin", NoFile())
    return LineVoice()


def test_a_long_line_is_wrapped_and_keeps_its_indent(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    voice(monkeypatch, 40).say("  Note: " + "sore after school " * 6)
    rows = capsys.readouterr().out.splitlines()
    assert len(rows) > 2
    assert all(len(row) <= 39 and row.startswith("  ") for row in rows)


def test_an_empty_line_stays_an_empty_line(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    voice(monkeypatch, 80).say("")
    assert capsys.readouterr().out == "\n"


def test_letters_that_move_or_hide_are_shown_by_number(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    voice(monkeypatch, 80).say("a\x1b[2Jb \u202e pain [/5]")
    out = capsys.readouterr().out
    assert "<U+001B>[2Jb" in out
    assert "pain [/5]" in out
    assert "\x1b" not in out


def test_an_indented_row_is_no_wider_than_the_window(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    voice(monkeypatch, 40).say("  " + "a b " * 40)
    assert max(map(len, capsys.readouterr().out.splitlines())) == 39
