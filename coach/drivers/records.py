"""The commands that read a diary: `diary`, `visit`, `export`, `forget`, `use --diary`.

Law: reading changes nothing. Each command is a few lines here; what it shows is made elsewhere.
"""

from __future__ import annotations

import os
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from coach.drivers.exit_codes import MISSING
from coach.journal.folder import data_folder
from coach.journal.trouble import Trouble

if TYPE_CHECKING:
    import argparse

    from coach.model.program import Bound


def run(options: argparse.Namespace) -> int:
    """Run the command that `options.command` names; its exit code. Raises `Trouble`."""
    commands = {
        "diary": diary,
        "visit": visit,
        "export": export,
        "forget": forget,
        "use": take_in,
    }
    return commands[options.command](options)


def own_folder() -> Path:
    """Where this user's diary is."""
    return data_folder(os.environ)


def today() -> date:
    """The day on this computer's clock."""
    return datetime.now().astimezone().date()


def diary(options: argparse.Namespace) -> int:
    """`coach diary`: a day, or the last weeks."""
    from coach.drivers.telling import Wanted, show_diary

    wanted = Wanted(options.day, options.weeks, getattr(options, "plain", False), options.json)
    return show_diary(own_folder(), wanted, today())


def visit(options: argparse.Namespace) -> int:
    """`coach visit`: this diary's page, diaries received, or the invented one."""
    from coach.drivers.reading import diary_given
    from coach.drivers.telling import invented_given, show_visit, show_visits

    if options.sample:
        given, last = invented_given(sample_bound)
        return show_visit(given, options.since, options.out, last, invented=True)
    if len(options.diaries) > 1:
        paths = [Path(name) for name in options.diaries]
        return show_visits(paths, options.since, options.out, today())
    path = Path(options.diaries[0]) if options.diaries else own_folder()
    return show_visit(diary_given(path), options.since, options.out, today())


def sample_bound() -> Bound:
    """The shipped plan of the invented athlete. Raises `Trouble` (66) where it is not installed."""
    from coach.texts.doors import bound_from
    from coach.texts.shelf import shipped_dialogs

    folder = shipped_dialogs()
    bound = None
    if folder is not None:
        bound, _findings = bound_from(folder / "steady-shoulder" / "plans" / "d-o.yaml")
    if bound is None:
        raise Trouble("The sample program is not installed, so there is nothing to show.", MISSING)
    return bound


def export(options: argparse.Namespace) -> int:
    """`coach export --as KIND`."""
    from coach.drivers.exporting import export as export_as
    from coach.drivers.exporting import export_record, export_schema
    from coach.drivers.reading import diary_given

    if options.kind == "schema":
        return export_schema(options.out)
    if options.kind == "jsonl":  # all of it, whatever the plan in it is
        return export_record(own_folder(), options.out)
    given = diary_given(own_folder())
    return export_as(given, options.kind, options.out, today(), names=options.with_initials)


def forget(_options: argparse.Namespace) -> int:
    """`coach forget`."""
    from coach.drivers.forgetting import forgetting
    from coach.drivers.line_voice import LineVoice

    return forgetting(own_folder(), LineVoice())


def take_in(options: argparse.Namespace) -> int:
    """`coach use --diary FILE`."""
    from coach.drivers.exporting import take_in_file

    return take_in_file(Path(options.diary), own_folder())
