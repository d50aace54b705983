"""What `coach --help` teaches, and how the words after `coach` are read.

Law: the overview fits one screen of 80 or 40 columns; each command's help has an example.
"""

from __future__ import annotations

import argparse
import difflib
import textwrap
from typing import TYPE_CHECKING, Final, NamedTuple, NoReturn

from coach import __version__
from coach.drivers.exit_codes import MEANING
from coach.model.heard import Kind

if TYPE_CHECKING:
    from collections.abc import Callable

MOST_DIARY_WEEKS: Final = 1_500
MOST_WEEKS: Final = 52
MOST_SECONDS: Final = 86_400

OVERVIEW: Final = """\
Coach talks you through the home plan
your clinician wrote, set by set.

Athlete
  coach             today's session
  coach use FILE    put a plan in place
  coach clear       open a closed plan
  coach diary       what was done
  coach export, coach forget: your own
  coach try         see a sample day
Clinician
  coach visit       a diary on a page
  coach new, coach check: write, mend
  coach map, coach sheet: on paper
  coach preview, coach forecast: ahead
  coach compare, coach bind: send it
Tester: coach replay, coach hear
  coach prove, coach record
How to begin: coach guide TOPIC
--plain    lines only, nothing redrawn
--version  what it is for and is not
Each one: coach COMMAND --help
Exit codes: coach help codes
"""

_MEANT: Final = """\
Meant for: athletes who throw, with a
sore or hurt shoulder, with a home plan
from a clinician who sees them.
Not meant for: finding out what is
wrong; emergencies; changing a plan or
adding to it; any use without a plan.
No authority has reviewed it. Whoever
hands it out checks the law that holds.
"""


def version() -> str:
    """The version, and who it is for."""
    return f"Coach {__version__}\n{_MEANT}"


def codes() -> str:
    """The table of exit codes."""
    lines = [f"{code:>4}  {meaning}" for code, meaning in MEANING.items()]
    return "Exit codes\n" + "\n".join(lines) + "\n"


def not_a_command(word: str, known: tuple[str, ...]) -> str:
    """What to say to a word that names no command."""
    shown = "".join(letter if letter.isprintable() else "?" for letter in word[:40])
    near = difflib.get_close_matches(word.lstrip("-"), known, n=1, cutoff=0.5)
    meant = f" Did you mean: coach {near[0]}" if near else ""
    return f'"{shown}" is not a command of Coach.{meant}\nSee: coach --help'


class CommandHelp(NamedTuple):
    """A command's sentence and its example."""

    what: str
    example: str


