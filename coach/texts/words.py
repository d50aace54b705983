"""What a sentence of a program may not say, and how it should sound to a sore teenager.

Law: a dose, a side, a claim or a push is an error, since the dose and the side are the plan's and
shown by the coach. Trade words and long sentences are warnings with the plain word beside them.
The lists are closed and set here; the reading level behind them is checked elsewhere.
"""

from __future__ import annotations

import functools
import itertools
import re
from collections.abc import Iterable
from typing import Final, NamedTuple

from coach.model.program import Place
from coach.texts.margin import Margin
from coach.texts.reading_grade import HIGHEST, grade, syllables, words_of
from coach.texts.yaml_lines import Text

LONGEST_SENTENCE: Final = 15  # words; set here, judgement
WORDS_KEPT: Final = 4096  # of which it is known what they are; a program says them again and again
LONGEST_CUE: Final = 12  # words; set here, judgement

_COUNT: Final = (
    r"(?:\d+(?:\.\d+)?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve"
    r"|fifteen|twenty|thirty|forty|fifty|a dozen)"
)
_DOSE: Final = re.compile(
    rf"\b{_COUNT}\s*(?:more\s+|full\s+|clean\s+)?(?:x|sets?|reps?|repetitions?|lbs?|kgs?|pounds?|kilos?"
    r"|kilograms?|throws?|holds|times)\b"
    rf"|\bhold\b[^.]*\b{_COUNT}\s*(?:s|seconds?)\b|\b\d+\s*x\s*\d+\b"
)
_SIDE: Final = re.compile(r"\b(?:left|right)\b")
_PUSH: Final = re.compile(
    r"\b(?:push through|work through (?:the |it|pain)|fight through|no pain,? no gain|ignore (?:the |any )?pain"
    r"|grit your teeth|go on if it feels good|tough it out|keep going (?:even|anyway)|finish (?:it )?anyway)\b"
)
_CLAIM: Final = re.compile(
    r"\b(?:heals?|healed|cures?|prevents?|guarantees?d?|safe|safely|risk-free|cleared|will fix|fixes"
    r"|injury-proof|pain-free guarantee|percent effort|diagnos\w+)\b"
)
_BLAME: Final = re.compile(
    r"\b(?:you (?:failed|skipped|missed|forgot|should have|must not have)|your fault|lazy|noncompliant"
    r"|excuses?|disappoint\w*|failed set|bad arm|invalid)\b"
)
_CHEER: Final = re.compile(
    r"\b(?:great job|good job|well done|awesome|keep it up|streak|in a row|champion|crush(?:ed)? it)\b"
    r"|!"
)
_SOFTEN: Final = re.compile(
    r"\b(?:skip (?:this|the|that) (?:question|screen|check)|(?:just )?(?:type|say|answer|press) "
    r"(?:no|none|yes|0|zero|enter)\b|nothing to worry|don't worry|do not worry|probably (?:nothing|fine)"
    r"|(?:is|are) (?:not |nothing )?serious|ignore (?:this|the) (?:stop|question|screen)"
    r"|instead of (?:calling|stopping)|no need to (?:call|stop)|answer quickly)"
)

# check, pattern, starts of words of which one stands in every match, why. A sentence without such a
# word needs no search; how a word starts is asked once a word.
_REFUSED: Final = (
    (
        "words.dose",
        _DOSE,
        tuple("set rep lb kg pound kilo throw hold times x".split()),
        "carries a dose",
    ),
    (
        "words.push",
        _PUSH,
        tuple("through gain ignore grit feels tough going anyway".split()),
        "pushes on through pain",
    ),
    (
        "words.soften",
        _SOFTEN,
        tuple(
            "skip type say answer press nothing worry probably serious ignore instead need".split()
        ),
        "softens a safety question or a stop",
    ),
    (
        "words.claim",
        _CLAIM,
        tuple("heal cure prevent guarantee safe risk cleared fix proof percent diagnos".split()),
        "claims what nobody can promise",
    ),
    (
        "words.blame",
        _BLAME,
        tuple(
            "failed skipped missed forgot should must fault lazy noncompliant excuse disappoint bad "
            "invalid".split()
        ),
        "blames",
    ),
    (
        "words.cheer",
        _CHEER,
        tuple("job done awesome keep streak row champion crush !".split()),
        "cheers or shouts",
    ),
    ("words.side", _SIDE, ("left", "right"), "names a side"),
)

