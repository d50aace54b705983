"""The athlete's own diary: a day in full, the last 7 days in pictures, the weeks in numbers.

Law: numbers stand beside every picture, and in plain mode every fact is a sentence. Own words are
kept as typed. No odds, no grades, no count of days running, no praise, no blame.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

from coach.reports.facts import (
    WEEK_DAYS,
    Day,
    Facts,
    average,
    done_of,
    exercises,
    highest,
    open_hold,
    throws_counted,
    weeks,
)
from coach.reports.visit_work import RESULT
from coach.reports.words import (
    clock_time,
    counted,
    day_words,
    number,
    numbers,
    own,
    quoted,
    short_day,
    titled,
)

if TYPE_CHECKING:
    from coach.model.history import DayRecord, Done, Hold
    from coach.reports.facts import Sat

NOTHING: Final = "Nothing is in your diary for these days."
ENDED: Final = {
    "done": "Done for that day",
    "by choice": "Ended by you",
    "partial": "Cut off before the end",
    "stopped": "Stopped",
    "none": "No exercises that day",
}
WENT: Final = {**RESULT, "left": "left by you", "good": "", "earned": "two reps to spare"}
SCALE: Final = 10  # pain and effort run from 0 to 10
PAINS: Final = (("w", "on waking"), ("r", "at rest"), ("s", "worst in a set"))


class Told(NamedTuple):
    """One line. `kind`: head, say (may be wrapped), row (a picture: never wrapped)."""

    kind: str
    text: str


class Strokes(NamedTuple):
    """What pictures are drawn with."""

    bar: str
    axis: str


ASCII: Final = Strokes("=", ".")
BLOCKS: Final = Strokes("\u2588", "\u00b7")


def diary_lines(facts: Facts, *, plain: bool, strokes: Strokes = ASCII) -> list[Told]:
    """The newest day with an entry, the last 7 days, and the weeks where there are more."""
    days = [day for day in facts.days if day.sessions]
    if not days:
        return [*closed_said(facts), Told("say", NOTHING)]
    lines = [*closed_said(facts), *day_lines(facts, days[-1]), Told("head", "The last 7 days")]
    week = facts.days[-WEEK_DAYS:]
    lines += week_said(week) if plain else week_drawn(week, strokes)
    if len(facts.days) > WEEK_DAYS:
        lines += [Told("head", "By 7 days, oldest first"), *weeks_said(facts)]
        lines += [Told("head", "Your exercises, first day and last"), *doses_said(facts)]
    return lines


def closed_said(facts: Facts) -> list[Told]:
    """That the plan is closed, where it is."""
    still = open_hold(facts.recorded)
    if still is None:
        return []
    words = f"Your plan is closed since {day_words(still.day)}, code {own(still.code)}."
    return [Told("say", words)]


# ---------------------------------------------------------------- a day


def day_lines(facts: Facts, day: Day) -> list[Told]:
    """One day in full."""
    when = "Today, " if day.day == facts.until else ""
    lines = [Told("head", f"{when}{day_words(day.day)}")]
    if not day.sessions:
        return [*lines, Told("say", "There is no entry for that day.")]
    for sat in day.sessions:
        lines += [Told("say", text) for text in session_said(sat)]
    return lines


def session_said(sat: Sat) -> list[str]:
    """One session, a fact a line."""
    record = sat.record
    at = clock_time(sat.opened_at)
    if record is None:
        how = ENDED["stopped" if sat.hold else "partial"]
        return [f"{how}, begun at {at}.", *stop_said(sat.hold)]
    said = [f"{ENDED.get(record.ended, 'Ended')}, begun at {at}."]
    said += [*stop_said(sat.hold), *map(exercise_said, record.done), *throws_said(record)]
    said += [*pitches_said(record), *pains_said(record), *rest_said(record)]
    said += [f"Told to you: {own(why)}" for _rule, _outcome, why in record.decisions if why]
    mine = [note for note in record.notes if note.startswith('"')]
    said += [f"Noted: {own(note)}" for note in record.notes if note not in mine]
    return [*said, *(f"You wrote: {quoted(note)}" for note in mine)]


def exercise_said(done: Done) -> str:
    """An exercise with its dose, what was done and felt."""
    parts = [own(done.dose) or counted(done.sets, "set")]
    if done.planned_sets and done.sets != done.planned_sets:
        parts.append(f"{done.sets} of {done.planned_sets} sets done")
    if done.reps:
        parts.append(f"done {numbers(done.reps)}")
    if done.pains:
        parts.append(f"pain {numbers(done.pains)} of {SCALE}")
    felt = dict.fromkeys(own(f) for f in done.felt if f not in {"fine", ""})
    parts += [f"corrected: {name}" for name in felt]
    went = WENT.get(done.result, own(done.result))
    return f"{titled(own(done.exercise))}: {'; '.join([*parts, went] if went else parts)}."


def throws_said(record: DayRecord) -> list[str]:
    """The plan's throws of the day."""
    threw = record.threw
    if threw is None:
        return []
    step = f"step {threw.step}, " if threw.step else ""
    return [f"Throws: {step}{threw.throws} {own(threw.unit)}; {own(threw.row)}."]


