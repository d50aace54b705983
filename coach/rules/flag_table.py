"""The warning signs as data: tier, questions, words to read out, and where each sign was seen.

Law: how soon someone must be reached (the tier) and all wording were set here and await a
clinician's signature; only the sign itself may rest on a source. Nothing is decided here.
"""

from __future__ import annotations

from typing import Final, NamedTuple

from coach.model.decisions import Basis
from coach.model.flags import Section, Tier


class Flag(NamedTuple):
    """One warning sign.

    `question` and `wording_2` are closed yes or no questions; `list_words` are the words of the
    section's list line that name it; `say` is read out to the clinician; `worse` says when it
    becomes an emergency ('' where it is one); `how` says where the sign (not the tier) is from.
    """

    id: str
    tier: Tier
    question: str
    wording_2: str
    list_words: tuple[str, ...]
    say: str
    worse: str
    how: Basis
    source: str


_NOW = Tier.EMERGENCY_NOW
_TODAY = Tier.SAME_DAY
_BEFORE = Tier.BEFORE_NEXT_SESSION

_ARTUS = "Artus 2014"
_MITCHELL = "Mitchell 2005"
_PATHWAY = "a regional health service's list of shoulder warning signs"
_LAY = "a public health page on shoulder pain"
_DISCHARGE = "discharge sheets after shoulder keyhole surgery"
_ELBOW = "clinicians' reference pages on the inner elbow ligament"
_MEMORY = "from memory"

