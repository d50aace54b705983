"""The points of words and of pairs of words, in tenths, OPPONENT to and.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
OPPONENT -29 hit -23 has -22 dislocated -20 in -13 had -10 said was -9 took -8 lol popped wants -7 collapsed -6 dropped passed says 6 when 7 elses 8 ran 9 crashed 10 bumped landed out slid 11 at kicked 18 else fell 28 $
OUT -33 to -24 with -21 time -19 rhythm -16 shape -14 there -13 flyers -12 order -11 cold -10 early twice -9 form -6 and gas 6 as chest 7 fingers 8 slurred 9 hand 10 $ i 11 bath grip scar 12 . back between jumbled nowhere 13 goosey on running 14 its 15 eye 16 after breath it 17 # reaching then while 18 during mid 21 in 23 for popped 26 front 31 when 32 place
PAIN -45 from -19 as -18 but -14 after -13 $ yesterday -12 has -10 lot nothing -9 muscles -7 on -6 feelings 6 sitting wouldnt 7 over 8 shoulder 9 inside meds pain since wakes 11 awake shooting 12 and around behind no time under 13 up 14 was 15 nonstop that 16 doesnt woke 18 every 19 had 20 at 23 i 25 never 26 # to 29 myself 31 night 34 .
PART -23 bike up -22 slot tired -21 smell -20 crossed -18 moves sore -16 fine ok -15 good wrench -14 feeling not working -13 pops -12 care could didnt room -11 always but tingles worked works -10 above blades -9 pump top -8 bends day doing eye pumped warm -7 felt -6 blade hurt last makes pinched tape today touch turn were 6 doesnt it mightve shift slips started strength times tingled was 7 come fumble had over popped since slammed subluxed wrists 8 at became blue maybe prickles slid stopped stops while 9 blown folded hurts lurched out past pop that whenever 10 came couldnt did died keep opened r separated slides tingling 11 buckled hasnt inside numb puffed shakes shot took 12 bone cant dropped fat fingers go hopped kept no pain quit simply sleeps 13 back have its knees nothing 14 $ aches drops on side 15 collapsed every into look rolled shifted size slipped swole tingle twice weak 16 blew is opens static tip 17 ballooned for snapped woke 18 only stuck swollen to 19 buzzing dislocated gave lets 20 falls 21 when 22 first jumped wouldnt 23 flops keeps let sticks 24 gives 26 swelled 27 hangs 28 after turned 31 made 35 wont 36 . 38 has 44 looks 45 went
PILL -16 every -7 for in -6 $ 16 yesterday 34 to 39 i 57 before 75 .
POP -34 up -19 labrum -17 advil -15 always since -14 fly it knuckles sometimes wheelie -13 at bat or pen -11 balloon through -10 dawn -9 off quiz -8 decision -7 collar open -6 throws 6 jeans pop 7 during out weird 8 knuckle 9 $ champagne elbow feeling 10 back sound 11 sensation 13 inside 14 rubber 15 arm hard shoulder 16 in when 17 cant 18 . 19 couldnt no 22 then 23 and but loud 29 once 32 something 55 on
POSITION -7 on session 8 elbow hand 11 $ by 13 face 14 mouth 23 is 39 .
POWER -25 cut -12 $ went -11 tape -9 felt on -6 after 9 is 14 vanished 15 has weak 18 in 19 gave 25 strength 27 gone 28 . 29 i
PUSH 6 and 8 . 11 head 12 up 17 water
PUT -21 numb -19 to -17 advil -15 mind -14 fly wheelie -13 at away good -12 time -11 balloon well -10 past -9 quiz -8 after -7 cold collar -6 day in muscle spot 6 . and i up 7 on 8 inside knuckle limp 9 champagne dead 10 full then 11 # flat over things 12 arm black 13 grey 14 rubber 16 elbow hard out 17 loud 18 atv cant when 19 by 23 forward shoulder 25 back 28 no 29 once 33 but 42 it
QUITS -34 in -31 for -28 into -22 asleep -20 short -18 behind -17 last -10 apart dumbbell -8 back fly -6 glove to 6 phone 7 through 10 at 11 with 13 cup 14 . fork 15 because 16 halfway when 17 after 18 hard 22 on 25 from
REACH 8 . 10 behind 11 head 16 up 22 for
RED -12 for -8 $ -6 fastball 11 . 22 streaks 28 and
RIBS -16 hurts -6 $ 7 shoulder 8 every 14 . 22 and
SEAT -15 wrench -8 in 6 come 7 belt reaching 9 slides when 14 shifted 17 for 22 . 24 feels where 28 is
SHAPE 7 sticking 9 has 14 at where 19 and 26 $ 27 on 48 .
SHEETS -7 at 8 and 9 every 12 is 14 .
SHOCK 6 go 8 bolt feeling 14 . 16 down
SHOULDER -20 down -19 feels makes -18 moves -17 feel -15 wrench -14 working -13 day doesnt pops -12 to -10 blades sore tired -9 didnt top works -8 cracked -7 today -6 blade clicks pinched 6 came come goes height last over shift slips 7 fell hasnt keeps slid subluxed went while 8 at from isnt popped 9 aches after lurched swollen wont 10 separated slides wouldnt 11 back hangs into pain 12 and kept tip 13 gives hurts 15 is shifted 16 for slipped 17 took woke 18 loose 19 did dislocated 21 jumped 22 first on 23 $ looks sticks 24 was 25 that 30 . 38 has
SINCE -21 good running -19 surgery -17 fine -15 warm -13 operation -12 hill -10 dinner -9 arm days -8 sprints that -7 seated weeks win 6 friday pitch 7 $ couldnt pop 8 competition this thursday 9 every 10 game practice run serve wednesday 11 bullpen clunked fall 12 came no second tackle 13 breakfast elbow long weekend yesterday 14 did 15 pen tuesday 16 sprint 17 it 18 monday 19 match 20 back 21 i 22 last nothing 28 flight 33 .
SLIP -17 but -16 down -15 mind to -13 up -11 into over -10 past -9 disc 7 $ at 9 back 11 off 12 every 13 when 14 . in 27 forward 32 out
SLUR 8 and 37 . 38 $
SOCKETED -24 felt good -20 slot tired -19 makes -17 feel isnt sore -16 feels moves tingles -15 day wrench -14 ok -13 pops working -12 care didnt today -11 i worked works -10 above blades -9 top -8 cracked up -7 feeling not -6 blade clicks pinched 6 and for height no over shift slips 7 come had hasnt slammed subluxed while 8 at off slid stops swelled 9 blown couldnt folded is lurched out past popped 10 . came died separated slides 11 buckled falls on pain shakes turned twice was when 12 bone hopped kept quit tip 13 back done nothing swollen 14 aches after keeps 15 $ collapsed into shifted weak 16 blew gave hangs went with 17 slipped woke 18 hurts stuck wont wouldnt 19 dislocated gives in 20 drops took 22 first jumped 28 from 30 looks 33 has
SPENT -10 toast 13 from 16 finger 21 for
STOP -17 if -10 with 6 up 7 in it working 10 go 14 sleep 17 .
SUICIDE 26 .
SWEATS -19 because -13 to 8 bed 10 every 15 with 16 $ 18 night 20 sheets 21 through 27 . 34 and
SWELL -24 from is -11 crowd -10 last -8 not went -6 on 6 since 7 round 8 today 9 after 11 hand sleeve 12 at 14 maybe 24 and 27 $ 29 in 37 up 41 .
THING -20 but was -18 after i -11 in joint -10 # -9 rang then -7 died this -6 keeps 6 flew 7 cant gave slid 9 falls milk rip went 10 up 11 has slipped 13 feels popped ripped twice 14 . cup hit 16 for 17 and at hand 19 today 20 tore 24 to
TIGHT -26 from -21 i -18 but -14 at -7 that -6 today 6 ball 8 sensation 11 . band 12 feeling pain up 18 across walking 24 chest 25 and 26 on
TIGHTER -15 but -13 from 7 $ 10 after and chest 17 on
TIRED -24 $ -20 but -6 legs 10 . since 12 no 22 time 41 for
TRAINING -26 without -20 is -17 had -16 twice -15 in -14 no -13 was -11 today -10 for -9 # at day -8 to -7 under with -6 arm 6 tonight 7 class hand 9 and strong then 10 hit shoulder 12 it 13 $ ball felt 14 chest 18 only 19 on
UNDONE 14 .
UNSTABLE 6 and 15 in 33 $ 34 .
VEHICLE -22 in is -15 wash wouldnt -14 night -11 but was when -10 for -8 slipped -6 fell ride stop 6 post 8 at 9 onto 11 going yesterday 17 i 18 door sunday wreck 19 hard 20 crash shoulder 24 chasing 25 . 31 accident on 32 $
VEIN -6 on 6 over 8 across 15 .
VOMIT 14 night 19 since 22 twice 24 day 31 $ 49 .
WAKE -11 by gone 11 up 13 from 24 once 26 with 30 .
WEAK -20 side -12 coffee -11 in week -10 sauce -7 at competition grounder -6 after excuse 8 as when 9 since 13 and 16 but 17 on 20 i to 22 than 27 . 30 today 37 $
WEAKNESS 11 i 14 in 22 than 31 $ 52 .
WENT -15 $ after -14 good -13 well -12 by it -11 and -9 away numb -6 cold out 7 sick 8 limp 9 # dead 10 bluish full 11 crazy dark things weaker 12 black for head shoulder 13 grey i to white 14 up 15 key over 16 worse 19 purple 21 weak 23 blue 27 back 28 .
WOBBLY 12 and 15 in
WORN -23 $ -14 for -9 . on -6 and in 8 is 11 wont 15 finger 20 leaves
WOUND -17 in -14 up -7 looks 8 came popped 11 is 12 are have 19 opened 20 has 25 smells 29 $ 46 .
^ -59 $ -53 is -48 MY our -47 DAILY -46 ELSEWHERE -44 what when -42 never -41 he we -40 last -39 TRAINING -38 back coach -37 didnt -36 roommate -35 STOP put sick -34 stiff -32 barely same -30 before bus nope -29 NIGHTS buddy could good night -28 and breath did do fall how should -27 NOT OPPONENT ankle cold serve white -26 mom -25 CATCH HEIGHT if pinch shifted sister -24 GIVES heavy knee team -23 THING can cracked daughter green idk old played racing sore -22 LIFT ODD cousin dog pulled that -21 blew grandpa hurt jammed long more nail pinching power second shoes spikes used -20 BREAKS_LIKE DULLED MOTOR band blister bowled bro bumped friend head kill killing lifting locker none painful physio smashed to under watched weak wifes worried -19 SHAPE at burned chill crushed disc drilled kids lump saw spring stretching sure they tossed tractor umpire -18 CHANGED HOT SLIP better defence girlfriend go heat lets lot need neither nose rain scared slept teammate this wind -17 FRACTURE achy dead double earlier forgot going hard hardly hold lit moved off over rip slip stopped -16 GROUND MISSILE allergies arms bored crash dad door gave it javelin lights new numbers pills plaster probably resin resting son will worse -15 LEAK NUM OUT REACH afraid brother catchers crashed crowd dads dent dropped easy elastic finals neck neighbour phone regular rushed sleep tad threw tingling weather -14 AGAIN ONTO SPENT around between black blood cap comfortable cramp dying foot gonna ill kept nada playing ripped traps would -13 body crooked different finger front give infield locked losing negative nervous pitched punched stitch sweat twinge wont worked -12 BREAK COME TIGHTER biceps broken came crack curve day dumbbell electric em faint fastball four held hmm knocked lifted mosquito mostly normal not popping sacked shaking skipped solid struck throw tight train wound -11 # COLOUR ON broke butter catch chilly clear full gimme glove hang hot ice most on out part pinched pt sec shut snapped soreness struggled tape tingly torn towel up water wife y years -10 BY TIRED about ball belly by doesnt done hall hit let low mound only ouch plunked rested stayed stiffness stretched stuck sun these thumbs tired unfortunately velo wall -9 BREATH DIGIT DROPPING LOOSE bases breathe catching eight feel hasnt loose lumpy manageable maximum meh mother nah nice ok pitcher ponytail roomie shock shook smidge smoked zilch -8 PILL WEAK after alright callus chilled course dont eh failed father feet few goose great lazy mhm moment nil odd omg partner peed pitch rather rest rocked rough school shot slipping smooth spin square static stumbled stung throat who -7 COLD PUT WOBBLY aye bullpen bump butt call cat caught clean depends drained drop dunno ears enough handle here i in ish keeper late light livable load match mate medium nails naw nuh practiced pre ready shed slammed sound tolerable tooth weakest weights yessir -6 HEADACHE bed blown bruised burning choked crispy deep died end exercise finished first glasses goalkeeper grandson gut hair hamstrings headache heavier innings ive jaw keep legs money peaked pinky shaky shirt started trainer twenty 6 SHOULDER SWEATS WENT ache dizzy index knees knuckles ladder lower lungs maybe perhaps racket ran there yesterday 7 RED checked constant each kneed lost middle puking purple scar things 8 WORN aches aching hurts lightning pale reckon shoulders skin sparks swelling thrown watch weight 9 NUMB another bicep chills coughing everyone feverish glass havent its keeps seven slipped snapping soaked somewhat touched 10 CRASH LAND but crushing face fingers inner landed possibly stinger throbbing tip took tore yep 11 BULGE SINCE arm balance beaned collar comebacker cried half horse limb muscle outside spiked tackled think wake yeah you 12 FEVERISH ants inside mi passed slight soaking swole tips went yes 13 FAINT POWER clobbered dove dropping elbowed gasping hand lightheaded numb stabbing step temperature 14 POSITION big having loud nearly ring sleeve vomiting wiped yellow yup 15 UNSTABLE WEAKNESS bike honestly operation player sensation shivering tingles 16 always breathless from numbness popped pus something unbearable winded 17 CALF QUITS calf coughed grips have less life pressure throbs 18 cant dude forearm sucking swelled unstable 19 hollow might sudden surgery thing wheezing worst 20 NEVER_ENDING felt fever heart pins short trouble tumbled weaker whats 21 blacked mouth since speech thought ucl 22 FACE LOOK external looks somebody sounded trucked 23 FEVER WOUND collision fainted feels partial squeezing 24 HEART breathing dislocated pop rear was woke 25 VOMIT collided grip pains running shape temp 26 fingertips palpitations someone 27 fell surgical 28 joints 30 side words 31 FALL incision thinking 32 WAKE stitches 35 GASP 36 theres 37 FEVER_F 38 DISLOCATE 44 heard 46 collarbone
a 13 .
abduction 20 .
ability 16 . to
about -39 it -23 ACHE -13 MANY -11 . -10 COME LOST -9 BE NUM -8 # FALL falling -6 SWELL four swelling this 6 hurting 12 killing 15 PAIN 21 ending
above 10 SOCKETED shoulder 12 SHOULDER 15 ACHE 17 PART
abs -8 .
absolute -12 .
absolutely 11 .
accident 9 $ 13 BY with 17 yesterday 22 .
account -11 . 10 ACHE PART SHOULDER SOCKETED shoulder
ache -19 nothing -16 BE -11 ONTO -10 AGAIN KEEP -9 in 7 that 9 NOT 10 . 14 and 15 $ 19 never
aches 7 NEVER_ENDING 25 .
aching 7 over 9 ONTO 16 .
across 8 ACHE PART SHOULDER SOCKETED shoulder 18 chest 20 CHEST 22 .
advil -25 for 10 before 14 to 27 . 30 i
afraid -16 . -7 $
after -21 running -20 GROUND -19 surgery -18 VEHICLE -15 HOT LEAK warm -12 hill that -10 training -9 operation -8 NUM sprints -7 win -6 # 6 pitch 7 BULGE POP PUT pop practice serve 8 AGAIN 9 every 10 run 11 COME bullpen 15 pen 16 sprint 17 $ 18 TRAINING 23 THING 26 flight 31 i
afterwards -8 . -7 $
again 8 .
against 8 DAILY 22 .
ages -6 .
ago -54 . -29 $ -20 and -8 i
agony 14 .
alarm -21 . -14 $
alive -20 .
all 9 .
allergies -21 . -8 $
almost 47 .
along -13 nicely 7 . 21 PART
alright -8 .
also 20 .
although 16 .
always -35 $ -27 BE -24 . -17 HAVE -16 was -15 NOT does -11 no 15 PILL 27 TIRED tired
am -19 WEAK tired weak -13 not -12 sleepy stiff -9 to -8 ONTO OUT out -7 SWEATS healthy sweating 7 . CANT cant 8 AGAIN KEEP 10 LOST losing 14 SPENT exhausted 16 HAVE having 20 BE
amazing -10 $ .
amount -7 $ .
an 8 .
and -44 half -30 TRAINING -26 tris -25 forearm -24 NUM -22 $ cried thats -19 # MOTOR -18 VEHICLE scored -17 HEIGHT up -16 quick -15 sticks -13 popped turned -12 quarter stomach -11 ON hit on slide vitamin -10 FRACTURE MANY THING broke controlled stretched warm -9 RIBS easy she -8 back leg -7 hand -6 POP 6 BRUISE ELBOW LOOK VEIN at blue elbow has hurts looks ring sweats theyre tingling veins we weirdly when wrists 7 WENT WORN ate had purple there 8 GIVES SWELL body chills gives locks swollen 9 HAND POWER achy goes instant shakes shivers since white 10 BREATH FEELING LAND OPPONENT SHOULDER TIGHTER after breathing feel hips jaw thick tight 11 MISSILE PART PUT ball cant have landed legs never nothing sweaty wont 12 CATCH UNSTABLE dumbbell painful skipping stayed 13 FLUTTER NIGHTS knees night red 14 NUMB RED fingers index 15 FEVER dropped fever 16 WOBBLY heavy shivering 17 are eating jammed shoulder sweating tender then 18 DIGIT DROPPING HANDS HOT sore stiff 19 OUT fell went 20 didnt theres 21 VOMIT 22 CANT out 23 COME SWEATS 24 cold hands 25 LEAK 26 HAVE SINCE arm shaking 27 CHILL COLD SOCKETED 28 COLOUR 30 ACHE QUITS hot 31 BE im its 32 FALL 34 needles 36 NOT 41 i 57 . PAIN
"""
