"""The small words that say whether a sign is there: denials, contrast, time, person, doubt.

Law: data only, for `scope`. Sources: the published negation, time and person rules (Chapman 2001;
Harkema 2009) name the kinds; the words are own, from common usage.
"""

from __future__ import annotations

from typing import Final


def _set(words: str) -> frozenset[str]:
    return frozenset(words.split())


def _pairs(words: str) -> frozenset[tuple[str, str]]:
    halves = (entry.split() for entry in words.split("|"))
    return frozenset((left, right) for left, right in halves)


VERB_NOS: Final = _set(
    "dont doesnt didnt wont wouldnt cant couldnt cannot hasnt havent hadnt shouldnt never"
)
NOT_WORDS: Final = _set("not isnt wasnt arent werent aint") | VERB_NOS
DENIERS: Final = NOT_WORDS | _set(
    "no free without none nothing neither nor zero nil nope nah denies denied deny negative denying "
    "nowhere nobody noone nothings"
)
ANSWERS: Final = _set("no nope nah none nay negative yes yeah yep yup")
ANSWERS_AFTER: Final = _set("no nope nah none negative not never nil zero neg 0 false absent")
YES: Final = _set("yes yeah yep yup y definitely sure")

# after these words the denial is empty: "no change in the tingling" still tingles
FREE_OF: Final = _set("of from")
EMPTY_AFTER: Final[dict[str, frozenset[str]]] = {
    "no": _set(
        "change changes improvement improvements better doubt doubts joke lie kidding question "
        "relief matter wonder idea clue reason surprise longer warning let cap bs sleep difference "
        "worse rest warmup break luck big way problem worries warm kid diff less other"
    ),
    "not": _set(
        "only just sure gonna better normal good great right gone stopped stopping fun ideal "
        "improving healed resolved healing helping well getting long certain bc because able going "
        "cool easing shifting much like to surprised thrilled happy working slept sleeping "
        "throwing threw pitching lifting"
    ),
    "nothing": _set(
        "but helps works helped compared worked eases touches else more wrong stops relieves"
    ),
    "without": _set("warming stopping asking sleep even rest thinking throwing doing"),
    "none": _set("better"),
    "zero": _set("sleep improvement change relief doubt strength"),
    "verb": _set("only just"),
    "negative": _set("about"),
}
# verbs that take the denial for themselves: "didnt throw, hand numb"
OWN_VERBS: Final = _set(
    "sleep slept throw threw pitch pitched train trained finish finished play played practice do "
    "did stop stopped stopping quit help helped know matter tell believe warm stretch stretched "
    "rest rested ice iced eat work wait use sit lie lay ease eased change changed improve improved "
    "let lift raise hold grip move bowl serve swim run remember understand stand drive make see "
    "drink finish lower open close put"
)
ADVERBS: Final = _set("really even actually ever yet truly fully always quite still")
BELIEFS: Final = _set(
    "think feel believe like that if seem noticed notice feels felt know guess say"
)
SUBJECTS: Final = _set(
    "i im ive id my it its itll he she they we hes shes theyre this theres there thats both when "
    "our you"
)
ARTICLES: Final = _set("the a an some his her")
OPENERS: Final = _set(
    "just still now only but some little bit slight slightly maybe got had having also though so "
    "then feels felt feel feeling only except kinda kind started keeps lots lot mostly does did "
    "yes otherwise is was are has went definitely today woke cant couldnt wont sometimes"
)
FINITE: Final = _set(
    "is are was were feels felt went goes got gets keeps kept started starts has had looks looked "
    "cant couldnt wont came comes hurts hurt did does feel seems gone turned fell slipped popped "
    "happened reveals revealed shows showed demonstrates appears remains remained became started "
    "will would"
)
CONTRAST: Final = _set(
    "but though although however except besides because so then until till when while after before "
    "if unless just still only yet who which whereas now apart aside since otherwise instead than "
    "despite due plus secondary cause from"
)
JOINING: Final = _set("and or nor plus")
STATES: Final = _set(
    "numb tingly weak weaker swollen puffy blue purple cold dizzy faint limp hot feverish pale "
    "bruised dead loose lightheaded nauseous crooked unstable"
)
PLAIN_NOUNS: Final = _set("pain soreness issues issue problems problem ache aches hurt throwing")

