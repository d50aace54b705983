"""The same seed gives the same bytes, whatever the hash seed, the language or the time zone."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
PROGRAM = "dialogs/steady-shoulder"
PLAN = f"{PROGRAM}/plans/d-o.yaml"
DAYS = ("scenarios/six-ends.yaml", "scenarios/throw-clean.yaml", "scenarios/weeks-new-version.yaml")
SETTINGS = (
    {"PYTHONHASHSEED": "0", "LC_ALL": "C", "LANG": "C", "TZ": "UTC"},
    {"PYTHONHASHSEED": "1", "LC_ALL": "de_DE.UTF-8", "LANG": "de_DE.UTF-8", "TZ": "Asia/Tokyo"},
    {
        "PYTHONHASHSEED": "4242",
        "LC_ALL": "tr_TR.UTF-8",
        "LANG": "tr_TR.UTF-8",
        "TZ": "America/St_Johns",
    },
)
# Seconds and memory are measured, so they differ; everything else is compared byte for byte.
PROVE = """
import json, sys
from pathlib import Path
from coach.drivers import prove_days, prove as proving
from coach.drivers.prove import Options, prove, as_json
from tests.proof.small import bound
first = proving.openings
proving.openings = lambda b: [d for d in first(b) if d[0] in {"a stop stands", "the day after the plan"}]
report = json.loads(as_json(prove(bound(), Options(Path("plan.yaml")), lambda _whole: None)))
del report["seconds"], report["mb"]
print(json.dumps(report, indent=1))
from coach.drivers.prove_walk import walked
told = walked(bound(), 600, seed=3)
print(told.turns, told.talks, told.compared, told.found)
"""
COMMANDS = {
    "replay": ("-m", "coach", "replay", *DAYS),
    "reach": ("-m", "coach", "replay", "--reach", *DAYS),
    "forecast": ("-m", "coach", "forecast", PLAN, "--course", "smooth", "--weeks", "2", "--json"),
    "check": ("-m", "coach", "check", PROGRAM, "--json"),
    "faulty check": ("-m", "coach", "check", "tests/errors/dose.missing", "--json"),
    "map": ("-m", "coach", "map", PROGRAM, "--out", "-"),
    "sheet": ("-m", "coach", "sheet", PLAN, "--out", "-"),
    "prove": ("-c", PROVE),
}


def said(command: tuple[str, ...], setting: dict[str, str], folder: Path) -> bytes:
    """What a command says, and what it writes where it asks for a file."""
    out = folder / "out.html"
    words = [str(out) if word == "-" else word for word in command]
    environment = {**os.environ, **setting, "HOME": str(folder), "XDG_DATA_HOME": str(folder)}
    done = subprocess.run(
        [sys.executable, *words],
        cwd=ROOT,
        env={**environment, "PYTHONPATH": str(ROOT)},
        capture_output=True,
        check=False,
    )
    assert done.returncode in {0, 1}, done.stderr.decode()
    written = out.read_bytes() if out.exists() else b""
    out.unlink(missing_ok=True)
    return done.stdout.replace(str(folder).encode(), b"") + written


@pytest.mark.parametrize("name", COMMANDS)
def test_it_says_the_same_under_every_setting(name: str, tmp_path: Path) -> None:
    first, *others = [said(COMMANDS[name], setting, tmp_path) for setting in SETTINGS]
    assert first
    for other in others:
        assert other == first


def test_results_for_a_build_server_differ_in_their_times_only(tmp_path: Path) -> None:
    import re

    files = []
    for number, setting in enumerate(SETTINGS):
        out = tmp_path / f"{number}.xml"
        said(("-m", "coach", "replay", *DAYS, "--junit", str(out)), setting, tmp_path)
        files.append(re.sub(r'time="[0-9.]+"', "", out.read_text("utf-8")))
    assert files[0] == files[1] == files[2]
    assert files[0].count("<testcase") == len(DAYS)
