"""Warning signs of the arm: feeling, strength, swelling and colour, lost movement.

Law: data only; how a pattern is written is told in `patterns`. `stop` patterns are clear signs,
`ask` patterns lead to one closed question. May be added to, never taken from. Wording from memory
and common usage, to be signed by a clinician.
"""

from __future__ import annotations

from typing import Final

from coach.model.flags import Group

ARM_SIGNS: Final = (
    (
        Group.NUMB_TINGLE,
        "S08",
        "stop",
        """
        NUMB
        pins and|an|n needles
        pins|needles .. PART
        PART .. pins|needles
        pins in|down PART
        PART .. BE ASLEEP
        PART .. fall|falls|falling|fell|went|goes|going|put ASLEEP
        PART .. went|goes|go|going|put to sleep
        CANT .. feel .. PART
        longer|never feel .. PART
        PART .. made of wood|rubber|stone|concrete|lead|clay|plastic|cotton
        PART .. like .. stone|concrete|lead|clay|marshmallow|mannequin|prosthetic|dummy
        hand|arm|fingers .. anesthetized|drugged|frozen|novocained|numbed
        PART .. no longer feels|feel
        stopped|stop|quit feeling .. PART
        feeling .. went|gone|go|goes .. out|from|of .. PART
        feeling .. leaving|left|leaves|draining .. PART
        tingle
        CANT fell PART
        CANT feel anything|nothing in|below|down PART
        CANT feel anything|nothing .. press|touch|squeeze|poke|pinch|rub .. PART|it
        poke|prick|pinch|stab|jab .. PART .. nothing
        PART .. belongs|belong
        skin .. like .. leather|cardboard|rubber|plastic|paper|wax
        CANT feel .. ball|seams|grip|fingertips|skin|touch
        CANT sense .. PART
        CANT tell .. touching|holding|holdin
        dont|doesnt|didnt feel PART
        no|zero|without feeling|sensation .. in|on|below PART
        no|zero feeling|sensation
        not .. feeling|feel .. PART
        LOST|less|reduced|decreased|no .. FEELING .. in|on|below|from PART
        LOST .. feeling|sensation
        loss of feeling|sensation
        feeling|sensation .. gone|missing|lost|left|disappeared|off
        feeling|sensation hasnt|didnt|wont|doesnt .. come|came|return|back
        PART .. BE DULLED
        HANDS .. BE .. dead
        PART .. like .. cotton|rubber|wood|novocaine|plastic|foam|cardboard|mittens
        PART .. like .. glove|gloves|mitten|sleeping|static|tv
        PART .. like .. mine|somebody|someone|belong|belongs|attached
        PART .. doesnt|dont|didnt .. mine
        like .. novocaine|anesthetic|anaesthetic
        dead|numbed patch|spot|zone|area
        patch|spot .. CANT feel
        SHOCK .. PART
        PART .. SHOCK
        SHOCK .. down|up|through|into
        SHOCK from
        got|getting|get|gets|felt|feel|had SHOCK
        SHOCK .. runs|ran|goes|went|shoots|shot|travels|running|when|every
        funny bone .. BE|feeling|PART
        PART .. funny bone
        BUZZ .. in|down|through|into PART
        PART .. BE BUZZ
        PART .. BUZZ
        ants|bugs crawling|marching|under|in|on
        like ants|bugs|spiders
        nerve .. firing|shooting|zaps|zap|pain
        shooting .. down|into PART
        PART .. lost|losing .. feeling
        PART .. wont|doesnt|didnt wake up
        skin .. CANT feel
        skin .. dull|dead|rubbery
        PART .. no feeling
        PART .. that ASLEEP|sleep feeling
        like .. funny bone
        stick|stuck|poke|poked|prick|pricked|touch|touched|touching|pinch|scratch .. PART|skin|it .... nothing|not|dont|didnt|cant|couldnt .. feel|notice|felt|know
        felt|feel|feeling nothing .. PART|touch|touched|poked
        CANT tell .. gripping|touching|holding|squeezing|got|hot
        PART .. dead|dull|rubbery .. touch
        dead|dull .. to touch
        PART .. sleeping|sleeps
        PART .. BE .. not|isnt mine
        PART .. disconnected|detached|foreign
        DIGIT .. went|gone|goes|going dead|blank
        HANDS .. dead
        BUZZ|prickly|funny feeling|sensation .. in|down|through .. PART
        PART .. pricking|tickles|tickling|tickly|zingy|humming
        trapped|pinched nerve
        HAND .. like .. block|brick|claw|club|log|stump
        PART .. like .. block|brick|log|stump|jello|wood
        sparks .. PART|down|through|into
        current .. through|down .. PART|arm
        lightning .. down|through|PART
        like .. static|electricity|pins
        PART .. fizzing|fizzy|static
        half|part|side of .. PART .. gone|numb
        PART .. CANT feel
        burned|burnt|cut|poked|pricked|hit|pinched|scraped .. PART .... didnt|dont|couldnt|cant feel
        going|went off .. in PART
        like .. outlet|taser|tased|electrocuted|wire|battery|plugged|shocked
        plugged|plugging .. PART
        felt|feel|feeling|feels numb
        PART .. BUZZ .. after|every|when
        machine .. in|going .. PART
        it|still|and wont|doesnt wake up
        fell|gone|went asleep .. PART
        PART .. asleep
        no|lost|losing|zero .. touch .. in PART
        PART .. no longer .. feel|feels
        PART .. like .. someone|somebody|another|other
        PART .. not .. connected|attached
        HANDS .. is|are|feels|feel|felt|was|were gone|missing $
        PART .. gone to sleep
        PART .. taub|entumecida|dormido
        PART .. doesnt|didnt|cant|wont|not register|registering|sense|sensing|detect|recognize
        PART feel|feels|felt furry|woolly|fluffy|velvety
        PART KEEP going to sleep
        """,
    ),
    (
        Group.NUMB_TINGLE,
        None,
        "ask",
        """
        PART .. funny|weird sensation|feeling
        funny|weird|strange|odd sensation|feeling .. in|down PART
        nervy|nerve
        burning .. down PART
        sensation
        BUZZ feeling
        PART .. feels|felt .. fat|thick|foreign|distant|fuzzy|wooden
        PART .. dead
        dead PART
        DIGIT & weird|odd|strange|funny|off|asleep|sock|wrapped|thick|heavy
        hand & weird|odd|strange|asleep|wrapped|thick
        PART .. BE .. thick
        feels .. electric|asleep
        funny bone
        PART .. like .. it|its|somebody|something|jelly
        burning .. in|into|to HANDS
        radiates|radiating|shoots|radiated .. down|into|to .. PART
        burned|burnt|touched .. barely|hardly|didnt .. felt|feel
        sleepy HANDS
        weird .. in|down PART
        PART .. weird|odd|strange
        BUZZ .. PART
        nerve
        """,
    ),
    (
        Group.NUMB_TINGLE,
        "B05",
        "stop",
        """
        pinky|pinkie|ring|fingers|hand NUMB|BUZZ only when|while|on throwing|throw|pitching|i
        pinky|pinkie|ring|fingers|hand .. NUMB|BUZZ .. when i throw .. then|and .. gone|stops|fine
        """,
    ),
    (
        Group.WEAK_DROP,
        None,
        "stop",
        """
        WEAKNESS
        PART .. BE WEAK
        PART .. WEAK
        BE weaker
        suddenly|sudden .. weak
        weak all of sudden
        grip|strength|power .. gone|weak|shot|disappeared|disappearing|fading|vanished|missing|left|drops
        grip|strength|power .. CANT|isnt|hasnt .. there|come|came|back|hold
        grip|strength|power .. slipping|failing|going
        no|zero|LOST|less|hardly|barely .. grip|strength|power
        loss of strength|power|grip
        no .. strength|power .. since|in|left|anymore
        cant|couldnt|wont generate .. power|force
        no|zero squeeze|oomph .. PART|left
        KEEP DROPPING
        KEEP .. dropping .. THING|ball|balls
        dropping .. THING
        dropped .. THING .. CANT|twice|again|because|hand|grip
        hand|fingers|grip|PART .. opened|open|let|lets|released .. drop|dropped|go
        hand|fingers .. open|opened|opens .. own|itself
        fell|falls|fall|falling|slipped|slips|dropped|drops from .. HANDS
        DROPPING .. hand|fingers|grip|grasp
        fell|falls|falling|slipped|slips|drops out of hand|hands|fingers|grasp|grip
        CANT .. LIFT .. PART
        CANT .. LIFT .. HEIGHT
        CANT .. LIFT .. THING
        CANT .. get|bring|put|keep|take PART .. HEIGHT
        CANT .. HOLD .. THING
        CANT .. HOLD .. PART
        CANT .. hold .. up|on
        CANT .. HOLD|close .. fist|hand
        CANT .. make .. fist
        CANT .. PUSH .. THING|door|doors|doorknob|knob|tap|faucet|handle|shirt|seatbelt|off|myself
        CANT .. turn|open|twist|unscrew|undo .. THING|door|doors|key|knob|tap|cap
        CANT .. pick up
        CANT .. pick .. up
        CANT .. grip|squeeze|grasp|clench
        CANT .. squeeze
        CANT .. hold .. anything
        CANT .. write|type|button|tie|brush|text
        PART .. CANT .. lift|go|raise|work|respond|move|hold|come|grip|squeeze|listen|function|budge
        PART .. wont|doesnt|didnt|isnt .. work|working|respond|responding|go|come|lift|move|listen|obey|do
        wont go up
        wont lift
        PART .. GIVES .. out|up
        PART .. giving .. way|out
        PART .. QUITS .. on|out
        PART .. just .. QUITS
        PART .. quit|quits
        PART .. collapsed|collapses|buckled|buckles|buckling
        PART .. dropped|drops|lowers|falls|fell .. itself|own|side|down
        PART .. shakes|shook|shaking|trembles .. QUITS|holding
        PART .. hangs|hanging .. there|side
        CANT .. use .. PART
        PART .. week|weeker .. CANT|now|since
        cant|couldnt .. support .. PART|weight|myself
        PART .. no .. strength|power|juice|force
        PART .. nothing there
        half .. strength|power
        strength|power|grip .. half|percent|fraction
        need|needed|use|used|using|had|have .. other|good|left|right|both hand|hands|arm .. to|lift|raise|hold|help
        PART .. drops|sinks|falls|lowers|drifts|drop|fall .. when|if|while|after|before|soon|as
        tell|telling|told|try .. PART ... doesnt|wont|nothing|didnt
        CANT .... with that|this|my|bad|throwing|right|left|same hand|arm
        CANT .. with .. hand|arm
        CANT .. wash|brush|comb|shave|dry|do .. hair|teeth|face|buttons|bra
        CANT .. put|pull|get .. shirt|jacket|coat|sweater|hoodie|sock|socks|jersey|bra
        CANT .. pour|stir|chop|cut .. with|milk|water|coffee|anything
        CANT .. carry
        CANT budge
        half|less|quarter as strong
        hand|fingers .. opens|open up
        hand .. CANT .. close|open
        PART CANT rise|raise|elevate
        without help|helping
        power to|in .. PART .. cut|gone|off|out|lost
        CANT .. MOTOR .. DAILY
        CANT .. with my right|left|throwing|bad
        LIFT|HOLD|support|supporting|holding|help .. PART .. with .. other|good hand|arm
        PART .. sags|sagged|sinks|slumps|droops|drops|falls .. when|if|out|after
        PART .. wont|doesnt|cant|couldnt|isnt .. stay|staying|keep|hold|holding .. up|out|on|there|it
        without|with .. other arm|hand .. help|helping|holding|lifting
        other|good|left|right arm|hand .. help|helping|assist .. lift|raise|it|PART|up
        PART .. nothing left
        PART HAVE .. nothing in
        PART .. powerless|puny|feeble|spaghetti|pathetic
        cant|couldnt .. hang on to
        cant|couldnt .. hold|lift .. own weight
        PART .. too|so|really heavy .. lift|raise|hold
        drop|dropped|dropping everything
        butterfingers
        not|wasnt|isnt|werent|arent able to .. MOTOR
        not|wasnt|isnt|arent able to .. MOTOR .. PART|THING
        KEEP giving|gives out
        strength|power|grip BE way down|off|less
        arm|shoulder|hand .. died
        half .. strength|power|grip
        LOST .. ability
        arm|hand|shoulder .. made of jello|jelly|rubber|noodles
        fumbling|fumble|fumbled .. stuff|things|everything|keys|ball|it
        weak as
        WEAK .. in|on .. PART
        strength|power|grip .. fell|dropped|dropping|falling|went|crashed
        CANT .. snap|pinch .. HANDS
        PART .. CANT .. MOTOR
        CANT .. MOTOR .. PART .. up|over|away|out|off|together
        CANT .. MOTOR .. HANDS|arm|arms
        CANT .. get .. PART .. up|over|off|above
        tried|try|trying|go|went to MOTOR .... nothing|wouldnt|couldnt|cant|didnt|wont
        takes|took|need|needed|needs two|both hands|arms
        two|both hands to .. MOTOR|THING
        PART .. flops|flopped|flopping|dangles|dangling|dangled
        wet noodle|spaghetti|noodles
        PART .. like .. wet|cooked|dead .. noodle|spaghetti|fish|rag
        CANT .. do .. pushup|pushups|pullup|single
        CANT .. throw .. ball|feet|ft|10|20|anything|across
        strength .. there .. no|isnt|not
        no .. strength|power .. there|it
        PART .. no good
        PART .. gave|giving|gives out|up|way
        hand|fingers .. wont|doesnt|cant|dont .. close|spread|work|straighten|open|grip|curl|move
        CANT .. push|pull|throw
        PART .. struggles|struggled|struggling .. lift|hold|raise|carry|open
        trouble|struggling|struggled|hard|difficult|difficulty .. lifting|raising|gripping|holding|lift|raise|grip|squeezing|squeeze|opening|carry|carrying .. PART|THING|HEIGHT
        HANDS .. shaky|trembling|trembles|shakes .. cant|weak|THING|when
        losing .. strength|grip|power
        PART .. BE .. weeker|weaker|feeble|powerless|spent
        PART .. shrinking|shrunk|wasting|wasted|smaller
        PART .. wont|doesnt .. what
        nothing .. behind|left in .. arm|grip|it
        arm .. has nothing
        lost .. control .. PART
        arm|hand|grip .. failed|fails|failing
        THING .. slips|slipping|slipped|falls|falling|fell|flew|drops|dropping|dropped .. hand|hands|fingers|grip|grasp
        let go of .. THING
        lost .. grip .. THING
        CANT .. lift .. anything
        CANT .. hold|keep .. PART .. up|out
        arm .. up .. cant|couldnt|wont
        PART .. lost .. strength|power|grip
        PART turned|went|turns|goes to|into .. jelly|jello|mush|noodle|noodles|rubber|spaghetti|putty
        holding|lifting|gripping|raising|carrying|opening|squeezing ... impossible
        use|used|using .. left|right|other|good .. to lift|raise|move|hold|pick
        grip|strength BE|is garbage|trash|shot|terrible|crap|toast|rubbish
        drop|drops .. THING .. now|every|always|daily
        no push|throw|life|drive|fire|juice left .. PART
        """,
    ),
    (
        Group.WEAK_DROP,
        "E05",
        "stop",
        """
        PART .. BE LIMP
        PART .. LIMP
        went limp|floppy
        PART .. BE .. useless|paralyzed|paralysed|lifeless
        PART .. just hangs|hung|hanging
        dead .. not|isnt|hasnt .. coming|come back
        CANT .. MOVE .. PART
        PART .. shut down|off
        lost .. use of
        wrist drop
        PART .. dead weight
        whole|entire PART .. dead
        PART .. dead .. not|isnt|hasnt|wont|still .. back|coming|since
        CANT move it
        CANT .. move .. at all
        PART .. paralyzed|paralysed
        """,
    ),
    (
        Group.WEAK_DROP,
        None,
        "ask",
        """
        CANT .. LIFT .. it
        CANT .. hold .. it
        CANT hold my|the|a|onto
        PART .. feels|felt|feeling .. weak
        i|im|still|feel|feeling|felt|feels|was|got|getting|it|its|bit|little|really|super|so .. weak $
        feel|feeling|felt|feels weak
        little|lil|bit|kinda|really|suddenly|tad|somewhat|slightly|pretty weak
        ^ weak $
        PART .. went|goes|gone|felt|feels|feel|is dead
        dead arm
        PART is|isnt|was|feels|felt|feel|feeling|getting|got|went week
        dropped .. THING .. today|again|earlier|morning|tonight|yesterday
        fumbled|fumbling|fumble .. THING
        PART .. not|isnt .. strong|right|same
        strength .. down|off|less
        weak .. usual
        CANT .. throw .. hard|anymore|all|ball
        PART .. jelly|spaghetti|noodle
        PART .. shot
        side .. heavier|heavy
        grip .. off|weird|bad|worse|less
        PART CANT
        HANDS & cant|couldnt|wont
        shoulder & cant|couldnt|wont
        PART & half|nothing|useless|weird|suddenly
        PART .. without .. help|helping
        CANT .. without .. help|helping
        like .. PART
        arm|hand & anymore|wrong|useless
        side .. twice|heavier|weaker
        PART .. wont
        cant|couldnt|wont|unable .. PART
        weird|off .. grip|strength
        lost .. velo|velocity|speed
        less strong
        weighs|weighed .. pounds|lbs|ton|tons|kilos .. CANT
        PART & weighs|weighed
        i drop|dropped|dropping .. THING
        """,
    ),
    (
        Group.SWELLING_COLOUR_COLD,
        "S01",
        "stop",
        """
        SWELL
        swollen|swell|swole|swoll|swelled up
        PART .. swole|swoll|ballooned
        PART .. tight .. drum|sausage
        knuckles .. disappeared|gone|see
        pitting
        PART .. blew|blown|blowing|blows up
        PART .. BE .. balloon|sausage|sausages|softball|grapefruit|tennis|baseball|melon|marshmallow
        PART .. twice|double|size|bigger|larger|fatter|fat|huge|thicker
        bigger than .. other|left|right
        WORN .. suddenly|now|today|getting|feels|side .. TIGHTER
        WORN .. CANT|wont|doesnt|dont|barely .. fit|off|come|close|get|on
        WORN .. leaves|left|leaving .. marks|mark|dent
        CANT .. get|take|pull|close|fasten|buckle .. ring|rings|watch|sleeve|glove|strap|bracelet
        WORN .. digging|cutting|stuck|squeezing|pinching|smaller|outgrew
        WORN .. BE suddenly|now tight|small
        PART .. full|stretched .. burst|explode|pop|tight|skin
        PART .. BE thick|bloated|fat|huge
        PART .. like .. balloon|sausage|sausages|softball|grapefruit|melon|michelin|popeye|club|water
        skin .. shiny|stretched|tight
        PART .. filled|filling|fills .. up|fluid
        fluid|water .. in|on|under PART
        PART .. pits|pitting|dents
        knot|egg|golf|lump .. PART .. grew|growing|overnight
        PART .. bulging
        sausage fingers
        PART .. explode|exploding|burst|bursting
        PART looks|looked|look|is .. like .. mitt|mitten|balloon|football|ham|sausage|pillow|club|marshmallow|loaf
        BRUISE .. all|whole|down|spreading|spread|everywhere .. PART
        BRUISE .. PART .. explain|reason|nowhere|why
        PART .. BRUISE .. explain|reason|nowhere|why|down|all|everywhere|spreading
        VEIN .. BULGE
        COLOUR VEIN
        VEIN .. over|on|across .. PART|chest
        VEIN .. PART
        PART .. puffed|puffing
        BULGE veins
        PART .. tight .. COLOUR|RED
        PART .. heavy .. tight|COLOUR|RED|swollen
        heavy .. tight .. RED|COLOUR
        """,
    ),
    (
        Group.SWELLING_COLOUR_COLD,
        "E04",
        "stop",
        """
        HANDS .. BE .. COLD
        HANDS .. COLD
        COLD .. PART .. than .. other
        PART .. ice cold
        HANDS .. BE ice|icicles|icicle|popsicles
        COLOUR .. HANDS
        PART .. stay|stays|staying|stayed COLD|COLOUR
        PART .. no colour|color|blood|pulse
        COLD .. COLOUR
        COLOUR .. COLD
        no pulse|circulation
        no|bad|poor|cut|LOST .. circulation
        PART .. circulation
        HANDS .. BE .. COLOUR
        HANDS .. COLOUR
        COLOUR HANDS
        HANDS .. turned|turns|turning|went|goes|going|gone COLOUR|different
        HANDS .. lost .. HUE
        HANDS .. CHANGED .. HUE
        HANDS .. ghost|ghostly|marble|wax
        """,
    ),
    (
        Group.SWELLING_COLOUR_COLD,
        "S01",
        "stop",
        """
        PART .. BE .. COLOUR
        PART .. COLOUR
        COLOUR PART
        COLOUR .. in|on PART
        PART .. CHANGED .. HUE
        PART .. HUE .. CHANGED|gone
        CHANGED HUE .. PART
        PART .. lost .. HUE
        PART .. black .. blue
        PART .. BE .. RED|black
        PART .. BE .. COLD .. other|touch|COLOUR|NUMB
        PART .. COLD to touch
        PART .. COLD compared
        arm .. BE .. cold
        PART .. turned|turns|turning|went|goes|going|gone COLOUR|RED|different
        PART .. like ice|marble|wax|corpse
        PART .. warm up .. wont|cant|doesnt
        PART .. wont|cant|doesnt|never .. warm
        PART .. ghost|ghostly|blotchy|mottled|marbled
        PART .. turned .. HUE
        HUE .. PART .. BE|off|wrong|different
        skin .. BE .. COLOUR
        BE .. COLOUR .. after|since|below
        """,
    ),
    (
        Group.SWELLING_COLOUR_COLD,
        "S01",
        "ask",
        """
        BRUISE
        BE COLOUR
        veins
        purple|bluish|dusky|purplish|discolored|discoloured|mottled|discoloration|discolouration
        PART .. tight .. skin
        WORN .. feels tighter
        PART .. warm|hot
        HANDS .. cooler
        """,
    ),
    (
        Group.LOST_MOTION,
        "B06",
        "stop",
        """
        CANT .. REACH .. behind|back|overhead|head|across|seatbelt|pocket|belt|hair|bra|seat
        CANT .. REACH .. anymore
        CANT .. scratch|wash|comb .. back|hair
        CANT .. rotate|externally .. PART|out|back
        CANT .. get .. PART .. back|behind|layback|slot
        LOST .. motion|range|mobility|rotation|flexibility|rom|movement
        no|zero|half .. motion|rom|mobility|rotation|movement
        range|motion|rom|mobility .. gone|half|worse|less|shrunk|disappeared|lost
        PART .. frozen|seized|locked
        frozen shoulder
        CANT .. straighten|bend .. arm|elbow
        PART .. wont|doesnt|CANT .. straighten|bend|rotate|extend|turn
        CANT .. MOVE .. past|beyond|above|more
        used to .. reach|rotate .. CANT
        rotation|extension|flexion|layback|reach .. gone|half|worse|less|limited|lost
        CANT .. tuck|fasten|hook .. shirt|bra
        CANT .. bra|seatbelt|wallet|pocket
        PART .. stuck .. at|halfway|way|and
        wont .. rotate|turn|straighten|bend
        CANT .. turn|rotate .. PART .. out|over|in|palm
        motion .. dropped|shrank|cut
        stiff .. CANT .. reach|rotate|turn|raise
        """,
    ),
    (
        Group.LOST_MOTION,
        "B06",
        "ask",
        """
        less motion|range|rom|mobility
        PART .. stuck
        CANT .. reach
        """,
    ),
)
