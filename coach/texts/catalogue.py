"""The closed list of findings: id, how much it weighs, and why it matters.

Law: an error refuses every session with that text; a warning is for the clinician to read. An id
is stable once published. What happened and what to write is said where the mistake is seen.
"""

from __future__ import annotations

from typing import Final, NamedTuple


class Check(NamedTuple):
    """One kind of finding: `level` is error or warning; `why` is one or two plain sentences."""

    level: str
    why: str


_NOT_AS_MEANT: Final = "It would be read as something else than it was meant."
_HALF: Final = "A text that is half understood would run a session nobody wrote."
_GUESS: Final = "The coach guesses no number and no unit; a wrong guess would be a dose."
_NO_DEFAULT: Final = "The coach fills nothing in; what a session needs must be written."
_ONE_NAME: Final = "A thing has one name, spelt alike everywhere, or lines miss each other."
_DOSE_IN_PLAN: Final = "The dose belongs to the plan, where its caps hold it."
_DEAD: Final = "The line would never do anything, though it looks as if it did."
_SAFETY: Final = (
    "The coach's safety questions stand in every session, in their own words and order."
)
_READS: Final = "It is read aloud in the head of somebody sore, young and tired."
_SEEN_BY_NOBODY: Final = "Nobody would notice that it is not read."

_READING: Final = {
    "file.missing": Check("error", "Without it there is nothing to check."),
    "file.unreadable": Check("error", "What cannot be opened cannot be checked."),
    "file.not_regular": Check("error", "Only plain files are read; others may never end."),
    "file.outside": Check(
        "error", "A program is read from its own folder only, so that it travels whole."
    ),
    "file.too_big": Check(
        "error", "A text of this kind is under 256 kB; a bigger one is a mistake."
    ),
    "file.encoding": Check("error", "Only UTF-8 is read alike on every machine. Save it as UTF-8."),
    "file.empty": Check("error", _NO_DEFAULT),
    "file.no_keys": Check(
        "error", "The first line says what kind of file it is: a key and a name."
    ),
    "file.first_line": Check(
        "error", "The first line says what kind of file it is: a key and a name."
    ),
    "file.stray": Check("error", _SEEN_BY_NOBODY),
    "file.name": Check("error", _SEEN_BY_NOBODY),
    "text.tab": Check("error", "A tab has no width of its own. Use blanks."),
    "text.odd_blank": Check(
        "error", "It looks like a blank and is not, so two names would differ."
    ),
    "text.invisible": Check(
        "error", "It cannot be seen, so two names that look alike would differ."
    ),
    "text.curly_quote": Check("error", "Only straight quotes work as quotes, and they look alike."),
    "text.bullet": Check("error", "A list begins with a dash and a blank."),
    "text.control_character": Check("error", "It could move or hide what an athlete sees."),
    "text.colon": Check("error", "A colon and a blank make a key. Put the sentence in quotes."),
    "text.quote_open": Check("error", _HALF),
    "text.key_alone": Check(
        "error", "Each line is a key, a colon and a value, or a dash and a value."
    ),
    "text.key_odd": Check(
        "error", "Each line is a key, a colon and a value, or a dash and a value."
    ),
    "text.key_twice": Check(
        "error", "Only one of the two could count, and nobody would know which."
    ),
    "text.first_letter": Check(
        "error", "The sign has a meaning of its own here. Put the words in quotes."
    ),
    "text.indent": Check("error", "How far a line is set in says what it belongs to."),
    "text.brackets": Check("error", "Names stand on one line with commas, sentences under dashes."),
    "text.block": Check("error", "A sentence stands on one line; several stand under dashes."),
    "text.anchor": Check(
        "error", "A value must stand where it is used, so that it can be read there."
    ),
    "text.tag": Check("error", "A value is words; nothing else is made of it."),
    "text.directive": Check("error", "The reading is always the same; no file changes it."),
    "text.two_documents": Check("error", "One file holds one thing."),
    "text.two_lines": Check("error", "Names, values and sentences stand on one line each."),
    "text.remark": Check("error", "It may be half of a sentence. A remark stands on its own line."),
    "text.too_deep": Check("error", "No text of this kind is so deep; a reader would be lost."),
    "text.broken": Check("error", _HALF),
}

