"""A clinician walks a day in the real session: what speaks, what decides, what one answer changes."""

from __future__ import annotations

import re
from datetime import UTC, date, datetime, time
from pathlib import Path

import pytest

from coach.drivers.forecast_days import CourseAthlete, play_day
from coach.drivers.preview_walk import Answer, Walk, walked_again, walked_to
from coach.model.history import History
from coach.session.brief import brief_for
from coach.texts.doors import bound_from
from coach.texts.scenarios import read_course
from tests.cli.running import D_O, PLANS, run

COURSE = PLANS.parent / "courses" / "smooth.yaml"


def first_day() -> Walk:
    bound, _ = bound_from(Path(D_O))
    course, _ = read_course(COURSE)
    assert bound is not None
    assert course is not None
    opens = datetime.combine(date.fromisoformat(bound.plan.starts), time(18, 30), UTC)
    return Walk(brief_for(bound, History(), opens), course.usual)


def test_a_walk_is_the_day_that_the_session_itself_would_make() -> None:
    walk = first_day()
    walked_to(walk, "done")
    assert walk.turn.end == "done"
    bound, history, opens = walk.brief.bound, walk.brief.history, walk.brief.opened_at
    played = play_day(bound, history, opens, CourseAthlete(walk.usual, opens.date()))
    said = {line for shown in walk.shown for line in shown.lines}
    for done in played.record.done:
        assert any(done.exercise in line for line in said)
    assert played.record.ended == "done"


def test_one_changed_answer_changes_what_hangs_on_it_and_no_more() -> None:
    walk = first_day()
    assert walked_to(walk, "warm-up")
    answers = list(walk.answers)
    again = walked_again(walk, Answer("pain now", "4"))
    assert again is not None
    assert [a.text for a in again.answers if a.prompt == "pain now"] == ["4"]
    kept = [a for a in again.answers if a.prompt != "pain now"]
    assert all(answer in answers for answer in kept)
    assert any(d.rule == "pain.to_start" for shown in again.shown for d in shown.decisions)
    assert walk.answers == answers  # the first walk is as it was
    same = walked_again(walk, Answer("pain now", "1"))
    assert same is not None
    assert [s.lines for s in same.shown] == [s.lines for s in walk.shown]
    assert walked_again(walk, Answer("pain after", "4")) is None


def test_it_says_which_line_speaks_and_which_rule_decides(tmp_path: Path) -> None:
    typed = "to: exercise\nend:\n"
    done = run(tmp_path, "preview", D_O, typed=typed)
    assert done.returncode == 0, done.stderr
    lines = done.stdout.splitlines()
    aim = lines.index("Aim: Send your knuckles up to the ceiling.")
    found = re.fullmatch(r" +speaks: (\S+), line (\d+)", lines[aim + 1])
    assert found
    source = (PLANS.parent / found[1]).read_text("utf-8").splitlines()
    assert source[int(found[2]) - 1].strip() == "- Send your knuckles up to the ceiling."
    assert "    asks: pain now, scripts/check-in.yaml, line 4" in lines
    assert re.search(r"    decides: stop\.screen \(asked\), plans/d-o\.yaml, line \d+", done.stdout)


def test_a_change_is_shown_as_gone_and_new(tmp_path: Path) -> None:
    done = run(
        tmp_path, "preview", D_O, typed="to: warm-up\nchange: pain now: 4\nchange: x: 3\nend:\n"
    )
    assert "gone: typed: 1" in done.stdout
    assert "new:  typed: 4" in done.stdout
    assert "new:  decides: pain.to_start (gentle)" in done.stdout
    assert '"x" was not asked so far.' in done.stdout


def test_a_warning_sign_stops_the_preview_and_nothing_is_kept(tmp_path: Path) -> None:
    typed = "yes\nmy pinky tingles and wont stop\nto: close\n"
    done = run(tmp_path, "preview", D_O, typed=typed)
    assert done.returncode == 0
    assert "STOP. D.O." in done.stdout
    assert '"close" is not reached with these answers.' in done.stdout
    assert done.stdout.endswith("Nothing was kept.\n")
    assert not (tmp_path / "data").exists()


def test_it_walks_back_to_a_stage_that_lies_behind(tmp_path: Path) -> None:
    done = run(tmp_path, "preview", D_O, typed="to: warm-up\nto: screen\nusual:\nend:\n")
    assert "[warm-up]" in done.stdout
    assert done.stdout.count("[screen]") == 2


def test_weeks_before_give_the_day_its_past(tmp_path: Path) -> None:
    first = run(tmp_path, "preview", D_O, typed="to: warm-up\nend:\n").stdout
    later = run(tmp_path, "preview", D_O, "--weeks", "2", typed="to: warm-up\nend:\n").stdout
    assert "Is this your plan?" in first
    assert "Is this your plan?" not in later
    assert "Since last time" in later


@pytest.mark.parametrize(
    ("words", "code"),
    [
        ((), 2),
        (("nothing.yaml",), 66),
        ((D_O, "--course", "weather"), 66),
        ((D_O, "--day", "9 Nov"), 2),
        ((D_O, "--weeks", "99"), 2),
        ((".",), 66),
    ],
)
def test_bad_calls_are_refused_calmly(tmp_path: Path, words: tuple[str, ...], code: int) -> None:
    done = run(tmp_path, "preview", *words)
    assert done.returncode == code, done.stdout + done.stderr
    assert "Traceback" not in done.stderr


def test_a_broken_plan_gives_its_findings(tmp_path: Path) -> None:
    (tmp_path / "broken.yaml").write_text("plan: D.O. 1\n")
    done = run(tmp_path, "preview", "broken.yaml")
    assert done.returncode == 65
    assert "key.missing" in done.stdout
