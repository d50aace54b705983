"""Keys of one map, taken one by one: what is missing, what is unknown, what stands twice.

Law: a key that nobody takes is a finding (with the nearest known key), so no line of a clinician
is ever dropped in silence.
"""

from __future__ import annotations

import re

from coach.model.program import Place
from coach.texts import values
from coach.texts.margin import Margin, did_you_mean, near_line
from coach.texts.words import Voice
from coach.texts.yaml_lines import Blank, Listed, Mapped, Node, Pair, Text

_IN_LANGUAGE = re.compile(r"(.+) in ([A-Z][a-z]+)")


class Fields:
    """The keys of a map while a reader takes them. `where` names the thing for findings."""

    def __init__(self, node: Mapped, margin: Margin, where: str) -> None:
        """Hold the map's pairs by key."""
        self.place = node.place
        self.margin = margin
        self.where = where
        self._pairs = node.by_key
        self._taken: set[str] = set()

    def pair(self, key: str) -> Pair | None:
        """The pair of `key`, now taken, or None."""
        self._taken.add(key)
        return self._pairs.get(key)

    def node(self, key: str, write: str = "") -> Node | None:
        """The value of `key`; missing is a finding with the line `write` (none: optional)."""
        self._taken.add(key)
        pair = self._pairs.get(key)
        if pair is not None:
            return pair.value
        if write:
            what = f'{self.where} has no line "{key}".'
            self.margin.note("key.missing", self.place, what, write)
        return None

    def text(self, key: str, write: str = "") -> Text | None:
        """The words after `key`."""
        node = self.node(key, write)
        return None if node is None else values.plain_text(node, self.margin, key)

    def one_of(self, key: str, known: tuple[str, ...], write: str = "") -> str | None:
        """A word of a closed list after `key`."""
        text = self.text(key, write)
        what = f"The word after {key}"
        return None if text is None else values.one_of(text, self.margin, known, what)

    def names(self, key: str, write: str = "") -> tuple[Text, ...]:
        """Names on one line after `key`."""
        node = self.node(key, write)
        return () if node is None else values.names(node, self.margin, key)

    def listed(self, key: str, write: str = "") -> tuple[Node, ...]:
        """The lines with dashes after `key`."""
        node = self.node(key, write)
        if node is None:
            return ()
        if isinstance(node, Listed):
            return node.items
        if isinstance(node, Blank):
            self.margin.note("value.empty", node.place, f'Nothing stands after "{key}".')
        else:
            line = f"- {node.value}" if isinstance(node, Text) else "- ..."
            what = f'"{key}" takes lines with dashes.'
            self.margin.note("value.not_listed", node.place, what, line)
        return ()

    def sentences(self, key: str, voice: Voice, write: str = "") -> tuple[str, ...]:
        """Sentences in a list after `key`, in the language that is read, each checked."""
        items = self.listed(key, write)
        texts = sentence_items(items, self.margin)
        for text in texts:
            voice.check(text, self.margin, key)
        other = self._translated_list(key, voice)
        for language, lines in other.items():
            if len(lines) != len(texts):
                what = f'"{key} in {language}" has {len(lines)} lines, "{key}" has {len(texts)}.'
                self.margin.note("language.count", self.place, what)
            for line, text in zip(lines, texts, strict=False):
                voice.compare(text, line, language, self.margin)
        chosen = other.get(voice.language, texts)
        return tuple(text.value for text in chosen)

    def _translated_list(self, key: str, voice: Voice) -> dict[str, list[Text]]:
        found: dict[str, list[Text]] = {}
        for language in voice.others:
            pair = self.pair(f"{key} in {language}")
            if pair is not None and isinstance(pair.value, Listed):
                found[language] = sentence_items(pair.value.items, self.margin)
            elif self._pairs.get(key) is not None:
                voice.missing(key, language, self._pairs[key].key.place, self.margin)
        return found

    def sentence(self, key: str, voice: Voice, write: str = "") -> str:
        """One sentence after `key`, checked, in the language that is read ('' where missing)."""
        text = self.text(key, write)
        if text is None:
            return ""
        voice.check(text, self.margin, key)
        return self.translated(key, text, voice)

    def translated(self, key: str, text: Text, voice: Voice) -> str:
        """The words of `text` in the language that is read; the others are compared."""
        chosen = text.value
        for language in voice.others:
            pair = self.pair(f"{key} in {language}")
            if pair is None:
                voice.missing(key, language, text.place, self.margin)
            elif isinstance(pair.value, Text):
                voice.compare(text, pair.value, language, self.margin)
                chosen = pair.value.value if language == voice.language else chosen
        return chosen

    def rest(self, prefix: str) -> list[Pair]:
        """Every pair whose key begins with `prefix`, now taken."""
        found = [pair for key, pair in self._pairs.items() if key.startswith(prefix)]
        self._taken.update(pair.key.value for pair in found)
        return found

    def all_pairs(self) -> list[Pair]:
        """Every pair, now taken."""
        return self.rest("")

    def close(self, known: tuple[str, ...]) -> None:
        """Note every key nobody took; `known` are the keys that may stand here."""
        if self._pairs.keys() <= self._taken:
            return
        for key, pair in self._pairs.items():
            if key in self._taken:
                continue
            language = _IN_LANGUAGE.fullmatch(key)
            if language and language.group(1) in self._pairs:
                what = f'The program does not name the language "{language.group(2)}".'
                self.margin.note("language.unknown", pair.key.place, what)
                continue
            what = f'{self.where} has no key "{key}".{did_you_mean(key, known)}'
            write = near_line(self.margin, pair.key.place, key, known)
            self.margin.note("key.unknown", pair.key.place, what, write)


def sentence_items(items: tuple[Node, ...], margin: Margin) -> list[Text]:
    """The items of a list that must each be one sentence."""
    found: list[Text] = []
    for item in items:
        if isinstance(item, Text) and item.value.strip():
            found.append(item)
        elif isinstance(item, Mapped) and isinstance(item.pairs[0].value, Text):
            pair = item.pairs[0]
            words = f"{pair.key.value}: {item.pairs[0].value.value}".replace('"', "'")
            what = "The sentence holds a colon and a blank."
            margin.note("text.colon", item.place, what, f'- "{words}"')
        else:
            margin.note(
                "value.not_sentence",
                item.place,
                "A dash must have one sentence after it.",
            )
    return found


def only_map(node: Node | None, margin: Margin, what: str) -> Mapped | None:
    """The node as a map of keys, or a finding."""
    if isinstance(node, Mapped):
        return node
    if node is not None:
        margin.note("value.not_keys", node.place, f"{what} takes lines of keys and values.")
    return None


def start_of(place: Place) -> Place:
    """The first place of the file."""
    return place._replace(line=1, column=1)
