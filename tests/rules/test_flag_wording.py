"""How the warning signs read: lengths, one question, list words, grade, words that are out.

The limits (15 words a sentence, 14 in a stop, 79 columns) were set here. The grade is Kincaid 1975
(Flesch-Kincaid) with syllables counted as vowel groups, so it is a rough floor, not a reading test.
"""

from __future__ import annotations

import re

import pytest

from coach.model.flags import Section
from coach.rules.flag_table import FLAGS, SECTION_LIST, SECTION_NUMBER, SECTION_QUESTIONS, Flag
from coach.rules.red_flags import Person, flags_asked

EVERYONE = Person(minor=True, surgery=True)
QUESTIONS = [
    (f"{flag.id}-{number}", words)
    for flag in FLAGS.values()
    for number, words in enumerate((flag.question, flag.wording_2), start=1)
]
SECTION_WORDS = [
    (f"{section.value}-{number}", words)
    for section, wordings in SECTION_QUESTIONS.items()
    for number, words in enumerate(wordings, start=1)
]
STOP_WORDS = [
    (f"{flag.id}-{name}", words)
    for flag in FLAGS.values()
    for name, words in (("say", flag.say), ("worse", flag.worse))
    if words
]
OUT = (
    "abduct adduct externally internally scapula retract protract supine prone anterior posterior "
    "lateral flex extend isometric eccentric concentric repetition resistance contraindicated "
    "paresthesia edema inflamed acute chronic exacerbate flare discomfort mild moderate severe "
    "tolerate modify discontinue initiate perform maintain approximately consult medication "
    "physician doctor invalid safe heal prevent just simply normal"
).split()


def ids(pairs: list[tuple[str, str]]) -> list[str]:
    return [name for name, _ in pairs]


def sentences(text: str) -> list[str]:
    return [part.strip() for part in re.split(r"(?<=[.?])\s+", text) if part.strip()]


def words_of(text: str) -> list[str]:
    return re.findall(r"[A-Za-z0-9.{}]*[A-Za-z0-9}]", text)


def syllables(word: str) -> int:
    word = word.lower().strip("{}")
    groups = len(re.findall(r"[aeiouy]+", word))
    silent = word.endswith("e") and not word.endswith("le") and groups > 1
    return max(1, groups - silent)


def grade(text: str) -> float:
    """Grade with a number to call counted as one digit."""
    text = text.replace("{emergency}", "1")
    words = words_of(text)
    each = sum(map(syllables, words)) / len(words)
    return 0.39 * len(words) / len(sentences(text)) + 11.8 * each - 15.59


@pytest.mark.parametrize(
    "text", [w for _, w in QUESTIONS + SECTION_WORDS], ids=ids(QUESTIONS + SECTION_WORDS)
)
def test_a_question_comes_last_and_no_sentence_is_over_15_words(text: str) -> None:
    assert text.count("?") == 1
    assert text.endswith("?")
    assert all(len(words_of(one)) <= 15 for one in sentences(text))
    assert text.isascii()


@pytest.mark.parametrize("text", [w for _, w in STOP_WORDS], ids=ids(STOP_WORDS))
def test_words_of_a_stop_have_at_most_14_words_a_sentence(text: str) -> None:
    assert all(len(words_of(one)) <= 14 for one in sentences(text))
    assert "?" not in text
    assert "!" not in text
    assert text.isascii()


@pytest.mark.parametrize("text", [w for _, w in STOP_WORDS], ids=ids(STOP_WORDS))
def test_words_of_a_stop_are_of_grade_5_at_most(text: str) -> None:
    assert grade(text) <= 5.0, grade(text)


@pytest.mark.parametrize("text", [w for _, w in QUESTIONS], ids=ids(QUESTIONS))
def test_questions_are_of_grade_6_at_most(text: str) -> None:
    assert grade(text) <= 6.0, grade(text)


@pytest.mark.parametrize(
    "text",
    [w for _, w in QUESTIONS + SECTION_WORDS + STOP_WORDS],
    ids=ids(QUESTIONS + SECTION_WORDS + STOP_WORDS),
)
def test_no_trade_word_stands_where_a_plain_one_does(text: str) -> None:
    assert not set(OUT) & {word.lower() for word in words_of(text)}


def test_the_grade_can_tell_plain_from_hard() -> None:
    assert grade("Is your arm cold?") < 5
    assert grade("Do you experience paresthesia radiating into the extremity?") > 10


@pytest.mark.parametrize("flag", FLAGS.values(), ids=FLAGS)
def test_what_is_read_out_is_first_person_and_names_no_side(flag: Flag) -> None:
    words = {word.lower() for word in words_of(flag.say)}
    assert words & {"i", "my", "me"} or flag.id == "B08"
    assert not words & {"left", "right"}
    assert not {"left", "right"} & {word.lower() for word in words_of(flag.question)}


@pytest.mark.parametrize("flag", FLAGS.values(), ids=FLAGS)
def test_the_two_wordings_differ(flag: Flag) -> None:
    assert flag.question != flag.wording_2
    assert "ince last time, " in flag.wording_2 or "two weeks" in flag.wording_2


@pytest.mark.parametrize("section", SECTION_LIST)
def test_each_list_line_has_a_word_for_each_of_its_flags(section: Section) -> None:
    line = SECTION_LIST[section].lower()
    for flag_id in flags_asked(section, EVERYONE):
        words = FLAGS[flag_id].list_words
        assert any(word in line for word in words), (flag_id, words)


@pytest.mark.parametrize("section", SECTION_LIST)
def test_each_list_line_opens_with_its_number_and_fits_80_columns(section: Section) -> None:
    line = SECTION_LIST[section]
    assert line.startswith(f"{SECTION_NUMBER[section]} {section.value.capitalize()}: ")
    assert len(line) <= 79
    assert len(words_of(line.split(": ")[1])) <= 15


SECTION_WORD_FOR = {
    "S08": ("numb", "tingly"),
    "B05": ("tingly",),
    "E05": ("weak", "fall"),
    "E04": ("cold", "odd"),
    "S01": ("swollen",),
    "B06": ("moves less", "move less"),
    "S05": ("slip",),
    "B04": ("lock", "dead arm"),
    "E03": ("new shape",),
    "S06": ("pop",),
    "S10": ("pop",),
    "S07": ("pop", "elbow"),
    "B03": ("throw pain",),
    "E10": ("hit",),
    "E01": ("chest",),
    "E02": ("breath",),
    "E08": ("faint",),
    "E07": ("speech",),
    "E06": ("clumsy legs",),
    "E09": ("fever", "chills"),
    "S02": ("hot",),
    "B11": ("fever", "vomiting"),
    "S03": ("bad wound",),
    "S04": ("sore leg",),
    "B01": ("wakes you", "never stops"),
    "S09": ("will not ease",),
    "B07": ("night sweats",),
    "B08": ("stiff joints",),
    "B09": ("pain pills",),
    "B10": ("worn out", "two flat weeks"),
}


@pytest.mark.parametrize("section", Section)
@pytest.mark.parametrize("wording", [0, 1])
def test_each_section_question_has_a_word_for_each_of_its_flags(
    section: Section, wording: int
) -> None:
    text = SECTION_QUESTIONS[section][wording].lower()
    for flag_id in flags_asked(section, EVERYONE):
        assert any(word in text for word in SECTION_WORD_FOR[flag_id]), flag_id
