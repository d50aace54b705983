"""The bound file carries everything, opens only unchanged, and keeps no word in the clear."""

from __future__ import annotations

import math
import secrets
from pathlib import Path

import pytest

from coach.rules.hold import word_matches
from coach.texts.bind import (
    FIGURES_IN_ONE,
    HOW_MANY_WORDS,
    WORDS_IN_ONE,
    Binding,
    bind,
    new_words,
    read_bound,
)
from coach.texts.doors import bound_from, check_paths
from coach.texts.plain_words import PLAIN_WORDS

PLAN = Path(__file__).parents[1] / "errors" / "good" / "plans" / "l-v.yaml"


@pytest.fixture(scope="module")
def binding() -> Binding:
    made = bind(PLAN, secrets)
    assert made.findings == []
    return made


@pytest.fixture
def file(binding: Binding, tmp_path: Path) -> Path:
    path = tmp_path / "l-v.txt"
    path.write_bytes(binding.text.encode())
    return path


def test_the_bound_file_gives_the_same_program_and_plan(file: Path) -> None:
    found, findings = read_bound(file)
    plain, _ = bound_from(PLAN)
    assert findings == []
    assert found is not None
    assert plain is not None
    assert found.program == plain.program
    assert found.plan._replace(words=()) == plain.plan


def test_it_opens_through_the_door_of_any_plan(file: Path) -> None:
    assert bound_from(file)[0] == read_bound(file)[0]
    assert check_paths([file]) == []


def test_each_of_the_ten_words_fits_one_hash_and_stands_nowhere(
    binding: Binding, file: Path
) -> None:
    found, _ = read_bound(file)
    assert found is not None
    assert len(set(binding.words)) == len(found.plan.words) == HOW_MANY_WORDS
    for word in binding.words[:2]:  # each try costs 16 MiB
        assert word_matches(word, found.plan.words, ()) == binding.words.index(word)
        assert word not in binding.text
    assert word_matches("maple river stone 0000", found.plan.words[:1], ()) is None


def test_a_word_holds_at_least_forty_bits() -> None:
    assert len(set(PLAIN_WORDS)) == len(PLAIN_WORDS)
    assert math.log2(len(PLAIN_WORDS) ** WORDS_IN_ONE * FIGURES_IN_ONE) >= 40


def test_words_are_drawn_from_the_whole_list_and_never_twice() -> None:
    class Counting:
        """Draws 0, 0, 0, 0 and then rising numbers, so that the first word comes up twice."""

        def __init__(self) -> None:
            self.calls = -1

        def randbelow(self, exclusive_upper_bound: int, /) -> int:
            self.calls += 1
            return 0 if self.calls < 8 else self.calls % exclusive_upper_bound

        def token_bytes(self, nbytes: int | None = None, /) -> bytes:
            return b"\0" * (nbytes or 0)

    words = new_words(Counting())
    assert len(set(words)) == HOW_MANY_WORDS


@pytest.mark.hazard("H-12")
def test_every_changed_byte_is_refused(binding: Binding, tmp_path: Path) -> None:
    data = binding.text.encode()
    path = tmp_path / "changed.txt"
    for place in range(0, len(data), 97):
        path.write_bytes(data[:place] + bytes([data[place] ^ 1]) + data[place + 1 :])
        found, findings = read_bound(path)
        assert found is None
        assert findings[0].id in {"bound.changed", "bound.not_one", "bound.version"}


@pytest.mark.parametrize("change", [b"x", b"\n", b"\n==== plans/z.yaml, 1 bytes\nx"])
def test_something_added_at_the_end_is_refused(
    change: bytes, binding: Binding, tmp_path: Path
) -> None:
    path = tmp_path / "longer.txt"
    path.write_bytes(binding.text.encode() + change)
    assert [finding.id for finding in check_paths([path])] == ["bound.changed"]


def test_another_layout_and_another_file_are_told_apart(file: Path, tmp_path: Path) -> None:
    path = tmp_path / "other.txt"
    path.write_bytes(file.read_bytes().replace(b"layout: 1", b"layout: 3"))
    assert [finding.id for finding in check_paths([path])] == ["bound.version"]
    path.write_bytes(b"bound plan: L.V. 1\n")
    assert [finding.id for finding in check_paths([path])] == ["bound.not_one"]


def test_a_plan_with_an_error_is_not_bound() -> None:
    bad = Path(__file__).parents[1] / "errors" / "guardian.missing" / "l-v.yaml"
    made = bind(bad, secrets)
    assert (made.text, made.words) == ("", ())
    assert [finding.id for finding in made.findings] == ["guardian.missing"]


def test_a_plan_that_opens_in_person_only_gets_no_words(tmp_path: Path) -> None:
    folder = tmp_path / "program"
    for source in PLAN.parents[1].rglob("*.yaml"):
        target = folder / source.relative_to(PLAN.parents[1])
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_bytes(source.read_bytes().replace(b"by word, in person", b"in person"))
    made = bind(folder / "plans" / "l-v.yaml", secrets)
    assert made.words == ()
    assert "clearance words" not in made.text
