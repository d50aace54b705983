"""The paper hand-out for the athlete: the plan's exercises as they begin, and when to stop.

Law: it prints what the plan says and adds no number. Black on white, large letters, one exercise
never torn over two pages. What moves from day to day is told by the session, not by paper.
"""

from __future__ import annotations

from datetime import date
from typing import Final

from coach.model.decisions import Refusal
from coach.model.flags import Section, Tier
from coach.model.program import Bound, Exercise, Plan, Prescription, Version
from coach.model.quantities import Dose
from coach.model.throws import OWN_STEPS, part_words
from coach.pages.paper import element, listed, whole_page
from coach.rules.dapre import driving_set, set_lines
from coach.rules.dosing import opening_dose, versions_to_pick
from coach.rules.pain import END_AT
from coach.rules.red_flags import FLAGS, flags_asked, person_from
from coach.rules.throwing import table_of
from coach.session.showing import amount, dose_words, titled
from coach.session.stopping import clinician_hours, clinician_name, day_words

PAPERS: Final = {"a4": "A4", "letter": "letter"}
_CRISIS: Final = "E11"
_KEY: Final = "Your plan comes signed. The words of its key are: {words}."
_STYLE: Final = """
@page{size:PAPER;margin:11mm 15mm}
body{font:18px/1.4 Verdana,"DejaVu Sans",Arial,sans-serif;color:#000;background:#fff;margin:0}
main{max-width:44rem;margin:0 auto;padding:1rem}
h1{font-size:1.7em;margin:0 0 .2em}
h2{font-size:1.3em;margin:1.3em 0 .3em;padding-top:.3em;border-top:3px solid #000}
h3{font-size:1.15em;margin:0 0 .2em}
h4{font-size:1em;margin:.6em 0 .1em}
p{margin:.25em 0}
ul,ol{margin:.2em 0;padding-left:1.4em}
li{margin:.15em 0}
.dose{font-weight:bold;font-size:1.1em}
.box{border:3px solid #000;padding:.5em .8em;margin:.8em 0}
.number{font-weight:bold;font-size:1.15em;white-space:nowrap}
article{border-bottom:1px solid #000;padding:.7em 0 .5em;break-inside:avoid}
section.box,.together{break-inside:avoid}
h2,h3,h4{break-after:avoid}
li,p{break-inside:avoid;orphans:3;widows:3}
.small{font-size:.85em}
@media print{body{font:16pt/1.33 Verdana,"DejaVu Sans",Arial,sans-serif}main{max-width:none;padding:0}article:has(.new),.new{break-before:page}.new{border:0}}
"""


def sheet(bound: Bound, paper: str = "a4") -> str:
    """The hand-out as one HTML file; `paper` is a4 or letter."""
    plan = bound.plan
    title = f"Home plan: {plan.initials} {plan.side} arm"
    body = "".join(
        (
            _head(bound),
            _calls(plan),
            _pain(plan),
            _signs(plan),
            _exercises(bound),
            _foot(bound),
        )
    )
    return whole_page(title, _STYLE.replace("PAPER", PAPERS[paper]), body)


# ---------------------------------------------------------------- head, calls, foot


def _head(bound: Bound) -> str:
    plan, limits = bound.plan, bound.plan.limits
    lines = [
        element("h1", f"Home plan for {plan.initials.rstrip('.')}., {plan.side} arm"),
        element("p", bound.program.about, "small") if bound.program.about else "",
        element("p", f"From {_day(plan.starts)}. Seen again by {_day(plan.review_by)}."),
        element(
            "p",
            f"At most {_count(limits.exercises, 'exercise')} and {limits.minutes} minutes a day, "
            f"{_count(limits.sessions_a_week, 'day')} a week.",
        ),
    ]
    if plan.guardian is not None:
        lines.append(element("p", f"Your guardian is there at {_presence(plan)}."))
    return "".join(lines)


def _day(iso: str) -> str:
    """`Mon 2 Nov 2026`."""
    day = date.fromisoformat(iso)
    return f"{day_words(day)} {day.year}"


def _presence(plan: Plan) -> str:
    return "every session" if plan.guardian_present == "every session" else "the first session"


def _calls(plan: Plan) -> str:
    calls = plan.calls
    rows = [
        ("Emergency", calls.emergency.number, calls.emergency.who),
        ("Crisis line", calls.crisis.number, calls.crisis.who),
    ]
    if calls.urgent is not None:
        rows.append(("Same day", calls.urgent.number, calls.urgent.who))
    rows.append(("Your clinician", calls.clinician.number, calls.clinician.who))
    if plan.guardian is not None:
        rows.append(("Your guardian", plan.guardian.number, plan.guardian.who))
    inside = "".join(
        f"<p>{element('strong', f'{what}:').strip()} "
        f"{element('span', number, 'number').strip()} {element('span', who).strip()}</p>\n"
        for what, number, who in rows
    )
    return f'<section class="box">\n<h3>Whom to call</h3>\n{inside}</section>\n'


