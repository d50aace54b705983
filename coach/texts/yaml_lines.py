"""One strict reading of a text: maps, lists and words, each with its line and column.

Law: no type is guessed, nothing is expanded, nothing is dropped: a key said twice, an anchor, a
tag, a bracket, a block of text, a second document is a finding with its place. The tree is built
in one pass over the parser's events, so an alias can never be followed. PyYAML is imported only
when a text is read; libyaml's parser where it is there, else the Python one, with the same verdicts.
"""

from __future__ import annotations

import codecs
import os
import re
import stat
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any, ClassVar, Final, NamedTuple

from coach.model.program import Place
from coach.texts.margin import Margin, Page

if TYPE_CHECKING:
    from yaml.error import Mark

LARGEST_BYTES: Final = 256 * 1024  # of one text; set here
DEEPEST: Final = 20  # levels of maps and lists; set here

_INVISIBLE: Final = re.compile("[\u200b-\u200f\u202a-\u202e\u2060-\u2069\u00ad\ufeff]")
_WIDE_BLANK: Final = re.compile("[\u00a0\u2000-\u200a\u202f\u205f\u3000]")
_CURLY: Final = str.maketrans(
    {"\u201c": '"', "\u201d": '"', "\u201e": '"', "\u2018": "'", "\u2019": "'"}
)
_BULLET: Final = re.compile(
    r"^(\s*(?:-\s+)?)([\u2022\u25cf\u25e6\u2023\u00b7\u2013\u2014*])(\s*)(?=\S)"
)
_STAR_IN_FRONT: Final = re.compile(r"^ *(?:- +)?\*", re.MULTILINE)
_REMARK: Final = re.compile(r"\n *#[^\n]*")
_CONTROL: Final = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u2028\u2029]")


class Text(NamedTuple):
    """Words as typed; `place` is the first letter, `quoted` whether they stood in quotes."""

    value: str
    place: Place
    quoted: bool = False


class Blank(NamedTuple):
    """A key or a dash with nothing after it."""

    place: Place


class Listed(NamedTuple):
    """Lines with dashes."""

    items: tuple[Node, ...]
    place: Place


class Pair(NamedTuple):
    """A key and its value."""

    key: Text
    value: Node


class Mapped(NamedTuple):
    """Lines of keys and values, in their order; a key said twice keeps its first value.

    `by_key` holds the same pairs, to be looked up.
    """

    pairs: tuple[Pair, ...]
    place: Place
    by_key: dict[str, Pair]


Node = Text | Blank | Listed | Mapped


def read_page(path: Path, short: str, margin: Margin, root: Path | None = None) -> Page | None:
    """Bytes of a text, safely: a regular file, inside `root` if given, not too big, UTF-8.

    None where it cannot be read; the reason is a finding then.
    """
    shown = str(path)
    margin.keep(Page(short, shown, (), b""))
    start = Place(short, 1, 1)
    if root is not None and not _is_inside(path, root):
        margin.note("file.outside", start, f"{path.name} leads out of its folder.")
        return None
    data = _bytes_of(path, start, margin)
    if data is None:
        return None
    text = _decoded(data, start, margin)
    if text is None:
        return None
    page = Page(short, shown, tuple(_lines(text)), data)
    margin.keep(page)
    return page


def _is_inside(path: Path, root: Path) -> bool:
    """Whether the path stays in `root`: no link on the way down, or one that leads back inside."""
    top, step = str(root), str(path)
    if f"{os.sep}.." not in step:
        while len(step) > len(top) and not os.path.islink(step):  # noqa: PTH114  asked for each text
            step = os.path.dirname(step)  # noqa: PTH120  as above
        if step == top:
            return True
    return os.path.realpath(path).startswith(os.path.join(os.path.realpath(root), ""))  # noqa: PTH118  joined for its last sign


