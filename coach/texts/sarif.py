"""Findings in the form that build servers and editors read: SARIF 2.1.0.

Law: the same findings as in the text, no more and no fewer; paths are relative to the folder the
command was called in. No diary and no answer is in it.
"""

from __future__ import annotations

import json
import os
from pathlib import Path
from typing import Any, Final
from urllib.parse import quote

from coach import __version__
from coach.model.findings import Finding
from coach.model.program import Place
from coach.texts.catalogue import CHECKS

VERSION: Final = "2.1.0"
_SCHEMA: Final = (
    "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
)
Made = dict[str, Any]


def as_sarif(findings: list[Finding]) -> str:
    """One run with every finding."""
    used = list(dict.fromkeys(finding.id for finding in findings))
    run = {
        "tool": {"driver": _driver(used)},
        "columnKind": "unicodeCodePoints",
        "results": [_result(finding, used.index(finding.id)) for finding in findings],
    }
    log = {"$schema": _SCHEMA, "version": VERSION, "runs": [run]}
    return json.dumps(log, indent=1, ensure_ascii=True) + "\n"


def _driver(used: list[str]) -> Made:
    rules = [
        {
            "id": name,
            "shortDescription": {"text": name.replace(".", ": ").replace("_", " ")},
            "fullDescription": {"text": CHECKS[name].why},
            "help": {"text": f"coach guide findings {name}"},
            "defaultConfiguration": {"level": CHECKS[name].level},
        }
        for name in used
    ]
    return {"name": "Coach", "semanticVersion": __version__, "rules": rules}


def _result(finding: Finding, index: int) -> Made:
    words = f"{finding.what} {finding.why}"
    if finding.write:
        words += f"\nWrite: {finding.write}"
    made: Made = {
        "ruleId": finding.id,
        "ruleIndex": index,
        "level": finding.level,
        "message": {"text": words},
        "locations": [_location(finding.place, finding.line_text)],
    }
    if finding.also is not None:
        made["relatedLocations"] = [{"id": 0, **_location(finding.also, "")}]
    return made


def _location(place: Place, line: str) -> Made:
    region: Made = {"startLine": max(1, place.line), "startColumn": max(1, place.column)}
    if line:
        region["snippet"] = {"text": line}
    where = {"uri": _relative(place.file)}
    return {"physicalLocation": {"artifactLocation": where, "region": region}}


def _relative(file: str) -> str:
    """The path from here, with plain slashes; signs that a link cannot hold are spelt out."""
    try:
        short = os.path.relpath(file)
    except ValueError:  # another drive
        short = file
    return quote(Path(short).as_posix(), errors="replace")
