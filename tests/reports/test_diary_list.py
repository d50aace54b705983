"""The diary list tells what was recorded, with units, and neither praises nor blames."""

from __future__ import annotations

import re

from coach.model.history import DayRecord, Done, Hold
from coach.reports.diary_list import NOTHING, Entry, diary_lines, when

OPENED = "2026-11-09T18:30:00+01:00"
FULL = DayRecord(
    "2026-11-09", OPENED, "done", 1, 1.0, 2.0, 2.5, 5.5, "light", "game",
    done=(Done("reach-across row", 3, loaded=True, ended_at=OPENED),
          Done("hip-hinge reach", 1, loaded=False, ended_at=OPENED, result="over")),
    effort=6.0, minutes=25.0, notes=('"sore after school"',),
)  # fmt: skip


def test_an_empty_diary_says_so() -> None:
    assert diary_lines([]) == [NOTHING]


def test_a_day_tells_each_recorded_fact_with_its_unit() -> None:
    assert diary_lines([Entry(OPENED, FULL)]) == [
        "Mon 9 Nov 2026, 18:30. Done.",
        "  reach-across row: 3 sets with a load",
        "  hip-hinge reach: 1 set, pain over the limit",
        "  Morning pain: 1 of 10",
        "  Pain at rest: 2 of 10",
        "  Most pain in a set: 2.5 of 10",
        "  Slept: 5.5 h",
        "  Throwing the day before: light",
        "  Throwing that day: game",
        "  Effort: 6 of 10",
        "  Time: 25 min",
        '  Note: "sore after school"',
    ]


def test_what_was_not_asked_is_not_shown_but_zero_is() -> None:
    bare = DayRecord("2026-11-09", OPENED, "partial", 1, pain_now=0.0)
    assert diary_lines([Entry(OPENED, bare)]) == [
        "Mon 9 Nov 2026, 18:30. Cut off before the end.",
        "  Pain at rest: 0 of 10",
    ]


def test_a_stop_shows_the_words_typed() -> None:
    hold = Hold(1, "S08", "same day", "numb_tingle", "my pinky tingles", "2026-11-09", OPENED, 1)
    expected = [
        "Mon 9 Nov 2026, 18:30. Stopped.",
        '  Plan closed, code S08. You typed: "my pinky tingles"',
    ]
    assert diary_lines([Entry(OPENED, None, hold)]) == expected
    assert diary_lines([Entry(OPENED, FULL._replace(ended="stopped"), hold)])[:2] == expected


def test_sessions_stay_in_the_order_given_and_are_parted() -> None:
    lines = diary_lines([Entry(OPENED, None), Entry("2026-11-08T09:05:00+01:00", None)])
    assert lines == [
        "Mon 9 Nov 2026, 18:30. Cut off before the end.",
        "",
        "Sun 8 Nov 2026, 09:05. Cut off before the end.",
    ]


def test_starts_with_nothing_to_do_are_shown_once_a_day() -> None:
    idle = FULL._replace(ended="none", done=(), notes=())
    other_day = "2026-11-08T09:05:00+01:00"
    opened = (OPENED, OPENED, other_day, other_day)
    text = "\n".join(diary_lines([Entry(at, idle) for at in opened]))
    assert text.count("No exercises that day.") == 2
    kept = diary_lines([Entry(OPENED, idle), Entry(OPENED, FULL), Entry(OPENED, idle)])
    assert "\n".join(kept).count("No exercises that day.") == 2


def test_an_instant_that_cannot_be_read_is_not_guessed() -> None:
    assert when("yesterday") == "Day not known"


def test_no_word_praises_blames_or_counts_days() -> None:
    ends = ("done", "by choice", "partial", "stopped", "none", "odd")
    text = "\n".join(diary_lines([Entry(OPENED, FULL._replace(ended=end)) for end in ends]))
    assert not re.search(r"(?i)streak|great|good job|in a row|missed|skipped|failed|!", text)
