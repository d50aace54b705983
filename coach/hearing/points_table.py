"""The points of words, in tenths: for a warning sign above 0, against it below.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented. One line holds all words of one value; `no:` marks a word that is denied, capitals a
family of the vocabulary, `#` any number.
"""

from __future__ import annotations

from typing import Final

START: Final = -28
TABLE: Final = """\
-55 if
-54 his
-45 fine
-43 good
-40 we
-39 coach
-38 sore
-33 normal
-32 front should what
-30 bus
-28 barely did lol was
-27 no:SWELL none
-26 ago didnt stiff them too
-25 neck new
-24 ELSEWHERE nope traps
-23 FRACTURE do great he hurt more pinch
-22 always band friend no:NUMB were
-21 a-saying free hit last our well working
-20 broke exercise long mom
-19 her roommate sister six
-18 brother does easy no:say not ok
-17 hands no:or sharp
-16 blister lifting nah no:POP no:WEAK no:weak pinched pops stretched team you
-15 call knee must pinches school snapped throws years
-14 biceps hardly mostly no:have no:swelling pulled same surgery will worried year
-13 buddy care done em isnt no:no no:numbness ready struck toss used work
-12 could dad early forgot four from go gone heavier labrum muscles no:FALL no:LEAK no:swollen pen pinching rested stop wife
-11 NUM can cracked hair kid later no:# no:SLIP no:of started test tossed wall
-10 # balls bar clicks couple course finish foot girlfriend grandpa gym heavy high light live most no:anything no:is no:pain old painful played rained slept smooth
-9 asked best clean club cracks dangerous difference goal happy has homework ill mean no:BULGE no:NUM no:hurt no:i no:me pills pitcher pitches rain say scared shopping skipped solid soreness stretch strong swimming thats three volleyball weight weights would
-8 OPPONENT afraid ankle blade bullpen cleats drills dropped eight finished goalie know make minutes money no:FEVER no:MANY no:at no:felt no:fever no:numb no:report no:today no:was only or physiotherapist shelled slow spring streak swells tape told tonight towel watch week who worry
-7 comfortable competition cooked cousin cuff dislocate drink five form ft glove hall head hmm lecture march much net no no:COLD no:FAINT no:FLUTTER no:LEG no:OUT no:any no:bad no:better no:cold no:complain no:legs no:nothing no:once no:pop no:problem no:throwing no:weird operation pitched pr probably problem rate says session son spot stayed steady struggled tank throat triceps weather
-6 BREAKS_LIKE afterwards away both bp busy change click crap day delt doctor father guess had haha healthy heat hes infield ish late leg manageable match meh midnight mound nail nap no:CANT no:CHEST no:COME no:DROPPING no:LOOSE no:PAIN no:WEAKNESS no:chest no:fall no:issues no:loose no:slipped no:so no:weakness paining passes please pump quick rust saw sprints squats stick summer teammate today trap tuesday ugh very win wore
-5 any arms bag bee blades break broken bunch burning chess college concert crowd dads daughter desk deuce died disc fastball finally friday goes gonna goo gripping guy him kids knuckles lats lineup low means mother moved nails negative neither nicely nighter no:BLOW no:BREAKS_LIKE no:above no:band no:bit no:came no:complaints no:control no:dizzy no:lol no:none no:one no:popped no:signs no:there no:throws no:time no:tingling no:trouble noticed off opponent painless part partner party phone physio pm pt right rising said season shirt shots snow so these toe tough training typing uh usual weird whom workout yet zilch
-4 DULLED MANY bad beat blind bro bumpy burrito catches catching chilled chillin chilly controlled count curls dentist depends dry dumbbell dunno ears effort eh elbows enough failed far final fixed floor frozen gimme goose hammer hip hits hospital indeed innings javelin jk june knees lake law lazy loaded mate meat meet mud nada naw needed no:COLOUR no:INFECT no:dead no:fallen no:feels no:good no:hit no:infection no:more no:normal no:noticed no:slip no:think no:towel no:whatsoever nose now nuh ouch oven perfect perfectly pitch planks plunked position reps row seat sec serving set shoveling signs sling softball staying stomach stretching stroke swell thank toast tooth tournament tyre u us wait warmup worn zero
-3 achy alright amount attack baby bands bends bodys burned burns butt chair changed cheat child class cleared close closed conditioning crisp curve cut delay dipped dips doc drank dumb ever falling fight fire garage garbage gassed give goalkeeper guys handle hearing hills hitting homers hope hours huh inning kept knows level lifted little livable lot mad makes max medium mhm mobility nil no:HAVE no:UNSTABLE no:WAKE no:all no:blue no:difficulty no:dizziness no:drop no:dropped no:either no:great no:hurts no:like no:little no:much no:new no:pins no:pops no:problems no:sir no:slept no:start no:tingle no:unstable no:wait no:why opening picking pizza plate power programme quarter question raining regret rough run sack sat scary scored settled shaky she shows sir skip sleepy sliders sneezed somewhere sorry stand start starts swings tad ten th tolerable tomorrow topped tosses track trained trapezius twinge unfortunately until velos wear weekend weekly worked y yessir zip
-2 DAILY absolute actually amazing ask backpack banged bf bled bleeding bones born briefly burger burpees carried caught city counts cricket crispy crushed deck denies dog drill drop eaten entirely exam exercises field finals firm follow foul game gas gentle grind gun h heartbreaker helmet helped hips hitter hoodie jav keeper lead locked manage maximum mechanics mistake neighbour nice nine no:BRUISE no:DULLED no:HOT no:RED no:SHAPE no:THING no:breathing no:bumps no:catching no:chills no:cuff no:do no:everything no:falls no:first no:got no:had no:looks no:needles no:pinch no:popping no:redness no:resting no:rly no:short no:shortness no:slipping no:sure no:thank no:tingly no:tomorrow no:too no:went no:yesterday noise numbness otherwise overs pause peaked plane ponytail poor practiced promise pull r rack repetition s screen scrimmage send serious sessions sets shaking shes shin sidearm sign sleepover slip smidge smoked sneeze snowball some sometimes spicy stiffness stopped sunburned sure swinging tea tingled toes torn traveling trumpet twenty ump ups watched winter
-1 GIVES WORN aint alarm back behind bent bout bowled brutal bucks catchers challenging climbing cold collapsed curveball deal dinner doubleheader drum end extras finger fun garden goals grade gross habits half hate heater hill holding hop hovering idk inch jello keeping laid laundry league left longer m machine maxed miss mobile modest muscle no:SHOULDER no:am no:anywhere no:as no:bruises no:bruising no:clicks no:clunks no:cough no:crack no:did no:discoloration no:drama no:enough no:feelings no:god no:grip no:hits no:hitter no:hold no:how no:jk no:last no:nor no:out no:painful no:pinching no:really no:shoulder no:sleeve no:stuff no:thing no:those no:tingles no:training no:yes no:zero ones order overhead pee pillow plyo points pole popping press program puked quite rd rehab ride roof scratch seams served serves setter seven shake shoes skating slips slump smash smashed soon street struggle stubbed study stung swim taken tapped thursday toilet train travel turf umpire upper wash wind with wrist x yards
1 CATCH account against appeared as at backhand balled bases basically beaned believe better blew blocked blotchy blue boat bottle bowling bruised buckle bulging chalk clue coat completely crawling definitely drawer dreadful drunk elses eye eyes feeble few fielding fizzes fluid fly folded football fumble fuzzy gatorade gets goosebumps goosey gut harder instant jar jelly jumped kills lidocaine literally lurched meets mitt mornings move ngl no:AGAIN no:ELBOW no:ELSEWHERE no:HOLD no:KEEP no:LOST no:RIBS no:WORN no:ball no:clear no:comfy no:coming no:day no:elbow no:explain no:fingertips no:hand no:happened no:head no:higher no:keep no:key no:quite no:same no:shut no:snap no:steering no:straighten no:strong no:three no:touch no:wash no:water no:week no:wheel odd poke poked poured powerless pulse reached reaching real reddish resting rings rise rly seconds separated shifted shiny shocks shoulders single sleeps sliding sound spleen square squared story straighten streaks sweating tell top vibrate visibly wanted warm waxy weighs went wet wheel worse wrong zaps
2 after along animal area bang barking bat beating being bench between bicep bluish bolt bowl brief brushing buckled button buzzy catch chin clicked crash crunch crying curb current dented different draining drenched drilled driving dude due dull dusky either evening fall find flag fridge gallon ghost giving golf ground growing height hopped jolt jumps keys kind kneed leaves lightning limb lines liquid middle mightve missed missing mug next no:HEART no:LOOK no:NIGHTS no:NOT no:bat no:between no:bottle no:cap no:chill no:comb no:doorknob no:going no:hair no:look no:matter no:mine no:night no:notice no:over no:past no:pull no:push no:ring no:serve no:shampoo no:shelf no:shirt no:socket no:throw no:thumb no:top no:two no:wake no:what outfield paper parked pitching plank playing practice prickles pushup pushups putting racket rebound record relief roll scrum secs serve shift shut sick simply sinks slider smacked sock stands stings stood strep strikes sunken super sweaty table taking those thread throw tired tops tore trash twang ulnar wave wearing window wiped wood zing
3 ability air apart balance bandage bath bed belly below bleachers blow body branch bruise bulge butterfly clunk clunks coffee coin comebacker constantly corner corpse crooked crushing cycling deformed drops ear elephant except fence fielder floppy fluttering footing goalpost gray held helps here higher hole index injection jolts kicked kinda kitchen knocked lat leave locks made many may milk months mph naproxen near no:MOVE no:NEW no:PUT no:but no:catch no:deep no:drive no:ever no:fingers no:fit no:net no:obey no:pills no:press no:rotate no:scratch no:sitting no:speak no:stay no:unscrew no:zip opens outstretched pan patch pin popeye prickle prickling prickly puffiness racing reading release runs sand shade shock shove shower skateboard slam sort spaghetti spike spoon stops straight strike stumbled sucking they thumb tight tightness touched trampoline try turns unsteady vice yanked zap
4 ASLEEP BRUISE COLD HOLD WOBBLY above aching although an arent asleep balloon ballooned base basketball bigger block blown breastbone bubble bumped burnt buttons buzz clobbered cock color comes dark dirt during elbowed er fist grapefruit grey holes how id itself kill knot lightly lunch moment no:LIFT no:SHEETS no:TIGHT no:bed no:bladder no:breath no:budge no:door no:down no:force no:juice no:lifting no:properly no:quits no:rest no:side no:take no:turn no:without novocaine outer partially pencil plus popp pounding pretty push rep rolled rubber shaped shivers site slides smh sparks spiked squeezing stays stone stove strange struggling sunday tablets tackle teeth tender thirty tiny trainer tried tumble turn unbearable use vision vomiting wake waking warmups wasnt watching way wobbly wrap wrecked wrestling wrists yeah
5 DROPPING HAVE LOOSE ONTO UNDONE absolutely across atv bicycle boards box but cart center colder coming control dove electricity empty feel felt flew flops full girl going grips hasnt hour house improvement infected key laying lb let lightheaded limp loose lump minute motion no:ACHE no:CHANGED no:ODD no:ON no:alive no:didnt no:does no:finger no:not no:on no:reach no:regular no:sensation no:squeeze no:way pale pile pjs possibly puffed range reason recliner ripped seatbelt shakes short shortstop sit skipping slipped smell somewhat sorta spreading sticks swole the this tingles trouble tylenol velcro weeping words yellow
6 MY REACH TIGHTER again am another because bees bit breakfast cork crazy cutter dent droops droopy eases eating edge else external fell gunk have hollow honestly inner it ladder leash lungs mid no:HAND no:MISSILE no:VEHICLE no:be no:behind no:come no:full no:gas no:gone no:hurting no:sudden nowhere open outside pains palm pointer portal pushed quits rather room rotation saturday screaming see shot sleeve snapping soda spots stabbing standing steps stuck takes tearing than things thought tingle tip truck tumbled useless walk water whenever wrapped
7 CLUMSY NEW TIGHT VEIN armpit around black bladder boiling buzzing clumsy clunked couch door ended frame hanging hard having help hot huge in irregular lbs month my nasty no:GROUND no:goes no:leaves no:left no:lets no:wanna no:worth opened pavement peed planted quit raise ribs skiing stairs stuff sudden surgical swelling tackled turned vanished veins why
8 BE HEADACHE HUE LEG NOT are bender breathing chasing cup dislocated dizzy drooping fat feet fender freezing headache ibuprofen lately lower meds nearly no:off no:right omg on own player poking put size speed sweat tear theyre tripping trucked two ucl whats yep
9 CHANGED ODD RIBS STOP a ache anymore baseman bike collision compared days doing dropping everyone everything flight fork green havent home joint less line monday never no:for no:it oozing pacing reduced ripping scar scooter sheets shooting smells sweats thick till time turning whatever white worst wouldnt
10 also ants breathless bump cannot come diving drive each electric falls header hurting is lay no:back no:sore no:that one perhaps rear red round sensation somebody sounded sticking swollen tv vomited wheezing wreck
11 LIFT ON became coughing dive doesnt dugout faint feverish getting handlebars impossible joints killing linebacker might no:here no:words point really shape slide stage static stitches to touch under
12 HOT TIRED ate become cause clock constant dead degrees exhausted fast feeling gasping got hangs hold i lie living no:BY no:DIGIT no:comfortable no:get no:go no:in no:stops no:with nothing onto over painkillers passed pressure puffy puking pus rest rip shivering shoulder slightly swelled thrown whole yup
13 BY MISSILE MOVE PUSH accident all awake car coughed couldnt fingertips funny jaw lil mouth no:PUSH of snap thing through wound
14 ACHE COME KEEP MOTOR PUT QUITS RED SHEETS SPENT aches be catcher crack deep dislocation ending forward longboard lying no:BE purple ring sleeping soaked speech subluxed then
15 FLU LIMP SOCKETED WENT kilos losing loud no:DAILY no:PILL no:SOCKETED no:and no:arm no:breathe no:feeling no:up popped skin slammed slurring small though tripped unstable yes
16 ARM CALF HEIGHT calf crashed forearm get ice inside its leaking legs no:ARM no:HANDS no:SINCE play slurred up winded
17 arm beats blacked breathe collided flu incision no:FEELING no:REACH no:anymore nonstop pinky place sitting sublux throbs throwing when
18 almost die face lift maybe nights no:MY no:air no:away no:power partial second still strength take throbbing touches without yesterday
19 POSITION big down elbow halfway no:live slid slight someone took where wish
20 AGAIN DROOP SINCE THING ball by keeps matter no:HEIGHT no:to pounds there twice weak
21 GROUND keep me no:a no:trying pop weaker
22 ELBOW HAND LAND PART UNSTABLE blood came for horse ive no:the no:want out ran
23 FLUTTER OUT hurts landed no:MOTOR no:even socket weakness
24 SEAT SHOULDER morning night
25 BULGE PAIN advil no:my other pain running tingly
26 POP SHOCK chills every grip heard just lost no:ONTO no:WENT once something suddenly think thinking while
27 LOST dont no:PART woke
28 FEELING SLIP heart needles no:STOP walking weeks
29 HANDS HEART SWELL breath fainted hand like no:SEAT no:position no:strength sleep temp wont
30 FACE INFECT LOOK been feels fingers looks
31 BONE BREAK pins times
32 BLOW DIGIT POWER no:BREATH theres
33 SLUR SWEATS and
34 VEHICLE bone even
35 NEVER_ENDING VOMIT fever
36 WEAK
37 COLOUR NIGHTS life myself tingling want
38 CANT GASP into
39 side
40 FAINT LEAK NUMB WAKE
41 CHILL FALL chest
42 BUZZ WEAKNESS
43 CHEST FEVER no:POSITION since
44 temperature
45 no:POWER
46 DISLOCATE
47 SHAPE
49 cant
50 BREATH collarbone
52 WOUND
59 FEVERISH
60 FEVER_F
65 CRASH
67 PILL"""
