"""Putting a checked plan in place, and what a new plan does to a closed one.

Law: a plan of somebody else or an older version never replaces the one in place, nor does one that
another key signed, or none, where a key is known. Whether a new plan opens a closed one is the
rule's to say; the stop stays in the diary either way.
"""

from __future__ import annotations

from datetime import date, datetime
from typing import TYPE_CHECKING, Final

from coach.drivers import exit_codes
from coach.drivers.clearing import who_opens
from coach.rules import hold as hold_rules
from coach.rules.plan_life import plan_life
from coach.session.stopping import clinician_name
from coach.texts.compiled import CopyRefused, from_json, to_json

if TYPE_CHECKING:
    from collections.abc import Callable

    from coach.journal import Journal
    from coach.model.program import Bound, Plan


NO_KEY: Final = "none"


def place_plan(
    journal: Journal,
    bound: Bound,
    source_name: str,
    say: Callable[[str], None],
    now: datetime,
    key: str = "",
) -> int:
    """Keep `bound` as the plan in place; the exit code. Raises `Trouble` from the diary.

    `key` holds the words of the clinician's key as the athlete was given them, `none` where the
    clinician signs no more, and nothing where the plan in place says which key counts.
    """
    plan, old = bound.plan, in_place(journal)
    refusal = why_not(old, plan) or why_not_signed(old, bound, key)
    if refusal:
        say(refusal)
        return exit_codes.BAD_FILE
    journal.keep_plan(to_json(bound), bound.digest, source_name, now.isoformat())
    say(f"Plan {plan.initials} version {plan.version} is in place, {plan.side} arm.")
    say(f"It runs from {plan.starts}; review by {plan.review_by}.")
    if bound.signed and (old is None or old.signature != bound.signed):
        say(f"It is signed with this key: {bound.signed}.")
        say("Compare these words with the ones from your clinician. Call them if they differ.")
    if journal.open_hold() is not None:
        return _closed_plan(journal, plan, say, now)
    say(_what_next(plan, now))
    return exit_codes.DONE


def _what_next(plan: Plan, now: datetime) -> str:
    """How to begin, or why there is no session yet or any more."""
    life = plan_life(plan, now.date())
    return "Type coach to start a session." if life.outcome == "may" else life.why


def in_place(journal: Journal) -> Plan | None:
    """The plan in place now, if its copy can still be read."""
    kept = journal.current_plan()
    if kept is None:
        return None
    try:
        return from_json(kept[0]).plan
    except CopyRefused:
        return None


def why_not(old: Plan | None, new: Plan) -> str:
    """Why `new` must not replace `old`; empty when it may."""
    if old is None:
        return ""
    if old.initials != new.initials:
        return (
            f"The plan is for {new.initials}, but this diary belongs to {old.initials} "
            "and nothing was changed. Another athlete needs their own user or data folder."
        )
    if new.version < old.version:
        return (
            f"Version {old.version} is in place, and this is version {new.version}. "
            "Nothing was changed. Ask your clinician for the newest one."
        )
    return ""


def why_not_signed(old: Plan | None, bound: Bound, key: str) -> str:
    """Why the signature of `bound`, or the lack of one, keeps it out; empty when it may come in."""
    if bound.plan.signature != bound.signed:
        return (
            "This plan asks for a signature, and this file has none. Nothing was changed. "
            "Use the file that your clinician made for you."
        )
    given = " ".join(key.casefold().split())
    known = old.signature if old is not None else ""
    wanted = "" if given == NO_KEY else given or known
    if not wanted or wanted == bound.signed:
        return ""
    has = f"is signed with this key: {bound.signed}" if bound.signed else "has no signature"
    refusal = f"This plan {has}. The key you know is: {wanted}. Nothing was changed. "
    if given:
        return f"{refusal}Ask your clinician for the words of the key."
    return (
        f"{refusal}Ask your clinician, in person or by phone. If the key is a new one, type: "
        'coach use FILE --key "THE NEW WORDS"'
    )


def _closed_plan(journal: Journal, plan: Plan, say: Callable[[str], None], now: datetime) -> int:
    """Lift what the new version lifts; say what stays closed."""
    while (hold := journal.open_hold()) is not None:
        decision = hold_rules.lifts(
            hold,
            hold_rules.NEW_PLAN,
            date.fromisoformat(plan.starts),
            plan,
            None,
            now.date(),
        )
        say(decision.why)
        if decision.outcome != "lifted":
            say(f"The stop of {hold.day} stays, code {hold.code}. {who_opens(plan)}")
            return exit_codes.RED_FLAG
        journal.lift(
            hold.number,
            hold_rules.NEW_PLAN,
            clinician_name(plan.calls),
            now.isoformat(),
            plan.starts,
        )
    say(_what_next(plan, now))
    return exit_codes.DONE
