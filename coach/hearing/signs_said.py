"""Warning signs in trade terms, dialects and borrowed grammar.

Law: data only; how a pattern is written is told in `patterns`. `stop` patterns are clear signs,
`ask` patterns lead to one closed question. May be added to, never taken from. Wording from memory
and common usage, to be signed by a clinician.
"""

from __future__ import annotations

from typing import Final

from coach.model.flags import Group

SAID_SIGNS: Final = (
    (
        Group.NUMB_TINGLE,
        "S08",
        "stop",
        """
        paresthesia|paraesthesia|dysesthesia|dysaesthesia|hypoesthesia|anaesthesia
        reduced|diminished|altered|decreased|impaired|patchy|absent sensation|feeling|sense
        PART .. become|becomes|becoming|became|turned .. NUMB|dead
        SHOCK .. neck|spine .... PART
        prick|pricks|pricking|prickles|needles .. in|down|through .. PART
        PART .. asleep|numb|dead since|all|until
        LEG & NUMB
        CANT .. feel .. what|whether|where .. holding|hold|touching|touch|gripping
        no sensation|feeling .. PART
        """,
    ),
    (
        Group.WEAK_DROP,
        None,
        "stop",
        """
        CANT .. grip|hold|squeeze .... no more|longer
        PART .. has|have|had no .. strength|power|force|squeeze
        havent|hasnt|have|got .. no|not|the .. strength|force .. PART|lift|hold|raise|grip
        THING|things|everything .. fall|falls|falling|drop|drops|dropping .. from|out .. PART
        THING|things|everything a drop|fall
        wrist|elbow|shoulder|finger|thumb extension|flexion|abduction|rotation .. weak|weaker|gone|absent
        weak .. extension|flexion|abduction|rotation|grip
        arm|hand|wrist|shoulder .. gave|gives|goes way|out .. under|beneath|from
        grip|arm|hand|shoulder has left|quit|resigned|retired
        no squeeze
        handshake|squeeze|grip .. fish|rag|sponge
        HANDS .. let|lets go
        CANT .. grip|hold|squeeze|lift .. at all
        marked|complete|total|sudden|great loss .. strength|power|grip
        unable .. MOTOR .. PART|THING|kettle|arm|hand
        slides|slips|falls|drops|slid|slipped .. out of|from .. HANDS
        """,
    ),
    (
        Group.LOST_MOTION,
        "B06",
        "stop",
        """
        abduction|flexion|extension|elevation|rotation .. stops|stop|stuck|blocked|ends|limited|halved|lost
        PART .. not|isnt|never .. becoming|getting|going|coming|moving .. straight|up|round|over|back|higher
        PART .. not|isnt .. going|coming up|over|back
        CANT .. get|bring|put|lift|raise .. PART|it .. past|above|over|beyond|behind|higher|up
        arm|elbow|shoulder|wrist stuck
        used to .. able .. since|now .. cant|cannot
        CANT REACH ... used to
        PART locked|blocked|jammed|stuck at|in|halfway|bent|straight|on|half
        only goes|comes|gets|lifts .. to|up .. shoulder|chest|halfway|half|waist
        only lift|raise|get .. to|up .. shoulder|chest|halfway|half|waist
        dont|doesnt|didnt|not get|raise|lift|bring|move .. PART|it .. above|over|past|behind|higher|up
        elevation|movement|motion|range|abduction|rotation BE .. limited|restricted|blocked|halved
        limited|restricted .. to .. shoulder|chest height|level
        CANT .. externally|internally|rotate .. at all
        CANT .. externally|internally rotate
        """,
    ),
    (
        Group.SWELLING_COLOUR_COLD,
        "S01",
        "stop",
        """
        PART .. blown|blew|swelled|swole|puffed up
        one arm|hand|elbow|forearm .. thicker|bigger|larger|fatter|wider
        PART .. NUM|two|three|couple .. centimetres|centimeters|cm|inches|inch .. more|bigger|larger|thicker|than
        digits .. COLD|COLOUR
        black and blue .. PART
        PART .. black and blue
        """,
    ),
    (
        Group.DISLOCATION_SLIP,
        "S05",
        "stop",
        """
        subluxation|sublux|subluxed|luxation|luxated
        humeral head .. SLIP|moved|shifted|went
        jumped|slid|slipped|popped|came out and .. in|back
        took|taken .. holiday|trip|walk|vacation .. socket|joint
        SOCKETED .. jump|jumps|jumped|jumping out
        ball .. over .. edge|rim|lip
        out of .. SEAT any|every second|time|moment|throw
        SOCKETED .. went|goes out again
        it went|goes out again
        """,
    ),
    (
        Group.DEFORMITY,
        "E03",
        "stop",
        """
        PART .. look|looks|looking|has|have|got .. twist|twisted|different|other|another shape|form|now
        PART .. has|have|got .. other|another|different|new shape|form|corner|angle
        step .. at|in|on .. joint|collarbone|shoulder|ac
        bust|busted|bost .. bone|arm|wrist|collarbone
        bone|arm|wrist|collarbone .. at .. angle
        sitting|sits|hanging|hangs .. all wrong
        sticking|poking .. up .. under .. skin
        look|looks|looking .. different .. from|than|to .. other|before .. PART
        look|looks|looking .. different .. other shoulder|arm|side
        shoulder|PART .. corner .. used to
        gap|hole|dent .. at|on|in .. top|side|front .. shoulder|arm|PART
        """,
    ),
    (
        Group.POP_WITH_LOSS,
        "S06",
        "stop",
        """
        made|makes|gave .. crack|pop|snap|bang|noise .... cannot|cant|couldnt|weak|nothing
        sound|noise came|went .... cannot|cant|couldnt|weak|useless
        POP .. it|and|now .. weak weak
        something|it let go
        """,
    ),
    (
        Group.ELBOW_POP,
        "S07",
        "stop",
        """
        pop|snap|crack|ping|bang|sound|noise .. in|inside|from .. inner|medial|inside elbow
        ELBOW .. let go|off
        ELBOW .. said|says|made|gave|went .. bang|pop|snap|crack|ping
        inner|inside|medial elbow|elbows .. pop|popped|snap|snapped|let|tore
        ligament|tendon .. go|went|gave|tear|tore|rip|snap .. ELBOW
        ELBOW .. ligament|tendon .. go|went|gave|tear|tore|rip|snap
        """,
    ),
    (
        Group.TRAUMA_FALL,
        None,
        "stop",
        """
        drop|dropped|came|come|went|pitched|flew off .. VEHICLE .. on|pon|onto .. PART|side|back
        VEHICLE .. went|go over .. PART
        missed .. step .. PART|arm|caught|fell|landed
        caught myself .. PART
        kilos|kg|pounds|weight .. landed|fell|came .. on .. PART
        am|was fallen
        outstretched hand|arm
        dived|dove|diving ... came .. down|landed
        collided|clashed with .. PART|shoulder
        OPPONENT .. ran|run|crashed|smashed|barged into me
        went|go over on .. PART
        walked|ran|bumped into .. with .. PART
        """,
    ),
    (
        Group.CHEST_BREATH,
        "E02",
        "stop",
        """
        breathing|breath BE .. hard|difficult|tough|heavy|laboured|labored|problem|trouble|painful|impossible
        breathing .. difficult|difficulty|laboured|labored
        pleuritic
        stabbing|stabs|stab|sharp .. PAIN|ribs|side .. breathe|breath|inhale
        out of breath .. going|walking|just|only|from|to|doing .. gate|car|door|room|bathroom|kitchen|mailbox|nothing|toilet|shop|stairs
        coughed|coughing|cough|spat .. up .. blood
        no|not|get|getting|gets no|enough|any air .. sitting|lying|resting|at|since|now
        i get no air
        puffing|puffed|panting|winded|breathless .. after|from .. few|couple|one|two|short step|steps|stairs|metres|yards
        not|isnt|arent getting .. air|breath|oxygen
        CANT .. seem .. catch|get .. breath|air
        breathless|winded|puffed|gasping at rest
        find|finding it .. hard|difficult|tough .. breathe|breathing
        hard|difficult for .. breathe|breathing
        only .. small|short|shallow|tiny|half breaths|breath
        spat|spit|spitting .. blood|bloody
        woke|wake|waking .. gasping|choking|breathless
        """,
    ),
    (
        Group.CHEST_BREATH,
        "E01",
        "stop",
        """
        PAIN|pressure|tightness|weight|band .. on|in|across|round|around .. breast|sternum|breastbone
        CHEST .. is paining|hurting|aching|sore
        sitting|standing|kneeling|parked on .. CHEST
        TIGHT|pressing|crushing .. behind|under .. breastbone|sternum|CHEST
        """,
    ),
    (
        Group.FAINT_HEART,
        "E08",
        "stop",
        """
        presyncope|syncope|syncopal
        lights .. went|go|going out .. second|seconds|after|when|moment|sec
        i|and|then blacked|conked|passed out .. at|in|on|during|while
        i|just|almost|nearly|then blacked|conked out
        ^ blacked out in|at|on|during|after|when|twice|today|yesterday
        took .. weakness|turn .. woke|came|ground|floor|down
        HEART .. jazz|samba|offbeat|skips|skipping|stumbling|rhythm|irregular|irregularly|arrhythmia|uneven
        HEART .. clappers|galloping
        fainted|faint|fainting away
        became|went|was unconscious
        arrhythmia
        all|everything .. went|goes|got|became .. dark|black|grey|gray
        black|dark spots and|then|before
        spots .. collapsed|fell|fainted
        dizzy spells|spell
        pulse|heart .. out of rhythm
        HEART & irregular|irregularly|uneven|unevenly|erratic|skipping|fluttering|racing
        passed|pass out .. nets|net|shower|track|pitch|court|pool|bathroom|kitchen|line|street|shop|store|stairs|training
        head went|goes|got light|fuzzy|empty|woozy
        blackness|darkness came|comes|closed
        """,
    ),
    (
        Group.STROKE_SIGNS,
        "E07",
        "stop",
        """
        facial|face droop|droops|weakness|palsy
        mouth .. crooked|hangs|hanging|lopsided|droops|sideways
        difficulty|trouble|problem|problems .. speaking|talking|speech|expressing|expressive|words
        expressive|speech difficulty|difficulty
        not .. making .. sense .. mouth|face|words|talking|crooked
        couldnt|cant|cannot .. get|bring .. words|sentence|sentences .. out
        aphasia|hemiparesis|dysarthria
        CANT .. lift|move|raise .. corner|side|half .. mouth|face|lip
        CANT .. understand|follow .. said|saying|people|words|speech|anyone
        lost .. sight|vision
        FACE & DROOP|SLUR
        thick tongue
        mixing|mixed|muddling|muddled|confusing .. words|letters|sentences
        CANT .. form|find|make .. words
        tongue .. wont|wouldnt|doesnt|didnt|cant
        """,
    ),
    (
        Group.CORD_SIGNS,
        "E06",
        "stop",
        """
        CANT .. tell|feel|know .. when|if .. need|have|got|must|gotta .. loo|wee|pee|toilet|go|bathroom|wc|piss
        legs .. going|go|went|gave|give|giving .. from|out|way .. under|beneath|from
        CANT .. control .. urine|wee|water|stool
        CANT .. start|begin .. pee|wee|urinate|urinating
        walk|walking|walks not straight
        legs|leg .. feel|feels|are|is|feeling .. strange|foreign|weird .. walk|walking|straight
        saddle numbness|anaesthesia|anesthesia|numb
        lost .. control .. bladder|bowel|bowels
        legs .. went|go|are|feel .. tingly|numb|weak ... walk|walking|couldnt
        LEG|legs BE|going|go|went .. lame|rubber|dead .. walk|walking|when|me
        unsteady .. gait|walk|walking
        numbness|weakness .. in .. both legs|feet
        LEG .. not|isnt|arent mine
        LEG .. belong .. someone|somebody
        """,
    ),
    (
        Group.FEVER_INFECTION,
        "B11",
        "stop",
        """
        have|had|has|got|am|im|its|is|at|of|was|reads|read|showed|says|radiator FEVER_C
        FEVER_C .. fever|temp|temperature|this|today|yesterday|tonight|since|now|and|degrees|c
        rigors|rigor
        vomiting|vomit|vomited .. loose|motion|motions|night|since|all
        loose motion|motions .. since|today|now|night|vomiting
        spewing|chucking|hurling|heaving .. up|all|guts|since|night
        running .. temp|temperature|fever
        running|feeling|feel|am|im hot .. FEVERISH
        CANT .. keep .. food|water|anything|liquids|it|nothing .. down
        everything comes|came .. up
        """,
    ),
    (
        Group.FEVER_INFECTION,
        "B11",
        "ask",
        """
        FEVER_C
        """,
    ),
    (
        Group.WOUND,
        "S03",
        "stop",
        """
        purulent|discharge|pus .. from|in|at|portal|site|port|wound|cut|stitches|scar
        port|portal|wound|incision|scar|stitches|cut .. discharge|purulent|pus|seeping|weeping|oozing
        cut .. from .. op|surgery|operation .. stinks|smells|red|hot|weeping|leaking|open
        stitches|stitch|wound|incision|scar .. come|came|coming|fell|pulled|burst|split .. apart|open|undone|out
        wound|incision is|are open|split|apart
        cut is .. open|infected|weeping
        WOUND & LEAK
        wound|incision|cut .. septic|infected
        WOUND .. splitting|gaping|opening
        """,
    ),
    (
        Group.LEG_CLOT,
        "S04",
        "stop",
        """
        unilateral .. calf|leg
        calf .. swelled|swollen|thick|paining|hard|hot .. and|one|side
        one|left|right leg|calf BE .. swollen|swelled|thick|hard|hot
        CALF & SWELL|RED|HOT
        CALF .. doubled|twice .. size|other
        """,
    ),
    (
        Group.NIGHT_PAIN_UNRELENTING,
        "B01",
        "stop",
        """
        PAIN .. not|isnt|wont|doesnt|didnt .. letting|let|lets .. sleep|rest
        PAIN .. there|present .. all|time|constantly|always
        PAIN|PART .. night shift
        throbs|throbbing|aches|aching|hurts|hurting .. 247|always|nonstop|constantly
        awake|up|walking|pacing|walk .. night|nights|floor .. with it|PART|PAIN
        keeps|keep|kept .. me .. awake|up .. every|all|most|each .. night|nights
        slept|sleep|sleeping sitting|upright .. because|with|PART|PAIN
        """,
    ),
    (
        Group.NIGHT_PAIN_UNRELENTING,
        "S09",
        "stop",
        """
        PAIN 8|9|10|eight|nine|ten .. at|even|and|now|rest|resting|sitting
        8|9|10|eight|nine|ten out of ten|10 .. pain|hurts|cant|agony|rest|resting
        10|ten|nine|9 of 10|ten pain
        PAIN is|at|was|hit|hits .. 8|9|10|eight|nine|ten
        lying|lie|lay|laying down .. throbs|throbbing|aches|hurts|pounds|kills
        PAIN .. level|score|scale|rating .. 8|9|10|eight|nine|ten
        so bad .. crying|cried|tears|cry|screamed
        """,
    ),
    (
        Group.NIGHT_PAIN_UNRELENTING,
        "S09",
        "ask",
        """
        8|9|10|eight|nine|ten out of ten|10
        no|zero sleep .. week|days|nights
        """,
    ),
    (
        Group.WEIGHT_NIGHT_SWEATS,
        "B07",
        "stop",
        """
        lost|losing|dropped|dropping|shed|shedding .. stone|kilo|kilos|kg|kgs|pounds|lbs|weight .... trying|reason|dieting|unintentionally|unintended|diet|purpose|explain|meaning
        stone|kilo|kilos|kg|kgs|pounds|lbs|weight .. gone|lost|down|off|less .... unintentionally|unintended|reason|without|explain
        weight .. reducing|shrinking|melting .. without|reason|and|off|me|no|not
        weight .. falling|dropping|coming|melting off me|us
        dropping kilos|pounds|kgs
        soak|soaking|soaks through
        weight .. keeps|keep|kept .. dropping|falling|going|coming
        unexplained|unintended|unintentional|unplanned .. loss|weight|kilos|kg|pounds
        loss of .. kilos|kg|pounds|weight .. reason|trying|unexplained|diet
        getting|got|become thinner|skinnier|lighter .. without|trying|reason
        wringing|soaking|dripping wet .. every|each night|morning
        """,
    ),
    (
        Group.MANY_JOINTS,
        "B08",
        "stop",
        """
        all|every|each .. knuckles|fingers|joints|wrists .. SWELL|stiff|thick|puffy
        stiffness|stiff .. in|of .. wrists|knees|hands|fingers|shoulders .. and .. wrists|knees|hands|fingers|shoulders|hips
        hands|knees|fingers|wrists|toes|elbows .. hands|knees|fingers|wrists|toes|shoulders|elbows .. stiff|swollen|puffy|thick|swelled|ache|hurt
        morning .. all|every .. fingers|knees|joints|hands
        stiff everywhere|all over .. hour|hours|morning|mornings
        """,
    ),
    (
        Group.PAINKILLERS,
        "B09",
        "stop",
        """
        PILL|tablet|pill|painkiller|tablets .. before|so|to|for|prior .. TRAINING
        PILL|tablet|pill|painkiller .. get|got|getting through
        PILL|tablet|pill|painkiller|tablets .. TRAINING
        dosed|dose|dosing|doping|topped|loaded up .. before|for|to|so|on
        had|have|has to .. chew|take|swallow|pop|use .. PILL|tablet|pill|tablets
        PILL .. before .. warm|start|begin|coach|play|throw
        CANT .. throw|play|train|bowl|serve|pitch|exercise without PILL
        took|take|taking something .. for|against .. PAIN .. so|to|before|could
        on strong|heavy|daily|stronger PILL
        pill|tablet|something to get through
        drank|drink|eat|ate|swallow|swallowed|chewed PILL .. TRAINING|so|to|before
        popping|pop|eating|swallowing PILL .. before|for|so|to
        take|took|taking something before|so .. TRAINING
        """,
    ),
    (
        Group.PAINKILLERS,
        "B09",
        "ask",
        """
        taking|take|took|on|had|have|having .. PILL|tablet|painkiller
        """,
    ),
    (
        Group.OVERTIRED,
        "B10",
        "stop",
        """
        SPENT|TIRED|jaded|flat|fatigue|worn|tiredness|wrecked|burnt|burned|wiped .. since|for|from|this|over|last|past .. month|months|weeks
        SPENT|TIRED|jaded|fatigue|worn|wiped .. last|past|this month|months|weeks|week
        weeks|month|months .. SPENT|TIRED|jaded|fatigue|worn|flat|drained
        weeks|month|months .. sleep|rest .. cure|help|helps|cures|fix|fixes|nothing
        sleep|rest .. does|do|doesnt|dont|wont|will .. nothing|no|cure|help|fix .. it|tired|weeks
        since weeks|months .. no energy|force|power|motivation
        no|zero|without energy|drive|motivation|spark .. for weeks|month|months
        gassed|buggered|shattered|empty|drained|cooked .. for|since .. weeks|month|months|a
        worse|down|slower|slow .... for weeks|month|months .. tired|exhausted|empty
        """,
    ),
    (
        Group.OVERTIRED,
        "B10",
        "ask",
        """
        run|worn down|out lately|recently|weeks
        battery .. percent|empty|flat|dead .. weeks|month|months
        """,
    ),
    (
        Group.SELF_HARM,
        "E11",
        "stop",
        """
        rather not be|live|exist|wake alive|here|up|anymore
        rather not live|exist
        nuh|no|dont|not|neither want .. to|fi live|living .. again|more|anymore|no
        disappear .. for good|ever
        ending|end .. it|my life|everything
        no|not|dont .. want|wish .. to .. live .. more|again|anymore
        better off if i .. dead|gone|died
        feel|feels|feeling like dying
        want|going|wanna|need|plan|urge .. to harm|cut myself
        wanna harm|cut myself
        better .. if i .. wasnt|werent|was|were not|gone|dead|here|around|alive|born
        life .. pointless|meaningless|worthless
        taking|take|end|ending my own life
        dont|not|cant want|wish|wanna .. to .. go|carry|keep on .. living|live|like
        dont|not|cant .. go|carry|keep on living
        dont|not want this life
        tried .. to kill|harm|cut myself
        """,
    ),
)
