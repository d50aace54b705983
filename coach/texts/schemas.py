"""A JSON Schema for each kind of file, for editors: keys, closed lists, and a sentence on each.

Law: it is made from the same lists that the check reads, in two builds that differ in nothing but
the words of the draft. It takes any scalar, as the format knows no types; what fits together is
known to the check alone.
"""

from __future__ import annotations

import json
from typing import Any, Final

from coach.model.throws import OWN_STEPS, UNITS
from coach.rules.throwing_tables import STEP_TABLES
from coach.texts import doses, exercises, facts, plans, programs, scenarios

Schema = dict[str, Any]
KINDS: Final = ("program", "exercise", "script", "plan", "course", "scenario")
DRAFTS: Final = {
    "2020-12": ("https://json-schema.org/draft/2020-12/schema", "$defs"),
    "draft-07": ("http://json-schema.org/draft-07/schema#", "definitions"),
}
_LANGUAGE: Final = "in [A-Z][a-z]+"

# What stands after each key, in one sentence. A test holds these to the keys that the check knows.
WORDS: Final[dict[str, dict[str, str]]] = {
    "program": {
        "program": "Name and number of the program.",
        "about": "For whom and what, in one line.",
        "written by": "Who wrote it.",
        "languages": "One or two languages, the first the one you write in.",
        "questions": "At most how many questions before the first set and after a set.",
        "walls": "Outer limits that no plan may pass, for an exercise, for pain or for limits.",
        "warm-up": "Exercises of the warm-up, with commas.",
        "gentle": "Exercises without load for days of pain.",
        "twice a day": "Mobility that a second session on a day may offer.",
        "recovery": "Exercises for the day after hard throwing.",
        "phases": "Phases in order, each with its exercises and what opens it.",
        "heard too": "Phrases to be heard as a warning sign, under the name of the sign.",
    },
    "exercise": {
        "exercise": "Name of the exercise, in small letters.",
        "family": "What it works on; a locked family waits until a plan opens it.",
        "works": "One side, or both sides.",
        "counted in": "Reps, or holds.",
        "load": "The kind of load, or none.",
        "equipment": "What it needs, with commas.",
        "set-up": "How to get into position, one sentence a dash.",
        "cues": "What moves where; one cue a set, in this order.",
        "watch for": "Faults: name, how it feels, what puts it right, what if it stays.",
        "range": "Steps of the range, shortest first, each a name and a sentence.",
        "versions": "Versions, easiest first.",
        "stand-in for band": "What may stand in for something that is not at home.",
    },
    "plan": {
        "plan": "Initials and number of the plan.",
        "program": "The program it is for, with its number.",
        "about": "A line for the reader; the coach does nothing with it.",
        "language": "The language the athlete reads.",
        "athlete": "Birth month and sport.",
        "guardian": "Under 18: who, when present, and a number.",
        "side": "The side that is worked on.",
        "surgery": "None, or the day and what was done.",
        "runs": "First day, and the day of review.",
        "phase": "The phase, and when and by whom it was opened.",
        "works with": "Who else treats the athlete.",
        "call": "Whom a stop names, with numbers.",
        "clearance": "How a stop may be lifted.",
        "clearance words": "Made by the binding; never written by hand.",
        "signature": "The words of the key that must sign the plan, as coach bind --key shows them.",
        "pain": "Pain numbers, 0 to 10, over which something ends.",
        "limits": "Most exercises and minutes a session, and sessions a week.",
        "at home": "What the athlete has, with commas.",
        "opened": "Locked families that are open, by name, date and person.",
        "throwing": "Not cleared, or when, by whom, on which table and which steps.",
        "throwing steps": "The clinician's own table: what is counted, then step by step.",
        "game pitches": "Who pitches in games, and which editions of the pitch limits count.",
        "not used": "Exercises of the program that this plan leaves out.",
        "changed rules": "Rules with another number, each with its reason.",
        "doses": "A dose for each exercise, line by line.",
    },
    "dose": {
        "sets": "Sets: a number and only, or opening, step, days and cap.",
        "reps": "Reps or holds a set: a range, its step, its cap.",
        "hold": "Seconds of each hold.",
        "load": "The load with its unit, its step (a weight, or `dapre from set 3`) and its cap.",
        "range": "A step of the exercise's range, after how many days the next, and the last.",
        "versions": "Versions allowed, the first to begin with.",
        "rest": "Seconds of rest between sets.",
        "tempo": "How slowly the weight goes down.",
        "goes up": "The order in which the lines go up.",
        "apart": "Days from one time to the next.",
    },
}
_REQUIRED: Final = {
    "program": ("program", "warm-up", "phases"),
    "exercise": (*("exercise", "family", "works", "counted in", "load", "set-up", "cues"),),
    "script": ("script", "lines"),
    "plan": (
        *("plan", "program", "athlete", "side", "surgery", "runs", "phase", "call", "clearance"),
        *("pain", "limits", "at home", "throwing", "doses"),
    ),
    "course": ("course", "usual"),
    "scenario": ("scenario", "plan", "days"),
}


