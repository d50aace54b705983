"""Results of a replay or a proof as JUnit XML, in the dialect that Jenkins' junit-10 schema describes.

Law: counts, names and mismatches only; no machine's name, no path above the scenario's own file, and
no character that XML 1.0 forbids.
"""

from __future__ import annotations

from typing import TYPE_CHECKING
from xml.sax.saxutils import escape, quoteattr

if TYPE_CHECKING:
    from coach.drivers.replay import Mismatch, Result


def as_junit(results: list[Result], suite: str = "scenarios") -> str:
    """The whole file as text; `suite` is what was tried: scenarios, or promises."""
    failed = sum(bool(result.mismatches) for result in results)
    broken = sum(bool(result.findings) for result in results)
    seconds = time_of(sum(result.seconds for result in results))
    counts = f'tests="{len(results)}" failures="{failed}" errors="{broken}" time="{seconds}"'
    cases = "".join(_case(result, suite) for result in results)
    return (
        '<?xml version="1.0" encoding="UTF-8"?>\n'
        f'<testsuites name="coach" {counts}>\n'
        f'<testsuite name="{suite}" {counts} skipped="0">\n'
        f"{cases}</testsuite>\n</testsuites>\n"
    )


def time_of(seconds: float) -> str:
    """Seconds as the schema wants them: `0.057`."""
    return f"{max(0.0, seconds):.3f}"


def _case(result: Result, suite: str) -> str:
    stem = result.file.removesuffix(".yaml")
    head = (
        f"<testcase classname={_attribute(f'{suite}.{stem}')} name={_attribute(result.name)} "
        f'time="{time_of(result.seconds)}"'
    )
    troubles = [
        _trouble("error", finding.id, finding.what, f"line {finding.place.line}")
        for finding in result.findings[:1]
    ]
    if result.mismatches:
        first = result.mismatches[0]
        text = "\n\n".join(_both_sides(missed) for missed in result.mismatches)
        troubles.append(_trouble("failure", "mismatch", f"{first.day}, {first.prompt}", text))
    if not troubles:
        return f"{head}/>\n"
    return f"{head}>\n{''.join(troubles)}</testcase>\n"


def _both_sides(missed: Mismatch) -> str:
    where = f"line {missed.place.line}, {missed.day}, at the prompt: {missed.prompt}"
    return f"{where}\nexpected: {missed.expected}\nactual: {missed.actual}"


def _trouble(tag: str, kind: str, message: str, text: str) -> str:
    return (
        f"<{tag} type={_attribute(kind)} message={_attribute(message)}>"
        f"{escape(allowed(text))}</{tag}>\n"
    )


def _attribute(text: str) -> str:
    return quoteattr(allowed(text))


def allowed(text: str) -> str:
    """`text` without the characters that XML 1.0 (section 2.2) forbids."""
    return "".join(letter for letter in text if _is_allowed(ord(letter)))


def _is_allowed(code: int) -> bool:
    if code in {0x9, 0xA, 0xD}:
        return True
    return 0x20 <= code <= 0xD7FF or 0xE000 <= code <= 0xFFFD or code >= 0x10000  # noqa: PLR2004