def pitches_said(record: DayRecord) -> list[str]:
    """Game pitches as told, with the days off they ask for."""
    return [
        f"Game pitches on {short_day(one.day)}: "
        f"{'not clear' if one.pitches is None else f'{one.pitches} pitches'}; "
        f"{counted(one.days_off, 'day')} off."
        for one in record.pitched
    ]


def pains_said(record: DayRecord) -> list[str]:
    """Pain on waking, at rest, in a set, after."""
    pains = (
        ("on waking", record.waking_pain),
        ("at rest", record.pain_now),
        ("worst in a set", record.worst_in_set),
        ("after", record.pain_after),
    )
    said = [f"{name} {number(v)} of {SCALE}" for name, v in pains if v is not None]
    return [f"Pain: {', '.join(said)}."] if said else []


def rest_said(record: DayRecord) -> list[str]:
    """Sleep, effort, time."""
    values = (
        ("slept", record.sleep_h, "h"),
        ("effort", record.effort, f"of {SCALE}"),
        ("time", record.minutes, "min"),
    )
    said = [f"{name} {number(v)} {unit}" for name, v, unit in values if v is not None]
    return [f"{titled(', '.join(said))}."] if said else []


def stop_said(hold: Hold | None) -> list[str]:
    """The stop with the words typed."""
    if hold is None:
        return []
    typed = f" You typed: {quoted(hold.said)}." if hold.said.strip() else ""
    return [f"Your plan was closed, code {own(hold.code)}.{typed}"]


# ---------------------------------------------------------------- seven days


def week_drawn(week: tuple[Day, ...], strokes: Strokes) -> list[Told]:
    """Pain on a scale, then sleep, throws and effort as bars; the numbers beside them."""
    lines = [Told("say", "Pain, 0 to 10: w on waking, r at rest, s worst in a set")]
    lines += [Told("row", pain_row(day, strokes)) for day in week]
    sleep = tuple(day.sleep for day in week)
    throws = tuple(None if day.throws is None else float(day.throws) for day in week)
    effort = tuple(day.effort for day in week)
    unit = next((day.unit for day in week if day.threw), "throws")
    for name, ends, values in (
        ("Sleep", ", h", sleep),
        (titled(unit), "", throws),
        ("Effort", ", 0 to 10", effort),
    ):
        if any(value is not None for value in values):
            lines += bars(name, ends, week, values, strokes)
    return lines


def pain_row(day: Day, strokes: Strokes) -> str:
    """A day's pains on a scale of eleven places, then in numbers."""
    values = (day.waking, day.rest, day.in_set)
    places = [strokes.axis] * (SCALE + 1)
    for (letter, _name), value in zip(PAINS, values, strict=True):
        if value is not None:
            place = min(SCALE, max(0, round(value)))
            places[place] = letter if places[place] == strokes.axis else "*"
    said = [
        f"{letter} {number(value)}"
        for (letter, _name), value in zip(PAINS, values, strict=True)
        if value is not None
    ]
    return f"{aligned(day.day)} {''.join(places)} {' '.join(said) or '-'}"


def bars(
    name: str, unit: str, week: tuple[Day, ...], values: tuple[float | None, ...], strokes: Strokes
) -> list[Told]:
    """One bar a day, at most ten long, with its number."""
    most = max([SCALE, *(value for value in values if value is not None)])
    mark = "" if most == SCALE else f"; one mark is {number(most / SCALE)}"
    head = f"{name}{unit}{mark}"
    lines = [Told("say", head)]
    for day, value in zip(week, values, strict=True):
        long = 0 if value is None else round(SCALE * value / most)
        drawn = (strokes.bar * long).ljust(SCALE + 1)
        lines.append(Told("row", f"{aligned(day.day)} {drawn} {number(value)}"))
    return lines


def aligned(day: str) -> str:
    """A day's name in a column."""
    return short_day(day).ljust(10)


