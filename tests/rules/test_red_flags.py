from datetime import date, timedelta
from typing import Any

import pytest

from coach.model.decisions import Basis
from coach.model.flags import GROUP_FLAGS, SECTION_GROUPS, Group, Section, Tier
from coach.model.program import Place, Plan
from coach.rules.red_flags import (
    FLAGS,
    DueFacts,
    Flag,
    Person,
    alone_after_a_break,
    alone_today,
    called_for,
    flag_heard,
    flags_asked,
    list_today,
    person_from,
    stop_for,
)

TODAY = date(2026, 11, 25)
ADULT = Person(minor=False, surgery=False)
MINOR = Person(minor=True, surgery=False)
OPERATED = Person(minor=False, surgery=True)
ARM, JOINT, BODY, ILL, NIGHT, WEEKLY = Section
QUIET = DueFacts(
    today=TODAY,
    asked_alone=tuple((s, "2026-11-24") for s in Section),
    first_day=False,
    new_plan=False,
    lifted=False,
    fell=False,
    threw=False,
    short_night=False,
    pain_two_up=False,
    away_7=False,
    surgery=False,
)


def asked(**days_ago: int) -> tuple[tuple[Section, str], ...]:
    return tuple(
        (Section(name), (TODAY - timedelta(days=ago)).isoformat()) for name, ago in days_ago.items()
    )


# ---------------------------------------------------------------- who


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize(
    ("today", "minor"),
    [
        (date(2026, 10, 31), True),
        (date(2026, 11, 1), True),
        (date(2026, 11, 30), True),
        (date(2026, 12, 1), False),
        (date(2027, 1, 1), False),
    ],
)
def test_an_athlete_is_a_minor_through_the_month_of_the_18th_birthday(
    plan: Plan, today: date, minor: bool
) -> None:
    assert person_from(plan._replace(born="2008-11"), today).minor is minor


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize(("surgery", "counts"), [("none", False), ("2026-03-02", True), ("", True)])
def test_surgery_counts_unless_the_plan_says_none(plan: Plan, surgery: str, counts: bool) -> None:
    assert person_from(plan._replace(surgery=surgery), TODAY).surgery is counts


# ---------------------------------------------------------------- which flags


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("person", [ADULT, MINOR, OPERATED, Person(minor=True, surgery=True)])
@pytest.mark.parametrize("section", Section)
def test_no_flag_of_a_section_is_asked_twice(section: Section, person: Person) -> None:
    ids = flags_asked(section, person)
    assert len(set(ids)) == len(ids) > 0


@pytest.mark.hazard("H-01")
def test_a_flag_for_the_young_is_asked_under_18_only() -> None:
    assert not {"S10", "B03"} & set(flags_asked(Section.JOINT, ADULT))
    assert {"S10", "B03"} < set(flags_asked(Section.JOINT, MINOR))


@pytest.mark.hazard("H-01")
def test_wound_and_leg_are_asked_after_surgery_only() -> None:
    assert flags_asked(Section.ILL, ADULT) == ("E09", "S02", "B11")
    assert flags_asked(Section.ILL, OPERATED) == ("E09", "S02", "B11", "S03", "S04")


@pytest.mark.hazard("H-01")
def test_every_flag_but_two_is_asked_of_somebody() -> None:
    person = Person(minor=True, surgery=True)
    everything = {flag for section in Section for flag in flags_asked(section, person)}
    # B02 is reckoned from the mornings, E11 is never asked first.
    assert set(FLAGS) - everything == {"B02", "E11"}


@pytest.mark.hazard("H-01")
def test_each_section_asks_its_flags_in_the_order_of_its_groups() -> None:
    assert flags_asked(Section.ARM, ADULT) == ("S08", "B05", "E05", "E04", "S01", "B06")
    assert flags_asked(Section.JOINT, ADULT) == (
        *("S05", "B04", "E03", "S06", "S07"),
        *("E05", "E10"),
    )


# ---------------------------------------------------------------- what a group stands for


