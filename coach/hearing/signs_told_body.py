"""Warning signs of the whole body as people tell them: roundabout, in jokes, in borrowed grammar.

Law: data only; how a pattern is written is told in `patterns`. `stop` patterns are clear signs,
`ask` patterns lead to one closed question. May be added to, never taken from. Wording from memory
and common usage, to be signed by a clinician.
"""

from __future__ import annotations

from typing import Final

from coach.model.flags import Group

TOLD_BODY: Final = (
    (
        Group.ABDOMEN_BLOW,
        "E10",
        "stop",
        """
        hit|kick|kicked|knee|elbow|punch|ball|blow|took|ate|helmet .. RIBS .... on|top|shoulder .. left|shoulder|top
        RIBS .... top .. of .. shoulder
        RIBS .... shoulder .. killing|kills|aches|hurts|hurting|pain|sore
        """,
    ),
    (
        Group.CHEST_BREATH,
        "E01",
        "stop",
        """
        tight|tightness|pressure|band|belt|strap|vice|ring|strong|strongly .. round|around|across|over .. CHEST
        CHEST .. linebacker|linebackers|elephant|piano|car|fridge
        CHEST .. sitting|sits|sat|standing|stands|stepping|parked|lying .. on it|me
        someone|somebody|something|elephant|truck|weight|brick .. sitting|sits|parked|standing|lying|laying|stepping .. on .. CHEST|it
        CHEST .. like .. someone|somebody|something|weight|elephant .. on
        press|presses|pressing|pushes|squeezes .. in|on|against .. CHEST
        CHEST .. presses|pressed|squashed|compressed|caving|clamped
        heaviness|heavy|weight .. across|over|on .. CHEST
        PAIN .... jaw .... arm
        jaw & arm
        """,
    ),
    (
        Group.CHEST_BREATH,
        "E02",
        "stop",
        """
        dont|not|cant|never get|getting|have enough air|oxygen
        breathing|breath|breathe problem|problems|issue|issues|trouble|difficulty
        problem|problems|trouble|difficulty .. in|with breathing|breath
        sucking air|wind .. just|standing|sitting|nothing|like
        pain|PAIN .. CHEST .. air|breath|breathe|inhale
        lungs .. tapped|quit|gave|give|shut|empty
        breathless|winded|puffed .. just|only|from|after|by .. walking|talking|standing|sitting|stairs|mailbox|nothing
        havent|hasnt|have|has|no|get|got|getting not|no|enough|little|zero air|breath|oxygen
        havent|hasnt|cant|couldnt .. air|oxygen .. in|also|when|even|enough|get|sit|sitting|lie|walk|talk
        have|has|having|get|getting no air
        blood .. when|as|after|while .. cough|coughed|coughing|spit|spat
        cough|coughed|coughing|spit|spat .. some|little|bit .. blood
        blood .. sputum|phlegm|mucus|spit|handkerchief|tissue|napkin
        air .. doesnt|wont|not|cant .. come|go|get|enter|enough
        CANT breathe right|well|properly|good|normal|normally|deeply|deep
        breath|breathing|inhaling .. knife|stab|stabs|stabbing|needle
        """,
    ),
    (
        Group.FAINT_HEART,
        "E08",
        "stop",
        """
        came|come|woke round|to|up .. on .. floor|ground|grass|turf|mat
        blacked|passed out .. set|rep|mound|field|practice|warmup|warmups|second|seconds|dugout|gym|hall|game
        HEART .. beats|beating|goes|going|races|pounds|thumps .. when|while|even .. rest|resting|sitting|lie|lying|nothing|still
        near passed|passing|pass|blacked out
        almost|nearly|about fainted|faint|collapsed
        HEART .. missing|misses|missed|skipping|dropping .. beats|beat
        lights out .. sec|second|seconds|moment|minute|instant
        got|get fainted
        HEART .. NUM .. sitting|resting|bench|bed|couch|still|nothing|rest|lying
        HEART .. beats|beat|beating|is|goes|going .. irregular|irregularly|uneven|unevenly|wrong
        dizzy .. and|then .. dark|black|fell|down|floor
        passed|pass out .. during|dugout|practice|mound|set|field|gym|shower|school|hall|warmup|class|standing|running
        black|dark .. before|in|front .. eyes
        everything|room|world|head|all turns|turned|turning|spins|spinning .. around|round|and|i|me
        HEART .. jumps|jumping|stumbles|stumbling|gallops|galloping|drum|drums|drumming|thudding|thuds|somersaults|hiccup|hiccups|trips|pauses
        HEART .. not|isnt .. regular|steady|even|rhythm|normal
        HEART .. crazy|nuts|wild|berserk|haywire|insane|bananas .. just|sitting|doing|and|im|for|while|without
        came|come|coming|going|went over .. faint|dizzy|lightheaded|woozy|weird|unwell|funny
        lost|lose|losing .. consciousness|awareness|senses
        all|everything|vision|it|sight .. black|dark .. eyes|fell|down|stood|out
        nearly|almost .. fell|fainted|collapsed|dropped|ate|hit ... black|dark|stars|dizzy|spinning|turns|lightheaded
        black|dark|stars|dizzy|spinning|turns|lightheaded ... almost|nearly .. fell|fall|collapsed|down
        """,
    ),
    (
        Group.FAINT_HEART,
        "E08",
        "ask",
        """
        passed|passing|pass out
        blacked|blacking|black out
        HEART .. too|so|very|really fast|hard|quick
        HEART .. jumps|jumped|weird|odd|funny|strange|flutter|fluttery|irregular|skips|beats|drums|thumps
        flutter|fluttery|fluttering .. HEART|chest
        seeing|see|saw .. stars|spots|black|double
        """,
    ),
    (
        Group.STROKE_SIGNS,
        "E07",
        "stop",
        """
        FACE .. wont|doesnt|cant|not smile
        one side .. FACE
        FACE .. hangs|hanging|droops|sags|down|lower .. side|one|left|right
        side|half|corner .. FACE .. NOT|CANT|doesnt|wont|hanging|hangs|low|lower|frozen|stiff|numb|down|sleeping|slack|lame|paralyzed|weird|gone|drops|move
        FACE .. NOT|doesnt|wont|cant .. move|moves|moving|work|working|smile
        speak|speaking|spoke|talk|talking .. strange|weird|slurred|slow|funny|drunk|unclear|mush|wrong|like
        words|sentences|speech|talking|speaking .... soup|mush|gibberish|nonsense|salad|jumbled|backwards|slurred|mixed|sober
        CANT|couldnt|not .. find|remember|say|form|get|make|speak .. words|word|sentences|sentence
        weakness|weak|numb|heavy|paralyzed|dead|limp .. down|on|in|of|all .. one|whole|left|right|half side|body|half
        one|left|right|half|whole|entire side .. of .. body|me .. weak|numb|heavy|dead|limp|slow|gone|asleep
        arm and|plus|also leg .... weak|weakness|numb|heavy|dead|limp|side|suddenly|sudden
        weak|weakness|numb|heavy|dead|limp .... arm and leg
        CANT|couldnt|not .. see .. out|with|from|of|in|through|properly .. eye|eyes|side
        blind|gone|black|dark|curtain|blurry|lost .. in|of|over|out|on|from .. one|left|right eye
        eye .. went|gone|goes|suddenly black|blind|dark|blurry
        """,
    ),
    (
        Group.STROKE_SIGNS,
        "E07",
        "ask",
        """
        speech|tongue|words & slow|thick|wrong|weird|strange|funny|slurred|mixed|lost|heavy|cant|couldnt|soup|mush
        FACE & weird|strange|funny|heavy|crooked|lopsided|asleep|frozen|stiff|half
        see|vision|sight|eye|eyes & blurry|double|foggy|half|missing|curtain|weird|suddenly
        """,
    ),
    (
        Group.CORD_SIGNS,
        "E06",
        "stop",
        """
        CANT|no|not|dont feel .. crotch|groin|genitals|privates|saddle|butt|bottom
        LEG .. buckle|buckles|buckled|shaky|unsteady|steady|weak|wobbly .. and .. hands|fingers|hand
        LEG .. not .. steady|stable|sure
        CANT|lost|losing|no control .. bladder|bowel|bowels|pee|poop|urine
        LEG .. arent|isnt|not|dont|doesnt|wont|cant .. listening|listen|obeying|obey|cooperating|cooperate|responding|follow|do|hold|carry|steady
        walk|walking|walks .. like .. drunk|newborn|baby|deer|giraffe|sailor|boat|ice|zombie|penguin|toddler
        unsteady|wobbly|shaky on .. feet|legs
        LEG .. weak .. walk|walking|stairs|fall|when|and
        both hands|arms|my hands .. CANT|cant|couldnt .. MOTOR|write|button|type|grip|hold|work|feel|anything
        hands|fingers .. CANT .. button|buttons|write|type|text|shoelaces|laces
        peed|pee|wet|pooped|soiled .. myself|pants|bed|without .. feel|feeling|knowing|noticing
        CANT tell|feel|know .. when|if .. pee|go|gotta|bladder|toilet|bathroom|full
        both|my hands .. clumsy|fumbling|useless .. buttons|walk|legs|since|both
        KEEP .. tripping|stumbling|falling|losing .. feet|balance|over|when|walk
        numb|numbness|no feeling|tingling .. crotch|groin|saddle|bottom|buttocks|inner|private|privates|inside .. legs|thighs|area|parts
        """,
    ),
    (
        Group.CORD_SIGNS,
        "E06",
        "ask",
        """
        LOST .. balance
        off balance|unsteady|imbalance
        balance .. bad|off|worse|weird|gone|trouble|problem|problems
        walk|walking & unsteady|drunk|wobble|wobbly|sway|swaying|weird|strange|clumsy|stumble
        pee|urine|bladder|toilet & cant|control|leak|leaking|accident|feel|strange|weird|hold
        LEG & drunk|newborn|giraffe|disobey|uncontrolled|strange|weird|unreliable
        clumsy
        """,
    ),
    (
        Group.FEVER_INFECTION,
        "B11",
        "stop",
        """
        FEVERISH and .. ill|sick|feel|bad|weak|shivering|awful
        thrown up
        ill|sick .. with .. temperature|temp|fever
        fever .. at|of|over|around .. FEVERISH|NUM
        temperature|temp|fever .. thirty|forty|hundred
        stomach|tummy|belly virus|bug|flu
        both ends
        shivered|shivering .. night|all|hours
        chills|shakes and .. chills|shakes|fever|sweats
        have|had|has|got|having|running .. temperature|temp
        temperature .. NUM
        have|had|got|having the runs|squits|trots
        had|have|having .. stomach|tummy .. flu|bug|virus
        runs .. all night|day
        sick .. to .. stomach
        sick|ill .. with .. flu|fever|covid|virus|infection
        threw|throwing|throw up .. last|all|today|everything|twice|NUM|morning|night
        vomited|vomit|puke
        sweating|sweats|shivering|shivers|shakes ... flu|fever|chills|temperature
        shivering|shivered|shivers|shakes .. all|night|since|under|cold
        body|bones|everything|muscles hurts|hurt|ache|aches|aching .... fever|sick|flu|cold|temperature|weak
        """,
    ),
    (
        Group.FEVER_INFECTION,
        "B11",
        "ask",
        """
        throwing up
        threw up
        feel|feels|feeling|felt .. hot|feverish|ill|flu|flulike|sick .. maybe|fever|cold|might|today|think
        diarrhea|loose stool|stools
        slight|little|bit|maybe|low temperature|temp|fever
        """,
    ),
    (
        Group.WOUND,
        "S03",
        "stop",
        """
        WOUND .. water|liquid|fluid|blood|stuff|pus .. comes|coming|came|out|runs|running
        WOUND .. RED .. and .. water|liquid|fluid|pus|hot|swollen|comes
        cut|scar|wound|incision .. from|of .. operation|surgery|op .. LEAK|HOT|RED|open|smells
        WOUND .. opened|open|opening|split|burst|came|come
        pus .. there|in|from|coming|out|WOUND|cut
        fluid|liquid|stuff|yellow|pus|blood .. out|from|coming .. of|from|out .. WOUND|cut|hole|holes
        surgery|operation .. holes|hole|cuts|cut|site .. leaking|leak|oozing|red|hot|open|smell|green|yellow|dripping
        """,
    ),
    (
        Group.LEG_CLOT,
        "S04",
        "stop",
        """
        LEG|calf .. big|thick|fat|hot|red|swollen|huge and .. big|thick|fat|hot|red|swollen|painful|warm|tender
        CALF .. blew|blown|ballooned|swole|thick|fat|huge|bigger|puffy|tender|tenderness
        one|left|right LEG|calf .. thick|fat|huge|bigger|puffy|swollen|tender|PAIN .. painful|hot|warm|red|knee|than|hurts|calf|swollen|since
        thick|painful|swollen|tender|warm|hot|red .. behind .. knee
        tenderness|tender|PAIN|swelling .. in .. CALF
        LEG .. thick|fat|swollen .. and .. painful|hot|red|hurts|sore|warm
        """,
    ),
    (
        Group.NIGHT_PAIN_UNRELENTING,
        "B01",
        "stop",
        """
        PART|PAIN .. robs|steals|costs|takes|ruins|kills .. sleep|night|nights
        slept|sleep nothing|zero|barely|hardly|little .. because|from|due|with .. PART|PAIN
        PAIN .. had|has me pacing|walking|crying|up
        PAIN .. whole|entire night
        PAIN .. whichever|whatever|however|wherever .. way|i|position|side|lie|lay|do
        PAIN .. even when|if|while|just .. chilling|chillin|relaxing|resting|sitting|couch|nothing|lying|laying|watching|still|asleep|bed
        because|due .. PAIN .... sleep|slept .. only|NUM|little|no|badly|bad
        PAIN .. too .. sleep|rest
        PAIN .. at|in|during night .. dreadful|awful|terrible|horrible|bad|unbearable|severe|strong|worst|brutal
        walk|walked|pace|pacing|walking .. house|room|floor|kitchen|hall .. night|PAIN
        no matter how|what .... PAIN
        PART .. wouldnt|wont|didnt|never|doesnt shut|quiet|stop|settle|calm|quit|chill .. up|down
        not|no|never|barely .. getting|get|got .. sleep .. PAIN|PART
        PAIN .... not|no|never|barely getting|get|got .. sleep|rest
        PAIN .... up|awake till|til|until|past|at .. NUM|late|morning|dawn
        pain .. was|is there .. whole|all|night|time
        whole|all night .. pain|PAIN
        woke|wake|waking|wakes up .. crying|screaming|tears|agony|sobbing|moaning
        all day and|plus|all .. night
        shoulder|arm|elbow|it|pain|ache .. rave|party|concert|parade|riot .. all|night
        CANT|not|no find .. position .. sleep|lie|lay|rest
        slept|sat|sleep|sit .. in|on .. armchair|chair|recliner|sofa|upright .... nights|PAIN|because|lying
        lying|laying .. down .. unbearable|impossible|torture|agony|kills|worse
        icing|ice .. at|since .. NUM am|oclock
        keeps|kept .. me|us .. up|awake .. until|till|til|all|small|most
        PAIN .. at .. rest .. nothing
        PAIN .. does|doesnt|dont|will|wont not|go .. away
        shoulder|arm|elbow|pain .. disturbed|disturbs|ruined|ruins|wrecked|destroyed|robbed|stole .. sleep|night|nights
        shoulder|arm|elbow|pain|ache .. screaming|throbbing|barking|howling|pounding|burning .. at|all|in|through .. NUM|night|am|nite
        zero|no|little sleep because|cause|from|due|thanks|with .. of|it|PART|PAIN|to
        PAIN .. doesnt|dont|didnt|wont|not .. let|lets .. me .. sleep
        wake|wakes|woke|awake .. every|each .. night|hour .. because|from|with|by|due .. PART|PAIN|it
        PAIN .. always .. there|present|in|even|rest|also
        PAIN .. also|even .. rest|resting|nothing|still|lying|night|sleep
        PAIN .. never .. goes|stops|leaves|away|ends|eases|sleeps|off
        throbs|throbbing|hurts|aches|pain .. 247|nonstop|day
        24 7
        nothing .. touches|eases|dulls|kills|calms|quiets it
        CANT .. sit|stand|lie|lay|keep .. still .. with|because|from|PAIN|it
        hurts|hurt|pain|aches so .. bad .. even|doing|laying|lying|sitting|nothing|just
        keeps|kept|keep .. me .. awake|up .. PART|PAIN|it
        """,
    ),
    (
        Group.NIGHT_PAIN_UNRELENTING,
        "B01",
        "ask",
        """
        woke|wake|waking .. up .. to|with|from|by it
        woke|wake|waking .. up .. sore|stiff|hurting
        only .. because|due|cause|from .. PAIN
        PAIN .. last night
        up|awake at NUM .. icing|ice|holding|pacing|rocking|again
        also|even when|while|if .. do|doing nothing
        PAIN|PART|it disturbed|disturbs|interrupted|interrupts .. sleep|night
        8|9|10|eight|nine|ten and|an|maybe .. climbing|rising|worse|worsening|up|growing
        """,
    ),
    (
        Group.WEIGHT_NIGHT_SWEATS,
        "B07",
        "stop",
        """
        pool|puddle|buckets of sweat .. night|wake|waking|bed
        woke|wake|waking|wakes .. up .. sweat|sweating|drenched|soaked
        weight .. going|went|goes|dropping|falling|coming down|off .. without|reason|why|trying|no|not
        lost|losing|dropping|dropped|shedding|shed|down .. weight|kilos|pounds|lbs|kg .. but|and|without|even|though|eating|eat|diet|normal|crazy|fast
        lost|losing|lose .. NUM|some|many .. kilos|pounds|lbs|kg .... diet|trying|reason|eating|eat|normal|why
        losing kilos|weight|pounds
        wake|woke|waking|wakes .. drenched|soaked|dripping|wet|sweaty|soaking|sweating
        bed|sheets|pillow|pajamas|shirt .. wet|soaked|drenched|damp .. sweat|night|every|again|nights
        in|at|every|during .. night .. sweat|sweats|sweating .. wet|bed|soaked|much|all|lot
        lump|growth|mass|swelling .. in|under|on .. armpit|neck|breast|groin .. growing|bigger|grows|hard|new|that
        lump .. growing|grows|bigger
        cancer .. before|back|again|had|pain
        """,
    ),
    (
        Group.WEIGHT_NIGHT_SWEATS,
        "B07",
        "ask",
        """
        pounds|kilos|lbs|kg lighter|less|down|gone
        lost|losing|dropped|dropping .. weight|pounds|kilos|lbs|kg
        sweat|sweats|sweaty|sweating|sweated .. night|bed|sheets|sleep
        """,
    ),
    (
        Group.MANY_JOINTS,
        "B08",
        "stop",
        """
        joints .. blew|blown|ballooned|huge|thick
        my joints .. PAIN|hurt|swollen|thick|stiff|ache
        every|all|each .. joint|joints .. own|have|body|me
        both|all .. shoulders|hips|knees|hands .. and|plus .. hips|knees|hands|shoulders|wrists|ankles|fingers
        fingers|knees|hands|wrists|ankles|hips|toes and fingers|knees|hands|wrists|ankles|hips|toes .. swollen|stiff|puffy|PAIN
        """,
    ),
    (
        Group.PAINKILLERS,
        "B09",
        "stop",
        """
        without PILL .. CANT|cant|couldnt|not|impossible|no
        play|throw|train|bowl|pitch|compete|serve .. only .. with|on PILL
        only|cant|couldnt .. play|throw|train|bowl|pitch|compete|serve .. with|without PILL
        injection|injections|shot|jab .. for|against .. PAIN
        injection|shot .. so|to .... play|throw|pitch|bowl|serve|train
        tablets|tablet|pills|pill|medicine|medication|meds .. against|for|because .. PAIN|shoulder|arm|elbow
        PILL|tablet|painkiller .. before|for|so|to|until .. training|match|game|throw|play|serve|session|practice|pitch|compete|bowl|exercise|workout|arm|shoulder
        before .. training|match|game|throwing|session|practice|exercise|pitching .. take|took|need|pop|popped|use|always .. PILL|tablet|pills|painkiller
        popped|took|eat|eating|ate|living|running|fueled .. on|some|more|few|NUM|two|three .. PILL|painkillers .. so|to|just|for|before|until|arm|shoulder
        PILL .. arm|shoulder|elbow .. quiet|shut|up|numb|through|calm
        """,
    ),
    (
        Group.PAINKILLERS,
        "B09",
        "ask",
        """
        PILL .. every .. day|hour|hours|morning|night
        PILL .. today|yesterday|earlier|morning|night|hour|hours|ago
        had|took|take|taken|popped|used|on .. PILL
        painkiller|tablet .. PAIN|shoulder|arm
        """,
    ),
    (
        Group.OVERTIRED,
        "B10",
        "stop",
        """
        exhausted|tired|drained|worn|wiped|fatigued .. since .. month|months|weeks
        for weeks|months .... tired|exhausted|drained|wiped|fatigued|worn
        so|too|very tired for|since .. weeks|month|months
        always|constantly tired since|for
        dead|so|really|always|just tired for|over|past .. month|months|weeks
        always|constantly tired even|after|no|despite
        worn|wiped|burned|burnt|drained out|down .... weeks|month|months
        tired|exhausted|drained|wiped|dead|knackered|fatigued ... weeks|month|months
        for|since|past|last|few|several|three|two weeks|month|months .. exhausted|tired|drained|no|without|zero|low energy|tired|exhausted|motivation|drive|rest
        no|without|zero|lost|low energy|drive|motivation|gas|spark .... weeks|month|months|performance|worse|velo|anymore
        weeks|month|months .... no|without|zero|lost|low energy|drive|motivation|spark|desire|interest
        running|run|been .. on .. fumes|empty .... weeks|month|months|velo|worse|down|drive
        """,
    ),
    (
        Group.OVERTIRED,
        "B10",
        "ask",
        """
        more tired|exhausted|fatigued .. usual|normal|before|lately|late
        tired|exhausted|drained .. lately|late|always|time
        on .. fumes
        """,
    ),
    (
        Group.SELF_HARM,
        "E11",
        "stop",
        """
        wish i was|were dead
        wish i was|were dead|gone
        longer|never|hardly|not|isnt worth living
        thinking|think|thoughts|urge|urges .. about|of|to hurting|hurt|harming|cutting|cut myself
        dont|not|no .. see|seeing|have .. point|reason|purpose .. in|of|to waking|living|life|going|getting
        finish|end|ending|finishing|take|taking|quit .. my life
        offing|off|unalive|unaliving|delete|deleting|hang|hanging|shoot|shooting|drown|drowning|poison myself
        sleep|asleep|bed .. and|to .. never|not wake
        leave|leaving .. this world|earth|life
        nobody|noone|anyone .. would|will .. miss|notice|care .. me|if|gone
        burden to|on .. everyone|family|everybody|all|them|others
        life .. is|feels|seems .. pointless|meaningless|worthless|over|hopeless
        think|thinking|want|wanna|going|like|plan .. to|about|of kill|killing|end me|myself|life|it
        dont|not|cant|doesnt want|wish|like .. to|live .. live|living|be alive|exist .. more|anymore
        dont|not|doesnt want .. live .. more|anymore|longer
        tired|sick .. of .. living|life|being alive|existing
        everyone|everybody|they|family|team|world .. better|happier .. without me
        no|not|dont|cant .. reason|point|purpose|sense .. go|going|carry|keep|continue|live|living .. on|going|living|anymore|life
        ending it
        jump .. off|in front .. bridge|train|roof|building
        """,
    ),
    (
        Group.SELF_HARM,
        "E11",
        "ask",
        """
        see|have|no .. reason|point|purpose .. to|of|in|anymore
        point of|in .. anything|it all|everything|trying
        disappear
        harm|harming|cutting
        """,
    ),
    (
        Group.FEVER_INFECTION,
        "S02",
        "stop",
        """
        PART|joint .. hot|warm|red and .. hot|warm|red|big|thick|swollen
        PART|joint .. HOT .. RED
        """,
    ),
    (
        Group.CHEST_BREATH,
        None,
        "ask",
        """
        no air
        """,
    ),
)
