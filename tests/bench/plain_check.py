"""The floor `coach check` is measured against: the least a strict check of the same files does.

A strict reading with a place for every key and value (libyaml, no types guessed, anchors, tags and
keys said twice refused) and a strict `pydantic` model behind it, in which a number is a number
inside its bounds. It knows the form of the files and nothing else: no sentence is looked at, no two
lines are held against each other.
"""

from __future__ import annotations

from pathlib import Path
from typing import Annotated, Any, Literal, NamedTuple

import yaml
from pydantic import BaseModel, BeforeValidator, ConfigDict, Field, StringConstraints, TypeAdapter

Path_ = tuple[str | int, ...]
Marks = dict[Path_, tuple[int, int]]
DEEPEST = 40


class _Loader(yaml.CSafeLoader):
    """libyaml without any type to guess."""


_Loader.yaml_implicit_resolvers = {}


class Places(NamedTuple):
    """Where each key and each value stands, by its path; lines and columns from 1."""

    keys: Marks
    values: Marks


def read_strictly(text: str) -> tuple[Any, Places]:
    """The text as maps, lists and words, with its places. Raises ValueError on what is no word."""
    for event in yaml.parse(text, Loader=yaml.CSafeLoader):
        if getattr(event, "anchor", None) is not None or getattr(event, "tag", None) is not None:
            raise ValueError(event.start_mark)
    places = Places({}, {})
    return _walked(yaml.compose(text, Loader=_Loader), (), places), places


def _walked(node: yaml.Node | None, path: Path_, places: Places) -> Any:
    if node is None or len(path) > DEEPEST:
        raise ValueError(path)
    places.values[path] = (node.start_mark.line + 1, node.start_mark.column + 1)
    if isinstance(node, yaml.ScalarNode):
        return node.value if node.value or node.style else None
    if not isinstance(node, yaml.CollectionNode) or node.flow_style:
        raise ValueError(node.start_mark)
    if isinstance(node, yaml.SequenceNode):
        return [_walked(item, (*path, index), places) for index, item in enumerate(node.value)]
    found: dict[str, Any] = {}
    for key, value in node.value:
        below = (*path, key.value)
        if below in places.keys:
            raise ValueError(key.start_mark, places.keys[below])
        places.keys[below] = (key.start_mark.line + 1, key.start_mark.column + 1)
        found[key.value] = _walked(value, below, places)
    return found


class _Strict(BaseModel):
    model_config = ConfigDict(strict=True, extra="forbid", frozen=True)


Name = Annotated[str, StringConstraints(pattern=r"^[a-z0-9][a-z0-9'/-]*( [a-z0-9'/-]+)*$")]
Sentence = Annotated[str, StringConstraints(min_length=1)]


def _without_unit(typed: object) -> object:
    figure, _, unit = str(typed).partition(" ")
    return int(figure) if figure.isdecimal() and unit in {"", "s", "days"} else typed


def _dose_line(typed: object) -> object:
    opening, *rest = str(typed).split(", ")
    steps = {"up by ": "by", "up after ": "after", "at most ": "cap"}
    found: dict[str, object] = {"opening": opening.removesuffix(" only")}
    for piece in rest:
        lead = next((lead for lead in steps if piece.startswith(lead)), "")
        found[steps.get(lead, piece)] = piece.removeprefix(lead)
    return found


def _span(typed: object) -> object:
    low, _, high = str(typed).partition(" to ")
    return [_without_unit(low), _without_unit(high or low)]


Whole = Annotated[int, BeforeValidator(_without_unit), Field(ge=0, le=365)]
Seconds = Annotated[int, BeforeValidator(_without_unit), Field(ge=1, le=600)]
Days = Annotated[int, BeforeValidator(_without_unit), Field(ge=0, le=365)]
Span = Annotated[list[int], BeforeValidator(_span), Field(min_length=2, max_length=2)]
Names = Annotated[str, StringConstraints(pattern=r"^[^,]+(, [^,]+)*$")]
Call = Annotated[str, StringConstraints(pattern=r"^[+0-9][0-9 ()-]+, .+$")]


class _Fault(_Strict):
    name: Name
    felt_as: Sentence = Field(alias="felt as")
    put_right: Sentence = Field(alias="put right")
    if_it_stays: Literal["lighter", "shorter range", "easier version", "leave out"] | None = Field(
        None, alias="if it stays"
    )


class _Version(_Strict):
    version: Name
    level: Annotated[int, BeforeValidator(_without_unit), Field(ge=1, le=9)]
    fits: Sentence | None = None
    set_up: list[Sentence] = Field([], alias="set-up")
    cues: list[Sentence] = []


