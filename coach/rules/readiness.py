"""What the day allows: sleep, spacing, sessions a week, warm-up, ache, equipment, throwing.

Law: each rule lowers or spaces the day, none raises it, and short sleep never locks anybody out.
An answer is only compared with a number; two instants are compared on the one world clock.
"""

from __future__ import annotations

from datetime import UTC, date, datetime, timedelta
from typing import Final

from coach.model.decisions import Basis, Decision
from coach.model.history import DayRecord
from coach.model.program import Exercise, Limits, Plan, Prescription
from coach.model.quantities import Load

SHORT_NIGHT_H: Final = 6.0  # set here, to be signed by a clinician
KEEP_SETS: Final = 2  # set here: a set is taken away only where there are more than two
ACHE_AT_MOST: Final = 2  # common practice, no published source
ACHE_GONE_BY_DAY: Final = 2  # common practice, no published source
MUSCLE_ACHES: Final = ("worked muscle", "both arms alike")
WEEK_DAYS: Final = 7
# A session at seven one evening and at half past six the next is still a day apart. Set here, to be
# signed by a clinician: the hours may fall short of whole days by this much, the dates never.
SPACING_SLACK_H: Final = 8

# Recommended sleep, hours a night, lower ends: Paruthi 2016 (6 to 12 years: 9; 13 to 18: 8),
# Watson 2015 (adults: 7). At 18 both fit; the higher one is used (set here).
_HABIT_H: Final = ((12, 9.0), (18, 8.0))
_HABIT_ADULT_H: Final = 7.0

QUIET_KINDS: Final = ("none", "light")  # all other kinds of throwing count as hard, known or not

_PRACTICE: Final = "common practice, no published source"
_OURS: Final = "set here, to be signed by a clinician"


def short_sleep(hours: float, plan: Plan) -> Decision:
    """Whether last night was short (id ready.sleep): short or enough.

    Under 6 h, or under the number the plan sets for `ready.sleep`. Source: set here; sleep habit
    and injury go together (Milewski 2014), one night was not studied.
    """
    at_least = dict(plan.changed).get("ready.sleep", SHORT_NIGHT_H)
    basis = Basis.PLAN if "ready.sleep" in dict(plan.changed) else Basis.OURS
    if hours < at_least:
        why = (
            f"One set fewer where there are more than {KEEP_SETS}. You slept under {at_least:g} h."
        )
        return Decision("ready.sleep", "short", why, plan.place, basis, _OURS)
    why = f"All sets stay. You slept {at_least:g} h or more."
    return Decision("ready.sleep", "enough", why, plan.place, basis, _OURS)


def sets_after_short_sleep(sets: int) -> int:
    """Sets after a short night: one fewer where more than two (id ready.sleep; set here)."""
    return sets - 1 if sets > KEEP_SETS else sets


def habit_hours(age: int) -> float:
    """The recommended hours a night at `age` in years (Paruthi 2016; Watson 2015)."""
    for age_to, hours in _HABIT_H:
        if age <= age_to:
            return hours
    return _HABIT_ADULT_H


def sleep_habit(mean_7: float | None, age: int) -> Decision:
    """Whether a week's mean sleep goes on the visit page (id ready.sleep): note or enough.

    `mean_7` in hours (None: no nights recorded, no note). It changes no dose. Source: Paruthi
    2016, Watson 2015.
    """
    source = "Paruthi 2016; Watson 2015"
    at_least = habit_hours(age)
    if mean_7 is not None and mean_7 < at_least:
        why = f"A note goes to your visit. Your week's mean sleep is under {at_least:g} h."
        return Decision("ready.sleep", "note", why, basis=Basis.PUBLISHED, source=source)
    why = f"No note on sleep. The mark at your age is {at_least:g} h."
    return Decision("ready.sleep", "enough", why, basis=Basis.PUBLISHED, source=source)


def _read_instant(text: str) -> datetime | None:
    try:
        instant = datetime.fromisoformat(text)
    except ValueError:
        return None
    return instant if instant.tzinfo is not None else None


def _days(count: int) -> str:
    return "1 day" if count == 1 else f"{count} days"


def may_repeat(last_ended_at: str | None, now: datetime, apart_days: int) -> Decision:
    """Whether an exercise may be done again (id ready.spacing): may or wait.

    Both must hold: the dates are `apart_days` apart (each in its own place's calendar), and the
    hours between are that many days less 8 h. So a flight east gains no day, a flight west waits
    for the date, and an instant ahead of `now` waits. `now` carries its UTC offset; a record that
    cannot be read waits. Source: common practice; the 8 h were set here.
    """
    wait = Decision(
        "ready.spacing",
        "wait",
        f"Not today. Your plan does it once in {_days(apart_days)} at most.",
        basis=Basis.PRACTICE,
        source=f"{_PRACTICE}; the hours were set here",
    )
    may = wait._replace(outcome="may", why="It is due. The days of your plan have gone by.")
    if last_ended_at is None:
        return may
    last = _read_instant(last_ended_at)
    if last is None:
        return wait
    gap = now.astimezone(UTC) - last.astimezone(UTC)
    least = timedelta(hours=max(0, 24 * apart_days - SPACING_SLACK_H))
    days = (now.date() - last.date()).days
    return may if gap >= least and days >= apart_days else wait


