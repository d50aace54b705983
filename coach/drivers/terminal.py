"""A session at a terminal: prompts and timers that move, finished blocks that stay.

Law: prompt_toolkit alone owns what moves, rich alone prints what is finished, and neither is up while
the other draws. All of it scrolls; only a stop clears the display. Nothing is recalled, suggested or
filled in; what was typed early never answers a safety question. However it ends, the terminal is
left as it was.
"""

from __future__ import annotations

import asyncio
import contextlib
import os
import sys
import threading
import time
from typing import TYPE_CHECKING, Final, Self

os.environ.setdefault("PROMPT_TOOLKIT_NO_CPR", "1")  # else each prompt may wait for an answer
os.environ.setdefault("PROMPT_TOOLKIT_BELL", "false")

from prompt_toolkit import PromptSession
from prompt_toolkit.filters import Condition
from prompt_toolkit.history import DummyHistory
from prompt_toolkit.input.typeahead import clear_typeahead
from prompt_toolkit.key_binding import KeyBindings, KeyPressEvent
from prompt_toolkit.keys import Keys
from prompt_toolkit.output import ColorDepth

from coach.drivers.cleaned import cleaned
from coach.drivers.layout import for_eyes, wrapped
from coach.drivers.plain import window
from coach.drivers.port import EndOfInput, Reply
from coach.drivers.timed_lines import by_eye, whole_s
from coach.drivers.typed_text import LONGEST

if TYPE_CHECKING:
    from collections.abc import Callable

    from rich.console import Console

    from coach.drivers.layout import Row
    from coach.model.turns import Ask, Line, Timer, Turn

TICK_S: Final = 1.0  # a timer's line is drawn once a second
HALF_TYPED_S: Final = 0.1  # how often a timer that is over looks whether a word is still half typed
STRONG: Final = frozenset({"name", "stop"})  # kinds of line that are drawn in bold
_PASTE_OFF_CURSOR_ON: Final = "\x1b[?2004l\x1b[?25h"


class TerminalPort:
    """A port at a terminal. Use it in a `with`, so that the terminal is left as it was."""

    def __init__(
        self, *, quick: bool = False, steady: Callable[[], float] = time.monotonic
    ) -> None:
        self._quick, self._steady = quick, steady
        self._blocks = Blocks()
        self._prompts: PromptSession[str] = PromptSession(
            history=DummyHistory(),
            color_depth=ColorDepth.DEPTH_1_BIT,
            key_bindings=_keys(self._waits_for_words),
            enable_history_search=False,
            reserve_space_for_menu=0,
        )
        self._kept: list[object] | None = None
        self._timing = False

    def __enter__(self) -> Self:
        with contextlib.suppress(ImportError, OSError, ValueError):
            import termios

            self._kept = termios.tcgetattr(sys.stdin.fileno())
        return self

    def __exit__(self, kind: object, error: object, trace: object) -> None:
        with contextlib.suppress(ImportError, OSError, ValueError):
            import termios

            if self._kept is not None:
                termios.tcsetattr(sys.stdin.fileno(), termios.TCSADRAIN, self._kept)  # type: ignore[arg-type]
            if kind is not None:
                sys.stdout.write(_PASTE_OFF_CURSOR_ON + "\n")
                sys.stdout.flush()

    # ------------------------------------------------------------ the port

    def present(self, turn: Turn, lines: tuple[Line, ...]) -> None:
        """Print the lines; a turn that stands alone gets a cleared display."""
        if turn.alone:
            self._blocks.clear()
        self._blocks.show(for_eyes(lines, window()))

    def ask(self, ask: Ask) -> Reply:
        """Show the label, bring the line that is typed."""
        *above, label = wrapped(cleaned(ask.label), window())
        self._blocks.show_plainly(above)
        if ask.safety:
            self._forget_early_typing()
        try:
            typed = self._prompts.prompt(
                f"{label} ", handle_sigint=True, pre_run=self._blocks.get_ready
            )
        except EOFError:
            raise EndOfInput from None
        return Reply(typed)

    def time(self, timer: Timer, name: str, gone_s: float) -> Reply | None:  # noqa: ARG002
        """Draw the timer's line each second; a typed word ends the waiting, a half-typed delays it."""
        if not self._quick:
            typed = self._run(timer, self._steady() - gone_s)
            if typed is not None:
                return Reply(typed)
        self._blocks.show_plainly(wrapped(cleaned(timer.after), window()))
        return None

    # ------------------------------------------------------------ inside

    def _run(self, timer: Timer, began: float) -> str | None:
        """The typed word, or None when the time is over and nothing is half typed."""
        app = self._prompts.app
        ended: list[bool] = []

        def row() -> str:
            rows = wrapped(cleaned(by_eye(timer, self._steady() - began)), window())
            return "\n".join(rows) + " "

        async def tick() -> None:
            whole = whole_s(timer)
            while not app.future or not app.future.done():
                left = whole - (self._steady() - began)
                if left <= 0 and not self._prompts.default_buffer.text.strip():
                    ended.append(True)
                    app.erase_when_done = True
                    app.exit(result="")
                    return
                app.invalidate()
                await asyncio.sleep(HALF_TYPED_S if left <= 0 else min(TICK_S, left))

        def begin() -> None:
            app.create_background_task(tick())

        app.erase_when_done, self._timing = False, True
        try:
            typed = self._prompts.prompt(row, pre_run=begin)
        except EOFError:
            raise EndOfInput from None
        finally:
            app.erase_when_done, self._timing = False, False
        return None if ended else typed

    def _waits_for_words(self) -> bool:
        """Whether Enter has nothing to send: a timer runs and no word is typed."""
        return self._timing and not self._prompts.default_buffer.text.strip()

    def _forget_early_typing(self) -> None:
        clear_typeahead(self._prompts.app.input)
        drop_waiting_input()


