"""Reads and matches the phrase patterns in which the warning signs are written down.

A pattern is words in order: a small word is itself, CAPITALS a family, `a|b` either; `..` lets up
to three words stand between, `...` up to seven, `....` up to fourteen even over a full stop;
`A & B` is either order, up to seven apart; `^` at the front and `$` at the end mean that nothing
but filler words stands there. Filler words ("really", "my") may stand anywhere.
`a, b :: c / d e` is each of a, b followed by each of c, "d e".
Law: a pattern is tried only where its rarest word stands, and costs at most a fixed number of
steps there, so that time grows with the length of the text alone. Never raises on any text.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping, Sequence
    from collections.abc import Set as AbstractSet

    from coach.hearing.words import Word

GAPS: Final = {"..": 3, "...": 7, "....": 14}
OVER_STOPS: Final = 14
SENTENCE: Final = 2  # the pause of a full stop
FILLERS_BETWEEN: Final = 2
BLOCK: Final = 18  # words in a block; a phrase reaches no further than the next block
TRIES: Final = 3  # places tried for one step, so that the cost of a pattern is bounded

# words and families by how often they stood in our own labelled answers, the commonest first;
# a pattern is looked for from its rarest step
_COMMONEST: Final = (
    "FILLER BE BODY the ACHE PART ONTO MY PRON my NOT i COME NUM a SOCKETED IT MANY and PUT ARM "
    "in HAVE it AGAIN SHOULDER HANDS ON is on WENT TRAINING PAIN POP MOTOR arm SINCE shoulder of "
    "CANT MISSILE no OUT HEIGHT to out LEAK THING HAND NUMB was up BLOW at QUITS DIGIT BY hand "
    "FALL all like cant VEHICLE from ODD FEELING SWELL ELSEWHERE when pain CHANGED me got felt "
    "for with DAILY ELBOW elbow SLIP TIGHT OPPONENT fell have BULGE numb not after had NIGHTS "
    "POSITION BREAK LOST but night back COLD hit so one popped went SEAT last that good HOLD feel "
    "GROUND fingers now off HOT CHEST COLOUR POWER chest nothing its DROPPING cold down BREATH "
    "are LIFT WEAK pop since 3 has ball swollen WAKE feels weak throw couldnt STOP 2 today there "
    "just two KEEP bit LEG 4 little go im lift FRACTURE SHAPE as BREAKS_LIKE lost over hurts this "
    "6 by FLUTTER WORN side dropped LOOK am 5 every TIRED day FEVER CRASH then came too tingling "
    "7 sleep slipped or hot fever right been yes broke dead didnt TIGHTER HEART because PUSH hurt "
    "game tight before heart left hard"
)
_RARITY: Final = {key: place for place, key in enumerate(_COMMONEST.split())}


class Step(NamedTuple):
    """One item of a pattern: the keys that fit, and how many words may stand before it."""

    keys: frozenset[str]
    gap: int


class Pattern(NamedTuple):
    """A phrase: its steps, the step looked for first, and how far before it the phrase may start.

    `others` are the keys of the steps but the rarest; `owner` is its place in the table it came from, `text` how it is written down; `opens` and
    `closes` tie it to the start and the end of the answer.
    """

    steps: tuple[Step, ...]
    others: tuple[frozenset[str], ...]
    owner: int
    text: str
    anchor: int
    reach: int
    opens: bool
    closes: bool


class Match(NamedTuple):
    """Where a pattern fits: its owner and the places of the words that fitted its steps."""

    owner: int
    at: tuple[int, ...]
    text: str


def _both_orders(items: list[str]) -> list[list[str]]:
    if "&" not in items:
        return [items]
    cut = items.index("&")
    left, right = items[:cut], items[cut + 1 :]
    return [[*left, "...", *right], [*right, "...", *left]]


def _anchor(steps: Sequence[Step]) -> int:
    """The step with the rarest words; of several, the one with the fewest, then the first."""

    def rarity(place: int) -> tuple[int, int, int]:
        keys = steps[place].keys
        return min(_RARITY.get(key, len(_RARITY)) for key in keys), -len(keys), -place

    return max(range(len(steps)), key=rarity)


def parsed(text: str, owner: int) -> list[Pattern]:
    """The pattern written as `text`; two of them when it holds `&`."""
    opens, closes = text.startswith("^ "), text.endswith(" $")
    out: list[Pattern] = []
    for items in _both_orders(text.removeprefix("^ ").removesuffix(" $").split()):
        steps: list[Step] = []
        gap = 0
        for item in items:
            if item in GAPS:
                gap = GAPS[item]
                continue
            steps.append(Step(frozenset(item.split("|")), gap))
            gap = 0
        anchor = _anchor(steps)
        reach = sum(step.gap + FILLERS_BETWEEN + 1 for step in steps[1 : anchor + 1])
        others = tuple(step.keys for k, step in enumerate(steps) if k != anchor)
        out.append(Pattern(tuple(steps), others, owner, text, anchor, reach, opens, closes))
    return out


def written_out(line: str) -> Iterator[str]:
    """The patterns of one line: `a, b :: c / d` is each head with each tail."""
    heads, mark, tails = line.partition("::")
    if not mark:
        yield line.strip()
        return
    for head in heads.split(","):
        for tail in tails.split("/"):
            yield f"{head.strip()} {tail.strip()}"


def parted(blocks: Iterable[tuple[str, int]]) -> Iterator[tuple[str, int]]:
    """The single lines of blocks of text, each with its block's owner."""
    for block, owner in blocks:
        for line in block.splitlines():
            if line.strip():
                yield line.strip(), owner


