"""The scripts of a day as tables of the model for another checker: what is asked, said and done.

Law: as `prove_promela`: it reads what was compiled and calls nothing of the session.
"""

from __future__ import annotations

from datetime import date

from coach.drivers.prove_promela import (
    MOMENT_NAMES,
    NAMED,
    PAINS,
    QUARTERS,
    SCALES,
    WORST,
    UnmodelledError,
    Writer,
    any_of,
    bits,
    chain,
    is_sign,
    quarters,
)
from coach.model.program import Exercise, Prescription, Step, Test
from coach.rules import limits, readiness
from coach.session.brief import Brief
from coach.session.moments import GATHERED


class TalkTables(Writer):
    """What is asked when, which values fit, and what they say to the conditions."""

    def write(self) -> None:
        """All of it."""
        self.tests()
        self.answers()
        for moment, name in MOMENT_NAMES.items():
            self.moment(moment, name)

    # ------------------------------------------------------------ conditions

    def tests(self) -> None:
        """What a value says to the scripts' conditions."""
        brief = self.brief
        asked = {step.fact for step in brief.items["after a set"] if step.fact}
        used = {
            bit
            for moment, steps in brief.items.items()
            if moment != "after a set"
            for step in steps
            for bit in step.when
        }
        about = [n for n, test in enumerate(brief.tests) if test.fact in asked and n not in used]
        self.define("ABOUT_A_SET(i)", f"({any_of(f'i == {n}' for n in about)})")
        once = [n for n in range(len(brief.tests)) if n not in used and self.said_anew(n)]
        self.define("ABOUT_ONE_SET(i)", f"({any_of(f'i == {n}' for n in once)})")
        know, worst = [], []
        for number, fact in enumerate(self.codes.facts, 1):
            mine = [(n, test) for n, test in enumerate(brief.tests) if test.fact == fact]
            if not mine:
                continue
            told = " ".join(f"t[{n}] = {self.truth(test)};" for n, test in mine)
            know.append(f":: fact == {number} -> {told}")
            open_ = " ".join(f"t[{n}] = {int(n in brief.effect_bits)};" for n, _test in mine)
            worst.append(f":: fact == {number} -> {open_}")
        self.inline("know_value", "if", *know, ":: else", "fi;")
        self.inline("know_worst", "if", *worst, ":: else", "fi;")
        exercise = [(n, test) for n, test in enumerate(brief.tests) if test.fact == "exercise"]
        self.inline("know_exercise", *(f"t[{n}] = {self.of_the_exercise(t)};" for n, t in exercise))
        count = {"set": f"(set_no * {QUARTERS})", "sets left": f"((sets - set_no) * {QUARTERS})"}
        self.inline(
            "know_set",
            *(
                f"t[{n}] = {compared(test, count[test.fact])};"
                for n, test in enumerate(brief.tests)
                if test.fact in count
            ),
        )

    def said_anew(self, bit: int) -> bool:
        """Whether each set says a condition's fact anew before a line of the script looks at it."""
        fact = self.brief.tests[bit].fact
        if fact in {"set", "sets left"}:
            return True
        steps = self.brief.items["after a set"]
        asks = [(n, s) for n, s in enumerate(steps) if s.fact == fact and s.kind != "effect"]
        if not asks or fact == "felt in set" or any(ask.every_days for _n, ask in asks):
            return False
        for n, step in enumerate(steps):
            before = [ask for place, ask in asks if place < n]
            if bit in step.when and not (before and set(before[-1].when) <= set(step.when)):
                return False
        return True

    def truth(self, test: Test) -> str:
        """Whether `val`, an answer to the test's question, passes it."""
        if test.fact == "felt in set":
            return self.by_name(
                test,
                {
                    p: (*(f.name for f in s.exercise.faults),)
                    for p, s in enumerate(self.brief.stations)
                },
            )
        if test.fact == "which version":
            return self.by_name(
                test,
                {
                    p: (*(v.name for v in s.exercise.versions),)
                    for p, s in enumerate(self.brief.stations)
                },
            )
        names = self.names_of(test.fact)
        if names:
            hits = any_of(f"val == {n}" for n, name in enumerate(names) if name in test.values)
            return f"({hits})" if test.op == "is" else f"(!({hits}))"
        return compared(test, "val")

    def by_name(self, test: Test, names: dict[int, tuple[str, ...]]) -> str:
        """As `truth` for names that each exercise has its own of, numbered from 1."""
        hits = [
            f"(place == {p + 1} && val == {n})"
            for p, here in names.items()
            for n, name in enumerate(here, 1)
            if name in test.values
        ]
        if test.fact == "felt in set":
            hits += [
                f"val == {n}"
                for name, n in (("fine", 0), ("something else", 99))
                if name in test.values
            ]
        return f"({any_of(hits)})" if test.op == "is" else f"(!({any_of(hits)}))"

    def of_the_exercise(self, test: Test) -> str:
        """Whether the exercise that begins passes the test."""
        names = [s.exercise.name for s in self.brief.stations]
        hits = any_of(f"place == {n}" for n, name in enumerate(names, 1) if name in test.values)
        return f"({hits})" if test.op == "is" else f"(!({hits}))"

    def own(self, fact: str) -> Step | None:
        """The clinician's own question of this name."""
        steps = (step for items in self.brief.items.values() for step in items)
        return next((s for s in steps if s.fact == fact and s.kind == "ask also"), None)

    def names_of(self, fact: str) -> tuple[str, ...]:
        """The names that fit a question, in their order; empty for a number."""
        step = self.own(fact)
        if step is None:
            return ("no", "yes") if is_sign(fact) else NAMED.get(fact, ())
        answers = step.answers
        if answers is not None and answers.kind == "yes or no":
            return ("no", "yes")
        return answers.choices if answers is not None and answers.kind == "choice" else ()

    # ------------------------------------------------------------ answers

    def answers(self) -> None:
        """Every value of each question's scale, and the worst one."""
        ways, worst = [], []
        for number, fact in enumerate(self.codes.facts, 1):
            ways.append(f":: fact == {number} -> {self.ways(fact)}")
            if fact in WORST:
                worst.append(f":: fact == {number} -> val = {WORST[fact]}")
            if is_sign(fact):
                worst.append(f":: fact == {number} -> val = 1")
        at_hand = self.fact("at hand")
        self.inline("any_gear", f"{self.gear()};")
        self.inline("any_value_of_fact", "if", *ways, "fi;")
        self.inline(
            "worst_value",
            "if",
            ":: stage == ENDING && miss == 1 -> val = 1",
            ":: stage == ENDING && miss == 2 -> val = 63",
            f":: fact == {at_hand} -> val = ALL_GONE",
            *worst,
            "fi;",
        )

    def ways(self, fact: str) -> str:
        """The choice of a value of one question."""
        names = self.names_of(fact)
        only = dict(self.tried.only).get(fact)
        if only is not None:
            named = names or ("fine",)  # of how a set felt, the first answer
            values = [named.index(v) if isinstance(v, str) else quarters(v) for v in only]
            return one_of([f"val = {value}" for value in values])
        if names:
            return one_of([f"val = {n}" for n in range(len(names))])
        if fact in PAINS:
            return steps_of(0, 40, 2)
        if fact == "sleep last night":
            return steps_of(0, 64, 1)
        if fact == "at hand":
            return self.gear()
        if fact in {"which version", "felt in set"}:
            return one_of(
                [way for p in range(len(self.brief.stations)) for way in self.here(fact, p)]
            )
        if fact in SCALES:
            highest, step = SCALES[fact]
            read = any(test.fact == fact for test in self.brief.tests)
            return steps_of(0, highest * QUARTERS, step) if read else "val = 0"
        return self.own_ways(fact)

    def gear(self) -> str:
        """Everything is here, one piece is not, or nothing is."""
        home = range(len(self.brief.plan.at_home))
        masks = dict.fromkeys((0, *(1 << n for n in home), bits(home)))
        return one_of([f"val = {m}" for m in masks])

    def here(self, fact: str, place: int) -> list[str]:
        """The ways of a question that each exercise has its own answers to."""
        made, line = self.exercise(place), self.line(place)
        if fact == "felt in set":
            numbers = [0, *range(1, len(made.faults) + 1), 99]
        else:
            numbers = [self.form(place, name) for name in versions_to_pick(made, line)]
        return [f"place == {place + 1} -> val = {n}" for n in numbers]

    def own_ways(self, fact: str) -> str:
        """The values of the clinician's own question that is answered by a number or in words."""
        step = self.own(fact)
        answers = step.answers if step is not None else None
        if answers is None or answers.kind == "own words":
            return "val = 0"
        by = {"pain": 2, "counted": 4}.get(answers.kind, 1)
        return steps_of(quarters(answers.low), quarters(answers.high), by)

    # ------------------------------------------------------------ moments

    def moment(self, moment: str, name: str) -> None:
        """One moment's script: what is asked, said and done from each place on."""
        items = self.brief.items[moment]
        self.define(
            f"FACT_{name}(i)",
            chain((f"i == {n}", self.fact(s.fact)) for n, s in enumerate(items) if s.fact),
        )
        groups = [self.group(moment, n) for n in range(len(items))]
        self.define(f"LEN_{name}(i)", chain(((f"i == {n}", g) for n, g in enumerate(groups)), 1))
        ways = []
        for n, (item, length) in enumerate(zip(items, groups, strict=True)):
            when = " && ".join(f"t[{bit}]" for bit in item.when)
            if when:
                ways.append(f":: at == {n} && !({when}) -> at++")
            here = f":: at == {n}" + (f" && {when}" if when else "")
            ways.append(f"{here} -> {self.does(moment, items[n : n + length], item)}")
        self.inline(
            f"settle_{name}",
            "settled = 0;",
            "do",
            f":: at >= {len(items)} -> settled = 1; break",
            f":: at < {len(items)} ->",
            "  if",
            *(f"  {way}" for way in ways),
            *(["  :: else -> at++"] if not ways else []),
            "  fi;",
            "  if :: go == TO_STOP || m != 0 -> m = 0; break :: else fi",
            "od;",
        )

    def group(self, moment: str, first: int) -> int:
        """How many steps from `first` on share its prompt."""
        items = self.brief.items[moment]
        shared = GATHERED.get(moment, ())

        def may(step: Step) -> bool:
            return step.kind == "ask" and step.fact in shared and not (step.text or step.when)

        if not may(items[first]):
            return 1
        run = []
        for step in items[first:]:
            if not may(step):
                break
            run.append(step.fact)
        if moment == "check-in" and self.brief.first_day:
            throws = [fact.startswith("throwing") for fact in run]
            if not throws[0]:
                return 1
            if True in throws[throws.index(False) if False in throws else len(throws) :]:
                raise UnmodelledError("questions on throwing that stand apart")
            return sum(throws)
        return len(run)

    def does(self, moment: str, group: tuple[Step, ...], item: Step) -> str:
        """What one line of a script does; a prompt leaves `m` set."""
        if item.kind in {"ask", "ask also"}:
            asked = " + ".join(
                f"({self.due(moment, step)} -> {1 << n} : 0)" for n, step in enumerate(group)
            )
            return (
                f"m = {asked}; if :: m -> miss = m; line = ((m & (m - 1)) != 0); unclear = 0 "
                f":: else -> at = at + {len(group)} fi"
            )
        if item.kind == "effect":
            pair = self.codes.pairs.index((item.effect, item.target))
            return f"lowered = lowered | {1 << pair}; at++"
        if item.kind == "stop":
            code = self.stop(("P01", item.target or item.effect, ""))
            return f"keep = at + 1; stop_with({code})"
        return "at++"

    def due(self, moment: str, step: Step) -> str:
        """Whether a question is asked today."""
        brief, last, fact = self.brief, self.brief.last, step.fact
        if step.kind == "ask also":
            return "(0)" if asked_lately(brief, step) else "(1)"
        if is_sign(fact):
            return "(1)"
        threw = last is not None and (last.throwing_today or "none") != "none"
        home = brief.history.at_hand
        known = {
            "worst pain": str(int(threw)),
            "waking ache": "ache",
            "against usual": "morning_up",
            "thrown already": "playing",
            "throwing tomorrow": "0",
            "at hand": str(int(home is not None and home != brief.plan.at_home)),
            "pain in warm-up": self.warm_up_asked(),
        }
        if moment == "screen" or fact.startswith(("pitches", "innings")):
            return "(0)"
        if fact in known:
            return f"({known[fact]})"
        places = range(len(brief.stations))
        by_exercise = {
            "which version": [
                p for p in places if len(versions_to_pick(self.exercise(p), self.line(p))) > 1
            ],
            "holds in set": [p for p in places if self.exercise(p).counted_in == "holds"],
            "reps in set": [p for p in places if self.exercise(p).counted_in == "reps"],
        }
        if fact in by_exercise:
            return f"({any_of(f'place == {p + 1}' for p in by_exercise[fact])})"
        if fact == "stand-in weight":
            return (
                f"({any_of(f'(place == {p + 1} && ({self.stand_in_asked(p)}))' for p in places)})"
            )
        if fact == "felt in set":
            watched = any_of(f"place == {p + 1}" for p in places if self.exercise(p).faults)
            return f"(felt_due && ({watched}))"
        return "(1)"

    def warm_up_asked(self) -> str:
        """Whether anything of the warm-up is left today."""
        brief, program = self.brief, self.brief.program
        second = readiness.second_session(brief.history.records, brief.today).outcome != "first"
        able = [
            s.exercise.name
            for s in brief.warm_up
            if limits.locked(s.exercise, brief.plan, brief.today).outcome == "open"
            and (not second or s.exercise.name in program.twice_a_day)
        ]
        gentle = any(name in program.gentle for name in able)
        return f"level == 0 -> {int(bool(able))} : {int(gentle)}"

    def stand_in_asked(self, place: int) -> str:
        """Whether something that may be stood in for is not here."""
        allowed = {name for name, by in self.line(place).without if by == "stand-in"}
        home = self.brief.plan.at_home
        absent = [
            " && ".join([f"(gone & {1 << n})" for n, t in enumerate(home) if name in t] or ["1"])
            for name, _sentence in self.exercise(place).stand_in
            if name in allowed
        ]
        return any_of(f"({one})" for one in absent)


