"""The talk that opens a closed plan: a clearance word, or the clinician in person.

Law: whether a clearance opens the plan is the rule's to say (`coach.rules.hold`); this file only
asks, counts and waits. A wrong word is counted on disk before anything is shown, and the wait it
costs is really waited, across restarts. A warning sign typed here is heard as anywhere else.
"""

from __future__ import annotations

from datetime import date, datetime
from typing import TYPE_CHECKING, Final, Protocol

from coach.drivers import exit_codes
from coach.hearing import hear
from coach.model.heard import Action, Command, Heard, Kind, Question
from coach.model.history import Hold
from coach.rules import hold as hold_rules
from coach.rules.red_flags import FLAGS, flag_heard
from coach.session.brief import Brief
from coach.session.stopping import clinician_hours, clinician_name, day_words, stop_lines

if TYPE_CHECKING:
    from collections.abc import Callable

    from coach.journal import Journal
    from coach.model.flags import Group
    from coach.model.program import Bound, Plan

UNREADABLE_DAY: Final = "I did not get a day. Type it like this: 2026-11-09."
_LEAVING: Final = frozenset({Command.STOP.value, Command.PAUSE.value, "quit", "exit", "later"})


class Voice(Protocol):
    """How this talk reaches a person. Texts are cleaned by whoever shows them."""

    def say(self, text: str) -> None:
        """Show one line."""

    def ask(self, label: str) -> str | None:
        """Show `label` and hand back what was typed; None at the end of input."""

    def wait(self, seconds: float) -> None:
        """Let the time pass."""


def clear(journal: Journal, bound: Bound, voice: Voice, now: Callable[[], datetime]) -> int:
    """Hold the talk; the exit code: 0 the plan is open, 10 it stays closed.

    Raises `Trouble` when the diary cannot be written.
    """
    while (hold := journal.open_hold()) is not None:
        voice.say(closed_words(hold, bound.plan))
        if not _one_stop(journal, bound, hold, voice, now):
            voice.say(f"Your plan stays closed. {who_opens(bound.plan)}")
            return exit_codes.RED_FLAG
    voice.say("Your plan is open. Type coach to start a session.")
    return exit_codes.DONE


def closed_words(hold: Hold, plan: Plan) -> str:
    """Which stop it is about."""
    since = day_words(date.fromisoformat(hold.day))
    return (
        f"Your plan is closed since {since}, code {hold.code}, plan line {plan.calls.place.line}."
    )


def who_opens(plan: Plan) -> str:
    """Whom to call."""
    calls = plan.calls
    name = clinician_name(calls)
    return f"Only {name} can open it: {calls.clinician.number}{clinician_hours(calls)}."


def _one_stop(
    journal: Journal, bound: Bound, hold: Hold, voice: Voice, now: Callable[[], datetime]
) -> bool:
    """Ask until this stop is lifted (True) or the person leaves (False)."""
    label = _label(bound.plan)
    if not label:
        voice.say("Your plan opens with a new plan only. Put it in place with: coach use FILE")
        return False
    while True:
        _wait_out(journal, hold, voice, now)
        typed = voice.ask(label)
        if typed is None or _plain(typed) in _LEAVING:
            return False
        if not _plain(typed):
            continue
        if _plain(typed) == hold_rules.IN_PERSON and hold_rules.IN_PERSON in bound.plan.clearance:
            if _in_person(journal, bound.plan, hold, voice, now):
                return True
        elif _by_word(journal, bound, hold, typed, voice, now) or journal.open_hold() is None:
            return True


def _label(plan: Plan) -> str:
    name = clinician_name(plan.calls)
    word, person = (way in plan.clearance for way in (hold_rules.BY_WORD, hold_rules.IN_PERSON))
    if word and person:
        return f"Type the word from {name}, or in person:"
    if word:
        return f"Type the word from {name}:"
    return f"If {name} is with you, type in person:" if person else ""


def _plain(typed: str) -> str:
    return hold_rules.plain_word(typed)


def wait_left(wrong: tuple[str, ...], now: datetime) -> float:
    """Seconds until the next word may be typed; a clock set back waits the whole time again."""
    whole = hold_rules.wait_after_wrong(len(wrong))
    if not whole:
        return 0.0
    passed = (now - datetime.fromisoformat(wrong[-1])).total_seconds()
    return whole - passed if passed >= 0 else float(whole)


