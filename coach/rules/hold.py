"""What opens a closed plan: a clearance from the clinician, and nothing else.

Law: a doubt keeps the plan closed. A clearance dated before its stop, ahead of today, for another
stop, or by a way the plan does not name lifts nothing. No word is kept or shown here.
"""

from __future__ import annotations

import hashlib
import hmac
from datetime import date
from typing import Final

from coach.model.decisions import Basis, Decision
from coach.model.history import Hold
from coach.model.program import ClearanceWord, Plan

BY_WORD: Final = "by word"
IN_PERSON: Final = "in person"
NEW_PLAN: Final = "new plan"

# Cost of one guess: 16 MiB and a few hundredths of a second. Set here; Percival and Josefsson
# 2016 (RFC 7914) describe the function.
_SCRYPT_N: Final = 2**14
_SCRYPT_R: Final = 8
_SCRYPT_P: Final = 1
_DIGEST_BYTES: Final = 32

# Seconds to wait before the next word, by wrong words so far. Set here.
WAITS_S: Final = (0, 5, 30, 120, 600)

_SOURCE: Final = "set here, to be signed by a clinician"


def _kept(why: str, plan: Plan) -> Decision:
    return Decision("stop.hold", "kept", why, plan.calls.place, Basis.OURS, _SOURCE)


def lifts(
    hold: Hold, way: str, given_day: date, plan: Plan, for_hold: int | None, today: date
) -> Decision:
    """Whether a clearance lifts `hold` (id stop.hold; ours): outcome `lifted` or `kept`.

    `way` is one of by word, in person, new plan; `given_day` the day the clearance carries;
    `for_hold` the number of the stop it names (None: it names none). A plan version lifts only by
    being higher than the one that was stopped.
    """
    if way not in plan.clearance:
        return _kept("Your plan does not open in this way. Your clinician can open it.", plan)
    if given_day > today:
        return _kept("Your plan stays closed. That clearance has a future date.", plan)
    if given_day < date.fromisoformat(hold.day):
        return _kept("Your plan stays closed. That clearance is older than the stop.", plan)
    if for_hold is not None and for_hold != hold.number:
        return _kept("Your plan stays closed. That clearance is for another stop.", plan)
    if way == NEW_PLAN and plan.version <= hold.plan_version:
        return _kept("Your plan stays closed. This is not a newer plan.", plan)
    why = "Your plan is open again. Your clinician gave the clearance."
    return Decision("stop.hold", "lifted", why, plan.calls.place, Basis.PLAN, _SOURCE)


def plain_word(word: str) -> str:
    """A clearance word as it is compared: lower case, single blanks, none at the ends."""
    return " ".join(word.casefold().split())


def word_digest(word: str, salt: str) -> str:
    """The scrypt hash (hex) of a word under `salt` (hex). ValueError if `salt` is no hex."""
    digest = hashlib.scrypt(
        plain_word(word).encode(),
        salt=bytes.fromhex(salt),
        n=_SCRYPT_N,
        r=_SCRYPT_R,
        p=_SCRYPT_P,
        dklen=_DIGEST_BYTES,
    )
    return digest.hex()


def word_matches(word: str, words: tuple[ClearanceWord, ...], spent: tuple[str, ...]) -> int | None:
    """The place of `word` among the plan's `words`, or None (id stop.hold; ours).

    `spent` lists the digests already used: a word opens one stop, once. An empty word never fits.
    """
    if not plain_word(word):
        return None
    for index, kept in enumerate(words):
        if kept.digest in spent:
            continue
        if hmac.compare_digest(word_digest(word, kept.salt), kept.digest.lower()):
            return index
    return None


def wait_after_wrong(count: int) -> int:
    """Seconds before another word may be typed, after `count` wrong ones (set here)."""
    return WAITS_S[min(max(count, 0), len(WAITS_S) - 1)]
