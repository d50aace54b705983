"""A program folder to a `Program`: program.yaml, exercises/, scripts/, and what must agree.

Law: only the texts in the folder are read, none outside it; every exercise and script must be
readable before the program is. A program sets walls; it never holds a dose.
"""

from __future__ import annotations

from pathlib import Path
from typing import Final, NamedTuple

from coach.model.program import Exercise, Phase, Place, Program, Script, Test
from coach.texts import facts, values
from coach.texts.conditions import narrowed, read_test, split_conditions, whole_reach
from coach.texts.exercises import read_exercise
from coach.texts.facts import Fact
from coach.texts.fields import Fields, only_map, sentence_items
from coach.texts.margin import Margin, Page, did_you_mean, near_line
from coach.texts.scripts import Known, ScriptReader
from coach.texts.walls import read_walls
from coach.texts.words import Voice
from coach.texts.yaml_lines import Listed, Mapped, Text, read_page, read_tree

KEYS: Final = (
    "program",
    "about",
    "written by",
    "languages",
    "questions",
    "walls",
    "warm-up",
    "gentle",
    "twice a day",
    "recovery",
    "phases",
    "heard too",
)
MOST_BEFORE_FIRST_SET: Final = 40  # the wall of the whole conversation; set here
MOST_AFTER_A_SET: Final = 10  # set here
MOST_LANGUAGES: Final = 2
SHORTEST_PHRASE: Final = 4  # letters; set here
EVERYDAY_WORDS: Final = frozenset(
    "none fine same usual better worse light game match bullpen throws slept pain later moves "
    "warm sore tired good today muscle joint".split()
)


class Head(NamedTuple):
    """What program.yaml says before exercises and scripts are known."""

    fields: Fields
    tree: Mapped
    voice: Voice
    languages: tuple[str, ...]


def read_program_into(margin: Margin, folder: Path, language: str = "") -> Program | None:
    """The program of a folder as far as it can be read; None without a readable program.yaml.

    Whether it may be used is told by the margin: with an error in it, it may not.
    """
    page = read_page(folder / "program.yaml", "program.yaml", margin, root=folder)
    tree = read_tree(page, margin) if page else None
    if tree is None:
        return None
    head = _head(tree, margin, language)
    exercises = _exercises(folder, margin, head.voice)
    return _whole(head, exercises, folder, margin)


def _head(tree: Mapped, margin: Margin, language: str) -> Head:
    fields = Fields(tree, margin, "The program")
    named = fields.names("languages")
    languages = tuple(piece.value for piece in named) or ("English",)
    for piece in named[MOST_LANGUAGES:]:
        margin.note("language.too_many", piece.place, "A program names one or two languages.")
    for piece in named:
        if not piece.value.isalpha() or not piece.value.istitle():
            what = f'"{piece.value}" is not written like a language.'
            margin.note("language.form", piece.place, what, piece.value.capitalize())
    return Head(fields, tree, Voice(languages[:MOST_LANGUAGES], language), languages)


def _texts_in(folder: Path, name: str, margin: Margin) -> list[tuple[str, Mapped]]:
    found: list[tuple[str, Mapped]] = []
    inside = folder / name
    if not inside.is_dir():
        return found
    for path in sorted(inside.iterdir()):
        if path.name.startswith("."):
            continue
        short = f"{name}/{path.name}"
        if path.suffix != ".yaml":
            margin.keep(Page(short, str(path), (), b""))
            margin.note("file.name", Place(short, 1), f"{short} does not end in .yaml.")
            continue
        page = read_page(path, short, margin, root=folder)
        tree = read_tree(page, margin) if page else None
        if tree is not None:
            found.append((short, tree))
        else:
            margin.mark_half_read(name)
    return found


def _exercises(folder: Path, margin: Margin, voice: Voice) -> list[Exercise]:
    found: dict[str, Exercise] = {}
    for _, tree in _texts_in(folder, "exercises", margin):
        if not _first_line_is("exercise", tree, margin):
            margin.mark_half_read("exercises")
            continue
        exercise = read_exercise(tree, margin, voice)
        if exercise.name in found:
            what = f'The exercise "{exercise.name}" stands in two files.'
            margin.note("name.twice", exercise.place, what, also=found[exercise.name].place)
            continue
        found[exercise.name] = exercise
    named = [exercise for name, exercise in found.items() if name]
    if len(named) < len(found):
        margin.mark_half_read("exercises")
    return named


