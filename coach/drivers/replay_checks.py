"""What a scenario says must be seen, held against what was seen.

Law: a check holds from its place on, to the end of its day; what was seen is never changed to fit.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

from coach.drivers.replay_names import asked_names

if TYPE_CHECKING:
    from collections.abc import Iterable

    from coach.model.quantities import Dose
    from coach.model.scenario import Seen
    from coach.model.turns import Offer, Turn

MOST_SHOWN: Final = 8  # things seen instead that one mismatch lists; set here


class Moment(NamedTuple):
    """One turn as it was shown, with its words."""

    turn: Turn
    words: tuple[str, ...]


def failed(check: Seen, moments: tuple[Moment, ...], notes: tuple[str, ...]) -> str | None:
    """None when the check holds over these moments; else what was seen instead."""
    kind = check.kind.removeprefix("never ")
    found = seen_of(kind, check.value, moments, notes)
    if check.kind.startswith("never "):
        return f"{kind} {found}" if found else None
    return None if found else instead(kind, moments, notes)


def seen_of(kind: str, value: str, moments: tuple[Moment, ...], notes: tuple[str, ...]) -> str:
    """What fits the value, in words; empty when nothing does."""
    if kind == "offers":
        return next((words(o) for o in offers(moments) if fits(value, o)), "")
    if kind == "asks":
        return value if value in asked(moments) else ""
    if kind == "stops":
        return value if value in stops(moments) else ""
    if kind == "decided by":
        return value if value in rules(moments) else ""
    if kind == "notes":
        return next((note for note in notes if value in note), "")
    return next((line for m in moments for line in m.words if value in line), "")


def instead(kind: str, moments: tuple[Moment, ...], notes: tuple[str, ...]) -> str:
    """What was seen of that kind, for a person to compare."""
    lists: dict[str, Iterable[str]] = {
        "offers": (words(offer) for offer in offers(moments)),
        "asks": asked(moments),
        "stops": stops(moments),
        "decided by": rules(moments),
        "notes": notes,
    }
    found = list(dict.fromkeys(lists.get(kind, (line for m in moments for line in m.words))))
    if not found:
        return f"{kind} nothing"
    more = f"; and {len(found) - MOST_SHOWN} more" if len(found) > MOST_SHOWN else ""
    return f"{kind} {'; '.join(found[:MOST_SHOWN])}{more}"


def offers(moments: tuple[Moment, ...]) -> list[Offer]:
    """Every dose shown."""
    return [offer for moment in moments for offer in moment.turn.offers]


def asked(moments: tuple[Moment, ...]) -> list[str]:
    """Every prompt's name, parts of a gathered line too."""
    return [name for m in moments if m.turn.ask for name in asked_names(m.turn.ask)]


def stops(moments: tuple[Moment, ...]) -> list[str]:
    """The tiers of the stops shown."""
    return [d.outcome for m in moments if m.turn.end == "stopped" for d in m.turn.decisions]


def rules(moments: tuple[Moment, ...]) -> list[str]:
    """The ids of the rules that `why` would have named."""
    return [decision.rule for m in moments for decision in m.turn.decisions]


def fits(value: str, offer: Offer) -> bool:
    """Whether the offer is of the exercise with every piece named; `anything` is any offer."""
    name, *pieces = (piece.strip() for piece in value.split(","))
    if name == "anything":
        return True
    return name == offer.exercise and all(piece in pieces_of(offer.dose) for piece in pieces)


def pieces_of(dose: Dose) -> set[str]:
    """Every piece of a dose as a scenario may write it."""
    count = str(dose.reps_high)
    if dose.reps_low != dose.reps_high:
        count = f"{dose.reps_low} to {dose.reps_high}"
    load = dose.load.words()
    return {
        f"{dose.sets} set" if dose.sets == 1 else f"{dose.sets} sets",
        f"{count} reps",
        f"{count} holds",
        f"{dose.hold_s} s",
        load,
        load.removesuffix(f" {dose.load.kind}") if dose.load.unit else load,
        dose.version,
        dose.range_step,
        dose.tempo,
        f"rest {dose.rest_s} s",
    }


def words(offer: Offer) -> str:
    """An offer in words."""
    dose = offer.dose
    count = f"{dose.reps_low} to {dose.reps_high}"
    hold = f", {dose.hold_s} s" if dose.hold_s else ""
    own = "".join(f", {piece}" for piece in (dose.version, dose.range_step) if piece)
    return f"{offer.exercise}, {dose.sets} sets, {count} reps{hold}, {dose.load.words()}{own}"
