"""Everyday phrases that hold a warning word and mean nothing, and known causes that only soften.

Law: data only; patterns as told in `patterns`, and `a, b :: c / d e` is each of a, b followed by
each of c, "d e". A phrase in HARMLESS takes its words out of the hearing of signs, unless a longer
sign stands there; a cause in CAUSES and a habit in HABITS turn a stop into a question, never into
silence. May be added to with a clinician's hand. Wording from memory and common usage.
"""

from __future__ import annotations

from typing import Final

HARMLESS: Final = """
    pop :: time / times / up / ups / fly / flies / quiz / music / star / culture / corn / off / to it / tart / in my fastball / in and
    popped :: up to / up for / up a / some ibuprofen / some advil / some tylenol / some aleve / a few advil / two advil / two aleve / over to / by / an advil / the champagne / tags / in to / out for / out to / round / down to / open a / open the / it up / a top / a bottle / a cold / my gum / popcorn
    popping :: tags / up all / bottles / by / over / into / the mitt
    pops up
    good, more, great, nice, extra, some, little, real, late, enough, serious, same, had, lots of, lot of, plenty of, no, less :: pop on / pop to / pop in my bat / pop in the bat / pop tonight / pop today / pop in the glove / pop in the mitt / pop on the ball / pop off the bat
    fastball|ball|slider|glove|bat|pitches|mitt|heater|catchers|cutter|curve|serve|changeup .. pop|popped|popping
    pop|popped|popping .. glove|mitt|bat
    pop .. on .. fastball|ball|slider|pitches|heater|serve|curve
    snap :: throw / throws / pick / chat / count / dragon / back throw / peas / judgment / down drill / out of it / decision / drill / drills / bracelet / to it
    snapchat
    snapped :: a pic / a photo / a picture / a streak / the streak / out of / off / a losing / a slump / at / my losing / our losing / our streak / a skid
    bat|band|string|strings|lace|laces|strap|stick|racket|racquet|cable|pole|tube|shoelace|cord .. snapped|snap|broke|ripped|tore|broken|cracked|snaps
    snapped|broke|ripped|tore|broken|cracked .. bat|band|string|strings|lace|laces|strap|stick|racket|racquet|cable|pole|tube|shoelace|phone|screen|glove|cord|window
    wrist snap
    snap .. wrist
    good, nice, crisp, better, more, bit of :: snap on / snap at / snap to / snap today / snap in my
    crack of :: dawn / the bat
    crack :: open / at it / up / a joke / the code
    cracked :: a joke / jokes / open / the top / the starting / the lineup / the rotation / an egg / eggs / my phone / a smile / the code / me up
    cracking :: jokes / me up / up / knuckles / my knuckles / good / day
    cracks me up
    tough nut .. crack
    drop :: set / sets / step / steps / down / ball / balls / shot / shots / off / in / by / kick / the bar / serve / serves / pass / punt / jump / weights / landing / zone / foot / you / to third / third / a set / squat / lunges / lunge / table / on my
    dropped :: down / by / off / a set / sets / out of / to third / third / in for / in on / a pop / a fly / my arm slot / arm slot / to the light / to light / to a lighter / a class / a fly / a pass / the mic / a line / an easy / a few points / my average / my batting / average / in the order / in the rankings / in the standings / two catches / a catch / catches / the first / the second / a game / the game / the match / the series / a sitter / the pace / points / the load / the weight / one training / a training / training / a session / practice / school / my bat / the bat / the fly / a grade / hints / serves / a third
    dropped .. to .. band|weight|lb|lbs|kg|lighter|light|dumbbell|pounds
    dropped .. class|classes|catch|catches|mic|course|series|lbs|sets|reps|grade|average|order|standings|rankings|rotation
    drops|drop|dropping :: in temperature / in temp / the hammer / dimes / bombs / off at / him off / her off / me off / kids off
    dropping .. class|weight|load|temperature|temps
    eye|cough drops|drop
    sharp|good|nice|late|big|nasty|great|more|had drop
    sinker|slider|splitter|curve|changeup|curveball .. drop|dropped|drops|dropping|dip
    arm slot
    slip|slipped|slips|slipping :: my mind / up / away / past / through / by / into / one past / it past / in a practice / in some / of the tongue / notes / in the standings / in rankings / down the order / in the order / in class / in school / in my grades / on the schedule
    permission|pink|hall|pay slip
    slips .. cordon|catch|fielding|catches|gully
    in the slips
    slide :: step / steps / show / board / rule / tackle / over / drill / drills
    slid :: into / home / in safe / past / headfirst / under the / in under
    sliding :: drills / practice / scale / door / shorts / mitt / into
    wall|floor|towel slides|slide
    shift :: change / work / started / lead / manager / at / was / ends / starts / today / tomorrow / tonight / until / ran
    night|day|late|early|double|long|work|closing|morning|swing|evening|extra|graveyard|defensive|infield|my|a|weight shift|shifts
    shift|shifted|shifting .. weight|gears|schedule|focus|meeting|appointment|work|time|practice|day
    cold :: tub / plunge / plunged / shower / showers / front / brew / snap / morning / mornings / water / out / outside / weather / pack / packs / pizza / drink / beer / start / one after / day / days / night / nights / air / gym / gel / spray / calling / cuts / rain / weights / wind / medicine / bath / baths / therapy / compress / game / practice / pool / room / feet / turkey / in here / for a game / enough / temps / balls / today / tonight / this morning / this am / windy / and windy / and wet / and rainy / winter / month / tap / drinks / fusion / call / field / courts
    weather|gym|garage|day|morning|room|pool|water|field|cage|house|basement|rink|wind|tub|plunge|shower|park|stadium|winter|balls|bleachers|court|dugout .. cold|freezing|chilly|icy|frozen
    cold|freezing|chilly|icy|frozen .. weather|gym|garage|room|pool|water|field|cage|house|basement|rink|park|stadium|court|dugout|shower|tub|sea
    it was|is .. cold|freezing|chilly|icy|hot|warm|boiling
    its|itwas|twas|was|is .. cold|freezing|chilly|icy|hot|boiling .. out|outside|today|here|tonight|there|morning|night
    so|really|super|too|pretty cold|freezing|hot|chilly|icy .. out|outside|here|there
    have|had|got|catching|caught|getting|fighting|head|common|slight|with|bad|nasty|a cold
    ice :: cream / tea / hockey / breaker / cold water / cold drink / machine / skating / rink / bucket / massage / maker / plunge
    ice :: pack / bag / bath / cup / it / after / for
    cool :: down / downs / off / beans / story / thanks / with / new / drill / bro / man / sounds / day / breeze / stuff / drills / exercise / and easy
    thats|its|was|pretty|so|all|be|im|very|really|super cool
    freezing :: out / outside / rain / in here / cold out / today
    frozen :: pizza / yogurt / food / peas / rope / ropes / four / shoulder exercises
    blue :: band / bands / ball / balls / sky / jersey / jays / light / tape / dumbbell / moon / one / ones / plyo / weight / tube / sheet / line / team / belt / loop / cable / mat / kettlebell / cord / raspberry / gatorade / jersey
    light|dark|navy|royal|baby blue
    white|purple|grey|gray|red|black|green|yellow|orange|pink :: band / bands / ball / balls / jersey / belt / tube / plyo / one / ones / sox / weight / cord / line / board / team / squad / flag / card / zone / bull / meat / velvet / kettlebell / loop / mat / cable / bat / dumbbell / socks / shirt / handle / light / eye
    to|use|used|using|switched|color|colour|colored|coloured|wore|wearing|wear purple|red|blue|grey|gray|white|yellow|green|black|pink
    pale ale
    out of the blue
    feeling|felt|feel blue|swole
    weak :: effort / contact / side / ground / grounder / grounders / groundball / spot / spots / point / points / hand hitter / sauce / link / excuse / serve / serves / pop / fly / coffee / signal / wifi / attempt / joke / schedule / hitters / pitch / pitches / day / performance / showing / links / opponent / team / foot / throw / throws / stuff / wind / tea / start / second / return / finish / fielding / lineup / bullpen / off / internet / schedule / hitting / at bat / area / link
    weaknesses|weakness .. backhand|game|serve|defense|hitting|pizza|chocolate|swing|curveball|curveballs|changeups|spin|candy|forehand|sweets
    backhand|serve|defense|hitting|pizza|chocolate|curveball|forehand|candy .. weakness
    my weakness
    kryptonite
    bump|bumped|bumping .. in|up|to|from|set|the .. weight|reps|load|mileage|volume|lbs|lb|kg|band|sets|pounds|schedule|order|start|workload
    bump :: up / in pay / in the road / set / pass / to / day / in weight
    bumped :: up / into a friend / into coach / into my / to / back / down / from
    goose|speed|fist|chest|elbow|volleyball bump|bumps|bumped
    bumpy ride
    lump sum
    fell|fall|falls|falling|fallen :: asleep / behind / short / apart / in love / sick / off the table / off the wagon / off schedule / off track / off pace / into place / to 2 / to 3 / to the bottom / flat / on a tuesday / on a monday / on a friday / on a weekend / back to sleep / back asleep / down 0 / a day / laughing / into the routine / to last / down 2 / to earth / through the cracks / for it / victim / into a slump / under 4
    fell|fall|falling asleep .. on|in .. bus|couch|plane|car|bench|train|deck|floor|bleachers|chair|bed|class
    fall :: ball / season / semester / league / break / camp / practice / sports / workouts / classes / training / scrimmage / baseball / softball / schedule / tryouts / weather / colors / is here / starts / ends / evaluations / program / tournament / showcase
    this|last|in|next|the|early|until|all|all|during|late|by fall
    fell .. behind .. count|schedule|work
    fell in .. count
    changeup|curve|curveball|slider|splitter|sinker|knuckleball|pitch|serve|cutter|offspeed .. fell|dropped|drops|drop|dropping|falls|fall|dipped|dips|slid|sank|dives|bit|slips|moved|broke|breaking|slides
    chest :: press / presses / workout / workouts / fly / flies / flyes / pass / passes / stretch / stretches / pump / height / protector / high / out / up / supported / opener / openers / bump / exercises / expansion / dips / routine / level / freezer / day / to / and back / and arms / and tri / and triceps / and bi / and shoulders / proud / tall / first / forward / down / drills / muscles / machine / work / on the ground
    chest day .. sore|soreness|ache|achy
    chest feels|felt|is|was open|good|great|strong|pumped|stretched|looser
    open|opened|opening|stretch|stretched|stretches|stretching|trained|worked|hit|did|train|lift|lifted|pumped|keep|puffed .. chest
    chest|pec|pecs .. sore|soreness|tight|ache|achy|aches .. bench|workout|lifting|pushups|press|gym|flies|dips|yesterday|lift|weights
    sore|tight .. chest|pec|pecs .. bench|workout|lifting|pushups|press|gym|flies|dips|lift|weights
    chest .. hit .. pitch|ball|me
    breath|breathe|breathing|breaths :: out as / in as / work / control / holds / exercise / exercises / drill / drills / cue / cues / technique / of fresh / through / on the way / mints / mint / every / pattern / rhythm / into / and reset / and relax / helped / between / in through / normally
    deep|big breath|breaths|breathing
    took .. breath
    breathe|exhale|inhale .. lift|raise|lower
    bilateral breathing
    breathe easy
    save your breath
    out of breath .. sprints|running|conditioning|cardio|run|suicides|laps|poles|drill|drills|hills|swim|burpees|sprint|intervals|mile|bases|ran
    winded|gassed|puffed|panting|gasping .. sprints|running|conditioning|cardio|run|suicides|laps|poles|drill|drills|hills|swim|burpees|sprint|intervals|mile|bases|ran
    out of breath .. after .. set|swim|sprint|run
    sprints|running|conditioning|cardio|run|suicides|laps|poles|hills|burpees|intervals|mile|ran|swim .. winded|breath|gassed|gasping|sucking|panting|puffed|wind
    holding .. breath
    ran|did|running|run .. suicides|suicide
    suicides|suicide :: sprints / drill / drills / today / at / run / after / for / were / squeeze / squeezes / pitch
    night :: game / games / shift / match / practice / owl / off / class / school / before / light / lights / time / out / routine / cap / session
    good|last night
    up all night|late .. studying|homework|gaming|working|game|paper|baby|kid|kids|project|driving|movie|movies|party|study|cramming|travel|bus|work|newborn|exam|exams|drive|flight|dog|netflix
    studying|homework|gaming|working|game|paper|baby|kid|kids|project|driving|movie|movies|party|study|cramming|newborn|dog|storm .. up|all night
    all|whole night .. studying|gaming|homework|party|drive|bus|movie
    slept|rained|partied|sleep all night
    kept me up .. homework|studying|game|games|baby|dog|kid|kids|neighbors|storm|heat|noise|roommate|coffee|party|work
    hot :: today / outside / out / day / days / dog / dogs / yoga / tub / shower / hitter / bat / start / streak / weather / pack / packs / gym / in here / pad / water / corner / hands / stove / take / mess / spring / room / towel / coffee / chocolate / one / take / stuff / week / summer / sauce / wings / as hell out / garage / in the gym / at practice / humid / and humid
    gym|sun|weather|field|pool|day|room|garage|turf|car|bat|court|humid|weather .. hot|warm|boiling|roasting
    heat :: pack / pad / wave / index / rub / wrap / it / is / was / stroke / check / and ice / before / exhaustion
    with|the|brought|bringing|threw|threw some heat
    warm :: up / ups / down / upped / today / out / outside / weather / water / day / enough / shower / milk / and loose / in there / bodies / bath
    warmed|warming|warms up
    arm|arms|body|shoulder|muscles|it .. warm|hot|loose .. up|ready|quick|fast|quickly|exercise|band|bands|throwing|nice|good|great
    nice|good|got|felt|feel|get|stayed|stay and warm|loose
    BE|feel|feels|felt|feeling|arm|shoulder|stay|stayed|staying|got|get|nice|good|pretty|real|super|body|keep|kept loose .. good|warm|relaxed|easy|free|today|ready|smooth|fresh|great|whippy|quick|throwing|bullpen|warmup|pregame|game
    loose and|n good|warm|relaxed|easy|free|ready|smooth|fresh|great
    arm|stayed|stay|staying|body|hips|back|hamstrings|wrist|nice|felt loose
    good|great|warm|relaxed|fresh and|n loose
    loose :: ball / balls / change / ends / end / fit / screw / shirt / clothes / cannon / goose / leaf / play / grip / game / stool / handle / laces / sleeve / band / cable
    band|grip|handle|strap|brace|glove|shoe|laces|lace|tape|screw|sling|seams .. loose
    loosened|loosen|loosens|loosening
    broke :: a sweat / the record / a record / my record / my bat / the bat / a bat / up with / even / in my / in a / in the / down film / down video / down the film / a string / curfew / my pr / a tie / the news / up / 90 / 80 / camp / off / out / the tie / my phone / my racket / out the / through / my personal / a window / the internet / into / down crying / my diet / my glove
    broken :: bat / record / string / phone / sleep / racket / glove / english / play
    broke|broken|breaking .. sweat|record|pr|diet|bat|racket|slump|streak|phone|bank|wallet|tie|window|car
    band|car|bus|phone|racket|racquet|weather|string|glove|bat|machine|truck|app|computer|truck|washer broke|broken|snapped|died
    im|we|so|flat|dead broke
    torn between
    tore :: it up / up / through / open / my jersey / my pants / my shirt / down / into / apart the
    tearing :: it up / up
    tore|ripped|torn|rip|tear .. jersey|pants|shirt|bag|jeans|ticket|cover|tape|sleeve|glove|shorts|uniform|blister|callus|nail|skin|hole|page
    ripped :: a single / a double / a homer / a liner / one / off / into / some / balls / a triple / line / it down / it up / a few / a shot / a forehand / a backhand / it past / through / 3
    let|letting|lets|let it rip
    rip city
    got|getting|looking|look|so|get|is ripped|swole|shredded|jacked
    tear :: up / into / jerker
    numbers|number
    mind|brain .. numbing|numb
    numb from .. boredom|homework|class|lecture
    numbing :: cream / gel / spray / homework
    comfortably numb
    butt|bum|ass .. asleep
    electric :: atmosphere / crowd / game / scooter / bike / stuff / night / feel / vibe / fence / toothbrush / heating / pad / blanket / company / bill / fastball / slider / guitar / car / car / shaver / win / day / car
    static :: stretch / stretches / stretching / hold / holds / cling / position
    buzz :: cut / beater / lightyear / word / kill / off / the tower / me
    buzzed :: about / my hair / his / in / me / by / home
    phone|door|alarm|doorbell|mosquito|crowd|place|bee|watch|dugout .. buzzed|buzzing|buzz|buzzes|buzzer|blowing|vibrating
    buzzer|buzzing .. crowd|team|win|beater
    lightning :: delay / storm / fast / mcqueen / strike / round / warning / quick / came / in the
    lightning .. cancelled|canceled|delay|practice|rain
    shock :: absorber / value / therapy / wave
    in shock
    dead :: last / lift / lifts / tired / lifted / bug / bugs / ball / balls / line / bolt / batting / battery / center / set / week / time / heat / hang / hangs / sore / even / day / leg / legs / serious / stop / phone / on his / after leg / inside / air / quiet / red / pull / arm period / arm phase / arm season / zone / from squats / from leg
    phone|battery|car|laptop|team|crowd|headphones|app|watch|airpods|ipad|computer .. dead|died
    PART|arm|legs .. dead|dog tired|sore
    BE|feel|feels|felt|im|i am .. dead .. lift|legs|leg|squats|practice|workout|run|running|lol|haha|lmao
    arm|arms|body|legs|whole .. dead .. from|after .. lift|workout|squats|practice|curls|pushups|pullups
    im|literally|lowkey|absolutely|so|actually|were|we|am|was dead|dying|ded
    killing :: it / them / time / my legs / my abs / my quads / the ball / my grades / my core / my glutes
    killed :: it / me / them / that / us / my legs / my quads / my abs / him / my core / my glutes / my mood / my vibe
    BE|are killing me
    set|workout|drill|heat|band|bands|exercise|exercises|homework|school|schedule|coach|class|plank|planks|squats|this|these|commute|alarm|legs|quads|bus|hill|abs|sprints|humidity|allergies|boredom|suspense|plank .. killing|kill|killed|kills|kill me|us|my
    kill|kills|killing .. serve|zone|shot|set|match|game|errors|digs
    killer :: workout / set / abs / session / practice / instinct / curve
    would|could|might|gonna|going kill for|me|you|him
    to kill time
    stick shift
    hand :: eye / off / sanitizer / me / cream / held
    give|gave|lend|need a hand
    thumbs up
    cut :: weight / down / back / practice it / it short / fastball / fastballs / off / my hair / class / out / from / short / set / the grass / my workout / the workout / the set / in half / carbs / man / to / myself off / myself some
    cut|cutting .. shaving|cooking|kitchen|slack|grass|knife|glass|hair|break
    made the cut|team
    head :: cold / coach / start / out / first / up / home / down / case
    race|racing|raced heart .. sprint|sprints|run|cardio|conditioning|race
    heart .. racing|pounding|race|rate|thumping|up .. sprints|sprint|run|running|conditioning|cardio|laps|burpees|intervals|nervous|excited|nerves|game|pitch|jitters|coffee|zone|caffeine|preworkout
    sprints|running|conditioning|cardio|laps|burpees|intervals .. heart
    heart :: rate zone / rate monitor / rate was / into / of the order / warming / breaker / broken / attack of laughter / and hustle / of gold
    by heart
    passed out .. early|couch|bed|asleep|sofa|9|10|8|11|pm|exhausted|movie|flyers|tv|bus|car|homework|immediately|hard
    passed out|early .. asleep|early
    sick :: of / day / game / play / win / pitch / shot / catch / movement / slider / curve / curveball / stuff / throw / nasty / changeup / dunk / move / drop / leave / burn / bat / new / velo / song
    homesick
    thats|so|pretty|looked|looking|its|absolutely sick
    sick .. today|bro .. slider|curve|throw|movement
    throwing up :: in the zone / high / zeros / zeroes / numbers / in zone / a lot of / to / bricks / big / gang
    threw up :: a zero / zeros / zeroes / goose / numbers / a shot / a prayer / a brick / some / high / a scoreless / a donut / 20 / 3 / in the zone
    throw|throwing|threw up .. hill|zone|goose|scoreboard|zeros|zeroes
    cabin|spring|jungle|football|march|playoff|baseball|tournament|hay|race|world|soccer fever
    fever :: dream / pitch
    flu|covid|tetanus shot|shots|jab|vaccine|test
    trip :: to / home / with / out / planned / is / this / next / was / back / went / for
    road|field|family|team|long|bus|day|weekend|school|business|ski|camping|fishing|college|my|our|the trip
    tripped|trip :: me out / up the hitter / the breaker / the alarm / a breaker
    board :: game / games / meeting
    stairs :: workout / sprints / today / climb / and / for conditioning
    ran|run|running|did|climbed|climb|up .. stairs|stadiums|steps|bleachers .. conditioning|workout|today|practice|sets|times
    ran|run|did|running :: the stairs / stairs / bleachers / stadiums / steps / poles
    ran :: into traffic / into coach / into a friend / into my friend / into an old / into trouble / into some / into a buddy / out of / over time / late / long / the bases / a mile / through / my / well / home / around / hard / sprints / it back / track / it out
    ran into .. friend|traffic|trouble|coach|teacher|buddy|ex|neighbor
    tackled .. homework|chores|problem|yard|list|project|laundry|hill|workout
    smashed .. burger|burgers|workout|set|record|pr|buffet|pizza|serve|serves|ball|winner|spikes|homer|goals|records|reps|session|3k|test|pb
    smashed|smashing :: it / that / them / this / out / my pb / my pr / the
    crushed .. workout|set|ball|homer|test|exam|pr|burger|buffet|reps|session|homework|rehab|drills
    crushed|crushing|nailed|nailing|drilled|hammered|slammed|smoked|smacked|pounded|banged|pounding|smacking|hammering|drilling|smoking :: it / that / them / all / every / my spots / my form / the zone / one / a homer / a double / the strike / a few / some / two / three / a ball / the form / out / through / a burger / down / the last / each
    got|we|get crushed|hammered|smoked|killed|rocked|lit|shelled|spanked .. game|inning|2|3|4|5|8|10|12|tonight|yesterday|up|them|11|7|6|9
    nailed .. set|exercise|spots|landing|test|exam|drill|reps|form|spot|runner
    drilled .. shot|shots|bunts|fundamentals|threes|winner|three|single|double|technique
    slammed .. work|schedule|homework|door|phone|with
    banged|knocked|hammered|cranked|busted|pumped out
    knocked :: out my / out the / it out / out a / out all / out of the tournament / out of the playoffs / in / a few / on wood / down 3 / out at / in two / around
    knocked out .. early|cold|asleep|round|tournament|playoffs|bed|9|10|reps|sets|exercises|workout|homework|rehab|session
    cleaned|clean up|my|the
    checked|check :: in / out / email / my / the / with / on / off / box / swing / that
    piled|pile .. homework|runs|points|work|laundry
    homework|work|laundry|dishes .. piled|pile|piling
    leveled|levelled|level up
    thrown :: out at / off my / off by / off a / for a / together / in the game / well / today / in / since / a ball / a baseball / yet / much / anything / 3
    got thrown out
    kicked|kick :: off / out / it / back / butt / ass / in / my butt / my ass / the habit / a ball / the ball / a goal / some / their / our / in late
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
    catch :: up / play / with / and throw / partner / today / at / for / a / the / ball / phrase / my / warmups / was / in / on
    catching :: up / bullpen / bullpens / practice / drills / some / rays / flights / for / gear / a / fly / today / warm / was / pens / on / in / for / and / felt / coach / game / games / both
    play|played|playing|light|some|easy|long|short|just|had|more|good|warmup catch
    locked|lock|locking .. in|door|car|house|gate|core|keys|eyes|wrist|knees
    lock|locked :: in / it in / down / up shop / up the / the door / out at / in at / and load / my
    jam|jams|jammed :: hitters / batters / him / them / session / packed / schedule / hitter / batter / sandwich / out / a / the hitter / my toe / my finger / in traffic / a guy / with
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
    rolled|roll|rolling|rolls :: over / through / lats / back / with / pecs / my lats / my back / my quads / my ankle / a ball / up / into / a double / out my / out lats / out the / out with / the dice / an ankle / in late / it out / out my
    foam roll|rolled|roller|rolling|rolls
    rolling .. out .. foam|roller|lats|back
    ankle .. rolled|sprained|twisted|roll|taped
    rolled|sprained|twisted .. ankle
    ball|grip|foot|band|bar|handle|towel|shoe|shoes|cleats|cleat|strap|tape|sleeve|headband|racket|racquet|mat|dumbbell|kettlebell|weight|bat|brace|feet|footing|brush|pen .. slipped|slipping|slips|slides|slid|slip|slick|shifted|moved|slide
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
    woke|wake|wakes|waking|awake|awoke :: up early / up late / up at / up to pee / up for / up feeling / up good / up refreshed / up great / up fine / up rested / up before / up hungry / up thirsty / up by / up ready / up happy / up today / up tired / up with the / up to an / up to my / up to the / call / boarding / up and / early / at / late / for / and / up stiff / up sore / up on time / up energized / me up early for / up warm / up to / before / up cold / up a little stiff / up fresh / boarded
    woke|wake|wakes|kept|keeps|keeping|waking .. pee|bathroom|drink|water|alarm|dog|baby|noise|roommate|kid|kids|storm|thunder|neighbor|neighbors|cat|phone|thirsty|dream|nightmare|school|toilet|fireworks|hunger|snoring|cramp
    dog|baby|cat|alarm|kid|kids|roommate|noise|storm|thunder|phone|heat|neighbors|son|daughter|wife|husband|mom|dad|fire|rain|bathroom|truck|party|garbage|siren|text|train|newborn|mosquito|neighbours|coffee|fireworks|jetlag|lawnmower .. woke|wakes|waking|wake|kept|keeps|keeping
    waking|morning|wake|woke pain NUM|none|zero|now
    pain waking|morning|wake|woke NUM|none|zero
    no waking|morning|wake pain
    waking|woke|wake up NUM
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
    snapped :: a selfie / the / some / pics / photos / selfies
    snap :: decisions / decision / judgments
    popped :: in a movie / the balloon / balloons / his / her / over / out of bed / up / popcorn / the question / the hood / a wheelie
    heart :: of / to heart
    weak :: at the plate / in the / at bat / today at the / sauce / off the
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
    hit :: the weights / the gym / the books / the road / the showers / the bed / the sack / the hay / the cages / the pool / the trails / my spots / my target / all my / bombs / dingers / bp / leadoff / well / 85 / 88 / 90 / 92 / 95 / 87 / 84 / 80 / 75 / a pr / a wall in / a plateau / a milestone / a bomb / a target / a goal / a double / a homer / a single / a triple / the ball / balls / a few balls / the snooze / for the cycle / off the tee / in the cage / it well / it hard / off a tee / 3 / two / my goal / good / a home / a grand / a new / the target / an all / the sauna / a ball / the fastball / the curve / some balls / a pop / the cut / a line / a winner / third / second / cleanup / 300 / the post / the bar / my macros / legs / upper / chest / back / it / ground / some / a slump / the crossbar / winners / serves / me today / me different / the slopes / fungo / fungos / grounders / the town / different
    took|had|got|getting|take :: a hit at the plate / hits / a hit off / a hit in / a hit and / two hits / three hits / a base hit / 2 hits / 3 hits / my first hit / an at bat / hit around
    hit batters|batter|batsmen|2|two|streak|machine|parade
    i hit .. batters|batter|guy|guys|kid|kids|hitters
    keeper|goalie|goalkeeper .. hit|blocked|saved ball|shot
    crash :: course / pad / diet / early / out / on the couch
    crashed :: early / at / on the couch / out / hard after / on my / for the night / in bed / at my / before
    computer|laptop|app|phone|site|server .. crashed|crash|crashes
    stock|market crash|crashed
    legs .. wobbly|weak|dead|shaky
    come|came|comes|coming|go|went|goes|going :: out of the pen / out of the bullpen / out of the stretch / out of the game / out of class / out of school / out of bed / out of nowhere / out firing / out hot / out strong / out fine / out great / out sharp / out clean / out good / out easy / out smooth / out flat / out slow / out ahead / out throwing / out on top / out of town / out to dinner / out to eat / out with friends / out to the
    ball|curve|curveball|slider|it|fastball|pitch|pitches|changeup .. coming|came|comes|jumping|jumped|flying out of .. hand
    pulled out|it back|up|over|through|down
    push|pushed|pushing :: it back / practice back / back to / myself / through / hard / the / a / my / it to / the pace / ups / to
    put :: it back in the bag / it back on / the ball back / back on / in / up / back the
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
"""

