"""Forgetting: first shown, then offered for export, then gone from every file."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest

from coach.drivers.exporting import take_in_file
from coach.drivers.forgetting import KEPT, NOTHING, forgetting
from coach.journal import Journal, Trouble
from coach.journal.diary import FILE_NAME
from coach.journal.whole import read_whole
from tests.journal import sample

PLANTED = "zq-planted-word-7319"


class Typing:
    """A person who types these words in turn."""

    def __init__(self, *typed: str) -> None:
        self.typed = list(typed)
        self.said: list[str] = []

    def say(self, text: str) -> None:
        self.said.append(text)

    def ask(self, label: str) -> str | None:
        self.said.append(label)
        return self.typed.pop(0) if self.typed else None

    def wait(self, seconds: float) -> None:
        raise AssertionError(seconds)


def planted(folder: Path) -> None:
    with Journal.open(folder) as journal:
        journal.keep_plan('{"plan": "x"}', "digest", "plan.yaml", sample.instant(0))
        sample.sit(journal, 0, notes=(f'"{PLANTED}"',))


def files_with(folder: Path, word: str) -> list[str]:
    return [p.name for p in folder.rglob("*") if p.is_file() and word.encode() in p.read_bytes()]


def test_nothing_kept_is_said_and_nothing_is_made(tmp_path: Path) -> None:
    voice = Typing()
    assert forgetting(tmp_path / "coach", voice) == 0
    assert voice.said == [NOTHING]
    assert not (tmp_path / "coach").exists()


def test_what_is_kept_is_shown_before_anything_is_asked(tmp_path: Path) -> None:
    planted(tmp_path / "coach")
    voice = Typing()
    assert forgetting(tmp_path / "coach", voice) == 11
    assert FILE_NAME in voice.said[0]
    assert voice.said[1] == "In it: 1 session, 1 plan, all you typed."
    assert voice.said[2] == "From Mon 9 Nov 2026 to Mon 9 Nov 2026."
    assert voice.said[-1] == KEPT
    assert files_with(tmp_path, PLANTED)


@pytest.mark.parametrize("word", ["no", "", "yes", "forge", "forget it"])
def test_any_other_word_keeps_all_of_it(tmp_path: Path, word: str) -> None:
    planted(tmp_path / "coach")
    assert forgetting(tmp_path / "coach", Typing("no", word)) == 11
    assert files_with(tmp_path, PLANTED)


def test_after_forgetting_no_file_holds_a_word_of_it(tmp_path: Path) -> None:
    planted(tmp_path / "coach")
    voice = Typing("no", "forget")
    assert forgetting(tmp_path / "coach", voice) == 0
    assert files_with(tmp_path, PLANTED) == []
    assert not (tmp_path / "coach").exists()
    assert NOTHING in voice.said[-1]


def test_what_was_deleted_was_overwritten_first(tmp_path: Path) -> None:
    planted(tmp_path / "coach")
    twin = tmp_path / "same file"
    twin.hardlink_to(tmp_path / "coach" / FILE_NAME)
    forgetting(tmp_path / "coach", Typing("no", "forget"))
    assert set(twin.read_bytes()) == {0}


def test_a_copy_taken_first_comes_back_whole(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(tmp_path)
    planted(tmp_path / "coach")
    before = read_whole(tmp_path / "coach" / FILE_NAME)
    assert forgetting(tmp_path / "coach", Typing("copy.jsonl", "forget")) == 0
    assert (tmp_path / "copy.jsonl").stat().st_mode & 0o777 == 0o600
    assert take_in_file(tmp_path / "copy.jsonl", tmp_path / "coach") == 0
    assert read_whole(tmp_path / "coach" / FILE_NAME) == before


def test_a_copy_that_cannot_be_written_is_asked_for_again(tmp_path: Path) -> None:
    planted(tmp_path / "coach")
    voice = Typing(str(tmp_path / "no such folder" / "x"), "", "-x", "stop")
    assert forgetting(tmp_path / "coach", voice) == 11
    assert files_with(tmp_path, PLANTED)


def test_an_open_stop_is_told_before_it_is_forgotten(tmp_path: Path) -> None:
    with Journal.open(tmp_path / "coach") as journal:
        session = journal.begin({}, sample.instant(0), ())
        journal.append(session, "typed", {}, (), sample.instant(0), hold=sample.stop(0))
    voice = Typing("no", "no")
    forgetting(tmp_path / "coach", voice)
    assert any("closed by a stop" in line for line in voice.said)


def test_a_session_that_is_open_keeps_all_of_it(tmp_path: Path) -> None:
    with Journal.open(tmp_path / "coach") as journal:
        sample.sit(journal, 0)
        with pytest.raises(Trouble) as refused:
            forgetting(tmp_path / "coach", Typing("no", "forget"))
        assert refused.value.code == 75
    assert read_whole(tmp_path / "coach" / FILE_NAME).rows


def test_a_damaged_diary_can_be_forgotten_too(tmp_path: Path) -> None:
    planted(tmp_path / "coach")
    path = tmp_path / "coach" / FILE_NAME
    path.write_bytes(b"\x01" * 5000)
    assert forgetting(tmp_path / "coach", Typing("forget")) == 0
    assert not path.exists()


def test_a_file_that_is_not_ours_is_left_and_named(tmp_path: Path) -> None:
    planted(tmp_path / "coach")
    (tmp_path / "coach" / "mine.txt").write_text("mine")
    with pytest.raises(Trouble, match="not Coach's own"):
        forgetting(tmp_path / "coach", Typing("no", "forget"))
    assert [p.name for p in (tmp_path / "coach").iterdir()] == ["mine.txt"]
    with pytest.raises(sqlite3.Error):
        sqlite3.connect(f"file:{tmp_path}/coach/{FILE_NAME}?mode=ro", uri=True)