def schema_text(kind: str, draft: str) -> str:
    """The schema of a kind of file as JSON text."""
    return json.dumps(schema(kind, draft), indent=1, ensure_ascii=True) + "\n"


def schema(kind: str, draft: str) -> Schema:
    """The schema of a kind of file; `draft` is 2020-12 or draft-07."""
    address, store = DRAFTS[draft]
    made = _BUILD[kind](f"#/{store}")
    defs = made.pop("defs", {})
    head: Schema = {"$schema": address, "title": f"Coach, kind of file: {kind}"}
    return {**head, **made, **({store: defs} if defs else {})}


# ---------------------------------------------------------------- pieces


def _words(said: str = "") -> Schema:
    made: Schema = {"type": ["string", "number", "boolean"]}
    return {**made, "description": said} if said else made


def _one_of(known: tuple[str, ...], said: str = "") -> Schema:
    made: Schema = {"enum": list(known)}
    return {**made, "description": said} if said else made


def _pattern(form: str, said: str = "") -> Schema:
    return {**_words(said), "pattern": form}


def _list(item: Schema, said: str = "") -> Schema:
    made: Schema = {"type": "array", "minItems": 1, "items": item}
    return {**made, "description": said} if said else made


def _map(
    keys: Schema,
    required: tuple[str, ...] = (),
    patterns: Schema | None = None,
    said: str = "",
) -> Schema:
    made: Schema = {"type": "object", "properties": keys, "additionalProperties": False}
    if required:
        made["required"] = list(required)
    if patterns:
        made["patternProperties"] = patterns
    return {**made, "description": said} if said else made


def _any_map(value: Schema, said: str = "") -> Schema:
    made: Schema = {"type": "object", "minProperties": 1, "additionalProperties": value}
    return {**made, "description": said} if said else made


def _translated(keys: tuple[str, ...], value: Schema) -> Schema:
    return {f"^({'|'.join(keys)}) {_LANGUAGE}$": value}


def _described(kind: str, keys: tuple[str, ...]) -> Schema:
    return {key: _words(WORDS[kind][key]) for key in keys}


# ---------------------------------------------------------------- the kinds


def _program(_store: str) -> Schema:
    said = WORDS["program"]
    phase = _map(
        {
            "phase": _words("Name of the phase."),
            "opens when": _words("What plan and diary must show; a proposal, never an opening."),
            "clinician sees": _words("What you must see before it opens, in one sentence."),
            "exercises": _words("Its exercises in order, with commas."),
        },
        ("phase", "exercises"),
    )
    sentences = _list(_words())
    keys = _described("program", programs.KEYS)
    keys["about"] = {"anyOf": [_words(), sentences], "description": said["about"]}
    keys["walls"] = _any_map(_words(), said["walls"])
    keys["phases"] = _list(phase, said["phases"])
    keys["heard too"] = _map(dict.fromkeys(facts.FLAG_NAMES, sentences), said=said["heard too"])
    return _map(keys, _REQUIRED["program"])


