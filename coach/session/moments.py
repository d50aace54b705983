"""Scripts as the session walks them: the coach's own questions of each moment, laid in order.

Law: a moment has no jump and no loop; its place only rises. The coach's questions stand in the
coach's order whether a script names them or not. What is due is decided in the stage's own file.
"""

from __future__ import annotations

from typing import Final

from coach.model.program import Place, Script, Step

MOMENTS: Final = (
    "screen",
    "check-in",
    "at hand",
    "warm-up",
    "before an exercise",
    "after a set",
    "throwing",
    "close",
)

COACH_ASKS: Final[dict[str, tuple[str, ...]]] = {
    "screen": (
        "screen arm",
        "screen joint",
        "screen body",
        "screen ill",
        "screen night",
        "screen weekly",
    ),
    "check-in": (
        "pain now",
        "worst pain",
        "waking pain",
        "waking ache",
        "against usual",
        "sleep last night",
        "throwing yesterday",
        "throwing today",
        "thrown already",
        "throwing tomorrow",
    ),
    "at hand": ("at hand",),
    "warm-up": ("pain in warm-up",),
    "before an exercise": ("which version", "stand-in weight"),
    "after a set": ("reps in set", "holds in set", "pain in set", "felt in set"),
    "throwing": (
        "sore an hour after",
        "sore next day",
        "sore in warm-up",
        "sore after throw 15",
        "sore at the end",
        "arm tired",
        "throws done",
    ),
    "close": ("pain after", "effort", "minutes", "own words"),
}

# Asked by the coach after its own questions of a moment; they hang on what was said there, and on a
# line of the plan, so they stand in no script.
FOLLOW_UPS: Final[dict[str, tuple[str, ...]]] = {
    "check-in": ("pitches before", "pitches yesterday", "pitches today", "innings caught today"),
}

# What may stand together on one line, in the order of the line.
GATHERED: Final[dict[str, tuple[str, ...]]] = {
    "check-in": (
        "pain now",
        "worst pain",
        "waking pain",
        "sleep last night",
        "throwing yesterday",
        "throwing today",
    ),
    "after a set": ("reps in set", "holds in set", "pain in set"),
    "close": ("pain after", "effort", "minutes"),
}

_NOWHERE: Final = Place("", 0)


def lay_out(moment: str, script: Script | None, places: tuple[int, ...]) -> tuple[Step, ...]:
    """The steps of a moment with their `when` moved to `places`, gathered questions first.

    Without a script the coach's own questions stand alone.
    """
    if script is None:
        steps = [Step("ask", (), _NOWHERE, fact=fact) for fact in COACH_ASKS[moment]]
    else:
        steps = [
            step._replace(when=tuple(places[number] for number in step.when))
            for step in script.steps
        ]
        steps = with_the_other_count(steps)
    later = tuple(Step("ask", (), _NOWHERE, fact=fact) for fact in FOLLOW_UPS.get(moment, ()))
    return (*_gathered_first(moment, steps), *later)


def with_the_other_count(steps: list[Step]) -> list[Step]:
    """A script that asks for reps asks for holds where an exercise counts those, and the reverse."""
    named = {step.fact for step in steps}
    pair = ("reps in set", "holds in set")
    if len(named.intersection(pair)) != 1:
        return steps
    laid: list[Step] = []
    for step in steps:
        laid.append(step)
        if step.fact in pair:
            laid.append(step._replace(fact=pair[step.fact == pair[0]]))
    return laid


def _gathered_first(moment: str, steps: list[Step]) -> tuple[Step, ...]:
    """Within a run of plain coach's questions, those that share a line come before the others."""
    laid: list[Step] = []
    run: list[Step] = []
    for step in [*steps, Step("end", (), _NOWHERE)]:
        if may_gather(moment, step) or (step.kind == "ask" and not step.text and not step.when):
            run.append(step)
            continue
        laid += [s for s in run if may_gather(moment, s)]
        laid += [s for s in run if not may_gather(moment, s)]
        run = []
        laid.append(step)
    return tuple(laid[:-1])


def may_gather(moment: str, step: Step) -> bool:
    """Whether a step may share a line: a coach's question, unworded, in no branch."""
    return (
        step.kind == "ask"
        and not step.text
        and not step.when
        and step.fact in GATHERED.get(moment, ())
    )
