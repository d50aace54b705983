"""The points of words and of pairs of words, in tenths, OPPONENT to and.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
OPPONENT -28 hit -24 has -22 dislocated -20 in -14 had -10 was -9 said took -8 popped wants -7 lol says -6 collapsed dropped passed 7 elses 8 crashed ran 10 at landed out 11 bumped 12 kicked slid 19 else 24 fell 27 $
OUT -33 to -26 with -21 time -20 rhythm -17 there -16 shape -13 flyers -12 order -11 twice -10 cold early -9 form -7 gas 6 as socket swinging 7 chest fingers 8 $ slurred 9 i 10 grip hand scar 11 bath 12 between nowhere on 13 . 14 after eye goosey its jumbled running 15 # back while 17 breath during it mid reaching 18 then 20 in 21 for 24 popped 26 front 30 when 32 place
PAIN -44 from -19 as -17 after -15 but -14 $ -13 yesterday -12 has -10 lot -9 when -8 muscles nothing -6 feelings on 6 constantly 7 over wouldnt 8 shoulder 9 and inside meds pain wakes 10 awake behind shooting since 12 around no under 14 up was 15 nonstop that woke 16 time 17 at doesnt 18 every 19 had 21 # 23 i 27 never 28 myself to 31 night 37 .
PART -25 tired -24 smell -23 bike -22 slot -21 up -20 crossed -19 sore -18 moves -17 not -16 fine good ok -15 working -14 wrench -13 feeling room -12 above care could pops tingles -11 always didnt worked -10 top works -9 blades but warm -8 bends day eye felt pump pumped -7 doing give last makes today turn -6 blade hurt tape 6 mightve popped since slips strength subluxed times tingled 7 at became blue come doesnt fumble had it over started stopped 8 maybe prickles slammed slid stops whenever wrists 9 blown came did folded hurts lurched out past pop took while 10 $ no numb separated slides that tingling 11 couldnt died dropped fingers go hasnt inside keep on opened pain puffed shakes shot 12 bone buckled cant fat hopped kept quit simply 13 back knees nothing r sleeps 14 have its look weak 15 aches collapsed drops into rolled shifted side size tingle twice 16 blew every opens slipped static swole 17 ballooned only snapped tip woke 18 dislocated falls is to 19 for lets stuck swollen when 20 gave 21 buzzing 22 jumped keeps 23 let 24 first flops sticks wouldnt 25 gives 28 hangs swelled 29 after turned 30 made 34 wont 37 . 39 has 44 looks went
PILL -14 every -8 $ -6 for in 18 yesterday 35 to 41 i 54 before 74 .
POP -35 up -20 labrum -19 advil -16 since -15 always fly wheelie -14 it knuckles pen sometimes -13 bat off or -12 through -11 at balloon -9 dawn quiz -8 decision -7 collar open 6 pop 7 jeans time weird 8 $ during feeling knuckle 9 champagne elbow 10 sound 11 back sensation 12 inside 13 hard when 14 arm rubber 16 cant in shoulder 19 . no 20 couldnt 22 then 23 but 25 and loud 29 once 34 something 54 on
POSITION -7 session -6 on 8 elbow hand 9 by 10 $ 13 face 15 mouth 24 is 38 .
POWER -25 cut -12 went -11 felt -10 tape -7 $ after on 11 is 14 vanished 15 has weak 18 in 20 gave 24 strength 25 gone 27 . 29 i
PUSH 6 and 8 $ 10 head 11 . 12 up 16 water
PUT -20 to -19 advil -18 numb -15 fly mind wheelie -14 at -13 away -12 good time -11 balloon well -10 for past -9 after quiz -7 cold collar in -6 disc muscle nighter 6 down up 8 dead inside knuckle limp 9 and champagne on then 10 # full 11 over things 12 arm flat 13 black grey 14 rubber 15 when 16 out 17 cant elbow 18 by loud 19 atv 21 hard 23 shoulder 24 forward 26 back no 29 once 31 but 40 it
QUITS -37 in -30 for -26 into -23 asleep -21 short -19 behind -16 last -10 apart dumbbell -8 fly -7 back -6 glove 6 $ through 7 phone 9 at 11 . with 13 cup 14 because fork 15 when 16 after halfway 19 hard 21 on 26 from
REACH 10 head 11 . behind 16 up 22 for
RED -11 for -7 $ -6 fastball 10 . 25 streaks 27 and
RIBS -16 hurts 7 shoulder 8 every 14 . 23 and
SEAT -14 wrench -7 in -6 $ 6 come 7 belt reaching 9 slides 10 when 14 shifted 16 for 18 . 24 feels 25 where 31 is
SHAPE 8 sticking 9 has 13 at 16 where 21 and 27 $ 28 on 46 .
SHEETS -7 at 8 and every 12 is 17 .
SHOCK 6 go 8 bolt 9 feeling 17 . down
SHOULDER -20 feels -18 down moves -17 good makes -16 feel -15 working -14 doesnt wrench -13 day -12 pops to -11 sore -10 top -9 blades cracked didnt tired works -7 clicks today when -6 blade 6 come height isnt keeps slips subluxed 7 came fell hasnt while 8 at slid went wont 9 after lurched swollen 10 back pain popped separated slides 11 aches hangs into wouldnt 12 and from kept 13 gives hurts tip 14 took 15 for shifted 17 slipped woke 18 dislocated is loose 20 did jumped 23 $ on was 24 first looks sticks 26 that 28 . 38 has
SINCE -21 running surgery -20 good -17 fine -14 operation warm -13 hill -10 days -9 arm dinner sprints -7 # that -6 seated win 6 couldnt pitch 7 pop this thursday 9 competition game practice 10 every run serve wednesday 11 bullpen clunked fall weekend 12 came no second 13 elbow tackle yesterday 14 long tuesday 15 breakfast pen 16 i sprint 17 did it monday 19 back match 22 last 24 nothing 26 flight 37 .
SLIP -17 but -15 down mind to -13 up -11 over -10 past -9 into -8 disc 7 $ at 8 back 12 every 13 and off when 15 . in 28 forward 32 out
SLUR 9 and 32 . 37 $
SOCKETED -24 felt good -22 slot -20 tired -19 feels -17 makes sore tingles -16 feel isnt moves -14 day working wrench -13 not today -12 above care ok pops -11 didnt worked -10 i top works -9 blades cracked -8 up -7 clicks doesnt -6 blade feeling 6 for height no over popped slips subluxed 7 at come had hasnt is stops while 8 off slammed slid swelled was when 9 blown came folded lurched out past 10 couldnt on pain separated slides 11 died falls shakes turned twice 12 . bone buckled done hopped kept quit 13 back keeps nothing swollen tip 14 weak 15 aches after collapsed into shifted 16 $ blew hangs went with 17 gave woke 18 dislocated hurts slipped wont 19 drops stuck wouldnt 20 gives 21 took 22 in jumped 24 first 26 from 29 looks 33 has
SPENT -10 toast -6 in 16 finger from 22 for
STOP -16 if -10 with -6 at 6 up 7 working 8 in it 9 go 14 . 15 sleep
SUICIDE 28 .
SWEATS -19 because -13 to 8 bed 10 every 12 $ 15 with 17 night through 21 sheets 31 . 32 and
SWELL -24 from -23 is -11 crowd -10 last -8 not -7 went 6 since 7 after 8 today 9 round 11 sleeve 12 at hand 13 maybe 26 $ 27 and 28 in 42 up 44 .
THING -21 was -20 i -18 but -16 after -14 joint -10 # -9 in rang then -8 died -7 keeps this -6 $ 6 cant flew 7 slid 8 gave rip 9 milk 10 falls up went 11 has 12 slipped 13 cup ripped twice 14 . feels 16 and hit popped 17 for 18 at hand today 21 tore 26 to
TIGHT -26 from -18 but i -14 at -7 that -6 today 7 ball 9 sensation 11 . band feeling 14 pain up 15 walking 18 across 22 on 24 chest 26 and
TIGHTER -16 but -13 from 7 $ 9 after 10 and 11 chest 16 on
TIRED -21 $ -20 but -6 legs 7 . 10 since 13 no 23 time 40 for
TRAINING -24 without -17 is -16 had twice -14 in was -13 no -11 today -10 # at for to -9 day with -8 under 6 or 7 hand tonight 8 class 9 and strong 10 then 11 hit shoulder 12 it 13 ball 14 $ chest felt 20 only 23 on
UNDONE 15 .
UNSTABLE 6 and 15 in 31 $ 32 .
VEHICLE -22 is -21 in -15 wash wouldnt -13 night -12 but when -11 was -10 for slipped -7 stop -6 fell ride 6 at 7 post 8 and 9 onto 10 going 12 yesterday 14 i 18 door sunday wreck 19 hard 21 crash shoulder 23 chasing 26 $ 29 . on 32 accident
VEIN -6 on 6 over 8 across 15 .
VOMIT 15 night 22 since twice 27 day 29 $ 48 .
WAKE -12 gone -11 by 11 up 12 from 25 once 27 with 29 .
WEAK -19 side -12 in -11 coffee week -10 sauce -7 at competition grounder -6 after excuse 6 when 8 as 9 since 12 and 14 but 17 on 21 i than to 28 today 29 . 36 $
WEAKNESS 10 i 15 in 21 than 34 $ 54 .
WENT -14 after -13 $ good well -12 by it -11 and -10 numb -9 away -7 off -6 cold out 6 for 7 sick 8 dead limp 10 # bluish full 11 crazy dark head things weaker 12 to 13 black grey i white 14 shoulder 15 key over worse 16 up 19 purple 20 weak 26 back blue 29 .
WOBBLY -7 . -6 after 12 and 15 in
WORN -28 $ -15 for -8 on -6 . and in 8 is 11 wont 14 finger 21 leaves
WOUND -17 in -14 up -8 looks 7 came 8 popped 11 are 12 have is 18 opened 19 has 24 smells 28 $ 49 .
^ -57 $ -53 is -46 DAILY MY our what when -44 ELSEWHERE never -43 he -42 we -41 last -40 TRAINING -38 STOP coach roommate -37 put -36 back didnt -34 and nope sick stiff -32 before -31 breath buddy bus could -29 barely white -28 NIGHTS did good how knee night should -27 NOT OPPONENT cold cracked do fall pinch same -26 HEIGHT ODD ankle -25 mom serve shifted sore -24 GIVES LIFT band cousin hurt if sister -23 DULLED at blew can dog go heavy pulled racing -22 THING daughter friend more old sure team used wifes -21 CATCH grandpa green jammed lifting lump nail played power slept spikes spring that they weak -20 CHANGED MOTOR blister bumped girlfriend idk kill locker need neither none physio pinching shoes slip smashed -19 BREAKS_LIKE OUT arms bro burned chill crushed disc drilled head killing lot new painful quiet second teammate this tractor umpire under worried -18 GROUND HOT LEAK SLIP better bowled defence door forgot hold kids lights lit nose rain saw stopped stretching threw wind -17 allergies easy finals going hardly heat javelin lets long over scared to tossed watched will -16 FRACTURE NUM ONTO clear dent dropped earlier gave moved neighbour next numbers pills plaster playing son worse -15 SHAPE afraid bored crash dad dads different double dying elastic finger foot hard it kept moment out regular resin resting rip rushed sleep stitch tad where wound -14 COME REACH blood body brother catchers comfortable crowd day fastball four front full gonna ill normal off part phone probably ripped stuck sweat throw traps weather would -13 AGAIN between black cap cramp crashed crooked dead em hasnt held locked neck painless pitched skipped tired twinge -12 MISSILE achy after around ball biceps came curve dumbbell give hang in let nada negative nervous struck tingling train wont years -11 # BREAK SPENT TIGHTER broken done electric faint gimme hall hit hmm ice infield knocked lifted losing mosquito mostly mound pinched pt punched shaking shut snapped solid soreness stayed struggled sun tight torn towel water wife worked y -10 BY DROPPING LOOSE TIRED about breathe butter by chilly doesnt feel first glove hot i loose low lumpy maximum only ouch plunked popping sacked sec sets shook stiffness these thumbs unfortunately velo -9 COLOUR ON PILL bases broke catching course crack depends id light manageable meh most nice ok on pitch practiced rather ready rested rocked roomie rough shock smidge smoked spin stretched stumbled tape tingly wall weights zilch -8 ACHE WEAK belly call callus chilled dont eh eight father feet few great ish lazy load mate mhm mother nah nil not odd pitcher ponytail shot slipping smooth square stung throat up weakest who -7 PUT WOBBLY alright bed bullpen bump butt cat catch caught drop failed fire goose gut hm keep keeper late livable medium naw no nuh partner pre school tolerable tooth trainer yessir -6 BREATH COLD DIGIT HEADACHE LEG aye block bruised choked clean coffee crispy deep dentist died drained dunno ears end enough finished grandson handle headache heavier hopped innings ive jaw legs omg slammed started static truck 6 BUZZ SLUR armpit constant guy home ladder lost outer perhaps puking racket run shoulders skin waking 7 RED SWEATS each index kneed knuckles lower ran tore 8 CRASH ELBOW HAND NUMB WORN ache aching checked keeps lightning maybe middle pain pale possibly reckon scar small soaked somewhat sparks there things thrown yesterday 9 SINCE bicep but coughing glass horse hurts muscle snapping stinger tip touched 10 LAND another beaned chills collar everyone havent knees landed limb purple seven throbbing watch yes 11 POWER balance cried crushing fingers inner outside passed ring slipped soaking swole think tips took wake 12 BULGE arm clobbered comebacker face feverish from gasping half hand mi spiked step tackled yeah 13 FEVERISH WEAKNESS ants bike dove dropping elbowed inside lightheaded nearly slight temperature wiped yellow you 14 UNSTABLE always loud numb popped something stabbing went yup 15 FAINT big honestly player sensation tingles 16 breathless numbness operation pus shivering vomiting 17 QUITS felt forearm grips have having life pressure unbearable wasnt winded 18 CALF POSITION calf dude sleeve sucking surgery swelled tumbled unstable 19 cant coughed thing throbs weaker worst 20 fever heart hollow less might pins short since sudden wheezing 21 fainted feels pains thought trouble ucl was whats 22 LOOK NEVER_ENDING blacked external looks trucked 23 HEART speech 24 FACE FEVER collision dislocated partial shape somebody squeezing woke 25 WOUND collided pop running sounded temp 26 breathing fingertips rear surgical 27 grip mouth someone 28 VOMIT palpitations stitches 29 fell words 30 joints side 32 incision thinking 33 WAKE 34 FALL 36 FEVER_F GASP theres 39 DISLOCATE 45 heard 46 collarbone
a 14 .
abduction 23 .
ability 16 . to
about -38 it -30 ACHE -14 MANY -11 NUM -10 COME LOST -9 # BE -8 FALL falling -7 . SWELL four swelling -6 this 11 killing 14 PAIN 23 ending
above 10 SOCKETED shoulder 12 SHOULDER 15 ACHE PART
abs -8 .
absolute -12 .
absolutely 9 .
accident 9 $ 13 BY with 17 yesterday 22 .
account -11 . 10 ACHE PART SHOULDER SOCKETED shoulder
ache -19 nothing -15 BE -14 SINCE -10 AGAIN KEEP ONTO -8 in 8 that 10 NOT 14 and 16 $ 21 never
aches -10 $ 6 AGAIN KEEP constantly 8 NEVER_ENDING 15 .
aching 7 over 10 ONTO 15 .
across 8 ACHE PART SHOULDER SOCKETED shoulder 19 chest 20 . 21 CHEST
advil -28 for 10 before 14 to 30 . 32 i
afraid -18 . -6 $
after -21 running -20 surgery -19 GROUND -18 VEHICLE -14 HOT LEAK warm -13 hill -11 training -10 NUM that -9 sprints -8 # operation -6 hit win 6 pitch 7 BULGE POP PUT pop practice 8 AGAIN serve 10 every run 11 COME bullpen 15 $ pen 16 sprint 17 TRAINING 22 THING 24 flight 30 i
afterwards -8 .
again 9 .
against 9 DAILY 24 .
ago -55 . -29 $ -19 and -7 i
agony 14 .
alarm -20 . -13 $
alive -20 .
all 10 .
allergies -21 . -8 $
almost 46 .
along -12 nicely 8 . 20 PART
alright -9 .
also 20 .
although 17 .
always -34 $ -29 . -23 BE -17 HAVE -16 does -15 NOT was -10 no 15 PILL 28 TIRED tired
am -20 WEAK weak -19 tired -13 stiff -12 sleepy -11 not -9 to -8 ONTO OUT out -7 SWEATS healthy sweating 7 CANT cant 9 . AGAIN KEEP LOST losing 14 SPENT exhausted 16 HAVE having 21 BE
amazing -10 $ .
amount -8 $ .
an 8 .
and -47 half -30 forearm -28 TRAINING -25 NUM tris -22 thats -21 $ -20 cried -19 MOTOR -18 # VEHICLE -17 popped -16 HEIGHT quick scored up -15 sticks -13 hit turned -12 THING quarter slide stomach vitamin -11 ON controlled on -10 MANY stretched -9 FRACTURE RIBS broke easy leg she warm -7 back -6 POP hand 6 BRUISE ELBOW HEART LOOK VEIN WORN at blue caught elbow heart looks pale ring theyre tingling veins we when 7 WENT chills had then there 8 GIVES gives goes has hurts purple swollen 9 POWER SWELL after ate body instant locks shakes white 10 BREATH LAND TIGHTER breathing jaw shivers since tight wont 11 UNSTABLE cant hips landed sweaty thick 12 FEELING FLUTTER HAND MISSILE OPPONENT SHOULDER ball dumbbell feel legs never nothing skipping 13 CATCH NUMB PART PUT have painful stayed 14 NIGHTS WOBBLY fingers index night 15 FEVER SINCE dropped fever heavy red 16 HOT RED eating shivering 17 DIGIT are didnt knees shoulder sweating tender 18 DROPPING jammed 19 OUT sore stiff went 20 HANDS fell theres 21 LEAK SWEATS 22 CANT arm hands out 23 VOMIT 24 HAVE SOCKETED 25 CHILL COME cold 26 BE shaking 28 COLD COLOUR 29 hot 31 QUITS 32 ACHE 33 its 34 FALL 36 needles 37 NOT 38 im 40 i 48 PAIN 56 .
"""