def _foot(bound: Bound) -> str:
    name = clinician_name(bound.plan.calls)
    return (
        '<div class="together">\n<h2>About this paper</h2>\n'
        + element("p", "The doses here are where your plan begins.")
        + element("p", "Coach shows the dose of each day. On that day, that one counts.")
        + element("p", f"This paper finds out nothing. Ask {name} if you are not sure.")
        + (element("p", _KEY.format(words=bound.plan.signature)) if bound.plan.signature else "")
        + element("p", f"Plan {bound.plan.name}. Program {bound.program.name}.", "small")
        + "</div>\n"
    )


# ---------------------------------------------------------------- pain


def _pain(plan: Plan) -> str:
    pain = plan.pain
    before = [
        f"Pain now {pain.to_start:g} of 10 or less: do the exercises of the day.",
        f"Over that, up to {max(pain.gentle, pain.to_start):g}: only the gentle ones.",
        "More than that: no exercises today.",
    ]
    if pain.gentle <= pain.to_start:
        before = [before[0], "More than that: no exercises today."]
    during = [
        f"Over {pain.in_exercise:g} of 10: end the set. Rest.",
        "Then make it smaller, as Coach says. Still over: leave that exercise.",
        "Two exercises left for pain: stop for today.",
        f"{END_AT:g} of 10 or more: stop for today.",
    ]
    return (
        '<section class="together">\n<h2>Pain, from 0 (none) to 10 (the worst)</h2>\n'
        + element("h4", "Before you start")
        + listed(before)
        + element("h4", "In an exercise")
        + listed(during)
        + "</section>\n"
    )


# ---------------------------------------------------------------- exercises


def _exercises(bound: Bound) -> str:
    program, plan = bound.program, bound.plan
    phase = next(one for one in program.phases if one.name == plan.phase)
    main = [name for name in phase.exercises if name not in program.warm_up]
    listed_too = dict.fromkeys((*program.gentle, *program.recovery, *program.twice_a_day))
    rest = [name for name in listed_too if name not in main and name not in program.warm_up]
    return (
        _group("Warm-up, every time", "", bound, list(program.warm_up), new=True)
        + _group(f'Exercises of the phase "{plan.phase}"', "In this order.", bound, main)
        + _group("For sore days and rest days", "Only when Coach lists them.", bound, rest)
        + _throwing(plan)
    )


def _group(title: str, note: str, bound: Bound, names: list[str], *, new: bool = False) -> str:
    known = {one.name: one for one in bound.program.exercises}
    doses = {one.exercise: one for one in bound.plan.doses}
    shown = [name for name in names if name in doses and name in known]
    head = element("h2", title, "new" if new else "") + (element("p", note) if note else "")
    # the heading stands inside the first exercise, so that no page ends with a lonely heading
    return "".join(
        _exercise(known[name], doses[name], bound.plan, head if name == shown[0] else "")
        for name in shown
    )


def _exercise(exercise: Exercise, line: Prescription, plan: Plan, head: str) -> str:
    dose = opening_dose(exercise, line)
    if isinstance(dose, Refusal):
        return ""
    picks = versions_to_pick(exercise, line)
    chosen = picks[0] if len(picks) == 1 else None
    parts = [
        element("h3", titled(exercise.name)),
        element("p", f"{_side(exercise, plan)}: {dose_words(dose)}.", "dose"),
        listed(_more(exercise, line, dose, plan)),
        element("h4", "Get ready"),
        listed([*exercise.set_up, *(chosen.set_up if chosen else ()), *_range(exercise, dose)]),
        _choice(picks) if len(picks) > 1 else "",
        element("h4", "Aim"),
        listed([*exercise.cues, *(chosen.cues if chosen else ())]),
        _watch(exercise),
    ]
    return f"<article>\n{head}{''.join(parts)}</article>\n"


def _side(exercise: Exercise, plan: Plan) -> str:
    if exercise.works == "both sides":
        return f"Both sides, watch the {plan.side} arm"
    return f"{plan.side.capitalize()} arm"


