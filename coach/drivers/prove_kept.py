"""A broken promise as a scenario: what is typed up to the break, and what a replay must see there.

Law: a scenario is kept only where a replay really fails on it, at its one check. The check says what
the promise asks for, so that it holds once the fault is gone; where no words on the screen can show
that, there is no scenario.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date
from pathlib import Path
from typing import Final, NamedTuple

from coach.drivers.promises import Oracle
from coach.drivers.prove_days import OPENS_AT
from coach.drivers.prove_typing import Move, calm_move
from coach.drivers.prove_walk import MOST_ANSWERS, Found, Told, Walk, replayed
from coach.drivers.replay import play
from coach.drivers.replay_names import asked_names
from coach.journal import throwaway
from coach.journal.outgoing import write_whole
from coach.model.decisions import Refusal
from coach.model.flags import Section
from coach.model.heard import Action, Heard
from coach.model.program import Bound
from coach.model.turns import Offer, TimerEnded, Typed
from coach.session.brief import Brief
from coach.session.engine import ask_of, listen, take, turn
from coach.session.state import State
from coach.texts.scenarios import read_scenario

HEAD: Final = "# A conversation that broke a promise; the days before it are calm ones."
USUAL: Final = "smooth"
UNCLEAR: Final = "hm"
TODAY: Final = ("stop for today", "today")
STRONG: Final = ("read back", "yes")
WHY: Final = "why does not say: "
RULE: Final = "why code does not name "


class Scene(NamedTuple):
    """What is typed, and the check that a replay fails on; with nothing typed it holds all day.

    `then` is typed after it, prompt and answer, where the promise is kept.
    """

    told: tuple[Told, ...]
    check: str
    then: tuple[tuple[str, str], ...] = ()


# ---------------------------------------------------------------- what must be seen, by promise


def scenes(found: Found, brief: Brief) -> Iterator[Scene]:
    """Ways to show one break to a replay, the most telling first."""
    yield from SHOWN_BY.get(found.broken.promise, _nothing)(found, brief)


def _nothing(_found: Found, _brief: Brief) -> Iterator[Scene]:
    """A circle, a line never reached, a number compared in silence: no words can show it."""
    yield from ()


def _never_shown(found: Found, _brief: Brief) -> Iterator[Scene]:
    """What was shown at the break is never shown from there on."""
    shown = found.talk.shown
    about = sorted(shown.offers, key=lambda one: one.exercise not in found.broken.words)
    for offer in about:
        yield Scene(found.talk.told, f"never offers: {pieces(offer)}")
    if shown.ask is not None:
        yield Scene(found.talk.told, f"never asks: {shown.ask.name}")
    if found.broken.promise == "P2":
        yield Scene(found.talk.told, "never offers: anything")


def _another_side(found: Found, brief: Brief) -> Iterator[Scene]:
    """P12: the other side stands on no line."""
    other = "left" if brief.plan.side == "right" else "right"
    yield Scene(found.talk.told, f'never shows: "{other} arm"')


def _another_set(found: Found, brief: Brief) -> Iterator[Scene]:
    """P14: neither the set's own line nor its question comes once more."""
    for line in found.talk.shown.lines:
        if line.kind == "work" and "{" not in line.text:
            yield Scene(found.talk.told, f'never shows: "{line.text[:60].strip()}"')
    yield from _never_shown(found, brief)


def _screen(found: Found, brief: Brief) -> Iterator[Scene]:
    """P6: what was left out is asked; work in the middle of the screen is not shown there."""
    at = walk_to(brief, found, len(found.talk.told))
    if "in the middle" in found.broken.words:
        ask = ask_of(at.state)
        for offer in found.talk.shown.offers if ask is not None else ():
            then = ((ask.name if ask is not None else "", "stop"), TODAY)
            yield Scene(found.talk.told, f"never offers: {pieces(offer)}", then)
        return
    due = Oracle(brief).due_alone
    for number, section in enumerate(Section):
        if due >> number & 1 and section is not Section.WEEKLY:
            yield Scene((), f"asks: screen {section.removeprefix('screen ')}")
    yield Scene((), "asks: screen")
    yield Scene(found.talk.told, "asks: screen")


