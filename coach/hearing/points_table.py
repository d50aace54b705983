"""The points of words, in tenths: for a warning sign above 0, against it below.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented. One line holds all words of one value; `no:` marks a word that is denied, capitals a
family of the vocabulary, `#` any number.
"""

from __future__ import annotations

from typing import Final

START: Final = -29
TABLE: Final = """\
-55 if
-54 his
-44 fine
-40 good we
-39 coach
-38 sore
-33 front
-32 should what
-31 normal
-29 bus
-28 barely was
-27 ago did lol no:SWELL them
-26 neck none too
-25 didnt more
-24 pinch stiff traps
-23 ELSEWHERE FRACTURE do great hurt new nope
-22 band last no:NUMB working
-21 a-saying
-20 always free long mom six well were
-19 brother does friend he hit roommate
-18 broke easy exercise her no:say ok our sister
-17 no:POP not you
-16 blister hands must nah no:WEAK no:weak pinched pinches pops sharp team years
-15 call lifting no:or no:swelling school snapped stretched throws
-14 biceps done hardly mostly no:have no:numbness ready same surgery will
-13 care em from gone knee no:no struck used worried year
-12 NUM buddy dad gym hair heavy isnt kid labrum no:of no:swollen pinching rested stop toss tossed work writing
-11 # can crossed forgot four heavier muscles no:FALL no:LEAK no:SLIP no:pain pen pulled started wall wife
-10 balls clicks couple course cracked finish girlfriend go grandpa has homework later light live most no:# no:is old painful played skipped three volleyball weight
-9 afraid asked club could cracks dangerous difference early finished foot goal happy mean much no:BULGE no:anything no:i only pitcher rained say scared shopping slow smooth solid soreness swimming thats tonight
-8 ankle blade bullpen clean cleats drills eight five goalie know make money no:FAINT no:FEVER no:MANY no:NUM no:complain no:felt no:fever no:hurt no:me no:nothing no:numb no:report or pills pitches rain slept son spring stretch struggled swells tape test told towel week who worry would
-7 OPPONENT best bp broken comfortable competition cousin dislocate ft glove goes had heat high ill lecture march match minutes mound net no:COLD no:FLUTTER no:LOOSE no:OUT no:any no:at no:better no:cold no:loose no:once no:pop no:problem no:throwing no:today no:was no:weird operation passes physiotherapist pitched please pr problem rate rust session spot stayed steady streak tank teammate throat triceps weather weights
-6 BREAKS_LIKE bag busy change concert cramp crap crowd day delt drink dropped father finally gonna guess haha head healthy hes hmm infield kids lats manageable meh nail nap negative no no:CANT no:CHEST no:COME no:DROPPING no:PAIN no:WEAKNESS no:bad no:chest no:fall no:popped no:slipped no:so no:time no:trouble no:weakness now paining part probably quick said saw says set shelled so squats stick summer today toe trap ugh watch wore workout yet
-5 MANY any arms away bar bee blades both break bunch chillin click college cooked cuff dads daughter dentist died disc failed fastball goo gripping him hospital innings ish kept late leg low means meat meet midnight moved nails neither nicely nighter no:BLOW no:BREAKS_LIKE no:LEG no:band no:bit no:came no:complaints no:control no:dizzy no:issues no:legs no:lol no:none no:one no:there no:tingling nose noticed off ouch painless partner party phone physio pump reps right season shirt shots snow sprints strong these tough training tuesday typing usual whom win
-4 DULLED baby bands beat bends blind bro bumpy burning burrito butt catches catching child chilled chilly closed count cut desk deuce doc doctor dry dunno ears effort eh elbows end enough exam far fight fixed form friday frozen gimme give goose hall hits indeed inning jk knees knuckles law lazy livable loaded makes mate max mud needed no:COLOUR no:INFECT no:above no:dead no:drop no:feels no:good no:infection no:more no:normal no:noticed no:signs no:think no:throws no:towel no:whatsoever oven perfectly picking plunked pm pt row sack seat sec serving shaky shoveling shows signs sleepy sling start staying stretching stroke swell thank toast twinge tyre u uh us wait warmup weird worn zero zilch
-3 achy alright amount attack bodys bones carried chair changed cheat class cleared close conditioning controlled crisp curls curve depends dipped dips dog drank drop dumbbell ever falling final fire floor garbage guy guys hammer hearing hip hitting homers hope huh javelin june keeper level lifted lot mad medium mhm mistake mobility nada naw nil no:BRUISE no:HAVE no:RED no:THING no:UNSTABLE no:WAKE no:all no:blue no:difficulty no:either no:got no:great no:hit no:hurts no:like no:little no:much no:new no:pins no:popping no:pops no:problems no:redness no:slept no:slip no:start no:sure no:tingle no:unstable no:why noise nuh opening opponent peaked perfect pitch pizza planks plate poor position programme quarter question raining regret rough s scary serious settled shaking sir skip sliders smidge sneezed softball some somewhere stand starts sure swings tad ten th third toes tolerable tomorrow topped tosses tournament track trained trapezius traveling unfortunately until velos watched wear weekend weekly worked y yessir zip
-2 absolute actually aint amazing ask back backpack bad banged bent bf bled bleeding born briefly brutal burns burpees caught challenging city collapsed counts crispy crushed delay denies drill eaten entirely exercises field finals firm follow game garage gas gassed gentle grind gun h habits handle heartbreaker helmet helped hill hills hips hitter hoodie hours jav knows lead little locked longer m mechanics neighbour nice no:DULLED no:HOT no:SHAPE no:breathing no:bruising no:bumps no:catching no:chills no:cuff no:dizziness no:do no:dropped no:everything no:fallen no:falls no:first no:had no:looks no:needles no:nor no:pinch no:resting no:rly no:short no:shortness no:sir no:slipping no:stuff no:tingles no:tingly no:too no:training no:wait no:went no:yesterday numbness otherwise overs pause pee plane pole ponytail practiced promise quite r rack repetition run scrimmage send serves sessions sets she shin sick sleepover slip smoked sneeze snowball sometimes soon sorry spicy stiffness study sunburned swinging tea their tingled torn train travel trumpet turf twenty ups very winter
-1 DAILY about afterwards alarm bear bout bowled boy boys bucks burger catchers changeup climbing collar cricket curveball deal doubleheader drum extras finger first fish foul fun garden gate goalkeeper goals grade gross half hate heater holding hop hovering idk jello jump keeping laundry league left lineup man manage maxed maximum miss modest muscle need no:SHOULDER no:am no:as no:bruises no:clicking no:clicks no:clunks no:cough no:discoloration no:drama no:enough no:feel no:feelings no:god no:grip no:hits no:hitter no:hold no:how no:jk no:last no:painful no:pinching no:really no:same no:shoulder no:sleep no:thank no:thing no:those no:tomorrow no:yes numb ol ones order overhead pillow plyo points popping power press program puked pull rd reach reaching rehab ride rly roof sat scratch screen seams served setter shake shoes sidearm skating slipping slips slump smash smashed stomach stopped street struggle stubbed stung swim threw thursday toilet tree umpire upper wind won wrist x yards
1 WORN account after against anything appeared backhand balled bases basically bat beaned better bicep blew blotchy blue boat bottle bowl bowling bruised buckle bulging carrying catch chalk clue coat cold completely crash crawling crushing curb dented draining drawer dreadful drenched elses eye eyes fall fielding fizzes flat fluid fly folded football fuzzy gallon gatorade goosebumps ground gut hopped icing jar joke kneed lidocaine literally lurched missed mitt mornings ngl no:ELBOW no:ELSEWHERE no:HOLD no:KEEP no:LOST no:RIBS no:ball no:comfy no:coming no:elbow no:explain no:fingertips no:hand no:keep no:key no:pick no:quite no:snap no:steering no:straighten no:strong no:three no:touch no:wash no:wheel poke poked poured powerless pressing pulse putting racket reached real reddish rings rise seconds shifted shiny shocks shoulders shut single sleeps spleen square squared straighten streaks sweating tell throw vibrate visibly wanted waxy wet wheel window worse zaps zing
2 WOBBLY ability absolutely an animal area bandage bang barking base before behind being between bleachers blocked bluish bolt brief brushing buckled burned button clicked coffee crying current cycling drilled driving drunk dude due dull dusky ear either evening feeble few find flag fridge fumble ghost girl giving goalpost golf goosey growing height higher jolt jumps keys kind knocked lightning limb lines liquid may meets middle mightve missing moment mug next nine no:HEART no:NIGHTS no:NOT no:between no:bottle no:cap no:chill no:comb no:day no:doorknob no:going no:hair no:head no:matter no:mine no:night no:notice no:over no:past no:pull no:push no:ring no:serve no:shampoo no:shelf no:shirt no:shut no:socket no:speak no:stay no:throw no:top no:two no:wake no:water no:week no:what outstretched pan paper parked pin pitching plank playing prickling pushup pushups reading rebound record relief roll scrum secs separated serve shift simply sinks skateboard slider smacked sock sound spaghetti spike stings stood strep strikes sunken super sweaty table they those thread tired tops tore try twang ulnar vomiting wave wearing with wood
3 GIVES apart bath belly below blow body branch bruise bulge butterfly buzzy chin clunk clunks coin comebacker constantly corpse crooked crunch deformed different during elephant er except felt fielder floppy fluttering footing gray hard hasnt held helps here hole holes index injection jolts kicked kinda kitchen lat leave locks made many milk months mph naproxen near no:LIFT no:LOOK no:MOVE no:NEW no:PUT no:catch no:deep no:door no:ever no:fit no:lifting no:look no:net no:pills no:press no:rotate no:scratch no:sitting no:zip opens outfield partially patch popeye prickle prickles prickly puffiness racing release rubber runs sand shade shove shower slam slipped sort spoon stops straight strike stumbled taking tightness tiny touched trainer trampoline trash tried unsteady way went wobbly yanked zap
4 ASLEEP BRUISE DROPPING REACH above aching although asleep balloon ballooned basketball because bed bench block blown breastbone bubble bumped burnt buttons buzz cock color comes coming corner dark dirt diving elbowed feel flew full going grapefruit grey grips hour kill knot lightly lunch no:ACHE no:SHEETS no:TIGHT no:bed no:bladder no:budge no:but no:down no:drive no:fingers no:force no:juice no:properly no:reach no:rest no:side no:take no:turn no:unscrew no:way novocaine outer pencil plus popp pounding pretty push rep rolled seatbelt shelf shock short site slides smh sparks spiked squeezing stays stone stove strange struggling sucking sunday tablets tackle teeth tender thirty thumb tumble turns unbearable use vice wake waking warmups wasnt watching wrap wrecked wrestling wrists yeah
5 HAVE HOLD LOOSE ONTO UNDONE across am arent atv bicycle bigger boards box cart center colder control cork deck dove droopy electricity empty external fist gave hollow house how id improvement infected key laying lb leash lightheaded limp loose minute motion no:CHANGED no:ODD no:ON no:VEHICLE no:alive no:behind no:breath no:didnt no:does no:finger no:gas no:not no:on no:quits no:regular no:sensation no:squeeze no:without nowhere open pale palm pile pjs possibly puffed range reason recliner ripped room shakes shaped shivers shortstop shot skipping sleeve smell somewhat spreading stabbing stairs steps sticks swelling swole tearing than the this tight tingles tip trouble tumbled turn tylenol velcro vision warm weeping wiped yellow
6 CLUMSY COLD MY again air another bit breakfast but clumsy clunked crazy cutter dent door droops eases eating edge else fell flops gunk honestly hot inner irregular it ladder lump lungs mid no:HAND no:MISSILE no:come no:full no:gone no:hurting no:left no:sudden outside own pains pavement pointer portal pushed quit quits rather saturday screaming sit snapping soda sorta spots stuck takes thought tingle truck useless whenever words wrapped
7 HUE LEG NOT TIGHT TIGHTER VEIN armpit around balance bike black bladder boiling buzzing chasing couch degrees dizzy ended feet fence frame freezing hanging having help huge in lbs let lower meds my nasty no:be no:goes no:leaves no:wanna no:worth opened peed planted raise ribs rotation see speed standing stuff surgical sweat things turned ucl vanished veins walk water why
8 BE CHANGED HEADACHE breathing come cup dislocated drooping everything fat have headache ibuprofen lately nearly no:GROUND no:it no:lets no:off no:right omg on one oozing player poking put scooter sheets size skiing stage sudden swollen tackled theyre thick trucked whats yep
9 NEW ODD a ache anymore baseman bender collision compared dropping everyone falls fender fork green header home itself joint less line monday month never no:for pacing reduced ripping scar sensation smells sticking sweats tear till time turning two vomited whatever white wouldnt
10 LIFT STOP TIRED also ants are became breathless bump coughing days drive each electric flight handlebars havent is killing might no:back no:sore no:that perhaps point rear red round shooting somebody sounded tripping tv under worst wreck
11 RIBS ate become catcher cause clock dead deep dive doesnt dugout exhausted faint feverish hurting impossible joints lay linebacker living no:here no:stops no:words nothing pressure really rip shape slide static stitches thrown to touch wheezing whole
12 ACHE MOVE ON QUITS accident be constant coughed fast gasping got hangs i jaw lie no:BY no:DIGIT no:comfortable no:get no:go no:in no:with onto over painkillers puffy puking pus shivering shoulder slightly swelled thing through yup
13 BY MISSILE PUSH all awake cannot couldnt doing ending fingertips funny getting mouth no:and passed rest snap then wound
14 COME FLU HOT LIMP MOTOR PUT SOCKETED aches crack dislocation forward inside kilos legs lil longboard lying no:BE no:DAILY no:PUSH of popped purple ring slammed sleeping soaked speech subluxed tripped up yes
15 RED SHEETS WENT car crashed feeling forearm ice losing loud no:PILL no:arm no:breathe no:feeling no:up play skin slurring small though unstable
16 ARM CALF KEEP calf collided flu get hold its leaking no:ARM no:HANDS no:SINCE no:SOCKETED place slurred throwing winded without
17 HEIGHT arm beats blacked breathe face incision lift no:FEELING no:REACH no:air no:anymore nonstop sitting still sublux throbbing throbs when
18 big by die halfway maybe nights no:away no:power partial pinky slight strength take there touches
19 DROOP POSITION THING almost elbow matter no:HEIGHT no:MY pounds someone took weak where wish yesterday
20 AGAIN SINCE SPENT down keeps me no:live no:to pop
21 ELBOW LAND PART blood for horse ive no:a no:trying ran second slid socket twice weaker
22 HAND UNSTABLE landed no:the out weakness
23 GROUND OUT SEAT SHOULDER grip keep morning no:MOTOR no:even no:want
24 BULGE PAIN advil hurts tingly
25 FLUTTER POP SHOCK ball just no:my pain suddenly think
26 came chills dont every fingers heard night once other running temp thinking while woke
27 LOST SWELL fainted heart needles no:ONTO no:PART no:WENT something weeks
28 HANDS HEART SLIP been breath lost no:STOP sleep walking
29 FACE LOOK hand like no:position wont
30 BLOW BONE BREAK DIGIT FEELING INFECT looks no:SEAT no:strength pins
31 feels theres times
32 POWER SLUR SWEATS no:BREATH
33 and bone
34 VOMIT even fever life
35 NEVER_ENDING WEAK want
36 VEHICLE
37 COLOUR
38 CANT FAINT GASP NIGHTS tingling
39 BUZZ WAKE chest side
40 NUMB into myself
41 CHILL FALL LEAK
42 CHEST WEAKNESS since
43 FEVER no:POSITION
44 temperature
45 no:POWER
46 DISLOCATE
47 SHAPE
48 cant collarbone
51 WOUND
52 BREATH
57 FEVERISH
60 FEVER_F
62 CRASH
66 PILL"""
