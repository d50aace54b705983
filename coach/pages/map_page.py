"""The map: a program's whole conversation on one page, with the real words and their places.

Law: everything the program can say stands on it, open by default, so that a search and a printer
find all of it; folding needs no script and no meaning hangs on a colour.
"""

from __future__ import annotations

from html import escape
from typing import Final, NamedTuple

from coach.model.program import Exercise, Phase, Program, Version
from coach.pages.condition_words import test_words
from coach.pages.map_talk import moment_html, place_html
from coach.pages.paper import element, listed, whole_page
from coach.session.moments import MOMENTS
from coach.session.questions import QUESTIONS
from coach.session.table import ENDS, ROWS, Stage
from coach.texts.yaml_lines import Mapped

_STYLE: Final = """
body{font:16px/1.45 Verdana,"DejaVu Sans",Arial,sans-serif;color:#000;background:#fff;margin:0}
main{max-width:56rem;margin:0 auto;padding:1rem}
h1{font-size:1.5rem;margin:.2rem 0}
h2{font-size:1.2rem;display:inline}
h3{font-size:1.05rem;display:inline}
h4{font-size:1rem;margin:.5rem 0 .1rem}
p{margin:.2rem 0}
nav{border:2px solid #000;padding:.5rem .8rem;margin:.8rem 0}
nav ol{columns:14rem;margin:.2rem 0;padding-left:1.6rem}
a{color:#000}
details.stage{border-top:3px solid #000;padding:.5rem 0;margin-top:.8rem}
details.exercise{border-top:1px solid #000;padding:.3rem 0;margin:.3rem 0}
summary{cursor:pointer;overflow-wrap:anywhere}
ol.talk{padding-left:1.3rem;margin:.3rem 0}
ul{padding-left:1.3rem;margin:.2rem 0}
li{margin:.3rem 0;overflow-wrap:anywhere}
li.branch{list-style:none;margin-left:-1.1rem;border-left:4px solid #000;padding-left:.6rem}
li.stop{border:3px solid #000;padding:.3rem .6rem;font-weight:bold}
.place{font:.82em/1.3 "DejaVu Sans Mono",monospace;white-space:nowrap;border-bottom:1px dotted #000}
.note,.other{font-size:.9em}
@media(max-width:30rem){body{font-size:15px}main{padding:.6rem}.place{white-space:normal}}
@media print{body{font-size:10pt}main{max-width:none;padding:0}details.exercise,li{break-inside:avoid}
li.branch{break-inside:auto}h2,h3,h4,summary{break-after:avoid}nav{break-inside:avoid}
details::details-content{content-visibility:visible!important;block-size:auto!important}}
@page{margin:14mm}
"""
# What happens at a stage beside its script's lines, as a clinician needs to know it.
_ABOUT: Final[dict[str, str]] = {
    "opening": "Nothing is asked. A closed plan, a plan out of date, or a long time away ends here.",
    "who": "On the first day, and where a guardian must be present.",
    "check-in": "Questions with no words of your own may stand together on one line.",
    "screen": "One group is asked alone each day, the rest as a list. Which one, the coach decides.",
    "at hand": "What is not here is left out or stood in for, as the plan says.",
    "today": "The list is made: phase, spacing, caps, pain to start, sleep, throwing, effects.",
    "warm-up": "The list of the day is shown with every dose, then the warm-up.",
    "exercise": "Exercise by exercise, set by set. Pain over the plan's number ends the set.",
    "throwing": "Only where the plan opens throwing. The step is the table's, the caps the plan's.",
    "close": "The day is closed and kept.",
    "ending": "After stop: one question, so that a warning sign is not lost.",
}
_SCRIPTS: Final = {"exercise": ("before an exercise", "after a set")}
_ASKED: Final = {"who": ("plan is mine", "guardian here"), "ending": ("stop for today",)}


class Pages(NamedTuple):
    """What the map is drawn from: the program, and each moment's script with its file."""

    program: Program
    scripts: dict[str, Mapped]


def map_page(pages: Pages) -> str:
    """The whole page as one HTML file."""
    program = pages.program
    stages = [stage for stage in Stage if stage not in ENDS]
    body = _head(program) + _contents(stages, program)
    body += "".join(_stage(stage, pages) for stage in stages)
    body += _ends() + _phases(program) + _exercises(program)
    return whole_page(f"Map of {program.name}", _STYLE, body)


def _head(program: Program) -> str:
    lines = [
        element("h1", f"Map of {program.name}"),
        element("p", program.about) if program.about else "",
        element("p", f"Written by {program.written_by}.") if program.written_by else "",
        element(
            "p",
            "All of it is open, so your browser's search finds every word. Press a line with a "
            "mark before it to fold it. At its end each line names its file and line.",
            "note",
        ),
    ]
    return "".join(lines)