def _more(exercise: Exercise, line: Prescription, dose: Dose, plan: Plan) -> list[str]:
    said = _by_the_table(exercise, line, dose, plan)
    if dose.tempo:
        said.append(f"{titled(dose.tempo)}.")
    if dose.sets > 1 and dose.rest_s:
        said.append(f"Rest {dose.rest_s} s after each set.")
    if line.apart_days > 1:
        said.append(f"Next time {line.apart_days} days later, not sooner.")
    elif line.apart_days == 1:
        said.append("Once a day at most." if exercise.family != "mobility" else "Any day.")
    opened = next(
        (one for one in plan.opened if one.what in (exercise.name, exercise.family)), None
    )
    if opened is not None and opened.day > plan.starts:
        said.append(f"Not before {_day(opened.day)}.")
    if exercise.equipment:
        said.append(f"You need: {', '.join(exercise.equipment)}.")
    return said


def _by_the_table(exercise: Exercise, line: Prescription, dose: Dose, plan: Plan) -> list[str]:
    """Each set of its own where a table drives the weight; nothing where none does."""
    if not driving_set(exercise, line):
        return []
    reps = (dose.reps_low, dose.reps_high)
    lines = set_lines(dose.load, reps, dose.sets, plan.loads_at_home)
    sets = [dose._replace(reps_low=s.reps_low, reps_high=s.reps_high, load=s.load) for s in lines]
    return [f"Set {n}: {amount(one)}, {one.load.words()}." for n, one in enumerate(sets, 1)]


def _range(exercise: Exercise, dose: Dose) -> list[str]:
    return [step.sentence for step in exercise.ranges if step.name == dose.range_step]


def _choice(picks: tuple[Version, ...]) -> str:
    """The versions an athlete may choose from, each with its own words."""
    items = [
        " ".join((f"{titled(one.name)}: {one.fits}".rstrip(": "), *one.set_up, *one.cues))
        for one in picks
    ]
    return element("h4", "Pick the one that fits") + listed(items)


def _watch(exercise: Exercise) -> str:
    if not exercise.faults:
        return ""
    items = [f'"{fault.felt_as}" {fault.put_right}' for fault in exercise.faults]
    return element("h4", "If you feel this, do that") + listed(items)


def _throwing(plan: Plan) -> str:
    line = plan.throwing_line
    if line is None:
        words = f"Your plan opens no throwing. Only {clinician_name(plan.calls)} can change that."
    else:
        words = (
            f"Opened by {line.who} on {_day(line.cleared)}: steps {line.from_step} to "
            f"{line.most_step} of {_table_words(line.table)}. {_first_step(plan)}"
            "Throw only what Coach shows that day. "
            f"Over pain {plan.pain.in_throwing:g} of 10: stop throwing."
        )
    return f'<section class="together">\n<h2>Throwing</h2>\n{element("p", words)}</section>\n'


def _table_words(table: str) -> str:
    return "your clinician's own table" if table == OWN_STEPS else f"the table {table}"


def _first_step(plan: Plan) -> str:
    """The step the plan begins with, in its unit and with its distances; later ones are not told."""
    line, table = plan.throwing_line, table_of(plan)
    if line is None or table is None:
        return ""
    parts = table.steps[line.from_step - 1].parts()
    words = ", ".join(part_words(part, table) for part in parts)
    return f"It begins with step {line.from_step}, {plan.side} arm: {words or 'play'}. "


# ---------------------------------------------------------------- warning signs


def _signs(plan: Plan) -> str:
    """Every sign that is asked of this athlete, by how soon somebody must be reached."""
    person = person_from(plan, date.fromisoformat(plan.starts))
    asked = dict.fromkeys(flag for one in Section for flag in flags_asked(one, person))
    calls, name = plan.calls, clinician_name(plan.calls)
    today = f"call {name} today: {calls.clinician.number}{clinician_hours(calls)}."
    if calls.urgent is not None:
        today += f" Else {calls.urgent.who}: {calls.urgent.number}."
    tiers = (
        (Tier.EMERGENCY_NOW, f"Call {calls.emergency.number} now."),
        (Tier.SAME_DAY, titled(today)),
        (Tier.BEFORE_NEXT_SESSION, f"Call {name} before the next time: {calls.clinician.number}."),
    )
    body = "".join(
        f"<section>\n<h3>{element('span', what).strip()}</h3>\n{listed(_said(asked, tier))}</section>\n"
        for tier, what in tiers
    )
    crisis = (
        f"If you think of harming yourself, call {calls.crisis.number} now. "
        f"If you may act on it, call {calls.emergency.number}."
    )
    return (
        element("h2", "When to stop and call", "new")
        + element("p", "If one of these is true, stop all work and all throwing.")
        + body
        + element("p", crisis, "box")
        + element("p", f"After any of these, only {name} can open the plan again.")
    )


def _said(asked: dict[str, None], tier: Tier) -> list[str]:
    return [FLAGS[flag].say for flag in asked if FLAGS[flag].tier is tier and flag != _CRISIS]


def _count(number: int, noun: str) -> str:
    return f"{number} {noun}" if number == 1 else f"{number} {noun}s"
