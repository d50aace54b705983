"""Turns what was heard into the row that is printed, and into plain words for a clinician.

Law: shows what the ear decided and by which words; decides nothing itself.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any, Final

from coach.hearing.ear import hear
from coach.hearing.language import is_foreign
from coach.model.flags import Group
from coach.model.heard import Action, Heard, Kind, Question

if TYPE_CHECKING:
    from collections.abc import Mapping

# the names of questions in a row, and the kind each is
ROW_KINDS: Final[dict[str, Kind]] = {
    "pain_now": Kind.PAIN_NOW,
    "worst_pain": Kind.WORST_PAIN,
    "yes_no": Kind.YES_NO,
    "sleep_hours": Kind.SLEEP_HOURS,
    "throwing": Kind.THROWING,
    "set_feel": Kind.SET_FEEL,
    "note": Kind.OWN_WORDS,
}
_KEYS: Final = {"pain_now": "pain", "worst_pain": "pain"}
# a leaking wound is reported with infection, as the rows' labels do; its flag stays S03
_REPORTED_AS: Final = {Group.WOUND: Group.FEVER_INFECTION}
_OUR_WORDS: Final = {"none": "off", "fine": "ok"}


def question_of(row: Mapping[str, Any]) -> Question:
    """The question that a row `{"id","q","text","ask"?}` was an answer to; unknown `q`: a note."""
    name = str(row.get("q", "note"))
    kind = ROW_KINDS.get(name, Kind.OWN_WORDS)
    return Question(name, kind, str(row.get("ask", "")))


def hear_row(row: Mapping[str, Any]) -> dict[str, Any]:
    """The row `{"id","action","value","red_flag","because"}` for a row `{"id","q","text","ask"?}`."""
    question = question_of(row)
    text = str(row.get("text", ""))
    heard = hear(question, text)
    group = heard.group
    return {
        "id": row.get("id"),
        "action": heard.action.value,
        "value": _values(question, heard),
        "red_flag": _REPORTED_AS.get(group, group).value if group else None,
        "because": [
            {"start": s.start, "end": s.end, "text": text[s.start : s.end], "why": s.why}
            for s in heard.spans
        ],
    }


def _values(question: Question, heard: Heard) -> dict[str, Any]:
    if question.kind == Kind.OWN_WORDS:
        return {}
    key = _KEYS.get(question.fact, question.fact)
    sure = heard.action == Action.ESCALATE or not heard.values
    if key == "set_feel" and heard.group is not None and sure:
        return {key: f"red_flag:{_REPORTED_AS.get(heard.group, heard.group).value}"}
    said = dict(heard.values).get(question.fact)
    if said is None:
        return {key: "unclear"}
    out: dict[str, Any] = {
        key: _number(_OUR_WORDS.get(said, said) if isinstance(said, str) else said)
    }
    also = dict(heard.also)
    if "pain_low" in also:
        out[key] = [_number(also.pop("pain_low")), out[key]]
    if "sleep_high" in also:
        out[key] = [out[key], _number(also.pop("sleep_high"))]
    out |= {name: list(v) if isinstance(v, tuple) else _number(v) for name, v in also.items()}
    if heard.hedged:
        out["hedged"] = True
    return out


def _number(value: object) -> object:
    return int(value) if isinstance(value, float) and value == int(value) else value


def marked(text: str, heard: Heard) -> str:
    """`text` with the deciding words between « and »."""
    inside = [False] * (len(text) + 1)
    for span in heard.spans:
        for place in range(max(span.start, 0), min(span.end, len(text))):
            inside[place] = True
    out: list[str] = []
    for place, letter in enumerate(text):
        before = inside[place - 1] if place else False
        if inside[place] and not before:
            out.append("\u00ab")
        if before and not inside[place]:
            out.append("\u00bb")
        out.append(letter)
    if text and inside[len(text) - 1]:
        out.append("\u00bb")
    return "".join(out)


_ACTION_WORDS: Final = {
    Action.ACCEPT: "Taken as an answer.",
    Action.ASK_AGAIN: "Not understood: it would be asked again.",
    Action.CONFIRM: "A sign that needs one yes or no question.",
    Action.ESCALATE: "A clear warning sign: the day would end here.",
}


def explain(text: str, kind: Kind = Kind.OWN_WORDS, ask: str = "") -> list[str]:
    """What would be heard in `text`, in a few plain lines, the deciding words marked."""
    heard = hear(Question(kind.value, kind, ask), text)
    lines = [marked(text, heard), _ACTION_WORDS[heard.action]]
    if is_foreign(text):
        lines.append("This seems not to be English. The ear knows English only.")
    if heard.unnamed:
        lines.append("No sign is named by these words: they would be asked about openly.")
    elif heard.group is not None:
        flag = f", flag {heard.flag}" if heard.flag else ""
        lines.append(f"Group: {heard.group.value}{flag}.")
    if heard.command is not None:
        lines.append(f"Command: {heard.command.value}.")
    if kind != Kind.OWN_WORDS:
        lines += [f"{name}: {value}" for name, value in (*heard.values, *heard.also)]
    if heard.hedged:
        lines.append("Said with doubt.")
    if heard.missed and heard.action == Action.ASK_AGAIN:
        lines.append("Not understood: the whole answer.")
    return lines
