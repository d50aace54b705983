"""Random conversations over the real engine keep the promises at every turn."""

from __future__ import annotations

import pytest

from coach.model.heard import Action, Command
from coach.model.history import History, Hold
from coach.session.engine import start, turn
from coach.session.table import ENDS, Stage
from tests.session.invented import MONDAY, bound, brief, day_before
from tests.session.walking import Seen, walk

SEEDS = range(400)


@pytest.fixture(scope="module", name="walks")
def all_walks() -> list[list[Seen]]:
    """Walks of a usual day and of a first day, calm and wild."""
    days = (brief(), brief(History()))
    return [walk(days[seed % 2], seed, calm=bool(seed % 3)) for seed in SEEDS]


def test_every_walk_ends(walks: list[list[Seen]]) -> None:
    assert all(steps[-1].after.stage in ENDS for steps in walks)


@pytest.mark.hazard("H-01")
def test_after_a_stop_no_dose_is_shown(walks: list[list[Seen]]) -> None:
    stopped = [steps[-1].shown for steps in walks if steps[-1].after.stage is Stage.STOPPED]
    assert stopped
    assert not [shown for shown in stopped if shown.offers or shown.ask]


@pytest.mark.hazard("H-02")
def test_no_dose_passes_a_cap_of_the_plan(walks: list[list[Seen]]) -> None:
    doses = {p.exercise: p for p in bound().plan.doses}
    for steps in walks:
        for seen in steps:
            for offer in seen.shown.offers:
                plan = doses[offer.exercise]
                assert offer.dose.sets <= plan.sets.cap
                assert offer.dose.reps_high <= plan.reps.cap
                assert offer.dose.load.rank() <= plan.load_cap.rank()
                assert offer.set_number <= plan.sets.cap


@pytest.mark.hazard("H-03")
def test_the_side_on_every_offer_is_the_plans(walks: list[list[Seen]]) -> None:
    offers = [o for steps in walks for seen in steps for o in seen.shown.offers]
    assert offers
    assert {offer.side for offer in offers} == {"left"}


def test_a_typed_stop_ends_all_work_at_once(walks: list[list[Seen]]) -> None:
    stops = [s for steps in walks for s in steps if s.heard.command is Command.STOP]
    assert stops
    assert all(s.after.stage in {Stage.ENDING, Stage.DAY_OVER} for s in stops)
    assert all(not turn(s.after).offers for s in stops)


@pytest.mark.hazard("H-10")
def test_a_sure_sign_stops_from_every_prompt(walks: list[list[Seen]]) -> None:
    signs = [s for steps in walks for s in steps if s.heard.action is Action.ESCALATE]
    assert signs
    for seen in signs:
        assert seen.after.stage is Stage.STOPPED or seen.after.sign[0] == "self_harm"


def test_a_dose_over_the_ceiling_is_never_shown_again_the_same(
    walks: list[list[Seen]],
) -> None:
    for steps in walks:
        over: dict[str, tuple[float, ...]] = {}
        for seen in steps:
            for offer in seen.shown.offers:
                if offer.kind == "set" and offer.exercise in over:
                    now = (
                        offer.dose.load.rank(),
                        float(offer.dose.range_index),
                        float(offer.dose.version_level),
                    )
                    then = over[offer.exercise]
                    assert any(a < b for a, b in zip(now, then, strict=True))
            pain = dict(seen.heard.values).get("pain in set")
            work = seen.before.work
            denied = seen.after.aside == "read back"  # not yet counted: it is asked again
            if (
                isinstance(pain, float)
                and pain > 2
                and work
                and not seen.before.aside
                and not denied
            ):
                name = seen.before.brief.stations[work.place].exercise.name
                if seen.before.fixing or work.phase not in {"set", "report"}:
                    continue
                over[name] = (
                    work.dose.load.rank(),
                    float(work.dose.range_index),
                    float(work.dose.version_level),
                )


@pytest.mark.hazard("H-01")
def test_while_a_hold_stands_a_start_shows_only_the_stop() -> None:
    hold = Hold(1, "S08", "same day", "numb_tingle", "numb", "2026-11-08", "", 1)
    state = start(brief(History(records=(day_before(),), hold=hold)))
    shown = turn(state)
    assert shown.end == "stopped"
    assert shown.alone
    assert not shown.offers
    assert "closed" in " ".join(line.text for line in shown.lines)


@pytest.mark.parametrize(("days", "ended"), [(-8, "closed"), (-7, ""), (83, ""), (84, "closed")])
@pytest.mark.hazard("H-04")
def test_a_plan_lives_from_its_first_day_to_its_review_day(days: int, ended: str) -> None:
    from datetime import timedelta

    state = start(brief(History(), MONDAY + timedelta(days=days)))
    assert state.end == ended
