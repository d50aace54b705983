"""The points of words and of pairs of words, in tenths, slippery to zone.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
slippery -17 . -14 i
slipping -12 ONTO 6 OUT out
slot -22 . -14 COME QUITS -10 DROPPING dropped -6 BE
slow -16 .
slowly -6 .
slump -18 .
slurred 15 . 23 $
slurring 7 and 22 $ 25 .
smacked 10 . ACHE PART SHOULDER SOCKETED shoulder
small 12 DIGIT HANDS PART 17 BULGE COME PUT pop 23 POP 34 .
smashed -23 . -6 ONTO
smell -12 . 16 $
smells 18 . 21 $
smh 10 $ .
smidge -9 $ -7 .
smoked -17 . -7 ONTO in
smooth -19 . -12 $
snap -8 decision -7 BE -6 throws 10 and 13 . 18 ON on 20 in 32 ONTO
snapped -18 . -11 $ 14 BREAKS_LIKE DULLED rubber
snapping 9 sound 18 .
sneezed -9 .
snooze -8 .
snore -12 .
snow -26 . -21 $
so -8 .
soaked -13 to 6 in 15 BY with 17 through 22 .
soaking 12 . SHEETS
sock 11 .
socket -15 wrench 6 when 10 ON on 11 and 12 $ ONTO 13 for 22 .
soda 13 .
sofa -7 .
soft -15 .
softball 11 $
solid -19 . -13 $
somebody 13 BLOW 14 COME FALL QUITS fell 32 .
someone 7 elses ran 8 BE is 9 PUT bumped 14 BLOW 35 .
something 6 ONTO in 7 GIVES gave snapped 9 rip 10 ARM PART 12 BE 13 ripped 16 FRACTURE broke 17 $ 20 tore 21 popped 33 COME PUT 40 BREAK 43 . 51 POP
sometimes 8 i 20 $
somewhat 22 .
son -20 . -15 BE HAVE has
song -26 .
soon -11 .
sore -31 ONTO -28 . -25 from -13 but -8 $ PART in 19 at
soreness -24 . -15 ONTO in
sorry -11 $ .
sort 19 .
sorta 21 .
sound 10 . 11 BE COME came
sounded 22 . BREAKS_LIKE
spaghetti 8 $ 10 SINCE 17 .
sparks 14 .
spear -10 .
speech -14 $ 9 COME 10 . 13 is 17 was 28 BE
speed -17 SHAPE bump 11 . 26 $
spell 7 .
spicy -10 . -7 $
spiked -10 to 13 .
spikes -22 .
spilled -10 .
spin -11 .
spine -8 .
spiral -11 .
spirit -20 .
spoon 21 .
spot -24 $ 6 .
spots 13 .
sprained -14 . -6 ELSEWHERE ankle
spread 8 .
spreading 12 .
spring -16 . BE 14 $
sprint 11 $ 12 .
sprints -21 . -8 $
squad -27 .
squat -17 .
squats -26 . -25 $
squeezing 24 .
stabbing 8 ACHE PAIN pain 19 .
stable -26 $ .
stadium -12 $ .
stage 20 $ 27 .
stairs 7 . 8 $ 15 and
stand -12 . -6 HEIGHT up
standing 7 HEIGHT up 9 . 18 here
stands 17 .
star -17 .
start 6 $
started -28 $ . 6 NUMB tingling
starting -16 .
starts -20 . -7 $
static 9 in 15 .
stay 20 .
stayed -15 upright -13 . -10 HEIGHT up
staying -15 .
stays 21 .
steady -24 . -22 $
step 13 and 26 .
steps 21 $ 27 .
stick -12 .
sticking 14 HEIGHT up 20 OUT out 29 .
sticks -21 $ 6 HEIGHT up 20 OUT out
sticky -30 .
stiff -33 . -25 $ -18 from -17 first -12 ON on -8 at 6 SINCE then 11 and 19 in 24 for
stiffness -8 .
still 10 .
stinger 10 .
stings -15 $ -13 .
stitch -18 ONTO -17 in -14 .
stitches 7 are 8 POP PUT popped 11 BE 12 COME HAVE have 30 .
stomach -17 ACHE PAIN -16 hurts -15 BE -11 $ -7 is 6 and
stone 15 COLD NOT cold without 20 .
stood 15 . HEIGHT up
stop -17 if -8 $ at 12 PAIN 14 ACHE
stopped -11 .
stops 25 .
storm -23 . -14 $
stove 19 and 21 .
straighten 13 . 14 ACHE it
strange 10 $ 17 .
strap -7 .
streak -9 $ .
streaks 6 BE COME WENT going 22 .
street -15 . -11 $
strength -7 is 10 $ 11 ON ONTO on 14 vanished 17 COME 30 .
strep 8 . 13 and
stress -7 .
stretch -24 . -15 $ -9 ONTO in
stretched -31 . -13 $
stretches -18 .
stretching -19 .
stretchy -6 .
strikes 13 .
stroke -10 . -8 $
strong -37 $ -13 NOT -10 . -9 ACHE -8 no 12 PAIN pain 16 today
stronger -20 .
struck -20 OUT out -15 .
struggled -11 .
struggling 10 to
stuck -10 ONTO -7 in 6 $
study -14 $ .
stuff 10 COME 18 . 25 $
stumble 8 .
stumbled 6 and 10 .
stung -20 . -10 BY by
sublux 14 $ 28 .
subluxation 18 .
subluxed 7 $ 28 .
sucking 13 . BREATH
sudden 19 $ 33 .
suddenly 45 .
sugar -24 .
suicidal 26 .
suit -24 .
summer -33 . -21 $
sun -22 . -11 $ -6 BE was
sunburn -14 . ON ONTO on
sunken 11 .
super 8 .
surgery -19 and -17 but -16 . -12 $ 11 BE 14 is 17 holes
surgical 27 .
sushi -12 .
sweat 9 $ 12 MANY 14 .
sweater 9 .
sweating -19 because 15 and
sweats -9 SINCE 18 and 21 $ 24 .
sweaty -16 . -12 $ -8 HAND HANDS PART 8 and
sweet -24 .
swell -14 $ -10 . 10 HEIGHT up
swelled 12 HEIGHT up 21 $ 30 .
swelling -38 BE -24 is -14 COME WENT -11 crowd -8 PUT went 8 at 10 up 12 HEIGHT 20 . 21 ONTO 22 in 27 $
swells -10 . -8 $
swim -11 .
swimming -8 $ .
swing -13 .
swinging 6 .
swole 19 . 21 HEIGHT up
swollen -22 from -9 HEIGHT up -8 NOT not -7 ONTO 7 PART 8 today 9 ON on 11 HAND HANDS hand i in sleeve 12 maybe 13 and 15 $ 27 WORN 31 .
table -14 $ -8 .
tablet 25 before
tablets -15 . -7 $
tackle 12 $ 15 .
tackled 7 and 15 . 23 $
tad -15 $ 6 .
tailgate -6 .
take 6 ibuprofen 7 deep 9 . tylenol 19 painkillers 37 PILL
takes 23 .
taking 17 PILL 27 .
talk 7 .
tan -13 $ .
tank -16 $ .
tap -13 . -7 $
tape -42 . -16 $ -13 BE -8 ON ONTO on -7 COME came
target -9 .
tattoo -21 . ON ONTO on
tea -12 . -6 only 8 ONTO
team -41 . -23 $ -17 BE -13 mate -12 BLOW -9 is
teammate -13 . -8 POP -7 QUITS collapsed
tear 23 .
tearing 7 BE feeling 8 sensation 13 FEELING 16 .
teeth 12 $ 20 .
tell -22 you 8 HOT LEAK hot 9 when
telling -12 .
temp 8 and 10 is 11 # FEVERISH FEVER_F NUM 13 BE 20 $ 41 .
temperature 8 and 20 # FEVERISH NUM 21 is 23 was 35 BE 39 $ 44 .
ten -17 $ -6 hours
tender 7 $ . 10 SINCE after
tenderness 18 .
test -40 . -27 $
th -10 grade -8 $
than -25 yesterday -20 SHOULDER shoulder -15 ONTO in -13 but -11 THING anything i -10 SOCKETED -6 PART 6 POSITION side 12 . 13 before 16 it 27 usual 33 normal 46 $
thank -8 .
that -15 set -14 BE ONTO PAIN hurt in -13 is -12 $ was win -11 it -9 PUT -7 joke 6 THING WENT 7 NUMB 8 MOTOR throw 9 COME goes never 14 wasnt 18 ARM arm 19 wrist 20 SOCKETED hand 21 doesnt 24 POSITION side 34 HAND 35 HANDS 36 i 38 NOT 45 PART
thats -22 . -17 when -15 $ -9 normal
the -11 .
their -9 . 7 OPPONENT
them -42 . -36 $
then -17 # NUM fine good -9 arm -8 HAND -7 SOCKETED -6 HANDS MANY 7 CANT couldnt 11 clunked 12 came it no 13 ACHE ELBOW MISSILE elbow 14 did 16 BE i 17 TRAINING 18 POP 20 PUT back 22 nothing 25 COME 33 NOT 35 .
there -12 $ -8 NOT wasnt -7 HAVE has 6 was 7 are 10 AGAIN every in 12 is 13 before 14 ONTO 15 # BE NUM 16 . 19 time
theres 9 LEAK NOT dent lump 19 SHAPE 49 .
thermometer 9 .
these -15 $ .
they -12 fixed -11 are -7 COME -6 DROPPING QUITS dropped 8 were 14 NOT dont
theyd 9 . BE be
theyre 9 .
thick 6 ONTO 7 in 11 $ 19 and 39 .
thigh -6 .
thighs -7 .
thing 6 came 8 ONTO in 10 . is 16 SLIP 17 BE 23 COME
things 20 .
think 6 SHOULDER it 7 SOCKETED 8 DIGIT HANDS 11 i 12 ACHE 15 PART 16 about 33 .
thinking 21 . 30 about
third -8 $ -6 POSITION SEAT position
thirty 9 .
this -21 $ -19 BREAKS_LIKE -14 THING -13 time -12 ARM arm -10 MOTOR TRAINING point -9 DAILY exercise -7 band 6 SHOULDER shoulder 10 month 12 season 13 PART 17 HANDS 22 week 28 morning
thoracic -13 .
those 8 fingers 12 . DIGIT HANDS PART
though 30 $ 42 .
thought 20 it 21 ACHE 34 .
thoughts 12 ending 15 .
thread 16 .
three -14 $ -11 . -9 OUT out -8 at -7 and times 9 NIGHTS nights 12 DIGIT HANDS PART fingers 21 weeks
threw -22 BY hard with -10 MANY THING many -6 TRAINING pen 12 MISSILE ball 13 and 34 $
throat -18 . -8 ACHE PAIN
throbbing 21 $ 22 BE 41 .
throbs 7 NIGHTS night 33 .
through -12 PUT set -10 $ -6 workout 11 ARM SOCKETED arm 13 ACHE SHEETS 15 . TRAINING 17 PART
throw -7 HEIGHT 6 CANT PART SOCKETED from 7 ACHE ONTO 9 strong 11 . BY with 12 SINCE 13 MISSILE and ball 24 $
throwing 43 .
thrown 11 CHANGED ODD from off 19 ONTO 23 .
throws -20 at -19 ONTO -17 in -11 . -9 to -8 $ -7 # NUM 11 BE then 20 SINCE
thumb -9 $ -7 BY with 8 day 12 COME POSITION PUT WENT side 15 . 17 BE 18 and 19 ON ONTO is on
thumbs -10 . HEIGHT up
thunder -15 .
thunderclap 8 $ .
tick 12 .
tight -15 but -13 from -12 ONTO 9 ON on 10 CHEST after and chest 11 $
tightness -15 ONTO in 7 $ 12 HEIGHT across 17 .
til -6 # NUM
till 15 NUM PART 18 # 20 MANY 22 .
time 12 when 14 NOT no 23 . 30 i
times 16 BE 22 today 34 .
tingle -8 SINCE 8 . 9 NOT 14 maybe 15 at
tingled 9 . 12 $
tingles -16 from 6 when 10 in 12 $ 17 .
tingling -16 BE -13 nothing -9 BY with -7 last 9 SINCE 11 but 14 NOT 16 maybe 18 in 23 ONTO 30 $ 47 .
tingly 9 SINCE 12 DIGIT HANDS PART for 19 $ 21 .
tiny -18 $ 6 . 10 NUMB 11 BULGE COME PUT pop 19 POP
tip 9 BE PAIN 12 ACHE 18 PART SHOULDER 28 .
tips 12 DIGIT HANDS PART fingers 13 .
tire -22 .
tired -27 $ -24 ONTO from -22 but -6 . LEG legs 12 NOT no 18 time 28 for
to -33 NUM -31 # -28 STOP stop -26 MANY -24 doctor -20 see -19 say third -18 LOST -17 NUMB tingle watch -16 WORN push -14 BULGE game losing run second -13 AGAIN cheat -12 HEART WAKE first heart wake -11 short -10 POP pop -9 DROPPING drop -8 SHEETS VEHICLE bed -7 death pee pick -6 HOT do it stand warm 6 field practice 7 be hold pitch turn 8 PUT RIBS fingers high thumb wrist 9 COME ELBOW POSITION elbow finish side 10 PUSH lie 11 OPPONENT PAIN open play 12 ACHE CATCH catch go put use 13 shove 14 MOTOR MOVE raise 15 BE arm 16 . WENT die sleep 17 hand 18 kill 19 FEELING REACH 21 touch 22 ARM 24 HAND lay 25 DIGIT disappear lift live 26 ELSEWHERE end 27 take 28 BREATH breathe 32 LIFT 41 HANDS 43 PART
toast -19 . -8 $
today -9 BE -8 NOT -7 # . NUM 10 i
toddler -9 .
toe -19 .
toilet -14 $
told -22 . -12 to
tolerable -7 $ .
tomorrow -20 . -18 $
ton -11 .
tongue -7 . -6 $
tonight -23 . -19 $
too -30 .
took -21 rest -19 GROUND shower -18 ONTO -13 it over -11 BLOW BREATH hit -8 CHANGED ODD off -7 nap 6 foul 7 . THING helmet line 13 ELSEWHERE knee 14 advil 15 MISSILE 16 tumble 25 FALL 38 PILL
tooth 6 $
top -7 . -6 $ 8 PART SHOULDER SOCKETED shoulder 9 ACHE 10 DAILY HEIGHT shelf
tops -7 $ 11 .
tore -15 labrum -12 HEIGHT up -10 through -6 her 8 ACHE 11 $ 16 . 17 PART 19 THING something
torn -25 . -6 PART SHOULDER SOCKETED labrum
toss -10 .
tossed -23 . -13 and -10 $
tosses -15 .
totally 9 .
touch -17 hay 9 WEAK WEAKNESS weaker 12 NUMB 15 . 17 $
touched -11 NUM -10 # 15 .
touches 23 it 32 . ACHE
tough -13 .
tournament -21 . -20 $
towel -17 .
track -15 .
tractor -19 .
traffic -8 $ 9 .
train -12 BE was 18 $
trainer 7 . 16 $ 19 PUT
training 10 $
trampoline 7 $ 10 .
trap -15 .
traps -29 . -20 $
trash 11 $ .
travel -7 .
traveling -7 $ .
travelling -14 .
tree -13 .
trees -17 $ .
tricep -18 .
triceps -10 . -9 $
tried 16 to
trip -16 .
tripped 13 over 14 ONTO 22 but
tripping 8 ONTO over 12 .
tris -26 . -14 today
trouble 14 BREATH breathing
truck 20 .
trucked 16 at 22 .
trumpet -7 .
try 8 to
tryouts 11 $ .
tub -17 . -13 $
tuesday -23 . -16 $
tumble 7 down 16 ONTO 19 .
tumbled 20 . ONTO
turf -7 $ .
turn -6 . 11 HEIGHT head
turned 6 . 9 purple 14 blue 24 COLOUR
turning 11 purple 16 COLOUR 22 .
turns 13 .
tv 9 . BUZZ
twenty -17 .
twice -25 to -8 and 8 size 11 day 12 $ 15 its 18 as 25 today 42 .
twig 18 .
twinge -8 .
twist -10 .
tylenol 15 .
typing -18 $
tyre -17 . -7 $
u -8 .
ucl 18 . BE
uh -9 . -7 $
ulnar 6 .
unbearable 17 $ 23 .
uncle -8 . -7 $
under -18 lights -8 water 7 ONTO 10 $ 19 ELSEWHERE 26 . 31 skin
unfortunately -18 .
unstable 21 $ 27 .
unsteady 7 ON ONTO on 11 $ 18 .
until 8 NUM 10 MANY 11 .
up -22 BE -20 late -19 to -16 at -13 early -12 no -11 NOT in was -10 because zero -9 THING front -8 cue -7 SEAT -6 GROUND for three when 6 NIGHTS SHAPE drenched night popeye 7 ARM SOCKETED arm behind under with 9 ON halfway on 10 CANT HEIGHT ONTO into soaked wont 11 every 12 BY MANY after 13 SINCE before since 14 ACHE big 15 . NUM SWEATS once time 16 till 17 sore 19 DAILY balloon 21 # 22 PAIN 28 day 29 blood
upper -9 trap -6 . traps 20 ACHE ARM PART SOCKETED arm
upright -15 $ .
ups 9 $
us -13 . 7 do
use 7 ACHE ARM PART SOCKETED arm 8 .
useless 6 since 15 . 16 SINCE
usual -20 $ -12 ACHE PAIN ache
usually -9 .
utterly 8 .
van -9 .
vanished 14 .
veins -6 ON on 6 over 8 BULGE HEIGHT across 16 .
velcro 10 BREAK POP ripping 13 .
velos -15 .
very -15 .
vibrate 11 .
vice 16 .
video -21 . -17 $
view -7 $ .
virus 11 .
visibly 11 LEAK SWELL swollen 16 .
vision 11 and 14 .
visit -6 .
vitamin -20 .
vitamins -11 $ .
voice -16 . -7 $
volleyball -8 .
vomited 21 .
vomiting 9 SINCE since 25 .
wait -25 . -9 NOT no -6 $
wake 13 .
wakes -12 $ 8 HEIGHT up
waking -11 BE COME LOST WENT gone 11 . 14 $ HEIGHT up
walk -11 ONTO 20 $ 28 .
walked 10 . ONTO
walking 6 ONTO 23 $ to 52 .
wall -21 . -10 COME -9 $ FALL QUITS fell -6 ONTO
wanna 15 .
want -18 $ 27 . 39 to
wanted 6 . 12 to
wants 6 to
warm -28 . -22 $ -19 and -17 SINCE 8 ups
warmed -13 . HEIGHT up
warmup -6 .
warmups 11 $ .
was -31 . -26 wet -25 COLD -23 live -21 MANY -20 LEAK ODD PAIN -19 ON on stiff -18 # -17 cold -16 hard sick -15 NUMB -14 holding travelling -13 POWER TIRED power shaking sore tingling tired -12 fast heavy numb quiet -11 ACHE BUZZ NUM nervous weak -10 DISLOCATE dislocated racing sharp -9 CHANGED COLOUR DROPPING TIGHT good hot no sleeping -8 at dropping laid popping there -7 AGAIN WEAK hit off traveling -6 freezing fun okay yesterday 6 snap 7 full gone warm 8 doing 9 BULGE slurred tearing 10 NOT ONTO 11 COME HEIGHT up 12 knocked 13 BLOW FEVER_F SLUR 14 POP TRAINING round thrown 15 BREAK 16 in pop 17 gonna 19 PUT 21 FEVERISH 22 dead 26 black
wash -12 $ -9 .
washing 10 .
wasnt -7 there 7 .
watch -17 . -14 for
watched -24 .
watching 10 . 12 tv
water -20 as -8 ONTO polo -6 in 8 . 10 THING bottle 15 BE 16 is
watering 12 .
way 23 .
we -50 . -20 LOST lost -14 BE -13 COME -12 NOT -11 BLOW -9 HAVE -8 PUT TRAINING -7 WENT had ran won
weak -20 POSITION side -18 PART -16 for -12 coffee -11 in week -10 sauce -8 THING -7 at competition grounder -6 after excuse 8 ONTO as when 9 since 10 . 12 and 16 but 18 ON on 19 i 20 to 27 today 35 $
weaker 6 $ 10 MANY 22 than 41 .
weakest -7 .
weakness 14 in 15 ONTO 26 $ 27 .
wear -17 .
wearing 6 . THING WORN glove 8 DULLED
weather -24 . -14 BE -9 $ -6 WENT
wednesday 9 .
wee -17 .
week -11 ONTO -6 but 8 $ 11 HAND HANDS PART hand 19 i
weekend -12 $ -11 .
weekly -13 .
weeks -23 ago 7 and 9 $ 26 NOT no 27 i 43 .
weeping 8 $ 14 .
weight -8 $ -6 for 6 room 11 BE 12 NOT is 14 without 19 and
weights -23 . -15 $
weird -7 SINCE after 9 NUMB 14 . 18 SHAPE
weirdly 6 . ACHE PART SHOULDER SOCKETED shoulder
well -43 . -42 $
went -14 in -13 MANY good -11 ONTO off well -10 down -9 away -7 COLD cold -6 BULGE CHANGED COME PUT numb pop 6 grey 7 . from 9 # NUM 10 COLOUR full 12 $ black 15 over 24 back
were -35 . -14 NUMB numb -8 sweaty -7 COME down 6 COLD 9 soaked 10 cold
wet 6 leaves 8 . 9 ONTO from 11 spaghetti 15 myself
what -36 . -19 if -9 counts -8 BE would -7 does -6 should 22 i
whatever 12 . 20 i
whats 20 MOTOR point 23 .
wheel 7 BE 9 .
wheelie -14 . -6 $
wheezing 19 .
when -21 ARM -18 HANDS -17 arm -15 can -14 PART -12 MISSILE -11 OPPONENT -7 im 7 u 10 ACHE THING 14 it 16 . 20 SHOULDER shoulder 35 i
whenever 9 . 17 i
where -10 you 7 it 11 SOCKETED shoulder 13 PART SHOULDER 15 ACHE 26 muscle 30 .
which 7 ACHE it 15 BE is
while 15 BE is 22 i 61 .
white 9 when 11 ONTO and as in 17 . 19 $
who -16 .
whole 9 .
whom -7 .
why 19 $ .
wicket -14 .
wife -29 . -15 BE -12 and
wifes -20 .
will -15 . ACHE it -8 BE -6 COME PUT
win -27 $ .
wind -31 . -15 $ -8 at
winded 25 .
winter -13 . -10 $
wiped 7 OUT out 9 .
wish 26 . 33 i
with -18 you -15 ARM arm ball boys hands -14 POWER -12 . excitement -11 this -10 power -8 MOTOR coach work -7 hammer stretch -6 MANY NEW club couple new 6 POP 7 SWELL swollen 8 BLOW bang 9 pain those 10 bike buttons 11 FEVER dead fever fielder numb 13 OPPONENT 14 ache hand 17 VEHICLE it 18 CHILL SHOULDER chills shoulder 19 LEAK 21 ACHE PAIN 22 temperature 30 PILL
without 18 $ 24 .
wobbly -9 . 15 ONTO in
woke -15 $ -13 at -8 AGAIN 6 . 14 MANY 24 once
wont -15 LEAK 6 HOLD 7 let 10 LIFT lift 14 STOP 15 do 40 .
wood 20 $ .
words -21 ONTO in 6 are 9 . 14 BE 24 COME
wore -25 .
work -21 $ -17 . -9 BE
worked -16 . -6 POSITION SEAT spot
working -28 . -7 $
workout -33 . -15 BE -13 $
works -17 . -7 $
world -7 .
worn -6 $ 6 . 11 OUT out
worried -31 . -17 about
worry -22 . -19 about
worse -16 than 9 $
worst -8 ACHE PAIN pain -7 $ 12 . 24 HEADACHE headache
worth 7 .
would -12 COME POP PUT -11 i -8 say -7 . 15 BE 16 be
wouldnt 6 HOLD 7 let 10 STOP 11 MOTOR 24 .
wound -14 HEIGHT up 21 smells 22 LEAK
wrap 12 .
wrapped 17 . ONTO in
wreck 18 $ 28 .
wrecked 9 VEHICLE 13 ONTO
wrench -15 .
wrestling 10 . 18 $
wrist -13 and -6 tape 6 CANT NOT wont 9 BE 12 HAVE has 13 . 14 is 15 flops 16 ONTO
wrists 6 BE are 11 and 27 .
writing -14 . -8 $
wrong 10 ON ONTO on 13 .
y -11 .
yanked 12 ACHE 14 .
yeah -15 ACHE it -11 ON ONTO on -10 $ -6 NOT 6 . and 8 HOLD MOTOR POWER grip its
year -42 . -26 ACHE PART SOCKETED -16 i -11 $
years -46 . -28 ago -20 $
yellow 10 LEAK 15 THING stuff 25 .
yep -9 ONTO 7 NUMB tingling 9 $ 10 .
yes -20 ACHE -17 NOT no -14 sir -9 MANY -8 i please 6 $ 7 tingling 10 NUMB 16 ONTO 17 AGAIN pinky 18 . 19 DIGIT HANDS
yessir -7 $ .
yesterday 14 i 20 ONTO 21 $ 26 .
yet -28 . -24 $
yoga -16 . -14 $
you -28 . -19 $ -18 said 7 can 17 could
young -6 . OPPONENT
yup 14 .
zap 14 .
zaps 6 . ONTO down
zero 7 . 12 sleep
zilch -9 $ .
zing 7 .
zip -8 $ .
zipper -6 .
zone -6 .
"""