_VALUES: Final = {
    "value.empty": Check("error", _NO_DEFAULT),
    "value.empty_piece": Check("error", "A piece may have been lost there."),
    "value.not_words": Check("error", _HALF),
    "value.not_listed": Check("error", "Sentences and entries stand under dashes, one each."),
    "value.not_sentence": Check("error", "Sentences and entries stand under dashes, one each."),
    "value.not_keys": Check("error", _HALF),
    "value.names_on_one_line": Check("error", "Names stand on one line with commas."),
    "value.name_twice": Check("error", "One of the two may have been meant as another name."),
    "value.decimal_comma": Check(
        "error", "Commas part the pieces of a line, so 2,5 would be 2 and 5."
    ),
    "value.leading_nought": Check("error", "Some readers take such a number for another one."),
    "value.not_a_number": Check("error", _GUESS),
    "value.not_whole": Check("error", _GUESS),
    "value.unit_missing": Check("error", _GUESS),
    "value.unit_wrong": Check("error", _GUESS),
    "value.out_of_range": Check(
        "error", "It looks like a slip of typing; no session may rest on it."
    ),
    "value.range_dash": Check(
        "error", "A range is written with the word to, so that no minus is read."
    ),
    "value.range_turned": Check("error", "A range goes from the smaller to the larger number."),
    "value.date": Check("error", "Two countries read 03/04 as two days. Year, month, day is one."),
    "value.date_impossible": Check(
        "error", "The plan would start or end on a day that never comes."
    ),
    "value.not_in_list": Check(
        "error", "The coach knows what to do for these words and no others."
    ),
    "name.form": Check("error", _ONE_NAME),
    "name.joining_word": Check(
        "error", "These words join lines, so such a name could not be read back."
    ),
    "name.number": Check("error", "The number tells an old copy from a new one."),
    "name.taken": Check("error", _ONE_NAME),
    "name.twice": Check("error", _ONE_NAME),
    "key.missing": Check("error", _NO_DEFAULT),
    "key.unknown": Check(
        "error", "A line that the coach does not know would be dropped in silence."
    ),
    "language.missing": Check("error", "An athlete who reads that language would miss the line."),
    "language.count": Check("error", "Line by line, both languages say the same."),
    "language.figures": Check("error", "Two languages must not give two numbers."),
    "language.form": Check("error", _ONE_NAME),
    "language.unknown": Check("error", _SEEN_BY_NOBODY),
    "language.too_many": Check("error", "The coach shows one language and keeps one beside it."),
}

_WORDS: Final = {
    "words.dose": Check("error", _DOSE_IN_PLAN),
    "words.side": Check("error", "The side is the plan's; the coach shows it on every work line."),
    "words.push": Check("error", "Pain over the ceiling ends a set. No sentence may say other."),
    "words.soften": Check("error", _SAFETY),
    "words.claim": Check("error", "Nobody can promise that, and the coach does not clear anybody."),
    "words.blame": Check("error", "Blame makes people hide pain."),
    "words.cheer": Check("error", "Cheering pulls answers up. The coach stays calm."),
    "words.trade_word": Check("warning", _READS),
    "words.long_sentence": Check("warning", _READS),
    "words.reading_grade": Check("warning", _READS),
}

_PROGRAM: Final = {
    "exercise.unknown": Check("error", _ONE_NAME),
    "exercise.unused": Check("warning", "It can never come up, in no phase and no list."),
    "range.one_step": Check("error", _DEAD),
    "version.order": Check("error", "Easier is found by going back in the order."),
    "version.fits": Check("error", "The athlete picks between them by that sentence."),
    "fault.no_room": Check("error", _DEAD),
    "equipment.load": Check("error", "What is not named is never looked for at home."),
    "equipment.stand_in": Check("error", _DEAD),
    "questions.form": Check("error", _NO_DEFAULT),
    "questions.too_many": Check(
        "error", "Too many questions teach people to answer without reading."
    ),
    "phase.never_opens": Check("error", "Nobody could tell when the phase may be entered."),
    "phase.first_waits": Check("error", "An athlete could never enter any phase."),
    "list.gentle_loaded": Check(
        "error", "The gentle list is for days of pain, when no load is lifted."
    ),
    "list.twice_a_day": Check(
        "error", "A second session on a day offers mobility and nothing else."
    ),
    "list.locked": Check("error", "A list would bring up what only a plan may open."),
    "heard.group": Check("error", "The phrase would be listened for in vain."),
    "heard.phrase": Check("error", "It is typed every day, so every session would be stopped."),
    "wall.form": Check("error", "A wall that is not understood holds nothing."),
    "wall.unknown": Check("error", "A wall that is not understood holds nothing."),
}

