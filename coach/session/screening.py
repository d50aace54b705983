"""The screen for warning signs: sections alone, the list, and a section's signs one by one.

Law: every section is answered before the first exercise, alone or in the list, and no script can
skip, reorder or reword it past the reviewed wordings. A yes is never undone; all no once asks "so
nothing in this group?"; what is not a clear yes there waits for the clinician.
"""

from __future__ import annotations

from coach.model.flags import GROUP_FLAGS, SECTION_GROUPS, Section
from coach.model.heard import Kind, Question
from coach.model.turns import Ask, Line
from coach.rules import red_flags
from coach.session.machine import follow
from coach.session.questions import QUESTIONS, coach_question, single
from coach.session.state import Happening, State
from coach.session.stopping import DOUBTS_TO_END, UNSURE, stop, too_unclear
from coach.session.table import Stage

NUMBERS = {section: number for number, section in enumerate(Section, start=1)}


def begin(state: State) -> State:
    """Lay out which sections are asked alone today and which stand in the list."""
    alone = alone_by_rule(state)
    return next_section(state._replace(alone=alone, listed=red_flags.list_today(alone)))


def again(state: State, sections: tuple[Section, ...], listed: tuple[Section, ...]) -> State:
    """The screen once more in the middle of a day; the day goes on after it where it was."""
    return next_section(
        state._replace(
            back=state.stage.value,
            stage=follow(state.stage, "screen again"),
            alone=sections,
            listed=listed,
            missing=(),
            line=False,
            aside="",
            at=0,
        )
    )


def newly_due(state: State) -> tuple[Section, ...]:
    """Sections that the present answers ask alone and that were not asked alone today."""
    done = {*state.asked, *state.alone}
    return tuple(section for section in alone_by_rule(state) if section not in done)


def called_for(before: State, after: State) -> tuple[Section, ...]:
    """Sections that a value put right in mid-day asks alone, where it told something new."""
    return red_flags.called_for(
        threw=after.threw and not before.threw,
        short_night=after.short and not before.short,
        pain_two_up=after.pain_up and not before.pain_up,
    )


def after_a_break(state: State) -> State:
    """checkin.gap: the whole screen, its sections asked alone the same whatever the day knows."""
    alone = red_flags.alone_after_a_break(surgery=state.brief.person.surgery)
    return again(state, alone, red_flags.list_today(alone))


def alone_by_rule(state: State) -> tuple[Section, ...]:
    """stop.screen: the due rule over what is known now."""
    return state.brief.alone_today[state.threw, state.short, state.pain_up]


def next_section(state: State) -> State:
    """The next thing the screen asks; with nothing left, `section` is `over`."""
    state = state._replace(unclear=0, flags=())
    if state.yes_left:
        first, *rest = state.yes_left
        return open_section(state._replace(yes_left=tuple(rest)), first)
    if state.alone:
        first = state.alone[0]
        if first is Section.WEEKLY and state.brief.first_day:
            return open_section(state, first)._replace(section=f"weekly {first.value}")
        return state._replace(section=f"alone {first.value}")
    if state.listed:
        return state._replace(section="list")
    return state._replace(section="over")


def open_section(state: State, section: Section) -> State:
    """After a yes: the section's signs one by one."""
    return state._replace(
        section=f"open {section.value}",
        flags=red_flags.flags_asked(section, state.brief.person),
        unclear=0,
    )


def asked_section(state: State) -> Section:
    """The section now asked or opened."""
    return Section(state.section.split(" ", 1)[1])


def ask(state: State) -> Ask:
    """The screen's present prompt; every one of them is a safety prompt."""
    if state.section == "list":
        return Ask(
            "screen",
            "Type none, or the numbers:",
            Question("screen", Kind.NONE_OR_LIST, choices=tuple(numbers_of(state.listed))),
            safety=True,
        )
    section = asked_section(state)
    if state.section.startswith("alone"):
        wording = red_flags.SECTION_QUESTIONS[section][wording_of(state, section)]
        question = Question(f"screen {section.value}", Kind.SAFETY_YES_NO, wording)
        return single(question.fact, question, "Yes or no:", safety=True)
    if state.flags:
        flag = red_flags.FLAGS[state.flags[0]]
        name = group_of_flag(section, flag.id).replace("_", " ")
        question = Question(name, Kind.SAFETY_YES_NO, flag.question)
        return single(name, question, "Yes or no:", safety=True)
    words = QUESTIONS["nothing here"]
    return single("nothing here", coach_question("nothing here"), words.label, safety=True)