_HELP: Final[dict[str, CommandHelp]] = {
    "use": CommandHelp(
        "Check a plan and put it in place.",
        "coach use d-o.yaml",
    ),
    "clear": CommandHelp(
        "Open a closed plan with the word from your clinician, or with your clinician beside you.",
        "coach clear",
    ),
    "diary": CommandHelp(
        "Show what was done: the newest day, the last 7 days, the weeks.",
        "coach diary --weeks 8",
    ),
    "visit": CommandHelp(
        "Show a diary as a clinician needs it: what needs you, then what happened. With --out a "
        "page and its twin as text are written; with several diaries a folder of them.",
        "coach visit --out visit.html",
    ),
    "export": CommandHelp(
        "Write your diary out: jsonl is all of it, csv is tables, fhir is a health record, ics is "
        "the coming days.",
        "coach export --as jsonl --out d.jsonl",
    ),
    "forget": CommandHelp(
        "Show what is kept here, offer a copy, then delete all of it.",
        "coach forget",
    ),
    "try": CommandHelp(
        "Try a session of an invented athlete. Nothing is kept.",
        "coach try --quick",
    ),
    "check": CommandHelp(
        "Find what would make a session wrong, with the line to write. Quiet when all is well.",
        "coach check my-program/",
    ),
    "bind": CommandHelp(
        "Make one readable file for the athlete from a plan and its program.",
        "coach bind d-o.yaml --out d-o.txt",
    ),
    "compare": CommandHelp(
        "Tell what differs between two plans or two programs, what allows more first.",
        "coach compare old.yaml new.yaml",
    ),
    "guide": CommandHelp(
        "Read a guide: athlete, clinician, tester, reference, or findings with the id of one.",
        "coach guide clinician",
    ),
    "map": CommandHelp(
        "Show the whole conversation of a program on one page, with each line's place.",
        "coach map my-program/ --out map.html",
    ),
    "new": CommandHelp(
        "Be asked for a program, plan, exercise or scenario; the file is written when it is right.",
        "coach new plan my-program/",
    ),
    "preview": CommandHelp(
        "Walk a day as an athlete would, and see what speaks and what decides. Nothing is kept.",
        "coach preview d-o.yaml --weeks 2",
    ),
    "sheet": CommandHelp(
        "Make the athlete's paper hand-out, in large print.",
        "coach sheet d-o.yaml --out d-o.html",
    ),
    "forecast": CommandHelp(
        "Show the weeks of a plan, were somebody to answer as a course says. It is no promise.",
        "coach forecast d-o.yaml --course flare",
    ),
    "replay": CommandHelp(
        "Play scenario files and show where they differ from what happens.",
        "coach replay days --junit out.xml",
    ),
    "prove": CommandHelp(
        "Search the conversations of a plan for a broken promise; cut short, it shows nothing.",
        "coach prove d-o.yaml --promise P4",
    ),
    "record": CommandHelp(
        "Keep the sessions of your diary as a scenario file. Your own words are left out.",
        "coach record --out my-days.yaml",
    ),
    "hear": CommandHelp(
        "Show how an answer is understood. Without a text, read JSON lines from standard input.",
        'coach hear "a 3" --asked pain_now',
    ),
}


class _Reader(argparse.ArgumentParser):
    def error(self, message: str) -> NoReturn:
        self.exit(2, f"{self.prog}: {message}\nSee: {self.prog} --help\n")


def parser() -> argparse.ArgumentParser:
    """The reader of all commands and their options."""
    reader = _Reader(prog="coach", add_help=False, allow_abbrev=False)
    reader.add_argument("--plain", action="store_true")
    commands = reader.add_subparsers(dest="command")
    for name, add_options in _OPTIONS.items():
        words = _HELP[name]
        command = commands.add_parser(
            name,
            description=textwrap.fill(words.what, 39),
            epilog=f"Example:\n  {words.example}",
            formatter_class=argparse.RawDescriptionHelpFormatter,
            allow_abbrev=False,
        )
        add_options(command)
    return reader


def _plain(command: argparse.ArgumentParser) -> None:
    command.add_argument(
        "--plain",
        action="store_true",
        default=argparse.SUPPRESS,
        help="lines only, nothing redrawn",
    )


def _use(command: argparse.ArgumentParser) -> None:
    given = command.add_mutually_exclusive_group(required=True)
    given.add_argument(
        "file", metavar="FILE", nargs="?", help="the plan, or the file made by coach bind"
    )
    given.add_argument("--diary", metavar="FILE", help="a diary made by coach export --as jsonl")
    command.add_argument(
        "--key",
        metavar="WORDS",
        help="the words of your clinician's key; none if they sign no more",
    )
    _plain(command)


def _diary(command: argparse.ArgumentParser) -> None:
    stretch = command.add_mutually_exclusive_group()
    stretch.add_argument("--day", metavar="D", help="one day, such as 2026-11-09")
    stretch.add_argument(
        "--weeks", type=_diary_weeks, default=4, metavar="N", help="the last N weeks (4)"
    )
    command.add_argument("--json", action="store_true", help="as JSON")
    _plain(command)


def _visit(command: argparse.ArgumentParser) -> None:
    command.add_argument(
        "diaries", nargs="*", metavar="DIARY", help="diaries received; without one, your own"
    )
    command.add_argument("--since", metavar="DATE", help="from this day on; else all of it")
    command.add_argument("--out", metavar="FILE", help="where to write it; several: a folder")
    command.add_argument("--sample", action="store_true", help="an invented diary of ten weeks")


