"""A session starts light: what it does not need is not loaded."""

import subprocess
import sys

import pytest

from tests.house.modules import ROOT


def loaded_after(code: str) -> set[str]:
    """The top-level modules that stand loaded after `code` in a fresh interpreter."""
    shown = "import sys; print(*sorted({name.split('.')[0] for name in sys.modules}))"
    ran = subprocess.run(
        [sys.executable, "-c", f"{code}\n{shown}"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=True,
    )
    return set(ran.stdout.splitlines()[-1].split())


HEAVY = {"pydantic", "prompt_toolkit", "rich", "yaml", "sqlite3", "transitions", "asyncio"}


def test_the_first_words_need_nothing_heavy() -> None:
    assert loaded_after("import coach.cli") & (HEAVY | {"argparse", "typing", "pathlib"}) == set()


@pytest.mark.parametrize("room", ["session.engine", "rules.limits", "hearing.ear", "model.turns"])
def test_the_middle_of_the_house_loads_no_screen_and_no_file_format(room: str) -> None:
    loaded = loaded_after(f"import coach.{room}")
    assert loaded & {"pydantic", "prompt_toolkit", "rich", "yaml", "sqlite3"} == set()


def test_a_load_is_seen() -> None:
    assert "sqlite3" in loaded_after("import sqlite3")
