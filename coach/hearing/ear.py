"""Hears one answer: warning signs first, then a command, then what was asked.

Law (rule stop.listen): a sign heard in any answer to any question comes before everything; values
that were understood are still handed back beside it. Typed text can raise a flag, never clear one.
Total: any text gives an answer, never an exception.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.hearing.commands import command_in
from coach.hearing.counts import (
    read_choice,
    read_choices,
    read_count,
    read_effort,
    read_most,
    read_none_or_list,
    read_number,
    read_word,
)
from coach.hearing.lexicon import BUILT_IN, Lexicon
from coach.hearing.line import read_line
from coach.hearing.listening import Listening
from coach.hearing.pain import read_pain
from coach.hearing.parts import parts_of
from coach.hearing.scope import Reading
from coach.hearing.set_feel import read_set_feel
from coach.hearing.signs import Sign, most_urgent, odd_talk, sign_in
from coach.hearing.sleep import read_sleep
from coach.hearing.slots import UNCLEAR, Read
from coach.hearing.throwing import read_throwing
from coach.hearing.weighing import weighed
from coach.hearing.words import words_of
from coach.hearing.yes_no import read_safety, read_yes_no
from coach.model.flags import Group
from coach.model.heard import Action, Heard, Kind, Question, Span

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from coach.hearing.words import Word

LONGEST: Final = 20_000  # characters listened to; what is beyond is asked again (set here)

_READERS: Final[dict[Kind, Callable[[str, Sequence[Word], Question], Read]]] = {
    Kind.PAIN_NOW: lambda text, words, _: read_pain(text, words, worst=False),
    Kind.WORST_PAIN: lambda text, words, _: read_pain(text, words, worst=True),
    Kind.SLEEP_HOURS: lambda _, words, __: read_sleep(words),
    Kind.THROWING: lambda text, words, question: read_throwing(text, words, question.fact),
    Kind.YES_NO: lambda text, words, question: read_yes_no(text, words, question.ask),
    Kind.SAFETY_YES_NO: lambda _, words, __: read_safety(words),
    Kind.NONE_OR_LIST: lambda _, words, question: read_none_or_list(words, question),
    Kind.CHOICE: lambda _, words, question: read_choice(words, question),
    Kind.CHOICES: lambda _, words, question: read_choices(words, question),
    Kind.COUNT: read_count,
    Kind.COUNT_MOST: read_most,
    Kind.EFFORT: read_effort,
    Kind.NUMBER: lambda _, words, question: read_number(words, question),
    Kind.SET_FEEL: lambda text, words, question: read_set_feel(text, words, question.choices),
    Kind.WORD: lambda _, words, question: read_word(words, question),
    Kind.OWN_WORDS: lambda text, _, __: Read(text.strip()),
}
# words that open a question and say nothing of what it is about
_ASKING: Final = frozenset(
    "is are was were did do does have has any since last time session today now your the you feel "
    "felt had been or and new".split()
)
# answers that a command word may be one of: the choice wins over the command
_NAMED: Final = frozenset((Kind.CHOICE, Kind.CHOICES, Kind.WORD))
_FIXES: Final = "which to fix"  # the question whose answers are names of the coach's own questions


def hear(question: Question, text: str, lexicon: Lexicon = BUILT_IN) -> Heard:
    """What `text`, typed at `question`, says: a sign, a command, a value, or not understood."""
    if not text.strip():
        return Heard(Action.ASK_AGAIN)
    words = words_of(text[:LONGEST], lexicon.families)
    too_long = len(text) > LONGEST
    parts = parts_of(Listening(words, lexicon))
    sign = _sign_in_parts(question.kind, parts)
    if too_long:
        heard = Heard(Action.ASK_AGAIN, missed=text.strip()[:200])
    elif question.kind == Kind.LINE:
        heard = _heard_line(question, text, words)
    else:
        heard = _heard_slot(question, text, words, _read(question, text, words))
    sign = sign or _asked_sign(question, heard, words, lexicon)
    if sign is None and command_in(words) is not None:
        return _with_command(question, heard, words)
    if sign is None and question.kind == Kind.LINE:
        sign = _sign_in_the_rest(text, heard.missed, lexicon)
    elif sign is None:
        sign = most_urgent(_second_opinion(question.kind, part) for part in parts)
    if sign is not None and question.kind == Kind.YES_NO and heard.action == Action.ASK_AGAIN:
        heard = _yes_by_sign(question, heard, sign, lexicon)
    if sign is None or _is_asked_for(question, heard, sign, text):
        return _with_command(question, heard, words)
    return _with_sign(heard, sign)


def _sign_in_parts(kind: Kind, parts: Sequence[Listening]) -> Sign | None:
    """The most urgent sign that a pattern heard in a part; after a clear one only more urgent ones."""
    found: Sign | None = None
    for part in parts:
        least = found if found is not None and found.clear else None
        sign = sign_in(part, above=least)
        if sign is not None:
            found = most_urgent((found, weighed(kind, part, sign)))
    return found


def _second_opinion(kind: Kind, listening: Listening) -> Sign | None:
    """What odd words near the arm, and the weight of all words, make of what no pattern heard."""
    return weighed(kind, listening, odd_talk(listening) if kind == Kind.OWN_WORDS else None)


def _sign_in_the_rest(text: str, missed: str, lexicon: Lexicon) -> Sign | None:
    """A sign to ask about in what filled nothing of a line; its span is the line's end or all of it."""
    if not missed:
        return None
    words = words_of(missed, lexicon.families)
    sign = _second_opinion(Kind.OWN_WORDS, Listening(words, lexicon))
    if sign is None:
        return None
    start = max(text.find(missed), 0)
    end = start + len(missed) if text.startswith(missed, start) else len(text)
    return sign._replace(spans=(Span(start, end, sign.group.value),))


