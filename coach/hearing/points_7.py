"""The points of words and of pairs of words, in tenths, slippery to zip.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
slippery -16 . -13 i -6 $
slipping -14 ONTO -6 . 6 OUT out
slips 6 AGAIN MANY every
slot -22 . -14 COME QUITS -10 DROPPING dropped -6 BE
slow -16 .
slowly -6 .
slump -19 .
slurred 12 . 23 $
slurring 8 and 23 $ 25 .
smacked 10 . ACHE PART SHOULDER SOCKETED shoulder
small 11 DIGIT HANDS PART 17 BULGE COME PUT pop 25 POP 31 .
smashed -24 . -7 ONTO
smell -9 . 16 $
smells 17 . 22 $
smh 10 $ .
smidge -9 $ -7 .
smoked -17 . -6 ONTO in
smooth -21 . -13 $
snacks -6 $ .
snap -8 decision -7 BE 10 and 14 . 18 ON on 19 in 30 ONTO
snapped -16 . -10 $ 14 BREAKS_LIKE DULLED rubber
snapping 9 sound 18 .
sneezed -9 .
snooze -7 .
snore -11 .
snow -26 . -21 $
so -9 .
soaked -13 to 15 BY with 17 through 22 .
soaking 11 . SHEETS
sock 11 .
socket -14 wrench 6 when 11 and 12 ON on 13 ONTO for 14 $ 23 .
soda 13 .
sofa -6 .
soft -15 .
softball 12 $
solid -20 . -14 $
somebody 13 BLOW FALL QUITS fell 14 COME 34 .
someone 7 elses ran 8 BE is 10 PUT bumped 16 BLOW 38 .
something 7 snapped 8 GIVES gave rip 10 ARM PART 13 ripped 14 BE 15 FRACTURE broke 17 $ 19 popped 21 tore 32 PUT 35 COME 41 BREAK 45 . 53 POP
sometimes 8 i 20 $
somewhat 22 .
son -18 . -15 BE HAVE has
song -21 .
soon -16 .
sore -30 . ONTO -25 from -12 but -10 $ -7 PART in 19 at
soreness -24 . -15 ONTO in
sorry -11 $ .
sort 18 .
sorta 22 .
sound 6 ONTO 10 . BE COME came
sounded 25 . BREAKS_LIKE
spaghetti 9 $ 10 SINCE 18 .
sparks 14 .
spear -10 .
speech -16 $ 8 COME 10 . 14 is 17 was 30 BE
speed -17 SHAPE bump 11 . 22 $
spicy -10 . -8 $
spiked -10 to 15 .
spikes -23 .
spilled -10 .
spin -11 .
spine -9 .
spiral -11 .
spirit -18 .
spoon 21 .
spot -24 $
spots 13 .
sprained -16 . -6 ELSEWHERE ankle
spread 9 .
spreading 12 .
spring -19 . -16 BE 14 $
sprint 11 $ 12 .
sprints -21 . -9 $
squad -26 .
square 7 .
squat -17 .
squats -25 . -24 $
squeezing 26 .
stab -6 . ONTO
stabbing 9 ACHE PAIN pain 20 .
stable -28 $ .
stadium -13 $ .
stage 21 $ 28 .
stairs 7 . 10 $ 14 and
stand -9 . -6 HEIGHT up
standing 8 HEIGHT up 9 . 20 here
stands 17 .
star -16 .
started -29 $ -28 . 7 NUMB tingling
starting -16 .
starts -21 . -7 $
static 9 in 16 .
stay 21 .
stayed -14 upright -10 HEIGHT up -9 .
staying -14 .
stays 22 .
steady -22 . -20 $
step -6 $ 13 and 26 .
steps 21 $ 25 .
stick -11 .
sticking 15 HEIGHT up 19 OUT out 31 .
sticks -19 $ 7 HEIGHT up 20 OUT out
sticky -30 .
stiff -32 . -27 $ -19 first -18 from -12 ON on -8 at 6 SINCE then 11 and 17 in 24 for
stiffness -8 .
still 9 .
stinger 9 .
stings -14 $ -13 .
stitch -19 ONTO -17 in -16 .
stitches 7 are 8 POP PUT popped 10 BE 11 COME 12 HAVE have 33 .
stomach -17 ACHE PAIN -16 hurts -14 BE -12 $ -6 is
stone 15 COLD NOT cold without 20 .
stood 15 . HEIGHT up
stop -16 if -10 at -9 $ 12 PAIN 13 ACHE
stopped -7 .
stops 27 .
storm -21 . -13 $
stove 19 and 21 .
straighten 13 . ACHE it
strange 9 $ 15 .
strap -10 .
streak -9 $ .
streaks 6 BE COME WENT going 25 .
street -16 . -11 $
strength 7 BE 11 $ ON ONTO on 14 vanished 17 COME 29 .
strep 7 . 14 and
stress -8 .
stretch -27 . -16 $ -9 ONTO in
stretched -29 . -12 $
stretches -20 .
stretching -18 .
strikes 13 .
stroke -10 . -8 $
strong -40 $ -14 NOT -10 . -9 ACHE no 6 ON ONTO on 12 PAIN pain 15 today
stronger -24 .
struck -19 OUT out -15 .
struggled -11 .
struggling 10 to
stuck -12 ONTO -7 in 6 $
study -14 $ .
stuff 9 COME 18 . 25 $
stumble 7 .
stumbled 6 and 10 .
stung -21 . -9 BY by
sublux 13 $ 27 .
subluxation 18 .
subluxed 6 $ 31 .
sucking 13 . BREATH
sudden 18 $ 33 .
suddenly 46 .
sugar -24 .
suicidal 28 .
suit -31 .
summer -32 . -22 $
sun -23 . -11 $ -6 BE was
sunburn -15 . ON ONTO on
sunken 11 .
super 8 .
sure 7 $
surgery -19 and -16 but -13 $ -11 . 9 BE 14 is 18 holes
surgical 7 WOUND wound 26 .
sushi -12 .
sweat 9 $ 12 MANY 13 .
sweater 8 .
sweating -19 because 16 and
sweats -12 SINCE 19 and 21 $ 28 .
sweaty -14 . -11 $ -8 HAND HANDS PART 9 and
sweet -24 .
swell -13 $ -10 . 10 HEIGHT up
swelled 12 HEIGHT up 19 $ 26 .
swelling -37 BE -23 is -15 COME WENT -11 crowd -7 PUT went 6 and 8 at 11 up 13 HEIGHT 19 . 21 ONTO 22 in 29 $
swells -11 . -10 $
swim -11 .
swimming -8 $ .
swing -11 .
swinging 6 MISSILE THING bat
swole 19 . 22 HEIGHT up
swollen -23 from -8 HEIGHT NOT not up 8 PART today 9 in 10 ON on 11 sleeve 12 HAND HANDS hand i maybe 16 $ and 28 WORN 34 .
table -11 $ -9 .
tablet 24 before
tablets -12 . -6 $
tackle 12 . 13 $
tackled 6 and 18 . 21 $
tad -15 $
tailgate -6 .
take 6 deep 7 ibuprofen 9 tylenol 12 . 19 painkillers 34 PILL
takes 24 .
taking 16 PILL 27 .
talk 10 .
tan -12 $ .
tank -16 $ .
tap -11 .
tape -46 . -16 $ -13 BE -9 ON ONTO on -7 COME came
target -8 .
tattoo -21 . ON ONTO on
tea -12 . 8 ONTO
team -44 . -25 $ -17 BE -14 mate -11 BLOW -9 is
teammate -16 . -8 POP -6 QUITS collapsed
tear 24 .
tearing 7 BE feeling 8 sensation 13 FEELING 17 .
teeth 13 $ 22 .
tell -21 you 8 HOT LEAK hot 10 when
telling -13 .
temp 9 and 10 FEVER_F is 11 # FEVERISH NUM 13 BE 20 $ 40 .
temperature 9 and 20 is 21 # FEVERISH NUM 23 was 33 BE 35 $ 43 .
ten -16 $ -7 .
tender 6 . 7 $ 10 SINCE after
tenderness 18 .
test -39 . -27 $
th -10 grade -9 $
than -27 yesterday -19 SHOULDER shoulder -15 ONTO in -13 but i -11 THING anything -9 SOCKETED 6 POSITION side 13 before 16 . 17 it 27 usual 34 normal 43 $
thank -8 .
that -15 ONTO in set -14 is -13 BE -12 PAIN hurt -11 $ it was win -8 PUT -7 joke 7 NUMB 8 COME MOTOR throw 10 goes never 14 wasnt 18 ARM arm 20 SOCKETED 21 doesnt 22 hand wrist 26 POSITION side 35 HAND HANDS 37 NOT 39 i 45 PART
thats -24 . -16 when -14 $ -9 normal
the -10 .
their -9 . 7 OPPONENT
them -44 . -36 $
then -21 $ -18 good -17 fine -16 # NUM -9 arm -7 SOCKETED -6 HAND MANY 6 CANT couldnt 11 clunked 12 ACHE came no 13 ELBOW MISSILE elbow it 14 i 15 BE 17 did 19 PUT back 20 POP TRAINING 24 nothing 25 COME 30 . 35 NOT
there -9 $ -8 NOT wasnt -7 HAVE has 6 MANY are 12 AGAIN every 13 in is 14 before 15 BE 16 # NUM 17 ONTO 18 . 20 time
theres 9 LEAK NOT lump 10 dent 20 SHAPE 50 .
thermometer 11 .
these -17 . -15 $
they -12 fixed -11 are -7 COME -6 DROPPING QUITS dropped 6 stay 7 were 15 NOT dont
theyd 8 . BE be
theyre 10 .
thick 7 ONTO 8 in 11 $ 19 and 43 .
thigh -6 .
thighs -7 .
thing 7 ONTO in 9 is 13 . 16 BE SLIP 23 COME
things 20 .
think -6 im 6 SHOULDER it 7 SOCKETED 8 DIGIT HANDS 11 i 12 ACHE 15 PART about 28 .
thinking 19 . 30 about
third -6 $
thirty 8 .
this -24 $ -19 BREAKS_LIKE -14 THING -12 ARM TRAINING arm time -11 exercise -10 MOTOR point -8 DAILY band 6 SHOULDER shoulder 9 month 12 PART season 17 HANDS 18 week 26 morning
thoracic -9 .
those 8 fingers 11 . 14 DIGIT HANDS PART
though 30 $ 42 .
thought 20 it 21 ACHE 32 .
thoughts 12 ending 15 .
thread 14 .
three -17 $ -12 . -8 OUT out times -7 at -6 and 8 NIGHTS nights 13 DIGIT HANDS PART fingers 21 weeks
threw -24 hard -22 BY with -10 MANY THING -9 many -6 # NUM TRAINING pen 11 MISSILE ball 13 and 32 $
throat -18 . -8 ACHE PAIN
throbbing 21 $ BE 37 .
throbs 6 NIGHTS night 32 .
through -13 $ -12 PUT set -6 workout 10 SHEETS 11 ARM SOCKETED arm 13 ACHE 14 TRAINING 17 PART 22 .
throw -7 HEIGHT 6 CANT PART SOCKETED from 7 ONTO 9 ACHE strong 11 BY SINCE with 13 MISSILE and ball 14 . 23 $
throwing 44 .
thrown 11 CHANGED ODD from off 19 ONTO 23 .
throws -18 ONTO at -17 in -12 . -9 $ -8 to -7 # NUM 10 then 14 BE 21 SINCE
thumb -7 $ BY with -6 HAVE has 8 day 12 COME PUT WENT 13 . POSITION side 18 and 19 BE ON ONTO is on
thumbs -10 . HEIGHT up
thunder -15 .
thunderclap 8 $ .
tick 12 .
tight -16 but -14 ONTO -13 from 8 $ ON on 9 after 10 and 11 CHEST chest
tightness -15 ONTO in 8 $ 12 HEIGHT across 17 .
til -6 # NUM
till 13 NUM 15 PART 18 # 19 MANY 25 .
time -10 $ 14 NOT no when 19 . 36 i
times 6 ONTO 16 BE 23 today 35 .
tingle -8 SINCE 7 . 9 NOT 13 at 15 maybe
tingled 10 . 12 $
tingles -15 from 6 when 10 in 14 $ 17 .
tingling -16 BE -13 nothing -10 BY with -7 last 6 crazy 8 SINCE 11 but 15 NOT maybe 18 in 25 ONTO 29 $ 48 .
tingly 10 SINCE 12 DIGIT HANDS PART for 19 $ 21 .
tiny -21 $ 7 . 10 NUMB 12 BULGE COME PUT pop 20 POP
tip 7 aches 8 BE 10 PAIN 14 ACHE 17 PART SHOULDER 27 .
tips 11 DIGIT HANDS PART fingers 12 .
tire -23 .
tired -24 $ ONTO from -21 but -7 . -6 LEG legs 10 NOT 13 no 18 time 28 for
to -35 # -31 NUM -29 STOP stop -23 MANY doctor -19 LOST say see -18 NUMB third tingle watch -17 WORN -16 game losing push -14 run second skip -13 AGAIN -12 BULGE HEART WAKE cheat heart wake -11 first short -9 POP pop -8 DROPPING VEHICLE drop -7 SHEETS bed death pee pick -6 $ HOT lose stand warm 6 LEAK field hold pitch practice 7 PUSH turn 8 COME POSITION RIBS side 9 high thumb wrist 10 ELBOW OPPONENT PAIN PUT elbow fingers finish lie play 11 BE open put 13 MOVE shove use 14 arm 15 ACHE go raise 16 . MOTOR 17 FEELING WENT hand 18 die 19 REACH 21 kill 22 sleep touch 23 ARM HAND disappear 24 lay 25 DIGIT lift live 26 ELSEWHERE end 27 BREATH breathe take 34 LIFT 38 HANDS 42 PART
toast -19 . -8 $
today -10 BE -8 . -7 NOT -6 # NUM 8 i
toddler -9 .
toe -19 .
toilet -14 $
told -22 . -12 to
tolerable -7 $ .
tomorrow -19 . -18 $
ton -11 .
tongue -7 . -6 $
tonight -24 . -21 $
too -30 .
took -21 ONTO -20 rest -19 GROUND shower -16 it -14 over -12 BLOW hit -10 BREATH -9 CHANGED ODD off -7 nap 6 foul 7 . line 8 THING helmet 12 MISSILE 13 ELSEWHERE advil knee 17 tumble 27 FALL 37 PILL
top -9 . 7 PART SHOULDER SOCKETED shoulder 8 DAILY HEIGHT shelf 9 ACHE
tops -8 $ 9 .
tore -15 labrum -11 HEIGHT through up -6 her 7 ACHE 10 $ 14 . 18 PART 20 THING something
torn -25 . -6 PART SHOULDER SOCKETED labrum
toss -7 . 6 to
tossed -23 . -13 and -10 $
tosses -15 .
totally 8 .
touch -16 hay 6 ACHE it 9 . 10 WEAK WEAKNESS weaker 13 NUMB 19 $
touched -11 NUM -10 # 15 .
touches 24 it 32 . ACHE
tough -12 .
tournament -25 . -22 $
towel -16 .
track -13 .
tractor -19 .
traffic -9 $ 12 .
train -12 BE was 7 . 20 $
trainer 6 . 17 $ 19 PUT
training 6 . 10 $
trampoline 7 $ 11 .
trap -13 .
traps -27 . -20 $
trash 10 $ .
travel -7 .
traveling -8 $ .
travelling -16 .
tree -12 .
trees -14 $ .
tricep -17 .
triceps -12 . -9 $
tried 16 to
trip -17 .
tripped 12 ONTO 14 over 22 but
tripping 8 ONTO over 12 .
tris -25 . -16 today
trouble 14 BREATH breathing
truck 20 .
trucked 16 at 22 .
trumpet -7 .
try 8 to
tryouts 11 $ .
tub -18 . -13 $
tuesday -21 . -16 $
tumble 7 down 17 ONTO 18 .
tumbled 18 . ONTO
turf -8 $ .
turn 10 HEIGHT head
turned 6 . 8 purple 16 blue 26 COLOUR
turning 11 purple 16 COLOUR 19 .
turns 12 .
tv 9 BUZZ 11 .
twenty -16 .
twice -23 to -8 and 8 size 10 day 11 $ 14 its 18 as 26 today 41 .
twig 18 .
twinge -9 .
twist -10 .
tylenol 16 .
typing -18 $
tyre -18 . -7 $
u -10 .
ucl 17 BE 23 .
uh -9 . -7 $
ulnar 6 .
unbearable 16 $ 23 .
uncle -8 . -7 $
under -19 lights -9 water 7 ONTO 11 $ 16 ELSEWHERE 27 . 31 skin
unfortunately -16 .
unstable 21 $ 27 .
unsteady 8 ON ONTO on 12 $ 18 .
until 9 NUM 10 . MANY
up -21 BE -20 late -18 to -15 at -14 early -11 because no was -10 in zero -9 NOT THING cue -8 front three -7 SEAT first -6 $ GROUND 6 by drenched 7 NIGHTS SHAPE behind night only popeye under 8 ARM BY SOCKETED arm halfway with 9 ON into on 10 AGAIN CANT ONTO soaked wont 11 HEIGHT 12 after every since 13 . SINCE before 14 MANY 15 ACHE big 16 SWEATS once sore till 17 NUM time 20 DAILY balloon 22 # 23 PAIN 28 blood day
upper -9 trap -6 . 20 ACHE ARM PART SOCKETED arm
upright -14 $ .
ups 9 $
us -11 . 7 do
use 7 ACHE ARM PART SOCKETED arm 11 .
useless 6 since 16 . SINCE
usual -18 $ -10 ACHE PAIN ache -7 .
usually -9 .
utterly 10 .
van -9 .
vanished 14 .
veins -6 ON on 6 over 8 HEIGHT across 9 BULGE 18 .
velcro 10 BREAK POP ripping 13 .
velos -14 .
very -16 .
vibrate 11 .
vice 18 .
video -20 . -17 $
view -7 $ .
virus 14 .
visibly 10 LEAK SWELL swollen 16 .
vision 11 and 14 .
visit -7 .
vitamin -20 .
vitamins -12 $ .
voice -15 . -7 $
volleyball -8 .
vomited 21 .
vomiting 9 SINCE since 25 .
wait -24 . -9 NOT no -6 $
wake 6 HEIGHT up 15 .
wakes -12 $ 7 HEIGHT up
waking -12 BE COME LOST WENT gone 11 . 14 $ 15 HEIGHT up
walk -12 ONTO 22 $ 28 .
walked 10 . ONTO
walking 6 ONTO 23 $ to 51 .
wall -20 . -10 COME -9 FALL QUITS fell -7 $ -6 ONTO
wanna 14 .
want -17 $ 27 . 40 to
wanted 6 . 12 to
wants 6 to
warm -26 . -23 $ -18 and -17 SINCE 8 ups
warmed -12 . HEIGHT up
warmup -6 .
warmups 11 $ .
was -29 . -27 COLD -25 wet -24 PAIN -22 MANY live -21 LEAK -20 ODD ON on -19 stiff -18 hard -17 # cold shaking -16 NUMB sick travelling -15 holding pain -14 ACHE -13 NUM POWER TIRED ill power tingling tired -12 numb quiet sharp sore -11 fast heavy racing -10 DISLOCATE at dislocated good nervous no weak -9 AGAIN BUZZ COLOUR DROPPING TIGHT sleeping there -8 CHANGED WEAK dropping hit hot popping swinging traveling -7 freezing laid -6 fun off okay yesterday 6 full struck 7 gone snap warm 8 doing tearing 9 BULGE ONTO slurred 10 NOT 11 BLOW HEIGHT knocked up 12 POP SLUR 13 COME TRAINING round 14 BREAK FEVER_F thrown 15 PUT 16 gonna in pop 20 FEVERISH 22 dead 28 black
wash -11 $ -7 .
washing 14 .
wasnt -10 there 6 .
watch -15 for -14 .
watched -21 .
watching 10 . 11 tv
water -18 as -8 ONTO polo -6 in 10 . 12 THING bottle 15 BE is
watering 9 .
way 23 .
we -51 . -23 LOST lost -13 BE -12 COME -11 BLOW NOT -9 HAVE TRAINING -8 PUT -7 ran won -6 WENT had 6 did
weak -19 POSITION side -17 PART -16 for -12 in -11 coffee week -10 sauce -7 THING at competition grounder -6 after excuse 6 when 7 ONTO 8 as 9 since 11 . 12 and 14 but 18 ON on 21 i to 26 today 34 $
weaker 6 $ 10 MANY 21 than 40 .
weakest -8 .
weakness 15 ONTO in 26 $ 28 .
wear -16 .
wearing 6 . 7 THING WORN glove 9 DULLED
weather -23 . -17 BE -9 $ -7 WENT
wednesday 9 .
wee -16 .
week -13 ONTO -6 but 7 $ 11 HAND HANDS PART hand 19 i
weekend -15 $ -10 .
weekly -13 .
weeks -21 ago 9 $ 10 and 24 NOT no 28 i 41 .
weeping 9 $ 14 .
weight -13 $ -7 for 7 room 11 NOT 12 BE 13 is without 19 and
weights -23 . -16 $
weird -7 SINCE after 10 NUMB 13 . 19 SHAPE
well -42 . -40 $
went -14 in -13 MANY -12 ONTO down good -11 off well -9 away -7 BULGE CHANGED COLD PUT cold pop -6 COME numb 8 from 10 # $ COLOUR NUM full 13 black 14 over 23 back
were -34 . -14 NUMB numb -9 sweaty -8 COME -7 down 7 COLD soaked 11 cold
wet 9 ONTO from 10 . 12 spaghetti 15 myself
what -36 . -18 if -9 counts -8 BE would -7 does should 20 i
whatever 12 . 21 i
whats 21 MOTOR point 24 .
wheel 7 BE 9 .
wheelie -15 .
wheezing 20 .
when -21 ARM -18 HANDS arm -15 can -13 PART -12 MISSILE -11 OPPONENT -8 im 7 u 10 ACHE THING 13 it 19 . 20 SHOULDER shoulder 34 i
whenever 8 . 17 i
where -10 you 11 ACHE SOCKETED shoulder 14 PART SHOULDER 27 muscle 29 .
which 6 ACHE it 7 . 17 BE is
while 15 BE is 21 i 58 .
white 8 when 10 ONTO and as in 19 $ .
who -16 .
whole 6 .
whom -7 .
why 17 $ .
wicket -15 .
wife -31 . -14 BE -13 and
wifes -22 .
will -19 . -16 ACHE it -6 BE
win -29 $ .
wind -28 . -15 $ -8 at
winded 26 .
winter -13 . -9 $
wiped 6 OUT out 8 .
wish 26 . 35 i
with -18 you -16 ARM arm ball -15 POWER boys hands -13 excitement -12 this -11 power -9 . -8 coach -7 MOTOR hammer stretch work -6 MANY NEW couple new 6 SWELL 7 POP swollen 8 BLOW bang 9 those 10 bike buttons dead numb pain 11 fielder 12 FEVER OPPONENT fever 14 ache 16 VEHICLE hand 18 CHILL chills it 19 LEAK SHOULDER shoulder temperature 21 ACHE 22 PAIN 30 PILL
without 18 $ 29 .
wobbly -6 . 15 ONTO in
woke -14 $ -13 at -10 AGAIN 8 . 16 MANY 25 once
won 6 $
wont -16 LEAK 6 HOLD 7 let 11 LIFT lift 13 STOP 14 do 39 .
wood 19 $ .
words -20 ONTO in 6 are 8 . 15 BE 24 COME
wore -30 .
work -21 $ -16 . -10 BE
worked -15 .
working -29 . -7 $
workout -32 . -15 BE -13 $
works -18 . -11 $
world -7 .
worn -6 $ 10 . 15 OUT out
worried -31 . -16 about
worries -8 .
worry -22 . -19 about
worse -16 than 11 $
worst -8 ACHE PAIN pain -6 $ 12 . 25 HEADACHE headache
would -12 COME POP PUT -11 i -9 . -8 say 15 BE 17 be
wouldnt 6 HOLD 8 let 10 MOTOR 12 STOP 24 .
wound -14 HEIGHT up 21 smells 24 LEAK
wrap 12 .
wrapped 16 . ONTO in
wreck 18 $ 28 .
wrecked 9 VEHICLE 14 ONTO
wrench -14 .
wrestling 9 . 17 $
wrist -12 and -6 $ tape 6 CANT NOT wont 8 . 12 BE HAVE has 15 ONTO 16 flops is
wrists 13 and 25 .
writing -14 . -8 $
wrong -18 SEAT 6 . 10 ON ONTO on
y -11 .
yanked 12 ACHE 16 .
yeah -16 ACHE it -11 $ ON ONTO on -6 nah 7 and 8 HOLD MOTOR POWER grip 9 . 10 its
year -44 . -26 ACHE PART SOCKETED -15 i -11 $
years -46 . -28 ago -18 $
yellow 11 LEAK 15 THING stuff 25 .
yep -7 ONTO 9 NUMB tingling 12 $
yes -20 ACHE -17 NOT no -14 sir -11 i -9 MANY STOP -7 please 6 in 7 tingling 10 $ NUMB 15 . 16 pinky 18 AGAIN ONTO 19 DIGIT HANDS
yessir -7 $ .
yesterday 13 i 18 $ 21 ONTO 27 .
yet -24 . -21 $
yoga -18 . -16 $
you -24 . -20 $ -17 said -6 know 7 can 16 could
young -6 . OPPONENT
yup 14 .
zap 15 .
zaps 6 . ONTO down
zero 12 sleep
zilch -9 $ .
zing 7 .
zip -8 $ .
"""
