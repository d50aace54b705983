"""Today's session from the outside: one process, lines in, lines out, one diary."""

from __future__ import annotations

import os
import re
import resource
import select
import signal
import subprocess
import time
from typing import TYPE_CHECKING

import pytest

from coach.journal import Journal
from tests.cli.running import (
    command,
    days_ago,
    diary_folder,
    environment,
    run,
    with_closed_plan,
    with_plan,
)

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from pathlib import Path

FLAG = "my hand is numb and tingly since this morning"
WORK = re.compile(r"Set \d of \d|\d reps| lb\b| kg\b")


class Talk:
    """`coach` in a process of its own; `hears` reads up to the next prompt, `types` answers it."""

    def __init__(self, home: Path) -> None:
        self.process = subprocess.Popen(
            command(), stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE,
            env=environment(home), cwd=home, bufsize=0,
        )  # fmt: skip

    def hears(self) -> str:
        """What is said up to the next prompt or the end."""
        out, heard, until = self.process.stdout, "", time.monotonic() + 60
        assert out is not None
        while not heard.endswith(": "):
            ready, _, _ = select.select([out], [], [], max(0.0, until - time.monotonic()))
            assert ready, f"no prompt came after {heard!r}"
            read = os.read(out.fileno(), 65_536)
            if not read:
                break
            heard += read.decode()
        return heard

    def types(self, text: str) -> str:
        """Type one line; what is said up to the next prompt."""
        assert self.process.stdin is not None
        self.process.stdin.write(f"{text}\n".encode())
        return self.hears()

    def ends(self) -> tuple[int, str]:
        """Close the input; the exit code and what was said last."""
        out, err = self.process.communicate(timeout=60)
        assert b"Traceback" not in err
        return self.process.returncode, out.decode() + err.decode()


@pytest.fixture
def begin(tmp_path: Path) -> Iterator[Callable[[], Talk]]:
    """Starts sessions; ends those that a failed test left open."""
    begun: list[Talk] = []

    def one() -> Talk:
        begun.append(Talk(tmp_path))
        return begun[-1]

    yield one
    for talk in begun:
        if talk.process.poll() is None:
            talk.process.kill()
        talk.process.communicate()


def test_a_warning_sign_is_a_stop_on_disk_and_is_shown_first_ever_after(tmp_path: Path) -> None:
    with_plan(tmp_path)
    first = run(tmp_path, typed=f"yes\n{FLAG}\n")
    assert first.returncode == 10
    assert "STOP." in first.stdout
    assert "555 0134" in first.stdout
    with Journal.open(diary_folder(tmp_path)) as journal:
        hold = journal.open_hold()
    assert hold is not None
    assert hold.said == FLAG
    for _again in range(2):
        again = run(tmp_path, typed="yes\n1\n")
        assert again.returncode == 10
        assert next(line for line in again.stdout.splitlines()[1:] if line).startswith("STOP.")
        assert not WORK.search(again.stdout)
    assert FLAG in " ".join(run(tmp_path, "diary").stdout.split())


def test_a_closed_plan_shows_no_exercise_until_it_is_opened(tmp_path: Path) -> None:
    with_closed_plan(tmp_path)
    assert run(tmp_path).returncode == 10
    opened = run(tmp_path, "clear", typed=f"in person\n{days_ago(0)[:10]}\nM. Aalto\n")
    assert opened.returncode == 0
    assert "STOP" not in run(tmp_path).stdout


def test_stop_ends_the_day_and_keeps_it(tmp_path: Path) -> None:
    with_plan(tmp_path)
    done = run(tmp_path, typed="yes\n1\nstop\n")
    assert done.returncode == 11
    assert "saved" in done.stdout


def test_the_end_of_input_keeps_all_and_the_next_start_goes_on(tmp_path: Path) -> None:
    with_plan(tmp_path)
    first = run(tmp_path, typed="yes\n1\n")
    assert first.returncode == 11
    question = first.stdout.split("\n")
    second = run(tmp_path)
    assert [line for line in question if "woke up" in line] == [
        line for line in second.stdout.split("\n") if "woke up" in line
    ]
    assert "Is this your plan" not in second.stdout


@pytest.mark.hazard("H-01")
def test_kill_9_at_each_prompt_goes_on_with_the_same_words(
    tmp_path: Path, begin: Callable[[], Talk]
) -> None:
    with_plan(tmp_path)
    answers = ["yes", "1", "0", "8", "none", "none"]
    said = ""
    for answer in answers:
        talk = begin()
        heard = talk.hears()
        if said:
            assert last_question(said) == last_question(heard)
        said = talk.types(answer)
        os.kill(talk.process.pid, signal.SIGKILL)
        talk.process.wait()
    with Journal.open(diary_folder(tmp_path)) as journal:
        cut = journal.unfinished()
        assert cut is not None
        assert [body["text"] for kind, body, _at in cut.events if kind == "typed"] == answers


