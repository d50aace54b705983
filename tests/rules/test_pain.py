import pytest

from coach.model.program import PainCeilings
from coach.rules.pain import (
    Room,
    before_changed_set,
    in_set,
    in_warm_up,
    is_flag,
    next_morning,
    to_start,
    two_up,
    usual,
)

ALL = Room(shorter=True, easier=True, lighter=True)
NONE = Room(shorter=False, easier=False, lighter=False)


@pytest.mark.hazard("H-09")
@pytest.mark.parametrize(("pain", "flag"), [(7.5, False), (8, True), (10, True)])
def test_eight_and_more_is_a_warning_sign(pain: float, flag: bool) -> None:
    assert is_flag(pain) is flag


@pytest.mark.hazard("H-09")
@pytest.mark.parametrize(
    ("pain", "outcome"),
    [(0, "all"), (2, "all"), (2.5, "gentle"), (3, "gentle"), (3.5, "nothing"), (10, "nothing")],
)
def test_pain_now_opens_all_the_gentle_list_or_nothing(
    ceilings: PainCeilings, pain: float, outcome: str
) -> None:
    decision = to_start(pain, ceilings)
    assert decision.outcome == outcome
    assert decision.rule == "pain.to_start"
    assert decision.place == ceilings.place


@pytest.mark.hazard("H-09")
def test_a_gentle_ceiling_under_the_starting_one_opens_nothing(ceilings: PainCeilings) -> None:
    assert to_start(2.5, ceilings._replace(gentle=1.0)).outcome == "nothing"


# ---------------------------------------------------------------- in a set


@pytest.mark.hazard("H-09")
@pytest.mark.parametrize(
    ("pain", "outcome"),
    [
        (2.5, "go on"),
        (3, "shorter range"),
        (5.5, "shorter range"),
        (6, "end session"),
        (7.5, "end session"),
        (8, "read back"),
        (10, "read back"),
    ],
)
def test_pain_in_a_set_is_judged_at_the_ceiling_six_and_eight(
    ceilings: PainCeilings, pain: float, outcome: str
) -> None:
    decision = in_set(pain, ceilings, ALL, last_set=False, exercises_left_early=0)
    assert decision.outcome == outcome
    assert decision.place == ceilings.place


@pytest.mark.hazard("H-09")
@pytest.mark.parametrize(
    ("room", "outcome"),
    [
        (ALL, "shorter range"),
        (ALL._replace(shorter=False), "easier version"),
        (Room(shorter=False, easier=False, lighter=True), "lighter"),
        (NONE, "leave"),
    ],
)
def test_the_changes_come_in_their_order_and_then_the_exercise_is_left(
    ceilings: PainCeilings, room: Room, outcome: str
) -> None:
    assert in_set(3, ceilings, room, last_set=False, exercises_left_early=0).outcome == outcome


@pytest.mark.hazard("H-09")
def test_over_the_ceiling_in_the_last_set_the_exercise_is_left(ceilings: PainCeilings) -> None:
    assert in_set(3, ceilings, ALL, last_set=True, exercises_left_early=0).outcome == "leave"
    assert in_set(2, ceilings, ALL, last_set=True, exercises_left_early=0).outcome == "go on"


@pytest.mark.hazard("H-09")
@pytest.mark.parametrize(
    ("left", "outcome"), [(0, "leave"), (1, "end session"), (2, "end session")]
)
def test_leaving_a_second_exercise_ends_the_session(
    ceilings: PainCeilings, left: int, outcome: str
) -> None:
    decision = in_set(3, ceilings, NONE, last_set=False, exercises_left_early=left)
    assert decision.outcome == outcome


@pytest.mark.hazard("H-09")
def test_with_one_exercise_left_early_a_change_is_still_tried(ceilings: PainCeilings) -> None:
    assert in_set(3, ceilings, ALL, False, 1).outcome == "shorter range"


@pytest.mark.hazard("H-09")
@pytest.mark.parametrize(
    ("pain", "left", "outcome"),
    [
        (2.5, 0, "go on"),
        (3, 0, "leave"),
        (3, 1, "end session"),
        (5.5, 0, "leave"),
        (6, 0, "end session"),
        (8, 0, "read back"),
    ],
)
def test_before_a_changed_set_pain_over_the_ceiling_leaves_the_exercise(
    ceilings: PainCeilings, pain: float, left: int, outcome: str
) -> None:
    assert before_changed_set(pain, ceilings, left).outcome == outcome


@pytest.mark.hazard("H-09")
@pytest.mark.parametrize(
    ("pain", "outcome"),
    [
        (2.5, "go on"),
        (3, "gentle"),
        (3.5, "nothing"),
        (5.5, "nothing"),
        (6, "end session"),
        (7.5, "end session"),
        (8, "read back"),
    ],
)
def test_pain_in_the_warm_up_is_judged_like_pain_in_a_set(
    ceilings: PainCeilings, pain: float, outcome: str
) -> None:
    decision = in_warm_up(pain, ceilings)
    assert decision.outcome == outcome
    assert decision.rule == "ready.warm_up"


@pytest.mark.hazard("H-09")
@pytest.mark.parametrize(
    ("now", "last", "up"), [(3, 1, True), (2.5, 1, False), (10, None, False), (2, 0, True)]
)
def test_pain_now_two_above_the_last_session_opens_sections(
    now: float, last: float | None, up: bool
) -> None:
    assert two_up(now, last) is up


# ---------------------------------------------------------------- the morning after


@pytest.mark.hazard("H-09")
@pytest.mark.parametrize(
    ("mornings", "expected"),
    [
        ((), 1.0),
        ((4, 4), 1.0),
        ((4, 4, 0), 4),
        ((0, 3), 1.0),
        ((1, 2, 3, 4), 2.5),
        ((1, 1, 1, 1, 2, 2, 2), 1),
        ((1, 1, 1, 1, 2, 2, 2, 9, 9, 9, 9, 9), 1),
        ((0, 0, 0, 4, 4, 4, 4), 4),
        ((0, 0, 0, 4, 4, 4, 4, 0), 4),
    ],
)
def test_usual_is_the_median_of_the_last_seven_recorded(
    mornings: tuple[float, ...], expected: float
) -> None:
    assert usual(mornings, plan_usual=1.0) == expected


@pytest.mark.hazard("H-09")
@pytest.mark.parametrize(
    ("waking", "up_before", "outcome"),
    [
        (0, False, "usual"),
        (1, True, "usual"),
        (1.5, False, "up"),
        (1.5, True, "contact"),
        (2.5, False, "up"),
        (3, False, "contact"),
        (3, True, "contact"),
    ],
)
def test_a_morning_is_usual_up_or_for_the_clinician(
    waking: float, up_before: bool, outcome: str
) -> None:
    assert next_morning(waking, 1.0, up_before).outcome == outcome


@pytest.mark.hazard("H-09")
def test_the_first_exercise_left_before_a_changed_set_ends_no_session(
    ceilings: PainCeilings,
) -> None:
    assert before_changed_set(5, ceilings).outcome == "leave"


@pytest.mark.hazard("H-09")
@pytest.mark.parametrize(("last_set", "said"), [(True, False), (False, True)])
def test_that_no_smaller_step_is_left_is_said_only_where_a_set_would_follow(
    ceilings: PainCeilings, last_set: bool, said: bool
) -> None:
    why = in_set(5, ceilings, NONE, last_set=last_set, exercises_left_early=0).why
    assert ("no smaller step" in why) is said
