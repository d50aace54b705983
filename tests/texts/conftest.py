"""What the tests of this room share: a good program and plan to change a line of."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.texts.changing import Desk


@pytest.fixture
def desk(tmp_path: Path) -> Desk:
    return Desk(tmp_path / "program")
