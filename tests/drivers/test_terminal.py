"""At a real terminal: prompts, early typing, timers, stops, signals, widths, and how it is left."""

from __future__ import annotations

import os
import re
import signal
import sys
import time
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

import pytest

if sys.platform == "win32":
    pytest.skip("there is no such terminal", allow_module_level=True)

import termios

import pexpect
import pyte

from coach.drivers.drive import run
from coach.journal import Journal
from tests.drivers.fakes import Athlete, HandClock, plan_for_today

if TYPE_CHECKING:
    from collections.abc import Iterator

ROOT = Path(__file__).parents[2]
FIRST_SET = "set line in set 1 of side-lying external rotation"
PROGRAM = """
import sys
from pathlib import Path
from coach.cli import ends_by_signal
from coach.drivers.drive import run_session
from coach.journal import Journal
from tests.drivers.fakes import plan_for_today
ends_by_signal()
with Journal.open(Path(sys.argv[1])) as journal:
    sys.exit(run_session(journal, plan_for_today(int(sys.argv[2])), plain=False, quick=False))
"""


def own_environment() -> dict[str, str]:
    """The environment less what would tell the program another window than its own."""
    return {name: v for name, v in os.environ.items() if name not in {"COLUMNS", "LINES"}}


class Screen:
    """The program at a terminal of its own, and what a person would see on it."""

    def __init__(self, folder: Path, columns: int = 80, rest_s: int = 60, **environ: str) -> None:
        self.child = pexpect.spawn(
            sys.executable,
            ["-c", PROGRAM, str(folder), str(rest_s)],
            cwd=str(ROOT),
            dimensions=(40, columns),
            env={**own_environment(), "TERM": "xterm-256color", **environ},
            timeout=30,
        )
        self.screen = pyte.HistoryScreen(columns, 40)
        self.stream = pyte.ByteStream(self.screen)
        self.raw = b""

    def text(self) -> str:
        """What stands on the display now."""
        return "\n".join(row.rstrip() for row in self.screen.display).rstrip()

    def read(self, seconds: float = 0.1) -> None:
        try:
            data = self.child.read_nonblocking(65536, timeout=seconds)
        except (pexpect.TIMEOUT, pexpect.EOF):
            return
        self.raw += data
        self.stream.feed(data)

    def type(self, text: str) -> None:
        self.child.send(text)

    def wait_for_label(self, label: str) -> None:
        until = time.monotonic() + 30
        while not self.last_row().startswith(label):
            assert time.monotonic() < until, self.text()
            self.read()

    def last_row(self) -> str:
        rows = self.text().splitlines()
        return rows[-1] if rows else ""

    def settle(self) -> None:
        """Read until nothing more comes for a moment."""
        before = -1
        while before != len(self.raw):
            before = len(self.raw)
            self.read(0.4)

    def ended(self) -> int:
        """The exit code, once it has ended."""
        until = time.monotonic() + 30
        while self.child.isalive():
            assert time.monotonic() < until, self.text()
            self.read()
        self.read()
        self.child.close()
        if self.child.signalstatus is not None:
            return 128 + int(self.child.signalstatus)
        return int(self.child.exitstatus or 0)

    def is_restored(self) -> bool:
        """Whether lines and echo are on again."""
        modes = termios.tcgetattr(self.child.child_fd)[3]
        return bool(modes & termios.ICANON and modes & termios.ECHO)


@pytest.fixture
def screens(tmp_path: Path) -> Iterator[list[Screen]]:
    opened: list[Screen] = []
    yield opened
    for screen in opened:
        screen.child.close(force=True)


def opened(screens: list[Screen], folder: Path, columns: int = 80, rest_s: int = 60) -> Screen:
    screens.append(Screen(folder, columns, rest_s))
    return screens[-1]


class StillClock(HandClock):
    """However much is done, it is still that moment."""

    def now(self) -> datetime:
        return self.at


def cut_off_at(folder: Path, prompt: str, rest_s: int = 60) -> None:
    """A diary whose session was cut off a moment ago at a prompt."""
    athlete = Athlete(StillClock(datetime.now().astimezone()))
    athlete.leave_at_name = prompt
    with Journal.open(folder) as journal:
        run(plan_for_today(rest_s), athlete, journal, athlete.clock)


