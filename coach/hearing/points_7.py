"""The points of words and of pairs of words, in tenths, sling to zipper.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
sling -6 .
slip -14 and -11 OUT out -10 . -9 ONTO 22 $
slipped -15 mind -13 but -12 HEIGHT ONTO -11 past -8 . ON disc into on 7 in 9 OUT out 15 OPPONENT forward 19 $ 23 and
slippery -19 . -14 i
slipping -13 ONTO
slot -22 . -16 COME QUITS -11 DROPPING dropped -7 BE
slow -8 . 6 $
slowly -6 .
slump -19 .
slurred 20 $ 22 .
slurring 7 and 20 $ 23 .
smacked 10 . ACHE PART SHOULDER SOCKETED shoulder
small 11 DIGIT HANDS PART 20 BULGE COME PUT pop 27 POP 39 .
smashed -24 . -6 ONTO
smell -14 . 16 $
smells 14 $ .
smh 10 $ .
smidge -9 $ -7 .
smoked -17 . -6 ONTO in
smooth -21 . -13 $
snacks -6 $ .
snap -8 BE decision -6 throws 8 $ 10 and 16 . 18 in 19 ON on 32 ONTO
snapped -17 . -9 $ 14 BREAKS_LIKE DULLED rubber
snapping 9 sound 19 .
sneezed -9 .
snooze -8 .
snore -10 .
snow -27 . -22 $
so -10 .
soaked -11 to 15 BY through with 19 .
soaking 10 SHEETS 11 .
sock 13 .
socket -15 wrench 6 when 8 $ 12 ON on 13 for 14 ONTO and 23 .
soda 12 .
sofa -8 .
soft -15 .
softball 11 $
somebody 13 BLOW FALL QUITS fell 14 COME 15 else 25 .
someone 6 ran 7 BE elses is 9 PUT bumped 14 BLOW 36 .
something 6 ONTO in snapped 8 SLIP rip 9 ARM GIVES PART gave 13 ripped 14 BE FRACTURE broke 19 popped tore 22 for 23 $ 35 PUT 37 COME 41 BREAK 45 . 53 POP
sometimes 6 i 20 $
somewhat 18 .
son -20 . -16 BE HAVE has
song -27 .
soon -13 .
sore -33 ONTO -29 from -27 . -13 but -9 $ PART -6 in 21 at
soreness -22 . -14 ONTO in
sorry -11 $ .
sort 17 .
sorta 19 .
sound 8 . 9 BE COME SINCE came then
sounded 23 . BREAKS_LIKE
spaghetti 8 $ 10 SINCE 17 .
sparks 17 .
spear -16 .
speech -16 $ 8 COME 14 was 16 is 22 . 28 BE
speed -17 SHAPE bump 13 . 24 $
spell 6 . 8 $
spicy -11 . -8 $
spiked -10 to 14 .
spikes -27 .
spilled -10 .
spin -10 .
spine -8 .
spiral -13 .
spirit -20 .
splitting 24 .
spoon 14 $ 26 .
spot -26 $
spots 22 .
sprained -16 . -7 ELSEWHERE ankle
spread 7 .
spreading 11 .
spring -24 . -17 BE 9 $
sprint 11 $ 12 .
sprints -21 . -10 $
squad -26 .
square 6 .
squat -16 .
squats -29 . -27 $
squeezing 23 .
stabbing 8 ACHE PAIN pain 9 ONTO in 22 .
stable -29 $ .
stadium -13 $ .
stage 20 $ 29 .
stairs 9 . 11 $ at 14 and
standing -13 $ 9 . 11 HEIGHT up 21 here
stands 17 .
star -17 .
start -7 . 6 $
started -27 $ -26 . 7 NUMB tingling
starts -18 . -7 $
static 9 in 14 .
stats -8 .
stay 21 .
stayed -14 upright -12 . -9 HEIGHT up
staying -14 .
stays 21 .
steady -24 . -22 $
step 9 at 13 and 26 .
steps 26 $ 32 .
stick -13 .
sticking 12 HEIGHT up 24 OUT out 30 .
sticks -20 $ 6 HEIGHT up 19 OUT out
sticky -33 .
stiff -26 . -24 $ -18 first -17 from -10 ON on -9 at -6 ONTO 10 and 16 in 24 for
stiffness -10 .
still 13 .
stinger 10 .
stings -15 $ -14 .
stitch -18 ONTO -17 in -13 . 7 BE COME came
stitches 7 POP PUT are popped 9 BE COME 13 HAVE LEAK have 31 .
stomach -17 BE PAIN -16 hurts -12 $ ACHE -7 is 6 . 25 bug
stone 15 COLD NOT cold without 20 .
stood 16 . HEIGHT up
stop -16 if -8 $ at 13 PAIN 15 ACHE
stopped -7 .
stops 27 .
storm -18 . -14 $
stove 23 and 24 .
straighten 13 . ACHE it
strange 13 .
strap -9 .
streak -9 $ .
streaks 6 BE COME WENT going 25 .
street -15 . -11 $
strength -7 is 9 $ 14 ON ONTO on 16 COME 17 vanished 31 .
strep 8 . 13 and
stress -9 .
stretch -28 . -16 $ -9 ONTO in
stretched -26 . -12 $
stretches -18 .
stretching -20 .
strikes 13 .
stroke -10 . -8 $
strong -42 $ -15 NOT -12 ACHE -9 no 6 ON ONTO on 11 PAIN pain 16 today 26 as
stronger -26 .
struck -21 OUT out -17 .
struggled -8 .
struggling 12 to
stuck -14 ONTO -7 ON in on 9 . 25 halfway
study -13 $ .
stuff 9 COME 19 . 23 $
stumble 7 .
stumbled 8 .
stung -22 . -9 BY by
sublux 12 $ 26 .
subluxation 18 .
subluxed 6 $ 28 .
sucking 10 . BREATH
sudden 17 $ 35 .
suddenly 48 .
sugar -28 . -24 and
suicidal 24 .
suicide 17 $ .
suit -30 .
summer -31 . -21 $
sun -24 . -11 $
sunburn -14 . ON ONTO on
sunken 10 .
sunscreen -14 .
supple -27 $ .
surgery -20 and -16 . but -14 $ 11 BE 14 is 16 holes
surgical 15 WOUND wound 29 .
sushi -11 .
sweat 9 . 11 MANY
sweater 8 .
sweating -19 because 13 NIGHTS night 16 and
sweats -12 SINCE 18 and 24 $ .
sweaty -20 . -12 $ -10 HAND HANDS PART 8 and
sweet -25 .
swell -11 $ -10 . 10 HEIGHT up
swelled -6 SINCE after 12 HEIGHT up 21 $ 28 .
swelling -36 BE -21 is -15 COME WENT -10 crowd -9 PUT went 8 and at 10 up 12 HEIGHT 21 . ONTO 23 in 31 $
swells -11 . -9 $
swim -12 .
swimming -8 $ .
swing -10 .
swole 21 . 25 HEIGHT up
swollen -26 from -8 HEIGHT NOT not up 6 since 7 MISSILE 8 ON on today 9 PART 11 HAND HANDS hand maybe sleeve 12 and 15 $ 16 i 17 in 29 WORN 30 .
table -11 $ -9 .
tablet 21 before
tablets -11 . -8 $
tackle 13 $ 19 .
tackled 6 and 19 . 21 $
tad -15 $ 6 .
tailgate -6 .
take 6 deep ibuprofen 8 tylenol 16 . 18 painkillers 36 PILL
takes 22 .
taking 17 PILL 27 .
talk 9 .
tan -12 $ .
tank -16 $ .
tap -13 . -6 $
tape -41 . -18 $ -15 BE -8 ON ONTO on -7 COME came
target -8 .
tattoo -23 . ON ONTO on
tea -12 . -6 only 6 ONTO
team -41 . -26 $ -18 BE -14 mate -13 BLOW -9 is
teammate -11 . -8 POP -7 QUITS collapsed
tear 15 $ 23 .
tearing 7 BE feeling 8 sensation 13 FEELING 16 .
teeth 15 $ 21 .
tell -22 you -6 $ 8 HOT LEAK hot 10 when
telling -13 .
temp 7 and is 9 BE 11 # FEVERISH FEVER_F NUM 20 $ 38 .
temperature 9 and 19 is 22 # FEVERISH NUM 24 was 34 BE 43 $ .
ten -20 $ -6 hours 17 minutes
tender 7 . SINCE after 10 $
tenderness 17 .
terrible 8 .
test -40 . -25 $
th -13 grade -10 $
than -26 yesterday -20 SHOULDER shoulder -19 in -17 ONTO -14 but -13 i -9 SOCKETED THING anything -6 PART 7 POSITION side 12 before 15 . 16 it 30 usual 33 normal 42 $
thank -9 .
that -19 is -17 BE -15 ONTO in -14 PAIN hurt set -12 win -11 it was -10 $ -8 PUT -7 joke -6 . MISSILE 6 NUMB 7 nothing 8 MOTOR throw 9 COME goes never 15 wasnt 18 ARM arm 19 wrist 20 SOCKETED 21 doesnt hand 24 POSITION side 35 HAND HANDS i 40 NOT 44 PART
thats -30 . -15 $ when -8 normal
the -12 .
their -11 . 6 OPPONENT
them -43 . -38 $
then -20 $ -18 fine good -16 # NUM -10 arm -8 HAND -7 MANY 7 SHOULDER shoulder 9 clunked 12 came no 13 ELBOW MISSILE elbow it 16 BE TRAINING 17 ACHE did i 18 POP back 19 PUT 23 nothing 24 COME 32 . NOT
there -10 $ -8 NOT wasnt -7 HAVE has 7 are 10 AGAIN every is 11 in 13 # NUM before 14 . BE 15 ONTO 19 time
theres 6 dead 8 NOT 9 LEAK dent 10 lump 23 SHAPE 53 .
thermometer 10 .
these -20 . -15 $
they -11 fixed -9 are -8 COME -6 . DROPPING QUITS dropped 6 stay 7 were 14 NOT dont
theyd 8 . BE be
theyre 12 .
thick 10 $ 17 and 42 .
thigh -6 .
thing -6 $ 9 is 14 . 16 BE SLIP 23 COME
things 19 .
think -8 im 6 ARM SHOULDER 7 it 8 SOCKETED 9 DIGIT HANDS 13 ACHE i 17 PART 24 about 30 .
thinking 14 ending 25 . 29 about
third -7 $ -6 POSITION SEAT position 10 MOTOR TRAINING throw
thirty 8 .
this -18 BREAKS_LIKE -17 time -14 TRAINING -13 THING -12 $ exercise -10 MOTOR point -9 ARM arm -8 DAILY -7 band 8 month 11 season 14 PART 16 week 18 HANDS 22 morning
thoracic -10 .
those 8 fingers 9 . 13 DIGIT HANDS PART
though 29 $ 42 .
thought 19 it 20 ACHE 31 .
thoughts 9 ending 17 .
thread 15 .
three -15 $ . -9 OUT out -8 at -7 and -6 times 10 NIGHTS nights 13 DIGIT HANDS PART fingers 17 weeks
threw -23 BY with -20 hard -10 MANY THING many -9 # NUM -6 TRAINING pen 11 MISSILE ball 13 and 33 $
throat -24 . -9 ACHE PAIN
throbbing 20 BE 23 $ 40 .
throbs 7 NIGHTS night 32 .
through -14 PUT set -13 $ 7 practice 11 SHEETS 12 ARM SOCKETED TRAINING arm 14 ACHE 17 PART 21 .
throw -6 HEIGHT 6 ACHE CANT from 8 ONTO strong 9 BY SINCE with 13 MISSILE ball 14 and 17 . 28 $
throwing 44 .
thrown 12 CHANGED ODD from off 20 ONTO 23 .
throws -20 at -17 ONTO -16 in -8 to -7 # NUM 11 BE then 20 SINCE
thumb -7 $ BY with -6 HAVE has 8 NOT 9 day 11 . 12 COME POSITION PUT WENT side 18 ON ONTO on 19 BE is 20 and
thumbs -10 . HEIGHT up
thunder -15 .
thunderclap 8 $ .
tick 10 .
tight -15 but -14 ONTO -12 from -7 ELSEWHERE 7 HEIGHT across 8 CHEST ON after chest on 9 $ 12 and 18 TIGHT
tightness -14 ONTO in 8 $ 10 HEIGHT across 20 .
til -6 # NUM
till 13 NUM 16 PART 19 # 20 MANY 22 .
time -15 $ 12 NOT no 20 BREATH breathing when 22 . 36 i
times 16 BE 24 today 34 .
tingle -8 SINCE 10 NOT 15 at maybe
tingled 10 . 13 $
tingles -13 from 6 when 10 in 14 . 15 $
tingling -15 BE -13 nothing -9 BY with -6 MANY last 6 crazy 7 SINCE 11 but 15 NOT 16 maybe 19 in 26 ONTO 31 $ 46 .
tingly 9 SINCE 12 DIGIT HANDS PART for 20 $ 21 .
tiny -21 $ 8 . 9 NUMB 12 BULGE COME PUT pop 20 POP
tip 9 BE 14 PAIN 16 PART SHOULDER 17 ACHE 27 .
tips 11 DIGIT HANDS PART fingers 12 .
tire -26 .
tired -31 $ -25 ONTO from -20 but -10 and -8 LEG legs 7 NOT 9 no 22 time 33 for
to -35 MANY -25 NUM doctor -24 STOP stop -23 # -22 say -21 LOST -20 see -19 watch -17 NUMB push tingle -16 losing run third -15 BULGE game -13 WAKE WORN wake -12 AGAIN POP second skip -11 HEART cheat first heart -10 pop short -9 SHEETS bed carry -8 VEHICLE -7 $ DROPPING HOT drop lose pee pick stand warm -6 death it 6 CATCH COME catch pitch practice turn 7 THING high hold use 8 HAVE OPPONENT POSITION SOCKETED side stomach thumb 9 PUSH 10 ELBOW elbow fingers finish hurt wrist 11 PUT open 12 put shove 13 have lie 14 . RIBS arm go raise reach 15 BE hand somebody 16 ACHE die sleep 17 PAIN WENT 18 FEELING 19 MOTOR REACH 21 kill 22 ARM HAND 23 take touch 24 DIGIT disappear lay 25 lift live 27 end 29 BREATH breathe 30 ELSEWHERE 33 LIFT 39 HANDS 43 PART
toast -21 . -8 $
today -10 BE -9 . -8 NOT -7 # NUM 7 i
toddler -9 .
toe -9 . -7 BE -6 $ ONTO
toes -7 .
toilet -18 $ -6 .
told -26 . -13 to
tolerable -7 $ .
tomorrow -20 . -19 $
ton -10 .
tongue -10 $ 12 .
tonight -23 . -21 $
too -34 .
took -23 ONTO -21 rest -18 GROUND it shower -15 over -12 BLOW hit -11 BREATH -9 CHANGED ODD off -8 nap 6 foul 7 helmet line 8 . painkillers 9 # NUM 10 THING 11 ELSEWHERE knee 12 advil 13 MISSILE 18 tumble 27 FALL 39 PILL
tooth -6 .
top -9 . -8 $ 7 PART SHOULDER SOCKETED shoulder 8 ACHE 10 DAILY HEIGHT shelf
topped -6 .
tops -8 $ 7 .
tore -15 labrum -13 HEIGHT up -11 through -6 her 7 i 8 $ ACHE 17 PART 18 . 20 THING something
torn -28 . -7 PART SHOULDER SOCKETED labrum
toss -10 .
tossed -25 . -15 and -9 $
tosses -15 .
totally 9 .
touch -17 hay -6 ONTO 9 . 10 WEAK WEAKNESS weaker 13 NUMB 19 $
touched -11 NUM -10 # 13 .
touches 23 it 32 ACHE 35 .
tough -14 .
tournament -19 $ .
towel -16 .
track -9 .
tractor -19 .
traffic -10 $ 12 .
train -12 BE was 15 $
trainer -8 says 7 . 16 $ 20 PUT
training 9 $
trampoline 8 $ 10 .
trap -14 .
traps -28 . -21 $
trash 11 $ .
travel -7 .
traveling -8 $ .
travelling -17 .
tree -14 . -13 COME FALL QUITS fell
trees -16 $ .
tricep -19 .
triceps -12 . -9 $
tried 19 to
trip -17 .
tripped -12 HEIGHT up 11 ONTO 14 over 22 but
tripping 20 ONTO over 23 .
tris -25 . -13 today
trouble 12 BREATH breathing
truck 22 .
trucked 16 at 22 .
trumpet -9 .
try 8 to
tryouts 9 $ .
tub -19 . -14 $
tuesday -22 . -17 $
tumble 15 ON on 18 ONTO 19 .
tumbled 20 . ONTO
tunnel 6 .
turf -6 $ .
turn 10 HEIGHT head
turned 8 . 9 purple 15 blue 23 COLOUR
turning 8 blue 9 purple 15 COLOUR 19 .
turns 16 .
tv 6 . 9 BUZZ
twenty -17 .
twice -23 to -9 and 7 size 9 $ day 14 its 17 as 26 today 40 .
twig 18 .
twinge -9 .
twist -10 .
tylenol 15 .
typing -18 $
tyre -18 . -7 $
u -11 .
ucl 17 BE 18 .
uh -10 . -7 $
unbearable 16 $ 22 .
uncle -8 $ .
under -17 lights -8 water 7 ONTO 13 $ 18 ELSEWHERE 22 . 36 skin
unfortunately -18 .
unstable 21 $ 27 .
unsteady 7 ON ONTO on 10 $ 21 .
until 9 NUM 11 MANY 13 .
up -23 BE -22 late -21 to -16 at -15 early -13 in -12 NOT no -11 was -10 because zero -9 cue front -8 for three -7 $ first -6 GROUND SEAT when 6 NIGHTS SHAPE by night only popeye under with 7 ARM SOCKETED arm behind halfway 8 CANT before into wont 9 AGAIN KEEP soaked 10 BY 11 HEIGHT ONTO every 12 MANY ON on 14 ACHE NUM after big since 15 . SWEATS 16 SINCE till 17 once sore time 19 balloon 20 # 22 DAILY PAIN 25 blood 28 day
upper -10 trap -6 traps 21 ACHE ARM PART SOCKETED arm
upright -14 $ .
ups 9 $
us -9 . 7 do
use 8 ACHE ARM PART SOCKETED arm
used -6 .
useless 6 since 13 . 17 SINCE
usual -23 $ -12 ACHE PAIN ache
usually -9 . -8 # NUM
utterly 8 .
van -9 .
vanished 17 .
veins -6 ON on 8 BULGE HEIGHT across 17 .
velcro 10 BREAK POP ripping 13 .
velocity -6 .
velos -15 .
very -12 .
vibrate 12 .
vice 18 .
video -21 . -18 $
view -8 $ .
virus 11 .
visible 18 .
visibly 10 LEAK SWELL swollen 16 .
vision 13 and 14 BE 16 COME PUT WENT went 24 .
visit -7 .
vitamin -21 .
vitamins -13 $ .
voice -17 . -8 $ -7 BE is
volleyball -8 .
vomited 31 .
vomiting 9 SINCE since 25 .
wait -27 . -10 NOT no -6 $
waiting -6 .
wake 10 .
wakes -11 $ 7 HEIGHT up
waking -11 BE COME LOST WENT gone 10 . 13 $ 14 HEIGHT up
walk -12 ONTO 28 $ 34 .
walked 9 . 12 into 13 ONTO
walking 21 to 22 $ 56 .
wall -18 . -10 COME -8 FALL QUITS fell -6 $ ONTO
wanna 14 .
want -18 $ 28 . 40 to
wanted 6 . 11 to
wants 6 to
warm -28 . -23 $ -16 and -15 SINCE 7 ups
warmed -11 . HEIGHT up
warmup -6 .
warmups 11 $ .
was -28 COLD -27 . -26 PAIN wet -25 LEAK -24 ODD live -22 MANY -20 stiff -19 # NUM ON on shaking -18 cold hard -17 travelling -15 ACHE NUMB -14 pain sick sore -13 POWER holding ill power quiet tingling -12 TIRED fast tired -11 at hot nervous numb weak -10 COLOUR fun heavy no popping racing sharp -9 CHANGED DROPPING WEAK good hurting laid there -8 AGAIN BUZZ dropping sleeping swinging traveling -7 freezing hit off -6 FLUTTER TIGHT okay 6 HEIGHT slurred up 7 snap 8 NOT doing full tearing 9 BULGE DISLOCATE dislocated warm 10 BLOW SLUR knocked 11 ONTO 12 FEVER_F POP TRAINING round 13 thrown 14 BE WENT 15 gonna in 16 BREAK crying 17 LOST pop 18 COME 19 PUT gone 21 FEVERISH dead 26 black
wash -12 $ -7 .
washing 13 .
wasnt -13 there 11 .
watch -16 for -13 . 8 NOT doesnt
watched -23 .
watching 7 . 8 tv
water -20 as -9 ONTO -7 in polo 10 . THING bottle 15 BE is
watering 8 .
way 25 .
we -51 . -24 LOST lost -13 BLOW -12 BE COME NOT -9 TRAINING won -8 ran -7 HAVE PUT -6 WENT were
weak -21 POSITION side -18 PART -16 for -12 coffee in -9 sauce week -7 after at competition grounder -6 THING excuse 6 when 7 ONTO 8 as 10 . since 12 and 14 but 17 ON on 21 i 25 to 26 today 32 $
weaker 6 $ 8 today 10 MANY 22 than 41 .
weakest -8 .
weakness 15 in 16 ONTO 27 $ 31 .
wear -16 .
wearing 6 . THING WORN glove 8 DULLED
weather -27 . -16 BE -8 $ -6 WENT
wednesday 9 .
wee -15 .
week -11 ONTO -6 but 12 HAND HANDS PART hand 18 i
weekend -12 $ -11 .
weekly -14 .
weeks -24 ago 11 and 19 $ 22 i 23 NOT no 44 .
weeping 8 $ 12 .
weight -8 for -7 $ 6 room 9 NOT 11 is without 14 BE 21 and
weights -26 . -16 $
weird -8 SINCE after 7 . 9 NUMB 16 SHAPE
weirdly 18 .
well -48 $ -47 .
went -15 in -14 good -13 MANY -12 ONTO off -11 well -9 away -8 COLD cold numb -7 BULGE CHANGED COME PUT pop -6 NUMB 6 grey 8 from 9 # . NUM full 11 $ COLOUR 13 black 14 over 23 back
were -34 . -14 NUMB numb -9 COME -8 sweaty -7 down 7 COLD 9 soaked 11 cold
wet -7 and -6 $ 6 leaves pants 9 ONTO from 11 spaghetti 13 myself 14 .
what -20 if -16 . -10 BE counts would -8 does should -6 do 17 ACHE it 19 i
whatever 11 . 20 i
whats 20 MOTOR point 23 .
wheel 7 BE 9 .
wheelie -16 .
wheezing 18 .
when -20 ARM -18 HANDS -17 arm can -15 PART -11 MISSILE OPPONENT -8 im 7 u 9 ACHE 10 THING 12 it 17 . 19 SHOULDER shoulder 34 i
whenever 10 . 17 i
where -11 you 6 it 11 SOCKETED shoulder 13 PART SHOULDER 14 ACHE 27 muscle 28 .
which 6 ACHE it 7 . 15 BE is
while 14 BE is 16 sitting 17 i 62 .
white 8 when 10 and as 12 ONTO in 14 . 20 $
who -16 .
whole 13 .
whom -7 .
why 19 $ .
wicket -16 .
wickets -7 $ .
wife -30 . -17 BE -14 and -6 has
wifes -21 .
will -20 . -15 ACHE it -6 BE
win -29 $ .
wind -27 . -14 $ -8 at
winded 28 .
winter -14 . -11 $
wish 28 . 33 i
with -20 you -17 boys hands -14 ARM POWER arm -13 excitement -12 ball this -10 power -8 . coach stretch -7 MOTOR NEW hammer new work -6 club couple 6 POP SWELL each swollen 7 OPPONENT 9 those 10 BLOW bang bike buttons dead pain 11 numb 12 fielder hand 14 ache it 17 VEHICLE 18 CHILL FLU LEAK SHOULDER chills flu shoulder 20 FEVER fever temperature 22 PAIN 24 ACHE 31 PILL
without 17 $ 28 .
wobbly -10 . 15 ONTO in
woke -15 $ -14 at -8 AGAIN 6 . 14 last 15 MANY 24 once
woken 8 .
wont -16 LEAK 6 let 7 HOLD 10 LIFT lift 14 STOP do 40 .
wood 19 $ .
words -22 ONTO in 10 BE 12 . 23 COME
wore -30 . -10 CHANGED ODD
work -25 $ -21 . -10 BE
worked -18 .
working -31 . -8 $
workout -33 . -14 BE -11 $
works -21 . -9 $
world -7 .
worn -6 $ 10 . 12 OUT out
worried -31 . -17 about
worries -8 .
worry -22 . -20 about
worse -17 than 9 $
worst 8 $ 17 . 22 HEADACHE headache
would -14 COME PUT -13 POP i -10 say 22 BE 24 be
wouldnt 8 let 9 MOTOR 13 STOP 32 .
wound -14 HEIGHT up 22 $ 23 smells 24 LEAK
wounds 8 .
wrap 11 .
wrapped 16 . ONTO in
wreck 19 $ 29 .
wrecked 9 VEHICLE 14 ONTO
wrench -15 .
wrestling 10 . 17 $
wrist -12 and -10 $ -6 tape 11 BE 12 HAVE has 13 ONTO 15 flops 16 is
wrists 6 BE are 12 and 26 .
writing -12 . -8 $
wrong -13 SEAT -7 place 10 ON ONTO on
y -11 . -6 $
yanked 12 ARM PART SOCKETED arm 18 ACHE 20 .
yeah -16 ACHE it -15 $ -13 ON ONTO on -6 nah 7 and 8 HOLD MOTOR POWER grip 10 . its
year -45 . -25 ACHE PART SOCKETED -15 i -11 $
years -49 . -32 ago -18 $
yellow 9 LEAK 14 THING stuff 21 .
yep -8 ONTO 9 NUMB tingling 10 $
yes -19 ACHE -16 NOT no -14 i sir -11 BE COME PUT WENT go -9 STOP -8 MANY please 7 in 8 tingling 10 NUMB ONTO 17 . 18 AGAIN DIGIT HANDS pinky
yessir -7 $ .
yesterday 13 i 19 $ 20 ONTO 25 .
yet -28 . -25 $
yoga -18 . -16 $
you -27 . -25 $ -19 said 17 could
young -7 . OPPONENT
yup 14 .
zap 14 .
zero 12 sleep
zilch -10 $ .
zing 8 .
zip -8 $ .
zipper -6 .
"""