def _read(question: Question, text: str, words: Sequence[Word]) -> Read:
    if not words and question.kind not in (Kind.OWN_WORDS, Kind.YES_NO, Kind.SET_FEEL):
        return UNCLEAR
    return _READERS[question.kind](text, words, question)


def _heard_slot(question: Question, text: str, words: Sequence[Word], read: Read) -> Heard:
    if read.value is None:
        return Heard(Action.ASK_AGAIN, missed=text.strip()[:200])
    spans = tuple(Span(words[at].start, words[at].end, question.fact) for at in read.at)
    values = ((question.fact, read.value),)
    return Heard(Action.ACCEPT, values, spans=spans, hedged=read.hedged, also=read.also)


def _heard_line(question: Question, text: str, words: Sequence[Word]) -> Heard:
    line = read_line(text, words, question)
    spans = tuple(Span(start, end, "line") for start, end in line.at)
    return Heard(
        Action.ACCEPT if line.values else Action.ASK_AGAIN,
        tuple(line.values.items()),
        spans=spans,
        missed=", ".join(line.missed)[:200],
        also=tuple(line.also),
    )


def _asked_sign(
    question: Question, heard: Heard, words: Sequence[Word], lexicon: Lexicon
) -> Sign | None:
    """The sign named by the question itself, when the answer to it is a yes."""
    said = dict(heard.values).get(question.fact)
    if question.kind != Kind.YES_NO or not question.ask:
        return None
    if said != "yes" and not any(word.text in _DOUBT for word in words[:3]):
        return None
    sign = sign_asked_about(question.ask, lexicon)
    if sign is None:
        return None
    if said != "yes":
        return sign._replace(clear=False, spans=heard.spans)
    once = sign.group == Group.NIGHT_PAIN_UNRELENTING and any(w.text in _ONCE for w in words)
    return sign._replace(clear=not heard.hedged and not once, spans=heard.spans)


# an answer that opens with one of these to a question about a sign is asked about
_DOUBT: Final = frozenset("almost nearly".split())
# waking once, or from rolling onto it, is asked about
_ONCE: Final = frozenset("once rolled rolling roll bit".split())
# weak words of these groups, in an answer on how a set felt, tell of its load
_LOAD_GROUPS: Final = frozenset((Group.WEAK_DROP, Group.LOST_MOTION, Group.SWELLING_COLOUR_COLD))
_LOAD_FEELS: Final = frozenset(("too_heavy", "too_easy", "fine", "wrong_muscle"))


def _is_asked_for(question: Question, heard: Heard, sign: Sign, text: str) -> bool:
    """Whether what sounds like a sign is just what the question asked for."""
    return (
        _is_load(question, heard, sign)
        or _is_count(question, heard, text)
        or _is_name(question, sign, text)
    )


def _is_name(question: Question, sign: Sign, text: str) -> bool:
    """Whether the coach's own name for an answer, "waking pain", says which one to put right."""
    return question.fact == _FIXES and not sign.clear and text.strip().lower() in question.choices


def _is_load(question: Question, heard: Heard, sign: Sign) -> bool:
    """Whether a weak mention in a set's answer is about the load: "couldnt hold it at the end"."""
    feel = dict(heard.values).get(question.fact)
    on_load = question.kind == Kind.SET_FEEL and feel in _LOAD_FEELS
    return on_load and sign.weak and (sign.unnamed or sign.group in _LOAD_GROUPS)


def _is_count(question: Question, heard: Heard, text: str) -> bool:
    """Whether a bare number is what was asked for: 105 throws are no fever of 105."""
    asked = question.kind != Kind.OWN_WORDS and heard.action == Action.ACCEPT
    return asked and text.strip().isdecimal()


def _yes_by_sign(question: Question, heard: Heard, sign: Sign, lexicon: Lexicon) -> Heard:
    """A yes, when a question about signs is answered with a sign: "tingled", "a touch of tingle"."""
    if sign.reading < Reading.UNSURE or not question.ask:
        return heard
    if sign_asked_about(question.ask, lexicon) is None:
        return heard
    return heard._replace(values=((question.fact, "yes"),), hedged=not sign.clear, missed="")


def sign_asked_about(ask: str, lexicon: Lexicon = BUILT_IN) -> Sign | None:
    """The clear sign that a question's own words name, or None."""
    words = words_of(ask, lexicon.families)
    while words and words[0].text in _ASKING:
        words = words[1:]
    return sign_in(Listening(words, lexicon))


def _with_sign(heard: Heard, sign: Sign) -> Heard:
    action = Action.ESCALATE if sign.clear else Action.CONFIRM
    return heard._replace(
        action=action,
        group=sign.group,
        flag=sign.flag,
        spans=(*sign.spans, *heard.spans),
        unnamed=sign.unnamed,
    )


def _with_command(question: Question, heard: Heard, words: Sequence[Word]) -> Heard:
    command = command_in(words)
    if command is None or (question.kind in _NAMED and heard.action == Action.ACCEPT):
        return heard
    soft = command.value not in ("stop", "why", "why code", "help", "fix")
    if question.kind in (Kind.YES_NO, Kind.SET_FEEL) and heard.action == Action.ACCEPT and soft:
        return heard
    spans = (Span(words[0].start, words[-1].end, command.value),)
    return Heard(Action.ACCEPT, spans=spans, command=command)
