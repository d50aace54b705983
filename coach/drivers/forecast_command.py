"""`coach forecast PLAN`: the weeks that a plan would bring, were somebody to answer as a course says.

Law: a plan or a course with an error gives no forecast, only its findings. It reads no diary.
"""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from coach.drivers.exit_codes import BAD_FILE, DONE, MISSING
from coach.drivers.forecast import forecast
from coach.drivers.forecast_course import course_for
from coach.drivers.forecast_days import NothingTyped
from coach.drivers.forecast_shown import as_json, as_lines, as_page
from coach.drivers.line_voice import LineVoice
from coach.journal.outgoing import write_whole
from coach.journal.trouble import Trouble
from coach.texts.doors import bound_from
from coach.texts.rendered import as_text, visible

if TYPE_CHECKING:
    import argparse

    from coach.drivers.forecast import Forecast
    from coach.model.findings import Finding


def run(options: argparse.Namespace) -> int:
    """Make the forecast and show it as was asked; its exit code. Raises `Trouble`."""
    path = Path(options.plan)
    if not path.exists():
        raise Trouble(f"There is no file or folder at {visible(options.plan)}.", MISSING)
    bound, findings = bound_from(path)
    if bound is None:
        return refused(findings)
    course, findings = course_for(options.course, path)
    if course is None:
        return refused(findings)
    try:
        made = forecast(bound, course, options.weeks)
    except NothingTyped as missing:
        raise Trouble(str(missing), BAD_FILE) from None
    show(made, options)
    return DONE


def refused(findings: list[Finding]) -> int:
    """Show what is wrong."""
    sys.stdout.write(as_text(findings))
    return BAD_FILE


def show(made: Forecast, options: argparse.Namespace) -> None:
    """A page to a file, data, or lines."""
    if options.out is not None:
        from coach.reports.as_html import as_html

        write_whole(Path(options.out), as_html(as_page(made)))
        sys.stdout.write("Written. It is a forecast, no promise.\n")
        return
    if options.json:
        sys.stdout.write(as_json(made) + "\n")
        return
    voice = LineVoice()
    for line in as_lines(made, plain=bool(getattr(options, "plain", False)) or not draws()):
        voice.say(line)


def draws() -> bool:
    """Whether standard output is a terminal that shows more than ASCII."""
    coding = (sys.stdout.encoding or "ascii").lower().replace("-", "")
    return sys.stdout.isatty() and coding.startswith("utf")
