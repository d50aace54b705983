"""Warning signs of the arm as people tell them: by what no longer works, in jokes.

Law: data only; how a pattern is written is told in `patterns`. `stop` patterns are clear signs,
`ask` patterns lead to one closed question. May be added to, never taken from. Wording from memory
and common usage, to be signed by a clinician.
"""

from __future__ import annotations

from typing import Final

from coach.model.flags import Group

TOLD_ARM: Final = (
    (
        Group.NUMB_TINGLE,
        "S08",
        "stop",
        """
        HANDS .. doesnt|dont|cant|not feel .. touch|anything|things|much
        numbness|tingling|tingle|pins|numb .. is|are|came|come|keeps back|again|returned|coming
        burned|burnt|cut|scalded .. PART .... never|not|didnt|nothing felt|feel|noticed|notice
        CANT|dont|doesnt|didnt|not feel the|my|any|a .. needle|needles|string|strings|keys|buttons|pen|pencil|pages|coins|coin|rope|wheel|screen|keyboard|pedals|ball|bat|seams|laces .. DIGIT|HANDS|with|between|under|when|anymore
        DIGIT|HANDS .. though|if|like .. wrapped|gloved|covered|coated|asleep|wood|cloth|someone|foreign
        PART .. without sensation|feeling
        without sensation|feeling
        PART .. like .. full of .. sand|ants|bees|pins|needles|static|cotton|water|soda
        mosquito|mosquitoes|insects|bugs|ants|spiders .. PART|skin
        PART .. on vibrate|vibration
        CANT|not|dont|didnt feel .. heat|hot|cold|burn|good|properly|right|well .. PART
        PART .. CANT|not|dont|didnt feel .. good|properly|right|well
        touch|hold|grab|touching|holding .. ball|bat|things|it .. and .. not|dont|cant|doesnt feel
        CANT feel .. pointer|index|middle
        current .. in|through|down|along .. PART
        PART .... felt|feel|feels|feeling nothing
        not|isnt|without having .. feeling|sensation
        feeling|sensation .. is|are less|low|gone|reduced|weak|poor
        less feeling|sensation
        BUZZ ... to|into|down .. PART
        PART .. botoxed|botox|lidocaine|novocained|dentist|injected|anesthetized
        like .. DIGIT|HANDS .. isnt|not|wasnt|arent|werent there
        soda|sparkling|mineral|fizzy water .. PART
        PART .. soda|sparkling|mineral|fizzy water
        CANT tell .. from|and|or|between .. DIGIT|HANDS
        CANT feel .. with|through|in .. DIGIT|HANDS
        PART .. buffering|loading|lagging|disconnected .. feel|numb|tingle
        needle|needles .. DIGIT|HANDS
        DIGIT|HANDS .. needles|needly
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
        PART .. buffering|lagging|loading
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
        CANT .. keep|hold .. PART .. raised|lifted|extended|out|up|straight
        LOST .. force
        no .. force .. PART|since|in|anymore
        PART .. strength of a|an|wet
        turning|opening|lifting|holding|gripping|carrying|writing|buttoning .. impossible|gone|hopeless
        DIGIT|HANDS .. longer|not|wont|dont obey|listen|respond|work|move
        so little strength|power|force
        try|tried|trying .. hold|keep|lift .. PART .... sinks|drops|falls|fell|sags
        PART .. gives|gave|give out .. when|if|while|on|at|and
        HANDS .. clumsy .... drop|dropping|fumble|fumbling|dropped
        arm|elbow|shoulder folded|crumpled|buckled|collapsed|caved
        arm|elbow .. folded|crumpled .. under|up|pushup|push
        grip|strength|power .. went|dropped|fell|down|is .. to .. zero|nothing|nil
        grip|strength|power .. zero|nil
        PART .. wet|limp|soggy noodle|rag|spaghetti
        not|isnt|without|no having .. strength|power|force|grip
        it|arm|shoulder|hand .. gave|gives|giving out
        PART .. on strike
        PART .. sinks|drops|falls|lowers .. on .. own|accord
        PART .. not|isnt lifting|gripping|holding|working|responding|moving
        hand|fingers|grip .. opening|opens|open .. itself|own|alone
        arm|shoulder|hand|arms has|got|have|had nothing
        arm|shoulder .. wont|doesnt|cant|couldnt|not stay up
        arm|shoulder .. just|simply didnt|wouldnt|wont|cant|refuses|refused go|going|rise|move|lift|respond|work
        arm|shoulder .. falls|drops $
        cant|couldnt .. curl .. can|cup|phone|mug|bottle|soup
        tried|went|go to .... cant|couldnt|couldn squeeze|grip|hold|lift|raise
        tried|went|go to .... and|but .. PART .. didnt|wouldnt|wont|just
        PART .. resigned|retired|quit|clocked
        push|lift|raise .. myself .. out|up|off .. cant|couldnt
        cant|couldnt .. push|lift|pull .. myself .. up|out|off|from
        wrist .. drops|dropped|drop|hangs|limp|cock
        THING .. hit .. floor|ground .. grip
        no grip
        without power|strength|force
        dont|havent|hasnt|not .. have .. power|strength|force
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
        PART .. no thanks
        too weak
        weak PART
        weak|weaker|weakened PART
        PART .. nope|nah
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
        ring|rings|watch|bracelet|watchband|wristband .. TIGHTER
        PART .. like .. popeye|popeyes|michelin|hulk|hulks
        purple|blue discolouration|discoloration
        WORN .. no|not longer|any .. closes|close|fits|fit|buckles|reaches|goes
        WORN .. longer closes|close|fits|fit|buckles|goes|reaches
        PART .. became|become|got|gets|went|is|was big|bigger|fat|thick|huge|heavy .. and .. big|heavy|thick|fat|swollen|red|blue
        PART .. twice|double|as .. big|large|thick .. as|other
        PART ... VEIN .. suddenly|sudden|everywhere|sticking|showing|road|map|ropes|all
        blue|purple|dark lines .. PART|chest|shoulder|arm
        PART .. road map
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
        CANT .. bring|get|raise|lift|take it|arm|hand .. above|past|over|behind .. week|could|before|yesterday
        PART .. longer|not|never turns|goes|rotates|reaches|bends|straightens|lifts .. out|outward|outwards|inward|back|up|behind|all|fully
        PART .. goes|go|moves|comes|gets .. up .. only .. half|halfway|shoulder|NUM
        PART .. only .. goes|go|moves|comes|gets .. half|halfway|shoulder|NUM
        CANT .. LIFT .. PART .. past|above|over|higher .. now|week|before|could|anymore
        PART .. wont|cant|doesnt|not .. rotate|turn|twist .. as|like|anymore|fully|all
        lost .. external|internal|all|most .. rotation
        PART .. not|isnt|wont|never .. going|coming|moving|reaching|turning|bending|straightening|rotating .. up|above|over|behind|back|full|fully|all|past|straight|overhead
        lost .. ability .. reach|move|turn|raise|rotate
        CANT .. get .. to|into .. layback|slot|spot|position .. stuck
        welded|glued|cemented|rusted shut|stuck|up
        PART .. stops|stopped|stuck|ends|jams .. at .. shoulder|chest|ear|head|eye|height|level|halfway
        could .... REACH .... CANT $
        could .. REACH .... CANT
        arm|shoulder .. wont|cant|doesnt|not go|reach|come .. back|behind|around|over
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
        Group.SWELLING_COLOUR_COLD,
        "S01",
        "ask",
        """
        WORN .. TIGHTER
        """,
    ),
)