def _exercise(_store: str) -> Schema:
    said = WORDS["exercise"]
    sentences = _list(_words())
    fault = _map(
        {
            "name": _words("A short name; it is one of the answers to how the set felt."),
            "felt as": _words("What the athlete would say."),
            "put right": _words("What mends it, in one sentence."),
            "if it stays": _one_of(facts.IF_IT_STAYS, "What happens three sets running."),
        },
        ("name", "felt as", "put right"),
        _translated(("felt as", "put right"), _words()),
    )
    version = _map(
        {
            "version": _words("Name of the version."),
            "level": _words("1 is easiest; the same level may be picked by the athlete."),
            "fits": _words("Whom it fits, in the athlete's words."),
            "set-up": sentences,
            "cues": sentences,
        },
        ("version",),
        {**_translated(("fits",), _words()), **_translated(("set-up", "cues"), sentences)},
    )
    keys = _described("exercise", tuple(key for key in exercises.KEYS if key in said))
    keys |= {
        "family": _one_of(facts.FAMILIES + facts.LOCKED_FAMILIES, said["family"]),
        "works": _one_of(facts.WORKS, said["works"]),
        "counted in": _one_of(facts.COUNTED_IN, said["counted in"]),
        "load": _one_of(facts.LOADS, said["load"]),
        "set-up": _list(_words(), said["set-up"]),
        "cues": _list(_words(), said["cues"]),
        "watch for": _list(fault, said["watch for"]),
        "range": _list(_any_map(_words()), said["range"]),
        "versions": _list(version, said["versions"]),
    }
    patterns = {
        "^stand-in for .+$": _words(said["stand-in for band"]),
        **_translated(("set-up", "cues"), sentences),
    }
    return _map(keys, _REQUIRED["exercise"], patterns)


def _script(store: str) -> Schema:
    asks = dict.fromkeys(fact.name for found in facts.ASKS.values() for fact in found)
    ask = _map(
        {
            "ask": _one_of(
                (*asks, *facts.SAME_ASK, *facts.FLAG_NAMES), "The coach's own question."
            ),
            "words": _words("The question only; the coach adds scale, unit and choices."),
            "wording": _words("A screen question in its second reviewed wording."),
        },
        ("ask",),
        _translated(("words",), _words()),
    )
    also = _map(
        {
            "ask also": _words("Your own question, by the name of its fact."),
            "words": _words("One question, with its question mark."),
            "answers": _words("yes or no, pain 0 to 10, number ..., names, or own words."),
            "every": _words("How many days it is spared after it was asked, such as 7 days."),
        },
        ("ask also", "words", "answers"),
        _translated(("words", "answers"), _words()),
    )
    tell = _map(
        {"tell": _words("A sentence to the athlete.")}, ("tell",), _translated(("tell",), _words())
    )
    acts = _map(
        {
            "note": _words("A line for the visit."),
            "stop": _one_of(facts.STOPS, "Closes the plan; the last line of its branch."),
            "today": _words(f"One of, with commas: {', '.join(facts.TODAY)}."),
            **{effect: _words("An exercise, all, or this exercise.") for effect in facts.EFFECTS},
        }
    )
    acts |= {"minProperties": 1, "maxProperties": 1}
    lines = {"$ref": f"{store}/lines"}
    when: Schema = {
        "type": "object",
        "description": "A branch: its lines are said only when the comparison holds.",
        "minProperties": 1,
        "maxProperties": 1,
        "patternProperties": {"^when .+ is .+$": lines},
        "additionalProperties": False,
    }
    made = _map(
        {
            "script": _one_of(facts.MOMENTS, "The moment whose talk this is."),
            "lines": {**lines},
        },
        _REQUIRED["script"],
    )
    made["defs"] = {"lines": _list({"anyOf": [tell, ask, also, when, acts]})}
    return made


