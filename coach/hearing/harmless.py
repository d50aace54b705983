"""Everyday phrases that hold a warning word and mean nothing, and known causes that only soften.

Law: data only. A phrase in HARMLESS takes its words out of the hearing of signs; a cause in
CAUSES turns a stop into a question, never into silence. May be added to with a clinician's hand.
"""

from __future__ import annotations

from typing import Final

HARMLESS: Final = """
    pop time|up|ups|fly|flies|quiz|music|tart|tarts|star|culture|corn|off
    popped up|some|a|two|in|over|an|my|her|his|open|the|advil|ibuprofen|into|by|bottle
    POP up to|over
    lollipop|popcorn|popsicle
    good|more|great|nice|extra|some|little|real|late|enough|serious|same|had pop on|to|in|tonight|today
    had pop
    pop on|in|to .. fastball|ball|slider|glove|bat|pitches|mitt|heater|it|heat|serve
    fastball|ball|slider|glove|bat|pitches|mitt|heater|catchers|cutter|curve|serve .. pop|popped|popping
    glove|mitt .. pop|popped|popping|popp
    popping .. mitt|glove|tags|bottles|wheelie|up|by|over|in
    snap throw|throws|pick|chat|chats|chatted|down|count|dragon|back|peas|judgment|decision|out
    snapchat|snapchatted
    snapped .. streak|picture|pic|photo|bat|string|strings|slump|band|bands|losing|lace|at|out|cable
    bat|band|string|strings|lace|laces|strap|stick|racket|cable|pole|tube|racquet .. snapped|snap|broke|ripped|tore|broken|cracked
    wrist snap|snaps
    snap on|at .. release|finish|ball|curve|curveball|breaking
    good|nice|sharp|late|crisp snap .. on|ball|curve|breaking|today
    crack of|at bat|dawn|it
    cracked .. joke|jokes|screen|phone|top|starting|egg|eggs|back|neck|knuckles|smile|me|open|lineup
    cracking jokes|up|me
    cracks me up
    crack open|cracked open
    drop set|sets|step|steps|down|ball|balls|shot|shots|off|in|by|kick|to|back|third|serve|pass|punt|jump|weights|landing
    dropped down|to|back|off|by|sets|out|from|set|a|third|in|ball|pop|fly|shot|serve|his|her|arm slot
    dropped .. to|down .. band|weight|lb|lbs|kg|lighter|light|dumbbell
    dropped .. class|weight|fly|pass|catch|line|easy|game|match|points|point|ball|mic|course|grade|hints|series|lb|lbs|set|sets|reps
    drops in|of|temperature
    dropping .. weight|class|down|dimes|bombs|by|off|in|knowledge|hints|temperature|temps|load|lb|lbs
    eye drops
    cough drop|drops
    arm slot
    slip|slipped .. mind|tongue|notes|up|away|past|through|by|into|in
    slipped my mind
    permission|pink|hall|pay slip
    slip of
    slide step|steps|show|shows|board|rule|over|deck|tackle
    slid into|in|home|headfirst|safe|feet|past|under|third|second|across|sideways
    sliding drills|practice|scale|door|shorts|mitt|board
    wall|floor|back|blade|shoulder slides|slide
    shift change|work|tomorrow|tonight|started|supervisor|today|lead|manager|starts|ended|ran|at
    night|day|late|early|double|long|work|closing|morning|swing|evening|extra|graveyard shift|shifts
    infield|defensive shift
    shift|shifted .. weight|gears|schedule|focus|practice|meeting|time|appointment|work
    weight shift
    shifts at
    cold tub|plunge|plunged|shower|front|brew|snap|morning|water|out|outside|weather|pack|packs|pizza|drink|beer|start|one|day|night|air|gym|gel|spray|calling|called|feet|turkey|rain|weights|bar|temps|wind|medicine|bath|therapy|compress|game|practice|pool|room|arms
    cold in here|gym|garage|today|tonight
    BE cold outside|out|today|here|tonight
    weather|gym|garage|day|morning|room|pool|water|outside|field|cage|gym|practice|it|house|basement|rink|wind .. was|is|so|too|super|freezing|really cold|freezing|icy
    have|had|got|catching|caught|getting|fighting|head|common|slight a cold
    common|head cold
    ice cold drink|water
    ice pack|packs|bag|bath|cream|tea|water|hockey|cup|massage|machine|bucket|maker|breaker
    cool down|downs|off|beans|story|thanks|with|new|drill|bro|man|sounds
    it|thats|thts|all|be|im|was cool
    freezing outside|out|rain|cold out
    blue band|bands|ball|sky|jersey|jays|light|tape|dumbbell|moon|one|plyo|weight|tube|lights|cord|sheet|line|team|belt
    light|dark|navy|the blue band|tube|one|cord|ball
    white|purple|grey|gray|red|black|green|yellow|orange band|bands|ball|jersey|belt|tube|plyo|one|sox|weight|cord|line|board|team|squad|flag|card|zone|bull|meat|velvet|hot|kettlebell
    to|on|use|used|using|with|color|colour|switched purple|red|blue|grey|gray|white|yellow|green|black
    pale ale
    out of the blue
    once blue moon
    feeling|felt blue
    feel|feeling pumped|swole
    weak effort|contact|side|ground|grounder|groundball|spot|spots|point|points|hand|sauce|link|excuse|serve|pop|fly|coffee|signal|wifi|attempt|joke|schedule|hitters|pitch|day|performance|showing|links|opponent|team|foot|throw|throws|stuff
    weaknesses
    weakness .. my|is|was my|in my .. backhand|game|serve|defense|hitting|pizza|chocolate
    kryptonite
    bump .. in|of .. weight|reps|road|volume|load|mileage|schedule|up
    bump up|to|it|set|pass
    bump to
    goose|speed|fist bump|bumps|bumped
    bumped up|to|it|the|from .. weight|reps|band|lb|kg|next|up
    bumped up
    lump sum
    fell asleep|behind|short|off the|apart|in love|through|for|sick|out of|into|down 0|back on|a day|between
    fell off .. table|wagon|routine|schedule|pace|track|plan
    fell .. behind .. schedule|count|work
    fall ball|season|semester|league|break|camp|practice|sports|off|workouts|classes|training|asleep|over laughing|game|scrimmage|intersquad|baseball|softball|schedule
    this|last|in|next|the|early|until|all fall
    falls on|under|short .. monday|tuesday|wednesday|thursday|friday|saturday|sunday|weekend
    fell in|on .. count|friday|monday|tuesday|sunday|saturday|wednesday|thursday
    chest press|day|workout|fly|flies|flyes|pass|passes|stretch|stretches|pump|height|protector|high|out|up|supported|opener|bump|exercises|expansion|dips|routine|level|cold|freezer
    chest feels|felt|is|was open|good|great|strong|pumped|stretched
    stretch|stretched|open|opened|opening .. chest
    hit .. chest
    trained|worked|did|hit chest
    chest .. sore|soreness .. from|after|yesterday .. press|bench|workout|lifting|pushups|day|pressing|gym|flies
    chest|pecs .. sore|tight .. bench|pushups|press|lifting|workout|dips
    pump .. chest
    open the chest
    breath out|in as|through|on|of fresh|work|control|holds
    breathe|breathing|breath .. lift|raise|lower|exercise|exercises|drill|drills|cue|cues|work|technique
    breath out as
    deep breaths|breath .. and|before|helped|then
    took .. deep breath|breaths
    out of breath|winded|gassed|puffed .. sprints|running|conditioning|cardio|run|suicides|laps|poles|drill|drills|hills|swim|burpees
    sprints|running|conditioning|cardio|run|suicides|laps|poles|hills|burpees .. winded|breath|gassed|gasping|sucking|panting
    ran|did|running|run .. suicides|suicide
    suicides|suicide sprints|drill|drills|today|at|run|after|for|were|squeeze
    suicide squeeze
    night game|games|shift|match|practice|owl|out|off|class|school|before|light|lights|time|routine
    good night
    night was
    hot today|outside|out|day|dog|dogs|yoga|tub|shower|hitter|bat|start|streak|weather|pack|gym|in here|pad|water|corner|hands|stove|take|mess|girl|spring|room|towel|coffee
    it|so|super|really|too|was|weather|gym|sun|heat hot .. out|outside|today|here
    it|was super|so|really|too hot
    heat pack|pad|wave|was|index|rub|wrap
    arm|arms|body|shoulder .. warm|hot|loose .. up|ready|quick|fast
    arm|shoulder|body|it|joint .. warmed|warm up
    BE warm .. after|from .. warm|exercise|exercises|bands
    nice and warm|loose
    warm up|ups|down|upped|today|out|outside|weather|water|day|enough|shower|milk
    warming up
    hot|burning .. glove|pants
    hit well|weights|gym|bombs|spots|my|for|off|a|batting|in|it|some|leadoff|three|two|dingers|bp|all|our|today|both|tees|target|targets|snooze|leg|legs|95|90|85|88|100|well
    hit ball|balls|weights|gym|spots|cages|target|homer|homers|snooze|double|triple|single|pr|books|showers|road|sack|wall .. gym|cages|today|good|well|far|practice|workout|later|early
    hit the wall|gym|weights|bed|sack|books|road|showers|spot|zone|target|hay|cages|pool|trails|snooze|floor dancing
    hit a|an|my|some .. wall|pr|plateau|milestone|bomb|target|goal|ceiling|double|homer|single|spots|season
    hits different
    got hit around
    got .. shelled|lit up|rocked|shelled
    gave up .. hit|hits|runs|homer|double|bombs
    crash course|early|pad|pads|diet|out
    crashed early|at|on .. couch|bed|sofa|hard|9|10|11|8|home|friends|out
    crashed .. couch|early|bed
    crash in
    computer|laptop|app|phone|site .. crashed|crash
    loose balls|ball|change|ends|end|fit|screw|shirt|grip|clothes|cannon|and easy|today|goose|leaf
    BE|feel|feels|felt|arm|shoulder|stay|stayed|staying|got|nice|good|pretty|real loose .. and|good|warm|relaxed|easy|free|today|ready|after .. good|easy|ready|warm|relaxed|free|throw|warm|stretch|warmup
    felt|feels|feel|feeling|arm|shoulder .. nice|good|great|really|super and|pretty loose
    felt|feels|feeling|arm|shoulder|arm .. loose .. good|great|ready|today|warm|relaxed|free|fresh
    loosened|loosen|loosens .. up
    broke .. sweat|record|personal|bat|phone|racket|string|curfew|pr|tie|news|up|even|in|streak|serve|glove
    broken bat|record|string|phone|sleep|racket
    broke up|even|in|down
    torn between
    tore it up|up|through|open
    tore .. jersey|pants|shirt|sleeve|bag|glove|jeans|ticket|cover|grip|band|tape
    tearing it up
    ripped .. jersey|pants|shirt|bag|glove|jeans|single|double|off|into|one|balls|line|it|grip|backhand|forehand|sleeve|liner
    ripped .. down|up .. line
    let|lets|letting it rip
    rip city
    got|getting|looking|look ripped|swole|shredded|jacked
    tear up|into
    numbers|number
    mind|brain .. numbing|numb
    numbing cream|gel|spray|boring
    numbingly
    comfortably numb
    butt|bum|ass .. asleep|numb
    electric atmosphere|crowd|game|scooter|bike|stuff|night|feel|vibe|fence|toothbrush|heating|pad|blanket|company|bill
    static stretch|stretches|stretching|hold|holds
    buzz cut|beater|lightyear|word
    buzzed about|hair|head|in|me|by
    phone|door|alarm|doorbell|mosquito|crowd|place|bee .. buzzed|buzzing|buzz|buzzes|buzzer
    buzzer beater
    buzzing .. crowd|team|win
    lightning delay|storm|fast|mcqueen|strike|bolt|bolts|out|cancelled|canceled|round|warning
    shock absorber|value|therapy
    stop tingles
    dead last|lift|lifts|tired|lifted|arm period|bug|bugs|ball|line|bolt|batting|battery|center|set|week|time|heat|hang|sore|hangs|even|day|leg|legs|serious|on|phone|weight lift
    phone|battery|car|laptop|team|crowd|headphones|app|watch|airpods .. dead|died
    PART .. dead tired
    dead tired|sore
    tired|sore|jelly PART
    BE|feel|feels|felt dead .. lift|legs|leg|squats|from|after|practice
    im|i am|we were|was|totally|so dead
    killing it|them|me|time|my legs|my abs|my quads
    killed it|me|them|that
    BE killing me
    set|workout|drill|heat|band|bands|exercise|homework|school|schedule|coach|class|plank|squats|this|these|commute|alarm .. killing|kill|killed me|us|my
    killer workout|set|abs|session|practice
    kill serve|time|zone|shot|it
    kills per|in|today|last|and
    stick shift
    hand eye
    hand off|offs|sanitizer|washing|cream
    thumbs up
    cut weight|down|back|practice|it short|fastball|off|the|my hair|class|out|from|short|set
    cutting weight|down|back|carbs
    cut .. short|myself some|shaving|grass
    cut|cutting myself|finger .. shaving|cooking|slack|knife|knife|kitchen|on
    made .. cut
    head cold|coach|start|out|first|up|home
    race|racing heart .. sprint|sprints|after|from|run|cardio|conditioning|race
    heart .. racing|pounding|race|rate .. sprints|sprint|run|running|conditioning|cardio|laps|burpees|intervals|nervous|excited|nerves|game|pitch
    heart rate
    put .. heart into
    passed out .. early|asleep|couch|bed|9|10|8|11|on|at|right|hard|immediately|before|by|cold|exhausted|watching|after .. dinner|practice|game
    passed out early|asleep|on|at|by|right|watching|exhausted|flyers|hard|around|before
    sick of|day|game|play|win|burn|pitch|shot|catch|movement|slider|curve|stuff|throw|nasty
    homesick|love sick
    thats|so|pretty|was|looked|looking|its sick
    sick .. today|bro .. slider|curve|throw|movement
    throwing up .. zone|in zone|high|in the
    throwing|threw|throw up .. high|hill|in|to|numbers|zeros|goose|zeroes|against|from|over
    threw up .. zone|zeros|zeroes|goose|numbers|shot|prayer|hill|brick|high
    cabin|spring|jungle|football|march|playoff|baseball|tournament|hay|race fever|fevers
    football fever
    fever dream|pitch
    flew|flu shot|jab|vaccine
    trip to|home|with|out|planned|is|this|next
    road|field|family|team|long|bus|day|weekend|school|business|ski|camping|fishing trip
    tripped me out|up
    tripped .. breaker|alarm|fuse
    tripping balls|bro
    on|the|their|our boards
    board game|games
    stairs workout|sprints|today|climb
    ran stairs|stadiums|the stairs|into .. friend|traffic|trouble|coach|buddy|time|old|teacher
    ran into friend|traffic|trouble|coach|old|teacher
    ran over|long|late|out of|poles|the bases
    into coach|friend|teacher
    tackled .. homework|chores|problem|yard|list|project|laundry|it|hill
    smashed .. burger|burgers|workout|it|set|record|pr|buffet|pizza|that|serve|serves|ball|winner|spikes|homer|goals|records|reps
    smashed it|that|them|this
    crushed .. it|workout|set|that|ball|homer|test|exam|pr|burger|them|one|buffet|reps|session
    crushed|crushing|nailed|drilled|hammered|slammed it|that|them|all|every|my spots|homework|exam|test|form|this|one
    nailed .. set|exercise|spots|form|landing|it|them|test|exam|drill|reps
    drilled .. free|shot|shots|bunts|fundamentals|three|threes|winner
    slammed with|at work|schedule|homework
    slammed .. homework|work|door|schedule|balls|ball|med|phone
    banged out|it|up on
    banged out .. reps|sets|exercises|them|work
    knocked out .. reps|sets|exercises|workout|them|homework|all|rehab|session
    knocked it out|out
    knocked .. out of park|round|tournament|playoffs
    knocked out .. early|cold|asleep|of|in
    cleaned up|the|my room
    hammered out|down|curls
    checked in|out|email|my|the|with|on|off|box|swing
    check in|swing|box
    piled on|up .. homework|runs|points|work
    homework|work|laundry .. piled|pile
    leveled|levelled up
    thrown out|off|for a|together|in .. game|base|class
    kicked off|out|it|back|butt|ass|in|my butt|my ass
    kicked .. butt|ass|ball|field|goal|habit|pen
    kick .. butt|ass
    run over to
    stuck .. traffic|at|in|landing|with|work|meeting|bus|class|it|elevator|airport
    pressure situation|game|situations|washer|cooker|moments|point|points|from
    under|no|lot of|lots of pressure
    tight game|match|schedule|ends|end|rope|hamstrings|hip|hips|window|score|deadline|race|series|on time|shirt
    money|schedule|time .. tight
    elbow grease|room|bump|pad|sleeve|up cue|drill|height|slot
    elbow .. up|high .. cue|position
    tip of cap|off|toe
    the tip|tips
    ring finger
    boxing|championship|class|engagement ring|rings
    ring bell|rope
    bug bite|bites|bitten
    bee sting
    boiling hot today|out|in
    sweats|sweating .. workout|heat|session|practice|hoodie
    sweats on|outfit|and
    sweating .. hard|buckets|workout|practice|heat|hot|ton|like
    soaked .. rain|in
    drenched .. rain
    worked|broke|working up .. sweat
    no sweat
    nasty slider|curve|curveball|stuff|changeup|breaking
    stiff competition|drink|wind
    big|huge|long|hard week
    cut by|in half
    catch up|ing up|play|with|and throw|partner|today|at|for|a|the|ball
    catching up|bullpen|bullpens|practice|drills|some|rays|flights|for|gear|a|fly|flyballs|today|warm|was
    play|played|playing|light|some|easy|long catch
    gear change
    locked in|into|down|out|up .. today|tonight|focused|dialed|in|game|win|keys|car|spot
    locked in
    lock|locked .. door|car|house|gate|core|keys|out
    jam|jams|jammed .. hitters|batters|traffic|him|them|session|packed|schedule|hitter|batter|sandwich|schedule|out|inside|to
    traffic|paper jam
    lift|lifted .. heavy|weights|legs|today|yesterday|lower|body
    lower body|half|weight|back day|back workout
    hang out|with|up|on|clean|cleans|in|time|snatch
    hanging out|with|curve|curveball|slider|changeup|breaking|from bar|in there|leg
    hung .. curveball|slider|out|changeup|curve|over|breaking
    in bad shape|good shape|great shape|shape
    get|getting|got|stay|staying back|in shape
    step up|ups|down|back|forward|in|away|1|2|3|one|two|ahead|by|on|of|off|behind
    next|first|big|one|another|each|this|drop|slide|side|cross|jab step
    broad|squat|box jump|jumps
    jumped rope|around|in|to|rope|on call|ahead|in .. pool|shower|right|weight|from|band
    jump|jumped|jumping rope|jacks|serve|ball|pass|shot|shots|rope
    rolled out|over|up|through|lats|back|with|pecs|on foam|my lats|my back
    foam|rolled|roll|rolling out|rolled|roller|roll|rolling
    roll|rolled|rolling .. ankle
    ankle .. rolled|sprained|twisted|roll
    ball .. slipped|slipping|slips|slipped|slick|wet
    grip|foot|band|bar|hand|hands|handle|towel|shoe|shoes|cleats|bat|strap|tape|sleeve|headband|racket|racquet|mat .. slipped|slipping|slips|slides|slid|slip .. off|bit|twice|sweat|sweaty|rain|wet|handle|ball|mud|bar|band
    band|foot|bar|towel|strap|ball|shoe|sleeve|cleat|cleats|mat|brace|bat slipped|slips|slid|slipping|slides|slipped
    sweaty|wet|slick grip|hands|hand
    moved up|to|in|on|house|houses|apartments|furniture|practice|weight|from|into|back|down|couch|slots|spots|schedule
    moving boxes|house|furniture|well|better|good|great|up|to|forward|right|on|day|couch|freely|houses
    giving .. it|my all|110|100
    let go .. of .. ball|early|late|job|stress
    let me|s know|go of
    blew|blow .. tire|game|save|lead|out|it|by|him|away|past|them
    blew up .. phone|tire|balloon|inning|at|on
    blew by
    nothing left in tank
    stuffy nose
    allergies|allergy
    hungover|hangover
    cough drops
    bone broth|in
    to the bone
    funny bone exercise
    head down|up|over heels
    bench press|warmer|pressed|presses
    band|bands .. heavy|heavier|tight
    weight .. heavy|heavier|light
    BE heavy .. weight|band|dumbbell|bar|ball|lb|kg
    heavy ball|balls|weight|day|week|band|workload|bag|legs|lift|lifting|bat|squats|schedule
    sinks|sank|fell|dropped off table
    changeup|curve|curveball|slider|splitter|sinker|knuckleball|pitch|pitches|serve|ball|breaking .. fell|dropped|drops|drop|dropping|falls|fall|dipped|dips|slid|sank|dives|bit
    slot|velo|velocity|speed|temp|temperature .. dropped|drop|drops|dropping|dipped|down
    era|average|rank|grades|numbers|temps .. dropped|drop|drops|fell
    dip in .. velo|performance|pool
    dip|dips .. chin|tricep|bench|today|workout|set|sets|reps|bar|in pool
    weighted dips
    tricep|bar|bench|ring|chest dips
    dead bugs
    woke|wake up .. early|late|alarm|call|at|to pee|pee|school|feeling good|good|refreshed|great|fine|rested|before|hungry|thirsty|by|for|dog|baby|naturally|at|sore|stiff|ready|happy|and went|and|today|tired|on
    woke .. pee|bathroom|drink|water|alarm|dog|baby|noise|roommate|kid|kids|storm|thunder|neighbor|neighbors|cat|phone|bathroom|hot|thirsty|dream|nightmare
    dog|baby|cat|alarm|kid|kids|roommate|noise|storm|thunder|phone|heat|neighbors|son|daughter|wife|husband|mom|dad|fire|rain|bathroom|truck|sun|party|garbage|siren|text .. woke|wakes|waking|wake|kept|keeps
    up all night .. studying|homework|gaming|working|game|paper|baby|kid|kids|project|driving|movie|movies|party|study|cramming|travel
    all night .. studying|gaming|homework|party|drive|bus|movie
    slept all night
    kept me up .. late|homework|studying|game|games
    constant|constantly .. tension|practice|rain|work|speed
    numb .. butt|bum|bleachers
    sat .. numb|asleep
    nap|napping|slept|sleep .. asleep
    fall|falling|fell|falls|half|sound|fast|was|were|still|already|be|im asleep .. early|late|at|by|on|watching|couch|around|quick|fast|before|right|during|in class|10|9|11|12|midnight|bed
    fell|fall|falling asleep
    i was asleep|fell asleep|slept
    sore|aching .. legs|leg|quads|hamstrings|glutes|abs|back
    both sides .. from|running|lifting|run
    calves .. sore|tight .. run|running|both|sprints|raises|calf
    calf raise|raises|stretch|stretches
    legs|leg .. wobbly|jelly|heavy|shaky|tired|weak|dead|sore|toast|noodles|smoked .. squats|lunges|run|running|sprints|day|workout|lifting|deadlifts|bike|hill|hills|conditioning
    squats|lunges|sprints|running|workout|deadlifts|run .. legs|leg .. wobbly|jelly|heavy|shaky|tired|weak|dead
    leg|legs day
    arms|arm .. jelly|noodles|noodle|spaghetti .. pushups|workout|pullups|swim|rowing|lifting|curls
    arms .. heavy .. lifting|both|workout
    heavy .. lifting both sides
    worried .. grades|test|exam|game|start|spot|weather
    nice|good|great|solid|crazy|sick pump
    felt|feel the|a|good|nice|some burn
    burn in .. muscle|cuff|back|lats|rear|triceps|right
    good|nice|muscle|slow burn|burning
    sun|rope|turf|carpet|razor|sunburn burn|burned|burnt
    sunburn|sunburned|sunburnt
    burned|burnt .. toast|dinner|sun|sunburn|calories|hand on|tongue|mouth
    burned calories|out of gas
    red .. sun|sunburn
    face .. red|flushed|sunburn|sunburned|sunburnt
    lip balm
    eyes red
    tired from|after|today|but|arm
    wiped .. out from|after|down|sweat|off|after
    wiped down|off|sweat
    wiped out .. exams|practice|finals|work|school|game|tired|after|week|today|from|tonight|travel
    spill .. beans|water|coffee
    spilled
    bone tired|dry|collagen
    exhausted .. late night|one|travel|exams|finals|today|game|practice|trip
    took allergy
    meds .. allergy|adhd|thyroid
    pinched nerve .. mom|dad
    nerves .. game|test|before|big
    nerve wracking|racking
    what nerve
    nervous|nerves
    pain in .. ass|butt|neck to
    pain free
    growing pains
    jaw dropping
    head over
    accident .. traffic|highway|made|late|saw
    by accident
    accidentally
    dog .. accident
    stretch .. hurts good
    hurts so good
    hurt feelings
    pool|cannonball|deck .. dove|dive|dived|diving
    dove into|in .. pool|water|work|studying|books|lake
    dive drill|drills|roll
    diving practice|board|catch|team|well|drills
    took .. spill
    bag|work|stuff|laundry|homework|schedule .. heavy
    heavy .. bag|backpack|schedule|homework
    ran .. mile|miles|track|laps|5k|poles|km
    swim|swam .. laps
    breath every|third|side
    bilateral breathing
"""

CAUSES: Final = """
    ice|iced|icing|cryo
    cold tub|pack|water|plunge|out|outside|day|morning|weather|game|wind|rain
    slept|sleep|lay|laid|lying|laying|leaned|leaning|sat|sitting|sleeping on|funny|wrong|weird
    from|after|while sleeping|sleep
    in bed
    tape|taped|taping|kt|wrap|wrapped|bandage|brace|compression
    dentist|spicy|wings|pepper|peppers|sauce
    skiing|snow|snowing|winter
    handlebars|mower|mowing|vibration
    blood pressure cuff
    backpack|bag .. strap|straps|digging
    bug|mosquito|bee|wasp|spider bite|bites|sting|bit
    stung
    mosquito|wasp|bee
    sunburn|sunburnt
    ink|marker|paint|dye|chalk|rosin|dirt|mud
    vaccine|vaccination|booster
    flu|covid|tetanus shot|jab
    nice|good|gym pump
"""

HABITS: Final = """
    like normal|usual|always
    usual|normal|habitual|always|regular
    for years
    no|without|zero pain
    painless|painlessly
    doesnt|didnt|dont hurt
    pain free
"""
