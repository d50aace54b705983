"""The machine's clock, as the loop wants it."""

from __future__ import annotations

import time
from datetime import datetime


class SystemClock:
    """Local time with its offset, and a count that nobody sets."""

    def now(self) -> datetime:
        """The local instant with its UTC offset."""
        return datetime.now().astimezone()

    def steady(self) -> float:
        """Seconds on a clock that nobody sets."""
        return time.monotonic()
