"""What a new program begins with beside its exercise: two scripts to grow, and a calm course.

Law: the scripts hold the coach's own questions in the coach's order and nothing else, with remarks
that show how a branch is written; they change nothing until somebody writes in them.
"""

from __future__ import annotations

from typing import Final

from coach.texts.facts import ASKS

_HOW: Final = """\
# The coach's own questions stand in the coach's order, each once, in no branch.
# Below them, your own question and a branch are written like this (without the sign):
#   - when pain in set is 1 to 2:
#       - ask also: ache kind
#         words: Was that muscle at work, or inside the joint?
#         answers: muscle, joint
#       - when ache kind is joint:
#           - shorter range: this exercise
#           - note: Ache inside the joint during a set.
# A branch can only lower, note or stop. Write no dose and no side here.
"""


_EDITOR: Final = "# yaml-language-server: $schema=../.schemas/{}.json\n"


def _script(moment: str) -> str:
    asks = "".join(f"  - ask: {fact.name}\n" for fact in ASKS[moment])
    return f"{_EDITOR.format('script')}{_HOW}script: {moment}\nlines:\n{asks}"


SCRIPTS: Final = {
    f"scripts/{moment.replace(' ', '-')}.yaml": _script(moment)
    for moment in ("check-in", "after a set")
}
COURSE: Final = (
    _EDITOR.format("course")
    + """\
# What is typed on a calm day, prompt by prompt, for scenarios.
course: smooth
usual:
  - plan is mine: yes
  - guardian here: yes
  - pain now: 1
  - worst pain: 1
  - waking pain: 0
  - waking ache: not sure
  - against usual: same
  - sleep last night: 8
  - throwing yesterday: none
  - throwing today: none
  - thrown already: no
  - throwing tomorrow: none
  - pitches before: 0
  - screen: all no
  - nothing here: yes
  - at hand: all
  - stand-in weight: yes
  - moves or later: moves
  - pain in warm-up: 0
  - which version: 1
  - reps in set: top of the range
  - holds in set: top of the range
  - pain in set: 0
  - felt in set: fine
  - go: go
  - pain before change: 1
  - sets since: 0
  - worse since: no
  - pain after: 1
  - effort: 4
  - minutes: 20
  - own words: none today
"""
)
