"""Hears the words that work at every prompt: stop, pause, why and the rest.

Law: only when the whole answer is such a word, or plainly that; a sentence about something else
that happens to hold "stop" is no command. Promise P8: stop and pause work from every prompt.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.model.heard import Command

if TYPE_CHECKING:
    from collections.abc import Sequence

    from coach.hearing.words import Word

LONGEST: Final = 9  # words; a longer answer is no command (set here)
_POLITE: Final = frozenset(
    "please pls plz now ok okay coach hey just lets let us me want wanna to need i im ill id gonna "
    "going can we could it here today for the this session workout so well yeah man dude bro sorry "
    "thanks right a lol ugh fuck fucking damn hi would like have gotta got must think should".split()
)
_PHRASES: Final[dict[Command, str]] = {
    Command.STOP: "stop | quit | exit | im done | i am done | im finished | done for today | "
    "done for day | all done for today | cant do this anymore | cant do this | enough | "
    "thats enough | i give up | give up | no more | end session | end it | finish session | "
    "stopp | stahp | im out | calling it | call it | call it day | cant go on | cant continue | "
    "dont want to do this | dont want to do this anymore | dont wanna do this | i cant anymore | "
    "cant anymore | cant take this | had enough | want out | make it stop | stop session | "
    "stop everything | quitting | stopping | im quitting | i quit | bye | goodbye | done with this | "
    "im so done | so done | not doing this | not doing this anymore | over it | im over it | "
    "cant keep going | finished for today | end | abort",
    Command.PAUSE: "pause | break | take break | brb | be right back | hold on | wait | "
    "one sec | one second | one moment | one minute | one min | give me minute | give me sec | "
    "back in minute | back in 5 | gimme sec | gimme minute | pausing | hang on",
    Command.WHY: "why | why that | why is that | how come | why this | what for | whys that",
    Command.WHY_CODE: "why code | code | which rule | rule code",
    Command.FIX: "fix | fix that | correct that | change answer | wrong answer | undo | typo | "
    "made mistake | change that | i made mistake",
    Command.HELP: "help | help me | what can i say | what can i type | commands | options | "
    "how does work | what do i type",
    Command.AGAIN: "again | repeat | say again | say that again | come again | what was that | "
    "repeat that | once again | show again",
    Command.LEFT: "left | whats left | what is left | how much left | how much longer | how long left | "
    "how many left | how much more | what remains | how many more",
    Command.GEAR: "gear | equipment | change gear | change equipment | dont have band | "
    "whats at hand | other equipment",
    Command.MORE: "more | more rest | longer rest | more time | need more time | longer",
}
_KEPT: Final = frozenset(word for text in _PHRASES.values() for word in text.split() if word != "|")
_TABLE: Final[dict[tuple[str, ...], Command]] = {
    tuple(phrase.split()): command
    for command, text in _PHRASES.items()
    for phrase in text.split("|")
}


def command_in(words: Sequence[Word]) -> Command | None:
    """The command that the whole answer is, or None."""
    if not words or len(words) > LONGEST:
        return None
    texts = tuple(word.text for word in words)
    found = _TABLE.get(texts)
    if found is not None:
        return found
    bare = tuple(text for text in texts if text not in _POLITE)
    if not bare:
        return None
    found = _TABLE.get(bare) or _TABLE.get(bare[:1] if len(set(bare)) == 1 else bare)
    if found is not None:
        return found
    loose = tuple(text for text in texts if text not in _POLITE - {"im", "i", "this", "it", "to"})
    return _TABLE.get(loose)
