"""The points of words, in tenths: for a warning sign above 0, against it below.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented. One line holds all words of one value; `no:` marks a word that is denied, capitals a
family of the vocabulary, `#` any number.
"""

from __future__ import annotations

from typing import Final

START: Final = -27
TABLE: Final = """\
-54 if
-51 his
-44 fine
-37 coach good
-36 sore
-32 normal should we
-31 what
-30 front lol
-29 didnt
-28 barely do
-27 was
-26 neck
-25 ago more too
-24 bus traps
-23 band last no:SWELL none nope pinch stiff them
-22 ELSEWHERE ok
-21 a-saying free great
-20 friend long no:NUMB were
-19 did her new team working
-18 FRACTURE brother hit mom six
-17 blister does easy he not pinched sharp
-16 always hurt our pops struck work
-15 from mostly no:POP no:swelling pinches same school sister
-14 done exercise gym hardly has no:WEAK no:or no:weak ready used well will worried you
-13 NUM biceps care cracked labrum lifting no:numbness no:say roommate snapped surgery years
-12 # broke buddy dad heavy knee nah no:no pulled rested throws tossed weight
-11 balls call can course crossed finish girlfriend heavier isnt no:# no:FALL no:MANY no:NUM no:SLIP pinching played started toss wife writing
-10 OPPONENT clicks could dropped forgot go grandpa hair hands kid later light mean must no:anything no:have pen seven smooth stretched week year
-9 BREAKS_LIKE clean club couple dangerous dentist drills em finished goal high know match most muscles no no:i no:is pitcher pitches scared set slept stretch struggled swells tape thats told tonight would
-8 competition cracks day early foot ft glove goalie guess hall live manageable net no:BULGE no:FAINT no:LEAK no:control no:report no:today old only painful pills skipped solid son towel triceps worry
-7 ankle any bp comfortable cousin cut dislocate dog eight form four had late lats lecture lets minutes mound no:COME no:FEVER no:OUT no:at no:nothing no:of no:once no:pain no:swollen no:time no:was or passes please pr quick rain say soreness squats stayed stop streak strong throat usual volleyball weights
-6 MANY bag blades broken cooked cramp crap cuff delt enough finally fire game gone haha happy heat hes hmm hospital infield kept kids lights meh nail nicely no:CHEST no:DROPPING no:FLUTTER no:bad no:bit no:chest no:complaints no:dizzy no:fall no:felt no:fever no:hurt no:issues no:lol no:numb no:pop no:throwing no:weird noticed operation paining painless physio probably rained rate right shelled so steady summer three today toe tuesday wall wore
-5 afraid attack bar best blade change cleats college concert crowd dads daughter died dunno elbows end five gimme give goes hate him homework ill inning knuckles law low march mate means meet midnight money moved mud negative neither nighter no:BLOW no:BREAKS_LIKE no:COLD no:COLOUR no:LEG no:WEAKNESS no:band no:cold no:enough no:good no:legs no:normal no:popped no:problem no:signs no:slipped no:so no:there no:think no:tingling no:weakness no:whatsoever order part partner party pitch pt pump reps season serving session shots sir sling slow spot sprints start swinging these tough trap typing u uh wait who whom win
-4 about asked away beat bends bodys bro bullpen bumpy burning burrito butt catches chilled depends deuce doc dry effort eh exam far fastball final frozen goose gripping hammer head healthy hits hitting indeed ish knees lazy lifted livable lot max nada nap nil no:AGAIN no:CANT no:HAVE no:INFECT no:WAKE no:above no:all no:blue no:came no:dead no:drop no:feels no:hurts no:infection no:none no:noticed no:one no:slip no:throws no:towel now off ouch pitched plate plunked pm position power question regret rough row says shaky shoveling shows signs softball spring staying stick stretching swell swings teammate test th thank tired tomorrow training very warmup watch weekend y yet zip
-3 achy actually alright as baby back bad bands bones bunch burns busy cheat chilly cleared closed conditioning curls dips doctor falling field fight fixed friday gonna guys helped hip homers huh idk innings make mechanics mhm mistake mobility much nails naw no:BRUISE no:SHAPE no:THING no:UNSTABLE no:any no:difficulty no:dizziness no:either no:great no:had no:hit no:like no:little no:looks no:much no:new no:pins no:popping no:pops no:trouble no:unstable nuh opening opponent paper peaked perfect problem promise quarter repetition said saw scary sets skip sliders slip smoked sneezed snow somewhere stand starts stroke sure tad third threw toast tolerable topped tosses tournament traveling unfortunately until velos weather weekly worked yessir zilch
-2 DULLED af afterwards aint alarm amount anything arms ask banged bled born both bottle bowled catchers chair challenging city class climbing collar color counts curve denies disc drill drops earlier entirely failed finals finger follow garbage garden gas gassed goalkeeper gross gun guy h half handle helmet hill hitter hoodie hope jav javelin jello joke keeper knows leaves level m maximum needed no:RED no:am no:breathing no:bumps no:chills no:dropped no:everything no:fallen no:falls no:first no:got no:jk no:needles no:out no:pinch no:problems no:redness no:resting no:rly no:short no:shortness no:sir no:slipping no:tingles no:too no:training no:wait no:why no:yesterday nose numb numbness odd otherwise overs pee pillow plane practice practiced press quite r reach ride s sec seconds sessions shaking shoes skating sleepover sneeze snowball some sorry stopped sunburned swim their torn travel turf twenty twinge ups watched weird workout wrist zero
-1 CATCH DAILY after at backpack before bent blind bout box boy bucks burger changeup checked cold cricket defense dinner doubleheader drank drum during few fish goals grade grind habits heater hours hovering jk keeping knocked lead league leg lineup little machine many maxed months no:PAIN no:SHOULDER no:anywhere no:bruises no:bruising no:clicking no:clicks no:clunks no:cough no:cuff no:discoloration no:drama no:feel no:god no:grip no:hits no:hitter no:hold no:me no:painful no:really no:shoulder no:sleeve no:slept no:speak no:stuff no:thank no:thing no:those no:tingle no:tingly no:tomorrow no:went no:yes no:zero ol ones overhead plyo points pool popping program puked pull rd reaching run scratch scrimmage seams seat served serves setter shin shirt shoulders sidearm slipping slump smash smashed stubbed study tapped ten thursday toes top train tree trumpet us warm whatever x yards
1 WOBBLY account against alone balled basically beaned blotchy blue body bowl brushing buckle center changed click close clue coat coffee completely crawling crying curb dented draining drenched drunk dude due dusky either else eye fielding first fluid folded fuzzy gatorade girl goosebumps ground gut hard harder here holding instant jump jumped kind kinda locker lurched made may mornings need nerve no:ELSEWHERE no:LOST no:MOVE no:RIBS no:ball no:button no:comb no:coming no:fingertips no:hair no:happened no:head no:key no:pick no:quite no:ring no:shampoo no:shut no:steering no:straighten no:strong no:wash no:water no:week no:wheel pizza plank playing poke pole polo poured rack reached reddish rings separated serve shiny shut sick single slider sound spleen square squared stood straighten streaks table tea that vibrate warmups wearing wheel which won wrong zaps zing
2 ASLEEP LOOSE ability absolutely an apart asleep bandage bang bases bat bed being better bike bleachers bluish bolt brief buckled bulge burned button caught chalk clicked comebacker comes crushing current deformed different drilled driving drop dull evening exercises find fizzes floppy foul fridge fumble gallon ghost gives giving goosey growing height hole hopped jolt jumps kicked kneed lat lightning lines loose meets middle milk missing moment month move mph no:ELBOW no:LOOK no:NOT no:PUT no:between no:bottle no:cap no:chill no:day no:door no:doorknob no:elbow no:going no:look no:matter no:more no:over no:past no:press no:pull no:push no:serve no:shelf no:shirt no:socket no:throw no:top no:what outfield outstretched phone pin pitching prickling pushup putting reading real rebound roll rubber scrum secs shade shift shower skateboard skipping slides smacked sock spaghetti stays strange strep sunken sweaty those thread throw tops track trampoline try twang unsteady waking wave waxy wood wrists
3 BRUISE REACH above aching although am bath belly below bicep bigger branch breastbone bruise but butterfly buzzy clunk clunks cock coin constantly corner crooked crunch dirt dislocated elbowed elephant er except felt fluttering gets going golf gray hasnt helps holes im index keys leave limp locks minute naproxen near ngl nine no:CATCH no:LIFT no:NEW no:TIGHT no:budge no:deep no:ever no:fingers no:fit no:lifting no:mine no:net no:rotate no:scratch no:sitting no:stay no:zip opens pan patch popeye pretty prickle prickles prickly puffiness racing racket release relief rolled sand sat shaped shivers shortstop shot shove sleeve sometimes sort sorta spike sticks stops strap strike stumbled sunday sweating taking tell thirty thumb tight tightness touched tried use vomiting wake weeping wobbly yanked zap
4 across arent armpit balloon basketball behind bench between bicycle block blown boards bubble bumped buttons buzz coming crash crazy dark dent diving external feet fist floor grapefruit hour id injection it lb makes missed muscle next no:HAND no:NIGHTS no:breath no:but no:catch no:down no:drive no:finger no:force no:goes no:juice no:night no:quits no:reach no:rest no:sensation no:side no:squeeze no:turn no:unscrew no:without novocaine outer outside pale palm partially pencil plus possibly pounding push pushed range recliner rep rotation runs seatbelt shock short site slipped smh sparks speed spiked stage steps stone stove struggling sucking swole tackle teeth tender than they tingles tripping trouble truck turn unbearable vice watching with wrap wrestling
5 CLUMSY COLD HOLD TIGHT TIGHTER UNDONE another around atv cannot clumsy cork deck dove droopy ear eases electricity grey gunk hollow house how hurting improvement infected inner kill lately laying lightheaded mid motion nearly no:CHANGED no:ODD no:VEHICLE no:alive no:behind no:does no:full no:take nowhere pains pile pjs puffed put quit rather ribs saturday shakes shelf smell spreading squeezing stabbing stairs standing stuck swollen tearing things thought tingle tiny tip trainer trucked tumbled turning velcro vision walk wasnt wiped wrecked yellow
6 GIVES HAVE NOT VEIN again air also because bit bladder breakfast buzzing colder compared control cup cutter door drooping droops eating edge everything feel flops frame hanging help honestly impossible irregular killing ladder lbs leash less lower lump lunch lungs never no:ACHE no:MISSILE no:ON no:come no:gas no:gone no:hurting no:not no:on no:right no:sudden opened own pointer portal quits raise ripped screaming see sensation sit snapping soda straight stuff surgical takes the two useless veins water words wrapped yeah
7 FLU LEG MY ODD ONTO TIRED balance became black boiling chasing clunked couch days dropping ended fast fat fence flew flight gave huge ibuprofen in joints let lil might no:GROUND no:it no:left no:off no:wanna on one planted poking room shape sheets size skiing sudden sweat tackled tear thick time turned ucl vanished why
8 LIFT ants baseman bender breathing cause degrees dizzy each electric ending everyone faint fender fork freezing green have having home hot itself legs line meds monday no:for no:lets no:that omg oozing open peed perhaps player pressure round scar scooter swelling theyre this whats white
9 HEADACHE NEW STOP anymore become breathless bump catcher collision come doesnt drive falls fell flu headache header my no:PILL no:be no:here puking rear reason rip shooting slide slightly sounded sticking till wound wreck yep
10 BE ON PUT a ache ate dive feverish forearm handlebars hangs joint lay lie no:BY no:back no:with painkillers point really ripping smells somebody someone stitches through touch tv under vomited wheezing worst wouldnt
11 CHANGED RIBS accident breathe clock constant coughing deep doing dugout fingertips havent hold is ive linebacker living no:DIGIT no:comfortable no:go no:in no:stops no:words nothing onto popped puffy pus shivering shoulder snap speech static thrown to
12 HOT SHEETS collided coughed gasping get getting got inside jaw no:air no:get no:sore of passed red rest sweats swelled tripped whole yup
13 ACHE BY CALF LIMP are awake be by calf car crack die exhausted funny kilos longboard loud lying mouth no:DAILY no:PUSH no:feeling no:power no:up pounds purple slurred take thing think touches without
14 COME KEEP MISSILE MOVE PUSH QUITS aches all blacked dislocation forward ice leaking lift no:BE no:FEELING no:HANDS no:SOCKETED no:and no:arm no:breathe over ring skin sleeping slurring small soaked though unstable up when
15 ARM MOTOR SOCKETED WENT beats big feeling i losing no:ARM nonstop subluxed then throbs throwing took where winded
16 POSITION crashed dead incision maybe nights no:REACH no:SINCE no:away pinky place still sublux
17 RED THING arm face no:HEIGHT no:anymore no:even no:trying play sitting slammed slight strength throbbing weaker
18 DROOP HEIGHT down elbow halfway its keeps no:live no:want partial there twice weak wish
19 HAND LAND UNSTABLE almost couldnt fainted for horse matter me socket yes
20 ELBOW SINCE keep pop ran slid yesterday
21 PART SPENT blood hurts landed morning no:my no:to
22 AGAIN FLUTTER OUT no:MY no:a out running second tingly weeks while
23 SHOCK SHOULDER lost night no:MOTOR other pain suddenly weakness woke
24 BULGE advil ball chills every life needles no:WENT no:the times
25 FACE INFECT PAIN POP SLIP SWELL dont fingers hand heard no:PART thinking
26 GROUND been came grip just no:BREATH no:ONTO once something want
27 BLOW BONE HEART heart no:strength pins temp walking
28 BREAK HANDS LOOK breath like looks no:STOP no:position wont
29 FEELING SEAT
30 DIGIT LOST POWER SLUR bone even no:SEAT theres
31 FAINT VOMIT WEAK and sleep
32 feels tingling
33 NEVER_ENDING VEHICLE fever
35 NIGHTS WAKE
36 CHILL SWEATS
37 BUZZ COLOUR GASP myself
38 chest no:POWER side
39 FALL NUMB WEAKNESS
40 CANT since
41 CHEST FEVER into no:POSITION
42 DISLOCATE temperature
43 collarbone
44 SHAPE
45 LEAK
46 WOUND
47 cant
48 BREATH
58 FEVERISH
59 FEVER_F PILL
62 CRASH"""
