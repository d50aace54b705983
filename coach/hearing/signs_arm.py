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
        None,
        "stop",
        """
        NUMB
        pins and needles
        pins|needles .. PART
        PART .. pins|needles
        pins in|down PART
        PART .. BE ASLEEP
        PART .. fall|falls|falling|fell|went|goes|going|put ASLEEP
        PART .. went|goes|go|going|put to sleep
        CANT .. feel .. PART
        CANT feel anything in|below|down PART
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
        PART .. like .. cotton|rubber|wood|novocaine|plastic|foam|cardboard|sausages|mittens
        PART .. like .. glove|gloves|mitten|sleeping|static|tv
        PART .. like .. mine|somebody|someone|belong|belongs|attached
        PART .. doesnt|dont|didnt .. mine
        like .. novocaine|anesthetic|anaesthetic
        dead|numbed patch|spot
        patch|spot .. CANT feel
        SHOCK .. PART
        PART .. SHOCK
        SHOCK .. down|up|through|into
        SHOCK from
        got|getting|get|gets zapped|stingers|stinger|zinged
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
        PART .. BE .. thick
        feels .. electric|asleep
        DIGIT .. dead
        """,
    ),
    (
        Group.NUMB_TINGLE,
        "B05",
        "stop",
        """
        pinky|pinkie|ring .. NUMB|BUZZ .. only when
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
        weak PART
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
        PART .. BE LIMP
        PART .. LIMP
        went limp|floppy
        PART .. GIVES .. out|up
        PART .. giving .. way|out
        PART .. QUITS .. on|out
        PART .. just .. QUITS
        PART .. quit|quits
        PART .. collapsed|collapses|buckled|buckles|buckling
        PART .. dropped|drops|lowers|falls|fell .. itself|own|side|down
        PART .. shakes|shook|shaking|trembles .. QUITS|holding
        PART .. just hangs|hung|hanging
        PART .. hangs|hanging .. there|side
        PART .. BE .. useless|paralyzed|paralysed|lifeless
        PART .. dead weight
        dead .. not|isnt|hasnt .. coming|come back
        CANT .. MOVE .. PART
        CANT .. use .. PART
        PART .. shut down|off
        lost .. use of
        wrist drop
        PART .. week|weeker .. CANT|now|since
        cant|couldnt .. support .. PART|weight|myself
        PART .. no .. strength|power|juice|force
        PART .. nothing there
        half .. strength|power
        PART .. lost .. strength|power|grip
        """,
    ),
    (
        Group.WEAK_DROP,
        None,
        "ask",
        """
        CANT .. LIFT .. it
        CANT .. hold .. it
        BE weak
        weak
        PART .. went|goes|gone|felt|feels|feel|is dead
        dead arm
        PART .. BE .. week
        dropped .. THING
        DROPPING .. THING
        PART .. heavy|shaky|trembling|shaking
        heavy PART
        PART .. not|isnt .. strong|right|same
        strength .. down|off|less
        weak .. usual
        CANT .. throw .. hard|anymore|all|ball
        PART .. jelly|spaghetti|noodle
        """,
    ),
    (
        Group.SWELLING_COLOUR_COLD,
        "S01",
        "stop",
        """
        SWELL
        swollen|swell|swole|swoll|swelled up
        PART .. blew|blown|blowing|blows up
        PART .. BE .. balloon|sausage|sausages|softball|grapefruit|tennis|baseball|melon|marshmallow
        PART .. twice|double|size|bigger|larger|fatter|fat|huge|thicker
        bigger than .. other|left|right
        WORN .. BE TIGHTER
        WORN .. tight
        WORN .. CANT|wont|doesnt|dont|barely .. fit|off|come|close|get|on
        WORN .. leaves|left|leaving .. marks|mark|dent
        CANT .. get|take|pull .. ring|rings|watch|sleeve|glove .. off|on
        VEIN .. BULGE
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
        HANDS .. BE .. COLD
        HANDS .. COLD
        COLD HANDS
        PART .. BE .. COLD .. other|touch|COLOUR|NUMB
        PART .. COLD to touch
        PART .. COLD compared
        COLD .. PART .. than .. other
        arm .. ice cold
        arm .. BE .. cold
        skin .. BE .. COLOUR
        COLD .. COLOUR
        COLOUR .. COLD
        BE .. COLOUR .. after|since|below
        no pulse|circulation
        no|bad|poor|cut|LOST .. circulation
        PART .. circulation
        """,
    ),
    (
        Group.SWELLING_COLOUR_COLD,
        "S01",
        "ask",
        """
        BRUISE
        PART .. heavy
        BE COLOUR
        veins
        purple|bluish|dusky|purplish|discolored|discoloured|mottled
        PART .. tight .. skin
        WORN .. feels tighter
        PART .. warm|hot
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