CAUSES: Final = """
    ice :: pack / packs / bag / bags / bath / bucket / cup / massage / machine
    iced|icing|cryo
    from|after|on|with|with the ice
    cold :: tub / pack / water / plunge / out / outside / day / morning / weather / game / wind / rain / shower
    slept|sleep|lay|laid|lying|laying|leaned|leaning|sat|sleeping on|funny|wrong|weird|it
    from|after|while|of sleeping|sleep|leaning|sitting
    in bed
    taped|taping|kt|bandage|brace|compression
    tape|wrap|wrapped .. tight|too|off
    dentist|spicy|wings|pepper|peppers|filling
    skiing|snow|snowing|winter|snowball|snowballs
    handlebars|mower|mowing|vibration
    blood pressure cuff
    backpack|bag .. strap|straps|digging
    bug|mosquito|bee|wasp|spider bite|bites|sting|bit|stung
    stung
    mosquito|wasp
    sunburn|sunburnt
    ink|marker|paint|dye|rosin|mud|markers
    chalk .. on|all
    holding|held ice
    vaccine|vaccination|booster
    flu|covid|tetanus shot|jab
    nice|good|gym pump
    crossed legs
    end of .. bat
    hit|hitting one off
    metal|cold bat
"""

HABITS: Final = """
    like normal|usual|always
    usual|normal|habitual|always|regular|usually|normally
    for years
    no|without|zero pain
    painless|painlessly
    doesnt|didnt|dont|never hurt|hurts
    pain free
"""
