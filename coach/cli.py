"""The command line: reads what was asked for, calls the room that does it, ends with its code.

Law: the first words are on screen before anything heavy is imported. Whatever goes wrong ends in
one calm sentence and a documented exit code; a fault of ours shows no exercise and no answer.
It decides nothing about training.
"""

from __future__ import annotations

import sys

TYPE_CHECKING = False  # `typing` itself would cost time before the first words
if TYPE_CHECKING:
    import argparse
    from collections.abc import Callable
    from datetime import datetime
    from pathlib import Path

    from coach.journal import Journal
    from coach.model.program import Bound

GREETING = "Coach is opening your plan."
SAMPLE = "Coach is opening a sample plan.\nNothing is kept."
NO_PLAN = "There is no plan here yet.\nGet the file from your clinician, then type: coach use FILE"
OUR_FAULT = "Coach made a mistake. The fault is ours, not yours."
NO_MORE_TODAY = "Stop for today: no more exercise."
SAVED = "All you typed so far is saved."
# Commands without an athlete in front.
TOOLS = (
    *("check", "bind", "replay", "hear", "compare", "guide", "map", "new", "preview", "sheet"),
    *("forecast", "prove", "visit"),
)


def main(arguments: list[str] | None = None) -> int:
    """Run one command; its exit code (see `coach help codes`)."""
    words = sys.argv[1:] if arguments is None else arguments
    if sys.stdout is None:  # started with its output closed: nothing could be shown
        return 74
    try:
        if words and words != ["--plain"]:
            return guarded(lambda: named_command(words), athlete=words[0] not in TOOLS)
        sys.stdout.write(GREETING + "\n")
        sys.stdout.flush()
        return guarded(lambda: todays_session(plain=bool(words)))
    except KeyboardInterrupt:
        complain(f"Stopped here. {SAVED}")
        return 130
    except OSError:  # the first words could not be written
        quiet_output()
        return 74


# ---------------------------------------------------------------- what may go wrong


def guarded(command: Callable[[], int], *, athlete: bool = True) -> int:
    """Run `command`; turn every way it can break into a sentence and an exit code."""
    from coach.journal.trouble import Trouble

    try:
        ends_by_signal()
        ready_streams()
        code = command()
        sys.stdout.flush()
    except BrokenPipeError:
        quiet_output()
        return 74
    except Trouble as trouble:
        complain(trouble.words)
        return trouble.code
    except SystemExit as ended:
        return ended.code if isinstance(ended.code, int) else 2
    except OSError as refused:
        complain(f"Reading or writing failed: {refused.strerror}. No exercise is shown.")
        quiet_output()
        return 74
    except Exception as fault:  # noqa: BLE001 - the last resort: our fault must end in a safe stop
        first = f"{NO_MORE_TODAY} {OUR_FAULT}\n{SAVED}" if athlete else OUR_FAULT
        complain(f"{first}\n{fault_place(fault)}")
        return 70
    return code


def complain(words: str) -> None:
    """One message for a person; a closed window is no second fault."""
    import contextlib

    with contextlib.suppress(OSError, ValueError, AttributeError):
        sys.stdout.flush()
    with contextlib.suppress(OSError, ValueError, AttributeError):
        sys.stderr.write(fitted(words) + "\n")
        sys.stderr.flush()


def fitted(words: str) -> str:
    """The lines of `words`, wrapped to the window (at most 79 columns)."""
    try:
        import shutil
        import textwrap
    except ImportError:  # a machine that cannot open one more file; the words matter more
        return words
    width = max(20, min(shutil.get_terminal_size((80, 24)).columns, 80) - 1)
    return "\n".join(textwrap.fill(line, width) for line in words.split("\n"))


