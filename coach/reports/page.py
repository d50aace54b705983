"""What a report is made of before it is drawn: sections of sentences, tables and pictures.

Law: one page, two drawings. The page as text and the page as HTML are made from these same nouns,
so that neither can tell a fact that the other leaves out. All text here is plain; each drawing
makes it harmless for its own reader.
"""

from __future__ import annotations

from typing import NamedTuple


class Para(NamedTuple):
    """A sentence or a few. `kind`: plain, need (it waits for somebody), quote, small."""

    text: str
    kind: str = "plain"


class Link(NamedTuple):
    """A way to another page of the same set: words, and a plain file name beside this one."""

    text: str
    file: str


class Table(NamedTuple):
    """A table: caption, heads with units, rows of as many cells; a row's first cell names it."""

    caption: str
    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]


class Series(NamedTuple):
    """One row of values on the time axis, one a day, None where not known.

    `mark`: dot, square, ring, cross (joined by a line), or bar. `letter` stands for it in text.
    """

    name: str
    mark: str
    values: tuple[float | None, ...]
    letter: str = "o"


class Panel(NamedTuple):
    """One field of a picture: its name with the unit, the ends of its scale, and its series.

    `line` is a limit drawn across, with what it is; None for none.
    """

    name: str
    low: float
    high: float
    series: tuple[Series, ...]
    line: tuple[float, str] | None = None


class Picture(NamedTuple):
    """Panels over one time axis of ISO days. `told` says in words what the picture shows.

    `marks` are places on the axis with a word each, such as a stop.
    """

    title: str
    told: str
    days: tuple[str, ...]
    panels: tuple[Panel, ...]
    marks: tuple[tuple[int, str], ...] = ()


Block = Para | Link | Table | Picture


class Section(NamedTuple):
    """A part of the page under its heading."""

    title: str
    blocks: tuple[Block, ...]


class Page(NamedTuple):
    """A whole report. `lead` are the lines under the title; `invented` marks invented people."""

    title: str
    lead: tuple[str, ...]
    sections: tuple[Section, ...]
    invented: bool = False
