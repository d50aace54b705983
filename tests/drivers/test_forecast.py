"""A forecast: the real session under a course, summed up by week, and what it says of itself."""

from __future__ import annotations

import functools
import json
from datetime import date, timedelta
from pathlib import Path

import pytest

from coach.drivers.forecast import NO_PROMISE, Forecast, forecast, lanes
from coach.drivers.forecast_course import course_for
from coach.drivers.forecast_days import Ears, NothingTyped, days_of, past, trains_on, typed_on
from coach.drivers.forecast_shown import as_json, as_lines, as_page
from coach.journal.trouble import Trouble
from coach.model.history import DayRecord
from coach.model.program import Bound
from coach.model.scenario import Course, Stretch, Typing
from coach.reports.as_html import as_html
from coach.session.engine import listen
from coach.texts.doors import bound_from
from coach.texts.scenarios import read_course

PLANS = Path(__file__).parents[2] / "dialogs" / "steady-shoulder" / "plans"
M_K = PLANS / "m-k.yaml"
COURSES = ("smooth", "sore", "flare", "missed", "short-sleep")


@functools.cache
def plan(name: str = "m-k") -> Bound:
    """A shipped plan."""
    bound, findings = bound_from(PLANS / f"{name}.yaml")
    assert bound is not None, findings
    return bound


@functools.cache
def course(name: str) -> Course:
    """A shipped course."""
    found, findings = course_for(name, M_K)
    assert found is not None, findings
    return found


@functools.cache
def made(name: str, weeks: int = 12) -> Forecast:
    """Weeks of the plan that throws and climbs."""
    return forecast(plan(), course(name), weeks)


def tops(one: Forecast, exercise: str) -> list[int]:
    """The top of the reps at the end of each week."""
    return [w.dose.reps_high for week in one.weeks for w in week.works if w.exercise == exercise]


def told(one: Forecast, rule: str) -> list[str]:
    """The days on which a rule was told."""
    return [t.day for week in one.weeks for t in week.told if t.rule == rule]


# ---------------------------------------------------------------- the same, and honest


@pytest.mark.parametrize("name", COURSES)
def test_the_same_plan_and_course_give_the_same_bytes(name: str) -> None:
    again = forecast(plan(), course(name), 3)
    once = forecast(plan(), course(name), 3)
    assert as_json(once) == as_json(again)
    assert as_html(as_page(once)) == as_html(as_page(again))
    assert as_lines(once, plain=False) == as_lines(again, plain=False)


def test_all_three_shapes_say_that_it_is_no_promise() -> None:
    one = made("smooth", 3)
    assert NO_PROMISE in as_lines(one, plain=True)
    assert NO_PROMISE in json.loads(as_json(one))["what it is"]
    assert "no promise" in as_html(as_page(one))


def test_the_plain_picture_is_ascii_and_the_other_is_not() -> None:
    assert "\n".join(as_lines(made("smooth", 3), plain=True)).isascii()
    assert not "\n".join(as_lines(made("smooth", 3), plain=False)).isascii()


def test_the_page_needs_no_other_file() -> None:
    page = as_html(as_page(made("flare")))
    assert "<svg" in page
    assert not any(word in page for word in ("<script", "http:", "https:", "src=", "<link"))


# ---------------------------------------------------------------- what the weeks show


def test_three_sessions_a_week_for_twelve_weeks() -> None:
    assert [week.sessions for week in made("smooth").weeks] == [3] * 12


def test_smooth_weeks_climb_to_the_plans_caps_and_stay_there() -> None:
    caps = {d.exercise: d.reps.cap for d in plan().plan.doses}
    for name in ("side-lying external rotation", "band diagonal lift", "split squat"):
        climbed = tops(made("smooth"), name)
        assert climbed == sorted(climbed)
        assert climbed[0] < climbed[-1] == caps[name]