@pytest.mark.hazard("H-01")
def test_a_named_flag_of_the_group_is_kept() -> None:
    assert flag_heard(Group.NUMB_TINGLE, "B05", ADULT) == "B05"


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("named", [None, "E01"])
def test_without_a_flag_of_the_group_the_most_urgent_counts(named: str | None) -> None:
    assert flag_heard(Group.NUMB_TINGLE, named, ADULT) == "S08"
    assert flag_heard(Group.FEVER_INFECTION, named, ADULT) == "E09"
    assert flag_heard(Group.SWELLING_COLOUR_COLD, named, ADULT) == "E04"


@pytest.mark.hazard("H-01")
def test_a_wound_heard_without_surgery_in_the_plan_still_stops() -> None:
    assert flag_heard(Group.WOUND, None, ADULT) == "S03"


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("group", Group)
def test_a_group_always_stands_for_one_of_its_own_flags(group: Group) -> None:
    for person in (ADULT, MINOR, OPERATED):
        assert flag_heard(group, None, person) in GROUP_FLAGS[group]


# ---------------------------------------------------------------- the stop


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("flag_id", FLAGS)
def test_a_stop_carries_tier_plan_line_and_whose_choice_it_is(flag_id: str) -> None:
    place = Place("plan.yaml", 12)
    decision = stop_for(flag_id, place)
    assert decision.rule == "stop.flag"
    assert decision.outcome == FLAGS[flag_id].tier.value
    assert decision.place == place
    assert decision.basis is Basis.OURS
    assert FLAGS[flag_id].source in decision.source


@pytest.mark.hazard("H-01")
def test_a_stop_by_an_unknown_flag_is_our_bug() -> None:
    with pytest.raises(KeyError):
        stop_for("X99", None)


# ---------------------------------------------------------------- the due rule


@pytest.mark.hazard("H-01")
def test_on_a_quiet_day_one_section_is_asked_alone() -> None:
    facts = QUIET._replace(asked_alone=asked(arm=1, joint=2, body=3, ill=4, night=6, weekly=5))
    assert alone_today(facts) == (NIGHT,)
    assert list_today((NIGHT,)) == (ARM, JOINT, BODY, ILL)


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize(("ago", "due"), [(6, False), (7, True), (8, True)])
def test_a_section_is_due_at_seven_days(ago: int, due: bool) -> None:
    facts = QUIET._replace(asked_alone=asked(arm=ago, joint=7, body=1, ill=1, night=1, weekly=1))
    assert (ARM in alone_today(facts)) is due
    assert JOINT in alone_today(facts)


@pytest.mark.hazard("H-01")
def test_a_section_never_asked_alone_is_due() -> None:
    facts = QUIET._replace(asked_alone=asked(arm=1, joint=1, body=1, ill=1, night=1))
    assert alone_today(facts) == (WEEKLY,)


@pytest.mark.hazard("H-01")
def test_a_day_ahead_of_today_counts_as_never() -> None:
    facts = QUIET._replace(asked_alone=asked(arm=-1, joint=6, body=1, ill=1, night=1, weekly=1))
    assert alone_today(facts) == (ARM,)


@pytest.mark.hazard("H-01")
def test_a_section_asked_alone_earlier_today_is_not_due_again() -> None:
    facts = QUIET._replace(asked_alone=asked(arm=0, joint=0, body=0, ill=0, night=0, weekly=3))
    assert alone_today(facts) == (WEEKLY,)


@pytest.mark.hazard("H-01")
def test_a_day_ahead_beside_a_past_one_still_counts_as_never() -> None:
    facts = QUIET._replace(asked_alone=(*QUIET.asked_alone, *asked(night=-2)))
    assert alone_today(facts) == (NIGHT,)


@pytest.mark.hazard("H-01")
def test_the_newest_of_two_days_counts() -> None:
    facts = QUIET._replace(asked_alone=(*asked(arm=9), *QUIET.asked_alone))
    assert ARM not in alone_today(facts)


