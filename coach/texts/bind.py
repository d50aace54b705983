"""One file for the athlete: program and plan together, readable, with a hash over every byte.

Law: only what the check found without an error is bound. Ten one-time clearance words are made
here and kept only as salted hashes; the words themselves go to the clinician's sheet and nowhere
else. A file with one changed byte is refused whole; so is a plan that asks for a signature and
carries none, another hand's, or one that does not fit.
"""

from __future__ import annotations

import hashlib
import re
import tempfile
from pathlib import Path
from typing import Final, NamedTuple, Protocol

from coach.model.findings import Finding
from coach.model.program import Bound, Place
from coach.rules.hold import BY_WORD, word_digest
from coach.texts import doors, shelf
from coach.texts.margin import Margin
from coach.texts.plain_words import PLAIN_WORDS
from coach.texts.signing import Key, NotSigned, fits, key_words, signature

LAYOUT: Final = "1"
SIGNED_LAYOUT: Final = "2"
HOW_MANY_WORDS: Final = 10
WORDS_IN_ONE: Final = 3
FIGURES_IN_ONE: Final = 10_000  # four figures
SALT_BYTES: Final = 16
_ASK_AGAIN: Final = "Ask the clinician for the file again."
LARGEST_BYTES: Final = 4 * 1024 * 1024  # of a bound file; set here
_PART: Final = re.compile(rb"==== (\S[^\n]*), ([0-9]{1,8}) bytes\n")
_PART_NAME: Final = re.compile(r"program\.yaml|(?:exercises|scripts|plans)/[^/\\\x00-\x1f]+\.yaml")
_HEAD: Final = re.compile(
    rb"bound plan: [^\n]+\nprogram: [^\n]+\nlayout: (?P<layout>[^\n]+)\n"
    rb"(?:signed with: (?P<open_half>[0-9a-f]{64})\n)?"
    rb"(?P<seal_line>sha256: (?P<seal>[0-9a-f]{64})\n)"
    rb"(?:signature: (?P<signature>[0-9a-f]{128})\n)?"
)


class Chance(Protocol):
    """Where secret numbers come from; the standard library's `secrets` fits."""

    def randbelow(self, exclusive_upper_bound: int, /) -> int:
        """A number from 0 up to the bound, not including it."""

    def token_bytes(self, nbytes: int | None = None, /) -> bytes:
        """So many secret bytes."""


class Binding(NamedTuple):
    """The bound text ('' with findings), and the clearance words for the clinician's sheet."""

    text: str
    words: tuple[str, ...]
    findings: list[Finding]


def bind(plan_path: Path, secrets_source: Chance, key: Key | None = None) -> Binding:
    """Bind the plan with its program. With an error finding nothing is bound.

    Words are made only where the plan's `clearance` says `by word`. Raises `NotSigned` where the
    plan asks for a signature and `key` is not that key, or `key` is given and nothing asks for it.
    """
    bound, findings = doors.bound_from(plan_path)
    if bound is not None:
        _right_key(bound.plan.signature, key, plan_path)
    folder = shelf.program_folder_for(plan_path, shelf.says(plan_path, "program"))
    if bound is None or folder is None:
        return Binding("", (), findings)
    plan_text = plan_path.read_bytes()
    words: tuple[str, ...] = ()
    if BY_WORD in bound.plan.clearance and not bound.plan.words:
        words = new_words(secrets_source)
        plan_text = _with_words(plan_text, words, secrets_source)
    plan_part = f"plans/{plan_path.name}"
    parts = [*_program_parts(folder), (plan_part, plan_text)]
    again, found = _checked_parts(dict(parts), plan_part, plan_path)
    if again is None or again.program != bound.program:  # changed while it was being bound
        return Binding("", (), found)
    return Binding(_bound_text(bound, parts, key), words, findings)


def _right_key(asked: str, key: Key | None, plan_path: Path) -> None:
    if key is None and asked:
        raise NotSigned(
            f"The plan asks for a signature. Type: coach bind {plan_path} --key YOUR-KEY-FILE"
        )
    if key is not None and not asked:
        raise NotSigned(
            f"The plan asks for no signature. Write this line in it, and bind again:\n"
            f"  signature: {key.words}"
        )
    if key is not None and key.words != asked:
        raise NotSigned(
            f"The plan asks for the signature of another key.\n"
            f"  The plan:  {asked}\n  Your key:  {key.words}"
        )


def new_words(secrets_source: Chance) -> tuple[str, ...]:
    """Ten different clearance words, such as `maple river stone 4207`: 40 bits of chance each."""
    made: list[str] = []
    while len(made) < HOW_MANY_WORDS:
        drawn = [
            PLAIN_WORDS[secrets_source.randbelow(len(PLAIN_WORDS))] for _ in range(WORDS_IN_ONE)
        ]
        word = f"{' '.join(drawn)} {secrets_source.randbelow(FIGURES_IN_ONE):04d}"
        if word not in made:
            made.append(word)
    return tuple(made)


def _with_words(plan: bytes, words: tuple[str, ...], secrets_source: Chance) -> bytes:
    lines = [
        "",
        "# Ten one-time clearance words, made by the binding; never written by hand.",
        "clearance words:",
    ]
    for word in words:
        salt = secrets_source.token_bytes(SALT_BYTES).hex()
        lines.append(f"  - {salt} {word_digest(word, salt)}")
    return plan.rstrip() + "\n".join(lines).encode() + b"\n"


