"""What ran is found again in its module's text, and no number is read where nobody looks."""

from __future__ import annotations

import pkgutil
import sys
from pathlib import Path

import coach
from coach.drivers import doubt
from coach.drivers.functions_run import functions_in, functions_run
from coach.drivers.rule_changes import rule_changes
from coach.drivers.rules_known import sources
from coach.rules import pain, throwing

SCENARIOS = Path(__file__).parents[2] / "scenarios"


def of(module: str, function: str) -> set[str]:
    """How the functions that stand in a function are known, itself among them."""
    return {one.key for one in functions_in(module) if one.function == function}


def test_a_function_that_ran_is_found_in_the_text_of_its_module() -> None:
    ran: set[str] = set()
    with functions_run(ran):
        pain.is_flag(8)
    assert of("coach.rules.pain", "is_flag") <= ran
    assert not of("coach.rules.pain", "in_set") & ran


def test_what_stands_in_a_function_is_known_as_its_own_and_as_a_part_of_it() -> None:
    parts = of("coach.rules.throwing", "class_days")
    assert len(parts) == 2  # the function, and what it looks through the rows with
    ran: set[str] = set()
    with functions_run(ran):
        throwing.class_days(throwing.schedule_of("C"), 1)
    assert parts <= ran


def test_whoever_looked_on_before_looks_on_again() -> None:
    def looking(*_what: object) -> None:
        """Somebody else's look."""

    sys.setprofile(looking)
    try:
        with functions_run(set()):
            pass
        assert sys.getprofile() is looking
    finally:
        sys.setprofile(None)


def test_a_number_of_a_rule_is_read_by_no_function_of_a_replay_that_is_not_looked_at() -> None:
    numbers = {change.name for change in rule_changes()}
    files = [SCENARIOS / name for name in ("pause-long.yaml", "power-cut.yaml", "throw-alone.yaml")]
    ran = frozenset[str]().union(*(one.ran for one in doubt.readable(files)))
    elsewhere = {m.name for m in pkgutil.walk_packages(coach.__path__, "coach.")} - set(sources())
    seen = [one for m in elsewhere for one in functions_in(m) if one.key in ran]
    assert len(seen) > 100
    assert not [one for one in seen if one.names & numbers]
