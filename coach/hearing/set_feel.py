"""Reads how a set felt: fine, a named fault, pain, too heavy, too easy.

Law: a pain number counts before a pinch, a pinch before a load, a load before "fine"; a bare
"popped" is never fine. "Burn" in the worked muscle is fine.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.hearing.pain import pain_numbers
from coach.hearing.patterns import Table, matches, table
from coach.hearing.slots import UNCLEAR, Read, text_at, word_set

if TYPE_CHECKING:
    from collections.abc import Sequence

    from coach.hearing.numbers import Number
    from coach.hearing.words import Word

_PINCH: Final = word_set(
    "pinch pinches pinched pinching pinchy impinging impinge impinged nip nips nipping impingement "
    "pinchin nipped jamming catching catches catch grabbing grabs grabbed squeezed"
)
_MUSCLE: Final = word_set(
    "trap traps trapezius neck delt delts deltoid deltoids bicep biceps tricep triceps pec pecs "
    "chest lat lats back forearm forearms upper shrug shrugging wrist arms arm legs hip hips quads"
)
_PLACES: Final = word_set("in into with mostly only just my all mainly more")
_HEAVY: Final = word_set(
    "heavy hard tough brutal difficult challenging struggle struggled struggling failed heavier fail "
    "taxing harder"
)
_EASY: Final = word_set("easy light easier lighter simple breeze nothing cake cinch boring")
_OK: Final = word_set(
    "ok okay good great fine solid admirable agreeable crispy crisp satisfactory satisfying pleasant nicely comfy super superb lovely chillin gravy chill chilling chillin smooth smoothly perfect normal alright clean nice strong comfortable "
    "right decent fantastic money working awesome excellent grand sweet clear manageable cool sound spot well controlled steady "
    "beauty ripper burn burned burning worked felt_it fatigue fatigued pump pumped smoked"
)
_PAIN: Final = word_set(
    "pain paining pained hurt hurts hurting painful ouch ow oww owww owie sharp ache aches aching ached achy stabbing sore twinge stings stinging stung sting stab stabs"
)
_NO: Final = word_set("no not nothing didnt without never none zero dont isnt wasnt aint doesnt")
_ODD: Final = word_set("weird strange odd funny off different unusual")


def _denied(words: Sequence[Word], place: int) -> bool:
    for k in range(1, 5):
        here = place - k
        if here < 0 or words[here + 1].pause == 2 or words[here].text in ("but", "just"):  # noqa: PLR2004
            return False
        if words[here].text in _NO:
            return True
    return False


def _first(words: Sequence[Word], names: frozenset[str]) -> int | None:
    """The first word of `names` that is not denied."""
    for place, word in enumerate(words):
        if word.text in names and not _denied(words, place):
            return place
    return None


_LOADS: Final = Table(
    [(line.strip(), 0) for line in """
    too|way|super|so|really|pretty|very heavy|hard|tough|difficult|much
    ^ heavy|hard|tough|brutal|difficult|heavier|challenging $
    couldnt|cant|didnt|barely|hardly|unable .. finish|complete|do|hold|get|got|lift|lifted|move|moved|make|made|control|manage|all|last|reps|finished
    less weight
    defeated|beat|killed|broke|crushed me
    weight|band|load|it .. too big|much|strong|high|large
    heavier|harder|more than .. i|me|can|could|manage
    lighter weight|band|dumbbell
    go|need|want lighter
    bit much
    only got|made|managed|did|finished|had
    had|have|needed to .. cheat|stop|quit|bail|rest|drop|lean|swing
    cheated|cheating
    needed|used|use|using .. momentum|help|swing
    form .. broke|went|bad|fell|sloppy|gone|slipped|off
    failed|failing|fail
    struggle|struggled|struggling
    a|real|big grind|battle|fight
    shaking|shaky|shook|dying|died|gassed .. last|end|by|through
    died|dead|gone|cooked on|at|by .. rep|reps|set|NUM
    heave|heaved|heaving|hoist|hoisted|yank|yanked|jerk|jerked .. it|up|weight
    gravity|weight|dumbbell|band won|wins
    barely|hardly|only|just .. get|got|made|reach|reached|make to
    ran|run out of
    used|using .. legs|body|back|hips .. to|for
    i|was|had swinging|swung|swing .. it|to|the
    no chance
    maximum|max|maximal|full effort
    all out
    last .. one|rep|two|few|reps .. didnt|wouldnt|wont|never go|move|come
    lean|leaned|leaning back
    """.splitlines() if line.strip()]
    + [(line.strip(), 1) for line in """
    too|way|super|so|really|very|pretty easy|light|simple
    ^ easy|light|easier|lighter $
    could|couldve|can|coulda .. go|do|done|use|handle|of .. more|heavier|twice|forever|double|all|of
    could .. NUM .. more|of
    need|want|ready|give|gimme|bump|time .. more|heavier
    like nothing
    too little|small|low
    ^ that|it was nothing $
    baby|toy|feather weight|weights
    no load|weight|resistance
    not|wasnt|isnt|no|little|hardly|barely .. resistance|challenge|effort|tension|load
    barely|hardly worked|noticed
    barely|hardly|didnt|dont|couldnt .. feel|felt|notice .. it|anything|thing
    not|no|aint|isnt .. enough|challenge|heavy|hard|resistance|tough|challenging
    more weight
    could|should|can .. stand|take|be .. heavier|harder|more
    go|move|step|bump up .. in|weight|band|lb
    piece of cake
    walk in .. park
    breeze|cake|cinch|boring|cakewalk|walk
    NUM more .. no|easy|easily
    NUM more .. left|tank
    had|did|left|easily .. more
    left in .. tank
    in my sleep
    child|kid|baby|toddler|gran|granny|grandma .. could|can .. lift|do|that
    could|can|couldve .. juggle|kept|keep|going|ages|hours
    nothing to it|that
    childs play
    not even tired|working|breathing
    felt nothing
    band|weight|tube .. too weak|loose|light|soft|thin
    need|want|next|give|time .. stronger|heavier|thicker|bigger|next .. band|one|weight|dumbbell
    next weight|band|dumbbell
    loads|plenty|lots|heaps|tons left
    warm up weight
    no|zero tension|effort
    like lifting|moving|holding|pulling|waving|curling air|nothing|feather|paper
    """.splitlines() if line.strip()]
)  # fmt: skip


def _load(words: Sequence[Word], texts: set[str]) -> Read | None:
    """Too heavy or too easy, when said plainly."""
    pairs = {(w.text, text_at(words, k + 1)) for k, w in enumerate(words)}
    for match in matches(words, _LOADS):
        own_no = any(words[place].text in _NO for place in match.at)
        if own_no or not _denied(words, match.at[-1]):
            return Read("too_easy" if match.owner else "too_heavy", match.at)
    if texts & {"could", "should"} and "heavier" in texts and "than" not in texts:
        return Read("too_easy", (0,))  # "it could be heavier"
    heavy = _first(words, _HEAVY)
    softened = {("good", "hard"), ("hard", "but"), ("tough", "but"), ("challenging", "but")} & pairs
    if heavy is not None and "right" not in texts and not softened:
        return Read("too_heavy", (heavy,))
    easy = _first(words, _EASY)
    if easy is not None and words[easy].text != "nothing" and not texts & (_OK | {"money"}):
        return Read("too_easy", (easy,))
    return None


_ELSEWHERE: Final = table("""
    wrong place|spot|muscle|muscles|area|side|part
    front|side|top of .. arm|shoulder .. works|working|doing
    hikes|hike|hiking|hiked up
    hand|forearm|grip|wrist .. give|gives|gave|go|goes|went .. first
    not|instead|rather the|my|of .. cuff|blade
    using my wrist|hand|arm|neck
    near|by|towards .. neck|ear
