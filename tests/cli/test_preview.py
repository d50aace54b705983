"""A clinician walks a day in the real session: what speaks, what decides, what one answer changes."""

from __future__ import annotations

import re
from datetime import UTC, date, datetime, time
from pathlib import Path

import pytest

from coach.drivers.forecast_days import CourseAthlete, Ears, play_day
from coach.drivers.preview_walk import Answer, Walk, numbers_of, walked_again, walked_to
from coach.model.history import History
from coach.session.brief import brief_for
from coach.texts.doors import bound_from
from coach.texts.scenarios import read_course
from tests.cli.running import D_O, PLANS, run, with_closed_plan

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
    played = play_day(bound, history, opens, CourseAthlete(walk.usual, opens.date()), Ears())
    said = {line for shown in walk.shown for line in shown.lines}
    for done in played.record.done:
        assert any(done.exercise in line for line in said)
    assert played.record.ended == "done"


def test_one_changed_answer_changes_what_hangs_on_it_and_no_more() -> None:
    walk = first_day()
    assert walked_to(walk, "warm-up")
    answers = list(walk.answers)
    (pain,) = numbers_of(walk, "pain now")
    again = walked_again(walk, pain, "4")
    assert [a.text for a in again.answers if a.prompt == "pain now"] == ["4"]
    kept = [a for a in again.answers if a.prompt != "pain now"]
    assert all(answer in answers for answer in kept)
    assert any(d.rule == "pain.to_start" for shown in again.shown for d in shown.decisions)
    assert walk.answers == answers  # the first walk is as it was
    same = walked_again(walk, pain, "1")
    assert [s.lines for s in same.shown] == [s.lines for s in walk.shown]
    assert numbers_of(walk, "pain after") == []


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
    assert "    asks: pain now, scripts/check-in.yaml, line 5" in lines
    assert re.search(r"    decides: stop\.screen \(asked\), plans/d-o\.yaml, line \d+", done.stdout)


def test_any_answer_can_be_changed_also_one_asked_twice() -> None:
    walk = first_day()
    assert walked_to(walk, "warm-up")
    walk.type(Answer("pain in warm-up", "some"))  # unclear, so it is asked again
    walk.type(Answer("pain in warm-up", "1"))
    first, second = numbers_of(walk, "pain in warm-up")
    clearer = walked_again(walk, first, "2")
    assert [a.text for a in clearer.answers if a.prompt == "pain in warm-up"] == ["2"]
    worse = walked_again(walk, second, "8")
    assert [a.text for a in worse.answers if a.prompt == "pain in warm-up"][:2] == ["some", "8"]
    assert worse.shown[-1].lines != walk.shown[-1].lines


def test_every_answer_of_a_whole_day_can_be_changed_alone() -> None:
    walk = first_day()
    walked_to(walk, "done")
    texts = [(a.prompt, a.text) for a in walk.answers]
    for number in range(len(walk.answers)):
        again = walked_again(walk, number, walk.answers[number].text)
        assert [(a.prompt, a.text) for a in again.answers] == texts


def test_answers_are_listed_with_numbers_and_changed_by_them(tmp_path: Path) -> None:
    typed = "to: exercise\nanswers:\nchange: 2: 4\nchange: pain nwo: 2\nend:\n"
    done = run(tmp_path, "preview", D_O, typed=typed)
    listed = dict(re.findall(r"^  (\d+)  ([a-z ]+): ", done.stdout, re.MULTILINE))
    assert listed["2"] == "pain now"
    assert "new:  decides: pain.to_start (gentle)" in done.stdout
    assert 'The nearest known name is "pain now".' in done.stdout


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


def test_a_diary_gives_the_day_its_past(tmp_path: Path) -> None:
    with_closed_plan(tmp_path)
    made = run(tmp_path, "export", "--as", "jsonl", "--out", "diary.jsonl")
    assert made.returncode == 0, made.stderr
    closed = run(tmp_path, "preview", D_O, "--diary", "diary.jsonl", typed="end:\n")
    assert closed.returncode == 0, closed.stderr
    assert "closed" in closed.stdout
    first_day = run(tmp_path, "preview", D_O, typed="end:\n").stdout
    assert "Is this your plan?" in first_day
    assert "Is this your plan?" not in closed.stdout


@pytest.mark.parametrize(
    ("words", "code"),
    [
        ((), 2),
        ((D_O, "--diary", "nothing.jsonl"), 66),
        ((D_O, "--diary", D_O), 74),
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
