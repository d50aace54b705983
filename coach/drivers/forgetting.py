"""`coach forget`: shows what is kept, offers to export it, then deletes all of it.

Law: nothing is deleted before the word was typed in full, and then everything is. What was exported
stays, since it was asked for. A closed plan is told before it is forgotten.
"""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Final

from coach.drivers.exit_codes import BY_CHOICE, DONE
from coach.drivers.reading import kept_rows, recorded_of
from coach.journal.diary import FILE_NAME
from coach.journal.outgoing import write_whole
from coach.journal.trouble import Trouble
from coach.journal.whole import forget, kept_files, read_whole
from coach.reports.facts import open_hold
from coach.reports.whole_record import as_lines
from coach.reports.words import counted, day_words

if TYPE_CHECKING:
    from coach.drivers.clearing import Voice
    from coach.journal.whole import Whole

WORD: Final = "forget"
NOTHING: Final = "Nothing is kept on this computer."
KEPT: Final = "Nothing was deleted."


def forgetting(folder: Path, voice: Voice) -> int:
    """Hold the talk; the exit code: 0 all is gone (or nothing was), 11 kept. Raises `Trouble`."""
    names = kept_files(folder)
    if not names:
        voice.say(NOTHING)
        return DONE
    whole = readable(folder)
    for line in what_is_kept(folder, names, whole):
        voice.say(line)
    if whole is not None and not exported(whole, voice):
        voice.say(KEPT)
        return BY_CHOICE
    voice.say("Deleting cannot be taken back. Your clinician's copy stays theirs.")
    typed = voice.ask(f"Type {WORD} to delete all of it, or no:")
    if (typed or "").strip().lower() != WORD:
        voice.say(KEPT)
        return BY_CHOICE
    gone = forget(folder)
    voice.say(f"Deleted: {', '.join(gone)}. {NOTHING}")
    return DONE


def readable(folder: Path) -> Whole | None:
    """The diary as far as it can be read; None where it cannot."""
    try:
        return read_whole(folder / FILE_NAME)
    except Trouble:
        return None


def what_is_kept(folder: Path, names: tuple[str, ...], whole: Whole | None) -> list[str]:
    """The files with their size, and what is in them."""
    size = sum((folder / name).stat().st_size for name in names)
    lines = [f"Kept in {folder}: {', '.join(names)}; {size // 1024 + 1} kB."]
    if whole is None:
        return [*lines, "The diary in it cannot be read."]
    recorded = recorded_of(whole)
    days = sorted(sat.opened_at for sat in recorded.sessions)
    plans = counted(len(recorded.plans), "plan")
    lines.append(f"In it: {counted(len(days), 'session')}, {plans}, all you typed.")
    if days:
        lines.append(f"From {day_words(days[0])} to {day_words(days[-1])}.")
    if open_hold(recorded) is not None:
        lines.append("Your plan is closed by a stop. Your clinician still must know of it.")
    return lines


def exported(whole: Whole, voice: Voice) -> bool:
    """Offer a copy first; False where the person leaves."""
    while True:
        typed = voice.ask("File name for a copy first, or no:")
        word = (typed or "").strip()
        if typed is None or word.lower() in {"stop", "quit", "exit"}:
            return False
        if word.lower() == "no":
            return True
        if not word or word.startswith("-"):
            continue
        try:
            write_whole(Path(word).expanduser(), as_lines(kept_rows(whole.rows)))
        except Trouble as trouble:
            voice.say(trouble.words)
            continue
        voice.say(f"Copied to {Path(word).name}. It can be read in again: coach use --diary FILE")
        return True
