"""Starts programs as a person would, on a terminal of their own, and measures them.

Law: every figure comes from a real process. Compared programs take turns, so that a busy moment
falls on both.
"""

import os
import pty
import select
import signal
import statistics
import subprocess
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

PROMPT_DRAWN = b"\x1b[?2004h"  # prompt_toolkit asks for bracketed paste when it draws a prompt
PATIENCE_S = 30.0


class Program(NamedTuple):
    """A command line with the environment it starts in."""

    command: list[str]
    environment: dict[str, str]


class Ended(NamedTuple):
    """What was seen of a process that was watched: seconds until the sight, and its peak in MB."""

    seconds: float
    peak_mb: float


def on_a_terminal(program: Program, sight: bytes) -> Ended:
    """Start on a pty; wait until `sight` is on screen (any byte for b""), then end the program.

    Raises TimeoutError with what was shown when the sight does not come.
    """
    started = time.perf_counter()
    pid, screen = pty.fork()
    if pid == 0:
        os.execvpe(program.command[0], program.command, program.environment)
    try:
        shown = read_until(screen, sight)
        seconds = time.perf_counter() - started
    finally:
        os.kill(pid, signal.SIGTERM)
        drain(screen)
        usage = os.wait4(pid, 0)[2]
        os.close(screen)
    if not seen(shown, sight):
        raise TimeoutError(f"{program.command} showed only {shown!r}")
    return Ended(seconds, usage.ru_maxrss / 1024)


def read_until(screen: int, sight: bytes) -> bytes:
    """All that is shown until the sight, the end, or the end of patience."""
    shown, until = b"", time.perf_counter() + PATIENCE_S
    while not seen(shown, sight) and time.perf_counter() < until:
        if select.select([screen], [], [], 0.2)[0]:
            part = piece(screen)
            if not part:
                break
            shown += part
    return shown


def seen(shown: bytes, sight: bytes) -> bool:
    """Whether the sight is there."""
    return sight in shown if sight else bool(shown)


def piece(screen: int) -> bytes:
    """What is there to read; nothing once the program has gone."""
    try:
        return os.read(screen, 65_536)
    except OSError:
        return b""


def drain(screen: int) -> None:
    """Read on until the program has gone, so that it never waits for us."""
    while piece(screen):
        pass


def whole_run(program: Program, typed: str = "") -> Ended:
    """Run without a terminal to the end; its wall time and its peak."""
    with tempfile.TemporaryFile("w+") as lines:
        lines.write(typed)
        lines.seek(0)
        started = time.perf_counter()
        running = subprocess.Popen(
            program.command,
            env=program.environment,
            stdin=lines,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        usage = os.wait4(running.pid, 0)[2]
        running.returncode = 0
    return Ended(time.perf_counter() - started, usage.ru_maxrss / 1024)


def compared(
    one: Callable[[], Ended], other: Callable[[], Ended], rounds: int
) -> tuple[float, float]:
    """Median seconds of two things in turn, after one round that warms the caches."""
    one(), other()
    pairs = [(one().seconds, other().seconds) for _ in range(rounds)]
    return statistics.median(p[0] for p in pairs), statistics.median(p[1] for p in pairs)


def calm_environment(folder: Path) -> dict[str, str]:
    """A terminal user's environment with an own home; bytecode is cached, as after an install."""
    kept = {name: os.environ[name] for name in ("PATH", "LANG") if name in os.environ}
    return kept | {
        "HOME": str(folder),
        "XDG_DATA_HOME": str(folder / "data"),
        "TERM": "xterm-256color",
        "PROMPT_TOOLKIT_NO_CPR": "1",  # nobody answers the cursor question here
        "COLUMNS": "80",
        "LINES": "24",
    }
