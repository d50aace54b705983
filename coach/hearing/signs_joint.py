"""Warning signs of the joint: slipping, shape, a pop, the elbow, a fall or a blow.

Law: data only; how a pattern is written is told in `patterns`. `stop` patterns are clear signs,
`ask` patterns lead to one closed question. May be added to, never taken from. Wording from memory
and common usage, to be signed by a clinician.
"""

from __future__ import annotations

from typing import Final

from coach.model.flags import Group

JOINT_SIGNS: Final = (
    (
        Group.DISLOCATION_SLIP,
        "S05",
        "stop",
        """
        DISLOCATE
        COME out .. back|in|again
        COME out .. of|from SEAT
        out of .. socket|joint|sockets
        COME .. out of|off socket|place|joint|track
        SOCKETED .. COME out
        SOCKETED .. COME .. out|forward|front|backward|apart
        SOCKETED .. leave|leaving|leaves|left .. SEAT
        had .. reset|relocated|reduced
        SOCKETED .. out of|off .. SEAT
        SOCKETED .. out .. front|back|bottom|then|before|for|again|and
        SOCKETED .. off|outta|from .. SEAT
        it|thing|everything|something slid|slipped|popped|jumped|rolled|fell out
        it|thing|something slips|pops|slides|jumps|falls out
        it|thing|something keeps|kept|keep slipping|popping|sliding|coming|shifting .. out
        it|thing|something keeps|kept|keep slipping|shifting|sliding
        felt .. it|SOCKETED COME out
        felt .. SOCKETED .. SLIP|move|moving|jump|roll|come|shift
        felt .. slip|slide|shift|sublux|jump|roll
        something|it SLIP .. in|inside .. there|SOCKETED
        something SLIP|moved|shifted
        SOCKETED .. SLIP
        SLIP .. in|of|out .. SEAT
        SLIP .. shoulder|joint|socket
        PUT .. it|SOCKETED back .. in|place|out
        had|have|needed|got to .. PUT .. back
        PUT back in|into|place
        PUT .. SOCKETED .. back .. in|place|socket
        someone|trainer|physio|doc|doctor|ref|coach|teammate|dad|mom|he|she PUT .. it .. back
        went|goes|go|popped|pops|slid|slipped|clunked|snapped|rolled|dropped back in|into|place
        SOCKETED .. went|goes|gone|go|going out
        went|goes|going out on me
        ^ popped|slipped|slid|came|jumped|went out
        out of .. hole|seat|place
        over the edge|rim|lip
        back in|into|to .. SEAT
        SOCKETED .. separated|separating|separates
        shoulder|joint is|was|still out
        it|shoulder|arm|thing|one back in
        SOCKETED .. UNDONE
        popped|threw|pulled|knocked|slipped|yanked|put .. SOCKETED .. out
        COME .. out .. on me
        keeps going out
        shove|shoved|push|pushed|pop|popped|slam|slammed|jam|force|forced it in
        ball .. come|comes|came|coming|roll|rolled|ride .. out|over .. front|back|edge|socket|bottom
        shoulder|joint .. out of whack
        it|thing|everything|something .. came|come|BE .. unglued|unhinged|undone|unseated|dislodged
        shoulder|joint .. slipped|slips|shifted|shifts|slid|slides|slipping|sliding|shifting
        shoulder|joint .. hung|hangs|stuck .. out|up|then
        it slipped|shifted|slips .. twice|again|times|every|throw|back
        it locks|catches|sticks|clunks .. when|and|on|if|every|overhead
        shift|slip|slide .. and|then .. clunk|back
        came|come|comes|coming out .. SOCKETED
        come|came out .. and .. did|back
        it went|goes|slid|slides|popped|pops out .. back|front|when|and|again|bottom
        shoulder|joint .. GIVES way|out
        it GIVES way
        SOCKETED .. unhinged|dislodged|unseated|undone
        it|thing|shoulder .. BE unhinged|dislodged
        ball .. out of|off .. socket|joint
        SOCKETED .. moving|moves|floating|rolling|sliding|gliding around|about|in|out
        partially|partway|halfway|half|partly|almost .. out
        COME partway|halfway|partially
        out .. partway|halfway
        in and out
        came .. apart
        arm .. left .. body|socket|shoulder
        arm|shoulder .. detached|disconnected
        SOCKETED .. jumps|jumped|skips
        shift|shifted .. SEAT
        off .. track
        not|isnt|wont|doesnt|didnt|never .. sit|sitting|seated|centered|seat|stay|staying|stays in .. SEAT|right
        not|isnt|wont|doesnt|didnt .. stay|staying|sit in
        SOCKETED .. popping|pops out
        SOCKETED .. UNSTABLE
        UNSTABLE SOCKETED
        joint .. separated
        separated .. SOCKETED
        shoulder separation
        trainer|doc|doctor|medic|medics|physio|paramedic|er reduced|relocated|reset .. it|PART
        """,
    ),
    (
        Group.DISLOCATION_SLIP,
        "B04",
        "stop",
        """
        PART .. locks|locked|locking .. up
        SOCKETED .. CATCH .. PAIN
        PAIN .. CATCH .. SOCKETED
        it catches|catching .. grabs|PAIN
        clunks|clunking .. PAIN
        PART .. clunks|clunking|clunky
        SOCKETED .. CATCH
        CATCH .. in|inside SOCKETED
        dead arm .. AGAIN
        AGAIN .. dead arm
        """,
    ),
    (
        Group.DISLOCATION_SLIP,
        None,
        "ask",
        """
        shoulder|joint|socket .. LOOSE
        LOOSE shoulder|joint|socket
        it|feels|feel|too LOOSE
        LOOSE .. in|lately|socket
        UNSTABLE
        shoulder|joint .. BE .. out
        SOCKETED .. SLIP
        hangs|hanging by thread
        going to .. COME out
        gonna|about|ready|wants|wanting|trying|close .. COME|fall|slip out
        like .. COME out
        clunk|clunks|clunking|clunked
        apprehension|apprehensive
        almost|nearly .. COME out
        it COME out
        catching|locking
        locks|locked|locking up
        SLIP out
        SOCKETED .. BE .. not|isnt|off|wrong .. right|place
        SOCKETED .. tracking|grinding|grinds|grind|grating
        SOCKETED .. not|isnt|wasnt .. right
        shoulder|joint & out|forward|apart|sliding|opened
        joint .. open|opened|opens|opening
        clicks|clicking|clicked .. SOCKETED
        SOCKETED .. clicks|clicking|clicked|cracks|cracking|pops|popping
        it|shoulder|something slipped|slips|shifted|shifts|moved|slid
        ^ SLIP $
        ^ it SLIP
        felt|feeling|feel|feels|might|could|would .. SLIP
        dont|doesnt trust .. PART
        """,
    ),
    (
        Group.DEFORMITY,
        "E03",
        "stop",
        """
        LOOK .. out of place
        PART .. LOOK .. ODD
        PART .. LOOK .. SHAPE
        PART .. BE .. SHAPE
        PART .. HAVE .. SHAPE
        HAVE .. SHAPE .. PART
        one collarbone|shoulder|side .. higher|lower|flatter|bigger
        PART .. higher|lower now|than|compared
        SHAPE .. sticking|sticks|poking|pokes .. up|out
        SHAPE .. on|over|at|in|near|above|by|off .. PART
        PART .. shaped .. ODD
        shaped .. ODD
        one|that|left|right side .. droops|drooping|sags|lower|drops|hangs
        PART .. SHAPE
        new|hard|big|weird .. bump|lump|knob|bulge
        bump|lump|knob|bulge .. new
        deformed|misshapen|deformity
        CHANGED shape|shapes
        shape .. CHANGED
        not .. same shape
        sits|hangs|hanging|sitting|sit|rides lower|wrong|funny|forward|weird
        PART .. lower|higher than .. other
        PART .. CANT|doesnt|dont .. match
        PART .. poking|poke|pokes|sticking|sticks|stick .. out|up
        something .. sticking|poking|sticks|pokes|protruding out|up|through
        PART .. LOOK .. dropped|fallen|slumped|sunk|lower|low|droopy|caved
        BONE .. sticking|poking|sticks|pokes|popping|through|pushing
        BONE .. BE .. out|up
        PART|BONE .. standing|stands up
        FRACTURE .. PART|BONE
        PART .. FRACTURE
        BONE FRACTURE
        shoulders .. uneven|different|level
        popeye
        step .. collarbone
        collarbone .. step|tents|tenting
        end|tip .. collarbone .. up|sticks
        PART .. bent .. wrong|way|backwards
        one|that side LOOK|hangs|sits .. lower|different|flat|ODD
        one side .. like .. step
        PART .. square|flat|flattened
        round|rounded part .. flat|gone
        PART .. not|doesnt|isnt .. same|right .. shape|look
        PART .. crooked|bent|twisted
        hollow|dent|dip|divot|gap|hole .. where|muscle|under|PART
        big|huge|hard|new|giant|visible .. knot|lump|bump|bulge|ridge|knob|egg
        knot|egg .. on PART
        shoulder blade .. out|winging|wings|sticks
        winging
        BONE .. PART .. wrong|out|up|broken
        PART .. pops|popped|popping|stuck|stick up
        muscle .. missing|gone|rolled|bunched
        PART .. hanging|hangs|sits|droops .. lower|low|down|crooked|funny|weird
        PART HAVE .. extra .. bone|bump
        PART .. stepped|step|ledge|shelf
        broke .. arm|wrist|hand|finger|collarbone|shoulder|elbow
        PART|BONE HAVE .. new .. corner|edge|point|angle|bump|lump|ledge|shape
        shelf|ledge|step|corner .. where .. PART
        BONE|collarbone|clavicle .. about|going|trying to poke|stick|come|pop .. out|through
        """,
    ),
    (
        Group.DEFORMITY,
        "E03",
        "ask",
        """
        bump|lump|dent|dip|divot|knot|bulge
        LOOK .. crooked|lopsided|uneven
        PART .. LOOK .. CHANGED
        fracture|broken|broke .. something
        hollow
        shoulder|collarbone & hangs|hang|hanging|sticks|higher|lower|uneven|raised
        """,
    ),
    (
        Group.POP_WITH_LOSS,
        "S06",
        "stop",
        """
        POP .... CANT .. throw|lift|raise|move|hold|grip|squeeze|use|reach|pitch|continue
        POP .... CANT
        POP .... WEAKNESS
        POP .... weak
        POP .... no|LOST|zero .. POWER|arm
        POP .... POWER .. gone|left
        POP .... gave out|way
        POP .... dead|limp|useless|died
        ping|twang .. in|PART
        felt|heard .. ping|twang
        blew|blown out .. PART
        something sprung|pinged|gave|unzipped
        POP .... dropped
        CANT .. throw|lift|raise|move .. since .. POP
        weak|WEAKNESS|limp .. after|since|when|with .. POP
        felt|heard|feel|had .. POP .... sharp|pain|hurts|hurt|killing|burning|agony|sore
        felt|heard|had .. BREAK
        something BREAK
        sounded|sounds|sound|noise|like|feeling|felt .. BREAKS_LIKE .. breaking|snapping|ripping|tearing|broke|snap|popping|going|off|snapped
        sounded|sound|sounds|noise .. BREAKS_LIKE
        snapping|popping|ripping|tearing|cracking|crunching sound|noise|feeling|sensation
        SOCKETED .. went pop|snap|crack|bang|crunch
        POP .... nothing .. worked|works|left
        POP .... hurts|hurt|killing|agony|kills .. bad|hell|so|now|like|a|crazy
        POP .... fell|falls|dropped|hung .. side
        POP .... couldnt|cant|wont|unable|useless|nothing
        POP .... pulled|stopped|came|left|taken .. out|game|mound
        muscle .. tore|torn|ripped|popped|snapped|pulled
        tear|tore|torn|ripped .. in|my PART|muscle|tendon|labrum|cuff|lat|pec
        something .. ripped|tore|snapped|snap|rip|tear|rupture
        PART .. BREAK
        felt .. something .. POP
        something .. POP
        tore|ripped|snapped|ruptured .. it|PART|something|muscle|tendon|labrum|cuff
        gunshot .. PART|sound
        like .. gunshot
        something GIVES
        something let go
        heard|felt it .. go|give|went|gave|rip|tear|let|snap
        felt|feel .. tearing|ripping|tear|rip
        PART .. rolled|balled|bunched .. up
        tore|ripped|snapped|popped something
        POP .... immediate|instant|sharp .. pain
        bicep|biceps .. bulge|ball|balled|lump|popeye|rolled
        muscle .. balled|rolled|bunched up
        loud|big|huge|audible|massive|painful|nasty|sickening|sharp POP
        POP .. loud|loudly|audibly
        POP .. sharp|stabbing|instant|immediate
        POP .... swollen|swelled|bruised|bruise
        shoulder POP .. throw|pitch|serve|spike|release|swing .. hurts|hurt|PAIN
        POP .... sick|nauseous|queasy|puke|tears|crying
        felt|heard .. fibers|fibres|strands .. go|tear|rip|pop|snap
        """,
    ),
    (
        Group.POP_WITH_LOSS,
        "S10",
        "stop",
        """
        crack|cracked|snap|snapped .. in|my .. arm .. threw|throwing|throw|pitch
        """,
    ),
    (
        Group.POP_WITH_LOSS,
        "S06",
        "ask",
        """
        felt|heard|feel|hear|feeling|hearing .. POP
        it|something|shoulder|PART POP
        PART .. POP
        ^ POP $
        ^ POP ELSEWHERE
        ^ POP .. once|twice|again|but|when|then|and|on|during
        sharp|sudden|loud|quick POP
        POP .. in|from PART
        POP .. PART
        it POP
        one|a|small|little|tiny|few|couple|some|slight|another pop|snap|crack|click .. in|but|no|little|when|once|then|sore
        something .. off .. bone
        came|tore|ripped|pulled off .. bone
        popping|popped|snapping|cracking sound|noise|noises|feeling|sensation
        shoulder|it .. was popping|snapping
        """,
    ),
    (
        Group.ELBOW_POP,
        "S07",
        "stop",
        """
        ELBOW .. popped|pop|pops|snap|snapped|tore|ripped|cracked|crack|rip|tear|popping
        popped|pop|snap|snapped|tear|tore|rip|crack|ripped .. ELBOW
        twang|ping .. ELBOW
        felt|heard .. ELBOW .. go|give|let
        inside|inner|medial .. ELBOW .. PAIN|killing|sharp|BREAK|popped|pop
        PAIN|sharp .. inside|inner|medial .. ELBOW
        ELBOW .. PAIN .. inside|inner|medial
        ELBOW .. sharp|stabbing .. pain|throw|pitch
        come|came|pulled .. out of game .. ELBOW
        ucl
        ELBOW .. GIVES .. out|way|gave
        ELBOW .. went|let .. pop|snap|crack|bang|go
        something .. BREAK|pop|popped|snapped|went|tore .... ELBOW
        ELBOW .. feels|felt .. loose|unstable|torn|went|blown
        ELBOW .. blew|blown|blew .. out
        blew out .. ELBOW
        tommy john
        inside|inner|medial .. of .. ELBOW .. PAIN|sharp|hurts
        ELBOW .. barking|screaming|shot
        ELBOW .. made .. POP
        """,
    ),
    (
        Group.ELBOW_POP,
        "S07",
        "ask",
        """
        ELBOW .. click|clicked|clicking|clicks|clunk|clunked|crunch
        click|clicking|clicked|clunk .. ELBOW
        inside|inner .. ELBOW
        ELBOW .. go|goes|went|gave|give|let|twinge|twinged|zing|twang|catch|catches
        ELBOW .. PAIN .. throw|throwing|pitch|pitching|release|curve|curveball
        """,
    ),
    (
        Group.ELBOW_POP,
        "B03",
        "ask",
        """
        upper arm .. PAIN .. throw|throws|throwing|pitch|pitching|time|serve
        lost|losing .. velo|velocity .. PAIN
        PAIN .. lost|losing .. velo|velocity
        """,
    ),
    (
        Group.TRAUMA_FALL,
        None,
        "stop",
        """
        since|after the|my|that|a|this fall
        fell and|then|again
        and|then|so i fell
        FALL .. on|onto|against|over|into .. PART
        FALL .. ONTO .. GROUND|VEHICLE|side|back
        FALL .. ONTO .. it
        FALL .. ONTO|out VEHICLE
        FALL .. skiing|skating|running|biking|cycling|climbing|hiking|snowboarding|surfing|wrestling
        FALL .. hard|over|badly|awkwardly
        took|had|taken|bad|nasty|hard|big|another .. fall|tumble|spill|wipeout
        slipped|slip|slid|slipping .. on|in .. GROUND|VEHICLE|shower|stairs|deck|pool|ice
        slipped .. fell|landed
        wipeout
        faceplant|faceplanted
        CRASH .. VEHICLE
        CRASH .. ONTO|with .. OPPONENT|VEHICLE|GROUND|PART|post|wall
        VEHICLE .. CRASH
        wrecked|crashed|totaled|flipped|rolled .. VEHICLE|it
        car|bike|road|traffic .. accident|crash|wreck|collision
        collided|collision
        went flying
        pushed|shoved|kicked|dragged|knocked down|off|over .. stairs|steps|VEHICLE|ground|floor
        bit it
        fender bender
        stacked|binned|bailed|biffed it
        bailed .. on|off VEHICLE
        crashed|slammed|smashed|collided|plowed|barreled into|with
        BLOW .. off|from .. VEHICLE|horse|bike
        slid .. into .. wall|fence|post|boards|dugout|stands
        BLOW .. by .. OPPONENT|VEHICLE|MISSILE|wave
        knocked .. ground|feet|floor|ass|butt
        took .. MISSILE .. PART
        got|been thrown .. off|down|to|into
        hit .. by .. MISSILE
        got MISSILE .. off|to|in|on .. PART
        BLOW|crashed|ran|fell|bumped|slammed|collided .. into|on|onto me
        head over heels
        car|truck|bus hit .. me
        PART|hand .. got|was caught|pinned|stepped|trapped|stuck .. in|under|on
        stepped on .. PART
        jammed .. sliding|diving|tag|into
        took|had .. tumble|spill
        belly flop|flopped
        in|had .. accident|wreck|crash|collision|pileup
        hop .. off|hit|into|caught .. PART|me
        flying off|over|into
        dropped .. on|onto .. PART
        something|someone|somebody .. fell|landed|dropped .. on .. me|PART
        went|go|going down .. hard|on|onto
        hit BY .. car|truck|pitch|ball|bat|OPPONENT|fastball|line|liner|puck|bus|bike|someone|door
        took .. hit|blow|knock|bat|ball|shot|knee|elbow|liner|pitch|fastball .. to|off|on .. PART
        took .. hard|big .. hit|knock|blow
        ball|pitch|puck|bat|liner|fastball|comebacker|stick|knee|boot .. hit|smashed|drilled|nailed|caught|got|struck|smacked|off .. me|PART
        BLOW .. PART .. on|into|against|with|off
        BLOW .. into .. wall|fence|post|OPPONENT|door|pole|goal|boards|net|table
        slammed|smashed|banged|whacked|smacked|bashed|clattered .. PART
        OPPONENT .. BLOW .. me|PART
        OPPONENT .. landed|fell .. on|onto .. me|PART
        LAND .. on|onto .. PART
        LAND .. hard|awkwardly|wrong|badly|funny|weird
        LAND .. on .. side|it|outstretched|back
        dove|dived|diving|dive .. PART|hard|landed|jammed
        jammed .. PART
        headfirst .. PART|jammed|hurt
        thrown|bucked|came|launched|flew|tossed off .. VEHICLE
        over .. handlebars
        rear ended
        run over
        yanked|wrenched|jerked .. PART
        PART .. yanked|wrenched|jerked|slammed|landed|smashed
        dog .. yanked|pulled .. PART|me|arm
        ate it
        ate shit
        got .. laid out
        piled|pile .. on
        went .. down .. hard
        knocked .. over|down
        face plant|planted|planting
        faceplant
        ate|eat|eating|kissed pavement|dirt|turf|ground|ice|concrete|curb|floor|wall|snow
        took|caught|wore|had|ate|stopped|got|copped|received .. MISSILE .. off|to|in|on|with .. PART|me|my|ribs|chest|shoulder
        MISSILE .. caught|hit|got|smoked|drilled|nailed|clipped|struck|smashed|tagged|clocked|found|off .. me|PART|shoulder
        got|been|was|getting .. blown|ran|run|mowed|lit up|over|down .. by
        blown up by
        ran|run .. me|over .. over|me
        ran|run|rolled over .. PART|me|arm
        OPPONENT .. ran .. me .. over
        hit .. by .. car|truck|bus|van|bike
        fell|slipped|tripped|tumbled|went .. down|off|over|from|out|into .. GROUND|VEHICLE
        tumbled|tumble|toppled|somersaulted
        stacked it
        came .. cropper
        came off .. VEHICLE
        landed .. PART
        landed .. on .. me|it
        copped|cop .. knee|elbow|hit|knock|ball|boot|kick|stick
        BLOW .. against|into .. PART
        PART .. BLOW .. wall|floor|ground|fence|post|door|by|against|into
        hit|hitting .. PART .. on|against|off
        hit .. goalpost|post|crossbar|wall|fence|pole|table|door .. PART
        hit .. with my PART
        crushed|pinned|trapped|caught|slammed .. PART .. door|under|between|against
        sprawled|crumpled
        jumped|dove|dived .. landed .. PART|hard|wrong|awkward|awkwardly|badly|funny|weird|on
        fight|fistfight|wrestling|scuffle .. PART|arm|shoulder|hurt|landed
        jerked|yanked|wrenched
        PART .. pulled|yanked .. by|hard
        whiplash
        sideways tackle
        feel down .. stairs|steps|ladder
        VEHICLE|feet|legs|foot|board went|slid|slipped|flew|shot .. out from under
        took|caught|ate|wore .. cleat|cleats|skate|spike|spikes|fist|shoe|heel|oar|paddle|foot|hoof .. to|off|in|on .. PART
        """,
    ),
    (
        Group.TRAUMA_FALL,
        None,
        "ask",
        """
        FALL .. ONTO .. ELSEWHERE
        tripped|tumbled|toppled
        accident
        crashed|crash
        dove|dived
        hit .. PART
        bumped|knocked|banged .. PART
        BLOW .. PART
        PART .. BLOW
        landed
        collide
        i|got|was|im .. into|off|down|onto|over .. stairs|steps|wall|fence|ground|pavement|concrete|floor|ladder|roof|tree|curb|car|truck|bike|dirt|ice
        i|got|was .. hurt|hit|struck|clipped|nailed|whacked
        wreck|wrecked
        slipped on
        """,
    ),
    (
        Group.ABDOMEN_BLOW,
        "E10",
        "stop",
        """
        hit|kick|kicked|knee|kneed|elbow|elbowed|punch|punched|ball|blow|took|tackled|helmet .. RIBS .... shoulder|tip
        shoulder tip|point .. RIBS
        tip|top|point of shoulder .... RIBS
        RIBS .... tip|point of|on .. shoulder
        RIBS .... shoulder tip
        """,
    ),
    (
        Group.ABDOMEN_BLOW,
        "E10",
        "ask",
        """
        hit|kick|kicked|knee|kneed|elbow|elbowed|punch|punched|blow|shot in|to RIBS
        """,
    ),
)
