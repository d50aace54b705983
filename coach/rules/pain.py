"""What pain decides: whether to start, what follows pain in a set, what the morning after says.

Law: an answer is only compared with the plan's numbers, never reckoned with and never set against
another answer. At its number a ceiling is kept; over it the step is down, never up.
"""

from __future__ import annotations

from typing import Final, NamedTuple

from coach.model.decisions import Basis, Decision
from coach.model.program import PainCeilings

FLAG_AT: Final = 8  # set here, to be signed by a clinician: pain of 8 or more is flag S09
END_AT: Final = 6  # set here, to be signed by a clinician: 6 or more ends the session
UP_BY: Final = 2  # Farrar 2001, Michener 2011: about 2 points is a real change
USUAL_FROM_DAYS: Final = 7  # set here, to be signed by a clinician
USUAL_NEEDS_DAYS: Final = 3  # set here, to be signed by a clinician

_MONITORED: Final = "Holmgren 2012 (settled by the next session); the steps were set here"
_PRACTICE: Final = "common practice, no published source; the steps were set here"


class Room(NamedTuple):
    """Which changes down are still possible for an exercise, in the order they are tried."""

    shorter: bool
    easier: bool
    lighter: bool


def is_flag(pain: float) -> bool:
    """Whether `pain` (0 to 10) is high enough to be flag S09 (id stop.flag; set here)."""
    return pain >= FLAG_AT


def _to_start(outcome: str, why: str, ceilings: PainCeilings) -> Decision:
    return Decision(
        "pain.to_start", outcome, why, ceilings.place, Basis.OURS, "Holmgren 2012; set here"
    )


def to_start(pain: float, ceilings: PainCeilings) -> Decision:
    """What pain now allows today (id pain.to_start): all, gentle, or nothing.

    Over the starting ceiling no loaded work; the gentle list stays while pain is at or under its
    own ceiling. Source: Holmgren 2012 for a ceiling; that it gates the start was set here.
    """
    if not pain > ceilings.to_start:
        why = "All of today's work is open. Your pain is inside your limit to start."
        return _to_start("all", why, ceilings)
    if pain <= ceilings.gentle:
        why = "Today only gentle moves. Your pain is {pain now}, over your limit to start."
        return _to_start("gentle", why, ceilings)
    why = "No exercises today. Your pain is {pain now}, over your limit to start."
    return _to_start("nothing", why, ceilings)


def _high(pain: float, rule: str, token: str, ceilings: PainCeilings) -> Decision | None:
    """Read back at 8 and more, end at 6 and more; None below."""
    if is_flag(pain):
        why = "You typed {" + token + "} of 10. That would end the session, so I ask once more."
        return Decision(rule, "read back", why, ceilings.place, Basis.OURS, _PRACTICE)
    if pain >= END_AT:
        why = f"We stop for today. Pain {{{token}}} of 10 is {END_AT} or more."
        return Decision(rule, "end session", why, ceilings.place, Basis.OURS, _PRACTICE)
    return None


_CHANGES: Final = (
    ("shorter range", "Next comes less range."),
    ("easier version", "Next comes an easier form."),
    ("lighter", "Next comes less weight."),
)


def _over(token: str, ceilings: PainCeilings) -> str:
    """`Pain 4 of 10 is over your limit of 2.`, the typed number as a token."""
    return f"Pain {{{token}}} of 10 is over your limit of {ceilings.in_exercise:g}."


def _leave(rule: str, why: str, exercises_left_early: int, ceilings: PainCeilings) -> Decision:
    if exercises_left_early >= 1:
        why = "We stop for today. This is the second exercise left for pain."
        return Decision(rule, "end session", why, ceilings.place, Basis.PRACTICE, _PRACTICE)
    return Decision(rule, "leave", why, ceilings.place, Basis.PRACTICE, _PRACTICE)


def in_set(
    pain: float, ceilings: PainCeilings, room: Room, last_set: bool, exercises_left_early: int
) -> Decision:
    """What follows the worst pain of a set (id pain.in_set; common practice, steps set here).

    `room` says which changes remain; `last_set` that no set follows; `exercises_left_early` counts
    those already left today. Outcomes: go on, shorter range, easier version, lighter, leave,
    end session, read back. Leaving a second exercise ends the session.
    """
    rule = "pain.in_set"
    high = _high(pain, rule, "pain in set", ceilings)
    if high is not None:
        return high
    if not pain > ceilings.in_exercise:
        why = "You go on. Pain {pain in set} of 10 is inside your limit."
        return Decision(rule, "go on", why, ceilings.place, Basis.PRACTICE, _PRACTICE)
    if not last_set:
        for possible, (outcome, then) in zip(room, _CHANGES, strict=True):
            if possible:
                why = f"{_over('pain in set', ceilings)} This set is done. {then}"
                return Decision(rule, outcome, why, ceilings.place, Basis.PRACTICE, _PRACTICE)
    why = f"{_over('pain in set', ceilings)} We leave this exercise for today."
    if not last_set:
        why = f"{why} Your plan has no smaller step for it."
    return _leave(rule, why, exercises_left_early, ceilings)


