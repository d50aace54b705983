"""Every module says at its door what it is for; every public function says what it gives."""

import ast
import re

import pytest

from tests.house.modules import COACH, Module, all_modules, dotted, module

MOST_BYTES = 24_000  # set here: a file longer than one sitting of reading is two files
SAYS_NOTHING = {"manager", "helper", "helpers", "util", "utils", "base", "data", "info"}
STANDARD = {"data_folder"}  # the XDG standard's own word for it
FUNCTIONS = (ast.FunctionDef, ast.AsyncFunctionDef)


def door_sign_faults(one: Module) -> list[str]:
    """What is wrong with the first lines of a module."""
    sign = ast.get_docstring(one.tree)
    if not sign:
        return ["no door sign"]
    first = sign.split("\n\n")[0].strip()
    is_sentence = re.match(r"[A-Z`\"]", first) and first[-1] in '.:)"`' and len(first.split()) > 3
    return [] if is_sentence else [f"not a sentence: {first}"]


def docstring_faults(one: Module) -> list[str]:
    """Public functions, methods and classes that do not say what they give."""
    return [
        f"line {node.lineno}: {node.name} has no docstring"
        for node in public_parts(one.tree)
        if not ast.get_docstring(node)
    ]


def public_parts(
    tree: ast.Module | ast.ClassDef,
) -> list[ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef]:
    """Functions and classes a caller may use; those inside a function are its own business."""
    parts: list[ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef] = []
    for node in tree.body:
        if isinstance(node, (*FUNCTIONS, ast.ClassDef)) and not node.name.startswith("_"):
            parts.append(node)
            parts += public_parts(node) if isinstance(node, ast.ClassDef) else []
    return parts


def name_faults(one: Module) -> list[str]:
    """Names of modules, classes and functions that say nothing."""
    parts = (node for node in ast.walk(one.tree) if isinstance(node, (*FUNCTIONS, ast.ClassDef)))
    names = [one.name.rpartition(".")[2], *(part.name for part in parts)]
    return [name for name in names if SAYS_NOTHING & set(words_of(name)) and name not in STANDARD]


def words_of(name: str) -> list[str]:
    """`load_PlanData` as `load`, `plan`, `data`."""
    return [word.lower() for word in re.findall(r"[A-Z]?[a-z]+|[A-Z]+", name)]


@pytest.mark.parametrize("one", all_modules(), ids=lambda one: str(one.name))
def test_every_module_has_a_door_sign(one: Module) -> None:
    assert door_sign_faults(one) == []


@pytest.mark.parametrize("one", all_modules(), ids=lambda one: str(one.name))
def test_every_public_part_says_what_it_gives(one: Module) -> None:
    assert docstring_faults(one) == []


@pytest.mark.parametrize("one", all_modules(), ids=lambda one: str(one.name))
def test_no_name_says_nothing(one: Module) -> None:
    assert name_faults(one) == []


def test_no_file_needs_a_table_of_contents() -> None:
    sizes = {dotted(path): path.stat().st_size for path in COACH.rglob("*.py")}
    assert {name: size for name, size in sizes.items() if size > MOST_BYTES} == {}


def test_missing_signs_and_empty_names_are_found() -> None:
    bad = module("coach.rules.pain_utils", "class PlanData:\n    def read(self): ...\n")
    assert door_sign_faults(bad) == ["no door sign"]
    assert docstring_faults(bad) == [
        "line 1: PlanData has no docstring",
        "line 2: read has no docstring",
    ]
    assert name_faults(bad) == ["pain_utils", "PlanData"]


@pytest.mark.parametrize("sign", ["pain rules", "Pain rules for a set", "Rules."])
def test_a_label_is_no_sentence(sign: str) -> None:
    assert len(door_sign_faults(module("coach.rules.bad", f'"""{sign}"""'))) == 1


def test_a_database_is_not_data() -> None:
    assert name_faults(module("coach.journal.database", "def rebased(): ...")) == []