# trade word (as a pattern) -> the plain word
_PLAIN: Final = (
    (r"abduct\w*", "lift out to the side"),
    (r"adduct\w*", "bring to your side"),
    (r"externally rotat\w*|external rotation", "turn out"),
    (r"internally rotat\w*|internal rotation", "turn in"),
    (r"scapula\w*", "shoulder blade"),
    (r"retract\w*", "draw back"),
    (r"protract\w*", "reach forward"),
    (r"supine", "on your back"),
    (r"prone", "face down"),
    (r"anterior\w*", "front"),
    (r"posterior\w*", "back"),
    (r"lateral\w*", "side"),
    (r"flex|flexe[sd]|flexing|flexion", "bend"),
    (r"extend\w*|extension", "straighten"),
    (r"isometric\w*", "push, no move"),
    (r"eccentric\w*", "lower slowly"),
    (r"concentric\w*", "lift"),
    (r"range of motion", "how far it moves"),
    (r"repetitions?", "rep"),
    (r"resistance", "band or weight"),
    (r"contraindicat\w*", "not for you now"),
    (r"paresthesia\w*", "tingling"),
    (r"edema\w*", "swelling"),
    (r"inflam\w*", "hot and sore"),
    (r"acute\w*", "sudden"),
    (r"chronic\w*", "for a long time"),
    (r"exacerbat\w*|flares?|flared", "get worse"),
    (r"discomfort", "pain or ache"),
    (r"mild|moderate|severe", "the number"),
    (r"tolerat\w*", "feel fine with"),
    (r"modify|modifies|modified", "change"),
    (r"discontinu\w*", "stop"),
    (r"initiat\w*", "start"),
    (r"perform\w*", "do"),
    (r"maintain\w*", "keep"),
    (r"prior to", "before"),
    (r"approximately", "about"),
    (r"consult\w*", "call"),
    (r"medications?", "pain pills"),
    (r"physicians?", "doctor"),
    (r"emergency department", "the plan's word for it"),
    (r"throwing up", "vomit"),
    (r"missed", "rest day"),
    (r"normal\w*", "your usual"),
    (r"just|simply", "leave it out"),
)
_BY_FIRST_LETTERS: Final[dict[str, list[tuple[re.Pattern[str], str]]]] = {}
for _words, _plain in _PLAIN:
    for _word in _words.split("|"):
        _entry = (re.compile(rf"{_word}\b"), _plain)
        _BY_FIRST_LETTERS.setdefault(_word[:2], []).append(_entry)
_TWO_LETTERS: Final = re.compile(r"\b[a-z]{2}")
_FIRST_WORDS: Final = re.compile(
    "|".join(word.split(" ")[0] for words, _ in _PLAIN for word in words.split("|"))
)
_DOSED: Final = 0  # the place of the dose's pattern, which needs a count beside its unit
_TRADE: Final = len(_REFUSED)  # the place of trade words behind the refused patterns
_COUNTED: Final = _TRADE + 1  # and of words that count
_A_COUNT: Final = re.compile(rf"{_COUNT}|\d|dozen")
_FIGURE: Final = re.compile(r"\d+(?:\.\d+)?")