def _program_parts(folder: Path) -> list[tuple[str, bytes]]:
    parts = [("program.yaml", (folder / "program.yaml").read_bytes())]
    for name in ("exercises", "scripts"):
        parts += [
            (f"{name}/{file.name}", file.read_bytes())
            for file in sorted((folder / name).glob("*.yaml"))
            if not file.name.startswith(".")
        ]
    return parts


def _bound_text(bound: Bound, parts: list[tuple[str, bytes]], key: Key | None) -> str:
    body = b"\n# Program and plan as the clinician bound them. One changed byte closes the file.\n"
    for name, data in parts:
        body += f"\n==== {name}, {len(data)} bytes\n".encode() + data
    layout = SIGNED_LAYOUT if key else LAYOUT
    head = f"bound plan: {bound.plan.name}\nprogram: {bound.program.name}\nlayout: {layout}\n"
    head += f"signed with: {key.open_half.hex()}\n" if key else ""
    seal = hashlib.sha256(head.encode() + body).hexdigest()
    head += f"sha256: {seal}\n"
    if key is not None:
        head += f"signature: {signature(key, head.encode() + body).hex()}\n"
    return head + body.decode("utf-8")


# ---------------------------------------------------------------- reading it back


class _Closed(Exception):
    """The file is refused whole: the finding, the sentence, and what to do."""

    def __init__(self, check: str, what: str, write: str = _ASK_AGAIN) -> None:
        super().__init__(what)
        self.check, self.what, self.write = check, what, write


def read_bound(path: Path) -> tuple[Bound | None, list[Finding]]:
    """The program and plan of a bound file, or None with the findings."""
    try:
        return _opened(path, _sealed_bytes(path))
    except _Closed as closed:
        margin = Margin()
        margin.note(closed.check, Place(str(path), 1), closed.what, closed.write)
        return None, margin.sorted_findings()


def _opened(path: Path, data: bytes) -> tuple[Bound | None, list[Finding]]:
    head = _HEAD.match(data)
    if head is None:
        raise _Closed("bound.not_one", f"{path.name} is not a file that the binding made.")
    _check_layout(head, path.name)
    body = data[head.end() :]
    if hashlib.sha256(data[: head.start("seal_line")] + body).hexdigest().encode() != head["seal"]:
        raise _Closed("bound.changed", f"{path.name} was changed after it was bound.")
    signed = _signer(head, data[: head.end("seal_line")] + body, path.name)
    parts = _parts(body)
    plans = [name for name in parts if name.startswith("plans/")]
    if len(plans) != 1 or not all(_PART_NAME.fullmatch(name) for name in parts):
        raise _Closed("bound.not_one", f"{path.name} holds parts the binding never makes.")
    bound, findings = _checked_parts(parts, plans[0], path)
    if bound is None:
        return None, findings
    _check_asked(bound.plan.signature, signed, path.name)
    return bound._replace(signed=signed), findings


def _check_layout(head: re.Match[bytes], name: str) -> None:
    layout = head["layout"].decode("utf-8", "replace")
    if layout not in (LAYOUT, SIGNED_LAYOUT):
        raise _Closed("bound.version", f"{name} is bound in another layout.")
    wanted = layout == SIGNED_LAYOUT
    if (head["open_half"] is not None) != wanted or (head["signature"] is not None) != wanted:
        raise _Closed("bound.not_one", f"{name} is not a file that the binding made.")


def _signer(head: re.Match[bytes], message: bytes, name: str) -> str:
    """The words of the key that signed, '' where nothing is signed; a wrong signature closes."""
    if head["signature"] is None:
        return ""
    open_half, signed = (bytes.fromhex(head[part].decode()) for part in ("open_half", "signature"))
    try:
        if not fits(open_half, signed, message):
            raise _Closed("bound.signature", f"The signature in {name} does not fit.")
    except NotSigned as missing:
        raise _Closed("bound.signature_unread", missing.words, "") from None
    return key_words(open_half)


def _check_asked(asked: str, signed: str, name: str) -> None:
    if asked == signed:
        return
    if not signed:
        raise _Closed("bound.unsigned", f"The plan in {name} asks for a signature and has none.")
    what = f"{name} is signed with the key: {signed}."
    what += f" The plan asks for: {asked}." if asked else " The plan names no key."
    raise _Closed("bound.other_key", what)


def _sealed_bytes(path: Path) -> bytes:
    with path.open("rb") as file:
        return file.read(LARGEST_BYTES)


def _parts(body: bytes) -> dict[str, bytes]:
    found: dict[str, bytes] = {}
    at = 0
    while match := _PART.search(body, at):
        start, size = match.end(), int(match.group(2))
        found[match.group(1).decode("utf-8", "replace")] = body[start : start + size]
        at = start + size
    return found


def _checked_parts(
    parts: dict[str, bytes], plan: str, path: Path
) -> tuple[Bound | None, list[Finding]]:
    """Read through the same door as any plan, from a folder that is gone afterwards."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        for part, data in parts.items():
            file = folder / part
            file.parent.mkdir(exist_ok=True)
            file.write_bytes(data)
        bound, findings = doors.bound_from(folder / plan)
        return bound, [_inside(finding, folder, path) for finding in findings]


def _inside(finding: Finding, folder: Path, path: Path) -> Finding:
    place, also = finding.place, finding.also
    moved = place._replace(file=_renamed(place.file, folder, path))
    if also is not None:
        also = also._replace(file=_renamed(also.file, folder, path))
    return finding._replace(place=moved, also=also)


def _renamed(file: str, folder: Path, path: Path) -> str:
    for start in (str(folder), str(folder.resolve())):
        if file.startswith(f"{start}/"):
            return f"{path}, part {file.removeprefix(f'{start}/')}"
    return file
