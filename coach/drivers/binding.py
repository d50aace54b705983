"""`coach bind PLAN`: one file for the athlete; clearance words and the key's words for the clinician.

Law: nothing is bound of a plan with an error, or of one that asks for a signature and gets none.
The clearance words and the secret half of a key are shown or kept nowhere but with the clinician.
"""

from __future__ import annotations

import secrets
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Final

from coach.drivers.desk import existing, refused
from coach.drivers.exit_codes import BAD_FILE, DONE
from coach.journal.outgoing import write_whole
from coach.journal.trouble import CANNOT_READ_OR_WRITE, Trouble
from coach.texts.bind import bind as bound_together
from coach.texts.signing import Key, NotSigned, key_in

if TYPE_CHECKING:
    import argparse

_NEW_KEY: Final = """\
A new key was made in {name}. Only you may read it. Keep a copy of it.
"""
_SIGNED: Final = """\
It is signed with your key. Give the athlete its words on paper:
  {words}
"""
_WORDS: Final = """
For the clinician only. Each word opens one stop, once.
They are not kept anywhere.
"""


def bind(options: argparse.Namespace) -> int:
    """Bind the plan, write the file, and tell the clinician what is theirs alone."""
    plan = existing(options.plan)
    try:
        key = _key(Path(options.key)) if options.key else None
        made = bound_together(plan, secrets, key)
    except NotSigned as reason:
        raise Trouble(reason.words, BAD_FILE) from None
    if not made.text:
        return refused(made.findings)
    told = _SIGNED.format(words=key.words) if key else ""
    told += _WORDS + "".join(f"  {word}\n" for word in made.words) if made.words else ""
    if options.out is None:
        sys.stdout.write(made.text)
        sys.stderr.write(told)
        return DONE
    write_whole(Path(options.out), made.text)
    sys.stdout.write("Written. Hand this file to the athlete.\n" + told)
    return DONE


def _key(file: Path) -> Key:
    try:
        key, is_new = key_in(file, secrets)
    except OSError as error:
        words = f"The key in {file.name} cannot be used ({error.strerror})."
        raise Trouble(words, CANNOT_READ_OR_WRITE) from None
    if is_new:
        sys.stderr.write(_NEW_KEY.format(name=file.name))
    return key
