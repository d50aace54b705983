"""Findings as plain text, and as values for a machine.

Law: nothing is decided or sorted anew here. The line shown is the real line of the file, with
control characters made visible, and the caret stands under the real column.
"""

from __future__ import annotations

import json
import unicodedata

from coach.model.findings import Finding

LONGEST_LINE = 100  # letters of a shown line


def as_text(findings: list[Finding]) -> str:
    """All findings with place, line, caret, what, why, what to write; '' when there are none."""
    if not findings:
        return ""
    blocks = [_block(finding) for finding in findings]
    return "\n".join(blocks) + f"\n{_count(findings)}\n"


def _count(findings: list[Finding]) -> str:
    errors = sum(1 for finding in findings if finding.level == "error")
    warnings = len(findings) - errors
    parts = [_plural(errors, "error")] if errors else []
    parts += [_plural(warnings, "warning")] if warnings else []
    tail = " No session starts with an error." if errors else ""
    return f"{', '.join(parts)}.{tail}"


def _plural(count: int, word: str) -> str:
    return f"{count} {word}" if count == 1 else f"{count} {word}s"


def _block(finding: Finding) -> str:
    place = finding.place
    head = f"{visible(place.file)}:{place.line}:{place.column}: {finding.level} {finding.id}"
    lines = [
        head,
        *_excerpt(finding),
        f"  {visible(finding.what)}",
        f"  Why: {finding.why}",
    ]
    if finding.write:
        lines.extend(_write(finding.write))
    if finding.also:
        also = finding.also
        lines.append(f"  See also {visible(also.file)}:{also.line}:{also.column}")
    return "\n".join(lines) + "\n"


def _excerpt(finding: Finding) -> list[str]:
    if not finding.line_text.strip():
        return []
    start = max(0, finding.place.column - LONGEST_LINE + 20)
    line = finding.line_text[start : start + LONGEST_LINE]
    before = line[: max(0, finding.place.column - 1 - start)]
    number = str(finding.place.line)
    lead = "... " if start else ""
    pad = " " * (_width(visible(before)) + len(lead))
    return [f"  {number} | {lead}{visible(line)}", f"  {' ' * len(number)} | {pad}^"]


def _write(write: str) -> list[str]:
    first, *rest = write.split("\n")
    return [
        f"  Write: {visible(first)}",
        *(f"         {visible(line)}" for line in rest),
    ]


def visible(text: str) -> str:
    """The text with every letter that could move, hide or redraw shown by its number."""
    return "".join(letter if _plain(letter) else f"<U+{ord(letter):04X}>" for letter in text)


def _plain(letter: str) -> bool:
    if letter == " ":
        return True
    return unicodedata.category(letter)[0] not in "CZ" and unicodedata.category(letter) != "Cs"


def _width(text: str) -> int:
    wide = sum(1 for letter in text if unicodedata.east_asian_width(letter) in "WF")
    marks = sum(1 for letter in text if unicodedata.combining(letter))
    return len(text) + wide - marks


def as_json(findings: list[Finding]) -> str:
    """The findings as a JSON list, one object each; paths and columns as in the text."""
    return json.dumps([_as_object(finding) for finding in findings], indent=1, ensure_ascii=True)


def _as_object(finding: Finding) -> dict[str, object]:
    also = finding.also
    return {
        "id": finding.id,
        "level": finding.level,
        "file": finding.place.file,
        "line": finding.place.line,
        "column": finding.place.column,
        "what": finding.what,
        "why": finding.why,
        "write": finding.write,
        "text": finding.line_text,
        "also": None
        if also is None
        else {"file": also.file, "line": also.line, "column": also.column},
    }
