import random
from datetime import date, timedelta

import pytest

from coach.model.ladders import Ladder
from coach.model.program import Exercise, Prescription, Version
from coach.model.quantities import Dose, Load
from coach.rules.dosing import opening_dose
from coach.rules.limits import gate
from coach.rules.progression import (
    RESULTS,
    DaySummary,
    Rails,
    arbiter,
    carried_over,
    count_session,
    next_ladder,
    next_load,
    one_down,
    one_up,
    range_pace,
    wants_up,
    was_hard,
)

OPENED = date(2026, 11, 9)
TODAY = date(2026, 11, 25)
EARNED = DaySummary(TODAY, "earned")


def pounds(amount: float) -> Load:
    return Load("dumbbell", amount, "lb")


def rails_for(row: Exercise, line: Prescription, *owned: Load) -> Rails:
    opening = opening_dose(row, line)
    assert isinstance(opening, Dose)
    return Rails(row, line, owned, opening, OPENED)


@pytest.fixture
def rails(row: Exercise, line: Prescription) -> Rails:
    """Reps first, then range after 14 days; reps 8 to 10, by 1, at most 15."""
    assert line.range is not None
    timed = line._replace(
        goes_up=("reps", "range"),
        range=line.range._replace(after_days=14),
        reps=line.reps._replace(after_days=0),
    )
    return rails_for(row, timed)


@pytest.fixture
def weighed(row: Exercise, line: Prescription) -> Rails:
    """A 10 lb dumbbell, by 1 lb, at most 12; 11 and 12 lb at home."""
    heavy = line._replace(
        load=pounds(10),
        load_step=1.0,
        load_cap=pounds(12),
        lighter=(pounds(8),),
        goes_up=("load", "reps"),
        reps=line.reps._replace(after_days=0),
    )
    return rails_for(row, heavy, pounds(8), pounds(11), pounds(12))


def start(rails: Rails, good_run: int = 0, form_run: int = 0) -> Ladder:
    return Ladder(rails.opening, good_run, form_run)


@pytest.mark.parametrize(("effort", "hard"), [(8, False), (8.5, False), (9, True), (10, True)])
def test_nine_and_ten_are_hard(effort: float, hard: bool) -> None:
    assert was_hard(effort) is hard


@pytest.mark.parametrize(
    ("steps", "days", "outcome"),
    [
        (1, 55, "fast"),
        (1, 56, "fits"),
        (2, 28, "fits"),
        (2, 42, "fits"),
        (1, 85, "slow"),
        (0, 56, "none"),
    ],
)
def test_a_range_ladder_takes_eight_to_twelve_weeks_in_all(
    line: Prescription, steps: int, days: int, outcome: str
) -> None:
    assert line.range is not None
    paced = line._replace(range=line.range._replace(opening=0, cap=steps, after_days=days))
    assert range_pace(paced).outcome == outcome
    assert range_pace(line._replace(range=None)).outcome == "none"


# ---------------------------------------------------------------- up


@pytest.mark.parametrize(("good_run", "reps"), [(0, 10), (1, 11), (2, 11)])
def test_reps_go_up_when_two_sessions_running_earned_it(
    rails: Rails, good_run: int, reps: int
) -> None:
    recent = start(rails, good_run)._replace(moved=(("range", "2026-11-20"),))
    ladder, decision = next_ladder(recent, EARNED, rails, may_go_up=True)
    assert ladder.dose == rails.opening._replace(reps_high=reps)
    assert decision.outcome == ("up" if reps > 10 else "same")
    assert ladder.good_run == (0 if reps > 10 else 1)


def test_a_session_that_did_not_earn_breaks_the_run(rails: Rails) -> None:
    ladder = count_session(start(rails, good_run=1), EARNED._replace(result="good"))
    assert ladder.good_run == 0


def test_a_day_not_done_changes_no_run(rails: Rails) -> None:
    before = start(rails, 1, 2)
    assert count_session(before, DaySummary(TODAY, "none")) == before


@pytest.mark.parametrize(
    "day",
    [
        EARNED._replace(morning_up=True),
        EARNED._replace(stopped=True),
        EARNED._replace(gap="one step down"),
        EARNED._replace(gap="first step"),
        EARNED._replace(gap="contact"),
        EARNED._replace(result="short"),
        EARNED._replace(result="form"),
        EARNED._replace(result="over"),
        EARNED._replace(result="none"),
        EARNED._replace(result="something new"),
    ],
)
def test_nothing_goes_up_on_any_other_day(rails: Rails, day: DaySummary) -> None:
    assert wants_up(start(rails, good_run=2), day, rails) is None
    ladder, decision = next_ladder(start(rails, good_run=2), day, rails, may_go_up=True)
    assert decision.outcome != "up"
    assert ladder.dose.reps_high <= rails.opening.reps_high


