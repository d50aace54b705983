"""The words after `when`: comparisons of facts, and whether they can ever or always hold.

Law: `and` joins, all must hold; `or` stands only between the answers of one choice. A comparison
that never or always holds, inside the branches around it, is a finding.
"""

from __future__ import annotations

import functools
from typing import Final, NamedTuple

from coach.model.program import Test
from coach.texts import values
from coach.texts.facts import Fact
from coach.texts.margin import Margin, did_you_mean, near_line
from coach.texts.yaml_lines import Text

FACTS_KEPT: Final = 256
_GRAIN: Final = 4  # measured facts are looked at in quarters of a unit


class Reach(NamedTuple):
    """The values of one fact that can still come true: steps of a number, or names."""

    numbers: frozenset[int]
    names: frozenset[str]

    def empty(self) -> bool:
        """Whether nothing is left."""
        return not self.numbers and not self.names


@functools.lru_cache(FACTS_KEPT)
def whole_reach(fact: Fact) -> Reach:
    """Every value the fact can have."""
    if fact.kind == "choice":
        return Reach(frozenset(), frozenset(fact.choices))
    grain = _GRAIN if fact.kind == "measured" else 1
    return Reach(frozenset(range(int(fact.low * grain), int(fact.high * grain) + 1)), frozenset())


def narrowed(reach: Reach, test: Test, fact: Fact) -> Reach:
    """What is left of `reach` where `test` holds."""
    grain = _GRAIN if fact.kind == "measured" else 1
    numbers = frozenset([step for step in reach.numbers if test.holds(step / grain)])
    return Reach(numbers, frozenset([name for name in reach.names if test.holds(name)]))


def split_conditions(text: Text) -> list[Text]:
    """The comparisons between `and`, each with its place."""
    found: list[Text] = []
    column = text.place.column
    for piece in text.value.split(" and "):
        found.append(Text(piece.strip(), text.place._replace(column=column)))
        column += len(piece) + len(" and ")
    return found


def read_test(text: Text, known: dict[str, Fact], margin: Margin) -> Test | None:
    """One comparison, `FACT is VALUE`; None (and a finding) where it cannot be read."""
    name, joined, value = text.value.partition(" is ")
    if not joined:
        what = f'"{text.value}" has no "is".'
        margin.note("when.form", text.place, what, "when pain now is at least 3:")
        return None
    fact = known.get(name.strip())
    if fact is not None and fact.kind == "unread":
        return None
    if fact is None:
        _note_unknown(name.strip(), text, known, margin)
        return None
    place = text.place._replace(column=text.place.column + len(name) + len(joined))
    said = Text(_without_count_unit(value.strip(), fact), place)
    if fact.kind == "choice":
        return _choice_test(fact, said, margin)
    if fact.kind in ("counted", "measured"):
        return _number_test(fact, said, margin)
    margin.note("when.not_compared", text.place, f'"{fact.name}" is kept, never compared.')
    return None


def _without_count_unit(value: str, fact: Fact) -> str:
    """The value of a counted fact without the word for what is counted, which may stand or not."""
    if fact.kind == "counted" and fact.unit:
        return value.removesuffix(f" {fact.unit}")
    return value


def _note_unknown(name: str, text: Text, known: dict[str, Fact], margin: Margin) -> None:
    what = f'Nothing called "{name}" has surely been asked by then.{did_you_mean(name, known)}'
    write = near_line(margin, text.place, name, known)
    margin.note("when.unknown_fact", text.place, what, write)


def _choice_test(fact: Fact, said: Text, margin: Margin) -> Test | None:
    op = "is"
    words = said.value
    if words.startswith("not "):
        op, words = "is not", words.removeprefix("not ")
    chosen = [word.strip() for word in words.split(" or ")]
    for word in chosen:
        if word not in fact.choices:
            what = f'"{word}" is no answer of "{fact.name}".{did_you_mean(word, fact.choices)}'
            write = near_line(margin, said.place, said.value, fact.choices)
            write = write or ", ".join(fact.choices)
            margin.note("when.unknown_answer", said.place, what, write)
            return None
    if op == "is not" and len(chosen) > 1:
        margin.note("when.form", said.place, '"is not" takes one answer.')
        return None
    return Test(fact.name, op, tuple(chosen))


def _number_test(fact: Fact, said: Text, margin: Margin) -> Test | None:
    for op in ("at least", "at most", "below"):
        if said.value.startswith(f"{op} "):
            return _compared(fact, op, said, margin)
    if " or " in said.value:
        margin.note("when.form", said.place, '"or" stands only between the answers of a choice.')
        return None
    if fact.kind == "measured":
        what = f'"{fact.name}" is measured; say "is at least" or "is below".'
        margin.note("when.form", said.place, what, f"{fact.name} is below {_middle(fact)}")
        return None
    found = values.span(said, margin, _bounds(fact), fact.name)
    if found is None:
        return None
    low, high = found
    return Test(fact.name, "is", (low,)) if low == high else Test(fact.name, "between", found)


def _compared(fact: Fact, op: str, said: Text, margin: Margin) -> Test | None:
    if (op == "at most") == (fact.kind == "measured") and op != "at least":
        better = "below" if fact.kind == "measured" else "at most"
        what = f'"{op}" does not go with "{fact.name}"; say "{better}".'
        margin.note("when.form", said.place, what, f"{fact.name} is {better} {_middle(fact)}")
        return None
    place = values.place_after(said, len(op) + 1)
    amount = Text(said.value.removeprefix(f"{op} "), place)
    value = values.number(amount, margin, _bounds(fact), fact.name)
    return None if value is None else Test(fact.name, op, (value,))


def _middle(fact: Fact) -> str:
    return f"{(fact.low + fact.high) / 4:g} {fact.unit}".strip()


def _bounds(fact: Fact) -> values.Bounds:
    unit = fact.unit if fact.kind == "measured" else ""
    return values.Bounds(unit, fact.low, fact.high, whole=fact.kind != "measured")
