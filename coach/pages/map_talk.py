"""The talk of one moment as a tree of lines on the map: every branch where the file has it.

Law: it shows the clinician's own lines with their place, and the coach's reviewed words where the
file gives none. It reads what the check has read; it judges nothing.
"""

from __future__ import annotations

from html import escape
from typing import Final

from coach.model.flags import GROUP_FLAGS, SECTION_GROUPS, Group, Section
from coach.model.program import Place
from coach.pages.paper import element
from coach.rules.red_flags import FLAGS, SECTION_LIST, SECTION_QUESTIONS
from coach.session.moments import COACH_ASKS
from coach.session.questions import QUESTIONS, WORST
from coach.texts.yaml_lines import Listed, Mapped, Node, Pair, Text

_OWN_LABEL: Final = {  # the ends of a scale are the coach's; all else is named below the question
    "yes or no": "Yes or no:",
    "pain 0 to 10": "Pain, 0 to 10:",
    "own words": "Your words:",
}


def moment_html(moment: str, script: Mapped | None, file: str) -> str:
    """The lines of a moment; without a script, the coach's own questions alone."""
    if script is None:
        lines = "".join(_coach_ask(fact, "", 1, "") for fact in COACH_ASKS[moment])
        note = element("p", "No script: the coach asks its own questions in its own words.", "note")
        return f'{note}<ol class="talk">\n{lines}</ol>\n'
    body = next((pair.value for pair in script.pairs if pair.key.value == "lines"), None)
    items = body.items if isinstance(body, Listed) else ()
    head = f'<p class="note">{escape("From the script ")}{place_html(script.place, file)}</p>\n'
    return f"{head}{_lines(items, file)}"


def place_html(place: Place, file: str = "") -> str:
    """`scripts/screen.yaml, line 4`, to be found in an editor."""
    where = f"{file or place.file}, line {place.line}"
    return f'<span class="place">{escape(where)}</span>'


def _lines(items: tuple[Node, ...], file: str) -> str:
    inside = "".join(_line(item, file) for item in items if isinstance(item, Mapped))
    return f'<ol class="talk">\n{inside}</ol>\n'


def _line(tree: Mapped, file: str) -> str:
    first = tree.pairs[0]
    kind = first.key.value
    where = place_html(first.key.place, file)
    said = first.value.value if isinstance(first.value, Text) else ""
    if kind.startswith("when"):
        return _branch(first, file)
    if kind == "ask":
        wording = int(_value(tree, "wording") or 1)
        return _coach_ask(said, _value(tree, "words"), wording, where)
    if kind == "ask also":
        return _own_ask(tree, said, where)
    if kind == "stop":
        words = f"{said}. The plan closes until the clinician opens it."
        return _item("STOP", words, where, "stop")
    if kind == "tell":
        return _item("Says", said, where, "", _others(tree, "tell"))
    if kind == "note":
        return _item("Notes for the visit", said, where)
    if kind == "today":
        return _item("Today", said, where)
    return _item("Lowers", f"{kind}: {said}", where)


def _value(tree: Mapped, key: str) -> str:
    for pair in tree.pairs:
        if pair.key.value == key and isinstance(pair.value, Text):
            return pair.value.value
    return ""


def _others(tree: Mapped, key: str) -> str:
    """The same line in the second language, where there is one."""
    return "".join(
        element("p", f"{pair.key.value.rpartition(' in ')[2]}: {pair.value.value}", "other")
        for pair in tree.pairs
        if pair.key.value.startswith(f"{key} in ") and isinstance(pair.value, Text)
    )


def _item(label: str, words: str, where: str, kind: str = "", more: str = "") -> str:
    mark = f' class="{kind}"' if kind else ""
    return f"<li{mark}><b>{escape(label)}:</b> {escape(words)} {where}{more}</li>\n"


def _branch(pair: Pair, file: str) -> str:
    condition = pair.key.value.removeprefix("when").strip()
    inside = _lines(pair.value.items, file) if isinstance(pair.value, Listed) else ""
    head = f"<b>Only when</b> {escape(condition)} {place_html(pair.key.place, file)}"
    return f'<li class="branch"><details open><summary>{head}</summary>\n{inside}</details></li>\n'


def _own_ask(tree: Mapped, name: str, where: str) -> str:
    answers = _value(tree, "answers")
    label = _OWN_LABEL.get(answers, "")
    every = _value(tree, "every")
    more = element("p", f"Name: {name}. Answers: {answers}.", "note")
    more += element("p", f"Asked at most once in {every}.", "note") if every else ""
    words = f"{_value(tree, 'words')} {label}".strip()
    return _item("Asks (your question)", words, where, "", more + _others(tree, "words"))


# ---------------------------------------------------------------- the coach's questions


def _coach_ask(fact: str, own: str, wording: int, where: str) -> str:
    section = fact.removeprefix("screen ")
    if fact.startswith("screen ") and section in Section._value2member_map_:
        return _screen_ask(Section(section), wording, where)
    group = fact.replace(" ", "_")
    if group in Group._value2member_map_:
        words = " / ".join(FLAGS[flag].question for flag in GROUP_FLAGS[Group(group)])
        more = element("p", "A yes stops the day and closes the plan.", "note")
        return _item("Asks again (warning sign)", words, where, "", more)
    asked = QUESTIONS[fact]
    more = element("p", f"Name: {fact}. {_unclear(fact)}", "note")
    label = "Asks (the coach's question, your words)" if own else "Asks (the coach's question)"
    return _item(label, f"{own or asked.ask} {asked.label}", where, "", more)


def _unclear(fact: str) -> str:
    if fact not in WORST:
        return ""
    worst = WORST[fact]
    if isinstance(worst, tuple):
        shown = ", ".join(worst) or "nothing"
    else:
        shown = f"{worst:g}" if isinstance(worst, float) else worst
    return f"Unclear twice counts as: {shown}."


def _screen_ask(section: Section, wording: int, where: str) -> str:
    """A section of the screen: alone in one of two wordings, in the list, and sign by sign."""
    first, second = SECTION_QUESTIONS[section]
    more = element("p", f"On other days: {second if wording == 1 else first}", "note")
    if section in SECTION_LIST:
        more += element("p", f"In the list: {SECTION_LIST[section]}", "note")
    flags = dict.fromkeys(f for group in SECTION_GROUPS[section] for f in GROUP_FLAGS[group])
    signs = "".join(
        f"<li>{escape(FLAGS[flag].question)} <b>Yes: STOP, {escape(FLAGS[flag].tier.value)}.</b> "
        f'<span class="place">{flag}</span></li>\n'
        for flag in flags
    )
    fold = f"<details open><summary>After a yes, sign by sign</summary>\n<ul>\n{signs}</ul></details>\n"
    words = f"{second if wording == 2 else first} Yes or no:"  # noqa: PLR2004  the second wording
    return _item("Asks (warning signs)", words, where, "", more + fold)
