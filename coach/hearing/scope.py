"""What a phrase in its sentence means: there, denied, over, someone else's, only asked or feared.

Law: reads words to the left and right of a phrase, never what the phrase itself is about. Where
two readings are open it says `UNSURE`, so that a question is asked. Ends: a full stop, a contrast
("but"), a comma before a new subject, or "and" before one end what a "no" reaches. After the
published negation, time and person rules (Chapman 2001; Harkema 2009), with own word lists.
"""

from __future__ import annotations

from enum import IntEnum
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.hearing import scope_words as w

if TYPE_CHECKING:
    from collections.abc import Sequence

    from coach.hearing.words import Word


_BODY: Final = frozenset("PART CHEST RIBS FACE LEG CALF ELSEWHERE HEART WOUND".split())


# families whose words may stand in one list of denied signs
_SYMPTOMS: Final = frozenset(
    "NUMB BUZZ SHOCK FEELING WEAK WEAKNESS SWELL COLOUR RED BRUISE DISLOCATE SLIP POP CATCH FRACTURE "
    "SHAPE PAIN FEVER CHILL VOMIT FLU INFECT FAINT TIGHT GASP BREATH CHEST SWEATS DROPPING LIMP "
    "LOOSE UNSTABLE FALL HEADACHE NAUSEA COLD".split()
)


class Reading(IntEnum):
    """How a phrase is meant; the larger, the surer that it is a sign here and now."""

    DENIED = 0
    OTHERS = 1
    ASKED = 2
    OVER = 3
    UNSURE = 4
    PRESENT = 5


class Scopes(NamedTuple):
    """For each word: the `no` that reaches it (-1: none), whether that is unsure, its clause."""

    denied_by: tuple[int, ...]
    unsure: frozenset[int]
    clause: tuple[int, ...]
    sentence: tuple[int, ...]


def _text(words: Sequence[Word], place: int) -> str:
    return words[place].text if 0 <= place < len(words) else ""


def _has_verb(words: Sequence[Word], start: int, reach: int) -> bool:
    """Whether a new statement starts at `start`: a verb before the next pause or joining word."""
    for place in range(start, min(start + reach, len(words))):
        word = words[place]
        if place > start and (word.pause or word.text in w.JOINING):
            return False
        if word.text in w.FINITE:
            return True
    return False


def _new_subject(words: Sequence[Word], start: int) -> bool:
    first = _text(words, start)
    if first in w.SUBJECTS or first in w.OPENERS:
        return True
    if first in w.ARTICLES or "PART" in words[start].keys if start < len(words) else False:
        return _has_verb(words, start, 5)
    return _has_verb(words, start, 4)


def _list_goes_on(words: Sequence[Word], start: int) -> bool:
    """Whether the items from `start` end in `or`/`nor` before the sentence does."""
    for place in range(start, min(start + 14, len(words))):
        word = words[place]
        if place > start and word.pause == 2:  # noqa: PLR2004
            return False
        if word.text in ("or", "nor"):
            return True
        if word.text in w.FINITE or word.text in w.SUBJECTS or word.text in w.CONTRAST:
            return False
    return False


def _ends_at_comma(words: Sequence[Word], place: int, no: int) -> bool:
    if place == no + 1 and words[no].text in w.ANSWERS:
        return True  # "no, ..." is an answer
    if _list_goes_on(words, place):
        return False
    if not any(words[k].keys & _SYMPTOMS for k in range(no + 1, place)):
        return True  # "no game today, chest pain": what was denied is no sign
    if words[no].text in w.NOT_WORDS or words[place].text in w.STATES:
        return True
    return _new_subject(words, place) or "PART" in words[place].keys


