"""The coach's own questions in reviewed words: what is asked, what fits, what to type.

Law: scale ends, units and choices are added here and nowhere else, so that no script can turn a
scale round. A prompt holds no sample value, since samples pull answers.
"""

from __future__ import annotations

from typing import Final, NamedTuple

from coach.model.flags import Group
from coach.model.heard import Kind, Question
from coach.model.program import Answers, Step
from coach.model.turns import Ask, Line
from coach.rules.red_flags import FLAGS, flag_heard
from coach.session.brief import Brief

THROWING_KINDS: Final = ("none", "light", "hard practice", "bullpen", "game")


class Words(NamedTuple):
    """One question: its sentence, the label before the typing place, and what may be typed."""

    kind: Kind
    ask: str
    label: str
    choices: tuple[str, ...] = ()
    low: float = 0.0
    high: float = 10.0
    unit: str = ""


_PAIN = "Pain, 0 (none) to 10 (the worst):"
QUESTIONS: Final[dict[str, Words]] = {
    "plan is mine": Words(Kind.YES_NO, "Is this your plan?", "Yes or no:"),
    "guardian here": Words(Kind.YES_NO, "Is your guardian with you now?", "Yes or no:"),
    "pain now": Words(Kind.PAIN_NOW, "How much does it hurt right now, at rest?", _PAIN),
    "worst pain": Words(Kind.WORST_PAIN, "What was the worst pain since last time?", _PAIN),
    "waking pain": Words(Kind.WORST_PAIN, "How much did it hurt when you woke up?", _PAIN),
    "waking ache": Words(
        Kind.CHOICE,
        "Where was it: in the muscle you worked, in both arms alike, or in the joint?",
        "Type its number or name:",
        ("worked muscle", "both arms alike", "joint", "not sure"),
    ),
    "against usual": Words(
        Kind.CHOICE,
        "Next to your usual morning: was this one better, the same or worse?",
        "Better, same or worse:",
        ("better", "same", "worse"),
    ),
    "sleep last night": Words(
        Kind.SLEEP_HOURS,
        "How many hours did you sleep last night?",
        "Hours:",
        (),
        0.0,
        16.0,
        "h",
    ),
    "throwing yesterday": Words(
        Kind.THROWING,
        "What did you throw yesterday: none, light, hard practice, bullpen or game?",
        "None, or which kind:",
        THROWING_KINDS,
    ),
    "throwing today": Words(
        Kind.THROWING,
        "What will you throw today: none, light, hard practice, bullpen or game?",
        "None, or which kind:",
        THROWING_KINDS,
    ),
    "thrown already": Words(Kind.YES_NO, "Is today's throwing over?", "Yes or no:"),
    "throwing tomorrow": Words(
        Kind.THROWING,
        "What will you throw tomorrow: none, light, hard practice, bullpen or game?",
        "None, or which kind:",
        THROWING_KINDS,
    ),
    "pitches before": Words(
        Kind.COUNT_MOST,
        "In games on the days before yesterday, since we last spoke: how many pitches?",
        "Pitches, 0 if none:",
        (),
        0.0,
        300.0,
        "pitches",
    ),
    "pitches yesterday": Words(
        Kind.COUNT_MOST,
        "How many pitches did you throw in games yesterday?",
        "Pitches, 0 if none:",
        (),
        0.0,
        300.0,
        "pitches",
    ),
    "pitches today": Words(
        Kind.COUNT_MOST,
        "How many pitches did you throw in games today?",
        "Pitches, 0 if none:",
        (),
        0.0,
        300.0,
        "pitches",
    ),
    "innings caught today": Words(
        Kind.COUNT_MOST,
        "In how many innings did you catch today?",
        "Innings, 0 if none:",
        (),
        0.0,
        30.0,
        "innings",
    ),
    "moves or later": Words(
        Kind.CHOICE,
        "Do you want the moves now, or all of it later?",
        "Moves or later:",
        ("moves", "later"),
    ),
    "at hand": Words(Kind.CHOICES, "What do you have here today?", "All, none, or the numbers:"),
    "pain in warm-up": Words(
        Kind.WORST_PAIN, "What is the worst pain in the warm-up?", "Pain, 0 to 10:"
    ),
    "which version": Words(Kind.CHOICE, "Which one fits you today?", "Type its number:"),
    "stand-in weight": Words(Kind.YES_NO, "Do you have that here?", "Yes or no:"),
    "reps in set": Words(
        Kind.COUNT,
        "How many clean reps did you do?",
        "Clean reps:",
        (),
        0.0,
        100.0,
        "reps",
    ),
    "holds in set": Words(
        Kind.COUNT, "How many holds did you do?", "Holds done:", (), 0.0, 100.0, "holds"
    ),
    "pain in set": Words(Kind.WORST_PAIN, "What was the worst pain in that set?", "Pain, 0 to 10:"),
    "felt in set": Words(Kind.SET_FEEL, "How did that set feel?", "Type a number or a name:"),
    "pain before change": Words(
        Kind.PAIN_NOW, "How much does it hurt right now?", "Pain now, 0 to 10:"
    ),
    "sore an hour after": Words(
        Kind.YES_NO, "After your last {unit}: was the arm sore for more than an hour?", "Yes or no:"
    ),
    "sore next day": Words(Kind.YES_NO, "Was it sore on the day after your {unit}?", "Yes or no:"),
    "arm tired": Words(Kind.YES_NO, "Is your arm tired right now?", "Yes or no:"),
    "sore in warm-up": Words(Kind.YES_NO, "After them: is the arm sore or stiff?", "Yes or no:"),
    "sore after throw 15": Words(
        Kind.YES_NO, "After the last of these: is the arm sore?", "Yes or no:"
    ),
    "sore at the end": Words(Kind.YES_NO, "After the very last: is the arm sore?", "Yes or no:"),
    "pain in throwing": Words(Kind.PAIN_NOW, "How much does the arm hurt right now?", _PAIN),
    "sharp or deep": Words(
        Kind.SAFETY_YES_NO,
        "Is it sharp, deep in the joint, in the upper arm, or inside the elbow?",
        "Yes or no:",
    ),
    "throws done": Words(
        Kind.COUNT, "How many {unit} did you do?", "Throws:", (), 0.0, 500.0, "throws"
    ),
    "pain after": Words(Kind.PAIN_NOW, "How much does it hurt now?", "Pain now, 0 to 10:"),
    "effort": Words(Kind.EFFORT, "How hard was all of it?", "Effort, 0 (rest) to 10 (all out):"),
    "minutes": Words(
        Kind.NUMBER, "How many minutes did it take?", "Minutes:", (), 0.0, 300.0, "min"
    ),
    "own words": Words(
        Kind.OWN_WORDS,
        "Anything for {clinician} to know? Type it, or none.",
        "Your words:",
    ),
    "nothing here": Words(Kind.SAFETY_YES_NO, "So nothing in this group?", "Yes (nothing) or no:"),
    "sets since": Words(Kind.COUNT, "How many more sets of it did you do since?", "Sets:"),
    "worse since": Words(
        Kind.SAFETY_YES_NO,
        "Since then, does the arm or the rest of you feel worse?",
        "Yes or no:",
    ),
    "which to fix": Words(Kind.CHOICE, "Which answer do you want to change?", "Its number:"),
    "stop for today": Words(
        Kind.CHOICE,
        "Did you stop for today, or is something worse going on?",
        "Today or worse:",
        ("today", "worse"),
    ),
    "what is worse": Words(
        Kind.NONE_OR_LIST, "Which of these is it?", "Type the numbers, or none:"
    ),
}

