"""Reads yes or no: the ordinary kind, with corrections and hedges, and the strict safety kind.

Law: the first clear word wins, a later correction wins over it; "maybe" and "depends" are
unclear. To a safety question only plain words count; y, n, 0, "fine" and "all good" do not.
Rule P10: nothing soft is ever an answer to a safety question.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.hearing.numbers import numbers_in
from coach.hearing.slots import UNCLEAR, Read, text_at, word_set
from coach.hearing.yes_no_topics import said_on_topic

if TYPE_CHECKING:
    from collections.abc import Sequence

    from coach.hearing.words import Word

_YES: Final = word_set(
    "bet check checked naturally fosho obviously clearly yes yeah yep yup yas sure affirmative definitely absolutely totally certainly indeed si oui "
    "yessir yeps y yuppers aye correct agree agreed huh mhm mmhmm yessss ofc"
)
_NO: Final = word_set(
    "no nope nah nada zilch zip nothin negatory negative nay never n noo nooo none nothing nuh disagree naw neither"
)
_MAYBE: Final = word_set(
    "maybe depends unsure idk dunno perhaps possibly might eh meh dk unclear either unknown"
)
_SOFT_YES: Final = word_set(
    "kinda sorta lil somewhat hair smidgen little bit some sometimes slight slightly smidge occasionally tad few "
    "mild mildly touch couple"
)
_PLAIN_YES: Final = word_set("yes yeah yep yup")
_PLAIN_NO: Final = word_set("no nope nah")
_FIX: Final = word_set("jk wait actually sorry scratch oops nvm correction rather")
_HEDGES: Final = word_set("think guess probably kinda maybe sorta suppose mostly really bit little")
_DO_NOT: Final = word_set(
    "didnt havent hadnt dont wasnt isnt not wont hasnt doesnt cant arent couldnt"
)
_SOFT_NO_AFTER: Final = word_set("really much too particularly exactly especially that often")
_DONE: Final = word_set("did done have had was do does yea finished completed all am is")
_UNKNOWN: Final = frozenset(
    (("not", "sure"), ("dont", "know"), ("no", "idea"), ("no", "clue"), ("might", "have"),
     ("could", "be"), ("hard", "to"), ("cant", "tell"), ("couldnt", "tell"),
     ("cant", "say"), ("couldnt", "say"), ("who", "knows"), ("pay", "attention"),
     ("didnt", "notice"), ("didnt", "check"), ("didnt", "look"), ("cant", "remember"), ("dont", "remember"),
     ("part", "of"), ("some", "of"), ("most", "of"), ("half", "of"))
)  # fmt: skip
_GO: Final = word_set(
    "whenever roll rock born anytime hit ready go yes lets ok okay good set carry next continue onwards "
    "onward please keep bring"
)
_LATER: Final = word_set("sec second seconds minute min wait yet hold moment hang resting rest")
_THUMBS: Final = (
    ("\U0001f44d", "yes"),
    ("\U0001f44c", "yes"),
    ("\U0001f44e", "no"),
    ("\u2705", "yes"),
)


# two words that say yes or no between them
_SET_ANSWERS: Final = {
    ("why", "not"): "yes", ("all", "set"): "yes", ("uh", "huh"): "yes", ("get", "it"): "yes",
    ("think", "not"): "no", ("noticed", "none"): "no", ("all", "clear"): "no", ("noticed", "nothing"): "no",
    ("you", "bet"): "yes", ("all", "means"): "yes", ("afraid", "so"): "yes",
    ("know", "it"): "yes", ("hell", "yeah"): "yes", ("sounds", "good"): "yes",
    ("afraid", "not"): "no", ("did", "not"): "no", ("not", "yet"): "no", ("no", "way"): "no", ("rather", "not"): "no",
    ("prefer", "not"): "no", ("not", "today"): "no", ("no", "chance"): "no",
    ("reckon", "so"): "yes", ("guess", "so"): "yes", ("suppose", "so"): "yes", ("think", "so"): "yes",
    ("too", "right"): "yes", ("carry", "on"): "yes", ("keep", "going"): "yes", ("go", "on"): "yes",
    ("go", "ahead"): "yes", ("next", "please"): "yes", ("had", "enough"): "no", ("ticked", "off"): "yes",
    ("never", "better"): "yes", ("been", "better"): "no", ("felt", "better"): "no",
    ("felt", "worse"): "yes", ("been", "worse"): "yes",
}  # fmt: skip


def _polar(words: Sequence[Word], place: int) -> str | None:
    """Yes or no if the word at `place` says so on its own."""
    text, after = words[place].text, text_at(words, place + 1)
    said = _SET_ANSWERS.get((text, after))
    if said is not None:
        return "no" if said == "yes" and _is_denied(words, place) else said
    if text in _NO:
        if text == "no" and after in ("idea", "clue", "doubt", "wonder", "question"):
            return "yes" if after in ("doubt", "question") else None
        return "no"
    if text in _YES:
        return "no" if "not" in (after, text_at(words, place - 1)) and text != "yes" else "yes"
    if text == "of" and after == "course":
        return "yes"
    if text == "for" and after == "sure":
        return "yes"
    return None


def _is_denied(words: Sequence[Word], place: int) -> bool:
    """Whether a "not" stands right before: "i dont think so"."""
    return text_at(words, place - 1) in _DO_NOT


def _hedged(words: Sequence[Word]) -> bool:
    return any(word.text in _HEDGES or word.text in _SOFT_YES for word in words)


def _emoji(text: str) -> str | None:
    return next((value for sign, value in _THUMBS if sign in text), None)


def _after_fix(words: Sequence[Word]) -> str | None:
    """The answer after the last correction: "yes... jk no"."""
    for place in range(len(words) - 1, 0, -1):
        meant = (text_at(words, place - 1), words[place].text) == ("i", "mean")
        if meant or words[place].text in _FIX:
            for later in range(place + 1, min(place + 4, len(words))):
                said = _polar(words, later)
                if said:
                    return said
            return None
    return None


_HURT: Final = word_set(
    "hurt hurts hurting sore soreness pain pains painful ache ached achy aches aching twinge twinged "
    "stung stings sharp tight tender throbbed throbbing bothered ouch uncomfortable discomfort pinch "
    "pinched"
)
_WELL: Final = word_set(
    "great behaved quiet sailing smoothly fine good ok okay normal same usual perfect clean smooth clear awesome solid alright "
    "comfortable amazing nothing through excellent"
)
_SIGNS: Final = word_set(
    "any numbness numb tingling weakness weak swelling swollen slip slipped pop popped fever chills "
    "dizzy faint cold color colour new worse odd unusual locked catch"
)
_ONLY: Final = word_set(
    "only just when during after towards toward late early whenever at on near by"
)
_TIMES: Final = word_set(
    "throws throw throwing end inning innings long hard fast follow release last"
)
_SKIPPED: Final = word_set(
    "asleep alas skipped skip slipped mind forgot busy missed tired sick later tomorrow passed ran bailed lazy blanked "
    "nowhere zero travel travelling traveling dropped crashed"
)
_ALL: Final = word_set("all every everything each done both twice completed finished did")
_PARTLY: Final = word_set(
    "some most half part few couple mostly partly one two three 1 2 3 4 almost"
)
_NOT_YET: Final = word_set(
    "need rest more gimme give hold hang wait later almost nearly tired breather break water still "
    "puffing panting breath breathing recovering enough thatll stop quit finished shattered"
)


def _by_topic(words: Sequence[Word], ask: str) -> Read | None:
    """An answer in words about the thing asked: "sore after", "felt great", "skipped"."""
    texts = {word.text for word in words}
    if any((w.text, text_at(words, k + 1)) == ("pain", "free") for k, w in enumerate(words)):
        return Read("no", (0,))
    about = set(ask.lower().replace("?", " ").replace(",", " ").split())
    denied = bool(texts & (_DO_NOT | {"no", "without", "zero", "never", "nothing", "none", "free"}))
    if about & {"ready", "go"}:
        return _ready_answer(texts)
    if about & _OVER:
        clock = "at" in texts and any(w.text[0].isdigit() for w in words)
        return Read("no", (0,)) if clock else _over_answer(texts, denied=denied)
    if about >= {"feel", "well"}:
        return _well_answer(texts, denied=denied)
    if about & _GEAR and about & {"have", "got", "with", "hand"} and not about & _HURT:
        return _gear_answer(texts, denied=denied)
    return _by_health(words, texts, about, denied=denied)


def _by_health(
    words: Sequence[Word], texts: set[str], about: set[str], *, denied: bool
) -> Read | None:
    """An answer about pain, signs or the exercises done."""
    if (
        about & {"exercises", "program", "session", "workout"}
        and "did" in about
        and not about & _HURT
    ):
        if texts & _SKIPPED:
            return Read("no", (0,))
        if texts & _PARTLY and not texts & {"every", "everything"}:
            return UNCLEAR
        return Read("yes", (0,)) if texts & _ALL and not denied else None
    if about & (_HURT | {"wake"}):
        return _hurt_answer(words, texts, denied=denied)
    if about & _SIGNS and text_at(words, 0) == "only" and not denied:
        return Read("yes", (0,), hedged=True)
    if about & _SIGNS and texts & (_WELL - {"usual"}) and not texts & _HURT and not denied:
        return Read("no", (0,))
    return None


_OVER: Final = word_set("over finished ended")
_IS_OVER: Final = word_set("over finished ended done won lost played")
_TO_COME: Final = word_set(
    "starts start later tonight soon yet still tomorrow begins upcoming until going underway evening go "
    "left remaining half"
)


_FEEL_WELL: Final = _WELL | word_set("well fit grand super brilliant wonderful fantastic tip-top")
_FEEL_ILL: Final = word_set(
    "rough crook poorly ill sick unwell lousy terrible awful crap bad weather off meh queasy worse "
    "horrible groggy shivery feverish hungover"
)


def _well_answer(texts: set[str], *, denied: bool) -> Read | None:
    """Whether one feels well: "fit as a fiddle", "a bit rough"."""
    if texts & _FEEL_ILL:
        return UNCLEAR if denied else Read("no", (0,))
    if texts & _FEEL_WELL:
        return Read("no" if denied else "yes", (0,))
    return None


def _over_answer(texts: set[str], *, denied: bool) -> Read | None:
    """Whether what was asked about is over: "it finished an hour ago", "it starts at six"."""
    if texts & _TO_COME or (denied and texts & _IS_OVER):
        return Read("no", (0,))
    return Read("yes", (0,)) if texts & _IS_OVER else None


_GEAR: Final = word_set(
    "band bands dumbbell dumbbells towel ball weight weights equipment stick wall"
)
_AT_HAND: Final = word_set("got have has brought here bag packed")
_LEFT: Final = word_set(
    "car locker upstairs downstairs school left forgot lost home broke broken snapped ripped without "
    "wash laundry office club gym missing torn chewed only"
)


def _gear_answer(texts: set[str], *, denied: bool) -> Read | None:
    """Whether the thing asked about is at hand: "got it", "left it at home"."""
    if texts & _LEFT or (denied and texts & _AT_HAND):
        return Read("no", (0,))
    return Read("yes", (0,)) if texts & _AT_HAND else None


def _ready_answer(texts: set[str]) -> Read | None:
    if texts & (_NOT_YET | _LATER):
        return Read("no", (0,))
    return Read("yes", (0,)) if texts & _GO else None


def _hurt_answer(words: Sequence[Word], texts: set[str], *, denied: bool) -> Read | None:
    if texts & _HURT and not denied:
        return Read("yes", (0,), hedged=_hedged(words))
    numbers = [n.value for n in numbers_in(words)]
    if numbers and len(words) <= 6:  # noqa: PLR2004
        return Read("yes" if max(numbers) > 0 else "no", (0,))
    if texts & _WELL and not denied:
        return Read("no", (0,))
    told = texts & _ONLY and texts & (_TIMES | {"i", "first", "reach", "the"})
    if (told or text_at(words, 0) == "only") and not denied:
        return Read("yes", (0,))
    return None


_WHOLE_YES: Final = frozenset(
    (
        ("it", "is"),
        ("they", "are"),
        ("it", "was"),
        ("i", "am"),
        ("i", "do"),
        ("i", "have"),
        ("i", "did"),
    )
)


def _phrase(words: Sequence[Word], ask: str, *, ready: bool) -> Read:
    """Answers without a yes or no in them: "not really", "a little", "didnt get to it"."""
    texts = {word.text for word in words}
    if tuple(word.text for word in words) in _WHOLE_YES:
        return Read("yes", (0,))
    if [word.text for word in words[:3]] == ["i", "think", "so"]:
        return Read("yes", (0,), hedged=True)
    over = not _OVER.isdisjoint(ask.lower().replace("?", "").split())
    if (text_at(words, 0), text_at(words, 1)) == ("not", "until") and not ready and not over:
        return Read("yes", (0,), hedged=True)
    if ready and texts & _LATER:
        return Read("no", (0,))
    if texts & _MAYBE:
        return UNCLEAR
    if text_at(words, len(words) - 1) in ("not", "none", "no", "nothing"):
        return Read("no", (len(words) - 1,))  # "i am glad to say not", "happy to say none"
    topic = _by_topic(words, ask)
    if topic is not None:
        return topic
    place = next((k for k, word in enumerate(words) if word.text in _DO_NOT), None)
    if place is not None and place <= 2:  # noqa: PLR2004
        soft = text_at(words, place + 1) in _SOFT_NO_AFTER
        return Read("no", (place,), hedged=soft)
    return _soft_yes(words, texts, ready=ready)


def _soft_yes(words: Sequence[Word], texts: set[str], *, ready: bool) -> Read:
    first, after = text_at(words, 0), text_at(words, 1)
    if first in ("hardly", "barely"):
        said = first == "hardly" or after in ("any", "anything")
        return Read("no" if said else "yes", (0,), hedged=True)
    if texts & {"once", "twice"}:
        return Read("yes", (0,))
    if texts & _SOFT_YES or (first, after) in (("sort", "of"), ("kind", "of")):
        return Read("yes", (0,), hedged=True)
    if first == "always":
        return Read("yes", (0,))
    told = (first in ("i", "we") and after in _DONE) or first in (
        "did", "done", "ok", "okay", "alright",
    )  # fmt: skip
    return Read("yes", (0,)) if told or (ready and texts & _GO) else UNCLEAR


def read_yes_no(text: str, words: Sequence[Word], ask: str) -> Read:
    """Yes or no in any ordinary wording; `hedged` when soft; unclear for "maybe", "depends"."""
    if text.strip(" .!,").lower() == "n":
        return Read("no", (0,))
    if any(
        (text_at(words, k), text_at(words, k + 1)) in _UNKNOWN
        and text_at(words, k + 2) not in ("better", "worse")
        for k in range(len(words))
    ):
        return UNCLEAR
    if text_at(words, 0) == "yes" and text_at(words, 1) == "and" and text_at(words, 2) in _NO:
        return UNCLEAR
    fixed = "no" if _ends_in_n(words) else _after_fix(words) or _yeah_nah(words)
    if fixed:
        return Read(fixed, (len(words) - 1,))
    ready = "ready" in ask.lower()
    said = _first_polar(words, ready=ready)
    if said is not None:
        return said
    on_topic = said_on_topic(words, ask)
    if on_topic is not None:
        return UNCLEAR if on_topic == "unclear" else Read(on_topic, (0,), hedged=_hedged(words))
    phrase = _phrase(words, ask, ready=ready) if words else UNCLEAR
    emoji = _emoji(text)
    return Read(emoji) if phrase.value is None and emoji else phrase


def _yeah_nah(words: Sequence[Word]) -> str | None:
    """The last of a run of "yeah" and "nah" that opens the answer, where both are there."""
    run = []
    for word in words:
        if word.text not in ("yeah", "yea", "nah"):
            break
        run.append("no" if word.text == "nah" else "yes")
    return run[-1] if len(set(run)) > 1 else None


def _ends_in_n(words: Sequence[Word]) -> bool:
    """Whether the answer ends in a single typed n: "y... i mean n"."""
    last = words[-1] if words else None
    return last is not None and last.text in ("n", "and") and last.end - last.start == 1


def _first_polar(words: Sequence[Word], *, ready: bool) -> Read | None:
    """The first word that says yes or no, or None; unclear where it is doubted in one breath."""
    texts = {word.text for word in words}
    for place in range(len(words)):
        said = _polar(words, place)
        if said is None:
            continue
        if words[place].text in ("no", "n") and text_at(words, place + 1) in ("yes", "y"):
            return UNCLEAR
        if ready and texts & _LATER:
            return Read("no", (place,))
        if place > 3 and said == "no" and not _ends_with(words, place):  # noqa: PLR2004
            return None
        if place > 0 and texts & (_MAYBE - {"maybe", "might"}):
            return UNCLEAR
        return Read(said, (place,), hedged=_hedged(words))
    return None


def _ends_with(words: Sequence[Word], place: int) -> bool:
    """Whether the answer ends in "so no", "lol no"."""
    return place + 1 == len(words) and text_at(words, place - 1) in ("so", "lol", "haha")


def read_safety(words: Sequence[Word]) -> Read:
    """Only a plain yes or no, first in the answer, not hedged, not taken back."""
    first = text_at(words, 0)
    said = "yes" if first in _PLAIN_YES else "no" if first in _PLAIN_NO else None
    if said is None:
        return UNCLEAR
    rest = words[1:]
    texts = {word.text for word in rest}
    if texts & (_FIX | _MAYBE | {"y", "n"}) or (texts & _PLAIN_YES and said == "no"):
        return UNCLEAR
    if said == "no" and (texts & (_HEDGES | _SOFT_YES) or _takes_back(rest)):
        return UNCLEAR
    if said == "yes" and texts & _PLAIN_NO:
        return UNCLEAR
    return Read(said, (0,))


def _takes_back(rest: Sequence[Word]) -> bool:
    """Whether "no" is followed by what may undo it: "no but", "no except", "no idea"."""
    return any(
        word.text in ("but", "except", "idea", "clue", "well", "doubt", "though", "sure", "worse")
        for word in rest
    )
