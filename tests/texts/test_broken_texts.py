"""Texts broken at random end in findings or in a sound plan, never in a crash."""

from __future__ import annotations

import random

import pytest

from coach.texts.doors import bound_from, check_paths
from coach.texts.rendered import as_text
from tests.texts.changing import PLAN, Desk

PIECES = [
    b"- ", b": ", b'"', b"'", b"#", b"\t", b"[", b"{", b"&a ", b"*a", b"!!x ", b"|", b">", b"\n",
    b"  ", b",", b"0", b" is ", b" and ", b" only", b" to ", b"when ", b"?", b"\x00", b"\xff",
    b"\xe2\x80\x9c", b"---\n", b"99999999999999999999", b"at most ", b"-1", b"e9",
]  # fmt: skip


def broken(text: bytes, chance: random.Random) -> bytes:
    """The text with a piece put in, a stretch cut out, or two lines changed round."""
    place = chance.randrange(len(text))
    kind = chance.randrange(3)
    if kind == 0:
        return text[:place] + chance.choice(PIECES) + text[place:]
    if kind == 1:
        return text[:place] + text[place + chance.randrange(1, 20) :]
    lines = text.split(b"\n")
    lines.insert(chance.randrange(len(lines)), lines.pop(chance.randrange(len(lines))))
    return b"\n".join(lines)


@pytest.mark.parametrize("seed", range(8))
def test_a_broken_text_never_crashes_the_reader(seed: int, desk: Desk) -> None:
    chance = random.Random(seed)
    files = sorted(desk.folder.rglob("*.yaml"))
    for _ in range(8):
        file = chance.choice(files)
        good = file.read_bytes()
        file.write_bytes(broken(broken(good, chance), chance))
        findings = check_paths([desk.folder])
        assert as_text(findings).count("\n  Why: ") == len(findings)
        bound, found = bound_from(desk.folder / PLAN)
        assert (bound is None) == any(finding.level == "error" for finding in found)
        file.write_bytes(good)
