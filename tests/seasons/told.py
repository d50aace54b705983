"""A season's days as a scenario file, so that a broken promise can be read and played again.

Law: only what was brought is written; the days before are there because the past decides.
"""

from __future__ import annotations

from coach.drivers.replay_names import part_name
from coach.model.heard import Action, Heard, Value
from coach.model.turns import Ask, Resumed, TimerEnded
from coach.session.engine import ask_of
from tests.seasons.season import Day, Step

MOST_DAYS = 6  # the newest days that are written out in full


def as_scenario(seed: int, broken: list[str], days: list[Day]) -> str:
    """A scenario of the newest days of a season, the broken promises above it."""
    made = days[-1].bound.plan
    plan = "-".join(letter for letter in made.initials.lower() if letter.isalpha())
    plan += f"-{made.version}" if made.version > 1 else ""
    head = [f"# Seed {seed}, day {days[-1].opened_at.isoformat()}: {'; '.join(broken)}"]
    head += ["# The plan's dates were moved; move them here before it is played."]
    head += [f"scenario: seed {seed} breaks a promise", f"plan: plans/{plan}.yaml", "days:"]
    return "\n".join([*head, *(line for day in days[-MOST_DAYS:] for line in day_lines(day))])


def day_lines(day: Day) -> list[str]:
    """One day of talk."""
    head = f"  - day: {day.opened_at:%Y-%m-%d} at {day.opened_at:%H:%M}"
    talk = [f"      - {line}" for step in day.steps for line in typed(step)]
    return [head, *(["    talk:", *talk] if talk else [])]


def typed(step: Step) -> list[str]:
    """What a step types, prompt by prompt."""
    ask = ask_of(step.before)
    if isinstance(step.event, Resumed):
        return [f"note of the test: a break of {step.event.gap_s} s"]
    if isinstance(step.event, TimerEnded) or ask is None:
        return []
    if step.heard.command is not None:
        return [f"{ask.name}: {step.heard.command.value}"]
    if step.heard.action is not Action.ACCEPT:
        return [f"{ask.name}: {oddly(step.heard)}"]
    return [f"{name_of(ask, fact)}: {words(value)}" for fact, value in step.heard.values]


def oddly(heard: Heard) -> str:
    """An answer that is no value: not understood, or a warning sign of a group."""
    return "hm" if heard.group is None else f"({heard.action.value} {heard.group.value})"


def name_of(ask: Ask, fact: str) -> str:
    """The name of a prompt, or of a part of its line."""
    parts = {part.fact: part_name(ask, part) for part in ask.question.parts}
    return parts.get(fact, ask.name)


def words(value: Value) -> str:
    """A value as somebody would type it."""
    if isinstance(value, tuple):
        return ", ".join(value)
    return f"{value:g}" if isinstance(value, float | int) else value
