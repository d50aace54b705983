"""`coach export` and `coach use --diary`: a diary out in open formats, and whole back in.

Law: exports are written for their owner alone; a diary is taken in once, whole, where there is none.
Nothing leaves the computer by itself.
"""

from __future__ import annotations

import json
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Final

from coach.drivers.exit_codes import DONE, USAGE
from coach.drivers.reading import kept_rows, rows_back
from coach.journal.diary import FILE_NAME
from coach.journal.folder import make_folder
from coach.journal.incoming import head_of, text_of
from coach.journal.outgoing import write_whole
from coach.journal.trouble import CANNOT_READ_OR_WRITE, DAMAGED, NOT_A_DIARY, Trouble
from coach.journal.whole import read_whole, take_in
from coach.reports.calendar_file import as_calendar
from coach.reports.csv_tables import csv_tables
from coach.reports.facts import first_day, gather
from coach.reports.fhir import as_fhir
from coach.reports.whole_record import (
    MOST_BYTES,
    SCHEMA,
    NotADiaryError,
    as_lines,
    from_lines,
    says_diary,
)

if TYPE_CHECKING:
    from datetime import date

    from coach.drivers.reading import Given
    from coach.reports.facts import Facts

CSV_FOLDER: Final = "Tables are several files, so name a folder: coach export --as csv --out FOLDER"


def export_record(folder: Path, out: str | None) -> int:
    """Write the full record as JSON lines; the exit code. Raises `Trouble`."""
    whole = read_whole(folder / FILE_NAME)
    if whole.damage:
        raise Trouble(f"{DAMAGED} Cannot be read: {', '.join(whole.damage)}.", CANNOT_READ_OR_WRITE)
    return give(as_lines(kept_rows(whole.rows)), out)


def export_schema(out: str | None) -> int:
    """Write what a line of the full record looks like, as JSON Schema 2020-12."""
    return give(json.dumps(SCHEMA, indent=1) + "\n", out)


def export(given: Given, kind: str, out: str | None, today: date, *, names: bool = False) -> int:
    """Write a diary as csv, fhir or ics, to `out` or standard output; the exit code."""
    if kind == "csv":
        return tables(given, out, today)
    facts = all_facts(given, today)
    return give(as_fhir(facts, names=names) if kind == "fhir" else as_calendar(facts, today), out)


def give(text: str, out: str | None) -> int:
    """A text to a file of its owner's alone, or as it is to standard output."""
    if out is None:
        sys.stdout.write(text)
        return DONE
    write_whole(Path(out), text)
    sys.stdout.write(f"Written: {Path(out).name}\n")
    return DONE


def all_facts(given: Given, today: date) -> Facts:
    """The whole diary's facts up to `today`."""
    last = today.isoformat()
    return gather(given.bound, given.recorded, first_day(given.recorded, last), last)


def tables(given: Given, out: str | None, today: date) -> int:
    """One file a table, in a folder that is made where it is not there."""
    if out is None:
        raise Trouble(CSV_FOLDER, USAGE)
    folder = Path(out)
    if folder.exists() and not folder.is_dir():
        raise Trouble(CSV_FOLDER, USAGE)
    if not folder.exists():
        make_folder(folder)
    for name, text in csv_tables(all_facts(given, today)).items():
        write_whole(folder / name, text)
        sys.stdout.write(f"Written: {name}\n")
    return DONE


def take_in_file(path: Path, folder: Path) -> int:
    """Take an exported diary in; the exit code. Raises `Trouble`."""
    if not says_diary(head_of(path)):
        raise Trouble("The file is no exported diary, so nothing was taken in.", NOT_A_DIARY)
    try:
        kept = from_lines(text_of(path, MOST_BYTES))
    except NotADiaryError as refused:
        raise Trouble(f"{refused} Nothing was taken in.", NOT_A_DIARY) from None
    count = take_in(folder, rows_back(kept))
    sys.stdout.write(f"The diary is here, all {count} records. Type coach to go on.\n")
    return DONE
