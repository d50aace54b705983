"""Runs the command as a user does: a process of its own, with a data folder of its own."""

from __future__ import annotations

import functools
import os
import subprocess
import sys
from datetime import date, datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from coach.drivers.sample import moved_to
from coach.journal import Journal
from coach.model.history import Hold
from coach.texts.compiled import to_json
from coach.texts.doors import bound_from

if TYPE_CHECKING:
    from collections.abc import Callable

ROOT = Path(__file__).parents[2]
PLANS = ROOT / "dialogs" / "steady-shoulder" / "plans"
D_O = str(PLANS / "d-o.yaml")


def environment(home: Path) -> dict[str, str]:
    """A plain environment whose diary lives under `home`."""
    kept = {name: os.environ[name] for name in ("PATH", "LANG") if name in os.environ}
    paths = {"HOME": str(home), "XDG_DATA_HOME": str(home / "data"), "PYTHONPATH": str(ROOT)}
    return kept | paths | {"TERM": "dumb", "COLUMNS": "80"}


def command(*words: str) -> list[str]:
    """The command line for `coach WORDS`."""
    return [sys.executable, "-m", "coach", *words]


def run(
    home: Path,
    *words: str,
    typed: str | bytes = "",
    before: Callable[[], None] | None = None,
    **settings: str,
) -> subprocess.CompletedProcess[str]:
    """Run to the end with `typed` on standard input. Output is decoded with marks for bad bytes."""
    text = typed if isinstance(typed, bytes) else typed.encode("utf-8", "surrogateescape")
    done = subprocess.run(
        command(*words),
        input=text,
        capture_output=True,
        check=False,
        env=environment(home) | settings,
        cwd=home,
        timeout=120,
        preexec_fn=before,
    )
    out, err = (part.decode("utf-8", "backslashreplace") for part in (done.stdout, done.stderr))
    return subprocess.CompletedProcess(done.args, done.returncode, out, err)


def diary_folder(home: Path) -> Path:
    """Where that user's diary is."""
    return home / "data" / "coach"


def days_ago(days: int) -> str:
    """The instant so many days before now, as the diary keeps it."""
    return (datetime.now().astimezone() - timedelta(days=days)).isoformat()


@functools.cache
def compiled(plan: str) -> tuple[str, str]:
    """The compiled text of an invented plan, begun thirty days ago, and its digest."""
    bound, findings = bound_from(Path(plan))
    assert bound is not None, findings
    return to_json(moved_to(bound, date.fromisoformat(days_ago(30)[:10]))), bound.digest


def with_plan(home: Path, plan: str = D_O) -> None:
    """Put an invented plan in place, as `coach use` does."""
    text, digest = compiled(plan)
    with Journal.open(diary_folder(home)) as journal:
        journal.keep_plan(text, digest, Path(plan).name, days_ago(30))


def with_closed_plan(home: Path, said: str = "tingles") -> None:
    """A plan in place, closed by a stop five days ago."""
    with_plan(home)
    at = days_ago(5)
    hold = Hold(0, "S08", "same day", "numb_tingle", said, at[:10], at, 1)
    with Journal.open(diary_folder(home)) as journal:
        session = journal.begin({}, at, ())
        journal.append(session, "typed", {}, (), at, hold=hold)
