"""Every reason a rule may give is short, calm and plain, and every rule names where it is from."""

from __future__ import annotations

import ast
import re
from pathlib import Path

import pytest

import coach.rules

HOME = Path(coach.rules.__file__).parent
FILES = sorted(path for path in HOME.glob("*.py") if path.name != "flag_table.py")


def spoken(path: Path) -> list[str]:
    """The sentences in a file's literals, docstrings left out, values as one word."""
    tree = ast.parse(path.read_text())
    docs = {
        id(node.body[0].value)
        for node in ast.walk(tree)
        if isinstance(node, (ast.Module, ast.ClassDef, ast.FunctionDef))
        and node.body
        and isinstance(node.body[0], ast.Expr)
    }
    inside = {
        id(part)
        for node in ast.walk(tree)
        if isinstance(node, ast.JoinedStr)
        for part in node.values
    }
    texts = []
    for node in ast.walk(tree):
        if isinstance(node, ast.JoinedStr):
            parts = (p.value if isinstance(p, ast.Constant) else "1" for p in node.values)
            texts.append("".join(map(str, parts)))
        elif isinstance(node, ast.Constant) and id(node) not in docs | inside:
            texts.append(str(node.value))
    return [text for text in texts if text.endswith(".") and " " in text]


def sentences(text: str) -> list[str]:
    return [one for one in re.split(r"(?<=[.?])\s+", text) if one]


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_no_sentence_of_a_reason_is_over_15_words(path: Path) -> None:
    for text in spoken(path):
        for one in sentences(text):
            # A token stands for one typed number.
            words = re.sub(r"\{[^}]*\}", "1", one).split()
            assert len(words) <= 15, one


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_no_reason_blames_cheers_or_promises(path: Path) -> None:
    out = {"skipped", "missed", "failed", "great", "sorry", "safe", "heal", "just", "simply"}
    for text in spoken(path):
        assert "!" not in text
        assert not out & set(re.findall(r"[a-z]+", text.lower())), text


def test_the_reasons_are_really_read() -> None:
    assert len([text for path in FILES for text in spoken(path)]) > 50


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_every_public_rule_has_a_docstring(path: Path) -> None:
    tree = ast.parse(path.read_text())
    for node in ast.walk(tree):
        if isinstance(node, (ast.FunctionDef, ast.ClassDef)) and not node.name.startswith("_"):
            nested = node.name == "decided"
            assert nested or ast.get_docstring(node), node.name
