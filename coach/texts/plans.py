"""A plan file to a `Plan`: one athlete, whose numbers are all written here.

Law: a cap, a ceiling, a person or a date that is missing is a finding, never a default. Locked
things open only by name, date and person.
"""

from __future__ import annotations

import re
from typing import Final

from coach.model.program import (
    Calls,
    ClearanceWord,
    Limits,
    Opened,
    PainCeilings,
    Place,
    Plan,
    Prescription,
    Program,
)
from coach.model.quantities import Call, Load
from coach.texts import facts, values
from coach.texts.clearances import read_throwing
from coach.texts.doses import read_dose
from coach.texts.fields import Fields, only_map
from coach.texts.game_pitches import read_game_pitches
from coach.texts.margin import Margin, did_you_mean, near_line
from coach.texts.own_steps import read_own_steps
from coach.texts.plain_words import PLAIN_WORDS
from coach.texts.programs import numbered_name
from coach.texts.signing import BITS_A_WORD, KEY_WORDS
from coach.texts.yaml_lines import Listed, Mapped, Text

KEYS: Final = (
    "plan",
    "program",
    "about",
    "language",
    "athlete",
    "guardian",
    "side",
    "surgery",
    "runs",
    "phase",
    "works with",
    "call",
    "clearance",
    "clearance words",
    "signature",
    "pain",
    "limits",
    "at home",
    "opened",
    "throwing",
    "throwing steps",
    "game pitches",
    "not used",
    "changed rules",
    "doses",
)
_BORN: Final = re.compile(r"born ((?:19|20)[0-9]{2}-(?:0[1-9]|1[0-2]))")
_INITIALS: Final = re.compile(r"(?:[A-Z]\.){1,4}")
_HASH: Final = re.compile(r"[0-9a-f]{16,64} [0-9a-f]{64,128}")
KEY_WORD_LIST: Final = 2**BITS_A_WORD
WAYS: Final = ("by word", "in person", "new plan")
PRESENCE: Final = {  # the words of the plan -> the model's
    "present at every session": "every session",
    "present at the first session": "first session",
}
PAIN_MOST: Final = {  # pain.ceilings: never above 5 in exercise, 0 in throwing; practice
    "usual": 5,
    "to start": 5,
    "in exercise": 5,
    "gentle": 5,
    "in throwing": 0,
}
PAIN_LINE: Final = (
    "pain: usual NUMBER, to start NUMBER, in exercise NUMBER, gentle NUMBER, in throwing 0"
)
LIMITS_MOST: Final = {
    "exercises": 20,
    "minutes": 180,
    "sessions a week": 14,
}  # set here
LIMITS_LINE: Final = "limits: exercises NUMBER, minutes NUMBER, sessions a week NUMBER"
# rule id -> unit, lowest, highest: the rules a plan may change; outer limits set here
CHANGEABLE: Final = {
    "ready.sleep": values.Bounds("h", 3, 10, whole=False),
    "layoff.gap": values.Bounds("days", 3, 14),
}


def read_plan_tree(tree: Mapped, program: Program, margin: Margin) -> Plan:
    """The plan as far as it can be read; the margin tells whether it may be used."""
    fields = Fields(tree, margin, "The plan")
    called = fields.text("plan", "plan: L.V. 1")
    name, version = numbered_name(called, margin, "plan")
    initials = _initials(called, name, margin)
    _same_program(fields, program)
    born, sport = _athlete(fields)
    starts, review_by, runs_place = _runs(fields)
    guardian, presence = _guardian(fields)
    phase, phase_opened = _phase(fields, program)
    clearance, clearance_place = _clearance(fields)
    signature = _signature(fields)
    at_home, loads = _at_home(fields)
    side = fields.text("side", "side: left (or right)")
    own = read_own_steps(fields)
    line = read_throwing(fields, own)
    changed, changed_places = _changed(fields)
    plan = Plan(
        name=name,
        initials=initials,
        version=version,
        program=program.name,
        language=_language(fields, program),
        born=born,
        sport=sport,
        guardian=guardian,
        side=_side(side, margin),
        surgery=_surgery(fields),
        starts=starts,
        review_by=review_by,
        phase=phase,
        phase_opened=phase_opened,
        calls=_calls(fields),
        clearance=clearance,
        words=_words(fields),
        pain=_pain(fields),
        limits=_limits(fields),
        at_home=at_home,
        loads_at_home=loads,
        opened=_opened(fields),
        not_used=_not_used(fields, program),
        doses=_doses(fields, program, loads),
        changed=changed,
        side_place=side.place if side else tree.place,
        runs_place=runs_place,
        place=tree.place,
        throwing_line=line,
        own_steps=own,
        game_pitches=read_game_pitches(fields),
        guardian_present=presence,
        works_with=_works_with(fields),
        clearance_place=clearance_place,
        changed_places=changed_places,
        signature=signature.value if signature else "",
        signature_place=signature.place if signature else None,
    )
    fields.node("about")
    fields.close(KEYS)
    return plan


