"""A plan that is somebody else's shows nothing of itself."""

from __future__ import annotations

import pytest

from coach.drivers.drive import run
from coach.drivers.replay import diary_in_memory
from tests.drivers.fakes import Athlete, HandClock, bound_plan


@pytest.mark.hazard("H-08")
def test_who_says_that_the_plan_is_not_theirs_gets_no_exercise_of_it() -> None:
    clock = HandClock()
    athlete = Athlete(clock, {"plan is mine": ["no"]})
    run(bound_plan(), athlete, diary_in_memory(), clock)
    assert athlete.asked[0] == "plan is mine"
    assert "This plan is for D.O." in athlete.words()
    for exercise in bound_plan().program.exercises:
        assert exercise.name not in athlete.words()
