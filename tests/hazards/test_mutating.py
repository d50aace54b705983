"""The maker of mistakes makes each one once, and each is a mistake."""

from __future__ import annotations

import ast

from tests.bench.mutants import CORE, argued
from tests.hazards.marked import ROOT
from tests.hazards.mutating import mutants

AT_MOST = 10  # survivors that may be argued; set here

SOURCE = """
def over(pain, limit):
    if not pain > limit and limit:
        return min(pain, 8)
    return 0.5
"""


def test_every_place_is_changed_once_and_alone() -> None:
    said = [one.what for one in mutants(SOURCE)]
    assert said == [
        "if not pain > limit and limit: always otherwise",
        "if not pain > limit and limit: always so",
        "not pain > limit and limit: and for or",
        "not pain > limit: without not",
        "pain > limit: Gt to GtE",
        "pain > limit: Gt to LtE",
        "8 to 7",
        "8 to 9",
        "min(pain, 8): max",
        "0.5 to 0.0",
        "0.5 to 1.0",
    ]


def test_every_mutant_is_another_program_that_can_be_read() -> None:
    plain = ast.unparse(ast.parse(SOURCE))
    made = [one.source for one in mutants(SOURCE)]
    assert len(set(made)) == len(made)
    assert plain not in made
    for source in made:
        compile(source, "mutant", "exec")


def test_what_is_argued_is_little_and_each_is_a_mistake_that_can_still_be_made() -> None:
    can_be_made = {
        f"{rule}: {one.what}"
        for rule in CORE
        for one in mutants((ROOT / "coach" / "rules" / f"{rule}.py").read_text("utf-8"))
    }
    reasons = argued()
    assert 0 < len(reasons) <= AT_MOST
    assert set(reasons) <= can_be_made
    assert all(len(why.split()) > 5 for why in reasons.values())
