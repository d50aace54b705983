"""What beside a clear sign makes it a question: a known cause, an old habit, another thing or story.

Law (rule stop.listen): only softens, a stop to a question; never silences. A sign that may be an
emergency (chest, heart, stroke, cord) is softened by work of the body alone.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

from coach.hearing.ordinary import is_odd
from coach.hearing.patterns import Match, matches, table
from coach.hearing.scope_words import MINE, OTHERS
from coach.model.flags import Group

if TYPE_CHECKING:
    from collections.abc import Sequence

    from coach.hearing.lexicon import Entry, Lexicon
    from coach.hearing.words import Word

# groups whose sign a known cause (ice, tape, slept on it) or a habit (an old click) softens
_CAUSED: Final = frozenset(
    (Group.NUMB_TINGLE, Group.SWELLING_COLOUR_COLD, Group.STROKE_SIGNS, Group.LEG_CLOT)
)
_HABITUAL: Final = frozenset(
    (Group.POP_WITH_LOSS, Group.ELBOW_POP, Group.DISLOCATION_SLIP, Group.DEFORMITY)
)
_ELSEWHERE: Final = _CAUSED | _HABITUAL | {Group.NIGHT_PAIN_UNRELENTING}
_URGENT: Final = frozenset(
    (Group.CHEST_BREATH, Group.FAINT_HEART, Group.STROKE_SIGNS, Group.CORD_SIGNS, Group.SELF_HARM)
)


class Around(NamedTuple):
    """What stands anywhere in the answer: known causes, old habits, parts of the body."""

    causes: list[Match]
    exertion: bool
    scoring: bool
    habits: bool
    only_elsewhere: bool
    not_the_arm: bool
    stories: bool


def around_of(words: Sequence[Word], lexicon: Lexicon) -> Around:
    """What stands anywhere in these words."""
    keys: set[str] = set().union(*(word.keys for word in words))
    return Around(
        matches(words, lexicon.causes),
        bool(keys & _EXERTION) or {"leg", "day"} <= keys,
        bool(keys & _SCORING),
        bool(matches(words, lexicon.habits)),
        "ELSEWHERE" in keys and "PART" not in keys,
        "PART" not in keys and any(w.text in _LOW or w.keys >= _LOWER for w in words),
        bool(matches(words, _STORIES)),
    )


def softened(words: Sequence[Word], entry: Entry, match: Match, around: Around) -> bool:
    """Whether a known cause, an old habit, a thing or another part of the body stands by it."""
    own = frozenset().union(*(words[place].keys for place in match.at))
    if around.exertion and (entry.group == Group.CORD_SIGNS or own & _WORKING):
        return True
    if "VOMIT" in own or ("up" in own and own & _THROWN):
        return around.exertion or not words_free_of(words, _MEALS)
    if entry.group not in _URGENT and (around.stories or _has_its_reason(words, entry)):
        return True
    if _of_a_thing(words, entry, match) or _describes_other(words, match):
        return True
    if entry.group == Group.TRAUMA_FALL:
        scored = around.scoring and own.isdisjoint(_STRUCK)
        return scored or around.not_the_arm or _thing_fell(words, match)
    return _by_cause(own, entry, match, around)


def _by_cause(own: frozenset[str], entry: Entry, match: Match, around: Around) -> bool:
    """Whether ice, tape, sleep or an old habit explains it, or only another part is named."""
    if "DROOP" in own or (entry.group == Group.STROKE_SIGNS and not around.causes):
        return False
    taken = frozenset(match.at)
    if entry.group in _CAUSED and any(not taken.issuperset(cause.at) for cause in around.causes):
        return True
    if entry.group in _HABITUAL and around.habits:
        return True
    return entry.group in _ELSEWHERE and around.only_elsewhere


def _has_its_reason(words: Sequence[Word], entry: Entry) -> bool:
    """Whether a tablet was for another ill, or a weight falls on purpose."""
    named = _REASONS_OF.get(entry.group)
    return named is not None and any(
        word.text in named and not {w.text for w in words[max(0, k - 3) : k]} & _UNPLANNED
        for k, word in enumerate(words)
    )


# a blow there, and to no part of the arm, is asked about
_LOW: Final = frozenset("leg shin calf thigh stomach belly toe".split())
_LOWER: Final = frozenset(("ELSEWHERE",))
# "got hit hard" beside these is about hits given up; beside those it is a blow
_SCORING: Final = frozenset(
    "runs innings inning pitches era homers homer homeruns hits hitters batters doubles velo "
    "strikeouts walks mound tournament playoffs standings".split()
)
_STRUCK: Final = frozenset("PART OPPONENT VEHICLE MISSILE GROUND RIBS me i head".split())
# a heart or a breath at work, and legs that fail, are asked about beside these
_WORKING: Final = frozenset(("HEART", "GASP", "BREATH", "air", "breath"))
_EXERTION: Final = frozenset(
    "ran jogged sprinted squats squat sprints sprint conditioning running run lunges lunge deadlifts deadlift workout suicides "
    "burpees gassers shuttles shuttle legday 400 800 laps lap hills miles marathon stairs".split()
)
_THROWN: Final = frozenset(("threw", "throwing", "thrown"))
_MEALS: Final = frozenset(
    "sushi ate food drunk drank drinking hungover hangover carsick beers tequila tacos milk bus "
    "shrimp oysters ride coaster".split()
)


_DESCRIBING: Final = frozenset(("numb", "swollen", "puffy"))


def _thing_fell(words: Sequence[Word], match: Match) -> bool:
    """Whether what fell is a thing, and on nobody: "the dumbbell fell", "my hair fell in my face"."""
    place = next((p for p in match.at if "FALL" in words[p].keys or words[p].text in _MOVES), 0)
    own = set().union(*(words[p].keys for p in match.at))
    if place < 2 or not own.isdisjoint({"PART", "me"}):  # noqa: PLR2004
        return False
    what, before = words[place - 1], words[place - 2].text
    living = not what.keys.isdisjoint(_LIVING) or what.text in MINE or what.text in OTHERS
    return before in _DETERMINERS and what.pause == 0 and not living


_MOVES: Final = frozenset("went flew rolled slid crashed came flipped landed".split())
_LIVING: Final = frozenset("OPPONENT VEHICLE PART BODY PRON FALL FILLER".split())
_DETERMINERS: Final = frozenset("the a an my our his her their".split())


def _describes_other(words: Sequence[Word], match: Match) -> bool:
    """Whether "numb" or "swollen" stands right before an odd word: "swollen inbox"."""
    if len(match.at) != 1:
        return False
    place = match.at[0]
    after = place + 1
    if any("PART" in word.keys for word in words):
        return False
    if words[place].text not in _DESCRIBING or after >= len(words) or words[after].pause:
        return False
    odd = is_odd(words[after]) and "ELSEWHERE" not in words[after].keys
    return odd and not words[after].text.endswith("ly") and words[after].keys <= {words[after].text}


def words_free_of(words: Sequence[Word], named: frozenset[str]) -> bool:
    """Whether none of `named` is said."""
    return all(word.text not in named for word in words)


# told of a game, a film or a figure of speech
_STORIES: Final = table(
    """
    in my|the|a dream|dreams|nightmare
    video|computer|board|card game
    madden|fifa|nba2k|minecraft|fortnite|roblox
    in .. movie|film|show|series|book|novel|song
    scoreboard|joke|joking|kidding|jk|metaphorically|figuratively|electricity
    for .. fun|laughs|effect
    """
)
# pain or illness of another kind, for which a tablet is taken
_OTHER_ILLS: Final = frozenset(
    "period cramps cramp headache headaches migraine tooth toothache dentist hangover hungover knee ankle "
    "allergy allergies hayfever menstrual cold".split()
)
# why a weight may fall or a night be hot, on purpose or by age
_REASONS: Final = frozenset(
    "menopause menopausal perimenopause diet dieting keto fasting cutting purpose planned intentionally "
    "ditched ramadan cardio weighin slimming calories".split()
)
_REASONS_OF: Final = {Group.PAINKILLERS: _OTHER_ILLS, Group.WEIGHT_NIGHT_SWEATS: _REASONS}
_UNPLANNED: Final = frozenset("not no without never isnt arent havent dont didnt".split())
# a state of a thing, where the thing is what the sentence is about: "my spikes have no grip"
_OF_THINGS: Final = frozenset(
    (Group.NUMB_TINGLE, Group.SWELLING_COLOUR_COLD, Group.WEAK_DROP, Group.TRAUMA_FALL,
     Group.DISLOCATION_SLIP, Group.POP_WITH_LOSS, Group.DEFORMITY, Group.LOST_MOTION)
)  # fmt: skip
_OWN_THINGS: Final = frozenset(
    "skin vein veins muscle muscles bone bones thing one side area spot patch lump bump body limb "
    "socket joint ball tendon ligament feeling sensation strength power grip hold pain ache whole rest "
    "half part top back front inside outside swelling numbness weakness tingling motion range movement "
    "fall blow hit pop snap crack sound noise doctor other right left ring watch sleeve bruise color colour".split()
)
_LINKS: Final = frozenset(
    "is are was were has have had got gets went goes gone looks feels seems keeps stays felt looked "
    "no not so too all completely totally really just still".split()
)
_HAPPENED: Final = frozenset(
    "fell broke tore came slid went slips slipped drops falls flew".split()
)
_GARMENTS: Final = frozenset(
    "suit shirt shorts pants trousers strides jeans jersey swimsuit trunks sock socks shoe shoes boot boots "
    "glove gloves bag tent tape sleeve bra jacket coat dress skirt tights leggings pimple zit balloon bubble "
    "blister tyre tire paper wrapping packet envelope page photo".split()
)


def _of_a_thing(words: Sequence[Word], entry: Entry, match: Match) -> bool:
    """Whether a thing is what the sign is said of, or what broke: "the door is swollen"."""
    own = set().union(*(words[place].keys for place in match.at))
    if entry.group not in _OF_THINGS or "PART" in own or "BODY" in own or "WORN" in own:
        return False
    after = {word.text for word in words[match.at[0] + 1 : match.at[0] + 6]}
    if entry.group == Group.POP_WITH_LOSS and after & _GARMENTS:
        return True
    first = words[match.at[0]].text
    place = match.at[0] - 1
    while place > 0 and words[place].text in _LINKS and words[place + 1].pause == 0:
        place -= 1
    linked = place < match.at[0] - 1 or first in _HAPPENED or first.endswith("ed")
    if place < 1 or words[place + 1].pause or not linked or after & MINE:
        return False
    noun, before = words[place], words[place - 1].text
    plain = noun.keys <= {noun.text, "THING", "DAILY", "VEHICLE", "GROUND", "MISSILE", "OPPONENT"}
    mine = noun.text in MINE or noun.text in _OWN_THINGS
    return before in _DETERMINERS and plain and not mine
