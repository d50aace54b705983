"""The points of words and of pairs of words, in tenths, angle to fall.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
angle 12 $ .
animal 8 $ .
ankle -37 . -12 COME CRASH PUT rolled -6 ONTO
another -7 minute 13 . 18 OPPONENT player
anterior 27 .
anthem -24 .
ants 6 walking 7 ONTO in 18 .
any 23 .
anymore 28 $ .
anything -8 $
apart 10 . 12 ONTO
are -22 TIGHT -17 fine -16 okay -12 having sore -11 sweaty -9 THING TIGHTER puffy tight toast -8 SWEATS -7 MISSILE RED TIRED heavy jello red shot tired -6 ONTO 6 SHAPE WEAK WOBBLY bulging weak white 7 BE 8 thick 9 DROPPING GROUND dropping ice paining 11 COLOUR 12 FALL falling 13 SWELL 14 COME OUT getting leaking 15 numb 17 NUMB blue 19 CLUMSY clumsy 23 WENT 24 swollen 31 stiff
area 6 BE 9 .
arent 16 .
arm -23 felt -22 VEHICLE isnt slot -18 that -17 HOT LOOSE loose -16 did -14 ON on -12 TIRED care good tired -11 LEAK i -10 CHANGED ODD for -9 not -8 feels today up was -7 fell last 6 PAIN came hangs hurts no 7 KEEP after keeps stops 8 BE BLOW BUZZ from has is 9 CANT blown folded gives past 10 $ ONTO couldnt 11 HAVE LOOK blew died falls looks out shakes turned wouldnt 12 ACHE WEAK buckled done quit weak wont 13 FEELING became feeling 14 COME SWELL collapsed 15 . WENT went 16 AGAIN when 19 drops stuck to 20 STOP 21 DROPPING 22 in 26 with 27 gave 30 BY 32 GIVES 58 QUITS
armpit 11 $ 21 .
arms -10 BE are -9 . 14 $
around -21 # NUM -10 MANY 14 PART SHOULDER 27 .
arthritis -16 . ONTO in
as -25 $ -18 AGAIN KEEP OPPONENT always kid would -17 joke -14 before -13 ACHE it -10 usual -7 you 10 chalk 11 DAILY yesterday 12 hell 13 THING 14 though 16 big 31 i 32 if
aside 17 .
asked -16 . -8 about
asking -8 $ .
asleep -9 for -7 before 12 SINCE since 13 and
aspirin 18 .
asthma -8 .
at -28 GROUND -25 front -21 gym -19 THING -18 game -17 plate -13 $ NOT no -11 concert -10 MISSILE midnight this -9 rep -8 SEAT track -7 bus five six three -6 AGAIN OPPONENT aunts field four its party 8 back first 9 home release top 10 SHOULDER net shoulder 11 SOCKETED TRAINING hospital 12 dinner 13 HAND HANDS lunch training 14 ACHE side 17 . NIGHTS night 18 practice 23 POSITION 24 PART 28 second 39 rest
ate -13 $ -6 THING 16 GROUND 18 pavement 22 it 31 ACHE
atmosphere -17 .
attack -10 . 6 $
atv 20 $ 26 .
aunts -6 .
average -12 . -8 $
awake -11 by 8 $ 10 BY 24 with 26 .
away -21 SINCE -20 . -7 after
awful 13 $
aye -6 .
baby -32 . -22 $
back -23 ACHE -21 SOCKETED -18 BE SHOULDER shoulder -15 . is -14 $ SEAT seat to -13 PART -10 into -9 POP -8 COME PUT -7 popped -6 NOT 9 SINCE anymore 10 and 17 HAND HANDS hand when 33 ONTO 44 in
backwards -10 .
badly -16 . -14 $
bag -30 $ -22 .
balance -9 ONTO 12 . 21 BE is
ball -13 BE came -10 was -8 LAND but landed -6 $ 7 ON SHOULDER SOCKETED on shoulder 8 ACHE QUITS 9 PART 10 . 12 BLOW 13 # NUM 14 falls 15 hit 18 NOT 28 and
balled 8 . HEIGHT up
balloon 8 animal 13 .
ballooned 18 .
balls -25 . -18 $
band -28 . -23 BE -19 $ -16 is -10 today
bandage 10 .
bands -15 . -14 $
bang -10 in 6 . 10 ON on
banged 6 . SHOULDER shoulder 16 ACHE PART SOCKETED
bar -27 . -23 $
barely -25 . -15 HAVE -14 noticed -7 $
bars -7 .
base 10 and 11 . 17 $
baseman 19 $ .
basket -6 .
basketball 16 $ .
bat -6 SINCE after 7 .
bath -8 $
bats -9 .
batter -17 . -16 ONTO in
battery -24 BE is -6 died
be -11 ONTO -8 $ 17 better 25 dead 26 . 29 TIRED tired
beaned 10 . ONTO in
beat -13 .
beating 9 . 19 fast
beats 19 FLUTTER irregular 23 $ 36 .
became 9 COLOUR 12 NUMB WEAK numb weak 26 .
because -23 i -16 THING -12 rain -7 we 10 HOLD MOTOR POWER grip 11 ARM arm 13 lying 14 HAND hand 16 HANDS 22 PAIN pain 26 SHOULDER shoulder 33 SOCKETED 42 ACHE PART
become 8 UNSTABLE WOBBLY unsteady 29 .
bed -17 at 6 AGAIN every 9 $ and 12 BE is
bee -20 . -18 $
been 40 .
beer -18 . -12 SINCE after
before -34 surgery -29 ONTO in -28 operation -14 first -12 alarm -9 speech 13 AGAIN every it 14 . 15 game 18 practice 19 each 21 MANY 22 training 26 i 41 TRAINING
behind -16 ONTO -10 ACHE BY PART SHOULDER SOCKETED shoulder with -9 in -8 ON on 8 . 9 BE 10 ELSEWHERE MISSILE knee 11 CHEST breastbone
believe 6 .
bell -13 . -12 rung
belly -7 .
below 6 ACHE ARM ELBOW MISSILE elbow 16 HAND HANDS wrist 18 PART 22 .
bender 26 .
bends -8 .
bent -8 .
best -34 .
better -27 than -18 MANY -13 AGAIN every -8 . -7 $ 25 CHANGED ODD ONTO off
between -8 # MANY NUM -7 ACHE PART SHOULDER SOCKETED shoulder -6 clubs 8 . 25 LEG legs
bicep -6 $ 13 . 14 BE COME CRASH PUT rolled
biceps -22 . -18 $ 9 POP
bicycle 14 .
big -14 $ -6 deal 7 OPPONENT 8 POP 16 as 21 and 23 .
bigger 12 . 26 than
bike -10 for 9 COME PUT 16 . 20 ONTO 26 CRASH
bill -13 $ .
bird -19 .
birth -7 .
birthday -21 .
bit 9 .
bite -26 . -8 SWELL swelled
bites -21 . ONTO
black 8 and 9 for 23 .
blacked 27 . OUT out
blackout 14 . ONTO
bladder 19 $ 24 .
blade -12 COME -6 .
blades -9 . -7 $
bleachers 11 $ .
blew 14 HEIGHT up
blind -22 .
blister -32 . -19 ONTO -14 ON on -12 $
blisters -13 .
block 6 $
bloke -13 .
blood -24 TIGHT pressure -15 clot 15 . 25 $
blotchy 6 .
blow -14 to
blue -10 about -8 BY with -7 . -6 skies 9 ELSEWHERE FACE lips 13 SINCE after 14 and 21 DIGIT HANDS PART
bluish 17 .
board -17 . -16 $
boards 14 $
body 6 WENT became is 7 ACHE PAIN 8 aches 9 .
bodys -7 .
boiling 23 .
bolt 8 . ONTO
bomb -8 .
bone -8 ON ONTO on 6 BULGE sticking 11 PUT SLIP 14 LOOK looks 17 COME but 31 is 36 . 39 BE
bones -9 . -7 $
boots -12 .
bored -15 .
boredom -16 . -9 $
boring -10 .
both -17 .
bottle 13 .
bottom 18 .
bowl 14 .
bowled -17 MANY -16 .
box 16 $ 24 .
boy -10 $ -9 .
boys -15 $ -13 .
bp -10 . -8 $
bra 18 .
brace -12 .
braces -17 .
brain -14 . BE is
branch 8 POP 10 .
break -11 . -9 ONTO
breakfast 20 $ 24 .
breaking 17 .
breast 9 .
breastbone 17 $ 19 .
breath -14 SINCE -11 ONTO after from 8 $ 10 at 16 . sitting
breathe 27 $ 31 .
breathing -10 drills 9 ONTO in 18 $ 39 .
breathless 27 .
brew -14 .
brick -16 .
brief 20 .
bring -16 .
bro -24 .
broke -29 . -11 $ HANDS -10 ACHE THING and -9 DIGIT SOCKETED -7 ARM MISSILE arm her -6 HEIGHT bat up 6 # in 16 SHOULDER 19 collarbone
broken -14 PART -6 . 14 $ 16 i
brother -21 . -19 BE -18 has -17 HAVE -14 $ -13 FALL QUITS fell
bruise 7 $ .
bruised -14 . -8 PART 6 $
bruk -26 .
brutal -6 $ .
bubble 10 . wrap
bucket -12 . -10 $
buckets -7 .
buckle 8 . and
buckled 9 .
bucks -11 .
buddy -43 . -8 COME
bulge -7 $ 15 ONTO in
bulging 6 .
bullpen 9 SINCE
bump -9 in -6 . 6 BULGE sticking 11 $
bumped -16 OPPONENT 7 . ONTO SHOULDER into shoulder 9 PART SOCKETED 11 ACHE
bunch -13 .
bunched 10 . HEIGHT up
burn -31 . -20 ONTO -15 ON on -11 $
burned -28 . -11 ONTO -6 OUT out
burning -6 . ONTO 12 HEIGHT 14 up
burns -6 .
burnt 6 .
burpees -6 .
burrito -8 .
burritos -12 .
burst -19 . -7 $
bus -43 . -14 $ -7 STOP stop -6 BE was
bust 7 .
busy -29 . -27 $
but -23 not only -22 nothing -20 that -18 # we -15 it -14 MANY NUM good -12 NOT -11 thats -10 ok -8 SINCE normal then 6 ARM ON on 7 . KEEP kept 8 SHOULDER 10 ELBOW MISSILE elbow half 11 AGAIN HAVE 12 i 15 im 16 HAND hand 21 is 22 DIGIT fingers 23 no 24 BE 31 NUMB 33 HANDS 34 PART
butt -14 . -7 COME -6 $ BE PUT WENT went
butter -28 . -19 $
butterflies -12 . ONTO in
butterfly -6 PUT
button 8 .
buttons 22 $ .
buzz 17 .
buzzing -7 after -6 SINCE 12 . 22 $
buzzy 16 SINCE after 24 .
by -25 CRASH accident -22 $ -12 ELSEWHERE 7 shoulder 8 # SOCKETED pitch 9 ACHE TRAINING 11 SHOULDER team 12 PART 14 THING bat thread 17 line 20 . linebacker 22 MISSILE VEHICLE car 23 itself 33 OPPONENT
cage -10 .
cake -26 . -21 $
calf -6 after 6 SINCE 7 LEAK 10 SWELL 19 $ 20 . 22 is 24 BE
call -26 . -18 $ -7 ACHE
callus -19 .
calm -12 $ .
calves -10 . -8 BE
came -22 HEIGHT up -16 through -7 in 7 LEAK 8 ON on 10 . UNDONE 13 OUT back partway 14 out
can -28 i -27 LIFT -23 lift -18 do -7 . -6 BE COME REACH 7 see 12 only 15 throw 32 TRAINING
cannon -29 . -20 $
cannot -16 HOLD hold 12 raise 18 $ 21 . lift 30 LIFT
cant -20 wait -14 remember -10 $ -8 raise 7 throw 8 STOP stop 9 PUT put 11 close 13 POWER grip 14 see sleep 15 lie 17 hold 19 PUSH open 20 LEAK 24 HOLD 25 MOTOR 29 tell 40 .
cap -17 .
captain -8 . -7 $
car -15 MOTOR wash -7 CANT NOT wouldnt 14 . crash 15 DAILY door 28 accident 37 CRASH
care -12 . -7 done
carried -19 . -14 shopping
carry -12 .
cart 19 $ .
cartwheel -13 $ .
cast -15 .
cat -34 . -6 WAKE woke
catch -14 BREATH breath -10 $ . -8 TRAINING play 8 # NUM
catcher -10 BLOW hit -6 BE HAVE took 15 COME 19 $ .
catchers -9 . 6 THING mitt
catches -10 . -7 $ 9 and
catching -13 $
caught 6 MISSILE 7 myself 11 ACHE
cause 10 SHOULDER shoulder 12 i 15 SOCKETED 17 ACHE 18 . ARM 26 PART
ceiling -13 .
center 8 .
chain -15 . COME
chair -14 .
chalk -13 $ -9 .
champagne 9 . cork
change -20 . -16 $ -6 ONTO in
changed -10 . 19 $
changeup -9 . -7 COME QUITS
chasing 28 .
cheat -15 .
check -13 .
checked -19 NOT 8 ONTO into
cheese -12 . -11 $
chess -8 . -7 $
chest -20 day -17 drawers -16 BLOW PUT bumped protector -14 high -12 SHAPE bump pass -9 and muscle -7 DAILY hair -6 MOTOR PUSH press 6 that 8 SINCE 9 ONTO pain 11 $ 13 since 14 AGAIN MANY 16 pains when 17 is 20 pressure 22 tightness 23 TIGHTER tight was 24 . 26 felt 30 hurts 31 feels 33 ACHE 36 PAIN 42 TIGHT 55 BE
chewed -7 .
child -20 . i
chill -19 .
chilled -8 . -7 OUT out
chilli -8 .
chillin -18 $ -9 .
chills 14 NIGHTS and night 28 $ 32 .
chilly -10 .
chin 7 .
choked -6 . ONTO
chucking 20 .
city -6 $ .
class -17 $ -12 . 9 and
clay -9 $ .
clean -23 . -13 $
clear -18 . -8 $
cleared -16 . -12 HEIGHT up
cleats -22 . -18 and
click -9 AGAIN KEEP ONTO always -8 in 19 $
clicked 9 .
clicks -17 .
climbing -15 $ 6 .
clobbered 12 . BY by
clock 7 $ 10 .
close -10 . -6 HAND HANDS PART hand 10 $
closed -21 . -12 $
clot -15 .
club -26 . -19 $
clubs -9 . -6 $
clumsy 9 $ 12 and 22 .
clunk 8 .
clunked 11 back 15 OUT out 23 .
clunks 15 .
co 12 . PILL codamol
coach -59 . -36 $ -17 BE -16 HAVE -11 had -8 said wants -7 says
cock 13 back 14 .
codamol 12 . before
coffee 9 $ 13 THING cup
coin 8 .
cold -17 . -15 BE ONTO tub -14 because brew -13 OUT out -11 from -10 morning water -9 outside -8 ACHE SHOULDER SOCKETED shoulder -6 hands 7 this 8 SINCE after 11 HANDS 13 DIGIT fingers 16 sweats 18 $ as 20 SWEATS 30 and
colder 16 . than
collapsed -17 ONTO 16 SINCE after 18 .
collar 13 BONE bone
collarbone 6 HAVE has 10 sticks 18 COME 24 is 30 BE 39 $ 74 .
college -28 . -21 $
collided 28 . BY with
collision 7 $ 18 at 26 .
color 15 .
colour 17 $
come 10 OUT out 12 . LEAK apart
comebacker 15 .
comes 6 and 13 OUT out 22 .
comfortable -18 . -17 $
coming -21 back -10 along 8 $ 13 ONTO 19 OUT out
committee -10 .
compared 8 BY with 23 to 29 .
competition -8 . ONTO
completely 14 .
computer -18 . -8 $
concert -11 $ .
conditioning -18 . -12 $
cone -16 $ .
constant 12 $ 20 .
constantly 12 .
control -9 $ 24 bladder
controlled -17 $ .
cooked -20 .
cork 9 . and
corner 12 . 13 ON ONTO on
corpse 12 $ 13 .
couch 9 .
cough -10 .
coughed 8 $ 14 . 19 HEIGHT up
coughing 19 HEIGHT up 27 .
could -20 HAVE have -18 WENT go -15 do -14 LIFT lift -12 CANT NOT -10 hardly 7 POP pop 10 be 13 $ 15 PUT 18 REACH reach 19 TRAINING 23 SLIP 29 play
couldnt -18 make -13 do sleep -8 tell -7 $ -6 TRAINING throw 9 . 10 COME MOVE move 12 HOLD hold 17 MOTOR lift 22 raise 27 LIFT
count -25 . -16 $
counts -9 . as
couple -20 . -12 times 18 PILL
course -25 . -21 $ -7 ONTO in
court -17 .
cousin -26 .
cow -9 .
crack -9 dawn 10 in 13 ON on 16 and 19 ONTO
cracked -11 THING -8 . MISSILE bat 7 inside 10 loud
cracks -10 .
cramp -28 . ONTO -25 in
cramped -10 . -6 ONTO
cramps -19 .
crap -14 $ .
crash -7 course 8 . 10 BY 23 $
crashed -23 $ -19 ON on -11 . -10 hard -8 SINCE after 18 ONTO 20 BY with 26 into 29 bike
crawling 13 .
crazy 10 $ 11 .
creak -20 .
cream -23 . -16 $
cried -15 $ -8 .
crispy -6 .
crook -20 .
crooked 9 . 12 $
cross -7 .
crossed -20 . -11 $
crowd -25 . -14 $ -13 BE
crunch 7 .
crushed -11 . -7 that
crushing 8 . 9 sensation 11 FEELING
crying -10 .
cue -9 .
cuff -10 .
cup 18 COME and 21 $ 35 .
curb 10 .
curls -6 $ .
curve -15 . -13 BE -9 was -8 and
curveball -9 .
cut -11 GROUND grass -8 DAILY hair 8 $ ONTO PART 11 . 12 BE 19 is 22 from
cutter 14 . 18 $
cycling 8 $ .
dad -21 . -10 BE HAVE -8 $
dads -15 . MISSILE
damn 20 .
dangerous -21 .
dark 7 .
daughter -27 . -19 BE -6 HAVE has
dawn -6 .
day -15 BE was -13 SINCE -12 at -11 ONTO -10 CHANGED ODD off 18 and
days 6 $ .
dead -13 ACHE ARM SOCKETED arm -12 from -11 PART -9 ONTO -7 after -6 LEAK RED red 7 since to 8 and 9 NOT NUMB numb 12 for 13 $ 22 weight
deal -6 $ .
decision -12 . -8 to
deck 10 and 12 . 16 hard
deep 8 ACHE PAIN ache breath 15 . NOT
deer 13 .
defeat -8 $ .
defence -15 . BE
definitely 6 .
deformed 13 $ .
degrees 11 $ 20 .
delay -7 .
delivery -15 .
delt -15 . -14 $
dem 10 .
dent -12 ONTO in 8 where
dented 10 $ .
dentist -30 . -10 $
depends -9 . -6 $
desk -12 . -6 $
deuce -6 .
di 14 ACHE PART SOCKETED
diclofenac 12 .
did -27 . -26 ACHE -20 it -16 $ -14 PART -7 BE 6 COME 16 PUT
didnt -29 . -15 TRAINING -14 throw
die -8 for 14 . 37 $
died -31 . -13 $ -10 ONTO -7 ON on
diet -20 . -12 $
difference -14 $ .
different 6 ONTO from 7 $ 16 .
difficulty 6 to 9 .
dig -15 ONTO in -11 .
digging -11 .
digits 6 .
dips -10 $ .
dirt 14 . 17 VEHICLE bike
dirty -16 .
disappear 23 .
disc -28 . -11 $
discus -7 .
dish -15 .
dislocate -19 . -14 ACHE
dislocated -13 PART -12 DIGIT HANDS -11 finger 6 ONTO 8 ON on 11 $ 14 . 20 ACHE 23 it
dislocation -7 BE 9 ONTO in 16 .
dive 14 . 15 $
diving 19 .
dizzy -19 ONTO -11 BY with 15 . 21 and 29 $
do -28 i -18 . -16 last -12 ACHE THING it -10 if -9 NUM -7 # -6 TRAINING exercises 13 buttons 14 what 15 HEIGHT up 21 DAILY 24 NOT nothing
doctor -16 . knows -11 BE -7 HAVE has 26 PUT put
does -16 . -9 NUMB POP -6 that 8 nothing
doesnt 9 let 13 help 14 MOTOR 17 . 18 stop 32 STOP
dog -28 COME -17 PUT -16 BLOW -10 pulled 17 $
doing -23 ACHE it 16 . 18 flips 25 NOT nothing
done -33 . -21 $
dont -7 know 15 MOTOR work 16 sleep 21 . 23 see
door -9 . -8 BE 10 $
double -21 . -7 $
dove 15 for 18 .
down -12 drain in -9 from 6 at 9 BE is 10 with 11 steps 12 when 13 DAILY stairs 17 BY 18 hard 21 ACHE SOCKETED arm 23 VEHICLE 24 to 25 ARM PART 26 ON on 27 .
dragging -8 . today
drain -14 . -12 $
drank -17 . -6 lot
drawer 14 .
drawers -17 .
dream -13 .
drenched 8 .
drill -22 . -20 $
drilled -14 . -8 BY ONTO by
drills -27 . -22 $
drink -18 .
drive 6 ON on 7 BLOW 8 ONTO 11 $ 17 .
driving 13 .
drone -17 .
droop 14 $ .
drooping 6 $ 7 ON ONTO on 11 .
droops 25 .
droopy 7 $ 10 .
drop -8 SHAPE step 9 $ 12 THING
dropped -13 . ONTO -10 MANY dumbbell -8 CATCH fly -6 CHANGED DULLED GROUND ODD WORN from glove off 7 phone 13 $ cup 14 fork 24 THING
dropping -21 ACHE ARM PART -7 CHANGED ODD ONTO off 7 weight 9 and 27 . 40 THING
drops -12 $ 7 .
drunk 23 .
dry -29 . -8 $
dude 8 FALL QUITS fell 12 BLOW 16 .
dugout 9 $ 12 .
dumb -13 .
dumbbell -14 . BE -10 FALL fell 11 i
dumbbells -9 $ .
dunno -11 . -10 $
during -14 sprints -8 run 9 HOT LEAK warm 10 second 16 TRAINING 19 .
dusky 9 .
dust -7 ON ONTO on
dying -15 .
each 7 NIGHTS night session 19 . 20 TRAINING
ear -6 $ 12 .
earlier -16 ACHE it 15 $
early -37 . -21 $
ears -10 . -6 COME POP PUT popped
eases 11 . 18 ACHE
easy -35 . -22 $
eating 6 VEHICLE horse 16 plenty 21 .
edge 15 $ 19 .
effort -24 . -20 $
egg -7 .
ego -16 .
eh -9 $ .
eight -17 . -9 $ -6 hours
either 11 . POSITION side
elastic -15 . BE
elbow -14 and -13 room -9 HEIGHT up -8 bends 6 at popped tore 7 go 8 STOP gave let 9 BULGE pop swelled 10 down 11 inside 12 $ BE went 13 NOT 15 BLOW GIVES cracked size 16 . clicked 17 COME snapped 18 WENT 20 made 21 SWELL 24 BREAK 28 PUT 30 POP
elbowed 11 . ONTO in
elbows -9 .
electric 7 . 9 BE FEELING feeling 16 SHOCK
electricity -7 . 12 in 14 ONTO
elephant 9 .
elses 7 .
em -19 $ -17 .
embarrassing -8 $ .
empty 9 . 21 for
end -16 $ -11 MISSILE THING bat 11 ACHE it 13 PART SHOULDER collarbone 14 . 25 life
ended 11 ON ONTO on
ending 17 life 26 ACHE it 36 .
ends 16 $ .
energy 9 .
engine -15 .
english -9 .
enough -15 . -8 $
entirely -20 .
er 9 .
escalator 7 $ .
even 58 .
evening -12 $
every -13 $ -10 PUT set -8 POSITION -6 morning 9 PART SHOULDER SOCKETED joint 12 TRAINING 14 BREATH breath 17 minute 18 NIGHTS night 20 hour 30 .
everyone -7 BE 6 . 14 would
everything -22 $ -13 is -8 in 8 COME 13 BE PUT went 14 feels 15 WENT 26 today
everythings 25 .
everywhere -23 .
ew -25 $ .
ex -21 . -13 at
exam -30 . -21 $
exams -28 . -10 $
except 20 NUMB numb 22 .
excitement -13 . -10 $
excuse -6 .
exercise -28 . -21 $
exercises -13 . BE
exhausted 13 $ 22 for 33 .
exploded 19 . ONTO
external 24 . rotation
extras -6 $ .
eye -8 drills
eyes -16 BE are 20 $
face -16 $ 7 feels 9 COME PUT WENT went 13 was 15 . 17 is planted 18 NOT 35 BE
faced -6 .
failed 6 .
faint 21 $ 27 .
fainted -10 at 14 in 15 $ ONTO 27 SINCE after 39 .
fair -17 .
fake -13 . -7 $
fall -11 ON on 8 ASLEEP asleep
"""