CURRENT: Final = _set(
    "now today still again tonight yesterday currently lately constantly keeps keep everyday daily "
    "worse started starting since"
)
PAST: Final = _set(
    "ago grade childhood formerly preseason previously initially originally historical"
)
PAST_PAIRS: Final = _pairs(
    "last month|last year|last week|last season|last summer|last autumn|last fall|last winter|last spring|"
    "used to|high school|middle school|years back|months back|weeks back|year before|"
    "history of|before surgery|pre surgery|in college|past history|other week|"
    "other month|previous season|no longer|when younger|back then|last monday|last tuesday|last wednesday|last thursday|last friday|last saturday|last sunday|last january|"
    "last february|last march|last april|last may|last june|last july|last august|"
    "last september|last october|last november|last december|freshman year|sophomore year|"
    "junior year|week before|month before|first week|week one|week 1|week 2|back when|last semester|"
    "season before|in january|in february|in march|in april|in june|in july|in august|"
    "in september|in october|in november|in december|in may|in school|had broken|had dislocated|had torn|at nineteen|at eighteen|at seventeen|at sixteen|at fifteen|at fourteen|at thirteen|at twelve|at twenty|my teens|my twenties|my thirties|my childhood|my youth|as kid|as boy|as girl|as child|as teenager|a boy|a girl|years earlier|before rehab|"
    "grade school|little league"
)
YOUNG: Final = _set("little younger young kid small freshman sophomore junior")
EVER_SINCE: Final = _set(
    "since for from over past until than could fine ok okay unlike vs versus wasnt didnt"
)
IN_MONTHS: Final = _pairs(
    "in january|in february|in march|in april|in june|in july|in august|in september|in october|"
    "in november|in december"
)
IS_NOW: Final = _set("is are its im cant wont keeps feels isnt")
# of these it is good news that they are back
GOOD_THINGS: Final = _set("strength power feeling sensation motion range grip velo velocity")
BACK: Final = _pairs("its back|is back|came back|all back|back now|back to|coming back|fully back")
WORKINGS: Final = _set(
    "feel feels feeling hold holds lift lifts raise raises reach reaches move moves close closes fit "
    "fits grip grips throw go goes turn turns bend bends straighten straightens work works open opens "
    "rotate rotates rise rises worth able stay stays respond responds squeeze carry use"
)
JUDGED: Final = _set("bad normal ok okay dangerous serious safe good")
THEIR: Final = _set("her his their hers")
PERIODS: Final = _set("year years month months")
# what was so "before the surgery" is past
EVENTS: Final = _set("surgery operation op rehab injury surgeries")
# "not as strong as i used to be", "a dent where the muscle used to be": the change is now
COMPARED: Final = _set("where than like as what")
TOLD: Final = _set("how when where why")  # "thats how it started" is no sign of now
RESOLVED: Final = _set(
    "gone stopped ended quit resolved disappeared vanished subsided cleared healed settled"
)
RESOLVED_PAIRS: Final = _pairs(
    "went away|goes away|cleared up|better now|fine now|ok now|okay now|all better|gone now|"
    "normal now|wore off|not anymore|good now|calmed down|passed quickly|"
    "all gone|since gone|now good|now fine|now ok|now okay|now not|now no|now never|never returned|is over|never came|now healthy|now well|now nothing|now none|long past|is past|is away|are away|went off|is history|are history|then good|then fine|then ok|then okay|then normal|then gone|right again|settled down|eased off|not now|stopped now"
)
ENDED: Final = _set("stopped quit longer finished ended")
NOT_ENDED: Final = _set(
    "not hasnt never didnt wont doesnt isnt wasnt havent dont aint cant no wouldnt"
)

# a word that may open any saying of time, so that the others need no look
TIME_HEADS: Final = (
    PAST
    | RESOLVED
    | ENDED
    | _set("was before used no a broke went")
    | {first for pairs in (PAST_PAIRS, RESOLVED_PAIRS, BACK) for first, _ in pairs}
)