def test_a_load_goes_up_pound_by_pound_once_reps_are_at_their_cap() -> None:
    loads = {
        work.words.split(", ")[2]
        for week in made("smooth").weeks
        for work in week.works
        if work.exercise == "reach-across row"
    }
    assert loads == {"10 lb dumbbell", "11 lb dumbbell", "12 lb dumbbell"}


def test_a_range_goes_up_only_after_the_plans_56_days() -> None:
    opened = date.fromisoformat(plan().plan.phase_opened.day)
    days = [date.fromisoformat(day) for day in told(made("smooth"), "prog.range")]
    assert days
    assert min(days) >= opened + timedelta(days=56)


def test_no_day_moves_two_exercises_up() -> None:
    for one in days_of(plan(), course("smooth"), 12):
        ups = [d for d in one.record.decisions if d[1] == "up" and d[0].startswith("prog.")]
        assert len(ups) <= 1


def test_the_throwing_steps_go_up_one_by_one_to_the_plans_last() -> None:
    steps = [day.step for week in made("smooth").weeks for day in week.thrown]
    assert steps[:8] == [1, 2, 3, 4, 5, 6, 7, 8]
    assert set(steps[8:]) == {8}


def test_sore_weeks_climb_nowhere() -> None:
    for name in ("side-lying external rotation", "reach-across row"):
        assert len(set(tops(made("sore"), name))) == 1


def test_a_flare_lowers_all_and_two_earned_sessions_bring_each_back() -> None:
    sets = [
        w.dose.sets for k in made("flare").weeks for w in k.works if w.exercise == "split squat"
    ]
    assert sets[:3] == [3, 3, 3]
    assert sets[3] == 2
    assert sets[-1] == 3
    assert told(made("flare"), "pain.next_morning") == ["2026-11-25"] * 2


def test_soreness_at_throw_15_ends_the_day_there_and_takes_a_step_back() -> None:
    week = made("flare").weeks[6]
    sore = next(day for day in week.thrown if day.row.startswith("still sore"))
    after = made("flare").weeks[7].thrown[0]
    assert sore.throws == 15
    assert after.step == sore.step - 1
    assert (date.fromisoformat(after.day) - date.fromisoformat(sore.day)).days >= 3


def test_after_two_weeks_away_the_ladders_begin_at_the_first_step() -> None:
    weeks = {week.number: week for week in made("missed").weeks}
    assert [weeks[n].sessions for n in (4, 8, 9)] == [0, 0, 0]
    first = {d.exercise: d.reps.opening_high for d in plan().plan.doses}
    back = next(p for p in days_of(plan(), course("missed"), 12) if p.record.day >= weeks[10].first)
    assert {n: ladder.dose.reps_high for n, ladder in back.record.ladders}.items() <= first.items()
    assert back.record.threw is not None
    assert back.record.threw.step == 1


def test_short_nights_take_a_set_where_there_are_more_than_two() -> None:
    week = made("short-sleep", 3).weeks[0]
    sets = {work.exercise: work.words.split(" set")[0] for work in week.works}
    assert sets == {
        "side-lying external rotation": "2",
        "reach-across row": "2",
        "band diagonal lift": "2",
        "split squat": "2",
    }


@pytest.mark.parametrize("name", ["d-o", "p-s", "r-k"])
def test_a_plan_that_clears_no_throwing_shows_none(name: str) -> None:
    one = forecast(plan(name), course("smooth"), 2)
    assert not [day for week in one.weeks for day in week.thrown]
    assert [lane for lane, _rows in lanes(one)][-1] == "all of it"


# ---------------------------------------------------------------- where it ends


def test_it_ends_at_the_review_date() -> None:
    short = plan()._replace(plan=plan().plan._replace(review_by="2026-11-20"))
    one = forecast(short, course("smooth"), 12)
    assert len(one.weeks) == 3
    assert "2026-11-20" in one.ends
    assert max(told(one, "prog.two_for_two")) <= "2026-11-20"


