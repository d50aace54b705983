"""A clinician's first program, plan, exercise and scenario, written by being asked."""

from __future__ import annotations

import json
import shutil
import stat
from typing import TYPE_CHECKING

import pytest

from coach.texts.doors import check_paths
from tests.cli.running import PLANS, run

if TYPE_CHECKING:
    from pathlib import Path

SWINGS = [
    *("easy arm swings", "mobility", "one side", "reps", "none", ""),
    *("Lean on a table with the other hand.", "Let the arm hang down, loose.", ""),
    *("Sway from foot to foot and let the arm follow.", ""),
    *("muscles swing", "My arm muscles do the swinging.", "Rock from foot to foot.", "", ""),
    *("", ""),
]
ROW = [
    *("band row", "shoulder blade", "one side", "reps", "band", "band"),
    "",
    *("Close the band in a door at belt height.", "Step back until it pulls.", ""),
    *("Send the elbow past the shirt seam.", ""),
    *("shrug", "My shoulder climbs.", "Check first: neck long, then pull.", "shorter range", ""),
    *("to your side: Stop when the elbow is at your side.",),
    *("past your side: Stop when the elbow is a hand past your side.", ""),
    *("two feet", "1", "This is new to me.", "", ""),
    *(
        "one foot",
        "2",
        "Two feet feel easy.",
        "Stand on the far leg.",
        "",
        "Keep the hips level.",
        "",
        "",
    ),
    *("settle", "sets at most 3, apart at least 2 days"),
]
PROGRAM = [
    *("quiet arm 1", "an invented program", "N.N., invented"),
    "before the first set at most 40, after a set at most 6",
    *("in exercise at most 3", "minutes at most 40", "sets at most 2"),  # walls
    *("easy arm swings", "easy arm swings", "", "easy arm swings"),
    *("settle", "easy arm swings", ""),
]
PLAN = [
    *("A.B. 1", "born 2009-04, javelin", "2026-11-09, review by 2026-12-21"),
    *("J.K., present at every session, 555 0171", "left", "none"),
    *("settle, opened 2026-11-06 by M. Aalto", "R.S., throwing coach"),
    *("112, ambulance", "555 0199, day and night", ""),
    *("555 0134, M. Aalto, weekdays 8 to 17", "by word, in person"),
    *("usual 1, to start 3, in exercise 2, gentle 4, in throwing 0",),
    *("exercises 4, minutes 30, sessions a week 4", "light band, towel", "", "", "not cleared", ""),
    *("2 only", "8 to 12, up by 1, at most 15", "light band only"),  # band row
    *("to your side, up after 56 days, at most past your side", "two feet", "reps, range"),
    *("lower for 3 s", "60 s", "2 days", ""),
    *("1 only", "20 only", "", "", "30 s", "1 days"),  # easy arm swings
]


def typed(lines: list[str]) -> str:
    return "\n".join(lines) + "\n"


@pytest.fixture(name="program")
def made_program(tmp_path: Path) -> Path:
    """A program made by talk alone, with a second exercise in its phase."""
    done = run(tmp_path, "new", "program", "quiet", typed=typed(["English", *SWINGS, *PROGRAM]))
    assert done.returncode == 0, done.stdout + done.stderr
    folder = tmp_path / "quiet"
    assert check_paths([folder]) == []
    done = run(tmp_path, "new", "exercise", "quiet", typed=typed(ROW))
    assert done.returncode == 0, done.stdout + done.stderr
    assert check_paths([folder]) == []
    return folder


def test_a_program_a_plan_and_a_scenario_come_out_quiet(tmp_path: Path, program: Path) -> None:
    done = run(tmp_path, "new", "plan", "quiet", typed=typed(PLAN))
    assert done.returncode == 0, done.stdout + done.stderr
    assert check_paths([program]) == []
    plan = (program / "plans" / "a-b.yaml").read_text()
    assert "# A plan for one athlete." in plan.splitlines()[1]
    assert "    load: light band only\n" in plan
    day = [
        *("sore at the start", "quiet/plans/a-b.yaml", "smooth", "2026-11-09 at 18:30"),
        *("pain nwo: 4", "pain now: 4", "", "never offers: band row", ""),
        *("2026-11-11 at 18:30", "", "offers: band row", "", ""),
    ]
    done = run(tmp_path, "new", "scenario", ".", typed=typed(day))
    assert done.returncode == 0, done.stdout + done.stderr
    assert 'The nearest known name is "pain now".' in done.stdout
    assert check_paths([tmp_path / "sore-at-the-start.yaml"]) == []
    played = run(tmp_path, "replay", "sore-at-the-start.yaml")
    assert played.returncode == 0, played.stdout


def test_a_wrong_answer_is_asked_again_with_the_reason(tmp_path: Path, program: Path) -> None:
    answers = list(PLAN)
    answers[4:4] = ["both", "right arm"]  # for the side
    done = run(tmp_path, "new", "plan", "quiet", typed=typed(answers))
    assert done.returncode == 0, done.stdout
    assert done.stdout.count("Side that is worked on") == 3
    assert "side: left\n" in (program / "plans" / "a-b.yaml").read_text()


