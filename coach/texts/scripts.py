"""A script file to a `Script`: the talk of one moment, its branches made flat.

Law: the coach's own questions stand in it once, in the coach's order, in no branch; effects stand
only in branches. There is no jump and no loop, so every line ends somewhere.
"""

from __future__ import annotations

from typing import Final, NamedTuple

from coach.model.program import Place, Script, Step, Test
from coach.texts import facts, values
from coach.texts.conditions import (
    Reach,
    narrowed,
    read_test,
    split_conditions,
    whole_reach,
)
from coach.texts.facts import Fact
from coach.texts.fields import Fields, only_map
from coach.texts.margin import Margin, did_you_mean, near_line, nearest
from coach.texts.questions import answers_fact, read_answers, read_question_words
from coach.texts.words import Voice
from coach.texts.yaml_lines import Listed, Mapped, Node, Pair, Text

DEEPEST_BRANCH: Final = 3
LINE_KINDS: Final = ("tell", "ask", "ask also", "note", "stop", "today", *facts.EFFECTS)


class Known(NamedTuple):
    """What a script may name: exercises by name, faults, phases, and facts asked before."""

    exercises: tuple[str, ...]
    facts: dict[str, Fact]
    filled: dict[str, Fact]  # facts whose choices are the program's own names
    own: dict[str, Place]


class Branch(NamedTuple):
    """Where a line stands: the tests around it, what they leave possible, the facts known there."""

    depth: int
    tests: tuple[int, ...]
    reach: dict[str, Reach]
    known: dict[str, Fact]