def last_question(said: str) -> list[str]:
    """The last two lines said: the question and its label."""
    return [line for line in said.splitlines() if line][-2:]


def test_a_second_session_is_refused_while_one_is_open(
    tmp_path: Path, begin: Callable[[], Talk]
) -> None:
    with_plan(tmp_path)
    talk = begin()
    talk.hears()
    second = run(tmp_path)
    assert second.returncode == 75
    assert str(talk.process.pid) in second.stderr
    assert not WORK.search(second.stdout)
    assert talk.types("yes") != ""
    assert talk.ends()[0] == 11


@pytest.mark.parametrize(
    ("number", "code"), [(signal.SIGINT, 130), (signal.SIGTERM, 143), (signal.SIGHUP, 129)]
)
def test_a_signal_ends_the_session_and_loses_nothing(
    tmp_path: Path, begin: Callable[[], Talk], number: int, code: int
) -> None:
    with_plan(tmp_path)
    talk = begin()
    talk.hears()
    talk.types("yes")
    talk.process.send_signal(number)
    assert talk.ends()[0] == code
    with Journal.open(diary_folder(tmp_path)) as journal:
        cut = journal.unfinished()
        assert cut is not None
        assert [body["text"] for _kind, body, _at in cut.events] == ["yes"]


@pytest.mark.parametrize(
    "typed", ["x" * 1_000_000, "\x00", "\udcff\udcfe", "\x1b[2J", "\U0001f4a5"]
)
def test_any_line_is_unclear_and_asked_again(tmp_path: Path, typed: str) -> None:
    with_plan(tmp_path)
    done = run(tmp_path, typed=f"yes\n{typed}\n")
    assert done.returncode == 11
    assert "Traceback" not in done.stderr
    assert "\x1b" not in done.stdout
    assert done.stdout.count("Pain, 0 (none) to 10") == 2


def test_a_clock_before_the_last_record_shows_no_exercise(tmp_path: Path) -> None:
    with_plan(tmp_path)
    with Journal.open(diary_folder(tmp_path)) as journal:
        text, digest = journal.current_plan() or ("", "")
        journal.keep_plan(text, digest, "d-o.yaml", days_ago(-2))
    done = run(tmp_path, typed="yes\n1\n")
    assert done.returncode == 0
    assert "clock" in done.stdout
    assert "555 0134" in done.stdout
    assert not WORK.search(done.stdout)


def test_trying_keeps_nothing_and_needs_no_home(tmp_path: Path) -> None:
    done = run(tmp_path, "try", "--quick", "--plain", typed="yes\n1\nstop\n")
    assert done.returncode == 11
    assert list(tmp_path.iterdir()) == []
    assert "Nothing is kept" in done.stdout


def test_lines_have_no_escape_codes_and_no_terminal_library(tmp_path: Path) -> None:
    with_plan(tmp_path)
    program = (
        "import sys; from coach import cli; code = cli.main(['--plain']); "
        "print(sorted({'prompt_toolkit', 'rich', 'pydantic', 'yaml'} & set(sys.modules)))"
    )
    done = subprocess.run(
        [command()[0], "-c", program], input=b"yes\n1\n", capture_output=True, check=False,
        env=environment(tmp_path) | {"TERM": "xterm"}, cwd=tmp_path,
    )  # fmt: skip
    assert done.stdout.decode().splitlines()[-1] == "[]"
    assert not set(b"\x1b\r\x08\x07") & set(done.stdout)


def test_a_disk_that_fills_up_ends_the_session_and_keeps_what_was_confirmed(tmp_path: Path) -> None:
    with_plan(tmp_path)

    def fill() -> None:
        resource.setrlimit(resource.RLIMIT_FSIZE, (45_000, 45_000))

    typed = "yes\n1\n" + "what\n" * 40
    done = run(tmp_path, typed=typed, before=fill)
    assert done.returncode == 74
    assert "no exercise is shown" in " ".join((done.stdout + done.stderr).split())
    assert not WORK.search(done.stdout)
    with Journal.open(diary_folder(tmp_path)) as journal:
        kept = journal.events(1)
        assert [body["text"] for _kind, body, _at in kept[:2]] == ["yes", "1"]
        journal.verify()