def _contents(stages: list[Stage], program: Program) -> str:
    links = [(f"s-{stage.name.lower()}", f"Stage: {stage.value}") for stage in stages]
    links += [("ends", "How a day ends"), ("phases", "Phases"), ("exercises", "Exercises")]
    links += [(_anchor(one), one.name) for one in program.exercises]
    inside = "".join(f'<li><a href="#{to}">{escape(words)}</a></li>\n' for to, words in links)
    return f'<nav aria-label="Contents">\n<ol>\n{inside}</ol></nav>\n'


def _anchor(exercise: Exercise) -> str:
    return f"e-{exercise.name.replace(' ', '-')}"


def _fold(kind: str, name: str, heading: str, body: str) -> str:
    return (
        f'<details open class="{kind}" id="{escape(name, quote=True)}">'
        f"<summary>{heading}</summary>\n{body}</details>\n"
    )


# ---------------------------------------------------------------- stages


def _stage(stage: Stage, pages: Pages) -> str:
    name = stage.value
    body = element("p", _ABOUT[name])
    for fact in _ASKED.get(name, ()):
        asked = QUESTIONS[fact]
        body += element("p", f"Asks (the coach's question): {asked.ask} {asked.label}")
    for moment in _SCRIPTS.get(name, (name,) if name in MOMENTS else ()):
        if moment != name:
            body += element("h4", moment.capitalize())
        script = pages.scripts.get(moment)
        body += moment_html(moment, script, script.place.file if script else "")
    body += element("p", f"What may follow: {_follows(stage)}.", "note")
    heading = element("h2", f"Stage: {name}").strip()
    return _fold("stage", f"s-{stage.name.lower()}", heading, body)


def _follows(stage: Stage) -> str:
    rows = [row for row in ROWS if row.before is stage]
    return "; ".join(f"{row.after.value} ({row.trigger})" for row in rows)


def _ends() -> str:
    lines = [
        "Done: all of the list was gone through.",
        "Day over: nothing to do today, ended by choice, or answers that stayed unclear.",
        "Closed: the plan was closed before; whom to call is shown, and nothing else.",
        "Stopped: a warning sign. STOP, whom to call, what to say. Only the clinician opens it.",
    ]
    heading = element("h2", "How a day ends").strip()
    return _fold("stage", "ends", heading, listed(lines))


def _phases(program: Program) -> str:
    body = "".join(_phase(phase) for phase in program.phases)
    for title, names in (
        ("Warm-up", program.warm_up),
        ("Gentle list", program.gentle),
        ("Twice a day", program.twice_a_day),
        ("Recovery list", program.recovery),
    ):
        body += element("p", f"{title}: {', '.join(names) or 'none'}.")
    return _fold("stage", "phases", element("h2", "Phases").strip(), body)


def _phase(phase: Phase) -> str:
    parts = [f"<h4>{escape(phase.name)} {place_html(phase.place)}</h4>\n"]
    if phase.opens_when:
        words = " and ".join(test_words(test) for test in phase.opens_when)
        parts.append(element("p", f"Opens when: {words}."))
    if phase.clinician_sees:
        parts.append(element("p", f"The clinician sees: {phase.clinician_sees}"))
    parts.append(element("p", f"In order: {', '.join(phase.exercises)}."))
    return "".join(parts)


# ---------------------------------------------------------------- exercises


def _exercises(program: Program) -> str:
    body = "".join(_exercise(one) for one in program.exercises)
    return _fold("stage", "exercises", element("h2", "Exercises").strip(), body)


def _exercise(one: Exercise) -> str:
    facts = [one.family, one.works, f"counted in {one.counted_in}", f"load: {one.load}"]
    facts.append(f"needs {', '.join(one.equipment)}" if one.equipment else "needs nothing")
    body = element("p", f"{'; '.join(facts)}.", "note")
    body += element("h4", "Position") + listed(one.set_up)
    body += element("h4", "Aims, one a set") + listed(one.cues, "ol")
    if one.faults:
        body += element("h4", "How did that set feel?")
        body += listed([_fault(one, number) for number in range(len(one.faults))])
    if one.ranges:
        body += element("h4", "Range, shortest first")
        body += listed([f"{step.name}: {step.sentence}" for step in one.ranges], "ol")
    body += _versions(one.versions)
    body += listed([f"Stand-in for {what}: {words}" for what, words in one.stand_in])
    heading = f"{element('h3', one.name).strip()} {place_html(one.place)}"
    return _fold("exercise", _anchor(one), heading, body)


def _fault(one: Exercise, number: int) -> str:
    fault = one.faults[number]
    stays = f" If it stays: {fault.if_it_stays}." if fault.if_it_stays else ""
    return f'{fault.name}: "{fault.felt_as}" {fault.put_right}{stays}'


def _versions(versions: tuple[Version, ...]) -> str:
    if not versions:
        return ""
    items = [
        " ".join(part for part in (
            f"{one.name} (level {one.level}).", one.fits, *one.set_up, *one.cues) if part)
        for one in versions
    ]  # fmt: skip
    return element("h4", "Versions, easiest first") + listed(items, "ol")
