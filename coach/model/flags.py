"""Names of the warning signs: groups, flags and tiers.

Law: a group's name is what hearing reports and what a script may refer to. This file names
things; which flag belongs to which tier and what is said is decided in `coach.rules.red_flags`.
"""

from __future__ import annotations

from enum import StrEnum
from typing import Final


class Tier(StrEnum):
    """How soon a person must be reached, most urgent first."""

    EMERGENCY_NOW = "emergency now"
    SAME_DAY = "same day"
    BEFORE_NEXT_SESSION = "before next session"


class Group(StrEnum):
    """Screen groups; the value is spelt as in `coach hear`'s output."""

    NUMB_TINGLE = "numb_tingle"
    WEAK_DROP = "weak_drop"
    SWELLING_COLOUR_COLD = "swelling_colour_cold"
    LOST_MOTION = "lost_motion"
    DISLOCATION_SLIP = "dislocation_slip"
    DEFORMITY = "deformity"
    POP_WITH_LOSS = "pop_with_loss"
    ELBOW_POP = "elbow_pop"
    TRAUMA_FALL = "trauma_fall"
    ABDOMEN_BLOW = "abdomen_blow"
    CHEST_BREATH = "chest_breath"
    FAINT_HEART = "faint_heart"
    STROKE_SIGNS = "stroke_signs"
    CORD_SIGNS = "cord_signs"
    FEVER_INFECTION = "fever_infection"
    WOUND = "wound"
    LEG_CLOT = "leg_clot"
    NIGHT_PAIN_UNRELENTING = "night_pain_unrelenting"
    WEIGHT_NIGHT_SWEATS = "weight_night_sweats"
    MANY_JOINTS = "many_joints"
    PAINKILLERS = "painkillers"
    OVERTIRED = "overtired"
    SELF_HARM = "self_harm"


class Section(StrEnum):
    """The six asked sections of the screen, by the names a script uses after `screen`."""

    ARM = "arm"
    JOINT = "joint"
    BODY = "body"
    ILL = "ill"
    NIGHT = "night"
    WEEKLY = "weekly"


SECTION_GROUPS: Final[dict[Section, tuple[Group, ...]]] = {
    Section.ARM: (
        Group.NUMB_TINGLE,
        Group.WEAK_DROP,
        Group.SWELLING_COLOUR_COLD,
        Group.LOST_MOTION,
    ),
    Section.JOINT: (
        Group.DISLOCATION_SLIP,
        Group.DEFORMITY,
        Group.POP_WITH_LOSS,
        Group.ELBOW_POP,
        Group.TRAUMA_FALL,
        Group.ABDOMEN_BLOW,
    ),
    Section.BODY: (
        Group.CHEST_BREATH,
        Group.FAINT_HEART,
        Group.STROKE_SIGNS,
        Group.CORD_SIGNS,
    ),
    Section.ILL: (Group.FEVER_INFECTION, Group.WOUND, Group.LEG_CLOT),
    Section.NIGHT: (Group.NIGHT_PAIN_UNRELENTING,),
    Section.WEEKLY: (
        Group.WEIGHT_NIGHT_SWEATS,
        Group.MANY_JOINTS,
        Group.PAINKILLERS,
        Group.OVERTIRED,
    ),
}

GROUP_FLAGS: Final[dict[Group, tuple[str, ...]]] = {
    Group.NUMB_TINGLE: ("S08", "B05"),
    Group.WEAK_DROP: ("E05",),
    Group.SWELLING_COLOUR_COLD: ("E04", "S01"),
    Group.LOST_MOTION: ("B06",),
    Group.DISLOCATION_SLIP: ("S05", "B04"),
    Group.DEFORMITY: ("E03",),
    Group.POP_WITH_LOSS: ("S06", "S10"),
    Group.ELBOW_POP: ("S07", "B03"),
    Group.TRAUMA_FALL: ("E03", "E05", "S06", "E10"),
    Group.ABDOMEN_BLOW: ("E10",),
    Group.CHEST_BREATH: ("E01", "E02"),
    Group.FAINT_HEART: ("E08",),
    Group.STROKE_SIGNS: ("E07",),
    Group.CORD_SIGNS: ("E06",),
    Group.FEVER_INFECTION: ("E09", "S02", "B11"),
    Group.WOUND: ("S03",),
    Group.LEG_CLOT: ("S04",),
    Group.NIGHT_PAIN_UNRELENTING: ("B01", "S09"),
    Group.WEIGHT_NIGHT_SWEATS: ("B07",),
    Group.MANY_JOINTS: ("B08",),
    Group.PAINKILLERS: ("B09",),
    Group.OVERTIRED: ("B10",),
    Group.SELF_HARM: ("E11",),
}