def _first_line_is(kind: str, tree: Mapped, margin: Margin) -> bool:
    first = tree.pairs[0].key
    if first.value == kind:
        return True
    what = f'The first line says "{first.value}", and a file here is one {kind}.'
    margin.note("file.first_line", first.place, what, f"{kind}: NAME")
    return False


def _whole(head: Head, exercises: list[Exercise], folder: Path, margin: Margin) -> Program:
    fields, voice = head.fields, head.voice
    place = head.tree.pairs[0].key.place
    called = fields.text("program", "program: NAME NUMBER")
    name, version = numbered_name(called, margin, "program")
    by_name = {exercise.name: exercise for exercise in exercises}
    before, after = _questions(fields)
    phases = _phases(fields, by_name, margin)
    scripts = _scripts(folder, margin, voice, by_name, phases)
    program = Program(
        name=name,
        version=version,
        about=_about(fields),
        languages=head.languages,
        exercises=tuple(exercises),
        scripts=scripts,
        phases=phases,
        warm_up=_exercise_names(fields, "warm-up", by_name, required=True),
        gentle=_exercise_names(fields, "gentle", by_name),
        twice_a_day=_exercise_names(fields, "twice a day", by_name),
        recovery=_exercise_names(fields, "recovery", by_name),
        most_questions_before_first_set=before,
        most_questions_after_a_set=after,
        heard_phrases=_heard_too(fields),
        place=place,
        walls=read_walls(fields, by_name),
        written_by=_optional_words(fields, "written by"),
    )
    fields.close(KEYS)
    return program


def numbered_name(called: Text | None, margin: Margin, kind: str) -> tuple[str, int]:
    """`steady shoulder 3`: the whole name and its number; ('', 0) with a finding."""
    if called is None:
        return "", 0
    words, _, last = called.value.rpartition(" ")
    if not words or not last.isdecimal() or not last.isascii() or last.startswith("0"):
        what = f'The name of the {kind} does not end in a number: "{called.value}".'
        margin.note("name.number", called.place, what, f"{kind}: {called.value} 1")
        return called.value, 0
    if kind == "program" and values.name(called, margin, "a program") is None:
        return called.value, int(last)
    return called.value, int(last)


def _about(fields: Fields) -> str:
    pair = fields.pair("about")
    if pair is None:
        return ""
    if isinstance(pair.value, Listed):
        return " ".join(text.value for text in sentence_items(pair.value.items, fields.margin))
    return _optional_words(fields, "about")


def _optional_words(fields: Fields, key: str) -> str:
    text = fields.text(key)
    return text.value if text else ""


def _questions(fields: Fields) -> tuple[int, int]:
    write = "questions: before the first set at most 30, after a set at most 5"
    text = fields.text("questions", write)
    if text is None:
        return MOST_BEFORE_FIRST_SET, MOST_AFTER_A_SET
    found = {"before the first set": 0, "after a set": 0}
    for piece in values.pieces(text):
        where, joined, amount = piece.value.partition(" at most ")
        if not joined or where not in found:
            what = f'"{piece.value}" does not say where and at most how many.'
            fields.margin.note("questions.form", piece.place, what, write)
            continue
        high = MOST_BEFORE_FIRST_SET if where.startswith("before") else MOST_AFTER_A_SET
        said = Text(amount, values.place_after(piece, len(where) + len(joined)))
        bounds = values.Bounds("", 1, high)
        found[where] = int(values.number(said, fields.margin, bounds, "The most questions") or 0)
    for where, most in found.items():
        if most == 0 and where not in text.value:
            what = f"The line does not say how many questions {where}."
            fields.margin.note("questions.form", text.place, what, write)
    return found["before the first set"], found["after a set"]


def _exercise_names(
    fields: Fields, key: str, by_name: dict[str, Exercise], *, required: bool = False
) -> tuple[str, ...]:
    write = f"{key}: {next(iter(by_name), 'pendulum')}" if required else ""
    found = fields.names(key, write)
    for piece in found:
        if piece.value not in by_name:
            _note_unknown_exercise(piece, key, by_name, fields.margin)
            continue
        _check_listed(piece, key, by_name[piece.value], fields.margin)
    return tuple(piece.value for piece in found)