def _wait_out(journal: Journal, hold: Hold, voice: Voice, now: Callable[[], datetime]) -> None:
    left = wait_left(journal.wrong_words(hold.number), now())
    if left > 0:
        voice.say(f"The next word can be typed in {left:.0f} seconds.")
        voice.wait(left)


def _by_word(
    journal: Journal,
    bound: Bound,
    hold: Hold,
    typed: str,
    voice: Voice,
    now: Callable[[], datetime],
) -> bool:
    plan = bound.plan
    place = _matching(typed, plan, journal.spent_words())
    if place is not None and hold_rules.BY_WORD in plan.clearance:
        today = now().date()
        decision = hold_rules.lifts(hold, hold_rules.BY_WORD, today, plan, hold.number, today)
        voice_words = decision.why
        lifted = decision.outcome == "lifted" and journal.lift(
            hold.number,
            hold_rules.BY_WORD,
            clinician_name(plan.calls),
            now().isoformat(),
            today.isoformat(),
            plan.words[place].digest,
        )
        voice.say(voice_words)
        return lifted
    if _warning_sign(journal, bound, typed, voice, now):
        return False
    journal.count_wrong(hold.number, now().isoformat())
    voice.say("That word does not open it.")
    return False


def _matching(typed: str, plan: Plan, spent: tuple[str, ...]) -> int | None:
    word = typed[:200].encode("utf-8", "replace").decode("utf-8")
    return hold_rules.word_matches(word, plan.words, spent)


def _in_person(
    journal: Journal, plan: Plan, hold: Hold, voice: Voice, now: Callable[[], datetime]
) -> bool:
    name = clinician_name(plan.calls)
    given = _day(voice, f"Day on which {name} saw you, like 2026-11-09:")
    who = voice.ask(f"{name} types their name:") if given else None
    if given is None or who is None:
        return False
    if _plain(who) != _plain(name):
        journal.count_wrong(hold.number, now().isoformat())
        voice.say("That is not the name in your plan.")
        return False
    today = now().date()
    decision = hold_rules.lifts(hold, hold_rules.IN_PERSON, given, plan, hold.number, today)
    lifted = decision.outcome == "lifted" and journal.lift(
        hold.number, hold_rules.IN_PERSON, name, now().isoformat(), given.isoformat()
    )
    voice.say(decision.why)
    return lifted


def _day(voice: Voice, label: str) -> date | None:
    for _try in range(2):
        typed = voice.ask(label)
        if typed is None:
            return None
        try:
            return date.fromisoformat(typed.strip()[:10])
        except ValueError:
            voice.say(UNREADABLE_DAY)
    return None


# ---------------------------------------------------------------- a warning sign typed here


def _warning_sign(
    journal: Journal, bound: Bound, typed: str, voice: Voice, now: Callable[[], datetime]
) -> bool:
    """Whether a sign was heard: a sure one is a stop of its own, an unsure one is told whom to call."""
    brief = Brief(bound, journal.history(), now())
    heard = hear(Question("clearance word", Kind.OWN_WORDS), typed, brief.lexicon)
    if heard.action == Action.ESCALATE and heard.group is not None:
        _new_stop(journal, brief, heard, heard.group, typed, voice)
        return True
    if heard.action == Action.CONFIRM:
        calls = bound.plan.calls
        voice.say(f"If that is new or worse, call {calls.emergency.number} or {_clinician(bound)}.")
        return True
    return False


def _clinician(bound: Bound) -> str:
    calls = bound.plan.calls
    return f"{clinician_name(calls)}: {calls.clinician.number}"


def _new_stop(
    journal: Journal, brief: Brief, heard: Heard, group: Group, typed: str, voice: Voice
) -> None:
    code = flag_heard(group, heard.flag, brief.person)
    tier = FLAGS[code].tier.value
    lines = tuple(line.text for line in stop_lines(brief, code, tier, typed))
    at = brief.opened_at.isoformat()
    hold = Hold(0, code, tier, group.value, typed, at[:10], at, brief.plan.version)
    journal.append(0, "typed at clear", {"text": typed}, lines, at, hold=hold)
    for line in lines:
        voice.say(line)