""")


def _wrong_muscle(words: Sequence[Word], texts: set[str]) -> Read | None:
    if texts & {"burn", "burning", "burned"} and texts & {"good", "nice", "great", "right"}:
        return None
    if ("back", "of") in {(w.text, text_at(words, k + 1)) for k, w in enumerate(words)}:
        return None
    if texts & {"ear", "ears"} or matches(words, _ELSEWHERE):
        return Read("wrong_muscle", (0,))
    place = _first(words, _MUSCLE)
    if place is None or (words[place].text, text_at(words, place + 1)) == ("back", "there"):
        return None
    before = {text_at(words, place - k) for k in (1, 2, 3)}
    names = texts & {
        "felt",
        "feel",
        "feeling",
        "feels",
        "did",
        "took",
        "taking",
        "takes",
        "doing",
        "over",
        "working",
        "worked",
        "using",
    }
    if (
        words[place].text in ("shrug", "shrugging", "neck", "trap", "traps")
        or before & _PLACES
        or names
    ):
        return Read("wrong_muscle", (place,))
    return Read("wrong_muscle", (place,)) if len(words) <= 3 and not texts & _OK else None  # noqa: PLR2004


def _named(words: Sequence[Word], choices: Sequence[str]) -> Read | None:
    """The `watch for` name said whole, or by its number in the list."""
    typed = " ".join(word.text for word in words)
    for number, name in enumerate(choices, 1):
        plain = " ".join(name.lower().replace("'", "").split())
        if typed in (plain, str(number)):
            return Read(name, tuple(range(len(words))))
    return None


def _counts_reps(words: Sequence[Word], number: Number) -> bool:
    """Whether a number counts reps, not pain: "the last 3", "10 more", "stopped at 6"."""
    before = {text_at(words, number.first - k) for k in (1, 2)}
    if text_at(words, number.last + 1) in ("out", "outta"):
        return False
    if text_at(words, number.first - 1) == "to" and text_at(words, number.first - 2) in _REACHED:
        return True
    if text_at(words, number.first - 1) in _SUCH:
        return True  # "need a heavier one"
    after = {text_at(words, number.last + k) for k in (1, 2)}
    if text_at(words, number.first - 1) == "around" and text_at(words, number.first - 2) in _PAIN:
        return False
    return bool(before & _REP_BEFORE or after & _REP_AFTER)


_REP_BEFORE: Final = word_set(
    "failed fail last stop stopped first made finished got only do another final did quit after "
    "until through past extra around rep number"
)
_REACHED: Final = word_set("get got getting make made reach reached")
_SUCH: Final = word_set("heavier lighter bigger smaller stronger easier harder thicker thinner")
_REP_AFTER: Final = word_set(
    "clean good solid ones more left short extra reps rep sets in to go times pounds lbs easy of"
)


def read_set_feel(text: str, words: Sequence[Word], choices: Sequence[str]) -> Read:
    """fine, a name of `choices`, wrong_muscle, pinch_front, pain, pain:N, too_heavy, too_easy."""
    if not words:
        return Read("fine") if "\U0001f44d" in text else UNCLEAR
    named = _named(words, choices)
    if named is not None:
        return named
    if (text_at(words, 0), text_at(words, 1)) == ("got", "all"):
        return Read("fine", (0, 1))
    texts = {word.text for word in words}
    numbers, broken = pain_numbers(text, words, 0)
    numbers = [n for n in numbers if not _counts_reps(words, n)]
    ache = _first(words, _PAIN)
    if numbers and not broken and max(n.value for n in numbers) > 0:
        at = tuple(place for n in numbers for place in range(n.first, n.last + 1))
        return Read(f"pain:{max(n.value for n in numbers):g}", at)
    pinch = _first(words, _PINCH)
    if pinch is not None:
        return Read("pinch_front", (pinch,))
    if ache is not None:
        return Read("pain", (ache,))
    if texts & {"hard", "difficult", "tough"} and texts & _NO_WORDS:
        return UNCLEAR  # "hard to describe"
    for found in (_load(words, texts), _wrong_muscle(words, texts)):
        if found is not None:
            return found
    return _fine(words, texts)


_NO_WORDS: Final = word_set("describe explain say tell put judge")


_WELL_DONE: Final = table("""
    where you|they said|told
    where .. should
    like butter
    felt|feel|feeling .. muscle work|working
    better|stronger than|today|this|now
    as it should
    ideal|doable|stronger
    clean|solid|good ones|reps|one
""")
_TROUBLES: Final = word_set(
    "bad issue issues problem problems complaints drama dramas worries trouble bother"
)


def _fine(words: Sequence[Word], texts: set[str]) -> Read:
    odd = _first(words, _ODD)
    if odd is not None:
        return UNCLEAR
    if {"should", "supposed"} & texts and {"felt", "feel", "where"} & texts and not texts & _NO:
        return Read("fine", (0,))
    good = _first(words, _OK)
    if good is not None:
        return Read("fine", (good,))
    denied = texts & (_PINCH | _PAIN | _ODD)
    if denied and texts & _NO:
        return Read("fine", (0,))
    if texts & _TROUBLES and texts & _NO:
        return Read("fine", (0,))
    if matches(words, _WELL_DONE):
        return Read("fine", (0,))
    return UNCLEAR