MINE: Final = _set("i im ive my mine me myself id")
OTHERS: Final = _set(
    "buddy friend friends teammate teammates brother sister mom mum mother dad father coach cousin "
    "roommate wife husband girlfriend boyfriend partner son daughter closer starter catcher pitcher "
    "shortstop kid guy guys dog cat horse uncle aunt grandma grandpa grandfather grandmother "
    "colleague neighbor neighbour goalie keeper captain opponent player players he she his her "
    "their hes shes boy girl lad mate mates setter libero trainer bro reliever batter student he "
    "someone somebody dude bf gf gran nan boss classmate outfielder infielder fielder baseman nephew "
    "ref referee umpire ump stepdad stepmom fiance fiancee teacher grandson granddaughter "
    "bestie besties roomie roomies homie homies sis hubby wifey papa mama grandad granny pal pals kiddo twin flatmate housemate landlord cousins neighbors neighbours "
    "parents sisters brothers aunty auntie rival rivals fan fans audience crowd "
    " niece manager quarterback qb striker bowler lecturer professor patient patients surgeon nurse "
    "officer driver customer client clients priest mechanic plumber stepbrother stepsister toddler kids children babies bub "
    "bloke blokes lass skipper swimmer runner thrower skeleton mannequin wicketkeeper fieldsman rb wr cb lineman tackler linebacker"
)
# "i think", "i guess": said of the opinion, not of whose body it is
OPINIONS: Final = _set("think guess reckon believe suppose saw watched heard hope")
CARERS: Final = _set("trainer doc doctor medic medics physio paramedic")
JOINS_CLAUSE: Final = _set("and so because cause cuz bc then while but")
PRONOUNS_OTHER: Final = _set("he she his her their hes shes")
AFTER_THESE: Final = _set("by with into on off from over under against to at told onto tagging")
REPORTS: Final = _set(
    "says said thinks thought noticed notices saw sees told asked pointed wonders worried reckons "
    "swears mentioned"
)

FEARS: Final = _set(
    "worried scared afraid nervous fear fearing anxious paranoid concerned hope hoping hopefully "
    "terrified dread worry"
)
CONDITIONS: Final = _set("if whether unless")
QUESTION_OPENERS: Final = _set(
    "is are can could does do will would should what when how whats must shall"
)
NO_QUESTION: Final = _set("only just barely hardly not feel hear see stick move poke lift raise")
TURNED_BACK: Final = _pairs("is now|are now|but is|but now|now yes|am now|it is|does now|yes now")
QUESTION_PAIRS: Final = _pairs(
    "read that|heard that|told that|says that|said that|do u|to know|i wonder|wondering what|wondering if|wonder if|wonder what|wonder whether|wondering whether|"
    "should i|do i|when should|how would|how do|supposed to|in case|what happens|what does|"
    "watch for|look out|watching for|when do|how will|what would|could it|would it|can i|can you|"
    "what are|what about|heard about|read about|lookout for|looking for|to avoid|to prevent|"
    "prevent any|avoid any|avoid the|keep from|does it|are there|what is|whats a|"
    "how to|can throwing|will it|would i|can this|could this|tell me|know when|"
    "paper on|article on|lecture on|video on|talk on|learned about|learnt about|paper about|article about|lecture about|video about|talk about|"
    "must i|shall i|how can|what shall|what must|me about|checked for|check for|careful not|ask about|asked about|talked about"
)
NORMAL_PAIRS: Final = _pairs(
    "want it|want this|want the|wanna let|is it|is this|normal for|normal that|ok that|ok if|bad that|bad if|be worried|i worry|"
    "be concerned|why is|why does|why do|normal to|okay if"
)

WONDERING: Final = _set("why what how when where")
LITTLE_THINGS: Final = _set("finger fingers toe brother sister league guy")
HEDGES: Final = _set(
    "maybe kinda sorta slight slightly possibly perhaps probably might guess suspect idk "
    "dunno almost nearly somewhat smidge tad iffy hint mild mildly barely hardly minor "
    "vaguely unsure potentially supposedly trace faintly ish tiny little minimal"
)
HEDGE_PAIRS: Final = _pairs(
    "turned out|a bit|a little|sort of|kind of|not sure|bit of|dont know|little bit|could be|could have|"
    "a tad|a touch|may have|may be|not much|not certain|not totally|bit weaker|bit loose|"
    "bit swollen|bit numb|bit weak|bit puffy|bit cold|bit tingly|bit buzzy"
)
