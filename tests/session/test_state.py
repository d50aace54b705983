"""A state with some fields new is made quickly, and equals the one made the slow way."""

from __future__ import annotations

import pytest

from coach.session.engine import start
from coach.session.state import State
from tests.session.invented import brief


def test_new_fields_are_set_and_all_others_kept() -> None:
    state = start(brief())
    after = state._replace(unclear=1, back="today")
    slow = State(**{**state._asdict(), "unclear": 1, "back": "today"})
    assert after == slow
    assert type(after) is State
    assert state.unclear == 0


def test_a_name_that_is_no_field_is_refused() -> None:
    with pytest.raises(KeyError):
        start(brief())._replace(nothing_of_the_kind=1)  # type: ignore[call-arg]