def _bytes_of(path: Path, start: Place, margin: Margin) -> bytes | None:
    try:
        handle = os.open(path, os.O_RDONLY | getattr(os, "O_NONBLOCK", 0))
    except FileNotFoundError:
        margin.note("file.missing", start, f"There is no file {path.name}.")
        return None
    except OSError as error:
        margin.note("file.unreadable", start, f"{path.name} cannot be read: {error.strerror}.")
        return None
    try:
        about = os.fstat(handle)
        if not stat.S_ISREG(about.st_mode):
            margin.note("file.not_regular", start, f"{path.name} is not a plain file.")
            return None
        if about.st_size > LARGEST_BYTES:
            margin.note("file.too_big", start, f"{path.name} is {about.st_size} bytes long.")
            return None
        return _all_bytes(handle, about.st_size)
    finally:
        os.close(handle)


def _all_bytes(handle: int, size: int) -> bytes:
    found = b""
    while len(found) < size:
        more = os.read(handle, size - len(found))
        if not more:
            break
        found += more
    return found


def _decoded(data: bytes, start: Place, margin: Margin) -> str | None:
    if data[:2] in (b"\xff\xfe", b"\xfe\xff"):
        margin.note("file.encoding", start, "The file is saved as UTF-16.")
        return None
    try:
        text = data.removeprefix(codecs.BOM_UTF8).decode()
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        column = error.start - (data.rfind(b"\n", 0, error.start) + 1) + 1
        what = "The file holds a byte that is not UTF-8 text."
        margin.note("file.encoding", start._replace(line=line, column=column), what)
        return None
    return text


def _lines(text: str) -> list[str]:
    if "\r" in text:
        text = text.replace("\r\n", "\n").replace("\r", "\n")
    return text.split("\n")


def read_tree(page: Page, margin: Margin) -> Mapped | None:
    """The page as a tree, or None; every reading mistake is noted at its line and column."""
    text = "\n".join(page.lines)
    if not _is_plain(text):
        mended = _read_line_by_line(page, margin)
        if mended is None:
            return None
    else:
        mended = _REMARK.sub("\n", f"\n{text}")[1:]
    if not mended.strip():
        margin.note("file.empty", Place(page.file, 1), "The file is empty.")
        return None
    tree = _parsed(mended, page, margin)
    if tree is None or isinstance(tree, Mapped):
        return tree
    margin.note("file.no_keys", tree.place, "The file does not begin with a key and a colon.")
    return None


def _is_plain(text: str) -> bool:
    """Whether no line needs a look of its own: plain letters, no pasted star in front of one."""
    if not text.isascii() or not text.replace("\n", "").isprintable():
        return False
    return "*" not in text or _STAR_IN_FRONT.search(text) is None


def _read_line_by_line(page: Page, margin: Margin) -> str | None:
    """The text with slips of typing noted and mended; None where nobody can go on reading."""
    if not _only_printable(page, margin) or _tab_in_front(page, margin):
        return None
    return "\n".join(_mended(line, page.file, n, margin) for n, line in _counted(page.lines))


def _counted(lines: tuple[str, ...]) -> Iterator[tuple[int, str]]:
    return enumerate(lines, start=1)


def _only_printable(page: Page, margin: Margin) -> bool:
    clean = True
    for number, line in _counted(page.lines):
        found = None if line.isprintable() else _CONTROL.search(line)
        if found:
            clean = False
            code = f"U+{ord(found.group()):04X}"
            place = Place(page.file, number, found.start() + 1)
            what = f"The line holds a control character ({code})."
            margin.note("text.control_character", place, what, _CONTROL.sub("", line).strip())
    return clean


def _tab_in_front(page: Page, margin: Margin) -> bool:
    """Whether a tab sets a line in; then nobody can tell what the line belongs to."""
    found = False
    for number, line in _counted(page.lines):
        lead = line[: len(line) - len(line.lstrip())]
        if "\t" in lead and line.strip() and not line.lstrip().startswith("#"):
            found = True
            place = Place(page.file, number, lead.index("\t") + 1)
            what = "A tab sets the line in."
            margin.note("text.tab", place, what, line.strip() + "   (with blanks before it)")
    return found


