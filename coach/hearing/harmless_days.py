"""Everyday phrases of games, school, nights and home that hold a warning word and mean nothing.

Law: data only, read together with `harmless`; see there for how a line is written.
"""

from __future__ import annotations

from typing import Final

DAYS: Final = """
    dropped .. from .. team|tournament|lineup|squad|roster|varsity|rotation|list|league
    crashed|crashing|crash the boards|glass|net|party|lanes
    swollen :: schedule / river / creek / ego / head / rivers
    bored|mind|emotionally|comfortably numb
    numb mind|brain
    numb to|from losing|boredom|boring|math|homework|lectures
    game|gold|election|world|final|season|draft|transfer|dance fever
    wound :: up late / the clock / up with / up at / up in / down / my watch / tight / around / up being / up getting / up winning / up losing
    off .. chest .. with|to|coach|finally
    weak hand .. layups|layup|dribble|dribbling|shot|shots|pass|passing|drills|hitting|throws|side
    count|missed|battled|studied|studying|homework|gaming|games|working|drove|driving|talking|partying|party|coughing|outside|spots|zone|them|bus .. all night
    crashed|crashing :: hard / out / for / after
    feeling .. missing .. playoffs|game|games|season|practice|team|tournament|school|class|friends|out|it
    missing .. playoffs|game|games|season|practice|tournament|class|school|friends
    nothing in|at|on|over the front|back|side|top
    nothing in|at|on front|back|top
    crushed|crushing|nailed|nailing|drilled|hammered|slammed|smoked|smacked|pounded|banged|pounding|smacking|hammering|drilling|smoking :: it / that / them / all / every / my spots / my form / the zone / one / a homer / a double / the strike / a few / some / two / three / a ball / the form / out / through / a burger / down / the last / each
    got|we|get crushed|hammered|smoked|killed|rocked|lit|shelled|spanked .. game|inning|2|3|4|5|8|10|12|tonight|yesterday|up|them|11|7|6|9
    nailed .. set|exercise|spots|landing|test|exam|drill|reps|form|spot|runner
    drilled .. shot|shots|bunts|fundamentals|threes|winner|three|single|double|technique
    slammed .. work|schedule|homework|door|phone|with
    banged|knocked|hammered|cranked|busted|pumped out
    knocked :: out my / out the / it out / out a / out all / out of the tournament / out of the playoffs / in / a few / on wood / down 3 / out at / in two
    knocked out .. early|cold|asleep|round|tournament|playoffs|bed|9|10|reps|sets|exercises|workout|homework|rehab|session
    cleaned|clean up|my|the
    checked|check :: in / out / email / my / the / with / on / off / box / swing / that
    piled|pile .. homework|runs|points|work|laundry
    homework|work|laundry|dishes .. piled|pile|piling
    leveled|levelled|level up
    thrown :: out at / off by / for a / together / in the game / well / today / since / a ball / a baseball / yet / much / anything / 3
    got thrown out
    kicked|kick :: off / out / it / butt / ass / my butt / my ass / the habit / a ball / the ball / a goal / some / their / our / in late
    kicked .. butt|ass|ball|field|goal|habit|asses
    run over :: to / the
    stuck :: in traffic / in a meeting / at / in class / in the / with it / to / landing / it / on the bus / inside / around / out / on level / on the same / the landing / home / behind
    pressure :: situation / game / situations / washer / cooker / moments / point / points / from coach / to / is on / off / on me / cuff
    under|no|lot of|lots of|with|more|feel|feeling|felt|handle pressure
    tight :: game / match / schedule / ends / end / rope / hamstrings / hip / hips / window / score / deadline / race / series / on time / shirt / shorts / lats / quads / calves / hammy / hamstring / spin / zone / squeeze / lead
    hamstrings|hips|hip|quads|calves|calf|back|lats|hammy|money|schedule|time|hamstring|glutes|neck|lat .. tight|tightness
    bit|little tight
    elbow :: grease / room / bump / pad / pads / sleeve / up cue / drill / height / slot / extension / in / tucked / high / up / spiral / lead
    tip :: of the cap / off / toe / from coach / top
    tips
    boxing|championship|class|engagement|wedding ring|rings
    bug|mosquito bite|bites
    bee sting
    sweats|sweating|sweat .. workout|heat|session|practice|hoodie|buckets|hard|hot|humidity|gym|sauna|today
    worked|broke|working|break|good|no .. sweat
    soaked|drenched|wet .. rain|pool|water|storm|sprinkler|rained
    rain|storm|sprinkler|downpour .. soaked|drenched|wet|cold
    nasty slider|curve|curveball|stuff|changeup|breaking
    stiff :: competition / breeze / was
    catch :: up / play / with / and throw / partner / today / at / for / ball / phrase / warmups
    catching :: up / bullpen / bullpens / practice / drills / some / rays / flights / for / gear / a / fly / today / warm / pens / for / felt / coach / game / games / both
    play|played|playing|light|some|easy|long|short|just|had|more|good|warmup catch
    locked|lock|locking .. in|door|car|house|gate|core|keys|eyes|wrist|knees
    lock|locked :: in / it in / down / up shop / up the / the door / out at / in at / and load
    jam|jams|jammed :: hitters / batters / him / them / session / packed / schedule / hitter / batter / sandwich / out / a / the hitter / my toe / my finger / in traffic / a guy
    traffic|paper|bases jam|jammed
    lift|lifted|lifting .. heavy|weights|legs|today|yesterday|lower|body|upper
    lower|upper body
    half|back|leg|lift|lifting day
    hang|hanging|hung :: out / with / up / on / clean / cleans / in time / in there / curve / curveball / slider / a curve / a slider / a changeup / a breaking / from the bar / leg / in / tough
    dead hang|hangs
    arm|still|body|just .. hanging in there
    hanging in there
    in .. shape
    good|great|bad|tip|better|out of|best shape
    get|getting|got|stay|staying|whip in shape
    step :: up / ups / down / back / forward / in / away / 1 / 2 / 3 / 4 / 5 / one / two / three / ahead / by / off / behind / into / closer / out / and throw / of my / in the
    next|first|big|one|another|each|this|drop|slide|side|crow|hop|a|my|lead|extra|jab|last step|steps
    broad|squat|box|high|long|rope jump|jumps
    jump|jumped|jumping :: rope / jacks / serve / serves / ball / pass / shot / shots / around / on a call / ahead / in the pool / in the shower / right / in weight / for / up in / on the / over / to the / higher / float / training / squats / floater / up from
    rolled|roll|rolling|rolls :: over / lats / pecs / my lats / my back / my quads / my ankle / a ball / up / a double / out my / out lats / out the / out with / the dice / an ankle / in late / it out / out my
    foam roll|rolled|roller|rolling|rolls
    rolling .. out .. foam|roller|lats|back
    ankle .. rolled|sprained|twisted|roll|taped
    rolled|sprained|twisted .. ankle
    ball|grip|foot|band|bar|handle|towel|shoe|shoes|cleats|cleat|strap|tape|sleeve|headband|racket|racquet|mat|dumbbell|kettlebell|weight|bat|brace|feet|footing|brush|pen .. slipped|slipping|slips|slides|slid|sliding|rolling|slip|slick|shifted|moved|slide
    sweaty|wet|slick grip|hands|hand|palm|palms
    moved|moving|move|moves :: up to / up a / up in / up from / to / on / in the / house / houses / apartments / furniture / practice / back to / back in / down to / down in / couch / slots / spots / well / better / good / great / boxes / freely / around well / forward / the game / day / weight / well today
    giving|gave|give :: it / my all / 110 / 100 / up a / up 2 / up 3 / up two / up one / up hits / up runs / up the / up some / up no / up four / up coffee / up soda / up 4 / up 1 / up 0 / up a few / up zero / my / him / her / them
    let go :: of the / of / early / late / at / out / the
    letting :: go of / me / it
    blew|blown|blow|blows :: a tire / a game / a save / a lead / out / it by / by him / away / past / them / the game / the save / the lead / the whistle / one by / the / off / it / a bubble / their
    blew up .. phone|tire|balloon|inning|balloons|bracket
    nothing left .. tank
    stuffy|runny nose
    allergies|allergy
    hungover|hangover
    bone :: broth / in / dry / tired / app
    funny bone|bones .. exercise|movie
    bench press|warmer|pressed|presses
    BE|was heavy .. weight|band|dumbbell|bar|ball|lb|kg
    heavy :: ball / balls / weight / day / week / band / workload / bag / legs / lift / lifting / bat / squats / schedule / sweater / rain / traffic / lunch / dinner / load / bands / plyo / breakfast / topspin / meal / breathing from
    arms|arm|legs .. heavy|jelly|noodles|noodle|spaghetti|shaky|smoked|toast|cooked|tired|fried|dead|trembling .. lifting|workout|pushups|pullups|swim|rowing|curls|lift|gym|practice|squats|lunges|run|running|sprints|bike|hill|hills|conditioning|deadlifts|planks|plank|day|set
    squats|lunges|sprints|running|workout|deadlifts|run|conditioning|pushups|planks .. arms|arm|legs|leg .. wobbly|jelly|heavy|shaky|tired|weak|dead|smoked|toast|noodles|fried|sore|shot
    legs|leg|quads|hammies|core|abs .. wobbly|jelly|heavy|shaky|tired|weak|dead|sore|toast|noodles|smoked|fried|shot .. squats|lunges|run|running|sprints|day|workout|lifting|deadlifts|bike|hill|hills|conditioning|practice|leg|week
    arms .. heavy .. both|sides
    heavy .. both sides
    leg|legs|arm day
    velo|velocity|speed|temp|temperature|temps|era|average|rank|grades|numbers|humidity|pressure .. dropped|drop|drops|dropping|dipped|down|fell|up
    dip|dips :: in velo / in the pool / bar / today / in performance / set / sets / felt / for / and
    tricep|triceps|bar|bench|ring|chest|weighted|did|do dip|dips
    chips .. dip
    woke|wake|wakes|waking|awake|awoke :: up early / up late / up at / up to pee / up for / up feeling / up good / up refreshed / up great / up fine / up rested / up before / up hungry / up thirsty / up by / up ready / up happy / up today / up tired / up with the / up to an / up to my / up to the / call / boarding / up and / early / at / late / for / up stiff / up sore / up on time / up energized / me up early for / up warm / up to / before / up cold / up a little stiff / up fresh / boarded
    woke|wake|wakes|kept|keeps|keeping|waking .. pee|bathroom|drink|water|alarm|dog|baby|noise|roommate|kid|kids|storm|thunder|neighbor|neighbors|cat|phone|thirsty|dream|nightmare|school|toilet|fireworks|hunger|snoring|cramp
    dog|baby|cat|alarm|kid|kids|roommate|noise|storm|thunder|phone|heat|neighbors|son|daughter|wife|husband|mom|dad|fire|rain|bathroom|truck|party|garbage|siren|text|train|newborn|mosquito|neighbours|coffee|fireworks|jetlag|lawnmower .. woke|wakes|waking|wake|kept|keeps|keeping
    waking|morning|wake|woke pain NUM|none|zero|now
    pain waking|morning|wake|woke NUM|none|zero
    no waking|morning|wake pain
    waking|woke|wake up NUM
    popped out :: of my cleats / of my shoes / of bed / of the car / to second / to short / to first / to third / to left / to right
    grounded|flied|lined out .. popped out
    popped out .. twice|second|first|third
    fell out of .. race|contention|playoffs
    crash landing
    subbed in|out
    chest plate|guard|freezer|hair
    just kidding
    fell out of rhythm|sync|groove|routine|practice|favor|shape
    swell party|time|guy
    i hit my
    fell|falls|falling for
    cold hands warm heart
    broke .. nail
    legs|knees|quads gave|gives|giving out .. squats|lunges|run|leg|sprints|stairs|workout
    crashed .. dinner|lunch|practice|school|work
    chest and .. tris|bis|arms|back|triceps|shoulders|biceps|legs
    white knuckle
    fell|dropped|slipped in .. rankings|standings|order|poll|ranking
    chest and tris|bis|arms|back|triceps|shoulders|biceps|legs
    numbing cold
    crashed .. sofa|couch|bed|bunk
    knot|knots in .. back|neck|trap|traps|stomach
    fell out with
    tripped .. words|tongue
    constant|constantly :: tension / practice / rain / work / speed / pressure / effort / velocity / improvement / progress / pace
    sat|sitting .. asleep
    half|sound|fast|was|were|still|already|be|im|fell|fall|falling|falls|i asleep
    asleep :: by / at / on the / in class / early / late / before / fast / all
    sore|soreness|ache|achy|aching|aches|tight|stiff|cramp|cramped|cramping .. legs|leg|quads|hamstrings|glutes|abs|hammies
    legs|quads|hamstrings|glutes|abs|hammies .. sore|soreness|ache|achy|aching|tight|stiff
    calves .. sore|tight .. run|running|both|sprints|raises
    calf|calfs raise|raises|stretch|stretches
    nice|good|great|solid|crazy|sick|arm pump
    felt|feel|feeling|feels .. burn|burning .. muscle|cuff|back|rear|lats|triceps|spot|good|delt|right
    felt|feel|feeling|nice|good|muscle|slow|slight|little|solid|big|the|some burn
    burn|burning|burned :: in the muscle / in the right / in my lats / in the back / in my rear / in a good / nice / good / calories / out of gas / in the cuff / in my cuff / behind / in the right spot / at the end / sensation in the muscle
    sun|rope|turf|carpet|razor|rug burn|burned|burnt|burns
    burned|burnt .. toast|dinner|sun|calories|tongue|popcorn
    face .. red|flushed|sunburn|sunburned|sunburnt|tan
    eyes .. red
    burning calories|daylight
    burning up :: the
    burning :: desire / passion / question
    swollen :: ego / head / river / creek
    tingly|tingles|tingling .. victory|success|win
    flu game
    throwing up :: and in
    breathless :: finish / game / ending
    heart|pulse .. racing|pounding .. start|meet|final|finals|test|exam|before
    put|get|got|bring|throw|threw|threw it back in :: the bag / play / the bucket / the car / to him
    hop in|on
    bump in|up velocity|velo|speed|load|weight|volume|reps
    bottle|cup|glass|drink|rest|rests .. dropped|fell
    weakest|strongest :: hitter / team / link / part of my game / pitch
    swelling crowd|music|pride
    numb chucks
    hit :: a dinger / a nuke / a bomb / a tank / a moonshot
    got|get|gets|getting hit .. runs|innings|inning|first|second|third|fourth|bullpen|walks
    ice cold veins
    ice in .. veins
    wiped :: down / off / sweat / my / the
    wiped out .. exams|practice|finals|work|school|tired|week|travel|game|workout|yesterday
    spill the|my|some beans|water|coffee|drink|gatorade
    spilled
    bone tired|dry|collagen
    tired :: from / after / today / but / of / legs / arm / this / because / tonight / and hungry
    exhausted|drained|wiped|beat|shattered .. late|one|travel|exams|finals|today|game|practice|trip|week|doubleheader|tournament|bus|flight|workout
    meds .. allergy|adhd|thyroid|acne
    nerve :: wracking / racking
    numb :: to the / to it / to losing / to that
    tingling|tingles|tingly|buzzing .. excitement|excited|anticipation|pride|joy|national|anthem
    excitement|excited|goosebumps|anthem .. tingling|tingles|tingly|chills
    chills .. song|anthem|win|crowd|movie|speech|atmosphere|ceremony
    gave me chills
    netflix and chill
    red hot
    lump :: in my throat / in the throat
    slip :: n slide / and slide / on shoes / on my / ons
    slipped :: on my / on a / out of practice / out early / into
    shift .. late|early|started|ended|starts|ends|long|over
    snapped :: a selfie / some / pics / photos / selfies
    snap :: decisions / decision / judgments
    popped :: in a movie / the balloon / balloons / his / her / over / out of bed / up / popcorn / the question / the hood / a wheelie
    heart :: of / to heart
    weak :: at the plate / in the / at bat / today at the / sauce
    breaking :: ball / balls / pitch / pitches / bad / news / in
    cramp|cramped|cramps|cramping .. calf|leg|hamstring|foot
    calf|hamstring|leg .. cramp|cramped|cramps|cramping
    got .. nerve to
    nervous|nerves
    pain in .. ass|butt to
    pain in the ass|butt|neck
    pain free
    growing pains
    paint|painting
    jaw dropping|dropped
    accident .. traffic|highway|made|saw
    by accident
    accidentally
    dog|puppy .. accident
    hurt :: feelings / so good / my feelings / our chances / the team / locker
    hurts so good
    dove|dive|dived|diving :: into / in the pool / off the board / drill / drills / roll / practice / board / catch / team / well / bar / right in / deep
    pool|cannonball|swim|meet .. dove|dive|dived|diving
    took :: it easy / a day / bp / grounders / ground / batting / reps / off / the day / swings / a nap / some swings / ibuprofen for my head
    hit :: the weights / the gym / the books / the road / the showers / the bed / the sack / the hay / the cages / the pool / the trails / my spots / my target / all my / bombs / dingers / bp / leadoff / well / 85 / 88 / 90 / 92 / 95 / 87 / 84 / 80 / 75 / a pr / a wall in / a plateau / a milestone / a bomb / a target / a goal / a double / a homer / a single / a triple / the ball / balls / a few balls / the snooze / for the cycle / off the tee / in the cage / it well / it hard / off a tee / 3 / two / my goal / good / a home / a grand / a new / the target / an all / the sauna / a ball / the fastball / the curve / some balls / a pop / the cut / a line / a winner / third / second / cleanup / 300 / the post / the bar / my macros / legs / upper / chest / ground / some / a slump / the crossbar / winners / serves / me today / me different / the slopes / fungo / fungos / grounders / the town / different
    took|had|got|getting|take :: a hit at the plate / hits / a hit off / a hit in / a hit and / two hits / three hits / a base hit / 2 hits / 3 hits / my first hit / an at bat / hit around
    hit batters|batter|batsmen|2|two|streak|machine|parade
    i hit .. batters|batter|guy|guys|kid|kids|hitters
    keeper|goalie|goalkeeper .. hit|blocked|saved ball|shot
    crash :: course / pad / diet / early / out / on the couch
    crashed :: early / at / on the couch / out / hard after / on my couch / on my bed / on my sofa / on my floor / for the night / in bed / at my / before
    computer|laptop|app|phone|site|server .. crashed|crash|crashes
    stock|market crash|crashed
    legs .. dead
    come|came|comes|coming|go|went|goes|going :: out of the pen / out of the bullpen / out of the stretch / out of the game / out of class / out of school / out of bed / out of nowhere / out firing / out hot / out strong / out fine / out great / out sharp / out clean / out good / out easy / out smooth / out flat / out slow / out ahead / out throwing / out on top / out of town / out to dinner / out to eat / out with friends / out to the
    ball|curve|curveball|slider|it|fastball|pitch|pitches|changeup .. coming|came|comes|jumping|jumped|flying out of .. hand
    pulled out|it back|up|over|through|down
    push|pushed|pushing :: it back / practice back / back to / myself / through / hard / the / a / my / it to / the pace / ups / to
    put :: it back in the bag / it back on / the ball back / back on / up / back the
    everything|life|things fell|came together
    tap|taps out
    worn|wore out
    light|lights|lit up
    hell|heck|damn
    broken up
    bad|good shot
    hump day
    cup|cups of
    knob of
    dent in .. homework|list|work
    ice|drop|drops of
    out of gas|steam|shape|it today
    out of .. hand
    band|tube .. around .. chest
    sharp :: today / command / stuff / out there / slider / curve
    dead|stalled out
    strike|strikes out
    power :: of / outage / went out / is out / cleans / clean / hitter / position / nap / out / hour / snatch / play
    lost power .. storm|house|wind
    lost :: the game / our game / by / my glove / 3 / to / 5 / in / two / a heartbreaker / touch / my phone / my feel / track / my rhythm / weight for / my voice / my keys / the match / power in the house / interest
    losing :: streak / record / sucks
    loss :: to / against / today / sucks / hurts / in / last / of the season / stings
    tough|bad|close|heartbreaking|another|the|a|first|big|one loss
    no|without|any|zero loss|lack|drop|change|decrease|changes|reduction .. strength|power|feeling|sensation|motion|grip|range|rom|mobility
    no :: strength issues / power issues / feeling of / grip issues / motion issues / range issues / strength problems / touch
    good|full|great|solid|better|more|normal|equal|strong|gaining|gained|best strength|power|grip|motion|range|rom|mobility|feeling|sensation|movement
    strength|power|grip|motion|range|rom|mobility|feeling is|feels|was|felt|looks|coming good|full|great|fine|solid|better|normal|back|strong|ok|equal
    strength :: and conditioning / training / coach / work / program / exercises / day / session / test
    grip :: on / the ball / the bat / strength work / trainer / change / changes / tape / work / on my / it
    changed|change|new|my|different|curveball|changeup|slider|two seam|splitter grip
    motion :: looks / looked / felt / is good / is smooth / sickness / picture
    slow motion
    range :: day / is good / is full / of motion is good / of motion good
    range of motion|rom|mobility work|drills|exercises|stretches|good|great|full
    touch :: and feel / up / base / down
    out|of touch
    feel|feeling :: for the / for my / good / great / better / fine / strong / it in / ok / like / ready / amazing / the ball / well / confident / myself / tired / a
    no feel .. curve|slider|changeup|offspeed|curveball|pitch|breaking|command|splitter
    lost .. feel .. curve|slider|changeup|offspeed|curveball|pitch|zone|strike
    cant|couldnt|didnt|dont feel .. curve|slider|changeup|working|difference|tired|sore|muscle|exercise|burn|pain|anything .. working|worked|difference|burn
    cant|couldnt :: throw strikes / throw a strike / find the zone / hit / buy a hit / miss / wait / complain / believe / sleep excited / make it / get out of bed / stop smiling / beat / figure / lay off / help / find my release / locate / find / get a hit / tell you / remember / do the 5 / do more than / lift today / throw today / throw til / throw till / throw until / throw tomorrow / come / train / practice / pitch until / pitch today / seem / decide / play / stop laughing / stop eating / hold runners / hold a lead / hold the lead / grip it in / hold my breath / go tomorrow / go today
    wont :: be able to throw today / be there / throw today / throw tomorrow / make it / be throwing / lie / have time / be / train / pitch
    hardly|barely .. threw|throwing|practiced
    struggled|struggling|trouble|hard .. strikes|command|zone|locating|control|location|curve|math|school|test|release
    control|command .. off|bad|gone|good|struggled|issues
    lost .. command|control .. zone|strike|curve|slider
    gave|give|gives|giving .. me|him|her|mom|coach|us|everyone .. heart attack|stroke
    had|having .. heart attack .. laughing|when|watching|over|about
    blacked out and|then hit|scored|threw|struck|went|ate|bought|ordered|dropped|made|won|drained
    hit|hits|hitting .. wall .. rep|reps|set|sets|mile|round|inning|energy|gassed|tired|mentally|studying|exhausted|today|third|minute|late|hard|halfway
    rather die than run|do|eat|play|wear|watch|lose|go|wake|listen|ride|miss|take|have|see|throw|practice|squat|sit|get
    would|could|might|gonna|going|about|ready die|kill for|of|laughing|from
    die|died|dying|dies of|for|from|laughing|to|inside|down|out|hard|here|with .. boredom|laughter|embarrassment|heat|nap|pizza|food|hunger|thirst|laughing|coffee|sleep|sugar|cringe|it|know|see|go|try|play
    died|dead|dying|die|dies .. laughing|boredom|laughter|embarrassment|cringe|hunger
    almost|nearly|about|basically died of|laughing|from|on|in|when .. boredom|laughter|heat|hill|sprint|sprints|run|class|embarrassment|workout|conditioning|lunges|laughing|meeting
    died|dead for .. hours|hour|minutes|NUM
    nap|couch|bed|sleep .. died|dead|passed|crashed
    slept|sleep|sleeping like .. dead|log|rock|baby|corpse|king|angel|queen
    kill me .. midterms|finals|homework|exam|exams|monday|school|math|please|lol|already|traffic|essay|chem
"""
