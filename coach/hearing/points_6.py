"""The points of words and of pairs of words, in tenths, no:over to slipped.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
no:over 7 HEIGHT head
no:pain -14 $ SINCE since -8 or -7 at 9 NOT 25 but
no:painful -6 $ .
no:past 13 .
no:pinch -10 $ -7 .
no:pinky 6 .
no:pins -7 .
no:pop -18 .
no:popped -6 .
no:position 7 ONTO in 17 that 35 .
no:power -11 at 7 ONTO in 9 to 15 $ 22 .
no:press 12 .
no:problem -14 $ -11 .
no:problems -10 . -6 $
no:properly 17 $ .
no:pull 7 DAILY 8 .
no:push 10 DAILY door myself
no:quite 10 .
no:quits 8 $ .
no:reach 9 top 21 .
no:recover 13 .
no:regular 17 .
no:report -10 . -8 $
no:resistance -8 .
no:rest 14 .
no:right 24 .
no:ring 6 . DIGIT HANDS PART finger
no:rotate 9 .
no:same -20 as
no:say -17 $ -16 . 11 words
no:scratch 12 . back
no:sensation 10 $ 14 .
no:serve 9 .
no:shampoo 8 $ .
no:shelf -6 $
no:shirt 6 ONTO 8 .
no:short -10 . BREATH breath
no:shortness -7 . BREATH breath
no:shoulder -13 $ -12 .
no:sick -13 .
no:side 17 $ .
no:signs -9 . INFECT infection
no:sitting 8 ONTO 12 .
no:sleep 11 . 13 $
no:slept -10 .
no:slip -17 . -10 $
no:slipped -6 .
no:slipping -6 $ .
no:snap 7 DIGIT HANDS PART fingers 8 .
no:so -20 .
no:sore 17 .
no:speak -16 $
no:special -9 .
no:squeeze 10 toothpaste 13 DAILY 16 .
no:stairs -23 .
no:start -8 $ -7 .
no:stay 8 .
no:stops 13 ACHE PAIN hurting 18 .
no:straight 36 .
no:strength 10 ONTO in 11 to 15 $ 30 .
no:strong 7 . 11 as
no:stuff -7 . -6 $
no:sudden 17 $ 18 .
no:sure -7 .
no:swelling -21 . -9 either -7 $
no:swollen -16 . -14 $
no:symptoms -9 .
no:take 14 . deep
no:thank -12 .
no:thanks -8 . -6 $
no:that -24 $ -9 BE was 14 hand 15 POSITION side 16 NOT 18 . ACHE ARM HAND HANDS SOCKETED arm 32 PART
no:the 19 .
no:there -8 . BE is
no:thing -12 $ -6 .
no:think -12 $ .
no:those -17 .
no:three 6 NOT no
no:throw 6 $ .
no:throwing -11 .
no:throws -10 . -7 $
no:thumb 12 .
no:time -16 . -11 $
no:tingle -9 . -8 SINCE anymore
no:tingling -12 $
no:tingly -6 .
no:to -16 speak -13 ACHE it -10 report -6 do 6 train 7 HOLD hold 8 THING throw 12 sleep 16 $ 17 MOTOR 22 . 28 live
no:today -29 . -14 $
no:tomorrow -17 $ .
no:toothpaste 10 .
no:top -7 .
no:touch 11 .
no:towel -20 $ .
no:train 6 .
no:training -10 .
no:trouble -20 . -9 $ -8 at
no:trying 31 $ 32 .
no:turn 13 .
no:two -7 .
no:unscrew 17 .
no:unstable -6 $ .
no:up -19 from 6 $ 14 THING 18 .
no:wait -10 .
no:wake -15 $ -6 . 9 HEIGHT up
no:walk 7 . 19 $
no:wanna 14 BE be 16 live 23 .
no:want 20 . 27 to
no:warm 6 $ .
no:was -26 .
no:wash 8 . DAILY hair
no:wasnt -8 ONTO in
no:water 7 .
no:weak -22 . -12 $
no:weakness -24 $ 6 . 18 NOT no
no:week 8 .
no:weird -16 . -8 $ -7 feelings
no:wet -9 .
no:whatsoever -9 $ .
no:with -19 $ -9 . 9 ACHE it 26 that
no:without -14 problem -13 pain -11 ACHE -9 PAIN -6 CANT 7 TIGHT 12 BE 13 meaning 14 HAVE noticing 19 trying 21 . 22 diet
no:wont -13 be 6 PUT go 7 WENT 8 stay 9 rotate 11 MOVE REACH 12 come 13 MOTOR 14 WAKE wake 15 COME
no:words 15 OUT out 16 $ and 36 .
no:works 16 .
no:worth 9 . 17 living
no:wouldnt -15 TRAINING start 8 come 10 COME
no:wrist 10 .
no:zero -18 ACHE PAIN pain -10 ONTO in
no:zip 6 .
no:zone -12 $ .
nobody -28 .
noise -10 $
none -24 . -21 $ -14 SINCE since 12 ACHE it
nonstop 6 SINCE since 16 $ 24 .
noodle -16 .
noodles -13 .
nope -24 . -9 $
normal -53 . -29 $ -18 NOT -13 ONTO PAIN -11 no to -7 pain sore
normally 11 .
nose -29 . -13 BE is -10 $
not -50 $ -22 SINCE because since -16 ACHE -15 PART SOCKETED -8 .
note -21 .
nothing -22 else -9 $ 7 but 8 day helps 9 i 17 STOP eases 23 touches 31 .
noticed -7 weight
novocaine 7 $ 9 BE FEELING feeling 15 .
nowhere 12 .
nuh -7 uh
numb -22 to -20 from -11 once -10 # NUM -9 i -8 should -6 BY with 7 FEELING POSITION as for 8 HANDS 9 PART 10 DIGIT 11 ON on 12 SINCE 13 $ 14 AGAIN every patch 15 and 17 . 18 since thumb 19 BE 23 between
number 14 # . NUM
numbers -7 BE were
numbing -13 .
numbness -20 BE 6 $ 7 .
odd 6 $ 10 .
of 6 .
off -20 $ table -17 THING -16 at -14 CHEST MISSILE chest -12 mound -11 . end -10 ONTO in -8 day -6 FACE face shin 7 collarbone 8 it 9 horse 10 roof trampoline 12 bleachers ladder 14 ACHE 15 GROUND bicycle shoulder 17 SOCKETED 18 without 21 PART stage 23 NOT 30 SHOULDER 34 VEHICLE
ok -27 . -16 $ -11 to
okay -25 $ -24 .
old -36 . -10 $ friend
omg 12 . 15 $
on -29 DIGIT -24 HANDS tuesday -21 LEG WORN row shoulders -20 fingers hill -19 purpose -18 her -17 tv -16 ELSEWHERE line -15 THING cleats deck finger -14 down shelf -13 HEIGHT leg wrist -12 diet team -11 road -10 BREAKS_LIKE hands squats -9 DULLED SEAT field glove -8 ball neck phone track -7 DROPPING bar drop good i sofa train -6 LAND OPPONENT change desk landing legs palm plane 6 POSITION first inner 7 RIBS arm bus curveball saturday side 8 MISSILE breast outer thunderclap 9 ARM fastball grass pick to 10 VEHICLE account end pitch point top 11 SHOULDER SLIP either overhead skateboard slide slider vibrate 12 PUT its mound scooter throw 13 dugout ground header last leash 14 TRAINING in outside outstretched 15 ACHE shoulder 16 PILL longboard 17 COME that 18 collarbone cutter strike 19 dive 20 rep 21 GROUND 22 MOTOR 23 hand 26 chest ice 29 CHEST bench
once 16 ON on 18 from 22 $ 24 ONTO 32 .
one 12 .
ones -15 $ -9 .
only -18 NUM -17 # -13 $ MANY for -10 BE because -7 ON at on 6 ONTO 7 HAVE gets 9 WENT 12 LIFT MOTOR lift
onto 6 POSITION side 8 SHOULDER shoulder 12 ACHE PART SOCKETED 30 .
oozing 12 $ 13 .
op 8 .
open 6 and 10 THING 17 water 20 . 21 DAILY
opened 8 $ 16 and 17 HEIGHT up 35 .
opener -7 .
opening -15 .
opens 11 HEIGHT up 23 .
operation -20 $ -14 ACHE -11 . 8 BE is
or -18 anything -14 $ -13 .
order -12 $ .
other 21 .
otherwise -6 NOT nothing
ouch -11 $ .
our -29 OPPONENT -27 . -12 catcher
out -33 to -24 BY with -21 DULLED time -19 rhythm -16 TRAINING shape -15 NOT -14 there -13 flyers -12 order -11 AGAIN COLD cold -10 early twice -9 form -8 BULGE -7 BE THING -6 gas 6 CHEST chest 7 DIGIT fingers 8 slurred 9 as hand 10 i 11 # bath scar 12 back jumbled nowhere 13 ACHE HAND NUM ON PART and on running 14 . its 15 ELSEWHERE PUT eye 16 BREATH after breath 17 REACH SLUR reaching then while 18 HANDS SEAT WOUND during for mid 23 POP in popped 24 COME 26 front 27 ONTO 28 SINCE 31 when 32 place
outer 15 DIGIT HANDS fingers 18 PART 21 .
outfield 18 . VEHICLE wall
outside -7 . 8 $ 12 SHOULDER shoulder 14 ARM SOCKETED 15 ACHE 22 PART
outstretched 11 HAND HANDS hand 14 . PART
over -45 $ -16 VEHICLE -13 words -7 it 8 first 10 SOCKETED shoulder 11 SHOULDER 14 PART 15 edge 17 dog place 18 SEAT 19 NIGHTS night 20 at 21 ON ONTO on 22 . 27 handlebars
own 7 ACHE PART SOCKETED 32 .
pace -10 .
pacing 19 .
packed -14 .
pad -16 .
pads -18 .
pain -19 MANY -15 NUM at -12 has -9 # -6 was 6 inside 7 BE CANT HAVE ONTO 8 every 9 PILL meds wakes 11 never shooting 12 ON on 13 night when 15 NIGHTS 16 doesnt i woke 18 KEEP kept 19 AGAIN had 24 WAKE 27 NOT 32 .
painful -19 . -17 $
paining -13 after -11 SINCE 8 $ 10 ONTO
painkillers 8 to 40 .
painless -18 .
pains 17 $ 24 # NUM 26 .
paint -8 $ -6 .
pale 6 $ 20 .
palm -6 . 10 $ 11 HAVE feels has 20 is 33 BE
palms -14 .
palpitations 26 .
pan 7 $ 14 .
pants -10 ONTO
paper -15 cut 6 $
paracetamol 26 .
parked 15 .
parking -14 .
partial 23 . DISLOCATE dislocation
partially 22 . COME
partner -13 .
partway 13 . OUT out
party -28 . -27 $
pass -24 . -11 OUT out
passed 16 . 24 OUT out
passes -24 .
past 6 ELSEWHERE RIBS ear 9 .
patch 12 ON ONTO on
patient -17 .
pavement 13 . 18 ON ONTO on
peaked -6 . at
pecs -11 .
pee -7 $
peed 21 myself
pen -13 NOT -10 no -9 # NUM -7 . 6 and
penalty -10 $ .
pencil 10 $ .
perfect -23 . -22 $
perfectly -12 .
perhaps 18 $ 37 .
period -16 .
personal -6 . best
phone -16 $ -9 rang -6 ONTO in 7 AGAIN 16 twice
photo -9 .
photos -10 $ .
physio -22 .
physiotherapist -21 .
pick 9 CHANGED ODD ONTO off
picked -16 .
picture -17 .
pile 14 $ .
pill -16 . -11 and
pills -15 $ -10 .
pin 10 .
pinch -30 . -7 at -6 ONTO in
pinched -24 . -14 $ -9 ONTO
pinches -31 . -24 before
pinching -29 . -22 ONTO -15 in -12 ON on
pinky 8 numb 11 NUMB 13 is 17 BE 22 . 34 $
pins 9 ONTO in 11 $ 35 and 39 .
pitch -12 and -6 BE 8 # NUM 11 ON on 12 ONTO 18 $
pitched -17 .
pitcher -22 BE -19 .
pitches -23 $ -13 . 6 ONTO in 11 SINCE then
pitching 24 .
pizza -14 . -11 PART
pjs 10 .
place 13 .
plan -13 $
plane -11 .
plank -15 $ -10 .
planks -15 . -11 $
planted 17 .
plaster -16 .
plate 14 $
play -18 ONTO -7 $ 11 .
played -36 .
player 10 BLOW 17 .
playing -14 $ 18 .
playlist -18 $ .
pleasantly -14 .
please -17 . -13 $
plenty 16 $ .
plunked -16 .
plus 9 PART 13 .
plyo -7 .
pm -11 . -8 # MANY NUM
pocket -22 $ .
point -14 $ 10 ONTO in 12 PART SHOULDER SOCKETED shoulder 13 ACHE 28 .
pointer 18 DIGIT HANDS PART finger 20 .
poison -7 .
poke 6 .
poker -14 .
poking 8 OUT out 23 HEIGHT up 33 .
pole 11 .
poles -10 $ .
polo -8 TRAINING
ponytail -8 .
pool -10 $ -7 . 9 and
poor -9 . -7 $
pop -21 OUT out -17 HEIGHT up -14 fly -12 time -9 quiz -6 BE 6 PART 7 inside 8 and 10 SINCE then 11 ONTO 12 $ it 18 ACHE 19 ON on 22 PAIN 24 . 25 no 28 NOT but
popcorn -6 . and
popeye 6 $ 8 .
popp 12 .
popped -17 THING advil -14 wheelie -13 PILL -11 balloon -7 collar in -6 HEIGHT up 6 SHOULDER SOCKETED shoulder 7 AGAIN ARM ELBOW MISSILE PART elbow 8 knuckle 9 but champagne 11 OUT out 12 when 13 ACHE NUM 15 hard 17 loud 22 CANT MANY ON on 26 NOT once
popping -9 . 17 PILL
pops -25 . -11 when -6 AGAIN 6 OUT out
portal 23 .
position -9 ONTO -6 ON on 6 . 14 $
possibly -18 $ 14 . 16 SWELL
post -23 . -9 $
pothole 9 .
pounding 9 OUT out
pounds -13 ONTO 12 and 15 NOT 23 .
poured 20 .
power -25 cut -16 $ -12 COME PUT WENT went -9 . BE 16 ONTO in 29 i
pr -23 . -12 ON ONTO on -7 $
practice -8 ONTO 6 $ ACHE 7 but 9 BE was
practiced -7 .
prawns -9 .
pre -7 . TRAINING workout
press -7 BE 9 $
pressed -17 . -14 ON ONTO on
presses 7 . ONTO
pressing 8 . 15 $
pressure 13 ON on 19 in 23 ONTO
pretty 14 .
prickle 17 .
prickles 6 ONTO 12 .
prickling 9 $ 11 .
prickly 8 .
pride -15 . -9 $
probably -10 . 11 NOT nothing
problem -21 $ -18 BY with -6 .
programme -11 $ .
promise -16 . -15 $
properly -17 $ -15 .
protector -15 .
pt -12 .
puffed 15 . 22 HEIGHT up
puffiness 18 .
puffing -12 .
puffy 8 and 13 . 19 $
puked -15 ONTO
puking 16 $ 22 .
pull -12 .
pulled -40 . -17 ONTO -10 ON on -9 HEIGHT up -6 muscle
pulse 12 .
pump -17 . -9 ONTO from
pumped -10 .
punched -13 .
purple 6 HUE 8 and 29 $
purpose -19 . -17 $
pus 7 comes 8 BE 10 COME 20 $ 29 .
push 8 $ 9 ACHE HEIGHT it up
pushed 8 ACHE it 21 down 23 ONTO 28 .
pushup 9 .
pushups -10 . -7 $
put -7 DAILY 6 SHOULDER shoulder 9 . SOCKETED 10 it 13 PART 16 ACHE
putt -6 $ .
putting 11 .
putts -7 $ .
quarter -14 $ .
question -12 . -10 NOT no
quick -22 $ .
quickly 8 .
quiet -32 . -12 $
quite -6 .
quits 16 .
quiz -16 . -13 $
r -16 PAIN 8 NUMB 13 COLOUR
race -26 $ -10 .
racing -14 before -12 . 16 $
rack 6 . 7 $
racket -8 TIGHTER 9 COME
radio -14 .
rail -15 .
rain -47 . -33 $ -7 BE
rained -14 . -13 OUT out
raining -17 $ .
rains -6 .
raise 6 . 10 it 13 SOCKETED arm 16 ARM 20 ACHE 21 HAND HANDS hand 32 PART
ran -15 OUT out 17 into 18 ONTO
rang -10 . -9 $
range -8 $ 11 SINCE since 15 .
rankings -10 $ .
rate -18 .
rather 20 . BE be
raw -16 . ONTO from
reach -6 $ 12 . 14 up 17 HEIGHT
reached 7 for
reaching 6 HEIGHT 15 . 21 for
read -22 .
reading 13 $
ready -27 . -18 $ -16 to
really 29 .
rear 25 . ended
reason 16 to 17 $ 27 .
rebound 8 . and
reckon -16 .
recliner 11 because 17 .
recovered -6 $ .
red -12 for -10 $ -6 DAILY MISSILE fastball 6 HOT 22 streaks 28 and
reduced 15 ACHE it 29 .
ref -15 . -9 $
referee -9 .
regret -11 .
regular -15 .
rehab -15 .
release 21 $ .
released 6 . THING javelin
relief 10 . 17 ONTO in
remember -15 $ .
rep 9 $ 11 # NUM 16 . 22 MANY
reps -19 $ .
resin -16 .
rest 11 $ 19 . NOT
rested -19 . -15 ACHE -12 ARM PART SOCKETED arm -9 $
resting 7 . 12 $
result -6 .
results -16 .
rhythm -23 . -19 $
ribs 7 and 8 $ AGAIN MANY every 24 .
ride -7 $ -6 . 15 ONTO over
ring -15 $ -12 is -8 BE 11 CANT NOT wont 15 DIGIT HANDS PART finger
ripped -14 . 6 jeans 10 in
ripping 11 ONTO in 27 .
rising -15 .
river -9 .
rly 8 WEAK weak
rock -9 . -7 $
rocked -9 .
roll -11 $
rolled -6 ONTO over 8 HEIGHT up 9 OUT out 18 atv 29 VEHICLE
roof -22 BE is -20 .
room 7 $ 13 BE
roomie -9 . BE HAVE has
roommate -19 . -18 passed -13 BE -8 HAVE -6 has
rope -10 .
rose -16 .
rotation 15 BE is 23 .
rough -11 . -8 $
round -13 $ 9 PART 11 ACHE 14 CHEST chest 16 ONTO 35 .
rowing -8 .
rubber 6 BREAKS_LIKE band
rubs -7 .
rug -17 .
rule -18 .
run -23 HEIGHT up -21 . 9 down 18 over 25 ONTO
rung -12 .
running -21 $ -10 poles 6 bases 9 ONTO 18 FEVER fever temp 23 .
runs 7 ONTO 20 .
runway -10 BE was -6 .
rushed -15 .
sacked -12 .
saddle 19 .
said -19 $ -12 COME -7 . ACHE ARM PART SOCKETED arm 6 POP
same -14 $ -11 .
sand 6 .
sat -19 ON on 7 $ down 11 in
saturday 11 $
sauce -10 .
save -23 .
saw -38 . -10 bill -6 LEAK RED red
say -16 $ -12 .
says -13 ACHE PART -11 ARM -10 SOCKETED -8 arm i 6 . 7 # ELSEWHERE NUM
scar 8 is 11 $ . 12 LEAK
scared -25 . -13 its -12 to
scary -20 .
schedule -25 . -14 $ -11 this
school -30 . -13 BE -8 $
scooter 24 . 26 $
scored -22 $ .
scratch -10 .
screaming 12 .
screen -14 $ .
scrimmage -15 .
scrum 6 $ .
seam -16 .
season -14 . -12 $
seat 7 belt 11 $
seatbelt 21 .
seated -7 .
sec -11 $ 10 SINCE then 17 ONTO
second -14 and 7 GROUND base 10 COME 15 NIGHTS night 17 SINCE after 23 set 25 PUT
seconds 12 ONTO 15 . 17 ON on
secretary -11 .
secs 8 .
see -9 PART 13 . OUT out 18 MOTOR point
seeds -22 .
seized -9 .
send -9 .
sensation 7 in 12 $ 13 BE 16 ONTO 36 .
separated 10 .
serious -7 .
serve -22 . -13 is 11 $
served -24 .
serves -16 at -11 . -8 $
serving -16 .
session -14 . -7 # NUM
sessions -7 $ .
set 15 $
sets -10 . -6 $
setter 7 .
settled -8 .
seven -7 $ 7 .
shade -12 $ -10 .
shake -6 .
shakes 17 .
shaking -17 ONTO 10 $ 15 with
shaky -12 $ -6 .
shape -6 $ 11 ACHE PART SHOULDER SOCKETED shoulder 22 .
shaped 7 . 19 CHANGED ODD
sharp -12 ACHE PAIN pain -10 .
she -10 .
shed -29 .
sheet -9 .
sheets 31 .
shelf 6 .
shelled -25 .
shes -7 . 7 OUT out
shift -21 $
shifted -12 to 6 OUT out 13 $ 16 .
shin -11 .
shiny 7 $ .
shirt -26 . -11 $ -6 ONTO 12 BE is
shivered 8 .
shivering 7 under 8 $ 10 ONTO in 32 .
shivers 9 $ 11 .
shock -12 from -8 . -7 ONTO
shoes 21 $
shook -14 . -7 CHANGED ODD ONTO off
shooting 14 . 15 ONTO
shop -8 $ .
shopping -22 .
short -15 VEHICLE goal -13 $ 6 TRAINING 10 . 42 BREATH breath
shortstop 14 .
shot -29 ONTO -14 in -12 BE -8 from 12 $ 15 i 18 NOT
shots -15 . -8 ONTO
should -32 . i 6 be
shoulder -30 feels -24 FEELING -22 PUSH -19 POP -16 MOTOR to -15 when -13 WENT day doesnt makes pops stiff working -12 TIGHT -10 TIRED blades tired -9 didnt works -8 cracked gave -7 NUM -6 PART SHOULDER blade clicks felt pinched 6 CATCH goes height last slid slips 7 FALL LEAK NOT ODD at fell hasnt keeps popped subluxed went while 8 OUT PUT isnt 9 SINCE aches after and lurched wont 10 wouldnt 11 AGAIN KEEP SHAPE back hangs hurts into pain 12 MISSILE kept tip 13 BREAK PAIN gives 14 . SWELL slipped 15 ACHE in 16 QUITS 17 CANT ON on woke 19 WAKE did dislocated that 21 jumped 22 $ BLOW DISLOCATE first from looks 24 was 30 ONTO 33 has 34 LOOK 35 HAVE SLIP 39 COME
shoulders -15 BE -14 $ . 10 and 19 stiff
shove 13 . ACHE
shoved 6 ACHE it
shoveling -11 .
show -13 . -12 $
shower -13 and 15 $
shows -10 . -7 $
shrugging -14 .
shut 10 .
sick -11 . -8 ONTO 8 BY with 13 $
side -13 ONTO 6 CANT 8 ELBOW HAND HANDS MISSILE elbow hand 9 NOT 11 ARM 12 ACHE 13 BE face is 14 ELSEWHERE mouth 18 PART 20 $ 24 FACE 36 .
sidearm -8 .
sides -23 $ -9 .
sign -9 $ .
signs -14 .
simply 12 .
since -22 i -19 $ -9 days -7 weeks -6 AGAIN 6 friday that we 8 competition thursday 9 second tackle 10 COME fall wednesday 11 # BLOW game 12 FALL MANY NUM 13 breakfast this weekend yesterday 15 tuesday 16 long 17 match 18 monday 19 last 36 TRAINING 56 .
single -10 $
sinks 7 .
sir -10 .
sister -25 . -12 BE -11 HAVE has
sit 9 . ONTO
site 7 LOOK looks 9 . BE
sitting -8 # MANY NUM at 11 CHANGED 14 ODD here 16 ON on 19 $ ONTO 38 .
six -31 $ -9 hours -6 and 14 weeks
size 10 $ 16 grapefruit 18 MISSILE 42 .
skateboard 11 $ 12 .
skies -6 $ .
skiing 18 $ .
skin -6 BE 6 ON on 8 ONTO 19 $ 25 .
skinned -11 .
skip -9 .
skipped -16 . -7 $
skipping 8 beats 23 .
sky -9 $ .
slammed 6 BY 9 on 15 into 23 ON 27 . 33 ONTO
sleep -12 BY with -10 ON on 10 ACHE PART SHOULDER SOCKETED in shoulder 12 . 13 NOT because 14 $ 18 from
sleeping 6 $ 16 ON ONTO on 34 .
sleepy -12 $
sleeve -12 ON ONTO on 10 BE is
sleeves -18 . -8 $
slept -33 ON on -17 . -15 ONTO -13 # NUM -8 through 11 because 14 in
slid -11 $ 9 back 10 CHANGED ODD off 11 ONTO 13 ON on 23 . 29 OUT out
slide 7 . 12 OUT out
slider -7 . -6 BE
slides 9 OUT out
slight 10 temperature 13 SWELL swelling 15 tingle 19 NUMB 24 .
slightly 46 .
sling -6 .
slip -12 . -11 and -10 ONTO -9 OUT out 21 $
slipped -15 mind -13 but -12 HEIGHT ONTO -11 ON on -10 past -9 disc into 8 OUT out 11 in 17 OPPONENT forward 19 $ and
"""