def _mended(line: str, file: str, number: int, margin: Margin) -> str:
    """The line with the usual slips of typing noted and mended, so that reading can go on."""
    if line.lstrip().startswith("#"):
        return ""
    place = Place(file, number, 1)
    if "\t" in line:
        place = place._replace(column=line.index("\t") + 1)
        fixed = line.replace("\t", "  ")
        margin.note("text.tab", place, "The line holds a tab.", fixed.strip())
        line = fixed
    if not line.isascii():
        line = _without_wide_blanks(line, place, margin)
    bullet = _BULLET.match(line)
    if bullet and not (bullet.group(2) == "*" and not bullet.group(3)):
        lead = bullet.group(1) if "-" in bullet.group(1) else f"{bullet.group(1)}- "
        fixed = lead + line[bullet.end() :]
        where = place._replace(column=bullet.start(2) + 1)
        what = f'The line begins with "{bullet.group(2)}", a pasted list sign.'
        margin.note("text.bullet", where, what, fixed.strip())
        line = fixed
    return line if line.isascii() else _without_curly_quotes(line, place, margin)


def _without_wide_blanks(line: str, place: Place, margin: Margin) -> str:
    for pattern, check, what, instead in (
        (
            _WIDE_BLANK,
            "text.odd_blank",
            "The line holds a blank that is not a plain blank.",
            " ",
        ),
        (
            _INVISIBLE,
            "text.invisible",
            "The line holds a letter that cannot be seen.",
            "",
        ),
    ):
        found = pattern.search(line)
        if found:
            line = pattern.sub(instead, line)
            margin.note(check, place._replace(column=found.start() + 1), what, line.strip())
    return line


def _without_curly_quotes(line: str, place: Place, margin: Margin) -> str:
    fixed = line.translate(_CURLY)
    if fixed == line:
        return line
    column = next(i for i, (a, b) in enumerate(zip(line, fixed, strict=True)) if a != b) + 1
    what = "The line holds a curly quote from a word processor."
    margin.note("text.curly_quote", place._replace(column=column), what, fixed.strip())
    return fixed


def fast_parser() -> bool:
    """Whether libyaml's parser is here; without it the check gives the same, eight times slower."""
    import yaml

    return hasattr(yaml, "CSafeLoader")


# ---------------------------------------------------------------- events to tree


_made: Final = tuple.__new__  # what the nouns' own constructor calls, without its frame


class _Refused(Exception):
    """The rest of the page cannot be read; the finding is written."""


def _parsed(text: str, page: Page, margin: Margin) -> Node | None:
    import yaml

    make: Any = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
    loader: Any = None
    try:
        loader = make(text)
        return _Builder(page, margin).tree(loader.get_event)
    except _Refused:
        return None
    except yaml.YAMLError as error:
        _note_broken(error, page, margin)
        return None
    except RecursionError:
        margin.note("text.too_deep", Place(page.file, 1), "The file is nested too deep.")
        return None
    finally:
        if loader is not None:
            loader.dispose()


class _OpenMap:
    """A map being read; `pairs` by key, in their order; `key` waits for its value."""

    __slots__ = ("_margin", "key", "pairs", "place")

    def __init__(self, place: Place, margin: Margin) -> None:
        self.place = place
        self.pairs: dict[str, Pair] = {}
        self.key: Text | None = None
        self._margin = margin

    def put(self, node: Node) -> None:
        """Take a key, then its value, in turn; a key said twice is noted."""
        key = self.key
        if key is None:
            self.key = node if isinstance(node, Text) else self._refuse_key(node)
            return
        self.key = None
        earlier = self.pairs.get(key.value)
        if earlier is None:
            self.pairs[key.value] = _made(Pair, (key, node))
            return
        what = f'The key "{key.value}" stands here and on line {earlier.key.place.line}.'
        self._margin.note("text.key_twice", key.place, what, also=earlier.key.place)

    def done(self) -> Node:
        """The whole map."""
        return Mapped(tuple(self.pairs.values()), self.place, self.pairs)

    def _refuse_key(self, node: Node) -> Text:
        self._margin.note("text.key_odd", node.place, "A key must be plain words.")
        raise _Refused


class _OpenList:
    """A list being read; it has no keys to wait for."""

    __slots__ = ("items", "place", "put")
    key: ClassVar = ""

    def __init__(self, place: Place) -> None:
        self.place = place
        self.items: list[Node] = []
        self.put = self.items.append

    def done(self) -> Node:
        """The whole list."""
        return Listed(tuple(self.items), self.place)


