"""A broken season as a folder that anybody can play: program, plans on their days, and a scenario.

Law: every day is written, since the past decides; only what was brought is written, in words that
the ears hear alike. The last day holds a check of what was shown there and should not have been.
"""

from __future__ import annotations

import re
import shutil
from pathlib import Path

from coach.drivers.replay_checks import pieces_of
from coach.drivers.replay_names import part_name
from coach.hearing import hear
from coach.model.flags import Section
from coach.model.heard import Heard, Question, Value
from coach.model.program import Bound
from coach.model.turns import Offer, Resumed, TimerEnded
from coach.rules.red_flags import FLAGS, flag_heard
from coach.session.brief import Brief
from coach.session.checking_in import THROWN_AS
from coach.session.engine import ask_of
from tests.seasons.season import PLANS, Day, Step

UNCLEAR = ("hm", "hm hm", "?")
SAID_AS = {  # labels that the ears know on a line
    "waking pain": "morning",
    "sleep last night": "slept",
    "reps in set": "reps",
    "holds in set": "holds",
    "pain in set": "pain",
    "worst pain": "worst",
}
THROWS = re.compile(r"throws|^P5: (the first throwing day|step )|^P3: step|^P2: \d+ throws")


def write_folder(folder: Path, seed: int, broken: list[str], days: list[Day]) -> Path:
    """The folder of a broken season; the path of its scenario."""
    shutil.copytree(PLANS.parent, folder, ignore=shutil.ignore_patterns("plans"))
    (folder / "plans").mkdir()
    for bound in {id(day.bound): day.bound for day in days}.values():
        (folder / "plans" / file_of(bound)).write_text(plan_text(bound), encoding="utf-8")
    file = folder / f"seed-{seed}.yaml"
    file.write_text(as_scenario(seed, broken, days) + "\n", encoding="utf-8")
    return file


def file_of(bound: Bound) -> str:
    """The file name of a season's plan."""
    name = "-".join(letter for letter in bound.plan.initials.lower() if letter.isalpha())
    return f"{name}-{bound.plan.version}.yaml" if bound.plan.version > 1 else f"{name}.yaml"


def plan_text(bound: Bound) -> str:
    """The plan's file with the days of this season."""
    plan, line = bound.plan, bound.plan.throwing_line
    day = r"\d{4}-\d\d-\d\d"
    text = (PLANS / file_of(bound)).read_text(encoding="utf-8")
    for found, put in (
        (rf"runs: {day}, review by {day}", f"runs: {plan.starts}, review by {plan.review_by}"),
        (rf"(phase: .*opened) {day}", rf"\g<1> {plan.phase_opened.day}"),
        (rf"(opened: overhead) {day}", rf"\g<1> {plan.opened[0].day}"),
        (rf"(throwing: cleared) {day}", rf"\g<1> {line.cleared if line else ''}"),
    ):
        text, times = re.subn(found, put, text)
        assert times == 1, found
    return text


# ---------------------------------------------------------------- the scenario


def as_scenario(seed: int, broken: list[str], days: list[Day]) -> str:
    """A scenario of a season up to its broken day, the broken promises above it."""
    head = [f"# Seed {seed}, {days[-1].opened_at.isoformat()}: {'; '.join(broken)}"]
    head += [f"scenario: seed {seed} breaks a promise", f"plan: plans/{file_of(days[0].bound)}"]
    lines = [*head, "days:"]
    for number, day in enumerate(days):
        before = days[number - 1] if number else day
        lines += day_lines(day, before)
        if number == len(days) - 1:
            lines[-1:] = with_checks(lines[-1:], [check_of(words, day) for words in broken])
    return "\n".join(lines)


def day_lines(day: Day, before: Day) -> list[str]:
    """One day: a plan put in place, a plan opened again, the talk, and (as one line) no check yet."""
    lines = [f"  - day: {day.opened_at:%Y-%m-%d} at {day.opened_at:%H:%M}"]
    if day.bound is not before.bound:
        lines.append(f"    plan: plans/{file_of(day.bound)}")
    opened = before.hold is not None or before.history.hold is not None
    talk = ["happens: clearance in person"] if opened and day.history.hold is None else []
    talk += [line for step in day.steps for line in typed(step)]
    if talk:
        lines += ["    talk:", *(f"      - {line}" for line in talk)]
    return lines


def with_checks(last: list[str], checks: list[str]) -> list[str]:
    """The last line of a day with the day's checks after it."""
    unlike = list(dict.fromkeys(checks))
    return [*last, "    all day:", *(f"      - {check}" for check in unlike)]