def test_without_the_arbiters_leave_the_run_is_kept(rails: Rails) -> None:
    ladder, decision = next_ladder(start(rails, 2), EARNED, rails, may_go_up=False)
    assert (ladder.dose, ladder.good_run) == (rails.opening, 2)
    assert decision.outcome == "same"


def test_only_the_first_of_several_goes_up() -> None:
    assert arbiter((False, True, True)) == 1
    assert arbiter((True, False)) == 0
    assert arbiter((False, False)) is None
    assert arbiter(()) is None


@pytest.mark.parametrize(("days_ago", "moves"), [(13, False), (14, True)])
def test_range_moves_only_after_its_days(rails: Rails, days_ago: int, moves: bool) -> None:
    last = (TODAY - timedelta(days=days_ago)).isoformat()
    ladder = start(rails)._replace(moved=(("range", last),))
    wanted = wants_up(ladder, EARNED._replace(result="good"), rails)
    assert (wanted is not None) is moves
    if wanted is not None:
        assert wanted == ("range", rails.opening._replace(range_index=2, range_step="long"))


@pytest.mark.parametrize(
    ("day", "moves"), [(date(2026, 11, 22), False), (date(2026, 11, 23), True)]
)
def test_range_counts_from_the_phases_opening_at_first(
    rails: Rails, day: date, moves: bool
) -> None:
    wanted = wants_up(start(rails), DaySummary(day, "good"), rails)
    assert (wanted is not None) is moves


def test_range_does_not_move_with_a_pinch(rails: Rails) -> None:
    assert wants_up(start(rails), DaySummary(TODAY, "good", pinch=True), rails) is None


def test_range_without_days_never_moves(rails: Rails) -> None:
    line = rails.prescription
    assert line.range is not None
    never = rails._replace(
        prescription=line._replace(range=line.range._replace(after_days=0), goes_up=("range",))
    )
    assert wants_up(start(never, 2), EARNED, never) is None


def test_with_several_due_the_plans_order_counts(rails: Rails) -> None:
    wanted = wants_up(start(rails, 2), EARNED, rails)
    assert wanted is not None
    assert wanted[0] == "reps"
    full = rails.opening._replace(reps_high=15)
    after = wants_up(Ladder(full, 2), EARNED, rails)
    assert after is not None
    assert after[0] == "range"


def test_at_every_cap_nothing_goes_up(rails: Rails) -> None:
    top = rails.opening._replace(reps_high=15, range_index=2, range_step="long")
    assert wants_up(Ladder(top, 2), EARNED, rails) is None


def test_a_dose_over_a_cap_is_not_wanted(rails: Rails) -> None:
    over = rails.opening._replace(sets=9)
    assert wants_up(Ladder(over, 2), EARNED, rails) is None


def test_load_goes_to_an_owned_one_and_reps_begin_again(weighed: Rails) -> None:
    tired = weighed.opening._replace(reps_high=14)
    up = one_up("load", tired, weighed)
    assert up == tired._replace(load=pounds(11), reps_high=10)


def test_where_no_owned_load_fits_reps_go_up_instead(weighed: Rails) -> None:
    bare = weighed._replace(owned=())
    wanted = wants_up(start(bare, 2), EARNED, bare)
    assert wanted == ("reps", bare.opening._replace(reps_high=11))


@pytest.mark.parametrize(
    ("now", "step", "owned", "reached"),
    [
        (pounds(10), 1, (pounds(11),), pounds(11)),
        (pounds(10), 1, (pounds(11.5),), None),
        (pounds(10), 1, (pounds(10),), None),
        (pounds(11), 5, (pounds(12), pounds(12.1)), pounds(12)),
        (pounds(12), 5, (pounds(13),), None),
        (pounds(10), 0, (pounds(11),), None),
        (pounds(10), 1, (Load("ball", 11, "lb"),), None),
        (pounds(10), 1, (Load("dumbbell", 5, "kg"),), None),
        (Load("dumbbell", 5, "kg"), 0.5, (pounds(12),), pounds(12)),
        (Load("band", strength="light"), 1, (Load("band", strength="medium"),), None),
    ],
)
def test_a_step_in_load_stays_inside_step_cap_and_kind(
    now: Load, step: float, owned: tuple[Load, ...], reached: Load | None
) -> None:
    assert next_load(now, step, pounds(12), owned) == reached