def before_changed_set(
    pain_now: float, ceilings: PainCeilings, exercises_left_early: int = 0
) -> Decision:
    """Whether a changed set may begin (id pain.in_set): go on, leave, end session, read back."""
    rule = "pain.in_set"
    high = _high(pain_now, rule, "pain before change", ceilings)
    if high is not None:
        return high
    if not pain_now > ceilings.in_exercise:
        why = "You go on with the change. Pain {pain before change} of 10 is inside your limit."
        return Decision(rule, "go on", why, ceilings.place, Basis.PRACTICE, _PRACTICE)
    why = f"{_over('pain before change', ceilings)} We leave this exercise for today."
    return _leave(rule, why, exercises_left_early, ceilings)


def in_warm_up(pain: float, ceilings: PainCeilings) -> Decision:
    """What follows the worst pain of the warm-up (id ready.warm_up; common practice).

    Judged like pain in a set; as there is no set to change, over the ceiling means no loaded work
    today. Outcomes: go on, gentle, nothing, end session, read back.
    """
    rule = "ready.warm_up"
    high = _high(pain, rule, "pain in warm-up", ceilings)
    if high is not None:
        return high
    if not pain > ceilings.in_exercise:
        why = "You go on. Pain {pain in warm-up} of 10 is inside your limit."
        return Decision(rule, "go on", why, ceilings.place, Basis.PRACTICE, _PRACTICE)
    if pain <= ceilings.gentle:
        why = f"{_over('pain in warm-up', ceilings)} So only gentle moves today."
        return Decision(rule, "gentle", why, ceilings.place, Basis.PRACTICE, _PRACTICE)
    why = f"{_over('pain in warm-up', ceilings)} So no exercises today."
    return Decision(rule, "nothing", why, ceilings.place, Basis.PRACTICE, _PRACTICE)


def in_throwing(pain: float, ceilings: PainCeilings) -> Decision:
    """Whether throwing may go on at this pain (id pain.ceilings): go on or end throwing.

    The plan's own ceiling on throwing, none at all as suggested. Pain of 8 and more is read back
    before. Source: common practice for no joint pain on throwing; that any pain over the ceiling
    ends the day's throws, also where soreness alone would let them go on, was set here.
    """
    at_most = f"{ceilings.in_throwing:g}"
    source = "common practice, no published source; that it ends the throws was set here"
    if not pain > ceilings.in_throwing:
        why = f"You may throw on. Your pain is not over {at_most} of 10, your limit on throwing."
        return Decision("pain.ceilings", "go on", why, ceilings.place, Basis.PLAN, source)
    why = f"No more throws today. Pain {{pain in throwing}} of 10 is over {at_most}, your limit there."
    return Decision("pain.ceilings", "end throwing", why, ceilings.place, Basis.PLAN, source)


def usual(mornings: tuple[float, ...], plan_usual: float) -> float:
    """The usual morning pain (id pain.next_morning; set here).

    `mornings` are recorded values, newest first, days without one left out; the median of the
    last 7, or `plan_usual` while there are fewer than 3.
    """
    recent = sorted(mornings[:USUAL_FROM_DAYS])
    if len(recent) < USUAL_NEEDS_DAYS:
        return plan_usual
    middle, odd = divmod(len(recent), 2)
    return recent[middle] if odd else (recent[middle - 1] + recent[middle]) / 2


def two_up(pain_now: float, last_pain_now: float | None) -> bool:
    """Whether pain now is 2 or more above the last session's (id stop.screen: opens 1, 2 and 5).

    Source: Farrar 2001 and Michener 2011 (2 points are a real change).
    """
    return last_pain_now is not None and pain_now >= last_pain_now + UP_BY


def next_morning(waking: float, usual_pain: float, up_last_time: bool) -> Decision:
    """What waking pain says of the last session (id pain.next_morning): usual, up, contact.

    Above usual is up: one step down. Up twice running, or 2 or more above usual, is flag B02: the
    clinician is asked first. Source: Holmgren 2012 (back by the next session), Farrar 2001 and
    Michener 2011 (2 points); twice running was set here.
    """
    rule, source = "pain.next_morning", "Holmgren 2012; Farrar 2001; Michener 2011"
    if waking >= usual_pain + UP_BY:
        why = "Your clinician hears first. Morning pain {waking pain} is 2 or more above usual."
        return Decision(rule, "contact", why, basis=Basis.PUBLISHED, source=source)
    if not waking > usual_pain:
        why = "Nothing changes. Morning pain {waking pain} is not above your usual."
        return Decision(rule, "usual", why, basis=Basis.PUBLISHED, source=source)
    if up_last_time:
        why = "Your clinician hears first. Morning pain is above usual, two times in a row."
        return Decision(rule, "contact", why, basis=Basis.OURS, source=f"{source}; set here")
    why = "Today starts one step down. Morning pain {waking pain} is above your usual."
    return Decision(rule, "up", why, basis=Basis.PUBLISHED, source=source)