def _initials(called: Text | None, name: str, margin: Margin) -> str:
    initials = name.rpartition(" ")[0]
    if called is not None and initials and not _INITIALS.fullmatch(initials):
        what = f'A plan is called by initials and a number, not "{name}".'
        margin.note("plan.initials", called.place, what, "plan: L.V. 1")
    return initials


def _same_program(fields: Fields, program: Program) -> None:
    text = fields.text("program", f"program: {program.name}")
    if text is not None and text.value != program.name:
        what = f'The plan is for "{text.value}", and the program is "{program.name}".'
        write = f"program: {program.name}"
        fields.margin.note("plan.program", text.place, what, write, also=program.place)


def _language(fields: Fields, program: Program) -> str:
    text = fields.text("language")
    if text is None:
        return program.languages[0]
    return values.one_of(text, fields.margin, program.languages, "The language") or ""


def _works_with(fields: Fields) -> tuple[str, ...]:
    text = fields.text("works with")
    return tuple(piece.value for piece in values.pieces(text)) if text else ()


def _athlete(fields: Fields) -> tuple[str, str]:
    text = fields.text("athlete", "athlete: born YEAR-MONTH, SPORT")
    if text is None:
        return "", ""
    first, _, sport = text.value.partition(",")
    match = _BORN.fullmatch(first.strip())
    if match is None:
        what = f'"{first.strip()}" is not a birth month.'
        fields.margin.note("plan.born", text.place, what, "athlete: born YEAR-MONTH, SPORT")
    if not sport.strip():
        what = "The line does not say the sport."
        fields.margin.note("plan.sport", text.place, what, f"athlete: {first}, SPORT")
    return match.group(1) if match else "", sport.strip()


def _guardian(fields: Fields) -> tuple[Call | None, str]:
    text = fields.text("guardian")
    if text is None:
        return None, ""
    found = [piece.value for piece in values.pieces(text)]
    phone = next((piece for piece in found if values.is_phone(piece)), "")
    presence = next((piece for piece in found if piece in PRESENCE), "")
    who = ", ".join(piece for piece in found if piece not in (phone, presence))
    if not phone or not presence:
        lacks = "a number to call" if not phone else "when the guardian is present"
        write = "guardian: INITIALS, present at every session, NUMBER"
        fields.margin.note("guardian.pieces", text.place, f"The line does not say {lacks}.", write)
    return Call(phone, who or "your guardian"), PRESENCE.get(presence, "every session")


def _side(text: Text | None, margin: Margin) -> str:
    if text is None:
        return ""
    return values.one_of(text, margin, ("left", "right"), "The side") or ""


def _surgery(fields: Fields) -> str:
    write = "surgery: none"
    text = fields.text("surgery", write)
    if text is None or text.value == "none":
        return "none"
    day, comma, what_done = text.value.partition(",")
    if not comma or not what_done.strip():
        what = "The line says neither none nor the day and what was done."
        fields.margin.note("plan.surgery", text.place, what, "surgery: DATE, WHAT WAS DONE")
        return text.value
    values.date(Text(day.strip(), text.place), fields.margin, "The day of surgery")
    return text.value


def _runs(fields: Fields) -> tuple[str, str, Place]:
    write = "runs: DATE, review by DATE"
    text = fields.text("runs", write)
    if text is None:
        return "", "", fields.place
    found = values.pieces(text)
    if len(found) != 2 or not found[1].value.startswith("review by "):  # noqa: PLR2004  two pieces
        what = "The line does not say from when the plan runs and when it is reviewed."
        fields.margin.note("plan.runs", text.place, what, write)
        return "", "", text.place
    starts = values.date(found[0], fields.margin, "The start")
    lead = "review by "
    said = Text(found[1].value.removeprefix(lead), values.place_after(found[1], len(lead)))
    review = values.date(said, fields.margin, "The review date")
    return starts or "", review or "", text.place