_ROWS: Final = (
    Flag(
        "E01",
        _NOW,
        "Arm or jaw pain with sweat, sickness or short breath counts too. "
        "Do you have chest pain, pressure or a tight chest?",
        "Count arm or jaw pain with sweat, sickness or short breath. "
        "Since last time, is your chest sore, tight or pressed?",
        ("chest",),
        "I have chest pain, or arm or jaw pain with sweat or sickness.",
        "",
        Basis.PRACTICE,
        f"{_PATHWAY}; {_LAY}",
    ),
    Flag(
        "E02",
        _NOW,
        "Is it hard to breathe, sharp to breathe in, or did you cough blood?",
        "Since last time, short breath, pain when you breathe in, or blood coughed up?",
        ("breathe",),
        "I find it hard or sharp to breathe, or I cough blood.",
        "",
        Basis.PRACTICE,
        _DISCHARGE,
    ),
    Flag(
        "E03",
        _NOW,
        "Is your shoulder out of place, a new shape, stuck, or maybe broken?",
        "Since last time, is your shoulder out of place, stuck, broken, or a new shape?",
        ("new shape",),
        "My shoulder is out of place, a new shape, stuck, or maybe broken.",
        "",
        Basis.PUBLISHED,
        f"{_MITCHELL}; {_PATHWAY}",
    ),
    Flag(
        "E04",
        _NOW,
        "Is your hand cold, white, gray or blue, or can it feel nothing?",
        "Since last time, did your hand go cold, white, gray or blue, or lose feeling?",
        ("cold", "odd color"),
        "My hand is cold, white, gray or blue, or it can feel nothing.",
        "",
        Basis.PRACTICE,
        f"{_LAY}; a textbook chapter on shoulder dislocation with vessel injury",
    ),
    Flag(
        "E05",
        _NOW,
        "Did your arm lately lose its strength or feeling all at once?",
        "Since last time, did the arm go limp or lose its feeling all at once?",
        ("weak", "fall"),
        "My arm lost its strength or feeling all at once.",
        "",
        Basis.PUBLISHED,
        f"{_MITCHELL}; Rangan 2015",
    ),
    Flag(
        "E06",
        _NOW,
        "Clumsy hands and leaks of pee or stool count too. "
        "Do you trip, lose balance, or feel numb between the legs?",
        "Count numb skin between the legs. "
        "Since last time, is it hard to walk, button up, or hold pee or stool?",
        ("clumsy legs",),
        "I trip, am clumsy, am numb between the legs, or leak pee or stool.",
        "",
        Basis.PUBLISHED,
        "Jiang 2024; two patient leaflets on the neck",
    ),
    Flag(
        "E07",
        _NOW,
        "A worst headache ever counts too. "
        "Does your face droop, is your speech odd, or is one side weak?",
        "Count a weak side of the body. "
        "Since last time, have you had a drooping face, odd speech or your worst headache?",
        ("odd face or speech",),
        "My face droops, my speech is odd, or one side is weak. Or this is my worst headache.",
        "",
        Basis.OURS,
        _MEMORY,
    ),
    Flag(
        "E08",
        _NOW,
        "Did you lately faint or nearly faint, or does your heart race or skip?",
        "Since last time, did you faint or nearly, or did your heart race or skip?",
        ("faint",),
        "I fainted or nearly did, or my heart races or skips.",
        "",
        Basis.OURS,
        _MEMORY,
    ),
    Flag(
        "E09",
        _NOW,
        "Do you have a fever and shake, feel confused, or feel very ill?",
        "Since last time, a fever with chills, a foggy mind, or feeling very ill?",
        ("chills",),
        "I have a fever and I shake, feel confused, or feel very ill.",
        "",
        Basis.PUBLISHED,
        "Rangan 2015",
    ),
    Flag(
        "E10",
        _NOW,
        "Does the tip of your shoulder hurt since a hit to belly or ribs?",
        "Since last time, did a blow to the ribs make your shoulder tip hurt?",
        ("hit",),
        "The tip of my shoulder hurts since a hit to the belly or ribs.",
        "",
        Basis.PRACTICE,
        _PATHWAY,
    ),
    Flag(
        "E11",
        _NOW,
        "Do you think about harming yourself?",
        "Since last time, have you thought about ending your life?",
        (),
        "I have thoughts of harming myself.",
        "",
        Basis.OURS,
        _MEMORY,
    ),
    Flag(
        "S01",
        _TODAY,
        "Is your arm swollen, heavy, tight, an odd color, or do veins stand out?",
        "Count veins that stand out. "
        "Since last time, is one arm puffy, heavy, tight or an odd color?",
        ("swollen",),
        "My arm is swollen, heavy, tight or an odd color, or veins stand out.",
        "If it gets hard to breathe, call {emergency} at once.",
        Basis.PUBLISHED,
        "Zakaria 2020; two case reports of young throwers",
    ),
    Flag(
        "S02",
        _TODAY,
        "Do you have a joint that is hot, red or swollen?",
        "Since last time, has a joint turned hot, red or puffy?",
        ("hot joint",),
        "I have a joint that is hot, red or swollen.",
        "If you shake or feel very ill, call {emergency} at once.",
        Basis.PUBLISHED,
        f"{_ARTUS}; Rangan 2015",
    ),
    Flag(
        "S03",
        _TODAY,
        "A fever of 38 C (100.4 F) or more counts too. "
        "Does your wound leak, open, smell, hurt more or look redder?",
        "Count a fever, 38 C (100.4 F) or more. "
        "Since last time, is your wound wet, open, smelly, redder or sorer?",
        ("bad wound",),
        "I have had surgery. My wound is worse, or I have a fever.",
        "If you shake or feel very ill, call {emergency} at once.",
        Basis.PRACTICE,
        f"{_DISCHARGE}, which differ; the lower fever figure is used",
    ),
    Flag(
        "S04",
        _TODAY,
        "Is one calf or leg sore, swollen, warm or red?",
        "Since last time, has one leg or calf become sore, puffy, warm or red?",
        ("sore leg",),
        "One of my legs is sore, swollen, warm or red.",
        "If it gets hard to breathe, call {emergency} at once.",
        Basis.PRACTICE,
        _DISCHARGE,
    ),
    Flag(
        "S05",
        _TODAY,
        "Did your shoulder slip out lately, or feel as if it did?",
        "Since last time, did the shoulder slip out and back, or feel like it?",
        ("slip",),
        "My shoulder slipped out, or felt as if it did.",
        "If it is out or stuck, leave it. Call {emergency} at once.",
        Basis.PUBLISHED,
        _MITCHELL,
    ),
    Flag(
        "S06",
        _TODAY,
        "Lately, did you feel a pop or tear, and is the arm weak since?",
        "Since last time, was there a pop or rip, then a weak arm?",
        ("pop",),
        "I felt a pop or tear. Now the arm is weak or hard to lift.",
        "If the arm goes limp or numb, call {emergency} at once.",
        Basis.PUBLISHED,
        f"{_MITCHELL}; Rangan 2015, who allow the next clinic day",
    ),
    Flag(
        "S07",
        _TODAY,
        "Did the inside of your elbow pop or hurt on one throw lately?",
        "Since last time, did one throw pop or hurt inside the elbow?",
        ("elbow",),
        "The inside of my elbow popped or hurt on one throw.",
        "If the hand gets cold, white or blue, call {emergency} at once.",
        Basis.PRACTICE,
        _ELBOW,
    ),
    Flag(
        "S08",
        _TODAY,
        "Is there a new numb, tingly or weak hand or arm that stays or spreads?",
        "Since last time, does a numb, tingly or weak hand stay so, or spread?",
        ("numb", "tingly"),
        "My hand or arm is newly numb, tingly or weak. It stays or spreads.",
        "If the hand gets cold, white or blue, call {emergency} at once.",
        Basis.PUBLISHED,
        f"{_MITCHELL}; {_LAY}",
    ),
    Flag(
        "S09",
        _TODAY,
        "Is your pain 8 or more of 10, or does nothing ease it at rest?",
        "Since last time, was pain 8 or more of 10, or did nothing ease it?",
        ("will not ease",),
        "My pain is 8 or more of 10, or nothing eases it at rest.",
        "If your chest hurts or it is hard to breathe, call {emergency} at once.",
        Basis.OURS,
        f"{_MEMORY}; the cut of 8 was set here",
    ),
    Flag(
        "S10",
        _TODAY,
        "Lately, did the upper arm or elbow snap, swell or hurt on a throw?",
        "Since last time, did a throw make the arm or elbow snap, swell or hurt?",
        ("pop",),
        "My arm or elbow snapped, swelled or hurt at once on a throw.",
        "If the arm is a new shape, cold or limp, call {emergency} at once.",
        Basis.OURS,
        f"{_MEMORY}; growth plates: StatPearls",
    ),
    Flag(
        "B01",
        _BEFORE,
        "Did pain lately wake you two nights in a row, or does it never stop?",
        "Since last time, did pain wake you two nights running, or last all day?",
        ("wakes you", "never stops"),
        "Pain wakes me two nights in a row, or it never stops.",
        "If it will not ease and you feel ill, call {emergency} at once.",
        Basis.PRACTICE,
        f"{_LAY}; the two nights were set here",
    ),
    Flag(
        "B02",
        _BEFORE,
        "Is your morning pain up two times in a row, or 2 above usual?",
        "Since last time, is morning pain up twice in a row, or 2 above usual?",
        (),
        "My pain on waking is up two times in a row, or 2 up.",
        "If the arm goes limp, numb or cold, call {emergency} at once.",
        Basis.PUBLISHED,
        "Farrar 2001; Michener 2011; Holmgren 2012; two in a row was set here",
    ),
    Flag(
        "B03",
        _BEFORE,
        "Does your upper arm or shoulder ache on throws, or are throws slower or wilder?",
        "Since last time, do throws make the upper arm ache, or go slow or wild?",
        ("throw pain",),
        "My upper arm or shoulder aches on throws, or they go slow or wild.",
        "If the arm is a new shape, cold or limp, call {emergency} at once.",
        Basis.PUBLISHED,
        "StatPearls on the growth plate of the upper arm; Bednar 2021",
    ),
    Flag(
        "B04",
        _BEFORE,
        "Does your shoulder catch, lock or clunk with pain, or go dead on throws?",
        "Since last time, has it caught, locked or clunked with pain, or gone dead?",
        ("lock", "dead arm"),
        "My shoulder catches, locks or clunks with pain, or goes dead on throws.",
        "If it is stuck or a new shape, call {emergency} at once.",
        Basis.OURS,
        _MEMORY,
    ),
    Flag(
        "B05",
        _BEFORE,
        "Do your ring or little finger tingle when you throw?",
        "Since last time, did a throw make your small fingers buzz?",
        ("tingly",),
        "My ring or little finger tingles when I throw.",
        "If the hand gets cold, white or blue, call {emergency} at once.",
        Basis.PRACTICE,
        _ELBOW,
    ),
    Flag(
        "B06",
        _BEFORE,
        "Can you move the arm much less than last week?",
        "Since last time, did you lose a move you could do before?",
        ("moves less",),
        "I can move the arm much less than last week.",
        "If it is stuck or a new shape, call {emergency} at once.",
        Basis.PUBLISHED,
        _ARTUS,
    ),
    Flag(
        "B07",
        _BEFORE,
        "New pain after a past cancer counts too. "
        "Do you lose weight with no plan to, sweat at night, or have a lump?",
        "Count new pain after a past cancer. "
        "Since last time, have you had a lump, wet sheets, or lost weight unplanned?",
        (),
        "I lose weight, sweat at night, have a lump, or new pain after cancer.",
        "If you feel very ill, call {emergency} at once.",
        Basis.PUBLISHED,
        f"{_ARTUS}; Rangan 2015",
    ),
    Flag(
        "B08",
        _BEFORE,
        "Are a few joints, or both shoulders, stiff or swollen?",
        "Since last time, are many joints or both shoulders stiff or puffy on waking?",
        (),
        "A few joints, or both shoulders, are stiff or swollen.",
        "If one is hot and you feel very ill, call {emergency} at once.",
        Basis.PUBLISHED,
        "Rangan 2015",
    ),
    Flag(
        "B09",
        _BEFORE,
        "Do you take pain pills so that you can train or throw?",
        "Since last time, did you need a pain pill to get through?",
        (),
        "I take pain pills so that I can train or throw.",
        "If you pass out or feel very ill, call {emergency} at once.",
        Basis.OURS,
        f"{_MEMORY}; pain pills hide the pain that is asked about",
    ),
    Flag(
        "B10",
        _BEFORE,
        "Have you been flat, low, tired or short of sleep for two weeks?",
        "For two weeks now, have you slept badly, felt low or done worse, with rest?",
        (),
        "I have been flat, low, tired or short of sleep for two weeks.",
        "If you faint or your heart races, call {emergency} at once.",
        Basis.OURS,
        f"{_MEMORY}; no one marker is enough: Meeusen 2013",
    ),
    Flag(
        "B11",
        _BEFORE,
        "A fever is 38 C (100.4 F) or more, or feeling hot. "
        "Do you have one, a chest cough, aches all over, loose stools, or vomit?",
        "Fever means 38 C (100.4 F) or more, or feeling hot. "
        "Since last time, fever, vomiting, loose stools, chest cough, or aches all over?",
        ("fever", "vomiting"),
        "I have a fever, a chest cough, aches, loose stools, or I vomit.",
        "If you shake or feel very ill, call {emergency} at once.",
        Basis.PUBLISHED,
        "Primos 1996; Dick 2014",
    ),
)

