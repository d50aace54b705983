"""The families of words that the patterns are built from, in plain lists.

Law: data only. A clinician may add a word to a family; none is taken out. Small words name
themselves, FAMILIES in capitals stand in the patterns. Wording is from memory and common usage,
to be signed by a clinician. Words below the line "grammar" are never guessed from a misspelling.
"""

from __future__ import annotations

from functools import cache
from typing import Final

SIGN_WORDS: Final[dict[str, str]] = {
    # ------------------------------------------------------------------ parts of the body
    "DIGIT": "finger fingers fingertip fingertips pinky pinkie pinkies pinkys thumb thumbs "
    "knuckle knuckles digits digit fingernail fingernails nails nail nailbed nailbeds tips",
    "HAND": "hand hands palm palms wrist wrists",
    "ARM": "arm arms forearm forearms elbow elbows bicep biceps tricep triceps limb arma",
    "SHOULDER": "shoulder shoulders collarbone collarbones clavicle socket joint armpit armpits "
    "deltoid deltoids delt delts scapula labrum cuff humerus glenohumeral blade acromion",
    "ELBOW": "elbow elbows ucl",
    "RIBS": "ribs rib stomach belly gut guts abdomen tummy spleen abs midsection flank",
    "CHEST": "chest sternum breastbone breast ribcage",
    "CALF": "calf calfs",
    "LEG": "leg legs thigh thighs",
    "FACE": "face facial mouth eyelid smile cheek lip lips",
    "ELSEWHERE": "foot feet toe toes knee knees shin shins ankle ankles butt bum ass glute glutes "
    "buttcheek hip hips teeth tooth gums nose ear ears heel heels scalp forehead hamstring hammy "
    "hamstrings quad quads groin tailbone backside lip lips tongue cheek jaw mouth calves",
    # ------------------------------------------------------------------ feeling
    "NUMB": "numb numbness numbed numbing numbish numby tingle tingles tingled tingling tingly "
    "tinglies tingliness prickle prickles prickling prickly paresthesia paraesthesia novocaine novocain tinglies "
    "deadened desensitized",
    "BUZZ": "buzz buzzing buzzes buzzed buzzy fizz fizzy fizzing fizzes fuzzy fuzz static crawling "
    "crawly ants sparkly sparkles sparkling carbonated rubbery woolly wooly staticky zappy zings "
    "zinging vibrating vibrates vibrated humming effervescent bees",
    "SHOCK": "zap zaps zapped zapping zing zinged zinger zingers electric electrical electricity "
    "shock shocks jolt jolts jolted lightning stinger stingers lightening electrocuted",
    "FEELING": "feeling sensation feel feelin sense touch",
    "ASLEEP": "asleep",
    "DULLED": "dull wooden cottony cotton rubber glove gloves plastic "
    "foam cardboard mitten mittens oven anesthetic anaesthetic",
    # ------------------------------------------------------------------ strength
    "WEAK": "weak weaker",
    "WEAKNESS": "weakness weakened weakening weaker paralysed paralyzed paralysis",
    "POWER": "strength power grip force",
    "DROPPING": "dropping dropped drops drop fumbling fumbled fumble fumbles",
    "THING": "keys key phone cup cups mug mugs glass glasses plate plates pen pens pencil bottle "
    "bottles fork spoon knife stuff things everything anything something bag bags groceries "
    "jar jars bowl remote laptop book books backpack rucksack kettle paddle oar sword foil bow club discus shotput pole mallet toothbrush brush "
    "slice pizza burger taco pint beer cookie apple banana suitcase milk jug coffee wallet controller dishes dish pan pot stick racket racquet bat javelin paper "
    "papers sandwich toast lid lids tray cutlery helmet glove mitt chopsticks spatula hairbrush hairdryer gallon",
    "DAILY": "door doors wheel faucet tap zipper zip hair bra shelf shirt jacket coat hoodie sweater "
    "laundry blanket blankets covers chair fridge drawer window lawnmower mower leash seatbelt visor "
    "dishwasher trash pillow towel baby toddler suitcase luggage crate box boxes grocery gate locker "
    "cabinet cupboard trunk shampoo toothpaste deodorant curtain curtains handle knob latch card "
    "button buttons lightswitch switch mouse keyboard pedal lever stairs railing bar",
    "LIFT": "lift lifting raise raising hoist elevate",
    "HOLD": "hold grip squeeze grab grasp carry pinch clench clutch hang",
    "PUSH": "push pull press shove unscrew twist pour open turn",
    "MOVE": "move moving budge rotate bend straighten straightening extend wiggle control use",
    "REACH": "reach reaching rotate twist turn straighten bend scratch comb extend",
    "HEIGHT": "overhead above head up higher shelf past cupboard cabinet behind across",
    "LIMP": "limp floppy lifeless useless flaccid noodle",
    "GIVES": "gave gives giving give gived",
    "QUITS": "quit quits collapsed collapses buckled buckles buckle sags sagged failed fails "
    "drops dropped falls fell lowers",
    # ------------------------------------------------------------------ swelling, colour, cold
    "SWELL": "swollen swelling swelled swell swells puffy puffed puffiness puffing puff bloated "
    "ballooned ballooning edema oedema enlarged engorged",
    "COLOUR": "blue bluish purple purplish white whitish pale grey gray greyish grayish dusky "
    "violet mottled blotchy ashy ashen bloodless discolored discoloured discoloration discolouration colorless colourless "
    "maroon dark darker blueish yellowish blanched pallid",
    "RED": "red redder reddish redness pink crimson flushed angry inflamed",
    "BRUISE": "bruise bruised bruising bruises bruisey",
    "CHANGED": "changed changes changing different funny weird odd strange wrong another off",
    "HUE": "color colour colors colours shade",
    "COLD": "cold colder icy freezing frozen chilly cool clammy",
    "VEIN": "vein veins",
    "BULGE": "bulging bulge bulges sticking popping standing stand stick pop ropey showing",
    "TIGHTER": "tight tighter snug",
    "WORN": "watch ring rings sleeve sleeves bracelet strap wristband watchband glove cuff",
    # ------------------------------------------------------------------ slipping, popping, shape
    "DISLOCATE": "dislocated dislocate dislocates dislocating dislocation subluxed sublux "
    "subluxes subluxing subluxation subluxated dislodged unseated unhinged",
    "SLIP": "slipped slip slips slipping slid slide slides sliding shifted shift shifts shifting "
    "slipt slided",
    "COME": "came come comes coming popped pop pops popping went go goes going jumped jump jumps "
    "rolled roll rolls rolling fell fall falls falling slipped slip slips slipping slid slide "
    "slides sliding clunked clunk clunks clunking moved move moves jerked dropped shot wrenched "
    "pulled forced ripped twisted squirted pushed jammed shifted popp knocked gone",
    "PUT": "put popped pop pushed push shoved shove wiggled wiggle reset pops slid slide slides "
    "clunked snapped went goes go slipped slips rolled jammed pulled pull set relocated relocate "
    "reduced shook worked knocked bumped eased wiggle clicked",
    "LOOSE": "loose looser looseness",
    "UNDONE": "unglued unhinged undone unhooked unlatched unplugged dislodged unseated unscrewed "
    "untethered disconnected detached",
    "UNSTABLE": "unstable instability wobbly wobbles wobbling wobble sloppy unsteady insecure "
    "floaty lax laxity slippy unsecure jiggly slidey shifty",
    "SOCKETED": "shoulder shoulders joint socket arm arms labrum humerus capsule",
    "SEAT": "socket joint place track seat position sockets hole spot",
    "MISSILE": "ball drive liner comebacker pitch fastball puck bat stick knee elbow hop tip shot boot heater "
    "liners racket hockey helmet softball baseball cricket bouncer",
    "BREAKS_LIKE": "twig branch stick celery velcro gun gunshot firecracker carrot rubber band "
    "knuckle knuckles bubble string guitar rope fabric paper cloth sheet",
    "CATCH": "catches catching catch grabs grabbing locks locked locking lock clunks clunking "
    "clunk clunky jams jamming",
    "POP": "pop popped pops popping snap snapped snaps snapping crack cracked cracks cracking "
    "crackle rip ripped ripping rips tear tore torn tearing tears crunch crunched crunching twang "
    "twanged crac krak clack klack tac click clicked clicks clicking clunk clunked clunks thunk bang",
    "BREAK": "rip ripped ripping rips tear tore torn tearing ruptured rupture snapped snap "
    "gunshot crunch crunched twang twanged",
    "FRACTURE": "broke broken fracture fractured fractures",
    "SHAPE": "deformed deformity misshapen crooked lopsided dented dent dents divot hollow sunken "
    "squared squarish dip bump bumps lump lumps protruding protrudes jutting juts "
    "bumpy raised droops drooping sagging popeye bulge bulging bulges knob step ridge hump indented indent "
    "caved uneven asymmetrical",
    "ODD": "weird off wrong odd strange different funny bent square flat lower flatter "
    "pointy uneven",
    "BONE": "bone bones",
    # ------------------------------------------------------------------ falls and blows
    "FALL": "fell fall falls falling fallen tumbled tumble tumbling tripped trip toppled faceplant "
    "faceplanted wiped wipeout spill stumbled",
    "CRASH": "crash crashed crashing wrecked wreck collided collide collision collisions "
    "accident flipped totaled rolled",
    "BLOW": "hit smashed smash slammed slam whacked banged bang bumped clattered kicked punched "
    "kneed elbowed struck clipped drilled plunked pegged nailed beaned clobbered cracked "
    "knocked tackled tackle elbowed kneed slugged undercut headbutted stomped bumrushed mugged jostled trucked trampled pancaked flattened blindsided crushed checked "
    "bulldozed hammered leveled levelled steamrolled decked plowed rammed ran thrown yanked "
    "wrenched bodied smacked pummeled sacked cleated crunched dumped thumped barged "
    "clotheslined shoved undercut body-slammed jumped piled",
    "LAND": "landed landing land",
    "VEHICLE": "bike bicycle scooter skateboard board car truck van bus moped motorbike motorcycle "
    "quad atv dirtbike snowboard ski skis skates sled horse trampoline ladder cart golfcart kayak raft treadmill jetski tractor canoe swing hammock stool sled tube cliff bridge stairs steps stair "
    "staircase roof wall fence boards post goalpost bench truck tree curb kerb pole hoverboard "
    "vehicle deck chair bleachers hill escalator swing net goal bunk",
    "GROUND": "ground floor ice grass turf concrete pavement court mat dirt track deck sand pool "
    "gravel asphalt boards road sidewalk driveway snow poolside shower mud base plate bleachers",
    # ------------------------------------------------------------------ chest, breath, heart, head
    "TIGHT": "tight tightness tightening tightened pressure squeezing squeezed squeeze heavy "
    "heaviness crushing crushed burning stabbing stab gripping pressing elephant "
    "constricted clamped",
    "BREATH": "breath breathe breathing breaths air inhale breathed breathin inhaling wind",
    "GASP": "wheezing wheeze wheezy gasping gasp panting hyperventilating suffocating winded",
    "FAINT": "fainted fainting faints blackout lightheaded lightheadedness dizzy dizziness "
    "woozy syncope",
    "HEART": "heart pulse heartbeat ticker heartrate",
    "FLUTTER": "racing race races raced pounding pounds pounded fluttering flutters fluttered "
    "flutter skipping skips skipped irregular palpitations palpitation uneven weird thumping "
    "beating jumping flipping erratic",
    "DROOP": "droop drooping droopy droops drooped sagging lopsided",
    "SLUR": "slurred slurring slur slurs garbled jumbled",
    "HEADACHE": "headache migraine headaches",
    "CLUMSY": "clumsy uncoordinated clumsier clumsiness",
    "WOBBLY": "wobbly unsteady wobble wobbling shaky jelly buckling stumbling staggering",
    # ------------------------------------------------------------------ ill
    "FEVER": "fever fevers feverish feverish fevered",
    "CHILL": "chills chill shivering shivers shivery rigors rigor",
    "VOMIT": "vomit vomiting vomited vomits puke puked puking pukey barfed barfing barf spewing "
    "spewed chundered yak yakked yakking yacked yacking upchuck ralphing diarrhea diarrhoea gastro norovirus",
    "FLU": "flu covid influenza pneumonia tonsillitis sepsis",
    "INFECT": "infected infection infections pus septic abscess cellulitis mrsa oozing ooze oozes "
    "oozed festering weeping",
    "WOUND": "wound wounds incision incisions stitches stitch scar scars sutures suture portal "
    "portals staples scab steristrips",
    "MOTOR": "lift raise hold grip squeeze grab grasp carry push pull press move open close spread "
    "bend straighten turn twist reach pinch clench brush comb wash write type button tie pour stir "
    "chop pick support steady point extend rotate throw swing make work respond",
    "LEAK": "leaking leaks leaked leak oozing oozes weeping draining drainage discharge opened "
    "opening open split smells smelly stinks stink red redder pus angry infected yellow green "
    "gunk goo gunky goopy hot warm swollen bleeding bled burst seeping seeps dripping fluid wet "
    "puffy apart reopened",
    "HOT": "hot warm burning boiling heat feverish roasting",
    "NAUSEA": "nauseous nauseated nausea queasy",
    # ------------------------------------------------------------------ pain and night
    "PAIN": "pain paining pained pains painful hurt hurts hurting hurtin ache aches aching ached achy sore "
    "soreness throb throbs throbbing throbbed agony killing stabbing burning burns discomfort kills "
    "tender tenderness stabs stings excruciating twinge twinges stinging",
    "ACHE": "pain ache aches aching ached throb throbs throbbing throbbed hurt hurts hurting "
    "soreness agony burning shoulder arm elbow it",
    "STOP": "stop stops stopped stopping quit quits ease eases eased easing let lets quitting "
    "subside settle settles calm relent fade",
    "NIGHTS": "night nights",
    "WAKE": "woke wake wakes waking woken awake awakened awoke",
    "NEVER_ENDING": "constant constantly nonstop unrelenting relentless unbearable excruciating "
    "agonizing agonising continuous continuously permanent intolerable",
    "POSITION": "position positions way spot comfortable comfy angle side",
    "SWEATS": "sweats sweating sweat drenched drenching soaked soaking sweaty",
    "SHEETS": "sheets bed sheet pillow pyjamas pajamas bedding mattress pjs",
    "PILL": "ibuprofen advil tylenol aleve motrin painkiller painkillers naproxen paracetamol "
    "aspirin nurofen voltaren diclofenac meds pills tablets acetaminophen nsaid nsaids tramadol "
    "codeine toradol oxycodone cortisone panadol codamol cocodamol solpadeine brufen combiflam ibu "
    "ketorolac celebrex meloxicam etoricoxib arcoxia analgesic analgesics metamizole novalgin ponstan "
    "difene mefenamic ketoprofen dexketoprofen piroxicam nimesulide biogesic anadin cuprofen feminax tylenols advils ibuprofens painkilling indomethacin",
    "TRAINING": "throw throwing train training session sessions practice game match play pitch bowl "
    "serve bullpen pen exercises exercise workout warmup spell round rehab gym start tournament "
    "outing bowling pitching competing compete",
    "SPENT": "exhausted exhaustion drained fatigued fatigue knackered shattered wiped rundown "
    "burnout burned burnt lethargic",
    "TIRED": "tired tiredness exhausted fatigued knackered drained sluggish",
    "SUICIDE": "suicide suicidal",
}

