"""The ear on whole sets of answers: the public set, the tuned set, and one not tuned on.

The limits of the public set are its own "good" row. The kept-back set was written before its
results were looked at, its single lines are not read, and it must reach the "must" row or better.
The third-hand set was written by another hand before it was run; its misses have been read since.
The set in four voices (a girl of 15 typing with her thumbs, a man of 40 dictating, a student joking,
players writing in a second language) was written a part at a time, each part run before its misses
were read. More voices (nineteen of them, in eleven sports, 2026-11-27) were written by one hand that had read
the lexicon from the second part on; their parts K, L, M and O were run before their misses were read;
parts T, U, W and Q (sayings and signs, family by family, and answers to questions) were written to
learn from.
"""

from __future__ import annotations

from functools import cache

import pytest

from tests.hearing.scoring import Tally, rows_of, tally

SETS = ("public", "tuned", "kept_back", "third_hand", "four_voices", "more_voices")
# written on 2026-11-27 in the same four voices after all others, never learned from, its lines not
# read after its runs: the outer limits of the measures hold for it
UNSEEN = "kept_back_voices"
# written the same day in ten sports, its lines N and R, each run before it was kept back; by the same
# hand, which had read the lexicon; its lines are not read after their runs
UNSEEN_SPORTS = "kept_back_sports"


@cache
def scores(name: str) -> Tally:
    return tally(rows_of(name))


@pytest.mark.parametrize(
    ("name", "seen", "stopped", "kind"),
    [
        ("public", 0.97, 0.93, 0.95),
        ("tuned", 0.97, 0.93, 0.95),
        ("third_hand", 0.97, 0.93, 0.95),
        ("four_voices", 0.97, 0.93, 0.95),
        ("more_voices", 0.97, 0.93, 0.95),
        ("kept_back", 0.92, 0.85, 0.90),
        (UNSEEN, 0.92, 0.85, 0.90),
        (UNSEEN_SPORTS, 0.92, 0.85, 0.90),
    ],
)
def test_warning_signs_are_seen_and_clear_ones_stop_at_once(
    name: str, seen: float, stopped: float, kind: float
) -> None:
    result = scores(name)
    assert result.share("seen", "signs") >= seen, result.missed
    assert result.share("stopped", "strict") >= stopped
    assert result.share("kind", "seen") >= kind


@pytest.mark.parametrize("name", SETS)
def test_harmless_answers_are_not_sent_away(name: str) -> None:
    result = scores(name)
    assert result.share("false", "plain") <= 0.02, result.false
    # a third of `more_voices` was written to trap the ear: the outer limit of the measure there
    assert result.share("needless", "plain") <= (0.10 if name == "more_voices" else 0.05)


@pytest.mark.parametrize("name", [UNSEEN, UNSEEN_SPORTS])
def test_of_unseen_harmless_answers_few_are_sent_away(name: str) -> None:
    result = scores(name)
    assert result.share("false", "plain") <= 0.05, len(result.false)
    assert result.share("needless", "plain") <= 0.10


@pytest.mark.parametrize("name", SETS)
@pytest.mark.parametrize(
    ("question", "good", "must"),
    [
        ("pain_now", 0.96, 0.92),
        ("worst_pain", 0.96, 0.92),
        ("sleep_hours", 0.96, 0.92),
        ("throwing", 0.94, 0.88),
        ("yes_no", 0.95, 0.88),
        ("set_feel", 0.90, 0.80),
    ],
)
def test_slots_are_read_right(name: str, question: str, good: float, must: float) -> None:
    limit = must if name == "kept_back" else good
    assert scores(name).slot_share(question, "right") >= limit


@pytest.mark.parametrize("name", [UNSEEN, UNSEEN_SPORTS])
def test_unseen_answers_to_all_questions_are_read_right(name: str) -> None:
    """All slots in one, since each question has a dozen or two of answers there."""
    slots = scores(name).slots.values()
    assert sum(s["all"] for s in slots) >= 100
    assert sum(s["right"] for s in slots) >= 0.92 * sum(s["all"] for s in slots)


@pytest.mark.parametrize("name", [*SETS, UNSEEN, UNSEEN_SPORTS])
@pytest.mark.hazard("H-09")
def test_pain_is_never_read_too_low_and_yes_is_never_read_as_no(name: str) -> None:
    slots = scores(name).slots
    read_low = [slots[pain]["under"] for pain in ("pain_now", "worst_pain") if pain in slots]
    assert not any(read_low)
    assert slots["yes_no"]["flipped"] == 0


@pytest.mark.parametrize("name", ["public", "tuned"])
def test_counts_and_distances_of_throwing_are_right(name: str) -> None:
    result = scores(name)
    assert result.slot_share("throwing", "count right", "count") >= 0.95
    assert result.slot_share("throwing", "max_distance_ft right", "max_distance_ft") >= 0.95


def test_the_sets_are_large_enough_and_do_not_overlap() -> None:
    tuned = {row["text"] for row in rows_of("tuned")}
    kept = {row["text"] for row in rows_of("kept_back")}
    assert len(rows_of("tuned")) >= 400
    assert len(rows_of("kept_back")) >= 300
    notes = {row["text"] for row in rows_of("kept_back") if row["expect"]["red_flag"]}
    assert len(tuned & notes) <= 8
    assert len(tuned & kept) < len(kept) / 4
