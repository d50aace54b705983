"""Random conversations: planted faults are met, told as short talk, and made scenarios that fail."""

from __future__ import annotations

import json
import random
from pathlib import Path

import pytest

from coach.drivers import prove_walk
from coach.drivers.prove import Options
from coach.drivers.prove_answers import Answers
from coach.drivers.prove_typing import CALM_MOOD, EDGE_MOOD, SIGNS, Move, Typist
from coach.drivers.prove_walk import Walk, Walked, calmed, length, walked
from coach.drivers.prove_walk_told import as_words, scenarios_of, talk_of, walk_one
from coach.drivers.replay import replay
from coach.hearing import hear
from coach.model.heard import Action, Kind, Question
from tests.drivers.fakes import PLANS, bound_plan
from tests.proof import seeded
from tests.proof.seeded import AT_ONCE, SEEDS, Patch, Plant, Seed
from tests.proof.small import bound, day

# What a short walk of a small plan need not meet: several rare answers in one conversation.
RARE = {"unclear_pain_is_none", "every_correction_is_free", "unclear_sleep_is_long"}
RARE |= {"a_break_gives_the_holds_again", "a_set_is_shown_during_the_screen"}
MET = [s for s in SEEDS if s.why in {"", AT_ONCE} and s.plant.__name__ not in RARE]
PLAN = PLANS / "d-o.yaml"


def walk_days(plant: Plant, monkeypatch: Patch) -> Walked:
    """A walk on the one day of a planted fault, longer where a short one meets nothing."""
    monkeypatch.setattr(prove_walk, "openings", lambda _bound: [("the day", plant.brief)])
    told = walked(bound(), 500)
    return told if told.found else walked(bound(), 6000)


@pytest.mark.parametrize("seed", MET, ids=[seed.plant.__name__ for seed in MET])
def test_a_planted_fault_is_met_by_a_short_walk(seed: Seed, monkeypatch: Patch) -> None:
    found = walk_days(seed.plant(monkeypatch), monkeypatch).found
    assert found, seed.promise
    assert min(len(one.moves) for one in found) <= 3  # answers that are not dull


def test_values_of_one_class_that_are_told_apart_are_met(monkeypatch: Patch) -> None:
    (hidden,) = [seed for seed in SEEDS if seed.plant.__name__ == "a_shorter_short_night"]
    found = walk_days(hidden.plant(monkeypatch), monkeypatch).found
    assert {one.broken.promise for one in found} == {"P15"}


def test_without_a_fault_a_walk_meets_nothing_and_compares_many_values() -> None:
    told = walked(bound(), 6000)
    assert told.found == ()
    assert told.finished
    assert told.turns >= 6000
    assert told.compared > 1000


def test_the_same_seed_walks_the_same_way_with_any_number_of_workers() -> None:
    def walk(workers: int, seed: int) -> tuple[int, int, int]:
        told = walked(bound(), 5000, seed=seed, workers=workers)
        return told.turns, told.talks, told.compared

    assert walk(1, 7) == walk(2, 7) != walk(1, 8)


def test_a_walk_that_is_cut_short_says_so() -> None:
    told = walked(bound(), 10_000_000, seconds=0.5)
    assert not told.finished
    assert "cut short" in as_words(told, "plan.yaml", [])


def test_a_break_becomes_a_scenario_that_fails_until_the_fault_is_gone(tmp_path: Path) -> None:
    plan = bound_plan()
    with pytest.MonkeyPatch.context() as patch:
        seeded.the_next_set_stays_the_same(patch)
        told = walked(plan, 6000)
        files = [text for text in scenarios_of(told, plan, PLAN) if text]
        assert {one.broken.promise for one in told.found} == {"P4"}
        assert files
        file = tmp_path / "walk.yaml"
        file.write_text(files[0], encoding="utf-8")
        assert not replay([file])[0].passed
        assert "never offers: " in files[0]
        assert (
            files[0]
            in "\n".join(
                line.removeprefix("    ") for line in as_words(told, "d-o", files).splitlines()
            )
            + "\n"
        )
    assert replay([file])[0].passed


def test_calming_keeps_only_the_answers_that_matter(monkeypatch: Patch) -> None:
    where = seeded.the_next_set_stays_the_same(monkeypatch)
    found = walk_days(where, monkeypatch).found[0]
    more = {("pain now", 1): Move("2"), **found.moves}
    again = calmed(where.brief, found._replace(moves=more))
    assert again.moves == found.moves
    assert length(again) == length(found)
    assert ("pain in set", "3") not in talk_of(found)[:3]


def test_a_whole_walk_is_told_as_json_and_ends_with_1_for_a_break(
    capsys: pytest.CaptureFixture[str], monkeypatch: Patch, tmp_path: Path
) -> None:
    plan, out = bound_plan(), tmp_path / "broken"
    options = Options(PLAN, as_json=True, walk=2000, out=out)
    assert walk_one(plan, PLAN, options) == 0
    assert json.loads(capsys.readouterr().out)["broken"] == []
    seeded.a_yes_to_a_sign_goes_on(monkeypatch)
    assert walk_one(plan, PLAN, options) == 1
    told = json.loads(capsys.readouterr().out)
    assert told["promises"]["P1"] == "broken"
    assert told["promises"]["P2"] == "not shown"
    results = replay([out])
    assert results
    assert not any(result.passed for result in results)


@pytest.mark.parametrize("sign", SIGNS)
@pytest.mark.parametrize("kind", [Kind.PAIN_NOW, Kind.YES_NO, Kind.OWN_WORDS, Kind.COUNT])
def test_each_sign_that_a_walk_types_is_heard(sign: str, kind: Kind) -> None:
    heard = hear(Question("asked", kind), sign)
    assert heard.action in {Action.ESCALATE, Action.CONFIRM}


def test_a_calm_mood_types_the_dull_answer_far_more_often_than_an_edgy_one() -> None:
    def dull(mood: object) -> int:
        typist = Typist(mood, random.Random(3), Answers())  # type: ignore[arg-type]
        walk = Walk(day(), 5, typist, {})
        walk.to_the_end()
        return len(walk.told) - len(walk.moves)

    assert dull(CALM_MOOD) > dull(EDGE_MOOD)