GRAMMAR: Final[dict[str, str]] = {
    "AGE": "teen teens teenager",
    "ELSEWHERE": "eye eyes throat sinus sinuses gland glands",
    "NUM": "two three four five six seven eight nine ten eleven twelve fifteen twenty thirty forty "
    "fifty sixty hundred",
    "PRON": "i im ive id me myself",
    "MY": "my mine our me",
    "IT": "it its thing that this everything whole itll",
    "BE": "is are was were be been being am feels feel felt feeling goes go went gone going got "
    "gets get getting gotten turned turns turning looks look looked looking looking keeps kept "
    "became stays stayed seems seemed has had having comes came still",
    "WENT": "went goes go gone going turned turns turning got gets getting became turn",
    "LOOK": "looks look looked looking appears",
    "HAVE": "have has had having got get getting gets notice noticed noticing caught had",
    "KEEP": "keep keeps kept keeping always constantly",
    "CANT": "cant couldnt cannot wont unable wouldnt hardly barely struggle struggling struggled "
    "trouble difficulty difficult",
    "NOT": "not no dont doesnt didnt wont isnt wasnt never hasnt havent aint without nothing "
    "cant couldnt wouldnt hadnt arent werent nope nah zero hardly barely",
    "LOST": "lost lose loses losing loss gone lacking lack lacks missing",
    "OUT": "out loose",
    "SINCE": "since after now then afterwards afterward later anymore",
    "ONTO": "on onto off down from over into against in",
    "ON": "on onto",
    "BY": "by with",
    "MANY": "two three four five 2 3 4 5 6 7 every several all most each couple few many",
    "AGAIN": "again keeps keep kept every all two three constantly always repeatedly "
    "multiple several twice nightly most both",
    "NEW": "new suddenly sudden",
    "OPPONENT": "guy player defender goalie keeper catcher shortstop setter libero linebacker midfielder referee ref umpire ump coach teammate opponent runner "
    "baseman fielder batter lineman kid dude girl someone somebody person prop forward driver "
    "he she outfielder infielder blocker striker winger pitcher lad bloke baserunner",
    "FILLER": "really so very super pretty just like totally completely fully all a an the some "
    "kind of sort bit little lil kinda sorta right straight actually literally absolutely "
    "slightly way too now still fucking damn bloody freaking friggin also my whole entire "
    "almost quite proper right left both again even ever any much real def definitely me got "
    "been suddenly two one other his throwing pitching dominant bad injured lead serving",
}

