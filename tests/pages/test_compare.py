"""Two plans or programs side by side: nothing that differs is left out, what allows more is first."""

from __future__ import annotations

import re
import shutil
from pathlib import Path
from typing import Any

import pytest

from coach.model.program import Axis, Place
from coach.model.quantities import Load
from coach.pages.changes import Change, Weight, report
from coach.pages.changes_plan import plan_changes
from coach.pages.changes_program import program_changes
from coach.texts.doors import bound_from, read_program
from tests.pages.reading import PROGRAM, bound

D_O = PROGRAM / "plans" / "d-o.yaml"
M_K = PROGRAM / "plans" / "m-k.yaml"


def rewritten(tmp_path: Path, file: str, old: str, new: str) -> list[Change]:
    """The changes between the shipped plan D.O. and a copy of its program with one text changed."""
    copy = tmp_path / "copy"
    shutil.copytree(PROGRAM, copy)
    text = (copy / file).read_text("utf-8")
    assert old in text
    (copy / file).write_text(text.replace(old, new, 1), "utf-8")
    after, findings = bound_from(copy / "plans" / "d-o.yaml")
    assert after is not None, findings
    before = bound(D_O)
    return [*plan_changes(before, after), *program_changes(before.program, after.program)]


def test_two_equal_plans_differ_in_nothing() -> None:
    one = bound(D_O)
    assert plan_changes(one, one) == []
    assert program_changes(one.program, one.program) == []
    assert report([]) == "Nothing differs.\n"


@pytest.mark.parametrize(
    ("file", "old", "new", "weight", "said"),
    [
        ("plans/d-o.yaml", "side: left", "side: right", Weight.FIRST, "Side"),
        ("plans/d-o.yaml", "in exercise 2", "in exercise 3", Weight.MORE, "Pain in an exercise"),
        ("plans/d-o.yaml", "in exercise 2", "in exercise 1", Weight.LESS, "Pain in an exercise"),
        ("plans/d-o.yaml", "minutes 35", "minutes 36", Weight.MORE, "Minutes a session"),
        ("plans/d-o.yaml", "at most 20", "at most 21", Weight.MORE, "reps, cap"),
        ("plans/d-o.yaml", "at most 20", "at most 19", Weight.LESS, "reps, cap"),
        ("plans/d-o.yaml", "rest: 60 s", "rest: 50 s", Weight.MORE, "rest"),
        ("plans/d-o.yaml", "rest: 60 s", "rest: 70 s", Weight.LESS, "rest"),
        ("plans/d-o.yaml", "up after 28 days", "up after 21 days", Weight.MORE, "step up after"),
        ("plans/d-o.yaml", "load: 2 lb only", "load: 3 lb only", Weight.MORE, "load opening"),
        ("plans/d-o.yaml", "555 0199", "555 0198", Weight.FIRST, "Crisis line"),
        ("plans/d-o.yaml", "review by 2027-01-31", "review by 2027-02-01", Weight.MORE, "Review"),
        ("program.yaml", "in exercise at most 3", "in exercise at most 4", Weight.MORE, "Wall"),
        ("program.yaml", "in exercise at most 3", "in exercise at most 2", Weight.LESS, "Wall"),
        ("program.yaml", "rotation: sets at most 3, load", "rotation: load", Weight.MORE, "gone"),
        (
            "scripts/after-a-set.yaml",
            "          - shorter range: this exercise\n",
            "",
            Weight.MORE,
            "gone is shorter range: this exercise, when",
        ),
        (
            "scripts/after-a-set.yaml",
            "pain in set is 2 and",
            "pain in set is 1 to 2 and",
            Weight.MORE,
            "gone is question ache kind, when pain in set is 2 and",
        ),
        (
            "scripts/check-in.yaml",
            "- ask: pain now\n",
            "- ask: pain now\n    words: How much does it hurt at rest?\n",
            Weight.WORDS,
            "check-in, pain now, words",
        ),
        (
            "exercises/side-lying-external-rotation.yaml",
            "family: cuff",
            "family: trunk",
            Weight.MORE,
            "family (locks hang on it)",
        ),
    ],
)
def test_a_change_is_weighed_and_told(
    tmp_path: Path, file: str, old: str, new: str, weight: Weight, said: str
) -> None:
    found = rewritten(tmp_path, file, old, new)
    assert any(said in change.what and change.weight is weight for change in found), found


def test_what_allows_more_stands_before_a_new_sentence() -> None:
    found = [
        Change(Weight.WORDS, "a sentence"),
        Change(Weight.MORE, "a lock", Place("plans/a.yaml", 3)),
        Change(Weight.FIRST, "the side"),
    ]
    told = report(found)
    assert told.index("the side") < told.index("a lock") < told.index("a sentence")
    assert "a lock (plans/a.yaml, line 3)" in told
    assert "3 changes, 2 to read first." in told