def week_said(week: tuple[Day, ...]) -> list[Told]:
    """The same in sentences, days with an entry only."""
    lines = []
    for day in week:
        if not day.sessions:
            continue
        pains = zip(PAINS, (day.waking, day.rest, day.in_set), strict=True)
        said = [f"pain {name} {number(v)} of {SCALE}" for (_l, name), v in pains if v is not None]
        said += [f"slept {number(day.sleep)} hours"] if day.sleep is not None else []
        said += [counted(day.sets, "set")] if day.sets else []
        said += [throws_counted((day,))] if day.throws is not None else []
        said += [f"effort {number(day.effort)} of {SCALE}"] if day.effort is not None else []
        lines += [Told("say", f"{short_day(day.day)}: {one}.") for one in said]
    return lines or [Told("say", "There is no entry in these days.")]


# ---------------------------------------------------------------- weeks


def weeks_said(facts: Facts) -> list[Told]:
    """Each 7 days in a line."""
    return [Told("say", week_line(week)) for week in weeks(facts)]


def week_line(week: tuple[Day, ...]) -> str:
    """Days with exercise or throws, mean pain and sleep, throws."""
    waking = average([day.waking for day in week if day.waking is not None])
    slept = average([day.sleep for day in week if day.sleep is not None])
    worst = highest(pain for day in week for pain in (day.waking, day.rest, day.in_set))
    said = [counted(sum(day.trained for day in week), "day") + " with exercise"]
    said += [f"mean pain on waking {number(waking, 1)} of {SCALE}"] if waking is not None else []
    resting = average([day.rest for day in week if day.rest is not None])
    said += [f"at rest {number(resting, 1)} of {SCALE}"] if resting is not None else []
    said += [f"most pain {number(worst)} of {SCALE}"] if worst is not None else []
    said += [f"mean sleep {number(slept, 1)} h"] if slept is not None else []
    throws = throws_counted(week)
    said += [throws] if throws else []
    return f"From {short_day(week[0].day)}: {'; '.join(said)}."


def doses_said(facts: Facts) -> list[Told]:
    """Each exercise's dose on its first and its last day, and what was corrected."""
    lines = []
    for name in exercises(facts):
        found = [(record, done) for record, done in done_of(facts, name) if done.dose]
        if not found:
            continue
        (first, old), (last, new) = found[0], found[-1]
        lines.append(Told("say", f"{titled(own(name))}, {short_day(first.day)}: {own(old.dose)}."))
        if first.day != last.day:
            lines.append(Told("say", f"  {short_day(last.day)}: {own(new.dose)}."))
        lines += corrections(found)
    return lines


def corrections(found: list[tuple[DayRecord, Done]]) -> list[Told]:
    """What was corrected, with the days."""
    days: dict[str, list[str]] = {}
    for record, done in found:
        for felt in dict.fromkeys(f for f in done.felt if f not in {"fine", ""}):
            days.setdefault(own(felt), []).append(short_day(record.day))
    return [Told("say", f"  Corrected, {name}: {', '.join(on)}.") for name, on in days.items()]


# ---------------------------------------------------------------- for programs


def diary_as_values(facts: Facts) -> dict[str, object]:
    """The same as plain values, units in the names; None where a thing is not known."""
    return {
        "from": facts.since,
        "to": facts.until,
        "days": [day_values(day) for day in facts.days if day.sessions],
    }


def day_values(day: Day) -> dict[str, object]:
    """A day's values."""
    records = [sat.record for sat in day.sessions if sat.record is not None]
    return {
        "day": day.day,
        "pain_on_waking_0_to_10": day.waking,
        "pain_at_rest_0_to_10": day.rest,
        "worst_pain_in_a_set_0_to_10": day.in_set,
        "pain_after_0_to_10": day.after,
        "sleep_h": day.sleep,
        "effort_0_to_10": day.effort,
        "time_min": day.minutes,
        "throws": day.throws,
        "throws_counted_in": day.unit if day.threw else None,
        "other_throwing": day.other_throws or None,
        "game_pitches": [dict(one._asdict()) for record in records for one in record.pitched],
        "ended": [sat.record.ended if sat.record else "cut off" for sat in day.sessions],
        "exercises": [done_values(done) for record in records for done in record.done],
        "stops": [
            {"code": sat.hold.code, "typed": sat.hold.said}
            for sat in day.sessions
            if sat.hold is not None
        ],
        "decisions": [
            {"rule": rule, "outcome": outcome, "shown": why}
            for record in records
            for rule, outcome, why in record.decisions
        ],
        "notes": [note for record in records for note in record.notes],
    }


def done_values(done: Done) -> dict[str, object]:
    """An exercise's values."""
    return {
        "exercise": done.exercise,
        "dose_shown": done.dose,
        "sets_done": done.sets,
        "sets_shown": done.planned_sets or None,
        "reps_or_holds": list(done.reps),
        "pain_in_set_0_to_10": list(done.pains),
        "felt": list(done.felt),
        "went": done.result,
    }
