"""What a slot reader hands back, and the word lists that several readers share.

Law: a reader takes a value only when it surely understood one; otherwise it says what it did not
understand. It never fills in, rounds down or guesses.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Sequence

    from coach.hearing.numbers import Number
    from coach.hearing.words import Word
    from coach.model.heard import Value


class Read(NamedTuple):
    """A slot as read: `value` None when unclear; `low`, `high` the ends of a range said.

    `at` are the places of the deciding words; `also` side values (count, distance).
    """

    value: Value | None
    at: tuple[int, ...] = ()
    hedged: bool = False
    also: tuple[tuple[str, Value], ...] = ()


UNCLEAR: Final = Read(None)


def word_set(words: str) -> frozenset[str]:
    """A set from words on one line."""
    return frozenset(words.split())


# what follows a number that measures something other than pain, sleep or reps
OTHER_UNITS: Final = word_set(
    "fingers finger toes arms hands guys people players batters interruption interruptions wakeup wakeups throws throw pitches pitch reps rep sets set minutes minute mins min hours hour hrs hr h m s "
    "sec secs seconds second degrees degree lb lbs pound pounds kg kgs kilo kilos feet foot ft "
    "yards yard yd yds meters metres meter metre miles mile km times days day weeks week months "
    "month years year nights night percent innings inning games game serves balls ball exercises "
    "k exercise am pm oclock mph st nd rd th overs spikes shots shot tosses sprints laps push pills "
    "mg advil f c fahrenheit celsius x hits of inch inches cm warmups bands steps grams oz strikes"
)
# what stands before a number that only counts or names something
NAMES_BEFORE: Final = word_set(
    "rep set throw pitch day week inning game number step phase age round exercise class "
    "hole lap court field route room season grade month station period quarter"
)
FIXES: Final = word_set("wait actually sorry oops correction scratch edit meant mean rather nvm jk")
FIX_PAIRS: Final = frozenset(
    (("make", "that"), ("make", "it"), ("no", "wait"), ("i", "mean"), ("scratch", "that"))
)


def text_at(words: Sequence[Word], place: int) -> str:
    """The word at `place`, or nothing."""
    return words[place].text if 0 <= place < len(words) else ""


def starts_after_fix(words: Sequence[Word]) -> int:
    """Where the last correction ("wait no", "i mean") ends; 0 when there is none."""
    start = 0
    for place in range(len(words)):
        text = words[place].text
        if (
            text in FIXES
            and place > 0
            and not (text == "mean" and text_at(words, place - 1) != "i")
        ):
            start = place + 1
        elif (text, text_at(words, place + 1)) in FIX_PAIRS and place > 0:
            start = place + 2
        elif text == "no" and words[place].pause == 2 and place > 0:  # noqa: PLR2004
            start = place + 1
        elif place > 0 and words[place].before.strip() == "*":
            start = place
    return start


def has_other_unit(words: Sequence[Word], number: Number, units: frozenset[str]) -> bool:
    """Whether the number is followed by one of `units`, a percent sign or a clock's minutes."""
    after = number.last + 1
    if after < len(words):
        gap = words[after].before
        if gap.startswith(("%", "\u00b0", "'", '"')):
            return True
        if words[after].pause == 0 and words[after].text in units:
            return True
        if words[after].pause == 0 and text_at(words, after + 1) in units and words[after].text in (
            "more", "warmup", "hard", "full", "light", "easy", "total", "good", "clean", "warm",
        ):  # fmt: skip
            return True
    before = words[number.first]
    named = text_at(words, number.first - 1) in NAMES_BEFORE and before.pause == 0
    return named or before.before.endswith(("$", "#", "\u20ac", "\u00a3"))


def tail_of(text: str, words: Sequence[Word], number: Number) -> str:
    """What stands in the text right after the number."""
    return text[words[number.last].end :][:1]