def test_a_changed_plan_that_keeps_its_number_is_told(tmp_path: Path) -> None:
    found = rewritten(tmp_path, "plans/d-o.yaml", "minutes 35", "minutes 30")
    assert any("Give the new plan a new number" in change.what for change in found)


# ---------------------------------------------------------------- nothing is left out

PLACES = re.compile(r".*place.*|digest|exercise|moment|tests|effect_tests|when|fact|kind|target")
# names, keys and places are what a change is found by; a number of a name is in the name


def other(value: Any) -> Any:
    """Another value of the same kind."""
    if isinstance(value, Place) or value is None:
        return value
    if isinstance(value, Load):
        return value._replace(kind="ball", amount=value.amount + 1, unit="kg", strength="")
    if isinstance(value, str):
        return value + "x"
    if isinstance(value, (int, float)):
        return value + 1
    if hasattr(value, "_fields"):
        return value._replace(**{value._fields[0]: other(value[0])})
    return (*value, one_changed(value[0])) if value else value


def one_changed(value: Any) -> Any:
    """A member of a list, changed; a pair keeps its length."""
    if isinstance(value, tuple) and not hasattr(value, "_fields"):
        return (other(value[0]), *value[1:])
    return other(value)


def mutants(noun: Any, *, but: str = "") -> list[tuple[str, Any]]:
    """The noun with each of its own fields changed, where it has a value to change."""
    found = []
    for name in noun._fields:
        if PLACES.fullmatch(name) or name in but.split():
            continue
        changed = other(getattr(noun, name))
        if changed != getattr(noun, name):
            found.append((name, noun._replace(**{name: changed})))
    return found


def test_every_line_of_a_plan_is_compared() -> None:
    for file in (D_O, M_K):
        one = bound(file)
        for name, plan in mutants(one.plan, but="version doses throwing_line own_steps"):
            assert plan_changes(one, one._replace(plan=plan)), name
        line = one.plan.throwing_line
        for name, changed in mutants(line) if line else []:
            assert plan_changes(one, one._replace(plan=one.plan._replace(throwing_line=changed))), (
                name
            )


def test_every_number_of_a_dose_is_compared() -> None:
    one = bound(D_O)
    for number, dose in enumerate(one.plan.doses):
        for name, changed in mutants(dose, but="lighter load_after_days"):
            doses = (*one.plan.doses[:number], changed, *one.plan.doses[number + 1 :])
            after = one._replace(plan=one.plan._replace(doses=doses))
            assert [c for c in plan_changes(one, after) if dose.exercise in c.what], name


@pytest.mark.parametrize("name", Axis._fields[:5])
def test_every_figure_of_a_dose_line_is_compared(name: str) -> None:
    one = bound(D_O)
    dose = next(d for d in one.plan.doses if d.reps.step)
    changed = dose.reps._replace(**{name: getattr(dose.reps, name) + 1})
    base = one._replace(
        plan=one.plan._replace(doses=(dose._replace(reps=dose.reps._replace(after_days=3)),))
    )
    if name != "after_days":
        changed = changed._replace(after_days=3)
    after = one._replace(plan=one.plan._replace(doses=(dose._replace(reps=changed),)))
    told = [c for c in plan_changes(base, after) if "reps" in c.what]
    assert told


def test_every_line_of_a_program_is_compared() -> None:
    program, _ = read_program(PROGRAM)
    assert program is not None
    for name, changed in mutants(program, but="version scripts exercises phases walls"):
        assert program_changes(program, changed), name
    groups: list[tuple[str, tuple[Any, ...], str]] = [
        ("exercises", program.exercises, ""),
        ("phases", program.phases, ""),
        ("walls", program.walls, ""),
    ]
    for field, nouns, but in groups:
        for number, noun in enumerate(nouns):
            for name, changed in mutants(noun, but=but):
                all_of_them = (*nouns[:number], changed, *nouns[number + 1 :])
                part: dict[str, Any] = {field: all_of_them}
                after = program._replace(**part)
                assert program_changes(program, after), f"{field} {name}"


def test_every_part_of_a_script_line_is_compared() -> None:
    program, _ = read_program(PROGRAM)
    assert program is not None
    for number, script in enumerate(program.scripts):
        for place, step in enumerate(script.steps):
            for name, changed in mutants(step, but="" if step.kind == "effect" else "effect"):
                steps = (*script.steps[:place], changed, *script.steps[place + 1 :])
                scripts = list(program.scripts)
                scripts[number] = script._replace(steps=steps)
                assert program_changes(program, program._replace(scripts=tuple(scripts))), name