@pytest.mark.hazard("H-01")
def test_of_two_that_waited_alike_the_one_throwing_does_not_ask_goes_first() -> None:
    assert alone_today(QUIET) == (BODY,)


@pytest.mark.hazard("H-01")
def test_after_throwing_arm_and_joint_are_asked_and_one_more() -> None:
    assert alone_today(QUIET._replace(threw=True)) == (ARM, JOINT, BODY)


@pytest.mark.hazard("H-01")
def test_after_a_short_night_the_night_is_asked_and_one_more() -> None:
    assert alone_today(QUIET._replace(short_night=True)) == (BODY, NIGHT)


@pytest.mark.hazard("H-01")
def test_with_pain_two_up_arm_joint_and_night_are_asked_and_one_more() -> None:
    assert alone_today(QUIET._replace(pain_two_up=True)) == (ARM, JOINT, BODY, NIGHT)


@pytest.mark.hazard("H-01")
def test_with_surgery_in_the_plan_ill_is_always_asked_and_one_more() -> None:
    assert alone_today(QUIET._replace(surgery=True)) == (BODY, ILL)


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("why", ["first_day", "new_plan", "lifted", "fell", "away_7"])
def test_after_a_fall_and_its_like_all_six_are_asked_alone_and_no_list(why: str) -> None:
    happened: dict[str, Any] = {why: True}
    alone = alone_today(QUIET._replace(**happened))
    assert alone == tuple(Section)
    assert list_today(alone) == ()


@pytest.mark.hazard("H-01")
def test_several_that_waited_seven_days_are_all_asked() -> None:
    facts = QUIET._replace(asked_alone=asked(arm=2, joint=2, body=7, ill=8, night=2, weekly=7))
    assert alone_today(facts) == (BODY, ILL, WEEKLY)


@pytest.mark.hazard("H-01")
def test_the_weekly_section_never_stands_in_the_list() -> None:
    assert WEEKLY not in list_today(())
    assert list_today(()) == (ARM, JOINT, BODY, ILL, NIGHT)


# ---------------------------------------------------------------- the table


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize(
    ("threw", "short_night", "pain_two_up", "sections"),
    [
        (False, False, False, ()),
        (True, False, False, (Section.ARM, Section.JOINT)),
        (False, True, False, (Section.NIGHT,)),
        (False, False, True, (Section.ARM, Section.JOINT, Section.NIGHT)),
    ],
)
def test_what_is_learned_in_mid_day_asks_its_own_sections_alone(
    threw: bool, short_night: bool, pain_two_up: bool, sections: tuple[Section, ...]
) -> None:
    called = called_for(threw=threw, short_night=short_night, pain_two_up=pain_two_up)
    assert called == sections


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("surgery", [False, True])
def test_after_a_long_break_whatever_a_day_may_call_for_is_asked_alone(surgery: bool) -> None:
    alone = alone_after_a_break(surgery=surgery)
    every = called_for(threw=True, short_night=True, pain_two_up=True)
    assert set(alone) == {*every, *((Section.ILL,) if surgery else ())}
    assert {*alone, *list_today(alone)} == set(Section) - {Section.WEEKLY}


@pytest.mark.hazard("H-01")
def test_every_flag_a_group_names_is_in_the_table() -> None:
    named = {flag for flags in GROUP_FLAGS.values() for flag in flags}
    assert named | {"B02"} == set(FLAGS)


@pytest.mark.hazard("H-01")
def test_every_group_but_self_harm_belongs_to_one_section() -> None:
    groups = [group for section in Section for group in SECTION_GROUPS[section]]
    assert len(groups) == len(set(groups))
    assert set(Group) - set(groups) == {Group.SELF_HARM}


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("flag", FLAGS.values(), ids=FLAGS)
def test_only_what_is_no_emergency_yet_says_when_it_becomes_one(flag: Flag) -> None:
    if flag.tier is Tier.EMERGENCY_NOW:
        assert flag.worse == ""
    else:
        assert flag.worse.count("{emergency}") == 1