FLAGS: Final[dict[str, Flag]] = {flag.id: flag for flag in _ROWS}

SECTION_NUMBER: Final[dict[Section, int]] = {
    Section.ARM: 1,
    Section.JOINT: 2,
    Section.BODY: 3,
    Section.ILL: 4,
    Section.NIGHT: 5,
    Section.WEEKLY: 6,
}

# The whole section in one question; a yes opens its flags one by one.
SECTION_QUESTIONS: Final[dict[Section, tuple[str, str]]] = {
    Section.ARM: (
        "Since last time: numb, tingly, weak, swollen, cold, an odd color, or moves less?",
        "Has your arm changed: numb, tingly, weak, swollen, cold, odd color, or moves less?",
    ),
    Section.JOINT: (
        "Since then: slip, pop, lock, dead arm, new shape, elbow or throw pain, fall, hit?",
        "Any new shape, slip, pop, lock, dead arm, elbow or throw pain, fall or hit?",
    ),
    Section.BODY: (
        "Since last time: chest pain, hard to breathe, faint, odd face or speech, clumsy legs?",
        "Any chest pain, short breath, fainting, an odd face or speech, or clumsy legs?",
    ),
    Section.ILL: (
        "Since last time: fever, vomiting, a hot, red joint, a bad wound, or sore leg?",
        "Do you feel ill: chills, fever, vomiting, a hot joint, sore leg, or bad wound?",
    ),
    Section.NIGHT: (
        "Since last time: pain that wakes you, never stops, or will not ease?",
        "At night or at rest: pain that wakes you, never stops, or will not ease?",
    ),
    Section.WEEKLY: (
        "This week: weight loss, night sweats, a lump, stiff joints, pain pills, or worn out?",
        "Any pain pills, stiff joints, night sweats, lost weight, a lump, or two flat weeks?",
    ),
}

# One line a section for the list that is answered `none` or with numbers; the weekly one is not
# in it.
SECTION_LIST: Final[dict[Section, str]] = {
    Section.ARM: "1 Arm: numb, tingly, weak, swollen, cold, odd color, or moves less.",
    Section.JOINT: "2 Joint: slip, pop, lock, dead arm, new shape, elbow or throw pain, fall, hit.",
    Section.BODY: "3 Body: chest pain, hard to breathe, faint, odd face or speech, clumsy legs.",
    Section.ILL: "4 Ill: fever, chills, vomiting, hot joint, bad wound, or sore leg.",
    Section.NIGHT: "5 Night: pain that wakes you, never stops, or will not ease.",
}
