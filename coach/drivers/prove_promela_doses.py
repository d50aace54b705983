"""The lists, effects and doses of a day as tables of the model for another checker.

Law: as `prove_promela`: it reads what was compiled and calls nothing of the session.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from coach.drivers.prove_promela import (
    AXES,
    SECONDS_A_REP,
    TIMED_FROM_S,
    Writer,
    any_of,
    bits,
    chain,
    door_dose,
)
from coach.model.quantities import Dose, Load
from coach.rules import limits, readiness

ALWAYS = "1"


class DoseTables(Writer):
    """What may be on the list, what effects lower, and each exercise's dose."""

    def write(self) -> None:
        """All of it."""
        self.lists()
        self.effects()
        self.doses()
        self.changes()
        self.faults()

    # ------------------------------------------------------------ today's list

    def lists(self) -> None:
        """The program's lists, and which exercises may be done at all today."""
        brief, program = self.brief, self.brief.program
        every = range(len(brief.stations))
        self.define("STATIONS", len(brief.stations))
        self.define("ALL_STATIONS", bits(every))
        self.define("OF_THE_PHASE", bits(range(brief.phase_count)))
        self.define("GENTLE_LIST", self.named(program.gentle))
        self.define("TWICE_LIST", self.named(program.twice_a_day))
        self.define("RECOVERY_LIST", self.named(program.recovery))
        self.define("LOADED", bits(p for p in every if self.exercise(p).load != "none"))
        self.define("OPEN_TODAY(q)", self.by_place({p: int(self.open_today(p)) for p in every}))
        here = {p: self.gear_here(p) for p in every}
        self.define("GEAR_IS_HERE(q, g)", self.by_place(here))
        counts = [(f"(l & {1 << p})", self.stand_in_things(p)) for p in every]
        self.define(
            "GONE_THAT_COUNTS(l)", sum_of(f"({when} -> {m} : 0)" for when, m in counts if m)
        )
        self.define("PIECES", len(brief.plan.at_home))
        self.define("ALL_GONE", bits(range(len(brief.plan.at_home))))

    def named(self, names: tuple[str, ...]) -> int:
        """The places of these names."""
        return bits(p for p, s in enumerate(self.brief.stations) if s.exercise.name in names)

    def by_place(self, values: Mapping[int, object], otherwise: object = 0) -> str:
        """A table by place; `q` is the name of the place in the model."""
        return chain(((f"q == {place}", value) for place, value in values.items()), otherwise)

    def open_today(self, place: int) -> bool:
        """Locks and days apart, which no answer changes; and whether the plan has a dose."""
        brief, made, line = self.brief, self.exercise(place), self.line(place)
        if limits.locked(made, brief.plan, brief.today).outcome == "locked":
            return False
        ended = next(
            (
                done.ended_at
                for record in brief.history.records
                for done in record.done
                if done.exercise == made.name and done.sets
            ),
            None,
        )
        apart = readiness.may_repeat(ended, brief.opened_at, line.apart_days).outcome != "wait"
        dosed = door_dose(brief, place, morning_up=False) is not None
        return dosed and (apart or made.name in brief.program.twice_a_day)

    def gear_here(self, place: int) -> str:
        """Whether all is here that nothing may stand in for; `g` are the pieces that are not."""
        made, line = self.exercise(place), self.line(place)
        swaps, sentences = dict(line.without), dict(made.stand_in)
        needed = []
        for piece in made.equipment:
            if swaps.get(piece) == "stand-in" and piece in sentences:
                continue
            held = [
                f"!(g & {1 << n})"
                for n, thing in enumerate(self.brief.plan.at_home)
                if serves(piece, line.load, thing)
            ]
            needed.append(f"({any_of(held)})")
        return f"({' && '.join(needed) or ALWAYS})"

    def stand_in_things(self, place: int) -> int:
        """The pieces at home that a stand-in of this exercise is about."""
        gear = [name for name, by in self.line(place).without if by == "stand-in"]
        home = self.brief.plan.at_home
        return bits(n for n, thing in enumerate(home) if any(name in thing for name in gear))

    # ------------------------------------------------------------ effects

    def pairs(self, *effects: str, target: str = "") -> int:
        """The effects of these names (on this target), as a mask."""
        return bits(
            n
            for n, (effect, on) in enumerate(self.codes.pairs)
            if effect in effects and (not target or on == target)
        )

    def effects(self) -> None:
        """What each effect of a script lowers, and how long it is meant."""
        places = range(len(self.brief.stations))
        for name, effect in (
            ("LEFT_OUT", "leave out"),
            ("FEWER_SETS", "one set fewer"),
            ("SHORTER_TODAY", "shorter range"),
            ("EASIER_TODAY", "easier version"),
            ("LIGHTER_TODAY", "lighter"),
        ):
            table: dict[int, object] = {
                p: self.pairs(effect, target="all")
                | self.pairs(effect, target=self.exercise(p).name)
                for p in places
            }
            self.define(f"{name}(q, l)", f"((l & {self.by_place(table)}) != 0)")
        for name, targets in (
            ("REST_DAY", ("rest day",)),
            ("GENTLE_DAY", ("gentle list only",)),
            ("RECOVERY_DAY", ("recovery list only",)),
            ("NO_MORE_TODAY", ("no more exercises", "rest day")),
        ):
            mask = sum(self.pairs("today", target=one) for one in targets)
            self.define(f"{name}(l)", f"((l & {mask}) != 0)")
        every = {effect for effect, _on in self.codes.pairs}
        held = self.pairs("no step up", target="all")
        self.define("HOLDS_ALL_BACK(l)", f"((l & {held}) != 0)")
        self.define("ON_THIS_EXERCISE", self.pairs(*every, target="this exercise"))
        kept = (self.pairs("today") | self.pairs(*every, target="all")) & ~held
        own = {p: self.pairs(*every, target=self.exercise(p).name) for p in places}
        still = [f"((d & {1 << p}) -> {mask} : 0)" for p, mask in own.items() if mask]
        self.define("STILL_MEANT(d)", f"({' | '.join([str(kept), *still])})")
        self.inline("effects_on_the_next_set", "room = 0;", *self.next_set())

    def next_set(self) -> Iterable[str]:
        """The effects as they act on the set to come, in the order of the scripts."""
        names = {station.exercise.name: p for p, station in enumerate(self.brief.stations)}
        for n, (effect, target) in enumerate(self.codes.pairs):
            here = (
                ALWAYS
                if target in {"this exercise", "all"}
                else f"place == {names.get(target, -1) + 1}"
            )
            acts = f"!room && (lowered & {1 << n}) && {here}"
            if effect == "leave out":
                yield f"if :: {acts} -> change = LEAVE; room = 1 :: else fi;"
            elif effect in AXES:
                if target == "all":  # only where the exercise itself is named as well
                    also = [
                        f"(place == {p + 1} && (lowered & {self.pairs(effect, target=name)}))"
                        for name, p in names.items()
                    ]
                    acts += f" && ({any_of(also)})"
                yield f"if :: {acts} && change == 0 -> change = {AXES[effect]}; stays_due = 1; room = 1 :: else fi;"
            elif effect == "one set fewer" and target == "this exercise":
                yield f"if :: {acts} && sets > set_no -> sets-- :: else fi;"

    # ------------------------------------------------------------ doses

    def doses(self) -> None:
        """Each exercise's dose at the door by the morning, and its times."""
        places = range(len(self.brief.stations))
        shown: dict[str, dict[tuple[int, int], int]] = {}
        for place in places:
            for up in (0, 1):
                dose = door_dose(self.brief, place, morning_up=bool(up))
                for name, value in self.dose_numbers(place, dose).items():
                    shown.setdefault(name, {})[place, up] = value
        for name in ("SETS", "LOW", "HIGH", "REACH", "FORM", "LOAD"):
            table = shown.get(name, {})
            cases = [(f"q == {p} && u == {up}", value) for (p, up), value in table.items()]
            self.define(f"DOOR_{name}(q, u)", chain(cases))
        held = {p: door_dose(self.brief, p, morning_up=False) for p in places}
        seconds: dict[int, object] = {
            p: (d.hold_s if d and d.hold_s > 0 else SECONDS_A_REP) for p, d in held.items()
        }
        self.define("SECONDS_EACH(q)", self.by_place(seconds))
        self.define("REST_OF(q)", self.by_place({p: d.rest_s if d else 0 for p, d in held.items()}))
        timed = {p: int(bool(d and d.hold_s >= TIMED_FROM_S)) for p, d in held.items()}
        self.define("TIMED_HOLDS(q)", self.by_place(dict(timed)))

    def dose_numbers(self, place: int, dose: Dose | None) -> dict[str, int]:
        """A dose in the model's numbers."""
        if dose is None:
            return {}
        return {
            "SETS": dose.sets,
            "LOW": dose.reps_low,
            "HIGH": dose.reps_high,
            "REACH": dose.range_index,
            "FORM": self.form(place, dose.version),
            "LOAD": self.codes.loads[place].index(dose.load) + 1,
        }

    def changes(self) -> None:
        """The next easier version and the next lighter load, 0 for none."""
        easier, lighter = [], []
        for place, station in enumerate(self.brief.stations):
            allowed = [
                v for v in station.exercise.versions if v.name in station.prescription.versions
            ]
            for version in station.exercise.versions:
                below = [v for v in allowed if v.level < version.level]
                if below:
                    best = max(below, key=lambda v: v.level)
                    here = f"q == {place} && f == {self.form(place, version.name)}"
                    easier.append((here, self.form(place, best.name)))
            loads = self.codes.loads[place]
            for number, load in enumerate(loads, 1):
                less = [
                    one
                    for one in (station.prescription.load, *station.prescription.lighter)
                    if (one.kind, bool(one.strength)) == (load.kind, bool(load.strength))
                    and one.rank() < load.rank()
                ]
                if less:
                    best_load = loads.index(max(less, key=Load.rank)) + 1
                    lighter.append((f"q == {place} && w == {number}", best_load))
        self.define("EASIER_FORM(q, f)", chain(easier))
        self.define("LESS_LOAD(q, w)", chain(lighter))

    def faults(self) -> None:
        """What each exercise watches for, by number from 1."""
        stays, pinches = [], []
        for place, station in enumerate(self.brief.stations):
            for number, fault in enumerate(station.exercise.faults, 1):
                here = f"q == {place} && v == {number}"
                if fault.if_it_stays:
                    stays.append((here, AXES[fault.if_it_stays]))
                if "pinch" in fault.name and station.exercise.name == "cross-body stretch":
                    pinches.append((here, 1))
        self.define("IF_IT_STAYS(q, v)", chain(stays))
        self.define("PINCH_LEAVES(q, v)", chain(pinches))


def serves(piece: str, load: Load, thing: str) -> bool:
    """Whether a thing at home is the piece: the plan's own load, or named so, a word before it."""
    if piece == load.kind:
        return thing in {piece, load.words()}
    return thing == piece or thing.endswith(f" {piece}")


def sum_of(masks: Iterable[str]) -> str:
    """Several masks together."""
    return f"({' | '.join(masks) or '0'})"