def _check_listed(piece: Text, key: str, exercise: Exercise, margin: Margin) -> None:
    if key == "gentle" and exercise.load != "none":
        what = f'"{piece.value}" has a load, so it cannot stand in the gentle list.'
        margin.note("list.gentle_loaded", piece.place, what, also=exercise.place)
    if key == "twice a day" and exercise.family != "mobility":
        what = f'"{piece.value}" is not mobility, so it cannot be done twice a day.'
        margin.note("list.twice_a_day", piece.place, what, also=exercise.place)
    if key != "exercises" and exercise.family in facts.LOCKED_FAMILIES:
        what = f'"{piece.value}" is of a locked family, so it cannot stand under "{key}".'
        margin.note("list.locked", piece.place, what, also=exercise.place)


def _note_unknown_exercise(
    piece: Text, key: str, by_name: dict[str, Exercise], margin: Margin
) -> None:
    if margin.is_half_read("exercises"):
        return
    what = f'"{key}" names "{piece.value}", and there is no such exercise.'
    write = near_line(margin, piece.place, piece.value, by_name)
    margin.note("exercise.unknown", piece.place, what + did_you_mean(piece.value, by_name), write)


def _phases(fields: Fields, by_name: dict[str, Exercise], margin: Margin) -> tuple[Phase, ...]:
    found: list[Phase] = []
    write = "phases:\n  - phase: settle\n    exercises: pendulum"
    items = fields.listed("phases", write)
    names = _phase_names(items)
    for item in items:
        tree = only_map(item, margin, "A phase")
        if tree is not None:
            found.append(_phase(tree, by_name, margin, names, len(found)))
    for index, phase in enumerate(found):
        earlier = [other for other in found[:index] if other.name == phase.name]
        if earlier:
            what = f'The phase "{phase.name}" stands twice.'
            margin.note("name.twice", phase.place, what, also=earlier[0].place)
    return tuple(found)


def _phase_names(items: tuple[object, ...]) -> tuple[str, ...]:
    return tuple(
        item.pairs[0].value.value
        for item in items
        if isinstance(item, Mapped) and isinstance(item.pairs[0].value, Text)
    )


def _phase(
    tree: Mapped,
    by_name: dict[str, Exercise],
    margin: Margin,
    names: tuple[str, ...],
    index: int,
) -> Phase:
    fields = Fields(tree, margin, "The phase")
    called = fields.text("phase", "- phase: NAME")
    name = values.name(called, margin, "a phase") if called else None
    opens = _opens_when(fields, names)
    sees = _optional_words(fields, "clinician sees") if fields.pair("clinician sees") else ""
    phase = Phase(
        name or "",
        _exercise_names(fields, "exercises", by_name, required=True),
        opens,
        sees,
        tree.place,
    )
    fields.close(("phase", "opens when", "clinician sees", "exercises"))
    if index > 0 and not opens and not sees:
        what = f'Nothing says when the phase "{phase.name}" opens.'
        margin.note("phase.never_opens", tree.place, what, "clinician sees: One sentence.")
    if index == 0 and opens:
        what = "The first phase is where an athlete begins; it opens by the plan."
        margin.note("phase.first_waits", tree.place, what)
    return phase


def _opens_when(fields: Fields, names: tuple[str, ...]) -> tuple[Test, ...]:
    text = fields.text("opens when") if fields.pair("opens when") else None
    if text is None:
        return ()
    known = {fact.name: fact for fact in facts.DIARY_FACTS}
    known["phase"] = known["phase"]._replace(choices=names)
    found: list[Test] = []
    for piece in split_conditions(text):
        test = read_test(piece, known, fields.margin)
        if test is not None:
            found.append(test)
            _note_idle(test, piece, known[test.fact], fields.margin)
    return tuple(found)


def _note_idle(test: Test, piece: Text, fact: Fact, margin: Margin) -> None:
    whole = whole_reach(fact)
    left = narrowed(whole, test, fact)
    if left.empty():
        margin.note("when.never", piece.place, f'"{piece.value}" never holds.')
    elif left == whole:
        margin.note("when.always", piece.place, f'"{piece.value}" always holds.')


