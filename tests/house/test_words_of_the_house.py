"""Coach makes no claim, no promise, no cheer and no reproach, in any room and any program.

The lists were set here, to be read and signed by a clinician. They are a floor: a new way to claim
something needs a new line.
"""

import re

import pytest

from tests.house.modules import Module, all_modules, module, spoken_texts
from tests.house.sentences import Spoken, spoken

# What may be said to nobody: pattern, and why it is out.
OUT_EVERYWHERE = {
    r"\bcleared (to|for)\b": "only a clinician clears",
    r"\bsafe (to|for)\b|\bit is safe\b|\bsafely\b": "no one knows that from here",
    r"\bdiagnos": "Coach finds out nothing",
    r"\b(great|good|nice|awesome|amazing) (job|work|going)\b|\bwell done\b": "no cheers",
    r"\bcongrat|\bproud of\b|\bkeep it up\b|\bcrush": "no cheers",
    r"\bstreak|\b(days|weeks|sessions) in a row\b|\bpersonal best\b|\bpoints\b|\bbadge": "no scores",
    r"\bwill (fix|heal|cure|prevent|protect)\b|\bguarantee": "no promises",
    r"\bheals?\b|\bcures?\b|\binjury[- ]proof": "no promises",
    r"\bchances? (of|that)\b|\blikely\b|\bodds\b|\brisk of\b": "no odds",
    r"\byou (missed|skipped|failed|forgot|should have)\b|\bfailed (set|rep)": "no blame",
    r"\binvalid\b|\bwrong answer\b|\bnoncomplian": "not heard is our fault",
    r"\bno pain,? no gain\b|\bpush (through|past)\b|\btough it out\b": "pain ends a set",
    r"\bI('m| am) (worried|sorry|glad|happy|proud)\b": "Coach is no person",
    r"!(\s|$)": "calm",
}
# What an athlete is not told, because a plain word stands for it.
OUT_FOR_ATHLETES = {
    *("abduct adduct scapula retract protract supine prone anterior posterior lateral".split()),
    *("flex extend isometric eccentric concentric repetition resistance".split()),
    *("contraindicated paresthesia edema inflamed acute chronic exacerbate flare".split()),
    *("discomfort mild moderate severe tolerate modify discontinue initiate perform".split()),
    *("maintain approximately consult medication physician doctor normal".split()),
    *("just simply safe heal prevent skipped missed bad".split()),
}
SPEAKING_ROOMS = {"session", "rules", "drivers", "reports", "journal", "pages", "cli"}
FOR_ATHLETES = {"session", "drivers", "reports"}


def claims(text: str) -> list[str]:
    """Why a text may not be said; empty when it may."""
    return [
        why for pattern, why in OUT_EVERYWHERE.items() if re.search(pattern, text, re.IGNORECASE)
    ]


def hard_words(text: str) -> set[str]:
    """Words of the trade, or empty ones, in a text for an athlete."""
    is_markup = text.lstrip().startswith("<")  # read by a build server, not by a person
    return set() if is_markup else OUT_FOR_ATHLETES & set(re.findall(r"[a-z]+", text.lower()))


def claims_of(one: Module) -> list[str]:
    """Every claim among the literals of a module."""
    return [
        f"{one.name}:{line}: {text!r}: {why}"
        for line, text in spoken_texts(one.tree)
        for why in [*claims(text), *(hard_words(text) if one.room in FOR_ATHLETES else [])]
    ]


@pytest.mark.parametrize(
    "one",
    [one for one in all_modules() if one.room in SPEAKING_ROOMS],
    ids=lambda one: str(one.name),
)
def test_no_room_claims_promises_cheers_or_blames(one: Module) -> None:
    assert claims_of(one) == []


@pytest.mark.parametrize("said", spoken(), ids=lambda said: f"{said.place}:{said.text[:30]}")
def test_no_program_claims_promises_cheers_or_blames(said: Spoken) -> None:
    assert claims(said.text) == []
    assert hard_words(said.text) == set()


@pytest.mark.parametrize(
    "text",
    [
        "You are cleared to throw.",
        "It is safe to go on.",
        "Diagnosis: a torn cuff.",
        "Great job today.",
        "Five days in a row.",
        "This will fix your shoulder.",
        "The chance of a tear is low.",
        "You missed two days.",
        "Invalid input.",
        "Push through it.",
        "Set 2!",
        "I'm sorry.",
    ],
)
def test_a_claim_is_found(text: str) -> None:
    assert claims(text)
    assert claims_of(module("coach.session.bad", f"WORDS = {text!r}"))
    assert claims_of(module("coach.session.bad", f"WORDS = f{('{name}. ' + text)!r}"))


@pytest.mark.parametrize(
    "text",
    [
        "I follow your plan. I cannot tell what this is. Call M. Aalto.",
        "Only M. Aalto can open it.",
        "Saved: 13 reps, pain 1 of 10.",
    ],
)
def test_plain_words_are_no_claim(text: str) -> None:
    assert claims(text) == []
    assert hard_words(text) == set()


def test_a_trade_word_is_found() -> None:
    assert hard_words("Retract the scapula.") == {"retract", "scapula"}
