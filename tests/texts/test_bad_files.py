"""Files that are no plan at all are refused quickly, calmly, and with their place."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from coach.texts.doors import check_paths
from coach.texts.margin import Margin
from coach.texts.yaml_lines import DEEPEST, LARGEST_BYTES, Mapped, Text, read_page, read_tree

GOOD = Path(__file__).parents[1] / "errors" / "good"


def tree_of(text: str | bytes, folder: Path) -> tuple[Mapped | None, list[str]]:
    file = folder / "text.yaml"
    file.write_bytes(text if isinstance(text, bytes) else text.encode("utf-8", "surrogatepass"))
    margin = Margin()
    page = read_page(file, "text.yaml", margin)
    tree = read_tree(page, margin) if page else None
    return tree, [finding.id for finding in margin.sorted_findings()]


def ids_of(path: Path) -> list[str]:
    return [finding.id for finding in check_paths([path])]


def test_a_pipe_is_not_waited_for(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "plan.yaml")
    assert ids_of(tmp_path / "plan.yaml") == ["file.not_regular"]


def test_a_device_is_not_read() -> None:
    margin = Margin()
    assert read_page(Path("/dev/zero"), "zero", margin) is None
    assert [finding.id for finding in margin.sorted_findings()] == ["file.not_regular"]


@pytest.mark.parametrize(("size", "refused"), [(LARGEST_BYTES, False), (LARGEST_BYTES + 1, True)])
def test_a_text_is_read_up_to_its_largest_size(size: int, refused: bool, tmp_path: Path) -> None:
    text = "plan: x\n" + "# remark\n" * 40000
    _, found = tree_of(text[:size].encode(), tmp_path)
    assert (found == ["file.too_big"]) == refused


def test_a_huge_file_is_refused_by_its_size_without_being_read(tmp_path: Path) -> None:
    file = tmp_path / "plan.yaml"
    with file.open("wb") as sparse:
        sparse.truncate(300 * 1024 * 1024)
    assert ids_of(file) == ["file.too_big"]


def test_what_the_machine_cannot_open_is_said_so(tmp_path: Path) -> None:
    assert ids_of(tmp_path / ("x" * 300)) == ["file.unreadable"]


def test_a_folder_in_the_place_of_a_file_is_not_read(tmp_path: Path) -> None:
    margin = Margin()
    assert read_page(tmp_path, "plan.yaml", margin) is None
    assert margin.sorted_findings()[0].id == "file.not_regular"


def test_a_link_out_of_the_program_is_not_followed(tmp_path: Path) -> None:
    program = tmp_path / "program"
    (program / "exercises").mkdir(parents=True)
    (program / "program.yaml").write_bytes((GOOD / "program.yaml").read_bytes())
    for exercise in (GOOD / "exercises").iterdir():
        (program / "exercises" / exercise.name).write_bytes(exercise.read_bytes())
    assert ids_of(program) == []
    outside = tmp_path / "outside.yaml"
    outside.write_bytes((GOOD / "exercises" / "arm-swings.yaml").read_bytes())
    (program / "exercises" / "arm-swings.yaml").unlink()
    (program / "exercises" / "arm-swings.yaml").symlink_to(outside)
    assert ids_of(program) == ["file.outside"]


def test_folders_that_lead_back_into_themselves_end(tmp_path: Path) -> None:
    (tmp_path / "plan.yaml").write_text("plan: x\n", encoding="utf-8")
    for name in ("round", "again"):
        (tmp_path / name).symlink_to(tmp_path)
    assert ids_of(tmp_path) == ids_of(tmp_path / "plan.yaml")


def test_a_link_inside_the_program_is_read(tmp_path: Path) -> None:
    (tmp_path / "real.yaml").write_text("plan: x\n", encoding="utf-8")
    (tmp_path / "link.yaml").symlink_to(tmp_path / "real.yaml")
    margin = Margin()
    assert read_page(tmp_path / "link.yaml", "link.yaml", margin, root=tmp_path) is not None


def test_windows_line_ends_and_a_byte_order_mark_are_read(tmp_path: Path) -> None:
    tree, found = tree_of(b"\xef\xbb\xbfplan: x\r\nside: left\r\n", tmp_path)
    assert found == []
    assert tree is not None
    assert [(p.key.value, p.key.place.line) for p in tree.pairs] == [("plan", 1), ("side", 2)]


@pytest.mark.parametrize("mark", [b"\xff\xfe", b"\xfe\xff"])
def test_another_encoding_is_named(mark: bytes, tmp_path: Path) -> None:
    assert tree_of(mark + b"p\x00", tmp_path)[1] == ["file.encoding"]


def test_a_lone_surrogate_is_no_text(tmp_path: Path) -> None:
    assert tree_of("plan: \ud800\n", tmp_path)[1] == ["file.encoding"]


def test_an_alias_bomb_is_refused_at_its_first_anchor(tmp_path: Path) -> None:
    levels = [f"a{n}: &a{n} [{', '.join([f'*a{n - 1}'] * 9)}]" for n in range(1, 10)]
    assert tree_of("a0: &a0 x\n" + "\n".join(levels) + "\n", tmp_path)[1] == ["text.anchor"]


def test_five_thousand_brackets_are_refused_at_the_first(tmp_path: Path) -> None:
    assert tree_of("plan: " + "[" * 5000, tmp_path)[1] == ["text.brackets"]


@pytest.mark.parametrize(("levels", "refused"), [(DEEPEST, False), (DEEPEST + 1, True)])
def test_a_text_may_be_nested_only_so_deep(levels: int, refused: bool, tmp_path: Path) -> None:
    text = "".join("  " * n + "a:\n" for n in range(levels))
    assert (tree_of(text, tmp_path)[1] == ["text.too_deep"]) == refused


def test_deep_dashes_are_refused_without_a_crash(tmp_path: Path) -> None:
    assert tree_of("plan:\n" + "- " * 5000 + "x\n", tmp_path)[1] == ["text.too_deep"]


@pytest.mark.parametrize(
    "word", ["no", "yes", "on", "0112", "010", "2.50", "1.10", "12:30", ".inf", "~", "null", "0x1F"]
)
def test_no_type_is_guessed(word: str, tmp_path: Path) -> None:
    tree, found = tree_of(f"plan: {word}\n", tmp_path)
    assert found == []
    assert tree is not None
    assert isinstance(tree.pairs[0].value, Text)
    assert tree.pairs[0].value.value == word


def test_a_key_said_twice_names_both_lines(tmp_path: Path) -> None:
    file = tmp_path / "text.yaml"
    file.write_text("side: left\nplan: x\nside: right\n", encoding="utf-8")
    margin = Margin()
    page = read_page(file, "text.yaml", margin)
    assert page is not None
    read_tree(page, margin)
    (finding,) = margin.sorted_findings()
    assert finding.id == "text.key_twice"
    assert finding.place.line == 3
    assert finding.also is not None
    assert finding.also.line == 1
