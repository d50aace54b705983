"""Notices an answer in a language that the ear does not know.

Law: only says so; decides nothing, and a sign heard in such an answer still counts. Few words
and other scripts are enough; an English answer with one foreign word in it is left alone.
"""

from __future__ import annotations

from typing import Final

from coach.hearing.vocabulary import FAMILIES
from coach.hearing.words import words_of

LAST_LATIN: Final = 0x24F  # the last letter of the Latin blocks of Unicode
FEWEST: Final = 2  # foreign small words that make an answer foreign (set here)

# the commonest small words of languages around such sports, that English does not share
_FOREIGN: Final = frozenset(
    "el la los las una pero porque tengo duele dolor hombro brazo mano nada estoy esta muy mucho "
    "ayer hoy siento dormi horas der die das und nicht ich ist habe mein meine schulter schmerzen "
    "heute gestern sehr kein keine mit auf weh je suis est pas mal une les des mon ma epaule bras "
    "aujourd hier tres avec ik niet een het mijn pijn schouder geen heb gisteren ho fa male spalla "
    "braccio sono oggi ieri molto non che il minha meu dor ombro nao estou hoje ontem muito "
    "minulla on ei olkapaa kipu sattuu tanaan eilen jag inte axel ont har idag min och det".split()
)
_ENGLISH: Final = frozenset(
    "the my i it is was not no yes and but of to in when after with have feel feels felt pain".split()
)


def is_foreign(text: str) -> bool:
    """Whether `text` seems to be in a language other than English."""
    letters = [c for c in text if c.isalpha()]
    if letters and sum(ord(c) > LAST_LATIN for c in letters) * 2 > len(letters):
        return True
    words = [word.text for word in words_of(text[:500], FAMILIES)]
    foreign = sum(word in _FOREIGN for word in words)
    english = sum(word in _ENGLISH for word in words)
    return foreign >= FEWEST and foreign > english