class Voice:
    """The languages of a program and the one that is read; checks each sentence of the first."""

    def __init__(self, languages: tuple[str, ...], language: str = "") -> None:
        """`languages` as the program names them; `language` the one to read ('' = the first)."""
        self.first = languages[0] if languages else "English"
        self.others = languages[1:]
        self.language = language or self.first

    def check(self, text: Text, margin: Margin, key: str) -> None:
        """Note everything the sentence may not say, and what reads hard."""
        lowered = text.value.lower()
        counted, sounded, part_of, ends = zip(*map(_known_of, lowered.split()), strict=True)
        looked_for = set().union(*part_of)
        if looked_for:
            _note_refused(text, lowered, looked_for, margin)
        if self.first == "English" and _TRADE in looked_for:
            _note_trade_words(text, lowered, margin)
        longest = LONGEST_CUE if key == "cues" else LONGEST_SENTENCE
        for start, end in _sentences(ends):
            if self.first == "English":
                _note_hard(sum(counted[start:end]), sum(sounded[start:end]), text.place, margin)
            if end - start > longest:
                what = f"A sentence has {end - start} words; {longest} read well."
                margin.note("words.long_sentence", text.place, what)

    def missing(self, key: str, language: str, place: Place, margin: Margin) -> None:
        """Note that `key` has no line in `language`."""
        write = f"{key} in {language}: ..."
        what = f'"{key}" has no line in {language}.'
        margin.note("language.missing", place, what, write)

    def compare(self, first: Text, other: Text, language: str, margin: Margin) -> None:
        """Note figures that differ between the two languages."""
        if sorted(_FIGURE.findall(first.value)) != sorted(_FIGURE.findall(other.value)):
            what = f"The figures in {language} differ from those in {self.first}."
            margin.note("language.figures", other.place, what, also=first.place)


def _at(text: Text, offset: int) -> Place:
    lead = offset + (1 if text.quoted else 0)
    return text.place._replace(column=text.place.column + lead)


class _Word(NamedTuple):
    """What is known of one word as it stands between blanks, asked once a word.

    Words and syllables as the reading grade counts them ("side-lying" is two words); the places in
    the list of refused patterns that it could be a part of; whether it ends a sentence.
    """

    counted: int
    sounded: int
    part_of: frozenset[int]
    ends: bool


@functools.lru_cache(WORDS_KEPT)
def _known_of(typed: str) -> _Word:
    words = words_of(typed)
    part_of: set[int] = set().union(*map(_may_be, words), _may_be("!") if "!" in typed else ())
    return _Word(len(words), sum(map(syllables, words)), frozenset(part_of), typed[-1] in ".?!")


def _may_be(word: str) -> set[int]:
    found = {n for n, (_, _, starts, _) in enumerate(_REFUSED) if word.startswith(starts)}
    if _FIRST_WORDS.match(word):
        found.add(_TRADE)
    if _A_COUNT.match(word):
        found.add(_COUNTED)
    return found


def _sentences(ends: tuple[bool, ...]) -> Iterable[tuple[int, int]]:
    """The first word of each sentence and the first behind it."""
    if True not in ends[:-1]:
        return ((0, len(ends)),)
    inner = [place for place, last in enumerate(ends[:-1], start=1) if last]
    return itertools.pairwise((0, *inner, len(ends)))


def _note_refused(text: Text, lowered: str, looked_for: set[int], margin: Margin) -> None:
    if _COUNTED not in looked_for:
        looked_for.discard(_DOSED)
    for index in sorted(looked_for - {_TRADE, _COUNTED}):
        check, pattern, _, does = _REFUSED[index]
        found = pattern.search(lowered)
        if found:
            said = text.value[found.start() : found.end()]
            margin.note(check, _at(text, found.start()), f'The sentence {does}: "{said}".')


def _note_trade_words(text: Text, lowered: str, margin: Margin) -> None:
    for start in _TWO_LETTERS.finditer(lowered):
        for pattern, plain in _BY_FIRST_LETTERS.get(start.group(), ()):
            found = pattern.match(lowered, start.start())
            if found:
                said = text.value[found.start() : found.end()]
                what = f'"{said}" is a trade word; say "{plain}".'
                margin.note("words.trade_word", _at(text, found.start()), what)
                break


def _note_hard(words: int, syllables_in_all: int, place: Place, margin: Margin) -> None:
    found = grade(words, syllables_in_all)
    if found is not None and found > HIGHEST:
        what = f"A sentence reads at school grade {found:.1f}; {HIGHEST:g} at most reads well."
        margin.note("words.reading_grade", place, what)
