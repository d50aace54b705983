"""The words and answers of a question in a script.

Law: the words hold the question only, one, at the end; the ends of a scale, units and choices are
added by the coach, so that no wording can turn a scale round or pull an answer.
"""

from __future__ import annotations

import re
from typing import Final

from coach.model.program import Answers
from coach.texts import values
from coach.texts.facts import COMMAND_WORDS, Fact
from coach.texts.fields import Fields
from coach.texts.margin import Margin
from coach.texts.words import Voice
from coach.texts.yaml_lines import Text

_NUMBER: Final = re.compile(r"number (\S+) to (\S+) (\S+)")
_MEASURED: Final = ("h", "kg", "lb", "cm", "years")
_TIME: Final = re.compile(r"\b\d+ (?:hours?|days?|nights?|weeks?|months?|minutes?)\b")
_SCALE: Final = re.compile(
    r"\b0 to 10\b|\bout of (?:10|ten)\b|\bscale\b|\b(?:yes or no|y/n)\b", re.IGNORECASE
)
_LEADING: Final = re.compile(
    r"\b(?:isn't it|right\?|surely|only a little|not too|still fine|hopefully|no pain\b.*\?$"
    r"|you (?:are|feel) (?:fine|ok|okay|good))",
    re.IGNORECASE,
)
MOST_CHOICES: Final = 7
FEWEST_CHOICES: Final = 2
LARGEST_NUMBER: Final = 10000


def read_question_words(fields: Fields, voice: Voice) -> str:
    """The question, checked: one question mark, at the end; no sample value, no scale."""
    text = fields.text("words", "words: How ... ?")
    if text is None:
        return ""
    voice.check(text, fields.margin, "words")
    _check_question(text, fields.margin)
    return fields.translated("words", text, voice)


def _check_question(text: Text, margin: Margin) -> None:
    words = text.value
    if not words.endswith("?") or words.count("?") != 1:
        what = "The words are not one question that ends with a question mark."
        margin.note("ask.not_one_question", text.place, what, words.rstrip("?. ") + "?")
    scale = _SCALE.search(words)
    if scale:
        what = f'"{scale.group()}" is added by the coach and does not stand in the words.'
        margin.note("ask.scale", values.place_after(text, scale.start()), what)
        return
    figure = re.search(r"\d+", _TIME.sub(lambda match: " " * len(match.group()), words))
    if figure:
        what = f'The question holds a figure ("{figure.group()}") that may pull the answer.'
        margin.note("ask.sample_value", values.place_after(text, figure.start()), what)
    leading = _LEADING.search(words)
    if leading:
        what = f'"{leading.group()}" leads the answer.'
        margin.note("ask.leading", values.place_after(text, leading.start()), what)


def read_answers(fields: Fields, voice: Voice) -> Answers | None:
    """What an own question takes; None and a finding where it cannot be read."""
    text = fields.text("answers", "answers: yes or no")
    if text is None:
        return None
    if text.value == "yes or no":
        return Answers("yes or no", choices=("yes", "no"))
    if text.value == "pain 0 to 10":
        return Answers("pain", 0, 10)
    if text.value == "own words":
        return Answers("own words")
    if text.value.startswith("pain "):
        margin_note = 'A pain question takes "pain 0 to 10" and no other ends.'
        fields.margin.note("answers.pain_ends", text.place, margin_note, "answers: pain 0 to 10")
        return None
    if text.value.startswith("number"):
        return _number_answers(text, fields.margin)
    return _choices(text, fields, voice)


def _number_answers(text: Text, margin: Margin) -> Answers | None:
    match = _NUMBER.fullmatch(text.value)
    if match is None:
        what = "The answer is a number, but its two ends and its unit are not all there."
        margin.note("answers.number", text.place, what, "answers: number 0 to 14 h")
        return None
    low, high, unit = match.groups()
    whole = unit not in _MEASURED
    bounds = values.Bounds(unit, 0, LARGEST_NUMBER, whole)
    found = values.span(Text(f"{low} to {high} {unit}", text.place), margin, bounds, "The answer")
    if found is None:
        return None
    return Answers("counted" if whole else "measured", found[0], found[1], unit)


def _choices(text: Text, fields: Fields, voice: Voice) -> Answers | None:
    margin = fields.margin
    found = values.pieces(text)
    if not FEWEST_CHOICES <= len(found) <= MOST_CHOICES:
        what = f"The question has {len(found)} answers; it takes 2 to 7, with commas."
        margin.note("answers.count", text.place, what, "answers: muscle, joint")
        return None
    named = [values.name(piece, margin, "an answer") for piece in found]
    for piece in found:
        if piece.value in COMMAND_WORDS:
            what = f'"{piece.value}" works at every prompt and cannot be an answer.'
            margin.note("answers.command_word", piece.place, what)
    if len(set(named)) < len(named):
        margin.note("value.name_twice", text.place, "An answer stands twice.")
    shown = _shown(fields, voice, len(found))
    return Answers("choice", choices=tuple(name or "" for name in named), shown=shown)


def _shown(fields: Fields, voice: Voice, count: int) -> tuple[str, ...]:
    chosen: tuple[str, ...] = ()
    for language in voice.others:
        words = fields.text(f"answers in {language}", f"answers in {language}: ...")
        if words is None:
            continue
        found = tuple(piece.value for piece in values.pieces(words))
        if len(found) != count:
            what = f"The answers in {language} are {len(found)}, not {count}."
            fields.margin.note("language.count", words.place, what)
        chosen = found if language == voice.language else chosen
    return chosen


def answers_fact(name: str, answers: Answers) -> Fact:
    """The fact an own question gives."""
    kinds = {"yes or no": "choice", "pain": "counted"}
    kind = kinds.get(answers.kind, answers.kind)
    return Fact(name, kind, answers.low, answers.high, answers.unit, answers.choices)
