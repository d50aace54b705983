"""Everyday phrases of play, gym and weather that hold a warning word and mean nothing.

Law: data only, read together with `harmless`; see there for how a line is written.
"""

from __future__ import annotations

from typing import Final

PLAY: Final = """
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
    snapped :: a pic / a photo / a picture / a streak / the streak / out of / off / a losing / a slump / my losing / our losing / our streak / a skid
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
    dead :: last / lift / lifts / tired / lifted / bug / bugs / ball / balls / line / bolt / batting / battery / center / set / week / time / heat / hang / hangs / sore / even / day / leg / legs / serious / stop / phone / on his / after leg / inside / air / quiet / red / pull / arm period / arm phase / arm season / from squats / from leg
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
"""
