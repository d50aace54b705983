"""The signature of a bound plan (Ed25519, RFC 8032), the clinician's key file, and a key's words.

Law: nothing is signed unless the plan asks for it, and a plan that asks is used only signed. The
secret half of a key stays in the clinician's own file, which nobody else may read; what travels is
the open half. The package that computes is optional: where it is missing, a refusal says so.
"""

from __future__ import annotations

import hashlib
import os
import re
import stat
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Final, NamedTuple

from coach.texts.plain_words import PLAIN_WORDS

if TYPE_CHECKING:
    from types import ModuleType

    from coach.texts.bind import Chance

SEED_BYTES: Final = 32
KEY_WORDS: Final = 9
BITS_A_WORD: Final = 9  # the first 512 words; nine of them tell 2 to the 81 keys apart
KEY_MODE: Final = 0o600
_LARGEST_BYTES: Final = 4096
_OTHERS: Final = 0o077
_SEED: Final = re.compile(r"signing key: ([0-9a-f]{64})")
_KEY_TEXT: Final = """\
# The signing key of a clinician. Whoever has this file can sign plans in that clinician's name.
# Keep it where only you can read it, and keep a copy that only you can reach.
signing key: {seed}
"""


class NotSigned(Exception):
    """A key or a signature cannot be used; `words` says why and what to do, in a sentence or two."""

    def __init__(self, words: str) -> None:
        """Carry the words."""
        super().__init__(words)
        self.words = words


class Key(NamedTuple):
    """A clinician's key: its secret half, its open half (32 bytes each), and its words."""

    secret: bytes
    open_half: bytes
    words: str


def computing() -> ModuleType:
    """The optional package. Raises `NotSigned` with the line to type where it is missing."""
    try:
        from cryptography.hazmat.primitives.asymmetric import ed25519
    except ImportError:
        words = (
            "Signatures need one more package, and it is not installed. "
            f"Type: {sys.executable} -m pip install cryptography"
        )
        raise NotSigned(words) from None
    return ed25519


def key_from(seed: bytes) -> Key:
    """The key that grows from 32 secret bytes."""
    open_half = computing().Ed25519PrivateKey.from_private_bytes(seed).public_key()
    half: bytes = open_half.public_bytes_raw()
    return Key(seed, half, key_words(half))


def key_words(open_half: bytes) -> str:
    """Nine plain words that stand for the open half of a key; 81 bits of its sha256."""
    number = int.from_bytes(hashlib.sha256(open_half).digest(), "big")
    places = [number >> (BITS_A_WORD * n) & (2**BITS_A_WORD - 1) for n in range(KEY_WORDS)]
    return " ".join(PLAIN_WORDS[place] for place in places)


def signature(key: Key, message: bytes) -> bytes:
    """The 64 bytes that sign the message."""
    signed: bytes = computing().Ed25519PrivateKey.from_private_bytes(key.secret).sign(message)
    return signed


def fits(open_half: bytes, signed: bytes, message: bytes) -> bool:
    """Whether the signature is that key's, over exactly this message."""
    from cryptography.exceptions import InvalidSignature

    try:
        computing().Ed25519PublicKey.from_public_bytes(open_half).verify(signed, message)
    except (InvalidSignature, ValueError):
        return False
    return True


# ---------------------------------------------------------------- the clinician's file


def key_in(file: Path, chance: Chance) -> tuple[Key, bool]:
    """The key in the file, and whether it was made now. Raises `NotSigned`, or OSError."""
    computing()
    if not file.exists():
        return _made(file, chance), True
    return _kept(file), False


def _made(file: Path, chance: Chance) -> Key:
    key = key_from(chance.token_bytes(SEED_BYTES))
    handle = os.open(file, os.O_WRONLY | os.O_CREAT | os.O_EXCL, KEY_MODE)
    with open(handle, "w", encoding="utf-8") as kept:  # noqa: PTH123  by its handle, for its mode
        kept.write(_KEY_TEXT.format(seed=key.secret.hex()))
        kept.flush()
        os.fsync(kept.fileno())
    return key


def _kept(file: Path) -> Key:
    handle = os.open(file, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0))
    try:
        about = os.fstat(handle)
        if not stat.S_ISREG(about.st_mode):
            raise NotSigned(f"{file.name} is not a plain file, so it holds no key.")
        if os.name == "posix" and about.st_mode & _OTHERS:
            words = f"Others may read the key in {file.name}. Type: chmod 600 {file.name}"
            raise NotSigned(words)
        text = os.read(handle, _LARGEST_BYTES).decode("utf-8", "replace")
    finally:
        os.close(handle)
    found = [match for line in text.splitlines() if (match := _SEED.fullmatch(line))]
    if len(found) != 1:
        raise NotSigned(f"{file.name} holds no signing key that coach bind made.")
    return key_from(bytes.fromhex(found[0].group(1)))
