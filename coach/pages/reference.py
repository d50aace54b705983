"""The reference pages, made from the code that acts: facts, effects, questions, rules, findings.

Law: nothing is listed by hand that the code knows, so that no page can drift from what happens.
"""

from __future__ import annotations

import textwrap
from typing import Final

from coach.model.flags import SECTION_GROUPS, Group
from coach.model.throws import OWN_STEPS, UNITS
from coach.rules import (
    dapre,
    dosing,
    hold,
    layoff,
    limits,
    load,
    pain,
    phases,
    picking,
    pitching,
    plan_life,
    progression,
    readiness,
    red_flags,
    throwing,
)
from coach.rules.throwing_tables import STEP_TABLES
from coach.session.commands import help_lines
from coach.session.questions import QUESTIONS
from coach.texts import doses, exercises, facts, plans, programs, scenarios
from coach.texts.catalogue import CHECKS
from coach.texts.facts import Fact
from coach.texts.values import Bounds

WIDTH: Final = 95
_RULE_FILES: Final = (
    plan_life, hold, red_flags, pain, readiness, dosing, limits, progression, dapre, picking,
    layoff, load, phases, throwing, pitching,
)  # fmt: skip
_EFFECT_WORDS: Final = {
    "leave out": "the exercise is not done today",
    "one set fewer": "one set less; the last set stays",
    "shorter range": "one step shorter; where there is none, left out",
    "easier version": "one level easier; where there is none, left out",
    "lighter": "the next lighter load at home; where there is none, left out",
    "no step up": "nothing rises from today's work",
}
_KIND_WORDS: Final = {
    "listed": "never compared",
    "screen": "a yes has acted already; no fact for when",
    "own words": "never compared",
}


def reference() -> str:
    """The whole reference as Markdown."""
    parts = ("# Reference\n", _facts(), _answers(), _effects(), _keys(), _tables(), _rules())
    return "\n".join(parts)


def _section(title: str, lines: list[str], note: str = "") -> str:
    head = f"## {title}\n\n" + (f"{note}\n\n" if note else "")
    return head + "".join(f"{_filled(line)}\n" for line in lines)


def _filled(line: str) -> str:
    return textwrap.fill(
        line, WIDTH, initial_indent="* ", subsequent_indent="  ", break_on_hyphens=False
    )


def _facts() -> str:
    parts = []
    for moment in facts.MOMENTS:
        lines = [_fact(fact) for fact in facts.ASKS[moment]]
        parts.append(_section(f"Asked in: {moment}", lines))
    known = [_fact(fact) for fact in facts.SET_FACTS]
    parts.append(_section("Known after a set", known))
    diary = [_fact(fact) for fact in facts.DIARY_FACTS]
    parts.append(_section("Known from plan and diary", diary))
    groups = [
        f"section {section.value}: {', '.join(g.value.replace('_', ' ') for g in found)}"
        for section, found in SECTION_GROUPS.items()
    ]
    in_sections = {group for found in SECTION_GROUPS.values() for group in found}
    heard = [g.value.replace("_", " ") for g in Group if g not in in_sections]
    groups.append(f"in no section, heard in any answer: {', '.join(heard)}")
    note = "Any of these may be asked again, at any moment: `- ask: numb tingle`."
    parts.append(_section("Warning signs", groups, note))
    return "\n".join(parts)


def _fact(fact: Fact) -> str:
    asked = QUESTIONS.get(fact.name)
    words = f' "{asked.ask}"' if asked else ""
    return f"`{fact.name}` ({_kind(fact)}){words}"


def _kind(fact: Fact) -> str:
    if fact.choices:
        return ", ".join(fact.choices)
    if fact.kind in ("counted", "measured"):
        unit = f" {fact.unit}" if fact.unit else ""
        return f"{fact.low:g} to {fact.high:g}{unit}"
    return _KIND_WORDS.get(fact.kind, "a name of the program")


def _answers() -> str:
    lines = [
        "`yes or no`",
        "`pain 0 to 10`: every pain question has these two ends",
        "`number 0 to 200 throws`: counted; `number 0 to 14 h`: measured (h, kg, lb, cm, years)",
        "two to seven names with commas",
        "`own words`: kept for the visit, never compared",
        "in `when`, a choice: `is A`, `is A or B`, `is not A`",
        "in `when`, counted: `is 3`, `is 3 to 5`, `is at least 3`, `is at most 3`",
        "in `when`, measured: `is at least 6 h`, `is below 6 h`",
        "`and` joins comparisons; all must hold",
    ]
    return _section("Answers and comparisons", lines)


