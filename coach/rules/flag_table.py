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
        "Do you have chest pain, or arm or jaw pain with sweat or sickness?",
        "Since last time, is your chest tight, pressed or sore?",
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
        "Since last time, did you get short of breath, or cough up blood?",
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
        "Since last time, does your shoulder look out of place, or is it stuck?",
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
        "Since last time, did your hand turn cold, pale or blue, or go dead?",
        ("cold", "odd color"),
        "My hand is cold, pale or blue, or it can feel nothing.",
        "",
        Basis.PRACTICE,
        f"{_LAY}; a textbook chapter on shoulder dislocation with vessel injury",
    ),
    Flag(
        "E05",
        _NOW,
        "Did your arm lose its strength or feeling all at once?",
        "Since last time, did the arm go limp, or could it not lift?",
        ("weak", "fall"),
        "My arm lost its strength or feeling all at once.",
        "",
        Basis.PUBLISHED,
        f"{_MITCHELL}; Rangan 2015",
    ),
    Flag(
        "E06",
        _NOW,
        "Do you trip, feel clumsy, feel numb between the legs, or leak pee?",
        "Since last time, is it hard to walk, do buttons up, or hold your pee?",
        ("clumsy legs",),
        "I trip, I am clumsy, I am numb between the legs, or I leak pee.",
        "",
        Basis.PUBLISHED,
        "Jiang 2024; two patient leaflets on the neck",
    ),
    Flag(
        "E07",
        _NOW,
        "Does your face droop, is your speech odd, or is one side weak?",
        "Since last time, have you had odd speech or your worst headache?",
        ("odd face or speech",),
        "My face droops, my speech is odd, one side is weak, or my head hurts badly.",
        "",
        Basis.OURS,
        _MEMORY,
    ),
    Flag(
        "E08",
        _NOW,
        "Did you faint, nearly faint, or does your heart race or skip?",
        "Since last time, did you pass out, or did your heart beat oddly?",
        ("faint",),
        "I passed out or nearly did, or my heart races or skips.",
        "",
        Basis.OURS,
        _MEMORY,
    ),
    Flag(
        "E09",
        _NOW,
        "Do you have a fever and shake, feel confused, or feel very ill?",
        "Since last time, have you had a fever with chills or a foggy mind?",
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
        "I think about harming myself.",
        "",
        Basis.OURS,
        _MEMORY,
    ),
    Flag(
        "S01",
        _TODAY,
        "Is your arm swollen, heavy, tight, an odd color, or do veins stand out?",
        "Since last time, is one arm puffy, tight, red or blue?",
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
        "Is your wound open, wet, red or sorer, or is it 38 C (100.4 F) or more?",
        "Since last time, does the wound leak, smell, open or hurt more?",
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
        "Since last time, has one leg become sore, puffy or hot?",
        ("sore leg",),
        "One of my legs is sore, swollen, warm or red.",
        "If it gets hard to breathe, call {emergency} at once.",
        Basis.PRACTICE,
        _DISCHARGE,
    ),
    Flag(
        "S05",
        _TODAY,
        "Did your shoulder slip out, or feel as if it did?",
        "Since last time, has the shoulder slid out and gone back in?",
        ("slip",),
        "My shoulder slipped out, or felt as if it did.",
        "If it is out or stuck, leave it. Call {emergency} at once.",
        Basis.PUBLISHED,
        _MITCHELL,
    ),
    Flag(
        "S06",
        _TODAY,
        "Did you feel a pop or tear, and is the arm weak since?",
        "Since last time, did it pop or rip, and now you cannot lift?",
        ("pop",),
        "I felt a pop or tear, and the arm is weak since.",
        "If the arm goes limp or numb, call {emergency} at once.",
        Basis.PUBLISHED,
        f"{_MITCHELL}; Rangan 2015, who allow the next clinic day",
    ),
    Flag(
        "S07",
        _TODAY,
        "Did the inside of your elbow pop or hurt on one throw?",
        "Since last time, did one throw hurt inside the elbow all at once?",
        ("elbow",),
        "The inside of my elbow popped or hurt on one throw.",
        "If the hand gets cold, white or blue, call {emergency} at once.",
        Basis.PRACTICE,
        _ELBOW,
    ),
    Flag(
        "S08",
        _TODAY,
        "Do you have new numb, tingly or weak grip that stays or spreads?",
        "Since last time, do pins and needles or a weak grip stay?",
        ("numb", "tingly"),
        "I have a new numb, tingly or weak hand. It stays or spreads.",
        "If the hand gets cold, white or blue, call {emergency} at once.",
        Basis.PUBLISHED,
        f"{_MITCHELL}; {_LAY}",
    ),
    Flag(
        "S09",
        _TODAY,
        "Is your pain 8 or more of 10, or does rest never ease it?",
        "Since last time, is there pain that nothing eases, even at rest?",
        ("will not ease",),
        "My pain is 8 or more of 10, or nothing eases it.",
        "If your chest hurts or it is hard to breathe, call {emergency} at once.",
        Basis.OURS,
        f"{_MEMORY}; the cut of 8 was set here",
    ),
    Flag(
        "S10",
        _TODAY,
        "When you threw, did the arm or elbow snap, swell or hurt at once?",
        "Since last time, did a bone snap or hurt at once on a throw?",
        ("pop",),
        "My arm or elbow snapped, swelled or hurt at once on a throw.",
        "If the arm is a new shape, cold or limp, call {emergency} at once.",
        Basis.OURS,
        f"{_MEMORY}; growth plates: StatPearls",
    ),
    Flag(
        "B01",
        _BEFORE,
        "Did pain wake you two nights in a row, or does it never stop?",
        "Since last time, was there pain all day, or two nights woken by it?",
        ("wakes you", "never stops"),
        "Pain wakes me two nights in a row, or it never stops.",
        "If it will not ease and you feel ill, call {emergency} at once.",
        Basis.PRACTICE,
        f"{_LAY}; the two nights were set here",
    ),
    Flag(
        "B02",
        _BEFORE,
        "Was the pain worse the next morning, two times in a row?",
        "Since last time, is your morning pain 2 or more above usual?",
        (),
        "My morning pain is up two times in a row, or 2 above usual.",
        "If the arm goes limp, numb or cold, call {emergency} at once.",
        Basis.PUBLISHED,
        "Farrar 2001; Michener 2011; Holmgren 2012; two in a row was set here",
    ),
    Flag(
        "B03",
        _BEFORE,
        "Does your upper arm or shoulder ache when you throw?",
        "Since last time, are your throws slower or wilder, with an ache?",
        ("throw pain",),
        "My upper arm or shoulder aches when I throw.",
        "If the arm is a new shape, cold or limp, call {emergency} at once.",
        Basis.PUBLISHED,
        "StatPearls on the growth plate of the upper arm; Bednar 2021",
    ),
    Flag(
        "B04",
        _BEFORE,
        "Does your shoulder catch, lock or clunk, or go dead on throws?",
        "Since last time, has it locked or clunked with pain?",
        ("lock", "dead arm"),
        "My shoulder catches, locks or clunks, or goes dead on throws.",
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
        "Do you lose weight, sweat at night, or have a lump or a past cancer?",
        "Since last time, is there a lump, wet sheets, or weight lost?",
        (),
        "I lose weight, sweat at night, or have a lump or a past cancer.",
        "If you feel very ill, call {emergency} at once.",
        Basis.PUBLISHED,
        f"{_ARTUS}; Rangan 2015",
    ),
    Flag(
        "B08",
        _BEFORE,
        "Are a few joints, or both shoulders, stiff or swollen?",
        "Since last time, are many joints stiff or puffy when you wake?",
        (),
        "A few joints, or both shoulders, are stiff or swollen.",
        "If a joint is hot and you feel very ill, call {emergency} at once.",
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
        "Have you been flat, tired or short of sleep for two weeks?",
        "Since last time, are you still worn out, with rest?",
        (),
        "I have been flat, tired or short of sleep for two weeks.",
        "If you faint or your heart races, call {emergency} at once.",
        Basis.OURS,
        f"{_MEMORY}; no one marker is enough: Meeusen 2013",
    ),
    Flag(
        "B11",
        _BEFORE,
        "Do you vomit, have loose stools, or a fever of 38 C (100.4 F) or more?",
        "Since last time, have you had a fever, chest cough, or aches all over?",
        ("fever", "vomiting"),
        "I have a fever, a chest cough, aches all over, or I vomit.",
        "If you shake, feel confused or feel very ill, call {emergency} at once.",
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
        "Does your arm feel numb, tingly, weak or cold, look swollen or odd, or move less?",
    ),
    Section.JOINT: (
        "Since last time: slip, pop, lock, dead arm, new shape, throw pain, fall or hit?",
        "Any new shape, slip, pop, lock, dead arm, elbow or throw pain, fall or hit?",
    ),
    Section.BODY: (
        "Since last time: chest pain, hard to breathe, faint, odd speech, or clumsy legs?",
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
        "Any pain pills, many stiff joints, night sweats, lost weight, or two flat weeks?",
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
