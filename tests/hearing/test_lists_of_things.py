"""Lists of things at hand: by number, by name, and never half understood."""

from __future__ import annotations

import pytest

from coach.hearing import hear
from coach.model.heard import Action, Kind, Question

THINGS = ("light band", "1 lb dumbbell", "2 lb dumbbell", "towel")
ASKED = Question("at hand", Kind.CHOICES, choices=THINGS)


@pytest.mark.parametrize(
    ("text", "places"),
    [
        ("1,4", (0, 3)),
        ("1, 4", (0, 3)),
        ("1 and 2", (0, 1)),
        ("2 lb dumbbell", (2,)),
        ("2 lb", (2,)),
        ("i have the 2 lb dumbbell", (2,)),
        ("the light band and towel", (0, 3)),
        ("all", (0, 1, 2, 3)),
    ],
)
def test_what_is_named_or_numbered_is_at_hand_and_nothing_else(
    text: str, places: tuple[int, ...]
) -> None:
    heard = hear(ASKED, text)
    assert dict(heard.values)["at hand"] == tuple(THINGS[place] for place in places)


@pytest.mark.parametrize("text", ["12, pain 1", "3.4", "a kettle", "5 lb", "everything but 1"])
def test_what_does_not_fit_the_list_is_asked_again(text: str) -> None:
    assert hear(ASKED, text).action is Action.ASK_AGAIN
