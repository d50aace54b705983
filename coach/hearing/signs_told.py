"""Warning signs as people tell them: by what no longer works, in jokes, in borrowed grammar.

Law: data only; how a pattern is written is told in `patterns`. `stop` patterns are clear signs,
`ask` patterns lead to one closed question. May be added to, never taken from. Wording from memory
and common usage, to be signed by a clinician.
"""

from __future__ import annotations

from typing import Final

from coach.model.flags import Group

TOLD_SIGNS: Final = (
    (
        Group.NUMB_TINGLE,
        "S08",
        "stop",
        """
        PART .. fuzzed|fuzzing|zoned|tuned|checked|clocked out
        DIGIT|hand|fingers|palm|forearm .. offline|unplugged|airplane|muted|mute|anesthesia|novocaine
        PART .. on mute|airplane
        HANDS .. wrapped|bubble|gloved|padded|cushioned
        PART .. logged off
        PART .. like tv|pins|ants|bees|soda|champagne|sparkling|velcro
        ants|bugs|bees|needles|pins .. in|on|under|inside .. PART
        havent|hasnt .. feeling|sensation .. PART
        PART .. havent|hasnt .. feeling|sensation
        cant|couldnt|dont|doesnt|no .. feel|feeling .. from .. elbow|wrist|shoulder|knuckles down
        cant|couldnt feel .. past|below|beyond|under .. elbow|wrist|shoulder|knuckles
        half|side|back|outside|inside|edge|tip .. of .. HANDS|ARM .. asleep|dead|gone|numb|missing|sleeping
        lost .. touch .. DIGIT|HANDS
        CANT .. tell .. if|whether .. DIGIT|HANDS .. touching|touch|open|closed
        phantom|ghost DIGIT|hand|arm
        PART .. belongs to .. someone|somebody|another|other
        """,
    ),
    (
        Group.NUMB_TINGLE,
        None,
        "ask",
        """
        PART .. offline|unplugged|airplane|muted|mute|anesthesia|fuzzed
        HANDS & prickled|itches|tickled|ticklish|woolly|thick|sleepy|sleep
        feel|feels|felt .. through .. glove|gloves|sock|layer|paper
        """,
    ),
    (
        Group.WEAK_DROP,
        None,
        "stop",
        """
        havent|hasnt .. strength|power|force|grip
        no more|longer strength|power|force|grip
        not|no .. enough strength|power|force
        without strength|power|force
        PART|hand|grip .. just lets|let|letting go
        PART .. powerless|strengthless|unresponsive
        CANT .. open|close .. THING|DAILY|package|packet|bag|can|tin|cap|lid|wrapper
        CANT .. LIFT|hold|carry|raise .. THING|DAILY|fork|spoon|pencil|coffee|mug|cup
        CANT .. brush|wash|dry|comb|do|dress|shave|feed|wipe .. hair|teeth|myself|face
        PART .. falls|fell|drops|dropped|sinks|goes|comes down|off .. alone|itself|own
        PART .. jelly|jello|pudding|spaghetti|noodle|noodles|rubber|mush .. CANT|wont|since|when|cant
        PART .. no|zero juice|gas|zip|fire|oomph|force|power|strength .. left|back|in
        PART .. quit|quits|died|bailed|retired|resigned on me
        arm|hand|shoulder .. just quit|quits|died|bailed|retired|resigned
        grip|strength .. BE .. baby|toddler|kitten|grandma|newborn
        PART .. weak|weaker .. baby|kitten|noodle|newborn
        THING|ball|everything .. falls|fall|falling|fell|drops|slips .. from|out .. HANDS
        CANT .. throw .. past|over|more|farther|further .. NUM
        PART wont|cant|couldnt|doesnt throw|hold|lift|grip|raise|push|pull|obey|cooperate
        need|needed|use|used|using|take|takes .. both|two hands .. to|for .. LIFT|HOLD|THING|pick|drink|brush
        CANT .. get .. PART .. off|from .. table|bed|side|lap|leg|pillow
        PART .. stopped|stops .. working|responding|obeying|listening
        strength|power|grip|force .. only half|quarter
        less strength|power|force|grip .. PART|than|since|in|now
        """,
    ),
    (
        Group.WEAK_DROP,
        None,
        "ask",
        """
        CANT MOTOR a|an|the|my|this|that|even|with
        CANT HOLD|LIFT|PUSH a|an|the|my|this|that|even|with
        PART .. less strong|powerful
        PART .. tires|tired .. quicker|faster|easily|sooner
        no|zero|less juice|gas|zip|oomph|pop .. PART
        PART .. spaghetti|noodle|jello|jelly|pudding|mush|rubber
        felt|feels|feel|like .. spaghetti|noodle|noodles|pudding|jello .. after|by|at .. NUM|pitch|throw|set
        """,
    ),
    (
        Group.SWELLING_COLOUR_COLD,
        "S01",
        "stop",
        """
        PART .. thick|fat .. than|since|today|compared|other
        WORN|shirt .. tight .. only|one|this|that side|arm|wrist
        WORN dont|doesnt|wont|didnt|cant .. fit|come|go
        PART .. blown|blew|swole|puffed|ballooned|inflated|pumped .. up|like|twice
        PART .. inflated|inflating|balloon|balloons
        PART .. COLOUR .. HUE
        BE COLOUR HUE .. PART
        PART turned|went|gone|goes|is .. plum|eggplant|grape|smurf|avatar|ghost|corpse|chalk|wax
        veins .. PART|chest .. not|werent|never .. before
        """,
    ),
    (
        Group.SWELLING_COLOUR_COLD,
        "E04",
        "stop",
        """
        HANDS .. cold .. other .. fine|warm|normal|ok|not
        PART .. cold and COLOUR|numb|RED
        HANDS .. COLOUR .. when|while|after|during .. throw|throwing|play|pitch|serve|practice|game|bowl
        DIGIT|hand|nails .. smurf|corpse|snowman|ghost|dead
        """,
    ),
    (
        Group.LOST_MOTION,
        "B06",
        "stop",
        """
        CANT .. REACH .. HEIGHT|DAILY|top|back|ear|neck|face|mouth|hair
        LOST .. NUM .. degrees|percent|inches
        NUM .. degrees .. gone|less|missing|short|lost
        PART .. not|doesnt|wont|dont|cant .. go|goes|move|moves|bend|rise|raise|turn|reach|lift|stretch|rotate .. past|above|over|beyond|higher|further|farther|behind|back|all|fully|how|like
        stuck .. halfway|midway|partway .. used|before|could|last|yesterday
        PART .. stiffened|seized|froze|locked|tightened|rusted up|solid|shut|overnight
        shoulder|elbow|joint .. stiffened .. CANT|wont|not
        CANT .. comb|brush|wash|do|scratch|wipe|fasten|tuck|zip .. hair|back|bra|shirt|butt|dress
        CANT .. sleeve|shirt|jacket|jersey|coat|bra .. on|off|anymore|without
        CANT .. touch|get|put|bring .. back|shoulder|ear|neck|pocket|opposite|mouth
        lost .. reach|turnout|layback|extension|bend
        CANT .. straight|straighten|bend .. elbow|arm|it
        only goes|go|moves|gets|comes .. halfway|partway|shoulder|NUM
        less|lost range|motion|movement|mobility .. than|since|week|today|overnight
        """,
    ),
    (
        Group.LOST_MOTION,
        "B06",
        "ask",
        """
        doesnt|dont|wont|cant|not .. go|move|reach|bend|rotate|turn|lift .. as|so far|high
        stuck halfway|midway|partway
        not as far
        LOST .. degrees
        PART .. stiffer|tighter .. week|yesterday|before
        CANT .. go .. past|above|higher
        """,
    ),
    (
        Group.DISLOCATION_SLIP,
        "S05",
        "stop",
        """
        went|came|go|goes|come|comes|popped|slid|jumped|slipped|hopped out and|then .. back|in|again|returned
        hopped|jumped|skipped|leaped|bounced|glitched out .. slid|back|went|for|and
        popped|slipped|slid|came|jumped out of .. socket
        bone|ball .. came|went|come|goes|comes|jumped|popped|moved|slid .. out|away
        SOCKETED|bone .. out .. and .. returned|back|in|again
        SOCKETED .. left .. chat|building|station|group|planet|body|home
        SOCKETED .. wants|wanted|tries|tried|threatens .. to .. go|come|slip|pop|slide|jump out
        it|shoulder|joint .. out of .. cup|pocket|groove|rail|hinge|hinges|rails
        joint|shoulder|it .. slides|slips|shifts|rides .. out .. position|line
        COME .. out .. of .. cup|groove
        catching|catches|locking|locks|clunking|grabbing .. on me|and .. hurts|pain|painful
        SOCKETED .. glitched|glitches|unclipped|unhinged|derailed|misaligned
        """,
    ),
    (
        Group.DISLOCATION_SLIP,
        None,
        "ask",
        """
        goosey|goosy
        sensation|feeling .. could|would|will|might .. SLIP|come|pop|go
        about|going|gonna|could|might|would|will come|pop|fall|slip|go out
        PART .. not|doesnt .. trust|trustworthy|reliable
        SOCKETED|it .. moves|slides|shifts too much|far
        """,
    ),
    (
        Group.DEFORMITY,
        "E03",
        "stop",
        """
        PART .. other|another|different|strange|new form|shape|outline|contour|silhouette|look
        outline|contour|shape .. PART .. CHANGED|different|dropped|off|not
        bone .. under .. skin .. sticking|mountain|hill|up|out|poking|tent|higher
        mountain|hill|bump|corner|edge .. under .. skin
        got|have|has|theres|is a .. step|ledge|shelf|corner|cliff .. where|on|at .. shoulder|collarbone
        PART .. square .. round
        something|bone .. poking|sticking|pushing .. out|up|through
        PART .. doesnt|dont|not .. look .. like .. other|left|right|before
        """,
    ),
    (
        Group.POP_WITH_LOSS,
        "S06",
        "stop",
        """
        something|muscle|tendon|it went|goes|go twang|ping|bang|snap|rip|pop|crack|crunch|boom
        something broke|burst|exploded|went|gave|ripped|tore .. inside|in .. PART|there|it|me
        made|did|heard|hear .. crack|snap|crac|krak|bang|pop .... no|CANT|cant|weak|strength|force|hurts|after
        tearing|ripping|snapping|popping sensation|feeling|sound|noise
        PART .. toast|useless|dead .... POP
        POP .... toast|useless|nothing left|dead
        POP .... then|and .. nothing
        """,
    ),
    (
        Group.ELBOW_POP,
        "S07",
        "stop",
        """
        ELBOW .. inside|inner|medial .. crack|crac|krak|tac|tack|snap|POP|pop
        inside|inner|medial .. elbow ... PAIN|sharp|zing|stab|knife|strong
        sharp|strong|sudden|stabbing|bad pain .. inside|inner|medial .. ELBOW
        PAIN .. inside|inner|medial .. side|part|of .. ELBOW
        ELBOW .. made|did|went|goes .. tac|tack|crack|snap|pop|crac|click|bang
        """,
    ),
    (
        Group.TRAUMA_FALL,
        None,
        "stop",
        """
        fall or|and blow|hit|knock|bump
        blow to .. PART|head|shoulder
        i have|had fall|fallen|fell
        fall|fell|fallen .. from|off|down|in|on|with .. VEHICLE
        fell|fall|falls|fallen|slipped|tripped|crashed .... PART .. under|underneath|beneath|below
        player|guy|girl|man|car|bike|someone|somebody|opponent .. crashed|crash|ran|jumped|fell|ran|hit|smashed .. in|into|on|onto|with|against .. my|me|PART
        crashed|crash|smashed in|into|on|against|with my|me|PART
        PART .. ate|met|kissed|hit .. curb|ground|floor|pavement|concrete|wall|dirt|turf|ice
        PART .. broke|took|caught|absorbed .. fall|impact|landing|hit|blow
        ran|run|running|sprinted .. into .. wall|fence|post|pole|net|door
        line drive|liner|ball|puck|shot .. nailed|hit|got|smoked|drilled|caught|pegged .. me|PART
        trucked|steamrolled|bulldozed|laid out|freight
        came|come|coming|went|going down on .. PART|outstretched|side|it
        took|got .. shoulder|knee|elbow|head|helmet|boot .. to|in|into|on .. PART|shoulder|arm
        from the horse|bike|ladder|stairs|roof|tree|scooter|skateboard
        """,
    ),
    (
        Group.TRAUMA_FALL,
        None,
        "ask",
        """
        stumbled|stumble .. caught|myself|arm|hand
        bumped|knocked|hit|clipped .. my|into .. PART|me
        caught myself .. with|on|arm|hand
        """,
    ),
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
        black|dark .. before|in|in front of .. eyes
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
        have|had|has|got|having|running .. temperature|temp
        temperature .. NUM
        have|had|got|having .. runs|squits|trots
        had|have|having .. stomach|tummy .. flu|bug|virus
        runs .. all night|day
        sick .. to .. stomach
        sick|ill .. with .. flu|fever|covid|virus|infection
        threw|throwing|throw up .. this|last|all|today|everything|twice|two|again|in|after
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
        PAIN|PART|it disturbed|disturbs|interrupted|interrupts .. sleep|night
        8|9|10|eight|nine|ten and|an|maybe .. climbing|rising|worse|worsening|up|growing
        """,
    ),
    (
        Group.WEIGHT_NIGHT_SWEATS,
        "B07",
        "stop",
        """
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
)