def _is_no(words: Sequence[Word], place: int) -> bool:
    """Whether the word denies what follows it; not when it is part of a set phrase."""
    text = words[place].text
    if text not in w.DENIERS:
        return False
    after = _text(words, place + 1)
    if text == "free":
        return after in w.FREE_OF
    if place + 1 < len(words) and words[place + 1].pause and text not in w.ANSWERS:
        return text in ("denies", "none")
    if after in w.EMPTY_AFTER.get(text, w.EMPTY_AFTER["verb"] if text in w.VERB_NOS else ()):
        return False
    if text == "no" and (after in w.SUBJECTS or after in w.ARTICLES):
        return False
    later = _text(words, place + 2)
    if text in w.VERB_NOS:
        if after in w.ADVERBS:
            after = later
        return after not in w.OWN_VERBS
    return not (text in ("not", "nothing") and after in ("but", "only", "just"))


def _reaches(words: Sequence[Word], place: int, no: int) -> bool:
    """Whether the `no` at `no` still reaches the word at `place`."""
    word = words[place]
    if word.pause == 2:  # noqa: PLR2004
        return False
    if word.pause == 1 and _ends_at_comma(words, place, no):
        return False
    text = word.text
    if text in w.CONTRAST:
        return False
    before = _text(words, place - 1)
    if text in w.SUBJECTS and before not in w.BELIEFS:
        return text == "my" and not (place == no + 1 or _has_verb(words, place + 1, 3))
    if before in ("and", "plus", "also") and (_new_subject(words, place) or text in w.STATES):
        return _list_goes_on(words, place)
    state_after_noun = text in w.STATES and words[no].text in ("no", "zero") and place > no + 1
    return not (state_after_noun and before in w.PLAIN_NOUNS)


def scopes_of(words: Sequence[Word]) -> Scopes:
    """The reach of every denial and the bounds of every clause, in one pass."""
    denied: list[int] = []
    unsure: set[int] = set()
    clause: list[int] = []
    sentence: list[int] = []
    no, part, whole, doubt = -1, 0, 0, False
    for place, word in enumerate(words):
        if word.pause == 2:  # noqa: PLR2004
            whole += 1
        if word.pause or word.text in w.CONTRAST:
            part += 1
        if no >= 0 and not _reaches(words, place, no):
            no = -1
        if no >= 0 and word.pause == 1:
            doubt = "my" in {_text(words, place + k) for k in range(1, 5)}
        denied.append(no)
        if no >= 0 and doubt:
            unsure.add(place)
        if _is_no(words, place):
            no, doubt = place, False
        clause.append(part)
        sentence.append(whole)
    _deny_backwards(words, denied)
    return Scopes(tuple(denied), frozenset(unsure), tuple(clause), tuple(sentence))


def _deny_backwards(words: Sequence[Word], denied: list[int]) -> None:
    """Answers after the word: "swelling: none", "numb? nope", "tingling - no", "fever free"."""
    for place, word in enumerate(words):
        free = word.text == "free" and _text(words, place + 1) not in w.FREE_OF
        if free and place and words[place - 1].keys & _SYMPTOMS and denied[place - 1] < 0:
            denied[place - 1] = place
        if place == 0 or word.text not in w.ANSWERS_AFTER:
            continue
        last = place + 1 == len(words) or words[place + 1].pause > 0 or ":" in word.before
        at_all = _text(words, place + 1) in ("at", "here", "today", "really", "so", "thanks")
        if not (last or at_all) or (
            word.pause == 1 and "," in word.before and last and word.text not in ("none", "nope")
        ):
            continue
        if word.pause == 2 and not any(c in word.before for c in "?-\u2013\u2014"):  # noqa: PLR2004
            continue
        for back in range(place - 1, max(place - 7, -1), -1):
            if denied[back] < 0 and words[back].text not in w.ANSWERS:
                denied[back] = place
            if words[back].pause or words[back].text in w.CONTRAST:
                break


def _near(scopes: Scopes, words: Sequence[Word], at: int, found: frozenset[str]) -> bool:
    """Whether a word of `found` stands in the same clause as the word at `at`."""
    here = scopes.clause[at]
    for step in (-1, 1):
        place = at + step
        while 0 <= place < len(words) and scopes.clause[place] == here and abs(place - at) < 12:  # noqa: PLR2004
            if words[place].text in found:
                return True
            place += step
    return False


