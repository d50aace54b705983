"""Imports run one way, and only the edges touch files, screens and clocks."""

import ast
import sys

import pytest

from tests.house.modules import Module, all_modules, module

# A room may import itself and the rooms named here. Rooms side by side never import each other.
MAY_IMPORT = {
    "model": set(),
    "hearing": {"model"},
    "rules": {"model"},
    "session": {"model", "hearing", "rules"},
    "texts": {"model", "hearing", "rules"},
    "journal": {"model", "hearing", "rules"},
    "reports": {"model", "hearing", "rules"},
    "drivers": {"model", "hearing", "rules", "session", "texts", "journal", "reports"},
}
MAY_IMPORT["pages"] = {"model", "hearing", "rules", "session", "texts"}
MAY_IMPORT["drivers"] = MAY_IMPORT["drivers"] | {"pages"}
MAY_IMPORT["cli"] = set(MAY_IMPORT) | {"cli"}

PURE = {"model", "hearing", "rules", "session", "reports", "pages"}
NOT_IN_PURE = {
    *("os", "sys", "time", "random", "pathlib", "sqlite3", "rich", "prompt_toolkit", "pydantic"),
    *("io", "shutil", "socket", "subprocess", "tempfile", "threading", "secrets", "uuid", "locale"),
    *("importlib", "signal", "asyncio", "select"),
}
OPENS_FILES = {"texts", "journal"}
SPEAKS = {"drivers", "cli"}
SCREEN = {"rich", "prompt_toolkit", "curses", "termios", "tty"}
CLOCKS = {
    *("datetime.now", "datetime.today", "datetime.utcnow", "date.today"),
    *("time.time", "time.time_ns", "time.monotonic", "time.perf_counter", "time.localtime"),
}
BUILT_IN = {"open", "print", "input", "eval", "exec", "__import__"}
FILE_ASKED = {"read_text", "write_text", "read_bytes", "write_bytes"}


def imports(tree: ast.Module) -> list[tuple[int, str]]:
    """Line and full name of all that a module imports, also inside functions and type checks."""
    found = []
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            found += [(node.lineno, name.name) for name in node.names]
        elif isinstance(node, ast.ImportFrom):
            found += [(node.lineno, f"{node.module}.{name.name}") for name in node.names]
            found += [(node.lineno, "a relative import")] * bool(node.level)
    return found


def asked(tree: ast.Module) -> list[tuple[int, str]]:
    """Line and name of every clock asked, file opened, word printed, or text run."""
    found = []
    for node in ast.walk(tree):
        if isinstance(node, ast.Name) and node.id in BUILT_IN:
            found.append((node.lineno, node.id))
        elif isinstance(node, ast.Attribute) and node.attr in FILE_ASKED:
            found.append((node.lineno, node.attr))
        elif isinstance(node, ast.Attribute) and f"{last_name(node.value)}.{node.attr}" in CLOCKS:
            found.append((node.lineno, "now"))
    return found


def last_name(node: ast.expr) -> str:
    """`datetime` of `datetime.datetime`, and of `datetime`."""
    return node.attr if isinstance(node, ast.Attribute) else getattr(node, "id", "")


def faults(one: Module) -> list[str]:
    """Every breach of the directions in one module, as `name:line: what`."""
    found = [*direction_faults(one), *library_faults(one), *call_faults(one)]
    return [f"{one.name}:{line}: {what}" for line, what in found]


def direction_faults(one: Module) -> list[tuple[int, str]]:
    """Imports of rooms that this room may not know."""
    allowed = MAY_IMPORT[one.room] | {one.room}
    found = []
    for line, name in imports(one.tree):
        parts = name.split(".")
        if name == "a relative import":
            found.append((line, name))
        elif parts[0] == "coach" and len(parts) > 1 and name != "coach.__version__":
            room = parts[1] if parts[1] in MAY_IMPORT else "cli"
            found += [(line, f"{one.room} imports {name}")] * (room not in allowed)
    return found