# What each part of a gathered line is called in that line.
LINE_PARTS: Final[dict[str, str]] = {
    "pain now": "pain now",
    "worst pain": "worst since last time",
    "waking pain": "morning pain (0 to 10)",
    "sleep last night": "hours slept",
    "throwing yesterday": "throws yesterday",
    "throwing today": "game today",
    "reps in set": "clean reps",
    "holds in set": "holds done",
    "pain in set": "worst pain",
    "pain after": "pain now",
    "effort": "effort",
    "minutes": "minutes",
}

# The answer that stands in for one that stayed unclear twice: always the more cautious end.
WORST: Final[dict[str, float | str | tuple[str, ...]]] = {
    "plan is mine": "no",
    "guardian here": "no",
    "pain now": 10.0,
    "worst pain": 10.0,
    "waking pain": 10.0,
    "waking ache": "joint",
    "against usual": "worse",
    "sleep last night": 0.0,
    "throwing yesterday": "game",
    "throwing today": "game",
    "thrown already": "no",
    "throwing tomorrow": "game",
    "pitches before": 300.0,
    "pitches yesterday": 300.0,
    "pitches today": 300.0,
    "innings caught today": 30.0,
    "moves or later": "later",
    "at hand": (),
    "pain in warm-up": 10.0,
    "stand-in weight": "no",
    "reps in set": 0.0,
    "holds in set": 0.0,
    "pain in set": 10.0,
    "felt in set": "something else",
    "pain before change": 10.0,
    "pain after": 10.0,
    "effort": 10.0,
    "minutes": 300.0,
    "nothing here": "no",
    "sets since": 100.0,
    "worse since": "yes",
    "sore an hour after": "yes",
    "sore next day": "yes",
    "arm tired": "yes",
    "sore in warm-up": "yes",
    "sore after throw 15": "yes",
    "sore at the end": "yes",
    "sharp or deep": "yes",
    "pain in throwing": 10.0,
    "throws done": 500.0,
    "stop for today": "worse",
    "what is worse": ("1", "2", "3", "4", "5", "6"),
}


