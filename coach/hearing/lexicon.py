"""The whole lexicon of warning signs in one value, and what a program may add to it.

Law: a program adds phrases, it never takes one away; a phrase so common that it would send
everyone away is refused, with the reason. Never raises on any phrase.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

from coach.hearing.harmless import CAUSES, HABITS, HARMLESS
from coach.hearing.patterns import Phrases, Table, phrases, table
from coach.hearing.signs_arm import ARM_SIGNS
from coach.hearing.signs_body import BODY_SIGNS
from coach.hearing.signs_everyday import EVERYDAY_SIGNS
from coach.hearing.signs_joint import JOINT_SIGNS
from coach.hearing.signs_said import SAID_SIGNS
from coach.hearing.signs_told_arm import TOLD_ARM
from coach.hearing.signs_told_body import TOLD_BODY
from coach.hearing.signs_told_joint import TOLD_JOINT
from coach.hearing.vocabulary import FAMILIES
from coach.hearing.words import lowered, words_of
from coach.model.flags import Group

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

MOST_ADDED_WORDS: Final = 8  # words in an added phrase (set here)


class Entry(NamedTuple):
    """Where a pattern belongs: its group, its flag if the words decide it, and its strength."""

    group: Group
    flag: str | None
    clear: bool


class Refusal(NamedTuple):
    """An added phrase that was not taken, and why, in words for a finding."""

    phrase: str
    reason: str


class Lexicon(NamedTuple):
    """All that the warning-sign pass reads; built once, never changed."""

    families: Mapping[str, frozenset[str]]
    entries: tuple[Entry, ...]
    signs: Table
    harmless: Phrases
    causes: Table
    habits: Table
    refused: tuple[Refusal, ...] = ()


_ALL_SIGNS: Final = (
    *ARM_SIGNS,
    *JOINT_SIGNS,
    *BODY_SIGNS,
    *EVERYDAY_SIGNS,
    *TOLD_ARM,
    *TOLD_JOINT,
    *TOLD_BODY,
    *SAID_SIGNS,
)


def _built_in() -> Lexicon:
    entries: list[Entry] = []
    lines: list[tuple[str, int]] = []
    for group, flag, strength, patterns in _ALL_SIGNS:
        lines.append((patterns, len(entries)))
        entries.append(Entry(group, flag, strength == "stop"))
    return Lexicon(
        FAMILIES, tuple(entries), Table(lines), phrases(HARMLESS), table(CAUSES), table(HABITS)
    )


BUILT_IN: Final = _built_in()

# words that everyone types; a phrase made of these alone is too common
_COMMON: Final = frozenset(
    "a an the and or but i im my me it its is was be to of in on at for with from so very really "
    "good bad fine ok okay yes no not none hot cold sore tired pain hurt hurts ache stiff tight "
    "arm arms shoulder elbow hand day night today yesterday week throw threw throwing pitch game "
    "practice set sets reps rep band weight easy heavy hard light sleep slept felt feel feels "
    "did do done have had get got a little bit much more less new old left right up down".split()
)


def why_refused(phrase: str) -> str | None:
    """Why `phrase` may not be added, or None when it may."""
    words = [word.text for word in words_of(lowered(phrase), {})]
    if not words:
        return "it holds no word"
    if len(words) > MOST_ADDED_WORDS:
        return f"it is longer than {MOST_ADDED_WORDS} words"
    if all(word in _COMMON or word.isdecimal() for word in words):
        return "its words are too common: ordinary answers would stop the day"
    if len(words) == 1 and len(words[0]) <= 3:  # noqa: PLR2004
        return "a single word of three letters or fewer is too common"
    return None


def with_phrases(lexicon: Lexicon, additions: Iterable[tuple[Group, str]]) -> Lexicon:
    """`lexicon` with the (group, phrase) pairs added as clear signs; see `refused` on the result.

    A phrase is heard word for word, in any case, under the same rules of denial, time and person.
    """
    entries = list(lexicon.entries)
    lines: list[tuple[str, int]] = []
    refused = list(lexicon.refused)
    for group, phrase in additions:
        reason = why_refused(phrase)
        if reason is not None:
            refused.append(Refusal(phrase, reason))
            continue
        text = " ".join(word.text for word in words_of(lowered(phrase), {}))
        lines.append((text, len(entries)))
        entries.append(Entry(group, None, clear=True))
    signs = lexicon.signs.with_lines(lines) if lines else lexicon.signs
    return lexicon._replace(entries=tuple(entries), signs=signs, refused=tuple(refused))
