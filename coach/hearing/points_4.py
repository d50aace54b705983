"""The points of words and of pairs of words, in tenths, faced to joint.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
faced -6 .
failed -7 $
faint 8 and 27 $ 30 .
fainted -13 at 14 in 15 $ 16 ONTO 23 SINCE after 40 .
fair -15 .
fake -13 . -7 $
fall -15 ON on 9 ASLEEP asleep
fallen 12 . 17 ONTO
falling -11 ON on 6 ONTO 8 from 11 CHANGED ODD off
falls 14 ASLEEP asleep 16 OUT out 29 .
fantasy -9 .
far -15 . -14 $
fast -17 before 14 and 18 .
fastball -13 and -12 BE -8 . -6 HAVE 8 $
fat 11 SINCE and 27 .
father -9 . -7 BE HAVE
fatigue 8 .
fault -12 .
fear -10 .
feel -22 $ -21 ACHE it -18 THING -16 no -11 for good -10 BULGE COME POP PUT pop -9 NOT -7 SHOULDER 7 . heavy 8 FAINT dizzy 9 COLD ONTO cold hot im tingly 10 BUZZ LEAK awful 11 ill 13 faint sick 15 NUMB down 18 theyre 19 FEVER feverish 22 they 25 HOT
feeling -16 million -15 for -10 COLOUR blue -8 better strong -7 about 6 ACHE ON it on when 7 . 10 $ 15 from 32 in 43 ONTO
feelings -7 .
feels -25 normal -19 free -12 better -10 strong -9 great stable -6 fine 7 cold 8 ARM HAND HANDS SOCKETED arm hand 9 ASLEEP as asleep dead 10 HOT OPPONENT hot someone 12 ok 13 unstable 15 LEAK PART numb 18 COLD it 19 UNSTABLE 21 NUMB 22 TIGHT 23 ACHE 25 heavy 26 weak 28 WEAK 33 its 44 .
feet -10 SINCE after 7 . 11 and
fell -38 ASLEEP asleep -37 in -30 for -20 short -19 HEIGHT OUT behind out -17 last -14 and into -12 LEAK apart -8 $ 11 BY ONTO with 13 because 14 ON 17 on 19 hard 29 from
felt -25 great -24 good -21 strong -17 smooth -15 heavy mostly -13 TIGHT -11 easy that -10 $ -8 live -6 ONTO rip stiff 6 . LOOSE OUT faint loose 7 SHOCK arm 8 funny it muscle 10 THING velcro 11 CHANGED elbow 12 BREAKS_LIKE 13 SHOULDER 14 ACHE SEAT joint 15 PART something 16 BREAK BULGE COME PUT SOCKETED dead pop tingle 18 NUMB tearing 20 ELBOW ball 28 MISSILE 30 POP weak 33 WEAK
fence -16 $ 6 .
fender 26 . bender
fever -6 SINCE dream since 6 FEVER_C 11 FEVER_F 15 $ 17 # FEVERISH and 20 NUM 23 ONTO 27 .
feverish 17 and 19 $ 29 .
few 6 . 14 seconds times
fielder 6 . 12 $
fight -12 .
film -13 .
final -21 . -19 $
finally -28 .
finals -20 . -14 week -6 $
find 13 .
fine -62 . -60 $ -15 NOT since -13 ACHE HANDS PART -12 SINCE 10 except 17 but
finger -13 was -12 COME PUT -10 ONTO -9 ON on 7 is 8 BE joints 11 NOT NUMB and 16 LOST
fingers -21 crossed -14 is -11 tingled -10 fine in -9 were 6 felt 7 CANT LOOK SWELL look 8 AGAIN DROPPING MOTOR PUSH REACH fumble turn 9 turned 10 NUMB and tingle 12 have 14 ON SINCE after on 15 HAVE PUT are 17 BE 19 NOT r 20 went 26 COME 28 . 31 WENT
fingertips 9 are 11 COME PUT WENT 13 FEELING feel 15 $ 28 BE 38 .
finish -26 $ -15 to -12 . 18 TRAINING
finished -18 $ -17 .
fire -8 $ -7 .
firm -12 .
first -18 thing -11 . ONTO -8 TRAINING -7 but 7 GROUND base
fish 8 .
fist 28 $ .
fit -10 .
five -10 $ -6 ON ONTO on 14 . 20 kilos
fixed -18 . -13 ACHE it
fizzes 12 .
flat -15 tyre -13 as 6 ON ONTO on 8 and 9 $
flew 7 CHANGED ODD off 8 .
flight 12 . 26 $
flipped 6 .
flips 17 .
flooded -8 $ .
floor 12 . 14 at
floppy 17 $ .
flops 22 $ 23 .
flu -6 im 25 . 35 $
fluid 10 $ 19 .
fluttering 11 $ 16 .
fly -8 . to 10 MISSILE ball
flyers -14 . for
folded 9 $ .
food -29 . -23 $
foot -21 . -10 COME PUT -9 $ -6 BE SWELL
footing 25 .
for -24 # -21 $ -18 years -17 toilet -15 VEHICLE it parking -14 TRAINING -13 bus longer -12 today -10 fake lunch -9 THING fun -8 SWELL curveball swelling 6 last 7 ACHE 8 ELSEWHERE game six 9 minutes sure 10 HEIGHT rebound 11 days four ten top 12 MANY minute 13 few 16 MISSILE ball 17 NOT hours 18 no 19 second 20 PAIN air pain 21 sec 23 . moment 25 BREATH 40 month 48 weeks
forearm -8 pump 7 COME LOOK NUMB PUT WENT looks prickles 8 HAVE has 10 $ 16 . 17 BE
forgot -20 . -10 $ 7 BREAKS_LIKE band
fork 12 AGAIN 13 at 26 .
form -21 . -12 $ -8 COME
forward 9 OUT out 11 $ 33 .
foul 8 . 11 MISSILE ball
four -10 $ -9 and when -8 . 6 PILL at ibuprofen
frame 8 $ 10 hard
free -41 . -38 $
freezing 24 .
fresh -36 . -21 $
friday -10 $ .
fridge 13 $ .
friend -31 . -21 $ -16 FALL QUITS fell -15 BLOW hit -7 BE -6 COME 15 PUT pulled
friends -9 .
from -23 TRAINING -21 bench -18 yesterday -17 running squats writing -16 climbing weekend -15 THING laughing -14 COME GROUND NUM practice that -13 bar ladder -12 FLUTTER jumping sitting -11 chalk -10 . ice -9 TIGHT gripping -8 MANY SLIP pump spinning swimming -7 before hitting shouting sliding this -6 hay late 6 MOTOR SWEATS last sweat 7 cold 8 couch 10 HAND HANDS incision it place shoulder 11 ARM ELBOW elbow 12 SEAT ache pain 13 MISSILE SOCKETED operation stage 14 SHOULDER box sleeping 16 under 17 MY our 19 surgery 21 neck 23 HEIGHT PAIN horse 26 PART 35 WOUND 36 ACHE
front -34 . -19 PART -16 $ ACHE SHOULDER SOCKETED -15 shoulder when -7 delt
froze -13 .
frozen 14 .
ft -11 . -7 $
full -25 $ 10 . 13 BUZZ 25 speed
fumble 11 .
fumbling 7 . THING
fun -17 . -13 $
funeral -8 .
funny 12 $ 15 BONE bone 31 .
fuzzy 7 .
gait 8 .
gallon 9 THING milk 14 .
game -11 $ -7 . 6 # NUM 8 ACHE
garage -16 . -9 DAILY door
garbage -11 $
gardening -19 .
gas -10 . -7 $
gasping 14 for 29 .
gassed -8 . -6 $
gassers 6 $
gate 8 . 13 $
gave -10 and -8 . 6 POP crack 8 OUT out 9 in 10 ON on 17 ONTO 20 $
gear -11 .
get -21 NUMB -19 ACHE it -11 numb 8 SHOCK 9 HEIGHT up 19 NOT no 21 . 35 through
gets -6 NUMB numb 7 WEAK
getting -8 OUT out 6 WEAK WEAKNESS weaker 14 BREATH air 15 sick 27 .
ghost 10 COLOUR white 11 .
gimme -13 .
girl 6 . 10 COME
girlfriend -23 . -18 BE is
give -10 . -7 minute
given -16 .
gives -8 PAIN 6 when 11 HEIGHT up 12 . 15 OUT out
giving -9 . 6 OUT out
glass 9 FALL fell 12 COME QUITS 13 .
glasses -25 .
glove -7 LEAK smells -6 in 10 is 13 .
gloves -11 .
go -22 $ -18 NUMB numb -17 to -11 and -8 . 6 BULGE ON on pop 7 POP into 8 in 10 things 11 HEIGHT OUT out 13 NOT up 15 ONTO 23 THING
goal -31 $ -23 . 8 VEHICLE post
goalie -14 .
goalkeeper -8 .
goalpost 17 .
goals -6 $ .
goes 12 ONTO 13 dead to 20 HEIGHT up
going -22 $ 6 HEIGHT up 16 . 18 ONTO 30 to
golf 20 VEHICLE cart 25 .
gone -18 BY -17 by -14 from -8 ONTO and -7 NOT no 8 in 10 . ACHE PART SOCKETED 13 $ 19 COLOUR
gonna -16 . 15 COME 23 SLIP slip
good -52 . -21 $ ONTO -20 in -14 COME TIRED tired -12 ACHE -11 MOVE PUT control -9 BE BULGE NIGHTS PAIN POP pop -7 to 10 i
goose -10 .
goosey 14 .
gout -11 $ .
grade -24 . -13 $
grades -19 .
grand -27 . -20 $
grandchildren -7 .
grandpa -28 .
grapefruit 21 $ .
grass -10 . -7 $
great -31 $ -22 . -8 TRAINING
green -10 . 23 THING stuff
grey 7 . 8 $ and
grind -10 .
grip -24 ON on -19 CATCH -12 felt tape -6 ONTO 6 COME ball 11 MISSILE 13 QUITS 15 HAVE WEAK has weak 18 is 20 GIVES gave 25 POWER strength 26 BE 28 .
gripping -7 $ 14 MISSILE
grips 11 COME 16 .
ground 8 . 12 $
grounder -7 to -6 .
growing 6 . 7 $
growling -10 $ .
guard -16 .
guess -9 .
gun -17 .
gunk 12 $ .
gut 6 and
guts 21 .
guy -13 . -10 $
guys -8 .
gym -30 . -12 $ 8 class
h -7 .
had -23 CANT trouble -20 CHEST chest -18 FLU LEAK NUMB TRAINING flu -17 few -16 NOT -15 ODD flat -14 surgery -13 HEART good heart no -12 PAIN dead -11 PART SHOULDER SOCKETED THING shoulder -10 COLD SWELL swelling -9 . COLOUR ELSEWHERE blue -8 HOT POP game hot numbing -7 MANY sleepover tingling -6 # NUM PUT hard pizza 9 thoughts to 10 ACHE DISLOCATE FALL FEVER crash fall fever 12 sublux 13 $ accident 14 CRASH 17 car luxation 18 BE pacing 21 VEHICLE it 28 PILL
haha -38 $ .
hair -18 . -6 $
half -34 $ -13 hours 11 HAND hand 12 . 13 HANDS PART 21 range 26 as 27 FACE face
halfway 17 HEIGHT up 20 $ through 51 .
hall -16 . -6 BE
hammered -23 . -22 $
hamstring -6 .
hamstrings -8 .
hand -23 and -13 from -12 tingles -10 BY with -9 ACHE -8 ELSEWHERE eye -6 ONTO goes 6 ON keeps on times wouldnt 7 DROPPING dropped swelled swollen 8 COLD cold numb 9 has 10 PUT opened to 11 CANT FALL tingled turned when 12 HAVE felt looks 13 . BUZZ became 14 SWELL sleeps 15 KEEP went 16 AGAIN was 17 doesnt let opens 18 NOT 19 LOOK lets 22 $ feels 25 COME 26 BE COLOUR WENT 28 QUITS 35 STOP
handball -13 .
handle -17 . -13 BE
handlebars 27 $ .
hands -24 $ -17 . -14 ONTO -11 are -10 smell -7 BE -6 BY with 6 NUMB 7 ELSEWHERE knees tingle 9 PAIN 12 to 22 and
hang 7 ONTO
hanging 11 there 17 $ 19 .
hangover -12 .
hangs 18 ON on 21 ONTO 23 $ 42 .
happy -33 . -18 $ -11 BY with
hard -14 $ -11 SINCE after today -9 PART i 7 to 8 MOTOR throw 9 SHAPE lump 10 . 13 ONTO 20 time 25 ON on
harder 8 .
hardly -17 . -7 $
has -26 . FEVER fever -23 ACHE -16 FLU -14 PART -13 POWER -9 CHILL chills flu numb -8 for -7 AGAIN KEEP -6 LOST gone 6 opened 7 come strange 8 DROPPING NOT changed dropped 9 ODD 10 form that zero 12 ASLEEP asleep 14 QUITS 16 CHANGED 18 become
hasnt 9 . 13 STOP stopped
hat -24 .
have -28 $ -19 CHANGED -17 numb -16 arthritis -14 slept -13 HAND HANDS strong -11 COLD NOT cold good -10 PART hunger -8 TRAINING muscle nothing -7 them to -6 COLOUR blue 6 TIRED difficulty exhausted vomiting 8 BUZZ ants utterly 9 . VOMIT 10 CANT 12 FEVER_C 13 it 14 LOST lost pressure 15 flu 17 ACHE temperature 20 TIGHT 22 # FEVERISH NUM 23 COME FALL 26 FLU 29 BE 30 had 34 HAVE 44 FEVER fever
havent 24 . 31 slept
having 16 .
hay -31 . -25 FEVER fever
he -24 . -19 BE -17 FALL -15 COME -12 PUT -9 HAVE -6 hit 10 BLOW
head -21 ONTO -16 . -11 PAIN hurts -10 BY -7 at -6 ACHE ON on 9 $ 10 BE 21 COME PUT
headache -18 $ 14 . 15 OUT out 17 life
header 26 .
healing -15 $ .
healthy -18 . -11 $
heard 6 crack rip 8 BULGE COME PUT pop 18 PART 19 BREAK 24 it 26 ACHE 33 POP 39 .
hearing -6 .
heart -23 and -14 NOT -8 rate wasnt -7 BY pounding to with 6 . 8 AGAIN KEEP keeps 9 BE 11 COME doing is 13 skips 17 racing skipping 18 jumps 23 beats 24 FLUTTER
heartbreaker -8 .
hearts -9 $ .
heat -15 . -14 $ -12 BE -6 ONTO
heater -11 .
heavier -22 . -15 $ -7 than
heaviness 11 .
heavy -22 . -14 SINCE after -11 from -9 in -7 ONTO i 12 ON on 20 and
heifer -15 .
heights -24 . -9 $
held -15 .
hell 6 $
helmet -8 . 7 to
help 13 $ 20 .
helped -8 . -7 $
helps 6 $ 10 .
her -30 . -28 PART -17 HAND HANDS wrist -15 SOCKETED -12 SHOULDER -11 ACHE -8 shoulder 11 back
here -18 $ -13 .
hes -18 .
high -28 . -21 school -15 $ 14 MANY NUM five
higher 7 . 8 $
hill -20 . -10 $
hills -7 .
him -43 . -24 $ -14 ONTO
hip -7 .
hips 6 BE are
his -75 .
history -16 .
hit -28 . -20 for -19 with -17 $ OPPONENT -16 MANY homer -15 around batter off -13 hard -12 DIGIT HANDS -11 net wall -10 AGAIN post pr -8 ball double snooze target -7 thumb 6 BY nerve 8 head 9 ONTO arm 11 ARM floor in pothole 16 deck 17 by 22 PART 23 SHOULDER shoulder 28 SOCKETED 29 GROUND 30 ACHE
hitter -22 .
hitting -7 ONTO -6 .
hm -7 $ .
hmm -16 . -8 $
hockey -9 $ .
hold -11 $ -9 onto -6 ON ONTO 6 phone racket 8 . cup 9 ball 10 plank 13 ACHE coffee 15 fork 21 ARM PART SOCKETED arm 58 THING
holding -12 GROUND 12 . 18 MISSILE ball 19 THING
hole -8 ONTO 7 $ 15 where 18 .
holes 11 $ 19 .
hollow 19 .
home -6 ONTO in 24 GROUND THING plate
homer -17 $ .
homework -31 . -26 $ -10 BE is
honestly 23 .
hood -12 .
hoodie -10 $ .
hope -11 .
hopped 14 OUT out
horse -10 ONTO 27 . 31 $
hospital -9 . -8 $
hot -17 SWEATS -14 MISSILE THING -9 PART TRAINING -8 bat dog -7 day gym -6 in 7 . 8 DULLED from oven 9 to 18 SWELL swollen 19 and 20 LEAK 22 $
hour -8 nap -7 ago -6 $ 14 ONTO 23 . 25 AGAIN MANY every
hours 6 because 8 and
house -11 . -10 $
how -12 . -8 ACHE do it 25 i
huh -7 $ .
hundred -10 . 6 and
hung -14 . ONTO in
hunger -10 $ .
hungry -24 $ .
hurt -26 $ -25 . -23 ONTO -15 from -14 # MANY NUM ON on 16 myself 21 i
hurting 19 $ .
hurts -17 from -12 $ -9 ONTO -8 MANY 9 in 10 at 12 NOT every no 13 AGAIN 19 . 24 time 26 # NUM
i -31 ran -30 saw -24 should -23 would -22 slept worry -20 be popped -19 pulled -18 did to -17 stretched -16 GIVES STOP ate call gave mean rested -15 drink let -14 DAILY will -13 NEW go new regret -12 LIFT forgot move rolled -11 caught know -10 didnt dropped sat snore squat take -9 GROUND guess ice lift wore -8 FRACTURE LOOK broke carried jumped look missed sneezed -7 BLOW held -6 $ had hit made raise sleep started stopped 6 COME bowled coughed press released 7 POWER SPENT TRAINING WENT dove find grip inhale run stumble 8 always cant drop lie tripped try 9 BE HEIGHT ONTO in say up 10 CANT DISLOCATE REACH dislocated might tore 11 hold lost only peed push serve threw wiped 12 HOT LOST PUSH bumped can pitch walked warm 13 HAVE cannot cock straighten wouldnt 14 BREAK SWEATS cut dont sweat touch went 15 LEAK VOMIT wet 16 HOLD do knocked play pushed stood 17 blacked collapsed 18 nearly stumbled vomited 19 became havent heard wake 20 poured talk 21 . want 22 BREATH rest 23 CRASH breathe felt 26 QUITS fell need 28 get noticed 29 came 31 keep 32 crashed walk 33 think wish 35 AGAIN KEEP passed 38 FALL fainted 41 FAINT
ibuprofen 17 . 37 before
ice -27 made -16 THING bag -15 bath -10 bucket 9 COLD cold 11 this 15 . 23 and
iced -14 .
icing -10 .
icy -13 HOT LEAK hot -8 $
id -14 PUT 20 rather
idk 7 $ 9 .
if -39 PART -26 HANDS -24 . -23 SOCKETED -19 HAND hand there -17 ACHE -14 ARM arm -13 SHOULDER -12 DIGIT fingers -11 its -7 shoulder 8 im 14 i
ill -15 tell -13 . -9 $ 15 BY with
im -24 dead -13 dying -11 cooked -10 FALL NUMB numb -9 done 6 GASP TIGHT 8 . WENT doing 9 ONTO TIRED 10 drained 11 LOST losing 12 SWEATS sweating tired 13 SPENT 14 ON on 15 having 18 ok 19 HAVE 20 holding 21 BE 28 good
immediate 13 .
impossible 24 $ 27 .
improvement 15 .
in -25 good -22 FACE college pocket rain to -21 high hospital -20 room -18 BREATH face front -17 biceps tree -16 first hour this top -15 FALL fall storm throat -14 back last love wind -13 # neck palm -12 SLIP THING heat it lats mask spot -11 march street thighs -10 HEIGHT count delivery rankings slips toilet -9 butt gym mud van -8 chess june -7 CHANGED NUM ODD bp bus extras field garage math ninth that wrong -6 COLD bat cold match pen side third winter 6 MISSILE SHEETS TRAINING am bed eyes from 7 AGAIN SHOULDER SOCKETED dugout inner three 8 day socket 9 HOT LOST MANY WORN collarbone legs lost order park weight 10 arm armpit belly joint nets night ring 11 SEAT SWEATS chair spring sweat 12 ACHE days finger mornings pinky 13 BE BREAKS_LIKE NIGHTS at forearm pile 14 door game locker training wrist 15 RIBS for jump recliner second 16 GROUND middle 17 BY PUSH eye 18 MOTOR position warm 20 HANDS evening month 21 PART by 22 row 23 $ LEAK 24 ELBOW elbow 25 and fingers 26 fender 28 CRASH DAILY 30 shower 32 CHEST chest 43 DIGIT
incision 7 is 10 opened 14 LEAK 15 HAVE has 17 BE 22 $ 35 .
indeed -19 . -7 $
index 17 DIGIT HANDS PART finger 24 .
infected 14 $
infield -18 .
inhale 7 $ .
injection 15 .
inner 8 POSITION side 18 ACHE ARM ELBOW MISSILE PART elbow 25 .
inning -7 $
innings -11 .
inside -6 $ 10 when 13 MISSILE 22 . 27 ACHE ARM ELBOW PART elbow
instant 8 . ACHE PAIN pain
into -20 old -12 ex -11 second -10 back 12 DIGIT door thumb 14 arm boards 15 HAND hand 16 ARM catcher outfield 17 ELSEWHERE jaw teammate 18 SOCKETED 19 fence 20 $ 24 HANDS 25 GROUND 33 VEHICLE 34 OPPONENT 36 PART 37 .
irregular 33 .
is -27 fine -24 TIRED good ok tired -23 away -21 back it -20 in nothing sick steady -18 doing working -17 PUT better long -16 same slow stronger -15 SLIP happy over warm -14 numbness stiff -13 dry itchy -12 as -11 more -10 FEVER_F ONTO killing -9 POP mad okay -8 big blue dead having ill -7 HAVE HOT heavy low normal old sore strong -6 MANY MOTOR gone weaker 6 PAIN bluish drooping droopy leaking without 7 HUE oozing swelling turning 8 BRUISE bruised different poking purple racing sitting unbearable 9 HEIGHT funny lower prickling visibly 10 SLUR buzzing ghost huge less slurred 11 SWEATS TIGHT beating cold deformed perhaps soaked 12 DROOP higher painful pins weeping 13 BULGE NUMB SWELL constant hot i pounding white 14 ASLEEP asleep colder fat freezing puffy tingly 15 DULLED NUM dull no 16 about 17 # floppy pressing sleeping stone stuck twice 18 PUSH crooked off open shaped sticking wet 19 BUZZ puffed 20 GROUND RED ice red 22 LEAK impossible tingling 23 AGAIN FLUTTER INFECT 24 COLOUR 26 CHANGED 27 size there 28 NEVER_ENDING 29 thick 35 COLD 41 ODD 45 SHAPE
ish -21 $ -7 . 10 but
isnt 10 .
it -30 in -29 always -27 today -24 HEIGHT up -23 to -22 no -21 ONTO -20 by -18 gets -17 at is where -16 HAVE -15 BY CHANGED ODD WENT more -14 doesnt -13 OUT down goes out -12 MANY cracks normal only -11 BULGE SWELL did mostly off ok went -9 $ clicks for hasnt pulled -8 pinched snapped swells -7 drops pinches pops -6 didnt if pop should 6 SEAT SHOULDER slides socket 7 NOT WAKE aches cant presses woke 8 PART SOCKETED it 9 wouldnt 10 made 11 gave looks quits shift slipped 12 above clunks never slip wants 13 NUMB PUT fell go put 14 FALL 15 kept rip slid stays 16 QUITS tore 17 hurts subluxed 18 BLOW tear 19 locks throbs 20 POP shifted 21 ON dislocated keeps on tingles wont 22 LOOK cracked stop 23 CATCH 24 feels popped 25 ACHE 26 PAIN 27 BREAK 28 STOP 29 came 30 CANT 31 COME 32 DISLOCATE 42 back 55 SLIP
itchy -17 . -15 $
its -17 MANY ONTO -16 HOT -14 LOST gone -13 solid -11 TIGHTER tight -10 WENT gonna -9 over -8 COME fine in worst -7 BE done -6 at 6 LOOSE OUT SEAT SHOULDER SLIP SOCKETED loose ok socket 7 ACHE ASLEEP NOT asleep power stuck 8 weeks 10 not seat sitting 11 hard 12 HANDS numb own 13 poking 16 NUMB 17 hanging 18 PART 19 SWELL 23 .
itself -10 $ 12 .
ive -8 had -7 ONTO 6 tired 8 LOST lost 11 TIRED 15 . COME 21 FLU flu
jacket -6 .
jam -11 .
jammed -17 ONTO -8 . 7 SHOULDER SOCKETED shoulder 18 ACHE
jar -13 .
jav -8 .
javelin -20 . -9 BE PUT -7 was 6 PART
jaw 10 ACHE PAIN 12 . 22 $
jeans 10 .
jello -7 ONTO from 7 $
jersey -21 .
jitters -10 .
jk -20 . -15 $
job -8 $ .
joint -11 and -9 $ -7 ONTO 6 come 7 when 9 slides 12 shifted 15 COME PUT 18 is 24 SLIP feels 42 BE
"""
