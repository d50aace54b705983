"""The points of words and of pairs of words, in tenths, no:one to slipped.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
no:one -16 .
no:open 11 .
no:or -25 . -10 THING anything -7 CATCH
no:out -11 SINCE -7 $ -6 . 6 HANDS PART
no:over 7 HEIGHT head
no:pain -14 $ SINCE since -7 or -6 at 6 no 9 NOT 27 but
no:painful -6 $ .
no:past 6 # ELSEWHERE NUM 14 .
no:pills 6 $ .
no:pinch -11 $ -9 .
no:pinky 6 .
no:pins -7 .
no:pop -18 .
no:popped -6 .
no:position 6 $ ONTO in 17 that 36 .
no:power -10 at 7 ONTO in 8 to 15 $ 21 .
no:press 12 .
no:problem -15 $ -12 .
no:problems -10 . -6 $
no:properly 17 $ .
no:pull 6 DAILY 8 .
no:push 9 myself 10 DAILY door
no:quite 12 .
no:quits 8 $ .
no:reach 8 top 20 .
no:ready -17 $ .
no:recover 13 .
no:regular 19 .
no:report -9 . -7 $
no:resistance -9 .
no:rest 13 .
no:right 27 .
no:ring 6 . DIGIT HANDS PART finger
no:rotate 9 .
no:same -20 as
no:say -19 $ -16 . 13 words
no:scratch 12 . back
no:sensation 10 $ 13 .
no:serve 9 .
no:shampoo 8 $ .
no:shirt 6 ONTO 9 .
no:short -10 . BREATH breath
no:shortness -7 . BREATH breath
no:shoulder -15 . -11 $
no:sick -13 .
no:side 17 $ .
no:signs -8 . INFECT infection
no:sitting 6 ONTO 11 .
no:sleep 12 . 13 $
no:slept -10 .
no:slip -16 . -10 $
no:slipping -6 $ .
no:snap 7 . DIGIT HANDS PART fingers
no:so -22 .
no:sore 17 .
no:sorry -6 .
no:speak -14 $
no:special -8 .
no:squeeze 10 toothpaste 13 DAILY 16 .
no:stairs -23 .
no:start -8 . -7 $
no:stay 8 .
no:stops 13 ACHE PAIN hurting 20 .
no:straight 35 .
no:strength 9 ONTO in 14 to 15 $ 30 .
no:strong 8 . 12 as
no:stuff -7 . -6 $
no:sudden 18 $ 19 .
no:sure -6 .
no:swelling -22 . -9 either -8 $
no:swollen -15 . -14 $
no:symptoms -8 .
no:take 15 . deep
no:thank -12 .
no:thanks -8 . -7 $
no:that -24 $ -9 BE was 15 . hand 16 NOT POSITION side 17 ACHE ARM SOCKETED arm 19 HAND HANDS 31 PART
no:the 18 .
no:there -9 . BE -8 is
no:thing -12 $ -8 .
no:think -12 $ .
no:those -17 .
no:three 6 NOT no
no:throw 6 $ .
no:throwing -12 .
no:throws -10 . -7 $
no:thumb 13 .
no:time -16 . -11 $
no:tingle -8 . SINCE anymore
no:tingling -13 $
no:tingly -6 .
no:to -14 speak -13 ACHE it -9 report 6 train 7 HOLD hold 8 THING throw 12 sleep 14 MOTOR 18 . 19 $ 32 live
no:today -29 . -14 $
no:tomorrow -19 $ .
no:toothpaste 10 .
no:top -7 .
no:touch 10 .
no:towel -18 $ .
no:train 6 .
no:training -10 .
no:trouble -22 . -9 $ -8 at
no:trying 6 to 28 $ 30 .
no:turn 13 .
no:two -8 .
no:unscrew 17 .
no:unstable -6 $ .
no:up -20 from 14 THING 19 .
no:wait -9 .
no:wake -17 $ -7 . 9 HEIGHT up
no:walk 7 . 20 $
no:wanna 13 BE be 17 live 25 .
no:want 21 . 29 to
no:warm 6 $ .
no:was -20 .
no:wash 8 . DAILY hair
no:wasnt -9 ONTO in
no:water 9 .
no:weak -23 . -12 $
no:weakness -23 $ 18 NOT no
no:week 6 .
no:weird -17 . -8 $ feelings
no:wet -10 .
no:whatsoever -9 $ .
no:why -6 . NOT not
no:with -22 $ -10 . 10 ACHE 11 it 25 that
no:without -15 problem -14 pain -13 ACHE -10 PAIN -6 CANT 7 TIGHT 12 BE 14 HAVE meaning noticing 19 . trying 22 diet
no:wont -12 be 7 PUT WENT go 8 stay 9 rotate 10 REACH 11 MOTOR come 12 MOVE 14 WAKE wake 15 COME
no:words 14 OUT out 16 $ and 35 .
no:works 15 .
no:worth 8 . 17 living
no:wouldnt -16 TRAINING start 8 come 10 COME
no:wrist 10 .
no:zero -18 ACHE PAIN pain -10 ONTO in
no:zip 6 .
no:zone -12 $ .
nobody -26 .
noise -9 $
none -24 . -23 $ -13 SINCE since 12 ACHE it
nonstop 6 SINCE since 17 $ 25 .
noodle -17 .
noodles -15 .
nope -22 . -8 $
normal -52 . -31 $ -18 NOT -16 ONTO -14 PAIN -12 no -10 to -9 sore -6 pain
normally 10 .
nose -28 . -13 BE is -9 $
not -45 $ -22 SINCE since -21 because -15 ACHE -13 PART SOCKETED -11 .
note -21 .
nothing -20 else -6 $ 8 helps 10 but day 12 i 18 STOP eases 24 touches 26 .
noticed -8 weight
novocaine 7 $ 9 BE FEELING feeling 15 .
now -11 .
nowhere 12 .
nuh -7 uh
numb -22 to -18 from -11 once -10 # NUM -8 i should -7 BY ONTO with 7 as for 8 FEELING POSITION 10 HANDS 11 DIGIT ON PART SINCE on 13 patch 14 $ 15 AGAIN every 16 and thumb 17 since 19 . BE 23 between
number 13 # . NUM
numbers -8 BE -7 were
numbing -13 .
numbness -19 BE 6 $ 8 .
odd 7 $ 11 .
of 7 .
off -24 $ -20 table -17 THING -16 at -14 CHEST MISSILE chest -12 mound -11 ONTO end in -9 . -8 day -6 FACE face shin 7 collarbone 8 it 9 horse 10 roof 11 ACHE trampoline 12 bleachers 13 ladder 14 GROUND SOCKETED 16 bicycle shoulder 18 PART without 20 stage 23 NOT 32 SHOULDER 33 VEHICLE
ok -31 . -15 $ -10 to
okay -26 $ .
old -34 . -10 friend -9 $ -6 WOUND
omg 17 $ .
on -30 DIGIT -24 tuesday -23 HANDS -22 LEG -21 WORN fingers shoulders -20 hill row -19 down purpose -18 tv -17 her line -16 deck finger -15 ELSEWHERE THING -14 HEIGHT cleats shelf -13 leg -12 diet team wrist -11 road -10 BREAKS_LIKE SEAT squats -9 DULLED glove hands -8 ball field phone track -7 DROPPING bar drop good legs neck plane train -6 LAND desk goal i landing sofa 6 LEAK MISSILE POSITION curveball first inner side wet 7 RIBS SOCKETED arm bus outer saturday 8 grass thunderclap 9 ARM breast to 10 SLIP account end fastball pick point slide top 11 either overhead pitch scooter skateboard slider throw vibrate 12 PUT SHOULDER its mound 13 VEHICLE dugout ground leash 14 TRAINING header in 15 ACHE outside outstretched 16 last shoulder 17 COME PILL 18 cutter longboard strike 19 collarbone dive that 20 rep 21 GROUND hand 25 MOTOR 26 bench chest ice 31 CHEST
once 17 ON on 19 $ from 26 ONTO 30 .
one 13 .
ones -21 $ -12 .
only -17 NUM -16 # -14 for -12 MANY -11 $ because -9 BE -7 . -6 at 6 in 7 HAVE gets 8 WENT 12 LIFT MOTOR lift
onto 6 POSITION side 9 SHOULDER shoulder 12 ACHE PART SOCKETED 29 .
oozing 12 $ 14 .
op 8 .
open 6 and 10 THING 16 water 21 DAILY 22 .
opened 8 $ 17 HEIGHT and up 31 .
opener -8 .
opening -14 .
opens 11 HEIGHT up 23 .
operation -21 $ -13 . ACHE 9 BE is
or -17 anything -15 $ -14 . 6 i
order -12 $ .
other 21 .
ouch -11 $ .
our -29 . -28 OPPONENT -12 catcher
out -33 to -26 BY with -21 DULLED time -20 rhythm -17 TRAINING there -16 shape -13 flyers -12 AGAIN NOT order -11 twice -10 COLD cold early -9 THING form -7 BE BULGE gas -6 DAILY 6 SOCKETED it socket swinging 7 CHEST DIGIT chest fingers 8 slurred 9 PART i 10 # as hand scar 11 NUM and bath 12 HAND ON nowhere on 14 . ACHE ELSEWHERE after eye its jumbled running 15 back while 16 HANDS PUT for 17 BREATH REACH breath during mid reaching 18 WOUND then 20 SLUR 21 COME in 22 SEAT 24 popped 26 SINCE front 27 POP 29 ONTO 30 when 32 place
outer 15 DIGIT HANDS fingers 18 PART 20 .
outfield 18 . VEHICLE wall
outside -6 . 8 $ 13 ARM SHOULDER shoulder 14 SOCKETED 16 ACHE 23 PART
outstretched 12 HAND HANDS hand 15 . PART
over -47 $ -16 VEHICLE -13 words -7 it 7 first 9 SOCKETED 10 shoulder 12 SHOULDER 13 PART 15 edge 17 dog place 18 NIGHTS ONTO SEAT night 21 at 23 . ON on 28 handlebars
own 8 ACHE PART SOCKETED 31 .
pace -10 .
pacing 19 .
packed -14 .
pad -14 .
pads -16 .
pain -19 MANY -12 has -11 NUM at -7 was -6 # 6 HAVE ONTO inside 8 BE CANT every 9 PILL meds wakes 10 shooting 11 never 12 when 13 ON night on 14 NIGHTS 15 i woke 17 doesnt 18 AGAIN KEEP kept 19 had 24 WAKE 30 NOT 31 .
painful -19 . -17 $
paining -15 after -12 SINCE 8 $ 9 ONTO
painkillers 8 to 41 .
painless -17 . -8 $
pains 17 $ 21 # NUM 29 .
paint -9 $
pale 7 $ 20 .
palm 11 HAVE feels has 12 $ 19 is 35 BE
palms -14 .
palpitations 28 .
pan 6 $ 15 .
pants -11 ONTO
paper -14 cut 7 $
paracetamol 29 .
parked 14 .
parking -14 .
partial 24 . DISLOCATE dislocation
partially 21 . COME
partner -13 .
partway 13 . OUT out
party -28 . -26 $
pass -21 . -11 OUT out
passed 14 . 26 OUT out
passes -23 .
past 6 ELSEWHERE RIBS ear 11 .
patch 7 . 11 ON ONTO on
patient -16 .
pavement 13 . 18 ON ONTO on
peaked -6 . at
pecs -10 .
pee -7 $
peed 6 . 19 myself
pen -14 NOT -10 no -9 # NUM -6 . 6 and
penalty -11 $ .
pencil 10 $ .
percent 12 .
perfect -25 . -23 $
perfectly -13 .
perhaps 19 $ 38 .
period -17 .
phone -14 $ -9 rang -7 in -6 ONTO 7 AGAIN 17 twice
photo -8 .
photos -9 $ .
physio -23 .
physiotherapist -22 .
pick 10 CHANGED ODD ONTO off
picked -15 .
picture -17 .
pile 13 $ .
pill -17 . -12 and
pills -13 $ -11 .
pin 11 .
pinch -32 . -6 at
pinched -27 . -14 $ -8 ONTO when
pinches -31 . -24 before
pinching -28 . -21 ONTO -16 in -10 ON on
pinky 8 numb 10 NUMB 12 is 15 BE 23 . 35 $
pins 7 ONTO in 11 $ 37 and 40 .
pitch -11 and -6 BE 8 # NUM 10 ON on 11 ONTO 17 $
pitched -16 .
pitcher -22 BE -19 .
pitches -26 $ -12 . 10 SINCE then
pitching 28 .
pizza -15 . -9 PART
pjs 10 .
place 12 .
plan -12 $
plane -13 .
plank -14 $ -10 .
planks -15 . -12 $
planned -6 $ .
planted 17 .
plaster -16 .
plate 12 $
play -20 ONTO -11 $ 10 .
played -37 .
player 11 BLOW 16 .
playing -12 $ 22 .
playlist -17 $ .
pleasantly -15 .
please -16 . -14 $
plenty 16 $ .
plunked -16 .
plus 9 PART 12 .
plyo -6 .
pm -13 . -8 # MANY NUM
pocket -21 $ .
point -11 $ 10 ONTO in 12 PART SHOULDER SOCKETED shoulder 14 ACHE 25 .
pointer 18 DIGIT HANDS PART finger 20 .
poison -7 .
poke 7 .
poker -12 .
poking 8 OUT out 21 HEIGHT up 32 .
pole 12 .
poles -10 $ .
polo -8 TRAINING
ponytail -7 .
pool -11 $ -9 . 9 and
poor -8 . -7 $
pop -20 OUT out -15 HEIGHT fly up -12 time -9 quiz 6 PART 8 inside 9 SINCE then 10 and 11 ONTO 12 it 13 $ 17 ACHE 19 ON on 21 PAIN 24 . 25 no 29 NOT but
popeye 7 $ 8 .
popp 12 .
popped -19 advil -17 THING -15 wheelie -14 PILL -11 balloon -10 in -7 HEIGHT collar up 6 PART 7 . ARM ELBOW MISSILE elbow 8 AGAIN but knuckle 9 champagne 11 OUT out when 12 ACHE 13 hard 14 NUM 18 loud 21 ON on 22 CANT MANY 26 NOT once
popping -13 . 18 PILL
pops -22 . -11 when -7 AGAIN
portal 21 .
position -8 ONTO -6 ON on 7 . 14 $
possibly -13 $ 12 . 17 SWELL
post -24 . -9 $
pothole 10 .
pounding 8 OUT out
pounds -14 ONTO 13 and 16 NOT 25 .
poured 20 .
power -25 cut -18 $ -12 COME PUT WENT went -11 . -9 BE 18 ONTO in 29 i
pr -22 . -11 ON ONTO on -7 $
practice -9 ONTO 6 $ ACHE 7 but 8 BE was
practiced -9 .
prawns -9 .
pre -7 . TRAINING workout
press -7 BE 9 $
pressed -16 . -15 ON ONTO on
presses 7 . ONTO
pressing 10 . 16 $
pressure 6 . 13 ON on 18 in 24 ONTO
pretty 10 .
prickle 17 .
prickles 6 ONTO 12 .
prickling 9 $ 11 .
prickly 9 .
pride -19 . -10 $
probably -11 . 11 NOT nothing
problem -20 $ -18 BY with
programme -11 $ .
promise -18 $ .
properly -17 $ -15 .
protector -16 .
pt -12 .
puffed 16 . 22 HEIGHT up
puffiness 19 .
puffing -14 .
puffy 8 and 16 . 18 $
puked -14 ONTO
puking 15 $ 20 .
pull -12 .
pulled -38 . -18 ONTO -10 ON on -8 HEIGHT up -6 muscle nighter
pulse 11 .
pump -17 . -8 ONTO from
pumped -11 .
punched -11 .
purple 6 HUE 7 and 29 $
purpose -19 . -17 $
pus 7 comes 9 BE 11 COME 19 $ 28 .
push 7 $ 9 ACHE HEIGHT it up
pushed 7 ACHE it 21 down 23 ONTO 29 .
pushup 9 .
pushups -10 . -6 $
put -6 DAILY 8 SOCKETED 11 it 12 . 13 PART 17 ACHE
putting 11 .
putts -7 $ .
quarter -14 $ .
question -13 . -10 NOT no
quick -23 $ -22 .
quickly 8 .
quiet -30 . -12 $
quit 6 $ 8 .
quite -9 .
quits 17 .
quiz -16 . -13 $
r -17 PAIN -7 . 7 NUMB 14 COLOUR
race -25 $ -11 .
racing -14 before -9 . 14 $
rack 6 . 7 $
racket -6 TIGHTER 9 COME
radio -14 .
rail -16 .
rain -43 . -29 $ -7 BE
rained -13 . -12 OUT out
raining -20 $ .
rains -6 .
raise 8 . 9 it 13 SOCKETED arm 15 ARM 18 ACHE 20 HAND HANDS hand 31 PART
ran -16 OUT out 18 ONTO 19 into
rang -10 . -9 $
range -8 $ 11 SINCE since 14 .
rankings -10 $ .
rate -18 .
rather 20 BE be 21 .
raw -16 . ONTO from
reach -6 $ 12 . 14 up 16 HEIGHT
reached 6 HEIGHT 7 for
reaching 6 HEIGHT 14 . 21 for
read -22 .
reading 13 $
ready -28 . -18 $ -16 to
really 30 .
rear 26 . ended
reason 17 $ to 27 .
rebound 9 . and
reckon -14 .
recliner 10 because 16 .
recovered -6 $ .
red -11 for -9 $ -6 MISSILE fastball 7 HOT 25 streaks 27 and
reduced 18 ACHE it 33 .
ref -15 . -10 $
referee -9 .
regret -13 .
regular -15 .
rehab -14 .
release 22 $ .
released 6 . THING javelin
relief 12 . 18 ONTO in
remember -16 $ .
rep 11 # NUM 14 . 22 MANY
reps -18 . -15 $
resin -15 .
rest 11 $ 16 NOT 18 .
rested -20 . -14 ACHE -12 ARM PART SOCKETED arm -8 $
resting 8 . 12 $
result -6 .
results -17 .
rhythm -23 . -20 $
ribs 8 $ AGAIN MANY and every 24 .
ride -7 $ -6 . 15 ONTO over
ring -16 $ -11 is -8 BE 11 CANT NOT wont 14 DIGIT HANDS PART finger
rip -6 .
ripped -18 . 7 jeans 10 in
ripping 12 ONTO in 30 .
rising -15 .
river -10 .
rly 7 WEAK weak
rock -9 . -7 $
rocked -10 .
roll -10 $
rolled -6 ONTO over 8 OUT out 9 HEIGHT up 19 atv 30 VEHICLE
roof -22 BE is -21 .
room 8 $ 14 BE
roomie -9 . BE HAVE has
roommate -19 passed -17 . -13 BE -8 HAVE -6 has
rope -11 .
rose -15 .
rotation 17 BE is 24 .
rough -12 . -9 $
round -11 $ 11 ACHE PART 14 CHEST ONTO chest 34 .
rowing -7 .
rubber 7 BREAKS_LIKE band
rubs -7 .
rug -16 .
rule -18 .
run -24 HEIGHT up -22 . 9 down 18 over 24 ONTO
rung -12 .
running -22 $ -10 poles 6 bases 10 ONTO 19 FEVER fever temp 23 .
runs -6 $ 6 down 9 ONTO 20 .
runway -10 BE was -7 .
rushed -15 .
sacked -10 .
saddle 18 .
said -18 $ -12 COME -10 . -6 ACHE ARM PART SOCKETED arm 7 POP
same -15 $ -8 .
sand 6 .
sat -19 ON on 7 $ down 12 in
saturday 10 $
sauce -10 .
save -22 .
saw -41 . -10 bill
say -15 $ .
says -13 ACHE PART -11 ARM -9 SOCKETED -7 arm -6 i 6 # NUM
scar 7 is 10 $ 12 . 13 LEAK
scared -25 . -13 its -12 to
scary -20 .
schedule -24 . -13 $ -12 this
school -32 . -14 BE -8 $
scooter 23 . 26 $
scored -21 $ .
scratch -8 .
screaming 12 .
screen -15 $ .
scrimmage -19 .
scrum 6 $ .
seam -16 .
season -14 $ .
seat 7 belt 11 $
seatbelt 21 .
seated -6 .
sec -11 $ 10 SINCE then 16 ONTO
second -13 and 8 GROUND base 10 COME 15 NIGHTS night 17 SINCE after 25 set 26 PUT
seconds 12 ONTO 13 . 17 ON on
secretary -10 .
secs 7 .
see -9 PART 9 . 12 OUT out 20 MOTOR point
seeds -22 .
seems 7 . to
seized -8 .
send -9 .
sensation 7 in 12 $ 14 BE 15 ONTO 35 .
separated 10 .
serious -6 .
serve -24 . -12 is 17 $
served -24 .
serves -15 at -10 . -8 $
serving -17 .
session -14 . -7 # NUM
sessions -7 $ .
set 13 $
sets -12 . -7 $
setter 8 .
settled -7 .
seven -8 $ 8 .
shade -11 $ -9 .
shakes 17 .
shaking -16 ONTO -15 ON on 6 BY 9 $ 15 with
shaky -12 $ -6 .
shape -6 $ 11 ACHE PART SHOULDER SOCKETED shoulder 22 .
shaped 12 . 18 CHANGED ODD
sharp -11 ACHE PAIN pain -7 .
she -10 .
shed -25 .
sheet -10 .
sheets 30 .
shelled -28 .
shes -7 . 7 OUT out
shift -22 $
shifted -12 to 6 OUT out 12 $ 17 .
shin -10 .
shiny 7 $ .
shirt -28 . -10 $ 13 BE is
shivered 7 .
shivering 7 under 8 $ 11 ONTO in 32 .
shivers 10 $ 12 .
shock -12 from -9 . -7 ONTO
shoes 21 $
shook -14 . -7 CHANGED ODD ONTO off
shooting 15 . ONTO
shop -8 $ .
shopping -21 .
short -16 VEHICLE goal -13 $ -6 ONTO in 6 TRAINING 11 . 40 BREATH breath
shortstop 14 .
shot -28 ONTO -14 in -13 BE -9 from 13 $ 15 i 19 NOT
shots -14 . -9 ONTO
should -36 i -32 .
shoulder -32 feels -24 FEELING -22 PUSH -16 MOTOR to when -14 doesnt working -13 POP day stiff -12 makes pops -11 TIGHT WENT -10 gave -9 TIRED blades cracked didnt tired works -7 NUM clicks felt -6 PART SHOULDER blade is 6 ODD height isnt keeps slips subluxed 7 FALL LEAK at fell hasnt slid while 8 NOT OUT and went wont 9 PUT SINCE after lurched 10 SHAPE back pain 11 AGAIN KEEP aches hangs hurts into wouldnt 12 kept 13 . MISSILE gives in tip 14 BREAK SWELL 15 slipped 16 PAIN QUITS 17 ON WAKE on woke 18 ACHE CANT dislocated 19 that 20 did jumped 21 DISLOCATE from 22 looks 23 $ was 24 first 26 BLOW 32 COME ONTO 34 LOOK has 35 HAVE 39 SLIP
shoulders -15 BE -13 $ -11 . 11 and 18 stiff
shove 13 . ACHE
shoveling -12 .
show -14 . -13 $
shower -13 and 16 $
shows -10 . -7 $
shrugging -13 .
shut 9 .
sick -11 . -7 ONTO 8 BY with 11 $
side -13 ONTO 8 ELBOW HAND HANDS MISSILE elbow hand 10 ARM NOT 12 ACHE 13 face 14 is 15 BE ELSEWHERE mouth 17 PART 18 $ 25 FACE 33 .
sidearm -8 .
sides -23 $ -8 .
sign -8 $ .
signs -14 .
simply 12 .
since -23 i -20 $ -10 days 6 that 7 thursday 9 COME competition fall second tackle 10 # wednesday 11 BLOW FALL game weekend 12 MANY NUM this 13 yesterday 14 tuesday 15 breakfast 16 match 17 long monday 19 last 35 TRAINING 57 .
single -11 $
sinks 7 .
sir -11 .
sister -24 . -12 BE -11 HAVE has
sit 7 . 8 ONTO
site 7 LOOK looks 8 . BE
sitting -8 # MANY NUM at 10 CHANGED 14 here 15 ODD 17 ON on 18 $ 19 ONTO 40 .
six -27 $ -9 hours 12 weeks
size 10 $ 16 grapefruit 18 MISSILE 43 .
skateboard 11 $ 12 .
skies -6 $ .
skiing 18 $ .
skin -6 BE 6 ON on 9 ONTO 19 $ 23 .
skinned -12 .
skip -18 .
skipped -17 . -7 $
skipping 9 beats 23 .
sky -9 $ .
slammed 7 BY 9 on 14 into 24 ON 30 . 35 ONTO
sleep -11 BY with -10 ON on 10 ACHE PART SHOULDER SOCKETED shoulder 11 $ because in 12 NOT 13 . 17 from
sleeping 6 $ 17 ON ONTO on 36 .
sleepy -12 $
sleeve -11 ON ONTO on 11 BE is
sleeves -19 . -8 $
slept -32 ON on -16 . -15 ONTO -14 NUM -13 # -10 through 10 because 14 in
slid -12 $ 8 back 11 CHANGED ODD ONTO off 15 ON on 23 . 28 OUT out
slide 6 . 12 OUT out
slider -8 . -7 BE
slides 8 OUT out
slight 10 temperature 13 SWELL swelling 15 tingle 18 NUMB 26 .
slightly 30 .
sling -6 .
slip -15 . -12 and -10 ONTO -8 OUT out 18 $
slipped -15 mind -14 but -13 ONTO -11 HEIGHT -10 ON on past -9 into -8 disc -6 . 7 OUT out 11 in 17 OPPONENT forward 19 $ and
"""
