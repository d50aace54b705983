"""Controls of the list of hazards, tried at the very second and at every prompt."""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest

from coach.drivers.prove_typing import SIGNS
from coach.drivers.reading import kept_rows
from coach.drivers.rules_named import rules_digest
from coach.model.history import History
from coach.reports.whole_record import as_lines
from coach.session.brief import brief_for
from coach.session.engine import start
from coach.session.table import Stage
from tests.hazards.marked import ROOT
from tests.published.test_reports_of_scenarios import played
from tests.session.invented import ZONE, bound, brief
from tests.session.talking import TO_THE_FIRST_SET, talk

# A whole quiet day: to the first set, through it with its feel, and to the end of the rest after it.
THROUGH_A_SET = (*TO_THE_FIRST_SET, "12, pain 0", "fine")
FIRST_SECOND = datetime(2026, 11, 2, tzinfo=ZONE)
SECOND_AFTER_THE_LAST = datetime(2027, 2, 1, tzinfo=ZONE)
SECOND = timedelta(seconds=1)


@pytest.mark.hazard("H-04")
@pytest.mark.parametrize(
    ("opened_at", "opens"),
    [
        (FIRST_SECOND - SECOND, False),
        (FIRST_SECOND, True),
        (SECOND_AFTER_THE_LAST - SECOND, True),
        (SECOND_AFTER_THE_LAST, False),
        (SECOND_AFTER_THE_LAST + SECOND, False),
    ],
)
def test_a_plan_opens_from_its_first_second_to_its_last(
    opened_at: datetime, *, opens: bool
) -> None:
    state = start(brief_for(bound(), History(), opened_at))
    assert (state.stage is Stage.WHO) is opens
    assert bool(state.end) is not opens


@pytest.mark.hazard("H-10")
@pytest.mark.parametrize("sign", SIGNS)
def test_each_plain_sign_stops_or_is_asked_about_at_every_prompt_and_in_the_rest(sign: str) -> None:
    for before in range(len(THROUGH_A_SET) + 1):
        day = talk(brief(), *THROUGH_A_SET[:before]).say(sign)
        if day.name == "heard right":
            day = day.say("yes")
        assert day.name == "stopped", (before, day.name)
        assert not day.now.offers


@pytest.mark.hazard("H-18")
def test_what_is_sent_before_a_visit_names_program_plan_and_rules_by_their_hash(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    bound_here, whole = played(ROOT / "scenarios" / "good-days-left-arm.yaml", monkeypatch)
    begun = [line for line in as_lines(kept_rows(whole.rows)).splitlines() if '"rules"' in line]
    assert len(begun) == 3  # one a session
    assert all(bound_here.digest in line and rules_digest() in line for line in begun)
