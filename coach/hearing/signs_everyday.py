"""Warning signs in the everyday comparisons and roundabout wordings people use for them.

Law: data only; how a pattern is written is told in `patterns`. `stop` patterns are clear signs,
`ask` patterns lead to one closed question. May be added to, never taken from. Wording from memory
and common usage, to be signed by a clinician.
"""

from __future__ import annotations

from typing import Final

from coach.model.flags import Group

EVERYDAY_SIGNS: Final = (
    (
        Group.NUMB_TINGLE,
        "S08",
        "stop",
        """
        SHOCK ... PART|neck|spine
        SHOCK feeling|sensation|pain|pains|like
        shooting|burning .. from neck|shoulder|elbow|armpit .. to|into|down
        shooting|shoots|shot|runs|ran .. down|into|through|to HANDS|ARM
        like .. glove|gloves|mitten|mittens|sock|plastic|tape|wax .. PART
        wearing .. glove|gloves|mitten|mittens .. PART
        CANT feel the|my|a ball|seams|grip|bat|stick|racket|racquet|disc|javelin|paddle|rope
        CANT feel .. texture|temperature|water|heat|hot|fabric|needle|pulse|when|if|it
        CANT tell .. hot|warm .. cold|water
        feeling|sensation .. faded|fading|muted|dulled|deadened|reduced|decreased|different|weird
        PART .. different .. touch|other
        touch|touching .. PART .. different|weird|strange|dull|muffled
        PART .. half asleep
        PART .. BE .. not|isnt own|mine
        dead to touch
        fell|falls|falling|goes|went asleep|sleep .. when|while|holding|driving|reaching|carrying
        it|still BE asleep .. woke|up|hour|hours|morning|minutes
        PART .. fuzzy|muffled|far|foreign|numbed
        PART .. like .. dentist|shot|injected|injection|frostbite|frozen
        pins needles
        SHOCK every|with|on|each throw|pitch|serve|stroke|hit|time
        PART .. lights|lit|fires|fired up .. like|every|when
        no touch|feel|feeling .. DIGIT|PART
        PART .. prickly|prickling|stinging|itchy .. asleep|numb|needles

        feeling|sensation .. hasnt|didnt|isnt|wont|never .. come|came|back|return|returned
        have|need|got|gotta .. look|watch|see .. PART|it .. to|if know|tell|see|be
        sensation|feeling .. PART .. off|different|less|weird|reduced|gone|compared
        PART .. feels|felt|feel|like .. cardboard|sandpaper|leather|rubber|wood|wooden|metal|stone
        """,
    ),
    (
        Group.NUMB_TINGLE,
        None,
        "ask",
        """
        like .. slept on it|PART
        twinge|twang|zinger|ping|current .. down|through PART
        PART .. funny|strange|odd
        PART .. heavy & dead|numb|fuzzy
        HANDS .. sleepy|drowsy|thick|clubby
        PART .. feels|felt|feel BE .. far|wrong|absent
        usual .. sleeping on
        PART & twitching|twitches|twitchy|spasm|spasms|jumpy|crawly|fizzy|pulsing|sizzling|cramping
        PART & foreign|fake|borrowed|disconnected|absent|missing|distant|hollow
        PART .. feels|felt|feeling .. off|different|gone
        """,
    ),
    (
        Group.WEAK_DROP,
        None,
        "stop",
        """
        only MOTOR .. halfway|partway|inches|inch|waist|belly|chest|third|quarter
        only get .. it|PART .. halfway|partway|inches|inch|waist|belly|chest
        lift|raise|get|hold|bring .. it|PART .. halfway|partway|inches .. before|then|and
        only lift|raise|get|hold|bring .. it|PART .. halfway|partway|half
        KEEP LOST grip|strength|power|hold
        KEEP LOST .. my grip
        KEEP letting|let|lets .. go .. THING|ball|bat|racket|it
        ball|disc|javelin|racket|racquet|bat|stick|paddle|weight|dumbbell .. slips|slipping|slipped|flying|flew|falls|fell|falling|drops|dropping|dropped .. HANDS .. no reason
        slips|slipping|slipped|falls|falling|drops|dropping .. out|from .. HANDS .. no reason
        DROPPING .. THING .. no reason
        PART refuses|refused|refusing to
        PART .. refuses|refused|refusing to MOTOR|move|work
        PART .. giving|giving|failing|fading|dying .. on me
        POP on|during|at|in throw|pitch|serve|spike|release|stroke|shot .... WEAK
        strength|power|grip .. isnt|wasnt|not .. was|used|same|half
        CANT .. shake .. hand|hands
        CANT .. put|do|tie|get .. hair|ponytail|bun .. up
        CANT .. start|turn .. car|ignition|key|screwdriver|wrench
        CANT .. screw|unscrew|uncap|peel|twist|wring
        CANT .. steer|signal|sign|zip|snap|clip|buckle|unbuckle|fasten
        CANT .. feed|dress|wipe .. myself
        CANT .. hold .. handlebar|handlebars|steering|rope|rail|grip|position|weight
        PART .. out of .. gas|juice|power|strength
        PART .. zero|no|barely|hardly .. strength|power|juice|oomph
        PART .. shaking|trembling|shaky .. CANT|hold|lift
        PART .. too weak
        PART .. half|fraction .. strength|strong|power
        wrist .. drops|dropped|drooping|hangs
        PART .. flopping|flops|flopped|dangling|dangles|dangled
        BE weak in|on .. PART
        CANT .. wave|salute|shrug|flex|clap
        fingers|thumb|wrist|hand .. wont|cant|doesnt|couldnt|dont .. straighten|bend|pinch|close|spread|grip|hold|push|press|type|lift
        lost .. use|control .. of .. PART
        grip|strength|power .. quit|quits|failed|fails|died|dies|left|abandoned|vanished
        grip|strength|power .. just .. QUITS
        holding|lifting|gripping|raising|carrying|opening|squeezing .. impossible
        impossible to MOTOR .. PART|THING|it
        """,
    ),
    (
        Group.WEAK_DROP,
        None,
        "ask",
        """
        muscle|muscles|cuff|deltoid|PART .. isnt|wont|not|doesnt|arent|dont .. turning|turn|firing|fire|engaging|engage|kicking|kick|switching|activating .. on|in|at|even|anymore
        PART .. heavy|heavier|tired ... normal|usual|other|weirdly|strangely
        PART .. weighs|weighed|weigh .. ton|tons|lbs|pounds|lead
        PART .. wont|doesnt|isnt .. cooperate|behave|obey|right
        ball|racket|racquet|bat|stick|javelin|disc .. slips|slipping|slipped|flew|fell|falling|dropped .. out|from of|my .. HANDS
        lost|losing .. velo|zip|power|pop|speed .. sudden|suddenly|overnight
        cant|couldnt|wont even MOTOR
        weaker
        PART .. fatigues|fatigued|tires .. quick|quickly|fast|right|away
        PART .. suddenly|randomly
        PART .. dont|doesnt|didnt|isnt work|working|worked|right|listen|normal
        PART .. stopped|stops|quits
        PART .. scared|scares|freaked|freaking|worries .. me
        something .. is|isnt|feels|felt|went .. wrong|right
        never felt .. before
        lift|raise|get .. it|PART .. halfway|partway
        PART .. BE .. useless|done|fried|dying
        not|isnt|wasnt|arent .. as strong
        PART & unsteady|limp|lame|clumsy|sluggish|uncoordinated
        PART & wont|cant|quit|quits|stopped|gave|died|failing|fails
        weaker|weakest .. than
        """,
    ),
    (
        Group.DISLOCATION_SLIP,
        "S05",
        "stop",
        """
        SOCKETED .. hopped|hops|skipped|skips|lurched|glided|jumped|lunged .. out|forward|front|over
        ball .. hopped|hops|skipped|jumped|rode|slid .. rim|edge|track|groove|socket|lip
        half|halfway out .. half|back in
        it|shoulder|joint out|slid .. and|then .. in|back
        came|come|slid|popped|slipped .. out .. went|slid|popped|slipped|came .. back|in
        SOCKETED .. came|come|comes|coming .. loose|undone|away
        SOCKETED .. not|isnt|wasnt .. all the way in
        had|have|needed .. to .. yank|pull|pop|push|shove|slide|put .. it|PART .. back
        reduced|relocated|reset .. it|my|PART|shoulder
        shoulder|joint|it .. rides|rode|riding .. up|forward|out|front
        it|shoulder|joint|ball jumped|jumps|skipped|hopped|slipped|left|rode .. track|groove|rim|socket
        """,
    ),
    (
        Group.DISLOCATION_SLIP,
        None,
        "ask",
        """
        wants|wanted|wanting|trying|tries|threatening|ready to .. come|pop|slide|slip|go|fall|roll out
        shoulder|joint|socket|it .. gives|giving|gave .. way|little
        something .. gave|happened|went|let|moved|jumped .. in|PART|when
        PART .. gave
        PART .. rattles|rattling|rattly|shifty|jiggles|jiggly|slides|slidey|clunky|wonky
        not|isnt|doesnt|aint .. sitting|sit|seated|feel|seem .. right|secure|stable
        something .. moves|moving|shifts|shifting .. in|around|inside
        PART & loosey|floppy|shifty|rattly|clunking|grinding|catching
        hanging .. by .. thread
        """,
    ),
    (
        Group.DEFORMITY,
        "E03",
        "stop",
        """
        gap|notch|ledge|shelf|dimple|bulge|pit|crater|ridge|spike|peak|dent|hollow|divot .. on|in|over|above|below|under|near|at|by .. PART|BONE
        PART|BONE .. bulging|tented|tenting|dented|dimpled|caved|peaked|sunken|sunk
        dent|hollow|gap|divot where .. muscle|shoulder|delt|deltoid
        muscle .. melted|wasted|shrunk|shriveled|caved|slid|dropped|moved|bunched
        PART .. out of line|alignment|shape
        BONE .. lump|bump|popped|raised
        PART .. doesnt|dont|not .. line|match|look .. up|right|same
        tent|tented|tenting|poking|pushing .. under|through|against .. skin
        tent|tenting .. PART|BONE
        """,
    ),
    (
        Group.POP_WITH_LOSS,
        "S06",
        "stop",
        """
        something .. popped|burst|shredded|unzipped|detached|came|let|tore|ripped loose|apart|off
        felt|heard .. like .. zipper|cable|cord|rope|band|string|elastic .. snap|snapped|snapping|popping|ripping|tearing|broke|breaking
        POP on|during|at|in .. throw|pitch|serve|spike|release|stroke|shot|swing .... nothing|CANT|pain|hurts|hurt|sharp|couldnt
        shredded|blew|blown|tore|popped .. labrum|cuff|lat|pec|biceps|bicep|tendon
        felt|heard .. bicep|biceps|lat|pec|muscle|tendon|labrum .. go|pop|snap|tear|rip|give
        felt|heard .. shoulder|arm .. rip|tear|snap|shred
        POP .... kept|keeps .. getting worse
        """,
    ),
    (
        Group.POP_WITH_LOSS,
        "S06",
        "ask",
        """
        small|little|tiny|slight|quick|weird|odd|strange|funny|dull|mini|light pop|snap|click|crack|clunk|thunk
        pop|snap|crack|clunk|thunk .. kept going|throwing
        pop|snap|crack|clunk|thunk on|at|around .. throw|rep|pitch|serve .. NUM
        """,
    ),
    (
        Group.ELBOW_POP,
        "S07",
        "stop",
        """
        popped|pop|snap|snapped|tear|tore|rip|crack|ripped .. by|near|at|around|in|on .. funny bone
        ELBOW .. shifted|slipped|buckled|unzipped|exploded|opened
        felt|heard .. POP .. ELBOW
        """,
    ),
    (
        Group.ELBOW_POP,
        "S07",
        "ask",
        """
        ELBOW POP
        ELBOW .. POP
        funny bone .. sore|PAIN|tender
        """,
    ),
    (
        Group.SWELLING_COLOUR_COLD,
        "S01",
        "stop",
        """
        PART .. doubled|tripled|double .. size
        size of .. egg|golf|softball|baseball|grapefruit|watermelon|orange|balloon|apple|plum|fist .. PART
        PART .. size of .. egg|golf|softball|baseball|grapefruit|watermelon|orange|balloon|leg|thigh
        PART .. blow|blew|blowing|balloon|ballooning up
        PART .. splotchy|splotches|blotches|mottling|marbling|patchy
        splotches|blotches|mottling|marbling .. on|over|down|all .. PART
        PART .. losing|loses .. color|colour
        PART .. look|looks|looked dead|bloodless|sickly|waxy
        blood .. not|isnt .. getting|flowing|reaching .. to|PART
        cuts|cutting|cut .. off .. blood|circulation
        """,
    ),
    (
        Group.LOST_MOTION,
        "B06",
        "stop",
        """
        CANT .. rotate|turn|twist .. it|PART .. at all
        LOST .. half|most|ton|all|third|chunk .. range|motion|mobility|movement|rotation
        PART .. stops|stopped|stuck|jams|jammed|hits .. halfway|wall|dead|height|level|degrees|block
        PART .. locked|stuck .. place|one|down|here|position
        locked|seized|froze up .. PART|rotate|move|turn|wont|cant
        PART .. stuck|locked|seized .. CANT
        PART .. locked up .. wont|cant|doesnt|couldnt
        CANT .. get .. PART behind .. back
        """,
    ),
    (
        Group.TRAUMA_FALL,
        None,
        "stop",
        """
        horse|pony|bull|bronco|mare|cow|goat threw|bucked|tossed|kicked|threw .. me
        threw|bucked|tossed|flung me .. off|down|over|into|against|to
        OPPONENT .. threw|tossed|flung|slammed|dumped|flipped|spun me
        OPPONENT|guy|they|he|she .. took|swept|cut|kicked|chopped|knocked|clipped .. my legs|feet|knees .. out
        took|swept|cut|kicked|chopped|knocked .. legs|feet .. out from under|me
        legs|feet .. taken|swept|cut|kicked|chopped|knocked|went|flew .. out
        came|come|coming|went|go|crashed|slammed down .. on|onto .. PART|point|side|head
        came|went|landed down hard|wrong|awkward|awkwardly|badly|funny|weird
        point|tip of .. shoulder|elbow .. hit|ground|first|landed
        landed|hit|went|down .. shoulder|elbow|arm|head|hand first
        lost .. footing|balance .. and|caught|landed|hit|down
        caught|braced|broke .. fall|myself .. with|on .. PART
        stuck .. out .. arm|hand .. fall|fell|landed|catch
        took|wore|caught|ate one .. off|to|in|on .. PART|ribs|back
        got|was|been|get sandwiched|squashed|bowled|flung|flattened|steamrolled|speared|chopped|suplexed|upended|undercut|creamed|rolled|hipped|boarded
        cross checked|checking|check .. me|into|PART|from
        body|hip|blind checked|slammed|tackled|sided
        hit by pitch
        hbp
        stepped .. in|into|off .. hole|curb|ditch .. down|fell|arm|shoulder|landed
        fell|slipped|tripped|tumbled carrying|getting|coming|going|running|walking|chasing|jumping|climbing
        me|i|bike and|vs|versus .. car|truck|bus|van|tree|wall
        thrown|flung|launched|ejected .. from|off|out|over|into
        PART .. bent|pulled|twisted|wrenched|yanked .. back|backwards|behind .. by|tackle|when|in
        concussed|concussion
        got|was|been|get hit .. by .. OPPONENT|MISSILE|VEHICLE
        got|was|been|get BLOW .. in|on|to|off .. PART
        crashed|crash into the|a|my boards|glass|net|wall
        skied|biked|rode|skated|sledded|surfed|cycled|sailed|snowboarded|drove .. into|off .. VEHICLE|GROUND|pole|person
        """,
    ),
    (
        Group.TRAUMA_FALL,
        None,
        "ask",
        """
        in|to|at|from er|hospital|ambulance
        urgent care
        stepped|kneed|sat|rolled|fell on my PART
        hurt|tweaked|wrenched|jammed|jarred .. PART
        got .. PART .. caught|stuck|pulled|bent|twisted|jammed
        got|was|been rocked|lit|popped|blasted|buried|wrecked|drilled|smoked|nailed
        MISSILE|ball|boot|foot|fist|helmet to|off|in|into .. PART
        """,
    ),
    (
        Group.ABDOMEN_BLOW,
        "E10",
        "stop",
        """
        peed|peeing|pee|pissed|pissing|urine|urinating .. blood|bloody|red|pink
        blood .. in .. pee|urine|stool
        BLOW|knee|kneed|helmet|elbow|elbowed|kick|kicked|punch|hit|ball .. RIBS .... NAUSEA|VOMIT|puking|puke|sick|swollen|hard|rigid|tender|faint|dizzy|straight
        RIBS .. hard|rigid|swollen|bloated|distended .... hit|BLOW|since|after|shoulder
        """,
    ),
    (
        Group.CHEST_BREATH,
        "E02",
        "stop",
        """
        out of breath just|only|from tying|walking|talking|standing|sitting|climbing
        BREATH .. rapid|ragged|labored|laboured|impossible|painful
        cant|couldnt|hard|trouble .. get .. air|lungs|enough .. in|full
        CANT .. finish|get|say .. sentence .. breath|air|breathing|winded
        hungry|starved|fighting|struggling for air|breath
        """,
    ),
    (
        Group.CHEST_BREATH,
        "E01",
        "stop",
        """
        CHEST .. crushing|pressing|squeezing|squeezes|aching|burning|stabbing|clenching
        pressure|squeezing|squeeze|heaviness|crushing|tightness|fist .. in|on|across|around|middle .. CHEST
        CHEST ... vice|vise
        CHEST & jaw|sweaty|sweating|clammy|NAUSEA
        """,
    ),
    (
        Group.FAINT_HEART,
        "E08",
        "stop",
        """
        HEART BE FLUTTER out|for|from|while|even|doing|sitting|lying|just
        HEART .. FLUTTER .... nothing|couch|tv|bed|sitting|lying|rest|resting|nowhere|watching
        HEART .. all over place
        HEART .. flip|flops|flopping|somersault|somersaults
        everything .. black|dark|gray|grey|spinning|fuzzy
        vision .. went|goes|going|started .. black|dark|grey|gray|white|blurry
        went|going|about to .. faint|faint
        legs .. gave .. and .. floor|ground|woke
        woke .. up|on .. floor|ground|grass|turf
        """,
    ),
    (
        Group.STROKE_SIGNS,
        "E07",
        "stop",
        """
        side .. of .. mouth|face|smile|lip .. DROOP|sagging|drooping|numb|hanging|down|slack
        words|speech|talking .. slur|slurring|slurred|mush|mushy|gibberish|garbled|jumbled
        sudden|suddenly .. blind|blindness|confused|confusion|double
        lost .. vision|sight .. eye|left|right|side
        headache .. out of nowhere|sudden|suddenly|thunderclap|bolt
        sudden|suddenly|explosive .. headache
        """,
    ),
    (
        Group.CORD_SIGNS,
        "E06",
        "stop",
        """
        LEG .. WEAK|heavy|WOBBLY|rubbery .... tripping|trip|stumbling|stumble|clumsy|balance|walk|falling
        LEG .. WEAK|numb & hands|arms|both|neck|bladder
        both LEG .. numb|WEAKNESS|tingle|tingling
        KEEP tripping|stumbling|falling over
        both arms|hands .. and .. LEG
        all four limbs|arms|legs
        LEG GIVES|gave .. out|way .... neck|head|both|tackle|hit
        CANT .. feel .. when .. pee|poop|wipe|go
        walk|walking|gait .. off|weird|drunk|wobbly|unsteady|stiff .... hands|arms|legs|neck
        LOST .. control .. bladder|bowels|pee
        """,
    ),
    (
        Group.FEVER_INFECTION,
        "E09",
        "stop",
        """
        shaking|shivering .. uncontrollably|violently
        CHILL .. after|since|following .. shot|injection|surgery|cortisone
        """,
    ),
    (
        Group.FEVER_INFECTION,
        "S02",
        "stop",
        """
        PART|joint .. RED|HOT .. HOT|RED|swollen
        RED HOT .. PART|joint|touch
        PART .. RED HOT
        """,
    ),
    (
        Group.WOUND,
        "S03",
        "stop",
        """
        WOUND .. gaping|torn|bust|busted|split|ripped|came|come|undone|popped|reopened|apart|LEAK
        cut|hole|site .. from .. surgery .... LEAK|smell|smells|gunk|goo|open
        WOUND .. HOT|RED|SWELL|green|foul|nasty
        """,
    ),
    (
        Group.LEG_CLOT,
        "S04",
        "stop",
        """
        LEG|calf|shin .. HOT|RED|SWELL|tender|hard|throbbing .... flight|bus|ride|drive|trip|plane|travel|surgery|cast|car|train
        one CALF|leg .. bigger|fatter|twice|larger|swollen|thicker
        CALF .. bigger|twice|larger|double|fatter|throbbing|hard|charley
        back|behind of|my .. CALF|knee|leg .. HOT|RED|SWELL|throbbing
        """,
    ),
    (
        Group.NIGHT_PAIN_UNRELENTING,
        "B01",
        "stop",
        """
        PAIN .. wont|didnt|doesnt|would|not .. let .. me .. sleep|rest
        PAIN|PART|it .. wont|didnt|doesnt|wouldnt let .. sleep
        laying|lying|lie|lay down .. agony|torture|hell|murder|worse|brutal
        awake|up .. till|til|until|since .. NUM .... PAIN|PART|hurting|aching
        PAIN|ache|it .... doesnt|never|wont|wouldnt|hasnt|not .. STOP .... still|lying|laying|rest|night|dark
        PAIN .. every .. second|minute|hour
        rest|resting does|did nothing
        its|thats|shoulder|arm|elbow|pain|PAIN keeping|keeps|kept .. me .. up|awake
        its|thats|just kept|keeps|keeping me .. up|awake
        keeping|keeps|kept .. me .. up|awake .. every|all|most night|nights
        PAIN|PART .. had|has|got me .. up|awake|pacing|crying|sitting
        NUM night|nights .. awake|up .. PAIN|it
        """,
    ),
    (
        Group.WEIGHT_NIGHT_SWEATS,
        "B07",
        "stop",
        """
        pants|shorts|clothes|jersey|shirts|jeans|uniform|belt .. falling|hanging|fall|hang|slipping|baggy|swimming .. off|on .. me|trying|dieting
        no|lost|zero|LOST appetite .... weight|pounds|lbs|falling|loose|thinner|weeks|dieting
        dropping|dropped|lost|losing|shedding|down .. NUM|weight|pounds|lbs|kg|kilos .... trying|diet|dieting|reason|why|effort
        lost|dropped|down|lose .. pounds|lbs|kg|kilos|weight .. not|without|wasnt|isnt|arent trying|dieting
        losing .. weight .. and|without|but|know|dont
        soaked|drenched|soaking|wet .. sheets|bed|pillow|pjs|shirt .. night|nights|again|sweat|week
        SWEATS .... nights|night .. row|week|again
        NUM .. lbs|pounds|kg|kilos|lb gone|lost|lighter .... eating|dieting|trying|reason|loose
        jeans|pants|clothes .. loose .... lbs|pounds|kg|weight|eating
        """,
    ),
    (
        Group.WEIGHT_NIGHT_SWEATS,
        "B07",
        "ask",
        """
        no|lost|zero appetite
        not|dont|barely eating|eat|hungry .. weeks|days|lately
        """,
    ),
    (
        Group.MANY_JOINTS,
        "B08",
        "stop",
        """
        every|all|each|multiple|most|several joint|joints .. PAIN|SWELL|stiff|ache|RED|HOT
        joints .. everywhere|over|PAIN|ache|aching
        stiff .. for .. hour|hours|NUM .... morning|mornings|wake|get|up
        knees|hands|wrists|ankles|fingers|toes|elbows .. and .. knees|hands|wrists|ankles|fingers|toes|elbows .... SWELL|stiff|PAIN|puffed
        """,
    ),
    (
        Group.PAINKILLERS,
        "B09",
        "stop",
        """
        PILL .. NUM|two|three|four .. a|times .. day
        PILL .. NUM|two|twice|three|once .. day .... so|to|throw|pitch|play|keep
        cortisone|toradol shot|shots|injection .. so|to|before .... play|pitch|throw|game|compete
        """,
    ),
    (
        Group.OVERTIRED,
        "B10",
        "stop",
        """
        exhausted|wiped|drained|fried|burned|burnt|tired .... weeks|month|months .... dread|worse|slower|dropping|down|sleep
        TIRED|SPENT .. no matter .. how|what
        sleep|sleeping .. hours .. and|but .. still .. SPENT|TIRED|wiped .... week|weeks|worse|month
        dread|dreading|hate .. practice|training|games .... exhausted|tired|weeks|burned|burnt
        """,
    ),
    (
        Group.SELF_HARM,
        "E11",
        "stop",
        """
        thinking|think|thought|thoughts|want|wanted|wanna|urge|urges|going|plan|planning|about|like .. of|about|to harm|harming|kill|killing|cut|cutting myself
        dont|cant|no|not|didnt see .. point|reason|purpose .. living|being|going|life|anymore|here
        whats .. point of|in living|life|being
        no reason to live|living|be here
        end|ending it|things|everything all
        thinking|thought|thoughts .. of|about .. ending|dying|death|disappearing
        give|giving|gave|given up on life|living
        wish|wished|hope .. wouldnt|didnt|dont|never wake|exist|born|woke
        wish .. could .. disappear|die|vanish
        rather|want .. die|disappear|dead
        CANT .. go on .. anymore|living|like
        life .. not|isnt|aint worth
        kms
        unalive
        world|everyone|everybody|family|team|they .. better off .. without|if
        """,
    ),
)
