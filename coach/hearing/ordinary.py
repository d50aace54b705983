"""Ordinary words of a note about the arm, and what to do when a note holds others.

Law: a note that names a part of the arm, holds no sign in any wording that is known, and has a
word near that part which is not ordinary, is asked about once; it never stops a day. The list is
own, from common usage; a word may be taken out by a clinician, and is then asked about.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from coach.model.flags import Group

if TYPE_CHECKING:
    from collections.abc import Container, Sequence

    from coach.hearing.words import Word

NEAR: Final = 6  # words on either side of the part that are looked at (set here)

_ORDINARY: Final = frozenset(
    """
a about accident ache achy after afternoon again alive all alone alright also although am
amazing an and angle angry any anything are arm arms around as asleep at average away awesome
back bad balanced ball balls band bands bar barbell barely base baseball basketball bat bc be
because bed been before behind bench bends best better between bicep biceps bike biking bit
blade blades blister blisters blue body bored both bottom bowl bowled brace breath breathing
broke brother buddy bullpen bumped bumps burn burning bus busy but by cable call callus callused
calm came camp camps can care carrying catch catcher centered champ chest chill chills chin
class clean cleaned climb climbing coach color come coming connected cooked cooking core could
couldnt couple court cousin cracked cramp cranky crash crashed cream cricket crossed cue cuff
curl curls cuz dad dangerous day days decent delivery delt delts did didnt dip dips dirty
dislocate dislocated do doc doctor does doesnt done dont down drill drills driving drop dropped
dropping dry dumbbell dumbbells during each early easier easy eight elbow elbows end even
evening every exercise exercises explosive eye fall fantastic fast fastball faster fatigue
fatigued feel feeling feels feet fell felt fever field film finally fine finger fingers finish
finished first five floor fluid fly foam follow football for forearm forgot form four free fresh
fresher friday fried from front ft game games gardening gassed get gets getting glove go goes
going golf good got great grip gripping groceries grumpy guess guy gym gymnastics ha had haha
half hand handball hands hang hanging happy hard harder has hasnt have havent he healed healing
healthy heart heat heavier heavy help helped helps her here high hiking hip hips his hit hits
hitting hockey hold holding homework hope hoping hot hour hours how hung hurt hurts i ice iced
icing idk if im improved improving in inning inside into is ish isnt issues it itchy its javelin
just keep keeping kept kettlebell kid kind kinda knee knots know knuckle labrum lacrosse last
lat late later lats laundry left leg legs less let life lift lifted lifting lifts light lighter
like lineup little live loaded locked lol long longer look looked looks loose loosened looser
lost lot lotion lots lower lunge made make massage match matches may maybe me mechanics medium
meh mellow might min mine minutes mobility moderate mom monday month more morning most mostly
motion mound moved moves moving mowing much muscle muscles must my nail near neck need needed
needs neither nephew never new next ngl nice night nine no none nope normal not nothing noticed
now numbness of off ok okay okayish on once one only opponent or other our out outside over pain
painting path pec pecs pen perfect period photos physio pilates pillow pinch pinched pinches
pitch pitched pitcher pitches pitching plan plank planks planning plate played point polo pool
pop popped popping pops position posture practice prehab press presses pressing pretty progress
progressing pt pulling pullup pullups pump pumped pushing pushup pushups put quick racket
racquet raise raises raking range reach reaching ready really recovered recovering rehab relaxed
release rep reps rest rested ride right rings roll rolled rolling room rope rotation rotations
rotator row rowing rows rub rubbed said same saturday saw says scap scar school seam seams
season seat second seem seemed seems serve serves serving session set sets seven shaking shaky
sharp shaved shoot shooting short shorter shortstop shot shots should shoulder shoulders
shoveling sick side since sister six skiing sleep sleeve slept sliding slip slipped slot slower
sluggish smoked smooth snap snapped so soccer softball solid some sore soreness sort speed spike
spikes squat squats squeeze squeezing stable start started starting steady stiff stiffness still
stop stopped strength strengthening stretch stretched stretches stretching stroke strokes strong
stronger sunburn sunday sunscreen sure surfing surgeon surgery sweaty swelling swells swim
swimming swing swinging swings switched swollen take taking tan tanned tape taped tattoo tbh
team teammate ten tender tennis than that the then therapy there these think this those though
three threw through throw throwing thrown throws thumb thumbs thursday tight tightness till time
times tingling tired to today tomorrow tonight too took top tore torn toss tosses touched tough
towel track trainer training trap traps triceps tried trouble try trying tuesday tv twice two
typing under until up upper use used using velo very video volleyball wait wake wall want wants
war warm warmed warmup warmups was wasnt water way weak weakness wednesday week weekend weeks
weight weights well went were what when where which while white who why will win with without
woke work worked working workout works would wrap wrapped wrestling wrist writing yard yeah year
yes actually almost annoyed another anymore apartment appointment approach april ask asks august
autumn baby badminton bags balm bandage basically bath became become believe block blocks bowling
boy boyfriend brew butter called calmer cannon car checkup chiropractor cleaning climbed coffee
cold comes compression content cook cool crisp dance danced dancing daughter december desk
different discus doing drank drink drive drove earlier email ended ends energetic energy essay
ever everything exam excellent excited exhausted fairly february few fielder fielding finishes
flight friend friends frustrated garden gave gel girl girlfriend give gives giving glad goalkeeper
hammer hate hated hates having heating holiday home honestly hose hotel house hurdles husband
improvement innings january jog july jump jumping jumps june keeper keeps keyboard kids kitchen
knew knows laptop lawn least lesson lessons lets libero liked likes literally lively love loved
loves makes making man many march market massaged massaging masseuse mate mates middle mouse mow
mri nearly nervous november nurse october office offseason often overs paint people phone physical
physiotherapist plane pleased power preseason probably proud puts quite ran rarely rather receive
relax relay rocket rugby run running runup satisfied sauna say scan see september setter shop
shopping shovel shower sisters slap slow smoother snappy snow something sometimes son soon spear
spring sprint sprints starts stay stayed store summer sweet takes taping tell tells text texting
theragun therapist thinks third thought tiredness told train travel travelled trip truck tub uses
usually vacation vacuum vault visit waited waiting wanted whip whippy wicket wife winter wish
woman xray
along fire flat hangnail nicely noise pressed table
dominant lefty licked righty rose
yesterday yoga you zero
""".split()
)


def odd_place(words: Sequence[Word], taken: Container[int]) -> int | None:
    """The place of a part of the arm with a word near it that is not ordinary, or None; not one of `taken`."""
    for place, word in enumerate(words):
        if (
            "PART" in word.keys
            and place not in taken
            and any(
                is_odd(words[near])
                for near in range(max(0, place - NEAR), min(len(words), place + NEAR + 1))
            )
        ):
            return place
    return None


def is_odd(word: Word) -> bool:
    """Whether the word is no number, no filler, no part of the arm and not in the list."""
    plain = word.text in _ORDINARY or "FILLER" in word.keys or "PART" in word.keys
    return not plain and word.text[0].isalpha()


# what a word of a family is most likely about; the first that fits
_LIKELY: Final = (
    ("CHEST BREATH GASP", Group.CHEST_BREATH),
    ("HEART FAINT FLUTTER", Group.FAINT_HEART),
    ("FACE SLUR DROOP HEADACHE", Group.STROKE_SIGNS),
    ("CALF", Group.LEG_CLOT),
    ("WOUND INFECT LEAK", Group.WOUND),
    ("FEVER CHILL VOMIT FLU NAUSEA FEVERISH", Group.FEVER_INFECTION),
    ("PILL", Group.PAINKILLERS),
    ("SUICIDE", Group.SELF_HARM),
    ("SEAT DISLOCATE UNSTABLE LOOSE CATCH", Group.DISLOCATION_SLIP),
    ("SHAPE BONE", Group.DEFORMITY),
    ("BREAK POP", Group.POP_WITH_LOSS),
    ("CRASH VEHICLE FALL LAND GROUND BLOW", Group.TRAUMA_FALL),
    ("SWELL COLOUR VEIN BRUISE HUE", Group.SWELLING_COLOUR_COLD),
    ("NUMB BUZZ SHOCK FEELING", Group.NUMB_TINGLE),
    ("WEAKNESS POWER LIMP DROPPING", Group.WEAK_DROP),
    ("WAKE NIGHTS NEVER_ENDING", Group.NIGHT_PAIN_UNRELENTING),
    ("SPENT TIRED", Group.OVERTIRED),
    ("SWEATS SHEETS", Group.WEIGHT_NIGHT_SWEATS),
    ("LEG", Group.CORD_SIGNS),
    ("DIGIT HAND", Group.NUMB_TINGLE),
)


def group_of(words: Sequence[Word], place: int) -> Group:
    """The group that the word at `place`, or else the answer, is most likely about."""
    whole = frozenset().union(*(word.keys for word in words))
    for keys in (words[place].keys, whole):
        for families, group in _LIKELY:
            if not keys.isdisjoint(families.split()):
                return group
    return Group.WEAK_DROP
