"""README says who Coach is for, and every command it names is there."""

import re

import pytest

from coach.cli import COMMANDS
from coach.drivers.exit_codes import MEANING
from tests.house.modules import ROOT


def readme() -> str:
    """The page as it stands."""
    return (ROOT / "README.md").read_text("utf-8")


def typed() -> list[str]:
    """What the page shows to be typed: its code, in blocks and in the line."""
    blocks = re.findall(r"```[a-z]*\n(.*?)```", readme(), re.DOTALL)
    lines = [line.strip() for block in blocks for line in block.splitlines()]
    return lines + re.findall(r"(?<!`)`([^`\n]+)`(?!`)", readme())


def named(first: str) -> set[str]:
    """The words that follow `first` in what is typed."""
    return {
        words[words.index(first) + 1].strip(",.;:")
        for words in (line.split() for line in typed())
        if first in words[:-1]
    }


def test_the_first_paragraph_says_for_whom_it_is() -> None:
    paragraphs = [part for part in readme().split("\n\n") if not part.startswith(("#", "["))]
    assert "athlete" in paragraphs[0]
    assert "clinician" in paragraphs[0]


def test_every_make_command_it_names_is_there() -> None:
    targets = set(re.findall(r"^([a-z]+):", (ROOT / "Makefile").read_text("utf-8"), re.MULTILINE))
    assert {"try", "test"} <= named("make")
    assert named("make") <= targets


def test_every_command_of_coach_it_names_is_there() -> None:
    assert {"try", "use"} <= named("coach")
    assert {word for word in named("coach") if word.isalpha()} <= {*COMMANDS, "help"}


def test_the_plain_way_installs_from_a_lock_with_hashes() -> None:
    plain_ways = [line for line in typed() if "--require-hashes" in line]
    assert plain_ways
    for line in plain_ways:
        lock = re.search(r"-r (\S+)", line)
        assert lock
        assert (ROOT / lock[1]).is_file()
    assert any("tests/check_all.py" in line for line in typed())


@pytest.mark.parametrize("words", ["not for use", "invented"])
def test_it_says_that_the_programs_are_made_up(words: str) -> None:
    assert words in readme()


def test_its_table_of_exit_codes_is_the_one_that_is_used() -> None:
    rows = re.findall(r"^\| ([\d, ]+) \|", readme(), re.MULTILINE)
    assert sorted(int(code) for row in rows for code in row.split(",")) == sorted(MEANING)