def test_a_version_goes_to_the_next_level(rails: Rails) -> None:
    assert one_up("versions", rails.opening, rails) == rails.opening._replace(
        version="standing", version_level=2
    )
    only = rails._replace(prescription=rails.prescription._replace(versions=("kneeling",)))
    assert one_up("versions", only.opening, only) is None
    assert one_up("versions", only.opening._replace(version=""), rails) is None


def test_a_version_is_never_skipped(rails: Rails) -> None:
    exercise = rails.exercise._replace(
        versions=(*rails.exercise.versions, Version("on one leg", 3))
    )
    line = rails.prescription._replace(versions=("kneeling", "standing", "on one leg"))
    three = rails._replace(exercise=exercise, prescription=line)
    up = one_up("versions", three.opening, three)
    assert up is not None
    assert up.version == "standing"


def test_sets_and_holds_go_up_to_their_caps(rails: Rails) -> None:
    assert one_up("sets", rails.opening, rails) == rails.opening._replace(sets=4)
    assert one_up("sets", rails.opening._replace(sets=4), rails) is None
    hold = rails.prescription.sets._replace(opening=20, step=5, cap=30)
    held = rails._replace(prescription=rails.prescription._replace(hold=hold))
    assert one_up("hold", rails.opening._replace(hold_s=20), held) == rails.opening._replace(
        hold_s=25
    )
    assert one_up("hold", rails.opening, rails) is None
    assert one_up("speed", rails.opening, rails) is None


def test_range_never_leaves_the_exercises_list(rails: Rails) -> None:
    line = rails.prescription
    assert line.range is not None
    long = rails._replace(prescription=line._replace(range=line.range._replace(cap=9)))
    top = rails.opening._replace(range_index=2, range_step="long")
    assert one_up("range", top, long) is None


# ---------------------------------------------------------------- down


@pytest.mark.parametrize(
    ("day", "rule"),
    [
        (EARNED._replace(morning_up=True), "pain.next_morning"),
        (EARNED._replace(result="over"), "prog.down"),
        (EARNED._replace(gap="one step down"), "layoff.gap"),
        (EARNED._replace(result="short", hard=True), "prog.down"),
    ],
)
def test_a_bad_day_goes_down_at_once(rails: Rails, day: DaySummary, rule: str) -> None:
    built = Ladder(rails.opening._replace(reps_high=12), 1)
    ladder, decision = next_ladder(built, day, rails, may_go_up=True)
    assert (decision.rule, decision.outcome) == (rule, "down")
    assert ladder.dose == rails.opening._replace(reps_high=11)
    assert ladder.good_run == 0


@pytest.mark.parametrize(("form_run", "outcome"), [(0, "same"), (1, "same"), (2, "down")])
def test_three_corrections_running_go_down(rails: Rails, form_run: int, outcome: str) -> None:
    day = DaySummary(TODAY, "form")
    ladder, decision = next_ladder(start(rails, 0, form_run), day, rails, may_go_up=True)
    assert decision.outcome == outcome
    assert ladder.form_run == (0 if outcome == "down" else form_run + 1)


def test_short_reps_without_great_effort_stay(rails: Rails) -> None:
    _, decision = next_ladder(start(rails), DaySummary(TODAY, "short"), rails, may_go_up=True)
    assert decision.outcome == "same"


@pytest.mark.parametrize("gap", ["first step", "contact"])
def test_after_a_long_gap_the_ladder_begins_again(rails: Rails, gap: str) -> None:
    built = Ladder(rails.opening._replace(reps_high=15, range_index=2), 2, 1, (("reps", "x"),))
    ladder, decision = next_ladder(built, EARNED._replace(gap=gap), rails, may_go_up=True)
    assert ladder == Ladder(rails.opening)
    assert decision.rule == "layoff.gap"


def test_after_a_long_gap_what_stands_below_the_opening_is_not_raised(
    rails: Rails, weighed: Rails
) -> None:
    low = rails.opening._replace(
        sets=1, reps_high=9, range_index=0, range_step="short", version="sitting", version_level=0
    )
    assert next_ladder(Ladder(low), EARNED._replace(gap="contact"), rails, True)[0].dose == low
    light = weighed.opening._replace(load=pounds(8))
    day = EARNED._replace(gap="first step")
    assert next_ladder(Ladder(light), day, weighed, True)[0].dose == light


