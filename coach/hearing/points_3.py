"""The points of words and of pairs of words, in tenths, angle to fall.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
angle 13 $ .
animal 8 $ .
ankle -34 . -12 COME CRASH PUT rolled -6 ONTO
another -8 minute 11 . 17 OPPONENT player
anterior 30 .
anthem -21 .
ants 6 ONTO in walking 17 .
any 24 .
anymore 26 $ 27 .
anything -6 $
apart 10 . 12 ONTO
are -21 TIGHT -18 fine -16 okay -11 sore sweaty -10 having -9 ONTO SWEATS THING TIGHTER tight toast -8 puffy -7 MISSILE RED TIRED heavy jello red shot tired 6 . WOBBLY white 7 WEAK thick weak 8 DROPPING dropping 9 BE 10 GROUND SWELL ice paining 11 COLOUR COME 13 FALL falling getting 15 OUT 16 leaking numb 18 blue 19 CLUMSY NUMB clumsy 24 WENT swollen 30 stiff
area 6 BE 10 .
arent 15 .
arm -25 isnt -22 felt -20 VEHICLE slot -17 LOOSE did loose -16 HOT -15 ON on -14 that -13 TIRED tired -12 care good i -10 CHANGED ODD for -9 LEAK -8 last today up -7 fell was -6 feels 6 PAIN after came doesnt hurts no 7 $ 8 BE BLOW BUZZ KEEP is keeps stops 9 NOT blown couldnt folded from gives has past 10 died 11 ACHE HAVE LOOK ONTO SWELL blew buckled falls looks out shakes turned wont wouldnt 12 CANT FEELING feeling quit 13 WEAK became done weak 14 collapsed went 15 . COME WENT 16 AGAIN when 18 stuck 19 STOP 20 drops in to 22 DROPPING 26 gave 27 with 30 BY 32 GIVES 55 QUITS
armpit 11 $ 20 .
arms -11 BE are -9 . 15 $
around -22 # NUM -10 MANY 14 PART SHOULDER 33 .
arthritis -17 . ONTO in
as -23 $ -20 OPPONENT kid -19 AGAIN KEEP always -18 joke -17 would -12 ACHE before it -8 usual -6 you 11 chalk 12 THING yesterday 13 hell 14 though 16 big 28 i 33 if
aside 17 .
ask -7 .
asked -16 . -8 about
asking -9 $ .
asleep -9 for -8 before -6 in 13 SINCE and since
aspirin 18 .
asthma -10 .
at -30 GROUND -24 front -22 gym -19 game -18 THING -17 plate -12 $ NOT no -10 MISSILE concert this -9 SEAT midnight track -8 rep -7 aunts five its six -6 bus field four three 6 ARM MANY back 7 # first 8 home 9 hospital net release 10 SHOULDER shoulder top 11 SOCKETED dinner 12 side 14 ACHE HAND HANDS training 15 . NIGHTS TRAINING night 17 lunch 19 practice 23 POSITION 25 PART 30 second 40 rest
ate -13 $ -8 THING 16 GROUND 18 pavement 19 it 28 ACHE
atmosphere -18 .
attack -12 .
atv 19 $ 26 .
aunts -7 .
average -9 .
awake -11 by 10 $ BY 22 with 28 .
away -21 SINCE -19 . -6 after
awful 13 $
aye -7 .
baby -35 . -21 $
back -22 ACHE -21 SOCKETED -19 SHOULDER shoulder -16 BE -15 $ -14 SEAT seat -13 is -12 . to -11 PART -10 POP -9 COME PUT -8 into -7 popped -6 NOT ON TIGHT TIGHTER on tight 7 and 9 SINCE anymore 15 HAND HANDS hand 16 when 28 ONTO 43 in
backwards -10 .
badly -17 . -14 $
bag -31 $ -20 .
balance -9 ONTO 11 . 21 BE is
ball -13 BE came -9 was -8 but -7 LAND landed 6 SHOULDER SOCKETED shoulder 7 ACHE 8 QUITS 9 PART 11 . 13 # BLOW NUM falls 16 hit 19 NOT 31 and
balled 8 . HEIGHT up
balloon 8 animal 12 .
ballooned 18 .
balls -24 . -17 $
band -27 . -22 $ -21 BE -14 is -10 today
bandage 10 .
bands -15 $ .
bang -10 in 6 . 9 ON on
banged 6 SHOULDER shoulder 16 ACHE PART SOCKETED
bar -27 . -23 $
barely -27 . -17 HAVE -14 noticed -6 $
barking 7 .
bars -6 .
base 11 and 13 . 17 $
baseman 18 $ .
basket -6 .
basketball 19 $ .
bat -7 SINCE after 7 $
bath -8 $
bats -8 .
batter -18 . -16 ONTO in
battery -23 BE is -6 died
be -11 ONTO 18 better 22 dead 25 . 29 TIRED tired
beaned 11 . ONTO in
beat -14 .
beating 7 . 18 fast
beats 19 FLUTTER irregular 24 $ 38 .
became 9 COLOUR 11 NUMB numb 12 WEAK weak 26 .
because -24 i -16 THING -13 rain -7 we 6 it 9 HOLD MOTOR POWER grip 11 ARM arm 13 lying 14 HAND hand 16 HANDS 22 PAIN pain 26 SHOULDER shoulder 33 SOCKETED 42 PART 43 ACHE
become 9 UNSTABLE WOBBLY unsteady 24 .
bed -15 at 6 AGAIN every 9 and 11 $ 12 BE is
bee -21 . -18 $
been 39 .
beer -19 . -12 SINCE after
before -34 surgery -29 ONTO in -28 operation -14 first -13 alarm -9 speech 10 AGAIN every 11 it 13 . 18 game practice 20 each 22 training 24 MANY 26 i 39 TRAINING
behind -15 ONTO -10 ACHE BY PART SHOULDER SOCKETED in shoulder with -8 ON on -6 back 8 . 9 BE 10 ELSEWHERE MISSILE knee 11 CHEST breastbone
believe 7 .
bell -13 . -12 rung
belly -7 .
below 6 ACHE ARM ELBOW MISSILE elbow 14 HAND HANDS wrist 18 PART 22 .
bench 7 $
bender 25 .
bends -8 .
bent -7 . 6 $
best -36 .
better -22 than -18 MANY -14 AGAIN every -10 . -7 $ 25 CHANGED ODD ONTO off
between -9 ACHE PART SHOULDER SOCKETED shoulder -8 MANY NUM -7 # clubs 10 . 26 LEG legs
bicep -8 $ 12 . 14 BE 15 COME CRASH PUT rolled
biceps -20 $ . 8 POP
bicycle 15 .
big -14 $ -6 deal 8 OPPONENT 9 POP 16 as 22 . and
bigger 14 . 28 than
bike -10 for 10 COME PUT 16 . 18 ONTO 26 CRASH
bill -14 $ .
bird -18 .
birth -7 .
birthday -22 .
bit 9 .
bite -25 . -8 SWELL swelled
bites -21 . ONTO
black 8 and 9 for 21 .
blacked 26 . OUT out
blackout 14 . ONTO
bladder 19 $ 24 .
blade -13 COME -6 .
blades -10 . -9 $
bleachers 10 $ .
blew 15 HEIGHT up
blind -21 .
blister -32 . -20 ONTO -15 ON on -12 $
blisters -15 .
bloke -13 .
blood -21 TIGHT pressure -14 clot 16 . 22 $
blotchy 7 .
blow -13 to
blue -10 about -8 BY with -6 . collar skies 9 ELSEWHERE FACE lips 12 SINCE after 15 and 22 DIGIT HANDS PART
bluish 16 .
board -19 . -16 $
boards 14 $
body 6 is 7 WENT became 8 aches
bodys -7 .
boiling 23 .
bolt 8 . ONTO
bomb -7 .
bone -8 ON ONTO on 6 BULGE sticking 11 PUT SLIP 14 LOOK looks 17 but 18 COME 29 is 36 . 37 BE
bones -10 . -7 $
boots -13 .
bored -16 .
boredom -15 . -9 $
boring -9 .
both -19 .
bottle 12 .
bottom 17 .
bowl 14 .
bowled -18 . MANY
box 16 $ 25 .
boy -10 .
boys -15 $ -12 .
bp -12 . -8 $
bra 17 .
brace -13 .
braces -18 .
brain -13 . BE is
branch 9 POP 10 .
break -13 . -9 ONTO
breakfast 18 $ 22 .
breaking 17 .
breast 8 .
breastbone 15 $ 19 .
breath -19 SINCE -12 ONTO from -9 after 9 $ 11 at 14 . 16 sitting
breathe 6 ONTO in 29 $ 30 .
breathing -10 drills 9 ONTO in 18 $ 39 .
breathless 27 .
brew -12 .
brick -16 .
brief 20 .
bro -24 .
broke -31 . -12 ACHE HANDS -11 $ and -10 SOCKETED THING -9 DIGIT -8 her -7 ARM HEIGHT MISSILE arm up -6 bat 6 in 15 SHOULDER 18 collarbone
broken -15 PART 14 $ 16 i
brother -22 . -19 BE -17 HAVE has -14 $ -13 FALL QUITS fell
bruise 8 $ .
bruised -15 . -8 PART 6 $
bruk -26 .
bubble 10 . wrap
bucket -10 . -9 $
buckets -8 .
buckle 8 . and
buckled 8 .
bucks -10 .
buddy -41 . -8 COME
bug 6 .
bulge -7 $ 15 ONTO in
bullpen 9 SINCE
bum 6 .
bump -8 in -7 ONTO 7 BULGE sticking 11 $
bumped -16 OPPONENT -6 HEIGHT up 7 ONTO into 8 SHOULDER shoulder 9 PART SOCKETED 11 ACHE
bunch -13 .
bunched 10 . HEIGHT up
burn -29 . -20 ONTO -15 ON on -10 $ -6 in
burned -26 . -10 ONTO
burning -6 . 12 HEIGHT up
burns -6 .
burpees -6 .
burrito -8 .
burritos -13 .
burst -19 . -7 $
bus -44 . -16 $ -7 BE was -6 STOP stop
bust 8 .
busy -32 . -31 $
but -27 not -24 nothing -23 only -20 that -18 # -16 it we -15 MANY NUM -13 good -11 NOT ok -10 thats -8 SINCE normal then -6 didnt 6 ON on 7 . ARM KEEP kept 8 SHOULDER 9 half i 10 ELBOW MISSILE elbow 11 AGAIN HAVE 15 HAND hand im 20 no 22 is 23 BE DIGIT fingers 30 NUMB PART 32 HANDS
butt -14 . -7 COME -6 $ BE PUT WENT went
butter -28 . -20 $
butterflies -11 . ONTO in
butterfly -6 PUT
button 6 .
buttons 25 $ .
buzz 16 .
buzzing -8 SINCE after 13 . 20 $
buzzy 15 SINCE after 22 .
by -26 CRASH accident -22 $ -13 ELSEWHERE 7 SOCKETED shoulder 8 # 9 ACHE TRAINING pitch 10 SHOULDER 11 PART team 15 THING bat line 16 thread 20 MISSILE linebacker 21 . car 22 VEHICLE 23 itself 33 OPPONENT
cage -10 .
cake -24 . -19 $
calf -6 after 7 LEAK SINCE 9 SWELL 18 $ 19 . 22 is 23 BE
call -25 . -18 $ -8 ACHE
callus -21 .
calm -12 $ .
calves -10 . -8 BE
came -23 HEIGHT up -16 through -7 in 8 LEAK ON on 9 . UNDONE 13 back partway 14 OUT 15 out
can -30 LIFT i -25 lift -16 do -9 . -7 BE REACH -6 COME 7 see 12 only 14 throw 30 TRAINING
cannon -30 . -22 $
cannot -17 HOLD hold 12 raise 18 $ 20 lift 22 . 28 LIFT
cant -20 wait -15 remember -10 raise -7 $ 6 lift 8 STOP stop throw 9 PUT put 10 close 13 POWER grip 14 see sleep 16 hold lie 19 PUSH open 20 LEAK 21 HOLD 25 MOTOR 27 tell 37 .
cap -18 .
captain -9 . -7 $
car -15 MOTOR wash -7 CANT NOT wouldnt 13 crash 15 DAILY door 16 . 29 accident 36 CRASH
care -12 . -7 done
carried -20 . -14 shopping
carry -13 .
carrying 6 .
cart 18 $ .
cartwheel -12 $ .
cast -17 .
cat -34 . -6 WAKE woke
catch -11 $ -10 . -8 TRAINING play 7 # NUM
catcher -10 BLOW hit -6 BE HAVE took 15 COME 16 . 20 $
catchers -10 . 6 THING mitt
catches -9 . 8 and
catching -13 $
caught -6 NUM 6 MISSILE myself 10 ACHE
cause 6 arm 9 SHOULDER shoulder 10 i 14 SOCKETED 16 ACHE 18 ARM 21 . 23 PART
ceiling -13 .
center 8 .
chain -16 . COME
chair -15 .
chalk -12 $ -9 .
champagne 9 . cork
change -22 . -16 $ -7 ONTO -6 in
changed -9 . 20 $
changeup -10 . -7 COME QUITS
chasing 26 .
cheat -16 .
check -14 .
checked -19 NOT 7 ONTO into
cheese -11 . -10 $
chess -9 . -7 $
chest -20 day -16 BLOW PUT bumped drawers -15 high protector -12 SHAPE bump -11 muscle pass -9 and -7 DAILY hair 6 that 9 $ SINCE pain 10 ONTO 14 AGAIN MANY 15 since when 16 pains 22 is pressure 23 TIGHTER tight was 24 . tightness 27 felt hurts 31 ACHE 33 feels 34 PAIN 45 TIGHT 61 BE
chewed -9 .
child -21 . -20 i
chill -19 .
chilled -8 . -7 OUT out
chilli -9 .
chillin -18 $ -9 .
chills 13 NIGHTS and night 28 $ 32 .
chilly -11 .
choked -6 . ONTO
christmas -6 .
chucking 18 .
city -6 $ .
class -18 $ -10 . 9 and
clay -9 $ .
clean -21 . -10 $
clear -13 . -9 $
cleared -16 . -13 HEIGHT up
cleat 6 .
cleats -20 . -18 and
click -10 ONTO -9 AGAIN KEEP always in 17 $
clicked 9 .
clicks -18 .
climbing -16 $ 6 .
clobbered 13 . BY by
clock 7 $ 8 .
close -11 . -7 HAND HANDS PART hand 9 $
closed -19 . -12 $
clot -14 .
club -27 . -19 $
clubs -10 . -7 $
clumsy 9 $ 12 and 21 .
clunk 7 .
clunked 11 back 15 OUT out 22 .
clunks 14 .
co 12 . PILL codamol
coach -58 . -35 $ -15 BE HAVE -11 had -8 said wants -6 says
cock 13 . back
codamol 12 . before
coffee 9 $ 14 THING cup
coin 7 .
cold -16 . tub -15 BE ONTO -14 OUT out -13 because -12 brew -11 from morning -9 ACHE SHOULDER SOCKETED shoulder water -8 outside -6 GROUND beer hands 7 SINCE after this 9 HANDS 13 DIGIT fingers 16 sweats 17 as 18 $ 20 SWEATS 29 and
colder 16 . than
collapsed -19 ONTO 17 . SINCE after
collar 13 BONE bone
collarbone 6 HAVE has 9 sticks 19 COME 25 is 31 BE 37 $ 74 .
college -28 . -21 $
collided 28 . BY with
collision 7 $ 17 at 26 .
color 18 .
colour 17 $
come 9 OUT out 12 LEAK apart 15 .
comebacker 14 .
comes 7 and 14 OUT out 24 .
comfortable -18 $ .
coming -22 back -11 along 8 $ 9 . 14 ONTO 18 OUT out
committee -10 .
compared 8 BY with 22 to 28 .
competition -9 ONTO -8 .
completely 14 .
computer -17 . -8 $
concert -10 $ .
conditioning -18 . -11 $
cone -15 $ .
constant 12 $ 20 .
constantly 11 .
control -11 $ 24 bladder
controlled -18 $ .
cooked -20 .
cork 9 . and
corner 11 . 13 ON ONTO on
corpse 11 $ 12 .
couch -6 $ 10 .
cough -11 .
coughed 7 $ 17 HEIGHT up 18 .
coughing 19 HEIGHT up 28 .
could -19 HAVE have -18 WENT go -14 LIFT lift -13 do -12 CANT NOT -10 hardly 6 POP pop 13 $ be 14 PUT 18 REACH TRAINING reach 23 SLIP 28 play
couldnt -19 make -11 do -9 $ sleep tell -6 TRAINING throw 8 . 9 COME MOVE move 11 HOLD hold 14 MOTOR 16 lift 21 raise 27 LIFT
count -26 . -15 $
counts -9 . as
couple -16 . -13 times 17 PILL
course -25 . -20 $ -7 ONTO in
court -14 .
cousin -25 .
cow -9 .
crack -10 dawn 10 in 13 ON on 15 and 20 ONTO
cracked -12 . -11 THING -8 MISSILE bat 6 inside 9 loud
cracks -10 .
cramp -26 . ONTO -24 in
cramped -10 . -6 ONTO
cramps -20 .
crap -14 $ .
crash -7 course 8 . 9 BY 21 $
crashed -26 $ -20 ON on -11 . -10 hard -9 SINCE after 6 VEHICLE 15 ONTO 20 BY with 26 into 27 bike
crawling 12 .
crazy 9 $ 13 .
creak -20 .
cream -22 . -16 $
cried -15 $ -6 .
crispy -6 .
crook -24 .
crooked 6 . 12 $
cross -7 .
crossed -20 . -11 $
crowd -27 . -14 $ BE
crunch 7 .
crushed -12 . -7 that
crushing 7 . 8 sensation 10 FEELING
crying -9 .
cue -8 .
cuff -10 .
cup 18 and 19 $ COME 32 .
curb 10 .
curve -14 . -13 BE -9 was -8 and
curveball -9 .
cut -10 GROUND grass -7 DAILY hair 8 . ONTO 9 $ PART 13 BE 17 is 20 from
cutter 11 . 18 $
cycling 9 $ .
dad -22 . -10 BE HAVE -8 $
dads -15 . MISSILE
damn 20 .
dangerous -21 .
dark 7 .
daughter -28 . -20 BE -7 HAVE has
dawn -6 .
day -14 BE was -12 ONTO SINCE at -10 CHANGED ODD off 17 and
days 6 $ 7 .
dead -13 ACHE ARM SOCKETED arm -12 from -10 PART -8 ONTO after -6 LEAK RED red 7 since 8 and 9 . 10 NOT NUMB numb to 13 for 15 $ 21 weight
deal -7 . -6 $
decision -13 . -9 to
deck 11 and 13 . 17 hard
deep 8 ACHE PAIN ache breath 13 . 15 NOT
deer 11 .
defeat -8 $ .
defence -15 . -14 BE
definitely 6 .
deformed 13 $ .
degrees 12 $ 20 .
delay -7 .
delivery -17 .
delt -16 . -14 $
dem 9 .
dent -12 ONTO in 8 where
dented 9 $ .
dentist -32 . -9 $
depends -7 .
desk -12 . -6 $
deuce -6 .
di 14 ACHE PART SOCKETED
diclofenac 14 .
did -29 . -27 ACHE -19 it -16 $ -14 PART -7 BE PAIN 6 COME 14 PUT
didnt -29 . -17 TRAINING -16 throw -6 MOTOR 6 $
die -7 for 12 . 38 $
died -31 . -15 $ -9 ONTO -7 ON on
diet -26 . -17 $
difference -13 $ .
different 17 .
difficulty 6 to 8 .
dig -15 ONTO in -10 .
digging -10 .
digits 6 .
dips -10 $ .
dirt 14 . 17 VEHICLE bike
dirty -16 .
disappear 25 .
disc -23 . -11 $
discus -7 .
dish -15 .
dislocate -19 . -14 ACHE
dislocated -16 PART -12 DIGIT HANDS -11 finger 7 ONTO 9 ON on 13 . 14 $ 18 ACHE 23 it
dislocation -7 BE 9 ONTO in 15 .
dive 13 $ .
diving 19 .
dizzy -19 ONTO -10 BY with 13 . 22 and 29 $
do -30 i -20 . -13 THING last -12 ACHE it -9 if -7 NUM -6 TRAINING exercises 14 HEIGHT buttons up 15 what 21 DAILY 23 NOT nothing
doctor -17 knows -15 . -11 BE -7 HAVE has 27 PUT put
does -17 . -9 NUMB -8 POP 8 nothing
doesnt 9 let 14 MOTOR help 15 . 17 stop 32 STOP
dog -28 COME -17 BLOW PUT -10 pulled 15 $
doing -6 THING 16 flips 19 . 25 NOT nothing
done -32 . -20 $
dont -8 know 14 work 16 MOTOR sleep 20 . 22 see
door -9 . BE 10 $
double -22 . -7 $
dove 15 for 18 .
down -13 in -12 drain -8 from 6 at 9 BE is with 12 DAILY stairs steps 13 when 17 hard 18 BY 21 ACHE SOCKETED arm 23 VEHICLE to 25 ARM ON PART on 27 .
dragging -8 . today
drain -15 . -12 $
drank -17 . -6 lot
drawer 14 .
drawers -16 .
dreadful 6 .
dream -13 .
drenched 8 .
drill -22 . -20 $
drilled -15 . -8 BY ONTO by
drills -26 . -21 $
drink -18 .
drive 6 BLOW 7 ON on 8 ONTO 13 $ 18 .
driving 13 .
drone -18 .
droop 16 $ .
drooping 6 ON ONTO on 10 .
droops 26 .
droopy 7 $ 9 .
drop -8 SHAPE step 9 $ 12 THING
dropped -14 . -10 CATCH MANY ONTO dumbbell -8 fly -6 CHANGED DULLED GROUND ODD WORN from glove off to 6 phone 11 $ 13 cup 14 fork 25 THING
dropping -21 ACHE ARM PART -7 CHANGED ODD ONTO off 7 weight 8 and 27 . 40 THING
drops -11 $ 6 when 7 .
drunk 26 .
dry -30 . -10 $
dude 8 FALL QUITS fell 11 BLOW 15 .
dugout 9 $ 14 .
dull 6 .
dumb -13 .
dumbbell -14 BE -11 . FALL fell 12 i
dumbbells -9 $ .
dunno -11 . -10 $
during -16 sprints -8 run 8 HOT LEAK warm 10 second 18 . TRAINING
dusky 9 .
dust -7 ON ONTO on
dying -18 .
each 6 session 7 NIGHTS night 20 . TRAINING
ear -6 $ 12 .
earlier -17 ACHE it 15 $
early -40 . -22 $
ears -11 . -6 COME POP PUT popped
eases 11 . 17 ACHE
easy -35 . -22 $
eating 16 plenty 21 .
edge 15 $ 19 .
effort -22 . -17 $
egg -7 .
ego -16 .
eh -9 $ .
eight -16 . -10 $ -7 hours
either 11 . POSITION side
elastic -15 . BE
elbow -15 and -12 room -8 HEIGHT bends up 6 at tore 7 $ go 8 STOP gave let 9 BULGE pop swelled 10 down 11 BE inside went 13 NOT 14 GIVES 15 size 16 BLOW COME clicked cracked 17 WENT snapped 20 . 21 made 22 BREAK SWELL 27 PUT 32 POP
elbowed 11 . ONTO in
elbows -8 .
electric 7 . 8 BE FEELING feeling 17 SHOCK
electricity -7 . 11 in 13 ONTO
elephant 10 .
elses 7 .
em -20 $ -19 .
embarrassing -8 $ .
empty 7 . 22 for
end -16 $ -11 MISSILE THING bat 10 ACHE it 12 PART SHOULDER collarbone 13 . 25 life
ended 11 ON ONTO on 12 .
ending 18 life 25 ACHE it 34 .
ends 16 $ .
energy 8 .
engine -19 .
english -9 .
enough -14 . -8 $
entirely -20 .
er 9 .
escalator 7 $ .
even 58 .
evening -12 $
every -13 $ -10 PUT set -9 POSITION -6 morning 9 PART SHOULDER SOCKETED joint 10 time 11 TRAINING 13 BREATH breath 15 minute 19 NIGHTS night 20 hour 33 .
everyone -7 BE 13 would
everything -25 $ -14 is -10 in 8 COME 13 BE PUT feels went 14 WENT 26 today
everythings 24 .
everywhere -22 .
ew -25 $ .
ex -20 . -12 at
exam -33 . -21 $
exams -28 . -10 $
except 21 NUMB numb 22 .
excitement -12 . -9 $
excuse -6 .
exercise -29 . -21 $
exercises -16 . -12 BE
exhausted 13 $ 21 for 34 .
exploded 19 . ONTO
external 25 . rotation
extras -6 $ .
eye -8 drills
eyes -15 BE are 20 $
face -16 $ 6 feels 9 COME PUT WENT went 12 was 13 . 17 is planted 18 NOT 36 BE
faced -6 .
failed 7 .
faint 20 $ 27 .
fainted -13 at 14 in 16 $ ONTO 24 SINCE after 41 .
fair -15 .
fake -13 . -7 $
fall -16 ON on 8 ASLEEP asleep
"""