def _pair(words: Sequence[Word], at: int, pairs: frozenset[tuple[str, str]]) -> bool:
    return (_text(words, at), _text(words, at + 1)) in pairs


def _sentence_span(scopes: Scopes, at: int) -> tuple[int, int]:
    here = scopes.sentence[at]
    start = end = at
    while start > 0 and scopes.sentence[start - 1] == here and at - start < 40:  # noqa: PLR2004
        start -= 1
    while end + 1 < len(scopes.sentence) and scopes.sentence[end + 1] == here and end - at < 40:  # noqa: PLR2004
        end += 1
    return start, end


def _is_current(scopes: Scopes, words: Sequence[Word], at: int) -> bool:
    """Whether the clause says now; "thats how this started" does not."""
    told = any(
        words[place].text == "started" and {_text(words, place - k) for k in (1, 2, 3)} & w.TOLD
        for place in range(max(0, at - 12), min(len(words), at + 12))
    )
    return _near(scopes, words, at, w.CURRENT - {"started"} if told else w.CURRENT)


def is_over(words: Sequence[Word], scopes: Scopes, at: int, taken: frozenset[int]) -> bool:
    """Whether the phrase is told as past: "last month", "used to", "is gone", a year."""
    if _is_current(scopes, words, at):
        return False
    start, end = _sentence_span(scopes, at)
    for place in range(start, end + 1):
        text = words[place].text
        if text not in w.TIME_HEADS and not text.isdecimal():
            continue
        pair = (text, _text(words, place + 1))
        if words[at].text in w.GOOD_THINGS and place > at and _good_again(words, place):
            return True
        if pair == ("used", "to") and _after_pause(words, at, place):
            continue  # "cant raise it, it used to go all the way"
        if place > at and _well_now(words, place):
            return True  # "it was swollen but its fine now"
        own = place in taken and (pair[0] != "in" or pair not in w.PAST_PAIRS)
        if own or scopes.denied_by[place] >= 0:
            continue
        told = _long_ago(words, place, pair) or _has_passed(words, scopes, place, at)
        if told and not _turns_between(words, place, at):
            return True
    return False


def _well_now(words: Sequence[Word], place: int) -> bool:
    """Whether "fine now", "all better" and their like are said of the sign, not of something else."""
    if not _pair(words, place, w.RESOLVED_PAIRS) or _negated_before(words, place):
        return False
    before = words[max(0, place - 3) : place]
    return all(word.keys.isdisjoint(_SYMPTOMS) and "PART" not in word.keys for word in before)


def _after_pause(words: Sequence[Word], at: int, place: int) -> bool:
    return any(words[k].pause for k in range(at + 1, place + 1))


def _good_again(words: Sequence[Word], place: int) -> bool:
    """Whether what was lost is said to be back: "lost some strength but its back"."""
    return _pair(words, place, w.BACK) and not _negated_before(words, place)


def _turns_between(words: Sequence[Word], one: int, other: int) -> bool:
    """Whether "but", "now" or "then" stands between two places: the time changes there."""
    return any(
        words[k].text in ("but", "now", "then") for k in range(min(one, other), max(one, other))
    )


def _long_ago(words: Sequence[Word], place: int, pair: tuple[str, str]) -> bool:
    young = pair[0] == "was" and (pair[1].isdecimal() or pair[1] in w.YOUNG)
    young = young or (
        pair in (("a", "kid"), ("a", "teen"), ("a", "child"))
        and _text(words, place - 1) in ("was", "as")
    )
    if pair == ("used", "to") and {_text(words, place - k) for k in range(1, 5)} & w.COMPARED:
        return False
    if pair[0] == "before" and {_text(words, place + k) for k in (1, 2, 3)} & w.EVENTS:
        return True
    if pair == ("no", "longer") and _text(words, place + 2) in w.WORKINGS:
        return False  # "no longer closes": what is over is that it works
    if pair[0] == "before" and place == 0 and pair[1] in w.SUBJECTS:
        return True  # "before it was numb"
    if pair[0] == "before" and {_text(words, place + k) for k in (1, 2, 3)} & w.PERIODS:
        return True  # "before one year", as other languages say "a year ago"
    if pair in w.IN_MONTHS and any(word.text in w.IS_NOW for word in words):
        return False
    said = young or pair[0] in w.PAST or pair in w.PAST_PAIRS or _is_year(pair[0])
    return said and not {_text(words, place - 1), _text(words, place - 2)} & w.EVER_SINCE


