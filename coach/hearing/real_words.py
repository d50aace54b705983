"""All real English words close to a word the ear knows, from both halves of the list.

Law: a word in here is never changed into another ("never" is no "fever").
"""

from __future__ import annotations

from typing import Final

from coach.hearing.real_words_a_l import WORDS as A_TO_L
from coach.hearing.real_words_m_z import WORDS as M_TO_Z

REAL_WORDS: Final = frozenset((*A_TO_L, *M_TO_Z))