class Table:
    """Patterns by the words to look for first; read from their lines on first need."""

    __slots__ = ("_index", "lines")

    def __init__(self, lines: Iterable[tuple[str, int]]) -> None:
        self.lines = tuple(lines)
        self._index: dict[str, tuple[Pattern, ...]] | None = None

    def index(self, _present: AbstractSet[str]) -> Mapping[str, Sequence[Pattern]]:
        """The patterns by each key of their rarest step."""
        if self._index is None:
            by_key: dict[str, list[Pattern]] = {}
            for line, owner in parted(self.lines):
                for text in written_out(line):
                    for pattern in parsed(text, owner):
                        for key in pattern.steps[pattern.anchor].keys:
                            by_key.setdefault(key, []).append(pattern)
            self._index = {key: tuple(found) for key, found in by_key.items()}
        return self._index

    def with_lines(self, lines: Iterable[tuple[str, int]]) -> Table:
        """A table of these and more patterns."""
        return Table((*self.lines, *lines))


class Phrases:
    """Many phrases, of which only those whose first word is there are read; for large tables."""

    __slots__ = ("_by_head", "_read", "blocks", "lines")

    def __init__(self, blocks: Iterable[tuple[str, int]]) -> None:
        self.blocks = tuple(blocks)
        self.lines: tuple[tuple[str, int], ...] = ()
        self._read: dict[int, tuple[Pattern, ...]] = {}
        self._by_head: dict[str, list[int]] = {}

    def _read_heads(self) -> None:
        """The lines by their first word, on first need."""
        self.lines = tuple(parted(self.blocks))
        for place, (line, _) in enumerate(self.lines):
            for head in line.partition("::")[0].split(","):
                for key in head.split(maxsplit=1)[0].split("|"):
                    self._by_head.setdefault(key, []).append(place)

    def index(self, present: AbstractSet[str]) -> Mapping[str, Sequence[Pattern]]:
        """The phrases that may fit, by each key of their rarest step."""
        if not self.lines:
            self._read_heads()
        places = {place for key in present for place in self._by_head.get(key, ())}
        out: dict[str, list[Pattern]] = {}
        for place in sorted(places):
            for pattern in self._patterns(place):
                for key in pattern.steps[pattern.anchor].keys:
                    if key in present:
                        out.setdefault(key, []).append(pattern)
        return out

    def _patterns(self, place: int) -> tuple[Pattern, ...]:
        found = self._read.get(place)
        if found is None:
            line, owner = self.lines[place]
            found = tuple(p for text in written_out(line) for p in parsed(text, owner))
            self._read[place] = found
        return found


