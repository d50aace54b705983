"""What is installed is named exactly, with hashes, and both locks agree with what is declared."""

import re
import tomllib

from tests.house.modules import ROOT

PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))


def plain(name: str) -> str:
    """A package's name in the one spelling that locks use."""
    return re.sub(r"[-_.]+", "-", re.split(r"[^\w.-]", name, maxsplit=1)[0]).lower()


def locked(name: str) -> dict[str, str]:
    """Package to version of one lock; fails on an entry that has no hash."""
    versions = {}
    text = (ROOT / name).read_text("utf-8").replace("\\\n", " ")
    for line in text.splitlines():
        if line.strip() and not line.lstrip().startswith("#"):
            pinned = re.match(r"(\S+)==([\w.]+)", line)
            assert pinned, line
            assert "--hash=sha256:" in line, line
            versions[pinned[1]] = pinned[2]
    return versions


def test_the_run_time_lock_holds_all_that_is_declared() -> None:
    declared = PROJECT["project"]["dependencies"] + PROJECT["dependency-groups"]["build"]
    assert {plain(one) for one in declared} <= set(locked("requirements.lock"))


def test_the_full_lock_holds_the_run_time_lock_and_the_tools() -> None:
    full = locked("requirements-dev.lock")
    assert locked("requirements.lock").items() <= full.items()
    assert {plain(one) for one in PROJECT["dependency-groups"]["dev"]} <= set(full)


def test_the_tools_are_not_installed_to_run() -> None:
    assert not {"pytest", "mypy", "ruff", "hypothesis"} & set(locked("requirements.lock"))
