"""Writes the list of real English words that the ear would otherwise change or cut in two.

usage: python tests/hearing/find_real_words.py WORD_LIST...
WORD_LIST holds one word a line (made with the `american-english` and `british-english` lists of
the SCOWL collection, size 50 to 60, whose licence allows any use).
"""

from __future__ import annotations

import sys
import textwrap
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from coach.hearing.respell import _index, _shortened, _split, slips_allowed, slips_between
from coach.hearing.spellings import spellings
from coach.hearing.vocabulary import FAMILIES, guessable

HEAD = '''"""Real English words close to a word the ear knows, or made of two: never changed, never cut.

Law: data only, made by `tests/hearing/find_real_words.py`. Source: the SCOWL word lists (Kevin
Atkinson and others; free for any use with its notice) and own additions.
"""

from __future__ import annotations

from typing import Final

WORDS: Final = """
'''

# everyday words of sport, texting and names that such lists lack
EXTRA = """
done more most some same were where there their they them then than that this those these what when
bullpen plyo plyos velo slider sliders cutter sinker changeup curveball fastball bench squat squats
lunge lunges deadlift rehab physio ortho labrum lats traps delts pecs quads glutes hammy core cardio
yeah yep nope gonna wanna gotta dunno lemme kinda sorta lotta hmm haha lol omg idk tbh imo ngl fyi
tris bis quads dinger dingers nuke gamer hitter hitters infielder catchers baserunner chucks selfie beanie
mike matt jake luke josh nick alex zach kyle ryan dylan brad chad cody emma anna sara kate
trainer trainers teammate teammates softball volleyball handball javelin cricket lacrosse
workout workouts outfield everyone outside handball football softball groundball knuckleball headband hangover
racial racially facials fascial iphone email texted texting netflix gatorade creatine preworkout protein
""".split()


# compounds whose half is heard on purpose: the ache, the bone, the night
CUT_ON_PURPOSE = ("ache", "aches", "nail", "nails", "night", "nights", "bone", "bones", "fully")


def whole(word: str) -> bool:
    """Whether `word` would be cut into two words the ear knows, and should not be."""
    return _split(word, FAMILIES) is not None and not word.endswith(CUT_ON_PURPOSE)


def near(word: str) -> bool:
    """Whether the ear could take `word` for one it knows."""
    index = _index()
    return any(
        slips_between(word, target) <= min(slips_allowed(target), max(slips_allowed(word), 1))
        for key in _shortened(word, slips_allowed(word))
        for target in index.get(key, ())
    )


def main(paths: list[str]) -> None:
    """Write the two modules."""
    words = set(EXTRA)
    for path in paths:
        words |= set(Path(path).read_text(encoding="utf-8").split())
    known = set(guessable()) | set(spellings())
    plain = {w.replace("'", "") for w in words if w.replace("'", "").isascii()}
    found = sorted(
        w
        for w in plain
        if w.islower()
        and w.isalpha()
        and 3 < len(w) < 25
        and w not in known
        and (near(w) or whole(w))
    )
    folder = Path(__file__).resolve().parents[2] / "coach" / "hearing"
    for name, part in (
        ("real_words_a_l", [w for w in found if w[0] <= "l"]),
        ("real_words_m_z", [w for w in found if w[0] > "l"]),
    ):
        (folder / f"{name}.py").write_text(module(part), encoding="utf-8")


def module(words: list[str]) -> str:
    """The text of a module that holds `words`."""
    lines = textwrap.wrap(" ".join(words), 98, break_on_hyphens=False)
    return HEAD + "\n".join(lines) + '\n"""\n'


if __name__ == "__main__":
    main(sys.argv[1:])