def quiet_output() -> None:
    """Nobody reads any more: let the interpreter's last flush go nowhere."""
    import contextlib
    import os

    with contextlib.suppress(OSError, ValueError, AttributeError):
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def fault_place(fault: BaseException) -> str:
    """Where in our code it broke, and the kind of fault; never its text, which may hold answers."""
    trace, place = fault.__traceback__, ""
    while trace is not None:
        name = trace.tb_frame.f_globals.get("__name__", "")
        if name.split(".")[0] == "coach":
            place = f"{name} line {trace.tb_lineno}"
        trace = trace.tb_next
    return f"For the makers of Coach: {type(fault).__name__} in {place}."


def ends_by_signal() -> None:
    """TERM and HUP unwind like Ctrl-C, so that the terminal and the diary are left in order."""
    import signal

    def end(number: int, _frame: object) -> None:
        raise SystemExit(128 + number)

    for name in ("SIGTERM", "SIGHUP"):
        if hasattr(signal, name):
            signal.signal(getattr(signal, name), end)


def ready_streams() -> None:
    """No byte typed or shown may break a session: undecodable ones pass through as marks."""
    import io

    for stream, errors in ((sys.stdin, "surrogateescape"), (sys.stdout, "backslashreplace")):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors=errors)


# ---------------------------------------------------------------- the athlete


def todays_session(*, plain: bool) -> int:
    """`coach`: today's session from the plan in place."""
    with own_journal() as journal:
        bound = plan_in_place(journal)
        from coach.drivers.drive import run_session

        return run_session(journal, bound, plain=plain, quick=False)


def own_journal(*, write: bool = True) -> Journal:
    """This user's diary."""
    import os

    from coach.journal import Journal, data_folder

    return Journal.open(data_folder(os.environ), write=write)


def plan_in_place(journal: Journal) -> Bound:
    """The compiled plan; raises `Trouble` with how to get one."""
    from coach.journal import Trouble

    kept = journal.current_plan()
    if kept is None:
        raise Trouble(NO_PLAN, 66)
    from coach.texts.compiled import CopyRefused, from_json

    try:
        return from_json(kept[0])
    except CopyRefused as refused:
        raise Trouble(str(refused), 65) from None


def use(options: argparse.Namespace) -> int:
    """`coach use FILE`: check a plan and put it in place; `--diary` takes a diary in."""
    if options.diary is not None:
        return from_the_diary(options)
    from coach.drivers.line_voice import LineVoice
    from coach.drivers.placing import place_plan

    path = existing([options.file])[0]
    bound = checked_plan(path)
    if bound is None:
        return 65
    with own_journal() as journal:
        return place_plan(journal, bound, path.name, LineVoice().say, now(), options.key or "")


def existing(names: list[str]) -> list[Path]:
    """The paths, all there; raises `Trouble` (66) for the first that is not."""
    from pathlib import Path

    from coach.journal import Trouble
    from coach.texts.rendered import visible

    paths = [Path(name) for name in names]
    for path in paths:
        if not path.exists():
            raise Trouble(f"There is no file or folder at {visible(str(path))}.", 66)
    return paths


def checked_plan(path: Path) -> Bound | None:
    """A plan with its program, or a file made by `coach bind`; None after showing its findings."""
    from coach.texts.bind import read_bound
    from coach.texts.doors import bound_from
    from coach.texts.rendered import as_text
    from coach.texts.shelf import says

    bound, findings = read_bound(path) if says(path, "bound plan") else bound_from(path)
    if bound is None:
        sys.stdout.write(as_text(findings))
    return bound


def try_it(options: argparse.Namespace) -> int:
    """`coach try`: a session of the invented athlete; nothing is kept."""
    sys.stdout.write(SAMPLE + "\n")
    sys.stdout.flush()
    from coach.drivers.drive import run_session
    from coach.drivers.sample import moved_to
    from coach.journal import Journal, throwaway

    bound = checked_plan(sample_plan())
    if bound is None:
        return 65
    bound = moved_to(bound, now().date())
    with throwaway() as folder, Journal.open(folder / "coach") as journal:
        return run_session(journal, bound, plain=options.plain, quick=options.quick)