def _heard_too(fields: Fields) -> tuple[tuple[str, str], ...]:
    tree = only_map(fields.node("heard too"), fields.margin, '"heard too"')
    found: list[tuple[str, str]] = []
    for pair in tree.pairs if tree else ():
        group = pair.key.value
        if group not in facts.FLAG_NAMES:
            what = f'"{group}" is no warning sign.{did_you_mean(group, facts.FLAG_NAMES)}'
            write = near_line(fields.margin, pair.key.place, group, facts.FLAG_NAMES)
            fields.margin.note("heard.group", pair.key.place, what, write)
            continue
        if not isinstance(pair.value, Listed):
            what = f'"{group}" takes lines with dashes.'
            fields.margin.note("value.not_listed", pair.key.place, what, "- one phrase")
            continue
        phrases = sentence_items(pair.value.items, fields.margin)
        for phrase in phrases:
            _check_phrase(phrase, fields.margin)
        found.extend((group.replace(" ", "_"), phrase.value) for phrase in phrases)
    return tuple(found)


def _check_phrase(phrase: Text, margin: Margin) -> None:
    words = "".join(letter for letter in phrase.value.lower() if letter.isalpha() or letter == " ")
    if len(words) < SHORTEST_PHRASE or words in EVERYDAY_WORDS:
        what = f'"{phrase.value}" is too short or too usual to be listened for.'
        margin.note("heard.phrase", phrase.place, what)


# ---------------------------------------------------------------- scripts


def _scripts(
    folder: Path,
    margin: Margin,
    voice: Voice,
    by_name: dict[str, Exercise],
    phases: tuple[Phase, ...],
) -> tuple[Script, ...]:
    trees = script_trees(folder, margin)
    filled = _filled_facts(by_name, phases)
    known = {fact.name: filled.get(fact.name, fact) for fact in facts.DIARY_FACTS}
    own: dict[str, Place] = {}
    scripts: list[Script] = []
    for moment in facts.MOMENTS:
        extra = {fact.name: filled.get(fact.name, fact) for fact in facts.SET_FACTS[1:]}
        here = {**known, **extra} if moment == "after a set" else known
        reader = ScriptReader(moment, Known(tuple(by_name), here, filled, own), margin, voice)
        tree = trees.get(moment)
        if tree is not None:
            scripts.append(_script(tree, reader, margin))
        if moment not in facts.ONLY_IN_THEIR_MOMENT:
            known |= {fact.name: fact for fact in facts.ASKS[moment]}
            known |= {name: reader.own_facts[name] for name in reader.sure_facts}
    return tuple(scripts)


def script_trees(folder: Path, margin: Margin) -> dict[str, Mapped]:
    """Every script of a program as a tree of lines, by its moment."""
    found: dict[str, Mapped] = {}
    for _, tree in _texts_in(folder, "scripts", margin):
        if not _first_line_is("script", tree, margin):
            continue
        called = tree.pairs[0].value
        if not isinstance(called, Text):
            margin.note("value.empty", called.place, 'Nothing stands after "script".')
            continue
        moment = values.one_of(called, margin, facts.MOMENTS, "The moment")
        if moment in found:
            what = f'The script "{moment}" stands in two files.'
            margin.note("name.twice", called.place, what, also=found[moment].place)
        elif moment is not None:
            found[moment] = tree
    return found


def _script(tree: Mapped, reader: ScriptReader, margin: Margin) -> Script:
    fields = Fields(tree, margin, "The script")
    place = tree.pairs[0].key.place
    fields.pair("script")
    items = fields.listed("lines", "lines:\n  - ask: ...")
    script = reader.read(items, place)
    fields.close(("script", "lines"))
    return script


def _filled_facts(by_name: dict[str, Exercise], phases: tuple[Phase, ...]) -> dict[str, Fact]:
    faults = sorted({fault.name for exercise in by_name.values() for fault in exercise.faults})
    versions = sorted({v.name for exercise in by_name.values() for v in exercise.versions})
    return {
        "exercise": Fact("exercise", "choice", choices=tuple(by_name)),
        "phase": Fact("phase", "choice", choices=tuple(phase.name for phase in phases)),
        "felt in set": Fact("felt in set", "choice", choices=("fine", *faults, "something else")),
        "which version": Fact("which version", "choice", choices=tuple(versions)),
    }