def test_a_warning_is_told_and_the_file_is_written(tmp_path: Path, program: Path) -> None:
    answers = [line.replace("after 56 days", "after 28 days") for line in PLAN]
    done = run(tmp_path, "new", "plan", "quiet", typed=typed(answers))
    assert done.returncode == 0
    assert "It passes. Worth a look:" in done.stdout
    assert (program / "plans" / "a-b.yaml").is_file()


def test_a_colon_in_a_sentence_is_put_in_quotes(program: Path) -> None:
    text = (program / "exercises" / "band-row.yaml").read_text()
    assert 'put right: "Check first: neck long, then pull."' in text


def test_an_end_in_the_middle_loses_no_answer(tmp_path: Path, program: Path) -> None:
    before = sorted(program.rglob("*"))
    done = run(tmp_path, "new", "plan", "quiet", typed=typed(PLAN[:9]))
    assert done.returncode == 11
    assert "type the same command again" in done.stdout
    kept = program / ".begun-plan"
    assert sorted(program.rglob("*")) == sorted([*before, kept])
    assert stat.S_IMODE(kept.stat().st_mode) == 0o600
    assert check_paths([program]) == []
    again = run(tmp_path, "new", "plan", "quiet", typed=typed(["", *PLAN[9:]]))
    assert again.returncode == 0, again.stdout
    assert "9 lines are kept" in again.stdout
    assert check_paths([program]) == []
    assert not kept.exists()


def test_what_was_begun_can_be_thrown_away(tmp_path: Path, program: Path) -> None:
    run(tmp_path, "new", "plan", "quiet", typed=typed(["C.D. 7"]))
    done = run(tmp_path, "new", "plan", "quiet", typed=typed(["anew", *PLAN]))
    assert done.returncode == 0, done.stdout
    assert (program / "plans" / "a-b.yaml").is_file()


def test_a_program_that_changed_meanwhile_is_asked_about_anew(
    tmp_path: Path, program: Path
) -> None:
    run(tmp_path, "new", "plan", "quiet", typed=typed(PLAN[:8]))
    outline = program / "program.yaml"
    outline.write_text(outline.read_text().replace("phase: settle", "phase: calm"))
    answers = [line.replace("settle, opened", "calm, opened") for line in PLAN]
    done = run(tmp_path, "new", "plan", "quiet", typed=typed(["", *answers[6:]]))
    assert done.returncode == 0, done.stdout
    assert "phase: calm, opened" in (program / "plans" / "a-b.yaml").read_text()


def test_back_changes_an_answer_before(tmp_path: Path, program: Path) -> None:
    answers = list(PLAN)
    answers[4:5] = ["right", "none", "back", "back", "left"]
    done = run(tmp_path, "new", "plan", "quiet", typed=typed(answers))
    assert done.returncode == 0, done.stdout
    assert "side: left\n" in (program / "plans" / "a-b.yaml").read_text()


def test_back_at_the_first_question_and_inside_a_list(tmp_path: Path, program: Path) -> None:
    answers = ["back", *(line.replace("band row", "long row") for line in ROW)]
    place = answers.index("Step back until it pulls.")
    answers[place:place] = ["Lean on a wall.", "back", "Close the band in a door at belt height."]
    done = run(tmp_path, "new", "exercise", "quiet", typed=typed(answers))
    assert done.returncode == 0, done.stdout
    text = (program / "exercises" / "long-row.yaml").read_text()
    assert "Lean on a wall." not in text
    assert text.count("Close the band") == 1


def test_versions_walls_and_the_phase_are_in_the_files(program: Path) -> None:
    text = (program / "exercises" / "band-row.yaml").read_text()
    assert (
        "  - version: one foot\n    level: 2\n    fits: Two feet feel easy.\n    set-up:\n      - Stand on the far leg."
        in text
    )
    outline = (program / "program.yaml").read_text()
    assert "exercises: easy arm swings, band row\n" in outline
    assert "  band row: sets at most 3, apart at least 2 days\n" in outline


def test_a_wrong_phase_or_wall_is_asked_again(tmp_path: Path, program: Path) -> None:
    answers = [line.replace("band row", "band pull") for line in ROW]
    answers[-2:] = ["setle", "settle", "sets at most many", ""]
    done = run(tmp_path, "new", "exercise", "quiet", typed=typed(answers))
    assert done.returncode == 0, done.stdout
    assert 'The nearest known name is "settle".' in done.stdout
    assert "band pull:" not in (program / "program.yaml").read_text()


def test_every_file_begins_with_the_editors_line_and_its_schema_is_there(
    tmp_path: Path, program: Path
) -> None:
    assert run(tmp_path, "new", "plan", "quiet", typed=typed(PLAN)).returncode == 0
    files = sorted(program.rglob("*.yaml"))
    assert len(files) == 7
    for file in files:
        first = file.read_text().splitlines()[0]
        path = first.removeprefix("# yaml-language-server: $schema=")
        schema = json.loads((file.parent / path).read_text())
        assert schema["$schema"] == "http://json-schema.org/draft-07/schema#"