# ---------------------------------------------------------------- below the opening, and back


LOWER = {
    "sets": {"sets": 2},
    "range": {"range_index": 0, "range_step": "short"},
    "load": {"load": pounds(8)},
}


@pytest.mark.parametrize("axis", LOWER)
@pytest.mark.parametrize(("good_run", "comes_back"), [(0, False), (1, True)])
def test_a_step_below_the_opening_comes_back_after_two_earned_sessions(
    weighed: Rails, axis: str, good_run: int, comes_back: bool
) -> None:
    low = weighed.opening._replace(**LOWER[axis])  # type: ignore[arg-type]
    new, why = next_ladder(Ladder(low, good_run), EARNED, weighed, may_go_up=True)
    assert new.dose == (weighed.opening if comes_back else low)
    assert why.outcome == ("up" if comes_back else "same")


@pytest.mark.parametrize("axis", LOWER)
@pytest.mark.parametrize(
    "change",
    [
        {"result": "short"},
        {"result": "form"},
        {"result": "over"},
        {"morning_up": True},
        {"gap": "one step down"},
        {"stopped": True},
    ],
)
def test_nothing_comes_back_on_a_day_that_allows_no_step_up(
    weighed: Rails, axis: str, change: dict[str, object]
) -> None:
    low = weighed.opening._replace(**LOWER[axis])  # type: ignore[arg-type]
    day = EARNED._replace(**change)  # type: ignore[arg-type]
    new, _why = next_ladder(Ladder(low, 1), day, weighed, may_go_up=True)
    assert new.dose.sets <= low.sets
    assert new.dose.range_index <= low.range_index
    assert new.dose.load.rank() <= low.load.rank()


def test_what_was_lost_comes_back_one_thing_at_a_time_and_ends_at_the_opening(
    weighed: Rails,
) -> None:
    still = weighed._replace(prescription=weighed.prescription._replace(goes_up=()))
    ladder = Ladder(
        still.opening._replace(sets=1, load=pounds(8), range_index=0, range_step="short")
    )
    seen = []
    for day in range(16):
        today = EARNED._replace(today=TODAY + timedelta(days=2 * day))
        ladder, why = next_ladder(ladder, today, still, may_go_up=True)
        seen += [ladder.dose] if why.outcome == "up" else []
    assert [(dose.sets, dose.load.amount, dose.range_index) for dose in seen] == [
        (2, 8, 0),
        (3, 8, 0),
        (3, 10, 0),
        (3, 10, 1),
    ]
    assert seen[-1] == still.opening


def test_a_range_that_pinched_does_not_come_back(rails: Rails) -> None:
    low = rails.opening._replace(range_index=0, range_step="short")
    day = EARNED._replace(pinch=True)
    assert wants_up(Ladder(low, good_run=2), day, rails) != ("range", rails.opening)


def test_what_was_built_up_last_in_the_order_comes_down_first(rails: Rails) -> None:
    built = rails.opening._replace(reps_high=12, range_index=2, range_step="long")
    first = one_down(built, rails)
    assert first == built._replace(range_index=1, range_step="middle")
    assert one_down(first, rails) == first._replace(reps_high=11)


def test_at_the_opening_it_goes_down_as_pain_would_have_it(rails: Rails) -> None:
    doses = [rails.opening]
    for _ in range(5):
        doses.append(one_down(doses[-1], rails))
    steps = [(d.range_step, d.version, d.load.words(), d.sets) for d in doses]
    assert steps == [
        ("middle", "kneeling", "light band", 3),
        ("short", "kneeling", "light band", 3),
        ("short", "kneeling", "light band", 2),
        ("short", "kneeling", "light band", 1),
        ("short", "kneeling", "light band", 1),
        ("short", "kneeling", "light band", 1),
    ]


def test_load_comes_down_to_owned_ones(weighed: Rails) -> None:
    heavy = weighed.opening._replace(load=pounds(12), range_index=0, range_step="short")
    first = one_down(heavy, weighed)
    assert first.load == pounds(11)
    second = one_down(first, weighed)
    assert second.load == pounds(10)
    assert one_down(second, weighed).load == pounds(8)


@pytest.mark.parametrize("axis", ["versions", "sets", "hold"])
def test_each_axis_built_up_comes_down_on_itself(rails: Rails, axis: str) -> None:
    hold = rails.prescription.sets._replace(opening=20, step=5, cap=30)
    line = rails.prescription._replace(hold=hold, goes_up=(axis,))
    one = rails._replace(prescription=line, opening=rails.opening._replace(hold_s=20))
    up = one_up(axis, one.opening, one)
    assert up is not None
    assert one_down(up, one) == one.opening