_SCRIPTS: Final = {
    "script.line_unknown": Check(
        "error", "A line that the coach does not know would be dropped in silence."
    ),
    "ask.left_out": Check(
        "error",
        "The coach's own questions all stand in a script, so that it reads whole.",
    ),
    "ask.order": Check(
        "error", "The coach asks in this order; a script that reads otherwise misleads."
    ),
    "ask.twice": Check(
        "error", "One question twice wears out; two answers would have to be weighed."
    ),
    "ask.in_branch": Check("error", "The coach's own questions hang on no answer."),
    "ask.unknown": Check("error", _ONE_NAME),
    "ask.other_moment": Check("error", "Each question of the coach has its own moment."),
    "ask.wording": Check("error", "Only the screen has reviewed wordings to choose from."),
    "ask.not_one_question": Check("error", "One question at a time, and it must look like one."),
    "ask.scale": Check(
        "error",
        "The coach adds scale, unit and choices, so no wording can turn them round.",
    ),
    "ask.sample_value": Check("error", "A figure in a question pulls the answer towards it."),
    "ask.leading": Check("error", "A question that leads hides pain."),
    "answers.pain_ends": Check(
        "error", "Every pain question has the same two ends, or ceilings mean nothing."
    ),
    "answers.number": Check("error", _GUESS),
    "answers.count": Check("error", "A choice is made among two to seven names."),
    "answers.command_word": Check("error", "The word would act, and never be an answer."),
    "screen.left_out": Check("error", _SAFETY),
    "screen.reworded": Check("error", _SAFETY),
    "when.form": Check("error", _HALF),
    "when.empty": Check("error", _DEAD),
    "when.too_deep": Check(
        "error", "Three branches deep, nobody sees any more when a line is said."
    ),
    "when.unknown_fact": Check(
        "error", "A condition may speak only of what has surely been asked by then."
    ),
    "when.unknown_answer": Check("error", "The branch could never open."),
    "when.not_compared": Check("error", "It has no list of answers to compare with."),
    "when.never": Check("error", "The branch could never open."),
    "when.always": Check("error", "A branch that always opens is no branch."),
    "effect.outside": Check("error", "An effect hangs on an answer; else it would act every day."),
    "effect.moment": Check("error", "It can only act after a set."),
    "effect.no_room": Check("error", _DEAD),
    "effect.target": Check("error", _ONE_NAME),
    "stop.not_last": Check("error", "After a stop nothing more is said or asked."),
}

