"""The commands at a clinician's desk: a program or plan in, a page or a text out.

Law: what has an error finding gives no page, only its findings. Pages go to a file or to standard
output, never to a network; nothing of an athlete's diary is read here.
"""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Final

from coach.drivers.exit_codes import BAD_FILE, DONE, MISSING, USAGE
from coach.model.program import Bound, Program

if TYPE_CHECKING:
    import argparse
    from collections.abc import Callable

    from coach.model.findings import Finding


def run(options: argparse.Namespace) -> int:
    """Run the command that `options.command` names; its exit code."""
    return DESK[options.command](options)


def sheet(options: argparse.Namespace) -> int:
    """`coach sheet PLAN`: the paper hand-out for the athlete."""
    from coach.pages.sheet import sheet as paper_sheet
    from coach.texts.doors import bound_from

    bound, findings = bound_from(existing(options.plan))
    if bound is None:
        return refused(findings)
    return give(paper_sheet(bound, options.paper), options.out)


def map_of(options: argparse.Namespace) -> int:
    """`coach map PATH`: the whole conversation on one page."""
    from coach.pages.map_page import Pages, map_page
    from coach.texts.doors import program_with_lines

    program, scripts, findings = program_with_lines(existing(options.path))
    if program is None:
        return refused(findings)
    return give(map_page(Pages(program, scripts)), options.out)


def compare(options: argparse.Namespace) -> int:
    """`coach compare OLD NEW`: what differs, what allows more first."""
    from coach.journal.trouble import Trouble
    from coach.pages.changes import report
    from coach.pages.changes_plan import plan_changes
    from coach.pages.changes_program import program_changes

    old, new = (whole(existing(name)) for name in (options.old, options.new))
    for one in (old, new):
        if isinstance(one, list):
            return refused(one)
    if isinstance(old, Bound) and isinstance(new, Bound):
        found = [*plan_changes(old, new), *program_changes(old.program, new.program)]
    elif isinstance(old, Program) and isinstance(new, Program):
        found = program_changes(old, new)
    else:
        raise Trouble("One is a plan and the other a program. Give two of a kind.", USAGE)
    sys.stdout.write(report(found))
    return DONE


def whole(path: Path) -> Bound | Program | list[Finding]:
    """A plan with its program, or a program by its folder; its findings where it has errors."""
    from coach.texts.doors import bound_from, read_program

    if path.is_dir():
        program, findings = read_program(path)
        return findings if program is None else program
    bound, findings = bound_from(path)
    return findings if bound is None else bound


def new(options: argparse.Namespace) -> int:
    """`coach new KIND FOLDER`: a talk that ends in a file which passes the check."""
    from coach.drivers.new_text import new as talk

    return talk(options)


def guide(options: argparse.Namespace) -> int:
    """`coach guide TOPIC`: how to begin, and the reference."""
    from coach.drivers.in_window import guide_in_window
    from coach.journal.trouble import Trouble
    from coach.texts import guides
    from coach.texts.margin import did_you_mean

    if options.name is None:
        return give(guide_in_window(guides.guide(options.topic)), None)
    page = guides.finding_page(options.name) if options.topic == "findings" else ""
    if not page:
        from coach.texts.catalogue import CHECKS
        from coach.texts.rendered import visible

        near = did_you_mean(options.name, CHECKS)
        raise Trouble(f'There is no finding "{visible(options.name)}".{near}', USAGE)
    return give(guide_in_window(f"{page.rstrip()}\n"), None)


def preview(options: argparse.Namespace) -> int:
    """`coach preview PLAN`: a day walked as an athlete would, nothing kept."""
    from coach.drivers.preview import preview as walk

    return walk(options)


def show_reworded(paths: list[Path]) -> None:
    """The questions asked in a clinician's own words, for every program among the paths."""
    from coach.pages.rewordings import reworded
    from coach.texts.doors import program_with_lines

    for path in paths:
        program, _, _ = program_with_lines(path)
        if program is not None:
            sys.stdout.write(reworded(program))


def existing(name: str) -> Path:
    """The path, which is there; raises `Trouble` where it is not."""
    from coach.journal.trouble import Trouble
    from coach.texts.rendered import visible

    path = Path(name)
    if not path.exists():
        raise Trouble(f"There is no file or folder at {visible(name)}.", MISSING)
    return path


def refused(findings: list[Finding]) -> int:
    """Show the findings that leave nothing to make a page of."""
    from coach.texts.rendered import as_text

    sys.stdout.write(as_text(findings))
    return BAD_FILE


def give(text: str, out: str | None) -> int:
    """The made text, into the file `out` or to standard output."""
    if out is None:
        sys.stdout.write(text)
        return DONE
    from coach.journal.outgoing import write_whole

    write_whole(Path(out), text)
    sys.stdout.write("Written.\n")
    return DONE


DESK: Final[dict[str, Callable[[argparse.Namespace], int]]] = {
    "compare": compare,
    "guide": guide,
    "new": new,
    "preview": preview,
    "sheet": sheet,
    "map": map_of,
}
