"""The points of words, in tenths: for a warning sign above 0, against it below.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented. One line holds all words of one value; `no:` marks a word that is denied, capitals a
family of the vocabulary, `#` any number.
"""

from __future__ import annotations

from typing import Final

START: Final = -27
TABLE: Final = """\
-53 if
-50 his
-42 fine
-39 good
-37 coach
-35 sore
-33 do should
-32 front we
-30 lol
-29 barely too
-28 didnt what
-26 was
-25 normal
-24 ago none traps
-23 a-saying
-22 last more neck nope ok stiff
-21 bus great long no:SWELL them
-20 band did her no:NUMB working
-19 ELSEWHERE brother free pinch were
-18 always new work
-17 FRACTURE from hurt not surgery
-16 easy friend has our pops same six struck team
-15 NUM he hit mom mostly nah no:POP no:WEAK no:weak pinched pinches sharp sister you
-14 # care done gym knee no:numbness no:or no:swelling used will
-13 biceps blister buddy exercise no:no no:say roommate worried
-12 can does finish hair hardly labrum lifting no:FALL played rested school snapped started throws well years
-11 OPPONENT call girlfriend heavy kid no:# no:SLIP pen ready smooth stretch wife writing year
-10 balls broke clean clicks could cracked crossed dog dropped forgot grandpa heavier isnt later light mean no no:MANY no:NUM no:anything no:have no:is only pinching pulled stretched tonight toss week would
-9 club couple dad drills em finished go goal high most must no:i no:today old pitcher slept solid struggled swells tape thats told tossed
-8 BREAKS_LIKE any away blade blisters competition course early eight end foot glove goalie gone guess lights live match mound net no:BULGE no:FAINT no:LEAK no:control no:of no:report no:was painful season son soreness strong throat towel triceps weight worry
-7 ankle bad bp broken crap dislocate form ft had know manageable minutes no:COME no:FEVER no:FLUTTER no:OUT no:bad no:felt no:nothing no:once no:pain no:swollen no:there no:throwing no:weird operation passes pitches pr quick scared set seven shelled skipped squats stop toe usual volleyball weights
-6 MANY bar blades comfortable cooked cousin cramp cuff day delt dunno finally four gimme haha hands happy heat hmm hospital hours infield kept kids late lats lecture lets lot means meh nail negative no:CHEST no:DROPPING no:LEG no:at no:chest no:complaints no:dizzy no:fall no:fever no:issues no:legs no:numb or paining painless part rain rained rate right say slow spot stayed steady three typing wait who wore
-5 afraid asked bag beat best bullpen college concert crowd dads daughter dentist depends elbows enough fastball fire hate him homework ill indeed inning knuckles lifted low march meet midnight moved mud nicely nighter no:BREAKS_LIKE no:CANT no:COLD no:COLOUR no:HAVE no:WEAKNESS no:band no:cold no:enough no:good no:hurts no:normal no:pop no:popped no:signs no:slipped no:so no:think no:tingling no:weakness order partner physio please position probably pt pump question reps says serving shots shoveling sir start stretching summer swinging these tough trap tuesday u uh very weekend whom wrist
-4 bands bro bumpy burrito butt change cheat chilled cleats cracks cut dips doctor drill dry effort far final fixed frozen game goes goose gripping helped hits ish knees lazy livable make mistake money month nada nap naw need neither no:BLOW no:INFECT no:WAKE no:above no:any no:dead no:drop no:either no:feels no:infection no:noticed no:slip no:time no:towel no:whatsoever noticed nuh odd ouch party pitch pitched pm rough row said scary session shaky shows signs so softball spring staying stick swell swings tad teammate test thank today tolerable tournament training unfortunately wall warmup watch win y yessir zip
-3 DAILY DULLED about achy actually alright anything as baby bends bones born bunch burns busy catches chair challenging chilly class cleared color conditioning curls curve denies deuce doc earlier eh field finger five friday garbage give goalkeeper gonna guys h half helmet huh idk innings jammed level max mechanics mhm mobility nil no:AGAIN no:BRUISE no:SHAPE no:THING no:UNSTABLE no:all no:blue no:chills no:difficulty no:fallen no:great no:hit no:like no:little no:lol no:looks no:much no:needles no:new no:none no:out no:pins no:popping no:pops no:problem no:problems no:throws no:trouble no:unstable no:yesterday now off opening opponent peaked perfect plunked problem promise quarter saw sets skip sliders slip snow some somewhere stand starts stroke sure th third threw tired toast topped traveling velos weather weekly weird worked yet zero
-2 DROPPING af after afterwards alarm amount ask at attack backpack behind bottle bowled bucks burning chillin closed collar counts died disc drops exam failed falling finals follow garden gassed gross gun guy hall handle hitter hoodie hope jav javelin jello keeper knows leaves left m many much nails near needed no:RED no:am no:bit no:breathing no:bumps no:came no:dizziness no:dropped no:everything no:falls no:got no:had no:hurt no:jk no:pinch no:redness no:resting no:short no:shortness no:shoulder no:sir no:slipping no:stuff no:too no:wait no:why numbness overs plate press program quite reach ride s sec seconds sessions shoes shoulders skating smoked sneeze sprints stopped sunburned swim their thursday toes tomorrow torn tosses travel turf twenty twinge until ups whatever workout
-1 aint anyway arms back banged before bent bout bowling box boys burger catching changeup checked climbing cold defense dinner doubleheader drank drum ever few fielder fish flipped goals grade habits heater hill hip hovering icy jk keeping knocked lead league lineup look machine maxed maximum months no:KEEP no:QUITS no:SHOULDER no:anywhere no:as no:bruises no:bruising no:clicking no:clicks no:clunks no:cough no:cuff no:discoloration no:drama no:fell no:grip no:hits no:hold no:keep no:me no:painful no:really no:rly no:sleeve no:slept no:speak no:thing no:those no:tingle no:tingles no:tingly no:went no:yes no:zero numb ol ones otherwise overhead plyo points pool popping practice rd reaching scratch seams seat seems served serves setter shin shirt sick sidearm slump smash sorry stubbed study super tapped ten tingled tore tree upper usually warm wed yards
1 ASLEEP LOOSE account an asleep backhand balled bang base basically bat beaned better bike blew blotchy bluish both brushing buckle bulge bye caught click close clue collapsed comes completely curb dented different draining drop drunk dude due dull either else evening eye fielding fluid foul fuzzy girl gives giving goosebumps ground gut here hole hopped instant joke jump jumped kicked kneed loose lurched made mornings move nerve no:LOST no:MOVE no:PAIN no:RIBS no:ball no:button no:comb no:coming no:day no:fingertips no:hair no:happened no:key no:nor no:pick no:pull no:quite no:shampoo no:shirt no:shut no:straighten no:three no:wash no:water no:week no:what pencil phone pizza plank poke pole poured pulse putting reddish resting rings separated serve shaking shifted shiny shot shut single smashed sneezed sound spleen square squared straight straighten streaks stumbled table tea tried vibrate wake warmups wave waxy wearing went wheel which won wood worse zaps zing
2 ability absolutely against bandage bed being belly below bleachers bowl branch brief burned button buzzy catch chalk changed clicked crawling crunch current dove drenched drilled driving dusky elbowed find fizzes fridge gallon ghost goosey gray growing head height honestly index jolt jumps kind lines meets middle milk missing moment mph no:ELBOW no:ELSEWHERE no:LOOK no:PUT no:bottle no:cap no:doorknob no:elbow no:going no:head no:look no:matter no:mine no:more no:over no:past no:press no:push no:ring no:serve no:shelf no:sleep no:socket no:throw no:top outfield patch pitching pretty prickling puked pushup reached rebound roll saturday scrum secs shade shift shivers skateboard skipping slider slides smacked sock sorta spaghetti stood stops sunken sweating those tightness tops track try twang use wet wrists
3 BRUISE REACH above aching apart bases basketball bath between bicep bigger bolt bruise butterfly buttons clunk clunks cock coin comebacker corner crazy crooked crushing deformed dislocated elephant er except felt first floor fluttering full gets going golf hard hasnt holes ibuprofen it keys ladder leave lightning limp locks might missed naproxen ngl no:CATCH no:NEW no:NIGHTS no:NOT no:TIGHT no:budge no:deep no:door no:ever no:finger no:fingers no:net no:night no:rotate no:scratch no:sitting no:stay no:turn no:unscrew no:zip opens outstretched pan playing popeye prickles prickly puffiness r racing recliner release relief rolled rubber sand sat shelf shortstop shove sleeve slipping sort spike squeezing standing sticks strike sunday sweaty taking teeth tingles tip touched turning unbearable vice vomiting walk weeping wobbly wrong yanked zap
4 CLUMSY COLD UNDONE although arent armpit atv balloon because bench bicycle bit block blown boards bubble but buzz clumsy coming constantly crash dark deck dent dirt diving dropping ear external fist helps hour how id im injection laying lb makes may mid muscle next nine no:HAND no:behind no:breath no:but no:catch no:down no:drive no:fit no:force no:goes no:juice no:reach no:rest no:sensation no:side no:squeeze novocaine outer partially pile possibly push pushed put racket range rotation runs seatbelt shakes shock site slipped smh sparks speed stabbing stage stairs steps stone strap struggling sucking swole swollen tender they thirty throw thumb tight trouble turn velcro waking wasnt watching wrap wrestling
5 HOLD TIGHT VEIN across around coffee colder cork couch cup droopy eases electricity ending feel feet grey gunk hollow house impossible improvement infected killing lately less lightheaded locker minute motion no:CHANGED no:ODD no:VEHICLE no:alive no:does no:full no:hurting no:left no:quits no:take no:without outside own pains pale plus pounding puffed quit raise rep ribs short slide smell soda sometimes spiked tackle tearing than things thought tingle tiny trainer trampoline tripping trucked tumbled two veins vision water wiped with wrapped wrecked yellow
6 FLU GIVES ODD TIGHTER again am became black bladder breakfast breathing buzzing cause chasing clunked compared control cutter door drooping droops eating edge ended everything fat flops handlebars hanging help hot huge hurting inner irregular itself joints kill lower lungs nearly no:MISSILE no:come no:gas no:gone no:not no:sudden nowhere on opened pointer portal quits ripped see sensation sit size snapping stuck sudden surgical tear turned useless words
7 HAVE MY NOT TIRED also another balance become bender boiling catcher days dizzy each electric fence fender flew flight frame gave have home in ive lbs let lil line lump lunch never no:for no:it no:off no:wanna peed perhaps player poking room scar sheets slightly stuff sweat tackled the time ucl vanished white why
8 LEG LIFT ONTO air ants baseman degrees drive everyone faint fast flu fork freezing green having hold legs meds monday no:ACHE no:DIGIT no:GROUND no:ON no:lets no:on no:right no:that one oozing open painkillers passed planted pressure round scooter shape skiing sleeping swelling theyre thick thrown whats wish yeah
9 HEADACHE PUT STOP anymore are breathe bump come falls forearm headache header joint lay lie my no:BY no:PILL no:be no:here no:in no:with palm point popped rather rear reason rip ripping shooting sounded this touch wound wreck
10 BE NEW ON RIBS accident ache breathless cannot dive doing feverish hangs havent leaking no:go no:stops nonstop omg onto puking pus really smells snap somebody someone static sticking till tv under vomited wheezing worst wouldnt yep
11 LIMP a ate car clock coughing deep dugout fell gasping getting jaw linebacker living no:HANDS no:comfortable no:get no:words nothing over puffy shivering shoulder speech stitches think to whole
12 CALF CHANGED KEEP MISSILE MOVE SHEETS calf collided collision constant coughed crack die doesnt fingertips get is longboard mouth no:DAILY no:PUSH no:air no:back no:breathe no:feeling no:sore of red rest slurred sweats swelled thing though through up
13 BY HOT aches awake be by exhausted funny got inside kilos loud maybe no:and no:power no:up pounds purple skin small soaked subluxed take tripped when
14 ACHE COME all beats blacked crashed dislocation face feeling forward ice losing lying no:BE no:SOCKETED no:arm no:even play ring slurring throbs touches unstable without yup
15 ARM MOTOR QUITS SOCKETED WENT big dead i lift no:ARM no:FEELING no:REACH no:SINCE pinky throwing took where
16 POSITION PUSH RED THING couldnt incision no:anymore no:away still strength twice winded
17 HEIGHT UNSTABLE arm elbow its nights no:HEIGHT no:live place sitting slammed slight sublux then weak weaker
18 DROOP down fainted halfway keep keeps me no:trying no:want partial running there throbbing
19 ELBOW LAND almost for horse no:a pop ran socket yesterday
20 HAND SINCE life matter slid while yes
21 AGAIN FLUTTER OUT PART SPENT blood hand hurts landed morning no:the no:to out something
22 BULGE SHOCK SHOULDER ball even night no:MOTOR second times tingly weakness
23 chills every fingers heard needles no:MY no:PART no:WENT no:my pain suddenly weeks woke
24 advil been lost no:BREATH no:strength once
25 GROUND INFECT PAIN SLIP SWELL came dont grip other thinking want
26 BLOW BONE heart just no:ONTO temp walking
27 FACE HEART LOOK POP SEAT no:STOP pins sleep wont
28 BREAK FEELING HANDS NEVER_ENDING breath looks no:position
29 DIGIT LOST SLUR
30 FAINT WEAK bone fever like no:SEAT theres
31 and tingling
32 POWER
33 VOMIT feels
34 NIGHTS VEHICLE
35 BUZZ CHILL COLOUR SWEATS
36 FALL WAKE no:POWER since
37 GASP myself
38 WEAKNESS chest side
39 CHEST FEVER NUMB temperature
40 no:POSITION
41 into
42 CANT DISLOCATE SHAPE collarbone
44 LEAK
46 WOUND
48 BREATH cant
53 PILL
57 FEVERISH
60 FEVER_F
61 CRASH"""
