"""The stage table is the only law, and the machine built from it has no way round it."""

from __future__ import annotations

import pytest

from coach.session.machine import IllegalMove, follow
from coach.session.table import ENDS, OPEN, ROWS, Stage, diagram

DAY_ORDER = list(Stage)


def test_every_row_of_the_table_is_a_move_of_the_machine() -> None:
    assert all(follow(row.before, row.trigger) is row.after for row in ROWS)


def test_every_move_that_no_row_gives_is_refused() -> None:
    triggers = {row.trigger for row in ROWS}
    given = {(row.before, row.trigger) for row in ROWS}
    for stage in Stage:
        for trigger in triggers:
            if (stage, trigger) not in given:
                with pytest.raises(IllegalMove):
                    follow(stage, trigger)


def test_a_trigger_nobody_knows_is_refused() -> None:
    with pytest.raises(IllegalMove):
        follow(Stage.WARM_UP, "to_exercise")


def test_nothing_follows_an_end() -> None:
    assert not [row for row in ROWS if row.before in ENDS]


@pytest.mark.hazard("H-17")
def test_a_warning_sign_and_a_stop_work_from_every_open_stage() -> None:
    for stage in OPEN:
        assert follow(stage, "warning sign") is Stage.STOPPED
        assert follow(stage, "stop") is Stage.ENDING


def test_no_two_rows_share_a_stage_and_a_trigger() -> None:
    keys = [(row.before, row.trigger) for row in ROWS]
    assert len(keys) == len(set(keys))


def test_only_a_screen_asked_again_goes_back_in_the_day() -> None:
    back = {row.trigger for row in ROWS if DAY_ORDER.index(row.after) < DAY_ORDER.index(row.before)}
    assert back == {"screen again"}


def test_exercises_are_reached_only_through_the_screen() -> None:
    reached, frontier = {Stage.OPENING}, [Stage.OPENING]
    while frontier:
        stage = frontier.pop()
        for row in ROWS:
            if row.before is stage and row.before is not Stage.SCREEN and row.after not in reached:
                reached.add(row.after)
                frontier.append(row.after)
    assert Stage.EXERCISE not in reached
    assert Stage.WARM_UP not in reached


def test_the_picture_draws_every_row_by_itself_or_from_the_whole_open_day() -> None:
    picture = diagram()
    for row in ROWS:
        end = f"--> {row.after.name.lower()}: {row.trigger}\n"
        assert f"{row.before.name.lower()} {end}" in picture or (
            row.before in OPEN and f"open_day {end}" in picture
        )