_PLAN: Final = {
    "plan.program": Check("error", "A plan is written for one program and its exercises."),
    "plan.initials": Check(
        "error", "A plan carries no full name, so that a lost file harms nobody."
    ),
    "plan.born": Check("error", "Age decides on the guardian, the sleep and the pitching rules."),
    "plan.sport": Check("error", "The sport stands on the hand-out and the visit page."),
    "plan.age": Check("error", "It looks like a slip of typing, and age decides on rules."),
    "plan.runs": Check("error", "Outside these days no session is held."),
    "plan.surgery": Check("error", "Surgery adds questions to the screen."),
    "guardian.missing": Check(
        "error", "Under 18 somebody grown up must be reachable when a stop comes."
    ),
    "guardian.pieces": Check(
        "error", "Under 18 somebody grown up must be reachable when a stop comes."
    ),
    "call.number": Check("error", "A stop shows this number; it must be one that can be called."),
    "call.who": Check("error", "A stop says whom to call, not a number alone."),
    "dates.review": Check("error", "No day would be inside the plan."),
    "dates.long_run": Check(
        "warning", "A shoulder changes sooner; half a year is long without a look."
    ),
    "dates.phase": Check("error", "On the first day the phase would not be open yet."),
    "dates.opened": Check("error", "It would open after the plan has ended."),
    "dates.throwing": Check("error", "It would open after the plan has ended."),
    "dates.surgery": Check("error", "One of the two dates is wrong."),
    "phase.unknown": Check("error", _ONE_NAME),
    "phase.opened": Check("error", "Only a person opens a phase, on a day."),
    "phase.nothing_dosed": Check("error", "Every session would be empty."),
    "opened.pieces": Check(
        "error",
        "What is locked opens by name, date and person; a date alone never opens.",
    ),
    "opened.unknown": Check("error", _ONE_NAME),
    "lock.not_opened": Check(
        "error", "A locked family opens only in the plan, by name, date and person."
    ),
    "clearance.word_by_hand": Check(
        "error", "A word that can be read in the file clears nothing safely."
    ),
    "clearance.words_unused": Check("error", _DEAD),
    "pain.piece": Check("error", "The ceilings decide when a set ends; none may be lost."),
    "pain.missing": Check("error", "The ceilings decide when a set ends; none may be lost."),
    "limits.piece": Check("error", "A session without its limits is not held."),
    "limits.missing": Check("error", "A session without its limits is not held."),
    "home.load_unsaid": Check("error", _GUESS),
    "home.equipment": Check("error", "The exercise could not be done."),
    "throwing.cleared": Check("error", "Throwing opens only with a dated clearance by a person."),
    "throwing.table": Check("error", "The coach shows steps of a table it knows, and no others."),
    "throwing.class": Check(
        "error",
        "The classes belong to two published programs, of 21 steps for pitchers (Axe 2001) and of "
        "13 for catchers (Axe 2009), and to no other table.",
    ),
    "throwing.piece": Check("error", _HALF),
    "throwing.pieces": Check("error", _NO_DEFAULT),
    "throwing.age": Check("error", "The table was made for grown or growing arms of another age."),
    "throwing.steps_turned": Check("error", "No step would be left to throw."),
    "pitches.piece": Check("error", _HALF),
    "pitches.position": Check("error", "Only pitches in games are counted by this line."),
    "pitches.edition": Check("error", "The editions differ; the coach picks none by itself."),
    "pitches.age": Check("error", "At that age no rest days are known, so the most would count."),
    "pitches.unsaid": Check(
        "warning", "Then no session asks for game pitches, and no rest is known."
    ),
    "steps.none": Check("error", "The throwing line counts steps, so there must be some."),
    "steps.unused": Check("error", _DEAD),
    "steps.missing": Check("error", "A jump over a step is more than one step up."),
    "steps.order": Check("error", "Steps are thrown in order, so they stand in order, each once."),
    "steps.piece": Check("error", _GUESS),
    "steps.distance": Check("error", "Nobody can tell metres from feet, nor throw no distance."),
    "steps.mixed": Check("error", "A table stays in one unit of distance, so that it compares."),
    "changed.rule": Check(
        "error",
        "The other rules hold for every plan, or are only made stricter elsewhere.",
    ),
    "changed.reason": Check("error", "A changed rule is shown with its reason."),
    "wall.passed": Check(
        "error",
        "A plan is only stricter than its program; nothing is trimmed in silence.",
    ),
}

