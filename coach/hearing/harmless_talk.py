"""Everyday sayings that hold a warning word and mean nothing: of tiredness, luck, weather, talk.

Law: data only, read together with `harmless`; see there for how a line is written.
"""

from __future__ import annotations

from typing import Final

TALK: Final = """
    popped a|the|my|some squat|zit|balloon|wheelie|bubble|collar|cork|champagne|blister|popcorn|beer|soda|question|trunk
    popped in|by|over
    home|shower|ate|dinner|movie|nap|bus|school|class|lunch|practice|showered .. and|then .. crashed|died
    landed|landing|land .. well|fine|good|safe|safely|soft|softly|clean|cleanly|ok|okay|nicely|perfectly|feet|right|balanced
    rain|wet|sweaty|sweat|slick|slippery|lotion|sunscreen|soap|muddy|soaked ... slip|slips|slipped|slipping|drop|dropped|drops|flew|fell .... hand|hands|fingers|grip|grasp
    slip|slips|slipped|slipping|drop|dropped|drops|flew|fell .. out .. of .. hand|hands|fingers|grip ... rain|wet|sweaty|sweat|slick|slippery|lotion|sunscreen|soap|dew
    slip|slips|slipped|slipping|drop|dropped|drops|flew|fell .. hand|hands|fingers|grip ... rain|wet|sweaty|sweat|slick|slippery|lotion|sunscreen|soap|dew
    band|tube|elastic|team|storm|wind|lineup|battery|coffee|rope|tape ... losing|lost|loses .. its|it|some .. strength|stretch|power|snap|grip
    team|lineup|bench|coffee|drink|tea|signal|wifi|excuse|ref|call|calls|serves|serve|opponent|opponents|defense|defence|hitters|hitter|wind|sun|movie|joke|competition|bullpen|schedule|throw|backhand|forehand BE .. weak|weaker
    weak throw|throws|team|opponent|opponents|signal|coffee|joke|performance|match|finish|start|reception|wifi|lefty|attempt|argument|tea|tackle
    got|get|getting hit hard .. inning|innings|NUM|runs|first|second|third|tonight|pitching|mound
    drop|drops|dropped|lower .. THING .. behind|back|down .. run|runup|swing|motion|approach|takeoff
    i drop|dropped|dropping .. THING|ball .. once|one time|bad catch|catching
    dropped .. ball .. one|once|time|catch|bad|outfield|fly|easy|sun
    little|slight|small|bit of .. cough
    cough|coughs|coughing .. allergy|allergies|cold|pollen|dust|season|classmates|school|daycare|kids|smoke|chalk
    arm|shoulder|hand BE warm .. now|after|training|practice|warmup|throwing|nice
    training|practice|warmup|workout|throwing|session|shower ... arm|shoulder|hand .. warm
    heart .. broken|broke|breaking|breaks .. lost|loss|team|series|game|match|her|him|girlfriend|cubs|season
    heart is|was not in|into it
    my heart goes out
    heart .. sank|melted|burst|full|skipped beat .. when|joy|pride|dog|saw
    shut .. down .. after|at|for .. NUM|season|pitches|week|throws
    lost .. my|the|some feel .. for .. curve|curveball|changeup|ball|slider|serve|water
    no feel .. for .. curve|curveball|changeup|ball|slider|serve|water|pitch|it
    CANT|dont|couldnt|no|not|didnt feel|tell|notice|see|hear any|a|the|much|no difference|change|improvement|issue|problem|soreness|pain|discomfort|tightness|effect
    CANT .. tell .. difference
    cant|couldnt .. believe|wait|complain|remember|afford|decide .. it|to|how|when|what|till|until
    cant|couldnt stop|help .. laughing|smiling|eating|watching|thinking
    cant|couldnt find my .. parking|band|ball|glove|keys|shoes|coach
    cant|couldnt .. make|come|go|get|throw|train .. to|today|tomorrow|until|because|there|at|out|practice|game .. practice|work|school|rain|class|game|field|gym|exam|exams|weekend|car|ride|bus|free|busy|weather|closed
    hands|palms|hand .. sweaty|sweating|nervous|dirty|full|busy|muddy|clean|dry|slippery
    in hand
    second|at|other|first|hand|on .. hand .. coffee|brew|drink|phone|book
    off .. chest .. with|to|coach|finally
    hit|took .. ball|puck|pitch .. in|off|to .. face|leg|foot|shin|butt|back|thigh
    took|caught|blocked .. one .. off .. chest .. catcher|gear|protector
    goalkeeper|goalie|keeper|catcher|ref|referee|umpire|coach .. got|took|ate|caught .. face|chest|mask|leg|gear
    breaking|broke|break|broken in .. glove|shoes|cleats|mitt|boots|spikes
    broke .. racket|racquet|bat|record|fast|up|serve|news|stick|string|tie
    sprained|rolled|twisted|broke .. ankle|toe|foot .. grade|years|kid|ago|once|when
    cold|freezing|hot|boiling|warm .. hall|arena|stadium|track|beach|bus|office|classroom
    cold .. nose|feet|ears|toes|beer|coffee|pizza|drink
    nose|feet|ears|toes .. cold|frozen|freezing
    numbingly|bitterly|freezing cold
    stuffy|runny|blocked|snotty nose
    have|got|had|with .. cold .. nose|runny|sniffles|sneezing|just|only|throat|little|allergies
    beat|killed|crushed|destroyed|smashed|smoked|buried|spanked|slaughtered .. them|us|him|rivals|team|opponents|opponent
    we|they|us got killed|crushed|destroyed|smashed|smoked|buried|slaughtered
    workout|practice|coach|set|sets|drill|session|conditioning|class|exam|exercise|run|hill|sprints|test .. killed|kills|killing|destroyed|wrecked|smoked|murdered|crushed|buried|ended|broke .. me|us
    tired .. school|work|travel|exams|kids|baby|gardening|late|movie|party|practice|bus|flight|training|game|match|good
    good|nice|pleasantly|happy|healthy|usual tired
    gassed|pooped|beat|wiped .. practice|game|running|sprints|training|match|today
    asleep in|on|during|at .. math|class|bus|couch|school|car|movie|history|train|meeting|desk
    watch|watching|look|looking .. for .. joint|swelling|fever|numbness .. none|no|nothing|isnt
    blood|heart|thyroid|allergy|vitamin|acne|birth pressure|pill|tablet|pills|meds|medicine|vitamins|control
    take|took|taking .. vitamin|vitamins|creatine|magnesium|protein|melatonin|zinc|iron
    PILL .. for .. headache|head|cramps|period|cold|fever|tooth|teeth|migraine|knee|back
    woke|wake|wakes|waking|woken|kept|keeps|awake|up ... pee|bathroom|toilet|loo|noise|noises|heat|mosquito|neighbours|neighbors|thunder|party|baby|dog|cat|phone|alarm|roommate|snoring|siren|kids|thirsty|hungry|hot|feed
    bathroom|toilet|noise|heat|mosquito|neighbours|neighbors|thunder|baby|dog|cat|roommate|snoring|kids ... woke|wake|wakes|kept|keeps|up|awake .. me
    sleep|slept|sleeping .. bad|badly|poorly|little|less ... baby|heat|noise|party|neighbours|neighbors|exam|exams|travel|jetlag|hotel|dog|nervous|excited
    sweat|sweating|sweaty|sweats|sweated ... heat|warm|hot|humid|humidity|workout|practice|training|sun|sauna|gym|nervous|blanket|summer
    shirt|jersey|hoodie|clothes|cap .. soaked|drenched|wet ... practice|game|workout|rain|training|match|water
    lost|losing|lose|cut|cutting|drop|dropping .. weight|pounds|lbs|kilos|kg .. on .. diet|keto
    lost|losing|lose|cut|cutting|drop|dropping .. weight|pounds|lbs|kilos|kg .... season|purpose|wrestling|class|gym|running|coach|cutting|fat|goal|plan|healthy|calories
    hair|face|tongue|mouth|lips .. dry|chapped|sunburn|braces|dentist|spicy
    face .. hot|red|flushed .. sun|running|practice|run|embarrassed
    had|got|have .. face .. palm|mask|paint
    arms|arm|shoulders|hands .. jello|jelly|noodles|noodle|spaghetti|rubber|toast|dead|cooked|fried|lead|mush|pudding|heavy|shaky .... pushups|pullups|dips|workout|lift|lifting|gym|swim|swimming|rowing|climbing|planks|curls|bench|burpees|carrying|moving
    legs|knees|thighs|quads|feet .. heavy|dead|jelly|wobbly|weak|shaky|tired|burning|toast|rubber .. run|running|squats|leg|practice|sprints|conditioning|lunges|hills|yesterday|training|skiing|match|game|jumps|stairs|bike|race|tournament|plyos
    knees|knee|back|neck|hips|ankles|ankle .. creak|creaks|crack|cracks|click|clicks|pop|pops|stiff|tight|sore|achy
    balance .. drill|drills|board|beam|exercise|exercises|work|pad|training|better|good|improved|delivery|bike
    off balance .. throw|throwing|swing|pitch|delivery|release|landing|shot
    walk|walked|walks|walking .. batter|batters|runs|off|dog|home|school|class|NUM
    words|speech .. coach|class|pregame|wedding|motivational|pep|long|gave|kind|wise
    eye|eyes .. on|ball|tired|test|doctor|contact|contacts|black|peeled|closed|open|dry|itchy|watery|glasses|sun
    seeing|see|saw .. ball|pitches|ball|it well|good|better|clear
    fainted|fainting .. kid|girl|boy|player|teammate|classmate
    room|head .. spinning .. numbers|plays|signs|info|homework
    collapsed|collapse .. in|into|on|onto .. bed|couch|sofa|chair|standings|second|ninth
    locked|stuck .. out|in|inside|traffic|car|house|gym|locker|lobby|elevator
    snap|snapped|snaps .. picture|photo|throw|at|towel|band|gum|fingers|at .. sister|brother|mom|coach|ref|me
    band|tape|strap|string|lace|cord .. snapped|broke|ripped|tore|popped|snaps
    click|clicked|clicks .. right|with|together|mechanics|finally|well|team|it all|everything|timing|delivery
    something|it|everything|things|mechanics|timing|swing .. clicked .. finally|today|mechanics|timing|delivery|well
    dead lift|lifts|weight|heat|tired|arms|asleep
    lump|bump|bruise .. shin|leg|knee|thigh|hip|forehead|toe
    weather|season|rain|coach|work|travel .. broke|broken|interrupted|killed|ruined|wrecked .. plan|schedule|rhythm|routine|training
    at no point .. pop|slip|hurt|numb|tingle|swell
    glad|happy|relieved .. didnt|not|no|nothing .. fall|fell|slip|pop|hurt
    almost|nearly|afraid .. fall|fell|tripped|slipped .. but .. good|caught|fine|didnt|ok|well
    fall asleep|behind|in|apart|for|off|break|semester|ball
    fell .. love|asleep|behind|apart|silent|short|flat|laughing
    slept|sleep .. wrong|weird|funny .. neck|its|but .. gone|fine|ok
    hangs|hanging|hang .. low|out|around|tough|with|time|up
    shock .. win|loss|news|result|score|trade
    cracked|crack .. smile|joke|jokes|up|open|beer|whip|code|top
    hit|stubbed|jammed|broke|hurt .. pinky|big|little|small toe|toes .. on|against|in|into
    pinky|big|little|small toe|toes
    hit .. by inspiration|nostalgia|reality|homework|allergies|boredom|realization|bill|truth
    quit|stop asking|complaining|whining|worrying|bugging|nagging|playing|smoking|texting|lying|yelling
    popped .. tire|tyre|flat|bike|ball
    feel|feels|felt weak .. math|science|school|class|english|history|knees|butterflies|love
    wanna|want|could|might|almost|gonna|would barf|puke|vomit .. lol|ate|much|food|gross|smell|thinking|class|nervous|exam|laughing
    out of breath .. after|from .. hill|run|stairs|sprint|race|set|rally|laps|warmup .. but|recovered|soon|normal|quickly
    knee|ankle|shin|toe|foot|hip .. swollen|swelling|puffy|bruised|fat .. sliding|kick|kicked|bug|sprain|sprained|twisted|turf|jump|jumps|landing|knock
    fast|racing|pounding .. before .. match|game|meet|race|serve
    heart .. fast|racing|pounding|quick .. before|during|after .. match|game|meet|race|serve|run|sprint|sprints
    nervous|excited|scared|thrilled .. heart .. fast|racing|pounding|quick
    arm|shoulder|body feels|feel|felt .. free|loose|good|nice .. and .. warm|loose
    pins .. bowling|knocked|strike|map
    ice|iced|icing .. after|throwing|practice|game|always|usual|routine|minutes
    pumped|stoked|hyped|psyched .. up|for|game|about
    hurting|hurt .. myself .. again|sliding|lifting|throwing|worse|more|further|playing|trying
    hurt|hurting|hurts .. team|chances|pride|ego|feelings|standings|us
    cutting|cut myself .. shaving|cooking|kitchen|slack|off|short|knife|paper|some
    harm|harming .. no|foul|team
    disappear .. from|into|when|work|zone
    pointless|no point .. arguing|throwing|practice|warming|rushing|stretching|hurrying|in rushing
    drilled|grilled|quizzed|tested|schooled on
    chest|face|shin|mouth protector|guard|mask
    knees .. weak arms .. heavy
    lights out .. at|by|early|pitching|performance|stuff|tonight|relief|NUM
    ill|will|would tell|let|report|say .. if
    pain|soreness|swelling|tightness .. left me|entirely|completely
    happy|pleased|satisfied|content|good .. with .. arm|shoulder|elbow|hand|progress
    became|becoming|got|getting|gets|is|feels stronger|strong|better|looser|freer|easier
    hand|hands|arm|fingers|shoulder|elbow|joint|finger is|are|feels|feel|was|were|seems ok|okay|fine|good|steady|stable|normal|strong|great|well|fresh|happy|quiet|calm
    slept|sleep|sleeping|lay|lie on .. other|left|right|back|good|stomach side
    movie|film|show|book|game|exam|exams|excited|nervous|coffee|caffeine|heat|baby .. couldnt|cant|didnt|not sleep
    couldnt|cant|didnt|not sleep .. movie|film|exam|exams|excited|nervous|coffee|caffeine|heat|hot|baby|noise|noisy|jetlag|jetlagged|thinking
    finger|toe|thumb .. jammed|stubbed|broke .. year|years|ago|season
    dropped .. keys|phone .. drain|toilet|car|couch|somewhere|sink|mud|water|ground
    cant|couldnt do the|that|this|one .. with|one|ball|band|because|exercise|move
    arm|shoulder|elbow|it feels|feel|felt|is|was like .. cannon|rocket|hose|whip|bucks|gun|rifle|laser|missile|machine|new|butter|silk|rubber|bazooka|catapult|beast|champ
    pass|passing|passed|passes out in|on .. bed|couch|bus|sofa|car|class|lecture|floor
    popped|pop|cracked|crack|cracking|popping|pops my|the knuckles|back|neck|toes|hips|ankles
    blister|zit|pimple|balloon|bubble|blisters .. popped|burst|broke|open
    blister|blisters .. DIGIT|HANDS .. popped|burst|broke|open|ripped
    heart|pressure|thyroid|allergy|acne|asthma|adhd|birth|vitamin tablet|tablets|pill|pills|meds|medicine|medication .. every|each|daily .. morning|day|night|evening
    take|takes|took .. heart|pressure|thyroid|allergy|acne|asthma|adhd|vitamin .. tablet|tablets|pill|pills|meds|medicine .. every|each|daily .. morning|day|night
    legs|leg|feet .. heavy|tired|sore .... walk|hike|hiking|ride|day|match|game|session|training
    shook off|hands
    got|get|getting smoked|drilled|killed|rocked|roasted|cooked|owned|destroyed in|at|by|on .. fantasy|cards|chess|madden|fifa|test|exam|quiz|pong|ping|poker|argument|debate|2k
    stomach|head|back|tummy|cramps hurts|hurt|ache|aches .. period|ate|food|crying|laughing|sun|chair|bus|reading
    my arm|shoulder got|gets|was|is tired .. end|late|after|toward|towards|by
    arm|shoulder|elbow is|was|are|seems .. coming along|nicely|well|around
    knees|knee|hips|back|ankles gave|gives|give .. me .. trouble|problems|grief|issues
    javelin|ball|discus|shot|spear|throw|hammer landed|lands|hit .. flat|well|short|far|long|badly|outside|ground
    run up|runup|start|finish|serve|swing|landing|takeoff|approach|kick|backhand|release BE weak|sloppy|slow|bad
    lift|elevator|escalator .. out of order|broken|stuck|took
    took|take|taking|used|use|climbed|up the|some|my stairs|steps
    cold .. gone|left|cleared|out .. chest
    clicks|click|clicking|pops|cracks|creaks .. now and then|again
    years|ever|always|decades|since .. click|clicks|clicked|pop|pops|crack|cracks
    cold|chilly|freezing outside|out .. but .. arm|arms|shoulder|body warm|good|loose
    arms|arm warm
    feel|feels|felt .. muscle|muscles|stretch|work|working .. in|at .. back|rear|behind .. good|nice|right
    feel|feels|felt .. in|at|on .. back of .. shoulder|arm
    not|doesnt|didnt|dont|never hurt|hurts|ache .. when|if|while|during .. lift|raise|throw|reach|push|pull
    hand|hands|arm|elbow on|in .. table|wall|hip|hips|knee|desk|band|pocket|pockets
    makes|made|making no|any|less|some noise|sound|noises|sounds
    physio|doctor|trainer|therapist|coach|surgeon|he|she pressed|pushed|checked|looked|tested|touched|massaged|stretched|examined .. PART
    numbing injection|shot|cream|spray|gel
    grey|gray|white|blue|dark .. morning|sky|day|evening|clouds
    stiffer|tighter|shorter|smaller than .. other|left|right .. always|always|usual|years
    not|doesnt|didnt|never|longer|stopped come|comes|coming|go|goes|pop|pops|popping|slip|slips|slipping out .. anymore|again|now
    dead arm .. season|szn|over|past|gone|behind
    soft|good|quick|sure|steady|great|strong hands|hand
    hit the|a post|crossbar|bar|target|net|goal|rim .. times|twice|match|game|shot|once
    ball hit the post|crossbar|net|rim|ground|wall|tape
    bus|car|train|plane hit a|the deer|curb|bump|bird|traffic
    bruised ego|pride|feelings
    ego|pride .. bruised
    tied|tie|tying .. knot|knots
    knot .. in|on .. band|rope|laces|string
    gave|gives|giving|give .. no .. trouble|problems|issues|grief
    PART moves|move|moved|moving .. freely|well|fine|good|easily|smoothly|better|normally
    hands|hand|fingers .. smell|smells|sticky|dirty|chalky|dry|chapped
    hand|hands|arm|arms|fingers .. scratches|scratch|scratched|blister|blisters|callus|calluses|tattoo|freckles|hair|sunburn|bites
    coffee|caffeine|espresso|preworkout|nervous|nerves|cold|hungry ... hands|hand .. shaking|shaky|shake|trembling
    no appetite for
    band|tube|elastic|cable|spring|rope .. too|is|was weak|loose|light|strong|heavy|stiff
    i dropped the bat .. after|and|ran
    face when im with you
    warm and supple|loose|ready|relaxed|good
    phone|laptop|glasses|bat|chair|glass|toy|cup|plate|watch|window|racket|screen|mirror|lamp|bike|car .... broke|cracked|smashed it
    lights|light|screen|power|tv|gym|room|computer|scoreboard|stadium .. blacked|black|went|going|knocked out|dark|black
    hit|threw|throw|kicked|bounced .. wall|fence|post|backboard .. with .. ball|balls
    ball|throw|balls .. hit .. wall|fence|post|backboard
    let|letting .. ball|bar|weight|javelin|band fall|drop|go
    dog|cat|baby|kid .. licked|bit|scratched|held|kissed .. hand|hands|arm|fingers
    sunburn|tan|freckles|tattoo|rash|mosquito .. on .. shoulder|shoulders|arm|arms|hand|hands
    shoulder|shoulders|arm|arms .. sunburn|sunburned|sunburnt|tan
    roof|tap|pipe|car|boat|tent|bottle|hip .. leaking|leaks|leak
    trouble|problems|problem|issue|issues with .. car|homework|computer|phone|wifi|band|school|work|teacher|math|parking|bus
    chest measurement|size|strap|hair
    pricked|poked .. finger|thumb .. rose|needle|thorn|blood|test
    into .. bones
    feels|feel|feeling|felt like .. new money|million|bucks|gold|champ|superman|hulk
    dip|hitch|drop|loop .. in .. delivery|swing|motion|throw|stroke|form
    in .. arm .. feel|have power|strength
    left|right hand|arm is|was dominant|lefty|stronger|weaker|smaller
    left handed|hander
    out|lost|played in .. first|second|third|final
    happy|glad .. to say|report
    bumped into .. friend|coach|teacher|teammate|someone|ex|neighbor|neighbour
    losing|lost my hair|voice|mind|way|touch|temper|patience|appetite|train|wallet|keys|phone
    ate dirt stealing|sliding
    lost .. balance .. on .. ball|board|one|bosu|beam
    numb from|after .. loss|game|news|movie|breakup|shock|lecture|class|exam
    didnt|doesnt|never|not|wasnt|isnt go|goes|going|come|comes|coming|pop|slip|slide|popping|slipping out
    did not|never go|come|pop|slip|slide out
    legs|leg .. got|get|getting|gets|felt|feel|were heavy .. end|late|after|toward|last|finish|minutes
    braces|dentist|spicy|pizza ... mouth|tongue|lip|lips|cheek|gums
    arm|shoulder|elbow .. sore .. yesterday .. but .. gone|fine|better|ok|good
    hands|feet|fingers|toes were|was|got cold|freezing|frozen .. at|in|on|outside|waiting .. bus|stop|stadium|morning|game|field|walk
    doctor .. listened|checked .. heart
    hands .. warm
    fingers|hands|hand are|is|feel|feels warm
    hyped|excited|nervous|pumped ... sleep
    sleep .. hyped|excited|nervous|pumped|thinking
    hurt nobody|noone|him|her|them
    cold hands always|usually|winter
    hands .. always cold
    close|closed|open|opened|squeeze|squeezed the|my hand|fist .. no|without|problem|fine|well
    nothing .. cant|cannot live|handle|manage|deal with
    ball .. out .. of .. glove|mitt|bounds|park|reach|play
    lets go|roll|do|get|play|eat|see
    hit|run over .. by .. bus|truck|train|ton .. of homework|work|school|exams|bricks
    feel|feels|felt like .. hit|run .. bus|truck|train
    blacked out the windows|name|names|screen
    fell off my|the diet|plan|schedule|routine|wagon
    werent|wasnt|not on|in it
    door|jar|lid|window|drawer .... spring|stuck|broken|jammed|rusty|locked|frozen
    struck out .. looking|swinging
    workout|practice|session|set|lift was|is sick
    hit a personal|new best|record|high
    gonna|going|about to .. crash .. after|tonight|now|early|soon
    dislocated .. nah|nope|no
    control of .. arm|ball|hand|shoulder
    two hands .. hold|grip|bat|stick|handle
    hold|grip|swing .. with .. two|both hands
    paper cut
    cut .. finger .. paper
    shoulder|arm|elbow is|was|feels super|really|so|kinda|little tight .. but .. normal|usual|fine|ok|good
    shoulder|arm was|is|felt tired .. but|not .. painful|pain|hurt|sore|fine|good
    moved|moves|moving .. without pain|catching|clicking|trouble|problem
    hit on by|me|him|her
    fell into|for|in .. conversation|habit|trap|routine|fake|line|pattern|step|sleep
    fell ass backwards
    cant|couldnt throw shade|money
    cant|couldnt push .. luck
    cant|couldnt hold a .. note|tune|candle|conversation|grudge
    cant|couldnt lift the mood|spirits|curse
    heart is|was|beats|beating .. normal|fine|regular|good|steady|strong|calm
    breathe|breath .. laughing|laughter|giggling
    cant|couldnt|cannot .. lift|open|move|close|budge .. door|jar|lid|window|drawer|bottle .... stuck|broken|jammed|spring|locked|rusty|frozen|glued
    was|were|got hit with .. bill|fine|homework|work|news
    was|were|is|got hit by .. delay|flu|covid|rain|weather|traffic|nostalgia|strike
    i hit puberty|mute|send|play|snooze|ctrl
    threw up .. sign|peace|hand|hands|zeros|three|two
    flipped|flip .. out|off|lineup|script|channel|page|switch|coin|burger
    burning up .. hoodie|sun|heat|here|gym|car|bus|oven
    car|engine|truck|bike|laptop|phone wouldnt|wont|didnt|doesnt start|turn|charge
    stitch .. in .. side
    wind .. out .. sails
    struck by .. how|idea|beauty
    wrist watch
    flying colours|colors
    pills|tablets|meds .. for .. gout|heart|blood|allergy|acne|thyroid|asthma|diabetes
    hit the deck|mall|beach|road|town|snooze|lights
    smashed my pr|goals|goal|record|exam
    crashed .. party|wedding|frat|house|place|couch
    got lit .. tailgate|party|bar|birthday|wedding
    pass|passed|passing out .. snacks|flyers|papers|candy|invites|water|balls
    wrecked .. gpa|schedule|diet|sleep|plans|mood
    wrecked from .. leg|lift|practice|workout|squats
    weak contact
    fingers crossed
    arm|shoulder is|was|feels .. autopilot|itself|cruise
    arm|hand .. in|on .. pocket|pockets|bucket|cooler
    burned|burnt .. hand|arm|finger .. grill|oven|stove|iron|rope|pan .. little|bit|slightly
    ball|line|shot fell on|in|over .. line|court|fence
    cant|couldnt|cannot .. lift NUM kilos|kg|lbs|pounds|pound
    weak for chocolate|pizza|sweets|you|him|her
    finger .. has|had ring
    skin .. of .. hand|hands .. hard|rough|dry|tough
    black nails|hands|fingers .. work|garage|paint|polish|grease|oil
    ran into .. traffic|locker|friend|coach|ex|teacher|wall|him|her|problem|problems .. paper|homework|essay|code|by
    tripped over .. but|nothing|words
    breathe|breath .. mask|smoke|pool|underwater|humidity|altitude|dust|corset|costume
    feel|feeling for the|my|a .. technique|shot|release|timing|ball|water|game|rhythm|slider|spin
    cant|couldnt throw .. ocean|strike|strikes|water|barn
    shook|shaking|shaky .. planks|plank|pushups|holds|squats
    planks|plank|pushups|pullups|squats ... shook|shaking|shaky|shake
    hand|hands cramp|cramped|cramps .. writing|typing|gaming
    sore|tired|stiff .. digging|gardening|mowing|painting|moving|carrying|shoveling
    hardly|barely lift .. feet|legs|eyes
    sleeve|shirt|jersey .. on .. nail|hook|fence|branch
    pain is|has gone .. sleep|slept .. well|good
    chest of drawers
    slow to warm
    drilled by a|the midterm|exam|test
    numb|tingly .. from .. cleats|shoes|boots|skates|sitting|standing
    burned|burnt out on
    cant|couldnt|didnt sleep .. caffeine|coffee|excited|nervous|hot|noise
    lost the ball in .. sun|lights
    in hospital|er .. visit|see|uncle|aunt|grandma|friend|work|shift
    crunchy|clicky|creaky|poppy .. usual|always|normal
"""