def test_enter_alone_and_the_up_arrow_answer_nothing(screens: list[Screen], tmp_path: Path) -> None:
    screen = opened(screens, tmp_path / "diary")
    screen.wait_for_label("Yes or no:")
    screen.type("yes\r")
    screen.wait_for_label("Pain, 0")
    screen.type("\x1b[A\x1b[A\x12yes\x07")
    screen.settle()
    assert "search" not in screen.text()
    screen.type("\x15\x1b[A\r")
    screen.settle()
    assert "I did not get a number." in screen.text()
    assert screen.last_row() == "Pain, 0 (none) to 10 (the worst):"


def test_what_was_typed_early_answers_no_safety_question(
    screens: list[Screen], tmp_path: Path
) -> None:
    cut_off_at(tmp_path / "diary", "throwing today")
    screen = opened(screens, tmp_path / "diary")
    screen.wait_for_label("None, or which kind:")
    screen.type("none\rno\rno\r")
    screen.settle()
    assert screen.last_row() == "Yes or no:"
    assert screen.text().count("Yes or no:") == 1


def test_a_pasted_pair_of_lines_is_refused_at_a_safety_question(
    screens: list[Screen], tmp_path: Path
) -> None:
    cut_off_at(tmp_path / "diary", "screen arm")
    screen = opened(screens, tmp_path / "diary")
    screen.wait_for_label("Yes or no:")
    question = screen.text().splitlines()[-2]
    screen.type("\x1b[200~no\rno\x1b[201~\r")
    screen.settle()
    assert "Several lines came at once, so I took none." in screen.text()
    assert screen.text().splitlines()[-2:] == [question, "Yes or no:"]


def test_letters_that_move_the_cursor_never_reach_the_display(
    screens: list[Screen], tmp_path: Path
) -> None:
    screen = opened(screens, tmp_path / "diary")
    screen.wait_for_label("Yes or no:")
    before = len(screen.raw)
    screen.type("\x1b[200~\u202e\u009b31m\x07[rest] pain [/5]\x1b[201~")
    screen.settle()
    drawn = screen.raw[before:].decode("utf-8", "replace")
    assert "\u202e" not in drawn
    assert "\u009b" not in drawn
    assert "\x07" not in drawn
    assert "[rest] pain [/5]" in screen.text()


def test_a_rest_counts_down_in_one_row_and_ends_as_a_fixed_line(
    screens: list[Screen], tmp_path: Path
) -> None:
    cut_off_at(tmp_path / "diary", "felt in set 1 of side-lying external rotation", rest_s=3)
    screen = opened(screens, tmp_path / "diary", rest_s=3)
    screen.wait_for_label("Type a number")
    screen.type("fine\r")
    deadline = time.monotonic() + 20
    while "Rest is over." not in screen.text():
        assert time.monotonic() < deadline, screen.text()
        screen.read()
    assert len(re.findall(r"^Rest: ", screen.text(), re.MULTILINE)) == 0
    screen.wait_for_label("Clean reps")
    assert "Set 2 of 3, left arm:" in screen.text()


def test_a_half_typed_word_delays_the_next_turn_and_is_heard(
    screens: list[Screen], tmp_path: Path
) -> None:
    cut_off_at(tmp_path / "diary", "felt in set 1 of side-lying external rotation", rest_s=3)
    screen = opened(screens, tmp_path / "diary", rest_s=3)
    screen.wait_for_label("Type a number")
    screen.type("fine\r")
    screen.wait_for_label("Rest: ")
    screen.type("my hand is nu")
    time.sleep(4)
    screen.read(0.5)
    assert "Set 2 of 3, left arm:" not in screen.text().split("Rest 3 s.")[-1]
    screen.type("mb\r")
    screen.wait_for_label("Press Enter to close:")
    assert screen.text().startswith("STOP.")


