"""Warning signs in single answers: every group, and the small words that turn a sign round."""

from __future__ import annotations

import pytest

from coach.hearing import hear, sign_asked_about
from coach.model.flags import Group
from coach.model.heard import Action, Kind, Question
from tests.hearing.asked import answer, note

CLEAR = [
    ("pinky and ring finger wont wake up", Group.NUMB_TINGLE),
    ("tingling hasnt gone away since yesterday", Group.NUMB_TINGLE),
    ("my arm just went limp", Group.WEAK_DROP),
    ("cant lift my wrist since the tackle", Group.WEAK_DROP),
    ("keep dropping stuff", Group.WEAK_DROP),
    ("my hand went white and cold", Group.SWELLING_COLOUR_COLD),
    ("whole arm is puffy and purple", Group.SWELLING_COLOUR_COLD),
    ("veins popping on my chest and shoulder", Group.SWELLING_COLOUR_COLD),
    ("cant reach behind my head anymore", Group.LOST_MOTION),
    ("it slid out and back in", Group.DISLOCATION_SLIP),
    ("shoulder gave way", Group.DISLOCATION_SLIP),
    ("shoulder looks square", Group.DEFORMITY),
    ("bone is sticking up", Group.DEFORMITY),
    ("felt a rip and cant lift it", Group.POP_WITH_LOSS),
    ("loud pop then no strength", Group.POP_WITH_LOSS),
    ("inside of my elbow snapped", Group.ELBOW_POP),
    ("fell off my bike", Group.TRAUMA_FALL),
    ("took a knee to the ribs now my left shoulder tip kills", Group.ABDOMEN_BLOW),
    ("pain going down my left arm and i feel sick", Group.CHEST_BREATH),
    ("coughed up blood", Group.CHEST_BREATH),
    ("blacked out on the last set", Group.FAINT_HEART),
    ("heart is pounding weird and im dizzy", Group.FAINT_HEART),
    ("words are coming out wrong", Group.STROKE_SIGNS),
    ("worst headache ever", Group.STROKE_SIGNS),
    ("legs feel wobbly and hands are clumsy", Group.CORD_SIGNS),
    ("numb down there", Group.CORD_SIGNS),
    ("got a fever", Group.FEVER_INFECTION),
    ("shoulder is hot and red", Group.FEVER_INFECTION),
    ("my cut is leaking yellow stuff", Group.WOUND),
    ("leg is tight and hot since surgery", Group.LEG_CLOT),
    ("cant get comfortable at all", Group.NIGHT_PAIN_UNRELENTING),
    ("unbearable", Group.NIGHT_PAIN_UNRELENTING),
    ("losing weight for no reason", Group.WEIGHT_NIGHT_SWEATS),
    ("all my joints are swollen", Group.MANY_JOINTS),
    ("took ibuprofen so i could throw", Group.PAINKILLERS),
    ("always exhausted", Group.OVERTIRED),
    ("i want to die", Group.SELF_HARM),
    ("dont want to be here anymore", Group.SELF_HARM),
]


@pytest.mark.parametrize(("text", "group"), CLEAR)
def test_a_clear_own_present_sign_stops(text: str, group: Group) -> None:
    heard = note(text)
    assert (heard.action, heard.group) == (Action.ESCALATE, group)


def test_every_group_has_a_clear_example() -> None:
    assert {group for _, group in CLEAR} == set(Group)


@pytest.mark.parametrize(
    "text",
    [
        "no numbness, tingling or weakness",
        "not swollen",
        "numb? nope",
        "swelling: none",
        "tingling - no",
        "pain no, weakness no",
        "didnt slip or pop",
        "hasnt gone numb at all",
        "w/o any numbness",
        "none of that numb stuff",
        "denies fever",
        "neither numb nor weak",
    ],
)
def test_a_denied_sign_is_left_alone(text: str) -> None:
    assert note(text).group is None


@pytest.mark.parametrize(
    "text",
    [
        "no change in the tingling",
        "not only sore, numb too",
        "the tingling never stopped",
        "no better, still numb",
        "no pain, just cant hold anything up",
        "no weakness but the hand is numb",
        "everything good except numb fingers",
        "im good aside from the pins in my hand",
        "pain no, strength gone",
        "cant feel my fingers",
        "arm wont go up",
        "no position helps",
        "no my hand is numb",
        "wasnt numb before but is now",
    ],
)
def test_a_no_that_denies_nothing_here_does_not_silence(text: str) -> None:
    assert note(text).action == Action.ESCALATE


@pytest.mark.parametrize(
    "text",
    [
        "numb last week but not now",
        "maybe a bit swollen",
        "dislocated it in 2019",
        "stopped tingling after week 2",
        "afraid itll slip out",
        "hand numb from the ice bag",
        "feet were numb from skiing",
        "it popped",
        "arm went dead",
        "i want to hurt myself",
    ],
)
def test_past_hedged_feared_or_explained_signs_are_asked_about(text: str) -> None:
    assert note(text).action in (Action.CONFIRM, Action.ACCEPT)
    assert note(text).action != Action.ESCALATE


