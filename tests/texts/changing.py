"""A good program and plan in a throwaway folder, with one line changed: what is found then."""

from __future__ import annotations

from pathlib import Path

from coach.model.findings import Finding
from coach.model.program import Plan, Program
from coach.texts.doors import bound_from, check_paths

GOOD = Path(__file__).parents[1] / "errors" / "good"
PLAN = "plans/l-v.yaml"


class Desk:
    """A copy of the good texts. `change` replaces the first `old` of a file by `new`."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        for source in GOOD.rglob("*.yaml"):
            target = folder / source.relative_to(GOOD)
            target.parent.mkdir(parents=True, exist_ok=True)
            target.write_bytes(source.read_bytes())

    def change(self, old: str, new: str, file: str = PLAN) -> Desk:
        path = self.folder / file
        text = path.read_text(encoding="utf-8")
        assert old in text
        path.write_text(text.replace(old, new, 1), encoding="utf-8")
        return self

    def findings(self) -> list[Finding]:
        return check_paths([self.folder])

    def ids(self) -> list[str]:
        return [finding.id for finding in self.findings()]

    def plan(self) -> Plan:
        bound, findings = bound_from(self.folder / PLAN)
        assert bound is not None, findings
        return bound.plan

    def program(self) -> Program:
        bound, findings = bound_from(self.folder / PLAN)
        assert bound is not None, findings
        return bound.program
