"""The points of words, in tenths: for a warning sign above 0, against it below.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented. One line holds all words of one value; `no:` marks a word that is denied, capitals a
family of the vocabulary, `#` any number.
"""

from __future__ import annotations

from typing import Final

START: Final = -28
TABLE: Final = """\
-56 if
-54 his
-44 fine
-39 good
-38 coach
-37 sore
-36 we
-32 front should what
-31 normal
-29 didnt
-28 barely
-27 do none was
-26 neck them
-25 ago did lol no:SWELL too traps
-24 bus great more stiff
-23 nope pinch
-22 ELSEWHERE FRACTURE a-saying band last new
-21 free friend no:NUMB ok
-20 hurt long
-19 six well working
-18 easy exercise he her hit mom our sister were
-17 always blister brother does gym no:WEAK no:weak not roommate sharp you
-16 broke lifting no:POP no:say pinched pinches pops work
-15 hands mostly no:or same school snapped stretched surgery team
-14 biceps done from hardly knee no:numbness no:swelling struck throws will year years
-13 NUM buddy care dad gone no:have no:no rested used worried
-12 cracked four go has kid labrum muscles nah pinching pulled ready
-11 # call crossed em girlfriend heavier heavy light most must no:# no:FALL no:LEAK no:SLIP pen started toss tossed writing
-10 balls clicks course cracks finish forgot grandpa hair isnt later mean no:i no:swollen played say skipped solid stop weight wife
-9 BREAKS_LIKE OPPONENT asked can cleats club could couple dangerous difference early finished foot glove goal ill no:BULGE no:NUM no:anything no:is no:of only pitcher pitches scared shopping slept smooth stretch swells swimming tape thats three tonight towel would
-8 blade clean competition drills ft goalie high know live make match money much no no:FAINT no:MANY no:any no:at no:hurt no:pain no:report no:today old pills rain session son spot stayed struggled told triceps volleyball week who worry
-7 ankle best bp broken bullpen comfortable cousin cut dislocate dog dropped eight had healthy heat homework lecture manageable meh minutes mound net no:COME no:FEVER no:FLUTTER no:LOOSE no:OUT no:bad no:control no:felt no:loose no:me no:nothing no:numb no:once no:pop no:problem no:throwing no:was no:weird or painful passes physiotherapist pr problem rained rate set soreness streak tank throat today training trap wall weights
-6 any bag blades change cooked cramp crap cuff day delt enough fastball father finally five guess haha hes infield ish kept kids late lats lets midnight nail nap negative no:CANT no:CHEST no:DROPPING no:WEAKNESS no:better no:chest no:complaints no:fall no:fever no:lol no:so no:time no:tingling no:weakness now ouch paining painless probably quick rust said saw shelled shirt slow so squats steady strong summer teammate these toe typing usual watch weather wore
-5 MANY afraid bar beat bunch busy college concert crowd dads daughter dentist deuce died disc doctor drink failed far game goes gripping hall happy him hits hmm loaded low march means meet moved nails nicely nighter no:BLOW no:COLD no:COLOUR no:LEG no:above no:bit no:came no:cold no:dizzy no:issues no:legs no:none no:one no:popped no:signs no:slipped no:there no:think no:trouble nose noticed operation partner physio please pump reps right says season serving seven shaking shots sling snow sprints test tough tuesday uh wait weekend weird whom workout yet
-4 achy away baby bends bodys both bro bumpy burning burrito butt catches child chilled chillin closed count depends desk doc dry dumbbell dunno ears effort elbows end evening exam final fire fixed form frozen gimme give goose hammer hate head hitting hospital indeed inning javelin knees knuckles law lazy livable mate max mud naw needed neither no:BREAKS_LIKE no:INFECT no:PAIN no:band no:blue no:dead no:feels no:good no:infection no:like no:normal no:noticed no:slip no:throws no:whatsoever nuh off part party perfectly picking pitch pitched pm position pt question rough row sack seat shaky shoveling shows sir skip spring start staying stick stretching stroke swell th toast tournament twinge tyre until us very warmup win worn zilch zip
-3 absolute alright amount attack bands bones break burns carried chair cheat chilly cleared close conditioning crisp curls dipped dips drop eh ever falling field fight friday garbage guys hearing hills hip huh innings june keeper level lifted lot mad medium mhm mistake mobility nada nil no:HAVE no:SHAPE no:UNSTABLE no:WAKE no:difficulty no:dizziness no:drop no:either no:fallen no:great no:hit no:hurts no:little no:much no:new no:pins no:pops no:problems no:shortness no:sure no:towel no:unstable no:why numbness opening opponent paper peaked pizza planks plate plunked poor practiced programme quarter raining regret scary serious settled signs sliders slip smoked sneezed softball somewhere starts swinging swings tad ten thank tolerable tomorrow topped tosses trained u unfortunately velos watched wear weekly winter worked y yessir
-2 DULLED actually aint alarm amazing arms ask backpack bad banged bled bleeding born bottle bowled brutal caught challenging city counts crushed curve delay denies drank drill eaten entirely finals firm floor follow foul garden gas gassed gate gentle goals gonna grind gross gun guy h handle helmet helped hips hitter holding homers hoodie hope hours idk jav knocked knows lead leg little longer mechanics need neighbour nice no:BRUISE no:RED no:THING no:all no:am no:breathing no:bumps no:chills no:do no:dropped no:enough no:everything no:falls no:got no:grip no:had no:looks no:more no:needles no:pinch no:popping no:redness no:resting no:rly no:short no:sir no:slipping no:thank no:tingles no:tingly no:tomorrow no:too no:wait no:yesterday otherwise overs pause perfect plane ponytail promise r rack reaching repetition ride run s screen sec send sessions sets setter she sleepover sleepy smidge sneeze snowball sorry stand stomach street sunburned sure swim their third threw torn track travel traveling trumpet turf twenty ups zero
-1 WORN af after afterwards angry anyway back bent blind bout box boy briefly bucks burger catchers changeup checked class climbing collar cricket curveball deal defense doubleheader drum extras fielder finger first fish flipped glass goalkeeper grade habits heater hill hovering jammed jello jk jump keeping league left lineup m machine maxed maximum modest no:AGAIN no:KEEP no:SHOULDER no:anywhere no:bruises no:bruising no:clicking no:clicks no:clunks no:cough no:crack no:cuff no:discoloration no:drama no:feel no:feelings no:fell no:first no:god no:hits no:hitter no:hold no:how no:jk no:keep no:last no:painful no:really no:same no:shoulder no:sleeve no:slept no:stuff no:thing no:those no:tingle no:training no:went no:yes no:zero numb ol ones order overhead pee pillow plyo points pool popping power press program puked pull quite rd reach rehab roll roof scratch seams served serves shake shin shocked shoes sick sidearm skating slump smash smashed some sometimes stopped stubbed study tapped thursday til tired toes train tree wants wind x yards
1 CATCH DROPPING account against an anything appeared balled basically beaned blotchy bowl bowling brushing buckle bulging carrying center chalk changed clue coat cold completely crawling curb draining drawer dreadful drunk either exercises eye eyes fall fielding flat fluid fly folded football full fuzzy gatorade goosebumps goosey ground gut harder intramurals jumped kicked kneed knuckle lidocaine locker lurched many may mightve missed mitt move no:ELBOW no:ELSEWHERE no:LOST no:MOVE no:RIBS no:ball no:comb no:comfy no:coming no:day no:elbow no:fingertips no:hand no:key no:pick no:quite no:ring no:serve no:shut no:snap no:speak no:steering no:straighten no:strong no:three no:top no:wash no:water no:week no:wheel noise oven playing poke poked polo poured pressing pulse reached reading real reddish resting rings rise rly seconds shiny shocks shoulders shut sleeps sliding slipping spleen square squared straighten streaks sweating table tea tell vibrate wakes wanted waxy weighs wheel which worse zaps
2 GIVES WOBBLY ability absolutely animal area bang barking base bat bed being between bleachers bluish bolt brief buckled burned button click clicked coffee comes crushing crying cycling dented different drenched drilled driving dude due dull dusky few find fizzes floppy fridge fumble gallon ghost girl giving golf growing height here hole hopped jolt jumps kind kitchen lat lightning limb lines liquid meets middle missing mornings mph mug muscle no:HEART no:LOOK no:NIGHTS no:NOT no:PUT no:between no:bottle no:cap no:chill no:door no:doorknob no:going no:hair no:head no:look no:matter no:mine no:night no:notice no:over no:past no:press no:pull no:push no:shampoo no:shelf no:shirt no:socket no:stay no:throw no:two no:wake no:what outfield pan parked pin pitching plank pole prickling pushup pushups putting rebound record relief scrum secs separated serve shift shifted simply single sinks skateboard slider slipped smacked sock sound spaghetti stings stood strep strikes sunken super taking that they those thread tops trampoline try twang ulnar waking wave wearing went with wood zing
3 REACH apart ballooned bandage bath belly below blow body branch bruise bulge butterfly buzzy chin clunk clunks cock coin comebacker constantly corpse crooked crunch current deformed during elephant er except felt fluttering footing goalpost going gray grips helps higher holes im keys kinda leave locks lunch made milk months naproxen near next nine no:CATCH no:LIFT no:NEW no:ON no:breath no:deep no:ever no:lifting no:net no:on no:pills no:rotate no:scratch no:zip opens outstretched partially patch popeye pretty prickle prickles prickly puffiness racing racket release rubber runs sand seatbelt shade shaped shove shower sort sorta spike spoon stops straight strike stumbled sucking sweaty throw tightness tiny toilet touched trainer turns unsteady use vice vomiting wake way wet wobbly wrists yanked zap
4 ASLEEP BRUISE HAVE above aching across although arent asleep balloon bench bicep bicycle bike block blown breastbone bubble bumped burnt buttons buzz color corner dark dirt diving elbowed feel grapefruit hard hasnt held hour id index injection knot ladder lb limp minute moment no:SHEETS no:TIGHT no:bed no:budge no:but no:catch no:drive no:fingers no:fit no:force no:full no:goes no:juice no:properly no:rest no:side no:sitting no:take no:turn no:unscrew no:without novocaine outer pale pencil plus popp possibly pounding push rep rolled shelf shock shot site skipping sleeve slides smh sparks speed spiked squeezing stairs stays stone stove strange struggling sunday tackle teeth tender than thirty thumb tingles tried truck tumble turn unbearable warmups wasnt watching whenever window wrap wrecked wrestling yeah
5 HOLD LOOSE ONTO UNDONE am another atv basketball because bigger bit boards cart colder coming control crash deck dent dove droops droopy ear eases electricity empty fist gave grey gunk hollow house how improvement infected it key laying leash lightheaded loose mid month motion no:ACHE no:CHANGED no:ODD no:VEHICLE no:alive no:be no:behind no:didnt no:does no:down no:finger no:not no:quits no:reach no:sensation no:squeeze no:way open outside palm pile pjs puffed quit recliner ripped screaming shakes shivers short shortstop smell somewhat spreading stabbing steps sticks stuck swelling swole tearing things tight tip trouble tumbled velcro vision warm water weeping whatever wiped words yellow
6 CLUMSY COLD MY TIGHT behind black breakfast but clumsy clunked cork crazy cutter eating edge else everything external feet flops frame honestly in inner irregular kill lbs lump lungs never no:HAND no:MISSILE no:come no:gas no:gone no:hurting no:left no:sudden nowhere opened own pains pavement pointer portal pushed quits range rather ribs rotation see sit snapping soda spots standing takes the thought tingle useless wrapped
7 NOT TIGHTER VEIN air armpit around balance bladder boiling buzzing cannot chasing couch drooping dropping ended fell flew flight freezing hanging help huge let lower my nearly no:leaves no:wanna no:worth on one peed planted player poking put raise room saturday size skiing stuff sudden surgical sweat tackled time turned vanished veins walk why
8 BE HEADACHE HUE LEG ODD ache again also baseman bender breathing compared cup degrees dizzy door everyone fat fence fender having headache home hot killing lately meds no:GROUND no:for no:it no:lets no:off omg oozing reduced round scooter sheets smells stage tear theyre thick trucked two ucl whats yep
9 NEW STOP TIRED a ants anymore are bump collision come days dislocated each falls fork green have header ibuprofen itself joints less might no:here no:right pacing reason red ripping scar shooting sounded sticking sweats swollen this till turning vomited white wreck
10 CHANGED LIFT RIBS became breathless cause coughing doesnt electric fast handlebars hurting impossible lay line monday no:back no:in no:sore no:that perhaps point pressure pus really rear sensation shape slightly somebody tripping under wheezing worst
11 FLU ON clock constant deep dive drive dugout faint feverish havent is jaw lil linebacker living no:BY no:comfortable no:stops no:with no:words onto rip shivering shoulder slide static stitches thing to touch tv whole wouldnt wound yup
12 MOVE PUSH accident ate be catcher coughed dead doing exhausted flu got hangs i lie no:DIGIT no:get nothing passed popped puffy swelled thrown up
13 ACHE CALF COME PUT QUITS SHEETS aches all awake become calf car couldnt crack fingertips forearm funny gasping getting hold joint kilos legs longboard no:BE no:PUSH no:and no:go of painkillers puking purple rest slammed snap then through tripped
14 BY LIMP MISSILE MOTOR RED collided dislocation ending forward get inside leaking lying mouth no:DAILY no:SOCKETED no:air no:arm over place ring skin sleeping slurring small soaked speech subluxed
15 SOCKETED WENT feeling ice its losing loud no:ARM no:PILL no:away no:breathe take though throwing unstable winded yes
16 ARM HOT KEEP blacked breathe face no:HANDS no:SINCE no:feeling no:up play slurred without
17 arm big crashed die incision maybe no:FEELING no:REACH nonstop pinky sitting slight someone still strength sublux throbs when
18 DROOP POSITION almost beats down elbow halfway ive lift nights no:MY no:anymore no:power partial throbbing touches
19 HEIGHT SINCE by keeps me no:HEIGHT pounds there took twice weak where wish
20 ELBOW THING matter no:a no:live no:want ran socket
21 AGAIN HAND LAND PART SPENT UNSTABLE blood for horse keep morning no:the no:to no:trying pop slid weaker yesterday
22 GROUND landed think weakness
23 OUT SEAT hurts no:MOTOR no:even out
24 FLUTTER SHOCK SHOULDER ball fainted no:ONTO no:my pain second thinking tingly
25 PAIN POP advil chills grip heard just night no:WENT once running weeks
26 BULGE been came dont every fingers heart other something suddenly temp while woke
27 HEART LOST SLIP SWELL hand lost needles no:PART walking
28 BLOW HANDS INFECT breath no:BREATH no:STOP sleep wont
29 BREAK LOOK even like looks no:SEAT no:position times
30 BONE DIGIT FACE FEELING feels no:strength pins theres
31 POWER
32 SLUR SWEATS and
33 bone life want
34 VOMIT fever
35 NEVER_ENDING VEHICLE WEAK
36 FAINT tingling
37 COLOUR NIGHTS WAKE
38 CANT FALL GASP side
39 BUZZ CHILL chest
40 NUMB myself
41 CHEST
42 WEAKNESS since
43 FEVER into no:POSITION
44 temperature
45 DISLOCATE LEAK no:POWER
46 SHAPE collarbone
48 cant
49 WOUND
51 BREATH
56 FEVERISH
59 FEVER_F
63 PILL
64 CRASH"""
