"""Lines in, lines out: bytes, pipes, long lines, ends of input, and what is never loaded."""

from __future__ import annotations

import io
import os
import subprocess
import sys
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

from coach.drivers.drive import run
from coach.drivers.plain import LineReader, PlainPort
from coach.drivers.port import EndOfInput
from coach.drivers.replay import diary_in_memory
from coach.model.heard import Kind, Question
from coach.model.turns import Ask, Line, Timer, Turn
from tests.drivers.fakes import HandClock, bound_plan

if TYPE_CHECKING:
    from collections.abc import Iterator

ROOT = Path(__file__).parents[2]
REST = Timer("rest", 60, title="Rest", side="left arm", after="Rest is over.")


class Pipe:
    """A pipe that is written to by hand."""

    def __init__(self) -> None:
        self.reads, self.writes = os.pipe()

    def type(self, data: bytes) -> None:
        os.write(self.writes, data)

    def close(self) -> None:
        os.close(self.writes)


@pytest.fixture
def pipe() -> Iterator[Pipe]:
    made = Pipe()
    yield made
    os.close(made.reads)


def test_lines_are_read_one_by_one_and_the_last_needs_no_end(pipe: Pipe) -> None:
    pipe.type(b"one\r\ntwo\n\nthree")
    pipe.close()
    reader = LineReader(pipe.reads)
    assert [reader.line() for _ in range(4)] == ["one", "two", "", "three"]
    with pytest.raises(EndOfInput):
        reader.line()


def test_bytes_that_are_no_text_are_kept_as_marks(pipe: Pipe) -> None:
    pipe.type(b"pain \xff\x00 3\n")
    pipe.close()
    assert LineReader(pipe.reads).line() == "pain \udcff\x00 3"


def test_a_line_of_a_megabyte_is_read_in_bounded_memory(tmp_path: Path) -> None:
    file = tmp_path / "long"
    file.write_bytes(b"x" * 5_000_000 + b"\nnext\n")
    with file.open("rb") as long:
        reader = LineReader(long.fileno())
        first = reader.line()
        assert first is not None
        assert 2000 < len(first) < 10_000
        assert reader.line() == "next"


def test_without_a_line_in_time_there_is_none(pipe: Pipe) -> None:
    assert LineReader(pipe.reads).line(0.01) is None
    pipe.close()


# ---------------------------------------------------------------- the port


def test_a_turn_that_stands_alone_comes_after_a_blank_line(pipe: Pipe) -> None:
    out = io.StringIO()
    lines = (Line("stop", "STOP. No more."),)
    PlainPort(LineReader(pipe.reads), out).present(Turn(lines, alone=True), lines)
    assert out.getvalue() == "\nSTOP. No more.\n"
    pipe.close()


def test_a_word_typed_during_a_timer_is_heard(pipe: Pipe) -> None:
    pipe.type(b"stop\n")
    reply = PlainPort(LineReader(pipe.reads), io.StringIO()).time(REST, "rest", 0)
    assert reply is not None
    assert reply.text == "stop"
    pipe.close()


def test_a_timer_says_its_lines_when_they_are_due(pipe: Pipe) -> None:
    class Hurried(LineReader):
        waits: list[float]

        def line(self, wait_s: float | None = None) -> str | None:
            self.waits.append(wait_s or 0.0)
            return None

    out, reader = io.StringIO(), Hurried(pipe.reads)
    reader.waits = []
    PlainPort(reader, out, steady=lambda: 0.0).time(REST, "rest", 0)
    assert reader.waits == [30, 50, 60]
    assert out.getvalue() == "30 seconds left.\n10 seconds left.\nRest is over.\n"
    pipe.close()


def test_quick_ends_a_timer_at_once_with_its_end_word(pipe: Pipe) -> None:
    out = io.StringIO()
    assert PlainPort(LineReader(pipe.reads), out, quick=True).time(REST, "rest", 0) is None
    assert out.getvalue() == "Rest is over.\n"
    pipe.close()


def test_the_label_keeps_its_row_to_the_typing_place(pipe: Pipe) -> None:
    pipe.type(b"3\n")
    pipe.close()
    out = io.StringIO()
    ask = Ask("pain now", "Pain now, 0 to 10:", Question("pain now", Kind.PAIN_NOW))
    assert PlainPort(LineReader(pipe.reads), out).ask(ask).text == "3"
    assert out.getvalue() == "Pain now, 0 to 10: \n"


# ---------------------------------------------------------------- whole sessions


def session_bytes(typed: bytes) -> tuple[int, str]:
    made = Pipe()
    made.type(typed)
    made.close()
    out = io.StringIO()
    port = PlainPort(LineReader(made.reads), out, quick=True)
    code = run(bound_plan(), port, diary_in_memory(), HandClock())
    os.close(made.reads)
    return code, out.getvalue()


GOOD = b"yes\n1\n0\n8\nnone\nnone\nnone\nno\nno\nno\nno\nno\nno\nno\nno\nno\n0\n"


@pytest.mark.hazard("H-13")
def test_a_session_by_lines_has_no_escape_bell_backspace_or_return() -> None:
    _code, words = session_bytes(GOOD + b"\x1b[2J\x07\x08 12, pain 0\nfine\n")
    assert not set(words) & set("\x1b\r\x08\x07")
    assert words.isascii()


def test_end_of_input_says_so_and_exits_11() -> None:
    code, words = session_bytes(b"yes\n1\n")
    assert code == 11
    assert words.endswith("No more typing came.\nAll you typed is saved.\n")


def test_a_stop_is_the_last_thing_by_lines() -> None:
    code, words = session_bytes(b"yes\nmy chest feels tight and I cant breathe\n\n")
    assert code == 10
    _before, _blank, stop = words.rpartition("\n\nSTOP.")
    assert "Call 112 now." in stop
    assert stop.rstrip().endswith("Press Enter to close:")


def test_by_lines_neither_screen_library_is_loaded(tmp_path: Path) -> None:
    program = f"""
import sys
from pathlib import Path
from coach.drivers.drive import run_session
from coach.journal import Journal
from coach.texts.doors import bound_from
bound, _ = bound_from(Path({str(ROOT / "dialogs/steady-shoulder/plans/d-o.yaml")!r}))
with Journal.open(Path({str(tmp_path / "diary")!r})) as journal:
    code = run_session(journal, bound, plain=False, quick=True)
print("LOADED", sorted(m for m in ("prompt_toolkit", "rich", "asyncio") if m in sys.modules))
sys.exit(code)
"""
    done = subprocess.run(
        [sys.executable, "-c", program],
        input=b"yes\n1\n",
        capture_output=True,
        cwd=ROOT,
        check=False,
        env={**os.environ, "TERM": "xterm"},
    )
    assert done.returncode == 11, done.stderr
    assert b"LOADED []" in done.stdout


def test_a_very_long_line_is_one_unclear_answer() -> None:
    _code, words = session_bytes(b"yes\n" + b"x" * 60_000 + b"\n1\n")
    assert "That was long." in words