def test_a_refused_sentence_of_a_list_takes_no_other_with_it(tmp_path: Path, program: Path) -> None:
    answers = [line.replace("band row", "long row") for line in ROW]
    place = answers.index("Step back until it pulls.")
    answers[place:place] = ["Do five reps now."]
    done = run(tmp_path, "new", "exercise", "quiet", typed=typed(answers))
    assert done.returncode == 0, done.stdout
    assert "1 taken so far." in done.stdout
    text = (program / "exercises" / "long-row.yaml").read_text()
    assert "belt height.\n  - Step back until it pulls.\n" in text


def test_a_second_language_is_asked_for_sentence_by_sentence(tmp_path: Path) -> None:
    both = ["English, Spanish", *SWINGS[:6], "Lean on a table.", "", "Apoya la mano.", ""]
    both += ["Sway from foot to foot.", "", "Pasa de un pie al otro.", ""]
    both += ["stiff", "My arm is stiff.", "Tengo el brazo tieso.", "Let it hang.", "Deja colgar."]
    both += ["", "", "small: Keep it small.", "Que sea corto.", "big: Let it grow.", "Que crezca."]
    both += ["", "", *PROGRAM]
    done = run(tmp_path, "new", "program", "dos", typed=typed(both))
    assert done.returncode == 0, done.stdout
    assert check_paths([tmp_path / "dos"]) == []
    text = (tmp_path / "dos" / "exercises" / "easy-arm-swings.yaml").read_text()
    assert "cues in Spanish:\n  - Pasa de un pie al otro." in text
    assert "    small in Spanish: Que sea corto." in text
    answers = list(PLAN[:12])
    answers.insert(1, "Spanish")
    cut = run(tmp_path, "new", "plan", "dos", typed=typed(answers))
    assert "Language the athlete reads: English, Spanish" in cut.stdout


def test_nothing_is_written_over(tmp_path: Path, program: Path) -> None:
    text = (program / "exercises" / "band-row.yaml").read_text()
    shutil.copy(program / "exercises" / "band-row.yaml", program / "exercises" / "slow-pull.yaml")
    (program / "exercises" / "band-row.yaml").write_text(text.replace("band row", "other row"))
    (program / "exercises" / "slow-pull.yaml").unlink()
    fixed = (program / "program.yaml").read_text().replace("band row", "other row")
    (program / "program.yaml").write_text(fixed)
    done = run(tmp_path, "new", "exercise", "quiet", typed=typed(ROW))
    assert done.returncode == 2
    assert "Nothing was written over" in done.stderr
    assert "other row" in (program / "exercises" / "band-row.yaml").read_text()
    assert run(tmp_path, "new", "program", "quiet").returncode == 2


@pytest.mark.parametrize(
    ("words", "code"),
    [
        (("new",), 2),
        (("new", "letter", "."), 2),
        (("new", "plan", "nowhere"), 65),
        (("new", "scenario", "nowhere"), 66),
        (("new", "exercise", str(PLANS)), 65),
    ],
)
def test_bad_calls_are_refused_calmly(tmp_path: Path, words: tuple[str, ...], code: int) -> None:
    done = run(tmp_path, *words)
    assert done.returncode == code
    assert "Traceback" not in done.stderr


def test_letters_that_hide_do_not_reach_a_file(tmp_path: Path, program: Path) -> None:
    answers = list(ROW)
    answers[0] = "band\x1b[2J row"
    answers.insert(1, "long row")
    done = run(tmp_path, "new", "exercise", "quiet", typed=typed(answers))
    assert done.returncode == 0, done.stdout
    assert "\x1b" not in done.stdout
    assert (program / "exercises" / "long-row.yaml").is_file()


def test_a_plan_for_another_sport_is_asked_for_its_own_steps(tmp_path: Path, program: Path) -> None:
    at = PLAN.index("not cleared")
    own = [
        *("passes", "10 passes at 6 m", "10 passes at 6 m, 10 passes at 9 m", ""),
        "cleared 2026-11-06 by M. Aalto, own steps, from step 1, at most step 2, apart 2 days",
    ]
    lines = [*PLAN[: at - 1], *own, *PLAN[at + 1 :]]
    done = run(tmp_path, "new", "plan", program.name, typed=typed(lines))
    assert done.returncode == 0, done.stdout + done.stderr
    (plan,) = (program / "plans").glob("*.yaml")
    assert "  step 2: 10 passes at 6 m, 10 passes at 9 m\n" in plan.read_text("utf-8")
    assert check_paths([program]) == []


def test_a_pitchers_plan_is_asked_which_pitch_limits_count(tmp_path: Path, program: Path) -> None:
    lines = [line.replace("javelin", "baseball pitcher") for line in PLAN]
    at = lines.index("not cleared") + 1
    lines = [*lines[:at], "pitcher, 2015 edition, later edition", *lines[at:]]
    done = run(tmp_path, "new", "plan", program.name, typed=typed(lines))
    assert done.returncode == 0, done.stdout + done.stderr
    assert check_paths([program]) == []