def _export(command: argparse.ArgumentParser) -> None:
    command.add_argument(
        "--as",
        dest="kind",
        required=True,
        choices=("jsonl", "csv", "fhir", "ics", "schema"),
        metavar="KIND",
        help="jsonl, csv, fhir, ics, or schema (of jsonl)",
    )
    command.add_argument("--out", metavar="FILE", help="where to write it; csv: a folder")
    command.add_argument(
        "--with-initials", action="store_true", help="fhir only: initials, month of birth"
    )


def _try(command: argparse.ArgumentParser) -> None:
    command.add_argument("--quick", action="store_true", help="timers do not wait")
    _plain(command)


def _check(command: argparse.ArgumentParser) -> None:
    command.add_argument("paths", nargs="+", metavar="PATH", help="files or folders")
    command.add_argument("--json", action="store_true", help="findings as JSON")
    command.add_argument("--sarif", metavar="FILE", help="findings as SARIF 2.1.0 too")
    command.add_argument(
        "--reworded", action="store_true", help="list the questions asked in your words"
    )


def _bind(command: argparse.ArgumentParser) -> None:
    command.add_argument("plan", metavar="PLAN", help="the athlete's plan")
    command.add_argument("--out", metavar="FILE", help="where to write it")
    command.add_argument(
        "--key", metavar="FILE", help="sign with the key in this file; made where there is none"
    )


def _compare(command: argparse.ArgumentParser) -> None:
    command.add_argument("old", metavar="OLD", help="the plan or program as it was")
    command.add_argument("new", metavar="NEW", help="the plan or program as it is now")


def _guide(command: argparse.ArgumentParser) -> None:
    topics = ("athlete", "clinician", "tester", "reference", "findings")
    command.add_argument("topic", metavar="TOPIC", choices=topics, help=", ".join(topics))
    command.add_argument("name", metavar="ID", nargs="?", help="one finding, such as ask.order")


def _map(command: argparse.ArgumentParser) -> None:
    command.add_argument("path", metavar="PATH", help="a program's folder, or a plan of it")
    command.add_argument("--out", metavar="FILE", help="where to write the page")


def _new(command: argparse.ArgumentParser) -> None:
    kinds = ("program", "plan", "exercise", "scenario")
    command.add_argument("kind", metavar="KIND", choices=kinds, help=", ".join(kinds))
    command.add_argument(
        "folder", metavar="FOLDER", help="the program's folder; for a scenario, where it goes"
    )


def _preview(command: argparse.ArgumentParser) -> None:
    command.add_argument("plan", metavar="PATH", help="a plan, or a program with plans in it")
    command.add_argument(
        "--course", metavar="NAME", default="smooth", help="the usual answers (smooth)"
    )
    command.add_argument(
        "--weeks", type=_weeks_before, default=0, metavar="N", help="weeks of such days before (0)"
    )
    command.add_argument("--day", metavar="DATE", help="which day to walk, as 2026-11-09")
    command.add_argument(
        "--diary", metavar="FILE", help="the days before it from a diary made by coach export"
    )


def _weeks_before(word: str) -> int:
    number = int(word) if word.isascii() and word.isdigit() else -1
    if not 0 <= number <= MOST_WEEKS:
        raise argparse.ArgumentTypeError(f"a whole number from 0 to {MOST_WEEKS}")
    return number


def _sheet(command: argparse.ArgumentParser) -> None:
    command.add_argument("plan", metavar="PLAN", help="the athlete's plan")
    command.add_argument("--out", metavar="FILE", help="where to write the page")
    command.add_argument(
        "--paper", choices=("a4", "letter"), default="a4", help="a4 (if not said) or letter"
    )


def _forecast(command: argparse.ArgumentParser) -> None:
    command.add_argument("plan", metavar="PLAN", help="the athlete's plan")
    command.add_argument(
        "--course",
        metavar="NAME",
        default="smooth",
        help="smooth (if not said), sore, flare, missed, short-sleep, or a file",
    )
    command.add_argument("--weeks", type=_weeks, default=12, metavar="N", help="weeks (12)")
    command.add_argument("--json", action="store_true", help="as JSON")
    command.add_argument("--out", metavar="FILE", help="a page to print")
    _plain(command)


