"""The one loop: what is on disk before it is on screen, breaks, timers, stops, faults."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from coach.drivers import recorded
from coach.drivers.drive import at_a_terminal, run
from coach.drivers.replay import diary_in_memory
from coach.session import engine
from tests.drivers.fakes import MONDAY, Athlete, FullDisk, HandClock, bound_plan

if TYPE_CHECKING:
    from collections.abc import Mapping

    from coach.journal import Journal
    from coach.model.turns import Line, Turn

FIRST_PAIN = "set line in set 1 of side-lying external rotation"
FIRST_REST = "rest after set 1 of side-lying external rotation"


def sit(
    journal: Journal,
    own: Mapping[str, list[str]] | None = None,
    *,
    later: timedelta = timedelta(0),
    leave_at: int | None = None,
    plan: str = "d-o",
) -> tuple[int, Athlete]:
    athlete = Athlete(HandClock(MONDAY + later), own)
    athlete.leave_at = leave_at
    code = run(bound_plan(plan), athlete, journal, athlete.clock)
    return code, athlete


@pytest.fixture
def journal() -> Journal:
    return diary_in_memory()


def kinds(journal: Journal, session: int = 1) -> list[str]:
    return [kind for kind, _body, _at in journal.events(session)]


# ---------------------------------------------------------------- a whole day


def test_a_good_day_ends_done_with_its_record_and_code_0(journal: Journal) -> None:
    code, athlete = sit(journal)
    (sitting,) = journal.sessions()
    assert code == 0
    assert sitting.record is not None
    assert sitting.record.ended == "done"
    assert {done.exercise for done in sitting.record.done} >= {"reach-across row"}
    assert "Done for today." in athlete.words()


def test_the_first_record_names_program_plan_and_rules(journal: Journal) -> None:
    sit(journal)
    header = journal.sessions()[0].header
    assert header["program"] == bound_plan().program.name
    assert header["bound"] == bound_plan().digest
    assert len(header["rules"]) == 64


@pytest.mark.hazard("H-06")
def test_every_turn_is_on_disk_before_it_is_shown(journal: Journal) -> None:
    class Watching(Athlete):
        late: list[tuple[str, ...]]

        def present(self, turn: Turn, lines: tuple[Line, ...]) -> None:
            super().present(turn, lines)
            cut = journal.unfinished()
            kept = cut.shown_last if cut is not None else None
            words = tuple(line.text for line in lines)
            if kept is not None and words and kept[: len(words)] != words:
                self.late.append(words)

    athlete = Watching(HandClock())
    athlete.late = []
    run(bound_plan(), athlete, journal, athlete.clock)
    assert athlete.late == []


# ---------------------------------------------------------------- stops


def test_a_sign_at_any_prompt_stops_alone_waits_for_enter_and_exits_10(journal: Journal) -> None:
    code, athlete = sit(journal, {"sleep last night": ["5, my pinky tingles and wont stop"]})
    hold = journal.open_hold()
    assert code == 10
    assert hold is not None
    assert "pinky" in hold.said
    assert athlete.alone[-1]
    assert athlete.asked[-1] == "enter"
    assert 'You typed: "5, my pinky tingles and wont stop".' in athlete.shown[-1]


def test_a_stop_by_a_yes_shows_no_token_and_no_empty_quote(journal: Journal) -> None:
    _code, athlete = sit(journal, {"screen arm": ["yes"], "numb tingle": ["yes"]})
    assert athlete.alone[-1]
    assert "{typed}" not in athlete.words()
    assert 'You typed: "".' not in athlete.shown[-1]


def test_the_next_start_shows_the_stop_first_and_exits_10(journal: Journal) -> None:
    sit(journal, {"pain now": ["my chest feels tight and I cant catch my breath"]})
    code, athlete = sit(journal, later=timedelta(days=2))
    assert code == 10
    assert athlete.asked == ["enter"]
    assert athlete.shown[0][0].startswith("STOP.")


def test_a_worse_sign_typed_at_the_stop_gets_its_own_stop(journal: Journal) -> None:
    own = {"screen arm": ["yes"], "numb tingle": ["yes"], "enter": ["I cant breathe", ""]}
    _code, athlete = sit(journal, own)
    assert "Call 112 now." in athlete.shown[-1]
    assert athlete.asked[-2:] == ["enter", "enter"]


def test_a_stop_that_cannot_be_saved_is_shown_and_says_so(journal: Journal) -> None:
    athlete = Athlete(HandClock(), {"pain now": ["my chest feels tight and I cant breathe"]})
    code = run(bound_plan(), athlete, FullDisk(journal, 2), athlete.clock)
    words = athlete.words()
    assert code == 74
    assert "STOP." in words
    assert "This stop could not be saved. Tell M. Aalto of it." in words
    assert athlete.asked[-1] == "enter"
    assert "All you typed is saved." not in words
    assert "The disk is full." in words


def test_no_session_starts_where_nothing_can_be_written(journal: Journal) -> None:
    athlete = Athlete(HandClock())
    code = run(bound_plan(), athlete, FullDisk(journal, 0), athlete.clock)
    assert code == 74
    assert athlete.asked == []
    assert athlete.shown == [("The disk is full.",)]


@pytest.mark.hazard("H-06")
def test_a_disk_that_fills_up_shows_no_further_turn(journal: Journal) -> None:
    athlete = Athlete(HandClock())
    code = run(bound_plan(), athlete, FullDisk(journal, 4), athlete.clock)
    assert code == 74
    assert athlete.shown[-1] == ("The disk is full.",)
    assert len(journal.events(1)) == 3


# ---------------------------------------------------------------- what was typed


def test_a_very_long_answer_is_heard_to_2000_letters_and_told_so(journal: Journal) -> None:
    _code, athlete = sit(journal, {"plan is mine": ["x" * 1_000_000, "yes"]})
    body = journal.events(1)[0][1]
    assert len(str(body["text"])) == 2000
    assert "That was long. I read the first 2,000 letters of it." in athlete.words()


def test_pasted_lines_answer_no_safety_question(journal: Journal) -> None:
    _code, athlete = sit(journal, {"screen arm": ["no\nno\nno", "no"]})
    assert "Several lines came at once, so I took none. Type your answer." in athlete.words()
    assert athlete.asked.count("screen arm") == 2
    texts = [body.get("text") for _kind, body, _at in journal.events(1)]
    assert "no\nno\nno" not in texts


def test_of_pasted_lines_elsewhere_the_first_is_taken(journal: Journal) -> None:
    _code, athlete = sit(journal, {"sleep last night": ["8\n5"]})
    assert "Several lines came at once. I took the first one only." in athlete.words()
    record = journal.sessions()[0].record
    assert record is not None
    assert record.sleep_h == 8


@pytest.mark.parametrize("prompt", ["screen arm", "sleep last night"])
def test_a_sign_in_any_pasted_line_is_heard(journal: Journal, prompt: str) -> None:
    code, _athlete = sit(journal, {prompt: ["8\nmy hand is numb"]})
    assert code == 10


# ---------------------------------------------------------------- timers


def test_more_lengthens_a_rest_and_the_time_gone_is_kept(journal: Journal) -> None:
    _code, athlete = sit(journal, {FIRST_REST: ["more"]})
    first, second = [timed for timed in athlete.timed if timed[0] == FIRST_REST]
    assert (first[1:], second[1:]) == ((60, 0), (90, 7))


def test_words_over_a_rest_never_shorten_it(journal: Journal) -> None:
    _code, athlete = sit(journal, {FIRST_REST: ["why", "ready"]})
    rests = [timed for timed in athlete.timed if timed[0] == FIRST_REST]
    assert [gone for _name, _seconds, gone in rests] == [0, 7, 14]
    assert {seconds for _name, seconds, _gone in rests} == {60}


HOLD = "hold 2 in set 1 of cross-body stretch"


@pytest.mark.parametrize("typed", ["why", "left", "my back itches", "pause"])
def test_a_hold_broken_off_is_done_and_never_started_again(journal: Journal, typed: str) -> None:
    _code, athlete = sit(journal, {HOLD: [typed], "paused": ["go"]})
    names = [name for name, _seconds, _gone in athlete.timed if name.startswith("hold ")]
    assert names.count(HOLD) == 1
    assert len(names) == 5


def test_enter_alone_neither_ends_a_hold_nor_reaches_the_diary(journal: Journal) -> None:
    _code, athlete = sit(journal, {HOLD: ["", "  "]})
    runs = [gone for name, _seconds, gone in athlete.timed if name == HOLD]
    assert runs == [0, 7, 14]
    texts = [body["text"] for kind, body, _at in journal.events(1) if kind == recorded.TYPED]
    assert all(text.strip() for text in map(str, texts))


# ---------------------------------------------------------------- a break


def test_a_pause_waits_for_go_and_asks_nothing_after_a_short_break(journal: Journal) -> None:
    code, athlete = sit(journal, {FIRST_PAIN: ["pause"], "paused": ["+20 what", "go"]})
    assert code == 0
    assert "Paused. All you typed is saved." in athlete.words()
    assert athlete.asked.count("paused") == 2
    assert "sets since" not in athlete.asked
    assert recorded.PAUSED in kinds(journal)


def test_a_break_of_over_five_minutes_asks_what_happened(journal: Journal) -> None:
    _code, athlete = sit(journal, {FIRST_PAIN: ["pause"], "paused": ["+400 go"]})
    assert "sets since" in athlete.asked


def test_a_break_of_over_an_hour_asks_for_signs_again(journal: Journal) -> None:
    _code, athlete = sit(journal, {FIRST_PAIN: ["pause"], "paused": ["+3700 go"]})
    after = athlete.asked[athlete.asked.index("paused") :]
    assert any(name.startswith("screen") for name in after)


def test_a_break_of_over_four_hours_closes_the_session_and_begins_another(
    journal: Journal,
) -> None:
    _code, athlete = sit(journal, {FIRST_PAIN: ["pause"], "paused": ["+14500 go"]})
    ends = [sitting.record.ended for sitting in journal.sessions() if sitting.record]
    assert ends[-1] == "partial"
    assert len(journal.sessions()) == 2
    assert "It is kept as it was." in athlete.words()


def test_a_sign_typed_while_paused_stops(journal: Journal) -> None:
    code, _athlete = sit(journal, {FIRST_PAIN: ["pause"], "paused": ["my hand went numb and cold"]})
    assert code == 10


def test_stop_while_paused_ends_the_work(journal: Journal) -> None:
    code, _athlete = sit(
        journal, {FIRST_PAIN: ["pause"], "paused": ["stop"], "stop for today": ["today"]}
    )
    assert code == 11


def test_an_answer_after_hours_away_is_not_taken_but_a_sign_is(journal: Journal) -> None:
    _code, athlete = sit(journal, {FIRST_PAIN: ["+4000 12, pain 0"]})
    assert "your last answer was not taken" in athlete.words()
    other = diary_in_memory()
    code, _athlete = sit(other, {FIRST_PAIN: ["+4000 my hand is numb"]})
    assert code == 10


def test_end_of_input_keeps_the_session_and_exits_11(journal: Journal) -> None:
    code, athlete = sit(journal, leave_at=3)
    assert code == 11
    assert athlete.shown[-1] == ("No more typing came. All you typed is saved.",)
    assert journal.unfinished() is not None


# ---------------------------------------------------------------- faults of ours


def test_a_fault_of_ours_shows_no_exercise_keeps_the_answer_and_exits_70(
    journal: Journal, monkeypatch: pytest.MonkeyPatch
) -> None:
    real = engine.take

    def broken(*arguments: object) -> object:
        if journal.unfinished() and len(journal.events(1)) == 25:
            raise RuntimeError("secret answer")
        return real(*arguments)  # type: ignore[arg-type]

    monkeypatch.setattr(engine, "take", broken)
    code, athlete = sit(journal)
    kind, body, _at = journal.events(1)[-1]
    assert code == 70
    assert kind == recorded.FAULT
    assert body["text"]
    assert "secret" not in str(body)
    assert "The fault is ours, not yours." in athlete.words()
    assert athlete.alone[-1]
    assert not any("Set " in line or "reps" in line for line in athlete.shown[-1])
    assert journal.unfinished() is None


def test_a_fault_while_the_disk_is_full_is_still_shown(
    journal: Journal, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(*_arguments: object) -> object:
        raise RuntimeError

    monkeypatch.setattr(engine, "take", broken)
    athlete = Athlete(HandClock())
    code = run(bound_plan(), athlete, FullDisk(journal, 1), athlete.clock)
    assert code == 70
    assert "Stop for today: no more exercise." in athlete.words()


@pytest.mark.parametrize(
    ("term", "ends", "moves"),
    [
        ("xterm", (True, True), True),
        ("dumb", (True, True), False),
        ("", (True, True), False),
        ("xterm", (False, True), False),
        ("xterm", (True, False), False),
    ],
)
def test_prompts_move_only_at_a_terminal_that_can(
    monkeypatch: pytest.MonkeyPatch, term: str, ends: tuple[bool, bool], moves: bool
) -> None:
    class End:
        def __init__(self, terminal: bool) -> None:
            self.terminal = terminal

        def isatty(self) -> bool:
            return self.terminal

    monkeypatch.setenv("TERM", term)
    monkeypatch.setattr("sys.stdin", End(ends[0]))
    monkeypatch.setattr("sys.stdout", End(ends[1]))
    monkeypatch.setattr("sys.platform", "linux")
    assert at_a_terminal() is moves


def test_a_closed_input_is_no_terminal(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("sys.stdin", None)
    assert at_a_terminal() is False


def test_a_fault_in_the_record_itself_still_ends_safely(
    journal: Journal, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(*_arguments: object) -> object:
        raise RuntimeError

    monkeypatch.setattr(engine, "take", broken)
    monkeypatch.setattr("coach.drivers.drive.day_record", broken)
    code, athlete = sit(journal)
    assert code == 70
    assert "Stop for today: no more exercise." in athlete.words()