def _phase(fields: Fields, program: Program) -> tuple[str, Opened]:
    names = [phase.name for phase in program.phases]
    first = names[0] if names else "settle"
    write = f"phase: {first}, opened DATE by WHO"
    nothing = Opened("", "", "", fields.place)
    text = fields.text("phase", write)
    if text is None:
        return "", nothing
    name, comma, rest = text.value.partition(", opened ")
    if name not in names:
        what = f'The program has no phase "{name}".{did_you_mean(name, names)}'
        fields.margin.note("phase.unknown", text.place, what, write)
    if not comma:
        what = "The line does not say when the phase was opened, and by whom."
        fields.margin.note("phase.opened", text.place, what, write)
        return name, nothing
    said = Text(f"{name} {rest}", text.place)
    return name, values.opened(said, fields.margin) or nothing


def _calls(fields: Fields) -> Calls:
    write = "call:\n  emergency: NUMBER, WHO"
    node = fields.node("call", write)
    tree = only_map(node, fields.margin, '"call"')
    place = node.place if node else fields.place
    if tree is None:
        blank = Call("", "")
        return Calls(blank, blank, blank, None, place)
    lines = Fields(tree, fields.margin, "The list of whom to call")
    calls = Calls(
        _call(lines, "emergency", "NUMBER, WHO"),
        _call(lines, "crisis line", "NUMBER, WHO"),
        _call(lines, "clinician", "NUMBER, WHO"),
        _call(lines, "urgent", "") if lines.pair("urgent") else None,
        place,
    )
    lines.close(("emergency", "crisis line", "clinician", "urgent"))
    return calls


def _call(lines: Fields, key: str, example: str) -> Call:
    text = lines.text(key, f"{key}: {example}" if example else "")
    return (values.call(text, lines.margin, key) if text else None) or Call("", "")


def _clearance(fields: Fields) -> tuple[tuple[str, ...], Place | None]:
    found = fields.names("clearance", "clearance: in person, new plan")
    ways = [values.one_of(piece, fields.margin, WAYS, "The way") for piece in found]
    return tuple(way for way in ways if way), found[0].place if found else None


def _words(fields: Fields) -> tuple[ClearanceWord, ...]:
    found: list[ClearanceWord] = []
    for item in fields.listed("clearance words"):
        if isinstance(item, Text) and _HASH.fullmatch(item.value):
            salt, digest = item.value.split(" ")
            found.append(ClearanceWord(salt, digest))
        else:
            what = "A clearance word stands here that the binding did not make."
            fields.margin.note("clearance.word_by_hand", item.place, what)
    return tuple(found)


def _signature(fields: Fields) -> Text | None:
    """The words of the key that must sign the plan, as the binding shows them."""
    text = fields.text("signature")
    if text is None:
        return None
    words = text.value.split(" ")
    strange = next((word for word in words if word not in PLAIN_WORDS[:KEY_WORD_LIST]), "")
    if strange:
        place = values.place_after(text, text.value.index(strange))
        what = f'"{strange}" is no word of a key.{did_you_mean(strange, PLAIN_WORDS)}'
        write = near_line(fields.margin, place, strange, PLAIN_WORDS)
        fields.margin.note("signature.words", place, what, write)
    elif len(words) != KEY_WORDS:
        what = f"The words of a key are {KEY_WORDS}, and {len(words)} stand here."
        fields.margin.note("signature.words", text.place, what)
    return text


def _named_numbers(
    fields: Fields, key: str, most: dict[str, int], line: str
) -> tuple[dict[str, float], Place]:
    text = fields.text(key, line)
    if text is None:
        return {}, fields.place
    found: dict[str, float] = {}
    understood = True
    for piece in values.pieces(text):
        name, _, figure = piece.value.rpartition(" ")
        if name not in most:
            what = f'"{piece.value}" is no piece of this line.{did_you_mean(name, most)}'
            fields.margin.note(f"{key}.piece", piece.place, what, line)
            understood = False
            continue
        said = Text(figure, values.place_after(piece, len(name) + 1))
        low = 0 if key == "pain" else 1
        bounds = values.Bounds("", low, most[name], whole=True)
        number = values.number(said, fields.margin, bounds, f'"{name}"')
        found[name] = number if number is not None else float(low)
    for name in most:
        if name not in found and understood:
            what = f'The line on {key} does not say "{name}".'
            write = f"{key}: {text.value}, {name} NUMBER"
            fields.margin.note(f"{key}.missing", text.place, what, write)
    return found, text.place


def _pain(fields: Fields) -> PainCeilings:
    said, place = _named_numbers(fields, "pain", PAIN_MOST, PAIN_LINE)
    return PainCeilings(
        to_start=said.get("to start", 0),
        in_exercise=said.get("in exercise", 0),
        gentle=said.get("gentle", 0),
        in_throwing=said.get("in throwing", 0),
        usual=said.get("usual", 0),
        place=place,
    )


