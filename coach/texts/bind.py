"""One file for the athlete: program and plan together, readable, with a hash over every byte.

Law: only what the check found without an error is bound. Ten one-time clearance words are made
here and kept only as salted hashes; the words themselves go to the clinician's sheet and nowhere
else. A file with one changed byte is refused whole.
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

LAYOUT: Final = "1"
HOW_MANY_WORDS: Final = 10
WORDS_IN_ONE: Final = 3
FIGURES_IN_ONE: Final = 10_000  # four figures
SALT_BYTES: Final = 16
LARGEST_BYTES: Final = 4 * 1024 * 1024  # of a bound file; set here
_PART: Final = re.compile(rb"==== (\S[^\n]*), ([0-9]{1,8}) bytes\n")
_PART_NAME: Final = re.compile(r"program\.yaml|(?:exercises|scripts|plans)/[^/\\\x00-\x1f]+\.yaml")
_HEAD: Final = re.compile(
    rb"bound plan: ([^\n]+)\nprogram: ([^\n]+)\nlayout: ([^\n]+)\nsha256: ([0-9a-f]{64})\n"
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


def bind(plan_path: Path, secrets_source: Chance) -> Binding:
    """Bind the plan with its program. With an error finding nothing is bound.

    Words are made only where the plan's `clearance` says `by word`.
    """
    bound, findings = doors.bound_from(plan_path)
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
    return Binding(_bound_text(bound, parts), words, findings)


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


def _bound_text(bound: Bound, parts: list[tuple[str, bytes]]) -> str:
    body = b"\n# Program and plan as the clinician bound them. One changed byte closes the file.\n"
    for name, data in parts:
        body += f"\n==== {name}, {len(data)} bytes\n".encode() + data
    head = f"bound plan: {bound.plan.name}\nprogram: {bound.program.name}\nlayout: {LAYOUT}\n"
    seal = hashlib.sha256(head.encode() + body).hexdigest()
    return f"{head}sha256: {seal}\n" + body.decode("utf-8")


# ---------------------------------------------------------------- reading it back


def read_bound(path: Path) -> tuple[Bound | None, list[Finding]]:
    """The program and plan of a bound file, or None with the findings."""
    data = _sealed_bytes(path)
    head = _HEAD.match(data)
    if head is None:
        return _refused(path, "bound.not_one", f"{path.name} is not a file that the binding made.")
    if head.group(3).decode() != LAYOUT:
        return _refused(path, "bound.version", f"{path.name} is bound in another layout.")
    unsealed = data[: head.start(4) - len(b"sha256: ")] + data[head.end() :]
    if hashlib.sha256(unsealed).hexdigest() != head.group(4).decode():
        return _refused(path, "bound.changed", f"{path.name} was changed after it was bound.")
    parts = _parts(data[head.end() :])
    plans = [name for name in parts if name.startswith("plans/")]
    if len(plans) != 1 or not all(_PART_NAME.fullmatch(name) for name in parts):
        return _refused(path, "bound.not_one", f"{path.name} holds parts the binding never makes.")
    return _checked_parts(parts, plans[0], path)


def _sealed_bytes(path: Path) -> bytes:
    with path.open("rb") as file:
        return file.read(LARGEST_BYTES)


def _refused(path: Path, check: str, what: str) -> tuple[None, list[Finding]]:
    margin = Margin()
    write = "Ask the clinician for the file again."
    margin.note(check, Place(str(path), 1), what, write)
    return None, margin.sorted_findings()


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