def _weeks(word: str) -> int:
    return _up_to(word, MOST_WEEKS)


def _diary_weeks(word: str) -> int:
    return _up_to(word, MOST_DIARY_WEEKS)


def _seconds(word: str) -> int:
    return _up_to(word, MOST_SECONDS)


def _up_to(word: str, most: int) -> int:
    number = int(word) if word.isascii() and word.isdigit() else 0
    if not 1 <= number <= most:
        raise argparse.ArgumentTypeError(f"a whole number from 1 to {most}")
    return number


def _replay(command: argparse.ArgumentParser) -> None:
    command.add_argument("paths", nargs="+", metavar="PATH", help="scenario files or folders")
    command.add_argument("--junit", metavar="FILE", help="results for a build server")
    command.add_argument(
        "--reach", action="store_true", help="what no scenario reaches, line by line"
    )
    command.add_argument(
        "--doubt", action="store_true", help="changes that no scenario notices; takes minutes"
    )
    command.add_argument(
        "--seconds",
        type=int,
        default=0,
        metavar="N",
        help="end --doubt after so long, as it stands",
    )


def _shard(text: str) -> tuple[int, int]:
    """`2/4`: the second of four parts."""
    first, _, last = text.partition("/")
    if not (first.isdecimal() and last.isdecimal() and 1 <= int(first) <= int(last)):
        raise argparse.ArgumentTypeError("like 2/4: the second of four parts")
    return int(first), int(last)


def _count(text: str) -> int:
    """A whole number from 1 on."""
    if not text.isdecimal() or not int(text):
        raise argparse.ArgumentTypeError("a whole number like 1000000")
    return int(text)


def _prove(command: argparse.ArgumentParser) -> None:
    command.add_argument("path", metavar="PATH", help="a plan, or a program with its plans")
    command.add_argument("--json", action="store_true", help="the result for a program")
    command.add_argument(
        "--promise", choices=[f"P{n}" for n in range(1, 16)], metavar="P4", help="only this one"
    )
    command.add_argument(
        "--shard", type=_shard, default=(1, 1), metavar="1/4", help="one part of the search"
    )
    command.add_argument(
        "--seconds", type=_seconds, default=1800, metavar="N", help="end after so long (1800)"
    )
    command.add_argument(
        "--walk", type=_count, default=0, metavar="N", help="walk N turns at random instead"
    )
    command.add_argument(
        "--seed", type=_count, default=1, metavar="N", help="another walk for another number (1)"
    )
    command.add_argument("--out", metavar="DIR", help="a folder: each break as a scenario")
    command.add_argument("--junit", metavar="FILE", help="the promises for a build server")
    command.add_argument(
        "--spin", action="store_true", help="ask SPIN besides, where it is here, for 2 minutes"
    )
    command.add_argument(
        "--spin-whole", action="store_true", help="as --spin, on every day, however long"
    )


def _record(command: argparse.ArgumentParser) -> None:
    command.add_argument("--out", metavar="FILE", help="where to write it")
    command.add_argument(
        "--plan", metavar="FILE", help="the file of the plan, if not a shipped one"
    )


def _hear(command: argparse.ArgumentParser) -> None:
    command.add_argument("text", nargs="?", metavar="TEXT", help="one answer")
    kinds = [kind.value for kind in Kind if kind not in (Kind.LINE, Kind.WORD)]
    command.add_argument(
        "--asked",
        metavar="KIND",
        choices=kinds,
        default=Kind.OWN_WORDS.value,
        help=f"the kind of question: {', '.join(kinds)}",
    )


_OPTIONS: Final[dict[str, Callable[[argparse.ArgumentParser], None]]] = {
    "use": _use,
    "clear": _plain,
    "diary": _diary,
    "visit": _visit,
    "export": _export,
    "forget": _plain,
    "try": _try,
    "check": _check,
    "bind": _bind,
    "prove": _prove,
    "record": _record,
    "replay": _replay,
    "hear": _hear,
    "compare": _compare,
    "guide": _guide,
    "map": _map,
    "new": _new,
    "preview": _preview,
    "sheet": _sheet,
    "forecast": _forecast,
}