def _effects() -> str:
    lines = [f"`{effect}: NAME`: {_EFFECT_WORDS[effect]}" for effect in facts.EFFECTS]
    lines.append("NAME is an exercise, `all`, or after a set `this exercise`")
    lines.append(f"`today: ...`: {', '.join(facts.TODAY)}")
    lines.append("`note: ...`: a line for the visit")
    lines.append(f"`stop: ...`: {', '.join(facts.STOPS)}; last line of its branch")
    return _section("Effects", lines, "In a branch only. They last the day; a stop, until cleared.")


def _keys() -> str:
    kinds = {
        "program.yaml": programs.KEYS,
        "an exercise": exercises.KEYS,
        "a plan": plans.KEYS,
        "a dose in a plan": doses.KEYS,
    }
    lines = [f"{kind}: {', '.join(keys)}" for kind, keys in kinds.items()]
    lines.append(f"families: {', '.join(facts.FAMILIES)}")
    lines.append(f"locked families: {', '.join(facts.LOCKED_FAMILIES)}")
    lines.append(f"if it stays: {', '.join(facts.IF_IT_STAYS)}")
    rules = ", ".join(f"{rule} ({b.low:g} to {b.high:g} {b.unit})" for rule, b in _changeable())
    lines.append(f"rules a plan may change, with a reason: {rules}")
    return _section("Keys", lines)


def _changeable() -> list[tuple[str, Bounds]]:
    return list(plans.CHANGEABLE.items())


def _tables() -> str:
    lines = [
        f"{name}: {len(table.steps)} steps, counted in {table.unit}. Source: {table.source}. "
        f"{table.caution}"
        for name, table in STEP_TABLES.items()
    ]
    lines.append(
        f"{OWN_STEPS}: your clinician's table goes here, for any other sport, under "
        f"`throwing steps`: `counted in` ({', '.join(UNITS)}), then `step 1`, `step 2` and so on, "
        "each as `10 throws at 12 m, 10 throws at 18 m`"
    )
    return _section("Throwing tables", lines)


def _rules() -> str:
    """Every rule with its id, in the words of its own docstring."""
    found: dict[str, str] = {}
    for module in _RULE_FILES:
        for name, thing in vars(module).items():
            said = getattr(thing, "__doc__", None) or ""
            if not callable(thing) or name.startswith("_") or "(id " not in said:
                continue
            for rule in _ids(said):
                found.setdefault(rule, " ".join(said.split()).replace("`", ""))
    lines = [f"**{rule}**: {words}" for rule, words in sorted(found.items())]
    note = "`why code` shows the rule that decided; a scenario names it with `decided by:`."
    return _section("Rules", lines, note)


def _ids(said: str) -> list[str]:
    inside = [piece.partition(")")[0] for piece in said.split("(id ")[1:]]
    names = [name for piece in inside for name in _apart(piece)]
    return [name for name in names if "." in name.strip(".") and name.islower()]


def _apart(piece: str) -> list[str]:
    for sign in ";,:":
        piece = piece.replace(sign, " ")
    return piece.split()


def findings(examples: dict[str, str]) -> str:
    """A page for each finding: how much it weighs, why, and an example where a file can hold one."""
    parts = ["# Findings\n\nAn error refuses every session; a warning is for you to read.\n"]
    for name, check in CHECKS.items():
        example = examples.get(name, "")
        shown = f"\n```text\n{example}```\n" if example else ""
        parts.append(f"## {name}\n\n{check.level.capitalize()}. {check.why}\n{shown}")
    return "\n".join(parts)


def made_parts() -> dict[str, str]:
    """The lists inside the handwritten guides, by the name of their place."""
    checks = "".join(f"* `{check}`\n" for check in scenarios.CHECKS)
    happenings = "".join(f"* `happens: {what}`\n" for what in scenarios.HAPPENINGS)
    happenings += f"* `{scenarios.BREAK}: 13 min` (or `s`, `h`): for so long nothing is typed\n"
    commands = "".join(f"* {line.text}\n" for line in help_lines())
    return {"checks": checks, "happenings": happenings, "commands": commands}
