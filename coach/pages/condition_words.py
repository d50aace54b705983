"""A comparison of a script or phase, as the clinician writes it."""

from __future__ import annotations

from coach.model.program import Test


def test_words(test: Test) -> str:
    """`pain now is at least 3`, `ache kind is joint`."""
    shown = [f"{value:g}" if isinstance(value, float) else str(value) for value in test.values]
    if test.op == "between":
        return f"{test.fact} is {' to '.join(shown)}"
    joined = " or ".join(shown)
    op = test.op if test.op.startswith("is") else f"is {test.op}"
    return f"{test.fact} {op} {joined}"