def _has_passed(words: Sequence[Word], scopes: Scopes, place: int, at: int) -> bool:
    """Whether the word at `place` says that the sign is gone or has stopped."""
    if _negated_before(words, place):
        return False
    text = words[place].text
    if text == "broke" and place and "FEVER" in words[place - 1].keys:
        return not _text(words, place + 1)[:1].isdecimal()
    if (text, _text(words, place + 1)) == ("went", "down"):
        return bool(words[place - 1].keys & {"SWELL", "FEVER", "it"}) if place else False
    if at < place:
        here = scopes.clause[place] == scopes.clause[at]
        return _pair(words, place, w.RESOLVED_PAIRS) or (here and text in w.RESOLVED)
    return text in w.ENDED and 0 < at - place <= 3  # noqa: PLR2004


def _is_year(text: str) -> bool:
    return len(text) == 4 and text.isdecimal() and text[:2] in ("19", "20")  # noqa: PLR2004


def _negated_before(words: Sequence[Word], place: int) -> bool:
    return any(_text(words, place - k) in w.NOT_ENDED for k in (1, 2, 3))


def is_others(words: Sequence[Word], scopes: Scopes, at: int, first: int) -> bool:
    """Whether the sign is another person's: "my buddy", "our closer", "his shoulder"."""
    start, end = _sentence_span(scopes, at)
    mine = any(
        words[k].text in w.MINE
        and _text(words, k + 1) not in w.OPINIONS
        and (words[k].text != "my" or (k < end and not _BODY.isdisjoint(words[k + 1].keys)))
        and not _own_clause(words, k, first)
        and _text(words, k - 1) != "not"
        for k in range(first, end + 1)
    )
    if mine:
        return False
    owner = False
    for place in range(start, max(first, at) + 1):
        text = words[place].text
        if place == first < at and _did_it(words, place, end):
            continue  # "trainer reduced it": done to the athlete
        if text in w.OTHERS or (place < first and _owner_before(words, place)):
            owner = (
                _text(words, place - 1) not in w.AFTER_THESE
                and _text(words, place - 2) not in w.AFTER_THESE
            )
            if text in w.PRONOUNS_OTHER:
                owner = True
        elif (
            text in w.MINE
            and not (text == "mine" and _text(words, place - 1) == "of")
            and not (
                text == "my"
                and (_text(words, place + 1) in w.OTHERS or _text(words, place + 2) in w.OTHERS)
            )
        ) or (text in w.REPORTS and owner):
            owner = False
    return owner


def _theirs(words: Sequence[Word], taken: Sequence[int]) -> bool:
    """Whether the part of the body in the phrase is another's: "broke her arm"."""
    parts = [place for place in taken if not _BODY.isdisjoint(words[place].keys)]
    near = {_text(words, place - k) for place in parts for k in (1, 2)}
    return bool(near & w.THEIR) and not near & w.MINE


def _did_it(words: Sequence[Word], place: int, end: int) -> bool:
    """Whether the other person at `place` is the one who did it, and to nobody named."""
    if words[place].text in w.CARERS:
        return True
    named = any(word.text in w.PRONOUNS_OTHER for word in words[place : end + 1])
    return "OPPONENT" in words[place].keys and not named


def _own_clause(words: Sequence[Word], place: int, first: int) -> bool:
    """Whether "i" opens a clause of its own after the sign: "mom fell so im at the hospital"."""
    joined = _text(words, place - 1) in w.JOINS_CLAUSE or words[place].pause > 0
    return place > first and joined


def _owner_before(words: Sequence[Word], place: int) -> bool:
    """Whether the word is "dads", "coachs": another person's, before the thing owned."""
    text = words[place].text
    return text.endswith("s") and text[:-1] in w.OTHERS


