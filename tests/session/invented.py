"""An invented program, plan and athlete, built by hand for the session's tests. Not for use."""

from __future__ import annotations

from datetime import datetime, timedelta, timezone
from typing import Any

from coach.model.flags import Section
from coach.model.history import DayRecord, Done, History
from coach.model.program import (
    Axis,
    Bound,
    Calls,
    Exercise,
    Fault,
    Limits,
    Opened,
    PainCeilings,
    Phase,
    Place,
    Plan,
    Prescription,
    Program,
    RangeStep,
    Version,
)
from coach.model.quantities import Call, Load
from coach.session.brief import Brief, brief_for

ZONE = timezone(timedelta(hours=2))
MONDAY = datetime(2026, 11, 9, 18, 30, tzinfo=ZONE)
HERE = Place("plan.yaml", 12)


def axis(opening: int, high: int | None = None) -> Axis:
    """An axis that stays."""
    top = opening if high is None else high
    return Axis(opening, top, 0, 0, top, HERE)


def exercise(name: str, load: str = "dumbbell", **change: object) -> Exercise:
    """An exercise with two ranges, two versions and one fault."""
    made = Exercise(
        name=name,
        family="cuff",
        works="one side",
        counted_in="reps",
        load=load,
        equipment=() if load == "none" else (load,),
        set_up=("Lie on your side.",),
        cues=("Send your knuckles to the ceiling.",),
        faults=(
            Fault(
                "shrug",
                "My shoulder climbs.",
                "Let your neck grow long.",
                "shorter range",
            ),
        ),
        ranges=(
            RangeStep("half way", "Stop half way up."),
            RangeStep("all the way", "Go all the way up."),
        ),
        versions=(),
        stand_in=(),
        place=HERE,
    )
    return made._replace(**change)  # type: ignore[arg-type]


def prescription(made: Exercise, **change: object) -> Prescription:
    """Three sets of 10 to 15 with 2 lb, and 1 lb at home."""
    loaded = made.load != "none"
    load = Load("dumbbell", 2.0, "lb") if loaded else Load("none")
    dose = Prescription(
        exercise=made.name,
        sets=axis(3),
        reps=axis(10, 15),
        hold=None,
        load=load,
        load_step=0.0,
        load_cap=load,
        lighter=(Load("dumbbell", 1.0, "lb"),) if loaded else (),
        rest_s=60,
        tempo="",
        range=axis(1) if made.ranges else None,
        versions=tuple(v.name for v in made.versions),
        apart_days=1,
        goes_up=(),
        without=(),
        place=Place("plan.yaml", 40),
    )
    return dose._replace(**change)  # type: ignore[arg-type]


PENDULUM = exercise("arm swing", "none", family="mobility", ranges=(), faults=(), equipment=())
OUT = exercise("side-lying turn out")
ROW = exercise("table row", ranges=(), versions=(Version("short row", 1), Version("long row", 2)))
HOLD = exercise(
    "wall hold",
    "none",
    counted_in="holds",
    ranges=(),
    faults=(),
    equipment=(),
    family="mobility",
)


def bound(**change: object) -> Bound:
    """The invented program with the invented plan; `change` goes to the plan."""
    program = Program(
        name="try shoulder",
        version=1,
        about="Invented. Not for use.",
        languages=("English",),
        exercises=(PENDULUM, OUT, ROW, HOLD),
        scripts=(),
        phases=(Phase("build", ("side-lying turn out", "table row", "wall hold"), (), "", HERE),),
        warm_up=("arm swing",),
        gentle=("arm swing", "wall hold"),
        twice_a_day=("wall hold",),
        recovery=("wall hold",),
        most_questions_before_first_set=40,
        most_questions_after_a_set=6,
        heard_phrases=(),
        place=HERE,
    )
    plan = Plan(
        name="D.O. 1",
        initials="D.O.",
        version=1,
        program="try shoulder 1",
        language="English",
        born="2002-03",
        sport="handball",
        guardian=None,
        side="left",
        surgery="none",
        starts="2026-11-02",
        review_by="2027-01-31",
        phase="build",
        phase_opened=Opened("build", "2026-11-02", "M. Aalto", HERE),
        calls=Calls(
            Call("112", "ambulance"),
            Call("555 0199", "day and night"),
            Call("555 0134", "M. Aalto, weekdays 8 to 17"),
            Call("555 0160", "urgent care"),
            HERE,
        ),
        clearance=("by word", "in person"),
        words=(),
        pain=PainCeilings(3.0, 2.0, 3.0, 0.0, 1.0, HERE),
        limits=Limits(5, 45, 5, HERE),
        at_home=("1 lb dumbbell", "2 lb dumbbell"),
        loads_at_home=(Load("dumbbell", 1.0, "lb"), Load("dumbbell", 2.0, "lb")),
        opened=(),
        not_used=(),
        doses=(
            prescription(PENDULUM, sets=axis(1), reps=axis(20), rest_s=0),
            prescription(OUT),
            prescription(ROW, versions=("long row", "short row")),
            prescription(HOLD, sets=axis(2), reps=axis(2), hold=axis(30), rest_s=45),
        ),
        changed=(),
        side_place=HERE,
        runs_place=HERE,
        place=HERE,
        guardian_present="",
    )
    return Bound(program, plan._replace(**change), "0" * 64)  # type: ignore[arg-type]


def day_before(opened_at: datetime = MONDAY, **change: object) -> DayRecord:
    """A calm session two days before."""
    at = opened_at - timedelta(days=2)
    record = DayRecord(
        day=at.date().isoformat(),
        opened_at=at.isoformat(),
        ended="done",
        plan_version=1,
        waking_pain=0.0,
        pain_now=1.0,
        sleep_h=8.0,
        threw_yesterday="none",
        throwing_today="none",
        done=(Done("side-lying turn out", 3, True, at.isoformat()),),
    )
    return record._replace(**change)  # type: ignore[arg-type]


def asked_lately(opened_at: datetime = MONDAY) -> History:
    """A history in which every section was asked alone within the last days."""
    days = tuple(
        (section, (opened_at.date() - timedelta(days=n)).isoformat())
        for section, n in zip(Section, (2, 3, 4, 5, 2, 3), strict=True)
    )
    return History(records=(day_before(opened_at),), asked_alone=days)


def brief(history: History | None = None, opened_at: datetime = MONDAY, **change: Any) -> Brief:
    """A brief of the invented plan; by default with a history."""
    past = asked_lately(opened_at) if history is None else history
    return brief_for(bound(**change), past, opened_at)