def _plan(_store: str) -> Schema:
    said = WORDS["plan"]
    keys = _described("plan", plans.KEYS)
    call = _map(
        {
            "emergency": _words("Number and who answers."),
            "crisis line": _words("Number and who answers."),
            "urgent": _words("Number and who answers, for the same day out of hours."),
            "clinician": _words("Number, name, and when the phone is answered."),
        },
        ("emergency", "crisis line", "clinician"),
        said=said["call"],
    )
    dose = _map(
        _described("dose", doses.KEYS),
        ("sets", "reps"),
        {"^without .+$": _words("stand-in, or another exercise of the phase that has a dose.")},
    )
    tables = ", ".join((*STEP_TABLES, OWN_STEPS))
    steps = _map(
        {"counted in": _one_of(UNITS, "What the table counts.")},
        ("counted in",),
        {"^step [1-9][0-9]*$": _words("Such as 10 throws at 12 m, 10 throws at 18 m.")},
        said=said["throwing steps"],
    )
    either = [_words(), _list(_words())]
    keys |= {
        "side": _one_of(("left", "right"), said["side"]),
        "athlete": _pattern("^born [0-9]{4}-[0-9]{2}, .+$", said["athlete"]),
        "runs": _pattern("^[0-9]{4}-[0-9]{2}-[0-9]{2}, review by [0-9-]{10}$", said["runs"]),
        "throwing": _pattern("^(not cleared|cleared .+)$", f"{said['throwing']} Tables: {tables}."),
        "throwing steps": steps,
        "call": call,
        "opened": {"anyOf": either, "description": said["opened"]},
        "clearance words": _list(_words(), said["clearance words"]),
        "changed rules": _map(
            {
                rule: _words("The number with its unit, because REASON.")
                for rule in plans.CHANGEABLE
            },
            said=said["changed rules"],
        ),
        "doses": _any_map(dose, said["doses"]),
    }
    return _map(keys, _REQUIRED["plan"])


def _typed_list() -> Schema:
    return _list(_any_map(_words()))


def _course(_store: str) -> Schema:
    weeks = _map(
        {
            "weeks": _words("Which weeks, such as 4 to 5."),
            "on": _words("On which days of the week."),
            "trains": _words("On which days there is a session, or never."),
            "usual": _typed_list(),
        },
        ("weeks",),
    )
    keys = {
        "course": _words("Name of the course."),
        "trains": _words("On which days of the week there is a session, or never."),
        "usual": {**_typed_list(), "description": "What is typed, prompt by prompt."},
        "weeks": _list(weeks, "What differs in some weeks of a forecast."),
    }
    return _map(keys, _REQUIRED["course"])


def _scenario(_store: str) -> Schema:
    checks = _any_map(_words())
    day = _map(
        {
            "day": _words("A day and its time, such as 2026-11-09 at 18:30."),
            "days": _words("Days with commas, or from day to day every so many days, and a time."),
            "plan": _words("Another plan, used from this day on, as a path."),
            "talk": _list(checks, "What is typed, and checks at that place, in order."),
            "all day": _list(
                _map({check: _words() for check in scenarios.CHECKS}),
                "What must hold from start to end.",
            ),
        }
    )
    keys = {
        "scenario": _words("What it shows, in one line."),
        "plan": _words("The plan, as a path."),
        "usual": {
            "anyOf": [_words(), _typed_list()],
            "description": "The name of a course, or what is typed where no day says.",
        },
        "days": _list(day, "The days of talk; a day not named is a missed day."),
    }
    return _map(keys, _REQUIRED["scenario"])


_BUILD: Final = {
    "program": _program,
    "exercise": _exercise,
    "script": _script,
    "plan": _plan,
    "course": _course,
    "scenario": _scenario,
}
