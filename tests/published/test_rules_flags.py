"""Warning signs and fever against what was published; the tiers against the table set here.

How soon each sign needs someone was set here in every row and awaits a clinician's signature; the
test keeps the signed table and the code from drifting apart. Where a source gives a tier of its own
it is checked that ours is never later.
"""

from __future__ import annotations

import pytest

from coach.model.flags import Tier
from coach.rules.red_flags import FLAGS

NOW, TODAY, BEFORE = Tier

# Set here, to be signed by a clinician.
TIERS = {
    NOW: "E01 E02 E03 E04 E05 E06 E07 E08 E09 E10 E11",
    TODAY: "S01 S02 S03 S04 S05 S06 S07 S08 S09 S10",
    BEFORE: "B01 B02 B03 B04 B05 B06 B07 B08 B09 B10 B11",
}


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("tier", Tier)
def test_each_sign_has_the_tier_of_the_table(tier: Tier) -> None:
    assert {flag.id for flag in FLAGS.values() if flag.tier is tier} == set(TIERS[tier].split())


# The latest tier the source allows. Rangan 2015 (as summed up on a clinicians' reference page,
# 2023): infected joint, unreduced dislocation, sudden serious loss of power or feeling: the same
# day; suspected tumour: within two weeks; acute cuff tear: the next clinic. A discharge sheet after
# shoulder keyhole surgery: chest pain or short breath: an emergency call; leg swelling: prompt.
LATEST = [
    ("E09", TODAY, "Rangan 2015, infected joint"),
    ("S02", TODAY, "Rangan 2015, infected joint"),
    ("E03", TODAY, "Rangan 2015, unreduced dislocation"),
    ("E05", TODAY, "Rangan 2015, sudden loss of power or feeling"),
    ("B07", BEFORE, "Rangan 2015, suspected tumour"),
    ("S06", BEFORE, "Rangan 2015, acute cuff tear"),
    ("E01", NOW, "discharge sheet, chest pain"),
    ("E02", NOW, "discharge sheet, short breath"),
    ("S03", TODAY, "discharge sheet, drainage and fever"),
    ("S04", TODAY, "discharge sheet, leg swelling"),
]


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize(("flag", "latest", "source"), LATEST)
def test_no_sign_waits_longer_than_its_source_allows(flag: str, latest: Tier, source: str) -> None:
    order = list(Tier)
    assert order.index(FLAGS[flag].tier) <= order.index(latest), source


# Dick and Diehl 2014: no training at 38 C (100.4 F) and above; other sources say 38.3 C, the lower
# one is used. 38 C is 100.4 F exactly: 38 * 9 / 5 + 32.
@pytest.mark.hazard("H-01")
@pytest.mark.parametrize("flag", ["B11", "S03"])
def test_fever_is_asked_at_38_c_in_both_units_and_both_wordings(flag: str) -> None:
    assert pytest.approx(100.4) == 38 * 9 / 5 + 32
    for wording in (FLAGS[flag].question, FLAGS[flag].wording_2):
        assert "38 C (100.4 F) or more" in wording


# Signs named in the sources, which the question must name too, in plain words.
SIGNS = [
    ("B11", "fever cough aches loose vomit", "Primos 1996, below the neck"),
    ("S01", "swollen heavy tight color veins", "Zakaria 2020; two case reports of throwers"),
    ("E06", "clumsy pee stool balance numb", "Jiang 2024 and two leaflets"),
    ("B07", "weight night lump cancer", "Mitchell 2005; Artus 2014"),
    ("S02", "hot red swollen", "Artus 2014, red hot tender joint"),
    ("S06", "pop weak", "Mitchell 2005, acute cuff tear"),
    ("S05", "slip", "Mitchell 2005"),
    ("S03", "wound leak redder hurt fever", "discharge sheet"),
    ("B03", "upper throws", "StatPearls; Bednar 2021"),
    ("B05", "ring little throw", "clinicians' reference page, ulnar nerve"),
]


@pytest.mark.hazard("H-01")
@pytest.mark.parametrize(("flag", "words", "source"), SIGNS)
def test_a_question_names_the_signs_of_its_source(flag: str, words: str, source: str) -> None:
    question = FLAGS[flag].question.lower()
    absent = [word for word in words.split() if word not in question]
    assert not absent, source