def check_of(words: str, day: Day) -> str:
    """A check that fails as long as the day shows what it showed when a promise broke."""
    shown = [offer for step in day.steps if step.shown for offer in step.shown.offers]
    named = [offer for offer in shown if offer.exercise in words]
    if named:
        return f"never offers: {offer_words(named[-1])}"
    section = next((one for one in Section if words.startswith(f"P6: {one}")), None)
    if section is not None:
        return f"asks: screen {section.value}"
    if THROWS.search(words):
        return "never asks: throws done"
    if shown:
        return "never offers: anything"
    asked = [ask.name for step in day.steps if (ask := ask_of(step.before)) is not None]
    return f"never asks: {asked[-1]}" if asked else "asks: pain now"


def offer_words(offer: Offer) -> str:
    """A dose shown, as a scenario writes it."""
    dose = offer.dose
    wanted = [f"{dose.sets} set", f"{dose.sets} sets", dose.version, dose.range_step]
    wanted += [f"{dose.reps_low} to {dose.reps_high} reps", f"{dose.reps_high} reps"]
    wanted += [f"{dose.hold_s} s"] if dose.hold_s else []
    wanted += [dose.load.words()] if dose.load.unit else []
    known = pieces_of(dose)
    return ", ".join([offer.exercise, *(piece for piece in wanted if piece and piece in known)])


# ---------------------------------------------------------------- what is typed


def typed(step: Step) -> list[str]:
    """What a step types, prompt by prompt; a break is a power cut and the time until it is back."""
    ask = ask_of(step.before)
    if isinstance(step.event, Resumed):
        return ["happens: power cut", f"break: {step.event.gap_s} s"]
    if isinstance(step.event, TimerEnded) or ask is None:
        return []
    if step.heard.command is not None:
        return [f"{ask.name}: {step.heard.command.value}"]
    brief = step.before.brief
    if not step.heard.values:
        return [f"{ask.name}: {oddly(ask.question, step.heard, brief)}"]
    line = ", ".join(labelled(fact, value) for fact, value in step.heard.values)
    if (
        ask.question.parts
        and as_known(hear(ask.question, line, brief.lexicon)) == step.heard.values
    ):
        return [f"{ask.name}: {line}"]
    parts = {part.fact: part for part in ask.question.parts}
    lines = []
    for fact, value in step.heard.values:
        part = parts.get(fact)
        name, question = (part_name(ask, part), part) if part else (ask.name, ask.question)
        lines.append(f"{name}: {quoted(plainly(question, fact, value, brief))}")
    return lines


def labelled(fact: str, value: Value) -> str:
    """A value with its label, as on a line that fills several questions."""
    words = value_words(value)
    if fact.startswith("throwing "):
        kind = {"none": "no throws", "light": "light throws", "hard practice": "practice"}
        return f"{kind.get(words, words)} {fact.removeprefix('throwing ')}"
    return f"{SAID_AS.get(fact, fact)} {words}"


def as_known(heard: Heard) -> tuple[tuple[str, Value], ...]:
    """Heard values by the names that scripts know, as a season brings them."""
    return tuple((fact, THROWN_AS.get(str(value), value)) for fact, value in heard.values)


def oddly(question: Question, heard: Heard, brief: Brief) -> str:
    """An answer that is no value: not understood, or a warning sign of a group, as it is heard."""
    said: tuple[str, ...] = UNCLEAR
    if heard.group is not None:
        flag = FLAGS[heard.flag or flag_heard(heard.group, None, brief.person)]
        plain = (flag.say, *flag.list_words, heard.group.value.replace("_", " "))
        said = (*plain, *(f"maybe {one}" for one in plain))
    for words in said:
        found = hear(question, words, brief.lexicon)
        if (found.action, found.group) == (heard.action, heard.group):
            return quoted(words)
    return quoted(said[0])


def plainly(question: Question, fact: str, value: Value, brief: Brief) -> str:
    """A value as somebody would type it, in the first words that are heard alike."""
    words = value_words(value)
    numbers = [str(n) for n, choice in enumerate(question.choices, 1) if choice == value]
    for said in (words, *numbers):
        if dict(hear(question, said, brief.lexicon).values).get(fact) == value:
            return said
    return words


def value_words(value: Value) -> str:
    """A value in plain words."""
    if isinstance(value, tuple):
        return ", ".join(value) or "none"
    return f"{value:g}" if isinstance(value, float | int) else value


def quoted(words: str) -> str:
    """Words in quotes where a bare line would be read as something else."""
    risky = not words or ": " in words or words[0] in "\"'?-"
    return f'"{words}"' if risky else words