class _Builder:
    """Builds the tree from events; refuses what the format has no place for.

    Most events are scalars of plain letters on one line, so those take the shortest way; one look
    says whether a scalar needs a closer one.
    """

    def __init__(self, page: Page, margin: Margin) -> None:
        self._file = page.file
        self._lines = page.lines
        self._margin = margin
        self._documents = 0
        self._whole = _OpenList(Place(page.file, 1))
        self._open: list[_OpenMap | _OpenList] = [self._whole]  # the innermost last
        self._put = self._whole.put  # where the next node belongs

    def tree(self, next_event: Callable[[], Any]) -> Node | None:
        """The tree of all events, up to the end of the text."""
        import yaml

        takers: dict[type, Callable[[Any], None]] = {
            yaml.MappingStartEvent: self._start_map,
            yaml.SequenceStartEvent: self._start_list,
            yaml.MappingEndEvent: self._end,
            yaml.SequenceEndEvent: self._end,
            yaml.DocumentStartEvent: self._start_document,
            yaml.AliasEvent: self._refuse_alias,
        }
        scalar, node_of = yaml.ScalarEvent, self._scalar
        for event in iter(next_event, None):
            kind = event.__class__
            if kind is scalar:
                self._put(node_of(event))
            elif kind in takers:
                takers[kind](event)
        return self._whole.items[0] if self._whole.items else None

    def _place(self, mark: Mark) -> Place:
        return Place(self._file, mark.line + 1, mark.column + 1)

    def _refuse(self, check: str, mark: Mark, what: str, write: str = "") -> None:
        self._margin.note(check, self._place(mark), what, write)
        raise _Refused

    def _refuse_alias(self, event: Any) -> None:  # noqa: ANN401  the parser's events have no public types
        self._refuse("text.anchor", event.start_mark, "The line refers to an anchor.")

    def _start_document(self, event: Any) -> None:  # noqa: ANN401
        self._documents += 1
        if event.version or event.tags:
            self._refuse("text.directive", event.start_mark, "The file begins with a directive.")
        if self._documents > 1:
            self._refuse("text.two_documents", event.start_mark, "A second document begins here.")

    def _start_map(self, event: Any) -> None:  # noqa: ANN401
        self._begin(event, _OpenMap(self._place(event.start_mark), self._margin))

    def _start_list(self, event: Any) -> None:  # noqa: ANN401
        self._begin(event, _OpenList(self._place(event.start_mark)))

    def _begin(self, event: Any, opened: _OpenMap | _OpenList) -> None:  # noqa: ANN401
        if event.anchor is not None or event.tag is not None:
            self._refuse_marks(event)
        mark, above = event.start_mark, self._open
        if event.flow_style:
            self._refuse("text.brackets", mark, "The line uses brackets or braces.")
        if len(above) > DEEPEST:
            what = f"The line is nested more than {DEEPEST} levels deep."
            self._refuse("text.too_deep", mark, what)
        if above[-1].key is None:
            self._refuse("text.key_odd", mark, "A key must be plain words.")
        above.append(opened)
        self._put = opened.put

    def _refuse_marks(self, event: Any) -> None:  # noqa: ANN401
        if event.anchor is not None:
            what = 'The value begins with an anchor ("&").'
            self._refuse("text.anchor", event.start_mark, what)
        if event.tag is not None:
            self._refuse("text.tag", event.start_mark, 'The value begins with a tag ("!").')

    def _end(self, _event: Any) -> None:  # noqa: ANN401
        done = self._open.pop().done()
        self._put = self._open[-1].put
        self._put(done)

    def _scalar(self, event: Any) -> Node:  # noqa: ANN401
        value, style, start, line = event.value, event.style, event.start_mark, event.end_mark.line
        if event.anchor is not None or event.tag is not None:
            self._refuse_marks(event)
        place = _made(Place, (self._file, start.line + 1, start.column + 1))
        if style and style in "|>":
            what = f'The value begins with "{style}".'
            self._refuse("text.block", start, what)
        if not value:
            return Text(value, place, True) if style else Blank(place)
        if line != start.line or "#" in self._lines[line]:
            self._check_one_line(event, place)
        if not (value.isascii() and value.isprintable()):
            self._check_letters(value, place)
        return _made(Text, (value, place, bool(style)))

    def _check_one_line(self, event: Any, place: Place) -> None:  # noqa: ANN401
        end = event.end_mark
        line, column = end.line, end.column
        if line >= place.line and column > 0:
            what = "The value goes on over a second line."
            self._margin.note("text.two_lines", place, what, _one_line(event.value))
            return
        behind = self._lines[line] if line < len(self._lines) else ""
        if len(behind) > column and behind[column:].lstrip().startswith("#"):
            where = self._place(end)
            self._margin.note("text.remark", where, "A remark stands behind a value.")

    def _check_letters(self, value: str, place: Place) -> None:
        if _CONTROL.search(value) or _INVISIBLE.search(value) or "\n" in value:
            what = "The quotes hold a letter that cannot be shown."
            self._margin.note("text.control_character", place, what)


