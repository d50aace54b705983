"""All real English words close to a word the ear knows, from both halves of the list.

Law: a word in here is never changed into another ("never" is no "fever").
"""

from __future__ import annotations

from functools import cache

from coach.hearing.real_words_a_l import WORDS as A_TO_L
from coach.hearing.real_words_m_z import WORDS as M_TO_Z


@cache
def real_words() -> frozenset[str]:
    """The words, put together on first need."""
    return frozenset((*A_TO_L.split(), *M_TO_Z.split()))