def drop_waiting_input() -> None:
    """Forget what the terminal holds that nobody has read yet."""
    with contextlib.suppress(ImportError, OSError, ValueError):
        import termios

        termios.tcflush(sys.stdin.fileno(), termios.TCIFLUSH)


class Blocks:
    """Finished blocks. Rich is loaded while the first prompt waits, so that it delays none."""

    def __init__(self) -> None:
        self._console: Console | None = None
        self._loading: threading.Thread | None = None

    def get_ready(self) -> None:
        """Begin to load rich, once."""
        if self._loading is None:
            self._loading = threading.Thread(target=_load_rich, daemon=True)
            self._loading.start()

    def show(self, rows: list[Row]) -> None:
        """Print the rows, some in bold; the words alone say everything."""
        if self._loading is None:
            self.show_plainly([row.text for row in rows])
            return
        from rich.text import Text

        console = self._ready()
        for row in rows:
            text = Text(row.text, style="bold" if row.kind in STRONG else "")
            console.print(text, no_wrap=True, crop=False, overflow="ignore", highlight=False)

    def show_plainly(self, rows: list[str]) -> None:
        """Print rows as they are."""
        sys.stdout.write("".join(f"{row}\n" for row in rows))
        sys.stdout.flush()

    def clear(self) -> None:
        """Empty the display; what scrolled away stays."""
        self.get_ready()
        self._ready().clear()

    def _ready(self) -> Console:
        if self._loading is not None:
            self._loading.join()
        if self._console is None:
            from rich.console import Console

            self._console = Console(markup=False, emoji=False, highlight=False)
        return self._console


def _load_rich() -> None:
    import rich.console
    import rich.text  # noqa: F401 - loaded for later


def _keys(nothing_to_send: Callable[[], bool]) -> KeyBindings:
    """No search in what was typed, no letter that hides or moves others, no endless line."""
    keys = KeyBindings()

    @keys.add("c-r")
    @keys.add("c-s")
    def nothing(_event: KeyPressEvent) -> None:
        """There is no recall."""

    @keys.add("enter", filter=Condition(nothing_to_send))
    def enter(_event: KeyPressEvent) -> None:
        """Enter alone says nothing to a timer."""

    @keys.add(Keys.Any)
    def letter(event: KeyPressEvent) -> None:
        """One typed letter; past the longest answer, all that still waits is dropped at once."""
        if len(event.current_buffer.text) <= LONGEST:
            event.current_buffer.insert_text(cleaned(event.data) * event.arg)
        else:
            event.app.key_processor.empty_queue()
            drop_waiting_input()

    @keys.add(Keys.BracketedPaste)
    def pasted(event: KeyPressEvent) -> None:
        """Pasted text, its line ends kept so that several lines are known as such."""
        room = LONGEST + 1 - len(event.current_buffer.text)
        lines = event.data[: max(0, room)].replace("\r\n", "\n").replace("\r", "\n").split("\n")
        event.current_buffer.insert_text("\n".join(cleaned(line) for line in lines))

    return keys