@pytest.mark.parametrize(
    "text",
    [
        "teammate dislocated his shoulder",
        "my coach had chest pain at practice",
        "do i stop if my hand tingles",
        "how would i know if it dislocates",
        "popped some ibuprofen",
        "this band is killing me",
        "that set killed me",
        "fell asleep late",
        "arm is dead tired",
        "cold morning so slow warm up",
        "throwing up in the zone",
        "out of breath after sprints",
        "chest day soreness",
        "legs wobbly from squats",
    ],
)
def test_others_questions_and_idioms_are_left_alone(text: str) -> None:
    assert note(text).group is None


def test_a_sign_now_outweighs_one_of_last_week() -> None:
    assert note("was numb last week, still numb today").action == Action.ESCALATE


def test_my_own_arm_wins_back_from_another_person() -> None:
    assert note("my brother fell on my shoulder").group == Group.TRAUMA_FALL
    assert note("my brother fell").group is None


def test_a_sign_is_heard_beside_the_value_of_any_question() -> None:
    heard = hear(Question("pain now", Kind.PAIN_NOW), "5, plus my thumb is numb")
    assert heard.action == Action.ESCALATE
    assert dict(heard.values) == {"pain now": 5.0}


def test_the_spans_of_a_sign_hold_its_words() -> None:
    text = "slept ok but my hand went NUMB"
    spans = note(text).spans
    assert "NUMB" in [text[span.start : span.end] for span in spans]


def test_a_sign_buried_in_sixty_words_is_heard() -> None:
    before = "good day at practice we did the long warm up and then some drills and bp " * 2
    after = " and after that coach let us go home early and i had dinner with the family" * 2
    assert note(before + "oh and my hand went numb" + after).group == Group.NUMB_TINGLE


@pytest.mark.parametrize(
    ("text", "flag"),
    [
        ("my fingers are blue", "E04"),
        ("arm is swollen", "S01"),
        ("it slid out and back in", "S05"),
        ("it catches and locks with pain in my shoulder", "B04"),
        ("i have a fever", "B11"),
        ("shoulder is hot and red and swollen", "S02"),
        ("shaking and burning up with fever", "E09"),
        ("my arm went limp", "E05"),
        ("nothing helps the pain", "S09"),
        ("pain wakes me every night", "B01"),
    ],
)
def test_the_flag_is_named_where_the_words_decide_it(text: str, flag: str) -> None:
    heard = note(text)
    assert heard.flag in (flag, "S05") if flag == "B04" else heard.flag == flag


def test_a_bare_yes_takes_its_meaning_from_the_question() -> None:
    ask = "Any numbness, tingling or weakness since last time?"
    heard = hear(Question("q", Kind.YES_NO, ask), "yes")
    assert (heard.action, heard.group) == (Action.ESCALATE, Group.NUMB_TINGLE)
    assert hear(Question("q", Kind.YES_NO, ask), "no").group is None
    assert hear(Question("q", Kind.YES_NO, "Ready for the next set?"), "yes").group is None


def test_a_yes_to_a_safety_question_is_left_to_the_session() -> None:
    ask = "Any numbness, tingling or weakness since last time?"
    heard = hear(Question("q", Kind.SAFETY_YES_NO, ask), "yes")
    assert (heard.action, heard.group) == (Action.ACCEPT, None)


def test_a_question_without_a_sign_names_none() -> None:
    assert sign_asked_about("Did you do your exercises yesterday?") is None
    sign = sign_asked_about("Did the shoulder slip or pop out?")
    assert sign is not None
    assert sign.group == Group.DISLOCATION_SLIP


@pytest.mark.parametrize("text", ["never", "ever", "fewer", "told", "dumb", "week", "clue", "feel"])
def test_real_words_near_a_sign_are_not_taken_for_it(text: str) -> None:
    assert note(text).group is None


def test_a_symptom_answers_a_question_about_symptoms_with_yes() -> None:
    ask = "Any numbness, tingling or weakness since last time?"
    assert answer(Kind.YES_NO, "a touch of tingle maybe", ask) == "yes"


@pytest.mark.parametrize("throws", ["100", "101", "103", "105", "107"])
def test_a_bare_number_of_throws_is_no_fever(throws: str) -> None:
    asked = Question("throws done", Kind.COUNT, "How many throws?", high=500.0)
    heard = hear(asked, throws)
    assert heard.group is None
    assert dict(heard.values) == {"throws done": float(throws)}


@pytest.mark.parametrize("said", ["105 fever", "105 degrees"])
def test_a_number_of_degrees_is_heard_where_a_count_is_asked(said: str) -> None:
    asked = Question("throws done", Kind.COUNT, "How many throws?", high=500.0)
    assert hear(asked, said).group is Group.FEVER_INFECTION
    assert hear(Question("pain now", Kind.PAIN_NOW), "103").group is Group.FEVER_INFECTION