def sample_plan() -> Path:
    """The shipped plan of the invented athlete D.O. Raises `Trouble` (66) when it is not there."""
    from coach.journal import Trouble
    from coach.texts.shelf import shipped_dialogs

    folder = shipped_dialogs()
    if folder is None:
        raise Trouble("The sample program is not installed, so there is nothing to try.", 66)
    return folder / "steady-shoulder" / "plans" / "d-o.yaml"


def clear(_options: argparse.Namespace) -> int:
    """`coach clear`: open a closed plan with the clinician's word, or in person."""
    with own_journal() as journal:
        bound = plan_in_place(journal)
        from coach.drivers.clearing import clear as clearing_talk
        from coach.drivers.line_voice import LineVoice

        return clearing_talk(journal, bound, LineVoice(), now)


def now() -> datetime:
    """The clock, with its UTC offset."""
    from datetime import datetime

    return datetime.now().astimezone()


def from_the_diary(options: argparse.Namespace) -> int:
    """`coach diary`, `coach visit`, `coach export`, `coach forget`."""
    from coach.drivers import records

    return records.run(options)


# ---------------------------------------------------------------- the clinician and the tester


def check(options: argparse.Namespace) -> int:
    """`coach check PATH...`: everything that would make a session wrong, with the line to write."""
    from coach.texts.doors import check_paths
    from coach.texts.rendered import as_json, as_text
    from coach.texts.yaml_lines import fast_parser

    paths = existing(options.paths)
    if not fast_parser():
        complain("The fast reader of texts (libyaml) is not here, so this takes longer.")
    findings = check_paths(paths)
    if options.sarif is not None:
        from pathlib import Path

        from coach.journal.outgoing import write_whole
        from coach.texts.sarif import as_sarif

        write_whole(Path(options.sarif), as_sarif(findings))
    sys.stdout.write(as_json(findings) + "\n" if options.json else as_text(findings))
    if options.reworded:
        from coach.drivers.desk import show_reworded

        show_reworded(paths)
    return 1 if any(finding.level == "error" for finding in findings) else 0


def bind(options: argparse.Namespace) -> int:
    """`coach bind PLAN`: program and plan as one file; the clearance words for the clinician."""
    from coach.drivers.binding import bind as bound_together

    return bound_together(options)


def prove(options: argparse.Namespace) -> int:
    """`coach prove PATH`: every conversation of a program and its plan, against the promises."""
    from pathlib import Path

    from coach.drivers.prove import Options, prove_command

    return prove_command(
        Options(
            existing([options.path])[0],
            as_json=options.json,
            promise=options.promise or "",
            shard=options.shard,
            seconds=float(options.seconds),
            walk=options.walk,
            seed=options.seed,
            out=Path(options.out) if options.out is not None else None,
            spin=options.spin,
            spin_whole=options.spin_whole,
            junit=Path(options.junit) if options.junit is not None else None,
        )
    )


def replay(options: argparse.Namespace) -> int:
    """`coach replay PATH...`: scenario files played through; where expected and actual part."""
    from pathlib import Path

    from coach.drivers import replay as player
    from coach.journal import Trouble

    paths = existing(options.paths)
    if not any(player.files_under(path) for path in paths):
        raise Trouble("There is no scenario file there.", 66)
    cut = 0
    if options.reach:
        from coach.drivers import reach

        results, lines = reach.look(paths)
    elif options.doubt:
        from coach.drivers import doubt

        results, lines, cut = doubt.look(paths, progress, float(options.seconds))
    else:
        results = player.replay(paths)
        lines = player.report(results)
    if options.junit is not None:
        from coach.drivers.junit import as_junit
        from coach.journal.outgoing import write_whole

        write_whole(Path(options.junit), as_junit(results))
    sys.stdout.write("\n".join(lines) + "\n")
    return cut or player.exit_code(results)