def _limits(fields: Fields) -> Limits:
    said, place = _named_numbers(fields, "limits", LIMITS_MOST, LIMITS_LINE)
    return Limits(
        int(said.get("exercises", 1)),
        int(said.get("minutes", 1)),
        int(said.get("sessions a week", 1)),
        place,
    )


def _at_home(fields: Fields) -> tuple[tuple[str, ...], tuple[Load, ...]]:
    found = fields.names("at home", "at home: WHAT IS THERE")
    loads = [values.load_at_home(piece, fields.margin) for piece in found]
    return tuple(piece.value for piece in found), tuple(load for load in loads if load)


def _opened(fields: Fields) -> tuple[Opened, ...]:
    node = fields.node("opened")
    if node is None:
        return ()
    if isinstance(node, Listed):
        texts = [item for item in node.items if isinstance(item, Text)]
    else:
        text = values.plain_text(node, fields.margin, "opened")
        texts = values.pieces(text) if text else []
    found = [_opened_family(text, fields.margin) for text in texts]
    return tuple(one for one in found if one is not None)


def _opened_family(text: Text, margin: Margin) -> Opened | None:
    opened = values.opened(text, margin)
    if opened is not None and opened.what not in facts.LOCKED_FAMILIES:
        near = did_you_mean(opened.what, facts.LOCKED_FAMILIES)
        what = f'"{opened.what}" is no locked family.{near}'
        write = near_line(margin, text.place, opened.what, facts.LOCKED_FAMILIES)
        margin.note("opened.unknown", text.place, what, write)
    return opened


def _not_used(fields: Fields, program: Program) -> tuple[str, ...]:
    found = fields.names("not used")
    known = [exercise.name for exercise in program.exercises]
    for piece in found:
        if piece.value not in known and not fields.margin.is_half_read("exercises"):
            what = f'"not used" names "{piece.value}", and there is no such exercise.'
            what += did_you_mean(piece.value, known)
            write = near_line(fields.margin, piece.place, piece.value, known)
            fields.margin.note("exercise.unknown", piece.place, what, write)
    return tuple(piece.value for piece in found)


def _doses(fields: Fields, program: Program, home: tuple[Load, ...]) -> tuple[Prescription, ...]:
    node = fields.node("doses", "doses:\n  EXERCISE:\n    sets: NUMBER only")
    tree = only_map(node, fields.margin, '"doses"')
    by_name = {exercise.name: exercise for exercise in program.exercises}
    found: list[Prescription] = []
    for pair in tree.pairs if tree else ():
        exercise = by_name.get(pair.key.value)
        if exercise is None and fields.margin.is_half_read("exercises"):
            continue
        if exercise is None:
            what = f'A dose for "{pair.key.value}", and there is no such exercise.'
            what += did_you_mean(pair.key.value, by_name)
            write = near_line(fields.margin, pair.key.place, pair.key.value, by_name)
            fields.margin.note("dose.exercise_unknown", pair.key.place, what, write)
            continue
        lines = only_map(pair.value, fields.margin, "A dose")
        dose = read_dose(pair.key, lines, exercise, home, fields.margin) if lines else None
        if dose is not None:
            found.append(dose)
    return tuple(found)


def _changed(fields: Fields) -> tuple[tuple[tuple[str, float], ...], tuple[Place, ...]]:
    tree = only_map(fields.node("changed rules"), fields.margin, '"changed rules"')
    found: list[tuple[str, float]] = []
    places: list[Place] = []
    for pair in tree.pairs if tree else ():
        text = values.plain_text(pair.value, fields.margin, pair.key.value)
        number = _changed_number(pair.key, text, fields.margin) if text else None
        if number is not None:
            found.append((pair.key.value, number))
            places.append(pair.key.place)
    return tuple(found), tuple(places)


def _changed_number(key: Text, text: Text, margin: Margin) -> float | None:
    bounds = CHANGEABLE.get(key.value)
    if bounds is None:
        what = f'A plan cannot change "{key.value}".{did_you_mean(key.value, CHANGEABLE)}'
        margin.note("changed.rule", key.place, what, " or ".join(CHANGEABLE))
        return None
    amount, comma, reason = text.value.partition(", because ")
    if not comma or not reason.strip():
        what = f'The change of "{key.value}" does not say why.'
        margin.note("changed.reason", text.place, what, f"{key.value}: {amount}, because REASON")
        return None
    return values.number(Text(amount, text.place), margin, bounds, f'"{key.value}"')