class ScriptReader:
    """Reads one script; `known` is what earlier moments have surely asked."""

    def __init__(self, moment: str, known: Known, margin: Margin, voice: Voice) -> None:
        """Begin with nothing asked in this moment."""
        self.moment = moment
        self.own_facts: dict[str, Fact] = {}
        self.sure_facts: list[str] = []  # own facts asked in no branch
        self._known = known
        self._margin = margin
        self._voice = voice
        self._steps: list[Step] = []
        self._tests: dict[Test, int] = {}  # with its place among them
        self._acting: set[int] = set()
        self._asked: list[tuple[str, Place]] = []

    def read(self, items: tuple[Node, ...], place: Place) -> Script:
        """The script of these lines."""
        top = Branch(0, (), {}, dict(self._known.facts))
        self._lines(items, top)
        self._check_asks(place)
        acting = tuple(sorted(self._acting))
        return Script(self.moment, tuple(self._steps), tuple(self._tests), acting, place)

    # ------------------------------------------------------------ lines

    def _lines(self, items: tuple[Node, ...], branch: Branch) -> None:
        stopped: Place | None = None
        for item in items:
            tree = only_map(item, self._margin, "A line of a script")
            if tree is None:
                continue
            if stopped is not None:
                what = "A line stands after the stop that ends its branch."
                self._margin.note("stop.not_last", tree.place, what, also=stopped)
            self._line(tree, branch)
            if tree.pairs[0].key.value == "stop":
                stopped = tree.place

    def _line(self, tree: Mapped, branch: Branch) -> None:
        kind = tree.pairs[0].key.value
        if kind.startswith("when ") or kind == "when":
            self._when(tree, branch)
        elif kind == "tell":
            self._tell(tree, branch)
        elif kind == "ask":
            self._ask(tree, branch)
        elif kind == "ask also":
            self._ask_also(tree, branch)
        elif kind in LINE_KINDS:
            self._effect(tree, branch)
        else:
            what = f'A script has no line "{kind}".{did_you_mean(kind, (*LINE_KINDS, "when"))}'
            key = tree.pairs[0].key
            write = near_line(self._margin, key.place, kind, (*LINE_KINDS, "when"))
            self._margin.note("script.line_unknown", key.place, what, write)

    def _add(self, step: Step) -> None:
        self._steps.append(step)

    def _tell(self, tree: Mapped, branch: Branch) -> None:
        fields = Fields(tree, self._margin, "The line")
        sentence = fields.sentence("tell", self._voice)
        fields.close(("tell",))
        self._add(Step("tell", branch.tests, tree.place, text=sentence))

    # ------------------------------------------------------------ the coach's questions

    def _ask(self, tree: Mapped, branch: Branch) -> None:
        fields = Fields(tree, self._margin, "The question")
        asked = fields.text("ask", "- ask: pain now")
        if asked is None:
            return
        coach_asks = [fact.name for fact in facts.ASKS[self.moment]]
        name = facts.SAME_ASK.get(asked.value, asked.value)
        if asked.value in facts.FLAG_NAMES:
            self._no_own_words(fields, asked)
        elif name in coach_asks:
            self._one_of_the_coachs(name, asked, branch)
        else:
            self._note_unknown_ask(asked, coach_asks)
        self._add(self._ask_step(fields, asked, branch))
        fields.close(("ask", "words", "wording"))

    def _ask_step(self, fields: Fields, asked: Text, branch: Branch) -> Step:
        screen = asked.value.startswith("screen ")
        words = ""
        if screen:
            self._no_own_words(fields, asked)
        elif asked.value not in facts.FLAG_NAMES and fields.pair("words"):
            words = read_question_words(fields, self._voice)
        wording = self._wording(fields, screen=screen)
        return Step("ask", branch.tests, asked.place, words, asked.value, wording)

    def _wording(self, fields: Fields, *, screen: bool) -> int:
        text = fields.text("wording")
        if text is None:
            return 1
        if screen and text.value in ("1", "2"):
            return int(text.value)
        what = "A screen question has two reviewed wordings, 1 and 2; no other question has any."
        self._margin.note("ask.wording", text.place, what)
        return 1

    def _no_own_words(self, fields: Fields, asked: Text) -> None:
        pair = fields.pair("words")
        if pair is not None:
            what = f'The words of "{asked.value}" stay the coach\'s own.'
            write = "wording: 2" if asked.value.startswith("screen ") else ""
            self._margin.note("screen.reworded", pair.key.place, what, write)

    def _one_of_the_coachs(self, name: str, asked: Text, branch: Branch) -> None:
        if branch.tests:
            what = f'"{asked.value}" is the coach\'s question and stands in a branch.'
            self._margin.note("ask.in_branch", asked.place, what)
        earlier = [place for known, place in self._asked if known == name]
        if earlier:
            what = f'"{asked.value}" is asked twice in this script.'
            self._margin.note("ask.twice", asked.place, what, also=earlier[0])
        self._asked.append((name, asked.place))
        self._learn(name, branch)

    def _learn(self, name: str, branch: Branch) -> None:
        for fact in facts.ASKS[self.moment]:
            if fact.name == name:
                branch.known[name] = self._known.filled.get(name, fact)
        if name == "reps in set":
            branch.known["holds in set"] = facts.SET_FACTS[0]

    def _note_unknown_ask(self, asked: Text, coach_asks: list[str]) -> None:
        elsewhere = [m for m, asks in facts.ASKS.items() if asked.value in [a.name for a in asks]]
        if elsewhere:
            what = f'"{asked.value}" is asked in the script "{elsewhere[0]}".'
            self._margin.note("ask.other_moment", asked.place, what)
            return
        near = nearest(asked.value, coach_asks)
        if near:
            self._asked.append((near, asked.place))
        what = f'The coach has no question "{asked.value}" in this moment.'
        what += did_you_mean(asked.value, coach_asks)
        self._margin.note("ask.unknown", asked.place, what, f"- ask: {near}" if near else "")

    def _check_asks(self, place: Place) -> None:
        order = [fact.name for fact in facts.ASKS[self.moment]]
        asked = [name for name, _ in self._asked]
        for name in order:
            if name not in asked:
                self._note_left_out(name, place)
        kept = [name for name in order if name in asked]
        once = list(dict.fromkeys(asked))
        if once != kept:
            first = next(i for i, (a, b) in enumerate(zip(once, kept, strict=True)) if a != b)
            where = next(place for name, place in self._asked if name == once[first])
            what = f'"{kept[first]}" comes before "{once[first]}".'
            self._margin.note("ask.order", where, what, f"- ask: {kept[first]}")

    def _note_left_out(self, name: str, place: Place) -> None:
        check = "screen.left_out" if name.startswith("screen ") else "ask.left_out"
        what = f'The coach\'s question "{name}" is left out.'
        self._margin.note(check, place, what, f"- ask: {name}")

    # ------------------------------------------------------------ the clinician's questions

    def _ask_also(self, tree: Mapped, branch: Branch) -> None:
        fields = Fields(tree, self._margin, "The question")
        called = fields.text("ask also", "- ask also: ache kind")
        name = values.name(called, self._margin, "a question") if called else None
        words = read_question_words(fields, self._voice)
        answers = read_answers(fields, self._voice)
        every = self._every(fields)
        fields.close(("ask also", "words", "answers", "every"))
        if name is None or called is None:
            return
        if answers is None:
            branch.known[name] = Fact(name, "unread")
            return
        self._check_new_name(name, called)
        self.own_facts[name] = branch.known[name] = answers_fact(name, answers)
        if branch.depth == 0:
            self.sure_facts.append(name)
        step = Step("ask also", branch.tests, called.place, words, name, answers=answers)
        self._add(step._replace(every_days=every))

    def _every(self, fields: Fields) -> int:
        text = fields.text("every")
        if text is None:
            return 0
        bounds = values.Bounds("days", 2, 28)
        return int(values.number(text, self._margin, bounds, "The days between") or 0)

    def _check_new_name(self, name: str, called: Text) -> None:
        taken = name in facts.FLAG_NAMES or name in _coach_names()
        if taken:
            what = f'"{name}" is the name of a question of the coach.'
            self._margin.note("name.taken", called.place, what)
        earlier = self._known.own.get(name)
        if earlier is not None:
            what = f'The question "{name}" stands twice.'
            self._margin.note("name.twice", called.place, what, also=earlier)
        self._known.own[name] = called.place

    # ------------------------------------------------------------ branches

    def _when(self, tree: Mapped, branch: Branch) -> None:
        if len(tree.pairs) > 1:
            what = "A second key stands beside a when."
            self._margin.note("when.form", tree.pairs[1].key.place, what)
        pair = tree.pairs[0]
        inner = self._inner(pair, branch)
        if not isinstance(pair.value, Listed):
            self._margin.note("when.empty", pair.key.place, "The branch holds no lines.")
            return
        self._lines(pair.value.items, inner)

    def _inner(self, pair: Pair, branch: Branch) -> Branch:
        if branch.depth >= DEEPEST_BRANCH:
            what = f"A branch stands more than {DEEPEST_BRANCH} deep."
            self._margin.note("when.too_deep", pair.key.place, what)
        words = pair.key.value.removeprefix("when").strip()
        text = Text(words, values.place_after(pair.key, len("when ")))
        tests = branch.tests
        reach = dict(branch.reach)
        for piece in split_conditions(text):
            test = read_test(piece, branch.known, self._margin)
            if test is None:
                continue
            tests = (*tests, self._index(test))
            self._narrow(test, piece, reach, branch)
        return Branch(branch.depth + 1, tests, reach, dict(branch.known))

    def _index(self, test: Test) -> int:
        return self._tests.setdefault(test, len(self._tests))

    def _narrow(self, test: Test, piece: Text, reach: dict[str, Reach], branch: Branch) -> None:
        fact = branch.known[test.fact]
        before = reach.get(test.fact, whole_reach(fact))
        after = narrowed(before, test, fact)
        if after.empty():
            self._margin.note("when.never", piece.place, f'"{piece.value}" never holds here.')
        elif after == before:
            self._margin.note("when.always", piece.place, f'"{piece.value}" always holds here.')
        reach[test.fact] = after if not after.empty() else before

    # ------------------------------------------------------------ effects

    def _effect(self, tree: Mapped, branch: Branch) -> None:
        pair = tree.pairs[0]
        for extra in tree.pairs[1:]:
            self._margin.note("key.unknown", extra.key.place, f'"{extra.key.value}" stands alone.')
        if not branch.tests:
            what = f'"{pair.key.value}" stands outside a branch.'
            self._margin.note("effect.outside", pair.key.place, what, "- when FACT is VALUE:")
        self._acting.update(branch.tests)
        text = values.plain_text(pair.value, self._margin, pair.key.value)
        if text is None:
            return
        if pair.key.value == "note":
            self._add(Step("note", branch.tests, pair.key.place, text=text.value))
        elif pair.key.value == "stop":
            self._stop(text, branch)
        elif pair.key.value == "today":
            self._today(text, branch)
        else:
            self._lowering(pair.key, text, branch)

    def _stop(self, text: Text, branch: Branch) -> None:
        tier = values.one_of(text, self._margin, facts.STOPS, "The stop")
        if tier is not None:
            step = Step("stop", branch.tests, text.place, effect="stop", target=tier)
            self._add(step)

    def _today(self, text: Text, branch: Branch) -> None:
        for piece in values.pieces(text):
            what = values.one_of(piece, self._margin, facts.TODAY, "Today's effect")
            if what == "no more exercises" and self.moment != "after a set":
                said = '"no more exercises" stands only after a set.'
                self._margin.note("effect.moment", piece.place, said)
            if what is not None:
                step = Step("effect", branch.tests, piece.place, effect="today", target=what)
                self._add(step)

    def _lowering(self, key: Text, text: Text, branch: Branch) -> None:
        known = (*self._known.exercises, "all")
        if self.moment in ("after a set", "before an exercise"):
            known = (*known, "this exercise")
        for piece in values.pieces(text):
            if piece.value not in known and self._margin.is_half_read("exercises"):
                continue
            if piece.value not in known:
                said = f'"{piece.value}" is no exercise here.{did_you_mean(piece.value, known)}'
                write = near_line(self._margin, piece.place, piece.value, known)
                self._margin.note("effect.target", piece.place, said, write)
                continue
            step = Step("effect", branch.tests, key.place, effect=key.value, target=piece.value)
            self._add(step)


def _coach_names() -> tuple[str, ...]:
    asked = [fact.name for asks in facts.ASKS.values() for fact in asks]
    diary = [fact.name for fact in (*facts.DIARY_FACTS, *facts.SET_FACTS)]
    return (*asked, *diary)
