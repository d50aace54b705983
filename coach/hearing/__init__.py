"""Hears what a person typed: warning signs in every answer, then what was asked.

Law: pure and total; no clock, file or screen; needs nothing but `coach.model`. Typed text can
raise a warning sign, never clear one.
"""

from coach.hearing.ear import hear, sign_asked_about
from coach.hearing.language import is_foreign
from coach.hearing.lexicon import BUILT_IN, Lexicon, Refusal, why_refused, with_phrases
from coach.hearing.reported import explain, hear_row, marked, question_of

__all__ = [
    "BUILT_IN",
    "Lexicon",
    "Refusal",
    "explain",
    "hear",
    "hear_row",
    "is_foreign",
    "marked",
    "question_of",
    "sign_asked_about",
    "why_refused",
    "with_phrases",
]