# ---------------------------------------------------------------- a new plan


def test_under_a_new_plan_the_same_axes_go_on_inside_the_new_caps(rails: Rails) -> None:
    built = rails.opening._replace(reps_high=14, range_index=2, range_step="long")
    assert carried_over(built, rails) == built
    line = rails.prescription
    tighter = rails._replace(prescription=line._replace(reps=line.reps._replace(cap=12)))
    assert carried_over(built, tighter).reps_high == 12


def test_under_a_new_plan_what_is_not_there_any_more_starts_again(rails: Rails) -> None:
    old = rails.opening._replace(
        load=pounds(9), version="flying", version_level=7, range_step="beyond", range_index=2
    )
    assert carried_over(old, rails) == rails.opening


def test_under_a_new_plan_a_range_is_known_by_its_name(rails: Rails) -> None:
    old = rails.opening._replace(range_step="short", range_index=2)
    assert carried_over(old, rails) == rails.opening._replace(range_step="short", range_index=0)


# ---------------------------------------------------------------- long walks


def height(dose: Dose) -> tuple[float, ...]:
    return (
        dose.sets,
        dose.reps_high,
        dose.hold_s,
        dose.load.rank(),
        dose.range_index,
        dose.version_level,
    )


@pytest.mark.parametrize("seed", range(40))
@pytest.mark.parametrize("kind", ["band", "weight"])
@pytest.mark.hazard("H-02")
def test_no_walk_of_days_breaks_a_cap_or_moves_two_things_up(
    rails: Rails, weighed: Rails, seed: int, kind: str
) -> None:
    ground = rails if kind == "band" else weighed
    order = ("load", "reps", "range", "versions", "sets")
    ground = ground._replace(prescription=ground.prescription._replace(goes_up=order))
    days = random.Random(seed)
    ladder = Ladder(ground.opening)
    day = OPENED
    for _ in range(200):
        day += timedelta(days=days.choice((1, 2, 3, 8, 15)))
        summary = DaySummary(
            day,
            days.choice((*RESULTS, "earned", "earned", "earned")),
            days.choice(("none",) * 8 + ("one step down", "first step", "contact")),
            days.random() < 0.1,
            days.random() < 0.1,
            days.random() < 0.2,
            days.random() < 0.1,
        )
        after, decision = next_ladder(ladder, summary, ground, days.random() < 0.8)
        pairs = list(zip(height(ladder.dose), height(after.dose), strict=True))
        risen = [n for n, (was, now) in enumerate(pairs) if now > was]
        assert gate(after.dose, ground.prescription, ground.exercise) == after.dose
        assert 0 <= after.good_run <= 2
        assert 0 <= after.form_run <= 3
        if decision.outcome == "up":
            assert len(risen) == 1
            assert summary.gap == "none"
            assert not summary.morning_up
            assert not summary.stopped
            assert summary.result in {"earned", "good"}
        else:
            assert risen == []
        ladder = after


def test_the_walks_do_go_up(rails: Rails) -> None:
    ladder = Ladder(rails.opening)
    tops = 0
    for week in range(30):
        day = DaySummary(OPENED + timedelta(days=7 * week), "earned")
        ladder, decision = next_ladder(ladder, day, rails, may_go_up=True)
        tops += decision.outcome == "up"
    assert tops == 6  # reps 11 to 15 and one step of range
    assert (ladder.dose.reps_high, ladder.dose.range_index) == (15, 2)


@pytest.mark.parametrize(
    ("owned", "held"),
    [((8, 10, 11, 12), 11), ((8, 10, 12), 10), ((8, 10.5, 12), 10.5)],
)
def test_a_load_that_is_no_longer_at_home_is_rounded_down_to_one_that_is(
    weighed: Rails, owned: tuple[float, ...], held: float
) -> None:
    fewer = weighed._replace(owned=tuple(map(pounds, owned)))
    assert carried_over(weighed.opening._replace(load=pounds(11)), fewer).load == pounds(held)


def test_a_load_lighter_than_all_at_home_is_never_made_heavier(weighed: Rails) -> None:
    alone = weighed.prescription._replace(lighter=())
    heavy = weighed._replace(owned=(pounds(10), pounds(12)), prescription=alone)
    assert carried_over(weighed.opening._replace(load=pounds(6)), heavy).load == pounds(6)