def _stop(found: Found, brief: Brief) -> Iterator[Scene]:
    """P8: `stop` asks at once whether that is all."""
    at = walk_to(brief, found, len(found.talk.told) - 1)
    yield Scene((*at.told, here(at, "stop")), f"asks: {TODAY[0]}", (TODAY,))


def _unclear(found: Found, brief: Brief) -> Iterator[Scene]:
    """P10: asked again at first; then what the worst answer leads to."""
    at = walk_to(brief, found, len(found.talk.told) - 1)
    ask = ask_of(at.state)
    if ask is None:
        return
    told = (*at.told, here(at, UNCLEAR))
    if "is not asked again" in found.broken.words:
        yield Scene(told, f"asks: {told[-1].prompt}")
        return
    worst = Oracle(brief).worst(ask)
    wrong = typed(at.state, UNCLEAR)
    if worst is None or wrong is None:
        return
    right = take(at.state, worst.event, worst.heard)
    if isinstance(right, Refusal):
        return
    ask = ask_of(right)
    if ask is not None and ask.name == STRONG[0]:
        yield Scene(told, f"asks: {ask.name}", (STRONG,))
    yield from (Scene(told, check) for check in apart(wrong, right))


def _why(found: Found, brief: Brief) -> Iterator[Scene]:
    """P11: `why` and `why code` say what stands behind the prompt."""
    at = walk_to(brief, found, len(found.talk.told))
    said = found.broken.words
    for start, command in ((WHY, "why"), (RULE, "why code")):
        text = said.removeprefix(start)
        if text != said and "{" not in text:
            yield Scene((*at.told, here(at, command)), f'shows: "{text}"')


def _corrected(found: Found, brief: Brief) -> Iterator[Scene]:
    """P13: nothing is offered that the day did not have before the correction."""
    fixes = [n for n, told in enumerate(found.talk.told) if told.move.text == "fix"]
    if not fixes:
        return
    before = walk_to(brief, found, fixes[-1]).state
    after = walk_to(brief, found, len(found.talk.told)).state
    for check in apart(after, before):
        if check.startswith("never offers"):
            yield Scene(found.talk.told, check)


SHOWN_BY: Final[dict[str, Callable[[Found, Brief], Iterator[Scene]]]] = {
    **dict.fromkeys(("P1", "P2", "P3", "P4", "P5"), _never_shown),
    "P6": _screen,
    "P8": _stop,
    "P10": _unclear,
    "P11": _why,
    "P12": _another_side,
    "P13": _corrected,
    "P14": _another_set,
}


# ---------------------------------------------------------------- the conversation once more


def walk_to(brief: Brief, found: Found, answers: int) -> Walk:
    """The conversation walked again up to so many answers."""
    walk = Walk(brief, found.pace_s, None, found.moves)
    shown = walk.show()
    while len(walk.told) < answers and not walk.state.end:
        before = len(walk.told)
        walk.answer(shown)
        if len(walk.told) == before:
            break
        shown = walk.show()
    return walk


def here(walk: Walk, text: str) -> Told:
    """A text typed at the present prompt of a walk."""
    move = Move(text)
    return Told(walk.prompt_of(ask_of(walk.state), move), move, Heard(Action.ACCEPT))


def typed(state: State, text: str) -> State | None:
    """The state after a text; None where it is refused."""
    event = Typed(text)
    after = take(state, event, listen(state, event))
    return None if isinstance(after, Refusal) else after


def apart(wrong: State, right: State) -> Iterator[str]:
    """What the rest of a calm day offers and asks after `wrong` and not after `right`, and back."""
    bad, good = calm_rest(wrong), calm_rest(right)
    for kind, these, those in zip(("offers", "asks"), bad, good, strict=True):
        yield from (f"never {kind}: {one}" for one in these if one not in those)
        yield from (f"{kind}: {one}" for one in those if one not in these)


def calm_rest(state: State) -> tuple[list[str], list[str]]:
    """The doses and the prompts that calm answers still lead to."""
    offers: list[str] = []
    asks: list[str] = []
    for _answer in range(MOST_ANSWERS):
        shown = turn(state)
        offers += [pieces(offer) for offer in shown.offers]
        asks += asked_names(shown.ask) if shown.ask is not None else ()
        if state.end:
            break
        ask = ask_of(state)
        move = calm_move(ask, state) if ask is not None else None
        event = TimerEnded() if move is None else Typed(move.text, 0, move.fact)
        after = take(state, event, listen(state, event))
        if isinstance(after, Refusal):
            break
        state = after
    return offers, asks


