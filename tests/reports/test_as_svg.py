"""Pictures: every mark stands where its number says, and what is not known has none."""

from __future__ import annotations

import re
import statistics
from xml.etree import ElementTree as ET

import pytest

from coach.reports.as_svg import as_svg
from coach.reports.page import Panel, Picture, Series
from tests.reports import made_up

DAYS = tuple(made_up.day(n) for n in range(14))


def drawn(*series: Series, low: float = 0, high: float = 10, **more: object) -> ET.Element:
    panel = Panel("Pain, 0 to 10", low, high, series)
    picture = Picture("Two weeks", "Words for the ear.", DAYS, (panel,))._replace(**more)  # type: ignore[arg-type]
    return ET.fromstring(as_svg(picture, "x"))  # noqa: S314 - our own drawing


def circles(root: ET.Element, kind: str) -> list[tuple[float, float]]:
    """Marks after the one in the key."""
    found = [c for c in root.iter("circle") if c.get("class") == kind]
    return [(float(c.get("cx", "")), float(c.get("cy", ""))) for c in found]


def bars(root: ET.Element) -> list[tuple[float, float, float]]:
    """Left edge, top and foot of each bar."""
    path = next(p.get("d", "") for p in root.iter("path") if p.get("class") == "b")
    found = re.findall(r"M([\d.]+) ([\d.]+)V([\d.]+)h[\d.]+V[\d.]+z", path)
    return [(float(x), float(top), float(foot)) for x, foot, top in found]


VALUES = (0.0, 1.0, None, 2.5, 10.0, 7.5, None, None, None, 4.0, 3.3, 0.0, 9.9, 5.0)


def test_marks_lie_on_one_straight_line_of_value_and_height() -> None:
    root = drawn(Series("at rest", "dot", VALUES))
    marks = circles(root, "k")
    known = [value for value in VALUES if value is not None]
    assert len(marks) == len(known)
    heights = [y for _x, y in marks]
    line = statistics.linear_regression(known, heights)
    assert line.slope < 0
    for value, height in zip(known, heights, strict=True):
        assert height == pytest.approx(line.intercept + line.slope * value, abs=0.11)
    ends = {t.text: float(t.get("y", "")) - 4 for t in root.iter("text") if t.text in {"0", "10"}}
    assert ends["0"] == pytest.approx(line.intercept, abs=0.15)
    assert ends["10"] == pytest.approx(line.intercept + 10 * line.slope, abs=0.15)


def test_days_stand_in_even_steps() -> None:
    root = drawn(Series("at rest", "dot", tuple(1.0 for _ in DAYS)))
    places = [x for x, _y in circles(root, "k")]
    line = statistics.linear_regression(range(14), places)
    assert line.slope > 0
    for number, place in enumerate(places):
        assert place == pytest.approx(line.intercept + line.slope * number, abs=0.11)


def test_bars_are_as_high_as_their_numbers() -> None:
    values = (1.0, 2.0, None, 4.0, 8.0, *([None] * 9))
    heights = [foot - top for _x, top, foot in bars(drawn(Series("sleep", "bar", values)))]
    assert heights == pytest.approx([heights[0] * n for n in (1, 2, 4, 8)], abs=0.2)


def test_a_nought_is_drawn_and_what_is_not_known_is_not() -> None:
    values = (0.0, None, *([5.0] * 12))
    assert len(bars(drawn(Series("sleep", "bar", values)))) == 13
    assert bars(drawn(Series("sleep", "bar", values)))[0][2] > 0
    assert all(p.get("class") != "b" for p in drawn(Series("s", "bar", (None,) * 14)).iter("path"))


def test_readings_far_apart_are_not_joined() -> None:
    near = drawn(Series("r", "dot", (1.0, None, None, 2.0, *([None] * 10))))
    far = drawn(Series("r", "dot", (1.0, None, None, None, 2.0, *([None] * 9))))
    paths = [
        next(p.get("d", "") for p in r.iter("path") if p.get("class") == "s") for r in (near, far)
    ]
    assert [path.count("L") for path in paths] == [1, 0]


def test_a_value_outside_the_scale_stays_in_its_panel() -> None:
    root = drawn(Series("at rest", "dot", (99.0, -5.0, 10.0, 0.0, *([None] * 10))))
    heights = [y for _x, y in circles(root, "k")]
    assert heights[0] == heights[2]
    assert heights[1] == heights[3]


def test_series_are_told_apart_by_shape_and_named_in_the_key() -> None:
    root = drawn(
        Series("on waking", "ring", (1.0,) * 14),
        Series("at rest", "dot", (2.0,) * 14),
        Series("in a set", "square", (3.0,) * 14),
    )
    assert len(circles(root, "r")) == len(circles(root, "k")) == 15
    assert sum(p.get("class") == "q" for p in root.iter("path")) == 15
    words = {t.text for t in root.iter("text")}
    assert {"on waking", "at rest", "in a set"} <= words


def test_title_and_words_are_there_and_hostile_names_make_no_markup() -> None:
    root = drawn(
        Series("<b>&'", "dot", (1.0,) * 14), Series("x", "ring", (1.0,) * 14),
        title="</title><script>", told='"<desc>', marks=((3, "stop <S08>"),),
    )  # fmt: skip
    assert root.get("role") == "img"
    assert root.find("title") is not None
    assert "".join(root.itertext()).count("<script>") == 1
    assert not list(root.iter("script"))
    assert "stop <S08>" in {t.text for t in root.iter("text")}


@pytest.mark.parametrize(
    ("count", "most"), [(1, 2), (7, 14), (14, 28), (15, 13), (84, 13), (365, 13)]
)
def test_day_names_never_crowd(count: int, most: int) -> None:
    days = tuple(made_up.day(n) for n in range(count))
    panel = Panel("Sleep, h", 0, 10, (Series("sleep", "bar", (8.0,) * count),))
    root = ET.fromstring(as_svg(Picture("t", "d", days, (panel,)), "x"))  # noqa: S314 - our own drawing
    names = [t for t in root.iter("text") if t.get("class") in {"m", "m o"}]
    assert 1 <= len(names) <= most
    # What stays on a narrow screen: at most 8 places, so that wider letters still fit.
    stay = {t.get("x") for t in names if t.get("class") == "m"}
    assert len(stay) <= 8
    places = {t.get("x") for t in names}
    assert len(stay) == (len(places) if len(places) <= 8 else -(-len(places) // 2))
