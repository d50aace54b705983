"""Each number a plan may hold is tried on both sides of its limit."""

from __future__ import annotations

import pytest

from tests.texts.changing import Desk


@pytest.mark.parametrize(
    ("piece", "fits", "over"),
    [
        ("to start", 5, 6),
        ("in exercise", 3, 6),  # 5 at most; the program's wall is 3
        ("gentle", 5, 6),
        ("usual", 5, 6),
        ("in throwing", 0, 1),
    ],
)
def test_pain_ceilings_have_a_ceiling(piece: str, fits: int, over: int, desk: Desk) -> None:
    line = next(
        line
        for line in ("to start 1", "in exercise 2", "gentle 2", "usual 1", "in throwing 0")
        if line.startswith(piece)
    )
    desk.change(line, f"{piece} {fits}")
    assert desk.ids() == []
    desk.change(f"{piece} {fits}", f"{piece} {over}")
    assert desk.ids() == ["value.out_of_range"]


@pytest.mark.parametrize(("born", "missing"), [("2008-10", False), ("2008-11", True)])
@pytest.mark.hazard("H-07")
def test_a_guardian_is_needed_under_eighteen_on_the_first_day(
    born: str, missing: bool, desk: Desk
) -> None:
    desk.change("guardian: J.K., present at every session, 555 0171\n", "")
    desk.change("born 2011-08", f"born {born}")
    assert (desk.ids() == ["guardian.missing"]) == missing


@pytest.mark.parametrize(
    ("cap", "finding"), [(14, []), (13, ["dose.no_two_over"]), (11, ["dose.cap_under_opening"])]
)
def test_a_reps_cap_leaves_two_over_the_top(cap: int, finding: list[str], desk: Desk) -> None:
    assert desk.change("at most 15", f"at most {cap}").ids() == finding


@pytest.mark.parametrize(
    ("step", "finding"), [("1", ["load.step_not_at_home"]), ("1.1", ["load.step_over_tenth"])]
)
def test_a_load_step_is_at_most_a_tenth(step: str, finding: list[str], desk: Desk) -> None:
    desk.change("light band, 1", "band pull 10 kg, 1")
    desk.change(
        "load: light band only", f"load: band pull 10 kg, up by {step} kg, at most band pull 12 kg"
    )
    desk.change("goes up: reps, range", "goes up: reps, load, range")
    assert desk.ids() == finding


def test_a_step_to_a_load_at_home_is_quiet(desk: Desk) -> None:
    desk.change("light band, 1", "band pull 10 kg, band pull 11 kg, 1")
    desk.change(
        "load: light band only", "load: band pull 10 kg, up by 1 kg, at most band pull 12 kg"
    )
    desk.change("goes up: reps, range", "goes up: reps, load, range")
    assert desk.ids() == []


@pytest.mark.parametrize(("days", "fast"), [(56, False), (55, True)])
def test_a_range_takes_eight_weeks(days: int, fast: bool, desk: Desk) -> None:
    desk.change("up after 56 days", f"up after {days} days")
    assert (desk.ids() == ["dose.range_fast"]) == fast


@pytest.mark.parametrize(
    ("load", "finding"),
    [
        ("2 lb", []),
        ("2.25 lb", ["load.cuff_opening"]),
        ("1 kg", []),
        ("1.25 kg", ["load.cuff_opening"]),
    ],
)
def test_the_cuff_opens_light(load: str, finding: list[str], desk: Desk) -> None:
    desk.change("1 lb dumbbell, 2 lb dumbbell", f"{load} dumbbell")
    desk.change(
        "    reps: 10 to 15 only\n    load: 2 lb only",
        f"    reps: 10 to 15 only\n    load: {load} only",
    )
    assert desk.ids() == finding


@pytest.mark.parametrize(
    ("line", "fits", "passes"),
    [
        (
            "    sets: 2 only\n    reps: 8 to",
            "    sets: 3 only\n    reps: 8 to",
            "    sets: 4 only\n    reps: 8 to",
        ),
        (
            "goes up: reps, range\n    apart: 2 days",
            "goes up: reps, range\n    apart: 2 days",
            "goes up: reps, range\n    apart: 1 days",
        ),
        ("in exercise 2", "in exercise 3", "in exercise 4"),
    ],
)
def test_a_wall_holds_at_exactly_its_number(line: str, fits: str, passes: str, desk: Desk) -> None:
    desk.change(line, fits)
    assert desk.ids() == []
    desk.change(fits, passes)
    assert desk.ids() == ["wall.passed"]


@pytest.mark.parametrize(
    ("review", "finding"), [("2026-11-10", []), ("2026-11-09", ["dates.review"])]
)
def test_the_review_is_after_the_start(review: str, finding: list[str], desk: Desk) -> None:
    assert desk.change("review by 2026-12-21", f"review by {review}").ids() == finding


@pytest.mark.parametrize(
    ("opened", "finding"), [("2026-11-09", []), ("2026-11-10", ["dates.phase"])]
)
def test_the_phase_is_open_on_the_first_day(opened: str, finding: list[str], desk: Desk) -> None:
    assert desk.change("settle, opened 2026-11-06", f"settle, opened {opened}").ids() == finding


@pytest.mark.parametrize(("most", "finding"), [(4, []), (3, ["questions.too_many"])])
def test_questions_after_a_set_are_counted(most: int, finding: list[str], desk: Desk) -> None:
    assert (
        desk.change("after a set at most 5", f"after a set at most {most}", "program.yaml").ids()
        == finding
    )