def pieces(offer: Offer) -> str:
    """An offer with its dose, as a check writes it."""
    dose = offer.dose
    sets = f"{dose.sets} set" if dose.sets == 1 else f"{dose.sets} sets"
    count = str(dose.reps_high)
    if dose.reps_low != dose.reps_high:
        count = f"{dose.reps_low} to {dose.reps_high}"
    hold = f"{dose.hold_s} s" if dose.hold_s else ""
    load = dose.load.words() if dose.load.kind != "none" else ""
    every = (offer.exercise, sets, f"{count} reps", hold, load, dose.version, dose.range_step)
    return ", ".join(piece for piece in every if piece)


# ---------------------------------------------------------------- as a file


def write_all(folder: Path, promises: list[str], files: list[str]) -> list[Path]:
    """The scenarios that there are, as `p4-1.yaml` and so on in a folder, which is made."""
    folder.mkdir(parents=True, exist_ok=True)
    written = []
    for number, (promise, text) in enumerate(zip(promises, files, strict=True), 1):
        if text:
            written.append(folder / f"{promise.lower()}-{number}.yaml")
            write_whole(written[-1], text)
    return written


def kept(found: Found, brief: Brief, first: Brief, bound: Bound, plan: Path) -> str:
    """One break as a scenario, on its own day or with the same answers on the first; else ''.

    The first day needs no days before it.
    """
    text = scenario_of(found, brief, bound, plan)
    again = None if text else replayed(first, found, found.moves)
    if again is None:
        return text
    return scenario_of(found._replace(day=0, talk=again), first, bound, plan)


def scenario_of(found: Found, brief: Brief, bound: Bound, plan: Path) -> str:
    """One break as a scenario, with the first check that a replay fails on; '' where none does."""
    for scene in scenes(found, brief):
        text = as_scenario(scene, found, brief, plan)
        if fails(text, bound, scene):
            return text
    return ""


def as_scenario(scene: Scene, found: Found, brief: Brief, plan: Path) -> str:
    """The days before, calm; then the day of the break, typed answer by answer."""
    lines = [HEAD, f"scenario: {found.broken.promise}, {one_line(found.broken.words)}"]
    lines += [f"plan: {plan.resolve().as_posix()}", f"usual: {USUAL}", "days:"]
    lines += [f"  - day: {day} at 08:30" for day in days_before(brief)]
    lines.append(f"  - day: {brief.today.isoformat()} at {OPENS_AT:%H:%M}")
    lines.append("    talk:" if scene.told else "    all day:")
    for told in scene.told:
        lines += _lines_of(told)
    lines.append(f"      - {scene.check}")
    lines += [f"      - {prompt}: {typed}" for prompt, typed in scene.then]
    return "\n".join(lines) + "\n"


def days_before(brief: Brief) -> list[date]:
    """The days that the diary knows, earlier than the one of the break."""
    return sorted({date.fromisoformat(record.day) for record in brief.history.records})


def _lines_of(told: Told) -> list[str]:
    if told.move.away_s:
        return [
            f"      - {told.prompt}: pause",
            f"      - break: {told.move.away_s} s",
            "      - paused: go",
        ]
    if not told.move.text and told.prompt.startswith("("):
        return []
    return [f'      - {told.prompt}: "{told.move.text}"']


def one_line(text: str) -> str:
    """Words fit for the first line of a file."""
    return text.replace(": ", ", ").replace("'", "").replace('"', "")


def fails(text: str, bound: Bound, scene: Scene) -> bool:
    """Whether a replay fails on the scenario at this check, and on nothing else."""
    with throwaway() as folder:
        file = folder / "broken.yaml"
        write_whole(file, text)
        scenario, _findings = read_scenario(file)
    if scenario is None:
        return False
    expected = {f"asks {prompt}" for prompt, _typed in scene.then}
    expected.add(scene.check.replace(": ", " ", 1).replace('"', ""))
    missed = play(scenario, "broken.yaml", bound).mismatches
    return bool(missed) and {one.expected for one in missed} <= expected