def with_more(*stretches: Stretch) -> Course:
    """The smooth course with stretches added."""
    smooth = course("smooth")
    return smooth._replace(stretches=(*smooth.stretches, *stretches))


def stretch(first: int, last: int, *typed: tuple[str, str], **change: object) -> Stretch:
    """Some weeks that differ."""
    place = course("flare").stretches[0].place
    lines = tuple(Typing(prompt, words, place) for prompt, words in typed)
    return Stretch(first, last, (), None, lines, place)._replace(**change)  # type: ignore[arg-type]


def test_it_ends_at_the_first_stop_and_names_its_code() -> None:
    two_up = with_more(stretch(2, 2, ("waking pain", "3")))
    one = forecast(plan(), two_up, 12)
    assert [week.stop for week in one.weeks] == ["", "B02"]
    assert "B02" in one.ends


def test_28_days_away_close_the_plan() -> None:
    away = with_more(stretch(2, 5, trains=()))
    one = forecast(plan(), away, 8)
    assert [week.stop for week in one.weeks] == ["", "", "", "", "", "A28"]


def test_a_prompt_that_the_course_does_not_know_is_named() -> None:
    bare = course("smooth")._replace(usual=course("smooth").usual[:3])
    with pytest.raises(NothingTyped, match="at the prompt"):
        forecast(plan(), bare, 1)


def test_an_unknown_course_is_refused_with_those_there_are() -> None:
    with pytest.raises(Trouble, match="flare, missed, short-sleep, smooth, sore"):
        course_for("wild", M_K)


def test_a_course_may_be_a_file_of_ones_own(tmp_path: Path) -> None:
    file = tmp_path / "mine.yaml"
    file.write_text("course: mine\ntrains: Sunday\nusual:\n  - pain now: 1\n")
    found, findings = course_for(str(file), M_K)
    assert not findings
    assert found is not None
    assert found.trains == ("Sunday",)
    with pytest.raises(Trouble, match="no course file"):
        course_for(str(tmp_path / "none.yaml"), M_K)


# ---------------------------------------------------------------- the course as read


def test_what_stands_later_in_a_course_wins_on_its_days_alone() -> None:
    flare = course("flare")
    said = {
        day: {t.prompt: t.typed for t in typed_on(flare, 4, day)}["waking pain"]
        for day in ("Monday", "Wednesday")
    }
    assert said == {"Monday": "0", "Wednesday": "1"}


@pytest.mark.parametrize(("week", "trains"), [(3, True), (4, False), (5, True)])
def test_weeks_away_are_the_weeks_named(week: int, trains: bool) -> None:
    assert trains_on(course("missed"), week, "Monday") is trains


@pytest.mark.parametrize("line", ["trains: Moonday", "weeks:\n  - weeks: 5 to 4", "plays: Monday"])
def test_a_mistake_in_a_course_is_a_finding(tmp_path: Path, line: str) -> None:
    file = tmp_path / "odd.yaml"
    file.write_text(f"course: odd\nusual:\n  - pain now: 1\n{line}\n")
    found, findings = read_course(file)
    assert found is None
    assert findings


# ---------------------------------------------------------------- the past as the diary has it


def test_the_past_is_summed_up_as_the_diary_does() -> None:
    from coach.drivers.replay import diary_in_memory

    journal = diary_in_memory()
    records: list[DayRecord] = []
    for one in days_of(plan(), course("flare"), 5):
        number = journal.begin({}, one.record.opened_at, ())
        at = one.record.opened_at
        journal.append(number, "typed", {}, (), at, close=one.record)
        records.insert(0, one.record)
    assert past(tuple(records)) == journal.history()


@pytest.mark.parametrize("name", ["smooth", "flare", "short-sleep"])
def test_what_was_heard_once_is_what_would_be_heard_each_time(
    name: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    once = days_of(plan(), course(name), 4)
    monkeypatch.setattr(Ears, "__call__", lambda _self, state, event: listen(state, event))
    assert days_of(plan(), course(name), 4) == once
    assert len(once) > 8
