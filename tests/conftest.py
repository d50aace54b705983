"""What every test stands on: folders of its own, and examples that repeat in a build."""

import os
import signal
from collections.abc import Iterator

import pytest
from hypothesis import settings

# Started in the background, a shell has a program ignore Ctrl-C, and so would every program that the
# tests start; those that send it need the usual answer.
if signal.getsignal(signal.SIGINT) is signal.SIG_IGN:
    signal.signal(signal.SIGINT, signal.default_int_handler)

# A build tries the same examples each time; at a desk new ones are tried. No test is timed.
settings.register_profile("build", derandomize=True, deadline=None, database=None)
settings.register_profile("desk", deadline=None)
settings.load_profile("build" if os.environ.get("CI") else "desk")


@pytest.fixture(scope="session", autouse=True)
def no_real_diary(tmp_path_factory: pytest.TempPathFactory) -> Iterator[None]:
    """No test can reach the diary of whoever runs it: home and data folders are empty ones."""
    home = tmp_path_factory.mktemp("home")
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("HOME", str(home))
        patch.setenv("XDG_DATA_HOME", str(home / "data"))
        yield
