"""The points of words and of pairs of words, in tenths, angle to face.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
angle 13 $ .
animal 8 $ .
ankle -40 . -13 COME CRASH PUT rolled -6 $ ONTO
another -8 minute 10 . 17 OPPONENT player
answer -6 .
anterior 25 .
anthem -21 .
ants 6 ONTO in 16 .
any 22 .
anymore 28 $ 29 .
anything -11 $
apart -8 $ 6 . 12 ONTO
appeared 7 .
are -20 TIGHT -18 fine -15 okay -14 having -11 sore -10 TIGHTER tight -9 THING puffy sweaty toast -8 ONTO TIRED tired -7 MISSILE RED SWEATS heavy jello red shot 6 turning 7 DROPPING dropping 9 paining white 10 WEAK weak 11 BE COLOUR GROUND ice 12 getting 13 FALL SWELL falling going leaking 14 OUT 15 COME 16 blue 18 numb 20 CLUMSY NUMB clumsy 24 swollen 26 WENT 41 stiff
area 6 BE ON ONTO on 11 .
arent 16 .
arm -23 isnt -22 felt slot -21 VEHICLE -18 LOOSE loose -16 HOT ON did on -15 that -14 good -12 TIRED care i tired -11 CHANGED ODD feels -10 LEAK for -8 today -7 last not up was -6 fell 6 PAIN POP after doesnt hurts no popped 7 KEEP from keeps stops 8 BLOW BUZZ gives past 9 ACHE BE LOOK blew blown couldnt folded looks 10 $ CANT has shakes wont 11 . ASLEEP FEELING HAVE asleep buckled died falls feeling turned wouldnt 12 SWELL WEAK out weak 13 COME ONTO became collapsed done is quit went 16 stuck when 17 AGAIN WENT 20 STOP in 21 drops nothing to 22 DROPPING 26 gave 27 with 31 BY GIVES 53 QUITS
armpit 14 $ 23 .
arms -11 BE are -10 . 15 $
around -23 # NUM -11 MANY 14 PART SHOULDER 29 .
arthritis -16 . ONTO in
as -22 would -21 AGAIN KEEP always -20 OPPONENT kid -19 joke -14 $ ACHE it -13 before -9 usual -6 you 11 chalk 12 DAILY yesterday 13 THING hell 14 big though 26 strong 30 i 32 if
aside 15 .
ask -6 .
asked -16 . -9 about
asking -8 $ .
asleep -9 before -6 from in 6 ON on when 11 and 15 SINCE since
aspirin 23 .
asthma -8 .
at -27 GROUND -23 front -22 gym -21 game -20 THING -16 plate -13 $ -11 MISSILE NOT concert midnight no -10 this -8 SEAT five its rep track -7 OPPONENT eight end six -6 NUM aunts bus field four party ten three 6 back 8 release 9 SHOULDER shoulder top 10 SOCKETED hospital net 11 first home 12 dinner 13 ACHE FEVERISH HAND HANDS TRAINING side 14 lunch 15 . training 17 NIGHTS night 18 practice 25 PART POSITION 31 second 48 rest
ate -12 $ THING 16 GROUND 17 pavement 22 it 32 ACHE
atmosphere -18 .
attack -13 . 7 $
atv 20 $ 27 .
audible 8 BREAK snap 10 . POP
aunts -6 .
average -12 . -8 $
awake -12 by 9 $ BY 22 with 24 .
away -24 SINCE -23 . -6 after
awful 12 $
aye -7 .
baby -32 . -18 $
back -23 ACHE -22 SOCKETED -21 . -19 SHOULDER shoulder -18 BE -15 $ is to -14 PART -13 SEAT seat -9 POP -8 COME PUT into -7 popped 7 SINCE 8 CALF anymore calf 9 and 15 when 17 HAND HANDS hand 32 ONTO 43 in
backwards -8 .
badly -14 . -12 $
bag -23 $ -22 .
balance -10 ONTO 13 . 21 BE is
ball -18 came -17 BE -10 was -9 $ -8 but -7 LAND landed 6 ON POP QUITS SHOULDER SOCKETED on popped shoulder 7 ACHE 9 BLOW PART 10 . 12 hit 13 # NUM falls 18 NOT 30 and
balled 8 . HEIGHT up
balloon 8 animal 12 .
ballooned 17 .
balls -26 . -18 $
band -28 . -25 BE -23 $ -16 is -9 today
bandage 9 .
bands -16 . -15 $
bang -12 in 6 . 8 ON on 9 $
banged 17 ACHE PART SOCKETED
bar -25 . -22 $
barbell 8 . COME
barely -25 . -19 HAVE -17 noticed -7 $
barking 7 .
bars -6 .
base 10 . and 18 $
baseman 18 $ .
basket -6 .
basketball 17 $ .
bat -8 SINCE after 6 $ 7 .
bath -9 $
bats -8 .
batter -19 . -15 ONTO in
battery -20 BE is -6 died
be -12 ONTO -10 $ 6 BE HAVE 14 WENT getting 22 better 26 dead 28 . 29 TIRED tired
beaned 9 . ONTO in
beat -13 .
beating 8 . 17 fast
beats 17 FLUTTER irregular 20 $ 35 .
became 10 COLOUR 12 NUMB WEAK numb weak 25 .
because -25 i -15 rain -14 THING -8 period -7 SWEATS -6 we 9 HOLD MOTOR POWER grip 11 ARM arm 12 HAND hand 13 lying 14 it 15 HANDS 22 PAIN pain 26 SHOULDER shoulder 32 SOCKETED 41 PART 46 ACHE
become 8 UNSTABLE WOBBLY unsteady 25 .
bed -17 at 6 BY 7 $ 9 and 13 BE is
bee -21 . -18 $
been 38 .
beer -17 . -11 SINCE after
before -33 surgery -30 ONTO in operation -14 alarm first -10 speech 6 session 9 it 11 AGAIN every 16 practice 17 each 19 training 21 . 22 MANY 25 game 32 i 42 TRAINING
began 16 . to
behind -16 ONTO -11 ACHE PART SHOULDER SOCKETED shoulder -10 BY in with -8 ON on -7 back 8 BE ELSEWHERE MISSILE knee 14 . 20 CHEST breastbone
believe 6 .
bell -13 . -12 rung
belly -7 .
belongs 15 . to
below 6 ACHE ARM ELBOW MISSILE elbow 14 HAND HANDS wrist 18 PART 22 .
bender 26 .
bends -8 .
bent 17 $
best -32 .
better -21 than -19 MANY -13 AGAIN every -10 $ 21 CHANGED ODD ONTO off
between -8 # MANY NUM -7 ACHE PART SHOULDER SOCKETED clubs shoulder 9 . 26 legs 28 LEG
bicep -8 $ 9 . 14 COME CRASH PUT rolled 16 BE
biceps -26 . -21 $ 7 POP
bicycle 14 .
big -14 $ -6 deal 6 SHAPE bump 7 OPPONENT 9 POP 14 as 16 . 22 and
bigger 12 . 25 than
bike -11 for 6 ON 8 COME 9 PUT 14 . 22 ONTO 27 CRASH
bill -15 $ .
bird -19 .
birth -8 .
birthday -25 .
bit 7 .
bite -25 . -9 SWELL swelled
bites -22 . ONTO
black 7 for 11 and 28 .
blacked 27 . OUT out
blackout 12 . ONTO
bladder 18 $ 23 .
blade -13 COME -6 .
blades -9 . -7 $
bleachers 10 $ .
blew 12 HEIGHT up
blind -24 .
blister -31 . -20 ONTO -14 ON on -13 $
blisters -16 . -7 ONTO
bloke -13 .
blood -24 TIGHT pressure -15 clot 21 . 31 $
bloody 12 .
blotchy 6 .
blow -14 to
blue -10 about -8 BY with -7 skies -6 BREAKS_LIKE band 9 ELSEWHERE FACE lips 13 SINCE after 14 and 23 DIGIT HANDS PART
bluish 19 .
blurry -6 .
board -17 . -16 $
boards 14 $
body 6 WENT became 8 ACHE PAIN 9 aches 12 .
bodys -6 .
boiling 22 .
bolt 8 . ONTO
bomb -8 .
bone -7 ON ONTO on 11 BULGE PUT SLIP sticking 15 LOOK looks 17 but 18 COME 28 is 32 . 36 BE
bones -8 . -6 $
boots -12 .
bored -14 .
boredom -17 . -10 $
boring -8 .
born -6 .
both -15 .
bottle 11 .
bottom 17 .
bouncer 9 $ .
bowl 15 $ 18 .
bowled -18 MANY -17 .
box 16 $ 24 .
boy -10 $ .
boys -17 $ -12 .
bp -11 . -8 $
bra 19 .
brace -13 .
braces -18 .
brain -14 . BE is
branch 9 POP 11 .
bread -13 .
break -12 . -8 ONTO
breakfast 17 $ 27 .
breaking 18 .
breast 9 .
breastbone 22 $ 25 .
breath -16 SINCE -13 after from 11 at 15 sitting 18 .
breathe 30 $ 31 .
breathing -10 drills 9 ONTO in 10 BE 12 $ 18 feels 20 today 39 .
breathless 30 .
breaths 6 .
brew -15 .
brick -17 .
brief 19 .
briefly 9 $ .
bring -14 . -11 ACHE
bro -24 .
broke -33 . -12 ACHE HANDS -11 and -10 $ SOCKETED her -9 DIGIT THING -7 ARM HEIGHT arm up -6 MISSILE 6 in 13 SHOULDER 17 collarbone
broken -12 PART -7 . 14 $ 16 i
brother -24 . -19 BE -18 has -17 HAVE -16 $ -11 FALL QUITS fell
bruise 7 $
bruised -10 PART -6 . 19 $
bruk -25 .
brutal -7 . -6 $
bubble 9 . wrap
bucket -12 . -10 $
buckets -7 .
buckle 9 . and
buckled 7 .
bucks -10 .
buddy -41 . -9 COME
bug 14 .
bulge -7 $ 15 ONTO in
bullpen 7 SINCE
bump -10 in -7 . -6 ONTO 6 BULGE sticking 10 $
bumped -16 OPPONENT -6 HEIGHT up 6 . ONTO into 13 SHOULDER shoulder 14 PART SOCKETED 16 ACHE
bunch -16 .
bunched 10 . HEIGHT up
burn -28 . -19 ONTO -16 ON on -11 $ -6 in
burned -29 . -9 ONTO -7 OUT out -6 ELSEWHERE tongue 12 DIGIT finger
burning -6 ONTO in 9 HEIGHT 11 up
burns -7 .
burnt 13 OUT out 14 .
burpees -6 .
burrito -7 .
burritos -15 .
burst -12 .
bus -43 . -13 $ -7 BE was -6 STOP stop
bust 8 .
busy -29 . -27 $
but -23 not only -21 nothing that -19 # -18 we -15 NOT -14 good it -13 MANY NUM -10 ok thats -9 normal -8 SINCE then -7 didnt 6 ONTO 7 . ARM KEEP kept 8 SHOULDER 9 ON half on 10 AGAIN ELBOW MISSILE elbow i 11 HAVE 13 im 14 HAND hand 20 is 21 DIGIT fingers 22 BE no 29 HANDS 30 PART 31 NUMB
butt -16 . -9 $ -6 BE COME PUT WENT went
butter -29 . -19 $
butterflies -11 . ONTO in
butterfly -6 PUT
button 7 .
buttons 23 $ .
buzz 15 .
buzzing -8 after -7 SINCE 9 . 22 $
buzzy 16 SINCE after 23 .
by -26 CRASH accident -21 $ -11 ELSEWHERE 6 PAIN pain shoulder 7 # SOCKETED TRAINING 8 pitch 9 SHOULDER 10 PART 11 team 12 ACHE 14 THING bat 15 line thread 18 . 20 linebacker 22 MISSILE VEHICLE itself 23 car 34 OPPONENT
cage -8 .
cake -25 . -21 $
calf 8 SWELL 10 ACHE PAIN SINCE 13 HAVE has 16 $ 17 since 20 . 21 is 31 BE
call -26 . -18 $ -9 ACHE
callus -20 .
calm -12 $ .
calves -12 . -8 BE
came -22 HEIGHT up -17 through -6 in 6 LEAK 8 ON on 9 . 10 UNDONE out 11 OUT 12 back 13 partway 16 and 18 MOTOR
can -32 i -28 LIFT -23 lift -20 do -8 BE MOTOR -7 REACH -6 COME 10 throw 11 MISSILE pitch 14 CANT NOT barely 17 play 24 only 32 TRAINING
cannon -30 . -20 $
cannot -18 HOLD hold 12 raise 16 sleep 17 $ 20 lift 21 . 29 LIFT
cant -21 wait -15 remember -13 $ -9 raise -6 LIFT 6 lift 7 STOP make stop 9 close 10 see throw 11 PUT put 13 hold 14 POWER grip sleep 15 lie 20 PUSH open 21 LEAK 22 HOLD 24 MOTOR 27 tell 39 .
cap -18 .
captain -12 . -6 $
car -15 MOTOR wash -7 CANT NOT wouldnt 14 DAILY crash door 16 . 28 accident 38 CRASH
care -12 . -7 done
carried -18 . -13 shopping
carry -13 .
cart 20 $ .
cartwheel -14 $ .
cast -18 .
cat -34 . -6 WAKE woke
catch -16 BREATH breath -12 . -10 $ -7 TRAINING play -6 at 7 # NUM
catcher -11 BLOW hit -6 BE HAVE took 14 COME 16 . 17 $
catchers -9 . 6 THING mitt
catches -12 . -7 $ 8 and
catching -13 $ -6 .
caught -8 NUM 10 myself 12 ACHE
cause 9 SHOULDER shoulder 11 i 13 SOCKETED 16 ACHE 17 ARM 18 . 25 PART
ceiling -14 .
center 10 .
chain -17 . COME
chair -13 .
chalk -11 $ -9 .
champagne 9 . cork
change -23 . -15 $ -7 ONTO -6 in
changed -10 . 17 $
changeup -10 . -7 COME QUITS
chasing 29 .
cheat -14 .
check -14 .
checked -19 NOT 9 ONTO into
cheese -13 . -11 $
chess -9 . -8 $
chest -20 day -17 drawers -16 BLOW PUT bumped protector -13 high -12 SHAPE bump pass -10 and muscle -7 DAILY hair -6 MOTOR PUSH press 6 pain 7 that 10 SINCE 11 into 12 $ 15 AGAIN MANY ONTO since 16 pains when 18 is 22 pressure tightness 23 TIGHTER tight 24 . 25 felt 29 was 30 hurts 32 ACHE 33 feels 35 PAIN 43 TIGHT 58 BE
chewed -8 .
child -21 . -20 i
chill -19 .
chilled -9 . OUT out
chilli -8 .
chillin -19 $ -9 .
chills 14 NIGHTS night 15 and 26 $ 30 .
chilly -12 .
choked -6 . ONTO
christmas -6 .
chucking 19 .
city -8 $ .
class -18 $ -14 . 8 and
clay -9 $ .
clean -22 . -14 $
clear -15 . -7 $
cleared -16 . -13 HEIGHT up
cleats -23 . -19 and
click -10 ONTO in -9 AGAIN KEEP always 18 $
clicked 8 .
clicks -19 .
climbing -16 $ 8 .
clobbered 13 . BY by
clock 7 $ 9 .
close -7 HAND HANDS PART hand to 8 $
closed -21 . -13 $
clot -15 .
club -23 . -17 $
clubs -9 . -7 $
clue -9 $
clumsy 8 $ 14 and 25 .
clunk 20 .
clunked 13 back 14 OUT out 24 .
clunks 14 .
co 10 . PILL codamol
coach -60 . -37 $ -16 BE -15 HAVE -11 had -8 said wants -7 says
cock 13 . back
codamol 10 . before
coffee 9 $ 14 THING cup
coin 7 .
cold -17 . -16 ONTO OUT out tub -15 brew -14 BE -13 ACHE SOCKETED -12 because morning -10 from -9 SHOULDER hands shoulder water -8 outside -6 beer by 7 this 8 HAND 9 PART 11 DIGIT fingers 12 SINCE after 13 $ 15 hand sweats 16 HANDS 17 SWEATS 18 as 26 and
colder 16 . than
collapsed -18 ONTO 13 $ 15 SINCE after 21 .
collar 14 BONE bone
collarbone 8 sticks 17 COME 24 is 29 BE 38 $ 81 .
colleague -8 .
college -29 . -21 $
collided 28 . BY with
collision 6 $ 18 at 26 .
color 16 .
colour 17 $
come 8 back 10 . OUT out 13 LEAK apart
comebacker 8 .
comes 6 and 17 OUT out 22 .
comfortable -19 . -18 $
coming -21 back -9 along 7 $ . 10 ONTO 19 OUT out
committee -15 .
compared 7 BY with 22 to 27 .
competition -8 ONTO -7 .
completely 14 .
computer -16 . -8 $
concert -11 $ .
conditioning -19 . -14 $
cone -15 $ .
consciousness 25 .
constant 11 $ 19 .
constantly 19 .
control -11 $ 23 bladder
controlled -18 $ .
cooked -21 .
cork 9 . and
corner 13 ON ONTO on 19 .
corpse 10 $ 13 .
couch -8 $ 7 .
cough -11 .
coughed 8 $ 17 HEIGHT up 19 .
coughing 20 . 22 HEIGHT up
could -20 HAVE WENT go have -15 do -14 LIFT lift -13 CANT NOT -11 hardly 7 POP pop 11 $ 12 PUT be 17 REACH reach 21 TRAINING 22 SLIP 33 play
couldnt -20 make -14 sleep -11 do -8 $ -7 tell -6 TRAINING throw 9 . COME MOVE move 13 hold lift 14 HOLD 15 MOTOR 21 raise 25 LIFT
count -28 . -14 $
counts -10 . as
couple -21 . -12 times 17 PILL
course -24 . -20 $ -7 ONTO in
court -17 .
cousin -27 .
covid 13 $ .
cow -9 .
crack -10 dawn 9 in 12 ON on 15 and 18 ONTO
cracked -13 . -10 THING -8 MISSILE bat -6 $ 6 inside 8 loud
cracks -10 .
cramp -27 . ONTO -25 in
cramped -10 . -6 ONTO
cramps -18 .
crap -14 $ .
crash -7 course 6 . 10 BY 22 $
crashed -24 $ -13 . -10 SINCE after hard -9 ON on -6 at 6 VEHICLE 19 ONTO 20 BY with 27 bike 28 into
crawling 11 .
crazy 7 $ 11 .
creak -21 .
cream -22 . -16 $
cried -14 $
crispy -7 .
crook -21 .
crooked 11 . 18 $
cross -8 .
crossed -21 . -11 $
crowd -27 . -15 BE -14 $ -6 was
crunch 9 .
crushed -8 . -6 that 6 $
crushing 6 sensation 8 FEELING
crying -11 NIGHTS night 10 . 22 $
cue -9 .
cuff -7 .
cup 18 and 19 COME 20 $ 34 .
curb 9 .
curve -15 . -13 BE -9 was -8 and
curveball -11 .
cut -8 GROUND grass -7 DAILY hair 7 . 9 PART 10 ONTO 14 $ 16 BE 25 is 28 from
cutter 14 . 17 $
cycling 9 $ .
dad -26 . -13 BE -8 HAVE -7 $
dads -14 . MISSILE
damn 19 .
dangerous -21 .
dark 6 .
daughter -28 . -19 BE -6 HAVE has
day -14 BE was -12 ONTO -11 SINCE -10 . at -9 CHANGED ODD off -6 # NUM 10 i 14 for 16 and
days 6 $ 7 .
dead -12 ACHE ARM SOCKETED arm -11 from -10 PART -9 after -8 ONTO -6 LEAK RED red 6 area since 7 . NOT 8 and 9 NUMB numb 10 to 11 for 12 $ 21 weight
deal -7 . -6 $
decision -11 . -9 to
deck 8 and 15 . 16 hard
deep 7 ACHE PAIN ache 8 breath 12 . 16 NOT
deer 8 .
defeat -8 $ .
defence -16 BE -13 .
definitely 6 .
deformed 12 $ .
degrees 20 $ 23 .
dehydrated -8 $ .
delay -7 .
delivery -13 .
delt -13 . -12 $
dem 9 .
dent -13 ONTO in 7 where
dented 8 $ .
dentist -34 . -15 ON ONTO on -9 $
depends -10 . -6 $
desk -13 . -6 $
destroyed -6 .
deuce -6 .
di 14 ACHE PART SOCKETED
diarrhoea 10 .
diclofenac 11 .
did -31 . -23 ACHE -18 $ it -13 PART -7 BE 17 PUT
didnt -29 . -17 TRAINING -16 throw
die -8 for 12 . 36 $
died -32 . -13 $ -9 ONTO -7 ON on
diet -27 . -16 $
difference -12 $ .
different 6 $ ONTO from 14 .
difficulty 6 to 8 .
dig -17 ONTO in -8 .
digging -11 .
dips -11 $ .
dirt 15 . 17 VEHICLE bike
dirty -14 .
disappear 24 .
disc -27 . -10 $
discharge 23 . ONTO from
discus -20 .
dish -13 .
dislocate -19 . -15 ACHE
dislocated -15 PART -13 DIGIT HANDS -12 finger 10 ON on 11 in 12 $ 16 . 17 ACHE 18 ONTO 22 it
dislocation -8 BE 8 in 12 ONTO 16 .
dive 11 $ .
diving 19 .
dizzy -19 ONTO -12 BY with 12 . 17 and 24 $
do -30 i -23 . -16 last -12 THING -11 ACHE if it -10 NUM -8 TRAINING exercises -7 # 6 $ 13 what 14 buttons 16 HEIGHT up 22 DAILY 25 NOT nothing
doctor -18 . -15 knows -11 BE -7 HAVE has 27 PUT put
does -16 . -9 NUMB POP -6 that 8 nothing
doesnt 8 let 14 MOTOR 15 help 17 . stop 33 STOP
dog -28 COME -17 PUT -10 pulled -8 BLOW -6 . 13 yanked 18 $
doing -21 ACHE it -6 THING 14 . 17 flips 25 NOT nothing
done -34 . -21 $
dont -10 know 14 work 15 MOTOR sleep 21 see 22 .
door -7 . BE 9 $
double -16 and -11 . 7 $
dove 15 for 19 .
down -12 drain -11 from in -7 $ 9 BE is 11 DAILY stairs when 12 steps 15 BY 17 hard 20 VEHICLE 21 SOCKETED arm 23 ACHE to 24 ARM ON PART on 29 .
dragging -9 . today
drain -16 . -13 $
drank -9 lot -8 .
drawer 12 .
drawers -17 .
dream -13 .
drenched 21 .
drill -23 . -21 $
drilled -15 . -9 ONTO -8 BY by
drills -27 . -22 $
drink -17 .
drive 6 ON on 7 BLOW ONTO 13 $ 17 .
driving 14 .
drone -17 .
droop 14 $ .
drooping 9 .
droops 25 .
droopy 6 $ 8 .
drop -8 SHAPE step 6 $ 11 THING
dropped -14 . -10 dumbbell -9 CATCH MANY -8 fly -7 GROUND to -6 CHANGED DULLED ODD ONTO WORN glove keys off water 7 phone 13 cup fork 20 $ THING
dropping -22 ACHE ARM PART -7 CHANGED ODD ONTO off 6 weight 7 and 24 . 38 THING
drops -11 $ 6 . when
drunk 18 .
dry -28 . -9 $
dude 8 FALL QUITS fell 10 BLOW 13 .
dugout 8 $ 12 .
dumb -15 .
dumbbell -17 . -15 BE -11 FALL fell 11 i
dumbbells -9 $ .
dunno -11 . -10 $
during -16 sprints -9 run 7 HOT LEAK warm 9 PUT second set 14 TRAINING 26 .
dusky 8 .
dust -10 ON ONTO on -6 .
dying 21 $
each 7 NIGHTS night 17 TRAINING 21 .
ear -6 $ 13 .
earlier -17 ACHE it 15 $
early -40 . -21 $
ears -14 . -7 COME POP PUT popped
eases 12 . 18 ACHE
easy -35 . -24 $
eating 14 plenty 28 .
edge 25 $ 27 .
effort -23 . -20 $
egg -6 .
ego -18 .
eh -9 $ .
eight -20 . -7 $ -6 hours
either 9 . POSITION side
elastic -14 . BE
elbow -13 and room -9 HEIGHT up -8 bends -6 in 6 at tore 7 STOP go let 8 BE BULGE gave pop 9 down swelled 10 $ BY by inside 12 went 14 NOT size 15 GIVES clicked 17 BLOW COME cracked 18 WENT 19 . 20 snapped 21 made 22 SWELL 27 BREAK 28 PUT 33 POP
elbowed 11 . ONTO in
elbows -9 .
electric 6 PAIN 8 BE FEELING feeling 11 . 13 shocks 22 SHOCK
electricity -9 . 11 in 13 ONTO
elephant 10 .
else -8 .
elses 7 .
em -20 . -18 $
embarrassing -9 . -8 $
empty 11 . 25 for
end -18 $ -10 MISSILE THING bat 11 ACHE PART SHOULDER collarbone it 17 . 26 life
ended -7 $ 9 . 20 ON ONTO on
ending 24 life 25 ACHE it 37 .
ends 18 $ .
energy 9 .
engine -19 .
english -10 .
enough -16 . -9 $
entirely -21 .
er 7 .
even 62 .
evening -12 $ -6 .
ever 6 .
every -12 $ -9 PUT set -8 POSITION 9 PART SHOULDER SOCKETED joint 11 TRAINING 12 BREATH breath 15 minute 20 hour 23 NIGHTS night 31 .
everyone -8 BE 13 would
everything -21 $ -13 is -10 in -6 i 9 COME 12 feels 14 BE 15 PUT went 18 WENT 25 today
everythings 22 .
everywhere -10 .
ew -25 $ .
ex -22 . -12 at
exam -33 . -22 $
exams -26 . -12 $
except 20 NUMB numb 21 .
excitement -13 . -10 $
excuse -6 .
exercise -28 . -21 $
exercises -18 . -11 BE 11 $
exhausted 18 $ for 35 .
exploded 14 . 19 ONTO
external 26 . rotation
extras -7 $ .
eye -8 drills 14 . 18 $
eyelid 20 .
eyes -16 BE are 13 $
face -17 $ 6 CANT feels wont 8 COME PUT WENT went 13 was 17 . is planted 18 NOT 37 BE
"""
