"""The points of words and of pairs of words, in tenths, fallen to juniors.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
fallen 13 . 15 ONTO
falling -14 ON on 6 ONTO 7 from 12 CHANGED ODD off
falls 6 $ 15 ASLEEP asleep 17 OUT out 30 .
fantasy -10 .
far -14 . -12 $
fast -16 before 10 and 19 .
fastball -12 and -11 BE -8 . -6 HAVE 8 $
fat 11 SINCE 12 and 27 .
father -8 . -6 BE
fault -12 .
fear -11 .
feel -21 $ -19 THING -18 ACHE -17 it -11 good no -10 for -8 BULGE COME POP PUT SHOULDER pop -6 NOT muscle 7 . heavy 8 FAINT LEAK dizzy hot 9 ONTO tingly 10 BUZZ COLD cold 11 NUMB sick 12 ill 13 awful 14 theyre 15 down 17 faint 20 FEVER feverish 22 they 26 HOT
feeling -16 million -15 for -10 COLOUR better blue -9 strong -7 about 6 $ ACHE it when 7 . 14 from 33 in 45 ONTO
feelings -6 $ .
feels -24 normal -20 free -12 better -10 stable -9 great 6 LOOSE OUT as loose 7 cold 8 HAND HANDS hand 9 ARM ASLEEP HOT SOCKETED arm asleep dead hot 10 OPPONENT someone 12 ok 13 unstable 14 LEAK 15 PART numb 19 COLD it 20 UNSTABLE 21 NUMB TIGHT 25 ACHE weak 27 heavy 28 WEAK 31 its 38 .
feet -8 after -7 SINCE 8 . 11 and
fell -34 ASLEEP asleep -33 in -31 for -20 short -18 HEIGHT behind -17 last -14 into -13 OUT and out -10 LEAK apart 6 ONTO 7 through 11 ON 12 BY with 13 on 15 because 18 hard 30 from
felt -28 great -23 good -18 strong -16 heavy smooth -14 TIGHT -11 $ -10 that -8 live -7 rip -6 normal stiff 6 LOOSE OUT loose 7 SHOCK it 8 arm 9 CHANGED funny 10 BREAKS_LIKE velcro 11 ACHE SHOULDER elbow 14 BREAK PART SEAT SOCKETED THING joint something 17 BULGE COME PUT dead pop tearing tingle 19 ELBOW NUMB 22 ball 27 POP 30 MISSILE weak 34 WEAK
fence -15 $ 10 .
fender 25 . bender
fever -7 SINCE since -6 dream 6 FEVER_C 9 FEVER_F 16 $ 18 # FEVERISH 22 NUM 23 and 24 ONTO 26 .
feverish 11 and 20 $ 26 .
few 6 . minutes 15 seconds 17 times
fielder 9 . 11 $
fight -11 .
film -14 .
final -20 . -18 $
finally -29 .
finals -21 . -13 week
find 14 .
fine -64 $ -58 . -17 since -15 SINCE -13 ACHE HANDS NOT PART -6 sir 9 except 17 but
finger -14 ONTO was -13 $ PUT -11 COME ON on 8 is 10 NOT 11 NUMB 13 BE and 17 LOST
fingers -20 crossed -14 is -11 in -10 fine -8 tingled were 6 AGAIN SWELL felt 7 CANT DROPPING ONTO fumble have 9 MOTOR PUSH REACH turn turned 10 and are tingle 11 HAVE NUMB 15 BE ON SINCE after on 16 PUT 18 r went 21 NOT 27 COME 32 . 33 WENT
fingertips 9 are 11 COME PUT WENT 12 FEELING feel 15 $ 27 BE 36 .
finish -27 $ -14 to -12 . 18 TRAINING
finished -15 . -12 $
fire -7 $
firm -10 .
first -17 thing -12 ONTO -7 . TRAINING but 9 GROUND base 17 $
fist 25 $ .
fit -11 .
five -8 $
fixed -17 . -12 ACHE it
fizzes 14 .
flat -14 tyre -13 as -6 . 12 $
flew 6 OUT out 7 . 8 CHANGED ODD off
flight 10 . 22 $
flipped 7 .
flips 16 .
flooded -8 $ .
floor 8 . 13 at
floppy 13 $ .
flops 23 $ .
flu -7 im 24 . 35 $
fluid 11 $ 14 .
fluttering 12 $ 14 .
fly -10 . -8 to 10 MISSILE ball
flyers -13 . for
folded 9 $ .
food -26 . -21 $
foot -23 . -8 COME PUT -7 $
footing 26 .
for -19 # years -18 $ -15 toilet -14 parking -13 VEHICLE it -12 longer -11 TRAINING bus -9 THING fake lunch -8 curveball -7 SWELL fun swelling 7 MANY 8 rebound 9 ACHE 10 HEIGHT days 11 ELSEWHERE game minutes sure top 13 six 14 few 17 MISSILE NOT ball no 20 . 22 BREATH air sec 23 moment second 25 hours 35 month 53 weeks
forearm -9 pump 8 COME LOOK NUMB PUT WENT looks prickles 9 HAVE has 13 BE 15 .
forgot -22 . -7 $ 7 BREAKS_LIKE band
fork 12 at 13 AGAIN 29 .
form -15 . -11 $
forward 6 when 10 $ OUT out 35 .
foul 6 . 13 ball 14 MISSILE
four -11 . -10 $ -9 and when 10 PILL ibuprofen
frame 7 $ 11 hard
free -44 . -35 $
freezing 20 .
fresh -33 . -21 $
friday -9 $ .
fridge 13 $ .
friend -26 . -22 $ -16 BLOW FALL QUITS fell hit -9 BE -6 COME 15 PUT pulled
friends -9 .
from -22 TRAINING -19 yesterday -18 bench -17 THING running weekend -16 climbing squats that writing -15 NUM bar laughing -13 GROUND -12 FLUTTER chalk jumping practice sitting -11 COME -10 spinning -9 MANY TIGHT gripping ice -8 hitting pump swimming -7 SLIP before this -6 . hay sliding 6 MOTOR SWEATS sweat 7 cold 8 couch last operation place 9 it pain 10 HAND HANDS SEAT shoulder 11 ARM ELBOW ache elbow 12 SOCKETED stage 13 MISSILE SHOULDER sleeping 14 MY box our 15 under 19 surgery 23 HEIGHT PAIN PART horse neck 33 WOUND 35 ACHE
front -36 . -21 $ -17 PART SHOULDER when -13 ACHE SOCKETED shoulder -7 delt
froze -13 .
ft -10 . -7 $
full -21 $ 11 . 14 BUZZ 28 speed
fumble 7 .
fumbling 8 . THING
fun -11 $ .
funeral -8 .
funny 9 $ 14 BONE bone 28 .
fuzzy 8 .
gallon 9 THING milk 16 .
game -16 $ 6 # NUM to 8 ACHE
garage -18 . -10 DAILY door
garbage -11 $
gardening -19 .
gas -8 . -6 $
gasping 13 for 16 .
gassed -7 $ .
gassers 8 $
gate 9 . 14 $
gave -11 . -10 and 6 POP 7 crack in 9 ON on 10 OUT out 14 ONTO
gear -11 .
get -20 NUMB -18 ACHE -11 numb 6 HEIGHT up 12 SHOCK 17 . 20 NOT no 23 through
gets -6 NUMB numb 7 WEAK
getting 7 WEAK WEAKNESS sick weaker 23 .
ghost 10 . COLOUR white
gimme -11 .
girl 10 COME
girlfriend -19 . -16 BE is
give -14 . -6 minute
given -16 .
gives -8 PAIN 6 when 11 . HEIGHT up 15 OUT out
giving 7 OUT out
glass 9 COME FALL QUITS fell 10 .
glasses -26 .
glove -6 in 8 is 11 .
gloves -15 .
go -21 $ -19 NUMB numb -14 to -12 and 6 POP into 10 ON on 11 things 12 HEIGHT 13 NOT OUT out up 15 ONTO 18 THING
goal -29 $ -24 . 6 VEHICLE post
goalie -13 .
goalkeeper -7 .
goalpost 17 .
goes -6 OUT out 7 . 11 ONTO 12 dead 20 HEIGHT up
going -21 $ 6 HEIGHT up 13 . 20 ONTO 37 to
golf 18 VEHICLE cart 22 .
gone -15 BY -12 by -6 NOT no 9 ACHE PART SOCKETED 10 . in 11 $ 20 COLOUR
gonna -8 . 14 COME 23 SLIP slip
good -55 . -24 ONTO -22 in -14 $ COME TIRED tired -12 ACHE -10 PUT -9 BULGE MOVE NIGHTS POP control pop -8 BE PAIN -7 to -6 PART SOCKETED 10 i
goose -10 .
goosey 13 .
got 8 .
gout -11 $ .
grade -23 . -10 $
grades -16 .
grand -26 . -19 $ -6 BLOW slam
grandpa -26 .
grandson -6 .
grapefruit 20 $ .
gravel 6 .
gray -6 $
great -31 $ -21 . -9 TRAINING
green -15 . 16 THING stuff
grey 6 $ 8 and 9 .
grind -9 .
grip -22 ON on -17 CATCH -11 tape -9 felt -6 ONTO 6 COME 11 MISSILE 12 QUITS 15 HAVE WEAK has weak 17 is 19 GIVES gave 25 . POWER strength 27 BE
gripping -7 $ 14 MISSILE
grips 11 COME 17 .
ground 8 . 12 $
grounder -7 to -6 .
growing 9 $
growling -9 $ .
guard -14 .
guess -9 .
gun -18 .
gunk 12 $ .
gut 6 and
guts 21 .
guy -16 . -11 $
guys -8 .
gym -31 . -13 $ 7 class
h -6 .
had -23 CANT trouble -21 CHEST chest -20 NUMB -18 FLU flu -17 TRAINING few -16 LEAK -14 ODD flat -12 HEART NOT PAIN good heart surgery -11 PART SHOULDER SOCKETED shoulder -10 THING dead -9 . COLD COLOUR blue -8 ELSEWHERE POP SWELL game no numbing swelling -7 COME HOT hot tingling -6 # NUM PUT 8 ACHE 9 crash 10 FEVER fever 11 DISLOCATE FALL fall 12 sublux 13 $ accident 15 CRASH 16 to 17 BE 18 car luxation 19 pacing 21 it 22 PILL VEHICLE
haha -39 $ .
hair -20 . -8 $
half -30 $ -15 hours 9 . 12 HAND hand 13 HANDS PART 25 range 26 FACE face
halfway 17 HEIGHT up 20 through 44 .
hall -14 .
hammer -6 ONTO
hammered -23 . -22 $
hamstrings -7 .
hand -17 and -12 from -11 BY tingles with -8 ELSEWHERE eye -7 ACHE 6 ON i keeps numb on times 7 has 8 COLD DROPPING cold dropped swelled wouldnt 9 to 10 HAVE opened turned 11 FALL PUT SWELL looks tingled 12 CANT KEEP NOT became 13 BUZZ felt when 14 . AGAIN sleeps was went 16 LOOK opens 17 doesnt let 19 $ lets 22 feels 26 COLOUR 27 COME 28 QUITS WENT 29 BE 35 STOP
handball -13 .
handle -20 . -12 BE
handlebars 27 $ .
hands -27 $ -17 . -14 ONTO -9 are smell -6 BE 6 were 8 PAIN 9 ELSEWHERE knees 12 to 18 and
hang 8 ONTO
hanging -7 ONTO 12 there 18 .
hangover -13 .
hangs 16 ON on 19 ONTO 25 $ 44 .
happy -31 . -17 $ -10 BY with
hard -15 $ i -11 SINCE after today -10 PART -6 # NUM 8 MOTOR throw to 11 . SHAPE lump 12 ONTO 26 ON on
harder 10 .
hardly -10 . -7 $
has -26 . -24 FEVER fever -21 ACHE -16 POWER -13 FLU PART -10 flu for -9 CHILL chills numb -7 AGAIN KEEP -6 FRACTURE broken gone 6 come strange 7 NOT opened 8 DROPPING dropped 9 ASLEEP LEAK ODD asleep changed form zero 11 that 12 QUITS 16 CHANGED 21 become
hasnt 12 . 13 STOP stopped
hat -23 .
have -28 $ -17 arthritis numb -15 HAND HANDS -14 slept -12 strong -11 PART -10 TRAINING good hunger -9 COLD cold nothing them -8 NOT muscle to -6 COLOUR blue 6 TIRED difficulty exhausted vomiting 7 BUZZ ants 8 . utterly 9 VOMIT 10 CANT 11 FEVER_C 13 lost 15 LOST pressure 16 ACHE 17 FLU flu temperature 21 # FEVERISH NUM TIGHT 22 FALL 24 COME 26 had 28 BE 31 HAVE 39 FEVER fever
havent 24 . 33 slept
having 6 NUMB tingling 17 .
hay -29 . -24 FEVER fever
he -20 . -18 BE -16 FALL -14 COME -10 PUT -9 HAVE -7 hit -6 has 11 BLOW
head -22 . -20 ONTO -11 PAIN hurts -10 BY -6 ON at on 8 $
headache -17 $ 10 . 17 life
header 26 .
healing -17 $ .
healthy -16 . -9 $
heard 6 crack rip 8 BULGE COME PUT pop 18 PART 20 BREAK 24 it 25 ACHE 34 POP 42 .
heart -23 and -18 rate -13 NOT -9 pounding -7 BY to wasnt with 6 BE 8 . is 9 AGAIN KEEP keeps 12 COME doing 16 skipping 18 racing 20 jumps 23 beats 25 FLUTTER
heartbreaker -8 .
hearts -9 $ .
heat -14 $ -13 . BE
heater -9 .
heavier -22 . -17 $ -6 than
heaviness 10 .
heavy -22 . -15 SINCE after -13 from -10 in -6 i 11 ON on 17 and
heifer -18 .
height -9 $
heights -26 . -7 $
held -14 .
helmet -7 . 7 to
help 12 $ 20 .
helped -6 $ .
helps 6 $ 9 .
her -25 . -24 PART -18 HAND HANDS wrist -14 ACHE SOCKETED -11 SHOULDER -9 shoulder 9 back
here -16 $ -15 .
hes -20 .
high -24 . -22 school -13 $ 15 MANY NUM five
higher 9 $
hill -18 . -9 $
hills -6 .
him -42 . -24 $ -13 ONTO
hips 10 BE are
his -75 .
history -15 .
hit -26 . -19 with -18 $ MANY OPPONENT -17 for -16 around batter -15 homer -14 off -13 hard -11 AGAIN DIGIT HANDS net post wall -10 pr -9 target -8 snooze -7 ball thumb 6 CHANGED ODD ONTO 7 nerve 9 head in pothole 11 ARM 12 floor 15 by 16 deck 20 PART 21 SHOULDER shoulder 24 SOCKETED 27 ACHE 28 GROUND
hitter -23 .
hitting -8 ONTO -6 .
hmm -16 . -8 $
hockey -8 $ .
hold -8 onto -7 ON ONTO 7 phone racket 9 . 10 ball cup plank 12 ACHE 14 coffee 15 fork 22 ARM PART SOCKETED arm 50 THING
holding -12 $ -11 GROUND 10 . 19 MISSILE ball 20 THING
hole -8 ONTO 6 $ 14 where 16 .
holes 12 $ 21 .
hollow 19 .
home -6 ONTO in 24 GROUND THING plate
homer -15 $ .
homework -31 . -27 $ -9 BE is
honestly 22 .
hood -9 .
hoodie -11 $ .
hope -10 .
hopped 15 OUT out
horse -8 ONTO 29 $ .
hospital -12 .
hot -17 SWEATS -15 THING -14 MISSILE -10 TRAINING -8 PART bat -7 dog gym -6 day in 6 . 7 DULLED oven 8 from 9 to 21 and 23 $ LEAK
hour -9 nap -8 $ 16 . 22 AGAIN MANY every
hours 7 because
house -8 $ .
how -13 . -9 ACHE it -7 do 27 i
huge 14 .
huh -7 $ .
hundred 6 and
hung -17 .
hunger -10 $ .
hungry -21 $ .
hurt -29 $ -24 . ONTO -15 MANY NUM ON on -14 # from -6 feelings 11 myself 23 i
hurting 6 myself 17 . 21 $
hurts -17 from -9 $ -8 MANY -7 ONTO 6 and i 11 in 12 NOT every no 13 AGAIN 21 time 23 . 24 # NUM
i -29 ran -27 saw should -22 slept worry -20 STOP did would -19 be pulled -18 drink popped -17 GIVES gave stretched to -16 call rested -15 LIFT drank wasnt will -14 mean -13 NEW forgot hit let new -12 DAILY move snore woke -11 dropped go regret -10 FRACTURE broke caught feel know lift rolled squat -9 LOOK carried didnt guess look sat -8 GROUND ate burned ice take -7 missed raise sneezed -6 $ BLOW held jumped made no stopped 6 CANT MISSILE bowled can have released tripped 7 SPENT dove inhale lay press 8 TRAINING lie stumble try 9 BE LEAK ONTO drop in tore 10 DISLOCATE HEIGHT cannot dislocated hold serve up 11 bumped noticed peed wiped 12 HAVE LOST REACH lost might push went 13 BREAK HOLD SWEATS cock dont pitch sweat wouldnt 14 PUSH nearly straighten touch 15 VOMIT do stood 16 blacked 17 cut havent knocked only stumbled talk wet 18 collapsed felt pushed threw 19 became wake want 20 . play poured 22 BREATH heard 23 breathe came walk 24 rest 25 CRASH 26 QUITS need 27 fell 29 AGAIN KEEP keep 30 crashed 31 get 32 passed 33 wish 35 fainted think 38 FALL 39 FAINT
ibuprofen 14 . 32 before
ice -24 made -16 THING bag -14 bath -9 bucket 9 COLD cold 12 . 13 this 18 and
iced -13 .
icing -10 .
icy -12 HOT LEAK hot -6 $
id 21 rather
idk 6 $ 10 .
if -38 . PART -27 HANDS -21 SOCKETED -19 HAND hand -18 there -15 ACHE -14 ARM arm -13 DIGIT fingers -11 SHOULDER -9 its 8 im
ill -14 tell -9 . -8 $ 17 BY with
im -25 dead -9 done -8 FALL cooked dying -7 NUMB numb 6 sitting 7 doing tired 8 TIRED 9 TIGHT 10 . 13 LOST losing 14 SWEATS sweating 15 having 16 BE 17 HAVE ok 31 good
immediate 7 .
impossible 23 $ 28 .
improvement 14 .
in -31 neck -25 good -23 to -22 FACE high pocket rain -21 college hospital -20 # room -19 face -16 ELSEWHERE biceps first -15 BREATH front storm tree -14 FALL SLIP fall spot -13 last lats palm this wind -12 back heat love -11 HEIGHT NUM hour march mask street -10 THING count it rankings slips toilet -9 lake mud throat van -8 eye gym june that -7 bp chess field ninth thighs third -6 bat butt extras garage match math pen 6 SHEETS am nets night scrum 7 AGAIN MISSILE bed inner park three 8 ARM SHOULDER WORN day dugout socket 9 NIGHTS SEAT SOCKETED belly collarbone legs ring weight 10 LOST TRAINING chair lost order 11 MANY SWEATS finger mornings sweat 12 ACHE BE GROUND arm days forearm game joint pinky spring wrist 13 BREAKS_LIKE door 14 HOT MOTOR armpit jump locker middle pile 15 PUSH second 16 BY RIBS 17 for position recliner training 19 HANDS PART 20 by row 21 evening 22 and month warm 24 $ ELBOW elbow 25 LEAK fender 27 CRASH 28 shower 29 fingers 30 DAILY 33 CHEST chest 40 DIGIT
inch -8 .
incision 7 is 10 opened 15 HAVE LEAK has 18 $ BE 36 .
indeed -15 .
index 13 DIGIT HANDS PART finger 19 .
infected 16 $
infield -19 . -6 TRAINING practice
inhale 7 $ .
injection 19 .
inner 8 POSITION side 18 ACHE ARM ELBOW MISSILE PART elbow 24 .
inning -7 $
innings -10 .
inside 8 when 12 MISSILE 22 . 26 ACHE ARM ELBOW PART elbow
instant 9 . ACHE PAIN pain
into -18 old -12 back ex -11 second -8 DAILY 6 wall 12 DIGIT thumb 13 ELSEWHERE jaw 14 boards 15 HAND arm hand 17 ARM catcher 18 outfield 19 SOCKETED 20 fence 21 $ 23 HANDS 25 GROUND 30 OPPONENT 35 PART VEHICLE 37 .
irregular 19 .
is -27 fine -25 good -24 TIRED in tired -23 it ok -21 back steady -20 away nothing -19 sick working -17 SLIP same -16 long stronger -15 POP PUT better slow warm -14 MOTOR dry happy over -13 itchy -12 numbness stiff -10 HOT -9 FEVER_F as more old -8 ONTO big dead having killing low painful weaker -7 ACHE HAVE blue heavy strong -6 at sore 6 # bluish dreadful hard huge turning 7 HUE LOST drooping droopy going lower 8 HEIGHT lump oozing without 9 BULGE FEVERISH beating different less poking sitting visibly 10 NUMB cold crooked ghost prickling purple unbearable 11 FLUTTER buzzing 12 TIGHT deformed hot puffy 13 DROOP SLUR SWEATS SWELL floppy higher perhaps pins slurred soaked tingly white 14 i weeping 15 ASLEEP DULLED asleep constant dull fat no pressing 16 about colder freezing 17 puffed sleeping twice 18 off stone stuck wet 19 RED red shaped sticking 20 tingling 21 GROUND ice 22 AGAIN BUZZ COLOUR impossible 23 INFECT 24 LEAK 27 CHANGED size 28 there 29 thick 32 COLD 34 NEVER_ENDING 40 SHAPE 41 ODD
ish -24 $ -6 . 10 but
isnt 12 .
it -33 in -32 always -29 today -24 to -22 HEIGHT at no up -20 BY by -18 HAVE WENT gets -17 doesnt is where -16 ONTO -15 BULGE CHANGED ODD more went -14 MANY -13 cracks down was -12 did ok -11 SWELL goes mostly normal off -10 OUT clicks out pulled -9 hasnt snapped -8 drops pop swells -7 $ might pops -6 overhead past pinched pinches rains 6 . SEAT SHOULDER cant socket 7 presses slide slides 8 PART SOCKETED felt it slipped 10 wouldnt 11 made shift 12 go looks never quits 13 NUMB clunks fell slid slip 14 FALL PUT above gave hurts stays wants 16 kept rip tear 17 locks 18 throbs 19 QUITS dislocated feels keeps subluxed 20 BLOW shifted 21 popped stop 22 POP cracked wont 23 CATCH LOOK tingles 25 ON on 26 ACHE PAIN 27 BREAK STOP 29 came 31 DISLOCATE 32 CANT 35 COME back 51 SLIP
itchy -15 . -14 $
its -15 MANY -12 LOST gone -11 TIGHTER tight -10 COME ONTO gonna -9 sore -8 WENT fine over solid stuck -7 worst -6 HOT hot 6 LOOSE OUT SEAT SHOULDER SOCKETED going loose socket 7 SLIP 8 ACHE not power 9 NUM 10 ASLEEP LEAK asleep sitting 11 hard seat 12 own 13 HANDS numb poking 14 NUMB 17 PART hanging 19 SWELL 21 .
itself -11 $ 11 .
ive -7 had 6 TIRED 11 LOST lost 12 . 13 COME 22 FLU flu
jacket -9 .
jam -13 .
jammed -17 ONTO -9 . 7 SHOULDER SOCKETED shoulder 17 ACHE
jar -13 .
jav -8 .
javelin -19 . -8 BE PUT -6 was
jaw 18 $ .
jeans 12 .
jello -7 ONTO from 7 $
jersey -21 .
jitters -8 .
jk -20 . -15 $
job -7 $ .
joint -11 $ -10 and -8 ONTO 6 come 8 when 9 slides 13 PUT 14 shifted 17 COME 18 is 24 feels 26 SLIP 42 BE
joints 6 ACHE PAIN hurt 24 BE are 35 .
joke -7 .
joking -10 .
jolts 13 . ONTO
jumbled 12 .
jump 8 $
jumped 15 . 23 OUT out
jumping -12 .
jumps 18 .
june -12 $ .
juniors -15 $ .
"""
