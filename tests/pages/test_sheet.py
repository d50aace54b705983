"""The paper for the athlete says what the plan says, and no number more."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
import textstat

from coach.model.decisions import Refusal
from coach.model.flags import Section, Tier
from coach.pages.sheet import sheet
from coach.rules.dosing import opening_dose
from coach.rules.red_flags import FLAGS, flags_asked, person_from
from coach.session.showing import dose_words
from tests.pages.reading import PLANS, Shown, bound, loads_nothing

every_plan = pytest.mark.parametrize("plan", PLANS, ids=lambda plan: str(plan.stem))


@every_plan
def test_every_exercise_of_the_phase_stands_with_side_dose_position_and_cues(plan: Path) -> None:
    one = bound(plan)
    words = Shown(sheet(one)).words
    doses = {line.exercise: line for line in one.plan.doses}
    phase = next(phase for phase in one.program.phases if phase.name == one.plan.phase)
    shown = [e for e in one.program.exercises if e.name in phase.exercises and e.name in doses]
    assert shown
    for exercise in shown:
        dose = opening_dose(exercise, doses[exercise.name])
        assert not isinstance(dose, Refusal)
        side = "Both sides" if exercise.works == "both sides" else f"{one.plan.side.title()} arm"
        assert re.search(rf"{side}[^.]*: {re.escape(dose_words(dose))}\.", words)
        for sentence in (*exercise.set_up, *exercise.cues):
            assert sentence in words
        for fault in exercise.faults:
            assert fault.felt_as in words
            assert fault.put_right in words


@every_plan
def test_what_the_plan_does_not_use_is_not_on_the_paper(plan: Path) -> None:
    one = bound(plan)
    heads = re.findall(r"<h3>([^<]*)</h3>", sheet(one))
    assert not {name.capitalize() for name in one.plan.not_used} & set(heads)


@every_plan
def test_everybody_to_call_stands_on_the_first_page(plan: Path) -> None:
    one = bound(plan)
    head = Shown(sheet(one).partition("<h2>")[0]).words
    calls = [one.plan.calls.emergency, one.plan.calls.crisis, one.plan.calls.clinician]
    calls += [call for call in (one.plan.calls.urgent, one.plan.guardian) if call is not None]
    for call in calls:
        assert call.number in head
        assert call.who in head


@every_plan
def test_every_warning_sign_asked_of_this_athlete_stands_under_its_tier(plan: Path) -> None:
    from datetime import date

    one = bound(plan)
    page = sheet(one)
    person = person_from(one.plan, date.fromisoformat(one.plan.starts))
    asked = {flag for section in Section for flag in flags_asked(section, person)} - {"E11"}
    blocks = page.partition("When to stop and call")[2].split("<h3>")[1:4]
    for tier, block in zip(Tier, blocks, strict=True):
        due = {FLAGS[flag].say for flag in asked if FLAGS[flag].tier is tier}
        assert due <= set(re.findall(r"<li>([^<]*)</li>", block))
    assert f"harming yourself, call {one.plan.calls.crisis.number}" in Shown(page).words


@every_plan
def test_the_pain_numbers_are_the_plans(plan: Path) -> None:
    one = bound(plan)
    words = Shown(sheet(one)).words
    assert f"Pain now {one.plan.pain.to_start:g} of 10 or less" in words
    assert f"Over {one.plan.pain.in_exercise:g} of 10: end the set." in words


@every_plan
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_it_is_black_on_white_in_large_print_and_loads_nothing(plan: Path, paper: str) -> None:
    page = sheet(bound(plan), paper)
    assert loads_nothing(page)
    assert set(re.findall(r"#[0-9a-f]{3,6}\b", page.partition("</style>")[0])) == {"#000", "#fff"}
    assert "font:16pt" in page
    assert f"size:{'A4' if paper == 'a4' else 'letter'}" in page


def test_a_lock_that_opens_later_is_told_on_its_exercise() -> None:
    one = bound(next(plan for plan in PLANS if plan.stem == "d-o"))
    opened = one.plan.opened[0]._replace(day="2026-12-07")
    later = one._replace(plan=one.plan._replace(opened=(opened,)))
    assert "Not before Mon 7 Dec 2026." in Shown(sheet(later)).words
    assert "Not before" not in Shown(sheet(one)).words


def test_a_word_that_looks_like_markup_stays_a_word() -> None:
    one = bound(PLANS[0])
    odd = one._replace(program=one.program._replace(about="<script>alert(1)</script>"))
    assert "<script>" not in sheet(odd)


@every_plan
def test_its_sentences_are_easy_to_read(plan: Path) -> None:
    one = bound(plan)
    items = re.findall(r"<(?:p|li)[^>]*>([^<]*)</", sheet(one))
    items.remove(one.program.about)  # the clinician's own line on the program
    sentences = [s for item in items for s in re.split(r"(?<=[a-z0-9][.?:]) +", item)]
    long = [s for s in sentences if len(s.split()) >= 5]
    hard = [
        s
        for s in long
        if textstat.textstat.flesch_kincaid_grade(re.sub(r"\d{3} \d{4}", "5", s)) > 6
    ]
    assert hard == []
