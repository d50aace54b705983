"""An invented plan and exercise for the rule tests; no person, clinic or team is meant."""

from __future__ import annotations

import pytest

from coach.model.program import (
    Axis,
    Calls,
    Exercise,
    Fault,
    Limits,
    Opened,
    PainCeilings,
    Place,
    Plan,
    Prescription,
    RangeStep,
    Version,
)
from coach.model.quantities import Call, Load

PLACE = Place("plan.yaml", 12)
BAND = Load("band", strength="light")


def axis(opening: int, cap: int, high: int = 0) -> Axis:
    return Axis(opening, high or opening, 1, 7, cap, PLACE)


@pytest.fixture
def ceilings() -> PainCeilings:
    return PainCeilings(2.0, 2.5, 3.0, 0.0, 1.0, Place("plan.yaml", 20))


@pytest.fixture
def plan(ceilings: PainCeilings) -> Plan:
    return Plan(
        name="D.O. 1",
        initials="D.O.",
        version=3,
        program="invented 1",
        language="English",
        born="2001-05",
        sport="handball",
        guardian=None,
        side="left",
        surgery="none",
        starts="2026-11-09",
        review_by="2026-12-21",
        phase="build",
        phase_opened=Opened("build", "2026-11-06", "M. Aalto", PLACE),
        calls=Calls(
            Call("112", "ambulance"),
            Call("555 0199", "day and night"),
            Call("555 0134", "M. Aalto"),
            None,
            PLACE,
        ),
        clearance=("by word", "in person", "new plan"),
        words=(),
        pain=ceilings,
        limits=Limits(4, 30, 4, Place("plan.yaml", 21)),
        at_home=("light band",),
        loads_at_home=(BAND,),
        opened=(),
        not_used=(),
        doses=(),
        changed=(),
        side_place=PLACE,
        runs_place=PLACE,
        place=PLACE,
    )


@pytest.fixture
def row() -> Exercise:
    """A row with three range steps and versions of levels 1, 1 and 2."""
    return Exercise(
        name="band row",
        family="shoulder blade",
        works="one side",
        counted_in="reps",
        load="band",
        equipment=("band",),
        set_up=(),
        cues=(),
        faults=(
            Fault("shrug", "My shoulder climbs.", "Let the neck grow long.", "shorter range"),
            Fault("too easy", "It feels too easy.", "Slow it down."),
            Fault("outer shoulder works", "It burns outside.", "Hold a towel roll there."),
        ),
        ranges=(RangeStep("short", "a."), RangeStep("middle", "b."), RangeStep("long", "c.")),
        versions=(Version("kneeling", 1), Version("sitting", 1), Version("standing", 2)),
        stand_in=(("band", "Pull a towel against a door."),),
        place=PLACE,
    )


@pytest.fixture
def line() -> Prescription:
    """Its dose line: opens at 3 sets of 8 to 10, middle of three ranges, light band."""
    return Prescription(
        exercise="band row",
        sets=axis(3, 4),
        reps=axis(8, 15, 10),
        hold=None,
        load=BAND,
        load_step=0.0,
        load_cap=BAND,
        lighter=(),
        rest_s=60,
        tempo="lower for 3 s",
        range=axis(1, 2),
        versions=("kneeling", "sitting", "standing"),
        apart_days=2,
        goes_up=("reps",),
        without=(("band", "stand-in"),),
        place=Place("plan.yaml", 40),
    )
