"""A decision with its reason: what was decided, by which rule, from which plan line and source.

Law: the reason travels with the number. `why` is answered from these values and from nothing else.
Texts may hold tokens such as `{pain in set}`: the typed value is put in when it is shown.
"""

from __future__ import annotations

from enum import StrEnum
from typing import NamedTuple

from coach.model.program import Place


class Basis(StrEnum):
    """Where a rule comes from, in the words shown to the athlete."""

    PUBLISHED = "A published study is behind it."
    PRACTICE = "It is common practice. No study is behind it."
    OURS = "It was chosen for this coach. A clinician must sign it."
    PLAN = "It is your clinician's own choice."


class Decision(NamedTuple):
    """One decision.

    `rule` is the rule id (`pain.in_set`); `outcome` a short name the session branches on; `why` one
    or two plain sentences for the athlete (at most 15 words each); `place` the plan line it came
    from; `basis` and `source` say where the rule is from (author, year; or who must sign).
    """

    rule: str
    outcome: str
    why: str = ""
    place: Place | None = None
    basis: Basis = Basis.OURS
    source: str = ""


class Refusal(NamedTuple):
    """A named no: nothing is offered, and this is why."""

    rule: str
    why: str
    place: Place | None = None
