"""The points of words and of pairs of words, in tenths, fallen to jumps.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
fallen 13 . 16 ONTO
falling -12 ON on 6 ONTO 8 from 12 CHANGED ODD off
falls 15 ASLEEP asleep 18 OUT out 30 .
fantasy -9 .
far -16 . -13 $
fast -16 before 10 and 19 .
fastball -13 BE -12 and -8 . -7 HAVE 8 $
fat 11 SINCE 12 and 26 .
father -8 .
fault -12 .
fear -11 .
feel -19 THING -18 $ -17 ACHE -15 it -13 no -10 for good -9 BULGE COME POP PUT pop -8 SHOULDER -6 muscle 6 . 8 heavy hot 9 FAINT LEAK dizzy 10 COLD ONTO cold sick tingly 11 BUZZ ill 12 NUMB 13 awful 14 down theyre 18 faint 20 FEVER feverish 23 they 27 HOT
feeling -15 for million -10 COLOUR better blue -9 strong -7 about 6 $ ACHE it when 7 . 16 from 33 in 43 ONTO
feelings -8 . -6 $
feels -26 normal -20 free -14 better -10 great -9 stable -8 strong 7 cold 8 HAND HANDS hand 9 ARM ASLEEP SOCKETED arm asleep dead 10 HOT OPPONENT hot someone 12 ok 13 unstable 14 LEAK 15 PART 16 numb 19 it 20 COLD UNSTABLE 21 NUMB 22 TIGHT 24 weak 25 ACHE 27 WEAK heavy 30 its 42 .
feet -9 after -8 SINCE 8 . 10 and
fell -37 ASLEEP asleep in -30 for -21 short -19 HEIGHT behind -16 last -13 OUT into out -11 and -10 LEAK apart 6 ONTO through 11 BY with 13 ON 14 because 15 on 19 hard 29 from
felt -28 great -24 good -17 strong -16 TIGHT heavy -15 smooth -11 ONTO -10 $ that -9 live -7 rip -6 stiff 6 . it 7 SHOCK arm 9 funny 10 BREAKS_LIKE muscle velcro 11 ACHE CHANGED SHOULDER elbow 13 SEAT joint 14 BREAK PART THING something 15 SOCKETED 17 BULGE COME PUT dead pop tingle 18 tearing 19 NUMB 20 ELBOW 23 ball 27 POP 30 weak 31 MISSILE 34 WEAK
fence -13 $ 8 .
fender 26 . bender
fever -7 SINCE dream since 6 FEVER_C 9 FEVER_F 16 $ 18 # FEVERISH 21 NUM 23 ONTO 24 and 27 .
feverish 14 and 20 $ 29 .
few 6 minutes 15 times 17 seconds
fielder 9 . 11 $
fight -11 .
film -14 .
final -20 . -18 $
finally -28 .
finals -20 . -15 week
find 16 .
fine -63 . -62 $ -16 since -14 NOT SINCE -13 ACHE HANDS PART -6 sir 10 except 16 but
finger -13 ONTO was -12 $ ON PUT on -10 COME 8 is 10 NUMB 11 NOT 13 BE 14 and 18 LOST
fingers -20 crossed -13 is -11 tingled -10 fine in were 6 AGAIN SWELL 7 CANT DROPPING felt fumble have 8 REACH turn turned 9 MOTOR PUSH 10 tingle 11 NUMB and 12 HAVE 13 are 14 BE SINCE after 15 ON on 16 PUT 19 r went 20 NOT 26 COME 31 WENT 32 .
fingertips 9 are 10 COME PUT WENT 13 FEELING feel 16 $ 27 BE 37 .
finish -25 $ -16 to -9 . 18 TRAINING
finished -16 $ -15 .
fire -7 $
firm -11 .
first -19 thing -11 ONTO -7 . TRAINING but 6 SINCE then 8 GROUND base
fist 26 $ .
fit -10 .
five -8 $
fixed -16 . -12 ACHE it
fizzes 14 .
flat -14 tyre -12 as 6 ON ONTO on 12 $
flew 6 OUT out 7 . CHANGED ODD off
flight 10 . 24 $
flipped 7 .
flips 18 .
flooded -8 $ .
floor 10 . 13 at
floppy 13 $ .
flops 23 $ 24 .
flu -7 im 27 . 35 $
fluid 11 $ 14 .
fluttering 12 $ 13 .
fly -8 . -7 to 9 MISSILE ball
flyers -13 . for
folded 9 $ .
food -23 . -19 $
foot -24 . -9 COME PUT -7 $
footing 25 .
for -19 years -17 # $ -15 toilet -14 parking -13 VEHICLE it longer -12 TRAINING -11 bus -9 THING fake lunch -8 curveball -7 SWELL fun swelling 6 last 8 MANY 9 rebound sure 10 ELSEWHERE HEIGHT days minutes 11 game six top 14 few 16 MISSILE NOT ball 17 no 21 . 22 sec 23 BREATH air second 25 hours moment 31 month 48 weeks
forearm -8 pump 8 COME HAVE LOOK NUMB PUT WENT has looks prickles 15 BE 16 .
forgot -20 . -7 $ 6 BREAKS_LIKE band
fork 13 AGAIN at 30 .
form -17 . -13 $
forward 10 $ OUT out 32 .
foul 6 . 12 ball 13 MISSILE
four -12 . -9 $ and when 6 at 10 PILL ibuprofen
frame 10 $ 15 hard
free -40 . -34 $
freezing 22 .
fresh -31 . -22 $
friday -9 $ .
fridge 13 $ .
friend -27 . -20 $ -16 FALL QUITS fell -14 BLOW hit -8 BE -6 COME 14 PUT pulled
friends -8 .
from -22 TRAINING bench -21 yesterday -18 writing -17 running squats -16 THING bar weekend -15 climbing laughing that -14 NUM -13 COME GROUND chalk sitting -12 practice -11 FLUTTER jumping -10 ice -9 MANY TIGHT gripping spinning -8 pump swimming -7 SLIP before hitting sliding -6 . hay this 6 cold last 7 SWEATS sweat 8 couch it 9 operation place 10 HAND HANDS pain shoulder 11 ARM ELBOW SEAT ache elbow 12 SOCKETED 13 MY our stage 14 MISSILE SHOULDER box sleeping under 18 surgery 22 PAIN neck 23 HEIGHT horse 25 PART 33 WOUND 37 ACHE
front -35 . -19 PART -17 $ when -16 ACHE SHOULDER -15 SOCKETED -12 shoulder -6 delt
froze -13 .
ft -11 . -8 $
full -23 $ 10 . 14 BUZZ 25 speed
fumble 7 .
fumbling 8 . THING
fun -12 $ .
funeral -8 .
funny 8 $ 14 BONE bone 31 .
fuzzy 8 .
gallon 9 THING milk 15 .
game -11 $ -7 . 8 ACHE
garage -18 . -9 DAILY door
garbage -11 $
gardening -19 .
gas -9 . -8 $
gasping 13 for 15 .
gassed -7 $ -6 .
gassers 8 $
gate 10 . 14 $
gave -10 and -8 . 7 crack 8 OUT in out 9 ON on 15 ONTO
gear -10 .
get -20 NUMB -19 ACHE it -11 numb 7 HEIGHT up 11 SHOCK 18 . 19 NOT no 23 through
gets -6 NUMB numb 7 WEAK
getting 7 WEAK WEAKNESS sick weaker 25 .
ghost 10 . COLOUR white
gimme -11 .
girl 7 . 10 COME
girlfriend -20 . -14 BE is
give -15 . -6 minute
given -15 .
gives -7 PAIN 6 when 12 HEIGHT up 13 . 16 OUT out
giving -7 . 7 OUT out
glass 9 . COME FALL QUITS fell
glasses -25 .
glove -6 in 8 is 14 .
gloves -12 .
go -20 $ -18 NUMB numb -14 to -12 . -11 and 6 BULGE back into pop 7 POP 11 ON on things 13 NOT 14 OUT out up 15 HEIGHT 18 ONTO THING
goal -27 $ -21 . 7 VEHICLE post
goalie -14 .
goalkeeper -7 .
goalpost 15 .
goes 7 . 10 ONTO 11 dead 20 HEIGHT up
going -20 $ 6 HEIGHT up 17 . 20 ONTO 33 to
golf 19 VEHICLE cart 21 .
gone -15 BY -12 by -6 NOT and no 8 $ . ACHE PART SOCKETED 10 in 20 COLOUR
gonna -9 . 14 COME 23 SLIP slip
good -52 . -24 ONTO -23 in -17 $ -15 TIRED tired -14 COME -12 ACHE -11 MOVE control -10 PUT -9 BULGE NIGHTS POP pop -8 BE PAIN -7 to -6 PART SOCKETED 11 i
goose -10 .
goosey 14 .
got 8 .
gout -10 $ .
grade -26 . -10 $
grades -15 .
grand -25 . -21 $ -6 BLOW slam
grandpa -28 .
grandson -6 .
grapefruit 19 $ .
gravel 7 .
gray -6 $
great -31 $ -20 . -9 TRAINING
green -16 . 17 THING stuff
grey 6 $ 8 and 9 .
grind -10 .
grip -22 ON on -18 CATCH -11 felt -10 tape 10 MISSILE 12 QUITS 15 HAVE WEAK has weak 18 is 20 GIVES gave 24 POWER strength 28 BE 30 .
gripping -7 $ 14 MISSILE
grips 11 COME 17 .
ground 7 . 11 $
grounder -7 to -6 .
growing 7 . 8 $
growling -9 $ .
guard -14 .
guess -9 .
gun -17 .
gunk 12 $ .
gut 6 and
guts 20 .
guy -15 . -10 $
guys -8 .
gym -29 . -13 $ 8 class
h -6 .
had -23 CANT trouble -19 CHEST FLU NUMB TRAINING chest flu -17 few -16 LEAK -15 NOT -14 ODD flat -13 PAIN good -12 HEART heart no surgery -11 PART SHOULDER SOCKETED dead shoulder -10 COLD THING -9 COLOUR ELSEWHERE blue -8 POP SWELL game numbing swelling -7 . HOT hot -6 # MANY NUM PUT tingling 8 ACHE 9 FALL FEVER fall fever 10 crash 11 DISLOCATE 12 $ sublux to 13 accident 15 CRASH 16 luxation 17 car 18 BE 19 pacing 21 it 22 PILL VEHICLE
haha -33 $ .
hair -19 . -7 $
half -32 $ -15 hours 11 . 12 HAND hand 15 HANDS PART 25 FACE face 26 range
halfway 18 HEIGHT through up 42 .
hall -14 . -6 BE 6 $
hammer -6 ONTO
hammered -21 $ .
hamstrings -7 .
hand -22 and -12 from tingles -11 BY with -8 ACHE ELSEWHERE eye -7 is -6 ONTO isnt 6 ON i keeps on times 7 numb swelled 8 COLD DROPPING cold dropped has to wouldnt 10 turned 11 HAVE PUT opened tingled 12 CANT FALL NOT looks when 13 BUZZ KEEP SWELL became felt 14 sleeps went 15 AGAIN was 16 opens 17 . LOOK 18 doesnt let 19 lets 21 $ 22 feels 26 BE COLOUR COME 27 WENT 28 QUITS 35 STOP
handball -13 .
handle -18 . -11 BE
handlebars 28 $ .
hands -28 $ -15 ONTO -14 . -11 smell -10 are -8 BE -6 BY with 8 PAIN 9 ELSEWHERE knees 12 to 19 and
hang 6 ONTO
hanging -7 ONTO 13 there 17 .
hangover -13 .
hangs 16 ON on 19 ONTO 24 $ 44 .
happy -32 . -17 $ -10 BY with
hard -22 $ -16 i -11 today -10 PART SINCE after -6 # NUM 8 MOTOR throw 9 to 12 . SHAPE lump 15 ONTO 27 ON on
harder 10 .
hardly -12 . -8 $ 6 HAVE noticed
has -27 . -24 FEVER fever -20 ACHE -14 FLU POWER -13 PART -10 flu -9 CHILL chills -8 for numb -7 AGAIN KEEP -6 gone 6 NOT 7 come strange 8 ASLEEP DROPPING asleep changed dropped opened 9 LEAK ODD form 10 that zero 14 QUITS 16 CHANGED 20 become
hasnt 9 . 12 STOP stopped
hat -22 .
have -27 $ -16 arthritis numb -13 HAND HANDS slept -11 good strong -10 PART TRAINING -9 COLD cold hunger -8 muscle nothing to -7 NOT them -6 COLOUR blue 6 PAIN difficulty pain vomiting 7 TIRED exhausted 8 BUZZ ants 9 . VOMIT 10 utterly 11 CANT 13 FEVER_C lost 14 LOST 17 ACHE FLU flu pressure 18 temperature 21 FALL 22 TIGHT 23 # COME FEVERISH NUM 24 had 29 HAVE 30 BE 39 FEVER fever
havent 25 . 32 slept
having 6 NUMB tingling 17 .
hay -28 . -24 FEVER fever
he -21 . -19 BE -15 FALL -14 COME -10 PUT -9 HAVE -6 hit 12 BLOW
head -23 . -20 ONTO -10 PAIN hurts -9 BY -6 ON at on 9 $
headache -17 $ 10 . 20 life
header 26 .
healing -16 $ .
healthy -17 . -11 $
heard 6 rip 7 crack 8 BULGE COME PUT pop 19 PART 20 BREAK 25 it 26 ACHE 33 POP 41 .
heart -22 and -18 rate -13 NOT -8 pounding wasnt -6 BY to with 7 attack 8 . BE 9 AGAIN KEEP keeps 10 is 12 doing 13 COME 17 racing skipping 18 jumps 24 FLUTTER beats
heartbreaker -9 .
hearts -9 $ .
heat -13 $ . -11 BE -6 ONTO
heater -9 .
heavier -22 . -15 $ -6 than
heaviness 11 .
heavy -21 . -15 SINCE after -12 from -10 in -7 i -6 ONTO 12 ON on 17 and
heifer -18 .
height -9 $
heights -23 . -8 $
held -12 .
helmet -7 . 8 to
help 12 $ 20 .
helped -6 $ .
helps 6 $ 9 .
her -28 . -23 PART -15 HAND HANDS wrist -14 SOCKETED -12 ACHE -11 SHOULDER -8 shoulder 10 back
here -20 $ -14 .
hes -20 .
high -25 . -22 school -17 $ 15 MANY NUM five
higher 6 . 8 $
hill -17 . -10 $
hills -7 .
him -41 . -22 $ -11 ONTO
hips 11 BE are
his -73 .
history -15 .
hit -23 . -19 with -18 MANY OPPONENT -17 $ for -16 batter -15 homer -14 around off -12 DIGIT HANDS hard wall -11 net post -10 pr -9 AGAIN -8 target -7 ball snooze thumb 7 ONTO nerve 10 ARM head in pothole 13 floor 15 by 16 deck 21 PART 23 SHOULDER shoulder 27 SOCKETED 28 GROUND 30 ACHE
hitter -23 .
hitting -7 ONTO -6 .
hm -7 $ .
hmm -15 . -8 $
hockey -9 $ .
hold -8 onto -7 ON ONTO 6 phone racket 9 cup plank 10 . ball 13 coffee 14 ACHE 15 fork 21 ARM PART SOCKETED arm 56 THING
holding -12 $ GROUND 13 . 19 MISSILE ball 20 THING
hole -8 ONTO 6 $ 14 where 18 .
holes 10 $ 20 .
hollow 20 .
home -6 ONTO in 25 GROUND THING plate
homer -16 $ .
homework -35 . -30 $ -9 BE is
honestly 25 .
hood -11 .
hoodie -11 $ .
hope -10 .
hopped 15 OUT out
horse -8 ONTO 28 . 31 $
hospital -13 .
hot -17 SWEATS -14 THING -13 MISSILE -10 TRAINING -9 PART -8 bat -7 dog gym -6 day 7 . 8 DULLED from oven 9 to 19 $ 21 LEAK 22 and
hour -10 $ -8 nap 17 . 21 AGAIN MANY every
hours 6 . 7 because 8 and
house -7 $ .
how -13 . -8 ACHE do it 27 i
huge 15 .
huh -7 $ .
hundred 7 and
hung -16 .
hunger -9 $ .
hungry -21 $ .
hurt -27 . -26 $ -22 ONTO -14 from -13 # MANY NUM ON on -6 feelings 12 myself 22 i
hurting 20 $ 21 .
hurts -18 from -11 $ -8 MANY -6 ONTO 6 i 8 in 11 NOT every no 12 AGAIN 22 . time 26 # NUM
i -29 saw -25 ran -23 slept -22 worry -21 STOP did should -19 be would -18 popped -17 call let pulled stretched -16 to -15 GIVES LIFT drink gave mean rested -14 drank -13 DAILY NEW new regret will -12 dropped move wasnt woke -11 forgot sat snore -10 LOOK caught know lift look rolled squat -9 FRACTURE broke carried didnt guess hit -8 GROUND feel go ice -7 burned raise sneezed stopped take -6 ate made missed run 6 TRAINING dove press put released 7 BE CANT OPPONENT can lay stumble 8 MISSILE WENT inhale lie try 9 LEAK 10 DISLOCATE HEIGHT ONTO SPENT dislocated drop in tore up 11 REACH lost noticed peed serve wiped wouldnt 12 BREAK LOST bumped cannot do dont hold push went 13 HAVE PUSH SWEATS might nearly straighten sweat 14 cock pitch 15 HOLD VOMIT blacked stood threw 16 touch wet 17 collapsed only 18 havent knocked pushed talk 19 became 20 came poured stumbled wake want 21 heard rest 22 . CRASH walk 23 cut felt play 24 BREATH breathe 27 crashed 28 keep 29 AGAIN KEEP get need 30 QUITS fell 31 think 33 passed 35 wish 36 fainted 40 FAINT FALL
ibuprofen 13 . 32 before
ice -24 made -15 THING bag -14 bath -10 bucket 6 $ 10 this 11 COLD cold 13 . 18 and
iced -14 .
icing -10 .
icy -12 HOT LEAK hot -7 $
id -12 PUT 21 rather
idk 8 .
if -37 . PART -26 HANDS -20 SOCKETED -19 HAND hand -17 there -15 ACHE ARM arm -13 DIGIT fingers -10 SHOULDER -9 its -6 shoulder 8 im
ill -15 tell -9 $ -8 . 16 BY with
im -23 dead -11 done -9 FALL cooked -8 dying -7 NUMB numb 6 . 8 TIGHT 9 doing tired 10 TIRED 13 LOST losing 15 SWEATS sweating 16 having 17 BE ok 18 HAVE 30 good
immediate 7 .
impossible 24 $ 28 .
improvement 15 .
in -30 neck -22 FACE college good high rain -21 hospital pocket room to -19 # -18 BREATH face -17 first -16 this -15 FALL biceps fall tree -14 front love storm top -13 SLIP back hour lats spot -12 ELSEWHERE NUM heat it last mask palm -11 THING street toilet wind -10 march mud rankings throat -9 HEIGHT count gym slips van -8 eye lake -7 bat bp chess field garage june math thighs -6 bus butt extras match ninth pen 6 am from rest scrum 7 AGAIN MISSILE POSITION inner order three 8 WORN collarbone day legs park 9 LOST SEAT SHOULDER SOCKETED dugout lost socket 10 TRAINING belly mornings night ring weight 11 MANY arm chair days finger forearm locker 12 BE SWEATS joint pinky spring sweat 13 ACHE BREAKS_LIKE HOT NIGHTS armpit pile 14 door game jump wrist 15 GROUND middle second 16 recliner 17 PUSH for 18 BY MOTOR position training 20 RIBS 21 ELBOW by elbow evening 22 HANDS and row 23 $ month warm 24 PART 26 LEAK fender 27 fingers shower 28 CRASH DAILY 32 CHEST chest 39 DIGIT
inch -7 .
incision 7 is 11 opened 15 HAVE LEAK has 17 BE 18 $ 35 .
indeed -18 . -7 $
index 13 DIGIT HANDS PART finger 20 .
infected 16 $
infield -16 . -7 TRAINING practice
inhale 8 $ .
injection 18 .
inner 9 POSITION side 18 ACHE ARM ELBOW MISSILE PART elbow 25 .
inning -8 $
innings -8 .
inside 8 when 14 MISSILE 16 . 27 ACHE ARM ELBOW PART elbow
instant 9 . ACHE PAIN pain
into -20 old -13 ex -11 back second -7 DAILY 11 DIGIT thumb 14 ELSEWHERE boards jaw 15 HAND arm hand 16 catcher 17 ARM 18 SOCKETED outfield 20 $ fence 24 GROUND HANDS 30 OPPONENT 33 VEHICLE 36 PART 38 .
irregular 19 .
is -24 TIRED back fine good it ok tired -21 away -19 in steady -18 nothing stronger working -17 MOTOR same slow -16 SLIP sick -15 POP PUT long warm -14 happy over -13 better doing itchy stiff -12 dry numbness -11 more -10 as blue old -9 having -8 FEVER_F HAVE HOT ONTO killing painful weaker -7 heavy low strong 6 # WENT swelling turning 7 bluish droopy hard huge leaking lump 8 HEIGHT HUE LOST drooping going lower oozing without 9 beating different poking prickling unbearable visibly 10 FEVERISH buzzing crooked ghost less purple sitting 11 BULGE FLUTTER SWELL cold perhaps 12 i puffy white 13 SWEATS deformed floppy higher hot pins soaked tingly 14 DROOP SLUR slurred weeping 15 NUMB TIGHT constant fat 16 DULLED colder dull freezing pressing sleeping 17 ASLEEP about asleep stone wet 18 no off puffed shaped twice 19 stuck 20 GROUND ice sticking 21 RED red tingling 22 BUZZ COLOUR INFECT impossible 23 LEAK 24 AGAIN 27 CHANGED size there 30 thick 32 NEVER_ENDING 34 COLD 38 SHAPE 40 ODD
ish -23 $ -7 . 10 but
isnt 12 .
it -30 always in today -24 HEIGHT -23 to -22 ONTO at up -21 BY no -20 by -18 HAVE WENT gets -17 where -16 doesnt -15 CHANGED ODD more went -14 BULGE -13 down is -12 cracks goes ok was -11 MANY OUT SWELL did normal out -10 mostly off pulled snapped -9 $ clicks drops swells -8 for -7 might overhead pinched pop pops -6 hasnt hurt past rains 6 slide 7 SEAT SHOULDER aches cant it presses slides socket 8 . PART SOCKETED 9 slipped 10 wouldnt 12 hurts looks made shift 13 NUMB clunks fell gave never quits slid 14 above slip wants 15 FALL PUT stays 16 go kept rip 17 locks subluxed tear 18 throbs 19 BLOW QUITS dislocated 20 ON cracked on shifted stop 21 feels keeps popped 22 POP tingles 23 CATCH LOOK wont 27 BREAK STOP 29 came 30 ACHE 31 CANT PAIN 32 DISLOCATE 36 COME 37 back 50 SLIP
itchy -16 . -14 $
its -16 MANY -13 HOT -12 LOST gone -11 COME -10 ONTO TIGHTER gonna tight -9 WENT sore -8 solid stuck -7 fine over -6 BE nothing worst 6 LOOSE OUT POWER going loose ok 7 NOT SEAT SLIP 8 ACHE power 9 NUM 10 ASLEEP asleep not 11 seat sitting 12 hard own 13 HANDS numb 14 poking 15 hanging 16 NUMB 18 PART 19 SWELL 21 .
itself -12 $ 9 .
ive -8 had 6 TIRED 10 LOST lost 12 . COME 22 FLU flu
jacket -9 .
jam -12 .
jammed -16 ONTO -7 . 7 SHOULDER SOCKETED shoulder 18 ACHE
jar -11 .
jav -7 .
javelin -18 . -9 BE PUT -7 was 6 PART
jaw 19 $ 20 .
jeans 12 .
jello -7 ONTO from 8 $
jelly -6 .
jersey -22 .
jitters -9 .
jk -20 . -13 $
job -6 $ .
joint -10 and -7 $ ONTO 6 come 8 when 9 slides 13 PUT 14 shifted 16 COME 17 is 24 feels 26 SLIP 42 BE
joints 7 ACHE PAIN hurt 26 BE are 35 .
joke -8 . -6 $
joking -10 .
jolts 13 . ONTO
jumbled 14 .
jump 7 $
jumped 6 GROUND SEAT track 17 . 24 OUT out
jumping -11 .
jumps 17 .
"""