def coach_question(fact: str, wording: str = "", **change: object) -> Question:
    """The coach's question for `fact`, with a script's own sentence where it gives one."""
    words = QUESTIONS[fact]
    question = Question(
        fact,
        words.kind,
        wording or words.ask,
        words.choices,
        words.low,
        words.high,
        words.unit,
    )
    return question._replace(**change) if change else question  # type: ignore[arg-type]


def flag_question(group: str, brief: Brief) -> Question:
    """The coach's question for a warning sign that a script asks again by its name."""
    flag = FLAGS[flag_heard(Group(group.replace(" ", "_")), None, brief.person)]
    return Question(group, Kind.SAFETY_YES_NO, flag.question)


def is_flag_name(fact: str) -> bool:
    """Whether a question's name is the name of a screen group."""
    return fact.replace(" ", "_") in Group._value2member_map_


OWN_KINDS: Final[dict[str, Kind]] = {
    "yes or no": Kind.YES_NO,
    "pain": Kind.WORST_PAIN,
    "counted": Kind.COUNT,
    "measured": Kind.NUMBER,
    "choice": Kind.CHOICE,
    "own words": Kind.OWN_WORDS,
}


def own_question(step: Step) -> Question:
    """The clinician's own question, its scale ends and units added by the coach."""
    answers = step.answers or Answers("own words")
    return Question(
        step.fact,
        OWN_KINDS[answers.kind],
        step.text,
        answers.choices,
        answers.low,
        answers.high,
        answers.unit,
    )


def own_label(answers: Answers | None) -> str:
    """The words before the typing place of a clinician's own question."""
    if answers is None or answers.kind == "own words":
        return "Your words:"
    if answers.kind == "yes or no":
        return "Yes or no:"
    if answers.kind == "pain":
        return "Pain, 0 to 10:"
    if answers.kind == "choice":
        return "Type its number or name:"
    unit = answers.unit or "number"
    return f"{answers.low:g} to {answers.high:g} {unit}:"


def single(name: str, question: Question, label: str, *, safety: bool = False) -> Ask:
    """An ask of one question."""
    return Ask(name, label, question, safety)


def gathered(name: str, facts: tuple[str, ...], label: str) -> Ask:
    """An ask whose one line may fill several facts, by their labels."""
    parts = tuple(coach_question(fact) for fact in facts)
    return Ask(name, label, Question(name, Kind.LINE, label, parts=parts))


def choice_lines(ask: Ask) -> tuple[Line, ...]:
    """The choices of a question, numbered, one a line."""
    if ask.question.kind not in {Kind.CHOICE, Kind.CHOICES, Kind.SET_FEEL}:
        return ()
    return tuple(Line("item", f"{n} {c}") for n, c in enumerate(ask.question.choices, 1))
