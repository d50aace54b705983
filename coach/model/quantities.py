"""Quantities with their units: loads, doses, caps.

Law: no number without its unit, and no conversion in silence: a load stays in the unit it was
written in. Comparing loads of different units goes through kilograms with the exact factor.
"""

from __future__ import annotations

from typing import Final, NamedTuple

# International avoirdupois pound, exact by definition (1959 agreement): 1 lb = 0.45359237 kg.
KG_PER_LB: Final = 0.45359237

BAND_STRENGTHS: Final = ("light", "medium", "heavy")


class Load(NamedTuple):
    """A load: a dumbbell or ball by weight, or a band by strength or pull.

    `kind` is dumbbell, band, ball or none. A weight is `amount` in `unit` (kg or lb); a band has
    `strength` (light, medium, heavy) or a pull in `amount` and `unit` at a stated stretch.
    """

    kind: str
    amount: float = 0.0
    unit: str = ""
    strength: str = ""

    def words(self) -> str:
        """The load as it is shown: `2 lb`, `light band`, `band pull 3 kg`, `no weight`."""
        if self.kind == "none":
            return "no weight"
        if self.strength:
            return f"{self.strength} {self.kind}"
        number = f"{self.amount:g} {self.unit}"
        if self.kind == "band":
            return f"band pull {number}"
        return f"{number} {self.kind}"

    def kilograms(self) -> float:
        """The weight or pull in kg (0 for a strength-named band or no load)."""
        return self.amount * KG_PER_LB if self.unit == "lb" else self.amount

    def rank(self) -> float:
        """A number that rises with the load among loads of one kind."""
        if self.strength:
            return float(BAND_STRENGTHS.index(self.strength) + 1)
        return self.kilograms()


class Dose(NamedTuple):
    """One exercise's dose for today, as it may be shown; every part comes from the plan.

    `sets` counts sets; `reps_low` to `reps_high` reps (or holds) a set; `hold_s` seconds a hold (0
    when counted in reps only); `rest_s` seconds between sets; `range_step` and `version` are names
    from the exercise ('' where it has none) with their place in its list (0 is shortest, easiest).
    """

    sets: int
    reps_low: int
    reps_high: int
    hold_s: int
    load: Load
    rest_s: int
    tempo: str = ""
    range_step: str = ""
    range_index: int = 0
    version: str = ""
    version_level: int = 0


class SetLine(NamedTuple):
    """What one set asks for where each set is another one: reps from, reps to, the load."""

    reps_low: int
    reps_high: int
    load: Load


class Call(NamedTuple):
    """Somebody to call: a number and who answers there."""

    number: str
    who: str