_DOSES: Final = {
    "dose.missing": Check("error", "An exercise has a dose or is not used; nothing is left open."),
    "dose.and_not_used": Check("error", "One of the two lines is wrong."),
    "dose.exercise_unknown": Check("error", _ONE_NAME),
    "dose.axis_unknown": Check(
        "error", "The exercise says which lines its dose has, no more, no fewer."
    ),
    "dose.name_unknown": Check("error", _ONE_NAME),
    "dose.piece": Check("error", _HALF),
    "dose.only_and_more": Check("error", "One half of the line says the other is not meant."),
    "dose.cap_missing": Check(
        "error", "What goes up must say where it ends; the coach invents no cap."
    ),
    "dose.step_missing": Check("error", "The coach invents no step, so it would never come."),
    "dose.unsaid": Check("error", "Whether it stays or goes up is the clinician's to say."),
    "dose.cap_under_opening": Check(
        "error", "The dose would be over its own cap on the first day."
    ),
    "dose.range_opening": Check(
        "error", "Sets and seconds are one number; only reps open with a range."
    ),
    "dose.range_step": Check("error", "The exercise lists the steps, shortest first."),
    "dose.dead_step": Check("error", _DEAD),
    "dose.no_two_over": Check(
        "error",
        "A step up asks for two clean reps over the top (two for two), so it would never come.",
    ),
    "dose.range_fast": Check(
        "warning", "Range usually takes 8 to 12 weeks in all (common practice)."
    ),
    "dose.goes_up_missing": Check(
        "error", "Only one thing goes up at a time, and the plan says which first."
    ),
    "dose.goes_up_stays": Check("error", _DEAD),
    "dose.version_never": Check(
        "error", 'A list of versions has no "up by", so only "goes up" can say that one is earned.'
    ),
    "dose.tempo": Check("error", _HALF),
    "dapre.exercise": Check(
        "error",
        "The table asks for all the reps that can be done and adds whole pounds: not for the cuff, "
        "mobility, bands or anything locked.",
    ),
    "dapre.set": Check(
        "error", "It is told two ways which set drives the next weight, so the plan must say it."
    ),
    "dapre.sets": Check(
        "error", "Half the weight, three quarters, then all of it twice (Knight, 1979)."
    ),
    "dapre.reps": Check("error", _DEAD),
    "dapre.other_axis": Check("error", "Only one thing of an exercise goes up."),
    "dapre.light_set": Check("error", "The first sets would be as heavy as the working ones."),
    "dapre.stand_in": Check("error", "The sets could not be told apart by weight."),
    "load.band": Check(
        "error",
        "A band has a strength (light, medium, heavy) or a pull, never a colour.",
    ),
    "load.band_step": Check("error", "Nobody knows how much more the next band pulls."),
    "load.units_mixed": Check("error", "A load stays in the unit it was written in."),
    "load.not_at_home": Check("error", "The athlete would have to lift something else."),
    "load.step_over_tenth": Check(
        "error",
        "A step is never over 10 % (ACSM position stand, 2009), so it would never come.",
    ),
    "load.step_not_at_home": Check(
        "error", "A step goes only to a load the athlete has, so it would never come."
    ),
    "load.cuff_opening": Check(
        "warning",
        "Side-lying turning out opens light (common practice); low load favours the cuff (Bitter 2007).",
    ),
    "load.cuff_cap": Check(
        "warning",
        "Light is the point while a thrower hurts (common practice); low load favours the cuff (Bitter 2007).",
    ),
    "equipment.not_used": Check("error", _DEAD),
    "equipment.no_stand_in": Check("error", "The coach would not know what to do without it."),
    "equipment.instead": Check(
        "error", "The other exercise must be one that can be offered without that equipment."
    ),
}

_SCENARIOS: Final = {
    "scenario.plan": Check("error", "A scenario needs a plan to run."),
    "scenario.day": Check(
        "error", "A day is a date and a time, so that the run is the same every time."
    ),
    "scenario.usual": Check("error", "What is typed where a day says nothing must be known."),
    "scenario.prompt": Check(
        "error", "What is typed there would wait for a prompt that never comes."
    ),
    "scenario.check": Check("error", _HALF),
    "scenario.happens": Check("error", "Only these things can happen to a session."),
    "scenario.nothing_checked": Check("warning", "A scenario that checks nothing cannot fail."),
}

_BINDING: Final = {
    "signature.words": Check(
        "error", "Only a key with these words may sign the plan; coach bind --key shows them."
    ),
    "bound.unsigned": Check("error", "The plan asks for a signature, so it is used only signed."),
    "bound.other_key": Check(
        "error", "Another hand than the one the plan names has signed the file."
    ),
    "bound.signature": Check(
        "error", "The signature was made for other bytes, so nothing in the file may be trusted."
    ),
    "bound.signature_unread": Check("error", "A signature that nobody looked at proves nothing."),
    "bound.not_one": Check("error", "Only a file made by the binding is taken."),
    "bound.version": Check("error", "It was bound for another version of this reader."),
    "bound.changed": Check(
        "error",
        "A byte differs from what the clinician bound, so nothing in it may be trusted.",
    ),
}

CHECKS: Final[dict[str, Check]] = {
    **_READING,
    **_VALUES,
    **_WORDS,
    **_PROGRAM,
    **_SCRIPTS,
    **_PLAN,
    **_DOSES,
    **_SCENARIOS,
    **_BINDING,
}
