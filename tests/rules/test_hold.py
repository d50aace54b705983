from datetime import date

import pytest

from coach.model.history import Hold
from coach.model.program import ClearanceWord, Plan
from coach.rules.hold import lifts, plain_word, wait_after_wrong, word_digest, word_matches

STOPPED = date(2026, 11, 20)
TODAY = date(2026, 11, 25)
HOLD = Hold(2, "S08", "same day", "numb_tingle", "it tingles", "2026-11-20", "", plan_version=3)


def outcome(
    plan: Plan, way: str = "in person", given: date = TODAY, for_hold: int | None = None
) -> str:
    return lifts(HOLD, way, given, plan, for_hold, TODAY).outcome


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("way", ["by word", "in person"])
def test_a_clearance_in_a_way_the_plan_names_lifts(plan: Plan, way: str) -> None:
    decision = lifts(HOLD, way, TODAY, plan, None, TODAY)
    assert decision.outcome == "lifted"
    assert decision.rule == "stop.hold"
    assert decision.place == plan.calls.place


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("way", ["by word", "in person", "new plan"])
def test_a_way_the_plan_does_not_name_lifts_nothing(plan: Plan, way: str) -> None:
    named = tuple(other for other in plan.clearance if other != way)
    assert outcome(plan._replace(clearance=named, version=9), way) == "kept"


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize(
    ("given", "expected"),
    [
        (date(2026, 11, 19), "kept"),
        (STOPPED, "lifted"),
        (TODAY, "lifted"),
        (date(2026, 11, 26), "kept"),
    ],
)
def test_a_clearance_counts_from_the_day_of_the_stop_to_today(
    plan: Plan, given: date, expected: str
) -> None:
    assert outcome(plan, given=given) == expected


@pytest.mark.parametrize(("number", "expected"), [(1, "kept"), (2, "lifted"), (3, "kept")])
@pytest.mark.hazard("H-01")
def test_a_clearance_for_another_stop_lifts_nothing(plan: Plan, number: int, expected: str) -> None:
    assert outcome(plan, for_hold=number) == expected


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize(("version", "expected"), [(2, "kept"), (3, "kept"), (4, "lifted")])
def test_only_a_newer_plan_lifts(plan: Plan, version: int, expected: str) -> None:
    assert outcome(plan._replace(version=version), "new plan") == expected


@pytest.mark.hazard("H-01")
def test_a_newer_plan_does_not_make_an_old_clearance_good(plan: Plan) -> None:
    assert outcome(plan._replace(version=4), "new plan", date(2026, 11, 19)) == "kept"


@pytest.mark.hazard("H-01")
def test_what_keeps_a_plan_closed_says_why(plan: Plan) -> None:
    whys = {
        lifts(HOLD, "by mail", TODAY, plan, None, TODAY).why,
        lifts(HOLD, "by word", date(2026, 11, 26), plan, None, TODAY).why,
        lifts(HOLD, "by word", date(2026, 11, 19), plan, None, TODAY).why,
        lifts(HOLD, "by word", TODAY, plan, 1, TODAY).why,
        lifts(HOLD, "new plan", TODAY, plan, None, TODAY).why,
    }
    assert len(whys) == 5


# ---------------------------------------------------------------- words

SALTS = ("00112233445566778899aabbccddeeff", "ffeeddccbbaa99887766554433221100")
WORDS = tuple(
    ClearanceWord(salt, word_digest(word, salt))
    for word, salt in zip(("amber otter", "quiet birch"), SALTS, strict=True)
)


@pytest.mark.hazard("H-01")
def test_a_word_is_found_at_its_place() -> None:
    assert word_matches("amber otter", WORDS, ()) == 0
    assert word_matches("quiet birch", WORDS, ()) == 1


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("typed", ["  Quiet   Birch ", "QUIET BIRCH", "quiet\tbirch"])
def test_case_and_blanks_do_not_matter(typed: str) -> None:
    assert plain_word(typed) == "quiet birch"
    assert word_matches(typed, WORDS, ()) == 1


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("typed", ["quiet birches", "quietbirch", "otter amber", "", "   "])
def test_a_wrong_or_empty_word_fits_nothing(typed: str) -> None:
    assert word_matches(typed, WORDS, ()) is None


@pytest.mark.hazard("H-01")
def test_a_spent_word_fits_no_more() -> None:
    assert word_matches("amber otter", WORDS, (WORDS[0].digest,)) is None
    assert word_matches("quiet birch", WORDS, (WORDS[0].digest,)) == 1


@pytest.mark.hazard("H-01")
def test_a_plan_without_words_fits_nothing() -> None:
    assert word_matches("amber otter", (), ()) is None


@pytest.mark.hazard("H-01")
def test_the_same_word_under_another_salt_has_another_digest() -> None:
    assert word_digest("amber otter", SALTS[0]) != word_digest("amber otter", SALTS[1])


@pytest.mark.hazard("H-01")
def test_words_bound_long_ago_still_fit() -> None:
    # scrypt with n = 16384, r = 8, p = 1 and 32 bytes, by another program (openssl kdf).
    kept = "c1dc9c5486609cc3cde287d876b3e43e9547ce7ff6a3fd0a9ace7a7bc39c2514"
    assert word_digest("amber otter", SALTS[0]) == kept


@pytest.mark.hazard("H-01")
def test_a_salt_that_is_no_hex_is_refused() -> None:
    with pytest.raises(ValueError, match="non-hexadecimal"):
        word_digest("amber otter", "salt")


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize(
    ("count", "seconds"),
    [(-1, 0), (0, 0), (1, 5), (2, 30), (3, 120), (4, 600), (5, 600), (99, 600)],
)
def test_each_wrong_word_makes_the_next_wait_longer(count: int, seconds: int) -> None:
    assert wait_after_wrong(count) == seconds


@pytest.mark.hazard("H-01")
def test_an_empty_word_fits_nothing_even_where_a_plan_was_made_with_one() -> None:
    empty = ClearanceWord(SALTS[0], word_digest("", SALTS[0]))
    assert word_matches("", (empty,), ()) is None
    assert word_matches(" - ", (empty,), ()) is None
