"""The compiled copy gives back exactly what was checked, or refuses."""

from __future__ import annotations

import hashlib
import json
import subprocess
import sys
from pathlib import Path

import pytest

from coach.model.program import Bound
from coach.texts.compiled import CopyRefused, from_json, to_json
from coach.texts.doors import bound_from

PLAN = Path(__file__).parents[1] / "errors" / "good" / "plans" / "l-v.yaml"


@pytest.fixture(scope="module")
def bound() -> Bound:
    found, findings = bound_from(PLAN)
    assert findings == []
    assert found is not None
    return found


def test_what_is_read_back_is_what_was_written(bound: Bound) -> None:
    assert from_json(to_json(bound)) == bound


def test_numbers_keep_their_kind(bound: Bound) -> None:
    back = from_json(to_json(bound))
    assert [type(piece) for piece in back.plan.pain] == [type(piece) for piece in bound.plan.pain]


@pytest.mark.hazard("H-12")
def test_one_changed_figure_is_refused(bound: Bound) -> None:
    text = to_json(bound)
    place = text.index("light")
    with pytest.raises(CopyRefused, match="has changed on disk"):
        from_json(text[:place] + "L" + text[place + 1 :])


@pytest.mark.parametrize("text", ["", "not a copy", "[]", "{}", "null", "[" * 100_000, '{"coach'])
def test_what_is_no_copy_is_refused(text: str) -> None:
    with pytest.raises(CopyRefused):
        from_json(text)


@pytest.mark.parametrize("content", ["", "{}", "[]", '{"Bound":[1]}', '{"Odd":[]}', "[" * 9999])
def test_a_copy_with_other_content_is_refused_even_with_a_right_seal(
    bound: Bound, content: str
) -> None:
    head = json.loads(to_json(bound))
    head["content"], head["digest"] = content, hashlib.sha256(content.encode()).hexdigest()
    with pytest.raises(CopyRefused, match="has changed on disk"):
        from_json(json.dumps(head))


@pytest.mark.parametrize("key", ["coach copy", "shape"])
def test_a_copy_of_another_version_is_refused(bound: Bound, key: str) -> None:
    head = json.loads(to_json(bound))
    head[key] = 0
    with pytest.raises(CopyRefused, match="another version"):
        from_json(json.dumps(head))


def test_reading_the_copy_imports_no_parser_and_no_schema_library() -> None:
    code = (
        "import sys, coach.texts.compiled; "
        "bad = {'yaml', 'pydantic', 'dataclasses'} & set(sys.modules); assert not bad, bad"
    )
    root = Path(__file__).parents[2]
    subprocess.run([sys.executable, "-c", code], cwd=root, check=True)