def is_asked(words: Sequence[Word], scopes: Scopes, at: int, first: int) -> Reading | None:
    """Whether the sign is only asked about (`ASKED`) or feared (`UNSURE`)."""
    start, _ = _sentence_span(scopes, at)
    if _is_question(words, start, first):
        return Reading.ASKED
    for place in range(max(start, first - 12), first):
        text = words[place].text
        if text in w.FEARS:
            return Reading.UNSURE
        if text in w.CONDITIONS or _pair(words, place, w.QUESTION_PAIRS):
            subjects = [
                k
                for k in range(place + 1, at)
                if words[k].text in ("my", "i", "it", "the", "im") and k > place + 3
            ]
            comma = any(words[k].pause for k in range(place + 1, at + 1))
            if comma:
                continue
            return Reading.UNSURE if subjects and text in w.CONDITIONS else Reading.ASKED
        if _pair(words, place, w.NORMAL_PAIRS):
            return Reading.UNSURE
    return None


def _is_question(words: Sequence[Word], start: int, at: int) -> bool:
    """Whether the sentence opens as a question about signs in general: "can lifting cause ..."."""
    if words[start].text not in w.QUESTION_OPENERS or at == start:
        return False
    after = words[start + 1]
    told = after.text in w.NO_QUESTION or not after.keys.isdisjoint(("MOTOR", "HOLD", "LIFT"))
    if told and not after.text.endswith("ing"):
        return False  # "can only lift it halfway", "could stick a pin in it": told, not asked
    if _text(words, at + 1) in w.JUDGED:
        return True  # "is numb bad"
    between = {words[k].text for k in range(start, at)}
    if between & w.MINE or any(words[k].pause for k in range(start + 1, at + 1)):
        return False
    return not (at == start + 1 and words[at].text in w.STATES)


def _turned_back(words: Sequence[Word], at: int) -> bool:
    """Whether a denial is taken back right after: "wasnt numb before but is now"."""
    return any(_pair(words, at + k, w.TURNED_BACK) for k in range(1, 6))


def reading_of(
    words: Sequence[Word], scopes: Scopes, taken: Sequence[int], core: Sequence[int]
) -> Reading:
    """How the phrase at the places `taken` is meant; `core` are the places that carry it."""
    inside = frozenset(taken)
    for at in core:
        no = scopes.denied_by[at]
        if no >= 0 and no not in inside and not _turned_back(words, at):
            return Reading.UNSURE if at in scopes.unsure else Reading.DENIED
    at = core[-1]
    if _theirs(words, taken) or is_others(words, scopes, at, taken[0]):
        return Reading.OTHERS
    asked = is_asked(words, scopes, at, min(taken[0], at))
    if asked is not None:
        return asked
    if is_over(words, scopes, at, inside):
        return Reading.OVER
    if is_hedged(words, scopes, at, inside) or _echoed(words, at):
        return Reading.UNSURE
    return Reading.PRESENT


def is_hedged(words: Sequence[Word], scopes: Scopes, at: int, taken: frozenset[int]) -> bool:
    """Whether "maybe", "a bit", "kinda" and their like stand in the clause."""
    here = scopes.clause[at]
    for place in range(max(0, at - 7), min(len(words), at + 6)):
        if scopes.clause[place] != here or place in taken:
            continue
        if words[place].text == "little" and _text(words, place + 1) in w.LITTLE_THINGS:
            continue
        if w.WONDERING & {_text(words, place + 1), _text(words, place + 2)}:
            continue  # "idk why": what is doubted is the cause, not the sign
        if words[place].text in w.HEDGES or _pair(words, place, w.HEDGE_PAIRS):
            return True
    return False


def _echoed(words: Sequence[Word], at: int) -> bool:
    """Whether the phrase is an echoed question ("numbness?") that is not then answered yes."""
    for place in range(at + 1, min(at + 4, len(words))):
        if words[place].pause:
            return "?" in words[place].before and words[place].text not in w.YES
    return False
