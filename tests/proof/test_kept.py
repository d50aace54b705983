"""A break is told in typed words and kept as a scenario that fails until the fault is gone."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from coach.drivers import prove as proving
from coach.drivers.prove import Options, Report, as_words, prove_command
from coach.drivers.prove_days import openings
from coach.drivers.prove_kept import kept
from coach.drivers.prove_search import Break
from coach.drivers.prove_told import Reader, in_words, retold, talk_of
from coach.drivers.replay import replay
from coach.session.engine import ask_of, start
from tests.drivers.fakes import PLANS, bound_plan
from tests.proof.seeded import SHOWN, Patch, Seed
from tests.proof.small import day, look

PLAN = PLANS / "d-o.yaml"
# On the plan of D.O. these faults change nothing of its first day: no ladder above a cap, one
# exercise too few, nothing locked, no section in a list, no holds first.
NOT_THERE = {"the_last_gate_is_dropped", "the_cap_on_exercises_is_dropped", "a_full_week_is_open"}
NOT_THERE |= {"a_lock_is_open", "an_opening_without_a_person_counts", "an_opening_with_a_set_more"}
NOT_THERE |= {"an_opening_with_more_range", "the_list_is_not_asked"}
NOT_THERE |= {"a_break_gives_the_holds_again", "one_set_too_many"}
# Nothing on the screen tells these: a source that `why` leaves out, a side that no line shows.
NO_WORDS = {"a_decision_without_a_source", "the_other_side_in_the_offer"}
THERE = [seed for seed in SHOWN if seed.plant.__name__ not in NOT_THERE]
TELLING = [seed for seed in THERE if seed.plant.__name__ not in NO_WORDS]
MUTE = [seed for seed in THERE if seed.plant.__name__ in NO_WORDS]


def name(seed: Seed) -> str:
    """For the list of tests."""
    return seed.plant.__name__


def found_on_the_first_day(seed: Seed, patch: Patch) -> Break:
    """The shortest conversation of the shipped plan's first day that shows a fault."""
    where = seed.plant(patch)
    _name, brief = openings(bound_plan())[0]
    broken = look(brief, *where.wide, kinds=where.kinds, until=seed.promise).broken.values()
    found = [one for one in broken if one.promise == seed.promise]
    return min(found, key=lambda one: len(one.talk))._replace(day="the first day")


NO_LADDERS = {"ladders": 0, "memories": 0, "days": 0}
NO_THROWS = {"memories": 0, "days": 0, "answers": 0}


def report(*broken: Break) -> Report:
    """A report of these breaks alone."""
    empty = Report(
        {},
        broken,
        0,
        0,
        0,
        0,
        (),
        (),
        0,
        0,
        (),
        (),
        0.0,
        0.0,
        "",
        finished=True,
        ladders=NO_LADDERS,
        throwing=NO_THROWS,
    )
    return empty._replace(promises={one.promise: "broken" for one in broken})


@pytest.mark.parametrize("seed", TELLING, ids=name)
def test_a_break_is_kept_as_a_scenario_that_fails_until_the_fault_is_gone(
    seed: Seed, tmp_path: Path
) -> None:
    with pytest.MonkeyPatch.context() as patch:
        one = found_on_the_first_day(seed, patch)
        in_words(report(one), openings(bound_plan()), bound_plan(), PLAN, tmp_path)
        (file,) = tmp_path.glob("*.yaml")
        assert file.name == f"{seed.promise.lower()}-1.yaml"
        assert not replay([file])[0].passed
    assert replay([file])[0].passed


@pytest.mark.parametrize("seed", MUTE, ids=name)
def test_what_no_words_show_is_told_and_not_kept(seed: Seed, monkeypatch: Patch) -> None:
    one = found_on_the_first_day(seed, monkeypatch)
    _name, first = openings(bound_plan())[0]
    found = retold(one, first)
    assert found is not None
    assert kept(found, first, first, bound_plan(), PLAN) == ""


def test_what_a_break_needs_not_is_made_dull(monkeypatch: Patch) -> None:
    (seed,) = [seed for seed in SHOWN if name(seed) == "the_next_set_stays_the_same"]
    seed.plant(monkeypatch)
    talk = (
        ("check-in", "pain now 2, waking pain 1, sleep last night 9, throwing yesterday none"),
        ("throwing today", "none"),
        ("screen ill", "no"),
        ("screen", "none"),
        ("pain in warm-up", "2"),
        ("set line in set 1 of side-lying turn out", "reps in set 3, pain in set 2.5"),
        ("rest", "(the timer ends)"),
    )
    words = "the same or a harder set follows pain over the ceiling"
    found = retold(Break("P4", words, talk), day())
    assert found is not None
    told = dict(talk_of(found, day()))
    assert told["check-in"] == "pain now 1, morning 0, slept 8, no throws yesterday"
    assert told["pain in warm-up"] == "0"
    assert told["set line in set 1 of side-lying turn out"] == "reps 3, pain 2.5"


def test_throws_are_typed_where_they_are_asked() -> None:
    reader = Reader((("check-in", "pain now 2, throwing yesterday game"),))
    state = start(day())
    ask = ask_of(state)
    assert ask is not None
    assert reader.move(ask, state).text == "pain now 2"
    assert reader.left == [("throwing yesterday", "game")]
    only = Reader((("check-in", "throwing yesterday game"),))
    assert only.move(ask, state)[:2] == ("game", "throwing yesterday")
    assert only.left == []


def test_a_talk_whose_words_break_nothing_stands_as_the_search_told_it() -> None:
    one = Break("P4", "made up", (("check-in", "pain now 9"),), "the first day")
    told = in_words(report(one), openings(bound_plan()), bound_plan(), PLAN, None)
    assert told.broken == (one,)


def test_the_command_tells_a_break_in_typed_words_and_writes_it(
    monkeypatch: Patch, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    (seed,) = [seed for seed in SHOWN if name(seed) == "stop_is_overheard"]
    found = report(found_on_the_first_day(seed, monkeypatch))
    monkeypatch.setattr(proving, "prove", lambda *_: found)
    assert prove_command(Options(PLAN, as_json=True, promise="P8", out=tmp_path / "new")) == 1
    said = capsys.readouterr()
    assert json.loads(said.out)["broken"][0]["talk"] == [["plan is mine", "stop"]]
    assert "p8-1.yaml: a replay fails on it" in said.err
    assert "stop" in as_words(found, "d-o.yaml")
    assert not replay([tmp_path / "new"])[0].passed