def test_enter_alone_does_nothing_to_a_hold(screens: list[Screen], tmp_path: Path) -> None:
    cut_off_at(tmp_path / "diary", "go for hold 1 in set 1 of cross-body stretch")
    screen = opened(screens, tmp_path / "diary")
    screen.wait_for_label("Type go when in place:")
    screen.type("go\r\r\r")
    screen.wait_for_label("Left arm, hold:")
    assert screen.text().count("Hold 1 of 5") == 1
    assert "Hold 2 of 5" not in screen.text()


def test_a_stop_stands_alone_and_waits_for_enter(screens: list[Screen], tmp_path: Path) -> None:
    screen = opened(screens, tmp_path / "diary")
    screen.wait_for_label("Yes or no:")
    screen.type("my chest feels tight and I cant breathe\r")
    screen.wait_for_label("Press Enter to close:")
    assert screen.text().startswith("STOP.")
    assert "Is this your plan?" not in screen.text()
    with_stop = screen.text()
    screen.read(0.5)
    assert screen.child.isalive()
    assert screen.text() == with_stop
    screen.type("\r")
    assert screen.ended() == 10


@pytest.mark.parametrize(
    ("number", "code"), [(signal.SIGINT, 130), (signal.SIGTERM, 143), (signal.SIGHUP, 129)]
)
def test_a_signal_leaves_the_terminal_as_it_was_and_the_session_kept(
    screens: list[Screen], tmp_path: Path, number: signal.Signals, code: int
) -> None:
    screen = opened(screens, tmp_path / "diary")
    screen.wait_for_label("Yes or no:")
    screen.type("yes\r")
    screen.wait_for_label("Pain, 0")
    os.kill(screen.child.pid, number)
    deadline = time.monotonic() + 20
    while not screen.is_restored():
        assert time.monotonic() < deadline
        screen.read()
    assert screen.ended() == code
    with Journal.open(tmp_path / "diary") as journal:
        cut = journal.unfinished()
        assert cut is not None
        assert [body["text"] for _kind, body, _at in cut.events] == ["yes"]


def test_control_c_and_control_d_end_it_with_all_saved(
    screens: list[Screen], tmp_path: Path
) -> None:
    screen = opened(screens, tmp_path / "diary")
    screen.wait_for_label("Yes or no:")
    screen.type("\x03")
    assert screen.ended() == 130
    assert "Stopped here. All you typed is saved." in screen.text()
    again = opened(screens, tmp_path / "diary")
    again.wait_for_label("Yes or no:")
    assert "The session was cut off" in again.text()
    again.type("\x04")
    assert again.ended() == 11
    assert "All you typed is saved." in again.text()


@pytest.mark.parametrize("columns", [40, 80, 200])
def test_no_row_is_wider_than_the_window(
    screens: list[Screen], tmp_path: Path, columns: int
) -> None:
    cut_off_at(tmp_path / "diary", FIRST_SET)
    screen = opened(screens, tmp_path / "diary", columns)
    screen.wait_for_label("Clean reps")
    rows = screen.text().splitlines()
    assert max(len(row) for row in rows) <= min(columns, 80) - 1
    assert not any(row.endswith((" 10 to 15", " left", " 2", " 60")) for row in rows)


def test_a_narrower_window_in_the_middle_wraps_what_comes_next(
    screens: list[Screen], tmp_path: Path
) -> None:
    screen = opened(screens, tmp_path / "diary")
    screen.wait_for_label("Yes or no:")
    screen.child.setwinsize(40, 40)
    screen.screen.resize(40, 40)
    screen.settle()
    screen.type("yes\r")
    screen.wait_for_label("Pain, 0")
    assert "How much does it hurt right now, at\nrest?" in screen.text()


def test_without_color_nothing_is_colored_anywhere(screens: list[Screen], tmp_path: Path) -> None:
    cut_off_at(tmp_path / "diary", FIRST_SET)
    screen = opened(screens, tmp_path / "diary")
    screen.wait_for_label("Clean reps")
    screen.type("12, pain 0\r")
    screen.wait_for_label("Type a number")
    colors = re.findall(rb"\x1b\[(?:[0-9;]*;)?(?:3[0-7]|4[0-7]|9[0-7])(?:;[0-9;]*)?m", screen.raw)
    assert colors == []
    assert b"\x07" not in screen.raw
    assert b"\x1b[6n" not in screen.raw