def library_faults(one: Module) -> list[tuple[int, str]]:
    """Imports of libraries that do not belong in this room."""
    barred = set() if one.room in SPEAKS else SCREEN
    barred = barred | (NOT_IN_PURE if one.room in PURE else set())
    barred = barred | (set() if one.name == "coach.session.machine" else {"transitions"})
    return [
        (line, f"{one.room} imports {name}")
        for line, name in imports(one.tree)
        if name.split(".")[0] in barred
    ]


def call_faults(one: Module) -> list[tuple[int, str]]:
    """Clocks asked, files opened and words printed where that is not this room's work."""
    allowed: set[str] = set()
    if one.room in SPEAKS:
        allowed = {"now", "print", "input"}
    if one.room in OPENS_FILES:
        allowed = FILE_ASKED | {"open"}
    return [
        (line, f"{one.room} asks for {name}")
        for line, name in asked(one.tree)
        if name not in allowed
    ]


@pytest.mark.parametrize("one", all_modules(), ids=lambda one: str(one.name))
def test_every_module_keeps_to_its_room(one: Module) -> None:
    assert faults(one) == []


def test_every_room_has_a_place_in_the_table() -> None:
    assert {one.room for one in all_modules()} == set(MAY_IMPORT)


@pytest.mark.parametrize(
    ("name", "source"),
    [
        ("coach.rules.bad", "from coach.session import engine"),
        ("coach.rules.bad", "from coach.hearing import ear"),
        ("coach.model.bad", "import coach.rules.pain"),
        ("coach.session.bad", "from coach.journal import Journal"),
        ("coach.session.bad", "from coach import journal"),
        ("coach.texts.bad", "from coach.reports.diary import Told"),
        ("coach.journal.bad", "def late():\n    from coach.drivers import drive"),
        ("coach.session.bad", "from coach import cli"),
        ("coach.session.bad", "from . import engine"),
        ("coach.rules.bad", "import os"),
        ("coach.hearing.bad", "from pathlib import Path"),
        ("coach.model.bad", "import os.path"),
        ("coach.session.engine", "from transitions import Machine"),
        ("coach.journal.bad", "import rich.console"),
        ("coach.rules.bad", "from datetime import date\nday = date.today()"),
        ("coach.journal.bad", "from datetime import datetime\nclock = datetime.now"),
        ("coach.texts.bad", "import datetime\nday = datetime.date.today()"),
        ("coach.reports.bad", "page = open('page.html')"),
        ("coach.drivers.bad", "words = folder.joinpath('x').read_text()"),
        ("coach.session.bad", "print('Set 1')"),
        ("coach.texts.bad", "answer = eval('1')"),
    ],
)
def test_a_made_up_breach_is_found(name: str, source: str) -> None:
    assert len(faults(module(name, source))) == 1


@pytest.mark.parametrize(
    ("name", "source"),
    [
        ("coach.cli", "from coach.drivers import drive\nimport rich"),
        ("coach.drivers.good", "from datetime import datetime\nday = datetime.now()"),
        ("coach.session.good", "from coach.rules import pain\nfrom coach import __version__"),
        ("coach.session.machine", "from transitions.core import Machine"),
        ("coach.texts.good", "from pathlib import Path\ntext = Path('a').read_text()"),
        ("coach.rules.good", "from datetime import date\nday = date(2026, 11, 2)"),
        ("coach.session.good", "doses = brief.today"),
    ],
)
def test_what_a_room_may_do_is_no_breach(name: str, source: str) -> None:
    assert faults(module(name, source)) == []


def test_no_room_imports_what_the_project_does_not_declare() -> None:
    declared = {"prompt_toolkit", "yaml", "rich", "transitions", "coach", "cryptography"}
    known = declared | set(sys.stdlib_module_names)
    strange = {
        name
        for one in all_modules()
        for _, name in imports(one.tree)
        if name.split(".")[0] not in known
    }
    assert strange == set()


def test_only_signing_knows_the_package_that_most_athletes_do_not_have() -> None:
    users = {
        one.name
        for one in all_modules()
        for _, name in imports(one.tree)
        if name.split(".")[0] == "cryptography"
    }
    assert users == {"coach.texts.signing"}