# slot words that may be guessed from a misspelling
SLOT_WORDS: Final = (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen "
    "sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety "
    "hundred half quarter quarters dozen nothing none maybe minutes minute hours hour sleep slept "
    "sleeping throw threw throws throwing pitch pitches pitched pitching bullpen practice training "
    "catch game match toss innings inning serves pinch pinched pinching pinches easy heavy light "
    "shoulder painful morning yesterday "
)

# grammar words that may be guessed too: none; they are spelt out in `spellings`
_NOT_GUESSED: Final = frozenset(
    "feel side weird wrong funny different another change sense touch open turn twist press "
    "wind stand stick stuck pop lift hold push pull move come went case lower even step flat "
    "spot stop stops ease quit calm fade cut tree post swing chair boards plate deck court "
    "track pool base sand wall roof bench goal band weight heavy cool killing tender "
    "using use control head behind higher past across shelf whole thing books paper tips "
    "moved moves fails failed beaned angle band heat".split()
)


def _families() -> dict[str, frozenset[str]]:
    keys: dict[str, set[str]] = {}
    for table in (SIGN_WORDS, GRAMMAR):
        for family, words in table.items():
            for word in words.split():
                keys.setdefault(word, {word}).add(family)
    for name, members in (("PART", "DIGIT HAND ARM SHOULDER"), ("HANDS", "DIGIT HAND")):
        for member in members.split():
            for word in SIGN_WORDS[member].split():
                keys[word].add(name)
    for family in ("PART", "HEART", "CHEST", "FACE", "LEG", "CALF", "ELBOW"):
        for names in keys.values():
            if family in names:
                names.add("BODY")
    return {word: frozenset(names) for word, names in keys.items()}


FAMILIES: Final = _families()
_COMMON_FAMILIES: Final = frozenset(
    "MOTOR BREAKS_LIKE MISSILE SEAT POSITION STOP VEHICLE GROUND THING WORN HEIGHT TIGHTER PUT "
    "PUSH REACH CHANGED ODD LIFT HOLD MOVE GIVES TRAINING".split()
)


@cache
def guessable() -> frozenset[str]:
    """The words that a misspelling may be taken for, put together on first need."""
    signs = {
        word
        for family, words in SIGN_WORDS.items()
        if family not in _COMMON_FAMILIES
        for word in words.split()
    }
    return frozenset(word for word in signs.union(SLOT_WORDS.split()) if len(word) > 3) - (  # noqa: PLR2004
        _NOT_GUESSED
    )


@cache
def signs_alone() -> frozenset[str]:
    """Of two words equally close to a misspelling, one of these is the one asked about."""
    families = "NUMB WEAKNESS SWELL DISLOCATE FAINT FEVER CHILL VOMIT INFECT GASP".split()
    return frozenset(word for family in families for word in SIGN_WORDS[family].split())