def second_session(records: tuple[DayRecord, ...], today: date) -> Decision:
    """Whether work with load is left for today (id ready.spacing): first or twice daily only.

    One session with load a day: once a set with load was done today, only what the program marks
    twice daily is left. A day ahead of today (a flight west over the date line) counts as today.
    Source: common practice.
    """
    first = Decision(
        "ready.spacing",
        "first",
        "All of today's work is open. You did no loaded work yet today.",
        basis=Basis.PRACTICE,
        source=_PRACTICE,
    )
    for record in records:
        if record.day >= today.isoformat() and any(d.loaded and d.sets > 0 for d in record.done):
            why = "Only moves for twice a day are left. You did loaded work today."
            return first._replace(outcome="twice daily only", why=why)
    return first


def _counts_as_session(record: DayRecord, today: date) -> bool:
    age = (today - date.fromisoformat(record.day)).days
    return 0 <= age < WEEK_DAYS and any(done.sets > 0 for done in record.done)


def week_full(records: tuple[DayRecord, ...], today: date, limits: Limits) -> Decision:
    """Whether the week's sessions are used up (id limits.caps): open or rest.

    Counts sessions with at least one set in the 7 days that end today, today's included.
    """
    count = sum(_counts_as_session(record, today) for record in records)
    most = limits.sessions_a_week
    if count >= most:
        why = f"Rest day. Your plan has at most {most} sessions in 7 days."
        return Decision("limits.caps", "rest", why, limits.place, Basis.PLAN, _OURS)
    why = f"You may train. Your plan has at most {most} sessions in 7 days."
    return Decision("limits.caps", "open", why, limits.place, Basis.PLAN, _OURS)


def warm_up_first(warm_up: tuple[str, ...]) -> Decision:
    """Whether a warm-up comes first (id ready.warm_up): first or none. Common practice."""
    if warm_up:
        why = "The warm-up comes first. Its pain counts like pain in a set."
        return Decision("ready.warm_up", "first", why, basis=Basis.PRACTICE, source=_PRACTICE)
    why = "Your program has no warm-up."
    return Decision("ready.warm_up", "none", why, basis=Basis.PRACTICE, source=_PRACTICE)


def may_be_muscle_ache(pain: float, days: int) -> bool:
    """Whether waking pain may be plain muscle ache, so that it is asked (id ready.muscle_ache).

    At most 2 of 10, and gone by the second day: `days` since the work that it may come from, in
    calendar days. Source: common practice.
    """
    return pain <= ACHE_AT_MOST and days < ACHE_GONE_BY_DAY


def muscle_ache(where: str) -> Decision:
    """What a light, short ache is by where it was (id ready.muscle_ache): ache or flare.

    In the worked muscle, or in both arms alike, it is muscle ache: no step down, and none up (that
    nothing goes up was set here). In the joint, or not sure, it is a flare. Source: common practice.
    """
    if where in MUSCLE_ACHES:
        why = "You go on as last time. Light muscle ache on the day after is common."
        return Decision("ready.muscle_ache", "ache", why, basis=Basis.PRACTICE, source=_PRACTICE)
    why = "We treat this ache as pain, since it was not surely muscle ache."
    return Decision("ready.muscle_ache", "flare", why, basis=Basis.PRACTICE, source=_PRACTICE)


def _is_held(piece: str, load: Load, at_hand: tuple[str, ...]) -> bool:
    """Whether `piece` is among `at_hand`.

    What carries the load must be the plan's own load (`light band`, `2 lb dumbbell`, `band pull
    3 kg`) or named without a size; anything else may have a word before it (`long towel`).
    """
    if piece == load.kind:
        return piece in at_hand or load.words() in at_hand
    return any(item == piece or item.endswith(f" {piece}") for item in at_hand)


def equipment(exercise: Exercise, prescription: Prescription, at_hand: tuple[str, ...]) -> Decision:
    """What becomes of an exercise with what is at hand (id ready.equipment).

    Outcomes: at hand, stand-in, `other: NAME` (another exercise of the plan), leave out. A
    stand-in needs the plan's word and the exercise's sentence. Source: common practice.
    """

    def decided(outcome: str, why: str) -> Decision:
        place = prescription.place
        return Decision("ready.equipment", outcome, why, place, Basis.PRACTICE, _PRACTICE)

    missing = [p for p in exercise.equipment if not _is_held(p, prescription.load, at_hand)]
    if not missing:
        return decided("at hand", "You have what this exercise needs.")
    swaps = [dict(prescription.without).get(piece, "") for piece in missing]
    sentences = dict(exercise.stand_in)
    for piece, swap in zip(missing, swaps, strict=True):
        if not swap or (swap == "stand-in" and piece not in sentences):
            return decided("leave out", f"We leave this out today. You have no {piece} at hand.")
    others = [swap for swap in swaps if swap != "stand-in"]
    if others:
        return decided(f"other: {others[0]}", f"Your plan has {others[0]} in its place today.")
    return decided("stand-in", f"Your plan lets something else stand in for the {missing[0]}.")


def throwing_day(today_kind: str, already: bool, yesterday_kind: str) -> Decision:
    """Where loaded work goes on a day with throwing (id ready.throwing_day; common practice).

    Kinds: none, light, hard practice, bullpen, game; any other word counts as hard. `already`: the
    throwing of today is over. Outcomes: as usual, after throwing, recovery list. A hard day
    yesterday weighs more than one to come.
    """

    def decided(outcome: str, why: str) -> Decision:
        rule = "ready.throwing_day"
        return Decision(rule, outcome, why, basis=Basis.PRACTICE, source=_PRACTICE)

    if yesterday_kind not in QUIET_KINDS:
        return decided("recovery list", "Today is for recovery. You threw hard yesterday.")
    if today_kind not in QUIET_KINDS and not already:
        return decided("after throwing", "Work with weight comes after you throw, not before it.")
    return decided("as usual", "Your work stays as it is. No hard throws stand in the way.")
