"""The editors' schemas take every shipped and every good text, in both builds, and know the keys."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

import pytest
import yaml
from jsonschema import Draft7Validator, Draft202012Validator

from coach.texts import doses, exercises, plans, programs
from coach.texts.doors import bound_from, check_paths
from coach.texts.schemas import DRAFTS, KINDS, WORDS, schema
from tests.texts.remake_schemas import FOLDER, ROOT, schemas

PROGRAM = ROOT / "dialogs" / "steady-shoulder"
GOOD = ROOT / "tests" / "errors" / "good"
BUILDS: dict[str, type[Any]] = {"2020-12": Draft202012Validator, "draft-07": Draft7Validator}
ROOMS = {"exercises": "exercise", "scripts": "script", "plans": "plan", "courses": "course"}
FILES = sorted([*PROGRAM.rglob("*.yaml"), *(ROOT / "scenarios").glob("*.yaml")])


class AsAnEditorReads(yaml.SafeLoader):
    """Numbers and true or false become types, as in editors; days stay words, as JSON has none."""


AsAnEditorReads.yaml_implicit_resolvers = {
    letter: [
        (tag, form)
        for tag, form in found
        if not tag.endswith("timestamp") and (letter in "tTfF" or not tag.endswith("bool"))
    ]
    for letter, found in yaml.SafeLoader.yaml_implicit_resolvers.items()
}


def kind_of(file: Path) -> str:
    if file.parent.name == "scenarios":
        return "scenario"
    return ROOMS.get(file.parent.name, "program")


def wrong(kind: str, draft: str, text: str, loader: type[Any] = AsAnEditorReads) -> list[str]:
    """What the schema says against a text."""
    tree = yaml.load(text, loader)  # noqa: S506  a loader of ours, without tags that make objects
    return [error.message for error in BUILDS[draft](schema(kind, draft)).iter_errors(tree)]


@pytest.mark.parametrize("draft", DRAFTS)
@pytest.mark.parametrize("kind", KINDS)
def test_a_schema_is_one_and_stands_as_the_code_makes_it(kind: str, draft: str) -> None:
    made = schema(kind, draft)
    BUILDS[draft].check_schema(made)
    stands = (FOLDER / draft / f"{kind}.json").read_text("utf-8")
    assert json.loads(stands) == made, "run: python -m tests.texts.remake_schemas"


def test_no_schema_is_left_over() -> None:
    assert set(FOLDER.rglob("*.json")) == set(schemas())


@pytest.mark.parametrize("draft", DRAFTS)
@pytest.mark.parametrize("file", FILES, ids=lambda file: f"{file.parent.name}/{file.name}")
def test_every_sample_file_fits_its_schema(file: Path, draft: str) -> None:
    text = file.read_text("utf-8")
    assert wrong(kind_of(file), draft, text) == []
    assert wrong(kind_of(file), draft, text, yaml.BaseLoader) == []


@pytest.mark.parametrize("file", FILES, ids=lambda file: f"{file.parent.name}/{file.name}")
def test_every_shipped_file_begins_with_the_editors_line_and_the_schema_is_there(
    file: Path,
) -> None:
    first = file.read_text("utf-8").partition("\n")[0]
    found = re.fullmatch(r"# yaml-language-server: \$schema=(\S+)", first)
    assert found, f"begin it: # yaml-language-server: $schema=... for {kind_of(file)}"
    assert (file.parent / found[1]).resolve() == FOLDER / "draft-07" / f"{kind_of(file)}.json"


def test_every_key_the_check_knows_has_its_words() -> None:
    assert set(WORDS["program"]) == set(programs.KEYS)
    assert set(WORDS["exercise"]) == set(exercises.KEYS)
    assert set(WORDS["plan"]) == set(plans.KEYS)
    assert set(WORDS["dose"]) == set(doses.KEYS)


def without(text: str, key: str) -> str:
    """The text with a top key and what belongs to it taken out."""
    return re.sub(rf"^{re.escape(key)}:.*\n(?:[ ].*\n)*", "", text, count=1, flags=re.MULTILINE)


@pytest.mark.parametrize("key", plans.KEYS)
def test_a_plans_key_is_required_by_the_schema_where_the_check_needs_it(
    tmp_path: Path, key: str
) -> None:
    import shutil

    copy = shutil.copytree(PROGRAM, tmp_path / "copy")
    file = copy / "plans" / "m-k.yaml"
    text = file.read_text("utf-8")
    file.write_text(without(text, key), "utf-8")
    _, findings = bound_from(file)
    missing = any(one.id == "key.missing" and f'"{key}"' in one.what for one in findings)
    required = schema("plan", "2020-12")["required"]
    if key == "plan":  # without its first line it is no plan at all
        assert key in required
    else:
        assert missing == (key in required)


@pytest.mark.parametrize("draft", DRAFTS)
@pytest.mark.parametrize(
    ("kind", "file", "old", "new"),
    [
        ("plan", "plans/d-o.yaml", "side: left", "side: leftt"),
        ("plan", "plans/d-o.yaml", "side: left", "sides: left"),
        ("plan", "plans/d-o.yaml", "runs: 2026-11-02,", "runs: 02/11/2026,"),
        ("plan", "plans/d-o.yaml", "  crisis line: 555 0199, day and night\n", ""),
        ("plan", "plans/d-o.yaml", "    sets: 1 only\n", ""),
        ("exercise", "exercises/table-slide.yaml", "family: mobility", "family: mobile"),
        ("exercise", "exercises/table-slide.yaml", "cues:", "cue:"),
        ("script", "scripts/check-in.yaml", "ask: pain now", "ask: pain today"),
        ("script", "scripts/check-in.yaml", "one set fewer:", "one set more:"),
        ("script", "scripts/check-in.yaml", "- when pain now is 2 to 3:", "- if pain now:"),
        ("program", "program.yaml", "warm-up: small arm swings\n", ""),
        ("program", "program.yaml", "  - phase: build\n", "  - stage: build\n"),
        ("course", "courses/sore.yaml", "course: sore", "curse: sore"),
    ],
)
def test_a_seeded_mistake_is_refused_by_schema_and_check(
    tmp_path: Path, kind: str, file: str, old: str, new: str, draft: str
) -> None:
    import shutil

    text = (PROGRAM / file).read_text("utf-8")
    assert old in text
    text = text.replace(old, new, 1)
    assert wrong(kind, draft, text)
    copy = shutil.copytree(PROGRAM, tmp_path / "copy")
    (copy / file).write_text(text, "utf-8")
    assert any(one.level == "error" for one in check_paths([copy]))


def test_the_folder_of_all_programs_is_quiet_with_its_schemas_in_it() -> None:
    assert check_paths([ROOT / "dialogs"]) == []
