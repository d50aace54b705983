"""Everyday phrases that hold a warning word and mean nothing, and known causes that only soften.

Law: data only; patterns as told in `patterns`, and `a, b :: c / d e` is each of a, b followed by
each of c, "d e". A phrase in HARMLESS takes its words out of the hearing of signs, unless a longer
sign stands there; a cause in CAUSES and a habit in HABITS turn a stop into a question, never into
silence. May be added to with a clinician's hand. Wording from memory and common usage.
"""

from __future__ import annotations

from typing import Final

from coach.hearing.harmless_days import DAYS
from coach.hearing.harmless_play import PLAY
from coach.hearing.harmless_said import SAID
from coach.hearing.harmless_talk import TALK

HARMLESS: Final = PLAY + DAYS + TALK + SAID

CAUSES: Final = """
    ice :: pack / packs / bag / bags / bath / bucket / cup / massage / machine
    iced|icing|cryo
    ice made|makes|did
    from|after|on|with|with the ice
    cold :: tub / pack / water / plunge / out / outside / day / morning / weather / game / wind / rain / shower
    slept|sleep|lay|laid|lying|laying|leaned|leaning|sat|sleeping on|funny|wrong|weird|it
    from|after|while|of sleeping|sleep|leaning|sitting
    in bed
    taped|taping|kt|bandage|brace|compression
    tape|wrap|wrapped .. tight|too|off
    dentist|spicy|wings|pepper|peppers|filling
    skiing|snow|snowing|winter|snowball|snowballs
    handlebars|mower|mowing|vibration
    blood pressure cuff
    backpack|bag .. strap|straps|digging
    bug|mosquito|bee|wasp|spider bite|bites|sting|bit|stung
    stung
    from .. bee|wasp|bug|mosquito|spider|kick|ball
    mosquito|wasp
    sunburn|sunburnt
    ink|marker|paint|dye|rosin|mud|markers
    chalk .. on|all
    holding|held ice
    holding|held|carrying|gripping .. ice|slushie|drink|smoothie|soda|can|bottle|snow|popsicle|cup|beer|pack|cream
    vaccine|vaccination|booster
    flu|covid|tetanus shot|jab
    nice|good|gym pump
    crossed legs
    allergy|allergies|pollen|hay fever
    end of .. bat
    hit|hitting one off
    metal|cold bat
    gloves
    caught|catching|clapping|clapped|slapping
    from|in|of the cold
    hitting|playing|batting|pitching .. in .. cold|snow
    numbing
    painted|polish|dyed|henna|tattoo|popsicle|blueberry|blueberries|grape
    gardening|shoveling|shovelling|shoveled|snowman
    made|makes|making my|it|the|both|mine
    from|of the pump|hot|balm|cream|gel|spray|ointment|machine|pads
    icy hot
    tens|stim|needling|cupping|balm
    for .. a|one|few|couple|NUM .. second|seconds|sec|secs|minute|minutes|min|mins|moment
    a|one second|minute|moment|sec
    woke right|straight up
"""

HABITS: Final = """
    like normal|usual|always
    usual|normal|habitual|always|regular|usually|normally
    for years
    no|without|zero pain
    painless|painlessly
    doesnt|didnt|dont|never hurt|hurts
    pain free
"""