def numbers_of(sections: tuple[Section, ...]) -> list[str]:
    """The numbers of the sections, which never change."""
    return [str(NUMBERS[section]) for section in sections]


def wording_of(state: State, section: Section) -> int:
    """Which reviewed wording: the script's choice, else the two in turn by the day."""
    for step in state.brief.items["screen"]:
        if step.fact == f"screen {section.value}" and step.wording > 1:
            return 1
    return state.brief.wording


def group_of_flag(section: Section, flag: str) -> str:
    """The first group of the section that holds the flag."""
    return next(g.value for g in SECTION_GROUPS[section] if flag in GROUP_FLAGS[g])


def lines(state: State) -> tuple[Line, ...]:
    """What is said before the present prompt."""
    if state.section == "list":
        return (
            Line("say", "Since last time, is any of these new or worse?"),
            *(Line("item", red_flags.SECTION_LIST[section]) for section in state.listed),
        )
    head: tuple[Line, ...] = ()
    if state.brief.first_day and state.section == "alone arm":
        name = state.brief.plan.calls.clinician.who.split(",")[0]
        head = (
            Line(
                "say",
                f"Next come warning signs. A yes ends today's work and goes to {name}.",
            ),
            Line("say", "It does nothing more."),
        )
    return (*head, Line("say", ask(state).question.ask))


def answered(state: State, value: str | float | tuple[str, ...]) -> State:
    """The screen one step further by a clear answer."""
    if state.section == "list":
        return list_answered(state, value)
    section = asked_section(state)
    if state.section.startswith("alone"):
        state = asked_alone(state, section)
        return open_section(state, section) if value == "yes" else next_section(state)
    if state.flags:
        return flag_answered(state, section, str(value))
    return taken_back(state) if value == "yes" else stop(state, UNSURE)


def taken_back(state: State) -> State:
    """A yes to a section of which nothing was left counts as an unclear safety answer.

    So the screen stays short: a third one ends the day (rule stop.screen; set here).
    """
    if state.stage is Stage.ENDING:
        return next_section(state)
    doubts = min(state.doubts + 1, DOUBTS_TO_END)
    state = state._replace(doubts=doubts)
    return too_unclear(state) if doubts >= DOUBTS_TO_END else next_section(state)


def flag_answered(state: State, section: Section, value: str) -> State:
    """One sign answered: yes stops, no goes on; after the last no, `nothing here` is asked once."""
    flag = state.flags[0]
    if value == "yes":
        return stop(state, flag, group_of_flag(section, flag))
    rest = state.flags[1:]
    if rest or not state.section.startswith("weekly"):
        return state._replace(flags=rest, unclear=0)
    return next_section(asked_alone(state, section))


def asked_alone(state: State, section: Section) -> State:
    """The section counts as asked alone today."""
    return state._replace(
        alone=tuple(s for s in state.alone if s is not section),
        asked=state.asked if state.back else in_order({*state.asked, section}),
        happened=(*state.happened, Happening("alone", section.value)),
    )


def in_order(sections: set[Section]) -> tuple[Section, ...]:
    """Sections by their numbers, each once, so that equal situations compare equal."""
    return tuple(section for section in Section if section in sections)


def list_answered(state: State, value: str | float | tuple[str, ...]) -> State:
    """`none` closes the list; numbers open their sections."""
    chosen = value if isinstance(value, tuple) else (str(value),)
    if "none" in chosen or not chosen:
        quick = Happening("note list", "none")
        return next_section(state._replace(listed=(), happened=(*state.happened, quick)))
    sections = tuple(s for s in Section if str(NUMBERS[s]) in chosen)
    return next_section(state._replace(listed=(), yes_left=sections))


def unclear_twice(state: State) -> State:
    """The safer branch: a section opens, a sign counts as a yes, the list opens whole."""
    if state.section == "list":
        return next_section(state._replace(listed=(), yes_left=state.listed))
    if state.section.startswith("alone") or state.flags:
        return answered(state, "yes")
    return answered(state, "no")
