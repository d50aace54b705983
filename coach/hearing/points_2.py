"""The points of words and of pairs of words, in tenths, OPPONENT to and.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
OPPONENT -28 hit -25 has -23 dislocated -20 in -12 had -10 said -9 popped took was -8 wants -7 collapsed lol passed says 7 elses ran 8 crashed 9 out 10 landed 11 at kicked slid 15 bumped 17 else 18 fell 29 $
OUT -35 to -26 with -19 time -17 there -14 flyers -12 order -10 early rhythm twice -9 form -6 gas 6 as slurred 8 scar 9 between fingers jumbled 10 eye grip i incision 11 $ bath hand 12 # after 13 back its running 14 goosey on 15 . while 17 it mid then 19 nowhere reaching 21 during for 22 breath 23 in popped 24 front 27 when 31 place
PAIN -43 from -19 as -18 $ -17 but -16 after -15 yesterday -14 has -12 lot -11 muscles nothing -6 when 6 constantly over wouldnt 8 shooting shoulder since under wakes 9 behind meds pain 10 inside 11 awake up 12 around no was 14 woke 15 doesnt level that 16 every nonstop 17 and 18 had 19 at time 20 # 23 i 25 to 26 never 29 myself 31 night 39 .
PART -25 tired -23 bike smell -22 slot up -21 crossed sore -17 fine moves not ok -16 thats working -15 wrench -14 pops -13 good room -12 above care feeling worked -11 but could didnt works -10 tingles top warm -9 blades doing -8 bends day eye pump pumped -7 always felt give makes turn were -6 blade hurt last pinched tape touch 6 doesnt had killing mightve subluxed times 7 asleep come hurts out over prickles since slammed slid sliding started stopped stops tingled wrists 8 at became blue joints maybe past pop whenever 9 blown folded lurched slides that took while 10 came couldnt did hasnt inside keep opened separated shakes sleeps tingling 11 bone buckled died fingers fumble go hopped knees numb on pain puffed simply 12 back kept 13 $ fat its quit side 14 collapsed into r shifted shot size weak 15 drops every look rolled swole 16 aches cant slipped tingle 17 ballooned is locked nothing only opens to twice woke 18 falls hard have static 19 dislocated dropped lets no 20 for snapped tip when 21 buzzing jumped 22 gave keeps swollen 23 flops gives sticks wouldnt 24 blew first 25 hangs 26 stuck 27 let swelled turned 29 after 32 made 37 . has wont 45 went 46 looks
PILL -15 every -8 for -7 in 14 do 16 yesterday 37 to 43 i 64 before 72 .
POP -30 up -19 labrum -17 advil -16 wheelie -15 always since -14 fly it pen sometimes -13 bat knuckles off or -12 through -11 at balloon -10 dawn -9 open quiz -8 decision -7 collar -6 double throws 6 i weird 7 $ every pop 8 during jeans knuckle 9 champagne elbow with 10 feeling sensation 11 back sound 12 when 13 inside 14 hard rubber shoulder 15 arm 16 in 17 cant 18 no 19 . couldnt painkillers 22 but then 23 and 24 loud 29 once 32 something 55 on
POSITION -6 session 8 elbow hand 10 by 12 face 13 $ mouth 22 is 39 .
POWER -23 cut -13 went -12 felt tape -9 $ -7 after 6 ball 12 is 15 has weak 17 vanished 20 gave in 23 gone 25 strength 26 . 29 i
PUSH 10 head 11 $ 13 . up 18 water
PUT -19 numb to -17 advil -16 wheelie -15 at mind -14 fly good -13 time -12 away -11 balloon in past well -10 for -9 after quiz -8 cold -7 collar -6 disc muscle nighter 6 . and down everything i 7 on 8 knuckle then 9 # champagne full inside limp 10 dead flat things 12 arm double 13 black 14 rubber 15 grey out over 16 elbow 17 cant 18 atv loud when 19 by 20 hard 21 forward 25 no 26 shoulder 28 back 29 once 31 but 44 it
QUITS -37 in -30 for -29 into -26 asleep -20 short -19 behind -17 last -12 apart -10 dumbbell -9 back -8 fly -7 out -6 glove keys water 7 phone 8 $ at 10 with 13 . because cup fork 15 after halfway when 19 hard 22 on 27 from
REACH -6 $ 10 behind head 12 . 15 neck up 22 for
RED -14 for -6 fastball 7 . 25 streaks 30 and
RIBS -16 hurts -6 $ 9 every 14 shoulder 15 . 25 bug 27 and
SEAT -15 wrench -8 in -7 # 6 and come reaching 7 belt 9 slides when 12 shifted 16 for 17 . 24 feels 25 where 30 is
SHAPE 7 sticking 8 has 12 near 14 at 15 in where 18 and 25 on 31 $ 48 .
SHEETS -10 at 6 $ 7 every 8 and 13 is 17 .
SHOCK 6 go 8 bolt feeling 13 shocks 15 down 16 . into
SHOULDER -20 feels makes -19 down -17 feel moves -16 thats working -15 good wrench -14 pops -13 day to -12 doesnt -11 sore -10 didnt tired top -9 blades cracked works -7 clicks today when -6 blade pinched 6 came cant come hasnt keeps subluxed 7 fell shot slid sliding went 8 while wont 9 after at lurched popped slides swollen 10 into pain separated wouldnt 11 aches and back from hangs 12 dropped hurts kept 13 gives 14 height is shifted 16 are for tip took 17 woke 18 loose slipped 19 dislocated jumped 20 $ 21 did on was 22 looks 23 sticks 24 first 25 that 28 . 37 has
SINCE -22 running -21 surgery -18 fine -17 good -14 hill warm -13 operation -11 # sprints -10 arm days dinner -9 drive that -8 $ weeks -7 win -6 seated 6 friday 7 pop run saturday shoulder sunday thursday 8 competition game 9 clunked every 10 wednesday 11 practice serve 12 bullpen came no second weekend 13 elbow it tackle tuesday 14 hour i 15 breakfast sprint yesterday 16 fall long match monday 17 did pen 18 back 23 nothing 26 flight last 37 .
SLIP -16 but down to -15 mind -14 up -12 over -11 past -8 disc -7 into 7 $ 11 . every in 12 and off 13 back 15 when 26 forward 27 out
SLUR 7 and 37 $ 41 .
SOCKETED -22 felt good slot -20 feels makes tired -18 isnt sore tingles -17 feel -16 day -15 moves wrench -14 pops today working -13 ok -12 above care not worked -11 didnt works -10 i top -9 blades cracked -7 clicks up -6 blade feeling pinched 6 had hasnt no over subluxed 7 are come for off on out shot slammed slid sliding stops swelled was 8 past while 9 at blown came couldnt folded lurched popped slides 10 pain separated shakes twice 11 . asleep bone buckled died falls hopped turned when 12 back dropped kept swollen 13 blew done keeps quit 14 collapsed height into shifted weak 15 $ after with 16 aches hangs hard stuck tip 17 locked nothing went woke 18 gave hurts wont 19 dislocated gives slipped took wouldnt 21 drops in jumped 24 first 27 from 30 looks 32 has
SPENT -12 toast -7 tongue -6 in 8 . out 13 from 17 finger 26 for
STOP -16 if -9 with 6 in up 7 working 8 . it 14 go 15 sleep
SUICIDE 28 $ 31 .
SWEATS -19 because -11 to 7 bed every 14 $ 15 night with 18 through 26 sheets 30 . 33 and
SWELL -27 from -21 is -10 crowd last -9 went -8 not on 7 since 8 today 10 round 11 at hand sleeve 12 after 14 maybe 23 and 28 $ 34 in 38 up 44 .
THING -22 but -19 was -18 after -13 joint -11 # -9 $ i on -8 rang then -7 died is keeps smells 6 cant slid 8 rip 9 anymore falls gave milk slipped went 10 up 11 has 13 and feels ripped 14 cup hit 15 . today twice 17 popped 18 hand 19 at tore 20 for 23 to
TIGHT -24 from -19 i -16 but -12 at -6 after that 6 ball for sensation 7 . 8 $ behind 10 feeling 11 band up 15 pain 16 walking 22 across on pressure 23 chest 27 and
TIGHTER -15 but -12 from 6 $ 7 across 8 after chest 12 and 15 on
TIRED -21 but -18 $ -10 and -8 legs 9 . no since 25 time 42 for
TRAINING -21 without -18 is -16 had -15 twice -14 in no -13 was -11 for -10 # at to today -8 day with -7 under 8 class strong then tonight 9 and hand 10 shoulder 11 $ it 12 hit 14 felt 15 chest 16 only 23 on
UNDONE 15 .
UNSTABLE 15 in 31 $ 32 .
VEHICLE -23 in -21 is -16 wouldnt -15 wash -13 night -12 but -11 fell for when -10 slipped was -6 stop 8 post 9 and 10 onto yesterday 12 going 15 i 17 door 18 hard sunday 19 wreck 20 shoulder 21 crash 25 chasing 26 . 28 on 30 $ 31 accident
VEIN -6 on 8 across 16 .
VOMIT 17 twice 18 night 19 since 25 day 33 $ 53 .
WAKE -11 gone -8 by 6 at 12 up 13 from 14 last 24 once 25 with 30 .
WEAK -21 side -12 coffee in -9 sauce week -7 after at competition grounder -6 excuse 6 when 8 as 10 since 12 and 14 but 17 on 22 i than 25 to 30 . 33 today 35 $
WEAKNESS 8 today 9 i 15 in 22 than 32 $ 55 .
WENT -17 by -15 good -14 $ after -13 well -12 and it -9 away numb -6 on 8 for 9 # full limp 10 bluish dark dead dizzy things 11 crazy head weaker 13 black i white 14 air shoulder 15 grey key sick to up 16 over worse 18 purple 19 weak 25 blue 27 back 28 .
WOBBLY 12 and 15 in
WORN -25 $ -16 for -8 on -7 . smells -6 and in 8 doesnt is 11 wont 16 finger 21 leaves
WOUND -17 in -14 up -9 looks -6 from 7 popped 9 came 11 are 13 have 16 is 18 opened 20 has 27 smells 38 $ 50 .
^ -57 $ -55 is -54 what -48 MY our -46 when -43 DAILY he -42 didnt last -41 TRAINING -40 ELSEWHERE -39 coach never we -37 and -36 roommate -35 STOP back barely before -34 put -32 nope -31 breath -30 good -29 ankle buddy bus should -28 NIGHTS NOT how night -27 DULLED GIVES cracked do hurt old pinch same serve -26 could fall knee lump more racing sore used -25 ODD OUT friend idk if mom pulled shifted -24 OPPONENT blew cold cousin did sick sister white -23 CATCH at need shoes -22 LIFT THING bumped daughter girlfriend go out pinching stiff sure weak -21 CHANGED HOT MOTOR arms band bowled disc dog grandpa heavy jammed nail new none nose physio slip smashed spikes that they wifes -20 BREAKS_LIKE SHAPE better drilled hardly kids kill lifting power slept spring stretching team this tossed watched worried -19 GROUND HEIGHT SPENT black blister bro burned chill forgot lights locker moment phone pills tractor -18 NUM ONTO crushed dead defence dentist finger gave heat hold killing let long lot neither played quiet rain scared solid son to umpire -17 SLIP allergies brother can door dying earlier finals foot hot ill javelin lit off rip second weather worse -16 BREAK COME blood dad dent front going lets moved neighbour plaster playing sleep stopped stuck traps under will wind would years -15 LEAK biceps clear comfortable crash crooked crowd different double dropped full gonna hard held locked neck negative numbers over regular ripped skipped tad teammate threw wound -14 FRACTURE afraid bored came cap catchers dads day easy elastic four glove in losing mostly nada normal painless resin resting -13 REACH around between dumbbell fastball feet gimme give hasnt ice it mosquito nervous next painful part pitched rushed struggled sweat throw tingling towel up where worked -12 chilly cramp curve em hall hang kept knocked mother ok pt roomie setter shut snapped stitch train twinge -11 # MISSILE ON WEAK about achy broken butter crack done green hmm infield lifted low mound on only pinched plunked probably punched ready stiffness struck sun tingly torn velo wall water wife wont y -10 BY belly by course depends doesnt faint i keep lumpy most nice ouch pitcher practiced rested rocked rough sacked sec sets soreness stayed throat thumbs unfortunately zilch -9 LOOSE TIRED after bases breathe broke burnt chilled ears eight enough father first form here hit light load loose manageable maximum meh nil pitch ponytail popping shock shook smidge smoked square these who -8 AGAIN BREATH catch catching caught clean coffee colleague crashed eh electric failed feel few goose great hair id lazy mate mhm nah odd omg rather rest smooth strange stretched stumbled tape walk weakest -7 COLD COLOUR HEADACHE MANY alright aye bed bruised bullpen call callus captain cat couldnt crispy discus dont drained drop dunno end fire gut headache heavier hm ish jaw livable medium naw nine nuh peed pinky pounding pre school shaky shot shoulder slipping spin static stung toe tolerable tooth traffic voice weights yessir -6 DROPPING PAIN TIGHTER aches badly ball block butt calves choked deep died exercise goalkeeper hearing hopped keeper killer late lekker mild not peaked perfect shed slammed sound started sweaty tight topped trainer truck twenty 6 BONE BUZZ CHILL ELBOW FLUTTER HAND bicep bone comebacker cup knuckles ladder outer practice run somewhat stomach wet 7 LOST ache aching each everything kneed knees racket shoulders small soaked things tore you 8 always barbell but crushing dizzy everyone keeps lightning maybe middle partner puking there tip touched yes yesterday 9 CRASH SINCE SWEATS another checked chills face im reckon skin snapping sparks throbbing took weight 10 audible bat beaned gasping havent horse limb pale perhaps purple soaking something spiked stinger swole thrown 11 BULGE FEVER_C LAND NUMB POWER ants collar fingers hand ibuprofen inner inside landed lightheaded pain possibly ring seven slight slipped think tips wake watch went yellow 12 SLUR WORN balance cried feverish glass hurts lost lower muscle numb outside temperature 13 arm clobbered dove elbowed half loud mi popped pressure step vomiting worst yeah 14 bike blacked from having nearly nobody scar sensation tackled tongue vision wiped yup 15 FAINT FEVERISH NEW POSITION QUITS honestly its numbness pus shivering wheezing 16 WEAKNESS big coughing dropping grips have heart passed persistent player surgery tingles unbearable wasnt winded 17 coughed forearm sleeve stabbing swelled throbs 18 UNSTABLE cant dude fever less might operation pulse sucking unstable 19 felt hollow life thing trouble weaker 20 feels mouth since speech thought tumbled ucl was whats 21 CALF HEART LOOK calf fainted looks pains squeezing vomited 22 FEVER breathless dislocated external pins trucked woke 23 WOUND short somebody sounded 24 FACE collision pop temp 25 NEVER_ENDING fingertips surgical 26 collided grip palpitations partial running shape 27 breathing side words 29 someone sudden thinking 30 fell 31 FALL rear 32 GASP 33 VOMIT WAKE stitches 34 incision 35 joints 36 FEVER_F 38 DISLOCATE 40 theres 44 heard 50 collarbone
a 12 .
abduction 23 .
ability 15 . to
about -38 it -30 ACHE -15 MANY -12 NUM -10 BE COME LOST -9 four -8 # . -7 FALL SWELL falling swelling -6 this 11 killing 14 PAIN 23 ending
above 6 ARM ELBOW MISSILE elbow 9 SOCKETED shoulder 12 SHOULDER 14 ACHE 16 PART
abs -8 .
absolute -12 .
absolutely 12 .
accident 10 $ 13 BY with 17 yesterday 19 .
account -11 . 9 ACHE PART SHOULDER SOCKETED shoulder
ache -18 nothing -16 BE SINCE -12 ONTO -11 AGAIN KEEP -8 in 8 . that 9 NOT 13 and 18 $ 21 never
aches -10 $ 7 NEVER_ENDING 20 .
aching 6 over 8 ONTO 14 .
across 8 ACHE PART SHOULDER SOCKETED shoulder 21 chest 23 CHEST 24 .
advil -29 for 8 before 14 to 28 i 30 .
afraid -15 . -6 $
after -22 running -20 surgery -19 GROUND VEHICLE -14 HOT LEAK hill warm -12 NUM that training -11 sprints -9 # drive -8 operation -7 win -6 NIGHTS hit night this 6 run 7 AGAIN PUT pop practice 8 serve 9 MANY every 11 $ COME 12 BULGE bullpen 13 POP TRAINING 14 last 15 sprint 17 pen 20 flight 23 THING 30 i
afterwards -9 . -6 $
again 12 .
against 9 DAILY 23 .
ages -7 .
ago -47 . -20 and -19 $ -8 i -6 BE COME LOST ONTO WENT gone
agony 13 .
alarm -20 . -13 $
alive -20 .
all 7 .
allergies -21 . -9 $
almost 44 .
along -10 nicely 9 . 21 PART
alright -10 . -6 $
also 20 .
although 16 .
always -29 $ -27 . -24 BE -17 HAVE -16 does -15 NOT was -11 no 13 PILL 26 TIRED tired
am -18 WEAK tired weak -12 stiff -11 not -9 OUT out sleepy to -7 ONTO SWEATS sweating -6 healthy 6 . 9 always 11 AGAIN KEEP LOST losing 12 CANT SPENT cant exhausted 16 HAVE having 17 BE
amazing -11 $ .
amount -8 $ .
an 11 .
and -42 half -33 TRAINING -30 forearm -25 NUM tris -22 thats -21 cried -20 MOTOR -19 # scored -17 popped -16 HEIGHT up -15 $ VEHICLE quick sticks turned -14 slide -12 THING quarter stomach vitamin -11 ON hit on -10 controlled easy stretched -9 FRACTURE MANY RIBS broke she -8 warm -7 ODD POP leg -6 CHANGED lost off shoulders 6 BRUISE SWELL TIGHT at has hips hurts in pain ring there theyre tingling 7 ELBOW LOOK PUT WORN elbow looks pale shiny swell wrists 8 GIVES POWER SHOULDER WENT chills face feet gives goes instant locks purple then 9 PART TIGHTER after blue nothing shakes since slips sweaty thick tight 10 LAND LOST body cant caught had never shivers skipping white 11 BREATH ate breathing dumbbell landed legs wont 12 CATCH HAND HANDS MISSILE OPPONENT UNSTABLE WOBBLY ball have jaw painful stayed 13 knees 14 dropped 15 FEVER SINCE eating fever red 16 FLUTTER RED fingers index ones shivering shoulder stiff tender 17 DROPPING clunked heavy theres 18 jammed sweating went 19 FEELING HOT NIGHTS NUMB are feel fell night temperature 20 sore 21 SOCKETED SWEATS 22 CANT OUT didnt 23 LEAK VOMIT 24 COME hands 25 out 26 arm cold 27 COLOUR shaking 29 HAVE its 31 COLD 32 BE CHILL FALL hot 34 ACHE NOT 35 QUITS needles 36 im 43 i 48 PAIN 54 .
"""