def progress(words: str) -> None:
    """How far a long look has come: one line rewritten where it is watched, else nothing."""
    if sys.stderr.isatty():
        sys.stderr.write(f"\r{words}")
        sys.stderr.flush()


def record(options: argparse.Namespace) -> int:
    """`coach record`: the diary's sessions as a scenario, private words left out."""
    from pathlib import Path

    from coach.drivers import recording
    from coach.journal.outgoing import write_whole
    from coach.texts.shelf import shipped_dialogs

    named = existing([options.plan])[0] if options.plan is not None else None
    with own_journal(write=False) as journal:
        plan, bound = recording.plan_file(journal, named, shipped_dialogs())
        name = "a kept session" if options.out is None else Path(options.out).stem
        kept = recording.kept(journal, bound, plan.as_posix(), name)
    if options.out is None:
        sys.stdout.write(kept.text)
        return 0
    write_whole(Path(options.out), kept.text)
    sys.stdout.write("Written. Own words and free text were left out.\n")
    return 0


def hear(options: argparse.Namespace) -> int:
    """`coach hear`: how an answer is understood; without a text, JSON lines on standard input."""
    if options.text is None:
        return hear_rows()
    from coach.drivers.line_voice import LineVoice
    from coach.hearing.reported import explain
    from coach.model.heard import Kind

    for line in explain(options.text, Kind(options.asked)):
        LineVoice().say(line)
    return 0


def hear_rows() -> int:
    """One JSON object a line in and out; stops at a line that is none, without repeating it."""
    import json

    from coach.hearing.reported import hear_row

    for number, line in enumerate(sys.stdin, start=1):
        try:
            row = json.loads(line) if line.strip() else None
        except (ValueError, RecursionError):
            row = line
        if row is None:
            continue
        if not isinstance(row, dict):
            complain(f"Line {number} of the input is not a JSON object.")
            return 65
        sys.stdout.write(json.dumps(hear_row(row)) + "\n")
    return 0


def at_the_desk(options: argparse.Namespace) -> int:
    """`coach sheet`, `coach map` and the clinician's other pages and texts."""
    from coach.drivers import desk

    return desk.run(options)


def forecast(options: argparse.Namespace) -> int:
    """`coach forecast PLAN`: its weeks, were somebody to answer as a course says."""
    from coach.drivers import forecast_command

    return forecast_command.run(options)


# ---------------------------------------------------------------- reading the command


COMMANDS = {
    "use": use,
    "clear": clear,
    "diary": from_the_diary,
    "visit": from_the_diary,
    "export": from_the_diary,
    "forget": from_the_diary,
    "try": try_it,
    "check": check,
    "bind": bind,
    "record": record,
    "replay": replay,
    "hear": hear,
    "prove": prove,
    "compare": at_the_desk,
    "guide": at_the_desk,
    "map": at_the_desk,
    "new": at_the_desk,
    "preview": at_the_desk,
    "sheet": at_the_desk,
    "forecast": forecast,
}


def named_command(words: list[str]) -> int:
    """Run the command that `words` name, or say what they might mean (2)."""
    from coach import help_pages as pages

    first = next((word for word in words if word not in {"--plain", "--"}), "")
    if first in {"-h", "--help", "help"}:
        return show_help(words)
    if first == "--version":
        sys.stdout.write(pages.version())
        return 0
    if first not in COMMANDS:
        complain(pages.not_a_command(first, tuple(COMMANDS)))
        return 2
    options = pages.parser().parse_args(words)
    return COMMANDS[first](options)


def show_help(words: list[str]) -> int:
    """`coach --help`, `coach help codes`, `coach help COMMAND`."""
    from coach import help_pages as pages

    topic = words[words.index("help") + 1 :] if "help" in words else []
    if topic[:1] == ["codes"]:
        sys.stdout.write(pages.codes())
    elif topic and topic[0] in COMMANDS:
        pages.parser().parse_args([topic[0], "--help"])
    else:
        sys.stdout.write(pages.OVERVIEW)
    return 0
