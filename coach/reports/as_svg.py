"""A picture as inline SVG: black on white, told apart by shape, with title and words for the ear.

Law: no colour carries a meaning, no script, no outside file. A value not known has no mark and
breaks the line. Numbers are written with one decimal at most, so that a year stays small.
"""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING, Final

from coach.reports.words import MONTHS, WEEKDAYS, date_of, number

if TYPE_CHECKING:
    from coach.reports.page import Panel, Picture, Series

WIDTH: Final = 720
LEFT: Final = 30  # room for the scale
RIGHT: Final = 8
HIGH: Final = {True: 100, False: 44}  # height of a panel with lines, and of one with bars
GAP: Final = 25  # between panels; holds a panel's name
FOOT: Final = 42  # the days
LINE: Final = 20  # between two lines of names; the page sets them larger on a narrow screen
MOST_DAY_NAMES: Final = 14
MOST_WEEK_NAMES: Final = 12
MOST_NARROW: Final = 8  # names that fit beside each other on a narrow screen; of more, every other
BAR_MOST: Final = 22.0


def as_svg(picture: Picture, name: str) -> str:
    """The picture; `name` makes the ids of its title and words single on a page."""
    parts, top = [], 4.0
    for panel in picture.panels:
        is_lines = panel.series[0].mark != "bar"
        high = HIGH[is_lines]
        parts.append(panel_svg(panel, len(picture.days), top + 16, high))
        top += high + GAP
    parts += [stop_svg(place, word, len(picture.days), top) for place, word in picture.marks]
    parts.append(day_names(picture.days, top))
    high_all = top + FOOT
    return (
        f'<svg viewBox="0 0 {WIDTH} {_n(high_all)}" role="img" '
        f'aria-labelledby="{name}-t {name}-d">'
        f'<title id="{name}-t">{escape(picture.title)}</title>'
        f'<desc id="{name}-d">{escape(picture.told)}</desc>' + "".join(parts) + "</svg>"
    )


def x_of(place: int, days: int) -> float:
    """The middle of a day's column."""
    return LEFT + (WIDTH - LEFT - RIGHT) * (place + 0.5) / days


def y_of(value: float, panel: Panel, top: float, high: float) -> float:
    """The height of a value in its panel."""
    share = (value - panel.low) / (panel.high - panel.low)
    return top + high * (1 - min(1.0, max(0.0, share)))


def panel_svg(panel: Panel, days: int, top: float, high: float) -> str:
    """One panel: frame lines, scale, limit, then its series and their names."""
    scale = "".join(scale_svg(value, panel, top, high) for value in (panel.low, panel.high))
    limit = "" if panel.line is None else limit_svg(panel, top, high)
    drawn = "".join(series_svg(one, panel, days, top, high) for one in panel.series)
    return f"{name_svg(panel, top)}{scale}{limit}{drawn}"


def name_svg(panel: Panel, top: float) -> str:
    """The panel's name, and a key where it holds more than one series."""
    out = f'<text x="{LEFT}" y="{_n(top - 5)}" class="n">{escape(panel.name)}</text>'
    if len(panel.series) == 1:
        return out
    x = LEFT + 150.0
    for one in panel.series:
        out += mark_svg(one.mark, x, top - 9) + (
            f'<text x="{_n(x + 9)}" y="{_n(top - 5)}">{escape(one.name)}</text>'
        )
        x += 30 + 9.4 * len(one.name)
    return out


def scale_svg(value: float, panel: Panel, top: float, high: float) -> str:
    """One end of the scale with its number."""
    y = y_of(value, panel, top, high)
    line = f'<path class="g" d="M{LEFT} {_n(y)}H{WIDTH - RIGHT}"/>'
    words = escape(number(value, 0))
    return f'{line}<text x="{LEFT - 6}" y="{_n(y + 4)}" class="e">{words}</text>'


def limit_svg(panel: Panel, top: float, high: float) -> str:
    """The plan's limit as a broken line with its words."""
    if panel.line is None:
        return ""
    y = y_of(panel.line[0], panel, top, high)
    words = f'<text x="{WIDTH - RIGHT}" y="{_n(y - 3)}" class="e">{escape(panel.line[1])}</text>'
    return f'<path class="l" d="M{LEFT} {_n(y)}H{WIDTH - RIGHT}"/>{words}'


def series_svg(series: Series, panel: Panel, days: int, top: float, high: float) -> str:
    """The marks of a series, joined day to day where both are known; or its bars."""
    spots = [
        (x_of(place, days), y_of(value, panel, top, high))
        for place, value in enumerate(series.values)
        if value is not None
    ]
    if series.mark == "bar":
        return bars_svg(spots, days, top + high)
    known = [place for place, value in enumerate(series.values) if value is not None]
    path, before = "", -9
    for place, (x, y) in zip(known, spots, strict=True):
        path += f"{'L' if place - before <= NEAR_DAYS else 'M'}{_n(x)} {_n(y)}"
        before = place
    width = "t" if series.mark == "ring" else "d" if series.mark == "square" else "s"
    line = f'<path class="{width}" d="{path}"/>' if path else ""
    return line + "".join(mark_svg(series.mark, x, y) for x, y in spots)


NEAR_DAYS: Final = 3  # readings further apart are not joined; set here


def stop_svg(place: int, word: str, days: int, foot: float) -> str:
    """A line through all panels at one day, with its word at the top."""
    x = x_of(place, days)
    line = f'<path class="v" d="M{_n(x)} 32V{_n(foot - 10)}"/>'
    return f'{line}<text x="{_n(x + 3)}" y="42" class="n">{escape(word)}</text>'


def bars_svg(spots: list[tuple[float, float]], days: int, foot: float) -> str:
    """Bars from the foot; a nought is a short line, so that it differs from not known."""
    wide = min(BAR_MOST, 0.7 * (WIDTH - LEFT - RIGHT) / days)
    path = "".join(
        f"M{_n(x - wide / 2)} {_n(foot)}V{_n(min(y, foot - 1))}h{_n(wide)}V{_n(foot)}z"
        for x, y in spots
    )
    return f'<path class="b" d="{path}"/>' if path else ""


def mark_svg(mark: str, x: float, y: float) -> str:
    """One mark: a wide ring, a small dot or a square, each still seen under the others."""
    if mark == "square":
        return f'<path class="q" d="M{_n(x - 4)} {_n(y - 4)}h8v8h-8z"/>'
    kind, wide = ("r", "5.5") if mark == "ring" else ("k", "2.3")
    return f'<circle class="{kind}" cx="{_n(x)}" cy="{_n(y)}" r="{wide}"/>'


def day_names(days: tuple[str, ...], top: float) -> str:
    """Day names under the columns: each day of a fortnight, else the first day of some weeks."""
    count = len(days)
    every = 1 if count <= MOST_DAY_NAMES else 7 * -(-count // (7 * MOST_WEEK_NAMES))
    places = range(0, count, every)
    out = ""
    for number_of, place in enumerate(places):
        on = date_of(days[place])
        if on is None:
            continue
        kind = "m o" if number_of % 2 and len(places) > MOST_NARROW else "m"
        at = f'<text x="{_n(x_of(place, count))}" class="{kind}" y='
        if every == 1:
            out += f'{at}"{_n(top + 8)}">{WEEKDAYS[on.weekday()]}</text>'
        out += f'{at}"{_n(top + 8 + LINE)}">{on.day} {MONTHS[on.month - 1]}</text>'
    return out


def _n(value: float) -> str:
    return number(value, 1)
