"""The full record leaves as JSON lines and comes back, row by row, or is refused by its line."""

from __future__ import annotations

import json
from pathlib import Path

import jsonschema
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from coach.drivers.reading import kept_rows, rows_back
from coach.journal import Journal, Trouble
from coach.journal.diary import FILE_NAME
from coach.journal.whole import read_whole, take_in
from coach.reports.whole_record import (
    SCHEMA,
    Kept,
    NotADiaryError,
    as_lines,
    from_lines,
    says_diary,
)
from tests.journal import sample
from tests.reports import made_up


def exported() -> str:
    return as_lines(kept_rows(made_up.ten_weeks().rows))


def test_every_line_keeps_to_the_documented_schema() -> None:
    validator = jsonschema.Draft202012Validator(SCHEMA)
    jsonschema.Draft202012Validator.check_schema(SCHEMA)
    for line in exported().splitlines()[:200]:
        validator.validate(json.loads(line))
    assert not validator.is_valid({"number": 0})
    assert not validator.is_valid({**json.loads(exported().splitlines()[1]), "more": 1})


def test_the_record_comes_back_letter_for_letter() -> None:
    assert from_lines(exported()) == kept_rows(made_up.ten_weeks().rows)
    assert rows_back(from_lines(exported())) == list(made_up.ten_weeks().rows)


texts = st.text(max_size=20)
bodies = st.dictionaries(
    texts, st.one_of(texts, st.floats(allow_nan=False, allow_infinity=False), st.integers())
)


@settings(max_examples=60)
@given(st.lists(st.tuples(texts, bodies, st.lists(texts, max_size=3)), max_size=5))
def test_any_words_and_numbers_come_back(
    given_rows: list[tuple[str, dict[str, object], list[str]]],
) -> None:
    def written(value: object) -> str:
        return json.dumps(value, ensure_ascii=True, separators=(",", ":"))

    rows = tuple(
        Kept(n, 1, "event", name, 0, "2026-11-02", written(body), written(shown), "0" * 64)
        for n, (name, body, shown) in enumerate(given_rows, 1)
    )
    assert as_lines(rows).isascii()
    assert from_lines(as_lines(rows)) == rows


@pytest.mark.parametrize(
    ("change", "says"),
    [
        (lambda t: t.replace("\n", "\n{\n", 1), "Line 2 cannot be read"),
        (lambda t: t.replace('"coach diary":1', '"coach diary":2', 1), "get a newer Coach"),
        (lambda t: t.replace('"coach diary"', '"other"', 1), "Line 1 does not say"),
        (lambda t: t.rsplit("\n", 2)[0], "records, but"),
        (lambda t: t.replace('"about":0', '"about":0,"more":1', 1), "Line 2 has other parts"),
        (lambda t: t.replace('"about":0', '"about":"0"', 1), "Line 2 has a part of another kind"),
        (lambda _t: "[" * 5000, "Line 1 cannot be read"),
        (lambda _t: "", "Line 1 cannot be read"),
    ],
)  # fmt: skip
def test_a_broken_file_is_refused_by_its_line(change: object, says: str) -> None:
    with pytest.raises(NotADiaryError, match=says):
        from_lines(change(exported()))  # type: ignore[operator]


def test_an_export_is_known_by_its_first_letters() -> None:
    assert says_diary(exported()[:40])
    assert not says_diary("SQLite format 3")


# ---------------------------------------------------------------- taken in whole, once


def test_a_diary_is_taken_in_whole_and_reads_as_before(tmp_path: Path) -> None:
    sample.filled(tmp_path / "old", 3)
    before = read_whole(tmp_path / "old" / FILE_NAME)
    text = as_lines(kept_rows(before.rows))
    assert take_in(tmp_path / "new", rows_back(from_lines(text))) == len(before.rows)
    assert read_whole(tmp_path / "new" / FILE_NAME) == before
    with Journal.open(tmp_path / "old") as old, Journal.open(tmp_path / "new") as new:
        assert new.history() == old.history()
        assert new.sessions() == old.sessions()
    assert (tmp_path / "new").stat().st_mode & 0o777 == 0o700
    assert (tmp_path / "new" / FILE_NAME).stat().st_mode & 0o777 == 0o600


def test_an_open_stop_is_still_open_after_it_was_taken_in(tmp_path: Path) -> None:
    with Journal.open(tmp_path / "old") as journal:
        session = journal.begin(sample.HEADER, sample.instant(0), ())
        journal.append(session, "typed", {}, (), sample.instant(0), hold=sample.stop(0))
    rows = read_whole(tmp_path / "old" / FILE_NAME).rows
    take_in(tmp_path / "new", rows_back(from_lines(as_lines(kept_rows(rows)))))
    with Journal.open(tmp_path / "new") as journal:
        assert journal.open_hold() is not None


def test_a_second_time_is_refused_and_doubles_nothing(tmp_path: Path) -> None:
    sample.filled(tmp_path / "old", 2)
    rows = list(read_whole(tmp_path / "old" / FILE_NAME).rows)
    take_in(tmp_path / "new", rows)
    with pytest.raises(Trouble, match="a diary here already") as refused:
        take_in(tmp_path / "new", rows)
    assert refused.value.code == 65
    assert len(read_whole(tmp_path / "new" / FILE_NAME).rows) == len(rows)


def test_an_empty_diary_is_no_hindrance(tmp_path: Path) -> None:
    sample.filled(tmp_path / "old", 1)
    rows = list(read_whole(tmp_path / "old" / FILE_NAME).rows)
    Journal.open(tmp_path / "new").close()
    assert take_in(tmp_path / "new", rows) == len(rows)


@pytest.mark.parametrize("place", [0, 3, -1])
def test_one_changed_row_refuses_all_of_it(tmp_path: Path, place: int) -> None:
    sample.filled(tmp_path / "old", 2)
    rows = list(read_whole(tmp_path / "old" / FILE_NAME).rows)
    rows[place] = rows[place]._replace(body='{"text":"2"}')
    with pytest.raises(Trouble, match="checksums"):
        take_in(tmp_path / "new", rows)
    assert not (tmp_path / "new" / FILE_NAME).exists()


def test_a_row_left_out_refuses_all_of_it(tmp_path: Path) -> None:
    sample.filled(tmp_path / "old", 2)
    rows = list(read_whole(tmp_path / "old" / FILE_NAME).rows)
    with pytest.raises(Trouble, match="checksums"):
        take_in(tmp_path / "new", [*rows[:2], *rows[3:]])
