"""Warning signs of the joint, falls and blows as people tell them: by what no longer works, in jokes.

Law: data only; how a pattern is written is told in `patterns`. `stop` patterns are clear signs,
`ask` patterns lead to one closed question. May be added to, never taken from. Wording from memory
and common usage, to be signed by a clinician.
"""

from __future__ import annotations

from typing import Final

from coach.model.flags import Group

TOLD_JOINT: Final = (
    (
        Group.DISLOCATION_SLIP,
        "S05",
        "stop",
        """
        had it|shoulder out
        popped|slipped|slid|came out .. washing|reaching|putting|getting|turning|throwing|sleeping|pulling|lifting|swimming|tying|brushing|waving|dressing
        luxation|luxated
        PART|it|thing|everything shifted|slid|slipped|moved|jumped forward|forwards|backward|out|down|in .. when|as|while|during|on
        SOCKETED .. out of .. socket
        out of socket
        it came|went|popped|slid|slipped|jumped|shifted out when|while|as|during|again|reaching|sliding|diving|throwing|pitching|sleeping
        SOCKETED .. ejected|evicted|dipped|bailed|departed|escaped|exited|vacated
        SOCKETED left the|its|building|chat
        SOCKETED went|gone|goes bye|walkabout|awol|missing
        PUT .. it|shoulder|arm|joint .. in .. place|socket|joint|back
        popped|put|shoved|pushed|snapped|slammed her|him|it back in|into|where
        out of socket|joint
        rides|ride|rode|slides|slips .. over|off .. edge|rim|lip|cup
        went|came|go|goes|come|comes|popped|slid|jumped|slipped|hopped out and|then .. back|in|again|returned
        hopped|jumped|skipped|leaped|bounced|glitched out .. slid|back|went|for|and
        popped|slipped|slid|came|jumped out of .. socket
        bone .. came|went|come|goes|comes|jumped|popped|moved|slid .. out|away
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
        BE .. loose
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
        PART .. not|isnt .. same form|shape|look
        PART .. shaped .. like|funny|weird|box|square|different
        collarbone|BONE .. lifted|raised|higher|popped|risen .. up|than|before|other
        PART .. line|outline|contour not|doesnt|isnt .. same
        BONE|collarbone|tip|end .. pokes|poking|points|sticks|juts .. up|upward|upwards|out
        PART HAVE .. hole|dent|gap|hollow|dip|notch|crater|corner|shelf
        BONE|collarbone .. protruding|protrudes|juts|jutting|sticks|comes|coming .. out|top|up|skin|at
        BONE .. protruding|jutting
        bump|lump|knob|ridge .. PART .... wasnt|not|never there|before
        bone .. stands|standing|sits|sticks .. proud|out|up|high
        PART .. visibly|clearly|obviously|noticeably lower|higher|different|flat|off
        BONE .. looks|look broken|off|wrong|bent
        collar bone .. broken|broke|sticking|up|bump
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
        something snapped|popped|ripped|tore .. like .. band|string|cord|rope
        something snapped|popped|ripped|tore .... arm|shoulder .. done|useless|dead|toast|finished
        lat|lats|pec|muscle|bicep|biceps|cuff|tricep|labrum exploded|blew|tore|ripped|popped|snapped|detached|shredded|went
        felt|feel .. muscle|bicep|biceps|something .. roll|curl|slide|ball|bunch .. up
        labrum|cuff|bicep|biceps|ligament|tendon|lat|pec .. say|said|says|waved .. goodbye|bye|sayonara|adios
        sound|noise .. came .... CANT|couldnt|cant|not|weak
        felt it|something shred|unzip|tear|rip|go|snap|pop
        felt|heard .. shred|shredding|unzip
        something .. torn|ripped|broken .. CANT|cant|heard|felt|inside|lift
        POP .... been .. CANT|cant|unable|useless|weak
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
        ELBOW .. popped|pop|snapped .. and .. stopped|left|hurts|hurt|sat|done|came|pulled|quit
        ELBOW .. made .. noise|sound|crack|pop|crunch
        inside|inner|medial .. ELBOW .. fire|lit|burning|burns|screams|screaming|exploded
        ELBOW inside .. POP|pop|pain|PAIN
        ELBOW ... said|waved goodbye|bye
        ELBOW .. hurts|hurt|pain|PAIN .... since .. one|that pitch|throw|serve
        inside|inner .. ELBOW .. hurts|hurt|PAIN .. so|bad|since|really|when
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
        i|and|then|so|got|we wiped out
        wiped out .. on|off|skating|skiing|biking|surfing|snowboarding|skateboard|bike|board
        i fell .. on|off|down|from|over|through|hard
        ^ fell .. down|through|from|over|out|hard|onto
        got|was|been|getting .. hit|BLOW .. in|on|by|off|into|at|from|to .. PART|me|OPPONENT|MISSILE|VEHICLE|plate|second|home|first|third|head|back|ribs|side
        i|we|just crashed|wrecked|totaled|flipped|rolled my|the|a VEHICLE
        after|since|from|had a nasty|bad|hard|heavy|big|awkward|stupid fall
        fell|landed|sat|rolled|jumped|tripped on|onto me
        put|stuck|threw .. out .. hand|arm .. fall|break|catch|stop
        break|broke|stop|stopped my|the|a fall .. with|hand|arm
        hit|struck|smacked|whacked|kicked|punched me .. on|in .. PART
        slid|slipped|rolled|fell|tumbled off .. VEHICLE|roof|dock|bank|rock|cliff|table|bed
        dragged|bumped|shunted|rammed|knocked|flung|barged|shouldered|slammed|hurled|whipped|launched|swept|shoved|pushed .. me .. over|into|off|down|from|against|out|onto
        was|got|been|were .. shunted|rammed|sideswiped|barged|floored|toppled|upended|mown
        shunted|rammed|sideswiped .. from|by|behind|at
        slid|slides|ran|dove|jumped into|onto|on .. my arm|shoulder|hand|elbow
        walked|walk|ran|run|bumped|stumbled|crashed into .. door|doorframe|frame|wall|pole|post|cupboard|lamp .. hard|PART|with
        fell|fallen off|from .. porch|balcony|bleachers|bed|couch|chair|table|roof|stage|truck|wall|dock|counter|bike|stool
        with her|his|their cleats|spikes|studs .. PART
        cleats|spikes|studs .. PART
        shoulder|elbow|head|face|arm first .. into|on|onto|down|ground|floor|wall
        bit the dust .. PART|shoulder|hard|chasing|diving
        ladder|chair|branch|stool|step|table|rope|railing gave|broke|collapsed|tipped|slipped|slid .. way|and|out|with|under
        went down .. with .. it
        took|taken .. header|digger|tumble|spill|dive|plunge|fall .. off|down|over|into|on|from
        took .. digger
        got|was|been .. demolished|annihilated|obliterated|wrecked|creamed|flattened|folded|clobbered|bodied|decked|leveled|destroyed|smashed|trucked .. home|plate|second|first|third|goal|rebound|guy|dude|girl|him|kid|sideline|tackle|base|cutting
        yeeted|launched|hurled|flung|threw|catapulted myself .. down|off|into|over|at
        car|truck|van|bus|bike|scooter|cyclist|driver|suv|taxi .. clipped|hit|knocked|tapped|bumped|sideswiped|struck|rear .. me
        fence|wall|door|ground|floor|pavement won
        door|gate|hatch|lid|window .. came|fell|slammed|closed|shut .. down .. on|onto .. PART
        knocked|swept|thrown .. off|from .. feet
        fell|fall|falling|fallen .. over|on|onto|across .. PART
        falling from|off|down|on
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
        ^ yes|yeah|yep|yea .. from|off the|my horse|bike|ladder|stairs|roof|tree|scooter|skateboard
        """,
    ),
    (
        Group.TRAUMA_FALL,
        None,
        "ask",
        """
        hit .. pothole|deer|tree|pole|curb|bump|rock
        tripped|tripping .. down|over
        tripped|trip|stumbled .. and|over|on|fell|up|down
        wiped|wiping out
        wiped out
        vs|versus|and|by .. car|truck|bus|van
        hit my head
        hit .. ground|wall|floor|deck|fence|post|boards|dirt
        got|gets|getting|been|was|were|be .. BLOW|hit|bucked|tripped|nailed|dropped|lit|jumped|rocked|mauled
        i fell
        ^ fell
        stumbled|stumble
        knocked .. against|into|on
        stumbled|stumble .. caught|myself|arm|hand
        bumped|knocked|hit|clipped .. my|into .. PART|me
        caught myself .. with|on|arm|hand
        """,
    ),
    (
        Group.POP_WITH_LOSS,
        "S06",
        "ask",
        """
        faint|soft|quiet|single|brief|sort pop|snap|crack|click
        """,
    ),
    (
        Group.SWELLING_COLOUR_COLD,
        "S01",
        "ask",
        """
        COLD HANDS
        """,
    ),
    (
        Group.DEFORMITY,
        "E03",
        "ask",
        """
        FRACTURE it
        """,
    ),
)
