"""Files that are no plan and could do harm: what reads them must refuse, quickly and in little room."""

from __future__ import annotations

import os
from pathlib import Path
from typing import Final

HEAD: Final = "plan: L.V. 1\n"
HUGE_BYTES: Final = 300 * 1024 * 1024
BRACKETS: Final = 5_000
LEVELS: Final = 9  # of nine references each: 387 million values when written out


def hostile_files(folder: Path) -> dict[Path, str]:
    """Each file, made in `folder`, with the finding that refuses it."""
    folder.mkdir(parents=True)
    bomb = [f"a{n}: &a{n} [{', '.join([f'*a{n - 1}'] * 9)}]\n" for n in range(1, LEVELS + 1)]
    texts = {
        "alias-bomb": (HEAD + "a0: &a0 x\n" + "".join(bomb), "text.anchor"),
        "brackets": (HEAD + "side: " + "[" * BRACKETS, "text.brackets"),
        "nul": (HEAD + "side: \x00left\n", "text.control_character"),
        "lone-surrogate": (HEAD + "side: \ud800\n", "file.encoding"),
    }
    found: dict[Path, str] = {}
    for name, (text, check) in texts.items():
        file = folder / f"{name}.yaml"
        file.write_bytes(text.encode("utf-8", "surrogatepass"))
        found[file] = check
    huge = folder / "300-mb.yaml"
    with huge.open("wb") as sparse:
        sparse.write(HEAD.encode())
        sparse.truncate(HUGE_BYTES)
    pipe = folder / "pipe.yaml"
    os.mkfifo(pipe)
    return found | {huge: "file.too_big", pipe: "file.not_regular"}