class _Exercise(_Strict):
    exercise: Name
    family: Name
    works: Literal["one side", "both sides"]
    counted_in: Literal["reps", "holds"] = Field(alias="counted in")
    load: Literal["dumbbell", "band", "ball", "none"] = "none"
    equipment: Names | None = None
    set_up: list[Sentence] = Field(alias="set-up")
    cues: list[Sentence]
    watch_for: list[_Fault] = Field([], alias="watch for")
    range: list[dict[Name, Sentence]] = []
    versions: list[_Version] = []
    stand_in_band: Sentence | None = Field(None, alias="stand-in for band")
    stand_in_dumbbell: Sentence | None = Field(None, alias="stand-in for dumbbell")
    stand_in_towel: Sentence | None = Field(None, alias="stand-in for towel")


class _Phase(_Strict):
    phase: Name
    opens_when: str | None = Field(None, alias="opens when")
    clinician_sees: Sentence | None = Field(None, alias="clinician sees")
    exercises: Names


class _Program(_Strict):
    program: Name
    about: Sentence
    written_by: str = Field(alias="written by")
    languages: Names
    questions: Sentence
    walls: dict[str, Names]
    warm_up: Names = Field(alias="warm-up")
    gentle: Names
    twice_a_day: Names = Field(alias="twice a day")
    recovery: Names
    phases: list[_Phase]


class _Line(_Strict):
    """A line of a script; the branches are read apart, since their key is a sentence."""

    tell: Sentence | None = None
    ask: Name | None = None
    ask_also: Name | None = Field(None, alias="ask also")
    words: Sentence | None = None
    answers: Names | None = None
    every: Days | None = None
    note: Sentence | None = None
    stop: Literal["emergency now", "same day", "before next session"] | None = None
    today: Names | None = None
    leave_out: Names | None = Field(None, alias="leave out")
    one_set_fewer: Names | None = Field(None, alias="one set fewer")
    shorter_range: Names | None = Field(None, alias="shorter range")
    easier_version: Names | None = Field(None, alias="easier version")
    lighter: Names | None = None
    no_step_up: Names | None = Field(None, alias="no step up")


_Test = Annotated[str, StringConstraints(pattern=r"^when .+ is .+$")]
_Branch2 = dict[_Test, list[_Line]]
_Branch1 = dict[_Test, list[_Line | _Branch2]]


class _Script(_Strict):
    script: Name
    lines: list[_Line | dict[_Test, list[_Line | _Branch1]]]


class _Ladder(_Strict):
    opening: Span
    by: Whole | None = None
    after: Days | None = None
    cap: Whole | None = None


class _WordLadder(_Strict):
    opening: Sentence
    by: Sentence | None = None
    after: Days | None = None
    cap: Sentence | None = None


Figures = Annotated[_Ladder, BeforeValidator(_dose_line)]
Words = Annotated[_WordLadder, BeforeValidator(_dose_line)]


class _Dose(_Strict):
    sets: Figures
    reps: Figures | None = None
    hold: Figures | None = None
    load: Words | None = None
    range: Words | None = None
    versions: Names | None = None
    goes_up: Names | None = Field(None, alias="goes up")
    tempo: Sentence | None = None
    rest: Seconds
    apart: Days
    without_band: Name | None = Field(None, alias="without band")
    without_dumbbell: Name | None = Field(None, alias="without dumbbell")
    without_towel: Name | None = Field(None, alias="without towel")


class _Plan(_Strict):
    plan: Sentence
    program: Name
    athlete: Names
    side: Literal["left", "right"]
    surgery: Sentence
    runs: Names
    phase: Names
    call: dict[Name, Call]
    clearance: Names
    pain: Names
    limits: Names
    at_home: Names = Field(alias="at home")
    throwing: Names
    not_used: Names = Field(alias="not used")
    doses: dict[Name, _Dose]


_KINDS: dict[str, TypeAdapter[Any]] = {
    "program": TypeAdapter(_Program),
    "exercise": TypeAdapter(_Exercise),
    "script": TypeAdapter(_Script),
    "plan": TypeAdapter(_Plan),
}


def check(folder: Path) -> int:
    """Read and validate every file below `folder`; how many there are. Raises on the first slip."""
    files = sorted(folder.rglob("*.yaml"))
    for file in files:
        tree, _ = read_strictly(file.read_text(encoding="utf-8"))
        _KINDS[next(iter(tree))].validate_python(tree)
    return len(files)