def versions_to_pick(made: Exercise, line: Prescription) -> list[str]:
    """The allowed versions as easy as the plan's first one."""
    level = {version.name: version.level for version in made.versions}
    if not line.versions or line.versions[0] not in level:
        return []
    first = level[line.versions[0]]
    return [name for name in level if name in line.versions and level[name] == first]


def asked_lately(brief: Brief, step: Step) -> bool:
    """Whether a question with `every` days was asked fewer days ago."""
    last = dict(brief.history.own_asked).get(step.fact)
    if not step.every_days or last is None:
        return False
    return 0 <= (brief.today - date.fromisoformat(last)).days < step.every_days


def compared(test: Test, number: str) -> str:
    """A test of a number, in quarters."""
    values = [quarters(v) for v in test.values if not isinstance(v, str)]
    if len(values) != len(test.values):
        return "0"
    same = any_of(f"{number} == {v}" for v in values)
    return {
        "is": lambda: f"({same})",
        "is not": lambda: f"(!({same}))",
        "at least": lambda: f"({number} >= {values[0]})",
        "at most": lambda: f"({number} <= {values[0]})",
        "below": lambda: f"({number} < {values[0]})",
        "between": lambda: f"({number} >= {values[0]} && {number} <= {values[1]})",
    }[test.op]()


def one_of(ways: list[str]) -> str:
    """One of several ways; where there is none, a wall: it is never asked then."""
    return "false" if not ways else "if " + " ".join(f":: {way}" for way in ways) + " fi"


def steps_of(low: int, high: int, step: int) -> str:
    """Any value of a scale."""
    return f"val = {low}; do :: val + {step} <= {high} -> val = val + {step} :: break od"