def _one_line(value: str) -> str:
    return " ".join(value.split())


# ---------------------------------------------------------------- what the parser could not read

_BROKEN: Final = (  # a piece of the parser's words -> our check, and the words for it
    ("quoted scalar", "text.quote_open", "A quote is opened and never closed."),
    (
        "mapping values are not allowed",
        "text.colon",
        "The value holds a colon and a blank.",
    ),
    (
        "could not find expected ':'",
        "text.key_alone",
        "The line has no colon after its key.",
    ),
    (
        "cannot start any token",
        "text.first_letter",
        "A value may not begin with this sign.",
    ),
    ("unexpected end of directive", "text.directive", "A line begins with %."),
    (
        "did not find expected key",
        "text.indent",
        "The line does not stand below its neighbours.",
    ),
    (
        "did not find expected '-'",
        "text.indent",
        "The line does not stand below its neighbours.",
    ),
    (
        "block sequence entries are not",
        "text.indent",
        "A dash stands where none can be.",
    ),
    (
        "expected <block end>",
        "text.indent",
        "The line does not stand below its neighbours.",
    ),
    ("exceeded max depth", "text.too_deep", "The file is nested too deep."),
)


def _note_broken(error: Any, page: Page, margin: Margin) -> None:  # noqa: ANN401
    if margin.errors_in(page.file) and _slips_of_typing(page, margin):
        return
    problem = f"{getattr(error, 'problem', '')} {getattr(error, 'context', '')}"
    check, what = next(
        ((check, words) for piece, check, words in _BROKEN if piece in problem),
        ("text.broken", "The line cannot be read."),
    )
    mark = getattr(error, "problem_mark", None)
    if check in ("text.quote_open", "text.key_alone"):
        mark = getattr(error, "context_mark", None) or mark
    place = Place(page.file, 1, 1)
    if mark is not None:
        place = Place(page.file, min(mark.line + 1, len(page.lines)), mark.column + 1)
    check, what = _sharper(check, what, margin.line_text(place))
    margin.note(check, place, what, _mend(check, margin.line_text(place)))


def _slips_of_typing(page: Page, margin: Margin) -> bool:
    slips = ("text.tab", "text.curly_quote", "text.bullet")
    found = margin.sorted_findings()
    return any(f.id in slips and f.place.file == page.shown for f in found)


def _sharper(check: str, what: str, line: str) -> tuple[str, str]:
    """The parser's guess made sharper by the line itself."""
    value = line.split(": ", 1)[-1].lstrip("- ")
    if check in ("text.indent", "text.broken", "text.colon") and value[:1] in (
        '"',
        "'",
    ):
        return "text.quote_open", "Words stand behind a closing quote."
    if check == "text.broken" and value[:1] in ("[", "{", "]", "}"):
        return "text.brackets", "The line uses brackets or braces."
    return check, what


def _mend(check: str, line: str) -> str:
    stripped = line.strip()
    if check == "text.colon":
        dash = "- " if stripped.startswith("- ") else ""
        body = stripped.removeprefix("- ")
        if ": " not in body:
            return ""
        key, _, value = body.partition(": ")
        return f'{dash}{key}: "{value.replace(chr(34), chr(39))}"'
    if check == "text.first_letter":
        key, colon, value = stripped.partition(": ")
        return f'{key}: "{value}"' if colon else ""
    return ""
