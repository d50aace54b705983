"""The points of words and of pairs of words, in tenths, no:numbness to slightly.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
no:numbness -25 . -15 ONTO in -6 $
no:obey 15 .
no:of -16 .
no:off 13 $ 19 .
no:on -10 $ ACHE it 7 MISSILE 14 that 17 ball
no:once -17 . -16 $
no:one -17 .
no:open 19 .
no:or -27 . -8 THING anything -7 CATCH
no:out -11 SINCE -8 $ 6 HANDS PART 8 SHEETS bed
no:over 6 HEIGHT head
no:pain -16 $ -13 SINCE since -8 at or 7 no 8 NOT 26 but
no:painful -6 $ .
no:past 13 .
no:pee 10 .
no:pinch -7 $ -6 .
no:pinky 6 .
no:pins -7 .
no:pop -20 .
no:popped -6 .
no:position 6 $ ONTO in 17 that 36 .
no:power -11 at 6 SINCE since 9 ONTO in 11 to 15 $ 21 .
no:press 11 .
no:problem -15 $ -13 .
no:problems -9 . -7 $
no:properly 16 $ .
no:pull 6 DAILY 7 .
no:pulse 19 .
no:push 9 myself 10 DAILY door
no:quite 13 .
no:quits 8 $ .
no:reach 6 HEIGHT 9 top 21 .
no:ready -19 $ .
no:recover 10 .
no:regular 17 .
no:report -11 . -10 $
no:resistance -9 .
no:rest -6 MANY NUM 13 .
no:right 24 .
no:ring 6 . DIGIT HANDS PART finger
no:rotate 21 .
no:same -20 as 8 .
no:say -22 $ -20 . 12 words
no:scratch 11 . back
no:sensation 7 $ 22 .
no:serve 11 .
no:shirt 7 .
no:short -10 . BREATH breath
no:shortness -8 . BREATH breath
no:shoulder -12 $ .
no:sick -14 .
no:side 16 $ .
no:signs -9 . -8 INFECT infection
no:sir -6 .
no:sitting 6 ONTO 11 .
no:sleep 9 . 12 $
no:slept -10 .
no:slip -16 . -9 $
no:snap 7 . DIGIT HANDS PART fingers
no:so -20 .
no:sore 17 .
no:sorry -7 .
no:speak -15 $
no:special -8 .
no:squeeze 10 toothpaste 12 $ DAILY 22 .
no:stairs -24 .
no:start -9 . -8 $
no:stay 8 .
no:stops 13 ACHE PAIN hurting 19 .
no:straight 36 .
no:strength 8 ONTO in 15 $ to 30 .
no:strong 9 . 12 as
no:stuff -6 .
no:sudden 15 $ .
no:sure -7 .
no:swelling -22 . -9 either -6 $
no:swollen -18 . -15 $
no:symptoms -8 .
no:take 15 . deep
no:thank -11 .
no:thanks -8 . -7 $
no:that -28 $ -10 BE was 8 wrist 14 hand 15 POSITION side 16 ACHE ARM SOCKETED arm 17 NOT 18 . 20 HAND HANDS 32 PART
no:the 12 .
no:there -9 . BE -8 is
no:thing -12 $ -7 .
no:think -12 $ .
no:those -19 .
no:throwing -13 .
no:throws -8 $ -7 .
no:thumb 11 .
no:time -17 . -10 $
no:tingle -8 . SINCE anymore
no:tingling -11 $
no:tingly -6 .
no:to -15 speak -12 ACHE it -11 report -6 do 7 HOLD hold throw 8 THING 12 sleep 14 $ 18 MOTOR 20 . 33 live
no:today -32 . -16 $
no:tomorrow -20 $ .
no:toothpaste 10 .
no:top -7 .
no:touch 10 .
no:towel -18 $ .
no:training -9 .
no:trouble -22 . -10 at -9 $
no:trying 28 $ 30 .
no:turn 12 .
no:two -9 .
no:unscrew 17 .
no:up -19 from 8 $ 14 THING 18 .
no:wait -9 .
no:wake -16 $ -7 . 9 HEIGHT up
no:walk 6 . 21 $
no:wanna 14 BE be 16 live 25 .
no:want 23 . 27 to
no:warm 6 $ .
no:was -25 .
no:wash 7 . DAILY hair
no:wasnt -9 ONTO in 22 here
no:water 10 .
no:weak -20 . -13 $
no:weakness -22 $ 19 NOT no
no:week 6 .
no:weeks 20 $ .
no:weird -17 . -8 $ -7 feelings
no:wet -9 .
no:what 14 .
no:whatsoever -9 $ .
no:with -21 $ -13 this -8 . 10 ACHE 11 it 25 that
no:without -15 problem -12 pain -10 ACHE -9 PAIN -6 CANT 8 TIGHT help 12 meaning 13 HAVE feeling noticing 14 FEELING 20 BE trying 21 diet 22 . 24 PILL
no:wont -11 be 6 PUT WENT go 8 rotate stay 9 REACH 11 MOVE come 14 MOTOR 15 COME WAKE wake
no:words 14 OUT out 15 and 25 $ 39 .
no:works 16 .
no:worse -8 $ .
no:worth 8 . 16 living
no:would 18 .
no:wouldnt -16 TRAINING start 8 come 10 COME 12 WAKE wake
no:wrist 12 .
no:zero -18 ACHE PAIN pain -10 ONTO in
no:zone -12 $ .
nobody -13 .
noise -11 $ -9 .
none -27 . -22 $ -13 SINCE since 13 ACHE it
nonstop 7 SINCE since 16 $ 24 .
noodle -16 .
noodles -16 .
nope -24 . -8 $
normal -53 . -30 $ -17 NOT -13 ONTO -12 PAIN no -10 to -9 sore -7 pain
normally 11 .
nose -34 . -13 BE is -10 $
not -51 $ -21 SINCE because since -14 ACHE -13 PART SOCKETED -12 . 8 BE HAVE WENT getting
note -21 .
nothing -24 else -12 $ 7 relieves 8 but helps 9 day 13 i 18 STOP eases 25 touches 30 .
noticed -10 weight 15 .
novocaine 6 $ 8 BE FEELING feeling 14 .
now -10 .
nowhere 19 .
nuh -7 uh 6 .
numb -22 to -20 from -12 once -10 # NUM -8 should -7 BY i with -6 ONTO 6 FEELING 8 NOT as not 9 POSITION 10 HANDS ON on 11 PART 12 DIGIT SINCE 13 $ patch 15 AGAIN every 17 and 18 since thumb 19 . BE 26 between
number 14 # . NUM
numbers -7 BE were
numbing -13 .
numbness -21 BE 6 ONTO in 9 .
odd 7 $ 11 .
of 7 .
off -23 $ -18 table -17 at -15 CHEST THING chest -13 MISSILE -12 mound -11 . -10 ONTO end in -7 day -6 FACE face shin 7 collarbone 9 it 10 horse roof trampoline 13 bleachers ladder 14 GROUND shoulder 15 bicycle 17 without 18 ACHE 20 SOCKETED 22 NOT stage 25 PART 27 SHOULDER 35 VEHICLE
ok -31 . -15 $ -10 to
okay -30 . -27 $ -7 already
old -37 . -10 friend -9 $
omg 13 . 16 $
on -30 DIGIT -25 HANDS tuesday -22 row -21 LEG down fingers -20 shoulders -19 WORN deck hill purpose -18 tv -17 ELSEWHERE THING finger line -16 cleats her -15 HEIGHT -14 shelf team -13 diet -12 leg wrist -11 monday road -10 squats -9 BREAKS_LIKE DULLED ball glove hands neck -8 DROPPING bar drop field legs plane sofa -7 FACE LAND WAKE i landing phone waking -6 ONTO OPPONENT change couch desk foot goal good train 6 SHOULDER curveball first saturday when 7 arm outer to 8 here thunderclap 9 account breast either end fastball pick pitch top 10 SLIP shoulder slide slider third 11 ARM overhead point skateboard throw 12 PUT dugout ground its mound vibrate 13 ACHE TRAINING VEHICLE last leash release stove 14 MISSILE header outstretched 15 in outside 16 COME 17 PILL cutter 18 collarbone longboard strike that 19 GROUND dive rep scooter 24 MOTOR bench 26 chest hand 27 ice 30 CHEST
once 17 from 18 $ ON on 28 ONTO 31 .
one 13 .
ones -21 $ -10 .
only -17 NUM -16 # -14 $ for -11 MANY because -7 . BE ONTO -6 ON at on 8 HAVE gets 10 LIFT MOTOR goes lift 11 POSITION side 17 WENT
onto 10 SHOULDER shoulder 13 ACHE PART SOCKETED 32 .
oozing 11 $ 12 .
op 14 .
open 9 THING 18 water 20 . 22 DAILY
opened 7 $ 14 and 18 HEIGHT up 33 .
opener -7 .
opening -15 .
opens 12 HEIGHT up 23 .
operation -22 $ -15 . -14 ACHE 13 BE is
or -17 . -15 anything -13 $
order -12 $ -11 .
other 24 .
ouch -11 $ .
our -31 . -30 OPPONENT -12 catcher -9 VEHICLE
out -35 to -26 BY with -21 DULLED -19 time -17 there -16 TRAINING -15 NOT -14 flyers -12 order -11 THING -10 AGAIN early rhythm twice -9 form -7 BE DAILY -6 BULGE gas 6 SOCKETED it slurred 7 # NUM 8 scar 9 $ DIGIT as fingers jumbled 10 ELSEWHERE eye i incision 11 bath hand 12 after 13 ACHE PART back its running 14 HAND ON and on 15 for while 17 . mid then 19 HANDS REACH SEAT SLUR nowhere reaching 20 PUT WOUND 21 during 22 BREATH breath 23 SINCE in popped 24 ONTO front 25 POP 26 COME 27 when 31 place
outer 16 DIGIT HANDS fingers 18 PART 22 .
outfield 16 . VEHICLE wall
outside -10 . 8 $ 11 ARM 12 SHOULDER shoulder 14 SOCKETED 15 ACHE 22 PART
outstretched 11 HAND HANDS hand 14 . PART
over -41 $ -17 VEHICLE -14 words -11 NUM -7 by it 6 BY 7 first 9 SOCKETED shoulder 11 SHOULDER 12 PART 13 NOT nothing 15 SEAT place with 16 ONTO 17 dog 21 at 22 NIGHTS ON night on 24 . edge 27 handlebars
overs 6 $
own 9 ACHE PART SOCKETED 30 .
pace -9 .
pacing 18 .
packed -14 .
pad -18 .
pads -19 .
pain -18 MANY -17 NUM -14 has -12 # -11 at -9 was -6 and 6 CANT 7 every from 8 inside shooting wakes 9 BE ONTO PILL meds 10 never 11 ON on when 13 night 14 NIGHTS woke 15 doesnt level 16 AGAIN 17 KEEP kept 18 had i 21 WAKE 26 NOT 39 .
painful -7 $
paining -14 after -12 SINCE 9 $ ONTO
painkillers 7 before 12 to 21 $ 45 .
painless -19 . -8 $
pains 17 $ 21 # NUM 30 .
paint -9 $ -7 .
pale 7 $ 21 .
palm -9 . 9 $ 10 HAVE has 11 feels 21 is 36 BE
palms -15 .
palpitations 26 .
pan 7 $ 14 .
pants -10 ONTO 7 .
paper -15 cut 7 $
paracetamol 33 .
parked 17 .
parking -16 .
part -6 .
partial 26 . DISLOCATE dislocation
partially 19 COME 20 .
partway 13 . OUT out
party -32 . -30 $
pass -26 . -12 OUT out
passed 16 . 23 OUT out
passes -25 .
past 6 ELSEWHERE ear 11 .
patch 7 . 12 ON ONTO on
patient -18 .
pavement 13 . 17 ON ONTO on
peaked -7 . at
pecs -11 .
pee -7 $ -6 .
peed 19 myself
pen -14 NOT -10 # NUM no -6 . 6 and
penalty -11 $ .
pencil 8 $ 9 .
people 15 .
percent -17 $
perfect -22 . -21 $
perfectly -13 .
perhaps 7 WEAK WEAKNESS weaker 17 $ 38 .
period -18 . -8 $
persistent 8 NUMB 17 .
phone -13 $ -8 in rang -7 . ONTO 6 MANY NUM 9 AGAIN 17 twice
photo -9 .
photos -11 $ .
physio -24 .
physiotherapist -20 .
pick 9 CHANGED ODD ONTO off
picked -15 .
picture -20 .
pile 13 $ .
pill -12 and
pills -16 $ -8 .
pin 9 .
pinch -31 . -7 ONTO at in
pinched -24 . -15 $ -8 ONTO when
pinches -28 . -24 before
pinching -31 . -21 ONTO -14 in -10 ON on
pinky 8 numb 11 NUMB 13 is 16 BE 21 . 39 $
pins 7 ONTO in 11 $ 36 and 40 .
pitch -12 and -7 BE 7 # NUM 11 ON ONTO on 19 $
pitched -17 .
pitcher -22 BE -18 .
pitches -27 $ -12 . 7 ONTO in 11 SINCE then
pitching 30 .
pizza -18 . -9 PART -6 $
pjs 10 .
place -6 $ 9 .
plan -11 $
plane -11 .
plank -14 $ -13 .
planks -16 . -13 $
planned -6 $ .
planted 17 .
plaster -29 .
plate 6 ON ONTO on 13 $
play -19 ONTO -6 $ 9 .
played -32 . -6 CATCH catch
player 10 BLOW 15 .
playing -15 $ 21 .
playlist -17 $ .
pleasantly -15 .
please -14 . -13 $
plenty 14 $ .
plunked -17 .
plus 10 PART 12 .
plyo -8 .
pm -12 . -7 # MANY NUM
pocket -22 $ .
point -15 $ 11 ONTO in 13 PART SHOULDER SOCKETED shoulder 14 ACHE 27 .
pointer 17 DIGIT HANDS PART finger 20 .
poison -7 .
poke 6 .
poker -15 .
poking 6 OUT out 24 HEIGHT up 34 .
pole 11 .
poles -12 . -11 $
polo -7 TRAINING
ponytail -7 .
pool -12 $ -8 . 8 and
poor -9 . -7 $
pop -22 OUT out -16 HEIGHT up -14 fly -13 time -9 quiz -6 BE 6 PART inside 8 SINCE and then 11 ONTO 12 $ it 18 ACHE 20 ON PAIN on 21 . 24 no 27 but 33 NOT
popcorn -6 . and
popeye 6 $ 7 .
popp 13 .
popped -17 advil -16 THING wheelie -14 PILL -13 in -11 balloon -7 CHANGED ODD collar off -6 HEIGHT up 7 ARM ELBOW MISSILE PART elbow 8 AGAIN OUT but knuckle out 9 champagne 10 ONTO 11 NUM 13 ACHE when 14 hard 18 loud 20 MANY ON on 21 CANT 24 NOT 26 once
popping -9 . 19 PILL
pops -24 . -11 when -7 AGAIN
portal 20 .
position -8 ONTO -6 ON on 6 . 13 $
possibly -17 $ 14 . 17 SWELL
post -25 . -9 $
pothole 11 .
pounding 6 OUT out
pounds -15 ONTO 13 NOT 18 and 24 .
poured 20 .
power -23 cut -17 $ -13 COME PUT WENT went -12 . -11 BE 16 ONTO in 29 i
pr -22 . -11 ON ONTO on -8 $
practice -8 ONTO 6 BE was 7 but
practiced -10 .
prawns -8 .
pre -7 . TRAINING workout
press -8 BE 8 $
pressed -17 . -13 ON ONTO on
presses 7 . ONTO
pressing 10 . 17 $
pressure 10 . 12 ON on 16 HEIGHT 21 in 26 ONTO
pretty 10 .
prickle 15 .
prickles 6 in 7 ONTO 13 .
prickling 9 $ 11 .
prickly 7 .
pride -18 . -10 $
probably -8 . -6 $ 11 NOT nothing
problem -21 $ -20 BY with
programme -12 $ .
promise -19 . -18 $
properly -18 $ -16 .
protector -16 .
pt -13 .
puffed 13 . 24 HEIGHT up
puffiness 20 .
puffing -10 .
puffy 10 and 11 . 19 $
puked -14 ONTO -8 .
puking 15 $ 21 .
pull -12 .
pulled -40 . -20 ONTO -10 ON on -9 HEIGHT up -6 muscle nighter
pulse 12 . 18 BE
pump -18 . -8 ONTO from
pumped -11 .
punched -11 .
purple 6 and 29 $
purpose -19 . -17 $
pus 7 BE 10 COME 22 $ 29 .
push 6 $ 8 ACHE it 10 HEIGHT up
pushed 7 ACHE it 22 down 24 ONTO 30 .
pushup 9 .
pushups -10 . -7 $
put -7 DAILY 8 SOCKETED 9 it 12 PART 13 . 17 ACHE
putt -6 $ .
putting 10 .
putts -7 $ .
quarter -14 $ .
question -14 . -12 NOT no
quick -23 . -22 $
quickly 6 .
quiet -30 . -13 $
quit 6 $ 8 .
quite -9 .
quits 15 .
quiz -15 . -13 $
r -17 PAIN -9 . 8 NUMB 14 COLOUR
race -24 $ -12 .
racing -14 before -9 . 14 $
rack 8 $ .
racket -9 TIGHTER 9 COME
radio -13 .
rail -17 .
rain -46 . -31 $ -7 BE
rained -16 . -15 OUT out
raining -19 . -17 $
raise 7 . 10 it 15 SOCKETED arm 17 ARM 18 ACHE 20 HAND HANDS hand 32 PART
ran -18 OUT out 19 into 20 ONTO
rang -10 . -8 $
range -9 $ 10 SINCE since 21 . 24 motion
rankings -10 $ .
rate -8 . 12 BLOW
rather 20 . 21 BE be
raw -16 . ONTO from
reach 10 . 14 up 15 HEIGHT
reaching 6 HEIGHT 18 . 20 for
read -22 .
reading 10 $
ready -27 . -18 $ -16 to
really 32 .
rear 26 . ended
reason 12 to 18 $ 23 .
rebound 10 . and
reckon -15 .
recliner 10 because 15 .
recovered -8 $ .
red -14 for -8 $ -6 MISSILE fastball 25 streaks 30 and
reduced 17 ACHE it 30 .
ref -16 . -11 $
referee -11 .
regret -13 .
regular -15 .
rehab -14 .
release 19 . 21 $
released 6 . THING javelin
relief 11 . 18 ONTO in
relieves 7 .
remember -16 $ .
rep 6 $ 10 # NUM 16 . 21 MANY
reps -20 . -15 $
resin -14 .
resolved -22 .
rest 14 $ 16 NOT 20 .
rested -19 . -15 ACHE -12 ARM PART SOCKETED arm -9 $
resting -6 HEART 9 $
result -6 .
results -16 .
rhythm -14 . -10 $
ribs 7 $ and 9 AGAIN MANY every 21 .
rice -20 .
ride -11 $ -7 . 12 ONTO over
ring -14 $ -10 is -8 BE 11 CANT NOT wont 16 DIGIT HANDS PART finger
ripped -19 . -6 double 8 jeans 10 in
ripping 11 ONTO in 29 .
rising -15 .
river -11 .
rly 7 . WEAK weak
rock -9 . -7 $
rocked -10 .
roll -10 $
rolled -9 ONTO over 8 OUT out 13 HEIGHT up 18 atv 29 VEHICLE
roof -22 . -21 BE is
room 12 BE
roomie -12 . BE HAVE has
roommate -19 passed -18 . -13 BE -9 HAVE -6 has
rope -10 .
rose -14 .
rotation 17 BE is 25 .
rough -12 . -10 $
round -10 $ 11 ACHE 12 PART 15 CHEST chest 16 ONTO 30 .
rowing -7 .
rubber 8 BREAKS_LIKE band
rubs -7 .
rug -18 .
rule -19 .
run -25 HEIGHT up -18 . 10 down 18 over 25 ONTO
rung -12 .
running -21 $ -11 poles 10 ONTO 16 temp 20 FEVER fever 23 .
runs -7 $ 7 down 10 ONTO 21 .
runway -9 BE was -6 .
rushed -13 .
sacked -10 .
saddle 19 .
said -19 $ -10 COME -7 ACHE ARM PART SOCKETED arm -6 SWELL swelling
same -15 $ -9 .
sand 6 .
sat -17 ON on 7 down 8 $ 11 in
saturday 12 $
sauce -9 .
save -24 .
saw -23 . -10 bill -7 LEAK RED red
say -18 $ -9 .
says -13 ACHE PART -11 ARM -10 SOCKETED -7 arm i
scar 8 $ 10 LEAK 14 BE 17 . 19 is
scared -28 . -15 to -13 its
scary -20 .
schedule -25 . -17 $ -11 this
school -33 . -14 BE -9 $
scooter 27 . 29 $
scored -23 $ .
scratch -8 .
screaming 11 .
screen -13 $ .
scrimmage -20 .
seam -13 .
season -15 . -14 $
seat 7 belt 10 $
seatbelt 19 .
seated -6 .
sec -10 $ 10 SINCE then 15 ONTO
second -12 and 7 $ 8 GROUND base 10 COME 14 NIGHTS night 17 SINCE after 21 set 22 PUT
seconds 9 . 10 ONTO 14 ON on
secretary -11 .
secs 7 .
see -10 PART 9 OUT out 10 . 20 MOTOR point
seeds -21 .
seized -10 .
send -9 .
sensation 8 in 11 $ 12 BE 17 ONTO 39 .
separated 10 .
serious -7 .
serve -23 . -11 is 16 $
served -25 .
serves -15 at -11 . -8 $
serving -16 .
session -8 . -7 # NUM
sessions -7 $ .
set 10 $
sets -10 . -6 $
settled -7 .
seven -9 $ 7 .
several 9 .
shade -14 $ -10 .
shakes 16 .
shaking -15 ON on 6 BY 9 $ 16 with
shaky -12 . -11 $
shape 6 $ 14 ACHE PART SHOULDER SOCKETED shoulder 28 .
shaped 12 . 18 CHANGED ODD
sharp -13 ACHE PAIN pain -7 .
she -10 .
shed -29 .
sheet -8 .
sheets 36 .
shelled -28 .
shes -7 . 7 OUT out
shift -19 $
shifted -13 to 6 OUT out 13 $ 17 .
shin -11 .
shiny 11 $ .
shirt -23 . -10 $ -6 ONTO 20 BE is
shivered 7 .
shivering 7 $ under 8 ONTO in 34 .
shivers 10 $ 12 .
shock -12 from -8 . ONTO
shocks 12 ONTO 14 .
shoes 17 $
shook -13 . -7 CHANGED ODD ONTO off
shooting 11 . 13 ONTO
shop -9 $ .
shopping -20 .
short -15 VEHICLE goal -13 $ -6 ONTO in 7 TRAINING 9 . 41 BREATH breath
shortstop 14 .
shot -28 ONTO -13 in -11 BE -8 from 11 $ 15 i 18 NOT
shots -15 . -7 ONTO
should -37 . -35 i -6 $
shoulder -29 feels -26 FEELING -22 PUSH -20 to -18 MOTOR NUM -17 POP -15 WENT when -14 pops working -13 day makes -12 TIGHT doesnt stiff -10 TIRED didnt tired -9 blades cracked works -7 SHOULDER clicks felt -6 PART blade pinched 6 LEAK and hasnt keeps popped slid subluxed 7 FALL OUT at fell went 8 while wont 9 SINCE after lurched 10 AGAIN KEEP SHAPE hurts into pain wouldnt 11 aches back hangs 12 DROPPING PUT dropped kept 13 PAIN SWELL gives 14 ACHE BREAK ON height in on slipped 16 tip 17 . WAKE that woke 18 CANT 19 MISSILE dislocated jumped 21 DISLOCATE did was 22 QUITS from looks 23 $ 24 first 25 BLOW 30 ONTO 33 LOOK 34 has 35 SLIP 36 HAVE 38 COME
shoulders -13 $ -12 . -6 BE 8 and 13 stiff
shouting -7 $ .
shove 12 . ACHE
shoveling -12 .
show -12 . -11 $
shower -12 and 13 $
shows -12 . -7 $
shrugging -16 .
sick -8 ONTO -7 . 15 BY with 17 $
side -14 ONTO 8 ELBOW HAND MISSILE elbow hand 9 NOT 10 ARM 11 HANDS 12 ACHE face 13 ELSEWHERE is mouth 16 BE 18 $ 19 PART 21 FACE 32 .
sidearm -10 .
sides -23 $ -11 .
sight 12 .
sign -8 $ .
signs -17 .
simply 11 .
since -26 i -17 $ -10 days -8 AGAIN weeks 6 friday that 7 saturday sunday thursday 8 competition second 9 tackle 10 wednesday 11 # BLOW flight 12 MANY NUM game weekend 13 this tuesday 14 fall hour long 15 breakfast match yesterday 16 FALL monday 17 last 37 TRAINING 52 .
single -10 $
sinks 7 .
sir -10 .
sister -26 . -12 BE -11 HAVE has
sit 6 ONTO 9 .
site 7 LOOK looks 8 . BE
sitting -9 # MANY NUM at 10 CHANGED 12 here 13 ODD 16 ON on 19 ONTO 25 $ 43 .
six -30 $ -9 . -8 hours -6 ONTO 12 weeks 23 kilos
size 15 grapefruit 16 MISSILE 21 $ 45 .
skateboard 11 $ 12 .
skies -7 $ .
skiing 17 $ .
skin -6 BE 12 ON on 15 ONTO 16 $ 22 .
skinned -12 .
skip -15 .
skipped -19 . -10 $
skipping 11 beats 22 .
skips 13 .
sky -9 $ .
slammed 10 on 14 into 25 ON 31 . 35 ONTO
sleep -12 BY with -7 ON on 7 $ 9 in 10 ACHE PART SHOULDER SOCKETED shoulder 11 NOT 15 for 16 from 17 . because
sleeping 17 ON ONTO on 34 .
sleepover -8 .
sleepy -18 $ -9 .
sleeve -12 ON ONTO on 11 BE is
sleeves -20 . -10 $
slept -31 ON on -18 . -16 NUM -15 ONTO -13 # -11 through -6 CHANGED ODD wrong 11 because in
slid -11 $ 11 CHANGED ODD ONTO off 13 back 14 ON on 20 . 30 OUT out
slide 10 . 12 OUT out
slider -9 . -7 BE
slides 11 OUT out
sliding 6 .
slight 10 temperature 13 SWELL swelling 16 tingle 19 NUMB 20 .
slightly 32 .
"""