def phrases(text: str) -> Phrases:
    """The phrases written one a line."""
    return Phrases(((text, 0),))


def table(text: str, owner: int = 0) -> Table:
    """A table of the patterns written one a line."""
    return Table(((text, owner),))


def _next(words: Sequence[Word], place: int, step: Step, *, close: bool) -> list[int]:
    """The places after `place` where `step` may fit, nearest first, at most `TRIES`."""
    out: list[int] = []
    keys, gap = step
    fillers = between = 0
    for here in range(place + 1, min(place + gap + FILLERS_BETWEEN + 2, len(words))):
        word = words[here]
        if word.pause and (close or (word.pause == SENTENCE and gap < OVER_STOPS)):
            break
        if not keys.isdisjoint(word.keys):
            out.append(here)
            if gap == 0 or len(out) == TRIES:
                break
        if "FILLER" in word.keys and fillers < FILLERS_BETWEEN:
            fillers += 1
        else:
            between += 1
        if between > gap:
            break
    return out


def _rest(
    words: Sequence[Word], taken: tuple[int, ...], steps: tuple[Step, ...], *, close: bool
) -> tuple[int, ...] | None:
    """The places of all steps after those taken, nearest first, or None."""
    if len(taken) == len(steps):
        return taken
    for here in _next(words, taken[-1], steps[len(taken)], close=close):
        found = _rest(words, (*taken, here), steps, close=close)
        if found is not None:
            return found
    return None


def _at_ends(words: Sequence[Word], at: Sequence[int], pattern: Pattern) -> bool:
    """Whether a pattern tied to the start or the end of the answer stands there."""
    front = range(at[0]) if pattern.opens else ()
    back = range(at[-1] + 1, len(words)) if pattern.closes else ()
    return all("FILLER" in words[place].keys for side in (front, back) for place in side)


def _starts(words: Sequence[Word], place: int, pattern: Pattern) -> Iterator[int]:
    """Where the pattern may start so that its rarest step falls on the word at `place`."""
    if pattern.anchor == 0:
        yield place
        return
    first = pattern.steps[0].keys
    for start in range(max(0, place - pattern.reach), place):
        if not first.isdisjoint(words[start].keys):
            yield start


def _fits_near(
    words: Sequence[Word], place: int, pattern: Pattern, *, close: bool
) -> Iterator[tuple[int, ...]]:
    for start in _starts(words, place, pattern):
        at = _rest(words, (start,), pattern.steps, close=close)
        if at is not None and _at_ends(words, at, pattern):
            yield at


def _nearby(words: Sequence[Word]) -> list[set[str]]:
    """For each block of words, all keys in it and in the blocks beside it."""
    blocks = [
        set().union(*(word.keys for word in words[start : start + BLOCK]))
        for start in range(0, len(words), BLOCK)
    ]
    if len(blocks) == 1:
        return blocks
    return [set().union(*blocks[max(0, b - 1) : b + 2]) for b in range(len(blocks))]


def matches(
    words: Sequence[Word], patterns: Table | Phrases, *, close: bool = False
) -> list[Match]:
    """Every fit of every pattern; `close` ends a phrase at any pause."""
    nearby = _nearby(words)
    index = patterns.index(set().union(*nearby))
    out: dict[tuple[str, tuple[int, ...]], Match] = {}
    for place, word in enumerate(words):
        present = nearby[place // BLOCK]
        for key in word.keys:
            for pattern in index.get(key, ()):
                for others in pattern.others:
                    if others.isdisjoint(present):
                        break
                else:
                    for at in _fits_near(words, place, pattern, close=close):
                        out[pattern.text, at] = Match(pattern.owner, at, pattern.text)
    return list(out.values())
