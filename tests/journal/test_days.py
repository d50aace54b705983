"""A day's record comes back from its JSON body as it was."""

from __future__ import annotations

import json

from coach.journal.days import day_body, day_record
from coach.model.flags import Section
from coach.model.history import DayRecord, Done
from coach.model.ladders import Ladder, ThrowDay, ThrowState
from coach.model.quantities import Dose, Load

DOSE = Dose(3, 10, 15, 0, Load("dumbbell", 2.0, "lb"), 60, "lower for 3 s", "to level", 1)
DAY = DayRecord(
    day="2026-11-09",
    opened_at="2026-11-09T18:30:00+02:00",
    ended="done",
    plan_version=1,
    waking_pain=0.0,
    done=(Done("row", 2, True, "2026-11-09T18:50:00+02:00", "good", (12.0, 11.0), (1.0,)),),
    alone=(Section.ARM,),
    notes=("a note",),
    picked=(("row", "table row"),),
    at_hand=("light band",),
    ladders=(("row", Ladder(DOSE, 1, 0, (("reps", "2026-11-02"),))),),
    threw=ThrowDay(
        2, 50, "throws", "no soreness", 0, ThrowState(3, 2), "2026-11-09T19:00:00+02:00"
    ),
    decisions=(("ready.sleep", "short", "One set fewer."),),
)


def test_a_full_day_comes_back_as_it_was() -> None:
    assert day_record(json.loads(json.dumps(day_body(DAY)))) == DAY


def test_a_day_of_an_older_version_comes_back_with_cautious_blanks() -> None:
    body = json.loads(json.dumps(day_body(DAY)))
    for name in ("ladders", "threw", "decisions", "own_asked", "at_hand"):
        del body[name]
    back = day_record(body)
    assert back.ladders == ()
    assert back.threw is None
